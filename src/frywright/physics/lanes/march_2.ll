; Made by scripts/lanes.py from sources of sha256 2b7a2d1c8a13c02c42b49640e11f2cf211e83ac4354f9371aba8ea3fe2cec461.
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
  br i1 %129, label %4829, label %130

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

524:                                              ; preds = %4810, %4828, %4825, %3238, %3530, %523
  %525 = load i64, ptr %124, align 8, !tbaa !40
  %526 = load i64, ptr %125, align 8, !tbaa !41
  %527 = sub nsw i64 %525, %526
  %528 = icmp slt i64 %527, 4
  br i1 %528, label %4829, label %519

529:                                              ; preds = %523
  %530 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %531 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %530)
  %532 = icmp eq i64 %531, 0
  br i1 %532, label %4829, label %533

533:                                              ; preds = %529
  %534 = load <2 x i64>, ptr %146, align 16, !tbaa !26
  %535 = and <2 x i64> %534, %530
  %536 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %535)
  %537 = icmp eq i64 %536, 0
  %538 = load i64, ptr %157, align 8, !tbaa !20
  br i1 %537, label %1115, label %539

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
  br i1 %709, label %710, label %1102

710:                                              ; preds = %622, %1098
  %711 = phi i64 [ %1099, %1098 ], [ 0, %622 ]
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
  br label %1098

989:                                              ; preds = %979
  %990 = load <2 x double>, ptr %871, align 16, !tbaa !26
  %991 = getelementptr inbounds nuw i8, ptr %713, i64 432
  %992 = load <2 x double>, ptr %991, align 16, !tbaa !26
  %993 = getelementptr inbounds nuw i8, ptr %713, i64 464
  %994 = load <2 x double>, ptr %993, align 16, !tbaa !26
  %995 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %996 = fneg <2 x double> %995
  %997 = fdiv <2 x double> %996, %992
  %998 = fcmp ogt <2 x double> %997, splat (double -7.000000e+02)
  %999 = select <2 x i1> %998, <2 x double> %997, <2 x double> splat (double -7.000000e+02)
  %1000 = fcmp olt <2 x double> %999, splat (double 7.000000e+02)
  %1001 = select <2 x i1> %1000, <2 x double> %999, <2 x double> splat (double 7.000000e+02)
  %1002 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1001, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %1003 = fadd <2 x double> %1002, splat (double 0xC338000000000000)
  %1004 = fneg <2 x double> %1003
  %1005 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1004, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %1001)
  %1006 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1004, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %1005)
  %1007 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1006, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %1008 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1007, <2 x double> %1006, <2 x double> splat (double 0x3E5AE64567F544E4))
  %1009 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1008, <2 x double> %1006, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %1010 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1009, <2 x double> %1006, <2 x double> splat (double 0x3EC71DE3A556C734))
  %1011 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1010, <2 x double> %1006, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %1012 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1011, <2 x double> %1006, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %1013 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1012, <2 x double> %1006, <2 x double> splat (double 0x3F56C16C16C16C17))
  %1014 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1013, <2 x double> %1006, <2 x double> splat (double 0x3F81111111111111))
  %1015 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1014, <2 x double> %1006, <2 x double> splat (double 0x3FA5555555555555))
  %1016 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1015, <2 x double> %1006, <2 x double> splat (double 0x3FC5555555555555))
  %1017 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1016, <2 x double> %1006, <2 x double> splat (double 5.000000e-01))
  %1018 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1017, <2 x double> %1006, <2 x double> splat (double 1.000000e+00))
  %1019 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1018, <2 x double> %1006, <2 x double> splat (double 1.000000e+00))
  %1020 = bitcast <2 x double> %1002 to <2 x i64>
  %1021 = shl <2 x i64> %1020, splat (i64 52)
  %1022 = bitcast <2 x double> %1019 to <2 x i64>
  %1023 = add <2 x i64> %1021, %1022
  %1024 = bitcast <2 x i64> %1023 to <2 x double>
  %1025 = fsub <2 x double> splat (double 1.000000e+00), %1024
  %1026 = load <2 x double>, ptr %873, align 16, !tbaa !26
  %1027 = fsub <2 x double> %1026, %990
  %1028 = load ptr, ptr %893, align 8, !tbaa !57
  %1029 = load ptr, ptr %887, align 16, !tbaa !46
  %1030 = getelementptr inbounds nuw i8, ptr %713, i64 1936
  %1031 = load ptr, ptr %1030, align 16, !tbaa !47
  %1032 = load ptr, ptr %891, align 8, !tbaa !48
  %1033 = getelementptr inbounds nuw i8, ptr %713, i64 1928
  %1034 = load ptr, ptr %1033, align 8, !tbaa !64
  %1035 = getelementptr inbounds nuw i8, ptr %713, i64 1888
  %1036 = load i64, ptr %1035, align 16, !tbaa !31
  %1037 = load i64, ptr %132, align 16, !tbaa !21
  %1038 = icmp slt i64 %1036, %1037
  br i1 %1038, label %1039, label %1043

1039:                                             ; preds = %989
  %1040 = getelementptr inbounds nuw i8, ptr %713, i64 448
  %1041 = load <2 x double>, ptr %1040, align 16, !tbaa !26
  %1042 = fneg <2 x double> %1041
  br label %1055

1043:                                             ; preds = %1055, %989
  %1044 = phi <2 x double> [ zeroinitializer, %989 ], [ %1086, %1055 ]
  %1045 = phi <2 x double> [ zeroinitializer, %989 ], [ %1094, %1055 ]
  %1046 = getelementptr inbounds nuw i8, ptr %713, i64 944
  %1047 = load <2 x double>, ptr %1046, align 16, !tbaa !26
  %1048 = fsub <2 x double> %1047, %1026
  %1049 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1044, <2 x double> %1048, <2 x double> %1045)
  %1050 = getelementptr inbounds nuw i8, ptr %713, i64 1792
  %1051 = load <2 x double>, ptr %870, align 16, !tbaa !26
  %1052 = fmul <2 x double> %1051, %1049
  %1053 = load <2 x double>, ptr %1050, align 16, !tbaa !26
  %1054 = select <2 x i1> %625, <2 x double> %1053, <2 x double> %1052
  store <2 x double> %1054, ptr %1050, align 16, !tbaa !26
  br label %1098

1055:                                             ; preds = %1039, %1055
  %1056 = phi <2 x double> [ zeroinitializer, %1039 ], [ %1094, %1055 ]
  %1057 = phi i64 [ %1036, %1039 ], [ %1095, %1055 ]
  %1058 = getelementptr inbounds <2 x double>, ptr %1029, i64 %1057
  %1059 = load <2 x double>, ptr %1058, align 16, !tbaa !26
  %1060 = getelementptr inbounds <2 x double>, ptr %1028, i64 %1057
  %1061 = load <2 x double>, ptr %1060, align 16, !tbaa !26
  %1062 = fadd <2 x double> %1059, %1061
  %1063 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1062, <2 x double> splat (double 5.000000e-01), <2 x double> %1042)
  %1064 = fmul <2 x double> %994, %1063
  %1065 = fcmp ogt <2 x double> %1064, splat (double -5.000000e+00)
  %1066 = select <2 x i1> %1065, <2 x double> %1064, <2 x double> splat (double -5.000000e+00)
  %1067 = fcmp olt <2 x double> %1066, splat (double 5.000000e+00)
  %1068 = select <2 x i1> %1067, <2 x double> %1066, <2 x double> splat (double 5.000000e+00)
  %1069 = fmul <2 x double> %1068, %1068
  %1070 = fadd <2 x double> %1069, splat (double 3.780000e+02)
  %1071 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1069, <2 x double> %1070, <2 x double> splat (double 1.732500e+04))
  %1072 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1069, <2 x double> %1071, <2 x double> splat (double 1.351350e+05))
  %1073 = fmul <2 x double> %1068, %1072
  %1074 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1069, <2 x double> splat (double 2.800000e+01), <2 x double> splat (double 3.150000e+03))
  %1075 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1069, <2 x double> %1074, <2 x double> splat (double 6.237000e+04))
  %1076 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1069, <2 x double> %1075, <2 x double> splat (double 1.351350e+05))
  %1077 = fdiv <2 x double> %1073, %1076
  %1078 = fadd <2 x double> %1077, splat (double 1.000000e+00)
  %1079 = fmul <2 x double> %981, %1078
  %1080 = getelementptr inbounds <2 x double>, ptr %1031, i64 %1057
  %1081 = load <2 x double>, ptr %1080, align 16, !tbaa !26
  %1082 = fadd <2 x double> %1081, splat (double -1.000000e+00)
  %1083 = fadd <2 x double> %1082, %1079
  %1084 = fcmp ogt <2 x double> %1083, zeroinitializer
  %1085 = select <2 x i1> %1084, <2 x double> %1083, <2 x double> zeroinitializer
  %1086 = fmul <2 x double> %1025, %1085
  %1087 = fsub <2 x double> %1081, %1086
  %1088 = getelementptr inbounds <2 x double>, ptr %1034, i64 %1057
  %1089 = load <2 x double>, ptr %1088, align 16, !tbaa !26
  %1090 = select <2 x i1> %625, <2 x double> %1089, <2 x double> %1087
  store <2 x double> %1090, ptr %1088, align 16, !tbaa !26
  %1091 = getelementptr inbounds <2 x double>, ptr %1032, i64 %1057
  %1092 = load <2 x double>, ptr %1091, align 16, !tbaa !26
  %1093 = fmul <2 x double> %1027, %1092
  %1094 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1086, <2 x double> %1093, <2 x double> %1056)
  %1095 = add nsw i64 %1057, 1
  %1096 = load i64, ptr %132, align 16, !tbaa !21
  %1097 = icmp slt i64 %1095, %1096
  br i1 %1097, label %1055, label %1043, !llvm.loop !65

1098:                                             ; preds = %985, %1043
  %1099 = add nuw nsw i64 %711, 1
  %1100 = load i64, ptr %157, align 8, !tbaa !20
  %1101 = icmp slt i64 %1099, %1100
  br i1 %1101, label %710, label %1102, !llvm.loop !66

1102:                                             ; preds = %1098, %622
  %1103 = phi i64 [ %708, %622 ], [ %1100, %1098 ]
  %1104 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %1105 = fcmp ogt <2 x double> %1104, zeroinitializer
  %1106 = select <2 x i1> %1105, <2 x i64> %535, <2 x i64> zeroinitializer
  %1107 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1106)
  %1108 = icmp eq i64 %1107, 0
  br i1 %1108, label %1115, label %1109

1109:                                             ; preds = %1102
  %1110 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, <2 x i64> noundef %1106) #7
  %1111 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %1112 = icmp eq <2 x i64> %1106, zeroinitializer
  %1113 = select <2 x i1> %1112, <2 x double> %1111, <2 x double> %1110
  store <2 x double> %1113, ptr %164, align 16, !tbaa !26
  %1114 = load i64, ptr %157, align 8, !tbaa !20
  br label %1115

1115:                                             ; preds = %1102, %1109, %533
  %1116 = phi i64 [ %1103, %1102 ], [ %1114, %1109 ], [ %538, %533 ]
  %1117 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %1118 = icmp eq <2 x i64> %535, zeroinitializer
  %1119 = select <2 x i1> %1118, <2 x double> %1117, <2 x double> zeroinitializer
  store <2 x double> %1119, ptr %175, align 16, !tbaa !26
  %1120 = icmp sgt i64 %1116, 0
  br i1 %1120, label %1126, label %1121

1121:                                             ; preds = %1115
  %1122 = load <2 x double>, ptr %179, align 16, !tbaa !26
  br label %1822

1123:                                             ; preds = %1816
  %1124 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %1125 = icmp sgt i64 %1820, 0
  br i1 %1125, label %1827, label %1822

1126:                                             ; preds = %1115, %1816
  %1127 = phi i64 [ %1819, %1816 ], [ 0, %1115 ]
  %1128 = load ptr, ptr %142, align 8, !tbaa !28
  %1129 = getelementptr inbounds nuw %struct.Piece, ptr %1128, i64 %1127
  %1130 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %1131 = getelementptr inbounds nuw i8, ptr %1129, i64 1600
  %1132 = load <2 x double>, ptr %1131, align 16, !tbaa !26
  %1133 = fsub <2 x double> %1130, %1132
  %1134 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1133)
  %1135 = getelementptr inbounds nuw i8, ptr %1129, i64 544
  %1136 = load <2 x double>, ptr %1135, align 16, !tbaa !26
  %1137 = fcmp ogt <2 x double> %1136, splat (double 1.000000e-09)
  %1138 = select <2 x i1> %1137, <2 x double> %1136, <2 x double> splat (double 1.000000e-09)
  %1139 = fdiv <2 x double> %1134, %1138
  %1140 = getelementptr inbounds nuw i8, ptr %1129, i64 256
  %1141 = load <2 x double>, ptr %1140, align 16, !tbaa !26
  %1142 = fcmp ule <2 x double> %1136, zeroinitializer
  %1143 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1139)
  %1144 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1143)
  %1145 = select <2 x i1> %1142, <2 x double> splat (double 1.000000e+00), <2 x double> %1144
  %1146 = fmul <2 x double> %1141, %1145
  %1147 = getelementptr inbounds nuw i8, ptr %1129, i64 272
  %1148 = load <2 x double>, ptr %1147, align 16, !tbaa !26
  %1149 = getelementptr inbounds nuw i8, ptr %1129, i64 1408
  %1150 = load <2 x double>, ptr %1149, align 16, !tbaa !26
  %1151 = getelementptr inbounds nuw i8, ptr %1129, i64 1424
  %1152 = load <2 x double>, ptr %1151, align 16, !tbaa !26
  %1153 = fadd <2 x double> %1150, %1152
  %1154 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1148, <2 x double> %1153, <2 x double> %1146)
  %1155 = getelementptr inbounds nuw i8, ptr %1129, i64 288
  %1156 = load <2 x double>, ptr %1155, align 16, !tbaa !26
  %1157 = fcmp olt <2 x double> %1154, %1156
  %1158 = select <2 x i1> %1157, <2 x double> %1154, <2 x double> %1156
  %1159 = getelementptr inbounds nuw i8, ptr %1129, i64 1328
  %1160 = load <2 x double>, ptr %1159, align 16, !tbaa !26
  %1161 = getelementptr inbounds nuw i8, ptr %1129, i64 992
  %1162 = load <2 x double>, ptr %1161, align 16, !tbaa !26
  %1163 = getelementptr inbounds nuw i8, ptr %1129, i64 1344
  %1164 = load <2 x double>, ptr %1163, align 16, !tbaa !26
  %1165 = getelementptr inbounds nuw i8, ptr %1129, i64 1184
  %1166 = load <2 x double>, ptr %1165, align 16, !tbaa !26
  %1167 = fmul <2 x double> %1164, %1166
  %1168 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1160, <2 x double> %1162, <2 x double> %1167)
  %1169 = getelementptr inbounds nuw i8, ptr %1129, i64 304
  %1170 = load <2 x double>, ptr %1169, align 16, !tbaa !26
  %1171 = fneg <2 x double> %1170
  %1172 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1171, <2 x double> %1168, <2 x double> %1158)
  %1173 = getelementptr inbounds nuw i8, ptr %1129, i64 1312
  %1174 = load <2 x double>, ptr %1173, align 16, !tbaa !26
  %1175 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1170, <2 x double> %1174, <2 x double> splat (double 1.000000e+00))
  %1176 = fdiv <2 x double> %1172, %1175
  %1177 = getelementptr inbounds nuw i8, ptr %1129, i64 1872
  %1178 = load <2 x i64>, ptr %1177, align 16, !tbaa !26
  %1179 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %1180 = icmp eq <2 x i64> %1178, zeroinitializer
  %1181 = select <2 x i1> %1180, <2 x double> %1130, <2 x double> %1179
  %1182 = getelementptr inbounds nuw i8, ptr %1129, i64 1376
  store <2 x double> %1181, ptr %1182, align 16, !tbaa !26
  %1183 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %1184 = select <2 x i1> %1180, <2 x double> %1176, <2 x double> %1183
  %1185 = getelementptr inbounds nuw i8, ptr %1129, i64 800
  store <2 x double> %1184, ptr %1185, align 16, !tbaa !26
  %1186 = getelementptr inbounds nuw i8, ptr %1129, i64 224
  %1187 = load <2 x double>, ptr %1186, align 16, !tbaa !26
  %1188 = fcmp ule <2 x double> %1187, zeroinitializer
  %1189 = getelementptr inbounds nuw i8, ptr %1129, i64 736
  %1190 = getelementptr inbounds nuw i8, ptr %1129, i64 768
  %1191 = load <2 x double>, ptr %1190, align 16, !tbaa !26
  %1192 = fcmp ogt <2 x double> %1187, splat (double 1.000000e-30)
  %1193 = select <2 x i1> %1192, <2 x double> %1187, <2 x double> splat (double 1.000000e-30)
  %1194 = fdiv <2 x double> %1191, %1193
  %1195 = fcmp ogt <2 x double> %1194, zeroinitializer
  %1196 = select <2 x i1> %1195, <2 x double> %1194, <2 x double> zeroinitializer
  %1197 = fcmp olt <2 x double> %1196, splat (double 1.000000e+00)
  %1198 = select <2 x i1> %1197, <2 x double> %1196, <2 x double> splat (double 1.000000e+00)
  %1199 = select <2 x i1> %1188, <2 x double> zeroinitializer, <2 x double> %1198
  %1200 = getelementptr inbounds nuw i8, ptr %1129, i64 528
  %1201 = load <2 x double>, ptr %1200, align 16, !tbaa !26
  %1202 = fmul <2 x double> %1199, splat (double 4.180000e+03)
  %1203 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1202, <2 x double> %1187, <2 x double> %1201)
  %1204 = getelementptr inbounds nuw i8, ptr %1129, i64 1072
  %1205 = load <2 x double>, ptr %1204, align 16, !tbaa !26
  %1206 = getelementptr inbounds nuw i8, ptr %1129, i64 1264
  %1207 = load <2 x double>, ptr %1206, align 16, !tbaa !26
  %1208 = fmul <2 x double> %1164, %1207
  %1209 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1160, <2 x double> %1205, <2 x double> %1208)
  %1210 = getelementptr inbounds nuw i8, ptr %1129, i64 1840
  %1211 = load <2 x i64>, ptr %1210, align 16, !tbaa !26
  %1212 = fcmp ule <2 x double> %1201, zeroinitializer
  %1213 = getelementptr inbounds nuw i8, ptr %1129, i64 1728
  store <2 x double> %1199, ptr %1213, align 16, !tbaa !26
  %1214 = fmul <2 x double> %1174, %1203
  %1215 = icmp eq <2 x i64> %1211, splat (i64 -1)
  %1216 = select <2 x i1> %1212, <2 x i1> splat (i1 true), <2 x i1> %1215
  %1217 = select <2 x i1> %1216, <2 x double> zeroinitializer, <2 x double> %1214
  %1218 = getelementptr inbounds nuw i8, ptr %1129, i64 1744
  store <2 x double> %1217, ptr %1218, align 16, !tbaa !26
  %1219 = fmul <2 x double> %1209, %1203
  %1220 = select <2 x i1> %1216, <2 x double> zeroinitializer, <2 x double> %1219
  %1221 = getelementptr inbounds nuw i8, ptr %1129, i64 1760
  store <2 x double> %1220, ptr %1221, align 16, !tbaa !26
  %1222 = load <2 x double>, ptr %1129, align 16, !tbaa !26
  %1223 = load <2 x double>, ptr %1189, align 16, !tbaa !26
  %1224 = fsub <2 x double> %1222, %1223
  %1225 = fsub <2 x double> splat (double 1.000000e+00), %1199
  %1226 = getelementptr inbounds nuw i8, ptr %1129, i64 480
  %1227 = load <2 x double>, ptr %1226, align 16, !tbaa !26
  %1228 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1225, <2 x double> %1227, <2 x double> %1224)
  %1229 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %1230 = fdiv <2 x double> splat (double 1.000000e+00), %1229
  %1231 = getelementptr inbounds nuw i8, ptr %1129, i64 560
  %1232 = load <2 x double>, ptr %1231, align 16, !tbaa !26
  %1233 = fcmp ogt <2 x double> %1232, splat (double 1.000000e-30)
  %1234 = select <2 x i1> %1233, <2 x double> %1232, <2 x double> splat (double 1.000000e-30)
  %1235 = fdiv <2 x double> %1228, %1234
  %1236 = fadd <2 x double> %1230, %1235
  %1237 = getelementptr inbounds nuw i8, ptr %1129, i64 1776
  store <2 x double> %1236, ptr %1237, align 16, !tbaa !26
  %1238 = getelementptr inbounds nuw i8, ptr %1129, i64 1696
  store <2 x double> %1150, ptr %1238, align 16, !tbaa !26
  %1239 = getelementptr inbounds nuw i8, ptr %1129, i64 640
  %1240 = load <2 x double>, ptr %1239, align 16, !tbaa !26
  %1241 = getelementptr inbounds nuw i8, ptr %1129, i64 656
  %1242 = load <2 x double>, ptr %1241, align 16, !tbaa !26
  %1243 = getelementptr inbounds nuw i8, ptr %1129, i64 672
  %1244 = load <2 x double>, ptr %1243, align 16, !tbaa !26
  %1245 = getelementptr inbounds nuw i8, ptr %1129, i64 688
  %1246 = load <2 x double>, ptr %1245, align 16, !tbaa !26
  %1247 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1246, <2 x double> %1244)
  %1248 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1247, <2 x double> %1242)
  %1249 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1248, <2 x double> %1240)
  %1250 = getelementptr inbounds nuw i8, ptr %1129, i64 912
  store <2 x double> %1249, ptr %1250, align 16, !tbaa !26
  %1251 = getelementptr inbounds nuw i8, ptr %1129, i64 1104
  %1252 = load <2 x double>, ptr %1251, align 16, !tbaa !26
  %1253 = fmul <2 x double> %1160, %1252
  %1254 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1174, <2 x double> %1249, <2 x double> %1253)
  %1255 = getelementptr inbounds nuw i8, ptr %1129, i64 1296
  %1256 = load <2 x double>, ptr %1255, align 16, !tbaa !26
  %1257 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1164, <2 x double> %1256, <2 x double> %1254)
  %1258 = fmul <2 x double> %1257, splat (double 5.000000e-01)
  %1259 = getelementptr inbounds nuw i8, ptr %1129, i64 1680
  store <2 x double> %1258, ptr %1259, align 16, !tbaa !26
  %1260 = getelementptr inbounds nuw i8, ptr %1129, i64 576
  %1261 = load <2 x double>, ptr %1260, align 16, !tbaa !26
  %1262 = getelementptr inbounds nuw i8, ptr %1129, i64 592
  %1263 = load <2 x double>, ptr %1262, align 16, !tbaa !26
  %1264 = getelementptr inbounds nuw i8, ptr %1129, i64 608
  %1265 = load <2 x double>, ptr %1264, align 16, !tbaa !26
  %1266 = getelementptr inbounds nuw i8, ptr %1129, i64 624
  %1267 = load <2 x double>, ptr %1266, align 16, !tbaa !26
  %1268 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1267, <2 x double> %1265)
  %1269 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1268, <2 x double> %1263)
  %1270 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1269, <2 x double> %1261)
  %1271 = getelementptr inbounds nuw i8, ptr %1129, i64 1664
  store <2 x double> %1270, ptr %1271, align 16, !tbaa !26
  %1272 = getelementptr inbounds nuw i8, ptr %1129, i64 1888
  %1273 = load i64, ptr %1272, align 16, !tbaa !31
  %1274 = icmp eq i64 %1273, 0
  %1275 = getelementptr inbounds nuw i8, ptr %1129, i64 16
  %1276 = load <2 x double>, ptr %1275, align 16
  %1277 = fsub <2 x double> %1223, %1276
  %1278 = fdiv <2 x double> splat (double 1.000000e+00), %1277
  %1279 = fdiv <2 x double> %1270, %1223
  %1280 = select i1 %1274, <2 x double> %1279, <2 x double> %1278
  %1281 = load i64, ptr %132, align 16, !tbaa !21
  %1282 = getelementptr inbounds nuw i8, ptr %1129, i64 2008
  %1283 = load ptr, ptr %1282, align 8, !tbaa !35
  br i1 %1274, label %1284, label %1288

1284:                                             ; preds = %1126
  %1285 = getelementptr inbounds <2 x double>, ptr %1283, i64 %1281
  %1286 = load <2 x double>, ptr %1285, align 16, !tbaa !26
  %1287 = fmul <2 x double> %1280, %1286
  br label %1304

1288:                                             ; preds = %1126
  %1289 = shl nsw i64 %1281, 6
  %1290 = getelementptr inbounds i8, ptr %1283, i64 %1289
  %1291 = load <2 x double>, ptr %1290, align 16, !tbaa !26
  %1292 = getelementptr inbounds nuw i8, ptr %1290, i64 16
  %1293 = load <2 x double>, ptr %1292, align 16, !tbaa !26
  %1294 = getelementptr inbounds nuw i8, ptr %1290, i64 32
  %1295 = load <2 x double>, ptr %1294, align 16, !tbaa !26
  %1296 = getelementptr inbounds nuw i8, ptr %1290, i64 48
  %1297 = load <2 x double>, ptr %1296, align 16, !tbaa !26
  %1298 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1297, <2 x double> %1295)
  %1299 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1298, <2 x double> %1293)
  %1300 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1299, <2 x double> %1291)
  %1301 = icmp sgt i64 %1281, %1273
  %1302 = fmul <2 x double> %1280, %1300
  %1303 = select i1 %1301, <2 x double> %1302, <2 x double> %1300
  br label %1304

1304:                                             ; preds = %1284, %1288
  %1305 = phi <2 x double> [ %1287, %1284 ], [ %1303, %1288 ]
  %1306 = getelementptr inbounds nuw i8, ptr %1129, i64 1392
  %1307 = load <2 x double>, ptr %1306, align 16, !tbaa !26
  %1308 = fcmp ogt <2 x double> %1224, splat (double 0x3D719799812DEA11)
  %1309 = select <2 x i1> %1308, <2 x double> %1224, <2 x double> splat (double 0x3D719799812DEA11)
  %1310 = getelementptr inbounds nuw i8, ptr %1129, i64 1632
  store <2 x double> %1278, ptr %1310, align 16, !tbaa !26
  %1311 = getelementptr inbounds nuw i8, ptr %1129, i64 176
  %1312 = load <2 x double>, ptr %1311, align 16, !tbaa !26
  %1313 = fdiv <2 x double> %1312, %1309
  %1314 = getelementptr inbounds nuw i8, ptr %1129, i64 1648
  store <2 x double> %1313, ptr %1314, align 16, !tbaa !26
  %1315 = getelementptr inbounds nuw i8, ptr %1129, i64 1896
  %1316 = load ptr, ptr %1315, align 8, !tbaa !57
  %1317 = load i64, ptr %132, align 16, !tbaa !21
  %1318 = getelementptr <2 x double>, ptr %1316, i64 %1317
  %1319 = getelementptr i8, ptr %1318, i64 -16
  %1320 = load <2 x double>, ptr %1319, align 16, !tbaa !26
  %1321 = fadd <2 x double> %1307, %1320
  %1322 = fmul <2 x double> %1321, splat (double 5.000000e-01)
  %1323 = getelementptr inbounds nuw i8, ptr %1129, i64 48
  %1324 = load <2 x double>, ptr %1323, align 16, !tbaa !26
  %1325 = getelementptr inbounds nuw i8, ptr %1129, i64 64
  %1326 = load <2 x double>, ptr %1325, align 16, !tbaa !26
  %1327 = getelementptr inbounds nuw i8, ptr %1129, i64 80
  %1328 = load <2 x double>, ptr %1327, align 16, !tbaa !26
  %1329 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1322, <2 x double> %1328, <2 x double> %1326)
  %1330 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1322, <2 x double> %1329, <2 x double> %1324)
  %1331 = fmul <2 x double> %1305, %1330
  %1332 = fmul <2 x double> %1199, %1331
  %1333 = getelementptr inbounds nuw i8, ptr %1129, i64 512
  %1334 = load <2 x double>, ptr %1333, align 16, !tbaa !26
  %1335 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1332, <2 x double> %1334, <2 x double> splat (double 1.000000e+00))
  %1336 = fdiv <2 x double> splat (double 1.000000e+00), %1335
  %1337 = icmp eq <2 x i64> %1211, zeroinitializer
  %1338 = select <2 x i1> %1337, <2 x double> %1336, <2 x double> splat (double 1.000000e+00)
  %1339 = getelementptr inbounds nuw i8, ptr %1129, i64 1712
  store <2 x double> %1338, ptr %1339, align 16, !tbaa !26
  %1340 = fmul <2 x double> %1331, %1338
  %1341 = getelementptr inbounds nuw i8, ptr %1129, i64 1504
  store <2 x double> %1340, ptr %1341, align 16, !tbaa !26
  %1342 = fmul <2 x double> %1258, splat (double 2.000000e+00)
  %1343 = getelementptr inbounds nuw i8, ptr %1129, i64 96
  %1344 = load <2 x double>, ptr %1343, align 16, !tbaa !26
  %1345 = getelementptr inbounds nuw i8, ptr %1129, i64 112
  %1346 = load <2 x double>, ptr %1345, align 16, !tbaa !26
  %1347 = getelementptr inbounds nuw i8, ptr %1129, i64 128
  %1348 = load <2 x double>, ptr %1347, align 16, !tbaa !26
  %1349 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1307, <2 x double> %1348, <2 x double> %1346)
  %1350 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1307, <2 x double> %1349, <2 x double> %1344)
  %1351 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1342, <2 x double> %1350, <2 x double> %1340)
  %1352 = getelementptr inbounds nuw i8, ptr %1129, i64 1536
  store <2 x double> %1351, ptr %1352, align 16, !tbaa !26
  %1353 = fmul <2 x double> %1184, %1225
  %1354 = getelementptr inbounds nuw i8, ptr %1129, i64 496
  %1355 = load <2 x double>, ptr %1354, align 16, !tbaa !26
  %1356 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1353, <2 x double> %1355, <2 x double> splat (double 1.000000e+00))
  %1357 = fdiv <2 x double> %1184, %1356
  %1358 = load i64, ptr %133, align 8, !tbaa !22
  %1359 = sitofp i64 %1358 to double
  %1360 = fmul double %1359, 2.000000e+00
  %1361 = insertelement <2 x double> poison, double %1360, i64 0
  %1362 = shufflevector <2 x double> %1361, <2 x double> poison, <2 x i32> zeroinitializer
  %1363 = fmul <2 x double> %1313, %1362
  %1364 = fadd <2 x double> %1357, %1363
  %1365 = fdiv <2 x double> %1357, %1364
  %1366 = fmul <2 x double> %1270, %1363
  %1367 = select <2 x i1> %1337, <2 x double> %1357, <2 x double> %1366
  %1368 = getelementptr inbounds nuw i8, ptr %1129, i64 1520
  store <2 x double> %1367, ptr %1368, align 16, !tbaa !26
  %1369 = fmul <2 x double> %1363, %1365
  %1370 = select <2 x i1> %1337, <2 x double> %1357, <2 x double> %1369
  %1371 = getelementptr inbounds nuw i8, ptr %1129, i64 1552
  store <2 x double> %1370, ptr %1371, align 16, !tbaa !26
  %1372 = select <2 x i1> %1337, <2 x double> splat (double 1.000000e+00), <2 x double> %1365
  %1373 = getelementptr inbounds nuw i8, ptr %1129, i64 1568
  store <2 x double> %1372, ptr %1373, align 16, !tbaa !26
  br i1 %1274, label %1535, label %1374

1374:                                             ; preds = %1304
  %1375 = getelementptr inbounds nuw i8, ptr %1129, i64 144
  %1376 = load <2 x double>, ptr %1375, align 16, !tbaa !26
  %1377 = getelementptr inbounds nuw i8, ptr %1129, i64 160
  %1378 = load <2 x double>, ptr %1377, align 16, !tbaa !26
  %1379 = getelementptr inbounds nuw i8, ptr %1129, i64 384
  %1380 = load <2 x double>, ptr %1379, align 16, !tbaa !26
  %1381 = load i64, ptr %132, align 16, !tbaa !21
  %1382 = fsub <2 x double> %1249, %1380
  %1383 = fmul <2 x double> %1346, splat (double 5.000000e-01)
  %1384 = fmul <2 x double> %1348, splat (double 0x3FE5555555555555)
  %1385 = getelementptr inbounds nuw i8, ptr %1129, i64 1984
  %1386 = load ptr, ptr %1385, align 16, !tbaa !67
  %1387 = getelementptr inbounds nuw i8, ptr %1129, i64 1992
  %1388 = load ptr, ptr %1387, align 8, !tbaa !48
  %1389 = getelementptr inbounds nuw i8, ptr %1129, i64 1920
  %1390 = load ptr, ptr %1389, align 16, !tbaa !58
  %1391 = getelementptr inbounds nuw i8, ptr %1129, i64 1960
  %1392 = load ptr, ptr %1391, align 8, !tbaa !68
  %1393 = getelementptr inbounds nuw i8, ptr %1129, i64 1968
  %1394 = load ptr, ptr %1393, align 16, !tbaa !69
  %1395 = getelementptr inbounds nuw i8, ptr %1129, i64 1976
  %1396 = load ptr, ptr %1395, align 8, !tbaa !70
  %1397 = getelementptr inbounds nuw i8, ptr %1129, i64 1944
  %1398 = load ptr, ptr %1397, align 8, !tbaa !71
  %1399 = getelementptr inbounds nuw i8, ptr %1129, i64 1952
  %1400 = load ptr, ptr %1399, align 16, !tbaa !72
  %1401 = icmp sgt i64 %1381, 0
  br i1 %1401, label %1402, label %1647

1402:                                             ; preds = %1374
  %1403 = load <2 x double>, ptr %1316, align 16, !tbaa !26
  %1404 = getelementptr inbounds nuw i8, ptr %1129, i64 720
  %1405 = load <2 x double>, ptr %1404, align 16, !tbaa !26
  %1406 = getelementptr inbounds nuw i8, ptr %1129, i64 704
  %1407 = load <2 x double>, ptr %1406, align 16, !tbaa !26
  %1408 = fmul <2 x double> %1258, splat (double -2.000000e+00)
  %1409 = fmul <2 x double> %1408, %1307
  %1410 = fmul <2 x double> %1307, %1409
  %1411 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1307, <2 x double> %1384, <2 x double> %1383)
  %1412 = fmul <2 x double> %1410, %1411
  %1413 = getelementptr inbounds nuw i8, ptr %1129, i64 2008
  %1414 = fmul <2 x double> %1277, %1405
  %1415 = fdiv <2 x double> %1407, %1376
  br label %1416

1416:                                             ; preds = %1402, %1500
  %1417 = phi <2 x double> [ %1403, %1402 ], [ %1504, %1500 ]
  %1418 = phi <2 x double> [ zeroinitializer, %1402 ], [ %1501, %1500 ]
  %1419 = phi <2 x double> [ zeroinitializer, %1402 ], [ %1502, %1500 ]
  %1420 = phi <2 x double> [ zeroinitializer, %1402 ], [ %1503, %1500 ]
  %1421 = phi <2 x double> [ zeroinitializer, %1402 ], [ %1530, %1500 ]
  %1422 = phi <2 x double> [ zeroinitializer, %1402 ], [ %1532, %1500 ]
  %1423 = phi <2 x double> [ %1378, %1402 ], [ %1505, %1500 ]
  %1424 = phi i64 [ 0, %1402 ], [ %1426, %1500 ]
  %1425 = phi <2 x double> [ zeroinitializer, %1402 ], [ %1506, %1500 ]
  %1426 = add nuw nsw i64 %1424, 1
  %1427 = icmp slt i64 %1426, %1381
  br i1 %1427, label %1428, label %1497

1428:                                             ; preds = %1416
  %1429 = getelementptr inbounds nuw <2 x double>, ptr %1316, i64 %1426
  %1430 = load <2 x double>, ptr %1429, align 16, !tbaa !26
  %1431 = icmp slt i64 %1426, %1273
  br i1 %1431, label %1439, label %1432

1432:                                             ; preds = %1428
  %1433 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1430, <2 x double> %1348, <2 x double> %1346)
  %1434 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1430, <2 x double> %1433, <2 x double> %1344)
  %1435 = fneg <2 x double> %1430
  %1436 = fmul <2 x double> %1430, %1435
  %1437 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1430, <2 x double> %1384, <2 x double> %1383)
  %1438 = fmul <2 x double> %1436, %1437
  br label %1439

1439:                                             ; preds = %1428, %1432
  %1440 = phi <2 x double> [ %1434, %1432 ], [ %1378, %1428 ]
  %1441 = phi <2 x double> [ %1438, %1432 ], [ zeroinitializer, %1428 ]
  %1442 = load i64, ptr %1272, align 16, !tbaa !31
  %1443 = icmp eq i64 %1442, 0
  %1444 = load ptr, ptr %1413, align 8, !tbaa !35
  br i1 %1443, label %1445, label %1449

1445:                                             ; preds = %1439
  %1446 = getelementptr inbounds nuw <2 x double>, ptr %1444, i64 %1426
  %1447 = load <2 x double>, ptr %1446, align 16, !tbaa !26
  %1448 = fmul <2 x double> %1278, %1447
  br label %1465

