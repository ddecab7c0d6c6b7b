; Made by scripts/lanes.py from sources of sha256 e30e3c9571212f0c96a8bec273b65f29bd4d059245f6cc48f54a331587b4a16e.
%struct.Piece = type <{ %struct.PieceGiven, [12 x <8 x double>], [12 x <8 x double>], [12 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [56 x i8] }>
%struct.PieceGiven = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define range(i64 15936, 15873) i64 @work_space_one(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
  %2 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %3 = load i64, ptr %2, align 8, !tbaa !4
  %4 = mul i64 %3, 18
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %6 = load i64, ptr %5, align 8, !tbaa !13
  %7 = mul i64 %6, 9
  %8 = add i64 %7, %4
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %10 = load i64, ptr %9, align 8, !tbaa !14
  %11 = add i64 %8, %10
  %12 = shl i64 %11, 6
  %13 = add i64 %12, 15936
  ret i64 %13
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind willreturn memory(argmem: readwrite)
declare void @llvm.lifetime.start.p0(i64 immarg, ptr nocapture) #1

; Function Attrs: mustprogress nocallback nofree nosync nounwind willreturn memory(argmem: readwrite)
declare void @llvm.lifetime.end.p0(i64 immarg, ptr nocapture) #1

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define range(i64 0, 2) i64 @march_one(ptr nocapture noundef %0, ptr noundef %1, i64 noundef %2) local_unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = alloca <8 x double>, align 64
  %6 = alloca <8 x double>, align 64
  %7 = alloca <8 x i64>, align 64
  %8 = alloca <8 x double>, align 64
  %9 = alloca <8 x double>, align 64
  %10 = alloca <8 x double>, align 64
  %11 = alloca <8 x double>, align 64
  %12 = alloca <8 x i64>, align 64
  %13 = icmp eq i64 %2, 0
  br i1 %13, label %109, label %14

14:                                               ; preds = %3
  %15 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %16 = load i64, ptr %15, align 8, !tbaa !15
  %17 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  store i64 %16, ptr %17, align 64, !tbaa !16
  %18 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  store i64 1, ptr %18, align 8, !tbaa !20
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %20 = load i64, ptr %19, align 8, !tbaa !4
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  store i64 %20, ptr %21, align 16, !tbaa !21
  %22 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %23 = load i64, ptr %22, align 8, !tbaa !13
  %24 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  store i64 %23, ptr %24, align 8, !tbaa !22
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %26 = load i64, ptr %25, align 8, !tbaa !23
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  store i64 %26, ptr %27, align 32, !tbaa !24
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %29 = load double, ptr %28, align 8, !tbaa !25
  %30 = insertelement <8 x double> poison, double %29, i64 0
  %31 = shufflevector <8 x double> %30, <8 x double> poison, <8 x i32> zeroinitializer
  %32 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  store <8 x double> %31, ptr %32, align 64, !tbaa !26
  %33 = getelementptr inbounds nuw i8, ptr %1, i64 2344
  store i64 0, ptr %33, align 8, !tbaa !27
  %34 = getelementptr inbounds nuw i8, ptr %1, i64 6016
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 5960
  store ptr %34, ptr %35, align 8, !tbaa !28
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 13824
  %37 = getelementptr inbounds nuw i8, ptr %0, i64 152
  %38 = add nsw i64 %20, 1
  %39 = getelementptr inbounds <8 x double>, ptr %36, i64 %20
  %40 = getelementptr inbounds <8 x double>, ptr %39, i64 %20
  %41 = getelementptr inbounds <8 x double>, ptr %40, i64 %20
  %42 = getelementptr inbounds <8 x double>, ptr %41, i64 %20
  %43 = getelementptr inbounds <8 x double>, ptr %42, i64 %20
  %44 = getelementptr inbounds <8 x double>, ptr %43, i64 %20
  %45 = getelementptr inbounds <8 x double>, ptr %44, i64 %20
  %46 = getelementptr inbounds <8 x double>, ptr %45, i64 %20
  %47 = getelementptr inbounds <8 x double>, ptr %46, i64 %20
  %48 = getelementptr inbounds <8 x double>, ptr %47, i64 %20
  %49 = getelementptr inbounds <8 x double>, ptr %48, i64 %20
  %50 = getelementptr inbounds <8 x double>, ptr %49, i64 %20
  %51 = getelementptr inbounds <8 x double>, ptr %50, i64 %20
  %52 = getelementptr inbounds <8 x double>, ptr %51, i64 %20
  %53 = load ptr, ptr %37, align 8, !tbaa !29
  %54 = load i64, ptr %53, align 8, !tbaa !30
  %55 = getelementptr inbounds nuw i8, ptr %1, i64 13568
  store i64 %54, ptr %55, align 64, !tbaa !31
  %56 = getelementptr inbounds nuw i8, ptr %1, i64 13576
  %57 = getelementptr inbounds nuw i8, ptr %1, i64 13584
  %58 = getelementptr inbounds nuw i8, ptr %1, i64 13592
  %59 = getelementptr inbounds nuw i8, ptr %1, i64 13600
  %60 = getelementptr inbounds nuw i8, ptr %1, i64 13608
  %61 = getelementptr inbounds nuw i8, ptr %1, i64 13616
  %62 = getelementptr inbounds nuw i8, ptr %1, i64 13624
  %63 = getelementptr inbounds nuw i8, ptr %1, i64 13632
  %64 = getelementptr inbounds nuw i8, ptr %1, i64 13640
  %65 = getelementptr inbounds nuw i8, ptr %1, i64 13648
  %66 = getelementptr inbounds nuw i8, ptr %1, i64 13656
  %67 = getelementptr inbounds nuw i8, ptr %1, i64 13664
  %68 = getelementptr inbounds nuw i8, ptr %1, i64 13672
  %69 = getelementptr inbounds nuw i8, ptr %1, i64 13680
  store ptr %36, ptr %56, align 8, !tbaa !34
  store ptr %39, ptr %57, align 8, !tbaa !34
  store ptr %40, ptr %58, align 8, !tbaa !34
  store ptr %41, ptr %59, align 8, !tbaa !34
  store ptr %42, ptr %60, align 8, !tbaa !34
  store ptr %43, ptr %61, align 8, !tbaa !34
  store ptr %44, ptr %62, align 8, !tbaa !34
  store ptr %45, ptr %63, align 8, !tbaa !34
  store ptr %46, ptr %64, align 8, !tbaa !34
  store ptr %47, ptr %65, align 8, !tbaa !34
  store ptr %48, ptr %66, align 8, !tbaa !34
  store ptr %49, ptr %67, align 8, !tbaa !34
  store ptr %50, ptr %68, align 8, !tbaa !34
  store ptr %51, ptr %69, align 8, !tbaa !34
  %70 = getelementptr inbounds nuw i8, ptr %1, i64 13688
  store ptr %52, ptr %70, align 8, !tbaa !35
  %71 = icmp eq i64 %54, 0
  %72 = select i1 %71, i64 0, i64 2
  %73 = shl i64 %38, %72
  %74 = getelementptr inbounds <8 x double>, ptr %52, i64 %73
  %75 = getelementptr inbounds nuw i8, ptr %1, i64 13696
  %76 = getelementptr inbounds nuw i8, ptr %1, i64 13704
  %77 = getelementptr inbounds nuw i8, ptr %1, i64 13712
  %78 = getelementptr inbounds nuw i8, ptr %1, i64 13720
  %79 = getelementptr inbounds nuw i8, ptr %1, i64 13728
  %80 = getelementptr inbounds nuw i8, ptr %1, i64 13736
  %81 = getelementptr inbounds nuw i8, ptr %1, i64 13744
  %82 = getelementptr inbounds nuw i8, ptr %1, i64 13752
  %83 = getelementptr inbounds nuw i8, ptr %1, i64 13760
  store ptr %74, ptr %75, align 8, !tbaa !34
  %84 = getelementptr <8 x double>, ptr %74, i64 %23
  %85 = getelementptr i8, ptr %84, i64 64
  store ptr %85, ptr %76, align 8, !tbaa !34
  %86 = getelementptr <8 x double>, ptr %85, i64 %23
  %87 = getelementptr i8, ptr %86, i64 64
  store ptr %87, ptr %77, align 8, !tbaa !34
  %88 = getelementptr <8 x double>, ptr %87, i64 %23
  %89 = getelementptr i8, ptr %88, i64 64
  store ptr %89, ptr %78, align 8, !tbaa !34
  %90 = getelementptr <8 x double>, ptr %89, i64 %23
  %91 = getelementptr i8, ptr %90, i64 64
  store ptr %91, ptr %79, align 8, !tbaa !34
  %92 = getelementptr <8 x double>, ptr %91, i64 %23
  %93 = getelementptr i8, ptr %92, i64 64
  store ptr %93, ptr %80, align 8, !tbaa !34
  %94 = getelementptr <8 x double>, ptr %93, i64 %23
  %95 = getelementptr i8, ptr %94, i64 64
  store ptr %95, ptr %81, align 8, !tbaa !34
  %96 = getelementptr <8 x double>, ptr %95, i64 %23
  %97 = getelementptr i8, ptr %96, i64 64
  store ptr %97, ptr %82, align 8, !tbaa !34
  %98 = getelementptr <8 x double>, ptr %97, i64 %23
  %99 = getelementptr i8, ptr %98, i64 64
  store ptr %99, ptr %83, align 8, !tbaa !34
  %100 = getelementptr <8 x double>, ptr %99, i64 %23
  %101 = getelementptr i8, ptr %100, i64 64
  %102 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  store ptr %101, ptr %102, align 64, !tbaa !36
  %103 = load i64, ptr %0, align 8, !tbaa !37
  %104 = icmp sgt i64 %103, 0
  br i1 %104, label %105, label %106

105:                                              ; preds = %14
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %109

106:                                              ; preds = %14
  %107 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %108 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  store i64 0, ptr %108, align 8, !tbaa !30
  store i64 0, ptr %107, align 8, !tbaa !30
  br label %109

109:                                              ; preds = %106, %105, %3
  %110 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %113 = load i64, ptr %111, align 8, !tbaa !38
  %114 = load i64, ptr %112, align 8, !tbaa !39
  %115 = sub nsw i64 %113, %114
  %116 = icmp slt i64 %115, 16
  br i1 %116, label %4887, label %117

117:                                              ; preds = %109
  %118 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  %120 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  %121 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %123 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %124 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %125 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %126 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %127 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %128 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %129 = getelementptr inbounds nuw i8, ptr %1, i64 5960
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 2344
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %135 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %162 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %164 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %165 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %215 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %217 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %219 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 5320
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 5384
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 5328
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 5392
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 5336
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 5400
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 5344
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 5408
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 5352
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 5416
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 5360
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 5424
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 5368
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 5432
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 5896
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 5904
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 5912
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 5920
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 5928
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 5936
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 5944
  br label %273

273:                                              ; preds = %117, %512
  %274 = load i64, ptr %110, align 8, !tbaa !30
  %275 = icmp eq i64 %274, 0
  br i1 %275, label %517, label %276

276:                                              ; preds = %273
  %277 = load double, ptr %118, align 8, !tbaa !40
  %278 = fcmp oeq double %277, 0.000000e+00
  br i1 %278, label %517, label %279

279:                                              ; preds = %276
  %280 = load i64, ptr %119, align 16, !tbaa !21
  %281 = load i64, ptr %120, align 8, !tbaa !22
  %282 = load i64, ptr %121, align 8, !tbaa !30
  %283 = load ptr, ptr %122, align 8, !tbaa !41
  %284 = mul nsw i64 %282, 40
  %285 = getelementptr inbounds i8, ptr %283, i64 %284
  %286 = load double, ptr %123, align 8, !tbaa !40
  store double %286, ptr %285, align 8, !tbaa !40
  %287 = load double, ptr %124, align 8, !tbaa !40
  %288 = getelementptr inbounds nuw i8, ptr %285, i64 8
  store double %287, ptr %288, align 8, !tbaa !40
  %289 = load double, ptr %125, align 8, !tbaa !40
  %290 = getelementptr inbounds nuw i8, ptr %285, i64 16
  store double %289, ptr %290, align 8, !tbaa !40
  %291 = load double, ptr %126, align 8, !tbaa !40
  %292 = getelementptr inbounds nuw i8, ptr %285, i64 24
  store double %291, ptr %292, align 8, !tbaa !40
  %293 = load double, ptr %127, align 8, !tbaa !40
  %294 = getelementptr inbounds nuw i8, ptr %285, i64 32
  store double %293, ptr %294, align 8, !tbaa !40
  %295 = load i64, ptr %128, align 64, !tbaa !16
  %296 = icmp sgt i64 %295, 0
  br i1 %296, label %297, label %501

297:                                              ; preds = %279
  %298 = load ptr, ptr %129, align 8, !tbaa !28
  %299 = getelementptr inbounds nuw i8, ptr %298, i64 1536
  %300 = getelementptr inbounds nuw i8, ptr %298, i64 4352
  %301 = load ptr, ptr %130, align 8, !tbaa !42
  %302 = mul nsw i64 %295, %282
  %303 = mul i64 %280, 3
  %304 = load ptr, ptr %131, align 8, !tbaa !43
  %305 = icmp sgt i64 %280, 0
  %306 = getelementptr inbounds nuw i8, ptr %298, i64 7568
  %307 = getelementptr inbounds nuw i8, ptr %298, i64 7600
  %308 = getelementptr inbounds nuw i8, ptr %298, i64 7656
  %309 = getelementptr inbounds nuw i8, ptr %298, i64 7552
  %310 = getelementptr inbounds nuw i8, ptr %298, i64 4416
  %311 = getelementptr inbounds nuw i8, ptr %298, i64 384
  %312 = getelementptr inbounds nuw i8, ptr %298, i64 448
  %313 = getelementptr inbounds nuw i8, ptr %298, i64 512
  %314 = getelementptr inbounds nuw i8, ptr %298, i64 640
  %315 = shl i64 %280, 4
  %316 = icmp sgt i64 %281, 0
  %317 = getelementptr inbounds nuw i8, ptr %298, i64 7736
  %318 = getelementptr inbounds nuw i8, ptr %298, i64 768
  %319 = getelementptr inbounds nuw i8, ptr %298, i64 7688
  %320 = getelementptr inbounds nuw i8, ptr %298, i64 960
  %321 = getelementptr inbounds nuw i8, ptr %298, i64 1408
  %322 = getelementptr inbounds nuw i8, ptr %298, i64 4096
  %323 = getelementptr inbounds nuw i8, ptr %298, i64 4160
  %324 = getelementptr inbounds nuw i8, ptr %298, i64 4032
  %325 = getelementptr inbounds nuw i8, ptr %298, i64 3840
  %326 = getelementptr inbounds nuw i8, ptr %298, i64 3904
  %327 = getelementptr inbounds nuw i8, ptr %298, i64 3776
  %328 = and i64 %281, 1
  %329 = icmp eq i64 %281, 1
  %330 = and i64 %281, 9223372036854775806
  %331 = icmp eq i64 %328, 0
  br label %332

332:                                              ; preds = %421, %297
  %333 = phi i64 [ 0, %297 ], [ %476, %421 ]
  %334 = shl i64 %333, 32
  %335 = ashr exact i64 %334, 32
  %336 = getelementptr inbounds double, ptr %299, i64 %335
  %337 = load double, ptr %336, align 8, !tbaa !40
  %338 = getelementptr inbounds double, ptr %300, i64 %335
  %339 = load double, ptr %338, align 8, !tbaa !40
  %340 = add nsw i64 %333, %302
  %341 = mul i64 %303, %340
  %342 = getelementptr inbounds double, ptr %301, i64 %341
  %343 = mul nsw i64 %340, 40
  %344 = getelementptr inbounds i8, ptr %304, i64 %343
  br i1 %305, label %345, label %355

345:                                              ; preds = %332
  %346 = load ptr, ptr %306, align 16, !tbaa !44
  %347 = load ptr, ptr %307, align 16, !tbaa !45
  %348 = getelementptr double, ptr %347, i64 %335
  %349 = getelementptr double, ptr %342, i64 %280
  %350 = load ptr, ptr %308, align 8, !tbaa !46
  %351 = load i64, ptr %309, align 64, !tbaa !31
  %352 = getelementptr inbounds double, ptr %10, i64 %335
  %353 = getelementptr i8, ptr %342, i64 %315
  %354 = getelementptr inbounds double, ptr %11, i64 %335
  br label %365

355:                                              ; preds = %396, %332
  %356 = phi double [ %339, %332 ], [ %404, %396 ]
  br i1 %316, label %357, label %421

357:                                              ; preds = %355
  %358 = load ptr, ptr %317, align 8, !tbaa !47
  %359 = getelementptr double, ptr %358, i64 %335
  %360 = getelementptr inbounds double, ptr %318, i64 %335
  %361 = load double, ptr %360, align 8, !tbaa !40
  %362 = load ptr, ptr %319, align 8, !tbaa !48
  %363 = getelementptr double, ptr %362, i64 %335
  %364 = load double, ptr %359, align 8, !tbaa !40
  br i1 %329, label %407, label %478

365:                                              ; preds = %396, %345
  %366 = phi double [ %339, %345 ], [ %404, %396 ]
  %367 = phi i64 [ 0, %345 ], [ %405, %396 ]
  %368 = getelementptr inbounds nuw <8 x double>, ptr %346, i64 %367
  %369 = getelementptr inbounds double, ptr %368, i64 %335
  %370 = load double, ptr %369, align 8, !tbaa !40
  %371 = getelementptr inbounds nuw double, ptr %342, i64 %367
  store double %370, ptr %371, align 8, !tbaa !40
  %372 = getelementptr <8 x double>, ptr %348, i64 %367
  %373 = load double, ptr %372, align 8, !tbaa !40
  %374 = getelementptr double, ptr %349, i64 %367
  store double %373, ptr %374, align 8, !tbaa !40
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %375 = getelementptr inbounds nuw <8 x double>, ptr %350, i64 %367
  %376 = load <8 x double>, ptr %375, align 64, !tbaa !26
  %377 = icmp slt i64 %367, %351
  br i1 %377, label %378, label %383

378:                                              ; preds = %365
  %379 = load <8 x double>, ptr %299, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %380 = load <8 x double>, ptr %368, align 64, !tbaa !26
  %381 = load <8 x double>, ptr %314, align 64, !tbaa !26
  %382 = fmul <8 x double> %380, %381
  br label %396

383:                                              ; preds = %365
  %384 = load <8 x double>, ptr %310, align 64, !tbaa !26
  %385 = load <8 x double>, ptr %299, align 64, !tbaa !26
  %386 = fsub <8 x double> %384, %385
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %387 = load <8 x double>, ptr %368, align 64, !tbaa !26
  %388 = load <8 x double>, ptr %311, align 64, !tbaa !26
  %389 = load <8 x double>, ptr %312, align 64, !tbaa !26
  %390 = load <8 x double>, ptr %313, align 64, !tbaa !26
  %391 = fmul <8 x double> %387, %390
  %392 = fmul <8 x double> %391, splat (double 0x3FD5555555555555)
  %393 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %389, <8 x double> splat (double 5.000000e-01), <8 x double> %392)
  %394 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %387, <8 x double> %393, <8 x double> %388)
  %395 = fmul <8 x double> %387, %394
  br label %396

396:                                              ; preds = %383, %378
  %397 = phi <8 x double> [ %379, %378 ], [ %386, %383 ]
  %398 = phi <8 x double> [ %382, %378 ], [ %395, %383 ]
  %399 = fmul <8 x double> %376, %397
  store <8 x double> %399, ptr %10, align 64, !tbaa !26
  %400 = fmul <8 x double> %399, %398
  store <8 x double> %400, ptr %11, align 64, !tbaa !26
  %401 = load double, ptr %352, align 8, !tbaa !40
  %402 = getelementptr double, ptr %353, i64 %367
  store double %401, ptr %402, align 8, !tbaa !40
  %403 = load double, ptr %354, align 8, !tbaa !40
  %404 = fadd double %366, %403
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %405 = add nuw nsw i64 %367, 1
  %406 = icmp eq i64 %405, %280
  br i1 %406, label %355, label %365, !llvm.loop !49

407:                                              ; preds = %478, %357
  %408 = phi double [ poison, %357 ], [ %498, %478 ]
  %409 = phi double [ %364, %357 ], [ %493, %478 ]
  %410 = phi double [ %356, %357 ], [ %498, %478 ]
  %411 = phi i64 [ 0, %357 ], [ %491, %478 ]
  br i1 %331, label %421, label %412

412:                                              ; preds = %407
  %413 = getelementptr <8 x double>, ptr %359, i64 %411
  %414 = getelementptr i8, ptr %413, i64 64
  %415 = load double, ptr %414, align 8, !tbaa !40
  %416 = fsub double %415, %409
  %417 = fmul double %361, %416
  %418 = getelementptr <8 x double>, ptr %363, i64 %411
  %419 = load double, ptr %418, align 8, !tbaa !40
  %420 = tail call double @llvm.fmuladd.f64(double %417, double %419, double %410)
  br label %421

421:                                              ; preds = %412, %407, %355
  %422 = phi double [ %356, %355 ], [ %408, %407 ], [ %420, %412 ]
  %423 = getelementptr inbounds double, ptr %320, i64 %335
  %424 = load double, ptr %423, align 8, !tbaa !40
  %425 = getelementptr inbounds double, ptr %311, i64 %335
  %426 = load double, ptr %425, align 8, !tbaa !40
  %427 = getelementptr inbounds double, ptr %312, i64 %335
  %428 = load double, ptr %427, align 8, !tbaa !40
  %429 = getelementptr inbounds double, ptr %313, i64 %335
  %430 = load double, ptr %429, align 8, !tbaa !40
  %431 = fmul double %424, %430
  %432 = fdiv double %431, 3.000000e+00
  %433 = tail call double @llvm.fmuladd.f64(double %428, double 5.000000e-01, double %432)
  %434 = tail call double @llvm.fmuladd.f64(double %424, double %433, double %426)
  %435 = fmul double %424, %434
  %436 = getelementptr inbounds double, ptr %321, i64 %335
  %437 = load double, ptr %436, align 8, !tbaa !40
  %438 = fsub double %437, %337
  %439 = getelementptr inbounds double, ptr %314, i64 %335
  %440 = load double, ptr %439, align 8, !tbaa !40
  %441 = fmul double %337, %440
  %442 = fmul double %424, %441
  %443 = tail call double @llvm.fmuladd.f64(double %438, double %435, double %442)
  %444 = getelementptr inbounds double, ptr %322, i64 %335
  %445 = load double, ptr %444, align 8, !tbaa !40
  %446 = getelementptr inbounds double, ptr %323, i64 %335
  %447 = load double, ptr %446, align 8, !tbaa !40
  %448 = fsub double %445, %447
  %449 = fsub double %422, %443
  %450 = fsub double %448, %449
  %451 = fcmp ogt double %445, 0.000000e+00
  %452 = fneg double %445
  %453 = select i1 %451, double %445, double %452
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
  store double %463, ptr %344, align 8, !tbaa !40
  %464 = getelementptr inbounds double, ptr %324, i64 %335
  %465 = load double, ptr %464, align 8, !tbaa !40
  %466 = getelementptr inbounds nuw i8, ptr %344, i64 8
  store double %465, ptr %466, align 8, !tbaa !40
  %467 = getelementptr inbounds double, ptr %325, i64 %335
  %468 = load double, ptr %467, align 8, !tbaa !40
  %469 = getelementptr inbounds nuw i8, ptr %344, i64 16
  store double %468, ptr %469, align 8, !tbaa !40
  %470 = getelementptr inbounds double, ptr %326, i64 %335
  %471 = load double, ptr %470, align 8, !tbaa !40
  %472 = getelementptr inbounds nuw i8, ptr %344, i64 24
  store double %471, ptr %472, align 8, !tbaa !40
  %473 = getelementptr inbounds double, ptr %327, i64 %335
  %474 = load double, ptr %473, align 8, !tbaa !40
  %475 = getelementptr inbounds nuw i8, ptr %344, i64 32
  store double %474, ptr %475, align 8, !tbaa !40
  %476 = add nuw nsw i64 %333, 1
  %477 = icmp eq i64 %476, %295
  br i1 %477, label %501, label %332, !llvm.loop !51

478:                                              ; preds = %357, %478
  %479 = phi double [ %493, %478 ], [ %364, %357 ]
  %480 = phi double [ %498, %478 ], [ %356, %357 ]
  %481 = phi i64 [ %491, %478 ], [ 0, %357 ]
  %482 = phi i64 [ %499, %478 ], [ 0, %357 ]
  %483 = or disjoint i64 %481, 1
  %484 = getelementptr <8 x double>, ptr %359, i64 %483
  %485 = load double, ptr %484, align 8, !tbaa !40
  %486 = fsub double %485, %479
  %487 = fmul double %361, %486
  %488 = getelementptr <8 x double>, ptr %363, i64 %481
  %489 = load double, ptr %488, align 8, !tbaa !40
  %490 = tail call double @llvm.fmuladd.f64(double %487, double %489, double %480)
  %491 = add nuw nsw i64 %481, 2
  %492 = getelementptr <8 x double>, ptr %359, i64 %491
  %493 = load double, ptr %492, align 8, !tbaa !40
  %494 = fsub double %493, %485
  %495 = fmul double %361, %494
  %496 = getelementptr <8 x double>, ptr %363, i64 %483
  %497 = load double, ptr %496, align 8, !tbaa !40
  %498 = tail call double @llvm.fmuladd.f64(double %495, double %497, double %490)
  %499 = add i64 %482, 2
  %500 = icmp eq i64 %499, %330
  br i1 %500, label %407, label %478, !llvm.loop !52

501:                                              ; preds = %421, %279
  %502 = load i64, ptr %132, align 8, !tbaa !27
  %503 = load i64, ptr %0, align 8, !tbaa !37
  %504 = icmp slt i64 %502, %503
  br i1 %504, label %506, label %505

505:                                              ; preds = %501
  store i64 0, ptr %110, align 8, !tbaa !30
  store i64 0, ptr %133, align 8, !tbaa !30
  store i64 0, ptr %223, align 8, !tbaa !30
  store i64 0, ptr %224, align 8, !tbaa !30
  store i64 0, ptr %225, align 8, !tbaa !30
  store i64 0, ptr %226, align 8, !tbaa !30
  store i64 0, ptr %227, align 8, !tbaa !30
  store i64 0, ptr %228, align 8, !tbaa !30
  store i64 0, ptr %229, align 8, !tbaa !30
  store i64 0, ptr %230, align 8, !tbaa !30
  store i64 0, ptr %231, align 8, !tbaa !30
  store i64 0, ptr %232, align 8, !tbaa !30
  store i64 0, ptr %233, align 8, !tbaa !30
  store i64 0, ptr %234, align 8, !tbaa !30
  store i64 0, ptr %235, align 8, !tbaa !30
  store i64 0, ptr %236, align 8, !tbaa !30
  br label %517

506:                                              ; preds = %501
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  %507 = load i64, ptr %110, align 8, !tbaa !30
  %508 = icmp eq i64 %507, 0
  br i1 %508, label %517, label %509

509:                                              ; preds = %506
  %510 = load double, ptr %118, align 8, !tbaa !40
  %511 = fcmp oeq double %510, 0.000000e+00
  br i1 %511, label %517, label %512

512:                                              ; preds = %4844, %4886, %4883, %3272, %3557, %509
  %513 = load i64, ptr %111, align 8, !tbaa !38
  %514 = load i64, ptr %112, align 8, !tbaa !39
  %515 = sub nsw i64 %513, %514
  %516 = icmp slt i64 %515, 16
  br i1 %516, label %4887, label %273, !llvm.loop !53

517:                                              ; preds = %505, %506, %276, %273, %509
  %518 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %519 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %518)
  %520 = icmp eq i64 %519, 0
  br i1 %520, label %4887, label %521

521:                                              ; preds = %517
  %522 = load <8 x i64>, ptr %133, align 64, !tbaa !26
  %523 = and <8 x i64> %522, %518
  %524 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %523)
  %525 = icmp eq i64 %524, 0
  %526 = load i64, ptr %144, align 8, !tbaa !20
  br i1 %525, label %1107, label %527

527:                                              ; preds = %521
  %528 = load <8 x double>, ptr %134, align 64, !tbaa !26
  %529 = load <8 x double>, ptr %135, align 64, !tbaa !26
  %530 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %531 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %532 = fsub <8 x double> %530, %531
  %533 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %529, <8 x double> %532, <8 x double> %528)
  %534 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %535 = fcmp une <8 x double> %534, splat (double 2.000000e+00)
  %536 = select <8 x i1> %535, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %537 = fmul <8 x double> %533, %536
  %538 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %539 = load <8 x double>, ptr %140, align 64, !tbaa !26
  %540 = fcmp olt <8 x double> %538, %539
  %541 = select <8 x i1> %540, <8 x double> %538, <8 x double> %539
  %542 = fcmp olt <8 x double> %541, %537
  %543 = select <8 x i1> %542, <8 x double> %541, <8 x double> %537
  %544 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %545 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %546 = fadd <8 x double> %544, %545
  %547 = fsub <8 x double> %546, %530
  %548 = fmul <8 x double> %543, splat (double 0x3FF000010C6F7A0B)
  %549 = fcmp ole <8 x double> %547, %548
  %550 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %551 = fcmp ogt <8 x double> %550, %543
  %552 = select <8 x i1> %551, <8 x double> %550, <8 x double> %543
  %553 = icmp ne <8 x i64> %523, zeroinitializer
  %554 = select <8 x i1> %549, <8 x i1> %553, <8 x i1> zeroinitializer
  %555 = select <8 x i1> %554, <8 x double> %552, <8 x double> %550
  store <8 x double> %555, ptr %143, align 64, !tbaa !26
  %556 = fmul <8 x double> %543, splat (double 2.000000e+00)
  %557 = fcmp uge <8 x double> %547, %556
  %558 = fmul <8 x double> %547, splat (double 5.000000e-01)
  %559 = select <8 x i1> %557, <8 x double> %543, <8 x double> %558
  %560 = select <8 x i1> %549, <8 x double> %547, <8 x double> %559
  %561 = icmp sgt i64 %526, 0
  %562 = load <8 x double>, ptr %145, align 64, !tbaa !26
  br i1 %561, label %563, label %610

563:                                              ; preds = %527
  %564 = load ptr, ptr %129, align 8, !tbaa !28
  br label %565

565:                                              ; preds = %563, %565
  %566 = phi <8 x double> [ %560, %563 ], [ %607, %565 ]
  %567 = phi i64 [ 0, %563 ], [ %608, %565 ]
  %568 = getelementptr inbounds nuw %struct.Piece, ptr %564, i64 %567
  %569 = getelementptr inbounds nuw i8, ptr %568, i64 3776
  %570 = load <8 x double>, ptr %569, align 64, !tbaa !26
  %571 = getelementptr inbounds nuw i8, ptr %568, i64 1472
  %572 = load <8 x double>, ptr %571, align 64, !tbaa !26
  %573 = fsub <8 x double> %570, %572
  %574 = getelementptr inbounds nuw i8, ptr %568, i64 832
  %575 = load <8 x double>, ptr %574, align 64, !tbaa !26
  %576 = fmul <8 x double> %573, %575
  %577 = getelementptr inbounds nuw i8, ptr %568, i64 1600
  %578 = load <8 x double>, ptr %577, align 64, !tbaa !26
  %579 = getelementptr inbounds nuw i8, ptr %568, i64 4032
  %580 = load <8 x double>, ptr %579, align 64, !tbaa !26
  %581 = fsub <8 x double> %578, %580
  %582 = getelementptr inbounds nuw i8, ptr %568, i64 7360
  %583 = load <8 x i64>, ptr %582, align 64, !tbaa !26
  %584 = getelementptr inbounds nuw i8, ptr %568, i64 7296
  %585 = load <8 x double>, ptr %584, align 64, !tbaa !26
  %586 = fcmp une <8 x double> %585, splat (double 1.000000e+00)
  %587 = select <8 x i1> %586, <8 x double> %576, <8 x double> %581
  %588 = getelementptr inbounds nuw i8, ptr %568, i64 3840
  %589 = load <8 x double>, ptr %588, align 64, !tbaa !26
  %590 = icmp eq <8 x i64> %583, zeroinitializer
  %591 = select <8 x i1> %590, <8 x double> %589, <8 x double> %587
  %592 = getelementptr inbounds nuw i8, ptr %568, i64 5632
  %593 = load <8 x double>, ptr %592, align 64, !tbaa !26
  %594 = getelementptr inbounds nuw i8, ptr %568, i64 7168
  %595 = load <8 x double>, ptr %594, align 64, !tbaa !26
  %596 = fdiv <8 x double> %595, %562
  %597 = select <8 x i1> %590, <8 x double> %596, <8 x double> zeroinitializer
  %598 = fsub <8 x double> %593, %597
  %599 = fcmp ule <8 x double> %591, zeroinitializer
  %600 = fcmp ule <8 x double> %598, zeroinitializer
  %601 = or <8 x i1> %599, %600
  %602 = fdiv <8 x double> %591, %598
  %603 = fcmp ogt <8 x double> %602, splat (double 1.000000e-03)
  %604 = select <8 x i1> %603, <8 x double> %602, <8 x double> splat (double 1.000000e-03)
  %605 = fcmp olt <8 x double> %566, %604
  %606 = select <8 x i1> %601, <8 x i1> splat (i1 true), <8 x i1> %605
  %607 = select <8 x i1> %606, <8 x double> %566, <8 x double> %604
  %608 = add nuw nsw i64 %567, 1
  %609 = icmp eq i64 %608, %526
  br i1 %609, label %610, label %565, !llvm.loop !54

610:                                              ; preds = %565, %527
  %611 = phi <8 x double> [ %560, %527 ], [ %607, %565 ]
  %612 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %611)
  %613 = insertelement <8 x double> poison, double %612, i64 0
  %614 = shufflevector <8 x double> %613, <8 x double> poison, <8 x i32> zeroinitializer
  %615 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %616 = icmp eq <8 x i64> %523, zeroinitializer
  %617 = select <8 x i1> %616, <8 x double> %615, <8 x double> %614
  store <8 x double> %617, ptr %146, align 64, !tbaa !26
  %618 = load <8 x i64>, ptr %147, align 64, !tbaa !26
  %619 = fdiv <8 x double> %617, %562
  %620 = fdiv <8 x double> splat (double 1.000000e+00), %617
  %621 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %619, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %622 = fadd <8 x double> %619, splat (double 1.000000e+00)
  %623 = fdiv <8 x double> %621, %622
  %624 = fmul <8 x double> %620, %623
  %625 = icmp eq <8 x i64> %618, zeroinitializer
  %626 = select <8 x i1> %625, <8 x double> %624, <8 x double> %620
  %627 = fneg <8 x double> %620
  %628 = fneg <8 x double> %622
  %629 = fmul <8 x double> %620, %628
  %630 = select <8 x i1> %625, <8 x double> %629, <8 x double> %627
  %631 = fmul <8 x double> %619, %619
  %632 = fdiv <8 x double> %631, %622
  %633 = fmul <8 x double> %620, %632
  %634 = select <8 x i1> %625, <8 x double> %633, <8 x double> zeroinitializer
  %635 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %636 = select <8 x i1> %616, <8 x double> %635, <8 x double> %626
  store <8 x double> %636, ptr %148, align 64, !tbaa !26
  %637 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %638 = select <8 x i1> %616, <8 x double> %637, <8 x double> %630
  store <8 x double> %638, ptr %149, align 64, !tbaa !26
  %639 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %640 = select <8 x i1> %616, <8 x double> %639, <8 x double> %634
  store <8 x double> %640, ptr %150, align 64, !tbaa !26
  %641 = select <8 x i1> %625, <8 x double> %619, <8 x double> zeroinitializer
  %642 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %643 = load <8 x double>, ptr %153, align 64, !tbaa !26
  %644 = fsub <8 x double> %642, %643
  %645 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %644, <8 x double> %642)
  %646 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %647 = select <8 x i1> %616, <8 x double> %646, <8 x double> %645
  %648 = load <8 x double>, ptr %238, align 64, !tbaa !26
  %649 = load <8 x double>, ptr %239, align 64, !tbaa !26
  %650 = fsub <8 x double> %648, %649
  %651 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %650, <8 x double> %648)
  %652 = load <8 x double>, ptr %237, align 64, !tbaa !26
  %653 = select <8 x i1> %616, <8 x double> %652, <8 x double> %651
  store <8 x double> %653, ptr %237, align 64, !tbaa !26
  %654 = load <8 x double>, ptr %241, align 64, !tbaa !26
  %655 = load <8 x double>, ptr %242, align 64, !tbaa !26
  %656 = fsub <8 x double> %654, %655
  %657 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %656, <8 x double> %654)
  %658 = load <8 x double>, ptr %240, align 64, !tbaa !26
  %659 = select <8 x i1> %616, <8 x double> %658, <8 x double> %657
  store <8 x double> %659, ptr %240, align 64, !tbaa !26
  %660 = load <8 x double>, ptr %244, align 64, !tbaa !26
  %661 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %662 = fsub <8 x double> %660, %661
  %663 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %662, <8 x double> %660)
  %664 = load <8 x double>, ptr %243, align 64, !tbaa !26
  %665 = select <8 x i1> %616, <8 x double> %664, <8 x double> %663
  store <8 x double> %665, ptr %243, align 64, !tbaa !26
  %666 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %667 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %668 = fsub <8 x double> %666, %667
  %669 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %668, <8 x double> %666)
  %670 = load <8 x double>, ptr %246, align 64, !tbaa !26
  %671 = select <8 x i1> %616, <8 x double> %670, <8 x double> %669
  store <8 x double> %671, ptr %246, align 64, !tbaa !26
  %672 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %673 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %674 = fsub <8 x double> %672, %673
  %675 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %674, <8 x double> %672)
  %676 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %677 = select <8 x i1> %616, <8 x double> %676, <8 x double> %675
  store <8 x double> %677, ptr %249, align 64, !tbaa !26
  %678 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %679 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %680 = icmp eq <8 x i64> %678, zeroinitializer
  %681 = select <8 x i1> %680, <8 x double> zeroinitializer, <8 x double> %679
  %682 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %683 = fsub <8 x double> %681, %682
  %684 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %685 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %686 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %687 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %686, <8 x double> %642, <8 x double> %685)
  %688 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %689 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %684, <8 x double> %687, <8 x double> %688)
  %690 = fdiv <8 x double> %683, %689
  %691 = and <8 x i64> %618, %523
  %692 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %693 = fcmp une <8 x double> %692, zeroinitializer
  %694 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %695 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %694, <8 x double> %690, <8 x double> %642)
  %696 = icmp eq <8 x i64> %691, zeroinitializer
  %697 = select <8 x i1> %693, <8 x i1> splat (i1 true), <8 x i1> %696
  %698 = select <8 x i1> %697, <8 x double> %647, <8 x double> %695
  store <8 x double> %698, ptr %151, align 64, !tbaa !26
  %699 = load i64, ptr %144, align 8, !tbaa !20
  %700 = icmp sgt i64 %699, 0
  br i1 %700, label %701, label %1017

701:                                              ; preds = %610, %1000
  %702 = phi i64 [ %1001, %1000 ], [ 0, %610 ]
  %703 = load ptr, ptr %129, align 8, !tbaa !28
  %704 = getelementptr inbounds nuw %struct.Piece, ptr %703, i64 %702
  %705 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %706 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %707 = getelementptr inbounds nuw i8, ptr %704, i64 7424
  %708 = load <8 x i64>, ptr %707, align 64, !tbaa !26
  %709 = fdiv <8 x double> %705, %706
  %710 = fdiv <8 x double> splat (double 1.000000e+00), %705
  %711 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %709, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %712 = fadd <8 x double> %709, splat (double 1.000000e+00)
  %713 = fdiv <8 x double> %711, %712
  %714 = fmul <8 x double> %710, %713
  %715 = icmp eq <8 x i64> %708, zeroinitializer
  %716 = select <8 x i1> %715, <8 x double> %714, <8 x double> %710
  %717 = fneg <8 x double> %710
  %718 = fneg <8 x double> %712
  %719 = fmul <8 x double> %710, %718
  %720 = select <8 x i1> %715, <8 x double> %719, <8 x double> %717
  %721 = fmul <8 x double> %709, %709
  %722 = fdiv <8 x double> %721, %712
  %723 = fmul <8 x double> %710, %722
  %724 = select <8 x i1> %715, <8 x double> %723, <8 x double> zeroinitializer
  %725 = getelementptr inbounds nuw i8, ptr %704, i64 5248
  %726 = load <8 x double>, ptr %725, align 64, !tbaa !26
  %727 = select <8 x i1> %616, <8 x double> %726, <8 x double> %716
  store <8 x double> %727, ptr %725, align 64, !tbaa !26
  %728 = getelementptr inbounds nuw i8, ptr %704, i64 5312
  %729 = load <8 x double>, ptr %728, align 64, !tbaa !26
  %730 = select <8 x i1> %616, <8 x double> %729, <8 x double> %720
  store <8 x double> %730, ptr %728, align 64, !tbaa !26
  %731 = getelementptr inbounds nuw i8, ptr %704, i64 5376
  %732 = load <8 x double>, ptr %731, align 64, !tbaa !26
  %733 = select <8 x i1> %616, <8 x double> %732, <8 x double> %724
  store <8 x double> %733, ptr %731, align 64, !tbaa !26
  %734 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %735 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %736 = fdiv <8 x double> %734, %735
  %737 = select <8 x i1> %715, <8 x double> %736, <8 x double> zeroinitializer
  %738 = getelementptr inbounds nuw i8, ptr %704, i64 2944
  %739 = getelementptr inbounds nuw i8, ptr %704, i64 3712
  %740 = getelementptr inbounds nuw i8, ptr %704, i64 4480
  br label %1004

741:                                              ; preds = %1004
  %742 = load <8 x double>, ptr %738, align 64, !tbaa !26
  %743 = load <8 x double>, ptr %739, align 64, !tbaa !26
  %744 = fcmp olt <8 x double> %742, %743
  %745 = select <8 x i1> %744, <8 x double> %742, <8 x double> %743
  %746 = load <8 x double>, ptr %704, align 64, !tbaa !26
  %747 = fmul <8 x double> %746, splat (double 3.000000e-01)
  %748 = fcmp ogt <8 x double> %745, %747
  %749 = select <8 x i1> %748, <8 x double> %745, <8 x double> %747
  %750 = select <8 x i1> %616, <8 x double> %742, <8 x double> %749
  store <8 x double> %750, ptr %738, align 64, !tbaa !26
  %751 = getelementptr inbounds nuw i8, ptr %704, i64 5632
  %752 = getelementptr inbounds nuw i8, ptr %704, i64 3456
  %753 = load <8 x double>, ptr %752, align 64, !tbaa !26
  %754 = fcmp ogt <8 x double> %753, zeroinitializer
  %755 = select <8 x i1> %754, <8 x double> %753, <8 x double> zeroinitializer
  %756 = load <8 x double>, ptr %751, align 64, !tbaa !26
  %757 = select <8 x i1> %616, <8 x double> %756, <8 x double> %755
  store <8 x double> %757, ptr %751, align 64, !tbaa !26
  %758 = getelementptr inbounds nuw i8, ptr %704, i64 384
  %759 = load <8 x double>, ptr %758, align 64, !tbaa !26
  %760 = getelementptr inbounds nuw i8, ptr %704, i64 448
  %761 = load <8 x double>, ptr %760, align 64, !tbaa !26
  %762 = getelementptr inbounds nuw i8, ptr %704, i64 512
  %763 = load <8 x double>, ptr %762, align 64, !tbaa !26
  %764 = getelementptr inbounds nuw i8, ptr %704, i64 640
  %765 = load <8 x double>, ptr %764, align 64, !tbaa !26
  %766 = getelementptr inbounds nuw i8, ptr %704, i64 768
  %767 = load <8 x double>, ptr %766, align 64, !tbaa !26
  %768 = getelementptr inbounds nuw i8, ptr %704, i64 832
  %769 = getelementptr inbounds nuw i8, ptr %704, i64 1536
  %770 = load <8 x double>, ptr %769, align 64, !tbaa !26
  %771 = getelementptr inbounds nuw i8, ptr %704, i64 4416
  %772 = load <8 x double>, ptr %771, align 64, !tbaa !26
  %773 = fsub <8 x double> %772, %770
  %774 = getelementptr inbounds nuw i8, ptr %704, i64 5184
  %775 = load <8 x double>, ptr %774, align 64, !tbaa !26
  %776 = fsub <8 x double> %775, %770
  %777 = load <8 x double>, ptr %728, align 64, !tbaa !26
  %778 = load <8 x double>, ptr %731, align 64, !tbaa !26
  %779 = fmul <8 x double> %773, %777
  %780 = fmul <8 x double> %776, %778
  %781 = fmul <8 x double> %770, %777
  %782 = fmul <8 x double> %765, %781
  %783 = fmul <8 x double> %770, %778
  %784 = fmul <8 x double> %765, %783
  %785 = getelementptr inbounds nuw i8, ptr %704, i64 7568
  %786 = load ptr, ptr %785, align 16, !tbaa !44
  %787 = getelementptr inbounds nuw i8, ptr %704, i64 7576
  %788 = load ptr, ptr %787, align 8, !tbaa !55
  %789 = getelementptr inbounds nuw i8, ptr %704, i64 7656
  %790 = load ptr, ptr %789, align 8, !tbaa !46
  %791 = getelementptr inbounds nuw i8, ptr %704, i64 7560
  %792 = load ptr, ptr %791, align 8, !tbaa !56
  %793 = getelementptr inbounds nuw i8, ptr %704, i64 7584
  %794 = load ptr, ptr %793, align 32, !tbaa !57
  %795 = load i64, ptr %119, align 16, !tbaa !21
  %796 = icmp sgt i64 %795, 0
  br i1 %796, label %797, label %799

797:                                              ; preds = %741
  %798 = getelementptr inbounds nuw i8, ptr %704, i64 7552
  br label %812

799:                                              ; preds = %843, %741
  %800 = fmul <8 x double> %767, %777
  %801 = fmul <8 x double> %767, %778
  %802 = getelementptr inbounds nuw i8, ptr %704, i64 7736
  %803 = load ptr, ptr %802, align 8, !tbaa !47
  %804 = getelementptr inbounds nuw i8, ptr %704, i64 7744
  %805 = load ptr, ptr %804, align 64, !tbaa !58
  %806 = load i64, ptr %120, align 8, !tbaa !22
  %807 = icmp sgt i64 %806, 0
  br i1 %807, label %808, label %877

808:                                              ; preds = %799
  %809 = getelementptr inbounds nuw i8, ptr %704, i64 7688
  %810 = getelementptr inbounds nuw i8, ptr %704, i64 7696
  %811 = getelementptr inbounds nuw i8, ptr %704, i64 7704
  br label %850

812:                                              ; preds = %797, %843
  %813 = phi i64 [ 0, %797 ], [ %847, %843 ]
  %814 = getelementptr inbounds nuw <8 x double>, ptr %786, i64 %813
  %815 = load <8 x double>, ptr %814, align 64, !tbaa !26
  %816 = getelementptr inbounds nuw <8 x double>, ptr %788, i64 %813
  %817 = load <8 x double>, ptr %816, align 64, !tbaa !26
  %818 = fsub <8 x double> %815, %817
  %819 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %737, <8 x double> %818, <8 x double> %815)
  %820 = getelementptr inbounds nuw <8 x double>, ptr %792, i64 %813
  %821 = load <8 x double>, ptr %820, align 64, !tbaa !26
  %822 = select <8 x i1> %616, <8 x double> %821, <8 x double> %819
  store <8 x double> %822, ptr %820, align 64, !tbaa !26
  %823 = load i64, ptr %798, align 64, !tbaa !31
  %824 = icmp slt i64 %813, %823
  %825 = getelementptr inbounds nuw <8 x double>, ptr %790, i64 %813
  %826 = load <8 x double>, ptr %825, align 64, !tbaa !26
  br i1 %824, label %827, label %830

827:                                              ; preds = %812
  %828 = fmul <8 x double> %784, %817
  %829 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %782, <8 x double> %815, <8 x double> %828)
  br label %843

830:                                              ; preds = %812
  %831 = fmul <8 x double> %763, %815
  %832 = fmul <8 x double> %831, splat (double 0x3FD5555555555555)
  %833 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %761, <8 x double> splat (double 5.000000e-01), <8 x double> %832)
  %834 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %815, <8 x double> %833, <8 x double> %759)
  %835 = fmul <8 x double> %815, %834
  %836 = fmul <8 x double> %763, %817
  %837 = fmul <8 x double> %836, splat (double 0x3FD5555555555555)
  %838 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %761, <8 x double> splat (double 5.000000e-01), <8 x double> %837)
  %839 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %817, <8 x double> %838, <8 x double> %759)
  %840 = fmul <8 x double> %817, %839
  %841 = fmul <8 x double> %780, %840
  %842 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %779, <8 x double> %835, <8 x double> %841)
  br label %843

843:                                              ; preds = %830, %827
  %844 = phi <8 x double> [ %842, %830 ], [ %829, %827 ]
  %845 = fmul <8 x double> %844, %826
  %846 = getelementptr inbounds nuw <8 x double>, ptr %794, i64 %813
  store <8 x double> %845, ptr %846, align 64, !tbaa !26
  %847 = add nuw nsw i64 %813, 1
  %848 = load i64, ptr %119, align 16, !tbaa !21
  %849 = icmp slt i64 %847, %848
  br i1 %849, label %812, label %799, !llvm.loop !59

850:                                              ; preds = %808, %850
  %851 = phi i64 [ 0, %808 ], [ %852, %850 ]
  %852 = add nuw nsw i64 %851, 1
  %853 = getelementptr inbounds nuw <8 x double>, ptr %803, i64 %852
  %854 = load <8 x double>, ptr %853, align 64, !tbaa !26
  %855 = getelementptr inbounds nuw <8 x double>, ptr %803, i64 %851
  %856 = load <8 x double>, ptr %855, align 64, !tbaa !26
  %857 = fsub <8 x double> %854, %856
  %858 = load ptr, ptr %809, align 8, !tbaa !48
  %859 = getelementptr inbounds nuw <8 x double>, ptr %858, i64 %851
  %860 = load <8 x double>, ptr %859, align 64, !tbaa !26
  %861 = fmul <8 x double> %857, %860
  %862 = getelementptr inbounds nuw <8 x double>, ptr %805, i64 %852
  %863 = load <8 x double>, ptr %862, align 64, !tbaa !26
  %864 = getelementptr inbounds nuw <8 x double>, ptr %805, i64 %851
  %865 = load <8 x double>, ptr %864, align 64, !tbaa !26
  %866 = fsub <8 x double> %863, %865
  %867 = load ptr, ptr %810, align 16, !tbaa !60
  %868 = getelementptr inbounds nuw <8 x double>, ptr %867, i64 %851
  %869 = load <8 x double>, ptr %868, align 64, !tbaa !26
  %870 = fmul <8 x double> %866, %869
  %871 = fmul <8 x double> %801, %870
  %872 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %800, <8 x double> %861, <8 x double> %871)
  %873 = load ptr, ptr %811, align 8, !tbaa !61
  %874 = getelementptr inbounds nuw <8 x double>, ptr %873, i64 %851
  store <8 x double> %872, ptr %874, align 64, !tbaa !26
  %875 = load i64, ptr %120, align 8, !tbaa !22
  %876 = icmp slt i64 %852, %875
  br i1 %876, label %850, label %877, !llvm.loop !62

877:                                              ; preds = %850, %799
  %878 = getelementptr inbounds nuw i8, ptr %704, i64 1664
  %879 = load <8 x double>, ptr %878, align 64, !tbaa !26
  %880 = fcmp ogt <8 x double> %879, zeroinitializer
  %881 = bitcast <8 x i1> %880 to i8
  %882 = icmp eq i8 %881, 0
  br i1 %882, label %883, label %887

883:                                              ; preds = %877
  %884 = getelementptr inbounds nuw i8, ptr %704, i64 7168
  %885 = load <8 x double>, ptr %884, align 64, !tbaa !26
  %886 = select <8 x i1> %616, <8 x double> %885, <8 x double> zeroinitializer
  store <8 x double> %886, ptr %884, align 64, !tbaa !26
  br label %1000

887:                                              ; preds = %877
  %888 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %889 = fneg <8 x double> %888
  %890 = getelementptr inbounds nuw i8, ptr %704, i64 1728
  %891 = load <8 x double>, ptr %890, align 64, !tbaa !26
  %892 = fdiv <8 x double> %889, %891
  %893 = fcmp ogt <8 x double> %892, splat (double -7.000000e+02)
  %894 = select <8 x i1> %893, <8 x double> %892, <8 x double> splat (double -7.000000e+02)
  %895 = fcmp olt <8 x double> %894, splat (double 7.000000e+02)
  %896 = select <8 x i1> %895, <8 x double> %894, <8 x double> splat (double 7.000000e+02)
  %897 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %896, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %898 = fadd <8 x double> %897, splat (double 0xC338000000000000)
  %899 = fneg <8 x double> %898
  %900 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %899, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %896)
  %901 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %899, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %900)
  %902 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %901, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %903 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %902, <8 x double> %901, <8 x double> splat (double 0x3E5AE64567F544E4))
  %904 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %903, <8 x double> %901, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %905 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %904, <8 x double> %901, <8 x double> splat (double 0x3EC71DE3A556C734))
  %906 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %905, <8 x double> %901, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %907 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %906, <8 x double> %901, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %908 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %907, <8 x double> %901, <8 x double> splat (double 0x3F56C16C16C16C17))
  %909 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %908, <8 x double> %901, <8 x double> splat (double 0x3F81111111111111))
  %910 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %909, <8 x double> %901, <8 x double> splat (double 0x3FA5555555555555))
  %911 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %910, <8 x double> %901, <8 x double> splat (double 0x3FC5555555555555))
  %912 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %911, <8 x double> %901, <8 x double> splat (double 5.000000e-01))
  %913 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %912, <8 x double> %901, <8 x double> splat (double 1.000000e+00))
  %914 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %913, <8 x double> %901, <8 x double> splat (double 1.000000e+00))
  %915 = bitcast <8 x double> %897 to <8 x i64>
  %916 = shl <8 x i64> %915, splat (i64 52)
  %917 = bitcast <8 x double> %914 to <8 x i64>
  %918 = add <8 x i64> %916, %917
  %919 = bitcast <8 x i64> %918 to <8 x double>
  %920 = fsub <8 x double> splat (double 1.000000e+00), %919
  %921 = load <8 x double>, ptr %771, align 64, !tbaa !26
  %922 = getelementptr inbounds nuw i8, ptr %704, i64 7552
  %923 = load i64, ptr %922, align 64, !tbaa !31
  %924 = load i64, ptr %119, align 16, !tbaa !21
  %925 = icmp slt i64 %923, %924
  br i1 %925, label %926, label %931

926:                                              ; preds = %887
  %927 = getelementptr inbounds nuw i8, ptr %704, i64 1792
  %928 = getelementptr inbounds nuw i8, ptr %704, i64 1856
  %929 = getelementptr inbounds nuw i8, ptr %704, i64 7600
  %930 = getelementptr inbounds nuw i8, ptr %704, i64 7592
  br label %943

931:                                              ; preds = %943, %887
  %932 = phi <8 x double> [ zeroinitializer, %887 ], [ %981, %943 ]
  %933 = phi <8 x double> [ zeroinitializer, %887 ], [ %996, %943 ]
  %934 = getelementptr inbounds nuw i8, ptr %704, i64 3776
  %935 = load <8 x double>, ptr %934, align 64, !tbaa !26
  %936 = fsub <8 x double> %935, %921
  %937 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %932, <8 x double> %936, <8 x double> %933)
  %938 = getelementptr inbounds nuw i8, ptr %704, i64 7168
  %939 = load <8 x double>, ptr %768, align 64, !tbaa !26
  %940 = fmul <8 x double> %939, %937
  %941 = load <8 x double>, ptr %938, align 64, !tbaa !26
  %942 = select <8 x i1> %616, <8 x double> %941, <8 x double> %940
  store <8 x double> %942, ptr %938, align 64, !tbaa !26
  br label %1000

943:                                              ; preds = %926, %943
  %944 = phi <8 x double> [ zeroinitializer, %926 ], [ %996, %943 ]
  %945 = phi i64 [ %923, %926 ], [ %997, %943 ]
  %946 = load ptr, ptr %785, align 16, !tbaa !44
  %947 = getelementptr inbounds <8 x double>, ptr %946, i64 %945
  %948 = load <8 x double>, ptr %947, align 64, !tbaa !26
  %949 = load ptr, ptr %791, align 8, !tbaa !56
  %950 = getelementptr inbounds <8 x double>, ptr %949, i64 %945
  %951 = load <8 x double>, ptr %950, align 64, !tbaa !26
  %952 = fadd <8 x double> %948, %951
  %953 = load <8 x double>, ptr %927, align 64, !tbaa !26
  %954 = fneg <8 x double> %953
  %955 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %952, <8 x double> splat (double 5.000000e-01), <8 x double> %954)
  %956 = load <8 x double>, ptr %928, align 64, !tbaa !26
  %957 = fmul <8 x double> %955, %956
  %958 = fcmp ogt <8 x double> %957, splat (double -5.000000e+00)
  %959 = select <8 x i1> %958, <8 x double> %957, <8 x double> splat (double -5.000000e+00)
  %960 = fcmp olt <8 x double> %959, splat (double 5.000000e+00)
  %961 = select <8 x i1> %960, <8 x double> %959, <8 x double> splat (double 5.000000e+00)
  %962 = fmul <8 x double> %961, %961
  %963 = fadd <8 x double> %962, splat (double 3.780000e+02)
  %964 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %962, <8 x double> %963, <8 x double> splat (double 1.732500e+04))
  %965 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %962, <8 x double> %964, <8 x double> splat (double 1.351350e+05))
  %966 = fmul <8 x double> %961, %965
  %967 = load <8 x double>, ptr %878, align 64, !tbaa !26
  %968 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %962, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %969 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %962, <8 x double> %968, <8 x double> splat (double 6.237000e+04))
  %970 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %962, <8 x double> %969, <8 x double> splat (double 1.351350e+05))
  %971 = fdiv <8 x double> %966, %970
  %972 = fadd <8 x double> %971, splat (double 1.000000e+00)
  %973 = fmul <8 x double> %967, %972
  %974 = load ptr, ptr %929, align 16, !tbaa !45
  %975 = getelementptr inbounds <8 x double>, ptr %974, i64 %945
  %976 = load <8 x double>, ptr %975, align 64, !tbaa !26
  %977 = fadd <8 x double> %976, splat (double -1.000000e+00)
  %978 = fadd <8 x double> %977, %973
  %979 = fcmp ogt <8 x double> %978, zeroinitializer
  %980 = select <8 x i1> %979, <8 x double> %978, <8 x double> zeroinitializer
  %981 = fmul <8 x double> %920, %980
  %982 = load ptr, ptr %930, align 8, !tbaa !63
  %983 = getelementptr inbounds <8 x double>, ptr %982, i64 %945
  %984 = fsub <8 x double> %976, %981
  %985 = load <8 x double>, ptr %983, align 64, !tbaa !26
  %986 = select <8 x i1> %616, <8 x double> %985, <8 x double> %984
  store <8 x double> %986, ptr %983, align 64, !tbaa !26
  %987 = load ptr, ptr %789, align 8, !tbaa !46
  %988 = getelementptr inbounds <8 x double>, ptr %987, i64 %945
  %989 = load <8 x double>, ptr %988, align 64, !tbaa !26
  %990 = load i64, ptr %922, align 64, !tbaa !31
  %991 = icmp slt i64 %945, %990
  %992 = load <8 x double>, ptr %769, align 64, !tbaa !26
  %993 = fsub <8 x double> %921, %992
  %994 = select i1 %991, <8 x double> %992, <8 x double> %993
  %995 = fmul <8 x double> %989, %994
  %996 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %981, <8 x double> %995, <8 x double> %944)
  %997 = add nsw i64 %945, 1
  %998 = load i64, ptr %119, align 16, !tbaa !21
  %999 = icmp slt i64 %997, %998
  br i1 %999, label %943, label %931, !llvm.loop !64

1000:                                             ; preds = %883, %931
  %1001 = add nuw nsw i64 %702, 1
  %1002 = load i64, ptr %144, align 8, !tbaa !20
  %1003 = icmp slt i64 %1001, %1002
  br i1 %1003, label %701, label %1017, !llvm.loop !65

1004:                                             ; preds = %701, %1004
  %1005 = phi i64 [ 0, %701 ], [ %1015, %1004 ]
  %1006 = getelementptr inbounds nuw [12 x <8 x double>], ptr %738, i64 0, i64 %1005
  %1007 = getelementptr inbounds nuw [12 x <8 x double>], ptr %739, i64 0, i64 %1005
  %1008 = load <8 x double>, ptr %1007, align 64, !tbaa !26
  %1009 = getelementptr inbounds nuw [12 x <8 x double>], ptr %740, i64 0, i64 %1005
  %1010 = load <8 x double>, ptr %1009, align 64, !tbaa !26
  %1011 = fsub <8 x double> %1008, %1010
  %1012 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %737, <8 x double> %1011, <8 x double> %1008)
  %1013 = load <8 x double>, ptr %1006, align 64, !tbaa !26
  %1014 = select <8 x i1> %616, <8 x double> %1013, <8 x double> %1012
  store <8 x double> %1014, ptr %1006, align 64, !tbaa !26
  %1015 = add nuw nsw i64 %1005, 1
  %1016 = icmp eq i64 %1015, 11
  br i1 %1016, label %741, label %1004, !llvm.loop !66

1017:                                             ; preds = %1000, %610
  %1018 = phi i64 [ %699, %610 ], [ %1002, %1000 ]
  %1019 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %1020 = fcmp ogt <8 x double> %1019, zeroinitializer
  %1021 = select <8 x i1> %1020, <8 x i64> %523, <8 x i64> zeroinitializer
  %1022 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1021)
  %1023 = icmp eq i64 %1022, 0
  br i1 %1023, label %1107, label %1024

1024:                                             ; preds = %1017
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1021, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1025 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %1026 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %1027 = fadd <8 x double> %1025, %1026
  store <8 x double> %1027, ptr %9, align 64, !tbaa !26
  %1028 = load ptr, ptr %162, align 8
  %1029 = load ptr, ptr %164, align 8
  %1030 = load ptr, ptr %165, align 8
  br label %1031

1031:                                             ; preds = %1099, %1024
  %1032 = phi i64 [ 0, %1024 ], [ %1100, %1099 ]
  %1033 = getelementptr inbounds nuw i64, ptr %7, i64 %1032
  %1034 = load i64, ptr %1033, align 8, !tbaa !30
  %1035 = icmp eq i64 %1034, 0
  br i1 %1035, label %1099, label %1036

1036:                                             ; preds = %1031
  %1037 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %1032
  %1038 = load i64, ptr %1037, align 8, !tbaa !30
  %1039 = shl nsw i64 %1038, 1
  %1040 = getelementptr inbounds i64, ptr %1028, i64 %1039
  %1041 = load i64, ptr %1040, align 8, !tbaa !30
  %1042 = shl nuw nsw i64 %1032, 1
  %1043 = getelementptr inbounds nuw [16 x i64], ptr %163, i64 0, i64 %1042
  %1044 = getelementptr inbounds i64, ptr %1030, i64 %1039
  %1045 = load i64, ptr %1044, align 8, !tbaa !30
  %1046 = shl nsw i64 %1045, 4
  %1047 = getelementptr inbounds i8, ptr %1029, i64 %1046
  %1048 = getelementptr inbounds nuw double, ptr %9, i64 %1032
  %1049 = load double, ptr %1048, align 8, !tbaa !40
  %1050 = load i64, ptr %1043, align 8, !tbaa !30
  %1051 = getelementptr i8, ptr %1047, i64 -16
  %1052 = icmp sgt i64 %1050, 0
  br i1 %1052, label %1053, label %1062

1053:                                             ; preds = %1036, %1059
  %1054 = phi i64 [ %1060, %1059 ], [ %1050, %1036 ]
  %1055 = shl i64 %1054, 4
  %1056 = getelementptr i8, ptr %1051, i64 %1055
  %1057 = load double, ptr %1056, align 8, !tbaa !40
  %1058 = fcmp ugt double %1049, %1057
  br i1 %1058, label %1062, label %1059

1059:                                             ; preds = %1053
  %1060 = add nsw i64 %1054, -1
  store i64 %1060, ptr %1043, align 8, !tbaa !30
  %1061 = icmp sgt i64 %1054, 1
  br i1 %1061, label %1053, label %1062, !llvm.loop !67

1062:                                             ; preds = %1059, %1053, %1036
  %1063 = phi i64 [ %1050, %1036 ], [ 0, %1059 ], [ %1054, %1053 ]
  %1064 = icmp slt i64 %1063, %1041
  br i1 %1064, label %1065, label %1074

1065:                                             ; preds = %1062, %1071
  %1066 = phi i64 [ %1072, %1071 ], [ %1063, %1062 ]
  %1067 = shl nsw i64 %1066, 4
  %1068 = getelementptr inbounds i8, ptr %1047, i64 %1067
  %1069 = load double, ptr %1068, align 8, !tbaa !40
  %1070 = fcmp ule double %1049, %1069
  br i1 %1070, label %1079, label %1071

1071:                                             ; preds = %1065
  %1072 = add i64 %1066, 1
  store i64 %1072, ptr %1043, align 8, !tbaa !30
  %1073 = icmp eq i64 %1072, %1041
  br i1 %1073, label %1074, label %1065, !llvm.loop !68

1074:                                             ; preds = %1071, %1062
  %1075 = shl i64 %1041, 4
  %1076 = getelementptr i8, ptr %1047, i64 %1075
  %1077 = getelementptr i8, ptr %1076, i64 -8
  %1078 = load double, ptr %1077, align 8, !tbaa !40
  br label %1096

1079:                                             ; preds = %1065
  %1080 = shl nsw i64 %1066, 1
  %1081 = or disjoint i64 %1080, 1
  %1082 = getelementptr inbounds double, ptr %1047, i64 %1081
  %1083 = load double, ptr %1082, align 8, !tbaa !40
  %1084 = icmp sgt i64 %1066, 0
  br i1 %1084, label %1085, label %1096

1085:                                             ; preds = %1079
  %1086 = getelementptr inbounds nuw i8, ptr %1047, i64 %1067
  %1087 = getelementptr i8, ptr %1086, i64 -8
  %1088 = load double, ptr %1087, align 8, !tbaa !40
  %1089 = getelementptr i8, ptr %1086, i64 -16
  %1090 = load double, ptr %1089, align 8, !tbaa !40
  %1091 = fsub double %1049, %1090
  %1092 = fsub double %1069, %1090
  %1093 = fdiv double %1091, %1092
  %1094 = fsub double %1083, %1088
  %1095 = tail call double @llvm.fmuladd.f64(double %1093, double %1094, double %1088)
  br label %1096

1096:                                             ; preds = %1085, %1079, %1074
  %1097 = phi double [ %1095, %1085 ], [ %1083, %1079 ], [ %1078, %1074 ]
  %1098 = getelementptr inbounds nuw double, ptr %8, i64 %1032
  store double %1097, ptr %1098, align 8, !tbaa !40
  br label %1099

1099:                                             ; preds = %1096, %1031
  %1100 = add nuw nsw i64 %1032, 1
  %1101 = icmp eq i64 %1100, 8
  br i1 %1101, label %1102, label %1031, !llvm.loop !69

1102:                                             ; preds = %1099
  %1103 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1104 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %1105 = icmp eq <8 x i64> %1021, zeroinitializer
  %1106 = select <8 x i1> %1105, <8 x double> %1104, <8 x double> %1103
  store <8 x double> %1106, ptr %151, align 64, !tbaa !26
  br label %1107

1107:                                             ; preds = %1017, %1102, %521
  %1108 = phi i64 [ %1018, %1017 ], [ %1018, %1102 ], [ %526, %521 ]
  %1109 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %1110 = icmp eq <8 x i64> %523, zeroinitializer
  %1111 = select <8 x i1> %1110, <8 x double> %1109, <8 x double> zeroinitializer
  store <8 x double> %1111, ptr %166, align 64, !tbaa !26
  %1112 = icmp sgt i64 %1108, 0
  br i1 %1112, label %1118, label %1113

1113:                                             ; preds = %1107
  %1114 = load <8 x double>, ptr %170, align 64, !tbaa !26
  br label %1825

1115:                                             ; preds = %1817
  %1116 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %1117 = icmp sgt i64 %1821, 0
  br i1 %1117, label %1831, label %1825

1118:                                             ; preds = %1107, %1817
  %1119 = phi i64 [ %1820, %1817 ], [ 0, %1107 ]
  %1120 = load ptr, ptr %129, align 8, !tbaa !28
  %1121 = getelementptr inbounds nuw %struct.Piece, ptr %1120, i64 %1119
  %1122 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %1123 = getelementptr inbounds nuw i8, ptr %1121, i64 6400
  %1124 = load <8 x double>, ptr %1123, align 64, !tbaa !26
  %1125 = fsub <8 x double> %1122, %1124
  %1126 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1125)
  %1127 = getelementptr inbounds nuw i8, ptr %1121, i64 2176
  %1128 = load <8 x double>, ptr %1127, align 64, !tbaa !26
  %1129 = fcmp ogt <8 x double> %1128, splat (double 1.000000e-09)
  %1130 = select <8 x i1> %1129, <8 x double> %1128, <8 x double> splat (double 1.000000e-09)
  %1131 = fdiv <8 x double> %1126, %1130
  %1132 = getelementptr inbounds nuw i8, ptr %1121, i64 1024
  %1133 = load <8 x double>, ptr %1132, align 64, !tbaa !26
  %1134 = fcmp ule <8 x double> %1128, zeroinitializer
  %1135 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1131)
  %1136 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1135)
  %1137 = select <8 x i1> %1134, <8 x double> splat (double 1.000000e+00), <8 x double> %1136
  %1138 = fmul <8 x double> %1133, %1137
  %1139 = getelementptr inbounds nuw i8, ptr %1121, i64 1088
  %1140 = load <8 x double>, ptr %1139, align 64, !tbaa !26
  %1141 = getelementptr inbounds nuw i8, ptr %1121, i64 5632
  %1142 = load <8 x double>, ptr %1141, align 64, !tbaa !26
  %1143 = getelementptr inbounds nuw i8, ptr %1121, i64 5696
  %1144 = load <8 x double>, ptr %1143, align 64, !tbaa !26
  %1145 = fadd <8 x double> %1142, %1144
  %1146 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1140, <8 x double> %1145, <8 x double> %1138)
  %1147 = getelementptr inbounds nuw i8, ptr %1121, i64 1152
  %1148 = load <8 x double>, ptr %1147, align 64, !tbaa !26
  %1149 = fcmp olt <8 x double> %1146, %1148
  %1150 = select <8 x i1> %1149, <8 x double> %1146, <8 x double> %1148
  %1151 = getelementptr inbounds nuw i8, ptr %1121, i64 5312
  %1152 = load <8 x double>, ptr %1151, align 64, !tbaa !26
  %1153 = getelementptr inbounds nuw i8, ptr %1121, i64 3968
  %1154 = load <8 x double>, ptr %1153, align 64, !tbaa !26
  %1155 = getelementptr inbounds nuw i8, ptr %1121, i64 5376
  %1156 = load <8 x double>, ptr %1155, align 64, !tbaa !26
  %1157 = getelementptr inbounds nuw i8, ptr %1121, i64 4736
  %1158 = load <8 x double>, ptr %1157, align 64, !tbaa !26
  %1159 = fmul <8 x double> %1156, %1158
  %1160 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1152, <8 x double> %1154, <8 x double> %1159)
  %1161 = getelementptr inbounds nuw i8, ptr %1121, i64 1216
  %1162 = load <8 x double>, ptr %1161, align 64, !tbaa !26
  %1163 = fneg <8 x double> %1162
  %1164 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1163, <8 x double> %1160, <8 x double> %1150)
  %1165 = getelementptr inbounds nuw i8, ptr %1121, i64 5248
  %1166 = load <8 x double>, ptr %1165, align 64, !tbaa !26
  %1167 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1162, <8 x double> %1166, <8 x double> splat (double 1.000000e+00))
  %1168 = fdiv <8 x double> %1164, %1167
  %1169 = getelementptr inbounds nuw i8, ptr %1121, i64 7488
  %1170 = load <8 x i64>, ptr %1169, align 64, !tbaa !26
  %1171 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %1172 = icmp eq <8 x i64> %1170, zeroinitializer
  %1173 = select <8 x i1> %1172, <8 x double> %1122, <8 x double> %1171
  %1174 = getelementptr inbounds nuw i8, ptr %1121, i64 5504
  store <8 x double> %1173, ptr %1174, align 64, !tbaa !26
  %1175 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %1176 = select <8 x i1> %1172, <8 x double> %1168, <8 x double> %1175
  %1177 = getelementptr inbounds nuw i8, ptr %1121, i64 3200
  store <8 x double> %1176, ptr %1177, align 64, !tbaa !26
  %1178 = getelementptr inbounds nuw i8, ptr %1121, i64 896
  %1179 = load <8 x double>, ptr %1178, align 64, !tbaa !26
  %1180 = fcmp ule <8 x double> %1179, zeroinitializer
  %1181 = getelementptr inbounds nuw i8, ptr %1121, i64 2944
  %1182 = getelementptr inbounds nuw i8, ptr %1121, i64 3072
  %1183 = load <8 x double>, ptr %1182, align 64, !tbaa !26
  %1184 = fcmp ogt <8 x double> %1179, splat (double 1.000000e-30)
  %1185 = select <8 x i1> %1184, <8 x double> %1179, <8 x double> splat (double 1.000000e-30)
  %1186 = fdiv <8 x double> %1183, %1185
  %1187 = fcmp ogt <8 x double> %1186, zeroinitializer
  %1188 = select <8 x i1> %1187, <8 x double> %1186, <8 x double> zeroinitializer
  %1189 = fcmp olt <8 x double> %1188, splat (double 1.000000e+00)
  %1190 = select <8 x i1> %1189, <8 x double> %1188, <8 x double> splat (double 1.000000e+00)
  %1191 = select <8 x i1> %1180, <8 x double> zeroinitializer, <8 x double> %1190
  %1192 = getelementptr inbounds nuw i8, ptr %1121, i64 2112
  %1193 = load <8 x double>, ptr %1192, align 64, !tbaa !26
  %1194 = fmul <8 x double> %1191, splat (double 4.180000e+03)
  %1195 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1194, <8 x double> %1179, <8 x double> %1193)
  %1196 = getelementptr inbounds nuw i8, ptr %1121, i64 4288
  %1197 = load <8 x double>, ptr %1196, align 64, !tbaa !26
  %1198 = getelementptr inbounds nuw i8, ptr %1121, i64 5056
  %1199 = load <8 x double>, ptr %1198, align 64, !tbaa !26
  %1200 = fmul <8 x double> %1156, %1199
  %1201 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1152, <8 x double> %1197, <8 x double> %1200)
  %1202 = getelementptr inbounds nuw i8, ptr %1121, i64 7360
  %1203 = load <8 x i64>, ptr %1202, align 64, !tbaa !26
  %1204 = fcmp ule <8 x double> %1193, zeroinitializer
  %1205 = getelementptr inbounds nuw i8, ptr %1121, i64 6912
  store <8 x double> %1191, ptr %1205, align 64, !tbaa !26
  %1206 = fmul <8 x double> %1166, %1195
  %1207 = icmp eq <8 x i64> %1203, splat (i64 -1)
  %1208 = select <8 x i1> %1204, <8 x i1> splat (i1 true), <8 x i1> %1207
  %1209 = select <8 x i1> %1208, <8 x double> zeroinitializer, <8 x double> %1206
  %1210 = getelementptr inbounds nuw i8, ptr %1121, i64 6976
  store <8 x double> %1209, ptr %1210, align 64, !tbaa !26
  %1211 = fmul <8 x double> %1201, %1195
  %1212 = select <8 x i1> %1208, <8 x double> zeroinitializer, <8 x double> %1211
  %1213 = getelementptr inbounds nuw i8, ptr %1121, i64 7040
  store <8 x double> %1212, ptr %1213, align 64, !tbaa !26
  %1214 = load <8 x double>, ptr %1121, align 64, !tbaa !26
  %1215 = load <8 x double>, ptr %1181, align 64, !tbaa !26
  %1216 = fsub <8 x double> %1214, %1215
  %1217 = fsub <8 x double> splat (double 1.000000e+00), %1191
  %1218 = getelementptr inbounds nuw i8, ptr %1121, i64 1920
  %1219 = load <8 x double>, ptr %1218, align 64, !tbaa !26
  %1220 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1217, <8 x double> %1219, <8 x double> %1216)
  %1221 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %1222 = fdiv <8 x double> splat (double 1.000000e+00), %1221
  %1223 = getelementptr inbounds nuw i8, ptr %1121, i64 2240
  %1224 = load <8 x double>, ptr %1223, align 64, !tbaa !26
  %1225 = fcmp ogt <8 x double> %1224, splat (double 1.000000e-30)
  %1226 = select <8 x i1> %1225, <8 x double> %1224, <8 x double> splat (double 1.000000e-30)
  %1227 = fdiv <8 x double> %1220, %1226
  %1228 = fadd <8 x double> %1222, %1227
  %1229 = getelementptr inbounds nuw i8, ptr %1121, i64 7104
  store <8 x double> %1228, ptr %1229, align 64, !tbaa !26
  %1230 = getelementptr inbounds nuw i8, ptr %1121, i64 6784
  store <8 x double> %1142, ptr %1230, align 64, !tbaa !26
  %1231 = getelementptr inbounds nuw i8, ptr %1121, i64 2560
  %1232 = load <8 x double>, ptr %1231, align 64, !tbaa !26
  %1233 = getelementptr inbounds nuw i8, ptr %1121, i64 2624
  %1234 = load <8 x double>, ptr %1233, align 64, !tbaa !26
  %1235 = getelementptr inbounds nuw i8, ptr %1121, i64 2688
  %1236 = load <8 x double>, ptr %1235, align 64, !tbaa !26
  %1237 = getelementptr inbounds nuw i8, ptr %1121, i64 2752
  %1238 = load <8 x double>, ptr %1237, align 64, !tbaa !26
  %1239 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1238, <8 x double> %1236)
  %1240 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1239, <8 x double> %1234)
  %1241 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1240, <8 x double> %1232)
  %1242 = getelementptr inbounds nuw i8, ptr %1121, i64 3648
  store <8 x double> %1241, ptr %1242, align 64, !tbaa !26
  %1243 = getelementptr inbounds nuw i8, ptr %1121, i64 4416
  %1244 = load <8 x double>, ptr %1243, align 64, !tbaa !26
  %1245 = fmul <8 x double> %1152, %1244
  %1246 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1166, <8 x double> %1241, <8 x double> %1245)
  %1247 = getelementptr inbounds nuw i8, ptr %1121, i64 5184
  %1248 = load <8 x double>, ptr %1247, align 64, !tbaa !26
  %1249 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1156, <8 x double> %1248, <8 x double> %1246)
  %1250 = fmul <8 x double> %1249, splat (double 5.000000e-01)
  %1251 = getelementptr inbounds nuw i8, ptr %1121, i64 6720
  store <8 x double> %1250, ptr %1251, align 64, !tbaa !26
  %1252 = getelementptr inbounds nuw i8, ptr %1121, i64 2304
  %1253 = load <8 x double>, ptr %1252, align 64, !tbaa !26
  %1254 = getelementptr inbounds nuw i8, ptr %1121, i64 2368
  %1255 = load <8 x double>, ptr %1254, align 64, !tbaa !26
  %1256 = getelementptr inbounds nuw i8, ptr %1121, i64 2432
  %1257 = load <8 x double>, ptr %1256, align 64, !tbaa !26
  %1258 = getelementptr inbounds nuw i8, ptr %1121, i64 2496
  %1259 = load <8 x double>, ptr %1258, align 64, !tbaa !26
  %1260 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1259, <8 x double> %1257)
  %1261 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1260, <8 x double> %1255)
  %1262 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1261, <8 x double> %1253)
  %1263 = getelementptr inbounds nuw i8, ptr %1121, i64 6656
  store <8 x double> %1262, ptr %1263, align 64, !tbaa !26
  %1264 = getelementptr inbounds nuw i8, ptr %1121, i64 7552
  %1265 = load i64, ptr %1264, align 64, !tbaa !31
  %1266 = icmp eq i64 %1265, 0
  br i1 %1266, label %1267, label %1279

1267:                                             ; preds = %1118
  %1268 = fdiv <8 x double> %1262, %1215
  %1269 = load i64, ptr %119, align 16, !tbaa !21
  %1270 = getelementptr inbounds nuw i8, ptr %1121, i64 7672
  %1271 = load ptr, ptr %1270, align 8, !tbaa !35
  %1272 = getelementptr inbounds <8 x double>, ptr %1271, i64 %1269
  %1273 = load <8 x double>, ptr %1272, align 64, !tbaa !26
  %1274 = fmul <8 x double> %1268, %1273
  %1275 = getelementptr inbounds nuw i8, ptr %1121, i64 64
  %1276 = load <8 x double>, ptr %1275, align 64, !tbaa !26
  %1277 = fsub <8 x double> %1215, %1276
  %1278 = fdiv <8 x double> splat (double 1.000000e+00), %1277
  br label %1302

1279:                                             ; preds = %1118
  %1280 = getelementptr inbounds nuw i8, ptr %1121, i64 64
  %1281 = load <8 x double>, ptr %1280, align 64, !tbaa !26
  %1282 = fsub <8 x double> %1215, %1281
  %1283 = fdiv <8 x double> splat (double 1.000000e+00), %1282
  %1284 = load i64, ptr %119, align 16, !tbaa !21
  %1285 = getelementptr inbounds nuw i8, ptr %1121, i64 7672
  %1286 = load ptr, ptr %1285, align 8, !tbaa !35
  %1287 = shl nsw i64 %1284, 8
  %1288 = getelementptr inbounds i8, ptr %1286, i64 %1287
  %1289 = load <8 x double>, ptr %1288, align 64, !tbaa !26
  %1290 = getelementptr inbounds nuw i8, ptr %1288, i64 64
  %1291 = load <8 x double>, ptr %1290, align 64, !tbaa !26
  %1292 = getelementptr inbounds nuw i8, ptr %1288, i64 128
  %1293 = load <8 x double>, ptr %1292, align 64, !tbaa !26
  %1294 = getelementptr inbounds nuw i8, ptr %1288, i64 192
  %1295 = load <8 x double>, ptr %1294, align 64, !tbaa !26
  %1296 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1295, <8 x double> %1293)
  %1297 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1296, <8 x double> %1291)
  %1298 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1297, <8 x double> %1289)
  %1299 = icmp sgt i64 %1284, %1265
  %1300 = fmul <8 x double> %1283, %1298
  %1301 = select i1 %1299, <8 x double> %1300, <8 x double> %1298
  br label %1302

1302:                                             ; preds = %1267, %1279
  %1303 = phi <8 x double> [ %1278, %1267 ], [ %1283, %1279 ]
  %1304 = phi <8 x double> [ %1277, %1267 ], [ %1282, %1279 ]
  %1305 = phi <8 x double> [ %1274, %1267 ], [ %1301, %1279 ]
  %1306 = getelementptr inbounds nuw i8, ptr %1121, i64 5568
  %1307 = load <8 x double>, ptr %1306, align 64, !tbaa !26
  %1308 = fcmp ogt <8 x double> %1216, splat (double 0x3D719799812DEA11)
  %1309 = select <8 x i1> %1308, <8 x double> %1216, <8 x double> splat (double 0x3D719799812DEA11)
  %1310 = getelementptr inbounds nuw i8, ptr %1121, i64 6528
  store <8 x double> %1303, ptr %1310, align 64, !tbaa !26
  %1311 = getelementptr inbounds nuw i8, ptr %1121, i64 704
  %1312 = load <8 x double>, ptr %1311, align 64, !tbaa !26
  %1313 = fdiv <8 x double> %1312, %1309
  %1314 = getelementptr inbounds nuw i8, ptr %1121, i64 6592
  store <8 x double> %1313, ptr %1314, align 64, !tbaa !26
  %1315 = getelementptr inbounds nuw i8, ptr %1121, i64 7560
  %1316 = load ptr, ptr %1315, align 8, !tbaa !56
  %1317 = load i64, ptr %119, align 16, !tbaa !21
  %1318 = getelementptr <8 x double>, ptr %1316, i64 %1317
  %1319 = getelementptr i8, ptr %1318, i64 -64
  %1320 = load <8 x double>, ptr %1319, align 64, !tbaa !26
  %1321 = fadd <8 x double> %1307, %1320
  %1322 = fmul <8 x double> %1321, splat (double 5.000000e-01)
  %1323 = getelementptr inbounds nuw i8, ptr %1121, i64 192
  %1324 = load <8 x double>, ptr %1323, align 64, !tbaa !26
  %1325 = getelementptr inbounds nuw i8, ptr %1121, i64 256
  %1326 = load <8 x double>, ptr %1325, align 64, !tbaa !26
  %1327 = getelementptr inbounds nuw i8, ptr %1121, i64 320
  %1328 = load <8 x double>, ptr %1327, align 64, !tbaa !26
  %1329 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1322, <8 x double> %1328, <8 x double> %1326)
  %1330 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1322, <8 x double> %1329, <8 x double> %1324)
  %1331 = fmul <8 x double> %1305, %1330
  %1332 = fmul <8 x double> %1191, %1331
  %1333 = getelementptr inbounds nuw i8, ptr %1121, i64 2048
  %1334 = load <8 x double>, ptr %1333, align 64, !tbaa !26
  %1335 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1332, <8 x double> %1334, <8 x double> splat (double 1.000000e+00))
  %1336 = fdiv <8 x double> splat (double 1.000000e+00), %1335
  %1337 = icmp eq <8 x i64> %1203, zeroinitializer
  %1338 = select <8 x i1> %1337, <8 x double> %1336, <8 x double> splat (double 1.000000e+00)
  %1339 = getelementptr inbounds nuw i8, ptr %1121, i64 6848
  store <8 x double> %1338, ptr %1339, align 64, !tbaa !26
  %1340 = fmul <8 x double> %1331, %1338
  %1341 = getelementptr inbounds nuw i8, ptr %1121, i64 6016
  store <8 x double> %1340, ptr %1341, align 64, !tbaa !26
  %1342 = fmul <8 x double> %1250, splat (double 2.000000e+00)
  %1343 = getelementptr inbounds nuw i8, ptr %1121, i64 384
  %1344 = load <8 x double>, ptr %1343, align 64, !tbaa !26
  %1345 = getelementptr inbounds nuw i8, ptr %1121, i64 448
  %1346 = load <8 x double>, ptr %1345, align 64, !tbaa !26
  %1347 = getelementptr inbounds nuw i8, ptr %1121, i64 512
  %1348 = load <8 x double>, ptr %1347, align 64, !tbaa !26
  %1349 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1307, <8 x double> %1348, <8 x double> %1346)
  %1350 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1307, <8 x double> %1349, <8 x double> %1344)
  %1351 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1342, <8 x double> %1350, <8 x double> %1340)
  %1352 = getelementptr inbounds nuw i8, ptr %1121, i64 6144
  store <8 x double> %1351, ptr %1352, align 64, !tbaa !26
  %1353 = fmul <8 x double> %1176, %1217
  %1354 = getelementptr inbounds nuw i8, ptr %1121, i64 1984
  %1355 = load <8 x double>, ptr %1354, align 64, !tbaa !26
  %1356 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1353, <8 x double> %1355, <8 x double> splat (double 1.000000e+00))
  %1357 = fdiv <8 x double> %1176, %1356
  %1358 = load i64, ptr %120, align 8, !tbaa !22
  %1359 = sitofp i64 %1358 to double
  %1360 = fmul double %1359, 2.000000e+00
  %1361 = insertelement <8 x double> poison, double %1360, i64 0
  %1362 = shufflevector <8 x double> %1361, <8 x double> poison, <8 x i32> zeroinitializer
  %1363 = fmul <8 x double> %1313, %1362
  %1364 = fadd <8 x double> %1357, %1363
  %1365 = fdiv <8 x double> %1357, %1364
  %1366 = fmul <8 x double> %1262, %1363
  %1367 = select <8 x i1> %1337, <8 x double> %1357, <8 x double> %1366
  %1368 = getelementptr inbounds nuw i8, ptr %1121, i64 6080
  store <8 x double> %1367, ptr %1368, align 64, !tbaa !26
  %1369 = fmul <8 x double> %1363, %1365
  %1370 = select <8 x i1> %1337, <8 x double> %1357, <8 x double> %1369
  %1371 = getelementptr inbounds nuw i8, ptr %1121, i64 6208
  store <8 x double> %1370, ptr %1371, align 64, !tbaa !26
  %1372 = select <8 x i1> %1337, <8 x double> splat (double 1.000000e+00), <8 x double> %1365
  %1373 = getelementptr inbounds nuw i8, ptr %1121, i64 6272
  store <8 x double> %1372, ptr %1373, align 64, !tbaa !26
  br i1 %1266, label %1535, label %1374

1374:                                             ; preds = %1302
  %1375 = getelementptr inbounds nuw i8, ptr %1121, i64 576
  %1376 = load <8 x double>, ptr %1375, align 64, !tbaa !26
  %1377 = getelementptr inbounds nuw i8, ptr %1121, i64 640
  %1378 = load <8 x double>, ptr %1377, align 64, !tbaa !26
  %1379 = getelementptr inbounds nuw i8, ptr %1121, i64 1536
  %1380 = load <8 x double>, ptr %1379, align 64, !tbaa !26
  %1381 = load i64, ptr %119, align 16, !tbaa !21
  %1382 = fsub <8 x double> %1241, %1380
  %1383 = fmul <8 x double> %1346, splat (double 5.000000e-01)
  %1384 = fmul <8 x double> %1348, splat (double 0x3FE5555555555555)
  %1385 = getelementptr inbounds nuw i8, ptr %1121, i64 7648
  %1386 = load ptr, ptr %1385, align 32, !tbaa !70
  %1387 = getelementptr inbounds nuw i8, ptr %1121, i64 7656
  %1388 = load ptr, ptr %1387, align 8, !tbaa !46
  %1389 = getelementptr inbounds nuw i8, ptr %1121, i64 7584
  %1390 = load ptr, ptr %1389, align 32, !tbaa !57
  %1391 = getelementptr inbounds nuw i8, ptr %1121, i64 7624
  %1392 = load ptr, ptr %1391, align 8, !tbaa !71
  %1393 = getelementptr inbounds nuw i8, ptr %1121, i64 7632
  %1394 = load ptr, ptr %1393, align 16, !tbaa !72
  %1395 = getelementptr inbounds nuw i8, ptr %1121, i64 7640
  %1396 = load ptr, ptr %1395, align 8, !tbaa !73
  %1397 = getelementptr inbounds nuw i8, ptr %1121, i64 7608
  %1398 = load ptr, ptr %1397, align 8, !tbaa !74
  %1399 = getelementptr inbounds nuw i8, ptr %1121, i64 7616
  %1400 = load ptr, ptr %1399, align 64, !tbaa !75
  %1401 = icmp sgt i64 %1381, 0
  br i1 %1401, label %1402, label %1648

1402:                                             ; preds = %1374
  %1403 = load <8 x double>, ptr %1316, align 64, !tbaa !26
  %1404 = getelementptr inbounds nuw i8, ptr %1121, i64 2880
  %1405 = load <8 x double>, ptr %1404, align 64, !tbaa !26
  %1406 = getelementptr inbounds nuw i8, ptr %1121, i64 2816
  %1407 = load <8 x double>, ptr %1406, align 64, !tbaa !26
  %1408 = fmul <8 x double> %1250, splat (double -2.000000e+00)
  %1409 = fmul <8 x double> %1408, %1307
  %1410 = fmul <8 x double> %1307, %1409
  %1411 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1307, <8 x double> %1384, <8 x double> %1383)
  %1412 = fmul <8 x double> %1410, %1411
  %1413 = getelementptr inbounds nuw i8, ptr %1121, i64 7672
  %1414 = fmul <8 x double> %1304, %1405
  %1415 = fdiv <8 x double> %1407, %1376
  br label %1416

1416:                                             ; preds = %1402, %1500
  %1417 = phi <8 x double> [ %1403, %1402 ], [ %1504, %1500 ]
  %1418 = phi <8 x double> [ zeroinitializer, %1402 ], [ %1501, %1500 ]
  %1419 = phi <8 x double> [ zeroinitializer, %1402 ], [ %1502, %1500 ]
  %1420 = phi <8 x double> [ zeroinitializer, %1402 ], [ %1503, %1500 ]
  %1421 = phi <8 x double> [ zeroinitializer, %1402 ], [ %1530, %1500 ]
  %1422 = phi <8 x double> [ zeroinitializer, %1402 ], [ %1532, %1500 ]
  %1423 = phi <8 x double> [ %1378, %1402 ], [ %1505, %1500 ]
  %1424 = phi i64 [ 0, %1402 ], [ %1426, %1500 ]
  %1425 = phi <8 x double> [ zeroinitializer, %1402 ], [ %1506, %1500 ]
  %1426 = add nuw nsw i64 %1424, 1
  %1427 = icmp slt i64 %1426, %1381
  br i1 %1427, label %1428, label %1497

1428:                                             ; preds = %1416
  %1429 = getelementptr inbounds nuw <8 x double>, ptr %1316, i64 %1426
  %1430 = load <8 x double>, ptr %1429, align 64, !tbaa !26
  %1431 = icmp slt i64 %1426, %1265
  br i1 %1431, label %1439, label %1432

1432:                                             ; preds = %1428
  %1433 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1430, <8 x double> %1348, <8 x double> %1346)
  %1434 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1430, <8 x double> %1433, <8 x double> %1344)
  %1435 = fneg <8 x double> %1430
  %1436 = fmul <8 x double> %1430, %1435
  %1437 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1430, <8 x double> %1384, <8 x double> %1383)
  %1438 = fmul <8 x double> %1436, %1437
  br label %1439

1439:                                             ; preds = %1428, %1432
  %1440 = phi <8 x double> [ %1434, %1432 ], [ %1378, %1428 ]
  %1441 = phi <8 x double> [ %1438, %1432 ], [ zeroinitializer, %1428 ]
  %1442 = load i64, ptr %1264, align 64, !tbaa !31
  %1443 = icmp eq i64 %1442, 0
  %1444 = load ptr, ptr %1413, align 8, !tbaa !35
  br i1 %1443, label %1445, label %1449

1445:                                             ; preds = %1439
  %1446 = getelementptr inbounds nuw <8 x double>, ptr %1444, i64 %1426
  %1447 = load <8 x double>, ptr %1446, align 64, !tbaa !26
  %1448 = fmul <8 x double> %1303, %1447
  br label %1465

1449:                                             ; preds = %1439
  %1450 = shl nsw i64 %1426, 8
  %1451 = getelementptr inbounds nuw i8, ptr %1444, i64 %1450
  %1452 = load <8 x double>, ptr %1451, align 64, !tbaa !26
  %1453 = getelementptr inbounds nuw i8, ptr %1451, i64 64
  %1454 = load <8 x double>, ptr %1453, align 64, !tbaa !26
  %1455 = getelementptr inbounds nuw i8, ptr %1451, i64 128
  %1456 = load <8 x double>, ptr %1455, align 64, !tbaa !26
  %1457 = getelementptr inbounds nuw i8, ptr %1451, i64 192
  %1458 = load <8 x double>, ptr %1457, align 64, !tbaa !26
  %1459 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1458, <8 x double> %1456)
  %1460 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1459, <8 x double> %1454)
  %1461 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1460, <8 x double> %1452)
  %1462 = icmp slt i64 %1424, %1442
  %1463 = fmul <8 x double> %1303, %1461
  %1464 = select i1 %1462, <8 x double> %1461, <8 x double> %1463
  br label %1465

1465:                                             ; preds = %1449, %1445
  %1466 = phi <8 x double> [ %1448, %1445 ], [ %1464, %1449 ]
  %1467 = icmp slt i64 %1424, %1442
  br i1 %1467, label %1474, label %1468

1468:                                             ; preds = %1465
  %1469 = fadd <8 x double> %1417, %1430
  %1470 = fmul <8 x double> %1469, splat (double 5.000000e-01)
  %1471 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1470, <8 x double> %1328, <8 x double> %1326)
  %1472 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1470, <8 x double> %1471, <8 x double> %1324)
  %1473 = fmul <8 x double> %1472, %1466
  br label %1484

1474:                                             ; preds = %1465
  %1475 = icmp slt i64 %1426, %1442
  br i1 %1475, label %1476, label %1478

1476:                                             ; preds = %1474
  %1477 = fmul <8 x double> %1376, %1466
  br label %1484

1478:                                             ; preds = %1474
  %1479 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1430, <8 x double> %1328, <8 x double> %1326)
  %1480 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1430, <8 x double> %1479, <8 x double> %1324)
  %1481 = fdiv <8 x double> %1414, %1480
  %1482 = fadd <8 x double> %1415, %1481
  %1483 = fdiv <8 x double> %1466, %1482
  br label %1484

1484:                                             ; preds = %1468, %1476, %1478
  %1485 = phi <8 x double> [ %1473, %1468 ], [ %1477, %1476 ], [ %1483, %1478 ]
  br i1 %1431, label %1490, label %1486

1486:                                             ; preds = %1484
  %1487 = getelementptr inbounds nuw <8 x double>, ptr %1386, i64 %1426
  %1488 = load <8 x double>, ptr %1487, align 64, !tbaa !26
  %1489 = fmul <8 x double> %1250, %1488
  br label %1490

1490:                                             ; preds = %1484, %1486
  %1491 = phi <8 x double> [ %1489, %1486 ], [ zeroinitializer, %1484 ]
  %1492 = fneg <8 x double> %1491
  %1493 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1492, <8 x double> %1423, <8 x double> %1485)
  %1494 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1491, <8 x double> %1440, <8 x double> %1485)
  %1495 = fadd <8 x double> %1425, %1441
  %1496 = fmul <8 x double> %1495, %1491
  br label %1500

1497:                                             ; preds = %1416
  %1498 = load <8 x double>, ptr %1341, align 64, !tbaa !26
  %1499 = load <8 x double>, ptr %1352, align 64, !tbaa !26
  br label %1500

1500:                                             ; preds = %1497, %1490
  %1501 = phi <8 x double> [ %1493, %1490 ], [ %1498, %1497 ]
  %1502 = phi <8 x double> [ %1494, %1490 ], [ %1499, %1497 ]
  %1503 = phi <8 x double> [ %1496, %1490 ], [ %1412, %1497 ]
  %1504 = phi <8 x double> [ %1430, %1490 ], [ %1417, %1497 ]
  %1505 = phi <8 x double> [ %1440, %1490 ], [ %1423, %1497 ]
  %1506 = phi <8 x double> [ %1441, %1490 ], [ %1425, %1497 ]
  %1507 = getelementptr inbounds nuw <8 x double>, ptr %1388, i64 %1424
  %1508 = load <8 x double>, ptr %1507, align 64, !tbaa !26
  %1509 = icmp slt i64 %1424, %1265
  %1510 = select i1 %1509, <8 x double> %1380, <8 x double> %1382
  %1511 = fmul <8 x double> %1166, %1510
  %1512 = fmul <8 x double> %1511, %1508
  %1513 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1512, <8 x double> %1423, <8 x double> %1501)
  %1514 = fadd <8 x double> %1419, %1513
  %1515 = fsub <8 x double> %1503, %1420
  %1516 = fneg <8 x double> %1512
  %1517 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1516, <8 x double> %1425, <8 x double> %1515)
  %1518 = getelementptr inbounds nuw <8 x double>, ptr %1390, i64 %1424
  %1519 = load <8 x double>, ptr %1518, align 64, !tbaa !26
  %1520 = fsub <8 x double> %1517, %1519
  %1521 = fneg <8 x double> %1418
  %1522 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1521, <8 x double> %1422, <8 x double> %1514)
  %1523 = fdiv <8 x double> splat (double 1.000000e+00), %1522
  %1524 = getelementptr inbounds nuw <8 x double>, ptr %1392, i64 %1424
  store <8 x double> %1520, ptr %1524, align 64, !tbaa !26
  %1525 = getelementptr inbounds nuw <8 x double>, ptr %1394, i64 %1424
  store <8 x double> %1418, ptr %1525, align 64, !tbaa !26
  %1526 = fadd <8 x double> %1418, %1502
  %1527 = fsub <8 x double> %1526, %1514
  %1528 = getelementptr inbounds nuw <8 x double>, ptr %1396, i64 %1424
  store <8 x double> %1527, ptr %1528, align 64, !tbaa !26
  %1529 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1418, <8 x double> %1421, <8 x double> %1520)
  %1530 = fmul <8 x double> %1529, %1523
  %1531 = getelementptr inbounds nuw <8 x double>, ptr %1398, i64 %1424
  store <8 x double> %1530, ptr %1531, align 64, !tbaa !26
  %1532 = fmul <8 x double> %1502, %1523
  %1533 = getelementptr inbounds nuw <8 x double>, ptr %1400, i64 %1424
  store <8 x double> %1532, ptr %1533, align 64, !tbaa !26
  %1534 = icmp eq i64 %1426, %1381
  br i1 %1534, label %1648, label %1416, !llvm.loop !76

1535:                                             ; preds = %1302
  %1536 = getelementptr inbounds nuw i8, ptr %1121, i64 1536
  %1537 = load <8 x double>, ptr %1536, align 64, !tbaa !26
  %1538 = load i64, ptr %119, align 16, !tbaa !21
  %1539 = fdiv <8 x double> %1262, %1215
  %1540 = fsub <8 x double> %1241, %1537
  %1541 = fmul <8 x double> %1166, %1540
  %1542 = fmul <8 x double> %1346, splat (double 5.000000e-01)
  %1543 = fmul <8 x double> %1348, splat (double 0x3FE5555555555555)
  %1544 = getelementptr inbounds nuw i8, ptr %1121, i64 7648
  %1545 = load ptr, ptr %1544, align 32, !tbaa !70
  %1546 = getelementptr inbounds nuw i8, ptr %1121, i64 7656
  %1547 = load ptr, ptr %1546, align 8, !tbaa !46
  %1548 = getelementptr inbounds nuw i8, ptr %1121, i64 7584
  %1549 = load ptr, ptr %1548, align 32, !tbaa !57
  %1550 = getelementptr inbounds nuw i8, ptr %1121, i64 7624
  %1551 = load ptr, ptr %1550, align 8, !tbaa !71
  %1552 = getelementptr inbounds nuw i8, ptr %1121, i64 7632
  %1553 = load ptr, ptr %1552, align 16, !tbaa !72
  %1554 = getelementptr inbounds nuw i8, ptr %1121, i64 7640
  %1555 = load ptr, ptr %1554, align 8, !tbaa !73
  %1556 = getelementptr inbounds nuw i8, ptr %1121, i64 7608
  %1557 = load ptr, ptr %1556, align 8, !tbaa !74
  %1558 = getelementptr inbounds nuw i8, ptr %1121, i64 7616
  %1559 = load ptr, ptr %1558, align 64, !tbaa !75
  %1560 = icmp sgt i64 %1538, 0
  br i1 %1560, label %1561, label %1648

1561:                                             ; preds = %1535
  %1562 = load <8 x double>, ptr %1316, align 64, !tbaa !26
  %1563 = fneg <8 x double> %1562
  %1564 = fmul <8 x double> %1562, %1563
  %1565 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1562, <8 x double> %1543, <8 x double> %1542)
  %1566 = fmul <8 x double> %1564, %1565
  %1567 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1562, <8 x double> %1348, <8 x double> %1346)
  %1568 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1562, <8 x double> %1567, <8 x double> %1344)
  %1569 = fmul <8 x double> %1250, splat (double -2.000000e+00)
  %1570 = fmul <8 x double> %1569, %1307
  %1571 = fmul <8 x double> %1307, %1570
  %1572 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1307, <8 x double> %1543, <8 x double> %1542)
  %1573 = fmul <8 x double> %1571, %1572
  %1574 = getelementptr inbounds nuw i8, ptr %1121, i64 7672
  br label %1575

1575:                                             ; preds = %1561, %1616
  %1576 = phi <8 x double> [ %1562, %1561 ], [ %1620, %1616 ]
  %1577 = phi <8 x double> [ zeroinitializer, %1561 ], [ %1617, %1616 ]
  %1578 = phi <8 x double> [ zeroinitializer, %1561 ], [ %1618, %1616 ]
  %1579 = phi <8 x double> [ zeroinitializer, %1561 ], [ %1619, %1616 ]
  %1580 = phi <8 x double> [ zeroinitializer, %1561 ], [ %1643, %1616 ]
  %1581 = phi <8 x double> [ zeroinitializer, %1561 ], [ %1645, %1616 ]
  %1582 = phi <8 x double> [ %1568, %1561 ], [ %1621, %1616 ]
  %1583 = phi i64 [ 0, %1561 ], [ %1585, %1616 ]
  %1584 = phi <8 x double> [ %1566, %1561 ], [ %1622, %1616 ]
  %1585 = add nuw nsw i64 %1583, 1
  %1586 = icmp slt i64 %1585, %1538
  br i1 %1586, label %1587, label %1613

1587:                                             ; preds = %1575
  %1588 = getelementptr inbounds nuw <8 x double>, ptr %1316, i64 %1585
  %1589 = load <8 x double>, ptr %1588, align 64, !tbaa !26
  %1590 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1589, <8 x double> %1348, <8 x double> %1346)
  %1591 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1589, <8 x double> %1590, <8 x double> %1344)
  %1592 = fneg <8 x double> %1589
  %1593 = fmul <8 x double> %1589, %1592
  %1594 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1589, <8 x double> %1543, <8 x double> %1542)
  %1595 = fmul <8 x double> %1593, %1594
  %1596 = fadd <8 x double> %1576, %1589
  %1597 = fmul <8 x double> %1596, splat (double 5.000000e-01)
  %1598 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1597, <8 x double> %1328, <8 x double> %1326)
  %1599 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1597, <8 x double> %1598, <8 x double> %1324)
  %1600 = load ptr, ptr %1574, align 8, !tbaa !35
  %1601 = getelementptr inbounds nuw <8 x double>, ptr %1600, i64 %1585
  %1602 = load <8 x double>, ptr %1601, align 64, !tbaa !26
  %1603 = fmul <8 x double> %1539, %1602
  %1604 = fmul <8 x double> %1603, %1599
  %1605 = getelementptr inbounds nuw <8 x double>, ptr %1545, i64 %1585
  %1606 = load <8 x double>, ptr %1605, align 64, !tbaa !26
  %1607 = fmul <8 x double> %1250, %1606
  %1608 = fneg <8 x double> %1607
  %1609 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1608, <8 x double> %1582, <8 x double> %1604)
  %1610 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1607, <8 x double> %1591, <8 x double> %1604)
  %1611 = fadd <8 x double> %1584, %1595
  %1612 = fmul <8 x double> %1611, %1607
  br label %1616

1613:                                             ; preds = %1575
  %1614 = load <8 x double>, ptr %1341, align 64, !tbaa !26
  %1615 = load <8 x double>, ptr %1352, align 64, !tbaa !26
  br label %1616

1616:                                             ; preds = %1613, %1587
  %1617 = phi <8 x double> [ %1609, %1587 ], [ %1614, %1613 ]
  %1618 = phi <8 x double> [ %1610, %1587 ], [ %1615, %1613 ]
  %1619 = phi <8 x double> [ %1612, %1587 ], [ %1573, %1613 ]
  %1620 = phi <8 x double> [ %1589, %1587 ], [ %1576, %1613 ]
  %1621 = phi <8 x double> [ %1591, %1587 ], [ %1582, %1613 ]
  %1622 = phi <8 x double> [ %1595, %1587 ], [ %1584, %1613 ]
  %1623 = getelementptr inbounds nuw <8 x double>, ptr %1547, i64 %1583
  %1624 = load <8 x double>, ptr %1623, align 64, !tbaa !26
  %1625 = fmul <8 x double> %1541, %1624
  %1626 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1625, <8 x double> %1582, <8 x double> %1617)
  %1627 = fadd <8 x double> %1578, %1626
  %1628 = fsub <8 x double> %1619, %1579
  %1629 = fneg <8 x double> %1625
  %1630 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1629, <8 x double> %1584, <8 x double> %1628)
  %1631 = getelementptr inbounds nuw <8 x double>, ptr %1549, i64 %1583
  %1632 = load <8 x double>, ptr %1631, align 64, !tbaa !26
  %1633 = fsub <8 x double> %1630, %1632
  %1634 = fneg <8 x double> %1577
  %1635 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1634, <8 x double> %1581, <8 x double> %1627)
  %1636 = fdiv <8 x double> splat (double 1.000000e+00), %1635
  %1637 = getelementptr inbounds nuw <8 x double>, ptr %1551, i64 %1583
  store <8 x double> %1633, ptr %1637, align 64, !tbaa !26
  %1638 = getelementptr inbounds nuw <8 x double>, ptr %1553, i64 %1583
  store <8 x double> %1577, ptr %1638, align 64, !tbaa !26
  %1639 = fadd <8 x double> %1577, %1618
  %1640 = fsub <8 x double> %1639, %1627
  %1641 = getelementptr inbounds nuw <8 x double>, ptr %1555, i64 %1583
  store <8 x double> %1640, ptr %1641, align 64, !tbaa !26
  %1642 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1577, <8 x double> %1580, <8 x double> %1633)
  %1643 = fmul <8 x double> %1642, %1636
  %1644 = getelementptr inbounds nuw <8 x double>, ptr %1557, i64 %1583
  store <8 x double> %1643, ptr %1644, align 64, !tbaa !26
  %1645 = fmul <8 x double> %1618, %1636
  %1646 = getelementptr inbounds nuw <8 x double>, ptr %1559, i64 %1583
  store <8 x double> %1645, ptr %1646, align 64, !tbaa !26
  %1647 = icmp eq i64 %1585, %1538
  br i1 %1647, label %1648, label %1575, !llvm.loop !77

1648:                                             ; preds = %1500, %1616, %1374, %1535
  %1649 = getelementptr inbounds nuw i8, ptr %1121, i64 7608
  %1650 = load ptr, ptr %1649, align 8, !tbaa !74
  %1651 = load i64, ptr %119, align 16, !tbaa !21
  %1652 = add nsw i64 %1651, -1
  %1653 = getelementptr inbounds <8 x double>, ptr %1650, i64 %1652
  %1654 = load <8 x double>, ptr %1653, align 64, !tbaa !26
  %1655 = getelementptr inbounds nuw i8, ptr %1121, i64 7616
  %1656 = load ptr, ptr %1655, align 64, !tbaa !75
  %1657 = getelementptr inbounds <8 x double>, ptr %1656, i64 %1652
  %1658 = load <8 x double>, ptr %1657, align 64, !tbaa !26
  %1659 = load <8 x double>, ptr %1341, align 64, !tbaa !26
  %1660 = fmul <8 x double> %1654, %1659
  %1661 = fsub <8 x double> splat (double 1.000000e+00), %1658
  %1662 = fmul <8 x double> %1659, %1661
  %1663 = load <8 x double>, ptr %1368, align 64, !tbaa !26
  %1664 = load <8 x double>, ptr %1174, align 64, !tbaa !26
  %1665 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1663, <8 x double> %1664, <8 x double> %1660)
  %1666 = load <8 x double>, ptr %1213, align 64, !tbaa !26
  %1667 = fsub <8 x double> %1665, %1666
  %1668 = fadd <8 x double> %1662, %1663
  %1669 = load <8 x double>, ptr %1210, align 64, !tbaa !26
  %1670 = fadd <8 x double> %1668, %1669
  %1671 = load <8 x i64>, ptr %1202, align 64, !tbaa !26
  %1672 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1671)
  %1673 = icmp eq i64 %1672, 0
  %1674 = load i64, ptr %120, align 8, !tbaa !22
  br i1 %1673, label %1675, label %1690

1675:                                             ; preds = %1648
  %1676 = icmp slt i64 %1674, 0
  br i1 %1676, label %1681, label %1677

1677:                                             ; preds = %1675
  %1678 = getelementptr inbounds nuw i8, ptr %1121, i64 1408
  %1679 = getelementptr inbounds nuw i8, ptr %1121, i64 7728
  %1680 = load <8 x double>, ptr %1678, align 64, !tbaa !26
  br label %1683

1681:                                             ; preds = %1683, %1675
  %1682 = getelementptr inbounds nuw i8, ptr %1121, i64 5824
  store <8 x double> %1667, ptr %1682, align 64, !tbaa !26
  br label %1817

1683:                                             ; preds = %1677, %1683
  %1684 = phi i64 [ 0, %1677 ], [ %1687, %1683 ]
  %1685 = load ptr, ptr %1679, align 16, !tbaa !78
  %1686 = getelementptr inbounds nuw <8 x double>, ptr %1685, i64 %1684
  store <8 x double> %1680, ptr %1686, align 64, !tbaa !26
  %1687 = add nuw nsw i64 %1684, 1
  %1688 = load i64, ptr %120, align 8, !tbaa !22
  %1689 = icmp slt i64 %1684, %1688
  br i1 %1689, label %1683, label %1681, !llvm.loop !79

1690:                                             ; preds = %1648
  %1691 = load <8 x double>, ptr %1181, align 64, !tbaa !26
  %1692 = load <8 x double>, ptr %1230, align 64, !tbaa !26
  %1693 = getelementptr inbounds nuw i8, ptr %1121, i64 1280
  %1694 = load <8 x double>, ptr %1693, align 64, !tbaa !26
  %1695 = fmul <8 x double> %1692, %1694
  %1696 = load <8 x double>, ptr %1121, align 64, !tbaa !26
  %1697 = fsub <8 x double> %1696, %1691
  %1698 = sitofp i64 %1674 to double
  %1699 = insertelement <8 x double> poison, double %1698, i64 0
  %1700 = shufflevector <8 x double> %1699, <8 x double> poison, <8 x i32> zeroinitializer
  %1701 = fdiv <8 x double> %1697, %1700
  %1702 = load <8 x double>, ptr %1371, align 64, !tbaa !26
  %1703 = load <8 x double>, ptr %1373, align 64, !tbaa !26
  %1704 = getelementptr inbounds nuw i8, ptr %1121, i64 1408
  %1705 = load <8 x double>, ptr %1704, align 64, !tbaa !26
  %1706 = getelementptr inbounds nuw i8, ptr %1121, i64 7728
  %1707 = load ptr, ptr %1706, align 16, !tbaa !78
  %1708 = getelementptr inbounds <8 x double>, ptr %1707, i64 %1674
  store <8 x double> %1705, ptr %1708, align 64, !tbaa !26
  %1709 = icmp sgt i64 %1674, 0
  br i1 %1709, label %1710, label %1801

1710:                                             ; preds = %1690
  %1711 = fneg <8 x double> %1695
  %1712 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1711, <8 x double> %1703, <8 x double> %1702)
  %1713 = fsub <8 x double> splat (double 1.000000e+00), %1703
  %1714 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1713, <8 x double> %1702)
  %1715 = getelementptr inbounds nuw i8, ptr %1121, i64 7736
  %1716 = getelementptr inbounds nuw i8, ptr %1121, i64 7744
  %1717 = getelementptr inbounds nuw i8, ptr %1121, i64 768
  %1718 = fmul <8 x double> %1695, splat (double -5.000000e-01)
  %1719 = getelementptr inbounds nuw i8, ptr %1121, i64 7704
  %1720 = getelementptr inbounds nuw i8, ptr %1121, i64 7712
  %1721 = getelementptr inbounds nuw i8, ptr %1121, i64 7720
  br label %1722

1722:                                             ; preds = %1710, %1776
  %1723 = phi <8 x double> [ %1714, %1710 ], [ %1778, %1776 ]
  %1724 = phi <8 x double> [ %1712, %1710 ], [ %1779, %1776 ]
  %1725 = phi <8 x double> [ %1664, %1710 ], [ %1794, %1776 ]
  %1726 = phi <8 x double> [ zeroinitializer, %1710 ], [ %1797, %1776 ]
  %1727 = phi <8 x double> [ %1705, %1710 ], [ %1740, %1776 ]
  %1728 = phi i64 [ %1674, %1710 ], [ %1729, %1776 ]
  %1729 = add nsw i64 %1728, -1
  %1730 = uitofp nneg i64 %1729 to double
  %1731 = insertelement <8 x double> poison, double %1730, i64 0
  %1732 = shufflevector <8 x double> %1731, <8 x double> poison, <8 x i32> zeroinitializer
  %1733 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1732, <8 x double> %1701, <8 x double> %1691)
  %1734 = load <8 x double>, ptr %1231, align 64, !tbaa !26
  %1735 = load <8 x double>, ptr %1233, align 64, !tbaa !26
  %1736 = load <8 x double>, ptr %1235, align 64, !tbaa !26
  %1737 = load <8 x double>, ptr %1237, align 64, !tbaa !26
  %1738 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1733, <8 x double> %1737, <8 x double> %1736)
  %1739 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1733, <8 x double> %1738, <8 x double> %1735)
  %1740 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1733, <8 x double> %1739, <8 x double> %1734)
  %1741 = load <8 x double>, ptr %1165, align 64, !tbaa !26
  %1742 = load <8 x double>, ptr %1151, align 64, !tbaa !26
  %1743 = load ptr, ptr %1715, align 8, !tbaa !47
  %1744 = getelementptr inbounds nuw <8 x double>, ptr %1743, i64 %1729
  %1745 = load <8 x double>, ptr %1744, align 64, !tbaa !26
  %1746 = fmul <8 x double> %1742, %1745
  %1747 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1741, <8 x double> %1740, <8 x double> %1746)
  %1748 = load <8 x double>, ptr %1155, align 64, !tbaa !26
  %1749 = load ptr, ptr %1716, align 64, !tbaa !58
  %1750 = getelementptr inbounds nuw <8 x double>, ptr %1749, i64 %1729
  %1751 = load <8 x double>, ptr %1750, align 64, !tbaa !26
  %1752 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1748, <8 x double> %1751, <8 x double> %1747)
  %1753 = fmul <8 x double> %1752, splat (double 5.000000e-01)
  %1754 = icmp eq i64 %1728, 1
  br i1 %1754, label %1770, label %1755

1755:                                             ; preds = %1722
  %1756 = load <8 x double>, ptr %1717, align 64, !tbaa !26
  %1757 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1753, <8 x double> %1756, <8 x double> %1718)
  %1758 = load <8 x double>, ptr %1314, align 64, !tbaa !26
  %1759 = fmul <8 x double> %1700, %1758
  %1760 = load <8 x double>, ptr %1252, align 64, !tbaa !26
  %1761 = load <8 x double>, ptr %1254, align 64, !tbaa !26
  %1762 = load <8 x double>, ptr %1256, align 64, !tbaa !26
  %1763 = load <8 x double>, ptr %1258, align 64, !tbaa !26
  %1764 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1733, <8 x double> %1763, <8 x double> %1762)
  %1765 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1733, <8 x double> %1764, <8 x double> %1761)
  %1766 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1733, <8 x double> %1765, <8 x double> %1760)
  %1767 = fmul <8 x double> %1759, %1766
  %1768 = fsub <8 x double> %1767, %1757
  %1769 = fadd <8 x double> %1757, %1767
  br label %1776

1770:                                             ; preds = %1722
  %1771 = load <8 x double>, ptr %1368, align 64, !tbaa !26
  %1772 = load <8 x double>, ptr %1717, align 64, !tbaa !26
  %1773 = fmul <8 x double> %1753, splat (double -2.000000e+00)
  %1774 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1773, <8 x double> %1772, <8 x double> %1771)
  %1775 = fadd <8 x double> %1695, %1774
  br label %1776

1776:                                             ; preds = %1770, %1755
  %1777 = phi <8 x double> [ %1756, %1755 ], [ %1772, %1770 ]
  %1778 = phi <8 x double> [ %1768, %1755 ], [ %1775, %1770 ]
  %1779 = phi <8 x double> [ %1769, %1755 ], [ %1771, %1770 ]
  %1780 = fsub <8 x double> %1727, %1740
  %1781 = fmul <8 x double> %1741, %1780
  %1782 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1781, <8 x double> %1777, <8 x double> %1723)
  %1783 = fadd <8 x double> %1779, %1782
  %1784 = fneg <8 x double> %1724
  %1785 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1784, <8 x double> %1726, <8 x double> %1783)
  %1786 = fdiv <8 x double> splat (double 1.000000e+00), %1785
  %1787 = load ptr, ptr %1706, align 16, !tbaa !78
  %1788 = getelementptr inbounds nuw <8 x double>, ptr %1787, i64 %1729
  store <8 x double> %1740, ptr %1788, align 64, !tbaa !26
  %1789 = load ptr, ptr %1719, align 8, !tbaa !61
  %1790 = getelementptr inbounds nuw <8 x double>, ptr %1789, i64 %1729
  %1791 = load <8 x double>, ptr %1790, align 64, !tbaa !26
  %1792 = fneg <8 x double> %1791
  %1793 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1724, <8 x double> %1725, <8 x double> %1792)
  %1794 = fmul <8 x double> %1786, %1793
  %1795 = load ptr, ptr %1720, align 32, !tbaa !80
  %1796 = getelementptr inbounds nuw <8 x double>, ptr %1795, i64 %1729
  store <8 x double> %1794, ptr %1796, align 64, !tbaa !26
  %1797 = fmul <8 x double> %1778, %1786
  %1798 = load ptr, ptr %1721, align 8, !tbaa !81
  %1799 = getelementptr inbounds nuw <8 x double>, ptr %1798, i64 %1729
  store <8 x double> %1797, ptr %1799, align 64, !tbaa !26
  %1800 = icmp samesign ugt i64 %1728, 1
  br i1 %1800, label %1722, label %1801, !llvm.loop !82

1801:                                             ; preds = %1776, %1690
  %1802 = load <8 x i64>, ptr %1202, align 64, !tbaa !26
  %1803 = load <8 x double>, ptr %1368, align 64, !tbaa !26
  %1804 = getelementptr inbounds nuw i8, ptr %1121, i64 7712
  %1805 = load ptr, ptr %1804, align 32, !tbaa !80
  %1806 = load <8 x double>, ptr %1805, align 64, !tbaa !26
  %1807 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1803, <8 x double> %1806, <8 x double> %1660)
  %1808 = icmp eq <8 x i64> %1802, zeroinitializer
  %1809 = select <8 x i1> %1808, <8 x double> %1667, <8 x double> %1807
  %1810 = getelementptr inbounds nuw i8, ptr %1121, i64 5824
  store <8 x double> %1809, ptr %1810, align 64, !tbaa !26
  %1811 = getelementptr inbounds nuw i8, ptr %1121, i64 7720
  %1812 = load ptr, ptr %1811, align 8, !tbaa !81
  %1813 = load <8 x double>, ptr %1812, align 64, !tbaa !26
  %1814 = fsub <8 x double> splat (double 1.000000e+00), %1813
  %1815 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1803, <8 x double> %1814, <8 x double> %1662)
  %1816 = select <8 x i1> %1808, <8 x double> %1670, <8 x double> %1815
  br label %1817

1817:                                             ; preds = %1681, %1801
  %1818 = phi <8 x double> [ %1670, %1681 ], [ %1816, %1801 ]
  %1819 = getelementptr inbounds nuw i8, ptr %1121, i64 5888
  store <8 x double> %1818, ptr %1819, align 64, !tbaa !26
  %1820 = add nuw nsw i64 %1119, 1
  %1821 = load i64, ptr %144, align 8, !tbaa !20
  %1822 = icmp slt i64 %1820, %1821
  br i1 %1822, label %1118, label %1115, !llvm.loop !83

1823:                                             ; preds = %1926
  %1824 = icmp sgt i64 %1927, 0
  br label %1825

1825:                                             ; preds = %1823, %1113, %1115
  %1826 = phi <8 x double> [ %1116, %1115 ], [ %1114, %1113 ], [ %1116, %1823 ]
  %1827 = phi i1 [ false, %1115 ], [ false, %1113 ], [ %1824, %1823 ]
  %1828 = fcmp ogt <8 x double> %1826, zeroinitializer
  %1829 = bitcast <8 x i1> %1828 to i8
  %1830 = icmp eq i8 %1829, 0
  br i1 %1830, label %2013, label %1930

1831:                                             ; preds = %1115, %1926
  %1832 = phi i64 [ %1927, %1926 ], [ %1821, %1115 ]
  %1833 = phi i64 [ %1928, %1926 ], [ 0, %1115 ]
  %1834 = load ptr, ptr %129, align 8, !tbaa !28
  %1835 = getelementptr inbounds nuw %struct.Piece, ptr %1834, i64 %1833
  %1836 = getelementptr inbounds nuw i8, ptr %1835, i64 7488
  %1837 = load <8 x i64>, ptr %1836, align 64, !tbaa !26
  %1838 = getelementptr inbounds nuw i8, ptr %1835, i64 2240
  %1839 = load <8 x double>, ptr %1838, align 64, !tbaa !26
  %1840 = fcmp ogt <8 x double> %1839, zeroinitializer
  %1841 = select <8 x i1> %1840, <8 x i64> %1837, <8 x i64> zeroinitializer
  %1842 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1841)
  %1843 = icmp eq i64 %1842, 0
  br i1 %1843, label %1926, label %1844

1844:                                             ; preds = %1831
  %1845 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %1846 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1845, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1847 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1845, <8 x double> %1846, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1848 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %1849 = getelementptr inbounds nuw i8, ptr %1835, i64 5824
  %1850 = load <8 x double>, ptr %1849, align 64, !tbaa !26
  %1851 = getelementptr inbounds nuw i8, ptr %1835, i64 5888
  %1852 = load <8 x double>, ptr %1851, align 64, !tbaa !26
  %1853 = fdiv <8 x double> %1850, %1852
  %1854 = fcmp olt <8 x double> %1853, %1845
  %1855 = select <8 x i1> %1854, <8 x double> %1853, <8 x double> %1845
  %1856 = getelementptr inbounds nuw i8, ptr %1835, i64 5568
  %1857 = load <8 x double>, ptr %1856, align 64, !tbaa !26
  %1858 = fcmp olt <8 x double> %1857, %1855
  %1859 = select <8 x i1> %1858, <8 x double> %1857, <8 x double> %1855
  %1860 = fneg <8 x double> %1852
  %1861 = getelementptr inbounds nuw i8, ptr %1835, i64 7104
  %1862 = load <8 x double>, ptr %1861, align 64, !tbaa !26
  br label %1866

1863:                                             ; preds = %1866
  %1864 = getelementptr inbounds nuw i8, ptr %1835, i64 5952
  store <8 x double> %1917, ptr %1864, align 64, !tbaa !26
  %1865 = load i64, ptr %144, align 8, !tbaa !20
  br label %1926

1866:                                             ; preds = %1844, %1866
  %1867 = phi <8 x i64> [ %1841, %1844 ], [ %1920, %1866 ]
  %1868 = phi i32 [ 0, %1844 ], [ %1921, %1866 ]
  %1869 = phi <8 x double> [ %1859, %1844 ], [ %1917, %1866 ]
  %1870 = fadd <8 x double> %1869, splat (double 2.731500e+02)
  %1871 = fcmp ogt <8 x double> %1869, zeroinitializer
  %1872 = select <8 x i1> %1871, <8 x double> %1869, <8 x double> zeroinitializer
  %1873 = fadd <8 x double> %1872, splat (double 2.731500e+02)
  %1874 = fadd <8 x double> %1873, splat (double 0xC08451671D164BD4)
  %1875 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %1874
  %1876 = fsub <8 x double> %1873, %1875
  %1877 = fadd <8 x double> %1876, splat (double 0x40923C3565924845)
  %1878 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1876, <8 x double> %1877, <8 x double> splat (double 0xC12619EA558539E6))
  %1879 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1876, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %1880 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1876, <8 x double> %1879, <8 x double> splat (double 0xC148A99584203885))
  %1881 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1876, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %1882 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1876, <8 x double> %1881, <8 x double> splat (double 0x4118B9E59F2691E5))
  %1883 = fmul <8 x double> %1882, splat (double 2.000000e+00)
  %1884 = fmul <8 x double> %1878, splat (double 4.000000e+00)
  %1885 = fneg <8 x double> %1882
  %1886 = fmul <8 x double> %1884, %1885
  %1887 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1880, <8 x double> %1880, <8 x double> %1886)
  %1888 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1887)
  %1889 = fsub <8 x double> %1888, %1880
  %1890 = fdiv <8 x double> %1883, %1889
  %1891 = fmul <8 x double> %1890, %1890
  %1892 = fmul <8 x double> %1891, splat (double 1.000000e+06)
  %1893 = fmul <8 x double> %1891, %1892
  %1894 = fmul <8 x double> %1870, splat (double 4.615260e+02)
  %1895 = fdiv <8 x double> %1893, %1894
  %1896 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1860, <8 x double> %1869, <8 x double> %1850)
  %1897 = fsub <8 x double> %1895, %1848
  %1898 = fcmp ogt <8 x double> %1897, zeroinitializer
  %1899 = select <8 x i1> %1898, <8 x double> %1897, <8 x double> zeroinitializer
  %1900 = fmul <8 x double> %1847, %1899
  %1901 = fdiv <8 x double> %1900, %1862
  %1902 = fsub <8 x double> %1896, %1901
  %1903 = fmul <8 x double> %1847, %1895
  %1904 = fdiv <8 x double> %1847, %1894
  %1905 = fadd <8 x double> %1904, splat (double -1.000000e+00)
  %1906 = fmul <8 x double> %1905, %1903
  %1907 = fdiv <8 x double> %1906, %1870
  %1908 = fdiv <8 x double> %1907, %1862
  %1909 = fcmp ule <8 x double> %1895, %1848
  %1910 = select <8 x i1> %1909, <8 x double> zeroinitializer, <8 x double> %1908
  %1911 = fsub <8 x double> %1860, %1910
  %1912 = fdiv <8 x double> %1902, %1911
  %1913 = fsub <8 x double> %1869, %1912
  %1914 = fcmp olt <8 x double> %1913, %1855
  %1915 = select <8 x i1> %1914, <8 x double> %1913, <8 x double> %1855
  %1916 = icmp eq <8 x i64> %1867, zeroinitializer
  %1917 = select <8 x i1> %1916, <8 x double> %1869, <8 x double> %1915
  %1918 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1912)
  %1919 = fcmp oge <8 x double> %1918, splat (double 0x3EB0C6F7A0B5ED8D)
  %1920 = select <8 x i1> %1919, <8 x i64> %1867, <8 x i64> zeroinitializer
  %1921 = add nuw nsw i32 %1868, 1
  %1922 = icmp samesign ult i32 %1868, 7
  %1923 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1920)
  %1924 = icmp ne i64 %1923, 0
  %1925 = select i1 %1922, i1 %1924, i1 false
  br i1 %1925, label %1866, label %1863, !llvm.loop !84

1926:                                             ; preds = %1831, %1863
  %1927 = phi i64 [ %1832, %1831 ], [ %1865, %1863 ]
  %1928 = add nuw nsw i64 %1833, 1
  %1929 = icmp slt i64 %1928, %1927
  br i1 %1929, label %1831, label %1823, !llvm.loop !85

1930:                                             ; preds = %1825
  %1931 = sext <8 x i1> %1828 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %1931, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %1932 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %1933 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %1934 = fadd <8 x double> %1932, %1933
  store <8 x double> %1934, ptr %6, align 64, !tbaa !26
  %1935 = load ptr, ptr %162, align 8
  %1936 = load ptr, ptr %164, align 8
  %1937 = load ptr, ptr %165, align 8
  br label %1938

1938:                                             ; preds = %2008, %1930
  %1939 = phi i64 [ 0, %1930 ], [ %2009, %2008 ]
  %1940 = getelementptr inbounds nuw i64, ptr %4, i64 %1939
  %1941 = load i64, ptr %1940, align 8, !tbaa !30
  %1942 = icmp eq i64 %1941, 0
  br i1 %1942, label %2008, label %1943

1943:                                             ; preds = %1938
  %1944 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %1939
  %1945 = load i64, ptr %1944, align 8, !tbaa !30
  %1946 = shl nsw i64 %1945, 1
  %1947 = or disjoint i64 %1946, 1
  %1948 = getelementptr inbounds i64, ptr %1935, i64 %1947
  %1949 = load i64, ptr %1948, align 8, !tbaa !30
  %1950 = shl nuw nsw i64 %1939, 1
  %1951 = or disjoint i64 %1950, 1
  %1952 = getelementptr inbounds nuw [16 x i64], ptr %163, i64 0, i64 %1951
  %1953 = getelementptr inbounds i64, ptr %1937, i64 %1947
  %1954 = load i64, ptr %1953, align 8, !tbaa !30
  %1955 = shl nsw i64 %1954, 4
  %1956 = getelementptr inbounds i8, ptr %1936, i64 %1955
  %1957 = getelementptr inbounds nuw double, ptr %6, i64 %1939
  %1958 = load double, ptr %1957, align 8, !tbaa !40
  %1959 = load i64, ptr %1952, align 8, !tbaa !30
  %1960 = getelementptr i8, ptr %1956, i64 -16
  %1961 = icmp sgt i64 %1959, 0
  br i1 %1961, label %1962, label %1971

1962:                                             ; preds = %1943, %1968
  %1963 = phi i64 [ %1969, %1968 ], [ %1959, %1943 ]
  %1964 = shl i64 %1963, 4
  %1965 = getelementptr i8, ptr %1960, i64 %1964
  %1966 = load double, ptr %1965, align 8, !tbaa !40
  %1967 = fcmp ugt double %1958, %1966
  br i1 %1967, label %1971, label %1968

1968:                                             ; preds = %1962
  %1969 = add nsw i64 %1963, -1
  store i64 %1969, ptr %1952, align 8, !tbaa !30
  %1970 = icmp sgt i64 %1963, 1
  br i1 %1970, label %1962, label %1971, !llvm.loop !67

1971:                                             ; preds = %1968, %1962, %1943
  %1972 = phi i64 [ %1959, %1943 ], [ 0, %1968 ], [ %1963, %1962 ]
  %1973 = icmp slt i64 %1972, %1949
  br i1 %1973, label %1974, label %1983

1974:                                             ; preds = %1971, %1980
  %1975 = phi i64 [ %1981, %1980 ], [ %1972, %1971 ]
  %1976 = shl nsw i64 %1975, 4
  %1977 = getelementptr inbounds i8, ptr %1956, i64 %1976
  %1978 = load double, ptr %1977, align 8, !tbaa !40
  %1979 = fcmp ule double %1958, %1978
  br i1 %1979, label %1988, label %1980

1980:                                             ; preds = %1974
  %1981 = add i64 %1975, 1
  store i64 %1981, ptr %1952, align 8, !tbaa !30
  %1982 = icmp eq i64 %1981, %1949
  br i1 %1982, label %1983, label %1974, !llvm.loop !68

1983:                                             ; preds = %1980, %1971
  %1984 = shl i64 %1949, 4
  %1985 = getelementptr i8, ptr %1956, i64 %1984
  %1986 = getelementptr i8, ptr %1985, i64 -8
  %1987 = load double, ptr %1986, align 8, !tbaa !40
  br label %2005

1988:                                             ; preds = %1974
  %1989 = shl nsw i64 %1975, 1
  %1990 = or disjoint i64 %1989, 1
  %1991 = getelementptr inbounds double, ptr %1956, i64 %1990
  %1992 = load double, ptr %1991, align 8, !tbaa !40
  %1993 = icmp sgt i64 %1975, 0
  br i1 %1993, label %1994, label %2005

1994:                                             ; preds = %1988
  %1995 = getelementptr inbounds nuw i8, ptr %1956, i64 %1976
  %1996 = getelementptr i8, ptr %1995, i64 -8
  %1997 = load double, ptr %1996, align 8, !tbaa !40
  %1998 = getelementptr i8, ptr %1995, i64 -16
  %1999 = load double, ptr %1998, align 8, !tbaa !40
  %2000 = fsub double %1958, %1999
  %2001 = fsub double %1978, %1999
  %2002 = fdiv double %2000, %2001
  %2003 = fsub double %1992, %1997
  %2004 = tail call double @llvm.fmuladd.f64(double %2002, double %2003, double %1997)
  br label %2005

2005:                                             ; preds = %1994, %1988, %1983
  %2006 = phi double [ %2004, %1994 ], [ %1992, %1988 ], [ %1987, %1983 ]
  %2007 = getelementptr inbounds nuw double, ptr %5, i64 %1939
  store double %2006, ptr %2007, align 8, !tbaa !40
  br label %2008

2008:                                             ; preds = %2005, %1938
  %2009 = add nuw nsw i64 %1939, 1
  %2010 = icmp eq i64 %2009, 8
  br i1 %2010, label %2011, label %1938, !llvm.loop !69

2011:                                             ; preds = %2008
  %2012 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2013

2013:                                             ; preds = %1825, %2011
  %2014 = phi <8 x double> [ %2012, %2011 ], [ zeroinitializer, %1825 ]
  %2015 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %2016 = fcmp ogt <8 x double> %2015, zeroinitializer
  %2017 = sext <8 x i1> %2016 to <8 x i64>
  %2018 = xor <8 x i64> %2017, splat (i64 -1)
  %2019 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %2020 = fcmp oeq <8 x double> %2019, splat (double 1.000000e+00)
  %2021 = fcmp oeq <8 x double> %2019, splat (double 2.000000e+00)
  %2022 = or <8 x i1> %2020, %2021
  %2023 = select <8 x i1> %2022, <8 x i64> %2018, <8 x i64> zeroinitializer
  %2024 = xor <8 x i64> %2023, %2017
  %2025 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %2026 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %2027 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %2028 = icmp eq <8 x i64> %2024, splat (i64 -1)
  %2029 = select <8 x i1> %2028, <8 x double> %2027, <8 x double> %2026
  %2030 = bitcast <8 x i1> %2016 to i8
  %2031 = icmp eq i8 %2030, 0
  br i1 %2031, label %2063, label %2032

2032:                                             ; preds = %2013
  %2033 = select <8 x i1> %2016, <8 x double> %2014, <8 x double> %2029
  %2034 = fmul <8 x double> %2033, splat (double 0x3EB0C6F7A0B5ED8D)
  %2035 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2034)
  %2036 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2035)
  %2037 = fmul <8 x double> %2036, %2036
  %2038 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2036, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2037)
  %2039 = fadd <8 x double> %2038, splat (double 0x402DD4891DBECC6B)
  %2040 = fmul <8 x double> %2036, splat (double 0x40C77A698FD9BCCA)
  %2041 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2037, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2040)
  %2042 = fadd <8 x double> %2041, splat (double 0xC0B2D7440748F0B3)
  %2043 = fmul <8 x double> %2036, splat (double 0xC148A99584203885)
  %2044 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2037, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2043)
  %2045 = fadd <8 x double> %2044, splat (double 0x4118B9E59F2691E5)
  %2046 = fmul <8 x double> %2045, splat (double 2.000000e+00)
  %2047 = fneg <8 x double> %2042
  %2048 = fmul <8 x double> %2039, splat (double 4.000000e+00)
  %2049 = fneg <8 x double> %2045
  %2050 = fmul <8 x double> %2048, %2049
  %2051 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2042, <8 x double> %2042, <8 x double> %2050)
  %2052 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2051)
  %2053 = fsub <8 x double> %2047, %2052
  %2054 = fdiv <8 x double> %2046, %2053
  %2055 = fadd <8 x double> %2054, splat (double 0x408451671D164BD4)
  %2056 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2054, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2057 = fmul <8 x double> %2056, splat (double -4.000000e+00)
  %2058 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2055, <8 x double> %2055, <8 x double> %2057)
  %2059 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2058)
  %2060 = fsub <8 x double> %2055, %2059
  %2061 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2060, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2062 = select <8 x i1> %2016, <8 x double> %2061, <8 x double> %2025
  br label %2063

2063:                                             ; preds = %2032, %2013
  %2064 = phi <8 x double> [ %2033, %2032 ], [ %2029, %2013 ]
  %2065 = phi <8 x double> [ %2062, %2032 ], [ %2025, %2013 ]
  %2066 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %2067 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %2068 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %2069 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %2070 = fmul <8 x double> %2068, %2069
  %2071 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2066, <8 x double> %2067, <8 x double> %2070)
  %2072 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %2073 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %2074 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %2075 = fneg <8 x double> %2071
  %2076 = fmul <8 x double> %2074, %2075
  %2077 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2072, <8 x double> %2073, <8 x double> %2076)
  %2078 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %2079 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2074, <8 x double> %2078, <8 x double> %2072)
  %2080 = fdiv <8 x double> %2077, %2079
  %2081 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %2082 = select <8 x i1> %2028, <8 x double> %2081, <8 x double> %2026
  store <8 x double> %2082, ptr %180, align 64, !tbaa !26
  %2083 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %2084 = select <8 x i1> %2028, <8 x double> %2083, <8 x double> %2080
  store <8 x double> %2084, ptr %181, align 64, !tbaa !26
  store <8 x double> %2064, ptr %174, align 64, !tbaa !26
  %2085 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %2086 = and <8 x i64> %2085, %2023
  %2087 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2086)
  %2088 = icmp eq i64 %2087, 0
  br i1 %2088, label %2589, label %2089

2089:                                             ; preds = %2063
  %2090 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2091 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %2092 = fmul <8 x double> %2068, %2091
  %2093 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2066, <8 x double> %2090, <8 x double> %2092)
  %2094 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2095 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2096 = fdiv <8 x double> %2094, %2095
  %2097 = fmul <8 x double> %2026, splat (double 3.000000e-01)
  %2098 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2099 = fadd <8 x double> %2026, %2098
  %2100 = fadd <8 x double> %2099, splat (double 2.000000e+05)
  %2101 = fmul <8 x double> %2095, splat (double 2.870530e+02)
  %2102 = fdiv <8 x double> %2026, %2101
  %2103 = fcmp ogt <8 x double> %2064, %2097
  %2104 = select <8 x i1> %2103, <8 x double> %2064, <8 x double> %2097
  %2105 = fcmp olt <8 x double> %2104, %2100
  %2106 = select <8 x i1> %2105, <8 x double> %2104, <8 x double> %2100
  %2107 = icmp eq <8 x i64> %2023, zeroinitializer
  %2108 = select <8 x i1> %2107, <8 x double> %2064, <8 x double> %2106
  %2109 = fdiv <8 x double> %2082, splat (double 2.870530e+02)
  %2110 = fmul <8 x double> %2102, splat (double 2.000000e+00)
  %2111 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2110)
  br label %2112

2112:                                             ; preds = %2155, %2089
  %2113 = phi <8 x double> [ %2065, %2089 ], [ %2147, %2155 ]
  %2114 = phi <8 x double> [ %2097, %2089 ], [ %2346, %2155 ]
  %2115 = phi <8 x double> [ %2100, %2089 ], [ %2343, %2155 ]
  %2116 = phi <8 x i64> [ %2086, %2089 ], [ %2358, %2155 ]
  %2117 = phi i32 [ 0, %2089 ], [ %2363, %2155 ]
  %2118 = phi <8 x double> [ %2108, %2089 ], [ %2360, %2155 ]
  %2119 = fmul <8 x double> %2118, splat (double 0x3EB0C6F7A0B5ED8D)
  %2120 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2119)
  %2121 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2120)
  %2122 = fmul <8 x double> %2121, %2121
  %2123 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2121, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2122)
  %2124 = fadd <8 x double> %2123, splat (double 0x402DD4891DBECC6B)
  %2125 = fmul <8 x double> %2121, splat (double 0x40C77A698FD9BCCA)
  %2126 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2122, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2125)
  %2127 = fadd <8 x double> %2126, splat (double 0xC0B2D7440748F0B3)
  %2128 = fmul <8 x double> %2121, splat (double 0xC148A99584203885)
  %2129 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2122, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2128)
  %2130 = fadd <8 x double> %2129, splat (double 0x4118B9E59F2691E5)
  %2131 = fmul <8 x double> %2130, splat (double 2.000000e+00)
  %2132 = fneg <8 x double> %2127
  %2133 = fmul <8 x double> %2124, splat (double 4.000000e+00)
  %2134 = fneg <8 x double> %2130
  %2135 = fmul <8 x double> %2133, %2134
  %2136 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2127, <8 x double> %2127, <8 x double> %2135)
  %2137 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2136)
  %2138 = fsub <8 x double> %2132, %2137
  %2139 = fdiv <8 x double> %2131, %2138
  %2140 = fadd <8 x double> %2139, splat (double 0x408451671D164BD4)
  %2141 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2139, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2142 = fmul <8 x double> %2141, splat (double -4.000000e+00)
  %2143 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2140, <8 x double> %2140, <8 x double> %2142)
  %2144 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2143)
  %2145 = fsub <8 x double> %2140, %2144
  %2146 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2145, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2147 = select <8 x i1> %2107, <8 x double> %2113, <8 x double> %2146
  %2148 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2147, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2149 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2147, <8 x double> %2148, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2150 = load i64, ptr %144, align 8, !tbaa !20, !noalias !86
  %2151 = icmp sgt i64 %2150, 0
  br i1 %2151, label %2152, label %2155

2152:                                             ; preds = %2112
  %2153 = fdiv <8 x double> splat (double 1.000000e+00), %2149
  %2154 = fadd <8 x double> %2147, splat (double 1.000000e-09)
  br label %2366

2155:                                             ; preds = %2476, %2112
  %2156 = phi <8 x double> [ zeroinitializer, %2112 ], [ %2547, %2476 ]
  %2157 = phi <8 x double> [ zeroinitializer, %2112 ], [ %2548, %2476 ]
  %2158 = extractelement <8 x double> %2156, i64 0
  %2159 = extractelement <8 x double> %2156, i64 1
  %2160 = fadd double %2158, %2159
  %2161 = extractelement <8 x double> %2156, i64 2
  %2162 = fadd double %2160, %2161
  %2163 = extractelement <8 x double> %2156, i64 3
  %2164 = fadd double %2162, %2163
  %2165 = extractelement <8 x double> %2156, i64 4
  %2166 = fadd double %2164, %2165
  %2167 = extractelement <8 x double> %2156, i64 5
  %2168 = fadd double %2166, %2167
  %2169 = extractelement <8 x double> %2156, i64 6
  %2170 = fadd double %2168, %2169
  %2171 = extractelement <8 x double> %2156, i64 7
  %2172 = fadd double %2170, %2171
  %2173 = insertelement <8 x double> poison, double %2172, i64 0
  %2174 = extractelement <8 x double> %2157, i64 0
  %2175 = extractelement <8 x double> %2157, i64 1
  %2176 = fadd double %2174, %2175
  %2177 = extractelement <8 x double> %2157, i64 2
  %2178 = fadd double %2176, %2177
  %2179 = extractelement <8 x double> %2157, i64 3
  %2180 = fadd double %2178, %2179
  %2181 = extractelement <8 x double> %2157, i64 4
  %2182 = fadd double %2180, %2181
  %2183 = extractelement <8 x double> %2157, i64 5
  %2184 = fadd double %2182, %2183
  %2185 = extractelement <8 x double> %2157, i64 6
  %2186 = fadd double %2184, %2185
  %2187 = extractelement <8 x double> %2157, i64 7
  %2188 = fadd double %2186, %2187
  %2189 = shufflevector <8 x double> %2173, <8 x double> poison, <8 x i32> zeroinitializer
  %2190 = insertelement <8 x double> poison, double %2188, i64 0
  %2191 = shufflevector <8 x double> %2190, <8 x double> poison, <8 x i32> zeroinitializer
  %2192 = fsub <8 x double> %2118, %2082
  %2193 = fcmp ogt <8 x double> %2192, zeroinitializer
  %2194 = select <8 x i1> %2193, <8 x double> %2192, <8 x double> zeroinitializer
  %2195 = fadd <8 x double> %2147, splat (double 2.731500e+02)
  %2196 = fdiv <8 x double> %2194, splat (double 4.615260e+02)
  %2197 = fadd <8 x double> %2109, %2196
  %2198 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2199 = fdiv <8 x double> %2197, %2198
  %2200 = fmul <8 x double> %2198, %2199
  %2201 = fdiv <8 x double> %2118, %2200
  %2202 = load <8 x double>, ptr %173, align 64, !tbaa !26, !noalias !89
  %2203 = fsub <8 x double> %2118, %2202
  %2204 = load <8 x double>, ptr %186, align 64, !tbaa !26, !noalias !89
  %2205 = fsub <8 x double> %2203, %2204
  %2206 = load <8 x double>, ptr %187, align 64, !tbaa !26, !noalias !89
  %2207 = load <8 x double>, ptr %138, align 64, !tbaa !26, !noalias !89
  %2208 = fcmp une <8 x double> %2207, splat (double 2.000000e+00)
  %2209 = load <8 x double>, ptr %188, align 64, !tbaa !26, !noalias !89
  %2210 = select <8 x i1> %2208, <8 x double> zeroinitializer, <8 x double> %2209
  %2211 = fadd <8 x double> %2206, %2210
  %2212 = fcmp ule <8 x double> %2203, zeroinitializer
  %2213 = fcmp ule <8 x double> %2211, zeroinitializer
  %2214 = or <8 x i1> %2212, %2213
  %2215 = fmul <8 x double> %2199, splat (double 2.000000e+00)
  %2216 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2215)
  %2217 = fmul <8 x double> %2216, %2211
  %2218 = fadd <8 x double> %2203, splat (double 2.000000e+02)
  %2219 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2218)
  %2220 = select <8 x i1> %2212, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2219
  %2221 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2203, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2222 = fmul <8 x double> %2221, %2217
  %2223 = fmul <8 x double> %2220, %2220
  %2224 = fmul <8 x double> %2220, %2223
  %2225 = fdiv <8 x double> %2222, %2224
  %2226 = fmul <8 x double> %2203, %2217
  %2227 = fdiv <8 x double> %2226, %2220
  %2228 = select <8 x i1> %2214, <8 x double> zeroinitializer, <8 x double> %2227
  %2229 = select <8 x i1> %2214, <8 x double> zeroinitializer, <8 x double> %2225
  %2230 = fcmp ule <8 x double> %2205, zeroinitializer
  %2231 = load <8 x double>, ptr %189, align 64, !tbaa !26, !noalias !89
  %2232 = fmul <8 x double> %2205, %2231
  %2233 = select <8 x i1> %2230, <8 x double> zeroinitializer, <8 x double> %2232
  %2234 = fadd <8 x double> %2233, %2228
  %2235 = select <8 x i1> %2230, <8 x double> zeroinitializer, <8 x double> %2231
  %2236 = fadd <8 x double> %2235, %2229
  %2237 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2238 = fsub <8 x double> %2202, %2118
  %2239 = fcmp ule <8 x double> %2238, zeroinitializer
  %2240 = fcmp ule <8 x double> %2237, zeroinitializer
  %2241 = or <8 x i1> %2239, %2240
  %2242 = fmul <8 x double> %2111, %2237
  %2243 = fadd <8 x double> %2238, splat (double 2.000000e+02)
  %2244 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2243)
  %2245 = select <8 x i1> %2239, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2244
  %2246 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2238, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2247 = fmul <8 x double> %2246, %2242
  %2248 = fmul <8 x double> %2245, %2245
  %2249 = fmul <8 x double> %2245, %2248
  %2250 = fdiv <8 x double> %2247, %2249
  %2251 = fmul <8 x double> %2238, %2242
  %2252 = fdiv <8 x double> %2251, %2245
  %2253 = load <8 x double>, ptr %149, align 64, !tbaa !26, !noalias !92
  %2254 = load <8 x double>, ptr %175, align 64, !tbaa !26, !noalias !92
  %2255 = load <8 x double>, ptr %150, align 64, !tbaa !26, !noalias !92
  %2256 = load <8 x double>, ptr %176, align 64, !tbaa !26, !noalias !92
  %2257 = fmul <8 x double> %2255, %2256
  %2258 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2253, <8 x double> %2254, <8 x double> %2257)
  %2259 = load <8 x double>, ptr %179, align 64, !tbaa !26, !noalias !92
  %2260 = load <8 x double>, ptr %148, align 64, !tbaa !26, !noalias !92
  %2261 = load <8 x double>, ptr %177, align 64, !tbaa !26, !noalias !92
  %2262 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2259, <8 x double> %2260, <8 x double> %2261)
  %2263 = load <8 x double>, ptr %178, align 64, !tbaa !26, !noalias !92
  %2264 = fneg <8 x double> %2258
  %2265 = fmul <8 x double> %2259, %2264
  %2266 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2261, <8 x double> %2263, <8 x double> %2265)
  %2267 = fdiv <8 x double> %2266, %2262
  %2268 = fcmp ogt <8 x double> %2194, splat (double 2.000000e+03)
  %2269 = select <8 x i1> %2268, <8 x double> %2194, <8 x double> splat (double 2.000000e+03)
  %2270 = fmul <8 x double> %2269, splat (double 0x3EB0C6F7A0B5ED8D)
  %2271 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2270)
  %2272 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2271)
  %2273 = fmul <8 x double> %2272, %2272
  %2274 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2272, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2273)
  %2275 = fadd <8 x double> %2274, splat (double 0x402DD4891DBECC6B)
  %2276 = fmul <8 x double> %2272, splat (double 0x40C77A698FD9BCCA)
  %2277 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2273, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2276)
  %2278 = fadd <8 x double> %2277, splat (double 0xC0B2D7440748F0B3)
  %2279 = fmul <8 x double> %2272, splat (double 0xC148A99584203885)
  %2280 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2273, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2279)
  %2281 = fadd <8 x double> %2280, splat (double 0x4118B9E59F2691E5)
  %2282 = fmul <8 x double> %2281, splat (double 2.000000e+00)
  %2283 = fneg <8 x double> %2278
  %2284 = fmul <8 x double> %2275, splat (double 4.000000e+00)
  %2285 = fneg <8 x double> %2281
  %2286 = fmul <8 x double> %2284, %2285
  %2287 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2278, <8 x double> %2278, <8 x double> %2286)
  %2288 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2287)
  %2289 = fsub <8 x double> %2283, %2288
  %2290 = fdiv <8 x double> %2282, %2289
  %2291 = fadd <8 x double> %2290, splat (double 0x408451671D164BD4)
  %2292 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2290, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2293 = fmul <8 x double> %2292, splat (double -4.000000e+00)
  %2294 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2291, <8 x double> %2291, <8 x double> %2293)
  %2295 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2294)
  %2296 = fsub <8 x double> %2291, %2295
  %2297 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2296, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2298 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2297, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2299 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2297, <8 x double> %2298, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2300 = fadd <8 x double> %2297, splat (double 2.731500e+02)
  %2301 = fcmp ule <8 x double> %2297, %2267
  %2302 = load <8 x double>, ptr %191, align 64, !tbaa !26, !noalias !92
  %2303 = fmul <8 x double> %2262, %2302
  %2304 = fadd <8 x double> %2262, %2302
  %2305 = fdiv <8 x double> %2303, %2304
  %2306 = fdiv <8 x double> %2305, %2299
  %2307 = fmul <8 x double> %2300, splat (double 4.615260e+02)
  %2308 = fmul <8 x double> %2269, %2299
  %2309 = fmul <8 x double> %2297, %2302
  %2310 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2267, <8 x double> %2262, <8 x double> %2309)
  %2311 = fdiv <8 x double> %2310, %2304
  %2312 = select <8 x i1> %2301, <8 x double> %2267, <8 x double> %2311
  store <8 x double> %2312, ptr %181, align 64, !tbaa !26, !noalias !92
  %2313 = fsub <8 x double> %2297, %2267
  %2314 = fmul <8 x double> %2313, %2306
  %2315 = select <8 x i1> %2301, <8 x double> zeroinitializer, <8 x double> %2314
  %2316 = fmul <8 x double> %2195, splat (double 4.615260e+02)
  %2317 = fmul <8 x double> %2195, %2316
  %2318 = fmul <8 x double> %2118, %2149
  %2319 = fdiv <8 x double> %2317, %2318
  %2320 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2260, <8 x double> %2118, <8 x double> %2093)
  %2321 = fsub <8 x double> %2189, %2315
  %2322 = fmul <8 x double> %2321, splat (double -4.615260e+02)
  %2323 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2096, <8 x double> %2320, <8 x double> %2322)
  %2324 = fmul <8 x double> %2252, splat (double -2.870530e+02)
  %2325 = select <8 x i1> %2241, <8 x double> splat (double -0.000000e+00), <8 x double> %2324
  %2326 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2201, <8 x double> %2234, <8 x double> %2325)
  %2327 = fadd <8 x double> %2326, %2323
  %2328 = fneg <8 x double> %2300
  %2329 = fmul <8 x double> %2307, %2328
  %2330 = fdiv <8 x double> %2329, %2308
  %2331 = fmul <8 x double> %2330, %2306
  %2332 = select <8 x i1> %2301, <8 x double> splat (double -0.000000e+00), <8 x double> %2331
  %2333 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2191, <8 x double> %2319, <8 x double> %2332)
  %2334 = fmul <8 x double> %2333, splat (double -4.615260e+02)
  %2335 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2096, <8 x double> %2260, <8 x double> %2334)
  %2336 = fmul <8 x double> %2250, splat (double 2.870530e+02)
  %2337 = select <8 x i1> %2241, <8 x double> zeroinitializer, <8 x double> %2336
  %2338 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2201, <8 x double> %2236, <8 x double> %2337)
  %2339 = fadd <8 x double> %2338, %2335
  %2340 = fcmp ule <8 x double> %2327, zeroinitializer
  %2341 = fcmp olt <8 x double> %2115, %2118
  %2342 = select <8 x i1> %2340, <8 x i1> splat (i1 true), <8 x i1> %2341
  %2343 = select <8 x i1> %2342, <8 x double> %2115, <8 x double> %2118
  %2344 = fcmp ogt <8 x double> %2114, %2118
  %2345 = select <8 x i1> %2344, <8 x double> %2114, <8 x double> %2118
  %2346 = select <8 x i1> %2340, <8 x double> %2345, <8 x double> %2114
  %2347 = fdiv <8 x double> %2327, %2339
  %2348 = fsub <8 x double> %2118, %2347
  %2349 = fcmp uge <8 x double> %2346, %2348
  %2350 = fcmp uge <8 x double> %2348, %2343
  %2351 = or <8 x i1> %2349, %2350
  %2352 = fadd <8 x double> %2346, %2343
  %2353 = fmul <8 x double> %2352, splat (double 5.000000e-01)
  %2354 = select <8 x i1> %2351, <8 x double> %2353, <8 x double> %2348
  %2355 = fsub <8 x double> %2354, %2118
  %2356 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2355)
  %2357 = fcmp oge <8 x double> %2356, splat (double 2.000000e-01)
  %2358 = select <8 x i1> %2357, <8 x i64> %2116, <8 x i64> zeroinitializer
  %2359 = icmp eq <8 x i64> %2358, zeroinitializer
  %2360 = select <8 x i1> %2359, <8 x double> %2118, <8 x double> %2354
  %2361 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2358)
  %2362 = icmp ne i64 %2361, 0
  %2363 = add nuw nsw i32 %2117, 1
  %2364 = icmp samesign ult i32 %2117, 59
  %2365 = select i1 %2362, i1 %2364, i1 false
  br i1 %2365, label %2112, label %2552, !llvm.loop !95

2366:                                             ; preds = %2152, %2476
  %2367 = phi <8 x double> [ zeroinitializer, %2152 ], [ %2548, %2476 ]
  %2368 = phi <8 x double> [ zeroinitializer, %2152 ], [ %2547, %2476 ]
  %2369 = phi i64 [ 0, %2152 ], [ %2549, %2476 ]
  %2370 = load ptr, ptr %129, align 8, !tbaa !28, !noalias !86
  %2371 = getelementptr inbounds nuw %struct.Piece, ptr %2370, i64 %2369
  %2372 = getelementptr inbounds nuw i8, ptr %2371, i64 5824
  %2373 = load <8 x double>, ptr %2372, align 64, !tbaa !26, !noalias !86
  %2374 = getelementptr inbounds nuw i8, ptr %2371, i64 5888
  %2375 = load <8 x double>, ptr %2374, align 64, !tbaa !26, !noalias !86
  %2376 = getelementptr inbounds nuw i8, ptr %2371, i64 7296
  %2377 = load <8 x double>, ptr %2376, align 64, !tbaa !26, !noalias !86
  %2378 = fcmp ule <8 x double> %2377, splat (double 1.000000e+00)
  %2379 = fmul <8 x double> %2147, %2375
  %2380 = fcmp ogt <8 x double> %2373, %2379
  %2381 = and <8 x i1> %2378, %2380
  %2382 = fneg <8 x double> %2375
  %2383 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2382, <8 x double> %2147, <8 x double> %2373)
  %2384 = fmul <8 x double> %2153, %2383
  %2385 = select <8 x i1> %2381, <8 x double> %2384, <8 x double> zeroinitializer
  %2386 = fmul <8 x double> %2153, %2382
  %2387 = fdiv <8 x double> %2373, %2375
  %2388 = select <8 x i1> %2381, <8 x double> %2147, <8 x double> %2387
  %2389 = getelementptr inbounds nuw i8, ptr %2371, i64 7488
  %2390 = load <8 x i64>, ptr %2389, align 64, !tbaa !26, !noalias !86
  %2391 = getelementptr inbounds nuw i8, ptr %2371, i64 2240
  %2392 = load <8 x double>, ptr %2391, align 64, !tbaa !26, !noalias !86
  %2393 = fcmp ule <8 x double> %2392, zeroinitializer
  %2394 = xor <8 x i1> %2378, splat (i1 true)
  %2395 = select <8 x i1> %2394, <8 x i1> splat (i1 true), <8 x i1> %2393
  %2396 = getelementptr inbounds nuw i8, ptr %2371, i64 5952
  %2397 = load <8 x double>, ptr %2396, align 64, !tbaa !26, !noalias !86
  %2398 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2382, <8 x double> %2397, <8 x double> %2373)
  %2399 = fcmp ogt <8 x double> %2398, zeroinitializer
  %2400 = select <8 x i1> %2399, <8 x double> %2398, <8 x double> zeroinitializer
  %2401 = fmul <8 x double> %2153, %2400
  %2402 = icmp eq <8 x i64> %2390, zeroinitializer
  %2403 = select <8 x i1> %2395, <8 x i1> splat (i1 true), <8 x i1> %2402
  %2404 = select <8 x i1> %2403, <8 x double> %2385, <8 x double> %2401
  %2405 = select <8 x i1> %2403, <8 x double> %2388, <8 x double> %2397
  %2406 = select <8 x i1> %2403, <8 x i1> %2381, <8 x i1> zeroinitializer
  %2407 = select <8 x i1> %2406, <8 x double> %2386, <8 x double> zeroinitializer
  %2408 = load i64, ptr %119, align 16, !tbaa !21, !noalias !96
  %2409 = sitofp i64 %2408 to double
  %2410 = insertelement <8 x double> poison, double %2409, i64 0
  %2411 = shufflevector <8 x double> %2410, <8 x double> poison, <8 x i32> zeroinitializer
  %2412 = icmp sgt i64 %2408, 0
  br i1 %2412, label %2413, label %2476

2413:                                             ; preds = %2366
  %2414 = getelementptr inbounds nuw i8, ptr %2371, i64 7608
  %2415 = load ptr, ptr %2414, align 8, !tbaa !74, !noalias !96
  %2416 = getelementptr inbounds nuw i8, ptr %2371, i64 7616
  %2417 = load ptr, ptr %2416, align 64, !tbaa !75, !noalias !96
  %2418 = getelementptr inbounds nuw i8, ptr %2371, i64 7552
  %2419 = load i64, ptr %2418, align 64, !tbaa !31, !noalias !96
  %2420 = getelementptr inbounds nuw i8, ptr %2371, i64 7632
  %2421 = getelementptr inbounds nuw i8, ptr %2371, i64 7624
  %2422 = getelementptr inbounds nuw i8, ptr %2371, i64 7640
  br label %2423

2423:                                             ; preds = %2413, %2458
  %2424 = phi <8 x i64> [ splat (i64 -1), %2413 ], [ %2438, %2458 ]
  %2425 = phi i64 [ %2408, %2413 ], [ %2429, %2458 ]
  %2426 = phi <8 x double> [ %2411, %2413 ], [ %2474, %2458 ]
  %2427 = phi <8 x double> [ zeroinitializer, %2413 ], [ %2470, %2458 ]
  %2428 = phi <8 x double> [ zeroinitializer, %2413 ], [ %2468, %2458 ]
  %2429 = add nsw i64 %2425, -1
  %2430 = getelementptr inbounds nuw <8 x double>, ptr %2415, i64 %2429
  %2431 = load <8 x double>, ptr %2430, align 64, !tbaa !26, !noalias !96
  %2432 = getelementptr inbounds nuw <8 x double>, ptr %2417, i64 %2429
  %2433 = load <8 x double>, ptr %2432, align 64, !tbaa !26, !noalias !96
  %2434 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2433, <8 x double> %2147, <8 x double> %2431)
  %2435 = fcmp ogt <8 x double> %2434, %2154
  %2436 = select <8 x i1> %2435, <8 x i64> %2424, <8 x i64> zeroinitializer
  %2437 = icmp sgt i64 %2425, %2419
  %2438 = select i1 %2437, <8 x i64> %2436, <8 x i64> zeroinitializer
  %2439 = icmp slt i64 %2425, %2408
  br i1 %2439, label %2440, label %2453

2440:                                             ; preds = %2423
  %2441 = load ptr, ptr %2420, align 16, !tbaa !72, !noalias !96
  %2442 = getelementptr inbounds nuw <8 x double>, ptr %2441, i64 %2425
  %2443 = load <8 x double>, ptr %2442, align 64, !tbaa !26, !noalias !96
  %2444 = fsub <8 x double> %2434, %2147
  %2445 = fmul <8 x double> %2444, %2443
  %2446 = icmp eq <8 x i64> %2438, %2424
  %2447 = select <8 x i1> %2446, <8 x double> zeroinitializer, <8 x double> %2445
  %2448 = fadd <8 x double> %2428, %2447
  %2449 = fadd <8 x double> %2433, splat (double -1.000000e+00)
  %2450 = fmul <8 x double> %2449, %2443
  %2451 = select <8 x i1> %2446, <8 x double> zeroinitializer, <8 x double> %2450
  %2452 = fadd <8 x double> %2427, %2451
  br label %2453

2453:                                             ; preds = %2440, %2423
  %2454 = phi <8 x double> [ %2448, %2440 ], [ %2428, %2423 ]
  %2455 = phi <8 x double> [ %2452, %2440 ], [ %2427, %2423 ]
  %2456 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2438)
  %2457 = icmp eq i64 %2456, 0
  br i1 %2457, label %2476, label %2458

2458:                                             ; preds = %2453
  %2459 = load ptr, ptr %2421, align 8, !tbaa !71, !noalias !96
  %2460 = getelementptr inbounds nuw <8 x double>, ptr %2459, i64 %2429
  %2461 = load <8 x double>, ptr %2460, align 64, !tbaa !26, !noalias !96
  %2462 = load ptr, ptr %2422, align 8, !tbaa !73, !noalias !96
  %2463 = getelementptr inbounds nuw <8 x double>, ptr %2462, i64 %2429
  %2464 = load <8 x double>, ptr %2463, align 64, !tbaa !26, !noalias !96
  %2465 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2464, <8 x double> %2147, <8 x double> %2461)
  %2466 = icmp eq <8 x i64> %2438, zeroinitializer
  %2467 = select <8 x i1> %2466, <8 x double> zeroinitializer, <8 x double> %2465
  %2468 = fadd <8 x double> %2454, %2467
  %2469 = select <8 x i1> %2466, <8 x double> zeroinitializer, <8 x double> %2464
  %2470 = fadd <8 x double> %2455, %2469
  %2471 = uitofp nneg i64 %2429 to double
  %2472 = insertelement <8 x double> poison, double %2471, i64 0
  %2473 = shufflevector <8 x double> %2472, <8 x double> poison, <8 x i32> zeroinitializer
  %2474 = select <8 x i1> %2466, <8 x double> %2426, <8 x double> %2473
  %2475 = icmp samesign ugt i64 %2425, 1
  br i1 %2475, label %2423, label %2476, !llvm.loop !99

2476:                                             ; preds = %2458, %2453, %2366
  %2477 = phi <8 x double> [ %2411, %2366 ], [ %2426, %2453 ], [ %2474, %2458 ]
  %2478 = phi <8 x double> [ zeroinitializer, %2366 ], [ %2454, %2453 ], [ %2468, %2458 ]
  %2479 = phi <8 x double> [ zeroinitializer, %2366 ], [ %2455, %2453 ], [ %2470, %2458 ]
  %2480 = getelementptr inbounds nuw i8, ptr %2371, i64 6080
  %2481 = load <8 x double>, ptr %2480, align 64, !tbaa !26, !noalias !86
  %2482 = getelementptr inbounds nuw i8, ptr %2371, i64 5504
  %2483 = load <8 x double>, ptr %2482, align 64, !tbaa !26, !noalias !86
  %2484 = getelementptr inbounds nuw i8, ptr %2371, i64 7040
  %2485 = load <8 x double>, ptr %2484, align 64, !tbaa !26, !noalias !86
  %2486 = fneg <8 x double> %2485
  %2487 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2481, <8 x double> %2483, <8 x double> %2486)
  %2488 = getelementptr inbounds nuw i8, ptr %2371, i64 6976
  %2489 = load <8 x double>, ptr %2488, align 64, !tbaa !26, !noalias !86
  %2490 = fadd <8 x double> %2481, %2489
  %2491 = getelementptr inbounds nuw i8, ptr %2371, i64 7360
  %2492 = load <8 x i64>, ptr %2491, align 64, !tbaa !26, !noalias !86
  %2493 = getelementptr inbounds nuw i8, ptr %2371, i64 7712
  %2494 = load ptr, ptr %2493, align 32, !tbaa !80, !noalias !86
  %2495 = load <8 x double>, ptr %2494, align 64, !tbaa !26, !noalias !86
  %2496 = fmul <8 x double> %2481, %2495
  %2497 = icmp eq <8 x i64> %2492, zeroinitializer
  %2498 = select <8 x i1> %2497, <8 x double> %2487, <8 x double> %2496
  %2499 = getelementptr inbounds nuw i8, ptr %2371, i64 7720
  %2500 = load ptr, ptr %2499, align 8, !tbaa !81, !noalias !86
  %2501 = load <8 x double>, ptr %2500, align 64, !tbaa !26, !noalias !86
  %2502 = fsub <8 x double> splat (double 1.000000e+00), %2501
  %2503 = fmul <8 x double> %2481, %2502
  %2504 = select <8 x i1> %2497, <8 x double> %2490, <8 x double> %2503
  %2505 = fneg <8 x double> %2504
  %2506 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2505, <8 x double> %2147, <8 x double> %2498)
  %2507 = fcmp olt <8 x double> %2477, %2411
  %2508 = and <8 x i1> %2378, %2507
  %2509 = fcmp ogt <8 x double> %2478, zeroinitializer
  %2510 = fcmp oge <8 x double> %2506, zeroinitializer
  %2511 = and <8 x i1> %2509, %2510
  %2512 = and <8 x i1> %2508, %2511
  %2513 = sext <8 x i1> %2512 to <8 x i64>
  %2514 = xor <8 x i64> %2513, splat (i64 -1)
  %2515 = fadd <8 x double> %2478, %2506
  %2516 = fcmp ogt <8 x double> %2515, zeroinitializer
  %2517 = select <8 x i1> %2516, <8 x i1> %2508, <8 x i1> zeroinitializer
  %2518 = select <8 x i1> %2517, <8 x i64> %2514, <8 x i64> zeroinitializer
  %2519 = or <8 x i64> %2518, %2513
  %2520 = fmul <8 x double> %2153, %2506
  %2521 = select <8 x i1> %2512, <8 x double> %2520, <8 x double> zeroinitializer
  %2522 = icmp eq <8 x i64> %2519, zeroinitializer
  %2523 = select <8 x i1> %2522, <8 x double> %2404, <8 x double> %2521
  %2524 = select <8 x i1> %2522, <8 x double> %2405, <8 x double> %2147
  %2525 = fsub <8 x double> %2479, %2504
  %2526 = fmul <8 x double> %2153, %2525
  %2527 = select <8 x i1> %2522, <8 x double> %2407, <8 x double> %2526
  %2528 = getelementptr inbounds nuw i8, ptr %2371, i64 5632
  store <8 x double> %2523, ptr %2528, align 64, !tbaa !26, !noalias !86
  %2529 = getelementptr inbounds nuw i8, ptr %2371, i64 5568
  store <8 x double> %2524, ptr %2529, align 64, !tbaa !26, !noalias !86
  %2530 = fmul <8 x double> %2153, %2478
  %2531 = fmul <8 x double> %2153, %2515
  %2532 = icmp eq <8 x i64> %2518, zeroinitializer
  %2533 = select <8 x i1> %2532, <8 x double> zeroinitializer, <8 x double> %2531
  %2534 = select <8 x i1> %2512, <8 x double> %2530, <8 x double> %2533
  %2535 = getelementptr inbounds nuw i8, ptr %2371, i64 5696
  store <8 x double> %2534, ptr %2535, align 64, !tbaa !26, !noalias !86
  %2536 = load i64, ptr %119, align 16, !tbaa !21, !noalias !86
  %2537 = sitofp i64 %2536 to double
  %2538 = insertelement <8 x double> poison, double %2537, i64 0
  %2539 = shufflevector <8 x double> %2538, <8 x double> poison, <8 x i32> zeroinitializer
  %2540 = select <8 x i1> %2522, <8 x double> %2539, <8 x double> %2477
  %2541 = getelementptr inbounds nuw i8, ptr %2371, i64 5760
  store <8 x double> %2540, ptr %2541, align 64, !tbaa !26, !noalias !86
  %2542 = getelementptr inbounds nuw i8, ptr %2371, i64 128
  %2543 = load <8 x double>, ptr %2542, align 64, !tbaa !26, !noalias !86
  %2544 = fadd <8 x double> %2523, %2534
  %2545 = fmul <8 x double> %2543, %2544
  %2546 = fmul <8 x double> %2543, %2527
  %2547 = fadd <8 x double> %2368, %2545
  %2548 = fadd <8 x double> %2367, %2546
  %2549 = add nuw nsw i64 %2369, 1
  %2550 = load i64, ptr %144, align 8, !tbaa !20, !noalias !86
  %2551 = icmp slt i64 %2549, %2550
  br i1 %2551, label %2366, label %2155, !llvm.loop !100

2552:                                             ; preds = %2155
  %2553 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %2554 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %2555 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %2556 = load <8 x double>, ptr %193, align 64, !tbaa !26
  %2557 = fmul <8 x double> %2555, %2556
  %2558 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2553, <8 x double> %2554, <8 x double> %2557)
  %2559 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2560 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %2561 = fsub <8 x double> %2560, %2360
  %2562 = fcmp ule <8 x double> %2561, zeroinitializer
  %2563 = fcmp ule <8 x double> %2559, zeroinitializer
  %2564 = or <8 x i1> %2563, %2562
  %2565 = fmul <8 x double> %2111, %2559
  %2566 = fadd <8 x double> %2561, splat (double 2.000000e+02)
  %2567 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2566)
  %2568 = select <8 x i1> %2562, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2567
  %2569 = fmul <8 x double> %2565, %2561
  %2570 = fdiv <8 x double> %2569, %2568
  %2571 = fmul <8 x double> %2570, splat (double 2.870530e+02)
  %2572 = select <8 x i1> %2564, <8 x double> zeroinitializer, <8 x double> %2571
  %2573 = fdiv <8 x double> %2572, %2096
  %2574 = fsub <8 x double> %2573, %2558
  %2575 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %2576 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2577 = fmul <8 x double> %2199, %2576
  %2578 = fdiv <8 x double> %2234, %2577
  %2579 = fadd <8 x double> %2575, %2578
  %2580 = fdiv <8 x double> %2574, %2579
  %2581 = fcmp ogt <8 x double> %2580, zeroinitializer
  %2582 = select <8 x i1> %2581, <8 x double> %2580, <8 x double> zeroinitializer
  %2583 = fcmp olt <8 x double> %2582, %2360
  %2584 = select <8 x i1> %2583, <8 x double> %2582, <8 x double> %2360
  %2585 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %2586 = select <8 x i1> %2107, <8 x double> %2585, <8 x double> %2584
  store <8 x double> %2586, ptr %180, align 64, !tbaa !26
  %2587 = select <8 x i1> %2107, <8 x double> %2084, <8 x double> %2312
  store <8 x double> %2587, ptr %181, align 64, !tbaa !26
  store <8 x double> %2360, ptr %174, align 64, !tbaa !26
  store <8 x double> %2147, ptr %194, align 64, !tbaa !26
  %2588 = load i64, ptr %144, align 8, !tbaa !20
  br label %2757

2589:                                             ; preds = %2063
  store <8 x double> %2065, ptr %194, align 64, !tbaa !26
  br i1 %1827, label %2590, label %2760

2590:                                             ; preds = %2589
  %2591 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2065, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2592 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2065, <8 x double> %2591, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2593 = fdiv <8 x double> splat (double 1.000000e+00), %2592
  %2594 = fadd <8 x double> %2065, splat (double 1.000000e-09)
  br label %2595

2595:                                             ; preds = %2590, %2692
  %2596 = phi i64 [ 0, %2590 ], [ %2754, %2692 ]
  %2597 = load ptr, ptr %129, align 8, !tbaa !28, !noalias !101
  %2598 = getelementptr inbounds nuw %struct.Piece, ptr %2597, i64 %2596
  %2599 = getelementptr inbounds nuw i8, ptr %2598, i64 5824
  %2600 = load <8 x double>, ptr %2599, align 64, !tbaa !26, !noalias !101
  %2601 = getelementptr inbounds nuw i8, ptr %2598, i64 5888
  %2602 = load <8 x double>, ptr %2601, align 64, !tbaa !26, !noalias !101
  %2603 = getelementptr inbounds nuw i8, ptr %2598, i64 7296
  %2604 = load <8 x double>, ptr %2603, align 64, !tbaa !26, !noalias !101
  %2605 = fcmp ule <8 x double> %2604, splat (double 1.000000e+00)
  %2606 = fmul <8 x double> %2065, %2602
  %2607 = fcmp ogt <8 x double> %2600, %2606
  %2608 = and <8 x i1> %2605, %2607
  %2609 = fneg <8 x double> %2602
  %2610 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2609, <8 x double> %2065, <8 x double> %2600)
  %2611 = fmul <8 x double> %2593, %2610
  %2612 = select <8 x i1> %2608, <8 x double> %2611, <8 x double> zeroinitializer
  %2613 = fdiv <8 x double> %2600, %2602
  %2614 = select <8 x i1> %2608, <8 x double> %2065, <8 x double> %2613
  %2615 = getelementptr inbounds nuw i8, ptr %2598, i64 7488
  %2616 = load <8 x i64>, ptr %2615, align 64, !tbaa !26, !noalias !101
  %2617 = getelementptr inbounds nuw i8, ptr %2598, i64 2240
  %2618 = load <8 x double>, ptr %2617, align 64, !tbaa !26, !noalias !101
  %2619 = fcmp ule <8 x double> %2618, zeroinitializer
  %2620 = xor <8 x i1> %2605, splat (i1 true)
  %2621 = select <8 x i1> %2620, <8 x i1> splat (i1 true), <8 x i1> %2619
  %2622 = getelementptr inbounds nuw i8, ptr %2598, i64 5952
  %2623 = load <8 x double>, ptr %2622, align 64, !tbaa !26, !noalias !101
  %2624 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2609, <8 x double> %2623, <8 x double> %2600)
  %2625 = fcmp ogt <8 x double> %2624, zeroinitializer
  %2626 = select <8 x i1> %2625, <8 x double> %2624, <8 x double> zeroinitializer
  %2627 = fmul <8 x double> %2593, %2626
  %2628 = icmp eq <8 x i64> %2616, zeroinitializer
  %2629 = select <8 x i1> %2621, <8 x i1> splat (i1 true), <8 x i1> %2628
  %2630 = select <8 x i1> %2629, <8 x double> %2612, <8 x double> %2627
  %2631 = select <8 x i1> %2629, <8 x double> %2614, <8 x double> %2623
  %2632 = load i64, ptr %119, align 16, !tbaa !21, !noalias !104
  %2633 = sitofp i64 %2632 to double
  %2634 = insertelement <8 x double> poison, double %2633, i64 0
  %2635 = shufflevector <8 x double> %2634, <8 x double> poison, <8 x i32> zeroinitializer
  %2636 = icmp sgt i64 %2632, 0
  br i1 %2636, label %2637, label %2692

2637:                                             ; preds = %2595
  %2638 = getelementptr inbounds nuw i8, ptr %2598, i64 7608
  %2639 = load ptr, ptr %2638, align 8, !tbaa !74, !noalias !104
  %2640 = getelementptr inbounds nuw i8, ptr %2598, i64 7616
  %2641 = load ptr, ptr %2640, align 64, !tbaa !75, !noalias !104
  %2642 = getelementptr inbounds nuw i8, ptr %2598, i64 7552
  %2643 = load i64, ptr %2642, align 64, !tbaa !31, !noalias !104
  %2644 = getelementptr inbounds nuw i8, ptr %2598, i64 7632
  %2645 = getelementptr inbounds nuw i8, ptr %2598, i64 7624
  %2646 = getelementptr inbounds nuw i8, ptr %2598, i64 7640
  br label %2647

2647:                                             ; preds = %2637, %2676
  %2648 = phi <8 x i64> [ splat (i64 -1), %2637 ], [ %2661, %2676 ]
  %2649 = phi i64 [ %2632, %2637 ], [ %2652, %2676 ]
  %2650 = phi <8 x double> [ %2635, %2637 ], [ %2690, %2676 ]
  %2651 = phi <8 x double> [ zeroinitializer, %2637 ], [ %2686, %2676 ]
  %2652 = add nsw i64 %2649, -1
  %2653 = getelementptr inbounds nuw <8 x double>, ptr %2639, i64 %2652
  %2654 = load <8 x double>, ptr %2653, align 64, !tbaa !26, !noalias !104
  %2655 = getelementptr inbounds nuw <8 x double>, ptr %2641, i64 %2652
  %2656 = load <8 x double>, ptr %2655, align 64, !tbaa !26, !noalias !104
  %2657 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2656, <8 x double> %2065, <8 x double> %2654)
  %2658 = fcmp ogt <8 x double> %2657, %2594
  %2659 = select <8 x i1> %2658, <8 x i64> %2648, <8 x i64> zeroinitializer
  %2660 = icmp sgt i64 %2649, %2643
  %2661 = select i1 %2660, <8 x i64> %2659, <8 x i64> zeroinitializer
  %2662 = icmp slt i64 %2649, %2632
  br i1 %2662, label %2663, label %2672

2663:                                             ; preds = %2647
  %2664 = load ptr, ptr %2644, align 16, !tbaa !72, !noalias !104
  %2665 = getelementptr inbounds nuw <8 x double>, ptr %2664, i64 %2649
  %2666 = load <8 x double>, ptr %2665, align 64, !tbaa !26, !noalias !104
  %2667 = fsub <8 x double> %2657, %2065
  %2668 = fmul <8 x double> %2667, %2666
  %2669 = icmp eq <8 x i64> %2661, %2648
  %2670 = select <8 x i1> %2669, <8 x double> zeroinitializer, <8 x double> %2668
  %2671 = fadd <8 x double> %2651, %2670
  br label %2672

2672:                                             ; preds = %2663, %2647
  %2673 = phi <8 x double> [ %2671, %2663 ], [ %2651, %2647 ]
  %2674 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2661)
  %2675 = icmp eq i64 %2674, 0
  br i1 %2675, label %2692, label %2676

2676:                                             ; preds = %2672
  %2677 = load ptr, ptr %2645, align 8, !tbaa !71, !noalias !104
  %2678 = getelementptr inbounds nuw <8 x double>, ptr %2677, i64 %2652
  %2679 = load <8 x double>, ptr %2678, align 64, !tbaa !26, !noalias !104
  %2680 = load ptr, ptr %2646, align 8, !tbaa !73, !noalias !104
  %2681 = getelementptr inbounds nuw <8 x double>, ptr %2680, i64 %2652
  %2682 = load <8 x double>, ptr %2681, align 64, !tbaa !26, !noalias !104
  %2683 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2682, <8 x double> %2065, <8 x double> %2679)
  %2684 = icmp eq <8 x i64> %2661, zeroinitializer
  %2685 = select <8 x i1> %2684, <8 x double> zeroinitializer, <8 x double> %2683
  %2686 = fadd <8 x double> %2673, %2685
  %2687 = uitofp nneg i64 %2652 to double
  %2688 = insertelement <8 x double> poison, double %2687, i64 0
  %2689 = shufflevector <8 x double> %2688, <8 x double> poison, <8 x i32> zeroinitializer
  %2690 = select <8 x i1> %2684, <8 x double> %2650, <8 x double> %2689
  %2691 = icmp samesign ugt i64 %2649, 1
  br i1 %2691, label %2647, label %2692, !llvm.loop !99

2692:                                             ; preds = %2676, %2672, %2595
  %2693 = phi <8 x double> [ %2635, %2595 ], [ %2650, %2672 ], [ %2690, %2676 ]
  %2694 = phi <8 x double> [ zeroinitializer, %2595 ], [ %2673, %2672 ], [ %2686, %2676 ]
  %2695 = getelementptr inbounds nuw i8, ptr %2598, i64 6080
  %2696 = load <8 x double>, ptr %2695, align 64, !tbaa !26, !noalias !101
  %2697 = getelementptr inbounds nuw i8, ptr %2598, i64 5504
  %2698 = load <8 x double>, ptr %2697, align 64, !tbaa !26, !noalias !101
  %2699 = getelementptr inbounds nuw i8, ptr %2598, i64 7040
  %2700 = load <8 x double>, ptr %2699, align 64, !tbaa !26, !noalias !101
  %2701 = fneg <8 x double> %2700
  %2702 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2696, <8 x double> %2698, <8 x double> %2701)
  %2703 = getelementptr inbounds nuw i8, ptr %2598, i64 6976
  %2704 = load <8 x double>, ptr %2703, align 64, !tbaa !26, !noalias !101
  %2705 = fadd <8 x double> %2696, %2704
  %2706 = getelementptr inbounds nuw i8, ptr %2598, i64 7360
  %2707 = load <8 x i64>, ptr %2706, align 64, !tbaa !26, !noalias !101
  %2708 = getelementptr inbounds nuw i8, ptr %2598, i64 7712
  %2709 = load ptr, ptr %2708, align 32, !tbaa !80, !noalias !101
  %2710 = load <8 x double>, ptr %2709, align 64, !tbaa !26, !noalias !101
  %2711 = fmul <8 x double> %2696, %2710
  %2712 = icmp eq <8 x i64> %2707, zeroinitializer
  %2713 = select <8 x i1> %2712, <8 x double> %2702, <8 x double> %2711
  %2714 = getelementptr inbounds nuw i8, ptr %2598, i64 7720
  %2715 = load ptr, ptr %2714, align 8, !tbaa !81, !noalias !101
  %2716 = load <8 x double>, ptr %2715, align 64, !tbaa !26, !noalias !101
  %2717 = fsub <8 x double> splat (double 1.000000e+00), %2716
  %2718 = fmul <8 x double> %2696, %2717
  %2719 = select <8 x i1> %2712, <8 x double> %2705, <8 x double> %2718
  %2720 = fneg <8 x double> %2719
  %2721 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2720, <8 x double> %2065, <8 x double> %2713)
  %2722 = fcmp olt <8 x double> %2693, %2635
  %2723 = and <8 x i1> %2605, %2722
  %2724 = fcmp ogt <8 x double> %2694, zeroinitializer
  %2725 = fcmp oge <8 x double> %2721, zeroinitializer
  %2726 = and <8 x i1> %2724, %2725
  %2727 = and <8 x i1> %2723, %2726
  %2728 = sext <8 x i1> %2727 to <8 x i64>
  %2729 = xor <8 x i64> %2728, splat (i64 -1)
  %2730 = fadd <8 x double> %2694, %2721
  %2731 = fcmp ogt <8 x double> %2730, zeroinitializer
  %2732 = select <8 x i1> %2731, <8 x i1> %2723, <8 x i1> zeroinitializer
  %2733 = select <8 x i1> %2732, <8 x i64> %2729, <8 x i64> zeroinitializer
  %2734 = or <8 x i64> %2733, %2728
  %2735 = fmul <8 x double> %2593, %2721
  %2736 = select <8 x i1> %2727, <8 x double> %2735, <8 x double> zeroinitializer
  %2737 = icmp eq <8 x i64> %2734, zeroinitializer
  %2738 = select <8 x i1> %2737, <8 x double> %2630, <8 x double> %2736
  %2739 = select <8 x i1> %2737, <8 x double> %2631, <8 x double> %2065
  %2740 = getelementptr inbounds nuw i8, ptr %2598, i64 5632
  store <8 x double> %2738, ptr %2740, align 64, !tbaa !26, !noalias !101
  %2741 = getelementptr inbounds nuw i8, ptr %2598, i64 5568
  store <8 x double> %2739, ptr %2741, align 64, !tbaa !26, !noalias !101
  %2742 = fmul <8 x double> %2593, %2694
  %2743 = fmul <8 x double> %2593, %2730
  %2744 = icmp eq <8 x i64> %2733, zeroinitializer
  %2745 = select <8 x i1> %2744, <8 x double> zeroinitializer, <8 x double> %2743
  %2746 = select <8 x i1> %2727, <8 x double> %2742, <8 x double> %2745
  %2747 = getelementptr inbounds nuw i8, ptr %2598, i64 5696
  store <8 x double> %2746, ptr %2747, align 64, !tbaa !26, !noalias !101
  %2748 = load i64, ptr %119, align 16, !tbaa !21, !noalias !101
  %2749 = sitofp i64 %2748 to double
  %2750 = insertelement <8 x double> poison, double %2749, i64 0
  %2751 = shufflevector <8 x double> %2750, <8 x double> poison, <8 x i32> zeroinitializer
  %2752 = select <8 x i1> %2737, <8 x double> %2751, <8 x double> %2693
  %2753 = getelementptr inbounds nuw i8, ptr %2598, i64 5760
  store <8 x double> %2752, ptr %2753, align 64, !tbaa !26, !noalias !101
  %2754 = add nuw nsw i64 %2596, 1
  %2755 = load i64, ptr %144, align 8, !tbaa !20, !noalias !101
  %2756 = icmp slt i64 %2754, %2755
  br i1 %2756, label %2595, label %2757, !llvm.loop !100

2757:                                             ; preds = %2692, %2552
  %2758 = phi i64 [ %2588, %2552 ], [ %2755, %2692 ]
  %2759 = icmp sgt i64 %2758, 0
  br i1 %2759, label %2910, label %2760

2760:                                             ; preds = %2757, %2589
  %2761 = load <8 x double>, ptr %151, align 64, !tbaa !26
  br label %2767

2762:                                             ; preds = %2983
  %2763 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %2764 = icmp sgt i64 %3007, 0
  br i1 %2764, label %2765, label %2767

2765:                                             ; preds = %2762
  %2766 = load ptr, ptr %129, align 8, !tbaa !28
  br label %2888

2767:                                             ; preds = %2888, %2760, %2762
  %2768 = phi <8 x double> [ %2763, %2762 ], [ %2761, %2760 ], [ %2763, %2888 ]
  %2769 = phi <8 x double> [ zeroinitializer, %2762 ], [ zeroinitializer, %2760 ], [ %2907, %2888 ]
  %2770 = phi <8 x double> [ zeroinitializer, %2762 ], [ zeroinitializer, %2760 ], [ %2902, %2888 ]
  %2771 = extractelement <8 x double> %2770, i64 0
  %2772 = extractelement <8 x double> %2770, i64 1
  %2773 = fadd double %2771, %2772
  %2774 = extractelement <8 x double> %2770, i64 2
  %2775 = fadd double %2773, %2774
  %2776 = extractelement <8 x double> %2770, i64 3
  %2777 = fadd double %2775, %2776
  %2778 = extractelement <8 x double> %2770, i64 4
  %2779 = fadd double %2777, %2778
  %2780 = extractelement <8 x double> %2770, i64 5
  %2781 = fadd double %2779, %2780
  %2782 = extractelement <8 x double> %2770, i64 6
  %2783 = fadd double %2781, %2782
  %2784 = extractelement <8 x double> %2770, i64 7
  %2785 = fadd double %2783, %2784
  %2786 = insertelement <8 x double> poison, double %2785, i64 0
  %2787 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2788 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %2789 = fsub <8 x double> %2768, %2788
  %2790 = extractelement <8 x double> %2769, i64 0
  %2791 = extractelement <8 x double> %2769, i64 1
  %2792 = fadd double %2790, %2791
  %2793 = extractelement <8 x double> %2769, i64 2
  %2794 = fadd double %2792, %2793
  %2795 = extractelement <8 x double> %2769, i64 3
  %2796 = fadd double %2794, %2795
  %2797 = extractelement <8 x double> %2769, i64 4
  %2798 = fadd double %2796, %2797
  %2799 = extractelement <8 x double> %2769, i64 5
  %2800 = fadd double %2798, %2799
  %2801 = extractelement <8 x double> %2769, i64 6
  %2802 = fadd double %2800, %2801
  %2803 = extractelement <8 x double> %2769, i64 7
  %2804 = fadd double %2802, %2803
  %2805 = shufflevector <8 x double> %2786, <8 x double> poison, <8 x i32> zeroinitializer
  %2806 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2787, <8 x double> %2789, <8 x double> %2805)
  %2807 = insertelement <8 x double> poison, double %2804, i64 0
  %2808 = shufflevector <8 x double> %2807, <8 x double> poison, <8 x i32> zeroinitializer
  %2809 = fadd <8 x double> %2787, %2808
  store <8 x double> %2806, ptr %156, align 64, !tbaa !26
  %2810 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2811 = fcmp ule <8 x double> %2810, zeroinitializer
  %2812 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %2813 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2810, <8 x double> splat (double 5.000000e-01), <8 x double> %2812)
  %2814 = fsub <8 x double> %2813, %2768
  %2815 = fcmp ogt <8 x double> %2810, splat (double 1.000000e-30)
  %2816 = select <8 x i1> %2815, <8 x double> %2810, <8 x double> splat (double 1.000000e-30)
  %2817 = fdiv <8 x double> %2814, %2816
  %2818 = fcmp ogt <8 x double> %2817, zeroinitializer
  %2819 = select <8 x i1> %2818, <8 x double> %2817, <8 x double> zeroinitializer
  %2820 = fcmp olt <8 x double> %2819, splat (double 1.000000e+00)
  %2821 = select <8 x i1> %2820, <8 x double> %2819, <8 x double> splat (double 1.000000e+00)
  %2822 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %2823 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %2824 = icmp eq <8 x i64> %2823, zeroinitializer
  %2825 = select <8 x i1> %2824, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %2826 = select <8 x i1> %2811, <8 x double> %2825, <8 x double> %2821
  %2827 = fmul <8 x double> %2822, %2826
  %2828 = fcmp ule <8 x double> %2827, zeroinitializer
  %2829 = fcmp uge <8 x double> %2827, %2822
  %2830 = or <8 x i1> %2828, %2829
  %2831 = or <8 x i1> %2811, %2830
  %2832 = fdiv <8 x double> %2822, %2816
  %2833 = select <8 x i1> %2831, <8 x double> zeroinitializer, <8 x double> %2832
  %2834 = fadd <8 x double> %2809, %2833
  %2835 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %2836 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %2837 = fmul <8 x double> %2768, %2836
  %2838 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %2839 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %2840 = fmul <8 x double> %2839, splat (double 5.000000e-01)
  %2841 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2840, <8 x double> %2768, <8 x double> %2838)
  %2842 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %2843 = fmul <8 x double> %2768, %2842
  %2844 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2837, <8 x double> %2841, <8 x double> %2843)
  %2845 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %2846 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %2847 = fmul <8 x double> %2836, %2846
  %2848 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2840, <8 x double> %2846, <8 x double> %2838)
  %2849 = fmul <8 x double> %2842, %2846
  %2850 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2847, <8 x double> %2848, <8 x double> %2849)
  %2851 = fmul <8 x double> %2845, %2850
  %2852 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2835, <8 x double> %2844, <8 x double> %2851)
  %2853 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %2854 = load <8 x double>, ptr %153, align 64, !tbaa !26
  %2855 = fmul <8 x double> %2836, %2854
  %2856 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2840, <8 x double> %2854, <8 x double> %2838)
  %2857 = fmul <8 x double> %2842, %2854
  %2858 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2855, <8 x double> %2856, <8 x double> %2857)
  %2859 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2853, <8 x double> %2858, <8 x double> %2852)
  %2860 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2839, <8 x double> %2768, <8 x double> %2838)
  %2861 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2836, <8 x double> %2860, <8 x double> %2842)
  %2862 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %2863 = fcmp une <8 x double> %2862, zeroinitializer
  %2864 = fadd <8 x double> %2806, %2859
  %2865 = fsub <8 x double> %2864, %2827
  %2866 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2835, <8 x double> %2861, <8 x double> %2834)
  %2867 = fdiv <8 x double> %2865, %2866
  %2868 = fsub <8 x double> %2768, %2867
  %2869 = select <8 x i1> %2863, <8 x double> %2768, <8 x double> %2868
  store <8 x double> %2869, ptr %151, align 64, !tbaa !26
  %2870 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2871 = fneg <8 x double> %2845
  %2872 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2871, <8 x double> %2870, <8 x double> %2827)
  %2873 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2874 = fneg <8 x double> %2853
  %2875 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2874, <8 x double> %2873, <8 x double> %2872)
  %2876 = fdiv <8 x double> %2875, %2835
  %2877 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %2878 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2871, <8 x double> %2877, <8 x double> %2806)
  %2879 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2880 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2874, <8 x double> %2879, <8 x double> %2878)
  %2881 = fdiv <8 x double> %2880, %2835
  %2882 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %2883 = select <8 x i1> %2863, <8 x double> %2882, <8 x double> %2876
  store <8 x double> %2883, ptr %201, align 64, !tbaa !26
  %2884 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2885 = select <8 x i1> %2863, <8 x double> %2884, <8 x double> %2881
  store <8 x double> %2885, ptr %202, align 64, !tbaa !26
  %2886 = load i64, ptr %144, align 8, !tbaa !20
  %2887 = icmp sgt i64 %2886, 0
  br i1 %2887, label %3009, label %3272

2888:                                             ; preds = %2765, %2888
  %2889 = phi <8 x double> [ zeroinitializer, %2765 ], [ %2902, %2888 ]
  %2890 = phi <8 x double> [ zeroinitializer, %2765 ], [ %2907, %2888 ]
  %2891 = phi i64 [ 0, %2765 ], [ %2908, %2888 ]
  %2892 = getelementptr inbounds nuw %struct.Piece, ptr %2766, i64 %2891
  %2893 = getelementptr inbounds nuw i8, ptr %2892, i64 7488
  %2894 = load <8 x i64>, ptr %2893, align 64, !tbaa !26
  %2895 = getelementptr inbounds nuw i8, ptr %2892, i64 128
  %2896 = load <8 x double>, ptr %2895, align 64, !tbaa !26
  %2897 = getelementptr inbounds nuw i8, ptr %2892, i64 6336
  %2898 = load <8 x double>, ptr %2897, align 64, !tbaa !26
  %2899 = fmul <8 x double> %2896, %2898
  %2900 = icmp eq <8 x i64> %2894, zeroinitializer
  %2901 = select <8 x i1> %2900, <8 x double> %2899, <8 x double> zeroinitializer
  %2902 = fadd <8 x double> %2889, %2901
  %2903 = getelementptr inbounds nuw i8, ptr %2892, i64 6208
  %2904 = load <8 x double>, ptr %2903, align 64, !tbaa !26
  %2905 = fmul <8 x double> %2896, %2904
  %2906 = select <8 x i1> %2900, <8 x double> %2905, <8 x double> zeroinitializer
  %2907 = fadd <8 x double> %2890, %2906
  %2908 = add nuw nsw i64 %2891, 1
  %2909 = icmp eq i64 %2908, %3007
  br i1 %2909, label %2767, label %2888, !llvm.loop !107

2910:                                             ; preds = %2757, %2983
  %2911 = phi i64 [ %3006, %2983 ], [ 0, %2757 ]
  %2912 = load ptr, ptr %129, align 8, !tbaa !28
  %2913 = getelementptr inbounds nuw %struct.Piece, ptr %2912, i64 %2911
  %2914 = getelementptr inbounds nuw i8, ptr %2913, i64 5568
  %2915 = load <8 x double>, ptr %2914, align 64, !tbaa !26
  %2916 = load i64, ptr %119, align 16, !tbaa !21
  %2917 = icmp sgt i64 %2916, 0
  br i1 %2917, label %2918, label %2923

2918:                                             ; preds = %2910
  %2919 = getelementptr inbounds nuw i8, ptr %2913, i64 5760
  %2920 = getelementptr inbounds nuw i8, ptr %2913, i64 7608
  %2921 = getelementptr inbounds nuw i8, ptr %2913, i64 7616
  %2922 = getelementptr inbounds nuw i8, ptr %2913, i64 7560
  br label %2938

2923:                                             ; preds = %2938, %2910
  %2924 = getelementptr inbounds nuw i8, ptr %2913, i64 7360
  %2925 = load <8 x i64>, ptr %2924, align 64, !tbaa !26
  %2926 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2925)
  %2927 = icmp eq i64 %2926, 0
  %2928 = load i64, ptr %120, align 8, !tbaa !22
  %2929 = icmp sgt i64 %2928, 0
  br i1 %2927, label %2935, label %2930

2930:                                             ; preds = %2923
  br i1 %2929, label %2931, label %2983

2931:                                             ; preds = %2930
  %2932 = getelementptr inbounds nuw i8, ptr %2913, i64 7712
  %2933 = getelementptr inbounds nuw i8, ptr %2913, i64 7720
  %2934 = getelementptr inbounds nuw i8, ptr %2913, i64 7680
  br label %2958

2935:                                             ; preds = %2923
  br i1 %2929, label %2936, label %2983

2936:                                             ; preds = %2935
  %2937 = getelementptr inbounds nuw i8, ptr %2913, i64 7680
  br label %2976

2938:                                             ; preds = %2918, %2938
  %2939 = phi <8 x double> [ %2915, %2918 ], [ %2954, %2938 ]
  %2940 = phi i64 [ %2916, %2918 ], [ %2941, %2938 ]
  %2941 = add nsw i64 %2940, -1
  %2942 = load <8 x double>, ptr %2919, align 64, !tbaa !26
  %2943 = uitofp nneg i64 %2941 to double
  %2944 = insertelement <8 x double> poison, double %2943, i64 0
  %2945 = shufflevector <8 x double> %2944, <8 x double> poison, <8 x i32> zeroinitializer
  %2946 = fcmp ugt <8 x double> %2942, %2945
  %2947 = load ptr, ptr %2920, align 8, !tbaa !74
  %2948 = getelementptr inbounds nuw <8 x double>, ptr %2947, i64 %2941
  %2949 = load <8 x double>, ptr %2948, align 64, !tbaa !26
  %2950 = load ptr, ptr %2921, align 64, !tbaa !75
  %2951 = getelementptr inbounds nuw <8 x double>, ptr %2950, i64 %2941
  %2952 = load <8 x double>, ptr %2951, align 64, !tbaa !26
  %2953 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2952, <8 x double> %2939, <8 x double> %2949)
  %2954 = select <8 x i1> %2946, <8 x double> %2953, <8 x double> %2915
  %2955 = load ptr, ptr %2922, align 8, !tbaa !56
  %2956 = getelementptr inbounds nuw <8 x double>, ptr %2955, i64 %2941
  store <8 x double> %2954, ptr %2956, align 64, !tbaa !26
  %2957 = icmp samesign ugt i64 %2940, 1
  br i1 %2957, label %2938, label %2923, !llvm.loop !108

2958:                                             ; preds = %2931, %2958
  %2959 = phi i64 [ 0, %2931 ], [ %2973, %2958 ]
  %2960 = phi <8 x double> [ %2915, %2931 ], [ %2970, %2958 ]
  %2961 = load <8 x i64>, ptr %2924, align 64, !tbaa !26
  %2962 = load ptr, ptr %2932, align 32, !tbaa !80
  %2963 = getelementptr inbounds nuw <8 x double>, ptr %2962, i64 %2959
  %2964 = load <8 x double>, ptr %2963, align 64, !tbaa !26
  %2965 = load ptr, ptr %2933, align 8, !tbaa !81
  %2966 = getelementptr inbounds nuw <8 x double>, ptr %2965, i64 %2959
  %2967 = load <8 x double>, ptr %2966, align 64, !tbaa !26
  %2968 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2967, <8 x double> %2960, <8 x double> %2964)
  %2969 = icmp eq <8 x i64> %2961, zeroinitializer
  %2970 = select <8 x i1> %2969, <8 x double> %2915, <8 x double> %2968
  %2971 = load ptr, ptr %2934, align 64, !tbaa !109
  %2972 = getelementptr inbounds nuw <8 x double>, ptr %2971, i64 %2959
  store <8 x double> %2970, ptr %2972, align 64, !tbaa !26
  %2973 = add nuw nsw i64 %2959, 1
  %2974 = load i64, ptr %120, align 8, !tbaa !22
  %2975 = icmp slt i64 %2973, %2974
  br i1 %2975, label %2958, label %2983, !llvm.loop !110

2976:                                             ; preds = %2936, %2976
  %2977 = phi i64 [ 0, %2936 ], [ %2980, %2976 ]
  %2978 = load ptr, ptr %2937, align 64, !tbaa !109
  %2979 = getelementptr inbounds nuw <8 x double>, ptr %2978, i64 %2977
  store <8 x double> %2915, ptr %2979, align 64, !tbaa !26
  %2980 = add nuw nsw i64 %2977, 1
  %2981 = load i64, ptr %120, align 8, !tbaa !22
  %2982 = icmp slt i64 %2980, %2981
  br i1 %2982, label %2976, label %2983, !llvm.loop !111

2983:                                             ; preds = %2958, %2976, %2930, %2935
  %2984 = phi <8 x double> [ %2915, %2935 ], [ %2915, %2930 ], [ %2915, %2976 ], [ %2970, %2958 ]
  %2985 = load <8 x i64>, ptr %2924, align 64, !tbaa !26
  %2986 = getelementptr inbounds nuw i8, ptr %2913, i64 6272
  %2987 = load <8 x double>, ptr %2986, align 64, !tbaa !26
  %2988 = icmp eq <8 x i64> %2985, zeroinitializer
  %2989 = select <8 x i1> %2988, <8 x double> zeroinitializer, <8 x double> %2987
  %2990 = fsub <8 x double> splat (double 1.000000e+00), %2989
  %2991 = getelementptr inbounds nuw i8, ptr %2913, i64 5504
  %2992 = load <8 x double>, ptr %2991, align 64, !tbaa !26
  %2993 = fmul <8 x double> %2989, %2992
  %2994 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2990, <8 x double> %2984, <8 x double> %2993)
  %2995 = getelementptr inbounds nuw i8, ptr %2913, i64 6464
  store <8 x double> %2994, ptr %2995, align 64, !tbaa !26
  %2996 = getelementptr inbounds nuw i8, ptr %2913, i64 6208
  %2997 = load <8 x double>, ptr %2996, align 64, !tbaa !26
  %2998 = fsub <8 x double> %2992, %2984
  %2999 = fmul <8 x double> %2998, %2997
  %3000 = getelementptr inbounds nuw i8, ptr %2913, i64 6336
  store <8 x double> %2999, ptr %3000, align 64, !tbaa !26
  %3001 = getelementptr inbounds nuw i8, ptr %2913, i64 3200
  %3002 = load <8 x double>, ptr %3001, align 64, !tbaa !26
  %3003 = fdiv <8 x double> %2999, %3002
  %3004 = fsub <8 x double> %2992, %3003
  %3005 = getelementptr inbounds nuw i8, ptr %2913, i64 6400
  store <8 x double> %3004, ptr %3005, align 64, !tbaa !26
  %3006 = add nuw nsw i64 %2911, 1
  %3007 = load i64, ptr %144, align 8, !tbaa !20
  %3008 = icmp slt i64 %3006, %3007
  br i1 %3008, label %2910, label %2762, !llvm.loop !112

3009:                                             ; preds = %2767, %3227
  %3010 = phi i64 [ %3269, %3227 ], [ 0, %2767 ]
  %3011 = phi <8 x double> [ %3268, %3227 ], [ zeroinitializer, %2767 ]
  %3012 = load ptr, ptr %129, align 8, !tbaa !28
  %3013 = getelementptr inbounds nuw %struct.Piece, ptr %3012, i64 %3010
  %3014 = getelementptr inbounds nuw i8, ptr %3013, i64 5632
  %3015 = load <8 x double>, ptr %3014, align 64, !tbaa !26
  %3016 = getelementptr inbounds nuw i8, ptr %3013, i64 5696
  %3017 = load <8 x double>, ptr %3016, align 64, !tbaa !26
  %3018 = fadd <8 x double> %3015, %3017
  %3019 = getelementptr inbounds nuw i8, ptr %3013, i64 5568
  %3020 = load <8 x double>, ptr %3019, align 64, !tbaa !26
  %3021 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %3022 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3021, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3023 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3021, <8 x double> %3022, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3024 = getelementptr inbounds nuw i8, ptr %3013, i64 5312
  %3025 = load <8 x double>, ptr %3024, align 64, !tbaa !26
  %3026 = getelementptr inbounds nuw i8, ptr %3013, i64 4032
  %3027 = load <8 x double>, ptr %3026, align 64, !tbaa !26
  %3028 = fneg <8 x double> %3025
  %3029 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3028, <8 x double> %3027, <8 x double> %3018)
  %3030 = getelementptr inbounds nuw i8, ptr %3013, i64 5376
  %3031 = load <8 x double>, ptr %3030, align 64, !tbaa !26
  %3032 = getelementptr inbounds nuw i8, ptr %3013, i64 4800
  %3033 = load <8 x double>, ptr %3032, align 64, !tbaa !26
  %3034 = fneg <8 x double> %3031
  %3035 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3034, <8 x double> %3033, <8 x double> %3029)
  %3036 = getelementptr inbounds nuw i8, ptr %3013, i64 5248
  %3037 = load <8 x double>, ptr %3036, align 64, !tbaa !26
  %3038 = fdiv <8 x double> %3035, %3037
  %3039 = getelementptr inbounds nuw i8, ptr %3013, i64 1600
  %3040 = load <8 x double>, ptr %3039, align 64, !tbaa !26
  %3041 = fsub <8 x double> %3040, %3038
  %3042 = getelementptr inbounds nuw i8, ptr %3013, i64 3904
  %3043 = load <8 x double>, ptr %3042, align 64, !tbaa !26
  %3044 = getelementptr inbounds nuw i8, ptr %3013, i64 7168
  %3045 = load <8 x double>, ptr %3044, align 64, !tbaa !26
  %3046 = fsub <8 x double> %3043, %3045
  %3047 = getelementptr inbounds nuw i8, ptr %3013, i64 6784
  %3048 = load <8 x double>, ptr %3047, align 64, !tbaa !26
  %3049 = getelementptr inbounds nuw i8, ptr %3013, i64 1280
  %3050 = load <8 x double>, ptr %3049, align 64, !tbaa !26
  %3051 = fmul <8 x double> %3048, %3050
  %3052 = getelementptr inbounds nuw i8, ptr %3013, i64 6464
  %3053 = load <8 x double>, ptr %3052, align 64, !tbaa !26
  %3054 = fsub <8 x double> %3053, %3020
  %3055 = fmul <8 x double> %3051, %3054
  %3056 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3023, <8 x double> %3018, <8 x double> %3055)
  %3057 = fsub <8 x double> %3041, %3046
  %3058 = getelementptr inbounds nuw i8, ptr %3013, i64 2944
  %3059 = getelementptr inbounds nuw i8, ptr %3013, i64 3072
  %3060 = load <8 x double>, ptr %3059, align 64, !tbaa !26
  %3061 = fsub <8 x double> %3057, %3060
  %3062 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3061)
  %3063 = getelementptr inbounds nuw i8, ptr %3013, i64 832
  %3064 = load <8 x double>, ptr %3063, align 64, !tbaa !26
  %3065 = fdiv <8 x double> %3062, %3064
  %3066 = getelementptr inbounds nuw i8, ptr %3013, i64 7360
  %3067 = load <8 x i64>, ptr %3066, align 64, !tbaa !26
  %3068 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3067)
  %3069 = icmp eq i64 %3068, 0
  br i1 %3069, label %3227, label %3070

3070:                                             ; preds = %3009
  %3071 = getelementptr inbounds nuw i8, ptr %3013, i64 3776
  %3072 = load <8 x double>, ptr %3071, align 64, !tbaa !26
  %3073 = fcmp ogt <8 x double> %3046, %3041
  %3074 = getelementptr inbounds nuw i8, ptr %3013, i64 7296
  %3075 = load <8 x double>, ptr %3074, align 64, !tbaa !26
  %3076 = fcmp oeq <8 x double> %3075, zeroinitializer
  %3077 = select <8 x i1> %3076, <8 x i1> %3073, <8 x i1> zeroinitializer
  %3078 = select <8 x i1> %3077, <8 x i64> %3067, <8 x i64> zeroinitializer
  %3079 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3078)
  %3080 = icmp eq i64 %3079, 0
  br i1 %3080, label %3151, label %3081

3081:                                             ; preds = %3070
  %3082 = fsub <8 x double> %3046, %3041
  %3083 = fdiv <8 x double> %3082, %3064
  %3084 = getelementptr inbounds nuw i8, ptr %3013, i64 7592
  %3085 = load ptr, ptr %3084, align 8, !tbaa !63
  %3086 = load i64, ptr %119, align 16, !tbaa !21
  %3087 = add nsw i64 %3086, -1
  %3088 = getelementptr inbounds <8 x double>, ptr %3085, i64 %3087
  %3089 = load <8 x double>, ptr %3088, align 64, !tbaa !26
  %3090 = icmp sgt i64 %3086, 1
  br i1 %3090, label %3091, label %3143

3091:                                             ; preds = %3081
  %3092 = getelementptr inbounds nuw i8, ptr %3013, i64 7552
  %3093 = load i64, ptr %3092, align 64, !tbaa !31
  %3094 = getelementptr inbounds nuw i8, ptr %3013, i64 4416
  %3095 = getelementptr inbounds nuw i8, ptr %3013, i64 1536
  %3096 = getelementptr inbounds nuw i8, ptr %3013, i64 7648
  br label %3097

3097:                                             ; preds = %3091, %3140
  %3098 = phi <8 x double> [ %3072, %3091 ], [ %3135, %3140 ]
  %3099 = phi i64 [ %3087, %3091 ], [ %3141, %3140 ]
  %3100 = phi <8 x double> [ %3089, %3091 ], [ %3123, %3140 ]
  %3101 = phi <8 x i64> [ %3078, %3091 ], [ %3127, %3140 ]
  %3102 = phi <8 x double> [ %3083, %3091 ], [ %3134, %3140 ]
  %3103 = icmp slt i64 %3099, %3093
  br i1 %3103, label %3104, label %3110

3104:                                             ; preds = %3097
  %3105 = load ptr, ptr %3096, align 32, !tbaa !70
  %3106 = getelementptr inbounds nuw <8 x double>, ptr %3105, i64 %3099
  %3107 = load <8 x double>, ptr %3106, align 64, !tbaa !26
  %3108 = load <8 x double>, ptr %3095, align 64, !tbaa !26
  %3109 = fmul <8 x double> %3107, %3108
  br label %3118

3110:                                             ; preds = %3097
  %3111 = load <8 x double>, ptr %3094, align 64, !tbaa !26
  %3112 = load <8 x double>, ptr %3095, align 64, !tbaa !26
  %3113 = load ptr, ptr %3096, align 32, !tbaa !70
  %3114 = getelementptr inbounds nuw <8 x double>, ptr %3113, i64 %3099
  %3115 = load <8 x double>, ptr %3114, align 64, !tbaa !26
  %3116 = fsub <8 x double> %3111, %3112
  %3117 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3115, <8 x double> %3116, <8 x double> %3112)
  br label %3118

3118:                                             ; preds = %3104, %3110
  %3119 = phi <8 x double> [ %3109, %3104 ], [ %3117, %3110 ]
  %3120 = getelementptr inbounds nuw <8 x double>, ptr %3085, i64 %3099
  %3121 = load <8 x double>, ptr %3120, align 64, !tbaa !26
  %3122 = icmp eq <8 x i64> %3101, zeroinitializer
  %3123 = select <8 x i1> %3122, <8 x double> %3100, <8 x double> %3121
  %3124 = fsub <8 x double> %3098, %3119
  %3125 = fmul <8 x double> %3124, %3123
  %3126 = fcmp olt <8 x double> %3125, %3102
  %3127 = select <8 x i1> %3126, <8 x i64> %3101, <8 x i64> zeroinitializer
  %3128 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3127)
  %3129 = icmp eq i64 %3128, 0
  br i1 %3129, label %3143, label %3130

3130:                                             ; preds = %3118
  %3131 = fneg <8 x double> %3123
  %3132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3131, <8 x double> %3124, <8 x double> %3102)
  %3133 = icmp eq <8 x i64> %3127, zeroinitializer
  %3134 = select <8 x i1> %3133, <8 x double> %3102, <8 x double> %3132
  %3135 = select <8 x i1> %3133, <8 x double> %3098, <8 x double> %3119
  %3136 = icmp eq i64 %3099, 1
  br i1 %3136, label %3137, label %3140

3137:                                             ; preds = %3130
  %3138 = load <8 x double>, ptr %3085, align 64, !tbaa !26
  %3139 = select <8 x i1> %3133, <8 x double> %3123, <8 x double> %3138
  br label %3143

3140:                                             ; preds = %3130
  %3141 = add nsw i64 %3099, -1
  %3142 = icmp sgt i64 %3099, 1
  br i1 %3142, label %3097, label %3143, !llvm.loop !113

3143:                                             ; preds = %3140, %3118, %3137, %3081
  %3144 = phi <8 x double> [ %3083, %3081 ], [ %3134, %3137 ], [ %3102, %3118 ], [ %3134, %3140 ]
  %3145 = phi <8 x double> [ %3072, %3081 ], [ %3135, %3137 ], [ %3098, %3118 ], [ %3135, %3140 ]
  %3146 = phi <8 x double> [ %3089, %3081 ], [ %3139, %3137 ], [ %3123, %3118 ], [ %3123, %3140 ]
  %3147 = fdiv <8 x double> %3144, %3146
  %3148 = fsub <8 x double> %3145, %3147
  %3149 = icmp eq <8 x i64> %3078, zeroinitializer
  %3150 = select <8 x i1> %3149, <8 x double> %3072, <8 x double> %3148
  br label %3151

3151:                                             ; preds = %3143, %3070
  %3152 = phi <8 x double> [ %3150, %3143 ], [ %3072, %3070 ]
  %3153 = load <8 x double>, ptr %3058, align 64, !tbaa !26
  %3154 = getelementptr inbounds nuw i8, ptr %3013, i64 2560
  %3155 = load <8 x double>, ptr %3154, align 64, !tbaa !26
  %3156 = getelementptr inbounds nuw i8, ptr %3013, i64 2624
  %3157 = load <8 x double>, ptr %3156, align 64, !tbaa !26
  %3158 = getelementptr inbounds nuw i8, ptr %3013, i64 2688
  %3159 = load <8 x double>, ptr %3158, align 64, !tbaa !26
  %3160 = getelementptr inbounds nuw i8, ptr %3013, i64 2752
  %3161 = load <8 x double>, ptr %3160, align 64, !tbaa !26
  %3162 = load <8 x double>, ptr %3013, align 64, !tbaa !26
  %3163 = fmul <8 x double> %3162, splat (double 1.000000e-09)
  br label %3164

3164:                                             ; preds = %3151, %3164
  %3165 = phi <8 x i64> [ splat (i64 -1), %3151 ], [ %3182, %3164 ]
  %3166 = phi i32 [ 0, %3151 ], [ %3183, %3164 ]
  %3167 = phi <8 x double> [ %3153, %3151 ], [ %3179, %3164 ]
  %3168 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3167, <8 x double> %3161, <8 x double> %3159)
  %3169 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3167, <8 x double> %3168, <8 x double> %3157)
  %3170 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3167, <8 x double> %3169, <8 x double> %3155)
  %3171 = fsub <8 x double> %3170, %3152
  %3172 = fmul <8 x double> %3167, splat (double 3.000000e+00)
  %3173 = fmul <8 x double> %3172, %3161
  %3174 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3159, <8 x double> splat (double 2.000000e+00), <8 x double> %3173)
  %3175 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3167, <8 x double> %3174, <8 x double> %3157)
  %3176 = fdiv <8 x double> %3171, %3175
  %3177 = fsub <8 x double> %3167, %3176
  %3178 = icmp eq <8 x i64> %3165, zeroinitializer
  %3179 = select <8 x i1> %3178, <8 x double> %3167, <8 x double> %3177
  %3180 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3176)
  %3181 = fcmp oge <8 x double> %3180, %3163
  %3182 = select <8 x i1> %3181, <8 x i64> %3165, <8 x i64> zeroinitializer
  %3183 = add nuw nsw i32 %3166, 1
  %3184 = icmp samesign ult i32 %3166, 3
  %3185 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3182)
  %3186 = icmp ne i64 %3185, 0
  %3187 = select i1 %3184, i1 %3186, i1 false
  br i1 %3187, label %3164, label %3188, !llvm.loop !114

3188:                                             ; preds = %3164
  %3189 = fmul <8 x double> %3162, splat (double 2.800000e-01)
  %3190 = fcmp ogt <8 x double> %3179, %3189
  %3191 = select <8 x i1> %3190, <8 x double> %3179, <8 x double> %3189
  %3192 = fcmp olt <8 x double> %3191, %3162
  %3193 = select <8 x i1> %3192, <8 x double> %3191, <8 x double> %3162
  %3194 = fcmp olt <8 x double> %3046, %3041
  %3195 = icmp eq <8 x i64> %3067, zeroinitializer
  %3196 = select <8 x i1> %3195, <8 x i1> splat (i1 true), <8 x i1> %3194
  %3197 = select <8 x i1> %3196, <8 x double> %3046, <8 x double> %3041
  %3198 = fsub <8 x double> %3193, %3153
  %3199 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3198)
  %3200 = select <8 x i1> %3195, <8 x double> %3065, <8 x double> %3199
  %3201 = select <8 x i1> %3195, <8 x double> %3153, <8 x double> %3193
  store <8 x double> %3201, ptr %3058, align 64, !tbaa !26
  %3202 = getelementptr inbounds nuw i8, ptr %3013, i64 3008
  %3203 = load <8 x double>, ptr %3202, align 64, !tbaa !26
  %3204 = select <8 x i1> %3195, <8 x double> %3203, <8 x double> %3152
  store <8 x double> %3204, ptr %3202, align 64, !tbaa !26
  %3205 = getelementptr inbounds nuw i8, ptr %3013, i64 6720
  %3206 = load <8 x double>, ptr %3205, align 64, !tbaa !26
  %3207 = fmul <8 x double> %3206, splat (double 2.000000e+00)
  %3208 = getelementptr inbounds nuw i8, ptr %3013, i64 384
  %3209 = load <8 x double>, ptr %3208, align 64, !tbaa !26
  %3210 = getelementptr inbounds nuw i8, ptr %3013, i64 448
  %3211 = load <8 x double>, ptr %3210, align 64, !tbaa !26
  %3212 = getelementptr inbounds nuw i8, ptr %3013, i64 512
  %3213 = load <8 x double>, ptr %3212, align 64, !tbaa !26
  %3214 = fmul <8 x double> %3020, %3213
  %3215 = fmul <8 x double> %3214, splat (double 0x3FD5555555555555)
  %3216 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3211, <8 x double> splat (double 5.000000e-01), <8 x double> %3215)
  %3217 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3020, <8 x double> %3216, <8 x double> %3209)
  %3218 = fmul <8 x double> %3020, %3217
  %3219 = getelementptr inbounds nuw i8, ptr %3013, i64 768
  %3220 = load <8 x double>, ptr %3219, align 64, !tbaa !26
  %3221 = fneg <8 x double> %3220
  %3222 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3221, <8 x double> %3020, <8 x double> %3218)
  %3223 = fmul <8 x double> %3207, %3222
  %3224 = fsub <8 x double> %3056, %3223
  %3225 = select <8 x i1> %3195, <8 x double> %3056, <8 x double> %3224
  %3226 = fsub <8 x double> %3041, %3197
  br label %3227

3227:                                             ; preds = %3009, %3188
  %3228 = phi <8 x double> [ %3057, %3009 ], [ %3226, %3188 ]
  %3229 = phi <8 x double> [ %3065, %3009 ], [ %3200, %3188 ]
  %3230 = phi <8 x double> [ %3046, %3009 ], [ %3197, %3188 ]
  %3231 = phi <8 x double> [ %3056, %3009 ], [ %3225, %3188 ]
  store <8 x double> %3228, ptr %3059, align 64, !tbaa !26
  %3232 = getelementptr inbounds nuw i8, ptr %3013, i64 3136
  store <8 x double> %3230, ptr %3232, align 64, !tbaa !26
  %3233 = getelementptr inbounds nuw i8, ptr %3013, i64 3264
  store <8 x double> %3038, ptr %3233, align 64, !tbaa !26
  %3234 = getelementptr inbounds nuw i8, ptr %3013, i64 3456
  store <8 x double> %3015, ptr %3234, align 64, !tbaa !26
  %3235 = getelementptr inbounds nuw i8, ptr %3013, i64 3520
  store <8 x double> %3020, ptr %3235, align 64, !tbaa !26
  %3236 = getelementptr inbounds nuw i8, ptr %3013, i64 6976
  %3237 = load <8 x double>, ptr %3236, align 64, !tbaa !26
  %3238 = getelementptr inbounds nuw i8, ptr %3013, i64 7040
  %3239 = load <8 x double>, ptr %3238, align 64, !tbaa !26
  %3240 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3237, <8 x double> %3020, <8 x double> %3239)
  %3241 = getelementptr inbounds nuw i8, ptr %3013, i64 6336
  %3242 = load <8 x double>, ptr %3241, align 64, !tbaa !26
  %3243 = getelementptr inbounds nuw i8, ptr %3013, i64 4096
  %3244 = load <8 x double>, ptr %3243, align 64, !tbaa !26
  %3245 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3028, <8 x double> %3244, <8 x double> %3242)
  %3246 = getelementptr inbounds nuw i8, ptr %3013, i64 4864
  %3247 = load <8 x double>, ptr %3246, align 64, !tbaa !26
  %3248 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3034, <8 x double> %3247, <8 x double> %3245)
  %3249 = fdiv <8 x double> %3248, %3037
  %3250 = getelementptr inbounds nuw i8, ptr %3013, i64 3328
  store <8 x double> %3249, ptr %3250, align 64, !tbaa !26
  %3251 = getelementptr inbounds nuw i8, ptr %3013, i64 4160
  %3252 = load <8 x double>, ptr %3251, align 64, !tbaa !26
  %3253 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3028, <8 x double> %3252, <8 x double> %3231)
  %3254 = getelementptr inbounds nuw i8, ptr %3013, i64 4928
  %3255 = load <8 x double>, ptr %3254, align 64, !tbaa !26
  %3256 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3034, <8 x double> %3255, <8 x double> %3253)
  %3257 = fdiv <8 x double> %3256, %3037
  %3258 = getelementptr inbounds nuw i8, ptr %3013, i64 3392
  store <8 x double> %3257, ptr %3258, align 64, !tbaa !26
  %3259 = getelementptr inbounds nuw i8, ptr %3013, i64 4352
  %3260 = load <8 x double>, ptr %3259, align 64, !tbaa !26
  %3261 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3028, <8 x double> %3260, <8 x double> %3240)
  %3262 = getelementptr inbounds nuw i8, ptr %3013, i64 5120
  %3263 = load <8 x double>, ptr %3262, align 64, !tbaa !26
  %3264 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3034, <8 x double> %3263, <8 x double> %3261)
  %3265 = fdiv <8 x double> %3264, %3037
  %3266 = getelementptr inbounds nuw i8, ptr %3013, i64 3584
  store <8 x double> %3265, ptr %3266, align 64, !tbaa !26
  %3267 = fcmp ogt <8 x double> %3011, %3229
  %3268 = select <8 x i1> %3267, <8 x double> %3011, <8 x double> %3229
  %3269 = add nuw nsw i64 %3010, 1
  %3270 = load i64, ptr %144, align 8, !tbaa !20
  %3271 = icmp slt i64 %3269, %3270
  br i1 %3271, label %3009, label %3272, !llvm.loop !115

3272:                                             ; preds = %3227, %2767
  %3273 = phi i64 [ %2886, %2767 ], [ %3270, %3227 ]
  %3274 = phi <8 x double> [ zeroinitializer, %2767 ], [ %3268, %3227 ]
  %3275 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %3274)
  %3276 = insertelement <8 x double> poison, double %3275, i64 0
  %3277 = shufflevector <8 x double> %3276, <8 x double> poison, <8 x i32> zeroinitializer
  %3278 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %3279 = fadd <8 x double> %3278, splat (double 1.000000e+00)
  store <8 x double> %3279, ptr %166, align 64, !tbaa !26
  %3280 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %3281 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %3282 = fcmp olt <8 x double> %3277, %3281
  %3283 = load i64, ptr %204, align 32, !tbaa !24
  %3284 = sitofp i64 %3283 to double
  %3285 = insertelement <8 x double> poison, double %3284, i64 0
  %3286 = shufflevector <8 x double> %3285, <8 x double> poison, <8 x i32> zeroinitializer
  %3287 = fcmp oge <8 x double> %3279, %3286
  %3288 = or <8 x i1> %3282, %3287
  %3289 = select <8 x i1> %3288, <8 x i64> %3280, <8 x i64> zeroinitializer
  store <8 x i64> %3289, ptr %133, align 64, !tbaa !26
  %3290 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3289)
  %3291 = icmp eq i64 %3290, 0
  br i1 %3291, label %512, label %3292, !llvm.loop !53

3292:                                             ; preds = %3272
  %3293 = icmp sgt i64 %3273, 0
  br i1 %3293, label %3294, label %3296

3294:                                             ; preds = %3292
  %3295 = icmp eq <8 x i64> %3289, zeroinitializer
  br label %3604

3296:                                             ; preds = %3652, %3292
  %3297 = phi i64 [ %3273, %3292 ], [ %3658, %3652 ]
  %3298 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %3299 = fadd <8 x double> %3298, splat (double 1.000000e+00)
  %3300 = icmp eq <8 x i64> %3289, zeroinitializer
  %3301 = select <8 x i1> %3300, <8 x double> %3298, <8 x double> %3299
  store <8 x double> %3301, ptr %205, align 64, !tbaa !26
  %3302 = fcmp ogt <8 x double> %3301, splat (double 4.000000e+01)
  %3303 = select <8 x i1> %3302, <8 x i64> %3289, <8 x i64> zeroinitializer
  %3304 = xor <8 x i64> %3303, %3289
  %3305 = load <8 x double>, ptr %127, align 64, !tbaa !26
  %3306 = fadd <8 x double> %3305, splat (double 1.000000e+00)
  %3307 = icmp eq <8 x i64> %3303, zeroinitializer
  %3308 = select <8 x i1> %3307, <8 x double> %3305, <8 x double> %3306
  store <8 x double> %3308, ptr %127, align 64, !tbaa !26
  %3309 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %3310 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %3311 = fsub <8 x double> %3309, %3310
  %3312 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3311)
  %3313 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %3314 = fmul <8 x double> %3313, splat (double 1.500000e+00)
  %3315 = fcmp ogt <8 x double> %3312, %3314
  %3316 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %3317 = fcmp ogt <8 x double> %3316, splat (double 2.000000e-03)
  %3318 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %3319 = fcmp oeq <8 x double> %3318, zeroinitializer
  %3320 = and <8 x i1> %3315, %3319
  %3321 = and <8 x i1> %3317, %3320
  %3322 = fdiv <8 x double> %3313, %3312
  %3323 = select <8 x i1> %3321, <8 x i64> %3304, <8 x i64> zeroinitializer
  %3324 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %3325 = fcmp ogt <8 x double> %3324, %3316
  %3326 = select <8 x i1> %3325, <8 x double> %3324, <8 x double> %3316
  %3327 = select <8 x i1> %3321, <8 x double> zeroinitializer, <8 x double> %3326
  %3328 = icmp eq <8 x i64> %3323, zeroinitializer
  %3329 = select <8 x i1> %3328, <8 x double> %3324, <8 x double> %3327
  store <8 x double> %3329, ptr %143, align 64, !tbaa !26
  %3330 = fcmp ogt <8 x double> %3322, splat (double 5.000000e-02)
  %3331 = select <8 x i1> %3330, <8 x double> %3322, <8 x double> splat (double 5.000000e-02)
  %3332 = fcmp olt <8 x double> %3331, splat (double 0x3FEE666666666666)
  %3333 = select <8 x i1> %3332, <8 x double> %3331, <8 x double> splat (double 0x3FEE666666666666)
  %3334 = fmul <8 x double> %3316, %3333
  %3335 = fcmp ogt <8 x double> %3334, splat (double 0x3EB0C6F7A0B5ED8D)
  %3336 = select <8 x i1> %3335, <8 x double> %3334, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3337 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %3338 = select <8 x i1> %3328, <8 x double> %3337, <8 x double> %3336
  store <8 x double> %3338, ptr %139, align 64, !tbaa !26
  %3339 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %3340 = fadd <8 x double> %3339, splat (double 1.000000e+00)
  %3341 = select <8 x i1> %3328, <8 x double> %3339, <8 x double> %3340
  store <8 x double> %3341, ptr %124, align 64, !tbaa !26
  %3342 = xor <8 x i64> %3323, %3304
  %3343 = icmp sgt i64 %3297, 0
  br i1 %3343, label %3344, label %3434

3344:                                             ; preds = %3296
  %3345 = load ptr, ptr %129, align 8, !tbaa !28
  %3346 = fcmp ogt <8 x double> %3316, splat (double 0x3E7AD7F29ABCAF48)
  %3347 = fcmp ogt <8 x double> %3316, splat (double 1.000000e-05)
  %3348 = fcmp ogt <8 x double> %3316, splat (double 1.000000e-04)
  br label %3349

3349:                                             ; preds = %3344, %3349
  %3350 = phi i64 [ 0, %3344 ], [ %3432, %3349 ]
  %3351 = phi <8 x double> [ splat (double 1.000000e+00), %3344 ], [ %3431, %3349 ]
  %3352 = phi <8 x i64> [ zeroinitializer, %3344 ], [ %3379, %3349 ]
  %3353 = phi <8 x i64> [ zeroinitializer, %3344 ], [ %3428, %3349 ]
  %3354 = getelementptr inbounds nuw %struct.Piece, ptr %3345, i64 %3350
  %3355 = getelementptr inbounds nuw i8, ptr %3354, i64 3072
  %3356 = load <8 x double>, ptr %3355, align 64, !tbaa !26
  %3357 = getelementptr inbounds nuw i8, ptr %3354, i64 3840
  %3358 = load <8 x double>, ptr %3357, align 64, !tbaa !26
  %3359 = getelementptr inbounds nuw i8, ptr %3354, i64 7360
  %3360 = load <8 x i64>, ptr %3359, align 64, !tbaa !26
  %3361 = xor <8 x i64> %3360, splat (i64 -1)
  %3362 = getelementptr inbounds nuw i8, ptr %3354, i64 896
  %3363 = load <8 x double>, ptr %3362, align 64, !tbaa !26
  %3364 = fmul <8 x double> %3363, splat (double 1.000000e-04)
  %3365 = fcmp ogt <8 x double> %3364, splat (double 0x3E7AD7F29ABCAF48)
  %3366 = fneg <8 x double> %3364
  %3367 = select <8 x i1> %3365, <8 x double> %3366, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3368 = fcmp olt <8 x double> %3356, %3367
  %3369 = select <8 x i1> %3368, <8 x i64> %3361, <8 x i64> zeroinitializer
  %3370 = fcmp ole <8 x double> %3358, zeroinitializer
  %3371 = select <8 x i1> %3370, <8 x i64> %3369, <8 x i64> zeroinitializer
  %3372 = getelementptr inbounds nuw i8, ptr %3354, i64 832
  %3373 = load <8 x double>, ptr %3372, align 64, !tbaa !26
  %3374 = fmul <8 x double> %3373, splat (double -3.000000e-07)
  %3375 = fcmp olt <8 x double> %3356, %3374
  %3376 = select <8 x i1> %3346, <8 x i1> %3375, <8 x i1> zeroinitializer
  %3377 = select <8 x i1> %3376, <8 x i64> %3371, <8 x i64> zeroinitializer
  %3378 = or <8 x i64> %3377, %3353
  %3379 = or <8 x i64> %3377, %3352
  %3380 = fcmp olt <8 x double> %3351, splat (double 3.000000e-01)
  %3381 = icmp eq <8 x i64> %3377, zeroinitializer
  %3382 = select <8 x i1> %3381, <8 x i1> splat (i1 true), <8 x i1> %3380
  %3383 = select <8 x i1> %3382, <8 x double> %3351, <8 x double> splat (double 3.000000e-01)
  %3384 = xor <8 x i64> %3371, splat (i64 -1)
  %3385 = and <8 x i64> %3369, %3384
  %3386 = select <8 x i1> %3347, <8 x i64> %3385, <8 x i64> zeroinitializer
  %3387 = fsub <8 x double> %3358, %3356
  %3388 = fdiv <8 x double> %3358, %3387
  %3389 = or <8 x i64> %3378, %3386
  %3390 = fcmp olt <8 x double> %3383, %3388
  %3391 = icmp eq <8 x i64> %3386, zeroinitializer
  %3392 = select <8 x i1> %3391, <8 x i1> splat (i1 true), <8 x i1> %3390
  %3393 = select <8 x i1> %3392, <8 x double> %3383, <8 x double> %3388
  %3394 = getelementptr inbounds nuw i8, ptr %3354, i64 3776
  %3395 = load <8 x double>, ptr %3394, align 64, !tbaa !26
  %3396 = getelementptr inbounds nuw i8, ptr %3354, i64 3008
  %3397 = load <8 x double>, ptr %3396, align 64, !tbaa !26
  %3398 = getelementptr inbounds nuw i8, ptr %3354, i64 7296
  %3399 = load <8 x double>, ptr %3398, align 64, !tbaa !26
  %3400 = fcmp oeq <8 x double> %3399, zeroinitializer
  %3401 = getelementptr inbounds nuw i8, ptr %3354, i64 1472
  %3402 = load <8 x double>, ptr %3401, align 64, !tbaa !26
  %3403 = fmul <8 x double> %3402, splat (double 0x3FEFF7CED916872B)
  %3404 = fcmp olt <8 x double> %3397, %3403
  %3405 = and <8 x i1> %3400, %3404
  %3406 = and <8 x i1> %3348, %3405
  %3407 = fsub <8 x double> %3395, %3402
  %3408 = fsub <8 x double> %3395, %3397
  %3409 = fdiv <8 x double> %3407, %3408
  %3410 = fcmp uge <8 x double> %3393, %3409
  %3411 = select <8 x i1> %3406, <8 x i1> %3410, <8 x i1> zeroinitializer
  %3412 = select <8 x i1> %3411, <8 x double> %3409, <8 x double> %3393
  %3413 = fcmp oeq <8 x double> %3399, splat (double 1.000000e+00)
  %3414 = getelementptr inbounds nuw i8, ptr %3354, i64 3264
  %3415 = load <8 x double>, ptr %3414, align 64, !tbaa !26
  %3416 = getelementptr inbounds nuw i8, ptr %3354, i64 1600
  %3417 = load <8 x double>, ptr %3416, align 64, !tbaa !26
  %3418 = fmul <8 x double> %3417, splat (double 1.000100e+00)
  %3419 = fcmp ogt <8 x double> %3415, %3418
  %3420 = and <8 x i1> %3413, %3419
  %3421 = and <8 x i1> %3348, %3420
  %3422 = getelementptr inbounds nuw i8, ptr %3354, i64 4032
  %3423 = load <8 x double>, ptr %3422, align 64, !tbaa !26
  %3424 = fsub <8 x double> %3417, %3423
  %3425 = fsub <8 x double> %3415, %3423
  %3426 = fdiv <8 x double> %3424, %3425
  %3427 = select <8 x i1> %3420, <8 x i1> %3348, <8 x i1> %3406
  %3428 = select <8 x i1> %3427, <8 x i64> splat (i64 -1), <8 x i64> %3389
  %3429 = fcmp uge <8 x double> %3412, %3426
  %3430 = select <8 x i1> %3421, <8 x i1> %3429, <8 x i1> zeroinitializer
  %3431 = select <8 x i1> %3430, <8 x double> %3426, <8 x double> %3412
  %3432 = add nuw nsw i64 %3350, 1
  %3433 = icmp eq i64 %3432, %3297
  br i1 %3433, label %3434, label %3349, !llvm.loop !116

3434:                                             ; preds = %3349, %3296
  %3435 = phi <8 x i64> [ zeroinitializer, %3296 ], [ %3428, %3349 ]
  %3436 = phi <8 x i64> [ zeroinitializer, %3296 ], [ %3379, %3349 ]
  %3437 = phi <8 x double> [ splat (double 1.000000e+00), %3296 ], [ %3431, %3349 ]
  %3438 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3435)
  %3439 = icmp eq i64 %3438, 0
  %3440 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3436)
  %3441 = icmp eq i64 %3440, 0
  %3442 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %3437)
  %3443 = insertelement <8 x double> poison, double %3442, i64 0
  %3444 = shufflevector <8 x double> %3443, <8 x double> poison, <8 x i32> zeroinitializer
  %3445 = select i1 %3439, <8 x i64> zeroinitializer, <8 x i64> %3342
  %3446 = fcmp ogt <8 x double> %3329, %3316
  %3447 = select <8 x i1> %3446, <8 x double> %3329, <8 x double> %3316
  %3448 = select i1 %3441, <8 x i1> splat (i1 true), <8 x i1> zeroinitializer
  %3449 = select <8 x i1> %3448, <8 x double> %3447, <8 x double> zeroinitializer
  %3450 = icmp eq <8 x i64> %3445, zeroinitializer
  %3451 = select <8 x i1> %3450, <8 x double> %3329, <8 x double> %3449
  %3452 = fcmp ogt <8 x double> %3444, splat (double 5.000000e-02)
  %3453 = select <8 x i1> %3452, <8 x double> %3444, <8 x double> splat (double 5.000000e-02)
  %3454 = fcmp olt <8 x double> %3453, splat (double 0x3FEE666666666666)
  %3455 = select <8 x i1> %3454, <8 x double> %3453, <8 x double> splat (double 0x3FEE666666666666)
  %3456 = fmul <8 x double> %3316, %3455
  %3457 = fcmp ogt <8 x double> %3456, splat (double 0x3EB0C6F7A0B5ED8D)
  %3458 = select <8 x i1> %3457, <8 x double> %3456, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3459 = select <8 x i1> %3450, <8 x double> %3338, <8 x double> %3458
  %3460 = fadd <8 x double> %3341, splat (double 1.000000e+00)
  %3461 = select <8 x i1> %3450, <8 x double> %3341, <8 x double> %3460
  %3462 = xor <8 x i64> %3445, %3342
  %3463 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %3464 = fmul <8 x double> %3463, splat (double 5.000000e-01)
  %3465 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %3466 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %3467 = fneg <8 x double> %3464
  %3468 = icmp eq <8 x i64> %3466, zeroinitializer
  %3469 = select <8 x i1> %3468, <8 x double> %3467, <8 x double> %3464
  %3470 = fadd <8 x double> %3465, %3469
  %3471 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %3472 = fsub <8 x double> %3471, %3470
  %3473 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %3474 = fsub <8 x double> %3473, %3470
  %3475 = fneg <8 x double> %3472
  %3476 = select <8 x i1> %3468, <8 x double> %3475, <8 x double> %3472
  %3477 = fneg <8 x double> %3474
  %3478 = select <8 x i1> %3468, <8 x double> %3477, <8 x double> %3474
  %3479 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %3480 = fcmp oeq <8 x double> %3479, zeroinitializer
  %3481 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %3482 = fcmp oeq <8 x double> %3481, zeroinitializer
  %3483 = and <8 x i1> %3480, %3482
  %3484 = fcmp olt <8 x double> %3476, splat (double -1.000000e-03)
  %3485 = and <8 x i1> %3483, %3484
  %3486 = fcmp ogt <8 x double> %3478, splat (double 4.000000e-03)
  %3487 = and <8 x i1> %3486, %3485
  %3488 = and <8 x i1> %3317, %3487
  %3489 = fsub <8 x double> %3476, %3478
  %3490 = fdiv <8 x double> %3476, %3489
  %3491 = select <8 x i1> %3488, <8 x i64> %3462, <8 x i64> zeroinitializer
  %3492 = fcmp ogt <8 x double> %3451, %3316
  %3493 = icmp eq <8 x i64> %3491, zeroinitializer
  %3494 = select <8 x i1> %3493, <8 x i1> splat (i1 true), <8 x i1> %3492
  %3495 = select <8 x i1> %3494, <8 x double> %3451, <8 x double> %3316
  store <8 x double> %3495, ptr %143, align 64, !tbaa !26
  %3496 = fcmp ogt <8 x double> %3490, splat (double 5.000000e-02)
  %3497 = select <8 x i1> %3496, <8 x double> %3490, <8 x double> splat (double 5.000000e-02)
  %3498 = fcmp olt <8 x double> %3497, splat (double 0x3FEE666666666666)
  %3499 = select <8 x i1> %3498, <8 x double> %3497, <8 x double> splat (double 0x3FEE666666666666)
  %3500 = fmul <8 x double> %3316, %3499
  %3501 = fcmp ogt <8 x double> %3500, splat (double 0x3EB0C6F7A0B5ED8D)
  %3502 = select <8 x i1> %3501, <8 x double> %3500, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3503 = select <8 x i1> %3493, <8 x double> %3459, <8 x double> %3502
  store <8 x double> %3503, ptr %139, align 64, !tbaa !26
  %3504 = fadd <8 x double> %3461, splat (double 1.000000e+00)
  %3505 = select <8 x i1> %3493, <8 x double> %3461, <8 x double> %3504
  store <8 x double> %3505, ptr %124, align 64, !tbaa !26
  %3506 = xor <8 x i64> %3491, %3462
  %3507 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %3508 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3509 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %3510 = fsub <8 x double> %3508, %3509
  %3511 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %3512 = fcmp une <8 x double> %3511, splat (double 1.000000e+00)
  %3513 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %3514 = fsub <8 x double> %3471, %3513
  %3515 = select <8 x i1> %3512, <8 x double> splat (double -1.000000e+00), <8 x double> %3514
  %3516 = fcmp une <8 x double> %3511, splat (double 2.000000e+00)
  %3517 = fsub <8 x double> %3507, %3513
  %3518 = select <8 x i1> %3516, <8 x double> %3515, <8 x double> %3517
  %3519 = fcmp une <8 x double> %3511, splat (double 3.000000e+00)
  %3520 = fsub <8 x double> %3510, %3513
  %3521 = select <8 x i1> %3519, <8 x double> %3518, <8 x double> %3520
  %3522 = fcmp une <8 x double> %3511, splat (double 4.000000e+00)
  %3523 = fsub <8 x double> %3513, %3510
  %3524 = select <8 x i1> %3522, <8 x double> %3521, <8 x double> %3523
  br i1 %3343, label %3525, label %3557

3525:                                             ; preds = %3434
  %3526 = load ptr, ptr %129, align 8, !tbaa !28
  %3527 = and i64 %3297, 1
  %3528 = icmp eq i64 %3297, 1
  br i1 %3528, label %3547, label %3529

3529:                                             ; preds = %3525
  %3530 = and i64 %3297, 9223372036854775806
  br label %3531

3531:                                             ; preds = %3531, %3529
  %3532 = phi i64 [ 0, %3529 ], [ %3544, %3531 ]
  %3533 = phi <8 x double> [ splat (double 1.000000e+09), %3529 ], [ %3543, %3531 ]
  %3534 = phi i64 [ 0, %3529 ], [ %3545, %3531 ]
  %3535 = getelementptr inbounds nuw %struct.Piece, ptr %3526, i64 %3532, i32 35
  %3536 = load <8 x double>, ptr %3535, align 64, !tbaa !26
  %3537 = fcmp olt <8 x double> %3533, %3536
  %3538 = select <8 x i1> %3537, <8 x double> %3533, <8 x double> %3536
  %3539 = or disjoint i64 %3532, 1
  %3540 = getelementptr inbounds nuw %struct.Piece, ptr %3526, i64 %3539, i32 35
  %3541 = load <8 x double>, ptr %3540, align 64, !tbaa !26
  %3542 = fcmp olt <8 x double> %3538, %3541
  %3543 = select <8 x i1> %3542, <8 x double> %3538, <8 x double> %3541
  %3544 = add nuw nsw i64 %3532, 2
  %3545 = add i64 %3534, 2
  %3546 = icmp eq i64 %3545, %3530
  br i1 %3546, label %3547, label %3531, !llvm.loop !117

3547:                                             ; preds = %3531, %3525
  %3548 = phi <8 x double> [ poison, %3525 ], [ %3543, %3531 ]
  %3549 = phi i64 [ 0, %3525 ], [ %3544, %3531 ]
  %3550 = phi <8 x double> [ splat (double 1.000000e+09), %3525 ], [ %3543, %3531 ]
  %3551 = icmp eq i64 %3527, 0
  br i1 %3551, label %3557, label %3552

3552:                                             ; preds = %3547
  %3553 = getelementptr inbounds nuw %struct.Piece, ptr %3526, i64 %3549, i32 35
  %3554 = load <8 x double>, ptr %3553, align 64, !tbaa !26
  %3555 = fcmp olt <8 x double> %3550, %3554
  %3556 = select <8 x i1> %3555, <8 x double> %3550, <8 x double> %3554
  br label %3557

3557:                                             ; preds = %3552, %3547, %3434
  %3558 = phi <8 x double> [ splat (double 1.000000e+09), %3434 ], [ %3548, %3547 ], [ %3556, %3552 ]
  %3559 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %3558)
  %3560 = insertelement <8 x double> poison, double %3559, i64 0
  %3561 = shufflevector <8 x double> %3560, <8 x double> poison, <8 x i32> zeroinitializer
  %3562 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %3563 = fsub <8 x double> %3562, %3509
  %3564 = fsub <8 x double> %3473, %3513
  %3565 = select <8 x i1> %3512, <8 x double> splat (double -1.000000e+00), <8 x double> %3564
  %3566 = fsub <8 x double> %3561, %3513
  %3567 = select <8 x i1> %3516, <8 x double> %3565, <8 x double> %3566
  %3568 = fsub <8 x double> %3563, %3513
  %3569 = select <8 x i1> %3519, <8 x double> %3567, <8 x double> %3568
  %3570 = fsub <8 x double> %3513, %3563
  %3571 = select <8 x i1> %3522, <8 x double> %3569, <8 x double> %3570
  %3572 = fcmp une <8 x double> %3511, zeroinitializer
  %3573 = fcmp oge <8 x double> %3316, splat (double 5.000000e-02)
  %3574 = and <8 x i1> %3573, %3572
  %3575 = fcmp olt <8 x double> %3524, zeroinitializer
  %3576 = and <8 x i1> %3574, %3575
  %3577 = fsub <8 x double> %3571, %3524
  %3578 = fmul <8 x double> %3577, splat (double 2.000000e-02)
  %3579 = fcmp ogt <8 x double> %3571, %3578
  %3580 = and <8 x i1> %3576, %3579
  %3581 = fsub <8 x double> %3524, %3571
  %3582 = fdiv <8 x double> %3524, %3581
  %3583 = fcmp olt <8 x double> %3582, splat (double 0x3FEE666666666666)
  %3584 = and <8 x i1> %3583, %3580
  %3585 = select <8 x i1> %3584, <8 x i64> %3506, <8 x i64> zeroinitializer
  %3586 = fcmp ogt <8 x double> %3495, %3316
  %3587 = icmp eq <8 x i64> %3585, zeroinitializer
  %3588 = select <8 x i1> %3587, <8 x i1> splat (i1 true), <8 x i1> %3586
  %3589 = select <8 x i1> %3588, <8 x double> %3495, <8 x double> %3316
  store <8 x double> %3589, ptr %143, align 64, !tbaa !26
  %3590 = fcmp ogt <8 x double> %3582, splat (double 5.000000e-02)
  %3591 = select <8 x i1> %3590, <8 x double> %3582, <8 x double> splat (double 5.000000e-02)
  %3592 = fcmp olt <8 x double> %3591, splat (double 0x3FEE666666666666)
  %3593 = select <8 x i1> %3592, <8 x double> %3591, <8 x double> splat (double 0x3FEE666666666666)
  %3594 = fmul <8 x double> %3316, %3593
  %3595 = fcmp ogt <8 x double> %3594, splat (double 0x3EB0C6F7A0B5ED8D)
  %3596 = select <8 x i1> %3595, <8 x double> %3594, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3597 = select <8 x i1> %3587, <8 x double> %3503, <8 x double> %3596
  store <8 x double> %3597, ptr %139, align 64, !tbaa !26
  %3598 = fadd <8 x double> %3505, splat (double 1.000000e+00)
  %3599 = select <8 x i1> %3587, <8 x double> %3505, <8 x double> %3598
  store <8 x double> %3599, ptr %124, align 64, !tbaa !26
  %3600 = xor <8 x i64> %3585, %3506
  %3601 = or <8 x i64> %3600, %3303
  %3602 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3601)
  %3603 = icmp eq i64 %3602, 0
  br i1 %3603, label %512, label %3660

3604:                                             ; preds = %3294, %3652
  %3605 = phi i64 [ 0, %3294 ], [ %3657, %3652 ]
  %3606 = load ptr, ptr %129, align 8, !tbaa !28
  %3607 = getelementptr inbounds nuw %struct.Piece, ptr %3606, i64 %3605
  %3608 = getelementptr inbounds nuw i8, ptr %3607, i64 7560
  %3609 = load ptr, ptr %3608, align 8, !tbaa !56
  %3610 = load <8 x double>, ptr %3609, align 64, !tbaa !26
  %3611 = getelementptr inbounds nuw i8, ptr %3607, i64 1344
  %3612 = load <8 x double>, ptr %3611, align 64, !tbaa !26
  %3613 = getelementptr inbounds nuw i8, ptr %3609, i64 64
  %3614 = load <8 x double>, ptr %3613, align 64, !tbaa !26
  %3615 = fsub <8 x double> %3614, %3610
  %3616 = fneg <8 x double> %3612
  %3617 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3616, <8 x double> %3615, <8 x double> %3610)
  %3618 = getelementptr inbounds nuw i8, ptr %3607, i64 7552
  %3619 = load i64, ptr %3618, align 64, !tbaa !31
  %3620 = icmp eq i64 %3619, 0
  br i1 %3620, label %3652, label %3621

3621:                                             ; preds = %3604
  %3622 = getelementptr <8 x double>, ptr %3609, i64 %3619
  %3623 = getelementptr i8, ptr %3622, i64 -64
  %3624 = load <8 x double>, ptr %3623, align 64, !tbaa !26
  %3625 = load <8 x double>, ptr %3622, align 64, !tbaa !26
  %3626 = getelementptr inbounds nuw i8, ptr %3607, i64 2880
  %3627 = load <8 x double>, ptr %3626, align 64, !tbaa !26
  %3628 = getelementptr inbounds nuw i8, ptr %3607, i64 2944
  %3629 = load <8 x double>, ptr %3628, align 64, !tbaa !26
  %3630 = getelementptr inbounds nuw i8, ptr %3607, i64 64
  %3631 = load <8 x double>, ptr %3630, align 64, !tbaa !26
  %3632 = fsub <8 x double> %3629, %3631
  %3633 = fmul <8 x double> %3627, %3632
  %3634 = getelementptr inbounds nuw i8, ptr %3607, i64 576
  %3635 = load <8 x double>, ptr %3634, align 64, !tbaa !26
  %3636 = getelementptr inbounds nuw i8, ptr %3607, i64 2816
  %3637 = load <8 x double>, ptr %3636, align 64, !tbaa !26
  %3638 = fdiv <8 x double> %3635, %3637
  %3639 = getelementptr inbounds nuw i8, ptr %3607, i64 192
  %3640 = load <8 x double>, ptr %3639, align 64, !tbaa !26
  %3641 = getelementptr inbounds nuw i8, ptr %3607, i64 256
  %3642 = load <8 x double>, ptr %3641, align 64, !tbaa !26
  %3643 = getelementptr inbounds nuw i8, ptr %3607, i64 320
  %3644 = load <8 x double>, ptr %3643, align 64, !tbaa !26
  %3645 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3625, <8 x double> %3644, <8 x double> %3642)
  %3646 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3625, <8 x double> %3645, <8 x double> %3640)
  %3647 = fdiv <8 x double> %3646, %3633
  %3648 = fmul <8 x double> %3625, %3647
  %3649 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3638, <8 x double> %3624, <8 x double> %3648)
  %3650 = fadd <8 x double> %3638, %3647
  %3651 = fdiv <8 x double> %3649, %3650
  br label %3652

3652:                                             ; preds = %3604, %3621
  %3653 = phi <8 x double> [ %3651, %3621 ], [ %3617, %3604 ]
  %3654 = getelementptr inbounds nuw i8, ptr %3607, i64 7232
  %3655 = load <8 x double>, ptr %3654, align 64, !tbaa !26
  %3656 = select <8 x i1> %3295, <8 x double> %3655, <8 x double> %3653
  store <8 x double> %3656, ptr %3654, align 64, !tbaa !26
  %3657 = add nuw nsw i64 %3605, 1
  %3658 = load i64, ptr %144, align 8, !tbaa !20
  %3659 = icmp slt i64 %3657, %3658
  br i1 %3659, label %3604, label %3296, !llvm.loop !118

3660:                                             ; preds = %3557
  %3661 = icmp eq <8 x i64> %3601, zeroinitializer
  %3662 = select <8 x i1> %3661, <8 x double> %3310, <8 x double> %3309
  store <8 x double> %3662, ptr %206, align 64, !tbaa !26
  %3663 = load <8 x double>, ptr %153, align 64, !tbaa !26
  %3664 = select <8 x i1> %3661, <8 x double> %3663, <8 x double> %3471
  store <8 x double> %3664, ptr %153, align 64, !tbaa !26
  %3665 = select <8 x i1> %3661, <8 x double> %3471, <8 x double> %3473
  store <8 x double> %3665, ptr %152, align 64, !tbaa !26
  %3666 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %3667 = select <8 x i1> %3661, <8 x double> %3666, <8 x double> %3508
  store <8 x double> %3667, ptr %252, align 64, !tbaa !26
  %3668 = select <8 x i1> %3661, <8 x double> %3508, <8 x double> %3562
  store <8 x double> %3668, ptr %253, align 64, !tbaa !26
  %3669 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %3670 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %3671 = select <8 x i1> %3661, <8 x double> %3670, <8 x double> %3669
  store <8 x double> %3671, ptr %254, align 64, !tbaa !26
  %3672 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %3673 = select <8 x i1> %3661, <8 x double> %3669, <8 x double> %3672
  store <8 x double> %3673, ptr %255, align 64, !tbaa !26
  %3674 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %3675 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %3676 = select <8 x i1> %3661, <8 x double> %3675, <8 x double> %3674
  store <8 x double> %3676, ptr %257, align 64, !tbaa !26
  %3677 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %3678 = select <8 x i1> %3661, <8 x double> %3674, <8 x double> %3677
  store <8 x double> %3678, ptr %258, align 64, !tbaa !26
  %3679 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %3680 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %3681 = select <8 x i1> %3661, <8 x double> %3680, <8 x double> %3679
  store <8 x double> %3681, ptr %260, align 64, !tbaa !26
  %3682 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %3683 = select <8 x i1> %3661, <8 x double> %3679, <8 x double> %3682
  store <8 x double> %3683, ptr %261, align 64, !tbaa !26
  %3684 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %3685 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %3686 = select <8 x i1> %3661, <8 x double> %3685, <8 x double> %3684
  store <8 x double> %3686, ptr %263, align 64, !tbaa !26
  %3687 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %3688 = select <8 x i1> %3661, <8 x double> %3684, <8 x double> %3687
  store <8 x double> %3688, ptr %264, align 64, !tbaa !26
  %3689 = xor <8 x i64> %3601, splat (i64 -1)
  br i1 %3343, label %3690, label %4065

3690:                                             ; preds = %3660, %4030
  %3691 = phi i64 [ %4042, %4030 ], [ 0, %3660 ]
  %3692 = load ptr, ptr %129, align 8, !tbaa !28
  %3693 = getelementptr inbounds nuw %struct.Piece, ptr %3692, i64 %3691
  %3694 = getelementptr inbounds nuw i8, ptr %3693, i64 1664
  %3695 = load <8 x double>, ptr %3694, align 64, !tbaa !26
  %3696 = fcmp ogt <8 x double> %3695, zeroinitializer
  %3697 = bitcast <8 x i1> %3696 to i8
  %3698 = icmp eq i8 %3697, 0
  %3699 = load i64, ptr %119, align 16, !tbaa !21
  br i1 %3698, label %3957, label %3700

3700:                                             ; preds = %3690
  %3701 = add i64 %3699, -1
  %3702 = getelementptr inbounds nuw i8, ptr %3693, i64 4416
  %3703 = load <8 x double>, ptr %3702, align 64, !tbaa !26
  %3704 = getelementptr inbounds nuw i8, ptr %3693, i64 3648
  %3705 = load <8 x double>, ptr %3704, align 64, !tbaa !26
  %3706 = getelementptr inbounds nuw i8, ptr %3693, i64 7552
  %3707 = load i64, ptr %3706, align 64, !tbaa !31
  %3708 = icmp sgt i64 %3699, %3707
  br i1 %3708, label %3717, label %3709

3709:                                             ; preds = %3700
  %3710 = getelementptr inbounds nuw i8, ptr %3693, i64 7648
  %3711 = load ptr, ptr %3710, align 32, !tbaa !70
  %3712 = getelementptr inbounds <8 x double>, ptr %3711, i64 %3701
  %3713 = load <8 x double>, ptr %3712, align 64, !tbaa !26
  %3714 = getelementptr inbounds nuw i8, ptr %3693, i64 1536
  %3715 = load <8 x double>, ptr %3714, align 64, !tbaa !26
  %3716 = fmul <8 x double> %3713, %3715
  br label %3726

3717:                                             ; preds = %3700
  %3718 = getelementptr inbounds nuw i8, ptr %3693, i64 1536
  %3719 = load <8 x double>, ptr %3718, align 64, !tbaa !26
  %3720 = getelementptr inbounds nuw i8, ptr %3693, i64 7648
  %3721 = load ptr, ptr %3720, align 32, !tbaa !70
  %3722 = getelementptr inbounds <8 x double>, ptr %3721, i64 %3701
  %3723 = load <8 x double>, ptr %3722, align 64, !tbaa !26
  %3724 = fsub <8 x double> %3703, %3719
  %3725 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3723, <8 x double> %3724, <8 x double> %3719)
  br label %3726

3726:                                             ; preds = %3717, %3709
  %3727 = phi <8 x double> [ %3715, %3709 ], [ %3719, %3717 ]
  %3728 = phi <8 x double> [ %3716, %3709 ], [ %3725, %3717 ]
  %3729 = getelementptr inbounds nuw i8, ptr %3693, i64 3008
  %3730 = load <8 x double>, ptr %3729, align 64, !tbaa !26
  %3731 = fcmp ole <8 x double> %3728, %3730
  %3732 = getelementptr inbounds nuw i8, ptr %3693, i64 7296
  %3733 = load <8 x double>, ptr %3732, align 64, !tbaa !26
  %3734 = fcmp oeq <8 x double> %3733, zeroinitializer
  %3735 = select <8 x i1> %3734, <8 x i1> %3731, <8 x i1> zeroinitializer
  %3736 = select <8 x i1> %3735, <8 x i64> %3601, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %3737 = xor <8 x i64> %3736, %3601
  store <8 x i64> %3737, ptr %12, align 64, !tbaa !26
  %3738 = fsub <8 x double> %3703, %3705
  %3739 = getelementptr inbounds nuw i8, ptr %3693, i64 1536
  %3740 = fsub <8 x double> %3705, %3727
  %3741 = fdiv <8 x double> %3738, %3740
  %3742 = getelementptr inbounds nuw i8, ptr %3693, i64 7592
  %3743 = load ptr, ptr %3742, align 8, !tbaa !63
  %3744 = getelementptr inbounds <8 x double>, ptr %3743, i64 %3707
  %3745 = load <8 x double>, ptr %3744, align 64, !tbaa !26
  %3746 = getelementptr inbounds nuw i8, ptr %3693, i64 7600
  %3747 = load ptr, ptr %3746, align 16, !tbaa !45
  %3748 = getelementptr inbounds <8 x double>, ptr %3747, i64 %3707
  %3749 = load <8 x double>, ptr %3748, align 64, !tbaa !26
  %3750 = icmp eq <8 x i64> %3736, zeroinitializer
  %3751 = select <8 x i1> %3750, <8 x double> %3749, <8 x double> %3745
  store <8 x double> %3751, ptr %3748, align 64, !tbaa !26
  %3752 = load i64, ptr %3706, align 64, !tbaa !31
  %3753 = add nsw i64 %3752, 1
  %3754 = icmp slt i64 %3753, %3701
  br i1 %3754, label %3755, label %3759

3755:                                             ; preds = %3726
  %3756 = getelementptr inbounds nuw i8, ptr %3693, i64 7664
  br label %3799

3757:                                             ; preds = %3799
  %3758 = load i64, ptr %3706, align 64, !tbaa !31
  br label %3759

3759:                                             ; preds = %3757, %3726
  %3760 = phi i64 [ %3752, %3726 ], [ %3758, %3757 ]
  %3761 = phi <8 x double> [ %3745, %3726 ], [ %3804, %3757 ]
  %3762 = icmp sgt i64 %3699, %3760
  br i1 %3762, label %3770, label %3763

3763:                                             ; preds = %3759
  %3764 = getelementptr inbounds nuw i8, ptr %3693, i64 7648
  %3765 = load ptr, ptr %3764, align 32, !tbaa !70
  %3766 = getelementptr inbounds <8 x double>, ptr %3765, i64 %3701
  %3767 = load <8 x double>, ptr %3766, align 64, !tbaa !26
  %3768 = load <8 x double>, ptr %3739, align 64, !tbaa !26
  %3769 = fmul <8 x double> %3767, %3768
  br label %3778

3770:                                             ; preds = %3759
  %3771 = load <8 x double>, ptr %3739, align 64, !tbaa !26
  %3772 = getelementptr inbounds nuw i8, ptr %3693, i64 7648
  %3773 = load ptr, ptr %3772, align 32, !tbaa !70
  %3774 = getelementptr inbounds <8 x double>, ptr %3773, i64 %3701
  %3775 = load <8 x double>, ptr %3774, align 64, !tbaa !26
  %3776 = fsub <8 x double> %3705, %3771
  %3777 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3775, <8 x double> %3776, <8 x double> %3771)
  br label %3778

3778:                                             ; preds = %3770, %3763
  %3779 = phi <8 x double> [ %3769, %3763 ], [ %3777, %3770 ]
  %3780 = load ptr, ptr %3742, align 8, !tbaa !63
  %3781 = getelementptr inbounds <8 x double>, ptr %3780, i64 %3701
  %3782 = load <8 x double>, ptr %3781, align 64, !tbaa !26
  %3783 = load ptr, ptr %3746, align 16, !tbaa !45
  %3784 = getelementptr inbounds <8 x double>, ptr %3783, i64 %3701
  %3785 = fsub <8 x double> %3761, %3782
  %3786 = fsub <8 x double> %3728, %3779
  %3787 = load <8 x double>, ptr %3729, align 64, !tbaa !26
  %3788 = fsub <8 x double> %3787, %3779
  %3789 = fdiv <8 x double> %3786, %3788
  %3790 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3785, <8 x double> %3789, <8 x double> %3782)
  %3791 = load <8 x double>, ptr %3784, align 64, !tbaa !26
  %3792 = select <8 x i1> %3750, <8 x double> %3791, <8 x double> %3790
  store <8 x double> %3792, ptr %3784, align 64, !tbaa !26
  %3793 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3737)
  %3794 = icmp eq i64 %3793, 0
  br i1 %3794, label %3955, label %3795

3795:                                             ; preds = %3778
  %3796 = getelementptr inbounds nuw i8, ptr %3693, i64 7648
  %3797 = getelementptr inbounds nuw i8, ptr %3693, i64 3136
  %3798 = getelementptr inbounds nuw i8, ptr %3693, i64 832
  br label %3817

3799:                                             ; preds = %3755, %3799
  %3800 = phi i64 [ %3753, %3755 ], [ %3815, %3799 ]
  %3801 = phi <8 x double> [ %3745, %3755 ], [ %3804, %3799 ]
  %3802 = load ptr, ptr %3742, align 8, !tbaa !63
  %3803 = getelementptr inbounds <8 x double>, ptr %3802, i64 %3800
  %3804 = load <8 x double>, ptr %3803, align 64, !tbaa !26
  %3805 = load ptr, ptr %3746, align 16, !tbaa !45
  %3806 = getelementptr inbounds <8 x double>, ptr %3805, i64 %3800
  %3807 = fsub <8 x double> %3801, %3804
  %3808 = load ptr, ptr %3756, align 16, !tbaa !119
  %3809 = getelementptr inbounds <8 x double>, ptr %3808, i64 %3800
  %3810 = load <8 x double>, ptr %3809, align 64, !tbaa !26
  %3811 = fmul <8 x double> %3741, %3810
  %3812 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3807, <8 x double> %3811, <8 x double> %3804)
  %3813 = load <8 x double>, ptr %3806, align 64, !tbaa !26
  %3814 = select <8 x i1> %3750, <8 x double> %3813, <8 x double> %3812
  store <8 x double> %3814, ptr %3806, align 64, !tbaa !26
  %3815 = add nsw i64 %3800, 1
  %3816 = icmp eq i64 %3815, %3701
  br i1 %3816, label %3757, label %3799, !llvm.loop !120

3817:                                             ; preds = %3795, %3952
  %3818 = phi i64 [ 0, %3795 ], [ %3953, %3952 ]
  %3819 = getelementptr inbounds nuw i64, ptr %12, i64 %3818
  %3820 = load i64, ptr %3819, align 8, !tbaa !30
  %3821 = icmp eq i64 %3820, 0
  br i1 %3821, label %3952, label %3822

3822:                                             ; preds = %3817
  %3823 = load i64, ptr %119, align 16, !tbaa !21
  %3824 = load i64, ptr %3706, align 64, !tbaa !31
  %3825 = getelementptr inbounds nuw double, ptr %3739, i64 %3818
  %3826 = load double, ptr %3825, align 8, !tbaa !40
  %3827 = getelementptr inbounds nuw double, ptr %3729, i64 %3818
  %3828 = load double, ptr %3827, align 8, !tbaa !40
  %3829 = add nsw i64 %3823, -1
  %3830 = icmp sgt i64 %3823, %3824
  br i1 %3830, label %3831, label %3952

3831:                                             ; preds = %3822
  %3832 = getelementptr inbounds nuw double, ptr %3704, i64 %3818
  %3833 = load double, ptr %3832, align 8, !tbaa !40
  %3834 = getelementptr inbounds nuw double, ptr %3702, i64 %3818
  %3835 = load double, ptr %3834, align 8, !tbaa !40
  %3836 = load ptr, ptr %3796, align 32
  %3837 = getelementptr i8, ptr %3836, i64 64
  %3838 = getelementptr double, ptr %3837, i64 %3818
  %3839 = fsub double %3833, %3826
  %3840 = getelementptr double, ptr %3836, i64 %3818
  %3841 = fsub double %3835, %3826
  %3842 = load ptr, ptr %3742, align 8, !tbaa !63
  %3843 = getelementptr double, ptr %3842, i64 %3818
  %3844 = load ptr, ptr %3746, align 16, !tbaa !45
  %3845 = getelementptr double, ptr %3844, i64 %3818
  %3846 = getelementptr <8 x double>, ptr %3840, i64 %3829
  br label %3874

3847:                                             ; preds = %3920
  %3848 = getelementptr inbounds nuw double, ptr %3732, i64 %3818
  %3849 = load double, ptr %3848, align 8, !tbaa !40
  %3850 = fcmp ogt double %3849, 0.000000e+00
  %3851 = fcmp ogt double %3931, 0.000000e+00
  %3852 = select i1 %3850, i1 %3851, i1 false
  br i1 %3852, label %3853, label %3952

3853:                                             ; preds = %3847
  %3854 = getelementptr inbounds nuw double, ptr %3797, i64 %3818
  %3855 = getelementptr inbounds nuw double, ptr %3798, i64 %3818
  %3856 = sub i64 %3823, %3824
  %3857 = add i64 %3824, 1
  %3858 = and i64 %3856, 1
  %3859 = icmp eq i64 %3858, 0
  br i1 %3859, label %3869, label %3860

3860:                                             ; preds = %3853
  %3861 = load double, ptr %3854, align 8, !tbaa !40
  %3862 = load double, ptr %3855, align 8, !tbaa !40
  %3863 = fmul double %3931, %3862
  %3864 = fdiv double %3861, %3863
  %3865 = getelementptr <8 x double>, ptr %3845, i64 %3824
  %3866 = load double, ptr %3865, align 8, !tbaa !40
  %3867 = fmul double %3866, %3864
  store double %3867, ptr %3865, align 8, !tbaa !40
  %3868 = add nsw i64 %3824, 1
  br label %3869

3869:                                             ; preds = %3860, %3853
  %3870 = phi i64 [ %3824, %3853 ], [ %3868, %3860 ]
  %3871 = icmp eq i64 %3823, %3857
  br i1 %3871, label %3952, label %3872

3872:                                             ; preds = %3869
  %3873 = getelementptr i8, ptr %3845, i64 64
  br label %3934

3874:                                             ; preds = %3920, %3831
  %3875 = phi double [ 0.000000e+00, %3831 ], [ %3931, %3920 ]
  %3876 = phi i64 [ %3829, %3831 ], [ %3932, %3920 ]
  %3877 = icmp eq i64 %3876, %3829
  br i1 %3877, label %3878, label %3881

3878:                                             ; preds = %3874
  %3879 = load double, ptr %3846, align 8, !tbaa !40
  %3880 = tail call noundef double @llvm.fmuladd.f64(double %3879, double %3839, double %3826)
  br label %3892

3881:                                             ; preds = %3874
  %3882 = getelementptr <8 x double>, ptr %3838, i64 %3876
  %3883 = load double, ptr %3882, align 8, !tbaa !40
  %3884 = tail call noundef double @llvm.fmuladd.f64(double %3883, double %3839, double %3826)
  %3885 = getelementptr <8 x double>, ptr %3840, i64 %3876
  %3886 = load double, ptr %3885, align 8, !tbaa !40
  %3887 = tail call noundef double @llvm.fmuladd.f64(double %3886, double %3839, double %3826)
  %3888 = tail call noundef double @llvm.fmuladd.f64(double %3883, double %3841, double %3826)
  %3889 = fcmp ult double %3888, %3884
  br i1 %3889, label %3890, label %3892

3890:                                             ; preds = %3881
  %3891 = add nsw i64 %3876, 1
  br label %3892

3892:                                             ; preds = %3890, %3881, %3878
  %3893 = phi double [ %3887, %3890 ], [ %3887, %3881 ], [ %3880, %3878 ]
  %3894 = phi double [ %3884, %3890 ], [ %3884, %3881 ], [ %3828, %3878 ]
  %3895 = phi i64 [ %3891, %3890 ], [ %3876, %3881 ], [ %3829, %3878 ]
  %3896 = icmp sgt i64 %3895, %3824
  br i1 %3896, label %3897, label %3920

3897:                                             ; preds = %3892
  %3898 = load ptr, ptr %3742, align 8
  %3899 = getelementptr double, ptr %3898, i64 %3818
  br label %3900

3900:                                             ; preds = %3915, %3897
  %3901 = phi i64 [ %3895, %3897 ], [ %3918, %3915 ]
  %3902 = phi double [ 0.000000e+00, %3897 ], [ %3917, %3915 ]
  %3903 = phi double [ %3894, %3897 ], [ %3916, %3915 ]
  %3904 = getelementptr <8 x double>, ptr %3840, i64 %3901
  %3905 = load double, ptr %3904, align 8, !tbaa !40
  %3906 = tail call noundef double @llvm.fmuladd.f64(double %3905, double %3841, double %3826)
  %3907 = fcmp ogt double %3906, %3893
  br i1 %3907, label %3908, label %3920

3908:                                             ; preds = %3900
  %3909 = fcmp ogt double %3903, %3906
  br i1 %3909, label %3910, label %3915

3910:                                             ; preds = %3908
  %3911 = getelementptr <8 x double>, ptr %3899, i64 %3901
  %3912 = load double, ptr %3911, align 8, !tbaa !40
  %3913 = fsub double %3903, %3906
  %3914 = tail call double @llvm.fmuladd.f64(double %3912, double %3913, double %3902)
  br label %3915

3915:                                             ; preds = %3910, %3908
  %3916 = phi double [ %3906, %3910 ], [ %3903, %3908 ]
  %3917 = phi double [ %3914, %3910 ], [ %3902, %3908 ]
  %3918 = add nsw i64 %3901, -1
  %3919 = icmp sgt i64 %3918, %3824
  br i1 %3919, label %3900, label %3920, !llvm.loop !121

3920:                                             ; preds = %3915, %3900, %3892
  %3921 = phi double [ %3894, %3892 ], [ %3903, %3900 ], [ %3916, %3915 ]
  %3922 = phi double [ 0.000000e+00, %3892 ], [ %3902, %3900 ], [ %3917, %3915 ]
  %3923 = phi i64 [ %3895, %3892 ], [ %3901, %3900 ], [ %3824, %3915 ]
  %3924 = getelementptr <8 x double>, ptr %3843, i64 %3923
  %3925 = load double, ptr %3924, align 8, !tbaa !40
  %3926 = fsub double %3921, %3893
  %3927 = tail call double @llvm.fmuladd.f64(double %3925, double %3926, double %3922)
  %3928 = fsub double %3894, %3893
  %3929 = fdiv double %3927, %3928
  %3930 = getelementptr <8 x double>, ptr %3845, i64 %3876
  store double %3929, ptr %3930, align 8, !tbaa !40
  %3931 = fadd double %3875, %3927
  %3932 = add nsw i64 %3876, -1
  %3933 = icmp sgt i64 %3876, %3824
  br i1 %3933, label %3874, label %3847, !llvm.loop !122

3934:                                             ; preds = %3934, %3872
  %3935 = phi i64 [ %3870, %3872 ], [ %3950, %3934 ]
  %3936 = load double, ptr %3854, align 8, !tbaa !40
  %3937 = load double, ptr %3855, align 8, !tbaa !40
  %3938 = fmul double %3931, %3937
  %3939 = fdiv double %3936, %3938
  %3940 = getelementptr <8 x double>, ptr %3845, i64 %3935
  %3941 = load double, ptr %3940, align 8, !tbaa !40
  %3942 = fmul double %3941, %3939
  store double %3942, ptr %3940, align 8, !tbaa !40
  %3943 = load double, ptr %3854, align 8, !tbaa !40
  %3944 = load double, ptr %3855, align 8, !tbaa !40
  %3945 = fmul double %3931, %3944
  %3946 = fdiv double %3943, %3945
  %3947 = getelementptr <8 x double>, ptr %3873, i64 %3935
  %3948 = load double, ptr %3947, align 8, !tbaa !40
  %3949 = fmul double %3948, %3946
  store double %3949, ptr %3947, align 8, !tbaa !40
  %3950 = add nsw i64 %3935, 2
  %3951 = icmp eq i64 %3950, %3823
  br i1 %3951, label %3952, label %3934, !llvm.loop !123

3952:                                             ; preds = %3869, %3934, %3847, %3822, %3817
  %3953 = add nuw nsw i64 %3818, 1
  %3954 = icmp eq i64 %3953, 8
  br i1 %3954, label %3955, label %3817, !llvm.loop !124

3955:                                             ; preds = %3952, %3778
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  %3956 = load i64, ptr %119, align 16, !tbaa !21
  br label %3957

3957:                                             ; preds = %3690, %3955
  %3958 = phi i64 [ %3699, %3690 ], [ %3956, %3955 ]
  %3959 = icmp sgt i64 %3958, 0
  br i1 %3959, label %3960, label %3964

3960:                                             ; preds = %3957
  %3961 = getelementptr inbounds nuw i8, ptr %3693, i64 7576
  %3962 = getelementptr inbounds nuw i8, ptr %3693, i64 7568
  %3963 = getelementptr inbounds nuw i8, ptr %3693, i64 7560
  br label %3974

3964:                                             ; preds = %3974, %3957
  %3965 = load i64, ptr %120, align 8, !tbaa !22
  %3966 = icmp sgt i64 %3965, 0
  br i1 %3966, label %3967, label %3993

3967:                                             ; preds = %3964
  %3968 = getelementptr inbounds nuw i8, ptr %3693, i64 7744
  %3969 = getelementptr inbounds nuw i8, ptr %3693, i64 7736
  %3970 = getelementptr inbounds nuw i8, ptr %3693, i64 7728
  %3971 = getelementptr inbounds nuw i8, ptr %3693, i64 7696
  %3972 = getelementptr inbounds nuw i8, ptr %3693, i64 7688
  %3973 = getelementptr inbounds nuw i8, ptr %3693, i64 7680
  br label %3997

3974:                                             ; preds = %3960, %3974
  %3975 = phi i64 [ 0, %3960 ], [ %3990, %3974 ]
  %3976 = load ptr, ptr %3961, align 8, !tbaa !55
  %3977 = getelementptr inbounds nuw <8 x double>, ptr %3976, i64 %3975
  %3978 = load ptr, ptr %3962, align 16, !tbaa !44
  %3979 = getelementptr inbounds nuw <8 x double>, ptr %3978, i64 %3975
  %3980 = load <8 x double>, ptr %3979, align 64, !tbaa !26
  %3981 = load <8 x double>, ptr %3977, align 64, !tbaa !26
  %3982 = select <8 x i1> %3661, <8 x double> %3981, <8 x double> %3980
  store <8 x double> %3982, ptr %3977, align 64, !tbaa !26
  %3983 = load ptr, ptr %3962, align 16, !tbaa !44
  %3984 = getelementptr inbounds nuw <8 x double>, ptr %3983, i64 %3975
  %3985 = load ptr, ptr %3963, align 8, !tbaa !56
  %3986 = getelementptr inbounds nuw <8 x double>, ptr %3985, i64 %3975
  %3987 = load <8 x double>, ptr %3986, align 64, !tbaa !26
  %3988 = load <8 x double>, ptr %3984, align 64, !tbaa !26
  %3989 = select <8 x i1> %3661, <8 x double> %3988, <8 x double> %3987
  store <8 x double> %3989, ptr %3984, align 64, !tbaa !26
  %3990 = add nuw nsw i64 %3975, 1
  %3991 = load i64, ptr %119, align 16, !tbaa !21
  %3992 = icmp slt i64 %3990, %3991
  br i1 %3992, label %3974, label %3964, !llvm.loop !125

3993:                                             ; preds = %3997, %3964
  %3994 = getelementptr inbounds nuw i8, ptr %3693, i64 4480
  %3995 = getelementptr inbounds nuw i8, ptr %3693, i64 3712
  %3996 = getelementptr inbounds nuw i8, ptr %3693, i64 2944
  br label %4045

3997:                                             ; preds = %3967, %3997
  %3998 = phi i64 [ 0, %3967 ], [ %4027, %3997 ]
  %3999 = load ptr, ptr %3968, align 64, !tbaa !58
  %4000 = getelementptr inbounds nuw <8 x double>, ptr %3999, i64 %3998
  %4001 = load ptr, ptr %3969, align 8, !tbaa !47
  %4002 = getelementptr inbounds nuw <8 x double>, ptr %4001, i64 %3998
  %4003 = load <8 x double>, ptr %4002, align 64, !tbaa !26
  %4004 = load <8 x double>, ptr %4000, align 64, !tbaa !26
  %4005 = select <8 x i1> %3661, <8 x double> %4004, <8 x double> %4003
  store <8 x double> %4005, ptr %4000, align 64, !tbaa !26
  %4006 = load ptr, ptr %3969, align 8, !tbaa !47
  %4007 = getelementptr inbounds nuw <8 x double>, ptr %4006, i64 %3998
  %4008 = load ptr, ptr %3970, align 16, !tbaa !78
  %4009 = getelementptr inbounds nuw <8 x double>, ptr %4008, i64 %3998
  %4010 = load <8 x double>, ptr %4009, align 64, !tbaa !26
  %4011 = load <8 x double>, ptr %4007, align 64, !tbaa !26
  %4012 = select <8 x i1> %3661, <8 x double> %4011, <8 x double> %4010
  store <8 x double> %4012, ptr %4007, align 64, !tbaa !26
  %4013 = load ptr, ptr %3971, align 16, !tbaa !60
  %4014 = getelementptr inbounds nuw <8 x double>, ptr %4013, i64 %3998
  %4015 = load ptr, ptr %3972, align 8, !tbaa !48
  %4016 = getelementptr inbounds nuw <8 x double>, ptr %4015, i64 %3998
  %4017 = load <8 x double>, ptr %4016, align 64, !tbaa !26
  %4018 = load <8 x double>, ptr %4014, align 64, !tbaa !26
  %4019 = select <8 x i1> %3661, <8 x double> %4018, <8 x double> %4017
  store <8 x double> %4019, ptr %4014, align 64, !tbaa !26
  %4020 = load ptr, ptr %3972, align 8, !tbaa !48
  %4021 = getelementptr inbounds nuw <8 x double>, ptr %4020, i64 %3998
  %4022 = load ptr, ptr %3973, align 64, !tbaa !109
  %4023 = getelementptr inbounds nuw <8 x double>, ptr %4022, i64 %3998
  %4024 = load <8 x double>, ptr %4023, align 64, !tbaa !26
  %4025 = load <8 x double>, ptr %4021, align 64, !tbaa !26
  %4026 = select <8 x i1> %3661, <8 x double> %4025, <8 x double> %4024
  store <8 x double> %4026, ptr %4021, align 64, !tbaa !26
  %4027 = add nuw nsw i64 %3998, 1
  %4028 = load i64, ptr %120, align 8, !tbaa !22
  %4029 = icmp slt i64 %4027, %4028
  br i1 %4029, label %3997, label %3993, !llvm.loop !126

4030:                                             ; preds = %4045
  %4031 = getelementptr inbounds nuw i8, ptr %3693, i64 7424
  %4032 = getelementptr inbounds nuw i8, ptr %3693, i64 5696
  %4033 = load <8 x double>, ptr %4032, align 64, !tbaa !26
  %4034 = fcmp ogt <8 x double> %4033, zeroinitializer
  %4035 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %4036 = fcmp une <8 x double> %4035, splat (double 2.000000e+00)
  %4037 = and <8 x i1> %4034, %4036
  %4038 = select <8 x i1> %4037, <8 x i64> %3601, <8 x i64> zeroinitializer
  %4039 = load <8 x i64>, ptr %4031, align 64, !tbaa !26
  %4040 = and <8 x i64> %4039, %3689
  %4041 = or <8 x i64> %4038, %4040
  store <8 x i64> %4041, ptr %4031, align 64, !tbaa !26
  %4042 = add nuw nsw i64 %3691, 1
  %4043 = load i64, ptr %144, align 8, !tbaa !20
  %4044 = icmp slt i64 %4042, %4043
  br i1 %4044, label %3690, label %4057, !llvm.loop !127

4045:                                             ; preds = %3993, %4045
  %4046 = phi i64 [ 0, %3993 ], [ %4055, %4045 ]
  %4047 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3994, i64 0, i64 %4046
  %4048 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3995, i64 0, i64 %4046
  %4049 = load <8 x double>, ptr %4048, align 64, !tbaa !26
  %4050 = load <8 x double>, ptr %4047, align 64, !tbaa !26
  %4051 = select <8 x i1> %3661, <8 x double> %4050, <8 x double> %4049
  store <8 x double> %4051, ptr %4047, align 64, !tbaa !26
  %4052 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3996, i64 0, i64 %4046
  %4053 = load <8 x double>, ptr %4052, align 64, !tbaa !26
  %4054 = select <8 x i1> %3661, <8 x double> %4049, <8 x double> %4053
  store <8 x double> %4054, ptr %4048, align 64, !tbaa !26
  %4055 = add nuw nsw i64 %4046, 1
  %4056 = icmp eq i64 %4055, 12
  br i1 %4056, label %4030, label %4045, !llvm.loop !128

4057:                                             ; preds = %4030
  %4058 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %4059 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %4060 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %4061 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %4062 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %4063 = fdiv <8 x double> %4060, %3312
  %4064 = icmp sgt i64 %4043, 0
  br label %4065

4065:                                             ; preds = %3660, %4057
  %4066 = phi <8 x double> [ %4063, %4057 ], [ %3322, %3660 ]
  %4067 = phi i1 [ %4064, %4057 ], [ false, %3660 ]
  %4068 = phi <8 x double> [ %4062, %4057 ], [ %3301, %3660 ]
  %4069 = phi <8 x double> [ %4061, %4057 ], [ %3589, %3660 ]
  %4070 = phi <8 x double> [ %4059, %4057 ], [ %3318, %3660 ]
  %4071 = phi <8 x double> [ %4058, %4057 ], [ %3316, %3660 ]
  %4072 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4073 = fadd <8 x double> %4072, %4071
  %4074 = select <8 x i1> %3661, <8 x double> %4072, <8 x double> %4073
  store <8 x double> %4074, ptr %136, align 64, !tbaa !26
  %4075 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4076 = select <8 x i1> %3661, <8 x double> %4075, <8 x double> %4071
  store <8 x double> %4076, ptr %145, align 64, !tbaa !26
  %4077 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %4078 = fadd <8 x double> %4077, splat (double 1.000000e+00)
  %4079 = select <8 x i1> %3661, <8 x double> %4077, <8 x double> %4078
  store <8 x double> %4079, ptr %123, align 64, !tbaa !26
  %4080 = load <8 x double>, ptr %125, align 64, !tbaa !26
  %4081 = fcmp olt <8 x double> %4080, %4071
  %4082 = select <8 x i1> %3661, <8 x i1> splat (i1 true), <8 x i1> %4081
  %4083 = select <8 x i1> %4082, <8 x double> %4080, <8 x double> %4071
  store <8 x double> %4083, ptr %125, align 64, !tbaa !26
  %4084 = fcmp une <8 x double> %4070, zeroinitializer
  %4085 = fcmp ueq <8 x double> %3311, zeroinitializer
  %4086 = or <8 x i1> %4085, %4084
  %4087 = fcmp olt <8 x double> %4066, splat (double 1.800000e+00)
  %4088 = select <8 x i1> %4087, <8 x double> %4066, <8 x double> splat (double 1.800000e+00)
  %4089 = select <8 x i1> %4086, <8 x double> splat (double 1.800000e+00), <8 x double> %4088
  %4090 = fcmp ogt <8 x double> %4089, splat (double 2.000000e-01)
  %4091 = select <8 x i1> %4090, <8 x double> %4089, <8 x double> splat (double 2.000000e-01)
  %4092 = fmul <8 x double> %4071, %4091
  %4093 = fmul <8 x double> %4071, splat (double 4.000000e+00)
  %4094 = fcmp olt <8 x double> %4069, %4093
  %4095 = select <8 x i1> %4094, <8 x double> %4069, <8 x double> %4093
  %4096 = fcmp ogt <8 x double> %4092, %4095
  %4097 = select <8 x i1> %4096, <8 x double> %4092, <8 x double> %4095
  %4098 = select <8 x i1> %3661, <8 x double> %4069, <8 x double> zeroinitializer
  store <8 x double> %4098, ptr %143, align 64, !tbaa !26
  %4099 = select <8 x i1> %3661, <8 x double> %4068, <8 x double> zeroinitializer
  store <8 x double> %4099, ptr %205, align 64, !tbaa !26
  %4100 = load <8 x i64>, ptr %147, align 64, !tbaa !26
  %4101 = and <8 x i64> %4100, %3689
  store <8 x i64> %4101, ptr %147, align 64, !tbaa !26
  br i1 %4067, label %4102, label %4399

4102:                                             ; preds = %4065, %4392
  %4103 = phi i64 [ %4394, %4392 ], [ 0, %4065 ]
  %4104 = phi <8 x double> [ %4393, %4392 ], [ %4097, %4065 ]
  %4105 = load ptr, ptr %129, align 8, !tbaa !28
  %4106 = getelementptr inbounds nuw %struct.Piece, ptr %4105, i64 %4103
  %4107 = getelementptr inbounds nuw i8, ptr %4106, i64 3776
  %4108 = load <8 x double>, ptr %4107, align 64, !tbaa !26
  %4109 = getelementptr inbounds nuw i8, ptr %4106, i64 1472
  %4110 = load <8 x double>, ptr %4109, align 64, !tbaa !26
  %4111 = fmul <8 x double> %4110, splat (double 1.001000e+00)
  %4112 = fcmp ole <8 x double> %4108, %4111
  %4113 = getelementptr inbounds nuw i8, ptr %4106, i64 1600
  %4114 = load <8 x double>, ptr %4113, align 64, !tbaa !26
  %4115 = getelementptr inbounds nuw i8, ptr %4106, i64 4032
  %4116 = load <8 x double>, ptr %4115, align 64, !tbaa !26
  %4117 = fsub <8 x double> %4114, %4116
  %4118 = fmul <8 x double> %4114, splat (double 1.000000e-04)
  %4119 = fcmp ole <8 x double> %4117, %4118
  %4120 = getelementptr inbounds nuw i8, ptr %4106, i64 7360
  %4121 = load <8 x i64>, ptr %4120, align 64, !tbaa !26
  %4122 = and <8 x i64> %4121, %3601
  %4123 = getelementptr inbounds nuw i8, ptr %4106, i64 7296
  %4124 = load <8 x double>, ptr %4123, align 64, !tbaa !26
  %4125 = fcmp oeq <8 x double> %4124, zeroinitializer
  %4126 = and <8 x i1> %4112, %4125
  %4127 = fcmp oeq <8 x double> %4124, splat (double 1.000000e+00)
  %4128 = and <8 x i1> %4119, %4127
  %4129 = or <8 x i1> %4126, %4128
  %4130 = select <8 x i1> %4129, <8 x i64> %4122, <8 x i64> zeroinitializer
  %4131 = fadd <8 x double> %4124, splat (double 1.000000e+00)
  %4132 = icmp eq <8 x i64> %4130, zeroinitializer
  %4133 = select <8 x i1> %4132, <8 x double> %4124, <8 x double> %4131
  store <8 x double> %4133, ptr %4123, align 64, !tbaa !26
  %4134 = getelementptr inbounds nuw i8, ptr %4106, i64 7424
  %4135 = load <8 x i64>, ptr %4134, align 64, !tbaa !26
  %4136 = or <8 x i64> %4130, %4135
  store <8 x i64> %4136, ptr %4134, align 64, !tbaa !26
  %4137 = getelementptr inbounds nuw i8, ptr %4106, i64 896
  %4138 = load <8 x double>, ptr %4137, align 64, !tbaa !26
  %4139 = getelementptr inbounds nuw i8, ptr %4106, i64 5632
  %4140 = load <8 x double>, ptr %4139, align 64, !tbaa !26
  %4141 = getelementptr inbounds nuw i8, ptr %4106, i64 5696
  %4142 = load <8 x double>, ptr %4141, align 64, !tbaa !26
  %4143 = fadd <8 x double> %4140, %4142
  %4144 = fcmp ogt <8 x double> %4143, zeroinitializer
  %4145 = xor <8 x i64> %4121, splat (i64 -1)
  %4146 = and <8 x i64> %3601, %4145
  %4147 = fcmp une <8 x double> %4138, zeroinitializer
  %4148 = or <8 x i1> %4147, %4144
  %4149 = getelementptr inbounds nuw i8, ptr %4106, i64 3840
  %4150 = load <8 x double>, ptr %4149, align 64, !tbaa !26
  %4151 = fmul <8 x double> %4138, splat (double 1.000000e-04)
  %4152 = fcmp ogt <8 x double> %4151, splat (double 0x3E7AD7F29ABCAF48)
  %4153 = select <8 x i1> %4152, <8 x double> %4151, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4154 = fcmp ole <8 x double> %4150, %4153
  %4155 = select <8 x i1> %4154, <8 x i1> %4148, <8 x i1> zeroinitializer
  %4156 = select <8 x i1> %4155, <8 x i64> %4146, <8 x i64> zeroinitializer
  %4157 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4156)
  %4158 = icmp eq i64 %4157, 0
  br i1 %4158, label %4392, label %4159

4159:                                             ; preds = %4102
  %4160 = load i64, ptr %119, align 16, !tbaa !21
  %4161 = load i64, ptr %120, align 8, !tbaa !22
  %4162 = getelementptr inbounds nuw i8, ptr %4106, i64 4416
  %4163 = load <8 x double>, ptr %4162, align 64, !tbaa !26
  %4164 = getelementptr inbounds nuw i8, ptr %4106, i64 5568
  %4165 = load <8 x double>, ptr %4164, align 64, !tbaa !26
  %4166 = getelementptr inbounds nuw i8, ptr %4106, i64 832
  %4167 = load <8 x double>, ptr %4166, align 64, !tbaa !26
  %4168 = getelementptr inbounds nuw i8, ptr %4106, i64 7600
  %4169 = load ptr, ptr %4168, align 16, !tbaa !45
  %4170 = add nsw i64 %4160, -1
  %4171 = getelementptr inbounds <8 x double>, ptr %4169, i64 %4170
  %4172 = load <8 x double>, ptr %4171, align 64, !tbaa !26
  %4173 = fmul <8 x double> %4167, %4172
  %4174 = fneg <8 x double> %4150
  %4175 = fdiv <8 x double> %4174, %4173
  %4176 = fcmp ogt <8 x double> %4175, splat (double 0x3E7AD7F29ABCAF48)
  %4177 = select <8 x i1> %4176, <8 x double> %4175, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4178 = load <8 x double>, ptr %4106, align 64, !tbaa !26
  %4179 = fsub <8 x double> %4178, %4177
  %4180 = getelementptr inbounds nuw i8, ptr %4106, i64 2560
  %4181 = load <8 x double>, ptr %4180, align 64, !tbaa !26
  %4182 = getelementptr inbounds nuw i8, ptr %4106, i64 2624
  %4183 = load <8 x double>, ptr %4182, align 64, !tbaa !26
  %4184 = getelementptr inbounds nuw i8, ptr %4106, i64 2688
  %4185 = load <8 x double>, ptr %4184, align 64, !tbaa !26
  %4186 = getelementptr inbounds nuw i8, ptr %4106, i64 2752
  %4187 = load <8 x double>, ptr %4186, align 64, !tbaa !26
  %4188 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4179, <8 x double> %4187, <8 x double> %4185)
  %4189 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4179, <8 x double> %4188, <8 x double> %4183)
  %4190 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4179, <8 x double> %4189, <8 x double> %4181)
  %4191 = getelementptr inbounds nuw i8, ptr %4106, i64 7568
  %4192 = load ptr, ptr %4191, align 16, !tbaa !44
  %4193 = getelementptr inbounds <8 x double>, ptr %4192, i64 %4170
  %4194 = load <8 x double>, ptr %4193, align 64, !tbaa !26
  %4195 = getelementptr inbounds nuw i8, ptr %4106, i64 7552
  %4196 = load i64, ptr %4195, align 64, !tbaa !31
  %4197 = icmp sgt i64 %4160, %4196
  br i1 %4197, label %4201, label %4198

4198:                                             ; preds = %4159
  %4199 = getelementptr inbounds nuw i8, ptr %4106, i64 640
  %4200 = load <8 x double>, ptr %4199, align 64, !tbaa !26
  br label %4212

4201:                                             ; preds = %4159
  %4202 = getelementptr inbounds nuw i8, ptr %4106, i64 384
  %4203 = load <8 x double>, ptr %4202, align 64, !tbaa !26
  %4204 = getelementptr inbounds nuw i8, ptr %4106, i64 448
  %4205 = load <8 x double>, ptr %4204, align 64, !tbaa !26
  %4206 = getelementptr inbounds nuw i8, ptr %4106, i64 512
  %4207 = load <8 x double>, ptr %4206, align 64, !tbaa !26
  %4208 = fmul <8 x double> %4194, %4207
  %4209 = fmul <8 x double> %4208, splat (double 0x3FD5555555555555)
  %4210 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4205, <8 x double> splat (double 5.000000e-01), <8 x double> %4209)
  %4211 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4194, <8 x double> %4210, <8 x double> %4203)
  br label %4212

4212:                                             ; preds = %4201, %4198
  %4213 = phi <8 x double> [ %4200, %4198 ], [ %4211, %4201 ]
  %4214 = fmul <8 x double> %4194, %4213
  %4215 = icmp sgt i64 %4160, 0
  br i1 %4215, label %4216, label %4226

4216:                                             ; preds = %4212
  %4217 = getelementptr inbounds nuw i8, ptr %4106, i64 640
  %4218 = getelementptr inbounds nuw i8, ptr %4106, i64 384
  %4219 = getelementptr inbounds nuw i8, ptr %4106, i64 448
  %4220 = getelementptr inbounds nuw i8, ptr %4106, i64 512
  %4221 = getelementptr inbounds nuw i8, ptr %4106, i64 1536
  %4222 = getelementptr inbounds nuw i8, ptr %4106, i64 7648
  %4223 = icmp eq <8 x i64> %4156, zeroinitializer
  br label %4238

4224:                                             ; preds = %4317
  %4225 = load <8 x double>, ptr %4106, align 64, !tbaa !26
  br label %4226

4226:                                             ; preds = %4224, %4212
  %4227 = phi <8 x double> [ %4225, %4224 ], [ %4178, %4212 ]
  %4228 = fsub <8 x double> %4227, %4179
  %4229 = sitofp i64 %4161 to double
  %4230 = insertelement <8 x double> poison, double %4229, i64 0
  %4231 = shufflevector <8 x double> %4230, <8 x double> poison, <8 x i32> zeroinitializer
  %4232 = fdiv <8 x double> %4228, %4231
  %4233 = icmp sgt i64 %4161, 0
  br i1 %4233, label %4234, label %4348

4234:                                             ; preds = %4226
  %4235 = getelementptr inbounds nuw i8, ptr %4106, i64 7736
  %4236 = icmp eq <8 x i64> %4156, zeroinitializer
  %4237 = getelementptr inbounds nuw i8, ptr %4106, i64 7688
  br label %4325

4238:                                             ; preds = %4216, %4317
  %4239 = phi <8 x double> [ %4194, %4216 ], [ %4287, %4317 ]
  %4240 = phi <8 x double> [ %4214, %4216 ], [ %4288, %4317 ]
  %4241 = phi <8 x double> [ %4190, %4216 ], [ %4286, %4317 ]
  %4242 = phi i64 [ %4170, %4216 ], [ %4323, %4317 ]
  %4243 = icmp eq i64 %4242, 0
  br i1 %4243, label %4285, label %4244

4244:                                             ; preds = %4238
  %4245 = load ptr, ptr %4191, align 16, !tbaa !44
  %4246 = getelementptr <8 x double>, ptr %4245, i64 %4242
  %4247 = getelementptr i8, ptr %4246, i64 -64
  %4248 = load <8 x double>, ptr %4247, align 64, !tbaa !26
  %4249 = load i64, ptr %4195, align 64, !tbaa !31
  %4250 = icmp sgt i64 %4242, %4249
  br i1 %4250, label %4253, label %4251

4251:                                             ; preds = %4244
  %4252 = load <8 x double>, ptr %4217, align 64, !tbaa !26
  br label %4261

4253:                                             ; preds = %4244
  %4254 = load <8 x double>, ptr %4218, align 64, !tbaa !26
  %4255 = load <8 x double>, ptr %4219, align 64, !tbaa !26
  %4256 = load <8 x double>, ptr %4220, align 64, !tbaa !26
  %4257 = fmul <8 x double> %4248, %4256
  %4258 = fmul <8 x double> %4257, splat (double 0x3FD5555555555555)
  %4259 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4255, <8 x double> splat (double 5.000000e-01), <8 x double> %4258)
  %4260 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4248, <8 x double> %4259, <8 x double> %4254)
  br label %4261

4261:                                             ; preds = %4251, %4253
  %4262 = phi <8 x double> [ %4260, %4253 ], [ %4252, %4251 ]
  %4263 = fmul <8 x double> %4248, %4262
  %4264 = icmp slt i64 %4242, %4249
  br i1 %4264, label %4265, label %4272

4265:                                             ; preds = %4261
  %4266 = load ptr, ptr %4222, align 32, !tbaa !70
  %4267 = getelementptr inbounds nuw <8 x double>, ptr %4266, i64 %4242
  %4268 = load <8 x double>, ptr %4267, align 64, !tbaa !26
  %4269 = load <8 x double>, ptr %4221, align 64, !tbaa !26
  %4270 = fmul <8 x double> %4268, %4269
  %4271 = fmul <8 x double> %4268, %4269
  br label %4281

4272:                                             ; preds = %4261
  %4273 = load <8 x double>, ptr %4221, align 64, !tbaa !26
  %4274 = load ptr, ptr %4222, align 32, !tbaa !70
  %4275 = getelementptr inbounds nuw <8 x double>, ptr %4274, i64 %4242
  %4276 = load <8 x double>, ptr %4275, align 64, !tbaa !26
  %4277 = fsub <8 x double> %4190, %4273
  %4278 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4276, <8 x double> %4277, <8 x double> %4273)
  %4279 = fsub <8 x double> %4163, %4273
  %4280 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4276, <8 x double> %4279, <8 x double> %4273)
  br label %4281

4281:                                             ; preds = %4272, %4265
  %4282 = phi <8 x double> [ %4270, %4265 ], [ %4278, %4272 ]
  %4283 = phi <8 x double> [ %4271, %4265 ], [ %4280, %4272 ]
  %4284 = fsub <8 x double> %4283, %4282
  br label %4285

4285:                                             ; preds = %4238, %4281
  %4286 = phi <8 x double> [ %4282, %4281 ], [ zeroinitializer, %4238 ]
  %4287 = phi <8 x double> [ %4248, %4281 ], [ %4239, %4238 ]
  %4288 = phi <8 x double> [ %4263, %4281 ], [ %4240, %4238 ]
  %4289 = phi <8 x double> [ %4284, %4281 ], [ zeroinitializer, %4238 ]
  %4290 = fsub <8 x double> %4241, %4286
  %4291 = fdiv <8 x double> %4289, %4290
  %4292 = fsub <8 x double> %4288, %4240
  %4293 = fmul <8 x double> %4292, %4291
  %4294 = load ptr, ptr %4168, align 16, !tbaa !45
  %4295 = getelementptr inbounds nuw <8 x double>, ptr %4294, i64 %4242
  %4296 = load <8 x double>, ptr %4295, align 64, !tbaa !26
  br i1 %4243, label %4300, label %4297

4297:                                             ; preds = %4285
  %4298 = getelementptr i8, ptr %4295, i64 -64
  %4299 = load <8 x double>, ptr %4298, align 64, !tbaa !26
  br label %4300

4300:                                             ; preds = %4297, %4285
  %4301 = phi <8 x double> [ %4299, %4297 ], [ %4296, %4285 ]
  %4302 = fsub <8 x double> %4301, %4296
  %4303 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4302, <8 x double> %4291, <8 x double> %4296)
  %4304 = select <8 x i1> %4223, <8 x double> %4296, <8 x double> %4303
  store <8 x double> %4304, ptr %4295, align 64, !tbaa !26
  %4305 = load ptr, ptr %4191, align 16, !tbaa !44
  %4306 = getelementptr inbounds nuw <8 x double>, ptr %4305, i64 %4242
  %4307 = load i64, ptr %4195, align 64, !tbaa !31
  %4308 = icmp slt i64 %4242, %4307
  br i1 %4308, label %4309, label %4311

4309:                                             ; preds = %4300
  %4310 = load <8 x double>, ptr %4217, align 64, !tbaa !26
  br label %4317

4311:                                             ; preds = %4300
  %4312 = load <8 x double>, ptr %4218, align 64, !tbaa !26
  %4313 = load <8 x double>, ptr %4219, align 64, !tbaa !26
  %4314 = load <8 x double>, ptr %4220, align 64, !tbaa !26
  %4315 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4239, <8 x double> %4314, <8 x double> %4313)
  %4316 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4239, <8 x double> %4315, <8 x double> %4312)
  br label %4317

4317:                                             ; preds = %4311, %4309
  %4318 = phi <8 x double> [ %4310, %4309 ], [ %4316, %4311 ]
  %4319 = fdiv <8 x double> %4293, %4318
  %4320 = fadd <8 x double> %4239, %4319
  %4321 = load <8 x double>, ptr %4306, align 64, !tbaa !26
  %4322 = select <8 x i1> %4223, <8 x double> %4321, <8 x double> %4320
  store <8 x double> %4322, ptr %4306, align 64, !tbaa !26
  %4323 = add nsw i64 %4242, -1
  %4324 = icmp sgt i64 %4242, 0
  br i1 %4324, label %4238, label %4224, !llvm.loop !129

4325:                                             ; preds = %4234, %4325
  %4326 = phi i64 [ 0, %4234 ], [ %4346, %4325 ]
  %4327 = load ptr, ptr %4235, align 8, !tbaa !47
  %4328 = getelementptr inbounds nuw <8 x double>, ptr %4327, i64 %4326
  %4329 = uitofp nneg i64 %4326 to double
  %4330 = insertelement <8 x double> poison, double %4329, i64 0
  %4331 = shufflevector <8 x double> %4330, <8 x double> poison, <8 x i32> zeroinitializer
  %4332 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4331, <8 x double> %4232, <8 x double> %4179)
  %4333 = load <8 x double>, ptr %4180, align 64, !tbaa !26
  %4334 = load <8 x double>, ptr %4182, align 64, !tbaa !26
  %4335 = load <8 x double>, ptr %4184, align 64, !tbaa !26
  %4336 = load <8 x double>, ptr %4186, align 64, !tbaa !26
  %4337 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4332, <8 x double> %4336, <8 x double> %4335)
  %4338 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4332, <8 x double> %4337, <8 x double> %4334)
  %4339 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4332, <8 x double> %4338, <8 x double> %4333)
  %4340 = load <8 x double>, ptr %4328, align 64, !tbaa !26
  %4341 = select <8 x i1> %4236, <8 x double> %4340, <8 x double> %4339
  store <8 x double> %4341, ptr %4328, align 64, !tbaa !26
  %4342 = load ptr, ptr %4237, align 8, !tbaa !48
  %4343 = getelementptr inbounds nuw <8 x double>, ptr %4342, i64 %4326
  %4344 = load <8 x double>, ptr %4343, align 64, !tbaa !26
  %4345 = select <8 x i1> %4236, <8 x double> %4344, <8 x double> %4165
  store <8 x double> %4345, ptr %4343, align 64, !tbaa !26
  %4346 = add nuw nsw i64 %4326, 1
  %4347 = icmp eq i64 %4346, %4161
  br i1 %4347, label %4348, label %4325, !llvm.loop !130

4348:                                             ; preds = %4325, %4226
  %4349 = fsub <8 x double> %4163, %4190
  %4350 = getelementptr inbounds nuw i8, ptr %4106, i64 3712
  %4351 = getelementptr inbounds nuw i8, ptr %4106, i64 7736
  %4352 = load ptr, ptr %4351, align 8, !tbaa !47
  %4353 = getelementptr inbounds <8 x double>, ptr %4352, i64 %4161
  %4354 = getelementptr inbounds nuw i8, ptr %4106, i64 1408
  %4355 = load <8 x double>, ptr %4354, align 64, !tbaa !26
  %4356 = load <8 x double>, ptr %4353, align 64, !tbaa !26
  %4357 = icmp eq <8 x i64> %4156, zeroinitializer
  %4358 = select <8 x i1> %4357, <8 x double> %4356, <8 x double> %4355
  store <8 x double> %4358, ptr %4353, align 64, !tbaa !26
  %4359 = load <8 x double>, ptr %4350, align 64, !tbaa !26
  %4360 = select <8 x i1> %4357, <8 x double> %4359, <8 x double> %4179
  store <8 x double> %4360, ptr %4350, align 64, !tbaa !26
  %4361 = load <8 x double>, ptr %4107, align 64, !tbaa !26
  %4362 = select <8 x i1> %4357, <8 x double> %4361, <8 x double> %4190
  store <8 x double> %4362, ptr %4107, align 64, !tbaa !26
  %4363 = load <8 x double>, ptr %4162, align 64, !tbaa !26
  %4364 = select <8 x i1> %4357, <8 x double> %4363, <8 x double> %4190
  store <8 x double> %4364, ptr %4162, align 64, !tbaa !26
  %4365 = getelementptr inbounds nuw i8, ptr %4106, i64 3904
  %4366 = load <8 x double>, ptr %4365, align 64, !tbaa !26
  %4367 = fneg <8 x double> %4349
  %4368 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4367, <8 x double> %4173, <8 x double> %4366)
  %4369 = select <8 x i1> %4357, <8 x double> %4366, <8 x double> %4368
  store <8 x double> %4369, ptr %4365, align 64, !tbaa !26
  %4370 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4349, <8 x double> %4173, <8 x double> %4150)
  %4371 = load <8 x double>, ptr %4149, align 64, !tbaa !26
  %4372 = select <8 x i1> %4357, <8 x double> %4371, <8 x double> %4370
  store <8 x double> %4372, ptr %4149, align 64, !tbaa !26
  %4373 = getelementptr inbounds nuw i8, ptr %4106, i64 4160
  %4374 = load <8 x double>, ptr %4373, align 64, !tbaa !26
  %4375 = getelementptr inbounds nuw i8, ptr %4106, i64 768
  %4376 = load <8 x double>, ptr %4375, align 64, !tbaa !26
  %4377 = fneg <8 x double> %4376
  %4378 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4377, <8 x double> %4165, <8 x double> %4214)
  %4379 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4349, <8 x double> %4378, <8 x double> %4374)
  %4380 = select <8 x i1> %4357, <8 x double> %4374, <8 x double> %4379
  store <8 x double> %4380, ptr %4373, align 64, !tbaa !26
  %4381 = load <8 x i64>, ptr %4120, align 64, !tbaa !26
  %4382 = or <8 x i64> %4381, %4156
  store <8 x i64> %4382, ptr %4120, align 64, !tbaa !26
  %4383 = load <8 x i64>, ptr %4134, align 64, !tbaa !26
  %4384 = or <8 x i64> %4383, %4156
  store <8 x i64> %4384, ptr %4134, align 64, !tbaa !26
  %4385 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %4386 = fmul <8 x double> %4385, splat (double 5.000000e+00)
  %4387 = fcmp olt <8 x double> %4104, %4386
  %4388 = select <8 x i1> %4387, <8 x double> %4104, <8 x double> %4386
  %4389 = icmp ne <8 x i64> %4156, zeroinitializer
  %4390 = select <8 x i1> %4147, <8 x i1> %4389, <8 x i1> zeroinitializer
  %4391 = select <8 x i1> %4390, <8 x double> %4388, <8 x double> %4104
  br label %4392

4392:                                             ; preds = %4348, %4102
  %4393 = phi <8 x double> [ %4391, %4348 ], [ %4104, %4102 ]
  %4394 = add nuw nsw i64 %4103, 1
  %4395 = load i64, ptr %144, align 8, !tbaa !20
  %4396 = icmp slt i64 %4394, %4395
  br i1 %4396, label %4102, label %4397, !llvm.loop !131

4397:                                             ; preds = %4392
  %4398 = load <8 x double>, ptr %136, align 64, !tbaa !26
  br label %4399

4399:                                             ; preds = %4397, %4065
  %4400 = phi <8 x double> [ %4074, %4065 ], [ %4398, %4397 ]
  %4401 = phi <8 x double> [ %4097, %4065 ], [ %4393, %4397 ]
  %4402 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4401)
  %4403 = insertelement <8 x double> poison, double %4402, i64 0
  %4404 = shufflevector <8 x double> %4403, <8 x double> poison, <8 x i32> zeroinitializer
  %4405 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %4406 = select <8 x i1> %3661, <8 x double> %4405, <8 x double> %4404
  store <8 x double> %4406, ptr %139, align 64, !tbaa !26
  %4407 = load ptr, ptr %213, align 64, !tbaa !36
  %4408 = getelementptr inbounds nuw i8, ptr %4407, i64 64
  store <8 x double> %4400, ptr %4407, align 64, !tbaa !26
  %4409 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %4410 = getelementptr inbounds nuw i8, ptr %4407, i64 128
  store <8 x double> %4409, ptr %4408, align 64, !tbaa !26
  %4411 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4412 = getelementptr inbounds nuw i8, ptr %4407, i64 192
  store <8 x double> %4411, ptr %4410, align 64, !tbaa !26
  %4413 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %4414 = getelementptr inbounds nuw i8, ptr %4407, i64 256
  store <8 x double> %4413, ptr %4412, align 64, !tbaa !26
  %4415 = load i64, ptr %144, align 8, !tbaa !20
  %4416 = icmp sgt i64 %4415, 0
  br i1 %4416, label %4421, label %4417

4417:                                             ; preds = %4421, %4399
  %4418 = phi ptr [ %4414, %4399 ], [ %4427, %4421 ]
  %4419 = load i64, ptr %215, align 8, !tbaa !132
  %4420 = icmp eq i64 %4419, 0
  br i1 %4420, label %4556, label %4431

4421:                                             ; preds = %4399, %4421
  %4422 = phi ptr [ %4427, %4421 ], [ %4414, %4399 ]
  %4423 = phi i64 [ %4428, %4421 ], [ 0, %4399 ]
  %4424 = load ptr, ptr %129, align 8, !tbaa !28
  %4425 = getelementptr inbounds nuw %struct.Piece, ptr %4424, i64 %4423, i32 35
  %4426 = load <8 x double>, ptr %4425, align 64, !tbaa !26
  %4427 = getelementptr inbounds nuw i8, ptr %4422, i64 64
  store <8 x double> %4426, ptr %4422, align 64, !tbaa !26
  %4428 = add nuw nsw i64 %4423, 1
  %4429 = load i64, ptr %144, align 8, !tbaa !20
  %4430 = icmp slt i64 %4428, %4429
  br i1 %4430, label %4421, label %4417, !llvm.loop !133

4431:                                             ; preds = %4417
  %4432 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4433 = getelementptr inbounds nuw i8, ptr %4418, i64 64
  store <8 x double> %4432, ptr %4418, align 64, !tbaa !26
  %4434 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %4435 = getelementptr inbounds nuw i8, ptr %4418, i64 128
  store <8 x double> %4434, ptr %4433, align 64, !tbaa !26
  %4436 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4437 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %4438 = fsub <8 x double> %4436, %4437
  %4439 = fcmp ogt <8 x double> %4438, zeroinitializer
  %4440 = select <8 x i1> %4439, <8 x double> %4438, <8 x double> zeroinitializer
  store <8 x double> %4440, ptr %4435, align 64, !tbaa !26
  %4441 = load i64, ptr %144, align 8, !tbaa !20
  %4442 = icmp sgt i64 %4441, 0
  br i1 %4442, label %4443, label %4556

4443:                                             ; preds = %4431
  %4444 = getelementptr inbounds nuw i8, ptr %4418, i64 192
  br label %4445

4445:                                             ; preds = %4443, %4445
  %4446 = phi ptr [ %4552, %4445 ], [ %4444, %4443 ]
  %4447 = phi i64 [ %4553, %4445 ], [ 0, %4443 ]
  %4448 = load ptr, ptr %129, align 8, !tbaa !28
  %4449 = getelementptr inbounds nuw %struct.Piece, ptr %4448, i64 %4447
  %4450 = getelementptr inbounds nuw i8, ptr %4449, i64 7568
  %4451 = load ptr, ptr %4450, align 16, !tbaa !44
  %4452 = load i64, ptr %119, align 16, !tbaa !21
  %4453 = getelementptr <8 x double>, ptr %4451, i64 %4452
  %4454 = getelementptr i8, ptr %4453, i64 -64
  %4455 = load <8 x double>, ptr %4454, align 64, !tbaa !26
  %4456 = getelementptr inbounds nuw i8, ptr %4449, i64 6848
  %4457 = load <8 x double>, ptr %4456, align 64, !tbaa !26
  %4458 = getelementptr inbounds nuw i8, ptr %4449, i64 5568
  %4459 = load <8 x double>, ptr %4458, align 64, !tbaa !26
  %4460 = fsub <8 x double> %4459, %4455
  %4461 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4457, <8 x double> %4460, <8 x double> %4455)
  %4462 = getelementptr inbounds nuw i8, ptr %4446, i64 64
  store <8 x double> %4461, ptr %4446, align 64, !tbaa !26
  %4463 = getelementptr inbounds nuw i8, ptr %4449, i64 6400
  %4464 = load <8 x double>, ptr %4463, align 64, !tbaa !26
  %4465 = getelementptr inbounds nuw i8, ptr %4446, i64 128
  store <8 x double> %4464, ptr %4462, align 64, !tbaa !26
  %4466 = load <8 x double>, ptr %4449, align 64, !tbaa !26
  %4467 = getelementptr inbounds nuw i8, ptr %4449, i64 3712
  %4468 = load <8 x double>, ptr %4467, align 64, !tbaa !26
  %4469 = fsub <8 x double> %4466, %4468
  %4470 = getelementptr inbounds nuw i8, ptr %4446, i64 192
  store <8 x double> %4469, ptr %4465, align 64, !tbaa !26
  %4471 = getelementptr inbounds nuw i8, ptr %4449, i64 4032
  %4472 = load <8 x double>, ptr %4471, align 64, !tbaa !26
  %4473 = getelementptr inbounds nuw i8, ptr %4446, i64 256
  store <8 x double> %4472, ptr %4470, align 64, !tbaa !26
  %4474 = getelementptr inbounds nuw i8, ptr %4449, i64 3968
  %4475 = load <8 x double>, ptr %4474, align 64, !tbaa !26
  %4476 = getelementptr inbounds nuw i8, ptr %4446, i64 320
  store <8 x double> %4475, ptr %4473, align 64, !tbaa !26
  %4477 = getelementptr inbounds nuw i8, ptr %4449, i64 3840
  %4478 = load <8 x double>, ptr %4477, align 64, !tbaa !26
  %4479 = getelementptr inbounds nuw i8, ptr %4446, i64 384
  store <8 x double> %4478, ptr %4476, align 64, !tbaa !26
  %4480 = getelementptr inbounds nuw i8, ptr %4449, i64 4096
  %4481 = load <8 x double>, ptr %4480, align 64, !tbaa !26
  %4482 = getelementptr inbounds nuw i8, ptr %4446, i64 448
  store <8 x double> %4481, ptr %4479, align 64, !tbaa !26
  %4483 = getelementptr inbounds nuw i8, ptr %4449, i64 7688
  %4484 = load i64, ptr %120, align 8, !tbaa !22
  %4485 = sitofp i64 %4484 to double
  %4486 = tail call double @llvm.fmuladd.f64(double %4485, double 7.500000e-01, double -5.000000e-01)
  %4487 = fcmp ogt double %4486, 0.000000e+00
  %4488 = select i1 %4487, double %4486, double 0.000000e+00
  %4489 = fptosi double %4488 to i64
  %4490 = add nsw i64 %4484, -2
  %4491 = tail call i64 @llvm.smin.i64(i64 %4490, i64 %4489)
  %4492 = sitofp i64 %4491 to double
  %4493 = fsub double %4486, %4492
  %4494 = fsub double 1.000000e+00, %4493
  %4495 = insertelement <8 x double> poison, double %4494, i64 0
  %4496 = shufflevector <8 x double> %4495, <8 x double> poison, <8 x i32> zeroinitializer
  %4497 = load ptr, ptr %4483, align 8, !tbaa !48
  %4498 = getelementptr inbounds <8 x double>, ptr %4497, i64 %4491
  %4499 = load <8 x double>, ptr %4498, align 64, !tbaa !26
  %4500 = insertelement <8 x double> poison, double %4493, i64 0
  %4501 = shufflevector <8 x double> %4500, <8 x double> poison, <8 x i32> zeroinitializer
  %4502 = getelementptr i8, ptr %4498, i64 64
  %4503 = load <8 x double>, ptr %4502, align 64, !tbaa !26
  %4504 = fmul <8 x double> %4503, %4501
  %4505 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4496, <8 x double> %4499, <8 x double> %4504)
  store <8 x double> %4505, ptr %4482, align 64, !tbaa !26
  %4506 = load i64, ptr %120, align 8, !tbaa !22
  %4507 = sitofp i64 %4506 to double
  %4508 = tail call double @llvm.fmuladd.f64(double %4507, double 5.000000e-01, double -5.000000e-01)
  %4509 = fcmp ogt double %4508, 0.000000e+00
  %4510 = select i1 %4509, double %4508, double 0.000000e+00
  %4511 = fptosi double %4510 to i64
  %4512 = add nsw i64 %4506, -2
  %4513 = tail call i64 @llvm.smin.i64(i64 %4512, i64 %4511)
  %4514 = sitofp i64 %4513 to double
  %4515 = fsub double %4508, %4514
  %4516 = fsub double 1.000000e+00, %4515
  %4517 = insertelement <8 x double> poison, double %4516, i64 0
  %4518 = shufflevector <8 x double> %4517, <8 x double> poison, <8 x i32> zeroinitializer
  %4519 = load ptr, ptr %4483, align 8, !tbaa !48
  %4520 = getelementptr inbounds <8 x double>, ptr %4519, i64 %4513
  %4521 = load <8 x double>, ptr %4520, align 64, !tbaa !26
  %4522 = insertelement <8 x double> poison, double %4515, i64 0
  %4523 = shufflevector <8 x double> %4522, <8 x double> poison, <8 x i32> zeroinitializer
  %4524 = getelementptr i8, ptr %4520, i64 64
  %4525 = load <8 x double>, ptr %4524, align 64, !tbaa !26
  %4526 = fmul <8 x double> %4525, %4523
  %4527 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4518, <8 x double> %4521, <8 x double> %4526)
  %4528 = getelementptr inbounds nuw i8, ptr %4446, i64 512
  store <8 x double> %4527, ptr %4528, align 64, !tbaa !26
  %4529 = load i64, ptr %120, align 8, !tbaa !22
  %4530 = sitofp i64 %4529 to double
  %4531 = tail call double @llvm.fmuladd.f64(double %4530, double 2.500000e-01, double -5.000000e-01)
  %4532 = fcmp ogt double %4531, 0.000000e+00
  %4533 = select i1 %4532, double %4531, double 0.000000e+00
  %4534 = fptosi double %4533 to i64
  %4535 = add nsw i64 %4529, -2
  %4536 = tail call i64 @llvm.smin.i64(i64 %4535, i64 %4534)
  %4537 = sitofp i64 %4536 to double
  %4538 = fsub double %4531, %4537
  %4539 = fsub double 1.000000e+00, %4538
  %4540 = insertelement <8 x double> poison, double %4539, i64 0
  %4541 = shufflevector <8 x double> %4540, <8 x double> poison, <8 x i32> zeroinitializer
  %4542 = load ptr, ptr %4483, align 8, !tbaa !48
  %4543 = getelementptr inbounds <8 x double>, ptr %4542, i64 %4536
  %4544 = load <8 x double>, ptr %4543, align 64, !tbaa !26
  %4545 = insertelement <8 x double> poison, double %4538, i64 0
  %4546 = shufflevector <8 x double> %4545, <8 x double> poison, <8 x i32> zeroinitializer
  %4547 = getelementptr i8, ptr %4543, i64 64
  %4548 = load <8 x double>, ptr %4547, align 64, !tbaa !26
  %4549 = fmul <8 x double> %4548, %4546
  %4550 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4541, <8 x double> %4544, <8 x double> %4549)
  %4551 = getelementptr inbounds nuw i8, ptr %4446, i64 576
  store <8 x double> %4550, ptr %4551, align 64, !tbaa !26
  %4552 = getelementptr inbounds nuw i8, ptr %4446, i64 640
  %4553 = add nuw nsw i64 %4447, 1
  %4554 = load i64, ptr %144, align 8, !tbaa !20
  %4555 = icmp slt i64 %4553, %4554
  br i1 %4555, label %4445, label %4556, !llvm.loop !134

4556:                                             ; preds = %4445, %4431, %4417
  %4557 = getelementptr inbounds nuw i8, ptr %4418, i64 192
  %4558 = extractelement <8 x i64> %3601, i64 0
  %4559 = icmp eq i64 %4558, 0
  br i1 %4559, label %4699, label %4560

4560:                                             ; preds = %4556
  %4561 = load i64, ptr %216, align 8, !tbaa !30
  %4562 = load i64, ptr %217, align 8, !tbaa !135
  %4563 = icmp eq i64 %4561, %4562
  br i1 %4563, label %4566, label %4564

4564:                                             ; preds = %4560
  %4565 = load ptr, ptr %221, align 8, !tbaa !136
  br label %4579

4566:                                             ; preds = %4560
  %4567 = load i64, ptr %121, align 8, !tbaa !30
  %4568 = load ptr, ptr %218, align 8, !tbaa !137
  %4569 = load i64, ptr %112, align 8, !tbaa !39
  %4570 = getelementptr inbounds i64, ptr %4568, i64 %4569
  store i64 %4567, ptr %4570, align 8, !tbaa !30
  %4571 = load ptr, ptr %219, align 8, !tbaa !138
  %4572 = load i64, ptr %112, align 8, !tbaa !39
  %4573 = add nsw i64 %4572, 1
  store i64 %4573, ptr %112, align 8, !tbaa !39
  %4574 = load i64, ptr %217, align 8, !tbaa !135
  %4575 = mul nsw i64 %4574, %4572
  %4576 = load i64, ptr %220, align 8, !tbaa !14
  %4577 = mul nsw i64 %4575, %4576
  %4578 = getelementptr inbounds double, ptr %4571, i64 %4577
  store ptr %4578, ptr %221, align 8, !tbaa !136
  br label %4579

4579:                                             ; preds = %4564, %4566
  %4580 = phi i64 [ %4561, %4564 ], [ 0, %4566 ]
  %4581 = phi ptr [ %4565, %4564 ], [ %4578, %4566 ]
  %4582 = add nsw i64 %4580, 1
  store i64 %4582, ptr %216, align 8, !tbaa !30
  %4583 = load i64, ptr %220, align 8, !tbaa !14
  %4584 = mul nsw i64 %4583, %4580
  %4585 = getelementptr inbounds double, ptr %4581, i64 %4584
  %4586 = load ptr, ptr %213, align 64, !tbaa !36
  %4587 = icmp ult ptr %4586, %4414
  br i1 %4587, label %4646, label %4588

4588:                                             ; preds = %4646, %4579
  %4589 = phi ptr [ %4585, %4579 ], [ %4650, %4646 ]
  %4590 = load i64, ptr %128, align 64, !tbaa !16
  %4591 = icmp sgt i64 %4590, 0
  br i1 %4591, label %4592, label %4634

4592:                                             ; preds = %4588
  %4593 = and i64 %4590, 3
  %4594 = icmp ult i64 %4590, 4
  br i1 %4594, label %4619, label %4595

4595:                                             ; preds = %4592
  %4596 = and i64 %4590, 9223372036854775804
  br label %4597

4597:                                             ; preds = %4597, %4595
  %4598 = phi i64 [ 0, %4595 ], [ %4616, %4597 ]
  %4599 = phi ptr [ %4589, %4595 ], [ %4613, %4597 ]
  %4600 = phi i64 [ 0, %4595 ], [ %4617, %4597 ]
  %4601 = getelementptr i8, ptr %4599, i64 8
  %4602 = load <8 x double>, ptr %4414, align 64, !tbaa !26
  %4603 = extractelement <8 x double> %4602, i64 %4598
  store double %4603, ptr %4599, align 8, !tbaa !40
  %4604 = or disjoint i64 %4598, 1
  %4605 = getelementptr i8, ptr %4599, i64 16
  %4606 = load <8 x double>, ptr %4414, align 64, !tbaa !26
  %4607 = extractelement <8 x double> %4606, i64 %4604
  store double %4607, ptr %4601, align 8, !tbaa !40
  %4608 = or disjoint i64 %4598, 2
  %4609 = getelementptr i8, ptr %4599, i64 24
  %4610 = load <8 x double>, ptr %4414, align 64, !tbaa !26
  %4611 = extractelement <8 x double> %4610, i64 %4608
  store double %4611, ptr %4605, align 8, !tbaa !40
  %4612 = or disjoint i64 %4598, 3
  %4613 = getelementptr i8, ptr %4599, i64 32
  %4614 = load <8 x double>, ptr %4414, align 64, !tbaa !26
  %4615 = extractelement <8 x double> %4614, i64 %4612
  store double %4615, ptr %4609, align 8, !tbaa !40
  %4616 = add nuw nsw i64 %4598, 4
  %4617 = add i64 %4600, 4
  %4618 = icmp eq i64 %4617, %4596
  br i1 %4618, label %4619, label %4597, !llvm.loop !139

4619:                                             ; preds = %4597, %4592
  %4620 = phi ptr [ poison, %4592 ], [ %4613, %4597 ]
  %4621 = phi i64 [ 0, %4592 ], [ %4616, %4597 ]
  %4622 = phi ptr [ %4589, %4592 ], [ %4613, %4597 ]
  %4623 = icmp eq i64 %4593, 0
  br i1 %4623, label %4634, label %4624

4624:                                             ; preds = %4619, %4624
  %4625 = phi i64 [ %4631, %4624 ], [ %4621, %4619 ]
  %4626 = phi ptr [ %4628, %4624 ], [ %4622, %4619 ]
  %4627 = phi i64 [ %4632, %4624 ], [ 0, %4619 ]
  %4628 = getelementptr i8, ptr %4626, i64 8
  %4629 = load <8 x double>, ptr %4414, align 64, !tbaa !26
  %4630 = extractelement <8 x double> %4629, i64 %4625
  store double %4630, ptr %4626, align 8, !tbaa !40
  %4631 = add nuw nsw i64 %4625, 1
  %4632 = add i64 %4627, 1
  %4633 = icmp eq i64 %4632, %4593
  br i1 %4633, label %4634, label %4624, !llvm.loop !140

4634:                                             ; preds = %4619, %4624, %4588
  %4635 = phi ptr [ %4589, %4588 ], [ %4620, %4619 ], [ %4628, %4624 ]
  %4636 = load i64, ptr %215, align 8, !tbaa !132
  %4637 = icmp eq i64 %4636, 0
  br i1 %4637, label %4699, label %4638

4638:                                             ; preds = %4634
  %4639 = load double, ptr %4418, align 8, !tbaa !40
  %4640 = getelementptr inbounds nuw i8, ptr %4635, i64 8
  store double %4639, ptr %4635, align 8, !tbaa !40
  %4641 = getelementptr inbounds nuw i8, ptr %4418, i64 64
  %4642 = load double, ptr %4641, align 8, !tbaa !40
  %4643 = getelementptr inbounds nuw i8, ptr %4635, i64 16
  store double %4642, ptr %4640, align 8, !tbaa !40
  %4644 = getelementptr inbounds nuw i8, ptr %4418, i64 128
  %4645 = load double, ptr %4644, align 8, !tbaa !40
  store double %4645, ptr %4643, align 8, !tbaa !40
  br i1 %4591, label %4653, label %4699

4646:                                             ; preds = %4579, %4646
  %4647 = phi ptr [ %4651, %4646 ], [ %4586, %4579 ]
  %4648 = phi ptr [ %4650, %4646 ], [ %4585, %4579 ]
  %4649 = load double, ptr %4647, align 8, !tbaa !40
  %4650 = getelementptr inbounds nuw i8, ptr %4648, i64 8
  store double %4649, ptr %4648, align 8, !tbaa !40
  %4651 = getelementptr inbounds nuw i8, ptr %4647, i64 64
  %4652 = icmp ult ptr %4651, %4414
  br i1 %4652, label %4646, label %4588, !llvm.loop !142

4653:                                             ; preds = %4638
  %4654 = getelementptr inbounds nuw i8, ptr %4635, i64 24
  %4655 = getelementptr inbounds nuw i8, ptr %4418, i64 256
  %4656 = getelementptr inbounds nuw i8, ptr %4418, i64 320
  %4657 = getelementptr inbounds nuw i8, ptr %4418, i64 384
  %4658 = getelementptr inbounds nuw i8, ptr %4418, i64 448
  %4659 = getelementptr inbounds nuw i8, ptr %4418, i64 512
  %4660 = getelementptr inbounds nuw i8, ptr %4418, i64 576
  %4661 = getelementptr inbounds nuw i8, ptr %4418, i64 640
  %4662 = getelementptr inbounds nuw i8, ptr %4418, i64 704
  %4663 = getelementptr inbounds nuw i8, ptr %4418, i64 768
  br label %4664

4664:                                             ; preds = %4653, %4664
  %4665 = phi i64 [ %4697, %4664 ], [ 0, %4653 ]
  %4666 = phi ptr [ %4696, %4664 ], [ %4654, %4653 ]
  %4667 = load <8 x double>, ptr %4557, align 64, !tbaa !26
  %4668 = extractelement <8 x double> %4667, i64 %4665
  %4669 = getelementptr inbounds nuw i8, ptr %4666, i64 8
  store double %4668, ptr %4666, align 8, !tbaa !40
  %4670 = load <8 x double>, ptr %4655, align 64, !tbaa !26
  %4671 = extractelement <8 x double> %4670, i64 %4665
  %4672 = getelementptr inbounds nuw i8, ptr %4666, i64 16
  store double %4671, ptr %4669, align 8, !tbaa !40
  %4673 = load <8 x double>, ptr %4656, align 64, !tbaa !26
  %4674 = extractelement <8 x double> %4673, i64 %4665
  %4675 = getelementptr inbounds nuw i8, ptr %4666, i64 24
  store double %4674, ptr %4672, align 8, !tbaa !40
  %4676 = load <8 x double>, ptr %4657, align 64, !tbaa !26
  %4677 = extractelement <8 x double> %4676, i64 %4665
  %4678 = getelementptr inbounds nuw i8, ptr %4666, i64 32
  store double %4677, ptr %4675, align 8, !tbaa !40
  %4679 = load <8 x double>, ptr %4658, align 64, !tbaa !26
  %4680 = extractelement <8 x double> %4679, i64 %4665
  %4681 = getelementptr inbounds nuw i8, ptr %4666, i64 40
  store double %4680, ptr %4678, align 8, !tbaa !40
  %4682 = load <8 x double>, ptr %4659, align 64, !tbaa !26
  %4683 = extractelement <8 x double> %4682, i64 %4665
  %4684 = getelementptr inbounds nuw i8, ptr %4666, i64 48
  store double %4683, ptr %4681, align 8, !tbaa !40
  %4685 = load <8 x double>, ptr %4660, align 64, !tbaa !26
  %4686 = extractelement <8 x double> %4685, i64 %4665
  %4687 = getelementptr inbounds nuw i8, ptr %4666, i64 56
  store double %4686, ptr %4684, align 8, !tbaa !40
  %4688 = load <8 x double>, ptr %4661, align 64, !tbaa !26
  %4689 = extractelement <8 x double> %4688, i64 %4665
  %4690 = getelementptr inbounds nuw i8, ptr %4666, i64 64
  store double %4689, ptr %4687, align 8, !tbaa !40
  %4691 = load <8 x double>, ptr %4662, align 64, !tbaa !26
  %4692 = extractelement <8 x double> %4691, i64 %4665
  %4693 = getelementptr inbounds nuw i8, ptr %4666, i64 72
  store double %4692, ptr %4690, align 8, !tbaa !40
  %4694 = load <8 x double>, ptr %4663, align 64, !tbaa !26
  %4695 = extractelement <8 x double> %4694, i64 %4665
  %4696 = getelementptr inbounds nuw i8, ptr %4666, i64 80
  store double %4695, ptr %4693, align 8, !tbaa !40
  %4697 = add nuw nsw i64 %4665, 1
  %4698 = icmp eq i64 %4697, %4590
  br i1 %4698, label %4699, label %4664, !llvm.loop !139

4699:                                             ; preds = %4664, %4638, %4634, %4556
  %4700 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4701 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %4702 = fsub <8 x double> %4700, %4701
  %4703 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %4704 = fadd <8 x double> %4703, splat (double -1.000000e-09)
  %4705 = fcmp oge <8 x double> %4702, %4704
  %4706 = select <8 x i1> %4705, <8 x i64> %3601, <8 x i64> zeroinitializer
  %4707 = load i64, ptr %144, align 8, !tbaa !20
  %4708 = icmp sgt i64 %4707, 0
  br i1 %4708, label %4709, label %4741

4709:                                             ; preds = %4699
  %4710 = load ptr, ptr %129, align 8, !tbaa !28
  %4711 = and i64 %4707, 1
  %4712 = icmp eq i64 %4707, 1
  br i1 %4712, label %4731, label %4713

4713:                                             ; preds = %4709
  %4714 = and i64 %4707, 9223372036854775806
  br label %4715

4715:                                             ; preds = %4715, %4713
  %4716 = phi i64 [ 0, %4713 ], [ %4728, %4715 ]
  %4717 = phi <8 x double> [ splat (double 1.000000e+09), %4713 ], [ %4727, %4715 ]
  %4718 = phi i64 [ 0, %4713 ], [ %4729, %4715 ]
  %4719 = getelementptr inbounds nuw %struct.Piece, ptr %4710, i64 %4716, i32 35
  %4720 = load <8 x double>, ptr %4719, align 64, !tbaa !26
  %4721 = fcmp olt <8 x double> %4717, %4720
  %4722 = select <8 x i1> %4721, <8 x double> %4717, <8 x double> %4720
  %4723 = or disjoint i64 %4716, 1
  %4724 = getelementptr inbounds nuw %struct.Piece, ptr %4710, i64 %4723, i32 35
  %4725 = load <8 x double>, ptr %4724, align 64, !tbaa !26
  %4726 = fcmp olt <8 x double> %4722, %4725
  %4727 = select <8 x i1> %4726, <8 x double> %4722, <8 x double> %4725
  %4728 = add nuw nsw i64 %4716, 2
  %4729 = add i64 %4718, 2
  %4730 = icmp eq i64 %4729, %4714
  br i1 %4730, label %4731, label %4715, !llvm.loop !117

4731:                                             ; preds = %4715, %4709
  %4732 = phi <8 x double> [ poison, %4709 ], [ %4727, %4715 ]
  %4733 = phi i64 [ 0, %4709 ], [ %4728, %4715 ]
  %4734 = phi <8 x double> [ splat (double 1.000000e+09), %4709 ], [ %4727, %4715 ]
  %4735 = icmp eq i64 %4711, 0
  br i1 %4735, label %4741, label %4736

4736:                                             ; preds = %4731
  %4737 = getelementptr inbounds nuw %struct.Piece, ptr %4710, i64 %4733, i32 35
  %4738 = load <8 x double>, ptr %4737, align 64, !tbaa !26
  %4739 = fcmp olt <8 x double> %4734, %4738
  %4740 = select <8 x i1> %4739, <8 x double> %4734, <8 x double> %4738
  br label %4741

4741:                                             ; preds = %4736, %4731, %4699
  %4742 = phi <8 x double> [ splat (double 1.000000e+09), %4699 ], [ %4732, %4731 ], [ %4740, %4736 ]
  %4743 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4742)
  %4744 = insertelement <8 x double> poison, double %4743, i64 0
  %4745 = shufflevector <8 x double> %4744, <8 x double> poison, <8 x i32> zeroinitializer
  %4746 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4747 = select <8 x i1> %3661, <8 x double> %4746, <8 x double> %4745
  store <8 x double> %4747, ptr %209, align 64, !tbaa !26
  %4748 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %4749 = fcmp une <8 x double> %4748, zeroinitializer
  %4750 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4751 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4752 = fsub <8 x double> %4750, %4751
  %4753 = fcmp une <8 x double> %4748, splat (double 1.000000e+00)
  %4754 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %4755 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %4756 = fsub <8 x double> %4754, %4755
  %4757 = select <8 x i1> %4753, <8 x double> splat (double -1.000000e+00), <8 x double> %4756
  %4758 = fcmp une <8 x double> %4748, splat (double 2.000000e+00)
  %4759 = fsub <8 x double> %4747, %4755
  %4760 = select <8 x i1> %4758, <8 x double> %4757, <8 x double> %4759
  %4761 = fcmp une <8 x double> %4748, splat (double 3.000000e+00)
  %4762 = fsub <8 x double> %4752, %4755
  %4763 = select <8 x i1> %4761, <8 x double> %4760, <8 x double> %4762
  %4764 = fcmp une <8 x double> %4748, splat (double 4.000000e+00)
  %4765 = fsub <8 x double> %4755, %4752
  %4766 = select <8 x i1> %4764, <8 x double> %4763, <8 x double> %4765
  %4767 = fcmp oge <8 x double> %4766, splat (double 0xBEB0C6F7A0B5ED8D)
  %4768 = select <8 x i1> %4767, <8 x i1> %4749, <8 x i1> zeroinitializer
  %4769 = select <8 x i1> %4768, <8 x i64> %3601, <8 x i64> zeroinitializer
  %4770 = xor <8 x i64> %4769, splat (i64 -1)
  %4771 = and <8 x i64> %4706, %4770
  %4772 = load <8 x double>, ptr %126, align 64, !tbaa !26
  %4773 = icmp ne <8 x i64> %4771, zeroinitializer
  %4774 = select <8 x i1> %4749, <8 x i1> %4773, <8 x i1> zeroinitializer
  %4775 = select <8 x i1> %4774, <8 x double> splat (double 2.000000e+00), <8 x double> %4772
  store <8 x double> %4775, ptr %126, align 64, !tbaa !26
  %4776 = or <8 x i64> %4769, %4706
  %4777 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %4778 = fadd <8 x double> %4777, splat (double 1.000000e+00)
  %4779 = icmp eq <8 x i64> %4776, zeroinitializer
  %4780 = select <8 x i1> %4779, <8 x double> %4777, <8 x double> %4778
  store <8 x double> %4780, ptr %214, align 64, !tbaa !26
  %4781 = xor <8 x i64> %4776, %3601
  %4782 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4783 = fcmp oeq <8 x double> %4782, zeroinitializer
  %4784 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4785 = fcmp oeq <8 x double> %4784, zeroinitializer
  %4786 = select <8 x i1> %4785, <8 x i1> %4783, <8 x i1> zeroinitializer
  %4787 = select <8 x i1> %4786, <8 x i64> %4781, <8 x i64> zeroinitializer
  %4788 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %4789 = fmul <8 x double> %4788, splat (double 5.000000e-01)
  %4790 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %4791 = fadd <8 x double> %4790, %4789
  %4792 = fadd <8 x double> %4791, splat (double -1.000000e-03)
  %4793 = fcmp ult <8 x double> %4754, %4792
  %4794 = fsub <8 x double> %4790, %4789
  %4795 = fadd <8 x double> %4794, splat (double 1.000000e-03)
  %4796 = fcmp ole <8 x double> %4754, %4795
  %4797 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %4798 = select <8 x i1> %4796, <8 x i64> splat (i64 -1), <8 x i64> %4797
  %4799 = select <8 x i1> %4793, <8 x i64> %4798, <8 x i64> zeroinitializer
  %4800 = xor <8 x i64> %4799, %4797
  %4801 = and <8 x i64> %4800, %4787
  %4802 = and <8 x i64> %4799, %4787
  %4803 = xor <8 x i64> %4787, splat (i64 -1)
  %4804 = and <8 x i64> %4797, %4803
  %4805 = or <8 x i64> %4802, %4804
  store <8 x i64> %4805, ptr %154, align 64, !tbaa !26
  %4806 = load <8 x i64>, ptr %147, align 64, !tbaa !26
  %4807 = or <8 x i64> %4801, %4806
  store <8 x i64> %4807, ptr %147, align 64, !tbaa !26
  %4808 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4776)
  %4809 = icmp eq i64 %4808, 0
  br i1 %4809, label %4844, label %4810

4810:                                             ; preds = %4741
  %4811 = extractelement <8 x i64> %4776, i64 0
  %4812 = icmp eq i64 %4811, 0
  br i1 %4812, label %4814, label %4813

4813:                                             ; preds = %4810
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %4814

4814:                                             ; preds = %4813, %4810
  %4815 = extractelement <8 x i64> %4776, i64 1
  %4816 = icmp eq i64 %4815, 0
  br i1 %4816, label %4818, label %4817

4817:                                             ; preds = %4814
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %4818

4818:                                             ; preds = %4817, %4814
  %4819 = extractelement <8 x i64> %4776, i64 2
  %4820 = icmp eq i64 %4819, 0
  br i1 %4820, label %4822, label %4821

4821:                                             ; preds = %4818
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %4822

4822:                                             ; preds = %4821, %4818
  %4823 = extractelement <8 x i64> %4776, i64 3
  %4824 = icmp eq i64 %4823, 0
  br i1 %4824, label %4826, label %4825

4825:                                             ; preds = %4822
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %4826

4826:                                             ; preds = %4825, %4822
  %4827 = extractelement <8 x i64> %4776, i64 4
  %4828 = icmp eq i64 %4827, 0
  br i1 %4828, label %4830, label %4829

4829:                                             ; preds = %4826
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %4830

4830:                                             ; preds = %4829, %4826
  %4831 = extractelement <8 x i64> %4776, i64 5
  %4832 = icmp eq i64 %4831, 0
  br i1 %4832, label %4834, label %4833

4833:                                             ; preds = %4830
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %4834

4834:                                             ; preds = %4833, %4830
  %4835 = extractelement <8 x i64> %4776, i64 6
  %4836 = icmp eq i64 %4835, 0
  br i1 %4836, label %4838, label %4837

4837:                                             ; preds = %4834
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %4838

4838:                                             ; preds = %4837, %4834
  %4839 = extractelement <8 x i64> %4776, i64 7
  %4840 = icmp eq i64 %4839, 0
  br i1 %4840, label %4842, label %4841

4841:                                             ; preds = %4838
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %4842

4842:                                             ; preds = %4841, %4838
  %4843 = load <8 x double>, ptr %126, align 64, !tbaa !26
  br label %4844

4844:                                             ; preds = %4842, %4741
  %4845 = phi <8 x double> [ %4843, %4842 ], [ %4775, %4741 ]
  %4846 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %4847 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %4848 = fadd <8 x double> %4847, splat (double -1.000000e+00)
  %4849 = fcmp oge <8 x double> %4846, %4848
  %4850 = select <8 x i1> %4849, <8 x i64> %3601, <8 x i64> zeroinitializer
  %4851 = icmp eq <8 x i64> %4850, zeroinitializer
  %4852 = select <8 x i1> %4851, <8 x double> %4845, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %4852, ptr %126, align 64, !tbaa !26
  %4853 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4850)
  %4854 = icmp eq i64 %4853, 0
  br i1 %4854, label %512, label %4855

4855:                                             ; preds = %4844
  %4856 = extractelement <8 x i64> %4850, i64 0
  %4857 = icmp eq i64 %4856, 0
  br i1 %4857, label %4859, label %4858

4858:                                             ; preds = %4855
  store double 1.000000e+00, ptr %118, align 8, !tbaa !40
  br label %4859

4859:                                             ; preds = %4858, %4855
  %4860 = extractelement <8 x i64> %4850, i64 1
  %4861 = icmp eq i64 %4860, 0
  br i1 %4861, label %4863, label %4862

4862:                                             ; preds = %4859
  store double 1.000000e+00, ptr %266, align 8, !tbaa !40
  br label %4863

4863:                                             ; preds = %4862, %4859
  %4864 = extractelement <8 x i64> %4850, i64 2
  %4865 = icmp eq i64 %4864, 0
  br i1 %4865, label %4867, label %4866

4866:                                             ; preds = %4863
  store double 1.000000e+00, ptr %267, align 8, !tbaa !40
  br label %4867

4867:                                             ; preds = %4866, %4863
  %4868 = extractelement <8 x i64> %4850, i64 3
  %4869 = icmp eq i64 %4868, 0
  br i1 %4869, label %4871, label %4870

4870:                                             ; preds = %4867
  store double 1.000000e+00, ptr %268, align 8, !tbaa !40
  br label %4871

4871:                                             ; preds = %4870, %4867
  %4872 = extractelement <8 x i64> %4850, i64 4
  %4873 = icmp eq i64 %4872, 0
  br i1 %4873, label %4875, label %4874

4874:                                             ; preds = %4871
  store double 1.000000e+00, ptr %269, align 8, !tbaa !40
  br label %4875

4875:                                             ; preds = %4874, %4871
  %4876 = extractelement <8 x i64> %4850, i64 5
  %4877 = icmp eq i64 %4876, 0
  br i1 %4877, label %4879, label %4878

4878:                                             ; preds = %4875
  store double 1.000000e+00, ptr %270, align 8, !tbaa !40
  br label %4879

4879:                                             ; preds = %4878, %4875
  %4880 = extractelement <8 x i64> %4850, i64 6
  %4881 = icmp eq i64 %4880, 0
  br i1 %4881, label %4883, label %4882

4882:                                             ; preds = %4879
  store double 1.000000e+00, ptr %271, align 8, !tbaa !40
  br label %4883

4883:                                             ; preds = %4882, %4879
  %4884 = extractelement <8 x i64> %4850, i64 7
  %4885 = icmp eq i64 %4884, 0
  br i1 %4885, label %512, label %4886

4886:                                             ; preds = %4883
  store double 1.000000e+00, ptr %272, align 8, !tbaa !40
  br label %512

4887:                                             ; preds = %512, %517, %109
  %4888 = phi i64 [ 0, %109 ], [ 1, %517 ], [ 0, %512 ]
  ret i64 %4888
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2344
  %6 = zext nneg i32 %2 to i64
  %7 = load i64, ptr %5, align 8, !tbaa !27
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %7) #6
  %8 = getelementptr inbounds nuw i64, ptr %4, i64 %6
  store i64 -1, ptr %8, align 8, !tbaa !30
  %9 = add nuw nsw i64 %6, 1
  %10 = load i64, ptr %5, align 8, !tbaa !27
  %11 = trunc nuw nsw i64 %9 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %11, i64 noundef %10) #6
  %12 = getelementptr inbounds nuw i64, ptr %4, i64 %9
  store i64 -1, ptr %12, align 8, !tbaa !30
  %13 = add nuw nsw i64 %6, 2
  %14 = load i64, ptr %5, align 8, !tbaa !27
  %15 = trunc nuw nsw i64 %13 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %15, i64 noundef %14) #6
  %16 = getelementptr inbounds nuw i64, ptr %4, i64 %13
  store i64 -1, ptr %16, align 8, !tbaa !30
  %17 = add nuw nsw i64 %6, 3
  %18 = load i64, ptr %5, align 8, !tbaa !27
  %19 = trunc nuw nsw i64 %17 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %19, i64 noundef %18) #6
  %20 = getelementptr inbounds nuw i64, ptr %4, i64 %17
  store i64 -1, ptr %20, align 8, !tbaa !30
  %21 = add nuw nsw i64 %6, 4
  %22 = load i64, ptr %5, align 8, !tbaa !27
  %23 = trunc nuw nsw i64 %21 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %23, i64 noundef %22) #6
  %24 = getelementptr inbounds nuw i64, ptr %4, i64 %21
  store i64 -1, ptr %24, align 8, !tbaa !30
  %25 = add nuw nsw i64 %6, 5
  %26 = load i64, ptr %5, align 8, !tbaa !27
  %27 = trunc nuw nsw i64 %25 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %27, i64 noundef %26) #6
  %28 = getelementptr inbounds nuw i64, ptr %4, i64 %25
  store i64 -1, ptr %28, align 8, !tbaa !30
  %29 = add nuw nsw i64 %6, 6
  %30 = load i64, ptr %5, align 8, !tbaa !27
  %31 = trunc nuw nsw i64 %29 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %31, i64 noundef %30) #6
  %32 = getelementptr inbounds nuw i64, ptr %4, i64 %29
  store i64 -1, ptr %32, align 8, !tbaa !30
  %33 = add nuw nsw i64 %6, 7
  %34 = load i64, ptr %5, align 8, !tbaa !27
  %35 = trunc nuw nsw i64 %33 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %35, i64 noundef %34) #6
  %36 = getelementptr inbounds nuw i64, ptr %4, i64 %33
  store i64 -1, ptr %36, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #6
  %37 = add nuw nsw i32 %2, 1
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %37) #6
  %38 = add nuw nsw i32 %2, 2
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %38) #6
  %39 = add nuw nsw i32 %2, 3
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %39) #6
  %40 = add nuw nsw i32 %2, 4
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %40) #6
  %41 = add nuw nsw i32 %2, 5
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %41) #6
  %42 = add nuw nsw i32 %2, 6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %42) #6
  %43 = add nuw nsw i32 %2, 7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %43) #6
  %44 = getelementptr inbounds nuw i8, ptr %0, i64 2344
  %45 = load i64, ptr %44, align 8, !tbaa !27
  %46 = add nsw i64 %45, 1
  store i64 %46, ptr %44, align 8, !tbaa !27
  %47 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %48 = getelementptr inbounds nuw i8, ptr %0, i64 5952
  %49 = load ptr, ptr %48, align 64, !tbaa !36
  %50 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %51 = load <8 x double>, ptr %50, align 64, !tbaa !26
  %52 = getelementptr inbounds nuw i8, ptr %49, i64 64
  store <8 x double> %51, ptr %49, align 64, !tbaa !26
  %53 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %54 = load <8 x double>, ptr %53, align 64, !tbaa !26
  %55 = getelementptr inbounds nuw i8, ptr %49, i64 128
  store <8 x double> %54, ptr %52, align 64, !tbaa !26
  %56 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %57 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %58 = load <8 x double>, ptr %57, align 64, !tbaa !26
  %59 = getelementptr inbounds nuw i8, ptr %49, i64 192
  store <8 x double> %58, ptr %55, align 64, !tbaa !26
  %60 = load <8 x double>, ptr %56, align 64, !tbaa !26
  %61 = getelementptr inbounds nuw i8, ptr %49, i64 256
  store <8 x double> %60, ptr %59, align 64, !tbaa !26
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %63 = load i64, ptr %62, align 8, !tbaa !20
  %64 = icmp sgt i64 %63, 0
  br i1 %64, label %65, label %67

65:                                               ; preds = %3
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  br label %72

67:                                               ; preds = %72, %3
  %68 = phi ptr [ %61, %3 ], [ %78, %72 ]
  %69 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %70 = load i64, ptr %69, align 8, !tbaa !132
  %71 = icmp eq i64 %70, 0
  br i1 %71, label %213, label %82

72:                                               ; preds = %65, %72
  %73 = phi ptr [ %61, %65 ], [ %78, %72 ]
  %74 = phi i64 [ 0, %65 ], [ %79, %72 ]
  %75 = load ptr, ptr %66, align 8, !tbaa !28
  %76 = getelementptr inbounds nuw %struct.Piece, ptr %75, i64 %74, i32 35
  %77 = load <8 x double>, ptr %76, align 64, !tbaa !26
  %78 = getelementptr inbounds nuw i8, ptr %73, i64 64
  store <8 x double> %77, ptr %73, align 64, !tbaa !26
  %79 = add nuw nsw i64 %74, 1
  %80 = load i64, ptr %62, align 8, !tbaa !20
  %81 = icmp slt i64 %79, %80
  br i1 %81, label %72, label %67, !llvm.loop !133

82:                                               ; preds = %67
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %84 = load <8 x double>, ptr %83, align 64, !tbaa !26
  %85 = getelementptr inbounds nuw i8, ptr %68, i64 64
  store <8 x double> %84, ptr %68, align 64, !tbaa !26
  %86 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %87 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %88 = getelementptr inbounds nuw i8, ptr %68, i64 128
  store <8 x double> %87, ptr %85, align 64, !tbaa !26
  %89 = load <8 x double>, ptr %57, align 64, !tbaa !26
  %90 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %91 = load <8 x double>, ptr %90, align 64, !tbaa !26
  %92 = fsub <8 x double> %89, %91
  %93 = fcmp ogt <8 x double> %92, zeroinitializer
  %94 = select <8 x i1> %93, <8 x double> %92, <8 x double> zeroinitializer
  store <8 x double> %94, ptr %88, align 64, !tbaa !26
  %95 = load i64, ptr %62, align 8, !tbaa !20
  %96 = icmp sgt i64 %95, 0
  br i1 %96, label %97, label %213

97:                                               ; preds = %82
  %98 = getelementptr inbounds nuw i8, ptr %68, i64 192
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 2328
  br label %102

102:                                              ; preds = %97, %102
  %103 = phi ptr [ %98, %97 ], [ %209, %102 ]
  %104 = phi i64 [ 0, %97 ], [ %210, %102 ]
  %105 = load ptr, ptr %99, align 8, !tbaa !28
  %106 = getelementptr inbounds nuw %struct.Piece, ptr %105, i64 %104
  %107 = getelementptr inbounds nuw i8, ptr %106, i64 7568
  %108 = load ptr, ptr %107, align 16, !tbaa !44
  %109 = load i64, ptr %100, align 16, !tbaa !21
  %110 = getelementptr <8 x double>, ptr %108, i64 %109
  %111 = getelementptr i8, ptr %110, i64 -64
  %112 = load <8 x double>, ptr %111, align 64, !tbaa !26
  %113 = getelementptr inbounds nuw i8, ptr %106, i64 6848
  %114 = load <8 x double>, ptr %113, align 64, !tbaa !26
  %115 = getelementptr inbounds nuw i8, ptr %106, i64 5568
  %116 = load <8 x double>, ptr %115, align 64, !tbaa !26
  %117 = fsub <8 x double> %116, %112
  %118 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %114, <8 x double> %117, <8 x double> %112)
  %119 = getelementptr inbounds nuw i8, ptr %103, i64 64
  store <8 x double> %118, ptr %103, align 64, !tbaa !26
  %120 = getelementptr inbounds nuw i8, ptr %106, i64 6400
  %121 = load <8 x double>, ptr %120, align 64, !tbaa !26
  %122 = getelementptr inbounds nuw i8, ptr %103, i64 128
  store <8 x double> %121, ptr %119, align 64, !tbaa !26
  %123 = load <8 x double>, ptr %106, align 64, !tbaa !26
  %124 = getelementptr inbounds nuw i8, ptr %106, i64 3712
  %125 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %126 = fsub <8 x double> %123, %125
  %127 = getelementptr inbounds nuw i8, ptr %103, i64 192
  store <8 x double> %126, ptr %122, align 64, !tbaa !26
  %128 = getelementptr inbounds nuw i8, ptr %106, i64 4032
  %129 = load <8 x double>, ptr %128, align 64, !tbaa !26
  %130 = getelementptr inbounds nuw i8, ptr %103, i64 256
  store <8 x double> %129, ptr %127, align 64, !tbaa !26
  %131 = getelementptr inbounds nuw i8, ptr %106, i64 3968
  %132 = load <8 x double>, ptr %131, align 64, !tbaa !26
  %133 = getelementptr inbounds nuw i8, ptr %103, i64 320
  store <8 x double> %132, ptr %130, align 64, !tbaa !26
  %134 = getelementptr inbounds nuw i8, ptr %106, i64 3840
  %135 = load <8 x double>, ptr %134, align 64, !tbaa !26
  %136 = getelementptr inbounds nuw i8, ptr %103, i64 384
  store <8 x double> %135, ptr %133, align 64, !tbaa !26
  %137 = getelementptr inbounds nuw i8, ptr %106, i64 4096
  %138 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %139 = getelementptr inbounds nuw i8, ptr %103, i64 448
  store <8 x double> %138, ptr %136, align 64, !tbaa !26
  %140 = getelementptr inbounds nuw i8, ptr %106, i64 7688
  %141 = load i64, ptr %101, align 8, !tbaa !22
  %142 = sitofp i64 %141 to double
  %143 = tail call double @llvm.fmuladd.f64(double %142, double 7.500000e-01, double -5.000000e-01)
  %144 = fcmp ogt double %143, 0.000000e+00
  %145 = select i1 %144, double %143, double 0.000000e+00
  %146 = fptosi double %145 to i64
  %147 = add nsw i64 %141, -2
  %148 = tail call i64 @llvm.smin.i64(i64 %147, i64 %146)
  %149 = sitofp i64 %148 to double
  %150 = fsub double %143, %149
  %151 = fsub double 1.000000e+00, %150
  %152 = insertelement <8 x double> poison, double %151, i64 0
  %153 = shufflevector <8 x double> %152, <8 x double> poison, <8 x i32> zeroinitializer
  %154 = load ptr, ptr %140, align 8, !tbaa !48
  %155 = getelementptr inbounds <8 x double>, ptr %154, i64 %148
  %156 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %157 = insertelement <8 x double> poison, double %150, i64 0
  %158 = shufflevector <8 x double> %157, <8 x double> poison, <8 x i32> zeroinitializer
  %159 = getelementptr i8, ptr %155, i64 64
  %160 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %161 = fmul <8 x double> %160, %158
  %162 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %153, <8 x double> %156, <8 x double> %161)
  store <8 x double> %162, ptr %139, align 64, !tbaa !26
  %163 = load i64, ptr %101, align 8, !tbaa !22
  %164 = sitofp i64 %163 to double
  %165 = tail call double @llvm.fmuladd.f64(double %164, double 5.000000e-01, double -5.000000e-01)
  %166 = fcmp ogt double %165, 0.000000e+00
  %167 = select i1 %166, double %165, double 0.000000e+00
  %168 = fptosi double %167 to i64
  %169 = add nsw i64 %163, -2
  %170 = tail call i64 @llvm.smin.i64(i64 %169, i64 %168)
  %171 = sitofp i64 %170 to double
  %172 = fsub double %165, %171
  %173 = fsub double 1.000000e+00, %172
  %174 = insertelement <8 x double> poison, double %173, i64 0
  %175 = shufflevector <8 x double> %174, <8 x double> poison, <8 x i32> zeroinitializer
  %176 = load ptr, ptr %140, align 8, !tbaa !48
  %177 = getelementptr inbounds <8 x double>, ptr %176, i64 %170
  %178 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %179 = insertelement <8 x double> poison, double %172, i64 0
  %180 = shufflevector <8 x double> %179, <8 x double> poison, <8 x i32> zeroinitializer
  %181 = getelementptr i8, ptr %177, i64 64
  %182 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %183 = fmul <8 x double> %182, %180
  %184 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %175, <8 x double> %178, <8 x double> %183)
  %185 = getelementptr inbounds nuw i8, ptr %103, i64 512
  store <8 x double> %184, ptr %185, align 64, !tbaa !26
  %186 = load i64, ptr %101, align 8, !tbaa !22
  %187 = sitofp i64 %186 to double
  %188 = tail call double @llvm.fmuladd.f64(double %187, double 2.500000e-01, double -5.000000e-01)
  %189 = fcmp ogt double %188, 0.000000e+00
  %190 = select i1 %189, double %188, double 0.000000e+00
  %191 = fptosi double %190 to i64
  %192 = add nsw i64 %186, -2
  %193 = tail call i64 @llvm.smin.i64(i64 %192, i64 %191)
  %194 = sitofp i64 %193 to double
  %195 = fsub double %188, %194
  %196 = fsub double 1.000000e+00, %195
  %197 = insertelement <8 x double> poison, double %196, i64 0
  %198 = shufflevector <8 x double> %197, <8 x double> poison, <8 x i32> zeroinitializer
  %199 = load ptr, ptr %140, align 8, !tbaa !48
  %200 = getelementptr inbounds <8 x double>, ptr %199, i64 %193
  %201 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %202 = insertelement <8 x double> poison, double %195, i64 0
  %203 = shufflevector <8 x double> %202, <8 x double> poison, <8 x i32> zeroinitializer
  %204 = getelementptr i8, ptr %200, i64 64
  %205 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %206 = fmul <8 x double> %205, %203
  %207 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %198, <8 x double> %201, <8 x double> %206)
  %208 = getelementptr inbounds nuw i8, ptr %103, i64 576
  store <8 x double> %207, ptr %208, align 64, !tbaa !26
  %209 = getelementptr inbounds nuw i8, ptr %103, i64 640
  %210 = add nuw nsw i64 %104, 1
  %211 = load i64, ptr %62, align 8, !tbaa !20
  %212 = icmp slt i64 %210, %211
  br i1 %212, label %102, label %213, !llvm.loop !134

213:                                              ; preds = %102, %82, %67
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %215 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %217 = load ptr, ptr %216, align 8
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %222 = load ptr, ptr %48, align 64
  %223 = icmp ult ptr %222, %61
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %225 = getelementptr inbounds nuw i8, ptr %68, i64 192
  %226 = extractelement <8 x i64> %47, i64 0
  %227 = icmp eq i64 %226, 0
  br i1 %227, label %365, label %228

228:                                              ; preds = %213
  %229 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %230 = load i64, ptr %229, align 64, !tbaa !30
  %231 = load i64, ptr %214, align 8, !tbaa !135
  %232 = icmp eq i64 %230, %231
  br i1 %232, label %235, label %233

233:                                              ; preds = %228
  %234 = load ptr, ptr %221, align 64, !tbaa !136
  br label %247

235:                                              ; preds = %228
  %236 = load i64, ptr %215, align 64, !tbaa !30
  %237 = load i64, ptr %218, align 8, !tbaa !39
  %238 = getelementptr inbounds i64, ptr %217, i64 %237
  store i64 %236, ptr %238, align 8, !tbaa !30
  %239 = load ptr, ptr %219, align 8, !tbaa !138
  %240 = load i64, ptr %218, align 8, !tbaa !39
  %241 = add nsw i64 %240, 1
  store i64 %241, ptr %218, align 8, !tbaa !39
  %242 = load i64, ptr %214, align 8, !tbaa !135
  %243 = mul nsw i64 %242, %240
  %244 = load i64, ptr %220, align 8, !tbaa !14
  %245 = mul nsw i64 %243, %244
  %246 = getelementptr inbounds double, ptr %239, i64 %245
  store ptr %246, ptr %221, align 64, !tbaa !136
  br label %247

247:                                              ; preds = %233, %235
  %248 = phi i64 [ %230, %233 ], [ 0, %235 ]
  %249 = phi ptr [ %234, %233 ], [ %246, %235 ]
  %250 = add nsw i64 %248, 1
  store i64 %250, ptr %229, align 64, !tbaa !30
  %251 = load i64, ptr %220, align 8, !tbaa !14
  %252 = mul nsw i64 %251, %248
  %253 = getelementptr inbounds double, ptr %249, i64 %252
  br i1 %223, label %312, label %254

254:                                              ; preds = %312, %247
  %255 = phi ptr [ %253, %247 ], [ %316, %312 ]
  %256 = load i64, ptr %224, align 64, !tbaa !16
  %257 = icmp sgt i64 %256, 0
  br i1 %257, label %258, label %300

258:                                              ; preds = %254
  %259 = and i64 %256, 3
  %260 = icmp ult i64 %256, 4
  br i1 %260, label %285, label %261

261:                                              ; preds = %258
  %262 = and i64 %256, 9223372036854775804
  br label %263

263:                                              ; preds = %263, %261
  %264 = phi i64 [ 0, %261 ], [ %282, %263 ]
  %265 = phi ptr [ %255, %261 ], [ %279, %263 ]
  %266 = phi i64 [ 0, %261 ], [ %283, %263 ]
  %267 = getelementptr i8, ptr %265, i64 8
  %268 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %269 = extractelement <8 x double> %268, i64 %264
  store double %269, ptr %265, align 8, !tbaa !40
  %270 = or disjoint i64 %264, 1
  %271 = getelementptr i8, ptr %265, i64 16
  %272 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %273 = extractelement <8 x double> %272, i64 %270
  store double %273, ptr %267, align 8, !tbaa !40
  %274 = or disjoint i64 %264, 2
  %275 = getelementptr i8, ptr %265, i64 24
  %276 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %277 = extractelement <8 x double> %276, i64 %274
  store double %277, ptr %271, align 8, !tbaa !40
  %278 = or disjoint i64 %264, 3
  %279 = getelementptr i8, ptr %265, i64 32
  %280 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %281 = extractelement <8 x double> %280, i64 %278
  store double %281, ptr %275, align 8, !tbaa !40
  %282 = add nuw nsw i64 %264, 4
  %283 = add i64 %266, 4
  %284 = icmp eq i64 %283, %262
  br i1 %284, label %285, label %263, !llvm.loop !139

285:                                              ; preds = %263, %258
  %286 = phi ptr [ poison, %258 ], [ %279, %263 ]
  %287 = phi i64 [ 0, %258 ], [ %282, %263 ]
  %288 = phi ptr [ %255, %258 ], [ %279, %263 ]
  %289 = icmp eq i64 %259, 0
  br i1 %289, label %300, label %290

290:                                              ; preds = %285, %290
  %291 = phi i64 [ %297, %290 ], [ %287, %285 ]
  %292 = phi ptr [ %294, %290 ], [ %288, %285 ]
  %293 = phi i64 [ %298, %290 ], [ 0, %285 ]
  %294 = getelementptr i8, ptr %292, i64 8
  %295 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %296 = extractelement <8 x double> %295, i64 %291
  store double %296, ptr %292, align 8, !tbaa !40
  %297 = add nuw nsw i64 %291, 1
  %298 = add i64 %293, 1
  %299 = icmp eq i64 %298, %259
  br i1 %299, label %300, label %290, !llvm.loop !143

300:                                              ; preds = %285, %290, %254
  %301 = phi ptr [ %255, %254 ], [ %286, %285 ], [ %294, %290 ]
  %302 = load i64, ptr %69, align 8, !tbaa !132
  %303 = icmp eq i64 %302, 0
  br i1 %303, label %365, label %304

304:                                              ; preds = %300
  %305 = load double, ptr %68, align 8, !tbaa !40
  %306 = getelementptr inbounds nuw i8, ptr %301, i64 8
  store double %305, ptr %301, align 8, !tbaa !40
  %307 = getelementptr inbounds nuw i8, ptr %68, i64 64
  %308 = load double, ptr %307, align 8, !tbaa !40
  %309 = getelementptr inbounds nuw i8, ptr %301, i64 16
  store double %308, ptr %306, align 8, !tbaa !40
  %310 = getelementptr inbounds nuw i8, ptr %68, i64 128
  %311 = load double, ptr %310, align 8, !tbaa !40
  store double %311, ptr %309, align 8, !tbaa !40
  br i1 %257, label %319, label %365

312:                                              ; preds = %247, %312
  %313 = phi ptr [ %317, %312 ], [ %222, %247 ]
  %314 = phi ptr [ %316, %312 ], [ %253, %247 ]
  %315 = load double, ptr %313, align 8, !tbaa !40
  %316 = getelementptr inbounds nuw i8, ptr %314, i64 8
  store double %315, ptr %314, align 8, !tbaa !40
  %317 = getelementptr inbounds nuw i8, ptr %313, i64 64
  %318 = icmp ult ptr %317, %61
  br i1 %318, label %312, label %254, !llvm.loop !142

319:                                              ; preds = %304
  %320 = getelementptr inbounds nuw i8, ptr %301, i64 24
  %321 = getelementptr inbounds nuw i8, ptr %68, i64 256
  %322 = getelementptr inbounds nuw i8, ptr %68, i64 320
  %323 = getelementptr inbounds nuw i8, ptr %68, i64 384
  %324 = getelementptr inbounds nuw i8, ptr %68, i64 448
  %325 = getelementptr inbounds nuw i8, ptr %68, i64 512
  %326 = getelementptr inbounds nuw i8, ptr %68, i64 576
  %327 = getelementptr inbounds nuw i8, ptr %68, i64 640
  %328 = getelementptr inbounds nuw i8, ptr %68, i64 704
  %329 = getelementptr inbounds nuw i8, ptr %68, i64 768
  br label %330

330:                                              ; preds = %319, %330
  %331 = phi i64 [ %363, %330 ], [ 0, %319 ]
  %332 = phi ptr [ %362, %330 ], [ %320, %319 ]
  %333 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %334 = extractelement <8 x double> %333, i64 %331
  %335 = getelementptr inbounds nuw i8, ptr %332, i64 8
  store double %334, ptr %332, align 8, !tbaa !40
  %336 = load <8 x double>, ptr %321, align 64, !tbaa !26
  %337 = extractelement <8 x double> %336, i64 %331
  %338 = getelementptr inbounds nuw i8, ptr %332, i64 16
  store double %337, ptr %335, align 8, !tbaa !40
  %339 = load <8 x double>, ptr %322, align 64, !tbaa !26
  %340 = extractelement <8 x double> %339, i64 %331
  %341 = getelementptr inbounds nuw i8, ptr %332, i64 24
  store double %340, ptr %338, align 8, !tbaa !40
  %342 = load <8 x double>, ptr %323, align 64, !tbaa !26
  %343 = extractelement <8 x double> %342, i64 %331
  %344 = getelementptr inbounds nuw i8, ptr %332, i64 32
  store double %343, ptr %341, align 8, !tbaa !40
  %345 = load <8 x double>, ptr %324, align 64, !tbaa !26
  %346 = extractelement <8 x double> %345, i64 %331
  %347 = getelementptr inbounds nuw i8, ptr %332, i64 40
  store double %346, ptr %344, align 8, !tbaa !40
  %348 = load <8 x double>, ptr %325, align 64, !tbaa !26
  %349 = extractelement <8 x double> %348, i64 %331
  %350 = getelementptr inbounds nuw i8, ptr %332, i64 48
  store double %349, ptr %347, align 8, !tbaa !40
  %351 = load <8 x double>, ptr %326, align 64, !tbaa !26
  %352 = extractelement <8 x double> %351, i64 %331
  %353 = getelementptr inbounds nuw i8, ptr %332, i64 56
  store double %352, ptr %350, align 8, !tbaa !40
  %354 = load <8 x double>, ptr %327, align 64, !tbaa !26
  %355 = extractelement <8 x double> %354, i64 %331
  %356 = getelementptr inbounds nuw i8, ptr %332, i64 64
  store double %355, ptr %353, align 8, !tbaa !40
  %357 = load <8 x double>, ptr %328, align 64, !tbaa !26
  %358 = extractelement <8 x double> %357, i64 %331
  %359 = getelementptr inbounds nuw i8, ptr %332, i64 72
  store double %358, ptr %356, align 8, !tbaa !40
  %360 = load <8 x double>, ptr %329, align 64, !tbaa !26
  %361 = extractelement <8 x double> %360, i64 %331
  %362 = getelementptr inbounds nuw i8, ptr %332, i64 80
  store double %361, ptr %359, align 8, !tbaa !40
  %363 = add nuw nsw i64 %331, 1
  %364 = icmp eq i64 %363, %256
  br i1 %364, label %365, label %330, !llvm.loop !139

365:                                              ; preds = %330, %304, %300, %213
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #7
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 15) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !135
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %11 = getelementptr inbounds [8 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !30
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %13 = shl nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = sext i32 %14 to i64
  %16 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !30
  %17 = sext i32 %13 to i64
  %18 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !30
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %20 = getelementptr inbounds [8 x double], ptr %19, i64 0, i64 %6
  store double 0.000000e+00, ptr %20, align 8, !tbaa !40
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !144
  %23 = mul i64 %3, 288
  %24 = getelementptr i8, ptr %22, i64 %23
  %25 = getelementptr double, ptr %0, i64 %6
  br label %42

26:                                               ; preds = %42
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %28 = load i64, ptr %27, align 8, !tbaa !20
  %29 = icmp sgt i64 %28, 0
  br i1 %29, label %30, label %61

30:                                               ; preds = %26
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  %32 = load ptr, ptr %31, align 8, !tbaa !28
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2328
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
  %45 = load double, ptr %44, align 8, !tbaa !40
  %46 = getelementptr <8 x double>, ptr %25, i64 %43
  store double %45, ptr %46, align 8, !tbaa !40
  %47 = or disjoint i64 %43, 1
  %48 = getelementptr double, ptr %24, i64 %47
  %49 = load double, ptr %48, align 8, !tbaa !40
  %50 = getelementptr <8 x double>, ptr %25, i64 %47
  store double %49, ptr %50, align 8, !tbaa !40
  %51 = or disjoint i64 %43, 2
  %52 = getelementptr double, ptr %24, i64 %51
  %53 = load double, ptr %52, align 8, !tbaa !40
  %54 = getelementptr <8 x double>, ptr %25, i64 %51
  store double %53, ptr %54, align 8, !tbaa !40
  %55 = or disjoint i64 %43, 3
  %56 = getelementptr double, ptr %24, i64 %55
  %57 = load double, ptr %56, align 8, !tbaa !40
  %58 = getelementptr <8 x double>, ptr %25, i64 %55
  store double %57, ptr %58, align 8, !tbaa !40
  %59 = add nuw nsw i64 %43, 4
  %60 = icmp eq i64 %59, 36
  br i1 %60, label %26, label %42, !llvm.loop !148

61:                                               ; preds = %539, %26
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 2432
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 3200
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %66 = getelementptr inbounds double, ptr %65, i64 %6
  %67 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %68 = getelementptr inbounds double, ptr %67, i64 %6
  %69 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %70 = getelementptr inbounds double, ptr %69, i64 %6
  %71 = getelementptr double, ptr %62, i64 %6
  %72 = getelementptr i8, ptr %71, i64 256
  store double 0.000000e+00, ptr %72, align 8, !tbaa !40
  %73 = getelementptr i8, ptr %71, i64 320
  store double 0.000000e+00, ptr %73, align 8, !tbaa !40
  %74 = load double, ptr %66, align 8, !tbaa !40
  store double %74, ptr %71, align 8, !tbaa !40
  %75 = load double, ptr %68, align 8, !tbaa !40
  %76 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %77 = getelementptr inbounds double, ptr %76, i64 %6
  store double %75, ptr %77, align 8, !tbaa !40
  %78 = load double, ptr %70, align 8, !tbaa !40
  %79 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %80 = getelementptr inbounds double, ptr %79, i64 %6
  store double %78, ptr %80, align 8, !tbaa !40
  %81 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %82 = getelementptr inbounds double, ptr %81, i64 %6
  store double %78, ptr %82, align 8, !tbaa !40
  %83 = getelementptr double, ptr %63, i64 %6
  %84 = getelementptr i8, ptr %83, i64 256
  store double 0.000000e+00, ptr %84, align 8, !tbaa !40
  %85 = getelementptr i8, ptr %83, i64 320
  store double 0.000000e+00, ptr %85, align 8, !tbaa !40
  store double %74, ptr %83, align 8, !tbaa !40
  %86 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %87 = getelementptr inbounds double, ptr %86, i64 %6
  store double %75, ptr %87, align 8, !tbaa !40
  %88 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %89 = getelementptr inbounds double, ptr %88, i64 %6
  store double %78, ptr %89, align 8, !tbaa !40
  %90 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %91 = getelementptr inbounds double, ptr %90, i64 %6
  store double %78, ptr %91, align 8, !tbaa !40
  %92 = getelementptr double, ptr %64, i64 %6
  %93 = getelementptr i8, ptr %92, i64 256
  store double 0.000000e+00, ptr %93, align 8, !tbaa !40
  %94 = getelementptr i8, ptr %92, i64 320
  store double 0.000000e+00, ptr %94, align 8, !tbaa !40
  store double %74, ptr %92, align 8, !tbaa !40
  %95 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %96 = getelementptr inbounds double, ptr %95, i64 %6
  store double %75, ptr %96, align 8, !tbaa !40
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %98 = getelementptr inbounds double, ptr %97, i64 %6
  store double %78, ptr %98, align 8, !tbaa !40
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %100 = getelementptr inbounds double, ptr %99, i64 %6
  store double %78, ptr %100, align 8, !tbaa !40
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %102 = getelementptr inbounds double, ptr %101, i64 %6
  %103 = load double, ptr %102, align 8, !tbaa !40
  %104 = getelementptr inbounds nuw i8, ptr %0, i64 3904
  %105 = getelementptr inbounds double, ptr %104, i64 %6
  store double %103, ptr %105, align 8, !tbaa !40
  %106 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %107 = getelementptr inbounds double, ptr %106, i64 %6
  store double %103, ptr %107, align 8, !tbaa !40
  %108 = getelementptr inbounds nuw i8, ptr %0, i64 4544
  %109 = getelementptr inbounds double, ptr %108, i64 %6
  store double 1.000000e+09, ptr %109, align 8, !tbaa !40
  %110 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %111 = getelementptr inbounds double, ptr %110, i64 %6
  store double 0.000000e+00, ptr %111, align 8, !tbaa !40
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %113 = getelementptr inbounds double, ptr %112, i64 %6
  %114 = load double, ptr %113, align 8, !tbaa !40
  %115 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %116 = getelementptr inbounds double, ptr %115, i64 %6
  store double %114, ptr %116, align 8, !tbaa !40
  %117 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %118 = getelementptr inbounds double, ptr %117, i64 %6
  store double %114, ptr %118, align 8, !tbaa !40
  %119 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %120 = getelementptr inbounds double, ptr %119, i64 %6
  %121 = load double, ptr %120, align 8, !tbaa !40
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %123 = getelementptr inbounds double, ptr %122, i64 %6
  store double %121, ptr %123, align 8, !tbaa !40
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 4416
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 4480
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 4864
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 4928
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 5120
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 5184
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 5248
  %135 = getelementptr inbounds double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %135, align 8, !tbaa !40
  %136 = getelementptr inbounds double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %136, align 8, !tbaa !40
  %137 = getelementptr inbounds double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !40
  %138 = getelementptr inbounds double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !40
  %139 = getelementptr inbounds double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !40
  %140 = getelementptr inbounds double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !40
  %141 = getelementptr inbounds double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !40
  %142 = getelementptr inbounds double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !40
  %143 = getelementptr inbounds double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !40
  %144 = getelementptr inbounds double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !40
  %145 = getelementptr inbounds double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !40
  %146 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %147 = getelementptr inbounds i64, ptr %146, i64 %6
  store i64 0, ptr %147, align 8, !tbaa !30
  %148 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %149 = getelementptr inbounds i64, ptr %148, i64 %6
  store i64 -1, ptr %149, align 8, !tbaa !30
  %150 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %151 = getelementptr inbounds i64, ptr %150, i64 %6
  store i64 -1, ptr %151, align 8, !tbaa !30
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %153 = getelementptr inbounds i64, ptr %152, i64 %6
  store i64 -1, ptr %153, align 8, !tbaa !30
  ret void

154:                                              ; preds = %30, %539
  %155 = phi i64 [ 0, %30 ], [ %540, %539 ]
  %156 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %155
  %157 = load i64, ptr %33, align 64, !tbaa !16
  %158 = icmp sgt i64 %157, %6
  %159 = load i64, ptr %34, align 16, !tbaa !21
  %160 = load i64, ptr %35, align 8, !tbaa !22
  %161 = mul nsw i64 %157, %3
  %162 = select i1 %158, i64 %6, i64 0
  %163 = add nsw i64 %162, %161
  %164 = getelementptr inbounds nuw i8, ptr %156, i64 7552
  %165 = load i64, ptr %164, align 64, !tbaa !31
  %166 = mul i64 %163, 368
  %167 = getelementptr i8, ptr %37, i64 %166
  %168 = getelementptr double, ptr %156, i64 %6
  br label %171

169:                                              ; preds = %171
  %170 = icmp eq i64 %165, 0
  br i1 %158, label %185, label %182

171:                                              ; preds = %171, %154
  %172 = phi i64 [ 0, %154 ], [ %180, %171 ]
  %173 = getelementptr double, ptr %167, i64 %172
  %174 = load double, ptr %173, align 8, !tbaa !40
  %175 = getelementptr <8 x double>, ptr %168, i64 %172
  store double %174, ptr %175, align 8, !tbaa !40
  %176 = or disjoint i64 %172, 1
  %177 = getelementptr double, ptr %167, i64 %176
  %178 = load double, ptr %177, align 8, !tbaa !40
  %179 = getelementptr <8 x double>, ptr %168, i64 %176
  store double %178, ptr %179, align 8, !tbaa !40
  %180 = add nuw nsw i64 %172, 2
  %181 = icmp eq i64 %180, 46
  br i1 %181, label %169, label %171, !llvm.loop !149

182:                                              ; preds = %169
  %183 = getelementptr inbounds nuw i8, ptr %156, i64 128
  %184 = getelementptr inbounds double, ptr %183, i64 %6
  store double 0.000000e+00, ptr %184, align 8, !tbaa !40
  br label %185

185:                                              ; preds = %182, %169
  %186 = getelementptr inbounds i64, ptr %41, i64 %163
  %187 = load i64, ptr %186, align 8, !tbaa !30
  %188 = mul nsw i64 %159, 3
  %189 = add nsw i64 %159, 1
  %190 = select i1 %170, i64 0, i64 2
  %191 = shl i64 %189, %190
  %192 = add nsw i64 %191, %188
  %193 = mul nsw i64 %187, %192
  %194 = getelementptr inbounds double, ptr %39, i64 %193
  %195 = icmp sgt i64 %159, 0
  br i1 %195, label %196, label %226

196:                                              ; preds = %185
  %197 = getelementptr inbounds nuw i8, ptr %156, i64 7648
  %198 = load ptr, ptr %197, align 32, !tbaa !70
  %199 = getelementptr double, ptr %198, i64 %6
  %200 = getelementptr double, ptr %194, i64 %159
  %201 = getelementptr inbounds nuw i8, ptr %156, i64 7656
  %202 = load ptr, ptr %201, align 8, !tbaa !46
  %203 = getelementptr double, ptr %202, i64 %6
  %204 = shl i64 %159, 4
  %205 = getelementptr i8, ptr %194, i64 %204
  %206 = getelementptr inbounds nuw i8, ptr %156, i64 7664
  %207 = load ptr, ptr %206, align 16, !tbaa !119
  %208 = getelementptr double, ptr %207, i64 %6
  %209 = and i64 %159, 1
  %210 = icmp eq i64 %159, 1
  br i1 %210, label %213, label %211

211:                                              ; preds = %196
  %212 = and i64 %159, 9223372036854775806
  br label %241

213:                                              ; preds = %241, %196
  %214 = phi i64 [ 0, %196 ], [ %263, %241 ]
  %215 = icmp eq i64 %209, 0
  br i1 %215, label %226, label %216

216:                                              ; preds = %213
  %217 = getelementptr inbounds nuw double, ptr %194, i64 %214
  %218 = load double, ptr %217, align 8, !tbaa !40
  %219 = getelementptr <8 x double>, ptr %199, i64 %214
  store double %218, ptr %219, align 8, !tbaa !40
  %220 = getelementptr double, ptr %200, i64 %214
  %221 = load double, ptr %220, align 8, !tbaa !40
  %222 = getelementptr <8 x double>, ptr %203, i64 %214
  store double %221, ptr %222, align 8, !tbaa !40
  %223 = getelementptr double, ptr %205, i64 %214
  %224 = load double, ptr %223, align 8, !tbaa !40
  %225 = getelementptr <8 x double>, ptr %208, i64 %214
  store double %224, ptr %225, align 8, !tbaa !40
  br label %226

226:                                              ; preds = %216, %213, %185
  %227 = getelementptr inbounds nuw i8, ptr %156, i64 960
  %228 = getelementptr inbounds double, ptr %227, i64 %6
  %229 = load double, ptr %228, align 8, !tbaa !40
  %230 = load double, ptr %168, align 8, !tbaa !40
  %231 = icmp sgt i64 %191, 0
  br i1 %231, label %232, label %278

232:                                              ; preds = %226
  %233 = getelementptr double, ptr %194, i64 %188
  %234 = getelementptr inbounds nuw i8, ptr %156, i64 7672
  %235 = load ptr, ptr %234, align 8, !tbaa !35
  %236 = getelementptr double, ptr %235, i64 %6
  %237 = and i64 %191, 3
  %238 = icmp ult i64 %191, 4
  br i1 %238, label %266, label %239

239:                                              ; preds = %232
  %240 = and i64 %191, 9223372036854775804
  br label %287

241:                                              ; preds = %241, %211
  %242 = phi i64 [ 0, %211 ], [ %263, %241 ]
  %243 = phi i64 [ 0, %211 ], [ %264, %241 ]
  %244 = getelementptr inbounds nuw double, ptr %194, i64 %242
  %245 = load double, ptr %244, align 8, !tbaa !40
  %246 = getelementptr <8 x double>, ptr %199, i64 %242
  store double %245, ptr %246, align 8, !tbaa !40
  %247 = getelementptr double, ptr %200, i64 %242
  %248 = load double, ptr %247, align 8, !tbaa !40
  %249 = getelementptr <8 x double>, ptr %203, i64 %242
  store double %248, ptr %249, align 8, !tbaa !40
  %250 = getelementptr double, ptr %205, i64 %242
  %251 = load double, ptr %250, align 8, !tbaa !40
  %252 = getelementptr <8 x double>, ptr %208, i64 %242
  store double %251, ptr %252, align 8, !tbaa !40
  %253 = or disjoint i64 %242, 1
  %254 = getelementptr inbounds nuw double, ptr %194, i64 %253
  %255 = load double, ptr %254, align 8, !tbaa !40
  %256 = getelementptr <8 x double>, ptr %199, i64 %253
  store double %255, ptr %256, align 8, !tbaa !40
  %257 = getelementptr double, ptr %200, i64 %253
  %258 = load double, ptr %257, align 8, !tbaa !40
  %259 = getelementptr <8 x double>, ptr %203, i64 %253
  store double %258, ptr %259, align 8, !tbaa !40
  %260 = getelementptr double, ptr %205, i64 %253
  %261 = load double, ptr %260, align 8, !tbaa !40
  %262 = getelementptr <8 x double>, ptr %208, i64 %253
  store double %261, ptr %262, align 8, !tbaa !40
  %263 = add nuw nsw i64 %242, 2
  %264 = add i64 %243, 2
  %265 = icmp eq i64 %264, %212
  br i1 %265, label %213, label %241, !llvm.loop !150

266:                                              ; preds = %287, %232
  %267 = phi i64 [ 0, %232 ], [ %305, %287 ]
  %268 = icmp eq i64 %237, 0
  br i1 %268, label %278, label %269

269:                                              ; preds = %266, %269
  %270 = phi i64 [ %275, %269 ], [ %267, %266 ]
  %271 = phi i64 [ %276, %269 ], [ 0, %266 ]
  %272 = getelementptr double, ptr %233, i64 %270
  %273 = load double, ptr %272, align 8, !tbaa !40
  %274 = getelementptr <8 x double>, ptr %236, i64 %270
  store double %273, ptr %274, align 8, !tbaa !40
  %275 = add nuw nsw i64 %270, 1
  %276 = add i64 %271, 1
  %277 = icmp eq i64 %276, %237
  br i1 %277, label %278, label %269, !llvm.loop !151

278:                                              ; preds = %266, %269, %226
  %279 = icmp ne i64 %165, 0
  %280 = icmp sgt i64 %159, -1
  %281 = select i1 %279, i1 %280, i1 false
  br i1 %281, label %282, label %308

282:                                              ; preds = %278
  %283 = fdiv double 1.000000e+00, %230
  %284 = getelementptr inbounds nuw i8, ptr %156, i64 7672
  %285 = load ptr, ptr %284, align 8, !tbaa !35
  %286 = getelementptr double, ptr %285, i64 %6
  br label %427

287:                                              ; preds = %287, %239
  %288 = phi i64 [ 0, %239 ], [ %305, %287 ]
  %289 = phi i64 [ 0, %239 ], [ %306, %287 ]
  %290 = getelementptr double, ptr %233, i64 %288
  %291 = load double, ptr %290, align 8, !tbaa !40
  %292 = getelementptr <8 x double>, ptr %236, i64 %288
  store double %291, ptr %292, align 8, !tbaa !40
  %293 = or disjoint i64 %288, 1
  %294 = getelementptr double, ptr %233, i64 %293
  %295 = load double, ptr %294, align 8, !tbaa !40
  %296 = getelementptr <8 x double>, ptr %236, i64 %293
  store double %295, ptr %296, align 8, !tbaa !40
  %297 = or disjoint i64 %288, 2
  %298 = getelementptr double, ptr %233, i64 %297
  %299 = load double, ptr %298, align 8, !tbaa !40
  %300 = getelementptr <8 x double>, ptr %236, i64 %297
  store double %299, ptr %300, align 8, !tbaa !40
  %301 = or disjoint i64 %288, 3
  %302 = getelementptr double, ptr %233, i64 %301
  %303 = load double, ptr %302, align 8, !tbaa !40
  %304 = getelementptr <8 x double>, ptr %236, i64 %301
  store double %303, ptr %304, align 8, !tbaa !40
  %305 = add nuw nsw i64 %288, 4
  %306 = add i64 %289, 4
  %307 = icmp eq i64 %306, %240
  br i1 %307, label %266, label %287, !llvm.loop !152

308:                                              ; preds = %427, %278
  %309 = getelementptr inbounds nuw i8, ptr %156, i64 2560
  %310 = getelementptr inbounds double, ptr %309, i64 %6
  %311 = load double, ptr %310, align 8, !tbaa !40
  %312 = getelementptr inbounds nuw i8, ptr %156, i64 2624
  %313 = getelementptr inbounds double, ptr %312, i64 %6
  %314 = load double, ptr %313, align 8, !tbaa !40
  %315 = getelementptr inbounds nuw i8, ptr %156, i64 2688
  %316 = getelementptr inbounds double, ptr %315, i64 %6
  %317 = load double, ptr %316, align 8, !tbaa !40
  %318 = getelementptr inbounds nuw i8, ptr %156, i64 2752
  %319 = getelementptr inbounds double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !40
  %321 = tail call double @llvm.fmuladd.f64(double %230, double %320, double %317)
  %322 = tail call double @llvm.fmuladd.f64(double %230, double %321, double %314)
  %323 = tail call double @llvm.fmuladd.f64(double %230, double %322, double %311)
  %324 = getelementptr inbounds nuw i8, ptr %156, i64 832
  %325 = getelementptr inbounds double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !40
  %327 = getelementptr inbounds nuw i8, ptr %156, i64 1408
  %328 = getelementptr inbounds double, ptr %327, i64 %6
  %329 = load double, ptr %328, align 8, !tbaa !40
  %330 = getelementptr inbounds nuw i8, ptr %156, i64 1536
  %331 = getelementptr inbounds double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !40
  %333 = fsub double %329, %332
  %334 = fmul double %326, %333
  %335 = getelementptr inbounds nuw i8, ptr %156, i64 2944
  %336 = getelementptr inbounds nuw i8, ptr %156, i64 3712
  %337 = getelementptr inbounds nuw i8, ptr %156, i64 4480
  %338 = getelementptr inbounds nuw i8, ptr %156, i64 896
  %339 = getelementptr inbounds double, ptr %338, i64 %6
  %340 = getelementptr inbounds nuw i8, ptr %156, i64 1024
  %341 = getelementptr inbounds double, ptr %340, i64 %6
  %342 = getelementptr double, ptr %335, i64 %6
  %343 = getelementptr i8, ptr %342, i64 320
  store double 0.000000e+00, ptr %343, align 8, !tbaa !40
  %344 = getelementptr i8, ptr %342, i64 384
  store double 0.000000e+00, ptr %344, align 8, !tbaa !40
  %345 = getelementptr i8, ptr %342, i64 448
  store double 0.000000e+00, ptr %345, align 8, !tbaa !40
  %346 = getelementptr i8, ptr %342, i64 512
  store double 0.000000e+00, ptr %346, align 8, !tbaa !40
  %347 = getelementptr i8, ptr %342, i64 640
  store double 0.000000e+00, ptr %347, align 8, !tbaa !40
  store double %230, ptr %342, align 8, !tbaa !40
  %348 = getelementptr inbounds nuw i8, ptr %156, i64 3008
  %349 = getelementptr inbounds double, ptr %348, i64 %6
  store double %329, ptr %349, align 8, !tbaa !40
  %350 = load double, ptr %339, align 8, !tbaa !40
  %351 = getelementptr inbounds nuw i8, ptr %156, i64 3072
  %352 = getelementptr inbounds double, ptr %351, i64 %6
  store double %350, ptr %352, align 8, !tbaa !40
  %353 = getelementptr inbounds nuw i8, ptr %156, i64 3136
  %354 = getelementptr inbounds double, ptr %353, i64 %6
  store double %334, ptr %354, align 8, !tbaa !40
  %355 = getelementptr inbounds nuw i8, ptr %156, i64 3520
  %356 = getelementptr inbounds double, ptr %355, i64 %6
  store double %229, ptr %356, align 8, !tbaa !40
  %357 = load double, ptr %341, align 8, !tbaa !40
  %358 = getelementptr inbounds nuw i8, ptr %156, i64 3200
  %359 = getelementptr inbounds double, ptr %358, i64 %6
  store double %357, ptr %359, align 8, !tbaa !40
  %360 = getelementptr inbounds nuw i8, ptr %156, i64 3648
  %361 = getelementptr inbounds double, ptr %360, i64 %6
  store double %323, ptr %361, align 8, !tbaa !40
  %362 = getelementptr double, ptr %336, i64 %6
  %363 = getelementptr i8, ptr %362, i64 320
  store double 0.000000e+00, ptr %363, align 8, !tbaa !40
  %364 = getelementptr i8, ptr %362, i64 384
  store double 0.000000e+00, ptr %364, align 8, !tbaa !40
  %365 = getelementptr i8, ptr %362, i64 448
  store double 0.000000e+00, ptr %365, align 8, !tbaa !40
  %366 = getelementptr i8, ptr %362, i64 512
  store double 0.000000e+00, ptr %366, align 8, !tbaa !40
  %367 = getelementptr i8, ptr %362, i64 640
  store double 0.000000e+00, ptr %367, align 8, !tbaa !40
  store double %230, ptr %362, align 8, !tbaa !40
  %368 = getelementptr inbounds nuw i8, ptr %156, i64 3776
  %369 = getelementptr inbounds double, ptr %368, i64 %6
  store double %329, ptr %369, align 8, !tbaa !40
  %370 = getelementptr inbounds nuw i8, ptr %156, i64 3840
  %371 = getelementptr inbounds double, ptr %370, i64 %6
  store double %350, ptr %371, align 8, !tbaa !40
  %372 = getelementptr inbounds nuw i8, ptr %156, i64 3904
  %373 = getelementptr inbounds double, ptr %372, i64 %6
  store double %334, ptr %373, align 8, !tbaa !40
  %374 = getelementptr inbounds nuw i8, ptr %156, i64 4288
  %375 = getelementptr inbounds double, ptr %374, i64 %6
  store double %229, ptr %375, align 8, !tbaa !40
  %376 = getelementptr inbounds nuw i8, ptr %156, i64 3968
  %377 = getelementptr inbounds double, ptr %376, i64 %6
  store double %357, ptr %377, align 8, !tbaa !40
  %378 = getelementptr inbounds nuw i8, ptr %156, i64 4416
  %379 = getelementptr inbounds double, ptr %378, i64 %6
  store double %323, ptr %379, align 8, !tbaa !40
  %380 = getelementptr double, ptr %337, i64 %6
  %381 = getelementptr i8, ptr %380, i64 320
  store double 0.000000e+00, ptr %381, align 8, !tbaa !40
  %382 = getelementptr i8, ptr %380, i64 384
  store double 0.000000e+00, ptr %382, align 8, !tbaa !40
  %383 = getelementptr i8, ptr %380, i64 448
  store double 0.000000e+00, ptr %383, align 8, !tbaa !40
  %384 = getelementptr i8, ptr %380, i64 512
  store double 0.000000e+00, ptr %384, align 8, !tbaa !40
  %385 = getelementptr i8, ptr %380, i64 640
  store double 0.000000e+00, ptr %385, align 8, !tbaa !40
  store double %230, ptr %380, align 8, !tbaa !40
  %386 = load double, ptr %328, align 8, !tbaa !40
  %387 = getelementptr inbounds nuw i8, ptr %156, i64 4544
  %388 = getelementptr inbounds double, ptr %387, i64 %6
  store double %386, ptr %388, align 8, !tbaa !40
  %389 = getelementptr inbounds nuw i8, ptr %156, i64 4608
  %390 = getelementptr inbounds double, ptr %389, i64 %6
  store double %350, ptr %390, align 8, !tbaa !40
  %391 = getelementptr inbounds nuw i8, ptr %156, i64 4672
  %392 = getelementptr inbounds double, ptr %391, i64 %6
  store double %334, ptr %392, align 8, !tbaa !40
  %393 = getelementptr inbounds nuw i8, ptr %156, i64 5056
  %394 = getelementptr inbounds double, ptr %393, i64 %6
  store double %229, ptr %394, align 8, !tbaa !40
  %395 = getelementptr inbounds nuw i8, ptr %156, i64 4736
  %396 = getelementptr inbounds double, ptr %395, i64 %6
  store double %357, ptr %396, align 8, !tbaa !40
  %397 = getelementptr inbounds nuw i8, ptr %156, i64 5184
  %398 = getelementptr inbounds double, ptr %397, i64 %6
  store double %323, ptr %398, align 8, !tbaa !40
  %399 = load double, ptr %339, align 8, !tbaa !40
  %400 = fadd double %334, %399
  %401 = getelementptr inbounds nuw i8, ptr %156, i64 1600
  %402 = getelementptr inbounds double, ptr %401, i64 %6
  store double %400, ptr %402, align 8, !tbaa !40
  %403 = getelementptr inbounds nuw i8, ptr %156, i64 5568
  %404 = getelementptr inbounds nuw i8, ptr %156, i64 6400
  %405 = getelementptr inbounds nuw i8, ptr %156, i64 6464
  %406 = getelementptr inbounds nuw i8, ptr %156, i64 7232
  %407 = getelementptr inbounds double, ptr %403, i64 %6
  store double %229, ptr %407, align 8, !tbaa !40
  %408 = getelementptr inbounds double, ptr %404, i64 %6
  store double %229, ptr %408, align 8, !tbaa !40
  %409 = getelementptr inbounds double, ptr %405, i64 %6
  store double %229, ptr %409, align 8, !tbaa !40
  %410 = getelementptr inbounds double, ptr %406, i64 %6
  store double %229, ptr %410, align 8, !tbaa !40
  %411 = getelementptr inbounds nuw i8, ptr %156, i64 5632
  %412 = getelementptr inbounds nuw i8, ptr %156, i64 5696
  %413 = getelementptr inbounds nuw i8, ptr %156, i64 7296
  %414 = getelementptr inbounds nuw i8, ptr %156, i64 7168
  %415 = getelementptr inbounds nuw i8, ptr %156, i64 6848
  %416 = getelementptr inbounds double, ptr %411, i64 %6
  store double 0.000000e+00, ptr %416, align 8, !tbaa !40
  %417 = getelementptr inbounds double, ptr %412, i64 %6
  store double 0.000000e+00, ptr %417, align 8, !tbaa !40
  %418 = getelementptr inbounds double, ptr %413, i64 %6
  store double 0.000000e+00, ptr %418, align 8, !tbaa !40
  %419 = getelementptr inbounds double, ptr %414, i64 %6
  store double 0.000000e+00, ptr %419, align 8, !tbaa !40
  %420 = getelementptr inbounds double, ptr %415, i64 %6
  store double 0.000000e+00, ptr %420, align 8, !tbaa !40
  %421 = getelementptr inbounds nuw i8, ptr %156, i64 7360
  %422 = getelementptr inbounds i64, ptr %421, i64 %6
  store i64 0, ptr %422, align 8, !tbaa !30
  %423 = getelementptr inbounds nuw i8, ptr %156, i64 7424
  %424 = getelementptr inbounds i64, ptr %423, i64 %6
  store i64 -1, ptr %424, align 8, !tbaa !30
  %425 = getelementptr inbounds nuw i8, ptr %156, i64 7488
  %426 = getelementptr inbounds i64, ptr %425, i64 %6
  store i64 0, ptr %426, align 8, !tbaa !30
  br i1 %195, label %449, label %465

427:                                              ; preds = %282, %427
  %428 = phi i64 [ 0, %282 ], [ %447, %427 ]
  %429 = icmp slt i64 %428, %165
  %430 = select i1 %429, double %283, double 1.000000e+00
  %431 = shl i64 %428, 8
  %432 = getelementptr i8, ptr %286, i64 %431
  %433 = load double, ptr %432, align 8, !tbaa !40
  %434 = fmul double %430, %433
  store double %434, ptr %432, align 8, !tbaa !40
  %435 = fdiv double %430, %230
  %436 = getelementptr i8, ptr %432, i64 64
  %437 = load double, ptr %436, align 8, !tbaa !40
  %438 = fmul double %435, %437
  store double %438, ptr %436, align 8, !tbaa !40
  %439 = fdiv double %435, %230
  %440 = getelementptr i8, ptr %432, i64 128
  %441 = load double, ptr %440, align 8, !tbaa !40
  %442 = fmul double %439, %441
  store double %442, ptr %440, align 8, !tbaa !40
  %443 = fdiv double %439, %230
  %444 = getelementptr i8, ptr %432, i64 192
  %445 = load double, ptr %444, align 8, !tbaa !40
  %446 = fmul double %443, %445
  store double %446, ptr %444, align 8, !tbaa !40
  %447 = add nuw nsw i64 %428, 1
  %448 = icmp slt i64 %428, %159
  br i1 %448, label %427, label %308, !llvm.loop !153

449:                                              ; preds = %308
  %450 = getelementptr inbounds nuw i8, ptr %156, i64 7576
  %451 = load ptr, ptr %450, align 8, !tbaa !55
  %452 = getelementptr double, ptr %451, i64 %6
  %453 = getelementptr inbounds nuw i8, ptr %156, i64 7568
  %454 = load ptr, ptr %453, align 16, !tbaa !44
  %455 = getelementptr double, ptr %454, i64 %6
  %456 = getelementptr inbounds nuw i8, ptr %156, i64 7560
  %457 = load ptr, ptr %456, align 8, !tbaa !56
  %458 = getelementptr double, ptr %457, i64 %6
  %459 = getelementptr inbounds nuw i8, ptr %156, i64 7600
  %460 = load ptr, ptr %459, align 16, !tbaa !45
  %461 = getelementptr double, ptr %460, i64 %6
  %462 = getelementptr inbounds nuw i8, ptr %156, i64 7592
  %463 = load ptr, ptr %462, align 8, !tbaa !63
  %464 = getelementptr double, ptr %463, i64 %6
  br label %478

465:                                              ; preds = %478, %308
  %466 = icmp slt i64 %160, 0
  br i1 %466, label %539, label %467

467:                                              ; preds = %465
  %468 = getelementptr inbounds nuw i8, ptr %156, i64 7744
  %469 = load ptr, ptr %468, align 64, !tbaa !58
  %470 = getelementptr double, ptr %469, i64 %6
  %471 = getelementptr inbounds nuw i8, ptr %156, i64 7736
  %472 = load ptr, ptr %471, align 8, !tbaa !47
  %473 = getelementptr double, ptr %472, i64 %6
  %474 = icmp eq i64 %160, 0
  br i1 %474, label %487, label %475

475:                                              ; preds = %467
  %476 = add nuw i64 %160, 1
  %477 = and i64 %476, -2
  br label %512

478:                                              ; preds = %449, %478
  %479 = phi i64 [ 0, %449 ], [ %485, %478 ]
  %480 = getelementptr <8 x double>, ptr %452, i64 %479
  store double %229, ptr %480, align 8, !tbaa !40
  %481 = getelementptr <8 x double>, ptr %455, i64 %479
  store double %229, ptr %481, align 8, !tbaa !40
  %482 = getelementptr <8 x double>, ptr %458, i64 %479
  store double %229, ptr %482, align 8, !tbaa !40
  %483 = getelementptr <8 x double>, ptr %461, i64 %479
  store double 1.000000e+00, ptr %483, align 8, !tbaa !40
  %484 = getelementptr <8 x double>, ptr %464, i64 %479
  store double 1.000000e+00, ptr %484, align 8, !tbaa !40
  %485 = add nuw nsw i64 %479, 1
  %486 = icmp eq i64 %485, %159
  br i1 %486, label %465, label %478, !llvm.loop !154

487:                                              ; preds = %526, %467
  %488 = phi i64 [ 0, %467 ], [ %530, %526 ]
  %489 = and i64 %160, 1
  %490 = icmp eq i64 %489, 0
  br i1 %490, label %491, label %499

491:                                              ; preds = %487
  %492 = icmp slt i64 %488, %160
  br i1 %492, label %495, label %493

493:                                              ; preds = %491
  %494 = load double, ptr %328, align 8, !tbaa !40
  br label %495

495:                                              ; preds = %493, %491
  %496 = phi double [ %494, %493 ], [ %323, %491 ]
  %497 = getelementptr <8 x double>, ptr %470, i64 %488
  store double %496, ptr %497, align 8, !tbaa !40
  %498 = getelementptr <8 x double>, ptr %473, i64 %488
  store double %496, ptr %498, align 8, !tbaa !40
  br label %499

499:                                              ; preds = %487, %495
  %500 = icmp eq i64 %160, 0
  br i1 %500, label %539, label %501

501:                                              ; preds = %499
  %502 = getelementptr inbounds nuw i8, ptr %156, i64 7696
  %503 = load ptr, ptr %502, align 16, !tbaa !60
  %504 = getelementptr double, ptr %503, i64 %6
  %505 = getelementptr inbounds nuw i8, ptr %156, i64 7688
  %506 = load ptr, ptr %505, align 8, !tbaa !48
  %507 = getelementptr double, ptr %506, i64 %6
  %508 = and i64 %160, 1
  %509 = icmp eq i64 %160, 1
  br i1 %509, label %533, label %510

510:                                              ; preds = %501
  %511 = and i64 %160, 9223372036854775806
  br label %543

512:                                              ; preds = %526, %475
  %513 = phi i64 [ 0, %475 ], [ %530, %526 ]
  %514 = phi i64 [ 0, %475 ], [ %531, %526 ]
  %515 = icmp slt i64 %513, %160
  br i1 %515, label %518, label %516

516:                                              ; preds = %512
  %517 = load double, ptr %328, align 8, !tbaa !40
  br label %518

518:                                              ; preds = %512, %516
  %519 = phi double [ %517, %516 ], [ %323, %512 ]
  %520 = getelementptr <8 x double>, ptr %470, i64 %513
  store double %519, ptr %520, align 8, !tbaa !40
  %521 = getelementptr <8 x double>, ptr %473, i64 %513
  store double %519, ptr %521, align 8, !tbaa !40
  %522 = or disjoint i64 %513, 1
  %523 = icmp slt i64 %522, %160
  br i1 %523, label %526, label %524

524:                                              ; preds = %518
  %525 = load double, ptr %328, align 8, !tbaa !40
  br label %526

526:                                              ; preds = %524, %518
  %527 = phi double [ %525, %524 ], [ %323, %518 ]
  %528 = getelementptr <8 x double>, ptr %470, i64 %522
  store double %527, ptr %528, align 8, !tbaa !40
  %529 = getelementptr <8 x double>, ptr %473, i64 %522
  store double %527, ptr %529, align 8, !tbaa !40
  %530 = add nuw i64 %513, 2
  %531 = add i64 %514, 2
  %532 = icmp eq i64 %531, %477
  br i1 %532, label %487, label %512, !llvm.loop !155

533:                                              ; preds = %543, %501
  %534 = phi i64 [ 0, %501 ], [ %551, %543 ]
  %535 = icmp eq i64 %508, 0
  br i1 %535, label %539, label %536

536:                                              ; preds = %533
  %537 = getelementptr <8 x double>, ptr %504, i64 %534
  store double %229, ptr %537, align 8, !tbaa !40
  %538 = getelementptr <8 x double>, ptr %507, i64 %534
  store double %229, ptr %538, align 8, !tbaa !40
  br label %539

539:                                              ; preds = %536, %533, %465, %499
  %540 = add nuw nsw i64 %155, 1
  %541 = load i64, ptr %27, align 8, !tbaa !20
  %542 = icmp slt i64 %540, %541
  br i1 %542, label %154, label %61, !llvm.loop !156

543:                                              ; preds = %543, %510
  %544 = phi i64 [ 0, %510 ], [ %551, %543 ]
  %545 = phi i64 [ 0, %510 ], [ %552, %543 ]
  %546 = getelementptr <8 x double>, ptr %504, i64 %544
  store double %229, ptr %546, align 8, !tbaa !40
  %547 = getelementptr <8 x double>, ptr %507, i64 %544
  store double %229, ptr %547, align 8, !tbaa !40
  %548 = or disjoint i64 %544, 1
  %549 = getelementptr <8 x double>, ptr %504, i64 %548
  store double %229, ptr %549, align 8, !tbaa !40
  %550 = getelementptr <8 x double>, ptr %507, i64 %548
  store double %229, ptr %550, align 8, !tbaa !40
  %551 = add nuw nsw i64 %544, 2
  %552 = add i64 %545, 2
  %553 = icmp eq i64 %552, %511
  br i1 %553, label %533, label %543, !llvm.loop !157
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 15) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !158
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !159
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %10 = sext i32 %2 to i64
  %11 = getelementptr inbounds [8 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %18 = getelementptr inbounds double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !40
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !160
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !40
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !40
  %31 = fsub double %27, %30
  %32 = icmp sgt i64 %24, %20
  br i1 %32, label %33, label %69

33:                                               ; preds = %3
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %35 = getelementptr inbounds double, ptr %34, i64 %10
  br label %36

36:                                               ; preds = %33, %66
  %37 = phi i64 [ %20, %33 ], [ %67, %66 ]
  %38 = mul nsw i64 %37, 48
  %39 = getelementptr inbounds i8, ptr %16, i64 %38
  %40 = load double, ptr %39, align 8, !tbaa !40
  %41 = getelementptr inbounds nuw i8, ptr %39, i64 40
  %42 = load double, ptr %41, align 8, !tbaa !40
  %43 = fcmp ult double %42, 0.000000e+00
  br i1 %43, label %49, label %44

44:                                               ; preds = %36
  %45 = load double, ptr %35, align 8, !tbaa !40
  %46 = fsub double %42, %45
  %47 = fcmp ogt double %46, 0x3EB0C6F7A0B5ED8D
  %48 = select i1 %47, double %46, double 0.000000e+00
  br label %49

49:                                               ; preds = %44, %36
  %50 = phi double [ %48, %44 ], [ %40, %36 ]
  %51 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %52 = load double, ptr %51, align 8, !tbaa !40
  %53 = fcmp oeq double %52, 2.000000e+00
  br i1 %53, label %54, label %62

54:                                               ; preds = %49
  %55 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %56 = load double, ptr %55, align 8, !tbaa !40
  %57 = fcmp oeq double %56, 4.000000e+00
  br i1 %57, label %58, label %62

58:                                               ; preds = %54
  %59 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %60 = load double, ptr %59, align 8, !tbaa !40
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
  store double %71, ptr %18, align 8, !tbaa !40
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !40
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !40
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !40
  br label %284

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !40
  %82 = load double, ptr %35, align 8, !tbaa !40
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !40
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !40
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !40
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !40
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !40
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !40
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !40
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !40
  %99 = load double, ptr %80, align 8, !tbaa !40
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !40
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %215

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %152

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 5960
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
  %124 = getelementptr inbounds nuw i8, ptr %121, i64 4032
  %125 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %126 = fmul <8 x double> %123, %125
  %127 = fadd <8 x double> %118, %126
  %128 = or disjoint i64 %119, 1
  %129 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %128
  %130 = getelementptr inbounds nuw i8, ptr %129, i64 128
  %131 = load <8 x double>, ptr %130, align 64, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %129, i64 4032
  %133 = load <8 x double>, ptr %132, align 64, !tbaa !26
  %134 = fmul <8 x double> %131, %133
  %135 = fadd <8 x double> %127, %134
  %136 = add nuw nsw i64 %119, 2
  %137 = add i64 %120, 2
  %138 = icmp eq i64 %137, %116
  br i1 %138, label %139, label %117, !llvm.loop !162

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
  %148 = getelementptr inbounds nuw i8, ptr %145, i64 4032
  %149 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %150 = fmul <8 x double> %147, %149
  %151 = fadd <8 x double> %141, %150
  br label %152

152:                                              ; preds = %144, %139, %106
  %153 = phi <8 x double> [ zeroinitializer, %106 ], [ %140, %139 ], [ %151, %144 ]
  %154 = extractelement <8 x double> %153, i64 0
  %155 = extractelement <8 x double> %153, i64 1
  %156 = fadd double %154, %155
  %157 = extractelement <8 x double> %153, i64 2
  %158 = fadd double %157, %156
  %159 = extractelement <8 x double> %153, i64 3
  %160 = fadd double %159, %158
  %161 = extractelement <8 x double> %153, i64 4
  %162 = fadd double %161, %160
  %163 = extractelement <8 x double> %153, i64 5
  %164 = fadd double %163, %162
  %165 = extractelement <8 x double> %153, i64 6
  %166 = fadd double %165, %164
  %167 = extractelement <8 x double> %153, i64 7
  %168 = fadd double %167, %166
  %169 = fmul double %168, 4.615260e+02
  %170 = getelementptr inbounds nuw i8, ptr %0, i64 704
  %171 = getelementptr inbounds double, ptr %170, i64 %10
  %172 = load double, ptr %171, align 8, !tbaa !40
  %173 = fmul double %172, %169
  %174 = fdiv double %173, %30
  %175 = fcmp ogt double %174, 0.000000e+00
  %176 = fneg double %174
  %177 = select i1 %175, double %176, double -0.000000e+00
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 640
  %179 = getelementptr inbounds double, ptr %178, i64 %10
  %180 = load double, ptr %179, align 8, !tbaa !40
  %181 = fdiv double %177, %180
  %182 = insertelement <8 x double> poison, double %181, i64 0
  %183 = shufflevector <8 x double> %182, <8 x double> poison, <8 x i32> zeroinitializer
  %184 = fcmp ogt <8 x double> %183, splat (double -7.000000e+02)
  %185 = select <8 x i1> %184, <8 x double> %183, <8 x double> splat (double -7.000000e+02)
  %186 = fcmp olt <8 x double> %185, splat (double 7.000000e+02)
  %187 = select <8 x i1> %186, <8 x double> %185, <8 x double> splat (double 7.000000e+02)
  %188 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %187, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %189 = fadd <8 x double> %188, splat (double 0xC338000000000000)
  %190 = fneg <8 x double> %189
  %191 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %190, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %187)
  %192 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %190, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %191)
  %193 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %192, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %194 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %193, <8 x double> %192, <8 x double> splat (double 0x3E5AE64567F544E4))
  %195 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %194, <8 x double> %192, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %196 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %195, <8 x double> %192, <8 x double> splat (double 0x3EC71DE3A556C734))
  %197 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %196, <8 x double> %192, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %198 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %197, <8 x double> %192, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %199 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %198, <8 x double> %192, <8 x double> splat (double 0x3F56C16C16C16C17))
  %200 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %199, <8 x double> %192, <8 x double> splat (double 0x3F81111111111111))
  %201 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %200, <8 x double> %192, <8 x double> splat (double 0x3FA5555555555555))
  %202 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %201, <8 x double> %192, <8 x double> splat (double 0x3FC5555555555555))
  %203 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %202, <8 x double> %192, <8 x double> splat (double 5.000000e-01))
  %204 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %203, <8 x double> %192, <8 x double> splat (double 1.000000e+00))
  %205 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %204, <8 x double> %192, <8 x double> splat (double 1.000000e+00))
  %206 = bitcast <8 x double> %188 to <8 x i64>
  %207 = shl <8 x i64> %206, splat (i64 52)
  %208 = bitcast <8 x double> %205 to <8 x i64>
  %209 = add <8 x i64> %207, %208
  %210 = bitcast <8 x i64> %209 to <8 x double>
  %211 = extractelement <8 x double> %210, i64 0
  %212 = fmul double %30, %211
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %214 = getelementptr inbounds double, ptr %213, i64 %10
  store double %212, ptr %214, align 8, !tbaa !40
  br label %215

215:                                              ; preds = %79, %152
  %216 = fcmp une double %99, %103
  br i1 %216, label %217, label %256

217:                                              ; preds = %215
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %219 = getelementptr inbounds double, ptr %218, i64 %10
  store double %99, ptr %219, align 8, !tbaa !40
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %221 = getelementptr inbounds double, ptr %220, i64 %10
  store double %82, ptr %221, align 8, !tbaa !40
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %223 = getelementptr inbounds double, ptr %222, i64 %10
  %224 = load double, ptr %223, align 8, !tbaa !40
  %225 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %226 = getelementptr inbounds double, ptr %225, i64 %10
  store double %224, ptr %226, align 8, !tbaa !40
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %228 = getelementptr inbounds i64, ptr %227, i64 %10
  store i64 -1, ptr %228, align 8, !tbaa !30
  %229 = fcmp oeq double %99, 0.000000e+00
  %230 = fcmp oeq double %99, 3.000000e+00
  %231 = or i1 %229, %230
  br i1 %231, label %232, label %240

232:                                              ; preds = %217
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %234 = getelementptr inbounds double, ptr %233, i64 %10
  store double %30, ptr %234, align 8, !tbaa !40
  store double %30, ptr %26, align 8, !tbaa !40
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %236 = getelementptr inbounds double, ptr %235, i64 %10
  %237 = load double, ptr %236, align 8, !tbaa !40
  %238 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %239 = getelementptr inbounds double, ptr %238, i64 %10
  store double %237, ptr %239, align 8, !tbaa !40
  br label %240

240:                                              ; preds = %217, %232
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %242 = load i64, ptr %241, align 8, !tbaa !20
  %243 = icmp sgt i64 %242, 0
  br i1 %243, label %244, label %256

244:                                              ; preds = %240
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  %246 = load ptr, ptr %245, align 8, !tbaa !28
  %247 = getelementptr i64, ptr %246, i64 %10
  %248 = sext i1 %230 to i64
  br label %249

249:                                              ; preds = %244, %249
  %250 = phi i64 [ 0, %244 ], [ %253, %249 ]
  %251 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 38
  store i64 -1, ptr %251, align 8, !tbaa !30
  %252 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 39
  store i64 %248, ptr %252, align 8, !tbaa !30
  %253 = add nuw nsw i64 %250, 1
  %254 = load i64, ptr %241, align 8, !tbaa !20
  %255 = icmp slt i64 %253, %254
  br i1 %255, label %249, label %256, !llvm.loop !163

256:                                              ; preds = %249, %240, %215
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %257 = getelementptr inbounds i64, ptr %4, i64 %10
  store i64 -1, ptr %257, align 8, !tbaa !30
  %258 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %259 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %260 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %261 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %262 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %263 = fmul <8 x double> %262, splat (double 5.000000e-01)
  %264 = load <8 x double>, ptr %89, align 64, !tbaa !26
  %265 = fadd <8 x double> %264, %263
  %266 = fadd <8 x double> %265, splat (double -1.000000e-03)
  %267 = fcmp ult <8 x double> %260, %266
  %268 = fsub <8 x double> %264, %263
  %269 = fadd <8 x double> %268, splat (double 1.000000e-03)
  %270 = fcmp ole <8 x double> %260, %269
  %271 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %272 = load <8 x i64>, ptr %271, align 64, !tbaa !26
  %273 = select <8 x i1> %270, <8 x i64> splat (i64 -1), <8 x i64> %272
  %274 = select <8 x i1> %267, <8 x i64> %273, <8 x i64> zeroinitializer
  %275 = xor <8 x i64> %274, %272
  %276 = and <8 x i64> %275, %258
  %277 = and <8 x i64> %274, %258
  %278 = xor <8 x i64> %258, splat (i64 -1)
  %279 = and <8 x i64> %272, %278
  %280 = or <8 x i64> %277, %279
  store <8 x i64> %280, ptr %271, align 64, !tbaa !26
  %281 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %282 = load <8 x i64>, ptr %281, align 64, !tbaa !26
  %283 = or <8 x i64> %276, %282
  store <8 x i64> %283, ptr %281, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #7
  br label %284

284:                                              ; preds = %256, %69
  ret void
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fmuladd.v8f64(<8 x double>, <8 x double>, <8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.fmuladd.f64(double, double, double) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.vector.reduce.or.v8i64(<8 x i64>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.vector.reduce.fmin.v8f64(<8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fabs.v8f64(<8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.sqrt.v8f64(<8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.vector.reduce.fmax.v8f64(<8 x double>) #4

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
!5 = !{!"_ZTS3Job", !6, i64 0, !6, i64 8, !6, i64 16, !6, i64 24, !6, i64 32, !6, i64 40, !6, i64 48, !6, i64 56, !9, i64 64, !10, i64 72, !10, i64 80, !10, i64 88, !10, i64 96, !12, i64 104, !12, i64 112, !12, i64 120, !12, i64 128, !12, i64 136, !10, i64 144, !12, i64 152, !10, i64 160, !12, i64 168, !6, i64 176, !6, i64 184, !10, i64 192, !10, i64 200, !10, i64 208}
!6 = !{!"long long", !7, i64 0}
!7 = !{!"omnipotent char", !8, i64 0}
!8 = !{!"Simple C++ TBAA"}
!9 = !{!"double", !7, i64 0}
!10 = !{!"p1 double", !11, i64 0}
!11 = !{!"any pointer", !7, i64 0}
!12 = !{!"p1 long long", !11, i64 0}
!13 = !{!5, !6, i64 24}
!14 = !{!5, !6, i64 48}
!15 = !{!5, !6, i64 8}
!16 = !{!17, !6, i64 2304}
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 2304, !6, i64 2312, !6, i64 2320, !6, i64 2328, !6, i64 2336, !6, i64 2344, !7, i64 2368, !7, i64 2432, !7, i64 2816, !7, i64 3200, !7, i64 3584, !7, i64 3648, !7, i64 3712, !7, i64 3776, !7, i64 3840, !7, i64 3904, !7, i64 3968, !7, i64 4032, !7, i64 4096, !7, i64 4160, !7, i64 4224, !7, i64 4288, !7, i64 4352, !7, i64 4416, !7, i64 4480, !7, i64 4544, !7, i64 4608, !7, i64 4672, !7, i64 4736, !7, i64 4800, !7, i64 4864, !7, i64 4928, !7, i64 4992, !7, i64 5056, !7, i64 5120, !7, i64 5184, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5824, !7, i64 5888, !11, i64 5952, !19, i64 5960}
!18 = !{!"_ZTS9CookGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240}
!19 = !{!"p1 _ZTS5Piece", !11, i64 0}
!20 = !{!17, !6, i64 2312}
!21 = !{!17, !6, i64 2320}
!22 = !{!17, !6, i64 2328}
!23 = !{!5, !6, i64 32}
!24 = !{!17, !6, i64 2336}
!25 = !{!5, !9, i64 64}
!26 = !{!7, !7, i64 0}
!27 = !{!17, !6, i64 2344}
!28 = !{!17, !19, i64 5960}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 7552}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 2944, !7, i64 3712, !7, i64 4480, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !6, i64 7552, !11, i64 7560, !11, i64 7568, !11, i64 7576, !11, i64 7584, !11, i64 7592, !11, i64 7600, !11, i64 7608, !11, i64 7616, !11, i64 7624, !11, i64 7632, !11, i64 7640, !11, i64 7648, !11, i64 7656, !11, i64 7664, !11, i64 7672, !11, i64 7680, !11, i64 7688, !11, i64 7696, !11, i64 7704, !11, i64 7712, !11, i64 7720, !11, i64 7728, !11, i64 7736, !11, i64 7744}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!34 = !{!11, !11, i64 0}
!35 = !{!32, !11, i64 7672}
!36 = !{!17, !11, i64 5952}
!37 = !{!5, !6, i64 0}
!38 = !{!5, !6, i64 176}
!39 = !{!5, !6, i64 184}
!40 = !{!9, !9, i64 0}
!41 = !{!5, !10, i64 208}
!42 = !{!5, !10, i64 192}
!43 = !{!5, !10, i64 200}
!44 = !{!32, !11, i64 7568}
!45 = !{!32, !11, i64 7600}
!46 = !{!32, !11, i64 7656}
!47 = !{!32, !11, i64 7736}
!48 = !{!32, !11, i64 7688}
!49 = distinct !{!49, !50}
!50 = !{!"llvm.loop.mustprogress"}
!51 = distinct !{!51, !50}
!52 = distinct !{!52, !50}
!53 = distinct !{!53, !50}
!54 = distinct !{!54, !50}
!55 = !{!32, !11, i64 7576}
!56 = !{!32, !11, i64 7560}
!57 = !{!32, !11, i64 7584}
!58 = !{!32, !11, i64 7744}
!59 = distinct !{!59, !50}
!60 = !{!32, !11, i64 7696}
!61 = !{!32, !11, i64 7704}
!62 = distinct !{!62, !50}
!63 = !{!32, !11, i64 7592}
!64 = distinct !{!64, !50}
!65 = distinct !{!65, !50}
!66 = distinct !{!66, !50}
!67 = distinct !{!67, !50}
!68 = distinct !{!68, !50}
!69 = distinct !{!69, !50}
!70 = !{!32, !11, i64 7648}
!71 = !{!32, !11, i64 7624}
!72 = !{!32, !11, i64 7632}
!73 = !{!32, !11, i64 7640}
!74 = !{!32, !11, i64 7608}
!75 = !{!32, !11, i64 7616}
!76 = distinct !{!76, !50}
!77 = distinct !{!77, !50}
!78 = !{!32, !11, i64 7728}
!79 = distinct !{!79, !50}
!80 = !{!32, !11, i64 7712}
!81 = !{!32, !11, i64 7720}
!82 = distinct !{!82, !50}
!83 = distinct !{!83, !50}
!84 = distinct !{!84, !50}
!85 = distinct !{!85, !50}
!86 = !{!87}
!87 = distinct !{!87, !88, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!88 = distinct !{!88, !"_ZL9evaporateR5GroupDv8_d"}
!89 = !{!90}
!90 = distinct !{!90, !91, !"_ZL7outflowRK5GroupDv8_dS2_: argument 0"}
!91 = distinct !{!91, !"_ZL7outflowRK5GroupDv8_dS2_"}
!92 = !{!93}
!93 = distinct !{!93, !94, !"_ZL8condenseR5GroupDv8_d: argument 0"}
!94 = distinct !{!94, !"_ZL8condenseR5GroupDv8_d"}
!95 = distinct !{!95, !50}
!96 = !{!97, !87}
!97 = distinct !{!97, !98, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d: argument 0"}
!98 = distinct !{!98, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d"}
!99 = distinct !{!99, !50}
!100 = distinct !{!100, !50}
!101 = !{!102}
!102 = distinct !{!102, !103, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!103 = distinct !{!103, !"_ZL9evaporateR5GroupDv8_d"}
!104 = !{!105, !102}
!105 = distinct !{!105, !106, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d: argument 0"}
!106 = distinct !{!106, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d"}
!107 = distinct !{!107, !50}
!108 = distinct !{!108, !50}
!109 = !{!32, !11, i64 7680}
!110 = distinct !{!110, !50}
!111 = distinct !{!111, !50}
!112 = distinct !{!112, !50}
!113 = distinct !{!113, !50}
!114 = distinct !{!114, !50}
!115 = distinct !{!115, !50}
!116 = distinct !{!116, !50}
!117 = distinct !{!117, !50}
!118 = distinct !{!118, !50}
!119 = !{!32, !11, i64 7664}
!120 = distinct !{!120, !50}
!121 = distinct !{!121, !50}
!122 = distinct !{!122, !50}
!123 = distinct !{!123, !50}
!124 = distinct !{!124, !50}
!125 = distinct !{!125, !50}
!126 = distinct !{!126, !50}
!127 = distinct !{!127, !50}
!128 = distinct !{!128, !50}
!129 = distinct !{!129, !50}
!130 = distinct !{!130, !50}
!131 = distinct !{!131, !50}
!132 = !{!5, !6, i64 40}
!133 = distinct !{!133, !50}
!134 = distinct !{!134, !50}
!135 = !{!5, !6, i64 56}
!136 = !{!10, !10, i64 0}
!137 = !{!5, !12, i64 168}
!138 = !{!5, !10, i64 160}
!139 = distinct !{!139, !50}
!140 = distinct !{!140, !141}
!141 = !{!"llvm.loop.unroll.disable"}
!142 = distinct !{!142, !50}
!143 = distinct !{!143, !141}
!144 = !{!5, !10, i64 80}
!145 = !{!5, !10, i64 72}
!146 = !{!5, !10, i64 96}
!147 = !{!5, !12, i64 104}
!148 = distinct !{!148, !50}
!149 = distinct !{!149, !50}
!150 = distinct !{!150, !50}
!151 = distinct !{!151, !141}
!152 = distinct !{!152, !50}
!153 = distinct !{!153, !50}
!154 = distinct !{!154, !50}
!155 = distinct !{!155, !50}
!156 = distinct !{!156, !50}
!157 = distinct !{!157, !50}
!158 = !{!5, !10, i64 88}
!159 = !{!5, !12, i64 112}
!160 = !{!5, !12, i64 120}
!161 = distinct !{!161, !50}
!162 = distinct !{!162, !50}
!163 = distinct !{!163, !50}
