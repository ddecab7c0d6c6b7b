; Made by scripts/lanes.py from sources of sha256 e51f68ede5a1e8f59f4b64f2bf926bbe9b91e81a0fcec579e94fbaf7efe2f1c0.
%struct.Piece = type { %struct.PieceGiven, [14 x <2 x double>], [14 x <2 x double>], [14 x <2 x double>], <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, %struct.Joint, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, %struct.Flash, <2 x double>, <2 x i64>, <2 x i64>, <2 x i64>, i64, [2 x ptr], ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr }
%struct.PieceGiven = type { <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double> }
%struct.Joint = type { <2 x double>, <2 x double>, <2 x double> }
%struct.Flash = type { <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define i64 @work_space_2(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
  %2 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %3 = load i64, ptr %2, align 8, !tbaa !4
  %4 = mul i64 %3, 15
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %6 = load i64, ptr %5, align 8, !tbaa !13
  %7 = mul i64 %6, 9
  %8 = add i64 %7, %4
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %10 = load i64, ptr %9, align 8, !tbaa !14
  %11 = shl i64 %8, 4
  %12 = add i64 %11, 3008
  %13 = mul i64 %12, %10
  %14 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %15 = load i64, ptr %14, align 8, !tbaa !15
  %16 = shl i64 %15, 4
  %17 = add i64 %16, 1696
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
  %6 = alloca <2 x double>, align 16
  %7 = alloca <2 x double>, align 16
  %8 = icmp eq i64 %2, 0
  br i1 %8, label %118, label %9

9:                                                ; preds = %3
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %11 = load i64, ptr %10, align 8, !tbaa !14
  %12 = getelementptr inbounds nuw i8, ptr %1, i64 592
  store i64 %11, ptr %12, align 16, !tbaa !16
  %13 = getelementptr inbounds nuw i8, ptr %1, i64 600
  store i64 %11, ptr %13, align 8, !tbaa !20
  %14 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %15 = load i64, ptr %14, align 8, !tbaa !4
  %16 = getelementptr inbounds nuw i8, ptr %1, i64 608
  store i64 %15, ptr %16, align 16, !tbaa !21
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %18 = load i64, ptr %17, align 8, !tbaa !13
  %19 = getelementptr inbounds nuw i8, ptr %1, i64 616
  store i64 %18, ptr %19, align 8, !tbaa !22
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %21 = load i64, ptr %20, align 8, !tbaa !23
  %22 = getelementptr inbounds nuw i8, ptr %1, i64 624
  store i64 %21, ptr %22, align 16, !tbaa !24
  %23 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %24 = load double, ptr %23, align 8, !tbaa !25
  %25 = insertelement <2 x double> poison, double %24, i64 0
  %26 = shufflevector <2 x double> %25, <2 x double> poison, <2 x i32> zeroinitializer
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 640
  store <2 x double> %26, ptr %27, align 16, !tbaa !26
  %28 = getelementptr inbounds nuw i8, ptr %1, i64 632
  store i64 0, ptr %28, align 8, !tbaa !27
  %29 = getelementptr inbounds nuw i8, ptr %1, i64 1616
  %30 = getelementptr inbounds nuw i8, ptr %1, i64 1608
  store ptr %29, ptr %30, align 8, !tbaa !28
  %31 = getelementptr inbounds %struct.Piece, ptr %29, i64 %11
  %32 = icmp sgt i64 %11, 0
  br i1 %32, label %33, label %101

33:                                               ; preds = %9
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 152
  %35 = add nsw i64 %15, 1
  br label %36

36:                                               ; preds = %36, %33
  %37 = phi ptr [ %31, %33 ], [ %98, %36 ]
  %38 = phi i64 [ 0, %33 ], [ %99, %36 ]
  %39 = load ptr, ptr %30, align 8, !tbaa !28
  %40 = getelementptr inbounds nuw %struct.Piece, ptr %39, i64 %38
  %41 = load ptr, ptr %34, align 8, !tbaa !29
  %42 = getelementptr inbounds nuw i64, ptr %41, i64 %38
  %43 = load i64, ptr %42, align 8, !tbaa !30
  %44 = getelementptr inbounds nuw i8, ptr %40, i64 2368
  store i64 %43, ptr %44, align 16, !tbaa !31
  %45 = getelementptr inbounds nuw i8, ptr %40, i64 2392
  %46 = getelementptr inbounds nuw i8, ptr %40, i64 2400
  %47 = getelementptr inbounds nuw i8, ptr %40, i64 2408
  %48 = getelementptr inbounds nuw i8, ptr %40, i64 2416
  %49 = getelementptr inbounds nuw i8, ptr %40, i64 2424
  %50 = getelementptr inbounds nuw i8, ptr %40, i64 2432
  %51 = getelementptr inbounds nuw i8, ptr %40, i64 2440
  %52 = getelementptr inbounds nuw i8, ptr %40, i64 2448
  %53 = getelementptr inbounds nuw i8, ptr %40, i64 2456
  %54 = getelementptr inbounds nuw i8, ptr %40, i64 2464
  %55 = getelementptr inbounds nuw i8, ptr %40, i64 2472
  store ptr %37, ptr %45, align 8, !tbaa !36
  %56 = getelementptr inbounds <2 x double>, ptr %37, i64 %15
  store ptr %56, ptr %46, align 8, !tbaa !36
  %57 = getelementptr inbounds <2 x double>, ptr %56, i64 %15
  store ptr %57, ptr %47, align 8, !tbaa !36
  %58 = getelementptr inbounds <2 x double>, ptr %57, i64 %15
  store ptr %58, ptr %48, align 8, !tbaa !36
  %59 = getelementptr inbounds <2 x double>, ptr %58, i64 %15
  store ptr %59, ptr %49, align 8, !tbaa !36
  %60 = getelementptr inbounds <2 x double>, ptr %59, i64 %15
  store ptr %60, ptr %50, align 8, !tbaa !36
  %61 = getelementptr inbounds <2 x double>, ptr %60, i64 %15
  store ptr %61, ptr %51, align 8, !tbaa !36
  %62 = getelementptr inbounds <2 x double>, ptr %61, i64 %15
  store ptr %62, ptr %52, align 8, !tbaa !36
  %63 = getelementptr inbounds <2 x double>, ptr %62, i64 %15
  store ptr %63, ptr %53, align 8, !tbaa !36
  %64 = getelementptr inbounds <2 x double>, ptr %63, i64 %15
  store ptr %64, ptr %54, align 8, !tbaa !36
  %65 = getelementptr inbounds <2 x double>, ptr %64, i64 %15
  store ptr %65, ptr %55, align 8, !tbaa !36
  %66 = getelementptr inbounds <2 x double>, ptr %65, i64 %15
  %67 = getelementptr inbounds nuw i8, ptr %40, i64 2480
  store ptr %66, ptr %67, align 16, !tbaa !37
  %68 = icmp eq i64 %43, 0
  %69 = select i1 %68, i64 0, i64 2
  %70 = shl i64 %35, %69
  %71 = getelementptr inbounds <2 x double>, ptr %66, i64 %70
  %72 = getelementptr inbounds nuw i8, ptr %40, i64 2488
  %73 = getelementptr inbounds nuw i8, ptr %40, i64 2496
  %74 = getelementptr inbounds nuw i8, ptr %40, i64 2504
  %75 = getelementptr inbounds nuw i8, ptr %40, i64 2512
  %76 = getelementptr inbounds nuw i8, ptr %40, i64 2520
  %77 = getelementptr inbounds nuw i8, ptr %40, i64 2528
  %78 = getelementptr inbounds nuw i8, ptr %40, i64 2536
  %79 = getelementptr inbounds nuw i8, ptr %40, i64 2544
  %80 = getelementptr inbounds nuw i8, ptr %40, i64 2552
  store ptr %71, ptr %72, align 8, !tbaa !36
  %81 = getelementptr <2 x double>, ptr %71, i64 %18
  %82 = getelementptr i8, ptr %81, i64 16
  store ptr %82, ptr %73, align 8, !tbaa !36
  %83 = getelementptr <2 x double>, ptr %82, i64 %18
  %84 = getelementptr i8, ptr %83, i64 16
  store ptr %84, ptr %74, align 8, !tbaa !36
  %85 = getelementptr <2 x double>, ptr %84, i64 %18
  %86 = getelementptr i8, ptr %85, i64 16
  store ptr %86, ptr %75, align 8, !tbaa !36
  %87 = getelementptr <2 x double>, ptr %86, i64 %18
  %88 = getelementptr i8, ptr %87, i64 16
  store ptr %88, ptr %76, align 8, !tbaa !36
  %89 = getelementptr <2 x double>, ptr %88, i64 %18
  %90 = getelementptr i8, ptr %89, i64 16
  store ptr %90, ptr %77, align 8, !tbaa !36
  %91 = getelementptr <2 x double>, ptr %90, i64 %18
  %92 = getelementptr i8, ptr %91, i64 16
  store ptr %92, ptr %78, align 8, !tbaa !36
  %93 = getelementptr <2 x double>, ptr %92, i64 %18
  %94 = getelementptr i8, ptr %93, i64 16
  store ptr %94, ptr %79, align 8, !tbaa !36
  %95 = getelementptr <2 x double>, ptr %94, i64 %18
  %96 = getelementptr i8, ptr %95, i64 16
  store ptr %96, ptr %80, align 8, !tbaa !36
  %97 = getelementptr <2 x double>, ptr %96, i64 %18
  %98 = getelementptr i8, ptr %97, i64 16
  %99 = add nuw nsw i64 %38, 1
  %100 = icmp eq i64 %99, %11
  br i1 %100, label %101, label %36, !llvm.loop !38

101:                                              ; preds = %36, %9
  %102 = phi ptr [ %31, %9 ], [ %98, %36 ]
  %103 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  store ptr %102, ptr %103, align 16, !tbaa !40
  %104 = load i64, ptr %0, align 8, !tbaa !41
  %105 = icmp sgt i64 %104, 0
  br i1 %105, label %106, label %107

106:                                              ; preds = %101
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #6
  br label %110

107:                                              ; preds = %101
  %108 = getelementptr inbounds nuw i8, ptr %1, i64 1424
  %109 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #6
  store i64 0, ptr %109, align 8, !tbaa !30
  store i64 0, ptr %108, align 8, !tbaa !30
  br label %110

110:                                              ; preds = %107, %106
  %111 = load i64, ptr %28, align 8, !tbaa !27
  %112 = load i64, ptr %0, align 8, !tbaa !41
  %113 = icmp slt i64 %111, %112
  br i1 %113, label %117, label %114

114:                                              ; preds = %110
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1) #6
  %115 = getelementptr inbounds nuw i8, ptr %1, i64 1416
  store i64 0, ptr %115, align 8, !tbaa !30
  %116 = getelementptr inbounds nuw i8, ptr %1, i64 1432
  store i64 0, ptr %116, align 8, !tbaa !30
  br label %118

117:                                              ; preds = %110
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1) #6
  br label %118

118:                                              ; preds = %114, %117, %3
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %120 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %121 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %122 = load i64, ptr %120, align 8, !tbaa !42
  %123 = load i64, ptr %121, align 8, !tbaa !43
  %124 = sub nsw i64 %122, %123
  %125 = icmp slt i64 %124, 4
  br i1 %125, label %6444, label %126

126:                                              ; preds = %118
  %127 = getelementptr inbounds nuw i8, ptr %1, i64 1584
  %128 = getelementptr inbounds nuw i8, ptr %1, i64 608
  %129 = getelementptr inbounds nuw i8, ptr %1, i64 616
  %130 = getelementptr inbounds nuw i8, ptr %1, i64 1504
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 216
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 1168
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 1184
  %135 = getelementptr inbounds nuw i8, ptr %1, i64 1248
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 1328
  %137 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 592
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 1608
  %140 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %141 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 632
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 1424
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 480
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 496
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 992
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 1296
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 1232
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 1040
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 416
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 1456
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1376
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 16
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 32
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 1488
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 600
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 1072
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 1136
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 1280
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 1008
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 1264
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 944
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 976
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 1392
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 352
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 368
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 1344
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 1440
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 400
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 528
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 304
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 288
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 272
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 224
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 240
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 208
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 1200
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 1360
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 624
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 432
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 1312
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 1104
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 1120
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 464
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 1056
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 1520
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %228 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %229 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %230 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 1568
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 544
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
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 1592
  br label %263

263:                                              ; preds = %541, %126
  %264 = phi i1 [ true, %126 ], [ %544, %541 ]
  %265 = phi i64 [ 0, %126 ], [ %542, %541 ]
  %266 = phi i1 [ true, %126 ], [ %543, %541 ]
  %267 = getelementptr inbounds nuw i64, ptr %119, i64 %265
  %268 = load i64, ptr %267, align 8, !tbaa !30
  %269 = icmp eq i64 %268, 0
  br i1 %269, label %539, label %270

270:                                              ; preds = %263
  %271 = getelementptr inbounds nuw [2 x double], ptr %127, i64 0, i64 %265
  %272 = load double, ptr %271, align 8, !tbaa !44
  %273 = fcmp oeq double %272, 0.000000e+00
  br i1 %273, label %539, label %274

274:                                              ; preds = %270
  %275 = load i64, ptr %128, align 16, !tbaa !21
  %276 = load i64, ptr %129, align 8, !tbaa !22
  %277 = getelementptr inbounds nuw [2 x i64], ptr %130, i64 0, i64 %265
  %278 = load i64, ptr %277, align 8, !tbaa !30
  %279 = load ptr, ptr %131, align 8, !tbaa !45
  %280 = mul nsw i64 %278, 40
  %281 = getelementptr inbounds i8, ptr %279, i64 %280
  %282 = getelementptr inbounds nuw double, ptr %132, i64 %265
  %283 = load double, ptr %282, align 8, !tbaa !44
  store double %283, ptr %281, align 8, !tbaa !44
  %284 = getelementptr inbounds nuw double, ptr %133, i64 %265
  %285 = load double, ptr %284, align 8, !tbaa !44
  %286 = getelementptr inbounds nuw i8, ptr %281, i64 8
  store double %285, ptr %286, align 8, !tbaa !44
  %287 = getelementptr inbounds nuw double, ptr %134, i64 %265
  %288 = load double, ptr %287, align 8, !tbaa !44
  %289 = getelementptr inbounds nuw i8, ptr %281, i64 16
  store double %288, ptr %289, align 8, !tbaa !44
  %290 = getelementptr inbounds nuw double, ptr %135, i64 %265
  %291 = load double, ptr %290, align 8, !tbaa !44
  %292 = getelementptr inbounds nuw i8, ptr %281, i64 24
  store double %291, ptr %292, align 8, !tbaa !44
  %293 = getelementptr inbounds nuw double, ptr %136, i64 %265
  %294 = load double, ptr %293, align 8, !tbaa !44
  %295 = getelementptr inbounds nuw i8, ptr %281, i64 32
  store double %294, ptr %295, align 8, !tbaa !44
  %296 = load i64, ptr %137, align 8, !tbaa !46
  %297 = icmp eq i64 %296, 0
  br i1 %297, label %523, label %298

298:                                              ; preds = %274
  %299 = load i64, ptr %138, align 16, !tbaa !16
  %300 = icmp sgt i64 %299, 0
  br i1 %300, label %301, label %523

301:                                              ; preds = %298
  %302 = load ptr, ptr %139, align 8, !tbaa !28
  %303 = load ptr, ptr %140, align 8, !tbaa !47
  %304 = mul nsw i64 %299, %278
  %305 = mul i64 %275, 3
  %306 = load ptr, ptr %141, align 8, !tbaa !48
  %307 = icmp sgt i64 %275, 0
  %308 = getelementptr inbounds nuw double, ptr %4, i64 %265
  %309 = getelementptr inbounds nuw double, ptr %5, i64 %265
  %310 = shl i64 %275, 4
  %311 = getelementptr inbounds nuw double, ptr %6, i64 %265
  %312 = icmp sgt i64 %276, 0
  %313 = getelementptr inbounds nuw double, ptr %7, i64 %265
  %314 = and i64 %276, 1
  %315 = icmp eq i64 %276, 1
  %316 = and i64 %276, 9223372036854775806
  %317 = icmp eq i64 %314, 0
  br label %318

318:                                              ; preds = %432, %301
  %319 = phi i64 [ 0, %301 ], [ %498, %432 ]
  %320 = getelementptr inbounds nuw %struct.Piece, ptr %302, i64 %319
  %321 = getelementptr inbounds nuw i8, ptr %320, i64 480
  %322 = getelementptr inbounds nuw double, ptr %321, i64 %265
  %323 = load double, ptr %322, align 8, !tbaa !44
  %324 = getelementptr inbounds nuw i8, ptr %320, i64 1248
  %325 = getelementptr inbounds nuw double, ptr %324, i64 %265
  %326 = load double, ptr %325, align 8, !tbaa !44
  %327 = add nsw i64 %319, %304
  %328 = mul i64 %305, %327
  %329 = getelementptr inbounds double, ptr %303, i64 %328
  %330 = mul nsw i64 %327, 40
  %331 = getelementptr inbounds i8, ptr %306, i64 %330
  br i1 %307, label %332, label %353

332:                                              ; preds = %318
  %333 = getelementptr inbounds nuw i8, ptr %320, i64 2400
  %334 = load ptr, ptr %333, align 16, !tbaa !49
  %335 = getelementptr inbounds nuw i8, ptr %320, i64 2368
  %336 = load i64, ptr %335, align 16, !tbaa !31
  %337 = getelementptr inbounds nuw i8, ptr %320, i64 176
  %338 = getelementptr inbounds nuw i8, ptr %320, i64 192
  %339 = getelementptr inbounds nuw i8, ptr %320, i64 208
  %340 = getelementptr inbounds nuw i8, ptr %320, i64 224
  %341 = getelementptr inbounds nuw i8, ptr %320, i64 48
  %342 = getelementptr inbounds nuw i8, ptr %320, i64 64
  %343 = getelementptr inbounds nuw i8, ptr %320, i64 80
  %344 = getelementptr inbounds nuw i8, ptr %320, i64 256
  %345 = getelementptr inbounds nuw i8, ptr %320, i64 1264
  %346 = getelementptr inbounds nuw i8, ptr %320, i64 2464
  %347 = load ptr, ptr %346, align 16, !tbaa !50
  %348 = getelementptr inbounds nuw i8, ptr %320, i64 2424
  %349 = load ptr, ptr %348, align 8, !tbaa !51
  %350 = getelementptr inbounds nuw double, ptr %349, i64 %265
  %351 = getelementptr double, ptr %329, i64 %275
  %352 = getelementptr i8, ptr %329, i64 %310
  br label %366

353:                                              ; preds = %397, %318
  %354 = phi double [ %326, %318 ], [ %415, %397 ]
  br i1 %312, label %355, label %432

355:                                              ; preds = %353
  %356 = getelementptr inbounds nuw i8, ptr %320, i64 2544
  %357 = load ptr, ptr %356, align 16, !tbaa !52
  %358 = getelementptr inbounds nuw double, ptr %357, i64 %265
  %359 = getelementptr inbounds nuw i8, ptr %320, i64 288
  %360 = getelementptr inbounds nuw double, ptr %359, i64 %265
  %361 = load double, ptr %360, align 8, !tbaa !44
  %362 = getelementptr inbounds nuw i8, ptr %320, i64 2496
  %363 = load ptr, ptr %362, align 16, !tbaa !53
  %364 = getelementptr inbounds nuw double, ptr %363, i64 %265
  %365 = load double, ptr %358, align 8, !tbaa !44
  br i1 %315, label %418, label %500

366:                                              ; preds = %397, %332
  %367 = phi double [ %326, %332 ], [ %415, %397 ]
  %368 = phi i64 [ 0, %332 ], [ %416, %397 ]
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #7
  %369 = getelementptr inbounds nuw <2 x double>, ptr %334, i64 %368
  %370 = load <2 x double>, ptr %369, align 16, !tbaa !26
  %371 = icmp slt i64 %368, %336
  br i1 %371, label %372, label %375

372:                                              ; preds = %366
  %373 = load <2 x double>, ptr %344, align 16, !tbaa !26
  %374 = fdiv <2 x double> %370, %373
  br label %397

375:                                              ; preds = %366
  %376 = load <2 x double>, ptr %337, align 16, !tbaa !26, !noalias !54
  %377 = load <2 x double>, ptr %338, align 16, !tbaa !26, !noalias !54
  %378 = load <2 x double>, ptr %339, align 16, !tbaa !26, !noalias !54
  %379 = load <2 x double>, ptr %340, align 16, !tbaa !26, !noalias !54
  %380 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %370, <2 x double> %379, <2 x double> %378)
  %381 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %370, <2 x double> %380, <2 x double> %377)
  %382 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %370, <2 x double> %381, <2 x double> %376)
  %383 = fmul <2 x double> %370, %382
  %384 = load <2 x double>, ptr %341, align 16, !tbaa !26, !noalias !54
  %385 = load <2 x double>, ptr %342, align 16, !tbaa !26, !noalias !54
  %386 = load <2 x double>, ptr %343, align 16, !tbaa !26, !noalias !54
  %387 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %383, <2 x double> %386, <2 x double> %385)
  %388 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %383, <2 x double> %387, <2 x double> %384)
  %389 = fdiv <2 x double> splat (double 1.000000e+00), %388
  %390 = fmul <2 x double> %386, %383
  %391 = fmul <2 x double> %390, splat (double 0x3FD5555555555555)
  %392 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %385, <2 x double> splat (double 5.000000e-01), <2 x double> %391)
  %393 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %383, <2 x double> %392, <2 x double> %384)
  %394 = fmul <2 x double> %383, %393
  %395 = fsub <2 x double> %370, %394
  %396 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %395, <2 x double> %389, <2 x double> %383)
  br label %397

397:                                              ; preds = %375, %372
  %398 = phi <2 x double> [ %374, %372 ], [ %396, %375 ]
  store <2 x double> %398, ptr %4, align 16, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %5) #7
  %399 = load <2 x double>, ptr %345, align 16, !tbaa !26
  %400 = getelementptr inbounds nuw <2 x double>, ptr %347, i64 %368
  %401 = load <2 x double>, ptr %400, align 16, !tbaa !26
  %402 = load <2 x double>, ptr %321, align 16
  %403 = fsub <2 x double> %399, %402
  %404 = select i1 %371, <2 x double> %402, <2 x double> %403
  %405 = fmul <2 x double> %401, %404
  store <2 x double> %405, ptr %5, align 16, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %6) #7
  %406 = fmul <2 x double> %370, %405
  store <2 x double> %406, ptr %6, align 16, !tbaa !26
  %407 = load double, ptr %308, align 8, !tbaa !44
  %408 = getelementptr inbounds nuw double, ptr %329, i64 %368
  store double %407, ptr %408, align 8, !tbaa !44
  %409 = getelementptr inbounds nuw <2 x double>, ptr %350, i64 %368
  %410 = load double, ptr %409, align 8, !tbaa !44
  %411 = getelementptr double, ptr %351, i64 %368
  store double %410, ptr %411, align 8, !tbaa !44
  %412 = load double, ptr %309, align 8, !tbaa !44
  %413 = getelementptr double, ptr %352, i64 %368
  store double %412, ptr %413, align 8, !tbaa !44
  %414 = load double, ptr %311, align 8, !tbaa !44
  %415 = fadd double %367, %414
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #7
  %416 = add nuw nsw i64 %368, 1
  %417 = icmp eq i64 %416, %275
  br i1 %417, label %353, label %366, !llvm.loop !57

418:                                              ; preds = %500, %355
  %419 = phi double [ poison, %355 ], [ %520, %500 ]
  %420 = phi double [ %365, %355 ], [ %515, %500 ]
  %421 = phi double [ %354, %355 ], [ %520, %500 ]
  %422 = phi i64 [ 0, %355 ], [ %513, %500 ]
  br i1 %317, label %432, label %423

423:                                              ; preds = %418
  %424 = getelementptr <2 x double>, ptr %358, i64 %422
  %425 = getelementptr i8, ptr %424, i64 16
  %426 = load double, ptr %425, align 8, !tbaa !44
  %427 = fsub double %426, %420
  %428 = fmul double %361, %427
  %429 = getelementptr inbounds nuw <2 x double>, ptr %364, i64 %422
  %430 = load double, ptr %429, align 8, !tbaa !44
  %431 = tail call double @llvm.fmuladd.f64(double %428, double %430, double %421)
  br label %432

432:                                              ; preds = %423, %418, %353
  %433 = phi double [ %354, %353 ], [ %419, %418 ], [ %431, %423 ]
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %7) #7
  %434 = getelementptr inbounds nuw i8, ptr %320, i64 336
  %435 = load <2 x double>, ptr %434, align 16, !tbaa !26
  %436 = getelementptr inbounds nuw i8, ptr %320, i64 48
  %437 = load <2 x double>, ptr %436, align 16, !tbaa !26
  %438 = getelementptr inbounds nuw i8, ptr %320, i64 64
  %439 = load <2 x double>, ptr %438, align 16, !tbaa !26
  %440 = getelementptr inbounds nuw i8, ptr %320, i64 80
  %441 = load <2 x double>, ptr %440, align 16, !tbaa !26
  %442 = fmul <2 x double> %435, %441
  %443 = fmul <2 x double> %442, splat (double 0x3FD5555555555555)
  %444 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %439, <2 x double> splat (double 5.000000e-01), <2 x double> %443)
  %445 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %435, <2 x double> %444, <2 x double> %437)
  %446 = fmul <2 x double> %435, %445
  store <2 x double> %446, ptr %7, align 16, !tbaa !26
  %447 = getelementptr inbounds nuw i8, ptr %320, i64 448
  %448 = getelementptr inbounds nuw double, ptr %447, i64 %265
  %449 = load double, ptr %448, align 8, !tbaa !44
  %450 = fsub double %449, %323
  %451 = load double, ptr %313, align 8, !tbaa !44
  %452 = getelementptr inbounds nuw i8, ptr %320, i64 256
  %453 = getelementptr inbounds nuw double, ptr %452, i64 %265
  %454 = load double, ptr %453, align 8, !tbaa !44
  %455 = fmul double %323, %454
  %456 = getelementptr inbounds nuw double, ptr %434, i64 %265
  %457 = load double, ptr %456, align 8, !tbaa !44
  %458 = fmul double %455, %457
  %459 = tail call double @llvm.fmuladd.f64(double %450, double %451, double %458)
  %460 = getelementptr inbounds nuw i8, ptr %320, i64 1152
  %461 = getelementptr inbounds nuw double, ptr %460, i64 %265
  %462 = load double, ptr %461, align 8, !tbaa !44
  %463 = getelementptr inbounds nuw i8, ptr %320, i64 1168
  %464 = getelementptr inbounds nuw double, ptr %463, i64 %265
  %465 = load double, ptr %464, align 8, !tbaa !44
  %466 = fsub double %462, %465
  %467 = fsub double %433, %459
  %468 = fsub double %466, %467
  %469 = fcmp ogt double %462, 0.000000e+00
  %470 = fneg double %462
  %471 = select i1 %469, double %462, double %470
  %472 = fcmp ogt double %465, 0.000000e+00
  %473 = fneg double %465
  %474 = select i1 %472, double %465, double %473
  %475 = fadd double %471, %474
  %476 = fcmp ogt double %468, 0.000000e+00
  %477 = fneg double %468
  %478 = select i1 %476, double %468, double %477
  %479 = fcmp ogt double %475, 1.000000e+00
  %480 = select i1 %479, double %475, double 1.000000e+00
  %481 = fdiv double %478, %480
  store double %481, ptr %331, align 8, !tbaa !44
  %482 = getelementptr inbounds nuw i8, ptr %320, i64 1136
  %483 = getelementptr inbounds nuw double, ptr %482, i64 %265
  %484 = load double, ptr %483, align 8, !tbaa !44
  %485 = getelementptr inbounds nuw i8, ptr %331, i64 8
  store double %484, ptr %485, align 8, !tbaa !44
  %486 = getelementptr inbounds nuw i8, ptr %320, i64 1088
  %487 = getelementptr inbounds nuw double, ptr %486, i64 %265
  %488 = load double, ptr %487, align 8, !tbaa !44
  %489 = getelementptr inbounds nuw i8, ptr %331, i64 16
  store double %488, ptr %489, align 8, !tbaa !44
  %490 = getelementptr inbounds nuw i8, ptr %320, i64 1104
  %491 = getelementptr inbounds nuw double, ptr %490, i64 %265
  %492 = load double, ptr %491, align 8, !tbaa !44
  %493 = getelementptr inbounds nuw i8, ptr %331, i64 24
  store double %492, ptr %493, align 8, !tbaa !44
  %494 = getelementptr inbounds nuw i8, ptr %320, i64 1072
  %495 = getelementptr inbounds nuw double, ptr %494, i64 %265
  %496 = load double, ptr %495, align 8, !tbaa !44
  %497 = getelementptr inbounds nuw i8, ptr %331, i64 32
  store double %496, ptr %497, align 8, !tbaa !44
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %7) #7
  %498 = add nuw nsw i64 %319, 1
  %499 = icmp eq i64 %498, %299
  br i1 %499, label %523, label %318, !llvm.loop !58

500:                                              ; preds = %355, %500
  %501 = phi double [ %515, %500 ], [ %365, %355 ]
  %502 = phi double [ %520, %500 ], [ %354, %355 ]
  %503 = phi i64 [ %513, %500 ], [ 0, %355 ]
  %504 = phi i64 [ %521, %500 ], [ 0, %355 ]
  %505 = or disjoint i64 %503, 1
  %506 = getelementptr inbounds nuw <2 x double>, ptr %358, i64 %505
  %507 = load double, ptr %506, align 8, !tbaa !44
  %508 = fsub double %507, %501
  %509 = fmul double %361, %508
  %510 = getelementptr inbounds nuw <2 x double>, ptr %364, i64 %503
  %511 = load double, ptr %510, align 8, !tbaa !44
  %512 = tail call double @llvm.fmuladd.f64(double %509, double %511, double %502)
  %513 = add nuw nsw i64 %503, 2
  %514 = getelementptr inbounds nuw <2 x double>, ptr %358, i64 %513
  %515 = load double, ptr %514, align 8, !tbaa !44
  %516 = fsub double %515, %507
  %517 = fmul double %361, %516
  %518 = getelementptr inbounds nuw <2 x double>, ptr %364, i64 %505
  %519 = load double, ptr %518, align 8, !tbaa !44
  %520 = tail call double @llvm.fmuladd.f64(double %517, double %519, double %512)
  %521 = add i64 %504, 2
  %522 = icmp eq i64 %521, %316
  br i1 %522, label %418, label %500, !llvm.loop !59

523:                                              ; preds = %432, %274, %298
  %524 = load i64, ptr %142, align 8, !tbaa !27
  %525 = load i64, ptr %0, align 8, !tbaa !41
  %526 = icmp slt i64 %524, %525
  br i1 %526, label %529, label %527

527:                                              ; preds = %523
  store i64 0, ptr %267, align 8, !tbaa !30
  %528 = getelementptr inbounds nuw i64, ptr %143, i64 %265
  store i64 0, ptr %528, align 8, !tbaa !30
  br label %536

529:                                              ; preds = %523
  %530 = trunc nuw nsw i64 %265 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef %530) #6
  %531 = load i64, ptr %267, align 8, !tbaa !30
  %532 = icmp eq i64 %531, 0
  br i1 %532, label %536, label %533

533:                                              ; preds = %529
  %534 = load double, ptr %271, align 8, !tbaa !44
  %535 = fcmp oeq double %534, 0.000000e+00
  br label %536

536:                                              ; preds = %527, %533, %529
  %537 = phi i1 [ true, %529 ], [ %535, %533 ], [ true, %527 ]
  %538 = and i1 %266, %537
  br label %539

539:                                              ; preds = %536, %270, %263
  %540 = phi i1 [ %266, %270 ], [ %538, %536 ], [ %266, %263 ]
  br i1 %264, label %541, label %545

541:                                              ; preds = %539, %546
  %542 = phi i64 [ 1, %539 ], [ 0, %546 ]
  %543 = phi i1 [ %540, %539 ], [ true, %546 ]
  %544 = xor i1 %264, true
  br label %263, !llvm.loop !60

545:                                              ; preds = %539
  br i1 %540, label %551, label %546

546:                                              ; preds = %6425, %6443, %6440, %4670, %5033, %545
  %547 = load i64, ptr %120, align 8, !tbaa !42
  %548 = load i64, ptr %121, align 8, !tbaa !43
  %549 = sub nsw i64 %547, %548
  %550 = icmp slt i64 %549, 4
  br i1 %550, label %6444, label %541

551:                                              ; preds = %545
  %552 = load <2 x i64>, ptr %119, align 16, !tbaa !26
  %553 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %552)
  %554 = icmp eq i64 %553, 0
  br i1 %554, label %6444, label %555

555:                                              ; preds = %551
  %556 = load <2 x i64>, ptr %143, align 16, !tbaa !26
  %557 = and <2 x i64> %556, %552
  %558 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %557)
  %559 = icmp eq i64 %558, 0
  %560 = load i64, ptr %166, align 8, !tbaa !20
  br i1 %559, label %1459, label %561

561:                                              ; preds = %555
  %562 = load <2 x double>, ptr %144, align 16, !tbaa !26
  %563 = load <2 x double>, ptr %145, align 16, !tbaa !26
  %564 = load <2 x double>, ptr %146, align 16, !tbaa !26
  %565 = load <2 x double>, ptr %147, align 16, !tbaa !26
  %566 = fsub <2 x double> %564, %565
  %567 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %563, <2 x double> %566, <2 x double> %562)
  %568 = load <2 x double>, ptr %148, align 16, !tbaa !26
  %569 = fcmp une <2 x double> %568, splat (double 2.000000e+00)
  %570 = select <2 x i1> %569, <2 x double> splat (double 1.000000e+00), <2 x double> splat (double 5.000000e-01)
  %571 = fmul <2 x double> %567, %570
  %572 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %573 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %574 = fcmp olt <2 x double> %572, %573
  %575 = select <2 x i1> %574, <2 x double> %572, <2 x double> %573
  %576 = fcmp olt <2 x double> %575, %571
  %577 = select <2 x i1> %576, <2 x double> %575, <2 x double> %571
  %578 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %579 = fmul <2 x double> %578, splat (double 5.000000e-01)
  %580 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %581 = load <2 x i64>, ptr %153, align 16, !tbaa !26
  %582 = fneg <2 x double> %579
  %583 = icmp eq <2 x i64> %581, zeroinitializer
  %584 = select <2 x i1> %583, <2 x double> %582, <2 x double> %579
  %585 = fadd <2 x double> %580, %584
  %586 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %587 = fsub <2 x double> %585, %586
  %588 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %589 = select <2 x i1> %583, <2 x double> zeroinitializer, <2 x double> %588
  %590 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %591 = fsub <2 x double> %589, %590
  %592 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %593 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %594 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %595 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %594, <2 x double> %586, <2 x double> %593)
  %596 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %597 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %592, <2 x double> %595, <2 x double> %596)
  %598 = fdiv <2 x double> %591, %597
  %599 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %600 = fsub <2 x double> %586, %599
  %601 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %602 = fdiv <2 x double> %600, %601
  %603 = fsub <2 x double> %598, %602
  %604 = fdiv <2 x double> %603, %601
  %605 = fdiv <2 x double> %587, %598
  %606 = load <2 x i64>, ptr %162, align 16, !tbaa !26
  %607 = load <2 x i64>, ptr %163, align 16, !tbaa !26
  %608 = or <2 x i64> %607, %606
  %609 = icmp eq <2 x i64> %608, zeroinitializer
  %610 = select <2 x i1> %609, <2 x double> %604, <2 x double> zeroinitializer
  %611 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %610, <2 x double> %605, <2 x double> %598)
  %612 = fdiv <2 x double> %587, %611
  %613 = fcmp ule <2 x double> %612, zeroinitializer
  %614 = select <2 x i1> %613, <2 x double> %605, <2 x double> %612
  %615 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %616 = fcmp une <2 x double> %615, zeroinitializer
  %617 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %618 = fcmp une <2 x double> %617, zeroinitializer
  %619 = fcmp ule <2 x double> %588, zeroinitializer
  %620 = or <2 x i1> %619, %616
  %621 = fcmp ule <2 x double> %605, zeroinitializer
  %622 = or <2 x i1> %621, %620
  %623 = or <2 x i1> %618, %622
  %624 = select <2 x i1> %623, <2 x double> splat (double 1.000000e+09), <2 x double> %614
  %625 = icmp sgt i64 %560, 0
  br i1 %625, label %626, label %694

626:                                              ; preds = %561
  %627 = load ptr, ptr %139, align 8, !tbaa !28
  %628 = fmul <2 x double> %601, splat (double 3.000000e+00)
  br label %629

629:                                              ; preds = %626, %629
  %630 = phi <2 x double> [ %624, %626 ], [ %691, %629 ]
  %631 = phi i64 [ 0, %626 ], [ %692, %629 ]
  %632 = getelementptr inbounds nuw %struct.Piece, ptr %627, i64 %631
  %633 = getelementptr inbounds nuw i8, ptr %632, i64 1072
  %634 = load <2 x double>, ptr %633, align 16, !tbaa !26
  %635 = getelementptr inbounds nuw i8, ptr %632, i64 464
  %636 = load <2 x double>, ptr %635, align 16, !tbaa !26
  %637 = fsub <2 x double> %634, %636
  %638 = getelementptr inbounds nuw i8, ptr %632, i64 304
  %639 = load <2 x double>, ptr %638, align 16, !tbaa !26
  %640 = fmul <2 x double> %637, %639
  %641 = getelementptr inbounds nuw i8, ptr %632, i64 496
  %642 = load <2 x double>, ptr %641, align 16, !tbaa !26
  %643 = getelementptr inbounds nuw i8, ptr %632, i64 1136
  %644 = load <2 x double>, ptr %643, align 16, !tbaa !26
  %645 = fsub <2 x double> %642, %644
  %646 = getelementptr inbounds nuw i8, ptr %632, i64 2320
  %647 = load <2 x i64>, ptr %646, align 16, !tbaa !26
  %648 = getelementptr inbounds nuw i8, ptr %632, i64 2144
  %649 = load <2 x double>, ptr %648, align 16, !tbaa !26
  %650 = fcmp une <2 x double> %649, splat (double 1.000000e+00)
  %651 = select <2 x i1> %650, <2 x double> %640, <2 x double> %645
  %652 = getelementptr inbounds nuw i8, ptr %632, i64 1088
  %653 = load <2 x double>, ptr %652, align 16, !tbaa !26
  %654 = icmp eq <2 x i64> %647, zeroinitializer
  %655 = select <2 x i1> %654, <2 x double> %653, <2 x double> %651
  %656 = getelementptr inbounds nuw i8, ptr %632, i64 1616
  %657 = load <2 x double>, ptr %656, align 16, !tbaa !26
  %658 = getelementptr inbounds nuw i8, ptr %632, i64 1632
  %659 = load <2 x double>, ptr %658, align 16, !tbaa !26
  %660 = fadd <2 x double> %657, %659
  %661 = getelementptr inbounds nuw i8, ptr %632, i64 2112
  %662 = load <2 x double>, ptr %661, align 16, !tbaa !26
  %663 = fdiv <2 x double> %662, %601
  %664 = select <2 x i1> %654, <2 x double> %663, <2 x double> zeroinitializer
  %665 = fsub <2 x double> %660, %664
  %666 = fdiv <2 x double> %655, %665
  %667 = getelementptr inbounds nuw i8, ptr %632, i64 1312
  %668 = load <2 x double>, ptr %667, align 16, !tbaa !26
  %669 = fsub <2 x double> %668, %653
  %670 = fdiv <2 x double> %669, %601
  %671 = getelementptr inbounds nuw i8, ptr %632, i64 2336
  %672 = load <2 x i64>, ptr %671, align 16, !tbaa !26
  %673 = or <2 x i64> %672, %647
  %674 = fcmp ule <2 x double> %666, %628
  %675 = fsub <2 x double> %665, %670
  %676 = icmp eq <2 x i64> %673, zeroinitializer
  %677 = select <2 x i1> %674, <2 x i1> %676, <2 x i1> zeroinitializer
  %678 = select <2 x i1> %677, <2 x double> %675, <2 x double> zeroinitializer
  %679 = fdiv <2 x double> %666, %601
  %680 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %678, <2 x double> %679, <2 x double> %665)
  %681 = fdiv <2 x double> %655, %680
  %682 = fcmp ule <2 x double> %681, zeroinitializer
  %683 = select <2 x i1> %682, <2 x double> %666, <2 x double> %681
  %684 = fcmp ule <2 x double> %655, zeroinitializer
  %685 = fcmp ule <2 x double> %665, zeroinitializer
  %686 = or <2 x i1> %684, %685
  %687 = fcmp ogt <2 x double> %683, splat (double 1.000000e-03)
  %688 = select <2 x i1> %687, <2 x double> %683, <2 x double> splat (double 1.000000e-03)
  %689 = select <2 x i1> %686, <2 x double> splat (double 1.000000e+09), <2 x double> %688
  %690 = fcmp olt <2 x double> %630, %689
  %691 = select <2 x i1> %690, <2 x double> %630, <2 x double> %689
  %692 = add nuw nsw i64 %631, 1
  %693 = icmp eq i64 %692, %560
  br i1 %693, label %694, label %629, !llvm.loop !61

694:                                              ; preds = %629, %561
  %695 = phi <2 x double> [ %624, %561 ], [ %691, %629 ]
  %696 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %697 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %698 = fadd <2 x double> %696, %697
  %699 = fsub <2 x double> %698, %564
  %700 = fmul <2 x double> %695, splat (double 1.050000e+00)
  %701 = fcmp ugt <2 x double> %699, %700
  %702 = select <2 x i1> %701, <2 x double> %695, <2 x double> %699
  %703 = fmul <2 x double> %577, splat (double 0x3FF000010C6F7A0B)
  %704 = fcmp ole <2 x double> %702, %703
  %705 = load <2 x double>, ptr %169, align 16, !tbaa !26
  %706 = fcmp ogt <2 x double> %705, %577
  %707 = select <2 x i1> %706, <2 x double> %705, <2 x double> %577
  %708 = icmp ne <2 x i64> %557, zeroinitializer
  %709 = select <2 x i1> %704, <2 x i1> %708, <2 x i1> zeroinitializer
  %710 = select <2 x i1> %709, <2 x double> %707, <2 x double> %705
  store <2 x double> %710, ptr %169, align 16, !tbaa !26
  %711 = fmul <2 x double> %577, splat (double 2.000000e+00)
  %712 = fcmp uge <2 x double> %702, %711
  %713 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %714 = fcmp une <2 x double> %713, zeroinitializer
  %715 = or <2 x i1> %714, %712
  %716 = fmul <2 x double> %702, splat (double 5.000000e-01)
  %717 = select <2 x i1> %715, <2 x double> %577, <2 x double> %716
  %718 = select <2 x i1> %704, <2 x double> %702, <2 x double> %717
  %719 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %720 = icmp eq <2 x i64> %557, zeroinitializer
  %721 = select <2 x i1> %720, <2 x double> %719, <2 x double> %718
  store <2 x double> %721, ptr %170, align 16, !tbaa !26
  %722 = fdiv <2 x double> splat (double 1.000000e+00), %721
  %723 = fneg <2 x double> %722
  %724 = fdiv <2 x double> %721, %601
  %725 = fadd <2 x double> %724, splat (double 1.000000e+00)
  %726 = fdiv <2 x double> splat (double 1.000000e+00), %725
  %727 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %724, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %728 = fmul <2 x double> %727, %726
  %729 = fmul <2 x double> %722, %728
  %730 = fneg <2 x double> %725
  %731 = fmul <2 x double> %722, %730
  %732 = fmul <2 x double> %724, %724
  %733 = fmul <2 x double> %732, %726
  %734 = fmul <2 x double> %722, %733
  %735 = fmul <2 x double> %721, %725
  %736 = icmp eq <2 x i64> %606, zeroinitializer
  %737 = select <2 x i1> %736, <2 x double> %729, <2 x double> %722
  %738 = select <2 x i1> %736, <2 x double> %731, <2 x double> %723
  %739 = select <2 x i1> %736, <2 x double> %734, <2 x double> zeroinitializer
  %740 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %741 = select <2 x i1> %720, <2 x double> %740, <2 x double> %737
  store <2 x double> %741, ptr %172, align 16, !tbaa !26
  %742 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %743 = select <2 x i1> %720, <2 x double> %742, <2 x double> %738
  store <2 x double> %743, ptr %173, align 16, !tbaa !26
  %744 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %745 = select <2 x i1> %720, <2 x double> %744, <2 x double> %739
  store <2 x double> %745, ptr %174, align 16, !tbaa !26
  %746 = select <2 x i1> %736, <2 x double> %724, <2 x double> zeroinitializer
  %747 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %600, <2 x double> %586)
  %748 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %749 = select <2 x i1> %720, <2 x double> %748, <2 x double> %747
  %750 = load <2 x double>, ptr %234, align 16, !tbaa !26
  %751 = load <2 x double>, ptr %235, align 16, !tbaa !26
  %752 = fsub <2 x double> %750, %751
  %753 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %752, <2 x double> %750)
  %754 = load <2 x double>, ptr %233, align 16, !tbaa !26
  %755 = select <2 x i1> %720, <2 x double> %754, <2 x double> %753
  store <2 x double> %755, ptr %233, align 16, !tbaa !26
  %756 = load <2 x double>, ptr %237, align 16, !tbaa !26
  %757 = load <2 x double>, ptr %238, align 16, !tbaa !26
  %758 = fsub <2 x double> %756, %757
  %759 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %758, <2 x double> %756)
  %760 = load <2 x double>, ptr %236, align 16, !tbaa !26
  %761 = select <2 x i1> %720, <2 x double> %760, <2 x double> %759
  store <2 x double> %761, ptr %236, align 16, !tbaa !26
  %762 = load <2 x double>, ptr %240, align 16, !tbaa !26
  %763 = load <2 x double>, ptr %241, align 16, !tbaa !26
  %764 = fsub <2 x double> %762, %763
  %765 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %764, <2 x double> %762)
  %766 = load <2 x double>, ptr %239, align 16, !tbaa !26
  %767 = select <2 x i1> %720, <2 x double> %766, <2 x double> %765
  store <2 x double> %767, ptr %239, align 16, !tbaa !26
  %768 = load <2 x double>, ptr %243, align 16, !tbaa !26
  %769 = load <2 x double>, ptr %244, align 16, !tbaa !26
  %770 = fsub <2 x double> %768, %769
  %771 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %770, <2 x double> %768)
  %772 = load <2 x double>, ptr %242, align 16, !tbaa !26
  %773 = select <2 x i1> %720, <2 x double> %772, <2 x double> %771
  store <2 x double> %773, ptr %242, align 16, !tbaa !26
  %774 = load <2 x double>, ptr %246, align 16, !tbaa !26
  %775 = load <2 x double>, ptr %247, align 16, !tbaa !26
  %776 = fsub <2 x double> %774, %775
  %777 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %776, <2 x double> %774)
  %778 = load <2 x double>, ptr %245, align 16, !tbaa !26
  %779 = select <2 x i1> %720, <2 x double> %778, <2 x double> %777
  store <2 x double> %779, ptr %245, align 16, !tbaa !26
  %780 = fdiv <2 x double> %735, %727
  %781 = load <2 x i64>, ptr %153, align 16, !tbaa !26
  %782 = icmp eq <2 x i64> %781, zeroinitializer
  %783 = select <2 x i1> %782, <2 x double> zeroinitializer, <2 x double> %588
  %784 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %785 = fsub <2 x double> %783, %784
  %786 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %787 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %594, <2 x double> %786, <2 x double> %593)
  %788 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %592, <2 x double> %787, <2 x double> %596)
  %789 = fdiv <2 x double> %785, %788
  %790 = load <2 x i64>, ptr %163, align 16, !tbaa !26
  %791 = load <2 x i64>, ptr %162, align 16, !tbaa !26
  %792 = or <2 x i64> %791, %790
  %793 = and <2 x i64> %792, %557
  %794 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %721, <2 x double> %789, <2 x double> %786)
  %795 = icmp eq <2 x i64> %793, zeroinitializer
  %796 = select <2 x i1> %618, <2 x i1> splat (i1 true), <2 x i1> %795
  %797 = select <2 x i1> %796, <2 x double> %749, <2 x double> %794
  store <2 x double> %797, ptr %175, align 16, !tbaa !26
  %798 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %799 = select <2 x i1> %720, <2 x double> %798, <2 x double> %785
  store <2 x double> %799, ptr %176, align 16, !tbaa !26
  %800 = xor <2 x i64> %791, splat (i64 -1)
  %801 = and <2 x i64> %790, %800
  store <2 x i64> %801, ptr %163, align 16, !tbaa !26
  %802 = load i64, ptr %166, align 8, !tbaa !20
  %803 = icmp sgt i64 %802, 0
  br i1 %803, label %806, label %1446

804:                                              ; preds = %1029
  %805 = icmp sgt i64 %1031, 0
  br i1 %805, label %1057, label %1446

806:                                              ; preds = %694, %1029
  %807 = phi i64 [ %1030, %1029 ], [ 0, %694 ]
  %808 = load ptr, ptr %139, align 8, !tbaa !28
  %809 = getelementptr inbounds nuw %struct.Piece, ptr %808, i64 %807
  %810 = getelementptr inbounds nuw i8, ptr %809, i64 2336
  %811 = load <2 x i64>, ptr %810, align 16, !tbaa !26
  %812 = icmp eq <2 x i64> %811, zeroinitializer
  %813 = select <2 x i1> %812, <2 x double> %729, <2 x double> %722
  %814 = select <2 x i1> %812, <2 x double> %731, <2 x double> %723
  %815 = select <2 x i1> %812, <2 x double> %734, <2 x double> zeroinitializer
  %816 = select <2 x i1> %812, <2 x double> %780, <2 x double> %721
  %817 = getelementptr inbounds nuw i8, ptr %809, i64 1504
  %818 = load <2 x double>, ptr %817, align 16, !tbaa !26
  %819 = select <2 x i1> %720, <2 x double> %818, <2 x double> %813
  store <2 x double> %819, ptr %817, align 16, !tbaa !26
  %820 = getelementptr inbounds nuw i8, ptr %809, i64 1520
  %821 = load <2 x double>, ptr %820, align 16, !tbaa !26
  %822 = select <2 x i1> %720, <2 x double> %821, <2 x double> %814
  store <2 x double> %822, ptr %820, align 16, !tbaa !26
  %823 = getelementptr inbounds nuw i8, ptr %809, i64 1536
  %824 = load <2 x double>, ptr %823, align 16, !tbaa !26
  %825 = select <2 x i1> %720, <2 x double> %824, <2 x double> %815
  store <2 x double> %825, ptr %823, align 16, !tbaa !26
  %826 = getelementptr inbounds nuw i8, ptr %809, i64 1552
  %827 = load <2 x double>, ptr %826, align 16, !tbaa !26
  %828 = select <2 x i1> %720, <2 x double> %827, <2 x double> %816
  store <2 x double> %828, ptr %826, align 16, !tbaa !26
  %829 = select <2 x i1> %812, <2 x double> %724, <2 x double> zeroinitializer
  %830 = getelementptr inbounds nuw i8, ptr %809, i64 832
  %831 = getelementptr inbounds nuw i8, ptr %809, i64 1056
  %832 = getelementptr inbounds nuw i8, ptr %809, i64 1280
  br label %1033

833:                                              ; preds = %1033
  %834 = getelementptr inbounds nuw i8, ptr %809, i64 1632
  %835 = getelementptr inbounds nuw i8, ptr %809, i64 976
  %836 = load <2 x double>, ptr %835, align 16, !tbaa !26
  %837 = fcmp ogt <2 x double> %836, zeroinitializer
  %838 = select <2 x i1> %837, <2 x double> %836, <2 x double> zeroinitializer
  %839 = load <2 x double>, ptr %834, align 16, !tbaa !26
  %840 = select <2 x i1> %720, <2 x double> %839, <2 x double> %838
  store <2 x double> %840, ptr %834, align 16, !tbaa !26
  %841 = getelementptr inbounds nuw i8, ptr %809, i64 1568
  %842 = load <2 x double>, ptr %841, align 16, !tbaa !26
  %843 = select <2 x i1> %720, <2 x double> %842, <2 x double> %829
  store <2 x double> %843, ptr %841, align 16, !tbaa !26
  %844 = load <2 x double>, ptr %820, align 16, !tbaa !26
  %845 = getelementptr inbounds nuw i8, ptr %809, i64 288
  %846 = load <2 x double>, ptr %845, align 16, !tbaa !26
  %847 = fmul <2 x double> %844, %846
  %848 = load <2 x double>, ptr %823, align 16, !tbaa !26
  %849 = fmul <2 x double> %846, %848
  %850 = getelementptr inbounds nuw i8, ptr %809, i64 2544
  %851 = load ptr, ptr %850, align 16, !tbaa !52
  %852 = getelementptr inbounds nuw i8, ptr %809, i64 2552
  %853 = load ptr, ptr %852, align 8, !tbaa !62
  %854 = load i64, ptr %129, align 8, !tbaa !22
  %855 = icmp sgt i64 %854, 0
  br i1 %855, label %856, label %887

856:                                              ; preds = %833
  %857 = getelementptr inbounds nuw i8, ptr %809, i64 2496
  %858 = getelementptr inbounds nuw i8, ptr %809, i64 2504
  %859 = getelementptr inbounds nuw i8, ptr %809, i64 2512
  br label %860

860:                                              ; preds = %856, %860
  %861 = phi i64 [ 0, %856 ], [ %862, %860 ]
  %862 = add nuw nsw i64 %861, 1
  %863 = getelementptr inbounds nuw <2 x double>, ptr %851, i64 %862
  %864 = load <2 x double>, ptr %863, align 16, !tbaa !26
  %865 = getelementptr inbounds nuw <2 x double>, ptr %851, i64 %861
  %866 = load <2 x double>, ptr %865, align 16, !tbaa !26
  %867 = fsub <2 x double> %864, %866
  %868 = load ptr, ptr %857, align 16, !tbaa !53
  %869 = getelementptr inbounds nuw <2 x double>, ptr %868, i64 %861
  %870 = load <2 x double>, ptr %869, align 16, !tbaa !26
  %871 = fmul <2 x double> %867, %870
  %872 = getelementptr inbounds nuw <2 x double>, ptr %853, i64 %862
  %873 = load <2 x double>, ptr %872, align 16, !tbaa !26
  %874 = getelementptr inbounds nuw <2 x double>, ptr %853, i64 %861
  %875 = load <2 x double>, ptr %874, align 16, !tbaa !26
  %876 = fsub <2 x double> %873, %875
  %877 = load ptr, ptr %858, align 8, !tbaa !63
  %878 = getelementptr inbounds nuw <2 x double>, ptr %877, i64 %861
  %879 = load <2 x double>, ptr %878, align 16, !tbaa !26
  %880 = fmul <2 x double> %876, %879
  %881 = fmul <2 x double> %849, %880
  %882 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %847, <2 x double> %871, <2 x double> %881)
  %883 = load ptr, ptr %859, align 16, !tbaa !64
  %884 = getelementptr inbounds nuw <2 x double>, ptr %883, i64 %861
  store <2 x double> %882, ptr %884, align 16, !tbaa !26
  %885 = load i64, ptr %129, align 8, !tbaa !22
  %886 = icmp slt i64 %862, %885
  br i1 %886, label %860, label %887, !llvm.loop !65

887:                                              ; preds = %860, %833
  %888 = getelementptr inbounds nuw i8, ptr %809, i64 512
  %889 = load <2 x double>, ptr %888, align 16, !tbaa !26
  %890 = fcmp ogt <2 x double> %889, zeroinitializer
  %891 = bitcast <2 x i1> %890 to i2
  %892 = icmp eq i2 %891, 0
  br i1 %892, label %893, label %897

893:                                              ; preds = %887
  %894 = getelementptr inbounds nuw i8, ptr %809, i64 2112
  %895 = load <2 x double>, ptr %894, align 16, !tbaa !26
  %896 = select <2 x i1> %720, <2 x double> %895, <2 x double> zeroinitializer
  store <2 x double> %896, ptr %894, align 16, !tbaa !26
  br label %1029

897:                                              ; preds = %887
  %898 = getelementptr inbounds nuw i8, ptr %809, i64 176
  %899 = load <2 x double>, ptr %898, align 16, !tbaa !26
  %900 = getelementptr inbounds nuw i8, ptr %809, i64 192
  %901 = load <2 x double>, ptr %900, align 16, !tbaa !26
  %902 = getelementptr inbounds nuw i8, ptr %809, i64 208
  %903 = load <2 x double>, ptr %902, align 16, !tbaa !26
  %904 = getelementptr inbounds nuw i8, ptr %809, i64 224
  %905 = load <2 x double>, ptr %904, align 16, !tbaa !26
  %906 = getelementptr inbounds nuw i8, ptr %809, i64 480
  %907 = load <2 x double>, ptr %906, align 16, !tbaa !26
  %908 = getelementptr inbounds nuw i8, ptr %809, i64 528
  %909 = load <2 x double>, ptr %908, align 16, !tbaa !26
  %910 = getelementptr inbounds nuw i8, ptr %809, i64 544
  %911 = load <2 x double>, ptr %910, align 16, !tbaa !26
  %912 = getelementptr inbounds nuw i8, ptr %809, i64 560
  %913 = load <2 x double>, ptr %912, align 16, !tbaa !26
  %914 = fmul <2 x double> %901, %913
  %915 = fmul <2 x double> %905, %913
  %916 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %917 = fneg <2 x double> %916
  %918 = fdiv <2 x double> %917, %909
  %919 = fcmp ogt <2 x double> %918, splat (double -7.000000e+02)
  %920 = select <2 x i1> %919, <2 x double> %918, <2 x double> splat (double -7.000000e+02)
  %921 = fcmp olt <2 x double> %920, splat (double 7.000000e+02)
  %922 = select <2 x i1> %921, <2 x double> %920, <2 x double> splat (double 7.000000e+02)
  %923 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %922, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %924 = fadd <2 x double> %923, splat (double 0xC338000000000000)
  %925 = fneg <2 x double> %924
  %926 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %925, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %922)
  %927 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %925, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %926)
  %928 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %927, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %929 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %928, <2 x double> %927, <2 x double> splat (double 0x3E5AE64567F544E4))
  %930 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %929, <2 x double> %927, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %931 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %930, <2 x double> %927, <2 x double> splat (double 0x3EC71DE3A556C734))
  %932 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %931, <2 x double> %927, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %933 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %932, <2 x double> %927, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %934 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %933, <2 x double> %927, <2 x double> splat (double 0x3F56C16C16C16C17))
  %935 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %934, <2 x double> %927, <2 x double> splat (double 0x3F81111111111111))
  %936 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %935, <2 x double> %927, <2 x double> splat (double 0x3FA5555555555555))
  %937 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %936, <2 x double> %927, <2 x double> splat (double 0x3FC5555555555555))
  %938 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %937, <2 x double> %927, <2 x double> splat (double 5.000000e-01))
  %939 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %938, <2 x double> %927, <2 x double> splat (double 1.000000e+00))
  %940 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %939, <2 x double> %927, <2 x double> splat (double 1.000000e+00))
  %941 = fmul <2 x double> %899, %913
  %942 = fmul <2 x double> %903, %913
  %943 = fmul <2 x double> %911, %913
  %944 = bitcast <2 x double> %923 to <2 x i64>
  %945 = shl <2 x i64> %944, splat (i64 52)
  %946 = bitcast <2 x double> %940 to <2 x i64>
  %947 = add <2 x i64> %945, %946
  %948 = bitcast <2 x i64> %947 to <2 x double>
  %949 = fsub <2 x double> splat (double 1.000000e+00), %948
  %950 = getelementptr inbounds nuw i8, ptr %809, i64 1264
  %951 = load <2 x double>, ptr %950, align 16, !tbaa !26
  %952 = fsub <2 x double> %951, %907
  %953 = getelementptr inbounds nuw i8, ptr %809, i64 2400
  %954 = load ptr, ptr %953, align 16, !tbaa !49
  %955 = getelementptr inbounds nuw i8, ptr %809, i64 2408
  %956 = load ptr, ptr %955, align 8, !tbaa !66
  %957 = getelementptr inbounds nuw i8, ptr %809, i64 2424
  %958 = load ptr, ptr %957, align 8, !tbaa !51
  %959 = getelementptr inbounds nuw i8, ptr %809, i64 2464
  %960 = load ptr, ptr %959, align 16, !tbaa !50
  %961 = load <2 x double>, ptr %841, align 16, !tbaa !26
  %962 = fmul <2 x double> %961, splat (double 5.000000e-01)
  %963 = getelementptr inbounds nuw i8, ptr %809, i64 2416
  %964 = load ptr, ptr %963, align 16, !tbaa !67
  %965 = getelementptr inbounds nuw i8, ptr %809, i64 2368
  %966 = load i64, ptr %965, align 16, !tbaa !31
  %967 = load i64, ptr %128, align 16, !tbaa !21
  %968 = icmp slt i64 %966, %967
  br i1 %968, label %983, label %969

969:                                              ; preds = %983, %897
  %970 = phi <2 x double> [ zeroinitializer, %897 ], [ %1018, %983 ]
  %971 = phi <2 x double> [ zeroinitializer, %897 ], [ %1025, %983 ]
  %972 = getelementptr inbounds nuw i8, ptr %809, i64 1072
  %973 = load <2 x double>, ptr %972, align 16, !tbaa !26
  %974 = fsub <2 x double> %973, %951
  %975 = fmul <2 x double> %970, %974
  %976 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %971, <2 x double> %952, <2 x double> %975)
  %977 = getelementptr inbounds nuw i8, ptr %809, i64 2112
  %978 = getelementptr inbounds nuw i8, ptr %809, i64 304
  %979 = load <2 x double>, ptr %978, align 16, !tbaa !26
  %980 = fmul <2 x double> %979, %976
  %981 = load <2 x double>, ptr %977, align 16, !tbaa !26
  %982 = select <2 x i1> %720, <2 x double> %981, <2 x double> %980
  store <2 x double> %982, ptr %977, align 16, !tbaa !26
  br label %1029

983:                                              ; preds = %897, %983
  %984 = phi <2 x double> [ %1025, %983 ], [ zeroinitializer, %897 ]
  %985 = phi i64 [ %1026, %983 ], [ %966, %897 ]
  %986 = getelementptr inbounds <2 x double>, ptr %954, i64 %985
  %987 = load <2 x double>, ptr %986, align 16, !tbaa !26
  %988 = getelementptr inbounds <2 x double>, ptr %956, i64 %985
  %989 = load <2 x double>, ptr %988, align 16, !tbaa !26
  %990 = fsub <2 x double> %987, %989
  %991 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %962, <2 x double> %990, <2 x double> %987)
  %992 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %991, <2 x double> %915, <2 x double> %942)
  %993 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %991, <2 x double> %992, <2 x double> %914)
  %994 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %991, <2 x double> %993, <2 x double> %941)
  %995 = fmul <2 x double> %991, %994
  %996 = fsub <2 x double> %995, %943
  %997 = fcmp ogt <2 x double> %996, splat (double -5.000000e+00)
  %998 = select <2 x i1> %997, <2 x double> %996, <2 x double> splat (double -5.000000e+00)
  %999 = fcmp olt <2 x double> %998, splat (double 5.000000e+00)
  %1000 = select <2 x i1> %999, <2 x double> %998, <2 x double> splat (double 5.000000e+00)
  %1001 = fmul <2 x double> %1000, %1000
  %1002 = fadd <2 x double> %1001, splat (double 3.780000e+02)
  %1003 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1001, <2 x double> %1002, <2 x double> splat (double 1.732500e+04))
  %1004 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1001, <2 x double> %1003, <2 x double> splat (double 1.351350e+05))
  %1005 = fmul <2 x double> %1000, %1004
  %1006 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1001, <2 x double> splat (double 2.800000e+01), <2 x double> splat (double 3.150000e+03))
  %1007 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1001, <2 x double> %1006, <2 x double> splat (double 6.237000e+04))
  %1008 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1001, <2 x double> %1007, <2 x double> splat (double 1.351350e+05))
  %1009 = fdiv <2 x double> %1005, %1008
  %1010 = fadd <2 x double> %1009, splat (double 1.000000e+00)
  %1011 = fmul <2 x double> %889, %1010
  %1012 = getelementptr inbounds <2 x double>, ptr %958, i64 %985
  %1013 = load <2 x double>, ptr %1012, align 16, !tbaa !26
  %1014 = fadd <2 x double> %1013, splat (double -1.000000e+00)
  %1015 = fadd <2 x double> %1014, %1011
  %1016 = fcmp ogt <2 x double> %1015, zeroinitializer
  %1017 = select <2 x i1> %1016, <2 x double> %1015, <2 x double> zeroinitializer
  %1018 = fmul <2 x double> %949, %1017
  %1019 = fsub <2 x double> %1013, %1018
  %1020 = getelementptr inbounds <2 x double>, ptr %964, i64 %985
  %1021 = load <2 x double>, ptr %1020, align 16, !tbaa !26
  %1022 = select <2 x i1> %720, <2 x double> %1021, <2 x double> %1019
  store <2 x double> %1022, ptr %1020, align 16, !tbaa !26
  %1023 = getelementptr inbounds <2 x double>, ptr %960, i64 %985
  %1024 = load <2 x double>, ptr %1023, align 16, !tbaa !26
  %1025 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1018, <2 x double> %1024, <2 x double> %984)
  %1026 = add nsw i64 %985, 1
  %1027 = load i64, ptr %128, align 16, !tbaa !21
  %1028 = icmp slt i64 %1026, %1027
  br i1 %1028, label %983, label %969, !llvm.loop !68

1029:                                             ; preds = %893, %969
  %1030 = add nuw nsw i64 %807, 1
  %1031 = load i64, ptr %166, align 8, !tbaa !20
  %1032 = icmp slt i64 %1030, %1031
  br i1 %1032, label %806, label %804, !llvm.loop !69

1033:                                             ; preds = %1045, %806
  %1034 = phi i64 [ 0, %806 ], [ %1056, %1045 ]
  %1035 = getelementptr inbounds nuw [14 x <2 x double>], ptr %830, i64 0, i64 %1034
  %1036 = getelementptr inbounds nuw [14 x <2 x double>], ptr %831, i64 0, i64 %1034
  %1037 = load <2 x double>, ptr %1036, align 16, !tbaa !26
  %1038 = getelementptr inbounds nuw [14 x <2 x double>], ptr %832, i64 0, i64 %1034
  %1039 = load <2 x double>, ptr %1038, align 16, !tbaa !26
  %1040 = fsub <2 x double> %1037, %1039
  %1041 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %829, <2 x double> %1040, <2 x double> %1037)
  %1042 = load <2 x double>, ptr %1035, align 16, !tbaa !26
  %1043 = select <2 x i1> %720, <2 x double> %1042, <2 x double> %1041
  store <2 x double> %1043, ptr %1035, align 16, !tbaa !26
  %1044 = icmp eq i64 %1034, 12
  br i1 %1044, label %833, label %1045, !llvm.loop !70

1045:                                             ; preds = %1033
  %1046 = or disjoint i64 %1034, 1
  %1047 = getelementptr inbounds nuw [14 x <2 x double>], ptr %830, i64 0, i64 %1046
  %1048 = getelementptr inbounds nuw [14 x <2 x double>], ptr %831, i64 0, i64 %1046
  %1049 = load <2 x double>, ptr %1048, align 16, !tbaa !26
  %1050 = getelementptr inbounds nuw [14 x <2 x double>], ptr %832, i64 0, i64 %1046
  %1051 = load <2 x double>, ptr %1050, align 16, !tbaa !26
  %1052 = fsub <2 x double> %1049, %1051
  %1053 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %829, <2 x double> %1052, <2 x double> %1049)
  %1054 = load <2 x double>, ptr %1047, align 16, !tbaa !26
  %1055 = select <2 x i1> %720, <2 x double> %1054, <2 x double> %1053
  store <2 x double> %1055, ptr %1047, align 16, !tbaa !26
  %1056 = add nuw nsw i64 %1034, 2
  br label %1033

1057:                                             ; preds = %804, %1427
  %1058 = phi i64 [ %1443, %1427 ], [ 0, %804 ]
  %1059 = load ptr, ptr %139, align 8, !tbaa !28
  %1060 = getelementptr inbounds nuw %struct.Piece, ptr %1059, i64 %1058
  %1061 = getelementptr inbounds nuw i8, ptr %1060, i64 832
  %1062 = load <2 x double>, ptr %1061, align 16, !tbaa !26
  %1063 = getelementptr inbounds nuw i8, ptr %1060, i64 1056
  %1064 = load <2 x double>, ptr %1063, align 16, !tbaa !26
  %1065 = fcmp olt <2 x double> %1062, %1064
  %1066 = select <2 x i1> %1065, <2 x double> %1062, <2 x double> %1064
  %1067 = load <2 x double>, ptr %1060, align 16, !tbaa !26
  %1068 = fmul <2 x double> %1067, splat (double 3.000000e-01)
  %1069 = fcmp ogt <2 x double> %1066, %1068
  %1070 = select <2 x i1> %1069, <2 x double> %1066, <2 x double> %1068
  %1071 = select <2 x i1> %720, <2 x double> %1062, <2 x double> %1070
  store <2 x double> %1071, ptr %1061, align 16, !tbaa !26
  %1072 = getelementptr inbounds nuw i8, ptr %1060, i64 864
  %1073 = load <2 x double>, ptr %1072, align 16, !tbaa !26, !noalias !71
  %1074 = getelementptr inbounds nuw i8, ptr %1060, i64 2160
  %1075 = load <2 x double>, ptr %1074, align 16, !tbaa !26, !noalias !71
  %1076 = fmul <2 x double> %1073, %1075
  %1077 = fcmp ogt <2 x double> %1076, zeroinitializer
  %1078 = select <2 x i1> %1077, <2 x double> %1076, <2 x double> zeroinitializer
  %1079 = fcmp uge <2 x double> %1078, splat (double 1.000000e+00)
  %1080 = select <2 x i1> %1079, <2 x double> splat (double 1.000000e+00), <2 x double> %1078
  %1081 = getelementptr inbounds nuw i8, ptr %1060, i64 2352
  %1082 = load <2 x i64>, ptr %1081, align 16, !tbaa !26, !noalias !71
  %1083 = load <2 x double>, ptr %177, align 16, !tbaa !26, !noalias !71
  %1084 = getelementptr inbounds nuw i8, ptr %1060, i64 896
  %1085 = load <2 x double>, ptr %1084, align 16, !tbaa !26, !noalias !71
  %1086 = icmp eq <2 x i64> %1082, zeroinitializer
  %1087 = select <2 x i1> %1086, <2 x double> %1085, <2 x double> %1083
  %1088 = getelementptr inbounds nuw i8, ptr %1060, i64 992
  %1089 = load <2 x double>, ptr %1088, align 16, !tbaa !26, !noalias !71
  %1090 = fsub <2 x double> splat (double 1.000000e+00), %1080
  %1091 = getelementptr inbounds nuw i8, ptr %1060, i64 592
  %1092 = load <2 x double>, ptr %1091, align 16, !tbaa !26, !noalias !71
  %1093 = getelementptr inbounds nuw i8, ptr %1060, i64 2320
  %1094 = load <2 x i64>, ptr %1093, align 16, !tbaa !26, !noalias !71
  %1095 = fsub <2 x double> %1067, %1071
  %1096 = getelementptr inbounds nuw i8, ptr %1060, i64 2176
  %1097 = load <2 x double>, ptr %1096, align 16, !tbaa !26, !noalias !71
  %1098 = fmul <2 x double> %1095, %1097
  %1099 = icmp eq <2 x i64> %1094, zeroinitializer
  %1100 = select <2 x i1> %1099, <2 x double> zeroinitializer, <2 x double> %1098
  %1101 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1090, <2 x double> %1092, <2 x double> %1100)
  %1102 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1089, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1103 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1089, <2 x double> %1102, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1104 = fdiv <2 x double> splat (double 1.000000e+00), %1103
  %1105 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1087, <2 x double> %1101, <2 x double> splat (double 1.000000e+00))
  %1106 = fdiv <2 x double> splat (double 1.000000e+00), %1105
  %1107 = load <2 x double>, ptr %178, align 16, !tbaa !26, !noalias !71
  %1108 = load <2 x double>, ptr %175, align 16, !tbaa !26, !noalias !71
  %1109 = select <2 x i1> %1086, <2 x double> %1108, <2 x double> %1107
  %1110 = fsub <2 x double> %1109, %1089
  %1111 = fmul <2 x double> %1110, %1106
  %1112 = fmul <2 x double> %1087, %1111
  %1113 = getelementptr inbounds nuw i8, ptr %1060, i64 1504
  %1114 = load <2 x double>, ptr %1113, align 16, !tbaa !26, !noalias !71
  %1115 = getelementptr inbounds nuw i8, ptr %1060, i64 912
  %1116 = load <2 x double>, ptr %1115, align 16, !tbaa !26, !noalias !71
  %1117 = getelementptr inbounds nuw i8, ptr %1060, i64 1520
  %1118 = load <2 x double>, ptr %1117, align 16, !tbaa !26, !noalias !71
  %1119 = getelementptr inbounds nuw i8, ptr %1060, i64 1136
  %1120 = load <2 x double>, ptr %1119, align 16, !tbaa !26, !noalias !71
  %1121 = fmul <2 x double> %1118, %1120
  %1122 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1114, <2 x double> %1116, <2 x double> %1121)
  %1123 = getelementptr inbounds nuw i8, ptr %1060, i64 1536
  %1124 = load <2 x double>, ptr %1123, align 16, !tbaa !26, !noalias !71
  %1125 = getelementptr inbounds nuw i8, ptr %1060, i64 1360
  %1126 = load <2 x double>, ptr %1125, align 16, !tbaa !26, !noalias !71
  %1127 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1124, <2 x double> %1126, <2 x double> %1122)
  %1128 = getelementptr inbounds nuw i8, ptr %1060, i64 2192
  %1129 = load <2 x double>, ptr %1128, align 16, !tbaa !26, !noalias !71
  %1130 = fmul <2 x double> %1097, %1129
  %1131 = fcmp ule <2 x double> %1080, zeroinitializer
  %1132 = or <2 x i1> %1079, %1131
  %1133 = fmul <2 x double> %1075, %1092
  %1134 = select <2 x i1> %1132, <2 x double> zeroinitializer, <2 x double> %1133
  %1135 = select <2 x i1> %1099, <2 x double> %1134, <2 x double> %1130
  %1136 = fmul <2 x double> %1087, %1112
  %1137 = fmul <2 x double> %1106, %1136
  %1138 = fmul <2 x double> %1104, %1137
  %1139 = fmul <2 x double> %1138, %1135
  %1140 = getelementptr inbounds nuw i8, ptr %1060, i64 1552
  %1141 = load <2 x double>, ptr %1140, align 16, !tbaa !26, !noalias !71
  %1142 = fmul <2 x double> %1141, %1139
  %1143 = fadd <2 x double> %1142, splat (double 1.000000e+00)
  %1144 = fdiv <2 x double> splat (double 1.000000e+00), %1143
  %1145 = getelementptr inbounds nuw i8, ptr %1060, i64 960
  %1146 = load <2 x double>, ptr %1145, align 16, !tbaa !26, !noalias !71
  %1147 = fsub <2 x double> %1112, %1146
  %1148 = getelementptr inbounds nuw i8, ptr %1060, i64 1632
  %1149 = load <2 x double>, ptr %1148, align 16, !tbaa !26, !noalias !71
  %1150 = fsub <2 x double> %1127, %1149
  %1151 = fmul <2 x double> %1142, %1150
  %1152 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1147, <2 x double> %1104, <2 x double> %1151)
  %1153 = fmul <2 x double> %1152, %1144
  %1154 = getelementptr inbounds nuw i8, ptr %1060, i64 1616
  %1155 = load <2 x double>, ptr %1154, align 16, !tbaa !26, !noalias !71
  %1156 = fcmp ule <2 x double> %1155, zeroinitializer
  %1157 = fcmp ule <2 x double> %1153, zeroinitializer
  %1158 = or <2 x i1> %1156, %1157
  %1159 = select <2 x i1> %1158, <2 x double> zeroinitializer, <2 x double> %1153
  %1160 = getelementptr inbounds nuw i8, ptr %1060, i64 640
  %1161 = load <2 x double>, ptr %1160, align 16, !tbaa !26, !noalias !71
  %1162 = fcmp ogt <2 x double> %1161, zeroinitializer
  %1163 = getelementptr inbounds nuw i8, ptr %1060, i64 352
  %1164 = load <2 x double>, ptr %1163, align 16, !tbaa !26, !noalias !71
  %1165 = bitcast <2 x i1> %1162 to i2
  %1166 = icmp eq i2 %1165, 0
  br i1 %1166, label %1179, label %1167

1167:                                             ; preds = %1057
  %1168 = getelementptr inbounds nuw i8, ptr %1060, i64 1008
  %1169 = load <2 x double>, ptr %1168, align 16, !tbaa !26, !noalias !71
  %1170 = fadd <2 x double> %1111, %1169
  %1171 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1170)
  %1172 = fcmp ogt <2 x double> %1161, splat (double 1.000000e-09)
  %1173 = select <2 x i1> %1172, <2 x double> %1161, <2 x double> splat (double 1.000000e-09)
  %1174 = fdiv <2 x double> %1171, %1173
  %1175 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1174)
  %1176 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1175)
  %1177 = select <2 x i1> %1162, <2 x double> %1176, <2 x double> splat (double 1.000000e+00)
  %1178 = fmul <2 x double> %1164, %1177
  br label %1179

1179:                                             ; preds = %1057, %1167
  %1180 = phi <2 x double> [ %1178, %1167 ], [ %1164, %1057 ]
  %1181 = getelementptr inbounds nuw i8, ptr %1060, i64 1120
  %1182 = load <2 x double>, ptr %1181, align 16, !tbaa !26, !noalias !71
  %1183 = getelementptr inbounds nuw i8, ptr %1060, i64 1344
  %1184 = load <2 x double>, ptr %1183, align 16, !tbaa !26, !noalias !71
  %1185 = fmul <2 x double> %1124, %1184
  %1186 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1118, <2 x double> %1182, <2 x double> %1185)
  %1187 = getelementptr inbounds nuw i8, ptr %1060, i64 400
  %1188 = load <2 x double>, ptr %1187, align 16, !tbaa !26, !noalias !71
  %1189 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1188, <2 x double> %1114, <2 x double> splat (double 1.000000e+00))
  %1190 = fdiv <2 x double> splat (double 1.000000e+00), %1189
  %1191 = fmul <2 x double> %1106, %1111
  %1192 = fmul <2 x double> %1104, %1191
  %1193 = fmul <2 x double> %1192, %1144
  %1194 = select <2 x i1> %1158, <2 x double> zeroinitializer, <2 x double> %1193
  %1195 = getelementptr inbounds nuw i8, ptr %1060, i64 368
  %1196 = load <2 x double>, ptr %1195, align 16, !tbaa !26, !noalias !71
  %1197 = fmul <2 x double> %1180, splat (double 2.500000e-01)
  %1198 = fmul <2 x double> %1101, %1197
  %1199 = fneg <2 x double> %1106
  %1200 = fmul <2 x double> %1198, %1199
  %1201 = select <2 x i1> %1162, <2 x double> %1200, <2 x double> splat (double -0.000000e+00)
  %1202 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1196, <2 x double> %1194, <2 x double> %1201)
  %1203 = fadd <2 x double> %1149, %1159
  %1204 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1196, <2 x double> %1203, <2 x double> %1180)
  %1205 = fneg <2 x double> %1188
  %1206 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1205, <2 x double> %1186, <2 x double> %1204)
  %1207 = fneg <2 x double> %1087
  %1208 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1190, <2 x double> %1206, <2 x double> %1207)
  %1209 = fmul <2 x double> %1190, %1202
  %1210 = fcmp olt <2 x double> %1209, splat (double 8.000000e-01)
  %1211 = select <2 x i1> %1210, <2 x double> %1209, <2 x double> splat (double 8.000000e-01)
  %1212 = fsub <2 x double> splat (double 1.000000e+00), %1211
  %1213 = fdiv <2 x double> %1208, %1212
  %1214 = fadd <2 x double> %1087, %1213
  %1215 = getelementptr inbounds nuw i8, ptr %1060, i64 384
  %1216 = load <2 x double>, ptr %1215, align 16, !tbaa !26, !noalias !71
  %1217 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1205, <2 x double> %1186, <2 x double> %1216)
  %1218 = fmul <2 x double> %1190, %1217
  %1219 = fcmp olt <2 x double> %1214, %1218
  %1220 = select <2 x i1> %1219, <2 x double> %1214, <2 x double> %1218
  %1221 = select <2 x i1> %1086, <2 x double> %1220, <2 x double> %1083
  %1222 = fsub <2 x double> %1221, %1087
  %1223 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1194, <2 x double> %1222, <2 x double> %1159)
  %1224 = fcmp ogt <2 x double> %1223, zeroinitializer
  %1225 = select <2 x i1> %1224, <2 x double> %1223, <2 x double> zeroinitializer
  %1226 = select <2 x i1> %720, <2 x double> %1085, <2 x double> %1221
  store <2 x double> %1226, ptr %1084, align 16, !tbaa !26
  %1227 = select <2 x i1> %720, <2 x double> %1155, <2 x double> %1225
  store <2 x double> %1227, ptr %1154, align 16, !tbaa !26
  %1228 = fadd <2 x double> %1149, %1227
  %1229 = fneg <2 x double> %1118
  %1230 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1229, <2 x double> %1120, <2 x double> %1228)
  %1231 = fneg <2 x double> %1124
  %1232 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1231, <2 x double> %1126, <2 x double> %1230)
  %1233 = fmul <2 x double> %1141, %1232
  %1234 = getelementptr inbounds nuw i8, ptr %1060, i64 496
  %1235 = load <2 x double>, ptr %1234, align 16, !tbaa !26, !noalias !74
  %1236 = fsub <2 x double> %1235, %1233
  %1237 = getelementptr inbounds nuw i8, ptr %1060, i64 1104
  %1238 = load <2 x double>, ptr %1237, align 16, !tbaa !26, !noalias !74
  %1239 = getelementptr inbounds nuw i8, ptr %1060, i64 2112
  %1240 = load <2 x double>, ptr %1239, align 16, !tbaa !26, !noalias !74
  %1241 = fsub <2 x double> %1238, %1240
  %1242 = getelementptr inbounds nuw i8, ptr %1060, i64 1072
  %1243 = load <2 x double>, ptr %1242, align 16, !tbaa !26, !noalias !74
  %1244 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1094)
  %1245 = icmp eq i64 %1244, 0
  br i1 %1245, label %1427, label %1246

1246:                                             ; preds = %1179
  %1247 = fcmp ogt <2 x double> %1241, %1236
  %1248 = getelementptr inbounds nuw i8, ptr %1060, i64 2144
  %1249 = load <2 x double>, ptr %1248, align 16, !tbaa !26, !noalias !74
  %1250 = fcmp oeq <2 x double> %1249, zeroinitializer
  %1251 = select <2 x i1> %1250, <2 x i1> %1247, <2 x i1> zeroinitializer
  %1252 = select <2 x i1> %1251, <2 x i64> %1094, <2 x i64> zeroinitializer
  %1253 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1252)
  %1254 = icmp eq i64 %1253, 0
  br i1 %1254, label %1325, label %1255

1255:                                             ; preds = %1246
  %1256 = fsub <2 x double> %1241, %1236
  %1257 = fmul <2 x double> %1129, %1256
  %1258 = getelementptr inbounds nuw i8, ptr %1060, i64 2416
  %1259 = load ptr, ptr %1258, align 16, !tbaa !67, !noalias !74
  %1260 = load i64, ptr %128, align 16, !tbaa !21, !noalias !74
  %1261 = add nsw i64 %1260, -1
  %1262 = getelementptr inbounds <2 x double>, ptr %1259, i64 %1261
  %1263 = load <2 x double>, ptr %1262, align 16, !tbaa !26, !noalias !74
  %1264 = icmp sgt i64 %1260, 1
  br i1 %1264, label %1265, label %1317

1265:                                             ; preds = %1255
  %1266 = getelementptr inbounds nuw i8, ptr %1060, i64 2368
  %1267 = load i64, ptr %1266, align 16, !tbaa !31, !noalias !74
  %1268 = getelementptr inbounds nuw i8, ptr %1060, i64 1264
  %1269 = getelementptr inbounds nuw i8, ptr %1060, i64 480
  %1270 = getelementptr inbounds nuw i8, ptr %1060, i64 2456
  br label %1271

1271:                                             ; preds = %1265, %1314
  %1272 = phi <2 x double> [ %1243, %1265 ], [ %1309, %1314 ]
  %1273 = phi i64 [ %1261, %1265 ], [ %1315, %1314 ]
  %1274 = phi <2 x double> [ %1263, %1265 ], [ %1297, %1314 ]
  %1275 = phi <2 x i64> [ %1252, %1265 ], [ %1301, %1314 ]
  %1276 = phi <2 x double> [ %1257, %1265 ], [ %1308, %1314 ]
  %1277 = icmp slt i64 %1273, %1267
  br i1 %1277, label %1278, label %1284

1278:                                             ; preds = %1271
  %1279 = load ptr, ptr %1270, align 8, !tbaa !77, !noalias !74
  %1280 = getelementptr inbounds nuw <2 x double>, ptr %1279, i64 %1273
  %1281 = load <2 x double>, ptr %1280, align 16, !tbaa !26, !noalias !74
  %1282 = load <2 x double>, ptr %1269, align 16, !tbaa !26, !noalias !74
  %1283 = fmul <2 x double> %1281, %1282
  br label %1292

1284:                                             ; preds = %1271
  %1285 = load <2 x double>, ptr %1268, align 16, !tbaa !26, !noalias !74
  %1286 = load <2 x double>, ptr %1269, align 16, !tbaa !26, !noalias !74
  %1287 = load ptr, ptr %1270, align 8, !tbaa !77, !noalias !74
  %1288 = getelementptr inbounds nuw <2 x double>, ptr %1287, i64 %1273
  %1289 = load <2 x double>, ptr %1288, align 16, !tbaa !26, !noalias !74
  %1290 = fsub <2 x double> %1285, %1286
  %1291 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1289, <2 x double> %1290, <2 x double> %1286)
  br label %1292

1292:                                             ; preds = %1278, %1284
  %1293 = phi <2 x double> [ %1283, %1278 ], [ %1291, %1284 ]
  %1294 = getelementptr inbounds nuw <2 x double>, ptr %1259, i64 %1273
  %1295 = load <2 x double>, ptr %1294, align 16, !tbaa !26, !noalias !74
  %1296 = icmp eq <2 x i64> %1275, zeroinitializer
  %1297 = select <2 x i1> %1296, <2 x double> %1274, <2 x double> %1295
  %1298 = fsub <2 x double> %1272, %1293
  %1299 = fmul <2 x double> %1298, %1297
  %1300 = fcmp olt <2 x double> %1299, %1276
  %1301 = select <2 x i1> %1300, <2 x i64> %1275, <2 x i64> zeroinitializer
  %1302 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1301)
  %1303 = icmp eq i64 %1302, 0
  br i1 %1303, label %1317, label %1304

1304:                                             ; preds = %1292
  %1305 = fneg <2 x double> %1297
  %1306 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1305, <2 x double> %1298, <2 x double> %1276)
  %1307 = icmp eq <2 x i64> %1301, zeroinitializer
  %1308 = select <2 x i1> %1307, <2 x double> %1276, <2 x double> %1306
  %1309 = select <2 x i1> %1307, <2 x double> %1272, <2 x double> %1293
  %1310 = icmp eq i64 %1273, 1
  br i1 %1310, label %1311, label %1314

1311:                                             ; preds = %1304
  %1312 = load <2 x double>, ptr %1259, align 16, !tbaa !26, !noalias !74
  %1313 = select <2 x i1> %1307, <2 x double> %1297, <2 x double> %1312
  br label %1317

1314:                                             ; preds = %1304
  %1315 = add nsw i64 %1273, -1
  %1316 = icmp sgt i64 %1273, 1
  br i1 %1316, label %1271, label %1317, !llvm.loop !78

1317:                                             ; preds = %1314, %1292, %1311, %1255
  %1318 = phi <2 x double> [ %1257, %1255 ], [ %1308, %1311 ], [ %1276, %1292 ], [ %1308, %1314 ]
  %1319 = phi <2 x double> [ %1243, %1255 ], [ %1309, %1311 ], [ %1272, %1292 ], [ %1309, %1314 ]
  %1320 = phi <2 x double> [ %1263, %1255 ], [ %1313, %1311 ], [ %1297, %1292 ], [ %1297, %1314 ]
  %1321 = fdiv <2 x double> %1318, %1320
  %1322 = fsub <2 x double> %1319, %1321
  %1323 = icmp eq <2 x i64> %1252, zeroinitializer
  %1324 = select <2 x i1> %1323, <2 x double> %1243, <2 x double> %1322
  br label %1325

1325:                                             ; preds = %1317, %1246
  %1326 = phi <2 x double> [ %1324, %1317 ], [ %1243, %1246 ]
  %1327 = getelementptr inbounds nuw i8, ptr %1060, i64 752
  %1328 = load <2 x double>, ptr %1327, align 16, !tbaa !26, !noalias !74
  %1329 = getelementptr inbounds nuw i8, ptr %1060, i64 768
  %1330 = load <2 x double>, ptr %1329, align 16, !tbaa !26, !noalias !74
  %1331 = getelementptr inbounds nuw i8, ptr %1060, i64 784
  %1332 = load <2 x double>, ptr %1331, align 16, !tbaa !26, !noalias !74
  %1333 = getelementptr inbounds nuw i8, ptr %1060, i64 736
  %1334 = load <2 x double>, ptr %1333, align 16, !tbaa !26, !noalias !74
  %1335 = fmul <2 x double> %1067, splat (double 5.000000e-04)
  %1336 = fmul <2 x double> %1071, splat (double 3.000000e+00)
  %1337 = fmul <2 x double> %1336, %1332
  %1338 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1330, <2 x double> splat (double 2.000000e+00), <2 x double> %1337)
  %1339 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1071, <2 x double> %1338, <2 x double> %1328)
  %1340 = fdiv <2 x double> splat (double 1.000000e+00), %1339
  %1341 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1071, <2 x double> %1332, <2 x double> %1330)
  %1342 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1071, <2 x double> %1341, <2 x double> %1328)
  %1343 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1071, <2 x double> %1342, <2 x double> %1334)
  %1344 = fsub <2 x double> %1343, %1326
  %1345 = fmul <2 x double> %1344, %1340
  %1346 = fmul <2 x double> %1345, %1345
  %1347 = fmul <2 x double> %1340, %1346
  %1348 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1336, <2 x double> %1332, <2 x double> %1330)
  %1349 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1347, <2 x double> %1348, <2 x double> %1345)
  %1350 = fsub <2 x double> %1071, %1349
  %1351 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1349)
  %1352 = fcmp oge <2 x double> %1351, %1335
  %1353 = bitcast <2 x i1> %1352 to i2
  %1354 = icmp eq i2 %1353, 0
  br i1 %1354, label %1416, label %1355, !llvm.loop !79

1355:                                             ; preds = %1325
  %1356 = fmul <2 x double> %1350, splat (double 3.000000e+00)
  %1357 = fmul <2 x double> %1356, %1332
  %1358 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1330, <2 x double> splat (double 2.000000e+00), <2 x double> %1357)
  %1359 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1350, <2 x double> %1358, <2 x double> %1328)
  %1360 = fdiv <2 x double> splat (double 1.000000e+00), %1359
  %1361 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1350, <2 x double> %1332, <2 x double> %1330)
  %1362 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1350, <2 x double> %1361, <2 x double> %1328)
  %1363 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1350, <2 x double> %1362, <2 x double> %1334)
  %1364 = fsub <2 x double> %1363, %1326
  %1365 = fmul <2 x double> %1364, %1360
  %1366 = fmul <2 x double> %1365, %1365
  %1367 = fmul <2 x double> %1360, %1366
  %1368 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1356, <2 x double> %1332, <2 x double> %1330)
  %1369 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1367, <2 x double> %1368, <2 x double> %1365)
  %1370 = fsub <2 x double> %1350, %1369
  %1371 = select <2 x i1> %1352, <2 x double> %1370, <2 x double> %1350
  %1372 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1369)
  %1373 = fcmp oge <2 x double> %1372, %1335
  %1374 = and <2 x i1> %1373, %1352
  %1375 = bitcast <2 x i1> %1374 to i2
  %1376 = icmp eq i2 %1375, 0
  br i1 %1376, label %1416, label %1377, !llvm.loop !79

1377:                                             ; preds = %1355
  %1378 = fmul <2 x double> %1371, splat (double 3.000000e+00)
  %1379 = fmul <2 x double> %1378, %1332
  %1380 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1330, <2 x double> splat (double 2.000000e+00), <2 x double> %1379)
  %1381 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1371, <2 x double> %1380, <2 x double> %1328)
  %1382 = fdiv <2 x double> splat (double 1.000000e+00), %1381
  %1383 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1371, <2 x double> %1332, <2 x double> %1330)
  %1384 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1371, <2 x double> %1383, <2 x double> %1328)
  %1385 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1371, <2 x double> %1384, <2 x double> %1334)
  %1386 = fsub <2 x double> %1385, %1326
  %1387 = fmul <2 x double> %1386, %1382
  %1388 = fmul <2 x double> %1387, %1387
  %1389 = fmul <2 x double> %1382, %1388
  %1390 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1378, <2 x double> %1332, <2 x double> %1330)
  %1391 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1389, <2 x double> %1390, <2 x double> %1387)
  %1392 = fsub <2 x double> %1371, %1391
  %1393 = select <2 x i1> %1374, <2 x double> %1392, <2 x double> %1371
  %1394 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1391)
  %1395 = fcmp oge <2 x double> %1394, %1335
  %1396 = and <2 x i1> %1395, %1374
  %1397 = bitcast <2 x i1> %1396 to i2
  %1398 = icmp eq i2 %1397, 0
  br i1 %1398, label %1416, label %1399, !llvm.loop !79

1399:                                             ; preds = %1377
  %1400 = fmul <2 x double> %1393, splat (double 3.000000e+00)
  %1401 = fmul <2 x double> %1400, %1332
  %1402 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1330, <2 x double> splat (double 2.000000e+00), <2 x double> %1401)
  %1403 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1393, <2 x double> %1402, <2 x double> %1328)
  %1404 = fdiv <2 x double> splat (double 1.000000e+00), %1403
  %1405 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1393, <2 x double> %1332, <2 x double> %1330)
  %1406 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1393, <2 x double> %1405, <2 x double> %1328)
  %1407 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1393, <2 x double> %1406, <2 x double> %1334)
  %1408 = fsub <2 x double> %1407, %1326
  %1409 = fmul <2 x double> %1408, %1404
  %1410 = fmul <2 x double> %1409, %1409
  %1411 = fmul <2 x double> %1404, %1410
  %1412 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1400, <2 x double> %1332, <2 x double> %1330)
  %1413 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1411, <2 x double> %1412, <2 x double> %1409)
  %1414 = fsub <2 x double> %1393, %1413
  %1415 = select <2 x i1> %1396, <2 x double> %1414, <2 x double> %1393
  br label %1416

1416:                                             ; preds = %1399, %1377, %1355, %1325
  %1417 = phi <2 x double> [ %1350, %1325 ], [ %1371, %1355 ], [ %1393, %1377 ], [ %1415, %1399 ]
  %1418 = fmul <2 x double> %1067, splat (double 2.800000e-01)
  %1419 = fcmp ogt <2 x double> %1417, %1418
  %1420 = select <2 x i1> %1419, <2 x double> %1417, <2 x double> %1418
  %1421 = fcmp olt <2 x double> %1420, %1067
  %1422 = select <2 x i1> %1421, <2 x double> %1420, <2 x double> %1067
  %1423 = select <2 x i1> %1099, <2 x double> %1071, <2 x double> %1422
  %1424 = fcmp olt <2 x double> %1241, %1236
  %1425 = select <2 x i1> %1099, <2 x i1> splat (i1 true), <2 x i1> %1424
  %1426 = select <2 x i1> %1425, <2 x double> %1241, <2 x double> %1236
  br label %1427

1427:                                             ; preds = %1179, %1416
  %1428 = phi <2 x double> [ %1426, %1416 ], [ %1241, %1179 ]
  %1429 = phi <2 x double> [ %1423, %1416 ], [ %1071, %1179 ]
  %1430 = phi <2 x double> [ %1326, %1416 ], [ %1243, %1179 ]
  %1431 = fsub <2 x double> %1236, %1428
  %1432 = select <2 x i1> %720, <2 x double> %1116, <2 x double> %1233
  store <2 x double> %1432, ptr %1115, align 16, !tbaa !26
  %1433 = select <2 x i1> %720, <2 x double> %1073, <2 x double> %1431
  store <2 x double> %1433, ptr %1072, align 16, !tbaa !26
  %1434 = getelementptr inbounds nuw i8, ptr %1060, i64 880
  %1435 = load <2 x double>, ptr %1434, align 16, !tbaa !26
  %1436 = select <2 x i1> %720, <2 x double> %1435, <2 x double> %1428
  store <2 x double> %1436, ptr %1434, align 16, !tbaa !26
  %1437 = getelementptr inbounds nuw i8, ptr %1060, i64 848
  %1438 = and <2 x i64> %1094, %557
  %1439 = load <2 x double>, ptr %1437, align 16, !tbaa !26
  %1440 = icmp eq <2 x i64> %1438, zeroinitializer
  %1441 = select <2 x i1> %1440, <2 x double> %1439, <2 x double> %1430
  store <2 x double> %1441, ptr %1437, align 16, !tbaa !26
  %1442 = select <2 x i1> %1440, <2 x double> %1071, <2 x double> %1429
  store <2 x double> %1442, ptr %1061, align 16, !tbaa !26
  %1443 = add nuw nsw i64 %1058, 1
  %1444 = load i64, ptr %166, align 8, !tbaa !20
  %1445 = icmp slt i64 %1443, %1444
  br i1 %1445, label %1057, label %1446, !llvm.loop !80

1446:                                             ; preds = %1427, %694, %804
  %1447 = phi i64 [ %1031, %804 ], [ %802, %694 ], [ %1444, %1427 ]
  %1448 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %1449 = fcmp ogt <2 x double> %1448, zeroinitializer
  %1450 = select <2 x i1> %1449, <2 x i64> %557, <2 x i64> zeroinitializer
  %1451 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1450)
  %1452 = icmp eq i64 %1451, 0
  br i1 %1452, label %1459, label %1453

1453:                                             ; preds = %1446
  %1454 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0, <2 x i64> noundef %1450) #6
  %1455 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %1456 = icmp eq <2 x i64> %1450, zeroinitializer
  %1457 = select <2 x i1> %1456, <2 x double> %1455, <2 x double> %1454
  store <2 x double> %1457, ptr %175, align 16, !tbaa !26
  %1458 = load i64, ptr %166, align 8, !tbaa !20
  br label %1459

1459:                                             ; preds = %1446, %1453, %555
  %1460 = phi i64 [ %1447, %1446 ], [ %1458, %1453 ], [ %560, %555 ]
  %1461 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %1462 = icmp eq <2 x i64> %557, zeroinitializer
  %1463 = select <2 x i1> %1462, <2 x double> %1461, <2 x double> zeroinitializer
  store <2 x double> %1463, ptr %179, align 16, !tbaa !26
  %1464 = load <2 x i64>, ptr %119, align 16, !tbaa !26
  %1465 = xor <2 x i64> %557, splat (i64 -1)
  %1466 = and <2 x i64> %1464, %1465
  store <2 x i64> %1466, ptr %180, align 16, !tbaa !26
  %1467 = icmp sgt i64 %1460, 0
  br i1 %1467, label %2201, label %2645

1468:                                             ; preds = %2506
  %1469 = load i64, ptr %128, align 16, !tbaa !21
  %1470 = icmp sgt i64 %2643, 0
  br i1 %1470, label %1471, label %2645

1471:                                             ; preds = %1468
  %1472 = icmp sgt i64 %1469, 0
  br label %1475

1473:                                             ; preds = %2196
  %1474 = icmp sgt i64 %2199, 0
  br i1 %1474, label %2650, label %2645

1475:                                             ; preds = %1471, %2196
  %1476 = phi i64 [ %2643, %1471 ], [ %2199, %2196 ]
  %1477 = phi i64 [ 0, %1471 ], [ %2198, %2196 ]
  %1478 = load ptr, ptr %139, align 8, !tbaa !28
  %1479 = getelementptr inbounds %struct.Piece, ptr %1478, i64 %1477
  %1480 = getelementptr inbounds nuw i8, ptr %1479, i64 2368
  %1481 = load i64, ptr %1480, align 16, !tbaa !31
  %1482 = icmp eq i64 %1481, 0
  br i1 %1482, label %1754, label %1483

1483:                                             ; preds = %1475
  %1484 = getelementptr inbounds nuw i8, ptr %1479, i64 96
  %1485 = load <2 x double>, ptr %1484, align 16, !tbaa !26
  %1486 = getelementptr inbounds nuw i8, ptr %1479, i64 112
  %1487 = load <2 x double>, ptr %1486, align 16, !tbaa !26
  %1488 = getelementptr inbounds nuw i8, ptr %1479, i64 128
  %1489 = load <2 x double>, ptr %1488, align 16, !tbaa !26
  %1490 = getelementptr inbounds nuw i8, ptr %1479, i64 144
  %1491 = load <2 x double>, ptr %1490, align 16, !tbaa !26
  %1492 = getelementptr inbounds nuw i8, ptr %1479, i64 160
  %1493 = load <2 x double>, ptr %1492, align 16, !tbaa !26
  %1494 = getelementptr inbounds nuw i8, ptr %1479, i64 176
  %1495 = getelementptr inbounds nuw i8, ptr %1479, i64 240
  %1496 = load <2 x double>, ptr %1495, align 16, !tbaa !26
  %1497 = getelementptr inbounds nuw i8, ptr %1479, i64 256
  %1498 = load <2 x double>, ptr %1497, align 16, !tbaa !26
  %1499 = getelementptr inbounds nuw i8, ptr %1479, i64 480
  %1500 = load <2 x double>, ptr %1499, align 16, !tbaa !26
  %1501 = load i64, ptr %128, align 16, !tbaa !21
  %1502 = add nsw i64 %1501, -1
  %1503 = getelementptr inbounds nuw i8, ptr %1479, i64 832
  %1504 = load <2 x double>, ptr %1503, align 16, !tbaa !26
  %1505 = getelementptr inbounds nuw i8, ptr %1479, i64 2016
  %1506 = load <2 x double>, ptr %1505, align 16, !tbaa !26
  %1507 = getelementptr inbounds nuw i8, ptr %1479, i64 1968
  %1508 = load <2 x double>, ptr %1507, align 16, !tbaa !26
  %1509 = getelementptr inbounds nuw i8, ptr %1479, i64 1504
  %1510 = load <2 x double>, ptr %1509, align 16, !tbaa !26
  %1511 = getelementptr inbounds nuw i8, ptr %1479, i64 1040
  %1512 = load <2 x double>, ptr %1511, align 16, !tbaa !26
  %1513 = fsub <2 x double> %1512, %1500
  %1514 = getelementptr inbounds nuw i8, ptr %1479, i64 1520
  %1515 = load <2 x double>, ptr %1514, align 16, !tbaa !26, !noalias !81
  %1516 = getelementptr inbounds nuw i8, ptr %1479, i64 1264
  %1517 = load <2 x double>, ptr %1516, align 16, !tbaa !26, !noalias !81
  %1518 = fsub <2 x double> %1517, %1500
  %1519 = fmul <2 x double> %1515, %1518
  %1520 = getelementptr inbounds nuw i8, ptr %1479, i64 1536
  %1521 = load <2 x double>, ptr %1520, align 16, !tbaa !26, !noalias !81
  %1522 = getelementptr inbounds nuw i8, ptr %1479, i64 1488
  %1523 = load <2 x double>, ptr %1522, align 16, !tbaa !26, !noalias !81
  %1524 = fsub <2 x double> %1523, %1500
  %1525 = fmul <2 x double> %1521, %1524
  %1526 = fmul <2 x double> %1500, %1515
  %1527 = fmul <2 x double> %1500, %1521
  %1528 = getelementptr inbounds nuw i8, ptr %1479, i64 2392
  %1529 = load ptr, ptr %1528, align 8, !tbaa !84
  %1530 = getelementptr inbounds nuw i8, ptr %1479, i64 2400
  %1531 = load ptr, ptr %1530, align 16, !tbaa !49
  %1532 = getelementptr inbounds nuw i8, ptr %1479, i64 2408
  %1533 = load ptr, ptr %1532, align 8, !tbaa !66
  %1534 = getelementptr inbounds nuw i8, ptr %1479, i64 2456
  %1535 = load ptr, ptr %1534, align 8, !tbaa !77
  %1536 = getelementptr inbounds nuw i8, ptr %1479, i64 2464
  %1537 = load ptr, ptr %1536, align 16, !tbaa !50
  %1538 = getelementptr inbounds nuw i8, ptr %1479, i64 2480
  %1539 = getelementptr inbounds nuw i8, ptr %1479, i64 1568
  %1540 = load <2 x double>, ptr %1539, align 16, !tbaa !26
  %1541 = load <2 x i64>, ptr %180, align 16, !tbaa !26
  %1542 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1541)
  %1543 = icmp eq i64 %1542, 0
  %1544 = getelementptr inbounds nuw i8, ptr %1479, i64 2448
  %1545 = load ptr, ptr %1544, align 16, !tbaa !85
  %1546 = getelementptr inbounds nuw i8, ptr %1479, i64 2432
  %1547 = load ptr, ptr %1546, align 16, !tbaa !86
  %1548 = getelementptr inbounds nuw i8, ptr %1479, i64 2440
  %1549 = load ptr, ptr %1548, align 8, !tbaa !87
  %1550 = load <2 x double>, ptr %1531, align 16, !tbaa !26
  %1551 = load <2 x double>, ptr %1533, align 16, !tbaa !26
  %1552 = fsub <2 x double> %1550, %1551
  %1553 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1540, <2 x double> %1552, <2 x double> %1550)
  br i1 %1543, label %1558, label %1554

1554:                                             ; preds = %1483
  %1555 = load <2 x double>, ptr %1529, align 16, !tbaa !26
  %1556 = icmp eq <2 x i64> %1541, zeroinitializer
  %1557 = select <2 x i1> %1556, <2 x double> %1553, <2 x double> %1555
  br label %1558

1558:                                             ; preds = %1483, %1554
  %1559 = phi <2 x double> [ %1557, %1554 ], [ %1553, %1483 ]
  br i1 %1472, label %1560, label %2196

1560:                                             ; preds = %1558
  %1561 = getelementptr inbounds nuw i8, ptr %1479, i64 1792
  %1562 = getelementptr inbounds nuw i8, ptr %1479, i64 1808
  %1563 = getelementptr inbounds nuw i8, ptr %1479, i64 1824
  %1564 = icmp eq <2 x i64> %1541, zeroinitializer
  %1565 = fdiv <2 x double> %1496, %1498
  %1566 = getelementptr inbounds nuw i8, ptr %1479, i64 192
  %1567 = getelementptr inbounds nuw i8, ptr %1479, i64 208
  %1568 = getelementptr inbounds nuw i8, ptr %1479, i64 224
  %1569 = getelementptr inbounds nuw i8, ptr %1479, i64 48
  %1570 = getelementptr inbounds nuw i8, ptr %1479, i64 64
  %1571 = getelementptr inbounds nuw i8, ptr %1479, i64 80
  %1572 = getelementptr inbounds nuw i8, ptr %1479, i64 800
  %1573 = getelementptr inbounds nuw i8, ptr %1479, i64 816
  %1574 = getelementptr inbounds nuw i8, ptr %1479, i64 16
  %1575 = getelementptr inbounds nuw i8, ptr %1479, i64 1760
  %1576 = getelementptr inbounds nuw i8, ptr %1479, i64 1776
  br label %1577

1577:                                             ; preds = %1560, %1720
  %1578 = phi i64 [ 0, %1560 ], [ %1721, %1720 ]
  %1579 = phi <2 x double> [ zeroinitializer, %1560 ], [ %1751, %1720 ]
  %1580 = phi <2 x double> [ zeroinitializer, %1560 ], [ %1749, %1720 ]
  %1581 = phi <2 x double> [ zeroinitializer, %1560 ], [ %1727, %1720 ]
  %1582 = phi <2 x double> [ zeroinitializer, %1560 ], [ %1726, %1720 ]
  %1583 = phi <2 x double> [ zeroinitializer, %1560 ], [ %1725, %1720 ]
  %1584 = phi <2 x double> [ %1551, %1560 ], [ %1724, %1720 ]
  %1585 = phi <2 x double> [ %1550, %1560 ], [ %1723, %1720 ]
  %1586 = phi <2 x double> [ %1559, %1560 ], [ %1722, %1720 ]
  %1587 = icmp slt i64 %1578, %1502
  br i1 %1587, label %1593, label %1588

1588:                                             ; preds = %1577
  %1589 = load <2 x double>, ptr %1563, align 16, !tbaa !26
  %1590 = load <2 x double>, ptr %1562, align 16, !tbaa !26
  %1591 = load <2 x double>, ptr %1561, align 16, !tbaa !26
  %1592 = add nuw nsw i64 %1578, 1
  br label %1720

1593:                                             ; preds = %1577
  %1594 = add nuw nsw i64 %1578, 1
  %1595 = getelementptr inbounds nuw <2 x double>, ptr %1531, i64 %1594
  %1596 = load <2 x double>, ptr %1595, align 16, !tbaa !26
  %1597 = getelementptr inbounds nuw <2 x double>, ptr %1533, i64 %1594
  %1598 = load <2 x double>, ptr %1597, align 16, !tbaa !26
  %1599 = fsub <2 x double> %1596, %1598
  %1600 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1540, <2 x double> %1599, <2 x double> %1596)
  br i1 %1543, label %1605, label %1601

1601:                                             ; preds = %1593
  %1602 = getelementptr inbounds nuw <2 x double>, ptr %1529, i64 %1594
  %1603 = load <2 x double>, ptr %1602, align 16, !tbaa !26
  %1604 = select <2 x i1> %1564, <2 x double> %1600, <2 x double> %1603
  br label %1605

1605:                                             ; preds = %1593, %1601
  %1606 = phi <2 x double> [ %1604, %1601 ], [ %1600, %1593 ]
  %1607 = icmp eq i64 %1594, %1481
  br i1 %1607, label %1608, label %1679

1608:                                             ; preds = %1605
  %1609 = load <2 x double>, ptr %1494, align 16, !tbaa !26, !noalias !88
  %1610 = load <2 x double>, ptr %1566, align 16, !tbaa !26, !noalias !88
  %1611 = load <2 x double>, ptr %1567, align 16, !tbaa !26, !noalias !88
  %1612 = load <2 x double>, ptr %1568, align 16, !tbaa !26, !noalias !88
  %1613 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1606, <2 x double> %1612, <2 x double> %1611)
  %1614 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1606, <2 x double> %1613, <2 x double> %1610)
  %1615 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1606, <2 x double> %1614, <2 x double> %1609)
  %1616 = fmul <2 x double> %1606, %1615
  %1617 = load <2 x double>, ptr %1569, align 16, !tbaa !26, !noalias !88
  %1618 = load <2 x double>, ptr %1570, align 16, !tbaa !26, !noalias !88
  %1619 = load <2 x double>, ptr %1571, align 16, !tbaa !26, !noalias !88
  %1620 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1616, <2 x double> %1619, <2 x double> %1618)
  %1621 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1616, <2 x double> %1620, <2 x double> %1617)
  %1622 = fdiv <2 x double> splat (double 1.000000e+00), %1621
  %1623 = fmul <2 x double> %1619, %1616
  %1624 = fmul <2 x double> %1623, splat (double 0x3FD5555555555555)
  %1625 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1618, <2 x double> splat (double 5.000000e-01), <2 x double> %1624)
  %1626 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1616, <2 x double> %1625, <2 x double> %1617)
  %1627 = fmul <2 x double> %1616, %1626
  %1628 = fsub <2 x double> %1606, %1627
  %1629 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1628, <2 x double> %1622, <2 x double> %1616)
  %1630 = load <2 x double>, ptr %1572, align 16, !tbaa !26, !noalias !93
  %1631 = load <2 x double>, ptr %1495, align 16, !tbaa !26, !noalias !93
  %1632 = fdiv <2 x double> %1630, %1631
  %1633 = load <2 x double>, ptr %1573, align 16, !tbaa !26, !noalias !93
  %1634 = load <2 x double>, ptr %1574, align 16, !tbaa !26, !noalias !93
  %1635 = fsub <2 x double> %1504, %1634
  %1636 = fmul <2 x double> %1633, %1635
  %1637 = fmul <2 x double> %1606, splat (double 2.000000e+00)
  %1638 = load <2 x double>, ptr %1484, align 16, !tbaa !26, !noalias !93
  %1639 = load <2 x double>, ptr %1486, align 16, !tbaa !26, !noalias !93
  %1640 = load <2 x double>, ptr %1488, align 16, !tbaa !26, !noalias !93
  %1641 = load <2 x double>, ptr %1490, align 16, !tbaa !26, !noalias !93
  %1642 = load <2 x double>, ptr %1492, align 16, !tbaa !26, !noalias !93
  %1643 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1637, <2 x double> %1642, <2 x double> %1641)
  %1644 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1637, <2 x double> %1643, <2 x double> %1640)
  %1645 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1637, <2 x double> %1644, <2 x double> %1639)
  %1646 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1637, <2 x double> %1645, <2 x double> %1638)
  %1647 = fmul <2 x double> %1621, %1646
  %1648 = fdiv <2 x double> %1636, %1647
  %1649 = fadd <2 x double> %1632, %1648
  %1650 = load i64, ptr %1480, align 16, !tbaa !31, !noalias !93
  %1651 = icmp eq i64 %1650, 0
  %1652 = load ptr, ptr %1538, align 16, !tbaa !37, !noalias !93
  br i1 %1651, label %1653, label %1656

1653:                                             ; preds = %1608
  %1654 = load <2 x double>, ptr %1652, align 16, !tbaa !26, !noalias !93
  %1655 = fmul <2 x double> %1508, %1654
  br label %1669

1656:                                             ; preds = %1608
  %1657 = shl nsw i64 %1650, 6
  %1658 = getelementptr inbounds i8, ptr %1652, i64 %1657
  %1659 = load <2 x double>, ptr %1658, align 16, !tbaa !26, !noalias !93
  %1660 = getelementptr inbounds nuw i8, ptr %1658, i64 16
  %1661 = load <2 x double>, ptr %1660, align 16, !tbaa !26, !noalias !93
  %1662 = getelementptr inbounds nuw i8, ptr %1658, i64 32
  %1663 = load <2 x double>, ptr %1662, align 16, !tbaa !26, !noalias !93
  %1664 = getelementptr inbounds nuw i8, ptr %1658, i64 48
  %1665 = load <2 x double>, ptr %1664, align 16, !tbaa !26, !noalias !93
  %1666 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1504, <2 x double> %1665, <2 x double> %1663)
  %1667 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1504, <2 x double> %1666, <2 x double> %1661)
  %1668 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1504, <2 x double> %1667, <2 x double> %1659)
  br label %1669

1669:                                             ; preds = %1653, %1656
  %1670 = phi <2 x double> [ %1655, %1653 ], [ %1668, %1656 ]
  %1671 = fdiv <2 x double> %1670, %1649
  %1672 = fmul <2 x double> %1622, %1671
  %1673 = load <2 x double>, ptr %1497, align 16, !tbaa !26, !noalias !93
  %1674 = fdiv <2 x double> %1671, %1673
  %1675 = fneg <2 x double> %1606
  %1676 = fmul <2 x double> %1672, %1675
  %1677 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1671, <2 x double> %1629, <2 x double> %1676)
  %1678 = fsub <2 x double> %1674, %1672
  store <2 x double> %1678, ptr %1575, align 16, !tbaa !26
  store <2 x double> %1677, ptr %1576, align 16, !tbaa !26
  br label %1720

1679:                                             ; preds = %1605
  %1680 = load i64, ptr %1480, align 16, !tbaa !31, !noalias !94
  %1681 = icmp eq i64 %1680, 0
  %1682 = load ptr, ptr %1538, align 16, !tbaa !37, !noalias !94
  br i1 %1681, label %1683, label %1687

1683:                                             ; preds = %1679
  %1684 = getelementptr inbounds nuw <2 x double>, ptr %1682, i64 %1594
  %1685 = load <2 x double>, ptr %1684, align 16, !tbaa !26, !noalias !94
  %1686 = fmul <2 x double> %1508, %1685
  br label %1703

1687:                                             ; preds = %1679
  %1688 = shl nsw i64 %1594, 6
  %1689 = getelementptr inbounds nuw i8, ptr %1682, i64 %1688
  %1690 = load <2 x double>, ptr %1689, align 16, !tbaa !26, !noalias !94
  %1691 = getelementptr inbounds nuw i8, ptr %1689, i64 16
  %1692 = load <2 x double>, ptr %1691, align 16, !tbaa !26, !noalias !94
  %1693 = getelementptr inbounds nuw i8, ptr %1689, i64 32
  %1694 = load <2 x double>, ptr %1693, align 16, !tbaa !26, !noalias !94
  %1695 = getelementptr inbounds nuw i8, ptr %1689, i64 48
  %1696 = load <2 x double>, ptr %1695, align 16, !tbaa !26, !noalias !94
  %1697 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1504, <2 x double> %1696, <2 x double> %1694)
  %1698 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1504, <2 x double> %1697, <2 x double> %1692)
  %1699 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1504, <2 x double> %1698, <2 x double> %1690)
  %1700 = icmp slt i64 %1578, %1680
  %1701 = fmul <2 x double> %1508, %1699
  %1702 = select i1 %1700, <2 x double> %1699, <2 x double> %1701
  br label %1703

1703:                                             ; preds = %1687, %1683
  %1704 = phi <2 x double> [ %1686, %1683 ], [ %1702, %1687 ]
  %1705 = icmp slt i64 %1594, %1481
  br i1 %1705, label %1706, label %1708

1706:                                             ; preds = %1703
  %1707 = fmul <2 x double> %1565, %1704
  br label %1720

1708:                                             ; preds = %1703
  %1709 = fadd <2 x double> %1586, %1606
  %1710 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1709, <2 x double> %1493, <2 x double> %1491)
  %1711 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1709, <2 x double> %1710, <2 x double> %1489)
  %1712 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1709, <2 x double> %1711, <2 x double> %1487)
  %1713 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1709, <2 x double> %1712, <2 x double> %1485)
  %1714 = fmul <2 x double> %1713, %1704
  %1715 = getelementptr inbounds nuw <2 x double>, ptr %1535, i64 %1594
  %1716 = load <2 x double>, ptr %1715, align 16, !tbaa !26, !noalias !94
  %1717 = fmul <2 x double> %1506, %1716
  %1718 = fsub <2 x double> %1714, %1717
  %1719 = fadd <2 x double> %1714, %1717
  br label %1720

1720:                                             ; preds = %1588, %1708, %1706, %1669
  %1721 = phi i64 [ %1592, %1588 ], [ %1594, %1708 ], [ %1594, %1706 ], [ %1594, %1669 ]
  %1722 = phi <2 x double> [ %1586, %1588 ], [ %1606, %1708 ], [ %1606, %1706 ], [ %1606, %1669 ]
  %1723 = phi <2 x double> [ %1585, %1588 ], [ %1596, %1708 ], [ %1596, %1706 ], [ %1596, %1669 ]
  %1724 = phi <2 x double> [ %1584, %1588 ], [ %1598, %1708 ], [ %1598, %1706 ], [ %1598, %1669 ]
  %1725 = phi <2 x double> [ %1591, %1588 ], [ %1718, %1708 ], [ %1707, %1706 ], [ %1674, %1669 ]
  %1726 = phi <2 x double> [ %1590, %1588 ], [ %1719, %1708 ], [ %1707, %1706 ], [ %1672, %1669 ]
  %1727 = phi <2 x double> [ %1589, %1588 ], [ zeroinitializer, %1708 ], [ zeroinitializer, %1706 ], [ %1677, %1669 ]
  %1728 = getelementptr inbounds nuw <2 x double>, ptr %1537, i64 %1578
  %1729 = load <2 x double>, ptr %1728, align 16, !tbaa !26
  %1730 = icmp slt i64 %1578, %1481
  %1731 = select i1 %1730, <2 x double> %1500, <2 x double> %1513
  %1732 = fmul <2 x double> %1510, %1731
  %1733 = fmul <2 x double> %1527, %1584
  %1734 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1526, <2 x double> %1585, <2 x double> %1733)
  %1735 = fmul <2 x double> %1525, %1584
  %1736 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1519, <2 x double> %1585, <2 x double> %1735)
  %1737 = select i1 %1730, <2 x double> %1734, <2 x double> %1736
  %1738 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1729, <2 x double> %1732, <2 x double> %1725)
  %1739 = fadd <2 x double> %1582, %1738
  %1740 = fmul <2 x double> %1737, %1729
  %1741 = fsub <2 x double> %1581, %1727
  %1742 = fadd <2 x double> %1741, %1740
  %1743 = fneg <2 x double> %1583
  %1744 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1743, <2 x double> %1579, <2 x double> %1739)
  %1745 = fdiv <2 x double> splat (double 1.000000e+00), %1744
  %1746 = getelementptr inbounds nuw <2 x double>, ptr %1545, i64 %1578
  store <2 x double> %1583, ptr %1746, align 16, !tbaa !26
  %1747 = fneg <2 x double> %1742
  %1748 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1583, <2 x double> %1580, <2 x double> %1747)
  %1749 = fmul <2 x double> %1748, %1745
  %1750 = getelementptr inbounds nuw <2 x double>, ptr %1547, i64 %1578
  store <2 x double> %1749, ptr %1750, align 16, !tbaa !26
  %1751 = fmul <2 x double> %1726, %1745
  %1752 = getelementptr inbounds nuw <2 x double>, ptr %1549, i64 %1578
  store <2 x double> %1751, ptr %1752, align 16, !tbaa !26
  %1753 = icmp eq i64 %1721, %1469
  br i1 %1753, label %2196, label %1577, !llvm.loop !97

1754:                                             ; preds = %1475
  %1755 = add nsw i64 %1477, 1
  %1756 = icmp slt i64 %1755, %1476
  br i1 %1756, label %1760, label %1757

1757:                                             ; preds = %1754
  %1758 = load i64, ptr %128, align 16, !tbaa !21
  %1759 = load <2 x i64>, ptr %180, align 16, !tbaa !26
  br label %2047

1760:                                             ; preds = %1754
  %1761 = getelementptr inbounds %struct.Piece, ptr %1478, i64 %1755, i32 51
  %1762 = load i64, ptr %1761, align 16, !tbaa !31
  %1763 = icmp eq i64 %1762, 0
  %1764 = load i64, ptr %128, align 16, !tbaa !21
  %1765 = load <2 x i64>, ptr %180, align 16, !tbaa !26
  br i1 %1763, label %1766, label %2047

1766:                                             ; preds = %1760
  %1767 = getelementptr inbounds nuw i8, ptr %1479, i64 96
  %1768 = load <2 x double>, ptr %1767, align 16, !tbaa !26
  %1769 = getelementptr inbounds nuw i8, ptr %1479, i64 112
  %1770 = load <2 x double>, ptr %1769, align 16, !tbaa !26
  %1771 = getelementptr inbounds nuw i8, ptr %1479, i64 128
  %1772 = load <2 x double>, ptr %1771, align 16, !tbaa !26
  %1773 = getelementptr inbounds nuw i8, ptr %1479, i64 144
  %1774 = load <2 x double>, ptr %1773, align 16, !tbaa !26
  %1775 = getelementptr inbounds nuw i8, ptr %1479, i64 160
  %1776 = load <2 x double>, ptr %1775, align 16, !tbaa !26
  %1777 = getelementptr inbounds nuw i8, ptr %1479, i64 480
  %1778 = load <2 x double>, ptr %1777, align 16, !tbaa !26
  %1779 = add nsw i64 %1764, -1
  %1780 = getelementptr inbounds nuw i8, ptr %1479, i64 2016
  %1781 = load <2 x double>, ptr %1780, align 16, !tbaa !26
  %1782 = getelementptr inbounds nuw i8, ptr %1479, i64 1968
  %1783 = load <2 x double>, ptr %1782, align 16, !tbaa !26
  %1784 = getelementptr inbounds nuw i8, ptr %1479, i64 1504
  %1785 = load <2 x double>, ptr %1784, align 16, !tbaa !26
  %1786 = getelementptr inbounds nuw i8, ptr %1479, i64 1040
  %1787 = load <2 x double>, ptr %1786, align 16, !tbaa !26
  %1788 = fsub <2 x double> %1787, %1778
  %1789 = fmul <2 x double> %1785, %1788
  %1790 = getelementptr inbounds nuw i8, ptr %1479, i64 1520
  %1791 = load <2 x double>, ptr %1790, align 16, !tbaa !26, !noalias !98
  %1792 = getelementptr inbounds nuw i8, ptr %1479, i64 1264
  %1793 = load <2 x double>, ptr %1792, align 16, !tbaa !26, !noalias !98
  %1794 = fsub <2 x double> %1793, %1778
  %1795 = fmul <2 x double> %1791, %1794
  %1796 = getelementptr inbounds nuw i8, ptr %1479, i64 1536
  %1797 = load <2 x double>, ptr %1796, align 16, !tbaa !26, !noalias !98
  %1798 = getelementptr inbounds nuw i8, ptr %1479, i64 1488
  %1799 = load <2 x double>, ptr %1798, align 16, !tbaa !26, !noalias !98
  %1800 = fsub <2 x double> %1799, %1778
  %1801 = fmul <2 x double> %1797, %1800
  %1802 = getelementptr inbounds nuw i8, ptr %1479, i64 2392
  %1803 = load ptr, ptr %1802, align 8, !tbaa !84
  %1804 = getelementptr inbounds nuw i8, ptr %1479, i64 2400
  %1805 = load ptr, ptr %1804, align 16, !tbaa !49
  %1806 = getelementptr inbounds nuw i8, ptr %1479, i64 2408
  %1807 = load ptr, ptr %1806, align 8, !tbaa !66
  %1808 = getelementptr inbounds nuw i8, ptr %1479, i64 2456
  %1809 = load ptr, ptr %1808, align 8, !tbaa !77
  %1810 = getelementptr inbounds nuw i8, ptr %1479, i64 2464
  %1811 = load ptr, ptr %1810, align 16, !tbaa !50
  %1812 = getelementptr inbounds nuw i8, ptr %1479, i64 2480
  %1813 = load ptr, ptr %1812, align 16, !tbaa !37
  %1814 = getelementptr inbounds nuw i8, ptr %1479, i64 1568
  %1815 = load <2 x double>, ptr %1814, align 16, !tbaa !26
  %1816 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1765)
  %1817 = icmp eq i64 %1816, 0
  %1818 = getelementptr inbounds nuw i8, ptr %1479, i64 2448
  %1819 = load ptr, ptr %1818, align 16, !tbaa !85
  %1820 = getelementptr inbounds nuw i8, ptr %1479, i64 2432
  %1821 = load ptr, ptr %1820, align 16, !tbaa !86
  %1822 = getelementptr inbounds nuw i8, ptr %1479, i64 2440
  %1823 = load ptr, ptr %1822, align 8, !tbaa !87
  %1824 = load <2 x double>, ptr %1805, align 16, !tbaa !26
  %1825 = load <2 x double>, ptr %1807, align 16, !tbaa !26
  %1826 = fsub <2 x double> %1824, %1825
  %1827 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1815, <2 x double> %1826, <2 x double> %1824)
  br i1 %1817, label %1832, label %1828

1828:                                             ; preds = %1766
  %1829 = load <2 x double>, ptr %1803, align 16, !tbaa !26
  %1830 = icmp eq <2 x i64> %1765, zeroinitializer
  %1831 = select <2 x i1> %1830, <2 x double> %1827, <2 x double> %1829
  br label %1832

1832:                                             ; preds = %1766, %1828
  %1833 = phi <2 x double> [ %1831, %1828 ], [ %1827, %1766 ]
  %1834 = getelementptr inbounds %struct.Piece, ptr %1478, i64 %1755
  %1835 = getelementptr inbounds nuw i8, ptr %1834, i64 96
  %1836 = load <2 x double>, ptr %1835, align 16, !tbaa !26
  %1837 = getelementptr inbounds nuw i8, ptr %1834, i64 112
  %1838 = load <2 x double>, ptr %1837, align 16, !tbaa !26
  %1839 = getelementptr inbounds nuw i8, ptr %1834, i64 128
  %1840 = load <2 x double>, ptr %1839, align 16, !tbaa !26
  %1841 = getelementptr inbounds nuw i8, ptr %1834, i64 144
  %1842 = load <2 x double>, ptr %1841, align 16, !tbaa !26
  %1843 = getelementptr inbounds nuw i8, ptr %1834, i64 160
  %1844 = load <2 x double>, ptr %1843, align 16, !tbaa !26
  %1845 = getelementptr inbounds nuw i8, ptr %1834, i64 480
  %1846 = load <2 x double>, ptr %1845, align 16, !tbaa !26
  %1847 = getelementptr inbounds nuw i8, ptr %1834, i64 2016
  %1848 = load <2 x double>, ptr %1847, align 16, !tbaa !26
  %1849 = getelementptr inbounds nuw i8, ptr %1834, i64 1968
  %1850 = load <2 x double>, ptr %1849, align 16, !tbaa !26
  %1851 = getelementptr inbounds nuw i8, ptr %1834, i64 1504
  %1852 = load <2 x double>, ptr %1851, align 16, !tbaa !26
  %1853 = getelementptr inbounds nuw i8, ptr %1834, i64 1040
  %1854 = load <2 x double>, ptr %1853, align 16, !tbaa !26
  %1855 = fsub <2 x double> %1854, %1846
  %1856 = fmul <2 x double> %1852, %1855
  %1857 = getelementptr inbounds nuw i8, ptr %1834, i64 1520
  %1858 = load <2 x double>, ptr %1857, align 16, !tbaa !26, !noalias !101
  %1859 = getelementptr inbounds nuw i8, ptr %1834, i64 1264
  %1860 = load <2 x double>, ptr %1859, align 16, !tbaa !26, !noalias !101
  %1861 = fsub <2 x double> %1860, %1846
  %1862 = fmul <2 x double> %1858, %1861
  %1863 = getelementptr inbounds nuw i8, ptr %1834, i64 1536
  %1864 = load <2 x double>, ptr %1863, align 16, !tbaa !26, !noalias !101
  %1865 = getelementptr inbounds nuw i8, ptr %1834, i64 1488
  %1866 = load <2 x double>, ptr %1865, align 16, !tbaa !26, !noalias !101
  %1867 = fsub <2 x double> %1866, %1846
  %1868 = fmul <2 x double> %1864, %1867
  %1869 = getelementptr inbounds nuw i8, ptr %1834, i64 2392
  %1870 = load ptr, ptr %1869, align 8, !tbaa !84
  %1871 = getelementptr inbounds nuw i8, ptr %1834, i64 2400
  %1872 = load ptr, ptr %1871, align 16, !tbaa !49
  %1873 = getelementptr inbounds nuw i8, ptr %1834, i64 2408
  %1874 = load ptr, ptr %1873, align 8, !tbaa !66
  %1875 = getelementptr inbounds nuw i8, ptr %1834, i64 2456
  %1876 = load ptr, ptr %1875, align 8, !tbaa !77
  %1877 = getelementptr inbounds nuw i8, ptr %1834, i64 2464
  %1878 = load ptr, ptr %1877, align 16, !tbaa !50
  %1879 = getelementptr inbounds nuw i8, ptr %1834, i64 2480
  %1880 = load ptr, ptr %1879, align 16, !tbaa !37
  %1881 = getelementptr inbounds nuw i8, ptr %1834, i64 1568
  %1882 = load <2 x double>, ptr %1881, align 16, !tbaa !26
  %1883 = getelementptr inbounds nuw i8, ptr %1834, i64 2448
  %1884 = load ptr, ptr %1883, align 16, !tbaa !85
  %1885 = getelementptr inbounds nuw i8, ptr %1834, i64 2432
  %1886 = load ptr, ptr %1885, align 16, !tbaa !86
  %1887 = getelementptr inbounds nuw i8, ptr %1834, i64 2440
  %1888 = load ptr, ptr %1887, align 8, !tbaa !87
  %1889 = load <2 x double>, ptr %1872, align 16, !tbaa !26
  %1890 = load <2 x double>, ptr %1874, align 16, !tbaa !26
  %1891 = fsub <2 x double> %1889, %1890
  %1892 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1882, <2 x double> %1891, <2 x double> %1889)
  br i1 %1817, label %1897, label %1893

1893:                                             ; preds = %1832
  %1894 = load <2 x double>, ptr %1870, align 16, !tbaa !26
  %1895 = icmp eq <2 x i64> %1765, zeroinitializer
  %1896 = select <2 x i1> %1895, <2 x double> %1892, <2 x double> %1894
  br label %1897

1897:                                             ; preds = %1832, %1893
  %1898 = phi <2 x double> [ %1896, %1893 ], [ %1892, %1832 ]
  br i1 %1472, label %1899, label %2196

1899:                                             ; preds = %1897
  %1900 = getelementptr inbounds nuw i8, ptr %1479, i64 1792
  %1901 = getelementptr inbounds nuw i8, ptr %1479, i64 1808
  %1902 = getelementptr inbounds nuw i8, ptr %1479, i64 1824
  %1903 = icmp eq <2 x i64> %1765, zeroinitializer
  %1904 = getelementptr inbounds nuw i8, ptr %1834, i64 1792
  %1905 = getelementptr inbounds nuw i8, ptr %1834, i64 1808
  %1906 = getelementptr inbounds nuw i8, ptr %1834, i64 1824
  br label %1907

1907:                                             ; preds = %1899, %2018
  %1908 = phi i64 [ 0, %1899 ], [ %2019, %2018 ]
  %1909 = phi <2 x double> [ zeroinitializer, %1899 ], [ %1983, %2018 ]
  %1910 = phi <2 x double> [ zeroinitializer, %1899 ], [ %1981, %2018 ]
  %1911 = phi <2 x double> [ zeroinitializer, %1899 ], [ %1963, %2018 ]
  %1912 = phi <2 x double> [ zeroinitializer, %1899 ], [ %1962, %2018 ]
  %1913 = phi <2 x double> [ zeroinitializer, %1899 ], [ %1958, %2018 ]
  %1914 = phi <2 x double> [ %1825, %1899 ], [ %1961, %2018 ]
  %1915 = phi <2 x double> [ %1824, %1899 ], [ %1960, %2018 ]
  %1916 = phi <2 x double> [ %1833, %1899 ], [ %1959, %2018 ]
  %1917 = phi <2 x double> [ zeroinitializer, %1899 ], [ %2044, %2018 ]
  %1918 = phi <2 x double> [ zeroinitializer, %1899 ], [ %2042, %2018 ]
  %1919 = phi <2 x double> [ zeroinitializer, %1899 ], [ %2025, %2018 ]
  %1920 = phi <2 x double> [ zeroinitializer, %1899 ], [ %2024, %2018 ]
  %1921 = phi <2 x double> [ zeroinitializer, %1899 ], [ %2020, %2018 ]
  %1922 = phi <2 x double> [ %1890, %1899 ], [ %2023, %2018 ]
  %1923 = phi <2 x double> [ %1889, %1899 ], [ %2022, %2018 ]
  %1924 = phi <2 x double> [ %1898, %1899 ], [ %2021, %2018 ]
  %1925 = load <2 x double>, ptr %1900, align 16, !tbaa !26
  %1926 = load <2 x double>, ptr %1901, align 16, !tbaa !26
  %1927 = load <2 x double>, ptr %1902, align 16, !tbaa !26
  %1928 = icmp slt i64 %1908, %1779
  br i1 %1928, label %1929, label %1957

1929:                                             ; preds = %1907
  %1930 = add nuw nsw i64 %1908, 1
  %1931 = getelementptr inbounds nuw <2 x double>, ptr %1805, i64 %1930
  %1932 = load <2 x double>, ptr %1931, align 16, !tbaa !26
  %1933 = getelementptr inbounds nuw <2 x double>, ptr %1807, i64 %1930
  %1934 = load <2 x double>, ptr %1933, align 16, !tbaa !26
  %1935 = fsub <2 x double> %1932, %1934
  %1936 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1815, <2 x double> %1935, <2 x double> %1932)
  br i1 %1817, label %1941, label %1937

1937:                                             ; preds = %1929
  %1938 = getelementptr inbounds nuw <2 x double>, ptr %1803, i64 %1930
  %1939 = load <2 x double>, ptr %1938, align 16, !tbaa !26
  %1940 = select <2 x i1> %1903, <2 x double> %1936, <2 x double> %1939
  br label %1941

1941:                                             ; preds = %1929, %1937
  %1942 = phi <2 x double> [ %1940, %1937 ], [ %1936, %1929 ]
  %1943 = getelementptr inbounds nuw <2 x double>, ptr %1813, i64 %1930
  %1944 = load <2 x double>, ptr %1943, align 16, !tbaa !26, !noalias !104
  %1945 = fmul <2 x double> %1783, %1944
  %1946 = fadd <2 x double> %1916, %1942
  %1947 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1946, <2 x double> %1776, <2 x double> %1774)
  %1948 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1946, <2 x double> %1947, <2 x double> %1772)
  %1949 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1946, <2 x double> %1948, <2 x double> %1770)
  %1950 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1946, <2 x double> %1949, <2 x double> %1768)
  %1951 = fmul <2 x double> %1945, %1950
  %1952 = getelementptr inbounds nuw <2 x double>, ptr %1809, i64 %1930
  %1953 = load <2 x double>, ptr %1952, align 16, !tbaa !26, !noalias !104
  %1954 = fmul <2 x double> %1781, %1953
  %1955 = fsub <2 x double> %1951, %1954
  %1956 = fadd <2 x double> %1954, %1951
  br label %1957

1957:                                             ; preds = %1941, %1907
  %1958 = phi <2 x double> [ %1955, %1941 ], [ %1925, %1907 ]
  %1959 = phi <2 x double> [ %1942, %1941 ], [ %1916, %1907 ]
  %1960 = phi <2 x double> [ %1932, %1941 ], [ %1915, %1907 ]
  %1961 = phi <2 x double> [ %1934, %1941 ], [ %1914, %1907 ]
  %1962 = phi <2 x double> [ %1956, %1941 ], [ %1926, %1907 ]
  %1963 = phi <2 x double> [ zeroinitializer, %1941 ], [ %1927, %1907 ]
  %1964 = getelementptr inbounds nuw <2 x double>, ptr %1811, i64 %1908
  %1965 = load <2 x double>, ptr %1964, align 16, !tbaa !26
  %1966 = fmul <2 x double> %1801, %1914
  %1967 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1795, <2 x double> %1915, <2 x double> %1966)
  %1968 = fmul <2 x double> %1967, %1965
  %1969 = icmp eq i64 %1908, %1779
  %1970 = fsub <2 x double> %1911, %1963
  %1971 = fadd <2 x double> %1970, %1968
  %1972 = select i1 %1969, <2 x double> %1971, <2 x double> %1968
  %1973 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1965, <2 x double> %1789, <2 x double> %1958)
  %1974 = fadd <2 x double> %1912, %1973
  %1975 = fneg <2 x double> %1913
  %1976 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1975, <2 x double> %1909, <2 x double> %1974)
  %1977 = fdiv <2 x double> splat (double 1.000000e+00), %1976
  %1978 = getelementptr inbounds nuw <2 x double>, ptr %1819, i64 %1908
  store <2 x double> %1913, ptr %1978, align 16, !tbaa !26
  %1979 = fneg <2 x double> %1972
  %1980 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1913, <2 x double> %1910, <2 x double> %1979)
  %1981 = fmul <2 x double> %1980, %1977
  %1982 = getelementptr inbounds nuw <2 x double>, ptr %1821, i64 %1908
  store <2 x double> %1981, ptr %1982, align 16, !tbaa !26
  %1983 = fmul <2 x double> %1962, %1977
  %1984 = getelementptr inbounds nuw <2 x double>, ptr %1823, i64 %1908
  store <2 x double> %1983, ptr %1984, align 16, !tbaa !26
  br i1 %1928, label %1990, label %1985

1985:                                             ; preds = %1957
  %1986 = load <2 x double>, ptr %1906, align 16, !tbaa !26
  %1987 = load <2 x double>, ptr %1905, align 16, !tbaa !26
  %1988 = load <2 x double>, ptr %1904, align 16, !tbaa !26
  %1989 = add nuw nsw i64 %1908, 1
  br label %2018

1990:                                             ; preds = %1957
  %1991 = add nuw nsw i64 %1908, 1
  %1992 = getelementptr inbounds nuw <2 x double>, ptr %1872, i64 %1991
  %1993 = load <2 x double>, ptr %1992, align 16, !tbaa !26
  %1994 = getelementptr inbounds nuw <2 x double>, ptr %1874, i64 %1991
  %1995 = load <2 x double>, ptr %1994, align 16, !tbaa !26
  %1996 = fsub <2 x double> %1993, %1995
  %1997 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1882, <2 x double> %1996, <2 x double> %1993)
  br i1 %1817, label %2002, label %1998

1998:                                             ; preds = %1990
  %1999 = getelementptr inbounds nuw <2 x double>, ptr %1870, i64 %1991
  %2000 = load <2 x double>, ptr %1999, align 16, !tbaa !26
  %2001 = select <2 x i1> %1903, <2 x double> %1997, <2 x double> %2000
  br label %2002

2002:                                             ; preds = %1990, %1998
  %2003 = phi <2 x double> [ %2001, %1998 ], [ %1997, %1990 ]
  %2004 = getelementptr inbounds nuw <2 x double>, ptr %1880, i64 %1991
  %2005 = load <2 x double>, ptr %2004, align 16, !tbaa !26, !noalias !107
  %2006 = fmul <2 x double> %1850, %2005
  %2007 = fadd <2 x double> %1924, %2003
  %2008 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2007, <2 x double> %1844, <2 x double> %1842)
  %2009 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2007, <2 x double> %2008, <2 x double> %1840)
  %2010 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2007, <2 x double> %2009, <2 x double> %1838)
  %2011 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2007, <2 x double> %2010, <2 x double> %1836)
  %2012 = fmul <2 x double> %2006, %2011
  %2013 = getelementptr inbounds nuw <2 x double>, ptr %1876, i64 %1991
  %2014 = load <2 x double>, ptr %2013, align 16, !tbaa !26, !noalias !107
  %2015 = fmul <2 x double> %1848, %2014
  %2016 = fsub <2 x double> %2012, %2015
  %2017 = fadd <2 x double> %2015, %2012
  br label %2018

2018:                                             ; preds = %1985, %2002
  %2019 = phi i64 [ %1989, %1985 ], [ %1991, %2002 ]
  %2020 = phi <2 x double> [ %1988, %1985 ], [ %2016, %2002 ]
  %2021 = phi <2 x double> [ %1924, %1985 ], [ %2003, %2002 ]
  %2022 = phi <2 x double> [ %1923, %1985 ], [ %1993, %2002 ]
  %2023 = phi <2 x double> [ %1922, %1985 ], [ %1995, %2002 ]
  %2024 = phi <2 x double> [ %1987, %1985 ], [ %2017, %2002 ]
  %2025 = phi <2 x double> [ %1986, %1985 ], [ zeroinitializer, %2002 ]
  %2026 = getelementptr inbounds nuw <2 x double>, ptr %1878, i64 %1908
  %2027 = load <2 x double>, ptr %2026, align 16, !tbaa !26
  %2028 = fmul <2 x double> %1868, %1922
  %2029 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1862, <2 x double> %1923, <2 x double> %2028)
  %2030 = fmul <2 x double> %2029, %2027
  %2031 = fsub <2 x double> %1919, %2025
  %2032 = fadd <2 x double> %2031, %2030
  %2033 = select i1 %1969, <2 x double> %2032, <2 x double> %2030
  %2034 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2027, <2 x double> %1856, <2 x double> %2020)
  %2035 = fadd <2 x double> %1920, %2034
  %2036 = fneg <2 x double> %1921
  %2037 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2036, <2 x double> %1917, <2 x double> %2035)
  %2038 = fdiv <2 x double> splat (double 1.000000e+00), %2037
  %2039 = getelementptr inbounds nuw <2 x double>, ptr %1884, i64 %1908
  store <2 x double> %1921, ptr %2039, align 16, !tbaa !26
  %2040 = fneg <2 x double> %2033
  %2041 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1921, <2 x double> %1918, <2 x double> %2040)
  %2042 = fmul <2 x double> %2041, %2038
  %2043 = getelementptr inbounds nuw <2 x double>, ptr %1886, i64 %1908
  store <2 x double> %2042, ptr %2043, align 16, !tbaa !26
  %2044 = fmul <2 x double> %2024, %2038
  %2045 = getelementptr inbounds nuw <2 x double>, ptr %1888, i64 %1908
  store <2 x double> %2044, ptr %2045, align 16, !tbaa !26
  %2046 = icmp eq i64 %2019, %1469
  br i1 %2046, label %2196, label %1907, !llvm.loop !110

2047:                                             ; preds = %1757, %1760
  %2048 = phi <2 x i64> [ %1759, %1757 ], [ %1765, %1760 ]
  %2049 = phi i64 [ %1758, %1757 ], [ %1764, %1760 ]
  %2050 = getelementptr inbounds nuw i8, ptr %1479, i64 96
  %2051 = load <2 x double>, ptr %2050, align 16, !tbaa !26
  %2052 = getelementptr inbounds nuw i8, ptr %1479, i64 112
  %2053 = load <2 x double>, ptr %2052, align 16, !tbaa !26
  %2054 = getelementptr inbounds nuw i8, ptr %1479, i64 128
  %2055 = load <2 x double>, ptr %2054, align 16, !tbaa !26
  %2056 = getelementptr inbounds nuw i8, ptr %1479, i64 144
  %2057 = load <2 x double>, ptr %2056, align 16, !tbaa !26
  %2058 = getelementptr inbounds nuw i8, ptr %1479, i64 160
  %2059 = load <2 x double>, ptr %2058, align 16, !tbaa !26
  %2060 = getelementptr inbounds nuw i8, ptr %1479, i64 480
  %2061 = load <2 x double>, ptr %2060, align 16, !tbaa !26
  %2062 = add nsw i64 %2049, -1
  %2063 = getelementptr inbounds nuw i8, ptr %1479, i64 2016
  %2064 = load <2 x double>, ptr %2063, align 16, !tbaa !26
  %2065 = getelementptr inbounds nuw i8, ptr %1479, i64 1968
  %2066 = load <2 x double>, ptr %2065, align 16, !tbaa !26
  %2067 = getelementptr inbounds nuw i8, ptr %1479, i64 1504
  %2068 = load <2 x double>, ptr %2067, align 16, !tbaa !26
  %2069 = getelementptr inbounds nuw i8, ptr %1479, i64 1040
  %2070 = load <2 x double>, ptr %2069, align 16, !tbaa !26
  %2071 = fsub <2 x double> %2070, %2061
  %2072 = fmul <2 x double> %2068, %2071
  %2073 = getelementptr inbounds nuw i8, ptr %1479, i64 1520
  %2074 = load <2 x double>, ptr %2073, align 16, !tbaa !26, !noalias !111
  %2075 = getelementptr inbounds nuw i8, ptr %1479, i64 1264
  %2076 = load <2 x double>, ptr %2075, align 16, !tbaa !26, !noalias !111
  %2077 = fsub <2 x double> %2076, %2061
  %2078 = fmul <2 x double> %2074, %2077
  %2079 = getelementptr inbounds nuw i8, ptr %1479, i64 1536
  %2080 = load <2 x double>, ptr %2079, align 16, !tbaa !26, !noalias !111
  %2081 = getelementptr inbounds nuw i8, ptr %1479, i64 1488
  %2082 = load <2 x double>, ptr %2081, align 16, !tbaa !26, !noalias !111
  %2083 = fsub <2 x double> %2082, %2061
  %2084 = fmul <2 x double> %2080, %2083
  %2085 = getelementptr inbounds nuw i8, ptr %1479, i64 2392
  %2086 = load ptr, ptr %2085, align 8, !tbaa !84
  %2087 = getelementptr inbounds nuw i8, ptr %1479, i64 2400
  %2088 = load ptr, ptr %2087, align 16, !tbaa !49
  %2089 = getelementptr inbounds nuw i8, ptr %1479, i64 2408
  %2090 = load ptr, ptr %2089, align 8, !tbaa !66
  %2091 = getelementptr inbounds nuw i8, ptr %1479, i64 2456
  %2092 = load ptr, ptr %2091, align 8, !tbaa !77
  %2093 = getelementptr inbounds nuw i8, ptr %1479, i64 2464
  %2094 = load ptr, ptr %2093, align 16, !tbaa !50
  %2095 = getelementptr inbounds nuw i8, ptr %1479, i64 2480
  %2096 = load ptr, ptr %2095, align 16, !tbaa !37
  %2097 = getelementptr inbounds nuw i8, ptr %1479, i64 1568
  %2098 = load <2 x double>, ptr %2097, align 16, !tbaa !26
  %2099 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2048)
  %2100 = icmp eq i64 %2099, 0
  %2101 = getelementptr inbounds nuw i8, ptr %1479, i64 2448
  %2102 = load ptr, ptr %2101, align 16, !tbaa !85
  %2103 = getelementptr inbounds nuw i8, ptr %1479, i64 2432
  %2104 = load ptr, ptr %2103, align 16, !tbaa !86
  %2105 = getelementptr inbounds nuw i8, ptr %1479, i64 2440
  %2106 = load ptr, ptr %2105, align 8, !tbaa !87
  %2107 = load <2 x double>, ptr %2088, align 16, !tbaa !26
  %2108 = load <2 x double>, ptr %2090, align 16, !tbaa !26
  %2109 = fsub <2 x double> %2107, %2108
  %2110 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2098, <2 x double> %2109, <2 x double> %2107)
  br i1 %2100, label %2115, label %2111

2111:                                             ; preds = %2047
  %2112 = load <2 x double>, ptr %2086, align 16, !tbaa !26
  %2113 = icmp eq <2 x i64> %2048, zeroinitializer
  %2114 = select <2 x i1> %2113, <2 x double> %2110, <2 x double> %2112
  br label %2115

2115:                                             ; preds = %2047, %2111
  %2116 = phi <2 x double> [ %2114, %2111 ], [ %2110, %2047 ]
  br i1 %1472, label %2117, label %2196

2117:                                             ; preds = %2115
  %2118 = getelementptr inbounds nuw i8, ptr %1479, i64 1792
  %2119 = getelementptr inbounds nuw i8, ptr %1479, i64 1808
  %2120 = getelementptr inbounds nuw i8, ptr %1479, i64 1824
  %2121 = icmp eq <2 x i64> %2048, zeroinitializer
  br label %2122

2122:                                             ; preds = %2117, %2166
  %2123 = phi i64 [ 0, %2117 ], [ %2167, %2166 ]
  %2124 = phi <2 x double> [ zeroinitializer, %2117 ], [ %2193, %2166 ]
  %2125 = phi <2 x double> [ zeroinitializer, %2117 ], [ %2191, %2166 ]
  %2126 = phi <2 x double> [ zeroinitializer, %2117 ], [ %2173, %2166 ]
  %2127 = phi <2 x double> [ zeroinitializer, %2117 ], [ %2172, %2166 ]
  %2128 = phi <2 x double> [ zeroinitializer, %2117 ], [ %2168, %2166 ]
  %2129 = phi <2 x double> [ %2108, %2117 ], [ %2171, %2166 ]
  %2130 = phi <2 x double> [ %2107, %2117 ], [ %2170, %2166 ]
  %2131 = phi <2 x double> [ %2116, %2117 ], [ %2169, %2166 ]
  %2132 = icmp slt i64 %2123, %2062
  br i1 %2132, label %2138, label %2133

2133:                                             ; preds = %2122
  %2134 = load <2 x double>, ptr %2120, align 16, !tbaa !26
  %2135 = load <2 x double>, ptr %2119, align 16, !tbaa !26
  %2136 = load <2 x double>, ptr %2118, align 16, !tbaa !26
  %2137 = add nuw nsw i64 %2123, 1
  br label %2166

2138:                                             ; preds = %2122
  %2139 = add nuw nsw i64 %2123, 1
  %2140 = getelementptr inbounds nuw <2 x double>, ptr %2088, i64 %2139
  %2141 = load <2 x double>, ptr %2140, align 16, !tbaa !26
  %2142 = getelementptr inbounds nuw <2 x double>, ptr %2090, i64 %2139
  %2143 = load <2 x double>, ptr %2142, align 16, !tbaa !26
  %2144 = fsub <2 x double> %2141, %2143
  %2145 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2098, <2 x double> %2144, <2 x double> %2141)
  br i1 %2100, label %2150, label %2146

2146:                                             ; preds = %2138
  %2147 = getelementptr inbounds nuw <2 x double>, ptr %2086, i64 %2139
  %2148 = load <2 x double>, ptr %2147, align 16, !tbaa !26
  %2149 = select <2 x i1> %2121, <2 x double> %2145, <2 x double> %2148
  br label %2150

2150:                                             ; preds = %2138, %2146
  %2151 = phi <2 x double> [ %2149, %2146 ], [ %2145, %2138 ]
  %2152 = getelementptr inbounds nuw <2 x double>, ptr %2096, i64 %2139
  %2153 = load <2 x double>, ptr %2152, align 16, !tbaa !26, !noalias !114
  %2154 = fmul <2 x double> %2066, %2153
  %2155 = fadd <2 x double> %2131, %2151
  %2156 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2155, <2 x double> %2059, <2 x double> %2057)
  %2157 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2155, <2 x double> %2156, <2 x double> %2055)
  %2158 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2155, <2 x double> %2157, <2 x double> %2053)
  %2159 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2155, <2 x double> %2158, <2 x double> %2051)
  %2160 = fmul <2 x double> %2154, %2159
  %2161 = getelementptr inbounds nuw <2 x double>, ptr %2092, i64 %2139
  %2162 = load <2 x double>, ptr %2161, align 16, !tbaa !26, !noalias !114
  %2163 = fmul <2 x double> %2064, %2162
  %2164 = fsub <2 x double> %2160, %2163
  %2165 = fadd <2 x double> %2163, %2160
  br label %2166

2166:                                             ; preds = %2133, %2150
  %2167 = phi i64 [ %2137, %2133 ], [ %2139, %2150 ]
  %2168 = phi <2 x double> [ %2136, %2133 ], [ %2164, %2150 ]
  %2169 = phi <2 x double> [ %2131, %2133 ], [ %2151, %2150 ]
  %2170 = phi <2 x double> [ %2130, %2133 ], [ %2141, %2150 ]
  %2171 = phi <2 x double> [ %2129, %2133 ], [ %2143, %2150 ]
  %2172 = phi <2 x double> [ %2135, %2133 ], [ %2165, %2150 ]
  %2173 = phi <2 x double> [ %2134, %2133 ], [ zeroinitializer, %2150 ]
  %2174 = getelementptr inbounds nuw <2 x double>, ptr %2094, i64 %2123
  %2175 = load <2 x double>, ptr %2174, align 16, !tbaa !26
  %2176 = fmul <2 x double> %2084, %2129
  %2177 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2078, <2 x double> %2130, <2 x double> %2176)
  %2178 = fmul <2 x double> %2177, %2175
  %2179 = icmp eq i64 %2123, %2062
  %2180 = fsub <2 x double> %2126, %2173
  %2181 = fadd <2 x double> %2180, %2178
  %2182 = select i1 %2179, <2 x double> %2181, <2 x double> %2178
  %2183 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2175, <2 x double> %2072, <2 x double> %2168)
  %2184 = fadd <2 x double> %2127, %2183
  %2185 = fneg <2 x double> %2128
  %2186 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2185, <2 x double> %2124, <2 x double> %2184)
  %2187 = fdiv <2 x double> splat (double 1.000000e+00), %2186
  %2188 = getelementptr inbounds nuw <2 x double>, ptr %2102, i64 %2123
  store <2 x double> %2128, ptr %2188, align 16, !tbaa !26
  %2189 = fneg <2 x double> %2182
  %2190 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2128, <2 x double> %2125, <2 x double> %2189)
  %2191 = fmul <2 x double> %2190, %2187
  %2192 = getelementptr inbounds nuw <2 x double>, ptr %2104, i64 %2123
  store <2 x double> %2191, ptr %2192, align 16, !tbaa !26
  %2193 = fmul <2 x double> %2172, %2187
  %2194 = getelementptr inbounds nuw <2 x double>, ptr %2106, i64 %2123
  store <2 x double> %2193, ptr %2194, align 16, !tbaa !26
  %2195 = icmp eq i64 %2167, %1469
  br i1 %2195, label %2196, label %2122, !llvm.loop !117

2196:                                             ; preds = %1720, %2166, %2018, %1558, %2115, %1897
  %2197 = phi i64 [ %1755, %1897 ], [ %1477, %2115 ], [ %1477, %1558 ], [ %1755, %2018 ], [ %1477, %2166 ], [ %1477, %1720 ]
  %2198 = add nsw i64 %2197, 1
  %2199 = load i64, ptr %166, align 8, !tbaa !20
  %2200 = icmp slt i64 %2198, %2199
  br i1 %2200, label %1475, label %1473, !llvm.loop !118

2201:                                             ; preds = %1459, %2506
  %2202 = phi i64 [ %2642, %2506 ], [ 0, %1459 ]
  %2203 = load ptr, ptr %139, align 8, !tbaa !28
  %2204 = getelementptr inbounds nuw %struct.Piece, ptr %2203, i64 %2202
  %2205 = load <2 x i64>, ptr %180, align 16, !tbaa !26
  %2206 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2205)
  %2207 = icmp eq i64 %2206, 0
  br i1 %2207, label %2208, label %2235

2208:                                             ; preds = %2201
  %2209 = getelementptr inbounds nuw i8, ptr %2204, i64 2352
  %2210 = load <2 x i64>, ptr %2209, align 16, !tbaa !26
  %2211 = getelementptr inbounds nuw i8, ptr %2204, i64 864
  %2212 = load <2 x double>, ptr %2211, align 16, !tbaa !26
  %2213 = getelementptr inbounds nuw i8, ptr %2204, i64 2160
  %2214 = load <2 x double>, ptr %2213, align 16, !tbaa !26
  %2215 = getelementptr inbounds nuw i8, ptr %2204, i64 1520
  %2216 = load <2 x double>, ptr %2215, align 16, !tbaa !26
  %2217 = getelementptr inbounds nuw i8, ptr %2204, i64 1536
  %2218 = load <2 x double>, ptr %2217, align 16, !tbaa !26
  %2219 = getelementptr inbounds nuw i8, ptr %2204, i64 2320
  %2220 = load <2 x i64>, ptr %2219, align 16, !tbaa !26
  %2221 = getelementptr inbounds nuw i8, ptr %2204, i64 592
  %2222 = load <2 x double>, ptr %2221, align 16, !tbaa !26
  %2223 = load <2 x double>, ptr %2204, align 16, !tbaa !26
  %2224 = getelementptr inbounds nuw i8, ptr %2204, i64 832
  %2225 = load <2 x double>, ptr %2224, align 16, !tbaa !26
  %2226 = getelementptr inbounds nuw i8, ptr %2204, i64 2176
  %2227 = load <2 x double>, ptr %2226, align 16, !tbaa !26
  %2228 = getelementptr inbounds nuw i8, ptr %2204, i64 1504
  %2229 = load <2 x double>, ptr %2228, align 16, !tbaa !26
  %2230 = getelementptr inbounds nuw i8, ptr %2204, i64 1616
  %2231 = load <2 x double>, ptr %2230, align 16, !tbaa !26
  %2232 = fmul <2 x double> %2212, %2214
  %2233 = fsub <2 x double> %2223, %2225
  %2234 = fmul <2 x double> %2233, %2227
  br label %2391

2235:                                             ; preds = %2201
  %2236 = getelementptr inbounds nuw i8, ptr %2204, i64 896
  %2237 = getelementptr inbounds nuw i8, ptr %2204, i64 864
  %2238 = load <2 x double>, ptr %2237, align 16, !tbaa !26, !noalias !119
  %2239 = getelementptr inbounds nuw i8, ptr %2204, i64 2160
  %2240 = load <2 x double>, ptr %2239, align 16, !tbaa !26, !noalias !119
  %2241 = fmul <2 x double> %2238, %2240
  %2242 = fcmp ogt <2 x double> %2241, zeroinitializer
  %2243 = select <2 x i1> %2242, <2 x double> %2241, <2 x double> zeroinitializer
  %2244 = fcmp uge <2 x double> %2243, splat (double 1.000000e+00)
  %2245 = select <2 x i1> %2244, <2 x double> splat (double 1.000000e+00), <2 x double> %2243
  %2246 = getelementptr inbounds nuw i8, ptr %2204, i64 2352
  %2247 = load <2 x i64>, ptr %2246, align 16, !tbaa !26, !noalias !119
  %2248 = load <2 x double>, ptr %177, align 16, !tbaa !26, !noalias !119
  %2249 = load <2 x double>, ptr %2236, align 16, !tbaa !26, !noalias !119
  %2250 = icmp eq <2 x i64> %2247, zeroinitializer
  %2251 = select <2 x i1> %2250, <2 x double> %2249, <2 x double> %2248
  %2252 = getelementptr inbounds nuw i8, ptr %2204, i64 992
  %2253 = load <2 x double>, ptr %2252, align 16, !tbaa !26, !noalias !119
  %2254 = fsub <2 x double> splat (double 1.000000e+00), %2245
  %2255 = getelementptr inbounds nuw i8, ptr %2204, i64 592
  %2256 = load <2 x double>, ptr %2255, align 16, !tbaa !26, !noalias !119
  %2257 = getelementptr inbounds nuw i8, ptr %2204, i64 2320
  %2258 = load <2 x i64>, ptr %2257, align 16, !tbaa !26, !noalias !119
  %2259 = load <2 x double>, ptr %2204, align 16, !tbaa !26, !noalias !119
  %2260 = getelementptr inbounds nuw i8, ptr %2204, i64 832
  %2261 = load <2 x double>, ptr %2260, align 16, !tbaa !26, !noalias !119
  %2262 = fsub <2 x double> %2259, %2261
  %2263 = getelementptr inbounds nuw i8, ptr %2204, i64 2176
  %2264 = load <2 x double>, ptr %2263, align 16, !tbaa !26, !noalias !119
  %2265 = fmul <2 x double> %2262, %2264
  %2266 = icmp eq <2 x i64> %2258, zeroinitializer
  %2267 = select <2 x i1> %2266, <2 x double> zeroinitializer, <2 x double> %2265
  %2268 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2254, <2 x double> %2256, <2 x double> %2267)
  %2269 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2253, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2270 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2253, <2 x double> %2269, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2271 = fdiv <2 x double> splat (double 1.000000e+00), %2270
  %2272 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2251, <2 x double> %2268, <2 x double> splat (double 1.000000e+00))
  %2273 = fdiv <2 x double> splat (double 1.000000e+00), %2272
  %2274 = load <2 x double>, ptr %178, align 16, !tbaa !26, !noalias !119
  %2275 = load <2 x double>, ptr %175, align 16, !tbaa !26, !noalias !119
  %2276 = select <2 x i1> %2250, <2 x double> %2275, <2 x double> %2274
  %2277 = fsub <2 x double> %2276, %2253
  %2278 = fmul <2 x double> %2277, %2273
  %2279 = fmul <2 x double> %2251, %2278
  %2280 = getelementptr inbounds nuw i8, ptr %2204, i64 1504
  %2281 = load <2 x double>, ptr %2280, align 16, !tbaa !26, !noalias !119
  %2282 = getelementptr inbounds nuw i8, ptr %2204, i64 912
  %2283 = load <2 x double>, ptr %2282, align 16, !tbaa !26, !noalias !119
  %2284 = getelementptr inbounds nuw i8, ptr %2204, i64 1520
  %2285 = load <2 x double>, ptr %2284, align 16, !tbaa !26, !noalias !119
  %2286 = getelementptr inbounds nuw i8, ptr %2204, i64 1136
  %2287 = load <2 x double>, ptr %2286, align 16, !tbaa !26, !noalias !119
  %2288 = fmul <2 x double> %2285, %2287
  %2289 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2281, <2 x double> %2283, <2 x double> %2288)
  %2290 = getelementptr inbounds nuw i8, ptr %2204, i64 1536
  %2291 = load <2 x double>, ptr %2290, align 16, !tbaa !26, !noalias !119
  %2292 = getelementptr inbounds nuw i8, ptr %2204, i64 1360
  %2293 = load <2 x double>, ptr %2292, align 16, !tbaa !26, !noalias !119
  %2294 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2291, <2 x double> %2293, <2 x double> %2289)
  %2295 = getelementptr inbounds nuw i8, ptr %2204, i64 2192
  %2296 = load <2 x double>, ptr %2295, align 16, !tbaa !26, !noalias !119
  %2297 = fmul <2 x double> %2264, %2296
  %2298 = fcmp ule <2 x double> %2245, zeroinitializer
  %2299 = or <2 x i1> %2244, %2298
  %2300 = fmul <2 x double> %2240, %2256
  %2301 = select <2 x i1> %2299, <2 x double> zeroinitializer, <2 x double> %2300
  %2302 = select <2 x i1> %2266, <2 x double> %2301, <2 x double> %2297
  %2303 = fmul <2 x double> %2251, %2279
  %2304 = fmul <2 x double> %2273, %2303
  %2305 = fmul <2 x double> %2271, %2304
  %2306 = fmul <2 x double> %2305, %2302
  %2307 = getelementptr inbounds nuw i8, ptr %2204, i64 1552
  %2308 = load <2 x double>, ptr %2307, align 16, !tbaa !26, !noalias !119
  %2309 = fmul <2 x double> %2308, %2306
  %2310 = fadd <2 x double> %2309, splat (double 1.000000e+00)
  %2311 = fdiv <2 x double> splat (double 1.000000e+00), %2310
  %2312 = getelementptr inbounds nuw i8, ptr %2204, i64 960
  %2313 = load <2 x double>, ptr %2312, align 16, !tbaa !26, !noalias !119
  %2314 = fsub <2 x double> %2279, %2313
  %2315 = getelementptr inbounds nuw i8, ptr %2204, i64 1632
  %2316 = load <2 x double>, ptr %2315, align 16, !tbaa !26, !noalias !119
  %2317 = fsub <2 x double> %2294, %2316
  %2318 = fmul <2 x double> %2309, %2317
  %2319 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2314, <2 x double> %2271, <2 x double> %2318)
  %2320 = fmul <2 x double> %2319, %2311
  %2321 = getelementptr inbounds nuw i8, ptr %2204, i64 1616
  %2322 = load <2 x double>, ptr %2321, align 16, !tbaa !26, !noalias !119
  %2323 = fcmp ule <2 x double> %2322, zeroinitializer
  %2324 = fcmp ule <2 x double> %2320, zeroinitializer
  %2325 = or <2 x i1> %2323, %2324
  %2326 = select <2 x i1> %2325, <2 x double> zeroinitializer, <2 x double> %2320
  %2327 = getelementptr inbounds nuw i8, ptr %2204, i64 640
  %2328 = load <2 x double>, ptr %2327, align 16, !tbaa !26, !noalias !119
  %2329 = fcmp ogt <2 x double> %2328, zeroinitializer
  %2330 = getelementptr inbounds nuw i8, ptr %2204, i64 352
  %2331 = load <2 x double>, ptr %2330, align 16, !tbaa !26, !noalias !119
  %2332 = bitcast <2 x i1> %2329 to i2
  %2333 = icmp eq i2 %2332, 0
  br i1 %2333, label %2346, label %2334

2334:                                             ; preds = %2235
  %2335 = getelementptr inbounds nuw i8, ptr %2204, i64 1008
  %2336 = load <2 x double>, ptr %2335, align 16, !tbaa !26, !noalias !119
  %2337 = fadd <2 x double> %2278, %2336
  %2338 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2337)
  %2339 = fcmp ogt <2 x double> %2328, splat (double 1.000000e-09)
  %2340 = select <2 x i1> %2339, <2 x double> %2328, <2 x double> splat (double 1.000000e-09)
  %2341 = fdiv <2 x double> %2338, %2340
  %2342 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2341)
  %2343 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2342)
  %2344 = select <2 x i1> %2329, <2 x double> %2343, <2 x double> splat (double 1.000000e+00)
  %2345 = fmul <2 x double> %2331, %2344
  br label %2346

2346:                                             ; preds = %2334, %2235
  %2347 = phi <2 x double> [ %2345, %2334 ], [ %2331, %2235 ]
  %2348 = getelementptr inbounds nuw i8, ptr %2204, i64 1120
  %2349 = load <2 x double>, ptr %2348, align 16, !tbaa !26, !noalias !119
  %2350 = getelementptr inbounds nuw i8, ptr %2204, i64 1344
  %2351 = load <2 x double>, ptr %2350, align 16, !tbaa !26, !noalias !119
  %2352 = fmul <2 x double> %2291, %2351
  %2353 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2285, <2 x double> %2349, <2 x double> %2352)
  %2354 = getelementptr inbounds nuw i8, ptr %2204, i64 400
  %2355 = load <2 x double>, ptr %2354, align 16, !tbaa !26, !noalias !119
  %2356 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2355, <2 x double> %2281, <2 x double> splat (double 1.000000e+00))
  %2357 = fdiv <2 x double> splat (double 1.000000e+00), %2356
  %2358 = fmul <2 x double> %2273, %2278
  %2359 = fmul <2 x double> %2271, %2358
  %2360 = fmul <2 x double> %2359, %2311
  %2361 = select <2 x i1> %2325, <2 x double> zeroinitializer, <2 x double> %2360
  %2362 = getelementptr inbounds nuw i8, ptr %2204, i64 368
  %2363 = load <2 x double>, ptr %2362, align 16, !tbaa !26, !noalias !119
  %2364 = fmul <2 x double> %2347, splat (double 2.500000e-01)
  %2365 = fmul <2 x double> %2268, %2364
  %2366 = fneg <2 x double> %2273
  %2367 = fmul <2 x double> %2365, %2366
  %2368 = select <2 x i1> %2329, <2 x double> %2367, <2 x double> splat (double -0.000000e+00)
  %2369 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2363, <2 x double> %2361, <2 x double> %2368)
  %2370 = fadd <2 x double> %2316, %2326
  %2371 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2363, <2 x double> %2370, <2 x double> %2347)
  %2372 = fneg <2 x double> %2355
  %2373 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2372, <2 x double> %2353, <2 x double> %2371)
  %2374 = fneg <2 x double> %2251
  %2375 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2357, <2 x double> %2373, <2 x double> %2374)
  %2376 = fmul <2 x double> %2357, %2369
  %2377 = fcmp olt <2 x double> %2376, splat (double 8.000000e-01)
  %2378 = select <2 x i1> %2377, <2 x double> %2376, <2 x double> splat (double 8.000000e-01)
  %2379 = fsub <2 x double> splat (double 1.000000e+00), %2378
  %2380 = fdiv <2 x double> %2375, %2379
  %2381 = fadd <2 x double> %2251, %2380
  %2382 = getelementptr inbounds nuw i8, ptr %2204, i64 384
  %2383 = load <2 x double>, ptr %2382, align 16, !tbaa !26, !noalias !119
  %2384 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2372, <2 x double> %2353, <2 x double> %2383)
  %2385 = fmul <2 x double> %2357, %2384
  %2386 = fcmp olt <2 x double> %2381, %2385
  %2387 = select <2 x i1> %2386, <2 x double> %2381, <2 x double> %2385
  %2388 = select <2 x i1> %2250, <2 x double> %2387, <2 x double> %2248
  %2389 = icmp eq <2 x i64> %2205, zeroinitializer
  %2390 = select <2 x i1> %2389, <2 x double> %2249, <2 x double> %2388
  store <2 x double> %2390, ptr %2236, align 16, !tbaa !26
  br label %2391

2391:                                             ; preds = %2208, %2346
  %2392 = phi <2 x double> [ %2234, %2208 ], [ %2265, %2346 ]
  %2393 = phi <2 x double> [ %2233, %2208 ], [ %2262, %2346 ]
  %2394 = phi <2 x double> [ %2232, %2208 ], [ %2241, %2346 ]
  %2395 = phi <2 x double> [ %2231, %2208 ], [ %2322, %2346 ]
  %2396 = phi <2 x double> [ %2229, %2208 ], [ %2281, %2346 ]
  %2397 = phi <2 x double> [ %2225, %2208 ], [ %2261, %2346 ]
  %2398 = phi <2 x double> [ %2222, %2208 ], [ %2256, %2346 ]
  %2399 = phi <2 x i64> [ %2220, %2208 ], [ %2258, %2346 ]
  %2400 = phi <2 x double> [ %2218, %2208 ], [ %2291, %2346 ]
  %2401 = phi <2 x double> [ %2216, %2208 ], [ %2285, %2346 ]
  %2402 = phi <2 x i64> [ %2210, %2208 ], [ %2247, %2346 ]
  %2403 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %2404 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %2405 = icmp eq <2 x i64> %2402, zeroinitializer
  %2406 = select <2 x i1> %2405, <2 x double> %2404, <2 x double> %2403
  %2407 = getelementptr inbounds nuw i8, ptr %2204, i64 1584
  store <2 x double> %2406, ptr %2407, align 16, !tbaa !26
  %2408 = fcmp ogt <2 x double> %2394, zeroinitializer
  %2409 = select <2 x i1> %2408, <2 x double> %2394, <2 x double> zeroinitializer
  %2410 = fcmp olt <2 x double> %2409, splat (double 1.000000e+00)
  %2411 = select <2 x i1> %2410, <2 x double> %2409, <2 x double> splat (double 1.000000e+00)
  %2412 = getelementptr inbounds nuw i8, ptr %2204, i64 624
  %2413 = load <2 x double>, ptr %2412, align 16, !tbaa !26
  %2414 = fmul <2 x double> %2411, splat (double 4.180000e+03)
  %2415 = getelementptr inbounds nuw i8, ptr %2204, i64 320
  %2416 = load <2 x double>, ptr %2415, align 16, !tbaa !26
  %2417 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2414, <2 x double> %2416, <2 x double> %2413)
  %2418 = getelementptr inbounds nuw i8, ptr %2204, i64 1216
  %2419 = load <2 x double>, ptr %2418, align 16, !tbaa !26
  %2420 = getelementptr inbounds nuw i8, ptr %2204, i64 1440
  %2421 = load <2 x double>, ptr %2420, align 16, !tbaa !26
  %2422 = fmul <2 x double> %2400, %2421
  %2423 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2401, <2 x double> %2419, <2 x double> %2422)
  %2424 = fcmp ule <2 x double> %2413, zeroinitializer
  %2425 = getelementptr inbounds nuw i8, ptr %2204, i64 2064
  store <2 x double> %2411, ptr %2425, align 16, !tbaa !26
  %2426 = fsub <2 x double> splat (double 1.000000e+00), %2411
  %2427 = icmp eq <2 x i64> %2399, zeroinitializer
  %2428 = select <2 x i1> %2427, <2 x double> zeroinitializer, <2 x double> %2392
  %2429 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2426, <2 x double> %2398, <2 x double> %2428)
  %2430 = getelementptr inbounds nuw i8, ptr %2204, i64 2304
  store <2 x double> %2429, ptr %2430, align 16, !tbaa !26
  %2431 = fmul <2 x double> %2417, %2396
  %2432 = icmp eq <2 x i64> %2399, splat (i64 -1)
  %2433 = select <2 x i1> %2424, <2 x i1> splat (i1 true), <2 x i1> %2432
  %2434 = select <2 x i1> %2433, <2 x double> zeroinitializer, <2 x double> %2431
  %2435 = getelementptr inbounds nuw i8, ptr %2204, i64 2080
  store <2 x double> %2434, ptr %2435, align 16, !tbaa !26
  %2436 = fmul <2 x double> %2417, %2423
  %2437 = select <2 x i1> %2433, <2 x double> zeroinitializer, <2 x double> %2436
  %2438 = getelementptr inbounds nuw i8, ptr %2204, i64 2096
  store <2 x double> %2437, ptr %2438, align 16, !tbaa !26
  %2439 = getelementptr inbounds nuw i8, ptr %2204, i64 2032
  store <2 x double> %2395, ptr %2439, align 16, !tbaa !26
  %2440 = getelementptr inbounds nuw i8, ptr %2204, i64 736
  %2441 = load <2 x double>, ptr %2440, align 16, !tbaa !26
  %2442 = getelementptr inbounds nuw i8, ptr %2204, i64 752
  %2443 = load <2 x double>, ptr %2442, align 16, !tbaa !26
  %2444 = getelementptr inbounds nuw i8, ptr %2204, i64 768
  %2445 = load <2 x double>, ptr %2444, align 16, !tbaa !26
  %2446 = getelementptr inbounds nuw i8, ptr %2204, i64 784
  %2447 = load <2 x double>, ptr %2446, align 16, !tbaa !26
  %2448 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2397, <2 x double> %2447, <2 x double> %2445)
  %2449 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2397, <2 x double> %2448, <2 x double> %2443)
  %2450 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2397, <2 x double> %2449, <2 x double> %2441)
  %2451 = getelementptr inbounds nuw i8, ptr %2204, i64 1040
  store <2 x double> %2450, ptr %2451, align 16, !tbaa !26
  %2452 = getelementptr inbounds nuw i8, ptr %2204, i64 1264
  %2453 = load <2 x double>, ptr %2452, align 16, !tbaa !26
  %2454 = fmul <2 x double> %2401, %2453
  %2455 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2396, <2 x double> %2450, <2 x double> %2454)
  %2456 = getelementptr inbounds nuw i8, ptr %2204, i64 1488
  %2457 = load <2 x double>, ptr %2456, align 16, !tbaa !26
  %2458 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2400, <2 x double> %2457, <2 x double> %2455)
  %2459 = fmul <2 x double> %2458, splat (double 5.000000e-01)
  %2460 = getelementptr inbounds nuw i8, ptr %2204, i64 2016
  store <2 x double> %2459, ptr %2460, align 16, !tbaa !26
  %2461 = getelementptr inbounds nuw i8, ptr %2204, i64 672
  %2462 = load <2 x double>, ptr %2461, align 16, !tbaa !26
  %2463 = getelementptr inbounds nuw i8, ptr %2204, i64 688
  %2464 = load <2 x double>, ptr %2463, align 16, !tbaa !26
  %2465 = getelementptr inbounds nuw i8, ptr %2204, i64 704
  %2466 = load <2 x double>, ptr %2465, align 16, !tbaa !26
  %2467 = getelementptr inbounds nuw i8, ptr %2204, i64 720
  %2468 = load <2 x double>, ptr %2467, align 16, !tbaa !26
  %2469 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2397, <2 x double> %2468, <2 x double> %2466)
  %2470 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2397, <2 x double> %2469, <2 x double> %2464)
  %2471 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2397, <2 x double> %2470, <2 x double> %2462)
  %2472 = getelementptr inbounds nuw i8, ptr %2204, i64 2000
  store <2 x double> %2471, ptr %2472, align 16, !tbaa !26
  %2473 = getelementptr inbounds nuw i8, ptr %2204, i64 2368
  %2474 = load i64, ptr %2473, align 16, !tbaa !31
  %2475 = icmp eq i64 %2474, 0
  %2476 = getelementptr inbounds nuw i8, ptr %2204, i64 16
  %2477 = load <2 x double>, ptr %2476, align 16
  %2478 = fsub <2 x double> %2397, %2477
  %2479 = fdiv <2 x double> splat (double 1.000000e+00), %2478
  %2480 = fdiv <2 x double> %2471, %2397
  %2481 = select i1 %2475, <2 x double> %2480, <2 x double> %2479
  %2482 = getelementptr inbounds nuw i8, ptr %2204, i64 1968
  store <2 x double> %2481, ptr %2482, align 16, !tbaa !26
  %2483 = load i64, ptr %128, align 16, !tbaa !21
  %2484 = getelementptr inbounds nuw i8, ptr %2204, i64 2480
  %2485 = load ptr, ptr %2484, align 16, !tbaa !37
  br i1 %2475, label %2486, label %2490

2486:                                             ; preds = %2391
  %2487 = getelementptr inbounds <2 x double>, ptr %2485, i64 %2483
  %2488 = load <2 x double>, ptr %2487, align 16, !tbaa !26
  %2489 = fmul <2 x double> %2481, %2488
  br label %2506

2490:                                             ; preds = %2391
  %2491 = shl nsw i64 %2483, 6
  %2492 = getelementptr inbounds i8, ptr %2485, i64 %2491
  %2493 = load <2 x double>, ptr %2492, align 16, !tbaa !26
  %2494 = getelementptr inbounds nuw i8, ptr %2492, i64 16
  %2495 = load <2 x double>, ptr %2494, align 16, !tbaa !26
  %2496 = getelementptr inbounds nuw i8, ptr %2492, i64 32
  %2497 = load <2 x double>, ptr %2496, align 16, !tbaa !26
  %2498 = getelementptr inbounds nuw i8, ptr %2492, i64 48
  %2499 = load <2 x double>, ptr %2498, align 16, !tbaa !26
  %2500 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2397, <2 x double> %2499, <2 x double> %2497)
  %2501 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2397, <2 x double> %2500, <2 x double> %2495)
  %2502 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2397, <2 x double> %2501, <2 x double> %2493)
  %2503 = icmp sgt i64 %2483, %2474
  %2504 = fmul <2 x double> %2481, %2502
  %2505 = select i1 %2503, <2 x double> %2504, <2 x double> %2502
  br label %2506

2506:                                             ; preds = %2486, %2490
  %2507 = phi <2 x double> [ %2489, %2486 ], [ %2505, %2490 ]
  %2508 = getelementptr inbounds nuw i8, ptr %2204, i64 896
  %2509 = load <2 x double>, ptr %2508, align 16, !tbaa !26
  %2510 = getelementptr inbounds nuw i8, ptr %2204, i64 1600
  %2511 = load <2 x double>, ptr %2510, align 16, !tbaa !26
  %2512 = fcmp ogt <2 x double> %2393, splat (double 0x3D719799812DEA11)
  %2513 = select <2 x i1> %2512, <2 x double> %2393, <2 x double> splat (double 0x3D719799812DEA11)
  %2514 = getelementptr inbounds nuw i8, ptr %2204, i64 272
  %2515 = load <2 x double>, ptr %2514, align 16, !tbaa !26
  %2516 = fdiv <2 x double> %2515, %2513
  %2517 = getelementptr inbounds nuw i8, ptr %2204, i64 1984
  store <2 x double> %2516, ptr %2517, align 16, !tbaa !26
  %2518 = load i64, ptr %128, align 16, !tbaa !21
  %2519 = add nsw i64 %2518, -1
  %2520 = load <2 x i64>, ptr %180, align 16, !tbaa !26
  %2521 = getelementptr inbounds nuw i8, ptr %2204, i64 2392
  %2522 = load ptr, ptr %2521, align 8, !tbaa !84
  %2523 = getelementptr inbounds <2 x double>, ptr %2522, i64 %2519
  %2524 = load <2 x double>, ptr %2523, align 16, !tbaa !26
  %2525 = getelementptr inbounds nuw i8, ptr %2204, i64 2400
  %2526 = load ptr, ptr %2525, align 16, !tbaa !49
  %2527 = getelementptr inbounds <2 x double>, ptr %2526, i64 %2519
  %2528 = load <2 x double>, ptr %2527, align 16, !tbaa !26
  %2529 = getelementptr inbounds nuw i8, ptr %2204, i64 1568
  %2530 = load <2 x double>, ptr %2529, align 16, !tbaa !26
  %2531 = getelementptr inbounds nuw i8, ptr %2204, i64 2408
  %2532 = load ptr, ptr %2531, align 8, !tbaa !66
  %2533 = getelementptr inbounds <2 x double>, ptr %2532, i64 %2519
  %2534 = load <2 x double>, ptr %2533, align 16, !tbaa !26
  %2535 = fsub <2 x double> %2528, %2534
  %2536 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2530, <2 x double> %2535, <2 x double> %2528)
  %2537 = icmp eq <2 x i64> %2520, zeroinitializer
  %2538 = select <2 x i1> %2537, <2 x double> %2536, <2 x double> %2524
  %2539 = getelementptr inbounds nuw i8, ptr %2204, i64 48
  %2540 = load <2 x double>, ptr %2539, align 16, !tbaa !26
  %2541 = getelementptr inbounds nuw i8, ptr %2204, i64 64
  %2542 = load <2 x double>, ptr %2541, align 16, !tbaa !26
  %2543 = getelementptr inbounds nuw i8, ptr %2204, i64 80
  %2544 = load <2 x double>, ptr %2543, align 16, !tbaa !26
  %2545 = fmul <2 x double> %2511, %2544
  %2546 = fmul <2 x double> %2545, splat (double 0x3FD5555555555555)
  %2547 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2542, <2 x double> splat (double 5.000000e-01), <2 x double> %2546)
  %2548 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2511, <2 x double> %2547, <2 x double> %2540)
  %2549 = fmul <2 x double> %2511, %2548
  %2550 = getelementptr inbounds nuw i8, ptr %2204, i64 176
  %2551 = load <2 x double>, ptr %2550, align 16, !tbaa !26, !noalias !122
  %2552 = getelementptr inbounds nuw i8, ptr %2204, i64 192
  %2553 = load <2 x double>, ptr %2552, align 16, !tbaa !26, !noalias !122
  %2554 = getelementptr inbounds nuw i8, ptr %2204, i64 208
  %2555 = load <2 x double>, ptr %2554, align 16, !tbaa !26, !noalias !122
  %2556 = getelementptr inbounds nuw i8, ptr %2204, i64 224
  %2557 = load <2 x double>, ptr %2556, align 16, !tbaa !26, !noalias !122
  %2558 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2538, <2 x double> %2557, <2 x double> %2555)
  %2559 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2538, <2 x double> %2558, <2 x double> %2553)
  %2560 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2538, <2 x double> %2559, <2 x double> %2551)
  %2561 = fmul <2 x double> %2538, %2560
  %2562 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2561, <2 x double> %2544, <2 x double> %2542)
  %2563 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2561, <2 x double> %2562, <2 x double> %2540)
  %2564 = fdiv <2 x double> splat (double 1.000000e+00), %2563
  %2565 = fmul <2 x double> %2544, %2561
  %2566 = fmul <2 x double> %2565, splat (double 0x3FD5555555555555)
  %2567 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2542, <2 x double> splat (double 5.000000e-01), <2 x double> %2566)
  %2568 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2561, <2 x double> %2567, <2 x double> %2540)
  %2569 = fmul <2 x double> %2561, %2568
  %2570 = fsub <2 x double> %2538, %2569
  %2571 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2570, <2 x double> %2564, <2 x double> %2561)
  %2572 = fadd <2 x double> %2538, %2549
  %2573 = getelementptr inbounds nuw i8, ptr %2204, i64 96
  %2574 = load <2 x double>, ptr %2573, align 16, !tbaa !26
  %2575 = getelementptr inbounds nuw i8, ptr %2204, i64 112
  %2576 = load <2 x double>, ptr %2575, align 16, !tbaa !26
  %2577 = getelementptr inbounds nuw i8, ptr %2204, i64 128
  %2578 = load <2 x double>, ptr %2577, align 16, !tbaa !26
  %2579 = getelementptr inbounds nuw i8, ptr %2204, i64 144
  %2580 = load <2 x double>, ptr %2579, align 16, !tbaa !26
  %2581 = getelementptr inbounds nuw i8, ptr %2204, i64 160
  %2582 = load <2 x double>, ptr %2581, align 16, !tbaa !26
  %2583 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2572, <2 x double> %2582, <2 x double> %2580)
  %2584 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2572, <2 x double> %2583, <2 x double> %2578)
  %2585 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2572, <2 x double> %2584, <2 x double> %2576)
  %2586 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2572, <2 x double> %2585, <2 x double> %2574)
  %2587 = fadd <2 x double> %2511, %2571
  %2588 = fmul <2 x double> %2587, splat (double 5.000000e-01)
  %2589 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2588, <2 x double> %2544, <2 x double> %2542)
  %2590 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2588, <2 x double> %2589, <2 x double> %2540)
  %2591 = fmul <2 x double> %2586, %2590
  %2592 = fmul <2 x double> %2507, %2591
  %2593 = fmul <2 x double> %2411, %2592
  %2594 = getelementptr inbounds nuw i8, ptr %2204, i64 608
  %2595 = load <2 x double>, ptr %2594, align 16, !tbaa !26
  %2596 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2593, <2 x double> %2595, <2 x double> splat (double 1.000000e+00))
  %2597 = fdiv <2 x double> splat (double 1.000000e+00), %2596
  %2598 = select <2 x i1> %2427, <2 x double> %2597, <2 x double> splat (double 1.000000e+00)
  %2599 = getelementptr inbounds nuw i8, ptr %2204, i64 2048
  store <2 x double> %2598, ptr %2599, align 16, !tbaa !26
  %2600 = fmul <2 x double> %2592, %2598
  %2601 = getelementptr inbounds nuw i8, ptr %2204, i64 1856
  store <2 x double> %2600, ptr %2601, align 16, !tbaa !26
  %2602 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2511, <2 x double> %2544, <2 x double> %2542)
  %2603 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2511, <2 x double> %2602, <2 x double> %2540)
  %2604 = getelementptr inbounds nuw i8, ptr %2204, i64 1696
  store <2 x double> %2603, ptr %2604, align 16, !tbaa !26
  %2605 = fneg <2 x double> %2603
  %2606 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2605, <2 x double> %2511, <2 x double> %2549)
  %2607 = getelementptr inbounds nuw i8, ptr %2204, i64 1712
  store <2 x double> %2606, ptr %2607, align 16, !tbaa !26
  %2608 = fdiv <2 x double> splat (double 1.000000e+00), %2603
  %2609 = fneg <2 x double> %2564
  %2610 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2609, <2 x double> %2538, <2 x double> %2571)
  %2611 = getelementptr inbounds nuw i8, ptr %2204, i64 1728
  store <2 x double> %2610, ptr %2611, align 16, !tbaa !26
  %2612 = getelementptr inbounds nuw i8, ptr %2204, i64 1744
  store <2 x double> %2564, ptr %2612, align 16, !tbaa !26
  %2613 = fmul <2 x double> %2564, %2600
  %2614 = fmul <2 x double> %2459, splat (double 2.000000e+00)
  %2615 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2600, <2 x double> %2608, <2 x double> %2614)
  %2616 = fneg <2 x double> %2600
  %2617 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2606, <2 x double> %2608, <2 x double> %2610)
  %2618 = fmul <2 x double> %2617, %2616
  %2619 = getelementptr inbounds nuw i8, ptr %2204, i64 1792
  store <2 x double> %2613, ptr %2619, align 16, !tbaa !26
  %2620 = getelementptr inbounds nuw i8, ptr %2204, i64 1808
  store <2 x double> %2615, ptr %2620, align 16, !tbaa !26
  %2621 = getelementptr inbounds nuw i8, ptr %2204, i64 1824
  store <2 x double> %2618, ptr %2621, align 16, !tbaa !26
  %2622 = fmul <2 x double> %2426, %2509
  %2623 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2622, <2 x double> %2398, <2 x double> splat (double 1.000000e+00))
  %2624 = fdiv <2 x double> %2509, %2623
  %2625 = load i64, ptr %129, align 8, !tbaa !22
  %2626 = sitofp i64 %2625 to double
  %2627 = fmul double %2626, 2.000000e+00
  %2628 = insertelement <2 x double> poison, double %2627, i64 0
  %2629 = shufflevector <2 x double> %2628, <2 x double> poison, <2 x i32> zeroinitializer
  %2630 = fmul <2 x double> %2516, %2629
  %2631 = fadd <2 x double> %2624, %2630
  %2632 = fdiv <2 x double> %2624, %2631
  %2633 = fmul <2 x double> %2471, %2630
  %2634 = select <2 x i1> %2427, <2 x double> %2624, <2 x double> %2633
  %2635 = getelementptr inbounds nuw i8, ptr %2204, i64 1872
  store <2 x double> %2634, ptr %2635, align 16, !tbaa !26
  %2636 = fmul <2 x double> %2630, %2632
  %2637 = select <2 x i1> %2427, <2 x double> %2624, <2 x double> %2636
  %2638 = getelementptr inbounds nuw i8, ptr %2204, i64 1888
  store <2 x double> %2637, ptr %2638, align 16, !tbaa !26
  %2639 = select <2 x i1> %2427, <2 x double> splat (double 1.000000e+00), <2 x double> %2632
  %2640 = getelementptr inbounds nuw i8, ptr %2204, i64 1904
  store <2 x double> %2639, ptr %2640, align 16, !tbaa !26
  %2641 = getelementptr inbounds nuw i8, ptr %2204, i64 2272
  store <2 x double> splat (double 1.000000e+09), ptr %2641, align 16, !tbaa !26
  %2642 = add nuw nsw i64 %2202, 1
  %2643 = load i64, ptr %166, align 8, !tbaa !20
  %2644 = icmp slt i64 %2642, %2643
  br i1 %2644, label %2201, label %1468, !llvm.loop !125

2645:                                             ; preds = %1473, %1468, %1459
  %2646 = load <2 x double>, ptr %181, align 16, !tbaa !26
  br label %2862

2647:                                             ; preds = %2856
  %2648 = load <2 x double>, ptr %181, align 16, !tbaa !26
  %2649 = icmp sgt i64 %2860, 0
  br i1 %2649, label %2867, label %2862

2650:                                             ; preds = %1473, %2856
  %2651 = phi i64 [ %2859, %2856 ], [ 0, %1473 ]
  %2652 = load ptr, ptr %139, align 8, !tbaa !28
  %2653 = getelementptr inbounds nuw %struct.Piece, ptr %2652, i64 %2651
  %2654 = getelementptr inbounds nuw i8, ptr %2653, i64 2432
  %2655 = load ptr, ptr %2654, align 16, !tbaa !86
  %2656 = load i64, ptr %128, align 16, !tbaa !21
  %2657 = add nsw i64 %2656, -1
  %2658 = getelementptr inbounds <2 x double>, ptr %2655, i64 %2657
  %2659 = load <2 x double>, ptr %2658, align 16, !tbaa !26
  %2660 = getelementptr inbounds nuw i8, ptr %2653, i64 2440
  %2661 = load ptr, ptr %2660, align 8, !tbaa !87
  %2662 = getelementptr inbounds <2 x double>, ptr %2661, i64 %2657
  %2663 = load <2 x double>, ptr %2662, align 16, !tbaa !26
  %2664 = getelementptr inbounds nuw i8, ptr %2653, i64 1856
  %2665 = load <2 x double>, ptr %2664, align 16, !tbaa !26
  %2666 = getelementptr inbounds nuw i8, ptr %2653, i64 1728
  %2667 = load <2 x double>, ptr %2666, align 16, !tbaa !26
  %2668 = getelementptr inbounds nuw i8, ptr %2653, i64 1744
  %2669 = load <2 x double>, ptr %2668, align 16, !tbaa !26
  %2670 = getelementptr inbounds nuw i8, ptr %2653, i64 1712
  %2671 = load <2 x double>, ptr %2670, align 16, !tbaa !26
  %2672 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2663, <2 x double> %2671, <2 x double> %2659)
  %2673 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2669, <2 x double> %2672, <2 x double> %2667)
  %2674 = fmul <2 x double> %2665, %2673
  %2675 = getelementptr inbounds nuw i8, ptr %2653, i64 1696
  %2676 = load <2 x double>, ptr %2675, align 16, !tbaa !26
  %2677 = fneg <2 x double> %2663
  %2678 = fmul <2 x double> %2669, %2677
  %2679 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2678, <2 x double> %2676, <2 x double> splat (double 1.000000e+00))
  %2680 = fmul <2 x double> %2665, %2679
  %2681 = getelementptr inbounds nuw i8, ptr %2653, i64 1872
  %2682 = load <2 x double>, ptr %2681, align 16, !tbaa !26
  %2683 = getelementptr inbounds nuw i8, ptr %2653, i64 1584
  %2684 = load <2 x double>, ptr %2683, align 16, !tbaa !26
  %2685 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2682, <2 x double> %2684, <2 x double> %2674)
  %2686 = getelementptr inbounds nuw i8, ptr %2653, i64 2096
  %2687 = load <2 x double>, ptr %2686, align 16, !tbaa !26
  %2688 = fsub <2 x double> %2685, %2687
  %2689 = fadd <2 x double> %2682, %2680
  %2690 = getelementptr inbounds nuw i8, ptr %2653, i64 2080
  %2691 = load <2 x double>, ptr %2690, align 16, !tbaa !26
  %2692 = fadd <2 x double> %2689, %2691
  %2693 = getelementptr inbounds nuw i8, ptr %2653, i64 2320
  %2694 = load <2 x i64>, ptr %2693, align 16, !tbaa !26
  %2695 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2694)
  %2696 = icmp eq i64 %2695, 0
  %2697 = load i64, ptr %129, align 8, !tbaa !22
  br i1 %2696, label %2698, label %2713

2698:                                             ; preds = %2650
  %2699 = icmp slt i64 %2697, 0
  br i1 %2699, label %2704, label %2700

2700:                                             ; preds = %2698
  %2701 = getelementptr inbounds nuw i8, ptr %2653, i64 448
  %2702 = getelementptr inbounds nuw i8, ptr %2653, i64 2536
  %2703 = load <2 x double>, ptr %2701, align 16, !tbaa !26
  br label %2706

2704:                                             ; preds = %2706, %2698
  %2705 = getelementptr inbounds nuw i8, ptr %2653, i64 1664
  store <2 x double> %2688, ptr %2705, align 16, !tbaa !26
  br label %2856

2706:                                             ; preds = %2700, %2706
  %2707 = phi i64 [ 0, %2700 ], [ %2710, %2706 ]
  %2708 = load ptr, ptr %2702, align 8, !tbaa !126
  %2709 = getelementptr inbounds nuw <2 x double>, ptr %2708, i64 %2707
  store <2 x double> %2703, ptr %2709, align 16, !tbaa !26
  %2710 = add nuw nsw i64 %2707, 1
  %2711 = load i64, ptr %129, align 8, !tbaa !22
  %2712 = icmp slt i64 %2707, %2711
  br i1 %2712, label %2706, label %2704, !llvm.loop !127

2713:                                             ; preds = %2650
  %2714 = getelementptr inbounds nuw i8, ptr %2653, i64 832
  %2715 = load <2 x double>, ptr %2714, align 16, !tbaa !26
  %2716 = getelementptr inbounds nuw i8, ptr %2653, i64 2032
  %2717 = load <2 x double>, ptr %2716, align 16, !tbaa !26
  %2718 = getelementptr inbounds nuw i8, ptr %2653, i64 416
  %2719 = load <2 x double>, ptr %2718, align 16, !tbaa !26
  %2720 = fmul <2 x double> %2717, %2719
  %2721 = load <2 x double>, ptr %2653, align 16, !tbaa !26
  %2722 = fsub <2 x double> %2721, %2715
  %2723 = sitofp i64 %2697 to double
  %2724 = insertelement <2 x double> poison, double %2723, i64 0
  %2725 = shufflevector <2 x double> %2724, <2 x double> poison, <2 x i32> zeroinitializer
  %2726 = fdiv <2 x double> %2722, %2725
  %2727 = getelementptr inbounds nuw i8, ptr %2653, i64 1888
  %2728 = load <2 x double>, ptr %2727, align 16, !tbaa !26
  %2729 = getelementptr inbounds nuw i8, ptr %2653, i64 1904
  %2730 = load <2 x double>, ptr %2729, align 16, !tbaa !26
  %2731 = getelementptr inbounds nuw i8, ptr %2653, i64 448
  %2732 = load <2 x double>, ptr %2731, align 16, !tbaa !26
  %2733 = getelementptr inbounds nuw i8, ptr %2653, i64 2536
  %2734 = load ptr, ptr %2733, align 8, !tbaa !126
  %2735 = getelementptr inbounds <2 x double>, ptr %2734, i64 %2697
  store <2 x double> %2732, ptr %2735, align 16, !tbaa !26
  %2736 = icmp sgt i64 %2697, 0
  br i1 %2736, label %2737, label %2840

2737:                                             ; preds = %2713
  %2738 = fneg <2 x double> %2720
  %2739 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2738, <2 x double> %2730, <2 x double> %2728)
  %2740 = fsub <2 x double> splat (double 1.000000e+00), %2730
  %2741 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2720, <2 x double> %2740, <2 x double> %2728)
  %2742 = getelementptr inbounds nuw i8, ptr %2653, i64 736
  %2743 = getelementptr inbounds nuw i8, ptr %2653, i64 752
  %2744 = getelementptr inbounds nuw i8, ptr %2653, i64 768
  %2745 = getelementptr inbounds nuw i8, ptr %2653, i64 784
  %2746 = getelementptr inbounds nuw i8, ptr %2653, i64 1504
  %2747 = getelementptr inbounds nuw i8, ptr %2653, i64 1520
  %2748 = getelementptr inbounds nuw i8, ptr %2653, i64 2544
  %2749 = getelementptr inbounds nuw i8, ptr %2653, i64 1536
  %2750 = getelementptr inbounds nuw i8, ptr %2653, i64 2552
  %2751 = getelementptr inbounds nuw i8, ptr %2653, i64 288
  %2752 = fmul <2 x double> %2720, splat (double -5.000000e-01)
  %2753 = getelementptr inbounds nuw i8, ptr %2653, i64 1984
  %2754 = getelementptr inbounds nuw i8, ptr %2653, i64 672
  %2755 = getelementptr inbounds nuw i8, ptr %2653, i64 688
  %2756 = getelementptr inbounds nuw i8, ptr %2653, i64 704
  %2757 = getelementptr inbounds nuw i8, ptr %2653, i64 720
  %2758 = getelementptr inbounds nuw i8, ptr %2653, i64 2512
  %2759 = getelementptr inbounds nuw i8, ptr %2653, i64 2520
  %2760 = getelementptr inbounds nuw i8, ptr %2653, i64 2528
  br label %2761

2761:                                             ; preds = %2737, %2815
  %2762 = phi <2 x double> [ %2741, %2737 ], [ %2817, %2815 ]
  %2763 = phi <2 x double> [ %2739, %2737 ], [ %2818, %2815 ]
  %2764 = phi <2 x double> [ %2684, %2737 ], [ %2833, %2815 ]
  %2765 = phi <2 x double> [ zeroinitializer, %2737 ], [ %2836, %2815 ]
  %2766 = phi <2 x double> [ %2732, %2737 ], [ %2779, %2815 ]
  %2767 = phi i64 [ %2697, %2737 ], [ %2768, %2815 ]
  %2768 = add nsw i64 %2767, -1
  %2769 = uitofp nneg i64 %2768 to double
  %2770 = insertelement <2 x double> poison, double %2769, i64 0
  %2771 = shufflevector <2 x double> %2770, <2 x double> poison, <2 x i32> zeroinitializer
  %2772 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2771, <2 x double> %2726, <2 x double> %2715)
  %2773 = load <2 x double>, ptr %2742, align 16, !tbaa !26
  %2774 = load <2 x double>, ptr %2743, align 16, !tbaa !26
  %2775 = load <2 x double>, ptr %2744, align 16, !tbaa !26
  %2776 = load <2 x double>, ptr %2745, align 16, !tbaa !26
  %2777 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2772, <2 x double> %2776, <2 x double> %2775)
  %2778 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2772, <2 x double> %2777, <2 x double> %2774)
  %2779 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2772, <2 x double> %2778, <2 x double> %2773)
  %2780 = load <2 x double>, ptr %2746, align 16, !tbaa !26
  %2781 = load <2 x double>, ptr %2747, align 16, !tbaa !26
  %2782 = load ptr, ptr %2748, align 16, !tbaa !52
  %2783 = getelementptr inbounds nuw <2 x double>, ptr %2782, i64 %2768
  %2784 = load <2 x double>, ptr %2783, align 16, !tbaa !26
  %2785 = fmul <2 x double> %2781, %2784
  %2786 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2780, <2 x double> %2779, <2 x double> %2785)
  %2787 = load <2 x double>, ptr %2749, align 16, !tbaa !26
  %2788 = load ptr, ptr %2750, align 8, !tbaa !62
  %2789 = getelementptr inbounds nuw <2 x double>, ptr %2788, i64 %2768
  %2790 = load <2 x double>, ptr %2789, align 16, !tbaa !26
  %2791 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2787, <2 x double> %2790, <2 x double> %2786)
  %2792 = fmul <2 x double> %2791, splat (double 5.000000e-01)
  %2793 = icmp eq i64 %2767, 1
  br i1 %2793, label %2809, label %2794

2794:                                             ; preds = %2761
  %2795 = load <2 x double>, ptr %2751, align 16, !tbaa !26
  %2796 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2792, <2 x double> %2795, <2 x double> %2752)
  %2797 = load <2 x double>, ptr %2753, align 16, !tbaa !26
  %2798 = fmul <2 x double> %2725, %2797
  %2799 = load <2 x double>, ptr %2754, align 16, !tbaa !26
  %2800 = load <2 x double>, ptr %2755, align 16, !tbaa !26
  %2801 = load <2 x double>, ptr %2756, align 16, !tbaa !26
  %2802 = load <2 x double>, ptr %2757, align 16, !tbaa !26
  %2803 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2772, <2 x double> %2802, <2 x double> %2801)
  %2804 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2772, <2 x double> %2803, <2 x double> %2800)
  %2805 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2772, <2 x double> %2804, <2 x double> %2799)
  %2806 = fmul <2 x double> %2798, %2805
  %2807 = fsub <2 x double> %2806, %2796
  %2808 = fadd <2 x double> %2796, %2806
  br label %2815

2809:                                             ; preds = %2761
  %2810 = load <2 x double>, ptr %2681, align 16, !tbaa !26
  %2811 = load <2 x double>, ptr %2751, align 16, !tbaa !26
  %2812 = fmul <2 x double> %2792, splat (double -2.000000e+00)
  %2813 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2812, <2 x double> %2811, <2 x double> %2810)
  %2814 = fadd <2 x double> %2720, %2813
  br label %2815

2815:                                             ; preds = %2809, %2794
  %2816 = phi <2 x double> [ %2795, %2794 ], [ %2811, %2809 ]
  %2817 = phi <2 x double> [ %2807, %2794 ], [ %2814, %2809 ]
  %2818 = phi <2 x double> [ %2808, %2794 ], [ %2810, %2809 ]
  %2819 = fsub <2 x double> %2766, %2779
  %2820 = fmul <2 x double> %2780, %2819
  %2821 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2820, <2 x double> %2816, <2 x double> %2762)
  %2822 = fadd <2 x double> %2818, %2821
  %2823 = fneg <2 x double> %2763
  %2824 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2823, <2 x double> %2765, <2 x double> %2822)
  %2825 = fdiv <2 x double> splat (double 1.000000e+00), %2824
  %2826 = load ptr, ptr %2733, align 8, !tbaa !126
  %2827 = getelementptr inbounds nuw <2 x double>, ptr %2826, i64 %2768
  store <2 x double> %2779, ptr %2827, align 16, !tbaa !26
  %2828 = load ptr, ptr %2758, align 16, !tbaa !64
  %2829 = getelementptr inbounds nuw <2 x double>, ptr %2828, i64 %2768
  %2830 = load <2 x double>, ptr %2829, align 16, !tbaa !26
  %2831 = fneg <2 x double> %2830
  %2832 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2763, <2 x double> %2764, <2 x double> %2831)
  %2833 = fmul <2 x double> %2825, %2832
  %2834 = load ptr, ptr %2759, align 8, !tbaa !128
  %2835 = getelementptr inbounds nuw <2 x double>, ptr %2834, i64 %2768
  store <2 x double> %2833, ptr %2835, align 16, !tbaa !26
  %2836 = fmul <2 x double> %2817, %2825
  %2837 = load ptr, ptr %2760, align 16, !tbaa !129
  %2838 = getelementptr inbounds nuw <2 x double>, ptr %2837, i64 %2768
  store <2 x double> %2836, ptr %2838, align 16, !tbaa !26
  %2839 = icmp samesign ugt i64 %2767, 1
  br i1 %2839, label %2761, label %2840, !llvm.loop !130

2840:                                             ; preds = %2815, %2713
  %2841 = load <2 x i64>, ptr %2693, align 16, !tbaa !26
  %2842 = load <2 x double>, ptr %2681, align 16, !tbaa !26
  %2843 = getelementptr inbounds nuw i8, ptr %2653, i64 2520
  %2844 = load ptr, ptr %2843, align 8, !tbaa !128
  %2845 = load <2 x double>, ptr %2844, align 16, !tbaa !26
  %2846 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2842, <2 x double> %2845, <2 x double> %2674)
  %2847 = icmp eq <2 x i64> %2841, zeroinitializer
  %2848 = select <2 x i1> %2847, <2 x double> %2688, <2 x double> %2846
  %2849 = getelementptr inbounds nuw i8, ptr %2653, i64 1664
  store <2 x double> %2848, ptr %2849, align 16, !tbaa !26
  %2850 = getelementptr inbounds nuw i8, ptr %2653, i64 2528
  %2851 = load ptr, ptr %2850, align 16, !tbaa !129
  %2852 = load <2 x double>, ptr %2851, align 16, !tbaa !26
  %2853 = fsub <2 x double> splat (double 1.000000e+00), %2852
  %2854 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2842, <2 x double> %2853, <2 x double> %2680)
  %2855 = select <2 x i1> %2847, <2 x double> %2692, <2 x double> %2854
  br label %2856

2856:                                             ; preds = %2704, %2840
  %2857 = phi <2 x double> [ %2692, %2704 ], [ %2855, %2840 ]
  %2858 = getelementptr inbounds nuw i8, ptr %2653, i64 1680
  store <2 x double> %2857, ptr %2858, align 16, !tbaa !26
  %2859 = add nuw nsw i64 %2651, 1
  %2860 = load i64, ptr %166, align 8, !tbaa !20
  %2861 = icmp slt i64 %2859, %2860
  br i1 %2861, label %2650, label %2647, !llvm.loop !131

2862:                                             ; preds = %2976, %2645, %2647
  %2863 = phi <2 x double> [ %2646, %2645 ], [ %2648, %2647 ], [ %2648, %2976 ]
  %2864 = fcmp ogt <2 x double> %2863, zeroinitializer
  %2865 = bitcast <2 x i1> %2864 to i2
  %2866 = icmp eq i2 %2865, 0
  br i1 %2866, label %2983, label %2980

2867:                                             ; preds = %2647, %2976
  %2868 = phi i64 [ %2977, %2976 ], [ %2860, %2647 ]
  %2869 = phi i64 [ %2978, %2976 ], [ 0, %2647 ]
  %2870 = load ptr, ptr %139, align 8, !tbaa !28
  %2871 = getelementptr inbounds nuw %struct.Piece, ptr %2870, i64 %2869
  %2872 = getelementptr inbounds nuw i8, ptr %2871, i64 2352
  %2873 = load <2 x i64>, ptr %2872, align 16, !tbaa !26
  %2874 = getelementptr inbounds nuw i8, ptr %2871, i64 656
  %2875 = load <2 x double>, ptr %2874, align 16, !tbaa !26
  %2876 = fcmp ogt <2 x double> %2875, zeroinitializer
  %2877 = select <2 x i1> %2876, <2 x i64> %2873, <2 x i64> zeroinitializer
  %2878 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2877)
  %2879 = icmp eq i64 %2878, 0
  br i1 %2879, label %2976, label %2880

2880:                                             ; preds = %2867
  %2881 = load <2 x double>, ptr %2871, align 16, !tbaa !26
  %2882 = getelementptr inbounds nuw i8, ptr %2871, i64 832
  %2883 = load <2 x double>, ptr %2882, align 16, !tbaa !26
  %2884 = fsub <2 x double> %2881, %2883
  %2885 = getelementptr inbounds nuw i8, ptr %2871, i64 2064
  %2886 = load <2 x double>, ptr %2885, align 16, !tbaa !26
  %2887 = fsub <2 x double> splat (double 1.000000e+00), %2886
  %2888 = getelementptr inbounds nuw i8, ptr %2871, i64 576
  %2889 = load <2 x double>, ptr %2888, align 16, !tbaa !26
  %2890 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2887, <2 x double> %2889, <2 x double> %2884)
  %2891 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %2892 = fdiv <2 x double> splat (double 1.000000e+00), %2891
  %2893 = fcmp ogt <2 x double> %2875, splat (double 1.000000e-30)
  %2894 = select <2 x i1> %2893, <2 x double> %2875, <2 x double> splat (double 1.000000e-30)
  %2895 = fdiv <2 x double> %2890, %2894
  %2896 = fadd <2 x double> %2892, %2895
  %2897 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %2898 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2897, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2899 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2897, <2 x double> %2898, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2900 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %2901 = getelementptr inbounds nuw i8, ptr %2871, i64 1664
  %2902 = load <2 x double>, ptr %2901, align 16, !tbaa !26
  %2903 = getelementptr inbounds nuw i8, ptr %2871, i64 1680
  %2904 = load <2 x double>, ptr %2903, align 16, !tbaa !26
  %2905 = fdiv <2 x double> %2902, %2904
  %2906 = fcmp olt <2 x double> %2905, %2897
  %2907 = select <2 x i1> %2906, <2 x double> %2905, <2 x double> %2897
  %2908 = getelementptr inbounds nuw i8, ptr %2871, i64 992
  %2909 = load <2 x double>, ptr %2908, align 16, !tbaa !26
  %2910 = fcmp olt <2 x double> %2909, %2907
  %2911 = select <2 x i1> %2910, <2 x double> %2909, <2 x double> %2907
  %2912 = fneg <2 x double> %2904
  br label %2916

2913:                                             ; preds = %2916
  %2914 = getelementptr inbounds nuw i8, ptr %2871, i64 1840
  store <2 x double> %2967, ptr %2914, align 16, !tbaa !26
  %2915 = load i64, ptr %166, align 8, !tbaa !20
  br label %2976

2916:                                             ; preds = %2880, %2916
  %2917 = phi <2 x i64> [ %2877, %2880 ], [ %2970, %2916 ]
  %2918 = phi i32 [ 0, %2880 ], [ %2971, %2916 ]
  %2919 = phi <2 x double> [ %2911, %2880 ], [ %2967, %2916 ]
  %2920 = fadd <2 x double> %2919, splat (double 2.731500e+02)
  %2921 = fcmp ogt <2 x double> %2919, zeroinitializer
  %2922 = select <2 x i1> %2921, <2 x double> %2919, <2 x double> zeroinitializer
  %2923 = fadd <2 x double> %2922, splat (double 2.731500e+02)
  %2924 = fadd <2 x double> %2923, splat (double 0xC08451671D164BD4)
  %2925 = fdiv <2 x double> splat (double 0x3FCE88FD35E8A60E), %2924
  %2926 = fsub <2 x double> %2923, %2925
  %2927 = fadd <2 x double> %2926, splat (double 0x40923C3565924845)
  %2928 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2926, <2 x double> %2927, <2 x double> splat (double 0xC12619EA558539E6))
  %2929 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2926, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> splat (double 0x40C77A698FD9BCCA))
  %2930 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2926, <2 x double> %2929, <2 x double> splat (double 0xC148A99584203885))
  %2931 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2926, <2 x double> splat (double 0x402DD4891DBECC6B), <2 x double> splat (double 0xC0B2D7440748F0B3))
  %2932 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2926, <2 x double> %2931, <2 x double> splat (double 0x4118B9E59F2691E5))
  %2933 = fmul <2 x double> %2932, splat (double 2.000000e+00)
  %2934 = fmul <2 x double> %2928, splat (double 4.000000e+00)
  %2935 = fneg <2 x double> %2932
  %2936 = fmul <2 x double> %2934, %2935
  %2937 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2930, <2 x double> %2930, <2 x double> %2936)
  %2938 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2937)
  %2939 = fsub <2 x double> %2938, %2930
  %2940 = fdiv <2 x double> %2933, %2939
  %2941 = fmul <2 x double> %2940, %2940
  %2942 = fmul <2 x double> %2941, splat (double 1.000000e+06)
  %2943 = fmul <2 x double> %2941, %2942
  %2944 = fmul <2 x double> %2920, splat (double 4.615260e+02)
  %2945 = fdiv <2 x double> %2943, %2944
  %2946 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2912, <2 x double> %2919, <2 x double> %2902)
  %2947 = fsub <2 x double> %2945, %2900
  %2948 = fcmp ogt <2 x double> %2947, zeroinitializer
  %2949 = select <2 x i1> %2948, <2 x double> %2947, <2 x double> zeroinitializer
  %2950 = fmul <2 x double> %2899, %2949
  %2951 = fdiv <2 x double> %2950, %2896
  %2952 = fsub <2 x double> %2946, %2951
  %2953 = fmul <2 x double> %2899, %2945
  %2954 = fdiv <2 x double> %2899, %2944
  %2955 = fadd <2 x double> %2954, splat (double -1.000000e+00)
  %2956 = fmul <2 x double> %2955, %2953
  %2957 = fdiv <2 x double> %2956, %2920
  %2958 = fdiv <2 x double> %2957, %2896
  %2959 = fcmp ule <2 x double> %2945, %2900
  %2960 = select <2 x i1> %2959, <2 x double> zeroinitializer, <2 x double> %2958
  %2961 = fsub <2 x double> %2912, %2960
  %2962 = fdiv <2 x double> %2952, %2961
  %2963 = fsub <2 x double> %2919, %2962
  %2964 = fcmp olt <2 x double> %2963, %2907
  %2965 = select <2 x i1> %2964, <2 x double> %2963, <2 x double> %2907
  %2966 = icmp eq <2 x i64> %2917, zeroinitializer
  %2967 = select <2 x i1> %2966, <2 x double> %2919, <2 x double> %2965
  %2968 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2962)
  %2969 = fcmp oge <2 x double> %2968, splat (double 1.000000e-05)
  %2970 = select <2 x i1> %2969, <2 x i64> %2917, <2 x i64> zeroinitializer
  %2971 = add nuw nsw i32 %2918, 1
  %2972 = icmp samesign ult i32 %2918, 7
  %2973 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2970)
  %2974 = icmp ne i64 %2973, 0
  %2975 = select i1 %2972, i1 %2974, i1 false
  br i1 %2975, label %2916, label %2913, !llvm.loop !132

2976:                                             ; preds = %2867, %2913
  %2977 = phi i64 [ %2868, %2867 ], [ %2915, %2913 ]
  %2978 = add nuw nsw i64 %2869, 1
  %2979 = icmp slt i64 %2978, %2977
  br i1 %2979, label %2867, label %2862, !llvm.loop !133

2980:                                             ; preds = %2862
  %2981 = sext <2 x i1> %2864 to <2 x i64>
  %2982 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1, <2 x i64> noundef %2981) #6
  br label %2983

2983:                                             ; preds = %2862, %2980
  %2984 = phi <2 x double> [ %2982, %2980 ], [ zeroinitializer, %2862 ]
  %2985 = load <2 x double>, ptr %181, align 16, !tbaa !26
  %2986 = fcmp ogt <2 x double> %2985, zeroinitializer
  %2987 = sext <2 x i1> %2986 to <2 x i64>
  %2988 = xor <2 x i64> %2987, splat (i64 -1)
  %2989 = load <2 x double>, ptr %148, align 16, !tbaa !26
  %2990 = fcmp oeq <2 x double> %2989, splat (double 1.000000e+00)
  %2991 = fcmp oeq <2 x double> %2989, splat (double 2.000000e+00)
  %2992 = or <2 x i1> %2990, %2991
  %2993 = select <2 x i1> %2992, <2 x i64> %2988, <2 x i64> zeroinitializer
  %2994 = xor <2 x i64> %2993, %2987
  %2995 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %2996 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %2997 = load <2 x double>, ptr %186, align 16, !tbaa !26
  %2998 = icmp eq <2 x i64> %2994, splat (i64 -1)
  %2999 = select <2 x i1> %2998, <2 x double> %2997, <2 x double> %2996
  %3000 = bitcast <2 x i1> %2986 to i2
  %3001 = icmp eq i2 %3000, 0
  br i1 %3001, label %3033, label %3002

3002:                                             ; preds = %2983
  %3003 = select <2 x i1> %2986, <2 x double> %2984, <2 x double> %2999
  %3004 = fmul <2 x double> %3003, splat (double 0x3EB0C6F7A0B5ED8D)
  %3005 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3004)
  %3006 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3005)
  %3007 = fmul <2 x double> %3006, %3006
  %3008 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3006, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %3007)
  %3009 = fadd <2 x double> %3008, splat (double 0x402DD4891DBECC6B)
  %3010 = fmul <2 x double> %3006, splat (double 0x40C77A698FD9BCCA)
  %3011 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3007, <2 x double> splat (double 0x40923C3565924845), <2 x double> %3010)
  %3012 = fadd <2 x double> %3011, splat (double 0xC0B2D7440748F0B3)
  %3013 = fmul <2 x double> %3006, splat (double 0xC148A99584203885)
  %3014 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3007, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %3013)
  %3015 = fadd <2 x double> %3014, splat (double 0x4118B9E59F2691E5)
  %3016 = fmul <2 x double> %3015, splat (double 2.000000e+00)
  %3017 = fneg <2 x double> %3012
  %3018 = fmul <2 x double> %3009, splat (double 4.000000e+00)
  %3019 = fneg <2 x double> %3015
  %3020 = fmul <2 x double> %3018, %3019
  %3021 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3012, <2 x double> %3012, <2 x double> %3020)
  %3022 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3021)
  %3023 = fsub <2 x double> %3017, %3022
  %3024 = fdiv <2 x double> %3016, %3023
  %3025 = fadd <2 x double> %3024, splat (double 0x408451671D164BD4)
  %3026 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3024, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %3027 = fmul <2 x double> %3026, splat (double -4.000000e+00)
  %3028 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3025, <2 x double> %3025, <2 x double> %3027)
  %3029 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3028)
  %3030 = fsub <2 x double> %3025, %3029
  %3031 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3030, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %3032 = select <2 x i1> %2986, <2 x double> %3031, <2 x double> %2995
  br label %3033

3033:                                             ; preds = %3002, %2983
  %3034 = phi <2 x double> [ %3003, %3002 ], [ %2999, %2983 ]
  %3035 = phi <2 x double> [ %3032, %3002 ], [ %2995, %2983 ]
  %3036 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %3037 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %3038 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %3039 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %3040 = fmul <2 x double> %3038, %3039
  %3041 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3036, <2 x double> %3037, <2 x double> %3040)
  %3042 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %3043 = load <2 x double>, ptr %190, align 16, !tbaa !26
  %3044 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %3045 = fneg <2 x double> %3041
  %3046 = fmul <2 x double> %3044, %3045
  %3047 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3042, <2 x double> %3043, <2 x double> %3046)
  %3048 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %3049 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3044, <2 x double> %3048, <2 x double> %3042)
  %3050 = fdiv <2 x double> %3047, %3049
  %3051 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %3052 = select <2 x i1> %2998, <2 x double> %3051, <2 x double> %2996
  store <2 x double> %3052, ptr %192, align 16, !tbaa !26
  %3053 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %3054 = select <2 x i1> %2998, <2 x double> %3053, <2 x double> %3050
  store <2 x double> %3054, ptr %193, align 16, !tbaa !26
  store <2 x double> %3034, ptr %186, align 16, !tbaa !26
  %3055 = load <2 x i64>, ptr %119, align 16, !tbaa !26
  %3056 = and <2 x i64> %3055, %2993
  %3057 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3056)
  %3058 = icmp eq i64 %3057, 0
  br i1 %3058, label %3687, label %3059

3059:                                             ; preds = %3033
  %3060 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %3061 = load <2 x double>, ptr %195, align 16, !tbaa !26
  %3062 = fmul <2 x double> %3038, %3061
  %3063 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3036, <2 x double> %3060, <2 x double> %3062)
  %3064 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %3065 = load <2 x double>, ptr %197, align 16, !tbaa !26
  %3066 = fdiv <2 x double> %3064, %3065
  %3067 = fmul <2 x double> %2996, splat (double 3.000000e-01)
  %3068 = load <2 x double>, ptr %198, align 16, !tbaa !26
  %3069 = fadd <2 x double> %2996, %3068
  %3070 = fadd <2 x double> %3069, splat (double 2.000000e+05)
  %3071 = fmul <2 x double> %3065, splat (double 2.870530e+02)
  %3072 = fdiv <2 x double> %2996, %3071
  %3073 = fcmp ogt <2 x double> %3034, %3067
  %3074 = select <2 x i1> %3073, <2 x double> %3034, <2 x double> %3067
  %3075 = fcmp olt <2 x double> %3074, %3070
  %3076 = select <2 x i1> %3075, <2 x double> %3074, <2 x double> %3070
  %3077 = icmp eq <2 x i64> %2993, zeroinitializer
  %3078 = select <2 x i1> %3077, <2 x double> %3034, <2 x double> %3076
  %3079 = fdiv <2 x double> %3052, splat (double 2.870530e+02)
  %3080 = fmul <2 x double> %3072, splat (double 2.000000e+00)
  %3081 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %3080)
  br label %3082

3082:                                             ; preds = %3595, %3059
  %3083 = phi <2 x double> [ %3048, %3059 ], [ %3602, %3595 ]
  %3084 = phi <2 x double> [ %3035, %3059 ], [ %3118, %3595 ]
  %3085 = phi <2 x double> [ %3067, %3059 ], [ %3625, %3595 ]
  %3086 = phi <2 x double> [ %3070, %3059 ], [ %3622, %3595 ]
  %3087 = phi <2 x i64> [ %3056, %3059 ], [ %3641, %3595 ]
  %3088 = phi i32 [ 0, %3059 ], [ %3646, %3595 ]
  %3089 = phi <2 x double> [ %3078, %3059 ], [ %3643, %3595 ]
  %3090 = fmul <2 x double> %3089, splat (double 0x3EB0C6F7A0B5ED8D)
  %3091 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3090)
  %3092 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3091)
  %3093 = fmul <2 x double> %3092, %3092
  %3094 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3092, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %3093)
  %3095 = fadd <2 x double> %3094, splat (double 0x402DD4891DBECC6B)
  %3096 = fmul <2 x double> %3092, splat (double 0x40C77A698FD9BCCA)
  %3097 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3093, <2 x double> splat (double 0x40923C3565924845), <2 x double> %3096)
  %3098 = fadd <2 x double> %3097, splat (double 0xC0B2D7440748F0B3)
  %3099 = fmul <2 x double> %3092, splat (double 0xC148A99584203885)
  %3100 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3093, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %3099)
  %3101 = fadd <2 x double> %3100, splat (double 0x4118B9E59F2691E5)
  %3102 = fmul <2 x double> %3101, splat (double 2.000000e+00)
  %3103 = fneg <2 x double> %3098
  %3104 = fmul <2 x double> %3095, splat (double 4.000000e+00)
  %3105 = fneg <2 x double> %3101
  %3106 = fmul <2 x double> %3104, %3105
  %3107 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3098, <2 x double> %3098, <2 x double> %3106)
  %3108 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3107)
  %3109 = fsub <2 x double> %3103, %3108
  %3110 = fdiv <2 x double> %3102, %3109
  %3111 = fadd <2 x double> %3110, splat (double 0x408451671D164BD4)
  %3112 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3110, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %3113 = fmul <2 x double> %3112, splat (double -4.000000e+00)
  %3114 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3111, <2 x double> %3111, <2 x double> %3113)
  %3115 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3114)
  %3116 = fsub <2 x double> %3111, %3115
  %3117 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3116, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %3118 = select <2 x i1> %3077, <2 x double> %3084, <2 x double> %3117
  %3119 = fsub <2 x double> %3089, %3052
  %3120 = fcmp ogt <2 x double> %3119, zeroinitializer
  %3121 = select <2 x i1> %3120, <2 x double> %3119, <2 x double> zeroinitializer
  %3122 = fadd <2 x double> %3118, splat (double 2.731500e+02)
  %3123 = load <2 x double>, ptr %173, align 16, !tbaa !26, !noalias !134
  %3124 = load <2 x double>, ptr %187, align 16, !tbaa !26, !noalias !134
  %3125 = load <2 x double>, ptr %174, align 16, !tbaa !26, !noalias !134
  %3126 = load <2 x double>, ptr %188, align 16, !tbaa !26, !noalias !134
  %3127 = fmul <2 x double> %3125, %3126
  %3128 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3123, <2 x double> %3124, <2 x double> %3127)
  %3129 = load <2 x double>, ptr %191, align 16, !tbaa !26, !noalias !134
  %3130 = load <2 x double>, ptr %189, align 16, !tbaa !26, !noalias !134
  %3131 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3129, <2 x double> %3083, <2 x double> %3130)
  %3132 = load <2 x double>, ptr %190, align 16, !tbaa !26, !noalias !134
  %3133 = fneg <2 x double> %3128
  %3134 = fmul <2 x double> %3129, %3133
  %3135 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3130, <2 x double> %3132, <2 x double> %3134)
  %3136 = fdiv <2 x double> %3135, %3131
  %3137 = fcmp ogt <2 x double> %3121, splat (double 2.000000e+03)
  %3138 = select <2 x i1> %3137, <2 x double> %3121, <2 x double> splat (double 2.000000e+03)
  %3139 = fmul <2 x double> %3138, splat (double 0x3EB0C6F7A0B5ED8D)
  %3140 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3139)
  %3141 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3140)
  %3142 = fmul <2 x double> %3141, %3141
  %3143 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3141, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %3142)
  %3144 = fadd <2 x double> %3143, splat (double 0x402DD4891DBECC6B)
  %3145 = fmul <2 x double> %3141, splat (double 0x40C77A698FD9BCCA)
  %3146 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3142, <2 x double> splat (double 0x40923C3565924845), <2 x double> %3145)
  %3147 = fadd <2 x double> %3146, splat (double 0xC0B2D7440748F0B3)
  %3148 = fmul <2 x double> %3141, splat (double 0xC148A99584203885)
  %3149 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3142, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %3148)
  %3150 = fadd <2 x double> %3149, splat (double 0x4118B9E59F2691E5)
  %3151 = fmul <2 x double> %3150, splat (double 2.000000e+00)
  %3152 = fneg <2 x double> %3147
  %3153 = fmul <2 x double> %3144, splat (double 4.000000e+00)
  %3154 = fneg <2 x double> %3150
  %3155 = fmul <2 x double> %3153, %3154
  %3156 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3147, <2 x double> %3147, <2 x double> %3155)
  %3157 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3156)
  %3158 = fsub <2 x double> %3152, %3157
  %3159 = fdiv <2 x double> %3151, %3158
  %3160 = fadd <2 x double> %3159, splat (double 0x408451671D164BD4)
  %3161 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3159, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %3162 = fmul <2 x double> %3161, splat (double -4.000000e+00)
  %3163 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3160, <2 x double> %3160, <2 x double> %3162)
  %3164 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3163)
  %3165 = fsub <2 x double> %3160, %3164
  %3166 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3165, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %3167 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3166, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3168 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3166, <2 x double> %3167, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3169 = fadd <2 x double> %3166, splat (double 2.731500e+02)
  %3170 = fcmp ule <2 x double> %3166, %3136
  %3171 = load <2 x double>, ptr %199, align 16, !tbaa !26, !noalias !134
  %3172 = fmul <2 x double> %3131, %3171
  %3173 = fadd <2 x double> %3131, %3171
  %3174 = fdiv <2 x double> %3172, %3173
  %3175 = fdiv <2 x double> %3174, %3168
  %3176 = fmul <2 x double> %3169, splat (double 4.615260e+02)
  %3177 = fmul <2 x double> %3138, %3168
  %3178 = fmul <2 x double> %3166, %3171
  %3179 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3136, <2 x double> %3131, <2 x double> %3178)
  %3180 = fdiv <2 x double> %3179, %3173
  %3181 = select <2 x i1> %3170, <2 x double> %3136, <2 x double> %3180
  store <2 x double> %3181, ptr %193, align 16, !tbaa !26, !noalias !134
  %3182 = fsub <2 x double> %3166, %3136
  %3183 = fmul <2 x double> %3182, %3175
  %3184 = select <2 x i1> %3170, <2 x double> zeroinitializer, <2 x double> %3183
  %3185 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3118, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3186 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3118, <2 x double> %3185, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3187 = fdiv <2 x double> splat (double 1.000000e+00), %3186
  %3188 = load i64, ptr %166, align 8, !tbaa !20, !noalias !137
  %3189 = icmp sgt i64 %3188, 0
  br i1 %3189, label %3190, label %3521

3190:                                             ; preds = %3082, %3507
  %3191 = phi <2 x double> [ %3517, %3507 ], [ zeroinitializer, %3082 ]
  %3192 = phi <2 x double> [ %3516, %3507 ], [ zeroinitializer, %3082 ]
  %3193 = phi i64 [ %3518, %3507 ], [ 0, %3082 ]
  %3194 = load ptr, ptr %139, align 8, !tbaa !28, !noalias !137
  %3195 = getelementptr inbounds nuw %struct.Piece, ptr %3194, i64 %3193
  %3196 = getelementptr inbounds nuw i8, ptr %3195, i64 1664
  %3197 = load <2 x double>, ptr %3196, align 16, !tbaa !26, !noalias !137
  %3198 = getelementptr inbounds nuw i8, ptr %3195, i64 1680
  %3199 = load <2 x double>, ptr %3198, align 16, !tbaa !26, !noalias !137
  %3200 = getelementptr inbounds nuw i8, ptr %3195, i64 2144
  %3201 = load <2 x double>, ptr %3200, align 16, !tbaa !26, !noalias !137
  %3202 = fcmp ule <2 x double> %3201, splat (double 1.000000e+00)
  %3203 = fmul <2 x double> %3118, %3199
  %3204 = fcmp ogt <2 x double> %3197, %3203
  %3205 = and <2 x i1> %3202, %3204
  %3206 = fneg <2 x double> %3199
  %3207 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3206, <2 x double> %3118, <2 x double> %3197)
  %3208 = fmul <2 x double> %3187, %3207
  %3209 = select <2 x i1> %3205, <2 x double> %3208, <2 x double> zeroinitializer
  %3210 = fmul <2 x double> %3187, %3206
  %3211 = select <2 x i1> %3205, <2 x double> %3210, <2 x double> zeroinitializer
  %3212 = xor <2 x i1> %3205, splat (i1 true)
  %3213 = bitcast <2 x i1> %3212 to i2
  %3214 = icmp eq i2 %3213, 0
  %3215 = fdiv <2 x double> %3197, %3199
  %3216 = select <2 x i1> %3205, <2 x double> %3118, <2 x double> %3215
  %3217 = select i1 %3214, <2 x double> %3118, <2 x double> %3216
  %3218 = getelementptr inbounds nuw i8, ptr %3195, i64 2352
  %3219 = load <2 x i64>, ptr %3218, align 16, !tbaa !26, !noalias !137
  %3220 = getelementptr inbounds nuw i8, ptr %3195, i64 656
  %3221 = load <2 x double>, ptr %3220, align 16, !tbaa !26, !noalias !137
  %3222 = fcmp ogt <2 x double> %3221, zeroinitializer
  %3223 = select <2 x i1> %3202, <2 x i1> %3222, <2 x i1> zeroinitializer
  %3224 = select <2 x i1> %3223, <2 x i64> %3219, <2 x i64> zeroinitializer
  %3225 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3224)
  %3226 = icmp eq i64 %3225, 0
  br i1 %3226, label %3238, label %3227

3227:                                             ; preds = %3190
  %3228 = getelementptr inbounds nuw i8, ptr %3195, i64 1840
  %3229 = load <2 x double>, ptr %3228, align 16, !tbaa !26, !noalias !137
  %3230 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3206, <2 x double> %3229, <2 x double> %3197)
  %3231 = fcmp ogt <2 x double> %3230, zeroinitializer
  %3232 = select <2 x i1> %3231, <2 x double> %3230, <2 x double> zeroinitializer
  %3233 = fmul <2 x double> %3187, %3232
  %3234 = icmp eq <2 x i64> %3224, zeroinitializer
  %3235 = select <2 x i1> %3234, <2 x double> %3209, <2 x double> %3233
  %3236 = select <2 x i1> %3234, <2 x double> %3217, <2 x double> %3229
  %3237 = select <2 x i1> %3234, <2 x double> %3211, <2 x double> zeroinitializer
  br label %3238

3238:                                             ; preds = %3227, %3190
  %3239 = phi <2 x double> [ %3236, %3227 ], [ %3217, %3190 ]
  %3240 = phi <2 x double> [ %3237, %3227 ], [ %3211, %3190 ]
  %3241 = phi <2 x double> [ %3235, %3227 ], [ %3209, %3190 ]
  %3242 = getelementptr inbounds nuw i8, ptr %3195, i64 1616
  store <2 x double> %3241, ptr %3242, align 16, !tbaa !26, !noalias !137
  %3243 = getelementptr inbounds nuw i8, ptr %3195, i64 1600
  store <2 x double> %3239, ptr %3243, align 16, !tbaa !26, !noalias !137
  %3244 = getelementptr inbounds nuw i8, ptr %3195, i64 1632
  store <2 x double> zeroinitializer, ptr %3244, align 16, !tbaa !26, !noalias !137
  %3245 = load i64, ptr %128, align 16, !tbaa !21, !noalias !137
  %3246 = sitofp i64 %3245 to double
  %3247 = insertelement <2 x double> poison, double %3246, i64 0
  %3248 = shufflevector <2 x double> %3247, <2 x double> poison, <2 x i32> zeroinitializer
  %3249 = getelementptr inbounds nuw i8, ptr %3195, i64 1648
  store <2 x double> %3248, ptr %3249, align 16, !tbaa !26, !noalias !137
  %3250 = getelementptr inbounds nuw i8, ptr %3195, i64 2208
  %3251 = getelementptr inbounds nuw i8, ptr %3195, i64 2272
  %3252 = load <2 x double>, ptr %3251, align 16, !tbaa !26, !noalias !140
  %3253 = fcmp ole <2 x double> %3118, %3252
  %3254 = getelementptr inbounds nuw i8, ptr %3195, i64 2288
  %3255 = load <2 x double>, ptr %3254, align 16, !tbaa !26, !noalias !140
  %3256 = fcmp oge <2 x double> %3118, %3255
  %3257 = or <2 x i1> %3253, %3256
  %3258 = bitcast <2 x i1> %3257 to i2
  %3259 = icmp eq i2 %3258, 0
  br i1 %3259, label %3260, label %3263

3260:                                             ; preds = %3238
  %3261 = getelementptr inbounds nuw i8, ptr %3195, i64 2240
  %3262 = load <2 x double>, ptr %3261, align 16, !tbaa !26, !noalias !140
  br label %3433

3263:                                             ; preds = %3238
  %3264 = load i64, ptr %128, align 16, !tbaa !21, !noalias !143
  %3265 = sitofp i64 %3264 to double
  %3266 = insertelement <2 x double> poison, double %3265, i64 0
  %3267 = shufflevector <2 x double> %3266, <2 x double> poison, <2 x i32> zeroinitializer
  %3268 = getelementptr inbounds nuw i8, ptr %3195, i64 1504
  %3269 = load <2 x double>, ptr %3268, align 16, !tbaa !26, !noalias !143
  %3270 = getelementptr inbounds nuw i8, ptr %3195, i64 1040
  %3271 = load <2 x double>, ptr %3270, align 16, !tbaa !26, !noalias !143
  %3272 = getelementptr inbounds nuw i8, ptr %3195, i64 480
  %3273 = load <2 x double>, ptr %3272, align 16, !tbaa !26, !noalias !143
  %3274 = fsub <2 x double> %3271, %3273
  %3275 = getelementptr inbounds nuw i8, ptr %3195, i64 2016
  %3276 = load <2 x double>, ptr %3275, align 16, !tbaa !26, !noalias !143
  %3277 = fneg <2 x double> %3274
  %3278 = fmul <2 x double> %3269, %3277
  %3279 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3276, <2 x double> splat (double 2.000000e+00), <2 x double> %3278)
  %3280 = getelementptr inbounds nuw i8, ptr %3195, i64 1520
  %3281 = load <2 x double>, ptr %3280, align 16, !tbaa !26, !noalias !146
  %3282 = getelementptr inbounds nuw i8, ptr %3195, i64 1264
  %3283 = load <2 x double>, ptr %3282, align 16, !tbaa !26, !noalias !146
  %3284 = fsub <2 x double> %3283, %3273
  %3285 = fmul <2 x double> %3281, %3284
  %3286 = getelementptr inbounds nuw i8, ptr %3195, i64 1536
  %3287 = load <2 x double>, ptr %3286, align 16, !tbaa !26, !noalias !146
  %3288 = getelementptr inbounds nuw i8, ptr %3195, i64 1488
  %3289 = load <2 x double>, ptr %3288, align 16, !tbaa !26, !noalias !146
  %3290 = fsub <2 x double> %3289, %3273
  %3291 = fmul <2 x double> %3287, %3290
  %3292 = getelementptr inbounds nuw i8, ptr %3195, i64 1696
  %3293 = load <2 x double>, ptr %3292, align 16, !tbaa !26, !noalias !143
  %3294 = getelementptr inbounds nuw i8, ptr %3195, i64 1712
  %3295 = load <2 x double>, ptr %3294, align 16, !tbaa !26, !noalias !143
  %3296 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3293, <2 x double> %3118, <2 x double> %3295)
  %3297 = fmul <2 x double> %3293, splat (double 1.000000e-09)
  %3298 = icmp sgt i64 %3264, 0
  br i1 %3298, label %3299, label %3403

3299:                                             ; preds = %3263
  %3300 = sext <2 x i1> %3257 to <2 x i64>
  %3301 = getelementptr inbounds nuw i8, ptr %3195, i64 2432
  %3302 = load ptr, ptr %3301, align 16, !tbaa !86, !noalias !143
  %3303 = getelementptr inbounds nuw i8, ptr %3195, i64 2440
  %3304 = load ptr, ptr %3303, align 8, !tbaa !87, !noalias !143
  %3305 = getelementptr inbounds nuw i8, ptr %3195, i64 2368
  %3306 = load i64, ptr %3305, align 16, !tbaa !31, !noalias !143
  %3307 = getelementptr inbounds nuw i8, ptr %3195, i64 2448
  %3308 = getelementptr inbounds nuw i8, ptr %3195, i64 2464
  %3309 = getelementptr inbounds nuw i8, ptr %3195, i64 2400
  %3310 = getelementptr inbounds nuw i8, ptr %3195, i64 2408
  %3311 = getelementptr inbounds nuw i8, ptr %3195, i64 1760
  %3312 = getelementptr inbounds nuw i8, ptr %3195, i64 1776
  br label %3313

3313:                                             ; preds = %3299, %3361
  %3314 = phi <2 x i64> [ %3300, %3299 ], [ %3333, %3361 ]
  %3315 = phi i64 [ %3264, %3299 ], [ %3323, %3361 ]
  %3316 = phi <2 x double> [ splat (double 1.000000e+18), %3299 ], [ %3393, %3361 ]
  %3317 = phi <2 x double> [ zeroinitializer, %3299 ], [ %3397, %3361 ]
  %3318 = phi <2 x double> [ splat (double 1.000000e+18), %3299 ], [ %3358, %3361 ]
  %3319 = phi <2 x double> [ splat (double 1.000000e+00), %3299 ], [ %3357, %3361 ]
  %3320 = phi <2 x double> [ %3267, %3299 ], [ %3401, %3361 ]
  %3321 = phi <2 x double> [ zeroinitializer, %3299 ], [ %3390, %3361 ]
  %3322 = phi <2 x double> [ zeroinitializer, %3299 ], [ %3388, %3361 ]
  %3323 = add nsw i64 %3315, -1
  %3324 = getelementptr inbounds nuw <2 x double>, ptr %3302, i64 %3323
  %3325 = load <2 x double>, ptr %3324, align 16, !tbaa !26, !noalias !143
  %3326 = getelementptr inbounds nuw <2 x double>, ptr %3304, i64 %3323
  %3327 = load <2 x double>, ptr %3326, align 16, !tbaa !26, !noalias !143
  %3328 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3327, <2 x double> %3296, <2 x double> %3325)
  %3329 = fsub <2 x double> %3328, %3296
  %3330 = fcmp ogt <2 x double> %3329, %3297
  %3331 = select <2 x i1> %3330, <2 x i64> %3314, <2 x i64> zeroinitializer
  %3332 = icmp sgt i64 %3315, %3306
  %3333 = select i1 %3332, <2 x i64> %3331, <2 x i64> zeroinitializer
  %3334 = icmp slt i64 %3315, %3264
  br i1 %3334, label %3335, label %3347

3335:                                             ; preds = %3313
  %3336 = load ptr, ptr %3307, align 16, !tbaa !85, !noalias !143
  %3337 = getelementptr inbounds nuw <2 x double>, ptr %3336, i64 %3315
  %3338 = load <2 x double>, ptr %3337, align 16, !tbaa !26, !noalias !143
  %3339 = fmul <2 x double> %3329, %3338
  %3340 = icmp eq <2 x i64> %3333, %3314
  %3341 = select <2 x i1> %3340, <2 x double> zeroinitializer, <2 x double> %3339
  %3342 = fadd <2 x double> %3322, %3341
  %3343 = fadd <2 x double> %3327, splat (double -1.000000e+00)
  %3344 = fmul <2 x double> %3343, %3338
  %3345 = select <2 x i1> %3340, <2 x double> zeroinitializer, <2 x double> %3344
  %3346 = fadd <2 x double> %3321, %3345
  br label %3347

3347:                                             ; preds = %3335, %3313
  %3348 = phi <2 x double> [ %3342, %3335 ], [ %3322, %3313 ]
  %3349 = phi <2 x double> [ %3346, %3335 ], [ %3321, %3313 ]
  br i1 %3332, label %3350, label %3356

3350:                                             ; preds = %3347
  %3351 = fneg <2 x double> %3329
  %3352 = icmp eq <2 x i64> %3333, %3314
  %3353 = select <2 x i1> %3352, <2 x double> %3318, <2 x double> %3351
  %3354 = fsub <2 x double> splat (double 1.000000e+00), %3327
  %3355 = select <2 x i1> %3352, <2 x double> %3319, <2 x double> %3354
  br label %3356

3356:                                             ; preds = %3350, %3347
  %3357 = phi <2 x double> [ %3355, %3350 ], [ %3319, %3347 ]
  %3358 = phi <2 x double> [ %3353, %3350 ], [ %3318, %3347 ]
  %3359 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3333)
  %3360 = icmp eq i64 %3359, 0
  br i1 %3360, label %3403, label %3361

3361:                                             ; preds = %3356
  %3362 = load ptr, ptr %3308, align 16, !tbaa !50, !noalias !143
  %3363 = getelementptr inbounds nuw <2 x double>, ptr %3362, i64 %3323
  %3364 = load <2 x double>, ptr %3363, align 16, !tbaa !26, !noalias !143
  %3365 = fmul <2 x double> %3279, %3364
  %3366 = load ptr, ptr %3309, align 16, !tbaa !49, !noalias !143
  %3367 = getelementptr inbounds nuw <2 x double>, ptr %3366, i64 %3323
  %3368 = load <2 x double>, ptr %3367, align 16, !tbaa !26, !noalias !143
  %3369 = load ptr, ptr %3310, align 8, !tbaa !66, !noalias !143
  %3370 = getelementptr inbounds nuw <2 x double>, ptr %3369, i64 %3323
  %3371 = load <2 x double>, ptr %3370, align 16, !tbaa !26, !noalias !143
  %3372 = fmul <2 x double> %3291, %3371
  %3373 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3285, <2 x double> %3368, <2 x double> %3372)
  %3374 = fmul <2 x double> %3364, %3373
  %3375 = icmp ne i64 %3315, 1
  %3376 = icmp eq i64 %3323, %3306
  %3377 = select i1 %3375, i1 %3376, i1 false
  %3378 = load <2 x double>, ptr %3311, align 16, !noalias !143
  %3379 = fadd <2 x double> %3365, %3378
  %3380 = load <2 x double>, ptr %3312, align 16, !noalias !143
  %3381 = fadd <2 x double> %3380, %3374
  %3382 = select i1 %3377, <2 x double> %3379, <2 x double> %3365
  %3383 = select i1 %3377, <2 x double> %3381, <2 x double> %3374
  %3384 = fneg <2 x double> %3383
  %3385 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3382, <2 x double> %3296, <2 x double> %3384)
  %3386 = icmp eq <2 x i64> %3333, zeroinitializer
  %3387 = select <2 x i1> %3386, <2 x double> zeroinitializer, <2 x double> %3385
  %3388 = fadd <2 x double> %3348, %3387
  %3389 = select <2 x i1> %3386, <2 x double> zeroinitializer, <2 x double> %3382
  %3390 = fadd <2 x double> %3349, %3389
  %3391 = fcmp olt <2 x double> %3316, %3329
  %3392 = select <2 x i1> %3386, <2 x i1> splat (i1 true), <2 x i1> %3391
  %3393 = select <2 x i1> %3392, <2 x double> %3316, <2 x double> %3329
  %3394 = fsub <2 x double> splat (double 1.000000e+00), %3327
  %3395 = fcmp ogt <2 x double> %3317, %3394
  %3396 = select <2 x i1> %3386, <2 x i1> splat (i1 true), <2 x i1> %3395
  %3397 = select <2 x i1> %3396, <2 x double> %3317, <2 x double> %3394
  %3398 = uitofp nneg i64 %3323 to double
  %3399 = insertelement <2 x double> poison, double %3398, i64 0
  %3400 = shufflevector <2 x double> %3399, <2 x double> poison, <2 x i32> zeroinitializer
  %3401 = select <2 x i1> %3386, <2 x double> %3320, <2 x double> %3400
  %3402 = icmp samesign ugt i64 %3315, 1
  br i1 %3402, label %3313, label %3403, !llvm.loop !149

3403:                                             ; preds = %3361, %3356, %3263
  %3404 = phi <2 x double> [ %3267, %3263 ], [ %3320, %3356 ], [ %3401, %3361 ]
  %3405 = phi <2 x double> [ zeroinitializer, %3263 ], [ %3317, %3356 ], [ %3397, %3361 ]
  %3406 = phi <2 x double> [ splat (double 1.000000e+18), %3263 ], [ %3316, %3356 ], [ %3393, %3361 ]
  %3407 = phi <2 x double> [ zeroinitializer, %3263 ], [ %3348, %3356 ], [ %3388, %3361 ]
  %3408 = phi <2 x double> [ zeroinitializer, %3263 ], [ %3349, %3356 ], [ %3390, %3361 ]
  %3409 = phi <2 x double> [ splat (double 1.000000e+00), %3263 ], [ %3357, %3356 ], [ %3357, %3361 ]
  %3410 = phi <2 x double> [ splat (double 1.000000e+18), %3263 ], [ %3358, %3356 ], [ %3358, %3361 ]
  %3411 = fmul <2 x double> %3293, %3408
  %3412 = fmul <2 x double> %3293, %3409
  %3413 = fdiv <2 x double> %3410, %3412
  %3414 = fsub <2 x double> %3118, %3413
  %3415 = fcmp ogt <2 x double> %3405, splat (double 1.000000e-09)
  %3416 = select <2 x i1> %3415, <2 x double> %3405, <2 x double> splat (double 1.000000e-09)
  %3417 = fmul <2 x double> %3293, %3416
  %3418 = fdiv <2 x double> %3406, %3417
  %3419 = fadd <2 x double> %3118, %3418
  %3420 = load <2 x double>, ptr %3250, align 16, !tbaa !26, !noalias !140
  %3421 = select <2 x i1> %3257, <2 x double> %3407, <2 x double> %3420
  store <2 x double> %3421, ptr %3250, align 16, !tbaa !26, !noalias !140
  %3422 = getelementptr inbounds nuw i8, ptr %3195, i64 2224
  %3423 = load <2 x double>, ptr %3422, align 16, !tbaa !26, !noalias !140
  %3424 = select <2 x i1> %3257, <2 x double> %3411, <2 x double> %3423
  store <2 x double> %3424, ptr %3422, align 16, !tbaa !26, !noalias !140
  %3425 = getelementptr inbounds nuw i8, ptr %3195, i64 2240
  %3426 = load <2 x double>, ptr %3425, align 16, !tbaa !26, !noalias !140
  %3427 = select <2 x i1> %3257, <2 x double> %3404, <2 x double> %3426
  store <2 x double> %3427, ptr %3425, align 16, !tbaa !26, !noalias !140
  %3428 = getelementptr inbounds nuw i8, ptr %3195, i64 2256
  %3429 = load <2 x double>, ptr %3428, align 16, !tbaa !26, !noalias !140
  %3430 = select <2 x i1> %3257, <2 x double> %3118, <2 x double> %3429
  store <2 x double> %3430, ptr %3428, align 16, !tbaa !26, !noalias !140
  %3431 = select <2 x i1> %3257, <2 x double> %3414, <2 x double> %3252
  store <2 x double> %3431, ptr %3251, align 16, !tbaa !26, !noalias !140
  %3432 = select <2 x i1> %3257, <2 x double> %3419, <2 x double> %3255
  store <2 x double> %3432, ptr %3254, align 16, !tbaa !26, !noalias !140
  br label %3433

3433:                                             ; preds = %3260, %3403
  %3434 = phi <2 x double> [ %3262, %3260 ], [ %3427, %3403 ]
  %3435 = load i64, ptr %128, align 16, !tbaa !21, !noalias !137
  %3436 = sitofp i64 %3435 to double
  %3437 = insertelement <2 x double> poison, double %3436, i64 0
  %3438 = shufflevector <2 x double> %3437, <2 x double> poison, <2 x i32> zeroinitializer
  %3439 = fcmp olt <2 x double> %3434, %3438
  %3440 = and <2 x i1> %3202, %3439
  %3441 = bitcast <2 x i1> %3440 to i2
  %3442 = icmp eq i2 %3441, 0
  br i1 %3442, label %3507, label %3443

3443:                                             ; preds = %3433
  %3444 = getelementptr inbounds nuw i8, ptr %3195, i64 2224
  %3445 = load <2 x double>, ptr %3444, align 16, !tbaa !26, !noalias !140
  %3446 = getelementptr inbounds nuw i8, ptr %3195, i64 2256
  %3447 = load <2 x double>, ptr %3446, align 16, !tbaa !26, !noalias !140
  %3448 = fsub <2 x double> %3118, %3447
  %3449 = load <2 x double>, ptr %3250, align 16, !tbaa !26, !noalias !140
  %3450 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3445, <2 x double> %3448, <2 x double> %3449)
  %3451 = getelementptr inbounds nuw i8, ptr %3195, i64 1872
  %3452 = load <2 x double>, ptr %3451, align 16, !tbaa !26, !noalias !137
  %3453 = getelementptr inbounds nuw i8, ptr %3195, i64 1584
  %3454 = load <2 x double>, ptr %3453, align 16, !tbaa !26, !noalias !137
  %3455 = getelementptr inbounds nuw i8, ptr %3195, i64 2096
  %3456 = load <2 x double>, ptr %3455, align 16, !tbaa !26, !noalias !137
  %3457 = fneg <2 x double> %3456
  %3458 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3452, <2 x double> %3454, <2 x double> %3457)
  %3459 = getelementptr inbounds nuw i8, ptr %3195, i64 2080
  %3460 = load <2 x double>, ptr %3459, align 16, !tbaa !26, !noalias !137
  %3461 = fadd <2 x double> %3452, %3460
  %3462 = getelementptr inbounds nuw i8, ptr %3195, i64 2320
  %3463 = load <2 x i64>, ptr %3462, align 16, !tbaa !26, !noalias !137
  %3464 = getelementptr inbounds nuw i8, ptr %3195, i64 2520
  %3465 = load ptr, ptr %3464, align 8, !tbaa !128, !noalias !137
  %3466 = load <2 x double>, ptr %3465, align 16, !tbaa !26, !noalias !137
  %3467 = fmul <2 x double> %3452, %3466
  %3468 = icmp eq <2 x i64> %3463, zeroinitializer
  %3469 = select <2 x i1> %3468, <2 x double> %3458, <2 x double> %3467
  %3470 = getelementptr inbounds nuw i8, ptr %3195, i64 2528
  %3471 = load ptr, ptr %3470, align 16, !tbaa !129, !noalias !137
  %3472 = load <2 x double>, ptr %3471, align 16, !tbaa !26, !noalias !137
  %3473 = fsub <2 x double> splat (double 1.000000e+00), %3472
  %3474 = fmul <2 x double> %3452, %3473
  %3475 = select <2 x i1> %3468, <2 x double> %3461, <2 x double> %3474
  %3476 = fneg <2 x double> %3475
  %3477 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3476, <2 x double> %3118, <2 x double> %3469)
  %3478 = fcmp ogt <2 x double> %3450, zeroinitializer
  %3479 = fcmp oge <2 x double> %3477, zeroinitializer
  %3480 = and <2 x i1> %3478, %3479
  %3481 = and <2 x i1> %3440, %3480
  %3482 = sext <2 x i1> %3481 to <2 x i64>
  %3483 = xor <2 x i64> %3482, splat (i64 -1)
  %3484 = fadd <2 x double> %3450, %3477
  %3485 = fcmp ogt <2 x double> %3484, zeroinitializer
  %3486 = and <2 x i1> %3440, %3485
  %3487 = select <2 x i1> %3486, <2 x i64> %3483, <2 x i64> zeroinitializer
  %3488 = or <2 x i64> %3487, %3482
  %3489 = fmul <2 x double> %3187, %3477
  %3490 = select <2 x i1> %3481, <2 x double> %3489, <2 x double> zeroinitializer
  %3491 = icmp eq <2 x i64> %3488, zeroinitializer
  %3492 = select <2 x i1> %3491, <2 x double> %3241, <2 x double> %3490
  store <2 x double> %3492, ptr %3242, align 16, !tbaa !26, !noalias !137
  %3493 = select <2 x i1> %3491, <2 x double> %3239, <2 x double> %3118
  store <2 x double> %3493, ptr %3243, align 16, !tbaa !26, !noalias !137
  %3494 = fsub <2 x double> %3445, %3475
  %3495 = fmul <2 x double> %3187, %3494
  %3496 = select <2 x i1> %3491, <2 x double> %3240, <2 x double> %3495
  %3497 = fmul <2 x double> %3187, %3450
  %3498 = fmul <2 x double> %3187, %3484
  %3499 = icmp eq <2 x i64> %3487, zeroinitializer
  %3500 = select <2 x i1> %3499, <2 x double> zeroinitializer, <2 x double> %3498
  %3501 = select <2 x i1> %3481, <2 x double> %3497, <2 x double> %3500
  store <2 x double> %3501, ptr %3244, align 16, !tbaa !26, !noalias !137
  %3502 = load i64, ptr %128, align 16, !tbaa !21, !noalias !137
  %3503 = sitofp i64 %3502 to double
  %3504 = insertelement <2 x double> poison, double %3503, i64 0
  %3505 = shufflevector <2 x double> %3504, <2 x double> poison, <2 x i32> zeroinitializer
  %3506 = select <2 x i1> %3491, <2 x double> %3505, <2 x double> %3434
  store <2 x double> %3506, ptr %3249, align 16, !tbaa !26, !noalias !137
  br label %3507

3507:                                             ; preds = %3433, %3443
  %3508 = phi <2 x double> [ %3501, %3443 ], [ zeroinitializer, %3433 ]
  %3509 = phi <2 x double> [ %3492, %3443 ], [ %3241, %3433 ]
  %3510 = phi <2 x double> [ %3496, %3443 ], [ %3240, %3433 ]
  %3511 = getelementptr inbounds nuw i8, ptr %3195, i64 32
  %3512 = load <2 x double>, ptr %3511, align 16, !tbaa !26, !noalias !137
  %3513 = fadd <2 x double> %3509, %3508
  %3514 = fmul <2 x double> %3512, %3513
  %3515 = fmul <2 x double> %3510, %3512
  %3516 = fadd <2 x double> %3192, %3514
  %3517 = fadd <2 x double> %3191, %3515
  %3518 = add nuw nsw i64 %3193, 1
  %3519 = load i64, ptr %166, align 8, !tbaa !20, !noalias !137
  %3520 = icmp slt i64 %3518, %3519
  br i1 %3520, label %3190, label %3521, !llvm.loop !150

3521:                                             ; preds = %3507, %3082
  %3522 = phi i64 [ %3188, %3082 ], [ %3519, %3507 ]
  %3523 = phi <2 x double> [ zeroinitializer, %3082 ], [ %3516, %3507 ]
  %3524 = phi <2 x double> [ zeroinitializer, %3082 ], [ %3517, %3507 ]
  %3525 = fdiv <2 x double> %3121, splat (double 4.615260e+02)
  %3526 = fadd <2 x double> %3079, %3525
  %3527 = load <2 x double>, ptr %197, align 16, !tbaa !26
  %3528 = fdiv <2 x double> %3526, %3527
  %3529 = fmul <2 x double> %3527, %3528
  %3530 = fdiv <2 x double> %3089, %3529
  %3531 = load <2 x double>, ptr %185, align 16, !tbaa !26, !noalias !151
  %3532 = fsub <2 x double> %3089, %3531
  %3533 = load <2 x double>, ptr %198, align 16, !tbaa !26, !noalias !151
  %3534 = fsub <2 x double> %3532, %3533
  %3535 = load <2 x double>, ptr %200, align 16, !tbaa !26, !noalias !151
  %3536 = load <2 x double>, ptr %148, align 16, !tbaa !26, !noalias !151
  %3537 = fcmp une <2 x double> %3536, splat (double 2.000000e+00)
  %3538 = load <2 x double>, ptr %201, align 16, !tbaa !26, !noalias !151
  %3539 = select <2 x i1> %3537, <2 x double> zeroinitializer, <2 x double> %3538
  %3540 = fadd <2 x double> %3535, %3539
  %3541 = fcmp ogt <2 x double> %3532, zeroinitializer
  %3542 = fcmp ogt <2 x double> %3540, zeroinitializer
  %3543 = and <2 x i1> %3541, %3542
  %3544 = bitcast <2 x i1> %3543 to i2
  %3545 = icmp eq i2 %3544, 0
  br i1 %3545, label %3562, label %3546

3546:                                             ; preds = %3521
  %3547 = fmul <2 x double> %3528, splat (double 2.000000e+00)
  %3548 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %3547)
  %3549 = fmul <2 x double> %3548, %3540
  %3550 = fadd <2 x double> %3532, splat (double 2.000000e+02)
  %3551 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %3550)
  %3552 = select <2 x i1> %3541, <2 x double> %3551, <2 x double> splat (double 0x402C48C6001F0AC0)
  %3553 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3532, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %3554 = fmul <2 x double> %3553, %3549
  %3555 = fmul <2 x double> %3552, %3552
  %3556 = fmul <2 x double> %3552, %3555
  %3557 = fdiv <2 x double> %3554, %3556
  %3558 = fmul <2 x double> %3532, %3549
  %3559 = fdiv <2 x double> %3558, %3552
  %3560 = select <2 x i1> %3543, <2 x double> %3559, <2 x double> zeroinitializer
  %3561 = select <2 x i1> %3543, <2 x double> %3557, <2 x double> zeroinitializer
  br label %3562

3562:                                             ; preds = %3521, %3546
  %3563 = phi <2 x double> [ %3560, %3546 ], [ zeroinitializer, %3521 ]
  %3564 = phi <2 x double> [ %3561, %3546 ], [ zeroinitializer, %3521 ]
  %3565 = fcmp ule <2 x double> %3534, zeroinitializer
  %3566 = load <2 x double>, ptr %202, align 16, !tbaa !26, !noalias !151
  %3567 = fmul <2 x double> %3534, %3566
  %3568 = select <2 x i1> %3565, <2 x double> zeroinitializer, <2 x double> %3567
  %3569 = fadd <2 x double> %3563, %3568
  %3570 = select <2 x i1> %3565, <2 x double> zeroinitializer, <2 x double> %3566
  %3571 = fadd <2 x double> %3564, %3570
  %3572 = load <2 x double>, ptr %203, align 16, !tbaa !26
  %3573 = fsub <2 x double> %3531, %3089
  %3574 = fcmp ogt <2 x double> %3573, zeroinitializer
  %3575 = fcmp ogt <2 x double> %3572, zeroinitializer
  %3576 = and <2 x i1> %3574, %3575
  %3577 = bitcast <2 x i1> %3576 to i2
  %3578 = icmp eq i2 %3577, 0
  br i1 %3578, label %3595, label %3579

3579:                                             ; preds = %3562
  %3580 = fmul <2 x double> %3081, %3572
  %3581 = fadd <2 x double> %3573, splat (double 2.000000e+02)
  %3582 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %3581)
  %3583 = select <2 x i1> %3574, <2 x double> %3582, <2 x double> splat (double 0x402C48C6001F0AC0)
  %3584 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3573, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %3585 = fmul <2 x double> %3584, %3580
  %3586 = fmul <2 x double> %3583, %3583
  %3587 = fmul <2 x double> %3583, %3586
  %3588 = fdiv <2 x double> %3585, %3587
  %3589 = fmul <2 x double> %3573, %3580
  %3590 = fdiv <2 x double> %3589, %3583
  %3591 = fmul <2 x double> %3590, splat (double -2.870530e+02)
  %3592 = select <2 x i1> %3576, <2 x double> %3591, <2 x double> splat (double -0.000000e+00)
  %3593 = fmul <2 x double> %3588, splat (double 2.870530e+02)
  %3594 = select <2 x i1> %3576, <2 x double> %3593, <2 x double> zeroinitializer
  br label %3595

3595:                                             ; preds = %3562, %3579
  %3596 = phi <2 x double> [ %3592, %3579 ], [ splat (double -0.000000e+00), %3562 ]
  %3597 = phi <2 x double> [ %3594, %3579 ], [ zeroinitializer, %3562 ]
  %3598 = fmul <2 x double> %3122, splat (double 4.615260e+02)
  %3599 = fmul <2 x double> %3122, %3598
  %3600 = fmul <2 x double> %3089, %3186
  %3601 = fdiv <2 x double> %3599, %3600
  %3602 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %3603 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3602, <2 x double> %3089, <2 x double> %3063)
  %3604 = fsub <2 x double> %3523, %3184
  %3605 = fmul <2 x double> %3604, splat (double -4.615260e+02)
  %3606 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3066, <2 x double> %3603, <2 x double> %3605)
  %3607 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3530, <2 x double> %3569, <2 x double> %3596)
  %3608 = fadd <2 x double> %3607, %3606
  %3609 = fneg <2 x double> %3169
  %3610 = fmul <2 x double> %3176, %3609
  %3611 = fdiv <2 x double> %3610, %3177
  %3612 = fmul <2 x double> %3611, %3175
  %3613 = select <2 x i1> %3170, <2 x double> splat (double -0.000000e+00), <2 x double> %3612
  %3614 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3524, <2 x double> %3601, <2 x double> %3613)
  %3615 = fmul <2 x double> %3614, splat (double -4.615260e+02)
  %3616 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3066, <2 x double> %3602, <2 x double> %3615)
  %3617 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3530, <2 x double> %3571, <2 x double> %3597)
  %3618 = fadd <2 x double> %3617, %3616
  %3619 = fcmp ule <2 x double> %3608, zeroinitializer
  %3620 = fcmp olt <2 x double> %3086, %3089
  %3621 = select <2 x i1> %3619, <2 x i1> splat (i1 true), <2 x i1> %3620
  %3622 = select <2 x i1> %3621, <2 x double> %3086, <2 x double> %3089
  %3623 = fcmp ogt <2 x double> %3085, %3089
  %3624 = select <2 x i1> %3623, <2 x double> %3085, <2 x double> %3089
  %3625 = select <2 x i1> %3619, <2 x double> %3624, <2 x double> %3085
  %3626 = fdiv <2 x double> %3608, %3618
  %3627 = fsub <2 x double> %3089, %3626
  %3628 = fsub <2 x double> %3627, %3089
  %3629 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3628)
  %3630 = fcmp uge <2 x double> %3629, splat (double 2.000000e-01)
  %3631 = fcmp uge <2 x double> %3625, %3627
  %3632 = fcmp uge <2 x double> %3627, %3622
  %3633 = or <2 x i1> %3631, %3632
  %3634 = and <2 x i1> %3630, %3633
  %3635 = fadd <2 x double> %3625, %3622
  %3636 = fmul <2 x double> %3635, splat (double 5.000000e-01)
  %3637 = select <2 x i1> %3634, <2 x double> %3636, <2 x double> %3627
  %3638 = fsub <2 x double> %3637, %3089
  %3639 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3638)
  %3640 = fcmp oge <2 x double> %3639, splat (double 2.000000e-01)
  %3641 = select <2 x i1> %3640, <2 x i64> %3087, <2 x i64> zeroinitializer
  %3642 = icmp eq <2 x i64> %3641, zeroinitializer
  %3643 = select <2 x i1> %3642, <2 x double> %3089, <2 x double> %3637
  %3644 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3641)
  %3645 = icmp ne i64 %3644, 0
  %3646 = add nuw nsw i32 %3088, 1
  %3647 = icmp samesign ult i32 %3088, 59
  %3648 = select i1 %3645, i1 %3647, i1 false
  br i1 %3648, label %3082, label %3649, !llvm.loop !154

3649:                                             ; preds = %3595
  %3650 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %3651 = load <2 x double>, ptr %204, align 16, !tbaa !26
  %3652 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %3653 = load <2 x double>, ptr %205, align 16, !tbaa !26
  %3654 = fmul <2 x double> %3652, %3653
  %3655 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3650, <2 x double> %3651, <2 x double> %3654)
  %3656 = fsub <2 x double> %3531, %3643
  %3657 = fcmp ogt <2 x double> %3656, zeroinitializer
  %3658 = and <2 x i1> %3575, %3657
  %3659 = bitcast <2 x i1> %3658 to i2
  %3660 = icmp eq i2 %3659, 0
  br i1 %3660, label %3670, label %3661

3661:                                             ; preds = %3649
  %3662 = fmul <2 x double> %3081, %3572
  %3663 = fadd <2 x double> %3656, splat (double 2.000000e+02)
  %3664 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %3663)
  %3665 = select <2 x i1> %3657, <2 x double> %3664, <2 x double> splat (double 0x402C48C6001F0AC0)
  %3666 = fmul <2 x double> %3662, %3656
  %3667 = fdiv <2 x double> %3666, %3665
  %3668 = fmul <2 x double> %3667, splat (double 2.870530e+02)
  %3669 = select <2 x i1> %3658, <2 x double> %3668, <2 x double> zeroinitializer
  br label %3670

3670:                                             ; preds = %3649, %3661
  %3671 = phi <2 x double> [ %3669, %3661 ], [ zeroinitializer, %3649 ]
  %3672 = fdiv <2 x double> %3671, %3066
  %3673 = fsub <2 x double> %3672, %3655
  %3674 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %3675 = fmul <2 x double> %3528, %3674
  %3676 = fdiv <2 x double> %3569, %3675
  %3677 = fadd <2 x double> %3602, %3676
  %3678 = fdiv <2 x double> %3673, %3677
  %3679 = fcmp ogt <2 x double> %3678, zeroinitializer
  %3680 = select <2 x i1> %3679, <2 x double> %3678, <2 x double> zeroinitializer
  %3681 = fcmp olt <2 x double> %3680, %3643
  %3682 = select <2 x i1> %3681, <2 x double> %3680, <2 x double> %3643
  %3683 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %3684 = select <2 x i1> %3077, <2 x double> %3683, <2 x double> %3682
  store <2 x double> %3684, ptr %192, align 16, !tbaa !26
  %3685 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %3686 = select <2 x i1> %3077, <2 x double> %3054, <2 x double> %3685
  store <2 x double> %3686, ptr %193, align 16, !tbaa !26
  store <2 x double> %3643, ptr %186, align 16, !tbaa !26
  store <2 x double> %3118, ptr %206, align 16, !tbaa !26
  br label %4005

3687:                                             ; preds = %3033
  store <2 x double> %3035, ptr %206, align 16, !tbaa !26
  %3688 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3035, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3689 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3035, <2 x double> %3688, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3690 = fdiv <2 x double> splat (double 1.000000e+00), %3689
  %3691 = load i64, ptr %166, align 8, !tbaa !20, !noalias !155
  %3692 = icmp sgt i64 %3691, 0
  br i1 %3692, label %3693, label %4008

3693:                                             ; preds = %3687, %4001
  %3694 = phi i64 [ %4002, %4001 ], [ 0, %3687 ]
  %3695 = load ptr, ptr %139, align 8, !tbaa !28, !noalias !155
  %3696 = getelementptr inbounds nuw %struct.Piece, ptr %3695, i64 %3694
  %3697 = getelementptr inbounds nuw i8, ptr %3696, i64 1664
  %3698 = load <2 x double>, ptr %3697, align 16, !tbaa !26, !noalias !155
  %3699 = getelementptr inbounds nuw i8, ptr %3696, i64 1680
  %3700 = load <2 x double>, ptr %3699, align 16, !tbaa !26, !noalias !155
  %3701 = getelementptr inbounds nuw i8, ptr %3696, i64 2144
  %3702 = load <2 x double>, ptr %3701, align 16, !tbaa !26, !noalias !155
  %3703 = fcmp ule <2 x double> %3702, splat (double 1.000000e+00)
  %3704 = fmul <2 x double> %3035, %3700
  %3705 = fcmp ogt <2 x double> %3698, %3704
  %3706 = and <2 x i1> %3703, %3705
  %3707 = fneg <2 x double> %3700
  %3708 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3707, <2 x double> %3035, <2 x double> %3698)
  %3709 = fmul <2 x double> %3690, %3708
  %3710 = select <2 x i1> %3706, <2 x double> %3709, <2 x double> zeroinitializer
  %3711 = xor <2 x i1> %3706, splat (i1 true)
  %3712 = bitcast <2 x i1> %3711 to i2
  %3713 = icmp eq i2 %3712, 0
  %3714 = fdiv <2 x double> %3698, %3700
  %3715 = select <2 x i1> %3706, <2 x double> %3035, <2 x double> %3714
  %3716 = select i1 %3713, <2 x double> %3035, <2 x double> %3715
  %3717 = getelementptr inbounds nuw i8, ptr %3696, i64 2352
  %3718 = load <2 x i64>, ptr %3717, align 16, !tbaa !26, !noalias !155
  %3719 = getelementptr inbounds nuw i8, ptr %3696, i64 656
  %3720 = load <2 x double>, ptr %3719, align 16, !tbaa !26, !noalias !155
  %3721 = fcmp ogt <2 x double> %3720, zeroinitializer
  %3722 = select <2 x i1> %3703, <2 x i1> %3721, <2 x i1> zeroinitializer
  %3723 = select <2 x i1> %3722, <2 x i64> %3718, <2 x i64> zeroinitializer
  %3724 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3723)
  %3725 = icmp eq i64 %3724, 0
  br i1 %3725, label %3736, label %3726

3726:                                             ; preds = %3693
  %3727 = getelementptr inbounds nuw i8, ptr %3696, i64 1840
  %3728 = load <2 x double>, ptr %3727, align 16, !tbaa !26, !noalias !155
  %3729 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3707, <2 x double> %3728, <2 x double> %3698)
  %3730 = fcmp ogt <2 x double> %3729, zeroinitializer
  %3731 = select <2 x i1> %3730, <2 x double> %3729, <2 x double> zeroinitializer
  %3732 = fmul <2 x double> %3690, %3731
  %3733 = icmp eq <2 x i64> %3723, zeroinitializer
  %3734 = select <2 x i1> %3733, <2 x double> %3710, <2 x double> %3732
  %3735 = select <2 x i1> %3733, <2 x double> %3716, <2 x double> %3728
  br label %3736

3736:                                             ; preds = %3726, %3693
  %3737 = phi <2 x double> [ %3735, %3726 ], [ %3716, %3693 ]
  %3738 = phi <2 x double> [ %3734, %3726 ], [ %3710, %3693 ]
  %3739 = getelementptr inbounds nuw i8, ptr %3696, i64 1616
  store <2 x double> %3738, ptr %3739, align 16, !tbaa !26, !noalias !155
  %3740 = getelementptr inbounds nuw i8, ptr %3696, i64 1600
  store <2 x double> %3737, ptr %3740, align 16, !tbaa !26, !noalias !155
  %3741 = getelementptr inbounds nuw i8, ptr %3696, i64 1632
  store <2 x double> zeroinitializer, ptr %3741, align 16, !tbaa !26, !noalias !155
  %3742 = load i64, ptr %128, align 16, !tbaa !21, !noalias !155
  %3743 = sitofp i64 %3742 to double
  %3744 = insertelement <2 x double> poison, double %3743, i64 0
  %3745 = shufflevector <2 x double> %3744, <2 x double> poison, <2 x i32> zeroinitializer
  %3746 = getelementptr inbounds nuw i8, ptr %3696, i64 1648
  store <2 x double> %3745, ptr %3746, align 16, !tbaa !26, !noalias !155
  %3747 = getelementptr inbounds nuw i8, ptr %3696, i64 2208
  %3748 = getelementptr inbounds nuw i8, ptr %3696, i64 2272
  %3749 = load <2 x double>, ptr %3748, align 16, !tbaa !26, !noalias !158
  %3750 = fcmp ole <2 x double> %3035, %3749
  %3751 = getelementptr inbounds nuw i8, ptr %3696, i64 2288
  %3752 = load <2 x double>, ptr %3751, align 16, !tbaa !26, !noalias !158
  %3753 = fcmp oge <2 x double> %3035, %3752
  %3754 = or <2 x i1> %3750, %3753
  %3755 = bitcast <2 x i1> %3754 to i2
  %3756 = icmp eq i2 %3755, 0
  br i1 %3756, label %3757, label %3760

3757:                                             ; preds = %3736
  %3758 = getelementptr inbounds nuw i8, ptr %3696, i64 2240
  %3759 = load <2 x double>, ptr %3758, align 16, !tbaa !26, !noalias !158
  br label %3930

3760:                                             ; preds = %3736
  %3761 = load i64, ptr %128, align 16, !tbaa !21, !noalias !161
  %3762 = sitofp i64 %3761 to double
  %3763 = insertelement <2 x double> poison, double %3762, i64 0
  %3764 = shufflevector <2 x double> %3763, <2 x double> poison, <2 x i32> zeroinitializer
  %3765 = getelementptr inbounds nuw i8, ptr %3696, i64 1504
  %3766 = load <2 x double>, ptr %3765, align 16, !tbaa !26, !noalias !161
  %3767 = getelementptr inbounds nuw i8, ptr %3696, i64 1040
  %3768 = load <2 x double>, ptr %3767, align 16, !tbaa !26, !noalias !161
  %3769 = getelementptr inbounds nuw i8, ptr %3696, i64 480
  %3770 = load <2 x double>, ptr %3769, align 16, !tbaa !26, !noalias !161
  %3771 = fsub <2 x double> %3768, %3770
  %3772 = getelementptr inbounds nuw i8, ptr %3696, i64 2016
  %3773 = load <2 x double>, ptr %3772, align 16, !tbaa !26, !noalias !161
  %3774 = fneg <2 x double> %3771
  %3775 = fmul <2 x double> %3766, %3774
  %3776 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3773, <2 x double> splat (double 2.000000e+00), <2 x double> %3775)
  %3777 = getelementptr inbounds nuw i8, ptr %3696, i64 1520
  %3778 = load <2 x double>, ptr %3777, align 16, !tbaa !26, !noalias !164
  %3779 = getelementptr inbounds nuw i8, ptr %3696, i64 1264
  %3780 = load <2 x double>, ptr %3779, align 16, !tbaa !26, !noalias !164
  %3781 = fsub <2 x double> %3780, %3770
  %3782 = fmul <2 x double> %3778, %3781
  %3783 = getelementptr inbounds nuw i8, ptr %3696, i64 1536
  %3784 = load <2 x double>, ptr %3783, align 16, !tbaa !26, !noalias !164
  %3785 = getelementptr inbounds nuw i8, ptr %3696, i64 1488
  %3786 = load <2 x double>, ptr %3785, align 16, !tbaa !26, !noalias !164
  %3787 = fsub <2 x double> %3786, %3770
  %3788 = fmul <2 x double> %3784, %3787
  %3789 = getelementptr inbounds nuw i8, ptr %3696, i64 1696
  %3790 = load <2 x double>, ptr %3789, align 16, !tbaa !26, !noalias !161
  %3791 = getelementptr inbounds nuw i8, ptr %3696, i64 1712
  %3792 = load <2 x double>, ptr %3791, align 16, !tbaa !26, !noalias !161
  %3793 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3790, <2 x double> %3035, <2 x double> %3792)
  %3794 = fmul <2 x double> %3790, splat (double 1.000000e-09)
  %3795 = icmp sgt i64 %3761, 0
  br i1 %3795, label %3796, label %3900

3796:                                             ; preds = %3760
  %3797 = sext <2 x i1> %3754 to <2 x i64>
  %3798 = getelementptr inbounds nuw i8, ptr %3696, i64 2432
  %3799 = load ptr, ptr %3798, align 16, !tbaa !86, !noalias !161
  %3800 = getelementptr inbounds nuw i8, ptr %3696, i64 2440
  %3801 = load ptr, ptr %3800, align 8, !tbaa !87, !noalias !161
  %3802 = getelementptr inbounds nuw i8, ptr %3696, i64 2368
  %3803 = load i64, ptr %3802, align 16, !tbaa !31, !noalias !161
  %3804 = getelementptr inbounds nuw i8, ptr %3696, i64 2448
  %3805 = getelementptr inbounds nuw i8, ptr %3696, i64 2464
  %3806 = getelementptr inbounds nuw i8, ptr %3696, i64 2400
  %3807 = getelementptr inbounds nuw i8, ptr %3696, i64 2408
  %3808 = getelementptr inbounds nuw i8, ptr %3696, i64 1760
  %3809 = getelementptr inbounds nuw i8, ptr %3696, i64 1776
  br label %3810

3810:                                             ; preds = %3796, %3858
  %3811 = phi <2 x i64> [ %3797, %3796 ], [ %3830, %3858 ]
  %3812 = phi i64 [ %3761, %3796 ], [ %3820, %3858 ]
  %3813 = phi <2 x double> [ splat (double 1.000000e+18), %3796 ], [ %3890, %3858 ]
  %3814 = phi <2 x double> [ zeroinitializer, %3796 ], [ %3894, %3858 ]
  %3815 = phi <2 x double> [ splat (double 1.000000e+18), %3796 ], [ %3855, %3858 ]
  %3816 = phi <2 x double> [ splat (double 1.000000e+00), %3796 ], [ %3854, %3858 ]
  %3817 = phi <2 x double> [ %3764, %3796 ], [ %3898, %3858 ]
  %3818 = phi <2 x double> [ zeroinitializer, %3796 ], [ %3887, %3858 ]
  %3819 = phi <2 x double> [ zeroinitializer, %3796 ], [ %3885, %3858 ]
  %3820 = add nsw i64 %3812, -1
  %3821 = getelementptr inbounds nuw <2 x double>, ptr %3799, i64 %3820
  %3822 = load <2 x double>, ptr %3821, align 16, !tbaa !26, !noalias !161
  %3823 = getelementptr inbounds nuw <2 x double>, ptr %3801, i64 %3820
  %3824 = load <2 x double>, ptr %3823, align 16, !tbaa !26, !noalias !161
  %3825 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3824, <2 x double> %3793, <2 x double> %3822)
  %3826 = fsub <2 x double> %3825, %3793
  %3827 = fcmp ogt <2 x double> %3826, %3794
  %3828 = select <2 x i1> %3827, <2 x i64> %3811, <2 x i64> zeroinitializer
  %3829 = icmp sgt i64 %3812, %3803
  %3830 = select i1 %3829, <2 x i64> %3828, <2 x i64> zeroinitializer
  %3831 = icmp slt i64 %3812, %3761
  br i1 %3831, label %3832, label %3844

3832:                                             ; preds = %3810
  %3833 = load ptr, ptr %3804, align 16, !tbaa !85, !noalias !161
  %3834 = getelementptr inbounds nuw <2 x double>, ptr %3833, i64 %3812
  %3835 = load <2 x double>, ptr %3834, align 16, !tbaa !26, !noalias !161
  %3836 = fmul <2 x double> %3826, %3835
  %3837 = icmp eq <2 x i64> %3830, %3811
  %3838 = select <2 x i1> %3837, <2 x double> zeroinitializer, <2 x double> %3836
  %3839 = fadd <2 x double> %3819, %3838
  %3840 = fadd <2 x double> %3824, splat (double -1.000000e+00)
  %3841 = fmul <2 x double> %3840, %3835
  %3842 = select <2 x i1> %3837, <2 x double> zeroinitializer, <2 x double> %3841
  %3843 = fadd <2 x double> %3818, %3842
  br label %3844

3844:                                             ; preds = %3832, %3810
  %3845 = phi <2 x double> [ %3839, %3832 ], [ %3819, %3810 ]
  %3846 = phi <2 x double> [ %3843, %3832 ], [ %3818, %3810 ]
  br i1 %3829, label %3847, label %3853

3847:                                             ; preds = %3844
  %3848 = fneg <2 x double> %3826
  %3849 = icmp eq <2 x i64> %3830, %3811
  %3850 = select <2 x i1> %3849, <2 x double> %3815, <2 x double> %3848
  %3851 = fsub <2 x double> splat (double 1.000000e+00), %3824
  %3852 = select <2 x i1> %3849, <2 x double> %3816, <2 x double> %3851
  br label %3853

3853:                                             ; preds = %3847, %3844
  %3854 = phi <2 x double> [ %3852, %3847 ], [ %3816, %3844 ]
  %3855 = phi <2 x double> [ %3850, %3847 ], [ %3815, %3844 ]
  %3856 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3830)
  %3857 = icmp eq i64 %3856, 0
  br i1 %3857, label %3900, label %3858

3858:                                             ; preds = %3853
  %3859 = load ptr, ptr %3805, align 16, !tbaa !50, !noalias !161
  %3860 = getelementptr inbounds nuw <2 x double>, ptr %3859, i64 %3820
  %3861 = load <2 x double>, ptr %3860, align 16, !tbaa !26, !noalias !161
  %3862 = fmul <2 x double> %3776, %3861
  %3863 = load ptr, ptr %3806, align 16, !tbaa !49, !noalias !161
  %3864 = getelementptr inbounds nuw <2 x double>, ptr %3863, i64 %3820
  %3865 = load <2 x double>, ptr %3864, align 16, !tbaa !26, !noalias !161
  %3866 = load ptr, ptr %3807, align 8, !tbaa !66, !noalias !161
  %3867 = getelementptr inbounds nuw <2 x double>, ptr %3866, i64 %3820
  %3868 = load <2 x double>, ptr %3867, align 16, !tbaa !26, !noalias !161
  %3869 = fmul <2 x double> %3788, %3868
  %3870 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3782, <2 x double> %3865, <2 x double> %3869)
  %3871 = fmul <2 x double> %3861, %3870
  %3872 = icmp ne i64 %3812, 1
  %3873 = icmp eq i64 %3820, %3803
  %3874 = select i1 %3872, i1 %3873, i1 false
  %3875 = load <2 x double>, ptr %3808, align 16, !noalias !161
  %3876 = fadd <2 x double> %3862, %3875
  %3877 = load <2 x double>, ptr %3809, align 16, !noalias !161
  %3878 = fadd <2 x double> %3877, %3871
  %3879 = select i1 %3874, <2 x double> %3876, <2 x double> %3862
  %3880 = select i1 %3874, <2 x double> %3878, <2 x double> %3871
  %3881 = fneg <2 x double> %3880
  %3882 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3879, <2 x double> %3793, <2 x double> %3881)
  %3883 = icmp eq <2 x i64> %3830, zeroinitializer
  %3884 = select <2 x i1> %3883, <2 x double> zeroinitializer, <2 x double> %3882
  %3885 = fadd <2 x double> %3845, %3884
  %3886 = select <2 x i1> %3883, <2 x double> zeroinitializer, <2 x double> %3879
  %3887 = fadd <2 x double> %3846, %3886
  %3888 = fcmp olt <2 x double> %3813, %3826
  %3889 = select <2 x i1> %3883, <2 x i1> splat (i1 true), <2 x i1> %3888
  %3890 = select <2 x i1> %3889, <2 x double> %3813, <2 x double> %3826
  %3891 = fsub <2 x double> splat (double 1.000000e+00), %3824
  %3892 = fcmp ogt <2 x double> %3814, %3891
  %3893 = select <2 x i1> %3883, <2 x i1> splat (i1 true), <2 x i1> %3892
  %3894 = select <2 x i1> %3893, <2 x double> %3814, <2 x double> %3891
  %3895 = uitofp nneg i64 %3820 to double
  %3896 = insertelement <2 x double> poison, double %3895, i64 0
  %3897 = shufflevector <2 x double> %3896, <2 x double> poison, <2 x i32> zeroinitializer
  %3898 = select <2 x i1> %3883, <2 x double> %3817, <2 x double> %3897
  %3899 = icmp samesign ugt i64 %3812, 1
  br i1 %3899, label %3810, label %3900, !llvm.loop !149

3900:                                             ; preds = %3858, %3853, %3760
  %3901 = phi <2 x double> [ %3764, %3760 ], [ %3817, %3853 ], [ %3898, %3858 ]
  %3902 = phi <2 x double> [ zeroinitializer, %3760 ], [ %3814, %3853 ], [ %3894, %3858 ]
  %3903 = phi <2 x double> [ splat (double 1.000000e+18), %3760 ], [ %3813, %3853 ], [ %3890, %3858 ]
  %3904 = phi <2 x double> [ zeroinitializer, %3760 ], [ %3845, %3853 ], [ %3885, %3858 ]
  %3905 = phi <2 x double> [ zeroinitializer, %3760 ], [ %3846, %3853 ], [ %3887, %3858 ]
  %3906 = phi <2 x double> [ splat (double 1.000000e+00), %3760 ], [ %3854, %3853 ], [ %3854, %3858 ]
  %3907 = phi <2 x double> [ splat (double 1.000000e+18), %3760 ], [ %3855, %3853 ], [ %3855, %3858 ]
  %3908 = fmul <2 x double> %3790, %3905
  %3909 = fmul <2 x double> %3790, %3906
  %3910 = fdiv <2 x double> %3907, %3909
  %3911 = fsub <2 x double> %3035, %3910
  %3912 = fcmp ogt <2 x double> %3902, splat (double 1.000000e-09)
  %3913 = select <2 x i1> %3912, <2 x double> %3902, <2 x double> splat (double 1.000000e-09)
  %3914 = fmul <2 x double> %3790, %3913
  %3915 = fdiv <2 x double> %3903, %3914
  %3916 = fadd <2 x double> %3035, %3915
  %3917 = load <2 x double>, ptr %3747, align 16, !tbaa !26, !noalias !158
  %3918 = select <2 x i1> %3754, <2 x double> %3904, <2 x double> %3917
  store <2 x double> %3918, ptr %3747, align 16, !tbaa !26, !noalias !158
  %3919 = getelementptr inbounds nuw i8, ptr %3696, i64 2224
  %3920 = load <2 x double>, ptr %3919, align 16, !tbaa !26, !noalias !158
  %3921 = select <2 x i1> %3754, <2 x double> %3908, <2 x double> %3920
  store <2 x double> %3921, ptr %3919, align 16, !tbaa !26, !noalias !158
  %3922 = getelementptr inbounds nuw i8, ptr %3696, i64 2240
  %3923 = load <2 x double>, ptr %3922, align 16, !tbaa !26, !noalias !158
  %3924 = select <2 x i1> %3754, <2 x double> %3901, <2 x double> %3923
  store <2 x double> %3924, ptr %3922, align 16, !tbaa !26, !noalias !158
  %3925 = getelementptr inbounds nuw i8, ptr %3696, i64 2256
  %3926 = load <2 x double>, ptr %3925, align 16, !tbaa !26, !noalias !158
  %3927 = select <2 x i1> %3754, <2 x double> %3035, <2 x double> %3926
  store <2 x double> %3927, ptr %3925, align 16, !tbaa !26, !noalias !158
  %3928 = select <2 x i1> %3754, <2 x double> %3911, <2 x double> %3749
  store <2 x double> %3928, ptr %3748, align 16, !tbaa !26, !noalias !158
  %3929 = select <2 x i1> %3754, <2 x double> %3916, <2 x double> %3752
  store <2 x double> %3929, ptr %3751, align 16, !tbaa !26, !noalias !158
  br label %3930

3930:                                             ; preds = %3757, %3900
  %3931 = phi <2 x double> [ %3759, %3757 ], [ %3924, %3900 ]
  %3932 = load i64, ptr %128, align 16, !tbaa !21, !noalias !155
  %3933 = sitofp i64 %3932 to double
  %3934 = insertelement <2 x double> poison, double %3933, i64 0
  %3935 = shufflevector <2 x double> %3934, <2 x double> poison, <2 x i32> zeroinitializer
  %3936 = fcmp olt <2 x double> %3931, %3935
  %3937 = and <2 x i1> %3703, %3936
  %3938 = bitcast <2 x i1> %3937 to i2
  %3939 = icmp eq i2 %3938, 0
  br i1 %3939, label %4001, label %3940

3940:                                             ; preds = %3930
  %3941 = getelementptr inbounds nuw i8, ptr %3696, i64 2224
  %3942 = load <2 x double>, ptr %3941, align 16, !tbaa !26, !noalias !158
  %3943 = getelementptr inbounds nuw i8, ptr %3696, i64 2256
  %3944 = load <2 x double>, ptr %3943, align 16, !tbaa !26, !noalias !158
  %3945 = fsub <2 x double> %3035, %3944
  %3946 = load <2 x double>, ptr %3747, align 16, !tbaa !26, !noalias !158
  %3947 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3942, <2 x double> %3945, <2 x double> %3946)
  %3948 = getelementptr inbounds nuw i8, ptr %3696, i64 1872
  %3949 = load <2 x double>, ptr %3948, align 16, !tbaa !26, !noalias !155
  %3950 = getelementptr inbounds nuw i8, ptr %3696, i64 1584
  %3951 = load <2 x double>, ptr %3950, align 16, !tbaa !26, !noalias !155
  %3952 = getelementptr inbounds nuw i8, ptr %3696, i64 2096
  %3953 = load <2 x double>, ptr %3952, align 16, !tbaa !26, !noalias !155
  %3954 = fneg <2 x double> %3953
  %3955 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3949, <2 x double> %3951, <2 x double> %3954)
  %3956 = getelementptr inbounds nuw i8, ptr %3696, i64 2080
  %3957 = load <2 x double>, ptr %3956, align 16, !tbaa !26, !noalias !155
  %3958 = fadd <2 x double> %3949, %3957
  %3959 = getelementptr inbounds nuw i8, ptr %3696, i64 2320
  %3960 = load <2 x i64>, ptr %3959, align 16, !tbaa !26, !noalias !155
  %3961 = getelementptr inbounds nuw i8, ptr %3696, i64 2520
  %3962 = load ptr, ptr %3961, align 8, !tbaa !128, !noalias !155
  %3963 = load <2 x double>, ptr %3962, align 16, !tbaa !26, !noalias !155
  %3964 = fmul <2 x double> %3949, %3963
  %3965 = icmp eq <2 x i64> %3960, zeroinitializer
  %3966 = select <2 x i1> %3965, <2 x double> %3955, <2 x double> %3964
  %3967 = getelementptr inbounds nuw i8, ptr %3696, i64 2528
  %3968 = load ptr, ptr %3967, align 16, !tbaa !129, !noalias !155
  %3969 = load <2 x double>, ptr %3968, align 16, !tbaa !26, !noalias !155
  %3970 = fsub <2 x double> splat (double 1.000000e+00), %3969
  %3971 = fmul <2 x double> %3949, %3970
  %3972 = select <2 x i1> %3965, <2 x double> %3958, <2 x double> %3971
  %3973 = fneg <2 x double> %3972
  %3974 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3973, <2 x double> %3035, <2 x double> %3966)
  %3975 = fcmp ogt <2 x double> %3947, zeroinitializer
  %3976 = fcmp oge <2 x double> %3974, zeroinitializer
  %3977 = and <2 x i1> %3975, %3976
  %3978 = and <2 x i1> %3937, %3977
  %3979 = sext <2 x i1> %3978 to <2 x i64>
  %3980 = xor <2 x i64> %3979, splat (i64 -1)
  %3981 = fadd <2 x double> %3947, %3974
  %3982 = fcmp ogt <2 x double> %3981, zeroinitializer
  %3983 = and <2 x i1> %3937, %3982
  %3984 = select <2 x i1> %3983, <2 x i64> %3980, <2 x i64> zeroinitializer
  %3985 = or <2 x i64> %3984, %3979
  %3986 = fmul <2 x double> %3690, %3974
  %3987 = select <2 x i1> %3978, <2 x double> %3986, <2 x double> zeroinitializer
  %3988 = icmp eq <2 x i64> %3985, zeroinitializer
  %3989 = select <2 x i1> %3988, <2 x double> %3738, <2 x double> %3987
  store <2 x double> %3989, ptr %3739, align 16, !tbaa !26, !noalias !155
  %3990 = select <2 x i1> %3988, <2 x double> %3737, <2 x double> %3035
  store <2 x double> %3990, ptr %3740, align 16, !tbaa !26, !noalias !155
  %3991 = fmul <2 x double> %3690, %3947
  %3992 = fmul <2 x double> %3690, %3981
  %3993 = icmp eq <2 x i64> %3984, zeroinitializer
  %3994 = select <2 x i1> %3993, <2 x double> zeroinitializer, <2 x double> %3992
  %3995 = select <2 x i1> %3978, <2 x double> %3991, <2 x double> %3994
  store <2 x double> %3995, ptr %3741, align 16, !tbaa !26, !noalias !155
  %3996 = load i64, ptr %128, align 16, !tbaa !21, !noalias !155
  %3997 = sitofp i64 %3996 to double
  %3998 = insertelement <2 x double> poison, double %3997, i64 0
  %3999 = shufflevector <2 x double> %3998, <2 x double> poison, <2 x i32> zeroinitializer
  %4000 = select <2 x i1> %3988, <2 x double> %3999, <2 x double> %3931
  store <2 x double> %4000, ptr %3746, align 16, !tbaa !26, !noalias !155
  br label %4001

4001:                                             ; preds = %3930, %3940
  %4002 = add nuw nsw i64 %3694, 1
  %4003 = load i64, ptr %166, align 8, !tbaa !20, !noalias !155
  %4004 = icmp slt i64 %4002, %4003
  br i1 %4004, label %3693, label %4005, !llvm.loop !150

4005:                                             ; preds = %4001, %3670
  %4006 = phi i64 [ %3522, %3670 ], [ %4003, %4001 ]
  %4007 = icmp sgt i64 %4006, 0
  br i1 %4007, label %4184, label %4008

4008:                                             ; preds = %4005, %3687
  %4009 = phi i64 [ %4006, %4005 ], [ %3691, %3687 ]
  %4010 = load <2 x double>, ptr %175, align 16, !tbaa !26
  br label %4085

4011:                                             ; preds = %4293
  %4012 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %4013 = icmp sgt i64 %4317, 0
  br i1 %4013, label %4014, label %4085

4014:                                             ; preds = %4011
  %4015 = load ptr, ptr %139, align 8, !tbaa !28
  %4016 = and i64 %4317, 1
  %4017 = icmp eq i64 %4317, 1
  br i1 %4017, label %4061, label %4018

4018:                                             ; preds = %4014
  %4019 = and i64 %4317, 9223372036854775806
  br label %4020

4020:                                             ; preds = %4020, %4018
  %4021 = phi <2 x double> [ zeroinitializer, %4018 ], [ %4052, %4020 ]
  %4022 = phi <2 x double> [ zeroinitializer, %4018 ], [ %4057, %4020 ]
  %4023 = phi i64 [ 0, %4018 ], [ %4058, %4020 ]
  %4024 = phi i64 [ 0, %4018 ], [ %4059, %4020 ]
  %4025 = getelementptr inbounds nuw %struct.Piece, ptr %4015, i64 %4023
  %4026 = getelementptr inbounds nuw i8, ptr %4025, i64 2352
  %4027 = load <2 x i64>, ptr %4026, align 16, !tbaa !26
  %4028 = getelementptr inbounds nuw i8, ptr %4025, i64 32
  %4029 = load <2 x double>, ptr %4028, align 16, !tbaa !26
  %4030 = getelementptr inbounds nuw i8, ptr %4025, i64 1920
  %4031 = load <2 x double>, ptr %4030, align 16, !tbaa !26
  %4032 = fmul <2 x double> %4029, %4031
  %4033 = icmp eq <2 x i64> %4027, zeroinitializer
  %4034 = select <2 x i1> %4033, <2 x double> %4032, <2 x double> zeroinitializer
  %4035 = fadd <2 x double> %4021, %4034
  %4036 = getelementptr inbounds nuw i8, ptr %4025, i64 1888
  %4037 = load <2 x double>, ptr %4036, align 16, !tbaa !26
  %4038 = fmul <2 x double> %4029, %4037
  %4039 = select <2 x i1> %4033, <2 x double> %4038, <2 x double> zeroinitializer
  %4040 = fadd <2 x double> %4022, %4039
  %4041 = or disjoint i64 %4023, 1
  %4042 = getelementptr inbounds nuw %struct.Piece, ptr %4015, i64 %4041
  %4043 = getelementptr inbounds nuw i8, ptr %4042, i64 2352
  %4044 = load <2 x i64>, ptr %4043, align 16, !tbaa !26
  %4045 = getelementptr inbounds nuw i8, ptr %4042, i64 32
  %4046 = load <2 x double>, ptr %4045, align 16, !tbaa !26
  %4047 = getelementptr inbounds nuw i8, ptr %4042, i64 1920
  %4048 = load <2 x double>, ptr %4047, align 16, !tbaa !26
  %4049 = fmul <2 x double> %4046, %4048
  %4050 = icmp eq <2 x i64> %4044, zeroinitializer
  %4051 = select <2 x i1> %4050, <2 x double> %4049, <2 x double> zeroinitializer
  %4052 = fadd <2 x double> %4035, %4051
  %4053 = getelementptr inbounds nuw i8, ptr %4042, i64 1888
  %4054 = load <2 x double>, ptr %4053, align 16, !tbaa !26
  %4055 = fmul <2 x double> %4046, %4054
  %4056 = select <2 x i1> %4050, <2 x double> %4055, <2 x double> zeroinitializer
  %4057 = fadd <2 x double> %4040, %4056
  %4058 = add nuw nsw i64 %4023, 2
  %4059 = add i64 %4024, 2
  %4060 = icmp eq i64 %4059, %4019
  br i1 %4060, label %4061, label %4020, !llvm.loop !167

4061:                                             ; preds = %4020, %4014
  %4062 = phi <2 x double> [ poison, %4014 ], [ %4052, %4020 ]
  %4063 = phi <2 x double> [ poison, %4014 ], [ %4057, %4020 ]
  %4064 = phi <2 x double> [ zeroinitializer, %4014 ], [ %4052, %4020 ]
  %4065 = phi <2 x double> [ zeroinitializer, %4014 ], [ %4057, %4020 ]
  %4066 = phi i64 [ 0, %4014 ], [ %4058, %4020 ]
  %4067 = icmp eq i64 %4016, 0
  br i1 %4067, label %4085, label %4068

4068:                                             ; preds = %4061
  %4069 = getelementptr inbounds nuw %struct.Piece, ptr %4015, i64 %4066
  %4070 = getelementptr inbounds nuw i8, ptr %4069, i64 2352
  %4071 = load <2 x i64>, ptr %4070, align 16, !tbaa !26
  %4072 = getelementptr inbounds nuw i8, ptr %4069, i64 32
  %4073 = load <2 x double>, ptr %4072, align 16, !tbaa !26
  %4074 = getelementptr inbounds nuw i8, ptr %4069, i64 1920
  %4075 = load <2 x double>, ptr %4074, align 16, !tbaa !26
  %4076 = fmul <2 x double> %4073, %4075
  %4077 = icmp eq <2 x i64> %4071, zeroinitializer
  %4078 = select <2 x i1> %4077, <2 x double> %4076, <2 x double> zeroinitializer
  %4079 = fadd <2 x double> %4064, %4078
  %4080 = getelementptr inbounds nuw i8, ptr %4069, i64 1888
  %4081 = load <2 x double>, ptr %4080, align 16, !tbaa !26
  %4082 = fmul <2 x double> %4073, %4081
  %4083 = select <2 x i1> %4077, <2 x double> %4082, <2 x double> zeroinitializer
  %4084 = fadd <2 x double> %4065, %4083
  br label %4085

4085:                                             ; preds = %4068, %4061, %4008, %4011
  %4086 = phi i1 [ false, %4011 ], [ false, %4008 ], [ true, %4061 ], [ true, %4068 ]
  %4087 = phi <2 x double> [ %4012, %4011 ], [ %4010, %4008 ], [ %4012, %4061 ], [ %4012, %4068 ]
  %4088 = phi i64 [ %4317, %4011 ], [ %4009, %4008 ], [ %4317, %4061 ], [ %4317, %4068 ]
  %4089 = phi <2 x double> [ zeroinitializer, %4011 ], [ zeroinitializer, %4008 ], [ %4063, %4061 ], [ %4084, %4068 ]
  %4090 = phi <2 x double> [ zeroinitializer, %4011 ], [ zeroinitializer, %4008 ], [ %4062, %4061 ], [ %4079, %4068 ]
  %4091 = load <2 x double>, ptr %207, align 16, !tbaa !26
  %4092 = load <2 x double>, ptr %190, align 16, !tbaa !26
  %4093 = fsub <2 x double> %4087, %4092
  %4094 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4091, <2 x double> %4093, <2 x double> %4090)
  %4095 = fadd <2 x double> %4089, %4091
  store <2 x double> %4094, ptr %208, align 16, !tbaa !26
  %4096 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %4097 = fcmp ule <2 x double> %4096, zeroinitializer
  %4098 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %4099 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4096, <2 x double> splat (double 5.000000e-01), <2 x double> %4098)
  %4100 = fsub <2 x double> %4099, %4087
  %4101 = fcmp ogt <2 x double> %4096, splat (double 1.000000e-30)
  %4102 = select <2 x i1> %4101, <2 x double> %4096, <2 x double> splat (double 1.000000e-30)
  %4103 = fdiv <2 x double> %4100, %4102
  %4104 = fcmp ogt <2 x double> %4103, zeroinitializer
  %4105 = select <2 x i1> %4104, <2 x double> %4103, <2 x double> zeroinitializer
  %4106 = fcmp olt <2 x double> %4105, splat (double 1.000000e+00)
  %4107 = select <2 x i1> %4106, <2 x double> %4105, <2 x double> splat (double 1.000000e+00)
  %4108 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %4109 = load <2 x i64>, ptr %153, align 16, !tbaa !26
  %4110 = icmp eq <2 x i64> %4109, zeroinitializer
  %4111 = select <2 x i1> %4110, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %4112 = select <2 x i1> %4097, <2 x double> %4111, <2 x double> %4107
  %4113 = fmul <2 x double> %4108, %4112
  %4114 = fcmp ule <2 x double> %4113, zeroinitializer
  %4115 = fcmp uge <2 x double> %4113, %4108
  %4116 = or <2 x i1> %4114, %4115
  %4117 = or <2 x i1> %4097, %4116
  %4118 = fdiv <2 x double> %4108, %4102
  %4119 = select <2 x i1> %4117, <2 x double> zeroinitializer, <2 x double> %4118
  %4120 = fadd <2 x double> %4095, %4119
  %4121 = load <2 x i64>, ptr %163, align 16, !tbaa !26
  %4122 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %4123 = fdiv <2 x double> splat (double 2.000000e+00), %4122
  %4124 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %4125 = icmp eq <2 x i64> %4121, zeroinitializer
  %4126 = select <2 x i1> %4125, <2 x double> %4124, <2 x double> %4123
  %4127 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %4128 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %4129 = fmul <2 x double> %4127, %4128
  %4130 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %4131 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %4132 = fmul <2 x double> %4131, splat (double 5.000000e-01)
  %4133 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4132, <2 x double> %4127, <2 x double> %4130)
  %4134 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %4135 = fmul <2 x double> %4127, %4134
  %4136 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4129, <2 x double> %4133, <2 x double> %4135)
  %4137 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %4138 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %4139 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %4140 = fmul <2 x double> %4128, %4139
  %4141 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4132, <2 x double> %4139, <2 x double> %4130)
  %4142 = fmul <2 x double> %4134, %4139
  %4143 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4140, <2 x double> %4141, <2 x double> %4142)
  %4144 = fmul <2 x double> %4138, %4143
  %4145 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4137, <2 x double> %4136, <2 x double> %4144)
  %4146 = fmul <2 x double> %4087, %4128
  %4147 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4132, <2 x double> %4087, <2 x double> %4130)
  %4148 = fmul <2 x double> %4087, %4134
  %4149 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4146, <2 x double> %4147, <2 x double> %4148)
  %4150 = fneg <2 x double> %4126
  %4151 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %4152 = fneg <2 x double> %4151
  %4153 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4150, <2 x double> %4136, <2 x double> %4152)
  %4154 = select <2 x i1> %4125, <2 x double> %4145, <2 x double> %4153
  %4155 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4126, <2 x double> %4149, <2 x double> %4154)
  %4156 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4131, <2 x double> %4087, <2 x double> %4130)
  %4157 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4128, <2 x double> %4156, <2 x double> %4134)
  %4158 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %4159 = fcmp une <2 x double> %4158, zeroinitializer
  %4160 = fadd <2 x double> %4094, %4155
  %4161 = fsub <2 x double> %4160, %4113
  %4162 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4126, <2 x double> %4157, <2 x double> %4120)
  %4163 = fdiv <2 x double> %4161, %4162
  %4164 = fsub <2 x double> %4087, %4163
  %4165 = select <2 x i1> %4159, <2 x double> %4087, <2 x double> %4164
  store <2 x double> %4165, ptr %175, align 16, !tbaa !26
  %4166 = load <2 x double>, ptr %209, align 16, !tbaa !26
  %4167 = fneg <2 x double> %4137
  %4168 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4167, <2 x double> %4166, <2 x double> %4113)
  %4169 = load <2 x double>, ptr %210, align 16, !tbaa !26
  %4170 = fneg <2 x double> %4138
  %4171 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4170, <2 x double> %4169, <2 x double> %4168)
  %4172 = fdiv <2 x double> %4171, %4124
  %4173 = load <2 x double>, ptr %211, align 16, !tbaa !26
  %4174 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4167, <2 x double> %4173, <2 x double> %4094)
  %4175 = load <2 x double>, ptr %212, align 16, !tbaa !26
  %4176 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4170, <2 x double> %4175, <2 x double> %4174)
  %4177 = fdiv <2 x double> %4176, %4124
  %4178 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4113, <2 x double> %4122, <2 x double> %4166)
  %4179 = select <2 x i1> %4125, <2 x double> %4172, <2 x double> %4178
  %4180 = load <2 x double>, ptr %213, align 16, !tbaa !26
  %4181 = select <2 x i1> %4159, <2 x double> %4180, <2 x double> %4179
  store <2 x double> %4181, ptr %213, align 16, !tbaa !26
  %4182 = load <2 x double>, ptr %214, align 16, !tbaa !26
  %4183 = select <2 x i1> %4159, <2 x double> %4182, <2 x double> %4177
  store <2 x double> %4183, ptr %214, align 16, !tbaa !26
  br i1 %4086, label %4319, label %4658

4184:                                             ; preds = %4005, %4293
  %4185 = phi i64 [ %4316, %4293 ], [ 0, %4005 ]
  %4186 = load ptr, ptr %139, align 8, !tbaa !28
  %4187 = getelementptr inbounds nuw %struct.Piece, ptr %4186, i64 %4185
  %4188 = getelementptr inbounds nuw i8, ptr %4187, i64 1600
  %4189 = load <2 x double>, ptr %4188, align 16, !tbaa !26
  %4190 = getelementptr inbounds nuw i8, ptr %4187, i64 1648
  %4191 = load <2 x double>, ptr %4190, align 16, !tbaa !26
  %4192 = getelementptr inbounds nuw i8, ptr %4187, i64 2432
  %4193 = load ptr, ptr %4192, align 16, !tbaa !86
  %4194 = getelementptr inbounds nuw i8, ptr %4187, i64 2440
  %4195 = load ptr, ptr %4194, align 8, !tbaa !87
  %4196 = getelementptr inbounds nuw i8, ptr %4187, i64 1696
  %4197 = load <2 x double>, ptr %4196, align 16, !tbaa !26
  %4198 = getelementptr inbounds nuw i8, ptr %4187, i64 1712
  %4199 = load <2 x double>, ptr %4198, align 16, !tbaa !26
  %4200 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4197, <2 x double> %4189, <2 x double> %4199)
  %4201 = getelementptr inbounds nuw i8, ptr %4187, i64 2392
  %4202 = load ptr, ptr %4201, align 8, !tbaa !84
  %4203 = load i64, ptr %128, align 16, !tbaa !21
  %4204 = icmp sgt i64 %4203, 0
  br i1 %4204, label %4205, label %4225

4205:                                             ; preds = %4184
  %4206 = and i64 %4203, 1
  %4207 = icmp eq i64 %4206, 0
  br i1 %4207, label %4221, label %4208

4208:                                             ; preds = %4205
  %4209 = add nsw i64 %4203, -1
  %4210 = uitofp nneg i64 %4209 to double
  %4211 = insertelement <2 x double> poison, double %4210, i64 0
  %4212 = shufflevector <2 x double> %4211, <2 x double> poison, <2 x i32> zeroinitializer
  %4213 = fcmp ugt <2 x double> %4191, %4212
  %4214 = getelementptr inbounds nuw <2 x double>, ptr %4193, i64 %4209
  %4215 = load <2 x double>, ptr %4214, align 16, !tbaa !26
  %4216 = getelementptr inbounds nuw <2 x double>, ptr %4195, i64 %4209
  %4217 = load <2 x double>, ptr %4216, align 16, !tbaa !26
  %4218 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4217, <2 x double> %4200, <2 x double> %4215)
  %4219 = select <2 x i1> %4213, <2 x double> %4218, <2 x double> %4200
  %4220 = getelementptr inbounds nuw <2 x double>, ptr %4202, i64 %4209
  store <2 x double> %4219, ptr %4220, align 16, !tbaa !26
  br label %4221

4221:                                             ; preds = %4208, %4205
  %4222 = phi <2 x double> [ %4200, %4205 ], [ %4219, %4208 ]
  %4223 = phi i64 [ %4203, %4205 ], [ %4209, %4208 ]
  %4224 = icmp eq i64 %4203, 1
  br i1 %4224, label %4225, label %4240

4225:                                             ; preds = %4221, %4240, %4184
  %4226 = getelementptr inbounds nuw i8, ptr %4187, i64 2320
  %4227 = load <2 x i64>, ptr %4226, align 16, !tbaa !26
  %4228 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4227)
  %4229 = icmp eq i64 %4228, 0
  %4230 = load i64, ptr %129, align 8, !tbaa !22
  %4231 = icmp sgt i64 %4230, 0
  br i1 %4229, label %4237, label %4232

4232:                                             ; preds = %4225
  br i1 %4231, label %4233, label %4293

4233:                                             ; preds = %4232
  %4234 = getelementptr inbounds nuw i8, ptr %4187, i64 2520
  %4235 = getelementptr inbounds nuw i8, ptr %4187, i64 2528
  %4236 = getelementptr inbounds nuw i8, ptr %4187, i64 2488
  br label %4268

4237:                                             ; preds = %4225
  br i1 %4231, label %4238, label %4293

4238:                                             ; preds = %4237
  %4239 = getelementptr inbounds nuw i8, ptr %4187, i64 2488
  br label %4286

4240:                                             ; preds = %4221, %4240
  %4241 = phi <2 x double> [ %4265, %4240 ], [ %4222, %4221 ]
  %4242 = phi i64 [ %4255, %4240 ], [ %4223, %4221 ]
  %4243 = add nsw i64 %4242, -1
  %4244 = uitofp nneg i64 %4243 to double
  %4245 = insertelement <2 x double> poison, double %4244, i64 0
  %4246 = shufflevector <2 x double> %4245, <2 x double> poison, <2 x i32> zeroinitializer
  %4247 = fcmp ugt <2 x double> %4191, %4246
  %4248 = getelementptr inbounds nuw <2 x double>, ptr %4193, i64 %4243
  %4249 = load <2 x double>, ptr %4248, align 16, !tbaa !26
  %4250 = getelementptr inbounds nuw <2 x double>, ptr %4195, i64 %4243
  %4251 = load <2 x double>, ptr %4250, align 16, !tbaa !26
  %4252 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4251, <2 x double> %4241, <2 x double> %4249)
  %4253 = select <2 x i1> %4247, <2 x double> %4252, <2 x double> %4200
  %4254 = getelementptr inbounds nuw <2 x double>, ptr %4202, i64 %4243
  store <2 x double> %4253, ptr %4254, align 16, !tbaa !26
  %4255 = add nsw i64 %4242, -2
  %4256 = uitofp nneg i64 %4255 to double
  %4257 = insertelement <2 x double> poison, double %4256, i64 0
  %4258 = shufflevector <2 x double> %4257, <2 x double> poison, <2 x i32> zeroinitializer
  %4259 = fcmp ugt <2 x double> %4191, %4258
  %4260 = getelementptr inbounds nuw <2 x double>, ptr %4193, i64 %4255
  %4261 = load <2 x double>, ptr %4260, align 16, !tbaa !26
  %4262 = getelementptr inbounds nuw <2 x double>, ptr %4195, i64 %4255
  %4263 = load <2 x double>, ptr %4262, align 16, !tbaa !26
  %4264 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4263, <2 x double> %4253, <2 x double> %4261)
  %4265 = select <2 x i1> %4259, <2 x double> %4264, <2 x double> %4200
  %4266 = getelementptr inbounds nuw <2 x double>, ptr %4202, i64 %4255
  store <2 x double> %4265, ptr %4266, align 16, !tbaa !26
  %4267 = icmp samesign ugt i64 %4243, 1
  br i1 %4267, label %4240, label %4225, !llvm.loop !168

4268:                                             ; preds = %4233, %4268
  %4269 = phi i64 [ 0, %4233 ], [ %4283, %4268 ]
  %4270 = phi <2 x double> [ %4189, %4233 ], [ %4280, %4268 ]
  %4271 = load <2 x i64>, ptr %4226, align 16, !tbaa !26
  %4272 = load ptr, ptr %4234, align 8, !tbaa !128
  %4273 = getelementptr inbounds nuw <2 x double>, ptr %4272, i64 %4269
  %4274 = load <2 x double>, ptr %4273, align 16, !tbaa !26
  %4275 = load ptr, ptr %4235, align 16, !tbaa !129
  %4276 = getelementptr inbounds nuw <2 x double>, ptr %4275, i64 %4269
  %4277 = load <2 x double>, ptr %4276, align 16, !tbaa !26
  %4278 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4277, <2 x double> %4270, <2 x double> %4274)
  %4279 = icmp eq <2 x i64> %4271, zeroinitializer
  %4280 = select <2 x i1> %4279, <2 x double> %4189, <2 x double> %4278
  %4281 = load ptr, ptr %4236, align 8, !tbaa !169
  %4282 = getelementptr inbounds nuw <2 x double>, ptr %4281, i64 %4269
  store <2 x double> %4280, ptr %4282, align 16, !tbaa !26
  %4283 = add nuw nsw i64 %4269, 1
  %4284 = load i64, ptr %129, align 8, !tbaa !22
  %4285 = icmp slt i64 %4283, %4284
  br i1 %4285, label %4268, label %4293, !llvm.loop !170

4286:                                             ; preds = %4238, %4286
  %4287 = phi i64 [ 0, %4238 ], [ %4290, %4286 ]
  %4288 = load ptr, ptr %4239, align 8, !tbaa !169
  %4289 = getelementptr inbounds nuw <2 x double>, ptr %4288, i64 %4287
  store <2 x double> %4189, ptr %4289, align 16, !tbaa !26
  %4290 = add nuw nsw i64 %4287, 1
  %4291 = load i64, ptr %129, align 8, !tbaa !22
  %4292 = icmp slt i64 %4290, %4291
  br i1 %4292, label %4286, label %4293, !llvm.loop !171

4293:                                             ; preds = %4268, %4286, %4232, %4237
  %4294 = phi <2 x double> [ %4189, %4237 ], [ %4189, %4232 ], [ %4189, %4286 ], [ %4280, %4268 ]
  %4295 = load <2 x i64>, ptr %4226, align 16, !tbaa !26
  %4296 = getelementptr inbounds nuw i8, ptr %4187, i64 1904
  %4297 = load <2 x double>, ptr %4296, align 16, !tbaa !26
  %4298 = icmp eq <2 x i64> %4295, zeroinitializer
  %4299 = select <2 x i1> %4298, <2 x double> zeroinitializer, <2 x double> %4297
  %4300 = fsub <2 x double> splat (double 1.000000e+00), %4299
  %4301 = getelementptr inbounds nuw i8, ptr %4187, i64 1584
  %4302 = load <2 x double>, ptr %4301, align 16, !tbaa !26
  %4303 = fmul <2 x double> %4299, %4302
  %4304 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4300, <2 x double> %4294, <2 x double> %4303)
  %4305 = getelementptr inbounds nuw i8, ptr %4187, i64 1952
  store <2 x double> %4304, ptr %4305, align 16, !tbaa !26
  %4306 = getelementptr inbounds nuw i8, ptr %4187, i64 1888
  %4307 = load <2 x double>, ptr %4306, align 16, !tbaa !26
  %4308 = fsub <2 x double> %4302, %4294
  %4309 = fmul <2 x double> %4308, %4307
  %4310 = getelementptr inbounds nuw i8, ptr %4187, i64 1920
  store <2 x double> %4309, ptr %4310, align 16, !tbaa !26
  %4311 = getelementptr inbounds nuw i8, ptr %4187, i64 896
  %4312 = load <2 x double>, ptr %4311, align 16, !tbaa !26
  %4313 = fdiv <2 x double> %4309, %4312
  %4314 = fsub <2 x double> %4302, %4313
  %4315 = getelementptr inbounds nuw i8, ptr %4187, i64 1936
  store <2 x double> %4314, ptr %4315, align 16, !tbaa !26
  %4316 = add nuw nsw i64 %4185, 1
  %4317 = load i64, ptr %166, align 8, !tbaa !20
  %4318 = icmp slt i64 %4316, %4317
  br i1 %4318, label %4184, label %4011, !llvm.loop !172

4319:                                             ; preds = %4085, %4592
  %4320 = phi i64 [ %4655, %4592 ], [ 0, %4085 ]
  %4321 = phi <2 x double> [ %4654, %4592 ], [ zeroinitializer, %4085 ]
  %4322 = load ptr, ptr %139, align 8, !tbaa !28
  %4323 = getelementptr inbounds nuw %struct.Piece, ptr %4322, i64 %4320
  %4324 = getelementptr inbounds nuw i8, ptr %4323, i64 1616
  %4325 = load <2 x double>, ptr %4324, align 16, !tbaa !26
  %4326 = getelementptr inbounds nuw i8, ptr %4323, i64 1632
  %4327 = load <2 x double>, ptr %4326, align 16, !tbaa !26
  %4328 = fadd <2 x double> %4325, %4327
  %4329 = getelementptr inbounds nuw i8, ptr %4323, i64 1600
  %4330 = load <2 x double>, ptr %4329, align 16, !tbaa !26
  %4331 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %4332 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4331, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %4333 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4331, <2 x double> %4332, <2 x double> splat (double 0x4142F8368A3D70A4))
  %4334 = getelementptr inbounds nuw i8, ptr %4323, i64 2032
  %4335 = load <2 x double>, ptr %4334, align 16, !tbaa !26
  %4336 = getelementptr inbounds nuw i8, ptr %4323, i64 416
  %4337 = load <2 x double>, ptr %4336, align 16, !tbaa !26
  %4338 = fmul <2 x double> %4335, %4337
  %4339 = getelementptr inbounds nuw i8, ptr %4323, i64 1952
  %4340 = load <2 x double>, ptr %4339, align 16, !tbaa !26
  %4341 = fsub <2 x double> %4340, %4330
  %4342 = fmul <2 x double> %4338, %4341
  %4343 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4333, <2 x double> %4328, <2 x double> %4342)
  %4344 = getelementptr inbounds nuw i8, ptr %4323, i64 1520
  %4345 = load <2 x double>, ptr %4344, align 16, !tbaa !26, !noalias !173
  %4346 = getelementptr inbounds nuw i8, ptr %4323, i64 1136
  %4347 = load <2 x double>, ptr %4346, align 16, !tbaa !26, !noalias !173
  %4348 = fneg <2 x double> %4345
  %4349 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4348, <2 x double> %4347, <2 x double> %4328)
  %4350 = getelementptr inbounds nuw i8, ptr %4323, i64 1536
  %4351 = load <2 x double>, ptr %4350, align 16, !tbaa !26, !noalias !173
  %4352 = getelementptr inbounds nuw i8, ptr %4323, i64 1360
  %4353 = load <2 x double>, ptr %4352, align 16, !tbaa !26, !noalias !173
  %4354 = fneg <2 x double> %4351
  %4355 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4354, <2 x double> %4353, <2 x double> %4349)
  %4356 = getelementptr inbounds nuw i8, ptr %4323, i64 1552
  %4357 = load <2 x double>, ptr %4356, align 16, !tbaa !26, !noalias !173
  %4358 = fmul <2 x double> %4355, %4357
  %4359 = getelementptr inbounds nuw i8, ptr %4323, i64 496
  %4360 = load <2 x double>, ptr %4359, align 16, !tbaa !26, !noalias !173
  %4361 = fsub <2 x double> %4360, %4358
  %4362 = getelementptr inbounds nuw i8, ptr %4323, i64 1104
  %4363 = load <2 x double>, ptr %4362, align 16, !tbaa !26, !noalias !173
  %4364 = getelementptr inbounds nuw i8, ptr %4323, i64 2112
  %4365 = load <2 x double>, ptr %4364, align 16, !tbaa !26, !noalias !173
  %4366 = fsub <2 x double> %4363, %4365
  %4367 = getelementptr inbounds nuw i8, ptr %4323, i64 1072
  %4368 = load <2 x double>, ptr %4367, align 16, !tbaa !26, !noalias !173
  %4369 = getelementptr inbounds nuw i8, ptr %4323, i64 832
  %4370 = load <2 x double>, ptr %4369, align 16, !tbaa !26, !noalias !173
  %4371 = getelementptr inbounds nuw i8, ptr %4323, i64 2320
  %4372 = load <2 x i64>, ptr %4371, align 16, !tbaa !26, !noalias !173
  %4373 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4372)
  %4374 = icmp eq i64 %4373, 0
  br i1 %4374, label %4560, label %4375

4375:                                             ; preds = %4319
  %4376 = fcmp ogt <2 x double> %4366, %4361
  %4377 = getelementptr inbounds nuw i8, ptr %4323, i64 2144
  %4378 = load <2 x double>, ptr %4377, align 16, !tbaa !26, !noalias !173
  %4379 = fcmp oeq <2 x double> %4378, zeroinitializer
  %4380 = select <2 x i1> %4379, <2 x i1> %4376, <2 x i1> zeroinitializer
  %4381 = select <2 x i1> %4380, <2 x i64> %4372, <2 x i64> zeroinitializer
  %4382 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4381)
  %4383 = icmp eq i64 %4382, 0
  br i1 %4383, label %4456, label %4384

4384:                                             ; preds = %4375
  %4385 = fsub <2 x double> %4366, %4361
  %4386 = getelementptr inbounds nuw i8, ptr %4323, i64 2192
  %4387 = load <2 x double>, ptr %4386, align 16, !tbaa !26, !noalias !173
  %4388 = fmul <2 x double> %4385, %4387
  %4389 = getelementptr inbounds nuw i8, ptr %4323, i64 2416
  %4390 = load ptr, ptr %4389, align 16, !tbaa !67, !noalias !173
  %4391 = load i64, ptr %128, align 16, !tbaa !21, !noalias !173
  %4392 = add nsw i64 %4391, -1
  %4393 = getelementptr inbounds <2 x double>, ptr %4390, i64 %4392
  %4394 = load <2 x double>, ptr %4393, align 16, !tbaa !26, !noalias !173
  %4395 = icmp sgt i64 %4391, 1
  br i1 %4395, label %4396, label %4448

4396:                                             ; preds = %4384
  %4397 = getelementptr inbounds nuw i8, ptr %4323, i64 2368
  %4398 = load i64, ptr %4397, align 16, !tbaa !31, !noalias !173
  %4399 = getelementptr inbounds nuw i8, ptr %4323, i64 1264
  %4400 = getelementptr inbounds nuw i8, ptr %4323, i64 480
  %4401 = getelementptr inbounds nuw i8, ptr %4323, i64 2456
  br label %4402

4402:                                             ; preds = %4396, %4445
  %4403 = phi <2 x double> [ %4368, %4396 ], [ %4440, %4445 ]
  %4404 = phi i64 [ %4392, %4396 ], [ %4446, %4445 ]
  %4405 = phi <2 x double> [ %4394, %4396 ], [ %4428, %4445 ]
  %4406 = phi <2 x i64> [ %4381, %4396 ], [ %4432, %4445 ]
  %4407 = phi <2 x double> [ %4388, %4396 ], [ %4439, %4445 ]
  %4408 = icmp slt i64 %4404, %4398
  br i1 %4408, label %4409, label %4415

4409:                                             ; preds = %4402
  %4410 = load ptr, ptr %4401, align 8, !tbaa !77, !noalias !173
  %4411 = getelementptr inbounds nuw <2 x double>, ptr %4410, i64 %4404
  %4412 = load <2 x double>, ptr %4411, align 16, !tbaa !26, !noalias !173
  %4413 = load <2 x double>, ptr %4400, align 16, !tbaa !26, !noalias !173
  %4414 = fmul <2 x double> %4412, %4413
  br label %4423

4415:                                             ; preds = %4402
  %4416 = load <2 x double>, ptr %4399, align 16, !tbaa !26, !noalias !173
  %4417 = load <2 x double>, ptr %4400, align 16, !tbaa !26, !noalias !173
  %4418 = load ptr, ptr %4401, align 8, !tbaa !77, !noalias !173
  %4419 = getelementptr inbounds nuw <2 x double>, ptr %4418, i64 %4404
  %4420 = load <2 x double>, ptr %4419, align 16, !tbaa !26, !noalias !173
  %4421 = fsub <2 x double> %4416, %4417
  %4422 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4420, <2 x double> %4421, <2 x double> %4417)
  br label %4423

4423:                                             ; preds = %4415, %4409
  %4424 = phi <2 x double> [ %4414, %4409 ], [ %4422, %4415 ]
  %4425 = getelementptr inbounds nuw <2 x double>, ptr %4390, i64 %4404
  %4426 = load <2 x double>, ptr %4425, align 16, !tbaa !26, !noalias !173
  %4427 = icmp eq <2 x i64> %4406, zeroinitializer
  %4428 = select <2 x i1> %4427, <2 x double> %4405, <2 x double> %4426
  %4429 = fsub <2 x double> %4403, %4424
  %4430 = fmul <2 x double> %4429, %4428
  %4431 = fcmp olt <2 x double> %4430, %4407
  %4432 = select <2 x i1> %4431, <2 x i64> %4406, <2 x i64> zeroinitializer
  %4433 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4432)
  %4434 = icmp eq i64 %4433, 0
  br i1 %4434, label %4448, label %4435

4435:                                             ; preds = %4423
  %4436 = fneg <2 x double> %4428
  %4437 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4436, <2 x double> %4429, <2 x double> %4407)
  %4438 = icmp eq <2 x i64> %4432, zeroinitializer
  %4439 = select <2 x i1> %4438, <2 x double> %4407, <2 x double> %4437
  %4440 = select <2 x i1> %4438, <2 x double> %4403, <2 x double> %4424
  %4441 = icmp eq i64 %4404, 1
  br i1 %4441, label %4442, label %4445

4442:                                             ; preds = %4435
  %4443 = load <2 x double>, ptr %4390, align 16, !tbaa !26, !noalias !173
  %4444 = select <2 x i1> %4438, <2 x double> %4428, <2 x double> %4443
  br label %4448

4445:                                             ; preds = %4435
  %4446 = add nsw i64 %4404, -1
  %4447 = icmp sgt i64 %4404, 1
  br i1 %4447, label %4402, label %4448, !llvm.loop !78

4448:                                             ; preds = %4445, %4423, %4442, %4384
  %4449 = phi <2 x double> [ %4388, %4384 ], [ %4439, %4442 ], [ %4407, %4423 ], [ %4439, %4445 ]
  %4450 = phi <2 x double> [ %4368, %4384 ], [ %4440, %4442 ], [ %4403, %4423 ], [ %4440, %4445 ]
  %4451 = phi <2 x double> [ %4394, %4384 ], [ %4444, %4442 ], [ %4428, %4423 ], [ %4428, %4445 ]
  %4452 = fdiv <2 x double> %4449, %4451
  %4453 = fsub <2 x double> %4450, %4452
  %4454 = icmp eq <2 x i64> %4381, zeroinitializer
  %4455 = select <2 x i1> %4454, <2 x double> %4368, <2 x double> %4453
  br label %4456

4456:                                             ; preds = %4448, %4375
  %4457 = phi <2 x double> [ %4455, %4448 ], [ %4368, %4375 ]
  %4458 = getelementptr inbounds nuw i8, ptr %4323, i64 752
  %4459 = load <2 x double>, ptr %4458, align 16, !tbaa !26, !noalias !173
  %4460 = getelementptr inbounds nuw i8, ptr %4323, i64 768
  %4461 = load <2 x double>, ptr %4460, align 16, !tbaa !26, !noalias !173
  %4462 = getelementptr inbounds nuw i8, ptr %4323, i64 784
  %4463 = load <2 x double>, ptr %4462, align 16, !tbaa !26, !noalias !173
  %4464 = getelementptr inbounds nuw i8, ptr %4323, i64 736
  %4465 = load <2 x double>, ptr %4464, align 16, !tbaa !26, !noalias !173
  %4466 = load <2 x double>, ptr %4323, align 16, !tbaa !26, !noalias !173
  %4467 = fmul <2 x double> %4466, splat (double 5.000000e-04)
  %4468 = fmul <2 x double> %4370, splat (double 3.000000e+00)
  %4469 = fmul <2 x double> %4468, %4463
  %4470 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4461, <2 x double> splat (double 2.000000e+00), <2 x double> %4469)
  %4471 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4370, <2 x double> %4470, <2 x double> %4459)
  %4472 = fdiv <2 x double> splat (double 1.000000e+00), %4471
  %4473 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4370, <2 x double> %4463, <2 x double> %4461)
  %4474 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4370, <2 x double> %4473, <2 x double> %4459)
  %4475 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4370, <2 x double> %4474, <2 x double> %4465)
  %4476 = fsub <2 x double> %4475, %4457
  %4477 = fmul <2 x double> %4476, %4472
  %4478 = fmul <2 x double> %4477, %4477
  %4479 = fmul <2 x double> %4472, %4478
  %4480 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4468, <2 x double> %4463, <2 x double> %4461)
  %4481 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4479, <2 x double> %4480, <2 x double> %4477)
  %4482 = fsub <2 x double> %4370, %4481
  %4483 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %4481)
  %4484 = fcmp oge <2 x double> %4483, %4467
  %4485 = bitcast <2 x i1> %4484 to i2
  %4486 = icmp eq i2 %4485, 0
  br i1 %4486, label %4548, label %4487, !llvm.loop !79

4487:                                             ; preds = %4456
  %4488 = fmul <2 x double> %4482, splat (double 3.000000e+00)
  %4489 = fmul <2 x double> %4488, %4463
  %4490 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4461, <2 x double> splat (double 2.000000e+00), <2 x double> %4489)
  %4491 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4482, <2 x double> %4490, <2 x double> %4459)
  %4492 = fdiv <2 x double> splat (double 1.000000e+00), %4491
  %4493 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4482, <2 x double> %4463, <2 x double> %4461)
  %4494 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4482, <2 x double> %4493, <2 x double> %4459)
  %4495 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4482, <2 x double> %4494, <2 x double> %4465)
  %4496 = fsub <2 x double> %4495, %4457
  %4497 = fmul <2 x double> %4496, %4492
  %4498 = fmul <2 x double> %4497, %4497
  %4499 = fmul <2 x double> %4492, %4498
  %4500 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4488, <2 x double> %4463, <2 x double> %4461)
  %4501 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4499, <2 x double> %4500, <2 x double> %4497)
  %4502 = fsub <2 x double> %4482, %4501
  %4503 = select <2 x i1> %4484, <2 x double> %4502, <2 x double> %4482
  %4504 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %4501)
  %4505 = fcmp oge <2 x double> %4504, %4467
  %4506 = and <2 x i1> %4505, %4484
  %4507 = bitcast <2 x i1> %4506 to i2
  %4508 = icmp eq i2 %4507, 0
  br i1 %4508, label %4548, label %4509, !llvm.loop !79

4509:                                             ; preds = %4487
  %4510 = fmul <2 x double> %4503, splat (double 3.000000e+00)
  %4511 = fmul <2 x double> %4510, %4463
  %4512 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4461, <2 x double> splat (double 2.000000e+00), <2 x double> %4511)
  %4513 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4503, <2 x double> %4512, <2 x double> %4459)
  %4514 = fdiv <2 x double> splat (double 1.000000e+00), %4513
  %4515 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4503, <2 x double> %4463, <2 x double> %4461)
  %4516 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4503, <2 x double> %4515, <2 x double> %4459)
  %4517 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4503, <2 x double> %4516, <2 x double> %4465)
  %4518 = fsub <2 x double> %4517, %4457
  %4519 = fmul <2 x double> %4518, %4514
  %4520 = fmul <2 x double> %4519, %4519
  %4521 = fmul <2 x double> %4514, %4520
  %4522 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4510, <2 x double> %4463, <2 x double> %4461)
  %4523 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4521, <2 x double> %4522, <2 x double> %4519)
  %4524 = fsub <2 x double> %4503, %4523
  %4525 = select <2 x i1> %4506, <2 x double> %4524, <2 x double> %4503
  %4526 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %4523)
  %4527 = fcmp oge <2 x double> %4526, %4467
  %4528 = and <2 x i1> %4527, %4506
  %4529 = bitcast <2 x i1> %4528 to i2
  %4530 = icmp eq i2 %4529, 0
  br i1 %4530, label %4548, label %4531, !llvm.loop !79

4531:                                             ; preds = %4509
  %4532 = fmul <2 x double> %4525, splat (double 3.000000e+00)
  %4533 = fmul <2 x double> %4532, %4463
  %4534 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4461, <2 x double> splat (double 2.000000e+00), <2 x double> %4533)
  %4535 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4525, <2 x double> %4534, <2 x double> %4459)
  %4536 = fdiv <2 x double> splat (double 1.000000e+00), %4535
  %4537 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4525, <2 x double> %4463, <2 x double> %4461)
  %4538 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4525, <2 x double> %4537, <2 x double> %4459)
  %4539 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4525, <2 x double> %4538, <2 x double> %4465)
  %4540 = fsub <2 x double> %4539, %4457
  %4541 = fmul <2 x double> %4540, %4536
  %4542 = fmul <2 x double> %4541, %4541
  %4543 = fmul <2 x double> %4536, %4542
  %4544 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4532, <2 x double> %4463, <2 x double> %4461)
  %4545 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4543, <2 x double> %4544, <2 x double> %4541)
  %4546 = fsub <2 x double> %4525, %4545
  %4547 = select <2 x i1> %4528, <2 x double> %4546, <2 x double> %4525
  br label %4548

4548:                                             ; preds = %4531, %4509, %4487, %4456
  %4549 = phi <2 x double> [ %4482, %4456 ], [ %4503, %4487 ], [ %4525, %4509 ], [ %4547, %4531 ]
  %4550 = fmul <2 x double> %4466, splat (double 2.800000e-01)
  %4551 = fcmp ogt <2 x double> %4549, %4550
  %4552 = select <2 x i1> %4551, <2 x double> %4549, <2 x double> %4550
  %4553 = fcmp olt <2 x double> %4552, %4466
  %4554 = select <2 x i1> %4553, <2 x double> %4552, <2 x double> %4466
  %4555 = icmp eq <2 x i64> %4372, zeroinitializer
  %4556 = select <2 x i1> %4555, <2 x double> %4370, <2 x double> %4554
  %4557 = fcmp olt <2 x double> %4366, %4361
  %4558 = select <2 x i1> %4555, <2 x i1> splat (i1 true), <2 x i1> %4557
  %4559 = select <2 x i1> %4558, <2 x double> %4366, <2 x double> %4361
  br label %4560

4560:                                             ; preds = %4548, %4319
  %4561 = phi <2 x double> [ %4559, %4548 ], [ %4366, %4319 ]
  %4562 = phi <2 x double> [ %4556, %4548 ], [ %4370, %4319 ]
  %4563 = phi <2 x double> [ %4457, %4548 ], [ %4368, %4319 ]
  %4564 = fsub <2 x double> %4361, %4561
  %4565 = fsub <2 x double> %4562, %4370
  %4566 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %4565)
  %4567 = getelementptr inbounds nuw i8, ptr %4323, i64 864
  %4568 = load <2 x double>, ptr %4567, align 16, !tbaa !26
  %4569 = fsub <2 x double> %4564, %4568
  %4570 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %4569)
  %4571 = getelementptr inbounds nuw i8, ptr %4323, i64 2192
  %4572 = load <2 x double>, ptr %4571, align 16, !tbaa !26
  %4573 = fmul <2 x double> %4572, %4570
  %4574 = icmp eq <2 x i64> %4372, zeroinitializer
  %4575 = select <2 x i1> %4574, <2 x double> %4573, <2 x double> %4566
  br i1 %4374, label %4592, label %4576

4576:                                             ; preds = %4560
  %4577 = getelementptr inbounds nuw i8, ptr %4323, i64 2016
  %4578 = load <2 x double>, ptr %4577, align 16, !tbaa !26
  %4579 = fmul <2 x double> %4578, splat (double 2.000000e+00)
  %4580 = getelementptr inbounds nuw i8, ptr %4323, i64 1696
  %4581 = load <2 x double>, ptr %4580, align 16, !tbaa !26
  %4582 = getelementptr inbounds nuw i8, ptr %4323, i64 1712
  %4583 = load <2 x double>, ptr %4582, align 16, !tbaa !26
  %4584 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4581, <2 x double> %4330, <2 x double> %4583)
  %4585 = getelementptr inbounds nuw i8, ptr %4323, i64 288
  %4586 = load <2 x double>, ptr %4585, align 16, !tbaa !26
  %4587 = fneg <2 x double> %4586
  %4588 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4587, <2 x double> %4330, <2 x double> %4584)
  %4589 = fmul <2 x double> %4579, %4588
  %4590 = fsub <2 x double> %4343, %4589
  %4591 = select <2 x i1> %4574, <2 x double> %4343, <2 x double> %4590
  br label %4592

4592:                                             ; preds = %4560, %4576
  %4593 = phi <2 x double> [ %4591, %4576 ], [ %4343, %4560 ]
  %4594 = getelementptr inbounds nuw i8, ptr %4323, i64 912
  store <2 x double> %4358, ptr %4594, align 16, !tbaa !26
  store <2 x double> %4564, ptr %4567, align 16, !tbaa !26
  %4595 = getelementptr inbounds nuw i8, ptr %4323, i64 880
  store <2 x double> %4561, ptr %4595, align 16, !tbaa !26
  %4596 = getelementptr inbounds nuw i8, ptr %4323, i64 848
  %4597 = load <2 x double>, ptr %4596, align 16, !tbaa !26
  %4598 = select <2 x i1> %4574, <2 x double> %4597, <2 x double> %4563
  store <2 x double> %4598, ptr %4596, align 16, !tbaa !26
  %4599 = select <2 x i1> %4574, <2 x double> %4370, <2 x double> %4562
  store <2 x double> %4599, ptr %4369, align 16, !tbaa !26
  %4600 = getelementptr inbounds nuw i8, ptr %4323, i64 976
  store <2 x double> %4327, ptr %4600, align 16, !tbaa !26
  %4601 = getelementptr inbounds nuw i8, ptr %4323, i64 992
  store <2 x double> %4330, ptr %4601, align 16, !tbaa !26
  %4602 = getelementptr inbounds nuw i8, ptr %4323, i64 896
  %4603 = load <2 x double>, ptr %4602, align 16, !tbaa !26
  %4604 = getelementptr inbounds nuw i8, ptr %4323, i64 1584
  %4605 = load <2 x double>, ptr %4604, align 16, !tbaa !26
  %4606 = fsub <2 x double> %4605, %4330
  %4607 = getelementptr inbounds nuw i8, ptr %4323, i64 2304
  %4608 = load <2 x double>, ptr %4607, align 16, !tbaa !26
  %4609 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4603, <2 x double> %4608, <2 x double> splat (double 1.000000e+00))
  %4610 = fdiv <2 x double> %4606, %4609
  %4611 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4330, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %4612 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4330, <2 x double> %4611, <2 x double> splat (double 0x4142F8368A3D70A4))
  %4613 = fneg <2 x double> %4325
  %4614 = fmul <2 x double> %4612, %4613
  %4615 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4603, <2 x double> %4610, <2 x double> %4614)
  %4616 = getelementptr inbounds nuw i8, ptr %4323, i64 960
  store <2 x double> %4615, ptr %4616, align 16, !tbaa !26
  %4617 = getelementptr inbounds nuw i8, ptr %4323, i64 1936
  %4618 = load <2 x double>, ptr %4617, align 16, !tbaa !26
  %4619 = fsub <2 x double> %4605, %4618
  %4620 = fsub <2 x double> %4619, %4610
  %4621 = getelementptr inbounds nuw i8, ptr %4323, i64 1008
  store <2 x double> %4620, ptr %4621, align 16, !tbaa !26
  %4622 = getelementptr inbounds nuw i8, ptr %4323, i64 2080
  %4623 = load <2 x double>, ptr %4622, align 16, !tbaa !26
  %4624 = getelementptr inbounds nuw i8, ptr %4323, i64 2096
  %4625 = load <2 x double>, ptr %4624, align 16, !tbaa !26
  %4626 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4623, <2 x double> %4330, <2 x double> %4625)
  %4627 = getelementptr inbounds nuw i8, ptr %4323, i64 1920
  %4628 = load <2 x double>, ptr %4627, align 16, !tbaa !26
  %4629 = getelementptr inbounds nuw i8, ptr %4323, i64 1152
  %4630 = load <2 x double>, ptr %4629, align 16, !tbaa !26
  %4631 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4348, <2 x double> %4630, <2 x double> %4628)
  %4632 = getelementptr inbounds nuw i8, ptr %4323, i64 1376
  %4633 = load <2 x double>, ptr %4632, align 16, !tbaa !26
  %4634 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4354, <2 x double> %4633, <2 x double> %4631)
  %4635 = fmul <2 x double> %4357, %4634
  %4636 = getelementptr inbounds nuw i8, ptr %4323, i64 928
  store <2 x double> %4635, ptr %4636, align 16, !tbaa !26
  %4637 = getelementptr inbounds nuw i8, ptr %4323, i64 1168
  %4638 = load <2 x double>, ptr %4637, align 16, !tbaa !26
  %4639 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4348, <2 x double> %4638, <2 x double> %4593)
  %4640 = getelementptr inbounds nuw i8, ptr %4323, i64 1392
  %4641 = load <2 x double>, ptr %4640, align 16, !tbaa !26
  %4642 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4354, <2 x double> %4641, <2 x double> %4639)
  %4643 = fmul <2 x double> %4357, %4642
  %4644 = getelementptr inbounds nuw i8, ptr %4323, i64 944
  store <2 x double> %4643, ptr %4644, align 16, !tbaa !26
  %4645 = getelementptr inbounds nuw i8, ptr %4323, i64 1248
  %4646 = load <2 x double>, ptr %4645, align 16, !tbaa !26
  %4647 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4348, <2 x double> %4646, <2 x double> %4626)
  %4648 = getelementptr inbounds nuw i8, ptr %4323, i64 1472
  %4649 = load <2 x double>, ptr %4648, align 16, !tbaa !26
  %4650 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4354, <2 x double> %4649, <2 x double> %4647)
  %4651 = fmul <2 x double> %4357, %4650
  %4652 = getelementptr inbounds nuw i8, ptr %4323, i64 1024
  store <2 x double> %4651, ptr %4652, align 16, !tbaa !26
  %4653 = fcmp ogt <2 x double> %4321, %4575
  %4654 = select <2 x i1> %4653, <2 x double> %4321, <2 x double> %4575
  %4655 = add nuw nsw i64 %4320, 1
  %4656 = load i64, ptr %166, align 8, !tbaa !20
  %4657 = icmp slt i64 %4655, %4656
  br i1 %4657, label %4319, label %4658, !llvm.loop !176

4658:                                             ; preds = %4592, %4085
  %4659 = phi <2 x double> [ zeroinitializer, %4085 ], [ %4654, %4592 ]
  %4660 = phi i64 [ %4088, %4085 ], [ %4656, %4592 ]
  %4661 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %4662 = fadd <2 x double> %4661, splat (double 1.000000e+00)
  store <2 x double> %4662, ptr %179, align 16, !tbaa !26
  %4663 = icmp sgt i64 %4660, 0
  br i1 %4663, label %4664, label %4670

4664:                                             ; preds = %4658
  %4665 = load ptr, ptr %139, align 8, !tbaa !28
  %4666 = load i64, ptr %128, align 16, !tbaa !21
  %4667 = add nsw i64 %4666, -1
  br label %4692

4668:                                             ; preds = %4718
  %4669 = fcmp oeq <2 x double> %4733, zeroinitializer
  br label %4670

4670:                                             ; preds = %4668, %4658
  %4671 = phi <2 x i1> [ splat (i1 true), %4658 ], [ %4669, %4668 ]
  %4672 = load i64, ptr %215, align 16, !tbaa !24
  %4673 = sitofp i64 %4672 to double
  %4674 = insertelement <2 x double> poison, double %4673, i64 0
  %4675 = shufflevector <2 x double> %4674, <2 x double> poison, <2 x i32> zeroinitializer
  %4676 = fcmp oge <2 x double> %4662, %4675
  %4677 = and <2 x i1> %4671, %4676
  %4678 = load <2 x i64>, ptr %119, align 16, !tbaa !26
  %4679 = load <2 x double>, ptr %216, align 16, !tbaa !26
  %4680 = fcmp olt <2 x double> %4659, %4679
  %4681 = or <2 x i1> %4680, %4677
  %4682 = fcmp oge <2 x double> %4662, splat (double 2.000000e+01)
  %4683 = or <2 x i1> %4682, %4681
  %4684 = select <2 x i1> %4683, <2 x i64> %4678, <2 x i64> zeroinitializer
  store <2 x i64> %4684, ptr %143, align 16, !tbaa !26
  %4685 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4684)
  %4686 = icmp eq i64 %4685, 0
  br i1 %4686, label %546, label %4687, !llvm.loop !60

4687:                                             ; preds = %4670
  %4688 = load i64, ptr %166, align 8, !tbaa !20
  %4689 = icmp sgt i64 %4688, 0
  br i1 %4689, label %4690, label %4736

4690:                                             ; preds = %4687
  %4691 = icmp eq <2 x i64> %4684, zeroinitializer
  br label %5077

4692:                                             ; preds = %4664, %4718
  %4693 = phi i64 [ 0, %4664 ], [ %4734, %4718 ]
  %4694 = phi <2 x double> [ zeroinitializer, %4664 ], [ %4733, %4718 ]
  %4695 = getelementptr inbounds nuw %struct.Piece, ptr %4665, i64 %4693
  %4696 = getelementptr inbounds nuw i8, ptr %4695, i64 2368
  %4697 = load i64, ptr %4696, align 16, !tbaa !31
  %4698 = icmp sgt i64 %4666, %4697
  br i1 %4698, label %4707, label %4699

4699:                                             ; preds = %4692
  %4700 = getelementptr inbounds nuw i8, ptr %4695, i64 2456
  %4701 = load ptr, ptr %4700, align 8, !tbaa !77
  %4702 = getelementptr inbounds <2 x double>, ptr %4701, i64 %4667
  %4703 = load <2 x double>, ptr %4702, align 16, !tbaa !26
  %4704 = getelementptr inbounds nuw i8, ptr %4695, i64 480
  %4705 = load <2 x double>, ptr %4704, align 16, !tbaa !26
  %4706 = fmul <2 x double> %4703, %4705
  br label %4718

4707:                                             ; preds = %4692
  %4708 = getelementptr inbounds nuw i8, ptr %4695, i64 1040
  %4709 = load <2 x double>, ptr %4708, align 16, !tbaa !26
  %4710 = getelementptr inbounds nuw i8, ptr %4695, i64 480
  %4711 = load <2 x double>, ptr %4710, align 16, !tbaa !26
  %4712 = getelementptr inbounds nuw i8, ptr %4695, i64 2456
  %4713 = load ptr, ptr %4712, align 8, !tbaa !77
  %4714 = getelementptr inbounds <2 x double>, ptr %4713, i64 %4667
  %4715 = load <2 x double>, ptr %4714, align 16, !tbaa !26
  %4716 = fsub <2 x double> %4709, %4711
  %4717 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4715, <2 x double> %4716, <2 x double> %4711)
  br label %4718

4718:                                             ; preds = %4699, %4707
  %4719 = phi <2 x double> [ %4706, %4699 ], [ %4717, %4707 ]
  %4720 = getelementptr inbounds nuw i8, ptr %4695, i64 2320
  %4721 = load <2 x i64>, ptr %4720, align 16, !tbaa !26
  %4722 = getelementptr inbounds nuw i8, ptr %4695, i64 2144
  %4723 = load <2 x double>, ptr %4722, align 16, !tbaa !26
  %4724 = fcmp une <2 x double> %4723, zeroinitializer
  %4725 = getelementptr inbounds nuw i8, ptr %4695, i64 848
  %4726 = load <2 x double>, ptr %4725, align 16, !tbaa !26
  %4727 = fcmp uge <2 x double> %4726, %4719
  %4728 = select <2 x i1> %4727, <2 x i1> splat (i1 true), <2 x i1> %4724
  %4729 = icmp eq <2 x i64> %4721, zeroinitializer
  %4730 = select <2 x i1> %4728, <2 x i1> splat (i1 true), <2 x i1> %4729
  %4731 = select <2 x i1> %4730, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %4732 = fcmp ogt <2 x double> %4694, %4731
  %4733 = select <2 x i1> %4732, <2 x double> %4694, <2 x double> %4731
  %4734 = add nuw nsw i64 %4693, 1
  %4735 = icmp eq i64 %4734, %4660
  br i1 %4735, label %4668, label %4692, !llvm.loop !177

4736:                                             ; preds = %5195, %4687
  %4737 = phi i64 [ %4688, %4687 ], [ %5201, %5195 ]
  %4738 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %4739 = fadd <2 x double> %4738, splat (double 1.000000e+00)
  %4740 = icmp eq <2 x i64> %4684, zeroinitializer
  %4741 = select <2 x i1> %4740, <2 x double> %4738, <2 x double> %4739
  store <2 x double> %4741, ptr %171, align 16, !tbaa !26
  %4742 = fcmp ogt <2 x double> %4741, splat (double 4.000000e+01)
  %4743 = select <2 x i1> %4742, <2 x i64> %4684, <2 x i64> zeroinitializer
  %4744 = xor <2 x i64> %4743, %4684
  %4745 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %4746 = fadd <2 x double> %4745, splat (double 1.000000e+00)
  %4747 = icmp eq <2 x i64> %4743, zeroinitializer
  %4748 = select <2 x i1> %4747, <2 x double> %4745, <2 x double> %4746
  store <2 x double> %4748, ptr %136, align 16, !tbaa !26
  %4749 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %4750 = load <2 x double>, ptr %217, align 16, !tbaa !26
  %4751 = fsub <2 x double> %4749, %4750
  %4752 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %4751)
  %4753 = load <2 x double>, ptr %218, align 16, !tbaa !26
  %4754 = fmul <2 x double> %4753, splat (double 1.500000e+00)
  %4755 = fcmp ogt <2 x double> %4752, %4754
  %4756 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %4757 = fcmp ogt <2 x double> %4756, splat (double 2.000000e-03)
  %4758 = load <2 x double>, ptr %181, align 16, !tbaa !26
  %4759 = fcmp oeq <2 x double> %4758, zeroinitializer
  %4760 = and <2 x i1> %4755, %4759
  %4761 = and <2 x i1> %4757, %4760
  %4762 = fdiv <2 x double> %4753, %4752
  %4763 = select <2 x i1> %4761, <2 x i64> %4744, <2 x i64> zeroinitializer
  %4764 = load <2 x double>, ptr %169, align 16, !tbaa !26
  %4765 = fcmp ogt <2 x double> %4764, %4756
  %4766 = select <2 x i1> %4765, <2 x double> %4764, <2 x double> %4756
  %4767 = select <2 x i1> %4761, <2 x double> zeroinitializer, <2 x double> %4766
  %4768 = icmp eq <2 x i64> %4763, zeroinitializer
  %4769 = select <2 x i1> %4768, <2 x double> %4764, <2 x double> %4767
  store <2 x double> %4769, ptr %169, align 16, !tbaa !26
  %4770 = fcmp ogt <2 x double> %4762, splat (double 5.000000e-02)
  %4771 = select <2 x i1> %4770, <2 x double> %4762, <2 x double> splat (double 5.000000e-02)
  %4772 = fcmp olt <2 x double> %4771, splat (double 0x3FEE666666666666)
  %4773 = select <2 x i1> %4772, <2 x double> %4771, <2 x double> splat (double 0x3FEE666666666666)
  %4774 = fmul <2 x double> %4756, %4773
  %4775 = fcmp ogt <2 x double> %4774, splat (double 0x3EB0C6F7A0B5ED8D)
  %4776 = select <2 x i1> %4775, <2 x double> %4774, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4777 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4778 = select <2 x i1> %4768, <2 x double> %4777, <2 x double> %4776
  store <2 x double> %4778, ptr %149, align 16, !tbaa !26
  %4779 = load <2 x double>, ptr %133, align 16, !tbaa !26
  %4780 = fadd <2 x double> %4779, splat (double 1.000000e+00)
  %4781 = select <2 x i1> %4768, <2 x double> %4779, <2 x double> %4780
  store <2 x double> %4781, ptr %133, align 16, !tbaa !26
  %4782 = xor <2 x i64> %4763, %4744
  %4783 = icmp sgt i64 %4737, 0
  br i1 %4783, label %4784, label %4902

4784:                                             ; preds = %4736
  %4785 = load ptr, ptr %139, align 8, !tbaa !28
  %4786 = load <2 x double>, ptr %146, align 16, !tbaa !26
  %4787 = load <2 x double>, ptr %147, align 16, !tbaa !26
  %4788 = fcmp une <2 x double> %4786, %4787
  %4789 = fcmp ule <2 x double> %4786, zeroinitializer
  %4790 = or <2 x i1> %4789, %4788
  %4791 = load <2 x double>, ptr %219, align 16, !tbaa !26
  %4792 = fcmp ogt <2 x double> %4756, splat (double 0x3E7AD7F29ABCAF48)
  %4793 = fcmp ogt <2 x double> %4756, splat (double 1.000000e-05)
  %4794 = fcmp ogt <2 x double> %4756, splat (double 1.000000e-04)
  br label %4795

4795:                                             ; preds = %4784, %4895
  %4796 = phi i64 [ 0, %4784 ], [ %4898, %4895 ]
  %4797 = phi <2 x i64> [ zeroinitializer, %4784 ], [ %4897, %4895 ]
  %4798 = phi <2 x i64> [ zeroinitializer, %4784 ], [ %4846, %4895 ]
  %4799 = phi <2 x double> [ splat (double 1.000000e+00), %4784 ], [ %4896, %4895 ]
  %4800 = getelementptr inbounds nuw %struct.Piece, ptr %4785, i64 %4796
  %4801 = getelementptr inbounds nuw i8, ptr %4800, i64 864
  %4802 = load <2 x double>, ptr %4801, align 16, !tbaa !26
  %4803 = getelementptr inbounds nuw i8, ptr %4800, i64 2320
  %4804 = load <2 x i64>, ptr %4803, align 16, !tbaa !26
  %4805 = xor <2 x i64> %4804, splat (i64 -1)
  %4806 = getelementptr inbounds nuw i8, ptr %4800, i64 320
  %4807 = load <2 x double>, ptr %4806, align 16, !tbaa !26
  %4808 = fmul <2 x double> %4791, %4807
  %4809 = fcmp ogt <2 x double> %4808, splat (double 0x3E7AD7F29ABCAF48)
  %4810 = fneg <2 x double> %4808
  %4811 = select <2 x i1> %4809, <2 x double> %4810, <2 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4812 = fcmp olt <2 x double> %4802, %4811
  %4813 = select <2 x i1> %4812, <2 x i1> %4790, <2 x i1> zeroinitializer
  %4814 = select <2 x i1> %4813, <2 x i64> %4805, <2 x i64> zeroinitializer
  %4815 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4814)
  %4816 = icmp eq i64 %4815, 0
  br i1 %4816, label %4844, label %4817

4817:                                             ; preds = %4795
  %4818 = getelementptr inbounds nuw i8, ptr %4800, i64 1088
  %4819 = load <2 x double>, ptr %4818, align 16, !tbaa !26
  %4820 = fcmp ole <2 x double> %4819, zeroinitializer
  %4821 = select <2 x i1> %4820, <2 x i64> %4814, <2 x i64> zeroinitializer
  %4822 = getelementptr inbounds nuw i8, ptr %4800, i64 304
  %4823 = load <2 x double>, ptr %4822, align 16, !tbaa !26
  %4824 = fmul <2 x double> %4823, splat (double -3.000000e-07)
  %4825 = fcmp olt <2 x double> %4802, %4824
  %4826 = select <2 x i1> %4792, <2 x i1> %4825, <2 x i1> zeroinitializer
  %4827 = select <2 x i1> %4826, <2 x i64> %4821, <2 x i64> zeroinitializer
  %4828 = or <2 x i64> %4827, %4798
  %4829 = fcmp olt <2 x double> %4799, splat (double 3.000000e-01)
  %4830 = icmp eq <2 x i64> %4827, zeroinitializer
  %4831 = select <2 x i1> %4830, <2 x i1> splat (i1 true), <2 x i1> %4829
  %4832 = select <2 x i1> %4831, <2 x double> %4799, <2 x double> splat (double 3.000000e-01)
  %4833 = xor <2 x i64> %4821, splat (i64 -1)
  %4834 = and <2 x i64> %4814, %4833
  %4835 = select <2 x i1> %4793, <2 x i64> %4834, <2 x i64> zeroinitializer
  %4836 = fsub <2 x double> %4819, %4802
  %4837 = fdiv <2 x double> %4819, %4836
  %4838 = or <2 x i64> %4835, %4797
  %4839 = or <2 x i64> %4838, %4827
  %4840 = fcmp olt <2 x double> %4832, %4837
  %4841 = icmp eq <2 x i64> %4835, zeroinitializer
  %4842 = select <2 x i1> %4841, <2 x i1> splat (i1 true), <2 x i1> %4840
  %4843 = select <2 x i1> %4842, <2 x double> %4832, <2 x double> %4837
  br label %4844

4844:                                             ; preds = %4795, %4817
  %4845 = phi <2 x double> [ %4843, %4817 ], [ %4799, %4795 ]
  %4846 = phi <2 x i64> [ %4828, %4817 ], [ %4798, %4795 ]
  %4847 = phi <2 x i64> [ %4839, %4817 ], [ %4797, %4795 ]
  %4848 = getelementptr inbounds nuw i8, ptr %4800, i64 848
  %4849 = load <2 x double>, ptr %4848, align 16, !tbaa !26
  %4850 = getelementptr inbounds nuw i8, ptr %4800, i64 2144
  %4851 = load <2 x double>, ptr %4850, align 16, !tbaa !26
  %4852 = fcmp oeq <2 x double> %4851, zeroinitializer
  %4853 = getelementptr inbounds nuw i8, ptr %4800, i64 464
  %4854 = load <2 x double>, ptr %4853, align 16, !tbaa !26
  %4855 = fmul <2 x double> %4854, splat (double 0x3FEFF7CED916872B)
  %4856 = fcmp olt <2 x double> %4849, %4855
  %4857 = and <2 x i1> %4852, %4856
  %4858 = and <2 x i1> %4794, %4857
  %4859 = bitcast <2 x i1> %4858 to i2
  %4860 = icmp eq i2 %4859, 0
  br i1 %4860, label %4871, label %4861

4861:                                             ; preds = %4844
  %4862 = getelementptr inbounds nuw i8, ptr %4800, i64 1072
  %4863 = load <2 x double>, ptr %4862, align 16, !tbaa !26
  %4864 = fsub <2 x double> %4863, %4854
  %4865 = fsub <2 x double> %4863, %4849
  %4866 = fdiv <2 x double> %4864, %4865
  %4867 = select <2 x i1> %4858, <2 x i64> splat (i64 -1), <2 x i64> %4847
  %4868 = fcmp uge <2 x double> %4845, %4866
  %4869 = select <2 x i1> %4858, <2 x i1> %4868, <2 x i1> zeroinitializer
  %4870 = select <2 x i1> %4869, <2 x double> %4866, <2 x double> %4845
  br label %4871

4871:                                             ; preds = %4861, %4844
  %4872 = phi <2 x double> [ %4870, %4861 ], [ %4845, %4844 ]
  %4873 = phi <2 x i64> [ %4867, %4861 ], [ %4847, %4844 ]
  %4874 = fcmp oeq <2 x double> %4851, splat (double 1.000000e+00)
  %4875 = getelementptr inbounds nuw i8, ptr %4800, i64 912
  %4876 = load <2 x double>, ptr %4875, align 16, !tbaa !26
  %4877 = getelementptr inbounds nuw i8, ptr %4800, i64 496
  %4878 = load <2 x double>, ptr %4877, align 16, !tbaa !26
  %4879 = fmul <2 x double> %4878, splat (double 1.000100e+00)
  %4880 = fcmp ogt <2 x double> %4876, %4879
  %4881 = and <2 x i1> %4874, %4880
  %4882 = and <2 x i1> %4794, %4881
  %4883 = bitcast <2 x i1> %4882 to i2
  %4884 = icmp eq i2 %4883, 0
  br i1 %4884, label %4895, label %4885

4885:                                             ; preds = %4871
  %4886 = getelementptr inbounds nuw i8, ptr %4800, i64 1136
  %4887 = load <2 x double>, ptr %4886, align 16, !tbaa !26
  %4888 = fsub <2 x double> %4878, %4887
  %4889 = fsub <2 x double> %4876, %4887
  %4890 = fdiv <2 x double> %4888, %4889
  %4891 = select <2 x i1> %4882, <2 x i64> splat (i64 -1), <2 x i64> %4873
  %4892 = fcmp uge <2 x double> %4872, %4890
  %4893 = select <2 x i1> %4882, <2 x i1> %4892, <2 x i1> zeroinitializer
  %4894 = select <2 x i1> %4893, <2 x double> %4890, <2 x double> %4872
  br label %4895

4895:                                             ; preds = %4871, %4885
  %4896 = phi <2 x double> [ %4894, %4885 ], [ %4872, %4871 ]
  %4897 = phi <2 x i64> [ %4891, %4885 ], [ %4873, %4871 ]
  %4898 = add nuw nsw i64 %4796, 1
  %4899 = icmp eq i64 %4898, %4737
  br i1 %4899, label %4900, label %4795, !llvm.loop !178

4900:                                             ; preds = %4895
  %4901 = icmp eq <2 x i64> %4846, zeroinitializer
  br label %4902

4902:                                             ; preds = %4900, %4736
  %4903 = phi <2 x double> [ splat (double 1.000000e+00), %4736 ], [ %4896, %4900 ]
  %4904 = phi <2 x i1> [ splat (i1 true), %4736 ], [ %4901, %4900 ]
  %4905 = phi <2 x i64> [ zeroinitializer, %4736 ], [ %4897, %4900 ]
  %4906 = and <2 x i64> %4905, %4782
  %4907 = fcmp ogt <2 x double> %4769, %4756
  %4908 = select <2 x i1> %4907, <2 x double> %4769, <2 x double> %4756
  %4909 = select <2 x i1> %4904, <2 x double> %4908, <2 x double> zeroinitializer
  %4910 = icmp eq <2 x i64> %4906, zeroinitializer
  %4911 = select <2 x i1> %4910, <2 x double> %4769, <2 x double> %4909
  %4912 = fcmp ogt <2 x double> %4903, splat (double 5.000000e-02)
  %4913 = select <2 x i1> %4912, <2 x double> %4903, <2 x double> splat (double 5.000000e-02)
  %4914 = fcmp olt <2 x double> %4913, splat (double 0x3FEE666666666666)
  %4915 = select <2 x i1> %4914, <2 x double> %4913, <2 x double> splat (double 0x3FEE666666666666)
  %4916 = fmul <2 x double> %4756, %4915
  %4917 = fcmp ogt <2 x double> %4916, splat (double 0x3EB0C6F7A0B5ED8D)
  %4918 = select <2 x i1> %4917, <2 x double> %4916, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4919 = select <2 x i1> %4910, <2 x double> %4778, <2 x double> %4918
  %4920 = fadd <2 x double> %4781, splat (double 1.000000e+00)
  %4921 = select <2 x i1> %4910, <2 x double> %4781, <2 x double> %4920
  %4922 = xor <2 x i64> %4906, %4782
  %4923 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %4924 = fmul <2 x double> %4923, splat (double 5.000000e-01)
  %4925 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %4926 = load <2 x i64>, ptr %153, align 16, !tbaa !26
  %4927 = fneg <2 x double> %4924
  %4928 = icmp eq <2 x i64> %4926, zeroinitializer
  %4929 = select <2 x i1> %4928, <2 x double> %4927, <2 x double> %4924
  %4930 = fadd <2 x double> %4925, %4929
  %4931 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %4932 = fsub <2 x double> %4931, %4930
  %4933 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %4934 = fsub <2 x double> %4933, %4930
  %4935 = fneg <2 x double> %4932
  %4936 = select <2 x i1> %4928, <2 x double> %4935, <2 x double> %4932
  %4937 = fneg <2 x double> %4934
  %4938 = select <2 x i1> %4928, <2 x double> %4937, <2 x double> %4934
  %4939 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %4940 = fcmp oeq <2 x double> %4939, zeroinitializer
  %4941 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %4942 = fcmp oeq <2 x double> %4941, zeroinitializer
  %4943 = and <2 x i1> %4940, %4942
  %4944 = fcmp olt <2 x double> %4936, splat (double -4.000000e-03)
  %4945 = and <2 x i1> %4943, %4944
  %4946 = fcmp ogt <2 x double> %4938, splat (double 4.000000e-03)
  %4947 = and <2 x i1> %4946, %4945
  %4948 = and <2 x i1> %4757, %4947
  %4949 = fsub <2 x double> %4936, %4938
  %4950 = fdiv <2 x double> %4936, %4949
  %4951 = select <2 x i1> %4948, <2 x i64> %4922, <2 x i64> zeroinitializer
  %4952 = fcmp ogt <2 x double> %4911, %4756
  %4953 = icmp eq <2 x i64> %4951, zeroinitializer
  %4954 = select <2 x i1> %4953, <2 x i1> splat (i1 true), <2 x i1> %4952
  %4955 = select <2 x i1> %4954, <2 x double> %4911, <2 x double> %4756
  store <2 x double> %4955, ptr %169, align 16, !tbaa !26
  %4956 = fcmp ogt <2 x double> %4950, splat (double 5.000000e-02)
  %4957 = select <2 x i1> %4956, <2 x double> %4950, <2 x double> splat (double 5.000000e-02)
  %4958 = fcmp olt <2 x double> %4957, splat (double 0x3FEE666666666666)
  %4959 = select <2 x i1> %4958, <2 x double> %4957, <2 x double> splat (double 0x3FEE666666666666)
  %4960 = fmul <2 x double> %4756, %4959
  %4961 = fcmp ogt <2 x double> %4960, splat (double 0x3EB0C6F7A0B5ED8D)
  %4962 = select <2 x i1> %4961, <2 x double> %4960, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4963 = select <2 x i1> %4953, <2 x double> %4919, <2 x double> %4962
  store <2 x double> %4963, ptr %149, align 16, !tbaa !26
  %4964 = fadd <2 x double> %4921, splat (double 1.000000e+00)
  %4965 = select <2 x i1> %4953, <2 x double> %4921, <2 x double> %4964
  store <2 x double> %4965, ptr %133, align 16, !tbaa !26
  %4966 = xor <2 x i64> %4951, %4922
  %4967 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %4968 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %4969 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %4970 = fsub <2 x double> %4968, %4969
  %4971 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %4972 = fcmp une <2 x double> %4971, splat (double 1.000000e+00)
  %4973 = load <2 x double>, ptr %222, align 16, !tbaa !26
  %4974 = fsub <2 x double> %4931, %4973
  %4975 = select <2 x i1> %4972, <2 x double> splat (double -1.000000e+00), <2 x double> %4974
  %4976 = fcmp une <2 x double> %4971, splat (double 2.000000e+00)
  %4977 = fsub <2 x double> %4967, %4973
  %4978 = select <2 x i1> %4976, <2 x double> %4975, <2 x double> %4977
  %4979 = fcmp une <2 x double> %4971, splat (double 3.000000e+00)
  %4980 = fsub <2 x double> %4970, %4973
  %4981 = select <2 x i1> %4979, <2 x double> %4978, <2 x double> %4980
  %4982 = fcmp une <2 x double> %4971, splat (double 4.000000e+00)
  %4983 = fsub <2 x double> %4973, %4970
  %4984 = select <2 x i1> %4982, <2 x double> %4981, <2 x double> %4983
  br i1 %4783, label %4985, label %5033

4985:                                             ; preds = %4902
  %4986 = load ptr, ptr %139, align 8, !tbaa !28
  %4987 = and i64 %4737, 3
  %4988 = icmp ult i64 %4737, 4
  br i1 %4988, label %5017, label %4989

4989:                                             ; preds = %4985
  %4990 = and i64 %4737, 9223372036854775804
  br label %4991

4991:                                             ; preds = %4991, %4989
  %4992 = phi i64 [ 0, %4989 ], [ %5014, %4991 ]
  %4993 = phi <2 x double> [ splat (double 1.000000e+09), %4989 ], [ %5013, %4991 ]
  %4994 = phi i64 [ 0, %4989 ], [ %5015, %4991 ]
  %4995 = getelementptr inbounds nuw %struct.Piece, ptr %4986, i64 %4992, i32 41
  %4996 = load <2 x double>, ptr %4995, align 16, !tbaa !26
  %4997 = fcmp olt <2 x double> %4993, %4996
  %4998 = select <2 x i1> %4997, <2 x double> %4993, <2 x double> %4996
  %4999 = or disjoint i64 %4992, 1
  %5000 = getelementptr inbounds nuw %struct.Piece, ptr %4986, i64 %4999, i32 41
  %5001 = load <2 x double>, ptr %5000, align 16, !tbaa !26
  %5002 = fcmp olt <2 x double> %4998, %5001
  %5003 = select <2 x i1> %5002, <2 x double> %4998, <2 x double> %5001
  %5004 = or disjoint i64 %4992, 2
  %5005 = getelementptr inbounds nuw %struct.Piece, ptr %4986, i64 %5004, i32 41
  %5006 = load <2 x double>, ptr %5005, align 16, !tbaa !26
  %5007 = fcmp olt <2 x double> %5003, %5006
  %5008 = select <2 x i1> %5007, <2 x double> %5003, <2 x double> %5006
  %5009 = or disjoint i64 %4992, 3
  %5010 = getelementptr inbounds nuw %struct.Piece, ptr %4986, i64 %5009, i32 41
  %5011 = load <2 x double>, ptr %5010, align 16, !tbaa !26
  %5012 = fcmp olt <2 x double> %5008, %5011
  %5013 = select <2 x i1> %5012, <2 x double> %5008, <2 x double> %5011
  %5014 = add nuw nsw i64 %4992, 4
  %5015 = add i64 %4994, 4
  %5016 = icmp eq i64 %5015, %4990
  br i1 %5016, label %5017, label %4991, !llvm.loop !179

5017:                                             ; preds = %4991, %4985
  %5018 = phi <2 x double> [ poison, %4985 ], [ %5013, %4991 ]
  %5019 = phi i64 [ 0, %4985 ], [ %5014, %4991 ]
  %5020 = phi <2 x double> [ splat (double 1.000000e+09), %4985 ], [ %5013, %4991 ]
  %5021 = icmp eq i64 %4987, 0
  br i1 %5021, label %5033, label %5022

5022:                                             ; preds = %5017, %5022
  %5023 = phi i64 [ %5030, %5022 ], [ %5019, %5017 ]
  %5024 = phi <2 x double> [ %5029, %5022 ], [ %5020, %5017 ]
  %5025 = phi i64 [ %5031, %5022 ], [ 0, %5017 ]
  %5026 = getelementptr inbounds nuw %struct.Piece, ptr %4986, i64 %5023, i32 41
  %5027 = load <2 x double>, ptr %5026, align 16, !tbaa !26
  %5028 = fcmp olt <2 x double> %5024, %5027
  %5029 = select <2 x i1> %5028, <2 x double> %5024, <2 x double> %5027
  %5030 = add nuw nsw i64 %5023, 1
  %5031 = add i64 %5025, 1
  %5032 = icmp eq i64 %5031, %4987
  br i1 %5032, label %5033, label %5022, !llvm.loop !180

5033:                                             ; preds = %5017, %5022, %4902
  %5034 = phi <2 x double> [ splat (double 1.000000e+09), %4902 ], [ %5018, %5017 ], [ %5029, %5022 ]
  %5035 = load <2 x double>, ptr %186, align 16, !tbaa !26
  %5036 = fsub <2 x double> %5035, %4969
  %5037 = fsub <2 x double> %4933, %4973
  %5038 = select <2 x i1> %4972, <2 x double> splat (double -1.000000e+00), <2 x double> %5037
  %5039 = fsub <2 x double> %5034, %4973
  %5040 = select <2 x i1> %4976, <2 x double> %5038, <2 x double> %5039
  %5041 = fsub <2 x double> %5036, %4973
  %5042 = select <2 x i1> %4979, <2 x double> %5040, <2 x double> %5041
  %5043 = fsub <2 x double> %4973, %5036
  %5044 = select <2 x i1> %4982, <2 x double> %5042, <2 x double> %5043
  %5045 = fcmp une <2 x double> %4971, zeroinitializer
  %5046 = fcmp oge <2 x double> %4756, splat (double 5.000000e-02)
  %5047 = and <2 x i1> %5046, %5045
  %5048 = fcmp olt <2 x double> %4984, zeroinitializer
  %5049 = and <2 x i1> %5047, %5048
  %5050 = fsub <2 x double> %5044, %4984
  %5051 = fmul <2 x double> %5050, splat (double 2.000000e-02)
  %5052 = fcmp ogt <2 x double> %5044, %5051
  %5053 = and <2 x i1> %5049, %5052
  %5054 = fsub <2 x double> %4984, %5044
  %5055 = fdiv <2 x double> %4984, %5054
  %5056 = fcmp olt <2 x double> %5055, splat (double 0x3FEE666666666666)
  %5057 = and <2 x i1> %5056, %5053
  %5058 = select <2 x i1> %5057, <2 x i64> %4966, <2 x i64> zeroinitializer
  %5059 = fcmp ogt <2 x double> %4955, %4756
  %5060 = icmp eq <2 x i64> %5058, zeroinitializer
  %5061 = select <2 x i1> %5060, <2 x i1> splat (i1 true), <2 x i1> %5059
  %5062 = select <2 x i1> %5061, <2 x double> %4955, <2 x double> %4756
  store <2 x double> %5062, ptr %169, align 16, !tbaa !26
  %5063 = fcmp ogt <2 x double> %5055, splat (double 5.000000e-02)
  %5064 = select <2 x i1> %5063, <2 x double> %5055, <2 x double> splat (double 5.000000e-02)
  %5065 = fcmp olt <2 x double> %5064, splat (double 0x3FEE666666666666)
  %5066 = select <2 x i1> %5065, <2 x double> %5064, <2 x double> splat (double 0x3FEE666666666666)
  %5067 = fmul <2 x double> %4756, %5066
  %5068 = fcmp ogt <2 x double> %5067, splat (double 0x3EB0C6F7A0B5ED8D)
  %5069 = select <2 x i1> %5068, <2 x double> %5067, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %5070 = select <2 x i1> %5060, <2 x double> %4963, <2 x double> %5069
  store <2 x double> %5070, ptr %149, align 16, !tbaa !26
  %5071 = fadd <2 x double> %4965, splat (double 1.000000e+00)
  %5072 = select <2 x i1> %5060, <2 x double> %4965, <2 x double> %5071
  store <2 x double> %5072, ptr %133, align 16, !tbaa !26
  %5073 = xor <2 x i64> %5058, %4966
  %5074 = or <2 x i64> %5073, %4743
  %5075 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5074)
  %5076 = icmp eq i64 %5075, 0
  br i1 %5076, label %546, label %5203

5077:                                             ; preds = %4690, %5195
  %5078 = phi i64 [ 0, %4690 ], [ %5200, %5195 ]
  %5079 = load ptr, ptr %139, align 8, !tbaa !28
  %5080 = getelementptr inbounds nuw %struct.Piece, ptr %5079, i64 %5078
  %5081 = getelementptr inbounds nuw i8, ptr %5080, i64 2368
  %5082 = load i64, ptr %5081, align 16, !tbaa !31
  %5083 = icmp eq i64 %5082, 0
  %5084 = getelementptr inbounds nuw i8, ptr %5080, i64 2392
  %5085 = load ptr, ptr %5084, align 8, !tbaa !84
  br i1 %5083, label %5086, label %5123

5086:                                             ; preds = %5077
  %5087 = load <2 x double>, ptr %5085, align 16, !tbaa !26
  %5088 = getelementptr inbounds nuw i8, ptr %5080, i64 432
  %5089 = load <2 x double>, ptr %5088, align 16, !tbaa !26
  %5090 = getelementptr inbounds nuw i8, ptr %5085, i64 16
  %5091 = load <2 x double>, ptr %5090, align 16, !tbaa !26
  %5092 = fsub <2 x double> %5091, %5087
  %5093 = fneg <2 x double> %5089
  %5094 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5093, <2 x double> %5092, <2 x double> %5087)
  %5095 = getelementptr inbounds nuw i8, ptr %5080, i64 176
  %5096 = load <2 x double>, ptr %5095, align 16, !tbaa !26, !noalias !182
  %5097 = getelementptr inbounds nuw i8, ptr %5080, i64 192
  %5098 = load <2 x double>, ptr %5097, align 16, !tbaa !26, !noalias !182
  %5099 = getelementptr inbounds nuw i8, ptr %5080, i64 208
  %5100 = load <2 x double>, ptr %5099, align 16, !tbaa !26, !noalias !182
  %5101 = getelementptr inbounds nuw i8, ptr %5080, i64 224
  %5102 = load <2 x double>, ptr %5101, align 16, !tbaa !26, !noalias !182
  %5103 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5094, <2 x double> %5102, <2 x double> %5100)
  %5104 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5094, <2 x double> %5103, <2 x double> %5098)
  %5105 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5094, <2 x double> %5104, <2 x double> %5096)
  %5106 = fmul <2 x double> %5094, %5105
  %5107 = getelementptr inbounds nuw i8, ptr %5080, i64 48
  %5108 = load <2 x double>, ptr %5107, align 16, !tbaa !26, !noalias !182
  %5109 = getelementptr inbounds nuw i8, ptr %5080, i64 64
  %5110 = load <2 x double>, ptr %5109, align 16, !tbaa !26, !noalias !182
  %5111 = getelementptr inbounds nuw i8, ptr %5080, i64 80
  %5112 = load <2 x double>, ptr %5111, align 16, !tbaa !26, !noalias !182
  %5113 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5106, <2 x double> %5112, <2 x double> %5110)
  %5114 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5106, <2 x double> %5113, <2 x double> %5108)
  %5115 = fdiv <2 x double> splat (double 1.000000e+00), %5114
  %5116 = fmul <2 x double> %5112, %5106
  %5117 = fmul <2 x double> %5116, splat (double 0x3FD5555555555555)
  %5118 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5110, <2 x double> splat (double 5.000000e-01), <2 x double> %5117)
  %5119 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5106, <2 x double> %5118, <2 x double> %5108)
  %5120 = fmul <2 x double> %5106, %5119
  %5121 = fsub <2 x double> %5094, %5120
  %5122 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5121, <2 x double> %5115, <2 x double> %5106)
  br label %5195

5123:                                             ; preds = %5077
  %5124 = getelementptr <2 x double>, ptr %5085, i64 %5082
  %5125 = getelementptr i8, ptr %5124, i64 -16
  %5126 = load <2 x double>, ptr %5125, align 16, !tbaa !26
  %5127 = getelementptr inbounds nuw i8, ptr %5080, i64 256
  %5128 = load <2 x double>, ptr %5127, align 16, !tbaa !26
  %5129 = fdiv <2 x double> %5126, %5128
  %5130 = load <2 x double>, ptr %5124, align 16, !tbaa !26
  %5131 = getelementptr inbounds nuw i8, ptr %5080, i64 176
  %5132 = load <2 x double>, ptr %5131, align 16, !tbaa !26, !noalias !185
  %5133 = getelementptr inbounds nuw i8, ptr %5080, i64 192
  %5134 = load <2 x double>, ptr %5133, align 16, !tbaa !26, !noalias !185
  %5135 = getelementptr inbounds nuw i8, ptr %5080, i64 208
  %5136 = load <2 x double>, ptr %5135, align 16, !tbaa !26, !noalias !185
  %5137 = getelementptr inbounds nuw i8, ptr %5080, i64 224
  %5138 = load <2 x double>, ptr %5137, align 16, !tbaa !26, !noalias !185
  %5139 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5130, <2 x double> %5138, <2 x double> %5136)
  %5140 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5130, <2 x double> %5139, <2 x double> %5134)
  %5141 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5130, <2 x double> %5140, <2 x double> %5132)
  %5142 = fmul <2 x double> %5130, %5141
  %5143 = getelementptr inbounds nuw i8, ptr %5080, i64 48
  %5144 = load <2 x double>, ptr %5143, align 16, !tbaa !26, !noalias !185
  %5145 = getelementptr inbounds nuw i8, ptr %5080, i64 64
  %5146 = load <2 x double>, ptr %5145, align 16, !tbaa !26, !noalias !185
  %5147 = getelementptr inbounds nuw i8, ptr %5080, i64 80
  %5148 = load <2 x double>, ptr %5147, align 16, !tbaa !26, !noalias !185
  %5149 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5142, <2 x double> %5148, <2 x double> %5146)
  %5150 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5142, <2 x double> %5149, <2 x double> %5144)
  %5151 = fdiv <2 x double> splat (double 1.000000e+00), %5150
  %5152 = fmul <2 x double> %5148, %5142
  %5153 = fmul <2 x double> %5152, splat (double 0x3FD5555555555555)
  %5154 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5146, <2 x double> splat (double 5.000000e-01), <2 x double> %5153)
  %5155 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5142, <2 x double> %5154, <2 x double> %5144)
  %5156 = fmul <2 x double> %5142, %5155
  %5157 = fsub <2 x double> %5130, %5156
  %5158 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5157, <2 x double> %5151, <2 x double> %5142)
  %5159 = getelementptr inbounds nuw i8, ptr %5080, i64 816
  %5160 = load <2 x double>, ptr %5159, align 16, !tbaa !26
  %5161 = getelementptr inbounds nuw i8, ptr %5080, i64 832
  %5162 = load <2 x double>, ptr %5161, align 16, !tbaa !26
  %5163 = getelementptr inbounds nuw i8, ptr %5080, i64 16
  %5164 = load <2 x double>, ptr %5163, align 16, !tbaa !26
  %5165 = fsub <2 x double> %5162, %5164
  %5166 = fmul <2 x double> %5160, %5165
  %5167 = getelementptr inbounds nuw i8, ptr %5080, i64 240
  %5168 = load <2 x double>, ptr %5167, align 16, !tbaa !26
  %5169 = getelementptr inbounds nuw i8, ptr %5080, i64 800
  %5170 = load <2 x double>, ptr %5169, align 16, !tbaa !26
  %5171 = fdiv <2 x double> %5168, %5170
  %5172 = fmul <2 x double> %5130, splat (double 2.000000e+00)
  %5173 = getelementptr inbounds nuw i8, ptr %5080, i64 96
  %5174 = load <2 x double>, ptr %5173, align 16, !tbaa !26
  %5175 = getelementptr inbounds nuw i8, ptr %5080, i64 112
  %5176 = load <2 x double>, ptr %5175, align 16, !tbaa !26
  %5177 = getelementptr inbounds nuw i8, ptr %5080, i64 128
  %5178 = load <2 x double>, ptr %5177, align 16, !tbaa !26
  %5179 = getelementptr inbounds nuw i8, ptr %5080, i64 144
  %5180 = load <2 x double>, ptr %5179, align 16, !tbaa !26
  %5181 = getelementptr inbounds nuw i8, ptr %5080, i64 160
  %5182 = load <2 x double>, ptr %5181, align 16, !tbaa !26
  %5183 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5172, <2 x double> %5182, <2 x double> %5180)
  %5184 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5172, <2 x double> %5183, <2 x double> %5178)
  %5185 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5172, <2 x double> %5184, <2 x double> %5176)
  %5186 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5172, <2 x double> %5185, <2 x double> %5174)
  %5187 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5158, <2 x double> %5148, <2 x double> %5146)
  %5188 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5158, <2 x double> %5187, <2 x double> %5144)
  %5189 = fmul <2 x double> %5188, %5186
  %5190 = fdiv <2 x double> %5189, %5166
  %5191 = fmul <2 x double> %5158, %5190
  %5192 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5171, <2 x double> %5129, <2 x double> %5191)
  %5193 = fadd <2 x double> %5171, %5190
  %5194 = fdiv <2 x double> %5192, %5193
  br label %5195

5195:                                             ; preds = %5086, %5123
  %5196 = phi <2 x double> [ %5194, %5123 ], [ %5122, %5086 ]
  %5197 = getelementptr inbounds nuw i8, ptr %5080, i64 2128
  %5198 = load <2 x double>, ptr %5197, align 16, !tbaa !26
  %5199 = select <2 x i1> %4691, <2 x double> %5198, <2 x double> %5196
  store <2 x double> %5199, ptr %5197, align 16, !tbaa !26
  %5200 = add nuw nsw i64 %5078, 1
  %5201 = load i64, ptr %166, align 8, !tbaa !20
  %5202 = icmp slt i64 %5200, %5201
  br i1 %5202, label %5077, label %4736, !llvm.loop !188

5203:                                             ; preds = %5033
  %5204 = icmp eq <2 x i64> %5074, zeroinitializer
  %5205 = select <2 x i1> %5204, <2 x double> %4750, <2 x double> %4749
  store <2 x double> %5205, ptr %217, align 16, !tbaa !26
  %5206 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %5207 = select <2 x i1> %5204, <2 x double> %5206, <2 x double> %4931
  store <2 x double> %5207, ptr %160, align 16, !tbaa !26
  %5208 = select <2 x i1> %5204, <2 x double> %4931, <2 x double> %4933
  store <2 x double> %5208, ptr %154, align 16, !tbaa !26
  %5209 = load <2 x double>, ptr %248, align 16, !tbaa !26
  %5210 = select <2 x i1> %5204, <2 x double> %5209, <2 x double> %4968
  store <2 x double> %5210, ptr %248, align 16, !tbaa !26
  %5211 = select <2 x i1> %5204, <2 x double> %4968, <2 x double> %5035
  store <2 x double> %5211, ptr %249, align 16, !tbaa !26
  %5212 = load <2 x double>, ptr %251, align 16, !tbaa !26
  %5213 = load <2 x double>, ptr %250, align 16, !tbaa !26
  %5214 = select <2 x i1> %5204, <2 x double> %5213, <2 x double> %5212
  store <2 x double> %5214, ptr %250, align 16, !tbaa !26
  %5215 = load <2 x double>, ptr %252, align 16, !tbaa !26
  %5216 = select <2 x i1> %5204, <2 x double> %5212, <2 x double> %5215
  store <2 x double> %5216, ptr %251, align 16, !tbaa !26
  %5217 = load <2 x double>, ptr %254, align 16, !tbaa !26
  %5218 = load <2 x double>, ptr %253, align 16, !tbaa !26
  %5219 = select <2 x i1> %5204, <2 x double> %5218, <2 x double> %5217
  store <2 x double> %5219, ptr %253, align 16, !tbaa !26
  %5220 = load <2 x double>, ptr %255, align 16, !tbaa !26
  %5221 = select <2 x i1> %5204, <2 x double> %5217, <2 x double> %5220
  store <2 x double> %5221, ptr %254, align 16, !tbaa !26
  %5222 = load <2 x double>, ptr %257, align 16, !tbaa !26
  %5223 = load <2 x double>, ptr %256, align 16, !tbaa !26
  %5224 = select <2 x i1> %5204, <2 x double> %5223, <2 x double> %5222
  store <2 x double> %5224, ptr %256, align 16, !tbaa !26
  %5225 = load <2 x double>, ptr %258, align 16, !tbaa !26
  %5226 = select <2 x i1> %5204, <2 x double> %5222, <2 x double> %5225
  store <2 x double> %5226, ptr %257, align 16, !tbaa !26
  %5227 = load <2 x double>, ptr %260, align 16, !tbaa !26
  %5228 = load <2 x double>, ptr %259, align 16, !tbaa !26
  %5229 = select <2 x i1> %5204, <2 x double> %5228, <2 x double> %5227
  store <2 x double> %5229, ptr %259, align 16, !tbaa !26
  %5230 = load <2 x double>, ptr %261, align 16, !tbaa !26
  %5231 = select <2 x i1> %5204, <2 x double> %5227, <2 x double> %5230
  store <2 x double> %5231, ptr %260, align 16, !tbaa !26
  %5232 = xor <2 x i64> %5074, splat (i64 -1)
  br i1 %4783, label %5233, label %5635

5233:                                             ; preds = %5203, %5591
  %5234 = phi i64 [ %5603, %5591 ], [ 0, %5203 ]
  %5235 = load ptr, ptr %139, align 8, !tbaa !28
  %5236 = getelementptr inbounds nuw %struct.Piece, ptr %5235, i64 %5234
  %5237 = getelementptr inbounds nuw i8, ptr %5236, i64 512
  %5238 = load <2 x double>, ptr %5237, align 16, !tbaa !26
  %5239 = fcmp ogt <2 x double> %5238, zeroinitializer
  %5240 = bitcast <2 x i1> %5239 to i2
  %5241 = icmp eq i2 %5240, 0
  br i1 %5241, label %5498, label %5242

5242:                                             ; preds = %5233
  %5243 = load i64, ptr %128, align 16, !tbaa !21
  %5244 = add i64 %5243, -1
  %5245 = getelementptr inbounds nuw i8, ptr %5236, i64 1264
  %5246 = load <2 x double>, ptr %5245, align 16, !tbaa !26
  %5247 = getelementptr inbounds nuw i8, ptr %5236, i64 1040
  %5248 = load <2 x double>, ptr %5247, align 16, !tbaa !26
  %5249 = getelementptr inbounds nuw i8, ptr %5236, i64 2368
  %5250 = load i64, ptr %5249, align 16, !tbaa !31
  %5251 = icmp sgt i64 %5243, %5250
  br i1 %5251, label %5260, label %5252

5252:                                             ; preds = %5242
  %5253 = getelementptr inbounds nuw i8, ptr %5236, i64 2456
  %5254 = load ptr, ptr %5253, align 8, !tbaa !77
  %5255 = getelementptr inbounds <2 x double>, ptr %5254, i64 %5244
  %5256 = load <2 x double>, ptr %5255, align 16, !tbaa !26
  %5257 = getelementptr inbounds nuw i8, ptr %5236, i64 480
  %5258 = load <2 x double>, ptr %5257, align 16, !tbaa !26
  %5259 = fmul <2 x double> %5256, %5258
  br label %5269

5260:                                             ; preds = %5242
  %5261 = getelementptr inbounds nuw i8, ptr %5236, i64 480
  %5262 = load <2 x double>, ptr %5261, align 16, !tbaa !26
  %5263 = getelementptr inbounds nuw i8, ptr %5236, i64 2456
  %5264 = load ptr, ptr %5263, align 8, !tbaa !77
  %5265 = getelementptr inbounds <2 x double>, ptr %5264, i64 %5244
  %5266 = load <2 x double>, ptr %5265, align 16, !tbaa !26
  %5267 = fsub <2 x double> %5246, %5262
  %5268 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5266, <2 x double> %5267, <2 x double> %5262)
  br label %5269

5269:                                             ; preds = %5260, %5252
  %5270 = phi <2 x double> [ %5258, %5252 ], [ %5262, %5260 ]
  %5271 = phi <2 x double> [ %5259, %5252 ], [ %5268, %5260 ]
  %5272 = getelementptr inbounds nuw i8, ptr %5236, i64 848
  %5273 = load <2 x double>, ptr %5272, align 16, !tbaa !26
  %5274 = fcmp ole <2 x double> %5271, %5273
  %5275 = getelementptr inbounds nuw i8, ptr %5236, i64 2144
  %5276 = load <2 x double>, ptr %5275, align 16, !tbaa !26
  %5277 = fcmp oeq <2 x double> %5276, zeroinitializer
  %5278 = select <2 x i1> %5277, <2 x i1> %5274, <2 x i1> zeroinitializer
  %5279 = select <2 x i1> %5278, <2 x i64> %5074, <2 x i64> zeroinitializer
  %5280 = xor <2 x i64> %5279, %5074
  %5281 = fsub <2 x double> %5246, %5248
  %5282 = getelementptr inbounds nuw i8, ptr %5236, i64 480
  %5283 = fsub <2 x double> %5248, %5270
  %5284 = fdiv <2 x double> %5281, %5283
  %5285 = getelementptr inbounds nuw i8, ptr %5236, i64 2416
  %5286 = load ptr, ptr %5285, align 16, !tbaa !67
  %5287 = getelementptr inbounds <2 x double>, ptr %5286, i64 %5250
  %5288 = load <2 x double>, ptr %5287, align 16, !tbaa !26
  %5289 = getelementptr inbounds nuw i8, ptr %5236, i64 2424
  %5290 = load ptr, ptr %5289, align 8, !tbaa !51
  %5291 = getelementptr inbounds <2 x double>, ptr %5290, i64 %5250
  %5292 = load <2 x double>, ptr %5291, align 16, !tbaa !26
  %5293 = icmp eq <2 x i64> %5279, zeroinitializer
  %5294 = select <2 x i1> %5293, <2 x double> %5292, <2 x double> %5288
  store <2 x double> %5294, ptr %5291, align 16, !tbaa !26
  %5295 = load i64, ptr %5249, align 16, !tbaa !31
  %5296 = add nsw i64 %5295, 1
  %5297 = icmp slt i64 %5296, %5244
  br i1 %5297, label %5298, label %5302

5298:                                             ; preds = %5269
  %5299 = getelementptr inbounds nuw i8, ptr %5236, i64 2472
  br label %5344

5300:                                             ; preds = %5344
  %5301 = load i64, ptr %5249, align 16, !tbaa !31
  br label %5302

5302:                                             ; preds = %5300, %5269
  %5303 = phi i64 [ %5295, %5269 ], [ %5301, %5300 ]
  %5304 = phi <2 x double> [ %5288, %5269 ], [ %5349, %5300 ]
  %5305 = icmp sgt i64 %5243, %5303
  br i1 %5305, label %5313, label %5306

5306:                                             ; preds = %5302
  %5307 = getelementptr inbounds nuw i8, ptr %5236, i64 2456
  %5308 = load ptr, ptr %5307, align 8, !tbaa !77
  %5309 = getelementptr inbounds <2 x double>, ptr %5308, i64 %5244
  %5310 = load <2 x double>, ptr %5309, align 16, !tbaa !26
  %5311 = load <2 x double>, ptr %5282, align 16, !tbaa !26
  %5312 = fmul <2 x double> %5310, %5311
  br label %5321

5313:                                             ; preds = %5302
  %5314 = load <2 x double>, ptr %5282, align 16, !tbaa !26
  %5315 = getelementptr inbounds nuw i8, ptr %5236, i64 2456
  %5316 = load ptr, ptr %5315, align 8, !tbaa !77
  %5317 = getelementptr inbounds <2 x double>, ptr %5316, i64 %5244
  %5318 = load <2 x double>, ptr %5317, align 16, !tbaa !26
  %5319 = fsub <2 x double> %5248, %5314
  %5320 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5318, <2 x double> %5319, <2 x double> %5314)
  br label %5321

5321:                                             ; preds = %5313, %5306
  %5322 = phi <2 x double> [ %5312, %5306 ], [ %5320, %5313 ]
  %5323 = load ptr, ptr %5285, align 16, !tbaa !67
  %5324 = getelementptr inbounds <2 x double>, ptr %5323, i64 %5244
  %5325 = load <2 x double>, ptr %5324, align 16, !tbaa !26
  %5326 = load ptr, ptr %5289, align 8, !tbaa !51
  %5327 = getelementptr inbounds <2 x double>, ptr %5326, i64 %5244
  %5328 = fsub <2 x double> %5304, %5325
  %5329 = fsub <2 x double> %5271, %5322
  %5330 = load <2 x double>, ptr %5272, align 16, !tbaa !26
  %5331 = fsub <2 x double> %5330, %5322
  %5332 = fdiv <2 x double> %5329, %5331
  %5333 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5328, <2 x double> %5332, <2 x double> %5325)
  %5334 = load <2 x double>, ptr %5327, align 16, !tbaa !26
  %5335 = select <2 x i1> %5293, <2 x double> %5334, <2 x double> %5333
  store <2 x double> %5335, ptr %5327, align 16, !tbaa !26
  %5336 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5280)
  %5337 = icmp eq i64 %5336, 0
  br i1 %5337, label %5498, label %5338

5338:                                             ; preds = %5321
  %5339 = getelementptr inbounds nuw i8, ptr %5236, i64 2456
  %5340 = getelementptr inbounds nuw i8, ptr %5236, i64 880
  %5341 = getelementptr inbounds nuw i8, ptr %5236, i64 304
  %5342 = extractelement <2 x i64> %5280, i64 0
  %5343 = extractelement <2 x i64> %5280, i64 1
  br label %5362

5344:                                             ; preds = %5298, %5344
  %5345 = phi i64 [ %5296, %5298 ], [ %5360, %5344 ]
  %5346 = phi <2 x double> [ %5288, %5298 ], [ %5349, %5344 ]
  %5347 = load ptr, ptr %5285, align 16, !tbaa !67
  %5348 = getelementptr inbounds <2 x double>, ptr %5347, i64 %5345
  %5349 = load <2 x double>, ptr %5348, align 16, !tbaa !26
  %5350 = load ptr, ptr %5289, align 8, !tbaa !51
  %5351 = getelementptr inbounds <2 x double>, ptr %5350, i64 %5345
  %5352 = fsub <2 x double> %5346, %5349
  %5353 = load ptr, ptr %5299, align 8, !tbaa !189
  %5354 = getelementptr inbounds <2 x double>, ptr %5353, i64 %5345
  %5355 = load <2 x double>, ptr %5354, align 16, !tbaa !26
  %5356 = fmul <2 x double> %5284, %5355
  %5357 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5352, <2 x double> %5356, <2 x double> %5349)
  %5358 = load <2 x double>, ptr %5351, align 16, !tbaa !26
  %5359 = select <2 x i1> %5293, <2 x double> %5358, <2 x double> %5357
  store <2 x double> %5359, ptr %5351, align 16, !tbaa !26
  %5360 = add nsw i64 %5345, 1
  %5361 = icmp eq i64 %5360, %5244
  br i1 %5361, label %5300, label %5344, !llvm.loop !190

5362:                                             ; preds = %5338, %5497
  %5363 = phi i1 [ true, %5338 ], [ false, %5497 ]
  %5364 = phi i64 [ %5342, %5338 ], [ %5343, %5497 ]
  %5365 = phi i64 [ 0, %5338 ], [ 1, %5497 ]
  %5366 = icmp eq i64 %5364, 0
  br i1 %5366, label %5497, label %5367

5367:                                             ; preds = %5362
  %5368 = load i64, ptr %128, align 16, !tbaa !21
  %5369 = load i64, ptr %5249, align 16, !tbaa !31
  %5370 = getelementptr inbounds nuw double, ptr %5282, i64 %5365
  %5371 = load double, ptr %5370, align 8, !tbaa !44
  %5372 = getelementptr inbounds nuw double, ptr %5272, i64 %5365
  %5373 = load double, ptr %5372, align 8, !tbaa !44
  %5374 = add nsw i64 %5368, -1
  %5375 = icmp sgt i64 %5368, %5369
  br i1 %5375, label %5376, label %5497

5376:                                             ; preds = %5367
  %5377 = getelementptr inbounds nuw double, ptr %5247, i64 %5365
  %5378 = load double, ptr %5377, align 8, !tbaa !44
  %5379 = getelementptr inbounds nuw double, ptr %5245, i64 %5365
  %5380 = load double, ptr %5379, align 8, !tbaa !44
  %5381 = load ptr, ptr %5339, align 8
  %5382 = getelementptr i8, ptr %5381, i64 16
  %5383 = getelementptr double, ptr %5382, i64 %5365
  %5384 = fsub double %5378, %5371
  %5385 = getelementptr double, ptr %5381, i64 %5365
  %5386 = fsub double %5380, %5371
  %5387 = load ptr, ptr %5285, align 16, !tbaa !67
  %5388 = getelementptr double, ptr %5387, i64 %5365
  %5389 = load ptr, ptr %5289, align 8, !tbaa !51
  %5390 = getelementptr double, ptr %5389, i64 %5365
  %5391 = getelementptr <2 x double>, ptr %5385, i64 %5374
  br label %5419

5392:                                             ; preds = %5465
  %5393 = getelementptr inbounds nuw double, ptr %5275, i64 %5365
  %5394 = load double, ptr %5393, align 8, !tbaa !44
  %5395 = fcmp ogt double %5394, 0.000000e+00
  %5396 = fcmp ogt double %5476, 0.000000e+00
  %5397 = select i1 %5395, i1 %5396, i1 false
  br i1 %5397, label %5398, label %5497

5398:                                             ; preds = %5392
  %5399 = getelementptr inbounds nuw double, ptr %5340, i64 %5365
  %5400 = getelementptr inbounds nuw double, ptr %5341, i64 %5365
  %5401 = sub i64 %5368, %5369
  %5402 = add i64 %5369, 1
  %5403 = and i64 %5401, 1
  %5404 = icmp eq i64 %5403, 0
  br i1 %5404, label %5414, label %5405

5405:                                             ; preds = %5398
  %5406 = load double, ptr %5399, align 8, !tbaa !44
  %5407 = load double, ptr %5400, align 8, !tbaa !44
  %5408 = fmul double %5476, %5407
  %5409 = fdiv double %5406, %5408
  %5410 = getelementptr <2 x double>, ptr %5390, i64 %5369
  %5411 = load double, ptr %5410, align 8, !tbaa !44
  %5412 = fmul double %5411, %5409
  store double %5412, ptr %5410, align 8, !tbaa !44
  %5413 = add nsw i64 %5369, 1
  br label %5414

5414:                                             ; preds = %5405, %5398
  %5415 = phi i64 [ %5369, %5398 ], [ %5413, %5405 ]
  %5416 = icmp eq i64 %5368, %5402
  br i1 %5416, label %5497, label %5417

5417:                                             ; preds = %5414
  %5418 = getelementptr i8, ptr %5390, i64 16
  br label %5479

5419:                                             ; preds = %5465, %5376
  %5420 = phi double [ 0.000000e+00, %5376 ], [ %5476, %5465 ]
  %5421 = phi i64 [ %5374, %5376 ], [ %5477, %5465 ]
  %5422 = icmp eq i64 %5421, %5374
  br i1 %5422, label %5423, label %5426

5423:                                             ; preds = %5419
  %5424 = load double, ptr %5391, align 8, !tbaa !44
  %5425 = tail call noundef double @llvm.fmuladd.f64(double %5424, double %5384, double %5371)
  br label %5437

5426:                                             ; preds = %5419
  %5427 = getelementptr <2 x double>, ptr %5383, i64 %5421
  %5428 = load double, ptr %5427, align 8, !tbaa !44
  %5429 = tail call noundef double @llvm.fmuladd.f64(double %5428, double %5384, double %5371)
  %5430 = getelementptr <2 x double>, ptr %5385, i64 %5421
  %5431 = load double, ptr %5430, align 8, !tbaa !44
  %5432 = tail call noundef double @llvm.fmuladd.f64(double %5431, double %5384, double %5371)
  %5433 = tail call noundef double @llvm.fmuladd.f64(double %5428, double %5386, double %5371)
  %5434 = fcmp ult double %5433, %5429
  br i1 %5434, label %5435, label %5437

5435:                                             ; preds = %5426
  %5436 = add nsw i64 %5421, 1
  br label %5437

5437:                                             ; preds = %5435, %5426, %5423
  %5438 = phi double [ %5432, %5435 ], [ %5432, %5426 ], [ %5425, %5423 ]
  %5439 = phi double [ %5429, %5435 ], [ %5429, %5426 ], [ %5373, %5423 ]
  %5440 = phi i64 [ %5436, %5435 ], [ %5421, %5426 ], [ %5374, %5423 ]
  %5441 = icmp sgt i64 %5440, %5369
  br i1 %5441, label %5442, label %5465

5442:                                             ; preds = %5437
  %5443 = load ptr, ptr %5285, align 16
  %5444 = getelementptr double, ptr %5443, i64 %5365
  br label %5445

5445:                                             ; preds = %5460, %5442
  %5446 = phi i64 [ %5440, %5442 ], [ %5463, %5460 ]
  %5447 = phi double [ 0.000000e+00, %5442 ], [ %5462, %5460 ]
  %5448 = phi double [ %5439, %5442 ], [ %5461, %5460 ]
  %5449 = getelementptr <2 x double>, ptr %5385, i64 %5446
  %5450 = load double, ptr %5449, align 8, !tbaa !44
  %5451 = tail call noundef double @llvm.fmuladd.f64(double %5450, double %5386, double %5371)
  %5452 = fcmp ogt double %5451, %5438
  br i1 %5452, label %5453, label %5465

5453:                                             ; preds = %5445
  %5454 = fcmp ogt double %5448, %5451
  br i1 %5454, label %5455, label %5460

5455:                                             ; preds = %5453
  %5456 = getelementptr <2 x double>, ptr %5444, i64 %5446
  %5457 = load double, ptr %5456, align 8, !tbaa !44
  %5458 = fsub double %5448, %5451
  %5459 = tail call double @llvm.fmuladd.f64(double %5457, double %5458, double %5447)
  br label %5460

5460:                                             ; preds = %5455, %5453
  %5461 = phi double [ %5451, %5455 ], [ %5448, %5453 ]
  %5462 = phi double [ %5459, %5455 ], [ %5447, %5453 ]
  %5463 = add nsw i64 %5446, -1
  %5464 = icmp sgt i64 %5463, %5369
  br i1 %5464, label %5445, label %5465, !llvm.loop !191

5465:                                             ; preds = %5460, %5445, %5437
  %5466 = phi double [ %5439, %5437 ], [ %5448, %5445 ], [ %5461, %5460 ]
  %5467 = phi double [ 0.000000e+00, %5437 ], [ %5447, %5445 ], [ %5462, %5460 ]
  %5468 = phi i64 [ %5440, %5437 ], [ %5446, %5445 ], [ %5369, %5460 ]
  %5469 = getelementptr <2 x double>, ptr %5388, i64 %5468
  %5470 = load double, ptr %5469, align 8, !tbaa !44
  %5471 = fsub double %5466, %5438
  %5472 = tail call double @llvm.fmuladd.f64(double %5470, double %5471, double %5467)
  %5473 = fsub double %5439, %5438
  %5474 = fdiv double %5472, %5473
  %5475 = getelementptr <2 x double>, ptr %5390, i64 %5421
  store double %5474, ptr %5475, align 8, !tbaa !44
  %5476 = fadd double %5420, %5472
  %5477 = add nsw i64 %5421, -1
  %5478 = icmp sgt i64 %5421, %5369
  br i1 %5478, label %5419, label %5392, !llvm.loop !192

5479:                                             ; preds = %5479, %5417
  %5480 = phi i64 [ %5415, %5417 ], [ %5495, %5479 ]
  %5481 = load double, ptr %5399, align 8, !tbaa !44
  %5482 = load double, ptr %5400, align 8, !tbaa !44
  %5483 = fmul double %5476, %5482
  %5484 = fdiv double %5481, %5483
  %5485 = getelementptr <2 x double>, ptr %5390, i64 %5480
  %5486 = load double, ptr %5485, align 8, !tbaa !44
  %5487 = fmul double %5486, %5484
  store double %5487, ptr %5485, align 8, !tbaa !44
  %5488 = load double, ptr %5399, align 8, !tbaa !44
  %5489 = load double, ptr %5400, align 8, !tbaa !44
  %5490 = fmul double %5476, %5489
  %5491 = fdiv double %5488, %5490
  %5492 = getelementptr <2 x double>, ptr %5418, i64 %5480
  %5493 = load double, ptr %5492, align 8, !tbaa !44
  %5494 = fmul double %5493, %5491
  store double %5494, ptr %5492, align 8, !tbaa !44
  %5495 = add nsw i64 %5480, 2
  %5496 = icmp eq i64 %5495, %5368
  br i1 %5496, label %5497, label %5479, !llvm.loop !193

5497:                                             ; preds = %5414, %5479, %5392, %5367, %5362
  br i1 %5363, label %5362, label %5498, !llvm.loop !194

5498:                                             ; preds = %5321, %5497, %5233
  %5499 = load <2 x i64>, ptr %119, align 16, !tbaa !26
  %5500 = and <2 x i64> %5499, %5232
  %5501 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5500)
  %5502 = icmp eq i64 %5501, 0
  %5503 = getelementptr inbounds nuw i8, ptr %5236, i64 2392
  br i1 %5502, label %5504, label %5522

5504:                                             ; preds = %5498
  %5505 = getelementptr inbounds nuw i8, ptr %5236, i64 2400
  %5506 = getelementptr inbounds nuw i8, ptr %5236, i64 2408
  %5507 = load ptr, ptr %5506, align 8, !tbaa !36
  %5508 = load ptr, ptr %5505, align 8, !tbaa !36
  store ptr %5508, ptr %5506, align 8, !tbaa !36
  %5509 = load ptr, ptr %5503, align 8, !tbaa !36
  store ptr %5509, ptr %5505, align 8, !tbaa !36
  store ptr %5507, ptr %5503, align 8, !tbaa !36
  %5510 = getelementptr inbounds nuw i8, ptr %5236, i64 2488
  %5511 = getelementptr inbounds nuw i8, ptr %5236, i64 2496
  %5512 = getelementptr inbounds nuw i8, ptr %5236, i64 2504
  %5513 = load ptr, ptr %5512, align 8, !tbaa !36
  %5514 = load ptr, ptr %5511, align 8, !tbaa !36
  store ptr %5514, ptr %5512, align 8, !tbaa !36
  %5515 = load ptr, ptr %5510, align 8, !tbaa !36
  store ptr %5515, ptr %5511, align 8, !tbaa !36
  store ptr %5513, ptr %5510, align 8, !tbaa !36
  %5516 = getelementptr inbounds nuw i8, ptr %5236, i64 2536
  %5517 = getelementptr inbounds nuw i8, ptr %5236, i64 2544
  %5518 = getelementptr inbounds nuw i8, ptr %5236, i64 2552
  %5519 = load ptr, ptr %5518, align 8, !tbaa !36
  %5520 = load ptr, ptr %5517, align 8, !tbaa !36
  store ptr %5520, ptr %5518, align 8, !tbaa !36
  %5521 = load ptr, ptr %5516, align 8, !tbaa !36
  store ptr %5521, ptr %5517, align 8, !tbaa !36
  store ptr %5519, ptr %5516, align 8, !tbaa !36
  br label %5587

5522:                                             ; preds = %5498
  %5523 = load ptr, ptr %5503, align 8, !tbaa !84
  %5524 = getelementptr inbounds nuw i8, ptr %5236, i64 2400
  %5525 = load ptr, ptr %5524, align 16, !tbaa !49
  %5526 = getelementptr inbounds nuw i8, ptr %5236, i64 2408
  %5527 = load ptr, ptr %5526, align 8, !tbaa !66
  %5528 = load i64, ptr %128, align 16, !tbaa !21
  %5529 = icmp sgt i64 %5528, 0
  br i1 %5529, label %5530, label %5543

5530:                                             ; preds = %5522, %5530
  %5531 = phi i64 [ %5541, %5530 ], [ 0, %5522 ]
  %5532 = getelementptr inbounds nuw <2 x double>, ptr %5527, i64 %5531
  %5533 = getelementptr inbounds nuw <2 x double>, ptr %5525, i64 %5531
  %5534 = load <2 x double>, ptr %5533, align 16, !tbaa !26
  %5535 = load <2 x double>, ptr %5532, align 16, !tbaa !26
  %5536 = select <2 x i1> %5204, <2 x double> %5535, <2 x double> %5534
  store <2 x double> %5536, ptr %5532, align 16, !tbaa !26
  %5537 = getelementptr inbounds nuw <2 x double>, ptr %5523, i64 %5531
  %5538 = load <2 x double>, ptr %5537, align 16, !tbaa !26
  %5539 = load <2 x double>, ptr %5533, align 16, !tbaa !26
  %5540 = select <2 x i1> %5204, <2 x double> %5539, <2 x double> %5538
  store <2 x double> %5540, ptr %5533, align 16, !tbaa !26
  %5541 = add nuw nsw i64 %5531, 1
  %5542 = icmp eq i64 %5541, %5528
  br i1 %5542, label %5543, label %5530, !llvm.loop !195

5543:                                             ; preds = %5530, %5522
  %5544 = getelementptr inbounds nuw i8, ptr %5236, i64 2488
  %5545 = load ptr, ptr %5544, align 8, !tbaa !169
  %5546 = getelementptr inbounds nuw i8, ptr %5236, i64 2496
  %5547 = load ptr, ptr %5546, align 16, !tbaa !53
  %5548 = getelementptr inbounds nuw i8, ptr %5236, i64 2504
  %5549 = load ptr, ptr %5548, align 8, !tbaa !63
  %5550 = load i64, ptr %129, align 8, !tbaa !22
  %5551 = icmp sgt i64 %5550, 0
  br i1 %5551, label %5552, label %5587

5552:                                             ; preds = %5543, %5552
  %5553 = phi i64 [ %5563, %5552 ], [ 0, %5543 ]
  %5554 = getelementptr inbounds nuw <2 x double>, ptr %5549, i64 %5553
  %5555 = getelementptr inbounds nuw <2 x double>, ptr %5547, i64 %5553
  %5556 = load <2 x double>, ptr %5555, align 16, !tbaa !26
  %5557 = load <2 x double>, ptr %5554, align 16, !tbaa !26
  %5558 = select <2 x i1> %5204, <2 x double> %5557, <2 x double> %5556
  store <2 x double> %5558, ptr %5554, align 16, !tbaa !26
  %5559 = getelementptr inbounds nuw <2 x double>, ptr %5545, i64 %5553
  %5560 = load <2 x double>, ptr %5559, align 16, !tbaa !26
  %5561 = load <2 x double>, ptr %5555, align 16, !tbaa !26
  %5562 = select <2 x i1> %5204, <2 x double> %5561, <2 x double> %5560
  store <2 x double> %5562, ptr %5555, align 16, !tbaa !26
  %5563 = add nuw nsw i64 %5553, 1
  %5564 = icmp eq i64 %5563, %5550
  br i1 %5564, label %5565, label %5552, !llvm.loop !195

5565:                                             ; preds = %5552
  %5566 = load i64, ptr %129, align 8, !tbaa !22
  %5567 = getelementptr inbounds nuw i8, ptr %5236, i64 2536
  %5568 = load ptr, ptr %5567, align 8, !tbaa !126
  %5569 = getelementptr inbounds nuw i8, ptr %5236, i64 2544
  %5570 = load ptr, ptr %5569, align 16, !tbaa !52
  %5571 = getelementptr inbounds nuw i8, ptr %5236, i64 2552
  %5572 = load ptr, ptr %5571, align 8, !tbaa !62
  %5573 = icmp sgt i64 %5566, 0
  br i1 %5573, label %5574, label %5587

5574:                                             ; preds = %5565, %5574
  %5575 = phi i64 [ %5585, %5574 ], [ 0, %5565 ]
  %5576 = getelementptr inbounds nuw <2 x double>, ptr %5572, i64 %5575
  %5577 = getelementptr inbounds nuw <2 x double>, ptr %5570, i64 %5575
  %5578 = load <2 x double>, ptr %5577, align 16, !tbaa !26
  %5579 = load <2 x double>, ptr %5576, align 16, !tbaa !26
  %5580 = select <2 x i1> %5204, <2 x double> %5579, <2 x double> %5578
  store <2 x double> %5580, ptr %5576, align 16, !tbaa !26
  %5581 = getelementptr inbounds nuw <2 x double>, ptr %5568, i64 %5575
  %5582 = load <2 x double>, ptr %5581, align 16, !tbaa !26
  %5583 = load <2 x double>, ptr %5577, align 16, !tbaa !26
  %5584 = select <2 x i1> %5204, <2 x double> %5583, <2 x double> %5582
  store <2 x double> %5584, ptr %5577, align 16, !tbaa !26
  %5585 = add nuw nsw i64 %5575, 1
  %5586 = icmp eq i64 %5585, %5566
  br i1 %5586, label %5587, label %5574, !llvm.loop !195

5587:                                             ; preds = %5574, %5543, %5565, %5504
  %5588 = getelementptr inbounds nuw i8, ptr %5236, i64 1280
  %5589 = getelementptr inbounds nuw i8, ptr %5236, i64 1056
  %5590 = getelementptr inbounds nuw i8, ptr %5236, i64 832
  br label %5606

5591:                                             ; preds = %5606
  %5592 = getelementptr inbounds nuw i8, ptr %5236, i64 2336
  %5593 = getelementptr inbounds nuw i8, ptr %5236, i64 1632
  %5594 = load <2 x double>, ptr %5593, align 16, !tbaa !26
  %5595 = fcmp ogt <2 x double> %5594, zeroinitializer
  %5596 = load <2 x double>, ptr %148, align 16, !tbaa !26
  %5597 = fcmp une <2 x double> %5596, splat (double 2.000000e+00)
  %5598 = and <2 x i1> %5595, %5597
  %5599 = select <2 x i1> %5598, <2 x i64> %5074, <2 x i64> zeroinitializer
  %5600 = load <2 x i64>, ptr %5592, align 16, !tbaa !26
  %5601 = and <2 x i64> %5600, %5232
  %5602 = or disjoint <2 x i64> %5599, %5601
  store <2 x i64> %5602, ptr %5592, align 16, !tbaa !26
  %5603 = add nuw nsw i64 %5234, 1
  %5604 = load i64, ptr %166, align 8, !tbaa !20
  %5605 = icmp slt i64 %5603, %5604
  br i1 %5605, label %5233, label %5627, !llvm.loop !196

5606:                                             ; preds = %5606, %5587
  %5607 = phi i64 [ 0, %5587 ], [ %5625, %5606 ]
  %5608 = getelementptr inbounds nuw [14 x <2 x double>], ptr %5588, i64 0, i64 %5607
  %5609 = getelementptr inbounds nuw [14 x <2 x double>], ptr %5589, i64 0, i64 %5607
  %5610 = load <2 x double>, ptr %5609, align 16, !tbaa !26
  %5611 = load <2 x double>, ptr %5608, align 16, !tbaa !26
  %5612 = select <2 x i1> %5204, <2 x double> %5611, <2 x double> %5610
  store <2 x double> %5612, ptr %5608, align 16, !tbaa !26
  %5613 = getelementptr inbounds nuw [14 x <2 x double>], ptr %5590, i64 0, i64 %5607
  %5614 = load <2 x double>, ptr %5613, align 16, !tbaa !26
  %5615 = select <2 x i1> %5204, <2 x double> %5610, <2 x double> %5614
  store <2 x double> %5615, ptr %5609, align 16, !tbaa !26
  %5616 = or disjoint i64 %5607, 1
  %5617 = getelementptr inbounds nuw [14 x <2 x double>], ptr %5588, i64 0, i64 %5616
  %5618 = getelementptr inbounds nuw [14 x <2 x double>], ptr %5589, i64 0, i64 %5616
  %5619 = load <2 x double>, ptr %5618, align 16, !tbaa !26
  %5620 = load <2 x double>, ptr %5617, align 16, !tbaa !26
  %5621 = select <2 x i1> %5204, <2 x double> %5620, <2 x double> %5619
  store <2 x double> %5621, ptr %5617, align 16, !tbaa !26
  %5622 = getelementptr inbounds nuw [14 x <2 x double>], ptr %5590, i64 0, i64 %5616
  %5623 = load <2 x double>, ptr %5622, align 16, !tbaa !26
  %5624 = select <2 x i1> %5204, <2 x double> %5619, <2 x double> %5623
  store <2 x double> %5624, ptr %5618, align 16, !tbaa !26
  %5625 = add nuw nsw i64 %5607, 2
  %5626 = icmp eq i64 %5625, 14
  br i1 %5626, label %5591, label %5606, !llvm.loop !197

5627:                                             ; preds = %5591
  %5628 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %5629 = load <2 x double>, ptr %181, align 16, !tbaa !26
  %5630 = load <2 x double>, ptr %218, align 16, !tbaa !26
  %5631 = load <2 x double>, ptr %169, align 16, !tbaa !26
  %5632 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %5633 = fdiv <2 x double> %5630, %4752
  %5634 = icmp sgt i64 %5604, 0
  br label %5635

5635:                                             ; preds = %5203, %5627
  %5636 = phi <2 x double> [ %5633, %5627 ], [ %4762, %5203 ]
  %5637 = phi i1 [ %5634, %5627 ], [ false, %5203 ]
  %5638 = phi <2 x double> [ %5632, %5627 ], [ %4741, %5203 ]
  %5639 = phi <2 x double> [ %5631, %5627 ], [ %5062, %5203 ]
  %5640 = phi <2 x double> [ %5629, %5627 ], [ %4758, %5203 ]
  %5641 = phi <2 x double> [ %5628, %5627 ], [ %4756, %5203 ]
  %5642 = load <2 x double>, ptr %146, align 16, !tbaa !26
  %5643 = fadd <2 x double> %5642, %5641
  %5644 = select <2 x i1> %5204, <2 x double> %5642, <2 x double> %5643
  store <2 x double> %5644, ptr %146, align 16, !tbaa !26
  %5645 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %5646 = select <2 x i1> %5204, <2 x double> %5645, <2 x double> %5641
  store <2 x double> %5646, ptr %161, align 16, !tbaa !26
  %5647 = load <2 x double>, ptr %132, align 16, !tbaa !26
  %5648 = fadd <2 x double> %5647, splat (double 1.000000e+00)
  %5649 = select <2 x i1> %5204, <2 x double> %5647, <2 x double> %5648
  store <2 x double> %5649, ptr %132, align 16, !tbaa !26
  %5650 = load <2 x double>, ptr %134, align 16, !tbaa !26
  %5651 = fcmp olt <2 x double> %5650, %5641
  %5652 = select <2 x i1> %5204, <2 x i1> splat (i1 true), <2 x i1> %5651
  %5653 = select <2 x i1> %5652, <2 x double> %5650, <2 x double> %5641
  store <2 x double> %5653, ptr %134, align 16, !tbaa !26
  %5654 = fcmp une <2 x double> %5640, zeroinitializer
  %5655 = fcmp ueq <2 x double> %4751, zeroinitializer
  %5656 = or <2 x i1> %5655, %5654
  %5657 = fcmp olt <2 x double> %5636, splat (double 1.800000e+00)
  %5658 = select <2 x i1> %5657, <2 x double> %5636, <2 x double> splat (double 1.800000e+00)
  %5659 = select <2 x i1> %5656, <2 x double> splat (double 1.800000e+00), <2 x double> %5658
  %5660 = fcmp ogt <2 x double> %5659, splat (double 2.000000e-01)
  %5661 = select <2 x i1> %5660, <2 x double> %5659, <2 x double> splat (double 2.000000e-01)
  %5662 = fmul <2 x double> %5641, %5661
  %5663 = fmul <2 x double> %5641, splat (double 4.000000e+00)
  %5664 = fcmp olt <2 x double> %5639, %5663
  %5665 = select <2 x i1> %5664, <2 x double> %5639, <2 x double> %5663
  %5666 = fcmp ogt <2 x double> %5662, %5665
  %5667 = select <2 x i1> %5666, <2 x double> %5662, <2 x double> %5665
  %5668 = select <2 x i1> %5204, <2 x double> %5639, <2 x double> zeroinitializer
  store <2 x double> %5668, ptr %169, align 16, !tbaa !26
  %5669 = select <2 x i1> %5204, <2 x double> %5638, <2 x double> zeroinitializer
  store <2 x double> %5669, ptr %171, align 16, !tbaa !26
  %5670 = load <2 x i64>, ptr %162, align 16, !tbaa !26
  %5671 = and <2 x i64> %5670, %5232
  store <2 x i64> %5671, ptr %162, align 16, !tbaa !26
  %5672 = load <2 x i64>, ptr %163, align 16, !tbaa !26
  %5673 = and <2 x i64> %5672, %5232
  store <2 x i64> %5673, ptr %163, align 16, !tbaa !26
  %5674 = load <2 x double>, ptr %208, align 16, !tbaa !26
  %5675 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %5676 = select <2 x i1> %5204, <2 x double> %5675, <2 x double> %5674
  store <2 x double> %5676, ptr %156, align 16, !tbaa !26
  br i1 %5637, label %5677, label %5961

5677:                                             ; preds = %5635, %5954
  %5678 = phi i64 [ %5956, %5954 ], [ 0, %5635 ]
  %5679 = phi <2 x double> [ %5955, %5954 ], [ %5667, %5635 ]
  %5680 = load ptr, ptr %139, align 8, !tbaa !28
  %5681 = getelementptr inbounds nuw %struct.Piece, ptr %5680, i64 %5678
  %5682 = getelementptr inbounds nuw i8, ptr %5681, i64 1072
  %5683 = load <2 x double>, ptr %5682, align 16, !tbaa !26
  %5684 = getelementptr inbounds nuw i8, ptr %5681, i64 464
  %5685 = load <2 x double>, ptr %5684, align 16, !tbaa !26
  %5686 = fmul <2 x double> %5685, splat (double 1.001000e+00)
  %5687 = fcmp ole <2 x double> %5683, %5686
  %5688 = getelementptr inbounds nuw i8, ptr %5681, i64 496
  %5689 = load <2 x double>, ptr %5688, align 16, !tbaa !26
  %5690 = getelementptr inbounds nuw i8, ptr %5681, i64 1136
  %5691 = load <2 x double>, ptr %5690, align 16, !tbaa !26
  %5692 = fsub <2 x double> %5689, %5691
  %5693 = fmul <2 x double> %5689, splat (double 1.000000e-04)
  %5694 = fcmp ole <2 x double> %5692, %5693
  %5695 = getelementptr inbounds nuw i8, ptr %5681, i64 2320
  %5696 = load <2 x i64>, ptr %5695, align 16, !tbaa !26
  %5697 = and <2 x i64> %5696, %5074
  %5698 = getelementptr inbounds nuw i8, ptr %5681, i64 2144
  %5699 = load <2 x double>, ptr %5698, align 16, !tbaa !26
  %5700 = fcmp oeq <2 x double> %5699, zeroinitializer
  %5701 = and <2 x i1> %5687, %5700
  %5702 = fcmp oeq <2 x double> %5699, splat (double 1.000000e+00)
  %5703 = and <2 x i1> %5694, %5702
  %5704 = or <2 x i1> %5701, %5703
  %5705 = select <2 x i1> %5704, <2 x i64> %5697, <2 x i64> zeroinitializer
  %5706 = fadd <2 x double> %5699, splat (double 1.000000e+00)
  %5707 = icmp eq <2 x i64> %5705, zeroinitializer
  %5708 = select <2 x i1> %5707, <2 x double> %5699, <2 x double> %5706
  store <2 x double> %5708, ptr %5698, align 16, !tbaa !26
  %5709 = getelementptr inbounds nuw i8, ptr %5681, i64 2336
  %5710 = load <2 x i64>, ptr %5709, align 16, !tbaa !26
  %5711 = or <2 x i64> %5705, %5710
  store <2 x i64> %5711, ptr %5709, align 16, !tbaa !26
  %5712 = getelementptr inbounds nuw i8, ptr %5681, i64 320
  %5713 = load <2 x double>, ptr %5712, align 16, !tbaa !26
  %5714 = getelementptr inbounds nuw i8, ptr %5681, i64 1616
  %5715 = load <2 x double>, ptr %5714, align 16, !tbaa !26
  %5716 = getelementptr inbounds nuw i8, ptr %5681, i64 1632
  %5717 = load <2 x double>, ptr %5716, align 16, !tbaa !26
  %5718 = fadd <2 x double> %5715, %5717
  %5719 = fcmp ogt <2 x double> %5718, zeroinitializer
  %5720 = xor <2 x i64> %5696, splat (i64 -1)
  %5721 = and <2 x i64> %5074, %5720
  %5722 = fcmp une <2 x double> %5713, zeroinitializer
  %5723 = or <2 x i1> %5722, %5719
  %5724 = getelementptr inbounds nuw i8, ptr %5681, i64 1088
  %5725 = load <2 x double>, ptr %5724, align 16, !tbaa !26
  %5726 = load <2 x double>, ptr %219, align 16, !tbaa !26
  %5727 = fmul <2 x double> %5713, %5726
  %5728 = fcmp ogt <2 x double> %5727, splat (double 0x3E7AD7F29ABCAF48)
  %5729 = select <2 x i1> %5728, <2 x double> %5727, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5730 = fcmp ole <2 x double> %5725, %5729
  %5731 = select <2 x i1> %5730, <2 x i1> %5723, <2 x i1> zeroinitializer
  %5732 = select <2 x i1> %5731, <2 x i64> %5721, <2 x i64> zeroinitializer
  %5733 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5732)
  %5734 = icmp eq i64 %5733, 0
  br i1 %5734, label %5954, label %5735

5735:                                             ; preds = %5677
  %5736 = load i64, ptr %128, align 16, !tbaa !21
  %5737 = load i64, ptr %129, align 8, !tbaa !22
  %5738 = getelementptr inbounds nuw i8, ptr %5681, i64 1056
  %5739 = getelementptr inbounds nuw i8, ptr %5681, i64 1264
  %5740 = load <2 x double>, ptr %5739, align 16, !tbaa !26
  %5741 = getelementptr inbounds nuw i8, ptr %5681, i64 1600
  %5742 = load <2 x double>, ptr %5741, align 16, !tbaa !26
  %5743 = getelementptr inbounds nuw i8, ptr %5681, i64 304
  %5744 = load <2 x double>, ptr %5743, align 16, !tbaa !26
  %5745 = getelementptr inbounds nuw i8, ptr %5681, i64 2424
  %5746 = load ptr, ptr %5745, align 8, !tbaa !51
  %5747 = add nsw i64 %5736, -1
  %5748 = getelementptr inbounds <2 x double>, ptr %5746, i64 %5747
  %5749 = load <2 x double>, ptr %5748, align 16, !tbaa !26
  %5750 = fmul <2 x double> %5744, %5749
  %5751 = fneg <2 x double> %5725
  %5752 = fdiv <2 x double> %5751, %5750
  %5753 = fcmp ogt <2 x double> %5752, splat (double 0x3E7AD7F29ABCAF48)
  %5754 = select <2 x i1> %5753, <2 x double> %5752, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5755 = load <2 x double>, ptr %5681, align 16, !tbaa !26
  %5756 = fsub <2 x double> %5755, %5754
  %5757 = getelementptr inbounds nuw i8, ptr %5681, i64 736
  %5758 = load <2 x double>, ptr %5757, align 16, !tbaa !26
  %5759 = getelementptr inbounds nuw i8, ptr %5681, i64 752
  %5760 = load <2 x double>, ptr %5759, align 16, !tbaa !26
  %5761 = getelementptr inbounds nuw i8, ptr %5681, i64 768
  %5762 = load <2 x double>, ptr %5761, align 16, !tbaa !26
  %5763 = getelementptr inbounds nuw i8, ptr %5681, i64 784
  %5764 = load <2 x double>, ptr %5763, align 16, !tbaa !26
  %5765 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5756, <2 x double> %5764, <2 x double> %5762)
  %5766 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5756, <2 x double> %5765, <2 x double> %5760)
  %5767 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5756, <2 x double> %5766, <2 x double> %5758)
  %5768 = fsub <2 x double> %5740, %5767
  %5769 = getelementptr inbounds nuw i8, ptr %5681, i64 2400
  %5770 = load ptr, ptr %5769, align 16, !tbaa !49
  %5771 = getelementptr inbounds <2 x double>, ptr %5770, i64 %5747
  %5772 = load <2 x double>, ptr %5771, align 16, !tbaa !26
  %5773 = getelementptr inbounds nuw i8, ptr %5681, i64 2408
  %5774 = load ptr, ptr %5773, align 8, !tbaa !66
  %5775 = getelementptr inbounds <2 x double>, ptr %5774, i64 %5747
  %5776 = load <2 x double>, ptr %5775, align 16, !tbaa !26
  %5777 = sitofp i64 %5737 to double
  %5778 = insertelement <2 x double> poison, double %5777, i64 0
  %5779 = shufflevector <2 x double> %5778, <2 x double> poison, <2 x i32> zeroinitializer
  %5780 = fdiv <2 x double> %5754, %5779
  %5781 = icmp sgt i64 %5736, 1
  br i1 %5781, label %5782, label %5787

5782:                                             ; preds = %5735
  %5783 = getelementptr inbounds nuw i8, ptr %5681, i64 2368
  %5784 = getelementptr inbounds nuw i8, ptr %5681, i64 480
  %5785 = getelementptr inbounds nuw i8, ptr %5681, i64 2456
  %5786 = icmp eq <2 x i64> %5732, zeroinitializer
  br label %5795

5787:                                             ; preds = %5818, %5735
  %5788 = icmp sgt i64 %5737, 0
  br i1 %5788, label %5789, label %5852

5789:                                             ; preds = %5787
  %5790 = getelementptr inbounds nuw i8, ptr %5681, i64 2544
  %5791 = icmp eq <2 x i64> %5732, zeroinitializer
  %5792 = getelementptr inbounds nuw i8, ptr %5681, i64 2552
  %5793 = getelementptr inbounds nuw i8, ptr %5681, i64 2496
  %5794 = getelementptr inbounds nuw i8, ptr %5681, i64 2504
  br label %5923

5795:                                             ; preds = %5782, %5818
  %5796 = phi <2 x double> [ %5767, %5782 ], [ %5819, %5818 ]
  %5797 = phi <2 x double> [ %5772, %5782 ], [ %5827, %5818 ]
  %5798 = phi <2 x double> [ %5776, %5782 ], [ %5830, %5818 ]
  %5799 = phi <2 x double> [ %5749, %5782 ], [ %5833, %5818 ]
  %5800 = phi i64 [ %5747, %5782 ], [ %5825, %5818 ]
  %5801 = load i64, ptr %5783, align 16, !tbaa !31
  %5802 = icmp slt i64 %5800, %5801
  br i1 %5802, label %5803, label %5809

5803:                                             ; preds = %5795
  %5804 = load ptr, ptr %5785, align 8, !tbaa !77
  %5805 = getelementptr inbounds nuw <2 x double>, ptr %5804, i64 %5800
  %5806 = load <2 x double>, ptr %5805, align 16, !tbaa !26
  %5807 = load <2 x double>, ptr %5784, align 16, !tbaa !26
  %5808 = fmul <2 x double> %5806, %5807
  br label %5818

5809:                                             ; preds = %5795
  %5810 = load <2 x double>, ptr %5784, align 16, !tbaa !26
  %5811 = load ptr, ptr %5785, align 8, !tbaa !77
  %5812 = getelementptr inbounds nuw <2 x double>, ptr %5811, i64 %5800
  %5813 = load <2 x double>, ptr %5812, align 16, !tbaa !26
  %5814 = fsub <2 x double> %5767, %5810
  %5815 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5813, <2 x double> %5814, <2 x double> %5810)
  %5816 = fsub <2 x double> %5740, %5810
  %5817 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5813, <2 x double> %5816, <2 x double> %5810)
  br label %5818

5818:                                             ; preds = %5809, %5803
  %5819 = phi <2 x double> [ %5808, %5803 ], [ %5815, %5809 ]
  %5820 = phi <2 x double> [ %5808, %5803 ], [ %5817, %5809 ]
  %5821 = fsub <2 x double> %5820, %5819
  %5822 = fsub <2 x double> %5796, %5819
  %5823 = fdiv <2 x double> %5821, %5822
  %5824 = load ptr, ptr %5769, align 16, !tbaa !49
  %5825 = add nsw i64 %5800, -1
  %5826 = getelementptr inbounds nuw <2 x double>, ptr %5824, i64 %5825
  %5827 = load <2 x double>, ptr %5826, align 16, !tbaa !26
  %5828 = load ptr, ptr %5773, align 8, !tbaa !66
  %5829 = getelementptr inbounds nuw <2 x double>, ptr %5828, i64 %5825
  %5830 = load <2 x double>, ptr %5829, align 16, !tbaa !26
  %5831 = load ptr, ptr %5745, align 8, !tbaa !51
  %5832 = getelementptr inbounds nuw <2 x double>, ptr %5831, i64 %5825
  %5833 = load <2 x double>, ptr %5832, align 16, !tbaa !26
  %5834 = getelementptr inbounds nuw <2 x double>, ptr %5824, i64 %5800
  %5835 = fsub <2 x double> %5827, %5797
  %5836 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5835, <2 x double> %5823, <2 x double> %5797)
  %5837 = load <2 x double>, ptr %5834, align 16, !tbaa !26
  %5838 = select <2 x i1> %5786, <2 x double> %5837, <2 x double> %5836
  store <2 x double> %5838, ptr %5834, align 16, !tbaa !26
  %5839 = load ptr, ptr %5773, align 8, !tbaa !66
  %5840 = getelementptr inbounds nuw <2 x double>, ptr %5839, i64 %5800
  %5841 = fsub <2 x double> %5830, %5798
  %5842 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5841, <2 x double> %5823, <2 x double> %5798)
  %5843 = load <2 x double>, ptr %5840, align 16, !tbaa !26
  %5844 = select <2 x i1> %5786, <2 x double> %5843, <2 x double> %5842
  store <2 x double> %5844, ptr %5840, align 16, !tbaa !26
  %5845 = load ptr, ptr %5745, align 8, !tbaa !51
  %5846 = getelementptr inbounds nuw <2 x double>, ptr %5845, i64 %5800
  %5847 = fsub <2 x double> %5833, %5799
  %5848 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5847, <2 x double> %5823, <2 x double> %5799)
  %5849 = load <2 x double>, ptr %5846, align 16, !tbaa !26
  %5850 = select <2 x i1> %5786, <2 x double> %5849, <2 x double> %5848
  store <2 x double> %5850, ptr %5846, align 16, !tbaa !26
  %5851 = icmp sgt i64 %5800, 1
  br i1 %5851, label %5795, label %5787, !llvm.loop !198

5852:                                             ; preds = %5923, %5787
  %5853 = getelementptr inbounds nuw i8, ptr %5681, i64 2544
  %5854 = load ptr, ptr %5853, align 16, !tbaa !52
  %5855 = getelementptr inbounds <2 x double>, ptr %5854, i64 %5737
  %5856 = getelementptr inbounds nuw i8, ptr %5681, i64 448
  %5857 = load <2 x double>, ptr %5856, align 16, !tbaa !26
  %5858 = load <2 x double>, ptr %5855, align 16, !tbaa !26
  %5859 = icmp eq <2 x i64> %5732, zeroinitializer
  %5860 = select <2 x i1> %5859, <2 x double> %5858, <2 x double> %5857
  store <2 x double> %5860, ptr %5855, align 16, !tbaa !26
  %5861 = getelementptr inbounds nuw i8, ptr %5681, i64 2552
  %5862 = load ptr, ptr %5861, align 8, !tbaa !62
  %5863 = getelementptr inbounds <2 x double>, ptr %5862, i64 %5737
  %5864 = load <2 x double>, ptr %5856, align 16, !tbaa !26
  %5865 = load <2 x double>, ptr %5863, align 16, !tbaa !26
  %5866 = select <2 x i1> %5859, <2 x double> %5865, <2 x double> %5864
  store <2 x double> %5866, ptr %5863, align 16, !tbaa !26
  %5867 = getelementptr inbounds nuw i8, ptr %5681, i64 1280
  %5868 = fneg <2 x double> %5768
  %5869 = getelementptr inbounds nuw i8, ptr %5681, i64 288
  %5870 = load <2 x double>, ptr %5738, align 16, !tbaa !26
  %5871 = select <2 x i1> %5859, <2 x double> %5870, <2 x double> %5756
  store <2 x double> %5871, ptr %5738, align 16, !tbaa !26
  %5872 = getelementptr inbounds nuw i8, ptr %5681, i64 1072
  %5873 = load <2 x double>, ptr %5872, align 16, !tbaa !26
  %5874 = select <2 x i1> %5859, <2 x double> %5873, <2 x double> %5767
  store <2 x double> %5874, ptr %5872, align 16, !tbaa !26
  %5875 = getelementptr inbounds nuw i8, ptr %5681, i64 1264
  %5876 = load <2 x double>, ptr %5875, align 16, !tbaa !26
  %5877 = select <2 x i1> %5859, <2 x double> %5876, <2 x double> %5767
  store <2 x double> %5877, ptr %5875, align 16, !tbaa !26
  %5878 = getelementptr inbounds nuw i8, ptr %5681, i64 1104
  %5879 = load <2 x double>, ptr %5878, align 16, !tbaa !26
  %5880 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5868, <2 x double> %5750, <2 x double> %5879)
  %5881 = select <2 x i1> %5859, <2 x double> %5879, <2 x double> %5880
  store <2 x double> %5881, ptr %5878, align 16, !tbaa !26
  %5882 = getelementptr inbounds nuw i8, ptr %5681, i64 1088
  %5883 = load <2 x double>, ptr %5882, align 16, !tbaa !26
  %5884 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5768, <2 x double> %5750, <2 x double> %5883)
  %5885 = select <2 x i1> %5859, <2 x double> %5883, <2 x double> %5884
  store <2 x double> %5885, ptr %5882, align 16, !tbaa !26
  %5886 = getelementptr inbounds nuw i8, ptr %5681, i64 1168
  %5887 = load <2 x double>, ptr %5886, align 16, !tbaa !26
  %5888 = load <2 x double>, ptr %5869, align 16, !tbaa !26
  %5889 = fneg <2 x double> %5888
  %5890 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5889, <2 x double> %5742, <2 x double> %5772)
  %5891 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5768, <2 x double> %5890, <2 x double> %5887)
  %5892 = select <2 x i1> %5859, <2 x double> %5887, <2 x double> %5891
  store <2 x double> %5892, ptr %5886, align 16, !tbaa !26
  %5893 = load <2 x double>, ptr %5867, align 16, !tbaa !26
  %5894 = select <2 x i1> %5859, <2 x double> %5893, <2 x double> %5756
  store <2 x double> %5894, ptr %5867, align 16, !tbaa !26
  %5895 = getelementptr inbounds nuw i8, ptr %5681, i64 1296
  %5896 = load <2 x double>, ptr %5895, align 16, !tbaa !26
  %5897 = select <2 x i1> %5859, <2 x double> %5896, <2 x double> %5767
  store <2 x double> %5897, ptr %5895, align 16, !tbaa !26
  %5898 = getelementptr inbounds nuw i8, ptr %5681, i64 1488
  %5899 = load <2 x double>, ptr %5898, align 16, !tbaa !26
  %5900 = select <2 x i1> %5859, <2 x double> %5899, <2 x double> %5767
  store <2 x double> %5900, ptr %5898, align 16, !tbaa !26
  %5901 = getelementptr inbounds nuw i8, ptr %5681, i64 1328
  %5902 = load <2 x double>, ptr %5901, align 16, !tbaa !26
  %5903 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5868, <2 x double> %5750, <2 x double> %5902)
  %5904 = select <2 x i1> %5859, <2 x double> %5902, <2 x double> %5903
  store <2 x double> %5904, ptr %5901, align 16, !tbaa !26
  %5905 = getelementptr inbounds nuw i8, ptr %5681, i64 1312
  %5906 = load <2 x double>, ptr %5905, align 16, !tbaa !26
  %5907 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5768, <2 x double> %5750, <2 x double> %5906)
  %5908 = select <2 x i1> %5859, <2 x double> %5906, <2 x double> %5907
  store <2 x double> %5908, ptr %5905, align 16, !tbaa !26
  %5909 = getelementptr inbounds nuw i8, ptr %5681, i64 1392
  %5910 = load <2 x double>, ptr %5909, align 16, !tbaa !26
  %5911 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5889, <2 x double> %5742, <2 x double> %5776)
  %5912 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5768, <2 x double> %5911, <2 x double> %5910)
  %5913 = select <2 x i1> %5859, <2 x double> %5910, <2 x double> %5912
  store <2 x double> %5913, ptr %5909, align 16, !tbaa !26
  %5914 = load <2 x i64>, ptr %5695, align 16, !tbaa !26
  %5915 = or <2 x i64> %5914, %5732
  store <2 x i64> %5915, ptr %5695, align 16, !tbaa !26
  %5916 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %5917 = fmul <2 x double> %5916, splat (double 4.000000e+01)
  %5918 = fcmp olt <2 x double> %5679, %5917
  %5919 = select <2 x i1> %5918, <2 x double> %5679, <2 x double> %5917
  %5920 = icmp ne <2 x i64> %5732, zeroinitializer
  %5921 = select <2 x i1> %5722, <2 x i1> %5920, <2 x i1> zeroinitializer
  %5922 = select <2 x i1> %5921, <2 x double> %5919, <2 x double> %5679
  br label %5954

5923:                                             ; preds = %5789, %5923
  %5924 = phi i64 [ 0, %5789 ], [ %5952, %5923 ]
  %5925 = uitofp nneg i64 %5924 to double
  %5926 = insertelement <2 x double> poison, double %5925, i64 0
  %5927 = shufflevector <2 x double> %5926, <2 x double> poison, <2 x i32> zeroinitializer
  %5928 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5927, <2 x double> %5780, <2 x double> %5756)
  %5929 = load <2 x double>, ptr %5757, align 16, !tbaa !26
  %5930 = load <2 x double>, ptr %5759, align 16, !tbaa !26
  %5931 = load <2 x double>, ptr %5761, align 16, !tbaa !26
  %5932 = load <2 x double>, ptr %5763, align 16, !tbaa !26
  %5933 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5928, <2 x double> %5932, <2 x double> %5931)
  %5934 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5928, <2 x double> %5933, <2 x double> %5930)
  %5935 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5928, <2 x double> %5934, <2 x double> %5929)
  %5936 = load ptr, ptr %5790, align 16, !tbaa !52
  %5937 = getelementptr inbounds nuw <2 x double>, ptr %5936, i64 %5924
  %5938 = load <2 x double>, ptr %5937, align 16, !tbaa !26
  %5939 = select <2 x i1> %5791, <2 x double> %5938, <2 x double> %5935
  store <2 x double> %5939, ptr %5937, align 16, !tbaa !26
  %5940 = load ptr, ptr %5792, align 8, !tbaa !62
  %5941 = getelementptr inbounds nuw <2 x double>, ptr %5940, i64 %5924
  %5942 = load <2 x double>, ptr %5941, align 16, !tbaa !26
  %5943 = select <2 x i1> %5791, <2 x double> %5942, <2 x double> %5935
  store <2 x double> %5943, ptr %5941, align 16, !tbaa !26
  %5944 = load ptr, ptr %5793, align 16, !tbaa !53
  %5945 = getelementptr inbounds nuw <2 x double>, ptr %5944, i64 %5924
  %5946 = load <2 x double>, ptr %5945, align 16, !tbaa !26
  %5947 = select <2 x i1> %5791, <2 x double> %5946, <2 x double> %5742
  store <2 x double> %5947, ptr %5945, align 16, !tbaa !26
  %5948 = load ptr, ptr %5794, align 8, !tbaa !63
  %5949 = getelementptr inbounds nuw <2 x double>, ptr %5948, i64 %5924
  %5950 = load <2 x double>, ptr %5949, align 16, !tbaa !26
  %5951 = select <2 x i1> %5791, <2 x double> %5950, <2 x double> %5742
  store <2 x double> %5951, ptr %5949, align 16, !tbaa !26
  %5952 = add nuw nsw i64 %5924, 1
  %5953 = icmp eq i64 %5952, %5737
  br i1 %5953, label %5852, label %5923, !llvm.loop !199

5954:                                             ; preds = %5852, %5677
  %5955 = phi <2 x double> [ %5922, %5852 ], [ %5679, %5677 ]
  %5956 = add nuw nsw i64 %5678, 1
  %5957 = load i64, ptr %166, align 8, !tbaa !20
  %5958 = icmp slt i64 %5956, %5957
  br i1 %5958, label %5677, label %5959, !llvm.loop !200

5959:                                             ; preds = %5954
  %5960 = load <2 x double>, ptr %146, align 16, !tbaa !26
  br label %5961

5961:                                             ; preds = %5959, %5635
  %5962 = phi <2 x double> [ %5644, %5635 ], [ %5960, %5959 ]
  %5963 = phi <2 x double> [ %5667, %5635 ], [ %5955, %5959 ]
  %5964 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %5965 = select <2 x i1> %5204, <2 x double> %5964, <2 x double> %5963
  store <2 x double> %5965, ptr %149, align 16, !tbaa !26
  %5966 = load ptr, ptr %224, align 16, !tbaa !40
  %5967 = getelementptr inbounds nuw i8, ptr %5966, i64 16
  store <2 x double> %5962, ptr %5966, align 16, !tbaa !26
  %5968 = load <2 x double>, ptr %225, align 16, !tbaa !26
  %5969 = getelementptr inbounds nuw i8, ptr %5966, i64 32
  store <2 x double> %5968, ptr %5967, align 16, !tbaa !26
  %5970 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %5971 = getelementptr inbounds nuw i8, ptr %5966, i64 48
  store <2 x double> %5970, ptr %5969, align 16, !tbaa !26
  %5972 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %5973 = getelementptr inbounds nuw i8, ptr %5966, i64 64
  store <2 x double> %5972, ptr %5971, align 16, !tbaa !26
  %5974 = load i64, ptr %166, align 8, !tbaa !20
  %5975 = icmp sgt i64 %5974, 0
  br i1 %5975, label %5980, label %5976

5976:                                             ; preds = %5980, %5961
  %5977 = phi ptr [ %5973, %5961 ], [ %5986, %5980 ]
  %5978 = load i64, ptr %137, align 8, !tbaa !46
  %5979 = icmp eq i64 %5978, 0
  br i1 %5979, label %6143, label %5990

5980:                                             ; preds = %5961, %5980
  %5981 = phi ptr [ %5986, %5980 ], [ %5973, %5961 ]
  %5982 = phi i64 [ %5987, %5980 ], [ 0, %5961 ]
  %5983 = load ptr, ptr %139, align 8, !tbaa !28
  %5984 = getelementptr inbounds nuw %struct.Piece, ptr %5983, i64 %5982, i32 41
  %5985 = load <2 x double>, ptr %5984, align 16, !tbaa !26
  %5986 = getelementptr inbounds nuw i8, ptr %5981, i64 16
  store <2 x double> %5985, ptr %5981, align 16, !tbaa !26
  %5987 = add nuw nsw i64 %5982, 1
  %5988 = load i64, ptr %166, align 8, !tbaa !20
  %5989 = icmp slt i64 %5987, %5988
  br i1 %5989, label %5980, label %5976, !llvm.loop !201

5990:                                             ; preds = %5976
  %5991 = load <2 x double>, ptr %209, align 16, !tbaa !26
  %5992 = getelementptr inbounds nuw i8, ptr %5977, i64 16
  store <2 x double> %5991, ptr %5977, align 16, !tbaa !26
  %5993 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %5994 = getelementptr inbounds nuw i8, ptr %5977, i64 32
  store <2 x double> %5993, ptr %5992, align 16, !tbaa !26
  %5995 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %5996 = load <2 x double>, ptr %204, align 16, !tbaa !26
  %5997 = fsub <2 x double> %5995, %5996
  %5998 = fcmp ogt <2 x double> %5997, zeroinitializer
  %5999 = select <2 x i1> %5998, <2 x double> %5997, <2 x double> zeroinitializer
  store <2 x double> %5999, ptr %5994, align 16, !tbaa !26
  %6000 = load i64, ptr %166, align 8, !tbaa !20
  %6001 = icmp sgt i64 %6000, 0
  br i1 %6001, label %6002, label %6143

6002:                                             ; preds = %5990
  %6003 = getelementptr inbounds nuw i8, ptr %5977, i64 48
  br label %6004

6004:                                             ; preds = %6002, %6004
  %6005 = phi ptr [ %6139, %6004 ], [ %6003, %6002 ]
  %6006 = phi i64 [ %6140, %6004 ], [ 0, %6002 ]
  %6007 = load ptr, ptr %139, align 8, !tbaa !28
  %6008 = getelementptr inbounds nuw %struct.Piece, ptr %6007, i64 %6006
  %6009 = getelementptr inbounds nuw i8, ptr %6008, i64 2400
  %6010 = load ptr, ptr %6009, align 16, !tbaa !49
  %6011 = load i64, ptr %128, align 16, !tbaa !21
  %6012 = getelementptr <2 x double>, ptr %6010, i64 %6011
  %6013 = getelementptr i8, ptr %6012, i64 -16
  %6014 = load <2 x double>, ptr %6013, align 16, !tbaa !26
  %6015 = getelementptr inbounds nuw i8, ptr %6008, i64 176
  %6016 = load <2 x double>, ptr %6015, align 16, !tbaa !26, !noalias !202
  %6017 = getelementptr inbounds nuw i8, ptr %6008, i64 192
  %6018 = load <2 x double>, ptr %6017, align 16, !tbaa !26, !noalias !202
  %6019 = getelementptr inbounds nuw i8, ptr %6008, i64 208
  %6020 = load <2 x double>, ptr %6019, align 16, !tbaa !26, !noalias !202
  %6021 = getelementptr inbounds nuw i8, ptr %6008, i64 224
  %6022 = load <2 x double>, ptr %6021, align 16, !tbaa !26, !noalias !202
  %6023 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6014, <2 x double> %6022, <2 x double> %6020)
  %6024 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6014, <2 x double> %6023, <2 x double> %6018)
  %6025 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6014, <2 x double> %6024, <2 x double> %6016)
  %6026 = fmul <2 x double> %6014, %6025
  %6027 = getelementptr inbounds nuw i8, ptr %6008, i64 48
  %6028 = load <2 x double>, ptr %6027, align 16, !tbaa !26, !noalias !202
  %6029 = getelementptr inbounds nuw i8, ptr %6008, i64 64
  %6030 = load <2 x double>, ptr %6029, align 16, !tbaa !26, !noalias !202
  %6031 = getelementptr inbounds nuw i8, ptr %6008, i64 80
  %6032 = load <2 x double>, ptr %6031, align 16, !tbaa !26, !noalias !202
  %6033 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6026, <2 x double> %6032, <2 x double> %6030)
  %6034 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6026, <2 x double> %6033, <2 x double> %6028)
  %6035 = fdiv <2 x double> splat (double 1.000000e+00), %6034
  %6036 = fmul <2 x double> %6032, %6026
  %6037 = fmul <2 x double> %6036, splat (double 0x3FD5555555555555)
  %6038 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6030, <2 x double> splat (double 5.000000e-01), <2 x double> %6037)
  %6039 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6026, <2 x double> %6038, <2 x double> %6028)
  %6040 = fmul <2 x double> %6026, %6039
  %6041 = fsub <2 x double> %6014, %6040
  %6042 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6041, <2 x double> %6035, <2 x double> %6026)
  %6043 = getelementptr inbounds nuw i8, ptr %6008, i64 2048
  %6044 = load <2 x double>, ptr %6043, align 16, !tbaa !26
  %6045 = getelementptr inbounds nuw i8, ptr %6008, i64 1600
  %6046 = load <2 x double>, ptr %6045, align 16, !tbaa !26
  %6047 = fsub <2 x double> %6046, %6042
  %6048 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6044, <2 x double> %6047, <2 x double> %6042)
  %6049 = getelementptr inbounds nuw i8, ptr %6005, i64 16
  store <2 x double> %6048, ptr %6005, align 16, !tbaa !26
  %6050 = getelementptr inbounds nuw i8, ptr %6008, i64 1936
  %6051 = load <2 x double>, ptr %6050, align 16, !tbaa !26
  %6052 = getelementptr inbounds nuw i8, ptr %6005, i64 32
  store <2 x double> %6051, ptr %6049, align 16, !tbaa !26
  %6053 = load <2 x double>, ptr %6008, align 16, !tbaa !26
  %6054 = getelementptr inbounds nuw i8, ptr %6008, i64 1056
  %6055 = load <2 x double>, ptr %6054, align 16, !tbaa !26
  %6056 = fsub <2 x double> %6053, %6055
  %6057 = getelementptr inbounds nuw i8, ptr %6005, i64 48
  store <2 x double> %6056, ptr %6052, align 16, !tbaa !26
  %6058 = getelementptr inbounds nuw i8, ptr %6008, i64 1136
  %6059 = load <2 x double>, ptr %6058, align 16, !tbaa !26
  %6060 = getelementptr inbounds nuw i8, ptr %6005, i64 64
  store <2 x double> %6059, ptr %6057, align 16, !tbaa !26
  %6061 = getelementptr inbounds nuw i8, ptr %6008, i64 1120
  %6062 = load <2 x double>, ptr %6061, align 16, !tbaa !26
  %6063 = getelementptr inbounds nuw i8, ptr %6005, i64 80
  store <2 x double> %6062, ptr %6060, align 16, !tbaa !26
  %6064 = getelementptr inbounds nuw i8, ptr %6008, i64 1088
  %6065 = load <2 x double>, ptr %6064, align 16, !tbaa !26
  %6066 = getelementptr inbounds nuw i8, ptr %6005, i64 96
  store <2 x double> %6065, ptr %6063, align 16, !tbaa !26
  %6067 = getelementptr inbounds nuw i8, ptr %6008, i64 1152
  %6068 = load <2 x double>, ptr %6067, align 16, !tbaa !26
  %6069 = getelementptr inbounds nuw i8, ptr %6005, i64 112
  store <2 x double> %6068, ptr %6066, align 16, !tbaa !26
  %6070 = getelementptr inbounds nuw i8, ptr %6008, i64 2496
  %6071 = load i64, ptr %129, align 8, !tbaa !22
  %6072 = sitofp i64 %6071 to double
  %6073 = tail call double @llvm.fmuladd.f64(double %6072, double 7.500000e-01, double -5.000000e-01)
  %6074 = fcmp ogt double %6073, 0.000000e+00
  %6075 = select i1 %6074, double %6073, double 0.000000e+00
  %6076 = fptosi double %6075 to i64
  %6077 = add nsw i64 %6071, -2
  %6078 = tail call i64 @llvm.smin.i64(i64 %6077, i64 %6076)
  %6079 = sitofp i64 %6078 to double
  %6080 = fsub double %6073, %6079
  %6081 = fsub double 1.000000e+00, %6080
  %6082 = insertelement <2 x double> poison, double %6081, i64 0
  %6083 = shufflevector <2 x double> %6082, <2 x double> poison, <2 x i32> zeroinitializer
  %6084 = load ptr, ptr %6070, align 16, !tbaa !53
  %6085 = getelementptr inbounds <2 x double>, ptr %6084, i64 %6078
  %6086 = load <2 x double>, ptr %6085, align 16, !tbaa !26
  %6087 = insertelement <2 x double> poison, double %6080, i64 0
  %6088 = shufflevector <2 x double> %6087, <2 x double> poison, <2 x i32> zeroinitializer
  %6089 = getelementptr i8, ptr %6085, i64 16
  %6090 = load <2 x double>, ptr %6089, align 16, !tbaa !26
  %6091 = fmul <2 x double> %6090, %6088
  %6092 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6083, <2 x double> %6086, <2 x double> %6091)
  store <2 x double> %6092, ptr %6069, align 16, !tbaa !26
  %6093 = load i64, ptr %129, align 8, !tbaa !22
  %6094 = sitofp i64 %6093 to double
  %6095 = tail call double @llvm.fmuladd.f64(double %6094, double 5.000000e-01, double -5.000000e-01)
  %6096 = fcmp ogt double %6095, 0.000000e+00
  %6097 = select i1 %6096, double %6095, double 0.000000e+00
  %6098 = fptosi double %6097 to i64
  %6099 = add nsw i64 %6093, -2
  %6100 = tail call i64 @llvm.smin.i64(i64 %6099, i64 %6098)
  %6101 = sitofp i64 %6100 to double
  %6102 = fsub double %6095, %6101
  %6103 = fsub double 1.000000e+00, %6102
  %6104 = insertelement <2 x double> poison, double %6103, i64 0
  %6105 = shufflevector <2 x double> %6104, <2 x double> poison, <2 x i32> zeroinitializer
  %6106 = load ptr, ptr %6070, align 16, !tbaa !53
  %6107 = getelementptr inbounds <2 x double>, ptr %6106, i64 %6100
  %6108 = load <2 x double>, ptr %6107, align 16, !tbaa !26
  %6109 = insertelement <2 x double> poison, double %6102, i64 0
  %6110 = shufflevector <2 x double> %6109, <2 x double> poison, <2 x i32> zeroinitializer
  %6111 = getelementptr i8, ptr %6107, i64 16
  %6112 = load <2 x double>, ptr %6111, align 16, !tbaa !26
  %6113 = fmul <2 x double> %6112, %6110
  %6114 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6105, <2 x double> %6108, <2 x double> %6113)
  %6115 = getelementptr inbounds nuw i8, ptr %6005, i64 128
  store <2 x double> %6114, ptr %6115, align 16, !tbaa !26
  %6116 = load i64, ptr %129, align 8, !tbaa !22
  %6117 = sitofp i64 %6116 to double
  %6118 = tail call double @llvm.fmuladd.f64(double %6117, double 2.500000e-01, double -5.000000e-01)
  %6119 = fcmp ogt double %6118, 0.000000e+00
  %6120 = select i1 %6119, double %6118, double 0.000000e+00
  %6121 = fptosi double %6120 to i64
  %6122 = add nsw i64 %6116, -2
  %6123 = tail call i64 @llvm.smin.i64(i64 %6122, i64 %6121)
  %6124 = sitofp i64 %6123 to double
  %6125 = fsub double %6118, %6124
  %6126 = fsub double 1.000000e+00, %6125
  %6127 = insertelement <2 x double> poison, double %6126, i64 0
  %6128 = shufflevector <2 x double> %6127, <2 x double> poison, <2 x i32> zeroinitializer
  %6129 = load ptr, ptr %6070, align 16, !tbaa !53
  %6130 = getelementptr inbounds <2 x double>, ptr %6129, i64 %6123
  %6131 = load <2 x double>, ptr %6130, align 16, !tbaa !26
  %6132 = insertelement <2 x double> poison, double %6125, i64 0
  %6133 = shufflevector <2 x double> %6132, <2 x double> poison, <2 x i32> zeroinitializer
  %6134 = getelementptr i8, ptr %6130, i64 16
  %6135 = load <2 x double>, ptr %6134, align 16, !tbaa !26
  %6136 = fmul <2 x double> %6135, %6133
  %6137 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %6128, <2 x double> %6131, <2 x double> %6136)
  %6138 = getelementptr inbounds nuw i8, ptr %6005, i64 144
  store <2 x double> %6137, ptr %6138, align 16, !tbaa !26
  %6139 = getelementptr inbounds nuw i8, ptr %6005, i64 160
  %6140 = add nuw nsw i64 %6006, 1
  %6141 = load i64, ptr %166, align 8, !tbaa !20
  %6142 = icmp slt i64 %6140, %6141
  br i1 %6142, label %6004, label %6143, !llvm.loop !205

6143:                                             ; preds = %6004, %5990, %5976
  %6144 = getelementptr inbounds nuw i8, ptr %5977, i64 48
  %6145 = extractelement <2 x i64> %5074, i64 0
  %6146 = extractelement <2 x i64> %5074, i64 1
  br label %6147

6147:                                             ; preds = %6143, %6290
  %6148 = phi i1 [ true, %6143 ], [ false, %6290 ]
  %6149 = phi i64 [ %6145, %6143 ], [ %6146, %6290 ]
  %6150 = phi i64 [ 0, %6143 ], [ 1, %6290 ]
  %6151 = icmp eq i64 %6149, 0
  br i1 %6151, label %6290, label %6152

6152:                                             ; preds = %6147
  %6153 = getelementptr inbounds nuw [2 x i64], ptr %226, i64 0, i64 %6150
  %6154 = load i64, ptr %6153, align 8, !tbaa !30
  %6155 = load i64, ptr %227, align 8, !tbaa !206
  %6156 = icmp eq i64 %6154, %6155
  br i1 %6156, label %6160, label %6157

6157:                                             ; preds = %6152
  %6158 = getelementptr inbounds nuw [2 x ptr], ptr %231, i64 0, i64 %6150
  %6159 = load ptr, ptr %6158, align 8, !tbaa !207
  br label %6175

6160:                                             ; preds = %6152
  %6161 = getelementptr inbounds nuw [2 x i64], ptr %130, i64 0, i64 %6150
  %6162 = load i64, ptr %6161, align 8, !tbaa !30
  %6163 = load ptr, ptr %228, align 8, !tbaa !208
  %6164 = load i64, ptr %121, align 8, !tbaa !43
  %6165 = getelementptr inbounds i64, ptr %6163, i64 %6164
  store i64 %6162, ptr %6165, align 8, !tbaa !30
  %6166 = load ptr, ptr %229, align 8, !tbaa !209
  %6167 = load i64, ptr %121, align 8, !tbaa !43
  %6168 = add nsw i64 %6167, 1
  store i64 %6168, ptr %121, align 8, !tbaa !43
  %6169 = load i64, ptr %227, align 8, !tbaa !206
  %6170 = mul nsw i64 %6169, %6167
  %6171 = load i64, ptr %230, align 8, !tbaa !15
  %6172 = mul nsw i64 %6170, %6171
  %6173 = getelementptr inbounds double, ptr %6166, i64 %6172
  %6174 = getelementptr inbounds nuw [2 x ptr], ptr %231, i64 0, i64 %6150
  store ptr %6173, ptr %6174, align 8, !tbaa !207
  br label %6175

6175:                                             ; preds = %6157, %6160
  %6176 = phi i64 [ %6154, %6157 ], [ 0, %6160 ]
  %6177 = phi ptr [ %6159, %6157 ], [ %6173, %6160 ]
  %6178 = add nsw i64 %6176, 1
  store i64 %6178, ptr %6153, align 8, !tbaa !30
  %6179 = load i64, ptr %230, align 8, !tbaa !15
  %6180 = mul nsw i64 %6179, %6176
  %6181 = getelementptr inbounds double, ptr %6177, i64 %6180
  %6182 = load ptr, ptr %224, align 16, !tbaa !40
  %6183 = icmp ult ptr %6182, %5973
  br i1 %6183, label %6243, label %6184

6184:                                             ; preds = %6243, %6175
  %6185 = phi ptr [ %6181, %6175 ], [ %6248, %6243 ]
  %6186 = load i64, ptr %138, align 16, !tbaa !16
  %6187 = icmp sgt i64 %6186, 0
  br i1 %6187, label %6188, label %6230

6188:                                             ; preds = %6184
  %6189 = and i64 %6186, 3
  %6190 = icmp ult i64 %6186, 4
  br i1 %6190, label %6215, label %6191

6191:                                             ; preds = %6188
  %6192 = and i64 %6186, 9223372036854775804
  br label %6193

6193:                                             ; preds = %6193, %6191
  %6194 = phi i64 [ 0, %6191 ], [ %6212, %6193 ]
  %6195 = phi ptr [ %6185, %6191 ], [ %6209, %6193 ]
  %6196 = phi i64 [ 0, %6191 ], [ %6213, %6193 ]
  %6197 = getelementptr i8, ptr %6195, i64 8
  %6198 = getelementptr inbounds nuw <2 x double>, ptr %5973, i64 %6194, i64 %6150
  %6199 = load double, ptr %6198, align 8
  store double %6199, ptr %6195, align 8, !tbaa !44
  %6200 = or disjoint i64 %6194, 1
  %6201 = getelementptr i8, ptr %6195, i64 16
  %6202 = getelementptr inbounds nuw <2 x double>, ptr %5973, i64 %6200, i64 %6150
  %6203 = load double, ptr %6202, align 8
  store double %6203, ptr %6197, align 8, !tbaa !44
  %6204 = or disjoint i64 %6194, 2
  %6205 = getelementptr i8, ptr %6195, i64 24
  %6206 = getelementptr inbounds nuw <2 x double>, ptr %5973, i64 %6204, i64 %6150
  %6207 = load double, ptr %6206, align 8
  store double %6207, ptr %6201, align 8, !tbaa !44
  %6208 = or disjoint i64 %6194, 3
  %6209 = getelementptr i8, ptr %6195, i64 32
  %6210 = getelementptr inbounds nuw <2 x double>, ptr %5973, i64 %6208, i64 %6150
  %6211 = load double, ptr %6210, align 8
  store double %6211, ptr %6205, align 8, !tbaa !44
  %6212 = add nuw nsw i64 %6194, 4
  %6213 = add i64 %6196, 4
  %6214 = icmp eq i64 %6213, %6192
  br i1 %6214, label %6215, label %6193, !llvm.loop !210

6215:                                             ; preds = %6193, %6188
  %6216 = phi ptr [ poison, %6188 ], [ %6209, %6193 ]
  %6217 = phi i64 [ 0, %6188 ], [ %6212, %6193 ]
  %6218 = phi ptr [ %6185, %6188 ], [ %6209, %6193 ]
  %6219 = icmp eq i64 %6189, 0
  br i1 %6219, label %6230, label %6220

6220:                                             ; preds = %6215, %6220
  %6221 = phi i64 [ %6227, %6220 ], [ %6217, %6215 ]
  %6222 = phi ptr [ %6224, %6220 ], [ %6218, %6215 ]
  %6223 = phi i64 [ %6228, %6220 ], [ 0, %6215 ]
  %6224 = getelementptr i8, ptr %6222, i64 8
  %6225 = getelementptr inbounds nuw <2 x double>, ptr %5973, i64 %6221, i64 %6150
  %6226 = load double, ptr %6225, align 8
  store double %6226, ptr %6222, align 8, !tbaa !44
  %6227 = add nuw nsw i64 %6221, 1
  %6228 = add i64 %6223, 1
  %6229 = icmp eq i64 %6228, %6189
  br i1 %6229, label %6230, label %6220, !llvm.loop !211

6230:                                             ; preds = %6215, %6220, %6184
  %6231 = phi ptr [ %6185, %6184 ], [ %6216, %6215 ], [ %6224, %6220 ]
  %6232 = load i64, ptr %137, align 8, !tbaa !46
  %6233 = icmp eq i64 %6232, 0
  br i1 %6233, label %6290, label %6234

6234:                                             ; preds = %6230
  %6235 = getelementptr inbounds nuw double, ptr %5977, i64 %6150
  %6236 = load double, ptr %6235, align 8, !tbaa !44
  %6237 = getelementptr inbounds nuw i8, ptr %6231, i64 8
  store double %6236, ptr %6231, align 8, !tbaa !44
  %6238 = getelementptr inbounds nuw i8, ptr %6235, i64 16
  %6239 = load double, ptr %6238, align 8, !tbaa !44
  %6240 = getelementptr inbounds nuw i8, ptr %6231, i64 16
  store double %6239, ptr %6237, align 8, !tbaa !44
  %6241 = getelementptr inbounds nuw i8, ptr %6235, i64 32
  %6242 = load double, ptr %6241, align 8, !tbaa !44
  store double %6242, ptr %6240, align 8, !tbaa !44
  br i1 %6187, label %6251, label %6290

6243:                                             ; preds = %6175, %6243
  %6244 = phi ptr [ %6249, %6243 ], [ %6182, %6175 ]
  %6245 = phi ptr [ %6248, %6243 ], [ %6181, %6175 ]
  %6246 = getelementptr inbounds nuw double, ptr %6244, i64 %6150
  %6247 = load double, ptr %6246, align 8, !tbaa !44
  %6248 = getelementptr inbounds nuw i8, ptr %6245, i64 8
  store double %6247, ptr %6245, align 8, !tbaa !44
  %6249 = getelementptr inbounds nuw i8, ptr %6244, i64 16
  %6250 = icmp ult ptr %6249, %5973
  br i1 %6250, label %6243, label %6184, !llvm.loop !212

6251:                                             ; preds = %6234
  %6252 = getelementptr inbounds nuw i8, ptr %6231, i64 24
  br label %6253

6253:                                             ; preds = %6251, %6253
  %6254 = phi i64 [ %6288, %6253 ], [ 0, %6251 ]
  %6255 = phi ptr [ %6287, %6253 ], [ %6252, %6251 ]
  %6256 = mul nuw nsw i64 %6254, 160
  %6257 = getelementptr inbounds nuw i8, ptr %6144, i64 %6256
  %6258 = getelementptr inbounds nuw <2 x double>, ptr %6257, i64 0, i64 %6150
  %6259 = load double, ptr %6258, align 8
  %6260 = getelementptr inbounds nuw i8, ptr %6255, i64 8
  store double %6259, ptr %6255, align 8, !tbaa !44
  %6261 = getelementptr inbounds nuw <2 x double>, ptr %6257, i64 1, i64 %6150
  %6262 = load double, ptr %6261, align 8
  %6263 = getelementptr inbounds nuw i8, ptr %6255, i64 16
  store double %6262, ptr %6260, align 8, !tbaa !44
  %6264 = getelementptr inbounds nuw <2 x double>, ptr %6257, i64 2, i64 %6150
  %6265 = load double, ptr %6264, align 8
  %6266 = getelementptr inbounds nuw i8, ptr %6255, i64 24
  store double %6265, ptr %6263, align 8, !tbaa !44
  %6267 = getelementptr inbounds nuw <2 x double>, ptr %6257, i64 3, i64 %6150
  %6268 = load double, ptr %6267, align 8
  %6269 = getelementptr inbounds nuw i8, ptr %6255, i64 32
  store double %6268, ptr %6266, align 8, !tbaa !44
  %6270 = getelementptr inbounds nuw <2 x double>, ptr %6257, i64 4, i64 %6150
  %6271 = load double, ptr %6270, align 8
  %6272 = getelementptr inbounds nuw i8, ptr %6255, i64 40
  store double %6271, ptr %6269, align 8, !tbaa !44
  %6273 = getelementptr inbounds nuw <2 x double>, ptr %6257, i64 5, i64 %6150
  %6274 = load double, ptr %6273, align 8
  %6275 = getelementptr inbounds nuw i8, ptr %6255, i64 48
  store double %6274, ptr %6272, align 8, !tbaa !44
  %6276 = getelementptr inbounds nuw <2 x double>, ptr %6257, i64 6, i64 %6150
  %6277 = load double, ptr %6276, align 8
  %6278 = getelementptr inbounds nuw i8, ptr %6255, i64 56
  store double %6277, ptr %6275, align 8, !tbaa !44
  %6279 = getelementptr inbounds nuw <2 x double>, ptr %6257, i64 7, i64 %6150
  %6280 = load double, ptr %6279, align 8
  %6281 = getelementptr inbounds nuw i8, ptr %6255, i64 64
  store double %6280, ptr %6278, align 8, !tbaa !44
  %6282 = getelementptr inbounds nuw <2 x double>, ptr %6257, i64 8, i64 %6150
  %6283 = load double, ptr %6282, align 8
  %6284 = getelementptr inbounds nuw i8, ptr %6255, i64 72
  store double %6283, ptr %6281, align 8, !tbaa !44
  %6285 = getelementptr inbounds nuw <2 x double>, ptr %6257, i64 9, i64 %6150
  %6286 = load double, ptr %6285, align 8
  %6287 = getelementptr inbounds nuw i8, ptr %6255, i64 80
  store double %6286, ptr %6284, align 8, !tbaa !44
  %6288 = add nuw nsw i64 %6254, 1
  %6289 = icmp eq i64 %6288, %6186
  br i1 %6289, label %6290, label %6253, !llvm.loop !210

6290:                                             ; preds = %6253, %6234, %6230, %6147
  br i1 %6148, label %6147, label %6291, !llvm.loop !213

6291:                                             ; preds = %6290
  %6292 = load <2 x double>, ptr %146, align 16, !tbaa !26
  %6293 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %6294 = fsub <2 x double> %6292, %6293
  %6295 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %6296 = fadd <2 x double> %6295, splat (double -1.000000e-09)
  %6297 = fcmp oge <2 x double> %6294, %6296
  %6298 = select <2 x i1> %6297, <2 x i64> %5074, <2 x i64> zeroinitializer
  %6299 = load i64, ptr %166, align 8, !tbaa !20
  %6300 = icmp sgt i64 %6299, 0
  br i1 %6300, label %6301, label %6349

6301:                                             ; preds = %6291
  %6302 = load ptr, ptr %139, align 8, !tbaa !28
  %6303 = and i64 %6299, 3
  %6304 = icmp ult i64 %6299, 4
  br i1 %6304, label %6333, label %6305

6305:                                             ; preds = %6301
  %6306 = and i64 %6299, 9223372036854775804
  br label %6307

6307:                                             ; preds = %6307, %6305
  %6308 = phi i64 [ 0, %6305 ], [ %6330, %6307 ]
  %6309 = phi <2 x double> [ splat (double 1.000000e+09), %6305 ], [ %6329, %6307 ]
  %6310 = phi i64 [ 0, %6305 ], [ %6331, %6307 ]
  %6311 = getelementptr inbounds nuw %struct.Piece, ptr %6302, i64 %6308, i32 41
  %6312 = load <2 x double>, ptr %6311, align 16, !tbaa !26
  %6313 = fcmp olt <2 x double> %6309, %6312
  %6314 = select <2 x i1> %6313, <2 x double> %6309, <2 x double> %6312
  %6315 = or disjoint i64 %6308, 1
  %6316 = getelementptr inbounds nuw %struct.Piece, ptr %6302, i64 %6315, i32 41
  %6317 = load <2 x double>, ptr %6316, align 16, !tbaa !26
  %6318 = fcmp olt <2 x double> %6314, %6317
  %6319 = select <2 x i1> %6318, <2 x double> %6314, <2 x double> %6317
  %6320 = or disjoint i64 %6308, 2
  %6321 = getelementptr inbounds nuw %struct.Piece, ptr %6302, i64 %6320, i32 41
  %6322 = load <2 x double>, ptr %6321, align 16, !tbaa !26
  %6323 = fcmp olt <2 x double> %6319, %6322
  %6324 = select <2 x i1> %6323, <2 x double> %6319, <2 x double> %6322
  %6325 = or disjoint i64 %6308, 3
  %6326 = getelementptr inbounds nuw %struct.Piece, ptr %6302, i64 %6325, i32 41
  %6327 = load <2 x double>, ptr %6326, align 16, !tbaa !26
  %6328 = fcmp olt <2 x double> %6324, %6327
  %6329 = select <2 x i1> %6328, <2 x double> %6324, <2 x double> %6327
  %6330 = add nuw nsw i64 %6308, 4
  %6331 = add i64 %6310, 4
  %6332 = icmp eq i64 %6331, %6306
  br i1 %6332, label %6333, label %6307, !llvm.loop !179

6333:                                             ; preds = %6307, %6301
  %6334 = phi <2 x double> [ poison, %6301 ], [ %6329, %6307 ]
  %6335 = phi i64 [ 0, %6301 ], [ %6330, %6307 ]
  %6336 = phi <2 x double> [ splat (double 1.000000e+09), %6301 ], [ %6329, %6307 ]
  %6337 = icmp eq i64 %6303, 0
  br i1 %6337, label %6349, label %6338

6338:                                             ; preds = %6333, %6338
  %6339 = phi i64 [ %6346, %6338 ], [ %6335, %6333 ]
  %6340 = phi <2 x double> [ %6345, %6338 ], [ %6336, %6333 ]
  %6341 = phi i64 [ %6347, %6338 ], [ 0, %6333 ]
  %6342 = getelementptr inbounds nuw %struct.Piece, ptr %6302, i64 %6339, i32 41
  %6343 = load <2 x double>, ptr %6342, align 16, !tbaa !26
  %6344 = fcmp olt <2 x double> %6340, %6343
  %6345 = select <2 x i1> %6344, <2 x double> %6340, <2 x double> %6343
  %6346 = add nuw nsw i64 %6339, 1
  %6347 = add i64 %6341, 1
  %6348 = icmp eq i64 %6347, %6303
  br i1 %6348, label %6349, label %6338, !llvm.loop !214

6349:                                             ; preds = %6333, %6338, %6291
  %6350 = phi <2 x double> [ splat (double 1.000000e+09), %6291 ], [ %6334, %6333 ], [ %6345, %6338 ]
  %6351 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %6352 = select <2 x i1> %5204, <2 x double> %6351, <2 x double> %6350
  store <2 x double> %6352, ptr %220, align 16, !tbaa !26
  %6353 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %6354 = fcmp une <2 x double> %6353, zeroinitializer
  %6355 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %6356 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %6357 = fsub <2 x double> %6355, %6356
  %6358 = fcmp une <2 x double> %6353, splat (double 1.000000e+00)
  %6359 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %6360 = load <2 x double>, ptr %222, align 16, !tbaa !26
  %6361 = fsub <2 x double> %6359, %6360
  %6362 = select <2 x i1> %6358, <2 x double> splat (double -1.000000e+00), <2 x double> %6361
  %6363 = fcmp une <2 x double> %6353, splat (double 2.000000e+00)
  %6364 = fsub <2 x double> %6352, %6360
  %6365 = select <2 x i1> %6363, <2 x double> %6362, <2 x double> %6364
  %6366 = fcmp une <2 x double> %6353, splat (double 3.000000e+00)
  %6367 = fsub <2 x double> %6357, %6360
  %6368 = select <2 x i1> %6366, <2 x double> %6365, <2 x double> %6367
  %6369 = fcmp une <2 x double> %6353, splat (double 4.000000e+00)
  %6370 = fsub <2 x double> %6360, %6357
  %6371 = select <2 x i1> %6369, <2 x double> %6368, <2 x double> %6370
  %6372 = fcmp oge <2 x double> %6371, splat (double 0xBEB0C6F7A0B5ED8D)
  %6373 = select <2 x i1> %6372, <2 x i1> %6354, <2 x i1> zeroinitializer
  %6374 = select <2 x i1> %6373, <2 x i64> %5074, <2 x i64> zeroinitializer
  %6375 = xor <2 x i64> %6374, splat (i64 -1)
  %6376 = and <2 x i64> %6298, %6375
  %6377 = load <2 x double>, ptr %135, align 16, !tbaa !26
  %6378 = icmp ne <2 x i64> %6376, zeroinitializer
  %6379 = select <2 x i1> %6354, <2 x i1> %6378, <2 x i1> zeroinitializer
  %6380 = select <2 x i1> %6379, <2 x double> splat (double 2.000000e+00), <2 x double> %6377
  store <2 x double> %6380, ptr %135, align 16, !tbaa !26
  %6381 = or <2 x i64> %6374, %6298
  %6382 = load <2 x double>, ptr %225, align 16, !tbaa !26
  %6383 = fadd <2 x double> %6382, splat (double 1.000000e+00)
  %6384 = icmp eq <2 x i64> %6381, zeroinitializer
  %6385 = select <2 x i1> %6384, <2 x double> %6382, <2 x double> %6383
  store <2 x double> %6385, ptr %225, align 16, !tbaa !26
  %6386 = xor <2 x i64> %6381, %5074
  %6387 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %6388 = fcmp oeq <2 x double> %6387, zeroinitializer
  %6389 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %6390 = fcmp oeq <2 x double> %6389, zeroinitializer
  %6391 = select <2 x i1> %6390, <2 x i1> %6388, <2 x i1> zeroinitializer
  %6392 = select <2 x i1> %6391, <2 x i64> %6386, <2 x i64> zeroinitializer
  %6393 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %6394 = fmul <2 x double> %6393, splat (double 5.000000e-01)
  %6395 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %6396 = fadd <2 x double> %6395, %6394
  %6397 = fadd <2 x double> %6396, splat (double -4.000000e-03)
  %6398 = fcmp ult <2 x double> %6359, %6397
  %6399 = fsub <2 x double> %6395, %6394
  %6400 = fadd <2 x double> %6399, splat (double 4.000000e-03)
  %6401 = fcmp ole <2 x double> %6359, %6400
  %6402 = load <2 x i64>, ptr %153, align 16, !tbaa !26
  %6403 = select <2 x i1> %6401, <2 x i64> splat (i64 -1), <2 x i64> %6402
  %6404 = select <2 x i1> %6398, <2 x i64> %6403, <2 x i64> zeroinitializer
  %6405 = xor <2 x i64> %6404, %6402
  %6406 = and <2 x i64> %6405, %6392
  %6407 = and <2 x i64> %6404, %6392
  %6408 = xor <2 x i64> %6392, splat (i64 -1)
  %6409 = and <2 x i64> %6402, %6408
  %6410 = or disjoint <2 x i64> %6407, %6409
  store <2 x i64> %6410, ptr %153, align 16, !tbaa !26
  %6411 = load <2 x i64>, ptr %163, align 16, !tbaa !26
  %6412 = or <2 x i64> %6406, %6411
  store <2 x i64> %6412, ptr %163, align 16, !tbaa !26
  %6413 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %6381)
  %6414 = icmp eq i64 %6413, 0
  br i1 %6414, label %6425, label %6415

6415:                                             ; preds = %6349
  %6416 = extractelement <2 x i64> %6381, i64 0
  %6417 = icmp eq i64 %6416, 0
  br i1 %6417, label %6419, label %6418

6418:                                             ; preds = %6415
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #6
  br label %6419

6419:                                             ; preds = %6418, %6415
  %6420 = extractelement <2 x i64> %6381, i64 1
  %6421 = icmp eq i64 %6420, 0
  br i1 %6421, label %6423, label %6422

6422:                                             ; preds = %6419
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1616) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1) #6
  br label %6423

6423:                                             ; preds = %6422, %6419
  %6424 = load <2 x double>, ptr %135, align 16, !tbaa !26
  br label %6425

6425:                                             ; preds = %6423, %6349
  %6426 = phi <2 x double> [ %6424, %6423 ], [ %6380, %6349 ]
  %6427 = load <2 x double>, ptr %132, align 16, !tbaa !26
  %6428 = load <2 x double>, ptr %232, align 16, !tbaa !26
  %6429 = fadd <2 x double> %6428, splat (double -1.000000e+00)
  %6430 = fcmp oge <2 x double> %6427, %6429
  %6431 = select <2 x i1> %6430, <2 x i64> %5074, <2 x i64> zeroinitializer
  %6432 = icmp eq <2 x i64> %6431, zeroinitializer
  %6433 = select <2 x i1> %6432, <2 x double> %6426, <2 x double> splat (double 1.000000e+00)
  store <2 x double> %6433, ptr %135, align 16, !tbaa !26
  %6434 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %6431)
  %6435 = icmp eq i64 %6434, 0
  br i1 %6435, label %546, label %6436

6436:                                             ; preds = %6425
  %6437 = extractelement <2 x i64> %6431, i64 0
  %6438 = icmp eq i64 %6437, 0
  br i1 %6438, label %6440, label %6439

6439:                                             ; preds = %6436
  store double 1.000000e+00, ptr %127, align 8, !tbaa !44
  br label %6440

6440:                                             ; preds = %6439, %6436
  %6441 = extractelement <2 x i64> %6431, i64 1
  %6442 = icmp eq i64 %6441, 0
  br i1 %6442, label %546, label %6443

6443:                                             ; preds = %6440
  store double 1.000000e+00, ptr %262, align 8, !tbaa !44
  br label %546

6444:                                             ; preds = %546, %551, %118
  %6445 = phi i64 [ 0, %118 ], [ 1, %551 ], [ 0, %546 ]
  ret i64 %6445
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1616) %0, ptr nocapture noundef nonnull align 8 dereferenceable(224) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  store <2 x i64> zeroinitializer, ptr %4, align 16, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 632
  %7 = zext nneg i32 %2 to i64
  %8 = load ptr, ptr %5, align 8, !tbaa !215
  %9 = load i64, ptr %6, align 8, !tbaa !27
  %10 = getelementptr inbounds i64, ptr %8, i64 %9
  %11 = load i64, ptr %10, align 8, !tbaa !30
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1616) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2, i64 noundef %11) #6
  %12 = getelementptr inbounds nuw i64, ptr %4, i64 %7
  store i64 -1, ptr %12, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1616) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2) #6
  %13 = load i64, ptr %6, align 8, !tbaa !27
  %14 = add nsw i64 %13, 1
  store i64 %14, ptr %6, align 8, !tbaa !27
  %15 = getelementptr inbounds nuw i8, ptr %0, i64 1600
  %16 = load ptr, ptr %15, align 16, !tbaa !40
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
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 1608
  br label %40

35:                                               ; preds = %40, %3
  %36 = phi ptr [ %28, %3 ], [ %46, %40 ]
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %38 = load i64, ptr %37, align 8, !tbaa !46
  %39 = icmp eq i64 %38, 0
  br i1 %39, label %209, label %50

40:                                               ; preds = %33, %40
  %41 = phi ptr [ %28, %33 ], [ %46, %40 ]
  %42 = phi i64 [ 0, %33 ], [ %47, %40 ]
  %43 = load ptr, ptr %34, align 8, !tbaa !28
  %44 = getelementptr inbounds nuw %struct.Piece, ptr %43, i64 %42, i32 41
  %45 = load <2 x double>, ptr %44, align 16, !tbaa !26
  %46 = getelementptr inbounds nuw i8, ptr %41, i64 16
  store <2 x double> %45, ptr %41, align 16, !tbaa !26
  %47 = add nuw nsw i64 %42, 1
  %48 = load i64, ptr %29, align 8, !tbaa !20
  %49 = icmp slt i64 %47, %48
  br i1 %49, label %40, label %35, !llvm.loop !201

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
  br i1 %64, label %65, label %209

65:                                               ; preds = %50
  %66 = getelementptr inbounds nuw i8, ptr %36, i64 48
  %67 = getelementptr inbounds nuw i8, ptr %0, i64 1608
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 608
  %69 = getelementptr inbounds nuw i8, ptr %0, i64 616
  br label %70

70:                                               ; preds = %65, %70
  %71 = phi ptr [ %66, %65 ], [ %205, %70 ]
  %72 = phi i64 [ 0, %65 ], [ %206, %70 ]
  %73 = load ptr, ptr %67, align 8, !tbaa !28
  %74 = getelementptr inbounds nuw %struct.Piece, ptr %73, i64 %72
  %75 = getelementptr inbounds nuw i8, ptr %74, i64 2400
  %76 = load ptr, ptr %75, align 16, !tbaa !49
  %77 = load i64, ptr %68, align 16, !tbaa !21
  %78 = getelementptr <2 x double>, ptr %76, i64 %77
  %79 = getelementptr i8, ptr %78, i64 -16
  %80 = load <2 x double>, ptr %79, align 16, !tbaa !26
  %81 = getelementptr inbounds nuw i8, ptr %74, i64 176
  %82 = load <2 x double>, ptr %81, align 16, !tbaa !26, !noalias !216
  %83 = getelementptr inbounds nuw i8, ptr %74, i64 192
  %84 = load <2 x double>, ptr %83, align 16, !tbaa !26, !noalias !216
  %85 = getelementptr inbounds nuw i8, ptr %74, i64 208
  %86 = load <2 x double>, ptr %85, align 16, !tbaa !26, !noalias !216
  %87 = getelementptr inbounds nuw i8, ptr %74, i64 224
  %88 = load <2 x double>, ptr %87, align 16, !tbaa !26, !noalias !216
  %89 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %80, <2 x double> %88, <2 x double> %86)
  %90 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %80, <2 x double> %89, <2 x double> %84)
  %91 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %80, <2 x double> %90, <2 x double> %82)
  %92 = fmul <2 x double> %80, %91
  %93 = getelementptr inbounds nuw i8, ptr %74, i64 48
  %94 = load <2 x double>, ptr %93, align 16, !tbaa !26, !noalias !216
  %95 = getelementptr inbounds nuw i8, ptr %74, i64 64
  %96 = load <2 x double>, ptr %95, align 16, !tbaa !26, !noalias !216
  %97 = getelementptr inbounds nuw i8, ptr %74, i64 80
  %98 = load <2 x double>, ptr %97, align 16, !tbaa !26, !noalias !216
  %99 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %92, <2 x double> %98, <2 x double> %96)
  %100 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %92, <2 x double> %99, <2 x double> %94)
  %101 = fdiv <2 x double> splat (double 1.000000e+00), %100
  %102 = fmul <2 x double> %98, %92
  %103 = fmul <2 x double> %102, splat (double 0x3FD5555555555555)
  %104 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %96, <2 x double> splat (double 5.000000e-01), <2 x double> %103)
  %105 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %92, <2 x double> %104, <2 x double> %94)
  %106 = fmul <2 x double> %92, %105
  %107 = fsub <2 x double> %80, %106
  %108 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %107, <2 x double> %101, <2 x double> %92)
  %109 = getelementptr inbounds nuw i8, ptr %74, i64 2048
  %110 = load <2 x double>, ptr %109, align 16, !tbaa !26
  %111 = getelementptr inbounds nuw i8, ptr %74, i64 1600
  %112 = load <2 x double>, ptr %111, align 16, !tbaa !26
  %113 = fsub <2 x double> %112, %108
  %114 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %110, <2 x double> %113, <2 x double> %108)
  %115 = getelementptr inbounds nuw i8, ptr %71, i64 16
  store <2 x double> %114, ptr %71, align 16, !tbaa !26
  %116 = getelementptr inbounds nuw i8, ptr %74, i64 1936
  %117 = load <2 x double>, ptr %116, align 16, !tbaa !26
  %118 = getelementptr inbounds nuw i8, ptr %71, i64 32
  store <2 x double> %117, ptr %115, align 16, !tbaa !26
  %119 = load <2 x double>, ptr %74, align 16, !tbaa !26
  %120 = getelementptr inbounds nuw i8, ptr %74, i64 1056
  %121 = load <2 x double>, ptr %120, align 16, !tbaa !26
  %122 = fsub <2 x double> %119, %121
  %123 = getelementptr inbounds nuw i8, ptr %71, i64 48
  store <2 x double> %122, ptr %118, align 16, !tbaa !26
  %124 = getelementptr inbounds nuw i8, ptr %74, i64 1136
  %125 = load <2 x double>, ptr %124, align 16, !tbaa !26
  %126 = getelementptr inbounds nuw i8, ptr %71, i64 64
  store <2 x double> %125, ptr %123, align 16, !tbaa !26
  %127 = getelementptr inbounds nuw i8, ptr %74, i64 1120
  %128 = load <2 x double>, ptr %127, align 16, !tbaa !26
  %129 = getelementptr inbounds nuw i8, ptr %71, i64 80
  store <2 x double> %128, ptr %126, align 16, !tbaa !26
  %130 = getelementptr inbounds nuw i8, ptr %74, i64 1088
  %131 = load <2 x double>, ptr %130, align 16, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %71, i64 96
  store <2 x double> %131, ptr %129, align 16, !tbaa !26
  %133 = getelementptr inbounds nuw i8, ptr %74, i64 1152
  %134 = load <2 x double>, ptr %133, align 16, !tbaa !26
  %135 = getelementptr inbounds nuw i8, ptr %71, i64 112
  store <2 x double> %134, ptr %132, align 16, !tbaa !26
  %136 = getelementptr inbounds nuw i8, ptr %74, i64 2496
  %137 = load i64, ptr %69, align 8, !tbaa !22
  %138 = sitofp i64 %137 to double
  %139 = tail call double @llvm.fmuladd.f64(double %138, double 7.500000e-01, double -5.000000e-01)
  %140 = fcmp ogt double %139, 0.000000e+00
  %141 = select i1 %140, double %139, double 0.000000e+00
  %142 = fptosi double %141 to i64
  %143 = add nsw i64 %137, -2
  %144 = tail call i64 @llvm.smin.i64(i64 %143, i64 %142)
  %145 = sitofp i64 %144 to double
  %146 = fsub double %139, %145
  %147 = fsub double 1.000000e+00, %146
  %148 = insertelement <2 x double> poison, double %147, i64 0
  %149 = shufflevector <2 x double> %148, <2 x double> poison, <2 x i32> zeroinitializer
  %150 = load ptr, ptr %136, align 16, !tbaa !53
  %151 = getelementptr inbounds <2 x double>, ptr %150, i64 %144
  %152 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %153 = insertelement <2 x double> poison, double %146, i64 0
  %154 = shufflevector <2 x double> %153, <2 x double> poison, <2 x i32> zeroinitializer
  %155 = getelementptr i8, ptr %151, i64 16
  %156 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %157 = fmul <2 x double> %156, %154
  %158 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %149, <2 x double> %152, <2 x double> %157)
  store <2 x double> %158, ptr %135, align 16, !tbaa !26
  %159 = load i64, ptr %69, align 8, !tbaa !22
  %160 = sitofp i64 %159 to double
  %161 = tail call double @llvm.fmuladd.f64(double %160, double 5.000000e-01, double -5.000000e-01)
  %162 = fcmp ogt double %161, 0.000000e+00
  %163 = select i1 %162, double %161, double 0.000000e+00
  %164 = fptosi double %163 to i64
  %165 = add nsw i64 %159, -2
  %166 = tail call i64 @llvm.smin.i64(i64 %165, i64 %164)
  %167 = sitofp i64 %166 to double
  %168 = fsub double %161, %167
  %169 = fsub double 1.000000e+00, %168
  %170 = insertelement <2 x double> poison, double %169, i64 0
  %171 = shufflevector <2 x double> %170, <2 x double> poison, <2 x i32> zeroinitializer
  %172 = load ptr, ptr %136, align 16, !tbaa !53
  %173 = getelementptr inbounds <2 x double>, ptr %172, i64 %166
  %174 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %175 = insertelement <2 x double> poison, double %168, i64 0
  %176 = shufflevector <2 x double> %175, <2 x double> poison, <2 x i32> zeroinitializer
  %177 = getelementptr i8, ptr %173, i64 16
  %178 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %179 = fmul <2 x double> %178, %176
  %180 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %171, <2 x double> %174, <2 x double> %179)
  %181 = getelementptr inbounds nuw i8, ptr %71, i64 128
  store <2 x double> %180, ptr %181, align 16, !tbaa !26
  %182 = load i64, ptr %69, align 8, !tbaa !22
  %183 = sitofp i64 %182 to double
  %184 = tail call double @llvm.fmuladd.f64(double %183, double 2.500000e-01, double -5.000000e-01)
  %185 = fcmp ogt double %184, 0.000000e+00
  %186 = select i1 %185, double %184, double 0.000000e+00
  %187 = fptosi double %186 to i64
  %188 = add nsw i64 %182, -2
  %189 = tail call i64 @llvm.smin.i64(i64 %188, i64 %187)
  %190 = sitofp i64 %189 to double
  %191 = fsub double %184, %190
  %192 = fsub double 1.000000e+00, %191
  %193 = insertelement <2 x double> poison, double %192, i64 0
  %194 = shufflevector <2 x double> %193, <2 x double> poison, <2 x i32> zeroinitializer
  %195 = load ptr, ptr %136, align 16, !tbaa !53
  %196 = getelementptr inbounds <2 x double>, ptr %195, i64 %189
  %197 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %198 = insertelement <2 x double> poison, double %191, i64 0
  %199 = shufflevector <2 x double> %198, <2 x double> poison, <2 x i32> zeroinitializer
  %200 = getelementptr i8, ptr %196, i64 16
  %201 = load <2 x double>, ptr %200, align 16, !tbaa !26
  %202 = fmul <2 x double> %201, %199
  %203 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %194, <2 x double> %197, <2 x double> %202)
  %204 = getelementptr inbounds nuw i8, ptr %71, i64 144
  store <2 x double> %203, ptr %204, align 16, !tbaa !26
  %205 = getelementptr inbounds nuw i8, ptr %71, i64 160
  %206 = add nuw nsw i64 %72, 1
  %207 = load i64, ptr %29, align 8, !tbaa !20
  %208 = icmp slt i64 %206, %207
  br i1 %208, label %70, label %209, !llvm.loop !205

209:                                              ; preds = %70, %50, %35
  %210 = getelementptr inbounds nuw i8, ptr %0, i64 1520
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %212 = getelementptr inbounds nuw i8, ptr %0, i64 1504
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %214 = load ptr, ptr %213, align 8
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 1568
  %219 = load ptr, ptr %15, align 16
  %220 = icmp ult ptr %219, %28
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 592
  %222 = getelementptr inbounds nuw i8, ptr %36, i64 48
  br label %223

223:                                              ; preds = %209, %364
  %224 = phi i1 [ true, %209 ], [ false, %364 ]
  %225 = phi ptr [ %4, %209 ], [ %32, %364 ]
  %226 = phi i64 [ 0, %209 ], [ 1, %364 ]
  %227 = load i64, ptr %225, align 8, !tbaa !30
  %228 = icmp eq i64 %227, 0
  br i1 %228, label %364, label %229

229:                                              ; preds = %223
  %230 = getelementptr inbounds nuw [2 x i64], ptr %210, i64 0, i64 %226
  %231 = load i64, ptr %230, align 8, !tbaa !30
  %232 = load i64, ptr %211, align 8, !tbaa !206
  %233 = icmp eq i64 %231, %232
  br i1 %233, label %237, label %234

234:                                              ; preds = %229
  %235 = getelementptr inbounds nuw [2 x ptr], ptr %218, i64 0, i64 %226
  %236 = load ptr, ptr %235, align 8, !tbaa !207
  br label %251

237:                                              ; preds = %229
  %238 = getelementptr inbounds nuw [2 x i64], ptr %212, i64 0, i64 %226
  %239 = load i64, ptr %238, align 8, !tbaa !30
  %240 = load i64, ptr %215, align 8, !tbaa !43
  %241 = getelementptr inbounds i64, ptr %214, i64 %240
  store i64 %239, ptr %241, align 8, !tbaa !30
  %242 = load ptr, ptr %216, align 8, !tbaa !209
  %243 = load i64, ptr %215, align 8, !tbaa !43
  %244 = add nsw i64 %243, 1
  store i64 %244, ptr %215, align 8, !tbaa !43
  %245 = load i64, ptr %211, align 8, !tbaa !206
  %246 = mul nsw i64 %245, %243
  %247 = load i64, ptr %217, align 8, !tbaa !15
  %248 = mul nsw i64 %246, %247
  %249 = getelementptr inbounds double, ptr %242, i64 %248
  %250 = getelementptr inbounds nuw [2 x ptr], ptr %218, i64 0, i64 %226
  store ptr %249, ptr %250, align 8, !tbaa !207
  br label %251

251:                                              ; preds = %234, %237
  %252 = phi i64 [ %231, %234 ], [ 0, %237 ]
  %253 = phi ptr [ %236, %234 ], [ %249, %237 ]
  %254 = add nsw i64 %252, 1
  store i64 %254, ptr %230, align 8, !tbaa !30
  %255 = load i64, ptr %217, align 8, !tbaa !15
  %256 = mul nsw i64 %255, %252
  %257 = getelementptr inbounds double, ptr %253, i64 %256
  br i1 %220, label %317, label %258

258:                                              ; preds = %317, %251
  %259 = phi ptr [ %257, %251 ], [ %322, %317 ]
  %260 = load i64, ptr %221, align 16, !tbaa !16
  %261 = icmp sgt i64 %260, 0
  br i1 %261, label %262, label %304

262:                                              ; preds = %258
  %263 = and i64 %260, 3
  %264 = icmp ult i64 %260, 4
  br i1 %264, label %289, label %265

265:                                              ; preds = %262
  %266 = and i64 %260, 9223372036854775804
  br label %267

267:                                              ; preds = %267, %265
  %268 = phi i64 [ 0, %265 ], [ %286, %267 ]
  %269 = phi ptr [ %259, %265 ], [ %283, %267 ]
  %270 = phi i64 [ 0, %265 ], [ %287, %267 ]
  %271 = getelementptr i8, ptr %269, i64 8
  %272 = getelementptr inbounds nuw <2 x double>, ptr %28, i64 %268, i64 %226
  %273 = load double, ptr %272, align 8
  store double %273, ptr %269, align 8, !tbaa !44
  %274 = or disjoint i64 %268, 1
  %275 = getelementptr i8, ptr %269, i64 16
  %276 = getelementptr inbounds nuw <2 x double>, ptr %28, i64 %274, i64 %226
  %277 = load double, ptr %276, align 8
  store double %277, ptr %271, align 8, !tbaa !44
  %278 = or disjoint i64 %268, 2
  %279 = getelementptr i8, ptr %269, i64 24
  %280 = getelementptr inbounds nuw <2 x double>, ptr %28, i64 %278, i64 %226
  %281 = load double, ptr %280, align 8
  store double %281, ptr %275, align 8, !tbaa !44
  %282 = or disjoint i64 %268, 3
  %283 = getelementptr i8, ptr %269, i64 32
  %284 = getelementptr inbounds nuw <2 x double>, ptr %28, i64 %282, i64 %226
  %285 = load double, ptr %284, align 8
  store double %285, ptr %279, align 8, !tbaa !44
  %286 = add nuw nsw i64 %268, 4
  %287 = add i64 %270, 4
  %288 = icmp eq i64 %287, %266
  br i1 %288, label %289, label %267, !llvm.loop !210

289:                                              ; preds = %267, %262
  %290 = phi ptr [ poison, %262 ], [ %283, %267 ]
  %291 = phi i64 [ 0, %262 ], [ %286, %267 ]
  %292 = phi ptr [ %259, %262 ], [ %283, %267 ]
  %293 = icmp eq i64 %263, 0
  br i1 %293, label %304, label %294

294:                                              ; preds = %289, %294
  %295 = phi i64 [ %301, %294 ], [ %291, %289 ]
  %296 = phi ptr [ %298, %294 ], [ %292, %289 ]
  %297 = phi i64 [ %302, %294 ], [ 0, %289 ]
  %298 = getelementptr i8, ptr %296, i64 8
  %299 = getelementptr inbounds nuw <2 x double>, ptr %28, i64 %295, i64 %226
  %300 = load double, ptr %299, align 8
  store double %300, ptr %296, align 8, !tbaa !44
  %301 = add nuw nsw i64 %295, 1
  %302 = add i64 %297, 1
  %303 = icmp eq i64 %302, %263
  br i1 %303, label %304, label %294, !llvm.loop !219

304:                                              ; preds = %289, %294, %258
  %305 = phi ptr [ %259, %258 ], [ %290, %289 ], [ %298, %294 ]
  %306 = load i64, ptr %37, align 8, !tbaa !46
  %307 = icmp eq i64 %306, 0
  br i1 %307, label %364, label %308

308:                                              ; preds = %304
  %309 = getelementptr inbounds nuw double, ptr %36, i64 %226
  %310 = load double, ptr %309, align 8, !tbaa !44
  %311 = getelementptr inbounds nuw i8, ptr %305, i64 8
  store double %310, ptr %305, align 8, !tbaa !44
  %312 = getelementptr inbounds nuw i8, ptr %309, i64 16
  %313 = load double, ptr %312, align 8, !tbaa !44
  %314 = getelementptr inbounds nuw i8, ptr %305, i64 16
  store double %313, ptr %311, align 8, !tbaa !44
  %315 = getelementptr inbounds nuw i8, ptr %309, i64 32
  %316 = load double, ptr %315, align 8, !tbaa !44
  store double %316, ptr %314, align 8, !tbaa !44
  br i1 %261, label %325, label %364

317:                                              ; preds = %251, %317
  %318 = phi ptr [ %323, %317 ], [ %219, %251 ]
  %319 = phi ptr [ %322, %317 ], [ %257, %251 ]
  %320 = getelementptr inbounds nuw double, ptr %318, i64 %226
  %321 = load double, ptr %320, align 8, !tbaa !44
  %322 = getelementptr inbounds nuw i8, ptr %319, i64 8
  store double %321, ptr %319, align 8, !tbaa !44
  %323 = getelementptr inbounds nuw i8, ptr %318, i64 16
  %324 = icmp ult ptr %323, %28
  br i1 %324, label %317, label %258, !llvm.loop !212

325:                                              ; preds = %308
  %326 = getelementptr inbounds nuw i8, ptr %305, i64 24
  br label %327

327:                                              ; preds = %325, %327
  %328 = phi i64 [ %362, %327 ], [ 0, %325 ]
  %329 = phi ptr [ %361, %327 ], [ %326, %325 ]
  %330 = mul nuw nsw i64 %328, 160
  %331 = getelementptr inbounds nuw i8, ptr %222, i64 %330
  %332 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 0, i64 %226
  %333 = load double, ptr %332, align 8
  %334 = getelementptr inbounds nuw i8, ptr %329, i64 8
  store double %333, ptr %329, align 8, !tbaa !44
  %335 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 1, i64 %226
  %336 = load double, ptr %335, align 8
  %337 = getelementptr inbounds nuw i8, ptr %329, i64 16
  store double %336, ptr %334, align 8, !tbaa !44
  %338 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 2, i64 %226
  %339 = load double, ptr %338, align 8
  %340 = getelementptr inbounds nuw i8, ptr %329, i64 24
  store double %339, ptr %337, align 8, !tbaa !44
  %341 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 3, i64 %226
  %342 = load double, ptr %341, align 8
  %343 = getelementptr inbounds nuw i8, ptr %329, i64 32
  store double %342, ptr %340, align 8, !tbaa !44
  %344 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 4, i64 %226
  %345 = load double, ptr %344, align 8
  %346 = getelementptr inbounds nuw i8, ptr %329, i64 40
  store double %345, ptr %343, align 8, !tbaa !44
  %347 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 5, i64 %226
  %348 = load double, ptr %347, align 8
  %349 = getelementptr inbounds nuw i8, ptr %329, i64 48
  store double %348, ptr %346, align 8, !tbaa !44
  %350 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 6, i64 %226
  %351 = load double, ptr %350, align 8
  %352 = getelementptr inbounds nuw i8, ptr %329, i64 56
  store double %351, ptr %349, align 8, !tbaa !44
  %353 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 7, i64 %226
  %354 = load double, ptr %353, align 8
  %355 = getelementptr inbounds nuw i8, ptr %329, i64 64
  store double %354, ptr %352, align 8, !tbaa !44
  %356 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 8, i64 %226
  %357 = load double, ptr %356, align 8
  %358 = getelementptr inbounds nuw i8, ptr %329, i64 72
  store double %357, ptr %355, align 8, !tbaa !44
  %359 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 9, i64 %226
  %360 = load double, ptr %359, align 8
  %361 = getelementptr inbounds nuw i8, ptr %329, i64 80
  store double %360, ptr %358, align 8, !tbaa !44
  %362 = add nuw nsw i64 %328, 1
  %363 = icmp eq i64 %362, %260
  br i1 %363, label %364, label %327, !llvm.loop !210

364:                                              ; preds = %327, %308, %304, %223
  br i1 %224, label %223, label %365, !llvm.loop !213

365:                                              ; preds = %364
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1616) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 0, 2) %2, i64 noundef %3) unnamed_addr #2 {
  %5 = alloca <2 x double>, align 16
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 1504
  %7 = zext nneg i32 %2 to i64
  %8 = getelementptr inbounds nuw [2 x i64], ptr %6, i64 0, i64 %7
  store i64 %3, ptr %8, align 8, !tbaa !30
  %9 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %10 = load i64, ptr %9, align 8, !tbaa !206
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 1520
  %12 = getelementptr inbounds nuw [2 x i64], ptr %11, i64 0, i64 %7
  store i64 %10, ptr %12, align 8, !tbaa !30
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 1536
  %14 = shl nuw nsw i32 %2, 1
  %15 = or disjoint i32 %14, 1
  %16 = zext nneg i32 %15 to i64
  %17 = getelementptr inbounds nuw [4 x i64], ptr %13, i64 0, i64 %16
  store i64 0, ptr %17, align 8, !tbaa !30
  %18 = zext nneg i32 %14 to i64
  %19 = getelementptr inbounds nuw [4 x i64], ptr %13, i64 0, i64 %18
  store i64 0, ptr %19, align 16, !tbaa !30
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 1584
  %21 = getelementptr inbounds nuw [2 x double], ptr %20, i64 0, i64 %7
  store double 0.000000e+00, ptr %21, align 8, !tbaa !44
  %22 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %23 = load ptr, ptr %22, align 8, !tbaa !220
  %24 = mul i64 %3, 296
  %25 = getelementptr i8, ptr %23, i64 %24
  %26 = getelementptr inbounds nuw double, ptr %0, i64 %7
  br label %42

27:                                               ; preds = %42
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 600
  %29 = load i64, ptr %28, align 8, !tbaa !20
  %30 = icmp sgt i64 %29, 0
  br i1 %30, label %31, label %62

31:                                               ; preds = %27
  %32 = getelementptr inbounds nuw i8, ptr %0, i64 1608
  %33 = load ptr, ptr %32, align 8, !tbaa !28
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 608
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 616
  %36 = getelementptr inbounds nuw i8, ptr %0, i64 592
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %40 = load ptr, ptr %39, align 8, !tbaa !221
  %41 = getelementptr inbounds nuw double, ptr %5, i64 %7
  br label %161

42:                                               ; preds = %48, %4
  %43 = phi i64 [ 0, %4 ], [ %61, %48 ]
  %44 = getelementptr double, ptr %25, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !44
  %46 = getelementptr inbounds nuw <2 x double>, ptr %26, i64 %43
  store double %45, ptr %46, align 8, !tbaa !44
  %47 = icmp eq i64 %43, 36
  br i1 %47, label %27, label %48, !llvm.loop !222

48:                                               ; preds = %42
  %49 = or disjoint i64 %43, 1
  %50 = getelementptr double, ptr %25, i64 %49
  %51 = load double, ptr %50, align 8, !tbaa !44
  %52 = getelementptr inbounds nuw <2 x double>, ptr %26, i64 %49
  store double %51, ptr %52, align 8, !tbaa !44
  %53 = or disjoint i64 %43, 2
  %54 = getelementptr double, ptr %25, i64 %53
  %55 = load double, ptr %54, align 8, !tbaa !44
  %56 = getelementptr inbounds nuw <2 x double>, ptr %26, i64 %53
  store double %55, ptr %56, align 8, !tbaa !44
  %57 = or disjoint i64 %43, 3
  %58 = getelementptr double, ptr %25, i64 %57
  %59 = load double, ptr %58, align 8, !tbaa !44
  %60 = getelementptr inbounds nuw <2 x double>, ptr %26, i64 %57
  store double %59, ptr %60, align 8, !tbaa !44
  %61 = add nuw nsw i64 %43, 4
  br label %42

62:                                               ; preds = %604, %27
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 656
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 848
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 336
  %67 = getelementptr inbounds nuw double, ptr %66, i64 %7
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %69 = getelementptr inbounds nuw double, ptr %68, i64 %7
  %70 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %71 = getelementptr inbounds nuw double, ptr %70, i64 %7
  %72 = getelementptr inbounds nuw double, ptr %63, i64 %7
  %73 = getelementptr inbounds nuw i8, ptr %72, i64 64
  store double 0.000000e+00, ptr %73, align 8, !tbaa !44
  %74 = getelementptr inbounds nuw i8, ptr %72, i64 80
  store double 0.000000e+00, ptr %74, align 8, !tbaa !44
  %75 = load double, ptr %67, align 8, !tbaa !44
  store double %75, ptr %72, align 8, !tbaa !44
  %76 = load double, ptr %69, align 8, !tbaa !44
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 704
  %78 = getelementptr inbounds nuw double, ptr %77, i64 %7
  store double %76, ptr %78, align 8, !tbaa !44
  %79 = load double, ptr %71, align 8, !tbaa !44
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 688
  %81 = getelementptr inbounds nuw double, ptr %80, i64 %7
  store double %79, ptr %81, align 8, !tbaa !44
  %82 = getelementptr inbounds nuw i8, ptr %0, i64 672
  %83 = getelementptr inbounds nuw double, ptr %82, i64 %7
  store double %79, ptr %83, align 8, !tbaa !44
  %84 = getelementptr inbounds nuw double, ptr %64, i64 %7
  %85 = getelementptr inbounds nuw i8, ptr %84, i64 64
  store double 0.000000e+00, ptr %85, align 8, !tbaa !44
  %86 = getelementptr inbounds nuw i8, ptr %84, i64 80
  store double 0.000000e+00, ptr %86, align 8, !tbaa !44
  store double %75, ptr %84, align 8, !tbaa !44
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 800
  %88 = getelementptr inbounds nuw double, ptr %87, i64 %7
  store double %76, ptr %88, align 8, !tbaa !44
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %90 = getelementptr inbounds nuw double, ptr %89, i64 %7
  store double %79, ptr %90, align 8, !tbaa !44
  %91 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %92 = getelementptr inbounds nuw double, ptr %91, i64 %7
  store double %79, ptr %92, align 8, !tbaa !44
  %93 = getelementptr inbounds nuw double, ptr %65, i64 %7
  %94 = getelementptr inbounds nuw i8, ptr %93, i64 64
  store double 0.000000e+00, ptr %94, align 8, !tbaa !44
  %95 = getelementptr inbounds nuw i8, ptr %93, i64 80
  store double 0.000000e+00, ptr %95, align 8, !tbaa !44
  store double %75, ptr %93, align 8, !tbaa !44
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 896
  %97 = getelementptr inbounds nuw double, ptr %96, i64 %7
  store double %76, ptr %97, align 8, !tbaa !44
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 880
  %99 = getelementptr inbounds nuw double, ptr %98, i64 %7
  store double %79, ptr %99, align 8, !tbaa !44
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 864
  %101 = getelementptr inbounds nuw double, ptr %100, i64 %7
  store double %79, ptr %101, align 8, !tbaa !44
  %102 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %103 = getelementptr inbounds nuw double, ptr %102, i64 %7
  %104 = load double, ptr %103, align 8, !tbaa !44
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 1024
  %106 = getelementptr inbounds nuw double, ptr %105, i64 %7
  store double %104, ptr %106, align 8, !tbaa !44
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %108 = getelementptr inbounds nuw double, ptr %107, i64 %7
  store double %104, ptr %108, align 8, !tbaa !44
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 1184
  %110 = getelementptr inbounds nuw double, ptr %109, i64 %7
  store double 1.000000e+09, ptr %110, align 8, !tbaa !44
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1232
  %112 = getelementptr inbounds nuw double, ptr %111, i64 %7
  store double 0.000000e+00, ptr %112, align 8, !tbaa !44
  %113 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %114 = getelementptr inbounds nuw double, ptr %113, i64 %7
  %115 = load double, ptr %114, align 8, !tbaa !44
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %117 = getelementptr inbounds nuw double, ptr %116, i64 %7
  store double %115, ptr %117, align 8, !tbaa !44
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 1200
  %119 = getelementptr inbounds nuw double, ptr %118, i64 %7
  store double %115, ptr %119, align 8, !tbaa !44
  %120 = getelementptr inbounds nuw i8, ptr %0, i64 560
  %121 = getelementptr inbounds nuw double, ptr %120, i64 %7
  %122 = load double, ptr %121, align 8, !tbaa !44
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 1312
  %124 = getelementptr inbounds nuw double, ptr %123, i64 %7
  store double %122, ptr %124, align 8, !tbaa !44
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
  %138 = getelementptr inbounds nuw double, ptr %125, i64 %7
  store double 0.000000e+00, ptr %138, align 8, !tbaa !44
  %139 = getelementptr inbounds nuw double, ptr %126, i64 %7
  store double 0.000000e+00, ptr %139, align 8, !tbaa !44
  %140 = getelementptr inbounds nuw double, ptr %127, i64 %7
  store double 0.000000e+00, ptr %140, align 8, !tbaa !44
  %141 = getelementptr inbounds nuw double, ptr %128, i64 %7
  store double 0.000000e+00, ptr %141, align 8, !tbaa !44
  %142 = getelementptr inbounds nuw double, ptr %129, i64 %7
  store double 0.000000e+00, ptr %142, align 8, !tbaa !44
  %143 = getelementptr inbounds nuw double, ptr %130, i64 %7
  store double 0.000000e+00, ptr %143, align 8, !tbaa !44
  %144 = getelementptr inbounds nuw double, ptr %131, i64 %7
  store double 0.000000e+00, ptr %144, align 8, !tbaa !44
  %145 = getelementptr inbounds nuw double, ptr %132, i64 %7
  store double 0.000000e+00, ptr %145, align 8, !tbaa !44
  %146 = getelementptr inbounds nuw double, ptr %133, i64 %7
  store double 0.000000e+00, ptr %146, align 8, !tbaa !44
  %147 = getelementptr inbounds nuw double, ptr %134, i64 %7
  store double 0.000000e+00, ptr %147, align 8, !tbaa !44
  %148 = getelementptr inbounds nuw double, ptr %135, i64 %7
  store double 0.000000e+00, ptr %148, align 8, !tbaa !44
  %149 = getelementptr inbounds nuw double, ptr %136, i64 %7
  store double 0.000000e+00, ptr %149, align 8, !tbaa !44
  %150 = getelementptr inbounds nuw double, ptr %137, i64 %7
  store double 0.000000e+00, ptr %150, align 8, !tbaa !44
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 1456
  %152 = getelementptr inbounds nuw i64, ptr %151, i64 %7
  store i64 0, ptr %152, align 8, !tbaa !30
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 1488
  %154 = getelementptr inbounds nuw i64, ptr %153, i64 %7
  store i64 0, ptr %154, align 8, !tbaa !30
  %155 = getelementptr inbounds nuw i8, ptr %0, i64 1472
  %156 = getelementptr inbounds nuw i64, ptr %155, i64 %7
  store i64 -1, ptr %156, align 8, !tbaa !30
  %157 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %158 = getelementptr inbounds nuw i64, ptr %157, i64 %7
  store i64 -1, ptr %158, align 8, !tbaa !30
  %159 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %160 = getelementptr inbounds nuw i64, ptr %159, i64 %7
  store i64 -1, ptr %160, align 8, !tbaa !30
  ret void

161:                                              ; preds = %31, %604
  %162 = phi i64 [ 0, %31 ], [ %605, %604 ]
  %163 = getelementptr inbounds nuw %struct.Piece, ptr %33, i64 %162
  %164 = load i64, ptr %34, align 16, !tbaa !21
  %165 = load i64, ptr %35, align 8, !tbaa !22
  %166 = load i64, ptr %36, align 16, !tbaa !16
  %167 = mul nsw i64 %166, %3
  %168 = add nsw i64 %167, %162
  %169 = getelementptr inbounds nuw i8, ptr %163, i64 2368
  %170 = load i64, ptr %169, align 16, !tbaa !31
  %171 = load ptr, ptr %37, align 8, !tbaa !223
  %172 = mul i64 %168, 416
  %173 = getelementptr i8, ptr %171, i64 %172
  %174 = getelementptr inbounds nuw double, ptr %163, i64 %7
  br label %204

175:                                              ; preds = %204
  %176 = icmp eq i64 %170, 0
  %177 = load ptr, ptr %38, align 8, !tbaa !224
  %178 = getelementptr inbounds i64, ptr %40, i64 %168
  %179 = load i64, ptr %178, align 8, !tbaa !30
  %180 = mul nsw i64 %164, 3
  %181 = add nsw i64 %164, 1
  %182 = select i1 %176, i64 0, i64 2
  %183 = shl i64 %181, %182
  %184 = add nsw i64 %183, %180
  %185 = mul nsw i64 %179, %184
  %186 = getelementptr inbounds double, ptr %177, i64 %185
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %5) #7
  %187 = getelementptr inbounds nuw i8, ptr %163, i64 336
  %188 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %189 = getelementptr inbounds nuw i8, ptr %163, i64 48
  %190 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %191 = getelementptr inbounds nuw i8, ptr %163, i64 64
  %192 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %193 = getelementptr inbounds nuw i8, ptr %163, i64 80
  %194 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %195 = fmul <2 x double> %188, %194
  %196 = fmul <2 x double> %195, splat (double 0x3FD5555555555555)
  %197 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %192, <2 x double> splat (double 5.000000e-01), <2 x double> %196)
  %198 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %188, <2 x double> %197, <2 x double> %190)
  %199 = fmul <2 x double> %188, %198
  store <2 x double> %199, ptr %5, align 16, !tbaa !26
  %200 = getelementptr inbounds nuw double, ptr %187, i64 %7
  %201 = load double, ptr %200, align 8, !tbaa !44
  %202 = load double, ptr %41, align 8, !tbaa !44
  %203 = load double, ptr %174, align 8, !tbaa !44
  br i1 %176, label %223, label %228

204:                                              ; preds = %204, %161
  %205 = phi i64 [ 0, %161 ], [ %221, %204 ]
  %206 = getelementptr double, ptr %173, i64 %205
  %207 = load double, ptr %206, align 8, !tbaa !44
  %208 = getelementptr inbounds nuw <2 x double>, ptr %174, i64 %205
  store double %207, ptr %208, align 8, !tbaa !44
  %209 = or disjoint i64 %205, 1
  %210 = getelementptr double, ptr %173, i64 %209
  %211 = load double, ptr %210, align 8, !tbaa !44
  %212 = getelementptr inbounds nuw <2 x double>, ptr %174, i64 %209
  store double %211, ptr %212, align 8, !tbaa !44
  %213 = or disjoint i64 %205, 2
  %214 = getelementptr double, ptr %173, i64 %213
  %215 = load double, ptr %214, align 8, !tbaa !44
  %216 = getelementptr inbounds nuw <2 x double>, ptr %174, i64 %213
  store double %215, ptr %216, align 8, !tbaa !44
  %217 = or disjoint i64 %205, 3
  %218 = getelementptr double, ptr %173, i64 %217
  %219 = load double, ptr %218, align 8, !tbaa !44
  %220 = getelementptr inbounds nuw <2 x double>, ptr %174, i64 %217
  store double %219, ptr %220, align 8, !tbaa !44
  %221 = add nuw nsw i64 %205, 4
  %222 = icmp eq i64 %221, 52
  br i1 %222, label %175, label %204, !llvm.loop !225

223:                                              ; preds = %175
  %224 = getelementptr inbounds nuw i8, ptr %163, i64 2376
  %225 = getelementptr inbounds nuw [2 x ptr], ptr %224, i64 0, i64 %7
  %226 = load ptr, ptr %225, align 8, !tbaa !207
  %227 = icmp ne ptr %226, %186
  br label %228

228:                                              ; preds = %223, %175
  %229 = phi i1 [ true, %175 ], [ %227, %223 ]
  %230 = getelementptr inbounds nuw i8, ptr %163, i64 2376
  %231 = getelementptr inbounds nuw [2 x ptr], ptr %230, i64 0, i64 %7
  store ptr %186, ptr %231, align 8, !tbaa !207
  %232 = icmp sgt i64 %164, 0
  %233 = select i1 %232, i1 %229, i1 false
  br i1 %233, label %234, label %264

234:                                              ; preds = %228
  %235 = getelementptr inbounds nuw i8, ptr %163, i64 2456
  %236 = load ptr, ptr %235, align 8, !tbaa !77
  %237 = getelementptr inbounds nuw double, ptr %236, i64 %7
  %238 = getelementptr double, ptr %186, i64 %164
  %239 = getelementptr inbounds nuw i8, ptr %163, i64 2464
  %240 = load ptr, ptr %239, align 16, !tbaa !50
  %241 = getelementptr inbounds nuw double, ptr %240, i64 %7
  %242 = shl i64 %164, 4
  %243 = getelementptr i8, ptr %186, i64 %242
  %244 = getelementptr inbounds nuw i8, ptr %163, i64 2472
  %245 = load ptr, ptr %244, align 8, !tbaa !189
  %246 = getelementptr inbounds nuw double, ptr %245, i64 %7
  %247 = and i64 %164, 1
  %248 = icmp eq i64 %164, 1
  br i1 %248, label %251, label %249

249:                                              ; preds = %234
  %250 = and i64 %164, 9223372036854775806
  br label %276

251:                                              ; preds = %276, %234
  %252 = phi i64 [ 0, %234 ], [ %298, %276 ]
  %253 = icmp eq i64 %247, 0
  br i1 %253, label %264, label %254

254:                                              ; preds = %251
  %255 = getelementptr inbounds nuw double, ptr %186, i64 %252
  %256 = load double, ptr %255, align 8, !tbaa !44
  %257 = getelementptr inbounds nuw <2 x double>, ptr %237, i64 %252
  store double %256, ptr %257, align 8, !tbaa !44
  %258 = getelementptr double, ptr %238, i64 %252
  %259 = load double, ptr %258, align 8, !tbaa !44
  %260 = getelementptr inbounds nuw <2 x double>, ptr %241, i64 %252
  store double %259, ptr %260, align 8, !tbaa !44
  %261 = getelementptr double, ptr %243, i64 %252
  %262 = load double, ptr %261, align 8, !tbaa !44
  %263 = getelementptr inbounds nuw <2 x double>, ptr %246, i64 %252
  store double %262, ptr %263, align 8, !tbaa !44
  br label %264

264:                                              ; preds = %254, %251, %228
  %265 = icmp sgt i64 %183, 0
  %266 = select i1 %265, i1 %229, i1 false
  br i1 %266, label %267, label %313

267:                                              ; preds = %264
  %268 = getelementptr double, ptr %186, i64 %180
  %269 = getelementptr inbounds nuw i8, ptr %163, i64 2480
  %270 = load ptr, ptr %269, align 16, !tbaa !37
  %271 = getelementptr inbounds nuw double, ptr %270, i64 %7
  %272 = and i64 %183, 3
  %273 = icmp ult i64 %183, 4
  br i1 %273, label %301, label %274

274:                                              ; preds = %267
  %275 = and i64 %183, 9223372036854775804
  br label %322

276:                                              ; preds = %276, %249
  %277 = phi i64 [ 0, %249 ], [ %298, %276 ]
  %278 = phi i64 [ 0, %249 ], [ %299, %276 ]
  %279 = getelementptr inbounds nuw double, ptr %186, i64 %277
  %280 = load double, ptr %279, align 8, !tbaa !44
  %281 = getelementptr inbounds nuw <2 x double>, ptr %237, i64 %277
  store double %280, ptr %281, align 8, !tbaa !44
  %282 = getelementptr double, ptr %238, i64 %277
  %283 = load double, ptr %282, align 8, !tbaa !44
  %284 = getelementptr inbounds nuw <2 x double>, ptr %241, i64 %277
  store double %283, ptr %284, align 8, !tbaa !44
  %285 = getelementptr double, ptr %243, i64 %277
  %286 = load double, ptr %285, align 8, !tbaa !44
  %287 = getelementptr inbounds nuw <2 x double>, ptr %246, i64 %277
  store double %286, ptr %287, align 8, !tbaa !44
  %288 = or disjoint i64 %277, 1
  %289 = getelementptr inbounds nuw double, ptr %186, i64 %288
  %290 = load double, ptr %289, align 8, !tbaa !44
  %291 = getelementptr inbounds nuw <2 x double>, ptr %237, i64 %288
  store double %290, ptr %291, align 8, !tbaa !44
  %292 = getelementptr double, ptr %238, i64 %288
  %293 = load double, ptr %292, align 8, !tbaa !44
  %294 = getelementptr inbounds nuw <2 x double>, ptr %241, i64 %288
  store double %293, ptr %294, align 8, !tbaa !44
  %295 = getelementptr double, ptr %243, i64 %288
  %296 = load double, ptr %295, align 8, !tbaa !44
  %297 = getelementptr inbounds nuw <2 x double>, ptr %246, i64 %288
  store double %296, ptr %297, align 8, !tbaa !44
  %298 = add nuw nsw i64 %277, 2
  %299 = add i64 %278, 2
  %300 = icmp eq i64 %299, %250
  br i1 %300, label %251, label %276, !llvm.loop !226

301:                                              ; preds = %322, %267
  %302 = phi i64 [ 0, %267 ], [ %340, %322 ]
  %303 = icmp eq i64 %272, 0
  br i1 %303, label %313, label %304

304:                                              ; preds = %301, %304
  %305 = phi i64 [ %310, %304 ], [ %302, %301 ]
  %306 = phi i64 [ %311, %304 ], [ 0, %301 ]
  %307 = getelementptr double, ptr %268, i64 %305
  %308 = load double, ptr %307, align 8, !tbaa !44
  %309 = getelementptr inbounds nuw <2 x double>, ptr %271, i64 %305
  store double %308, ptr %309, align 8, !tbaa !44
  %310 = add nuw nsw i64 %305, 1
  %311 = add i64 %306, 1
  %312 = icmp eq i64 %311, %272
  br i1 %312, label %313, label %304, !llvm.loop !227

313:                                              ; preds = %301, %304, %264
  %314 = icmp ne i64 %170, 0
  %315 = icmp sgt i64 %164, -1
  %316 = select i1 %314, i1 %315, i1 false
  br i1 %316, label %317, label %343

317:                                              ; preds = %313
  %318 = fdiv double 1.000000e+00, %203
  %319 = getelementptr inbounds nuw i8, ptr %163, i64 2480
  %320 = load ptr, ptr %319, align 16, !tbaa !37
  %321 = getelementptr inbounds nuw double, ptr %320, i64 %7
  br label %483

322:                                              ; preds = %322, %274
  %323 = phi i64 [ 0, %274 ], [ %340, %322 ]
  %324 = phi i64 [ 0, %274 ], [ %341, %322 ]
  %325 = getelementptr double, ptr %268, i64 %323
  %326 = load double, ptr %325, align 8, !tbaa !44
  %327 = getelementptr inbounds nuw <2 x double>, ptr %271, i64 %323
  store double %326, ptr %327, align 8, !tbaa !44
  %328 = or disjoint i64 %323, 1
  %329 = getelementptr double, ptr %268, i64 %328
  %330 = load double, ptr %329, align 8, !tbaa !44
  %331 = getelementptr inbounds nuw <2 x double>, ptr %271, i64 %328
  store double %330, ptr %331, align 8, !tbaa !44
  %332 = or disjoint i64 %323, 2
  %333 = getelementptr double, ptr %268, i64 %332
  %334 = load double, ptr %333, align 8, !tbaa !44
  %335 = getelementptr inbounds nuw <2 x double>, ptr %271, i64 %332
  store double %334, ptr %335, align 8, !tbaa !44
  %336 = or disjoint i64 %323, 3
  %337 = getelementptr double, ptr %268, i64 %336
  %338 = load double, ptr %337, align 8, !tbaa !44
  %339 = getelementptr inbounds nuw <2 x double>, ptr %271, i64 %336
  store double %338, ptr %339, align 8, !tbaa !44
  %340 = add nuw nsw i64 %323, 4
  %341 = add i64 %324, 4
  %342 = icmp eq i64 %341, %275
  br i1 %342, label %301, label %322, !llvm.loop !228

343:                                              ; preds = %483, %313
  %344 = getelementptr inbounds nuw i8, ptr %163, i64 736
  %345 = getelementptr inbounds nuw double, ptr %344, i64 %7
  %346 = load double, ptr %345, align 8, !tbaa !44
  %347 = getelementptr inbounds nuw i8, ptr %163, i64 752
  %348 = getelementptr inbounds nuw double, ptr %347, i64 %7
  %349 = load double, ptr %348, align 8, !tbaa !44
  %350 = getelementptr inbounds nuw i8, ptr %163, i64 768
  %351 = getelementptr inbounds nuw double, ptr %350, i64 %7
  %352 = load double, ptr %351, align 8, !tbaa !44
  %353 = getelementptr inbounds nuw i8, ptr %163, i64 784
  %354 = getelementptr inbounds nuw double, ptr %353, i64 %7
  %355 = load double, ptr %354, align 8, !tbaa !44
  %356 = tail call double @llvm.fmuladd.f64(double %203, double %355, double %352)
  %357 = tail call double @llvm.fmuladd.f64(double %203, double %356, double %349)
  %358 = tail call double @llvm.fmuladd.f64(double %203, double %357, double %346)
  %359 = getelementptr inbounds nuw i8, ptr %163, i64 304
  %360 = getelementptr inbounds nuw double, ptr %359, i64 %7
  %361 = load double, ptr %360, align 8, !tbaa !44
  %362 = getelementptr inbounds nuw i8, ptr %163, i64 448
  %363 = getelementptr inbounds nuw double, ptr %362, i64 %7
  %364 = load double, ptr %363, align 8, !tbaa !44
  %365 = getelementptr inbounds nuw i8, ptr %163, i64 480
  %366 = getelementptr inbounds nuw double, ptr %365, i64 %7
  %367 = load double, ptr %366, align 8, !tbaa !44
  %368 = fsub double %364, %367
  %369 = fmul double %361, %368
  %370 = getelementptr inbounds nuw i8, ptr %163, i64 832
  %371 = getelementptr inbounds nuw i8, ptr %163, i64 1056
  %372 = getelementptr inbounds nuw i8, ptr %163, i64 1280
  %373 = getelementptr inbounds nuw i8, ptr %163, i64 320
  %374 = getelementptr inbounds nuw double, ptr %373, i64 %7
  %375 = getelementptr inbounds nuw i8, ptr %163, i64 352
  %376 = getelementptr inbounds nuw double, ptr %375, i64 %7
  %377 = getelementptr inbounds nuw double, ptr %370, i64 %7
  %378 = getelementptr inbounds nuw i8, ptr %377, i64 80
  store double 0.000000e+00, ptr %378, align 8, !tbaa !44
  %379 = getelementptr inbounds nuw i8, ptr %377, i64 96
  store double 0.000000e+00, ptr %379, align 8, !tbaa !44
  %380 = getelementptr inbounds nuw i8, ptr %377, i64 112
  store double 0.000000e+00, ptr %380, align 8, !tbaa !44
  %381 = getelementptr inbounds nuw i8, ptr %377, i64 128
  store double 0.000000e+00, ptr %381, align 8, !tbaa !44
  %382 = getelementptr inbounds nuw i8, ptr %377, i64 144
  store double 0.000000e+00, ptr %382, align 8, !tbaa !44
  %383 = getelementptr inbounds nuw i8, ptr %377, i64 176
  store double 0.000000e+00, ptr %383, align 8, !tbaa !44
  %384 = getelementptr inbounds nuw i8, ptr %377, i64 192
  store double 0.000000e+00, ptr %384, align 8, !tbaa !44
  store double %203, ptr %377, align 8, !tbaa !44
  %385 = getelementptr inbounds nuw i8, ptr %163, i64 848
  %386 = getelementptr inbounds nuw double, ptr %385, i64 %7
  store double %364, ptr %386, align 8, !tbaa !44
  %387 = load double, ptr %374, align 8, !tbaa !44
  %388 = getelementptr inbounds nuw i8, ptr %163, i64 864
  %389 = getelementptr inbounds nuw double, ptr %388, i64 %7
  store double %387, ptr %389, align 8, !tbaa !44
  %390 = getelementptr inbounds nuw i8, ptr %163, i64 880
  %391 = getelementptr inbounds nuw double, ptr %390, i64 %7
  store double %369, ptr %391, align 8, !tbaa !44
  %392 = getelementptr inbounds nuw i8, ptr %163, i64 992
  %393 = getelementptr inbounds nuw double, ptr %392, i64 %7
  store double %201, ptr %393, align 8, !tbaa !44
  %394 = load double, ptr %376, align 8, !tbaa !44
  %395 = getelementptr inbounds nuw i8, ptr %163, i64 896
  %396 = getelementptr inbounds nuw double, ptr %395, i64 %7
  store double %394, ptr %396, align 8, !tbaa !44
  %397 = getelementptr inbounds nuw i8, ptr %163, i64 1040
  %398 = getelementptr inbounds nuw double, ptr %397, i64 %7
  store double %358, ptr %398, align 8, !tbaa !44
  %399 = getelementptr inbounds nuw double, ptr %371, i64 %7
  %400 = getelementptr inbounds nuw i8, ptr %399, i64 80
  store double 0.000000e+00, ptr %400, align 8, !tbaa !44
  %401 = getelementptr inbounds nuw i8, ptr %399, i64 96
  store double 0.000000e+00, ptr %401, align 8, !tbaa !44
  %402 = getelementptr inbounds nuw i8, ptr %399, i64 112
  store double 0.000000e+00, ptr %402, align 8, !tbaa !44
  %403 = getelementptr inbounds nuw i8, ptr %399, i64 128
  store double 0.000000e+00, ptr %403, align 8, !tbaa !44
  %404 = getelementptr inbounds nuw i8, ptr %399, i64 144
  store double 0.000000e+00, ptr %404, align 8, !tbaa !44
  %405 = getelementptr inbounds nuw i8, ptr %399, i64 176
  store double 0.000000e+00, ptr %405, align 8, !tbaa !44
  %406 = getelementptr inbounds nuw i8, ptr %399, i64 192
  store double 0.000000e+00, ptr %406, align 8, !tbaa !44
  store double %203, ptr %399, align 8, !tbaa !44
  %407 = getelementptr inbounds nuw i8, ptr %163, i64 1072
  %408 = getelementptr inbounds nuw double, ptr %407, i64 %7
  store double %364, ptr %408, align 8, !tbaa !44
  %409 = getelementptr inbounds nuw i8, ptr %163, i64 1088
  %410 = getelementptr inbounds nuw double, ptr %409, i64 %7
  store double %387, ptr %410, align 8, !tbaa !44
  %411 = getelementptr inbounds nuw i8, ptr %163, i64 1104
  %412 = getelementptr inbounds nuw double, ptr %411, i64 %7
  store double %369, ptr %412, align 8, !tbaa !44
  %413 = getelementptr inbounds nuw i8, ptr %163, i64 1216
  %414 = getelementptr inbounds nuw double, ptr %413, i64 %7
  store double %201, ptr %414, align 8, !tbaa !44
  %415 = getelementptr inbounds nuw i8, ptr %163, i64 1120
  %416 = getelementptr inbounds nuw double, ptr %415, i64 %7
  store double %394, ptr %416, align 8, !tbaa !44
  %417 = getelementptr inbounds nuw i8, ptr %163, i64 1264
  %418 = getelementptr inbounds nuw double, ptr %417, i64 %7
  store double %358, ptr %418, align 8, !tbaa !44
  %419 = getelementptr inbounds nuw double, ptr %372, i64 %7
  %420 = getelementptr inbounds nuw i8, ptr %419, i64 80
  store double 0.000000e+00, ptr %420, align 8, !tbaa !44
  %421 = getelementptr inbounds nuw i8, ptr %419, i64 96
  store double 0.000000e+00, ptr %421, align 8, !tbaa !44
  %422 = getelementptr inbounds nuw i8, ptr %419, i64 112
  store double 0.000000e+00, ptr %422, align 8, !tbaa !44
  %423 = getelementptr inbounds nuw i8, ptr %419, i64 128
  store double 0.000000e+00, ptr %423, align 8, !tbaa !44
  %424 = getelementptr inbounds nuw i8, ptr %419, i64 144
  store double 0.000000e+00, ptr %424, align 8, !tbaa !44
  %425 = getelementptr inbounds nuw i8, ptr %419, i64 176
  store double 0.000000e+00, ptr %425, align 8, !tbaa !44
  %426 = getelementptr inbounds nuw i8, ptr %419, i64 192
  store double 0.000000e+00, ptr %426, align 8, !tbaa !44
  store double %203, ptr %419, align 8, !tbaa !44
  %427 = load double, ptr %363, align 8, !tbaa !44
  %428 = getelementptr inbounds nuw i8, ptr %163, i64 1296
  %429 = getelementptr inbounds nuw double, ptr %428, i64 %7
  store double %427, ptr %429, align 8, !tbaa !44
  %430 = getelementptr inbounds nuw i8, ptr %163, i64 1312
  %431 = getelementptr inbounds nuw double, ptr %430, i64 %7
  store double %387, ptr %431, align 8, !tbaa !44
  %432 = getelementptr inbounds nuw i8, ptr %163, i64 1328
  %433 = getelementptr inbounds nuw double, ptr %432, i64 %7
  store double %369, ptr %433, align 8, !tbaa !44
  %434 = getelementptr inbounds nuw i8, ptr %163, i64 1440
  %435 = getelementptr inbounds nuw double, ptr %434, i64 %7
  store double %201, ptr %435, align 8, !tbaa !44
  %436 = getelementptr inbounds nuw i8, ptr %163, i64 1344
  %437 = getelementptr inbounds nuw double, ptr %436, i64 %7
  store double %394, ptr %437, align 8, !tbaa !44
  %438 = getelementptr inbounds nuw i8, ptr %163, i64 1488
  %439 = getelementptr inbounds nuw double, ptr %438, i64 %7
  store double %358, ptr %439, align 8, !tbaa !44
  %440 = load double, ptr %374, align 8, !tbaa !44
  %441 = fadd double %369, %440
  %442 = getelementptr inbounds nuw i8, ptr %163, i64 496
  %443 = getelementptr inbounds nuw double, ptr %442, i64 %7
  store double %441, ptr %443, align 8, !tbaa !44
  %444 = fcmp ogt double %440, 0.000000e+00
  %445 = fdiv double 1.000000e+00, %440
  %446 = select i1 %444, double %445, double 0.000000e+00
  %447 = getelementptr inbounds nuw i8, ptr %163, i64 2160
  %448 = getelementptr inbounds nuw double, ptr %447, i64 %7
  store double %446, ptr %448, align 8, !tbaa !44
  %449 = getelementptr inbounds nuw i8, ptr %163, i64 272
  %450 = getelementptr inbounds nuw double, ptr %449, i64 %7
  %451 = load double, ptr %450, align 8, !tbaa !44
  %452 = fdiv double 1.000000e+00, %451
  %453 = getelementptr inbounds nuw i8, ptr %163, i64 2176
  %454 = getelementptr inbounds nuw double, ptr %453, i64 %7
  store double %452, ptr %454, align 8, !tbaa !44
  %455 = load double, ptr %360, align 8, !tbaa !44
  %456 = fdiv double 1.000000e+00, %455
  %457 = getelementptr inbounds nuw i8, ptr %163, i64 2192
  %458 = getelementptr inbounds nuw double, ptr %457, i64 %7
  store double %456, ptr %458, align 8, !tbaa !44
  %459 = getelementptr inbounds nuw i8, ptr %163, i64 1600
  %460 = getelementptr inbounds nuw i8, ptr %163, i64 1936
  %461 = getelementptr inbounds nuw i8, ptr %163, i64 1952
  %462 = getelementptr inbounds nuw i8, ptr %163, i64 2128
  %463 = getelementptr inbounds nuw double, ptr %459, i64 %7
  store double %201, ptr %463, align 8, !tbaa !44
  %464 = getelementptr inbounds nuw double, ptr %460, i64 %7
  store double %201, ptr %464, align 8, !tbaa !44
  %465 = getelementptr inbounds nuw double, ptr %461, i64 %7
  store double %201, ptr %465, align 8, !tbaa !44
  %466 = getelementptr inbounds nuw double, ptr %462, i64 %7
  store double %201, ptr %466, align 8, !tbaa !44
  %467 = getelementptr inbounds nuw i8, ptr %163, i64 1616
  %468 = getelementptr inbounds nuw i8, ptr %163, i64 1632
  %469 = getelementptr inbounds nuw i8, ptr %163, i64 2144
  %470 = getelementptr inbounds nuw i8, ptr %163, i64 2112
  %471 = getelementptr inbounds nuw i8, ptr %163, i64 2048
  %472 = getelementptr inbounds nuw double, ptr %467, i64 %7
  store double 0.000000e+00, ptr %472, align 8, !tbaa !44
  %473 = getelementptr inbounds nuw double, ptr %468, i64 %7
  store double 0.000000e+00, ptr %473, align 8, !tbaa !44
  %474 = getelementptr inbounds nuw double, ptr %469, i64 %7
  store double 0.000000e+00, ptr %474, align 8, !tbaa !44
  %475 = getelementptr inbounds nuw double, ptr %470, i64 %7
  store double 0.000000e+00, ptr %475, align 8, !tbaa !44
  %476 = getelementptr inbounds nuw double, ptr %471, i64 %7
  store double 0.000000e+00, ptr %476, align 8, !tbaa !44
  %477 = getelementptr inbounds nuw i8, ptr %163, i64 2320
  %478 = getelementptr inbounds nuw i64, ptr %477, i64 %7
  store i64 0, ptr %478, align 8, !tbaa !30
  %479 = getelementptr inbounds nuw i8, ptr %163, i64 2336
  %480 = getelementptr inbounds nuw i64, ptr %479, i64 %7
  store i64 -1, ptr %480, align 8, !tbaa !30
  %481 = getelementptr inbounds nuw i8, ptr %163, i64 2352
  %482 = getelementptr inbounds nuw i64, ptr %481, i64 %7
  store i64 0, ptr %482, align 8, !tbaa !30
  br i1 %232, label %505, label %524

483:                                              ; preds = %317, %483
  %484 = phi i64 [ 0, %317 ], [ %503, %483 ]
  %485 = icmp slt i64 %484, %170
  %486 = select i1 %485, double %318, double 1.000000e+00
  %487 = shl nsw i64 %484, 6
  %488 = getelementptr inbounds nuw i8, ptr %321, i64 %487
  %489 = load double, ptr %488, align 8, !tbaa !44
  %490 = fmul double %486, %489
  store double %490, ptr %488, align 8, !tbaa !44
  %491 = fdiv double %486, %203
  %492 = getelementptr inbounds nuw i8, ptr %488, i64 16
  %493 = load double, ptr %492, align 8, !tbaa !44
  %494 = fmul double %491, %493
  store double %494, ptr %492, align 8, !tbaa !44
  %495 = fdiv double %491, %203
  %496 = getelementptr inbounds nuw i8, ptr %488, i64 32
  %497 = load double, ptr %496, align 8, !tbaa !44
  %498 = fmul double %495, %497
  store double %498, ptr %496, align 8, !tbaa !44
  %499 = fdiv double %495, %203
  %500 = getelementptr inbounds nuw i8, ptr %488, i64 48
  %501 = load double, ptr %500, align 8, !tbaa !44
  %502 = fmul double %499, %501
  store double %502, ptr %500, align 8, !tbaa !44
  %503 = add nuw nsw i64 %484, 1
  %504 = icmp slt i64 %484, %164
  br i1 %504, label %483, label %343, !llvm.loop !229

505:                                              ; preds = %343
  %506 = load i64, ptr %169, align 16, !tbaa !31
  %507 = getelementptr inbounds nuw i8, ptr %163, i64 256
  %508 = getelementptr inbounds nuw double, ptr %507, i64 %7
  %509 = getelementptr inbounds nuw i8, ptr %163, i64 2408
  %510 = load ptr, ptr %509, align 8, !tbaa !66
  %511 = getelementptr inbounds nuw double, ptr %510, i64 %7
  %512 = getelementptr inbounds nuw i8, ptr %163, i64 2400
  %513 = load ptr, ptr %512, align 16, !tbaa !49
  %514 = getelementptr inbounds nuw double, ptr %513, i64 %7
  %515 = getelementptr inbounds nuw i8, ptr %163, i64 2392
  %516 = load ptr, ptr %515, align 8, !tbaa !84
  %517 = getelementptr inbounds nuw double, ptr %516, i64 %7
  %518 = getelementptr inbounds nuw i8, ptr %163, i64 2424
  %519 = load ptr, ptr %518, align 8, !tbaa !51
  %520 = getelementptr inbounds nuw double, ptr %519, i64 %7
  %521 = getelementptr inbounds nuw i8, ptr %163, i64 2416
  %522 = load ptr, ptr %521, align 16, !tbaa !67
  %523 = getelementptr inbounds nuw double, ptr %522, i64 %7
  br label %537

524:                                              ; preds = %543, %343
  %525 = icmp slt i64 %165, 0
  br i1 %525, label %604, label %526

526:                                              ; preds = %524
  %527 = getelementptr inbounds nuw i8, ptr %163, i64 2552
  %528 = load ptr, ptr %527, align 8, !tbaa !62
  %529 = getelementptr inbounds nuw double, ptr %528, i64 %7
  %530 = getelementptr inbounds nuw i8, ptr %163, i64 2544
  %531 = load ptr, ptr %530, align 16, !tbaa !52
  %532 = getelementptr inbounds nuw double, ptr %531, i64 %7
  %533 = icmp eq i64 %165, 0
  br i1 %533, label %552, label %534

534:                                              ; preds = %526
  %535 = add nuw i64 %165, 1
  %536 = and i64 %535, -2
  br label %577

537:                                              ; preds = %505, %543
  %538 = phi i64 [ 0, %505 ], [ %550, %543 ]
  %539 = icmp slt i64 %538, %506
  br i1 %539, label %540, label %543

540:                                              ; preds = %537
  %541 = load double, ptr %508, align 8, !tbaa !44
  %542 = fmul double %201, %541
  br label %543

543:                                              ; preds = %537, %540
  %544 = phi double [ %542, %540 ], [ %202, %537 ]
  %545 = getelementptr inbounds nuw <2 x double>, ptr %511, i64 %538
  store double %544, ptr %545, align 8, !tbaa !44
  %546 = getelementptr inbounds nuw <2 x double>, ptr %514, i64 %538
  store double %544, ptr %546, align 8, !tbaa !44
  %547 = getelementptr inbounds nuw <2 x double>, ptr %517, i64 %538
  store double %544, ptr %547, align 8, !tbaa !44
  %548 = getelementptr inbounds nuw <2 x double>, ptr %520, i64 %538
  store double 1.000000e+00, ptr %548, align 8, !tbaa !44
  %549 = getelementptr inbounds nuw <2 x double>, ptr %523, i64 %538
  store double 1.000000e+00, ptr %549, align 8, !tbaa !44
  %550 = add nuw nsw i64 %538, 1
  %551 = icmp eq i64 %550, %164
  br i1 %551, label %524, label %537, !llvm.loop !230

552:                                              ; preds = %591, %526
  %553 = phi i64 [ 0, %526 ], [ %595, %591 ]
  %554 = and i64 %165, 1
  %555 = icmp eq i64 %554, 0
  br i1 %555, label %556, label %564

556:                                              ; preds = %552
  %557 = icmp slt i64 %553, %165
  br i1 %557, label %560, label %558

558:                                              ; preds = %556
  %559 = load double, ptr %363, align 8, !tbaa !44
  br label %560

560:                                              ; preds = %558, %556
  %561 = phi double [ %559, %558 ], [ %358, %556 ]
  %562 = getelementptr inbounds nuw <2 x double>, ptr %529, i64 %553
  store double %561, ptr %562, align 8, !tbaa !44
  %563 = getelementptr inbounds nuw <2 x double>, ptr %532, i64 %553
  store double %561, ptr %563, align 8, !tbaa !44
  br label %564

564:                                              ; preds = %552, %560
  %565 = icmp eq i64 %165, 0
  br i1 %565, label %604, label %566

566:                                              ; preds = %564
  %567 = getelementptr inbounds nuw i8, ptr %163, i64 2504
  %568 = load ptr, ptr %567, align 8, !tbaa !63
  %569 = getelementptr inbounds nuw double, ptr %568, i64 %7
  %570 = getelementptr inbounds nuw i8, ptr %163, i64 2496
  %571 = load ptr, ptr %570, align 16, !tbaa !53
  %572 = getelementptr inbounds nuw double, ptr %571, i64 %7
  %573 = and i64 %165, 1
  %574 = icmp eq i64 %165, 1
  br i1 %574, label %598, label %575

575:                                              ; preds = %566
  %576 = and i64 %165, 9223372036854775806
  br label %608

577:                                              ; preds = %591, %534
  %578 = phi i64 [ 0, %534 ], [ %595, %591 ]
  %579 = phi i64 [ 0, %534 ], [ %596, %591 ]
  %580 = icmp slt i64 %578, %165
  br i1 %580, label %583, label %581

581:                                              ; preds = %577
  %582 = load double, ptr %363, align 8, !tbaa !44
  br label %583

583:                                              ; preds = %577, %581
  %584 = phi double [ %582, %581 ], [ %358, %577 ]
  %585 = getelementptr inbounds nuw <2 x double>, ptr %529, i64 %578
  store double %584, ptr %585, align 8, !tbaa !44
  %586 = getelementptr inbounds nuw <2 x double>, ptr %532, i64 %578
  store double %584, ptr %586, align 8, !tbaa !44
  %587 = or disjoint i64 %578, 1
  %588 = icmp slt i64 %587, %165
  br i1 %588, label %591, label %589

589:                                              ; preds = %583
  %590 = load double, ptr %363, align 8, !tbaa !44
  br label %591

591:                                              ; preds = %589, %583
  %592 = phi double [ %590, %589 ], [ %358, %583 ]
  %593 = getelementptr inbounds nuw <2 x double>, ptr %529, i64 %587
  store double %592, ptr %593, align 8, !tbaa !44
  %594 = getelementptr inbounds nuw <2 x double>, ptr %532, i64 %587
  store double %592, ptr %594, align 8, !tbaa !44
  %595 = add nuw i64 %578, 2
  %596 = add i64 %579, 2
  %597 = icmp eq i64 %596, %536
  br i1 %597, label %552, label %577, !llvm.loop !231

598:                                              ; preds = %608, %566
  %599 = phi i64 [ 0, %566 ], [ %616, %608 ]
  %600 = icmp eq i64 %573, 0
  br i1 %600, label %604, label %601

601:                                              ; preds = %598
  %602 = getelementptr inbounds nuw <2 x double>, ptr %569, i64 %599
  store double %201, ptr %602, align 8, !tbaa !44
  %603 = getelementptr inbounds nuw <2 x double>, ptr %572, i64 %599
  store double %201, ptr %603, align 8, !tbaa !44
  br label %604

604:                                              ; preds = %601, %598, %524, %564
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %5) #7
  %605 = add nuw nsw i64 %162, 1
  %606 = load i64, ptr %28, align 8, !tbaa !20
  %607 = icmp slt i64 %605, %606
  br i1 %607, label %161, label %62, !llvm.loop !232

608:                                              ; preds = %608, %575
  %609 = phi i64 [ 0, %575 ], [ %616, %608 ]
  %610 = phi i64 [ 0, %575 ], [ %617, %608 ]
  %611 = getelementptr inbounds nuw <2 x double>, ptr %569, i64 %609
  store double %201, ptr %611, align 8, !tbaa !44
  %612 = getelementptr inbounds nuw <2 x double>, ptr %572, i64 %609
  store double %201, ptr %612, align 8, !tbaa !44
  %613 = or disjoint i64 %609, 1
  %614 = getelementptr inbounds nuw <2 x double>, ptr %569, i64 %613
  store double %201, ptr %614, align 8, !tbaa !44
  %615 = getelementptr inbounds nuw <2 x double>, ptr %572, i64 %613
  store double %201, ptr %615, align 8, !tbaa !44
  %616 = add nuw nsw i64 %609, 2
  %617 = add i64 %610, 2
  %618 = icmp eq i64 %617, %576
  br i1 %618, label %598, label %608, !llvm.loop !233
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 16 dereferenceable(1616) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !234
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !235
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 1504
  %10 = zext nneg i32 %2 to i64
  %11 = getelementptr inbounds nuw [2 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %18 = getelementptr inbounds nuw double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !44
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !236
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %26 = getelementptr inbounds nuw double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !44
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %29 = getelementptr inbounds nuw double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !44
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
  %40 = load double, ptr %39, align 8, !tbaa !44
  %41 = getelementptr inbounds nuw i8, ptr %39, i64 40
  %42 = load double, ptr %41, align 8, !tbaa !44
  %43 = fcmp ult double %42, 0.000000e+00
  br i1 %43, label %49, label %44

44:                                               ; preds = %36
  %45 = load double, ptr %35, align 8, !tbaa !44
  %46 = fsub double %42, %45
  %47 = fcmp ogt double %46, 0x3EB0C6F7A0B5ED8D
  %48 = select i1 %47, double %46, double 0.000000e+00
  br label %49

49:                                               ; preds = %44, %36
  %50 = phi double [ %48, %44 ], [ %40, %36 ]
  %51 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %52 = load double, ptr %51, align 8, !tbaa !44
  %53 = fcmp oeq double %52, 2.000000e+00
  br i1 %53, label %54, label %62

54:                                               ; preds = %49
  %55 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %56 = load double, ptr %55, align 8, !tbaa !44
  %57 = fcmp oeq double %56, 4.000000e+00
  br i1 %57, label %58, label %62

58:                                               ; preds = %54
  %59 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %60 = load double, ptr %59, align 8, !tbaa !44
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
  br i1 %68, label %69, label %36, !llvm.loop !237

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !44
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %73 = getelementptr inbounds nuw double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !44
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 1072
  %76 = getelementptr inbounds nuw double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !44
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 1584
  %78 = getelementptr inbounds nuw [2 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !44
  br label %292

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !44
  %82 = load double, ptr %35, align 8, !tbaa !44
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 1072
  %84 = getelementptr inbounds nuw double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !44
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 1136
  %86 = getelementptr inbounds nuw double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !44
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !44
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1088
  %90 = getelementptr inbounds nuw double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !44
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !44
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 1104
  %94 = getelementptr inbounds nuw double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !44
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !44
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 1120
  %98 = getelementptr inbounds nuw double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !44
  %99 = load double, ptr %80, align 8, !tbaa !44
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 1232
  %102 = getelementptr inbounds nuw double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !44
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %223

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 600
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %174

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1608
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
  %124 = getelementptr inbounds nuw i8, ptr %121, i64 1136
  %125 = load <2 x double>, ptr %124, align 16, !tbaa !26
  %126 = fmul <2 x double> %123, %125
  %127 = fadd <2 x double> %118, %126
  %128 = or disjoint i64 %119, 1
  %129 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %128
  %130 = getelementptr inbounds nuw i8, ptr %129, i64 32
  %131 = load <2 x double>, ptr %130, align 16, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %129, i64 1136
  %133 = load <2 x double>, ptr %132, align 16, !tbaa !26
  %134 = fmul <2 x double> %131, %133
  %135 = fadd <2 x double> %127, %134
  %136 = or disjoint i64 %119, 2
  %137 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %136
  %138 = getelementptr inbounds nuw i8, ptr %137, i64 32
  %139 = load <2 x double>, ptr %138, align 16, !tbaa !26
  %140 = getelementptr inbounds nuw i8, ptr %137, i64 1136
  %141 = load <2 x double>, ptr %140, align 16, !tbaa !26
  %142 = fmul <2 x double> %139, %141
  %143 = fadd <2 x double> %135, %142
  %144 = or disjoint i64 %119, 3
  %145 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %144
  %146 = getelementptr inbounds nuw i8, ptr %145, i64 32
  %147 = load <2 x double>, ptr %146, align 16, !tbaa !26
  %148 = getelementptr inbounds nuw i8, ptr %145, i64 1136
  %149 = load <2 x double>, ptr %148, align 16, !tbaa !26
  %150 = fmul <2 x double> %147, %149
  %151 = fadd <2 x double> %143, %150
  %152 = add nuw nsw i64 %119, 4
  %153 = add i64 %120, 4
  %154 = icmp eq i64 %153, %116
  br i1 %154, label %155, label %117, !llvm.loop !238

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
  %167 = getelementptr inbounds nuw i8, ptr %164, i64 1136
  %168 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %169 = fmul <2 x double> %166, %168
  %170 = fadd <2 x double> %161, %169
  %171 = add nuw nsw i64 %162, 1
  %172 = add i64 %163, 1
  %173 = icmp eq i64 %172, %113
  br i1 %173, label %174, label %160, !llvm.loop !239

174:                                              ; preds = %155, %160, %106
  %175 = phi <2 x double> [ zeroinitializer, %106 ], [ %156, %155 ], [ %170, %160 ]
  %176 = extractelement <2 x double> %175, i32 %2
  %177 = fmul double %176, 4.615260e+02
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %179 = getelementptr inbounds nuw double, ptr %178, i64 %10
  %180 = load double, ptr %179, align 8, !tbaa !44
  %181 = fmul double %180, %177
  %182 = fdiv double %181, %30
  %183 = fcmp ogt double %182, 0.000000e+00
  %184 = fneg double %182
  %185 = select i1 %183, double %184, double -0.000000e+00
  %186 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %187 = getelementptr inbounds nuw double, ptr %186, i64 %10
  %188 = load double, ptr %187, align 8, !tbaa !44
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
  store double %220, ptr %222, align 8, !tbaa !44
  br label %223

223:                                              ; preds = %79, %174
  %224 = fcmp une double %99, %103
  br i1 %224, label %225, label %264

225:                                              ; preds = %223
  %226 = getelementptr inbounds nuw i8, ptr %0, i64 1232
  %227 = getelementptr inbounds nuw double, ptr %226, i64 %10
  store double %99, ptr %227, align 8, !tbaa !44
  %228 = getelementptr inbounds nuw i8, ptr %0, i64 1296
  %229 = getelementptr inbounds nuw double, ptr %228, i64 %10
  store double %82, ptr %229, align 8, !tbaa !44
  %230 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %231 = getelementptr inbounds nuw double, ptr %230, i64 %10
  %232 = load double, ptr %231, align 8, !tbaa !44
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %234 = getelementptr inbounds nuw double, ptr %233, i64 %10
  store double %232, ptr %234, align 8, !tbaa !44
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1472
  %236 = getelementptr inbounds nuw i64, ptr %235, i64 %10
  store i64 -1, ptr %236, align 8, !tbaa !30
  %237 = fcmp oeq double %99, 0.000000e+00
  %238 = fcmp oeq double %99, 3.000000e+00
  %239 = or i1 %237, %238
  br i1 %239, label %240, label %248

240:                                              ; preds = %225
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %242 = getelementptr inbounds nuw double, ptr %241, i64 %10
  store double %30, ptr %242, align 8, !tbaa !44
  store double %30, ptr %26, align 8, !tbaa !44
  %243 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %244 = getelementptr inbounds nuw double, ptr %243, i64 %10
  %245 = load double, ptr %244, align 8, !tbaa !44
  %246 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %247 = getelementptr inbounds nuw double, ptr %246, i64 %10
  store double %245, ptr %247, align 8, !tbaa !44
  br label %248

248:                                              ; preds = %225, %240
  %249 = getelementptr inbounds nuw i8, ptr %0, i64 600
  %250 = load i64, ptr %249, align 8, !tbaa !20
  %251 = icmp sgt i64 %250, 0
  br i1 %251, label %252, label %264

252:                                              ; preds = %248
  %253 = getelementptr inbounds nuw i8, ptr %0, i64 1608
  %254 = load ptr, ptr %253, align 8, !tbaa !28
  %255 = getelementptr inbounds nuw i64, ptr %254, i64 %10
  %256 = sext i1 %238 to i64
  br label %257

257:                                              ; preds = %252, %257
  %258 = phi i64 [ 0, %252 ], [ %261, %257 ]
  %259 = getelementptr inbounds nuw %struct.Piece, ptr %255, i64 %258, i32 49
  store i64 -1, ptr %259, align 8, !tbaa !30
  %260 = getelementptr inbounds nuw %struct.Piece, ptr %255, i64 %258, i32 50
  store i64 %256, ptr %260, align 8, !tbaa !30
  %261 = add nuw nsw i64 %258, 1
  %262 = load i64, ptr %249, align 8, !tbaa !20
  %263 = icmp slt i64 %261, %262
  br i1 %263, label %257, label %264, !llvm.loop !240

264:                                              ; preds = %257, %248, %223
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #7
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
  %279 = getelementptr inbounds nuw i8, ptr %0, i64 1456
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
  %289 = getelementptr inbounds nuw i8, ptr %0, i64 1488
  %290 = load <2 x i64>, ptr %289, align 16, !tbaa !26
  %291 = or <2 x i64> %284, %290
  store <2 x i64> %291, ptr %289, align 16, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #7
  br label %292

292:                                              ; preds = %264, %69
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(read, argmem: readwrite, inaccessiblemem: none)
define internal fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr nocapture noundef nonnull align 16 dereferenceable(1616) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 0, 2) %2, <2 x i64> noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %6 = load <2 x double>, ptr %5, align 16, !tbaa !26
  %7 = getelementptr inbounds nuw i8, ptr %0, i64 1008
  %8 = load <2 x double>, ptr %7, align 16, !tbaa !26
  %9 = fadd <2 x double> %6, %8
  %10 = zext nneg i32 %2 to i64
  %11 = getelementptr inbounds nuw i8, ptr %1, i64 136
  %12 = load ptr, ptr %11, align 8
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 1536
  %14 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %15 = load ptr, ptr %14, align 8
  %16 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %17 = load ptr, ptr %16, align 8
  %18 = extractelement <2 x i64> %3, i64 0
  %19 = icmp eq i64 %18, 0
  br i1 %19, label %84, label %20

20:                                               ; preds = %4
  %21 = getelementptr inbounds nuw i8, ptr %0, i64 1504
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
  %40 = load double, ptr %39, align 8, !tbaa !44
  %41 = fcmp ugt double %32, %40
  br i1 %41, label %45, label %42

42:                                               ; preds = %36
  %43 = add nsw i64 %37, -1
  store i64 %43, ptr %27, align 8, !tbaa !30
  %44 = icmp sgt i64 %37, 1
  br i1 %44, label %36, label %45, !llvm.loop !241

45:                                               ; preds = %36, %42, %20
  %46 = phi i64 [ %33, %20 ], [ %37, %36 ], [ %43, %42 ]
  %47 = icmp slt i64 %46, %26
  br i1 %47, label %48, label %57

48:                                               ; preds = %45, %54
  %49 = phi i64 [ %55, %54 ], [ %46, %45 ]
  %50 = shl nsw i64 %49, 4
  %51 = getelementptr inbounds i8, ptr %31, i64 %50
  %52 = load double, ptr %51, align 8, !tbaa !44
  %53 = fcmp ule double %32, %52
  br i1 %53, label %62, label %54

54:                                               ; preds = %48
  %55 = add i64 %49, 1
  store i64 %55, ptr %27, align 8, !tbaa !30
  %56 = icmp eq i64 %55, %26
  br i1 %56, label %57, label %48, !llvm.loop !242

57:                                               ; preds = %54, %45
  %58 = shl i64 %26, 4
  %59 = getelementptr i8, ptr %31, i64 %58
  %60 = getelementptr i8, ptr %59, i64 -8
  %61 = load double, ptr %60, align 8, !tbaa !44
  br label %81

62:                                               ; preds = %48
  %63 = shl nsw i64 %49, 1
  %64 = or disjoint i64 %63, 1
  %65 = getelementptr inbounds double, ptr %31, i64 %64
  %66 = load double, ptr %65, align 8, !tbaa !44
  %67 = icmp sgt i64 %49, 0
  br i1 %67, label %68, label %81

68:                                               ; preds = %62
  %69 = shl i64 %49, 4
  %70 = getelementptr i8, ptr %31, i64 %69
  %71 = getelementptr i8, ptr %70, i64 -8
  %72 = load double, ptr %71, align 8, !tbaa !44
  %73 = getelementptr i8, ptr %70, i64 -16
  %74 = load double, ptr %73, align 8, !tbaa !44
  %75 = fsub double %32, %74
  %76 = load double, ptr %70, align 8, !tbaa !44
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
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1512
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
  %109 = load double, ptr %108, align 8, !tbaa !44
  %110 = fcmp ugt double %101, %109
  br i1 %110, label %114, label %111

111:                                              ; preds = %105
  %112 = add nsw i64 %106, -1
  store i64 %112, ptr %96, align 8, !tbaa !30
  %113 = icmp sgt i64 %106, 1
  br i1 %113, label %105, label %114, !llvm.loop !241

114:                                              ; preds = %105, %111, %88
  %115 = phi i64 [ %102, %88 ], [ %106, %105 ], [ %112, %111 ]
  %116 = icmp slt i64 %115, %94
  br i1 %116, label %117, label %126

117:                                              ; preds = %114, %123
  %118 = phi i64 [ %124, %123 ], [ %115, %114 ]
  %119 = shl nsw i64 %118, 4
  %120 = getelementptr inbounds i8, ptr %100, i64 %119
  %121 = load double, ptr %120, align 8, !tbaa !44
  %122 = fcmp ule double %101, %121
  br i1 %122, label %131, label %123

123:                                              ; preds = %117
  %124 = add i64 %118, 1
  store i64 %124, ptr %96, align 8, !tbaa !30
  %125 = icmp eq i64 %124, %94
  br i1 %125, label %126, label %117, !llvm.loop !242

126:                                              ; preds = %123, %114
  %127 = shl i64 %94, 4
  %128 = getelementptr i8, ptr %100, i64 %127
  %129 = getelementptr i8, ptr %128, i64 -8
  %130 = load double, ptr %129, align 8, !tbaa !44
  br label %150

131:                                              ; preds = %117
  %132 = shl nsw i64 %118, 1
  %133 = or disjoint i64 %132, 1
  %134 = getelementptr inbounds double, ptr %100, i64 %133
  %135 = load double, ptr %134, align 8, !tbaa !44
  %136 = icmp sgt i64 %118, 0
  br i1 %136, label %137, label %150

137:                                              ; preds = %131
  %138 = shl i64 %118, 4
  %139 = getelementptr i8, ptr %100, i64 %138
  %140 = getelementptr i8, ptr %139, i64 -8
  %141 = load double, ptr %140, align 8, !tbaa !44
  %142 = getelementptr i8, ptr %139, i64 -16
  %143 = load double, ptr %142, align 8, !tbaa !44
  %144 = fsub double %101, %143
  %145 = load double, ptr %139, align 8, !tbaa !44
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
declare <2 x double> @llvm.fmuladd.v2f64(<2 x double>, <2 x double>, <2 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.fmuladd.f64(double, double, double) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.vector.reduce.or.v2i64(<2 x i64>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <2 x double> @llvm.fabs.v2f64(<2 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <2 x double> @llvm.sqrt.v2f64(<2 x double>) #4

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
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 592, !6, i64 600, !6, i64 608, !6, i64 616, !6, i64 624, !6, i64 632, !7, i64 640, !7, i64 656, !7, i64 752, !7, i64 848, !7, i64 944, !7, i64 960, !7, i64 976, !7, i64 992, !7, i64 1008, !7, i64 1024, !7, i64 1040, !7, i64 1056, !7, i64 1072, !7, i64 1088, !7, i64 1104, !7, i64 1120, !7, i64 1136, !7, i64 1152, !7, i64 1168, !7, i64 1184, !7, i64 1200, !7, i64 1216, !7, i64 1232, !7, i64 1248, !7, i64 1264, !7, i64 1280, !7, i64 1296, !7, i64 1312, !7, i64 1328, !7, i64 1344, !7, i64 1360, !7, i64 1376, !7, i64 1392, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1472, !7, i64 1488, !7, i64 1504, !7, i64 1520, !7, i64 1536, !7, i64 1568, !7, i64 1584, !11, i64 1600, !19, i64 1608}
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
!28 = !{!17, !19, i64 1608}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 2368}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 832, !7, i64 1056, !7, i64 1280, !7, i64 1504, !7, i64 1520, !7, i64 1536, !7, i64 1552, !7, i64 1568, !7, i64 1584, !7, i64 1600, !7, i64 1616, !7, i64 1632, !7, i64 1648, !7, i64 1664, !7, i64 1680, !7, i64 1696, !7, i64 1712, !7, i64 1728, !7, i64 1744, !7, i64 1760, !7, i64 1776, !34, i64 1792, !7, i64 1840, !7, i64 1856, !7, i64 1872, !7, i64 1888, !7, i64 1904, !7, i64 1920, !7, i64 1936, !7, i64 1952, !7, i64 1968, !7, i64 1984, !7, i64 2000, !7, i64 2016, !7, i64 2032, !7, i64 2048, !7, i64 2064, !7, i64 2080, !7, i64 2096, !7, i64 2112, !7, i64 2128, !7, i64 2144, !7, i64 2160, !7, i64 2176, !7, i64 2192, !35, i64 2208, !7, i64 2304, !7, i64 2320, !7, i64 2336, !7, i64 2352, !6, i64 2368, !7, i64 2376, !11, i64 2392, !11, i64 2400, !11, i64 2408, !11, i64 2416, !11, i64 2424, !11, i64 2432, !11, i64 2440, !11, i64 2448, !11, i64 2456, !11, i64 2464, !11, i64 2472, !11, i64 2480, !11, i64 2488, !11, i64 2496, !11, i64 2504, !11, i64 2512, !11, i64 2520, !11, i64 2528, !11, i64 2536, !11, i64 2544, !11, i64 2552}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560, !7, i64 576, !7, i64 592, !7, i64 608, !7, i64 624, !7, i64 640, !7, i64 656, !7, i64 672, !7, i64 688, !7, i64 704, !7, i64 720, !7, i64 736, !7, i64 752, !7, i64 768, !7, i64 784, !7, i64 800, !7, i64 816}
!34 = !{!"_ZTS5Joint", !7, i64 0, !7, i64 16, !7, i64 32}
!35 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80}
!36 = !{!11, !11, i64 0}
!37 = !{!32, !11, i64 2480}
!38 = distinct !{!38, !39}
!39 = !{!"llvm.loop.mustprogress"}
!40 = !{!17, !11, i64 1600}
!41 = !{!5, !6, i64 0}
!42 = !{!5, !6, i64 184}
!43 = !{!5, !6, i64 192}
!44 = !{!9, !9, i64 0}
!45 = !{!5, !10, i64 216}
!46 = !{!5, !6, i64 40}
!47 = !{!5, !10, i64 200}
!48 = !{!5, !10, i64 208}
!49 = !{!32, !11, i64 2400}
!50 = !{!32, !11, i64 2464}
!51 = !{!32, !11, i64 2424}
!52 = !{!32, !11, i64 2544}
!53 = !{!32, !11, i64 2496}
!54 = !{!55}
!55 = distinct !{!55, !56, !"_ZL4nearRK10PieceGivenDv2_d: argument 0"}
!56 = distinct !{!56, !"_ZL4nearRK10PieceGivenDv2_d"}
!57 = distinct !{!57, !39}
!58 = distinct !{!58, !39}
!59 = distinct !{!59, !39}
!60 = distinct !{!60, !39}
!61 = distinct !{!61, !39}
!62 = !{!32, !11, i64 2552}
!63 = !{!32, !11, i64 2504}
!64 = !{!32, !11, i64 2512}
!65 = distinct !{!65, !39}
!66 = !{!32, !11, i64 2408}
!67 = !{!32, !11, i64 2416}
!68 = distinct !{!68, !39}
!69 = distinct !{!69, !39}
!70 = distinct !{!70, !39}
!71 = !{!72}
!72 = distinct !{!72, !73, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!73 = distinct !{!73, !"_ZL4stirRK5GroupRK5Piece"}
!74 = !{!75}
!75 = distinct !{!75, !76, !"_ZL11water_afterRK5GroupRK5PieceDv2_d: argument 0"}
!76 = distinct !{!76, !"_ZL11water_afterRK5GroupRK5PieceDv2_d"}
!77 = !{!32, !11, i64 2456}
!78 = distinct !{!78, !39}
!79 = distinct !{!79, !39}
!80 = distinct !{!80, !39}
!81 = !{!82}
!82 = distinct !{!82, !83, !"_ZL7past_ofRK5Pieceb: argument 0"}
!83 = distinct !{!83, !"_ZL7past_ofRK5Pieceb"}
!84 = !{!32, !11, i64 2392}
!85 = !{!32, !11, i64 2448}
!86 = !{!32, !11, i64 2432}
!87 = !{!32, !11, i64 2440}
!88 = !{!89, !91}
!89 = distinct !{!89, !90, !"_ZL4nearRK10PieceGivenDv2_d: argument 0"}
!90 = distinct !{!90, !"_ZL4nearRK10PieceGivenDv2_d"}
!91 = distinct !{!91, !92, !"_ZL9join_boneRK5PieceDv2_dS2_S2_: argument 0"}
!92 = distinct !{!92, !"_ZL9join_boneRK5PieceDv2_dS2_S2_"}
!93 = !{!91}
!94 = !{!95}
!95 = distinct !{!95, !96, !"_ZN11EliminationILb1EE4faceExDv2_dS1_: argument 0"}
!96 = distinct !{!96, !"_ZN11EliminationILb1EE4faceExDv2_dS1_"}
!97 = distinct !{!97, !39}
!98 = !{!99}
!99 = distinct !{!99, !100, !"_ZL7past_ofRK5Pieceb: argument 0"}
!100 = distinct !{!100, !"_ZL7past_ofRK5Pieceb"}
!101 = !{!102}
!102 = distinct !{!102, !103, !"_ZL7past_ofRK5Pieceb: argument 0"}
!103 = distinct !{!103, !"_ZL7past_ofRK5Pieceb"}
!104 = !{!105}
!105 = distinct !{!105, !106, !"_ZN11EliminationILb0EE4faceExDv2_dS1_: argument 0"}
!106 = distinct !{!106, !"_ZN11EliminationILb0EE4faceExDv2_dS1_"}
!107 = !{!108}
!108 = distinct !{!108, !109, !"_ZN11EliminationILb0EE4faceExDv2_dS1_: argument 0"}
!109 = distinct !{!109, !"_ZN11EliminationILb0EE4faceExDv2_dS1_"}
!110 = distinct !{!110, !39}
!111 = !{!112}
!112 = distinct !{!112, !113, !"_ZL7past_ofRK5Pieceb: argument 0"}
!113 = distinct !{!113, !"_ZL7past_ofRK5Pieceb"}
!114 = !{!115}
!115 = distinct !{!115, !116, !"_ZN11EliminationILb0EE4faceExDv2_dS1_: argument 0"}
!116 = distinct !{!116, !"_ZN11EliminationILb0EE4faceExDv2_dS1_"}
!117 = distinct !{!117, !39}
!118 = distinct !{!118, !39}
!119 = !{!120}
!120 = distinct !{!120, !121, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!121 = distinct !{!121, !"_ZL4stirRK5GroupRK5Piece"}
!122 = !{!123}
!123 = distinct !{!123, !124, !"_ZL4nearRK10PieceGivenDv2_d: argument 0"}
!124 = distinct !{!124, !"_ZL4nearRK10PieceGivenDv2_d"}
!125 = distinct !{!125, !39}
!126 = !{!32, !11, i64 2536}
!127 = distinct !{!127, !39}
!128 = !{!32, !11, i64 2520}
!129 = !{!32, !11, i64 2528}
!130 = distinct !{!130, !39}
!131 = distinct !{!131, !39}
!132 = distinct !{!132, !39}
!133 = distinct !{!133, !39}
!134 = !{!135}
!135 = distinct !{!135, !136, !"_ZL8condenseR5GroupDv2_d: argument 0"}
!136 = distinct !{!136, !"_ZL8condenseR5GroupDv2_d"}
!137 = !{!138}
!138 = distinct !{!138, !139, !"_ZL9evaporateR5GroupDv2_d: argument 0"}
!139 = distinct !{!139, !"_ZL9evaporateR5GroupDv2_d"}
!140 = !{!141, !138}
!141 = distinct !{!141, !142, !"_ZL8flash_ofRK5GroupR5PieceDv2_d: argument 0"}
!142 = distinct !{!142, !"_ZL8flash_ofRK5GroupR5PieceDv2_d"}
!143 = !{!144, !141, !138}
!144 = distinct !{!144, !145, !"_ZL11look_insideRK5GroupRK5PieceDv2_dDv2_x: argument 0"}
!145 = distinct !{!145, !"_ZL11look_insideRK5GroupRK5PieceDv2_dDv2_x"}
!146 = !{!147, !144, !141, !138}
!147 = distinct !{!147, !148, !"_ZL7past_ofRK5Pieceb: argument 0"}
!148 = distinct !{!148, !"_ZL7past_ofRK5Pieceb"}
!149 = distinct !{!149, !39}
!150 = distinct !{!150, !39}
!151 = !{!152}
!152 = distinct !{!152, !153, !"_ZL7outflowRK5GroupDv2_dS2_: argument 0"}
!153 = distinct !{!153, !"_ZL7outflowRK5GroupDv2_dS2_"}
!154 = distinct !{!154, !39}
!155 = !{!156}
!156 = distinct !{!156, !157, !"_ZL9evaporateR5GroupDv2_d: argument 0"}
!157 = distinct !{!157, !"_ZL9evaporateR5GroupDv2_d"}
!158 = !{!159, !156}
!159 = distinct !{!159, !160, !"_ZL8flash_ofRK5GroupR5PieceDv2_d: argument 0"}
!160 = distinct !{!160, !"_ZL8flash_ofRK5GroupR5PieceDv2_d"}
!161 = !{!162, !159, !156}
!162 = distinct !{!162, !163, !"_ZL11look_insideRK5GroupRK5PieceDv2_dDv2_x: argument 0"}
!163 = distinct !{!163, !"_ZL11look_insideRK5GroupRK5PieceDv2_dDv2_x"}
!164 = !{!165, !162, !159, !156}
!165 = distinct !{!165, !166, !"_ZL7past_ofRK5Pieceb: argument 0"}
!166 = distinct !{!166, !"_ZL7past_ofRK5Pieceb"}
!167 = distinct !{!167, !39}
!168 = distinct !{!168, !39}
!169 = !{!32, !11, i64 2488}
!170 = distinct !{!170, !39}
!171 = distinct !{!171, !39}
!172 = distinct !{!172, !39}
!173 = !{!174}
!174 = distinct !{!174, !175, !"_ZL11water_afterRK5GroupRK5PieceDv2_d: argument 0"}
!175 = distinct !{!175, !"_ZL11water_afterRK5GroupRK5PieceDv2_d"}
!176 = distinct !{!176, !39}
!177 = distinct !{!177, !39}
!178 = distinct !{!178, !39}
!179 = distinct !{!179, !39}
!180 = distinct !{!180, !181}
!181 = !{!"llvm.loop.unroll.disable"}
!182 = !{!183}
!183 = distinct !{!183, !184, !"_ZL4nearRK10PieceGivenDv2_d: argument 0"}
!184 = distinct !{!184, !"_ZL4nearRK10PieceGivenDv2_d"}
!185 = !{!186}
!186 = distinct !{!186, !187, !"_ZL4nearRK10PieceGivenDv2_d: argument 0"}
!187 = distinct !{!187, !"_ZL4nearRK10PieceGivenDv2_d"}
!188 = distinct !{!188, !39}
!189 = !{!32, !11, i64 2472}
!190 = distinct !{!190, !39}
!191 = distinct !{!191, !39}
!192 = distinct !{!192, !39}
!193 = distinct !{!193, !39}
!194 = distinct !{!194, !39}
!195 = distinct !{!195, !39}
!196 = distinct !{!196, !39}
!197 = distinct !{!197, !39}
!198 = distinct !{!198, !39}
!199 = distinct !{!199, !39}
!200 = distinct !{!200, !39}
!201 = distinct !{!201, !39}
!202 = !{!203}
!203 = distinct !{!203, !204, !"_ZL4nearRK10PieceGivenDv2_d: argument 0"}
!204 = distinct !{!204, !"_ZL4nearRK10PieceGivenDv2_d"}
!205 = distinct !{!205, !39}
!206 = !{!5, !6, i64 56}
!207 = !{!10, !10, i64 0}
!208 = !{!5, !12, i64 176}
!209 = !{!5, !10, i64 168}
!210 = distinct !{!210, !39}
!211 = distinct !{!211, !181}
!212 = distinct !{!212, !39}
!213 = distinct !{!213, !39}
!214 = distinct !{!214, !181}
!215 = !{!5, !12, i64 160}
!216 = !{!217}
!217 = distinct !{!217, !218, !"_ZL4nearRK10PieceGivenDv2_d: argument 0"}
!218 = distinct !{!218, !"_ZL4nearRK10PieceGivenDv2_d"}
!219 = distinct !{!219, !181}
!220 = !{!5, !10, i64 80}
!221 = !{!5, !12, i64 104}
!222 = distinct !{!222, !39}
!223 = !{!5, !10, i64 72}
!224 = !{!5, !10, i64 96}
!225 = distinct !{!225, !39}
!226 = distinct !{!226, !39}
!227 = distinct !{!227, !181}
!228 = distinct !{!228, !39}
!229 = distinct !{!229, !39}
!230 = distinct !{!230, !39}
!231 = distinct !{!231, !39}
!232 = distinct !{!232, !39}
!233 = distinct !{!233, !39}
!234 = !{!5, !10, i64 88}
!235 = !{!5, !12, i64 112}
!236 = !{!5, !12, i64 120}
!237 = distinct !{!237, !39}
!238 = distinct !{!238, !39}
!239 = distinct !{!239, !181}
!240 = distinct !{!240, !39}
!241 = distinct !{!241, !39}
!242 = distinct !{!242, !39}