1449:                                             ; preds = %1439
  %1450 = shl nsw i64 %1426, 6
  %1451 = getelementptr inbounds nuw i8, ptr %1444, i64 %1450
  %1452 = load <2 x double>, ptr %1451, align 16, !tbaa !26
  %1453 = getelementptr inbounds nuw i8, ptr %1451, i64 16
  %1454 = load <2 x double>, ptr %1453, align 16, !tbaa !26
  %1455 = getelementptr inbounds nuw i8, ptr %1451, i64 32
  %1456 = load <2 x double>, ptr %1455, align 16, !tbaa !26
  %1457 = getelementptr inbounds nuw i8, ptr %1451, i64 48
  %1458 = load <2 x double>, ptr %1457, align 16, !tbaa !26
  %1459 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1458, <2 x double> %1456)
  %1460 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1459, <2 x double> %1454)
  %1461 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1223, <2 x double> %1460, <2 x double> %1452)
  %1462 = icmp slt i64 %1424, %1442
  %1463 = fmul <2 x double> %1278, %1461
  %1464 = select i1 %1462, <2 x double> %1461, <2 x double> %1463
  br label %1465

1465:                                             ; preds = %1449, %1445
  %1466 = phi <2 x double> [ %1448, %1445 ], [ %1464, %1449 ]
  %1467 = icmp slt i64 %1424, %1442
  br i1 %1467, label %1474, label %1468

1468:                                             ; preds = %1465
  %1469 = fadd <2 x double> %1417, %1430
  %1470 = fmul <2 x double> %1469, splat (double 5.000000e-01)
  %1471 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1470, <2 x double> %1328, <2 x double> %1326)
  %1472 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1470, <2 x double> %1471, <2 x double> %1324)
  %1473 = fmul <2 x double> %1472, %1466
  br label %1484

1474:                                             ; preds = %1465
  %1475 = icmp slt i64 %1426, %1442
  br i1 %1475, label %1476, label %1478

1476:                                             ; preds = %1474
  %1477 = fmul <2 x double> %1376, %1466
  br label %1484

1478:                                             ; preds = %1474
  %1479 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1430, <2 x double> %1328, <2 x double> %1326)
  %1480 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1430, <2 x double> %1479, <2 x double> %1324)
  %1481 = fdiv <2 x double> %1414, %1480
  %1482 = fadd <2 x double> %1415, %1481
  %1483 = fdiv <2 x double> %1466, %1482
  br label %1484

1484:                                             ; preds = %1468, %1476, %1478
  %1485 = phi <2 x double> [ %1473, %1468 ], [ %1477, %1476 ], [ %1483, %1478 ]
  br i1 %1431, label %1490, label %1486

1486:                                             ; preds = %1484
  %1487 = getelementptr inbounds nuw <2 x double>, ptr %1386, i64 %1426
  %1488 = load <2 x double>, ptr %1487, align 16, !tbaa !26
  %1489 = fmul <2 x double> %1258, %1488
  br label %1490

1490:                                             ; preds = %1484, %1486
  %1491 = phi <2 x double> [ %1489, %1486 ], [ zeroinitializer, %1484 ]
  %1492 = fneg <2 x double> %1491
  %1493 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1492, <2 x double> %1423, <2 x double> %1485)
  %1494 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1491, <2 x double> %1440, <2 x double> %1485)
  %1495 = fadd <2 x double> %1425, %1441
  %1496 = fmul <2 x double> %1495, %1491
  br label %1500

1497:                                             ; preds = %1416
  %1498 = load <2 x double>, ptr %1341, align 16, !tbaa !26
  %1499 = load <2 x double>, ptr %1352, align 16, !tbaa !26
  br label %1500

1500:                                             ; preds = %1497, %1490
  %1501 = phi <2 x double> [ %1493, %1490 ], [ %1498, %1497 ]
  %1502 = phi <2 x double> [ %1494, %1490 ], [ %1499, %1497 ]
  %1503 = phi <2 x double> [ %1496, %1490 ], [ %1412, %1497 ]
  %1504 = phi <2 x double> [ %1430, %1490 ], [ %1417, %1497 ]
  %1505 = phi <2 x double> [ %1440, %1490 ], [ %1423, %1497 ]
  %1506 = phi <2 x double> [ %1441, %1490 ], [ %1425, %1497 ]
  %1507 = getelementptr inbounds nuw <2 x double>, ptr %1388, i64 %1424
  %1508 = load <2 x double>, ptr %1507, align 16, !tbaa !26
  %1509 = icmp slt i64 %1424, %1273
  %1510 = select i1 %1509, <2 x double> %1380, <2 x double> %1382
  %1511 = fmul <2 x double> %1174, %1510
  %1512 = fmul <2 x double> %1511, %1508
  %1513 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1512, <2 x double> %1423, <2 x double> %1501)
  %1514 = fadd <2 x double> %1419, %1513
  %1515 = fsub <2 x double> %1503, %1420
  %1516 = fneg <2 x double> %1512
  %1517 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1516, <2 x double> %1425, <2 x double> %1515)
  %1518 = getelementptr inbounds nuw <2 x double>, ptr %1390, i64 %1424
  %1519 = load <2 x double>, ptr %1518, align 16, !tbaa !26
  %1520 = fsub <2 x double> %1517, %1519
  %1521 = fneg <2 x double> %1418
  %1522 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1521, <2 x double> %1422, <2 x double> %1514)
  %1523 = fdiv <2 x double> splat (double 1.000000e+00), %1522
  %1524 = getelementptr inbounds nuw <2 x double>, ptr %1392, i64 %1424
  store <2 x double> %1520, ptr %1524, align 16, !tbaa !26
  %1525 = getelementptr inbounds nuw <2 x double>, ptr %1394, i64 %1424
  store <2 x double> %1418, ptr %1525, align 16, !tbaa !26
  %1526 = fadd <2 x double> %1418, %1502
  %1527 = fsub <2 x double> %1526, %1514
  %1528 = getelementptr inbounds nuw <2 x double>, ptr %1396, i64 %1424
  store <2 x double> %1527, ptr %1528, align 16, !tbaa !26
  %1529 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1418, <2 x double> %1421, <2 x double> %1520)
  %1530 = fmul <2 x double> %1529, %1523
  %1531 = getelementptr inbounds nuw <2 x double>, ptr %1398, i64 %1424
  store <2 x double> %1530, ptr %1531, align 16, !tbaa !26
  %1532 = fmul <2 x double> %1502, %1523
  %1533 = getelementptr inbounds nuw <2 x double>, ptr %1400, i64 %1424
  store <2 x double> %1532, ptr %1533, align 16, !tbaa !26
  %1534 = icmp eq i64 %1426, %1381
  br i1 %1534, label %1647, label %1416, !llvm.loop !73

1535:                                             ; preds = %1304
  %1536 = getelementptr inbounds nuw i8, ptr %1129, i64 384
  %1537 = load <2 x double>, ptr %1536, align 16, !tbaa !26
  %1538 = load i64, ptr %132, align 16, !tbaa !21
  %1539 = fsub <2 x double> %1249, %1537
  %1540 = fmul <2 x double> %1174, %1539
  %1541 = fmul <2 x double> %1346, splat (double 5.000000e-01)
  %1542 = fmul <2 x double> %1348, splat (double 0x3FE5555555555555)
  %1543 = getelementptr inbounds nuw i8, ptr %1129, i64 1984
  %1544 = load ptr, ptr %1543, align 16, !tbaa !67
  %1545 = getelementptr inbounds nuw i8, ptr %1129, i64 1992
  %1546 = load ptr, ptr %1545, align 8, !tbaa !48
  %1547 = getelementptr inbounds nuw i8, ptr %1129, i64 1920
  %1548 = load ptr, ptr %1547, align 16, !tbaa !58
  %1549 = getelementptr inbounds nuw i8, ptr %1129, i64 1960
  %1550 = load ptr, ptr %1549, align 8, !tbaa !68
  %1551 = getelementptr inbounds nuw i8, ptr %1129, i64 1968
  %1552 = load ptr, ptr %1551, align 16, !tbaa !69
  %1553 = getelementptr inbounds nuw i8, ptr %1129, i64 1976
  %1554 = load ptr, ptr %1553, align 8, !tbaa !70
  %1555 = getelementptr inbounds nuw i8, ptr %1129, i64 1944
  %1556 = load ptr, ptr %1555, align 8, !tbaa !71
  %1557 = getelementptr inbounds nuw i8, ptr %1129, i64 1952
  %1558 = load ptr, ptr %1557, align 16, !tbaa !72
  %1559 = icmp sgt i64 %1538, 0
  br i1 %1559, label %1560, label %1647

1560:                                             ; preds = %1535
  %1561 = load <2 x double>, ptr %1316, align 16, !tbaa !26
  %1562 = fneg <2 x double> %1561
  %1563 = fmul <2 x double> %1561, %1562
  %1564 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1561, <2 x double> %1542, <2 x double> %1541)
  %1565 = fmul <2 x double> %1563, %1564
  %1566 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1561, <2 x double> %1348, <2 x double> %1346)
  %1567 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1561, <2 x double> %1566, <2 x double> %1344)
  %1568 = fmul <2 x double> %1258, splat (double -2.000000e+00)
  %1569 = fmul <2 x double> %1568, %1307
  %1570 = fmul <2 x double> %1307, %1569
  %1571 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1307, <2 x double> %1542, <2 x double> %1541)
  %1572 = fmul <2 x double> %1570, %1571
  %1573 = getelementptr inbounds nuw i8, ptr %1129, i64 2008
  br label %1574

1574:                                             ; preds = %1560, %1615
  %1575 = phi <2 x double> [ %1561, %1560 ], [ %1619, %1615 ]
  %1576 = phi <2 x double> [ zeroinitializer, %1560 ], [ %1616, %1615 ]
  %1577 = phi <2 x double> [ zeroinitializer, %1560 ], [ %1617, %1615 ]
  %1578 = phi <2 x double> [ zeroinitializer, %1560 ], [ %1618, %1615 ]
  %1579 = phi <2 x double> [ zeroinitializer, %1560 ], [ %1642, %1615 ]
  %1580 = phi <2 x double> [ zeroinitializer, %1560 ], [ %1644, %1615 ]
  %1581 = phi <2 x double> [ %1567, %1560 ], [ %1620, %1615 ]
  %1582 = phi i64 [ 0, %1560 ], [ %1584, %1615 ]
  %1583 = phi <2 x double> [ %1565, %1560 ], [ %1621, %1615 ]
  %1584 = add nuw nsw i64 %1582, 1
  %1585 = icmp slt i64 %1584, %1538
  br i1 %1585, label %1586, label %1612

1586:                                             ; preds = %1574
  %1587 = getelementptr inbounds nuw <2 x double>, ptr %1316, i64 %1584
  %1588 = load <2 x double>, ptr %1587, align 16, !tbaa !26
  %1589 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1588, <2 x double> %1348, <2 x double> %1346)
  %1590 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1588, <2 x double> %1589, <2 x double> %1344)
  %1591 = fneg <2 x double> %1588
  %1592 = fmul <2 x double> %1588, %1591
  %1593 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1588, <2 x double> %1542, <2 x double> %1541)
  %1594 = fmul <2 x double> %1592, %1593
  %1595 = fadd <2 x double> %1575, %1588
  %1596 = fmul <2 x double> %1595, splat (double 5.000000e-01)
  %1597 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1596, <2 x double> %1328, <2 x double> %1326)
  %1598 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1596, <2 x double> %1597, <2 x double> %1324)
  %1599 = load ptr, ptr %1573, align 8, !tbaa !35
  %1600 = getelementptr inbounds nuw <2 x double>, ptr %1599, i64 %1584
  %1601 = load <2 x double>, ptr %1600, align 16, !tbaa !26
  %1602 = fmul <2 x double> %1279, %1601
  %1603 = fmul <2 x double> %1602, %1598
  %1604 = getelementptr inbounds nuw <2 x double>, ptr %1544, i64 %1584
  %1605 = load <2 x double>, ptr %1604, align 16, !tbaa !26
  %1606 = fmul <2 x double> %1258, %1605
  %1607 = fneg <2 x double> %1606
  %1608 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1607, <2 x double> %1581, <2 x double> %1603)
  %1609 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1606, <2 x double> %1590, <2 x double> %1603)
  %1610 = fadd <2 x double> %1583, %1594
  %1611 = fmul <2 x double> %1610, %1606
  br label %1615

1612:                                             ; preds = %1574
  %1613 = load <2 x double>, ptr %1341, align 16, !tbaa !26
  %1614 = load <2 x double>, ptr %1352, align 16, !tbaa !26
  br label %1615

1615:                                             ; preds = %1612, %1586
  %1616 = phi <2 x double> [ %1608, %1586 ], [ %1613, %1612 ]
  %1617 = phi <2 x double> [ %1609, %1586 ], [ %1614, %1612 ]
  %1618 = phi <2 x double> [ %1611, %1586 ], [ %1572, %1612 ]
  %1619 = phi <2 x double> [ %1588, %1586 ], [ %1575, %1612 ]
  %1620 = phi <2 x double> [ %1590, %1586 ], [ %1581, %1612 ]
  %1621 = phi <2 x double> [ %1594, %1586 ], [ %1583, %1612 ]
  %1622 = getelementptr inbounds nuw <2 x double>, ptr %1546, i64 %1582
  %1623 = load <2 x double>, ptr %1622, align 16, !tbaa !26
  %1624 = fmul <2 x double> %1540, %1623
  %1625 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1624, <2 x double> %1581, <2 x double> %1616)
  %1626 = fadd <2 x double> %1577, %1625
  %1627 = fsub <2 x double> %1618, %1578
  %1628 = fneg <2 x double> %1624
  %1629 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1628, <2 x double> %1583, <2 x double> %1627)
  %1630 = getelementptr inbounds nuw <2 x double>, ptr %1548, i64 %1582
  %1631 = load <2 x double>, ptr %1630, align 16, !tbaa !26
  %1632 = fsub <2 x double> %1629, %1631
  %1633 = fneg <2 x double> %1576
  %1634 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1633, <2 x double> %1580, <2 x double> %1626)
  %1635 = fdiv <2 x double> splat (double 1.000000e+00), %1634
  %1636 = getelementptr inbounds nuw <2 x double>, ptr %1550, i64 %1582
  store <2 x double> %1632, ptr %1636, align 16, !tbaa !26
  %1637 = getelementptr inbounds nuw <2 x double>, ptr %1552, i64 %1582
  store <2 x double> %1576, ptr %1637, align 16, !tbaa !26
  %1638 = fadd <2 x double> %1576, %1617
  %1639 = fsub <2 x double> %1638, %1626
  %1640 = getelementptr inbounds nuw <2 x double>, ptr %1554, i64 %1582
  store <2 x double> %1639, ptr %1640, align 16, !tbaa !26
  %1641 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1576, <2 x double> %1579, <2 x double> %1632)
  %1642 = fmul <2 x double> %1641, %1635
  %1643 = getelementptr inbounds nuw <2 x double>, ptr %1556, i64 %1582
  store <2 x double> %1642, ptr %1643, align 16, !tbaa !26
  %1644 = fmul <2 x double> %1617, %1635
  %1645 = getelementptr inbounds nuw <2 x double>, ptr %1558, i64 %1582
  store <2 x double> %1644, ptr %1645, align 16, !tbaa !26
  %1646 = icmp eq i64 %1584, %1538
  br i1 %1646, label %1647, label %1574, !llvm.loop !74

1647:                                             ; preds = %1500, %1615, %1374, %1535
  %1648 = getelementptr inbounds nuw i8, ptr %1129, i64 1944
  %1649 = load ptr, ptr %1648, align 8, !tbaa !71
  %1650 = load i64, ptr %132, align 16, !tbaa !21
  %1651 = add nsw i64 %1650, -1
  %1652 = getelementptr inbounds <2 x double>, ptr %1649, i64 %1651
  %1653 = load <2 x double>, ptr %1652, align 16, !tbaa !26
  %1654 = getelementptr inbounds nuw i8, ptr %1129, i64 1952
  %1655 = load ptr, ptr %1654, align 16, !tbaa !72
  %1656 = getelementptr inbounds <2 x double>, ptr %1655, i64 %1651
  %1657 = load <2 x double>, ptr %1656, align 16, !tbaa !26
  %1658 = load <2 x double>, ptr %1341, align 16, !tbaa !26
  %1659 = fmul <2 x double> %1653, %1658
  %1660 = fsub <2 x double> splat (double 1.000000e+00), %1657
  %1661 = fmul <2 x double> %1658, %1660
  %1662 = load <2 x double>, ptr %1368, align 16, !tbaa !26
  %1663 = load <2 x double>, ptr %1182, align 16, !tbaa !26
  %1664 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1662, <2 x double> %1663, <2 x double> %1659)
  %1665 = load <2 x double>, ptr %1221, align 16, !tbaa !26
  %1666 = fsub <2 x double> %1664, %1665
  %1667 = fadd <2 x double> %1661, %1662
  %1668 = load <2 x double>, ptr %1218, align 16, !tbaa !26
  %1669 = fadd <2 x double> %1667, %1668
  %1670 = load <2 x i64>, ptr %1210, align 16, !tbaa !26
  %1671 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1670)
  %1672 = icmp eq i64 %1671, 0
  %1673 = load i64, ptr %133, align 8, !tbaa !22
  br i1 %1672, label %1674, label %1689

1674:                                             ; preds = %1647
  %1675 = icmp slt i64 %1673, 0
  br i1 %1675, label %1680, label %1676

1676:                                             ; preds = %1674
  %1677 = getelementptr inbounds nuw i8, ptr %1129, i64 352
  %1678 = getelementptr inbounds nuw i8, ptr %1129, i64 2064
  %1679 = load <2 x double>, ptr %1677, align 16, !tbaa !26
  br label %1682

1680:                                             ; preds = %1682, %1674
  %1681 = getelementptr inbounds nuw i8, ptr %1129, i64 1456
  store <2 x double> %1666, ptr %1681, align 16, !tbaa !26
  br label %1816

1682:                                             ; preds = %1676, %1682
  %1683 = phi i64 [ 0, %1676 ], [ %1686, %1682 ]
  %1684 = load ptr, ptr %1678, align 16, !tbaa !75
  %1685 = getelementptr inbounds nuw <2 x double>, ptr %1684, i64 %1683
  store <2 x double> %1679, ptr %1685, align 16, !tbaa !26
  %1686 = add nuw nsw i64 %1683, 1
  %1687 = load i64, ptr %133, align 8, !tbaa !22
  %1688 = icmp slt i64 %1683, %1687
  br i1 %1688, label %1682, label %1680, !llvm.loop !76

1689:                                             ; preds = %1647
  %1690 = load <2 x double>, ptr %1189, align 16, !tbaa !26
  %1691 = load <2 x double>, ptr %1238, align 16, !tbaa !26
  %1692 = getelementptr inbounds nuw i8, ptr %1129, i64 320
  %1693 = load <2 x double>, ptr %1692, align 16, !tbaa !26
  %1694 = fmul <2 x double> %1691, %1693
  %1695 = load <2 x double>, ptr %1129, align 16, !tbaa !26
  %1696 = fsub <2 x double> %1695, %1690
  %1697 = sitofp i64 %1673 to double
  %1698 = insertelement <2 x double> poison, double %1697, i64 0
  %1699 = shufflevector <2 x double> %1698, <2 x double> poison, <2 x i32> zeroinitializer
  %1700 = fdiv <2 x double> %1696, %1699
  %1701 = load <2 x double>, ptr %1371, align 16, !tbaa !26
  %1702 = load <2 x double>, ptr %1373, align 16, !tbaa !26
  %1703 = getelementptr inbounds nuw i8, ptr %1129, i64 352
  %1704 = load <2 x double>, ptr %1703, align 16, !tbaa !26
  %1705 = getelementptr inbounds nuw i8, ptr %1129, i64 2064
  %1706 = load ptr, ptr %1705, align 16, !tbaa !75
  %1707 = getelementptr inbounds <2 x double>, ptr %1706, i64 %1673
  store <2 x double> %1704, ptr %1707, align 16, !tbaa !26
  %1708 = icmp sgt i64 %1673, 0
  br i1 %1708, label %1709, label %1800

1709:                                             ; preds = %1689
  %1710 = fneg <2 x double> %1694
  %1711 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1702, <2 x double> %1701)
  %1712 = fsub <2 x double> splat (double 1.000000e+00), %1702
  %1713 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1694, <2 x double> %1712, <2 x double> %1701)
  %1714 = getelementptr inbounds nuw i8, ptr %1129, i64 2072
  %1715 = getelementptr inbounds nuw i8, ptr %1129, i64 2080
  %1716 = getelementptr inbounds nuw i8, ptr %1129, i64 192
  %1717 = fmul <2 x double> %1694, splat (double -5.000000e-01)
  %1718 = getelementptr inbounds nuw i8, ptr %1129, i64 2040
  %1719 = getelementptr inbounds nuw i8, ptr %1129, i64 2048
  %1720 = getelementptr inbounds nuw i8, ptr %1129, i64 2056
  br label %1721

1721:                                             ; preds = %1709, %1775
  %1722 = phi <2 x double> [ %1713, %1709 ], [ %1777, %1775 ]
  %1723 = phi <2 x double> [ %1711, %1709 ], [ %1778, %1775 ]
  %1724 = phi <2 x double> [ %1663, %1709 ], [ %1793, %1775 ]
  %1725 = phi <2 x double> [ zeroinitializer, %1709 ], [ %1796, %1775 ]
  %1726 = phi <2 x double> [ %1704, %1709 ], [ %1739, %1775 ]
  %1727 = phi i64 [ %1673, %1709 ], [ %1728, %1775 ]
  %1728 = add nsw i64 %1727, -1
  %1729 = uitofp nneg i64 %1728 to double
  %1730 = insertelement <2 x double> poison, double %1729, i64 0
  %1731 = shufflevector <2 x double> %1730, <2 x double> poison, <2 x i32> zeroinitializer
  %1732 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1731, <2 x double> %1700, <2 x double> %1690)
  %1733 = load <2 x double>, ptr %1239, align 16, !tbaa !26
  %1734 = load <2 x double>, ptr %1241, align 16, !tbaa !26
  %1735 = load <2 x double>, ptr %1243, align 16, !tbaa !26
  %1736 = load <2 x double>, ptr %1245, align 16, !tbaa !26
  %1737 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1732, <2 x double> %1736, <2 x double> %1735)
  %1738 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1732, <2 x double> %1737, <2 x double> %1734)
  %1739 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1732, <2 x double> %1738, <2 x double> %1733)
  %1740 = load <2 x double>, ptr %1173, align 16, !tbaa !26
  %1741 = load <2 x double>, ptr %1159, align 16, !tbaa !26
  %1742 = load ptr, ptr %1714, align 8, !tbaa !49
  %1743 = getelementptr inbounds nuw <2 x double>, ptr %1742, i64 %1728
  %1744 = load <2 x double>, ptr %1743, align 16, !tbaa !26
  %1745 = fmul <2 x double> %1741, %1744
  %1746 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1740, <2 x double> %1739, <2 x double> %1745)
  %1747 = load <2 x double>, ptr %1163, align 16, !tbaa !26
  %1748 = load ptr, ptr %1715, align 16, !tbaa !59
  %1749 = getelementptr inbounds nuw <2 x double>, ptr %1748, i64 %1728
  %1750 = load <2 x double>, ptr %1749, align 16, !tbaa !26
  %1751 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1747, <2 x double> %1750, <2 x double> %1746)
  %1752 = fmul <2 x double> %1751, splat (double 5.000000e-01)
  %1753 = icmp eq i64 %1727, 1
  br i1 %1753, label %1769, label %1754

1754:                                             ; preds = %1721
  %1755 = load <2 x double>, ptr %1716, align 16, !tbaa !26
  %1756 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1752, <2 x double> %1755, <2 x double> %1717)
  %1757 = load <2 x double>, ptr %1314, align 16, !tbaa !26
  %1758 = fmul <2 x double> %1699, %1757
  %1759 = load <2 x double>, ptr %1260, align 16, !tbaa !26
  %1760 = load <2 x double>, ptr %1262, align 16, !tbaa !26
  %1761 = load <2 x double>, ptr %1264, align 16, !tbaa !26
  %1762 = load <2 x double>, ptr %1266, align 16, !tbaa !26
  %1763 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1732, <2 x double> %1762, <2 x double> %1761)
  %1764 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1732, <2 x double> %1763, <2 x double> %1760)
  %1765 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1732, <2 x double> %1764, <2 x double> %1759)
  %1766 = fmul <2 x double> %1758, %1765
  %1767 = fsub <2 x double> %1766, %1756
  %1768 = fadd <2 x double> %1756, %1766
  br label %1775

1769:                                             ; preds = %1721
  %1770 = load <2 x double>, ptr %1368, align 16, !tbaa !26
  %1771 = load <2 x double>, ptr %1716, align 16, !tbaa !26
  %1772 = fmul <2 x double> %1752, splat (double -2.000000e+00)
  %1773 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1772, <2 x double> %1771, <2 x double> %1770)
  %1774 = fadd <2 x double> %1694, %1773
  br label %1775

1775:                                             ; preds = %1769, %1754
  %1776 = phi <2 x double> [ %1755, %1754 ], [ %1771, %1769 ]
  %1777 = phi <2 x double> [ %1767, %1754 ], [ %1774, %1769 ]
  %1778 = phi <2 x double> [ %1768, %1754 ], [ %1770, %1769 ]
  %1779 = fsub <2 x double> %1726, %1739
  %1780 = fmul <2 x double> %1740, %1779
  %1781 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1780, <2 x double> %1776, <2 x double> %1722)
  %1782 = fadd <2 x double> %1778, %1781
  %1783 = fneg <2 x double> %1723
  %1784 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1783, <2 x double> %1725, <2 x double> %1782)
  %1785 = fdiv <2 x double> splat (double 1.000000e+00), %1784
  %1786 = load ptr, ptr %1705, align 16, !tbaa !75
  %1787 = getelementptr inbounds nuw <2 x double>, ptr %1786, i64 %1728
  store <2 x double> %1739, ptr %1787, align 16, !tbaa !26
  %1788 = load ptr, ptr %1718, align 8, !tbaa !62
  %1789 = getelementptr inbounds nuw <2 x double>, ptr %1788, i64 %1728
  %1790 = load <2 x double>, ptr %1789, align 16, !tbaa !26
  %1791 = fneg <2 x double> %1790
  %1792 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1723, <2 x double> %1724, <2 x double> %1791)
  %1793 = fmul <2 x double> %1785, %1792
  %1794 = load ptr, ptr %1719, align 16, !tbaa !77
  %1795 = getelementptr inbounds nuw <2 x double>, ptr %1794, i64 %1728
  store <2 x double> %1793, ptr %1795, align 16, !tbaa !26
  %1796 = fmul <2 x double> %1777, %1785
  %1797 = load ptr, ptr %1720, align 8, !tbaa !78
  %1798 = getelementptr inbounds nuw <2 x double>, ptr %1797, i64 %1728
  store <2 x double> %1796, ptr %1798, align 16, !tbaa !26
  %1799 = icmp samesign ugt i64 %1727, 1
  br i1 %1799, label %1721, label %1800, !llvm.loop !79

1800:                                             ; preds = %1775, %1689
  %1801 = load <2 x i64>, ptr %1210, align 16, !tbaa !26
  %1802 = load <2 x double>, ptr %1368, align 16, !tbaa !26
  %1803 = getelementptr inbounds nuw i8, ptr %1129, i64 2048
  %1804 = load ptr, ptr %1803, align 16, !tbaa !77
  %1805 = load <2 x double>, ptr %1804, align 16, !tbaa !26
  %1806 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1802, <2 x double> %1805, <2 x double> %1659)
  %1807 = icmp eq <2 x i64> %1801, zeroinitializer
  %1808 = select <2 x i1> %1807, <2 x double> %1666, <2 x double> %1806
  %1809 = getelementptr inbounds nuw i8, ptr %1129, i64 1456
  store <2 x double> %1808, ptr %1809, align 16, !tbaa !26
  %1810 = getelementptr inbounds nuw i8, ptr %1129, i64 2056
  %1811 = load ptr, ptr %1810, align 8, !tbaa !78
  %1812 = load <2 x double>, ptr %1811, align 16, !tbaa !26
  %1813 = fsub <2 x double> splat (double 1.000000e+00), %1812
  %1814 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1802, <2 x double> %1813, <2 x double> %1661)
  %1815 = select <2 x i1> %1807, <2 x double> %1669, <2 x double> %1814
  br label %1816

1816:                                             ; preds = %1680, %1800
  %1817 = phi <2 x double> [ %1669, %1680 ], [ %1815, %1800 ]
  %1818 = getelementptr inbounds nuw i8, ptr %1129, i64 1472
  store <2 x double> %1817, ptr %1818, align 16, !tbaa !26
  %1819 = add nuw nsw i64 %1127, 1
  %1820 = load i64, ptr %157, align 8, !tbaa !20
  %1821 = icmp slt i64 %1819, %1820
  br i1 %1821, label %1126, label %1123, !llvm.loop !80

1822:                                             ; preds = %1922, %1121, %1123
  %1823 = phi <2 x double> [ %1122, %1121 ], [ %1124, %1123 ], [ %1124, %1922 ]
  %1824 = fcmp ogt <2 x double> %1823, zeroinitializer
  %1825 = bitcast <2 x i1> %1824 to i2
  %1826 = icmp eq i2 %1825, 0
  br i1 %1826, label %1929, label %1926

1827:                                             ; preds = %1123, %1922
  %1828 = phi i64 [ %1923, %1922 ], [ %1820, %1123 ]
  %1829 = phi i64 [ %1924, %1922 ], [ 0, %1123 ]
  %1830 = load ptr, ptr %142, align 8, !tbaa !28
  %1831 = getelementptr inbounds nuw %struct.Piece, ptr %1830, i64 %1829
  %1832 = getelementptr inbounds nuw i8, ptr %1831, i64 1872
  %1833 = load <2 x i64>, ptr %1832, align 16, !tbaa !26
  %1834 = getelementptr inbounds nuw i8, ptr %1831, i64 560
  %1835 = load <2 x double>, ptr %1834, align 16, !tbaa !26
  %1836 = fcmp ogt <2 x double> %1835, zeroinitializer
  %1837 = select <2 x i1> %1836, <2 x i64> %1833, <2 x i64> zeroinitializer
  %1838 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1837)
  %1839 = icmp eq i64 %1838, 0
  br i1 %1839, label %1922, label %1840

1840:                                             ; preds = %1827
  %1841 = load <2 x double>, ptr %180, align 16, !tbaa !26
  %1842 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1841, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1843 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1841, <2 x double> %1842, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1844 = load <2 x double>, ptr %181, align 16, !tbaa !26
  %1845 = getelementptr inbounds nuw i8, ptr %1831, i64 1456
  %1846 = load <2 x double>, ptr %1845, align 16, !tbaa !26
  %1847 = getelementptr inbounds nuw i8, ptr %1831, i64 1472
  %1848 = load <2 x double>, ptr %1847, align 16, !tbaa !26
  %1849 = fdiv <2 x double> %1846, %1848
  %1850 = fcmp olt <2 x double> %1849, %1841
  %1851 = select <2 x i1> %1850, <2 x double> %1849, <2 x double> %1841
  %1852 = getelementptr inbounds nuw i8, ptr %1831, i64 880
  %1853 = load <2 x double>, ptr %1852, align 16, !tbaa !26
  %1854 = fcmp olt <2 x double> %1853, %1851
  %1855 = select <2 x i1> %1854, <2 x double> %1853, <2 x double> %1851
  %1856 = fneg <2 x double> %1848
  %1857 = getelementptr inbounds nuw i8, ptr %1831, i64 1776
  %1858 = load <2 x double>, ptr %1857, align 16, !tbaa !26
  br label %1862

1859:                                             ; preds = %1862
  %1860 = getelementptr inbounds nuw i8, ptr %1831, i64 1488
  store <2 x double> %1913, ptr %1860, align 16, !tbaa !26
  %1861 = load i64, ptr %157, align 8, !tbaa !20
  br label %1922

1862:                                             ; preds = %1840, %1862
  %1863 = phi <2 x i64> [ %1837, %1840 ], [ %1916, %1862 ]
  %1864 = phi i32 [ 0, %1840 ], [ %1917, %1862 ]
  %1865 = phi <2 x double> [ %1855, %1840 ], [ %1913, %1862 ]
  %1866 = fadd <2 x double> %1865, splat (double 2.731500e+02)
  %1867 = fcmp ogt <2 x double> %1865, zeroinitializer
  %1868 = select <2 x i1> %1867, <2 x double> %1865, <2 x double> zeroinitializer
  %1869 = fadd <2 x double> %1868, splat (double 2.731500e+02)
  %1870 = fadd <2 x double> %1869, splat (double 0xC08451671D164BD4)
  %1871 = fdiv <2 x double> splat (double 0x3FCE88FD35E8A60E), %1870
  %1872 = fsub <2 x double> %1869, %1871
  %1873 = fadd <2 x double> %1872, splat (double 0x40923C3565924845)
  %1874 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1872, <2 x double> %1873, <2 x double> splat (double 0xC12619EA558539E6))
  %1875 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1872, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> splat (double 0x40C77A698FD9BCCA))
  %1876 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1872, <2 x double> %1875, <2 x double> splat (double 0xC148A99584203885))
  %1877 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1872, <2 x double> splat (double 0x402DD4891DBECC6B), <2 x double> splat (double 0xC0B2D7440748F0B3))
  %1878 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1872, <2 x double> %1877, <2 x double> splat (double 0x4118B9E59F2691E5))
  %1879 = fmul <2 x double> %1878, splat (double 2.000000e+00)
  %1880 = fmul <2 x double> %1874, splat (double 4.000000e+00)
  %1881 = fneg <2 x double> %1878
  %1882 = fmul <2 x double> %1880, %1881
  %1883 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1876, <2 x double> %1876, <2 x double> %1882)
  %1884 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1883)
  %1885 = fsub <2 x double> %1884, %1876
  %1886 = fdiv <2 x double> %1879, %1885
  %1887 = fmul <2 x double> %1886, %1886
  %1888 = fmul <2 x double> %1887, splat (double 1.000000e+06)
  %1889 = fmul <2 x double> %1887, %1888
  %1890 = fmul <2 x double> %1866, splat (double 4.615260e+02)
  %1891 = fdiv <2 x double> %1889, %1890
  %1892 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1856, <2 x double> %1865, <2 x double> %1846)
  %1893 = fsub <2 x double> %1891, %1844
  %1894 = fcmp ogt <2 x double> %1893, zeroinitializer
  %1895 = select <2 x i1> %1894, <2 x double> %1893, <2 x double> zeroinitializer
  %1896 = fmul <2 x double> %1843, %1895
  %1897 = fdiv <2 x double> %1896, %1858
  %1898 = fsub <2 x double> %1892, %1897
  %1899 = fmul <2 x double> %1843, %1891
  %1900 = fdiv <2 x double> %1843, %1890
  %1901 = fadd <2 x double> %1900, splat (double -1.000000e+00)
  %1902 = fmul <2 x double> %1901, %1899
  %1903 = fdiv <2 x double> %1902, %1866
  %1904 = fdiv <2 x double> %1903, %1858
  %1905 = fcmp ule <2 x double> %1891, %1844
  %1906 = select <2 x i1> %1905, <2 x double> zeroinitializer, <2 x double> %1904
  %1907 = fsub <2 x double> %1856, %1906
  %1908 = fdiv <2 x double> %1898, %1907
  %1909 = fsub <2 x double> %1865, %1908
  %1910 = fcmp olt <2 x double> %1909, %1851
  %1911 = select <2 x i1> %1910, <2 x double> %1909, <2 x double> %1851
  %1912 = icmp eq <2 x i64> %1863, zeroinitializer
  %1913 = select <2 x i1> %1912, <2 x double> %1865, <2 x double> %1911
  %1914 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1908)
  %1915 = fcmp oge <2 x double> %1914, splat (double 1.000000e-05)
  %1916 = select <2 x i1> %1915, <2 x i64> %1863, <2 x i64> zeroinitializer
  %1917 = add nuw nsw i32 %1864, 1
  %1918 = icmp samesign ult i32 %1864, 7
  %1919 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1916)
  %1920 = icmp ne i64 %1919, 0
  %1921 = select i1 %1918, i1 %1920, i1 false
  br i1 %1921, label %1862, label %1859, !llvm.loop !81

1922:                                             ; preds = %1827, %1859
  %1923 = phi i64 [ %1828, %1827 ], [ %1861, %1859 ]
  %1924 = add nuw nsw i64 %1829, 1
  %1925 = icmp slt i64 %1924, %1923
  br i1 %1925, label %1827, label %1822, !llvm.loop !82

1926:                                             ; preds = %1822
  %1927 = sext <2 x i1> %1824 to <2 x i64>
  %1928 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, <2 x i64> noundef %1927) #7
  br label %1929

