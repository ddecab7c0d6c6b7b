; Made by scripts/lanes.py from sources of sha256 e51f68ede5a1e8f59f4b64f2bf926bbe9b91e81a0fcec579e94fbaf7efe2f1c0.
%struct.Piece = type <{ %struct.PieceGiven, [14 x <8 x double>], [14 x <8 x double>], [14 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, %struct.Joint, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, %struct.Flash, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, [8 x ptr], ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [16 x i8] }>
%struct.PieceGiven = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }
%struct.Joint = type { <8 x double>, <8 x double>, <8 x double> }
%struct.Flash = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define i64 @work_space_8(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
  %2 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %3 = load i64, ptr %2, align 8, !tbaa !4
  %4 = mul i64 %3, 15
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %6 = load i64, ptr %5, align 8, !tbaa !13
  %7 = mul i64 %6, 9
  %8 = add i64 %7, %4
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %10 = load i64, ptr %9, align 8, !tbaa !14
  %11 = shl i64 %8, 6
  %12 = add i64 %11, 11520
  %13 = mul i64 %12, %10
  %14 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %15 = load i64, ptr %14, align 8, !tbaa !15
  %16 = shl i64 %15, 6
  %17 = add i64 %16, 6464
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
  %12 = alloca <8 x double>, align 64
  %13 = alloca <8 x double>, align 64
  %14 = alloca <8 x i64>, align 64
  %15 = alloca <8 x i64>, align 64
  %16 = icmp eq i64 %2, 0
  br i1 %16, label %127, label %17

17:                                               ; preds = %3
  %18 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %19 = load i64, ptr %18, align 8, !tbaa !14
  %20 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  store i64 %19, ptr %20, align 64, !tbaa !16
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  store i64 %19, ptr %21, align 8, !tbaa !20
  %22 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %23 = load i64, ptr %22, align 8, !tbaa !4
  %24 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  store i64 %23, ptr %24, align 16, !tbaa !21
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %26 = load i64, ptr %25, align 8, !tbaa !13
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  store i64 %26, ptr %27, align 8, !tbaa !22
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %29 = load i64, ptr %28, align 8, !tbaa !23
  %30 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  store i64 %29, ptr %30, align 32, !tbaa !24
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %32 = load double, ptr %31, align 8, !tbaa !25
  %33 = insertelement <8 x double> poison, double %32, i64 0
  %34 = shufflevector <8 x double> %33, <8 x double> poison, <8 x i32> zeroinitializer
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  store <8 x double> %34, ptr %35, align 64, !tbaa !26
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  store i64 0, ptr %36, align 8, !tbaa !27
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 6336
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 6280
  store ptr %37, ptr %38, align 8, !tbaa !28
  %39 = getelementptr inbounds %struct.Piece, ptr %37, i64 %19
  %40 = icmp sgt i64 %19, 0
  br i1 %40, label %41, label %109

41:                                               ; preds = %17
  %42 = getelementptr inbounds nuw i8, ptr %0, i64 152
  %43 = add nsw i64 %23, 1
  br label %44

44:                                               ; preds = %44, %41
  %45 = phi ptr [ %39, %41 ], [ %106, %44 ]
  %46 = phi i64 [ 0, %41 ], [ %107, %44 ]
  %47 = load ptr, ptr %38, align 8, !tbaa !28
  %48 = getelementptr inbounds nuw %struct.Piece, ptr %47, i64 %46
  %49 = load ptr, ptr %42, align 8, !tbaa !29
  %50 = getelementptr inbounds nuw i64, ptr %49, i64 %46
  %51 = load i64, ptr %50, align 8, !tbaa !30
  %52 = getelementptr inbounds nuw i8, ptr %48, i64 9472
  store i64 %51, ptr %52, align 64, !tbaa !31
  %53 = getelementptr inbounds nuw i8, ptr %48, i64 9544
  %54 = getelementptr inbounds nuw i8, ptr %48, i64 9552
  %55 = getelementptr inbounds nuw i8, ptr %48, i64 9560
  %56 = getelementptr inbounds nuw i8, ptr %48, i64 9568
  %57 = getelementptr inbounds nuw i8, ptr %48, i64 9576
  %58 = getelementptr inbounds nuw i8, ptr %48, i64 9584
  %59 = getelementptr inbounds nuw i8, ptr %48, i64 9592
  %60 = getelementptr inbounds nuw i8, ptr %48, i64 9600
  %61 = getelementptr inbounds nuw i8, ptr %48, i64 9608
  %62 = getelementptr inbounds nuw i8, ptr %48, i64 9616
  %63 = getelementptr inbounds nuw i8, ptr %48, i64 9624
  store ptr %45, ptr %53, align 8, !tbaa !36
  %64 = getelementptr inbounds <8 x double>, ptr %45, i64 %23
  store ptr %64, ptr %54, align 8, !tbaa !36
  %65 = getelementptr inbounds <8 x double>, ptr %64, i64 %23
  store ptr %65, ptr %55, align 8, !tbaa !36
  %66 = getelementptr inbounds <8 x double>, ptr %65, i64 %23
  store ptr %66, ptr %56, align 8, !tbaa !36
  %67 = getelementptr inbounds <8 x double>, ptr %66, i64 %23
  store ptr %67, ptr %57, align 8, !tbaa !36
  %68 = getelementptr inbounds <8 x double>, ptr %67, i64 %23
  store ptr %68, ptr %58, align 8, !tbaa !36
  %69 = getelementptr inbounds <8 x double>, ptr %68, i64 %23
  store ptr %69, ptr %59, align 8, !tbaa !36
  %70 = getelementptr inbounds <8 x double>, ptr %69, i64 %23
  store ptr %70, ptr %60, align 8, !tbaa !36
  %71 = getelementptr inbounds <8 x double>, ptr %70, i64 %23
  store ptr %71, ptr %61, align 8, !tbaa !36
  %72 = getelementptr inbounds <8 x double>, ptr %71, i64 %23
  store ptr %72, ptr %62, align 8, !tbaa !36
  %73 = getelementptr inbounds <8 x double>, ptr %72, i64 %23
  store ptr %73, ptr %63, align 8, !tbaa !36
  %74 = getelementptr inbounds <8 x double>, ptr %73, i64 %23
  %75 = getelementptr inbounds nuw i8, ptr %48, i64 9632
  store ptr %74, ptr %75, align 32, !tbaa !37
  %76 = icmp eq i64 %51, 0
  %77 = select i1 %76, i64 0, i64 2
  %78 = shl i64 %43, %77
  %79 = getelementptr inbounds <8 x double>, ptr %74, i64 %78
  %80 = getelementptr inbounds nuw i8, ptr %48, i64 9640
  %81 = getelementptr inbounds nuw i8, ptr %48, i64 9648
  %82 = getelementptr inbounds nuw i8, ptr %48, i64 9656
  %83 = getelementptr inbounds nuw i8, ptr %48, i64 9664
  %84 = getelementptr inbounds nuw i8, ptr %48, i64 9672
  %85 = getelementptr inbounds nuw i8, ptr %48, i64 9680
  %86 = getelementptr inbounds nuw i8, ptr %48, i64 9688
  %87 = getelementptr inbounds nuw i8, ptr %48, i64 9696
  %88 = getelementptr inbounds nuw i8, ptr %48, i64 9704
  store ptr %79, ptr %80, align 8, !tbaa !36
  %89 = getelementptr <8 x double>, ptr %79, i64 %26
  %90 = getelementptr i8, ptr %89, i64 64
  store ptr %90, ptr %81, align 8, !tbaa !36
  %91 = getelementptr <8 x double>, ptr %90, i64 %26
  %92 = getelementptr i8, ptr %91, i64 64
  store ptr %92, ptr %82, align 8, !tbaa !36
  %93 = getelementptr <8 x double>, ptr %92, i64 %26
  %94 = getelementptr i8, ptr %93, i64 64
  store ptr %94, ptr %83, align 8, !tbaa !36
  %95 = getelementptr <8 x double>, ptr %94, i64 %26
  %96 = getelementptr i8, ptr %95, i64 64
  store ptr %96, ptr %84, align 8, !tbaa !36
  %97 = getelementptr <8 x double>, ptr %96, i64 %26
  %98 = getelementptr i8, ptr %97, i64 64
  store ptr %98, ptr %85, align 8, !tbaa !36
  %99 = getelementptr <8 x double>, ptr %98, i64 %26
  %100 = getelementptr i8, ptr %99, i64 64
  store ptr %100, ptr %86, align 8, !tbaa !36
  %101 = getelementptr <8 x double>, ptr %100, i64 %26
  %102 = getelementptr i8, ptr %101, i64 64
  store ptr %102, ptr %87, align 8, !tbaa !36
  %103 = getelementptr <8 x double>, ptr %102, i64 %26
  %104 = getelementptr i8, ptr %103, i64 64
  store ptr %104, ptr %88, align 8, !tbaa !36
  %105 = getelementptr <8 x double>, ptr %104, i64 %26
  %106 = getelementptr i8, ptr %105, i64 64
  %107 = add nuw nsw i64 %46, 1
  %108 = icmp eq i64 %107, %19
  br i1 %108, label %109, label %44, !llvm.loop !38

109:                                              ; preds = %44, %17
  %110 = phi ptr [ %39, %17 ], [ %106, %44 ]
  %111 = getelementptr inbounds nuw i8, ptr %1, i64 6272
  store ptr %110, ptr %111, align 64, !tbaa !40
  %112 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %113 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  br label %114

114:                                              ; preds = %109, %124
  %115 = phi i64 [ 0, %109 ], [ %125, %124 ]
  %116 = load i64, ptr %36, align 8, !tbaa !27
  %117 = load i64, ptr %0, align 8, !tbaa !41
  %118 = icmp slt i64 %116, %117
  %119 = trunc nuw nsw i64 %115 to i32
  br i1 %118, label %120, label %121

120:                                              ; preds = %114
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef %119) #5
  br label %124

121:                                              ; preds = %114
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef %119, i64 noundef 0) #5
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef %119) #5
  %122 = getelementptr inbounds nuw i64, ptr %112, i64 %115
  store i64 0, ptr %122, align 8, !tbaa !30
  %123 = getelementptr inbounds nuw i64, ptr %113, i64 %115
  store i64 0, ptr %123, align 8, !tbaa !30
  br label %124

124:                                              ; preds = %121, %120
  %125 = add nuw nsw i64 %115, 1
  %126 = icmp eq i64 %125, 8
  br i1 %126, label %127, label %114, !llvm.loop !42

127:                                              ; preds = %124, %3
  %128 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %131 = load i64, ptr %129, align 8, !tbaa !43
  %132 = load i64, ptr %130, align 8, !tbaa !44
  %133 = sub nsw i64 %131, %132
  %134 = icmp slt i64 %133, 16
  br i1 %134, label %6460, label %135

135:                                              ; preds = %127
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %140 = getelementptr inbounds nuw i8, ptr %0, i64 216
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %146 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 6280
  %149 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %150 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 5760
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %188 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 6016
  %190 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %191 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 6272
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %240 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %242 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %243 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 2176
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
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %274 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %275 = getelementptr inbounds nuw i8, ptr %1, i64 6216
  %276 = getelementptr inbounds nuw i8, ptr %1, i64 6224
  %277 = getelementptr inbounds nuw i8, ptr %1, i64 6232
  %278 = getelementptr inbounds nuw i8, ptr %1, i64 6240
  %279 = getelementptr inbounds nuw i8, ptr %1, i64 6248
  %280 = getelementptr inbounds nuw i8, ptr %1, i64 6256
  %281 = getelementptr inbounds nuw i8, ptr %1, i64 6264
  br label %282

282:                                              ; preds = %562, %135
  %283 = phi i64 [ 0, %135 ], [ %563, %562 ]
  %284 = phi i1 [ true, %135 ], [ %564, %562 ]
  %285 = getelementptr inbounds nuw i64, ptr %128, i64 %283
  %286 = load i64, ptr %285, align 8, !tbaa !30
  %287 = icmp eq i64 %286, 0
  br i1 %287, label %558, label %288

288:                                              ; preds = %282
  %289 = getelementptr inbounds nuw [8 x double], ptr %136, i64 0, i64 %283
  %290 = load double, ptr %289, align 8, !tbaa !45
  %291 = fcmp oeq double %290, 0.000000e+00
  br i1 %291, label %558, label %292

292:                                              ; preds = %288
  %293 = load i64, ptr %137, align 16, !tbaa !21
  %294 = load i64, ptr %138, align 8, !tbaa !22
  %295 = getelementptr inbounds nuw [8 x i64], ptr %139, i64 0, i64 %283
  %296 = load i64, ptr %295, align 8, !tbaa !30
  %297 = load ptr, ptr %140, align 8, !tbaa !46
  %298 = mul nsw i64 %296, 40
  %299 = getelementptr inbounds i8, ptr %297, i64 %298
  %300 = getelementptr inbounds nuw double, ptr %141, i64 %283
  %301 = load double, ptr %300, align 8, !tbaa !45
  store double %301, ptr %299, align 8, !tbaa !45
  %302 = getelementptr inbounds nuw double, ptr %142, i64 %283
  %303 = load double, ptr %302, align 8, !tbaa !45
  %304 = getelementptr inbounds nuw i8, ptr %299, i64 8
  store double %303, ptr %304, align 8, !tbaa !45
  %305 = getelementptr inbounds nuw double, ptr %143, i64 %283
  %306 = load double, ptr %305, align 8, !tbaa !45
  %307 = getelementptr inbounds nuw i8, ptr %299, i64 16
  store double %306, ptr %307, align 8, !tbaa !45
  %308 = getelementptr inbounds nuw double, ptr %144, i64 %283
  %309 = load double, ptr %308, align 8, !tbaa !45
  %310 = getelementptr inbounds nuw i8, ptr %299, i64 24
  store double %309, ptr %310, align 8, !tbaa !45
  %311 = getelementptr inbounds nuw double, ptr %145, i64 %283
  %312 = load double, ptr %311, align 8, !tbaa !45
  %313 = getelementptr inbounds nuw i8, ptr %299, i64 32
  store double %312, ptr %313, align 8, !tbaa !45
  %314 = load i64, ptr %146, align 8, !tbaa !47
  %315 = icmp eq i64 %314, 0
  br i1 %315, label %542, label %316

316:                                              ; preds = %292
  %317 = load i64, ptr %147, align 64, !tbaa !16
  %318 = icmp sgt i64 %317, 0
  br i1 %318, label %319, label %542

319:                                              ; preds = %316
  %320 = load ptr, ptr %148, align 8, !tbaa !28
  %321 = load ptr, ptr %149, align 8, !tbaa !48
  %322 = mul nsw i64 %317, %296
  %323 = mul i64 %293, 3
  %324 = load ptr, ptr %150, align 8, !tbaa !49
  %325 = icmp sgt i64 %293, 0
  %326 = getelementptr inbounds nuw double, ptr %10, i64 %283
  %327 = getelementptr inbounds nuw double, ptr %11, i64 %283
  %328 = shl i64 %293, 4
  %329 = getelementptr inbounds nuw double, ptr %12, i64 %283
  %330 = icmp sgt i64 %294, 0
  %331 = getelementptr inbounds nuw double, ptr %13, i64 %283
  %332 = and i64 %294, 1
  %333 = icmp eq i64 %294, 1
  %334 = and i64 %294, 9223372036854775806
  %335 = icmp eq i64 %332, 0
  br label %336

336:                                              ; preds = %451, %319
  %337 = phi i64 [ 0, %319 ], [ %517, %451 ]
  %338 = getelementptr inbounds nuw %struct.Piece, ptr %320, i64 %337
  %339 = getelementptr inbounds nuw i8, ptr %338, i64 1920
  %340 = getelementptr inbounds nuw double, ptr %339, i64 %283
  %341 = load double, ptr %340, align 8, !tbaa !45
  %342 = getelementptr inbounds nuw i8, ptr %338, i64 4992
  %343 = getelementptr inbounds nuw double, ptr %342, i64 %283
  %344 = load double, ptr %343, align 8, !tbaa !45
  %345 = add nsw i64 %337, %322
  %346 = mul i64 %323, %345
  %347 = getelementptr inbounds double, ptr %321, i64 %346
  %348 = mul nsw i64 %345, 40
  %349 = getelementptr inbounds i8, ptr %324, i64 %348
  br i1 %325, label %350, label %371

350:                                              ; preds = %336
  %351 = getelementptr inbounds nuw i8, ptr %338, i64 9552
  %352 = load ptr, ptr %351, align 16, !tbaa !50
  %353 = getelementptr inbounds nuw i8, ptr %338, i64 9472
  %354 = load i64, ptr %353, align 64, !tbaa !31
  %355 = getelementptr inbounds nuw i8, ptr %338, i64 704
  %356 = getelementptr inbounds nuw i8, ptr %338, i64 768
  %357 = getelementptr inbounds nuw i8, ptr %338, i64 832
  %358 = getelementptr inbounds nuw i8, ptr %338, i64 896
  %359 = getelementptr inbounds nuw i8, ptr %338, i64 192
  %360 = getelementptr inbounds nuw i8, ptr %338, i64 256
  %361 = getelementptr inbounds nuw i8, ptr %338, i64 320
  %362 = getelementptr inbounds nuw i8, ptr %338, i64 5056
  %363 = getelementptr inbounds nuw i8, ptr %338, i64 1024
  %364 = getelementptr inbounds nuw i8, ptr %338, i64 9616
  %365 = load ptr, ptr %364, align 16, !tbaa !51
  %366 = getelementptr inbounds nuw i8, ptr %338, i64 9576
  %367 = load ptr, ptr %366, align 8, !tbaa !52
  %368 = getelementptr double, ptr %367, i64 %283
  %369 = getelementptr double, ptr %347, i64 %293
  %370 = getelementptr i8, ptr %347, i64 %328
  br label %384

371:                                              ; preds = %419, %336
  %372 = phi double [ %344, %336 ], [ %434, %419 ]
  br i1 %330, label %373, label %451

373:                                              ; preds = %371
  %374 = getelementptr inbounds nuw i8, ptr %338, i64 9696
  %375 = load ptr, ptr %374, align 32, !tbaa !53
  %376 = getelementptr double, ptr %375, i64 %283
  %377 = getelementptr inbounds nuw i8, ptr %338, i64 1152
  %378 = getelementptr inbounds nuw double, ptr %377, i64 %283
  %379 = load double, ptr %378, align 8, !tbaa !45
  %380 = getelementptr inbounds nuw i8, ptr %338, i64 9648
  %381 = load ptr, ptr %380, align 16, !tbaa !54
  %382 = getelementptr double, ptr %381, i64 %283
  %383 = load double, ptr %376, align 8, !tbaa !45
  br i1 %333, label %437, label %519

384:                                              ; preds = %419, %350
  %385 = phi double [ %344, %350 ], [ %434, %419 ]
  %386 = phi i64 [ 0, %350 ], [ %435, %419 ]
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #6
  %387 = getelementptr inbounds nuw <8 x double>, ptr %352, i64 %386
  %388 = load <8 x double>, ptr %387, align 64, !tbaa !26
  %389 = icmp slt i64 %386, %354
  br i1 %389, label %390, label %394

390:                                              ; preds = %384
  %391 = load <8 x double>, ptr %363, align 64, !tbaa !26
  %392 = fdiv <8 x double> %388, %391
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #6
  %393 = load <8 x double>, ptr %339, align 64, !tbaa !26
  br label %419

394:                                              ; preds = %384
  %395 = load <8 x double>, ptr %355, align 64, !tbaa !26, !noalias !55
  %396 = load <8 x double>, ptr %356, align 64, !tbaa !26, !noalias !55
  %397 = load <8 x double>, ptr %357, align 64, !tbaa !26, !noalias !55
  %398 = load <8 x double>, ptr %358, align 64, !tbaa !26, !noalias !55
  %399 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %388, <8 x double> %398, <8 x double> %397)
  %400 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %388, <8 x double> %399, <8 x double> %396)
  %401 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %388, <8 x double> %400, <8 x double> %395)
  %402 = fmul <8 x double> %388, %401
  %403 = load <8 x double>, ptr %359, align 64, !tbaa !26, !noalias !55
  %404 = load <8 x double>, ptr %360, align 64, !tbaa !26, !noalias !55
  %405 = load <8 x double>, ptr %361, align 64, !tbaa !26, !noalias !55
  %406 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %402, <8 x double> %405, <8 x double> %404)
  %407 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %402, <8 x double> %406, <8 x double> %403)
  %408 = fdiv <8 x double> splat (double 1.000000e+00), %407
  %409 = fmul <8 x double> %405, %402
  %410 = fmul <8 x double> %409, splat (double 0x3FD5555555555555)
  %411 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %404, <8 x double> splat (double 5.000000e-01), <8 x double> %410)
  %412 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %402, <8 x double> %411, <8 x double> %403)
  %413 = fmul <8 x double> %402, %412
  %414 = fsub <8 x double> %388, %413
  %415 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %414, <8 x double> %408, <8 x double> %402)
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #6
  %416 = load <8 x double>, ptr %362, align 64, !tbaa !26
  %417 = load <8 x double>, ptr %339, align 64, !tbaa !26
  %418 = fsub <8 x double> %416, %417
  br label %419

419:                                              ; preds = %394, %390
  %420 = phi <8 x double> [ %392, %390 ], [ %415, %394 ]
  %421 = phi <8 x double> [ %393, %390 ], [ %418, %394 ]
  store <8 x double> %420, ptr %10, align 64, !tbaa !26
  %422 = getelementptr inbounds nuw <8 x double>, ptr %365, i64 %386
  %423 = load <8 x double>, ptr %422, align 64, !tbaa !26
  %424 = fmul <8 x double> %421, %423
  store <8 x double> %424, ptr %11, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #6
  %425 = fmul <8 x double> %388, %424
  store <8 x double> %425, ptr %12, align 64, !tbaa !26
  %426 = load double, ptr %326, align 8, !tbaa !45
  %427 = getelementptr inbounds nuw double, ptr %347, i64 %386
  store double %426, ptr %427, align 8, !tbaa !45
  %428 = getelementptr <8 x double>, ptr %368, i64 %386
  %429 = load double, ptr %428, align 8, !tbaa !45
  %430 = getelementptr double, ptr %369, i64 %386
  store double %429, ptr %430, align 8, !tbaa !45
  %431 = load double, ptr %327, align 8, !tbaa !45
  %432 = getelementptr double, ptr %370, i64 %386
  store double %431, ptr %432, align 8, !tbaa !45
  %433 = load double, ptr %329, align 8, !tbaa !45
  %434 = fadd double %385, %433
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #6
  %435 = add nuw nsw i64 %386, 1
  %436 = icmp eq i64 %435, %293
  br i1 %436, label %371, label %384, !llvm.loop !58

437:                                              ; preds = %519, %373
  %438 = phi double [ poison, %373 ], [ %539, %519 ]
  %439 = phi double [ %383, %373 ], [ %534, %519 ]
  %440 = phi double [ %372, %373 ], [ %539, %519 ]
  %441 = phi i64 [ 0, %373 ], [ %532, %519 ]
  br i1 %335, label %451, label %442

442:                                              ; preds = %437
  %443 = getelementptr <8 x double>, ptr %376, i64 %441
  %444 = getelementptr i8, ptr %443, i64 64
  %445 = load double, ptr %444, align 8, !tbaa !45
  %446 = fsub double %445, %439
  %447 = fmul double %379, %446
  %448 = getelementptr <8 x double>, ptr %382, i64 %441
  %449 = load double, ptr %448, align 8, !tbaa !45
  %450 = tail call double @llvm.fmuladd.f64(double %447, double %449, double %440)
  br label %451

451:                                              ; preds = %442, %437, %371
  %452 = phi double [ %372, %371 ], [ %438, %437 ], [ %450, %442 ]
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13) #6
  %453 = getelementptr inbounds nuw i8, ptr %338, i64 1344
  %454 = load <8 x double>, ptr %453, align 64, !tbaa !26
  %455 = getelementptr inbounds nuw i8, ptr %338, i64 192
  %456 = load <8 x double>, ptr %455, align 64, !tbaa !26
  %457 = getelementptr inbounds nuw i8, ptr %338, i64 256
  %458 = load <8 x double>, ptr %457, align 64, !tbaa !26
  %459 = getelementptr inbounds nuw i8, ptr %338, i64 320
  %460 = load <8 x double>, ptr %459, align 64, !tbaa !26
  %461 = fmul <8 x double> %454, %460
  %462 = fmul <8 x double> %461, splat (double 0x3FD5555555555555)
  %463 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %458, <8 x double> splat (double 5.000000e-01), <8 x double> %462)
  %464 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %454, <8 x double> %463, <8 x double> %456)
  %465 = fmul <8 x double> %454, %464
  store <8 x double> %465, ptr %13, align 64, !tbaa !26
  %466 = getelementptr inbounds nuw i8, ptr %338, i64 1792
  %467 = getelementptr inbounds nuw double, ptr %466, i64 %283
  %468 = load double, ptr %467, align 8, !tbaa !45
  %469 = fsub double %468, %341
  %470 = load double, ptr %331, align 8, !tbaa !45
  %471 = getelementptr inbounds nuw i8, ptr %338, i64 1024
  %472 = getelementptr inbounds nuw double, ptr %471, i64 %283
  %473 = load double, ptr %472, align 8, !tbaa !45
  %474 = fmul double %341, %473
  %475 = getelementptr inbounds nuw double, ptr %453, i64 %283
  %476 = load double, ptr %475, align 8, !tbaa !45
  %477 = fmul double %474, %476
  %478 = tail call double @llvm.fmuladd.f64(double %469, double %470, double %477)
  %479 = getelementptr inbounds nuw i8, ptr %338, i64 4608
  %480 = getelementptr inbounds nuw double, ptr %479, i64 %283
  %481 = load double, ptr %480, align 8, !tbaa !45
  %482 = getelementptr inbounds nuw i8, ptr %338, i64 4672
  %483 = getelementptr inbounds nuw double, ptr %482, i64 %283
  %484 = load double, ptr %483, align 8, !tbaa !45
  %485 = fsub double %481, %484
  %486 = fsub double %452, %478
  %487 = fsub double %485, %486
  %488 = fcmp ogt double %481, 0.000000e+00
  %489 = fneg double %481
  %490 = select i1 %488, double %481, double %489
  %491 = fcmp ogt double %484, 0.000000e+00
  %492 = fneg double %484
  %493 = select i1 %491, double %484, double %492
  %494 = fadd double %490, %493
  %495 = fcmp ogt double %487, 0.000000e+00
  %496 = fneg double %487
  %497 = select i1 %495, double %487, double %496
  %498 = fcmp ogt double %494, 1.000000e+00
  %499 = select i1 %498, double %494, double 1.000000e+00
  %500 = fdiv double %497, %499
  store double %500, ptr %349, align 8, !tbaa !45
  %501 = getelementptr inbounds nuw i8, ptr %338, i64 4544
  %502 = getelementptr inbounds nuw double, ptr %501, i64 %283
  %503 = load double, ptr %502, align 8, !tbaa !45
  %504 = getelementptr inbounds nuw i8, ptr %349, i64 8
  store double %503, ptr %504, align 8, !tbaa !45
  %505 = getelementptr inbounds nuw i8, ptr %338, i64 4352
  %506 = getelementptr inbounds nuw double, ptr %505, i64 %283
  %507 = load double, ptr %506, align 8, !tbaa !45
  %508 = getelementptr inbounds nuw i8, ptr %349, i64 16
  store double %507, ptr %508, align 8, !tbaa !45
  %509 = getelementptr inbounds nuw i8, ptr %338, i64 4416
  %510 = getelementptr inbounds nuw double, ptr %509, i64 %283
  %511 = load double, ptr %510, align 8, !tbaa !45
  %512 = getelementptr inbounds nuw i8, ptr %349, i64 24
  store double %511, ptr %512, align 8, !tbaa !45
  %513 = getelementptr inbounds nuw i8, ptr %338, i64 4288
  %514 = getelementptr inbounds nuw double, ptr %513, i64 %283
  %515 = load double, ptr %514, align 8, !tbaa !45
  %516 = getelementptr inbounds nuw i8, ptr %349, i64 32
  store double %515, ptr %516, align 8, !tbaa !45
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13) #6
  %517 = add nuw nsw i64 %337, 1
  %518 = icmp eq i64 %517, %317
  br i1 %518, label %542, label %336, !llvm.loop !59

519:                                              ; preds = %373, %519
  %520 = phi double [ %534, %519 ], [ %383, %373 ]
  %521 = phi double [ %539, %519 ], [ %372, %373 ]
  %522 = phi i64 [ %532, %519 ], [ 0, %373 ]
  %523 = phi i64 [ %540, %519 ], [ 0, %373 ]
  %524 = or disjoint i64 %522, 1
  %525 = getelementptr <8 x double>, ptr %376, i64 %524
  %526 = load double, ptr %525, align 8, !tbaa !45
  %527 = fsub double %526, %520
  %528 = fmul double %379, %527
  %529 = getelementptr <8 x double>, ptr %382, i64 %522
  %530 = load double, ptr %529, align 8, !tbaa !45
  %531 = tail call double @llvm.fmuladd.f64(double %528, double %530, double %521)
  %532 = add nuw nsw i64 %522, 2
  %533 = getelementptr <8 x double>, ptr %376, i64 %532
  %534 = load double, ptr %533, align 8, !tbaa !45
  %535 = fsub double %534, %526
  %536 = fmul double %379, %535
  %537 = getelementptr <8 x double>, ptr %382, i64 %524
  %538 = load double, ptr %537, align 8, !tbaa !45
  %539 = tail call double @llvm.fmuladd.f64(double %536, double %538, double %531)
  %540 = add i64 %523, 2
  %541 = icmp eq i64 %540, %334
  br i1 %541, label %437, label %519, !llvm.loop !60

542:                                              ; preds = %451, %292, %316
  %543 = load i64, ptr %151, align 8, !tbaa !27
  %544 = load i64, ptr %0, align 8, !tbaa !41
  %545 = icmp slt i64 %543, %544
  br i1 %545, label %548, label %546

546:                                              ; preds = %542
  store i64 0, ptr %285, align 8, !tbaa !30
  %547 = getelementptr inbounds nuw i64, ptr %152, i64 %283
  store i64 0, ptr %547, align 8, !tbaa !30
  br label %555

548:                                              ; preds = %542
  %549 = trunc nuw nsw i64 %283 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef %549) #5
  %550 = load i64, ptr %285, align 8, !tbaa !30
  %551 = icmp eq i64 %550, 0
  br i1 %551, label %555, label %552

552:                                              ; preds = %548
  %553 = load double, ptr %289, align 8, !tbaa !45
  %554 = fcmp oeq double %553, 0.000000e+00
  br label %555

555:                                              ; preds = %546, %552, %548
  %556 = phi i1 [ true, %548 ], [ %554, %552 ], [ true, %546 ]
  %557 = and i1 %284, %556
  br label %558

558:                                              ; preds = %555, %288, %282
  %559 = phi i1 [ %284, %288 ], [ %557, %555 ], [ %284, %282 ]
  %560 = add nuw nsw i64 %283, 1
  %561 = icmp eq i64 %560, 8
  br i1 %561, label %565, label %562

562:                                              ; preds = %558, %566
  %563 = phi i64 [ %560, %558 ], [ 0, %566 ]
  %564 = phi i1 [ %559, %558 ], [ true, %566 ]
  br label %282, !llvm.loop !61

565:                                              ; preds = %558
  br i1 %559, label %571, label %566

566:                                              ; preds = %6417, %6459, %6456, %4662, %5009, %565
  %567 = load i64, ptr %129, align 8, !tbaa !43
  %568 = load i64, ptr %130, align 8, !tbaa !44
  %569 = sub nsw i64 %567, %568
  %570 = icmp slt i64 %569, 16
  br i1 %570, label %6460, label %562

571:                                              ; preds = %565
  %572 = load <8 x i64>, ptr %128, align 64, !tbaa !26
  %573 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %572)
  %574 = icmp eq i64 %573, 0
  br i1 %574, label %6460, label %575

575:                                              ; preds = %571
  %576 = load <8 x i64>, ptr %152, align 64, !tbaa !26
  %577 = and <8 x i64> %576, %572
  %578 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %577)
  %579 = icmp eq i64 %578, 0
  %580 = load i64, ptr %175, align 8, !tbaa !20
  br i1 %579, label %1493, label %581

581:                                              ; preds = %575
  %582 = load <8 x double>, ptr %153, align 64, !tbaa !26
  %583 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %584 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %585 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %586 = fsub <8 x double> %584, %585
  %587 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %583, <8 x double> %586, <8 x double> %582)
  %588 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %589 = fcmp une <8 x double> %588, splat (double 2.000000e+00)
  %590 = select <8 x i1> %589, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %591 = fmul <8 x double> %587, %590
  %592 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %593 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %594 = fcmp olt <8 x double> %592, %593
  %595 = select <8 x i1> %594, <8 x double> %592, <8 x double> %593
  %596 = fcmp olt <8 x double> %595, %591
  %597 = select <8 x i1> %596, <8 x double> %595, <8 x double> %591
  %598 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %599 = fmul <8 x double> %598, splat (double 5.000000e-01)
  %600 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %601 = load <8 x i64>, ptr %162, align 64, !tbaa !26
  %602 = fneg <8 x double> %599
  %603 = icmp eq <8 x i64> %601, zeroinitializer
  %604 = select <8 x i1> %603, <8 x double> %602, <8 x double> %599
  %605 = fadd <8 x double> %600, %604
  %606 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %607 = fsub <8 x double> %605, %606
  %608 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %609 = select <8 x i1> %603, <8 x double> zeroinitializer, <8 x double> %608
  %610 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %611 = fsub <8 x double> %609, %610
  %612 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %613 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %614 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %615 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %614, <8 x double> %606, <8 x double> %613)
  %616 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %617 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %612, <8 x double> %615, <8 x double> %616)
  %618 = fdiv <8 x double> %611, %617
  %619 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %620 = fsub <8 x double> %606, %619
  %621 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %622 = fdiv <8 x double> %620, %621
  %623 = fsub <8 x double> %618, %622
  %624 = fdiv <8 x double> %623, %621
  %625 = fdiv <8 x double> %607, %618
  %626 = load <8 x i64>, ptr %171, align 64, !tbaa !26
  %627 = load <8 x i64>, ptr %172, align 64, !tbaa !26
  %628 = or <8 x i64> %627, %626
  %629 = icmp eq <8 x i64> %628, zeroinitializer
  %630 = select <8 x i1> %629, <8 x double> %624, <8 x double> zeroinitializer
  %631 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %630, <8 x double> %625, <8 x double> %618)
  %632 = fdiv <8 x double> %607, %631
  %633 = fcmp ule <8 x double> %632, zeroinitializer
  %634 = select <8 x i1> %633, <8 x double> %625, <8 x double> %632
  %635 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %636 = fcmp une <8 x double> %635, zeroinitializer
  %637 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %638 = fcmp une <8 x double> %637, zeroinitializer
  %639 = fcmp ule <8 x double> %608, zeroinitializer
  %640 = or <8 x i1> %639, %636
  %641 = fcmp ule <8 x double> %625, zeroinitializer
  %642 = or <8 x i1> %641, %640
  %643 = or <8 x i1> %638, %642
  %644 = select <8 x i1> %643, <8 x double> splat (double 1.000000e+09), <8 x double> %634
  %645 = icmp sgt i64 %580, 0
  br i1 %645, label %646, label %714

646:                                              ; preds = %581
  %647 = load ptr, ptr %148, align 8, !tbaa !28
  %648 = fmul <8 x double> %621, splat (double 3.000000e+00)
  br label %649

649:                                              ; preds = %646, %649
  %650 = phi <8 x double> [ %644, %646 ], [ %711, %649 ]
  %651 = phi i64 [ 0, %646 ], [ %712, %649 ]
  %652 = getelementptr inbounds nuw %struct.Piece, ptr %647, i64 %651
  %653 = getelementptr inbounds nuw i8, ptr %652, i64 4288
  %654 = load <8 x double>, ptr %653, align 64, !tbaa !26
  %655 = getelementptr inbounds nuw i8, ptr %652, i64 1856
  %656 = load <8 x double>, ptr %655, align 64, !tbaa !26
  %657 = fsub <8 x double> %654, %656
  %658 = getelementptr inbounds nuw i8, ptr %652, i64 1216
  %659 = load <8 x double>, ptr %658, align 64, !tbaa !26
  %660 = fmul <8 x double> %657, %659
  %661 = getelementptr inbounds nuw i8, ptr %652, i64 1984
  %662 = load <8 x double>, ptr %661, align 64, !tbaa !26
  %663 = getelementptr inbounds nuw i8, ptr %652, i64 4544
  %664 = load <8 x double>, ptr %663, align 64, !tbaa !26
  %665 = fsub <8 x double> %662, %664
  %666 = getelementptr inbounds nuw i8, ptr %652, i64 9280
  %667 = load <8 x i64>, ptr %666, align 64, !tbaa !26
  %668 = getelementptr inbounds nuw i8, ptr %652, i64 8576
  %669 = load <8 x double>, ptr %668, align 64, !tbaa !26
  %670 = fcmp une <8 x double> %669, splat (double 1.000000e+00)
  %671 = select <8 x i1> %670, <8 x double> %660, <8 x double> %665
  %672 = getelementptr inbounds nuw i8, ptr %652, i64 4352
  %673 = load <8 x double>, ptr %672, align 64, !tbaa !26
  %674 = icmp eq <8 x i64> %667, zeroinitializer
  %675 = select <8 x i1> %674, <8 x double> %673, <8 x double> %671
  %676 = getelementptr inbounds nuw i8, ptr %652, i64 6464
  %677 = load <8 x double>, ptr %676, align 64, !tbaa !26
  %678 = getelementptr inbounds nuw i8, ptr %652, i64 6528
  %679 = load <8 x double>, ptr %678, align 64, !tbaa !26
  %680 = fadd <8 x double> %677, %679
  %681 = getelementptr inbounds nuw i8, ptr %652, i64 8448
  %682 = load <8 x double>, ptr %681, align 64, !tbaa !26
  %683 = fdiv <8 x double> %682, %621
  %684 = select <8 x i1> %674, <8 x double> %683, <8 x double> zeroinitializer
  %685 = fsub <8 x double> %680, %684
  %686 = fdiv <8 x double> %675, %685
  %687 = getelementptr inbounds nuw i8, ptr %652, i64 5248
  %688 = load <8 x double>, ptr %687, align 64, !tbaa !26
  %689 = fsub <8 x double> %688, %673
  %690 = fdiv <8 x double> %689, %621
  %691 = getelementptr inbounds nuw i8, ptr %652, i64 9344
  %692 = load <8 x i64>, ptr %691, align 64, !tbaa !26
  %693 = or <8 x i64> %692, %667
  %694 = fcmp ule <8 x double> %686, %648
  %695 = fsub <8 x double> %685, %690
  %696 = icmp eq <8 x i64> %693, zeroinitializer
  %697 = select <8 x i1> %694, <8 x i1> %696, <8 x i1> zeroinitializer
  %698 = select <8 x i1> %697, <8 x double> %695, <8 x double> zeroinitializer
  %699 = fdiv <8 x double> %686, %621
  %700 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %698, <8 x double> %699, <8 x double> %685)
  %701 = fdiv <8 x double> %675, %700
  %702 = fcmp ule <8 x double> %701, zeroinitializer
  %703 = select <8 x i1> %702, <8 x double> %686, <8 x double> %701
  %704 = fcmp ule <8 x double> %675, zeroinitializer
  %705 = fcmp ule <8 x double> %685, zeroinitializer
  %706 = or <8 x i1> %704, %705
  %707 = fcmp ogt <8 x double> %703, splat (double 1.000000e-03)
  %708 = select <8 x i1> %707, <8 x double> %703, <8 x double> splat (double 1.000000e-03)
  %709 = select <8 x i1> %706, <8 x double> splat (double 1.000000e+09), <8 x double> %708
  %710 = fcmp olt <8 x double> %650, %709
  %711 = select <8 x i1> %710, <8 x double> %650, <8 x double> %709
  %712 = add nuw nsw i64 %651, 1
  %713 = icmp eq i64 %712, %580
  br i1 %713, label %714, label %649, !llvm.loop !62

714:                                              ; preds = %649, %581
  %715 = phi <8 x double> [ %644, %581 ], [ %711, %649 ]
  %716 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %717 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %718 = fadd <8 x double> %716, %717
  %719 = fsub <8 x double> %718, %584
  %720 = fmul <8 x double> %715, splat (double 1.050000e+00)
  %721 = fcmp ugt <8 x double> %719, %720
  %722 = select <8 x i1> %721, <8 x double> %715, <8 x double> %719
  %723 = fmul <8 x double> %597, splat (double 0x3FF000010C6F7A0B)
  %724 = fcmp ole <8 x double> %722, %723
  %725 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %726 = fcmp ogt <8 x double> %725, %597
  %727 = select <8 x i1> %726, <8 x double> %725, <8 x double> %597
  %728 = icmp ne <8 x i64> %577, zeroinitializer
  %729 = select <8 x i1> %724, <8 x i1> %728, <8 x i1> zeroinitializer
  %730 = select <8 x i1> %729, <8 x double> %727, <8 x double> %725
  store <8 x double> %730, ptr %178, align 64, !tbaa !26
  %731 = fmul <8 x double> %597, splat (double 2.000000e+00)
  %732 = fcmp uge <8 x double> %722, %731
  %733 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %734 = fcmp une <8 x double> %733, zeroinitializer
  %735 = or <8 x i1> %734, %732
  %736 = fmul <8 x double> %722, splat (double 5.000000e-01)
  %737 = select <8 x i1> %735, <8 x double> %597, <8 x double> %736
  %738 = select <8 x i1> %724, <8 x double> %722, <8 x double> %737
  %739 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %740 = icmp eq <8 x i64> %577, zeroinitializer
  %741 = select <8 x i1> %740, <8 x double> %739, <8 x double> %738
  store <8 x double> %741, ptr %179, align 64, !tbaa !26
  %742 = fdiv <8 x double> splat (double 1.000000e+00), %741
  %743 = fneg <8 x double> %742
  %744 = fdiv <8 x double> %741, %621
  %745 = fadd <8 x double> %744, splat (double 1.000000e+00)
  %746 = fdiv <8 x double> splat (double 1.000000e+00), %745
  %747 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %744, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %748 = fmul <8 x double> %747, %746
  %749 = fmul <8 x double> %742, %748
  %750 = fneg <8 x double> %745
  %751 = fmul <8 x double> %742, %750
  %752 = fmul <8 x double> %744, %744
  %753 = fmul <8 x double> %752, %746
  %754 = fmul <8 x double> %742, %753
  %755 = fmul <8 x double> %741, %745
  %756 = icmp eq <8 x i64> %626, zeroinitializer
  %757 = select <8 x i1> %756, <8 x double> %749, <8 x double> %742
  %758 = select <8 x i1> %756, <8 x double> %751, <8 x double> %743
  %759 = select <8 x i1> %756, <8 x double> %754, <8 x double> zeroinitializer
  %760 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %761 = select <8 x i1> %740, <8 x double> %760, <8 x double> %757
  store <8 x double> %761, ptr %181, align 64, !tbaa !26
  %762 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %763 = select <8 x i1> %740, <8 x double> %762, <8 x double> %758
  store <8 x double> %763, ptr %182, align 64, !tbaa !26
  %764 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %765 = select <8 x i1> %740, <8 x double> %764, <8 x double> %759
  store <8 x double> %765, ptr %183, align 64, !tbaa !26
  %766 = select <8 x i1> %756, <8 x double> %744, <8 x double> zeroinitializer
  %767 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %766, <8 x double> %620, <8 x double> %606)
  %768 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %769 = select <8 x i1> %740, <8 x double> %768, <8 x double> %767
  %770 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %771 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %772 = fsub <8 x double> %770, %771
  %773 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %766, <8 x double> %772, <8 x double> %770)
  %774 = load <8 x double>, ptr %246, align 64, !tbaa !26
  %775 = select <8 x i1> %740, <8 x double> %774, <8 x double> %773
  store <8 x double> %775, ptr %246, align 64, !tbaa !26
  %776 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %777 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %778 = fsub <8 x double> %776, %777
  %779 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %766, <8 x double> %778, <8 x double> %776)
  %780 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %781 = select <8 x i1> %740, <8 x double> %780, <8 x double> %779
  store <8 x double> %781, ptr %249, align 64, !tbaa !26
  %782 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %783 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %784 = fsub <8 x double> %782, %783
  %785 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %766, <8 x double> %784, <8 x double> %782)
  %786 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %787 = select <8 x i1> %740, <8 x double> %786, <8 x double> %785
  store <8 x double> %787, ptr %252, align 64, !tbaa !26
  %788 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %789 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %790 = fsub <8 x double> %788, %789
  %791 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %766, <8 x double> %790, <8 x double> %788)
  %792 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %793 = select <8 x i1> %740, <8 x double> %792, <8 x double> %791
  store <8 x double> %793, ptr %255, align 64, !tbaa !26
  %794 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %795 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %796 = fsub <8 x double> %794, %795
  %797 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %766, <8 x double> %796, <8 x double> %794)
  %798 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %799 = select <8 x i1> %740, <8 x double> %798, <8 x double> %797
  store <8 x double> %799, ptr %258, align 64, !tbaa !26
  %800 = fdiv <8 x double> %755, %747
  %801 = load <8 x i64>, ptr %162, align 64, !tbaa !26
  %802 = icmp eq <8 x i64> %801, zeroinitializer
  %803 = select <8 x i1> %802, <8 x double> zeroinitializer, <8 x double> %608
  %804 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %805 = fsub <8 x double> %803, %804
  %806 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %807 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %614, <8 x double> %806, <8 x double> %613)
  %808 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %612, <8 x double> %807, <8 x double> %616)
  %809 = fdiv <8 x double> %805, %808
  %810 = load <8 x i64>, ptr %172, align 64, !tbaa !26
  %811 = load <8 x i64>, ptr %171, align 64, !tbaa !26
  %812 = or <8 x i64> %811, %810
  %813 = and <8 x i64> %812, %577
  %814 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %741, <8 x double> %809, <8 x double> %806)
  %815 = icmp eq <8 x i64> %813, zeroinitializer
  %816 = select <8 x i1> %638, <8 x i1> splat (i1 true), <8 x i1> %815
  %817 = select <8 x i1> %816, <8 x double> %769, <8 x double> %814
  store <8 x double> %817, ptr %184, align 64, !tbaa !26
  %818 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %819 = select <8 x i1> %740, <8 x double> %818, <8 x double> %805
  store <8 x double> %819, ptr %185, align 64, !tbaa !26
  %820 = xor <8 x i64> %811, splat (i64 -1)
  %821 = and <8 x i64> %810, %820
  store <8 x i64> %821, ptr %172, align 64, !tbaa !26
  %822 = load i64, ptr %175, align 8, !tbaa !20
  %823 = icmp sgt i64 %822, 0
  br i1 %823, label %826, label %1403

824:                                              ; preds = %1049
  %825 = icmp sgt i64 %1051, 0
  br i1 %825, label %1066, label %1403

826:                                              ; preds = %714, %1049
  %827 = phi i64 [ %1050, %1049 ], [ 0, %714 ]
  %828 = load ptr, ptr %148, align 8, !tbaa !28
  %829 = getelementptr inbounds nuw %struct.Piece, ptr %828, i64 %827
  %830 = getelementptr inbounds nuw i8, ptr %829, i64 9344
  %831 = load <8 x i64>, ptr %830, align 64, !tbaa !26
  %832 = icmp eq <8 x i64> %831, zeroinitializer
  %833 = select <8 x i1> %832, <8 x double> %749, <8 x double> %742
  %834 = select <8 x i1> %832, <8 x double> %751, <8 x double> %743
  %835 = select <8 x i1> %832, <8 x double> %754, <8 x double> zeroinitializer
  %836 = select <8 x i1> %832, <8 x double> %800, <8 x double> %741
  %837 = getelementptr inbounds nuw i8, ptr %829, i64 6016
  %838 = load <8 x double>, ptr %837, align 64, !tbaa !26
  %839 = select <8 x i1> %740, <8 x double> %838, <8 x double> %833
  store <8 x double> %839, ptr %837, align 64, !tbaa !26
  %840 = getelementptr inbounds nuw i8, ptr %829, i64 6080
  %841 = load <8 x double>, ptr %840, align 64, !tbaa !26
  %842 = select <8 x i1> %740, <8 x double> %841, <8 x double> %834
  store <8 x double> %842, ptr %840, align 64, !tbaa !26
  %843 = getelementptr inbounds nuw i8, ptr %829, i64 6144
  %844 = load <8 x double>, ptr %843, align 64, !tbaa !26
  %845 = select <8 x i1> %740, <8 x double> %844, <8 x double> %835
  store <8 x double> %845, ptr %843, align 64, !tbaa !26
  %846 = getelementptr inbounds nuw i8, ptr %829, i64 6208
  %847 = load <8 x double>, ptr %846, align 64, !tbaa !26
  %848 = select <8 x i1> %740, <8 x double> %847, <8 x double> %836
  store <8 x double> %848, ptr %846, align 64, !tbaa !26
  %849 = select <8 x i1> %832, <8 x double> %744, <8 x double> zeroinitializer
  %850 = getelementptr inbounds nuw i8, ptr %829, i64 3328
  %851 = getelementptr inbounds nuw i8, ptr %829, i64 4224
  %852 = getelementptr inbounds nuw i8, ptr %829, i64 5120
  br label %1053

853:                                              ; preds = %1053
  %854 = getelementptr inbounds nuw i8, ptr %829, i64 6528
  %855 = getelementptr inbounds nuw i8, ptr %829, i64 3904
  %856 = load <8 x double>, ptr %855, align 64, !tbaa !26
  %857 = fcmp ogt <8 x double> %856, zeroinitializer
  %858 = select <8 x i1> %857, <8 x double> %856, <8 x double> zeroinitializer
  %859 = load <8 x double>, ptr %854, align 64, !tbaa !26
  %860 = select <8 x i1> %740, <8 x double> %859, <8 x double> %858
  store <8 x double> %860, ptr %854, align 64, !tbaa !26
  %861 = getelementptr inbounds nuw i8, ptr %829, i64 6272
  %862 = load <8 x double>, ptr %861, align 64, !tbaa !26
  %863 = select <8 x i1> %740, <8 x double> %862, <8 x double> %849
  store <8 x double> %863, ptr %861, align 64, !tbaa !26
  %864 = load <8 x double>, ptr %840, align 64, !tbaa !26
  %865 = getelementptr inbounds nuw i8, ptr %829, i64 1152
  %866 = load <8 x double>, ptr %865, align 64, !tbaa !26
  %867 = fmul <8 x double> %864, %866
  %868 = load <8 x double>, ptr %843, align 64, !tbaa !26
  %869 = fmul <8 x double> %866, %868
  %870 = getelementptr inbounds nuw i8, ptr %829, i64 9696
  %871 = load ptr, ptr %870, align 32, !tbaa !53
  %872 = getelementptr inbounds nuw i8, ptr %829, i64 9704
  %873 = load ptr, ptr %872, align 8, !tbaa !63
  %874 = load i64, ptr %138, align 8, !tbaa !22
  %875 = icmp sgt i64 %874, 0
  br i1 %875, label %876, label %907

876:                                              ; preds = %853
  %877 = getelementptr inbounds nuw i8, ptr %829, i64 9648
  %878 = getelementptr inbounds nuw i8, ptr %829, i64 9656
  %879 = getelementptr inbounds nuw i8, ptr %829, i64 9664
  br label %880

880:                                              ; preds = %876, %880
  %881 = phi i64 [ 0, %876 ], [ %882, %880 ]
  %882 = add nuw nsw i64 %881, 1
  %883 = getelementptr inbounds nuw <8 x double>, ptr %871, i64 %882
  %884 = load <8 x double>, ptr %883, align 64, !tbaa !26
  %885 = getelementptr inbounds nuw <8 x double>, ptr %871, i64 %881
  %886 = load <8 x double>, ptr %885, align 64, !tbaa !26
  %887 = fsub <8 x double> %884, %886
  %888 = load ptr, ptr %877, align 16, !tbaa !54
  %889 = getelementptr inbounds nuw <8 x double>, ptr %888, i64 %881
  %890 = load <8 x double>, ptr %889, align 64, !tbaa !26
  %891 = fmul <8 x double> %887, %890
  %892 = getelementptr inbounds nuw <8 x double>, ptr %873, i64 %882
  %893 = load <8 x double>, ptr %892, align 64, !tbaa !26
  %894 = getelementptr inbounds nuw <8 x double>, ptr %873, i64 %881
  %895 = load <8 x double>, ptr %894, align 64, !tbaa !26
  %896 = fsub <8 x double> %893, %895
  %897 = load ptr, ptr %878, align 8, !tbaa !64
  %898 = getelementptr inbounds nuw <8 x double>, ptr %897, i64 %881
  %899 = load <8 x double>, ptr %898, align 64, !tbaa !26
  %900 = fmul <8 x double> %896, %899
  %901 = fmul <8 x double> %869, %900
  %902 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %867, <8 x double> %891, <8 x double> %901)
  %903 = load ptr, ptr %879, align 64, !tbaa !65
  %904 = getelementptr inbounds nuw <8 x double>, ptr %903, i64 %881
  store <8 x double> %902, ptr %904, align 64, !tbaa !26
  %905 = load i64, ptr %138, align 8, !tbaa !22
  %906 = icmp slt i64 %882, %905
  br i1 %906, label %880, label %907, !llvm.loop !66

907:                                              ; preds = %880, %853
  %908 = getelementptr inbounds nuw i8, ptr %829, i64 2048
  %909 = load <8 x double>, ptr %908, align 64, !tbaa !26
  %910 = fcmp ogt <8 x double> %909, zeroinitializer
  %911 = bitcast <8 x i1> %910 to i8
  %912 = icmp eq i8 %911, 0
  br i1 %912, label %913, label %917

913:                                              ; preds = %907
  %914 = getelementptr inbounds nuw i8, ptr %829, i64 8448
  %915 = load <8 x double>, ptr %914, align 64, !tbaa !26
  %916 = select <8 x i1> %740, <8 x double> %915, <8 x double> zeroinitializer
  store <8 x double> %916, ptr %914, align 64, !tbaa !26
  br label %1049

917:                                              ; preds = %907
  %918 = getelementptr inbounds nuw i8, ptr %829, i64 704
  %919 = load <8 x double>, ptr %918, align 64, !tbaa !26
  %920 = getelementptr inbounds nuw i8, ptr %829, i64 768
  %921 = load <8 x double>, ptr %920, align 64, !tbaa !26
  %922 = getelementptr inbounds nuw i8, ptr %829, i64 832
  %923 = load <8 x double>, ptr %922, align 64, !tbaa !26
  %924 = getelementptr inbounds nuw i8, ptr %829, i64 896
  %925 = load <8 x double>, ptr %924, align 64, !tbaa !26
  %926 = getelementptr inbounds nuw i8, ptr %829, i64 1920
  %927 = load <8 x double>, ptr %926, align 64, !tbaa !26
  %928 = getelementptr inbounds nuw i8, ptr %829, i64 2112
  %929 = load <8 x double>, ptr %928, align 64, !tbaa !26
  %930 = getelementptr inbounds nuw i8, ptr %829, i64 2176
  %931 = load <8 x double>, ptr %930, align 64, !tbaa !26
  %932 = getelementptr inbounds nuw i8, ptr %829, i64 2240
  %933 = load <8 x double>, ptr %932, align 64, !tbaa !26
  %934 = fmul <8 x double> %921, %933
  %935 = fmul <8 x double> %925, %933
  %936 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %937 = fneg <8 x double> %936
  %938 = fdiv <8 x double> %937, %929
  %939 = fcmp ogt <8 x double> %938, splat (double -7.000000e+02)
  %940 = select <8 x i1> %939, <8 x double> %938, <8 x double> splat (double -7.000000e+02)
  %941 = fcmp olt <8 x double> %940, splat (double 7.000000e+02)
  %942 = select <8 x i1> %941, <8 x double> %940, <8 x double> splat (double 7.000000e+02)
  %943 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %942, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %944 = fadd <8 x double> %943, splat (double 0xC338000000000000)
  %945 = fneg <8 x double> %944
  %946 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %945, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %942)
  %947 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %945, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %946)
  %948 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %947, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %949 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %948, <8 x double> %947, <8 x double> splat (double 0x3E5AE64567F544E4))
  %950 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %949, <8 x double> %947, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %951 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %950, <8 x double> %947, <8 x double> splat (double 0x3EC71DE3A556C734))
  %952 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %951, <8 x double> %947, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %953 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %952, <8 x double> %947, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %954 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %953, <8 x double> %947, <8 x double> splat (double 0x3F56C16C16C16C17))
  %955 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %954, <8 x double> %947, <8 x double> splat (double 0x3F81111111111111))
  %956 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %955, <8 x double> %947, <8 x double> splat (double 0x3FA5555555555555))
  %957 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %956, <8 x double> %947, <8 x double> splat (double 0x3FC5555555555555))
  %958 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %957, <8 x double> %947, <8 x double> splat (double 5.000000e-01))
  %959 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %958, <8 x double> %947, <8 x double> splat (double 1.000000e+00))
  %960 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %959, <8 x double> %947, <8 x double> splat (double 1.000000e+00))
  %961 = fmul <8 x double> %919, %933
  %962 = fmul <8 x double> %923, %933
  %963 = fmul <8 x double> %931, %933
  %964 = bitcast <8 x double> %943 to <8 x i64>
  %965 = shl <8 x i64> %964, splat (i64 52)
  %966 = bitcast <8 x double> %960 to <8 x i64>
  %967 = add <8 x i64> %965, %966
  %968 = bitcast <8 x i64> %967 to <8 x double>
  %969 = fsub <8 x double> splat (double 1.000000e+00), %968
  %970 = getelementptr inbounds nuw i8, ptr %829, i64 5056
  %971 = load <8 x double>, ptr %970, align 64, !tbaa !26
  %972 = fsub <8 x double> %971, %927
  %973 = getelementptr inbounds nuw i8, ptr %829, i64 9552
  %974 = load ptr, ptr %973, align 16, !tbaa !50
  %975 = getelementptr inbounds nuw i8, ptr %829, i64 9560
  %976 = load ptr, ptr %975, align 8, !tbaa !67
  %977 = getelementptr inbounds nuw i8, ptr %829, i64 9576
  %978 = load ptr, ptr %977, align 8, !tbaa !52
  %979 = getelementptr inbounds nuw i8, ptr %829, i64 9616
  %980 = load ptr, ptr %979, align 16, !tbaa !51
  %981 = load <8 x double>, ptr %861, align 64, !tbaa !26
  %982 = fmul <8 x double> %981, splat (double 5.000000e-01)
  %983 = getelementptr inbounds nuw i8, ptr %829, i64 9568
  %984 = load ptr, ptr %983, align 32, !tbaa !68
  %985 = getelementptr inbounds nuw i8, ptr %829, i64 9472
  %986 = load i64, ptr %985, align 64, !tbaa !31
  %987 = load i64, ptr %137, align 16, !tbaa !21
  %988 = icmp slt i64 %986, %987
  br i1 %988, label %1003, label %989

989:                                              ; preds = %1003, %917
  %990 = phi <8 x double> [ zeroinitializer, %917 ], [ %1038, %1003 ]
  %991 = phi <8 x double> [ zeroinitializer, %917 ], [ %1045, %1003 ]
  %992 = getelementptr inbounds nuw i8, ptr %829, i64 4288
  %993 = load <8 x double>, ptr %992, align 64, !tbaa !26
  %994 = fsub <8 x double> %993, %971
  %995 = fmul <8 x double> %990, %994
  %996 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %991, <8 x double> %972, <8 x double> %995)
  %997 = getelementptr inbounds nuw i8, ptr %829, i64 8448
  %998 = getelementptr inbounds nuw i8, ptr %829, i64 1216
  %999 = load <8 x double>, ptr %998, align 64, !tbaa !26
  %1000 = fmul <8 x double> %999, %996
  %1001 = load <8 x double>, ptr %997, align 64, !tbaa !26
  %1002 = select <8 x i1> %740, <8 x double> %1001, <8 x double> %1000
  store <8 x double> %1002, ptr %997, align 64, !tbaa !26
  br label %1049

1003:                                             ; preds = %917, %1003
  %1004 = phi <8 x double> [ %1045, %1003 ], [ zeroinitializer, %917 ]
  %1005 = phi i64 [ %1046, %1003 ], [ %986, %917 ]
  %1006 = getelementptr inbounds <8 x double>, ptr %974, i64 %1005
  %1007 = load <8 x double>, ptr %1006, align 64, !tbaa !26
  %1008 = getelementptr inbounds <8 x double>, ptr %976, i64 %1005
  %1009 = load <8 x double>, ptr %1008, align 64, !tbaa !26
  %1010 = fsub <8 x double> %1007, %1009
  %1011 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %982, <8 x double> %1010, <8 x double> %1007)
  %1012 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1011, <8 x double> %935, <8 x double> %962)
  %1013 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1011, <8 x double> %1012, <8 x double> %934)
  %1014 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1011, <8 x double> %1013, <8 x double> %961)
  %1015 = fmul <8 x double> %1011, %1014
  %1016 = fsub <8 x double> %1015, %963
  %1017 = fcmp ogt <8 x double> %1016, splat (double -5.000000e+00)
  %1018 = select <8 x i1> %1017, <8 x double> %1016, <8 x double> splat (double -5.000000e+00)
  %1019 = fcmp olt <8 x double> %1018, splat (double 5.000000e+00)
  %1020 = select <8 x i1> %1019, <8 x double> %1018, <8 x double> splat (double 5.000000e+00)
  %1021 = fmul <8 x double> %1020, %1020
  %1022 = fadd <8 x double> %1021, splat (double 3.780000e+02)
  %1023 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1021, <8 x double> %1022, <8 x double> splat (double 1.732500e+04))
  %1024 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1021, <8 x double> %1023, <8 x double> splat (double 1.351350e+05))
  %1025 = fmul <8 x double> %1020, %1024
  %1026 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1021, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1027 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1021, <8 x double> %1026, <8 x double> splat (double 6.237000e+04))
  %1028 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1021, <8 x double> %1027, <8 x double> splat (double 1.351350e+05))
  %1029 = fdiv <8 x double> %1025, %1028
  %1030 = fadd <8 x double> %1029, splat (double 1.000000e+00)
  %1031 = fmul <8 x double> %909, %1030
  %1032 = getelementptr inbounds <8 x double>, ptr %978, i64 %1005
  %1033 = load <8 x double>, ptr %1032, align 64, !tbaa !26
  %1034 = fadd <8 x double> %1033, splat (double -1.000000e+00)
  %1035 = fadd <8 x double> %1034, %1031
  %1036 = fcmp ogt <8 x double> %1035, zeroinitializer
  %1037 = select <8 x i1> %1036, <8 x double> %1035, <8 x double> zeroinitializer
  %1038 = fmul <8 x double> %969, %1037
  %1039 = fsub <8 x double> %1033, %1038
  %1040 = getelementptr inbounds <8 x double>, ptr %984, i64 %1005
  %1041 = load <8 x double>, ptr %1040, align 64, !tbaa !26
  %1042 = select <8 x i1> %740, <8 x double> %1041, <8 x double> %1039
  store <8 x double> %1042, ptr %1040, align 64, !tbaa !26
  %1043 = getelementptr inbounds <8 x double>, ptr %980, i64 %1005
  %1044 = load <8 x double>, ptr %1043, align 64, !tbaa !26
  %1045 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1038, <8 x double> %1044, <8 x double> %1004)
  %1046 = add nsw i64 %1005, 1
  %1047 = load i64, ptr %137, align 16, !tbaa !21
  %1048 = icmp slt i64 %1046, %1047
  br i1 %1048, label %1003, label %989, !llvm.loop !69

1049:                                             ; preds = %913, %989
  %1050 = add nuw nsw i64 %827, 1
  %1051 = load i64, ptr %175, align 8, !tbaa !20
  %1052 = icmp slt i64 %1050, %1051
  br i1 %1052, label %826, label %824, !llvm.loop !70

1053:                                             ; preds = %826, %1053
  %1054 = phi i64 [ 0, %826 ], [ %1064, %1053 ]
  %1055 = getelementptr inbounds nuw [14 x <8 x double>], ptr %850, i64 0, i64 %1054
  %1056 = getelementptr inbounds nuw [14 x <8 x double>], ptr %851, i64 0, i64 %1054
  %1057 = load <8 x double>, ptr %1056, align 64, !tbaa !26
  %1058 = getelementptr inbounds nuw [14 x <8 x double>], ptr %852, i64 0, i64 %1054
  %1059 = load <8 x double>, ptr %1058, align 64, !tbaa !26
  %1060 = fsub <8 x double> %1057, %1059
  %1061 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %849, <8 x double> %1060, <8 x double> %1057)
  %1062 = load <8 x double>, ptr %1055, align 64, !tbaa !26
  %1063 = select <8 x i1> %740, <8 x double> %1062, <8 x double> %1061
  store <8 x double> %1063, ptr %1055, align 64, !tbaa !26
  %1064 = add nuw nsw i64 %1054, 1
  %1065 = icmp eq i64 %1064, 13
  br i1 %1065, label %853, label %1053, !llvm.loop !71

1066:                                             ; preds = %824, %1384
  %1067 = phi i64 [ %1400, %1384 ], [ 0, %824 ]
  %1068 = load ptr, ptr %148, align 8, !tbaa !28
  %1069 = getelementptr inbounds nuw %struct.Piece, ptr %1068, i64 %1067
  %1070 = getelementptr inbounds nuw i8, ptr %1069, i64 3328
  %1071 = load <8 x double>, ptr %1070, align 64, !tbaa !26
  %1072 = getelementptr inbounds nuw i8, ptr %1069, i64 4224
  %1073 = load <8 x double>, ptr %1072, align 64, !tbaa !26
  %1074 = fcmp olt <8 x double> %1071, %1073
  %1075 = select <8 x i1> %1074, <8 x double> %1071, <8 x double> %1073
  %1076 = load <8 x double>, ptr %1069, align 64, !tbaa !26
  %1077 = fmul <8 x double> %1076, splat (double 3.000000e-01)
  %1078 = fcmp ogt <8 x double> %1075, %1077
  %1079 = select <8 x i1> %1078, <8 x double> %1075, <8 x double> %1077
  %1080 = select <8 x i1> %740, <8 x double> %1071, <8 x double> %1079
  store <8 x double> %1080, ptr %1070, align 64, !tbaa !26
  %1081 = getelementptr inbounds nuw i8, ptr %1069, i64 3456
  %1082 = load <8 x double>, ptr %1081, align 64, !tbaa !26, !noalias !72
  %1083 = getelementptr inbounds nuw i8, ptr %1069, i64 8640
  %1084 = load <8 x double>, ptr %1083, align 64, !tbaa !26, !noalias !72
  %1085 = fmul <8 x double> %1082, %1084
  %1086 = fcmp ogt <8 x double> %1085, zeroinitializer
  %1087 = select <8 x i1> %1086, <8 x double> %1085, <8 x double> zeroinitializer
  %1088 = fcmp uge <8 x double> %1087, splat (double 1.000000e+00)
  %1089 = select <8 x i1> %1088, <8 x double> splat (double 1.000000e+00), <8 x double> %1087
  %1090 = getelementptr inbounds nuw i8, ptr %1069, i64 9408
  %1091 = load <8 x i64>, ptr %1090, align 64, !tbaa !26, !noalias !72
  %1092 = load <8 x double>, ptr %186, align 64, !tbaa !26, !noalias !72
  %1093 = getelementptr inbounds nuw i8, ptr %1069, i64 3584
  %1094 = load <8 x double>, ptr %1093, align 64, !tbaa !26, !noalias !72
  %1095 = icmp eq <8 x i64> %1091, zeroinitializer
  %1096 = select <8 x i1> %1095, <8 x double> %1094, <8 x double> %1092
  %1097 = getelementptr inbounds nuw i8, ptr %1069, i64 3968
  %1098 = load <8 x double>, ptr %1097, align 64, !tbaa !26, !noalias !72
  %1099 = fsub <8 x double> splat (double 1.000000e+00), %1089
  %1100 = getelementptr inbounds nuw i8, ptr %1069, i64 2368
  %1101 = load <8 x double>, ptr %1100, align 64, !tbaa !26, !noalias !72
  %1102 = getelementptr inbounds nuw i8, ptr %1069, i64 9280
  %1103 = load <8 x i64>, ptr %1102, align 64, !tbaa !26, !noalias !72
  %1104 = fsub <8 x double> %1076, %1080
  %1105 = getelementptr inbounds nuw i8, ptr %1069, i64 8704
  %1106 = load <8 x double>, ptr %1105, align 64, !tbaa !26, !noalias !72
  %1107 = fmul <8 x double> %1104, %1106
  %1108 = icmp eq <8 x i64> %1103, zeroinitializer
  %1109 = select <8 x i1> %1108, <8 x double> zeroinitializer, <8 x double> %1107
  %1110 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1099, <8 x double> %1101, <8 x double> %1109)
  %1111 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1098, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1112 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1098, <8 x double> %1111, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1113 = fdiv <8 x double> splat (double 1.000000e+00), %1112
  %1114 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1096, <8 x double> %1110, <8 x double> splat (double 1.000000e+00))
  %1115 = fdiv <8 x double> splat (double 1.000000e+00), %1114
  %1116 = load <8 x double>, ptr %187, align 64, !tbaa !26, !noalias !72
  %1117 = load <8 x double>, ptr %184, align 64, !tbaa !26, !noalias !72
  %1118 = select <8 x i1> %1095, <8 x double> %1117, <8 x double> %1116
  %1119 = fsub <8 x double> %1118, %1098
  %1120 = fmul <8 x double> %1119, %1115
  %1121 = fmul <8 x double> %1096, %1120
  %1122 = getelementptr inbounds nuw i8, ptr %1069, i64 6016
  %1123 = load <8 x double>, ptr %1122, align 64, !tbaa !26, !noalias !72
  %1124 = getelementptr inbounds nuw i8, ptr %1069, i64 3648
  %1125 = load <8 x double>, ptr %1124, align 64, !tbaa !26, !noalias !72
  %1126 = getelementptr inbounds nuw i8, ptr %1069, i64 6080
  %1127 = load <8 x double>, ptr %1126, align 64, !tbaa !26, !noalias !72
  %1128 = getelementptr inbounds nuw i8, ptr %1069, i64 4544
  %1129 = load <8 x double>, ptr %1128, align 64, !tbaa !26, !noalias !72
  %1130 = fmul <8 x double> %1127, %1129
  %1131 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1123, <8 x double> %1125, <8 x double> %1130)
  %1132 = getelementptr inbounds nuw i8, ptr %1069, i64 6144
  %1133 = load <8 x double>, ptr %1132, align 64, !tbaa !26, !noalias !72
  %1134 = getelementptr inbounds nuw i8, ptr %1069, i64 5440
  %1135 = load <8 x double>, ptr %1134, align 64, !tbaa !26, !noalias !72
  %1136 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1133, <8 x double> %1135, <8 x double> %1131)
  %1137 = getelementptr inbounds nuw i8, ptr %1069, i64 8768
  %1138 = load <8 x double>, ptr %1137, align 64, !tbaa !26, !noalias !72
  %1139 = fmul <8 x double> %1106, %1138
  %1140 = fcmp ule <8 x double> %1089, zeroinitializer
  %1141 = or <8 x i1> %1088, %1140
  %1142 = fmul <8 x double> %1084, %1101
  %1143 = select <8 x i1> %1141, <8 x double> zeroinitializer, <8 x double> %1142
  %1144 = select <8 x i1> %1108, <8 x double> %1143, <8 x double> %1139
  %1145 = fmul <8 x double> %1096, %1121
  %1146 = fmul <8 x double> %1115, %1145
  %1147 = fmul <8 x double> %1113, %1146
  %1148 = fmul <8 x double> %1147, %1144
  %1149 = getelementptr inbounds nuw i8, ptr %1069, i64 6208
  %1150 = load <8 x double>, ptr %1149, align 64, !tbaa !26, !noalias !72
  %1151 = fmul <8 x double> %1150, %1148
  %1152 = fadd <8 x double> %1151, splat (double 1.000000e+00)
  %1153 = fdiv <8 x double> splat (double 1.000000e+00), %1152
  %1154 = getelementptr inbounds nuw i8, ptr %1069, i64 3840
  %1155 = load <8 x double>, ptr %1154, align 64, !tbaa !26, !noalias !72
  %1156 = fsub <8 x double> %1121, %1155
  %1157 = getelementptr inbounds nuw i8, ptr %1069, i64 6528
  %1158 = load <8 x double>, ptr %1157, align 64, !tbaa !26, !noalias !72
  %1159 = fsub <8 x double> %1136, %1158
  %1160 = fmul <8 x double> %1151, %1159
  %1161 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1156, <8 x double> %1113, <8 x double> %1160)
  %1162 = fmul <8 x double> %1161, %1153
  %1163 = getelementptr inbounds nuw i8, ptr %1069, i64 6464
  %1164 = load <8 x double>, ptr %1163, align 64, !tbaa !26, !noalias !72
  %1165 = fcmp ule <8 x double> %1164, zeroinitializer
  %1166 = fcmp ule <8 x double> %1162, zeroinitializer
  %1167 = or <8 x i1> %1165, %1166
  %1168 = select <8 x i1> %1167, <8 x double> zeroinitializer, <8 x double> %1162
  %1169 = getelementptr inbounds nuw i8, ptr %1069, i64 2560
  %1170 = load <8 x double>, ptr %1169, align 64, !tbaa !26, !noalias !72
  %1171 = fcmp ogt <8 x double> %1170, zeroinitializer
  %1172 = getelementptr inbounds nuw i8, ptr %1069, i64 1408
  %1173 = load <8 x double>, ptr %1172, align 64, !tbaa !26, !noalias !72
  %1174 = bitcast <8 x i1> %1171 to i8
  %1175 = icmp eq i8 %1174, 0
  br i1 %1175, label %1188, label %1176

1176:                                             ; preds = %1066
  %1177 = getelementptr inbounds nuw i8, ptr %1069, i64 4032
  %1178 = load <8 x double>, ptr %1177, align 64, !tbaa !26, !noalias !72
  %1179 = fadd <8 x double> %1120, %1178
  %1180 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1179)
  %1181 = fcmp ogt <8 x double> %1170, splat (double 1.000000e-09)
  %1182 = select <8 x i1> %1181, <8 x double> %1170, <8 x double> splat (double 1.000000e-09)
  %1183 = fdiv <8 x double> %1180, %1182
  %1184 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1183)
  %1185 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1184)
  %1186 = select <8 x i1> %1171, <8 x double> %1185, <8 x double> splat (double 1.000000e+00)
  %1187 = fmul <8 x double> %1173, %1186
  br label %1188

1188:                                             ; preds = %1066, %1176
  %1189 = phi <8 x double> [ %1187, %1176 ], [ %1173, %1066 ]
  %1190 = getelementptr inbounds nuw i8, ptr %1069, i64 4480
  %1191 = load <8 x double>, ptr %1190, align 64, !tbaa !26, !noalias !72
  %1192 = getelementptr inbounds nuw i8, ptr %1069, i64 5376
  %1193 = load <8 x double>, ptr %1192, align 64, !tbaa !26, !noalias !72
  %1194 = fmul <8 x double> %1133, %1193
  %1195 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1127, <8 x double> %1191, <8 x double> %1194)
  %1196 = getelementptr inbounds nuw i8, ptr %1069, i64 1600
  %1197 = load <8 x double>, ptr %1196, align 64, !tbaa !26, !noalias !72
  %1198 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1197, <8 x double> %1123, <8 x double> splat (double 1.000000e+00))
  %1199 = fdiv <8 x double> splat (double 1.000000e+00), %1198
  %1200 = fmul <8 x double> %1115, %1120
  %1201 = fmul <8 x double> %1113, %1200
  %1202 = fmul <8 x double> %1201, %1153
  %1203 = select <8 x i1> %1167, <8 x double> zeroinitializer, <8 x double> %1202
  %1204 = getelementptr inbounds nuw i8, ptr %1069, i64 1472
  %1205 = load <8 x double>, ptr %1204, align 64, !tbaa !26, !noalias !72
  %1206 = fmul <8 x double> %1189, splat (double 2.500000e-01)
  %1207 = fmul <8 x double> %1110, %1206
  %1208 = fneg <8 x double> %1115
  %1209 = fmul <8 x double> %1207, %1208
  %1210 = select <8 x i1> %1171, <8 x double> %1209, <8 x double> splat (double -0.000000e+00)
  %1211 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1205, <8 x double> %1203, <8 x double> %1210)
  %1212 = fadd <8 x double> %1158, %1168
  %1213 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1205, <8 x double> %1212, <8 x double> %1189)
  %1214 = fneg <8 x double> %1197
  %1215 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1214, <8 x double> %1195, <8 x double> %1213)
  %1216 = fneg <8 x double> %1096
  %1217 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1199, <8 x double> %1215, <8 x double> %1216)
  %1218 = fmul <8 x double> %1199, %1211
  %1219 = fcmp olt <8 x double> %1218, splat (double 8.000000e-01)
  %1220 = select <8 x i1> %1219, <8 x double> %1218, <8 x double> splat (double 8.000000e-01)
  %1221 = fsub <8 x double> splat (double 1.000000e+00), %1220
  %1222 = fdiv <8 x double> %1217, %1221
  %1223 = fadd <8 x double> %1096, %1222
  %1224 = getelementptr inbounds nuw i8, ptr %1069, i64 1536
  %1225 = load <8 x double>, ptr %1224, align 64, !tbaa !26, !noalias !72
  %1226 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1214, <8 x double> %1195, <8 x double> %1225)
  %1227 = fmul <8 x double> %1199, %1226
  %1228 = fcmp olt <8 x double> %1223, %1227
  %1229 = select <8 x i1> %1228, <8 x double> %1223, <8 x double> %1227
  %1230 = select <8 x i1> %1095, <8 x double> %1229, <8 x double> %1092
  %1231 = fsub <8 x double> %1230, %1096
  %1232 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1203, <8 x double> %1231, <8 x double> %1168)
  %1233 = fcmp ogt <8 x double> %1232, zeroinitializer
  %1234 = select <8 x i1> %1233, <8 x double> %1232, <8 x double> zeroinitializer
  %1235 = select <8 x i1> %740, <8 x double> %1094, <8 x double> %1230
  store <8 x double> %1235, ptr %1093, align 64, !tbaa !26
  %1236 = select <8 x i1> %740, <8 x double> %1164, <8 x double> %1234
  store <8 x double> %1236, ptr %1163, align 64, !tbaa !26
  %1237 = fadd <8 x double> %1158, %1236
  %1238 = fneg <8 x double> %1127
  %1239 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1238, <8 x double> %1129, <8 x double> %1237)
  %1240 = fneg <8 x double> %1133
  %1241 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1135, <8 x double> %1239)
  %1242 = fmul <8 x double> %1150, %1241
  %1243 = getelementptr inbounds nuw i8, ptr %1069, i64 1984
  %1244 = load <8 x double>, ptr %1243, align 64, !tbaa !26, !noalias !75
  %1245 = fsub <8 x double> %1244, %1242
  %1246 = getelementptr inbounds nuw i8, ptr %1069, i64 4416
  %1247 = load <8 x double>, ptr %1246, align 64, !tbaa !26, !noalias !75
  %1248 = getelementptr inbounds nuw i8, ptr %1069, i64 8448
  %1249 = load <8 x double>, ptr %1248, align 64, !tbaa !26, !noalias !75
  %1250 = fsub <8 x double> %1247, %1249
  %1251 = getelementptr inbounds nuw i8, ptr %1069, i64 4288
  %1252 = load <8 x double>, ptr %1251, align 64, !tbaa !26, !noalias !75
  %1253 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1103)
  %1254 = icmp eq i64 %1253, 0
  br i1 %1254, label %1384, label %1255

1255:                                             ; preds = %1188
  %1256 = fcmp ogt <8 x double> %1250, %1245
  %1257 = getelementptr inbounds nuw i8, ptr %1069, i64 8576
  %1258 = load <8 x double>, ptr %1257, align 64, !tbaa !26, !noalias !75
  %1259 = fcmp oeq <8 x double> %1258, zeroinitializer
  %1260 = select <8 x i1> %1259, <8 x i1> %1256, <8 x i1> zeroinitializer
  %1261 = select <8 x i1> %1260, <8 x i64> %1103, <8 x i64> zeroinitializer
  %1262 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1261)
  %1263 = icmp eq i64 %1262, 0
  br i1 %1263, label %1334, label %1264

1264:                                             ; preds = %1255
  %1265 = fsub <8 x double> %1250, %1245
  %1266 = fmul <8 x double> %1138, %1265
  %1267 = getelementptr inbounds nuw i8, ptr %1069, i64 9568
  %1268 = load ptr, ptr %1267, align 32, !tbaa !68, !noalias !75
  %1269 = load i64, ptr %137, align 16, !tbaa !21, !noalias !75
  %1270 = add nsw i64 %1269, -1
  %1271 = getelementptr inbounds <8 x double>, ptr %1268, i64 %1270
  %1272 = load <8 x double>, ptr %1271, align 64, !tbaa !26, !noalias !75
  %1273 = icmp sgt i64 %1269, 1
  br i1 %1273, label %1274, label %1326

1274:                                             ; preds = %1264
  %1275 = getelementptr inbounds nuw i8, ptr %1069, i64 9472
  %1276 = load i64, ptr %1275, align 64, !tbaa !31, !noalias !75
  %1277 = getelementptr inbounds nuw i8, ptr %1069, i64 5056
  %1278 = getelementptr inbounds nuw i8, ptr %1069, i64 1920
  %1279 = getelementptr inbounds nuw i8, ptr %1069, i64 9608
  br label %1280

1280:                                             ; preds = %1274, %1323
  %1281 = phi <8 x double> [ %1252, %1274 ], [ %1318, %1323 ]
  %1282 = phi i64 [ %1270, %1274 ], [ %1324, %1323 ]
  %1283 = phi <8 x double> [ %1272, %1274 ], [ %1306, %1323 ]
  %1284 = phi <8 x i64> [ %1261, %1274 ], [ %1310, %1323 ]
  %1285 = phi <8 x double> [ %1266, %1274 ], [ %1317, %1323 ]
  %1286 = icmp slt i64 %1282, %1276
  br i1 %1286, label %1287, label %1293

1287:                                             ; preds = %1280
  %1288 = load ptr, ptr %1279, align 8, !tbaa !78, !noalias !75
  %1289 = getelementptr inbounds nuw <8 x double>, ptr %1288, i64 %1282
  %1290 = load <8 x double>, ptr %1289, align 64, !tbaa !26, !noalias !75
  %1291 = load <8 x double>, ptr %1278, align 64, !tbaa !26, !noalias !75
  %1292 = fmul <8 x double> %1290, %1291
  br label %1301

1293:                                             ; preds = %1280
  %1294 = load <8 x double>, ptr %1277, align 64, !tbaa !26, !noalias !75
  %1295 = load <8 x double>, ptr %1278, align 64, !tbaa !26, !noalias !75
  %1296 = load ptr, ptr %1279, align 8, !tbaa !78, !noalias !75
  %1297 = getelementptr inbounds nuw <8 x double>, ptr %1296, i64 %1282
  %1298 = load <8 x double>, ptr %1297, align 64, !tbaa !26, !noalias !75
  %1299 = fsub <8 x double> %1294, %1295
  %1300 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1298, <8 x double> %1299, <8 x double> %1295)
  br label %1301

1301:                                             ; preds = %1287, %1293
  %1302 = phi <8 x double> [ %1292, %1287 ], [ %1300, %1293 ]
  %1303 = getelementptr inbounds nuw <8 x double>, ptr %1268, i64 %1282
  %1304 = load <8 x double>, ptr %1303, align 64, !tbaa !26, !noalias !75
  %1305 = icmp eq <8 x i64> %1284, zeroinitializer
  %1306 = select <8 x i1> %1305, <8 x double> %1283, <8 x double> %1304
  %1307 = fsub <8 x double> %1281, %1302
  %1308 = fmul <8 x double> %1307, %1306
  %1309 = fcmp olt <8 x double> %1308, %1285
  %1310 = select <8 x i1> %1309, <8 x i64> %1284, <8 x i64> zeroinitializer
  %1311 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1310)
  %1312 = icmp eq i64 %1311, 0
  br i1 %1312, label %1326, label %1313

1313:                                             ; preds = %1301
  %1314 = fneg <8 x double> %1306
  %1315 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1314, <8 x double> %1307, <8 x double> %1285)
  %1316 = icmp eq <8 x i64> %1310, zeroinitializer
  %1317 = select <8 x i1> %1316, <8 x double> %1285, <8 x double> %1315
  %1318 = select <8 x i1> %1316, <8 x double> %1281, <8 x double> %1302
  %1319 = icmp eq i64 %1282, 1
  br i1 %1319, label %1320, label %1323

1320:                                             ; preds = %1313
  %1321 = load <8 x double>, ptr %1268, align 64, !tbaa !26, !noalias !75
  %1322 = select <8 x i1> %1316, <8 x double> %1306, <8 x double> %1321
  br label %1326

1323:                                             ; preds = %1313
  %1324 = add nsw i64 %1282, -1
  %1325 = icmp sgt i64 %1282, 1
  br i1 %1325, label %1280, label %1326, !llvm.loop !79

1326:                                             ; preds = %1323, %1301, %1320, %1264
  %1327 = phi <8 x double> [ %1266, %1264 ], [ %1317, %1320 ], [ %1285, %1301 ], [ %1317, %1323 ]
  %1328 = phi <8 x double> [ %1252, %1264 ], [ %1318, %1320 ], [ %1281, %1301 ], [ %1318, %1323 ]
  %1329 = phi <8 x double> [ %1272, %1264 ], [ %1322, %1320 ], [ %1306, %1301 ], [ %1306, %1323 ]
  %1330 = fdiv <8 x double> %1327, %1329
  %1331 = fsub <8 x double> %1328, %1330
  %1332 = icmp eq <8 x i64> %1261, zeroinitializer
  %1333 = select <8 x i1> %1332, <8 x double> %1252, <8 x double> %1331
  br label %1334

1334:                                             ; preds = %1326, %1255
  %1335 = phi <8 x double> [ %1333, %1326 ], [ %1252, %1255 ]
  %1336 = getelementptr inbounds nuw i8, ptr %1069, i64 3008
  %1337 = load <8 x double>, ptr %1336, align 64, !tbaa !26, !noalias !75
  %1338 = getelementptr inbounds nuw i8, ptr %1069, i64 3072
  %1339 = load <8 x double>, ptr %1338, align 64, !tbaa !26, !noalias !75
  %1340 = getelementptr inbounds nuw i8, ptr %1069, i64 3136
  %1341 = load <8 x double>, ptr %1340, align 64, !tbaa !26, !noalias !75
  %1342 = getelementptr inbounds nuw i8, ptr %1069, i64 2944
  %1343 = load <8 x double>, ptr %1342, align 64, !tbaa !26, !noalias !75
  %1344 = fmul <8 x double> %1076, splat (double 5.000000e-04)
  br label %1345

1345:                                             ; preds = %1334, %1345
  %1346 = phi <8 x i64> [ splat (i64 -1), %1334 ], [ %1368, %1345 ]
  %1347 = phi i32 [ 0, %1334 ], [ %1369, %1345 ]
  %1348 = phi <8 x double> [ %1080, %1334 ], [ %1365, %1345 ]
  %1349 = fmul <8 x double> %1348, splat (double 3.000000e+00)
  %1350 = fmul <8 x double> %1349, %1341
  %1351 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1339, <8 x double> splat (double 2.000000e+00), <8 x double> %1350)
  %1352 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1348, <8 x double> %1351, <8 x double> %1337)
  %1353 = fdiv <8 x double> splat (double 1.000000e+00), %1352
  %1354 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1348, <8 x double> %1341, <8 x double> %1339)
  %1355 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1348, <8 x double> %1354, <8 x double> %1337)
  %1356 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1348, <8 x double> %1355, <8 x double> %1343)
  %1357 = fsub <8 x double> %1356, %1335
  %1358 = fmul <8 x double> %1357, %1353
  %1359 = fmul <8 x double> %1358, %1358
  %1360 = fmul <8 x double> %1353, %1359
  %1361 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1349, <8 x double> %1341, <8 x double> %1339)
  %1362 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1360, <8 x double> %1361, <8 x double> %1358)
  %1363 = fsub <8 x double> %1348, %1362
  %1364 = icmp eq <8 x i64> %1346, zeroinitializer
  %1365 = select <8 x i1> %1364, <8 x double> %1348, <8 x double> %1363
  %1366 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1362)
  %1367 = fcmp oge <8 x double> %1366, %1344
  %1368 = select <8 x i1> %1367, <8 x i64> %1346, <8 x i64> zeroinitializer
  %1369 = add nuw nsw i32 %1347, 1
  %1370 = icmp samesign ult i32 %1347, 3
  %1371 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1368)
  %1372 = icmp ne i64 %1371, 0
  %1373 = select i1 %1370, i1 %1372, i1 false
  br i1 %1373, label %1345, label %1374, !llvm.loop !80

1374:                                             ; preds = %1345
  %1375 = fmul <8 x double> %1076, splat (double 2.800000e-01)
  %1376 = fcmp ogt <8 x double> %1365, %1375
  %1377 = select <8 x i1> %1376, <8 x double> %1365, <8 x double> %1375
  %1378 = fcmp olt <8 x double> %1377, %1076
  %1379 = select <8 x i1> %1378, <8 x double> %1377, <8 x double> %1076
  %1380 = select <8 x i1> %1108, <8 x double> %1080, <8 x double> %1379
  %1381 = fcmp olt <8 x double> %1250, %1245
  %1382 = select <8 x i1> %1108, <8 x i1> splat (i1 true), <8 x i1> %1381
  %1383 = select <8 x i1> %1382, <8 x double> %1250, <8 x double> %1245
  br label %1384

1384:                                             ; preds = %1188, %1374
  %1385 = phi <8 x double> [ %1383, %1374 ], [ %1250, %1188 ]
  %1386 = phi <8 x double> [ %1380, %1374 ], [ %1080, %1188 ]
  %1387 = phi <8 x double> [ %1335, %1374 ], [ %1252, %1188 ]
  %1388 = fsub <8 x double> %1245, %1385
  %1389 = select <8 x i1> %740, <8 x double> %1125, <8 x double> %1242
  store <8 x double> %1389, ptr %1124, align 64, !tbaa !26
  %1390 = select <8 x i1> %740, <8 x double> %1082, <8 x double> %1388
  store <8 x double> %1390, ptr %1081, align 64, !tbaa !26
  %1391 = getelementptr inbounds nuw i8, ptr %1069, i64 3520
  %1392 = load <8 x double>, ptr %1391, align 64, !tbaa !26
  %1393 = select <8 x i1> %740, <8 x double> %1392, <8 x double> %1385
  store <8 x double> %1393, ptr %1391, align 64, !tbaa !26
  %1394 = getelementptr inbounds nuw i8, ptr %1069, i64 3392
  %1395 = and <8 x i64> %1103, %577
  %1396 = load <8 x double>, ptr %1394, align 64, !tbaa !26
  %1397 = icmp eq <8 x i64> %1395, zeroinitializer
  %1398 = select <8 x i1> %1397, <8 x double> %1396, <8 x double> %1387
  store <8 x double> %1398, ptr %1394, align 64, !tbaa !26
  %1399 = select <8 x i1> %1397, <8 x double> %1080, <8 x double> %1386
  store <8 x double> %1399, ptr %1070, align 64, !tbaa !26
  %1400 = add nuw nsw i64 %1067, 1
  %1401 = load i64, ptr %175, align 8, !tbaa !20
  %1402 = icmp slt i64 %1400, %1401
  br i1 %1402, label %1066, label %1403, !llvm.loop !81

1403:                                             ; preds = %1384, %714, %824
  %1404 = phi i64 [ %1051, %824 ], [ %822, %714 ], [ %1401, %1384 ]
  %1405 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %1406 = fcmp ogt <8 x double> %1405, zeroinitializer
  %1407 = select <8 x i1> %1406, <8 x i64> %577, <8 x i64> zeroinitializer
  %1408 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1407)
  %1409 = icmp eq i64 %1408, 0
  br i1 %1409, label %1493, label %1410

1410:                                             ; preds = %1403
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1407, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #6
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #6
  %1411 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %1412 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %1413 = fadd <8 x double> %1411, %1412
  store <8 x double> %1413, ptr %9, align 64, !tbaa !26
  %1414 = load ptr, ptr %188, align 8
  %1415 = load ptr, ptr %190, align 8
  %1416 = load ptr, ptr %191, align 8
  br label %1417

1417:                                             ; preds = %1485, %1410
  %1418 = phi i64 [ 0, %1410 ], [ %1486, %1485 ]
  %1419 = getelementptr inbounds nuw i64, ptr %7, i64 %1418
  %1420 = load i64, ptr %1419, align 8, !tbaa !30
  %1421 = icmp eq i64 %1420, 0
  br i1 %1421, label %1485, label %1422

1422:                                             ; preds = %1417
  %1423 = getelementptr inbounds nuw [8 x i64], ptr %139, i64 0, i64 %1418
  %1424 = load i64, ptr %1423, align 8, !tbaa !30
  %1425 = shl nsw i64 %1424, 1
  %1426 = getelementptr inbounds i64, ptr %1414, i64 %1425
  %1427 = load i64, ptr %1426, align 8, !tbaa !30
  %1428 = shl nuw nsw i64 %1418, 1
  %1429 = getelementptr inbounds nuw [16 x i64], ptr %189, i64 0, i64 %1428
  %1430 = getelementptr inbounds i64, ptr %1416, i64 %1425
  %1431 = load i64, ptr %1430, align 8, !tbaa !30
  %1432 = shl nsw i64 %1431, 4
  %1433 = getelementptr inbounds i8, ptr %1415, i64 %1432
  %1434 = getelementptr inbounds nuw double, ptr %9, i64 %1418
  %1435 = load double, ptr %1434, align 8, !tbaa !45
  %1436 = load i64, ptr %1429, align 8, !tbaa !30
  %1437 = getelementptr i8, ptr %1433, i64 -16
  %1438 = icmp sgt i64 %1436, 0
  br i1 %1438, label %1439, label %1448

1439:                                             ; preds = %1422, %1445
  %1440 = phi i64 [ %1446, %1445 ], [ %1436, %1422 ]
  %1441 = shl i64 %1440, 4
  %1442 = getelementptr i8, ptr %1437, i64 %1441
  %1443 = load double, ptr %1442, align 8, !tbaa !45
  %1444 = fcmp ugt double %1435, %1443
  br i1 %1444, label %1448, label %1445

1445:                                             ; preds = %1439
  %1446 = add nsw i64 %1440, -1
  store i64 %1446, ptr %1429, align 8, !tbaa !30
  %1447 = icmp sgt i64 %1440, 1
  br i1 %1447, label %1439, label %1448, !llvm.loop !82

1448:                                             ; preds = %1445, %1439, %1422
  %1449 = phi i64 [ %1436, %1422 ], [ 0, %1445 ], [ %1440, %1439 ]
  %1450 = icmp slt i64 %1449, %1427
  br i1 %1450, label %1451, label %1460

1451:                                             ; preds = %1448, %1457
  %1452 = phi i64 [ %1458, %1457 ], [ %1449, %1448 ]
  %1453 = shl nsw i64 %1452, 4
  %1454 = getelementptr inbounds i8, ptr %1433, i64 %1453
  %1455 = load double, ptr %1454, align 8, !tbaa !45
  %1456 = fcmp ule double %1435, %1455
  br i1 %1456, label %1465, label %1457

1457:                                             ; preds = %1451
  %1458 = add i64 %1452, 1
  store i64 %1458, ptr %1429, align 8, !tbaa !30
  %1459 = icmp eq i64 %1458, %1427
  br i1 %1459, label %1460, label %1451, !llvm.loop !83

1460:                                             ; preds = %1457, %1448
  %1461 = shl i64 %1427, 4
  %1462 = getelementptr i8, ptr %1433, i64 %1461
  %1463 = getelementptr i8, ptr %1462, i64 -8
  %1464 = load double, ptr %1463, align 8, !tbaa !45
  br label %1482

1465:                                             ; preds = %1451
  %1466 = shl nsw i64 %1452, 1
  %1467 = or disjoint i64 %1466, 1
  %1468 = getelementptr inbounds double, ptr %1433, i64 %1467
  %1469 = load double, ptr %1468, align 8, !tbaa !45
  %1470 = icmp sgt i64 %1452, 0
  br i1 %1470, label %1471, label %1482

1471:                                             ; preds = %1465
  %1472 = getelementptr inbounds nuw i8, ptr %1433, i64 %1453
  %1473 = getelementptr i8, ptr %1472, i64 -8
  %1474 = load double, ptr %1473, align 8, !tbaa !45
  %1475 = getelementptr i8, ptr %1472, i64 -16
  %1476 = load double, ptr %1475, align 8, !tbaa !45
  %1477 = fsub double %1435, %1476
  %1478 = fsub double %1455, %1476
  %1479 = fdiv double %1477, %1478
  %1480 = fsub double %1469, %1474
  %1481 = tail call double @llvm.fmuladd.f64(double %1479, double %1480, double %1474)
  br label %1482

1482:                                             ; preds = %1471, %1465, %1460
  %1483 = phi double [ %1481, %1471 ], [ %1469, %1465 ], [ %1464, %1460 ]
  %1484 = getelementptr inbounds nuw double, ptr %8, i64 %1418
  store double %1483, ptr %1484, align 8, !tbaa !45
  br label %1485

1485:                                             ; preds = %1482, %1417
  %1486 = add nuw nsw i64 %1418, 1
  %1487 = icmp eq i64 %1486, 8
  br i1 %1487, label %1488, label %1417, !llvm.loop !84

1488:                                             ; preds = %1485
  %1489 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1490 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %1491 = icmp eq <8 x i64> %1407, zeroinitializer
  %1492 = select <8 x i1> %1491, <8 x double> %1490, <8 x double> %1489
  store <8 x double> %1492, ptr %184, align 64, !tbaa !26
  br label %1493

1493:                                             ; preds = %1403, %1488, %575
  %1494 = phi i64 [ %1404, %1403 ], [ %1404, %1488 ], [ %580, %575 ]
  %1495 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %1496 = icmp eq <8 x i64> %577, zeroinitializer
  %1497 = select <8 x i1> %1496, <8 x double> %1495, <8 x double> zeroinitializer
  store <8 x double> %1497, ptr %192, align 64, !tbaa !26
  %1498 = load <8 x i64>, ptr %128, align 64, !tbaa !26
  %1499 = xor <8 x i64> %577, splat (i64 -1)
  %1500 = and <8 x i64> %1498, %1499
  store <8 x i64> %1500, ptr %193, align 64, !tbaa !26
  %1501 = icmp sgt i64 %1494, 0
  br i1 %1501, label %2232, label %2679

1502:                                             ; preds = %2540
  %1503 = load i64, ptr %137, align 16, !tbaa !21
  %1504 = icmp sgt i64 %2677, 0
  br i1 %1504, label %1505, label %2679

1505:                                             ; preds = %1502
  %1506 = icmp sgt i64 %1503, 0
  br label %1509

1507:                                             ; preds = %2227
  %1508 = icmp sgt i64 %2230, 0
  br i1 %1508, label %2685, label %2679

1509:                                             ; preds = %1505, %2227
  %1510 = phi i64 [ %2677, %1505 ], [ %2230, %2227 ]
  %1511 = phi i64 [ 0, %1505 ], [ %2229, %2227 ]
  %1512 = load ptr, ptr %148, align 8, !tbaa !28
  %1513 = getelementptr inbounds %struct.Piece, ptr %1512, i64 %1511
  %1514 = getelementptr inbounds nuw i8, ptr %1513, i64 9472
  %1515 = load i64, ptr %1514, align 64, !tbaa !31
  %1516 = icmp eq i64 %1515, 0
  br i1 %1516, label %1783, label %1517

1517:                                             ; preds = %1509
  %1518 = getelementptr inbounds nuw i8, ptr %1513, i64 384
  %1519 = load <8 x double>, ptr %1518, align 64, !tbaa !26
  %1520 = getelementptr inbounds nuw i8, ptr %1513, i64 448
  %1521 = load <8 x double>, ptr %1520, align 64, !tbaa !26
  %1522 = getelementptr inbounds nuw i8, ptr %1513, i64 512
  %1523 = load <8 x double>, ptr %1522, align 64, !tbaa !26
  %1524 = getelementptr inbounds nuw i8, ptr %1513, i64 576
  %1525 = load <8 x double>, ptr %1524, align 64, !tbaa !26
  %1526 = getelementptr inbounds nuw i8, ptr %1513, i64 640
  %1527 = load <8 x double>, ptr %1526, align 64, !tbaa !26
  %1528 = getelementptr inbounds nuw i8, ptr %1513, i64 704
  %1529 = getelementptr inbounds nuw i8, ptr %1513, i64 960
  %1530 = load <8 x double>, ptr %1529, align 64, !tbaa !26
  %1531 = getelementptr inbounds nuw i8, ptr %1513, i64 1024
  %1532 = load <8 x double>, ptr %1531, align 64, !tbaa !26
  %1533 = getelementptr inbounds nuw i8, ptr %1513, i64 1920
  %1534 = load <8 x double>, ptr %1533, align 64, !tbaa !26
  %1535 = load i64, ptr %137, align 16, !tbaa !21
  %1536 = add nsw i64 %1535, -1
  %1537 = getelementptr inbounds nuw i8, ptr %1513, i64 3328
  %1538 = load <8 x double>, ptr %1537, align 64, !tbaa !26
  %1539 = getelementptr inbounds nuw i8, ptr %1513, i64 8064
  %1540 = load <8 x double>, ptr %1539, align 64, !tbaa !26
  %1541 = getelementptr inbounds nuw i8, ptr %1513, i64 7872
  %1542 = load <8 x double>, ptr %1541, align 64, !tbaa !26
  %1543 = getelementptr inbounds nuw i8, ptr %1513, i64 6016
  %1544 = load <8 x double>, ptr %1543, align 64, !tbaa !26
  %1545 = getelementptr inbounds nuw i8, ptr %1513, i64 4160
  %1546 = load <8 x double>, ptr %1545, align 64, !tbaa !26
  %1547 = fsub <8 x double> %1546, %1534
  %1548 = getelementptr inbounds nuw i8, ptr %1513, i64 6080
  %1549 = load <8 x double>, ptr %1548, align 64, !tbaa !26, !noalias !85
  %1550 = getelementptr inbounds nuw i8, ptr %1513, i64 5056
  %1551 = load <8 x double>, ptr %1550, align 64, !tbaa !26, !noalias !85
  %1552 = fsub <8 x double> %1551, %1534
  %1553 = getelementptr inbounds nuw i8, ptr %1513, i64 6144
  %1554 = load <8 x double>, ptr %1553, align 64, !tbaa !26, !noalias !85
  %1555 = getelementptr inbounds nuw i8, ptr %1513, i64 5952
  %1556 = load <8 x double>, ptr %1555, align 64, !tbaa !26, !noalias !85
  %1557 = fsub <8 x double> %1556, %1534
  %1558 = getelementptr inbounds nuw i8, ptr %1513, i64 9544
  %1559 = load ptr, ptr %1558, align 8, !tbaa !88
  %1560 = getelementptr inbounds nuw i8, ptr %1513, i64 9552
  %1561 = load ptr, ptr %1560, align 16, !tbaa !50
  %1562 = getelementptr inbounds nuw i8, ptr %1513, i64 9560
  %1563 = load ptr, ptr %1562, align 8, !tbaa !67
  %1564 = getelementptr inbounds nuw i8, ptr %1513, i64 9608
  %1565 = load ptr, ptr %1564, align 8, !tbaa !78
  %1566 = getelementptr inbounds nuw i8, ptr %1513, i64 9616
  %1567 = load ptr, ptr %1566, align 16, !tbaa !51
  %1568 = getelementptr inbounds nuw i8, ptr %1513, i64 9632
  %1569 = getelementptr inbounds nuw i8, ptr %1513, i64 6272
  %1570 = load <8 x double>, ptr %1569, align 64, !tbaa !26
  %1571 = load <8 x i64>, ptr %193, align 64, !tbaa !26
  %1572 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1571)
  %1573 = icmp eq i64 %1572, 0
  %1574 = getelementptr inbounds nuw i8, ptr %1513, i64 9600
  %1575 = load ptr, ptr %1574, align 64, !tbaa !89
  %1576 = getelementptr inbounds nuw i8, ptr %1513, i64 9584
  %1577 = load ptr, ptr %1576, align 16, !tbaa !90
  %1578 = getelementptr inbounds nuw i8, ptr %1513, i64 9592
  %1579 = load ptr, ptr %1578, align 8, !tbaa !91
  %1580 = load <8 x double>, ptr %1561, align 64, !tbaa !26
  %1581 = load <8 x double>, ptr %1563, align 64, !tbaa !26
  %1582 = fsub <8 x double> %1580, %1581
  %1583 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1570, <8 x double> %1582, <8 x double> %1580)
  br i1 %1573, label %1588, label %1584

1584:                                             ; preds = %1517
  %1585 = load <8 x double>, ptr %1559, align 64, !tbaa !26
  %1586 = icmp eq <8 x i64> %1571, zeroinitializer
  %1587 = select <8 x i1> %1586, <8 x double> %1583, <8 x double> %1585
  br label %1588

1588:                                             ; preds = %1517, %1584
  %1589 = phi <8 x double> [ %1587, %1584 ], [ %1583, %1517 ]
  br i1 %1506, label %1590, label %2227

1590:                                             ; preds = %1588
  %1591 = getelementptr inbounds nuw i8, ptr %1513, i64 7168
  %1592 = getelementptr inbounds nuw i8, ptr %1513, i64 7232
  %1593 = getelementptr inbounds nuw i8, ptr %1513, i64 7296
  %1594 = icmp eq <8 x i64> %1571, zeroinitializer
  %1595 = fdiv <8 x double> %1530, %1532
  %1596 = getelementptr inbounds nuw i8, ptr %1513, i64 768
  %1597 = getelementptr inbounds nuw i8, ptr %1513, i64 832
  %1598 = getelementptr inbounds nuw i8, ptr %1513, i64 896
  %1599 = getelementptr inbounds nuw i8, ptr %1513, i64 192
  %1600 = getelementptr inbounds nuw i8, ptr %1513, i64 256
  %1601 = getelementptr inbounds nuw i8, ptr %1513, i64 320
  %1602 = getelementptr inbounds nuw i8, ptr %1513, i64 3200
  %1603 = getelementptr inbounds nuw i8, ptr %1513, i64 3264
  %1604 = getelementptr inbounds nuw i8, ptr %1513, i64 64
  %1605 = getelementptr inbounds nuw i8, ptr %1513, i64 7040
  %1606 = getelementptr inbounds nuw i8, ptr %1513, i64 7104
  br label %1607

1607:                                             ; preds = %1590, %1748
  %1608 = phi i64 [ 0, %1590 ], [ %1781, %1748 ]
  %1609 = phi <8 x double> [ zeroinitializer, %1590 ], [ %1779, %1748 ]
  %1610 = phi <8 x double> [ zeroinitializer, %1590 ], [ %1777, %1748 ]
  %1611 = phi <8 x double> [ zeroinitializer, %1590 ], [ %1754, %1748 ]
  %1612 = phi <8 x double> [ zeroinitializer, %1590 ], [ %1753, %1748 ]
  %1613 = phi <8 x double> [ zeroinitializer, %1590 ], [ %1752, %1748 ]
  %1614 = phi <8 x double> [ %1581, %1590 ], [ %1751, %1748 ]
  %1615 = phi <8 x double> [ %1580, %1590 ], [ %1750, %1748 ]
  %1616 = phi <8 x double> [ %1589, %1590 ], [ %1749, %1748 ]
  %1617 = load <8 x double>, ptr %1591, align 64, !tbaa !26
  %1618 = load <8 x double>, ptr %1592, align 64, !tbaa !26
  %1619 = load <8 x double>, ptr %1593, align 64, !tbaa !26
  %1620 = icmp slt i64 %1608, %1536
  br i1 %1620, label %1621, label %1748

1621:                                             ; preds = %1607
  %1622 = add nuw nsw i64 %1608, 1
  %1623 = getelementptr inbounds nuw <8 x double>, ptr %1561, i64 %1622
  %1624 = load <8 x double>, ptr %1623, align 64, !tbaa !26
  %1625 = getelementptr inbounds nuw <8 x double>, ptr %1563, i64 %1622
  %1626 = load <8 x double>, ptr %1625, align 64, !tbaa !26
  %1627 = fsub <8 x double> %1624, %1626
  %1628 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1570, <8 x double> %1627, <8 x double> %1624)
  br i1 %1573, label %1633, label %1629

1629:                                             ; preds = %1621
  %1630 = getelementptr inbounds nuw <8 x double>, ptr %1559, i64 %1622
  %1631 = load <8 x double>, ptr %1630, align 64, !tbaa !26
  %1632 = select <8 x i1> %1594, <8 x double> %1628, <8 x double> %1631
  br label %1633

1633:                                             ; preds = %1621, %1629
  %1634 = phi <8 x double> [ %1632, %1629 ], [ %1628, %1621 ]
  %1635 = icmp eq i64 %1622, %1515
  br i1 %1635, label %1636, label %1707

1636:                                             ; preds = %1633
  %1637 = load <8 x double>, ptr %1528, align 64, !tbaa !26, !noalias !92
  %1638 = load <8 x double>, ptr %1596, align 64, !tbaa !26, !noalias !92
  %1639 = load <8 x double>, ptr %1597, align 64, !tbaa !26, !noalias !92
  %1640 = load <8 x double>, ptr %1598, align 64, !tbaa !26, !noalias !92
  %1641 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1634, <8 x double> %1640, <8 x double> %1639)
  %1642 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1634, <8 x double> %1641, <8 x double> %1638)
  %1643 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1634, <8 x double> %1642, <8 x double> %1637)
  %1644 = fmul <8 x double> %1634, %1643
  %1645 = load <8 x double>, ptr %1599, align 64, !tbaa !26, !noalias !92
  %1646 = load <8 x double>, ptr %1600, align 64, !tbaa !26, !noalias !92
  %1647 = load <8 x double>, ptr %1601, align 64, !tbaa !26, !noalias !92
  %1648 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1644, <8 x double> %1647, <8 x double> %1646)
  %1649 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1644, <8 x double> %1648, <8 x double> %1645)
  %1650 = fdiv <8 x double> splat (double 1.000000e+00), %1649
  %1651 = fmul <8 x double> %1647, %1644
  %1652 = fmul <8 x double> %1651, splat (double 0x3FD5555555555555)
  %1653 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1646, <8 x double> splat (double 5.000000e-01), <8 x double> %1652)
  %1654 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1644, <8 x double> %1653, <8 x double> %1645)
  %1655 = fmul <8 x double> %1644, %1654
  %1656 = fsub <8 x double> %1634, %1655
  %1657 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1656, <8 x double> %1650, <8 x double> %1644)
  %1658 = load <8 x double>, ptr %1602, align 64, !tbaa !26, !noalias !97
  %1659 = load <8 x double>, ptr %1529, align 64, !tbaa !26, !noalias !97
  %1660 = fdiv <8 x double> %1658, %1659
  %1661 = load <8 x double>, ptr %1603, align 64, !tbaa !26, !noalias !97
  %1662 = load <8 x double>, ptr %1604, align 64, !tbaa !26, !noalias !97
  %1663 = fsub <8 x double> %1538, %1662
  %1664 = fmul <8 x double> %1661, %1663
  %1665 = fmul <8 x double> %1634, splat (double 2.000000e+00)
  %1666 = load <8 x double>, ptr %1518, align 64, !tbaa !26, !noalias !97
  %1667 = load <8 x double>, ptr %1520, align 64, !tbaa !26, !noalias !97
  %1668 = load <8 x double>, ptr %1522, align 64, !tbaa !26, !noalias !97
  %1669 = load <8 x double>, ptr %1524, align 64, !tbaa !26, !noalias !97
  %1670 = load <8 x double>, ptr %1526, align 64, !tbaa !26, !noalias !97
  %1671 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1665, <8 x double> %1670, <8 x double> %1669)
  %1672 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1665, <8 x double> %1671, <8 x double> %1668)
  %1673 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1665, <8 x double> %1672, <8 x double> %1667)
  %1674 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1665, <8 x double> %1673, <8 x double> %1666)
  %1675 = fmul <8 x double> %1649, %1674
  %1676 = fdiv <8 x double> %1664, %1675
  %1677 = fadd <8 x double> %1660, %1676
  %1678 = load i64, ptr %1514, align 64, !tbaa !31, !noalias !97
  %1679 = icmp eq i64 %1678, 0
  %1680 = load ptr, ptr %1568, align 32, !tbaa !37, !noalias !97
  br i1 %1679, label %1681, label %1684

1681:                                             ; preds = %1636
  %1682 = load <8 x double>, ptr %1680, align 64, !tbaa !26, !noalias !97
  %1683 = fmul <8 x double> %1542, %1682
  br label %1697

1684:                                             ; preds = %1636
  %1685 = shl nsw i64 %1678, 8
  %1686 = getelementptr inbounds i8, ptr %1680, i64 %1685
  %1687 = load <8 x double>, ptr %1686, align 64, !tbaa !26, !noalias !97
  %1688 = getelementptr inbounds nuw i8, ptr %1686, i64 64
  %1689 = load <8 x double>, ptr %1688, align 64, !tbaa !26, !noalias !97
  %1690 = getelementptr inbounds nuw i8, ptr %1686, i64 128
  %1691 = load <8 x double>, ptr %1690, align 64, !tbaa !26, !noalias !97
  %1692 = getelementptr inbounds nuw i8, ptr %1686, i64 192
  %1693 = load <8 x double>, ptr %1692, align 64, !tbaa !26, !noalias !97
  %1694 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1538, <8 x double> %1693, <8 x double> %1691)
  %1695 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1538, <8 x double> %1694, <8 x double> %1689)
  %1696 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1538, <8 x double> %1695, <8 x double> %1687)
  br label %1697

1697:                                             ; preds = %1681, %1684
  %1698 = phi <8 x double> [ %1683, %1681 ], [ %1696, %1684 ]
  %1699 = fdiv <8 x double> %1698, %1677
  %1700 = fmul <8 x double> %1650, %1699
  %1701 = load <8 x double>, ptr %1531, align 64, !tbaa !26, !noalias !97
  %1702 = fdiv <8 x double> %1699, %1701
  %1703 = fneg <8 x double> %1634
  %1704 = fmul <8 x double> %1700, %1703
  %1705 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1699, <8 x double> %1657, <8 x double> %1704)
  %1706 = fsub <8 x double> %1702, %1700
  store <8 x double> %1706, ptr %1605, align 64, !tbaa !26
  store <8 x double> %1705, ptr %1606, align 64, !tbaa !26
  br label %1748

1707:                                             ; preds = %1633
  %1708 = load i64, ptr %1514, align 64, !tbaa !31, !noalias !98
  %1709 = icmp eq i64 %1708, 0
  %1710 = load ptr, ptr %1568, align 32, !tbaa !37, !noalias !98
  br i1 %1709, label %1711, label %1715

1711:                                             ; preds = %1707
  %1712 = getelementptr inbounds nuw <8 x double>, ptr %1710, i64 %1622
  %1713 = load <8 x double>, ptr %1712, align 64, !tbaa !26, !noalias !98
  %1714 = fmul <8 x double> %1542, %1713
  br label %1731

1715:                                             ; preds = %1707
  %1716 = shl nsw i64 %1622, 8
  %1717 = getelementptr inbounds nuw i8, ptr %1710, i64 %1716
  %1718 = load <8 x double>, ptr %1717, align 64, !tbaa !26, !noalias !98
  %1719 = getelementptr inbounds nuw i8, ptr %1717, i64 64
  %1720 = load <8 x double>, ptr %1719, align 64, !tbaa !26, !noalias !98
  %1721 = getelementptr inbounds nuw i8, ptr %1717, i64 128
  %1722 = load <8 x double>, ptr %1721, align 64, !tbaa !26, !noalias !98
  %1723 = getelementptr inbounds nuw i8, ptr %1717, i64 192
  %1724 = load <8 x double>, ptr %1723, align 64, !tbaa !26, !noalias !98
  %1725 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1538, <8 x double> %1724, <8 x double> %1722)
  %1726 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1538, <8 x double> %1725, <8 x double> %1720)
  %1727 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1538, <8 x double> %1726, <8 x double> %1718)
  %1728 = icmp slt i64 %1608, %1708
  %1729 = fmul <8 x double> %1542, %1727
  %1730 = select i1 %1728, <8 x double> %1727, <8 x double> %1729
  br label %1731

1731:                                             ; preds = %1715, %1711
  %1732 = phi <8 x double> [ %1714, %1711 ], [ %1730, %1715 ]
  %1733 = icmp slt i64 %1622, %1515
  br i1 %1733, label %1734, label %1736

1734:                                             ; preds = %1731
  %1735 = fmul <8 x double> %1595, %1732
  br label %1748

1736:                                             ; preds = %1731
  %1737 = fadd <8 x double> %1616, %1634
  %1738 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1737, <8 x double> %1527, <8 x double> %1525)
  %1739 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1737, <8 x double> %1738, <8 x double> %1523)
  %1740 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1737, <8 x double> %1739, <8 x double> %1521)
  %1741 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1737, <8 x double> %1740, <8 x double> %1519)
  %1742 = fmul <8 x double> %1741, %1732
  %1743 = getelementptr inbounds nuw <8 x double>, ptr %1565, i64 %1622
  %1744 = load <8 x double>, ptr %1743, align 64, !tbaa !26, !noalias !98
  %1745 = fmul <8 x double> %1540, %1744
  %1746 = fsub <8 x double> %1742, %1745
  %1747 = fadd <8 x double> %1742, %1745
  br label %1748

1748:                                             ; preds = %1736, %1734, %1697, %1607
  %1749 = phi <8 x double> [ %1616, %1607 ], [ %1634, %1697 ], [ %1634, %1734 ], [ %1634, %1736 ]
  %1750 = phi <8 x double> [ %1615, %1607 ], [ %1624, %1697 ], [ %1624, %1734 ], [ %1624, %1736 ]
  %1751 = phi <8 x double> [ %1614, %1607 ], [ %1626, %1697 ], [ %1626, %1734 ], [ %1626, %1736 ]
  %1752 = phi <8 x double> [ %1617, %1607 ], [ %1702, %1697 ], [ %1735, %1734 ], [ %1746, %1736 ]
  %1753 = phi <8 x double> [ %1618, %1607 ], [ %1700, %1697 ], [ %1735, %1734 ], [ %1747, %1736 ]
  %1754 = phi <8 x double> [ %1619, %1607 ], [ %1705, %1697 ], [ zeroinitializer, %1734 ], [ zeroinitializer, %1736 ]
  %1755 = getelementptr inbounds nuw <8 x double>, ptr %1567, i64 %1608
  %1756 = load <8 x double>, ptr %1755, align 64, !tbaa !26
  %1757 = icmp slt i64 %1608, %1515
  %1758 = select i1 %1757, <8 x double> %1534, <8 x double> %1547
  %1759 = fmul <8 x double> %1544, %1758
  %1760 = select i1 %1757, <8 x double> %1534, <8 x double> %1557
  %1761 = fmul <8 x double> %1760, %1554
  %1762 = select i1 %1757, <8 x double> %1534, <8 x double> %1552
  %1763 = fmul <8 x double> %1762, %1549
  %1764 = fmul <8 x double> %1761, %1614
  %1765 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1763, <8 x double> %1615, <8 x double> %1764)
  %1766 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1756, <8 x double> %1759, <8 x double> %1752)
  %1767 = fadd <8 x double> %1612, %1766
  %1768 = fmul <8 x double> %1756, %1765
  %1769 = fsub <8 x double> %1611, %1754
  %1770 = fadd <8 x double> %1769, %1768
  %1771 = fneg <8 x double> %1613
  %1772 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1771, <8 x double> %1609, <8 x double> %1767)
  %1773 = fdiv <8 x double> splat (double 1.000000e+00), %1772
  %1774 = getelementptr inbounds nuw <8 x double>, ptr %1575, i64 %1608
  store <8 x double> %1613, ptr %1774, align 64, !tbaa !26
  %1775 = fneg <8 x double> %1770
  %1776 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1613, <8 x double> %1610, <8 x double> %1775)
  %1777 = fmul <8 x double> %1773, %1776
  %1778 = getelementptr inbounds nuw <8 x double>, ptr %1577, i64 %1608
  store <8 x double> %1777, ptr %1778, align 64, !tbaa !26
  %1779 = fmul <8 x double> %1753, %1773
  %1780 = getelementptr inbounds nuw <8 x double>, ptr %1579, i64 %1608
  store <8 x double> %1779, ptr %1780, align 64, !tbaa !26
  %1781 = add nuw nsw i64 %1608, 1
  %1782 = icmp eq i64 %1781, %1503
  br i1 %1782, label %2227, label %1607, !llvm.loop !101

1783:                                             ; preds = %1509
  %1784 = add nsw i64 %1511, 1
  %1785 = icmp slt i64 %1784, %1510
  br i1 %1785, label %1789, label %1786

1786:                                             ; preds = %1783
  %1787 = load i64, ptr %137, align 16, !tbaa !21
  %1788 = load <8 x i64>, ptr %193, align 64, !tbaa !26
  br label %2078

1789:                                             ; preds = %1783
  %1790 = getelementptr inbounds %struct.Piece, ptr %1512, i64 %1784, i32 51
  %1791 = load i64, ptr %1790, align 64, !tbaa !31
  %1792 = icmp eq i64 %1791, 0
  %1793 = load i64, ptr %137, align 16, !tbaa !21
  %1794 = load <8 x i64>, ptr %193, align 64, !tbaa !26
  br i1 %1792, label %1795, label %2078

1795:                                             ; preds = %1789
  %1796 = getelementptr inbounds nuw i8, ptr %1513, i64 384
  %1797 = load <8 x double>, ptr %1796, align 64, !tbaa !26
  %1798 = getelementptr inbounds nuw i8, ptr %1513, i64 448
  %1799 = load <8 x double>, ptr %1798, align 64, !tbaa !26
  %1800 = getelementptr inbounds nuw i8, ptr %1513, i64 512
  %1801 = load <8 x double>, ptr %1800, align 64, !tbaa !26
  %1802 = getelementptr inbounds nuw i8, ptr %1513, i64 576
  %1803 = load <8 x double>, ptr %1802, align 64, !tbaa !26
  %1804 = getelementptr inbounds nuw i8, ptr %1513, i64 640
  %1805 = load <8 x double>, ptr %1804, align 64, !tbaa !26
  %1806 = getelementptr inbounds nuw i8, ptr %1513, i64 1920
  %1807 = load <8 x double>, ptr %1806, align 64, !tbaa !26
  %1808 = add nsw i64 %1793, -1
  %1809 = getelementptr inbounds nuw i8, ptr %1513, i64 8064
  %1810 = load <8 x double>, ptr %1809, align 64, !tbaa !26
  %1811 = getelementptr inbounds nuw i8, ptr %1513, i64 7872
  %1812 = load <8 x double>, ptr %1811, align 64, !tbaa !26
  %1813 = getelementptr inbounds nuw i8, ptr %1513, i64 6016
  %1814 = load <8 x double>, ptr %1813, align 64, !tbaa !26
  %1815 = getelementptr inbounds nuw i8, ptr %1513, i64 4160
  %1816 = load <8 x double>, ptr %1815, align 64, !tbaa !26
  %1817 = fsub <8 x double> %1816, %1807
  %1818 = fmul <8 x double> %1814, %1817
  %1819 = getelementptr inbounds nuw i8, ptr %1513, i64 6080
  %1820 = load <8 x double>, ptr %1819, align 64, !tbaa !26, !noalias !102
  %1821 = getelementptr inbounds nuw i8, ptr %1513, i64 5056
  %1822 = load <8 x double>, ptr %1821, align 64, !tbaa !26, !noalias !102
  %1823 = fsub <8 x double> %1822, %1807
  %1824 = fmul <8 x double> %1820, %1823
  %1825 = getelementptr inbounds nuw i8, ptr %1513, i64 6144
  %1826 = load <8 x double>, ptr %1825, align 64, !tbaa !26, !noalias !102
  %1827 = getelementptr inbounds nuw i8, ptr %1513, i64 5952
  %1828 = load <8 x double>, ptr %1827, align 64, !tbaa !26, !noalias !102
  %1829 = fsub <8 x double> %1828, %1807
  %1830 = fmul <8 x double> %1826, %1829
  %1831 = getelementptr inbounds nuw i8, ptr %1513, i64 9544
  %1832 = load ptr, ptr %1831, align 8, !tbaa !88
  %1833 = getelementptr inbounds nuw i8, ptr %1513, i64 9552
  %1834 = load ptr, ptr %1833, align 16, !tbaa !50
  %1835 = getelementptr inbounds nuw i8, ptr %1513, i64 9560
  %1836 = load ptr, ptr %1835, align 8, !tbaa !67
  %1837 = getelementptr inbounds nuw i8, ptr %1513, i64 9608
  %1838 = load ptr, ptr %1837, align 8, !tbaa !78
  %1839 = getelementptr inbounds nuw i8, ptr %1513, i64 9616
  %1840 = load ptr, ptr %1839, align 16, !tbaa !51
  %1841 = getelementptr inbounds nuw i8, ptr %1513, i64 9632
  %1842 = load ptr, ptr %1841, align 32, !tbaa !37
  %1843 = getelementptr inbounds nuw i8, ptr %1513, i64 6272
  %1844 = load <8 x double>, ptr %1843, align 64, !tbaa !26
  %1845 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1794)
  %1846 = icmp eq i64 %1845, 0
  %1847 = getelementptr inbounds nuw i8, ptr %1513, i64 9600
  %1848 = load ptr, ptr %1847, align 64, !tbaa !89
  %1849 = getelementptr inbounds nuw i8, ptr %1513, i64 9584
  %1850 = load ptr, ptr %1849, align 16, !tbaa !90
  %1851 = getelementptr inbounds nuw i8, ptr %1513, i64 9592
  %1852 = load ptr, ptr %1851, align 8, !tbaa !91
  %1853 = load <8 x double>, ptr %1834, align 64, !tbaa !26
  %1854 = load <8 x double>, ptr %1836, align 64, !tbaa !26
  %1855 = fsub <8 x double> %1853, %1854
  %1856 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1844, <8 x double> %1855, <8 x double> %1853)
  br i1 %1846, label %1861, label %1857

1857:                                             ; preds = %1795
  %1858 = load <8 x double>, ptr %1832, align 64, !tbaa !26
  %1859 = icmp eq <8 x i64> %1794, zeroinitializer
  %1860 = select <8 x i1> %1859, <8 x double> %1856, <8 x double> %1858
  br label %1861

1861:                                             ; preds = %1795, %1857
  %1862 = phi <8 x double> [ %1860, %1857 ], [ %1856, %1795 ]
  %1863 = getelementptr inbounds %struct.Piece, ptr %1512, i64 %1784
  %1864 = getelementptr inbounds nuw i8, ptr %1863, i64 384
  %1865 = load <8 x double>, ptr %1864, align 64, !tbaa !26
  %1866 = getelementptr inbounds nuw i8, ptr %1863, i64 448
  %1867 = load <8 x double>, ptr %1866, align 64, !tbaa !26
  %1868 = getelementptr inbounds nuw i8, ptr %1863, i64 512
  %1869 = load <8 x double>, ptr %1868, align 64, !tbaa !26
  %1870 = getelementptr inbounds nuw i8, ptr %1863, i64 576
  %1871 = load <8 x double>, ptr %1870, align 64, !tbaa !26
  %1872 = getelementptr inbounds nuw i8, ptr %1863, i64 640
  %1873 = load <8 x double>, ptr %1872, align 64, !tbaa !26
  %1874 = getelementptr inbounds nuw i8, ptr %1863, i64 1920
  %1875 = load <8 x double>, ptr %1874, align 64, !tbaa !26
  %1876 = getelementptr inbounds nuw i8, ptr %1863, i64 8064
  %1877 = load <8 x double>, ptr %1876, align 64, !tbaa !26
  %1878 = getelementptr inbounds nuw i8, ptr %1863, i64 7872
  %1879 = load <8 x double>, ptr %1878, align 64, !tbaa !26
  %1880 = getelementptr inbounds nuw i8, ptr %1863, i64 6016
  %1881 = load <8 x double>, ptr %1880, align 64, !tbaa !26
  %1882 = getelementptr inbounds nuw i8, ptr %1863, i64 4160
  %1883 = load <8 x double>, ptr %1882, align 64, !tbaa !26
  %1884 = fsub <8 x double> %1883, %1875
  %1885 = fmul <8 x double> %1881, %1884
  %1886 = getelementptr inbounds nuw i8, ptr %1863, i64 6080
  %1887 = load <8 x double>, ptr %1886, align 64, !tbaa !26, !noalias !105
  %1888 = getelementptr inbounds nuw i8, ptr %1863, i64 5056
  %1889 = load <8 x double>, ptr %1888, align 64, !tbaa !26, !noalias !105
  %1890 = fsub <8 x double> %1889, %1875
  %1891 = fmul <8 x double> %1887, %1890
  %1892 = getelementptr inbounds nuw i8, ptr %1863, i64 6144
  %1893 = load <8 x double>, ptr %1892, align 64, !tbaa !26, !noalias !105
  %1894 = getelementptr inbounds nuw i8, ptr %1863, i64 5952
  %1895 = load <8 x double>, ptr %1894, align 64, !tbaa !26, !noalias !105
  %1896 = fsub <8 x double> %1895, %1875
  %1897 = fmul <8 x double> %1893, %1896
  %1898 = getelementptr inbounds nuw i8, ptr %1863, i64 9544
  %1899 = load ptr, ptr %1898, align 8, !tbaa !88
  %1900 = getelementptr inbounds nuw i8, ptr %1863, i64 9552
  %1901 = load ptr, ptr %1900, align 16, !tbaa !50
  %1902 = getelementptr inbounds nuw i8, ptr %1863, i64 9560
  %1903 = load ptr, ptr %1902, align 8, !tbaa !67
  %1904 = getelementptr inbounds nuw i8, ptr %1863, i64 9608
  %1905 = load ptr, ptr %1904, align 8, !tbaa !78
  %1906 = getelementptr inbounds nuw i8, ptr %1863, i64 9616
  %1907 = load ptr, ptr %1906, align 16, !tbaa !51
  %1908 = getelementptr inbounds nuw i8, ptr %1863, i64 9632
  %1909 = load ptr, ptr %1908, align 32, !tbaa !37
  %1910 = getelementptr inbounds nuw i8, ptr %1863, i64 6272
  %1911 = load <8 x double>, ptr %1910, align 64, !tbaa !26
  %1912 = getelementptr inbounds nuw i8, ptr %1863, i64 9600
  %1913 = load ptr, ptr %1912, align 64, !tbaa !89
  %1914 = getelementptr inbounds nuw i8, ptr %1863, i64 9584
  %1915 = load ptr, ptr %1914, align 16, !tbaa !90
  %1916 = getelementptr inbounds nuw i8, ptr %1863, i64 9592
  %1917 = load ptr, ptr %1916, align 8, !tbaa !91
  %1918 = load <8 x double>, ptr %1901, align 64, !tbaa !26
  %1919 = load <8 x double>, ptr %1903, align 64, !tbaa !26
  %1920 = fsub <8 x double> %1918, %1919
  %1921 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1911, <8 x double> %1920, <8 x double> %1918)
  br i1 %1846, label %1926, label %1922

1922:                                             ; preds = %1861
  %1923 = load <8 x double>, ptr %1899, align 64, !tbaa !26
  %1924 = icmp eq <8 x i64> %1794, zeroinitializer
  %1925 = select <8 x i1> %1924, <8 x double> %1921, <8 x double> %1923
  br label %1926

1926:                                             ; preds = %1861, %1922
  %1927 = phi <8 x double> [ %1925, %1922 ], [ %1921, %1861 ]
  br i1 %1506, label %1928, label %2227

1928:                                             ; preds = %1926
  %1929 = getelementptr inbounds nuw i8, ptr %1513, i64 7168
  %1930 = getelementptr inbounds nuw i8, ptr %1513, i64 7232
  %1931 = getelementptr inbounds nuw i8, ptr %1513, i64 7296
  %1932 = icmp eq <8 x i64> %1794, zeroinitializer
  %1933 = getelementptr inbounds nuw i8, ptr %1863, i64 7168
  %1934 = getelementptr inbounds nuw i8, ptr %1863, i64 7232
  %1935 = getelementptr inbounds nuw i8, ptr %1863, i64 7296
  br label %1936

1936:                                             ; preds = %1928, %2062
  %1937 = phi i64 [ 0, %1928 ], [ %2076, %2062 ]
  %1938 = phi <8 x double> [ zeroinitializer, %1928 ], [ %2014, %2062 ]
  %1939 = phi <8 x double> [ zeroinitializer, %1928 ], [ %2012, %2062 ]
  %1940 = phi <8 x double> [ zeroinitializer, %1928 ], [ %1992, %2062 ]
  %1941 = phi <8 x double> [ zeroinitializer, %1928 ], [ %1991, %2062 ]
  %1942 = phi <8 x double> [ zeroinitializer, %1928 ], [ %1987, %2062 ]
  %1943 = phi <8 x double> [ %1854, %1928 ], [ %1990, %2062 ]
  %1944 = phi <8 x double> [ %1853, %1928 ], [ %1989, %2062 ]
  %1945 = phi <8 x double> [ %1862, %1928 ], [ %1988, %2062 ]
  %1946 = phi <8 x double> [ zeroinitializer, %1928 ], [ %2074, %2062 ]
  %1947 = phi <8 x double> [ zeroinitializer, %1928 ], [ %2072, %2062 ]
  %1948 = phi <8 x double> [ zeroinitializer, %1928 ], [ %2053, %2062 ]
  %1949 = phi <8 x double> [ zeroinitializer, %1928 ], [ %2052, %2062 ]
  %1950 = phi <8 x double> [ zeroinitializer, %1928 ], [ %2048, %2062 ]
  %1951 = phi <8 x double> [ %1919, %1928 ], [ %2051, %2062 ]
  %1952 = phi <8 x double> [ %1918, %1928 ], [ %2050, %2062 ]
  %1953 = phi <8 x double> [ %1927, %1928 ], [ %2049, %2062 ]
  %1954 = load <8 x double>, ptr %1929, align 64, !tbaa !26
  %1955 = load <8 x double>, ptr %1930, align 64, !tbaa !26
  %1956 = load <8 x double>, ptr %1931, align 64, !tbaa !26
  %1957 = icmp slt i64 %1937, %1808
  br i1 %1957, label %1958, label %1986

1958:                                             ; preds = %1936
  %1959 = add nuw nsw i64 %1937, 1
  %1960 = getelementptr inbounds nuw <8 x double>, ptr %1834, i64 %1959
  %1961 = load <8 x double>, ptr %1960, align 64, !tbaa !26
  %1962 = getelementptr inbounds nuw <8 x double>, ptr %1836, i64 %1959
  %1963 = load <8 x double>, ptr %1962, align 64, !tbaa !26
  %1964 = fsub <8 x double> %1961, %1963
  %1965 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1844, <8 x double> %1964, <8 x double> %1961)
  br i1 %1846, label %1970, label %1966

1966:                                             ; preds = %1958
  %1967 = getelementptr inbounds nuw <8 x double>, ptr %1832, i64 %1959
  %1968 = load <8 x double>, ptr %1967, align 64, !tbaa !26
  %1969 = select <8 x i1> %1932, <8 x double> %1965, <8 x double> %1968
  br label %1970

1970:                                             ; preds = %1958, %1966
  %1971 = phi <8 x double> [ %1969, %1966 ], [ %1965, %1958 ]
  %1972 = getelementptr inbounds nuw <8 x double>, ptr %1842, i64 %1959
  %1973 = load <8 x double>, ptr %1972, align 64, !tbaa !26, !noalias !108
  %1974 = fmul <8 x double> %1812, %1973
  %1975 = fadd <8 x double> %1945, %1971
  %1976 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1975, <8 x double> %1805, <8 x double> %1803)
  %1977 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1975, <8 x double> %1976, <8 x double> %1801)
  %1978 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1975, <8 x double> %1977, <8 x double> %1799)
  %1979 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1975, <8 x double> %1978, <8 x double> %1797)
  %1980 = fmul <8 x double> %1974, %1979
  %1981 = getelementptr inbounds nuw <8 x double>, ptr %1838, i64 %1959
  %1982 = load <8 x double>, ptr %1981, align 64, !tbaa !26, !noalias !108
  %1983 = fmul <8 x double> %1810, %1982
  %1984 = fsub <8 x double> %1980, %1983
  %1985 = fadd <8 x double> %1983, %1980
  br label %1986

1986:                                             ; preds = %1970, %1936
  %1987 = phi <8 x double> [ %1984, %1970 ], [ %1954, %1936 ]
  %1988 = phi <8 x double> [ %1971, %1970 ], [ %1945, %1936 ]
  %1989 = phi <8 x double> [ %1961, %1970 ], [ %1944, %1936 ]
  %1990 = phi <8 x double> [ %1963, %1970 ], [ %1943, %1936 ]
  %1991 = phi <8 x double> [ %1985, %1970 ], [ %1955, %1936 ]
  %1992 = phi <8 x double> [ zeroinitializer, %1970 ], [ %1956, %1936 ]
  %1993 = getelementptr inbounds nuw <8 x double>, ptr %1840, i64 %1937
  %1994 = load <8 x double>, ptr %1993, align 64, !tbaa !26
  %1995 = fmul <8 x double> %1830, %1943
  %1996 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1824, <8 x double> %1944, <8 x double> %1995)
  %1997 = fmul <8 x double> %1996, %1994
  %1998 = icmp eq i64 %1937, %1808
  br i1 %1998, label %1999, label %2002

1999:                                             ; preds = %1986
  %2000 = fsub <8 x double> %1940, %1992
  %2001 = fadd <8 x double> %2000, %1997
  br label %2002

2002:                                             ; preds = %1986, %1999
  %2003 = phi <8 x double> [ %2001, %1999 ], [ %1997, %1986 ]
  %2004 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1994, <8 x double> %1818, <8 x double> %1987)
  %2005 = fadd <8 x double> %1941, %2004
  %2006 = fneg <8 x double> %1942
  %2007 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2006, <8 x double> %1938, <8 x double> %2005)
  %2008 = fdiv <8 x double> splat (double 1.000000e+00), %2007
  %2009 = getelementptr inbounds nuw <8 x double>, ptr %1848, i64 %1937
  store <8 x double> %1942, ptr %2009, align 64, !tbaa !26
  %2010 = fneg <8 x double> %2003
  %2011 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1942, <8 x double> %1939, <8 x double> %2010)
  %2012 = fmul <8 x double> %2008, %2011
  %2013 = getelementptr inbounds nuw <8 x double>, ptr %1850, i64 %1937
  store <8 x double> %2012, ptr %2013, align 64, !tbaa !26
  %2014 = fmul <8 x double> %1991, %2008
  %2015 = getelementptr inbounds nuw <8 x double>, ptr %1852, i64 %1937
  store <8 x double> %2014, ptr %2015, align 64, !tbaa !26
  %2016 = load <8 x double>, ptr %1933, align 64, !tbaa !26
  %2017 = load <8 x double>, ptr %1934, align 64, !tbaa !26
  %2018 = load <8 x double>, ptr %1935, align 64, !tbaa !26
  br i1 %1957, label %2019, label %2047

2019:                                             ; preds = %2002
  %2020 = add nuw nsw i64 %1937, 1
  %2021 = getelementptr inbounds nuw <8 x double>, ptr %1901, i64 %2020
  %2022 = load <8 x double>, ptr %2021, align 64, !tbaa !26
  %2023 = getelementptr inbounds nuw <8 x double>, ptr %1903, i64 %2020
  %2024 = load <8 x double>, ptr %2023, align 64, !tbaa !26
  %2025 = fsub <8 x double> %2022, %2024
  %2026 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1911, <8 x double> %2025, <8 x double> %2022)
  br i1 %1846, label %2031, label %2027

2027:                                             ; preds = %2019
  %2028 = getelementptr inbounds nuw <8 x double>, ptr %1899, i64 %2020
  %2029 = load <8 x double>, ptr %2028, align 64, !tbaa !26
  %2030 = select <8 x i1> %1932, <8 x double> %2026, <8 x double> %2029
  br label %2031

2031:                                             ; preds = %2019, %2027
  %2032 = phi <8 x double> [ %2030, %2027 ], [ %2026, %2019 ]
  %2033 = getelementptr inbounds nuw <8 x double>, ptr %1909, i64 %2020
  %2034 = load <8 x double>, ptr %2033, align 64, !tbaa !26, !noalias !111
  %2035 = fmul <8 x double> %1879, %2034
  %2036 = fadd <8 x double> %1953, %2032
  %2037 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2036, <8 x double> %1873, <8 x double> %1871)
  %2038 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2036, <8 x double> %2037, <8 x double> %1869)
  %2039 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2036, <8 x double> %2038, <8 x double> %1867)
  %2040 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2036, <8 x double> %2039, <8 x double> %1865)
  %2041 = fmul <8 x double> %2035, %2040
  %2042 = getelementptr inbounds nuw <8 x double>, ptr %1905, i64 %2020
  %2043 = load <8 x double>, ptr %2042, align 64, !tbaa !26, !noalias !111
  %2044 = fmul <8 x double> %1877, %2043
  %2045 = fsub <8 x double> %2041, %2044
  %2046 = fadd <8 x double> %2044, %2041
  br label %2047

2047:                                             ; preds = %2031, %2002
  %2048 = phi <8 x double> [ %2045, %2031 ], [ %2016, %2002 ]
  %2049 = phi <8 x double> [ %2032, %2031 ], [ %1953, %2002 ]
  %2050 = phi <8 x double> [ %2022, %2031 ], [ %1952, %2002 ]
  %2051 = phi <8 x double> [ %2024, %2031 ], [ %1951, %2002 ]
  %2052 = phi <8 x double> [ %2046, %2031 ], [ %2017, %2002 ]
  %2053 = phi <8 x double> [ zeroinitializer, %2031 ], [ %2018, %2002 ]
  %2054 = getelementptr inbounds nuw <8 x double>, ptr %1907, i64 %1937
  %2055 = load <8 x double>, ptr %2054, align 64, !tbaa !26
  %2056 = fmul <8 x double> %1897, %1951
  %2057 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1891, <8 x double> %1952, <8 x double> %2056)
  %2058 = fmul <8 x double> %2057, %2055
  br i1 %1998, label %2059, label %2062

2059:                                             ; preds = %2047
  %2060 = fsub <8 x double> %1948, %2053
  %2061 = fadd <8 x double> %2060, %2058
  br label %2062

2062:                                             ; preds = %2047, %2059
  %2063 = phi <8 x double> [ %2061, %2059 ], [ %2058, %2047 ]
  %2064 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2055, <8 x double> %1885, <8 x double> %2048)
  %2065 = fadd <8 x double> %1949, %2064
  %2066 = fneg <8 x double> %1950
  %2067 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2066, <8 x double> %1946, <8 x double> %2065)
  %2068 = fdiv <8 x double> splat (double 1.000000e+00), %2067
  %2069 = getelementptr inbounds nuw <8 x double>, ptr %1913, i64 %1937
  store <8 x double> %1950, ptr %2069, align 64, !tbaa !26
  %2070 = fneg <8 x double> %2063
  %2071 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1950, <8 x double> %1947, <8 x double> %2070)
  %2072 = fmul <8 x double> %2068, %2071
  %2073 = getelementptr inbounds nuw <8 x double>, ptr %1915, i64 %1937
  store <8 x double> %2072, ptr %2073, align 64, !tbaa !26
  %2074 = fmul <8 x double> %2052, %2068
  %2075 = getelementptr inbounds nuw <8 x double>, ptr %1917, i64 %1937
  store <8 x double> %2074, ptr %2075, align 64, !tbaa !26
  %2076 = add nuw nsw i64 %1937, 1
  %2077 = icmp eq i64 %2076, %1503
  br i1 %2077, label %2227, label %1936, !llvm.loop !114

2078:                                             ; preds = %1786, %1789
  %2079 = phi <8 x i64> [ %1788, %1786 ], [ %1794, %1789 ]
  %2080 = phi i64 [ %1787, %1786 ], [ %1793, %1789 ]
  %2081 = getelementptr inbounds nuw i8, ptr %1513, i64 384
  %2082 = load <8 x double>, ptr %2081, align 64, !tbaa !26
  %2083 = getelementptr inbounds nuw i8, ptr %1513, i64 448
  %2084 = load <8 x double>, ptr %2083, align 64, !tbaa !26
  %2085 = getelementptr inbounds nuw i8, ptr %1513, i64 512
  %2086 = load <8 x double>, ptr %2085, align 64, !tbaa !26
  %2087 = getelementptr inbounds nuw i8, ptr %1513, i64 576
  %2088 = load <8 x double>, ptr %2087, align 64, !tbaa !26
  %2089 = getelementptr inbounds nuw i8, ptr %1513, i64 640
  %2090 = load <8 x double>, ptr %2089, align 64, !tbaa !26
  %2091 = getelementptr inbounds nuw i8, ptr %1513, i64 1920
  %2092 = load <8 x double>, ptr %2091, align 64, !tbaa !26
  %2093 = add nsw i64 %2080, -1
  %2094 = getelementptr inbounds nuw i8, ptr %1513, i64 8064
  %2095 = load <8 x double>, ptr %2094, align 64, !tbaa !26
  %2096 = getelementptr inbounds nuw i8, ptr %1513, i64 7872
  %2097 = load <8 x double>, ptr %2096, align 64, !tbaa !26
  %2098 = getelementptr inbounds nuw i8, ptr %1513, i64 6016
  %2099 = load <8 x double>, ptr %2098, align 64, !tbaa !26
  %2100 = getelementptr inbounds nuw i8, ptr %1513, i64 4160
  %2101 = load <8 x double>, ptr %2100, align 64, !tbaa !26
  %2102 = fsub <8 x double> %2101, %2092
  %2103 = fmul <8 x double> %2099, %2102
  %2104 = getelementptr inbounds nuw i8, ptr %1513, i64 6080
  %2105 = load <8 x double>, ptr %2104, align 64, !tbaa !26, !noalias !115
  %2106 = getelementptr inbounds nuw i8, ptr %1513, i64 5056
  %2107 = load <8 x double>, ptr %2106, align 64, !tbaa !26, !noalias !115
  %2108 = fsub <8 x double> %2107, %2092
  %2109 = fmul <8 x double> %2105, %2108
  %2110 = getelementptr inbounds nuw i8, ptr %1513, i64 6144
  %2111 = load <8 x double>, ptr %2110, align 64, !tbaa !26, !noalias !115
  %2112 = getelementptr inbounds nuw i8, ptr %1513, i64 5952
  %2113 = load <8 x double>, ptr %2112, align 64, !tbaa !26, !noalias !115
  %2114 = fsub <8 x double> %2113, %2092
  %2115 = fmul <8 x double> %2111, %2114
  %2116 = getelementptr inbounds nuw i8, ptr %1513, i64 9544
  %2117 = load ptr, ptr %2116, align 8, !tbaa !88
  %2118 = getelementptr inbounds nuw i8, ptr %1513, i64 9552
  %2119 = load ptr, ptr %2118, align 16, !tbaa !50
  %2120 = getelementptr inbounds nuw i8, ptr %1513, i64 9560
  %2121 = load ptr, ptr %2120, align 8, !tbaa !67
  %2122 = getelementptr inbounds nuw i8, ptr %1513, i64 9608
  %2123 = load ptr, ptr %2122, align 8, !tbaa !78
  %2124 = getelementptr inbounds nuw i8, ptr %1513, i64 9616
  %2125 = load ptr, ptr %2124, align 16, !tbaa !51
  %2126 = getelementptr inbounds nuw i8, ptr %1513, i64 9632
  %2127 = load ptr, ptr %2126, align 32, !tbaa !37
  %2128 = getelementptr inbounds nuw i8, ptr %1513, i64 6272
  %2129 = load <8 x double>, ptr %2128, align 64, !tbaa !26
  %2130 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2079)
  %2131 = icmp eq i64 %2130, 0
  %2132 = getelementptr inbounds nuw i8, ptr %1513, i64 9600
  %2133 = load ptr, ptr %2132, align 64, !tbaa !89
  %2134 = getelementptr inbounds nuw i8, ptr %1513, i64 9584
  %2135 = load ptr, ptr %2134, align 16, !tbaa !90
  %2136 = getelementptr inbounds nuw i8, ptr %1513, i64 9592
  %2137 = load ptr, ptr %2136, align 8, !tbaa !91
  %2138 = load <8 x double>, ptr %2119, align 64, !tbaa !26
  %2139 = load <8 x double>, ptr %2121, align 64, !tbaa !26
  %2140 = fsub <8 x double> %2138, %2139
  %2141 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2129, <8 x double> %2140, <8 x double> %2138)
  br i1 %2131, label %2146, label %2142

2142:                                             ; preds = %2078
  %2143 = load <8 x double>, ptr %2117, align 64, !tbaa !26
  %2144 = icmp eq <8 x i64> %2079, zeroinitializer
  %2145 = select <8 x i1> %2144, <8 x double> %2141, <8 x double> %2143
  br label %2146

2146:                                             ; preds = %2078, %2142
  %2147 = phi <8 x double> [ %2145, %2142 ], [ %2141, %2078 ]
  br i1 %1506, label %2148, label %2227

2148:                                             ; preds = %2146
  %2149 = getelementptr inbounds nuw i8, ptr %1513, i64 7168
  %2150 = getelementptr inbounds nuw i8, ptr %1513, i64 7232
  %2151 = getelementptr inbounds nuw i8, ptr %1513, i64 7296
  %2152 = icmp eq <8 x i64> %2079, zeroinitializer
  br label %2153

2153:                                             ; preds = %2148, %2211
  %2154 = phi i64 [ 0, %2148 ], [ %2225, %2211 ]
  %2155 = phi <8 x double> [ zeroinitializer, %2148 ], [ %2223, %2211 ]
  %2156 = phi <8 x double> [ zeroinitializer, %2148 ], [ %2221, %2211 ]
  %2157 = phi <8 x double> [ zeroinitializer, %2148 ], [ %2201, %2211 ]
  %2158 = phi <8 x double> [ zeroinitializer, %2148 ], [ %2200, %2211 ]
  %2159 = phi <8 x double> [ zeroinitializer, %2148 ], [ %2196, %2211 ]
  %2160 = phi <8 x double> [ %2139, %2148 ], [ %2199, %2211 ]
  %2161 = phi <8 x double> [ %2138, %2148 ], [ %2198, %2211 ]
  %2162 = phi <8 x double> [ %2147, %2148 ], [ %2197, %2211 ]
  %2163 = load <8 x double>, ptr %2149, align 64, !tbaa !26
  %2164 = load <8 x double>, ptr %2150, align 64, !tbaa !26
  %2165 = load <8 x double>, ptr %2151, align 64, !tbaa !26
  %2166 = icmp slt i64 %2154, %2093
  br i1 %2166, label %2167, label %2195

2167:                                             ; preds = %2153
  %2168 = add nuw nsw i64 %2154, 1
  %2169 = getelementptr inbounds nuw <8 x double>, ptr %2119, i64 %2168
  %2170 = load <8 x double>, ptr %2169, align 64, !tbaa !26
  %2171 = getelementptr inbounds nuw <8 x double>, ptr %2121, i64 %2168
  %2172 = load <8 x double>, ptr %2171, align 64, !tbaa !26
  %2173 = fsub <8 x double> %2170, %2172
  %2174 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2129, <8 x double> %2173, <8 x double> %2170)
  br i1 %2131, label %2179, label %2175

2175:                                             ; preds = %2167
  %2176 = getelementptr inbounds nuw <8 x double>, ptr %2117, i64 %2168
  %2177 = load <8 x double>, ptr %2176, align 64, !tbaa !26
  %2178 = select <8 x i1> %2152, <8 x double> %2174, <8 x double> %2177
  br label %2179

2179:                                             ; preds = %2167, %2175
  %2180 = phi <8 x double> [ %2178, %2175 ], [ %2174, %2167 ]
  %2181 = getelementptr inbounds nuw <8 x double>, ptr %2127, i64 %2168
  %2182 = load <8 x double>, ptr %2181, align 64, !tbaa !26, !noalias !118
  %2183 = fmul <8 x double> %2097, %2182
  %2184 = fadd <8 x double> %2162, %2180
  %2185 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2184, <8 x double> %2090, <8 x double> %2088)
  %2186 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2184, <8 x double> %2185, <8 x double> %2086)
  %2187 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2184, <8 x double> %2186, <8 x double> %2084)
  %2188 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2184, <8 x double> %2187, <8 x double> %2082)
  %2189 = fmul <8 x double> %2183, %2188
  %2190 = getelementptr inbounds nuw <8 x double>, ptr %2123, i64 %2168
  %2191 = load <8 x double>, ptr %2190, align 64, !tbaa !26, !noalias !118
  %2192 = fmul <8 x double> %2095, %2191
  %2193 = fsub <8 x double> %2189, %2192
  %2194 = fadd <8 x double> %2192, %2189
  br label %2195

2195:                                             ; preds = %2179, %2153
  %2196 = phi <8 x double> [ %2193, %2179 ], [ %2163, %2153 ]
  %2197 = phi <8 x double> [ %2180, %2179 ], [ %2162, %2153 ]
  %2198 = phi <8 x double> [ %2170, %2179 ], [ %2161, %2153 ]
  %2199 = phi <8 x double> [ %2172, %2179 ], [ %2160, %2153 ]
  %2200 = phi <8 x double> [ %2194, %2179 ], [ %2164, %2153 ]
  %2201 = phi <8 x double> [ zeroinitializer, %2179 ], [ %2165, %2153 ]
  %2202 = getelementptr inbounds nuw <8 x double>, ptr %2125, i64 %2154
  %2203 = load <8 x double>, ptr %2202, align 64, !tbaa !26
  %2204 = fmul <8 x double> %2115, %2160
  %2205 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2109, <8 x double> %2161, <8 x double> %2204)
  %2206 = fmul <8 x double> %2205, %2203
  %2207 = icmp eq i64 %2154, %2093
  br i1 %2207, label %2208, label %2211

2208:                                             ; preds = %2195
  %2209 = fsub <8 x double> %2157, %2201
  %2210 = fadd <8 x double> %2209, %2206
  br label %2211

2211:                                             ; preds = %2195, %2208
  %2212 = phi <8 x double> [ %2210, %2208 ], [ %2206, %2195 ]
  %2213 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2203, <8 x double> %2103, <8 x double> %2196)
  %2214 = fadd <8 x double> %2158, %2213
  %2215 = fneg <8 x double> %2159
  %2216 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2215, <8 x double> %2155, <8 x double> %2214)
  %2217 = fdiv <8 x double> splat (double 1.000000e+00), %2216
  %2218 = getelementptr inbounds nuw <8 x double>, ptr %2133, i64 %2154
  store <8 x double> %2159, ptr %2218, align 64, !tbaa !26
  %2219 = fneg <8 x double> %2212
  %2220 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2159, <8 x double> %2156, <8 x double> %2219)
  %2221 = fmul <8 x double> %2217, %2220
  %2222 = getelementptr inbounds nuw <8 x double>, ptr %2135, i64 %2154
  store <8 x double> %2221, ptr %2222, align 64, !tbaa !26
  %2223 = fmul <8 x double> %2200, %2217
  %2224 = getelementptr inbounds nuw <8 x double>, ptr %2137, i64 %2154
  store <8 x double> %2223, ptr %2224, align 64, !tbaa !26
  %2225 = add nuw nsw i64 %2154, 1
  %2226 = icmp eq i64 %2225, %1503
  br i1 %2226, label %2227, label %2153, !llvm.loop !121

2227:                                             ; preds = %1748, %2211, %2062, %1588, %2146, %1926
  %2228 = phi i64 [ %1784, %1926 ], [ %1511, %2146 ], [ %1511, %1588 ], [ %1784, %2062 ], [ %1511, %2211 ], [ %1511, %1748 ]
  %2229 = add nsw i64 %2228, 1
  %2230 = load i64, ptr %175, align 8, !tbaa !20
  %2231 = icmp slt i64 %2229, %2230
  br i1 %2231, label %1509, label %1507, !llvm.loop !122

2232:                                             ; preds = %1493, %2540
  %2233 = phi i64 [ %2676, %2540 ], [ 0, %1493 ]
  %2234 = load ptr, ptr %148, align 8, !tbaa !28
  %2235 = getelementptr inbounds nuw %struct.Piece, ptr %2234, i64 %2233
  %2236 = load <8 x i64>, ptr %193, align 64, !tbaa !26
  %2237 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2236)
  %2238 = icmp eq i64 %2237, 0
  br i1 %2238, label %2239, label %2266

2239:                                             ; preds = %2232
  %2240 = getelementptr inbounds nuw i8, ptr %2235, i64 9408
  %2241 = load <8 x i64>, ptr %2240, align 64, !tbaa !26
  %2242 = getelementptr inbounds nuw i8, ptr %2235, i64 3456
  %2243 = load <8 x double>, ptr %2242, align 64, !tbaa !26
  %2244 = getelementptr inbounds nuw i8, ptr %2235, i64 8640
  %2245 = load <8 x double>, ptr %2244, align 64, !tbaa !26
  %2246 = getelementptr inbounds nuw i8, ptr %2235, i64 6080
  %2247 = load <8 x double>, ptr %2246, align 64, !tbaa !26
  %2248 = getelementptr inbounds nuw i8, ptr %2235, i64 6144
  %2249 = load <8 x double>, ptr %2248, align 64, !tbaa !26
  %2250 = getelementptr inbounds nuw i8, ptr %2235, i64 9280
  %2251 = load <8 x i64>, ptr %2250, align 64, !tbaa !26
  %2252 = getelementptr inbounds nuw i8, ptr %2235, i64 2368
  %2253 = load <8 x double>, ptr %2252, align 64, !tbaa !26
  %2254 = load <8 x double>, ptr %2235, align 64, !tbaa !26
  %2255 = getelementptr inbounds nuw i8, ptr %2235, i64 3328
  %2256 = load <8 x double>, ptr %2255, align 64, !tbaa !26
  %2257 = getelementptr inbounds nuw i8, ptr %2235, i64 8704
  %2258 = load <8 x double>, ptr %2257, align 64, !tbaa !26
  %2259 = getelementptr inbounds nuw i8, ptr %2235, i64 6016
  %2260 = load <8 x double>, ptr %2259, align 64, !tbaa !26
  %2261 = getelementptr inbounds nuw i8, ptr %2235, i64 6464
  %2262 = load <8 x double>, ptr %2261, align 64, !tbaa !26
  %2263 = fmul <8 x double> %2243, %2245
  %2264 = fsub <8 x double> %2254, %2256
  %2265 = fmul <8 x double> %2264, %2258
  br label %2422

2266:                                             ; preds = %2232
  %2267 = getelementptr inbounds nuw i8, ptr %2235, i64 3584
  %2268 = getelementptr inbounds nuw i8, ptr %2235, i64 3456
  %2269 = load <8 x double>, ptr %2268, align 64, !tbaa !26, !noalias !123
  %2270 = getelementptr inbounds nuw i8, ptr %2235, i64 8640
  %2271 = load <8 x double>, ptr %2270, align 64, !tbaa !26, !noalias !123
  %2272 = fmul <8 x double> %2269, %2271
  %2273 = fcmp ogt <8 x double> %2272, zeroinitializer
  %2274 = select <8 x i1> %2273, <8 x double> %2272, <8 x double> zeroinitializer
  %2275 = fcmp uge <8 x double> %2274, splat (double 1.000000e+00)
  %2276 = select <8 x i1> %2275, <8 x double> splat (double 1.000000e+00), <8 x double> %2274
  %2277 = getelementptr inbounds nuw i8, ptr %2235, i64 9408
  %2278 = load <8 x i64>, ptr %2277, align 64, !tbaa !26, !noalias !123
  %2279 = load <8 x double>, ptr %186, align 64, !tbaa !26, !noalias !123
  %2280 = load <8 x double>, ptr %2267, align 64, !tbaa !26, !noalias !123
  %2281 = icmp eq <8 x i64> %2278, zeroinitializer
  %2282 = select <8 x i1> %2281, <8 x double> %2280, <8 x double> %2279
  %2283 = getelementptr inbounds nuw i8, ptr %2235, i64 3968
  %2284 = load <8 x double>, ptr %2283, align 64, !tbaa !26, !noalias !123
  %2285 = fsub <8 x double> splat (double 1.000000e+00), %2276
  %2286 = getelementptr inbounds nuw i8, ptr %2235, i64 2368
  %2287 = load <8 x double>, ptr %2286, align 64, !tbaa !26, !noalias !123
  %2288 = getelementptr inbounds nuw i8, ptr %2235, i64 9280
  %2289 = load <8 x i64>, ptr %2288, align 64, !tbaa !26, !noalias !123
  %2290 = load <8 x double>, ptr %2235, align 64, !tbaa !26, !noalias !123
  %2291 = getelementptr inbounds nuw i8, ptr %2235, i64 3328
  %2292 = load <8 x double>, ptr %2291, align 64, !tbaa !26, !noalias !123
  %2293 = fsub <8 x double> %2290, %2292
  %2294 = getelementptr inbounds nuw i8, ptr %2235, i64 8704
  %2295 = load <8 x double>, ptr %2294, align 64, !tbaa !26, !noalias !123
  %2296 = fmul <8 x double> %2293, %2295
  %2297 = icmp eq <8 x i64> %2289, zeroinitializer
  %2298 = select <8 x i1> %2297, <8 x double> zeroinitializer, <8 x double> %2296
  %2299 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2285, <8 x double> %2287, <8 x double> %2298)
  %2300 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2284, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2301 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2284, <8 x double> %2300, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2302 = fdiv <8 x double> splat (double 1.000000e+00), %2301
  %2303 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2282, <8 x double> %2299, <8 x double> splat (double 1.000000e+00))
  %2304 = fdiv <8 x double> splat (double 1.000000e+00), %2303
  %2305 = load <8 x double>, ptr %187, align 64, !tbaa !26, !noalias !123
  %2306 = load <8 x double>, ptr %184, align 64, !tbaa !26, !noalias !123
  %2307 = select <8 x i1> %2281, <8 x double> %2306, <8 x double> %2305
  %2308 = fsub <8 x double> %2307, %2284
  %2309 = fmul <8 x double> %2308, %2304
  %2310 = fmul <8 x double> %2282, %2309
  %2311 = getelementptr inbounds nuw i8, ptr %2235, i64 6016
  %2312 = load <8 x double>, ptr %2311, align 64, !tbaa !26, !noalias !123
  %2313 = getelementptr inbounds nuw i8, ptr %2235, i64 3648
  %2314 = load <8 x double>, ptr %2313, align 64, !tbaa !26, !noalias !123
  %2315 = getelementptr inbounds nuw i8, ptr %2235, i64 6080
  %2316 = load <8 x double>, ptr %2315, align 64, !tbaa !26, !noalias !123
  %2317 = getelementptr inbounds nuw i8, ptr %2235, i64 4544
  %2318 = load <8 x double>, ptr %2317, align 64, !tbaa !26, !noalias !123
  %2319 = fmul <8 x double> %2316, %2318
  %2320 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2312, <8 x double> %2314, <8 x double> %2319)
  %2321 = getelementptr inbounds nuw i8, ptr %2235, i64 6144
  %2322 = load <8 x double>, ptr %2321, align 64, !tbaa !26, !noalias !123
  %2323 = getelementptr inbounds nuw i8, ptr %2235, i64 5440
  %2324 = load <8 x double>, ptr %2323, align 64, !tbaa !26, !noalias !123
  %2325 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2322, <8 x double> %2324, <8 x double> %2320)
  %2326 = getelementptr inbounds nuw i8, ptr %2235, i64 8768
  %2327 = load <8 x double>, ptr %2326, align 64, !tbaa !26, !noalias !123
  %2328 = fmul <8 x double> %2295, %2327
  %2329 = fcmp ule <8 x double> %2276, zeroinitializer
  %2330 = or <8 x i1> %2275, %2329
  %2331 = fmul <8 x double> %2271, %2287
  %2332 = select <8 x i1> %2330, <8 x double> zeroinitializer, <8 x double> %2331
  %2333 = select <8 x i1> %2297, <8 x double> %2332, <8 x double> %2328
  %2334 = fmul <8 x double> %2282, %2310
  %2335 = fmul <8 x double> %2304, %2334
  %2336 = fmul <8 x double> %2302, %2335
  %2337 = fmul <8 x double> %2336, %2333
  %2338 = getelementptr inbounds nuw i8, ptr %2235, i64 6208
  %2339 = load <8 x double>, ptr %2338, align 64, !tbaa !26, !noalias !123
  %2340 = fmul <8 x double> %2339, %2337
  %2341 = fadd <8 x double> %2340, splat (double 1.000000e+00)
  %2342 = fdiv <8 x double> splat (double 1.000000e+00), %2341
  %2343 = getelementptr inbounds nuw i8, ptr %2235, i64 3840
  %2344 = load <8 x double>, ptr %2343, align 64, !tbaa !26, !noalias !123
  %2345 = fsub <8 x double> %2310, %2344
  %2346 = getelementptr inbounds nuw i8, ptr %2235, i64 6528
  %2347 = load <8 x double>, ptr %2346, align 64, !tbaa !26, !noalias !123
  %2348 = fsub <8 x double> %2325, %2347
  %2349 = fmul <8 x double> %2340, %2348
  %2350 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2345, <8 x double> %2302, <8 x double> %2349)
  %2351 = fmul <8 x double> %2350, %2342
  %2352 = getelementptr inbounds nuw i8, ptr %2235, i64 6464
  %2353 = load <8 x double>, ptr %2352, align 64, !tbaa !26, !noalias !123
  %2354 = fcmp ule <8 x double> %2353, zeroinitializer
  %2355 = fcmp ule <8 x double> %2351, zeroinitializer
  %2356 = or <8 x i1> %2354, %2355
  %2357 = select <8 x i1> %2356, <8 x double> zeroinitializer, <8 x double> %2351
  %2358 = getelementptr inbounds nuw i8, ptr %2235, i64 2560
  %2359 = load <8 x double>, ptr %2358, align 64, !tbaa !26, !noalias !123
  %2360 = fcmp ogt <8 x double> %2359, zeroinitializer
  %2361 = getelementptr inbounds nuw i8, ptr %2235, i64 1408
  %2362 = load <8 x double>, ptr %2361, align 64, !tbaa !26, !noalias !123
  %2363 = bitcast <8 x i1> %2360 to i8
  %2364 = icmp eq i8 %2363, 0
  br i1 %2364, label %2377, label %2365

2365:                                             ; preds = %2266
  %2366 = getelementptr inbounds nuw i8, ptr %2235, i64 4032
  %2367 = load <8 x double>, ptr %2366, align 64, !tbaa !26, !noalias !123
  %2368 = fadd <8 x double> %2309, %2367
  %2369 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2368)
  %2370 = fcmp ogt <8 x double> %2359, splat (double 1.000000e-09)
  %2371 = select <8 x i1> %2370, <8 x double> %2359, <8 x double> splat (double 1.000000e-09)
  %2372 = fdiv <8 x double> %2369, %2371
  %2373 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2372)
  %2374 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2373)
  %2375 = select <8 x i1> %2360, <8 x double> %2374, <8 x double> splat (double 1.000000e+00)
  %2376 = fmul <8 x double> %2362, %2375
  br label %2377

2377:                                             ; preds = %2365, %2266
  %2378 = phi <8 x double> [ %2376, %2365 ], [ %2362, %2266 ]
  %2379 = getelementptr inbounds nuw i8, ptr %2235, i64 4480
  %2380 = load <8 x double>, ptr %2379, align 64, !tbaa !26, !noalias !123
  %2381 = getelementptr inbounds nuw i8, ptr %2235, i64 5376
  %2382 = load <8 x double>, ptr %2381, align 64, !tbaa !26, !noalias !123
  %2383 = fmul <8 x double> %2322, %2382
  %2384 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2316, <8 x double> %2380, <8 x double> %2383)
  %2385 = getelementptr inbounds nuw i8, ptr %2235, i64 1600
  %2386 = load <8 x double>, ptr %2385, align 64, !tbaa !26, !noalias !123
  %2387 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2386, <8 x double> %2312, <8 x double> splat (double 1.000000e+00))
  %2388 = fdiv <8 x double> splat (double 1.000000e+00), %2387
  %2389 = fmul <8 x double> %2304, %2309
  %2390 = fmul <8 x double> %2302, %2389
  %2391 = fmul <8 x double> %2390, %2342
  %2392 = select <8 x i1> %2356, <8 x double> zeroinitializer, <8 x double> %2391
  %2393 = getelementptr inbounds nuw i8, ptr %2235, i64 1472
  %2394 = load <8 x double>, ptr %2393, align 64, !tbaa !26, !noalias !123
  %2395 = fmul <8 x double> %2378, splat (double 2.500000e-01)
  %2396 = fmul <8 x double> %2299, %2395
  %2397 = fneg <8 x double> %2304
  %2398 = fmul <8 x double> %2396, %2397
  %2399 = select <8 x i1> %2360, <8 x double> %2398, <8 x double> splat (double -0.000000e+00)
  %2400 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2394, <8 x double> %2392, <8 x double> %2399)
  %2401 = fadd <8 x double> %2347, %2357
  %2402 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2394, <8 x double> %2401, <8 x double> %2378)
  %2403 = fneg <8 x double> %2386
  %2404 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2403, <8 x double> %2384, <8 x double> %2402)
  %2405 = fneg <8 x double> %2282
  %2406 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2388, <8 x double> %2404, <8 x double> %2405)
  %2407 = fmul <8 x double> %2388, %2400
  %2408 = fcmp olt <8 x double> %2407, splat (double 8.000000e-01)
  %2409 = select <8 x i1> %2408, <8 x double> %2407, <8 x double> splat (double 8.000000e-01)
  %2410 = fsub <8 x double> splat (double 1.000000e+00), %2409
  %2411 = fdiv <8 x double> %2406, %2410
  %2412 = fadd <8 x double> %2282, %2411
  %2413 = getelementptr inbounds nuw i8, ptr %2235, i64 1536
  %2414 = load <8 x double>, ptr %2413, align 64, !tbaa !26, !noalias !123
  %2415 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2403, <8 x double> %2384, <8 x double> %2414)
  %2416 = fmul <8 x double> %2388, %2415
  %2417 = fcmp olt <8 x double> %2412, %2416
  %2418 = select <8 x i1> %2417, <8 x double> %2412, <8 x double> %2416
  %2419 = select <8 x i1> %2281, <8 x double> %2418, <8 x double> %2279
  %2420 = icmp eq <8 x i64> %2236, zeroinitializer
  %2421 = select <8 x i1> %2420, <8 x double> %2280, <8 x double> %2419
  store <8 x double> %2421, ptr %2267, align 64, !tbaa !26
  br label %2422

2422:                                             ; preds = %2239, %2377
  %2423 = phi <8 x double> [ %2265, %2239 ], [ %2296, %2377 ]
  %2424 = phi <8 x double> [ %2264, %2239 ], [ %2293, %2377 ]
  %2425 = phi <8 x double> [ %2263, %2239 ], [ %2272, %2377 ]
  %2426 = phi <8 x double> [ %2262, %2239 ], [ %2353, %2377 ]
  %2427 = phi <8 x double> [ %2260, %2239 ], [ %2312, %2377 ]
  %2428 = phi <8 x double> [ %2256, %2239 ], [ %2292, %2377 ]
  %2429 = phi <8 x double> [ %2253, %2239 ], [ %2287, %2377 ]
  %2430 = phi <8 x i64> [ %2251, %2239 ], [ %2289, %2377 ]
  %2431 = phi <8 x double> [ %2249, %2239 ], [ %2322, %2377 ]
  %2432 = phi <8 x double> [ %2247, %2239 ], [ %2316, %2377 ]
  %2433 = phi <8 x i64> [ %2241, %2239 ], [ %2278, %2377 ]
  %2434 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %2435 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2436 = icmp eq <8 x i64> %2433, zeroinitializer
  %2437 = select <8 x i1> %2436, <8 x double> %2435, <8 x double> %2434
  %2438 = getelementptr inbounds nuw i8, ptr %2235, i64 6336
  store <8 x double> %2437, ptr %2438, align 64, !tbaa !26
  %2439 = fcmp ogt <8 x double> %2425, zeroinitializer
  %2440 = select <8 x i1> %2439, <8 x double> %2425, <8 x double> zeroinitializer
  %2441 = fcmp olt <8 x double> %2440, splat (double 1.000000e+00)
  %2442 = select <8 x i1> %2441, <8 x double> %2440, <8 x double> splat (double 1.000000e+00)
  %2443 = getelementptr inbounds nuw i8, ptr %2235, i64 2496
  %2444 = load <8 x double>, ptr %2443, align 64, !tbaa !26
  %2445 = fmul <8 x double> %2442, splat (double 4.180000e+03)
  %2446 = getelementptr inbounds nuw i8, ptr %2235, i64 1280
  %2447 = load <8 x double>, ptr %2446, align 64, !tbaa !26
  %2448 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2445, <8 x double> %2447, <8 x double> %2444)
  %2449 = getelementptr inbounds nuw i8, ptr %2235, i64 4864
  %2450 = load <8 x double>, ptr %2449, align 64, !tbaa !26
  %2451 = getelementptr inbounds nuw i8, ptr %2235, i64 5760
  %2452 = load <8 x double>, ptr %2451, align 64, !tbaa !26
  %2453 = fmul <8 x double> %2431, %2452
  %2454 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2432, <8 x double> %2450, <8 x double> %2453)
  %2455 = fcmp ule <8 x double> %2444, zeroinitializer
  %2456 = getelementptr inbounds nuw i8, ptr %2235, i64 8256
  store <8 x double> %2442, ptr %2456, align 64, !tbaa !26
  %2457 = fsub <8 x double> splat (double 1.000000e+00), %2442
  %2458 = icmp eq <8 x i64> %2430, zeroinitializer
  %2459 = select <8 x i1> %2458, <8 x double> zeroinitializer, <8 x double> %2423
  %2460 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2457, <8 x double> %2429, <8 x double> %2459)
  %2461 = getelementptr inbounds nuw i8, ptr %2235, i64 9216
  store <8 x double> %2460, ptr %2461, align 64, !tbaa !26
  %2462 = fmul <8 x double> %2448, %2427
  %2463 = icmp eq <8 x i64> %2430, splat (i64 -1)
  %2464 = select <8 x i1> %2455, <8 x i1> splat (i1 true), <8 x i1> %2463
  %2465 = select <8 x i1> %2464, <8 x double> zeroinitializer, <8 x double> %2462
  %2466 = getelementptr inbounds nuw i8, ptr %2235, i64 8320
  store <8 x double> %2465, ptr %2466, align 64, !tbaa !26
  %2467 = fmul <8 x double> %2448, %2454
  %2468 = select <8 x i1> %2464, <8 x double> zeroinitializer, <8 x double> %2467
  %2469 = getelementptr inbounds nuw i8, ptr %2235, i64 8384
  store <8 x double> %2468, ptr %2469, align 64, !tbaa !26
  %2470 = getelementptr inbounds nuw i8, ptr %2235, i64 8128
  store <8 x double> %2426, ptr %2470, align 64, !tbaa !26
  %2471 = getelementptr inbounds nuw i8, ptr %2235, i64 2944
  %2472 = load <8 x double>, ptr %2471, align 64, !tbaa !26
  %2473 = getelementptr inbounds nuw i8, ptr %2235, i64 3008
  %2474 = load <8 x double>, ptr %2473, align 64, !tbaa !26
  %2475 = getelementptr inbounds nuw i8, ptr %2235, i64 3072
  %2476 = load <8 x double>, ptr %2475, align 64, !tbaa !26
  %2477 = getelementptr inbounds nuw i8, ptr %2235, i64 3136
  %2478 = load <8 x double>, ptr %2477, align 64, !tbaa !26
  %2479 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2428, <8 x double> %2478, <8 x double> %2476)
  %2480 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2428, <8 x double> %2479, <8 x double> %2474)
  %2481 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2428, <8 x double> %2480, <8 x double> %2472)
  %2482 = getelementptr inbounds nuw i8, ptr %2235, i64 4160
  store <8 x double> %2481, ptr %2482, align 64, !tbaa !26
  %2483 = getelementptr inbounds nuw i8, ptr %2235, i64 5056
  %2484 = load <8 x double>, ptr %2483, align 64, !tbaa !26
  %2485 = fmul <8 x double> %2432, %2484
  %2486 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2427, <8 x double> %2481, <8 x double> %2485)
  %2487 = getelementptr inbounds nuw i8, ptr %2235, i64 5952
  %2488 = load <8 x double>, ptr %2487, align 64, !tbaa !26
  %2489 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2431, <8 x double> %2488, <8 x double> %2486)
  %2490 = fmul <8 x double> %2489, splat (double 5.000000e-01)
  %2491 = getelementptr inbounds nuw i8, ptr %2235, i64 8064
  store <8 x double> %2490, ptr %2491, align 64, !tbaa !26
  %2492 = getelementptr inbounds nuw i8, ptr %2235, i64 2688
  %2493 = load <8 x double>, ptr %2492, align 64, !tbaa !26
  %2494 = getelementptr inbounds nuw i8, ptr %2235, i64 2752
  %2495 = load <8 x double>, ptr %2494, align 64, !tbaa !26
  %2496 = getelementptr inbounds nuw i8, ptr %2235, i64 2816
  %2497 = load <8 x double>, ptr %2496, align 64, !tbaa !26
  %2498 = getelementptr inbounds nuw i8, ptr %2235, i64 2880
  %2499 = load <8 x double>, ptr %2498, align 64, !tbaa !26
  %2500 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2428, <8 x double> %2499, <8 x double> %2497)
  %2501 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2428, <8 x double> %2500, <8 x double> %2495)
  %2502 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2428, <8 x double> %2501, <8 x double> %2493)
  %2503 = getelementptr inbounds nuw i8, ptr %2235, i64 8000
  store <8 x double> %2502, ptr %2503, align 64, !tbaa !26
  %2504 = getelementptr inbounds nuw i8, ptr %2235, i64 9472
  %2505 = load i64, ptr %2504, align 64, !tbaa !31
  %2506 = icmp eq i64 %2505, 0
  br i1 %2506, label %2507, label %2516

2507:                                             ; preds = %2422
  %2508 = fdiv <8 x double> %2502, %2428
  %2509 = getelementptr inbounds nuw i8, ptr %2235, i64 7872
  store <8 x double> %2508, ptr %2509, align 64, !tbaa !26
  %2510 = load i64, ptr %137, align 16, !tbaa !21
  %2511 = getelementptr inbounds nuw i8, ptr %2235, i64 9632
  %2512 = load ptr, ptr %2511, align 32, !tbaa !37
  %2513 = getelementptr inbounds <8 x double>, ptr %2512, i64 %2510
  %2514 = load <8 x double>, ptr %2513, align 64, !tbaa !26
  %2515 = fmul <8 x double> %2508, %2514
  br label %2540

2516:                                             ; preds = %2422
  %2517 = getelementptr inbounds nuw i8, ptr %2235, i64 64
  %2518 = load <8 x double>, ptr %2517, align 64, !tbaa !26
  %2519 = fsub <8 x double> %2428, %2518
  %2520 = fdiv <8 x double> splat (double 1.000000e+00), %2519
  %2521 = getelementptr inbounds nuw i8, ptr %2235, i64 7872
  store <8 x double> %2520, ptr %2521, align 64, !tbaa !26
  %2522 = load i64, ptr %137, align 16, !tbaa !21
  %2523 = getelementptr inbounds nuw i8, ptr %2235, i64 9632
  %2524 = load ptr, ptr %2523, align 32, !tbaa !37
  %2525 = shl nsw i64 %2522, 8
  %2526 = getelementptr inbounds i8, ptr %2524, i64 %2525
  %2527 = load <8 x double>, ptr %2526, align 64, !tbaa !26
  %2528 = getelementptr inbounds nuw i8, ptr %2526, i64 64
  %2529 = load <8 x double>, ptr %2528, align 64, !tbaa !26
  %2530 = getelementptr inbounds nuw i8, ptr %2526, i64 128
  %2531 = load <8 x double>, ptr %2530, align 64, !tbaa !26
  %2532 = getelementptr inbounds nuw i8, ptr %2526, i64 192
  %2533 = load <8 x double>, ptr %2532, align 64, !tbaa !26
  %2534 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2428, <8 x double> %2533, <8 x double> %2531)
  %2535 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2428, <8 x double> %2534, <8 x double> %2529)
  %2536 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2428, <8 x double> %2535, <8 x double> %2527)
  %2537 = icmp sgt i64 %2522, %2505
  %2538 = fmul <8 x double> %2520, %2536
  %2539 = select i1 %2537, <8 x double> %2538, <8 x double> %2536
  br label %2540

2540:                                             ; preds = %2507, %2516
  %2541 = phi <8 x double> [ %2515, %2507 ], [ %2539, %2516 ]
  %2542 = getelementptr inbounds nuw i8, ptr %2235, i64 3584
  %2543 = load <8 x double>, ptr %2542, align 64, !tbaa !26
  %2544 = getelementptr inbounds nuw i8, ptr %2235, i64 6400
  %2545 = load <8 x double>, ptr %2544, align 64, !tbaa !26
  %2546 = fcmp ogt <8 x double> %2424, splat (double 0x3D719799812DEA11)
  %2547 = select <8 x i1> %2546, <8 x double> %2424, <8 x double> splat (double 0x3D719799812DEA11)
  %2548 = getelementptr inbounds nuw i8, ptr %2235, i64 1088
  %2549 = load <8 x double>, ptr %2548, align 64, !tbaa !26
  %2550 = fdiv <8 x double> %2549, %2547
  %2551 = getelementptr inbounds nuw i8, ptr %2235, i64 7936
  store <8 x double> %2550, ptr %2551, align 64, !tbaa !26
  %2552 = load i64, ptr %137, align 16, !tbaa !21
  %2553 = add nsw i64 %2552, -1
  %2554 = load <8 x i64>, ptr %193, align 64, !tbaa !26
  %2555 = getelementptr inbounds nuw i8, ptr %2235, i64 9544
  %2556 = load ptr, ptr %2555, align 8, !tbaa !88
  %2557 = getelementptr inbounds <8 x double>, ptr %2556, i64 %2553
  %2558 = load <8 x double>, ptr %2557, align 64, !tbaa !26
  %2559 = getelementptr inbounds nuw i8, ptr %2235, i64 9552
  %2560 = load ptr, ptr %2559, align 16, !tbaa !50
  %2561 = getelementptr inbounds <8 x double>, ptr %2560, i64 %2553
  %2562 = load <8 x double>, ptr %2561, align 64, !tbaa !26
  %2563 = getelementptr inbounds nuw i8, ptr %2235, i64 6272
  %2564 = load <8 x double>, ptr %2563, align 64, !tbaa !26
  %2565 = getelementptr inbounds nuw i8, ptr %2235, i64 9560
  %2566 = load ptr, ptr %2565, align 8, !tbaa !67
  %2567 = getelementptr inbounds <8 x double>, ptr %2566, i64 %2553
  %2568 = load <8 x double>, ptr %2567, align 64, !tbaa !26
  %2569 = fsub <8 x double> %2562, %2568
  %2570 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2564, <8 x double> %2569, <8 x double> %2562)
  %2571 = icmp eq <8 x i64> %2554, zeroinitializer
  %2572 = select <8 x i1> %2571, <8 x double> %2570, <8 x double> %2558
  %2573 = getelementptr inbounds nuw i8, ptr %2235, i64 192
  %2574 = load <8 x double>, ptr %2573, align 64, !tbaa !26
  %2575 = getelementptr inbounds nuw i8, ptr %2235, i64 256
  %2576 = load <8 x double>, ptr %2575, align 64, !tbaa !26
  %2577 = getelementptr inbounds nuw i8, ptr %2235, i64 320
  %2578 = load <8 x double>, ptr %2577, align 64, !tbaa !26
  %2579 = fmul <8 x double> %2545, %2578
  %2580 = fmul <8 x double> %2579, splat (double 0x3FD5555555555555)
  %2581 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2576, <8 x double> splat (double 5.000000e-01), <8 x double> %2580)
  %2582 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2545, <8 x double> %2581, <8 x double> %2574)
  %2583 = fmul <8 x double> %2545, %2582
  %2584 = getelementptr inbounds nuw i8, ptr %2235, i64 704
  %2585 = load <8 x double>, ptr %2584, align 64, !tbaa !26, !noalias !126
  %2586 = getelementptr inbounds nuw i8, ptr %2235, i64 768
  %2587 = load <8 x double>, ptr %2586, align 64, !tbaa !26, !noalias !126
  %2588 = getelementptr inbounds nuw i8, ptr %2235, i64 832
  %2589 = load <8 x double>, ptr %2588, align 64, !tbaa !26, !noalias !126
  %2590 = getelementptr inbounds nuw i8, ptr %2235, i64 896
  %2591 = load <8 x double>, ptr %2590, align 64, !tbaa !26, !noalias !126
  %2592 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2572, <8 x double> %2591, <8 x double> %2589)
  %2593 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2572, <8 x double> %2592, <8 x double> %2587)
  %2594 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2572, <8 x double> %2593, <8 x double> %2585)
  %2595 = fmul <8 x double> %2572, %2594
  %2596 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2595, <8 x double> %2578, <8 x double> %2576)
  %2597 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2595, <8 x double> %2596, <8 x double> %2574)
  %2598 = fdiv <8 x double> splat (double 1.000000e+00), %2597
  %2599 = fmul <8 x double> %2578, %2595
  %2600 = fmul <8 x double> %2599, splat (double 0x3FD5555555555555)
  %2601 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2576, <8 x double> splat (double 5.000000e-01), <8 x double> %2600)
  %2602 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2595, <8 x double> %2601, <8 x double> %2574)
  %2603 = fmul <8 x double> %2595, %2602
  %2604 = fsub <8 x double> %2572, %2603
  %2605 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2604, <8 x double> %2598, <8 x double> %2595)
  %2606 = fadd <8 x double> %2572, %2583
  %2607 = getelementptr inbounds nuw i8, ptr %2235, i64 384
  %2608 = load <8 x double>, ptr %2607, align 64, !tbaa !26
  %2609 = getelementptr inbounds nuw i8, ptr %2235, i64 448
  %2610 = load <8 x double>, ptr %2609, align 64, !tbaa !26
  %2611 = getelementptr inbounds nuw i8, ptr %2235, i64 512
  %2612 = load <8 x double>, ptr %2611, align 64, !tbaa !26
  %2613 = getelementptr inbounds nuw i8, ptr %2235, i64 576
  %2614 = load <8 x double>, ptr %2613, align 64, !tbaa !26
  %2615 = getelementptr inbounds nuw i8, ptr %2235, i64 640
  %2616 = load <8 x double>, ptr %2615, align 64, !tbaa !26
  %2617 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2606, <8 x double> %2616, <8 x double> %2614)
  %2618 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2606, <8 x double> %2617, <8 x double> %2612)
  %2619 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2606, <8 x double> %2618, <8 x double> %2610)
  %2620 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2606, <8 x double> %2619, <8 x double> %2608)
  %2621 = fadd <8 x double> %2545, %2605
  %2622 = fmul <8 x double> %2621, splat (double 5.000000e-01)
  %2623 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2622, <8 x double> %2578, <8 x double> %2576)
  %2624 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2622, <8 x double> %2623, <8 x double> %2574)
  %2625 = fmul <8 x double> %2620, %2624
  %2626 = fmul <8 x double> %2541, %2625
  %2627 = fmul <8 x double> %2442, %2626
  %2628 = getelementptr inbounds nuw i8, ptr %2235, i64 2432
  %2629 = load <8 x double>, ptr %2628, align 64, !tbaa !26
  %2630 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2627, <8 x double> %2629, <8 x double> splat (double 1.000000e+00))
  %2631 = fdiv <8 x double> splat (double 1.000000e+00), %2630
  %2632 = select <8 x i1> %2458, <8 x double> %2631, <8 x double> splat (double 1.000000e+00)
  %2633 = getelementptr inbounds nuw i8, ptr %2235, i64 8192
  store <8 x double> %2632, ptr %2633, align 64, !tbaa !26
  %2634 = fmul <8 x double> %2626, %2632
  %2635 = getelementptr inbounds nuw i8, ptr %2235, i64 7424
  store <8 x double> %2634, ptr %2635, align 64, !tbaa !26
  %2636 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2545, <8 x double> %2578, <8 x double> %2576)
  %2637 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2545, <8 x double> %2636, <8 x double> %2574)
  %2638 = getelementptr inbounds nuw i8, ptr %2235, i64 6784
  store <8 x double> %2637, ptr %2638, align 64, !tbaa !26
  %2639 = fneg <8 x double> %2637
  %2640 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2639, <8 x double> %2545, <8 x double> %2583)
  %2641 = getelementptr inbounds nuw i8, ptr %2235, i64 6848
  store <8 x double> %2640, ptr %2641, align 64, !tbaa !26
  %2642 = fdiv <8 x double> splat (double 1.000000e+00), %2637
  %2643 = fneg <8 x double> %2598
  %2644 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2643, <8 x double> %2572, <8 x double> %2605)
  %2645 = getelementptr inbounds nuw i8, ptr %2235, i64 6912
  store <8 x double> %2644, ptr %2645, align 64, !tbaa !26
  %2646 = getelementptr inbounds nuw i8, ptr %2235, i64 6976
  store <8 x double> %2598, ptr %2646, align 64, !tbaa !26
  %2647 = fmul <8 x double> %2598, %2634
  %2648 = fmul <8 x double> %2490, splat (double 2.000000e+00)
  %2649 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2634, <8 x double> %2642, <8 x double> %2648)
  %2650 = fneg <8 x double> %2634
  %2651 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2640, <8 x double> %2642, <8 x double> %2644)
  %2652 = fmul <8 x double> %2651, %2650
  %2653 = getelementptr inbounds nuw i8, ptr %2235, i64 7168
  store <8 x double> %2647, ptr %2653, align 64, !tbaa !26
  %2654 = getelementptr inbounds nuw i8, ptr %2235, i64 7232
  store <8 x double> %2649, ptr %2654, align 64, !tbaa !26
  %2655 = getelementptr inbounds nuw i8, ptr %2235, i64 7296
  store <8 x double> %2652, ptr %2655, align 64, !tbaa !26
  %2656 = fmul <8 x double> %2457, %2543
  %2657 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2656, <8 x double> %2429, <8 x double> splat (double 1.000000e+00))
  %2658 = fdiv <8 x double> %2543, %2657
  %2659 = load i64, ptr %138, align 8, !tbaa !22
  %2660 = sitofp i64 %2659 to double
  %2661 = fmul double %2660, 2.000000e+00
  %2662 = insertelement <8 x double> poison, double %2661, i64 0
  %2663 = shufflevector <8 x double> %2662, <8 x double> poison, <8 x i32> zeroinitializer
  %2664 = fmul <8 x double> %2550, %2663
  %2665 = fadd <8 x double> %2658, %2664
  %2666 = fdiv <8 x double> %2658, %2665
  %2667 = fmul <8 x double> %2502, %2664
  %2668 = select <8 x i1> %2458, <8 x double> %2658, <8 x double> %2667
  %2669 = getelementptr inbounds nuw i8, ptr %2235, i64 7488
  store <8 x double> %2668, ptr %2669, align 64, !tbaa !26
  %2670 = fmul <8 x double> %2664, %2666
  %2671 = select <8 x i1> %2458, <8 x double> %2658, <8 x double> %2670
  %2672 = getelementptr inbounds nuw i8, ptr %2235, i64 7552
  store <8 x double> %2671, ptr %2672, align 64, !tbaa !26
  %2673 = select <8 x i1> %2458, <8 x double> splat (double 1.000000e+00), <8 x double> %2666
  %2674 = getelementptr inbounds nuw i8, ptr %2235, i64 7616
  store <8 x double> %2673, ptr %2674, align 64, !tbaa !26
  %2675 = getelementptr inbounds nuw i8, ptr %2235, i64 9088
  store <8 x double> splat (double 1.000000e+09), ptr %2675, align 64, !tbaa !26
  %2676 = add nuw nsw i64 %2233, 1
  %2677 = load i64, ptr %175, align 8, !tbaa !20
  %2678 = icmp slt i64 %2676, %2677
  br i1 %2678, label %2232, label %1502, !llvm.loop !129

2679:                                             ; preds = %1507, %1502, %1493
  %2680 = phi i64 [ %2230, %1507 ], [ %2677, %1502 ], [ %1494, %1493 ]
  %2681 = load <8 x double>, ptr %194, align 64, !tbaa !26
  br label %2897

2682:                                             ; preds = %2891
  %2683 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %2684 = icmp sgt i64 %2895, 0
  br i1 %2684, label %2903, label %2897

2685:                                             ; preds = %1507, %2891
  %2686 = phi i64 [ %2894, %2891 ], [ 0, %1507 ]
  %2687 = load ptr, ptr %148, align 8, !tbaa !28
  %2688 = getelementptr inbounds nuw %struct.Piece, ptr %2687, i64 %2686
  %2689 = getelementptr inbounds nuw i8, ptr %2688, i64 9584
  %2690 = load ptr, ptr %2689, align 16, !tbaa !90
  %2691 = load i64, ptr %137, align 16, !tbaa !21
  %2692 = add nsw i64 %2691, -1
  %2693 = getelementptr inbounds <8 x double>, ptr %2690, i64 %2692
  %2694 = load <8 x double>, ptr %2693, align 64, !tbaa !26
  %2695 = getelementptr inbounds nuw i8, ptr %2688, i64 9592
  %2696 = load ptr, ptr %2695, align 8, !tbaa !91
  %2697 = getelementptr inbounds <8 x double>, ptr %2696, i64 %2692
  %2698 = load <8 x double>, ptr %2697, align 64, !tbaa !26
  %2699 = getelementptr inbounds nuw i8, ptr %2688, i64 7424
  %2700 = load <8 x double>, ptr %2699, align 64, !tbaa !26
  %2701 = getelementptr inbounds nuw i8, ptr %2688, i64 6912
  %2702 = load <8 x double>, ptr %2701, align 64, !tbaa !26
  %2703 = getelementptr inbounds nuw i8, ptr %2688, i64 6976
  %2704 = load <8 x double>, ptr %2703, align 64, !tbaa !26
  %2705 = getelementptr inbounds nuw i8, ptr %2688, i64 6848
  %2706 = load <8 x double>, ptr %2705, align 64, !tbaa !26
  %2707 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2698, <8 x double> %2706, <8 x double> %2694)
  %2708 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2704, <8 x double> %2707, <8 x double> %2702)
  %2709 = fmul <8 x double> %2700, %2708
  %2710 = getelementptr inbounds nuw i8, ptr %2688, i64 6784
  %2711 = load <8 x double>, ptr %2710, align 64, !tbaa !26
  %2712 = fneg <8 x double> %2698
  %2713 = fmul <8 x double> %2704, %2712
  %2714 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2713, <8 x double> %2711, <8 x double> splat (double 1.000000e+00))
  %2715 = fmul <8 x double> %2700, %2714
  %2716 = getelementptr inbounds nuw i8, ptr %2688, i64 7488
  %2717 = load <8 x double>, ptr %2716, align 64, !tbaa !26
  %2718 = getelementptr inbounds nuw i8, ptr %2688, i64 6336
  %2719 = load <8 x double>, ptr %2718, align 64, !tbaa !26
  %2720 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2717, <8 x double> %2719, <8 x double> %2709)
  %2721 = getelementptr inbounds nuw i8, ptr %2688, i64 8384
  %2722 = load <8 x double>, ptr %2721, align 64, !tbaa !26
  %2723 = fsub <8 x double> %2720, %2722
  %2724 = fadd <8 x double> %2717, %2715
  %2725 = getelementptr inbounds nuw i8, ptr %2688, i64 8320
  %2726 = load <8 x double>, ptr %2725, align 64, !tbaa !26
  %2727 = fadd <8 x double> %2724, %2726
  %2728 = getelementptr inbounds nuw i8, ptr %2688, i64 9280
  %2729 = load <8 x i64>, ptr %2728, align 64, !tbaa !26
  %2730 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2729)
  %2731 = icmp eq i64 %2730, 0
  %2732 = load i64, ptr %138, align 8, !tbaa !22
  br i1 %2731, label %2733, label %2748

2733:                                             ; preds = %2685
  %2734 = icmp slt i64 %2732, 0
  br i1 %2734, label %2739, label %2735

2735:                                             ; preds = %2733
  %2736 = getelementptr inbounds nuw i8, ptr %2688, i64 1792
  %2737 = getelementptr inbounds nuw i8, ptr %2688, i64 9688
  %2738 = load <8 x double>, ptr %2736, align 64, !tbaa !26
  br label %2741

2739:                                             ; preds = %2741, %2733
  %2740 = getelementptr inbounds nuw i8, ptr %2688, i64 6656
  store <8 x double> %2723, ptr %2740, align 64, !tbaa !26
  br label %2891

2741:                                             ; preds = %2735, %2741
  %2742 = phi i64 [ 0, %2735 ], [ %2745, %2741 ]
  %2743 = load ptr, ptr %2737, align 8, !tbaa !130
  %2744 = getelementptr inbounds nuw <8 x double>, ptr %2743, i64 %2742
  store <8 x double> %2738, ptr %2744, align 64, !tbaa !26
  %2745 = add nuw nsw i64 %2742, 1
  %2746 = load i64, ptr %138, align 8, !tbaa !22
  %2747 = icmp slt i64 %2742, %2746
  br i1 %2747, label %2741, label %2739, !llvm.loop !131

2748:                                             ; preds = %2685
  %2749 = getelementptr inbounds nuw i8, ptr %2688, i64 3328
  %2750 = load <8 x double>, ptr %2749, align 64, !tbaa !26
  %2751 = getelementptr inbounds nuw i8, ptr %2688, i64 8128
  %2752 = load <8 x double>, ptr %2751, align 64, !tbaa !26
  %2753 = getelementptr inbounds nuw i8, ptr %2688, i64 1664
  %2754 = load <8 x double>, ptr %2753, align 64, !tbaa !26
  %2755 = fmul <8 x double> %2752, %2754
  %2756 = load <8 x double>, ptr %2688, align 64, !tbaa !26
  %2757 = fsub <8 x double> %2756, %2750
  %2758 = sitofp i64 %2732 to double
  %2759 = insertelement <8 x double> poison, double %2758, i64 0
  %2760 = shufflevector <8 x double> %2759, <8 x double> poison, <8 x i32> zeroinitializer
  %2761 = fdiv <8 x double> %2757, %2760
  %2762 = getelementptr inbounds nuw i8, ptr %2688, i64 7552
  %2763 = load <8 x double>, ptr %2762, align 64, !tbaa !26
  %2764 = getelementptr inbounds nuw i8, ptr %2688, i64 7616
  %2765 = load <8 x double>, ptr %2764, align 64, !tbaa !26
  %2766 = getelementptr inbounds nuw i8, ptr %2688, i64 1792
  %2767 = load <8 x double>, ptr %2766, align 64, !tbaa !26
  %2768 = getelementptr inbounds nuw i8, ptr %2688, i64 9688
  %2769 = load ptr, ptr %2768, align 8, !tbaa !130
  %2770 = getelementptr inbounds <8 x double>, ptr %2769, i64 %2732
  store <8 x double> %2767, ptr %2770, align 64, !tbaa !26
  %2771 = icmp sgt i64 %2732, 0
  br i1 %2771, label %2772, label %2875

2772:                                             ; preds = %2748
  %2773 = fneg <8 x double> %2755
  %2774 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2773, <8 x double> %2765, <8 x double> %2763)
  %2775 = fsub <8 x double> splat (double 1.000000e+00), %2765
  %2776 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2755, <8 x double> %2775, <8 x double> %2763)
  %2777 = getelementptr inbounds nuw i8, ptr %2688, i64 2944
  %2778 = getelementptr inbounds nuw i8, ptr %2688, i64 3008
  %2779 = getelementptr inbounds nuw i8, ptr %2688, i64 3072
  %2780 = getelementptr inbounds nuw i8, ptr %2688, i64 3136
  %2781 = getelementptr inbounds nuw i8, ptr %2688, i64 6016
  %2782 = getelementptr inbounds nuw i8, ptr %2688, i64 6080
  %2783 = getelementptr inbounds nuw i8, ptr %2688, i64 9696
  %2784 = getelementptr inbounds nuw i8, ptr %2688, i64 6144
  %2785 = getelementptr inbounds nuw i8, ptr %2688, i64 9704
  %2786 = getelementptr inbounds nuw i8, ptr %2688, i64 1152
  %2787 = fmul <8 x double> %2755, splat (double -5.000000e-01)
  %2788 = getelementptr inbounds nuw i8, ptr %2688, i64 7936
  %2789 = getelementptr inbounds nuw i8, ptr %2688, i64 2688
  %2790 = getelementptr inbounds nuw i8, ptr %2688, i64 2752
  %2791 = getelementptr inbounds nuw i8, ptr %2688, i64 2816
  %2792 = getelementptr inbounds nuw i8, ptr %2688, i64 2880
  %2793 = getelementptr inbounds nuw i8, ptr %2688, i64 9664
  %2794 = getelementptr inbounds nuw i8, ptr %2688, i64 9672
  %2795 = getelementptr inbounds nuw i8, ptr %2688, i64 9680
  br label %2796

2796:                                             ; preds = %2772, %2850
  %2797 = phi <8 x double> [ %2776, %2772 ], [ %2852, %2850 ]
  %2798 = phi <8 x double> [ %2774, %2772 ], [ %2853, %2850 ]
  %2799 = phi <8 x double> [ %2719, %2772 ], [ %2868, %2850 ]
  %2800 = phi <8 x double> [ zeroinitializer, %2772 ], [ %2871, %2850 ]
  %2801 = phi <8 x double> [ %2767, %2772 ], [ %2814, %2850 ]
  %2802 = phi i64 [ %2732, %2772 ], [ %2803, %2850 ]
  %2803 = add nsw i64 %2802, -1
  %2804 = uitofp nneg i64 %2803 to double
  %2805 = insertelement <8 x double> poison, double %2804, i64 0
  %2806 = shufflevector <8 x double> %2805, <8 x double> poison, <8 x i32> zeroinitializer
  %2807 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2806, <8 x double> %2761, <8 x double> %2750)
  %2808 = load <8 x double>, ptr %2777, align 64, !tbaa !26
  %2809 = load <8 x double>, ptr %2778, align 64, !tbaa !26
  %2810 = load <8 x double>, ptr %2779, align 64, !tbaa !26
  %2811 = load <8 x double>, ptr %2780, align 64, !tbaa !26
  %2812 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2807, <8 x double> %2811, <8 x double> %2810)
  %2813 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2807, <8 x double> %2812, <8 x double> %2809)
  %2814 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2807, <8 x double> %2813, <8 x double> %2808)
  %2815 = load <8 x double>, ptr %2781, align 64, !tbaa !26
  %2816 = load <8 x double>, ptr %2782, align 64, !tbaa !26
  %2817 = load ptr, ptr %2783, align 32, !tbaa !53
  %2818 = getelementptr inbounds nuw <8 x double>, ptr %2817, i64 %2803
  %2819 = load <8 x double>, ptr %2818, align 64, !tbaa !26
  %2820 = fmul <8 x double> %2816, %2819
  %2821 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2815, <8 x double> %2814, <8 x double> %2820)
  %2822 = load <8 x double>, ptr %2784, align 64, !tbaa !26
  %2823 = load ptr, ptr %2785, align 8, !tbaa !63
  %2824 = getelementptr inbounds nuw <8 x double>, ptr %2823, i64 %2803
  %2825 = load <8 x double>, ptr %2824, align 64, !tbaa !26
  %2826 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2822, <8 x double> %2825, <8 x double> %2821)
  %2827 = fmul <8 x double> %2826, splat (double 5.000000e-01)
  %2828 = icmp eq i64 %2802, 1
  br i1 %2828, label %2844, label %2829

2829:                                             ; preds = %2796
  %2830 = load <8 x double>, ptr %2786, align 64, !tbaa !26
  %2831 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2827, <8 x double> %2830, <8 x double> %2787)
  %2832 = load <8 x double>, ptr %2788, align 64, !tbaa !26
  %2833 = fmul <8 x double> %2760, %2832
  %2834 = load <8 x double>, ptr %2789, align 64, !tbaa !26
  %2835 = load <8 x double>, ptr %2790, align 64, !tbaa !26
  %2836 = load <8 x double>, ptr %2791, align 64, !tbaa !26
  %2837 = load <8 x double>, ptr %2792, align 64, !tbaa !26
  %2838 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2807, <8 x double> %2837, <8 x double> %2836)
  %2839 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2807, <8 x double> %2838, <8 x double> %2835)
  %2840 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2807, <8 x double> %2839, <8 x double> %2834)
  %2841 = fmul <8 x double> %2833, %2840
  %2842 = fsub <8 x double> %2841, %2831
  %2843 = fadd <8 x double> %2831, %2841
  br label %2850

2844:                                             ; preds = %2796
  %2845 = load <8 x double>, ptr %2716, align 64, !tbaa !26
  %2846 = load <8 x double>, ptr %2786, align 64, !tbaa !26
  %2847 = fmul <8 x double> %2827, splat (double -2.000000e+00)
  %2848 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2847, <8 x double> %2846, <8 x double> %2845)
  %2849 = fadd <8 x double> %2755, %2848
  br label %2850

2850:                                             ; preds = %2844, %2829
  %2851 = phi <8 x double> [ %2830, %2829 ], [ %2846, %2844 ]
  %2852 = phi <8 x double> [ %2842, %2829 ], [ %2849, %2844 ]
  %2853 = phi <8 x double> [ %2843, %2829 ], [ %2845, %2844 ]
  %2854 = fsub <8 x double> %2801, %2814
  %2855 = fmul <8 x double> %2815, %2854
  %2856 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2855, <8 x double> %2851, <8 x double> %2797)
  %2857 = fadd <8 x double> %2853, %2856
  %2858 = fneg <8 x double> %2798
  %2859 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2858, <8 x double> %2800, <8 x double> %2857)
  %2860 = fdiv <8 x double> splat (double 1.000000e+00), %2859
  %2861 = load ptr, ptr %2768, align 8, !tbaa !130
  %2862 = getelementptr inbounds nuw <8 x double>, ptr %2861, i64 %2803
  store <8 x double> %2814, ptr %2862, align 64, !tbaa !26
  %2863 = load ptr, ptr %2793, align 64, !tbaa !65
  %2864 = getelementptr inbounds nuw <8 x double>, ptr %2863, i64 %2803
  %2865 = load <8 x double>, ptr %2864, align 64, !tbaa !26
  %2866 = fneg <8 x double> %2865
  %2867 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2798, <8 x double> %2799, <8 x double> %2866)
  %2868 = fmul <8 x double> %2860, %2867
  %2869 = load ptr, ptr %2794, align 8, !tbaa !132
  %2870 = getelementptr inbounds nuw <8 x double>, ptr %2869, i64 %2803
  store <8 x double> %2868, ptr %2870, align 64, !tbaa !26
  %2871 = fmul <8 x double> %2852, %2860
  %2872 = load ptr, ptr %2795, align 16, !tbaa !133
  %2873 = getelementptr inbounds nuw <8 x double>, ptr %2872, i64 %2803
  store <8 x double> %2871, ptr %2873, align 64, !tbaa !26
  %2874 = icmp samesign ugt i64 %2802, 1
  br i1 %2874, label %2796, label %2875, !llvm.loop !134

2875:                                             ; preds = %2850, %2748
  %2876 = load <8 x i64>, ptr %2728, align 64, !tbaa !26
  %2877 = load <8 x double>, ptr %2716, align 64, !tbaa !26
  %2878 = getelementptr inbounds nuw i8, ptr %2688, i64 9672
  %2879 = load ptr, ptr %2878, align 8, !tbaa !132
  %2880 = load <8 x double>, ptr %2879, align 64, !tbaa !26
  %2881 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2877, <8 x double> %2880, <8 x double> %2709)
  %2882 = icmp eq <8 x i64> %2876, zeroinitializer
  %2883 = select <8 x i1> %2882, <8 x double> %2723, <8 x double> %2881
  %2884 = getelementptr inbounds nuw i8, ptr %2688, i64 6656
  store <8 x double> %2883, ptr %2884, align 64, !tbaa !26
  %2885 = getelementptr inbounds nuw i8, ptr %2688, i64 9680
  %2886 = load ptr, ptr %2885, align 16, !tbaa !133
  %2887 = load <8 x double>, ptr %2886, align 64, !tbaa !26
  %2888 = fsub <8 x double> splat (double 1.000000e+00), %2887
  %2889 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2877, <8 x double> %2888, <8 x double> %2715)
  %2890 = select <8 x i1> %2882, <8 x double> %2727, <8 x double> %2889
  br label %2891

2891:                                             ; preds = %2739, %2875
  %2892 = phi <8 x double> [ %2727, %2739 ], [ %2890, %2875 ]
  %2893 = getelementptr inbounds nuw i8, ptr %2688, i64 6720
  store <8 x double> %2892, ptr %2893, align 64, !tbaa !26
  %2894 = add nuw nsw i64 %2686, 1
  %2895 = load i64, ptr %175, align 8, !tbaa !20
  %2896 = icmp slt i64 %2894, %2895
  br i1 %2896, label %2685, label %2682, !llvm.loop !135

2897:                                             ; preds = %3012, %2679, %2682
  %2898 = phi <8 x double> [ %2683, %2682 ], [ %2681, %2679 ], [ %2683, %3012 ]
  %2899 = phi i64 [ %2895, %2682 ], [ %2680, %2679 ], [ %3013, %3012 ]
  %2900 = fcmp ogt <8 x double> %2898, zeroinitializer
  %2901 = bitcast <8 x i1> %2900 to i8
  %2902 = icmp eq i8 %2901, 0
  br i1 %2902, label %3099, label %3016

2903:                                             ; preds = %2682, %3012
  %2904 = phi i64 [ %3013, %3012 ], [ %2895, %2682 ]
  %2905 = phi i64 [ %3014, %3012 ], [ 0, %2682 ]
  %2906 = load ptr, ptr %148, align 8, !tbaa !28
  %2907 = getelementptr inbounds nuw %struct.Piece, ptr %2906, i64 %2905
  %2908 = getelementptr inbounds nuw i8, ptr %2907, i64 9408
  %2909 = load <8 x i64>, ptr %2908, align 64, !tbaa !26
  %2910 = getelementptr inbounds nuw i8, ptr %2907, i64 2624
  %2911 = load <8 x double>, ptr %2910, align 64, !tbaa !26
  %2912 = fcmp ogt <8 x double> %2911, zeroinitializer
  %2913 = select <8 x i1> %2912, <8 x i64> %2909, <8 x i64> zeroinitializer
  %2914 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2913)
  %2915 = icmp eq i64 %2914, 0
  br i1 %2915, label %3012, label %2916

2916:                                             ; preds = %2903
  %2917 = load <8 x double>, ptr %2907, align 64, !tbaa !26
  %2918 = getelementptr inbounds nuw i8, ptr %2907, i64 3328
  %2919 = load <8 x double>, ptr %2918, align 64, !tbaa !26
  %2920 = fsub <8 x double> %2917, %2919
  %2921 = getelementptr inbounds nuw i8, ptr %2907, i64 8256
  %2922 = load <8 x double>, ptr %2921, align 64, !tbaa !26
  %2923 = fsub <8 x double> splat (double 1.000000e+00), %2922
  %2924 = getelementptr inbounds nuw i8, ptr %2907, i64 2304
  %2925 = load <8 x double>, ptr %2924, align 64, !tbaa !26
  %2926 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2923, <8 x double> %2925, <8 x double> %2920)
  %2927 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2928 = fdiv <8 x double> splat (double 1.000000e+00), %2927
  %2929 = fcmp ogt <8 x double> %2911, splat (double 1.000000e-30)
  %2930 = select <8 x i1> %2929, <8 x double> %2911, <8 x double> splat (double 1.000000e-30)
  %2931 = fdiv <8 x double> %2926, %2930
  %2932 = fadd <8 x double> %2928, %2931
  %2933 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %2934 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2933, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2935 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2933, <8 x double> %2934, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2936 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2937 = getelementptr inbounds nuw i8, ptr %2907, i64 6656
  %2938 = load <8 x double>, ptr %2937, align 64, !tbaa !26
  %2939 = getelementptr inbounds nuw i8, ptr %2907, i64 6720
  %2940 = load <8 x double>, ptr %2939, align 64, !tbaa !26
  %2941 = fdiv <8 x double> %2938, %2940
  %2942 = fcmp olt <8 x double> %2941, %2933
  %2943 = select <8 x i1> %2942, <8 x double> %2941, <8 x double> %2933
  %2944 = getelementptr inbounds nuw i8, ptr %2907, i64 3968
  %2945 = load <8 x double>, ptr %2944, align 64, !tbaa !26
  %2946 = fcmp olt <8 x double> %2945, %2943
  %2947 = select <8 x i1> %2946, <8 x double> %2945, <8 x double> %2943
  %2948 = fneg <8 x double> %2940
  br label %2952

2949:                                             ; preds = %2952
  %2950 = getelementptr inbounds nuw i8, ptr %2907, i64 7360
  store <8 x double> %3003, ptr %2950, align 64, !tbaa !26
  %2951 = load i64, ptr %175, align 8, !tbaa !20
  br label %3012

2952:                                             ; preds = %2916, %2952
  %2953 = phi <8 x i64> [ %2913, %2916 ], [ %3006, %2952 ]
  %2954 = phi i32 [ 0, %2916 ], [ %3007, %2952 ]
  %2955 = phi <8 x double> [ %2947, %2916 ], [ %3003, %2952 ]
  %2956 = fadd <8 x double> %2955, splat (double 2.731500e+02)
  %2957 = fcmp ogt <8 x double> %2955, zeroinitializer
  %2958 = select <8 x i1> %2957, <8 x double> %2955, <8 x double> zeroinitializer
  %2959 = fadd <8 x double> %2958, splat (double 2.731500e+02)
  %2960 = fadd <8 x double> %2959, splat (double 0xC08451671D164BD4)
  %2961 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %2960
  %2962 = fsub <8 x double> %2959, %2961
  %2963 = fadd <8 x double> %2962, splat (double 0x40923C3565924845)
  %2964 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2962, <8 x double> %2963, <8 x double> splat (double 0xC12619EA558539E6))
  %2965 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2962, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %2966 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2962, <8 x double> %2965, <8 x double> splat (double 0xC148A99584203885))
  %2967 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2962, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %2968 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2962, <8 x double> %2967, <8 x double> splat (double 0x4118B9E59F2691E5))
  %2969 = fmul <8 x double> %2968, splat (double 2.000000e+00)
  %2970 = fmul <8 x double> %2964, splat (double 4.000000e+00)
  %2971 = fneg <8 x double> %2968
  %2972 = fmul <8 x double> %2970, %2971
  %2973 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2966, <8 x double> %2966, <8 x double> %2972)
  %2974 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2973)
  %2975 = fsub <8 x double> %2974, %2966
  %2976 = fdiv <8 x double> %2969, %2975
  %2977 = fmul <8 x double> %2976, %2976
  %2978 = fmul <8 x double> %2977, splat (double 1.000000e+06)
  %2979 = fmul <8 x double> %2977, %2978
  %2980 = fmul <8 x double> %2956, splat (double 4.615260e+02)
  %2981 = fdiv <8 x double> %2979, %2980
  %2982 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2948, <8 x double> %2955, <8 x double> %2938)
  %2983 = fsub <8 x double> %2981, %2936
  %2984 = fcmp ogt <8 x double> %2983, zeroinitializer
  %2985 = select <8 x i1> %2984, <8 x double> %2983, <8 x double> zeroinitializer
  %2986 = fmul <8 x double> %2935, %2985
  %2987 = fdiv <8 x double> %2986, %2932
  %2988 = fsub <8 x double> %2982, %2987
  %2989 = fmul <8 x double> %2935, %2981
  %2990 = fdiv <8 x double> %2935, %2980
  %2991 = fadd <8 x double> %2990, splat (double -1.000000e+00)
  %2992 = fmul <8 x double> %2991, %2989
  %2993 = fdiv <8 x double> %2992, %2956
  %2994 = fdiv <8 x double> %2993, %2932
  %2995 = fcmp ule <8 x double> %2981, %2936
  %2996 = select <8 x i1> %2995, <8 x double> zeroinitializer, <8 x double> %2994
  %2997 = fsub <8 x double> %2948, %2996
  %2998 = fdiv <8 x double> %2988, %2997
  %2999 = fsub <8 x double> %2955, %2998
  %3000 = fcmp olt <8 x double> %2999, %2943
  %3001 = select <8 x i1> %3000, <8 x double> %2999, <8 x double> %2943
  %3002 = icmp eq <8 x i64> %2953, zeroinitializer
  %3003 = select <8 x i1> %3002, <8 x double> %2955, <8 x double> %3001
  %3004 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2998)
  %3005 = fcmp oge <8 x double> %3004, splat (double 1.000000e-05)
  %3006 = select <8 x i1> %3005, <8 x i64> %2953, <8 x i64> zeroinitializer
  %3007 = add nuw nsw i32 %2954, 1
  %3008 = icmp samesign ult i32 %2954, 7
  %3009 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3006)
  %3010 = icmp ne i64 %3009, 0
  %3011 = select i1 %3008, i1 %3010, i1 false
  br i1 %3011, label %2952, label %2949, !llvm.loop !136

3012:                                             ; preds = %2903, %2949
  %3013 = phi i64 [ %2904, %2903 ], [ %2951, %2949 ]
  %3014 = add nuw nsw i64 %2905, 1
  %3015 = icmp slt i64 %3014, %3013
  br i1 %3015, label %2903, label %2897, !llvm.loop !137

3016:                                             ; preds = %2897
  %3017 = sext <8 x i1> %2900 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %3017, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #6
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #6
  %3018 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %3019 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %3020 = fadd <8 x double> %3018, %3019
  store <8 x double> %3020, ptr %6, align 64, !tbaa !26
  %3021 = load ptr, ptr %188, align 8
  %3022 = load ptr, ptr %190, align 8
  %3023 = load ptr, ptr %191, align 8
  br label %3024

3024:                                             ; preds = %3094, %3016
  %3025 = phi i64 [ 0, %3016 ], [ %3095, %3094 ]
  %3026 = getelementptr inbounds nuw i64, ptr %4, i64 %3025
  %3027 = load i64, ptr %3026, align 8, !tbaa !30
  %3028 = icmp eq i64 %3027, 0
  br i1 %3028, label %3094, label %3029

3029:                                             ; preds = %3024
  %3030 = getelementptr inbounds nuw [8 x i64], ptr %139, i64 0, i64 %3025
  %3031 = load i64, ptr %3030, align 8, !tbaa !30
  %3032 = shl nsw i64 %3031, 1
  %3033 = or disjoint i64 %3032, 1
  %3034 = getelementptr inbounds i64, ptr %3021, i64 %3033
  %3035 = load i64, ptr %3034, align 8, !tbaa !30
  %3036 = shl nuw nsw i64 %3025, 1
  %3037 = or disjoint i64 %3036, 1
  %3038 = getelementptr inbounds nuw [16 x i64], ptr %189, i64 0, i64 %3037
  %3039 = getelementptr inbounds i64, ptr %3023, i64 %3033
  %3040 = load i64, ptr %3039, align 8, !tbaa !30
  %3041 = shl nsw i64 %3040, 4
  %3042 = getelementptr inbounds i8, ptr %3022, i64 %3041
  %3043 = getelementptr inbounds nuw double, ptr %6, i64 %3025
  %3044 = load double, ptr %3043, align 8, !tbaa !45
  %3045 = load i64, ptr %3038, align 8, !tbaa !30
  %3046 = getelementptr i8, ptr %3042, i64 -16
  %3047 = icmp sgt i64 %3045, 0
  br i1 %3047, label %3048, label %3057

3048:                                             ; preds = %3029, %3054
  %3049 = phi i64 [ %3055, %3054 ], [ %3045, %3029 ]
  %3050 = shl i64 %3049, 4
  %3051 = getelementptr i8, ptr %3046, i64 %3050
  %3052 = load double, ptr %3051, align 8, !tbaa !45
  %3053 = fcmp ugt double %3044, %3052
  br i1 %3053, label %3057, label %3054

3054:                                             ; preds = %3048
  %3055 = add nsw i64 %3049, -1
  store i64 %3055, ptr %3038, align 8, !tbaa !30
  %3056 = icmp sgt i64 %3049, 1
  br i1 %3056, label %3048, label %3057, !llvm.loop !82

3057:                                             ; preds = %3054, %3048, %3029
  %3058 = phi i64 [ %3045, %3029 ], [ 0, %3054 ], [ %3049, %3048 ]
  %3059 = icmp slt i64 %3058, %3035
  br i1 %3059, label %3060, label %3069

3060:                                             ; preds = %3057, %3066
  %3061 = phi i64 [ %3067, %3066 ], [ %3058, %3057 ]
  %3062 = shl nsw i64 %3061, 4
  %3063 = getelementptr inbounds i8, ptr %3042, i64 %3062
  %3064 = load double, ptr %3063, align 8, !tbaa !45
  %3065 = fcmp ule double %3044, %3064
  br i1 %3065, label %3074, label %3066

3066:                                             ; preds = %3060
  %3067 = add i64 %3061, 1
  store i64 %3067, ptr %3038, align 8, !tbaa !30
  %3068 = icmp eq i64 %3067, %3035
  br i1 %3068, label %3069, label %3060, !llvm.loop !83

3069:                                             ; preds = %3066, %3057
  %3070 = shl i64 %3035, 4
  %3071 = getelementptr i8, ptr %3042, i64 %3070
  %3072 = getelementptr i8, ptr %3071, i64 -8
  %3073 = load double, ptr %3072, align 8, !tbaa !45
  br label %3091

3074:                                             ; preds = %3060
  %3075 = shl nsw i64 %3061, 1
  %3076 = or disjoint i64 %3075, 1
  %3077 = getelementptr inbounds double, ptr %3042, i64 %3076
  %3078 = load double, ptr %3077, align 8, !tbaa !45
  %3079 = icmp sgt i64 %3061, 0
  br i1 %3079, label %3080, label %3091

3080:                                             ; preds = %3074
  %3081 = getelementptr inbounds nuw i8, ptr %3042, i64 %3062
  %3082 = getelementptr i8, ptr %3081, i64 -8
  %3083 = load double, ptr %3082, align 8, !tbaa !45
  %3084 = getelementptr i8, ptr %3081, i64 -16
  %3085 = load double, ptr %3084, align 8, !tbaa !45
  %3086 = fsub double %3044, %3085
  %3087 = fsub double %3064, %3085
  %3088 = fdiv double %3086, %3087
  %3089 = fsub double %3078, %3083
  %3090 = tail call double @llvm.fmuladd.f64(double %3088, double %3089, double %3083)
  br label %3091

3091:                                             ; preds = %3080, %3074, %3069
  %3092 = phi double [ %3090, %3080 ], [ %3078, %3074 ], [ %3073, %3069 ]
  %3093 = getelementptr inbounds nuw double, ptr %5, i64 %3025
  store double %3092, ptr %3093, align 8, !tbaa !45
  br label %3094

3094:                                             ; preds = %3091, %3024
  %3095 = add nuw nsw i64 %3025, 1
  %3096 = icmp eq i64 %3095, 8
  br i1 %3096, label %3097, label %3024, !llvm.loop !84

3097:                                             ; preds = %3094
  %3098 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %3099

3099:                                             ; preds = %2897, %3097
  %3100 = phi <8 x double> [ %3098, %3097 ], [ zeroinitializer, %2897 ]
  %3101 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %3102 = fcmp ogt <8 x double> %3101, zeroinitializer
  %3103 = sext <8 x i1> %3102 to <8 x i64>
  %3104 = xor <8 x i64> %3103, splat (i64 -1)
  %3105 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %3106 = fcmp oeq <8 x double> %3105, splat (double 1.000000e+00)
  %3107 = fcmp oeq <8 x double> %3105, splat (double 2.000000e+00)
  %3108 = or <8 x i1> %3106, %3107
  %3109 = select <8 x i1> %3108, <8 x i64> %3104, <8 x i64> zeroinitializer
  %3110 = xor <8 x i64> %3109, %3103
  %3111 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %3112 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %3113 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %3114 = icmp eq <8 x i64> %3110, splat (i64 -1)
  %3115 = select <8 x i1> %3114, <8 x double> %3113, <8 x double> %3112
  %3116 = bitcast <8 x i1> %3102 to i8
  %3117 = icmp eq i8 %3116, 0
  br i1 %3117, label %3149, label %3118

3118:                                             ; preds = %3099
  %3119 = select <8 x i1> %3102, <8 x double> %3100, <8 x double> %3115
  %3120 = fmul <8 x double> %3119, splat (double 0x3EB0C6F7A0B5ED8D)
  %3121 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3120)
  %3122 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3121)
  %3123 = fmul <8 x double> %3122, %3122
  %3124 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3122, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %3123)
  %3125 = fadd <8 x double> %3124, splat (double 0x402DD4891DBECC6B)
  %3126 = fmul <8 x double> %3122, splat (double 0x40C77A698FD9BCCA)
  %3127 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3123, <8 x double> splat (double 0x40923C3565924845), <8 x double> %3126)
  %3128 = fadd <8 x double> %3127, splat (double 0xC0B2D7440748F0B3)
  %3129 = fmul <8 x double> %3122, splat (double 0xC148A99584203885)
  %3130 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3123, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %3129)
  %3131 = fadd <8 x double> %3130, splat (double 0x4118B9E59F2691E5)
  %3132 = fmul <8 x double> %3131, splat (double 2.000000e+00)
  %3133 = fneg <8 x double> %3128
  %3134 = fmul <8 x double> %3125, splat (double 4.000000e+00)
  %3135 = fneg <8 x double> %3131
  %3136 = fmul <8 x double> %3134, %3135
  %3137 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3128, <8 x double> %3128, <8 x double> %3136)
  %3138 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3137)
  %3139 = fsub <8 x double> %3133, %3138
  %3140 = fdiv <8 x double> %3132, %3139
  %3141 = fadd <8 x double> %3140, splat (double 0x408451671D164BD4)
  %3142 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3140, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %3143 = fmul <8 x double> %3142, splat (double -4.000000e+00)
  %3144 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3141, <8 x double> %3141, <8 x double> %3143)
  %3145 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3144)
  %3146 = fsub <8 x double> %3141, %3145
  %3147 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3146, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %3148 = select <8 x i1> %3102, <8 x double> %3147, <8 x double> %3111
  br label %3149

3149:                                             ; preds = %3118, %3099
  %3150 = phi <8 x double> [ %3119, %3118 ], [ %3115, %3099 ]
  %3151 = phi <8 x double> [ %3148, %3118 ], [ %3111, %3099 ]
  %3152 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3153 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %3154 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3155 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %3156 = fmul <8 x double> %3154, %3155
  %3157 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3152, <8 x double> %3153, <8 x double> %3156)
  %3158 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %3159 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %3160 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %3161 = fneg <8 x double> %3157
  %3162 = fmul <8 x double> %3160, %3161
  %3163 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3158, <8 x double> %3159, <8 x double> %3162)
  %3164 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %3165 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3160, <8 x double> %3164, <8 x double> %3158)
  %3166 = fdiv <8 x double> %3163, %3165
  %3167 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %3168 = select <8 x i1> %3114, <8 x double> %3167, <8 x double> %3112
  store <8 x double> %3168, ptr %205, align 64, !tbaa !26
  %3169 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %3170 = select <8 x i1> %3114, <8 x double> %3169, <8 x double> %3166
  store <8 x double> %3170, ptr %206, align 64, !tbaa !26
  store <8 x double> %3150, ptr %199, align 64, !tbaa !26
  %3171 = load <8 x i64>, ptr %128, align 64, !tbaa !26
  %3172 = and <8 x i64> %3171, %3109
  %3173 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3172)
  %3174 = icmp eq i64 %3173, 0
  br i1 %3174, label %3807, label %3175

3175:                                             ; preds = %3149
  %3176 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %3177 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %3178 = fmul <8 x double> %3154, %3177
  %3179 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3152, <8 x double> %3176, <8 x double> %3178)
  %3180 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %3181 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %3182 = fdiv <8 x double> %3180, %3181
  %3183 = fmul <8 x double> %3112, splat (double 3.000000e-01)
  %3184 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %3185 = fadd <8 x double> %3112, %3184
  %3186 = fadd <8 x double> %3185, splat (double 2.000000e+05)
  %3187 = fmul <8 x double> %3181, splat (double 2.870530e+02)
  %3188 = fdiv <8 x double> %3112, %3187
  %3189 = fcmp ogt <8 x double> %3150, %3183
  %3190 = select <8 x i1> %3189, <8 x double> %3150, <8 x double> %3183
  %3191 = fcmp olt <8 x double> %3190, %3186
  %3192 = select <8 x i1> %3191, <8 x double> %3190, <8 x double> %3186
  %3193 = icmp eq <8 x i64> %3109, zeroinitializer
  %3194 = select <8 x i1> %3193, <8 x double> %3150, <8 x double> %3192
  %3195 = fdiv <8 x double> %3168, splat (double 2.870530e+02)
  %3196 = fmul <8 x double> %3188, splat (double 2.000000e+00)
  %3197 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3196)
  br label %3198

3198:                                             ; preds = %3715, %3175
  %3199 = phi <8 x double> [ %3164, %3175 ], [ %3722, %3715 ]
  %3200 = phi <8 x double> [ %3151, %3175 ], [ %3234, %3715 ]
  %3201 = phi <8 x double> [ %3183, %3175 ], [ %3745, %3715 ]
  %3202 = phi <8 x double> [ %3186, %3175 ], [ %3742, %3715 ]
  %3203 = phi <8 x i64> [ %3172, %3175 ], [ %3761, %3715 ]
  %3204 = phi i32 [ 0, %3175 ], [ %3766, %3715 ]
  %3205 = phi <8 x double> [ %3194, %3175 ], [ %3763, %3715 ]
  %3206 = fmul <8 x double> %3205, splat (double 0x3EB0C6F7A0B5ED8D)
  %3207 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3206)
  %3208 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3207)
  %3209 = fmul <8 x double> %3208, %3208
  %3210 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3208, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %3209)
  %3211 = fadd <8 x double> %3210, splat (double 0x402DD4891DBECC6B)
  %3212 = fmul <8 x double> %3208, splat (double 0x40C77A698FD9BCCA)
  %3213 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3209, <8 x double> splat (double 0x40923C3565924845), <8 x double> %3212)
  %3214 = fadd <8 x double> %3213, splat (double 0xC0B2D7440748F0B3)
  %3215 = fmul <8 x double> %3208, splat (double 0xC148A99584203885)
  %3216 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3209, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %3215)
  %3217 = fadd <8 x double> %3216, splat (double 0x4118B9E59F2691E5)
  %3218 = fmul <8 x double> %3217, splat (double 2.000000e+00)
  %3219 = fneg <8 x double> %3214
  %3220 = fmul <8 x double> %3211, splat (double 4.000000e+00)
  %3221 = fneg <8 x double> %3217
  %3222 = fmul <8 x double> %3220, %3221
  %3223 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3214, <8 x double> %3214, <8 x double> %3222)
  %3224 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3223)
  %3225 = fsub <8 x double> %3219, %3224
  %3226 = fdiv <8 x double> %3218, %3225
  %3227 = fadd <8 x double> %3226, splat (double 0x408451671D164BD4)
  %3228 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3226, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %3229 = fmul <8 x double> %3228, splat (double -4.000000e+00)
  %3230 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3227, <8 x double> %3227, <8 x double> %3229)
  %3231 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3230)
  %3232 = fsub <8 x double> %3227, %3231
  %3233 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3232, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %3234 = select <8 x i1> %3193, <8 x double> %3200, <8 x double> %3233
  %3235 = fsub <8 x double> %3205, %3168
  %3236 = fcmp ogt <8 x double> %3235, zeroinitializer
  %3237 = select <8 x i1> %3236, <8 x double> %3235, <8 x double> zeroinitializer
  %3238 = fadd <8 x double> %3234, splat (double 2.731500e+02)
  %3239 = load <8 x double>, ptr %182, align 64, !tbaa !26, !noalias !138
  %3240 = load <8 x double>, ptr %200, align 64, !tbaa !26, !noalias !138
  %3241 = load <8 x double>, ptr %183, align 64, !tbaa !26, !noalias !138
  %3242 = load <8 x double>, ptr %201, align 64, !tbaa !26, !noalias !138
  %3243 = fmul <8 x double> %3241, %3242
  %3244 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3239, <8 x double> %3240, <8 x double> %3243)
  %3245 = load <8 x double>, ptr %204, align 64, !tbaa !26, !noalias !138
  %3246 = load <8 x double>, ptr %202, align 64, !tbaa !26, !noalias !138
  %3247 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3245, <8 x double> %3199, <8 x double> %3246)
  %3248 = load <8 x double>, ptr %203, align 64, !tbaa !26, !noalias !138
  %3249 = fneg <8 x double> %3244
  %3250 = fmul <8 x double> %3245, %3249
  %3251 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3246, <8 x double> %3248, <8 x double> %3250)
  %3252 = fdiv <8 x double> %3251, %3247
  %3253 = fcmp ogt <8 x double> %3237, splat (double 2.000000e+03)
  %3254 = select <8 x i1> %3253, <8 x double> %3237, <8 x double> splat (double 2.000000e+03)
  %3255 = fmul <8 x double> %3254, splat (double 0x3EB0C6F7A0B5ED8D)
  %3256 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3255)
  %3257 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3256)
  %3258 = fmul <8 x double> %3257, %3257
  %3259 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3257, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %3258)
  %3260 = fadd <8 x double> %3259, splat (double 0x402DD4891DBECC6B)
  %3261 = fmul <8 x double> %3257, splat (double 0x40C77A698FD9BCCA)
  %3262 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3258, <8 x double> splat (double 0x40923C3565924845), <8 x double> %3261)
  %3263 = fadd <8 x double> %3262, splat (double 0xC0B2D7440748F0B3)
  %3264 = fmul <8 x double> %3257, splat (double 0xC148A99584203885)
  %3265 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3258, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %3264)
  %3266 = fadd <8 x double> %3265, splat (double 0x4118B9E59F2691E5)
  %3267 = fmul <8 x double> %3266, splat (double 2.000000e+00)
  %3268 = fneg <8 x double> %3263
  %3269 = fmul <8 x double> %3260, splat (double 4.000000e+00)
  %3270 = fneg <8 x double> %3266
  %3271 = fmul <8 x double> %3269, %3270
  %3272 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3263, <8 x double> %3263, <8 x double> %3271)
  %3273 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3272)
  %3274 = fsub <8 x double> %3268, %3273
  %3275 = fdiv <8 x double> %3267, %3274
  %3276 = fadd <8 x double> %3275, splat (double 0x408451671D164BD4)
  %3277 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3275, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %3278 = fmul <8 x double> %3277, splat (double -4.000000e+00)
  %3279 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3276, <8 x double> %3276, <8 x double> %3278)
  %3280 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3279)
  %3281 = fsub <8 x double> %3276, %3280
  %3282 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3281, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %3283 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3282, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3284 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3282, <8 x double> %3283, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3285 = fadd <8 x double> %3282, splat (double 2.731500e+02)
  %3286 = fcmp ule <8 x double> %3282, %3252
  %3287 = load <8 x double>, ptr %212, align 64, !tbaa !26, !noalias !138
  %3288 = fmul <8 x double> %3247, %3287
  %3289 = fadd <8 x double> %3247, %3287
  %3290 = fdiv <8 x double> %3288, %3289
  %3291 = fdiv <8 x double> %3290, %3284
  %3292 = fmul <8 x double> %3285, splat (double 4.615260e+02)
  %3293 = fmul <8 x double> %3254, %3284
  %3294 = fmul <8 x double> %3282, %3287
  %3295 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3252, <8 x double> %3247, <8 x double> %3294)
  %3296 = fdiv <8 x double> %3295, %3289
  %3297 = select <8 x i1> %3286, <8 x double> %3252, <8 x double> %3296
  store <8 x double> %3297, ptr %206, align 64, !tbaa !26, !noalias !138
  %3298 = fsub <8 x double> %3282, %3252
  %3299 = fmul <8 x double> %3298, %3291
  %3300 = select <8 x i1> %3286, <8 x double> zeroinitializer, <8 x double> %3299
  %3301 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3234, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3302 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3234, <8 x double> %3301, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3303 = fdiv <8 x double> splat (double 1.000000e+00), %3302
  %3304 = load i64, ptr %175, align 8, !tbaa !20, !noalias !141
  %3305 = icmp sgt i64 %3304, 0
  br i1 %3305, label %3306, label %3641

3306:                                             ; preds = %3198, %3627
  %3307 = phi <8 x double> [ %3637, %3627 ], [ zeroinitializer, %3198 ]
  %3308 = phi <8 x double> [ %3636, %3627 ], [ zeroinitializer, %3198 ]
  %3309 = phi i64 [ %3638, %3627 ], [ 0, %3198 ]
  %3310 = load ptr, ptr %148, align 8, !tbaa !28, !noalias !141
  %3311 = getelementptr inbounds nuw %struct.Piece, ptr %3310, i64 %3309
  %3312 = getelementptr inbounds nuw i8, ptr %3311, i64 6656
  %3313 = load <8 x double>, ptr %3312, align 64, !tbaa !26, !noalias !141
  %3314 = getelementptr inbounds nuw i8, ptr %3311, i64 6720
  %3315 = load <8 x double>, ptr %3314, align 64, !tbaa !26, !noalias !141
  %3316 = getelementptr inbounds nuw i8, ptr %3311, i64 8576
  %3317 = load <8 x double>, ptr %3316, align 64, !tbaa !26, !noalias !141
  %3318 = fcmp ule <8 x double> %3317, splat (double 1.000000e+00)
  %3319 = fmul <8 x double> %3234, %3315
  %3320 = fcmp ogt <8 x double> %3313, %3319
  %3321 = and <8 x i1> %3318, %3320
  %3322 = fneg <8 x double> %3315
  %3323 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3322, <8 x double> %3234, <8 x double> %3313)
  %3324 = fmul <8 x double> %3303, %3323
  %3325 = select <8 x i1> %3321, <8 x double> %3324, <8 x double> zeroinitializer
  %3326 = fmul <8 x double> %3303, %3322
  %3327 = select <8 x i1> %3321, <8 x double> %3326, <8 x double> zeroinitializer
  %3328 = xor <8 x i1> %3321, splat (i1 true)
  %3329 = bitcast <8 x i1> %3328 to i8
  %3330 = icmp eq i8 %3329, 0
  br i1 %3330, label %3334, label %3331

3331:                                             ; preds = %3306
  %3332 = fdiv <8 x double> %3313, %3315
  %3333 = select <8 x i1> %3321, <8 x double> %3234, <8 x double> %3332
  br label %3334

3334:                                             ; preds = %3331, %3306
  %3335 = phi <8 x double> [ %3333, %3331 ], [ %3234, %3306 ]
  %3336 = getelementptr inbounds nuw i8, ptr %3311, i64 9408
  %3337 = load <8 x i64>, ptr %3336, align 64, !tbaa !26, !noalias !141
  %3338 = getelementptr inbounds nuw i8, ptr %3311, i64 2624
  %3339 = load <8 x double>, ptr %3338, align 64, !tbaa !26, !noalias !141
  %3340 = fcmp ogt <8 x double> %3339, zeroinitializer
  %3341 = select <8 x i1> %3318, <8 x i1> %3340, <8 x i1> zeroinitializer
  %3342 = select <8 x i1> %3341, <8 x i64> %3337, <8 x i64> zeroinitializer
  %3343 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3342)
  %3344 = icmp eq i64 %3343, 0
  br i1 %3344, label %3356, label %3345

3345:                                             ; preds = %3334
  %3346 = getelementptr inbounds nuw i8, ptr %3311, i64 7360
  %3347 = load <8 x double>, ptr %3346, align 64, !tbaa !26, !noalias !141
  %3348 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3322, <8 x double> %3347, <8 x double> %3313)
  %3349 = fcmp ogt <8 x double> %3348, zeroinitializer
  %3350 = select <8 x i1> %3349, <8 x double> %3348, <8 x double> zeroinitializer
  %3351 = fmul <8 x double> %3303, %3350
  %3352 = icmp eq <8 x i64> %3342, zeroinitializer
  %3353 = select <8 x i1> %3352, <8 x double> %3325, <8 x double> %3351
  %3354 = select <8 x i1> %3352, <8 x double> %3335, <8 x double> %3347
  %3355 = select <8 x i1> %3352, <8 x double> %3327, <8 x double> zeroinitializer
  br label %3356

3356:                                             ; preds = %3345, %3334
  %3357 = phi <8 x double> [ %3354, %3345 ], [ %3335, %3334 ]
  %3358 = phi <8 x double> [ %3355, %3345 ], [ %3327, %3334 ]
  %3359 = phi <8 x double> [ %3353, %3345 ], [ %3325, %3334 ]
  %3360 = getelementptr inbounds nuw i8, ptr %3311, i64 6464
  store <8 x double> %3359, ptr %3360, align 64, !tbaa !26, !noalias !141
  %3361 = getelementptr inbounds nuw i8, ptr %3311, i64 6400
  store <8 x double> %3357, ptr %3361, align 64, !tbaa !26, !noalias !141
  %3362 = getelementptr inbounds nuw i8, ptr %3311, i64 6528
  store <8 x double> zeroinitializer, ptr %3362, align 64, !tbaa !26, !noalias !141
  %3363 = load i64, ptr %137, align 16, !tbaa !21, !noalias !141
  %3364 = sitofp i64 %3363 to double
  %3365 = insertelement <8 x double> poison, double %3364, i64 0
  %3366 = shufflevector <8 x double> %3365, <8 x double> poison, <8 x i32> zeroinitializer
  %3367 = getelementptr inbounds nuw i8, ptr %3311, i64 6592
  store <8 x double> %3366, ptr %3367, align 64, !tbaa !26, !noalias !141
  %3368 = getelementptr inbounds nuw i8, ptr %3311, i64 8832
  %3369 = getelementptr inbounds nuw i8, ptr %3311, i64 9088
  %3370 = load <8 x double>, ptr %3369, align 64, !tbaa !26, !noalias !144
  %3371 = fcmp ole <8 x double> %3234, %3370
  %3372 = getelementptr inbounds nuw i8, ptr %3311, i64 9152
  %3373 = load <8 x double>, ptr %3372, align 64, !tbaa !26, !noalias !144
  %3374 = fcmp oge <8 x double> %3234, %3373
  %3375 = or <8 x i1> %3371, %3374
  %3376 = bitcast <8 x i1> %3375 to i8
  %3377 = icmp eq i8 %3376, 0
  br i1 %3377, label %3378, label %3381

3378:                                             ; preds = %3356
  %3379 = getelementptr inbounds nuw i8, ptr %3311, i64 8960
  %3380 = load <8 x double>, ptr %3379, align 64, !tbaa !26, !noalias !144
  br label %3553

3381:                                             ; preds = %3356
  %3382 = load i64, ptr %137, align 16, !tbaa !21, !noalias !147
  %3383 = sitofp i64 %3382 to double
  %3384 = insertelement <8 x double> poison, double %3383, i64 0
  %3385 = shufflevector <8 x double> %3384, <8 x double> poison, <8 x i32> zeroinitializer
  %3386 = getelementptr inbounds nuw i8, ptr %3311, i64 6016
  %3387 = load <8 x double>, ptr %3386, align 64, !tbaa !26, !noalias !147
  %3388 = getelementptr inbounds nuw i8, ptr %3311, i64 4160
  %3389 = load <8 x double>, ptr %3388, align 64, !tbaa !26, !noalias !147
  %3390 = getelementptr inbounds nuw i8, ptr %3311, i64 1920
  %3391 = load <8 x double>, ptr %3390, align 64, !tbaa !26, !noalias !147
  %3392 = fsub <8 x double> %3389, %3391
  %3393 = getelementptr inbounds nuw i8, ptr %3311, i64 8064
  %3394 = load <8 x double>, ptr %3393, align 64, !tbaa !26, !noalias !147
  %3395 = fneg <8 x double> %3392
  %3396 = fmul <8 x double> %3387, %3395
  %3397 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3394, <8 x double> splat (double 2.000000e+00), <8 x double> %3396)
  %3398 = getelementptr inbounds nuw i8, ptr %3311, i64 6080
  %3399 = load <8 x double>, ptr %3398, align 64, !tbaa !26, !noalias !150
  %3400 = getelementptr inbounds nuw i8, ptr %3311, i64 5056
  %3401 = load <8 x double>, ptr %3400, align 64, !tbaa !26, !noalias !150
  %3402 = fsub <8 x double> %3401, %3391
  %3403 = fmul <8 x double> %3399, %3402
  %3404 = getelementptr inbounds nuw i8, ptr %3311, i64 6144
  %3405 = load <8 x double>, ptr %3404, align 64, !tbaa !26, !noalias !150
  %3406 = getelementptr inbounds nuw i8, ptr %3311, i64 5952
  %3407 = load <8 x double>, ptr %3406, align 64, !tbaa !26, !noalias !150
  %3408 = fsub <8 x double> %3407, %3391
  %3409 = fmul <8 x double> %3405, %3408
  %3410 = getelementptr inbounds nuw i8, ptr %3311, i64 6784
  %3411 = load <8 x double>, ptr %3410, align 64, !tbaa !26, !noalias !147
  %3412 = getelementptr inbounds nuw i8, ptr %3311, i64 6848
  %3413 = load <8 x double>, ptr %3412, align 64, !tbaa !26, !noalias !147
  %3414 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3411, <8 x double> %3234, <8 x double> %3413)
  %3415 = fmul <8 x double> %3411, splat (double 1.000000e-09)
  %3416 = icmp sgt i64 %3382, 0
  br i1 %3416, label %3417, label %3523

3417:                                             ; preds = %3381
  %3418 = sext <8 x i1> %3375 to <8 x i64>
  %3419 = getelementptr inbounds nuw i8, ptr %3311, i64 9584
  %3420 = load ptr, ptr %3419, align 16, !tbaa !90, !noalias !147
  %3421 = getelementptr inbounds nuw i8, ptr %3311, i64 9592
  %3422 = load ptr, ptr %3421, align 8, !tbaa !91, !noalias !147
  %3423 = getelementptr inbounds nuw i8, ptr %3311, i64 9472
  %3424 = load i64, ptr %3423, align 64, !tbaa !31, !noalias !147
  %3425 = getelementptr inbounds nuw i8, ptr %3311, i64 9600
  %3426 = getelementptr inbounds nuw i8, ptr %3311, i64 9616
  %3427 = getelementptr inbounds nuw i8, ptr %3311, i64 9552
  %3428 = getelementptr inbounds nuw i8, ptr %3311, i64 9560
  %3429 = getelementptr inbounds nuw i8, ptr %3311, i64 7040
  %3430 = getelementptr inbounds nuw i8, ptr %3311, i64 7104
  br label %3431

3431:                                             ; preds = %3417, %3501
  %3432 = phi <8 x i64> [ %3418, %3417 ], [ %3451, %3501 ]
  %3433 = phi i64 [ %3382, %3417 ], [ %3441, %3501 ]
  %3434 = phi <8 x double> [ splat (double 1.000000e+18), %3417 ], [ %3513, %3501 ]
  %3435 = phi <8 x double> [ zeroinitializer, %3417 ], [ %3517, %3501 ]
  %3436 = phi <8 x double> [ splat (double 1.000000e+18), %3417 ], [ %3476, %3501 ]
  %3437 = phi <8 x double> [ splat (double 1.000000e+00), %3417 ], [ %3475, %3501 ]
  %3438 = phi <8 x double> [ %3385, %3417 ], [ %3521, %3501 ]
  %3439 = phi <8 x double> [ zeroinitializer, %3417 ], [ %3510, %3501 ]
  %3440 = phi <8 x double> [ zeroinitializer, %3417 ], [ %3508, %3501 ]
  %3441 = add nsw i64 %3433, -1
  %3442 = getelementptr inbounds nuw <8 x double>, ptr %3420, i64 %3441
  %3443 = load <8 x double>, ptr %3442, align 64, !tbaa !26, !noalias !147
  %3444 = getelementptr inbounds nuw <8 x double>, ptr %3422, i64 %3441
  %3445 = load <8 x double>, ptr %3444, align 64, !tbaa !26, !noalias !147
  %3446 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3445, <8 x double> %3414, <8 x double> %3443)
  %3447 = fsub <8 x double> %3446, %3414
  %3448 = fcmp ogt <8 x double> %3447, %3415
  %3449 = select <8 x i1> %3448, <8 x i64> %3432, <8 x i64> zeroinitializer
  %3450 = icmp sgt i64 %3433, %3424
  %3451 = select i1 %3450, <8 x i64> %3449, <8 x i64> zeroinitializer
  %3452 = icmp slt i64 %3433, %3382
  br i1 %3452, label %3453, label %3465

3453:                                             ; preds = %3431
  %3454 = load ptr, ptr %3425, align 64, !tbaa !89, !noalias !147
  %3455 = getelementptr inbounds nuw <8 x double>, ptr %3454, i64 %3433
  %3456 = load <8 x double>, ptr %3455, align 64, !tbaa !26, !noalias !147
  %3457 = fmul <8 x double> %3447, %3456
  %3458 = icmp eq <8 x i64> %3451, %3432
  %3459 = select <8 x i1> %3458, <8 x double> zeroinitializer, <8 x double> %3457
  %3460 = fadd <8 x double> %3440, %3459
  %3461 = fadd <8 x double> %3445, splat (double -1.000000e+00)
  %3462 = fmul <8 x double> %3461, %3456
  %3463 = select <8 x i1> %3458, <8 x double> zeroinitializer, <8 x double> %3462
  %3464 = fadd <8 x double> %3439, %3463
  br label %3465

3465:                                             ; preds = %3453, %3431
  %3466 = phi <8 x double> [ %3460, %3453 ], [ %3440, %3431 ]
  %3467 = phi <8 x double> [ %3464, %3453 ], [ %3439, %3431 ]
  br i1 %3450, label %3468, label %3474

3468:                                             ; preds = %3465
  %3469 = fneg <8 x double> %3447
  %3470 = icmp eq <8 x i64> %3451, %3432
  %3471 = select <8 x i1> %3470, <8 x double> %3436, <8 x double> %3469
  %3472 = fsub <8 x double> splat (double 1.000000e+00), %3445
  %3473 = select <8 x i1> %3470, <8 x double> %3437, <8 x double> %3472
  br label %3474

3474:                                             ; preds = %3468, %3465
  %3475 = phi <8 x double> [ %3473, %3468 ], [ %3437, %3465 ]
  %3476 = phi <8 x double> [ %3471, %3468 ], [ %3436, %3465 ]
  %3477 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3451)
  %3478 = icmp eq i64 %3477, 0
  br i1 %3478, label %3523, label %3479

3479:                                             ; preds = %3474
  %3480 = load ptr, ptr %3426, align 16, !tbaa !51, !noalias !147
  %3481 = getelementptr inbounds nuw <8 x double>, ptr %3480, i64 %3441
  %3482 = load <8 x double>, ptr %3481, align 64, !tbaa !26, !noalias !147
  %3483 = fmul <8 x double> %3397, %3482
  %3484 = load ptr, ptr %3427, align 16, !tbaa !50, !noalias !147
  %3485 = getelementptr inbounds nuw <8 x double>, ptr %3484, i64 %3441
  %3486 = load <8 x double>, ptr %3485, align 64, !tbaa !26, !noalias !147
  %3487 = load ptr, ptr %3428, align 8, !tbaa !67, !noalias !147
  %3488 = getelementptr inbounds nuw <8 x double>, ptr %3487, i64 %3441
  %3489 = load <8 x double>, ptr %3488, align 64, !tbaa !26, !noalias !147
  %3490 = fmul <8 x double> %3409, %3489
  %3491 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3403, <8 x double> %3486, <8 x double> %3490)
  %3492 = fmul <8 x double> %3482, %3491
  %3493 = icmp ne i64 %3433, 1
  %3494 = icmp eq i64 %3441, %3424
  %3495 = select i1 %3493, i1 %3494, i1 false
  br i1 %3495, label %3496, label %3501

3496:                                             ; preds = %3479
  %3497 = load <8 x double>, ptr %3429, align 64, !tbaa !26, !noalias !147
  %3498 = fadd <8 x double> %3483, %3497
  %3499 = load <8 x double>, ptr %3430, align 64, !tbaa !26, !noalias !147
  %3500 = fadd <8 x double> %3492, %3499
  br label %3501

3501:                                             ; preds = %3479, %3496
  %3502 = phi <8 x double> [ %3498, %3496 ], [ %3483, %3479 ]
  %3503 = phi <8 x double> [ %3500, %3496 ], [ %3492, %3479 ]
  %3504 = fneg <8 x double> %3503
  %3505 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3502, <8 x double> %3414, <8 x double> %3504)
  %3506 = icmp eq <8 x i64> %3451, zeroinitializer
  %3507 = select <8 x i1> %3506, <8 x double> zeroinitializer, <8 x double> %3505
  %3508 = fadd <8 x double> %3466, %3507
  %3509 = select <8 x i1> %3506, <8 x double> zeroinitializer, <8 x double> %3502
  %3510 = fadd <8 x double> %3467, %3509
  %3511 = fcmp olt <8 x double> %3434, %3447
  %3512 = select <8 x i1> %3506, <8 x i1> splat (i1 true), <8 x i1> %3511
  %3513 = select <8 x i1> %3512, <8 x double> %3434, <8 x double> %3447
  %3514 = fsub <8 x double> splat (double 1.000000e+00), %3445
  %3515 = fcmp ogt <8 x double> %3435, %3514
  %3516 = select <8 x i1> %3506, <8 x i1> splat (i1 true), <8 x i1> %3515
  %3517 = select <8 x i1> %3516, <8 x double> %3435, <8 x double> %3514
  %3518 = uitofp nneg i64 %3441 to double
  %3519 = insertelement <8 x double> poison, double %3518, i64 0
  %3520 = shufflevector <8 x double> %3519, <8 x double> poison, <8 x i32> zeroinitializer
  %3521 = select <8 x i1> %3506, <8 x double> %3438, <8 x double> %3520
  %3522 = icmp samesign ugt i64 %3433, 1
  br i1 %3522, label %3431, label %3523, !llvm.loop !153

3523:                                             ; preds = %3501, %3474, %3381
  %3524 = phi <8 x double> [ %3385, %3381 ], [ %3438, %3474 ], [ %3521, %3501 ]
  %3525 = phi <8 x double> [ zeroinitializer, %3381 ], [ %3435, %3474 ], [ %3517, %3501 ]
  %3526 = phi <8 x double> [ splat (double 1.000000e+18), %3381 ], [ %3434, %3474 ], [ %3513, %3501 ]
  %3527 = phi <8 x double> [ zeroinitializer, %3381 ], [ %3466, %3474 ], [ %3508, %3501 ]
  %3528 = phi <8 x double> [ zeroinitializer, %3381 ], [ %3467, %3474 ], [ %3510, %3501 ]
  %3529 = phi <8 x double> [ splat (double 1.000000e+00), %3381 ], [ %3475, %3474 ], [ %3475, %3501 ]
  %3530 = phi <8 x double> [ splat (double 1.000000e+18), %3381 ], [ %3476, %3474 ], [ %3476, %3501 ]
  %3531 = fmul <8 x double> %3411, %3528
  %3532 = fmul <8 x double> %3411, %3529
  %3533 = fdiv <8 x double> %3530, %3532
  %3534 = fsub <8 x double> %3234, %3533
  %3535 = fcmp ogt <8 x double> %3525, splat (double 1.000000e-09)
  %3536 = select <8 x i1> %3535, <8 x double> %3525, <8 x double> splat (double 1.000000e-09)
  %3537 = fmul <8 x double> %3411, %3536
  %3538 = fdiv <8 x double> %3526, %3537
  %3539 = fadd <8 x double> %3234, %3538
  %3540 = load <8 x double>, ptr %3368, align 64, !tbaa !26, !noalias !144
  %3541 = select <8 x i1> %3375, <8 x double> %3527, <8 x double> %3540
  store <8 x double> %3541, ptr %3368, align 64, !tbaa !26, !noalias !144
  %3542 = getelementptr inbounds nuw i8, ptr %3311, i64 8896
  %3543 = load <8 x double>, ptr %3542, align 64, !tbaa !26, !noalias !144
  %3544 = select <8 x i1> %3375, <8 x double> %3531, <8 x double> %3543
  store <8 x double> %3544, ptr %3542, align 64, !tbaa !26, !noalias !144
  %3545 = getelementptr inbounds nuw i8, ptr %3311, i64 8960
  %3546 = load <8 x double>, ptr %3545, align 64, !tbaa !26, !noalias !144
  %3547 = select <8 x i1> %3375, <8 x double> %3524, <8 x double> %3546
  store <8 x double> %3547, ptr %3545, align 64, !tbaa !26, !noalias !144
  %3548 = getelementptr inbounds nuw i8, ptr %3311, i64 9024
  %3549 = load <8 x double>, ptr %3548, align 64, !tbaa !26, !noalias !144
  %3550 = select <8 x i1> %3375, <8 x double> %3234, <8 x double> %3549
  store <8 x double> %3550, ptr %3548, align 64, !tbaa !26, !noalias !144
  %3551 = select <8 x i1> %3375, <8 x double> %3534, <8 x double> %3370
  store <8 x double> %3551, ptr %3369, align 64, !tbaa !26, !noalias !144
  %3552 = select <8 x i1> %3375, <8 x double> %3539, <8 x double> %3373
  store <8 x double> %3552, ptr %3372, align 64, !tbaa !26, !noalias !144
  br label %3553

3553:                                             ; preds = %3378, %3523
  %3554 = phi <8 x double> [ %3380, %3378 ], [ %3547, %3523 ]
  %3555 = load i64, ptr %137, align 16, !tbaa !21, !noalias !141
  %3556 = sitofp i64 %3555 to double
  %3557 = insertelement <8 x double> poison, double %3556, i64 0
  %3558 = shufflevector <8 x double> %3557, <8 x double> poison, <8 x i32> zeroinitializer
  %3559 = fcmp olt <8 x double> %3554, %3558
  %3560 = and <8 x i1> %3318, %3559
  %3561 = bitcast <8 x i1> %3560 to i8
  %3562 = icmp eq i8 %3561, 0
  br i1 %3562, label %3627, label %3563

3563:                                             ; preds = %3553
  %3564 = getelementptr inbounds nuw i8, ptr %3311, i64 8896
  %3565 = load <8 x double>, ptr %3564, align 64, !tbaa !26, !noalias !144
  %3566 = getelementptr inbounds nuw i8, ptr %3311, i64 9024
  %3567 = load <8 x double>, ptr %3566, align 64, !tbaa !26, !noalias !144
  %3568 = fsub <8 x double> %3234, %3567
  %3569 = load <8 x double>, ptr %3368, align 64, !tbaa !26, !noalias !144
  %3570 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3565, <8 x double> %3568, <8 x double> %3569)
  %3571 = getelementptr inbounds nuw i8, ptr %3311, i64 7488
  %3572 = load <8 x double>, ptr %3571, align 64, !tbaa !26, !noalias !141
  %3573 = getelementptr inbounds nuw i8, ptr %3311, i64 6336
  %3574 = load <8 x double>, ptr %3573, align 64, !tbaa !26, !noalias !141
  %3575 = getelementptr inbounds nuw i8, ptr %3311, i64 8384
  %3576 = load <8 x double>, ptr %3575, align 64, !tbaa !26, !noalias !141
  %3577 = fneg <8 x double> %3576
  %3578 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3572, <8 x double> %3574, <8 x double> %3577)
  %3579 = getelementptr inbounds nuw i8, ptr %3311, i64 8320
  %3580 = load <8 x double>, ptr %3579, align 64, !tbaa !26, !noalias !141
  %3581 = fadd <8 x double> %3572, %3580
  %3582 = getelementptr inbounds nuw i8, ptr %3311, i64 9280
  %3583 = load <8 x i64>, ptr %3582, align 64, !tbaa !26, !noalias !141
  %3584 = getelementptr inbounds nuw i8, ptr %3311, i64 9672
  %3585 = load ptr, ptr %3584, align 8, !tbaa !132, !noalias !141
  %3586 = load <8 x double>, ptr %3585, align 64, !tbaa !26, !noalias !141
  %3587 = fmul <8 x double> %3572, %3586
  %3588 = icmp eq <8 x i64> %3583, zeroinitializer
  %3589 = select <8 x i1> %3588, <8 x double> %3578, <8 x double> %3587
  %3590 = getelementptr inbounds nuw i8, ptr %3311, i64 9680
  %3591 = load ptr, ptr %3590, align 16, !tbaa !133, !noalias !141
  %3592 = load <8 x double>, ptr %3591, align 64, !tbaa !26, !noalias !141
  %3593 = fsub <8 x double> splat (double 1.000000e+00), %3592
  %3594 = fmul <8 x double> %3572, %3593
  %3595 = select <8 x i1> %3588, <8 x double> %3581, <8 x double> %3594
  %3596 = fneg <8 x double> %3595
  %3597 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3596, <8 x double> %3234, <8 x double> %3589)
  %3598 = fcmp ogt <8 x double> %3570, zeroinitializer
  %3599 = fcmp oge <8 x double> %3597, zeroinitializer
  %3600 = and <8 x i1> %3598, %3599
  %3601 = and <8 x i1> %3560, %3600
  %3602 = sext <8 x i1> %3601 to <8 x i64>
  %3603 = xor <8 x i64> %3602, splat (i64 -1)
  %3604 = fadd <8 x double> %3570, %3597
  %3605 = fcmp ogt <8 x double> %3604, zeroinitializer
  %3606 = and <8 x i1> %3560, %3605
  %3607 = select <8 x i1> %3606, <8 x i64> %3603, <8 x i64> zeroinitializer
  %3608 = or <8 x i64> %3607, %3602
  %3609 = fmul <8 x double> %3303, %3597
  %3610 = select <8 x i1> %3601, <8 x double> %3609, <8 x double> zeroinitializer
  %3611 = icmp eq <8 x i64> %3608, zeroinitializer
  %3612 = select <8 x i1> %3611, <8 x double> %3359, <8 x double> %3610
  store <8 x double> %3612, ptr %3360, align 64, !tbaa !26, !noalias !141
  %3613 = select <8 x i1> %3611, <8 x double> %3357, <8 x double> %3234
  store <8 x double> %3613, ptr %3361, align 64, !tbaa !26, !noalias !141
  %3614 = fsub <8 x double> %3565, %3595
  %3615 = fmul <8 x double> %3303, %3614
  %3616 = select <8 x i1> %3611, <8 x double> %3358, <8 x double> %3615
  %3617 = fmul <8 x double> %3303, %3570
  %3618 = fmul <8 x double> %3303, %3604
  %3619 = icmp eq <8 x i64> %3607, zeroinitializer
  %3620 = select <8 x i1> %3619, <8 x double> zeroinitializer, <8 x double> %3618
  %3621 = select <8 x i1> %3601, <8 x double> %3617, <8 x double> %3620
  store <8 x double> %3621, ptr %3362, align 64, !tbaa !26, !noalias !141
  %3622 = load i64, ptr %137, align 16, !tbaa !21, !noalias !141
  %3623 = sitofp i64 %3622 to double
  %3624 = insertelement <8 x double> poison, double %3623, i64 0
  %3625 = shufflevector <8 x double> %3624, <8 x double> poison, <8 x i32> zeroinitializer
  %3626 = select <8 x i1> %3611, <8 x double> %3625, <8 x double> %3554
  store <8 x double> %3626, ptr %3367, align 64, !tbaa !26, !noalias !141
  br label %3627

3627:                                             ; preds = %3553, %3563
  %3628 = phi <8 x double> [ %3621, %3563 ], [ zeroinitializer, %3553 ]
  %3629 = phi <8 x double> [ %3612, %3563 ], [ %3359, %3553 ]
  %3630 = phi <8 x double> [ %3616, %3563 ], [ %3358, %3553 ]
  %3631 = getelementptr inbounds nuw i8, ptr %3311, i64 128
  %3632 = load <8 x double>, ptr %3631, align 64, !tbaa !26, !noalias !141
  %3633 = fadd <8 x double> %3629, %3628
  %3634 = fmul <8 x double> %3632, %3633
  %3635 = fmul <8 x double> %3630, %3632
  %3636 = fadd <8 x double> %3308, %3634
  %3637 = fadd <8 x double> %3307, %3635
  %3638 = add nuw nsw i64 %3309, 1
  %3639 = load i64, ptr %175, align 8, !tbaa !20, !noalias !141
  %3640 = icmp slt i64 %3638, %3639
  br i1 %3640, label %3306, label %3641, !llvm.loop !154

3641:                                             ; preds = %3627, %3198
  %3642 = phi i64 [ %3304, %3198 ], [ %3639, %3627 ]
  %3643 = phi <8 x double> [ zeroinitializer, %3198 ], [ %3636, %3627 ]
  %3644 = phi <8 x double> [ zeroinitializer, %3198 ], [ %3637, %3627 ]
  %3645 = fdiv <8 x double> %3237, splat (double 4.615260e+02)
  %3646 = fadd <8 x double> %3195, %3645
  %3647 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %3648 = fdiv <8 x double> %3646, %3647
  %3649 = fmul <8 x double> %3647, %3648
  %3650 = fdiv <8 x double> %3205, %3649
  %3651 = load <8 x double>, ptr %198, align 64, !tbaa !26, !noalias !155
  %3652 = fsub <8 x double> %3205, %3651
  %3653 = load <8 x double>, ptr %211, align 64, !tbaa !26, !noalias !155
  %3654 = fsub <8 x double> %3652, %3653
  %3655 = load <8 x double>, ptr %213, align 64, !tbaa !26, !noalias !155
  %3656 = load <8 x double>, ptr %157, align 64, !tbaa !26, !noalias !155
  %3657 = fcmp une <8 x double> %3656, splat (double 2.000000e+00)
  %3658 = load <8 x double>, ptr %214, align 64, !tbaa !26, !noalias !155
  %3659 = select <8 x i1> %3657, <8 x double> zeroinitializer, <8 x double> %3658
  %3660 = fadd <8 x double> %3655, %3659
  %3661 = fcmp ogt <8 x double> %3652, zeroinitializer
  %3662 = fcmp ogt <8 x double> %3660, zeroinitializer
  %3663 = and <8 x i1> %3661, %3662
  %3664 = bitcast <8 x i1> %3663 to i8
  %3665 = icmp eq i8 %3664, 0
  br i1 %3665, label %3682, label %3666

3666:                                             ; preds = %3641
  %3667 = fmul <8 x double> %3648, splat (double 2.000000e+00)
  %3668 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3667)
  %3669 = fmul <8 x double> %3668, %3660
  %3670 = fadd <8 x double> %3652, splat (double 2.000000e+02)
  %3671 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3670)
  %3672 = select <8 x i1> %3661, <8 x double> %3671, <8 x double> splat (double 0x402C48C6001F0AC0)
  %3673 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3652, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3674 = fmul <8 x double> %3673, %3669
  %3675 = fmul <8 x double> %3672, %3672
  %3676 = fmul <8 x double> %3672, %3675
  %3677 = fdiv <8 x double> %3674, %3676
  %3678 = fmul <8 x double> %3652, %3669
  %3679 = fdiv <8 x double> %3678, %3672
  %3680 = select <8 x i1> %3663, <8 x double> %3679, <8 x double> zeroinitializer
  %3681 = select <8 x i1> %3663, <8 x double> %3677, <8 x double> zeroinitializer
  br label %3682

3682:                                             ; preds = %3641, %3666
  %3683 = phi <8 x double> [ %3680, %3666 ], [ zeroinitializer, %3641 ]
  %3684 = phi <8 x double> [ %3681, %3666 ], [ zeroinitializer, %3641 ]
  %3685 = fcmp ule <8 x double> %3654, zeroinitializer
  %3686 = load <8 x double>, ptr %215, align 64, !tbaa !26, !noalias !155
  %3687 = fmul <8 x double> %3654, %3686
  %3688 = select <8 x i1> %3685, <8 x double> zeroinitializer, <8 x double> %3687
  %3689 = fadd <8 x double> %3683, %3688
  %3690 = select <8 x i1> %3685, <8 x double> zeroinitializer, <8 x double> %3686
  %3691 = fadd <8 x double> %3684, %3690
  %3692 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %3693 = fsub <8 x double> %3651, %3205
  %3694 = fcmp ogt <8 x double> %3693, zeroinitializer
  %3695 = fcmp ogt <8 x double> %3692, zeroinitializer
  %3696 = and <8 x i1> %3694, %3695
  %3697 = bitcast <8 x i1> %3696 to i8
  %3698 = icmp eq i8 %3697, 0
  br i1 %3698, label %3715, label %3699

3699:                                             ; preds = %3682
  %3700 = fmul <8 x double> %3197, %3692
  %3701 = fadd <8 x double> %3693, splat (double 2.000000e+02)
  %3702 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3701)
  %3703 = select <8 x i1> %3694, <8 x double> %3702, <8 x double> splat (double 0x402C48C6001F0AC0)
  %3704 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3693, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3705 = fmul <8 x double> %3704, %3700
  %3706 = fmul <8 x double> %3703, %3703
  %3707 = fmul <8 x double> %3703, %3706
  %3708 = fdiv <8 x double> %3705, %3707
  %3709 = fmul <8 x double> %3693, %3700
  %3710 = fdiv <8 x double> %3709, %3703
  %3711 = fmul <8 x double> %3710, splat (double -2.870530e+02)
  %3712 = select <8 x i1> %3696, <8 x double> %3711, <8 x double> splat (double -0.000000e+00)
  %3713 = fmul <8 x double> %3708, splat (double 2.870530e+02)
  %3714 = select <8 x i1> %3696, <8 x double> %3713, <8 x double> zeroinitializer
  br label %3715

3715:                                             ; preds = %3682, %3699
  %3716 = phi <8 x double> [ %3712, %3699 ], [ splat (double -0.000000e+00), %3682 ]
  %3717 = phi <8 x double> [ %3714, %3699 ], [ zeroinitializer, %3682 ]
  %3718 = fmul <8 x double> %3238, splat (double 4.615260e+02)
  %3719 = fmul <8 x double> %3238, %3718
  %3720 = fmul <8 x double> %3205, %3302
  %3721 = fdiv <8 x double> %3719, %3720
  %3722 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %3723 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3722, <8 x double> %3205, <8 x double> %3179)
  %3724 = fsub <8 x double> %3643, %3300
  %3725 = fmul <8 x double> %3724, splat (double -4.615260e+02)
  %3726 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3182, <8 x double> %3723, <8 x double> %3725)
  %3727 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3650, <8 x double> %3689, <8 x double> %3716)
  %3728 = fadd <8 x double> %3727, %3726
  %3729 = fneg <8 x double> %3285
  %3730 = fmul <8 x double> %3292, %3729
  %3731 = fdiv <8 x double> %3730, %3293
  %3732 = fmul <8 x double> %3731, %3291
  %3733 = select <8 x i1> %3286, <8 x double> splat (double -0.000000e+00), <8 x double> %3732
  %3734 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3644, <8 x double> %3721, <8 x double> %3733)
  %3735 = fmul <8 x double> %3734, splat (double -4.615260e+02)
  %3736 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3182, <8 x double> %3722, <8 x double> %3735)
  %3737 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3650, <8 x double> %3691, <8 x double> %3717)
  %3738 = fadd <8 x double> %3737, %3736
  %3739 = fcmp ule <8 x double> %3728, zeroinitializer
  %3740 = fcmp olt <8 x double> %3202, %3205
  %3741 = select <8 x i1> %3739, <8 x i1> splat (i1 true), <8 x i1> %3740
  %3742 = select <8 x i1> %3741, <8 x double> %3202, <8 x double> %3205
  %3743 = fcmp ogt <8 x double> %3201, %3205
  %3744 = select <8 x i1> %3743, <8 x double> %3201, <8 x double> %3205
  %3745 = select <8 x i1> %3739, <8 x double> %3744, <8 x double> %3201
  %3746 = fdiv <8 x double> %3728, %3738
  %3747 = fsub <8 x double> %3205, %3746
  %3748 = fsub <8 x double> %3747, %3205
  %3749 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3748)
  %3750 = fcmp uge <8 x double> %3749, splat (double 2.000000e-01)
  %3751 = fcmp uge <8 x double> %3745, %3747
  %3752 = fcmp uge <8 x double> %3747, %3742
  %3753 = or <8 x i1> %3751, %3752
  %3754 = and <8 x i1> %3750, %3753
  %3755 = fadd <8 x double> %3745, %3742
  %3756 = fmul <8 x double> %3755, splat (double 5.000000e-01)
  %3757 = select <8 x i1> %3754, <8 x double> %3756, <8 x double> %3747
  %3758 = fsub <8 x double> %3757, %3205
  %3759 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3758)
  %3760 = fcmp oge <8 x double> %3759, splat (double 2.000000e-01)
  %3761 = select <8 x i1> %3760, <8 x i64> %3203, <8 x i64> zeroinitializer
  %3762 = icmp eq <8 x i64> %3761, zeroinitializer
  %3763 = select <8 x i1> %3762, <8 x double> %3205, <8 x double> %3757
  %3764 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3761)
  %3765 = icmp ne i64 %3764, 0
  %3766 = add nuw nsw i32 %3204, 1
  %3767 = icmp samesign ult i32 %3204, 59
  %3768 = select i1 %3765, i1 %3767, i1 false
  br i1 %3768, label %3198, label %3769, !llvm.loop !158

3769:                                             ; preds = %3715
  %3770 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3771 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %3772 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3773 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %3774 = fmul <8 x double> %3772, %3773
  %3775 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3770, <8 x double> %3771, <8 x double> %3774)
  %3776 = fsub <8 x double> %3651, %3763
  %3777 = fcmp ogt <8 x double> %3776, zeroinitializer
  %3778 = and <8 x i1> %3695, %3777
  %3779 = bitcast <8 x i1> %3778 to i8
  %3780 = icmp eq i8 %3779, 0
  br i1 %3780, label %3790, label %3781

3781:                                             ; preds = %3769
  %3782 = fmul <8 x double> %3197, %3692
  %3783 = fadd <8 x double> %3776, splat (double 2.000000e+02)
  %3784 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3783)
  %3785 = select <8 x i1> %3777, <8 x double> %3784, <8 x double> splat (double 0x402C48C6001F0AC0)
  %3786 = fmul <8 x double> %3782, %3776
  %3787 = fdiv <8 x double> %3786, %3785
  %3788 = fmul <8 x double> %3787, splat (double 2.870530e+02)
  %3789 = select <8 x i1> %3778, <8 x double> %3788, <8 x double> zeroinitializer
  br label %3790

3790:                                             ; preds = %3769, %3781
  %3791 = phi <8 x double> [ %3789, %3781 ], [ zeroinitializer, %3769 ]
  %3792 = fdiv <8 x double> %3791, %3182
  %3793 = fsub <8 x double> %3792, %3775
  %3794 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %3795 = fmul <8 x double> %3648, %3794
  %3796 = fdiv <8 x double> %3689, %3795
  %3797 = fadd <8 x double> %3722, %3796
  %3798 = fdiv <8 x double> %3793, %3797
  %3799 = fcmp ogt <8 x double> %3798, zeroinitializer
  %3800 = select <8 x i1> %3799, <8 x double> %3798, <8 x double> zeroinitializer
  %3801 = fcmp olt <8 x double> %3800, %3763
  %3802 = select <8 x i1> %3801, <8 x double> %3800, <8 x double> %3763
  %3803 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %3804 = select <8 x i1> %3193, <8 x double> %3803, <8 x double> %3802
  store <8 x double> %3804, ptr %205, align 64, !tbaa !26
  %3805 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %3806 = select <8 x i1> %3193, <8 x double> %3170, <8 x double> %3805
  store <8 x double> %3806, ptr %206, align 64, !tbaa !26
  store <8 x double> %3763, ptr %199, align 64, !tbaa !26
  store <8 x double> %3234, ptr %219, align 64, !tbaa !26
  br label %4128

3807:                                             ; preds = %3149
  store <8 x double> %3151, ptr %219, align 64, !tbaa !26
  %3808 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3151, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3809 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3151, <8 x double> %3808, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3810 = fdiv <8 x double> splat (double 1.000000e+00), %3809
  %3811 = icmp sgt i64 %2899, 0
  br i1 %3811, label %3812, label %4131

3812:                                             ; preds = %3807, %4124
  %3813 = phi i64 [ %4125, %4124 ], [ 0, %3807 ]
  %3814 = load ptr, ptr %148, align 8, !tbaa !28, !noalias !159
  %3815 = getelementptr inbounds nuw %struct.Piece, ptr %3814, i64 %3813
  %3816 = getelementptr inbounds nuw i8, ptr %3815, i64 6656
  %3817 = load <8 x double>, ptr %3816, align 64, !tbaa !26, !noalias !159
  %3818 = getelementptr inbounds nuw i8, ptr %3815, i64 6720
  %3819 = load <8 x double>, ptr %3818, align 64, !tbaa !26, !noalias !159
  %3820 = getelementptr inbounds nuw i8, ptr %3815, i64 8576
  %3821 = load <8 x double>, ptr %3820, align 64, !tbaa !26, !noalias !159
  %3822 = fcmp ule <8 x double> %3821, splat (double 1.000000e+00)
  %3823 = fmul <8 x double> %3151, %3819
  %3824 = fcmp ogt <8 x double> %3817, %3823
  %3825 = and <8 x i1> %3822, %3824
  %3826 = fneg <8 x double> %3819
  %3827 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3826, <8 x double> %3151, <8 x double> %3817)
  %3828 = fmul <8 x double> %3810, %3827
  %3829 = select <8 x i1> %3825, <8 x double> %3828, <8 x double> zeroinitializer
  %3830 = xor <8 x i1> %3825, splat (i1 true)
  %3831 = bitcast <8 x i1> %3830 to i8
  %3832 = icmp eq i8 %3831, 0
  br i1 %3832, label %3836, label %3833

3833:                                             ; preds = %3812
  %3834 = fdiv <8 x double> %3817, %3819
  %3835 = select <8 x i1> %3825, <8 x double> %3151, <8 x double> %3834
  br label %3836

3836:                                             ; preds = %3833, %3812
  %3837 = phi <8 x double> [ %3835, %3833 ], [ %3151, %3812 ]
  %3838 = getelementptr inbounds nuw i8, ptr %3815, i64 9408
  %3839 = load <8 x i64>, ptr %3838, align 64, !tbaa !26, !noalias !159
  %3840 = getelementptr inbounds nuw i8, ptr %3815, i64 2624
  %3841 = load <8 x double>, ptr %3840, align 64, !tbaa !26, !noalias !159
  %3842 = fcmp ogt <8 x double> %3841, zeroinitializer
  %3843 = select <8 x i1> %3822, <8 x i1> %3842, <8 x i1> zeroinitializer
  %3844 = select <8 x i1> %3843, <8 x i64> %3839, <8 x i64> zeroinitializer
  %3845 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3844)
  %3846 = icmp eq i64 %3845, 0
  br i1 %3846, label %3857, label %3847

3847:                                             ; preds = %3836
  %3848 = getelementptr inbounds nuw i8, ptr %3815, i64 7360
  %3849 = load <8 x double>, ptr %3848, align 64, !tbaa !26, !noalias !159
  %3850 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3826, <8 x double> %3849, <8 x double> %3817)
  %3851 = fcmp ogt <8 x double> %3850, zeroinitializer
  %3852 = select <8 x i1> %3851, <8 x double> %3850, <8 x double> zeroinitializer
  %3853 = fmul <8 x double> %3810, %3852
  %3854 = icmp eq <8 x i64> %3844, zeroinitializer
  %3855 = select <8 x i1> %3854, <8 x double> %3829, <8 x double> %3853
  %3856 = select <8 x i1> %3854, <8 x double> %3837, <8 x double> %3849
  br label %3857

3857:                                             ; preds = %3847, %3836
  %3858 = phi <8 x double> [ %3856, %3847 ], [ %3837, %3836 ]
  %3859 = phi <8 x double> [ %3855, %3847 ], [ %3829, %3836 ]
  %3860 = getelementptr inbounds nuw i8, ptr %3815, i64 6464
  store <8 x double> %3859, ptr %3860, align 64, !tbaa !26, !noalias !159
  %3861 = getelementptr inbounds nuw i8, ptr %3815, i64 6400
  store <8 x double> %3858, ptr %3861, align 64, !tbaa !26, !noalias !159
  %3862 = getelementptr inbounds nuw i8, ptr %3815, i64 6528
  store <8 x double> zeroinitializer, ptr %3862, align 64, !tbaa !26, !noalias !159
  %3863 = load i64, ptr %137, align 16, !tbaa !21, !noalias !159
  %3864 = sitofp i64 %3863 to double
  %3865 = insertelement <8 x double> poison, double %3864, i64 0
  %3866 = shufflevector <8 x double> %3865, <8 x double> poison, <8 x i32> zeroinitializer
  %3867 = getelementptr inbounds nuw i8, ptr %3815, i64 6592
  store <8 x double> %3866, ptr %3867, align 64, !tbaa !26, !noalias !159
  %3868 = getelementptr inbounds nuw i8, ptr %3815, i64 8832
  %3869 = getelementptr inbounds nuw i8, ptr %3815, i64 9088
  %3870 = load <8 x double>, ptr %3869, align 64, !tbaa !26, !noalias !162
  %3871 = fcmp ole <8 x double> %3151, %3870
  %3872 = getelementptr inbounds nuw i8, ptr %3815, i64 9152
  %3873 = load <8 x double>, ptr %3872, align 64, !tbaa !26, !noalias !162
  %3874 = fcmp oge <8 x double> %3151, %3873
  %3875 = or <8 x i1> %3871, %3874
  %3876 = bitcast <8 x i1> %3875 to i8
  %3877 = icmp eq i8 %3876, 0
  br i1 %3877, label %3878, label %3881

3878:                                             ; preds = %3857
  %3879 = getelementptr inbounds nuw i8, ptr %3815, i64 8960
  %3880 = load <8 x double>, ptr %3879, align 64, !tbaa !26, !noalias !162
  br label %4053

3881:                                             ; preds = %3857
  %3882 = load i64, ptr %137, align 16, !tbaa !21, !noalias !165
  %3883 = sitofp i64 %3882 to double
  %3884 = insertelement <8 x double> poison, double %3883, i64 0
  %3885 = shufflevector <8 x double> %3884, <8 x double> poison, <8 x i32> zeroinitializer
  %3886 = getelementptr inbounds nuw i8, ptr %3815, i64 6016
  %3887 = load <8 x double>, ptr %3886, align 64, !tbaa !26, !noalias !165
  %3888 = getelementptr inbounds nuw i8, ptr %3815, i64 4160
  %3889 = load <8 x double>, ptr %3888, align 64, !tbaa !26, !noalias !165
  %3890 = getelementptr inbounds nuw i8, ptr %3815, i64 1920
  %3891 = load <8 x double>, ptr %3890, align 64, !tbaa !26, !noalias !165
  %3892 = fsub <8 x double> %3889, %3891
  %3893 = getelementptr inbounds nuw i8, ptr %3815, i64 8064
  %3894 = load <8 x double>, ptr %3893, align 64, !tbaa !26, !noalias !165
  %3895 = fneg <8 x double> %3892
  %3896 = fmul <8 x double> %3887, %3895
  %3897 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3894, <8 x double> splat (double 2.000000e+00), <8 x double> %3896)
  %3898 = getelementptr inbounds nuw i8, ptr %3815, i64 6080
  %3899 = load <8 x double>, ptr %3898, align 64, !tbaa !26, !noalias !168
  %3900 = getelementptr inbounds nuw i8, ptr %3815, i64 5056
  %3901 = load <8 x double>, ptr %3900, align 64, !tbaa !26, !noalias !168
  %3902 = fsub <8 x double> %3901, %3891
  %3903 = fmul <8 x double> %3899, %3902
  %3904 = getelementptr inbounds nuw i8, ptr %3815, i64 6144
  %3905 = load <8 x double>, ptr %3904, align 64, !tbaa !26, !noalias !168
  %3906 = getelementptr inbounds nuw i8, ptr %3815, i64 5952
  %3907 = load <8 x double>, ptr %3906, align 64, !tbaa !26, !noalias !168
  %3908 = fsub <8 x double> %3907, %3891
  %3909 = fmul <8 x double> %3905, %3908
  %3910 = getelementptr inbounds nuw i8, ptr %3815, i64 6784
  %3911 = load <8 x double>, ptr %3910, align 64, !tbaa !26, !noalias !165
  %3912 = getelementptr inbounds nuw i8, ptr %3815, i64 6848
  %3913 = load <8 x double>, ptr %3912, align 64, !tbaa !26, !noalias !165
  %3914 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3911, <8 x double> %3151, <8 x double> %3913)
  %3915 = fmul <8 x double> %3911, splat (double 1.000000e-09)
  %3916 = icmp sgt i64 %3882, 0
  br i1 %3916, label %3917, label %4023

3917:                                             ; preds = %3881
  %3918 = sext <8 x i1> %3875 to <8 x i64>
  %3919 = getelementptr inbounds nuw i8, ptr %3815, i64 9584
  %3920 = load ptr, ptr %3919, align 16, !tbaa !90, !noalias !165
  %3921 = getelementptr inbounds nuw i8, ptr %3815, i64 9592
  %3922 = load ptr, ptr %3921, align 8, !tbaa !91, !noalias !165
  %3923 = getelementptr inbounds nuw i8, ptr %3815, i64 9472
  %3924 = load i64, ptr %3923, align 64, !tbaa !31, !noalias !165
  %3925 = getelementptr inbounds nuw i8, ptr %3815, i64 9600
  %3926 = getelementptr inbounds nuw i8, ptr %3815, i64 9616
  %3927 = getelementptr inbounds nuw i8, ptr %3815, i64 9552
  %3928 = getelementptr inbounds nuw i8, ptr %3815, i64 9560
  %3929 = getelementptr inbounds nuw i8, ptr %3815, i64 7040
  %3930 = getelementptr inbounds nuw i8, ptr %3815, i64 7104
  br label %3931

3931:                                             ; preds = %3917, %4001
  %3932 = phi <8 x i64> [ %3918, %3917 ], [ %3951, %4001 ]
  %3933 = phi i64 [ %3882, %3917 ], [ %3941, %4001 ]
  %3934 = phi <8 x double> [ splat (double 1.000000e+18), %3917 ], [ %4013, %4001 ]
  %3935 = phi <8 x double> [ zeroinitializer, %3917 ], [ %4017, %4001 ]
  %3936 = phi <8 x double> [ splat (double 1.000000e+18), %3917 ], [ %3976, %4001 ]
  %3937 = phi <8 x double> [ splat (double 1.000000e+00), %3917 ], [ %3975, %4001 ]
  %3938 = phi <8 x double> [ %3885, %3917 ], [ %4021, %4001 ]
  %3939 = phi <8 x double> [ zeroinitializer, %3917 ], [ %4010, %4001 ]
  %3940 = phi <8 x double> [ zeroinitializer, %3917 ], [ %4008, %4001 ]
  %3941 = add nsw i64 %3933, -1
  %3942 = getelementptr inbounds nuw <8 x double>, ptr %3920, i64 %3941
  %3943 = load <8 x double>, ptr %3942, align 64, !tbaa !26, !noalias !165
  %3944 = getelementptr inbounds nuw <8 x double>, ptr %3922, i64 %3941
  %3945 = load <8 x double>, ptr %3944, align 64, !tbaa !26, !noalias !165
  %3946 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3945, <8 x double> %3914, <8 x double> %3943)
  %3947 = fsub <8 x double> %3946, %3914
  %3948 = fcmp ogt <8 x double> %3947, %3915
  %3949 = select <8 x i1> %3948, <8 x i64> %3932, <8 x i64> zeroinitializer
  %3950 = icmp sgt i64 %3933, %3924
  %3951 = select i1 %3950, <8 x i64> %3949, <8 x i64> zeroinitializer
  %3952 = icmp slt i64 %3933, %3882
  br i1 %3952, label %3953, label %3965

3953:                                             ; preds = %3931
  %3954 = load ptr, ptr %3925, align 64, !tbaa !89, !noalias !165
  %3955 = getelementptr inbounds nuw <8 x double>, ptr %3954, i64 %3933
  %3956 = load <8 x double>, ptr %3955, align 64, !tbaa !26, !noalias !165
  %3957 = fmul <8 x double> %3947, %3956
  %3958 = icmp eq <8 x i64> %3951, %3932
  %3959 = select <8 x i1> %3958, <8 x double> zeroinitializer, <8 x double> %3957
  %3960 = fadd <8 x double> %3940, %3959
  %3961 = fadd <8 x double> %3945, splat (double -1.000000e+00)
  %3962 = fmul <8 x double> %3961, %3956
  %3963 = select <8 x i1> %3958, <8 x double> zeroinitializer, <8 x double> %3962
  %3964 = fadd <8 x double> %3939, %3963
  br label %3965

3965:                                             ; preds = %3953, %3931
  %3966 = phi <8 x double> [ %3960, %3953 ], [ %3940, %3931 ]
  %3967 = phi <8 x double> [ %3964, %3953 ], [ %3939, %3931 ]
  br i1 %3950, label %3968, label %3974

3968:                                             ; preds = %3965
  %3969 = fneg <8 x double> %3947
  %3970 = icmp eq <8 x i64> %3951, %3932
  %3971 = select <8 x i1> %3970, <8 x double> %3936, <8 x double> %3969
  %3972 = fsub <8 x double> splat (double 1.000000e+00), %3945
  %3973 = select <8 x i1> %3970, <8 x double> %3937, <8 x double> %3972
  br label %3974

3974:                                             ; preds = %3968, %3965
  %3975 = phi <8 x double> [ %3973, %3968 ], [ %3937, %3965 ]
  %3976 = phi <8 x double> [ %3971, %3968 ], [ %3936, %3965 ]
  %3977 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3951)
  %3978 = icmp eq i64 %3977, 0
  br i1 %3978, label %4023, label %3979

3979:                                             ; preds = %3974
  %3980 = load ptr, ptr %3926, align 16, !tbaa !51, !noalias !165
  %3981 = getelementptr inbounds nuw <8 x double>, ptr %3980, i64 %3941
  %3982 = load <8 x double>, ptr %3981, align 64, !tbaa !26, !noalias !165
  %3983 = fmul <8 x double> %3897, %3982
  %3984 = load ptr, ptr %3927, align 16, !tbaa !50, !noalias !165
  %3985 = getelementptr inbounds nuw <8 x double>, ptr %3984, i64 %3941
  %3986 = load <8 x double>, ptr %3985, align 64, !tbaa !26, !noalias !165
  %3987 = load ptr, ptr %3928, align 8, !tbaa !67, !noalias !165
  %3988 = getelementptr inbounds nuw <8 x double>, ptr %3987, i64 %3941
  %3989 = load <8 x double>, ptr %3988, align 64, !tbaa !26, !noalias !165
  %3990 = fmul <8 x double> %3909, %3989
  %3991 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3903, <8 x double> %3986, <8 x double> %3990)
  %3992 = fmul <8 x double> %3982, %3991
  %3993 = icmp ne i64 %3933, 1
  %3994 = icmp eq i64 %3941, %3924
  %3995 = select i1 %3993, i1 %3994, i1 false
  br i1 %3995, label %3996, label %4001

3996:                                             ; preds = %3979
  %3997 = load <8 x double>, ptr %3929, align 64, !tbaa !26, !noalias !165
  %3998 = fadd <8 x double> %3983, %3997
  %3999 = load <8 x double>, ptr %3930, align 64, !tbaa !26, !noalias !165
  %4000 = fadd <8 x double> %3992, %3999
  br label %4001

4001:                                             ; preds = %3979, %3996
  %4002 = phi <8 x double> [ %3998, %3996 ], [ %3983, %3979 ]
  %4003 = phi <8 x double> [ %4000, %3996 ], [ %3992, %3979 ]
  %4004 = fneg <8 x double> %4003
  %4005 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4002, <8 x double> %3914, <8 x double> %4004)
  %4006 = icmp eq <8 x i64> %3951, zeroinitializer
  %4007 = select <8 x i1> %4006, <8 x double> zeroinitializer, <8 x double> %4005
  %4008 = fadd <8 x double> %3966, %4007
  %4009 = select <8 x i1> %4006, <8 x double> zeroinitializer, <8 x double> %4002
  %4010 = fadd <8 x double> %3967, %4009
  %4011 = fcmp olt <8 x double> %3934, %3947
  %4012 = select <8 x i1> %4006, <8 x i1> splat (i1 true), <8 x i1> %4011
  %4013 = select <8 x i1> %4012, <8 x double> %3934, <8 x double> %3947
  %4014 = fsub <8 x double> splat (double 1.000000e+00), %3945
  %4015 = fcmp ogt <8 x double> %3935, %4014
  %4016 = select <8 x i1> %4006, <8 x i1> splat (i1 true), <8 x i1> %4015
  %4017 = select <8 x i1> %4016, <8 x double> %3935, <8 x double> %4014
  %4018 = uitofp nneg i64 %3941 to double
  %4019 = insertelement <8 x double> poison, double %4018, i64 0
  %4020 = shufflevector <8 x double> %4019, <8 x double> poison, <8 x i32> zeroinitializer
  %4021 = select <8 x i1> %4006, <8 x double> %3938, <8 x double> %4020
  %4022 = icmp samesign ugt i64 %3933, 1
  br i1 %4022, label %3931, label %4023, !llvm.loop !153

4023:                                             ; preds = %4001, %3974, %3881
  %4024 = phi <8 x double> [ %3885, %3881 ], [ %3938, %3974 ], [ %4021, %4001 ]
  %4025 = phi <8 x double> [ zeroinitializer, %3881 ], [ %3935, %3974 ], [ %4017, %4001 ]
  %4026 = phi <8 x double> [ splat (double 1.000000e+18), %3881 ], [ %3934, %3974 ], [ %4013, %4001 ]
  %4027 = phi <8 x double> [ zeroinitializer, %3881 ], [ %3966, %3974 ], [ %4008, %4001 ]
  %4028 = phi <8 x double> [ zeroinitializer, %3881 ], [ %3967, %3974 ], [ %4010, %4001 ]
  %4029 = phi <8 x double> [ splat (double 1.000000e+00), %3881 ], [ %3975, %3974 ], [ %3975, %4001 ]
  %4030 = phi <8 x double> [ splat (double 1.000000e+18), %3881 ], [ %3976, %3974 ], [ %3976, %4001 ]
  %4031 = fmul <8 x double> %3911, %4028
  %4032 = fmul <8 x double> %3911, %4029
  %4033 = fdiv <8 x double> %4030, %4032
  %4034 = fsub <8 x double> %3151, %4033
  %4035 = fcmp ogt <8 x double> %4025, splat (double 1.000000e-09)
  %4036 = select <8 x i1> %4035, <8 x double> %4025, <8 x double> splat (double 1.000000e-09)
  %4037 = fmul <8 x double> %3911, %4036
  %4038 = fdiv <8 x double> %4026, %4037
  %4039 = fadd <8 x double> %3151, %4038
  %4040 = load <8 x double>, ptr %3868, align 64, !tbaa !26, !noalias !162
  %4041 = select <8 x i1> %3875, <8 x double> %4027, <8 x double> %4040
  store <8 x double> %4041, ptr %3868, align 64, !tbaa !26, !noalias !162
  %4042 = getelementptr inbounds nuw i8, ptr %3815, i64 8896
  %4043 = load <8 x double>, ptr %4042, align 64, !tbaa !26, !noalias !162
  %4044 = select <8 x i1> %3875, <8 x double> %4031, <8 x double> %4043
  store <8 x double> %4044, ptr %4042, align 64, !tbaa !26, !noalias !162
  %4045 = getelementptr inbounds nuw i8, ptr %3815, i64 8960
  %4046 = load <8 x double>, ptr %4045, align 64, !tbaa !26, !noalias !162
  %4047 = select <8 x i1> %3875, <8 x double> %4024, <8 x double> %4046
  store <8 x double> %4047, ptr %4045, align 64, !tbaa !26, !noalias !162
  %4048 = getelementptr inbounds nuw i8, ptr %3815, i64 9024
  %4049 = load <8 x double>, ptr %4048, align 64, !tbaa !26, !noalias !162
  %4050 = select <8 x i1> %3875, <8 x double> %3151, <8 x double> %4049
  store <8 x double> %4050, ptr %4048, align 64, !tbaa !26, !noalias !162
  %4051 = select <8 x i1> %3875, <8 x double> %4034, <8 x double> %3870
  store <8 x double> %4051, ptr %3869, align 64, !tbaa !26, !noalias !162
  %4052 = select <8 x i1> %3875, <8 x double> %4039, <8 x double> %3873
  store <8 x double> %4052, ptr %3872, align 64, !tbaa !26, !noalias !162
  br label %4053

4053:                                             ; preds = %3878, %4023
  %4054 = phi <8 x double> [ %3880, %3878 ], [ %4047, %4023 ]
  %4055 = load i64, ptr %137, align 16, !tbaa !21, !noalias !159
  %4056 = sitofp i64 %4055 to double
  %4057 = insertelement <8 x double> poison, double %4056, i64 0
  %4058 = shufflevector <8 x double> %4057, <8 x double> poison, <8 x i32> zeroinitializer
  %4059 = fcmp olt <8 x double> %4054, %4058
  %4060 = and <8 x i1> %3822, %4059
  %4061 = bitcast <8 x i1> %4060 to i8
  %4062 = icmp eq i8 %4061, 0
  br i1 %4062, label %4124, label %4063

4063:                                             ; preds = %4053
  %4064 = getelementptr inbounds nuw i8, ptr %3815, i64 8896
  %4065 = load <8 x double>, ptr %4064, align 64, !tbaa !26, !noalias !162
  %4066 = getelementptr inbounds nuw i8, ptr %3815, i64 9024
  %4067 = load <8 x double>, ptr %4066, align 64, !tbaa !26, !noalias !162
  %4068 = fsub <8 x double> %3151, %4067
  %4069 = load <8 x double>, ptr %3868, align 64, !tbaa !26, !noalias !162
  %4070 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4065, <8 x double> %4068, <8 x double> %4069)
  %4071 = getelementptr inbounds nuw i8, ptr %3815, i64 7488
  %4072 = load <8 x double>, ptr %4071, align 64, !tbaa !26, !noalias !159
  %4073 = getelementptr inbounds nuw i8, ptr %3815, i64 6336
  %4074 = load <8 x double>, ptr %4073, align 64, !tbaa !26, !noalias !159
  %4075 = getelementptr inbounds nuw i8, ptr %3815, i64 8384
  %4076 = load <8 x double>, ptr %4075, align 64, !tbaa !26, !noalias !159
  %4077 = fneg <8 x double> %4076
  %4078 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4072, <8 x double> %4074, <8 x double> %4077)
  %4079 = getelementptr inbounds nuw i8, ptr %3815, i64 8320
  %4080 = load <8 x double>, ptr %4079, align 64, !tbaa !26, !noalias !159
  %4081 = fadd <8 x double> %4072, %4080
  %4082 = getelementptr inbounds nuw i8, ptr %3815, i64 9280
  %4083 = load <8 x i64>, ptr %4082, align 64, !tbaa !26, !noalias !159
  %4084 = getelementptr inbounds nuw i8, ptr %3815, i64 9672
  %4085 = load ptr, ptr %4084, align 8, !tbaa !132, !noalias !159
  %4086 = load <8 x double>, ptr %4085, align 64, !tbaa !26, !noalias !159
  %4087 = fmul <8 x double> %4072, %4086
  %4088 = icmp eq <8 x i64> %4083, zeroinitializer
  %4089 = select <8 x i1> %4088, <8 x double> %4078, <8 x double> %4087
  %4090 = getelementptr inbounds nuw i8, ptr %3815, i64 9680
  %4091 = load ptr, ptr %4090, align 16, !tbaa !133, !noalias !159
  %4092 = load <8 x double>, ptr %4091, align 64, !tbaa !26, !noalias !159
  %4093 = fsub <8 x double> splat (double 1.000000e+00), %4092
  %4094 = fmul <8 x double> %4072, %4093
  %4095 = select <8 x i1> %4088, <8 x double> %4081, <8 x double> %4094
  %4096 = fneg <8 x double> %4095
  %4097 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4096, <8 x double> %3151, <8 x double> %4089)
  %4098 = fcmp ogt <8 x double> %4070, zeroinitializer
  %4099 = fcmp oge <8 x double> %4097, zeroinitializer
  %4100 = and <8 x i1> %4098, %4099
  %4101 = and <8 x i1> %4060, %4100
  %4102 = sext <8 x i1> %4101 to <8 x i64>
  %4103 = xor <8 x i64> %4102, splat (i64 -1)
  %4104 = fadd <8 x double> %4070, %4097
  %4105 = fcmp ogt <8 x double> %4104, zeroinitializer
  %4106 = and <8 x i1> %4060, %4105
  %4107 = select <8 x i1> %4106, <8 x i64> %4103, <8 x i64> zeroinitializer
  %4108 = or <8 x i64> %4107, %4102
  %4109 = fmul <8 x double> %3810, %4097
  %4110 = select <8 x i1> %4101, <8 x double> %4109, <8 x double> zeroinitializer
  %4111 = icmp eq <8 x i64> %4108, zeroinitializer
  %4112 = select <8 x i1> %4111, <8 x double> %3859, <8 x double> %4110
  store <8 x double> %4112, ptr %3860, align 64, !tbaa !26, !noalias !159
  %4113 = select <8 x i1> %4111, <8 x double> %3858, <8 x double> %3151
  store <8 x double> %4113, ptr %3861, align 64, !tbaa !26, !noalias !159
  %4114 = fmul <8 x double> %3810, %4070
  %4115 = fmul <8 x double> %3810, %4104
  %4116 = icmp eq <8 x i64> %4107, zeroinitializer
  %4117 = select <8 x i1> %4116, <8 x double> zeroinitializer, <8 x double> %4115
  %4118 = select <8 x i1> %4101, <8 x double> %4114, <8 x double> %4117
  store <8 x double> %4118, ptr %3862, align 64, !tbaa !26, !noalias !159
  %4119 = load i64, ptr %137, align 16, !tbaa !21, !noalias !159
  %4120 = sitofp i64 %4119 to double
  %4121 = insertelement <8 x double> poison, double %4120, i64 0
  %4122 = shufflevector <8 x double> %4121, <8 x double> poison, <8 x i32> zeroinitializer
  %4123 = select <8 x i1> %4111, <8 x double> %4122, <8 x double> %4054
  store <8 x double> %4123, ptr %3867, align 64, !tbaa !26, !noalias !159
  br label %4124

4124:                                             ; preds = %4053, %4063
  %4125 = add nuw nsw i64 %3813, 1
  %4126 = load i64, ptr %175, align 8, !tbaa !20, !noalias !159
  %4127 = icmp slt i64 %4125, %4126
  br i1 %4127, label %3812, label %4128, !llvm.loop !154

4128:                                             ; preds = %4124, %3790
  %4129 = phi i64 [ %3642, %3790 ], [ %4126, %4124 ]
  %4130 = icmp sgt i64 %4129, 0
  br i1 %4130, label %4260, label %4131

4131:                                             ; preds = %4128, %3807
  %4132 = phi i64 [ %4129, %4128 ], [ %2899, %3807 ]
  %4133 = load <8 x double>, ptr %184, align 64, !tbaa !26
  br label %4161

4134:                                             ; preds = %4337
  %4135 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %4136 = icmp sgt i64 %4361, 0
  br i1 %4136, label %4137, label %4161

4137:                                             ; preds = %4134
  %4138 = load ptr, ptr %148, align 8, !tbaa !28
  br label %4139

4139:                                             ; preds = %4137, %4139
  %4140 = phi <8 x double> [ zeroinitializer, %4137 ], [ %4153, %4139 ]
  %4141 = phi <8 x double> [ zeroinitializer, %4137 ], [ %4158, %4139 ]
  %4142 = phi i64 [ 0, %4137 ], [ %4159, %4139 ]
  %4143 = getelementptr inbounds nuw %struct.Piece, ptr %4138, i64 %4142
  %4144 = getelementptr inbounds nuw i8, ptr %4143, i64 9408
  %4145 = load <8 x i64>, ptr %4144, align 64, !tbaa !26
  %4146 = getelementptr inbounds nuw i8, ptr %4143, i64 128
  %4147 = load <8 x double>, ptr %4146, align 64, !tbaa !26
  %4148 = getelementptr inbounds nuw i8, ptr %4143, i64 7680
  %4149 = load <8 x double>, ptr %4148, align 64, !tbaa !26
  %4150 = fmul <8 x double> %4147, %4149
  %4151 = icmp eq <8 x i64> %4145, zeroinitializer
  %4152 = select <8 x i1> %4151, <8 x double> %4150, <8 x double> zeroinitializer
  %4153 = fadd <8 x double> %4140, %4152
  %4154 = getelementptr inbounds nuw i8, ptr %4143, i64 7552
  %4155 = load <8 x double>, ptr %4154, align 64, !tbaa !26
  %4156 = fmul <8 x double> %4147, %4155
  %4157 = select <8 x i1> %4151, <8 x double> %4156, <8 x double> zeroinitializer
  %4158 = fadd <8 x double> %4141, %4157
  %4159 = add nuw nsw i64 %4142, 1
  %4160 = icmp eq i64 %4159, %4361
  br i1 %4160, label %4161, label %4139, !llvm.loop !171

4161:                                             ; preds = %4139, %4131, %4134
  %4162 = phi i1 [ false, %4134 ], [ false, %4131 ], [ true, %4139 ]
  %4163 = phi <8 x double> [ %4135, %4134 ], [ %4133, %4131 ], [ %4135, %4139 ]
  %4164 = phi i64 [ %4361, %4134 ], [ %4132, %4131 ], [ %4361, %4139 ]
  %4165 = phi <8 x double> [ zeroinitializer, %4134 ], [ zeroinitializer, %4131 ], [ %4158, %4139 ]
  %4166 = phi <8 x double> [ zeroinitializer, %4134 ], [ zeroinitializer, %4131 ], [ %4153, %4139 ]
  %4167 = load <8 x double>, ptr %220, align 64, !tbaa !26
  %4168 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %4169 = fsub <8 x double> %4163, %4168
  %4170 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4167, <8 x double> %4169, <8 x double> %4166)
  %4171 = fadd <8 x double> %4165, %4167
  store <8 x double> %4170, ptr %221, align 64, !tbaa !26
  %4172 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %4173 = fcmp ule <8 x double> %4172, zeroinitializer
  %4174 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4175 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4172, <8 x double> splat (double 5.000000e-01), <8 x double> %4174)
  %4176 = fsub <8 x double> %4175, %4163
  %4177 = fcmp ogt <8 x double> %4172, splat (double 1.000000e-30)
  %4178 = select <8 x i1> %4177, <8 x double> %4172, <8 x double> splat (double 1.000000e-30)
  %4179 = fdiv <8 x double> %4176, %4178
  %4180 = fcmp ogt <8 x double> %4179, zeroinitializer
  %4181 = select <8 x i1> %4180, <8 x double> %4179, <8 x double> zeroinitializer
  %4182 = fcmp olt <8 x double> %4181, splat (double 1.000000e+00)
  %4183 = select <8 x i1> %4182, <8 x double> %4181, <8 x double> splat (double 1.000000e+00)
  %4184 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %4185 = load <8 x i64>, ptr %162, align 64, !tbaa !26
  %4186 = icmp eq <8 x i64> %4185, zeroinitializer
  %4187 = select <8 x i1> %4186, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %4188 = select <8 x i1> %4173, <8 x double> %4187, <8 x double> %4183
  %4189 = fmul <8 x double> %4184, %4188
  %4190 = fcmp ule <8 x double> %4189, zeroinitializer
  %4191 = fcmp uge <8 x double> %4189, %4184
  %4192 = or <8 x i1> %4190, %4191
  %4193 = or <8 x i1> %4173, %4192
  %4194 = fdiv <8 x double> %4184, %4178
  %4195 = select <8 x i1> %4193, <8 x double> zeroinitializer, <8 x double> %4194
  %4196 = fadd <8 x double> %4171, %4195
  %4197 = load <8 x i64>, ptr %172, align 64, !tbaa !26
  %4198 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %4199 = fdiv <8 x double> splat (double 2.000000e+00), %4198
  %4200 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %4201 = icmp eq <8 x i64> %4197, zeroinitializer
  %4202 = select <8 x i1> %4201, <8 x double> %4200, <8 x double> %4199
  %4203 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %4204 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %4205 = fmul <8 x double> %4203, %4204
  %4206 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %4207 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %4208 = fmul <8 x double> %4207, splat (double 5.000000e-01)
  %4209 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4208, <8 x double> %4203, <8 x double> %4206)
  %4210 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %4211 = fmul <8 x double> %4203, %4210
  %4212 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4205, <8 x double> %4209, <8 x double> %4211)
  %4213 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4214 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4215 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %4216 = fmul <8 x double> %4204, %4215
  %4217 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4208, <8 x double> %4215, <8 x double> %4206)
  %4218 = fmul <8 x double> %4210, %4215
  %4219 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4216, <8 x double> %4217, <8 x double> %4218)
  %4220 = fmul <8 x double> %4214, %4219
  %4221 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4213, <8 x double> %4212, <8 x double> %4220)
  %4222 = fmul <8 x double> %4163, %4204
  %4223 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4208, <8 x double> %4163, <8 x double> %4206)
  %4224 = fmul <8 x double> %4163, %4210
  %4225 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4222, <8 x double> %4223, <8 x double> %4224)
  %4226 = fneg <8 x double> %4202
  %4227 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %4228 = fneg <8 x double> %4227
  %4229 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4226, <8 x double> %4212, <8 x double> %4228)
  %4230 = select <8 x i1> %4201, <8 x double> %4221, <8 x double> %4229
  %4231 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4202, <8 x double> %4225, <8 x double> %4230)
  %4232 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4207, <8 x double> %4163, <8 x double> %4206)
  %4233 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4204, <8 x double> %4232, <8 x double> %4210)
  %4234 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4235 = fcmp une <8 x double> %4234, zeroinitializer
  %4236 = fadd <8 x double> %4170, %4231
  %4237 = fsub <8 x double> %4236, %4189
  %4238 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4202, <8 x double> %4233, <8 x double> %4196)
  %4239 = fdiv <8 x double> %4237, %4238
  %4240 = fsub <8 x double> %4163, %4239
  %4241 = select <8 x i1> %4235, <8 x double> %4163, <8 x double> %4240
  store <8 x double> %4241, ptr %184, align 64, !tbaa !26
  %4242 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %4243 = fneg <8 x double> %4213
  %4244 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4243, <8 x double> %4242, <8 x double> %4189)
  %4245 = load <8 x double>, ptr %223, align 64, !tbaa !26
  %4246 = fneg <8 x double> %4214
  %4247 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4246, <8 x double> %4245, <8 x double> %4244)
  %4248 = fdiv <8 x double> %4247, %4200
  %4249 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %4250 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4243, <8 x double> %4249, <8 x double> %4170)
  %4251 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %4252 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4246, <8 x double> %4251, <8 x double> %4250)
  %4253 = fdiv <8 x double> %4252, %4200
  %4254 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4189, <8 x double> %4198, <8 x double> %4242)
  %4255 = select <8 x i1> %4201, <8 x double> %4248, <8 x double> %4254
  %4256 = load <8 x double>, ptr %226, align 64, !tbaa !26
  %4257 = select <8 x i1> %4235, <8 x double> %4256, <8 x double> %4255
  store <8 x double> %4257, ptr %226, align 64, !tbaa !26
  %4258 = load <8 x double>, ptr %227, align 64, !tbaa !26
  %4259 = select <8 x i1> %4235, <8 x double> %4258, <8 x double> %4253
  store <8 x double> %4259, ptr %227, align 64, !tbaa !26
  br i1 %4162, label %4363, label %4650

4260:                                             ; preds = %4128, %4337
  %4261 = phi i64 [ %4360, %4337 ], [ 0, %4128 ]
  %4262 = load ptr, ptr %148, align 8, !tbaa !28
  %4263 = getelementptr inbounds nuw %struct.Piece, ptr %4262, i64 %4261
  %4264 = getelementptr inbounds nuw i8, ptr %4263, i64 6400
  %4265 = load <8 x double>, ptr %4264, align 64, !tbaa !26
  %4266 = getelementptr inbounds nuw i8, ptr %4263, i64 6592
  %4267 = load <8 x double>, ptr %4266, align 64, !tbaa !26
  %4268 = getelementptr inbounds nuw i8, ptr %4263, i64 9584
  %4269 = load ptr, ptr %4268, align 16, !tbaa !90
  %4270 = getelementptr inbounds nuw i8, ptr %4263, i64 9592
  %4271 = load ptr, ptr %4270, align 8, !tbaa !91
  %4272 = getelementptr inbounds nuw i8, ptr %4263, i64 6784
  %4273 = load <8 x double>, ptr %4272, align 64, !tbaa !26
  %4274 = getelementptr inbounds nuw i8, ptr %4263, i64 6848
  %4275 = load <8 x double>, ptr %4274, align 64, !tbaa !26
  %4276 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4273, <8 x double> %4265, <8 x double> %4275)
  %4277 = getelementptr inbounds nuw i8, ptr %4263, i64 9544
  %4278 = load ptr, ptr %4277, align 8, !tbaa !88
  %4279 = load i64, ptr %137, align 16, !tbaa !21
  %4280 = icmp sgt i64 %4279, 0
  br i1 %4280, label %4296, label %4281

4281:                                             ; preds = %4296, %4260
  %4282 = getelementptr inbounds nuw i8, ptr %4263, i64 9280
  %4283 = load <8 x i64>, ptr %4282, align 64, !tbaa !26
  %4284 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4283)
  %4285 = icmp eq i64 %4284, 0
  %4286 = load i64, ptr %138, align 8, !tbaa !22
  %4287 = icmp sgt i64 %4286, 0
  br i1 %4285, label %4293, label %4288

4288:                                             ; preds = %4281
  br i1 %4287, label %4289, label %4337

4289:                                             ; preds = %4288
  %4290 = getelementptr inbounds nuw i8, ptr %4263, i64 9672
  %4291 = getelementptr inbounds nuw i8, ptr %4263, i64 9680
  %4292 = getelementptr inbounds nuw i8, ptr %4263, i64 9640
  br label %4312

4293:                                             ; preds = %4281
  br i1 %4287, label %4294, label %4337

4294:                                             ; preds = %4293
  %4295 = getelementptr inbounds nuw i8, ptr %4263, i64 9640
  br label %4330

4296:                                             ; preds = %4260, %4296
  %4297 = phi <8 x double> [ %4309, %4296 ], [ %4276, %4260 ]
  %4298 = phi i64 [ %4299, %4296 ], [ %4279, %4260 ]
  %4299 = add nsw i64 %4298, -1
  %4300 = uitofp nneg i64 %4299 to double
  %4301 = insertelement <8 x double> poison, double %4300, i64 0
  %4302 = shufflevector <8 x double> %4301, <8 x double> poison, <8 x i32> zeroinitializer
  %4303 = fcmp ugt <8 x double> %4267, %4302
  %4304 = getelementptr inbounds nuw <8 x double>, ptr %4269, i64 %4299
  %4305 = load <8 x double>, ptr %4304, align 64, !tbaa !26
  %4306 = getelementptr inbounds nuw <8 x double>, ptr %4271, i64 %4299
  %4307 = load <8 x double>, ptr %4306, align 64, !tbaa !26
  %4308 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4307, <8 x double> %4297, <8 x double> %4305)
  %4309 = select <8 x i1> %4303, <8 x double> %4308, <8 x double> %4276
  %4310 = getelementptr inbounds nuw <8 x double>, ptr %4278, i64 %4299
  store <8 x double> %4309, ptr %4310, align 64, !tbaa !26
  %4311 = icmp samesign ugt i64 %4298, 1
  br i1 %4311, label %4296, label %4281, !llvm.loop !172

4312:                                             ; preds = %4289, %4312
  %4313 = phi i64 [ 0, %4289 ], [ %4327, %4312 ]
  %4314 = phi <8 x double> [ %4265, %4289 ], [ %4324, %4312 ]
  %4315 = load <8 x i64>, ptr %4282, align 64, !tbaa !26
  %4316 = load ptr, ptr %4290, align 8, !tbaa !132
  %4317 = getelementptr inbounds nuw <8 x double>, ptr %4316, i64 %4313
  %4318 = load <8 x double>, ptr %4317, align 64, !tbaa !26
  %4319 = load ptr, ptr %4291, align 16, !tbaa !133
  %4320 = getelementptr inbounds nuw <8 x double>, ptr %4319, i64 %4313
  %4321 = load <8 x double>, ptr %4320, align 64, !tbaa !26
  %4322 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4321, <8 x double> %4314, <8 x double> %4318)
  %4323 = icmp eq <8 x i64> %4315, zeroinitializer
  %4324 = select <8 x i1> %4323, <8 x double> %4265, <8 x double> %4322
  %4325 = load ptr, ptr %4292, align 8, !tbaa !173
  %4326 = getelementptr inbounds nuw <8 x double>, ptr %4325, i64 %4313
  store <8 x double> %4324, ptr %4326, align 64, !tbaa !26
  %4327 = add nuw nsw i64 %4313, 1
  %4328 = load i64, ptr %138, align 8, !tbaa !22
  %4329 = icmp slt i64 %4327, %4328
  br i1 %4329, label %4312, label %4337, !llvm.loop !174

4330:                                             ; preds = %4294, %4330
  %4331 = phi i64 [ 0, %4294 ], [ %4334, %4330 ]
  %4332 = load ptr, ptr %4295, align 8, !tbaa !173
  %4333 = getelementptr inbounds nuw <8 x double>, ptr %4332, i64 %4331
  store <8 x double> %4265, ptr %4333, align 64, !tbaa !26
  %4334 = add nuw nsw i64 %4331, 1
  %4335 = load i64, ptr %138, align 8, !tbaa !22
  %4336 = icmp slt i64 %4334, %4335
  br i1 %4336, label %4330, label %4337, !llvm.loop !175

4337:                                             ; preds = %4312, %4330, %4288, %4293
  %4338 = phi <8 x double> [ %4265, %4293 ], [ %4265, %4288 ], [ %4265, %4330 ], [ %4324, %4312 ]
  %4339 = load <8 x i64>, ptr %4282, align 64, !tbaa !26
  %4340 = getelementptr inbounds nuw i8, ptr %4263, i64 7616
  %4341 = load <8 x double>, ptr %4340, align 64, !tbaa !26
  %4342 = icmp eq <8 x i64> %4339, zeroinitializer
  %4343 = select <8 x i1> %4342, <8 x double> zeroinitializer, <8 x double> %4341
  %4344 = fsub <8 x double> splat (double 1.000000e+00), %4343
  %4345 = getelementptr inbounds nuw i8, ptr %4263, i64 6336
  %4346 = load <8 x double>, ptr %4345, align 64, !tbaa !26
  %4347 = fmul <8 x double> %4343, %4346
  %4348 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4344, <8 x double> %4338, <8 x double> %4347)
  %4349 = getelementptr inbounds nuw i8, ptr %4263, i64 7808
  store <8 x double> %4348, ptr %4349, align 64, !tbaa !26
  %4350 = getelementptr inbounds nuw i8, ptr %4263, i64 7552
  %4351 = load <8 x double>, ptr %4350, align 64, !tbaa !26
  %4352 = fsub <8 x double> %4346, %4338
  %4353 = fmul <8 x double> %4352, %4351
  %4354 = getelementptr inbounds nuw i8, ptr %4263, i64 7680
  store <8 x double> %4353, ptr %4354, align 64, !tbaa !26
  %4355 = getelementptr inbounds nuw i8, ptr %4263, i64 3584
  %4356 = load <8 x double>, ptr %4355, align 64, !tbaa !26
  %4357 = fdiv <8 x double> %4353, %4356
  %4358 = fsub <8 x double> %4346, %4357
  %4359 = getelementptr inbounds nuw i8, ptr %4263, i64 7744
  store <8 x double> %4358, ptr %4359, align 64, !tbaa !26
  %4360 = add nuw nsw i64 %4261, 1
  %4361 = load i64, ptr %175, align 8, !tbaa !20
  %4362 = icmp slt i64 %4360, %4361
  br i1 %4362, label %4260, label %4134, !llvm.loop !176

4363:                                             ; preds = %4161, %4584
  %4364 = phi i64 [ %4647, %4584 ], [ 0, %4161 ]
  %4365 = phi <8 x double> [ %4646, %4584 ], [ zeroinitializer, %4161 ]
  %4366 = load ptr, ptr %148, align 8, !tbaa !28
  %4367 = getelementptr inbounds nuw %struct.Piece, ptr %4366, i64 %4364
  %4368 = getelementptr inbounds nuw i8, ptr %4367, i64 6464
  %4369 = load <8 x double>, ptr %4368, align 64, !tbaa !26
  %4370 = getelementptr inbounds nuw i8, ptr %4367, i64 6528
  %4371 = load <8 x double>, ptr %4370, align 64, !tbaa !26
  %4372 = fadd <8 x double> %4369, %4371
  %4373 = getelementptr inbounds nuw i8, ptr %4367, i64 6400
  %4374 = load <8 x double>, ptr %4373, align 64, !tbaa !26
  %4375 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %4376 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4375, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %4377 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4375, <8 x double> %4376, <8 x double> splat (double 0x4142F8368A3D70A4))
  %4378 = getelementptr inbounds nuw i8, ptr %4367, i64 8128
  %4379 = load <8 x double>, ptr %4378, align 64, !tbaa !26
  %4380 = getelementptr inbounds nuw i8, ptr %4367, i64 1664
  %4381 = load <8 x double>, ptr %4380, align 64, !tbaa !26
  %4382 = fmul <8 x double> %4379, %4381
  %4383 = getelementptr inbounds nuw i8, ptr %4367, i64 7808
  %4384 = load <8 x double>, ptr %4383, align 64, !tbaa !26
  %4385 = fsub <8 x double> %4384, %4374
  %4386 = fmul <8 x double> %4382, %4385
  %4387 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4377, <8 x double> %4372, <8 x double> %4386)
  %4388 = getelementptr inbounds nuw i8, ptr %4367, i64 6080
  %4389 = load <8 x double>, ptr %4388, align 64, !tbaa !26, !noalias !177
  %4390 = getelementptr inbounds nuw i8, ptr %4367, i64 4544
  %4391 = load <8 x double>, ptr %4390, align 64, !tbaa !26, !noalias !177
  %4392 = fneg <8 x double> %4389
  %4393 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4392, <8 x double> %4391, <8 x double> %4372)
  %4394 = getelementptr inbounds nuw i8, ptr %4367, i64 6144
  %4395 = load <8 x double>, ptr %4394, align 64, !tbaa !26, !noalias !177
  %4396 = getelementptr inbounds nuw i8, ptr %4367, i64 5440
  %4397 = load <8 x double>, ptr %4396, align 64, !tbaa !26, !noalias !177
  %4398 = fneg <8 x double> %4395
  %4399 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4398, <8 x double> %4397, <8 x double> %4393)
  %4400 = getelementptr inbounds nuw i8, ptr %4367, i64 6208
  %4401 = load <8 x double>, ptr %4400, align 64, !tbaa !26, !noalias !177
  %4402 = fmul <8 x double> %4399, %4401
  %4403 = getelementptr inbounds nuw i8, ptr %4367, i64 1984
  %4404 = load <8 x double>, ptr %4403, align 64, !tbaa !26, !noalias !177
  %4405 = fsub <8 x double> %4404, %4402
  %4406 = getelementptr inbounds nuw i8, ptr %4367, i64 4416
  %4407 = load <8 x double>, ptr %4406, align 64, !tbaa !26, !noalias !177
  %4408 = getelementptr inbounds nuw i8, ptr %4367, i64 8448
  %4409 = load <8 x double>, ptr %4408, align 64, !tbaa !26, !noalias !177
  %4410 = fsub <8 x double> %4407, %4409
  %4411 = getelementptr inbounds nuw i8, ptr %4367, i64 4288
  %4412 = load <8 x double>, ptr %4411, align 64, !tbaa !26, !noalias !177
  %4413 = getelementptr inbounds nuw i8, ptr %4367, i64 3328
  %4414 = load <8 x double>, ptr %4413, align 64, !tbaa !26, !noalias !177
  %4415 = getelementptr inbounds nuw i8, ptr %4367, i64 9280
  %4416 = load <8 x i64>, ptr %4415, align 64, !tbaa !26, !noalias !177
  %4417 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4416)
  %4418 = icmp eq i64 %4417, 0
  br i1 %4418, label %4552, label %4419

4419:                                             ; preds = %4363
  %4420 = fcmp ogt <8 x double> %4410, %4405
  %4421 = getelementptr inbounds nuw i8, ptr %4367, i64 8576
  %4422 = load <8 x double>, ptr %4421, align 64, !tbaa !26, !noalias !177
  %4423 = fcmp oeq <8 x double> %4422, zeroinitializer
  %4424 = select <8 x i1> %4423, <8 x i1> %4420, <8 x i1> zeroinitializer
  %4425 = select <8 x i1> %4424, <8 x i64> %4416, <8 x i64> zeroinitializer
  %4426 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4425)
  %4427 = icmp eq i64 %4426, 0
  br i1 %4427, label %4500, label %4428

4428:                                             ; preds = %4419
  %4429 = fsub <8 x double> %4410, %4405
  %4430 = getelementptr inbounds nuw i8, ptr %4367, i64 8768
  %4431 = load <8 x double>, ptr %4430, align 64, !tbaa !26, !noalias !177
  %4432 = fmul <8 x double> %4429, %4431
  %4433 = getelementptr inbounds nuw i8, ptr %4367, i64 9568
  %4434 = load ptr, ptr %4433, align 32, !tbaa !68, !noalias !177
  %4435 = load i64, ptr %137, align 16, !tbaa !21, !noalias !177
  %4436 = add nsw i64 %4435, -1
  %4437 = getelementptr inbounds <8 x double>, ptr %4434, i64 %4436
  %4438 = load <8 x double>, ptr %4437, align 64, !tbaa !26, !noalias !177
  %4439 = icmp sgt i64 %4435, 1
  br i1 %4439, label %4440, label %4492

4440:                                             ; preds = %4428
  %4441 = getelementptr inbounds nuw i8, ptr %4367, i64 9472
  %4442 = load i64, ptr %4441, align 64, !tbaa !31, !noalias !177
  %4443 = getelementptr inbounds nuw i8, ptr %4367, i64 5056
  %4444 = getelementptr inbounds nuw i8, ptr %4367, i64 1920
  %4445 = getelementptr inbounds nuw i8, ptr %4367, i64 9608
  br label %4446

4446:                                             ; preds = %4440, %4489
  %4447 = phi <8 x double> [ %4412, %4440 ], [ %4484, %4489 ]
  %4448 = phi i64 [ %4436, %4440 ], [ %4490, %4489 ]
  %4449 = phi <8 x double> [ %4438, %4440 ], [ %4472, %4489 ]
  %4450 = phi <8 x i64> [ %4425, %4440 ], [ %4476, %4489 ]
  %4451 = phi <8 x double> [ %4432, %4440 ], [ %4483, %4489 ]
  %4452 = icmp slt i64 %4448, %4442
  br i1 %4452, label %4453, label %4459

4453:                                             ; preds = %4446
  %4454 = load ptr, ptr %4445, align 8, !tbaa !78, !noalias !177
  %4455 = getelementptr inbounds nuw <8 x double>, ptr %4454, i64 %4448
  %4456 = load <8 x double>, ptr %4455, align 64, !tbaa !26, !noalias !177
  %4457 = load <8 x double>, ptr %4444, align 64, !tbaa !26, !noalias !177
  %4458 = fmul <8 x double> %4456, %4457
  br label %4467

4459:                                             ; preds = %4446
  %4460 = load <8 x double>, ptr %4443, align 64, !tbaa !26, !noalias !177
  %4461 = load <8 x double>, ptr %4444, align 64, !tbaa !26, !noalias !177
  %4462 = load ptr, ptr %4445, align 8, !tbaa !78, !noalias !177
  %4463 = getelementptr inbounds nuw <8 x double>, ptr %4462, i64 %4448
  %4464 = load <8 x double>, ptr %4463, align 64, !tbaa !26, !noalias !177
  %4465 = fsub <8 x double> %4460, %4461
  %4466 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4464, <8 x double> %4465, <8 x double> %4461)
  br label %4467

4467:                                             ; preds = %4459, %4453
  %4468 = phi <8 x double> [ %4458, %4453 ], [ %4466, %4459 ]
  %4469 = getelementptr inbounds nuw <8 x double>, ptr %4434, i64 %4448
  %4470 = load <8 x double>, ptr %4469, align 64, !tbaa !26, !noalias !177
  %4471 = icmp eq <8 x i64> %4450, zeroinitializer
  %4472 = select <8 x i1> %4471, <8 x double> %4449, <8 x double> %4470
  %4473 = fsub <8 x double> %4447, %4468
  %4474 = fmul <8 x double> %4473, %4472
  %4475 = fcmp olt <8 x double> %4474, %4451
  %4476 = select <8 x i1> %4475, <8 x i64> %4450, <8 x i64> zeroinitializer
  %4477 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4476)
  %4478 = icmp eq i64 %4477, 0
  br i1 %4478, label %4492, label %4479

4479:                                             ; preds = %4467
  %4480 = fneg <8 x double> %4472
  %4481 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4480, <8 x double> %4473, <8 x double> %4451)
  %4482 = icmp eq <8 x i64> %4476, zeroinitializer
  %4483 = select <8 x i1> %4482, <8 x double> %4451, <8 x double> %4481
  %4484 = select <8 x i1> %4482, <8 x double> %4447, <8 x double> %4468
  %4485 = icmp eq i64 %4448, 1
  br i1 %4485, label %4486, label %4489

4486:                                             ; preds = %4479
  %4487 = load <8 x double>, ptr %4434, align 64, !tbaa !26, !noalias !177
  %4488 = select <8 x i1> %4482, <8 x double> %4472, <8 x double> %4487
  br label %4492

4489:                                             ; preds = %4479
  %4490 = add nsw i64 %4448, -1
  %4491 = icmp sgt i64 %4448, 1
  br i1 %4491, label %4446, label %4492, !llvm.loop !79

4492:                                             ; preds = %4489, %4467, %4486, %4428
  %4493 = phi <8 x double> [ %4432, %4428 ], [ %4483, %4486 ], [ %4451, %4467 ], [ %4483, %4489 ]
  %4494 = phi <8 x double> [ %4412, %4428 ], [ %4484, %4486 ], [ %4447, %4467 ], [ %4484, %4489 ]
  %4495 = phi <8 x double> [ %4438, %4428 ], [ %4488, %4486 ], [ %4472, %4467 ], [ %4472, %4489 ]
  %4496 = fdiv <8 x double> %4493, %4495
  %4497 = fsub <8 x double> %4494, %4496
  %4498 = icmp eq <8 x i64> %4425, zeroinitializer
  %4499 = select <8 x i1> %4498, <8 x double> %4412, <8 x double> %4497
  br label %4500

4500:                                             ; preds = %4492, %4419
  %4501 = phi <8 x double> [ %4499, %4492 ], [ %4412, %4419 ]
  %4502 = getelementptr inbounds nuw i8, ptr %4367, i64 3008
  %4503 = load <8 x double>, ptr %4502, align 64, !tbaa !26, !noalias !177
  %4504 = getelementptr inbounds nuw i8, ptr %4367, i64 3072
  %4505 = load <8 x double>, ptr %4504, align 64, !tbaa !26, !noalias !177
  %4506 = getelementptr inbounds nuw i8, ptr %4367, i64 3136
  %4507 = load <8 x double>, ptr %4506, align 64, !tbaa !26, !noalias !177
  %4508 = getelementptr inbounds nuw i8, ptr %4367, i64 2944
  %4509 = load <8 x double>, ptr %4508, align 64, !tbaa !26, !noalias !177
  %4510 = load <8 x double>, ptr %4367, align 64, !tbaa !26, !noalias !177
  %4511 = fmul <8 x double> %4510, splat (double 5.000000e-04)
  br label %4512

4512:                                             ; preds = %4500, %4512
  %4513 = phi <8 x i64> [ splat (i64 -1), %4500 ], [ %4535, %4512 ]
  %4514 = phi i32 [ 0, %4500 ], [ %4536, %4512 ]
  %4515 = phi <8 x double> [ %4414, %4500 ], [ %4532, %4512 ]
  %4516 = fmul <8 x double> %4515, splat (double 3.000000e+00)
  %4517 = fmul <8 x double> %4516, %4507
  %4518 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4505, <8 x double> splat (double 2.000000e+00), <8 x double> %4517)
  %4519 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4515, <8 x double> %4518, <8 x double> %4503)
  %4520 = fdiv <8 x double> splat (double 1.000000e+00), %4519
  %4521 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4515, <8 x double> %4507, <8 x double> %4505)
  %4522 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4515, <8 x double> %4521, <8 x double> %4503)
  %4523 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4515, <8 x double> %4522, <8 x double> %4509)
  %4524 = fsub <8 x double> %4523, %4501
  %4525 = fmul <8 x double> %4524, %4520
  %4526 = fmul <8 x double> %4525, %4525
  %4527 = fmul <8 x double> %4520, %4526
  %4528 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4516, <8 x double> %4507, <8 x double> %4505)
  %4529 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4527, <8 x double> %4528, <8 x double> %4525)
  %4530 = fsub <8 x double> %4515, %4529
  %4531 = icmp eq <8 x i64> %4513, zeroinitializer
  %4532 = select <8 x i1> %4531, <8 x double> %4515, <8 x double> %4530
  %4533 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4529)
  %4534 = fcmp oge <8 x double> %4533, %4511
  %4535 = select <8 x i1> %4534, <8 x i64> %4513, <8 x i64> zeroinitializer
  %4536 = add nuw nsw i32 %4514, 1
  %4537 = icmp samesign ult i32 %4514, 3
  %4538 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4535)
  %4539 = icmp ne i64 %4538, 0
  %4540 = select i1 %4537, i1 %4539, i1 false
  br i1 %4540, label %4512, label %4541, !llvm.loop !80

4541:                                             ; preds = %4512
  %4542 = fmul <8 x double> %4510, splat (double 2.800000e-01)
  %4543 = fcmp ogt <8 x double> %4532, %4542
  %4544 = select <8 x i1> %4543, <8 x double> %4532, <8 x double> %4542
  %4545 = fcmp olt <8 x double> %4544, %4510
  %4546 = select <8 x i1> %4545, <8 x double> %4544, <8 x double> %4510
  %4547 = icmp eq <8 x i64> %4416, zeroinitializer
  %4548 = select <8 x i1> %4547, <8 x double> %4414, <8 x double> %4546
  %4549 = fcmp olt <8 x double> %4410, %4405
  %4550 = select <8 x i1> %4547, <8 x i1> splat (i1 true), <8 x i1> %4549
  %4551 = select <8 x i1> %4550, <8 x double> %4410, <8 x double> %4405
  br label %4552

4552:                                             ; preds = %4541, %4363
  %4553 = phi <8 x double> [ %4551, %4541 ], [ %4410, %4363 ]
  %4554 = phi <8 x double> [ %4548, %4541 ], [ %4414, %4363 ]
  %4555 = phi <8 x double> [ %4501, %4541 ], [ %4412, %4363 ]
  %4556 = fsub <8 x double> %4405, %4553
  %4557 = fsub <8 x double> %4554, %4414
  %4558 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4557)
  %4559 = getelementptr inbounds nuw i8, ptr %4367, i64 3456
  %4560 = load <8 x double>, ptr %4559, align 64, !tbaa !26
  %4561 = fsub <8 x double> %4556, %4560
  %4562 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4561)
  %4563 = getelementptr inbounds nuw i8, ptr %4367, i64 8768
  %4564 = load <8 x double>, ptr %4563, align 64, !tbaa !26
  %4565 = fmul <8 x double> %4564, %4562
  %4566 = icmp eq <8 x i64> %4416, zeroinitializer
  %4567 = select <8 x i1> %4566, <8 x double> %4565, <8 x double> %4558
  br i1 %4418, label %4584, label %4568

4568:                                             ; preds = %4552
  %4569 = getelementptr inbounds nuw i8, ptr %4367, i64 8064
  %4570 = load <8 x double>, ptr %4569, align 64, !tbaa !26
  %4571 = fmul <8 x double> %4570, splat (double 2.000000e+00)
  %4572 = getelementptr inbounds nuw i8, ptr %4367, i64 6784
  %4573 = load <8 x double>, ptr %4572, align 64, !tbaa !26
  %4574 = getelementptr inbounds nuw i8, ptr %4367, i64 6848
  %4575 = load <8 x double>, ptr %4574, align 64, !tbaa !26
  %4576 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4573, <8 x double> %4374, <8 x double> %4575)
  %4577 = getelementptr inbounds nuw i8, ptr %4367, i64 1152
  %4578 = load <8 x double>, ptr %4577, align 64, !tbaa !26
  %4579 = fneg <8 x double> %4578
  %4580 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4579, <8 x double> %4374, <8 x double> %4576)
  %4581 = fmul <8 x double> %4571, %4580
  %4582 = fsub <8 x double> %4387, %4581
  %4583 = select <8 x i1> %4566, <8 x double> %4387, <8 x double> %4582
  br label %4584

4584:                                             ; preds = %4552, %4568
  %4585 = phi <8 x double> [ %4583, %4568 ], [ %4387, %4552 ]
  %4586 = getelementptr inbounds nuw i8, ptr %4367, i64 3648
  store <8 x double> %4402, ptr %4586, align 64, !tbaa !26
  store <8 x double> %4556, ptr %4559, align 64, !tbaa !26
  %4587 = getelementptr inbounds nuw i8, ptr %4367, i64 3520
  store <8 x double> %4553, ptr %4587, align 64, !tbaa !26
  %4588 = getelementptr inbounds nuw i8, ptr %4367, i64 3392
  %4589 = load <8 x double>, ptr %4588, align 64, !tbaa !26
  %4590 = select <8 x i1> %4566, <8 x double> %4589, <8 x double> %4555
  store <8 x double> %4590, ptr %4588, align 64, !tbaa !26
  %4591 = select <8 x i1> %4566, <8 x double> %4414, <8 x double> %4554
  store <8 x double> %4591, ptr %4413, align 64, !tbaa !26
  %4592 = getelementptr inbounds nuw i8, ptr %4367, i64 3904
  store <8 x double> %4371, ptr %4592, align 64, !tbaa !26
  %4593 = getelementptr inbounds nuw i8, ptr %4367, i64 3968
  store <8 x double> %4374, ptr %4593, align 64, !tbaa !26
  %4594 = getelementptr inbounds nuw i8, ptr %4367, i64 3584
  %4595 = load <8 x double>, ptr %4594, align 64, !tbaa !26
  %4596 = getelementptr inbounds nuw i8, ptr %4367, i64 6336
  %4597 = load <8 x double>, ptr %4596, align 64, !tbaa !26
  %4598 = fsub <8 x double> %4597, %4374
  %4599 = getelementptr inbounds nuw i8, ptr %4367, i64 9216
  %4600 = load <8 x double>, ptr %4599, align 64, !tbaa !26
  %4601 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4595, <8 x double> %4600, <8 x double> splat (double 1.000000e+00))
  %4602 = fdiv <8 x double> %4598, %4601
  %4603 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4374, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %4604 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4374, <8 x double> %4603, <8 x double> splat (double 0x4142F8368A3D70A4))
  %4605 = fneg <8 x double> %4369
  %4606 = fmul <8 x double> %4604, %4605
  %4607 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4595, <8 x double> %4602, <8 x double> %4606)
  %4608 = getelementptr inbounds nuw i8, ptr %4367, i64 3840
  store <8 x double> %4607, ptr %4608, align 64, !tbaa !26
  %4609 = getelementptr inbounds nuw i8, ptr %4367, i64 7744
  %4610 = load <8 x double>, ptr %4609, align 64, !tbaa !26
  %4611 = fsub <8 x double> %4597, %4610
  %4612 = fsub <8 x double> %4611, %4602
  %4613 = getelementptr inbounds nuw i8, ptr %4367, i64 4032
  store <8 x double> %4612, ptr %4613, align 64, !tbaa !26
  %4614 = getelementptr inbounds nuw i8, ptr %4367, i64 8320
  %4615 = load <8 x double>, ptr %4614, align 64, !tbaa !26
  %4616 = getelementptr inbounds nuw i8, ptr %4367, i64 8384
  %4617 = load <8 x double>, ptr %4616, align 64, !tbaa !26
  %4618 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4615, <8 x double> %4374, <8 x double> %4617)
  %4619 = getelementptr inbounds nuw i8, ptr %4367, i64 7680
  %4620 = load <8 x double>, ptr %4619, align 64, !tbaa !26
  %4621 = getelementptr inbounds nuw i8, ptr %4367, i64 4608
  %4622 = load <8 x double>, ptr %4621, align 64, !tbaa !26
  %4623 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4392, <8 x double> %4622, <8 x double> %4620)
  %4624 = getelementptr inbounds nuw i8, ptr %4367, i64 5504
  %4625 = load <8 x double>, ptr %4624, align 64, !tbaa !26
  %4626 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4398, <8 x double> %4625, <8 x double> %4623)
  %4627 = fmul <8 x double> %4401, %4626
  %4628 = getelementptr inbounds nuw i8, ptr %4367, i64 3712
  store <8 x double> %4627, ptr %4628, align 64, !tbaa !26
  %4629 = getelementptr inbounds nuw i8, ptr %4367, i64 4672
  %4630 = load <8 x double>, ptr %4629, align 64, !tbaa !26
  %4631 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4392, <8 x double> %4630, <8 x double> %4585)
  %4632 = getelementptr inbounds nuw i8, ptr %4367, i64 5568
  %4633 = load <8 x double>, ptr %4632, align 64, !tbaa !26
  %4634 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4398, <8 x double> %4633, <8 x double> %4631)
  %4635 = fmul <8 x double> %4401, %4634
  %4636 = getelementptr inbounds nuw i8, ptr %4367, i64 3776
  store <8 x double> %4635, ptr %4636, align 64, !tbaa !26
  %4637 = getelementptr inbounds nuw i8, ptr %4367, i64 4992
  %4638 = load <8 x double>, ptr %4637, align 64, !tbaa !26
  %4639 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4392, <8 x double> %4638, <8 x double> %4618)
  %4640 = getelementptr inbounds nuw i8, ptr %4367, i64 5888
  %4641 = load <8 x double>, ptr %4640, align 64, !tbaa !26
  %4642 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4398, <8 x double> %4641, <8 x double> %4639)
  %4643 = fmul <8 x double> %4401, %4642
  %4644 = getelementptr inbounds nuw i8, ptr %4367, i64 4096
  store <8 x double> %4643, ptr %4644, align 64, !tbaa !26
  %4645 = fcmp ogt <8 x double> %4365, %4567
  %4646 = select <8 x i1> %4645, <8 x double> %4365, <8 x double> %4567
  %4647 = add nuw nsw i64 %4364, 1
  %4648 = load i64, ptr %175, align 8, !tbaa !20
  %4649 = icmp slt i64 %4647, %4648
  br i1 %4649, label %4363, label %4650, !llvm.loop !180

4650:                                             ; preds = %4584, %4161
  %4651 = phi <8 x double> [ zeroinitializer, %4161 ], [ %4646, %4584 ]
  %4652 = phi i64 [ %4164, %4161 ], [ %4648, %4584 ]
  %4653 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %4654 = fadd <8 x double> %4653, splat (double 1.000000e+00)
  store <8 x double> %4654, ptr %192, align 64, !tbaa !26
  %4655 = icmp sgt i64 %4652, 0
  br i1 %4655, label %4656, label %4662

4656:                                             ; preds = %4650
  %4657 = load ptr, ptr %148, align 8, !tbaa !28
  %4658 = load i64, ptr %137, align 16, !tbaa !21
  %4659 = add nsw i64 %4658, -1
  br label %4684

4660:                                             ; preds = %4710
  %4661 = fcmp oeq <8 x double> %4725, zeroinitializer
  br label %4662

4662:                                             ; preds = %4660, %4650
  %4663 = phi <8 x i1> [ splat (i1 true), %4650 ], [ %4661, %4660 ]
  %4664 = load i64, ptr %228, align 32, !tbaa !24
  %4665 = sitofp i64 %4664 to double
  %4666 = insertelement <8 x double> poison, double %4665, i64 0
  %4667 = shufflevector <8 x double> %4666, <8 x double> poison, <8 x i32> zeroinitializer
  %4668 = fcmp oge <8 x double> %4654, %4667
  %4669 = and <8 x i1> %4663, %4668
  %4670 = load <8 x i64>, ptr %128, align 64, !tbaa !26
  %4671 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %4672 = fcmp olt <8 x double> %4651, %4671
  %4673 = or <8 x i1> %4672, %4669
  %4674 = fcmp oge <8 x double> %4654, splat (double 2.000000e+01)
  %4675 = or <8 x i1> %4674, %4673
  %4676 = select <8 x i1> %4675, <8 x i64> %4670, <8 x i64> zeroinitializer
  store <8 x i64> %4676, ptr %152, align 64, !tbaa !26
  %4677 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4676)
  %4678 = icmp eq i64 %4677, 0
  br i1 %4678, label %566, label %4679, !llvm.loop !61

4679:                                             ; preds = %4662
  %4680 = load i64, ptr %175, align 8, !tbaa !20
  %4681 = icmp sgt i64 %4680, 0
  br i1 %4681, label %4682, label %4728

4682:                                             ; preds = %4679
  %4683 = icmp eq <8 x i64> %4676, zeroinitializer
  br label %5053

4684:                                             ; preds = %4656, %4710
  %4685 = phi i64 [ 0, %4656 ], [ %4726, %4710 ]
  %4686 = phi <8 x double> [ zeroinitializer, %4656 ], [ %4725, %4710 ]
  %4687 = getelementptr inbounds nuw %struct.Piece, ptr %4657, i64 %4685
  %4688 = getelementptr inbounds nuw i8, ptr %4687, i64 9472
  %4689 = load i64, ptr %4688, align 64, !tbaa !31
  %4690 = icmp sgt i64 %4658, %4689
  br i1 %4690, label %4699, label %4691

4691:                                             ; preds = %4684
  %4692 = getelementptr inbounds nuw i8, ptr %4687, i64 9608
  %4693 = load ptr, ptr %4692, align 8, !tbaa !78
  %4694 = getelementptr inbounds <8 x double>, ptr %4693, i64 %4659
  %4695 = load <8 x double>, ptr %4694, align 64, !tbaa !26
  %4696 = getelementptr inbounds nuw i8, ptr %4687, i64 1920
  %4697 = load <8 x double>, ptr %4696, align 64, !tbaa !26
  %4698 = fmul <8 x double> %4695, %4697
  br label %4710

4699:                                             ; preds = %4684
  %4700 = getelementptr inbounds nuw i8, ptr %4687, i64 4160
  %4701 = load <8 x double>, ptr %4700, align 64, !tbaa !26
  %4702 = getelementptr inbounds nuw i8, ptr %4687, i64 1920
  %4703 = load <8 x double>, ptr %4702, align 64, !tbaa !26
  %4704 = getelementptr inbounds nuw i8, ptr %4687, i64 9608
  %4705 = load ptr, ptr %4704, align 8, !tbaa !78
  %4706 = getelementptr inbounds <8 x double>, ptr %4705, i64 %4659
  %4707 = load <8 x double>, ptr %4706, align 64, !tbaa !26
  %4708 = fsub <8 x double> %4701, %4703
  %4709 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4707, <8 x double> %4708, <8 x double> %4703)
  br label %4710

4710:                                             ; preds = %4691, %4699
  %4711 = phi <8 x double> [ %4698, %4691 ], [ %4709, %4699 ]
  %4712 = getelementptr inbounds nuw i8, ptr %4687, i64 9280
  %4713 = load <8 x i64>, ptr %4712, align 64, !tbaa !26
  %4714 = getelementptr inbounds nuw i8, ptr %4687, i64 8576
  %4715 = load <8 x double>, ptr %4714, align 64, !tbaa !26
  %4716 = fcmp une <8 x double> %4715, zeroinitializer
  %4717 = getelementptr inbounds nuw i8, ptr %4687, i64 3392
  %4718 = load <8 x double>, ptr %4717, align 64, !tbaa !26
  %4719 = fcmp uge <8 x double> %4718, %4711
  %4720 = select <8 x i1> %4719, <8 x i1> splat (i1 true), <8 x i1> %4716
  %4721 = icmp eq <8 x i64> %4713, zeroinitializer
  %4722 = select <8 x i1> %4720, <8 x i1> splat (i1 true), <8 x i1> %4721
  %4723 = select <8 x i1> %4722, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %4724 = fcmp ogt <8 x double> %4686, %4723
  %4725 = select <8 x i1> %4724, <8 x double> %4686, <8 x double> %4723
  %4726 = add nuw nsw i64 %4685, 1
  %4727 = icmp eq i64 %4726, %4652
  br i1 %4727, label %4660, label %4684, !llvm.loop !181

4728:                                             ; preds = %5171, %4679
  %4729 = phi i64 [ %4680, %4679 ], [ %5177, %5171 ]
  %4730 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %4731 = fadd <8 x double> %4730, splat (double 1.000000e+00)
  %4732 = icmp eq <8 x i64> %4676, zeroinitializer
  %4733 = select <8 x i1> %4732, <8 x double> %4730, <8 x double> %4731
  store <8 x double> %4733, ptr %180, align 64, !tbaa !26
  %4734 = fcmp ogt <8 x double> %4733, splat (double 4.000000e+01)
  %4735 = select <8 x i1> %4734, <8 x i64> %4676, <8 x i64> zeroinitializer
  %4736 = xor <8 x i64> %4735, %4676
  %4737 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4738 = fadd <8 x double> %4737, splat (double 1.000000e+00)
  %4739 = icmp eq <8 x i64> %4735, zeroinitializer
  %4740 = select <8 x i1> %4739, <8 x double> %4737, <8 x double> %4738
  store <8 x double> %4740, ptr %145, align 64, !tbaa !26
  %4741 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %4742 = load <8 x double>, ptr %230, align 64, !tbaa !26
  %4743 = fsub <8 x double> %4741, %4742
  %4744 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4743)
  %4745 = load <8 x double>, ptr %231, align 64, !tbaa !26
  %4746 = fmul <8 x double> %4745, splat (double 1.500000e+00)
  %4747 = fcmp ogt <8 x double> %4744, %4746
  %4748 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %4749 = fcmp ogt <8 x double> %4748, splat (double 2.000000e-03)
  %4750 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %4751 = fcmp oeq <8 x double> %4750, zeroinitializer
  %4752 = and <8 x i1> %4747, %4751
  %4753 = and <8 x i1> %4749, %4752
  %4754 = fdiv <8 x double> %4745, %4744
  %4755 = select <8 x i1> %4753, <8 x i64> %4736, <8 x i64> zeroinitializer
  %4756 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %4757 = fcmp ogt <8 x double> %4756, %4748
  %4758 = select <8 x i1> %4757, <8 x double> %4756, <8 x double> %4748
  %4759 = select <8 x i1> %4753, <8 x double> zeroinitializer, <8 x double> %4758
  %4760 = icmp eq <8 x i64> %4755, zeroinitializer
  %4761 = select <8 x i1> %4760, <8 x double> %4756, <8 x double> %4759
  store <8 x double> %4761, ptr %178, align 64, !tbaa !26
  %4762 = fcmp ogt <8 x double> %4754, splat (double 5.000000e-02)
  %4763 = select <8 x i1> %4762, <8 x double> %4754, <8 x double> splat (double 5.000000e-02)
  %4764 = fcmp olt <8 x double> %4763, splat (double 0x3FEE666666666666)
  %4765 = select <8 x i1> %4764, <8 x double> %4763, <8 x double> splat (double 0x3FEE666666666666)
  %4766 = fmul <8 x double> %4748, %4765
  %4767 = fcmp ogt <8 x double> %4766, splat (double 0x3EB0C6F7A0B5ED8D)
  %4768 = select <8 x i1> %4767, <8 x double> %4766, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4769 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4770 = select <8 x i1> %4760, <8 x double> %4769, <8 x double> %4768
  store <8 x double> %4770, ptr %158, align 64, !tbaa !26
  %4771 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %4772 = fadd <8 x double> %4771, splat (double 1.000000e+00)
  %4773 = select <8 x i1> %4760, <8 x double> %4771, <8 x double> %4772
  store <8 x double> %4773, ptr %142, align 64, !tbaa !26
  %4774 = xor <8 x i64> %4755, %4736
  %4775 = icmp sgt i64 %4729, 0
  br i1 %4775, label %4776, label %4894

4776:                                             ; preds = %4728
  %4777 = load ptr, ptr %148, align 8, !tbaa !28
  %4778 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %4779 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %4780 = fcmp une <8 x double> %4778, %4779
  %4781 = fcmp ule <8 x double> %4778, zeroinitializer
  %4782 = or <8 x i1> %4781, %4780
  %4783 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %4784 = fcmp ogt <8 x double> %4748, splat (double 0x3E7AD7F29ABCAF48)
  %4785 = fcmp ogt <8 x double> %4748, splat (double 1.000000e-05)
  %4786 = fcmp ogt <8 x double> %4748, splat (double 1.000000e-04)
  br label %4787

4787:                                             ; preds = %4776, %4887
  %4788 = phi i64 [ 0, %4776 ], [ %4890, %4887 ]
  %4789 = phi <8 x double> [ splat (double 1.000000e+00), %4776 ], [ %4889, %4887 ]
  %4790 = phi <8 x i64> [ zeroinitializer, %4776 ], [ %4838, %4887 ]
  %4791 = phi <8 x i64> [ zeroinitializer, %4776 ], [ %4888, %4887 ]
  %4792 = getelementptr inbounds nuw %struct.Piece, ptr %4777, i64 %4788
  %4793 = getelementptr inbounds nuw i8, ptr %4792, i64 3456
  %4794 = load <8 x double>, ptr %4793, align 64, !tbaa !26
  %4795 = getelementptr inbounds nuw i8, ptr %4792, i64 9280
  %4796 = load <8 x i64>, ptr %4795, align 64, !tbaa !26
  %4797 = xor <8 x i64> %4796, splat (i64 -1)
  %4798 = getelementptr inbounds nuw i8, ptr %4792, i64 1280
  %4799 = load <8 x double>, ptr %4798, align 64, !tbaa !26
  %4800 = fmul <8 x double> %4783, %4799
  %4801 = fcmp ogt <8 x double> %4800, splat (double 0x3E7AD7F29ABCAF48)
  %4802 = fneg <8 x double> %4800
  %4803 = select <8 x i1> %4801, <8 x double> %4802, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4804 = fcmp olt <8 x double> %4794, %4803
  %4805 = select <8 x i1> %4804, <8 x i1> %4782, <8 x i1> zeroinitializer
  %4806 = select <8 x i1> %4805, <8 x i64> %4797, <8 x i64> zeroinitializer
  %4807 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4806)
  %4808 = icmp eq i64 %4807, 0
  br i1 %4808, label %4836, label %4809

4809:                                             ; preds = %4787
  %4810 = getelementptr inbounds nuw i8, ptr %4792, i64 4352
  %4811 = load <8 x double>, ptr %4810, align 64, !tbaa !26
  %4812 = fcmp ole <8 x double> %4811, zeroinitializer
  %4813 = select <8 x i1> %4812, <8 x i64> %4806, <8 x i64> zeroinitializer
  %4814 = getelementptr inbounds nuw i8, ptr %4792, i64 1216
  %4815 = load <8 x double>, ptr %4814, align 64, !tbaa !26
  %4816 = fmul <8 x double> %4815, splat (double -3.000000e-07)
  %4817 = fcmp olt <8 x double> %4794, %4816
  %4818 = select <8 x i1> %4784, <8 x i1> %4817, <8 x i1> zeroinitializer
  %4819 = select <8 x i1> %4818, <8 x i64> %4813, <8 x i64> zeroinitializer
  %4820 = or <8 x i64> %4819, %4790
  %4821 = fcmp olt <8 x double> %4789, splat (double 3.000000e-01)
  %4822 = icmp eq <8 x i64> %4819, zeroinitializer
  %4823 = select <8 x i1> %4822, <8 x i1> splat (i1 true), <8 x i1> %4821
  %4824 = select <8 x i1> %4823, <8 x double> %4789, <8 x double> splat (double 3.000000e-01)
  %4825 = xor <8 x i64> %4813, splat (i64 -1)
  %4826 = and <8 x i64> %4806, %4825
  %4827 = select <8 x i1> %4785, <8 x i64> %4826, <8 x i64> zeroinitializer
  %4828 = fsub <8 x double> %4811, %4794
  %4829 = fdiv <8 x double> %4811, %4828
  %4830 = or <8 x i64> %4827, %4791
  %4831 = or <8 x i64> %4830, %4819
  %4832 = fcmp olt <8 x double> %4824, %4829
  %4833 = icmp eq <8 x i64> %4827, zeroinitializer
  %4834 = select <8 x i1> %4833, <8 x i1> splat (i1 true), <8 x i1> %4832
  %4835 = select <8 x i1> %4834, <8 x double> %4824, <8 x double> %4829
  br label %4836

4836:                                             ; preds = %4787, %4809
  %4837 = phi <8 x i64> [ %4831, %4809 ], [ %4791, %4787 ]
  %4838 = phi <8 x i64> [ %4820, %4809 ], [ %4790, %4787 ]
  %4839 = phi <8 x double> [ %4835, %4809 ], [ %4789, %4787 ]
  %4840 = getelementptr inbounds nuw i8, ptr %4792, i64 3392
  %4841 = load <8 x double>, ptr %4840, align 64, !tbaa !26
  %4842 = getelementptr inbounds nuw i8, ptr %4792, i64 8576
  %4843 = load <8 x double>, ptr %4842, align 64, !tbaa !26
  %4844 = fcmp oeq <8 x double> %4843, zeroinitializer
  %4845 = getelementptr inbounds nuw i8, ptr %4792, i64 1856
  %4846 = load <8 x double>, ptr %4845, align 64, !tbaa !26
  %4847 = fmul <8 x double> %4846, splat (double 0x3FEFF7CED916872B)
  %4848 = fcmp olt <8 x double> %4841, %4847
  %4849 = and <8 x i1> %4844, %4848
  %4850 = and <8 x i1> %4786, %4849
  %4851 = bitcast <8 x i1> %4850 to i8
  %4852 = icmp eq i8 %4851, 0
  br i1 %4852, label %4863, label %4853

4853:                                             ; preds = %4836
  %4854 = getelementptr inbounds nuw i8, ptr %4792, i64 4288
  %4855 = load <8 x double>, ptr %4854, align 64, !tbaa !26
  %4856 = fsub <8 x double> %4855, %4846
  %4857 = fsub <8 x double> %4855, %4841
  %4858 = fdiv <8 x double> %4856, %4857
  %4859 = select <8 x i1> %4850, <8 x i64> splat (i64 -1), <8 x i64> %4837
  %4860 = fcmp uge <8 x double> %4839, %4858
  %4861 = select <8 x i1> %4850, <8 x i1> %4860, <8 x i1> zeroinitializer
  %4862 = select <8 x i1> %4861, <8 x double> %4858, <8 x double> %4839
  br label %4863

4863:                                             ; preds = %4853, %4836
  %4864 = phi <8 x i64> [ %4859, %4853 ], [ %4837, %4836 ]
  %4865 = phi <8 x double> [ %4862, %4853 ], [ %4839, %4836 ]
  %4866 = fcmp oeq <8 x double> %4843, splat (double 1.000000e+00)
  %4867 = getelementptr inbounds nuw i8, ptr %4792, i64 3648
  %4868 = load <8 x double>, ptr %4867, align 64, !tbaa !26
  %4869 = getelementptr inbounds nuw i8, ptr %4792, i64 1984
  %4870 = load <8 x double>, ptr %4869, align 64, !tbaa !26
  %4871 = fmul <8 x double> %4870, splat (double 1.000100e+00)
  %4872 = fcmp ogt <8 x double> %4868, %4871
  %4873 = and <8 x i1> %4866, %4872
  %4874 = and <8 x i1> %4786, %4873
  %4875 = bitcast <8 x i1> %4874 to i8
  %4876 = icmp eq i8 %4875, 0
  br i1 %4876, label %4887, label %4877

4877:                                             ; preds = %4863
  %4878 = getelementptr inbounds nuw i8, ptr %4792, i64 4544
  %4879 = load <8 x double>, ptr %4878, align 64, !tbaa !26
  %4880 = fsub <8 x double> %4870, %4879
  %4881 = fsub <8 x double> %4868, %4879
  %4882 = fdiv <8 x double> %4880, %4881
  %4883 = select <8 x i1> %4874, <8 x i64> splat (i64 -1), <8 x i64> %4864
  %4884 = fcmp uge <8 x double> %4865, %4882
  %4885 = select <8 x i1> %4874, <8 x i1> %4884, <8 x i1> zeroinitializer
  %4886 = select <8 x i1> %4885, <8 x double> %4882, <8 x double> %4865
  br label %4887

4887:                                             ; preds = %4863, %4877
  %4888 = phi <8 x i64> [ %4883, %4877 ], [ %4864, %4863 ]
  %4889 = phi <8 x double> [ %4886, %4877 ], [ %4865, %4863 ]
  %4890 = add nuw nsw i64 %4788, 1
  %4891 = icmp eq i64 %4890, %4729
  br i1 %4891, label %4892, label %4787, !llvm.loop !182

4892:                                             ; preds = %4887
  %4893 = icmp eq <8 x i64> %4838, zeroinitializer
  br label %4894

4894:                                             ; preds = %4892, %4728
  %4895 = phi <8 x i64> [ zeroinitializer, %4728 ], [ %4888, %4892 ]
  %4896 = phi <8 x i1> [ splat (i1 true), %4728 ], [ %4893, %4892 ]
  %4897 = phi <8 x double> [ splat (double 1.000000e+00), %4728 ], [ %4889, %4892 ]
  %4898 = and <8 x i64> %4895, %4774
  %4899 = fcmp ogt <8 x double> %4761, %4748
  %4900 = select <8 x i1> %4899, <8 x double> %4761, <8 x double> %4748
  %4901 = select <8 x i1> %4896, <8 x double> %4900, <8 x double> zeroinitializer
  %4902 = icmp eq <8 x i64> %4898, zeroinitializer
  %4903 = select <8 x i1> %4902, <8 x double> %4761, <8 x double> %4901
  %4904 = fcmp ogt <8 x double> %4897, splat (double 5.000000e-02)
  %4905 = select <8 x i1> %4904, <8 x double> %4897, <8 x double> splat (double 5.000000e-02)
  %4906 = fcmp olt <8 x double> %4905, splat (double 0x3FEE666666666666)
  %4907 = select <8 x i1> %4906, <8 x double> %4905, <8 x double> splat (double 0x3FEE666666666666)
  %4908 = fmul <8 x double> %4748, %4907
  %4909 = fcmp ogt <8 x double> %4908, splat (double 0x3EB0C6F7A0B5ED8D)
  %4910 = select <8 x i1> %4909, <8 x double> %4908, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4911 = select <8 x i1> %4902, <8 x double> %4770, <8 x double> %4910
  %4912 = fadd <8 x double> %4773, splat (double 1.000000e+00)
  %4913 = select <8 x i1> %4902, <8 x double> %4773, <8 x double> %4912
  %4914 = xor <8 x i64> %4898, %4774
  %4915 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4916 = fmul <8 x double> %4915, splat (double 5.000000e-01)
  %4917 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4918 = load <8 x i64>, ptr %162, align 64, !tbaa !26
  %4919 = fneg <8 x double> %4916
  %4920 = icmp eq <8 x i64> %4918, zeroinitializer
  %4921 = select <8 x i1> %4920, <8 x double> %4919, <8 x double> %4916
  %4922 = fadd <8 x double> %4917, %4921
  %4923 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %4924 = fsub <8 x double> %4923, %4922
  %4925 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %4926 = fsub <8 x double> %4925, %4922
  %4927 = fneg <8 x double> %4924
  %4928 = select <8 x i1> %4920, <8 x double> %4927, <8 x double> %4924
  %4929 = fneg <8 x double> %4926
  %4930 = select <8 x i1> %4920, <8 x double> %4929, <8 x double> %4926
  %4931 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4932 = fcmp oeq <8 x double> %4931, zeroinitializer
  %4933 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %4934 = fcmp oeq <8 x double> %4933, zeroinitializer
  %4935 = and <8 x i1> %4932, %4934
  %4936 = fcmp olt <8 x double> %4928, splat (double -4.000000e-03)
  %4937 = and <8 x i1> %4935, %4936
  %4938 = fcmp ogt <8 x double> %4930, splat (double 4.000000e-03)
  %4939 = and <8 x i1> %4938, %4937
  %4940 = and <8 x i1> %4749, %4939
  %4941 = fsub <8 x double> %4928, %4930
  %4942 = fdiv <8 x double> %4928, %4941
  %4943 = select <8 x i1> %4940, <8 x i64> %4914, <8 x i64> zeroinitializer
  %4944 = fcmp ogt <8 x double> %4903, %4748
  %4945 = icmp eq <8 x i64> %4943, zeroinitializer
  %4946 = select <8 x i1> %4945, <8 x i1> splat (i1 true), <8 x i1> %4944
  %4947 = select <8 x i1> %4946, <8 x double> %4903, <8 x double> %4748
  store <8 x double> %4947, ptr %178, align 64, !tbaa !26
  %4948 = fcmp ogt <8 x double> %4942, splat (double 5.000000e-02)
  %4949 = select <8 x i1> %4948, <8 x double> %4942, <8 x double> splat (double 5.000000e-02)
  %4950 = fcmp olt <8 x double> %4949, splat (double 0x3FEE666666666666)
  %4951 = select <8 x i1> %4950, <8 x double> %4949, <8 x double> splat (double 0x3FEE666666666666)
  %4952 = fmul <8 x double> %4748, %4951
  %4953 = fcmp ogt <8 x double> %4952, splat (double 0x3EB0C6F7A0B5ED8D)
  %4954 = select <8 x i1> %4953, <8 x double> %4952, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4955 = select <8 x i1> %4945, <8 x double> %4911, <8 x double> %4954
  store <8 x double> %4955, ptr %158, align 64, !tbaa !26
  %4956 = fadd <8 x double> %4913, splat (double 1.000000e+00)
  %4957 = select <8 x i1> %4945, <8 x double> %4913, <8 x double> %4956
  store <8 x double> %4957, ptr %142, align 64, !tbaa !26
  %4958 = xor <8 x i64> %4943, %4914
  %4959 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4960 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %4961 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %4962 = fsub <8 x double> %4960, %4961
  %4963 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %4964 = fcmp une <8 x double> %4963, splat (double 1.000000e+00)
  %4965 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %4966 = fsub <8 x double> %4923, %4965
  %4967 = select <8 x i1> %4964, <8 x double> splat (double -1.000000e+00), <8 x double> %4966
  %4968 = fcmp une <8 x double> %4963, splat (double 2.000000e+00)
  %4969 = fsub <8 x double> %4959, %4965
  %4970 = select <8 x i1> %4968, <8 x double> %4967, <8 x double> %4969
  %4971 = fcmp une <8 x double> %4963, splat (double 3.000000e+00)
  %4972 = fsub <8 x double> %4962, %4965
  %4973 = select <8 x i1> %4971, <8 x double> %4970, <8 x double> %4972
  %4974 = fcmp une <8 x double> %4963, splat (double 4.000000e+00)
  %4975 = fsub <8 x double> %4965, %4962
  %4976 = select <8 x i1> %4974, <8 x double> %4973, <8 x double> %4975
  br i1 %4775, label %4977, label %5009

4977:                                             ; preds = %4894
  %4978 = load ptr, ptr %148, align 8, !tbaa !28
  %4979 = and i64 %4729, 1
  %4980 = icmp eq i64 %4729, 1
  br i1 %4980, label %4999, label %4981

4981:                                             ; preds = %4977
  %4982 = and i64 %4729, 9223372036854775806
  br label %4983

4983:                                             ; preds = %4983, %4981
  %4984 = phi i64 [ 0, %4981 ], [ %4996, %4983 ]
  %4985 = phi <8 x double> [ splat (double 1.000000e+09), %4981 ], [ %4995, %4983 ]
  %4986 = phi i64 [ 0, %4981 ], [ %4997, %4983 ]
  %4987 = getelementptr inbounds nuw %struct.Piece, ptr %4978, i64 %4984, i32 41
  %4988 = load <8 x double>, ptr %4987, align 64, !tbaa !26
  %4989 = fcmp olt <8 x double> %4985, %4988
  %4990 = select <8 x i1> %4989, <8 x double> %4985, <8 x double> %4988
  %4991 = or disjoint i64 %4984, 1
  %4992 = getelementptr inbounds nuw %struct.Piece, ptr %4978, i64 %4991, i32 41
  %4993 = load <8 x double>, ptr %4992, align 64, !tbaa !26
  %4994 = fcmp olt <8 x double> %4990, %4993
  %4995 = select <8 x i1> %4994, <8 x double> %4990, <8 x double> %4993
  %4996 = add nuw nsw i64 %4984, 2
  %4997 = add i64 %4986, 2
  %4998 = icmp eq i64 %4997, %4982
  br i1 %4998, label %4999, label %4983, !llvm.loop !183

4999:                                             ; preds = %4983, %4977
  %5000 = phi <8 x double> [ poison, %4977 ], [ %4995, %4983 ]
  %5001 = phi i64 [ 0, %4977 ], [ %4996, %4983 ]
  %5002 = phi <8 x double> [ splat (double 1.000000e+09), %4977 ], [ %4995, %4983 ]
  %5003 = icmp eq i64 %4979, 0
  br i1 %5003, label %5009, label %5004

5004:                                             ; preds = %4999
  %5005 = getelementptr inbounds nuw %struct.Piece, ptr %4978, i64 %5001, i32 41
  %5006 = load <8 x double>, ptr %5005, align 64, !tbaa !26
  %5007 = fcmp olt <8 x double> %5002, %5006
  %5008 = select <8 x i1> %5007, <8 x double> %5002, <8 x double> %5006
  br label %5009

5009:                                             ; preds = %5004, %4999, %4894
  %5010 = phi <8 x double> [ splat (double 1.000000e+09), %4894 ], [ %5000, %4999 ], [ %5008, %5004 ]
  %5011 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %5012 = fsub <8 x double> %5011, %4961
  %5013 = fsub <8 x double> %4925, %4965
  %5014 = select <8 x i1> %4964, <8 x double> splat (double -1.000000e+00), <8 x double> %5013
  %5015 = fsub <8 x double> %5010, %4965
  %5016 = select <8 x i1> %4968, <8 x double> %5014, <8 x double> %5015
  %5017 = fsub <8 x double> %5012, %4965
  %5018 = select <8 x i1> %4971, <8 x double> %5016, <8 x double> %5017
  %5019 = fsub <8 x double> %4965, %5012
  %5020 = select <8 x i1> %4974, <8 x double> %5018, <8 x double> %5019
  %5021 = fcmp une <8 x double> %4963, zeroinitializer
  %5022 = fcmp oge <8 x double> %4748, splat (double 5.000000e-02)
  %5023 = and <8 x i1> %5022, %5021
  %5024 = fcmp olt <8 x double> %4976, zeroinitializer
  %5025 = and <8 x i1> %5023, %5024
  %5026 = fsub <8 x double> %5020, %4976
  %5027 = fmul <8 x double> %5026, splat (double 2.000000e-02)
  %5028 = fcmp ogt <8 x double> %5020, %5027
  %5029 = and <8 x i1> %5025, %5028
  %5030 = fsub <8 x double> %4976, %5020
  %5031 = fdiv <8 x double> %4976, %5030
  %5032 = fcmp olt <8 x double> %5031, splat (double 0x3FEE666666666666)
  %5033 = and <8 x i1> %5032, %5029
  %5034 = select <8 x i1> %5033, <8 x i64> %4958, <8 x i64> zeroinitializer
  %5035 = fcmp ogt <8 x double> %4947, %4748
  %5036 = icmp eq <8 x i64> %5034, zeroinitializer
  %5037 = select <8 x i1> %5036, <8 x i1> splat (i1 true), <8 x i1> %5035
  %5038 = select <8 x i1> %5037, <8 x double> %4947, <8 x double> %4748
  store <8 x double> %5038, ptr %178, align 64, !tbaa !26
  %5039 = fcmp ogt <8 x double> %5031, splat (double 5.000000e-02)
  %5040 = select <8 x i1> %5039, <8 x double> %5031, <8 x double> splat (double 5.000000e-02)
  %5041 = fcmp olt <8 x double> %5040, splat (double 0x3FEE666666666666)
  %5042 = select <8 x i1> %5041, <8 x double> %5040, <8 x double> splat (double 0x3FEE666666666666)
  %5043 = fmul <8 x double> %4748, %5042
  %5044 = fcmp ogt <8 x double> %5043, splat (double 0x3EB0C6F7A0B5ED8D)
  %5045 = select <8 x i1> %5044, <8 x double> %5043, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %5046 = select <8 x i1> %5036, <8 x double> %4955, <8 x double> %5045
  store <8 x double> %5046, ptr %158, align 64, !tbaa !26
  %5047 = fadd <8 x double> %4957, splat (double 1.000000e+00)
  %5048 = select <8 x i1> %5036, <8 x double> %4957, <8 x double> %5047
  store <8 x double> %5048, ptr %142, align 64, !tbaa !26
  %5049 = xor <8 x i64> %5034, %4958
  %5050 = or <8 x i64> %5049, %4735
  %5051 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5050)
  %5052 = icmp eq i64 %5051, 0
  br i1 %5052, label %566, label %5179

5053:                                             ; preds = %4682, %5171
  %5054 = phi i64 [ 0, %4682 ], [ %5176, %5171 ]
  %5055 = load ptr, ptr %148, align 8, !tbaa !28
  %5056 = getelementptr inbounds nuw %struct.Piece, ptr %5055, i64 %5054
  %5057 = getelementptr inbounds nuw i8, ptr %5056, i64 9472
  %5058 = load i64, ptr %5057, align 64, !tbaa !31
  %5059 = icmp eq i64 %5058, 0
  %5060 = getelementptr inbounds nuw i8, ptr %5056, i64 9544
  %5061 = load ptr, ptr %5060, align 8, !tbaa !88
  br i1 %5059, label %5062, label %5099

5062:                                             ; preds = %5053
  %5063 = load <8 x double>, ptr %5061, align 64, !tbaa !26
  %5064 = getelementptr inbounds nuw i8, ptr %5056, i64 1728
  %5065 = load <8 x double>, ptr %5064, align 64, !tbaa !26
  %5066 = getelementptr inbounds nuw i8, ptr %5061, i64 64
  %5067 = load <8 x double>, ptr %5066, align 64, !tbaa !26
  %5068 = fsub <8 x double> %5067, %5063
  %5069 = fneg <8 x double> %5065
  %5070 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5069, <8 x double> %5068, <8 x double> %5063)
  %5071 = getelementptr inbounds nuw i8, ptr %5056, i64 704
  %5072 = load <8 x double>, ptr %5071, align 64, !tbaa !26, !noalias !184
  %5073 = getelementptr inbounds nuw i8, ptr %5056, i64 768
  %5074 = load <8 x double>, ptr %5073, align 64, !tbaa !26, !noalias !184
  %5075 = getelementptr inbounds nuw i8, ptr %5056, i64 832
  %5076 = load <8 x double>, ptr %5075, align 64, !tbaa !26, !noalias !184
  %5077 = getelementptr inbounds nuw i8, ptr %5056, i64 896
  %5078 = load <8 x double>, ptr %5077, align 64, !tbaa !26, !noalias !184
  %5079 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5070, <8 x double> %5078, <8 x double> %5076)
  %5080 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5070, <8 x double> %5079, <8 x double> %5074)
  %5081 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5070, <8 x double> %5080, <8 x double> %5072)
  %5082 = fmul <8 x double> %5070, %5081
  %5083 = getelementptr inbounds nuw i8, ptr %5056, i64 192
  %5084 = load <8 x double>, ptr %5083, align 64, !tbaa !26, !noalias !184
  %5085 = getelementptr inbounds nuw i8, ptr %5056, i64 256
  %5086 = load <8 x double>, ptr %5085, align 64, !tbaa !26, !noalias !184
  %5087 = getelementptr inbounds nuw i8, ptr %5056, i64 320
  %5088 = load <8 x double>, ptr %5087, align 64, !tbaa !26, !noalias !184
  %5089 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5082, <8 x double> %5088, <8 x double> %5086)
  %5090 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5082, <8 x double> %5089, <8 x double> %5084)
  %5091 = fdiv <8 x double> splat (double 1.000000e+00), %5090
  %5092 = fmul <8 x double> %5088, %5082
  %5093 = fmul <8 x double> %5092, splat (double 0x3FD5555555555555)
  %5094 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5086, <8 x double> splat (double 5.000000e-01), <8 x double> %5093)
  %5095 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5082, <8 x double> %5094, <8 x double> %5084)
  %5096 = fmul <8 x double> %5082, %5095
  %5097 = fsub <8 x double> %5070, %5096
  %5098 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5097, <8 x double> %5091, <8 x double> %5082)
  br label %5171

5099:                                             ; preds = %5053
  %5100 = getelementptr <8 x double>, ptr %5061, i64 %5058
  %5101 = getelementptr i8, ptr %5100, i64 -64
  %5102 = load <8 x double>, ptr %5101, align 64, !tbaa !26
  %5103 = getelementptr inbounds nuw i8, ptr %5056, i64 1024
  %5104 = load <8 x double>, ptr %5103, align 64, !tbaa !26
  %5105 = fdiv <8 x double> %5102, %5104
  %5106 = load <8 x double>, ptr %5100, align 64, !tbaa !26
  %5107 = getelementptr inbounds nuw i8, ptr %5056, i64 704
  %5108 = load <8 x double>, ptr %5107, align 64, !tbaa !26, !noalias !187
  %5109 = getelementptr inbounds nuw i8, ptr %5056, i64 768
  %5110 = load <8 x double>, ptr %5109, align 64, !tbaa !26, !noalias !187
  %5111 = getelementptr inbounds nuw i8, ptr %5056, i64 832
  %5112 = load <8 x double>, ptr %5111, align 64, !tbaa !26, !noalias !187
  %5113 = getelementptr inbounds nuw i8, ptr %5056, i64 896
  %5114 = load <8 x double>, ptr %5113, align 64, !tbaa !26, !noalias !187
  %5115 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5106, <8 x double> %5114, <8 x double> %5112)
  %5116 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5106, <8 x double> %5115, <8 x double> %5110)
  %5117 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5106, <8 x double> %5116, <8 x double> %5108)
  %5118 = fmul <8 x double> %5106, %5117
  %5119 = getelementptr inbounds nuw i8, ptr %5056, i64 192
  %5120 = load <8 x double>, ptr %5119, align 64, !tbaa !26, !noalias !187
  %5121 = getelementptr inbounds nuw i8, ptr %5056, i64 256
  %5122 = load <8 x double>, ptr %5121, align 64, !tbaa !26, !noalias !187
  %5123 = getelementptr inbounds nuw i8, ptr %5056, i64 320
  %5124 = load <8 x double>, ptr %5123, align 64, !tbaa !26, !noalias !187
  %5125 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5118, <8 x double> %5124, <8 x double> %5122)
  %5126 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5118, <8 x double> %5125, <8 x double> %5120)
  %5127 = fdiv <8 x double> splat (double 1.000000e+00), %5126
  %5128 = fmul <8 x double> %5124, %5118
  %5129 = fmul <8 x double> %5128, splat (double 0x3FD5555555555555)
  %5130 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5122, <8 x double> splat (double 5.000000e-01), <8 x double> %5129)
  %5131 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5118, <8 x double> %5130, <8 x double> %5120)
  %5132 = fmul <8 x double> %5118, %5131
  %5133 = fsub <8 x double> %5106, %5132
  %5134 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5133, <8 x double> %5127, <8 x double> %5118)
  %5135 = getelementptr inbounds nuw i8, ptr %5056, i64 3264
  %5136 = load <8 x double>, ptr %5135, align 64, !tbaa !26
  %5137 = getelementptr inbounds nuw i8, ptr %5056, i64 3328
  %5138 = load <8 x double>, ptr %5137, align 64, !tbaa !26
  %5139 = getelementptr inbounds nuw i8, ptr %5056, i64 64
  %5140 = load <8 x double>, ptr %5139, align 64, !tbaa !26
  %5141 = fsub <8 x double> %5138, %5140
  %5142 = fmul <8 x double> %5136, %5141
  %5143 = getelementptr inbounds nuw i8, ptr %5056, i64 960
  %5144 = load <8 x double>, ptr %5143, align 64, !tbaa !26
  %5145 = getelementptr inbounds nuw i8, ptr %5056, i64 3200
  %5146 = load <8 x double>, ptr %5145, align 64, !tbaa !26
  %5147 = fdiv <8 x double> %5144, %5146
  %5148 = fmul <8 x double> %5106, splat (double 2.000000e+00)
  %5149 = getelementptr inbounds nuw i8, ptr %5056, i64 384
  %5150 = load <8 x double>, ptr %5149, align 64, !tbaa !26
  %5151 = getelementptr inbounds nuw i8, ptr %5056, i64 448
  %5152 = load <8 x double>, ptr %5151, align 64, !tbaa !26
  %5153 = getelementptr inbounds nuw i8, ptr %5056, i64 512
  %5154 = load <8 x double>, ptr %5153, align 64, !tbaa !26
  %5155 = getelementptr inbounds nuw i8, ptr %5056, i64 576
  %5156 = load <8 x double>, ptr %5155, align 64, !tbaa !26
  %5157 = getelementptr inbounds nuw i8, ptr %5056, i64 640
  %5158 = load <8 x double>, ptr %5157, align 64, !tbaa !26
  %5159 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5148, <8 x double> %5158, <8 x double> %5156)
  %5160 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5148, <8 x double> %5159, <8 x double> %5154)
  %5161 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5148, <8 x double> %5160, <8 x double> %5152)
  %5162 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5148, <8 x double> %5161, <8 x double> %5150)
  %5163 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5134, <8 x double> %5124, <8 x double> %5122)
  %5164 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5134, <8 x double> %5163, <8 x double> %5120)
  %5165 = fmul <8 x double> %5164, %5162
  %5166 = fdiv <8 x double> %5165, %5142
  %5167 = fmul <8 x double> %5134, %5166
  %5168 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5147, <8 x double> %5105, <8 x double> %5167)
  %5169 = fadd <8 x double> %5147, %5166
  %5170 = fdiv <8 x double> %5168, %5169
  br label %5171

5171:                                             ; preds = %5062, %5099
  %5172 = phi <8 x double> [ %5170, %5099 ], [ %5098, %5062 ]
  %5173 = getelementptr inbounds nuw i8, ptr %5056, i64 8512
  %5174 = load <8 x double>, ptr %5173, align 64, !tbaa !26
  %5175 = select <8 x i1> %4683, <8 x double> %5174, <8 x double> %5172
  store <8 x double> %5175, ptr %5173, align 64, !tbaa !26
  %5176 = add nuw nsw i64 %5054, 1
  %5177 = load i64, ptr %175, align 8, !tbaa !20
  %5178 = icmp slt i64 %5176, %5177
  br i1 %5178, label %5053, label %4728, !llvm.loop !190

5179:                                             ; preds = %5009
  %5180 = icmp eq <8 x i64> %5050, zeroinitializer
  %5181 = select <8 x i1> %5180, <8 x double> %4742, <8 x double> %4741
  store <8 x double> %5181, ptr %230, align 64, !tbaa !26
  %5182 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %5183 = select <8 x i1> %5180, <8 x double> %5182, <8 x double> %4923
  store <8 x double> %5183, ptr %169, align 64, !tbaa !26
  %5184 = select <8 x i1> %5180, <8 x double> %4923, <8 x double> %4925
  store <8 x double> %5184, ptr %163, align 64, !tbaa !26
  %5185 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %5186 = select <8 x i1> %5180, <8 x double> %5185, <8 x double> %4960
  store <8 x double> %5186, ptr %261, align 64, !tbaa !26
  %5187 = select <8 x i1> %5180, <8 x double> %4960, <8 x double> %5011
  store <8 x double> %5187, ptr %262, align 64, !tbaa !26
  %5188 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %5189 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %5190 = select <8 x i1> %5180, <8 x double> %5189, <8 x double> %5188
  store <8 x double> %5190, ptr %263, align 64, !tbaa !26
  %5191 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %5192 = select <8 x i1> %5180, <8 x double> %5188, <8 x double> %5191
  store <8 x double> %5192, ptr %264, align 64, !tbaa !26
  %5193 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %5194 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %5195 = select <8 x i1> %5180, <8 x double> %5194, <8 x double> %5193
  store <8 x double> %5195, ptr %266, align 64, !tbaa !26
  %5196 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %5197 = select <8 x i1> %5180, <8 x double> %5193, <8 x double> %5196
  store <8 x double> %5197, ptr %267, align 64, !tbaa !26
  %5198 = load <8 x double>, ptr %270, align 64, !tbaa !26
  %5199 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %5200 = select <8 x i1> %5180, <8 x double> %5199, <8 x double> %5198
  store <8 x double> %5200, ptr %269, align 64, !tbaa !26
  %5201 = load <8 x double>, ptr %271, align 64, !tbaa !26
  %5202 = select <8 x i1> %5180, <8 x double> %5198, <8 x double> %5201
  store <8 x double> %5202, ptr %270, align 64, !tbaa !26
  %5203 = load <8 x double>, ptr %273, align 64, !tbaa !26
  %5204 = load <8 x double>, ptr %272, align 64, !tbaa !26
  %5205 = select <8 x i1> %5180, <8 x double> %5204, <8 x double> %5203
  store <8 x double> %5205, ptr %272, align 64, !tbaa !26
  %5206 = load <8 x double>, ptr %274, align 64, !tbaa !26
  %5207 = select <8 x i1> %5180, <8 x double> %5203, <8 x double> %5206
  store <8 x double> %5207, ptr %273, align 64, !tbaa !26
  %5208 = xor <8 x i64> %5050, splat (i64 -1)
  br i1 %4775, label %5209, label %5603

5209:                                             ; preds = %5179, %5568
  %5210 = phi i64 [ %5580, %5568 ], [ 0, %5179 ]
  %5211 = load ptr, ptr %148, align 8, !tbaa !28
  %5212 = getelementptr inbounds nuw %struct.Piece, ptr %5211, i64 %5210
  %5213 = getelementptr inbounds nuw i8, ptr %5212, i64 2048
  %5214 = load <8 x double>, ptr %5213, align 64, !tbaa !26
  %5215 = fcmp ogt <8 x double> %5214, zeroinitializer
  %5216 = bitcast <8 x i1> %5215 to i8
  %5217 = icmp eq i8 %5216, 0
  br i1 %5217, label %5475, label %5218

5218:                                             ; preds = %5209
  %5219 = load i64, ptr %137, align 16, !tbaa !21
  %5220 = add i64 %5219, -1
  %5221 = getelementptr inbounds nuw i8, ptr %5212, i64 5056
  %5222 = load <8 x double>, ptr %5221, align 64, !tbaa !26
  %5223 = getelementptr inbounds nuw i8, ptr %5212, i64 4160
  %5224 = load <8 x double>, ptr %5223, align 64, !tbaa !26
  %5225 = getelementptr inbounds nuw i8, ptr %5212, i64 9472
  %5226 = load i64, ptr %5225, align 64, !tbaa !31
  %5227 = icmp sgt i64 %5219, %5226
  br i1 %5227, label %5236, label %5228

5228:                                             ; preds = %5218
  %5229 = getelementptr inbounds nuw i8, ptr %5212, i64 9608
  %5230 = load ptr, ptr %5229, align 8, !tbaa !78
  %5231 = getelementptr inbounds <8 x double>, ptr %5230, i64 %5220
  %5232 = load <8 x double>, ptr %5231, align 64, !tbaa !26
  %5233 = getelementptr inbounds nuw i8, ptr %5212, i64 1920
  %5234 = load <8 x double>, ptr %5233, align 64, !tbaa !26
  %5235 = fmul <8 x double> %5232, %5234
  br label %5245

5236:                                             ; preds = %5218
  %5237 = getelementptr inbounds nuw i8, ptr %5212, i64 1920
  %5238 = load <8 x double>, ptr %5237, align 64, !tbaa !26
  %5239 = getelementptr inbounds nuw i8, ptr %5212, i64 9608
  %5240 = load ptr, ptr %5239, align 8, !tbaa !78
  %5241 = getelementptr inbounds <8 x double>, ptr %5240, i64 %5220
  %5242 = load <8 x double>, ptr %5241, align 64, !tbaa !26
  %5243 = fsub <8 x double> %5222, %5238
  %5244 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5242, <8 x double> %5243, <8 x double> %5238)
  br label %5245

5245:                                             ; preds = %5236, %5228
  %5246 = phi <8 x double> [ %5234, %5228 ], [ %5238, %5236 ]
  %5247 = phi <8 x double> [ %5235, %5228 ], [ %5244, %5236 ]
  %5248 = getelementptr inbounds nuw i8, ptr %5212, i64 3392
  %5249 = load <8 x double>, ptr %5248, align 64, !tbaa !26
  %5250 = fcmp ole <8 x double> %5247, %5249
  %5251 = getelementptr inbounds nuw i8, ptr %5212, i64 8576
  %5252 = load <8 x double>, ptr %5251, align 64, !tbaa !26
  %5253 = fcmp oeq <8 x double> %5252, zeroinitializer
  %5254 = select <8 x i1> %5253, <8 x i1> %5250, <8 x i1> zeroinitializer
  %5255 = select <8 x i1> %5254, <8 x i64> %5050, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %14) #6
  %5256 = xor <8 x i64> %5255, %5050
  store <8 x i64> %5256, ptr %14, align 64, !tbaa !26
  %5257 = fsub <8 x double> %5222, %5224
  %5258 = getelementptr inbounds nuw i8, ptr %5212, i64 1920
  %5259 = fsub <8 x double> %5224, %5246
  %5260 = fdiv <8 x double> %5257, %5259
  %5261 = getelementptr inbounds nuw i8, ptr %5212, i64 9568
  %5262 = load ptr, ptr %5261, align 32, !tbaa !68
  %5263 = getelementptr inbounds <8 x double>, ptr %5262, i64 %5226
  %5264 = load <8 x double>, ptr %5263, align 64, !tbaa !26
  %5265 = getelementptr inbounds nuw i8, ptr %5212, i64 9576
  %5266 = load ptr, ptr %5265, align 8, !tbaa !52
  %5267 = getelementptr inbounds <8 x double>, ptr %5266, i64 %5226
  %5268 = load <8 x double>, ptr %5267, align 64, !tbaa !26
  %5269 = icmp eq <8 x i64> %5255, zeroinitializer
  %5270 = select <8 x i1> %5269, <8 x double> %5268, <8 x double> %5264
  store <8 x double> %5270, ptr %5267, align 64, !tbaa !26
  %5271 = load i64, ptr %5225, align 64, !tbaa !31
  %5272 = add nsw i64 %5271, 1
  %5273 = icmp slt i64 %5272, %5220
  br i1 %5273, label %5274, label %5278

5274:                                             ; preds = %5245
  %5275 = getelementptr inbounds nuw i8, ptr %5212, i64 9624
  br label %5318

5276:                                             ; preds = %5318
  %5277 = load i64, ptr %5225, align 64, !tbaa !31
  br label %5278

5278:                                             ; preds = %5276, %5245
  %5279 = phi i64 [ %5271, %5245 ], [ %5277, %5276 ]
  %5280 = phi <8 x double> [ %5264, %5245 ], [ %5323, %5276 ]
  %5281 = icmp sgt i64 %5219, %5279
  br i1 %5281, label %5289, label %5282

5282:                                             ; preds = %5278
  %5283 = getelementptr inbounds nuw i8, ptr %5212, i64 9608
  %5284 = load ptr, ptr %5283, align 8, !tbaa !78
  %5285 = getelementptr inbounds <8 x double>, ptr %5284, i64 %5220
  %5286 = load <8 x double>, ptr %5285, align 64, !tbaa !26
  %5287 = load <8 x double>, ptr %5258, align 64, !tbaa !26
  %5288 = fmul <8 x double> %5286, %5287
  br label %5297

5289:                                             ; preds = %5278
  %5290 = load <8 x double>, ptr %5258, align 64, !tbaa !26
  %5291 = getelementptr inbounds nuw i8, ptr %5212, i64 9608
  %5292 = load ptr, ptr %5291, align 8, !tbaa !78
  %5293 = getelementptr inbounds <8 x double>, ptr %5292, i64 %5220
  %5294 = load <8 x double>, ptr %5293, align 64, !tbaa !26
  %5295 = fsub <8 x double> %5224, %5290
  %5296 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5294, <8 x double> %5295, <8 x double> %5290)
  br label %5297

5297:                                             ; preds = %5289, %5282
  %5298 = phi <8 x double> [ %5288, %5282 ], [ %5296, %5289 ]
  %5299 = load ptr, ptr %5261, align 32, !tbaa !68
  %5300 = getelementptr inbounds <8 x double>, ptr %5299, i64 %5220
  %5301 = load <8 x double>, ptr %5300, align 64, !tbaa !26
  %5302 = load ptr, ptr %5265, align 8, !tbaa !52
  %5303 = getelementptr inbounds <8 x double>, ptr %5302, i64 %5220
  %5304 = fsub <8 x double> %5280, %5301
  %5305 = fsub <8 x double> %5247, %5298
  %5306 = load <8 x double>, ptr %5248, align 64, !tbaa !26
  %5307 = fsub <8 x double> %5306, %5298
  %5308 = fdiv <8 x double> %5305, %5307
  %5309 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5304, <8 x double> %5308, <8 x double> %5301)
  %5310 = load <8 x double>, ptr %5303, align 64, !tbaa !26
  %5311 = select <8 x i1> %5269, <8 x double> %5310, <8 x double> %5309
  store <8 x double> %5311, ptr %5303, align 64, !tbaa !26
  %5312 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5256)
  %5313 = icmp eq i64 %5312, 0
  br i1 %5313, label %5474, label %5314

5314:                                             ; preds = %5297
  %5315 = getelementptr inbounds nuw i8, ptr %5212, i64 9608
  %5316 = getelementptr inbounds nuw i8, ptr %5212, i64 3520
  %5317 = getelementptr inbounds nuw i8, ptr %5212, i64 1216
  br label %5336

5318:                                             ; preds = %5274, %5318
  %5319 = phi i64 [ %5272, %5274 ], [ %5334, %5318 ]
  %5320 = phi <8 x double> [ %5264, %5274 ], [ %5323, %5318 ]
  %5321 = load ptr, ptr %5261, align 32, !tbaa !68
  %5322 = getelementptr inbounds <8 x double>, ptr %5321, i64 %5319
  %5323 = load <8 x double>, ptr %5322, align 64, !tbaa !26
  %5324 = load ptr, ptr %5265, align 8, !tbaa !52
  %5325 = getelementptr inbounds <8 x double>, ptr %5324, i64 %5319
  %5326 = fsub <8 x double> %5320, %5323
  %5327 = load ptr, ptr %5275, align 8, !tbaa !191
  %5328 = getelementptr inbounds <8 x double>, ptr %5327, i64 %5319
  %5329 = load <8 x double>, ptr %5328, align 64, !tbaa !26
  %5330 = fmul <8 x double> %5260, %5329
  %5331 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5326, <8 x double> %5330, <8 x double> %5323)
  %5332 = load <8 x double>, ptr %5325, align 64, !tbaa !26
  %5333 = select <8 x i1> %5269, <8 x double> %5332, <8 x double> %5331
  store <8 x double> %5333, ptr %5325, align 64, !tbaa !26
  %5334 = add nsw i64 %5319, 1
  %5335 = icmp eq i64 %5334, %5220
  br i1 %5335, label %5276, label %5318, !llvm.loop !192

5336:                                             ; preds = %5314, %5471
  %5337 = phi i64 [ 0, %5314 ], [ %5472, %5471 ]
  %5338 = getelementptr inbounds nuw i64, ptr %14, i64 %5337
  %5339 = load i64, ptr %5338, align 8, !tbaa !30
  %5340 = icmp eq i64 %5339, 0
  br i1 %5340, label %5471, label %5341

5341:                                             ; preds = %5336
  %5342 = load i64, ptr %137, align 16, !tbaa !21
  %5343 = load i64, ptr %5225, align 64, !tbaa !31
  %5344 = getelementptr inbounds nuw double, ptr %5258, i64 %5337
  %5345 = load double, ptr %5344, align 8, !tbaa !45
  %5346 = getelementptr inbounds nuw double, ptr %5248, i64 %5337
  %5347 = load double, ptr %5346, align 8, !tbaa !45
  %5348 = add nsw i64 %5342, -1
  %5349 = icmp sgt i64 %5342, %5343
  br i1 %5349, label %5350, label %5471

5350:                                             ; preds = %5341
  %5351 = getelementptr inbounds nuw double, ptr %5223, i64 %5337
  %5352 = load double, ptr %5351, align 8, !tbaa !45
  %5353 = getelementptr inbounds nuw double, ptr %5221, i64 %5337
  %5354 = load double, ptr %5353, align 8, !tbaa !45
  %5355 = load ptr, ptr %5315, align 8
  %5356 = getelementptr i8, ptr %5355, i64 64
  %5357 = getelementptr double, ptr %5356, i64 %5337
  %5358 = fsub double %5352, %5345
  %5359 = getelementptr double, ptr %5355, i64 %5337
  %5360 = fsub double %5354, %5345
  %5361 = load ptr, ptr %5261, align 32, !tbaa !68
  %5362 = getelementptr double, ptr %5361, i64 %5337
  %5363 = load ptr, ptr %5265, align 8, !tbaa !52
  %5364 = getelementptr double, ptr %5363, i64 %5337
  %5365 = getelementptr <8 x double>, ptr %5359, i64 %5348
  br label %5393

5366:                                             ; preds = %5439
  %5367 = getelementptr inbounds nuw double, ptr %5251, i64 %5337
  %5368 = load double, ptr %5367, align 8, !tbaa !45
  %5369 = fcmp ogt double %5368, 0.000000e+00
  %5370 = fcmp ogt double %5450, 0.000000e+00
  %5371 = select i1 %5369, i1 %5370, i1 false
  br i1 %5371, label %5372, label %5471

5372:                                             ; preds = %5366
  %5373 = getelementptr inbounds nuw double, ptr %5316, i64 %5337
  %5374 = getelementptr inbounds nuw double, ptr %5317, i64 %5337
  %5375 = sub i64 %5342, %5343
  %5376 = add i64 %5343, 1
  %5377 = and i64 %5375, 1
  %5378 = icmp eq i64 %5377, 0
  br i1 %5378, label %5388, label %5379

5379:                                             ; preds = %5372
  %5380 = load double, ptr %5373, align 8, !tbaa !45
  %5381 = load double, ptr %5374, align 8, !tbaa !45
  %5382 = fmul double %5450, %5381
  %5383 = fdiv double %5380, %5382
  %5384 = getelementptr <8 x double>, ptr %5364, i64 %5343
  %5385 = load double, ptr %5384, align 8, !tbaa !45
  %5386 = fmul double %5385, %5383
  store double %5386, ptr %5384, align 8, !tbaa !45
  %5387 = add nsw i64 %5343, 1
  br label %5388

5388:                                             ; preds = %5379, %5372
  %5389 = phi i64 [ %5343, %5372 ], [ %5387, %5379 ]
  %5390 = icmp eq i64 %5342, %5376
  br i1 %5390, label %5471, label %5391

5391:                                             ; preds = %5388
  %5392 = getelementptr i8, ptr %5364, i64 64
  br label %5453

5393:                                             ; preds = %5439, %5350
  %5394 = phi double [ 0.000000e+00, %5350 ], [ %5450, %5439 ]
  %5395 = phi i64 [ %5348, %5350 ], [ %5451, %5439 ]
  %5396 = icmp eq i64 %5395, %5348
  br i1 %5396, label %5397, label %5400

5397:                                             ; preds = %5393
  %5398 = load double, ptr %5365, align 8, !tbaa !45
  %5399 = tail call noundef double @llvm.fmuladd.f64(double %5398, double %5358, double %5345)
  br label %5411

5400:                                             ; preds = %5393
  %5401 = getelementptr <8 x double>, ptr %5357, i64 %5395
  %5402 = load double, ptr %5401, align 8, !tbaa !45
  %5403 = tail call noundef double @llvm.fmuladd.f64(double %5402, double %5358, double %5345)
  %5404 = getelementptr <8 x double>, ptr %5359, i64 %5395
  %5405 = load double, ptr %5404, align 8, !tbaa !45
  %5406 = tail call noundef double @llvm.fmuladd.f64(double %5405, double %5358, double %5345)
  %5407 = tail call noundef double @llvm.fmuladd.f64(double %5402, double %5360, double %5345)
  %5408 = fcmp ult double %5407, %5403
  br i1 %5408, label %5409, label %5411

5409:                                             ; preds = %5400
  %5410 = add nsw i64 %5395, 1
  br label %5411

5411:                                             ; preds = %5409, %5400, %5397
  %5412 = phi double [ %5406, %5409 ], [ %5406, %5400 ], [ %5399, %5397 ]
  %5413 = phi double [ %5403, %5409 ], [ %5403, %5400 ], [ %5347, %5397 ]
  %5414 = phi i64 [ %5410, %5409 ], [ %5395, %5400 ], [ %5348, %5397 ]
  %5415 = icmp sgt i64 %5414, %5343
  br i1 %5415, label %5416, label %5439

5416:                                             ; preds = %5411
  %5417 = load ptr, ptr %5261, align 32
  %5418 = getelementptr double, ptr %5417, i64 %5337
  br label %5419

5419:                                             ; preds = %5434, %5416
  %5420 = phi i64 [ %5414, %5416 ], [ %5437, %5434 ]
  %5421 = phi double [ 0.000000e+00, %5416 ], [ %5436, %5434 ]
  %5422 = phi double [ %5413, %5416 ], [ %5435, %5434 ]
  %5423 = getelementptr <8 x double>, ptr %5359, i64 %5420
  %5424 = load double, ptr %5423, align 8, !tbaa !45
  %5425 = tail call noundef double @llvm.fmuladd.f64(double %5424, double %5360, double %5345)
  %5426 = fcmp ogt double %5425, %5412
  br i1 %5426, label %5427, label %5439

5427:                                             ; preds = %5419
  %5428 = fcmp ogt double %5422, %5425
  br i1 %5428, label %5429, label %5434

5429:                                             ; preds = %5427
  %5430 = getelementptr <8 x double>, ptr %5418, i64 %5420
  %5431 = load double, ptr %5430, align 8, !tbaa !45
  %5432 = fsub double %5422, %5425
  %5433 = tail call double @llvm.fmuladd.f64(double %5431, double %5432, double %5421)
  br label %5434

5434:                                             ; preds = %5429, %5427
  %5435 = phi double [ %5425, %5429 ], [ %5422, %5427 ]
  %5436 = phi double [ %5433, %5429 ], [ %5421, %5427 ]
  %5437 = add nsw i64 %5420, -1
  %5438 = icmp sgt i64 %5437, %5343
  br i1 %5438, label %5419, label %5439, !llvm.loop !193

5439:                                             ; preds = %5434, %5419, %5411
  %5440 = phi double [ %5413, %5411 ], [ %5422, %5419 ], [ %5435, %5434 ]
  %5441 = phi double [ 0.000000e+00, %5411 ], [ %5421, %5419 ], [ %5436, %5434 ]
  %5442 = phi i64 [ %5414, %5411 ], [ %5420, %5419 ], [ %5343, %5434 ]
  %5443 = getelementptr <8 x double>, ptr %5362, i64 %5442
  %5444 = load double, ptr %5443, align 8, !tbaa !45
  %5445 = fsub double %5440, %5412
  %5446 = tail call double @llvm.fmuladd.f64(double %5444, double %5445, double %5441)
  %5447 = fsub double %5413, %5412
  %5448 = fdiv double %5446, %5447
  %5449 = getelementptr <8 x double>, ptr %5364, i64 %5395
  store double %5448, ptr %5449, align 8, !tbaa !45
  %5450 = fadd double %5394, %5446
  %5451 = add nsw i64 %5395, -1
  %5452 = icmp sgt i64 %5395, %5343
  br i1 %5452, label %5393, label %5366, !llvm.loop !194

5453:                                             ; preds = %5453, %5391
  %5454 = phi i64 [ %5389, %5391 ], [ %5469, %5453 ]
  %5455 = load double, ptr %5373, align 8, !tbaa !45
  %5456 = load double, ptr %5374, align 8, !tbaa !45
  %5457 = fmul double %5450, %5456
  %5458 = fdiv double %5455, %5457
  %5459 = getelementptr <8 x double>, ptr %5364, i64 %5454
  %5460 = load double, ptr %5459, align 8, !tbaa !45
  %5461 = fmul double %5460, %5458
  store double %5461, ptr %5459, align 8, !tbaa !45
  %5462 = load double, ptr %5373, align 8, !tbaa !45
  %5463 = load double, ptr %5374, align 8, !tbaa !45
  %5464 = fmul double %5450, %5463
  %5465 = fdiv double %5462, %5464
  %5466 = getelementptr <8 x double>, ptr %5392, i64 %5454
  %5467 = load double, ptr %5466, align 8, !tbaa !45
  %5468 = fmul double %5467, %5465
  store double %5468, ptr %5466, align 8, !tbaa !45
  %5469 = add nsw i64 %5454, 2
  %5470 = icmp eq i64 %5469, %5342
  br i1 %5470, label %5471, label %5453, !llvm.loop !195

5471:                                             ; preds = %5388, %5453, %5366, %5341, %5336
  %5472 = add nuw nsw i64 %5337, 1
  %5473 = icmp eq i64 %5472, 8
  br i1 %5473, label %5474, label %5336, !llvm.loop !196

5474:                                             ; preds = %5471, %5297
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %14) #6
  br label %5475

5475:                                             ; preds = %5209, %5474
  %5476 = load <8 x i64>, ptr %128, align 64, !tbaa !26
  %5477 = and <8 x i64> %5476, %5208
  %5478 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5477)
  %5479 = icmp eq i64 %5478, 0
  %5480 = getelementptr inbounds nuw i8, ptr %5212, i64 9544
  br i1 %5479, label %5481, label %5499

5481:                                             ; preds = %5475
  %5482 = getelementptr inbounds nuw i8, ptr %5212, i64 9552
  %5483 = getelementptr inbounds nuw i8, ptr %5212, i64 9560
  %5484 = load ptr, ptr %5483, align 8, !tbaa !36
  %5485 = load ptr, ptr %5482, align 8, !tbaa !36
  store ptr %5485, ptr %5483, align 8, !tbaa !36
  %5486 = load ptr, ptr %5480, align 8, !tbaa !36
  store ptr %5486, ptr %5482, align 8, !tbaa !36
  store ptr %5484, ptr %5480, align 8, !tbaa !36
  %5487 = getelementptr inbounds nuw i8, ptr %5212, i64 9640
  %5488 = getelementptr inbounds nuw i8, ptr %5212, i64 9648
  %5489 = getelementptr inbounds nuw i8, ptr %5212, i64 9656
  %5490 = load ptr, ptr %5489, align 8, !tbaa !36
  %5491 = load ptr, ptr %5488, align 8, !tbaa !36
  store ptr %5491, ptr %5489, align 8, !tbaa !36
  %5492 = load ptr, ptr %5487, align 8, !tbaa !36
  store ptr %5492, ptr %5488, align 8, !tbaa !36
  store ptr %5490, ptr %5487, align 8, !tbaa !36
  %5493 = getelementptr inbounds nuw i8, ptr %5212, i64 9688
  %5494 = getelementptr inbounds nuw i8, ptr %5212, i64 9696
  %5495 = getelementptr inbounds nuw i8, ptr %5212, i64 9704
  %5496 = load ptr, ptr %5495, align 8, !tbaa !36
  %5497 = load ptr, ptr %5494, align 8, !tbaa !36
  store ptr %5497, ptr %5495, align 8, !tbaa !36
  %5498 = load ptr, ptr %5493, align 8, !tbaa !36
  store ptr %5498, ptr %5494, align 8, !tbaa !36
  store ptr %5496, ptr %5493, align 8, !tbaa !36
  br label %5564

5499:                                             ; preds = %5475
  %5500 = load ptr, ptr %5480, align 8, !tbaa !88
  %5501 = getelementptr inbounds nuw i8, ptr %5212, i64 9552
  %5502 = load ptr, ptr %5501, align 16, !tbaa !50
  %5503 = getelementptr inbounds nuw i8, ptr %5212, i64 9560
  %5504 = load ptr, ptr %5503, align 8, !tbaa !67
  %5505 = load i64, ptr %137, align 16, !tbaa !21
  %5506 = icmp sgt i64 %5505, 0
  br i1 %5506, label %5507, label %5520

5507:                                             ; preds = %5499, %5507
  %5508 = phi i64 [ %5518, %5507 ], [ 0, %5499 ]
  %5509 = getelementptr inbounds nuw <8 x double>, ptr %5504, i64 %5508
  %5510 = getelementptr inbounds nuw <8 x double>, ptr %5502, i64 %5508
  %5511 = load <8 x double>, ptr %5510, align 64, !tbaa !26
  %5512 = load <8 x double>, ptr %5509, align 64, !tbaa !26
  %5513 = select <8 x i1> %5180, <8 x double> %5512, <8 x double> %5511
  store <8 x double> %5513, ptr %5509, align 64, !tbaa !26
  %5514 = getelementptr inbounds nuw <8 x double>, ptr %5500, i64 %5508
  %5515 = load <8 x double>, ptr %5514, align 64, !tbaa !26
  %5516 = load <8 x double>, ptr %5510, align 64, !tbaa !26
  %5517 = select <8 x i1> %5180, <8 x double> %5516, <8 x double> %5515
  store <8 x double> %5517, ptr %5510, align 64, !tbaa !26
  %5518 = add nuw nsw i64 %5508, 1
  %5519 = icmp eq i64 %5518, %5505
  br i1 %5519, label %5520, label %5507, !llvm.loop !197

5520:                                             ; preds = %5507, %5499
  %5521 = getelementptr inbounds nuw i8, ptr %5212, i64 9640
  %5522 = load ptr, ptr %5521, align 8, !tbaa !173
  %5523 = getelementptr inbounds nuw i8, ptr %5212, i64 9648
  %5524 = load ptr, ptr %5523, align 16, !tbaa !54
  %5525 = getelementptr inbounds nuw i8, ptr %5212, i64 9656
  %5526 = load ptr, ptr %5525, align 8, !tbaa !64
  %5527 = load i64, ptr %138, align 8, !tbaa !22
  %5528 = icmp sgt i64 %5527, 0
  br i1 %5528, label %5529, label %5564

5529:                                             ; preds = %5520, %5529
  %5530 = phi i64 [ %5540, %5529 ], [ 0, %5520 ]
  %5531 = getelementptr inbounds nuw <8 x double>, ptr %5526, i64 %5530
  %5532 = getelementptr inbounds nuw <8 x double>, ptr %5524, i64 %5530
  %5533 = load <8 x double>, ptr %5532, align 64, !tbaa !26
  %5534 = load <8 x double>, ptr %5531, align 64, !tbaa !26
  %5535 = select <8 x i1> %5180, <8 x double> %5534, <8 x double> %5533
  store <8 x double> %5535, ptr %5531, align 64, !tbaa !26
  %5536 = getelementptr inbounds nuw <8 x double>, ptr %5522, i64 %5530
  %5537 = load <8 x double>, ptr %5536, align 64, !tbaa !26
  %5538 = load <8 x double>, ptr %5532, align 64, !tbaa !26
  %5539 = select <8 x i1> %5180, <8 x double> %5538, <8 x double> %5537
  store <8 x double> %5539, ptr %5532, align 64, !tbaa !26
  %5540 = add nuw nsw i64 %5530, 1
  %5541 = icmp eq i64 %5540, %5527
  br i1 %5541, label %5542, label %5529, !llvm.loop !197

5542:                                             ; preds = %5529
  %5543 = load i64, ptr %138, align 8, !tbaa !22
  %5544 = getelementptr inbounds nuw i8, ptr %5212, i64 9688
  %5545 = load ptr, ptr %5544, align 8, !tbaa !130
  %5546 = getelementptr inbounds nuw i8, ptr %5212, i64 9696
  %5547 = load ptr, ptr %5546, align 32, !tbaa !53
  %5548 = getelementptr inbounds nuw i8, ptr %5212, i64 9704
  %5549 = load ptr, ptr %5548, align 8, !tbaa !63
  %5550 = icmp sgt i64 %5543, 0
  br i1 %5550, label %5551, label %5564

5551:                                             ; preds = %5542, %5551
  %5552 = phi i64 [ %5562, %5551 ], [ 0, %5542 ]
  %5553 = getelementptr inbounds nuw <8 x double>, ptr %5549, i64 %5552
  %5554 = getelementptr inbounds nuw <8 x double>, ptr %5547, i64 %5552
  %5555 = load <8 x double>, ptr %5554, align 64, !tbaa !26
  %5556 = load <8 x double>, ptr %5553, align 64, !tbaa !26
  %5557 = select <8 x i1> %5180, <8 x double> %5556, <8 x double> %5555
  store <8 x double> %5557, ptr %5553, align 64, !tbaa !26
  %5558 = getelementptr inbounds nuw <8 x double>, ptr %5545, i64 %5552
  %5559 = load <8 x double>, ptr %5558, align 64, !tbaa !26
  %5560 = load <8 x double>, ptr %5554, align 64, !tbaa !26
  %5561 = select <8 x i1> %5180, <8 x double> %5560, <8 x double> %5559
  store <8 x double> %5561, ptr %5554, align 64, !tbaa !26
  %5562 = add nuw nsw i64 %5552, 1
  %5563 = icmp eq i64 %5562, %5543
  br i1 %5563, label %5564, label %5551, !llvm.loop !197

5564:                                             ; preds = %5551, %5520, %5542, %5481
  %5565 = getelementptr inbounds nuw i8, ptr %5212, i64 5120
  %5566 = getelementptr inbounds nuw i8, ptr %5212, i64 4224
  %5567 = getelementptr inbounds nuw i8, ptr %5212, i64 3328
  br label %5583

5568:                                             ; preds = %5583
  %5569 = getelementptr inbounds nuw i8, ptr %5212, i64 9344
  %5570 = getelementptr inbounds nuw i8, ptr %5212, i64 6528
  %5571 = load <8 x double>, ptr %5570, align 64, !tbaa !26
  %5572 = fcmp ogt <8 x double> %5571, zeroinitializer
  %5573 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %5574 = fcmp une <8 x double> %5573, splat (double 2.000000e+00)
  %5575 = and <8 x i1> %5572, %5574
  %5576 = select <8 x i1> %5575, <8 x i64> %5050, <8 x i64> zeroinitializer
  %5577 = load <8 x i64>, ptr %5569, align 64, !tbaa !26
  %5578 = and <8 x i64> %5577, %5208
  %5579 = or <8 x i64> %5576, %5578
  store <8 x i64> %5579, ptr %5569, align 64, !tbaa !26
  %5580 = add nuw nsw i64 %5210, 1
  %5581 = load i64, ptr %175, align 8, !tbaa !20
  %5582 = icmp slt i64 %5580, %5581
  br i1 %5582, label %5209, label %5595, !llvm.loop !198

5583:                                             ; preds = %5564, %5583
  %5584 = phi i64 [ 0, %5564 ], [ %5593, %5583 ]
  %5585 = getelementptr inbounds nuw [14 x <8 x double>], ptr %5565, i64 0, i64 %5584
  %5586 = getelementptr inbounds nuw [14 x <8 x double>], ptr %5566, i64 0, i64 %5584
  %5587 = load <8 x double>, ptr %5586, align 64, !tbaa !26
  %5588 = load <8 x double>, ptr %5585, align 64, !tbaa !26
  %5589 = select <8 x i1> %5180, <8 x double> %5588, <8 x double> %5587
  store <8 x double> %5589, ptr %5585, align 64, !tbaa !26
  %5590 = getelementptr inbounds nuw [14 x <8 x double>], ptr %5567, i64 0, i64 %5584
  %5591 = load <8 x double>, ptr %5590, align 64, !tbaa !26
  %5592 = select <8 x i1> %5180, <8 x double> %5587, <8 x double> %5591
  store <8 x double> %5592, ptr %5586, align 64, !tbaa !26
  %5593 = add nuw nsw i64 %5584, 1
  %5594 = icmp eq i64 %5593, 14
  br i1 %5594, label %5568, label %5583, !llvm.loop !199

5595:                                             ; preds = %5568
  %5596 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %5597 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %5598 = load <8 x double>, ptr %231, align 64, !tbaa !26
  %5599 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %5600 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %5601 = fdiv <8 x double> %5598, %4744
  %5602 = icmp sgt i64 %5581, 0
  br label %5603

5603:                                             ; preds = %5179, %5595
  %5604 = phi <8 x double> [ %5601, %5595 ], [ %4754, %5179 ]
  %5605 = phi i1 [ %5602, %5595 ], [ false, %5179 ]
  %5606 = phi <8 x double> [ %5600, %5595 ], [ %4733, %5179 ]
  %5607 = phi <8 x double> [ %5599, %5595 ], [ %5038, %5179 ]
  %5608 = phi <8 x double> [ %5597, %5595 ], [ %4750, %5179 ]
  %5609 = phi <8 x double> [ %5596, %5595 ], [ %4748, %5179 ]
  %5610 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %5611 = fadd <8 x double> %5610, %5609
  %5612 = select <8 x i1> %5180, <8 x double> %5610, <8 x double> %5611
  store <8 x double> %5612, ptr %155, align 64, !tbaa !26
  %5613 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %5614 = select <8 x i1> %5180, <8 x double> %5613, <8 x double> %5609
  store <8 x double> %5614, ptr %170, align 64, !tbaa !26
  %5615 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %5616 = fadd <8 x double> %5615, splat (double 1.000000e+00)
  %5617 = select <8 x i1> %5180, <8 x double> %5615, <8 x double> %5616
  store <8 x double> %5617, ptr %141, align 64, !tbaa !26
  %5618 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %5619 = fcmp olt <8 x double> %5618, %5609
  %5620 = select <8 x i1> %5180, <8 x i1> splat (i1 true), <8 x i1> %5619
  %5621 = select <8 x i1> %5620, <8 x double> %5618, <8 x double> %5609
  store <8 x double> %5621, ptr %143, align 64, !tbaa !26
  %5622 = fcmp une <8 x double> %5608, zeroinitializer
  %5623 = fcmp ueq <8 x double> %4743, zeroinitializer
  %5624 = or <8 x i1> %5623, %5622
  %5625 = fcmp olt <8 x double> %5604, splat (double 1.800000e+00)
  %5626 = select <8 x i1> %5625, <8 x double> %5604, <8 x double> splat (double 1.800000e+00)
  %5627 = select <8 x i1> %5624, <8 x double> splat (double 1.800000e+00), <8 x double> %5626
  %5628 = fcmp ogt <8 x double> %5627, splat (double 2.000000e-01)
  %5629 = select <8 x i1> %5628, <8 x double> %5627, <8 x double> splat (double 2.000000e-01)
  %5630 = fmul <8 x double> %5609, %5629
  %5631 = fmul <8 x double> %5609, splat (double 4.000000e+00)
  %5632 = fcmp olt <8 x double> %5607, %5631
  %5633 = select <8 x i1> %5632, <8 x double> %5607, <8 x double> %5631
  %5634 = fcmp ogt <8 x double> %5630, %5633
  %5635 = select <8 x i1> %5634, <8 x double> %5630, <8 x double> %5633
  %5636 = select <8 x i1> %5180, <8 x double> %5607, <8 x double> zeroinitializer
  store <8 x double> %5636, ptr %178, align 64, !tbaa !26
  %5637 = select <8 x i1> %5180, <8 x double> %5606, <8 x double> zeroinitializer
  store <8 x double> %5637, ptr %180, align 64, !tbaa !26
  %5638 = load <8 x i64>, ptr %171, align 64, !tbaa !26
  %5639 = and <8 x i64> %5638, %5208
  store <8 x i64> %5639, ptr %171, align 64, !tbaa !26
  %5640 = load <8 x i64>, ptr %172, align 64, !tbaa !26
  %5641 = and <8 x i64> %5640, %5208
  store <8 x i64> %5641, ptr %172, align 64, !tbaa !26
  %5642 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %5643 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %5644 = select <8 x i1> %5180, <8 x double> %5643, <8 x double> %5642
  store <8 x double> %5644, ptr %165, align 64, !tbaa !26
  br i1 %5605, label %5645, label %5929

5645:                                             ; preds = %5603, %5922
  %5646 = phi i64 [ %5924, %5922 ], [ 0, %5603 ]
  %5647 = phi <8 x double> [ %5923, %5922 ], [ %5635, %5603 ]
  %5648 = load ptr, ptr %148, align 8, !tbaa !28
  %5649 = getelementptr inbounds nuw %struct.Piece, ptr %5648, i64 %5646
  %5650 = getelementptr inbounds nuw i8, ptr %5649, i64 4288
  %5651 = load <8 x double>, ptr %5650, align 64, !tbaa !26
  %5652 = getelementptr inbounds nuw i8, ptr %5649, i64 1856
  %5653 = load <8 x double>, ptr %5652, align 64, !tbaa !26
  %5654 = fmul <8 x double> %5653, splat (double 1.001000e+00)
  %5655 = fcmp ole <8 x double> %5651, %5654
  %5656 = getelementptr inbounds nuw i8, ptr %5649, i64 1984
  %5657 = load <8 x double>, ptr %5656, align 64, !tbaa !26
  %5658 = getelementptr inbounds nuw i8, ptr %5649, i64 4544
  %5659 = load <8 x double>, ptr %5658, align 64, !tbaa !26
  %5660 = fsub <8 x double> %5657, %5659
  %5661 = fmul <8 x double> %5657, splat (double 1.000000e-04)
  %5662 = fcmp ole <8 x double> %5660, %5661
  %5663 = getelementptr inbounds nuw i8, ptr %5649, i64 9280
  %5664 = load <8 x i64>, ptr %5663, align 64, !tbaa !26
  %5665 = and <8 x i64> %5664, %5050
  %5666 = getelementptr inbounds nuw i8, ptr %5649, i64 8576
  %5667 = load <8 x double>, ptr %5666, align 64, !tbaa !26
  %5668 = fcmp oeq <8 x double> %5667, zeroinitializer
  %5669 = and <8 x i1> %5655, %5668
  %5670 = fcmp oeq <8 x double> %5667, splat (double 1.000000e+00)
  %5671 = and <8 x i1> %5662, %5670
  %5672 = or <8 x i1> %5669, %5671
  %5673 = select <8 x i1> %5672, <8 x i64> %5665, <8 x i64> zeroinitializer
  %5674 = fadd <8 x double> %5667, splat (double 1.000000e+00)
  %5675 = icmp eq <8 x i64> %5673, zeroinitializer
  %5676 = select <8 x i1> %5675, <8 x double> %5667, <8 x double> %5674
  store <8 x double> %5676, ptr %5666, align 64, !tbaa !26
  %5677 = getelementptr inbounds nuw i8, ptr %5649, i64 9344
  %5678 = load <8 x i64>, ptr %5677, align 64, !tbaa !26
  %5679 = or <8 x i64> %5673, %5678
  store <8 x i64> %5679, ptr %5677, align 64, !tbaa !26
  %5680 = getelementptr inbounds nuw i8, ptr %5649, i64 1280
  %5681 = load <8 x double>, ptr %5680, align 64, !tbaa !26
  %5682 = getelementptr inbounds nuw i8, ptr %5649, i64 6464
  %5683 = load <8 x double>, ptr %5682, align 64, !tbaa !26
  %5684 = getelementptr inbounds nuw i8, ptr %5649, i64 6528
  %5685 = load <8 x double>, ptr %5684, align 64, !tbaa !26
  %5686 = fadd <8 x double> %5683, %5685
  %5687 = fcmp ogt <8 x double> %5686, zeroinitializer
  %5688 = xor <8 x i64> %5664, splat (i64 -1)
  %5689 = and <8 x i64> %5050, %5688
  %5690 = fcmp une <8 x double> %5681, zeroinitializer
  %5691 = or <8 x i1> %5690, %5687
  %5692 = getelementptr inbounds nuw i8, ptr %5649, i64 4352
  %5693 = load <8 x double>, ptr %5692, align 64, !tbaa !26
  %5694 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %5695 = fmul <8 x double> %5681, %5694
  %5696 = fcmp ogt <8 x double> %5695, splat (double 0x3E7AD7F29ABCAF48)
  %5697 = select <8 x i1> %5696, <8 x double> %5695, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5698 = fcmp ole <8 x double> %5693, %5697
  %5699 = select <8 x i1> %5698, <8 x i1> %5691, <8 x i1> zeroinitializer
  %5700 = select <8 x i1> %5699, <8 x i64> %5689, <8 x i64> zeroinitializer
  %5701 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5700)
  %5702 = icmp eq i64 %5701, 0
  br i1 %5702, label %5922, label %5703

5703:                                             ; preds = %5645
  %5704 = load i64, ptr %137, align 16, !tbaa !21
  %5705 = load i64, ptr %138, align 8, !tbaa !22
  %5706 = getelementptr inbounds nuw i8, ptr %5649, i64 4224
  %5707 = getelementptr inbounds nuw i8, ptr %5649, i64 5056
  %5708 = load <8 x double>, ptr %5707, align 64, !tbaa !26
  %5709 = getelementptr inbounds nuw i8, ptr %5649, i64 6400
  %5710 = load <8 x double>, ptr %5709, align 64, !tbaa !26
  %5711 = getelementptr inbounds nuw i8, ptr %5649, i64 1216
  %5712 = load <8 x double>, ptr %5711, align 64, !tbaa !26
  %5713 = getelementptr inbounds nuw i8, ptr %5649, i64 9576
  %5714 = load ptr, ptr %5713, align 8, !tbaa !52
  %5715 = add nsw i64 %5704, -1
  %5716 = getelementptr inbounds <8 x double>, ptr %5714, i64 %5715
  %5717 = load <8 x double>, ptr %5716, align 64, !tbaa !26
  %5718 = fmul <8 x double> %5712, %5717
  %5719 = fneg <8 x double> %5693
  %5720 = fdiv <8 x double> %5719, %5718
  %5721 = fcmp ogt <8 x double> %5720, splat (double 0x3E7AD7F29ABCAF48)
  %5722 = select <8 x i1> %5721, <8 x double> %5720, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5723 = load <8 x double>, ptr %5649, align 64, !tbaa !26
  %5724 = fsub <8 x double> %5723, %5722
  %5725 = getelementptr inbounds nuw i8, ptr %5649, i64 2944
  %5726 = load <8 x double>, ptr %5725, align 64, !tbaa !26
  %5727 = getelementptr inbounds nuw i8, ptr %5649, i64 3008
  %5728 = load <8 x double>, ptr %5727, align 64, !tbaa !26
  %5729 = getelementptr inbounds nuw i8, ptr %5649, i64 3072
  %5730 = load <8 x double>, ptr %5729, align 64, !tbaa !26
  %5731 = getelementptr inbounds nuw i8, ptr %5649, i64 3136
  %5732 = load <8 x double>, ptr %5731, align 64, !tbaa !26
  %5733 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5724, <8 x double> %5732, <8 x double> %5730)
  %5734 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5724, <8 x double> %5733, <8 x double> %5728)
  %5735 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5724, <8 x double> %5734, <8 x double> %5726)
  %5736 = fsub <8 x double> %5708, %5735
  %5737 = getelementptr inbounds nuw i8, ptr %5649, i64 9552
  %5738 = load ptr, ptr %5737, align 16, !tbaa !50
  %5739 = getelementptr inbounds <8 x double>, ptr %5738, i64 %5715
  %5740 = load <8 x double>, ptr %5739, align 64, !tbaa !26
  %5741 = getelementptr inbounds nuw i8, ptr %5649, i64 9560
  %5742 = load ptr, ptr %5741, align 8, !tbaa !67
  %5743 = getelementptr inbounds <8 x double>, ptr %5742, i64 %5715
  %5744 = load <8 x double>, ptr %5743, align 64, !tbaa !26
  %5745 = sitofp i64 %5705 to double
  %5746 = insertelement <8 x double> poison, double %5745, i64 0
  %5747 = shufflevector <8 x double> %5746, <8 x double> poison, <8 x i32> zeroinitializer
  %5748 = fdiv <8 x double> %5722, %5747
  %5749 = icmp sgt i64 %5704, 1
  br i1 %5749, label %5750, label %5755

5750:                                             ; preds = %5703
  %5751 = getelementptr inbounds nuw i8, ptr %5649, i64 9472
  %5752 = getelementptr inbounds nuw i8, ptr %5649, i64 1920
  %5753 = getelementptr inbounds nuw i8, ptr %5649, i64 9608
  %5754 = icmp eq <8 x i64> %5700, zeroinitializer
  br label %5763

5755:                                             ; preds = %5786, %5703
  %5756 = icmp sgt i64 %5705, 0
  br i1 %5756, label %5757, label %5820

5757:                                             ; preds = %5755
  %5758 = getelementptr inbounds nuw i8, ptr %5649, i64 9696
  %5759 = icmp eq <8 x i64> %5700, zeroinitializer
  %5760 = getelementptr inbounds nuw i8, ptr %5649, i64 9704
  %5761 = getelementptr inbounds nuw i8, ptr %5649, i64 9648
  %5762 = getelementptr inbounds nuw i8, ptr %5649, i64 9656
  br label %5891

5763:                                             ; preds = %5750, %5786
  %5764 = phi <8 x double> [ %5735, %5750 ], [ %5787, %5786 ]
  %5765 = phi <8 x double> [ %5740, %5750 ], [ %5795, %5786 ]
  %5766 = phi <8 x double> [ %5744, %5750 ], [ %5798, %5786 ]
  %5767 = phi <8 x double> [ %5717, %5750 ], [ %5801, %5786 ]
  %5768 = phi i64 [ %5715, %5750 ], [ %5793, %5786 ]
  %5769 = load i64, ptr %5751, align 64, !tbaa !31
  %5770 = icmp slt i64 %5768, %5769
  br i1 %5770, label %5771, label %5777

5771:                                             ; preds = %5763
  %5772 = load ptr, ptr %5753, align 8, !tbaa !78
  %5773 = getelementptr inbounds nuw <8 x double>, ptr %5772, i64 %5768
  %5774 = load <8 x double>, ptr %5773, align 64, !tbaa !26
  %5775 = load <8 x double>, ptr %5752, align 64, !tbaa !26
  %5776 = fmul <8 x double> %5774, %5775
  br label %5786

5777:                                             ; preds = %5763
  %5778 = load <8 x double>, ptr %5752, align 64, !tbaa !26
  %5779 = load ptr, ptr %5753, align 8, !tbaa !78
  %5780 = getelementptr inbounds nuw <8 x double>, ptr %5779, i64 %5768
  %5781 = load <8 x double>, ptr %5780, align 64, !tbaa !26
  %5782 = fsub <8 x double> %5735, %5778
  %5783 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5781, <8 x double> %5782, <8 x double> %5778)
  %5784 = fsub <8 x double> %5708, %5778
  %5785 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5781, <8 x double> %5784, <8 x double> %5778)
  br label %5786

5786:                                             ; preds = %5777, %5771
  %5787 = phi <8 x double> [ %5776, %5771 ], [ %5783, %5777 ]
  %5788 = phi <8 x double> [ %5776, %5771 ], [ %5785, %5777 ]
  %5789 = fsub <8 x double> %5788, %5787
  %5790 = fsub <8 x double> %5764, %5787
  %5791 = fdiv <8 x double> %5789, %5790
  %5792 = load ptr, ptr %5737, align 16, !tbaa !50
  %5793 = add nsw i64 %5768, -1
  %5794 = getelementptr inbounds nuw <8 x double>, ptr %5792, i64 %5793
  %5795 = load <8 x double>, ptr %5794, align 64, !tbaa !26
  %5796 = load ptr, ptr %5741, align 8, !tbaa !67
  %5797 = getelementptr inbounds nuw <8 x double>, ptr %5796, i64 %5793
  %5798 = load <8 x double>, ptr %5797, align 64, !tbaa !26
  %5799 = load ptr, ptr %5713, align 8, !tbaa !52
  %5800 = getelementptr inbounds nuw <8 x double>, ptr %5799, i64 %5793
  %5801 = load <8 x double>, ptr %5800, align 64, !tbaa !26
  %5802 = getelementptr inbounds nuw <8 x double>, ptr %5792, i64 %5768
  %5803 = fsub <8 x double> %5795, %5765
  %5804 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5803, <8 x double> %5791, <8 x double> %5765)
  %5805 = load <8 x double>, ptr %5802, align 64, !tbaa !26
  %5806 = select <8 x i1> %5754, <8 x double> %5805, <8 x double> %5804
  store <8 x double> %5806, ptr %5802, align 64, !tbaa !26
  %5807 = load ptr, ptr %5741, align 8, !tbaa !67
  %5808 = getelementptr inbounds nuw <8 x double>, ptr %5807, i64 %5768
  %5809 = fsub <8 x double> %5798, %5766
  %5810 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5809, <8 x double> %5791, <8 x double> %5766)
  %5811 = load <8 x double>, ptr %5808, align 64, !tbaa !26
  %5812 = select <8 x i1> %5754, <8 x double> %5811, <8 x double> %5810
  store <8 x double> %5812, ptr %5808, align 64, !tbaa !26
  %5813 = load ptr, ptr %5713, align 8, !tbaa !52
  %5814 = getelementptr inbounds nuw <8 x double>, ptr %5813, i64 %5768
  %5815 = fsub <8 x double> %5801, %5767
  %5816 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5815, <8 x double> %5791, <8 x double> %5767)
  %5817 = load <8 x double>, ptr %5814, align 64, !tbaa !26
  %5818 = select <8 x i1> %5754, <8 x double> %5817, <8 x double> %5816
  store <8 x double> %5818, ptr %5814, align 64, !tbaa !26
  %5819 = icmp sgt i64 %5768, 1
  br i1 %5819, label %5763, label %5755, !llvm.loop !200

5820:                                             ; preds = %5891, %5755
  %5821 = getelementptr inbounds nuw i8, ptr %5649, i64 9696
  %5822 = load ptr, ptr %5821, align 32, !tbaa !53
  %5823 = getelementptr inbounds <8 x double>, ptr %5822, i64 %5705
  %5824 = getelementptr inbounds nuw i8, ptr %5649, i64 1792
  %5825 = load <8 x double>, ptr %5824, align 64, !tbaa !26
  %5826 = load <8 x double>, ptr %5823, align 64, !tbaa !26
  %5827 = icmp eq <8 x i64> %5700, zeroinitializer
  %5828 = select <8 x i1> %5827, <8 x double> %5826, <8 x double> %5825
  store <8 x double> %5828, ptr %5823, align 64, !tbaa !26
  %5829 = getelementptr inbounds nuw i8, ptr %5649, i64 9704
  %5830 = load ptr, ptr %5829, align 8, !tbaa !63
  %5831 = getelementptr inbounds <8 x double>, ptr %5830, i64 %5705
  %5832 = load <8 x double>, ptr %5824, align 64, !tbaa !26
  %5833 = load <8 x double>, ptr %5831, align 64, !tbaa !26
  %5834 = select <8 x i1> %5827, <8 x double> %5833, <8 x double> %5832
  store <8 x double> %5834, ptr %5831, align 64, !tbaa !26
  %5835 = getelementptr inbounds nuw i8, ptr %5649, i64 5120
  %5836 = fneg <8 x double> %5736
  %5837 = getelementptr inbounds nuw i8, ptr %5649, i64 1152
  %5838 = load <8 x double>, ptr %5706, align 64, !tbaa !26
  %5839 = select <8 x i1> %5827, <8 x double> %5838, <8 x double> %5724
  store <8 x double> %5839, ptr %5706, align 64, !tbaa !26
  %5840 = getelementptr inbounds nuw i8, ptr %5649, i64 4288
  %5841 = load <8 x double>, ptr %5840, align 64, !tbaa !26
  %5842 = select <8 x i1> %5827, <8 x double> %5841, <8 x double> %5735
  store <8 x double> %5842, ptr %5840, align 64, !tbaa !26
  %5843 = getelementptr inbounds nuw i8, ptr %5649, i64 5056
  %5844 = load <8 x double>, ptr %5843, align 64, !tbaa !26
  %5845 = select <8 x i1> %5827, <8 x double> %5844, <8 x double> %5735
  store <8 x double> %5845, ptr %5843, align 64, !tbaa !26
  %5846 = getelementptr inbounds nuw i8, ptr %5649, i64 4416
  %5847 = load <8 x double>, ptr %5846, align 64, !tbaa !26
  %5848 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5836, <8 x double> %5718, <8 x double> %5847)
  %5849 = select <8 x i1> %5827, <8 x double> %5847, <8 x double> %5848
  store <8 x double> %5849, ptr %5846, align 64, !tbaa !26
  %5850 = getelementptr inbounds nuw i8, ptr %5649, i64 4352
  %5851 = load <8 x double>, ptr %5850, align 64, !tbaa !26
  %5852 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5736, <8 x double> %5718, <8 x double> %5851)
  %5853 = select <8 x i1> %5827, <8 x double> %5851, <8 x double> %5852
  store <8 x double> %5853, ptr %5850, align 64, !tbaa !26
  %5854 = getelementptr inbounds nuw i8, ptr %5649, i64 4672
  %5855 = load <8 x double>, ptr %5854, align 64, !tbaa !26
  %5856 = load <8 x double>, ptr %5837, align 64, !tbaa !26
  %5857 = fneg <8 x double> %5856
  %5858 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5857, <8 x double> %5710, <8 x double> %5740)
  %5859 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5736, <8 x double> %5858, <8 x double> %5855)
  %5860 = select <8 x i1> %5827, <8 x double> %5855, <8 x double> %5859
  store <8 x double> %5860, ptr %5854, align 64, !tbaa !26
  %5861 = load <8 x double>, ptr %5835, align 64, !tbaa !26
  %5862 = select <8 x i1> %5827, <8 x double> %5861, <8 x double> %5724
  store <8 x double> %5862, ptr %5835, align 64, !tbaa !26
  %5863 = getelementptr inbounds nuw i8, ptr %5649, i64 5184
  %5864 = load <8 x double>, ptr %5863, align 64, !tbaa !26
  %5865 = select <8 x i1> %5827, <8 x double> %5864, <8 x double> %5735
  store <8 x double> %5865, ptr %5863, align 64, !tbaa !26
  %5866 = getelementptr inbounds nuw i8, ptr %5649, i64 5952
  %5867 = load <8 x double>, ptr %5866, align 64, !tbaa !26
  %5868 = select <8 x i1> %5827, <8 x double> %5867, <8 x double> %5735
  store <8 x double> %5868, ptr %5866, align 64, !tbaa !26
  %5869 = getelementptr inbounds nuw i8, ptr %5649, i64 5312
  %5870 = load <8 x double>, ptr %5869, align 64, !tbaa !26
  %5871 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5836, <8 x double> %5718, <8 x double> %5870)
  %5872 = select <8 x i1> %5827, <8 x double> %5870, <8 x double> %5871
  store <8 x double> %5872, ptr %5869, align 64, !tbaa !26
  %5873 = getelementptr inbounds nuw i8, ptr %5649, i64 5248
  %5874 = load <8 x double>, ptr %5873, align 64, !tbaa !26
  %5875 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5736, <8 x double> %5718, <8 x double> %5874)
  %5876 = select <8 x i1> %5827, <8 x double> %5874, <8 x double> %5875
  store <8 x double> %5876, ptr %5873, align 64, !tbaa !26
  %5877 = getelementptr inbounds nuw i8, ptr %5649, i64 5568
  %5878 = load <8 x double>, ptr %5877, align 64, !tbaa !26
  %5879 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5857, <8 x double> %5710, <8 x double> %5744)
  %5880 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5736, <8 x double> %5879, <8 x double> %5878)
  %5881 = select <8 x i1> %5827, <8 x double> %5878, <8 x double> %5880
  store <8 x double> %5881, ptr %5877, align 64, !tbaa !26
  %5882 = load <8 x i64>, ptr %5663, align 64, !tbaa !26
  %5883 = or <8 x i64> %5882, %5700
  store <8 x i64> %5883, ptr %5663, align 64, !tbaa !26
  %5884 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %5885 = fmul <8 x double> %5884, splat (double 4.000000e+01)
  %5886 = fcmp olt <8 x double> %5647, %5885
  %5887 = select <8 x i1> %5886, <8 x double> %5647, <8 x double> %5885
  %5888 = icmp ne <8 x i64> %5700, zeroinitializer
  %5889 = select <8 x i1> %5690, <8 x i1> %5888, <8 x i1> zeroinitializer
  %5890 = select <8 x i1> %5889, <8 x double> %5887, <8 x double> %5647
  br label %5922

5891:                                             ; preds = %5757, %5891
  %5892 = phi i64 [ 0, %5757 ], [ %5920, %5891 ]
  %5893 = uitofp nneg i64 %5892 to double
  %5894 = insertelement <8 x double> poison, double %5893, i64 0
  %5895 = shufflevector <8 x double> %5894, <8 x double> poison, <8 x i32> zeroinitializer
  %5896 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5895, <8 x double> %5748, <8 x double> %5724)
  %5897 = load <8 x double>, ptr %5725, align 64, !tbaa !26
  %5898 = load <8 x double>, ptr %5727, align 64, !tbaa !26
  %5899 = load <8 x double>, ptr %5729, align 64, !tbaa !26
  %5900 = load <8 x double>, ptr %5731, align 64, !tbaa !26
  %5901 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5896, <8 x double> %5900, <8 x double> %5899)
  %5902 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5896, <8 x double> %5901, <8 x double> %5898)
  %5903 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5896, <8 x double> %5902, <8 x double> %5897)
  %5904 = load ptr, ptr %5758, align 32, !tbaa !53
  %5905 = getelementptr inbounds nuw <8 x double>, ptr %5904, i64 %5892
  %5906 = load <8 x double>, ptr %5905, align 64, !tbaa !26
  %5907 = select <8 x i1> %5759, <8 x double> %5906, <8 x double> %5903
  store <8 x double> %5907, ptr %5905, align 64, !tbaa !26
  %5908 = load ptr, ptr %5760, align 8, !tbaa !63
  %5909 = getelementptr inbounds nuw <8 x double>, ptr %5908, i64 %5892
  %5910 = load <8 x double>, ptr %5909, align 64, !tbaa !26
  %5911 = select <8 x i1> %5759, <8 x double> %5910, <8 x double> %5903
  store <8 x double> %5911, ptr %5909, align 64, !tbaa !26
  %5912 = load ptr, ptr %5761, align 16, !tbaa !54
  %5913 = getelementptr inbounds nuw <8 x double>, ptr %5912, i64 %5892
  %5914 = load <8 x double>, ptr %5913, align 64, !tbaa !26
  %5915 = select <8 x i1> %5759, <8 x double> %5914, <8 x double> %5710
  store <8 x double> %5915, ptr %5913, align 64, !tbaa !26
  %5916 = load ptr, ptr %5762, align 8, !tbaa !64
  %5917 = getelementptr inbounds nuw <8 x double>, ptr %5916, i64 %5892
  %5918 = load <8 x double>, ptr %5917, align 64, !tbaa !26
  %5919 = select <8 x i1> %5759, <8 x double> %5918, <8 x double> %5710
  store <8 x double> %5919, ptr %5917, align 64, !tbaa !26
  %5920 = add nuw nsw i64 %5892, 1
  %5921 = icmp eq i64 %5920, %5705
  br i1 %5921, label %5820, label %5891, !llvm.loop !201

5922:                                             ; preds = %5820, %5645
  %5923 = phi <8 x double> [ %5890, %5820 ], [ %5647, %5645 ]
  %5924 = add nuw nsw i64 %5646, 1
  %5925 = load i64, ptr %175, align 8, !tbaa !20
  %5926 = icmp slt i64 %5924, %5925
  br i1 %5926, label %5645, label %5927, !llvm.loop !202

5927:                                             ; preds = %5922
  %5928 = load <8 x double>, ptr %155, align 64, !tbaa !26
  br label %5929

5929:                                             ; preds = %5927, %5603
  %5930 = phi <8 x double> [ %5612, %5603 ], [ %5928, %5927 ]
  %5931 = phi <8 x double> [ %5635, %5603 ], [ %5923, %5927 ]
  %5932 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %5933 = select <8 x i1> %5180, <8 x double> %5932, <8 x double> %5931
  store <8 x double> %5933, ptr %158, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %15)
  store <8 x i64> %5050, ptr %15, align 64, !tbaa !26
  %5934 = load ptr, ptr %237, align 64, !tbaa !40
  %5935 = getelementptr inbounds nuw i8, ptr %5934, i64 64
  store <8 x double> %5930, ptr %5934, align 64, !tbaa !26
  %5936 = load <8 x double>, ptr %238, align 64, !tbaa !26
  %5937 = getelementptr inbounds nuw i8, ptr %5934, i64 128
  store <8 x double> %5936, ptr %5935, align 64, !tbaa !26
  %5938 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %5939 = getelementptr inbounds nuw i8, ptr %5934, i64 192
  store <8 x double> %5938, ptr %5937, align 64, !tbaa !26
  %5940 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %5941 = getelementptr inbounds nuw i8, ptr %5934, i64 256
  store <8 x double> %5940, ptr %5939, align 64, !tbaa !26
  %5942 = load i64, ptr %175, align 8, !tbaa !20
  %5943 = icmp sgt i64 %5942, 0
  br i1 %5943, label %5948, label %5944

5944:                                             ; preds = %5948, %5929
  %5945 = phi ptr [ %5941, %5929 ], [ %5954, %5948 ]
  %5946 = load i64, ptr %146, align 8, !tbaa !47
  %5947 = icmp eq i64 %5946, 0
  br i1 %5947, label %6111, label %5958

5948:                                             ; preds = %5929, %5948
  %5949 = phi ptr [ %5954, %5948 ], [ %5941, %5929 ]
  %5950 = phi i64 [ %5955, %5948 ], [ 0, %5929 ]
  %5951 = load ptr, ptr %148, align 8, !tbaa !28
  %5952 = getelementptr inbounds nuw %struct.Piece, ptr %5951, i64 %5950, i32 41
  %5953 = load <8 x double>, ptr %5952, align 64, !tbaa !26
  %5954 = getelementptr inbounds nuw i8, ptr %5949, i64 64
  store <8 x double> %5953, ptr %5949, align 64, !tbaa !26
  %5955 = add nuw nsw i64 %5950, 1
  %5956 = load i64, ptr %175, align 8, !tbaa !20
  %5957 = icmp slt i64 %5955, %5956
  br i1 %5957, label %5948, label %5944, !llvm.loop !203

5958:                                             ; preds = %5944
  %5959 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %5960 = getelementptr inbounds nuw i8, ptr %5945, i64 64
  store <8 x double> %5959, ptr %5945, align 64, !tbaa !26
  %5961 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %5962 = getelementptr inbounds nuw i8, ptr %5945, i64 128
  store <8 x double> %5961, ptr %5960, align 64, !tbaa !26
  %5963 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %5964 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %5965 = fsub <8 x double> %5963, %5964
  %5966 = fcmp ogt <8 x double> %5965, zeroinitializer
  %5967 = select <8 x i1> %5966, <8 x double> %5965, <8 x double> zeroinitializer
  store <8 x double> %5967, ptr %5962, align 64, !tbaa !26
  %5968 = load i64, ptr %175, align 8, !tbaa !20
  %5969 = icmp sgt i64 %5968, 0
  br i1 %5969, label %5970, label %6111

5970:                                             ; preds = %5958
  %5971 = getelementptr inbounds nuw i8, ptr %5945, i64 192
  br label %5972

5972:                                             ; preds = %5970, %5972
  %5973 = phi ptr [ %6107, %5972 ], [ %5971, %5970 ]
  %5974 = phi i64 [ %6108, %5972 ], [ 0, %5970 ]
  %5975 = load ptr, ptr %148, align 8, !tbaa !28
  %5976 = getelementptr inbounds nuw %struct.Piece, ptr %5975, i64 %5974
  %5977 = getelementptr inbounds nuw i8, ptr %5976, i64 9552
  %5978 = load ptr, ptr %5977, align 16, !tbaa !50
  %5979 = load i64, ptr %137, align 16, !tbaa !21
  %5980 = getelementptr <8 x double>, ptr %5978, i64 %5979
  %5981 = getelementptr i8, ptr %5980, i64 -64
  %5982 = load <8 x double>, ptr %5981, align 64, !tbaa !26
  %5983 = getelementptr inbounds nuw i8, ptr %5976, i64 704
  %5984 = load <8 x double>, ptr %5983, align 64, !tbaa !26, !noalias !204
  %5985 = getelementptr inbounds nuw i8, ptr %5976, i64 768
  %5986 = load <8 x double>, ptr %5985, align 64, !tbaa !26, !noalias !204
  %5987 = getelementptr inbounds nuw i8, ptr %5976, i64 832
  %5988 = load <8 x double>, ptr %5987, align 64, !tbaa !26, !noalias !204
  %5989 = getelementptr inbounds nuw i8, ptr %5976, i64 896
  %5990 = load <8 x double>, ptr %5989, align 64, !tbaa !26, !noalias !204
  %5991 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5982, <8 x double> %5990, <8 x double> %5988)
  %5992 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5982, <8 x double> %5991, <8 x double> %5986)
  %5993 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5982, <8 x double> %5992, <8 x double> %5984)
  %5994 = fmul <8 x double> %5982, %5993
  %5995 = getelementptr inbounds nuw i8, ptr %5976, i64 192
  %5996 = load <8 x double>, ptr %5995, align 64, !tbaa !26, !noalias !204
  %5997 = getelementptr inbounds nuw i8, ptr %5976, i64 256
  %5998 = load <8 x double>, ptr %5997, align 64, !tbaa !26, !noalias !204
  %5999 = getelementptr inbounds nuw i8, ptr %5976, i64 320
  %6000 = load <8 x double>, ptr %5999, align 64, !tbaa !26, !noalias !204
  %6001 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5994, <8 x double> %6000, <8 x double> %5998)
  %6002 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5994, <8 x double> %6001, <8 x double> %5996)
  %6003 = fdiv <8 x double> splat (double 1.000000e+00), %6002
  %6004 = fmul <8 x double> %6000, %5994
  %6005 = fmul <8 x double> %6004, splat (double 0x3FD5555555555555)
  %6006 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5998, <8 x double> splat (double 5.000000e-01), <8 x double> %6005)
  %6007 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5994, <8 x double> %6006, <8 x double> %5996)
  %6008 = fmul <8 x double> %5994, %6007
  %6009 = fsub <8 x double> %5982, %6008
  %6010 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6009, <8 x double> %6003, <8 x double> %5994)
  %6011 = getelementptr inbounds nuw i8, ptr %5976, i64 8192
  %6012 = load <8 x double>, ptr %6011, align 64, !tbaa !26
  %6013 = getelementptr inbounds nuw i8, ptr %5976, i64 6400
  %6014 = load <8 x double>, ptr %6013, align 64, !tbaa !26
  %6015 = fsub <8 x double> %6014, %6010
  %6016 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6012, <8 x double> %6015, <8 x double> %6010)
  %6017 = getelementptr inbounds nuw i8, ptr %5973, i64 64
  store <8 x double> %6016, ptr %5973, align 64, !tbaa !26
  %6018 = getelementptr inbounds nuw i8, ptr %5976, i64 7744
  %6019 = load <8 x double>, ptr %6018, align 64, !tbaa !26
  %6020 = getelementptr inbounds nuw i8, ptr %5973, i64 128
  store <8 x double> %6019, ptr %6017, align 64, !tbaa !26
  %6021 = load <8 x double>, ptr %5976, align 64, !tbaa !26
  %6022 = getelementptr inbounds nuw i8, ptr %5976, i64 4224
  %6023 = load <8 x double>, ptr %6022, align 64, !tbaa !26
  %6024 = fsub <8 x double> %6021, %6023
  %6025 = getelementptr inbounds nuw i8, ptr %5973, i64 192
  store <8 x double> %6024, ptr %6020, align 64, !tbaa !26
  %6026 = getelementptr inbounds nuw i8, ptr %5976, i64 4544
  %6027 = load <8 x double>, ptr %6026, align 64, !tbaa !26
  %6028 = getelementptr inbounds nuw i8, ptr %5973, i64 256
  store <8 x double> %6027, ptr %6025, align 64, !tbaa !26
  %6029 = getelementptr inbounds nuw i8, ptr %5976, i64 4480
  %6030 = load <8 x double>, ptr %6029, align 64, !tbaa !26
  %6031 = getelementptr inbounds nuw i8, ptr %5973, i64 320
  store <8 x double> %6030, ptr %6028, align 64, !tbaa !26
  %6032 = getelementptr inbounds nuw i8, ptr %5976, i64 4352
  %6033 = load <8 x double>, ptr %6032, align 64, !tbaa !26
  %6034 = getelementptr inbounds nuw i8, ptr %5973, i64 384
  store <8 x double> %6033, ptr %6031, align 64, !tbaa !26
  %6035 = getelementptr inbounds nuw i8, ptr %5976, i64 4608
  %6036 = load <8 x double>, ptr %6035, align 64, !tbaa !26
  %6037 = getelementptr inbounds nuw i8, ptr %5973, i64 448
  store <8 x double> %6036, ptr %6034, align 64, !tbaa !26
  %6038 = getelementptr inbounds nuw i8, ptr %5976, i64 9648
  %6039 = load i64, ptr %138, align 8, !tbaa !22
  %6040 = sitofp i64 %6039 to double
  %6041 = tail call double @llvm.fmuladd.f64(double %6040, double 7.500000e-01, double -5.000000e-01)
  %6042 = fcmp ogt double %6041, 0.000000e+00
  %6043 = select i1 %6042, double %6041, double 0.000000e+00
  %6044 = fptosi double %6043 to i64
  %6045 = add nsw i64 %6039, -2
  %6046 = tail call i64 @llvm.smin.i64(i64 %6045, i64 %6044)
  %6047 = sitofp i64 %6046 to double
  %6048 = fsub double %6041, %6047
  %6049 = fsub double 1.000000e+00, %6048
  %6050 = insertelement <8 x double> poison, double %6049, i64 0
  %6051 = shufflevector <8 x double> %6050, <8 x double> poison, <8 x i32> zeroinitializer
  %6052 = load ptr, ptr %6038, align 16, !tbaa !54
  %6053 = getelementptr inbounds <8 x double>, ptr %6052, i64 %6046
  %6054 = load <8 x double>, ptr %6053, align 64, !tbaa !26
  %6055 = insertelement <8 x double> poison, double %6048, i64 0
  %6056 = shufflevector <8 x double> %6055, <8 x double> poison, <8 x i32> zeroinitializer
  %6057 = getelementptr i8, ptr %6053, i64 64
  %6058 = load <8 x double>, ptr %6057, align 64, !tbaa !26
  %6059 = fmul <8 x double> %6058, %6056
  %6060 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6051, <8 x double> %6054, <8 x double> %6059)
  store <8 x double> %6060, ptr %6037, align 64, !tbaa !26
  %6061 = load i64, ptr %138, align 8, !tbaa !22
  %6062 = sitofp i64 %6061 to double
  %6063 = tail call double @llvm.fmuladd.f64(double %6062, double 5.000000e-01, double -5.000000e-01)
  %6064 = fcmp ogt double %6063, 0.000000e+00
  %6065 = select i1 %6064, double %6063, double 0.000000e+00
  %6066 = fptosi double %6065 to i64
  %6067 = add nsw i64 %6061, -2
  %6068 = tail call i64 @llvm.smin.i64(i64 %6067, i64 %6066)
  %6069 = sitofp i64 %6068 to double
  %6070 = fsub double %6063, %6069
  %6071 = fsub double 1.000000e+00, %6070
  %6072 = insertelement <8 x double> poison, double %6071, i64 0
  %6073 = shufflevector <8 x double> %6072, <8 x double> poison, <8 x i32> zeroinitializer
  %6074 = load ptr, ptr %6038, align 16, !tbaa !54
  %6075 = getelementptr inbounds <8 x double>, ptr %6074, i64 %6068
  %6076 = load <8 x double>, ptr %6075, align 64, !tbaa !26
  %6077 = insertelement <8 x double> poison, double %6070, i64 0
  %6078 = shufflevector <8 x double> %6077, <8 x double> poison, <8 x i32> zeroinitializer
  %6079 = getelementptr i8, ptr %6075, i64 64
  %6080 = load <8 x double>, ptr %6079, align 64, !tbaa !26
  %6081 = fmul <8 x double> %6080, %6078
  %6082 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6073, <8 x double> %6076, <8 x double> %6081)
  %6083 = getelementptr inbounds nuw i8, ptr %5973, i64 512
  store <8 x double> %6082, ptr %6083, align 64, !tbaa !26
  %6084 = load i64, ptr %138, align 8, !tbaa !22
  %6085 = sitofp i64 %6084 to double
  %6086 = tail call double @llvm.fmuladd.f64(double %6085, double 2.500000e-01, double -5.000000e-01)
  %6087 = fcmp ogt double %6086, 0.000000e+00
  %6088 = select i1 %6087, double %6086, double 0.000000e+00
  %6089 = fptosi double %6088 to i64
  %6090 = add nsw i64 %6084, -2
  %6091 = tail call i64 @llvm.smin.i64(i64 %6090, i64 %6089)
  %6092 = sitofp i64 %6091 to double
  %6093 = fsub double %6086, %6092
  %6094 = fsub double 1.000000e+00, %6093
  %6095 = insertelement <8 x double> poison, double %6094, i64 0
  %6096 = shufflevector <8 x double> %6095, <8 x double> poison, <8 x i32> zeroinitializer
  %6097 = load ptr, ptr %6038, align 16, !tbaa !54
  %6098 = getelementptr inbounds <8 x double>, ptr %6097, i64 %6091
  %6099 = load <8 x double>, ptr %6098, align 64, !tbaa !26
  %6100 = insertelement <8 x double> poison, double %6093, i64 0
  %6101 = shufflevector <8 x double> %6100, <8 x double> poison, <8 x i32> zeroinitializer
  %6102 = getelementptr i8, ptr %6098, i64 64
  %6103 = load <8 x double>, ptr %6102, align 64, !tbaa !26
  %6104 = fmul <8 x double> %6103, %6101
  %6105 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6096, <8 x double> %6099, <8 x double> %6104)
  %6106 = getelementptr inbounds nuw i8, ptr %5973, i64 576
  store <8 x double> %6105, ptr %6106, align 64, !tbaa !26
  %6107 = getelementptr inbounds nuw i8, ptr %5973, i64 640
  %6108 = add nuw nsw i64 %5974, 1
  %6109 = load i64, ptr %175, align 8, !tbaa !20
  %6110 = icmp slt i64 %6108, %6109
  br i1 %6110, label %5972, label %6111, !llvm.loop !207

6111:                                             ; preds = %5972, %5958, %5944
  %6112 = getelementptr inbounds nuw i8, ptr %5945, i64 192
  br label %6113

6113:                                             ; preds = %6111, %6272
  %6114 = phi i64 [ 0, %6111 ], [ %6273, %6272 ]
  %6115 = getelementptr inbounds nuw i64, ptr %15, i64 %6114
  %6116 = load i64, ptr %6115, align 8, !tbaa !30
  %6117 = icmp eq i64 %6116, 0
  br i1 %6117, label %6272, label %6118

6118:                                             ; preds = %6113
  %6119 = getelementptr inbounds nuw [8 x i64], ptr %239, i64 0, i64 %6114
  %6120 = load i64, ptr %6119, align 8, !tbaa !30
  %6121 = load i64, ptr %240, align 8, !tbaa !208
  %6122 = icmp eq i64 %6120, %6121
  br i1 %6122, label %6126, label %6123

6123:                                             ; preds = %6118
  %6124 = getelementptr inbounds nuw [8 x ptr], ptr %244, i64 0, i64 %6114
  %6125 = load ptr, ptr %6124, align 8, !tbaa !209
  br label %6141

6126:                                             ; preds = %6118
  %6127 = getelementptr inbounds nuw [8 x i64], ptr %139, i64 0, i64 %6114
  %6128 = load i64, ptr %6127, align 8, !tbaa !30
  %6129 = load ptr, ptr %241, align 8, !tbaa !210
  %6130 = load i64, ptr %130, align 8, !tbaa !44
  %6131 = getelementptr inbounds i64, ptr %6129, i64 %6130
  store i64 %6128, ptr %6131, align 8, !tbaa !30
  %6132 = load ptr, ptr %242, align 8, !tbaa !211
  %6133 = load i64, ptr %130, align 8, !tbaa !44
  %6134 = add nsw i64 %6133, 1
  store i64 %6134, ptr %130, align 8, !tbaa !44
  %6135 = load i64, ptr %240, align 8, !tbaa !208
  %6136 = mul nsw i64 %6135, %6133
  %6137 = load i64, ptr %243, align 8, !tbaa !15
  %6138 = mul nsw i64 %6136, %6137
  %6139 = getelementptr inbounds double, ptr %6132, i64 %6138
  %6140 = getelementptr inbounds nuw [8 x ptr], ptr %244, i64 0, i64 %6114
  store ptr %6139, ptr %6140, align 8, !tbaa !209
  br label %6141

6141:                                             ; preds = %6123, %6126
  %6142 = phi i64 [ %6120, %6123 ], [ 0, %6126 ]
  %6143 = phi ptr [ %6125, %6123 ], [ %6139, %6126 ]
  %6144 = add nsw i64 %6142, 1
  store i64 %6144, ptr %6119, align 8, !tbaa !30
  %6145 = load i64, ptr %243, align 8, !tbaa !15
  %6146 = mul nsw i64 %6145, %6142
  %6147 = getelementptr inbounds double, ptr %6143, i64 %6146
  %6148 = load ptr, ptr %237, align 64, !tbaa !40
  %6149 = icmp ult ptr %6148, %5941
  br i1 %6149, label %6215, label %6150

6150:                                             ; preds = %6215, %6141
  %6151 = phi ptr [ %6147, %6141 ], [ %6220, %6215 ]
  %6152 = load i64, ptr %147, align 64, !tbaa !16
  %6153 = icmp sgt i64 %6152, 0
  br i1 %6153, label %6154, label %6202

6154:                                             ; preds = %6150
  %6155 = trunc nuw nsw i64 %6114 to i32
  %6156 = and i64 %6152, 3
  %6157 = icmp ult i64 %6152, 4
  br i1 %6157, label %6186, label %6158

6158:                                             ; preds = %6154
  %6159 = and i64 %6152, 9223372036854775804
  br label %6160

6160:                                             ; preds = %6160, %6158
  %6161 = phi i64 [ 0, %6158 ], [ %6183, %6160 ]
  %6162 = phi ptr [ %6151, %6158 ], [ %6180, %6160 ]
  %6163 = phi i64 [ 0, %6158 ], [ %6184, %6160 ]
  %6164 = getelementptr inbounds nuw <8 x double>, ptr %5941, i64 %6161
  %6165 = getelementptr i8, ptr %6162, i64 8
  %6166 = load <8 x double>, ptr %6164, align 64, !tbaa !26
  %6167 = extractelement <8 x double> %6166, i32 %6155
  store double %6167, ptr %6162, align 8, !tbaa !45
  %6168 = or disjoint i64 %6161, 1
  %6169 = getelementptr inbounds nuw <8 x double>, ptr %5941, i64 %6168
  %6170 = getelementptr i8, ptr %6162, i64 16
  %6171 = load <8 x double>, ptr %6169, align 64, !tbaa !26
  %6172 = extractelement <8 x double> %6171, i32 %6155
  store double %6172, ptr %6165, align 8, !tbaa !45
  %6173 = or disjoint i64 %6161, 2
  %6174 = getelementptr inbounds nuw <8 x double>, ptr %5941, i64 %6173
  %6175 = getelementptr i8, ptr %6162, i64 24
  %6176 = load <8 x double>, ptr %6174, align 64, !tbaa !26
  %6177 = extractelement <8 x double> %6176, i32 %6155
  store double %6177, ptr %6170, align 8, !tbaa !45
  %6178 = or disjoint i64 %6161, 3
  %6179 = getelementptr inbounds nuw <8 x double>, ptr %5941, i64 %6178
  %6180 = getelementptr i8, ptr %6162, i64 32
  %6181 = load <8 x double>, ptr %6179, align 64, !tbaa !26
  %6182 = extractelement <8 x double> %6181, i32 %6155
  store double %6182, ptr %6175, align 8, !tbaa !45
  %6183 = add nuw nsw i64 %6161, 4
  %6184 = add i64 %6163, 4
  %6185 = icmp eq i64 %6184, %6159
  br i1 %6185, label %6186, label %6160, !llvm.loop !212

6186:                                             ; preds = %6160, %6154
  %6187 = phi ptr [ poison, %6154 ], [ %6180, %6160 ]
  %6188 = phi i64 [ 0, %6154 ], [ %6183, %6160 ]
  %6189 = phi ptr [ %6151, %6154 ], [ %6180, %6160 ]
  %6190 = icmp eq i64 %6156, 0
  br i1 %6190, label %6202, label %6191

6191:                                             ; preds = %6186, %6191
  %6192 = phi i64 [ %6199, %6191 ], [ %6188, %6186 ]
  %6193 = phi ptr [ %6196, %6191 ], [ %6189, %6186 ]
  %6194 = phi i64 [ %6200, %6191 ], [ 0, %6186 ]
  %6195 = getelementptr inbounds nuw <8 x double>, ptr %5941, i64 %6192
  %6196 = getelementptr i8, ptr %6193, i64 8
  %6197 = load <8 x double>, ptr %6195, align 64, !tbaa !26
  %6198 = extractelement <8 x double> %6197, i32 %6155
  store double %6198, ptr %6193, align 8, !tbaa !45
  %6199 = add nuw nsw i64 %6192, 1
  %6200 = add i64 %6194, 1
  %6201 = icmp eq i64 %6200, %6156
  br i1 %6201, label %6202, label %6191, !llvm.loop !213

6202:                                             ; preds = %6186, %6191, %6150
  %6203 = phi ptr [ %6151, %6150 ], [ %6187, %6186 ], [ %6196, %6191 ]
  %6204 = load i64, ptr %146, align 8, !tbaa !47
  %6205 = icmp eq i64 %6204, 0
  br i1 %6205, label %6272, label %6206

6206:                                             ; preds = %6202
  %6207 = getelementptr inbounds nuw double, ptr %5945, i64 %6114
  %6208 = load double, ptr %6207, align 8, !tbaa !45
  %6209 = getelementptr inbounds nuw i8, ptr %6203, i64 8
  store double %6208, ptr %6203, align 8, !tbaa !45
  %6210 = getelementptr inbounds nuw i8, ptr %6207, i64 64
  %6211 = load double, ptr %6210, align 8, !tbaa !45
  %6212 = getelementptr inbounds nuw i8, ptr %6203, i64 16
  store double %6211, ptr %6209, align 8, !tbaa !45
  %6213 = getelementptr inbounds nuw i8, ptr %6207, i64 128
  %6214 = load double, ptr %6213, align 8, !tbaa !45
  store double %6214, ptr %6212, align 8, !tbaa !45
  br i1 %6153, label %6223, label %6272

6215:                                             ; preds = %6141, %6215
  %6216 = phi ptr [ %6221, %6215 ], [ %6148, %6141 ]
  %6217 = phi ptr [ %6220, %6215 ], [ %6147, %6141 ]
  %6218 = getelementptr inbounds nuw double, ptr %6216, i64 %6114
  %6219 = load double, ptr %6218, align 8, !tbaa !45
  %6220 = getelementptr inbounds nuw i8, ptr %6217, i64 8
  store double %6219, ptr %6217, align 8, !tbaa !45
  %6221 = getelementptr inbounds nuw i8, ptr %6216, i64 64
  %6222 = icmp ult ptr %6221, %5941
  br i1 %6222, label %6215, label %6150, !llvm.loop !215

6223:                                             ; preds = %6206
  %6224 = getelementptr inbounds nuw i8, ptr %6203, i64 24
  %6225 = trunc nuw nsw i64 %6114 to i32
  br label %6226

6226:                                             ; preds = %6223, %6226
  %6227 = phi i64 [ %6270, %6226 ], [ 0, %6223 ]
  %6228 = phi ptr [ %6269, %6226 ], [ %6224, %6223 ]
  %6229 = mul nuw nsw i64 %6227, 640
  %6230 = getelementptr inbounds nuw i8, ptr %6112, i64 %6229
  %6231 = load <8 x double>, ptr %6230, align 64, !tbaa !26
  %6232 = extractelement <8 x double> %6231, i32 %6225
  %6233 = getelementptr inbounds nuw i8, ptr %6228, i64 8
  store double %6232, ptr %6228, align 8, !tbaa !45
  %6234 = getelementptr inbounds nuw i8, ptr %6230, i64 64
  %6235 = load <8 x double>, ptr %6234, align 64, !tbaa !26
  %6236 = extractelement <8 x double> %6235, i32 %6225
  %6237 = getelementptr inbounds nuw i8, ptr %6228, i64 16
  store double %6236, ptr %6233, align 8, !tbaa !45
  %6238 = getelementptr inbounds nuw i8, ptr %6230, i64 128
  %6239 = load <8 x double>, ptr %6238, align 64, !tbaa !26
  %6240 = extractelement <8 x double> %6239, i32 %6225
  %6241 = getelementptr inbounds nuw i8, ptr %6228, i64 24
  store double %6240, ptr %6237, align 8, !tbaa !45
  %6242 = getelementptr inbounds nuw i8, ptr %6230, i64 192
  %6243 = load <8 x double>, ptr %6242, align 64, !tbaa !26
  %6244 = extractelement <8 x double> %6243, i32 %6225
  %6245 = getelementptr inbounds nuw i8, ptr %6228, i64 32
  store double %6244, ptr %6241, align 8, !tbaa !45
  %6246 = getelementptr inbounds nuw i8, ptr %6230, i64 256
  %6247 = load <8 x double>, ptr %6246, align 64, !tbaa !26
  %6248 = extractelement <8 x double> %6247, i32 %6225
  %6249 = getelementptr inbounds nuw i8, ptr %6228, i64 40
  store double %6248, ptr %6245, align 8, !tbaa !45
  %6250 = getelementptr inbounds nuw i8, ptr %6230, i64 320
  %6251 = load <8 x double>, ptr %6250, align 64, !tbaa !26
  %6252 = extractelement <8 x double> %6251, i32 %6225
  %6253 = getelementptr inbounds nuw i8, ptr %6228, i64 48
  store double %6252, ptr %6249, align 8, !tbaa !45
  %6254 = getelementptr inbounds nuw i8, ptr %6230, i64 384
  %6255 = load <8 x double>, ptr %6254, align 64, !tbaa !26
  %6256 = extractelement <8 x double> %6255, i32 %6225
  %6257 = getelementptr inbounds nuw i8, ptr %6228, i64 56
  store double %6256, ptr %6253, align 8, !tbaa !45
  %6258 = getelementptr inbounds nuw i8, ptr %6230, i64 448
  %6259 = load <8 x double>, ptr %6258, align 64, !tbaa !26
  %6260 = extractelement <8 x double> %6259, i32 %6225
  %6261 = getelementptr inbounds nuw i8, ptr %6228, i64 64
  store double %6260, ptr %6257, align 8, !tbaa !45
  %6262 = getelementptr inbounds nuw i8, ptr %6230, i64 512
  %6263 = load <8 x double>, ptr %6262, align 64, !tbaa !26
  %6264 = extractelement <8 x double> %6263, i32 %6225
  %6265 = getelementptr inbounds nuw i8, ptr %6228, i64 72
  store double %6264, ptr %6261, align 8, !tbaa !45
  %6266 = getelementptr inbounds nuw i8, ptr %6230, i64 576
  %6267 = load <8 x double>, ptr %6266, align 64, !tbaa !26
  %6268 = extractelement <8 x double> %6267, i32 %6225
  %6269 = getelementptr inbounds nuw i8, ptr %6228, i64 80
  store double %6268, ptr %6265, align 8, !tbaa !45
  %6270 = add nuw nsw i64 %6227, 1
  %6271 = icmp eq i64 %6270, %6152
  br i1 %6271, label %6272, label %6226, !llvm.loop !212

6272:                                             ; preds = %6226, %6206, %6202, %6113
  %6273 = add nuw nsw i64 %6114, 1
  %6274 = icmp eq i64 %6273, 8
  br i1 %6274, label %6275, label %6113, !llvm.loop !216

6275:                                             ; preds = %6272
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %15)
  %6276 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %6277 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %6278 = fsub <8 x double> %6276, %6277
  %6279 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %6280 = fadd <8 x double> %6279, splat (double -1.000000e-09)
  %6281 = fcmp oge <8 x double> %6278, %6280
  %6282 = select <8 x i1> %6281, <8 x i64> %5050, <8 x i64> zeroinitializer
  %6283 = load i64, ptr %175, align 8, !tbaa !20
  %6284 = icmp sgt i64 %6283, 0
  br i1 %6284, label %6285, label %6317

6285:                                             ; preds = %6275
  %6286 = load ptr, ptr %148, align 8, !tbaa !28
  %6287 = and i64 %6283, 1
  %6288 = icmp eq i64 %6283, 1
  br i1 %6288, label %6307, label %6289

6289:                                             ; preds = %6285
  %6290 = and i64 %6283, 9223372036854775806
  br label %6291

6291:                                             ; preds = %6291, %6289
  %6292 = phi i64 [ 0, %6289 ], [ %6304, %6291 ]
  %6293 = phi <8 x double> [ splat (double 1.000000e+09), %6289 ], [ %6303, %6291 ]
  %6294 = phi i64 [ 0, %6289 ], [ %6305, %6291 ]
  %6295 = getelementptr inbounds nuw %struct.Piece, ptr %6286, i64 %6292, i32 41
  %6296 = load <8 x double>, ptr %6295, align 64, !tbaa !26
  %6297 = fcmp olt <8 x double> %6293, %6296
  %6298 = select <8 x i1> %6297, <8 x double> %6293, <8 x double> %6296
  %6299 = or disjoint i64 %6292, 1
  %6300 = getelementptr inbounds nuw %struct.Piece, ptr %6286, i64 %6299, i32 41
  %6301 = load <8 x double>, ptr %6300, align 64, !tbaa !26
  %6302 = fcmp olt <8 x double> %6298, %6301
  %6303 = select <8 x i1> %6302, <8 x double> %6298, <8 x double> %6301
  %6304 = add nuw nsw i64 %6292, 2
  %6305 = add i64 %6294, 2
  %6306 = icmp eq i64 %6305, %6290
  br i1 %6306, label %6307, label %6291, !llvm.loop !183

6307:                                             ; preds = %6291, %6285
  %6308 = phi <8 x double> [ poison, %6285 ], [ %6303, %6291 ]
  %6309 = phi i64 [ 0, %6285 ], [ %6304, %6291 ]
  %6310 = phi <8 x double> [ splat (double 1.000000e+09), %6285 ], [ %6303, %6291 ]
  %6311 = icmp eq i64 %6287, 0
  br i1 %6311, label %6317, label %6312

6312:                                             ; preds = %6307
  %6313 = getelementptr inbounds nuw %struct.Piece, ptr %6286, i64 %6309, i32 41
  %6314 = load <8 x double>, ptr %6313, align 64, !tbaa !26
  %6315 = fcmp olt <8 x double> %6310, %6314
  %6316 = select <8 x i1> %6315, <8 x double> %6310, <8 x double> %6314
  br label %6317

6317:                                             ; preds = %6312, %6307, %6275
  %6318 = phi <8 x double> [ splat (double 1.000000e+09), %6275 ], [ %6308, %6307 ], [ %6316, %6312 ]
  %6319 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %6320 = select <8 x i1> %5180, <8 x double> %6319, <8 x double> %6318
  store <8 x double> %6320, ptr %233, align 64, !tbaa !26
  %6321 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %6322 = fcmp une <8 x double> %6321, zeroinitializer
  %6323 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %6324 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %6325 = fsub <8 x double> %6323, %6324
  %6326 = fcmp une <8 x double> %6321, splat (double 1.000000e+00)
  %6327 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %6328 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %6329 = fsub <8 x double> %6327, %6328
  %6330 = select <8 x i1> %6326, <8 x double> splat (double -1.000000e+00), <8 x double> %6329
  %6331 = fcmp une <8 x double> %6321, splat (double 2.000000e+00)
  %6332 = fsub <8 x double> %6320, %6328
  %6333 = select <8 x i1> %6331, <8 x double> %6330, <8 x double> %6332
  %6334 = fcmp une <8 x double> %6321, splat (double 3.000000e+00)
  %6335 = fsub <8 x double> %6325, %6328
  %6336 = select <8 x i1> %6334, <8 x double> %6333, <8 x double> %6335
  %6337 = fcmp une <8 x double> %6321, splat (double 4.000000e+00)
  %6338 = fsub <8 x double> %6328, %6325
  %6339 = select <8 x i1> %6337, <8 x double> %6336, <8 x double> %6338
  %6340 = fcmp oge <8 x double> %6339, splat (double 0xBEB0C6F7A0B5ED8D)
  %6341 = select <8 x i1> %6340, <8 x i1> %6322, <8 x i1> zeroinitializer
  %6342 = select <8 x i1> %6341, <8 x i64> %5050, <8 x i64> zeroinitializer
  %6343 = xor <8 x i64> %6342, splat (i64 -1)
  %6344 = and <8 x i64> %6282, %6343
  %6345 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %6346 = icmp ne <8 x i64> %6344, zeroinitializer
  %6347 = select <8 x i1> %6322, <8 x i1> %6346, <8 x i1> zeroinitializer
  %6348 = select <8 x i1> %6347, <8 x double> splat (double 2.000000e+00), <8 x double> %6345
  store <8 x double> %6348, ptr %144, align 64, !tbaa !26
  %6349 = or <8 x i64> %6342, %6282
  %6350 = load <8 x double>, ptr %238, align 64, !tbaa !26
  %6351 = fadd <8 x double> %6350, splat (double 1.000000e+00)
  %6352 = icmp eq <8 x i64> %6349, zeroinitializer
  %6353 = select <8 x i1> %6352, <8 x double> %6350, <8 x double> %6351
  store <8 x double> %6353, ptr %238, align 64, !tbaa !26
  %6354 = xor <8 x i64> %6349, %5050
  %6355 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %6356 = fcmp oeq <8 x double> %6355, zeroinitializer
  %6357 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %6358 = fcmp oeq <8 x double> %6357, zeroinitializer
  %6359 = select <8 x i1> %6358, <8 x i1> %6356, <8 x i1> zeroinitializer
  %6360 = select <8 x i1> %6359, <8 x i64> %6354, <8 x i64> zeroinitializer
  %6361 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %6362 = fmul <8 x double> %6361, splat (double 5.000000e-01)
  %6363 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %6364 = fadd <8 x double> %6363, %6362
  %6365 = fadd <8 x double> %6364, splat (double -4.000000e-03)
  %6366 = fcmp ult <8 x double> %6327, %6365
  %6367 = fsub <8 x double> %6363, %6362
  %6368 = fadd <8 x double> %6367, splat (double 4.000000e-03)
  %6369 = fcmp ole <8 x double> %6327, %6368
  %6370 = load <8 x i64>, ptr %162, align 64, !tbaa !26
  %6371 = select <8 x i1> %6369, <8 x i64> splat (i64 -1), <8 x i64> %6370
  %6372 = select <8 x i1> %6366, <8 x i64> %6371, <8 x i64> zeroinitializer
  %6373 = xor <8 x i64> %6372, %6370
  %6374 = and <8 x i64> %6373, %6360
  %6375 = and <8 x i64> %6372, %6360
  %6376 = xor <8 x i64> %6360, splat (i64 -1)
  %6377 = and <8 x i64> %6370, %6376
  %6378 = or <8 x i64> %6375, %6377
  store <8 x i64> %6378, ptr %162, align 64, !tbaa !26
  %6379 = load <8 x i64>, ptr %172, align 64, !tbaa !26
  %6380 = or <8 x i64> %6374, %6379
  store <8 x i64> %6380, ptr %172, align 64, !tbaa !26
  %6381 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %6349)
  %6382 = icmp eq i64 %6381, 0
  br i1 %6382, label %6417, label %6383

6383:                                             ; preds = %6317
  %6384 = extractelement <8 x i64> %6349, i64 0
  %6385 = icmp eq i64 %6384, 0
  br i1 %6385, label %6387, label %6386

6386:                                             ; preds = %6383
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #5
  br label %6387

6387:                                             ; preds = %6386, %6383
  %6388 = extractelement <8 x i64> %6349, i64 1
  %6389 = icmp eq i64 %6388, 0
  br i1 %6389, label %6391, label %6390

6390:                                             ; preds = %6387
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1) #5
  br label %6391

6391:                                             ; preds = %6390, %6387
  %6392 = extractelement <8 x i64> %6349, i64 2
  %6393 = icmp eq i64 %6392, 0
  br i1 %6393, label %6395, label %6394

6394:                                             ; preds = %6391
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 2) #5
  br label %6395

6395:                                             ; preds = %6394, %6391
  %6396 = extractelement <8 x i64> %6349, i64 3
  %6397 = icmp eq i64 %6396, 0
  br i1 %6397, label %6399, label %6398

6398:                                             ; preds = %6395
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 3) #5
  br label %6399

6399:                                             ; preds = %6398, %6395
  %6400 = extractelement <8 x i64> %6349, i64 4
  %6401 = icmp eq i64 %6400, 0
  br i1 %6401, label %6403, label %6402

6402:                                             ; preds = %6399
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 4) #5
  br label %6403

6403:                                             ; preds = %6402, %6399
  %6404 = extractelement <8 x i64> %6349, i64 5
  %6405 = icmp eq i64 %6404, 0
  br i1 %6405, label %6407, label %6406

6406:                                             ; preds = %6403
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 5) #5
  br label %6407

6407:                                             ; preds = %6406, %6403
  %6408 = extractelement <8 x i64> %6349, i64 6
  %6409 = icmp eq i64 %6408, 0
  br i1 %6409, label %6411, label %6410

6410:                                             ; preds = %6407
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 6) #5
  br label %6411

6411:                                             ; preds = %6410, %6407
  %6412 = extractelement <8 x i64> %6349, i64 7
  %6413 = icmp eq i64 %6412, 0
  br i1 %6413, label %6415, label %6414

6414:                                             ; preds = %6411
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 7) #5
  br label %6415

6415:                                             ; preds = %6414, %6411
  %6416 = load <8 x double>, ptr %144, align 64, !tbaa !26
  br label %6417

6417:                                             ; preds = %6415, %6317
  %6418 = phi <8 x double> [ %6416, %6415 ], [ %6348, %6317 ]
  %6419 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %6420 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %6421 = fadd <8 x double> %6420, splat (double -1.000000e+00)
  %6422 = fcmp oge <8 x double> %6419, %6421
  %6423 = select <8 x i1> %6422, <8 x i64> %5050, <8 x i64> zeroinitializer
  %6424 = icmp eq <8 x i64> %6423, zeroinitializer
  %6425 = select <8 x i1> %6424, <8 x double> %6418, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %6425, ptr %144, align 64, !tbaa !26
  %6426 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %6423)
  %6427 = icmp eq i64 %6426, 0
  br i1 %6427, label %566, label %6428

6428:                                             ; preds = %6417
  %6429 = extractelement <8 x i64> %6423, i64 0
  %6430 = icmp eq i64 %6429, 0
  br i1 %6430, label %6432, label %6431

6431:                                             ; preds = %6428
  store double 1.000000e+00, ptr %136, align 8, !tbaa !45
  br label %6432

6432:                                             ; preds = %6431, %6428
  %6433 = extractelement <8 x i64> %6423, i64 1
  %6434 = icmp eq i64 %6433, 0
  br i1 %6434, label %6436, label %6435

6435:                                             ; preds = %6432
  store double 1.000000e+00, ptr %275, align 8, !tbaa !45
  br label %6436

6436:                                             ; preds = %6435, %6432
  %6437 = extractelement <8 x i64> %6423, i64 2
  %6438 = icmp eq i64 %6437, 0
  br i1 %6438, label %6440, label %6439

6439:                                             ; preds = %6436
  store double 1.000000e+00, ptr %276, align 8, !tbaa !45
  br label %6440

6440:                                             ; preds = %6439, %6436
  %6441 = extractelement <8 x i64> %6423, i64 3
  %6442 = icmp eq i64 %6441, 0
  br i1 %6442, label %6444, label %6443

6443:                                             ; preds = %6440
  store double 1.000000e+00, ptr %277, align 8, !tbaa !45
  br label %6444

6444:                                             ; preds = %6443, %6440
  %6445 = extractelement <8 x i64> %6423, i64 4
  %6446 = icmp eq i64 %6445, 0
  br i1 %6446, label %6448, label %6447

6447:                                             ; preds = %6444
  store double 1.000000e+00, ptr %278, align 8, !tbaa !45
  br label %6448

6448:                                             ; preds = %6447, %6444
  %6449 = extractelement <8 x i64> %6423, i64 5
  %6450 = icmp eq i64 %6449, 0
  br i1 %6450, label %6452, label %6451

6451:                                             ; preds = %6448
  store double 1.000000e+00, ptr %279, align 8, !tbaa !45
  br label %6452

6452:                                             ; preds = %6451, %6448
  %6453 = extractelement <8 x i64> %6423, i64 6
  %6454 = icmp eq i64 %6453, 0
  br i1 %6454, label %6456, label %6455

6455:                                             ; preds = %6452
  store double 1.000000e+00, ptr %280, align 8, !tbaa !45
  br label %6456

6456:                                             ; preds = %6455, %6452
  %6457 = extractelement <8 x i64> %6423, i64 7
  %6458 = icmp eq i64 %6457, 0
  br i1 %6458, label %566, label %6459

6459:                                             ; preds = %6456
  store double 1.000000e+00, ptr %281, align 8, !tbaa !45
  br label %566

6460:                                             ; preds = %566, %571, %127
  %6461 = phi i64 [ 0, %127 ], [ 1, %571 ], [ 0, %566 ]
  ret i64 %6461
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr nocapture noundef nonnull align 8 dereferenceable(224) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 2408
  %7 = sext i32 %2 to i64
  %8 = load ptr, ptr %5, align 8, !tbaa !217
  %9 = load i64, ptr %6, align 8, !tbaa !27
  %10 = getelementptr inbounds i64, ptr %8, i64 %9
  %11 = load i64, ptr %10, align 8, !tbaa !30
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2, i64 noundef %11) #5
  %12 = getelementptr inbounds i64, ptr %4, i64 %7
  store i64 -1, ptr %12, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2) #5
  %13 = load i64, ptr %6, align 8, !tbaa !27
  %14 = add nsw i64 %13, 1
  store i64 %14, ptr %6, align 8, !tbaa !27
  %15 = getelementptr inbounds nuw i8, ptr %0, i64 6272
  %16 = load ptr, ptr %15, align 64, !tbaa !40
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %18 = load <8 x double>, ptr %17, align 64, !tbaa !26
  %19 = getelementptr inbounds nuw i8, ptr %16, i64 64
  store <8 x double> %18, ptr %16, align 64, !tbaa !26
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %21 = load <8 x double>, ptr %20, align 64, !tbaa !26
  %22 = getelementptr inbounds nuw i8, ptr %16, i64 128
  store <8 x double> %21, ptr %19, align 64, !tbaa !26
  %23 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %24 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %25 = load <8 x double>, ptr %24, align 64, !tbaa !26
  %26 = getelementptr inbounds nuw i8, ptr %16, i64 192
  store <8 x double> %25, ptr %22, align 64, !tbaa !26
  %27 = load <8 x double>, ptr %23, align 64, !tbaa !26
  %28 = getelementptr inbounds nuw i8, ptr %16, i64 256
  store <8 x double> %27, ptr %26, align 64, !tbaa !26
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %30 = load i64, ptr %29, align 8, !tbaa !20
  %31 = icmp sgt i64 %30, 0
  br i1 %31, label %32, label %34

32:                                               ; preds = %3
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 6280
  br label %39

34:                                               ; preds = %39, %3
  %35 = phi ptr [ %28, %3 ], [ %45, %39 ]
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %37 = load i64, ptr %36, align 8, !tbaa !47
  %38 = icmp eq i64 %37, 0
  br i1 %38, label %208, label %49

39:                                               ; preds = %32, %39
  %40 = phi ptr [ %28, %32 ], [ %45, %39 ]
  %41 = phi i64 [ 0, %32 ], [ %46, %39 ]
  %42 = load ptr, ptr %33, align 8, !tbaa !28
  %43 = getelementptr inbounds nuw %struct.Piece, ptr %42, i64 %41, i32 41
  %44 = load <8 x double>, ptr %43, align 64, !tbaa !26
  %45 = getelementptr inbounds nuw i8, ptr %40, i64 64
  store <8 x double> %44, ptr %40, align 64, !tbaa !26
  %46 = add nuw nsw i64 %41, 1
  %47 = load i64, ptr %29, align 8, !tbaa !20
  %48 = icmp slt i64 %46, %47
  br i1 %48, label %39, label %34, !llvm.loop !203

49:                                               ; preds = %34
  %50 = getelementptr inbounds nuw i8, ptr %0, i64 3136
  %51 = load <8 x double>, ptr %50, align 64, !tbaa !26
  %52 = getelementptr inbounds nuw i8, ptr %35, i64 64
  store <8 x double> %51, ptr %35, align 64, !tbaa !26
  %53 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %54 = load <8 x double>, ptr %53, align 64, !tbaa !26
  %55 = getelementptr inbounds nuw i8, ptr %35, i64 128
  store <8 x double> %54, ptr %52, align 64, !tbaa !26
  %56 = load <8 x double>, ptr %24, align 64, !tbaa !26
  %57 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %58 = load <8 x double>, ptr %57, align 64, !tbaa !26
  %59 = fsub <8 x double> %56, %58
  %60 = fcmp ogt <8 x double> %59, zeroinitializer
  %61 = select <8 x i1> %60, <8 x double> %59, <8 x double> zeroinitializer
  store <8 x double> %61, ptr %55, align 64, !tbaa !26
  %62 = load i64, ptr %29, align 8, !tbaa !20
  %63 = icmp sgt i64 %62, 0
  br i1 %63, label %64, label %208

64:                                               ; preds = %49
  %65 = getelementptr inbounds nuw i8, ptr %35, i64 192
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 6280
  %67 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  br label %69

69:                                               ; preds = %64, %69
  %70 = phi ptr [ %65, %64 ], [ %204, %69 ]
  %71 = phi i64 [ 0, %64 ], [ %205, %69 ]
  %72 = load ptr, ptr %66, align 8, !tbaa !28
  %73 = getelementptr inbounds nuw %struct.Piece, ptr %72, i64 %71
  %74 = getelementptr inbounds nuw i8, ptr %73, i64 9552
  %75 = load ptr, ptr %74, align 16, !tbaa !50
  %76 = load i64, ptr %67, align 16, !tbaa !21
  %77 = getelementptr <8 x double>, ptr %75, i64 %76
  %78 = getelementptr i8, ptr %77, i64 -64
  %79 = load <8 x double>, ptr %78, align 64, !tbaa !26
  %80 = getelementptr inbounds nuw i8, ptr %73, i64 704
  %81 = load <8 x double>, ptr %80, align 64, !tbaa !26, !noalias !218
  %82 = getelementptr inbounds nuw i8, ptr %73, i64 768
  %83 = load <8 x double>, ptr %82, align 64, !tbaa !26, !noalias !218
  %84 = getelementptr inbounds nuw i8, ptr %73, i64 832
  %85 = load <8 x double>, ptr %84, align 64, !tbaa !26, !noalias !218
  %86 = getelementptr inbounds nuw i8, ptr %73, i64 896
  %87 = load <8 x double>, ptr %86, align 64, !tbaa !26, !noalias !218
  %88 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %79, <8 x double> %87, <8 x double> %85)
  %89 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %79, <8 x double> %88, <8 x double> %83)
  %90 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %79, <8 x double> %89, <8 x double> %81)
  %91 = fmul <8 x double> %79, %90
  %92 = getelementptr inbounds nuw i8, ptr %73, i64 192
  %93 = load <8 x double>, ptr %92, align 64, !tbaa !26, !noalias !218
  %94 = getelementptr inbounds nuw i8, ptr %73, i64 256
  %95 = load <8 x double>, ptr %94, align 64, !tbaa !26, !noalias !218
  %96 = getelementptr inbounds nuw i8, ptr %73, i64 320
  %97 = load <8 x double>, ptr %96, align 64, !tbaa !26, !noalias !218
  %98 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %91, <8 x double> %97, <8 x double> %95)
  %99 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %91, <8 x double> %98, <8 x double> %93)
  %100 = fdiv <8 x double> splat (double 1.000000e+00), %99
  %101 = fmul <8 x double> %97, %91
  %102 = fmul <8 x double> %101, splat (double 0x3FD5555555555555)
  %103 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %95, <8 x double> splat (double 5.000000e-01), <8 x double> %102)
  %104 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %91, <8 x double> %103, <8 x double> %93)
  %105 = fmul <8 x double> %91, %104
  %106 = fsub <8 x double> %79, %105
  %107 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %106, <8 x double> %100, <8 x double> %91)
  %108 = getelementptr inbounds nuw i8, ptr %73, i64 8192
  %109 = load <8 x double>, ptr %108, align 64, !tbaa !26
  %110 = getelementptr inbounds nuw i8, ptr %73, i64 6400
  %111 = load <8 x double>, ptr %110, align 64, !tbaa !26
  %112 = fsub <8 x double> %111, %107
  %113 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %109, <8 x double> %112, <8 x double> %107)
  %114 = getelementptr inbounds nuw i8, ptr %70, i64 64
  store <8 x double> %113, ptr %70, align 64, !tbaa !26
  %115 = getelementptr inbounds nuw i8, ptr %73, i64 7744
  %116 = load <8 x double>, ptr %115, align 64, !tbaa !26
  %117 = getelementptr inbounds nuw i8, ptr %70, i64 128
  store <8 x double> %116, ptr %114, align 64, !tbaa !26
  %118 = load <8 x double>, ptr %73, align 64, !tbaa !26
  %119 = getelementptr inbounds nuw i8, ptr %73, i64 4224
  %120 = load <8 x double>, ptr %119, align 64, !tbaa !26
  %121 = fsub <8 x double> %118, %120
  %122 = getelementptr inbounds nuw i8, ptr %70, i64 192
  store <8 x double> %121, ptr %117, align 64, !tbaa !26
  %123 = getelementptr inbounds nuw i8, ptr %73, i64 4544
  %124 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %125 = getelementptr inbounds nuw i8, ptr %70, i64 256
  store <8 x double> %124, ptr %122, align 64, !tbaa !26
  %126 = getelementptr inbounds nuw i8, ptr %73, i64 4480
  %127 = load <8 x double>, ptr %126, align 64, !tbaa !26
  %128 = getelementptr inbounds nuw i8, ptr %70, i64 320
  store <8 x double> %127, ptr %125, align 64, !tbaa !26
  %129 = getelementptr inbounds nuw i8, ptr %73, i64 4352
  %130 = load <8 x double>, ptr %129, align 64, !tbaa !26
  %131 = getelementptr inbounds nuw i8, ptr %70, i64 384
  store <8 x double> %130, ptr %128, align 64, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %73, i64 4608
  %133 = load <8 x double>, ptr %132, align 64, !tbaa !26
  %134 = getelementptr inbounds nuw i8, ptr %70, i64 448
  store <8 x double> %133, ptr %131, align 64, !tbaa !26
  %135 = getelementptr inbounds nuw i8, ptr %73, i64 9648
  %136 = load i64, ptr %68, align 8, !tbaa !22
  %137 = sitofp i64 %136 to double
  %138 = tail call double @llvm.fmuladd.f64(double %137, double 7.500000e-01, double -5.000000e-01)
  %139 = fcmp ogt double %138, 0.000000e+00
  %140 = select i1 %139, double %138, double 0.000000e+00
  %141 = fptosi double %140 to i64
  %142 = add nsw i64 %136, -2
  %143 = tail call i64 @llvm.smin.i64(i64 %142, i64 %141)
  %144 = sitofp i64 %143 to double
  %145 = fsub double %138, %144
  %146 = fsub double 1.000000e+00, %145
  %147 = insertelement <8 x double> poison, double %146, i64 0
  %148 = shufflevector <8 x double> %147, <8 x double> poison, <8 x i32> zeroinitializer
  %149 = load ptr, ptr %135, align 16, !tbaa !54
  %150 = getelementptr inbounds <8 x double>, ptr %149, i64 %143
  %151 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %152 = insertelement <8 x double> poison, double %145, i64 0
  %153 = shufflevector <8 x double> %152, <8 x double> poison, <8 x i32> zeroinitializer
  %154 = getelementptr i8, ptr %150, i64 64
  %155 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %156 = fmul <8 x double> %155, %153
  %157 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %148, <8 x double> %151, <8 x double> %156)
  store <8 x double> %157, ptr %134, align 64, !tbaa !26
  %158 = load i64, ptr %68, align 8, !tbaa !22
  %159 = sitofp i64 %158 to double
  %160 = tail call double @llvm.fmuladd.f64(double %159, double 5.000000e-01, double -5.000000e-01)
  %161 = fcmp ogt double %160, 0.000000e+00
  %162 = select i1 %161, double %160, double 0.000000e+00
  %163 = fptosi double %162 to i64
  %164 = add nsw i64 %158, -2
  %165 = tail call i64 @llvm.smin.i64(i64 %164, i64 %163)
  %166 = sitofp i64 %165 to double
  %167 = fsub double %160, %166
  %168 = fsub double 1.000000e+00, %167
  %169 = insertelement <8 x double> poison, double %168, i64 0
  %170 = shufflevector <8 x double> %169, <8 x double> poison, <8 x i32> zeroinitializer
  %171 = load ptr, ptr %135, align 16, !tbaa !54
  %172 = getelementptr inbounds <8 x double>, ptr %171, i64 %165
  %173 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %174 = insertelement <8 x double> poison, double %167, i64 0
  %175 = shufflevector <8 x double> %174, <8 x double> poison, <8 x i32> zeroinitializer
  %176 = getelementptr i8, ptr %172, i64 64
  %177 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %178 = fmul <8 x double> %177, %175
  %179 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %170, <8 x double> %173, <8 x double> %178)
  %180 = getelementptr inbounds nuw i8, ptr %70, i64 512
  store <8 x double> %179, ptr %180, align 64, !tbaa !26
  %181 = load i64, ptr %68, align 8, !tbaa !22
  %182 = sitofp i64 %181 to double
  %183 = tail call double @llvm.fmuladd.f64(double %182, double 2.500000e-01, double -5.000000e-01)
  %184 = fcmp ogt double %183, 0.000000e+00
  %185 = select i1 %184, double %183, double 0.000000e+00
  %186 = fptosi double %185 to i64
  %187 = add nsw i64 %181, -2
  %188 = tail call i64 @llvm.smin.i64(i64 %187, i64 %186)
  %189 = sitofp i64 %188 to double
  %190 = fsub double %183, %189
  %191 = fsub double 1.000000e+00, %190
  %192 = insertelement <8 x double> poison, double %191, i64 0
  %193 = shufflevector <8 x double> %192, <8 x double> poison, <8 x i32> zeroinitializer
  %194 = load ptr, ptr %135, align 16, !tbaa !54
  %195 = getelementptr inbounds <8 x double>, ptr %194, i64 %188
  %196 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %197 = insertelement <8 x double> poison, double %190, i64 0
  %198 = shufflevector <8 x double> %197, <8 x double> poison, <8 x i32> zeroinitializer
  %199 = getelementptr i8, ptr %195, i64 64
  %200 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %201 = fmul <8 x double> %200, %198
  %202 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %193, <8 x double> %196, <8 x double> %201)
  %203 = getelementptr inbounds nuw i8, ptr %70, i64 576
  store <8 x double> %202, ptr %203, align 64, !tbaa !26
  %204 = getelementptr inbounds nuw i8, ptr %70, i64 640
  %205 = add nuw nsw i64 %71, 1
  %206 = load i64, ptr %29, align 8, !tbaa !20
  %207 = icmp slt i64 %205, %206
  br i1 %207, label %69, label %208, !llvm.loop !207

208:                                              ; preds = %69, %49, %34
  %209 = getelementptr inbounds nuw i8, ptr %0, i64 5952
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %211 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %213 = load ptr, ptr %212, align 8
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %217 = getelementptr inbounds nuw i8, ptr %0, i64 6144
  %218 = load ptr, ptr %15, align 64
  %219 = icmp ult ptr %218, %28
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %221 = getelementptr inbounds nuw i8, ptr %35, i64 192
  br label %222

222:                                              ; preds = %208, %378
  %223 = phi i64 [ 0, %208 ], [ %379, %378 ]
  %224 = getelementptr inbounds nuw i64, ptr %4, i64 %223
  %225 = load i64, ptr %224, align 8, !tbaa !30
  %226 = icmp eq i64 %225, 0
  br i1 %226, label %378, label %227

227:                                              ; preds = %222
  %228 = getelementptr inbounds nuw [8 x i64], ptr %209, i64 0, i64 %223
  %229 = load i64, ptr %228, align 8, !tbaa !30
  %230 = load i64, ptr %210, align 8, !tbaa !208
  %231 = icmp eq i64 %229, %230
  br i1 %231, label %235, label %232

232:                                              ; preds = %227
  %233 = getelementptr inbounds nuw [8 x ptr], ptr %217, i64 0, i64 %223
  %234 = load ptr, ptr %233, align 8, !tbaa !209
  br label %249

235:                                              ; preds = %227
  %236 = getelementptr inbounds nuw [8 x i64], ptr %211, i64 0, i64 %223
  %237 = load i64, ptr %236, align 8, !tbaa !30
  %238 = load i64, ptr %214, align 8, !tbaa !44
  %239 = getelementptr inbounds i64, ptr %213, i64 %238
  store i64 %237, ptr %239, align 8, !tbaa !30
  %240 = load ptr, ptr %215, align 8, !tbaa !211
  %241 = load i64, ptr %214, align 8, !tbaa !44
  %242 = add nsw i64 %241, 1
  store i64 %242, ptr %214, align 8, !tbaa !44
  %243 = load i64, ptr %210, align 8, !tbaa !208
  %244 = mul nsw i64 %243, %241
  %245 = load i64, ptr %216, align 8, !tbaa !15
  %246 = mul nsw i64 %244, %245
  %247 = getelementptr inbounds double, ptr %240, i64 %246
  %248 = getelementptr inbounds nuw [8 x ptr], ptr %217, i64 0, i64 %223
  store ptr %247, ptr %248, align 8, !tbaa !209
  br label %249

249:                                              ; preds = %232, %235
  %250 = phi i64 [ %229, %232 ], [ 0, %235 ]
  %251 = phi ptr [ %234, %232 ], [ %247, %235 ]
  %252 = add nsw i64 %250, 1
  store i64 %252, ptr %228, align 8, !tbaa !30
  %253 = load i64, ptr %216, align 8, !tbaa !15
  %254 = mul nsw i64 %253, %250
  %255 = getelementptr inbounds double, ptr %251, i64 %254
  br i1 %219, label %321, label %256

256:                                              ; preds = %321, %249
  %257 = phi ptr [ %255, %249 ], [ %326, %321 ]
  %258 = load i64, ptr %220, align 64, !tbaa !16
  %259 = icmp sgt i64 %258, 0
  br i1 %259, label %260, label %308

260:                                              ; preds = %256
  %261 = trunc nuw nsw i64 %223 to i32
  %262 = and i64 %258, 3
  %263 = icmp ult i64 %258, 4
  br i1 %263, label %292, label %264

264:                                              ; preds = %260
  %265 = and i64 %258, 9223372036854775804
  br label %266

266:                                              ; preds = %266, %264
  %267 = phi i64 [ 0, %264 ], [ %289, %266 ]
  %268 = phi ptr [ %257, %264 ], [ %286, %266 ]
  %269 = phi i64 [ 0, %264 ], [ %290, %266 ]
  %270 = getelementptr inbounds nuw <8 x double>, ptr %28, i64 %267
  %271 = getelementptr i8, ptr %268, i64 8
  %272 = load <8 x double>, ptr %270, align 64, !tbaa !26
  %273 = extractelement <8 x double> %272, i32 %261
  store double %273, ptr %268, align 8, !tbaa !45
  %274 = or disjoint i64 %267, 1
  %275 = getelementptr inbounds nuw <8 x double>, ptr %28, i64 %274
  %276 = getelementptr i8, ptr %268, i64 16
  %277 = load <8 x double>, ptr %275, align 64, !tbaa !26
  %278 = extractelement <8 x double> %277, i32 %261
  store double %278, ptr %271, align 8, !tbaa !45
  %279 = or disjoint i64 %267, 2
  %280 = getelementptr inbounds nuw <8 x double>, ptr %28, i64 %279
  %281 = getelementptr i8, ptr %268, i64 24
  %282 = load <8 x double>, ptr %280, align 64, !tbaa !26
  %283 = extractelement <8 x double> %282, i32 %261
  store double %283, ptr %276, align 8, !tbaa !45
  %284 = or disjoint i64 %267, 3
  %285 = getelementptr inbounds nuw <8 x double>, ptr %28, i64 %284
  %286 = getelementptr i8, ptr %268, i64 32
  %287 = load <8 x double>, ptr %285, align 64, !tbaa !26
  %288 = extractelement <8 x double> %287, i32 %261
  store double %288, ptr %281, align 8, !tbaa !45
  %289 = add nuw nsw i64 %267, 4
  %290 = add i64 %269, 4
  %291 = icmp eq i64 %290, %265
  br i1 %291, label %292, label %266, !llvm.loop !212

292:                                              ; preds = %266, %260
  %293 = phi ptr [ poison, %260 ], [ %286, %266 ]
  %294 = phi i64 [ 0, %260 ], [ %289, %266 ]
  %295 = phi ptr [ %257, %260 ], [ %286, %266 ]
  %296 = icmp eq i64 %262, 0
  br i1 %296, label %308, label %297

297:                                              ; preds = %292, %297
  %298 = phi i64 [ %305, %297 ], [ %294, %292 ]
  %299 = phi ptr [ %302, %297 ], [ %295, %292 ]
  %300 = phi i64 [ %306, %297 ], [ 0, %292 ]
  %301 = getelementptr inbounds nuw <8 x double>, ptr %28, i64 %298
  %302 = getelementptr i8, ptr %299, i64 8
  %303 = load <8 x double>, ptr %301, align 64, !tbaa !26
  %304 = extractelement <8 x double> %303, i32 %261
  store double %304, ptr %299, align 8, !tbaa !45
  %305 = add nuw nsw i64 %298, 1
  %306 = add i64 %300, 1
  %307 = icmp eq i64 %306, %262
  br i1 %307, label %308, label %297, !llvm.loop !221

308:                                              ; preds = %292, %297, %256
  %309 = phi ptr [ %257, %256 ], [ %293, %292 ], [ %302, %297 ]
  %310 = load i64, ptr %36, align 8, !tbaa !47
  %311 = icmp eq i64 %310, 0
  br i1 %311, label %378, label %312

312:                                              ; preds = %308
  %313 = getelementptr inbounds nuw double, ptr %35, i64 %223
  %314 = load double, ptr %313, align 8, !tbaa !45
  %315 = getelementptr inbounds nuw i8, ptr %309, i64 8
  store double %314, ptr %309, align 8, !tbaa !45
  %316 = getelementptr inbounds nuw i8, ptr %313, i64 64
  %317 = load double, ptr %316, align 8, !tbaa !45
  %318 = getelementptr inbounds nuw i8, ptr %309, i64 16
  store double %317, ptr %315, align 8, !tbaa !45
  %319 = getelementptr inbounds nuw i8, ptr %313, i64 128
  %320 = load double, ptr %319, align 8, !tbaa !45
  store double %320, ptr %318, align 8, !tbaa !45
  br i1 %259, label %329, label %378

321:                                              ; preds = %249, %321
  %322 = phi ptr [ %327, %321 ], [ %218, %249 ]
  %323 = phi ptr [ %326, %321 ], [ %255, %249 ]
  %324 = getelementptr inbounds nuw double, ptr %322, i64 %223
  %325 = load double, ptr %324, align 8, !tbaa !45
  %326 = getelementptr inbounds nuw i8, ptr %323, i64 8
  store double %325, ptr %323, align 8, !tbaa !45
  %327 = getelementptr inbounds nuw i8, ptr %322, i64 64
  %328 = icmp ult ptr %327, %28
  br i1 %328, label %321, label %256, !llvm.loop !215

329:                                              ; preds = %312
  %330 = getelementptr inbounds nuw i8, ptr %309, i64 24
  %331 = trunc nuw nsw i64 %223 to i32
  br label %332

332:                                              ; preds = %329, %332
  %333 = phi i64 [ %376, %332 ], [ 0, %329 ]
  %334 = phi ptr [ %375, %332 ], [ %330, %329 ]
  %335 = mul nuw nsw i64 %333, 640
  %336 = getelementptr inbounds nuw i8, ptr %221, i64 %335
  %337 = load <8 x double>, ptr %336, align 64, !tbaa !26
  %338 = extractelement <8 x double> %337, i32 %331
  %339 = getelementptr inbounds nuw i8, ptr %334, i64 8
  store double %338, ptr %334, align 8, !tbaa !45
  %340 = getelementptr inbounds nuw i8, ptr %336, i64 64
  %341 = load <8 x double>, ptr %340, align 64, !tbaa !26
  %342 = extractelement <8 x double> %341, i32 %331
  %343 = getelementptr inbounds nuw i8, ptr %334, i64 16
  store double %342, ptr %339, align 8, !tbaa !45
  %344 = getelementptr inbounds nuw i8, ptr %336, i64 128
  %345 = load <8 x double>, ptr %344, align 64, !tbaa !26
  %346 = extractelement <8 x double> %345, i32 %331
  %347 = getelementptr inbounds nuw i8, ptr %334, i64 24
  store double %346, ptr %343, align 8, !tbaa !45
  %348 = getelementptr inbounds nuw i8, ptr %336, i64 192
  %349 = load <8 x double>, ptr %348, align 64, !tbaa !26
  %350 = extractelement <8 x double> %349, i32 %331
  %351 = getelementptr inbounds nuw i8, ptr %334, i64 32
  store double %350, ptr %347, align 8, !tbaa !45
  %352 = getelementptr inbounds nuw i8, ptr %336, i64 256
  %353 = load <8 x double>, ptr %352, align 64, !tbaa !26
  %354 = extractelement <8 x double> %353, i32 %331
  %355 = getelementptr inbounds nuw i8, ptr %334, i64 40
  store double %354, ptr %351, align 8, !tbaa !45
  %356 = getelementptr inbounds nuw i8, ptr %336, i64 320
  %357 = load <8 x double>, ptr %356, align 64, !tbaa !26
  %358 = extractelement <8 x double> %357, i32 %331
  %359 = getelementptr inbounds nuw i8, ptr %334, i64 48
  store double %358, ptr %355, align 8, !tbaa !45
  %360 = getelementptr inbounds nuw i8, ptr %336, i64 384
  %361 = load <8 x double>, ptr %360, align 64, !tbaa !26
  %362 = extractelement <8 x double> %361, i32 %331
  %363 = getelementptr inbounds nuw i8, ptr %334, i64 56
  store double %362, ptr %359, align 8, !tbaa !45
  %364 = getelementptr inbounds nuw i8, ptr %336, i64 448
  %365 = load <8 x double>, ptr %364, align 64, !tbaa !26
  %366 = extractelement <8 x double> %365, i32 %331
  %367 = getelementptr inbounds nuw i8, ptr %334, i64 64
  store double %366, ptr %363, align 8, !tbaa !45
  %368 = getelementptr inbounds nuw i8, ptr %336, i64 512
  %369 = load <8 x double>, ptr %368, align 64, !tbaa !26
  %370 = extractelement <8 x double> %369, i32 %331
  %371 = getelementptr inbounds nuw i8, ptr %334, i64 72
  store double %370, ptr %367, align 8, !tbaa !45
  %372 = getelementptr inbounds nuw i8, ptr %336, i64 576
  %373 = load <8 x double>, ptr %372, align 64, !tbaa !26
  %374 = extractelement <8 x double> %373, i32 %331
  %375 = getelementptr inbounds nuw i8, ptr %334, i64 80
  store double %374, ptr %371, align 8, !tbaa !45
  %376 = add nuw nsw i64 %333, 1
  %377 = icmp eq i64 %376, %258
  br i1 %377, label %378, label %332, !llvm.loop !212

378:                                              ; preds = %332, %312, %308, %222
  %379 = add nuw nsw i64 %223, 1
  %380 = icmp eq i64 %379, 8
  br i1 %380, label %381, label %222, !llvm.loop !216

381:                                              ; preds = %378
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 -2147483648, 8) %2, i64 noundef %3) unnamed_addr #2 {
  %5 = alloca <8 x double>, align 64
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %7 = sext i32 %2 to i64
  %8 = getelementptr inbounds [8 x i64], ptr %6, i64 0, i64 %7
  store i64 %3, ptr %8, align 8, !tbaa !30
  %9 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %10 = load i64, ptr %9, align 8, !tbaa !208
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 5952
  %12 = getelementptr inbounds [8 x i64], ptr %11, i64 0, i64 %7
  store i64 %10, ptr %12, align 8, !tbaa !30
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 6016
  %14 = shl nsw i32 %2, 1
  %15 = or disjoint i32 %14, 1
  %16 = sext i32 %15 to i64
  %17 = getelementptr inbounds [16 x i64], ptr %13, i64 0, i64 %16
  store i64 0, ptr %17, align 8, !tbaa !30
  %18 = sext i32 %14 to i64
  %19 = getelementptr inbounds [16 x i64], ptr %13, i64 0, i64 %18
  store i64 0, ptr %19, align 16, !tbaa !30
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 6208
  %21 = getelementptr inbounds [8 x double], ptr %20, i64 0, i64 %7
  store double 0.000000e+00, ptr %21, align 8, !tbaa !45
  %22 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %23 = load ptr, ptr %22, align 8, !tbaa !222
  %24 = mul i64 %3, 296
  %25 = getelementptr i8, ptr %23, i64 %24
  %26 = getelementptr double, ptr %0, i64 %7
  br label %42

27:                                               ; preds = %42
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %29 = load i64, ptr %28, align 8, !tbaa !20
  %30 = icmp sgt i64 %29, 0
  br i1 %30, label %31, label %62

31:                                               ; preds = %27
  %32 = getelementptr inbounds nuw i8, ptr %0, i64 6280
  %33 = load ptr, ptr %32, align 8, !tbaa !28
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  %36 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %40 = load ptr, ptr %39, align 8, !tbaa !223
  %41 = getelementptr inbounds double, ptr %5, i64 %7
  br label %161

42:                                               ; preds = %48, %4
  %43 = phi i64 [ 0, %4 ], [ %61, %48 ]
  %44 = getelementptr double, ptr %25, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !45
  %46 = getelementptr <8 x double>, ptr %26, i64 %43
  store double %45, ptr %46, align 8, !tbaa !45
  %47 = icmp eq i64 %43, 36
  br i1 %47, label %27, label %48, !llvm.loop !224

48:                                               ; preds = %42
  %49 = or disjoint i64 %43, 1
  %50 = getelementptr double, ptr %25, i64 %49
  %51 = load double, ptr %50, align 8, !tbaa !45
  %52 = getelementptr <8 x double>, ptr %26, i64 %49
  store double %51, ptr %52, align 8, !tbaa !45
  %53 = or disjoint i64 %43, 2
  %54 = getelementptr double, ptr %25, i64 %53
  %55 = load double, ptr %54, align 8, !tbaa !45
  %56 = getelementptr <8 x double>, ptr %26, i64 %53
  store double %55, ptr %56, align 8, !tbaa !45
  %57 = or disjoint i64 %43, 3
  %58 = getelementptr double, ptr %25, i64 %57
  %59 = load double, ptr %58, align 8, !tbaa !45
  %60 = getelementptr <8 x double>, ptr %26, i64 %57
  store double %59, ptr %60, align 8, !tbaa !45
  %61 = add nuw nsw i64 %43, 4
  br label %42

62:                                               ; preds = %604, %27
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %67 = getelementptr inbounds double, ptr %66, i64 %7
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %69 = getelementptr inbounds double, ptr %68, i64 %7
  %70 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %71 = getelementptr inbounds double, ptr %70, i64 %7
  %72 = getelementptr double, ptr %63, i64 %7
  %73 = getelementptr i8, ptr %72, i64 256
  store double 0.000000e+00, ptr %73, align 8, !tbaa !45
  %74 = getelementptr i8, ptr %72, i64 320
  store double 0.000000e+00, ptr %74, align 8, !tbaa !45
  %75 = load double, ptr %67, align 8, !tbaa !45
  store double %75, ptr %72, align 8, !tbaa !45
  %76 = load double, ptr %69, align 8, !tbaa !45
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 2688
  %78 = getelementptr inbounds double, ptr %77, i64 %7
  store double %76, ptr %78, align 8, !tbaa !45
  %79 = load double, ptr %71, align 8, !tbaa !45
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %81 = getelementptr inbounds double, ptr %80, i64 %7
  store double %79, ptr %81, align 8, !tbaa !45
  %82 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %83 = getelementptr inbounds double, ptr %82, i64 %7
  store double %79, ptr %83, align 8, !tbaa !45
  %84 = getelementptr double, ptr %64, i64 %7
  %85 = getelementptr i8, ptr %84, i64 256
  store double 0.000000e+00, ptr %85, align 8, !tbaa !45
  %86 = getelementptr i8, ptr %84, i64 320
  store double 0.000000e+00, ptr %86, align 8, !tbaa !45
  store double %75, ptr %84, align 8, !tbaa !45
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %88 = getelementptr inbounds double, ptr %87, i64 %7
  store double %76, ptr %88, align 8, !tbaa !45
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %90 = getelementptr inbounds double, ptr %89, i64 %7
  store double %79, ptr %90, align 8, !tbaa !45
  %91 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %92 = getelementptr inbounds double, ptr %91, i64 %7
  store double %79, ptr %92, align 8, !tbaa !45
  %93 = getelementptr double, ptr %65, i64 %7
  %94 = getelementptr i8, ptr %93, i64 256
  store double 0.000000e+00, ptr %94, align 8, !tbaa !45
  %95 = getelementptr i8, ptr %93, i64 320
  store double 0.000000e+00, ptr %95, align 8, !tbaa !45
  store double %75, ptr %93, align 8, !tbaa !45
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 3456
  %97 = getelementptr inbounds double, ptr %96, i64 %7
  store double %76, ptr %97, align 8, !tbaa !45
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %99 = getelementptr inbounds double, ptr %98, i64 %7
  store double %79, ptr %99, align 8, !tbaa !45
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %101 = getelementptr inbounds double, ptr %100, i64 %7
  store double %79, ptr %101, align 8, !tbaa !45
  %102 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %103 = getelementptr inbounds double, ptr %102, i64 %7
  %104 = load double, ptr %103, align 8, !tbaa !45
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %106 = getelementptr inbounds double, ptr %105, i64 %7
  store double %104, ptr %106, align 8, !tbaa !45
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %108 = getelementptr inbounds double, ptr %107, i64 %7
  store double %104, ptr %108, align 8, !tbaa !45
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %110 = getelementptr inbounds double, ptr %109, i64 %7
  store double 1.000000e+09, ptr %110, align 8, !tbaa !45
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %112 = getelementptr inbounds double, ptr %111, i64 %7
  store double 0.000000e+00, ptr %112, align 8, !tbaa !45
  %113 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %114 = getelementptr inbounds double, ptr %113, i64 %7
  %115 = load double, ptr %114, align 8, !tbaa !45
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %117 = getelementptr inbounds double, ptr %116, i64 %7
  store double %115, ptr %117, align 8, !tbaa !45
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %119 = getelementptr inbounds double, ptr %118, i64 %7
  store double %115, ptr %119, align 8, !tbaa !45
  %120 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %121 = getelementptr inbounds double, ptr %120, i64 %7
  %122 = load double, ptr %121, align 8, !tbaa !45
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 5120
  %124 = getelementptr inbounds double, ptr %123, i64 %7
  store double %122, ptr %124, align 8, !tbaa !45
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 4480
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 4544
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 4864
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 4928
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 5184
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 5248
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %136 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %137 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %138 = getelementptr inbounds double, ptr %125, i64 %7
  store double 0.000000e+00, ptr %138, align 8, !tbaa !45
  %139 = getelementptr inbounds double, ptr %126, i64 %7
  store double 0.000000e+00, ptr %139, align 8, !tbaa !45
  %140 = getelementptr inbounds double, ptr %127, i64 %7
  store double 0.000000e+00, ptr %140, align 8, !tbaa !45
  %141 = getelementptr inbounds double, ptr %128, i64 %7
  store double 0.000000e+00, ptr %141, align 8, !tbaa !45
  %142 = getelementptr inbounds double, ptr %129, i64 %7
  store double 0.000000e+00, ptr %142, align 8, !tbaa !45
  %143 = getelementptr inbounds double, ptr %130, i64 %7
  store double 0.000000e+00, ptr %143, align 8, !tbaa !45
  %144 = getelementptr inbounds double, ptr %131, i64 %7
  store double 0.000000e+00, ptr %144, align 8, !tbaa !45
  %145 = getelementptr inbounds double, ptr %132, i64 %7
  store double 0.000000e+00, ptr %145, align 8, !tbaa !45
  %146 = getelementptr inbounds double, ptr %133, i64 %7
  store double 0.000000e+00, ptr %146, align 8, !tbaa !45
  %147 = getelementptr inbounds double, ptr %134, i64 %7
  store double 0.000000e+00, ptr %147, align 8, !tbaa !45
  %148 = getelementptr inbounds double, ptr %135, i64 %7
  store double 0.000000e+00, ptr %148, align 8, !tbaa !45
  %149 = getelementptr inbounds double, ptr %136, i64 %7
  store double 0.000000e+00, ptr %149, align 8, !tbaa !45
  %150 = getelementptr inbounds double, ptr %137, i64 %7
  store double 0.000000e+00, ptr %150, align 8, !tbaa !45
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %152 = getelementptr inbounds i64, ptr %151, i64 %7
  store i64 0, ptr %152, align 8, !tbaa !30
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %154 = getelementptr inbounds i64, ptr %153, i64 %7
  store i64 0, ptr %154, align 8, !tbaa !30
  %155 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %156 = getelementptr inbounds i64, ptr %155, i64 %7
  store i64 -1, ptr %156, align 8, !tbaa !30
  %157 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %158 = getelementptr inbounds i64, ptr %157, i64 %7
  store i64 -1, ptr %158, align 8, !tbaa !30
  %159 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %160 = getelementptr inbounds i64, ptr %159, i64 %7
  store i64 -1, ptr %160, align 8, !tbaa !30
  ret void

161:                                              ; preds = %31, %604
  %162 = phi i64 [ 0, %31 ], [ %605, %604 ]
  %163 = getelementptr inbounds nuw %struct.Piece, ptr %33, i64 %162
  %164 = load i64, ptr %34, align 16, !tbaa !21
  %165 = load i64, ptr %35, align 8, !tbaa !22
  %166 = load i64, ptr %36, align 64, !tbaa !16
  %167 = mul nsw i64 %166, %3
  %168 = add nsw i64 %167, %162
  %169 = getelementptr inbounds nuw i8, ptr %163, i64 9472
  %170 = load i64, ptr %169, align 64, !tbaa !31
  %171 = load ptr, ptr %37, align 8, !tbaa !225
  %172 = mul i64 %168, 416
  %173 = getelementptr i8, ptr %171, i64 %172
  %174 = getelementptr double, ptr %163, i64 %7
  br label %204

175:                                              ; preds = %204
  %176 = icmp eq i64 %170, 0
  %177 = load ptr, ptr %38, align 8, !tbaa !226
  %178 = getelementptr inbounds i64, ptr %40, i64 %168
  %179 = load i64, ptr %178, align 8, !tbaa !30
  %180 = mul nsw i64 %164, 3
  %181 = add nsw i64 %164, 1
  %182 = select i1 %176, i64 0, i64 2
  %183 = shl i64 %181, %182
  %184 = add nsw i64 %183, %180
  %185 = mul nsw i64 %179, %184
  %186 = getelementptr inbounds double, ptr %177, i64 %185
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #6
  %187 = getelementptr inbounds nuw i8, ptr %163, i64 1344
  %188 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %189 = getelementptr inbounds nuw i8, ptr %163, i64 192
  %190 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %191 = getelementptr inbounds nuw i8, ptr %163, i64 256
  %192 = load <8 x double>, ptr %191, align 64, !tbaa !26
  %193 = getelementptr inbounds nuw i8, ptr %163, i64 320
  %194 = load <8 x double>, ptr %193, align 64, !tbaa !26
  %195 = fmul <8 x double> %188, %194
  %196 = fmul <8 x double> %195, splat (double 0x3FD5555555555555)
  %197 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %192, <8 x double> splat (double 5.000000e-01), <8 x double> %196)
  %198 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %188, <8 x double> %197, <8 x double> %190)
  %199 = fmul <8 x double> %188, %198
  store <8 x double> %199, ptr %5, align 64, !tbaa !26
  %200 = getelementptr inbounds double, ptr %187, i64 %7
  %201 = load double, ptr %200, align 8, !tbaa !45
  %202 = load double, ptr %41, align 8, !tbaa !45
  %203 = load double, ptr %174, align 8, !tbaa !45
  br i1 %176, label %223, label %228

204:                                              ; preds = %204, %161
  %205 = phi i64 [ 0, %161 ], [ %221, %204 ]
  %206 = getelementptr double, ptr %173, i64 %205
  %207 = load double, ptr %206, align 8, !tbaa !45
  %208 = getelementptr <8 x double>, ptr %174, i64 %205
  store double %207, ptr %208, align 8, !tbaa !45
  %209 = or disjoint i64 %205, 1
  %210 = getelementptr double, ptr %173, i64 %209
  %211 = load double, ptr %210, align 8, !tbaa !45
  %212 = getelementptr <8 x double>, ptr %174, i64 %209
  store double %211, ptr %212, align 8, !tbaa !45
  %213 = or disjoint i64 %205, 2
  %214 = getelementptr double, ptr %173, i64 %213
  %215 = load double, ptr %214, align 8, !tbaa !45
  %216 = getelementptr <8 x double>, ptr %174, i64 %213
  store double %215, ptr %216, align 8, !tbaa !45
  %217 = or disjoint i64 %205, 3
  %218 = getelementptr double, ptr %173, i64 %217
  %219 = load double, ptr %218, align 8, !tbaa !45
  %220 = getelementptr <8 x double>, ptr %174, i64 %217
  store double %219, ptr %220, align 8, !tbaa !45
  %221 = add nuw nsw i64 %205, 4
  %222 = icmp eq i64 %221, 52
  br i1 %222, label %175, label %204, !llvm.loop !227

223:                                              ; preds = %175
  %224 = getelementptr inbounds nuw i8, ptr %163, i64 9480
  %225 = getelementptr inbounds [8 x ptr], ptr %224, i64 0, i64 %7
  %226 = load ptr, ptr %225, align 8, !tbaa !209
  %227 = icmp ne ptr %226, %186
  br label %228

228:                                              ; preds = %223, %175
  %229 = phi i1 [ true, %175 ], [ %227, %223 ]
  %230 = getelementptr inbounds nuw i8, ptr %163, i64 9480
  %231 = getelementptr inbounds [8 x ptr], ptr %230, i64 0, i64 %7
  store ptr %186, ptr %231, align 8, !tbaa !209
  %232 = icmp sgt i64 %164, 0
  %233 = select i1 %232, i1 %229, i1 false
  br i1 %233, label %234, label %264

234:                                              ; preds = %228
  %235 = getelementptr inbounds nuw i8, ptr %163, i64 9608
  %236 = load ptr, ptr %235, align 8, !tbaa !78
  %237 = getelementptr double, ptr %236, i64 %7
  %238 = getelementptr double, ptr %186, i64 %164
  %239 = getelementptr inbounds nuw i8, ptr %163, i64 9616
  %240 = load ptr, ptr %239, align 16, !tbaa !51
  %241 = getelementptr double, ptr %240, i64 %7
  %242 = shl i64 %164, 4
  %243 = getelementptr i8, ptr %186, i64 %242
  %244 = getelementptr inbounds nuw i8, ptr %163, i64 9624
  %245 = load ptr, ptr %244, align 8, !tbaa !191
  %246 = getelementptr double, ptr %245, i64 %7
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
  %256 = load double, ptr %255, align 8, !tbaa !45
  %257 = getelementptr <8 x double>, ptr %237, i64 %252
  store double %256, ptr %257, align 8, !tbaa !45
  %258 = getelementptr double, ptr %238, i64 %252
  %259 = load double, ptr %258, align 8, !tbaa !45
  %260 = getelementptr <8 x double>, ptr %241, i64 %252
  store double %259, ptr %260, align 8, !tbaa !45
  %261 = getelementptr double, ptr %243, i64 %252
  %262 = load double, ptr %261, align 8, !tbaa !45
  %263 = getelementptr <8 x double>, ptr %246, i64 %252
  store double %262, ptr %263, align 8, !tbaa !45
  br label %264

264:                                              ; preds = %254, %251, %228
  %265 = icmp sgt i64 %183, 0
  %266 = select i1 %265, i1 %229, i1 false
  br i1 %266, label %267, label %313

267:                                              ; preds = %264
  %268 = getelementptr double, ptr %186, i64 %180
  %269 = getelementptr inbounds nuw i8, ptr %163, i64 9632
  %270 = load ptr, ptr %269, align 32, !tbaa !37
  %271 = getelementptr double, ptr %270, i64 %7
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
  %280 = load double, ptr %279, align 8, !tbaa !45
  %281 = getelementptr <8 x double>, ptr %237, i64 %277
  store double %280, ptr %281, align 8, !tbaa !45
  %282 = getelementptr double, ptr %238, i64 %277
  %283 = load double, ptr %282, align 8, !tbaa !45
  %284 = getelementptr <8 x double>, ptr %241, i64 %277
  store double %283, ptr %284, align 8, !tbaa !45
  %285 = getelementptr double, ptr %243, i64 %277
  %286 = load double, ptr %285, align 8, !tbaa !45
  %287 = getelementptr <8 x double>, ptr %246, i64 %277
  store double %286, ptr %287, align 8, !tbaa !45
  %288 = or disjoint i64 %277, 1
  %289 = getelementptr inbounds nuw double, ptr %186, i64 %288
  %290 = load double, ptr %289, align 8, !tbaa !45
  %291 = getelementptr <8 x double>, ptr %237, i64 %288
  store double %290, ptr %291, align 8, !tbaa !45
  %292 = getelementptr double, ptr %238, i64 %288
  %293 = load double, ptr %292, align 8, !tbaa !45
  %294 = getelementptr <8 x double>, ptr %241, i64 %288
  store double %293, ptr %294, align 8, !tbaa !45
  %295 = getelementptr double, ptr %243, i64 %288
  %296 = load double, ptr %295, align 8, !tbaa !45
  %297 = getelementptr <8 x double>, ptr %246, i64 %288
  store double %296, ptr %297, align 8, !tbaa !45
  %298 = add nuw nsw i64 %277, 2
  %299 = add i64 %278, 2
  %300 = icmp eq i64 %299, %250
  br i1 %300, label %251, label %276, !llvm.loop !228

301:                                              ; preds = %322, %267
  %302 = phi i64 [ 0, %267 ], [ %340, %322 ]
  %303 = icmp eq i64 %272, 0
  br i1 %303, label %313, label %304

304:                                              ; preds = %301, %304
  %305 = phi i64 [ %310, %304 ], [ %302, %301 ]
  %306 = phi i64 [ %311, %304 ], [ 0, %301 ]
  %307 = getelementptr double, ptr %268, i64 %305
  %308 = load double, ptr %307, align 8, !tbaa !45
  %309 = getelementptr <8 x double>, ptr %271, i64 %305
  store double %308, ptr %309, align 8, !tbaa !45
  %310 = add nuw nsw i64 %305, 1
  %311 = add i64 %306, 1
  %312 = icmp eq i64 %311, %272
  br i1 %312, label %313, label %304, !llvm.loop !229

313:                                              ; preds = %301, %304, %264
  %314 = icmp ne i64 %170, 0
  %315 = icmp sgt i64 %164, -1
  %316 = select i1 %314, i1 %315, i1 false
  br i1 %316, label %317, label %343

317:                                              ; preds = %313
  %318 = fdiv double 1.000000e+00, %203
  %319 = getelementptr inbounds nuw i8, ptr %163, i64 9632
  %320 = load ptr, ptr %319, align 32, !tbaa !37
  %321 = getelementptr double, ptr %320, i64 %7
  br label %483

322:                                              ; preds = %322, %274
  %323 = phi i64 [ 0, %274 ], [ %340, %322 ]
  %324 = phi i64 [ 0, %274 ], [ %341, %322 ]
  %325 = getelementptr double, ptr %268, i64 %323
  %326 = load double, ptr %325, align 8, !tbaa !45
  %327 = getelementptr <8 x double>, ptr %271, i64 %323
  store double %326, ptr %327, align 8, !tbaa !45
  %328 = or disjoint i64 %323, 1
  %329 = getelementptr double, ptr %268, i64 %328
  %330 = load double, ptr %329, align 8, !tbaa !45
  %331 = getelementptr <8 x double>, ptr %271, i64 %328
  store double %330, ptr %331, align 8, !tbaa !45
  %332 = or disjoint i64 %323, 2
  %333 = getelementptr double, ptr %268, i64 %332
  %334 = load double, ptr %333, align 8, !tbaa !45
  %335 = getelementptr <8 x double>, ptr %271, i64 %332
  store double %334, ptr %335, align 8, !tbaa !45
  %336 = or disjoint i64 %323, 3
  %337 = getelementptr double, ptr %268, i64 %336
  %338 = load double, ptr %337, align 8, !tbaa !45
  %339 = getelementptr <8 x double>, ptr %271, i64 %336
  store double %338, ptr %339, align 8, !tbaa !45
  %340 = add nuw nsw i64 %323, 4
  %341 = add i64 %324, 4
  %342 = icmp eq i64 %341, %275
  br i1 %342, label %301, label %322, !llvm.loop !230

343:                                              ; preds = %483, %313
  %344 = getelementptr inbounds nuw i8, ptr %163, i64 2944
  %345 = getelementptr inbounds double, ptr %344, i64 %7
  %346 = load double, ptr %345, align 8, !tbaa !45
  %347 = getelementptr inbounds nuw i8, ptr %163, i64 3008
  %348 = getelementptr inbounds double, ptr %347, i64 %7
  %349 = load double, ptr %348, align 8, !tbaa !45
  %350 = getelementptr inbounds nuw i8, ptr %163, i64 3072
  %351 = getelementptr inbounds double, ptr %350, i64 %7
  %352 = load double, ptr %351, align 8, !tbaa !45
  %353 = getelementptr inbounds nuw i8, ptr %163, i64 3136
  %354 = getelementptr inbounds double, ptr %353, i64 %7
  %355 = load double, ptr %354, align 8, !tbaa !45
  %356 = tail call double @llvm.fmuladd.f64(double %203, double %355, double %352)
  %357 = tail call double @llvm.fmuladd.f64(double %203, double %356, double %349)
  %358 = tail call double @llvm.fmuladd.f64(double %203, double %357, double %346)
  %359 = getelementptr inbounds nuw i8, ptr %163, i64 1216
  %360 = getelementptr inbounds double, ptr %359, i64 %7
  %361 = load double, ptr %360, align 8, !tbaa !45
  %362 = getelementptr inbounds nuw i8, ptr %163, i64 1792
  %363 = getelementptr inbounds double, ptr %362, i64 %7
  %364 = load double, ptr %363, align 8, !tbaa !45
  %365 = getelementptr inbounds nuw i8, ptr %163, i64 1920
  %366 = getelementptr inbounds double, ptr %365, i64 %7
  %367 = load double, ptr %366, align 8, !tbaa !45
  %368 = fsub double %364, %367
  %369 = fmul double %361, %368
  %370 = getelementptr inbounds nuw i8, ptr %163, i64 3328
  %371 = getelementptr inbounds nuw i8, ptr %163, i64 4224
  %372 = getelementptr inbounds nuw i8, ptr %163, i64 5120
  %373 = getelementptr inbounds nuw i8, ptr %163, i64 1280
  %374 = getelementptr inbounds double, ptr %373, i64 %7
  %375 = getelementptr inbounds nuw i8, ptr %163, i64 1408
  %376 = getelementptr inbounds double, ptr %375, i64 %7
  %377 = getelementptr double, ptr %370, i64 %7
  %378 = getelementptr i8, ptr %377, i64 320
  store double 0.000000e+00, ptr %378, align 8, !tbaa !45
  %379 = getelementptr i8, ptr %377, i64 384
  store double 0.000000e+00, ptr %379, align 8, !tbaa !45
  %380 = getelementptr i8, ptr %377, i64 448
  store double 0.000000e+00, ptr %380, align 8, !tbaa !45
  %381 = getelementptr i8, ptr %377, i64 512
  store double 0.000000e+00, ptr %381, align 8, !tbaa !45
  %382 = getelementptr i8, ptr %377, i64 576
  store double 0.000000e+00, ptr %382, align 8, !tbaa !45
  %383 = getelementptr i8, ptr %377, i64 704
  store double 0.000000e+00, ptr %383, align 8, !tbaa !45
  %384 = getelementptr i8, ptr %377, i64 768
  store double 0.000000e+00, ptr %384, align 8, !tbaa !45
  store double %203, ptr %377, align 8, !tbaa !45
  %385 = getelementptr inbounds nuw i8, ptr %163, i64 3392
  %386 = getelementptr inbounds double, ptr %385, i64 %7
  store double %364, ptr %386, align 8, !tbaa !45
  %387 = load double, ptr %374, align 8, !tbaa !45
  %388 = getelementptr inbounds nuw i8, ptr %163, i64 3456
  %389 = getelementptr inbounds double, ptr %388, i64 %7
  store double %387, ptr %389, align 8, !tbaa !45
  %390 = getelementptr inbounds nuw i8, ptr %163, i64 3520
  %391 = getelementptr inbounds double, ptr %390, i64 %7
  store double %369, ptr %391, align 8, !tbaa !45
  %392 = getelementptr inbounds nuw i8, ptr %163, i64 3968
  %393 = getelementptr inbounds double, ptr %392, i64 %7
  store double %201, ptr %393, align 8, !tbaa !45
  %394 = load double, ptr %376, align 8, !tbaa !45
  %395 = getelementptr inbounds nuw i8, ptr %163, i64 3584
  %396 = getelementptr inbounds double, ptr %395, i64 %7
  store double %394, ptr %396, align 8, !tbaa !45
  %397 = getelementptr inbounds nuw i8, ptr %163, i64 4160
  %398 = getelementptr inbounds double, ptr %397, i64 %7
  store double %358, ptr %398, align 8, !tbaa !45
  %399 = getelementptr double, ptr %371, i64 %7
  %400 = getelementptr i8, ptr %399, i64 320
  store double 0.000000e+00, ptr %400, align 8, !tbaa !45
  %401 = getelementptr i8, ptr %399, i64 384
  store double 0.000000e+00, ptr %401, align 8, !tbaa !45
  %402 = getelementptr i8, ptr %399, i64 448
  store double 0.000000e+00, ptr %402, align 8, !tbaa !45
  %403 = getelementptr i8, ptr %399, i64 512
  store double 0.000000e+00, ptr %403, align 8, !tbaa !45
  %404 = getelementptr i8, ptr %399, i64 576
  store double 0.000000e+00, ptr %404, align 8, !tbaa !45
  %405 = getelementptr i8, ptr %399, i64 704
  store double 0.000000e+00, ptr %405, align 8, !tbaa !45
  %406 = getelementptr i8, ptr %399, i64 768
  store double 0.000000e+00, ptr %406, align 8, !tbaa !45
  store double %203, ptr %399, align 8, !tbaa !45
  %407 = getelementptr inbounds nuw i8, ptr %163, i64 4288
  %408 = getelementptr inbounds double, ptr %407, i64 %7
  store double %364, ptr %408, align 8, !tbaa !45
  %409 = getelementptr inbounds nuw i8, ptr %163, i64 4352
  %410 = getelementptr inbounds double, ptr %409, i64 %7
  store double %387, ptr %410, align 8, !tbaa !45
  %411 = getelementptr inbounds nuw i8, ptr %163, i64 4416
  %412 = getelementptr inbounds double, ptr %411, i64 %7
  store double %369, ptr %412, align 8, !tbaa !45
  %413 = getelementptr inbounds nuw i8, ptr %163, i64 4864
  %414 = getelementptr inbounds double, ptr %413, i64 %7
  store double %201, ptr %414, align 8, !tbaa !45
  %415 = getelementptr inbounds nuw i8, ptr %163, i64 4480
  %416 = getelementptr inbounds double, ptr %415, i64 %7
  store double %394, ptr %416, align 8, !tbaa !45
  %417 = getelementptr inbounds nuw i8, ptr %163, i64 5056
  %418 = getelementptr inbounds double, ptr %417, i64 %7
  store double %358, ptr %418, align 8, !tbaa !45
  %419 = getelementptr double, ptr %372, i64 %7
  %420 = getelementptr i8, ptr %419, i64 320
  store double 0.000000e+00, ptr %420, align 8, !tbaa !45
  %421 = getelementptr i8, ptr %419, i64 384
  store double 0.000000e+00, ptr %421, align 8, !tbaa !45
  %422 = getelementptr i8, ptr %419, i64 448
  store double 0.000000e+00, ptr %422, align 8, !tbaa !45
  %423 = getelementptr i8, ptr %419, i64 512
  store double 0.000000e+00, ptr %423, align 8, !tbaa !45
  %424 = getelementptr i8, ptr %419, i64 576
  store double 0.000000e+00, ptr %424, align 8, !tbaa !45
  %425 = getelementptr i8, ptr %419, i64 704
  store double 0.000000e+00, ptr %425, align 8, !tbaa !45
  %426 = getelementptr i8, ptr %419, i64 768
  store double 0.000000e+00, ptr %426, align 8, !tbaa !45
  store double %203, ptr %419, align 8, !tbaa !45
  %427 = load double, ptr %363, align 8, !tbaa !45
  %428 = getelementptr inbounds nuw i8, ptr %163, i64 5184
  %429 = getelementptr inbounds double, ptr %428, i64 %7
  store double %427, ptr %429, align 8, !tbaa !45
  %430 = getelementptr inbounds nuw i8, ptr %163, i64 5248
  %431 = getelementptr inbounds double, ptr %430, i64 %7
  store double %387, ptr %431, align 8, !tbaa !45
  %432 = getelementptr inbounds nuw i8, ptr %163, i64 5312
  %433 = getelementptr inbounds double, ptr %432, i64 %7
  store double %369, ptr %433, align 8, !tbaa !45
  %434 = getelementptr inbounds nuw i8, ptr %163, i64 5760
  %435 = getelementptr inbounds double, ptr %434, i64 %7
  store double %201, ptr %435, align 8, !tbaa !45
  %436 = getelementptr inbounds nuw i8, ptr %163, i64 5376
  %437 = getelementptr inbounds double, ptr %436, i64 %7
  store double %394, ptr %437, align 8, !tbaa !45
  %438 = getelementptr inbounds nuw i8, ptr %163, i64 5952
  %439 = getelementptr inbounds double, ptr %438, i64 %7
  store double %358, ptr %439, align 8, !tbaa !45
  %440 = load double, ptr %374, align 8, !tbaa !45
  %441 = fadd double %369, %440
  %442 = getelementptr inbounds nuw i8, ptr %163, i64 1984
  %443 = getelementptr inbounds double, ptr %442, i64 %7
  store double %441, ptr %443, align 8, !tbaa !45
  %444 = fcmp ogt double %440, 0.000000e+00
  %445 = fdiv double 1.000000e+00, %440
  %446 = select i1 %444, double %445, double 0.000000e+00
  %447 = getelementptr inbounds nuw i8, ptr %163, i64 8640
  %448 = getelementptr inbounds double, ptr %447, i64 %7
  store double %446, ptr %448, align 8, !tbaa !45
  %449 = getelementptr inbounds nuw i8, ptr %163, i64 1088
  %450 = getelementptr inbounds double, ptr %449, i64 %7
  %451 = load double, ptr %450, align 8, !tbaa !45
  %452 = fdiv double 1.000000e+00, %451
  %453 = getelementptr inbounds nuw i8, ptr %163, i64 8704
  %454 = getelementptr inbounds double, ptr %453, i64 %7
  store double %452, ptr %454, align 8, !tbaa !45
  %455 = load double, ptr %360, align 8, !tbaa !45
  %456 = fdiv double 1.000000e+00, %455
  %457 = getelementptr inbounds nuw i8, ptr %163, i64 8768
  %458 = getelementptr inbounds double, ptr %457, i64 %7
  store double %456, ptr %458, align 8, !tbaa !45
  %459 = getelementptr inbounds nuw i8, ptr %163, i64 6400
  %460 = getelementptr inbounds nuw i8, ptr %163, i64 7744
  %461 = getelementptr inbounds nuw i8, ptr %163, i64 7808
  %462 = getelementptr inbounds nuw i8, ptr %163, i64 8512
  %463 = getelementptr inbounds double, ptr %459, i64 %7
  store double %201, ptr %463, align 8, !tbaa !45
  %464 = getelementptr inbounds double, ptr %460, i64 %7
  store double %201, ptr %464, align 8, !tbaa !45
  %465 = getelementptr inbounds double, ptr %461, i64 %7
  store double %201, ptr %465, align 8, !tbaa !45
  %466 = getelementptr inbounds double, ptr %462, i64 %7
  store double %201, ptr %466, align 8, !tbaa !45
  %467 = getelementptr inbounds nuw i8, ptr %163, i64 6464
  %468 = getelementptr inbounds nuw i8, ptr %163, i64 6528
  %469 = getelementptr inbounds nuw i8, ptr %163, i64 8576
  %470 = getelementptr inbounds nuw i8, ptr %163, i64 8448
  %471 = getelementptr inbounds nuw i8, ptr %163, i64 8192
  %472 = getelementptr inbounds double, ptr %467, i64 %7
  store double 0.000000e+00, ptr %472, align 8, !tbaa !45
  %473 = getelementptr inbounds double, ptr %468, i64 %7
  store double 0.000000e+00, ptr %473, align 8, !tbaa !45
  %474 = getelementptr inbounds double, ptr %469, i64 %7
  store double 0.000000e+00, ptr %474, align 8, !tbaa !45
  %475 = getelementptr inbounds double, ptr %470, i64 %7
  store double 0.000000e+00, ptr %475, align 8, !tbaa !45
  %476 = getelementptr inbounds double, ptr %471, i64 %7
  store double 0.000000e+00, ptr %476, align 8, !tbaa !45
  %477 = getelementptr inbounds nuw i8, ptr %163, i64 9280
  %478 = getelementptr inbounds i64, ptr %477, i64 %7
  store i64 0, ptr %478, align 8, !tbaa !30
  %479 = getelementptr inbounds nuw i8, ptr %163, i64 9344
  %480 = getelementptr inbounds i64, ptr %479, i64 %7
  store i64 -1, ptr %480, align 8, !tbaa !30
  %481 = getelementptr inbounds nuw i8, ptr %163, i64 9408
  %482 = getelementptr inbounds i64, ptr %481, i64 %7
  store i64 0, ptr %482, align 8, !tbaa !30
  br i1 %232, label %505, label %524

483:                                              ; preds = %317, %483
  %484 = phi i64 [ 0, %317 ], [ %503, %483 ]
  %485 = icmp slt i64 %484, %170
  %486 = select i1 %485, double %318, double 1.000000e+00
  %487 = shl i64 %484, 8
  %488 = getelementptr i8, ptr %321, i64 %487
  %489 = load double, ptr %488, align 8, !tbaa !45
  %490 = fmul double %486, %489
  store double %490, ptr %488, align 8, !tbaa !45
  %491 = fdiv double %486, %203
  %492 = getelementptr i8, ptr %488, i64 64
  %493 = load double, ptr %492, align 8, !tbaa !45
  %494 = fmul double %491, %493
  store double %494, ptr %492, align 8, !tbaa !45
  %495 = fdiv double %491, %203
  %496 = getelementptr i8, ptr %488, i64 128
  %497 = load double, ptr %496, align 8, !tbaa !45
  %498 = fmul double %495, %497
  store double %498, ptr %496, align 8, !tbaa !45
  %499 = fdiv double %495, %203
  %500 = getelementptr i8, ptr %488, i64 192
  %501 = load double, ptr %500, align 8, !tbaa !45
  %502 = fmul double %499, %501
  store double %502, ptr %500, align 8, !tbaa !45
  %503 = add nuw nsw i64 %484, 1
  %504 = icmp slt i64 %484, %164
  br i1 %504, label %483, label %343, !llvm.loop !231

505:                                              ; preds = %343
  %506 = load i64, ptr %169, align 64, !tbaa !31
  %507 = getelementptr inbounds nuw i8, ptr %163, i64 1024
  %508 = getelementptr inbounds double, ptr %507, i64 %7
  %509 = getelementptr inbounds nuw i8, ptr %163, i64 9560
  %510 = load ptr, ptr %509, align 8, !tbaa !67
  %511 = getelementptr double, ptr %510, i64 %7
  %512 = getelementptr inbounds nuw i8, ptr %163, i64 9552
  %513 = load ptr, ptr %512, align 16, !tbaa !50
  %514 = getelementptr double, ptr %513, i64 %7
  %515 = getelementptr inbounds nuw i8, ptr %163, i64 9544
  %516 = load ptr, ptr %515, align 8, !tbaa !88
  %517 = getelementptr double, ptr %516, i64 %7
  %518 = getelementptr inbounds nuw i8, ptr %163, i64 9576
  %519 = load ptr, ptr %518, align 8, !tbaa !52
  %520 = getelementptr double, ptr %519, i64 %7
  %521 = getelementptr inbounds nuw i8, ptr %163, i64 9568
  %522 = load ptr, ptr %521, align 32, !tbaa !68
  %523 = getelementptr double, ptr %522, i64 %7
  br label %537

524:                                              ; preds = %543, %343
  %525 = icmp slt i64 %165, 0
  br i1 %525, label %604, label %526

526:                                              ; preds = %524
  %527 = getelementptr inbounds nuw i8, ptr %163, i64 9704
  %528 = load ptr, ptr %527, align 8, !tbaa !63
  %529 = getelementptr double, ptr %528, i64 %7
  %530 = getelementptr inbounds nuw i8, ptr %163, i64 9696
  %531 = load ptr, ptr %530, align 32, !tbaa !53
  %532 = getelementptr double, ptr %531, i64 %7
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
  %541 = load double, ptr %508, align 8, !tbaa !45
  %542 = fmul double %201, %541
  br label %543

543:                                              ; preds = %537, %540
  %544 = phi double [ %542, %540 ], [ %202, %537 ]
  %545 = getelementptr <8 x double>, ptr %511, i64 %538
  store double %544, ptr %545, align 8, !tbaa !45
  %546 = getelementptr <8 x double>, ptr %514, i64 %538
  store double %544, ptr %546, align 8, !tbaa !45
  %547 = getelementptr <8 x double>, ptr %517, i64 %538
  store double %544, ptr %547, align 8, !tbaa !45
  %548 = getelementptr <8 x double>, ptr %520, i64 %538
  store double 1.000000e+00, ptr %548, align 8, !tbaa !45
  %549 = getelementptr <8 x double>, ptr %523, i64 %538
  store double 1.000000e+00, ptr %549, align 8, !tbaa !45
  %550 = add nuw nsw i64 %538, 1
  %551 = icmp eq i64 %550, %164
  br i1 %551, label %524, label %537, !llvm.loop !232

552:                                              ; preds = %591, %526
  %553 = phi i64 [ 0, %526 ], [ %595, %591 ]
  %554 = and i64 %165, 1
  %555 = icmp eq i64 %554, 0
  br i1 %555, label %556, label %564

556:                                              ; preds = %552
  %557 = icmp slt i64 %553, %165
  br i1 %557, label %560, label %558

558:                                              ; preds = %556
  %559 = load double, ptr %363, align 8, !tbaa !45
  br label %560

560:                                              ; preds = %558, %556
  %561 = phi double [ %559, %558 ], [ %358, %556 ]
  %562 = getelementptr <8 x double>, ptr %529, i64 %553
  store double %561, ptr %562, align 8, !tbaa !45
  %563 = getelementptr <8 x double>, ptr %532, i64 %553
  store double %561, ptr %563, align 8, !tbaa !45
  br label %564

564:                                              ; preds = %552, %560
  %565 = icmp eq i64 %165, 0
  br i1 %565, label %604, label %566

566:                                              ; preds = %564
  %567 = getelementptr inbounds nuw i8, ptr %163, i64 9656
  %568 = load ptr, ptr %567, align 8, !tbaa !64
  %569 = getelementptr double, ptr %568, i64 %7
  %570 = getelementptr inbounds nuw i8, ptr %163, i64 9648
  %571 = load ptr, ptr %570, align 16, !tbaa !54
  %572 = getelementptr double, ptr %571, i64 %7
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
  %582 = load double, ptr %363, align 8, !tbaa !45
  br label %583

583:                                              ; preds = %577, %581
  %584 = phi double [ %582, %581 ], [ %358, %577 ]
  %585 = getelementptr <8 x double>, ptr %529, i64 %578
  store double %584, ptr %585, align 8, !tbaa !45
  %586 = getelementptr <8 x double>, ptr %532, i64 %578
  store double %584, ptr %586, align 8, !tbaa !45
  %587 = or disjoint i64 %578, 1
  %588 = icmp slt i64 %587, %165
  br i1 %588, label %591, label %589

589:                                              ; preds = %583
  %590 = load double, ptr %363, align 8, !tbaa !45
  br label %591

591:                                              ; preds = %589, %583
  %592 = phi double [ %590, %589 ], [ %358, %583 ]
  %593 = getelementptr <8 x double>, ptr %529, i64 %587
  store double %592, ptr %593, align 8, !tbaa !45
  %594 = getelementptr <8 x double>, ptr %532, i64 %587
  store double %592, ptr %594, align 8, !tbaa !45
  %595 = add nuw i64 %578, 2
  %596 = add i64 %579, 2
  %597 = icmp eq i64 %596, %536
  br i1 %597, label %552, label %577, !llvm.loop !233

598:                                              ; preds = %608, %566
  %599 = phi i64 [ 0, %566 ], [ %616, %608 ]
  %600 = icmp eq i64 %573, 0
  br i1 %600, label %604, label %601

601:                                              ; preds = %598
  %602 = getelementptr <8 x double>, ptr %569, i64 %599
  store double %201, ptr %602, align 8, !tbaa !45
  %603 = getelementptr <8 x double>, ptr %572, i64 %599
  store double %201, ptr %603, align 8, !tbaa !45
  br label %604

604:                                              ; preds = %601, %598, %524, %564
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #6
  %605 = add nuw nsw i64 %162, 1
  %606 = load i64, ptr %28, align 8, !tbaa !20
  %607 = icmp slt i64 %605, %606
  br i1 %607, label %161, label %62, !llvm.loop !234

608:                                              ; preds = %608, %575
  %609 = phi i64 [ 0, %575 ], [ %616, %608 ]
  %610 = phi i64 [ 0, %575 ], [ %617, %608 ]
  %611 = getelementptr <8 x double>, ptr %569, i64 %609
  store double %201, ptr %611, align 8, !tbaa !45
  %612 = getelementptr <8 x double>, ptr %572, i64 %609
  store double %201, ptr %612, align 8, !tbaa !45
  %613 = or disjoint i64 %609, 1
  %614 = getelementptr <8 x double>, ptr %569, i64 %613
  store double %201, ptr %614, align 8, !tbaa !45
  %615 = getelementptr <8 x double>, ptr %572, i64 %613
  store double %201, ptr %615, align 8, !tbaa !45
  %616 = add nuw nsw i64 %609, 2
  %617 = add i64 %610, 2
  %618 = icmp eq i64 %617, %576
  br i1 %618, label %598, label %608, !llvm.loop !235
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6288) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !236
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !237
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %10 = sext i32 %2 to i64
  %11 = getelementptr inbounds [8 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %18 = getelementptr inbounds double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !45
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !238
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !45
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !45
  %31 = fsub double %27, %30
  %32 = icmp sgt i64 %24, %20
  br i1 %32, label %33, label %69

33:                                               ; preds = %3
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %35 = getelementptr inbounds double, ptr %34, i64 %10
  br label %36

36:                                               ; preds = %33, %66
  %37 = phi i64 [ %20, %33 ], [ %67, %66 ]
  %38 = mul nsw i64 %37, 48
  %39 = getelementptr inbounds i8, ptr %16, i64 %38
  %40 = load double, ptr %39, align 8, !tbaa !45
  %41 = getelementptr inbounds nuw i8, ptr %39, i64 40
  %42 = load double, ptr %41, align 8, !tbaa !45
  %43 = fcmp ult double %42, 0.000000e+00
  br i1 %43, label %49, label %44

44:                                               ; preds = %36
  %45 = load double, ptr %35, align 8, !tbaa !45
  %46 = fsub double %42, %45
  %47 = fcmp ogt double %46, 0x3EB0C6F7A0B5ED8D
  %48 = select i1 %47, double %46, double 0.000000e+00
  br label %49

49:                                               ; preds = %44, %36
  %50 = phi double [ %48, %44 ], [ %40, %36 ]
  %51 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %52 = load double, ptr %51, align 8, !tbaa !45
  %53 = fcmp oeq double %52, 2.000000e+00
  br i1 %53, label %54, label %62

54:                                               ; preds = %49
  %55 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %56 = load double, ptr %55, align 8, !tbaa !45
  %57 = fcmp oeq double %56, 4.000000e+00
  br i1 %57, label %58, label %62

58:                                               ; preds = %54
  %59 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %60 = load double, ptr %59, align 8, !tbaa !45
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
  br i1 %68, label %69, label %36, !llvm.loop !239

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !45
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !45
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !45
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 6208
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !45
  br label %270

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !45
  %82 = load double, ptr %35, align 8, !tbaa !45
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !45
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4416
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !45
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !45
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !45
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !45
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !45
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !45
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !45
  %99 = load double, ptr %80, align 8, !tbaa !45
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !45
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %201

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %152

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 6280
  %112 = load ptr, ptr %111, align 8, !tbaa !28
  %113 = and i64 %108, 1
  %114 = icmp eq i64 %108, 1
  br i1 %114, label %139, label %115

115:                                              ; preds = %110
  %116 = and i64 %108, 9223372036854775806
  br label %117

117:                                              ; preds = %117, %115
  %118 = phi <8 x double> [ zeroinitializer, %115 ], [ %135, %117 ]
  %119 = phi i64 [ 0, %115 ], [ %136, %117 ]
  %120 = phi i64 [ 0, %115 ], [ %137, %117 ]
  %121 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %119
  %122 = getelementptr inbounds nuw i8, ptr %121, i64 128
  %123 = load <8 x double>, ptr %122, align 64, !tbaa !26
  %124 = getelementptr inbounds nuw i8, ptr %121, i64 4544
  %125 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %126 = fmul <8 x double> %123, %125
  %127 = fadd <8 x double> %118, %126
  %128 = or disjoint i64 %119, 1
  %129 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %128
  %130 = getelementptr inbounds nuw i8, ptr %129, i64 128
  %131 = load <8 x double>, ptr %130, align 64, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %129, i64 4544
  %133 = load <8 x double>, ptr %132, align 64, !tbaa !26
  %134 = fmul <8 x double> %131, %133
  %135 = fadd <8 x double> %127, %134
  %136 = add nuw nsw i64 %119, 2
  %137 = add i64 %120, 2
  %138 = icmp eq i64 %137, %116
  br i1 %138, label %139, label %117, !llvm.loop !240

139:                                              ; preds = %117, %110
  %140 = phi <8 x double> [ poison, %110 ], [ %135, %117 ]
  %141 = phi <8 x double> [ zeroinitializer, %110 ], [ %135, %117 ]
  %142 = phi i64 [ 0, %110 ], [ %136, %117 ]
  %143 = icmp eq i64 %113, 0
  br i1 %143, label %152, label %144

144:                                              ; preds = %139
  %145 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %142
  %146 = getelementptr inbounds nuw i8, ptr %145, i64 128
  %147 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %148 = getelementptr inbounds nuw i8, ptr %145, i64 4544
  %149 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %150 = fmul <8 x double> %147, %149
  %151 = fadd <8 x double> %141, %150
  br label %152

152:                                              ; preds = %144, %139, %106
  %153 = phi <8 x double> [ zeroinitializer, %106 ], [ %140, %139 ], [ %151, %144 ]
  %154 = extractelement <8 x double> %153, i32 %2
  %155 = fmul double %154, 4.615260e+02
  %156 = getelementptr inbounds nuw i8, ptr %0, i64 704
  %157 = getelementptr inbounds double, ptr %156, i64 %10
  %158 = load double, ptr %157, align 8, !tbaa !45
  %159 = fmul double %158, %155
  %160 = fdiv double %159, %30
  %161 = fcmp ogt double %160, 0.000000e+00
  %162 = fneg double %160
  %163 = select i1 %161, double %162, double -0.000000e+00
  %164 = getelementptr inbounds nuw i8, ptr %0, i64 640
  %165 = getelementptr inbounds double, ptr %164, i64 %10
  %166 = load double, ptr %165, align 8, !tbaa !45
  %167 = fdiv double %163, %166
  %168 = insertelement <8 x double> poison, double %167, i64 0
  %169 = shufflevector <8 x double> %168, <8 x double> poison, <8 x i32> zeroinitializer
  %170 = fcmp ogt <8 x double> %169, splat (double -7.000000e+02)
  %171 = select <8 x i1> %170, <8 x double> %169, <8 x double> splat (double -7.000000e+02)
  %172 = fcmp olt <8 x double> %171, splat (double 7.000000e+02)
  %173 = select <8 x i1> %172, <8 x double> %171, <8 x double> splat (double 7.000000e+02)
  %174 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %173, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %175 = fadd <8 x double> %174, splat (double 0xC338000000000000)
  %176 = fneg <8 x double> %175
  %177 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %176, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %173)
  %178 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %176, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %177)
  %179 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %178, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %180 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %179, <8 x double> %178, <8 x double> splat (double 0x3E5AE64567F544E4))
  %181 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %180, <8 x double> %178, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %182 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %181, <8 x double> %178, <8 x double> splat (double 0x3EC71DE3A556C734))
  %183 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %182, <8 x double> %178, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %184 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %183, <8 x double> %178, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %185 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %184, <8 x double> %178, <8 x double> splat (double 0x3F56C16C16C16C17))
  %186 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %185, <8 x double> %178, <8 x double> splat (double 0x3F81111111111111))
  %187 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %186, <8 x double> %178, <8 x double> splat (double 0x3FA5555555555555))
  %188 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %187, <8 x double> %178, <8 x double> splat (double 0x3FC5555555555555))
  %189 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %188, <8 x double> %178, <8 x double> splat (double 5.000000e-01))
  %190 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %189, <8 x double> %178, <8 x double> splat (double 1.000000e+00))
  %191 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %190, <8 x double> %178, <8 x double> splat (double 1.000000e+00))
  %192 = bitcast <8 x double> %174 to <8 x i64>
  %193 = shl <8 x i64> %192, splat (i64 52)
  %194 = bitcast <8 x double> %191 to <8 x i64>
  %195 = add <8 x i64> %193, %194
  %196 = bitcast <8 x i64> %195 to <8 x double>
  %197 = extractelement <8 x double> %196, i64 0
  %198 = fmul double %30, %197
  %199 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %200 = getelementptr inbounds double, ptr %199, i64 %10
  store double %198, ptr %200, align 8, !tbaa !45
  br label %201

201:                                              ; preds = %79, %152
  %202 = fcmp une double %99, %103
  br i1 %202, label %203, label %242

203:                                              ; preds = %201
  %204 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %205 = getelementptr inbounds double, ptr %204, i64 %10
  store double %99, ptr %205, align 8, !tbaa !45
  %206 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %207 = getelementptr inbounds double, ptr %206, i64 %10
  store double %82, ptr %207, align 8, !tbaa !45
  %208 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %209 = getelementptr inbounds double, ptr %208, i64 %10
  %210 = load double, ptr %209, align 8, !tbaa !45
  %211 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %212 = getelementptr inbounds double, ptr %211, i64 %10
  store double %210, ptr %212, align 8, !tbaa !45
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %214 = getelementptr inbounds i64, ptr %213, i64 %10
  store i64 -1, ptr %214, align 8, !tbaa !30
  %215 = fcmp oeq double %99, 0.000000e+00
  %216 = fcmp oeq double %99, 3.000000e+00
  %217 = or i1 %215, %216
  br i1 %217, label %218, label %226

218:                                              ; preds = %203
  %219 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %220 = getelementptr inbounds double, ptr %219, i64 %10
  store double %30, ptr %220, align 8, !tbaa !45
  store double %30, ptr %26, align 8, !tbaa !45
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %222 = getelementptr inbounds double, ptr %221, i64 %10
  %223 = load double, ptr %222, align 8, !tbaa !45
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %225 = getelementptr inbounds double, ptr %224, i64 %10
  store double %223, ptr %225, align 8, !tbaa !45
  br label %226

226:                                              ; preds = %203, %218
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %228 = load i64, ptr %227, align 8, !tbaa !20
  %229 = icmp sgt i64 %228, 0
  br i1 %229, label %230, label %242

230:                                              ; preds = %226
  %231 = getelementptr inbounds nuw i8, ptr %0, i64 6280
  %232 = load ptr, ptr %231, align 8, !tbaa !28
  %233 = getelementptr i64, ptr %232, i64 %10
  %234 = sext i1 %216 to i64
  br label %235

235:                                              ; preds = %230, %235
  %236 = phi i64 [ 0, %230 ], [ %239, %235 ]
  %237 = getelementptr %struct.Piece, ptr %233, i64 %236, i32 49
  store i64 -1, ptr %237, align 8, !tbaa !30
  %238 = getelementptr %struct.Piece, ptr %233, i64 %236, i32 50
  store i64 %234, ptr %238, align 8, !tbaa !30
  %239 = add nuw nsw i64 %236, 1
  %240 = load i64, ptr %227, align 8, !tbaa !20
  %241 = icmp slt i64 %239, %240
  br i1 %241, label %235, label %242, !llvm.loop !241

242:                                              ; preds = %235, %226, %201
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #6
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %243 = getelementptr inbounds i64, ptr %4, i64 %10
  store i64 -1, ptr %243, align 8, !tbaa !30
  %244 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %246 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %247 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %248 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %249 = fmul <8 x double> %248, splat (double 5.000000e-01)
  %250 = load <8 x double>, ptr %89, align 64, !tbaa !26
  %251 = fadd <8 x double> %250, %249
  %252 = fadd <8 x double> %251, splat (double -4.000000e-03)
  %253 = fcmp ult <8 x double> %246, %252
  %254 = fsub <8 x double> %250, %249
  %255 = fadd <8 x double> %254, splat (double 4.000000e-03)
  %256 = fcmp ole <8 x double> %246, %255
  %257 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %258 = load <8 x i64>, ptr %257, align 64, !tbaa !26
  %259 = select <8 x i1> %256, <8 x i64> splat (i64 -1), <8 x i64> %258
  %260 = select <8 x i1> %253, <8 x i64> %259, <8 x i64> zeroinitializer
  %261 = xor <8 x i64> %260, %258
  %262 = and <8 x i64> %261, %244
  %263 = and <8 x i64> %260, %244
  %264 = xor <8 x i64> %244, splat (i64 -1)
  %265 = and <8 x i64> %258, %264
  %266 = or <8 x i64> %263, %265
  store <8 x i64> %266, ptr %257, align 64, !tbaa !26
  %267 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %268 = load <8 x i64>, ptr %267, align 64, !tbaa !26
  %269 = or <8 x i64> %262, %268
  store <8 x i64> %269, ptr %267, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #6
  br label %270

270:                                              ; preds = %242, %69
  ret void
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fmuladd.v8f64(<8 x double>, <8 x double>, <8 x double>) #3

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.fmuladd.f64(double, double, double) #3

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.vector.reduce.or.v8i64(<8 x i64>) #3

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fabs.v8f64(<8 x double>) #3

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.sqrt.v8f64(<8 x double>) #3

; Function Attrs: nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.smin.i64(i64, i64) #4

attributes #0 = { nounwind }
attributes #1 = { nounwind }
attributes #2 = { nounwind }
attributes #3 = { nounwind }
attributes #4 = { nounwind }
attributes #5 = { nounwind }
attributes #6 = { nounwind }

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
!16 = !{!17, !6, i64 2368}
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 2368, !6, i64 2376, !6, i64 2384, !6, i64 2392, !6, i64 2400, !6, i64 2408, !7, i64 2432, !7, i64 2496, !7, i64 2880, !7, i64 3264, !7, i64 3648, !7, i64 3712, !7, i64 3776, !7, i64 3840, !7, i64 3904, !7, i64 3968, !7, i64 4032, !7, i64 4096, !7, i64 4160, !7, i64 4224, !7, i64 4288, !7, i64 4352, !7, i64 4416, !7, i64 4480, !7, i64 4544, !7, i64 4608, !7, i64 4672, !7, i64 4736, !7, i64 4800, !7, i64 4864, !7, i64 4928, !7, i64 4992, !7, i64 5056, !7, i64 5120, !7, i64 5184, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6144, !7, i64 6208, !11, i64 6272, !19, i64 6280}
!18 = !{!"_ZTS9CookGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304}
!19 = !{!"p1 _ZTS5Piece", !11, i64 0}
!20 = !{!17, !6, i64 2376}
!21 = !{!17, !6, i64 2384}
!22 = !{!17, !6, i64 2392}
!23 = !{!5, !6, i64 32}
!24 = !{!17, !6, i64 2400}
!25 = !{!5, !9, i64 64}
!26 = !{!7, !7, i64 0}
!27 = !{!17, !6, i64 2408}
!28 = !{!17, !19, i64 6280}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 9472}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 3328, !7, i64 4224, !7, i64 5120, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !34, i64 7168, !7, i64 7360, !7, i64 7424, !7, i64 7488, !7, i64 7552, !7, i64 7616, !7, i64 7680, !7, i64 7744, !7, i64 7808, !7, i64 7872, !7, i64 7936, !7, i64 8000, !7, i64 8064, !7, i64 8128, !7, i64 8192, !7, i64 8256, !7, i64 8320, !7, i64 8384, !7, i64 8448, !7, i64 8512, !7, i64 8576, !7, i64 8640, !7, i64 8704, !7, i64 8768, !35, i64 8832, !7, i64 9216, !7, i64 9280, !7, i64 9344, !7, i64 9408, !6, i64 9472, !7, i64 9480, !11, i64 9544, !11, i64 9552, !11, i64 9560, !11, i64 9568, !11, i64 9576, !11, i64 9584, !11, i64 9592, !11, i64 9600, !11, i64 9608, !11, i64 9616, !11, i64 9624, !11, i64 9632, !11, i64 9640, !11, i64 9648, !11, i64 9656, !11, i64 9664, !11, i64 9672, !11, i64 9680, !11, i64 9688, !11, i64 9696, !11, i64 9704}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880, !7, i64 2944, !7, i64 3008, !7, i64 3072, !7, i64 3136, !7, i64 3200, !7, i64 3264}
!34 = !{!"_ZTS5Joint", !7, i64 0, !7, i64 64, !7, i64 128}
!35 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320}
!36 = !{!11, !11, i64 0}
!37 = !{!32, !11, i64 9632}
!38 = distinct !{!38, !39}
!39 = !{!"llvm.loop.mustprogress"}
!40 = !{!17, !11, i64 6272}
!41 = !{!5, !6, i64 0}
!42 = distinct !{!42, !39}
!43 = !{!5, !6, i64 184}
!44 = !{!5, !6, i64 192}
!45 = !{!9, !9, i64 0}
!46 = !{!5, !10, i64 216}
!47 = !{!5, !6, i64 40}
!48 = !{!5, !10, i64 200}
!49 = !{!5, !10, i64 208}
!50 = !{!32, !11, i64 9552}
!51 = !{!32, !11, i64 9616}
!52 = !{!32, !11, i64 9576}
!53 = !{!32, !11, i64 9696}
!54 = !{!32, !11, i64 9648}
!55 = !{!56}
!56 = distinct !{!56, !57, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!57 = distinct !{!57, !"_ZL4nearRK10PieceGivenDv8_d"}
!58 = distinct !{!58, !39}
!59 = distinct !{!59, !39}
!60 = distinct !{!60, !39}
!61 = distinct !{!61, !39}
!62 = distinct !{!62, !39}
!63 = !{!32, !11, i64 9704}
!64 = !{!32, !11, i64 9656}
!65 = !{!32, !11, i64 9664}
!66 = distinct !{!66, !39}
!67 = !{!32, !11, i64 9560}
!68 = !{!32, !11, i64 9568}
!69 = distinct !{!69, !39}
!70 = distinct !{!70, !39}
!71 = distinct !{!71, !39}
!72 = !{!73}
!73 = distinct !{!73, !74, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!74 = distinct !{!74, !"_ZL4stirRK5GroupRK5Piece"}
!75 = !{!76}
!76 = distinct !{!76, !77, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!77 = distinct !{!77, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!78 = !{!32, !11, i64 9608}
!79 = distinct !{!79, !39}
!80 = distinct !{!80, !39}
!81 = distinct !{!81, !39}
!82 = distinct !{!82, !39}
!83 = distinct !{!83, !39}
!84 = distinct !{!84, !39}
!85 = !{!86}
!86 = distinct !{!86, !87, !"_ZL7past_ofRK5Pieceb: argument 0"}
!87 = distinct !{!87, !"_ZL7past_ofRK5Pieceb"}
!88 = !{!32, !11, i64 9544}
!89 = !{!32, !11, i64 9600}
!90 = !{!32, !11, i64 9584}
!91 = !{!32, !11, i64 9592}
!92 = !{!93, !95}
!93 = distinct !{!93, !94, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!94 = distinct !{!94, !"_ZL4nearRK10PieceGivenDv8_d"}
!95 = distinct !{!95, !96, !"_ZL9join_boneRK5PieceDv8_dS2_S2_: argument 0"}
!96 = distinct !{!96, !"_ZL9join_boneRK5PieceDv8_dS2_S2_"}
!97 = !{!95}
!98 = !{!99}
!99 = distinct !{!99, !100, !"_ZN11EliminationILb1EE4faceExDv8_dS1_: argument 0"}
!100 = distinct !{!100, !"_ZN11EliminationILb1EE4faceExDv8_dS1_"}
!101 = distinct !{!101, !39}
!102 = !{!103}
!103 = distinct !{!103, !104, !"_ZL7past_ofRK5Pieceb: argument 0"}
!104 = distinct !{!104, !"_ZL7past_ofRK5Pieceb"}
!105 = !{!106}
!106 = distinct !{!106, !107, !"_ZL7past_ofRK5Pieceb: argument 0"}
!107 = distinct !{!107, !"_ZL7past_ofRK5Pieceb"}
!108 = !{!109}
!109 = distinct !{!109, !110, !"_ZN11EliminationILb0EE4faceExDv8_dS1_: argument 0"}
!110 = distinct !{!110, !"_ZN11EliminationILb0EE4faceExDv8_dS1_"}
!111 = !{!112}
!112 = distinct !{!112, !113, !"_ZN11EliminationILb0EE4faceExDv8_dS1_: argument 0"}
!113 = distinct !{!113, !"_ZN11EliminationILb0EE4faceExDv8_dS1_"}
!114 = distinct !{!114, !39}
!115 = !{!116}
!116 = distinct !{!116, !117, !"_ZL7past_ofRK5Pieceb: argument 0"}
!117 = distinct !{!117, !"_ZL7past_ofRK5Pieceb"}
!118 = !{!119}
!119 = distinct !{!119, !120, !"_ZN11EliminationILb0EE4faceExDv8_dS1_: argument 0"}
!120 = distinct !{!120, !"_ZN11EliminationILb0EE4faceExDv8_dS1_"}
!121 = distinct !{!121, !39}
!122 = distinct !{!122, !39}
!123 = !{!124}
!124 = distinct !{!124, !125, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!125 = distinct !{!125, !"_ZL4stirRK5GroupRK5Piece"}
!126 = !{!127}
!127 = distinct !{!127, !128, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!128 = distinct !{!128, !"_ZL4nearRK10PieceGivenDv8_d"}
!129 = distinct !{!129, !39}
!130 = !{!32, !11, i64 9688}
!131 = distinct !{!131, !39}
!132 = !{!32, !11, i64 9672}
!133 = !{!32, !11, i64 9680}
!134 = distinct !{!134, !39}
!135 = distinct !{!135, !39}
!136 = distinct !{!136, !39}
!137 = distinct !{!137, !39}
!138 = !{!139}
!139 = distinct !{!139, !140, !"_ZL8condenseR5GroupDv8_d: argument 0"}
!140 = distinct !{!140, !"_ZL8condenseR5GroupDv8_d"}
!141 = !{!142}
!142 = distinct !{!142, !143, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!143 = distinct !{!143, !"_ZL9evaporateR5GroupDv8_d"}
!144 = !{!145, !142}
!145 = distinct !{!145, !146, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!146 = distinct !{!146, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!147 = !{!148, !145, !142}
!148 = distinct !{!148, !149, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x: argument 0"}
!149 = distinct !{!149, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x"}
!150 = !{!151, !148, !145, !142}
!151 = distinct !{!151, !152, !"_ZL7past_ofRK5Pieceb: argument 0"}
!152 = distinct !{!152, !"_ZL7past_ofRK5Pieceb"}
!153 = distinct !{!153, !39}
!154 = distinct !{!154, !39}
!155 = !{!156}
!156 = distinct !{!156, !157, !"_ZL7outflowRK5GroupDv8_dS2_: argument 0"}
!157 = distinct !{!157, !"_ZL7outflowRK5GroupDv8_dS2_"}
!158 = distinct !{!158, !39}
!159 = !{!160}
!160 = distinct !{!160, !161, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!161 = distinct !{!161, !"_ZL9evaporateR5GroupDv8_d"}
!162 = !{!163, !160}
!163 = distinct !{!163, !164, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!164 = distinct !{!164, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!165 = !{!166, !163, !160}
!166 = distinct !{!166, !167, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x: argument 0"}
!167 = distinct !{!167, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x"}
!168 = !{!169, !166, !163, !160}
!169 = distinct !{!169, !170, !"_ZL7past_ofRK5Pieceb: argument 0"}
!170 = distinct !{!170, !"_ZL7past_ofRK5Pieceb"}
!171 = distinct !{!171, !39}
!172 = distinct !{!172, !39}
!173 = !{!32, !11, i64 9640}
!174 = distinct !{!174, !39}
!175 = distinct !{!175, !39}
!176 = distinct !{!176, !39}
!177 = !{!178}
!178 = distinct !{!178, !179, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!179 = distinct !{!179, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!180 = distinct !{!180, !39}
!181 = distinct !{!181, !39}
!182 = distinct !{!182, !39}
!183 = distinct !{!183, !39}
!184 = !{!185}
!185 = distinct !{!185, !186, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!186 = distinct !{!186, !"_ZL4nearRK10PieceGivenDv8_d"}
!187 = !{!188}
!188 = distinct !{!188, !189, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!189 = distinct !{!189, !"_ZL4nearRK10PieceGivenDv8_d"}
!190 = distinct !{!190, !39}
!191 = !{!32, !11, i64 9624}
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
!202 = distinct !{!202, !39}
!203 = distinct !{!203, !39}
!204 = !{!205}
!205 = distinct !{!205, !206, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!206 = distinct !{!206, !"_ZL4nearRK10PieceGivenDv8_d"}
!207 = distinct !{!207, !39}
!208 = !{!5, !6, i64 56}
!209 = !{!10, !10, i64 0}
!210 = !{!5, !12, i64 176}
!211 = !{!5, !10, i64 168}
!212 = distinct !{!212, !39}
!213 = distinct !{!213, !214}
!214 = !{!"llvm.loop.unroll.disable"}
!215 = distinct !{!215, !39}
!216 = distinct !{!216, !39}
!217 = !{!5, !12, i64 160}
!218 = !{!219}
!219 = distinct !{!219, !220, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!220 = distinct !{!220, !"_ZL4nearRK10PieceGivenDv8_d"}
!221 = distinct !{!221, !214}
!222 = !{!5, !10, i64 80}
!223 = !{!5, !12, i64 104}
!224 = distinct !{!224, !39}
!225 = !{!5, !10, i64 72}
!226 = !{!5, !10, i64 96}
!227 = distinct !{!227, !39}
!228 = distinct !{!228, !39}
!229 = distinct !{!229, !214}
!230 = distinct !{!230, !39}
!231 = distinct !{!231, !39}
!232 = distinct !{!232, !39}
!233 = distinct !{!233, !39}
!234 = distinct !{!234, !39}
!235 = distinct !{!235, !39}
!236 = !{!5, !10, i64 88}
!237 = !{!5, !12, i64 112}
!238 = !{!5, !12, i64 120}
!239 = distinct !{!239, !39}
!240 = distinct !{!240, !39}
!241 = distinct !{!241, !39}