1929:                                             ; preds = %1822, %1926
  %1930 = phi <2 x double> [ %1928, %1926 ], [ zeroinitializer, %1822 ]
  %1931 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %1932 = fcmp ogt <2 x double> %1931, zeroinitializer
  %1933 = sext <2 x i1> %1932 to <2 x i64>
  %1934 = xor <2 x i64> %1933, splat (i64 -1)
  %1935 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %1936 = fcmp oeq <2 x double> %1935, splat (double 1.000000e+00)
  %1937 = fcmp oeq <2 x double> %1935, splat (double 2.000000e+00)
  %1938 = or <2 x i1> %1936, %1937
  %1939 = select <2 x i1> %1938, <2 x i64> %1934, <2 x i64> zeroinitializer
  %1940 = xor <2 x i64> %1939, %1933
  %1941 = load <2 x double>, ptr %180, align 16, !tbaa !26
  %1942 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %1943 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %1944 = icmp eq <2 x i64> %1940, splat (i64 -1)
  %1945 = select <2 x i1> %1944, <2 x double> %1943, <2 x double> %1942
  %1946 = bitcast <2 x i1> %1932 to i2
  %1947 = icmp eq i2 %1946, 0
  br i1 %1947, label %1979, label %1948

1948:                                             ; preds = %1929
  %1949 = select <2 x i1> %1932, <2 x double> %1930, <2 x double> %1945
  %1950 = fmul <2 x double> %1949, splat (double 0x3EB0C6F7A0B5ED8D)
  %1951 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1950)
  %1952 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1951)
  %1953 = fmul <2 x double> %1952, %1952
  %1954 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1952, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %1953)
  %1955 = fadd <2 x double> %1954, splat (double 0x402DD4891DBECC6B)
  %1956 = fmul <2 x double> %1952, splat (double 0x40C77A698FD9BCCA)
  %1957 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1953, <2 x double> splat (double 0x40923C3565924845), <2 x double> %1956)
  %1958 = fadd <2 x double> %1957, splat (double 0xC0B2D7440748F0B3)
  %1959 = fmul <2 x double> %1952, splat (double 0xC148A99584203885)
  %1960 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1953, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %1959)
  %1961 = fadd <2 x double> %1960, splat (double 0x4118B9E59F2691E5)
  %1962 = fmul <2 x double> %1961, splat (double 2.000000e+00)
  %1963 = fneg <2 x double> %1958
  %1964 = fmul <2 x double> %1955, splat (double 4.000000e+00)
  %1965 = fneg <2 x double> %1961
  %1966 = fmul <2 x double> %1964, %1965
  %1967 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1958, <2 x double> %1958, <2 x double> %1966)
  %1968 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1967)
  %1969 = fsub <2 x double> %1963, %1968
  %1970 = fdiv <2 x double> %1962, %1969
  %1971 = fadd <2 x double> %1970, splat (double 0x408451671D164BD4)
  %1972 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1970, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %1973 = fmul <2 x double> %1972, splat (double -4.000000e+00)
  %1974 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1971, <2 x double> %1971, <2 x double> %1973)
  %1975 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1974)
  %1976 = fsub <2 x double> %1971, %1975
  %1977 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1976, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %1978 = select <2 x i1> %1932, <2 x double> %1977, <2 x double> %1941
  br label %1979

1979:                                             ; preds = %1948, %1929
  %1980 = phi <2 x double> [ %1949, %1948 ], [ %1945, %1929 ]
  %1981 = phi <2 x double> [ %1978, %1948 ], [ %1941, %1929 ]
  %1982 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %1983 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %1984 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %1985 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %1986 = fmul <2 x double> %1984, %1985
  %1987 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1982, <2 x double> %1983, <2 x double> %1986)
  %1988 = load <2 x double>, ptr %186, align 16, !tbaa !26
  %1989 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %1990 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %1991 = fneg <2 x double> %1987
  %1992 = fmul <2 x double> %1990, %1991
  %1993 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1988, <2 x double> %1989, <2 x double> %1992)
  %1994 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %1995 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1990, <2 x double> %1994, <2 x double> %1988)
  %1996 = fdiv <2 x double> %1993, %1995
  %1997 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %1998 = select <2 x i1> %1944, <2 x double> %1997, <2 x double> %1942
  store <2 x double> %1998, ptr %189, align 16, !tbaa !26
  %1999 = load <2 x double>, ptr %190, align 16, !tbaa !26
  %2000 = select <2 x i1> %1944, <2 x double> %1999, <2 x double> %1996
  store <2 x double> %2000, ptr %190, align 16, !tbaa !26
  store <2 x double> %1980, ptr %183, align 16, !tbaa !26
  %2001 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %2002 = and <2 x i64> %2001, %1939
  %2003 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2002)
  %2004 = icmp eq i64 %2003, 0
  br i1 %2004, label %2471, label %2005

2005:                                             ; preds = %1979
  %2006 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %2007 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %2008 = fmul <2 x double> %1984, %2007
  %2009 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1982, <2 x double> %2006, <2 x double> %2008)
  %2010 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %2011 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %2012 = fdiv <2 x double> %2010, %2011
  %2013 = fmul <2 x double> %1942, splat (double 3.000000e-01)
  %2014 = load <2 x double>, ptr %195, align 16, !tbaa !26
  %2015 = fadd <2 x double> %1942, %2014
  %2016 = fadd <2 x double> %2015, splat (double 2.000000e+05)
  %2017 = fmul <2 x double> %2011, splat (double 2.870530e+02)
  %2018 = fdiv <2 x double> %1942, %2017
  %2019 = fcmp ogt <2 x double> %1980, %2013
  %2020 = select <2 x i1> %2019, <2 x double> %1980, <2 x double> %2013
  %2021 = fcmp olt <2 x double> %2020, %2016
  %2022 = select <2 x i1> %2021, <2 x double> %2020, <2 x double> %2016
  %2023 = icmp eq <2 x i64> %1939, zeroinitializer
  %2024 = select <2 x i1> %2023, <2 x double> %1980, <2 x double> %2022
  %2025 = fdiv <2 x double> %1998, splat (double 2.870530e+02)
  %2026 = fmul <2 x double> %2018, splat (double 2.000000e+00)
  %2027 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2026)
  br label %2028

2028:                                             ; preds = %2257, %2005
  %2029 = phi <2 x double> [ %1981, %2005 ], [ %2063, %2257 ]
  %2030 = phi <2 x double> [ %2013, %2005 ], [ %2414, %2257 ]
  %2031 = phi <2 x double> [ %2016, %2005 ], [ %2411, %2257 ]
  %2032 = phi <2 x i64> [ %2002, %2005 ], [ %2426, %2257 ]
  %2033 = phi i32 [ 0, %2005 ], [ %2431, %2257 ]
  %2034 = phi <2 x double> [ %2024, %2005 ], [ %2428, %2257 ]
  %2035 = fmul <2 x double> %2034, splat (double 0x3EB0C6F7A0B5ED8D)
  %2036 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2035)
  %2037 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2036)
  %2038 = fmul <2 x double> %2037, %2037
  %2039 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2037, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2038)
  %2040 = fadd <2 x double> %2039, splat (double 0x402DD4891DBECC6B)
  %2041 = fmul <2 x double> %2037, splat (double 0x40C77A698FD9BCCA)
  %2042 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2038, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2041)
  %2043 = fadd <2 x double> %2042, splat (double 0xC0B2D7440748F0B3)
  %2044 = fmul <2 x double> %2037, splat (double 0xC148A99584203885)
  %2045 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2038, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2044)
  %2046 = fadd <2 x double> %2045, splat (double 0x4118B9E59F2691E5)
  %2047 = fmul <2 x double> %2046, splat (double 2.000000e+00)
  %2048 = fneg <2 x double> %2043
  %2049 = fmul <2 x double> %2040, splat (double 4.000000e+00)
  %2050 = fneg <2 x double> %2046
  %2051 = fmul <2 x double> %2049, %2050
  %2052 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2043, <2 x double> %2043, <2 x double> %2051)
  %2053 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2052)
  %2054 = fsub <2 x double> %2048, %2053
  %2055 = fdiv <2 x double> %2047, %2054
  %2056 = fadd <2 x double> %2055, splat (double 0x408451671D164BD4)
  %2057 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2055, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2058 = fmul <2 x double> %2057, splat (double -4.000000e+00)
  %2059 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2056, <2 x double> %2056, <2 x double> %2058)
  %2060 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2059)
  %2061 = fsub <2 x double> %2056, %2060
  %2062 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2061, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2063 = select <2 x i1> %2023, <2 x double> %2029, <2 x double> %2062
  %2064 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2063, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2065 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2063, <2 x double> %2064, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2066 = load i64, ptr %157, align 8, !tbaa !20, !noalias !83
  %2067 = icmp sgt i64 %2066, 0
  br i1 %2067, label %2068, label %2257

2068:                                             ; preds = %2028
  %2069 = fdiv <2 x double> splat (double 1.000000e+00), %2065
  %2070 = fadd <2 x double> %2063, splat (double 1.000000e-09)
  br label %2071

2071:                                             ; preds = %2068, %2181
  %2072 = phi <2 x double> [ zeroinitializer, %2068 ], [ %2253, %2181 ]
  %2073 = phi <2 x double> [ zeroinitializer, %2068 ], [ %2252, %2181 ]
  %2074 = phi i64 [ 0, %2068 ], [ %2254, %2181 ]
  %2075 = load ptr, ptr %142, align 8, !tbaa !28, !noalias !83
  %2076 = getelementptr inbounds nuw %struct.Piece, ptr %2075, i64 %2074
  %2077 = getelementptr inbounds nuw i8, ptr %2076, i64 1456
  %2078 = load <2 x double>, ptr %2077, align 16, !tbaa !26, !noalias !83
  %2079 = getelementptr inbounds nuw i8, ptr %2076, i64 1472
  %2080 = load <2 x double>, ptr %2079, align 16, !tbaa !26, !noalias !83
  %2081 = getelementptr inbounds nuw i8, ptr %2076, i64 1824
  %2082 = load <2 x double>, ptr %2081, align 16, !tbaa !26, !noalias !83
  %2083 = fcmp ule <2 x double> %2082, splat (double 1.000000e+00)
  %2084 = fmul <2 x double> %2063, %2080
  %2085 = fcmp ogt <2 x double> %2078, %2084
  %2086 = and <2 x i1> %2083, %2085
  %2087 = fneg <2 x double> %2080
  %2088 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2087, <2 x double> %2063, <2 x double> %2078)
  %2089 = fmul <2 x double> %2069, %2088
  %2090 = select <2 x i1> %2086, <2 x double> %2089, <2 x double> zeroinitializer
  %2091 = fmul <2 x double> %2069, %2087
  %2092 = fdiv <2 x double> %2078, %2080
  %2093 = select <2 x i1> %2086, <2 x double> %2063, <2 x double> %2092
  %2094 = getelementptr inbounds nuw i8, ptr %2076, i64 1872
  %2095 = load <2 x i64>, ptr %2094, align 16, !tbaa !26, !noalias !83
  %2096 = getelementptr inbounds nuw i8, ptr %2076, i64 560
  %2097 = load <2 x double>, ptr %2096, align 16, !tbaa !26, !noalias !83
  %2098 = fcmp ule <2 x double> %2097, zeroinitializer
  %2099 = xor <2 x i1> %2083, splat (i1 true)
  %2100 = select <2 x i1> %2099, <2 x i1> splat (i1 true), <2 x i1> %2098
  %2101 = getelementptr inbounds nuw i8, ptr %2076, i64 1488
  %2102 = load <2 x double>, ptr %2101, align 16, !tbaa !26, !noalias !83
  %2103 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2087, <2 x double> %2102, <2 x double> %2078)
  %2104 = fcmp ogt <2 x double> %2103, zeroinitializer
  %2105 = select <2 x i1> %2104, <2 x double> %2103, <2 x double> zeroinitializer
  %2106 = fmul <2 x double> %2069, %2105
  %2107 = icmp eq <2 x i64> %2095, zeroinitializer
  %2108 = select <2 x i1> %2100, <2 x i1> splat (i1 true), <2 x i1> %2107
  %2109 = select <2 x i1> %2108, <2 x double> %2090, <2 x double> %2106
  %2110 = select <2 x i1> %2108, <2 x double> %2093, <2 x double> %2102
  %2111 = select <2 x i1> %2108, <2 x i1> %2086, <2 x i1> zeroinitializer
  %2112 = select <2 x i1> %2111, <2 x double> %2091, <2 x double> zeroinitializer
  %2113 = load i64, ptr %132, align 16, !tbaa !21, !noalias !86
  %2114 = sitofp i64 %2113 to double
  %2115 = insertelement <2 x double> poison, double %2114, i64 0
  %2116 = shufflevector <2 x double> %2115, <2 x double> poison, <2 x i32> zeroinitializer
  %2117 = icmp sgt i64 %2113, 0
  br i1 %2117, label %2118, label %2181

2118:                                             ; preds = %2071
  %2119 = getelementptr inbounds nuw i8, ptr %2076, i64 1944
  %2120 = load ptr, ptr %2119, align 8, !tbaa !71, !noalias !86
  %2121 = getelementptr inbounds nuw i8, ptr %2076, i64 1952
  %2122 = load ptr, ptr %2121, align 16, !tbaa !72, !noalias !86
  %2123 = getelementptr inbounds nuw i8, ptr %2076, i64 1888
  %2124 = load i64, ptr %2123, align 16, !tbaa !31, !noalias !86
  %2125 = getelementptr inbounds nuw i8, ptr %2076, i64 1968
  %2126 = getelementptr inbounds nuw i8, ptr %2076, i64 1960
  %2127 = getelementptr inbounds nuw i8, ptr %2076, i64 1976
  br label %2128

2128:                                             ; preds = %2118, %2163
  %2129 = phi <2 x i64> [ splat (i64 -1), %2118 ], [ %2143, %2163 ]
  %2130 = phi i64 [ %2113, %2118 ], [ %2134, %2163 ]
  %2131 = phi <2 x double> [ %2116, %2118 ], [ %2179, %2163 ]
  %2132 = phi <2 x double> [ zeroinitializer, %2118 ], [ %2175, %2163 ]
  %2133 = phi <2 x double> [ zeroinitializer, %2118 ], [ %2173, %2163 ]
  %2134 = add nsw i64 %2130, -1
  %2135 = getelementptr inbounds nuw <2 x double>, ptr %2120, i64 %2134
  %2136 = load <2 x double>, ptr %2135, align 16, !tbaa !26, !noalias !86
  %2137 = getelementptr inbounds nuw <2 x double>, ptr %2122, i64 %2134
  %2138 = load <2 x double>, ptr %2137, align 16, !tbaa !26, !noalias !86
  %2139 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2138, <2 x double> %2063, <2 x double> %2136)
  %2140 = fcmp ogt <2 x double> %2139, %2070
  %2141 = select <2 x i1> %2140, <2 x i64> %2129, <2 x i64> zeroinitializer
  %2142 = icmp sgt i64 %2130, %2124
  %2143 = select i1 %2142, <2 x i64> %2141, <2 x i64> zeroinitializer
  %2144 = icmp slt i64 %2130, %2113
  br i1 %2144, label %2145, label %2158

2145:                                             ; preds = %2128
  %2146 = load ptr, ptr %2125, align 16, !tbaa !69, !noalias !86
  %2147 = getelementptr inbounds nuw <2 x double>, ptr %2146, i64 %2130
  %2148 = load <2 x double>, ptr %2147, align 16, !tbaa !26, !noalias !86
  %2149 = fsub <2 x double> %2139, %2063
  %2150 = fmul <2 x double> %2149, %2148
  %2151 = icmp eq <2 x i64> %2143, %2129
  %2152 = select <2 x i1> %2151, <2 x double> zeroinitializer, <2 x double> %2150
  %2153 = fadd <2 x double> %2133, %2152
  %2154 = fadd <2 x double> %2138, splat (double -1.000000e+00)
  %2155 = fmul <2 x double> %2154, %2148
  %2156 = select <2 x i1> %2151, <2 x double> zeroinitializer, <2 x double> %2155
  %2157 = fadd <2 x double> %2132, %2156
  br label %2158

2158:                                             ; preds = %2145, %2128
  %2159 = phi <2 x double> [ %2153, %2145 ], [ %2133, %2128 ]
  %2160 = phi <2 x double> [ %2157, %2145 ], [ %2132, %2128 ]
  %2161 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2143)
  %2162 = icmp eq i64 %2161, 0
  br i1 %2162, label %2181, label %2163

2163:                                             ; preds = %2158
  %2164 = load ptr, ptr %2126, align 8, !tbaa !68, !noalias !86
  %2165 = getelementptr inbounds nuw <2 x double>, ptr %2164, i64 %2134
  %2166 = load <2 x double>, ptr %2165, align 16, !tbaa !26, !noalias !86
  %2167 = load ptr, ptr %2127, align 8, !tbaa !70, !noalias !86
  %2168 = getelementptr inbounds nuw <2 x double>, ptr %2167, i64 %2134
  %2169 = load <2 x double>, ptr %2168, align 16, !tbaa !26, !noalias !86
  %2170 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2169, <2 x double> %2063, <2 x double> %2166)
  %2171 = icmp eq <2 x i64> %2143, zeroinitializer
  %2172 = select <2 x i1> %2171, <2 x double> zeroinitializer, <2 x double> %2170
  %2173 = fadd <2 x double> %2159, %2172
  %2174 = select <2 x i1> %2171, <2 x double> zeroinitializer, <2 x double> %2169
  %2175 = fadd <2 x double> %2160, %2174
  %2176 = uitofp nneg i64 %2134 to double
  %2177 = insertelement <2 x double> poison, double %2176, i64 0
  %2178 = shufflevector <2 x double> %2177, <2 x double> poison, <2 x i32> zeroinitializer
  %2179 = select <2 x i1> %2171, <2 x double> %2131, <2 x double> %2178
  %2180 = icmp samesign ugt i64 %2130, 1
  br i1 %2180, label %2128, label %2181, !llvm.loop !89

2181:                                             ; preds = %2163, %2158, %2071
  %2182 = phi <2 x double> [ %2116, %2071 ], [ %2131, %2158 ], [ %2179, %2163 ]
  %2183 = phi <2 x double> [ zeroinitializer, %2071 ], [ %2159, %2158 ], [ %2173, %2163 ]
  %2184 = phi <2 x double> [ zeroinitializer, %2071 ], [ %2160, %2158 ], [ %2175, %2163 ]
  %2185 = getelementptr inbounds nuw i8, ptr %2076, i64 1520
  %2186 = load <2 x double>, ptr %2185, align 16, !tbaa !26, !noalias !83
  %2187 = getelementptr inbounds nuw i8, ptr %2076, i64 1376
  %2188 = load <2 x double>, ptr %2187, align 16, !tbaa !26, !noalias !83
  %2189 = getelementptr inbounds nuw i8, ptr %2076, i64 1760
  %2190 = load <2 x double>, ptr %2189, align 16, !tbaa !26, !noalias !83
  %2191 = fneg <2 x double> %2190
  %2192 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2186, <2 x double> %2188, <2 x double> %2191)
  %2193 = getelementptr inbounds nuw i8, ptr %2076, i64 1744
  %2194 = load <2 x double>, ptr %2193, align 16, !tbaa !26, !noalias !83
  %2195 = fadd <2 x double> %2186, %2194
  %2196 = getelementptr inbounds nuw i8, ptr %2076, i64 1840
  %2197 = load <2 x i64>, ptr %2196, align 16, !tbaa !26, !noalias !83
  %2198 = getelementptr inbounds nuw i8, ptr %2076, i64 2048
  %2199 = load ptr, ptr %2198, align 16, !tbaa !77, !noalias !83
  %2200 = load <2 x double>, ptr %2199, align 16, !tbaa !26, !noalias !83
  %2201 = fmul <2 x double> %2186, %2200
  %2202 = icmp eq <2 x i64> %2197, zeroinitializer
  %2203 = select <2 x i1> %2202, <2 x double> %2192, <2 x double> %2201
  %2204 = getelementptr inbounds nuw i8, ptr %2076, i64 2056
  %2205 = load ptr, ptr %2204, align 8, !tbaa !78, !noalias !83
  %2206 = load <2 x double>, ptr %2205, align 16, !tbaa !26, !noalias !83
  %2207 = fsub <2 x double> splat (double 1.000000e+00), %2206
  %2208 = fmul <2 x double> %2186, %2207
  %2209 = select <2 x i1> %2202, <2 x double> %2195, <2 x double> %2208
  %2210 = fneg <2 x double> %2209
  %2211 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2210, <2 x double> %2063, <2 x double> %2203)
  %2212 = fcmp olt <2 x double> %2182, %2116
  %2213 = and <2 x i1> %2083, %2212
  %2214 = fcmp ogt <2 x double> %2183, zeroinitializer
  %2215 = fcmp oge <2 x double> %2211, zeroinitializer
  %2216 = and <2 x i1> %2214, %2215
  %2217 = and <2 x i1> %2213, %2216
  %2218 = sext <2 x i1> %2217 to <2 x i64>
  %2219 = xor <2 x i64> %2218, splat (i64 -1)
  %2220 = fadd <2 x double> %2183, %2211
  %2221 = fcmp ogt <2 x double> %2220, zeroinitializer
  %2222 = and <2 x i1> %2213, %2221
  %2223 = select <2 x i1> %2222, <2 x i64> %2219, <2 x i64> zeroinitializer
  %2224 = or <2 x i64> %2223, %2218
  %2225 = fmul <2 x double> %2069, %2211
  %2226 = select <2 x i1> %2217, <2 x double> %2225, <2 x double> zeroinitializer
  %2227 = icmp eq <2 x i64> %2224, zeroinitializer
  %2228 = select <2 x i1> %2227, <2 x double> %2109, <2 x double> %2226
  %2229 = select <2 x i1> %2227, <2 x double> %2110, <2 x double> %2063
  %2230 = fsub <2 x double> %2184, %2209
  %2231 = fmul <2 x double> %2069, %2230
  %2232 = select <2 x i1> %2227, <2 x double> %2112, <2 x double> %2231
  %2233 = getelementptr inbounds nuw i8, ptr %2076, i64 1408
  store <2 x double> %2228, ptr %2233, align 16, !tbaa !26, !noalias !83
  %2234 = getelementptr inbounds nuw i8, ptr %2076, i64 1392
  store <2 x double> %2229, ptr %2234, align 16, !tbaa !26, !noalias !83
  %2235 = fmul <2 x double> %2069, %2183
  %2236 = fmul <2 x double> %2069, %2220
  %2237 = icmp eq <2 x i64> %2223, zeroinitializer
  %2238 = select <2 x i1> %2237, <2 x double> zeroinitializer, <2 x double> %2236
  %2239 = select <2 x i1> %2217, <2 x double> %2235, <2 x double> %2238
  %2240 = getelementptr inbounds nuw i8, ptr %2076, i64 1424
  store <2 x double> %2239, ptr %2240, align 16, !tbaa !26, !noalias !83
  %2241 = load i64, ptr %132, align 16, !tbaa !21, !noalias !83
  %2242 = sitofp i64 %2241 to double
  %2243 = insertelement <2 x double> poison, double %2242, i64 0
  %2244 = shufflevector <2 x double> %2243, <2 x double> poison, <2 x i32> zeroinitializer
  %2245 = select <2 x i1> %2227, <2 x double> %2244, <2 x double> %2182
  %2246 = getelementptr inbounds nuw i8, ptr %2076, i64 1440
  store <2 x double> %2245, ptr %2246, align 16, !tbaa !26, !noalias !83
  %2247 = getelementptr inbounds nuw i8, ptr %2076, i64 32
  %2248 = load <2 x double>, ptr %2247, align 16, !tbaa !26, !noalias !83
  %2249 = fadd <2 x double> %2228, %2239
  %2250 = fmul <2 x double> %2248, %2249
  %2251 = fmul <2 x double> %2248, %2232
  %2252 = fadd <2 x double> %2073, %2250
  %2253 = fadd <2 x double> %2072, %2251
  %2254 = add nuw nsw i64 %2074, 1
  %2255 = load i64, ptr %157, align 8, !tbaa !20, !noalias !83
  %2256 = icmp slt i64 %2254, %2255
  br i1 %2256, label %2071, label %2257, !llvm.loop !90

2257:                                             ; preds = %2181, %2028
  %2258 = phi <2 x double> [ zeroinitializer, %2028 ], [ %2252, %2181 ]
  %2259 = phi <2 x double> [ zeroinitializer, %2028 ], [ %2253, %2181 ]
  %2260 = fsub <2 x double> %2034, %1998
  %2261 = fcmp ogt <2 x double> %2260, zeroinitializer
  %2262 = select <2 x i1> %2261, <2 x double> %2260, <2 x double> zeroinitializer
  %2263 = fadd <2 x double> %2063, splat (double 2.731500e+02)
  %2264 = fdiv <2 x double> %2262, splat (double 4.615260e+02)
  %2265 = fadd <2 x double> %2025, %2264
  %2266 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %2267 = fdiv <2 x double> %2265, %2266
  %2268 = fmul <2 x double> %2266, %2267
  %2269 = fdiv <2 x double> %2034, %2268
  %2270 = load <2 x double>, ptr %182, align 16, !tbaa !26, !noalias !91
  %2271 = fsub <2 x double> %2034, %2270
  %2272 = load <2 x double>, ptr %195, align 16, !tbaa !26, !noalias !91
  %2273 = fsub <2 x double> %2271, %2272
  %2274 = load <2 x double>, ptr %196, align 16, !tbaa !26, !noalias !91
  %2275 = load <2 x double>, ptr %151, align 16, !tbaa !26, !noalias !91
  %2276 = fcmp une <2 x double> %2275, splat (double 2.000000e+00)
  %2277 = load <2 x double>, ptr %197, align 16, !tbaa !26, !noalias !91
  %2278 = select <2 x i1> %2276, <2 x double> zeroinitializer, <2 x double> %2277
  %2279 = fadd <2 x double> %2274, %2278
  %2280 = fcmp ule <2 x double> %2271, zeroinitializer
  %2281 = fcmp ule <2 x double> %2279, zeroinitializer
  %2282 = or <2 x i1> %2280, %2281
  %2283 = fmul <2 x double> %2267, splat (double 2.000000e+00)
  %2284 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2283)
  %2285 = fmul <2 x double> %2284, %2279
  %2286 = fadd <2 x double> %2271, splat (double 2.000000e+02)
  %2287 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2286)
  %2288 = select <2 x i1> %2280, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2287
  %2289 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2271, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2290 = fmul <2 x double> %2289, %2285
  %2291 = fmul <2 x double> %2288, %2288
  %2292 = fmul <2 x double> %2288, %2291
  %2293 = fdiv <2 x double> %2290, %2292
  %2294 = fmul <2 x double> %2271, %2285
  %2295 = fdiv <2 x double> %2294, %2288
  %2296 = select <2 x i1> %2282, <2 x double> zeroinitializer, <2 x double> %2295
  %2297 = select <2 x i1> %2282, <2 x double> zeroinitializer, <2 x double> %2293
  %2298 = fcmp ule <2 x double> %2273, zeroinitializer
  %2299 = load <2 x double>, ptr %198, align 16, !tbaa !26, !noalias !91
  %2300 = fmul <2 x double> %2273, %2299
  %2301 = select <2 x i1> %2298, <2 x double> zeroinitializer, <2 x double> %2300
  %2302 = fadd <2 x double> %2301, %2296
  %2303 = select <2 x i1> %2298, <2 x double> zeroinitializer, <2 x double> %2299
  %2304 = fadd <2 x double> %2303, %2297
  %2305 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2306 = fsub <2 x double> %2270, %2034
  %2307 = fcmp ule <2 x double> %2306, zeroinitializer
  %2308 = fcmp ule <2 x double> %2305, zeroinitializer
  %2309 = or <2 x i1> %2307, %2308
  %2310 = fmul <2 x double> %2027, %2305
  %2311 = fadd <2 x double> %2306, splat (double 2.000000e+02)
  %2312 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2311)
  %2313 = select <2 x i1> %2307, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2312
  %2314 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2306, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2315 = fmul <2 x double> %2314, %2310
  %2316 = fmul <2 x double> %2313, %2313
  %2317 = fmul <2 x double> %2313, %2316
  %2318 = fdiv <2 x double> %2315, %2317
  %2319 = fmul <2 x double> %2306, %2310
  %2320 = fdiv <2 x double> %2319, %2313
  %2321 = load <2 x double>, ptr %162, align 16, !tbaa !26, !noalias !94
  %2322 = load <2 x double>, ptr %184, align 16, !tbaa !26, !noalias !94
  %2323 = load <2 x double>, ptr %163, align 16, !tbaa !26, !noalias !94
  %2324 = load <2 x double>, ptr %185, align 16, !tbaa !26, !noalias !94
  %2325 = fmul <2 x double> %2323, %2324
  %2326 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2321, <2 x double> %2322, <2 x double> %2325)
  %2327 = load <2 x double>, ptr %188, align 16, !tbaa !26, !noalias !94
  %2328 = load <2 x double>, ptr %161, align 16, !tbaa !26, !noalias !94
  %2329 = load <2 x double>, ptr %186, align 16, !tbaa !26, !noalias !94
  %2330 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2327, <2 x double> %2328, <2 x double> %2329)
  %2331 = load <2 x double>, ptr %187, align 16, !tbaa !26, !noalias !94
  %2332 = fneg <2 x double> %2326
  %2333 = fmul <2 x double> %2327, %2332
  %2334 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2329, <2 x double> %2331, <2 x double> %2333)
  %2335 = fdiv <2 x double> %2334, %2330
  %2336 = fcmp ogt <2 x double> %2262, splat (double 2.000000e+03)
  %2337 = select <2 x i1> %2336, <2 x double> %2262, <2 x double> splat (double 2.000000e+03)
  %2338 = fmul <2 x double> %2337, splat (double 0x3EB0C6F7A0B5ED8D)
  %2339 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2338)
  %2340 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2339)
  %2341 = fmul <2 x double> %2340, %2340
  %2342 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2340, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2341)
  %2343 = fadd <2 x double> %2342, splat (double 0x402DD4891DBECC6B)
  %2344 = fmul <2 x double> %2340, splat (double 0x40C77A698FD9BCCA)
  %2345 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2341, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2344)
  %2346 = fadd <2 x double> %2345, splat (double 0xC0B2D7440748F0B3)
  %2347 = fmul <2 x double> %2340, splat (double 0xC148A99584203885)
  %2348 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2341, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2347)
  %2349 = fadd <2 x double> %2348, splat (double 0x4118B9E59F2691E5)
  %2350 = fmul <2 x double> %2349, splat (double 2.000000e+00)
  %2351 = fneg <2 x double> %2346
  %2352 = fmul <2 x double> %2343, splat (double 4.000000e+00)
  %2353 = fneg <2 x double> %2349
  %2354 = fmul <2 x double> %2352, %2353
  %2355 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2346, <2 x double> %2346, <2 x double> %2354)
  %2356 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2355)
  %2357 = fsub <2 x double> %2351, %2356
  %2358 = fdiv <2 x double> %2350, %2357
  %2359 = fadd <2 x double> %2358, splat (double 0x408451671D164BD4)
  %2360 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2358, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2361 = fmul <2 x double> %2360, splat (double -4.000000e+00)
  %2362 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2359, <2 x double> %2359, <2 x double> %2361)
  %2363 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2362)
  %2364 = fsub <2 x double> %2359, %2363
  %2365 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2364, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2366 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2365, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2367 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2365, <2 x double> %2366, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2368 = fadd <2 x double> %2365, splat (double 2.731500e+02)
  %2369 = fcmp ule <2 x double> %2365, %2335
  %2370 = load <2 x double>, ptr %200, align 16, !tbaa !26, !noalias !94
  %2371 = fmul <2 x double> %2330, %2370
  %2372 = fadd <2 x double> %2330, %2370
  %2373 = fdiv <2 x double> %2371, %2372
  %2374 = fdiv <2 x double> %2373, %2367
  %2375 = fmul <2 x double> %2368, splat (double 4.615260e+02)
  %2376 = fmul <2 x double> %2337, %2367
  %2377 = fmul <2 x double> %2365, %2370
  %2378 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2335, <2 x double> %2330, <2 x double> %2377)
  %2379 = fdiv <2 x double> %2378, %2372
  %2380 = select <2 x i1> %2369, <2 x double> %2335, <2 x double> %2379
  store <2 x double> %2380, ptr %190, align 16, !tbaa !26, !noalias !94
  %2381 = fsub <2 x double> %2365, %2335
  %2382 = fmul <2 x double> %2381, %2374
  %2383 = select <2 x i1> %2369, <2 x double> zeroinitializer, <2 x double> %2382
  %2384 = fmul <2 x double> %2263, splat (double 4.615260e+02)
  %2385 = fmul <2 x double> %2263, %2384
  %2386 = fmul <2 x double> %2034, %2065
  %2387 = fdiv <2 x double> %2385, %2386
  %2388 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2328, <2 x double> %2034, <2 x double> %2009)
  %2389 = fsub <2 x double> %2258, %2383
  %2390 = fmul <2 x double> %2389, splat (double -4.615260e+02)
  %2391 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2012, <2 x double> %2388, <2 x double> %2390)
  %2392 = fmul <2 x double> %2320, splat (double -2.870530e+02)
  %2393 = select <2 x i1> %2309, <2 x double> splat (double -0.000000e+00), <2 x double> %2392
  %2394 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2269, <2 x double> %2302, <2 x double> %2393)
  %2395 = fadd <2 x double> %2394, %2391
  %2396 = fneg <2 x double> %2368
  %2397 = fmul <2 x double> %2375, %2396
  %2398 = fdiv <2 x double> %2397, %2376
  %2399 = fmul <2 x double> %2398, %2374
  %2400 = select <2 x i1> %2369, <2 x double> splat (double -0.000000e+00), <2 x double> %2399
  %2401 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2259, <2 x double> %2387, <2 x double> %2400)
  %2402 = fmul <2 x double> %2401, splat (double -4.615260e+02)
  %2403 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2012, <2 x double> %2328, <2 x double> %2402)
  %2404 = fmul <2 x double> %2318, splat (double 2.870530e+02)
  %2405 = select <2 x i1> %2309, <2 x double> zeroinitializer, <2 x double> %2404
  %2406 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2269, <2 x double> %2304, <2 x double> %2405)
  %2407 = fadd <2 x double> %2406, %2403
  %2408 = fcmp ule <2 x double> %2395, zeroinitializer
  %2409 = fcmp olt <2 x double> %2031, %2034
  %2410 = select <2 x i1> %2408, <2 x i1> splat (i1 true), <2 x i1> %2409
  %2411 = select <2 x i1> %2410, <2 x double> %2031, <2 x double> %2034
  %2412 = fcmp ogt <2 x double> %2030, %2034
  %2413 = select <2 x i1> %2412, <2 x double> %2030, <2 x double> %2034
  %2414 = select <2 x i1> %2408, <2 x double> %2413, <2 x double> %2030
  %2415 = fdiv <2 x double> %2395, %2407
  %2416 = fsub <2 x double> %2034, %2415
  %2417 = fcmp uge <2 x double> %2414, %2416
  %2418 = fcmp uge <2 x double> %2416, %2411
  %2419 = or <2 x i1> %2417, %2418
  %2420 = fadd <2 x double> %2414, %2411
  %2421 = fmul <2 x double> %2420, splat (double 5.000000e-01)
  %2422 = select <2 x i1> %2419, <2 x double> %2421, <2 x double> %2416
  %2423 = fsub <2 x double> %2422, %2034
  %2424 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2423)
  %2425 = fcmp oge <2 x double> %2424, splat (double 2.000000e-01)
  %2426 = select <2 x i1> %2425, <2 x i64> %2032, <2 x i64> zeroinitializer
  %2427 = icmp eq <2 x i64> %2426, zeroinitializer
  %2428 = select <2 x i1> %2427, <2 x double> %2034, <2 x double> %2422
  %2429 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2426)
  %2430 = icmp ne i64 %2429, 0
  %2431 = add nuw nsw i32 %2033, 1
  %2432 = icmp samesign ult i32 %2033, 59
  %2433 = select i1 %2430, i1 %2432, i1 false
  br i1 %2433, label %2028, label %2434, !llvm.loop !97

2434:                                             ; preds = %2257
  %2435 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %2436 = load <2 x double>, ptr %201, align 16, !tbaa !26
  %2437 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %2438 = load <2 x double>, ptr %202, align 16, !tbaa !26
  %2439 = fmul <2 x double> %2437, %2438
  %2440 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2435, <2 x double> %2436, <2 x double> %2439)
  %2441 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2442 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %2443 = fsub <2 x double> %2442, %2428
  %2444 = fcmp ule <2 x double> %2443, zeroinitializer
  %2445 = fcmp ule <2 x double> %2441, zeroinitializer
  %2446 = or <2 x i1> %2445, %2444
  %2447 = fmul <2 x double> %2027, %2441
  %2448 = fadd <2 x double> %2443, splat (double 2.000000e+02)
  %2449 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2448)
  %2450 = select <2 x i1> %2444, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2449
  %2451 = fmul <2 x double> %2447, %2443
  %2452 = fdiv <2 x double> %2451, %2450
  %2453 = fmul <2 x double> %2452, splat (double 2.870530e+02)
  %2454 = select <2 x i1> %2446, <2 x double> zeroinitializer, <2 x double> %2453
  %2455 = fdiv <2 x double> %2454, %2012
  %2456 = fsub <2 x double> %2455, %2440
  %2457 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %2458 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %2459 = fmul <2 x double> %2267, %2458
  %2460 = fdiv <2 x double> %2302, %2459
  %2461 = fadd <2 x double> %2457, %2460
  %2462 = fdiv <2 x double> %2456, %2461
  %2463 = fcmp ogt <2 x double> %2462, zeroinitializer
  %2464 = select <2 x i1> %2463, <2 x double> %2462, <2 x double> zeroinitializer
  %2465 = fcmp olt <2 x double> %2464, %2428
  %2466 = select <2 x i1> %2465, <2 x double> %2464, <2 x double> %2428
  %2467 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %2468 = select <2 x i1> %2023, <2 x double> %2467, <2 x double> %2466
  store <2 x double> %2468, ptr %189, align 16, !tbaa !26
  %2469 = select <2 x i1> %2023, <2 x double> %2000, <2 x double> %2380
  store <2 x double> %2469, ptr %190, align 16, !tbaa !26
  store <2 x double> %2428, ptr %183, align 16, !tbaa !26
  store <2 x double> %2063, ptr %203, align 16, !tbaa !26
  %2470 = load i64, ptr %157, align 8, !tbaa !20
  br label %2641

2471:                                             ; preds = %1979
  store <2 x double> %1981, ptr %203, align 16, !tbaa !26
  %2472 = load i64, ptr %157, align 8, !tbaa !20, !noalias !98
  %2473 = icmp sgt i64 %2472, 0
  br i1 %2473, label %2474, label %2644

2474:                                             ; preds = %2471
  %2475 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1981, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2476 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1981, <2 x double> %2475, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2477 = fdiv <2 x double> splat (double 1.000000e+00), %2476
  %2478 = fadd <2 x double> %1981, splat (double 1.000000e-09)
  br label %2479

2479:                                             ; preds = %2474, %2576
  %2480 = phi i64 [ 0, %2474 ], [ %2638, %2576 ]
  %2481 = load ptr, ptr %142, align 8, !tbaa !28, !noalias !98
  %2482 = getelementptr inbounds nuw %struct.Piece, ptr %2481, i64 %2480
  %2483 = getelementptr inbounds nuw i8, ptr %2482, i64 1456
  %2484 = load <2 x double>, ptr %2483, align 16, !tbaa !26, !noalias !98
  %2485 = getelementptr inbounds nuw i8, ptr %2482, i64 1472
  %2486 = load <2 x double>, ptr %2485, align 16, !tbaa !26, !noalias !98
  %2487 = getelementptr inbounds nuw i8, ptr %2482, i64 1824
  %2488 = load <2 x double>, ptr %2487, align 16, !tbaa !26, !noalias !98
  %2489 = fcmp ule <2 x double> %2488, splat (double 1.000000e+00)
  %2490 = fmul <2 x double> %1981, %2486
  %2491 = fcmp ogt <2 x double> %2484, %2490
  %2492 = and <2 x i1> %2489, %2491
  %2493 = fneg <2 x double> %2486
  %2494 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2493, <2 x double> %1981, <2 x double> %2484)
  %2495 = fmul <2 x double> %2477, %2494
  %2496 = select <2 x i1> %2492, <2 x double> %2495, <2 x double> zeroinitializer
  %2497 = fdiv <2 x double> %2484, %2486
  %2498 = select <2 x i1> %2492, <2 x double> %1981, <2 x double> %2497
  %2499 = getelementptr inbounds nuw i8, ptr %2482, i64 1872
  %2500 = load <2 x i64>, ptr %2499, align 16, !tbaa !26, !noalias !98
  %2501 = getelementptr inbounds nuw i8, ptr %2482, i64 560
  %2502 = load <2 x double>, ptr %2501, align 16, !tbaa !26, !noalias !98
  %2503 = fcmp ule <2 x double> %2502, zeroinitializer
  %2504 = xor <2 x i1> %2489, splat (i1 true)
  %2505 = select <2 x i1> %2504, <2 x i1> splat (i1 true), <2 x i1> %2503
  %2506 = getelementptr inbounds nuw i8, ptr %2482, i64 1488
  %2507 = load <2 x double>, ptr %2506, align 16, !tbaa !26, !noalias !98
  %2508 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2493, <2 x double> %2507, <2 x double> %2484)
  %2509 = fcmp ogt <2 x double> %2508, zeroinitializer
  %2510 = select <2 x i1> %2509, <2 x double> %2508, <2 x double> zeroinitializer
  %2511 = fmul <2 x double> %2477, %2510
  %2512 = icmp eq <2 x i64> %2500, zeroinitializer
  %2513 = select <2 x i1> %2505, <2 x i1> splat (i1 true), <2 x i1> %2512
  %2514 = select <2 x i1> %2513, <2 x double> %2496, <2 x double> %2511
  %2515 = select <2 x i1> %2513, <2 x double> %2498, <2 x double> %2507
  %2516 = load i64, ptr %132, align 16, !tbaa !21, !noalias !101
  %2517 = sitofp i64 %2516 to double
  %2518 = insertelement <2 x double> poison, double %2517, i64 0
  %2519 = shufflevector <2 x double> %2518, <2 x double> poison, <2 x i32> zeroinitializer
  %2520 = icmp sgt i64 %2516, 0
  br i1 %2520, label %2521, label %2576

2521:                                             ; preds = %2479
  %2522 = getelementptr inbounds nuw i8, ptr %2482, i64 1944
  %2523 = load ptr, ptr %2522, align 8, !tbaa !71, !noalias !101
  %2524 = getelementptr inbounds nuw i8, ptr %2482, i64 1952
  %2525 = load ptr, ptr %2524, align 16, !tbaa !72, !noalias !101
  %2526 = getelementptr inbounds nuw i8, ptr %2482, i64 1888
  %2527 = load i64, ptr %2526, align 16, !tbaa !31, !noalias !101
  %2528 = getelementptr inbounds nuw i8, ptr %2482, i64 1968
  %2529 = getelementptr inbounds nuw i8, ptr %2482, i64 1960
  %2530 = getelementptr inbounds nuw i8, ptr %2482, i64 1976
  br label %2531

2531:                                             ; preds = %2521, %2560
  %2532 = phi <2 x i64> [ splat (i64 -1), %2521 ], [ %2545, %2560 ]
  %2533 = phi i64 [ %2516, %2521 ], [ %2536, %2560 ]
  %2534 = phi <2 x double> [ %2519, %2521 ], [ %2574, %2560 ]
  %2535 = phi <2 x double> [ zeroinitializer, %2521 ], [ %2570, %2560 ]
  %2536 = add nsw i64 %2533, -1
  %2537 = getelementptr inbounds nuw <2 x double>, ptr %2523, i64 %2536
  %2538 = load <2 x double>, ptr %2537, align 16, !tbaa !26, !noalias !101
  %2539 = getelementptr inbounds nuw <2 x double>, ptr %2525, i64 %2536
  %2540 = load <2 x double>, ptr %2539, align 16, !tbaa !26, !noalias !101
  %2541 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2540, <2 x double> %1981, <2 x double> %2538)
  %2542 = fcmp ogt <2 x double> %2541, %2478
  %2543 = select <2 x i1> %2542, <2 x i64> %2532, <2 x i64> zeroinitializer
  %2544 = icmp sgt i64 %2533, %2527
  %2545 = select i1 %2544, <2 x i64> %2543, <2 x i64> zeroinitializer
  %2546 = icmp slt i64 %2533, %2516
  br i1 %2546, label %2547, label %2556

2547:                                             ; preds = %2531
  %2548 = load ptr, ptr %2528, align 16, !tbaa !69, !noalias !101
  %2549 = getelementptr inbounds nuw <2 x double>, ptr %2548, i64 %2533
  %2550 = load <2 x double>, ptr %2549, align 16, !tbaa !26, !noalias !101
  %2551 = fsub <2 x double> %2541, %1981
  %2552 = fmul <2 x double> %2551, %2550
  %2553 = icmp eq <2 x i64> %2545, %2532
  %2554 = select <2 x i1> %2553, <2 x double> zeroinitializer, <2 x double> %2552
  %2555 = fadd <2 x double> %2535, %2554
  br label %2556

2556:                                             ; preds = %2547, %2531
  %2557 = phi <2 x double> [ %2555, %2547 ], [ %2535, %2531 ]
  %2558 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2545)
  %2559 = icmp eq i64 %2558, 0
  br i1 %2559, label %2576, label %2560

2560:                                             ; preds = %2556
  %2561 = load ptr, ptr %2529, align 8, !tbaa !68, !noalias !101
  %2562 = getelementptr inbounds nuw <2 x double>, ptr %2561, i64 %2536
  %2563 = load <2 x double>, ptr %2562, align 16, !tbaa !26, !noalias !101
  %2564 = load ptr, ptr %2530, align 8, !tbaa !70, !noalias !101
  %2565 = getelementptr inbounds nuw <2 x double>, ptr %2564, i64 %2536
  %2566 = load <2 x double>, ptr %2565, align 16, !tbaa !26, !noalias !101
  %2567 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2566, <2 x double> %1981, <2 x double> %2563)
  %2568 = icmp eq <2 x i64> %2545, zeroinitializer
  %2569 = select <2 x i1> %2568, <2 x double> zeroinitializer, <2 x double> %2567
  %2570 = fadd <2 x double> %2557, %2569
  %2571 = uitofp nneg i64 %2536 to double
  %2572 = insertelement <2 x double> poison, double %2571, i64 0
  %2573 = shufflevector <2 x double> %2572, <2 x double> poison, <2 x i32> zeroinitializer
  %2574 = select <2 x i1> %2568, <2 x double> %2534, <2 x double> %2573
  %2575 = icmp samesign ugt i64 %2533, 1
  br i1 %2575, label %2531, label %2576, !llvm.loop !89

2576:                                             ; preds = %2560, %2556, %2479
  %2577 = phi <2 x double> [ %2519, %2479 ], [ %2534, %2556 ], [ %2574, %2560 ]
  %2578 = phi <2 x double> [ zeroinitializer, %2479 ], [ %2557, %2556 ], [ %2570, %2560 ]
  %2579 = getelementptr inbounds nuw i8, ptr %2482, i64 1520
  %2580 = load <2 x double>, ptr %2579, align 16, !tbaa !26, !noalias !98
  %2581 = getelementptr inbounds nuw i8, ptr %2482, i64 1376
  %2582 = load <2 x double>, ptr %2581, align 16, !tbaa !26, !noalias !98
  %2583 = getelementptr inbounds nuw i8, ptr %2482, i64 1760
  %2584 = load <2 x double>, ptr %2583, align 16, !tbaa !26, !noalias !98
  %2585 = fneg <2 x double> %2584
  %2586 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2580, <2 x double> %2582, <2 x double> %2585)
  %2587 = getelementptr inbounds nuw i8, ptr %2482, i64 1744
  %2588 = load <2 x double>, ptr %2587, align 16, !tbaa !26, !noalias !98
  %2589 = fadd <2 x double> %2580, %2588
  %2590 = getelementptr inbounds nuw i8, ptr %2482, i64 1840
  %2591 = load <2 x i64>, ptr %2590, align 16, !tbaa !26, !noalias !98
  %2592 = getelementptr inbounds nuw i8, ptr %2482, i64 2048
  %2593 = load ptr, ptr %2592, align 16, !tbaa !77, !noalias !98
  %2594 = load <2 x double>, ptr %2593, align 16, !tbaa !26, !noalias !98
  %2595 = fmul <2 x double> %2580, %2594
  %2596 = icmp eq <2 x i64> %2591, zeroinitializer
  %2597 = select <2 x i1> %2596, <2 x double> %2586, <2 x double> %2595
  %2598 = getelementptr inbounds nuw i8, ptr %2482, i64 2056
  %2599 = load ptr, ptr %2598, align 8, !tbaa !78, !noalias !98
  %2600 = load <2 x double>, ptr %2599, align 16, !tbaa !26, !noalias !98
  %2601 = fsub <2 x double> splat (double 1.000000e+00), %2600
  %2602 = fmul <2 x double> %2580, %2601
  %2603 = select <2 x i1> %2596, <2 x double> %2589, <2 x double> %2602
  %2604 = fneg <2 x double> %2603
  %2605 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2604, <2 x double> %1981, <2 x double> %2597)
  %2606 = fcmp olt <2 x double> %2577, %2519
  %2607 = and <2 x i1> %2489, %2606
  %2608 = fcmp ogt <2 x double> %2578, zeroinitializer
  %2609 = fcmp oge <2 x double> %2605, zeroinitializer
  %2610 = and <2 x i1> %2608, %2609
  %2611 = and <2 x i1> %2607, %2610
  %2612 = sext <2 x i1> %2611 to <2 x i64>
  %2613 = xor <2 x i64> %2612, splat (i64 -1)
  %2614 = fadd <2 x double> %2578, %2605
  %2615 = fcmp ogt <2 x double> %2614, zeroinitializer
  %2616 = and <2 x i1> %2607, %2615
  %2617 = select <2 x i1> %2616, <2 x i64> %2613, <2 x i64> zeroinitializer
  %2618 = or <2 x i64> %2617, %2612
  %2619 = fmul <2 x double> %2477, %2605
  %2620 = select <2 x i1> %2611, <2 x double> %2619, <2 x double> zeroinitializer
  %2621 = icmp eq <2 x i64> %2618, zeroinitializer
  %2622 = select <2 x i1> %2621, <2 x double> %2514, <2 x double> %2620
  %2623 = select <2 x i1> %2621, <2 x double> %2515, <2 x double> %1981
  %2624 = getelementptr inbounds nuw i8, ptr %2482, i64 1408
  store <2 x double> %2622, ptr %2624, align 16, !tbaa !26, !noalias !98
  %2625 = getelementptr inbounds nuw i8, ptr %2482, i64 1392
  store <2 x double> %2623, ptr %2625, align 16, !tbaa !26, !noalias !98
  %2626 = fmul <2 x double> %2477, %2578
  %2627 = fmul <2 x double> %2477, %2614
  %2628 = icmp eq <2 x i64> %2617, zeroinitializer
  %2629 = select <2 x i1> %2628, <2 x double> zeroinitializer, <2 x double> %2627
  %2630 = select <2 x i1> %2611, <2 x double> %2626, <2 x double> %2629
  %2631 = getelementptr inbounds nuw i8, ptr %2482, i64 1424
  store <2 x double> %2630, ptr %2631, align 16, !tbaa !26, !noalias !98
  %2632 = load i64, ptr %132, align 16, !tbaa !21, !noalias !98
  %2633 = sitofp i64 %2632 to double
  %2634 = insertelement <2 x double> poison, double %2633, i64 0
  %2635 = shufflevector <2 x double> %2634, <2 x double> poison, <2 x i32> zeroinitializer
  %2636 = select <2 x i1> %2621, <2 x double> %2635, <2 x double> %2577
  %2637 = getelementptr inbounds nuw i8, ptr %2482, i64 1440
  store <2 x double> %2636, ptr %2637, align 16, !tbaa !26, !noalias !98
  %2638 = add nuw nsw i64 %2480, 1
  %2639 = load i64, ptr %157, align 8, !tbaa !20, !noalias !98
  %2640 = icmp slt i64 %2638, %2639
  br i1 %2640, label %2479, label %2641, !llvm.loop !90

2641:                                             ; preds = %2576, %2434
  %2642 = phi i64 [ %2470, %2434 ], [ %2639, %2576 ]
  %2643 = icmp sgt i64 %2642, 0
  br i1 %2643, label %2808, label %2644

2644:                                             ; preds = %2641, %2471
  %2645 = phi i64 [ %2642, %2641 ], [ %2472, %2471 ]
  %2646 = load <2 x double>, ptr %164, align 16, !tbaa !26
  br label %2721

2647:                                             ; preds = %2912
  %2648 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %2649 = icmp sgt i64 %2936, 0
  br i1 %2649, label %2650, label %2721

2650:                                             ; preds = %2647
  %2651 = load ptr, ptr %142, align 8, !tbaa !28
  %2652 = and i64 %2936, 1
  %2653 = icmp eq i64 %2936, 1
  br i1 %2653, label %2697, label %2654

2654:                                             ; preds = %2650
  %2655 = and i64 %2936, 9223372036854775806
  br label %2656

2656:                                             ; preds = %2656, %2654
  %2657 = phi <2 x double> [ zeroinitializer, %2654 ], [ %2688, %2656 ]
  %2658 = phi <2 x double> [ zeroinitializer, %2654 ], [ %2693, %2656 ]
  %2659 = phi i64 [ 0, %2654 ], [ %2694, %2656 ]
  %2660 = phi i64 [ 0, %2654 ], [ %2695, %2656 ]
  %2661 = getelementptr inbounds nuw %struct.Piece, ptr %2651, i64 %2659
  %2662 = getelementptr inbounds nuw i8, ptr %2661, i64 1872
  %2663 = load <2 x i64>, ptr %2662, align 16, !tbaa !26
  %2664 = getelementptr inbounds nuw i8, ptr %2661, i64 32
  %2665 = load <2 x double>, ptr %2664, align 16, !tbaa !26
  %2666 = getelementptr inbounds nuw i8, ptr %2661, i64 1584
  %2667 = load <2 x double>, ptr %2666, align 16, !tbaa !26
  %2668 = fmul <2 x double> %2665, %2667
  %2669 = icmp eq <2 x i64> %2663, zeroinitializer
  %2670 = select <2 x i1> %2669, <2 x double> %2668, <2 x double> zeroinitializer
  %2671 = fadd <2 x double> %2657, %2670
  %2672 = getelementptr inbounds nuw i8, ptr %2661, i64 1552
  %2673 = load <2 x double>, ptr %2672, align 16, !tbaa !26
  %2674 = fmul <2 x double> %2665, %2673
  %2675 = select <2 x i1> %2669, <2 x double> %2674, <2 x double> zeroinitializer
  %2676 = fadd <2 x double> %2658, %2675
  %2677 = or disjoint i64 %2659, 1
  %2678 = getelementptr inbounds nuw %struct.Piece, ptr %2651, i64 %2677
  %2679 = getelementptr inbounds nuw i8, ptr %2678, i64 1872
  %2680 = load <2 x i64>, ptr %2679, align 16, !tbaa !26
  %2681 = getelementptr inbounds nuw i8, ptr %2678, i64 32
  %2682 = load <2 x double>, ptr %2681, align 16, !tbaa !26
  %2683 = getelementptr inbounds nuw i8, ptr %2678, i64 1584
  %2684 = load <2 x double>, ptr %2683, align 16, !tbaa !26
  %2685 = fmul <2 x double> %2682, %2684
  %2686 = icmp eq <2 x i64> %2680, zeroinitializer
  %2687 = select <2 x i1> %2686, <2 x double> %2685, <2 x double> zeroinitializer
  %2688 = fadd <2 x double> %2671, %2687
  %2689 = getelementptr inbounds nuw i8, ptr %2678, i64 1552
  %2690 = load <2 x double>, ptr %2689, align 16, !tbaa !26
  %2691 = fmul <2 x double> %2682, %2690
  %2692 = select <2 x i1> %2686, <2 x double> %2691, <2 x double> zeroinitializer
  %2693 = fadd <2 x double> %2676, %2692
  %2694 = add nuw nsw i64 %2659, 2
  %2695 = add i64 %2660, 2
  %2696 = icmp eq i64 %2695, %2655
  br i1 %2696, label %2697, label %2656, !llvm.loop !104

2697:                                             ; preds = %2656, %2650
  %2698 = phi <2 x double> [ poison, %2650 ], [ %2688, %2656 ]
  %2699 = phi <2 x double> [ poison, %2650 ], [ %2693, %2656 ]
  %2700 = phi <2 x double> [ zeroinitializer, %2650 ], [ %2688, %2656 ]
  %2701 = phi <2 x double> [ zeroinitializer, %2650 ], [ %2693, %2656 ]
  %2702 = phi i64 [ 0, %2650 ], [ %2694, %2656 ]
  %2703 = icmp eq i64 %2652, 0
  br i1 %2703, label %2721, label %2704

2704:                                             ; preds = %2697
  %2705 = getelementptr inbounds nuw %struct.Piece, ptr %2651, i64 %2702
  %2706 = getelementptr inbounds nuw i8, ptr %2705, i64 1872
  %2707 = load <2 x i64>, ptr %2706, align 16, !tbaa !26
  %2708 = getelementptr inbounds nuw i8, ptr %2705, i64 32
  %2709 = load <2 x double>, ptr %2708, align 16, !tbaa !26
  %2710 = getelementptr inbounds nuw i8, ptr %2705, i64 1584
  %2711 = load <2 x double>, ptr %2710, align 16, !tbaa !26
  %2712 = fmul <2 x double> %2709, %2711
  %2713 = icmp eq <2 x i64> %2707, zeroinitializer
  %2714 = select <2 x i1> %2713, <2 x double> %2712, <2 x double> zeroinitializer
  %2715 = fadd <2 x double> %2700, %2714
  %2716 = getelementptr inbounds nuw i8, ptr %2705, i64 1552
  %2717 = load <2 x double>, ptr %2716, align 16, !tbaa !26
  %2718 = fmul <2 x double> %2709, %2717
  %2719 = select <2 x i1> %2713, <2 x double> %2718, <2 x double> zeroinitializer
  %2720 = fadd <2 x double> %2701, %2719
  br label %2721

2721:                                             ; preds = %2704, %2697, %2644, %2647
  %2722 = phi i1 [ false, %2647 ], [ false, %2644 ], [ true, %2697 ], [ true, %2704 ]
  %2723 = phi <2 x double> [ %2648, %2647 ], [ %2646, %2644 ], [ %2648, %2697 ], [ %2648, %2704 ]
  %2724 = phi i64 [ %2936, %2647 ], [ %2645, %2644 ], [ %2936, %2697 ], [ %2936, %2704 ]
  %2725 = phi <2 x double> [ zeroinitializer, %2647 ], [ zeroinitializer, %2644 ], [ %2699, %2697 ], [ %2720, %2704 ]
  %2726 = phi <2 x double> [ zeroinitializer, %2647 ], [ zeroinitializer, %2644 ], [ %2698, %2697 ], [ %2715, %2704 ]
  %2727 = load <2 x double>, ptr %204, align 16, !tbaa !26
  %2728 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %2729 = fsub <2 x double> %2723, %2728
  %2730 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2727, <2 x double> %2729, <2 x double> %2726)
  %2731 = fadd <2 x double> %2725, %2727
  store <2 x double> %2730, ptr %169, align 16, !tbaa !26
  %2732 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %2733 = fcmp ule <2 x double> %2732, zeroinitializer
  %2734 = load <2 x double>, ptr %205, align 16, !tbaa !26
  %2735 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2732, <2 x double> splat (double 5.000000e-01), <2 x double> %2734)
  %2736 = fsub <2 x double> %2735, %2723
  %2737 = fcmp ogt <2 x double> %2732, splat (double 1.000000e-30)
  %2738 = select <2 x i1> %2737, <2 x double> %2732, <2 x double> splat (double 1.000000e-30)
  %2739 = fdiv <2 x double> %2736, %2738
  %2740 = fcmp ogt <2 x double> %2739, zeroinitializer
  %2741 = select <2 x i1> %2740, <2 x double> %2739, <2 x double> zeroinitializer
  %2742 = fcmp olt <2 x double> %2741, splat (double 1.000000e+00)
  %2743 = select <2 x i1> %2742, <2 x double> %2741, <2 x double> splat (double 1.000000e+00)
  %2744 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %2745 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %2746 = icmp eq <2 x i64> %2745, zeroinitializer
  %2747 = select <2 x i1> %2746, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %2748 = select <2 x i1> %2733, <2 x double> %2747, <2 x double> %2743
  %2749 = fmul <2 x double> %2744, %2748
  %2750 = fcmp ule <2 x double> %2749, zeroinitializer
  %2751 = fcmp uge <2 x double> %2749, %2744
  %2752 = or <2 x i1> %2750, %2751
  %2753 = or <2 x i1> %2733, %2752
  %2754 = fdiv <2 x double> %2744, %2738
  %2755 = select <2 x i1> %2753, <2 x double> zeroinitializer, <2 x double> %2754
  %2756 = fadd <2 x double> %2731, %2755
  %2757 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %2758 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %2759 = fmul <2 x double> %2723, %2758
  %2760 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %2761 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %2762 = fmul <2 x double> %2761, splat (double 5.000000e-01)
  %2763 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2762, <2 x double> %2723, <2 x double> %2760)
  %2764 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %2765 = fmul <2 x double> %2723, %2764
  %2766 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2759, <2 x double> %2763, <2 x double> %2765)
  %2767 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %2768 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %2769 = fmul <2 x double> %2758, %2768
  %2770 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2762, <2 x double> %2768, <2 x double> %2760)
  %2771 = fmul <2 x double> %2764, %2768
  %2772 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2769, <2 x double> %2770, <2 x double> %2771)
  %2773 = fmul <2 x double> %2767, %2772
  %2774 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2757, <2 x double> %2766, <2 x double> %2773)
  %2775 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %2776 = load <2 x double>, ptr %166, align 16, !tbaa !26
  %2777 = fmul <2 x double> %2758, %2776
  %2778 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2762, <2 x double> %2776, <2 x double> %2760)
  %2779 = fmul <2 x double> %2764, %2776
  %2780 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2777, <2 x double> %2778, <2 x double> %2779)
  %2781 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2775, <2 x double> %2780, <2 x double> %2774)
  %2782 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2761, <2 x double> %2723, <2 x double> %2760)
  %2783 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2758, <2 x double> %2782, <2 x double> %2764)
  %2784 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %2785 = fcmp une <2 x double> %2784, zeroinitializer
  %2786 = fadd <2 x double> %2730, %2781
  %2787 = fsub <2 x double> %2786, %2749
  %2788 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2757, <2 x double> %2783, <2 x double> %2756)
  %2789 = fdiv <2 x double> %2787, %2788
  %2790 = fsub <2 x double> %2723, %2789
  %2791 = select <2 x i1> %2785, <2 x double> %2723, <2 x double> %2790
  store <2 x double> %2791, ptr %164, align 16, !tbaa !26
  %2792 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %2793 = fneg <2 x double> %2767
  %2794 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2793, <2 x double> %2792, <2 x double> %2749)
  %2795 = load <2 x double>, ptr %207, align 16, !tbaa !26
  %2796 = fneg <2 x double> %2775
  %2797 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2796, <2 x double> %2795, <2 x double> %2794)
  %2798 = fdiv <2 x double> %2797, %2757
  %2799 = load <2 x double>, ptr %208, align 16, !tbaa !26
  %2800 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2793, <2 x double> %2799, <2 x double> %2730)
  %2801 = load <2 x double>, ptr %209, align 16, !tbaa !26
  %2802 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2796, <2 x double> %2801, <2 x double> %2800)
  %2803 = fdiv <2 x double> %2802, %2757
  %2804 = load <2 x double>, ptr %210, align 16, !tbaa !26
  %2805 = select <2 x i1> %2785, <2 x double> %2804, <2 x double> %2798
  store <2 x double> %2805, ptr %210, align 16, !tbaa !26
  %2806 = load <2 x double>, ptr %211, align 16, !tbaa !26
  %2807 = select <2 x i1> %2785, <2 x double> %2806, <2 x double> %2803
  store <2 x double> %2807, ptr %211, align 16, !tbaa !26
  br i1 %2722, label %2938, label %3238

2808:                                             ; preds = %2641, %2912
  %2809 = phi i64 [ %2935, %2912 ], [ 0, %2641 ]
  %2810 = load ptr, ptr %142, align 8, !tbaa !28
  %2811 = getelementptr inbounds nuw %struct.Piece, ptr %2810, i64 %2809
  %2812 = getelementptr inbounds nuw i8, ptr %2811, i64 1392
  %2813 = load <2 x double>, ptr %2812, align 16, !tbaa !26
  %2814 = getelementptr inbounds nuw i8, ptr %2811, i64 1440
  %2815 = load <2 x double>, ptr %2814, align 16, !tbaa !26
  %2816 = getelementptr inbounds nuw i8, ptr %2811, i64 1944
  %2817 = load ptr, ptr %2816, align 8, !tbaa !71
  %2818 = getelementptr inbounds nuw i8, ptr %2811, i64 1952
  %2819 = load ptr, ptr %2818, align 16, !tbaa !72
  %2820 = getelementptr inbounds nuw i8, ptr %2811, i64 1896
  %2821 = load ptr, ptr %2820, align 8, !tbaa !57
  %2822 = load i64, ptr %132, align 16, !tbaa !21
  %2823 = icmp sgt i64 %2822, 0
  br i1 %2823, label %2824, label %2844

2824:                                             ; preds = %2808
  %2825 = and i64 %2822, 1
  %2826 = icmp eq i64 %2825, 0
  br i1 %2826, label %2840, label %2827

2827:                                             ; preds = %2824
  %2828 = add nsw i64 %2822, -1
  %2829 = uitofp nneg i64 %2828 to double
  %2830 = insertelement <2 x double> poison, double %2829, i64 0
  %2831 = shufflevector <2 x double> %2830, <2 x double> poison, <2 x i32> zeroinitializer
  %2832 = fcmp ugt <2 x double> %2815, %2831
  %2833 = getelementptr inbounds nuw <2 x double>, ptr %2817, i64 %2828
  %2834 = load <2 x double>, ptr %2833, align 16, !tbaa !26
  %2835 = getelementptr inbounds nuw <2 x double>, ptr %2819, i64 %2828
  %2836 = load <2 x double>, ptr %2835, align 16, !tbaa !26
  %2837 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2836, <2 x double> %2813, <2 x double> %2834)
  %2838 = select <2 x i1> %2832, <2 x double> %2837, <2 x double> %2813
  %2839 = getelementptr inbounds nuw <2 x double>, ptr %2821, i64 %2828
  store <2 x double> %2838, ptr %2839, align 16, !tbaa !26
  br label %2840

2840:                                             ; preds = %2827, %2824
  %2841 = phi <2 x double> [ %2813, %2824 ], [ %2838, %2827 ]
  %2842 = phi i64 [ %2822, %2824 ], [ %2828, %2827 ]
  %2843 = icmp eq i64 %2822, 1
  br i1 %2843, label %2844, label %2859

2844:                                             ; preds = %2840, %2859, %2808
  %2845 = getelementptr inbounds nuw i8, ptr %2811, i64 1840
  %2846 = load <2 x i64>, ptr %2845, align 16, !tbaa !26
  %2847 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2846)
  %2848 = icmp eq i64 %2847, 0
  %2849 = load i64, ptr %133, align 8, !tbaa !22
  %2850 = icmp sgt i64 %2849, 0
  br i1 %2848, label %2856, label %2851

2851:                                             ; preds = %2844
  br i1 %2850, label %2852, label %2912

2852:                                             ; preds = %2851
  %2853 = getelementptr inbounds nuw i8, ptr %2811, i64 2048
  %2854 = getelementptr inbounds nuw i8, ptr %2811, i64 2056
  %2855 = getelementptr inbounds nuw i8, ptr %2811, i64 2016
  br label %2887

2856:                                             ; preds = %2844
  br i1 %2850, label %2857, label %2912

2857:                                             ; preds = %2856
  %2858 = getelementptr inbounds nuw i8, ptr %2811, i64 2016
  br label %2905

2859:                                             ; preds = %2840, %2859
  %2860 = phi <2 x double> [ %2884, %2859 ], [ %2841, %2840 ]
  %2861 = phi i64 [ %2874, %2859 ], [ %2842, %2840 ]
  %2862 = add nsw i64 %2861, -1
  %2863 = uitofp nneg i64 %2862 to double
  %2864 = insertelement <2 x double> poison, double %2863, i64 0
  %2865 = shufflevector <2 x double> %2864, <2 x double> poison, <2 x i32> zeroinitializer
  %2866 = fcmp ugt <2 x double> %2815, %2865
  %2867 = getelementptr inbounds nuw <2 x double>, ptr %2817, i64 %2862
  %2868 = load <2 x double>, ptr %2867, align 16, !tbaa !26
  %2869 = getelementptr inbounds nuw <2 x double>, ptr %2819, i64 %2862
  %2870 = load <2 x double>, ptr %2869, align 16, !tbaa !26
  %2871 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2870, <2 x double> %2860, <2 x double> %2868)
  %2872 = select <2 x i1> %2866, <2 x double> %2871, <2 x double> %2813
  %2873 = getelementptr inbounds nuw <2 x double>, ptr %2821, i64 %2862
  store <2 x double> %2872, ptr %2873, align 16, !tbaa !26
  %2874 = add nsw i64 %2861, -2
  %2875 = uitofp nneg i64 %2874 to double
  %2876 = insertelement <2 x double> poison, double %2875, i64 0
  %2877 = shufflevector <2 x double> %2876, <2 x double> poison, <2 x i32> zeroinitializer
  %2878 = fcmp ugt <2 x double> %2815, %2877
  %2879 = getelementptr inbounds nuw <2 x double>, ptr %2817, i64 %2874
  %2880 = load <2 x double>, ptr %2879, align 16, !tbaa !26
  %2881 = getelementptr inbounds nuw <2 x double>, ptr %2819, i64 %2874
  %2882 = load <2 x double>, ptr %2881, align 16, !tbaa !26
  %2883 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2882, <2 x double> %2872, <2 x double> %2880)
  %2884 = select <2 x i1> %2878, <2 x double> %2883, <2 x double> %2813
  %2885 = getelementptr inbounds nuw <2 x double>, ptr %2821, i64 %2874
  store <2 x double> %2884, ptr %2885, align 16, !tbaa !26
  %2886 = icmp samesign ugt i64 %2862, 1
  br i1 %2886, label %2859, label %2844, !llvm.loop !105

2887:                                             ; preds = %2852, %2887
  %2888 = phi i64 [ 0, %2852 ], [ %2902, %2887 ]
  %2889 = phi <2 x double> [ %2813, %2852 ], [ %2899, %2887 ]
  %2890 = load <2 x i64>, ptr %2845, align 16, !tbaa !26
  %2891 = load ptr, ptr %2853, align 16, !tbaa !77
  %2892 = getelementptr inbounds nuw <2 x double>, ptr %2891, i64 %2888
  %2893 = load <2 x double>, ptr %2892, align 16, !tbaa !26
  %2894 = load ptr, ptr %2854, align 8, !tbaa !78
  %2895 = getelementptr inbounds nuw <2 x double>, ptr %2894, i64 %2888
  %2896 = load <2 x double>, ptr %2895, align 16, !tbaa !26
  %2897 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2896, <2 x double> %2889, <2 x double> %2893)
  %2898 = icmp eq <2 x i64> %2890, zeroinitializer
  %2899 = select <2 x i1> %2898, <2 x double> %2813, <2 x double> %2897
  %2900 = load ptr, ptr %2855, align 16, !tbaa !106
  %2901 = getelementptr inbounds nuw <2 x double>, ptr %2900, i64 %2888
  store <2 x double> %2899, ptr %2901, align 16, !tbaa !26
  %2902 = add nuw nsw i64 %2888, 1
  %2903 = load i64, ptr %133, align 8, !tbaa !22
  %2904 = icmp slt i64 %2902, %2903
  br i1 %2904, label %2887, label %2912, !llvm.loop !107

2905:                                             ; preds = %2857, %2905
  %2906 = phi i64 [ 0, %2857 ], [ %2909, %2905 ]
  %2907 = load ptr, ptr %2858, align 16, !tbaa !106
  %2908 = getelementptr inbounds nuw <2 x double>, ptr %2907, i64 %2906
  store <2 x double> %2813, ptr %2908, align 16, !tbaa !26
  %2909 = add nuw nsw i64 %2906, 1
  %2910 = load i64, ptr %133, align 8, !tbaa !22
  %2911 = icmp slt i64 %2909, %2910
  br i1 %2911, label %2905, label %2912, !llvm.loop !108

2912:                                             ; preds = %2887, %2905, %2851, %2856
  %2913 = phi <2 x double> [ %2813, %2856 ], [ %2813, %2851 ], [ %2813, %2905 ], [ %2899, %2887 ]
  %2914 = load <2 x i64>, ptr %2845, align 16, !tbaa !26
  %2915 = getelementptr inbounds nuw i8, ptr %2811, i64 1568
  %2916 = load <2 x double>, ptr %2915, align 16, !tbaa !26
  %2917 = icmp eq <2 x i64> %2914, zeroinitializer
  %2918 = select <2 x i1> %2917, <2 x double> zeroinitializer, <2 x double> %2916
  %2919 = fsub <2 x double> splat (double 1.000000e+00), %2918
  %2920 = getelementptr inbounds nuw i8, ptr %2811, i64 1376
  %2921 = load <2 x double>, ptr %2920, align 16, !tbaa !26
  %2922 = fmul <2 x double> %2918, %2921
  %2923 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2919, <2 x double> %2913, <2 x double> %2922)
  %2924 = getelementptr inbounds nuw i8, ptr %2811, i64 1616
  store <2 x double> %2923, ptr %2924, align 16, !tbaa !26
  %2925 = getelementptr inbounds nuw i8, ptr %2811, i64 1552
  %2926 = load <2 x double>, ptr %2925, align 16, !tbaa !26
  %2927 = fsub <2 x double> %2921, %2913
  %2928 = fmul <2 x double> %2927, %2926
  %2929 = getelementptr inbounds nuw i8, ptr %2811, i64 1584
  store <2 x double> %2928, ptr %2929, align 16, !tbaa !26
  %2930 = getelementptr inbounds nuw i8, ptr %2811, i64 800
  %2931 = load <2 x double>, ptr %2930, align 16, !tbaa !26
  %2932 = fdiv <2 x double> %2928, %2931
  %2933 = fsub <2 x double> %2921, %2932
  %2934 = getelementptr inbounds nuw i8, ptr %2811, i64 1600
  store <2 x double> %2933, ptr %2934, align 16, !tbaa !26
  %2935 = add nuw nsw i64 %2809, 1
  %2936 = load i64, ptr %157, align 8, !tbaa !20
  %2937 = icmp slt i64 %2935, %2936
  br i1 %2937, label %2808, label %2647, !llvm.loop !109

2938:                                             ; preds = %2721, %3193
  %2939 = phi i64 [ %3235, %3193 ], [ 0, %2721 ]
  %2940 = phi <2 x double> [ %3234, %3193 ], [ zeroinitializer, %2721 ]
  %2941 = load ptr, ptr %142, align 8, !tbaa !28
  %2942 = getelementptr inbounds nuw %struct.Piece, ptr %2941, i64 %2939
  %2943 = getelementptr inbounds nuw i8, ptr %2942, i64 1408
  %2944 = load <2 x double>, ptr %2943, align 16, !tbaa !26
  %2945 = getelementptr inbounds nuw i8, ptr %2942, i64 1424
  %2946 = load <2 x double>, ptr %2945, align 16, !tbaa !26
  %2947 = fadd <2 x double> %2944, %2946
  %2948 = getelementptr inbounds nuw i8, ptr %2942, i64 1392
  %2949 = load <2 x double>, ptr %2948, align 16, !tbaa !26
  %2950 = load <2 x double>, ptr %203, align 16, !tbaa !26
  %2951 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2950, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2952 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2950, <2 x double> %2951, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2953 = getelementptr inbounds nuw i8, ptr %2942, i64 1328
  %2954 = load <2 x double>, ptr %2953, align 16, !tbaa !26
  %2955 = getelementptr inbounds nuw i8, ptr %2942, i64 1008
  %2956 = load <2 x double>, ptr %2955, align 16, !tbaa !26
  %2957 = fneg <2 x double> %2954
  %2958 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2957, <2 x double> %2956, <2 x double> %2947)
  %2959 = getelementptr inbounds nuw i8, ptr %2942, i64 1344
  %2960 = load <2 x double>, ptr %2959, align 16, !tbaa !26
  %2961 = getelementptr inbounds nuw i8, ptr %2942, i64 1200
  %2962 = load <2 x double>, ptr %2961, align 16, !tbaa !26
  %2963 = fneg <2 x double> %2960
  %2964 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2963, <2 x double> %2962, <2 x double> %2958)
  %2965 = getelementptr inbounds nuw i8, ptr %2942, i64 1312
  %2966 = load <2 x double>, ptr %2965, align 16, !tbaa !26
  %2967 = fdiv <2 x double> %2964, %2966
  %2968 = getelementptr inbounds nuw i8, ptr %2942, i64 400
  %2969 = load <2 x double>, ptr %2968, align 16, !tbaa !26
  %2970 = fsub <2 x double> %2969, %2967
  %2971 = getelementptr inbounds nuw i8, ptr %2942, i64 976
  %2972 = load <2 x double>, ptr %2971, align 16, !tbaa !26
  %2973 = getelementptr inbounds nuw i8, ptr %2942, i64 1792
  %2974 = load <2 x double>, ptr %2973, align 16, !tbaa !26
  %2975 = fsub <2 x double> %2972, %2974
  %2976 = getelementptr inbounds nuw i8, ptr %2942, i64 1696
  %2977 = load <2 x double>, ptr %2976, align 16, !tbaa !26
  %2978 = getelementptr inbounds nuw i8, ptr %2942, i64 320
  %2979 = load <2 x double>, ptr %2978, align 16, !tbaa !26
  %2980 = fmul <2 x double> %2977, %2979
  %2981 = getelementptr inbounds nuw i8, ptr %2942, i64 1616
  %2982 = load <2 x double>, ptr %2981, align 16, !tbaa !26
  %2983 = fsub <2 x double> %2982, %2949
  %2984 = fmul <2 x double> %2980, %2983
  %2985 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2952, <2 x double> %2947, <2 x double> %2984)
  %2986 = fsub <2 x double> %2970, %2975
  %2987 = getelementptr inbounds nuw i8, ptr %2942, i64 736
  %2988 = getelementptr inbounds nuw i8, ptr %2942, i64 768
  %2989 = load <2 x double>, ptr %2988, align 16, !tbaa !26
  %2990 = fsub <2 x double> %2986, %2989
  %2991 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2990)
  %2992 = getelementptr inbounds nuw i8, ptr %2942, i64 208
  %2993 = load <2 x double>, ptr %2992, align 16, !tbaa !26
  %2994 = fdiv <2 x double> %2991, %2993
  %2995 = getelementptr inbounds nuw i8, ptr %2942, i64 1840
  %2996 = load <2 x i64>, ptr %2995, align 16, !tbaa !26
  %2997 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2996)
  %2998 = icmp eq i64 %2997, 0
  br i1 %2998, label %3193, label %2999

2999:                                             ; preds = %2938
  %3000 = getelementptr inbounds nuw i8, ptr %2942, i64 944
  %3001 = load <2 x double>, ptr %3000, align 16, !tbaa !26
  %3002 = fcmp ogt <2 x double> %2975, %2970
  %3003 = getelementptr inbounds nuw i8, ptr %2942, i64 1824
  %3004 = load <2 x double>, ptr %3003, align 16, !tbaa !26
  %3005 = fcmp oeq <2 x double> %3004, zeroinitializer
  %3006 = select <2 x i1> %3005, <2 x i1> %3002, <2 x i1> zeroinitializer
  %3007 = select <2 x i1> %3006, <2 x i64> %2996, <2 x i64> zeroinitializer
  %3008 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3007)
  %3009 = icmp eq i64 %3008, 0
  br i1 %3009, label %3080, label %3010

3010:                                             ; preds = %2999
  %3011 = fsub <2 x double> %2975, %2970
  %3012 = fdiv <2 x double> %3011, %2993
  %3013 = getelementptr inbounds nuw i8, ptr %2942, i64 1928
  %3014 = load ptr, ptr %3013, align 8, !tbaa !64
  %3015 = load i64, ptr %132, align 16, !tbaa !21
  %3016 = add nsw i64 %3015, -1
  %3017 = getelementptr inbounds <2 x double>, ptr %3014, i64 %3016
  %3018 = load <2 x double>, ptr %3017, align 16, !tbaa !26
  %3019 = icmp sgt i64 %3015, 1
  br i1 %3019, label %3020, label %3072

3020:                                             ; preds = %3010
  %3021 = getelementptr inbounds nuw i8, ptr %2942, i64 1888
  %3022 = load i64, ptr %3021, align 16, !tbaa !31
  %3023 = getelementptr inbounds nuw i8, ptr %2942, i64 1104
  %3024 = getelementptr inbounds nuw i8, ptr %2942, i64 384
  %3025 = getelementptr inbounds nuw i8, ptr %2942, i64 1984
  br label %3026

3026:                                             ; preds = %3020, %3069
  %3027 = phi <2 x double> [ %3001, %3020 ], [ %3064, %3069 ]
  %3028 = phi i64 [ %3016, %3020 ], [ %3070, %3069 ]
  %3029 = phi <2 x double> [ %3018, %3020 ], [ %3052, %3069 ]
  %3030 = phi <2 x i64> [ %3007, %3020 ], [ %3056, %3069 ]
  %3031 = phi <2 x double> [ %3012, %3020 ], [ %3063, %3069 ]
  %3032 = icmp slt i64 %3028, %3022
  br i1 %3032, label %3033, label %3039

3033:                                             ; preds = %3026
  %3034 = load ptr, ptr %3025, align 16, !tbaa !67
  %3035 = getelementptr inbounds nuw <2 x double>, ptr %3034, i64 %3028
  %3036 = load <2 x double>, ptr %3035, align 16, !tbaa !26
  %3037 = load <2 x double>, ptr %3024, align 16, !tbaa !26
  %3038 = fmul <2 x double> %3036, %3037
  br label %3047

3039:                                             ; preds = %3026
  %3040 = load <2 x double>, ptr %3023, align 16, !tbaa !26
  %3041 = load <2 x double>, ptr %3024, align 16, !tbaa !26
  %3042 = load ptr, ptr %3025, align 16, !tbaa !67
  %3043 = getelementptr inbounds nuw <2 x double>, ptr %3042, i64 %3028
  %3044 = load <2 x double>, ptr %3043, align 16, !tbaa !26
  %3045 = fsub <2 x double> %3040, %3041
  %3046 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3044, <2 x double> %3045, <2 x double> %3041)
  br label %3047

3047:                                             ; preds = %3033, %3039
  %3048 = phi <2 x double> [ %3038, %3033 ], [ %3046, %3039 ]
  %3049 = getelementptr inbounds nuw <2 x double>, ptr %3014, i64 %3028
  %3050 = load <2 x double>, ptr %3049, align 16, !tbaa !26
  %3051 = icmp eq <2 x i64> %3030, zeroinitializer
  %3052 = select <2 x i1> %3051, <2 x double> %3029, <2 x double> %3050
  %3053 = fsub <2 x double> %3027, %3048
  %3054 = fmul <2 x double> %3053, %3052
  %3055 = fcmp olt <2 x double> %3054, %3031
  %3056 = select <2 x i1> %3055, <2 x i64> %3030, <2 x i64> zeroinitializer
  %3057 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3056)
  %3058 = icmp eq i64 %3057, 0
  br i1 %3058, label %3072, label %3059

3059:                                             ; preds = %3047
  %3060 = fneg <2 x double> %3052
  %3061 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3060, <2 x double> %3053, <2 x double> %3031)
  %3062 = icmp eq <2 x i64> %3056, zeroinitializer
  %3063 = select <2 x i1> %3062, <2 x double> %3031, <2 x double> %3061
  %3064 = select <2 x i1> %3062, <2 x double> %3027, <2 x double> %3048
  %3065 = icmp eq i64 %3028, 1
  br i1 %3065, label %3066, label %3069

3066:                                             ; preds = %3059
  %3067 = load <2 x double>, ptr %3014, align 16, !tbaa !26
  %3068 = select <2 x i1> %3062, <2 x double> %3052, <2 x double> %3067
  br label %3072

3069:                                             ; preds = %3059
  %3070 = add nsw i64 %3028, -1
  %3071 = icmp sgt i64 %3028, 1
  br i1 %3071, label %3026, label %3072, !llvm.loop !110

3072:                                             ; preds = %3069, %3047, %3066, %3010
  %3073 = phi <2 x double> [ %3012, %3010 ], [ %3063, %3066 ], [ %3031, %3047 ], [ %3063, %3069 ]
  %3074 = phi <2 x double> [ %3001, %3010 ], [ %3064, %3066 ], [ %3027, %3047 ], [ %3064, %3069 ]
  %3075 = phi <2 x double> [ %3018, %3010 ], [ %3068, %3066 ], [ %3052, %3047 ], [ %3052, %3069 ]
  %3076 = fdiv <2 x double> %3073, %3075
  %3077 = fsub <2 x double> %3074, %3076
  %3078 = icmp eq <2 x i64> %3007, zeroinitializer
  %3079 = select <2 x i1> %3078, <2 x double> %3001, <2 x double> %3077
  br label %3080

3080:                                             ; preds = %3072, %2999
  %3081 = phi <2 x double> [ %3079, %3072 ], [ %3001, %2999 ]
  %3082 = load <2 x double>, ptr %2987, align 16, !tbaa !26
  %3083 = getelementptr inbounds nuw i8, ptr %2942, i64 640
  %3084 = load <2 x double>, ptr %3083, align 16, !tbaa !26
  %3085 = getelementptr inbounds nuw i8, ptr %2942, i64 656
  %3086 = load <2 x double>, ptr %3085, align 16, !tbaa !26
  %3087 = getelementptr inbounds nuw i8, ptr %2942, i64 672
  %3088 = load <2 x double>, ptr %3087, align 16, !tbaa !26
  %3089 = getelementptr inbounds nuw i8, ptr %2942, i64 688
  %3090 = load <2 x double>, ptr %3089, align 16, !tbaa !26
  %3091 = load <2 x double>, ptr %2942, align 16, !tbaa !26
  %3092 = fmul <2 x double> %3091, splat (double 1.000000e-09)
  %3093 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3082, <2 x double> %3090, <2 x double> %3088)
  %3094 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3082, <2 x double> %3093, <2 x double> %3086)
  %3095 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3082, <2 x double> %3094, <2 x double> %3084)
  %3096 = fsub <2 x double> %3095, %3081
  %3097 = fmul <2 x double> %3082, splat (double 3.000000e+00)
  %3098 = fmul <2 x double> %3097, %3090
  %3099 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3088, <2 x double> splat (double 2.000000e+00), <2 x double> %3098)
  %3100 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3082, <2 x double> %3099, <2 x double> %3086)
  %3101 = fdiv <2 x double> %3096, %3100
  %3102 = fsub <2 x double> %3082, %3101
  %3103 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3101)
  %3104 = fcmp oge <2 x double> %3103, %3092
  %3105 = bitcast <2 x i1> %3104 to i2
  %3106 = icmp eq i2 %3105, 0
  br i1 %3106, label %3153, label %3107, !llvm.loop !111

3107:                                             ; preds = %3080
  %3108 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3102, <2 x double> %3090, <2 x double> %3088)
  %3109 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3102, <2 x double> %3108, <2 x double> %3086)
  %3110 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3102, <2 x double> %3109, <2 x double> %3084)
  %3111 = fsub <2 x double> %3110, %3081
  %3112 = fmul <2 x double> %3102, splat (double 3.000000e+00)
  %3113 = fmul <2 x double> %3112, %3090
  %3114 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3088, <2 x double> splat (double 2.000000e+00), <2 x double> %3113)
  %3115 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3102, <2 x double> %3114, <2 x double> %3086)
  %3116 = fdiv <2 x double> %3111, %3115
  %3117 = fsub <2 x double> %3102, %3116
  %3118 = select <2 x i1> %3104, <2 x double> %3117, <2 x double> %3102
  %3119 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3116)
  %3120 = fcmp oge <2 x double> %3119, %3092
  %3121 = and <2 x i1> %3120, %3104
  %3122 = bitcast <2 x i1> %3121 to i2
  %3123 = icmp eq i2 %3122, 0
  br i1 %3123, label %3153, label %3124, !llvm.loop !111

3124:                                             ; preds = %3107
  %3125 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3118, <2 x double> %3090, <2 x double> %3088)
  %3126 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3118, <2 x double> %3125, <2 x double> %3086)
  %3127 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3118, <2 x double> %3126, <2 x double> %3084)
  %3128 = fsub <2 x double> %3127, %3081
  %3129 = fmul <2 x double> %3118, splat (double 3.000000e+00)
  %3130 = fmul <2 x double> %3129, %3090
  %3131 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3088, <2 x double> splat (double 2.000000e+00), <2 x double> %3130)
  %3132 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3118, <2 x double> %3131, <2 x double> %3086)
  %3133 = fdiv <2 x double> %3128, %3132
  %3134 = fsub <2 x double> %3118, %3133
  %3135 = select <2 x i1> %3121, <2 x double> %3134, <2 x double> %3118
  %3136 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3133)
  %3137 = fcmp oge <2 x double> %3136, %3092
  %3138 = and <2 x i1> %3137, %3121
  %3139 = bitcast <2 x i1> %3138 to i2
  %3140 = icmp eq i2 %3139, 0
  br i1 %3140, label %3153, label %3141, !llvm.loop !111

3141:                                             ; preds = %3124
  %3142 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3135, <2 x double> %3090, <2 x double> %3088)
  %3143 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3135, <2 x double> %3142, <2 x double> %3086)
  %3144 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3135, <2 x double> %3143, <2 x double> %3084)
  %3145 = fsub <2 x double> %3144, %3081
  %3146 = fmul <2 x double> %3135, splat (double 3.000000e+00)
  %3147 = fmul <2 x double> %3146, %3090
  %3148 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3088, <2 x double> splat (double 2.000000e+00), <2 x double> %3147)
  %3149 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3135, <2 x double> %3148, <2 x double> %3086)
  %3150 = fdiv <2 x double> %3145, %3149
  %3151 = fsub <2 x double> %3135, %3150
  %3152 = select <2 x i1> %3138, <2 x double> %3151, <2 x double> %3135
  br label %3153

3153:                                             ; preds = %3141, %3124, %3107, %3080
  %3154 = phi <2 x double> [ %3102, %3080 ], [ %3118, %3107 ], [ %3135, %3124 ], [ %3152, %3141 ]
  %3155 = fmul <2 x double> %3091, splat (double 2.800000e-01)
  %3156 = fcmp ogt <2 x double> %3154, %3155
  %3157 = select <2 x i1> %3156, <2 x double> %3154, <2 x double> %3155
  %3158 = fcmp olt <2 x double> %3157, %3091
  %3159 = select <2 x i1> %3158, <2 x double> %3157, <2 x double> %3091
  %3160 = fcmp olt <2 x double> %2975, %2970
  %3161 = icmp eq <2 x i64> %2996, zeroinitializer
  %3162 = select <2 x i1> %3161, <2 x i1> splat (i1 true), <2 x i1> %3160
  %3163 = select <2 x i1> %3162, <2 x double> %2975, <2 x double> %2970
  %3164 = fsub <2 x double> %3159, %3082
  %3165 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3164)
  %3166 = select <2 x i1> %3161, <2 x double> %2994, <2 x double> %3165
  %3167 = select <2 x i1> %3161, <2 x double> %3082, <2 x double> %3159
  store <2 x double> %3167, ptr %2987, align 16, !tbaa !26
  %3168 = getelementptr inbounds nuw i8, ptr %2942, i64 752
  %3169 = load <2 x double>, ptr %3168, align 16, !tbaa !26
  %3170 = select <2 x i1> %3161, <2 x double> %3169, <2 x double> %3081
  store <2 x double> %3170, ptr %3168, align 16, !tbaa !26
  %3171 = getelementptr inbounds nuw i8, ptr %2942, i64 1680
  %3172 = load <2 x double>, ptr %3171, align 16, !tbaa !26
  %3173 = fmul <2 x double> %3172, splat (double 2.000000e+00)
  %3174 = getelementptr inbounds nuw i8, ptr %2942, i64 96
  %3175 = load <2 x double>, ptr %3174, align 16, !tbaa !26
  %3176 = getelementptr inbounds nuw i8, ptr %2942, i64 112
  %3177 = load <2 x double>, ptr %3176, align 16, !tbaa !26
  %3178 = getelementptr inbounds nuw i8, ptr %2942, i64 128
  %3179 = load <2 x double>, ptr %3178, align 16, !tbaa !26
  %3180 = fmul <2 x double> %2949, %3179
  %3181 = fmul <2 x double> %3180, splat (double 0x3FD5555555555555)
  %3182 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3177, <2 x double> splat (double 5.000000e-01), <2 x double> %3181)
  %3183 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2949, <2 x double> %3182, <2 x double> %3175)
  %3184 = fmul <2 x double> %2949, %3183
  %3185 = getelementptr inbounds nuw i8, ptr %2942, i64 192
  %3186 = load <2 x double>, ptr %3185, align 16, !tbaa !26
  %3187 = fneg <2 x double> %3186
  %3188 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3187, <2 x double> %2949, <2 x double> %3184)
  %3189 = fmul <2 x double> %3173, %3188
  %3190 = fsub <2 x double> %2985, %3189
  %3191 = select <2 x i1> %3161, <2 x double> %2985, <2 x double> %3190
  %3192 = fsub <2 x double> %2970, %3163
  br label %3193

3193:                                             ; preds = %2938, %3153
  %3194 = phi <2 x double> [ %2986, %2938 ], [ %3192, %3153 ]
  %3195 = phi <2 x double> [ %2994, %2938 ], [ %3166, %3153 ]
  %3196 = phi <2 x double> [ %2975, %2938 ], [ %3163, %3153 ]
  %3197 = phi <2 x double> [ %2985, %2938 ], [ %3191, %3153 ]
  store <2 x double> %3194, ptr %2988, align 16, !tbaa !26
  %3198 = getelementptr inbounds nuw i8, ptr %2942, i64 784
  store <2 x double> %3196, ptr %3198, align 16, !tbaa !26
  %3199 = getelementptr inbounds nuw i8, ptr %2942, i64 816
  store <2 x double> %2967, ptr %3199, align 16, !tbaa !26
  %3200 = getelementptr inbounds nuw i8, ptr %2942, i64 864
  store <2 x double> %2944, ptr %3200, align 16, !tbaa !26
  %3201 = getelementptr inbounds nuw i8, ptr %2942, i64 880
  store <2 x double> %2949, ptr %3201, align 16, !tbaa !26
  %3202 = getelementptr inbounds nuw i8, ptr %2942, i64 1744
  %3203 = load <2 x double>, ptr %3202, align 16, !tbaa !26
  %3204 = getelementptr inbounds nuw i8, ptr %2942, i64 1760
  %3205 = load <2 x double>, ptr %3204, align 16, !tbaa !26
  %3206 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3203, <2 x double> %2949, <2 x double> %3205)
  %3207 = getelementptr inbounds nuw i8, ptr %2942, i64 1584
  %3208 = load <2 x double>, ptr %3207, align 16, !tbaa !26
  %3209 = getelementptr inbounds nuw i8, ptr %2942, i64 1024
  %3210 = load <2 x double>, ptr %3209, align 16, !tbaa !26
  %3211 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2957, <2 x double> %3210, <2 x double> %3208)
  %3212 = getelementptr inbounds nuw i8, ptr %2942, i64 1216
  %3213 = load <2 x double>, ptr %3212, align 16, !tbaa !26
  %3214 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2963, <2 x double> %3213, <2 x double> %3211)
  %3215 = fdiv <2 x double> %3214, %2966
  %3216 = getelementptr inbounds nuw i8, ptr %2942, i64 832
  store <2 x double> %3215, ptr %3216, align 16, !tbaa !26
  %3217 = getelementptr inbounds nuw i8, ptr %2942, i64 1040
  %3218 = load <2 x double>, ptr %3217, align 16, !tbaa !26
  %3219 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2957, <2 x double> %3218, <2 x double> %3197)
  %3220 = getelementptr inbounds nuw i8, ptr %2942, i64 1232
  %3221 = load <2 x double>, ptr %3220, align 16, !tbaa !26
  %3222 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2963, <2 x double> %3221, <2 x double> %3219)
  %3223 = fdiv <2 x double> %3222, %2966
  %3224 = getelementptr inbounds nuw i8, ptr %2942, i64 848
  store <2 x double> %3223, ptr %3224, align 16, !tbaa !26
  %3225 = getelementptr inbounds nuw i8, ptr %2942, i64 1088
  %3226 = load <2 x double>, ptr %3225, align 16, !tbaa !26
  %3227 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2957, <2 x double> %3226, <2 x double> %3206)
  %3228 = getelementptr inbounds nuw i8, ptr %2942, i64 1280
  %3229 = load <2 x double>, ptr %3228, align 16, !tbaa !26
  %3230 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2963, <2 x double> %3229, <2 x double> %3227)
  %3231 = fdiv <2 x double> %3230, %2966
  %3232 = getelementptr inbounds nuw i8, ptr %2942, i64 896
  store <2 x double> %3231, ptr %3232, align 16, !tbaa !26
  %3233 = fcmp ogt <2 x double> %2940, %3195
  %3234 = select <2 x i1> %3233, <2 x double> %2940, <2 x double> %3195
  %3235 = add nuw nsw i64 %2939, 1
  %3236 = load i64, ptr %157, align 8, !tbaa !20
  %3237 = icmp slt i64 %3235, %3236
  br i1 %3237, label %2938, label %3238, !llvm.loop !112

3238:                                             ; preds = %3193, %2721
  %3239 = phi i64 [ %2724, %2721 ], [ %3236, %3193 ]
  %3240 = phi <2 x double> [ zeroinitializer, %2721 ], [ %3234, %3193 ]
  %3241 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %3242 = fadd <2 x double> %3241, splat (double 1.000000e+00)
  store <2 x double> %3242, ptr %175, align 16, !tbaa !26
  %3243 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %3244 = load <2 x double>, ptr %212, align 16, !tbaa !26
  %3245 = fcmp olt <2 x double> %3240, %3244
  %3246 = load i64, ptr %213, align 16, !tbaa !24
  %3247 = sitofp i64 %3246 to double
  %3248 = insertelement <2 x double> poison, double %3247, i64 0
  %3249 = shufflevector <2 x double> %3248, <2 x double> poison, <2 x i32> zeroinitializer
  %3250 = fcmp oge <2 x double> %3242, %3249
  %3251 = or <2 x i1> %3245, %3250
  %3252 = select <2 x i1> %3251, <2 x i64> %3243, <2 x i64> zeroinitializer
  store <2 x i64> %3252, ptr %146, align 16, !tbaa !26
  %3253 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3252)
  %3254 = icmp eq i64 %3253, 0
  br i1 %3254, label %524, label %3255, !llvm.loop !54

3255:                                             ; preds = %3238
  %3256 = icmp sgt i64 %3239, 0
  br i1 %3256, label %3257, label %3259

3257:                                             ; preds = %3255
  %3258 = icmp eq <2 x i64> %3252, zeroinitializer
  br label %3574

3259:                                             ; preds = %3622, %3255
  %3260 = phi i64 [ %3239, %3255 ], [ %3628, %3622 ]
  %3261 = load <2 x double>, ptr %214, align 16, !tbaa !26
  %3262 = fadd <2 x double> %3261, splat (double 1.000000e+00)
  %3263 = icmp eq <2 x i64> %3252, zeroinitializer
  %3264 = select <2 x i1> %3263, <2 x double> %3261, <2 x double> %3262
  store <2 x double> %3264, ptr %214, align 16, !tbaa !26
  %3265 = fcmp ogt <2 x double> %3264, splat (double 4.000000e+01)
  %3266 = select <2 x i1> %3265, <2 x i64> %3252, <2 x i64> zeroinitializer
  %3267 = xor <2 x i64> %3266, %3252
  %3268 = load <2 x double>, ptr %140, align 16, !tbaa !26
  %3269 = fadd <2 x double> %3268, splat (double 1.000000e+00)
  %3270 = icmp eq <2 x i64> %3266, zeroinitializer
  %3271 = select <2 x i1> %3270, <2 x double> %3268, <2 x double> %3269
  store <2 x double> %3271, ptr %140, align 16, !tbaa !26
  %3272 = load <2 x double>, ptr %203, align 16, !tbaa !26
  %3273 = load <2 x double>, ptr %215, align 16, !tbaa !26
  %3274 = fsub <2 x double> %3272, %3273
  %3275 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3274)
  %3276 = load <2 x double>, ptr %216, align 16, !tbaa !26
  %3277 = fmul <2 x double> %3276, splat (double 1.500000e+00)
  %3278 = fcmp ogt <2 x double> %3275, %3277
  %3279 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %3280 = fcmp ogt <2 x double> %3279, splat (double 2.000000e-03)
  %3281 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %3282 = fcmp oeq <2 x double> %3281, zeroinitializer
  %3283 = and <2 x i1> %3278, %3282
  %3284 = and <2 x i1> %3280, %3283
  %3285 = fdiv <2 x double> %3276, %3275
  %3286 = select <2 x i1> %3284, <2 x i64> %3267, <2 x i64> zeroinitializer
  %3287 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %3288 = fcmp ogt <2 x double> %3287, %3279
  %3289 = select <2 x i1> %3288, <2 x double> %3287, <2 x double> %3279
  %3290 = select <2 x i1> %3284, <2 x double> zeroinitializer, <2 x double> %3289
  %3291 = icmp eq <2 x i64> %3286, zeroinitializer
  %3292 = select <2 x i1> %3291, <2 x double> %3287, <2 x double> %3290
  store <2 x double> %3292, ptr %156, align 16, !tbaa !26
  %3293 = fcmp ogt <2 x double> %3285, splat (double 5.000000e-02)
  %3294 = select <2 x i1> %3293, <2 x double> %3285, <2 x double> splat (double 5.000000e-02)
  %3295 = fcmp olt <2 x double> %3294, splat (double 0x3FEE666666666666)
  %3296 = select <2 x i1> %3295, <2 x double> %3294, <2 x double> splat (double 0x3FEE666666666666)
  %3297 = fmul <2 x double> %3279, %3296
  %3298 = fcmp ogt <2 x double> %3297, splat (double 0x3EB0C6F7A0B5ED8D)
  %3299 = select <2 x i1> %3298, <2 x double> %3297, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3300 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %3301 = select <2 x i1> %3291, <2 x double> %3300, <2 x double> %3299
  store <2 x double> %3301, ptr %152, align 16, !tbaa !26
  %3302 = load <2 x double>, ptr %137, align 16, !tbaa !26
  %3303 = fadd <2 x double> %3302, splat (double 1.000000e+00)
  %3304 = select <2 x i1> %3291, <2 x double> %3302, <2 x double> %3303
  store <2 x double> %3304, ptr %137, align 16, !tbaa !26
  %3305 = xor <2 x i64> %3286, %3267
  %3306 = icmp sgt i64 %3260, 0
  br i1 %3306, label %3307, label %3399

3307:                                             ; preds = %3259
  %3308 = load ptr, ptr %142, align 8, !tbaa !28
  %3309 = fcmp ogt <2 x double> %3279, splat (double 0x3E7AD7F29ABCAF48)
  %3310 = fcmp ogt <2 x double> %3279, splat (double 1.000000e-05)
  %3311 = fcmp ogt <2 x double> %3279, splat (double 1.000000e-04)
  br label %3312

3312:                                             ; preds = %3307, %3312
  %3313 = phi i64 [ 0, %3307 ], [ %3395, %3312 ]
  %3314 = phi <2 x i64> [ zeroinitializer, %3307 ], [ %3391, %3312 ]
  %3315 = phi <2 x i64> [ zeroinitializer, %3307 ], [ %3342, %3312 ]
  %3316 = phi <2 x double> [ splat (double 1.000000e+00), %3307 ], [ %3394, %3312 ]
  %3317 = getelementptr inbounds nuw %struct.Piece, ptr %3308, i64 %3313
  %3318 = getelementptr inbounds nuw i8, ptr %3317, i64 768
  %3319 = load <2 x double>, ptr %3318, align 16, !tbaa !26
  %3320 = getelementptr inbounds nuw i8, ptr %3317, i64 960
  %3321 = load <2 x double>, ptr %3320, align 16, !tbaa !26
  %3322 = getelementptr inbounds nuw i8, ptr %3317, i64 1840
  %3323 = load <2 x i64>, ptr %3322, align 16, !tbaa !26
  %3324 = xor <2 x i64> %3323, splat (i64 -1)
  %3325 = getelementptr inbounds nuw i8, ptr %3317, i64 224
  %3326 = load <2 x double>, ptr %3325, align 16, !tbaa !26
  %3327 = fmul <2 x double> %3326, splat (double 1.000000e-04)
  %3328 = fcmp ogt <2 x double> %3327, splat (double 0x3E7AD7F29ABCAF48)
  %3329 = fneg <2 x double> %3327
  %3330 = select <2 x i1> %3328, <2 x double> %3329, <2 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3331 = fcmp olt <2 x double> %3319, %3330
  %3332 = select <2 x i1> %3331, <2 x i64> %3324, <2 x i64> zeroinitializer
  %3333 = fcmp ole <2 x double> %3321, zeroinitializer
  %3334 = select <2 x i1> %3333, <2 x i64> %3332, <2 x i64> zeroinitializer
  %3335 = getelementptr inbounds nuw i8, ptr %3317, i64 208
  %3336 = load <2 x double>, ptr %3335, align 16, !tbaa !26
  %3337 = fmul <2 x double> %3336, splat (double -3.000000e-07)
  %3338 = fcmp olt <2 x double> %3319, %3337
  %3339 = select <2 x i1> %3309, <2 x i1> %3338, <2 x i1> zeroinitializer
  %3340 = select <2 x i1> %3339, <2 x i64> %3334, <2 x i64> zeroinitializer
  %3341 = or <2 x i64> %3340, %3314
  %3342 = or <2 x i64> %3340, %3315
  %3343 = fcmp olt <2 x double> %3316, splat (double 3.000000e-01)
  %3344 = icmp eq <2 x i64> %3340, zeroinitializer
  %3345 = select <2 x i1> %3344, <2 x i1> splat (i1 true), <2 x i1> %3343
  %3346 = select <2 x i1> %3345, <2 x double> %3316, <2 x double> splat (double 3.000000e-01)
  %3347 = xor <2 x i64> %3334, splat (i64 -1)
  %3348 = and <2 x i64> %3332, %3347
  %3349 = select <2 x i1> %3310, <2 x i64> %3348, <2 x i64> zeroinitializer
  %3350 = fsub <2 x double> %3321, %3319
  %3351 = fdiv <2 x double> %3321, %3350
  %3352 = or <2 x i64> %3341, %3349
  %3353 = fcmp olt <2 x double> %3346, %3351
  %3354 = icmp eq <2 x i64> %3349, zeroinitializer
  %3355 = select <2 x i1> %3354, <2 x i1> splat (i1 true), <2 x i1> %3353
  %3356 = select <2 x i1> %3355, <2 x double> %3346, <2 x double> %3351
  %3357 = getelementptr inbounds nuw i8, ptr %3317, i64 944
  %3358 = load <2 x double>, ptr %3357, align 16, !tbaa !26
  %3359 = getelementptr inbounds nuw i8, ptr %3317, i64 752
  %3360 = load <2 x double>, ptr %3359, align 16, !tbaa !26
  %3361 = getelementptr inbounds nuw i8, ptr %3317, i64 1824
  %3362 = load <2 x double>, ptr %3361, align 16, !tbaa !26
  %3363 = fcmp oeq <2 x double> %3362, zeroinitializer
  %3364 = getelementptr inbounds nuw i8, ptr %3317, i64 368
  %3365 = load <2 x double>, ptr %3364, align 16, !tbaa !26
  %3366 = fmul <2 x double> %3365, splat (double 0x3FEFF7CED916872B)
  %3367 = fcmp olt <2 x double> %3360, %3366
  %3368 = and <2 x i1> %3363, %3367
  %3369 = and <2 x i1> %3311, %3368
  %3370 = fsub <2 x double> %3358, %3365
  %3371 = fsub <2 x double> %3358, %3360
  %3372 = fdiv <2 x double> %3370, %3371
  %3373 = fcmp uge <2 x double> %3356, %3372
  %3374 = select <2 x i1> %3369, <2 x i1> %3373, <2 x i1> zeroinitializer
  %3375 = select <2 x i1> %3374, <2 x double> %3372, <2 x double> %3356
  %3376 = fcmp oeq <2 x double> %3362, splat (double 1.000000e+00)
  %3377 = getelementptr inbounds nuw i8, ptr %3317, i64 816
  %3378 = load <2 x double>, ptr %3377, align 16, !tbaa !26
  %3379 = getelementptr inbounds nuw i8, ptr %3317, i64 400
  %3380 = load <2 x double>, ptr %3379, align 16, !tbaa !26
  %3381 = fmul <2 x double> %3380, splat (double 1.000100e+00)
  %3382 = fcmp ogt <2 x double> %3378, %3381
  %3383 = and <2 x i1> %3376, %3382
  %3384 = and <2 x i1> %3311, %3383
  %3385 = getelementptr inbounds nuw i8, ptr %3317, i64 1008
  %3386 = load <2 x double>, ptr %3385, align 16, !tbaa !26
  %3387 = fsub <2 x double> %3380, %3386
  %3388 = fsub <2 x double> %3378, %3386
  %3389 = fdiv <2 x double> %3387, %3388
  %3390 = select <2 x i1> %3383, <2 x i1> %3311, <2 x i1> %3369
  %3391 = select <2 x i1> %3390, <2 x i64> splat (i64 -1), <2 x i64> %3352
  %3392 = fcmp uge <2 x double> %3375, %3389
  %3393 = select <2 x i1> %3384, <2 x i1> %3392, <2 x i1> zeroinitializer
  %3394 = select <2 x i1> %3393, <2 x double> %3389, <2 x double> %3375
  %3395 = add nuw nsw i64 %3313, 1
  %3396 = icmp eq i64 %3395, %3260
  br i1 %3396, label %3397, label %3312, !llvm.loop !113

3397:                                             ; preds = %3312
  %3398 = icmp eq <2 x i64> %3342, zeroinitializer
  br label %3399

3399:                                             ; preds = %3397, %3259
  %3400 = phi <2 x double> [ splat (double 1.000000e+00), %3259 ], [ %3394, %3397 ]
  %3401 = phi <2 x i1> [ splat (i1 true), %3259 ], [ %3398, %3397 ]
  %3402 = phi <2 x i64> [ zeroinitializer, %3259 ], [ %3391, %3397 ]
  %3403 = and <2 x i64> %3402, %3305
  %3404 = fcmp ogt <2 x double> %3292, %3279
  %3405 = select <2 x i1> %3404, <2 x double> %3292, <2 x double> %3279
  %3406 = select <2 x i1> %3401, <2 x double> %3405, <2 x double> zeroinitializer
  %3407 = icmp eq <2 x i64> %3403, zeroinitializer
  %3408 = select <2 x i1> %3407, <2 x double> %3292, <2 x double> %3406
  %3409 = fcmp ogt <2 x double> %3400, splat (double 5.000000e-02)
  %3410 = select <2 x i1> %3409, <2 x double> %3400, <2 x double> splat (double 5.000000e-02)
  %3411 = fcmp olt <2 x double> %3410, splat (double 0x3FEE666666666666)
  %3412 = select <2 x i1> %3411, <2 x double> %3410, <2 x double> splat (double 0x3FEE666666666666)
  %3413 = fmul <2 x double> %3279, %3412
  %3414 = fcmp ogt <2 x double> %3413, splat (double 0x3EB0C6F7A0B5ED8D)
  %3415 = select <2 x i1> %3414, <2 x double> %3413, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3416 = select <2 x i1> %3407, <2 x double> %3301, <2 x double> %3415
  %3417 = fadd <2 x double> %3304, splat (double 1.000000e+00)
  %3418 = select <2 x i1> %3407, <2 x double> %3304, <2 x double> %3417
  %3419 = xor <2 x i64> %3403, %3305
  %3420 = load <2 x double>, ptr %217, align 16, !tbaa !26
  %3421 = fmul <2 x double> %3420, splat (double 5.000000e-01)
  %3422 = load <2 x double>, ptr %205, align 16, !tbaa !26
  %3423 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %3424 = fneg <2 x double> %3421
  %3425 = icmp eq <2 x i64> %3423, zeroinitializer
  %3426 = select <2 x i1> %3425, <2 x double> %3424, <2 x double> %3421
  %3427 = fadd <2 x double> %3422, %3426
  %3428 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %3429 = fsub <2 x double> %3428, %3427
  %3430 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %3431 = fsub <2 x double> %3430, %3427
  %3432 = fneg <2 x double> %3429
  %3433 = select <2 x i1> %3425, <2 x double> %3432, <2 x double> %3429
  %3434 = fneg <2 x double> %3431
  %3435 = select <2 x i1> %3425, <2 x double> %3434, <2 x double> %3431
  %3436 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %3437 = fcmp oeq <2 x double> %3436, zeroinitializer
  %3438 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %3439 = fcmp oeq <2 x double> %3438, zeroinitializer
  %3440 = and <2 x i1> %3437, %3439
  %3441 = fcmp olt <2 x double> %3433, splat (double -1.000000e-03)
  %3442 = and <2 x i1> %3440, %3441
  %3443 = fcmp ogt <2 x double> %3435, splat (double 4.000000e-03)
  %3444 = and <2 x i1> %3443, %3442
  %3445 = and <2 x i1> %3280, %3444
  %3446 = fsub <2 x double> %3433, %3435
  %3447 = fdiv <2 x double> %3433, %3446
  %3448 = select <2 x i1> %3445, <2 x i64> %3419, <2 x i64> zeroinitializer
  %3449 = fcmp ogt <2 x double> %3408, %3279
  %3450 = icmp eq <2 x i64> %3448, zeroinitializer
  %3451 = select <2 x i1> %3450, <2 x i1> splat (i1 true), <2 x i1> %3449
  %3452 = select <2 x i1> %3451, <2 x double> %3408, <2 x double> %3279
  store <2 x double> %3452, ptr %156, align 16, !tbaa !26
  %3453 = fcmp ogt <2 x double> %3447, splat (double 5.000000e-02)
  %3454 = select <2 x i1> %3453, <2 x double> %3447, <2 x double> splat (double 5.000000e-02)
  %3455 = fcmp olt <2 x double> %3454, splat (double 0x3FEE666666666666)
  %3456 = select <2 x i1> %3455, <2 x double> %3454, <2 x double> splat (double 0x3FEE666666666666)
  %3457 = fmul <2 x double> %3279, %3456
  %3458 = fcmp ogt <2 x double> %3457, splat (double 0x3EB0C6F7A0B5ED8D)
  %3459 = select <2 x i1> %3458, <2 x double> %3457, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3460 = select <2 x i1> %3450, <2 x double> %3416, <2 x double> %3459
  store <2 x double> %3460, ptr %152, align 16, !tbaa !26
  %3461 = fadd <2 x double> %3418, splat (double 1.000000e+00)
  %3462 = select <2 x i1> %3450, <2 x double> %3418, <2 x double> %3461
  store <2 x double> %3462, ptr %137, align 16, !tbaa !26
  %3463 = xor <2 x i64> %3448, %3419
  %3464 = load <2 x double>, ptr %218, align 16, !tbaa !26
  %3465 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %3466 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %3467 = fsub <2 x double> %3465, %3466
  %3468 = load <2 x double>, ptr %219, align 16, !tbaa !26
  %3469 = fcmp une <2 x double> %3468, splat (double 1.000000e+00)
  %3470 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %3471 = fsub <2 x double> %3428, %3470
  %3472 = select <2 x i1> %3469, <2 x double> splat (double -1.000000e+00), <2 x double> %3471
  %3473 = fcmp une <2 x double> %3468, splat (double 2.000000e+00)
  %3474 = fsub <2 x double> %3464, %3470
  %3475 = select <2 x i1> %3473, <2 x double> %3472, <2 x double> %3474
  %3476 = fcmp une <2 x double> %3468, splat (double 3.000000e+00)
  %3477 = fsub <2 x double> %3467, %3470
  %3478 = select <2 x i1> %3476, <2 x double> %3475, <2 x double> %3477
  %3479 = fcmp une <2 x double> %3468, splat (double 4.000000e+00)
  %3480 = fsub <2 x double> %3470, %3467
  %3481 = select <2 x i1> %3479, <2 x double> %3478, <2 x double> %3480
  br i1 %3306, label %3482, label %3530

3482:                                             ; preds = %3399
  %3483 = load ptr, ptr %142, align 8, !tbaa !28
  %3484 = and i64 %3260, 3
  %3485 = icmp ult i64 %3260, 4
  br i1 %3485, label %3514, label %3486

3486:                                             ; preds = %3482
  %3487 = and i64 %3260, 9223372036854775804
  br label %3488

3488:                                             ; preds = %3488, %3486
  %3489 = phi i64 [ 0, %3486 ], [ %3511, %3488 ]
  %3490 = phi <2 x double> [ splat (double 1.000000e+09), %3486 ], [ %3510, %3488 ]
  %3491 = phi i64 [ 0, %3486 ], [ %3512, %3488 ]
  %3492 = getelementptr inbounds nuw %struct.Piece, ptr %3483, i64 %3489, i32 35
  %3493 = load <2 x double>, ptr %3492, align 16, !tbaa !26
  %3494 = fcmp olt <2 x double> %3490, %3493
  %3495 = select <2 x i1> %3494, <2 x double> %3490, <2 x double> %3493
  %3496 = or disjoint i64 %3489, 1
  %3497 = getelementptr inbounds nuw %struct.Piece, ptr %3483, i64 %3496, i32 35
  %3498 = load <2 x double>, ptr %3497, align 16, !tbaa !26
  %3499 = fcmp olt <2 x double> %3495, %3498
  %3500 = select <2 x i1> %3499, <2 x double> %3495, <2 x double> %3498
  %3501 = or disjoint i64 %3489, 2
  %3502 = getelementptr inbounds nuw %struct.Piece, ptr %3483, i64 %3501, i32 35
  %3503 = load <2 x double>, ptr %3502, align 16, !tbaa !26
  %3504 = fcmp olt <2 x double> %3500, %3503
  %3505 = select <2 x i1> %3504, <2 x double> %3500, <2 x double> %3503
  %3506 = or disjoint i64 %3489, 3
  %3507 = getelementptr inbounds nuw %struct.Piece, ptr %3483, i64 %3506, i32 35
  %3508 = load <2 x double>, ptr %3507, align 16, !tbaa !26
  %3509 = fcmp olt <2 x double> %3505, %3508
  %3510 = select <2 x i1> %3509, <2 x double> %3505, <2 x double> %3508
  %3511 = add nuw nsw i64 %3489, 4
  %3512 = add i64 %3491, 4
  %3513 = icmp eq i64 %3512, %3487
  br i1 %3513, label %3514, label %3488, !llvm.loop !114

3514:                                             ; preds = %3488, %3482
  %3515 = phi <2 x double> [ poison, %3482 ], [ %3510, %3488 ]
  %3516 = phi i64 [ 0, %3482 ], [ %3511, %3488 ]
  %3517 = phi <2 x double> [ splat (double 1.000000e+09), %3482 ], [ %3510, %3488 ]
  %3518 = icmp eq i64 %3484, 0
  br i1 %3518, label %3530, label %3519

3519:                                             ; preds = %3514, %3519
  %3520 = phi i64 [ %3527, %3519 ], [ %3516, %3514 ]
  %3521 = phi <2 x double> [ %3526, %3519 ], [ %3517, %3514 ]
  %3522 = phi i64 [ %3528, %3519 ], [ 0, %3514 ]
  %3523 = getelementptr inbounds nuw %struct.Piece, ptr %3483, i64 %3520, i32 35
  %3524 = load <2 x double>, ptr %3523, align 16, !tbaa !26
  %3525 = fcmp olt <2 x double> %3521, %3524
  %3526 = select <2 x i1> %3525, <2 x double> %3521, <2 x double> %3524
  %3527 = add nuw nsw i64 %3520, 1
  %3528 = add i64 %3522, 1
  %3529 = icmp eq i64 %3528, %3484
  br i1 %3529, label %3530, label %3519, !llvm.loop !115

3530:                                             ; preds = %3514, %3519, %3399
  %3531 = phi <2 x double> [ splat (double 1.000000e+09), %3399 ], [ %3515, %3514 ], [ %3526, %3519 ]
  %3532 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %3533 = fsub <2 x double> %3532, %3466
  %3534 = fsub <2 x double> %3430, %3470
  %3535 = select <2 x i1> %3469, <2 x double> splat (double -1.000000e+00), <2 x double> %3534
  %3536 = fsub <2 x double> %3531, %3470
  %3537 = select <2 x i1> %3473, <2 x double> %3535, <2 x double> %3536
  %3538 = fsub <2 x double> %3533, %3470
  %3539 = select <2 x i1> %3476, <2 x double> %3537, <2 x double> %3538
  %3540 = fsub <2 x double> %3470, %3533
  %3541 = select <2 x i1> %3479, <2 x double> %3539, <2 x double> %3540
  %3542 = fcmp une <2 x double> %3468, zeroinitializer
  %3543 = fcmp oge <2 x double> %3279, splat (double 5.000000e-02)
  %3544 = and <2 x i1> %3543, %3542
  %3545 = fcmp olt <2 x double> %3481, zeroinitializer
  %3546 = and <2 x i1> %3544, %3545
  %3547 = fsub <2 x double> %3541, %3481
  %3548 = fmul <2 x double> %3547, splat (double 2.000000e-02)
  %3549 = fcmp ogt <2 x double> %3541, %3548
  %3550 = and <2 x i1> %3546, %3549
  %3551 = fsub <2 x double> %3481, %3541
  %3552 = fdiv <2 x double> %3481, %3551
  %3553 = fcmp olt <2 x double> %3552, splat (double 0x3FEE666666666666)
  %3554 = and <2 x i1> %3553, %3550
  %3555 = select <2 x i1> %3554, <2 x i64> %3463, <2 x i64> zeroinitializer
  %3556 = fcmp ogt <2 x double> %3452, %3279
  %3557 = icmp eq <2 x i64> %3555, zeroinitializer
  %3558 = select <2 x i1> %3557, <2 x i1> splat (i1 true), <2 x i1> %3556
  %3559 = select <2 x i1> %3558, <2 x double> %3452, <2 x double> %3279
  store <2 x double> %3559, ptr %156, align 16, !tbaa !26
  %3560 = fcmp ogt <2 x double> %3552, splat (double 5.000000e-02)
  %3561 = select <2 x i1> %3560, <2 x double> %3552, <2 x double> splat (double 5.000000e-02)
  %3562 = fcmp olt <2 x double> %3561, splat (double 0x3FEE666666666666)
  %3563 = select <2 x i1> %3562, <2 x double> %3561, <2 x double> splat (double 0x3FEE666666666666)
  %3564 = fmul <2 x double> %3279, %3563
  %3565 = fcmp ogt <2 x double> %3564, splat (double 0x3EB0C6F7A0B5ED8D)
  %3566 = select <2 x i1> %3565, <2 x double> %3564, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3567 = select <2 x i1> %3557, <2 x double> %3460, <2 x double> %3566
  store <2 x double> %3567, ptr %152, align 16, !tbaa !26
  %3568 = fadd <2 x double> %3462, splat (double 1.000000e+00)
  %3569 = select <2 x i1> %3557, <2 x double> %3462, <2 x double> %3568
  store <2 x double> %3569, ptr %137, align 16, !tbaa !26
  %3570 = xor <2 x i64> %3555, %3463
  %3571 = or <2 x i64> %3570, %3266
  %3572 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3571)
  %3573 = icmp eq i64 %3572, 0
  br i1 %3573, label %524, label %3630

3574:                                             ; preds = %3257, %3622
  %3575 = phi i64 [ 0, %3257 ], [ %3627, %3622 ]
  %3576 = load ptr, ptr %142, align 8, !tbaa !28
  %3577 = getelementptr inbounds nuw %struct.Piece, ptr %3576, i64 %3575
  %3578 = getelementptr inbounds nuw i8, ptr %3577, i64 1896
  %3579 = load ptr, ptr %3578, align 8, !tbaa !57
  %3580 = load <2 x double>, ptr %3579, align 16, !tbaa !26
  %3581 = getelementptr inbounds nuw i8, ptr %3577, i64 336
  %3582 = load <2 x double>, ptr %3581, align 16, !tbaa !26
  %3583 = getelementptr inbounds nuw i8, ptr %3579, i64 16
  %3584 = load <2 x double>, ptr %3583, align 16, !tbaa !26
  %3585 = fsub <2 x double> %3584, %3580
  %3586 = fneg <2 x double> %3582
  %3587 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3586, <2 x double> %3585, <2 x double> %3580)
  %3588 = getelementptr inbounds nuw i8, ptr %3577, i64 1888
  %3589 = load i64, ptr %3588, align 16, !tbaa !31
  %3590 = icmp eq i64 %3589, 0
  br i1 %3590, label %3622, label %3591

3591:                                             ; preds = %3574
  %3592 = getelementptr <2 x double>, ptr %3579, i64 %3589
  %3593 = getelementptr i8, ptr %3592, i64 -16
  %3594 = load <2 x double>, ptr %3593, align 16, !tbaa !26
  %3595 = load <2 x double>, ptr %3592, align 16, !tbaa !26
  %3596 = getelementptr inbounds nuw i8, ptr %3577, i64 720
  %3597 = load <2 x double>, ptr %3596, align 16, !tbaa !26
  %3598 = getelementptr inbounds nuw i8, ptr %3577, i64 736
  %3599 = load <2 x double>, ptr %3598, align 16, !tbaa !26
  %3600 = getelementptr inbounds nuw i8, ptr %3577, i64 16
  %3601 = load <2 x double>, ptr %3600, align 16, !tbaa !26
  %3602 = fsub <2 x double> %3599, %3601
  %3603 = fmul <2 x double> %3597, %3602
  %3604 = getelementptr inbounds nuw i8, ptr %3577, i64 144
  %3605 = load <2 x double>, ptr %3604, align 16, !tbaa !26
  %3606 = getelementptr inbounds nuw i8, ptr %3577, i64 704
  %3607 = load <2 x double>, ptr %3606, align 16, !tbaa !26
  %3608 = fdiv <2 x double> %3605, %3607
  %3609 = getelementptr inbounds nuw i8, ptr %3577, i64 48
  %3610 = load <2 x double>, ptr %3609, align 16, !tbaa !26
  %3611 = getelementptr inbounds nuw i8, ptr %3577, i64 64
  %3612 = load <2 x double>, ptr %3611, align 16, !tbaa !26
  %3613 = getelementptr inbounds nuw i8, ptr %3577, i64 80
  %3614 = load <2 x double>, ptr %3613, align 16, !tbaa !26
  %3615 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3595, <2 x double> %3614, <2 x double> %3612)
  %3616 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3595, <2 x double> %3615, <2 x double> %3610)
  %3617 = fdiv <2 x double> %3616, %3603
  %3618 = fmul <2 x double> %3595, %3617
  %3619 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3608, <2 x double> %3594, <2 x double> %3618)
  %3620 = fadd <2 x double> %3608, %3617
  %3621 = fdiv <2 x double> %3619, %3620
  br label %3622

3622:                                             ; preds = %3574, %3591
  %3623 = phi <2 x double> [ %3621, %3591 ], [ %3587, %3574 ]
  %3624 = getelementptr inbounds nuw i8, ptr %3577, i64 1808
  %3625 = load <2 x double>, ptr %3624, align 16, !tbaa !26
  %3626 = select <2 x i1> %3258, <2 x double> %3625, <2 x double> %3623
  store <2 x double> %3626, ptr %3624, align 16, !tbaa !26
  %3627 = add nuw nsw i64 %3575, 1
  %3628 = load i64, ptr %157, align 8, !tbaa !20
  %3629 = icmp slt i64 %3627, %3628
  br i1 %3629, label %3574, label %3259, !llvm.loop !117

3630:                                             ; preds = %3530
  %3631 = icmp eq <2 x i64> %3571, zeroinitializer
  %3632 = select <2 x i1> %3631, <2 x double> %3273, <2 x double> %3272
  store <2 x double> %3632, ptr %215, align 16, !tbaa !26
  %3633 = load <2 x double>, ptr %166, align 16, !tbaa !26
  %3634 = select <2 x i1> %3631, <2 x double> %3633, <2 x double> %3428
  store <2 x double> %3634, ptr %166, align 16, !tbaa !26
  %3635 = select <2 x i1> %3631, <2 x double> %3428, <2 x double> %3430
  store <2 x double> %3635, ptr %165, align 16, !tbaa !26
  %3636 = load <2 x double>, ptr %247, align 16, !tbaa !26
  %3637 = select <2 x i1> %3631, <2 x double> %3636, <2 x double> %3465
  store <2 x double> %3637, ptr %247, align 16, !tbaa !26
  %3638 = select <2 x i1> %3631, <2 x double> %3465, <2 x double> %3532
  store <2 x double> %3638, ptr %248, align 16, !tbaa !26
  %3639 = load <2 x double>, ptr %250, align 16, !tbaa !26
  %3640 = load <2 x double>, ptr %249, align 16, !tbaa !26
  %3641 = select <2 x i1> %3631, <2 x double> %3640, <2 x double> %3639
  store <2 x double> %3641, ptr %249, align 16, !tbaa !26
  %3642 = load <2 x double>, ptr %251, align 16, !tbaa !26
  %3643 = select <2 x i1> %3631, <2 x double> %3639, <2 x double> %3642
  store <2 x double> %3643, ptr %250, align 16, !tbaa !26
  %3644 = load <2 x double>, ptr %253, align 16, !tbaa !26
  %3645 = load <2 x double>, ptr %252, align 16, !tbaa !26
  %3646 = select <2 x i1> %3631, <2 x double> %3645, <2 x double> %3644
  store <2 x double> %3646, ptr %252, align 16, !tbaa !26
  %3647 = load <2 x double>, ptr %254, align 16, !tbaa !26
  %3648 = select <2 x i1> %3631, <2 x double> %3644, <2 x double> %3647
  store <2 x double> %3648, ptr %253, align 16, !tbaa !26
  %3649 = load <2 x double>, ptr %256, align 16, !tbaa !26
  %3650 = load <2 x double>, ptr %255, align 16, !tbaa !26
  %3651 = select <2 x i1> %3631, <2 x double> %3650, <2 x double> %3649
  store <2 x double> %3651, ptr %255, align 16, !tbaa !26
  %3652 = load <2 x double>, ptr %257, align 16, !tbaa !26
  %3653 = select <2 x i1> %3631, <2 x double> %3649, <2 x double> %3652
  store <2 x double> %3653, ptr %256, align 16, !tbaa !26
  %3654 = load <2 x double>, ptr %259, align 16, !tbaa !26
  %3655 = load <2 x double>, ptr %258, align 16, !tbaa !26
  %3656 = select <2 x i1> %3631, <2 x double> %3655, <2 x double> %3654
  store <2 x double> %3656, ptr %258, align 16, !tbaa !26
  %3657 = load <2 x double>, ptr %260, align 16, !tbaa !26
  %3658 = select <2 x i1> %3631, <2 x double> %3654, <2 x double> %3657
  store <2 x double> %3658, ptr %259, align 16, !tbaa !26
  %3659 = xor <2 x i64> %3571, splat (i64 -1)
  br i1 %3306, label %3660, label %4040

3660:                                             ; preds = %3630, %3996
  %3661 = phi i64 [ %4008, %3996 ], [ 0, %3630 ]
  %3662 = load ptr, ptr %142, align 8, !tbaa !28
  %3663 = getelementptr inbounds nuw %struct.Piece, ptr %3662, i64 %3661
  %3664 = getelementptr inbounds nuw i8, ptr %3663, i64 416
  %3665 = load <2 x double>, ptr %3664, align 16, !tbaa !26
  %3666 = fcmp ogt <2 x double> %3665, zeroinitializer
  %3667 = bitcast <2 x i1> %3666 to i2
  %3668 = icmp eq i2 %3667, 0
  %3669 = load i64, ptr %132, align 16, !tbaa !21
  br i1 %3668, label %3927, label %3670

3670:                                             ; preds = %3660
  %3671 = add i64 %3669, -1
  %3672 = getelementptr inbounds nuw i8, ptr %3663, i64 1104
  %3673 = load <2 x double>, ptr %3672, align 16, !tbaa !26
  %3674 = getelementptr inbounds nuw i8, ptr %3663, i64 912
  %3675 = load <2 x double>, ptr %3674, align 16, !tbaa !26
  %3676 = getelementptr inbounds nuw i8, ptr %3663, i64 1888
  %3677 = load i64, ptr %3676, align 16, !tbaa !31
  %3678 = icmp sgt i64 %3669, %3677
  br i1 %3678, label %3687, label %3679

3679:                                             ; preds = %3670
  %3680 = getelementptr inbounds nuw i8, ptr %3663, i64 1984
  %3681 = load ptr, ptr %3680, align 16, !tbaa !67
  %3682 = getelementptr inbounds <2 x double>, ptr %3681, i64 %3671
  %3683 = load <2 x double>, ptr %3682, align 16, !tbaa !26
  %3684 = getelementptr inbounds nuw i8, ptr %3663, i64 384
  %3685 = load <2 x double>, ptr %3684, align 16, !tbaa !26
  %3686 = fmul <2 x double> %3683, %3685
  br label %3696

3687:                                             ; preds = %3670
  %3688 = getelementptr inbounds nuw i8, ptr %3663, i64 384
  %3689 = load <2 x double>, ptr %3688, align 16, !tbaa !26
  %3690 = getelementptr inbounds nuw i8, ptr %3663, i64 1984
  %3691 = load ptr, ptr %3690, align 16, !tbaa !67
  %3692 = getelementptr inbounds <2 x double>, ptr %3691, i64 %3671
  %3693 = load <2 x double>, ptr %3692, align 16, !tbaa !26
  %3694 = fsub <2 x double> %3673, %3689
  %3695 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3693, <2 x double> %3694, <2 x double> %3689)
  br label %3696

3696:                                             ; preds = %3687, %3679
  %3697 = phi <2 x double> [ %3685, %3679 ], [ %3689, %3687 ]
  %3698 = phi <2 x double> [ %3686, %3679 ], [ %3695, %3687 ]
  %3699 = getelementptr inbounds nuw i8, ptr %3663, i64 752
  %3700 = load <2 x double>, ptr %3699, align 16, !tbaa !26
  %3701 = fcmp ole <2 x double> %3698, %3700
  %3702 = getelementptr inbounds nuw i8, ptr %3663, i64 1824
  %3703 = load <2 x double>, ptr %3702, align 16, !tbaa !26
  %3704 = fcmp oeq <2 x double> %3703, zeroinitializer
  %3705 = select <2 x i1> %3704, <2 x i1> %3701, <2 x i1> zeroinitializer
  %3706 = select <2 x i1> %3705, <2 x i64> %3571, <2 x i64> zeroinitializer
  %3707 = xor <2 x i64> %3706, %3571
  %3708 = fsub <2 x double> %3673, %3675
  %3709 = getelementptr inbounds nuw i8, ptr %3663, i64 384
  %3710 = fsub <2 x double> %3675, %3697
  %3711 = fdiv <2 x double> %3708, %3710
  %3712 = getelementptr inbounds nuw i8, ptr %3663, i64 1928
  %3713 = load ptr, ptr %3712, align 8, !tbaa !64
  %3714 = getelementptr inbounds <2 x double>, ptr %3713, i64 %3677
  %3715 = load <2 x double>, ptr %3714, align 16, !tbaa !26
  %3716 = getelementptr inbounds nuw i8, ptr %3663, i64 1936
  %3717 = load ptr, ptr %3716, align 16, !tbaa !47
  %3718 = getelementptr inbounds <2 x double>, ptr %3717, i64 %3677
  %3719 = load <2 x double>, ptr %3718, align 16, !tbaa !26
  %3720 = icmp eq <2 x i64> %3706, zeroinitializer
  %3721 = select <2 x i1> %3720, <2 x double> %3719, <2 x double> %3715
  store <2 x double> %3721, ptr %3718, align 16, !tbaa !26
  %3722 = load i64, ptr %3676, align 16, !tbaa !31
  %3723 = add nsw i64 %3722, 1
  %3724 = icmp slt i64 %3723, %3671
  br i1 %3724, label %3725, label %3729

3725:                                             ; preds = %3696
  %3726 = getelementptr inbounds nuw i8, ptr %3663, i64 2000
  br label %3771

3727:                                             ; preds = %3771
  %3728 = load i64, ptr %3676, align 16, !tbaa !31
  br label %3729

3729:                                             ; preds = %3727, %3696
  %3730 = phi i64 [ %3722, %3696 ], [ %3728, %3727 ]
  %3731 = phi <2 x double> [ %3715, %3696 ], [ %3776, %3727 ]
  %3732 = icmp sgt i64 %3669, %3730
  br i1 %3732, label %3740, label %3733

3733:                                             ; preds = %3729
  %3734 = getelementptr inbounds nuw i8, ptr %3663, i64 1984
  %3735 = load ptr, ptr %3734, align 16, !tbaa !67
  %3736 = getelementptr inbounds <2 x double>, ptr %3735, i64 %3671
  %3737 = load <2 x double>, ptr %3736, align 16, !tbaa !26
  %3738 = load <2 x double>, ptr %3709, align 16, !tbaa !26
  %3739 = fmul <2 x double> %3737, %3738
  br label %3748

3740:                                             ; preds = %3729
  %3741 = load <2 x double>, ptr %3709, align 16, !tbaa !26
  %3742 = getelementptr inbounds nuw i8, ptr %3663, i64 1984
  %3743 = load ptr, ptr %3742, align 16, !tbaa !67
  %3744 = getelementptr inbounds <2 x double>, ptr %3743, i64 %3671
  %3745 = load <2 x double>, ptr %3744, align 16, !tbaa !26
  %3746 = fsub <2 x double> %3675, %3741
  %3747 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3745, <2 x double> %3746, <2 x double> %3741)
  br label %3748

3748:                                             ; preds = %3740, %3733
  %3749 = phi <2 x double> [ %3739, %3733 ], [ %3747, %3740 ]
  %3750 = load ptr, ptr %3712, align 8, !tbaa !64
  %3751 = getelementptr inbounds <2 x double>, ptr %3750, i64 %3671
  %3752 = load <2 x double>, ptr %3751, align 16, !tbaa !26
  %3753 = load ptr, ptr %3716, align 16, !tbaa !47
  %3754 = getelementptr inbounds <2 x double>, ptr %3753, i64 %3671
  %3755 = fsub <2 x double> %3731, %3752
  %3756 = fsub <2 x double> %3698, %3749
  %3757 = load <2 x double>, ptr %3699, align 16, !tbaa !26
  %3758 = fsub <2 x double> %3757, %3749
  %3759 = fdiv <2 x double> %3756, %3758
  %3760 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3755, <2 x double> %3759, <2 x double> %3752)
  %3761 = load <2 x double>, ptr %3754, align 16, !tbaa !26
  %3762 = select <2 x i1> %3720, <2 x double> %3761, <2 x double> %3760
  store <2 x double> %3762, ptr %3754, align 16, !tbaa !26
  %3763 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3707)
  %3764 = icmp eq i64 %3763, 0
  br i1 %3764, label %3925, label %3765

3765:                                             ; preds = %3748
  %3766 = getelementptr inbounds nuw i8, ptr %3663, i64 1984
  %3767 = getelementptr inbounds nuw i8, ptr %3663, i64 784
  %3768 = getelementptr inbounds nuw i8, ptr %3663, i64 208
  %3769 = extractelement <2 x i64> %3707, i64 0
  %3770 = extractelement <2 x i64> %3707, i64 1
  br label %3789

3771:                                             ; preds = %3725, %3771
  %3772 = phi i64 [ %3723, %3725 ], [ %3787, %3771 ]
  %3773 = phi <2 x double> [ %3715, %3725 ], [ %3776, %3771 ]
  %3774 = load ptr, ptr %3712, align 8, !tbaa !64
  %3775 = getelementptr inbounds <2 x double>, ptr %3774, i64 %3772
  %3776 = load <2 x double>, ptr %3775, align 16, !tbaa !26
  %3777 = load ptr, ptr %3716, align 16, !tbaa !47
  %3778 = getelementptr inbounds <2 x double>, ptr %3777, i64 %3772
  %3779 = fsub <2 x double> %3773, %3776
  %3780 = load ptr, ptr %3726, align 16, !tbaa !118
  %3781 = getelementptr inbounds <2 x double>, ptr %3780, i64 %3772
  %3782 = load <2 x double>, ptr %3781, align 16, !tbaa !26
  %3783 = fmul <2 x double> %3711, %3782
  %3784 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3779, <2 x double> %3783, <2 x double> %3776)
  %3785 = load <2 x double>, ptr %3778, align 16, !tbaa !26
  %3786 = select <2 x i1> %3720, <2 x double> %3785, <2 x double> %3784
  store <2 x double> %3786, ptr %3778, align 16, !tbaa !26
  %3787 = add nsw i64 %3772, 1
  %3788 = icmp eq i64 %3787, %3671
  br i1 %3788, label %3727, label %3771, !llvm.loop !119

3789:                                             ; preds = %3765, %3924
  %3790 = phi i1 [ true, %3765 ], [ false, %3924 ]
  %3791 = phi i64 [ %3769, %3765 ], [ %3770, %3924 ]
  %3792 = phi i64 [ 0, %3765 ], [ 1, %3924 ]
  %3793 = icmp eq i64 %3791, 0
  br i1 %3793, label %3924, label %3794

3794:                                             ; preds = %3789
  %3795 = load i64, ptr %132, align 16, !tbaa !21
  %3796 = load i64, ptr %3676, align 16, !tbaa !31
  %3797 = getelementptr inbounds nuw double, ptr %3709, i64 %3792
  %3798 = load double, ptr %3797, align 8, !tbaa !42
  %3799 = getelementptr inbounds nuw double, ptr %3699, i64 %3792
  %3800 = load double, ptr %3799, align 8, !tbaa !42
  %3801 = add nsw i64 %3795, -1
  %3802 = icmp sgt i64 %3795, %3796
  br i1 %3802, label %3803, label %3924

3803:                                             ; preds = %3794
  %3804 = getelementptr inbounds nuw double, ptr %3674, i64 %3792
  %3805 = load double, ptr %3804, align 8, !tbaa !42
  %3806 = getelementptr inbounds nuw double, ptr %3672, i64 %3792
  %3807 = load double, ptr %3806, align 8, !tbaa !42
  %3808 = load ptr, ptr %3766, align 16
  %3809 = getelementptr i8, ptr %3808, i64 16
  %3810 = getelementptr double, ptr %3809, i64 %3792
  %3811 = fsub double %3805, %3798
  %3812 = getelementptr double, ptr %3808, i64 %3792
  %3813 = fsub double %3807, %3798
  %3814 = load ptr, ptr %3712, align 8, !tbaa !64
  %3815 = getelementptr double, ptr %3814, i64 %3792
  %3816 = load ptr, ptr %3716, align 16, !tbaa !47
  %3817 = getelementptr double, ptr %3816, i64 %3792
  %3818 = getelementptr <2 x double>, ptr %3812, i64 %3801
  br label %3846

3819:                                             ; preds = %3892
  %3820 = getelementptr inbounds nuw double, ptr %3702, i64 %3792
  %3821 = load double, ptr %3820, align 8, !tbaa !42
  %3822 = fcmp ogt double %3821, 0.000000e+00
  %3823 = fcmp ogt double %3903, 0.000000e+00
  %3824 = select i1 %3822, i1 %3823, i1 false
  br i1 %3824, label %3825, label %3924

3825:                                             ; preds = %3819
  %3826 = getelementptr inbounds nuw double, ptr %3767, i64 %3792
  %3827 = getelementptr inbounds nuw double, ptr %3768, i64 %3792
  %3828 = sub i64 %3795, %3796
  %3829 = add i64 %3796, 1
  %3830 = and i64 %3828, 1
  %3831 = icmp eq i64 %3830, 0
  br i1 %3831, label %3841, label %3832

3832:                                             ; preds = %3825
  %3833 = load double, ptr %3826, align 8, !tbaa !42
  %3834 = load double, ptr %3827, align 8, !tbaa !42
  %3835 = fmul double %3903, %3834
  %3836 = fdiv double %3833, %3835
  %3837 = getelementptr <2 x double>, ptr %3817, i64 %3796
  %3838 = load double, ptr %3837, align 8, !tbaa !42
  %3839 = fmul double %3838, %3836
  store double %3839, ptr %3837, align 8, !tbaa !42
  %3840 = add nsw i64 %3796, 1
  br label %3841

3841:                                             ; preds = %3832, %3825
  %3842 = phi i64 [ %3796, %3825 ], [ %3840, %3832 ]
  %3843 = icmp eq i64 %3795, %3829
  br i1 %3843, label %3924, label %3844

3844:                                             ; preds = %3841
  %3845 = getelementptr i8, ptr %3817, i64 16
  br label %3906

3846:                                             ; preds = %3892, %3803
  %3847 = phi double [ 0.000000e+00, %3803 ], [ %3903, %3892 ]
  %3848 = phi i64 [ %3801, %3803 ], [ %3904, %3892 ]
  %3849 = icmp eq i64 %3848, %3801
  br i1 %3849, label %3850, label %3853

3850:                                             ; preds = %3846
  %3851 = load double, ptr %3818, align 8, !tbaa !42
  %3852 = tail call noundef double @llvm.fmuladd.f64(double %3851, double %3811, double %3798)
  br label %3864

3853:                                             ; preds = %3846
  %3854 = getelementptr <2 x double>, ptr %3810, i64 %3848
  %3855 = load double, ptr %3854, align 8, !tbaa !42
  %3856 = tail call noundef double @llvm.fmuladd.f64(double %3855, double %3811, double %3798)
  %3857 = getelementptr <2 x double>, ptr %3812, i64 %3848
  %3858 = load double, ptr %3857, align 8, !tbaa !42
  %3859 = tail call noundef double @llvm.fmuladd.f64(double %3858, double %3811, double %3798)
  %3860 = tail call noundef double @llvm.fmuladd.f64(double %3855, double %3813, double %3798)
  %3861 = fcmp ult double %3860, %3856
  br i1 %3861, label %3862, label %3864

3862:                                             ; preds = %3853
  %3863 = add nsw i64 %3848, 1
  br label %3864

3864:                                             ; preds = %3862, %3853, %3850
  %3865 = phi double [ %3859, %3862 ], [ %3859, %3853 ], [ %3852, %3850 ]
  %3866 = phi double [ %3856, %3862 ], [ %3856, %3853 ], [ %3800, %3850 ]
  %3867 = phi i64 [ %3863, %3862 ], [ %3848, %3853 ], [ %3801, %3850 ]
  %3868 = icmp sgt i64 %3867, %3796
  br i1 %3868, label %3869, label %3892

3869:                                             ; preds = %3864
  %3870 = load ptr, ptr %3712, align 8
  %3871 = getelementptr double, ptr %3870, i64 %3792
  br label %3872

3872:                                             ; preds = %3887, %3869
  %3873 = phi i64 [ %3867, %3869 ], [ %3890, %3887 ]
  %3874 = phi double [ 0.000000e+00, %3869 ], [ %3889, %3887 ]
  %3875 = phi double [ %3866, %3869 ], [ %3888, %3887 ]
  %3876 = getelementptr <2 x double>, ptr %3812, i64 %3873
  %3877 = load double, ptr %3876, align 8, !tbaa !42
  %3878 = tail call noundef double @llvm.fmuladd.f64(double %3877, double %3813, double %3798)
  %3879 = fcmp ogt double %3878, %3865
  br i1 %3879, label %3880, label %3892

3880:                                             ; preds = %3872
  %3881 = fcmp ogt double %3875, %3878
  br i1 %3881, label %3882, label %3887

3882:                                             ; preds = %3880
  %3883 = getelementptr <2 x double>, ptr %3871, i64 %3873
  %3884 = load double, ptr %3883, align 8, !tbaa !42
  %3885 = fsub double %3875, %3878
  %3886 = tail call double @llvm.fmuladd.f64(double %3884, double %3885, double %3874)
  br label %3887

3887:                                             ; preds = %3882, %3880
  %3888 = phi double [ %3878, %3882 ], [ %3875, %3880 ]
  %3889 = phi double [ %3886, %3882 ], [ %3874, %3880 ]
  %3890 = add nsw i64 %3873, -1
  %3891 = icmp sgt i64 %3890, %3796
  br i1 %3891, label %3872, label %3892, !llvm.loop !120

3892:                                             ; preds = %3887, %3872, %3864
  %3893 = phi double [ %3866, %3864 ], [ %3875, %3872 ], [ %3888, %3887 ]
  %3894 = phi double [ 0.000000e+00, %3864 ], [ %3874, %3872 ], [ %3889, %3887 ]
  %3895 = phi i64 [ %3867, %3864 ], [ %3873, %3872 ], [ %3796, %3887 ]
  %3896 = getelementptr <2 x double>, ptr %3815, i64 %3895
  %3897 = load double, ptr %3896, align 8, !tbaa !42
  %3898 = fsub double %3893, %3865
  %3899 = tail call double @llvm.fmuladd.f64(double %3897, double %3898, double %3894)
  %3900 = fsub double %3866, %3865
  %3901 = fdiv double %3899, %3900
  %3902 = getelementptr <2 x double>, ptr %3817, i64 %3848
  store double %3901, ptr %3902, align 8, !tbaa !42
  %3903 = fadd double %3847, %3899
  %3904 = add nsw i64 %3848, -1
  %3905 = icmp sgt i64 %3848, %3796
  br i1 %3905, label %3846, label %3819, !llvm.loop !121

3906:                                             ; preds = %3906, %3844
  %3907 = phi i64 [ %3842, %3844 ], [ %3922, %3906 ]
  %3908 = load double, ptr %3826, align 8, !tbaa !42
  %3909 = load double, ptr %3827, align 8, !tbaa !42
  %3910 = fmul double %3903, %3909
  %3911 = fdiv double %3908, %3910
  %3912 = getelementptr <2 x double>, ptr %3817, i64 %3907
  %3913 = load double, ptr %3912, align 8, !tbaa !42
  %3914 = fmul double %3913, %3911
  store double %3914, ptr %3912, align 8, !tbaa !42
  %3915 = load double, ptr %3826, align 8, !tbaa !42
  %3916 = load double, ptr %3827, align 8, !tbaa !42
  %3917 = fmul double %3903, %3916
  %3918 = fdiv double %3915, %3917
  %3919 = getelementptr <2 x double>, ptr %3845, i64 %3907
  %3920 = load double, ptr %3919, align 8, !tbaa !42
  %3921 = fmul double %3920, %3918
  store double %3921, ptr %3919, align 8, !tbaa !42
  %3922 = add nsw i64 %3907, 2
  %3923 = icmp eq i64 %3922, %3795
  br i1 %3923, label %3924, label %3906, !llvm.loop !122

3924:                                             ; preds = %3841, %3906, %3819, %3794, %3789
  br i1 %3790, label %3789, label %3925, !llvm.loop !123

3925:                                             ; preds = %3924, %3748
  %3926 = load i64, ptr %132, align 16, !tbaa !21
  br label %3927

3927:                                             ; preds = %3660, %3925
  %3928 = phi i64 [ %3669, %3660 ], [ %3926, %3925 ]
  %3929 = getelementptr inbounds nuw i8, ptr %3663, i64 1896
  %3930 = load ptr, ptr %3929, align 8, !tbaa !57
  %3931 = getelementptr inbounds nuw i8, ptr %3663, i64 1904
  %3932 = load ptr, ptr %3931, align 16, !tbaa !46
  %3933 = getelementptr inbounds nuw i8, ptr %3663, i64 1912
  %3934 = load ptr, ptr %3933, align 8, !tbaa !56
  %3935 = icmp sgt i64 %3928, 0
  br i1 %3935, label %3946, label %3936

3936:                                             ; preds = %3946, %3927
  %3937 = load i64, ptr %133, align 8, !tbaa !22
  %3938 = icmp sgt i64 %3937, 0
  br i1 %3938, label %3939, label %3959

3939:                                             ; preds = %3936
  %3940 = getelementptr inbounds nuw i8, ptr %3663, i64 2080
  %3941 = getelementptr inbounds nuw i8, ptr %3663, i64 2072
  %3942 = getelementptr inbounds nuw i8, ptr %3663, i64 2064
  %3943 = getelementptr inbounds nuw i8, ptr %3663, i64 2032
  %3944 = getelementptr inbounds nuw i8, ptr %3663, i64 2024
  %3945 = getelementptr inbounds nuw i8, ptr %3663, i64 2016
  br label %3963

3946:                                             ; preds = %3927, %3946
  %3947 = phi i64 [ %3956, %3946 ], [ 0, %3927 ]
  %3948 = getelementptr inbounds nuw <2 x double>, ptr %3932, i64 %3947
  %3949 = load <2 x double>, ptr %3948, align 16, !tbaa !26
  %3950 = getelementptr inbounds nuw <2 x double>, ptr %3934, i64 %3947
  %3951 = load <2 x double>, ptr %3950, align 16, !tbaa !26
  %3952 = select <2 x i1> %3631, <2 x double> %3951, <2 x double> %3949
  store <2 x double> %3952, ptr %3950, align 16, !tbaa !26
  %3953 = getelementptr inbounds nuw <2 x double>, ptr %3930, i64 %3947
  %3954 = load <2 x double>, ptr %3953, align 16, !tbaa !26
  %3955 = select <2 x i1> %3631, <2 x double> %3949, <2 x double> %3954
  store <2 x double> %3955, ptr %3948, align 16, !tbaa !26
  %3956 = add nuw nsw i64 %3947, 1
  %3957 = load i64, ptr %132, align 16, !tbaa !21
  %3958 = icmp slt i64 %3956, %3957
  br i1 %3958, label %3946, label %3936, !llvm.loop !124

3959:                                             ; preds = %3963, %3936
  %3960 = getelementptr inbounds nuw i8, ptr %3663, i64 1120
  %3961 = getelementptr inbounds nuw i8, ptr %3663, i64 928
  %3962 = getelementptr inbounds nuw i8, ptr %3663, i64 736
  br label %4011

3963:                                             ; preds = %3939, %3963
  %3964 = phi i64 [ 0, %3939 ], [ %3993, %3963 ]
  %3965 = load ptr, ptr %3940, align 16, !tbaa !59
  %3966 = getelementptr inbounds nuw <2 x double>, ptr %3965, i64 %3964
  %3967 = load ptr, ptr %3941, align 8, !tbaa !49
  %3968 = getelementptr inbounds nuw <2 x double>, ptr %3967, i64 %3964
  %3969 = load <2 x double>, ptr %3968, align 16, !tbaa !26
  %3970 = load <2 x double>, ptr %3966, align 16, !tbaa !26
  %3971 = select <2 x i1> %3631, <2 x double> %3970, <2 x double> %3969
  store <2 x double> %3971, ptr %3966, align 16, !tbaa !26
  %3972 = load ptr, ptr %3941, align 8, !tbaa !49
  %3973 = getelementptr inbounds nuw <2 x double>, ptr %3972, i64 %3964
  %3974 = load ptr, ptr %3942, align 16, !tbaa !75
  %3975 = getelementptr inbounds nuw <2 x double>, ptr %3974, i64 %3964
  %3976 = load <2 x double>, ptr %3975, align 16, !tbaa !26
  %3977 = load <2 x double>, ptr %3973, align 16, !tbaa !26
  %3978 = select <2 x i1> %3631, <2 x double> %3977, <2 x double> %3976
  store <2 x double> %3978, ptr %3973, align 16, !tbaa !26
  %3979 = load ptr, ptr %3943, align 16, !tbaa !61
  %3980 = getelementptr inbounds nuw <2 x double>, ptr %3979, i64 %3964
  %3981 = load ptr, ptr %3944, align 8, !tbaa !50
  %3982 = getelementptr inbounds nuw <2 x double>, ptr %3981, i64 %3964
  %3983 = load <2 x double>, ptr %3982, align 16, !tbaa !26
  %3984 = load <2 x double>, ptr %3980, align 16, !tbaa !26
  %3985 = select <2 x i1> %3631, <2 x double> %3984, <2 x double> %3983
  store <2 x double> %3985, ptr %3980, align 16, !tbaa !26
  %3986 = load ptr, ptr %3944, align 8, !tbaa !50
  %3987 = getelementptr inbounds nuw <2 x double>, ptr %3986, i64 %3964
  %3988 = load ptr, ptr %3945, align 16, !tbaa !106
  %3989 = getelementptr inbounds nuw <2 x double>, ptr %3988, i64 %3964
  %3990 = load <2 x double>, ptr %3989, align 16, !tbaa !26
  %3991 = load <2 x double>, ptr %3987, align 16, !tbaa !26
  %3992 = select <2 x i1> %3631, <2 x double> %3991, <2 x double> %3990
  store <2 x double> %3992, ptr %3987, align 16, !tbaa !26
  %3993 = add nuw nsw i64 %3964, 1
  %3994 = load i64, ptr %133, align 8, !tbaa !22
  %3995 = icmp slt i64 %3993, %3994
  br i1 %3995, label %3963, label %3959, !llvm.loop !125

3996:                                             ; preds = %4011
  %3997 = getelementptr inbounds nuw i8, ptr %3663, i64 1856
  %3998 = getelementptr inbounds nuw i8, ptr %3663, i64 1424
  %3999 = load <2 x double>, ptr %3998, align 16, !tbaa !26
  %4000 = fcmp ogt <2 x double> %3999, zeroinitializer
  %4001 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %4002 = fcmp une <2 x double> %4001, splat (double 2.000000e+00)
  %4003 = and <2 x i1> %4000, %4002
  %4004 = select <2 x i1> %4003, <2 x i64> %3571, <2 x i64> zeroinitializer
  %4005 = load <2 x i64>, ptr %3997, align 16, !tbaa !26
  %4006 = and <2 x i64> %4005, %3659
  %4007 = or disjoint <2 x i64> %4004, %4006
  store <2 x i64> %4007, ptr %3997, align 16, !tbaa !26
  %4008 = add nuw nsw i64 %3661, 1
  %4009 = load i64, ptr %157, align 8, !tbaa !20
  %4010 = icmp slt i64 %4008, %4009
  br i1 %4010, label %3660, label %4032, !llvm.loop !126

4011:                                             ; preds = %4011, %3959
  %4012 = phi i64 [ 0, %3959 ], [ %4030, %4011 ]
  %4013 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3960, i64 0, i64 %4012
  %4014 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3961, i64 0, i64 %4012
  %4015 = load <2 x double>, ptr %4014, align 16, !tbaa !26
  %4016 = load <2 x double>, ptr %4013, align 16, !tbaa !26
  %4017 = select <2 x i1> %3631, <2 x double> %4016, <2 x double> %4015
  store <2 x double> %4017, ptr %4013, align 16, !tbaa !26
  %4018 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3962, i64 0, i64 %4012
  %4019 = load <2 x double>, ptr %4018, align 16, !tbaa !26
  %4020 = select <2 x i1> %3631, <2 x double> %4015, <2 x double> %4019
  store <2 x double> %4020, ptr %4014, align 16, !tbaa !26
  %4021 = or disjoint i64 %4012, 1
  %4022 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3960, i64 0, i64 %4021
  %4023 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3961, i64 0, i64 %4021
  %4024 = load <2 x double>, ptr %4023, align 16, !tbaa !26
  %4025 = load <2 x double>, ptr %4022, align 16, !tbaa !26
  %4026 = select <2 x i1> %3631, <2 x double> %4025, <2 x double> %4024
  store <2 x double> %4026, ptr %4022, align 16, !tbaa !26
  %4027 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3962, i64 0, i64 %4021
  %4028 = load <2 x double>, ptr %4027, align 16, !tbaa !26
  %4029 = select <2 x i1> %3631, <2 x double> %4024, <2 x double> %4028
  store <2 x double> %4029, ptr %4023, align 16, !tbaa !26
  %4030 = add nuw nsw i64 %4012, 2
  %4031 = icmp eq i64 %4030, 12
  br i1 %4031, label %3996, label %4011, !llvm.loop !127

4032:                                             ; preds = %3996
  %4033 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %4034 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %4035 = load <2 x double>, ptr %216, align 16, !tbaa !26
  %4036 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %4037 = load <2 x double>, ptr %214, align 16, !tbaa !26
  %4038 = fdiv <2 x double> %4035, %3275
  %4039 = icmp sgt i64 %4009, 0
  br label %4040

4040:                                             ; preds = %3630, %4032
  %4041 = phi <2 x double> [ %4038, %4032 ], [ %3285, %3630 ]
  %4042 = phi i1 [ %4039, %4032 ], [ false, %3630 ]
  %4043 = phi <2 x double> [ %4037, %4032 ], [ %3264, %3630 ]
  %4044 = phi <2 x double> [ %4036, %4032 ], [ %3559, %3630 ]
  %4045 = phi <2 x double> [ %4034, %4032 ], [ %3281, %3630 ]
  %4046 = phi <2 x double> [ %4033, %4032 ], [ %3279, %3630 ]
  %4047 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4048 = fadd <2 x double> %4047, %4046
  %4049 = select <2 x i1> %3631, <2 x double> %4047, <2 x double> %4048
  store <2 x double> %4049, ptr %149, align 16, !tbaa !26
  %4050 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %4051 = select <2 x i1> %3631, <2 x double> %4050, <2 x double> %4046
  store <2 x double> %4051, ptr %158, align 16, !tbaa !26
  %4052 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %4053 = fadd <2 x double> %4052, splat (double 1.000000e+00)
  %4054 = select <2 x i1> %3631, <2 x double> %4052, <2 x double> %4053
  store <2 x double> %4054, ptr %136, align 16, !tbaa !26
  %4055 = load <2 x double>, ptr %138, align 16, !tbaa !26
  %4056 = fcmp olt <2 x double> %4055, %4046
  %4057 = select <2 x i1> %3631, <2 x i1> splat (i1 true), <2 x i1> %4056
  %4058 = select <2 x i1> %4057, <2 x double> %4055, <2 x double> %4046
  store <2 x double> %4058, ptr %138, align 16, !tbaa !26
  %4059 = fcmp une <2 x double> %4045, zeroinitializer
  %4060 = fcmp ueq <2 x double> %3274, zeroinitializer
  %4061 = or <2 x i1> %4060, %4059
  %4062 = fcmp olt <2 x double> %4041, splat (double 1.800000e+00)
  %4063 = select <2 x i1> %4062, <2 x double> %4041, <2 x double> splat (double 1.800000e+00)
  %4064 = select <2 x i1> %4061, <2 x double> splat (double 1.800000e+00), <2 x double> %4063
  %4065 = fcmp ogt <2 x double> %4064, splat (double 2.000000e-01)
  %4066 = select <2 x i1> %4065, <2 x double> %4064, <2 x double> splat (double 2.000000e-01)
  %4067 = fmul <2 x double> %4046, %4066
  %4068 = fmul <2 x double> %4046, splat (double 4.000000e+00)
  %4069 = fcmp olt <2 x double> %4044, %4068
  %4070 = select <2 x i1> %4069, <2 x double> %4044, <2 x double> %4068
  %4071 = fcmp ogt <2 x double> %4067, %4070
  %4072 = select <2 x i1> %4071, <2 x double> %4067, <2 x double> %4070
  %4073 = select <2 x i1> %3631, <2 x double> %4044, <2 x double> zeroinitializer
  store <2 x double> %4073, ptr %156, align 16, !tbaa !26
  %4074 = select <2 x i1> %3631, <2 x double> %4043, <2 x double> zeroinitializer
  store <2 x double> %4074, ptr %214, align 16, !tbaa !26
  %4075 = load <2 x i64>, ptr %160, align 16, !tbaa !26
  %4076 = and <2 x i64> %4075, %3659
  store <2 x i64> %4076, ptr %160, align 16, !tbaa !26
  br i1 %4042, label %4077, label %4374

4077:                                             ; preds = %4040, %4367
  %4078 = phi i64 [ %4369, %4367 ], [ 0, %4040 ]
  %4079 = phi <2 x double> [ %4368, %4367 ], [ %4072, %4040 ]
  %4080 = load ptr, ptr %142, align 8, !tbaa !28
  %4081 = getelementptr inbounds nuw %struct.Piece, ptr %4080, i64 %4078
  %4082 = getelementptr inbounds nuw i8, ptr %4081, i64 944
  %4083 = load <2 x double>, ptr %4082, align 16, !tbaa !26
  %4084 = getelementptr inbounds nuw i8, ptr %4081, i64 368
  %4085 = load <2 x double>, ptr %4084, align 16, !tbaa !26
  %4086 = fmul <2 x double> %4085, splat (double 1.001000e+00)
  %4087 = fcmp ole <2 x double> %4083, %4086
  %4088 = getelementptr inbounds nuw i8, ptr %4081, i64 400
  %4089 = load <2 x double>, ptr %4088, align 16, !tbaa !26
  %4090 = getelementptr inbounds nuw i8, ptr %4081, i64 1008
  %4091 = load <2 x double>, ptr %4090, align 16, !tbaa !26
  %4092 = fsub <2 x double> %4089, %4091
  %4093 = fmul <2 x double> %4089, splat (double 1.000000e-04)
  %4094 = fcmp ole <2 x double> %4092, %4093
  %4095 = getelementptr inbounds nuw i8, ptr %4081, i64 1840
  %4096 = load <2 x i64>, ptr %4095, align 16, !tbaa !26
  %4097 = and <2 x i64> %4096, %3571
  %4098 = getelementptr inbounds nuw i8, ptr %4081, i64 1824
  %4099 = load <2 x double>, ptr %4098, align 16, !tbaa !26
  %4100 = fcmp oeq <2 x double> %4099, zeroinitializer
  %4101 = and <2 x i1> %4087, %4100
  %4102 = fcmp oeq <2 x double> %4099, splat (double 1.000000e+00)
  %4103 = and <2 x i1> %4094, %4102
  %4104 = or <2 x i1> %4101, %4103
  %4105 = select <2 x i1> %4104, <2 x i64> %4097, <2 x i64> zeroinitializer
  %4106 = fadd <2 x double> %4099, splat (double 1.000000e+00)
  %4107 = icmp eq <2 x i64> %4105, zeroinitializer
  %4108 = select <2 x i1> %4107, <2 x double> %4099, <2 x double> %4106
  store <2 x double> %4108, ptr %4098, align 16, !tbaa !26
  %4109 = getelementptr inbounds nuw i8, ptr %4081, i64 1856
  %4110 = load <2 x i64>, ptr %4109, align 16, !tbaa !26
  %4111 = or <2 x i64> %4105, %4110
  store <2 x i64> %4111, ptr %4109, align 16, !tbaa !26
  %4112 = getelementptr inbounds nuw i8, ptr %4081, i64 224
  %4113 = load <2 x double>, ptr %4112, align 16, !tbaa !26
  %4114 = getelementptr inbounds nuw i8, ptr %4081, i64 1408
  %4115 = load <2 x double>, ptr %4114, align 16, !tbaa !26
  %4116 = getelementptr inbounds nuw i8, ptr %4081, i64 1424
  %4117 = load <2 x double>, ptr %4116, align 16, !tbaa !26
  %4118 = fadd <2 x double> %4115, %4117
  %4119 = fcmp ogt <2 x double> %4118, zeroinitializer
  %4120 = xor <2 x i64> %4096, splat (i64 -1)
  %4121 = and <2 x i64> %3571, %4120
  %4122 = fcmp une <2 x double> %4113, zeroinitializer
  %4123 = or <2 x i1> %4122, %4119
  %4124 = getelementptr inbounds nuw i8, ptr %4081, i64 960
  %4125 = load <2 x double>, ptr %4124, align 16, !tbaa !26
  %4126 = fmul <2 x double> %4113, splat (double 1.000000e-04)
  %4127 = fcmp ogt <2 x double> %4126, splat (double 0x3E7AD7F29ABCAF48)
  %4128 = select <2 x i1> %4127, <2 x double> %4126, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4129 = fcmp ole <2 x double> %4125, %4128
  %4130 = select <2 x i1> %4129, <2 x i1> %4123, <2 x i1> zeroinitializer
  %4131 = select <2 x i1> %4130, <2 x i64> %4121, <2 x i64> zeroinitializer
  %4132 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4131)
  %4133 = icmp eq i64 %4132, 0
  br i1 %4133, label %4367, label %4134

4134:                                             ; preds = %4077
  %4135 = load i64, ptr %132, align 16, !tbaa !21
  %4136 = load i64, ptr %133, align 8, !tbaa !22
  %4137 = getelementptr inbounds nuw i8, ptr %4081, i64 1104
  %4138 = load <2 x double>, ptr %4137, align 16, !tbaa !26
  %4139 = getelementptr inbounds nuw i8, ptr %4081, i64 1392
  %4140 = load <2 x double>, ptr %4139, align 16, !tbaa !26
  %4141 = getelementptr inbounds nuw i8, ptr %4081, i64 208
  %4142 = load <2 x double>, ptr %4141, align 16, !tbaa !26
  %4143 = getelementptr inbounds nuw i8, ptr %4081, i64 1936
  %4144 = load ptr, ptr %4143, align 16, !tbaa !47
  %4145 = add nsw i64 %4135, -1
  %4146 = getelementptr inbounds <2 x double>, ptr %4144, i64 %4145
  %4147 = load <2 x double>, ptr %4146, align 16, !tbaa !26
  %4148 = fmul <2 x double> %4142, %4147
  %4149 = fneg <2 x double> %4125
  %4150 = fdiv <2 x double> %4149, %4148
  %4151 = fcmp ogt <2 x double> %4150, splat (double 0x3E7AD7F29ABCAF48)
  %4152 = select <2 x i1> %4151, <2 x double> %4150, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4153 = load <2 x double>, ptr %4081, align 16, !tbaa !26
  %4154 = fsub <2 x double> %4153, %4152
  %4155 = getelementptr inbounds nuw i8, ptr %4081, i64 640
  %4156 = load <2 x double>, ptr %4155, align 16, !tbaa !26
  %4157 = getelementptr inbounds nuw i8, ptr %4081, i64 656
  %4158 = load <2 x double>, ptr %4157, align 16, !tbaa !26
  %4159 = getelementptr inbounds nuw i8, ptr %4081, i64 672
  %4160 = load <2 x double>, ptr %4159, align 16, !tbaa !26
  %4161 = getelementptr inbounds nuw i8, ptr %4081, i64 688
  %4162 = load <2 x double>, ptr %4161, align 16, !tbaa !26
  %4163 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4154, <2 x double> %4162, <2 x double> %4160)
  %4164 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4154, <2 x double> %4163, <2 x double> %4158)
  %4165 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4154, <2 x double> %4164, <2 x double> %4156)
  %4166 = getelementptr inbounds nuw i8, ptr %4081, i64 1904
  %4167 = load ptr, ptr %4166, align 16, !tbaa !46
  %4168 = getelementptr inbounds <2 x double>, ptr %4167, i64 %4145
  %4169 = load <2 x double>, ptr %4168, align 16, !tbaa !26
  %4170 = getelementptr inbounds nuw i8, ptr %4081, i64 1888
  %4171 = load i64, ptr %4170, align 16, !tbaa !31
  %4172 = icmp sgt i64 %4135, %4171
  br i1 %4172, label %4176, label %4173

4173:                                             ; preds = %4134
  %4174 = getelementptr inbounds nuw i8, ptr %4081, i64 160
  %4175 = load <2 x double>, ptr %4174, align 16, !tbaa !26
  br label %4187

4176:                                             ; preds = %4134
  %4177 = getelementptr inbounds nuw i8, ptr %4081, i64 96
  %4178 = load <2 x double>, ptr %4177, align 16, !tbaa !26
  %4179 = getelementptr inbounds nuw i8, ptr %4081, i64 112
  %4180 = load <2 x double>, ptr %4179, align 16, !tbaa !26
  %4181 = getelementptr inbounds nuw i8, ptr %4081, i64 128
  %4182 = load <2 x double>, ptr %4181, align 16, !tbaa !26
  %4183 = fmul <2 x double> %4169, %4182
  %4184 = fmul <2 x double> %4183, splat (double 0x3FD5555555555555)
  %4185 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4180, <2 x double> splat (double 5.000000e-01), <2 x double> %4184)
  %4186 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4169, <2 x double> %4185, <2 x double> %4178)
  br label %4187

4187:                                             ; preds = %4176, %4173
  %4188 = phi <2 x double> [ %4175, %4173 ], [ %4186, %4176 ]
  %4189 = fmul <2 x double> %4169, %4188
  %4190 = icmp sgt i64 %4135, 0
  br i1 %4190, label %4191, label %4201

4191:                                             ; preds = %4187
  %4192 = getelementptr inbounds nuw i8, ptr %4081, i64 160
  %4193 = getelementptr inbounds nuw i8, ptr %4081, i64 96
  %4194 = getelementptr inbounds nuw i8, ptr %4081, i64 112
  %4195 = getelementptr inbounds nuw i8, ptr %4081, i64 128
  %4196 = getelementptr inbounds nuw i8, ptr %4081, i64 384
  %4197 = getelementptr inbounds nuw i8, ptr %4081, i64 1984
  %4198 = icmp eq <2 x i64> %4131, zeroinitializer
  br label %4213

4199:                                             ; preds = %4292
  %4200 = load <2 x double>, ptr %4081, align 16, !tbaa !26
  br label %4201

4201:                                             ; preds = %4199, %4187
  %4202 = phi <2 x double> [ %4200, %4199 ], [ %4153, %4187 ]
  %4203 = fsub <2 x double> %4202, %4154
  %4204 = sitofp i64 %4136 to double
  %4205 = insertelement <2 x double> poison, double %4204, i64 0
  %4206 = shufflevector <2 x double> %4205, <2 x double> poison, <2 x i32> zeroinitializer
  %4207 = fdiv <2 x double> %4203, %4206
  %4208 = icmp sgt i64 %4136, 0
  br i1 %4208, label %4209, label %4323

4209:                                             ; preds = %4201
  %4210 = getelementptr inbounds nuw i8, ptr %4081, i64 2072
  %4211 = icmp eq <2 x i64> %4131, zeroinitializer
  %4212 = getelementptr inbounds nuw i8, ptr %4081, i64 2024
  br label %4300

4213:                                             ; preds = %4191, %4292
  %4214 = phi <2 x double> [ %4169, %4191 ], [ %4262, %4292 ]
  %4215 = phi <2 x double> [ %4189, %4191 ], [ %4263, %4292 ]
  %4216 = phi <2 x double> [ %4165, %4191 ], [ %4261, %4292 ]
  %4217 = phi i64 [ %4145, %4191 ], [ %4298, %4292 ]
  %4218 = icmp eq i64 %4217, 0
  br i1 %4218, label %4260, label %4219

4219:                                             ; preds = %4213
  %4220 = load ptr, ptr %4166, align 16, !tbaa !46
  %4221 = getelementptr <2 x double>, ptr %4220, i64 %4217
  %4222 = getelementptr i8, ptr %4221, i64 -16
  %4223 = load <2 x double>, ptr %4222, align 16, !tbaa !26
  %4224 = load i64, ptr %4170, align 16, !tbaa !31
  %4225 = icmp sgt i64 %4217, %4224
  br i1 %4225, label %4228, label %4226

4226:                                             ; preds = %4219
  %4227 = load <2 x double>, ptr %4192, align 16, !tbaa !26
  br label %4236

4228:                                             ; preds = %4219
  %4229 = load <2 x double>, ptr %4193, align 16, !tbaa !26
  %4230 = load <2 x double>, ptr %4194, align 16, !tbaa !26
  %4231 = load <2 x double>, ptr %4195, align 16, !tbaa !26
  %4232 = fmul <2 x double> %4223, %4231
  %4233 = fmul <2 x double> %4232, splat (double 0x3FD5555555555555)
  %4234 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4230, <2 x double> splat (double 5.000000e-01), <2 x double> %4233)
  %4235 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4223, <2 x double> %4234, <2 x double> %4229)
  br label %4236

4236:                                             ; preds = %4226, %4228
  %4237 = phi <2 x double> [ %4235, %4228 ], [ %4227, %4226 ]
  %4238 = fmul <2 x double> %4223, %4237
  %4239 = icmp slt i64 %4217, %4224
  br i1 %4239, label %4240, label %4247

4240:                                             ; preds = %4236
  %4241 = load ptr, ptr %4197, align 16, !tbaa !67
  %4242 = getelementptr inbounds nuw <2 x double>, ptr %4241, i64 %4217
  %4243 = load <2 x double>, ptr %4242, align 16, !tbaa !26
  %4244 = load <2 x double>, ptr %4196, align 16, !tbaa !26
  %4245 = fmul <2 x double> %4243, %4244
  %4246 = fmul <2 x double> %4243, %4244
  br label %4256

4247:                                             ; preds = %4236
  %4248 = load <2 x double>, ptr %4196, align 16, !tbaa !26
  %4249 = load ptr, ptr %4197, align 16, !tbaa !67
  %4250 = getelementptr inbounds nuw <2 x double>, ptr %4249, i64 %4217
  %4251 = load <2 x double>, ptr %4250, align 16, !tbaa !26
  %4252 = fsub <2 x double> %4165, %4248
  %4253 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4251, <2 x double> %4252, <2 x double> %4248)
  %4254 = fsub <2 x double> %4138, %4248
  %4255 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4251, <2 x double> %4254, <2 x double> %4248)
  br label %4256

4256:                                             ; preds = %4247, %4240
  %4257 = phi <2 x double> [ %4245, %4240 ], [ %4253, %4247 ]
  %4258 = phi <2 x double> [ %4246, %4240 ], [ %4255, %4247 ]
  %4259 = fsub <2 x double> %4258, %4257
  br label %4260

4260:                                             ; preds = %4213, %4256
  %4261 = phi <2 x double> [ %4257, %4256 ], [ zeroinitializer, %4213 ]
  %4262 = phi <2 x double> [ %4223, %4256 ], [ %4214, %4213 ]
  %4263 = phi <2 x double> [ %4238, %4256 ], [ %4215, %4213 ]
  %4264 = phi <2 x double> [ %4259, %4256 ], [ zeroinitializer, %4213 ]
  %4265 = fsub <2 x double> %4216, %4261
  %4266 = fdiv <2 x double> %4264, %4265
  %4267 = fsub <2 x double> %4263, %4215
  %4268 = fmul <2 x double> %4267, %4266
  %4269 = load ptr, ptr %4143, align 16, !tbaa !47
  %4270 = getelementptr inbounds nuw <2 x double>, ptr %4269, i64 %4217
  %4271 = load <2 x double>, ptr %4270, align 16, !tbaa !26
  br i1 %4218, label %4275, label %4272

4272:                                             ; preds = %4260
  %4273 = getelementptr i8, ptr %4270, i64 -16
  %4274 = load <2 x double>, ptr %4273, align 16, !tbaa !26
  br label %4275

4275:                                             ; preds = %4272, %4260
  %4276 = phi <2 x double> [ %4274, %4272 ], [ %4271, %4260 ]
  %4277 = fsub <2 x double> %4276, %4271
  %4278 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4277, <2 x double> %4266, <2 x double> %4271)
  %4279 = select <2 x i1> %4198, <2 x double> %4271, <2 x double> %4278
  store <2 x double> %4279, ptr %4270, align 16, !tbaa !26
  %4280 = load ptr, ptr %4166, align 16, !tbaa !46
  %4281 = getelementptr inbounds nuw <2 x double>, ptr %4280, i64 %4217
  %4282 = load i64, ptr %4170, align 16, !tbaa !31
  %4283 = icmp slt i64 %4217, %4282
  br i1 %4283, label %4284, label %4286

4284:                                             ; preds = %4275
  %4285 = load <2 x double>, ptr %4192, align 16, !tbaa !26
  br label %4292

4286:                                             ; preds = %4275
  %4287 = load <2 x double>, ptr %4193, align 16, !tbaa !26
  %4288 = load <2 x double>, ptr %4194, align 16, !tbaa !26
  %4289 = load <2 x double>, ptr %4195, align 16, !tbaa !26
  %4290 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4214, <2 x double> %4289, <2 x double> %4288)
  %4291 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4214, <2 x double> %4290, <2 x double> %4287)
  br label %4292

4292:                                             ; preds = %4286, %4284
  %4293 = phi <2 x double> [ %4285, %4284 ], [ %4291, %4286 ]
  %4294 = fdiv <2 x double> %4268, %4293
  %4295 = fadd <2 x double> %4214, %4294
  %4296 = load <2 x double>, ptr %4281, align 16, !tbaa !26
  %4297 = select <2 x i1> %4198, <2 x double> %4296, <2 x double> %4295
  store <2 x double> %4297, ptr %4281, align 16, !tbaa !26
  %4298 = add nsw i64 %4217, -1
  %4299 = icmp sgt i64 %4217, 0
  br i1 %4299, label %4213, label %4199, !llvm.loop !128

4300:                                             ; preds = %4209, %4300
  %4301 = phi i64 [ 0, %4209 ], [ %4321, %4300 ]
  %4302 = load ptr, ptr %4210, align 8, !tbaa !49
  %4303 = getelementptr inbounds nuw <2 x double>, ptr %4302, i64 %4301
  %4304 = uitofp nneg i64 %4301 to double
  %4305 = insertelement <2 x double> poison, double %4304, i64 0
  %4306 = shufflevector <2 x double> %4305, <2 x double> poison, <2 x i32> zeroinitializer
  %4307 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4306, <2 x double> %4207, <2 x double> %4154)
  %4308 = load <2 x double>, ptr %4155, align 16, !tbaa !26
  %4309 = load <2 x double>, ptr %4157, align 16, !tbaa !26
  %4310 = load <2 x double>, ptr %4159, align 16, !tbaa !26
  %4311 = load <2 x double>, ptr %4161, align 16, !tbaa !26
  %4312 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4307, <2 x double> %4311, <2 x double> %4310)
  %4313 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4307, <2 x double> %4312, <2 x double> %4309)
  %4314 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4307, <2 x double> %4313, <2 x double> %4308)
  %4315 = load <2 x double>, ptr %4303, align 16, !tbaa !26
  %4316 = select <2 x i1> %4211, <2 x double> %4315, <2 x double> %4314
  store <2 x double> %4316, ptr %4303, align 16, !tbaa !26
  %4317 = load ptr, ptr %4212, align 8, !tbaa !50
  %4318 = getelementptr inbounds nuw <2 x double>, ptr %4317, i64 %4301
  %4319 = load <2 x double>, ptr %4318, align 16, !tbaa !26
  %4320 = select <2 x i1> %4211, <2 x double> %4319, <2 x double> %4140
  store <2 x double> %4320, ptr %4318, align 16, !tbaa !26
  %4321 = add nuw nsw i64 %4301, 1
  %4322 = icmp eq i64 %4321, %4136
  br i1 %4322, label %4323, label %4300, !llvm.loop !129

4323:                                             ; preds = %4300, %4201
  %4324 = fsub <2 x double> %4138, %4165
  %4325 = getelementptr inbounds nuw i8, ptr %4081, i64 928
  %4326 = getelementptr inbounds nuw i8, ptr %4081, i64 2072
  %4327 = load ptr, ptr %4326, align 8, !tbaa !49
  %4328 = getelementptr inbounds <2 x double>, ptr %4327, i64 %4136
  %4329 = getelementptr inbounds nuw i8, ptr %4081, i64 352
  %4330 = load <2 x double>, ptr %4329, align 16, !tbaa !26
  %4331 = load <2 x double>, ptr %4328, align 16, !tbaa !26
  %4332 = icmp eq <2 x i64> %4131, zeroinitializer
  %4333 = select <2 x i1> %4332, <2 x double> %4331, <2 x double> %4330
  store <2 x double> %4333, ptr %4328, align 16, !tbaa !26
  %4334 = load <2 x double>, ptr %4325, align 16, !tbaa !26
  %4335 = select <2 x i1> %4332, <2 x double> %4334, <2 x double> %4154
  store <2 x double> %4335, ptr %4325, align 16, !tbaa !26
  %4336 = load <2 x double>, ptr %4082, align 16, !tbaa !26
  %4337 = select <2 x i1> %4332, <2 x double> %4336, <2 x double> %4165
  store <2 x double> %4337, ptr %4082, align 16, !tbaa !26
  %4338 = load <2 x double>, ptr %4137, align 16, !tbaa !26
  %4339 = select <2 x i1> %4332, <2 x double> %4338, <2 x double> %4165
  store <2 x double> %4339, ptr %4137, align 16, !tbaa !26
  %4340 = getelementptr inbounds nuw i8, ptr %4081, i64 976
  %4341 = load <2 x double>, ptr %4340, align 16, !tbaa !26
  %4342 = fneg <2 x double> %4324
  %4343 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4342, <2 x double> %4148, <2 x double> %4341)
  %4344 = select <2 x i1> %4332, <2 x double> %4341, <2 x double> %4343
  store <2 x double> %4344, ptr %4340, align 16, !tbaa !26
  %4345 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4324, <2 x double> %4148, <2 x double> %4125)
  %4346 = load <2 x double>, ptr %4124, align 16, !tbaa !26
  %4347 = select <2 x i1> %4332, <2 x double> %4346, <2 x double> %4345
  store <2 x double> %4347, ptr %4124, align 16, !tbaa !26
  %4348 = getelementptr inbounds nuw i8, ptr %4081, i64 1040
  %4349 = load <2 x double>, ptr %4348, align 16, !tbaa !26
  %4350 = getelementptr inbounds nuw i8, ptr %4081, i64 192
  %4351 = load <2 x double>, ptr %4350, align 16, !tbaa !26
  %4352 = fneg <2 x double> %4351
  %4353 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4352, <2 x double> %4140, <2 x double> %4189)
  %4354 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4324, <2 x double> %4353, <2 x double> %4349)
  %4355 = select <2 x i1> %4332, <2 x double> %4349, <2 x double> %4354
  store <2 x double> %4355, ptr %4348, align 16, !tbaa !26
  %4356 = load <2 x i64>, ptr %4095, align 16, !tbaa !26
  %4357 = or <2 x i64> %4356, %4131
  store <2 x i64> %4357, ptr %4095, align 16, !tbaa !26
  %4358 = load <2 x i64>, ptr %4109, align 16, !tbaa !26
  %4359 = or <2 x i64> %4358, %4131
  store <2 x i64> %4359, ptr %4109, align 16, !tbaa !26
  %4360 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %4361 = fmul <2 x double> %4360, splat (double 5.000000e+00)
  %4362 = fcmp olt <2 x double> %4079, %4361
  %4363 = select <2 x i1> %4362, <2 x double> %4079, <2 x double> %4361
  %4364 = icmp ne <2 x i64> %4131, zeroinitializer
  %4365 = select <2 x i1> %4122, <2 x i1> %4364, <2 x i1> zeroinitializer
  %4366 = select <2 x i1> %4365, <2 x double> %4363, <2 x double> %4079
  br label %4367

4367:                                             ; preds = %4323, %4077
  %4368 = phi <2 x double> [ %4366, %4323 ], [ %4079, %4077 ]
  %4369 = add nuw nsw i64 %4078, 1
  %4370 = load i64, ptr %157, align 8, !tbaa !20
  %4371 = icmp slt i64 %4369, %4370
  br i1 %4371, label %4077, label %4372, !llvm.loop !130

4372:                                             ; preds = %4367
  %4373 = load <2 x double>, ptr %149, align 16, !tbaa !26
  br label %4374

4374:                                             ; preds = %4372, %4040
  %4375 = phi <2 x double> [ %4049, %4040 ], [ %4373, %4372 ]
  %4376 = phi <2 x double> [ %4072, %4040 ], [ %4368, %4372 ]
  %4377 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %4378 = select <2 x i1> %3631, <2 x double> %4377, <2 x double> %4376
  store <2 x double> %4378, ptr %152, align 16, !tbaa !26
  %4379 = load ptr, ptr %222, align 16, !tbaa !38
  %4380 = getelementptr inbounds nuw i8, ptr %4379, i64 16
  store <2 x double> %4375, ptr %4379, align 16, !tbaa !26
  %4381 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %4382 = getelementptr inbounds nuw i8, ptr %4379, i64 32
  store <2 x double> %4381, ptr %4380, align 16, !tbaa !26
  %4383 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %4384 = getelementptr inbounds nuw i8, ptr %4379, i64 48
  store <2 x double> %4383, ptr %4382, align 16, !tbaa !26
  %4385 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %4386 = getelementptr inbounds nuw i8, ptr %4379, i64 64
  store <2 x double> %4385, ptr %4384, align 16, !tbaa !26
  %4387 = load i64, ptr %157, align 8, !tbaa !20
  %4388 = icmp sgt i64 %4387, 0
  br i1 %4388, label %4393, label %4389

4389:                                             ; preds = %4393, %4374
  %4390 = phi ptr [ %4386, %4374 ], [ %4399, %4393 ]
  %4391 = load i64, ptr %224, align 8, !tbaa !131
  %4392 = icmp eq i64 %4391, 0
  br i1 %4392, label %4528, label %4403

4393:                                             ; preds = %4374, %4393
  %4394 = phi ptr [ %4399, %4393 ], [ %4386, %4374 ]
  %4395 = phi i64 [ %4400, %4393 ], [ 0, %4374 ]
  %4396 = load ptr, ptr %142, align 8, !tbaa !28
  %4397 = getelementptr inbounds nuw %struct.Piece, ptr %4396, i64 %4395, i32 35
  %4398 = load <2 x double>, ptr %4397, align 16, !tbaa !26
  %4399 = getelementptr inbounds nuw i8, ptr %4394, i64 16
  store <2 x double> %4398, ptr %4394, align 16, !tbaa !26
  %4400 = add nuw nsw i64 %4395, 1
  %4401 = load i64, ptr %157, align 8, !tbaa !20
  %4402 = icmp slt i64 %4400, %4401
  br i1 %4402, label %4393, label %4389, !llvm.loop !132

4403:                                             ; preds = %4389
  %4404 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %4405 = getelementptr inbounds nuw i8, ptr %4390, i64 16
  store <2 x double> %4404, ptr %4390, align 16, !tbaa !26
  %4406 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %4407 = getelementptr inbounds nuw i8, ptr %4390, i64 32
  store <2 x double> %4406, ptr %4405, align 16, !tbaa !26
  %4408 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %4409 = load <2 x double>, ptr %201, align 16, !tbaa !26
  %4410 = fsub <2 x double> %4408, %4409
  %4411 = fcmp ogt <2 x double> %4410, zeroinitializer
  %4412 = select <2 x i1> %4411, <2 x double> %4410, <2 x double> zeroinitializer
  store <2 x double> %4412, ptr %4407, align 16, !tbaa !26
  %4413 = load i64, ptr %157, align 8, !tbaa !20
  %4414 = icmp sgt i64 %4413, 0
  br i1 %4414, label %4415, label %4528

4415:                                             ; preds = %4403
  %4416 = getelementptr inbounds nuw i8, ptr %4390, i64 48
  br label %4417

4417:                                             ; preds = %4415, %4417
  %4418 = phi ptr [ %4524, %4417 ], [ %4416, %4415 ]
  %4419 = phi i64 [ %4525, %4417 ], [ 0, %4415 ]
  %4420 = load ptr, ptr %142, align 8, !tbaa !28
  %4421 = getelementptr inbounds nuw %struct.Piece, ptr %4420, i64 %4419
  %4422 = getelementptr inbounds nuw i8, ptr %4421, i64 1904
  %4423 = load ptr, ptr %4422, align 16, !tbaa !46
  %4424 = load i64, ptr %132, align 16, !tbaa !21
  %4425 = getelementptr <2 x double>, ptr %4423, i64 %4424
  %4426 = getelementptr i8, ptr %4425, i64 -16
  %4427 = load <2 x double>, ptr %4426, align 16, !tbaa !26
  %4428 = getelementptr inbounds nuw i8, ptr %4421, i64 1712
  %4429 = load <2 x double>, ptr %4428, align 16, !tbaa !26
  %4430 = getelementptr inbounds nuw i8, ptr %4421, i64 1392
  %4431 = load <2 x double>, ptr %4430, align 16, !tbaa !26
  %4432 = fsub <2 x double> %4431, %4427
  %4433 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4429, <2 x double> %4432, <2 x double> %4427)
  %4434 = getelementptr inbounds nuw i8, ptr %4418, i64 16
  store <2 x double> %4433, ptr %4418, align 16, !tbaa !26
  %4435 = getelementptr inbounds nuw i8, ptr %4421, i64 1600
  %4436 = load <2 x double>, ptr %4435, align 16, !tbaa !26
  %4437 = getelementptr inbounds nuw i8, ptr %4418, i64 32
  store <2 x double> %4436, ptr %4434, align 16, !tbaa !26
  %4438 = load <2 x double>, ptr %4421, align 16, !tbaa !26
  %4439 = getelementptr inbounds nuw i8, ptr %4421, i64 928
  %4440 = load <2 x double>, ptr %4439, align 16, !tbaa !26
  %4441 = fsub <2 x double> %4438, %4440
  %4442 = getelementptr inbounds nuw i8, ptr %4418, i64 48
  store <2 x double> %4441, ptr %4437, align 16, !tbaa !26
  %4443 = getelementptr inbounds nuw i8, ptr %4421, i64 1008
  %4444 = load <2 x double>, ptr %4443, align 16, !tbaa !26
  %4445 = getelementptr inbounds nuw i8, ptr %4418, i64 64
  store <2 x double> %4444, ptr %4442, align 16, !tbaa !26
  %4446 = getelementptr inbounds nuw i8, ptr %4421, i64 992
  %4447 = load <2 x double>, ptr %4446, align 16, !tbaa !26
  %4448 = getelementptr inbounds nuw i8, ptr %4418, i64 80
  store <2 x double> %4447, ptr %4445, align 16, !tbaa !26
  %4449 = getelementptr inbounds nuw i8, ptr %4421, i64 960
  %4450 = load <2 x double>, ptr %4449, align 16, !tbaa !26
  %4451 = getelementptr inbounds nuw i8, ptr %4418, i64 96
  store <2 x double> %4450, ptr %4448, align 16, !tbaa !26
  %4452 = getelementptr inbounds nuw i8, ptr %4421, i64 1024
  %4453 = load <2 x double>, ptr %4452, align 16, !tbaa !26
  %4454 = getelementptr inbounds nuw i8, ptr %4418, i64 112
  store <2 x double> %4453, ptr %4451, align 16, !tbaa !26
  %4455 = getelementptr inbounds nuw i8, ptr %4421, i64 2024
  %4456 = load i64, ptr %133, align 8, !tbaa !22
  %4457 = sitofp i64 %4456 to double
  %4458 = tail call double @llvm.fmuladd.f64(double %4457, double 7.500000e-01, double -5.000000e-01)
  %4459 = fcmp ogt double %4458, 0.000000e+00
  %4460 = select i1 %4459, double %4458, double 0.000000e+00
  %4461 = fptosi double %4460 to i64
  %4462 = add nsw i64 %4456, -2
  %4463 = tail call i64 @llvm.smin.i64(i64 %4462, i64 %4461)
  %4464 = sitofp i64 %4463 to double
  %4465 = fsub double %4458, %4464
  %4466 = fsub double 1.000000e+00, %4465
  %4467 = insertelement <2 x double> poison, double %4466, i64 0
  %4468 = shufflevector <2 x double> %4467, <2 x double> poison, <2 x i32> zeroinitializer
  %4469 = load ptr, ptr %4455, align 8, !tbaa !50
  %4470 = getelementptr inbounds <2 x double>, ptr %4469, i64 %4463
  %4471 = load <2 x double>, ptr %4470, align 16, !tbaa !26
  %4472 = insertelement <2 x double> poison, double %4465, i64 0
  %4473 = shufflevector <2 x double> %4472, <2 x double> poison, <2 x i32> zeroinitializer
  %4474 = getelementptr i8, ptr %4470, i64 16
  %4475 = load <2 x double>, ptr %4474, align 16, !tbaa !26
  %4476 = fmul <2 x double> %4475, %4473
  %4477 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4468, <2 x double> %4471, <2 x double> %4476)
  store <2 x double> %4477, ptr %4454, align 16, !tbaa !26
  %4478 = load i64, ptr %133, align 8, !tbaa !22
  %4479 = sitofp i64 %4478 to double
  %4480 = tail call double @llvm.fmuladd.f64(double %4479, double 5.000000e-01, double -5.000000e-01)
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
  %4491 = load ptr, ptr %4455, align 8, !tbaa !50
  %4492 = getelementptr inbounds <2 x double>, ptr %4491, i64 %4485
  %4493 = load <2 x double>, ptr %4492, align 16, !tbaa !26
  %4494 = insertelement <2 x double> poison, double %4487, i64 0
  %4495 = shufflevector <2 x double> %4494, <2 x double> poison, <2 x i32> zeroinitializer
  %4496 = getelementptr i8, ptr %4492, i64 16
  %4497 = load <2 x double>, ptr %4496, align 16, !tbaa !26
  %4498 = fmul <2 x double> %4497, %4495
  %4499 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4490, <2 x double> %4493, <2 x double> %4498)
  %4500 = getelementptr inbounds nuw i8, ptr %4418, i64 128
  store <2 x double> %4499, ptr %4500, align 16, !tbaa !26
  %4501 = load i64, ptr %133, align 8, !tbaa !22
  %4502 = sitofp i64 %4501 to double
  %4503 = tail call double @llvm.fmuladd.f64(double %4502, double 2.500000e-01, double -5.000000e-01)
  %4504 = fcmp ogt double %4503, 0.000000e+00
  %4505 = select i1 %4504, double %4503, double 0.000000e+00
  %4506 = fptosi double %4505 to i64
  %4507 = add nsw i64 %4501, -2
  %4508 = tail call i64 @llvm.smin.i64(i64 %4507, i64 %4506)
  %4509 = sitofp i64 %4508 to double
  %4510 = fsub double %4503, %4509
  %4511 = fsub double 1.000000e+00, %4510
  %4512 = insertelement <2 x double> poison, double %4511, i64 0
  %4513 = shufflevector <2 x double> %4512, <2 x double> poison, <2 x i32> zeroinitializer
  %4514 = load ptr, ptr %4455, align 8, !tbaa !50
  %4515 = getelementptr inbounds <2 x double>, ptr %4514, i64 %4508
  %4516 = load <2 x double>, ptr %4515, align 16, !tbaa !26
  %4517 = insertelement <2 x double> poison, double %4510, i64 0
  %4518 = shufflevector <2 x double> %4517, <2 x double> poison, <2 x i32> zeroinitializer
  %4519 = getelementptr i8, ptr %4515, i64 16
  %4520 = load <2 x double>, ptr %4519, align 16, !tbaa !26
  %4521 = fmul <2 x double> %4520, %4518
  %4522 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4513, <2 x double> %4516, <2 x double> %4521)
  %4523 = getelementptr inbounds nuw i8, ptr %4418, i64 144
  store <2 x double> %4522, ptr %4523, align 16, !tbaa !26
  %4524 = getelementptr inbounds nuw i8, ptr %4418, i64 160
  %4525 = add nuw nsw i64 %4419, 1
  %4526 = load i64, ptr %157, align 8, !tbaa !20
  %4527 = icmp slt i64 %4525, %4526
  br i1 %4527, label %4417, label %4528, !llvm.loop !133

4528:                                             ; preds = %4417, %4403, %4389
  %4529 = getelementptr inbounds nuw i8, ptr %4390, i64 48
  %4530 = extractelement <2 x i64> %3571, i64 0
  %4531 = extractelement <2 x i64> %3571, i64 1
  br label %4532

4532:                                             ; preds = %4528, %4675
  %4533 = phi i1 [ true, %4528 ], [ false, %4675 ]
  %4534 = phi i64 [ %4530, %4528 ], [ %4531, %4675 ]
  %4535 = phi i64 [ 0, %4528 ], [ 1, %4675 ]
  %4536 = icmp eq i64 %4534, 0
  br i1 %4536, label %4675, label %4537

4537:                                             ; preds = %4532
  %4538 = getelementptr inbounds nuw [2 x i64], ptr %225, i64 0, i64 %4535
  %4539 = load i64, ptr %4538, align 8, !tbaa !30
  %4540 = load i64, ptr %226, align 8, !tbaa !134
  %4541 = icmp eq i64 %4539, %4540
  br i1 %4541, label %4545, label %4542

4542:                                             ; preds = %4537
  %4543 = getelementptr inbounds nuw [2 x ptr], ptr %230, i64 0, i64 %4535
  %4544 = load ptr, ptr %4543, align 8, !tbaa !135
  br label %4560

4545:                                             ; preds = %4537
  %4546 = getelementptr inbounds nuw [2 x i64], ptr %134, i64 0, i64 %4535
  %4547 = load i64, ptr %4546, align 8, !tbaa !30
  %4548 = load ptr, ptr %227, align 8, !tbaa !136
  %4549 = load i64, ptr %125, align 8, !tbaa !41
  %4550 = getelementptr inbounds i64, ptr %4548, i64 %4549
  store i64 %4547, ptr %4550, align 8, !tbaa !30
  %4551 = load ptr, ptr %228, align 8, !tbaa !137
  %4552 = load i64, ptr %125, align 8, !tbaa !41
  %4553 = add nsw i64 %4552, 1
  store i64 %4553, ptr %125, align 8, !tbaa !41
  %4554 = load i64, ptr %226, align 8, !tbaa !134
  %4555 = mul nsw i64 %4554, %4552
  %4556 = load i64, ptr %229, align 8, !tbaa !15
  %4557 = mul nsw i64 %4555, %4556
  %4558 = getelementptr inbounds double, ptr %4551, i64 %4557
  %4559 = getelementptr inbounds nuw [2 x ptr], ptr %230, i64 0, i64 %4535
  store ptr %4558, ptr %4559, align 8, !tbaa !135
  br label %4560

4560:                                             ; preds = %4542, %4545
  %4561 = phi i64 [ %4539, %4542 ], [ 0, %4545 ]
  %4562 = phi ptr [ %4544, %4542 ], [ %4558, %4545 ]
  %4563 = add nsw i64 %4561, 1
  store i64 %4563, ptr %4538, align 8, !tbaa !30
  %4564 = load i64, ptr %229, align 8, !tbaa !15
  %4565 = mul nsw i64 %4564, %4561
  %4566 = getelementptr inbounds double, ptr %4562, i64 %4565
  %4567 = load ptr, ptr %222, align 16, !tbaa !38
  %4568 = icmp ult ptr %4567, %4386
  br i1 %4568, label %4628, label %4569

4569:                                             ; preds = %4628, %4560
  %4570 = phi ptr [ %4566, %4560 ], [ %4633, %4628 ]
  %4571 = load i64, ptr %141, align 16, !tbaa !16
  %4572 = icmp sgt i64 %4571, 0
  br i1 %4572, label %4573, label %4615

4573:                                             ; preds = %4569
  %4574 = and i64 %4571, 3
  %4575 = icmp ult i64 %4571, 4
  br i1 %4575, label %4600, label %4576

4576:                                             ; preds = %4573
  %4577 = and i64 %4571, 9223372036854775804
  br label %4578

4578:                                             ; preds = %4578, %4576
  %4579 = phi i64 [ 0, %4576 ], [ %4597, %4578 ]
  %4580 = phi ptr [ %4570, %4576 ], [ %4594, %4578 ]
  %4581 = phi i64 [ 0, %4576 ], [ %4598, %4578 ]
  %4582 = getelementptr i8, ptr %4580, i64 8
  %4583 = getelementptr inbounds nuw <2 x double>, ptr %4386, i64 %4579, i64 %4535
  %4584 = load double, ptr %4583, align 8
  store double %4584, ptr %4580, align 8, !tbaa !42
  %4585 = or disjoint i64 %4579, 1
  %4586 = getelementptr i8, ptr %4580, i64 16
  %4587 = getelementptr inbounds nuw <2 x double>, ptr %4386, i64 %4585, i64 %4535
  %4588 = load double, ptr %4587, align 8
  store double %4588, ptr %4582, align 8, !tbaa !42
  %4589 = or disjoint i64 %4579, 2
  %4590 = getelementptr i8, ptr %4580, i64 24
  %4591 = getelementptr inbounds nuw <2 x double>, ptr %4386, i64 %4589, i64 %4535
  %4592 = load double, ptr %4591, align 8
  store double %4592, ptr %4586, align 8, !tbaa !42
  %4593 = or disjoint i64 %4579, 3
  %4594 = getelementptr i8, ptr %4580, i64 32
  %4595 = getelementptr inbounds nuw <2 x double>, ptr %4386, i64 %4593, i64 %4535
  %4596 = load double, ptr %4595, align 8
  store double %4596, ptr %4590, align 8, !tbaa !42
  %4597 = add nuw nsw i64 %4579, 4
  %4598 = add i64 %4581, 4
  %4599 = icmp eq i64 %4598, %4577
  br i1 %4599, label %4600, label %4578, !llvm.loop !138

4600:                                             ; preds = %4578, %4573
  %4601 = phi ptr [ poison, %4573 ], [ %4594, %4578 ]
  %4602 = phi i64 [ 0, %4573 ], [ %4597, %4578 ]
  %4603 = phi ptr [ %4570, %4573 ], [ %4594, %4578 ]
  %4604 = icmp eq i64 %4574, 0
  br i1 %4604, label %4615, label %4605

4605:                                             ; preds = %4600, %4605
  %4606 = phi i64 [ %4612, %4605 ], [ %4602, %4600 ]
  %4607 = phi ptr [ %4609, %4605 ], [ %4603, %4600 ]
  %4608 = phi i64 [ %4613, %4605 ], [ 0, %4600 ]
  %4609 = getelementptr i8, ptr %4607, i64 8
  %4610 = getelementptr inbounds nuw <2 x double>, ptr %4386, i64 %4606, i64 %4535
  %4611 = load double, ptr %4610, align 8
  store double %4611, ptr %4607, align 8, !tbaa !42
  %4612 = add nuw nsw i64 %4606, 1
  %4613 = add i64 %4608, 1
  %4614 = icmp eq i64 %4613, %4574
  br i1 %4614, label %4615, label %4605, !llvm.loop !139

4615:                                             ; preds = %4600, %4605, %4569
  %4616 = phi ptr [ %4570, %4569 ], [ %4601, %4600 ], [ %4609, %4605 ]
  %4617 = load i64, ptr %224, align 8, !tbaa !131
  %4618 = icmp eq i64 %4617, 0
  br i1 %4618, label %4675, label %4619

4619:                                             ; preds = %4615
  %4620 = getelementptr inbounds nuw double, ptr %4390, i64 %4535
  %4621 = load double, ptr %4620, align 8, !tbaa !42
  %4622 = getelementptr inbounds nuw i8, ptr %4616, i64 8
  store double %4621, ptr %4616, align 8, !tbaa !42
  %4623 = getelementptr inbounds nuw i8, ptr %4620, i64 16
  %4624 = load double, ptr %4623, align 8, !tbaa !42
  %4625 = getelementptr inbounds nuw i8, ptr %4616, i64 16
  store double %4624, ptr %4622, align 8, !tbaa !42
  %4626 = getelementptr inbounds nuw i8, ptr %4620, i64 32
  %4627 = load double, ptr %4626, align 8, !tbaa !42
  store double %4627, ptr %4625, align 8, !tbaa !42
  br i1 %4572, label %4636, label %4675

4628:                                             ; preds = %4560, %4628
  %4629 = phi ptr [ %4634, %4628 ], [ %4567, %4560 ]
  %4630 = phi ptr [ %4633, %4628 ], [ %4566, %4560 ]
  %4631 = getelementptr inbounds nuw double, ptr %4629, i64 %4535
  %4632 = load double, ptr %4631, align 8, !tbaa !42
  %4633 = getelementptr inbounds nuw i8, ptr %4630, i64 8
  store double %4632, ptr %4630, align 8, !tbaa !42
  %4634 = getelementptr inbounds nuw i8, ptr %4629, i64 16
  %4635 = icmp ult ptr %4634, %4386
  br i1 %4635, label %4628, label %4569, !llvm.loop !140

4636:                                             ; preds = %4619
  %4637 = getelementptr inbounds nuw i8, ptr %4616, i64 24
  br label %4638

4638:                                             ; preds = %4636, %4638
  %4639 = phi i64 [ %4673, %4638 ], [ 0, %4636 ]
  %4640 = phi ptr [ %4672, %4638 ], [ %4637, %4636 ]
  %4641 = mul nuw nsw i64 %4639, 160
  %4642 = getelementptr inbounds nuw i8, ptr %4529, i64 %4641
  %4643 = getelementptr inbounds nuw <2 x double>, ptr %4642, i64 0, i64 %4535
  %4644 = load double, ptr %4643, align 8
  %4645 = getelementptr inbounds nuw i8, ptr %4640, i64 8
  store double %4644, ptr %4640, align 8, !tbaa !42
  %4646 = getelementptr inbounds nuw <2 x double>, ptr %4642, i64 1, i64 %4535
  %4647 = load double, ptr %4646, align 8
  %4648 = getelementptr inbounds nuw i8, ptr %4640, i64 16
  store double %4647, ptr %4645, align 8, !tbaa !42
  %4649 = getelementptr inbounds nuw <2 x double>, ptr %4642, i64 2, i64 %4535
  %4650 = load double, ptr %4649, align 8
  %4651 = getelementptr inbounds nuw i8, ptr %4640, i64 24
  store double %4650, ptr %4648, align 8, !tbaa !42
  %4652 = getelementptr inbounds nuw <2 x double>, ptr %4642, i64 3, i64 %4535
  %4653 = load double, ptr %4652, align 8
  %4654 = getelementptr inbounds nuw i8, ptr %4640, i64 32
  store double %4653, ptr %4651, align 8, !tbaa !42
  %4655 = getelementptr inbounds nuw <2 x double>, ptr %4642, i64 4, i64 %4535
  %4656 = load double, ptr %4655, align 8
  %4657 = getelementptr inbounds nuw i8, ptr %4640, i64 40
  store double %4656, ptr %4654, align 8, !tbaa !42
  %4658 = getelementptr inbounds nuw <2 x double>, ptr %4642, i64 5, i64 %4535
  %4659 = load double, ptr %4658, align 8
  %4660 = getelementptr inbounds nuw i8, ptr %4640, i64 48
  store double %4659, ptr %4657, align 8, !tbaa !42
  %4661 = getelementptr inbounds nuw <2 x double>, ptr %4642, i64 6, i64 %4535
  %4662 = load double, ptr %4661, align 8
  %4663 = getelementptr inbounds nuw i8, ptr %4640, i64 56
  store double %4662, ptr %4660, align 8, !tbaa !42
  %4664 = getelementptr inbounds nuw <2 x double>, ptr %4642, i64 7, i64 %4535
  %4665 = load double, ptr %4664, align 8
  %4666 = getelementptr inbounds nuw i8, ptr %4640, i64 64
  store double %4665, ptr %4663, align 8, !tbaa !42
  %4667 = getelementptr inbounds nuw <2 x double>, ptr %4642, i64 8, i64 %4535
  %4668 = load double, ptr %4667, align 8
  %4669 = getelementptr inbounds nuw i8, ptr %4640, i64 72
  store double %4668, ptr %4666, align 8, !tbaa !42
  %4670 = getelementptr inbounds nuw <2 x double>, ptr %4642, i64 9, i64 %4535
  %4671 = load double, ptr %4670, align 8
  %4672 = getelementptr inbounds nuw i8, ptr %4640, i64 80
  store double %4671, ptr %4669, align 8, !tbaa !42
  %4673 = add nuw nsw i64 %4639, 1
  %4674 = icmp eq i64 %4673, %4571
  br i1 %4674, label %4675, label %4638, !llvm.loop !138

4675:                                             ; preds = %4638, %4619, %4615, %4532
  br i1 %4533, label %4532, label %4676, !llvm.loop !141

4676:                                             ; preds = %4675
  %4677 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4678 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %4679 = fsub <2 x double> %4677, %4678
  %4680 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %4681 = fadd <2 x double> %4680, splat (double -1.000000e-09)
  %4682 = fcmp oge <2 x double> %4679, %4681
  %4683 = select <2 x i1> %4682, <2 x i64> %3571, <2 x i64> zeroinitializer
  %4684 = load i64, ptr %157, align 8, !tbaa !20
  %4685 = icmp sgt i64 %4684, 0
  br i1 %4685, label %4686, label %4734

4686:                                             ; preds = %4676
  %4687 = load ptr, ptr %142, align 8, !tbaa !28
  %4688 = and i64 %4684, 3
  %4689 = icmp ult i64 %4684, 4
  br i1 %4689, label %4718, label %4690

4690:                                             ; preds = %4686
  %4691 = and i64 %4684, 9223372036854775804
  br label %4692

4692:                                             ; preds = %4692, %4690
  %4693 = phi i64 [ 0, %4690 ], [ %4715, %4692 ]
  %4694 = phi <2 x double> [ splat (double 1.000000e+09), %4690 ], [ %4714, %4692 ]
  %4695 = phi i64 [ 0, %4690 ], [ %4716, %4692 ]
  %4696 = getelementptr inbounds nuw %struct.Piece, ptr %4687, i64 %4693, i32 35
  %4697 = load <2 x double>, ptr %4696, align 16, !tbaa !26
  %4698 = fcmp olt <2 x double> %4694, %4697
  %4699 = select <2 x i1> %4698, <2 x double> %4694, <2 x double> %4697
  %4700 = or disjoint i64 %4693, 1
  %4701 = getelementptr inbounds nuw %struct.Piece, ptr %4687, i64 %4700, i32 35
  %4702 = load <2 x double>, ptr %4701, align 16, !tbaa !26
  %4703 = fcmp olt <2 x double> %4699, %4702
  %4704 = select <2 x i1> %4703, <2 x double> %4699, <2 x double> %4702
  %4705 = or disjoint i64 %4693, 2
  %4706 = getelementptr inbounds nuw %struct.Piece, ptr %4687, i64 %4705, i32 35
  %4707 = load <2 x double>, ptr %4706, align 16, !tbaa !26
  %4708 = fcmp olt <2 x double> %4704, %4707
  %4709 = select <2 x i1> %4708, <2 x double> %4704, <2 x double> %4707
  %4710 = or disjoint i64 %4693, 3
  %4711 = getelementptr inbounds nuw %struct.Piece, ptr %4687, i64 %4710, i32 35
  %4712 = load <2 x double>, ptr %4711, align 16, !tbaa !26
  %4713 = fcmp olt <2 x double> %4709, %4712
  %4714 = select <2 x i1> %4713, <2 x double> %4709, <2 x double> %4712
  %4715 = add nuw nsw i64 %4693, 4
  %4716 = add i64 %4695, 4
  %4717 = icmp eq i64 %4716, %4691
  br i1 %4717, label %4718, label %4692, !llvm.loop !114

4718:                                             ; preds = %4692, %4686
  %4719 = phi <2 x double> [ poison, %4686 ], [ %4714, %4692 ]
  %4720 = phi i64 [ 0, %4686 ], [ %4715, %4692 ]
  %4721 = phi <2 x double> [ splat (double 1.000000e+09), %4686 ], [ %4714, %4692 ]
  %4722 = icmp eq i64 %4688, 0
  br i1 %4722, label %4734, label %4723

4723:                                             ; preds = %4718, %4723
  %4724 = phi i64 [ %4731, %4723 ], [ %4720, %4718 ]
  %4725 = phi <2 x double> [ %4730, %4723 ], [ %4721, %4718 ]
  %4726 = phi i64 [ %4732, %4723 ], [ 0, %4718 ]
  %4727 = getelementptr inbounds nuw %struct.Piece, ptr %4687, i64 %4724, i32 35
  %4728 = load <2 x double>, ptr %4727, align 16, !tbaa !26
  %4729 = fcmp olt <2 x double> %4725, %4728
  %4730 = select <2 x i1> %4729, <2 x double> %4725, <2 x double> %4728
  %4731 = add nuw nsw i64 %4724, 1
  %4732 = add i64 %4726, 1
  %4733 = icmp eq i64 %4732, %4688
  br i1 %4733, label %4734, label %4723, !llvm.loop !142

4734:                                             ; preds = %4718, %4723, %4676
  %4735 = phi <2 x double> [ splat (double 1.000000e+09), %4676 ], [ %4719, %4718 ], [ %4730, %4723 ]
  %4736 = load <2 x double>, ptr %218, align 16, !tbaa !26
  %4737 = select <2 x i1> %3631, <2 x double> %4736, <2 x double> %4735
  store <2 x double> %4737, ptr %218, align 16, !tbaa !26
  %4738 = load <2 x double>, ptr %219, align 16, !tbaa !26
  %4739 = fcmp une <2 x double> %4738, zeroinitializer
  %4740 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %4741 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %4742 = fsub <2 x double> %4740, %4741
  %4743 = fcmp une <2 x double> %4738, splat (double 1.000000e+00)
  %4744 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %4745 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %4746 = fsub <2 x double> %4744, %4745
  %4747 = select <2 x i1> %4743, <2 x double> splat (double -1.000000e+00), <2 x double> %4746
  %4748 = fcmp une <2 x double> %4738, splat (double 2.000000e+00)
  %4749 = fsub <2 x double> %4737, %4745
  %4750 = select <2 x i1> %4748, <2 x double> %4747, <2 x double> %4749
  %4751 = fcmp une <2 x double> %4738, splat (double 3.000000e+00)
  %4752 = fsub <2 x double> %4742, %4745
  %4753 = select <2 x i1> %4751, <2 x double> %4750, <2 x double> %4752
  %4754 = fcmp une <2 x double> %4738, splat (double 4.000000e+00)
  %4755 = fsub <2 x double> %4745, %4742
  %4756 = select <2 x i1> %4754, <2 x double> %4753, <2 x double> %4755
  %4757 = fcmp oge <2 x double> %4756, splat (double 0xBEB0C6F7A0B5ED8D)
  %4758 = select <2 x i1> %4757, <2 x i1> %4739, <2 x i1> zeroinitializer
  %4759 = select <2 x i1> %4758, <2 x i64> %3571, <2 x i64> zeroinitializer
  %4760 = xor <2 x i64> %4759, splat (i64 -1)
  %4761 = and <2 x i64> %4683, %4760
  %4762 = load <2 x double>, ptr %139, align 16, !tbaa !26
  %4763 = icmp ne <2 x i64> %4761, zeroinitializer
  %4764 = select <2 x i1> %4739, <2 x i1> %4763, <2 x i1> zeroinitializer
  %4765 = select <2 x i1> %4764, <2 x double> splat (double 2.000000e+00), <2 x double> %4762
  store <2 x double> %4765, ptr %139, align 16, !tbaa !26
  %4766 = or <2 x i64> %4759, %4683
  %4767 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %4768 = fadd <2 x double> %4767, splat (double 1.000000e+00)
  %4769 = icmp eq <2 x i64> %4766, zeroinitializer
  %4770 = select <2 x i1> %4769, <2 x double> %4767, <2 x double> %4768
  store <2 x double> %4770, ptr %223, align 16, !tbaa !26
  %4771 = xor <2 x i64> %4766, %3571
  %4772 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %4773 = fcmp oeq <2 x double> %4772, zeroinitializer
  %4774 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %4775 = fcmp oeq <2 x double> %4774, zeroinitializer
  %4776 = select <2 x i1> %4775, <2 x i1> %4773, <2 x i1> zeroinitializer
  %4777 = select <2 x i1> %4776, <2 x i64> %4771, <2 x i64> zeroinitializer
  %4778 = load <2 x double>, ptr %217, align 16, !tbaa !26
  %4779 = fmul <2 x double> %4778, splat (double 5.000000e-01)
  %4780 = load <2 x double>, ptr %205, align 16, !tbaa !26
  %4781 = fadd <2 x double> %4780, %4779
  %4782 = fadd <2 x double> %4781, splat (double -1.000000e-03)
  %4783 = fcmp ult <2 x double> %4744, %4782
  %4784 = fsub <2 x double> %4780, %4779
  %4785 = fadd <2 x double> %4784, splat (double 1.000000e-03)
  %4786 = fcmp ole <2 x double> %4744, %4785
  %4787 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %4788 = select <2 x i1> %4786, <2 x i64> splat (i64 -1), <2 x i64> %4787
  %4789 = select <2 x i1> %4783, <2 x i64> %4788, <2 x i64> zeroinitializer
  %4790 = xor <2 x i64> %4789, %4787
  %4791 = and <2 x i64> %4790, %4777
  %4792 = and <2 x i64> %4789, %4777
  %4793 = xor <2 x i64> %4777, splat (i64 -1)
  %4794 = and <2 x i64> %4787, %4793
  %4795 = or disjoint <2 x i64> %4792, %4794
  store <2 x i64> %4795, ptr %167, align 16, !tbaa !26
  %4796 = load <2 x i64>, ptr %160, align 16, !tbaa !26
  %4797 = or <2 x i64> %4791, %4796
  store <2 x i64> %4797, ptr %160, align 16, !tbaa !26
  %4798 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4766)
  %4799 = icmp eq i64 %4798, 0
  br i1 %4799, label %4810, label %4800

4800:                                             ; preds = %4734
  %4801 = extractelement <2 x i64> %4766, i64 0
  %4802 = icmp eq i64 %4801, 0
  br i1 %4802, label %4804, label %4803

4803:                                             ; preds = %4800
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %4804

4804:                                             ; preds = %4803, %4800
  %4805 = extractelement <2 x i64> %4766, i64 1
  %4806 = icmp eq i64 %4805, 0
  br i1 %4806, label %4808, label %4807

4807:                                             ; preds = %4804
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %4808

4808:                                             ; preds = %4807, %4804
  %4809 = load <2 x double>, ptr %139, align 16, !tbaa !26
  br label %4810

4810:                                             ; preds = %4808, %4734
  %4811 = phi <2 x double> [ %4809, %4808 ], [ %4765, %4734 ]
  %4812 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %4813 = load <2 x double>, ptr %231, align 16, !tbaa !26
  %4814 = fadd <2 x double> %4813, splat (double -1.000000e+00)
  %4815 = fcmp oge <2 x double> %4812, %4814
  %4816 = select <2 x i1> %4815, <2 x i64> %3571, <2 x i64> zeroinitializer
  %4817 = icmp eq <2 x i64> %4816, zeroinitializer
  %4818 = select <2 x i1> %4817, <2 x double> %4811, <2 x double> splat (double 1.000000e+00)
  store <2 x double> %4818, ptr %139, align 16, !tbaa !26
  %4819 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4816)
  %4820 = icmp eq i64 %4819, 0
  br i1 %4820, label %524, label %4821

4821:                                             ; preds = %4810
  %4822 = extractelement <2 x i64> %4816, i64 0
  %4823 = icmp eq i64 %4822, 0
  br i1 %4823, label %4825, label %4824

4824:                                             ; preds = %4821
  store double 1.000000e+00, ptr %131, align 8, !tbaa !42
  br label %4825

4825:                                             ; preds = %4824, %4821
  %4826 = extractelement <2 x i64> %4816, i64 1
  %4827 = icmp eq i64 %4826, 0
  br i1 %4827, label %524, label %4828

4828:                                             ; preds = %4825
  store double 1.000000e+00, ptr %261, align 8, !tbaa !42
  br label %524

4829:                                             ; preds = %524, %529, %122
  %4830 = phi i64 [ 0, %122 ], [ 1, %529 ], [ 0, %524 ]
  ret i64 %4830
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
