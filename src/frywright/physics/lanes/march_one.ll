; Made by scripts/lanes.py from sources of sha256 0a0c4c7807021fcb27963ed7e94c9b9c993c10b40494922b339b63c5dbc3acfc.
%struct.Piece = type <{ %struct.PieceGiven, [14 x <8 x double>], [14 x <8 x double>], [14 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, %struct.Flash, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [56 x i8] }>
%struct.PieceGiven = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }
%struct.Flash = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define range(i64 17152, 17089) i64 @work_space_one(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
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
  %13 = add i64 %12, 17152
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
  %17 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  store i64 %16, ptr %17, align 64, !tbaa !16
  %18 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  store i64 1, ptr %18, align 8, !tbaa !20
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %20 = load i64, ptr %19, align 8, !tbaa !4
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  store i64 %20, ptr %21, align 16, !tbaa !21
  %22 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %23 = load i64, ptr %22, align 8, !tbaa !13
  %24 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  store i64 %23, ptr %24, align 8, !tbaa !22
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %26 = load i64, ptr %25, align 8, !tbaa !23
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  store i64 %26, ptr %27, align 32, !tbaa !24
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %29 = load double, ptr %28, align 8, !tbaa !25
  %30 = insertelement <8 x double> poison, double %29, i64 0
  %31 = shufflevector <8 x double> %30, <8 x double> poison, <8 x i32> zeroinitializer
  %32 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  store <8 x double> %31, ptr %32, align 64, !tbaa !26
  %33 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  store i64 0, ptr %33, align 8, !tbaa !27
  %34 = getelementptr inbounds nuw i8, ptr %1, i64 6272
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 6216
  store ptr %34, ptr %35, align 8, !tbaa !28
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 15040
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
  %55 = getelementptr inbounds nuw i8, ptr %1, i64 14784
  store i64 %54, ptr %55, align 64, !tbaa !31
  %56 = getelementptr inbounds nuw i8, ptr %1, i64 14792
  %57 = getelementptr inbounds nuw i8, ptr %1, i64 14800
  %58 = getelementptr inbounds nuw i8, ptr %1, i64 14808
  %59 = getelementptr inbounds nuw i8, ptr %1, i64 14816
  %60 = getelementptr inbounds nuw i8, ptr %1, i64 14824
  %61 = getelementptr inbounds nuw i8, ptr %1, i64 14832
  %62 = getelementptr inbounds nuw i8, ptr %1, i64 14840
  %63 = getelementptr inbounds nuw i8, ptr %1, i64 14848
  %64 = getelementptr inbounds nuw i8, ptr %1, i64 14856
  %65 = getelementptr inbounds nuw i8, ptr %1, i64 14864
  %66 = getelementptr inbounds nuw i8, ptr %1, i64 14872
  %67 = getelementptr inbounds nuw i8, ptr %1, i64 14880
  %68 = getelementptr inbounds nuw i8, ptr %1, i64 14888
  %69 = getelementptr inbounds nuw i8, ptr %1, i64 14896
  store ptr %36, ptr %56, align 8, !tbaa !35
  store ptr %39, ptr %57, align 8, !tbaa !35
  store ptr %40, ptr %58, align 8, !tbaa !35
  store ptr %41, ptr %59, align 8, !tbaa !35
  store ptr %42, ptr %60, align 8, !tbaa !35
  store ptr %43, ptr %61, align 8, !tbaa !35
  store ptr %44, ptr %62, align 8, !tbaa !35
  store ptr %45, ptr %63, align 8, !tbaa !35
  store ptr %46, ptr %64, align 8, !tbaa !35
  store ptr %47, ptr %65, align 8, !tbaa !35
  store ptr %48, ptr %66, align 8, !tbaa !35
  store ptr %49, ptr %67, align 8, !tbaa !35
  store ptr %50, ptr %68, align 8, !tbaa !35
  store ptr %51, ptr %69, align 8, !tbaa !35
  %70 = getelementptr inbounds nuw i8, ptr %1, i64 14904
  store ptr %52, ptr %70, align 8, !tbaa !36
  %71 = icmp eq i64 %54, 0
  %72 = select i1 %71, i64 0, i64 2
  %73 = shl i64 %38, %72
  %74 = getelementptr inbounds <8 x double>, ptr %52, i64 %73
  %75 = getelementptr inbounds nuw i8, ptr %1, i64 14912
  %76 = getelementptr inbounds nuw i8, ptr %1, i64 14920
  %77 = getelementptr inbounds nuw i8, ptr %1, i64 14928
  %78 = getelementptr inbounds nuw i8, ptr %1, i64 14936
  %79 = getelementptr inbounds nuw i8, ptr %1, i64 14944
  %80 = getelementptr inbounds nuw i8, ptr %1, i64 14952
  %81 = getelementptr inbounds nuw i8, ptr %1, i64 14960
  %82 = getelementptr inbounds nuw i8, ptr %1, i64 14968
  %83 = getelementptr inbounds nuw i8, ptr %1, i64 14976
  store ptr %74, ptr %75, align 8, !tbaa !35
  %84 = getelementptr <8 x double>, ptr %74, i64 %23
  %85 = getelementptr i8, ptr %84, i64 64
  store ptr %85, ptr %76, align 8, !tbaa !35
  %86 = getelementptr <8 x double>, ptr %85, i64 %23
  %87 = getelementptr i8, ptr %86, i64 64
  store ptr %87, ptr %77, align 8, !tbaa !35
  %88 = getelementptr <8 x double>, ptr %87, i64 %23
  %89 = getelementptr i8, ptr %88, i64 64
  store ptr %89, ptr %78, align 8, !tbaa !35
  %90 = getelementptr <8 x double>, ptr %89, i64 %23
  %91 = getelementptr i8, ptr %90, i64 64
  store ptr %91, ptr %79, align 8, !tbaa !35
  %92 = getelementptr <8 x double>, ptr %91, i64 %23
  %93 = getelementptr i8, ptr %92, i64 64
  store ptr %93, ptr %80, align 8, !tbaa !35
  %94 = getelementptr <8 x double>, ptr %93, i64 %23
  %95 = getelementptr i8, ptr %94, i64 64
  store ptr %95, ptr %81, align 8, !tbaa !35
  %96 = getelementptr <8 x double>, ptr %95, i64 %23
  %97 = getelementptr i8, ptr %96, i64 64
  store ptr %97, ptr %82, align 8, !tbaa !35
  %98 = getelementptr <8 x double>, ptr %97, i64 %23
  %99 = getelementptr i8, ptr %98, i64 64
  store ptr %99, ptr %83, align 8, !tbaa !35
  %100 = getelementptr <8 x double>, ptr %99, i64 %23
  %101 = getelementptr i8, ptr %100, i64 64
  %102 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  store ptr %101, ptr %102, align 64, !tbaa !37
  %103 = load i64, ptr %0, align 8, !tbaa !38
  %104 = icmp sgt i64 %103, 0
  br i1 %104, label %105, label %106

105:                                              ; preds = %14
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %109

106:                                              ; preds = %14
  %107 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %108 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  store i64 0, ptr %108, align 8, !tbaa !30
  store i64 0, ptr %107, align 8, !tbaa !30
  br label %109

109:                                              ; preds = %106, %105, %3
  %110 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %113 = load i64, ptr %111, align 8, !tbaa !39
  %114 = load i64, ptr %112, align 8, !tbaa !40
  %115 = sub nsw i64 %113, %114
  %116 = icmp slt i64 %115, 16
  br i1 %116, label %5871, label %117

117:                                              ; preds = %109
  %118 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  %120 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  %121 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %123 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %124 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %125 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %126 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %127 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %128 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %129 = getelementptr inbounds nuw i8, ptr %1, i64 6216
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %135 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 5760
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %169 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %171 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %172 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %219 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %223 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 6080
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 5512
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 5576
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 5520
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 5584
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 5528
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 5592
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 5536
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 5600
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 5544
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 5608
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 5552
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 5616
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 5560
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 5624
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 6152
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 6160
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 6168
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 6176
  %274 = getelementptr inbounds nuw i8, ptr %1, i64 6184
  %275 = getelementptr inbounds nuw i8, ptr %1, i64 6192
  %276 = getelementptr inbounds nuw i8, ptr %1, i64 6200
  br label %277

277:                                              ; preds = %117, %516
  %278 = load i64, ptr %110, align 8, !tbaa !30
  %279 = icmp eq i64 %278, 0
  br i1 %279, label %521, label %280

280:                                              ; preds = %277
  %281 = load double, ptr %118, align 8, !tbaa !41
  %282 = fcmp oeq double %281, 0.000000e+00
  br i1 %282, label %521, label %283

283:                                              ; preds = %280
  %284 = load i64, ptr %119, align 16, !tbaa !21
  %285 = load i64, ptr %120, align 8, !tbaa !22
  %286 = load i64, ptr %121, align 8, !tbaa !30
  %287 = load ptr, ptr %122, align 8, !tbaa !42
  %288 = mul nsw i64 %286, 40
  %289 = getelementptr inbounds i8, ptr %287, i64 %288
  %290 = load double, ptr %123, align 8, !tbaa !41
  store double %290, ptr %289, align 8, !tbaa !41
  %291 = load double, ptr %124, align 8, !tbaa !41
  %292 = getelementptr inbounds nuw i8, ptr %289, i64 8
  store double %291, ptr %292, align 8, !tbaa !41
  %293 = load double, ptr %125, align 8, !tbaa !41
  %294 = getelementptr inbounds nuw i8, ptr %289, i64 16
  store double %293, ptr %294, align 8, !tbaa !41
  %295 = load double, ptr %126, align 8, !tbaa !41
  %296 = getelementptr inbounds nuw i8, ptr %289, i64 24
  store double %295, ptr %296, align 8, !tbaa !41
  %297 = load double, ptr %127, align 8, !tbaa !41
  %298 = getelementptr inbounds nuw i8, ptr %289, i64 32
  store double %297, ptr %298, align 8, !tbaa !41
  %299 = load i64, ptr %128, align 64, !tbaa !16
  %300 = icmp sgt i64 %299, 0
  br i1 %300, label %301, label %505

301:                                              ; preds = %283
  %302 = load ptr, ptr %129, align 8, !tbaa !28
  %303 = getelementptr inbounds nuw i8, ptr %302, i64 1536
  %304 = getelementptr inbounds nuw i8, ptr %302, i64 4608
  %305 = load ptr, ptr %130, align 8, !tbaa !43
  %306 = mul nsw i64 %299, %286
  %307 = mul i64 %284, 3
  %308 = load ptr, ptr %131, align 8, !tbaa !44
  %309 = icmp sgt i64 %284, 0
  %310 = getelementptr inbounds nuw i8, ptr %302, i64 8528
  %311 = getelementptr inbounds nuw i8, ptr %302, i64 8560
  %312 = getelementptr inbounds nuw i8, ptr %302, i64 8616
  %313 = getelementptr inbounds nuw i8, ptr %302, i64 8512
  %314 = getelementptr inbounds nuw i8, ptr %302, i64 4672
  %315 = getelementptr inbounds nuw i8, ptr %302, i64 384
  %316 = getelementptr inbounds nuw i8, ptr %302, i64 448
  %317 = getelementptr inbounds nuw i8, ptr %302, i64 512
  %318 = getelementptr inbounds nuw i8, ptr %302, i64 640
  %319 = shl i64 %284, 4
  %320 = icmp sgt i64 %285, 0
  %321 = getelementptr inbounds nuw i8, ptr %302, i64 8696
  %322 = getelementptr inbounds nuw i8, ptr %302, i64 768
  %323 = getelementptr inbounds nuw i8, ptr %302, i64 8648
  %324 = getelementptr inbounds nuw i8, ptr %302, i64 960
  %325 = getelementptr inbounds nuw i8, ptr %302, i64 1408
  %326 = getelementptr inbounds nuw i8, ptr %302, i64 4224
  %327 = getelementptr inbounds nuw i8, ptr %302, i64 4288
  %328 = getelementptr inbounds nuw i8, ptr %302, i64 4160
  %329 = getelementptr inbounds nuw i8, ptr %302, i64 3968
  %330 = getelementptr inbounds nuw i8, ptr %302, i64 4032
  %331 = getelementptr inbounds nuw i8, ptr %302, i64 3904
  %332 = and i64 %285, 1
  %333 = icmp eq i64 %285, 1
  %334 = and i64 %285, 9223372036854775806
  %335 = icmp eq i64 %332, 0
  br label %336

336:                                              ; preds = %425, %301
  %337 = phi i64 [ 0, %301 ], [ %480, %425 ]
  %338 = shl i64 %337, 32
  %339 = ashr exact i64 %338, 32
  %340 = getelementptr inbounds double, ptr %303, i64 %339
  %341 = load double, ptr %340, align 8, !tbaa !41
  %342 = getelementptr inbounds double, ptr %304, i64 %339
  %343 = load double, ptr %342, align 8, !tbaa !41
  %344 = add nsw i64 %337, %306
  %345 = mul i64 %307, %344
  %346 = getelementptr inbounds double, ptr %305, i64 %345
  %347 = mul nsw i64 %344, 40
  %348 = getelementptr inbounds i8, ptr %308, i64 %347
  br i1 %309, label %349, label %359

349:                                              ; preds = %336
  %350 = load ptr, ptr %310, align 16, !tbaa !45
  %351 = load ptr, ptr %311, align 16, !tbaa !46
  %352 = getelementptr double, ptr %351, i64 %339
  %353 = getelementptr double, ptr %346, i64 %284
  %354 = load ptr, ptr %312, align 8, !tbaa !47
  %355 = load i64, ptr %313, align 64, !tbaa !31
  %356 = getelementptr inbounds double, ptr %10, i64 %339
  %357 = getelementptr i8, ptr %346, i64 %319
  %358 = getelementptr inbounds double, ptr %11, i64 %339
  br label %369

359:                                              ; preds = %400, %336
  %360 = phi double [ %343, %336 ], [ %408, %400 ]
  br i1 %320, label %361, label %425

361:                                              ; preds = %359
  %362 = load ptr, ptr %321, align 8, !tbaa !48
  %363 = getelementptr double, ptr %362, i64 %339
  %364 = getelementptr inbounds double, ptr %322, i64 %339
  %365 = load double, ptr %364, align 8, !tbaa !41
  %366 = load ptr, ptr %323, align 8, !tbaa !49
  %367 = getelementptr double, ptr %366, i64 %339
  %368 = load double, ptr %363, align 8, !tbaa !41
  br i1 %333, label %411, label %482

369:                                              ; preds = %400, %349
  %370 = phi double [ %343, %349 ], [ %408, %400 ]
  %371 = phi i64 [ 0, %349 ], [ %409, %400 ]
  %372 = getelementptr inbounds nuw <8 x double>, ptr %350, i64 %371
  %373 = getelementptr inbounds double, ptr %372, i64 %339
  %374 = load double, ptr %373, align 8, !tbaa !41
  %375 = getelementptr inbounds nuw double, ptr %346, i64 %371
  store double %374, ptr %375, align 8, !tbaa !41
  %376 = getelementptr <8 x double>, ptr %352, i64 %371
  %377 = load double, ptr %376, align 8, !tbaa !41
  %378 = getelementptr double, ptr %353, i64 %371
  store double %377, ptr %378, align 8, !tbaa !41
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %379 = getelementptr inbounds nuw <8 x double>, ptr %354, i64 %371
  %380 = load <8 x double>, ptr %379, align 64, !tbaa !26
  %381 = icmp slt i64 %371, %355
  br i1 %381, label %382, label %387

382:                                              ; preds = %369
  %383 = load <8 x double>, ptr %303, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %384 = load <8 x double>, ptr %372, align 64, !tbaa !26
  %385 = load <8 x double>, ptr %318, align 64, !tbaa !26
  %386 = fmul <8 x double> %384, %385
  br label %400

387:                                              ; preds = %369
  %388 = load <8 x double>, ptr %314, align 64, !tbaa !26
  %389 = load <8 x double>, ptr %303, align 64, !tbaa !26
  %390 = fsub <8 x double> %388, %389
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %391 = load <8 x double>, ptr %372, align 64, !tbaa !26
  %392 = load <8 x double>, ptr %315, align 64, !tbaa !26
  %393 = load <8 x double>, ptr %316, align 64, !tbaa !26
  %394 = load <8 x double>, ptr %317, align 64, !tbaa !26
  %395 = fmul <8 x double> %391, %394
  %396 = fmul <8 x double> %395, splat (double 0x3FD5555555555555)
  %397 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %393, <8 x double> splat (double 5.000000e-01), <8 x double> %396)
  %398 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %391, <8 x double> %397, <8 x double> %392)
  %399 = fmul <8 x double> %391, %398
  br label %400

400:                                              ; preds = %387, %382
  %401 = phi <8 x double> [ %383, %382 ], [ %390, %387 ]
  %402 = phi <8 x double> [ %386, %382 ], [ %399, %387 ]
  %403 = fmul <8 x double> %380, %401
  store <8 x double> %403, ptr %10, align 64, !tbaa !26
  %404 = fmul <8 x double> %403, %402
  store <8 x double> %404, ptr %11, align 64, !tbaa !26
  %405 = load double, ptr %356, align 8, !tbaa !41
  %406 = getelementptr double, ptr %357, i64 %371
  store double %405, ptr %406, align 8, !tbaa !41
  %407 = load double, ptr %358, align 8, !tbaa !41
  %408 = fadd double %370, %407
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %409 = add nuw nsw i64 %371, 1
  %410 = icmp eq i64 %409, %284
  br i1 %410, label %359, label %369, !llvm.loop !50

411:                                              ; preds = %482, %361
  %412 = phi double [ poison, %361 ], [ %502, %482 ]
  %413 = phi double [ %368, %361 ], [ %497, %482 ]
  %414 = phi double [ %360, %361 ], [ %502, %482 ]
  %415 = phi i64 [ 0, %361 ], [ %495, %482 ]
  br i1 %335, label %425, label %416

416:                                              ; preds = %411
  %417 = getelementptr <8 x double>, ptr %363, i64 %415
  %418 = getelementptr i8, ptr %417, i64 64
  %419 = load double, ptr %418, align 8, !tbaa !41
  %420 = fsub double %419, %413
  %421 = fmul double %365, %420
  %422 = getelementptr <8 x double>, ptr %367, i64 %415
  %423 = load double, ptr %422, align 8, !tbaa !41
  %424 = tail call double @llvm.fmuladd.f64(double %421, double %423, double %414)
  br label %425

425:                                              ; preds = %416, %411, %359
  %426 = phi double [ %360, %359 ], [ %412, %411 ], [ %424, %416 ]
  %427 = getelementptr inbounds double, ptr %324, i64 %339
  %428 = load double, ptr %427, align 8, !tbaa !41
  %429 = getelementptr inbounds double, ptr %315, i64 %339
  %430 = load double, ptr %429, align 8, !tbaa !41
  %431 = getelementptr inbounds double, ptr %316, i64 %339
  %432 = load double, ptr %431, align 8, !tbaa !41
  %433 = getelementptr inbounds double, ptr %317, i64 %339
  %434 = load double, ptr %433, align 8, !tbaa !41
  %435 = fmul double %428, %434
  %436 = fdiv double %435, 3.000000e+00
  %437 = tail call double @llvm.fmuladd.f64(double %432, double 5.000000e-01, double %436)
  %438 = tail call double @llvm.fmuladd.f64(double %428, double %437, double %430)
  %439 = fmul double %428, %438
  %440 = getelementptr inbounds double, ptr %325, i64 %339
  %441 = load double, ptr %440, align 8, !tbaa !41
  %442 = fsub double %441, %341
  %443 = getelementptr inbounds double, ptr %318, i64 %339
  %444 = load double, ptr %443, align 8, !tbaa !41
  %445 = fmul double %341, %444
  %446 = fmul double %428, %445
  %447 = tail call double @llvm.fmuladd.f64(double %442, double %439, double %446)
  %448 = getelementptr inbounds double, ptr %326, i64 %339
  %449 = load double, ptr %448, align 8, !tbaa !41
  %450 = getelementptr inbounds double, ptr %327, i64 %339
  %451 = load double, ptr %450, align 8, !tbaa !41
  %452 = fsub double %449, %451
  %453 = fsub double %426, %447
  %454 = fsub double %452, %453
  %455 = fcmp ogt double %449, 0.000000e+00
  %456 = fneg double %449
  %457 = select i1 %455, double %449, double %456
  %458 = fcmp ogt double %451, 0.000000e+00
  %459 = fneg double %451
  %460 = select i1 %458, double %451, double %459
  %461 = fadd double %457, %460
  %462 = fcmp ogt double %454, 0.000000e+00
  %463 = fneg double %454
  %464 = select i1 %462, double %454, double %463
  %465 = fcmp ogt double %461, 1.000000e+00
  %466 = select i1 %465, double %461, double 1.000000e+00
  %467 = fdiv double %464, %466
  store double %467, ptr %348, align 8, !tbaa !41
  %468 = getelementptr inbounds double, ptr %328, i64 %339
  %469 = load double, ptr %468, align 8, !tbaa !41
  %470 = getelementptr inbounds nuw i8, ptr %348, i64 8
  store double %469, ptr %470, align 8, !tbaa !41
  %471 = getelementptr inbounds double, ptr %329, i64 %339
  %472 = load double, ptr %471, align 8, !tbaa !41
  %473 = getelementptr inbounds nuw i8, ptr %348, i64 16
  store double %472, ptr %473, align 8, !tbaa !41
  %474 = getelementptr inbounds double, ptr %330, i64 %339
  %475 = load double, ptr %474, align 8, !tbaa !41
  %476 = getelementptr inbounds nuw i8, ptr %348, i64 24
  store double %475, ptr %476, align 8, !tbaa !41
  %477 = getelementptr inbounds double, ptr %331, i64 %339
  %478 = load double, ptr %477, align 8, !tbaa !41
  %479 = getelementptr inbounds nuw i8, ptr %348, i64 32
  store double %478, ptr %479, align 8, !tbaa !41
  %480 = add nuw nsw i64 %337, 1
  %481 = icmp eq i64 %480, %299
  br i1 %481, label %505, label %336, !llvm.loop !52

482:                                              ; preds = %361, %482
  %483 = phi double [ %497, %482 ], [ %368, %361 ]
  %484 = phi double [ %502, %482 ], [ %360, %361 ]
  %485 = phi i64 [ %495, %482 ], [ 0, %361 ]
  %486 = phi i64 [ %503, %482 ], [ 0, %361 ]
  %487 = or disjoint i64 %485, 1
  %488 = getelementptr <8 x double>, ptr %363, i64 %487
  %489 = load double, ptr %488, align 8, !tbaa !41
  %490 = fsub double %489, %483
  %491 = fmul double %365, %490
  %492 = getelementptr <8 x double>, ptr %367, i64 %485
  %493 = load double, ptr %492, align 8, !tbaa !41
  %494 = tail call double @llvm.fmuladd.f64(double %491, double %493, double %484)
  %495 = add nuw nsw i64 %485, 2
  %496 = getelementptr <8 x double>, ptr %363, i64 %495
  %497 = load double, ptr %496, align 8, !tbaa !41
  %498 = fsub double %497, %489
  %499 = fmul double %365, %498
  %500 = getelementptr <8 x double>, ptr %367, i64 %487
  %501 = load double, ptr %500, align 8, !tbaa !41
  %502 = tail call double @llvm.fmuladd.f64(double %499, double %501, double %494)
  %503 = add i64 %486, 2
  %504 = icmp eq i64 %503, %334
  br i1 %504, label %411, label %482, !llvm.loop !53

505:                                              ; preds = %425, %283
  %506 = load i64, ptr %132, align 8, !tbaa !27
  %507 = load i64, ptr %0, align 8, !tbaa !38
  %508 = icmp slt i64 %506, %507
  br i1 %508, label %510, label %509

509:                                              ; preds = %505
  store i64 0, ptr %110, align 8, !tbaa !30
  store i64 0, ptr %133, align 8, !tbaa !30
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
  store i64 0, ptr %237, align 8, !tbaa !30
  store i64 0, ptr %238, align 8, !tbaa !30
  store i64 0, ptr %239, align 8, !tbaa !30
  store i64 0, ptr %240, align 8, !tbaa !30
  br label %521

510:                                              ; preds = %505
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  %511 = load i64, ptr %110, align 8, !tbaa !30
  %512 = icmp eq i64 %511, 0
  br i1 %512, label %521, label %513

513:                                              ; preds = %510
  %514 = load double, ptr %118, align 8, !tbaa !41
  %515 = fcmp oeq double %514, 0.000000e+00
  br i1 %515, label %521, label %516

516:                                              ; preds = %5828, %5870, %5867, %4013, %4349, %513
  %517 = load i64, ptr %111, align 8, !tbaa !39
  %518 = load i64, ptr %112, align 8, !tbaa !40
  %519 = sub nsw i64 %517, %518
  %520 = icmp slt i64 %519, 16
  br i1 %520, label %5871, label %277, !llvm.loop !54

521:                                              ; preds = %509, %510, %280, %277, %513
  %522 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %523 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %522)
  %524 = icmp eq i64 %523, 0
  br i1 %524, label %5871, label %525

525:                                              ; preds = %521
  %526 = load <8 x i64>, ptr %133, align 64, !tbaa !26
  %527 = and <8 x i64> %526, %522
  %528 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %527)
  %529 = icmp eq i64 %528, 0
  %530 = load i64, ptr %156, align 8, !tbaa !20
  br i1 %529, label %1488, label %531

531:                                              ; preds = %525
  %532 = load <8 x double>, ptr %134, align 64, !tbaa !26
  %533 = load <8 x double>, ptr %135, align 64, !tbaa !26
  %534 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %535 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %536 = fsub <8 x double> %534, %535
  %537 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %533, <8 x double> %536, <8 x double> %532)
  %538 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %539 = fcmp une <8 x double> %538, splat (double 2.000000e+00)
  %540 = select <8 x i1> %539, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %541 = fmul <8 x double> %537, %540
  %542 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %543 = load <8 x double>, ptr %140, align 64, !tbaa !26
  %544 = fcmp olt <8 x double> %542, %543
  %545 = select <8 x i1> %544, <8 x double> %542, <8 x double> %543
  %546 = fcmp olt <8 x double> %545, %541
  %547 = select <8 x i1> %546, <8 x double> %545, <8 x double> %541
  %548 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %549 = fmul <8 x double> %548, splat (double 5.000000e-01)
  %550 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %551 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %552 = fneg <8 x double> %549
  %553 = icmp eq <8 x i64> %551, zeroinitializer
  %554 = select <8 x i1> %553, <8 x double> %552, <8 x double> %549
  %555 = fadd <8 x double> %550, %554
  %556 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %557 = fsub <8 x double> %555, %556
  %558 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %559 = select <8 x i1> %553, <8 x double> zeroinitializer, <8 x double> %558
  %560 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %561 = fsub <8 x double> %559, %560
  %562 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %563 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %564 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %565 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %564, <8 x double> %556, <8 x double> %563)
  %566 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %567 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %562, <8 x double> %565, <8 x double> %566)
  %568 = fdiv <8 x double> %561, %567
  %569 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %570 = fsub <8 x double> %556, %569
  %571 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %572 = fdiv <8 x double> %570, %571
  %573 = fsub <8 x double> %568, %572
  %574 = fdiv <8 x double> %573, %571
  %575 = fdiv <8 x double> %557, %568
  %576 = load <8 x i64>, ptr %152, align 64, !tbaa !26
  %577 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %578 = or <8 x i64> %577, %576
  %579 = icmp eq <8 x i64> %578, zeroinitializer
  %580 = select <8 x i1> %579, <8 x double> %574, <8 x double> zeroinitializer
  %581 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %580, <8 x double> %575, <8 x double> %568)
  %582 = fdiv <8 x double> %557, %581
  %583 = fcmp ule <8 x double> %582, zeroinitializer
  %584 = select <8 x i1> %583, <8 x double> %575, <8 x double> %582
  %585 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %586 = fcmp une <8 x double> %585, zeroinitializer
  %587 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %588 = fcmp une <8 x double> %587, zeroinitializer
  %589 = fcmp ule <8 x double> %558, zeroinitializer
  %590 = or <8 x i1> %589, %586
  %591 = fcmp ule <8 x double> %575, zeroinitializer
  %592 = or <8 x i1> %591, %590
  %593 = or <8 x i1> %588, %592
  %594 = select <8 x i1> %593, <8 x double> splat (double 1.000000e+09), <8 x double> %584
  %595 = icmp sgt i64 %530, 0
  br i1 %595, label %596, label %661

596:                                              ; preds = %531
  %597 = load ptr, ptr %129, align 8, !tbaa !28
  %598 = fmul <8 x double> %571, splat (double 3.000000e+00)
  br label %599

599:                                              ; preds = %596, %599
  %600 = phi <8 x double> [ %594, %596 ], [ %658, %599 ]
  %601 = phi i64 [ 0, %596 ], [ %659, %599 ]
  %602 = getelementptr inbounds nuw %struct.Piece, ptr %597, i64 %601
  %603 = getelementptr inbounds nuw i8, ptr %602, i64 3904
  %604 = load <8 x double>, ptr %603, align 64, !tbaa !26
  %605 = getelementptr inbounds nuw i8, ptr %602, i64 1472
  %606 = load <8 x double>, ptr %605, align 64, !tbaa !26
  %607 = fsub <8 x double> %604, %606
  %608 = getelementptr inbounds nuw i8, ptr %602, i64 832
  %609 = load <8 x double>, ptr %608, align 64, !tbaa !26
  %610 = fmul <8 x double> %607, %609
  %611 = getelementptr inbounds nuw i8, ptr %602, i64 1600
  %612 = load <8 x double>, ptr %611, align 64, !tbaa !26
  %613 = getelementptr inbounds nuw i8, ptr %602, i64 4160
  %614 = load <8 x double>, ptr %613, align 64, !tbaa !26
  %615 = fsub <8 x double> %612, %614
  %616 = getelementptr inbounds nuw i8, ptr %602, i64 8320
  %617 = load <8 x i64>, ptr %616, align 64, !tbaa !26
  %618 = getelementptr inbounds nuw i8, ptr %602, i64 7680
  %619 = load <8 x double>, ptr %618, align 64, !tbaa !26
  %620 = fcmp une <8 x double> %619, splat (double 1.000000e+00)
  %621 = select <8 x i1> %620, <8 x double> %610, <8 x double> %615
  %622 = getelementptr inbounds nuw i8, ptr %602, i64 3968
  %623 = load <8 x double>, ptr %622, align 64, !tbaa !26
  %624 = icmp eq <8 x i64> %617, zeroinitializer
  %625 = select <8 x i1> %624, <8 x double> %623, <8 x double> %621
  %626 = getelementptr inbounds nuw i8, ptr %602, i64 6016
  %627 = load <8 x double>, ptr %626, align 64, !tbaa !26
  %628 = getelementptr inbounds nuw i8, ptr %602, i64 7552
  %629 = load <8 x double>, ptr %628, align 64, !tbaa !26
  %630 = fdiv <8 x double> %629, %571
  %631 = select <8 x i1> %624, <8 x double> %630, <8 x double> zeroinitializer
  %632 = fsub <8 x double> %627, %631
  %633 = fdiv <8 x double> %625, %632
  %634 = getelementptr inbounds nuw i8, ptr %602, i64 4864
  %635 = load <8 x double>, ptr %634, align 64, !tbaa !26
  %636 = fsub <8 x double> %635, %623
  %637 = fdiv <8 x double> %636, %571
  %638 = getelementptr inbounds nuw i8, ptr %602, i64 8384
  %639 = load <8 x i64>, ptr %638, align 64, !tbaa !26
  %640 = or <8 x i64> %639, %617
  %641 = fcmp ule <8 x double> %633, %598
  %642 = fsub <8 x double> %632, %637
  %643 = icmp eq <8 x i64> %640, zeroinitializer
  %644 = select <8 x i1> %641, <8 x i1> %643, <8 x i1> zeroinitializer
  %645 = select <8 x i1> %644, <8 x double> %642, <8 x double> zeroinitializer
  %646 = fdiv <8 x double> %633, %571
  %647 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %645, <8 x double> %646, <8 x double> %632)
  %648 = fdiv <8 x double> %625, %647
  %649 = fcmp ule <8 x double> %648, zeroinitializer
  %650 = select <8 x i1> %649, <8 x double> %633, <8 x double> %648
  %651 = fcmp ule <8 x double> %625, zeroinitializer
  %652 = fcmp ule <8 x double> %632, zeroinitializer
  %653 = or <8 x i1> %651, %652
  %654 = fcmp ogt <8 x double> %650, splat (double 1.000000e-03)
  %655 = select <8 x i1> %654, <8 x double> %650, <8 x double> splat (double 1.000000e-03)
  %656 = select <8 x i1> %653, <8 x double> splat (double 1.000000e+09), <8 x double> %655
  %657 = fcmp olt <8 x double> %600, %656
  %658 = select <8 x i1> %657, <8 x double> %600, <8 x double> %656
  %659 = add nuw nsw i64 %601, 1
  %660 = icmp eq i64 %659, %530
  br i1 %660, label %661, label %599, !llvm.loop !55

661:                                              ; preds = %599, %531
  %662 = phi <8 x double> [ %594, %531 ], [ %658, %599 ]
  %663 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %662)
  %664 = insertelement <8 x double> poison, double %663, i64 0
  %665 = shufflevector <8 x double> %664, <8 x double> poison, <8 x i32> zeroinitializer
  %666 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %667 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %668 = fadd <8 x double> %666, %667
  %669 = fsub <8 x double> %668, %534
  %670 = fmul <8 x double> %665, splat (double 1.050000e+00)
  %671 = fcmp ugt <8 x double> %669, %670
  %672 = select <8 x i1> %671, <8 x double> %665, <8 x double> %669
  %673 = fmul <8 x double> %547, splat (double 0x3FF000010C6F7A0B)
  %674 = fcmp ole <8 x double> %672, %673
  %675 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %676 = fcmp ogt <8 x double> %675, %547
  %677 = select <8 x i1> %676, <8 x double> %675, <8 x double> %547
  %678 = icmp ne <8 x i64> %527, zeroinitializer
  %679 = select <8 x i1> %674, <8 x i1> %678, <8 x i1> zeroinitializer
  %680 = select <8 x i1> %679, <8 x double> %677, <8 x double> %675
  store <8 x double> %680, ptr %159, align 64, !tbaa !26
  %681 = fmul <8 x double> %547, splat (double 2.000000e+00)
  %682 = fcmp uge <8 x double> %672, %681
  %683 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %684 = fcmp une <8 x double> %683, zeroinitializer
  %685 = or <8 x i1> %684, %682
  %686 = fmul <8 x double> %672, splat (double 5.000000e-01)
  %687 = select <8 x i1> %685, <8 x double> %547, <8 x double> %686
  %688 = select <8 x i1> %674, <8 x double> %672, <8 x double> %687
  %689 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %690 = icmp eq <8 x i64> %527, zeroinitializer
  %691 = select <8 x i1> %690, <8 x double> %689, <8 x double> %688
  store <8 x double> %691, ptr %160, align 64, !tbaa !26
  %692 = fdiv <8 x double> %691, %571
  %693 = fdiv <8 x double> splat (double 1.000000e+00), %691
  %694 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %692, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %695 = fadd <8 x double> %692, splat (double 1.000000e+00)
  %696 = fdiv <8 x double> %694, %695
  %697 = fmul <8 x double> %693, %696
  %698 = icmp eq <8 x i64> %576, zeroinitializer
  %699 = select <8 x i1> %698, <8 x double> %697, <8 x double> %693
  %700 = fneg <8 x double> %693
  %701 = fneg <8 x double> %695
  %702 = fmul <8 x double> %693, %701
  %703 = select <8 x i1> %698, <8 x double> %702, <8 x double> %700
  %704 = fmul <8 x double> %692, %692
  %705 = fdiv <8 x double> %704, %695
  %706 = fmul <8 x double> %693, %705
  %707 = select <8 x i1> %698, <8 x double> %706, <8 x double> zeroinitializer
  %708 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %709 = select <8 x i1> %690, <8 x double> %708, <8 x double> %699
  store <8 x double> %709, ptr %162, align 64, !tbaa !26
  %710 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %711 = select <8 x i1> %690, <8 x double> %710, <8 x double> %703
  store <8 x double> %711, ptr %163, align 64, !tbaa !26
  %712 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %713 = select <8 x i1> %690, <8 x double> %712, <8 x double> %707
  store <8 x double> %713, ptr %164, align 64, !tbaa !26
  %714 = select <8 x i1> %698, <8 x double> %692, <8 x double> zeroinitializer
  %715 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %714, <8 x double> %570, <8 x double> %556)
  %716 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %717 = select <8 x i1> %690, <8 x double> %716, <8 x double> %715
  %718 = load <8 x double>, ptr %242, align 64, !tbaa !26
  %719 = load <8 x double>, ptr %243, align 64, !tbaa !26
  %720 = fsub <8 x double> %718, %719
  %721 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %714, <8 x double> %720, <8 x double> %718)
  %722 = load <8 x double>, ptr %241, align 64, !tbaa !26
  %723 = select <8 x i1> %690, <8 x double> %722, <8 x double> %721
  store <8 x double> %723, ptr %241, align 64, !tbaa !26
  %724 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %725 = load <8 x double>, ptr %246, align 64, !tbaa !26
  %726 = fsub <8 x double> %724, %725
  %727 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %714, <8 x double> %726, <8 x double> %724)
  %728 = load <8 x double>, ptr %244, align 64, !tbaa !26
  %729 = select <8 x i1> %690, <8 x double> %728, <8 x double> %727
  store <8 x double> %729, ptr %244, align 64, !tbaa !26
  %730 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %731 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %732 = fsub <8 x double> %730, %731
  %733 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %714, <8 x double> %732, <8 x double> %730)
  %734 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %735 = select <8 x i1> %690, <8 x double> %734, <8 x double> %733
  store <8 x double> %735, ptr %247, align 64, !tbaa !26
  %736 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %737 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %738 = fsub <8 x double> %736, %737
  %739 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %714, <8 x double> %738, <8 x double> %736)
  %740 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %741 = select <8 x i1> %690, <8 x double> %740, <8 x double> %739
  store <8 x double> %741, ptr %250, align 64, !tbaa !26
  %742 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %743 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %744 = fsub <8 x double> %742, %743
  %745 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %714, <8 x double> %744, <8 x double> %742)
  %746 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %747 = select <8 x i1> %690, <8 x double> %746, <8 x double> %745
  store <8 x double> %747, ptr %253, align 64, !tbaa !26
  %748 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %749 = icmp eq <8 x i64> %748, zeroinitializer
  %750 = select <8 x i1> %749, <8 x double> zeroinitializer, <8 x double> %558
  %751 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %752 = fsub <8 x double> %750, %751
  %753 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %754 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %564, <8 x double> %753, <8 x double> %563)
  %755 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %562, <8 x double> %754, <8 x double> %566)
  %756 = fdiv <8 x double> %752, %755
  %757 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %758 = load <8 x i64>, ptr %152, align 64, !tbaa !26
  %759 = or <8 x i64> %758, %757
  %760 = and <8 x i64> %759, %527
  %761 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %691, <8 x double> %756, <8 x double> %753)
  %762 = icmp eq <8 x i64> %760, zeroinitializer
  %763 = select <8 x i1> %588, <8 x i1> splat (i1 true), <8 x i1> %762
  %764 = select <8 x i1> %763, <8 x double> %717, <8 x double> %761
  store <8 x double> %764, ptr %165, align 64, !tbaa !26
  %765 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %766 = select <8 x i1> %690, <8 x double> %765, <8 x double> %752
  store <8 x double> %766, ptr %166, align 64, !tbaa !26
  %767 = xor <8 x i64> %758, splat (i64 -1)
  %768 = and <8 x i64> %757, %767
  store <8 x i64> %768, ptr %153, align 64, !tbaa !26
  %769 = load i64, ptr %156, align 8, !tbaa !20
  %770 = icmp sgt i64 %769, 0
  br i1 %770, label %771, label %1398

771:                                              ; preds = %661
  %772 = xor <8 x i64> %527, splat (i64 -1)
  br label %773

773:                                              ; preds = %771, %1366
  %774 = phi i64 [ 0, %771 ], [ %1382, %1366 ]
  %775 = load ptr, ptr %129, align 8, !tbaa !28
  %776 = getelementptr inbounds nuw %struct.Piece, ptr %775, i64 %774
  %777 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %778 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %779 = getelementptr inbounds nuw i8, ptr %776, i64 8384
  %780 = load <8 x i64>, ptr %779, align 64, !tbaa !26
  %781 = fdiv <8 x double> %777, %778
  %782 = fdiv <8 x double> splat (double 1.000000e+00), %777
  %783 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %781, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %784 = fadd <8 x double> %781, splat (double 1.000000e+00)
  %785 = fdiv <8 x double> %783, %784
  %786 = fmul <8 x double> %782, %785
  %787 = icmp eq <8 x i64> %780, zeroinitializer
  %788 = select <8 x i1> %787, <8 x double> %786, <8 x double> %782
  %789 = fneg <8 x double> %782
  %790 = fneg <8 x double> %784
  %791 = fmul <8 x double> %782, %790
  %792 = select <8 x i1> %787, <8 x double> %791, <8 x double> %789
  %793 = fmul <8 x double> %781, %781
  %794 = fdiv <8 x double> %793, %784
  %795 = fmul <8 x double> %782, %794
  %796 = select <8 x i1> %787, <8 x double> %795, <8 x double> zeroinitializer
  %797 = getelementptr inbounds nuw i8, ptr %776, i64 5632
  %798 = load <8 x double>, ptr %797, align 64, !tbaa !26
  %799 = select <8 x i1> %690, <8 x double> %798, <8 x double> %788
  store <8 x double> %799, ptr %797, align 64, !tbaa !26
  %800 = getelementptr inbounds nuw i8, ptr %776, i64 5696
  %801 = load <8 x double>, ptr %800, align 64, !tbaa !26
  %802 = select <8 x i1> %690, <8 x double> %801, <8 x double> %792
  store <8 x double> %802, ptr %800, align 64, !tbaa !26
  %803 = getelementptr inbounds nuw i8, ptr %776, i64 5760
  %804 = load <8 x double>, ptr %803, align 64, !tbaa !26
  %805 = select <8 x i1> %690, <8 x double> %804, <8 x double> %796
  store <8 x double> %805, ptr %803, align 64, !tbaa !26
  %806 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %807 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %808 = fdiv <8 x double> %806, %807
  %809 = select <8 x i1> %787, <8 x double> %808, <8 x double> zeroinitializer
  %810 = getelementptr inbounds nuw i8, ptr %776, i64 2944
  %811 = getelementptr inbounds nuw i8, ptr %776, i64 3840
  %812 = getelementptr inbounds nuw i8, ptr %776, i64 4736
  br label %1385

813:                                              ; preds = %1385
  %814 = getelementptr inbounds nuw i8, ptr %776, i64 6080
  %815 = getelementptr inbounds nuw i8, ptr %776, i64 3520
  %816 = load <8 x double>, ptr %815, align 64, !tbaa !26
  %817 = fcmp ogt <8 x double> %816, zeroinitializer
  %818 = select <8 x i1> %817, <8 x double> %816, <8 x double> zeroinitializer
  %819 = load <8 x double>, ptr %814, align 64, !tbaa !26
  %820 = select <8 x i1> %690, <8 x double> %819, <8 x double> %818
  store <8 x double> %820, ptr %814, align 64, !tbaa !26
  %821 = getelementptr inbounds nuw i8, ptr %776, i64 384
  %822 = load <8 x double>, ptr %821, align 64, !tbaa !26
  %823 = getelementptr inbounds nuw i8, ptr %776, i64 448
  %824 = load <8 x double>, ptr %823, align 64, !tbaa !26
  %825 = getelementptr inbounds nuw i8, ptr %776, i64 512
  %826 = load <8 x double>, ptr %825, align 64, !tbaa !26
  %827 = getelementptr inbounds nuw i8, ptr %776, i64 640
  %828 = load <8 x double>, ptr %827, align 64, !tbaa !26
  %829 = getelementptr inbounds nuw i8, ptr %776, i64 768
  %830 = load <8 x double>, ptr %829, align 64, !tbaa !26
  %831 = getelementptr inbounds nuw i8, ptr %776, i64 832
  %832 = getelementptr inbounds nuw i8, ptr %776, i64 1536
  %833 = load <8 x double>, ptr %832, align 64, !tbaa !26
  %834 = getelementptr inbounds nuw i8, ptr %776, i64 1600
  %835 = getelementptr inbounds nuw i8, ptr %776, i64 4672
  %836 = load <8 x double>, ptr %835, align 64, !tbaa !26
  %837 = fsub <8 x double> %836, %833
  %838 = getelementptr inbounds nuw i8, ptr %776, i64 5568
  %839 = load <8 x double>, ptr %838, align 64, !tbaa !26
  %840 = fsub <8 x double> %839, %833
  %841 = load <8 x double>, ptr %800, align 64, !tbaa !26
  %842 = load <8 x double>, ptr %803, align 64, !tbaa !26
  %843 = fmul <8 x double> %837, %841
  %844 = fmul <8 x double> %840, %842
  %845 = fmul <8 x double> %833, %841
  %846 = fmul <8 x double> %828, %845
  %847 = fmul <8 x double> %833, %842
  %848 = fmul <8 x double> %828, %847
  %849 = getelementptr inbounds nuw i8, ptr %776, i64 8528
  %850 = load ptr, ptr %849, align 16, !tbaa !45
  %851 = getelementptr inbounds nuw i8, ptr %776, i64 8536
  %852 = load ptr, ptr %851, align 8, !tbaa !56
  %853 = getelementptr inbounds nuw i8, ptr %776, i64 8616
  %854 = load ptr, ptr %853, align 8, !tbaa !47
  %855 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %856 = and <8 x i64> %855, %772
  %857 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %856)
  %858 = icmp eq i64 %857, 0
  %859 = getelementptr inbounds nuw i8, ptr %776, i64 8520
  %860 = load ptr, ptr %859, align 8, !tbaa !57
  %861 = getelementptr inbounds nuw i8, ptr %776, i64 8544
  %862 = load ptr, ptr %861, align 32, !tbaa !58
  %863 = load i64, ptr %119, align 16, !tbaa !21
  %864 = icmp sgt i64 %863, 0
  br i1 %864, label %865, label %867

865:                                              ; preds = %813
  %866 = getelementptr inbounds nuw i8, ptr %776, i64 8512
  br label %880

867:                                              ; preds = %915, %813
  %868 = fmul <8 x double> %830, %841
  %869 = fmul <8 x double> %830, %842
  %870 = getelementptr inbounds nuw i8, ptr %776, i64 8696
  %871 = load ptr, ptr %870, align 8, !tbaa !48
  %872 = getelementptr inbounds nuw i8, ptr %776, i64 8704
  %873 = load ptr, ptr %872, align 64, !tbaa !59
  %874 = load i64, ptr %120, align 8, !tbaa !22
  %875 = icmp sgt i64 %874, 0
  br i1 %875, label %876, label %949

876:                                              ; preds = %867
  %877 = getelementptr inbounds nuw i8, ptr %776, i64 8648
  %878 = getelementptr inbounds nuw i8, ptr %776, i64 8656
  %879 = getelementptr inbounds nuw i8, ptr %776, i64 8664
  br label %922

880:                                              ; preds = %865, %915
  %881 = phi i64 [ 0, %865 ], [ %919, %915 ]
  %882 = getelementptr inbounds nuw <8 x double>, ptr %850, i64 %881
  %883 = load <8 x double>, ptr %882, align 64, !tbaa !26
  %884 = getelementptr inbounds nuw <8 x double>, ptr %852, i64 %881
  %885 = load <8 x double>, ptr %884, align 64, !tbaa !26
  %886 = fsub <8 x double> %883, %885
  %887 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %809, <8 x double> %886, <8 x double> %883)
  br i1 %858, label %892, label %888

888:                                              ; preds = %880
  %889 = getelementptr inbounds nuw <8 x double>, ptr %860, i64 %881
  %890 = load <8 x double>, ptr %889, align 64, !tbaa !26
  %891 = select <8 x i1> %690, <8 x double> %890, <8 x double> %887
  br label %892

892:                                              ; preds = %888, %880
  %893 = phi <8 x double> [ %891, %888 ], [ %887, %880 ]
  %894 = getelementptr inbounds nuw <8 x double>, ptr %860, i64 %881
  store <8 x double> %893, ptr %894, align 64, !tbaa !26
  %895 = load i64, ptr %866, align 64, !tbaa !31
  %896 = icmp slt i64 %881, %895
  %897 = getelementptr inbounds nuw <8 x double>, ptr %854, i64 %881
  %898 = load <8 x double>, ptr %897, align 64, !tbaa !26
  br i1 %896, label %899, label %902

899:                                              ; preds = %892
  %900 = fmul <8 x double> %848, %885
  %901 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %846, <8 x double> %883, <8 x double> %900)
  br label %915

902:                                              ; preds = %892
  %903 = fmul <8 x double> %826, %883
  %904 = fmul <8 x double> %903, splat (double 0x3FD5555555555555)
  %905 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %824, <8 x double> splat (double 5.000000e-01), <8 x double> %904)
  %906 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %883, <8 x double> %905, <8 x double> %822)
  %907 = fmul <8 x double> %883, %906
  %908 = fmul <8 x double> %826, %885
  %909 = fmul <8 x double> %908, splat (double 0x3FD5555555555555)
  %910 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %824, <8 x double> splat (double 5.000000e-01), <8 x double> %909)
  %911 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %885, <8 x double> %910, <8 x double> %822)
  %912 = fmul <8 x double> %885, %911
  %913 = fmul <8 x double> %844, %912
  %914 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %843, <8 x double> %907, <8 x double> %913)
  br label %915

915:                                              ; preds = %902, %899
  %916 = phi <8 x double> [ %914, %902 ], [ %901, %899 ]
  %917 = fmul <8 x double> %916, %898
  %918 = getelementptr inbounds nuw <8 x double>, ptr %862, i64 %881
  store <8 x double> %917, ptr %918, align 64, !tbaa !26
  %919 = add nuw nsw i64 %881, 1
  %920 = load i64, ptr %119, align 16, !tbaa !21
  %921 = icmp slt i64 %919, %920
  br i1 %921, label %880, label %867, !llvm.loop !60

922:                                              ; preds = %876, %922
  %923 = phi i64 [ 0, %876 ], [ %924, %922 ]
  %924 = add nuw nsw i64 %923, 1
  %925 = getelementptr inbounds nuw <8 x double>, ptr %871, i64 %924
  %926 = load <8 x double>, ptr %925, align 64, !tbaa !26
  %927 = getelementptr inbounds nuw <8 x double>, ptr %871, i64 %923
  %928 = load <8 x double>, ptr %927, align 64, !tbaa !26
  %929 = fsub <8 x double> %926, %928
  %930 = load ptr, ptr %877, align 8, !tbaa !49
  %931 = getelementptr inbounds nuw <8 x double>, ptr %930, i64 %923
  %932 = load <8 x double>, ptr %931, align 64, !tbaa !26
  %933 = fmul <8 x double> %929, %932
  %934 = getelementptr inbounds nuw <8 x double>, ptr %873, i64 %924
  %935 = load <8 x double>, ptr %934, align 64, !tbaa !26
  %936 = getelementptr inbounds nuw <8 x double>, ptr %873, i64 %923
  %937 = load <8 x double>, ptr %936, align 64, !tbaa !26
  %938 = fsub <8 x double> %935, %937
  %939 = load ptr, ptr %878, align 16, !tbaa !61
  %940 = getelementptr inbounds nuw <8 x double>, ptr %939, i64 %923
  %941 = load <8 x double>, ptr %940, align 64, !tbaa !26
  %942 = fmul <8 x double> %938, %941
  %943 = fmul <8 x double> %869, %942
  %944 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %868, <8 x double> %933, <8 x double> %943)
  %945 = load ptr, ptr %879, align 8, !tbaa !62
  %946 = getelementptr inbounds nuw <8 x double>, ptr %945, i64 %923
  store <8 x double> %944, ptr %946, align 64, !tbaa !26
  %947 = load i64, ptr %120, align 8, !tbaa !22
  %948 = icmp slt i64 %924, %947
  br i1 %948, label %922, label %949, !llvm.loop !63

949:                                              ; preds = %922, %867
  %950 = getelementptr inbounds nuw i8, ptr %776, i64 1664
  %951 = load <8 x double>, ptr %950, align 64, !tbaa !26
  %952 = fcmp ogt <8 x double> %951, zeroinitializer
  %953 = bitcast <8 x i1> %952 to i8
  %954 = icmp eq i8 %953, 0
  br i1 %954, label %955, label %960

955:                                              ; preds = %949
  %956 = getelementptr inbounds nuw i8, ptr %776, i64 7552
  %957 = load <8 x double>, ptr %956, align 64, !tbaa !26
  %958 = select <8 x i1> %690, <8 x double> %957, <8 x double> zeroinitializer
  store <8 x double> %958, ptr %956, align 64, !tbaa !26
  %959 = load <8 x double>, ptr %831, align 64, !tbaa !26, !noalias !64
  br label %1069

960:                                              ; preds = %949
  %961 = load <8 x double>, ptr %832, align 64, !tbaa !26
  %962 = getelementptr inbounds nuw i8, ptr %776, i64 1728
  %963 = load <8 x double>, ptr %962, align 64, !tbaa !26
  %964 = getelementptr inbounds nuw i8, ptr %776, i64 1856
  %965 = load <8 x double>, ptr %964, align 64, !tbaa !26
  %966 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %967 = fneg <8 x double> %966
  %968 = fdiv <8 x double> %967, %963
  %969 = fcmp ogt <8 x double> %968, splat (double -7.000000e+02)
  %970 = select <8 x i1> %969, <8 x double> %968, <8 x double> splat (double -7.000000e+02)
  %971 = fcmp olt <8 x double> %970, splat (double 7.000000e+02)
  %972 = select <8 x i1> %971, <8 x double> %970, <8 x double> splat (double 7.000000e+02)
  %973 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %972, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %974 = fadd <8 x double> %973, splat (double 0xC338000000000000)
  %975 = fneg <8 x double> %974
  %976 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %975, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %972)
  %977 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %975, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %976)
  %978 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %977, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %979 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %978, <8 x double> %977, <8 x double> splat (double 0x3E5AE64567F544E4))
  %980 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %979, <8 x double> %977, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %981 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %980, <8 x double> %977, <8 x double> splat (double 0x3EC71DE3A556C734))
  %982 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %981, <8 x double> %977, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %983 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %982, <8 x double> %977, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %984 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %983, <8 x double> %977, <8 x double> splat (double 0x3F56C16C16C16C17))
  %985 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %984, <8 x double> %977, <8 x double> splat (double 0x3F81111111111111))
  %986 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %985, <8 x double> %977, <8 x double> splat (double 0x3FA5555555555555))
  %987 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %986, <8 x double> %977, <8 x double> splat (double 0x3FC5555555555555))
  %988 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %987, <8 x double> %977, <8 x double> splat (double 5.000000e-01))
  %989 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %988, <8 x double> %977, <8 x double> splat (double 1.000000e+00))
  %990 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %989, <8 x double> %977, <8 x double> splat (double 1.000000e+00))
  %991 = bitcast <8 x double> %973 to <8 x i64>
  %992 = shl <8 x i64> %991, splat (i64 52)
  %993 = bitcast <8 x double> %990 to <8 x i64>
  %994 = add <8 x i64> %992, %993
  %995 = bitcast <8 x i64> %994 to <8 x double>
  %996 = fsub <8 x double> splat (double 1.000000e+00), %995
  %997 = load <8 x double>, ptr %835, align 64, !tbaa !26
  %998 = fsub <8 x double> %997, %961
  %999 = load ptr, ptr %859, align 8, !tbaa !57
  %1000 = load ptr, ptr %849, align 16, !tbaa !45
  %1001 = getelementptr inbounds nuw i8, ptr %776, i64 8560
  %1002 = load ptr, ptr %1001, align 16, !tbaa !46
  %1003 = load ptr, ptr %853, align 8, !tbaa !47
  %1004 = getelementptr inbounds nuw i8, ptr %776, i64 8552
  %1005 = load ptr, ptr %1004, align 8, !tbaa !67
  %1006 = getelementptr inbounds nuw i8, ptr %776, i64 8512
  %1007 = load i64, ptr %1006, align 64, !tbaa !31
  %1008 = load i64, ptr %119, align 16, !tbaa !21
  %1009 = icmp slt i64 %1007, %1008
  br i1 %1009, label %1010, label %1014

1010:                                             ; preds = %960
  %1011 = getelementptr inbounds nuw i8, ptr %776, i64 1792
  %1012 = load <8 x double>, ptr %1011, align 64, !tbaa !26
  %1013 = fneg <8 x double> %1012
  br label %1026

1014:                                             ; preds = %1026, %960
  %1015 = phi <8 x double> [ zeroinitializer, %960 ], [ %1057, %1026 ]
  %1016 = phi <8 x double> [ zeroinitializer, %960 ], [ %1065, %1026 ]
  %1017 = getelementptr inbounds nuw i8, ptr %776, i64 3904
  %1018 = load <8 x double>, ptr %1017, align 64, !tbaa !26
  %1019 = fsub <8 x double> %1018, %997
  %1020 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1015, <8 x double> %1019, <8 x double> %1016)
  %1021 = getelementptr inbounds nuw i8, ptr %776, i64 7552
  %1022 = load <8 x double>, ptr %831, align 64, !tbaa !26
  %1023 = fmul <8 x double> %1022, %1020
  %1024 = load <8 x double>, ptr %1021, align 64, !tbaa !26
  %1025 = select <8 x i1> %690, <8 x double> %1024, <8 x double> %1023
  store <8 x double> %1025, ptr %1021, align 64, !tbaa !26
  br label %1069

1026:                                             ; preds = %1010, %1026
  %1027 = phi <8 x double> [ zeroinitializer, %1010 ], [ %1065, %1026 ]
  %1028 = phi i64 [ %1007, %1010 ], [ %1066, %1026 ]
  %1029 = getelementptr inbounds <8 x double>, ptr %1000, i64 %1028
  %1030 = load <8 x double>, ptr %1029, align 64, !tbaa !26
  %1031 = getelementptr inbounds <8 x double>, ptr %999, i64 %1028
  %1032 = load <8 x double>, ptr %1031, align 64, !tbaa !26
  %1033 = fadd <8 x double> %1030, %1032
  %1034 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1033, <8 x double> splat (double 5.000000e-01), <8 x double> %1013)
  %1035 = fmul <8 x double> %965, %1034
  %1036 = fcmp ogt <8 x double> %1035, splat (double -5.000000e+00)
  %1037 = select <8 x i1> %1036, <8 x double> %1035, <8 x double> splat (double -5.000000e+00)
  %1038 = fcmp olt <8 x double> %1037, splat (double 5.000000e+00)
  %1039 = select <8 x i1> %1038, <8 x double> %1037, <8 x double> splat (double 5.000000e+00)
  %1040 = fmul <8 x double> %1039, %1039
  %1041 = fadd <8 x double> %1040, splat (double 3.780000e+02)
  %1042 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1040, <8 x double> %1041, <8 x double> splat (double 1.732500e+04))
  %1043 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1040, <8 x double> %1042, <8 x double> splat (double 1.351350e+05))
  %1044 = fmul <8 x double> %1039, %1043
  %1045 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1040, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1046 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1040, <8 x double> %1045, <8 x double> splat (double 6.237000e+04))
  %1047 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1040, <8 x double> %1046, <8 x double> splat (double 1.351350e+05))
  %1048 = fdiv <8 x double> %1044, %1047
  %1049 = fadd <8 x double> %1048, splat (double 1.000000e+00)
  %1050 = fmul <8 x double> %951, %1049
  %1051 = getelementptr inbounds <8 x double>, ptr %1002, i64 %1028
  %1052 = load <8 x double>, ptr %1051, align 64, !tbaa !26
  %1053 = fadd <8 x double> %1052, splat (double -1.000000e+00)
  %1054 = fadd <8 x double> %1053, %1050
  %1055 = fcmp ogt <8 x double> %1054, zeroinitializer
  %1056 = select <8 x i1> %1055, <8 x double> %1054, <8 x double> zeroinitializer
  %1057 = fmul <8 x double> %996, %1056
  %1058 = fsub <8 x double> %1052, %1057
  %1059 = getelementptr inbounds <8 x double>, ptr %1005, i64 %1028
  %1060 = load <8 x double>, ptr %1059, align 64, !tbaa !26
  %1061 = select <8 x i1> %690, <8 x double> %1060, <8 x double> %1058
  store <8 x double> %1061, ptr %1059, align 64, !tbaa !26
  %1062 = getelementptr inbounds <8 x double>, ptr %1003, i64 %1028
  %1063 = load <8 x double>, ptr %1062, align 64, !tbaa !26
  %1064 = fmul <8 x double> %998, %1063
  %1065 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1057, <8 x double> %1064, <8 x double> %1027)
  %1066 = add nsw i64 %1028, 1
  %1067 = load i64, ptr %119, align 16, !tbaa !21
  %1068 = icmp slt i64 %1066, %1067
  br i1 %1068, label %1026, label %1014, !llvm.loop !68

1069:                                             ; preds = %955, %1014
  %1070 = phi <8 x double> [ %958, %955 ], [ %1025, %1014 ]
  %1071 = phi <8 x double> [ %959, %955 ], [ %1022, %1014 ]
  %1072 = load <8 x double>, ptr %810, align 64, !tbaa !26
  %1073 = load <8 x double>, ptr %811, align 64, !tbaa !26
  %1074 = fcmp olt <8 x double> %1072, %1073
  %1075 = select <8 x i1> %1074, <8 x double> %1072, <8 x double> %1073
  %1076 = load <8 x double>, ptr %776, align 64, !tbaa !26
  %1077 = fmul <8 x double> %1076, splat (double 3.000000e-01)
  %1078 = fcmp ogt <8 x double> %1075, %1077
  %1079 = select <8 x i1> %1078, <8 x double> %1075, <8 x double> %1077
  %1080 = select <8 x i1> %690, <8 x double> %1072, <8 x double> %1079
  store <8 x double> %1080, ptr %810, align 64, !tbaa !26
  %1081 = getelementptr inbounds nuw i8, ptr %776, i64 3072
  %1082 = load <8 x double>, ptr %1081, align 64, !tbaa !26, !noalias !64
  %1083 = getelementptr inbounds nuw i8, ptr %776, i64 7744
  %1084 = load <8 x double>, ptr %1083, align 64, !tbaa !26, !noalias !64
  %1085 = fmul <8 x double> %1082, %1084
  %1086 = fcmp ogt <8 x double> %1085, zeroinitializer
  %1087 = select <8 x i1> %1086, <8 x double> %1085, <8 x double> zeroinitializer
  %1088 = fcmp uge <8 x double> %1087, splat (double 1.000000e+00)
  %1089 = select <8 x i1> %1088, <8 x double> splat (double 1.000000e+00), <8 x double> %1087
  %1090 = getelementptr inbounds nuw i8, ptr %776, i64 8448
  %1091 = load <8 x i64>, ptr %1090, align 64, !tbaa !26, !noalias !64
  %1092 = load <8 x double>, ptr %167, align 64, !tbaa !26, !noalias !64
  %1093 = getelementptr inbounds nuw i8, ptr %776, i64 3200
  %1094 = load <8 x double>, ptr %1093, align 64, !tbaa !26, !noalias !64
  %1095 = icmp eq <8 x i64> %1091, zeroinitializer
  %1096 = select <8 x i1> %1095, <8 x double> %1094, <8 x double> %1092
  %1097 = getelementptr inbounds nuw i8, ptr %776, i64 3584
  %1098 = load <8 x double>, ptr %1097, align 64, !tbaa !26, !noalias !64
  %1099 = fsub <8 x double> splat (double 1.000000e+00), %1089
  %1100 = getelementptr inbounds nuw i8, ptr %776, i64 1984
  %1101 = load <8 x double>, ptr %1100, align 64, !tbaa !26, !noalias !64
  %1102 = getelementptr inbounds nuw i8, ptr %776, i64 8320
  %1103 = load <8 x i64>, ptr %1102, align 64, !tbaa !26, !noalias !64
  %1104 = fsub <8 x double> %1076, %1080
  %1105 = getelementptr inbounds nuw i8, ptr %776, i64 7808
  %1106 = load <8 x double>, ptr %1105, align 64, !tbaa !26, !noalias !64
  %1107 = fmul <8 x double> %1104, %1106
  %1108 = icmp eq <8 x i64> %1103, zeroinitializer
  %1109 = select <8 x i1> %1108, <8 x double> zeroinitializer, <8 x double> %1107
  %1110 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1099, <8 x double> %1101, <8 x double> %1109)
  %1111 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1098, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1112 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1098, <8 x double> %1111, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1113 = fdiv <8 x double> splat (double 1.000000e+00), %1112
  %1114 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1096, <8 x double> %1110, <8 x double> splat (double 1.000000e+00))
  %1115 = fdiv <8 x double> splat (double 1.000000e+00), %1114
  %1116 = load <8 x double>, ptr %168, align 64, !tbaa !26, !noalias !64
  %1117 = load <8 x double>, ptr %165, align 64, !tbaa !26, !noalias !64
  %1118 = select <8 x i1> %1095, <8 x double> %1117, <8 x double> %1116
  %1119 = fsub <8 x double> %1118, %1098
  %1120 = fmul <8 x double> %1119, %1115
  %1121 = fmul <8 x double> %1096, %1120
  %1122 = load <8 x double>, ptr %797, align 64, !tbaa !26, !noalias !64
  %1123 = getelementptr inbounds nuw i8, ptr %776, i64 3264
  %1124 = load <8 x double>, ptr %1123, align 64, !tbaa !26, !noalias !64
  %1125 = load <8 x double>, ptr %800, align 64, !tbaa !26, !noalias !64
  %1126 = getelementptr inbounds nuw i8, ptr %776, i64 4160
  %1127 = load <8 x double>, ptr %1126, align 64, !tbaa !26, !noalias !64
  %1128 = fmul <8 x double> %1125, %1127
  %1129 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1122, <8 x double> %1124, <8 x double> %1128)
  %1130 = load <8 x double>, ptr %803, align 64, !tbaa !26, !noalias !64
  %1131 = getelementptr inbounds nuw i8, ptr %776, i64 5056
  %1132 = load <8 x double>, ptr %1131, align 64, !tbaa !26, !noalias !64
  %1133 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1130, <8 x double> %1132, <8 x double> %1129)
  %1134 = fdiv <8 x double> %1106, %1071
  %1135 = fcmp ule <8 x double> %1089, zeroinitializer
  %1136 = or <8 x i1> %1088, %1135
  %1137 = fmul <8 x double> %1084, %1101
  %1138 = select <8 x i1> %1136, <8 x double> zeroinitializer, <8 x double> %1137
  %1139 = select <8 x i1> %1108, <8 x double> %1138, <8 x double> %1134
  %1140 = fmul <8 x double> %1096, %1121
  %1141 = fmul <8 x double> %1115, %1140
  %1142 = fmul <8 x double> %1113, %1141
  %1143 = fmul <8 x double> %1142, %1139
  %1144 = fdiv <8 x double> %1143, %1122
  %1145 = fadd <8 x double> %1144, splat (double 1.000000e+00)
  %1146 = fdiv <8 x double> splat (double 1.000000e+00), %1145
  %1147 = getelementptr inbounds nuw i8, ptr %776, i64 3456
  %1148 = load <8 x double>, ptr %1147, align 64, !tbaa !26, !noalias !64
  %1149 = fsub <8 x double> %1121, %1148
  %1150 = load <8 x double>, ptr %814, align 64, !tbaa !26, !noalias !64
  %1151 = fsub <8 x double> %1133, %1150
  %1152 = fmul <8 x double> %1151, %1144
  %1153 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1149, <8 x double> %1113, <8 x double> %1152)
  %1154 = fmul <8 x double> %1153, %1146
  %1155 = getelementptr inbounds nuw i8, ptr %776, i64 6016
  %1156 = load <8 x double>, ptr %1155, align 64, !tbaa !26, !noalias !64
  %1157 = fcmp ule <8 x double> %1156, zeroinitializer
  %1158 = fcmp ule <8 x double> %1154, zeroinitializer
  %1159 = or <8 x i1> %1157, %1158
  %1160 = select <8 x i1> %1159, <8 x double> zeroinitializer, <8 x double> %1154
  %1161 = getelementptr inbounds nuw i8, ptr %776, i64 2176
  %1162 = load <8 x double>, ptr %1161, align 64, !tbaa !26, !noalias !64
  %1163 = fcmp ogt <8 x double> %1162, zeroinitializer
  %1164 = getelementptr inbounds nuw i8, ptr %776, i64 1024
  %1165 = load <8 x double>, ptr %1164, align 64, !tbaa !26, !noalias !64
  %1166 = bitcast <8 x i1> %1163 to i8
  %1167 = icmp eq i8 %1166, 0
  br i1 %1167, label %1180, label %1168

1168:                                             ; preds = %1069
  %1169 = getelementptr inbounds nuw i8, ptr %776, i64 3648
  %1170 = load <8 x double>, ptr %1169, align 64, !tbaa !26, !noalias !64
  %1171 = fadd <8 x double> %1120, %1170
  %1172 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1171)
  %1173 = fcmp ogt <8 x double> %1162, splat (double 1.000000e-09)
  %1174 = select <8 x i1> %1173, <8 x double> %1162, <8 x double> splat (double 1.000000e-09)
  %1175 = fdiv <8 x double> %1172, %1174
  %1176 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1175)
  %1177 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1176)
  %1178 = select <8 x i1> %1163, <8 x double> %1177, <8 x double> splat (double 1.000000e+00)
  %1179 = fmul <8 x double> %1165, %1178
  br label %1180

1180:                                             ; preds = %1069, %1168
  %1181 = phi <8 x double> [ %1179, %1168 ], [ %1165, %1069 ]
  %1182 = getelementptr inbounds nuw i8, ptr %776, i64 4096
  %1183 = load <8 x double>, ptr %1182, align 64, !tbaa !26, !noalias !64
  %1184 = getelementptr inbounds nuw i8, ptr %776, i64 4992
  %1185 = load <8 x double>, ptr %1184, align 64, !tbaa !26, !noalias !64
  %1186 = fmul <8 x double> %1130, %1185
  %1187 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1125, <8 x double> %1183, <8 x double> %1186)
  %1188 = getelementptr inbounds nuw i8, ptr %776, i64 1216
  %1189 = load <8 x double>, ptr %1188, align 64, !tbaa !26, !noalias !64
  %1190 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1189, <8 x double> %1122, <8 x double> splat (double 1.000000e+00))
  %1191 = fdiv <8 x double> splat (double 1.000000e+00), %1190
  %1192 = fmul <8 x double> %1115, %1120
  %1193 = fmul <8 x double> %1113, %1192
  %1194 = fmul <8 x double> %1193, %1146
  %1195 = select <8 x i1> %1159, <8 x double> zeroinitializer, <8 x double> %1194
  %1196 = getelementptr inbounds nuw i8, ptr %776, i64 1088
  %1197 = load <8 x double>, ptr %1196, align 64, !tbaa !26, !noalias !64
  %1198 = fmul <8 x double> %1181, splat (double 2.500000e-01)
  %1199 = fmul <8 x double> %1110, %1198
  %1200 = fneg <8 x double> %1115
  %1201 = fmul <8 x double> %1199, %1200
  %1202 = select <8 x i1> %1163, <8 x double> %1201, <8 x double> splat (double -0.000000e+00)
  %1203 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1197, <8 x double> %1195, <8 x double> %1202)
  %1204 = fadd <8 x double> %1150, %1160
  %1205 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1197, <8 x double> %1204, <8 x double> %1181)
  %1206 = fneg <8 x double> %1189
  %1207 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1206, <8 x double> %1187, <8 x double> %1205)
  %1208 = fneg <8 x double> %1096
  %1209 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1191, <8 x double> %1207, <8 x double> %1208)
  %1210 = fmul <8 x double> %1191, %1203
  %1211 = fcmp olt <8 x double> %1210, splat (double 8.000000e-01)
  %1212 = select <8 x i1> %1211, <8 x double> %1210, <8 x double> splat (double 8.000000e-01)
  %1213 = fsub <8 x double> splat (double 1.000000e+00), %1212
  %1214 = fdiv <8 x double> %1209, %1213
  %1215 = fadd <8 x double> %1096, %1214
  %1216 = getelementptr inbounds nuw i8, ptr %776, i64 1152
  %1217 = load <8 x double>, ptr %1216, align 64, !tbaa !26, !noalias !64
  %1218 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1206, <8 x double> %1187, <8 x double> %1217)
  %1219 = fmul <8 x double> %1191, %1218
  %1220 = fcmp olt <8 x double> %1215, %1219
  %1221 = select <8 x i1> %1220, <8 x double> %1215, <8 x double> %1219
  %1222 = select <8 x i1> %1095, <8 x double> %1221, <8 x double> %1092
  %1223 = fsub <8 x double> %1222, %1096
  %1224 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1195, <8 x double> %1223, <8 x double> %1160)
  %1225 = fcmp ogt <8 x double> %1224, zeroinitializer
  %1226 = select <8 x i1> %1225, <8 x double> %1224, <8 x double> zeroinitializer
  %1227 = select <8 x i1> %690, <8 x double> %1094, <8 x double> %1222
  store <8 x double> %1227, ptr %1093, align 64, !tbaa !26
  %1228 = select <8 x i1> %690, <8 x double> %1156, <8 x double> %1226
  store <8 x double> %1228, ptr %1155, align 64, !tbaa !26
  %1229 = fadd <8 x double> %1150, %1228
  %1230 = fneg <8 x double> %1125
  %1231 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1230, <8 x double> %1127, <8 x double> %1229)
  %1232 = fneg <8 x double> %1130
  %1233 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1232, <8 x double> %1132, <8 x double> %1231)
  %1234 = fdiv <8 x double> %1233, %1122
  %1235 = load <8 x double>, ptr %834, align 64, !tbaa !26, !noalias !69
  %1236 = fsub <8 x double> %1235, %1234
  %1237 = getelementptr inbounds nuw i8, ptr %776, i64 4032
  %1238 = load <8 x double>, ptr %1237, align 64, !tbaa !26, !noalias !69
  %1239 = fsub <8 x double> %1238, %1070
  %1240 = getelementptr inbounds nuw i8, ptr %776, i64 3904
  %1241 = load <8 x double>, ptr %1240, align 64, !tbaa !26, !noalias !69
  %1242 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1103)
  %1243 = icmp eq i64 %1242, 0
  br i1 %1243, label %1366, label %1244

1244:                                             ; preds = %1180
  %1245 = fcmp ogt <8 x double> %1239, %1236
  %1246 = getelementptr inbounds nuw i8, ptr %776, i64 7680
  %1247 = load <8 x double>, ptr %1246, align 64, !tbaa !26, !noalias !69
  %1248 = fcmp oeq <8 x double> %1247, zeroinitializer
  %1249 = select <8 x i1> %1248, <8 x i1> %1245, <8 x i1> zeroinitializer
  %1250 = select <8 x i1> %1249, <8 x i64> %1103, <8 x i64> zeroinitializer
  %1251 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1250)
  %1252 = icmp eq i64 %1251, 0
  br i1 %1252, label %1321, label %1253

1253:                                             ; preds = %1244
  %1254 = fsub <8 x double> %1239, %1236
  %1255 = fdiv <8 x double> %1254, %1071
  %1256 = getelementptr inbounds nuw i8, ptr %776, i64 8552
  %1257 = load ptr, ptr %1256, align 8, !tbaa !67, !noalias !69
  %1258 = load i64, ptr %119, align 16, !tbaa !21, !noalias !69
  %1259 = add nsw i64 %1258, -1
  %1260 = getelementptr inbounds <8 x double>, ptr %1257, i64 %1259
  %1261 = load <8 x double>, ptr %1260, align 64, !tbaa !26, !noalias !69
  %1262 = icmp sgt i64 %1258, 1
  br i1 %1262, label %1263, label %1313

1263:                                             ; preds = %1253
  %1264 = getelementptr inbounds nuw i8, ptr %776, i64 8512
  %1265 = load i64, ptr %1264, align 64, !tbaa !31, !noalias !69
  %1266 = getelementptr inbounds nuw i8, ptr %776, i64 8608
  br label %1267

1267:                                             ; preds = %1263, %1310
  %1268 = phi <8 x double> [ %1241, %1263 ], [ %1305, %1310 ]
  %1269 = phi i64 [ %1259, %1263 ], [ %1311, %1310 ]
  %1270 = phi <8 x double> [ %1261, %1263 ], [ %1293, %1310 ]
  %1271 = phi <8 x i64> [ %1250, %1263 ], [ %1297, %1310 ]
  %1272 = phi <8 x double> [ %1255, %1263 ], [ %1304, %1310 ]
  %1273 = icmp slt i64 %1269, %1265
  br i1 %1273, label %1274, label %1280

1274:                                             ; preds = %1267
  %1275 = load ptr, ptr %1266, align 32, !tbaa !72, !noalias !69
  %1276 = getelementptr inbounds nuw <8 x double>, ptr %1275, i64 %1269
  %1277 = load <8 x double>, ptr %1276, align 64, !tbaa !26, !noalias !69
  %1278 = load <8 x double>, ptr %832, align 64, !tbaa !26, !noalias !69
  %1279 = fmul <8 x double> %1277, %1278
  br label %1288

1280:                                             ; preds = %1267
  %1281 = load <8 x double>, ptr %835, align 64, !tbaa !26, !noalias !69
  %1282 = load <8 x double>, ptr %832, align 64, !tbaa !26, !noalias !69
  %1283 = load ptr, ptr %1266, align 32, !tbaa !72, !noalias !69
  %1284 = getelementptr inbounds nuw <8 x double>, ptr %1283, i64 %1269
  %1285 = load <8 x double>, ptr %1284, align 64, !tbaa !26, !noalias !69
  %1286 = fsub <8 x double> %1281, %1282
  %1287 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1285, <8 x double> %1286, <8 x double> %1282)
  br label %1288

1288:                                             ; preds = %1274, %1280
  %1289 = phi <8 x double> [ %1279, %1274 ], [ %1287, %1280 ]
  %1290 = getelementptr inbounds nuw <8 x double>, ptr %1257, i64 %1269
  %1291 = load <8 x double>, ptr %1290, align 64, !tbaa !26, !noalias !69
  %1292 = icmp eq <8 x i64> %1271, zeroinitializer
  %1293 = select <8 x i1> %1292, <8 x double> %1270, <8 x double> %1291
  %1294 = fsub <8 x double> %1268, %1289
  %1295 = fmul <8 x double> %1294, %1293
  %1296 = fcmp olt <8 x double> %1295, %1272
  %1297 = select <8 x i1> %1296, <8 x i64> %1271, <8 x i64> zeroinitializer
  %1298 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1297)
  %1299 = icmp eq i64 %1298, 0
  br i1 %1299, label %1313, label %1300

1300:                                             ; preds = %1288
  %1301 = fneg <8 x double> %1293
  %1302 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1301, <8 x double> %1294, <8 x double> %1272)
  %1303 = icmp eq <8 x i64> %1297, zeroinitializer
  %1304 = select <8 x i1> %1303, <8 x double> %1272, <8 x double> %1302
  %1305 = select <8 x i1> %1303, <8 x double> %1268, <8 x double> %1289
  %1306 = icmp eq i64 %1269, 1
  br i1 %1306, label %1307, label %1310

1307:                                             ; preds = %1300
  %1308 = load <8 x double>, ptr %1257, align 64, !tbaa !26, !noalias !69
  %1309 = select <8 x i1> %1303, <8 x double> %1293, <8 x double> %1308
  br label %1313

1310:                                             ; preds = %1300
  %1311 = add nsw i64 %1269, -1
  %1312 = icmp sgt i64 %1269, 1
  br i1 %1312, label %1267, label %1313, !llvm.loop !73

1313:                                             ; preds = %1310, %1288, %1307, %1253
  %1314 = phi <8 x double> [ %1255, %1253 ], [ %1304, %1307 ], [ %1272, %1288 ], [ %1304, %1310 ]
  %1315 = phi <8 x double> [ %1241, %1253 ], [ %1305, %1307 ], [ %1268, %1288 ], [ %1305, %1310 ]
  %1316 = phi <8 x double> [ %1261, %1253 ], [ %1309, %1307 ], [ %1293, %1288 ], [ %1293, %1310 ]
  %1317 = fdiv <8 x double> %1314, %1316
  %1318 = fsub <8 x double> %1315, %1317
  %1319 = icmp eq <8 x i64> %1250, zeroinitializer
  %1320 = select <8 x i1> %1319, <8 x double> %1241, <8 x double> %1318
  br label %1321

1321:                                             ; preds = %1313, %1244
  %1322 = phi <8 x double> [ %1320, %1313 ], [ %1241, %1244 ]
  %1323 = getelementptr inbounds nuw i8, ptr %776, i64 2560
  %1324 = load <8 x double>, ptr %1323, align 64, !tbaa !26, !noalias !69
  %1325 = getelementptr inbounds nuw i8, ptr %776, i64 2624
  %1326 = load <8 x double>, ptr %1325, align 64, !tbaa !26, !noalias !69
  %1327 = getelementptr inbounds nuw i8, ptr %776, i64 2688
  %1328 = load <8 x double>, ptr %1327, align 64, !tbaa !26, !noalias !69
  %1329 = getelementptr inbounds nuw i8, ptr %776, i64 2752
  %1330 = load <8 x double>, ptr %1329, align 64, !tbaa !26, !noalias !69
  %1331 = fmul <8 x double> %1076, splat (double 2.000000e-05)
  br label %1332

1332:                                             ; preds = %1321, %1332
  %1333 = phi <8 x i64> [ splat (i64 -1), %1321 ], [ %1350, %1332 ]
  %1334 = phi i32 [ 0, %1321 ], [ %1351, %1332 ]
  %1335 = phi <8 x double> [ %1080, %1321 ], [ %1347, %1332 ]
  %1336 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1335, <8 x double> %1330, <8 x double> %1328)
  %1337 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1335, <8 x double> %1336, <8 x double> %1326)
  %1338 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1335, <8 x double> %1337, <8 x double> %1324)
  %1339 = fsub <8 x double> %1338, %1322
  %1340 = fmul <8 x double> %1335, splat (double 3.000000e+00)
  %1341 = fmul <8 x double> %1340, %1330
  %1342 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1328, <8 x double> splat (double 2.000000e+00), <8 x double> %1341)
  %1343 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1335, <8 x double> %1342, <8 x double> %1326)
  %1344 = fdiv <8 x double> %1339, %1343
  %1345 = fsub <8 x double> %1335, %1344
  %1346 = icmp eq <8 x i64> %1333, zeroinitializer
  %1347 = select <8 x i1> %1346, <8 x double> %1335, <8 x double> %1345
  %1348 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1344)
  %1349 = fcmp oge <8 x double> %1348, %1331
  %1350 = select <8 x i1> %1349, <8 x i64> %1333, <8 x i64> zeroinitializer
  %1351 = add nuw nsw i32 %1334, 1
  %1352 = icmp samesign ult i32 %1334, 3
  %1353 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1350)
  %1354 = icmp ne i64 %1353, 0
  %1355 = select i1 %1352, i1 %1354, i1 false
  br i1 %1355, label %1332, label %1356, !llvm.loop !74

1356:                                             ; preds = %1332
  %1357 = fmul <8 x double> %1076, splat (double 2.800000e-01)
  %1358 = fcmp ogt <8 x double> %1347, %1357
  %1359 = select <8 x i1> %1358, <8 x double> %1347, <8 x double> %1357
  %1360 = fcmp olt <8 x double> %1359, %1076
  %1361 = select <8 x i1> %1360, <8 x double> %1359, <8 x double> %1076
  %1362 = select <8 x i1> %1108, <8 x double> %1080, <8 x double> %1361
  %1363 = fcmp olt <8 x double> %1239, %1236
  %1364 = select <8 x i1> %1108, <8 x i1> splat (i1 true), <8 x i1> %1363
  %1365 = select <8 x i1> %1364, <8 x double> %1239, <8 x double> %1236
  br label %1366

1366:                                             ; preds = %1180, %1356
  %1367 = phi <8 x double> [ %1365, %1356 ], [ %1239, %1180 ]
  %1368 = phi <8 x double> [ %1362, %1356 ], [ %1080, %1180 ]
  %1369 = phi <8 x double> [ %1322, %1356 ], [ %1241, %1180 ]
  %1370 = fsub <8 x double> %1236, %1367
  %1371 = select <8 x i1> %690, <8 x double> %1124, <8 x double> %1234
  store <8 x double> %1371, ptr %1123, align 64, !tbaa !26
  %1372 = select <8 x i1> %690, <8 x double> %1082, <8 x double> %1370
  store <8 x double> %1372, ptr %1081, align 64, !tbaa !26
  %1373 = getelementptr inbounds nuw i8, ptr %776, i64 3136
  %1374 = load <8 x double>, ptr %1373, align 64, !tbaa !26
  %1375 = select <8 x i1> %690, <8 x double> %1374, <8 x double> %1367
  store <8 x double> %1375, ptr %1373, align 64, !tbaa !26
  %1376 = getelementptr inbounds nuw i8, ptr %776, i64 3008
  %1377 = and <8 x i64> %1103, %527
  %1378 = load <8 x double>, ptr %1376, align 64, !tbaa !26
  %1379 = icmp eq <8 x i64> %1377, zeroinitializer
  %1380 = select <8 x i1> %1379, <8 x double> %1378, <8 x double> %1369
  store <8 x double> %1380, ptr %1376, align 64, !tbaa !26
  %1381 = select <8 x i1> %1379, <8 x double> %1080, <8 x double> %1368
  store <8 x double> %1381, ptr %810, align 64, !tbaa !26
  %1382 = add nuw nsw i64 %774, 1
  %1383 = load i64, ptr %156, align 8, !tbaa !20
  %1384 = icmp slt i64 %1382, %1383
  br i1 %1384, label %773, label %1398, !llvm.loop !75

1385:                                             ; preds = %773, %1385
  %1386 = phi i64 [ 0, %773 ], [ %1396, %1385 ]
  %1387 = getelementptr inbounds nuw [14 x <8 x double>], ptr %810, i64 0, i64 %1386
  %1388 = getelementptr inbounds nuw [14 x <8 x double>], ptr %811, i64 0, i64 %1386
  %1389 = load <8 x double>, ptr %1388, align 64, !tbaa !26
  %1390 = getelementptr inbounds nuw [14 x <8 x double>], ptr %812, i64 0, i64 %1386
  %1391 = load <8 x double>, ptr %1390, align 64, !tbaa !26
  %1392 = fsub <8 x double> %1389, %1391
  %1393 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %809, <8 x double> %1392, <8 x double> %1389)
  %1394 = load <8 x double>, ptr %1387, align 64, !tbaa !26
  %1395 = select <8 x i1> %690, <8 x double> %1394, <8 x double> %1393
  store <8 x double> %1395, ptr %1387, align 64, !tbaa !26
  %1396 = add nuw nsw i64 %1386, 1
  %1397 = icmp eq i64 %1396, 13
  br i1 %1397, label %813, label %1385, !llvm.loop !76

1398:                                             ; preds = %1366, %661
  %1399 = phi i64 [ %769, %661 ], [ %1383, %1366 ]
  %1400 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %1401 = fcmp ogt <8 x double> %1400, zeroinitializer
  %1402 = select <8 x i1> %1401, <8 x i64> %527, <8 x i64> zeroinitializer
  %1403 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1402)
  %1404 = icmp eq i64 %1403, 0
  br i1 %1404, label %1488, label %1405

1405:                                             ; preds = %1398
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1402, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1406 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %1407 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %1408 = fadd <8 x double> %1406, %1407
  store <8 x double> %1408, ptr %9, align 64, !tbaa !26
  %1409 = load ptr, ptr %169, align 8
  %1410 = load ptr, ptr %171, align 8
  %1411 = load ptr, ptr %172, align 8
  br label %1412

1412:                                             ; preds = %1480, %1405
  %1413 = phi i64 [ 0, %1405 ], [ %1481, %1480 ]
  %1414 = getelementptr inbounds nuw i64, ptr %7, i64 %1413
  %1415 = load i64, ptr %1414, align 8, !tbaa !30
  %1416 = icmp eq i64 %1415, 0
  br i1 %1416, label %1480, label %1417

1417:                                             ; preds = %1412
  %1418 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %1413
  %1419 = load i64, ptr %1418, align 8, !tbaa !30
  %1420 = shl nsw i64 %1419, 1
  %1421 = getelementptr inbounds i64, ptr %1409, i64 %1420
  %1422 = load i64, ptr %1421, align 8, !tbaa !30
  %1423 = shl nuw nsw i64 %1413, 1
  %1424 = getelementptr inbounds nuw [16 x i64], ptr %170, i64 0, i64 %1423
  %1425 = getelementptr inbounds i64, ptr %1411, i64 %1420
  %1426 = load i64, ptr %1425, align 8, !tbaa !30
  %1427 = shl nsw i64 %1426, 4
  %1428 = getelementptr inbounds i8, ptr %1410, i64 %1427
  %1429 = getelementptr inbounds nuw double, ptr %9, i64 %1413
  %1430 = load double, ptr %1429, align 8, !tbaa !41
  %1431 = load i64, ptr %1424, align 8, !tbaa !30
  %1432 = getelementptr i8, ptr %1428, i64 -16
  %1433 = icmp sgt i64 %1431, 0
  br i1 %1433, label %1434, label %1443

1434:                                             ; preds = %1417, %1440
  %1435 = phi i64 [ %1441, %1440 ], [ %1431, %1417 ]
  %1436 = shl i64 %1435, 4
  %1437 = getelementptr i8, ptr %1432, i64 %1436
  %1438 = load double, ptr %1437, align 8, !tbaa !41
  %1439 = fcmp ugt double %1430, %1438
  br i1 %1439, label %1443, label %1440

1440:                                             ; preds = %1434
  %1441 = add nsw i64 %1435, -1
  store i64 %1441, ptr %1424, align 8, !tbaa !30
  %1442 = icmp sgt i64 %1435, 1
  br i1 %1442, label %1434, label %1443, !llvm.loop !77

1443:                                             ; preds = %1440, %1434, %1417
  %1444 = phi i64 [ %1431, %1417 ], [ 0, %1440 ], [ %1435, %1434 ]
  %1445 = icmp slt i64 %1444, %1422
  br i1 %1445, label %1446, label %1455

1446:                                             ; preds = %1443, %1452
  %1447 = phi i64 [ %1453, %1452 ], [ %1444, %1443 ]
  %1448 = shl nsw i64 %1447, 4
  %1449 = getelementptr inbounds i8, ptr %1428, i64 %1448
  %1450 = load double, ptr %1449, align 8, !tbaa !41
  %1451 = fcmp ule double %1430, %1450
  br i1 %1451, label %1460, label %1452

1452:                                             ; preds = %1446
  %1453 = add i64 %1447, 1
  store i64 %1453, ptr %1424, align 8, !tbaa !30
  %1454 = icmp eq i64 %1453, %1422
  br i1 %1454, label %1455, label %1446, !llvm.loop !78

1455:                                             ; preds = %1452, %1443
  %1456 = shl i64 %1422, 4
  %1457 = getelementptr i8, ptr %1428, i64 %1456
  %1458 = getelementptr i8, ptr %1457, i64 -8
  %1459 = load double, ptr %1458, align 8, !tbaa !41
  br label %1477

1460:                                             ; preds = %1446
  %1461 = shl nsw i64 %1447, 1
  %1462 = or disjoint i64 %1461, 1
  %1463 = getelementptr inbounds double, ptr %1428, i64 %1462
  %1464 = load double, ptr %1463, align 8, !tbaa !41
  %1465 = icmp sgt i64 %1447, 0
  br i1 %1465, label %1466, label %1477

1466:                                             ; preds = %1460
  %1467 = getelementptr inbounds nuw i8, ptr %1428, i64 %1448
  %1468 = getelementptr i8, ptr %1467, i64 -8
  %1469 = load double, ptr %1468, align 8, !tbaa !41
  %1470 = getelementptr i8, ptr %1467, i64 -16
  %1471 = load double, ptr %1470, align 8, !tbaa !41
  %1472 = fsub double %1430, %1471
  %1473 = fsub double %1450, %1471
  %1474 = fdiv double %1472, %1473
  %1475 = fsub double %1464, %1469
  %1476 = tail call double @llvm.fmuladd.f64(double %1474, double %1475, double %1469)
  br label %1477

1477:                                             ; preds = %1466, %1460, %1455
  %1478 = phi double [ %1476, %1466 ], [ %1464, %1460 ], [ %1459, %1455 ]
  %1479 = getelementptr inbounds nuw double, ptr %8, i64 %1413
  store double %1478, ptr %1479, align 8, !tbaa !41
  br label %1480

1480:                                             ; preds = %1477, %1412
  %1481 = add nuw nsw i64 %1413, 1
  %1482 = icmp eq i64 %1481, 8
  br i1 %1482, label %1483, label %1412, !llvm.loop !79

1483:                                             ; preds = %1480
  %1484 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1485 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %1486 = icmp eq <8 x i64> %1402, zeroinitializer
  %1487 = select <8 x i1> %1486, <8 x double> %1485, <8 x double> %1484
  store <8 x double> %1487, ptr %165, align 64, !tbaa !26
  br label %1488

1488:                                             ; preds = %1398, %1483, %525
  %1489 = phi i64 [ %1399, %1398 ], [ %1399, %1483 ], [ %530, %525 ]
  %1490 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %1491 = icmp eq <8 x i64> %527, zeroinitializer
  %1492 = select <8 x i1> %1491, <8 x double> %1490, <8 x double> zeroinitializer
  store <8 x double> %1492, ptr %173, align 64, !tbaa !26
  %1493 = icmp sgt i64 %1489, 0
  br i1 %1493, label %1496, label %1494

1494:                                             ; preds = %1488
  %1495 = load <8 x double>, ptr %175, align 64, !tbaa !26
  br label %2350

1496:                                             ; preds = %1488
  %1497 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %1498 = xor <8 x i64> %527, splat (i64 -1)
  %1499 = and <8 x i64> %1497, %1498
  %1500 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1499)
  %1501 = icmp eq i64 %1500, 0
  %1502 = icmp eq <8 x i64> %1499, zeroinitializer
  br label %1506

1503:                                             ; preds = %2342
  %1504 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %1505 = icmp sgt i64 %2346, 0
  br i1 %1505, label %2356, label %2350

1506:                                             ; preds = %1496, %2342
  %1507 = phi i64 [ 0, %1496 ], [ %2345, %2342 ]
  %1508 = load ptr, ptr %129, align 8, !tbaa !28
  %1509 = getelementptr inbounds nuw %struct.Piece, ptr %1508, i64 %1507
  br i1 %1501, label %1510, label %1537

1510:                                             ; preds = %1506
  %1511 = getelementptr inbounds nuw i8, ptr %1509, i64 8448
  %1512 = load <8 x i64>, ptr %1511, align 64, !tbaa !26
  %1513 = getelementptr inbounds nuw i8, ptr %1509, i64 3072
  %1514 = load <8 x double>, ptr %1513, align 64, !tbaa !26
  %1515 = getelementptr inbounds nuw i8, ptr %1509, i64 7744
  %1516 = load <8 x double>, ptr %1515, align 64, !tbaa !26
  %1517 = getelementptr inbounds nuw i8, ptr %1509, i64 5696
  %1518 = load <8 x double>, ptr %1517, align 64, !tbaa !26
  %1519 = getelementptr inbounds nuw i8, ptr %1509, i64 5760
  %1520 = load <8 x double>, ptr %1519, align 64, !tbaa !26
  %1521 = getelementptr inbounds nuw i8, ptr %1509, i64 8320
  %1522 = load <8 x i64>, ptr %1521, align 64, !tbaa !26
  %1523 = getelementptr inbounds nuw i8, ptr %1509, i64 1984
  %1524 = load <8 x double>, ptr %1523, align 64, !tbaa !26
  %1525 = load <8 x double>, ptr %1509, align 64, !tbaa !26
  %1526 = getelementptr inbounds nuw i8, ptr %1509, i64 2944
  %1527 = load <8 x double>, ptr %1526, align 64, !tbaa !26
  %1528 = getelementptr inbounds nuw i8, ptr %1509, i64 7808
  %1529 = load <8 x double>, ptr %1528, align 64, !tbaa !26
  %1530 = getelementptr inbounds nuw i8, ptr %1509, i64 5632
  %1531 = load <8 x double>, ptr %1530, align 64, !tbaa !26
  %1532 = getelementptr inbounds nuw i8, ptr %1509, i64 6016
  %1533 = load <8 x double>, ptr %1532, align 64, !tbaa !26
  %1534 = fmul <8 x double> %1514, %1516
  %1535 = fsub <8 x double> %1525, %1527
  %1536 = fmul <8 x double> %1535, %1529
  br label %1690

1537:                                             ; preds = %1506
  %1538 = getelementptr inbounds nuw i8, ptr %1509, i64 3200
  %1539 = getelementptr inbounds nuw i8, ptr %1509, i64 3072
  %1540 = load <8 x double>, ptr %1539, align 64, !tbaa !26, !noalias !80
  %1541 = getelementptr inbounds nuw i8, ptr %1509, i64 7744
  %1542 = load <8 x double>, ptr %1541, align 64, !tbaa !26, !noalias !80
  %1543 = fmul <8 x double> %1540, %1542
  %1544 = fcmp ogt <8 x double> %1543, zeroinitializer
  %1545 = select <8 x i1> %1544, <8 x double> %1543, <8 x double> zeroinitializer
  %1546 = fcmp uge <8 x double> %1545, splat (double 1.000000e+00)
  %1547 = select <8 x i1> %1546, <8 x double> splat (double 1.000000e+00), <8 x double> %1545
  %1548 = getelementptr inbounds nuw i8, ptr %1509, i64 8448
  %1549 = load <8 x i64>, ptr %1548, align 64, !tbaa !26, !noalias !80
  %1550 = load <8 x double>, ptr %167, align 64, !tbaa !26, !noalias !80
  %1551 = load <8 x double>, ptr %1538, align 64, !tbaa !26, !noalias !80
  %1552 = icmp eq <8 x i64> %1549, zeroinitializer
  %1553 = select <8 x i1> %1552, <8 x double> %1551, <8 x double> %1550
  %1554 = getelementptr inbounds nuw i8, ptr %1509, i64 3584
  %1555 = load <8 x double>, ptr %1554, align 64, !tbaa !26, !noalias !80
  %1556 = fsub <8 x double> splat (double 1.000000e+00), %1547
  %1557 = getelementptr inbounds nuw i8, ptr %1509, i64 1984
  %1558 = load <8 x double>, ptr %1557, align 64, !tbaa !26, !noalias !80
  %1559 = getelementptr inbounds nuw i8, ptr %1509, i64 8320
  %1560 = load <8 x i64>, ptr %1559, align 64, !tbaa !26, !noalias !80
  %1561 = load <8 x double>, ptr %1509, align 64, !tbaa !26, !noalias !80
  %1562 = getelementptr inbounds nuw i8, ptr %1509, i64 2944
  %1563 = load <8 x double>, ptr %1562, align 64, !tbaa !26, !noalias !80
  %1564 = fsub <8 x double> %1561, %1563
  %1565 = getelementptr inbounds nuw i8, ptr %1509, i64 7808
  %1566 = load <8 x double>, ptr %1565, align 64, !tbaa !26, !noalias !80
  %1567 = fmul <8 x double> %1564, %1566
  %1568 = icmp eq <8 x i64> %1560, zeroinitializer
  %1569 = select <8 x i1> %1568, <8 x double> zeroinitializer, <8 x double> %1567
  %1570 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1556, <8 x double> %1558, <8 x double> %1569)
  %1571 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1555, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1572 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1555, <8 x double> %1571, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1573 = fdiv <8 x double> splat (double 1.000000e+00), %1572
  %1574 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1553, <8 x double> %1570, <8 x double> splat (double 1.000000e+00))
  %1575 = fdiv <8 x double> splat (double 1.000000e+00), %1574
  %1576 = load <8 x double>, ptr %168, align 64, !tbaa !26, !noalias !80
  %1577 = load <8 x double>, ptr %165, align 64, !tbaa !26, !noalias !80
  %1578 = select <8 x i1> %1552, <8 x double> %1577, <8 x double> %1576
  %1579 = fsub <8 x double> %1578, %1555
  %1580 = fmul <8 x double> %1579, %1575
  %1581 = fmul <8 x double> %1553, %1580
  %1582 = getelementptr inbounds nuw i8, ptr %1509, i64 5632
  %1583 = load <8 x double>, ptr %1582, align 64, !tbaa !26, !noalias !80
  %1584 = getelementptr inbounds nuw i8, ptr %1509, i64 3264
  %1585 = load <8 x double>, ptr %1584, align 64, !tbaa !26, !noalias !80
  %1586 = getelementptr inbounds nuw i8, ptr %1509, i64 5696
  %1587 = load <8 x double>, ptr %1586, align 64, !tbaa !26, !noalias !80
  %1588 = getelementptr inbounds nuw i8, ptr %1509, i64 4160
  %1589 = load <8 x double>, ptr %1588, align 64, !tbaa !26, !noalias !80
  %1590 = fmul <8 x double> %1587, %1589
  %1591 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1583, <8 x double> %1585, <8 x double> %1590)
  %1592 = getelementptr inbounds nuw i8, ptr %1509, i64 5760
  %1593 = load <8 x double>, ptr %1592, align 64, !tbaa !26, !noalias !80
  %1594 = getelementptr inbounds nuw i8, ptr %1509, i64 5056
  %1595 = load <8 x double>, ptr %1594, align 64, !tbaa !26, !noalias !80
  %1596 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1593, <8 x double> %1595, <8 x double> %1591)
  %1597 = getelementptr inbounds nuw i8, ptr %1509, i64 832
  %1598 = load <8 x double>, ptr %1597, align 64, !tbaa !26, !noalias !80
  %1599 = fdiv <8 x double> %1566, %1598
  %1600 = fcmp ule <8 x double> %1547, zeroinitializer
  %1601 = or <8 x i1> %1546, %1600
  %1602 = fmul <8 x double> %1542, %1558
  %1603 = select <8 x i1> %1601, <8 x double> zeroinitializer, <8 x double> %1602
  %1604 = select <8 x i1> %1568, <8 x double> %1603, <8 x double> %1599
  %1605 = fmul <8 x double> %1553, %1581
  %1606 = fmul <8 x double> %1575, %1605
  %1607 = fmul <8 x double> %1573, %1606
  %1608 = fmul <8 x double> %1607, %1604
  %1609 = fdiv <8 x double> %1608, %1583
  %1610 = fadd <8 x double> %1609, splat (double 1.000000e+00)
  %1611 = fdiv <8 x double> splat (double 1.000000e+00), %1610
  %1612 = getelementptr inbounds nuw i8, ptr %1509, i64 3456
  %1613 = load <8 x double>, ptr %1612, align 64, !tbaa !26, !noalias !80
  %1614 = fsub <8 x double> %1581, %1613
  %1615 = getelementptr inbounds nuw i8, ptr %1509, i64 6080
  %1616 = load <8 x double>, ptr %1615, align 64, !tbaa !26, !noalias !80
  %1617 = fsub <8 x double> %1596, %1616
  %1618 = fmul <8 x double> %1617, %1609
  %1619 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1614, <8 x double> %1573, <8 x double> %1618)
  %1620 = fmul <8 x double> %1619, %1611
  %1621 = getelementptr inbounds nuw i8, ptr %1509, i64 6016
  %1622 = load <8 x double>, ptr %1621, align 64, !tbaa !26, !noalias !80
  %1623 = fcmp ule <8 x double> %1622, zeroinitializer
  %1624 = fcmp ule <8 x double> %1620, zeroinitializer
  %1625 = or <8 x i1> %1623, %1624
  %1626 = select <8 x i1> %1625, <8 x double> zeroinitializer, <8 x double> %1620
  %1627 = getelementptr inbounds nuw i8, ptr %1509, i64 2176
  %1628 = load <8 x double>, ptr %1627, align 64, !tbaa !26, !noalias !80
  %1629 = fcmp ogt <8 x double> %1628, zeroinitializer
  %1630 = getelementptr inbounds nuw i8, ptr %1509, i64 1024
  %1631 = load <8 x double>, ptr %1630, align 64, !tbaa !26, !noalias !80
  %1632 = bitcast <8 x i1> %1629 to i8
  %1633 = icmp eq i8 %1632, 0
  br i1 %1633, label %1646, label %1634

1634:                                             ; preds = %1537
  %1635 = getelementptr inbounds nuw i8, ptr %1509, i64 3648
  %1636 = load <8 x double>, ptr %1635, align 64, !tbaa !26, !noalias !80
  %1637 = fadd <8 x double> %1580, %1636
  %1638 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1637)
  %1639 = fcmp ogt <8 x double> %1628, splat (double 1.000000e-09)
  %1640 = select <8 x i1> %1639, <8 x double> %1628, <8 x double> splat (double 1.000000e-09)
  %1641 = fdiv <8 x double> %1638, %1640
  %1642 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1641)
  %1643 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1642)
  %1644 = select <8 x i1> %1629, <8 x double> %1643, <8 x double> splat (double 1.000000e+00)
  %1645 = fmul <8 x double> %1631, %1644
  br label %1646

1646:                                             ; preds = %1634, %1537
  %1647 = phi <8 x double> [ %1645, %1634 ], [ %1631, %1537 ]
  %1648 = getelementptr inbounds nuw i8, ptr %1509, i64 4096
  %1649 = load <8 x double>, ptr %1648, align 64, !tbaa !26, !noalias !80
  %1650 = getelementptr inbounds nuw i8, ptr %1509, i64 4992
  %1651 = load <8 x double>, ptr %1650, align 64, !tbaa !26, !noalias !80
  %1652 = fmul <8 x double> %1593, %1651
  %1653 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1587, <8 x double> %1649, <8 x double> %1652)
  %1654 = getelementptr inbounds nuw i8, ptr %1509, i64 1216
  %1655 = load <8 x double>, ptr %1654, align 64, !tbaa !26, !noalias !80
  %1656 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1655, <8 x double> %1583, <8 x double> splat (double 1.000000e+00))
  %1657 = fdiv <8 x double> splat (double 1.000000e+00), %1656
  %1658 = fmul <8 x double> %1575, %1580
  %1659 = fmul <8 x double> %1573, %1658
  %1660 = fmul <8 x double> %1659, %1611
  %1661 = select <8 x i1> %1625, <8 x double> zeroinitializer, <8 x double> %1660
  %1662 = getelementptr inbounds nuw i8, ptr %1509, i64 1088
  %1663 = load <8 x double>, ptr %1662, align 64, !tbaa !26, !noalias !80
  %1664 = fmul <8 x double> %1647, splat (double 2.500000e-01)
  %1665 = fmul <8 x double> %1570, %1664
  %1666 = fneg <8 x double> %1575
  %1667 = fmul <8 x double> %1665, %1666
  %1668 = select <8 x i1> %1629, <8 x double> %1667, <8 x double> splat (double -0.000000e+00)
  %1669 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1663, <8 x double> %1661, <8 x double> %1668)
  %1670 = fadd <8 x double> %1616, %1626
  %1671 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1663, <8 x double> %1670, <8 x double> %1647)
  %1672 = fneg <8 x double> %1655
  %1673 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1672, <8 x double> %1653, <8 x double> %1671)
  %1674 = fneg <8 x double> %1553
  %1675 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1657, <8 x double> %1673, <8 x double> %1674)
  %1676 = fmul <8 x double> %1657, %1669
  %1677 = fcmp olt <8 x double> %1676, splat (double 8.000000e-01)
  %1678 = select <8 x i1> %1677, <8 x double> %1676, <8 x double> splat (double 8.000000e-01)
  %1679 = fsub <8 x double> splat (double 1.000000e+00), %1678
  %1680 = fdiv <8 x double> %1675, %1679
  %1681 = fadd <8 x double> %1553, %1680
  %1682 = getelementptr inbounds nuw i8, ptr %1509, i64 1152
  %1683 = load <8 x double>, ptr %1682, align 64, !tbaa !26, !noalias !80
  %1684 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1672, <8 x double> %1653, <8 x double> %1683)
  %1685 = fmul <8 x double> %1657, %1684
  %1686 = fcmp olt <8 x double> %1681, %1685
  %1687 = select <8 x i1> %1686, <8 x double> %1681, <8 x double> %1685
  %1688 = select <8 x i1> %1552, <8 x double> %1687, <8 x double> %1550
  %1689 = select <8 x i1> %1502, <8 x double> %1551, <8 x double> %1688
  store <8 x double> %1689, ptr %1538, align 64, !tbaa !26
  br label %1690

1690:                                             ; preds = %1510, %1646
  %1691 = phi <8 x double> [ %1536, %1510 ], [ %1567, %1646 ]
  %1692 = phi <8 x double> [ %1535, %1510 ], [ %1564, %1646 ]
  %1693 = phi <8 x double> [ %1534, %1510 ], [ %1543, %1646 ]
  %1694 = phi <8 x double> [ %1533, %1510 ], [ %1622, %1646 ]
  %1695 = phi <8 x double> [ %1531, %1510 ], [ %1583, %1646 ]
  %1696 = phi <8 x double> [ %1527, %1510 ], [ %1563, %1646 ]
  %1697 = phi <8 x double> [ %1524, %1510 ], [ %1558, %1646 ]
  %1698 = phi <8 x i64> [ %1522, %1510 ], [ %1560, %1646 ]
  %1699 = phi <8 x double> [ %1520, %1510 ], [ %1593, %1646 ]
  %1700 = phi <8 x double> [ %1518, %1510 ], [ %1587, %1646 ]
  %1701 = phi <8 x i64> [ %1512, %1510 ], [ %1549, %1646 ]
  %1702 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %1703 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %1704 = icmp eq <8 x i64> %1701, zeroinitializer
  %1705 = select <8 x i1> %1704, <8 x double> %1703, <8 x double> %1702
  %1706 = getelementptr inbounds nuw i8, ptr %1509, i64 5888
  store <8 x double> %1705, ptr %1706, align 64, !tbaa !26
  %1707 = fcmp ogt <8 x double> %1693, zeroinitializer
  %1708 = select <8 x i1> %1707, <8 x double> %1693, <8 x double> zeroinitializer
  %1709 = fcmp olt <8 x double> %1708, splat (double 1.000000e+00)
  %1710 = select <8 x i1> %1709, <8 x double> %1708, <8 x double> splat (double 1.000000e+00)
  %1711 = getelementptr inbounds nuw i8, ptr %1509, i64 2112
  %1712 = load <8 x double>, ptr %1711, align 64, !tbaa !26
  %1713 = fmul <8 x double> %1710, splat (double 4.180000e+03)
  %1714 = getelementptr inbounds nuw i8, ptr %1509, i64 896
  %1715 = load <8 x double>, ptr %1714, align 64, !tbaa !26
  %1716 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1713, <8 x double> %1715, <8 x double> %1712)
  %1717 = getelementptr inbounds nuw i8, ptr %1509, i64 5696
  %1718 = getelementptr inbounds nuw i8, ptr %1509, i64 4480
  %1719 = load <8 x double>, ptr %1718, align 64, !tbaa !26
  %1720 = getelementptr inbounds nuw i8, ptr %1509, i64 5760
  %1721 = getelementptr inbounds nuw i8, ptr %1509, i64 5376
  %1722 = load <8 x double>, ptr %1721, align 64, !tbaa !26
  %1723 = fmul <8 x double> %1699, %1722
  %1724 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1700, <8 x double> %1719, <8 x double> %1723)
  %1725 = getelementptr inbounds nuw i8, ptr %1509, i64 8320
  %1726 = fcmp ule <8 x double> %1712, zeroinitializer
  %1727 = getelementptr inbounds nuw i8, ptr %1509, i64 7296
  store <8 x double> %1710, ptr %1727, align 64, !tbaa !26
  %1728 = fsub <8 x double> splat (double 1.000000e+00), %1710
  %1729 = getelementptr inbounds nuw i8, ptr %1509, i64 2944
  %1730 = icmp eq <8 x i64> %1698, zeroinitializer
  %1731 = select <8 x i1> %1730, <8 x double> zeroinitializer, <8 x double> %1691
  %1732 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1728, <8 x double> %1697, <8 x double> %1731)
  %1733 = getelementptr inbounds nuw i8, ptr %1509, i64 8256
  store <8 x double> %1732, ptr %1733, align 64, !tbaa !26
  %1734 = getelementptr inbounds nuw i8, ptr %1509, i64 5632
  %1735 = fmul <8 x double> %1716, %1695
  %1736 = icmp eq <8 x i64> %1698, splat (i64 -1)
  %1737 = select <8 x i1> %1726, <8 x i1> splat (i1 true), <8 x i1> %1736
  %1738 = select <8 x i1> %1737, <8 x double> zeroinitializer, <8 x double> %1735
  %1739 = getelementptr inbounds nuw i8, ptr %1509, i64 7360
  store <8 x double> %1738, ptr %1739, align 64, !tbaa !26
  %1740 = fmul <8 x double> %1716, %1724
  %1741 = select <8 x i1> %1737, <8 x double> zeroinitializer, <8 x double> %1740
  %1742 = getelementptr inbounds nuw i8, ptr %1509, i64 7424
  store <8 x double> %1741, ptr %1742, align 64, !tbaa !26
  %1743 = getelementptr inbounds nuw i8, ptr %1509, i64 1920
  %1744 = load <8 x double>, ptr %1743, align 64, !tbaa !26
  %1745 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1728, <8 x double> %1744, <8 x double> %1692)
  %1746 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %1747 = fdiv <8 x double> splat (double 1.000000e+00), %1746
  %1748 = getelementptr inbounds nuw i8, ptr %1509, i64 2240
  %1749 = load <8 x double>, ptr %1748, align 64, !tbaa !26
  %1750 = fcmp ogt <8 x double> %1749, splat (double 1.000000e-30)
  %1751 = select <8 x i1> %1750, <8 x double> %1749, <8 x double> splat (double 1.000000e-30)
  %1752 = fdiv <8 x double> %1745, %1751
  %1753 = fadd <8 x double> %1747, %1752
  %1754 = getelementptr inbounds nuw i8, ptr %1509, i64 7488
  store <8 x double> %1753, ptr %1754, align 64, !tbaa !26
  %1755 = getelementptr inbounds nuw i8, ptr %1509, i64 7168
  store <8 x double> %1694, ptr %1755, align 64, !tbaa !26
  %1756 = getelementptr inbounds nuw i8, ptr %1509, i64 2560
  %1757 = load <8 x double>, ptr %1756, align 64, !tbaa !26
  %1758 = getelementptr inbounds nuw i8, ptr %1509, i64 2624
  %1759 = load <8 x double>, ptr %1758, align 64, !tbaa !26
  %1760 = getelementptr inbounds nuw i8, ptr %1509, i64 2688
  %1761 = load <8 x double>, ptr %1760, align 64, !tbaa !26
  %1762 = getelementptr inbounds nuw i8, ptr %1509, i64 2752
  %1763 = load <8 x double>, ptr %1762, align 64, !tbaa !26
  %1764 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1763, <8 x double> %1761)
  %1765 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1764, <8 x double> %1759)
  %1766 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1765, <8 x double> %1757)
  %1767 = getelementptr inbounds nuw i8, ptr %1509, i64 3776
  store <8 x double> %1766, ptr %1767, align 64, !tbaa !26
  %1768 = getelementptr inbounds nuw i8, ptr %1509, i64 4672
  %1769 = load <8 x double>, ptr %1768, align 64, !tbaa !26
  %1770 = fmul <8 x double> %1700, %1769
  %1771 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1766, <8 x double> %1770)
  %1772 = getelementptr inbounds nuw i8, ptr %1509, i64 5568
  %1773 = load <8 x double>, ptr %1772, align 64, !tbaa !26
  %1774 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1699, <8 x double> %1773, <8 x double> %1771)
  %1775 = fmul <8 x double> %1774, splat (double 5.000000e-01)
  %1776 = getelementptr inbounds nuw i8, ptr %1509, i64 7104
  store <8 x double> %1775, ptr %1776, align 64, !tbaa !26
  %1777 = getelementptr inbounds nuw i8, ptr %1509, i64 2304
  %1778 = load <8 x double>, ptr %1777, align 64, !tbaa !26
  %1779 = getelementptr inbounds nuw i8, ptr %1509, i64 2368
  %1780 = load <8 x double>, ptr %1779, align 64, !tbaa !26
  %1781 = getelementptr inbounds nuw i8, ptr %1509, i64 2432
  %1782 = load <8 x double>, ptr %1781, align 64, !tbaa !26
  %1783 = getelementptr inbounds nuw i8, ptr %1509, i64 2496
  %1784 = load <8 x double>, ptr %1783, align 64, !tbaa !26
  %1785 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1784, <8 x double> %1782)
  %1786 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1785, <8 x double> %1780)
  %1787 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1786, <8 x double> %1778)
  %1788 = getelementptr inbounds nuw i8, ptr %1509, i64 7040
  store <8 x double> %1787, ptr %1788, align 64, !tbaa !26
  %1789 = getelementptr inbounds nuw i8, ptr %1509, i64 8512
  %1790 = load i64, ptr %1789, align 64, !tbaa !31
  %1791 = icmp eq i64 %1790, 0
  br i1 %1791, label %1792, label %1804

1792:                                             ; preds = %1690
  %1793 = fdiv <8 x double> %1787, %1696
  %1794 = load i64, ptr %119, align 16, !tbaa !21
  %1795 = getelementptr inbounds nuw i8, ptr %1509, i64 8632
  %1796 = load ptr, ptr %1795, align 8, !tbaa !36
  %1797 = getelementptr inbounds <8 x double>, ptr %1796, i64 %1794
  %1798 = load <8 x double>, ptr %1797, align 64, !tbaa !26
  %1799 = fmul <8 x double> %1793, %1798
  %1800 = getelementptr inbounds nuw i8, ptr %1509, i64 64
  %1801 = load <8 x double>, ptr %1800, align 64, !tbaa !26
  %1802 = fsub <8 x double> %1696, %1801
  %1803 = fdiv <8 x double> splat (double 1.000000e+00), %1802
  br label %1827

1804:                                             ; preds = %1690
  %1805 = getelementptr inbounds nuw i8, ptr %1509, i64 64
  %1806 = load <8 x double>, ptr %1805, align 64, !tbaa !26
  %1807 = fsub <8 x double> %1696, %1806
  %1808 = fdiv <8 x double> splat (double 1.000000e+00), %1807
  %1809 = load i64, ptr %119, align 16, !tbaa !21
  %1810 = getelementptr inbounds nuw i8, ptr %1509, i64 8632
  %1811 = load ptr, ptr %1810, align 8, !tbaa !36
  %1812 = shl nsw i64 %1809, 8
  %1813 = getelementptr inbounds i8, ptr %1811, i64 %1812
  %1814 = load <8 x double>, ptr %1813, align 64, !tbaa !26
  %1815 = getelementptr inbounds nuw i8, ptr %1813, i64 64
  %1816 = load <8 x double>, ptr %1815, align 64, !tbaa !26
  %1817 = getelementptr inbounds nuw i8, ptr %1813, i64 128
  %1818 = load <8 x double>, ptr %1817, align 64, !tbaa !26
  %1819 = getelementptr inbounds nuw i8, ptr %1813, i64 192
  %1820 = load <8 x double>, ptr %1819, align 64, !tbaa !26
  %1821 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1820, <8 x double> %1818)
  %1822 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1821, <8 x double> %1816)
  %1823 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1822, <8 x double> %1814)
  %1824 = icmp sgt i64 %1809, %1790
  %1825 = fmul <8 x double> %1808, %1823
  %1826 = select i1 %1824, <8 x double> %1825, <8 x double> %1823
  br label %1827

1827:                                             ; preds = %1792, %1804
  %1828 = phi <8 x double> [ %1803, %1792 ], [ %1808, %1804 ]
  %1829 = phi <8 x double> [ %1802, %1792 ], [ %1807, %1804 ]
  %1830 = phi <8 x double> [ %1799, %1792 ], [ %1826, %1804 ]
  %1831 = getelementptr inbounds nuw i8, ptr %1509, i64 3200
  %1832 = load <8 x double>, ptr %1831, align 64, !tbaa !26
  %1833 = getelementptr inbounds nuw i8, ptr %1509, i64 5952
  %1834 = load <8 x double>, ptr %1833, align 64, !tbaa !26
  %1835 = fcmp ogt <8 x double> %1692, splat (double 0x3D719799812DEA11)
  %1836 = select <8 x i1> %1835, <8 x double> %1692, <8 x double> splat (double 0x3D719799812DEA11)
  %1837 = getelementptr inbounds nuw i8, ptr %1509, i64 6912
  store <8 x double> %1828, ptr %1837, align 64, !tbaa !26
  %1838 = getelementptr inbounds nuw i8, ptr %1509, i64 704
  %1839 = load <8 x double>, ptr %1838, align 64, !tbaa !26
  %1840 = fdiv <8 x double> %1839, %1836
  %1841 = getelementptr inbounds nuw i8, ptr %1509, i64 6976
  store <8 x double> %1840, ptr %1841, align 64, !tbaa !26
  %1842 = getelementptr inbounds nuw i8, ptr %1509, i64 8520
  %1843 = load ptr, ptr %1842, align 8, !tbaa !57
  %1844 = load i64, ptr %119, align 16, !tbaa !21
  %1845 = getelementptr <8 x double>, ptr %1843, i64 %1844
  %1846 = getelementptr i8, ptr %1845, i64 -64
  %1847 = load <8 x double>, ptr %1846, align 64, !tbaa !26
  %1848 = fadd <8 x double> %1834, %1847
  %1849 = fmul <8 x double> %1848, splat (double 5.000000e-01)
  %1850 = getelementptr inbounds nuw i8, ptr %1509, i64 192
  %1851 = load <8 x double>, ptr %1850, align 64, !tbaa !26
  %1852 = getelementptr inbounds nuw i8, ptr %1509, i64 256
  %1853 = load <8 x double>, ptr %1852, align 64, !tbaa !26
  %1854 = getelementptr inbounds nuw i8, ptr %1509, i64 320
  %1855 = load <8 x double>, ptr %1854, align 64, !tbaa !26
  %1856 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1849, <8 x double> %1855, <8 x double> %1853)
  %1857 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1849, <8 x double> %1856, <8 x double> %1851)
  %1858 = fmul <8 x double> %1830, %1857
  %1859 = fmul <8 x double> %1710, %1858
  %1860 = getelementptr inbounds nuw i8, ptr %1509, i64 2048
  %1861 = load <8 x double>, ptr %1860, align 64, !tbaa !26
  %1862 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1859, <8 x double> %1861, <8 x double> splat (double 1.000000e+00))
  %1863 = fdiv <8 x double> splat (double 1.000000e+00), %1862
  %1864 = select <8 x i1> %1730, <8 x double> %1863, <8 x double> splat (double 1.000000e+00)
  %1865 = getelementptr inbounds nuw i8, ptr %1509, i64 7232
  store <8 x double> %1864, ptr %1865, align 64, !tbaa !26
  %1866 = fmul <8 x double> %1858, %1864
  %1867 = getelementptr inbounds nuw i8, ptr %1509, i64 6400
  store <8 x double> %1866, ptr %1867, align 64, !tbaa !26
  %1868 = fmul <8 x double> %1775, splat (double 2.000000e+00)
  %1869 = getelementptr inbounds nuw i8, ptr %1509, i64 384
  %1870 = load <8 x double>, ptr %1869, align 64, !tbaa !26
  %1871 = getelementptr inbounds nuw i8, ptr %1509, i64 448
  %1872 = load <8 x double>, ptr %1871, align 64, !tbaa !26
  %1873 = getelementptr inbounds nuw i8, ptr %1509, i64 512
  %1874 = load <8 x double>, ptr %1873, align 64, !tbaa !26
  %1875 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1834, <8 x double> %1874, <8 x double> %1872)
  %1876 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1834, <8 x double> %1875, <8 x double> %1870)
  %1877 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1868, <8 x double> %1876, <8 x double> %1866)
  %1878 = getelementptr inbounds nuw i8, ptr %1509, i64 6528
  store <8 x double> %1877, ptr %1878, align 64, !tbaa !26
  %1879 = fmul <8 x double> %1728, %1832
  %1880 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1879, <8 x double> %1697, <8 x double> splat (double 1.000000e+00))
  %1881 = fdiv <8 x double> %1832, %1880
  %1882 = load i64, ptr %120, align 8, !tbaa !22
  %1883 = sitofp i64 %1882 to double
  %1884 = fmul double %1883, 2.000000e+00
  %1885 = insertelement <8 x double> poison, double %1884, i64 0
  %1886 = shufflevector <8 x double> %1885, <8 x double> poison, <8 x i32> zeroinitializer
  %1887 = fmul <8 x double> %1840, %1886
  %1888 = fadd <8 x double> %1881, %1887
  %1889 = fdiv <8 x double> %1881, %1888
  %1890 = fmul <8 x double> %1787, %1887
  %1891 = select <8 x i1> %1730, <8 x double> %1881, <8 x double> %1890
  %1892 = getelementptr inbounds nuw i8, ptr %1509, i64 6464
  store <8 x double> %1891, ptr %1892, align 64, !tbaa !26
  %1893 = fmul <8 x double> %1887, %1889
  %1894 = select <8 x i1> %1730, <8 x double> %1881, <8 x double> %1893
  %1895 = getelementptr inbounds nuw i8, ptr %1509, i64 6592
  store <8 x double> %1894, ptr %1895, align 64, !tbaa !26
  %1896 = select <8 x i1> %1730, <8 x double> splat (double 1.000000e+00), <8 x double> %1889
  %1897 = getelementptr inbounds nuw i8, ptr %1509, i64 6656
  store <8 x double> %1896, ptr %1897, align 64, !tbaa !26
  br i1 %1791, label %2059, label %1898

1898:                                             ; preds = %1827
  %1899 = getelementptr inbounds nuw i8, ptr %1509, i64 576
  %1900 = load <8 x double>, ptr %1899, align 64, !tbaa !26
  %1901 = getelementptr inbounds nuw i8, ptr %1509, i64 640
  %1902 = load <8 x double>, ptr %1901, align 64, !tbaa !26
  %1903 = getelementptr inbounds nuw i8, ptr %1509, i64 1536
  %1904 = load <8 x double>, ptr %1903, align 64, !tbaa !26
  %1905 = load i64, ptr %119, align 16, !tbaa !21
  %1906 = fsub <8 x double> %1766, %1904
  %1907 = fmul <8 x double> %1872, splat (double 5.000000e-01)
  %1908 = fmul <8 x double> %1874, splat (double 0x3FE5555555555555)
  %1909 = getelementptr inbounds nuw i8, ptr %1509, i64 8608
  %1910 = load ptr, ptr %1909, align 32, !tbaa !72
  %1911 = getelementptr inbounds nuw i8, ptr %1509, i64 8616
  %1912 = load ptr, ptr %1911, align 8, !tbaa !47
  %1913 = getelementptr inbounds nuw i8, ptr %1509, i64 8544
  %1914 = load ptr, ptr %1913, align 32, !tbaa !58
  %1915 = getelementptr inbounds nuw i8, ptr %1509, i64 8584
  %1916 = load ptr, ptr %1915, align 8, !tbaa !83
  %1917 = getelementptr inbounds nuw i8, ptr %1509, i64 8592
  %1918 = load ptr, ptr %1917, align 16, !tbaa !84
  %1919 = getelementptr inbounds nuw i8, ptr %1509, i64 8600
  %1920 = load ptr, ptr %1919, align 8, !tbaa !85
  %1921 = getelementptr inbounds nuw i8, ptr %1509, i64 8568
  %1922 = load ptr, ptr %1921, align 8, !tbaa !86
  %1923 = getelementptr inbounds nuw i8, ptr %1509, i64 8576
  %1924 = load ptr, ptr %1923, align 64, !tbaa !87
  %1925 = icmp sgt i64 %1905, 0
  br i1 %1925, label %1926, label %2172

1926:                                             ; preds = %1898
  %1927 = load <8 x double>, ptr %1843, align 64, !tbaa !26
  %1928 = getelementptr inbounds nuw i8, ptr %1509, i64 2880
  %1929 = load <8 x double>, ptr %1928, align 64, !tbaa !26
  %1930 = getelementptr inbounds nuw i8, ptr %1509, i64 2816
  %1931 = load <8 x double>, ptr %1930, align 64, !tbaa !26
  %1932 = fmul <8 x double> %1775, splat (double -2.000000e+00)
  %1933 = fmul <8 x double> %1932, %1834
  %1934 = fmul <8 x double> %1834, %1933
  %1935 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1834, <8 x double> %1908, <8 x double> %1907)
  %1936 = fmul <8 x double> %1934, %1935
  %1937 = getelementptr inbounds nuw i8, ptr %1509, i64 8632
  %1938 = fmul <8 x double> %1829, %1929
  %1939 = fdiv <8 x double> %1931, %1900
  br label %1940

1940:                                             ; preds = %1926, %2024
  %1941 = phi <8 x double> [ %1927, %1926 ], [ %2028, %2024 ]
  %1942 = phi <8 x double> [ zeroinitializer, %1926 ], [ %2025, %2024 ]
  %1943 = phi <8 x double> [ zeroinitializer, %1926 ], [ %2026, %2024 ]
  %1944 = phi <8 x double> [ zeroinitializer, %1926 ], [ %2027, %2024 ]
  %1945 = phi <8 x double> [ zeroinitializer, %1926 ], [ %2054, %2024 ]
  %1946 = phi <8 x double> [ zeroinitializer, %1926 ], [ %2056, %2024 ]
  %1947 = phi <8 x double> [ %1902, %1926 ], [ %2029, %2024 ]
  %1948 = phi i64 [ 0, %1926 ], [ %1950, %2024 ]
  %1949 = phi <8 x double> [ zeroinitializer, %1926 ], [ %2030, %2024 ]
  %1950 = add nuw nsw i64 %1948, 1
  %1951 = icmp slt i64 %1950, %1905
  br i1 %1951, label %1952, label %2021

1952:                                             ; preds = %1940
  %1953 = getelementptr inbounds nuw <8 x double>, ptr %1843, i64 %1950
  %1954 = load <8 x double>, ptr %1953, align 64, !tbaa !26
  %1955 = icmp slt i64 %1950, %1790
  br i1 %1955, label %1963, label %1956

1956:                                             ; preds = %1952
  %1957 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1954, <8 x double> %1874, <8 x double> %1872)
  %1958 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1954, <8 x double> %1957, <8 x double> %1870)
  %1959 = fneg <8 x double> %1954
  %1960 = fmul <8 x double> %1954, %1959
  %1961 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1954, <8 x double> %1908, <8 x double> %1907)
  %1962 = fmul <8 x double> %1960, %1961
  br label %1963

1963:                                             ; preds = %1952, %1956
  %1964 = phi <8 x double> [ %1958, %1956 ], [ %1902, %1952 ]
  %1965 = phi <8 x double> [ %1962, %1956 ], [ zeroinitializer, %1952 ]
  %1966 = load i64, ptr %1789, align 64, !tbaa !31
  %1967 = icmp eq i64 %1966, 0
  %1968 = load ptr, ptr %1937, align 8, !tbaa !36
  br i1 %1967, label %1969, label %1973

1969:                                             ; preds = %1963
  %1970 = getelementptr inbounds nuw <8 x double>, ptr %1968, i64 %1950
  %1971 = load <8 x double>, ptr %1970, align 64, !tbaa !26
  %1972 = fmul <8 x double> %1828, %1971
  br label %1989

1973:                                             ; preds = %1963
  %1974 = shl nsw i64 %1950, 8
  %1975 = getelementptr inbounds nuw i8, ptr %1968, i64 %1974
  %1976 = load <8 x double>, ptr %1975, align 64, !tbaa !26
  %1977 = getelementptr inbounds nuw i8, ptr %1975, i64 64
  %1978 = load <8 x double>, ptr %1977, align 64, !tbaa !26
  %1979 = getelementptr inbounds nuw i8, ptr %1975, i64 128
  %1980 = load <8 x double>, ptr %1979, align 64, !tbaa !26
  %1981 = getelementptr inbounds nuw i8, ptr %1975, i64 192
  %1982 = load <8 x double>, ptr %1981, align 64, !tbaa !26
  %1983 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1982, <8 x double> %1980)
  %1984 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1983, <8 x double> %1978)
  %1985 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1696, <8 x double> %1984, <8 x double> %1976)
  %1986 = icmp slt i64 %1948, %1966
  %1987 = fmul <8 x double> %1828, %1985
  %1988 = select i1 %1986, <8 x double> %1985, <8 x double> %1987
  br label %1989

1989:                                             ; preds = %1973, %1969
  %1990 = phi <8 x double> [ %1972, %1969 ], [ %1988, %1973 ]
  %1991 = icmp slt i64 %1948, %1966
  br i1 %1991, label %1998, label %1992

1992:                                             ; preds = %1989
  %1993 = fadd <8 x double> %1941, %1954
  %1994 = fmul <8 x double> %1993, splat (double 5.000000e-01)
  %1995 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1994, <8 x double> %1855, <8 x double> %1853)
  %1996 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1994, <8 x double> %1995, <8 x double> %1851)
  %1997 = fmul <8 x double> %1996, %1990
  br label %2008

1998:                                             ; preds = %1989
  %1999 = icmp slt i64 %1950, %1966
  br i1 %1999, label %2000, label %2002

2000:                                             ; preds = %1998
  %2001 = fmul <8 x double> %1900, %1990
  br label %2008

2002:                                             ; preds = %1998
  %2003 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1954, <8 x double> %1855, <8 x double> %1853)
  %2004 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1954, <8 x double> %2003, <8 x double> %1851)
  %2005 = fdiv <8 x double> %1938, %2004
  %2006 = fadd <8 x double> %1939, %2005
  %2007 = fdiv <8 x double> %1990, %2006
  br label %2008

2008:                                             ; preds = %1992, %2000, %2002
  %2009 = phi <8 x double> [ %1997, %1992 ], [ %2001, %2000 ], [ %2007, %2002 ]
  br i1 %1955, label %2014, label %2010

2010:                                             ; preds = %2008
  %2011 = getelementptr inbounds nuw <8 x double>, ptr %1910, i64 %1950
  %2012 = load <8 x double>, ptr %2011, align 64, !tbaa !26
  %2013 = fmul <8 x double> %1775, %2012
  br label %2014

2014:                                             ; preds = %2008, %2010
  %2015 = phi <8 x double> [ %2013, %2010 ], [ zeroinitializer, %2008 ]
  %2016 = fneg <8 x double> %2015
  %2017 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2016, <8 x double> %1947, <8 x double> %2009)
  %2018 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2015, <8 x double> %1964, <8 x double> %2009)
  %2019 = fadd <8 x double> %1949, %1965
  %2020 = fmul <8 x double> %2019, %2015
  br label %2024

2021:                                             ; preds = %1940
  %2022 = load <8 x double>, ptr %1867, align 64, !tbaa !26
  %2023 = load <8 x double>, ptr %1878, align 64, !tbaa !26
  br label %2024

2024:                                             ; preds = %2021, %2014
  %2025 = phi <8 x double> [ %2017, %2014 ], [ %2022, %2021 ]
  %2026 = phi <8 x double> [ %2018, %2014 ], [ %2023, %2021 ]
  %2027 = phi <8 x double> [ %2020, %2014 ], [ %1936, %2021 ]
  %2028 = phi <8 x double> [ %1954, %2014 ], [ %1941, %2021 ]
  %2029 = phi <8 x double> [ %1964, %2014 ], [ %1947, %2021 ]
  %2030 = phi <8 x double> [ %1965, %2014 ], [ %1949, %2021 ]
  %2031 = getelementptr inbounds nuw <8 x double>, ptr %1912, i64 %1948
  %2032 = load <8 x double>, ptr %2031, align 64, !tbaa !26
  %2033 = icmp slt i64 %1948, %1790
  %2034 = select i1 %2033, <8 x double> %1904, <8 x double> %1906
  %2035 = fmul <8 x double> %1695, %2034
  %2036 = fmul <8 x double> %2035, %2032
  %2037 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2036, <8 x double> %1947, <8 x double> %2025)
  %2038 = fadd <8 x double> %1943, %2037
  %2039 = fsub <8 x double> %2027, %1944
  %2040 = fneg <8 x double> %2036
  %2041 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2040, <8 x double> %1949, <8 x double> %2039)
  %2042 = getelementptr inbounds nuw <8 x double>, ptr %1914, i64 %1948
  %2043 = load <8 x double>, ptr %2042, align 64, !tbaa !26
  %2044 = fsub <8 x double> %2041, %2043
  %2045 = fneg <8 x double> %1942
  %2046 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2045, <8 x double> %1946, <8 x double> %2038)
  %2047 = fdiv <8 x double> splat (double 1.000000e+00), %2046
  %2048 = getelementptr inbounds nuw <8 x double>, ptr %1916, i64 %1948
  store <8 x double> %2044, ptr %2048, align 64, !tbaa !26
  %2049 = getelementptr inbounds nuw <8 x double>, ptr %1918, i64 %1948
  store <8 x double> %1942, ptr %2049, align 64, !tbaa !26
  %2050 = fadd <8 x double> %1942, %2026
  %2051 = fsub <8 x double> %2050, %2038
  %2052 = getelementptr inbounds nuw <8 x double>, ptr %1920, i64 %1948
  store <8 x double> %2051, ptr %2052, align 64, !tbaa !26
  %2053 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1942, <8 x double> %1945, <8 x double> %2044)
  %2054 = fmul <8 x double> %2053, %2047
  %2055 = getelementptr inbounds nuw <8 x double>, ptr %1922, i64 %1948
  store <8 x double> %2054, ptr %2055, align 64, !tbaa !26
  %2056 = fmul <8 x double> %2026, %2047
  %2057 = getelementptr inbounds nuw <8 x double>, ptr %1924, i64 %1948
  store <8 x double> %2056, ptr %2057, align 64, !tbaa !26
  %2058 = icmp eq i64 %1950, %1905
  br i1 %2058, label %2172, label %1940, !llvm.loop !88

2059:                                             ; preds = %1827
  %2060 = getelementptr inbounds nuw i8, ptr %1509, i64 1536
  %2061 = load <8 x double>, ptr %2060, align 64, !tbaa !26
  %2062 = load i64, ptr %119, align 16, !tbaa !21
  %2063 = fdiv <8 x double> %1787, %1696
  %2064 = fsub <8 x double> %1766, %2061
  %2065 = fmul <8 x double> %1695, %2064
  %2066 = fmul <8 x double> %1872, splat (double 5.000000e-01)
  %2067 = fmul <8 x double> %1874, splat (double 0x3FE5555555555555)
  %2068 = getelementptr inbounds nuw i8, ptr %1509, i64 8608
  %2069 = load ptr, ptr %2068, align 32, !tbaa !72
  %2070 = getelementptr inbounds nuw i8, ptr %1509, i64 8616
  %2071 = load ptr, ptr %2070, align 8, !tbaa !47
  %2072 = getelementptr inbounds nuw i8, ptr %1509, i64 8544
  %2073 = load ptr, ptr %2072, align 32, !tbaa !58
  %2074 = getelementptr inbounds nuw i8, ptr %1509, i64 8584
  %2075 = load ptr, ptr %2074, align 8, !tbaa !83
  %2076 = getelementptr inbounds nuw i8, ptr %1509, i64 8592
  %2077 = load ptr, ptr %2076, align 16, !tbaa !84
  %2078 = getelementptr inbounds nuw i8, ptr %1509, i64 8600
  %2079 = load ptr, ptr %2078, align 8, !tbaa !85
  %2080 = getelementptr inbounds nuw i8, ptr %1509, i64 8568
  %2081 = load ptr, ptr %2080, align 8, !tbaa !86
  %2082 = getelementptr inbounds nuw i8, ptr %1509, i64 8576
  %2083 = load ptr, ptr %2082, align 64, !tbaa !87
  %2084 = icmp sgt i64 %2062, 0
  br i1 %2084, label %2085, label %2172

2085:                                             ; preds = %2059
  %2086 = load <8 x double>, ptr %1843, align 64, !tbaa !26
  %2087 = fneg <8 x double> %2086
  %2088 = fmul <8 x double> %2086, %2087
  %2089 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2086, <8 x double> %2067, <8 x double> %2066)
  %2090 = fmul <8 x double> %2088, %2089
  %2091 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2086, <8 x double> %1874, <8 x double> %1872)
  %2092 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2086, <8 x double> %2091, <8 x double> %1870)
  %2093 = fmul <8 x double> %1775, splat (double -2.000000e+00)
  %2094 = fmul <8 x double> %2093, %1834
  %2095 = fmul <8 x double> %1834, %2094
  %2096 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1834, <8 x double> %2067, <8 x double> %2066)
  %2097 = fmul <8 x double> %2095, %2096
  %2098 = getelementptr inbounds nuw i8, ptr %1509, i64 8632
  br label %2099

2099:                                             ; preds = %2085, %2140
  %2100 = phi <8 x double> [ %2086, %2085 ], [ %2144, %2140 ]
  %2101 = phi <8 x double> [ zeroinitializer, %2085 ], [ %2141, %2140 ]
  %2102 = phi <8 x double> [ zeroinitializer, %2085 ], [ %2142, %2140 ]
  %2103 = phi <8 x double> [ zeroinitializer, %2085 ], [ %2143, %2140 ]
  %2104 = phi <8 x double> [ zeroinitializer, %2085 ], [ %2167, %2140 ]
  %2105 = phi <8 x double> [ zeroinitializer, %2085 ], [ %2169, %2140 ]
  %2106 = phi <8 x double> [ %2092, %2085 ], [ %2145, %2140 ]
  %2107 = phi i64 [ 0, %2085 ], [ %2109, %2140 ]
  %2108 = phi <8 x double> [ %2090, %2085 ], [ %2146, %2140 ]
  %2109 = add nuw nsw i64 %2107, 1
  %2110 = icmp slt i64 %2109, %2062
  br i1 %2110, label %2111, label %2137

2111:                                             ; preds = %2099
  %2112 = getelementptr inbounds nuw <8 x double>, ptr %1843, i64 %2109
  %2113 = load <8 x double>, ptr %2112, align 64, !tbaa !26
  %2114 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2113, <8 x double> %1874, <8 x double> %1872)
  %2115 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2113, <8 x double> %2114, <8 x double> %1870)
  %2116 = fneg <8 x double> %2113
  %2117 = fmul <8 x double> %2113, %2116
  %2118 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2113, <8 x double> %2067, <8 x double> %2066)
  %2119 = fmul <8 x double> %2117, %2118
  %2120 = fadd <8 x double> %2100, %2113
  %2121 = fmul <8 x double> %2120, splat (double 5.000000e-01)
  %2122 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2121, <8 x double> %1855, <8 x double> %1853)
  %2123 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2121, <8 x double> %2122, <8 x double> %1851)
  %2124 = load ptr, ptr %2098, align 8, !tbaa !36
  %2125 = getelementptr inbounds nuw <8 x double>, ptr %2124, i64 %2109
  %2126 = load <8 x double>, ptr %2125, align 64, !tbaa !26
  %2127 = fmul <8 x double> %2063, %2126
  %2128 = fmul <8 x double> %2127, %2123
  %2129 = getelementptr inbounds nuw <8 x double>, ptr %2069, i64 %2109
  %2130 = load <8 x double>, ptr %2129, align 64, !tbaa !26
  %2131 = fmul <8 x double> %1775, %2130
  %2132 = fneg <8 x double> %2131
  %2133 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2132, <8 x double> %2106, <8 x double> %2128)
  %2134 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2131, <8 x double> %2115, <8 x double> %2128)
  %2135 = fadd <8 x double> %2108, %2119
  %2136 = fmul <8 x double> %2135, %2131
  br label %2140

2137:                                             ; preds = %2099
  %2138 = load <8 x double>, ptr %1867, align 64, !tbaa !26
  %2139 = load <8 x double>, ptr %1878, align 64, !tbaa !26
  br label %2140

2140:                                             ; preds = %2137, %2111
  %2141 = phi <8 x double> [ %2133, %2111 ], [ %2138, %2137 ]
  %2142 = phi <8 x double> [ %2134, %2111 ], [ %2139, %2137 ]
  %2143 = phi <8 x double> [ %2136, %2111 ], [ %2097, %2137 ]
  %2144 = phi <8 x double> [ %2113, %2111 ], [ %2100, %2137 ]
  %2145 = phi <8 x double> [ %2115, %2111 ], [ %2106, %2137 ]
  %2146 = phi <8 x double> [ %2119, %2111 ], [ %2108, %2137 ]
  %2147 = getelementptr inbounds nuw <8 x double>, ptr %2071, i64 %2107
  %2148 = load <8 x double>, ptr %2147, align 64, !tbaa !26
  %2149 = fmul <8 x double> %2065, %2148
  %2150 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2149, <8 x double> %2106, <8 x double> %2141)
  %2151 = fadd <8 x double> %2102, %2150
  %2152 = fsub <8 x double> %2143, %2103
  %2153 = fneg <8 x double> %2149
  %2154 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2153, <8 x double> %2108, <8 x double> %2152)
  %2155 = getelementptr inbounds nuw <8 x double>, ptr %2073, i64 %2107
  %2156 = load <8 x double>, ptr %2155, align 64, !tbaa !26
  %2157 = fsub <8 x double> %2154, %2156
  %2158 = fneg <8 x double> %2101
  %2159 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2158, <8 x double> %2105, <8 x double> %2151)
  %2160 = fdiv <8 x double> splat (double 1.000000e+00), %2159
  %2161 = getelementptr inbounds nuw <8 x double>, ptr %2075, i64 %2107
  store <8 x double> %2157, ptr %2161, align 64, !tbaa !26
  %2162 = getelementptr inbounds nuw <8 x double>, ptr %2077, i64 %2107
  store <8 x double> %2101, ptr %2162, align 64, !tbaa !26
  %2163 = fadd <8 x double> %2101, %2142
  %2164 = fsub <8 x double> %2163, %2151
  %2165 = getelementptr inbounds nuw <8 x double>, ptr %2079, i64 %2107
  store <8 x double> %2164, ptr %2165, align 64, !tbaa !26
  %2166 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2101, <8 x double> %2104, <8 x double> %2157)
  %2167 = fmul <8 x double> %2166, %2160
  %2168 = getelementptr inbounds nuw <8 x double>, ptr %2081, i64 %2107
  store <8 x double> %2167, ptr %2168, align 64, !tbaa !26
  %2169 = fmul <8 x double> %2142, %2160
  %2170 = getelementptr inbounds nuw <8 x double>, ptr %2083, i64 %2107
  store <8 x double> %2169, ptr %2170, align 64, !tbaa !26
  %2171 = icmp eq i64 %2109, %2062
  br i1 %2171, label %2172, label %2099, !llvm.loop !89

2172:                                             ; preds = %2024, %2140, %1898, %2059
  %2173 = getelementptr inbounds nuw i8, ptr %1509, i64 8128
  store <8 x double> splat (double 1.000000e+09), ptr %2173, align 64, !tbaa !26
  %2174 = getelementptr inbounds nuw i8, ptr %1509, i64 8568
  %2175 = load ptr, ptr %2174, align 8, !tbaa !86
  %2176 = load i64, ptr %119, align 16, !tbaa !21
  %2177 = add nsw i64 %2176, -1
  %2178 = getelementptr inbounds <8 x double>, ptr %2175, i64 %2177
  %2179 = load <8 x double>, ptr %2178, align 64, !tbaa !26
  %2180 = getelementptr inbounds nuw i8, ptr %1509, i64 8576
  %2181 = load ptr, ptr %2180, align 64, !tbaa !87
  %2182 = getelementptr inbounds <8 x double>, ptr %2181, i64 %2177
  %2183 = load <8 x double>, ptr %2182, align 64, !tbaa !26
  %2184 = load <8 x double>, ptr %1867, align 64, !tbaa !26
  %2185 = fmul <8 x double> %2179, %2184
  %2186 = fsub <8 x double> splat (double 1.000000e+00), %2183
  %2187 = fmul <8 x double> %2184, %2186
  %2188 = load <8 x double>, ptr %1892, align 64, !tbaa !26
  %2189 = load <8 x double>, ptr %1706, align 64, !tbaa !26
  %2190 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2188, <8 x double> %2189, <8 x double> %2185)
  %2191 = load <8 x double>, ptr %1742, align 64, !tbaa !26
  %2192 = fsub <8 x double> %2190, %2191
  %2193 = fadd <8 x double> %2187, %2188
  %2194 = load <8 x double>, ptr %1739, align 64, !tbaa !26
  %2195 = fadd <8 x double> %2193, %2194
  %2196 = load <8 x i64>, ptr %1725, align 64, !tbaa !26
  %2197 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2196)
  %2198 = icmp eq i64 %2197, 0
  %2199 = load i64, ptr %120, align 8, !tbaa !22
  br i1 %2198, label %2200, label %2215

2200:                                             ; preds = %2172
  %2201 = icmp slt i64 %2199, 0
  br i1 %2201, label %2206, label %2202

2202:                                             ; preds = %2200
  %2203 = getelementptr inbounds nuw i8, ptr %1509, i64 1408
  %2204 = getelementptr inbounds nuw i8, ptr %1509, i64 8688
  %2205 = load <8 x double>, ptr %2203, align 64, !tbaa !26
  br label %2208

2206:                                             ; preds = %2208, %2200
  %2207 = getelementptr inbounds nuw i8, ptr %1509, i64 6208
  store <8 x double> %2192, ptr %2207, align 64, !tbaa !26
  br label %2342

2208:                                             ; preds = %2202, %2208
  %2209 = phi i64 [ 0, %2202 ], [ %2212, %2208 ]
  %2210 = load ptr, ptr %2204, align 16, !tbaa !90
  %2211 = getelementptr inbounds nuw <8 x double>, ptr %2210, i64 %2209
  store <8 x double> %2205, ptr %2211, align 64, !tbaa !26
  %2212 = add nuw nsw i64 %2209, 1
  %2213 = load i64, ptr %120, align 8, !tbaa !22
  %2214 = icmp slt i64 %2209, %2213
  br i1 %2214, label %2208, label %2206, !llvm.loop !91

2215:                                             ; preds = %2172
  %2216 = load <8 x double>, ptr %1729, align 64, !tbaa !26
  %2217 = load <8 x double>, ptr %1755, align 64, !tbaa !26
  %2218 = getelementptr inbounds nuw i8, ptr %1509, i64 1280
  %2219 = load <8 x double>, ptr %2218, align 64, !tbaa !26
  %2220 = fmul <8 x double> %2217, %2219
  %2221 = load <8 x double>, ptr %1509, align 64, !tbaa !26
  %2222 = fsub <8 x double> %2221, %2216
  %2223 = sitofp i64 %2199 to double
  %2224 = insertelement <8 x double> poison, double %2223, i64 0
  %2225 = shufflevector <8 x double> %2224, <8 x double> poison, <8 x i32> zeroinitializer
  %2226 = fdiv <8 x double> %2222, %2225
  %2227 = load <8 x double>, ptr %1895, align 64, !tbaa !26
  %2228 = load <8 x double>, ptr %1897, align 64, !tbaa !26
  %2229 = getelementptr inbounds nuw i8, ptr %1509, i64 1408
  %2230 = load <8 x double>, ptr %2229, align 64, !tbaa !26
  %2231 = getelementptr inbounds nuw i8, ptr %1509, i64 8688
  %2232 = load ptr, ptr %2231, align 16, !tbaa !90
  %2233 = getelementptr inbounds <8 x double>, ptr %2232, i64 %2199
  store <8 x double> %2230, ptr %2233, align 64, !tbaa !26
  %2234 = icmp sgt i64 %2199, 0
  br i1 %2234, label %2235, label %2326

2235:                                             ; preds = %2215
  %2236 = fneg <8 x double> %2220
  %2237 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2236, <8 x double> %2228, <8 x double> %2227)
  %2238 = fsub <8 x double> splat (double 1.000000e+00), %2228
  %2239 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2220, <8 x double> %2238, <8 x double> %2227)
  %2240 = getelementptr inbounds nuw i8, ptr %1509, i64 8696
  %2241 = getelementptr inbounds nuw i8, ptr %1509, i64 8704
  %2242 = getelementptr inbounds nuw i8, ptr %1509, i64 768
  %2243 = fmul <8 x double> %2220, splat (double -5.000000e-01)
  %2244 = getelementptr inbounds nuw i8, ptr %1509, i64 8664
  %2245 = getelementptr inbounds nuw i8, ptr %1509, i64 8672
  %2246 = getelementptr inbounds nuw i8, ptr %1509, i64 8680
  br label %2247

2247:                                             ; preds = %2235, %2301
  %2248 = phi <8 x double> [ %2239, %2235 ], [ %2303, %2301 ]
  %2249 = phi <8 x double> [ %2237, %2235 ], [ %2304, %2301 ]
  %2250 = phi <8 x double> [ %2189, %2235 ], [ %2319, %2301 ]
  %2251 = phi <8 x double> [ zeroinitializer, %2235 ], [ %2322, %2301 ]
  %2252 = phi <8 x double> [ %2230, %2235 ], [ %2265, %2301 ]
  %2253 = phi i64 [ %2199, %2235 ], [ %2254, %2301 ]
  %2254 = add nsw i64 %2253, -1
  %2255 = uitofp nneg i64 %2254 to double
  %2256 = insertelement <8 x double> poison, double %2255, i64 0
  %2257 = shufflevector <8 x double> %2256, <8 x double> poison, <8 x i32> zeroinitializer
  %2258 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2257, <8 x double> %2226, <8 x double> %2216)
  %2259 = load <8 x double>, ptr %1756, align 64, !tbaa !26
  %2260 = load <8 x double>, ptr %1758, align 64, !tbaa !26
  %2261 = load <8 x double>, ptr %1760, align 64, !tbaa !26
  %2262 = load <8 x double>, ptr %1762, align 64, !tbaa !26
  %2263 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2258, <8 x double> %2262, <8 x double> %2261)
  %2264 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2258, <8 x double> %2263, <8 x double> %2260)
  %2265 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2258, <8 x double> %2264, <8 x double> %2259)
  %2266 = load <8 x double>, ptr %1734, align 64, !tbaa !26
  %2267 = load <8 x double>, ptr %1717, align 64, !tbaa !26
  %2268 = load ptr, ptr %2240, align 8, !tbaa !48
  %2269 = getelementptr inbounds nuw <8 x double>, ptr %2268, i64 %2254
  %2270 = load <8 x double>, ptr %2269, align 64, !tbaa !26
  %2271 = fmul <8 x double> %2267, %2270
  %2272 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2266, <8 x double> %2265, <8 x double> %2271)
  %2273 = load <8 x double>, ptr %1720, align 64, !tbaa !26
  %2274 = load ptr, ptr %2241, align 64, !tbaa !59
  %2275 = getelementptr inbounds nuw <8 x double>, ptr %2274, i64 %2254
  %2276 = load <8 x double>, ptr %2275, align 64, !tbaa !26
  %2277 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2273, <8 x double> %2276, <8 x double> %2272)
  %2278 = fmul <8 x double> %2277, splat (double 5.000000e-01)
  %2279 = icmp eq i64 %2253, 1
  br i1 %2279, label %2295, label %2280

2280:                                             ; preds = %2247
  %2281 = load <8 x double>, ptr %2242, align 64, !tbaa !26
  %2282 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2278, <8 x double> %2281, <8 x double> %2243)
  %2283 = load <8 x double>, ptr %1841, align 64, !tbaa !26
  %2284 = fmul <8 x double> %2225, %2283
  %2285 = load <8 x double>, ptr %1777, align 64, !tbaa !26
  %2286 = load <8 x double>, ptr %1779, align 64, !tbaa !26
  %2287 = load <8 x double>, ptr %1781, align 64, !tbaa !26
  %2288 = load <8 x double>, ptr %1783, align 64, !tbaa !26
  %2289 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2258, <8 x double> %2288, <8 x double> %2287)
  %2290 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2258, <8 x double> %2289, <8 x double> %2286)
  %2291 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2258, <8 x double> %2290, <8 x double> %2285)
  %2292 = fmul <8 x double> %2284, %2291
  %2293 = fsub <8 x double> %2292, %2282
  %2294 = fadd <8 x double> %2282, %2292
  br label %2301

2295:                                             ; preds = %2247
  %2296 = load <8 x double>, ptr %1892, align 64, !tbaa !26
  %2297 = load <8 x double>, ptr %2242, align 64, !tbaa !26
  %2298 = fmul <8 x double> %2278, splat (double -2.000000e+00)
  %2299 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2298, <8 x double> %2297, <8 x double> %2296)
  %2300 = fadd <8 x double> %2220, %2299
  br label %2301

2301:                                             ; preds = %2295, %2280
  %2302 = phi <8 x double> [ %2281, %2280 ], [ %2297, %2295 ]
  %2303 = phi <8 x double> [ %2293, %2280 ], [ %2300, %2295 ]
  %2304 = phi <8 x double> [ %2294, %2280 ], [ %2296, %2295 ]
  %2305 = fsub <8 x double> %2252, %2265
  %2306 = fmul <8 x double> %2266, %2305
  %2307 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2306, <8 x double> %2302, <8 x double> %2248)
  %2308 = fadd <8 x double> %2304, %2307
  %2309 = fneg <8 x double> %2249
  %2310 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2309, <8 x double> %2251, <8 x double> %2308)
  %2311 = fdiv <8 x double> splat (double 1.000000e+00), %2310
  %2312 = load ptr, ptr %2231, align 16, !tbaa !90
  %2313 = getelementptr inbounds nuw <8 x double>, ptr %2312, i64 %2254
  store <8 x double> %2265, ptr %2313, align 64, !tbaa !26
  %2314 = load ptr, ptr %2244, align 8, !tbaa !62
  %2315 = getelementptr inbounds nuw <8 x double>, ptr %2314, i64 %2254
  %2316 = load <8 x double>, ptr %2315, align 64, !tbaa !26
  %2317 = fneg <8 x double> %2316
  %2318 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2249, <8 x double> %2250, <8 x double> %2317)
  %2319 = fmul <8 x double> %2311, %2318
  %2320 = load ptr, ptr %2245, align 32, !tbaa !92
  %2321 = getelementptr inbounds nuw <8 x double>, ptr %2320, i64 %2254
  store <8 x double> %2319, ptr %2321, align 64, !tbaa !26
  %2322 = fmul <8 x double> %2303, %2311
  %2323 = load ptr, ptr %2246, align 8, !tbaa !93
  %2324 = getelementptr inbounds nuw <8 x double>, ptr %2323, i64 %2254
  store <8 x double> %2322, ptr %2324, align 64, !tbaa !26
  %2325 = icmp samesign ugt i64 %2253, 1
  br i1 %2325, label %2247, label %2326, !llvm.loop !94

2326:                                             ; preds = %2301, %2215
  %2327 = load <8 x i64>, ptr %1725, align 64, !tbaa !26
  %2328 = load <8 x double>, ptr %1892, align 64, !tbaa !26
  %2329 = getelementptr inbounds nuw i8, ptr %1509, i64 8672
  %2330 = load ptr, ptr %2329, align 32, !tbaa !92
  %2331 = load <8 x double>, ptr %2330, align 64, !tbaa !26
  %2332 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2328, <8 x double> %2331, <8 x double> %2185)
  %2333 = icmp eq <8 x i64> %2327, zeroinitializer
  %2334 = select <8 x i1> %2333, <8 x double> %2192, <8 x double> %2332
  %2335 = getelementptr inbounds nuw i8, ptr %1509, i64 6208
  store <8 x double> %2334, ptr %2335, align 64, !tbaa !26
  %2336 = getelementptr inbounds nuw i8, ptr %1509, i64 8680
  %2337 = load ptr, ptr %2336, align 8, !tbaa !93
  %2338 = load <8 x double>, ptr %2337, align 64, !tbaa !26
  %2339 = fsub <8 x double> splat (double 1.000000e+00), %2338
  %2340 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2328, <8 x double> %2339, <8 x double> %2187)
  %2341 = select <8 x i1> %2333, <8 x double> %2195, <8 x double> %2340
  br label %2342

2342:                                             ; preds = %2206, %2326
  %2343 = phi <8 x double> [ %2195, %2206 ], [ %2341, %2326 ]
  %2344 = getelementptr inbounds nuw i8, ptr %1509, i64 6272
  store <8 x double> %2343, ptr %2344, align 64, !tbaa !26
  %2345 = add nuw nsw i64 %1507, 1
  %2346 = load i64, ptr %156, align 8, !tbaa !20
  %2347 = icmp slt i64 %2345, %2346
  br i1 %2347, label %1506, label %1503, !llvm.loop !95

2348:                                             ; preds = %2451
  %2349 = icmp sgt i64 %2452, 0
  br label %2350

2350:                                             ; preds = %2348, %1494, %1503
  %2351 = phi <8 x double> [ %1504, %1503 ], [ %1495, %1494 ], [ %1504, %2348 ]
  %2352 = phi i1 [ false, %1503 ], [ false, %1494 ], [ %2349, %2348 ]
  %2353 = fcmp ogt <8 x double> %2351, zeroinitializer
  %2354 = bitcast <8 x i1> %2353 to i8
  %2355 = icmp eq i8 %2354, 0
  br i1 %2355, label %2538, label %2455

2356:                                             ; preds = %1503, %2451
  %2357 = phi i64 [ %2452, %2451 ], [ %2346, %1503 ]
  %2358 = phi i64 [ %2453, %2451 ], [ 0, %1503 ]
  %2359 = load ptr, ptr %129, align 8, !tbaa !28
  %2360 = getelementptr inbounds nuw %struct.Piece, ptr %2359, i64 %2358
  %2361 = getelementptr inbounds nuw i8, ptr %2360, i64 8448
  %2362 = load <8 x i64>, ptr %2361, align 64, !tbaa !26
  %2363 = getelementptr inbounds nuw i8, ptr %2360, i64 2240
  %2364 = load <8 x double>, ptr %2363, align 64, !tbaa !26
  %2365 = fcmp ogt <8 x double> %2364, zeroinitializer
  %2366 = select <8 x i1> %2365, <8 x i64> %2362, <8 x i64> zeroinitializer
  %2367 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2366)
  %2368 = icmp eq i64 %2367, 0
  br i1 %2368, label %2451, label %2369

2369:                                             ; preds = %2356
  %2370 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %2371 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2370, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2372 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2370, <8 x double> %2371, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2373 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %2374 = getelementptr inbounds nuw i8, ptr %2360, i64 6208
  %2375 = load <8 x double>, ptr %2374, align 64, !tbaa !26
  %2376 = getelementptr inbounds nuw i8, ptr %2360, i64 6272
  %2377 = load <8 x double>, ptr %2376, align 64, !tbaa !26
  %2378 = fdiv <8 x double> %2375, %2377
  %2379 = fcmp olt <8 x double> %2378, %2370
  %2380 = select <8 x i1> %2379, <8 x double> %2378, <8 x double> %2370
  %2381 = getelementptr inbounds nuw i8, ptr %2360, i64 3584
  %2382 = load <8 x double>, ptr %2381, align 64, !tbaa !26
  %2383 = fcmp olt <8 x double> %2382, %2380
  %2384 = select <8 x i1> %2383, <8 x double> %2382, <8 x double> %2380
  %2385 = fneg <8 x double> %2377
  %2386 = getelementptr inbounds nuw i8, ptr %2360, i64 7488
  %2387 = load <8 x double>, ptr %2386, align 64, !tbaa !26
  br label %2391

2388:                                             ; preds = %2391
  %2389 = getelementptr inbounds nuw i8, ptr %2360, i64 6336
  store <8 x double> %2442, ptr %2389, align 64, !tbaa !26
  %2390 = load i64, ptr %156, align 8, !tbaa !20
  br label %2451

2391:                                             ; preds = %2369, %2391
  %2392 = phi <8 x i64> [ %2366, %2369 ], [ %2445, %2391 ]
  %2393 = phi i32 [ 0, %2369 ], [ %2446, %2391 ]
  %2394 = phi <8 x double> [ %2384, %2369 ], [ %2442, %2391 ]
  %2395 = fadd <8 x double> %2394, splat (double 2.731500e+02)
  %2396 = fcmp ogt <8 x double> %2394, zeroinitializer
  %2397 = select <8 x i1> %2396, <8 x double> %2394, <8 x double> zeroinitializer
  %2398 = fadd <8 x double> %2397, splat (double 2.731500e+02)
  %2399 = fadd <8 x double> %2398, splat (double 0xC08451671D164BD4)
  %2400 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %2399
  %2401 = fsub <8 x double> %2398, %2400
  %2402 = fadd <8 x double> %2401, splat (double 0x40923C3565924845)
  %2403 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2401, <8 x double> %2402, <8 x double> splat (double 0xC12619EA558539E6))
  %2404 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2401, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %2405 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2401, <8 x double> %2404, <8 x double> splat (double 0xC148A99584203885))
  %2406 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2401, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %2407 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2401, <8 x double> %2406, <8 x double> splat (double 0x4118B9E59F2691E5))
  %2408 = fmul <8 x double> %2407, splat (double 2.000000e+00)
  %2409 = fmul <8 x double> %2403, splat (double 4.000000e+00)
  %2410 = fneg <8 x double> %2407
  %2411 = fmul <8 x double> %2409, %2410
  %2412 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2405, <8 x double> %2405, <8 x double> %2411)
  %2413 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2412)
  %2414 = fsub <8 x double> %2413, %2405
  %2415 = fdiv <8 x double> %2408, %2414
  %2416 = fmul <8 x double> %2415, %2415
  %2417 = fmul <8 x double> %2416, splat (double 1.000000e+06)
  %2418 = fmul <8 x double> %2416, %2417
  %2419 = fmul <8 x double> %2395, splat (double 4.615260e+02)
  %2420 = fdiv <8 x double> %2418, %2419
  %2421 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2385, <8 x double> %2394, <8 x double> %2375)
  %2422 = fsub <8 x double> %2420, %2373
  %2423 = fcmp ogt <8 x double> %2422, zeroinitializer
  %2424 = select <8 x i1> %2423, <8 x double> %2422, <8 x double> zeroinitializer
  %2425 = fmul <8 x double> %2372, %2424
  %2426 = fdiv <8 x double> %2425, %2387
  %2427 = fsub <8 x double> %2421, %2426
  %2428 = fmul <8 x double> %2372, %2420
  %2429 = fdiv <8 x double> %2372, %2419
  %2430 = fadd <8 x double> %2429, splat (double -1.000000e+00)
  %2431 = fmul <8 x double> %2430, %2428
  %2432 = fdiv <8 x double> %2431, %2395
  %2433 = fdiv <8 x double> %2432, %2387
  %2434 = fcmp ule <8 x double> %2420, %2373
  %2435 = select <8 x i1> %2434, <8 x double> zeroinitializer, <8 x double> %2433
  %2436 = fsub <8 x double> %2385, %2435
  %2437 = fdiv <8 x double> %2427, %2436
  %2438 = fsub <8 x double> %2394, %2437
  %2439 = fcmp olt <8 x double> %2438, %2380
  %2440 = select <8 x i1> %2439, <8 x double> %2438, <8 x double> %2380
  %2441 = icmp eq <8 x i64> %2392, zeroinitializer
  %2442 = select <8 x i1> %2441, <8 x double> %2394, <8 x double> %2440
  %2443 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2437)
  %2444 = fcmp oge <8 x double> %2443, splat (double 1.000000e-05)
  %2445 = select <8 x i1> %2444, <8 x i64> %2392, <8 x i64> zeroinitializer
  %2446 = add nuw nsw i32 %2393, 1
  %2447 = icmp samesign ult i32 %2393, 7
  %2448 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2445)
  %2449 = icmp ne i64 %2448, 0
  %2450 = select i1 %2447, i1 %2449, i1 false
  br i1 %2450, label %2391, label %2388, !llvm.loop !96

2451:                                             ; preds = %2356, %2388
  %2452 = phi i64 [ %2357, %2356 ], [ %2390, %2388 ]
  %2453 = add nuw nsw i64 %2358, 1
  %2454 = icmp slt i64 %2453, %2452
  br i1 %2454, label %2356, label %2348, !llvm.loop !97

2455:                                             ; preds = %2350
  %2456 = sext <8 x i1> %2353 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %2456, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %2457 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %2458 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2459 = fadd <8 x double> %2457, %2458
  store <8 x double> %2459, ptr %6, align 64, !tbaa !26
  %2460 = load ptr, ptr %169, align 8
  %2461 = load ptr, ptr %171, align 8
  %2462 = load ptr, ptr %172, align 8
  br label %2463

2463:                                             ; preds = %2533, %2455
  %2464 = phi i64 [ 0, %2455 ], [ %2534, %2533 ]
  %2465 = getelementptr inbounds nuw i64, ptr %4, i64 %2464
  %2466 = load i64, ptr %2465, align 8, !tbaa !30
  %2467 = icmp eq i64 %2466, 0
  br i1 %2467, label %2533, label %2468

2468:                                             ; preds = %2463
  %2469 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %2464
  %2470 = load i64, ptr %2469, align 8, !tbaa !30
  %2471 = shl nsw i64 %2470, 1
  %2472 = or disjoint i64 %2471, 1
  %2473 = getelementptr inbounds i64, ptr %2460, i64 %2472
  %2474 = load i64, ptr %2473, align 8, !tbaa !30
  %2475 = shl nuw nsw i64 %2464, 1
  %2476 = or disjoint i64 %2475, 1
  %2477 = getelementptr inbounds nuw [16 x i64], ptr %170, i64 0, i64 %2476
  %2478 = getelementptr inbounds i64, ptr %2462, i64 %2472
  %2479 = load i64, ptr %2478, align 8, !tbaa !30
  %2480 = shl nsw i64 %2479, 4
  %2481 = getelementptr inbounds i8, ptr %2461, i64 %2480
  %2482 = getelementptr inbounds nuw double, ptr %6, i64 %2464
  %2483 = load double, ptr %2482, align 8, !tbaa !41
  %2484 = load i64, ptr %2477, align 8, !tbaa !30
  %2485 = getelementptr i8, ptr %2481, i64 -16
  %2486 = icmp sgt i64 %2484, 0
  br i1 %2486, label %2487, label %2496

2487:                                             ; preds = %2468, %2493
  %2488 = phi i64 [ %2494, %2493 ], [ %2484, %2468 ]
  %2489 = shl i64 %2488, 4
  %2490 = getelementptr i8, ptr %2485, i64 %2489
  %2491 = load double, ptr %2490, align 8, !tbaa !41
  %2492 = fcmp ugt double %2483, %2491
  br i1 %2492, label %2496, label %2493

2493:                                             ; preds = %2487
  %2494 = add nsw i64 %2488, -1
  store i64 %2494, ptr %2477, align 8, !tbaa !30
  %2495 = icmp sgt i64 %2488, 1
  br i1 %2495, label %2487, label %2496, !llvm.loop !77

2496:                                             ; preds = %2493, %2487, %2468
  %2497 = phi i64 [ %2484, %2468 ], [ 0, %2493 ], [ %2488, %2487 ]
  %2498 = icmp slt i64 %2497, %2474
  br i1 %2498, label %2499, label %2508

2499:                                             ; preds = %2496, %2505
  %2500 = phi i64 [ %2506, %2505 ], [ %2497, %2496 ]
  %2501 = shl nsw i64 %2500, 4
  %2502 = getelementptr inbounds i8, ptr %2481, i64 %2501
  %2503 = load double, ptr %2502, align 8, !tbaa !41
  %2504 = fcmp ule double %2483, %2503
  br i1 %2504, label %2513, label %2505

2505:                                             ; preds = %2499
  %2506 = add i64 %2500, 1
  store i64 %2506, ptr %2477, align 8, !tbaa !30
  %2507 = icmp eq i64 %2506, %2474
  br i1 %2507, label %2508, label %2499, !llvm.loop !78

2508:                                             ; preds = %2505, %2496
  %2509 = shl i64 %2474, 4
  %2510 = getelementptr i8, ptr %2481, i64 %2509
  %2511 = getelementptr i8, ptr %2510, i64 -8
  %2512 = load double, ptr %2511, align 8, !tbaa !41
  br label %2530

2513:                                             ; preds = %2499
  %2514 = shl nsw i64 %2500, 1
  %2515 = or disjoint i64 %2514, 1
  %2516 = getelementptr inbounds double, ptr %2481, i64 %2515
  %2517 = load double, ptr %2516, align 8, !tbaa !41
  %2518 = icmp sgt i64 %2500, 0
  br i1 %2518, label %2519, label %2530

2519:                                             ; preds = %2513
  %2520 = getelementptr inbounds nuw i8, ptr %2481, i64 %2501
  %2521 = getelementptr i8, ptr %2520, i64 -8
  %2522 = load double, ptr %2521, align 8, !tbaa !41
  %2523 = getelementptr i8, ptr %2520, i64 -16
  %2524 = load double, ptr %2523, align 8, !tbaa !41
  %2525 = fsub double %2483, %2524
  %2526 = fsub double %2503, %2524
  %2527 = fdiv double %2525, %2526
  %2528 = fsub double %2517, %2522
  %2529 = tail call double @llvm.fmuladd.f64(double %2527, double %2528, double %2522)
  br label %2530

2530:                                             ; preds = %2519, %2513, %2508
  %2531 = phi double [ %2529, %2519 ], [ %2517, %2513 ], [ %2512, %2508 ]
  %2532 = getelementptr inbounds nuw double, ptr %5, i64 %2464
  store double %2531, ptr %2532, align 8, !tbaa !41
  br label %2533

2533:                                             ; preds = %2530, %2463
  %2534 = add nuw nsw i64 %2464, 1
  %2535 = icmp eq i64 %2534, 8
  br i1 %2535, label %2536, label %2463, !llvm.loop !79

2536:                                             ; preds = %2533
  %2537 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2538

2538:                                             ; preds = %2350, %2536
  %2539 = phi <8 x double> [ %2537, %2536 ], [ zeroinitializer, %2350 ]
  %2540 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %2541 = fcmp ogt <8 x double> %2540, zeroinitializer
  %2542 = sext <8 x i1> %2541 to <8 x i64>
  %2543 = xor <8 x i64> %2542, splat (i64 -1)
  %2544 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %2545 = fcmp oeq <8 x double> %2544, splat (double 1.000000e+00)
  %2546 = fcmp oeq <8 x double> %2544, splat (double 2.000000e+00)
  %2547 = or <8 x i1> %2545, %2546
  %2548 = select <8 x i1> %2547, <8 x i64> %2543, <8 x i64> zeroinitializer
  %2549 = xor <8 x i64> %2548, %2542
  %2550 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %2551 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %2552 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %2553 = icmp eq <8 x i64> %2549, splat (i64 -1)
  %2554 = select <8 x i1> %2553, <8 x double> %2552, <8 x double> %2551
  %2555 = bitcast <8 x i1> %2541 to i8
  %2556 = icmp eq i8 %2555, 0
  br i1 %2556, label %2588, label %2557

2557:                                             ; preds = %2538
  %2558 = select <8 x i1> %2541, <8 x double> %2539, <8 x double> %2554
  %2559 = fmul <8 x double> %2558, splat (double 0x3EB0C6F7A0B5ED8D)
  %2560 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2559)
  %2561 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2560)
  %2562 = fmul <8 x double> %2561, %2561
  %2563 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2561, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2562)
  %2564 = fadd <8 x double> %2563, splat (double 0x402DD4891DBECC6B)
  %2565 = fmul <8 x double> %2561, splat (double 0x40C77A698FD9BCCA)
  %2566 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2562, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2565)
  %2567 = fadd <8 x double> %2566, splat (double 0xC0B2D7440748F0B3)
  %2568 = fmul <8 x double> %2561, splat (double 0xC148A99584203885)
  %2569 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2562, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2568)
  %2570 = fadd <8 x double> %2569, splat (double 0x4118B9E59F2691E5)
  %2571 = fmul <8 x double> %2570, splat (double 2.000000e+00)
  %2572 = fneg <8 x double> %2567
  %2573 = fmul <8 x double> %2564, splat (double 4.000000e+00)
  %2574 = fneg <8 x double> %2570
  %2575 = fmul <8 x double> %2573, %2574
  %2576 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2567, <8 x double> %2567, <8 x double> %2575)
  %2577 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2576)
  %2578 = fsub <8 x double> %2572, %2577
  %2579 = fdiv <8 x double> %2571, %2578
  %2580 = fadd <8 x double> %2579, splat (double 0x408451671D164BD4)
  %2581 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2579, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2582 = fmul <8 x double> %2581, splat (double -4.000000e+00)
  %2583 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2580, <8 x double> %2580, <8 x double> %2582)
  %2584 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2583)
  %2585 = fsub <8 x double> %2580, %2584
  %2586 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2585, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2587 = select <8 x i1> %2541, <8 x double> %2586, <8 x double> %2550
  br label %2588

2588:                                             ; preds = %2557, %2538
  %2589 = phi <8 x double> [ %2558, %2557 ], [ %2554, %2538 ]
  %2590 = phi <8 x double> [ %2587, %2557 ], [ %2550, %2538 ]
  %2591 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %2592 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %2593 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %2594 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %2595 = fmul <8 x double> %2593, %2594
  %2596 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2591, <8 x double> %2592, <8 x double> %2595)
  %2597 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2598 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %2599 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2600 = fneg <8 x double> %2596
  %2601 = fmul <8 x double> %2599, %2600
  %2602 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2597, <8 x double> %2598, <8 x double> %2601)
  %2603 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %2604 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2599, <8 x double> %2603, <8 x double> %2597)
  %2605 = fdiv <8 x double> %2602, %2604
  %2606 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2607 = select <8 x i1> %2553, <8 x double> %2606, <8 x double> %2551
  store <8 x double> %2607, ptr %185, align 64, !tbaa !26
  %2608 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2609 = select <8 x i1> %2553, <8 x double> %2608, <8 x double> %2605
  store <8 x double> %2609, ptr %186, align 64, !tbaa !26
  store <8 x double> %2589, ptr %179, align 64, !tbaa !26
  %2610 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %2611 = and <8 x i64> %2610, %2548
  %2612 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2611)
  %2613 = icmp eq i64 %2612, 0
  br i1 %2613, label %3195, label %2614

2614:                                             ; preds = %2588
  %2615 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %2616 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %2617 = fmul <8 x double> %2593, %2616
  %2618 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2591, <8 x double> %2615, <8 x double> %2617)
  %2619 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %2620 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2621 = fdiv <8 x double> %2619, %2620
  %2622 = fmul <8 x double> %2551, splat (double 3.000000e-01)
  %2623 = load <8 x double>, ptr %191, align 64, !tbaa !26
  %2624 = fadd <8 x double> %2551, %2623
  %2625 = fadd <8 x double> %2624, splat (double 2.000000e+05)
  %2626 = fmul <8 x double> %2620, splat (double 2.870530e+02)
  %2627 = fdiv <8 x double> %2551, %2626
  %2628 = fcmp ogt <8 x double> %2589, %2622
  %2629 = select <8 x i1> %2628, <8 x double> %2589, <8 x double> %2622
  %2630 = fcmp olt <8 x double> %2629, %2625
  %2631 = select <8 x i1> %2630, <8 x double> %2629, <8 x double> %2625
  %2632 = icmp eq <8 x i64> %2548, zeroinitializer
  %2633 = select <8 x i1> %2632, <8 x double> %2589, <8 x double> %2631
  %2634 = fdiv <8 x double> %2607, splat (double 2.870530e+02)
  %2635 = fmul <8 x double> %2627, splat (double 2.000000e+00)
  %2636 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2635)
  br label %2637

2637:                                             ; preds = %2679, %2614
  %2638 = phi <8 x double> [ %2590, %2614 ], [ %2672, %2679 ]
  %2639 = phi <8 x double> [ %2622, %2614 ], [ %2870, %2679 ]
  %2640 = phi <8 x double> [ %2625, %2614 ], [ %2867, %2679 ]
  %2641 = phi <8 x i64> [ %2611, %2614 ], [ %2886, %2679 ]
  %2642 = phi i32 [ 0, %2614 ], [ %2891, %2679 ]
  %2643 = phi <8 x double> [ %2633, %2614 ], [ %2888, %2679 ]
  %2644 = fmul <8 x double> %2643, splat (double 0x3EB0C6F7A0B5ED8D)
  %2645 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2644)
  %2646 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2645)
  %2647 = fmul <8 x double> %2646, %2646
  %2648 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2646, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2647)
  %2649 = fadd <8 x double> %2648, splat (double 0x402DD4891DBECC6B)
  %2650 = fmul <8 x double> %2646, splat (double 0x40C77A698FD9BCCA)
  %2651 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2647, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2650)
  %2652 = fadd <8 x double> %2651, splat (double 0xC0B2D7440748F0B3)
  %2653 = fmul <8 x double> %2646, splat (double 0xC148A99584203885)
  %2654 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2647, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2653)
  %2655 = fadd <8 x double> %2654, splat (double 0x4118B9E59F2691E5)
  %2656 = fmul <8 x double> %2655, splat (double 2.000000e+00)
  %2657 = fneg <8 x double> %2652
  %2658 = fmul <8 x double> %2649, splat (double 4.000000e+00)
  %2659 = fneg <8 x double> %2655
  %2660 = fmul <8 x double> %2658, %2659
  %2661 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2652, <8 x double> %2652, <8 x double> %2660)
  %2662 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2661)
  %2663 = fsub <8 x double> %2657, %2662
  %2664 = fdiv <8 x double> %2656, %2663
  %2665 = fadd <8 x double> %2664, splat (double 0x408451671D164BD4)
  %2666 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2664, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2667 = fmul <8 x double> %2666, splat (double -4.000000e+00)
  %2668 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2665, <8 x double> %2665, <8 x double> %2667)
  %2669 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2668)
  %2670 = fsub <8 x double> %2665, %2669
  %2671 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2670, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2672 = select <8 x i1> %2632, <8 x double> %2638, <8 x double> %2671
  %2673 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2672, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2674 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2672, <8 x double> %2673, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2675 = load i64, ptr %156, align 8, !tbaa !20, !noalias !98
  %2676 = icmp sgt i64 %2675, 0
  br i1 %2676, label %2677, label %2679

2677:                                             ; preds = %2637
  %2678 = fdiv <8 x double> splat (double 1.000000e+00), %2674
  br label %2894

2679:                                             ; preds = %3075, %2637
  %2680 = phi <8 x double> [ zeroinitializer, %2637 ], [ %3153, %3075 ]
  %2681 = phi <8 x double> [ zeroinitializer, %2637 ], [ %3154, %3075 ]
  %2682 = extractelement <8 x double> %2680, i64 0
  %2683 = extractelement <8 x double> %2680, i64 1
  %2684 = fadd double %2682, %2683
  %2685 = extractelement <8 x double> %2680, i64 2
  %2686 = fadd double %2684, %2685
  %2687 = extractelement <8 x double> %2680, i64 3
  %2688 = fadd double %2686, %2687
  %2689 = extractelement <8 x double> %2680, i64 4
  %2690 = fadd double %2688, %2689
  %2691 = extractelement <8 x double> %2680, i64 5
  %2692 = fadd double %2690, %2691
  %2693 = extractelement <8 x double> %2680, i64 6
  %2694 = fadd double %2692, %2693
  %2695 = extractelement <8 x double> %2680, i64 7
  %2696 = fadd double %2694, %2695
  %2697 = insertelement <8 x double> poison, double %2696, i64 0
  %2698 = extractelement <8 x double> %2681, i64 0
  %2699 = extractelement <8 x double> %2681, i64 1
  %2700 = fadd double %2698, %2699
  %2701 = extractelement <8 x double> %2681, i64 2
  %2702 = fadd double %2700, %2701
  %2703 = extractelement <8 x double> %2681, i64 3
  %2704 = fadd double %2702, %2703
  %2705 = extractelement <8 x double> %2681, i64 4
  %2706 = fadd double %2704, %2705
  %2707 = extractelement <8 x double> %2681, i64 5
  %2708 = fadd double %2706, %2707
  %2709 = extractelement <8 x double> %2681, i64 6
  %2710 = fadd double %2708, %2709
  %2711 = extractelement <8 x double> %2681, i64 7
  %2712 = fadd double %2710, %2711
  %2713 = shufflevector <8 x double> %2697, <8 x double> poison, <8 x i32> zeroinitializer
  %2714 = insertelement <8 x double> poison, double %2712, i64 0
  %2715 = shufflevector <8 x double> %2714, <8 x double> poison, <8 x i32> zeroinitializer
  %2716 = fsub <8 x double> %2643, %2607
  %2717 = fcmp ogt <8 x double> %2716, zeroinitializer
  %2718 = select <8 x i1> %2717, <8 x double> %2716, <8 x double> zeroinitializer
  %2719 = fadd <8 x double> %2672, splat (double 2.731500e+02)
  %2720 = fdiv <8 x double> %2718, splat (double 4.615260e+02)
  %2721 = fadd <8 x double> %2634, %2720
  %2722 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2723 = fdiv <8 x double> %2721, %2722
  %2724 = fmul <8 x double> %2722, %2723
  %2725 = fdiv <8 x double> %2643, %2724
  %2726 = load <8 x double>, ptr %178, align 64, !tbaa !26, !noalias !101
  %2727 = fsub <8 x double> %2643, %2726
  %2728 = load <8 x double>, ptr %191, align 64, !tbaa !26, !noalias !101
  %2729 = fsub <8 x double> %2727, %2728
  %2730 = load <8 x double>, ptr %192, align 64, !tbaa !26, !noalias !101
  %2731 = load <8 x double>, ptr %138, align 64, !tbaa !26, !noalias !101
  %2732 = fcmp une <8 x double> %2731, splat (double 2.000000e+00)
  %2733 = load <8 x double>, ptr %193, align 64, !tbaa !26, !noalias !101
  %2734 = select <8 x i1> %2732, <8 x double> zeroinitializer, <8 x double> %2733
  %2735 = fadd <8 x double> %2730, %2734
  %2736 = fcmp ule <8 x double> %2727, zeroinitializer
  %2737 = fcmp ule <8 x double> %2735, zeroinitializer
  %2738 = or <8 x i1> %2736, %2737
  %2739 = fmul <8 x double> %2723, splat (double 2.000000e+00)
  %2740 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2739)
  %2741 = fmul <8 x double> %2740, %2735
  %2742 = fadd <8 x double> %2727, splat (double 2.000000e+02)
  %2743 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2742)
  %2744 = select <8 x i1> %2736, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2743
  %2745 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2727, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2746 = fmul <8 x double> %2745, %2741
  %2747 = fmul <8 x double> %2744, %2744
  %2748 = fmul <8 x double> %2744, %2747
  %2749 = fdiv <8 x double> %2746, %2748
  %2750 = fmul <8 x double> %2727, %2741
  %2751 = fdiv <8 x double> %2750, %2744
  %2752 = select <8 x i1> %2738, <8 x double> zeroinitializer, <8 x double> %2751
  %2753 = select <8 x i1> %2738, <8 x double> zeroinitializer, <8 x double> %2749
  %2754 = fcmp ule <8 x double> %2729, zeroinitializer
  %2755 = load <8 x double>, ptr %194, align 64, !tbaa !26, !noalias !101
  %2756 = fmul <8 x double> %2729, %2755
  %2757 = select <8 x i1> %2754, <8 x double> zeroinitializer, <8 x double> %2756
  %2758 = fadd <8 x double> %2757, %2752
  %2759 = select <8 x i1> %2754, <8 x double> zeroinitializer, <8 x double> %2755
  %2760 = fadd <8 x double> %2759, %2753
  %2761 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2762 = fsub <8 x double> %2726, %2643
  %2763 = fcmp ule <8 x double> %2762, zeroinitializer
  %2764 = fcmp ule <8 x double> %2761, zeroinitializer
  %2765 = or <8 x i1> %2763, %2764
  %2766 = fmul <8 x double> %2636, %2761
  %2767 = fadd <8 x double> %2762, splat (double 2.000000e+02)
  %2768 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2767)
  %2769 = select <8 x i1> %2763, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2768
  %2770 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2762, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2771 = fmul <8 x double> %2770, %2766
  %2772 = fmul <8 x double> %2769, %2769
  %2773 = fmul <8 x double> %2769, %2772
  %2774 = fdiv <8 x double> %2771, %2773
  %2775 = fmul <8 x double> %2762, %2766
  %2776 = fdiv <8 x double> %2775, %2769
  %2777 = load <8 x double>, ptr %163, align 64, !tbaa !26, !noalias !104
  %2778 = load <8 x double>, ptr %180, align 64, !tbaa !26, !noalias !104
  %2779 = load <8 x double>, ptr %164, align 64, !tbaa !26, !noalias !104
  %2780 = load <8 x double>, ptr %181, align 64, !tbaa !26, !noalias !104
  %2781 = fmul <8 x double> %2779, %2780
  %2782 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2777, <8 x double> %2778, <8 x double> %2781)
  %2783 = load <8 x double>, ptr %184, align 64, !tbaa !26, !noalias !104
  %2784 = load <8 x double>, ptr %162, align 64, !tbaa !26, !noalias !104
  %2785 = load <8 x double>, ptr %182, align 64, !tbaa !26, !noalias !104
  %2786 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2783, <8 x double> %2784, <8 x double> %2785)
  %2787 = load <8 x double>, ptr %183, align 64, !tbaa !26, !noalias !104
  %2788 = fneg <8 x double> %2782
  %2789 = fmul <8 x double> %2783, %2788
  %2790 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2785, <8 x double> %2787, <8 x double> %2789)
  %2791 = fdiv <8 x double> %2790, %2786
  %2792 = fcmp ogt <8 x double> %2718, splat (double 2.000000e+03)
  %2793 = select <8 x i1> %2792, <8 x double> %2718, <8 x double> splat (double 2.000000e+03)
  %2794 = fmul <8 x double> %2793, splat (double 0x3EB0C6F7A0B5ED8D)
  %2795 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2794)
  %2796 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2795)
  %2797 = fmul <8 x double> %2796, %2796
  %2798 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2796, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2797)
  %2799 = fadd <8 x double> %2798, splat (double 0x402DD4891DBECC6B)
  %2800 = fmul <8 x double> %2796, splat (double 0x40C77A698FD9BCCA)
  %2801 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2797, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2800)
  %2802 = fadd <8 x double> %2801, splat (double 0xC0B2D7440748F0B3)
  %2803 = fmul <8 x double> %2796, splat (double 0xC148A99584203885)
  %2804 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2797, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2803)
  %2805 = fadd <8 x double> %2804, splat (double 0x4118B9E59F2691E5)
  %2806 = fmul <8 x double> %2805, splat (double 2.000000e+00)
  %2807 = fneg <8 x double> %2802
  %2808 = fmul <8 x double> %2799, splat (double 4.000000e+00)
  %2809 = fneg <8 x double> %2805
  %2810 = fmul <8 x double> %2808, %2809
  %2811 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2802, <8 x double> %2802, <8 x double> %2810)
  %2812 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2811)
  %2813 = fsub <8 x double> %2807, %2812
  %2814 = fdiv <8 x double> %2806, %2813
  %2815 = fadd <8 x double> %2814, splat (double 0x408451671D164BD4)
  %2816 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2814, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2817 = fmul <8 x double> %2816, splat (double -4.000000e+00)
  %2818 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2815, <8 x double> %2815, <8 x double> %2817)
  %2819 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2818)
  %2820 = fsub <8 x double> %2815, %2819
  %2821 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2820, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2822 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2821, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2823 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2821, <8 x double> %2822, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2824 = fadd <8 x double> %2821, splat (double 2.731500e+02)
  %2825 = fcmp ule <8 x double> %2821, %2791
  %2826 = load <8 x double>, ptr %196, align 64, !tbaa !26, !noalias !104
  %2827 = fmul <8 x double> %2786, %2826
  %2828 = fadd <8 x double> %2786, %2826
  %2829 = fdiv <8 x double> %2827, %2828
  %2830 = fdiv <8 x double> %2829, %2823
  %2831 = fmul <8 x double> %2824, splat (double 4.615260e+02)
  %2832 = fmul <8 x double> %2793, %2823
  %2833 = fmul <8 x double> %2821, %2826
  %2834 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2791, <8 x double> %2786, <8 x double> %2833)
  %2835 = fdiv <8 x double> %2834, %2828
  %2836 = select <8 x i1> %2825, <8 x double> %2791, <8 x double> %2835
  store <8 x double> %2836, ptr %186, align 64, !tbaa !26, !noalias !104
  %2837 = fsub <8 x double> %2821, %2791
  %2838 = fmul <8 x double> %2837, %2830
  %2839 = select <8 x i1> %2825, <8 x double> zeroinitializer, <8 x double> %2838
  %2840 = fmul <8 x double> %2719, splat (double 4.615260e+02)
  %2841 = fmul <8 x double> %2719, %2840
  %2842 = fmul <8 x double> %2643, %2674
  %2843 = fdiv <8 x double> %2841, %2842
  %2844 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2784, <8 x double> %2643, <8 x double> %2618)
  %2845 = fsub <8 x double> %2713, %2839
  %2846 = fmul <8 x double> %2845, splat (double -4.615260e+02)
  %2847 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2621, <8 x double> %2844, <8 x double> %2846)
  %2848 = fmul <8 x double> %2776, splat (double -2.870530e+02)
  %2849 = select <8 x i1> %2765, <8 x double> splat (double -0.000000e+00), <8 x double> %2848
  %2850 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2725, <8 x double> %2758, <8 x double> %2849)
  %2851 = fadd <8 x double> %2850, %2847
  %2852 = fneg <8 x double> %2824
  %2853 = fmul <8 x double> %2831, %2852
  %2854 = fdiv <8 x double> %2853, %2832
  %2855 = fmul <8 x double> %2854, %2830
  %2856 = select <8 x i1> %2825, <8 x double> splat (double -0.000000e+00), <8 x double> %2855
  %2857 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2715, <8 x double> %2843, <8 x double> %2856)
  %2858 = fmul <8 x double> %2857, splat (double -4.615260e+02)
  %2859 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2621, <8 x double> %2784, <8 x double> %2858)
  %2860 = fmul <8 x double> %2774, splat (double 2.870530e+02)
  %2861 = select <8 x i1> %2765, <8 x double> zeroinitializer, <8 x double> %2860
  %2862 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2725, <8 x double> %2760, <8 x double> %2861)
  %2863 = fadd <8 x double> %2862, %2859
  %2864 = fcmp ule <8 x double> %2851, zeroinitializer
  %2865 = fcmp olt <8 x double> %2640, %2643
  %2866 = select <8 x i1> %2864, <8 x i1> splat (i1 true), <8 x i1> %2865
  %2867 = select <8 x i1> %2866, <8 x double> %2640, <8 x double> %2643
  %2868 = fcmp ogt <8 x double> %2639, %2643
  %2869 = select <8 x i1> %2868, <8 x double> %2639, <8 x double> %2643
  %2870 = select <8 x i1> %2864, <8 x double> %2869, <8 x double> %2639
  %2871 = fdiv <8 x double> %2851, %2863
  %2872 = fsub <8 x double> %2643, %2871
  %2873 = fsub <8 x double> %2872, %2643
  %2874 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2873)
  %2875 = fcmp uge <8 x double> %2874, splat (double 2.000000e-01)
  %2876 = fcmp uge <8 x double> %2870, %2872
  %2877 = fcmp uge <8 x double> %2872, %2867
  %2878 = or <8 x i1> %2876, %2877
  %2879 = and <8 x i1> %2875, %2878
  %2880 = fadd <8 x double> %2870, %2867
  %2881 = fmul <8 x double> %2880, splat (double 5.000000e-01)
  %2882 = select <8 x i1> %2879, <8 x double> %2881, <8 x double> %2872
  %2883 = fsub <8 x double> %2882, %2643
  %2884 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2883)
  %2885 = fcmp oge <8 x double> %2884, splat (double 2.000000e-01)
  %2886 = select <8 x i1> %2885, <8 x i64> %2641, <8 x i64> zeroinitializer
  %2887 = icmp eq <8 x i64> %2886, zeroinitializer
  %2888 = select <8 x i1> %2887, <8 x double> %2643, <8 x double> %2882
  %2889 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2886)
  %2890 = icmp ne i64 %2889, 0
  %2891 = add nuw nsw i32 %2642, 1
  %2892 = icmp samesign ult i32 %2642, 59
  %2893 = select i1 %2890, i1 %2892, i1 false
  br i1 %2893, label %2637, label %3158, !llvm.loop !107

2894:                                             ; preds = %2677, %3075
  %2895 = phi <8 x double> [ zeroinitializer, %2677 ], [ %3154, %3075 ]
  %2896 = phi <8 x double> [ zeroinitializer, %2677 ], [ %3153, %3075 ]
  %2897 = phi i64 [ 0, %2677 ], [ %3155, %3075 ]
  %2898 = load ptr, ptr %129, align 8, !tbaa !28, !noalias !98
  %2899 = getelementptr inbounds nuw %struct.Piece, ptr %2898, i64 %2897
  %2900 = getelementptr inbounds nuw i8, ptr %2899, i64 6208
  %2901 = load <8 x double>, ptr %2900, align 64, !tbaa !26, !noalias !98
  %2902 = getelementptr inbounds nuw i8, ptr %2899, i64 6272
  %2903 = load <8 x double>, ptr %2902, align 64, !tbaa !26, !noalias !98
  %2904 = getelementptr inbounds nuw i8, ptr %2899, i64 7680
  %2905 = load <8 x double>, ptr %2904, align 64, !tbaa !26, !noalias !98
  %2906 = fcmp ule <8 x double> %2905, splat (double 1.000000e+00)
  %2907 = fmul <8 x double> %2672, %2903
  %2908 = fcmp ogt <8 x double> %2901, %2907
  %2909 = and <8 x i1> %2906, %2908
  %2910 = fneg <8 x double> %2903
  %2911 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2910, <8 x double> %2672, <8 x double> %2901)
  %2912 = fmul <8 x double> %2678, %2911
  %2913 = select <8 x i1> %2909, <8 x double> %2912, <8 x double> zeroinitializer
  %2914 = fmul <8 x double> %2678, %2910
  %2915 = fdiv <8 x double> %2901, %2903
  %2916 = select <8 x i1> %2909, <8 x double> %2672, <8 x double> %2915
  %2917 = getelementptr inbounds nuw i8, ptr %2899, i64 8448
  %2918 = load <8 x i64>, ptr %2917, align 64, !tbaa !26, !noalias !98
  %2919 = getelementptr inbounds nuw i8, ptr %2899, i64 2240
  %2920 = load <8 x double>, ptr %2919, align 64, !tbaa !26, !noalias !98
  %2921 = fcmp ule <8 x double> %2920, zeroinitializer
  %2922 = xor <8 x i1> %2906, splat (i1 true)
  %2923 = select <8 x i1> %2922, <8 x i1> splat (i1 true), <8 x i1> %2921
  %2924 = getelementptr inbounds nuw i8, ptr %2899, i64 6336
  %2925 = load <8 x double>, ptr %2924, align 64, !tbaa !26, !noalias !98
  %2926 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2910, <8 x double> %2925, <8 x double> %2901)
  %2927 = fcmp ogt <8 x double> %2926, zeroinitializer
  %2928 = select <8 x i1> %2927, <8 x double> %2926, <8 x double> zeroinitializer
  %2929 = fmul <8 x double> %2678, %2928
  %2930 = icmp eq <8 x i64> %2918, zeroinitializer
  %2931 = select <8 x i1> %2923, <8 x i1> splat (i1 true), <8 x i1> %2930
  %2932 = select <8 x i1> %2931, <8 x double> %2913, <8 x double> %2929
  %2933 = select <8 x i1> %2931, <8 x double> %2916, <8 x double> %2925
  %2934 = select <8 x i1> %2931, <8 x i1> %2909, <8 x i1> zeroinitializer
  %2935 = select <8 x i1> %2934, <8 x double> %2914, <8 x double> zeroinitializer
  %2936 = getelementptr inbounds nuw i8, ptr %2899, i64 7872
  %2937 = getelementptr inbounds nuw i8, ptr %2899, i64 8128
  %2938 = load <8 x double>, ptr %2937, align 64, !tbaa !26, !noalias !108
  %2939 = fcmp ole <8 x double> %2672, %2938
  %2940 = getelementptr inbounds nuw i8, ptr %2899, i64 8192
  %2941 = load <8 x double>, ptr %2940, align 64, !tbaa !26, !noalias !108
  %2942 = fcmp oge <8 x double> %2672, %2941
  %2943 = or <8 x i1> %2939, %2942
  %2944 = bitcast <8 x i1> %2943 to i8
  %2945 = icmp eq i8 %2944, 0
  br i1 %2945, label %2946, label %2954

2946:                                             ; preds = %2894
  %2947 = load <8 x double>, ptr %2936, align 64, !tbaa !26, !noalias !108
  %2948 = getelementptr inbounds nuw i8, ptr %2899, i64 7936
  %2949 = load <8 x double>, ptr %2948, align 64, !tbaa !26, !noalias !108
  %2950 = getelementptr inbounds nuw i8, ptr %2899, i64 8064
  %2951 = load <8 x double>, ptr %2950, align 64, !tbaa !26, !noalias !108
  %2952 = getelementptr inbounds nuw i8, ptr %2899, i64 8000
  %2953 = load <8 x double>, ptr %2952, align 64, !tbaa !26, !noalias !108
  br label %3075

2954:                                             ; preds = %2894
  %2955 = load i64, ptr %119, align 16, !tbaa !21, !noalias !111
  %2956 = sitofp i64 %2955 to double
  %2957 = insertelement <8 x double> poison, double %2956, i64 0
  %2958 = shufflevector <8 x double> %2957, <8 x double> poison, <8 x i32> zeroinitializer
  %2959 = icmp sgt i64 %2955, 0
  br i1 %2959, label %2960, label %3050

2960:                                             ; preds = %2954
  %2961 = getelementptr inbounds nuw i8, ptr %2899, i64 8568
  %2962 = load ptr, ptr %2961, align 8, !tbaa !86, !noalias !111
  %2963 = getelementptr inbounds nuw i8, ptr %2899, i64 8576
  %2964 = load ptr, ptr %2963, align 64, !tbaa !87, !noalias !111
  %2965 = getelementptr inbounds nuw i8, ptr %2899, i64 8512
  %2966 = load i64, ptr %2965, align 64, !tbaa !31, !noalias !111
  %2967 = getelementptr inbounds nuw i8, ptr %2899, i64 8592
  %2968 = getelementptr inbounds nuw i8, ptr %2899, i64 8584
  %2969 = getelementptr inbounds nuw i8, ptr %2899, i64 8600
  br label %2970

2970:                                             ; preds = %2960, %3018
  %2971 = phi <8 x i64> [ splat (i64 -1), %2960 ], [ %2990, %3018 ]
  %2972 = phi i64 [ %2955, %2960 ], [ %2980, %3018 ]
  %2973 = phi <8 x double> [ splat (double 1.000000e+09), %2960 ], [ %3033, %3018 ]
  %2974 = phi <8 x double> [ zeroinitializer, %2960 ], [ %3037, %3018 ]
  %2975 = phi <8 x double> [ splat (double 1.000000e+09), %2960 ], [ %3015, %3018 ]
  %2976 = phi <8 x double> [ splat (double 1.000000e+00), %2960 ], [ %3014, %3018 ]
  %2977 = phi <8 x double> [ %2958, %2960 ], [ %3041, %3018 ]
  %2978 = phi <8 x double> [ zeroinitializer, %2960 ], [ %3030, %3018 ]
  %2979 = phi <8 x double> [ zeroinitializer, %2960 ], [ %3028, %3018 ]
  %2980 = add nsw i64 %2972, -1
  %2981 = getelementptr inbounds nuw <8 x double>, ptr %2962, i64 %2980
  %2982 = load <8 x double>, ptr %2981, align 64, !tbaa !26, !noalias !111
  %2983 = getelementptr inbounds nuw <8 x double>, ptr %2964, i64 %2980
  %2984 = load <8 x double>, ptr %2983, align 64, !tbaa !26, !noalias !111
  %2985 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2984, <8 x double> %2672, <8 x double> %2982)
  %2986 = fsub <8 x double> %2985, %2672
  %2987 = fcmp ogt <8 x double> %2986, splat (double 1.000000e-09)
  %2988 = select <8 x i1> %2987, <8 x i64> %2971, <8 x i64> zeroinitializer
  %2989 = icmp sgt i64 %2972, %2966
  %2990 = select i1 %2989, <8 x i64> %2988, <8 x i64> zeroinitializer
  %2991 = icmp slt i64 %2972, %2955
  br i1 %2991, label %2992, label %3004

2992:                                             ; preds = %2970
  %2993 = load ptr, ptr %2967, align 16, !tbaa !84, !noalias !111
  %2994 = getelementptr inbounds nuw <8 x double>, ptr %2993, i64 %2972
  %2995 = load <8 x double>, ptr %2994, align 64, !tbaa !26, !noalias !111
  %2996 = fmul <8 x double> %2986, %2995
  %2997 = icmp eq <8 x i64> %2990, %2971
  %2998 = select <8 x i1> %2997, <8 x double> zeroinitializer, <8 x double> %2996
  %2999 = fadd <8 x double> %2979, %2998
  %3000 = fadd <8 x double> %2984, splat (double -1.000000e+00)
  %3001 = fmul <8 x double> %3000, %2995
  %3002 = select <8 x i1> %2997, <8 x double> zeroinitializer, <8 x double> %3001
  %3003 = fadd <8 x double> %2978, %3002
  br label %3004

3004:                                             ; preds = %2992, %2970
  %3005 = phi <8 x double> [ %2999, %2992 ], [ %2979, %2970 ]
  %3006 = phi <8 x double> [ %3003, %2992 ], [ %2978, %2970 ]
  br i1 %2989, label %3007, label %3013

3007:                                             ; preds = %3004
  %3008 = fneg <8 x double> %2986
  %3009 = icmp eq <8 x i64> %2990, %2971
  %3010 = select <8 x i1> %3009, <8 x double> %2975, <8 x double> %3008
  %3011 = fsub <8 x double> splat (double 1.000000e+00), %2984
  %3012 = select <8 x i1> %3009, <8 x double> %2976, <8 x double> %3011
  br label %3013

3013:                                             ; preds = %3007, %3004
  %3014 = phi <8 x double> [ %3012, %3007 ], [ %2976, %3004 ]
  %3015 = phi <8 x double> [ %3010, %3007 ], [ %2975, %3004 ]
  %3016 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2990)
  %3017 = icmp eq i64 %3016, 0
  br i1 %3017, label %3043, label %3018

3018:                                             ; preds = %3013
  %3019 = load ptr, ptr %2968, align 8, !tbaa !83, !noalias !111
  %3020 = getelementptr inbounds nuw <8 x double>, ptr %3019, i64 %2980
  %3021 = load <8 x double>, ptr %3020, align 64, !tbaa !26, !noalias !111
  %3022 = load ptr, ptr %2969, align 8, !tbaa !85, !noalias !111
  %3023 = getelementptr inbounds nuw <8 x double>, ptr %3022, i64 %2980
  %3024 = load <8 x double>, ptr %3023, align 64, !tbaa !26, !noalias !111
  %3025 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3024, <8 x double> %2672, <8 x double> %3021)
  %3026 = icmp eq <8 x i64> %2990, zeroinitializer
  %3027 = select <8 x i1> %3026, <8 x double> zeroinitializer, <8 x double> %3025
  %3028 = fadd <8 x double> %3005, %3027
  %3029 = select <8 x i1> %3026, <8 x double> zeroinitializer, <8 x double> %3024
  %3030 = fadd <8 x double> %3006, %3029
  %3031 = fcmp olt <8 x double> %2973, %2986
  %3032 = select <8 x i1> %3026, <8 x i1> splat (i1 true), <8 x i1> %3031
  %3033 = select <8 x i1> %3032, <8 x double> %2973, <8 x double> %2986
  %3034 = fsub <8 x double> splat (double 1.000000e+00), %2984
  %3035 = fcmp ogt <8 x double> %2974, %3034
  %3036 = select <8 x i1> %3026, <8 x i1> splat (i1 true), <8 x i1> %3035
  %3037 = select <8 x i1> %3036, <8 x double> %2974, <8 x double> %3034
  %3038 = uitofp nneg i64 %2980 to double
  %3039 = insertelement <8 x double> poison, double %3038, i64 0
  %3040 = shufflevector <8 x double> %3039, <8 x double> poison, <8 x i32> zeroinitializer
  %3041 = select <8 x i1> %3026, <8 x double> %2977, <8 x double> %3040
  %3042 = icmp samesign ugt i64 %2972, 1
  br i1 %3042, label %2970, label %3043, !llvm.loop !114

3043:                                             ; preds = %3013, %3018
  %3044 = phi <8 x double> [ %3041, %3018 ], [ %2977, %3013 ]
  %3045 = phi <8 x double> [ %3037, %3018 ], [ %2974, %3013 ]
  %3046 = phi <8 x double> [ %3033, %3018 ], [ %2973, %3013 ]
  %3047 = phi <8 x double> [ %3028, %3018 ], [ %3005, %3013 ]
  %3048 = phi <8 x double> [ %3030, %3018 ], [ %3006, %3013 ]
  %3049 = fdiv <8 x double> %3015, %3014
  br label %3050

3050:                                             ; preds = %3043, %2954
  %3051 = phi <8 x double> [ %2958, %2954 ], [ %3044, %3043 ]
  %3052 = phi <8 x double> [ zeroinitializer, %2954 ], [ %3045, %3043 ]
  %3053 = phi <8 x double> [ splat (double 1.000000e+09), %2954 ], [ %3046, %3043 ]
  %3054 = phi <8 x double> [ zeroinitializer, %2954 ], [ %3047, %3043 ]
  %3055 = phi <8 x double> [ zeroinitializer, %2954 ], [ %3048, %3043 ]
  %3056 = phi <8 x double> [ splat (double 1.000000e+09), %2954 ], [ %3049, %3043 ]
  %3057 = fsub <8 x double> %2672, %3056
  %3058 = fcmp ogt <8 x double> %3052, splat (double 1.000000e-09)
  %3059 = select <8 x i1> %3058, <8 x double> %3052, <8 x double> splat (double 1.000000e-09)
  %3060 = fdiv <8 x double> %3053, %3059
  %3061 = fadd <8 x double> %2672, %3060
  %3062 = load <8 x double>, ptr %2936, align 64, !tbaa !26, !noalias !108
  %3063 = select <8 x i1> %2943, <8 x double> %3054, <8 x double> %3062
  store <8 x double> %3063, ptr %2936, align 64, !tbaa !26, !noalias !108
  %3064 = getelementptr inbounds nuw i8, ptr %2899, i64 7936
  %3065 = load <8 x double>, ptr %3064, align 64, !tbaa !26, !noalias !108
  %3066 = select <8 x i1> %2943, <8 x double> %3055, <8 x double> %3065
  store <8 x double> %3066, ptr %3064, align 64, !tbaa !26, !noalias !108
  %3067 = getelementptr inbounds nuw i8, ptr %2899, i64 8000
  %3068 = load <8 x double>, ptr %3067, align 64, !tbaa !26, !noalias !108
  %3069 = select <8 x i1> %2943, <8 x double> %3051, <8 x double> %3068
  store <8 x double> %3069, ptr %3067, align 64, !tbaa !26, !noalias !108
  %3070 = getelementptr inbounds nuw i8, ptr %2899, i64 8064
  %3071 = load <8 x double>, ptr %3070, align 64, !tbaa !26, !noalias !108
  %3072 = select <8 x i1> %2943, <8 x double> %2672, <8 x double> %3071
  store <8 x double> %3072, ptr %3070, align 64, !tbaa !26, !noalias !108
  %3073 = select <8 x i1> %2943, <8 x double> %3057, <8 x double> %2938
  store <8 x double> %3073, ptr %2937, align 64, !tbaa !26, !noalias !108
  %3074 = select <8 x i1> %2943, <8 x double> %3061, <8 x double> %2941
  store <8 x double> %3074, ptr %2940, align 64, !tbaa !26, !noalias !108
  br label %3075

3075:                                             ; preds = %2946, %3050
  %3076 = phi <8 x double> [ %2953, %2946 ], [ %3069, %3050 ]
  %3077 = phi <8 x double> [ %2951, %2946 ], [ %3072, %3050 ]
  %3078 = phi <8 x double> [ %2949, %2946 ], [ %3066, %3050 ]
  %3079 = phi <8 x double> [ %2947, %2946 ], [ %3063, %3050 ]
  %3080 = fsub <8 x double> %2672, %3077
  %3081 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3078, <8 x double> %3080, <8 x double> %3079)
  %3082 = getelementptr inbounds nuw i8, ptr %2899, i64 6464
  %3083 = load <8 x double>, ptr %3082, align 64, !tbaa !26, !noalias !98
  %3084 = getelementptr inbounds nuw i8, ptr %2899, i64 5888
  %3085 = load <8 x double>, ptr %3084, align 64, !tbaa !26, !noalias !98
  %3086 = getelementptr inbounds nuw i8, ptr %2899, i64 7424
  %3087 = load <8 x double>, ptr %3086, align 64, !tbaa !26, !noalias !98
  %3088 = fneg <8 x double> %3087
  %3089 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3083, <8 x double> %3085, <8 x double> %3088)
  %3090 = getelementptr inbounds nuw i8, ptr %2899, i64 7360
  %3091 = load <8 x double>, ptr %3090, align 64, !tbaa !26, !noalias !98
  %3092 = fadd <8 x double> %3083, %3091
  %3093 = getelementptr inbounds nuw i8, ptr %2899, i64 8320
  %3094 = load <8 x i64>, ptr %3093, align 64, !tbaa !26, !noalias !98
  %3095 = getelementptr inbounds nuw i8, ptr %2899, i64 8672
  %3096 = load ptr, ptr %3095, align 32, !tbaa !92, !noalias !98
  %3097 = load <8 x double>, ptr %3096, align 64, !tbaa !26, !noalias !98
  %3098 = fmul <8 x double> %3083, %3097
  %3099 = icmp eq <8 x i64> %3094, zeroinitializer
  %3100 = select <8 x i1> %3099, <8 x double> %3089, <8 x double> %3098
  %3101 = getelementptr inbounds nuw i8, ptr %2899, i64 8680
  %3102 = load ptr, ptr %3101, align 8, !tbaa !93, !noalias !98
  %3103 = load <8 x double>, ptr %3102, align 64, !tbaa !26, !noalias !98
  %3104 = fsub <8 x double> splat (double 1.000000e+00), %3103
  %3105 = fmul <8 x double> %3083, %3104
  %3106 = select <8 x i1> %3099, <8 x double> %3092, <8 x double> %3105
  %3107 = fneg <8 x double> %3106
  %3108 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3107, <8 x double> %2672, <8 x double> %3100)
  %3109 = load i64, ptr %119, align 16, !tbaa !21, !noalias !98
  %3110 = sitofp i64 %3109 to double
  %3111 = insertelement <8 x double> poison, double %3110, i64 0
  %3112 = shufflevector <8 x double> %3111, <8 x double> poison, <8 x i32> zeroinitializer
  %3113 = fcmp olt <8 x double> %3076, %3112
  %3114 = and <8 x i1> %2906, %3113
  %3115 = fcmp ogt <8 x double> %3081, zeroinitializer
  %3116 = fcmp oge <8 x double> %3108, zeroinitializer
  %3117 = and <8 x i1> %3115, %3116
  %3118 = and <8 x i1> %3117, %3114
  %3119 = sext <8 x i1> %3118 to <8 x i64>
  %3120 = xor <8 x i64> %3119, splat (i64 -1)
  %3121 = fadd <8 x double> %3081, %3108
  %3122 = fcmp ogt <8 x double> %3121, zeroinitializer
  %3123 = select <8 x i1> %3122, <8 x i1> %3114, <8 x i1> zeroinitializer
  %3124 = select <8 x i1> %3123, <8 x i64> %3120, <8 x i64> zeroinitializer
  %3125 = or <8 x i64> %3124, %3119
  %3126 = fmul <8 x double> %2678, %3108
  %3127 = select <8 x i1> %3118, <8 x double> %3126, <8 x double> zeroinitializer
  %3128 = icmp eq <8 x i64> %3125, zeroinitializer
  %3129 = select <8 x i1> %3128, <8 x double> %2932, <8 x double> %3127
  %3130 = select <8 x i1> %3128, <8 x double> %2933, <8 x double> %2672
  %3131 = fsub <8 x double> %3078, %3106
  %3132 = fmul <8 x double> %2678, %3131
  %3133 = select <8 x i1> %3128, <8 x double> %2935, <8 x double> %3132
  %3134 = getelementptr inbounds nuw i8, ptr %2899, i64 6016
  store <8 x double> %3129, ptr %3134, align 64, !tbaa !26, !noalias !98
  %3135 = getelementptr inbounds nuw i8, ptr %2899, i64 5952
  store <8 x double> %3130, ptr %3135, align 64, !tbaa !26, !noalias !98
  %3136 = fmul <8 x double> %2678, %3081
  %3137 = fmul <8 x double> %2678, %3121
  %3138 = icmp eq <8 x i64> %3124, zeroinitializer
  %3139 = select <8 x i1> %3138, <8 x double> zeroinitializer, <8 x double> %3137
  %3140 = select <8 x i1> %3118, <8 x double> %3136, <8 x double> %3139
  %3141 = getelementptr inbounds nuw i8, ptr %2899, i64 6080
  store <8 x double> %3140, ptr %3141, align 64, !tbaa !26, !noalias !98
  %3142 = load i64, ptr %119, align 16, !tbaa !21, !noalias !98
  %3143 = sitofp i64 %3142 to double
  %3144 = insertelement <8 x double> poison, double %3143, i64 0
  %3145 = shufflevector <8 x double> %3144, <8 x double> poison, <8 x i32> zeroinitializer
  %3146 = select <8 x i1> %3128, <8 x double> %3145, <8 x double> %3076
  %3147 = getelementptr inbounds nuw i8, ptr %2899, i64 6144
  store <8 x double> %3146, ptr %3147, align 64, !tbaa !26, !noalias !98
  %3148 = getelementptr inbounds nuw i8, ptr %2899, i64 128
  %3149 = load <8 x double>, ptr %3148, align 64, !tbaa !26, !noalias !98
  %3150 = fadd <8 x double> %3129, %3140
  %3151 = fmul <8 x double> %3149, %3150
  %3152 = fmul <8 x double> %3149, %3133
  %3153 = fadd <8 x double> %2896, %3151
  %3154 = fadd <8 x double> %2895, %3152
  %3155 = add nuw nsw i64 %2897, 1
  %3156 = load i64, ptr %156, align 8, !tbaa !20, !noalias !98
  %3157 = icmp slt i64 %3155, %3156
  br i1 %3157, label %2894, label %2679, !llvm.loop !115

3158:                                             ; preds = %2679
  %3159 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %3160 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %3161 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %3162 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %3163 = fmul <8 x double> %3161, %3162
  %3164 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3159, <8 x double> %3160, <8 x double> %3163)
  %3165 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %3166 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %3167 = fsub <8 x double> %3166, %2888
  %3168 = fcmp ule <8 x double> %3167, zeroinitializer
  %3169 = fcmp ule <8 x double> %3165, zeroinitializer
  %3170 = or <8 x i1> %3169, %3168
  %3171 = fmul <8 x double> %2636, %3165
  %3172 = fadd <8 x double> %3167, splat (double 2.000000e+02)
  %3173 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3172)
  %3174 = select <8 x i1> %3168, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3173
  %3175 = fmul <8 x double> %3171, %3167
  %3176 = fdiv <8 x double> %3175, %3174
  %3177 = fmul <8 x double> %3176, splat (double 2.870530e+02)
  %3178 = select <8 x i1> %3170, <8 x double> zeroinitializer, <8 x double> %3177
  %3179 = fdiv <8 x double> %3178, %2621
  %3180 = fsub <8 x double> %3179, %3164
  %3181 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %3182 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %3183 = fmul <8 x double> %2723, %3182
  %3184 = fdiv <8 x double> %2758, %3183
  %3185 = fadd <8 x double> %3181, %3184
  %3186 = fdiv <8 x double> %3180, %3185
  %3187 = fcmp ogt <8 x double> %3186, zeroinitializer
  %3188 = select <8 x i1> %3187, <8 x double> %3186, <8 x double> zeroinitializer
  %3189 = fcmp olt <8 x double> %3188, %2888
  %3190 = select <8 x i1> %3189, <8 x double> %3188, <8 x double> %2888
  %3191 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3192 = select <8 x i1> %2632, <8 x double> %3191, <8 x double> %3190
  store <8 x double> %3192, ptr %185, align 64, !tbaa !26
  %3193 = select <8 x i1> %2632, <8 x double> %2609, <8 x double> %2836
  store <8 x double> %3193, ptr %186, align 64, !tbaa !26
  store <8 x double> %2888, ptr %179, align 64, !tbaa !26
  store <8 x double> %2672, ptr %199, align 64, !tbaa !26
  %3194 = load i64, ptr %156, align 8, !tbaa !20
  br label %3449

3195:                                             ; preds = %2588
  store <8 x double> %2590, ptr %199, align 64, !tbaa !26
  br i1 %2352, label %3196, label %3452

3196:                                             ; preds = %3195
  %3197 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2590, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3198 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2590, <8 x double> %3197, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3199 = fdiv <8 x double> splat (double 1.000000e+00), %3198
  br label %3200

3200:                                             ; preds = %3196, %3376
  %3201 = phi i64 [ 0, %3196 ], [ %3446, %3376 ]
  %3202 = load ptr, ptr %129, align 8, !tbaa !28, !noalias !116
  %3203 = getelementptr inbounds nuw %struct.Piece, ptr %3202, i64 %3201
  %3204 = getelementptr inbounds nuw i8, ptr %3203, i64 6208
  %3205 = load <8 x double>, ptr %3204, align 64, !tbaa !26, !noalias !116
  %3206 = getelementptr inbounds nuw i8, ptr %3203, i64 6272
  %3207 = load <8 x double>, ptr %3206, align 64, !tbaa !26, !noalias !116
  %3208 = getelementptr inbounds nuw i8, ptr %3203, i64 7680
  %3209 = load <8 x double>, ptr %3208, align 64, !tbaa !26, !noalias !116
  %3210 = fcmp ule <8 x double> %3209, splat (double 1.000000e+00)
  %3211 = fmul <8 x double> %2590, %3207
  %3212 = fcmp ogt <8 x double> %3205, %3211
  %3213 = and <8 x i1> %3210, %3212
  %3214 = fneg <8 x double> %3207
  %3215 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3214, <8 x double> %2590, <8 x double> %3205)
  %3216 = fmul <8 x double> %3199, %3215
  %3217 = select <8 x i1> %3213, <8 x double> %3216, <8 x double> zeroinitializer
  %3218 = fdiv <8 x double> %3205, %3207
  %3219 = select <8 x i1> %3213, <8 x double> %2590, <8 x double> %3218
  %3220 = getelementptr inbounds nuw i8, ptr %3203, i64 8448
  %3221 = load <8 x i64>, ptr %3220, align 64, !tbaa !26, !noalias !116
  %3222 = getelementptr inbounds nuw i8, ptr %3203, i64 2240
  %3223 = load <8 x double>, ptr %3222, align 64, !tbaa !26, !noalias !116
  %3224 = fcmp ule <8 x double> %3223, zeroinitializer
  %3225 = xor <8 x i1> %3210, splat (i1 true)
  %3226 = select <8 x i1> %3225, <8 x i1> splat (i1 true), <8 x i1> %3224
  %3227 = getelementptr inbounds nuw i8, ptr %3203, i64 6336
  %3228 = load <8 x double>, ptr %3227, align 64, !tbaa !26, !noalias !116
  %3229 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3214, <8 x double> %3228, <8 x double> %3205)
  %3230 = fcmp ogt <8 x double> %3229, zeroinitializer
  %3231 = select <8 x i1> %3230, <8 x double> %3229, <8 x double> zeroinitializer
  %3232 = fmul <8 x double> %3199, %3231
  %3233 = icmp eq <8 x i64> %3221, zeroinitializer
  %3234 = select <8 x i1> %3226, <8 x i1> splat (i1 true), <8 x i1> %3233
  %3235 = select <8 x i1> %3234, <8 x double> %3217, <8 x double> %3232
  %3236 = select <8 x i1> %3234, <8 x double> %3219, <8 x double> %3228
  %3237 = getelementptr inbounds nuw i8, ptr %3203, i64 7872
  %3238 = getelementptr inbounds nuw i8, ptr %3203, i64 8128
  %3239 = load <8 x double>, ptr %3238, align 64, !tbaa !26, !noalias !119
  %3240 = fcmp ole <8 x double> %2590, %3239
  %3241 = getelementptr inbounds nuw i8, ptr %3203, i64 8192
  %3242 = load <8 x double>, ptr %3241, align 64, !tbaa !26, !noalias !119
  %3243 = fcmp oge <8 x double> %2590, %3242
  %3244 = or <8 x i1> %3240, %3243
  %3245 = bitcast <8 x i1> %3244 to i8
  %3246 = icmp eq i8 %3245, 0
  br i1 %3246, label %3247, label %3255

3247:                                             ; preds = %3200
  %3248 = load <8 x double>, ptr %3237, align 64, !tbaa !26, !noalias !119
  %3249 = getelementptr inbounds nuw i8, ptr %3203, i64 7936
  %3250 = load <8 x double>, ptr %3249, align 64, !tbaa !26, !noalias !119
  %3251 = getelementptr inbounds nuw i8, ptr %3203, i64 8064
  %3252 = load <8 x double>, ptr %3251, align 64, !tbaa !26, !noalias !119
  %3253 = getelementptr inbounds nuw i8, ptr %3203, i64 8000
  %3254 = load <8 x double>, ptr %3253, align 64, !tbaa !26, !noalias !119
  br label %3376

3255:                                             ; preds = %3200
  %3256 = load i64, ptr %119, align 16, !tbaa !21, !noalias !122
  %3257 = sitofp i64 %3256 to double
  %3258 = insertelement <8 x double> poison, double %3257, i64 0
  %3259 = shufflevector <8 x double> %3258, <8 x double> poison, <8 x i32> zeroinitializer
  %3260 = icmp sgt i64 %3256, 0
  br i1 %3260, label %3261, label %3351

3261:                                             ; preds = %3255
  %3262 = getelementptr inbounds nuw i8, ptr %3203, i64 8568
  %3263 = load ptr, ptr %3262, align 8, !tbaa !86, !noalias !122
  %3264 = getelementptr inbounds nuw i8, ptr %3203, i64 8576
  %3265 = load ptr, ptr %3264, align 64, !tbaa !87, !noalias !122
  %3266 = getelementptr inbounds nuw i8, ptr %3203, i64 8512
  %3267 = load i64, ptr %3266, align 64, !tbaa !31, !noalias !122
  %3268 = getelementptr inbounds nuw i8, ptr %3203, i64 8592
  %3269 = getelementptr inbounds nuw i8, ptr %3203, i64 8584
  %3270 = getelementptr inbounds nuw i8, ptr %3203, i64 8600
  br label %3271

3271:                                             ; preds = %3261, %3319
  %3272 = phi <8 x i64> [ splat (i64 -1), %3261 ], [ %3291, %3319 ]
  %3273 = phi i64 [ %3256, %3261 ], [ %3281, %3319 ]
  %3274 = phi <8 x double> [ splat (double 1.000000e+09), %3261 ], [ %3334, %3319 ]
  %3275 = phi <8 x double> [ zeroinitializer, %3261 ], [ %3338, %3319 ]
  %3276 = phi <8 x double> [ splat (double 1.000000e+09), %3261 ], [ %3316, %3319 ]
  %3277 = phi <8 x double> [ splat (double 1.000000e+00), %3261 ], [ %3315, %3319 ]
  %3278 = phi <8 x double> [ %3259, %3261 ], [ %3342, %3319 ]
  %3279 = phi <8 x double> [ zeroinitializer, %3261 ], [ %3331, %3319 ]
  %3280 = phi <8 x double> [ zeroinitializer, %3261 ], [ %3329, %3319 ]
  %3281 = add nsw i64 %3273, -1
  %3282 = getelementptr inbounds nuw <8 x double>, ptr %3263, i64 %3281
  %3283 = load <8 x double>, ptr %3282, align 64, !tbaa !26, !noalias !122
  %3284 = getelementptr inbounds nuw <8 x double>, ptr %3265, i64 %3281
  %3285 = load <8 x double>, ptr %3284, align 64, !tbaa !26, !noalias !122
  %3286 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3285, <8 x double> %2590, <8 x double> %3283)
  %3287 = fsub <8 x double> %3286, %2590
  %3288 = fcmp ogt <8 x double> %3287, splat (double 1.000000e-09)
  %3289 = select <8 x i1> %3288, <8 x i64> %3272, <8 x i64> zeroinitializer
  %3290 = icmp sgt i64 %3273, %3267
  %3291 = select i1 %3290, <8 x i64> %3289, <8 x i64> zeroinitializer
  %3292 = icmp slt i64 %3273, %3256
  br i1 %3292, label %3293, label %3305

3293:                                             ; preds = %3271
  %3294 = load ptr, ptr %3268, align 16, !tbaa !84, !noalias !122
  %3295 = getelementptr inbounds nuw <8 x double>, ptr %3294, i64 %3273
  %3296 = load <8 x double>, ptr %3295, align 64, !tbaa !26, !noalias !122
  %3297 = fmul <8 x double> %3287, %3296
  %3298 = icmp eq <8 x i64> %3291, %3272
  %3299 = select <8 x i1> %3298, <8 x double> zeroinitializer, <8 x double> %3297
  %3300 = fadd <8 x double> %3280, %3299
  %3301 = fadd <8 x double> %3285, splat (double -1.000000e+00)
  %3302 = fmul <8 x double> %3301, %3296
  %3303 = select <8 x i1> %3298, <8 x double> zeroinitializer, <8 x double> %3302
  %3304 = fadd <8 x double> %3279, %3303
  br label %3305

3305:                                             ; preds = %3293, %3271
  %3306 = phi <8 x double> [ %3300, %3293 ], [ %3280, %3271 ]
  %3307 = phi <8 x double> [ %3304, %3293 ], [ %3279, %3271 ]
  br i1 %3290, label %3308, label %3314

3308:                                             ; preds = %3305
  %3309 = fneg <8 x double> %3287
  %3310 = icmp eq <8 x i64> %3291, %3272
  %3311 = select <8 x i1> %3310, <8 x double> %3276, <8 x double> %3309
  %3312 = fsub <8 x double> splat (double 1.000000e+00), %3285
  %3313 = select <8 x i1> %3310, <8 x double> %3277, <8 x double> %3312
  br label %3314

3314:                                             ; preds = %3308, %3305
  %3315 = phi <8 x double> [ %3313, %3308 ], [ %3277, %3305 ]
  %3316 = phi <8 x double> [ %3311, %3308 ], [ %3276, %3305 ]
  %3317 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3291)
  %3318 = icmp eq i64 %3317, 0
  br i1 %3318, label %3344, label %3319

3319:                                             ; preds = %3314
  %3320 = load ptr, ptr %3269, align 8, !tbaa !83, !noalias !122
  %3321 = getelementptr inbounds nuw <8 x double>, ptr %3320, i64 %3281
  %3322 = load <8 x double>, ptr %3321, align 64, !tbaa !26, !noalias !122
  %3323 = load ptr, ptr %3270, align 8, !tbaa !85, !noalias !122
  %3324 = getelementptr inbounds nuw <8 x double>, ptr %3323, i64 %3281
  %3325 = load <8 x double>, ptr %3324, align 64, !tbaa !26, !noalias !122
  %3326 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3325, <8 x double> %2590, <8 x double> %3322)
  %3327 = icmp eq <8 x i64> %3291, zeroinitializer
  %3328 = select <8 x i1> %3327, <8 x double> zeroinitializer, <8 x double> %3326
  %3329 = fadd <8 x double> %3306, %3328
  %3330 = select <8 x i1> %3327, <8 x double> zeroinitializer, <8 x double> %3325
  %3331 = fadd <8 x double> %3307, %3330
  %3332 = fcmp olt <8 x double> %3274, %3287
  %3333 = select <8 x i1> %3327, <8 x i1> splat (i1 true), <8 x i1> %3332
  %3334 = select <8 x i1> %3333, <8 x double> %3274, <8 x double> %3287
  %3335 = fsub <8 x double> splat (double 1.000000e+00), %3285
  %3336 = fcmp ogt <8 x double> %3275, %3335
  %3337 = select <8 x i1> %3327, <8 x i1> splat (i1 true), <8 x i1> %3336
  %3338 = select <8 x i1> %3337, <8 x double> %3275, <8 x double> %3335
  %3339 = uitofp nneg i64 %3281 to double
  %3340 = insertelement <8 x double> poison, double %3339, i64 0
  %3341 = shufflevector <8 x double> %3340, <8 x double> poison, <8 x i32> zeroinitializer
  %3342 = select <8 x i1> %3327, <8 x double> %3278, <8 x double> %3341
  %3343 = icmp samesign ugt i64 %3273, 1
  br i1 %3343, label %3271, label %3344, !llvm.loop !114

3344:                                             ; preds = %3314, %3319
  %3345 = phi <8 x double> [ %3342, %3319 ], [ %3278, %3314 ]
  %3346 = phi <8 x double> [ %3338, %3319 ], [ %3275, %3314 ]
  %3347 = phi <8 x double> [ %3334, %3319 ], [ %3274, %3314 ]
  %3348 = phi <8 x double> [ %3329, %3319 ], [ %3306, %3314 ]
  %3349 = phi <8 x double> [ %3331, %3319 ], [ %3307, %3314 ]
  %3350 = fdiv <8 x double> %3316, %3315
  br label %3351

3351:                                             ; preds = %3344, %3255
  %3352 = phi <8 x double> [ %3259, %3255 ], [ %3345, %3344 ]
  %3353 = phi <8 x double> [ zeroinitializer, %3255 ], [ %3346, %3344 ]
  %3354 = phi <8 x double> [ splat (double 1.000000e+09), %3255 ], [ %3347, %3344 ]
  %3355 = phi <8 x double> [ zeroinitializer, %3255 ], [ %3348, %3344 ]
  %3356 = phi <8 x double> [ zeroinitializer, %3255 ], [ %3349, %3344 ]
  %3357 = phi <8 x double> [ splat (double 1.000000e+09), %3255 ], [ %3350, %3344 ]
  %3358 = fsub <8 x double> %2590, %3357
  %3359 = fcmp ogt <8 x double> %3353, splat (double 1.000000e-09)
  %3360 = select <8 x i1> %3359, <8 x double> %3353, <8 x double> splat (double 1.000000e-09)
  %3361 = fdiv <8 x double> %3354, %3360
  %3362 = fadd <8 x double> %2590, %3361
  %3363 = load <8 x double>, ptr %3237, align 64, !tbaa !26, !noalias !119
  %3364 = select <8 x i1> %3244, <8 x double> %3355, <8 x double> %3363
  store <8 x double> %3364, ptr %3237, align 64, !tbaa !26, !noalias !119
  %3365 = getelementptr inbounds nuw i8, ptr %3203, i64 7936
  %3366 = load <8 x double>, ptr %3365, align 64, !tbaa !26, !noalias !119
  %3367 = select <8 x i1> %3244, <8 x double> %3356, <8 x double> %3366
  store <8 x double> %3367, ptr %3365, align 64, !tbaa !26, !noalias !119
  %3368 = getelementptr inbounds nuw i8, ptr %3203, i64 8000
  %3369 = load <8 x double>, ptr %3368, align 64, !tbaa !26, !noalias !119
  %3370 = select <8 x i1> %3244, <8 x double> %3352, <8 x double> %3369
  store <8 x double> %3370, ptr %3368, align 64, !tbaa !26, !noalias !119
  %3371 = getelementptr inbounds nuw i8, ptr %3203, i64 8064
  %3372 = load <8 x double>, ptr %3371, align 64, !tbaa !26, !noalias !119
  %3373 = select <8 x i1> %3244, <8 x double> %2590, <8 x double> %3372
  store <8 x double> %3373, ptr %3371, align 64, !tbaa !26, !noalias !119
  %3374 = select <8 x i1> %3244, <8 x double> %3358, <8 x double> %3239
  store <8 x double> %3374, ptr %3238, align 64, !tbaa !26, !noalias !119
  %3375 = select <8 x i1> %3244, <8 x double> %3362, <8 x double> %3242
  store <8 x double> %3375, ptr %3241, align 64, !tbaa !26, !noalias !119
  br label %3376

3376:                                             ; preds = %3247, %3351
  %3377 = phi <8 x double> [ %3254, %3247 ], [ %3370, %3351 ]
  %3378 = phi <8 x double> [ %3252, %3247 ], [ %3373, %3351 ]
  %3379 = phi <8 x double> [ %3250, %3247 ], [ %3367, %3351 ]
  %3380 = phi <8 x double> [ %3248, %3247 ], [ %3364, %3351 ]
  %3381 = fsub <8 x double> %2590, %3378
  %3382 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3379, <8 x double> %3381, <8 x double> %3380)
  %3383 = getelementptr inbounds nuw i8, ptr %3203, i64 6464
  %3384 = load <8 x double>, ptr %3383, align 64, !tbaa !26, !noalias !116
  %3385 = getelementptr inbounds nuw i8, ptr %3203, i64 5888
  %3386 = load <8 x double>, ptr %3385, align 64, !tbaa !26, !noalias !116
  %3387 = getelementptr inbounds nuw i8, ptr %3203, i64 7424
  %3388 = load <8 x double>, ptr %3387, align 64, !tbaa !26, !noalias !116
  %3389 = fneg <8 x double> %3388
  %3390 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3384, <8 x double> %3386, <8 x double> %3389)
  %3391 = getelementptr inbounds nuw i8, ptr %3203, i64 7360
  %3392 = load <8 x double>, ptr %3391, align 64, !tbaa !26, !noalias !116
  %3393 = fadd <8 x double> %3384, %3392
  %3394 = getelementptr inbounds nuw i8, ptr %3203, i64 8320
  %3395 = load <8 x i64>, ptr %3394, align 64, !tbaa !26, !noalias !116
  %3396 = getelementptr inbounds nuw i8, ptr %3203, i64 8672
  %3397 = load ptr, ptr %3396, align 32, !tbaa !92, !noalias !116
  %3398 = load <8 x double>, ptr %3397, align 64, !tbaa !26, !noalias !116
  %3399 = fmul <8 x double> %3384, %3398
  %3400 = icmp eq <8 x i64> %3395, zeroinitializer
  %3401 = select <8 x i1> %3400, <8 x double> %3390, <8 x double> %3399
  %3402 = getelementptr inbounds nuw i8, ptr %3203, i64 8680
  %3403 = load ptr, ptr %3402, align 8, !tbaa !93, !noalias !116
  %3404 = load <8 x double>, ptr %3403, align 64, !tbaa !26, !noalias !116
  %3405 = fsub <8 x double> splat (double 1.000000e+00), %3404
  %3406 = fmul <8 x double> %3384, %3405
  %3407 = select <8 x i1> %3400, <8 x double> %3393, <8 x double> %3406
  %3408 = fneg <8 x double> %3407
  %3409 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3408, <8 x double> %2590, <8 x double> %3401)
  %3410 = load i64, ptr %119, align 16, !tbaa !21, !noalias !116
  %3411 = sitofp i64 %3410 to double
  %3412 = insertelement <8 x double> poison, double %3411, i64 0
  %3413 = shufflevector <8 x double> %3412, <8 x double> poison, <8 x i32> zeroinitializer
  %3414 = fcmp olt <8 x double> %3377, %3413
  %3415 = and <8 x i1> %3210, %3414
  %3416 = fcmp ogt <8 x double> %3382, zeroinitializer
  %3417 = fcmp oge <8 x double> %3409, zeroinitializer
  %3418 = and <8 x i1> %3416, %3417
  %3419 = and <8 x i1> %3418, %3415
  %3420 = sext <8 x i1> %3419 to <8 x i64>
  %3421 = xor <8 x i64> %3420, splat (i64 -1)
  %3422 = fadd <8 x double> %3382, %3409
  %3423 = fcmp ogt <8 x double> %3422, zeroinitializer
  %3424 = select <8 x i1> %3423, <8 x i1> %3415, <8 x i1> zeroinitializer
  %3425 = select <8 x i1> %3424, <8 x i64> %3421, <8 x i64> zeroinitializer
  %3426 = or <8 x i64> %3425, %3420
  %3427 = fmul <8 x double> %3199, %3409
  %3428 = select <8 x i1> %3419, <8 x double> %3427, <8 x double> zeroinitializer
  %3429 = icmp eq <8 x i64> %3426, zeroinitializer
  %3430 = select <8 x i1> %3429, <8 x double> %3235, <8 x double> %3428
  %3431 = select <8 x i1> %3429, <8 x double> %3236, <8 x double> %2590
  %3432 = getelementptr inbounds nuw i8, ptr %3203, i64 6016
  store <8 x double> %3430, ptr %3432, align 64, !tbaa !26, !noalias !116
  %3433 = getelementptr inbounds nuw i8, ptr %3203, i64 5952
  store <8 x double> %3431, ptr %3433, align 64, !tbaa !26, !noalias !116
  %3434 = fmul <8 x double> %3199, %3382
  %3435 = fmul <8 x double> %3199, %3422
  %3436 = icmp eq <8 x i64> %3425, zeroinitializer
  %3437 = select <8 x i1> %3436, <8 x double> zeroinitializer, <8 x double> %3435
  %3438 = select <8 x i1> %3419, <8 x double> %3434, <8 x double> %3437
  %3439 = getelementptr inbounds nuw i8, ptr %3203, i64 6080
  store <8 x double> %3438, ptr %3439, align 64, !tbaa !26, !noalias !116
  %3440 = load i64, ptr %119, align 16, !tbaa !21, !noalias !116
  %3441 = sitofp i64 %3440 to double
  %3442 = insertelement <8 x double> poison, double %3441, i64 0
  %3443 = shufflevector <8 x double> %3442, <8 x double> poison, <8 x i32> zeroinitializer
  %3444 = select <8 x i1> %3429, <8 x double> %3443, <8 x double> %3377
  %3445 = getelementptr inbounds nuw i8, ptr %3203, i64 6144
  store <8 x double> %3444, ptr %3445, align 64, !tbaa !26, !noalias !116
  %3446 = add nuw nsw i64 %3201, 1
  %3447 = load i64, ptr %156, align 8, !tbaa !20, !noalias !116
  %3448 = icmp slt i64 %3446, %3447
  br i1 %3448, label %3200, label %3449, !llvm.loop !115

3449:                                             ; preds = %3376, %3158
  %3450 = phi i64 [ %3194, %3158 ], [ %3447, %3376 ]
  %3451 = icmp sgt i64 %3450, 0
  br i1 %3451, label %3614, label %3452

3452:                                             ; preds = %3449, %3195
  %3453 = load <8 x double>, ptr %165, align 64, !tbaa !26
  br label %3459

3454:                                             ; preds = %3686
  %3455 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %3456 = icmp sgt i64 %3710, 0
  br i1 %3456, label %3457, label %3459

3457:                                             ; preds = %3454
  %3458 = load ptr, ptr %129, align 8, !tbaa !28
  br label %3592

3459:                                             ; preds = %3592, %3452, %3454
  %3460 = phi <8 x double> [ %3455, %3454 ], [ %3453, %3452 ], [ %3455, %3592 ]
  %3461 = phi <8 x double> [ zeroinitializer, %3454 ], [ zeroinitializer, %3452 ], [ %3611, %3592 ]
  %3462 = phi <8 x double> [ zeroinitializer, %3454 ], [ zeroinitializer, %3452 ], [ %3606, %3592 ]
  %3463 = extractelement <8 x double> %3462, i64 0
  %3464 = extractelement <8 x double> %3462, i64 1
  %3465 = fadd double %3463, %3464
  %3466 = extractelement <8 x double> %3462, i64 2
  %3467 = fadd double %3465, %3466
  %3468 = extractelement <8 x double> %3462, i64 3
  %3469 = fadd double %3467, %3468
  %3470 = extractelement <8 x double> %3462, i64 4
  %3471 = fadd double %3469, %3470
  %3472 = extractelement <8 x double> %3462, i64 5
  %3473 = fadd double %3471, %3472
  %3474 = extractelement <8 x double> %3462, i64 6
  %3475 = fadd double %3473, %3474
  %3476 = extractelement <8 x double> %3462, i64 7
  %3477 = fadd double %3475, %3476
  %3478 = insertelement <8 x double> poison, double %3477, i64 0
  %3479 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %3480 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3481 = fsub <8 x double> %3460, %3480
  %3482 = extractelement <8 x double> %3461, i64 0
  %3483 = extractelement <8 x double> %3461, i64 1
  %3484 = fadd double %3482, %3483
  %3485 = extractelement <8 x double> %3461, i64 2
  %3486 = fadd double %3484, %3485
  %3487 = extractelement <8 x double> %3461, i64 3
  %3488 = fadd double %3486, %3487
  %3489 = extractelement <8 x double> %3461, i64 4
  %3490 = fadd double %3488, %3489
  %3491 = extractelement <8 x double> %3461, i64 5
  %3492 = fadd double %3490, %3491
  %3493 = extractelement <8 x double> %3461, i64 6
  %3494 = fadd double %3492, %3493
  %3495 = extractelement <8 x double> %3461, i64 7
  %3496 = fadd double %3494, %3495
  %3497 = shufflevector <8 x double> %3478, <8 x double> poison, <8 x i32> zeroinitializer
  %3498 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3479, <8 x double> %3481, <8 x double> %3497)
  %3499 = insertelement <8 x double> poison, double %3496, i64 0
  %3500 = shufflevector <8 x double> %3499, <8 x double> poison, <8 x i32> zeroinitializer
  %3501 = fadd <8 x double> %3479, %3500
  store <8 x double> %3498, ptr %201, align 64, !tbaa !26
  %3502 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %3503 = fcmp ule <8 x double> %3502, zeroinitializer
  %3504 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %3505 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3502, <8 x double> splat (double 5.000000e-01), <8 x double> %3504)
  %3506 = fsub <8 x double> %3505, %3460
  %3507 = fcmp ogt <8 x double> %3502, splat (double 1.000000e-30)
  %3508 = select <8 x i1> %3507, <8 x double> %3502, <8 x double> splat (double 1.000000e-30)
  %3509 = fdiv <8 x double> %3506, %3508
  %3510 = fcmp ogt <8 x double> %3509, zeroinitializer
  %3511 = select <8 x i1> %3510, <8 x double> %3509, <8 x double> zeroinitializer
  %3512 = fcmp olt <8 x double> %3511, splat (double 1.000000e+00)
  %3513 = select <8 x i1> %3512, <8 x double> %3511, <8 x double> splat (double 1.000000e+00)
  %3514 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %3515 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %3516 = icmp eq <8 x i64> %3515, zeroinitializer
  %3517 = select <8 x i1> %3516, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %3518 = select <8 x i1> %3503, <8 x double> %3517, <8 x double> %3513
  %3519 = fmul <8 x double> %3514, %3518
  %3520 = fcmp ule <8 x double> %3519, zeroinitializer
  %3521 = fcmp uge <8 x double> %3519, %3514
  %3522 = or <8 x i1> %3520, %3521
  %3523 = or <8 x i1> %3503, %3522
  %3524 = fdiv <8 x double> %3514, %3508
  %3525 = select <8 x i1> %3523, <8 x double> zeroinitializer, <8 x double> %3524
  %3526 = fadd <8 x double> %3501, %3525
  %3527 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %3528 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %3529 = fdiv <8 x double> splat (double 2.000000e+00), %3528
  %3530 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %3531 = icmp eq <8 x i64> %3527, zeroinitializer
  %3532 = select <8 x i1> %3531, <8 x double> %3530, <8 x double> %3529
  %3533 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %3534 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %3535 = fmul <8 x double> %3533, %3534
  %3536 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %3537 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %3538 = fmul <8 x double> %3537, splat (double 5.000000e-01)
  %3539 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3538, <8 x double> %3533, <8 x double> %3536)
  %3540 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %3541 = fmul <8 x double> %3533, %3540
  %3542 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3535, <8 x double> %3539, <8 x double> %3541)
  %3543 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %3544 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %3545 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %3546 = fmul <8 x double> %3534, %3545
  %3547 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3538, <8 x double> %3545, <8 x double> %3536)
  %3548 = fmul <8 x double> %3540, %3545
  %3549 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3546, <8 x double> %3547, <8 x double> %3548)
  %3550 = fmul <8 x double> %3544, %3549
  %3551 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3543, <8 x double> %3542, <8 x double> %3550)
  %3552 = fmul <8 x double> %3460, %3534
  %3553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3538, <8 x double> %3460, <8 x double> %3536)
  %3554 = fmul <8 x double> %3460, %3540
  %3555 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3552, <8 x double> %3553, <8 x double> %3554)
  %3556 = fneg <8 x double> %3532
  %3557 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %3558 = fneg <8 x double> %3557
  %3559 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3556, <8 x double> %3542, <8 x double> %3558)
  %3560 = select <8 x i1> %3531, <8 x double> %3551, <8 x double> %3559
  %3561 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3532, <8 x double> %3555, <8 x double> %3560)
  %3562 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3537, <8 x double> %3460, <8 x double> %3536)
  %3563 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3534, <8 x double> %3562, <8 x double> %3540)
  %3564 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %3565 = fcmp une <8 x double> %3564, zeroinitializer
  %3566 = fadd <8 x double> %3498, %3561
  %3567 = fsub <8 x double> %3566, %3519
  %3568 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3532, <8 x double> %3563, <8 x double> %3526)
  %3569 = fdiv <8 x double> %3567, %3568
  %3570 = fsub <8 x double> %3460, %3569
  %3571 = select <8 x i1> %3565, <8 x double> %3460, <8 x double> %3570
  store <8 x double> %3571, ptr %165, align 64, !tbaa !26
  %3572 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %3573 = fneg <8 x double> %3543
  %3574 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3573, <8 x double> %3572, <8 x double> %3519)
  %3575 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %3576 = fneg <8 x double> %3544
  %3577 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3576, <8 x double> %3575, <8 x double> %3574)
  %3578 = fdiv <8 x double> %3577, %3530
  %3579 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %3580 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3573, <8 x double> %3579, <8 x double> %3498)
  %3581 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %3582 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3576, <8 x double> %3581, <8 x double> %3580)
  %3583 = fdiv <8 x double> %3582, %3530
  %3584 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3519, <8 x double> %3528, <8 x double> %3572)
  %3585 = select <8 x i1> %3531, <8 x double> %3578, <8 x double> %3584
  %3586 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %3587 = select <8 x i1> %3565, <8 x double> %3586, <8 x double> %3585
  store <8 x double> %3587, ptr %206, align 64, !tbaa !26
  %3588 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %3589 = select <8 x i1> %3565, <8 x double> %3588, <8 x double> %3583
  store <8 x double> %3589, ptr %207, align 64, !tbaa !26
  %3590 = load i64, ptr %156, align 8, !tbaa !20
  %3591 = icmp sgt i64 %3590, 0
  br i1 %3591, label %3712, label %4000

3592:                                             ; preds = %3457, %3592
  %3593 = phi <8 x double> [ zeroinitializer, %3457 ], [ %3606, %3592 ]
  %3594 = phi <8 x double> [ zeroinitializer, %3457 ], [ %3611, %3592 ]
  %3595 = phi i64 [ 0, %3457 ], [ %3612, %3592 ]
  %3596 = getelementptr inbounds nuw %struct.Piece, ptr %3458, i64 %3595
  %3597 = getelementptr inbounds nuw i8, ptr %3596, i64 8448
  %3598 = load <8 x i64>, ptr %3597, align 64, !tbaa !26
  %3599 = getelementptr inbounds nuw i8, ptr %3596, i64 128
  %3600 = load <8 x double>, ptr %3599, align 64, !tbaa !26
  %3601 = getelementptr inbounds nuw i8, ptr %3596, i64 6720
  %3602 = load <8 x double>, ptr %3601, align 64, !tbaa !26
  %3603 = fmul <8 x double> %3600, %3602
  %3604 = icmp eq <8 x i64> %3598, zeroinitializer
  %3605 = select <8 x i1> %3604, <8 x double> %3603, <8 x double> zeroinitializer
  %3606 = fadd <8 x double> %3593, %3605
  %3607 = getelementptr inbounds nuw i8, ptr %3596, i64 6592
  %3608 = load <8 x double>, ptr %3607, align 64, !tbaa !26
  %3609 = fmul <8 x double> %3600, %3608
  %3610 = select <8 x i1> %3604, <8 x double> %3609, <8 x double> zeroinitializer
  %3611 = fadd <8 x double> %3594, %3610
  %3612 = add nuw nsw i64 %3595, 1
  %3613 = icmp eq i64 %3612, %3710
  br i1 %3613, label %3459, label %3592, !llvm.loop !125

3614:                                             ; preds = %3449, %3686
  %3615 = phi i64 [ %3709, %3686 ], [ 0, %3449 ]
  %3616 = load ptr, ptr %129, align 8, !tbaa !28
  %3617 = getelementptr inbounds nuw %struct.Piece, ptr %3616, i64 %3615
  %3618 = getelementptr inbounds nuw i8, ptr %3617, i64 5952
  %3619 = load <8 x double>, ptr %3618, align 64, !tbaa !26
  %3620 = getelementptr inbounds nuw i8, ptr %3617, i64 6144
  %3621 = load <8 x double>, ptr %3620, align 64, !tbaa !26
  %3622 = getelementptr inbounds nuw i8, ptr %3617, i64 8568
  %3623 = load ptr, ptr %3622, align 8, !tbaa !86
  %3624 = getelementptr inbounds nuw i8, ptr %3617, i64 8576
  %3625 = load ptr, ptr %3624, align 64, !tbaa !87
  %3626 = getelementptr inbounds nuw i8, ptr %3617, i64 8520
  %3627 = load ptr, ptr %3626, align 8, !tbaa !57
  %3628 = load i64, ptr %119, align 16, !tbaa !21
  %3629 = icmp sgt i64 %3628, 0
  br i1 %3629, label %3645, label %3630

3630:                                             ; preds = %3645, %3614
  %3631 = getelementptr inbounds nuw i8, ptr %3617, i64 8320
  %3632 = load <8 x i64>, ptr %3631, align 64, !tbaa !26
  %3633 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3632)
  %3634 = icmp eq i64 %3633, 0
  %3635 = load i64, ptr %120, align 8, !tbaa !22
  %3636 = icmp sgt i64 %3635, 0
  br i1 %3634, label %3642, label %3637

3637:                                             ; preds = %3630
  br i1 %3636, label %3638, label %3686

3638:                                             ; preds = %3637
  %3639 = getelementptr inbounds nuw i8, ptr %3617, i64 8672
  %3640 = getelementptr inbounds nuw i8, ptr %3617, i64 8680
  %3641 = getelementptr inbounds nuw i8, ptr %3617, i64 8640
  br label %3661

3642:                                             ; preds = %3630
  br i1 %3636, label %3643, label %3686

3643:                                             ; preds = %3642
  %3644 = getelementptr inbounds nuw i8, ptr %3617, i64 8640
  br label %3679

3645:                                             ; preds = %3614, %3645
  %3646 = phi <8 x double> [ %3658, %3645 ], [ %3619, %3614 ]
  %3647 = phi i64 [ %3648, %3645 ], [ %3628, %3614 ]
  %3648 = add nsw i64 %3647, -1
  %3649 = uitofp nneg i64 %3648 to double
  %3650 = insertelement <8 x double> poison, double %3649, i64 0
  %3651 = shufflevector <8 x double> %3650, <8 x double> poison, <8 x i32> zeroinitializer
  %3652 = fcmp ugt <8 x double> %3621, %3651
  %3653 = getelementptr inbounds nuw <8 x double>, ptr %3623, i64 %3648
  %3654 = load <8 x double>, ptr %3653, align 64, !tbaa !26
  %3655 = getelementptr inbounds nuw <8 x double>, ptr %3625, i64 %3648
  %3656 = load <8 x double>, ptr %3655, align 64, !tbaa !26
  %3657 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3656, <8 x double> %3646, <8 x double> %3654)
  %3658 = select <8 x i1> %3652, <8 x double> %3657, <8 x double> %3619
  %3659 = getelementptr inbounds nuw <8 x double>, ptr %3627, i64 %3648
  store <8 x double> %3658, ptr %3659, align 64, !tbaa !26
  %3660 = icmp samesign ugt i64 %3647, 1
  br i1 %3660, label %3645, label %3630, !llvm.loop !126

3661:                                             ; preds = %3638, %3661
  %3662 = phi i64 [ 0, %3638 ], [ %3676, %3661 ]
  %3663 = phi <8 x double> [ %3619, %3638 ], [ %3673, %3661 ]
  %3664 = load <8 x i64>, ptr %3631, align 64, !tbaa !26
  %3665 = load ptr, ptr %3639, align 32, !tbaa !92
  %3666 = getelementptr inbounds nuw <8 x double>, ptr %3665, i64 %3662
  %3667 = load <8 x double>, ptr %3666, align 64, !tbaa !26
  %3668 = load ptr, ptr %3640, align 8, !tbaa !93
  %3669 = getelementptr inbounds nuw <8 x double>, ptr %3668, i64 %3662
  %3670 = load <8 x double>, ptr %3669, align 64, !tbaa !26
  %3671 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3670, <8 x double> %3663, <8 x double> %3667)
  %3672 = icmp eq <8 x i64> %3664, zeroinitializer
  %3673 = select <8 x i1> %3672, <8 x double> %3619, <8 x double> %3671
  %3674 = load ptr, ptr %3641, align 64, !tbaa !127
  %3675 = getelementptr inbounds nuw <8 x double>, ptr %3674, i64 %3662
  store <8 x double> %3673, ptr %3675, align 64, !tbaa !26
  %3676 = add nuw nsw i64 %3662, 1
  %3677 = load i64, ptr %120, align 8, !tbaa !22
  %3678 = icmp slt i64 %3676, %3677
  br i1 %3678, label %3661, label %3686, !llvm.loop !128

3679:                                             ; preds = %3643, %3679
  %3680 = phi i64 [ 0, %3643 ], [ %3683, %3679 ]
  %3681 = load ptr, ptr %3644, align 64, !tbaa !127
  %3682 = getelementptr inbounds nuw <8 x double>, ptr %3681, i64 %3680
  store <8 x double> %3619, ptr %3682, align 64, !tbaa !26
  %3683 = add nuw nsw i64 %3680, 1
  %3684 = load i64, ptr %120, align 8, !tbaa !22
  %3685 = icmp slt i64 %3683, %3684
  br i1 %3685, label %3679, label %3686, !llvm.loop !129

3686:                                             ; preds = %3661, %3679, %3637, %3642
  %3687 = phi <8 x double> [ %3619, %3642 ], [ %3619, %3637 ], [ %3619, %3679 ], [ %3673, %3661 ]
  %3688 = load <8 x i64>, ptr %3631, align 64, !tbaa !26
  %3689 = getelementptr inbounds nuw i8, ptr %3617, i64 6656
  %3690 = load <8 x double>, ptr %3689, align 64, !tbaa !26
  %3691 = icmp eq <8 x i64> %3688, zeroinitializer
  %3692 = select <8 x i1> %3691, <8 x double> zeroinitializer, <8 x double> %3690
  %3693 = fsub <8 x double> splat (double 1.000000e+00), %3692
  %3694 = getelementptr inbounds nuw i8, ptr %3617, i64 5888
  %3695 = load <8 x double>, ptr %3694, align 64, !tbaa !26
  %3696 = fmul <8 x double> %3692, %3695
  %3697 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3693, <8 x double> %3687, <8 x double> %3696)
  %3698 = getelementptr inbounds nuw i8, ptr %3617, i64 6848
  store <8 x double> %3697, ptr %3698, align 64, !tbaa !26
  %3699 = getelementptr inbounds nuw i8, ptr %3617, i64 6592
  %3700 = load <8 x double>, ptr %3699, align 64, !tbaa !26
  %3701 = fsub <8 x double> %3695, %3687
  %3702 = fmul <8 x double> %3701, %3700
  %3703 = getelementptr inbounds nuw i8, ptr %3617, i64 6720
  store <8 x double> %3702, ptr %3703, align 64, !tbaa !26
  %3704 = getelementptr inbounds nuw i8, ptr %3617, i64 3200
  %3705 = load <8 x double>, ptr %3704, align 64, !tbaa !26
  %3706 = fdiv <8 x double> %3702, %3705
  %3707 = fsub <8 x double> %3695, %3706
  %3708 = getelementptr inbounds nuw i8, ptr %3617, i64 6784
  store <8 x double> %3707, ptr %3708, align 64, !tbaa !26
  %3709 = add nuw nsw i64 %3615, 1
  %3710 = load i64, ptr %156, align 8, !tbaa !20
  %3711 = icmp slt i64 %3709, %3710
  br i1 %3711, label %3614, label %3454, !llvm.loop !130

3712:                                             ; preds = %3459, %3934
  %3713 = phi i64 [ %3997, %3934 ], [ 0, %3459 ]
  %3714 = phi <8 x double> [ %3996, %3934 ], [ zeroinitializer, %3459 ]
  %3715 = load ptr, ptr %129, align 8, !tbaa !28
  %3716 = getelementptr inbounds nuw %struct.Piece, ptr %3715, i64 %3713
  %3717 = getelementptr inbounds nuw i8, ptr %3716, i64 6016
  %3718 = load <8 x double>, ptr %3717, align 64, !tbaa !26
  %3719 = getelementptr inbounds nuw i8, ptr %3716, i64 6080
  %3720 = load <8 x double>, ptr %3719, align 64, !tbaa !26
  %3721 = fadd <8 x double> %3718, %3720
  %3722 = getelementptr inbounds nuw i8, ptr %3716, i64 5952
  %3723 = load <8 x double>, ptr %3722, align 64, !tbaa !26
  %3724 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %3725 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3724, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3726 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3724, <8 x double> %3725, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3727 = getelementptr inbounds nuw i8, ptr %3716, i64 7168
  %3728 = load <8 x double>, ptr %3727, align 64, !tbaa !26
  %3729 = getelementptr inbounds nuw i8, ptr %3716, i64 1280
  %3730 = load <8 x double>, ptr %3729, align 64, !tbaa !26
  %3731 = fmul <8 x double> %3728, %3730
  %3732 = getelementptr inbounds nuw i8, ptr %3716, i64 6848
  %3733 = load <8 x double>, ptr %3732, align 64, !tbaa !26
  %3734 = fsub <8 x double> %3733, %3723
  %3735 = fmul <8 x double> %3731, %3734
  %3736 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3726, <8 x double> %3721, <8 x double> %3735)
  %3737 = getelementptr inbounds nuw i8, ptr %3716, i64 5696
  %3738 = load <8 x double>, ptr %3737, align 64, !tbaa !26, !noalias !131
  %3739 = getelementptr inbounds nuw i8, ptr %3716, i64 4160
  %3740 = load <8 x double>, ptr %3739, align 64, !tbaa !26, !noalias !131
  %3741 = fneg <8 x double> %3738
  %3742 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3741, <8 x double> %3740, <8 x double> %3721)
  %3743 = getelementptr inbounds nuw i8, ptr %3716, i64 5760
  %3744 = load <8 x double>, ptr %3743, align 64, !tbaa !26, !noalias !131
  %3745 = getelementptr inbounds nuw i8, ptr %3716, i64 5056
  %3746 = load <8 x double>, ptr %3745, align 64, !tbaa !26, !noalias !131
  %3747 = fneg <8 x double> %3744
  %3748 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3747, <8 x double> %3746, <8 x double> %3742)
  %3749 = getelementptr inbounds nuw i8, ptr %3716, i64 5632
  %3750 = load <8 x double>, ptr %3749, align 64, !tbaa !26, !noalias !131
  %3751 = fdiv <8 x double> %3748, %3750
  %3752 = getelementptr inbounds nuw i8, ptr %3716, i64 1600
  %3753 = load <8 x double>, ptr %3752, align 64, !tbaa !26, !noalias !131
  %3754 = fsub <8 x double> %3753, %3751
  %3755 = getelementptr inbounds nuw i8, ptr %3716, i64 4032
  %3756 = load <8 x double>, ptr %3755, align 64, !tbaa !26, !noalias !131
  %3757 = getelementptr inbounds nuw i8, ptr %3716, i64 7552
  %3758 = load <8 x double>, ptr %3757, align 64, !tbaa !26, !noalias !131
  %3759 = fsub <8 x double> %3756, %3758
  %3760 = getelementptr inbounds nuw i8, ptr %3716, i64 3904
  %3761 = load <8 x double>, ptr %3760, align 64, !tbaa !26, !noalias !131
  %3762 = getelementptr inbounds nuw i8, ptr %3716, i64 2944
  %3763 = load <8 x double>, ptr %3762, align 64, !tbaa !26, !noalias !131
  %3764 = getelementptr inbounds nuw i8, ptr %3716, i64 8320
  %3765 = load <8 x i64>, ptr %3764, align 64, !tbaa !26, !noalias !131
  %3766 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3765)
  %3767 = icmp eq i64 %3766, 0
  br i1 %3767, label %3896, label %3768

3768:                                             ; preds = %3712
  %3769 = fcmp ogt <8 x double> %3759, %3754
  %3770 = getelementptr inbounds nuw i8, ptr %3716, i64 7680
  %3771 = load <8 x double>, ptr %3770, align 64, !tbaa !26, !noalias !131
  %3772 = fcmp oeq <8 x double> %3771, zeroinitializer
  %3773 = select <8 x i1> %3772, <8 x i1> %3769, <8 x i1> zeroinitializer
  %3774 = select <8 x i1> %3773, <8 x i64> %3765, <8 x i64> zeroinitializer
  %3775 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3774)
  %3776 = icmp eq i64 %3775, 0
  br i1 %3776, label %3849, label %3777

3777:                                             ; preds = %3768
  %3778 = fsub <8 x double> %3759, %3754
  %3779 = getelementptr inbounds nuw i8, ptr %3716, i64 832
  %3780 = load <8 x double>, ptr %3779, align 64, !tbaa !26, !noalias !131
  %3781 = fdiv <8 x double> %3778, %3780
  %3782 = getelementptr inbounds nuw i8, ptr %3716, i64 8552
  %3783 = load ptr, ptr %3782, align 8, !tbaa !67, !noalias !131
  %3784 = load i64, ptr %119, align 16, !tbaa !21, !noalias !131
  %3785 = add nsw i64 %3784, -1
  %3786 = getelementptr inbounds <8 x double>, ptr %3783, i64 %3785
  %3787 = load <8 x double>, ptr %3786, align 64, !tbaa !26, !noalias !131
  %3788 = icmp sgt i64 %3784, 1
  br i1 %3788, label %3789, label %3841

3789:                                             ; preds = %3777
  %3790 = getelementptr inbounds nuw i8, ptr %3716, i64 8512
  %3791 = load i64, ptr %3790, align 64, !tbaa !31, !noalias !131
  %3792 = getelementptr inbounds nuw i8, ptr %3716, i64 4672
  %3793 = getelementptr inbounds nuw i8, ptr %3716, i64 1536
  %3794 = getelementptr inbounds nuw i8, ptr %3716, i64 8608
  br label %3795

3795:                                             ; preds = %3789, %3838
  %3796 = phi <8 x double> [ %3761, %3789 ], [ %3833, %3838 ]
  %3797 = phi i64 [ %3785, %3789 ], [ %3839, %3838 ]
  %3798 = phi <8 x double> [ %3787, %3789 ], [ %3821, %3838 ]
  %3799 = phi <8 x i64> [ %3774, %3789 ], [ %3825, %3838 ]
  %3800 = phi <8 x double> [ %3781, %3789 ], [ %3832, %3838 ]
  %3801 = icmp slt i64 %3797, %3791
  br i1 %3801, label %3802, label %3808

3802:                                             ; preds = %3795
  %3803 = load ptr, ptr %3794, align 32, !tbaa !72, !noalias !131
  %3804 = getelementptr inbounds nuw <8 x double>, ptr %3803, i64 %3797
  %3805 = load <8 x double>, ptr %3804, align 64, !tbaa !26, !noalias !131
  %3806 = load <8 x double>, ptr %3793, align 64, !tbaa !26, !noalias !131
  %3807 = fmul <8 x double> %3805, %3806
  br label %3816

3808:                                             ; preds = %3795
  %3809 = load <8 x double>, ptr %3792, align 64, !tbaa !26, !noalias !131
  %3810 = load <8 x double>, ptr %3793, align 64, !tbaa !26, !noalias !131
  %3811 = load ptr, ptr %3794, align 32, !tbaa !72, !noalias !131
  %3812 = getelementptr inbounds nuw <8 x double>, ptr %3811, i64 %3797
  %3813 = load <8 x double>, ptr %3812, align 64, !tbaa !26, !noalias !131
  %3814 = fsub <8 x double> %3809, %3810
  %3815 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3813, <8 x double> %3814, <8 x double> %3810)
  br label %3816

3816:                                             ; preds = %3808, %3802
  %3817 = phi <8 x double> [ %3807, %3802 ], [ %3815, %3808 ]
  %3818 = getelementptr inbounds nuw <8 x double>, ptr %3783, i64 %3797
  %3819 = load <8 x double>, ptr %3818, align 64, !tbaa !26, !noalias !131
  %3820 = icmp eq <8 x i64> %3799, zeroinitializer
  %3821 = select <8 x i1> %3820, <8 x double> %3798, <8 x double> %3819
  %3822 = fsub <8 x double> %3796, %3817
  %3823 = fmul <8 x double> %3822, %3821
  %3824 = fcmp olt <8 x double> %3823, %3800
  %3825 = select <8 x i1> %3824, <8 x i64> %3799, <8 x i64> zeroinitializer
  %3826 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3825)
  %3827 = icmp eq i64 %3826, 0
  br i1 %3827, label %3841, label %3828

3828:                                             ; preds = %3816
  %3829 = fneg <8 x double> %3821
  %3830 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3829, <8 x double> %3822, <8 x double> %3800)
  %3831 = icmp eq <8 x i64> %3825, zeroinitializer
  %3832 = select <8 x i1> %3831, <8 x double> %3800, <8 x double> %3830
  %3833 = select <8 x i1> %3831, <8 x double> %3796, <8 x double> %3817
  %3834 = icmp eq i64 %3797, 1
  br i1 %3834, label %3835, label %3838

3835:                                             ; preds = %3828
  %3836 = load <8 x double>, ptr %3783, align 64, !tbaa !26, !noalias !131
  %3837 = select <8 x i1> %3831, <8 x double> %3821, <8 x double> %3836
  br label %3841

3838:                                             ; preds = %3828
  %3839 = add nsw i64 %3797, -1
  %3840 = icmp sgt i64 %3797, 1
  br i1 %3840, label %3795, label %3841, !llvm.loop !73

3841:                                             ; preds = %3838, %3816, %3835, %3777
  %3842 = phi <8 x double> [ %3781, %3777 ], [ %3832, %3835 ], [ %3800, %3816 ], [ %3832, %3838 ]
  %3843 = phi <8 x double> [ %3761, %3777 ], [ %3833, %3835 ], [ %3796, %3816 ], [ %3833, %3838 ]
  %3844 = phi <8 x double> [ %3787, %3777 ], [ %3837, %3835 ], [ %3821, %3816 ], [ %3821, %3838 ]
  %3845 = fdiv <8 x double> %3842, %3844
  %3846 = fsub <8 x double> %3843, %3845
  %3847 = icmp eq <8 x i64> %3774, zeroinitializer
  %3848 = select <8 x i1> %3847, <8 x double> %3761, <8 x double> %3846
  br label %3849

3849:                                             ; preds = %3841, %3768
  %3850 = phi <8 x double> [ %3848, %3841 ], [ %3761, %3768 ]
  %3851 = getelementptr inbounds nuw i8, ptr %3716, i64 2560
  %3852 = load <8 x double>, ptr %3851, align 64, !tbaa !26, !noalias !131
  %3853 = getelementptr inbounds nuw i8, ptr %3716, i64 2624
  %3854 = load <8 x double>, ptr %3853, align 64, !tbaa !26, !noalias !131
  %3855 = getelementptr inbounds nuw i8, ptr %3716, i64 2688
  %3856 = load <8 x double>, ptr %3855, align 64, !tbaa !26, !noalias !131
  %3857 = getelementptr inbounds nuw i8, ptr %3716, i64 2752
  %3858 = load <8 x double>, ptr %3857, align 64, !tbaa !26, !noalias !131
  %3859 = load <8 x double>, ptr %3716, align 64, !tbaa !26, !noalias !131
  %3860 = fmul <8 x double> %3859, splat (double 2.000000e-05)
  br label %3861

3861:                                             ; preds = %3849, %3861
  %3862 = phi <8 x i64> [ splat (i64 -1), %3849 ], [ %3879, %3861 ]
  %3863 = phi i32 [ 0, %3849 ], [ %3880, %3861 ]
  %3864 = phi <8 x double> [ %3763, %3849 ], [ %3876, %3861 ]
  %3865 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3864, <8 x double> %3858, <8 x double> %3856)
  %3866 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3864, <8 x double> %3865, <8 x double> %3854)
  %3867 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3864, <8 x double> %3866, <8 x double> %3852)
  %3868 = fsub <8 x double> %3867, %3850
  %3869 = fmul <8 x double> %3864, splat (double 3.000000e+00)
  %3870 = fmul <8 x double> %3869, %3858
  %3871 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3856, <8 x double> splat (double 2.000000e+00), <8 x double> %3870)
  %3872 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3864, <8 x double> %3871, <8 x double> %3854)
  %3873 = fdiv <8 x double> %3868, %3872
  %3874 = fsub <8 x double> %3864, %3873
  %3875 = icmp eq <8 x i64> %3862, zeroinitializer
  %3876 = select <8 x i1> %3875, <8 x double> %3864, <8 x double> %3874
  %3877 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3873)
  %3878 = fcmp oge <8 x double> %3877, %3860
  %3879 = select <8 x i1> %3878, <8 x i64> %3862, <8 x i64> zeroinitializer
  %3880 = add nuw nsw i32 %3863, 1
  %3881 = icmp samesign ult i32 %3863, 3
  %3882 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3879)
  %3883 = icmp ne i64 %3882, 0
  %3884 = select i1 %3881, i1 %3883, i1 false
  br i1 %3884, label %3861, label %3885, !llvm.loop !74

3885:                                             ; preds = %3861
  %3886 = fmul <8 x double> %3859, splat (double 2.800000e-01)
  %3887 = fcmp ogt <8 x double> %3876, %3886
  %3888 = select <8 x i1> %3887, <8 x double> %3876, <8 x double> %3886
  %3889 = fcmp olt <8 x double> %3888, %3859
  %3890 = select <8 x i1> %3889, <8 x double> %3888, <8 x double> %3859
  %3891 = icmp eq <8 x i64> %3765, zeroinitializer
  %3892 = select <8 x i1> %3891, <8 x double> %3763, <8 x double> %3890
  %3893 = fcmp olt <8 x double> %3759, %3754
  %3894 = select <8 x i1> %3891, <8 x i1> splat (i1 true), <8 x i1> %3893
  %3895 = select <8 x i1> %3894, <8 x double> %3759, <8 x double> %3754
  br label %3896

3896:                                             ; preds = %3885, %3712
  %3897 = phi <8 x double> [ %3895, %3885 ], [ %3759, %3712 ]
  %3898 = phi <8 x double> [ %3892, %3885 ], [ %3763, %3712 ]
  %3899 = phi <8 x double> [ %3850, %3885 ], [ %3761, %3712 ]
  %3900 = fsub <8 x double> %3754, %3897
  %3901 = fsub <8 x double> %3898, %3763
  %3902 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3901)
  %3903 = getelementptr inbounds nuw i8, ptr %3716, i64 3072
  %3904 = load <8 x double>, ptr %3903, align 64, !tbaa !26
  %3905 = fsub <8 x double> %3900, %3904
  %3906 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3905)
  %3907 = getelementptr inbounds nuw i8, ptr %3716, i64 832
  %3908 = load <8 x double>, ptr %3907, align 64, !tbaa !26
  %3909 = fdiv <8 x double> %3906, %3908
  %3910 = icmp eq <8 x i64> %3765, zeroinitializer
  %3911 = select <8 x i1> %3910, <8 x double> %3909, <8 x double> %3902
  br i1 %3767, label %3934, label %3912

3912:                                             ; preds = %3896
  %3913 = getelementptr inbounds nuw i8, ptr %3716, i64 7104
  %3914 = load <8 x double>, ptr %3913, align 64, !tbaa !26
  %3915 = fmul <8 x double> %3914, splat (double 2.000000e+00)
  %3916 = getelementptr inbounds nuw i8, ptr %3716, i64 384
  %3917 = load <8 x double>, ptr %3916, align 64, !tbaa !26
  %3918 = getelementptr inbounds nuw i8, ptr %3716, i64 448
  %3919 = load <8 x double>, ptr %3918, align 64, !tbaa !26
  %3920 = getelementptr inbounds nuw i8, ptr %3716, i64 512
  %3921 = load <8 x double>, ptr %3920, align 64, !tbaa !26
  %3922 = fmul <8 x double> %3723, %3921
  %3923 = fmul <8 x double> %3922, splat (double 0x3FD5555555555555)
  %3924 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3919, <8 x double> splat (double 5.000000e-01), <8 x double> %3923)
  %3925 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3723, <8 x double> %3924, <8 x double> %3917)
  %3926 = fmul <8 x double> %3723, %3925
  %3927 = getelementptr inbounds nuw i8, ptr %3716, i64 768
  %3928 = load <8 x double>, ptr %3927, align 64, !tbaa !26
  %3929 = fneg <8 x double> %3928
  %3930 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3929, <8 x double> %3723, <8 x double> %3926)
  %3931 = fmul <8 x double> %3915, %3930
  %3932 = fsub <8 x double> %3736, %3931
  %3933 = select <8 x i1> %3910, <8 x double> %3736, <8 x double> %3932
  br label %3934

3934:                                             ; preds = %3896, %3912
  %3935 = phi <8 x double> [ %3933, %3912 ], [ %3736, %3896 ]
  %3936 = getelementptr inbounds nuw i8, ptr %3716, i64 3264
  store <8 x double> %3751, ptr %3936, align 64, !tbaa !26
  store <8 x double> %3900, ptr %3903, align 64, !tbaa !26
  %3937 = getelementptr inbounds nuw i8, ptr %3716, i64 3136
  store <8 x double> %3897, ptr %3937, align 64, !tbaa !26
  %3938 = getelementptr inbounds nuw i8, ptr %3716, i64 3008
  %3939 = load <8 x double>, ptr %3938, align 64, !tbaa !26
  %3940 = select <8 x i1> %3910, <8 x double> %3939, <8 x double> %3899
  store <8 x double> %3940, ptr %3938, align 64, !tbaa !26
  %3941 = select <8 x i1> %3910, <8 x double> %3763, <8 x double> %3898
  store <8 x double> %3941, ptr %3762, align 64, !tbaa !26
  %3942 = getelementptr inbounds nuw i8, ptr %3716, i64 3520
  store <8 x double> %3720, ptr %3942, align 64, !tbaa !26
  %3943 = getelementptr inbounds nuw i8, ptr %3716, i64 3584
  store <8 x double> %3723, ptr %3943, align 64, !tbaa !26
  %3944 = getelementptr inbounds nuw i8, ptr %3716, i64 3200
  %3945 = load <8 x double>, ptr %3944, align 64, !tbaa !26
  %3946 = getelementptr inbounds nuw i8, ptr %3716, i64 5888
  %3947 = load <8 x double>, ptr %3946, align 64, !tbaa !26
  %3948 = fsub <8 x double> %3947, %3723
  %3949 = getelementptr inbounds nuw i8, ptr %3716, i64 8256
  %3950 = load <8 x double>, ptr %3949, align 64, !tbaa !26
  %3951 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3945, <8 x double> %3950, <8 x double> splat (double 1.000000e+00))
  %3952 = fdiv <8 x double> %3948, %3951
  %3953 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3723, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3954 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3723, <8 x double> %3953, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3955 = fneg <8 x double> %3718
  %3956 = fmul <8 x double> %3954, %3955
  %3957 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3945, <8 x double> %3952, <8 x double> %3956)
  %3958 = getelementptr inbounds nuw i8, ptr %3716, i64 3456
  store <8 x double> %3957, ptr %3958, align 64, !tbaa !26
  %3959 = getelementptr inbounds nuw i8, ptr %3716, i64 6784
  %3960 = load <8 x double>, ptr %3959, align 64, !tbaa !26
  %3961 = fsub <8 x double> %3947, %3960
  %3962 = fsub <8 x double> %3961, %3952
  %3963 = getelementptr inbounds nuw i8, ptr %3716, i64 3648
  store <8 x double> %3962, ptr %3963, align 64, !tbaa !26
  %3964 = getelementptr inbounds nuw i8, ptr %3716, i64 7360
  %3965 = load <8 x double>, ptr %3964, align 64, !tbaa !26
  %3966 = getelementptr inbounds nuw i8, ptr %3716, i64 7424
  %3967 = load <8 x double>, ptr %3966, align 64, !tbaa !26
  %3968 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3965, <8 x double> %3723, <8 x double> %3967)
  %3969 = getelementptr inbounds nuw i8, ptr %3716, i64 6720
  %3970 = load <8 x double>, ptr %3969, align 64, !tbaa !26
  %3971 = getelementptr inbounds nuw i8, ptr %3716, i64 4224
  %3972 = load <8 x double>, ptr %3971, align 64, !tbaa !26
  %3973 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3741, <8 x double> %3972, <8 x double> %3970)
  %3974 = getelementptr inbounds nuw i8, ptr %3716, i64 5120
  %3975 = load <8 x double>, ptr %3974, align 64, !tbaa !26
  %3976 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3747, <8 x double> %3975, <8 x double> %3973)
  %3977 = fdiv <8 x double> %3976, %3750
  %3978 = getelementptr inbounds nuw i8, ptr %3716, i64 3328
  store <8 x double> %3977, ptr %3978, align 64, !tbaa !26
  %3979 = getelementptr inbounds nuw i8, ptr %3716, i64 4288
  %3980 = load <8 x double>, ptr %3979, align 64, !tbaa !26
  %3981 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3741, <8 x double> %3980, <8 x double> %3935)
  %3982 = getelementptr inbounds nuw i8, ptr %3716, i64 5184
  %3983 = load <8 x double>, ptr %3982, align 64, !tbaa !26
  %3984 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3747, <8 x double> %3983, <8 x double> %3981)
  %3985 = fdiv <8 x double> %3984, %3750
  %3986 = getelementptr inbounds nuw i8, ptr %3716, i64 3392
  store <8 x double> %3985, ptr %3986, align 64, !tbaa !26
  %3987 = getelementptr inbounds nuw i8, ptr %3716, i64 4608
  %3988 = load <8 x double>, ptr %3987, align 64, !tbaa !26
  %3989 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3741, <8 x double> %3988, <8 x double> %3968)
  %3990 = getelementptr inbounds nuw i8, ptr %3716, i64 5504
  %3991 = load <8 x double>, ptr %3990, align 64, !tbaa !26
  %3992 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3747, <8 x double> %3991, <8 x double> %3989)
  %3993 = fdiv <8 x double> %3992, %3750
  %3994 = getelementptr inbounds nuw i8, ptr %3716, i64 3712
  store <8 x double> %3993, ptr %3994, align 64, !tbaa !26
  %3995 = fcmp ogt <8 x double> %3714, %3911
  %3996 = select <8 x i1> %3995, <8 x double> %3714, <8 x double> %3911
  %3997 = add nuw nsw i64 %3713, 1
  %3998 = load i64, ptr %156, align 8, !tbaa !20
  %3999 = icmp slt i64 %3997, %3998
  br i1 %3999, label %3712, label %4000, !llvm.loop !134

4000:                                             ; preds = %3934, %3459
  %4001 = phi <8 x double> [ zeroinitializer, %3459 ], [ %3996, %3934 ]
  %4002 = phi i64 [ %3590, %3459 ], [ %3998, %3934 ]
  %4003 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %4001)
  %4004 = insertelement <8 x double> poison, double %4003, i64 0
  %4005 = shufflevector <8 x double> %4004, <8 x double> poison, <8 x i32> zeroinitializer
  %4006 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4007 = fadd <8 x double> %4006, splat (double 1.000000e+00)
  store <8 x double> %4007, ptr %173, align 64, !tbaa !26
  %4008 = icmp sgt i64 %4002, 0
  br i1 %4008, label %4009, label %4013

4009:                                             ; preds = %4000
  %4010 = load ptr, ptr %129, align 8, !tbaa !28
  %4011 = load i64, ptr %119, align 16, !tbaa !21
  %4012 = add nsw i64 %4011, -1
  br label %4037

4013:                                             ; preds = %4063, %4000
  %4014 = phi <8 x double> [ zeroinitializer, %4000 ], [ %4078, %4063 ]
  %4015 = load i64, ptr %208, align 32, !tbaa !24
  %4016 = sitofp i64 %4015 to double
  %4017 = insertelement <8 x double> poison, double %4016, i64 0
  %4018 = shufflevector <8 x double> %4017, <8 x double> poison, <8 x i32> zeroinitializer
  %4019 = fcmp oge <8 x double> %4007, %4018
  %4020 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %4014)
  %4021 = fcmp oeq double %4020, 0.000000e+00
  %4022 = insertelement <8 x i1> poison, i1 %4021, i64 0
  %4023 = shufflevector <8 x i1> %4022, <8 x i1> poison, <8 x i32> zeroinitializer
  %4024 = and <8 x i1> %4023, %4019
  %4025 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %4026 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4027 = fcmp olt <8 x double> %4005, %4026
  %4028 = or <8 x i1> %4027, %4024
  %4029 = fcmp oge <8 x double> %4007, splat (double 2.000000e+01)
  %4030 = or <8 x i1> %4029, %4028
  %4031 = select <8 x i1> %4030, <8 x i64> %4025, <8 x i64> zeroinitializer
  store <8 x i64> %4031, ptr %133, align 64, !tbaa !26
  %4032 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4031)
  %4033 = icmp eq i64 %4032, 0
  br i1 %4033, label %516, label %4034, !llvm.loop !54

4034:                                             ; preds = %4013
  br i1 %4008, label %4035, label %4081

4035:                                             ; preds = %4034
  %4036 = icmp eq <8 x i64> %4031, zeroinitializer
  br label %4396

4037:                                             ; preds = %4009, %4063
  %4038 = phi i64 [ 0, %4009 ], [ %4079, %4063 ]
  %4039 = phi <8 x double> [ zeroinitializer, %4009 ], [ %4078, %4063 ]
  %4040 = getelementptr inbounds nuw %struct.Piece, ptr %4010, i64 %4038
  %4041 = getelementptr inbounds nuw i8, ptr %4040, i64 8512
  %4042 = load i64, ptr %4041, align 64, !tbaa !31
  %4043 = icmp sgt i64 %4011, %4042
  br i1 %4043, label %4052, label %4044

4044:                                             ; preds = %4037
  %4045 = getelementptr inbounds nuw i8, ptr %4040, i64 8608
  %4046 = load ptr, ptr %4045, align 32, !tbaa !72
  %4047 = getelementptr inbounds <8 x double>, ptr %4046, i64 %4012
  %4048 = load <8 x double>, ptr %4047, align 64, !tbaa !26
  %4049 = getelementptr inbounds nuw i8, ptr %4040, i64 1536
  %4050 = load <8 x double>, ptr %4049, align 64, !tbaa !26
  %4051 = fmul <8 x double> %4048, %4050
  br label %4063

4052:                                             ; preds = %4037
  %4053 = getelementptr inbounds nuw i8, ptr %4040, i64 3776
  %4054 = load <8 x double>, ptr %4053, align 64, !tbaa !26
  %4055 = getelementptr inbounds nuw i8, ptr %4040, i64 1536
  %4056 = load <8 x double>, ptr %4055, align 64, !tbaa !26
  %4057 = getelementptr inbounds nuw i8, ptr %4040, i64 8608
  %4058 = load ptr, ptr %4057, align 32, !tbaa !72
  %4059 = getelementptr inbounds <8 x double>, ptr %4058, i64 %4012
  %4060 = load <8 x double>, ptr %4059, align 64, !tbaa !26
  %4061 = fsub <8 x double> %4054, %4056
  %4062 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4060, <8 x double> %4061, <8 x double> %4056)
  br label %4063

4063:                                             ; preds = %4044, %4052
  %4064 = phi <8 x double> [ %4051, %4044 ], [ %4062, %4052 ]
  %4065 = getelementptr inbounds nuw i8, ptr %4040, i64 8320
  %4066 = load <8 x i64>, ptr %4065, align 64, !tbaa !26
  %4067 = getelementptr inbounds nuw i8, ptr %4040, i64 7680
  %4068 = load <8 x double>, ptr %4067, align 64, !tbaa !26
  %4069 = fcmp une <8 x double> %4068, zeroinitializer
  %4070 = getelementptr inbounds nuw i8, ptr %4040, i64 3008
  %4071 = load <8 x double>, ptr %4070, align 64, !tbaa !26
  %4072 = fcmp uge <8 x double> %4071, %4064
  %4073 = select <8 x i1> %4072, <8 x i1> splat (i1 true), <8 x i1> %4069
  %4074 = icmp eq <8 x i64> %4066, zeroinitializer
  %4075 = select <8 x i1> %4073, <8 x i1> splat (i1 true), <8 x i1> %4074
  %4076 = select <8 x i1> %4075, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %4077 = fcmp ogt <8 x double> %4039, %4076
  %4078 = select <8 x i1> %4077, <8 x double> %4039, <8 x double> %4076
  %4079 = add nuw nsw i64 %4038, 1
  %4080 = icmp eq i64 %4079, %4002
  br i1 %4080, label %4013, label %4037, !llvm.loop !135

4081:                                             ; preds = %4444, %4034
  %4082 = phi i64 [ %4002, %4034 ], [ %4450, %4444 ]
  %4083 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4084 = fadd <8 x double> %4083, splat (double 1.000000e+00)
  %4085 = icmp eq <8 x i64> %4031, zeroinitializer
  %4086 = select <8 x i1> %4085, <8 x double> %4083, <8 x double> %4084
  store <8 x double> %4086, ptr %161, align 64, !tbaa !26
  %4087 = fcmp ogt <8 x double> %4086, splat (double 4.000000e+01)
  %4088 = select <8 x i1> %4087, <8 x i64> %4031, <8 x i64> zeroinitializer
  %4089 = xor <8 x i64> %4088, %4031
  %4090 = load <8 x double>, ptr %127, align 64, !tbaa !26
  %4091 = fadd <8 x double> %4090, splat (double 1.000000e+00)
  %4092 = icmp eq <8 x i64> %4088, zeroinitializer
  %4093 = select <8 x i1> %4092, <8 x double> %4090, <8 x double> %4091
  store <8 x double> %4093, ptr %127, align 64, !tbaa !26
  %4094 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %4095 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %4096 = fsub <8 x double> %4094, %4095
  %4097 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4096)
  %4098 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %4099 = fmul <8 x double> %4098, splat (double 1.500000e+00)
  %4100 = fcmp ogt <8 x double> %4097, %4099
  %4101 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4102 = fcmp ogt <8 x double> %4101, splat (double 2.000000e-03)
  %4103 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %4104 = fcmp oeq <8 x double> %4103, zeroinitializer
  %4105 = and <8 x i1> %4100, %4104
  %4106 = and <8 x i1> %4102, %4105
  %4107 = fdiv <8 x double> %4098, %4097
  %4108 = select <8 x i1> %4106, <8 x i64> %4089, <8 x i64> zeroinitializer
  %4109 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4110 = fcmp ogt <8 x double> %4109, %4101
  %4111 = select <8 x i1> %4110, <8 x double> %4109, <8 x double> %4101
  %4112 = select <8 x i1> %4106, <8 x double> zeroinitializer, <8 x double> %4111
  %4113 = icmp eq <8 x i64> %4108, zeroinitializer
  %4114 = select <8 x i1> %4113, <8 x double> %4109, <8 x double> %4112
  store <8 x double> %4114, ptr %159, align 64, !tbaa !26
  %4115 = fcmp ogt <8 x double> %4107, splat (double 5.000000e-02)
  %4116 = select <8 x i1> %4115, <8 x double> %4107, <8 x double> splat (double 5.000000e-02)
  %4117 = fcmp olt <8 x double> %4116, splat (double 0x3FEE666666666666)
  %4118 = select <8 x i1> %4117, <8 x double> %4116, <8 x double> splat (double 0x3FEE666666666666)
  %4119 = fmul <8 x double> %4101, %4118
  %4120 = fcmp ogt <8 x double> %4119, splat (double 0x3EB0C6F7A0B5ED8D)
  %4121 = select <8 x i1> %4120, <8 x double> %4119, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4122 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %4123 = select <8 x i1> %4113, <8 x double> %4122, <8 x double> %4121
  store <8 x double> %4123, ptr %139, align 64, !tbaa !26
  %4124 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %4125 = fadd <8 x double> %4124, splat (double 1.000000e+00)
  %4126 = select <8 x i1> %4113, <8 x double> %4124, <8 x double> %4125
  store <8 x double> %4126, ptr %124, align 64, !tbaa !26
  %4127 = xor <8 x i64> %4108, %4089
  %4128 = icmp sgt i64 %4082, 0
  br i1 %4128, label %4129, label %4226

4129:                                             ; preds = %4081
  %4130 = load ptr, ptr %129, align 8, !tbaa !28
  %4131 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4132 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %4133 = fcmp une <8 x double> %4131, %4132
  %4134 = fcmp ule <8 x double> %4131, zeroinitializer
  %4135 = or <8 x i1> %4134, %4133
  %4136 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %4137 = fcmp ogt <8 x double> %4101, splat (double 0x3E7AD7F29ABCAF48)
  %4138 = fcmp ogt <8 x double> %4101, splat (double 1.000000e-05)
  %4139 = fcmp ogt <8 x double> %4101, splat (double 1.000000e-04)
  br label %4140

4140:                                             ; preds = %4129, %4140
  %4141 = phi i64 [ 0, %4129 ], [ %4224, %4140 ]
  %4142 = phi <8 x double> [ splat (double 1.000000e+00), %4129 ], [ %4223, %4140 ]
  %4143 = phi <8 x i64> [ zeroinitializer, %4129 ], [ %4171, %4140 ]
  %4144 = phi <8 x i64> [ zeroinitializer, %4129 ], [ %4220, %4140 ]
  %4145 = getelementptr inbounds nuw %struct.Piece, ptr %4130, i64 %4141
  %4146 = getelementptr inbounds nuw i8, ptr %4145, i64 3072
  %4147 = load <8 x double>, ptr %4146, align 64, !tbaa !26
  %4148 = getelementptr inbounds nuw i8, ptr %4145, i64 3968
  %4149 = load <8 x double>, ptr %4148, align 64, !tbaa !26
  %4150 = getelementptr inbounds nuw i8, ptr %4145, i64 8320
  %4151 = load <8 x i64>, ptr %4150, align 64, !tbaa !26
  %4152 = xor <8 x i64> %4151, splat (i64 -1)
  %4153 = getelementptr inbounds nuw i8, ptr %4145, i64 896
  %4154 = load <8 x double>, ptr %4153, align 64, !tbaa !26
  %4155 = fmul <8 x double> %4136, %4154
  %4156 = fcmp ogt <8 x double> %4155, splat (double 0x3E7AD7F29ABCAF48)
  %4157 = fneg <8 x double> %4155
  %4158 = select <8 x i1> %4156, <8 x double> %4157, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4159 = fcmp olt <8 x double> %4147, %4158
  %4160 = select <8 x i1> %4159, <8 x i1> %4135, <8 x i1> zeroinitializer
  %4161 = select <8 x i1> %4160, <8 x i64> %4152, <8 x i64> zeroinitializer
  %4162 = fcmp ole <8 x double> %4149, zeroinitializer
  %4163 = select <8 x i1> %4162, <8 x i64> %4161, <8 x i64> zeroinitializer
  %4164 = getelementptr inbounds nuw i8, ptr %4145, i64 832
  %4165 = load <8 x double>, ptr %4164, align 64, !tbaa !26
  %4166 = fmul <8 x double> %4165, splat (double -3.000000e-07)
  %4167 = fcmp olt <8 x double> %4147, %4166
  %4168 = select <8 x i1> %4137, <8 x i1> %4167, <8 x i1> zeroinitializer
  %4169 = select <8 x i1> %4168, <8 x i64> %4163, <8 x i64> zeroinitializer
  %4170 = or <8 x i64> %4169, %4144
  %4171 = or <8 x i64> %4169, %4143
  %4172 = fcmp olt <8 x double> %4142, splat (double 3.000000e-01)
  %4173 = icmp eq <8 x i64> %4169, zeroinitializer
  %4174 = select <8 x i1> %4173, <8 x i1> splat (i1 true), <8 x i1> %4172
  %4175 = select <8 x i1> %4174, <8 x double> %4142, <8 x double> splat (double 3.000000e-01)
  %4176 = xor <8 x i64> %4163, splat (i64 -1)
  %4177 = and <8 x i64> %4161, %4176
  %4178 = select <8 x i1> %4138, <8 x i64> %4177, <8 x i64> zeroinitializer
  %4179 = fsub <8 x double> %4149, %4147
  %4180 = fdiv <8 x double> %4149, %4179
  %4181 = or <8 x i64> %4170, %4178
  %4182 = fcmp olt <8 x double> %4175, %4180
  %4183 = icmp eq <8 x i64> %4178, zeroinitializer
  %4184 = select <8 x i1> %4183, <8 x i1> splat (i1 true), <8 x i1> %4182
  %4185 = select <8 x i1> %4184, <8 x double> %4175, <8 x double> %4180
  %4186 = getelementptr inbounds nuw i8, ptr %4145, i64 3904
  %4187 = load <8 x double>, ptr %4186, align 64, !tbaa !26
  %4188 = getelementptr inbounds nuw i8, ptr %4145, i64 3008
  %4189 = load <8 x double>, ptr %4188, align 64, !tbaa !26
  %4190 = getelementptr inbounds nuw i8, ptr %4145, i64 7680
  %4191 = load <8 x double>, ptr %4190, align 64, !tbaa !26
  %4192 = fcmp oeq <8 x double> %4191, zeroinitializer
  %4193 = getelementptr inbounds nuw i8, ptr %4145, i64 1472
  %4194 = load <8 x double>, ptr %4193, align 64, !tbaa !26
  %4195 = fmul <8 x double> %4194, splat (double 0x3FEFF7CED916872B)
  %4196 = fcmp olt <8 x double> %4189, %4195
  %4197 = and <8 x i1> %4192, %4196
  %4198 = and <8 x i1> %4139, %4197
  %4199 = fsub <8 x double> %4187, %4194
  %4200 = fsub <8 x double> %4187, %4189
  %4201 = fdiv <8 x double> %4199, %4200
  %4202 = fcmp uge <8 x double> %4185, %4201
  %4203 = select <8 x i1> %4198, <8 x i1> %4202, <8 x i1> zeroinitializer
  %4204 = select <8 x i1> %4203, <8 x double> %4201, <8 x double> %4185
  %4205 = fcmp oeq <8 x double> %4191, splat (double 1.000000e+00)
  %4206 = getelementptr inbounds nuw i8, ptr %4145, i64 3264
  %4207 = load <8 x double>, ptr %4206, align 64, !tbaa !26
  %4208 = getelementptr inbounds nuw i8, ptr %4145, i64 1600
  %4209 = load <8 x double>, ptr %4208, align 64, !tbaa !26
  %4210 = fmul <8 x double> %4209, splat (double 1.000100e+00)
  %4211 = fcmp ogt <8 x double> %4207, %4210
  %4212 = and <8 x i1> %4205, %4211
  %4213 = and <8 x i1> %4139, %4212
  %4214 = getelementptr inbounds nuw i8, ptr %4145, i64 4160
  %4215 = load <8 x double>, ptr %4214, align 64, !tbaa !26
  %4216 = fsub <8 x double> %4209, %4215
  %4217 = fsub <8 x double> %4207, %4215
  %4218 = fdiv <8 x double> %4216, %4217
  %4219 = select <8 x i1> %4212, <8 x i1> %4139, <8 x i1> %4198
  %4220 = select <8 x i1> %4219, <8 x i64> splat (i64 -1), <8 x i64> %4181
  %4221 = fcmp uge <8 x double> %4204, %4218
  %4222 = select <8 x i1> %4213, <8 x i1> %4221, <8 x i1> zeroinitializer
  %4223 = select <8 x i1> %4222, <8 x double> %4218, <8 x double> %4204
  %4224 = add nuw nsw i64 %4141, 1
  %4225 = icmp eq i64 %4224, %4082
  br i1 %4225, label %4226, label %4140, !llvm.loop !136

4226:                                             ; preds = %4140, %4081
  %4227 = phi <8 x i64> [ zeroinitializer, %4081 ], [ %4220, %4140 ]
  %4228 = phi <8 x i64> [ zeroinitializer, %4081 ], [ %4171, %4140 ]
  %4229 = phi <8 x double> [ splat (double 1.000000e+00), %4081 ], [ %4223, %4140 ]
  %4230 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4227)
  %4231 = icmp eq i64 %4230, 0
  %4232 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4228)
  %4233 = icmp eq i64 %4232, 0
  %4234 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4229)
  %4235 = insertelement <8 x double> poison, double %4234, i64 0
  %4236 = shufflevector <8 x double> %4235, <8 x double> poison, <8 x i32> zeroinitializer
  %4237 = select i1 %4231, <8 x i64> zeroinitializer, <8 x i64> %4127
  %4238 = fcmp ogt <8 x double> %4114, %4101
  %4239 = select <8 x i1> %4238, <8 x double> %4114, <8 x double> %4101
  %4240 = select i1 %4233, <8 x i1> splat (i1 true), <8 x i1> zeroinitializer
  %4241 = select <8 x i1> %4240, <8 x double> %4239, <8 x double> zeroinitializer
  %4242 = icmp eq <8 x i64> %4237, zeroinitializer
  %4243 = select <8 x i1> %4242, <8 x double> %4114, <8 x double> %4241
  %4244 = fcmp ogt <8 x double> %4236, splat (double 5.000000e-02)
  %4245 = select <8 x i1> %4244, <8 x double> %4236, <8 x double> splat (double 5.000000e-02)
  %4246 = fcmp olt <8 x double> %4245, splat (double 0x3FEE666666666666)
  %4247 = select <8 x i1> %4246, <8 x double> %4245, <8 x double> splat (double 0x3FEE666666666666)
  %4248 = fmul <8 x double> %4101, %4247
  %4249 = fcmp ogt <8 x double> %4248, splat (double 0x3EB0C6F7A0B5ED8D)
  %4250 = select <8 x i1> %4249, <8 x double> %4248, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4251 = select <8 x i1> %4242, <8 x double> %4123, <8 x double> %4250
  %4252 = fadd <8 x double> %4126, splat (double 1.000000e+00)
  %4253 = select <8 x i1> %4242, <8 x double> %4126, <8 x double> %4252
  %4254 = xor <8 x i64> %4237, %4127
  %4255 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %4256 = fmul <8 x double> %4255, splat (double 5.000000e-01)
  %4257 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %4258 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %4259 = fneg <8 x double> %4256
  %4260 = icmp eq <8 x i64> %4258, zeroinitializer
  %4261 = select <8 x i1> %4260, <8 x double> %4259, <8 x double> %4256
  %4262 = fadd <8 x double> %4257, %4261
  %4263 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %4264 = fsub <8 x double> %4263, %4262
  %4265 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %4266 = fsub <8 x double> %4265, %4262
  %4267 = fneg <8 x double> %4264
  %4268 = select <8 x i1> %4260, <8 x double> %4267, <8 x double> %4264
  %4269 = fneg <8 x double> %4266
  %4270 = select <8 x i1> %4260, <8 x double> %4269, <8 x double> %4266
  %4271 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %4272 = fcmp oeq <8 x double> %4271, zeroinitializer
  %4273 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %4274 = fcmp oeq <8 x double> %4273, zeroinitializer
  %4275 = and <8 x i1> %4272, %4274
  %4276 = fcmp olt <8 x double> %4268, splat (double -4.000000e-03)
  %4277 = and <8 x i1> %4275, %4276
  %4278 = fcmp ogt <8 x double> %4270, splat (double 4.000000e-03)
  %4279 = and <8 x i1> %4278, %4277
  %4280 = and <8 x i1> %4102, %4279
  %4281 = fsub <8 x double> %4268, %4270
  %4282 = fdiv <8 x double> %4268, %4281
  %4283 = select <8 x i1> %4280, <8 x i64> %4254, <8 x i64> zeroinitializer
  %4284 = fcmp ogt <8 x double> %4243, %4101
  %4285 = icmp eq <8 x i64> %4283, zeroinitializer
  %4286 = select <8 x i1> %4285, <8 x i1> splat (i1 true), <8 x i1> %4284
  %4287 = select <8 x i1> %4286, <8 x double> %4243, <8 x double> %4101
  store <8 x double> %4287, ptr %159, align 64, !tbaa !26
  %4288 = fcmp ogt <8 x double> %4282, splat (double 5.000000e-02)
  %4289 = select <8 x i1> %4288, <8 x double> %4282, <8 x double> splat (double 5.000000e-02)
  %4290 = fcmp olt <8 x double> %4289, splat (double 0x3FEE666666666666)
  %4291 = select <8 x i1> %4290, <8 x double> %4289, <8 x double> splat (double 0x3FEE666666666666)
  %4292 = fmul <8 x double> %4101, %4291
  %4293 = fcmp ogt <8 x double> %4292, splat (double 0x3EB0C6F7A0B5ED8D)
  %4294 = select <8 x i1> %4293, <8 x double> %4292, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4295 = select <8 x i1> %4285, <8 x double> %4251, <8 x double> %4294
  store <8 x double> %4295, ptr %139, align 64, !tbaa !26
  %4296 = fadd <8 x double> %4253, splat (double 1.000000e+00)
  %4297 = select <8 x i1> %4285, <8 x double> %4253, <8 x double> %4296
  store <8 x double> %4297, ptr %124, align 64, !tbaa !26
  %4298 = xor <8 x i64> %4283, %4254
  %4299 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %4300 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %4301 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %4302 = fsub <8 x double> %4300, %4301
  %4303 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %4304 = fcmp une <8 x double> %4303, splat (double 1.000000e+00)
  %4305 = load <8 x double>, ptr %215, align 64, !tbaa !26
  %4306 = fsub <8 x double> %4263, %4305
  %4307 = select <8 x i1> %4304, <8 x double> splat (double -1.000000e+00), <8 x double> %4306
  %4308 = fcmp une <8 x double> %4303, splat (double 2.000000e+00)
  %4309 = fsub <8 x double> %4299, %4305
  %4310 = select <8 x i1> %4308, <8 x double> %4307, <8 x double> %4309
  %4311 = fcmp une <8 x double> %4303, splat (double 3.000000e+00)
  %4312 = fsub <8 x double> %4302, %4305
  %4313 = select <8 x i1> %4311, <8 x double> %4310, <8 x double> %4312
  %4314 = fcmp une <8 x double> %4303, splat (double 4.000000e+00)
  %4315 = fsub <8 x double> %4305, %4302
  %4316 = select <8 x i1> %4314, <8 x double> %4313, <8 x double> %4315
  br i1 %4128, label %4317, label %4349

4317:                                             ; preds = %4226
  %4318 = load ptr, ptr %129, align 8, !tbaa !28
  %4319 = and i64 %4082, 1
  %4320 = icmp eq i64 %4082, 1
  br i1 %4320, label %4339, label %4321

4321:                                             ; preds = %4317
  %4322 = and i64 %4082, 9223372036854775806
  br label %4323

4323:                                             ; preds = %4323, %4321
  %4324 = phi i64 [ 0, %4321 ], [ %4336, %4323 ]
  %4325 = phi <8 x double> [ splat (double 1.000000e+09), %4321 ], [ %4335, %4323 ]
  %4326 = phi i64 [ 0, %4321 ], [ %4337, %4323 ]
  %4327 = getelementptr inbounds nuw %struct.Piece, ptr %4318, i64 %4324, i32 35
  %4328 = load <8 x double>, ptr %4327, align 64, !tbaa !26
  %4329 = fcmp olt <8 x double> %4325, %4328
  %4330 = select <8 x i1> %4329, <8 x double> %4325, <8 x double> %4328
  %4331 = or disjoint i64 %4324, 1
  %4332 = getelementptr inbounds nuw %struct.Piece, ptr %4318, i64 %4331, i32 35
  %4333 = load <8 x double>, ptr %4332, align 64, !tbaa !26
  %4334 = fcmp olt <8 x double> %4330, %4333
  %4335 = select <8 x i1> %4334, <8 x double> %4330, <8 x double> %4333
  %4336 = add nuw nsw i64 %4324, 2
  %4337 = add i64 %4326, 2
  %4338 = icmp eq i64 %4337, %4322
  br i1 %4338, label %4339, label %4323, !llvm.loop !137

4339:                                             ; preds = %4323, %4317
  %4340 = phi <8 x double> [ poison, %4317 ], [ %4335, %4323 ]
  %4341 = phi i64 [ 0, %4317 ], [ %4336, %4323 ]
  %4342 = phi <8 x double> [ splat (double 1.000000e+09), %4317 ], [ %4335, %4323 ]
  %4343 = icmp eq i64 %4319, 0
  br i1 %4343, label %4349, label %4344

4344:                                             ; preds = %4339
  %4345 = getelementptr inbounds nuw %struct.Piece, ptr %4318, i64 %4341, i32 35
  %4346 = load <8 x double>, ptr %4345, align 64, !tbaa !26
  %4347 = fcmp olt <8 x double> %4342, %4346
  %4348 = select <8 x i1> %4347, <8 x double> %4342, <8 x double> %4346
  br label %4349

4349:                                             ; preds = %4344, %4339, %4226
  %4350 = phi <8 x double> [ splat (double 1.000000e+09), %4226 ], [ %4340, %4339 ], [ %4348, %4344 ]
  %4351 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4350)
  %4352 = insertelement <8 x double> poison, double %4351, i64 0
  %4353 = shufflevector <8 x double> %4352, <8 x double> poison, <8 x i32> zeroinitializer
  %4354 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %4355 = fsub <8 x double> %4354, %4301
  %4356 = fsub <8 x double> %4265, %4305
  %4357 = select <8 x i1> %4304, <8 x double> splat (double -1.000000e+00), <8 x double> %4356
  %4358 = fsub <8 x double> %4353, %4305
  %4359 = select <8 x i1> %4308, <8 x double> %4357, <8 x double> %4358
  %4360 = fsub <8 x double> %4355, %4305
  %4361 = select <8 x i1> %4311, <8 x double> %4359, <8 x double> %4360
  %4362 = fsub <8 x double> %4305, %4355
  %4363 = select <8 x i1> %4314, <8 x double> %4361, <8 x double> %4362
  %4364 = fcmp une <8 x double> %4303, zeroinitializer
  %4365 = fcmp oge <8 x double> %4101, splat (double 5.000000e-02)
  %4366 = and <8 x i1> %4365, %4364
  %4367 = fcmp olt <8 x double> %4316, zeroinitializer
  %4368 = and <8 x i1> %4366, %4367
  %4369 = fsub <8 x double> %4363, %4316
  %4370 = fmul <8 x double> %4369, splat (double 2.000000e-02)
  %4371 = fcmp ogt <8 x double> %4363, %4370
  %4372 = and <8 x i1> %4368, %4371
  %4373 = fsub <8 x double> %4316, %4363
  %4374 = fdiv <8 x double> %4316, %4373
  %4375 = fcmp olt <8 x double> %4374, splat (double 0x3FEE666666666666)
  %4376 = and <8 x i1> %4375, %4372
  %4377 = select <8 x i1> %4376, <8 x i64> %4298, <8 x i64> zeroinitializer
  %4378 = fcmp ogt <8 x double> %4287, %4101
  %4379 = icmp eq <8 x i64> %4377, zeroinitializer
  %4380 = select <8 x i1> %4379, <8 x i1> splat (i1 true), <8 x i1> %4378
  %4381 = select <8 x i1> %4380, <8 x double> %4287, <8 x double> %4101
  store <8 x double> %4381, ptr %159, align 64, !tbaa !26
  %4382 = fcmp ogt <8 x double> %4374, splat (double 5.000000e-02)
  %4383 = select <8 x i1> %4382, <8 x double> %4374, <8 x double> splat (double 5.000000e-02)
  %4384 = fcmp olt <8 x double> %4383, splat (double 0x3FEE666666666666)
  %4385 = select <8 x i1> %4384, <8 x double> %4383, <8 x double> splat (double 0x3FEE666666666666)
  %4386 = fmul <8 x double> %4101, %4385
  %4387 = fcmp ogt <8 x double> %4386, splat (double 0x3EB0C6F7A0B5ED8D)
  %4388 = select <8 x i1> %4387, <8 x double> %4386, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4389 = select <8 x i1> %4379, <8 x double> %4295, <8 x double> %4388
  store <8 x double> %4389, ptr %139, align 64, !tbaa !26
  %4390 = fadd <8 x double> %4297, splat (double 1.000000e+00)
  %4391 = select <8 x i1> %4379, <8 x double> %4297, <8 x double> %4390
  store <8 x double> %4391, ptr %124, align 64, !tbaa !26
  %4392 = xor <8 x i64> %4377, %4298
  %4393 = or <8 x i64> %4392, %4088
  %4394 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4393)
  %4395 = icmp eq i64 %4394, 0
  br i1 %4395, label %516, label %4452

4396:                                             ; preds = %4035, %4444
  %4397 = phi i64 [ 0, %4035 ], [ %4449, %4444 ]
  %4398 = load ptr, ptr %129, align 8, !tbaa !28
  %4399 = getelementptr inbounds nuw %struct.Piece, ptr %4398, i64 %4397
  %4400 = getelementptr inbounds nuw i8, ptr %4399, i64 8520
  %4401 = load ptr, ptr %4400, align 8, !tbaa !57
  %4402 = load <8 x double>, ptr %4401, align 64, !tbaa !26
  %4403 = getelementptr inbounds nuw i8, ptr %4399, i64 1344
  %4404 = load <8 x double>, ptr %4403, align 64, !tbaa !26
  %4405 = getelementptr inbounds nuw i8, ptr %4401, i64 64
  %4406 = load <8 x double>, ptr %4405, align 64, !tbaa !26
  %4407 = fsub <8 x double> %4406, %4402
  %4408 = fneg <8 x double> %4404
  %4409 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4408, <8 x double> %4407, <8 x double> %4402)
  %4410 = getelementptr inbounds nuw i8, ptr %4399, i64 8512
  %4411 = load i64, ptr %4410, align 64, !tbaa !31
  %4412 = icmp eq i64 %4411, 0
  br i1 %4412, label %4444, label %4413

4413:                                             ; preds = %4396
  %4414 = getelementptr <8 x double>, ptr %4401, i64 %4411
  %4415 = getelementptr i8, ptr %4414, i64 -64
  %4416 = load <8 x double>, ptr %4415, align 64, !tbaa !26
  %4417 = load <8 x double>, ptr %4414, align 64, !tbaa !26
  %4418 = getelementptr inbounds nuw i8, ptr %4399, i64 2880
  %4419 = load <8 x double>, ptr %4418, align 64, !tbaa !26
  %4420 = getelementptr inbounds nuw i8, ptr %4399, i64 2944
  %4421 = load <8 x double>, ptr %4420, align 64, !tbaa !26
  %4422 = getelementptr inbounds nuw i8, ptr %4399, i64 64
  %4423 = load <8 x double>, ptr %4422, align 64, !tbaa !26
  %4424 = fsub <8 x double> %4421, %4423
  %4425 = fmul <8 x double> %4419, %4424
  %4426 = getelementptr inbounds nuw i8, ptr %4399, i64 576
  %4427 = load <8 x double>, ptr %4426, align 64, !tbaa !26
  %4428 = getelementptr inbounds nuw i8, ptr %4399, i64 2816
  %4429 = load <8 x double>, ptr %4428, align 64, !tbaa !26
  %4430 = fdiv <8 x double> %4427, %4429
  %4431 = getelementptr inbounds nuw i8, ptr %4399, i64 192
  %4432 = load <8 x double>, ptr %4431, align 64, !tbaa !26
  %4433 = getelementptr inbounds nuw i8, ptr %4399, i64 256
  %4434 = load <8 x double>, ptr %4433, align 64, !tbaa !26
  %4435 = getelementptr inbounds nuw i8, ptr %4399, i64 320
  %4436 = load <8 x double>, ptr %4435, align 64, !tbaa !26
  %4437 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4417, <8 x double> %4436, <8 x double> %4434)
  %4438 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4417, <8 x double> %4437, <8 x double> %4432)
  %4439 = fdiv <8 x double> %4438, %4425
  %4440 = fmul <8 x double> %4417, %4439
  %4441 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4430, <8 x double> %4416, <8 x double> %4440)
  %4442 = fadd <8 x double> %4430, %4439
  %4443 = fdiv <8 x double> %4441, %4442
  br label %4444

4444:                                             ; preds = %4396, %4413
  %4445 = phi <8 x double> [ %4443, %4413 ], [ %4409, %4396 ]
  %4446 = getelementptr inbounds nuw i8, ptr %4399, i64 7616
  %4447 = load <8 x double>, ptr %4446, align 64, !tbaa !26
  %4448 = select <8 x i1> %4036, <8 x double> %4447, <8 x double> %4445
  store <8 x double> %4448, ptr %4446, align 64, !tbaa !26
  %4449 = add nuw nsw i64 %4397, 1
  %4450 = load i64, ptr %156, align 8, !tbaa !20
  %4451 = icmp slt i64 %4449, %4450
  br i1 %4451, label %4396, label %4081, !llvm.loop !138

4452:                                             ; preds = %4349
  %4453 = icmp eq <8 x i64> %4393, zeroinitializer
  %4454 = select <8 x i1> %4453, <8 x double> %4095, <8 x double> %4094
  store <8 x double> %4454, ptr %210, align 64, !tbaa !26
  %4455 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %4456 = select <8 x i1> %4453, <8 x double> %4455, <8 x double> %4263
  store <8 x double> %4456, ptr %150, align 64, !tbaa !26
  %4457 = select <8 x i1> %4453, <8 x double> %4263, <8 x double> %4265
  store <8 x double> %4457, ptr %144, align 64, !tbaa !26
  %4458 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %4459 = select <8 x i1> %4453, <8 x double> %4458, <8 x double> %4300
  store <8 x double> %4459, ptr %256, align 64, !tbaa !26
  %4460 = select <8 x i1> %4453, <8 x double> %4300, <8 x double> %4354
  store <8 x double> %4460, ptr %257, align 64, !tbaa !26
  %4461 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %4462 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %4463 = select <8 x i1> %4453, <8 x double> %4462, <8 x double> %4461
  store <8 x double> %4463, ptr %258, align 64, !tbaa !26
  %4464 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %4465 = select <8 x i1> %4453, <8 x double> %4461, <8 x double> %4464
  store <8 x double> %4465, ptr %259, align 64, !tbaa !26
  %4466 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %4467 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %4468 = select <8 x i1> %4453, <8 x double> %4467, <8 x double> %4466
  store <8 x double> %4468, ptr %261, align 64, !tbaa !26
  %4469 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %4470 = select <8 x i1> %4453, <8 x double> %4466, <8 x double> %4469
  store <8 x double> %4470, ptr %262, align 64, !tbaa !26
  %4471 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %4472 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %4473 = select <8 x i1> %4453, <8 x double> %4472, <8 x double> %4471
  store <8 x double> %4473, ptr %264, align 64, !tbaa !26
  %4474 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %4475 = select <8 x i1> %4453, <8 x double> %4471, <8 x double> %4474
  store <8 x double> %4475, ptr %265, align 64, !tbaa !26
  %4476 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %4477 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %4478 = select <8 x i1> %4453, <8 x double> %4477, <8 x double> %4476
  store <8 x double> %4478, ptr %267, align 64, !tbaa !26
  %4479 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %4480 = select <8 x i1> %4453, <8 x double> %4476, <8 x double> %4479
  store <8 x double> %4480, ptr %268, align 64, !tbaa !26
  %4481 = xor <8 x i64> %4393, splat (i64 -1)
  br i1 %4128, label %4482, label %4876

4482:                                             ; preds = %4452, %4841
  %4483 = phi i64 [ %4853, %4841 ], [ 0, %4452 ]
  %4484 = load ptr, ptr %129, align 8, !tbaa !28
  %4485 = getelementptr inbounds nuw %struct.Piece, ptr %4484, i64 %4483
  %4486 = getelementptr inbounds nuw i8, ptr %4485, i64 1664
  %4487 = load <8 x double>, ptr %4486, align 64, !tbaa !26
  %4488 = fcmp ogt <8 x double> %4487, zeroinitializer
  %4489 = bitcast <8 x i1> %4488 to i8
  %4490 = icmp eq i8 %4489, 0
  br i1 %4490, label %4748, label %4491

4491:                                             ; preds = %4482
  %4492 = load i64, ptr %119, align 16, !tbaa !21
  %4493 = add i64 %4492, -1
  %4494 = getelementptr inbounds nuw i8, ptr %4485, i64 4672
  %4495 = load <8 x double>, ptr %4494, align 64, !tbaa !26
  %4496 = getelementptr inbounds nuw i8, ptr %4485, i64 3776
  %4497 = load <8 x double>, ptr %4496, align 64, !tbaa !26
  %4498 = getelementptr inbounds nuw i8, ptr %4485, i64 8512
  %4499 = load i64, ptr %4498, align 64, !tbaa !31
  %4500 = icmp sgt i64 %4492, %4499
  br i1 %4500, label %4509, label %4501

4501:                                             ; preds = %4491
  %4502 = getelementptr inbounds nuw i8, ptr %4485, i64 8608
  %4503 = load ptr, ptr %4502, align 32, !tbaa !72
  %4504 = getelementptr inbounds <8 x double>, ptr %4503, i64 %4493
  %4505 = load <8 x double>, ptr %4504, align 64, !tbaa !26
  %4506 = getelementptr inbounds nuw i8, ptr %4485, i64 1536
  %4507 = load <8 x double>, ptr %4506, align 64, !tbaa !26
  %4508 = fmul <8 x double> %4505, %4507
  br label %4518

4509:                                             ; preds = %4491
  %4510 = getelementptr inbounds nuw i8, ptr %4485, i64 1536
  %4511 = load <8 x double>, ptr %4510, align 64, !tbaa !26
  %4512 = getelementptr inbounds nuw i8, ptr %4485, i64 8608
  %4513 = load ptr, ptr %4512, align 32, !tbaa !72
  %4514 = getelementptr inbounds <8 x double>, ptr %4513, i64 %4493
  %4515 = load <8 x double>, ptr %4514, align 64, !tbaa !26
  %4516 = fsub <8 x double> %4495, %4511
  %4517 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4515, <8 x double> %4516, <8 x double> %4511)
  br label %4518

4518:                                             ; preds = %4509, %4501
  %4519 = phi <8 x double> [ %4507, %4501 ], [ %4511, %4509 ]
  %4520 = phi <8 x double> [ %4508, %4501 ], [ %4517, %4509 ]
  %4521 = getelementptr inbounds nuw i8, ptr %4485, i64 3008
  %4522 = load <8 x double>, ptr %4521, align 64, !tbaa !26
  %4523 = fcmp ole <8 x double> %4520, %4522
  %4524 = getelementptr inbounds nuw i8, ptr %4485, i64 7680
  %4525 = load <8 x double>, ptr %4524, align 64, !tbaa !26
  %4526 = fcmp oeq <8 x double> %4525, zeroinitializer
  %4527 = select <8 x i1> %4526, <8 x i1> %4523, <8 x i1> zeroinitializer
  %4528 = select <8 x i1> %4527, <8 x i64> %4393, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %4529 = xor <8 x i64> %4528, %4393
  store <8 x i64> %4529, ptr %12, align 64, !tbaa !26
  %4530 = fsub <8 x double> %4495, %4497
  %4531 = getelementptr inbounds nuw i8, ptr %4485, i64 1536
  %4532 = fsub <8 x double> %4497, %4519
  %4533 = fdiv <8 x double> %4530, %4532
  %4534 = getelementptr inbounds nuw i8, ptr %4485, i64 8552
  %4535 = load ptr, ptr %4534, align 8, !tbaa !67
  %4536 = getelementptr inbounds <8 x double>, ptr %4535, i64 %4499
  %4537 = load <8 x double>, ptr %4536, align 64, !tbaa !26
  %4538 = getelementptr inbounds nuw i8, ptr %4485, i64 8560
  %4539 = load ptr, ptr %4538, align 16, !tbaa !46
  %4540 = getelementptr inbounds <8 x double>, ptr %4539, i64 %4499
  %4541 = load <8 x double>, ptr %4540, align 64, !tbaa !26
  %4542 = icmp eq <8 x i64> %4528, zeroinitializer
  %4543 = select <8 x i1> %4542, <8 x double> %4541, <8 x double> %4537
  store <8 x double> %4543, ptr %4540, align 64, !tbaa !26
  %4544 = load i64, ptr %4498, align 64, !tbaa !31
  %4545 = add nsw i64 %4544, 1
  %4546 = icmp slt i64 %4545, %4493
  br i1 %4546, label %4547, label %4551

4547:                                             ; preds = %4518
  %4548 = getelementptr inbounds nuw i8, ptr %4485, i64 8624
  br label %4591

4549:                                             ; preds = %4591
  %4550 = load i64, ptr %4498, align 64, !tbaa !31
  br label %4551

4551:                                             ; preds = %4549, %4518
  %4552 = phi i64 [ %4544, %4518 ], [ %4550, %4549 ]
  %4553 = phi <8 x double> [ %4537, %4518 ], [ %4596, %4549 ]
  %4554 = icmp sgt i64 %4492, %4552
  br i1 %4554, label %4562, label %4555

4555:                                             ; preds = %4551
  %4556 = getelementptr inbounds nuw i8, ptr %4485, i64 8608
  %4557 = load ptr, ptr %4556, align 32, !tbaa !72
  %4558 = getelementptr inbounds <8 x double>, ptr %4557, i64 %4493
  %4559 = load <8 x double>, ptr %4558, align 64, !tbaa !26
  %4560 = load <8 x double>, ptr %4531, align 64, !tbaa !26
  %4561 = fmul <8 x double> %4559, %4560
  br label %4570

4562:                                             ; preds = %4551
  %4563 = load <8 x double>, ptr %4531, align 64, !tbaa !26
  %4564 = getelementptr inbounds nuw i8, ptr %4485, i64 8608
  %4565 = load ptr, ptr %4564, align 32, !tbaa !72
  %4566 = getelementptr inbounds <8 x double>, ptr %4565, i64 %4493
  %4567 = load <8 x double>, ptr %4566, align 64, !tbaa !26
  %4568 = fsub <8 x double> %4497, %4563
  %4569 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4567, <8 x double> %4568, <8 x double> %4563)
  br label %4570

4570:                                             ; preds = %4562, %4555
  %4571 = phi <8 x double> [ %4561, %4555 ], [ %4569, %4562 ]
  %4572 = load ptr, ptr %4534, align 8, !tbaa !67
  %4573 = getelementptr inbounds <8 x double>, ptr %4572, i64 %4493
  %4574 = load <8 x double>, ptr %4573, align 64, !tbaa !26
  %4575 = load ptr, ptr %4538, align 16, !tbaa !46
  %4576 = getelementptr inbounds <8 x double>, ptr %4575, i64 %4493
  %4577 = fsub <8 x double> %4553, %4574
  %4578 = fsub <8 x double> %4520, %4571
  %4579 = load <8 x double>, ptr %4521, align 64, !tbaa !26
  %4580 = fsub <8 x double> %4579, %4571
  %4581 = fdiv <8 x double> %4578, %4580
  %4582 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4577, <8 x double> %4581, <8 x double> %4574)
  %4583 = load <8 x double>, ptr %4576, align 64, !tbaa !26
  %4584 = select <8 x i1> %4542, <8 x double> %4583, <8 x double> %4582
  store <8 x double> %4584, ptr %4576, align 64, !tbaa !26
  %4585 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4529)
  %4586 = icmp eq i64 %4585, 0
  br i1 %4586, label %4747, label %4587

4587:                                             ; preds = %4570
  %4588 = getelementptr inbounds nuw i8, ptr %4485, i64 8608
  %4589 = getelementptr inbounds nuw i8, ptr %4485, i64 3136
  %4590 = getelementptr inbounds nuw i8, ptr %4485, i64 832
  br label %4609

4591:                                             ; preds = %4547, %4591
  %4592 = phi i64 [ %4545, %4547 ], [ %4607, %4591 ]
  %4593 = phi <8 x double> [ %4537, %4547 ], [ %4596, %4591 ]
  %4594 = load ptr, ptr %4534, align 8, !tbaa !67
  %4595 = getelementptr inbounds <8 x double>, ptr %4594, i64 %4592
  %4596 = load <8 x double>, ptr %4595, align 64, !tbaa !26
  %4597 = load ptr, ptr %4538, align 16, !tbaa !46
  %4598 = getelementptr inbounds <8 x double>, ptr %4597, i64 %4592
  %4599 = fsub <8 x double> %4593, %4596
  %4600 = load ptr, ptr %4548, align 16, !tbaa !139
  %4601 = getelementptr inbounds <8 x double>, ptr %4600, i64 %4592
  %4602 = load <8 x double>, ptr %4601, align 64, !tbaa !26
  %4603 = fmul <8 x double> %4533, %4602
  %4604 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4599, <8 x double> %4603, <8 x double> %4596)
  %4605 = load <8 x double>, ptr %4598, align 64, !tbaa !26
  %4606 = select <8 x i1> %4542, <8 x double> %4605, <8 x double> %4604
  store <8 x double> %4606, ptr %4598, align 64, !tbaa !26
  %4607 = add nsw i64 %4592, 1
  %4608 = icmp eq i64 %4607, %4493
  br i1 %4608, label %4549, label %4591, !llvm.loop !140

4609:                                             ; preds = %4587, %4744
  %4610 = phi i64 [ 0, %4587 ], [ %4745, %4744 ]
  %4611 = getelementptr inbounds nuw i64, ptr %12, i64 %4610
  %4612 = load i64, ptr %4611, align 8, !tbaa !30
  %4613 = icmp eq i64 %4612, 0
  br i1 %4613, label %4744, label %4614

4614:                                             ; preds = %4609
  %4615 = load i64, ptr %119, align 16, !tbaa !21
  %4616 = load i64, ptr %4498, align 64, !tbaa !31
  %4617 = getelementptr inbounds nuw double, ptr %4531, i64 %4610
  %4618 = load double, ptr %4617, align 8, !tbaa !41
  %4619 = getelementptr inbounds nuw double, ptr %4521, i64 %4610
  %4620 = load double, ptr %4619, align 8, !tbaa !41
  %4621 = add nsw i64 %4615, -1
  %4622 = icmp sgt i64 %4615, %4616
  br i1 %4622, label %4623, label %4744

4623:                                             ; preds = %4614
  %4624 = getelementptr inbounds nuw double, ptr %4496, i64 %4610
  %4625 = load double, ptr %4624, align 8, !tbaa !41
  %4626 = getelementptr inbounds nuw double, ptr %4494, i64 %4610
  %4627 = load double, ptr %4626, align 8, !tbaa !41
  %4628 = load ptr, ptr %4588, align 32
  %4629 = getelementptr i8, ptr %4628, i64 64
  %4630 = getelementptr double, ptr %4629, i64 %4610
  %4631 = fsub double %4625, %4618
  %4632 = getelementptr double, ptr %4628, i64 %4610
  %4633 = fsub double %4627, %4618
  %4634 = load ptr, ptr %4534, align 8, !tbaa !67
  %4635 = getelementptr double, ptr %4634, i64 %4610
  %4636 = load ptr, ptr %4538, align 16, !tbaa !46
  %4637 = getelementptr double, ptr %4636, i64 %4610
  %4638 = getelementptr <8 x double>, ptr %4632, i64 %4621
  br label %4666

4639:                                             ; preds = %4712
  %4640 = getelementptr inbounds nuw double, ptr %4524, i64 %4610
  %4641 = load double, ptr %4640, align 8, !tbaa !41
  %4642 = fcmp ogt double %4641, 0.000000e+00
  %4643 = fcmp ogt double %4723, 0.000000e+00
  %4644 = select i1 %4642, i1 %4643, i1 false
  br i1 %4644, label %4645, label %4744

4645:                                             ; preds = %4639
  %4646 = getelementptr inbounds nuw double, ptr %4589, i64 %4610
  %4647 = getelementptr inbounds nuw double, ptr %4590, i64 %4610
  %4648 = sub i64 %4615, %4616
  %4649 = add i64 %4616, 1
  %4650 = and i64 %4648, 1
  %4651 = icmp eq i64 %4650, 0
  br i1 %4651, label %4661, label %4652

4652:                                             ; preds = %4645
  %4653 = load double, ptr %4646, align 8, !tbaa !41
  %4654 = load double, ptr %4647, align 8, !tbaa !41
  %4655 = fmul double %4723, %4654
  %4656 = fdiv double %4653, %4655
  %4657 = getelementptr <8 x double>, ptr %4637, i64 %4616
  %4658 = load double, ptr %4657, align 8, !tbaa !41
  %4659 = fmul double %4658, %4656
  store double %4659, ptr %4657, align 8, !tbaa !41
  %4660 = add nsw i64 %4616, 1
  br label %4661

4661:                                             ; preds = %4652, %4645
  %4662 = phi i64 [ %4616, %4645 ], [ %4660, %4652 ]
  %4663 = icmp eq i64 %4615, %4649
  br i1 %4663, label %4744, label %4664

4664:                                             ; preds = %4661
  %4665 = getelementptr i8, ptr %4637, i64 64
  br label %4726

4666:                                             ; preds = %4712, %4623
  %4667 = phi double [ 0.000000e+00, %4623 ], [ %4723, %4712 ]
  %4668 = phi i64 [ %4621, %4623 ], [ %4724, %4712 ]
  %4669 = icmp eq i64 %4668, %4621
  br i1 %4669, label %4670, label %4673

4670:                                             ; preds = %4666
  %4671 = load double, ptr %4638, align 8, !tbaa !41
  %4672 = tail call noundef double @llvm.fmuladd.f64(double %4671, double %4631, double %4618)
  br label %4684

4673:                                             ; preds = %4666
  %4674 = getelementptr <8 x double>, ptr %4630, i64 %4668
  %4675 = load double, ptr %4674, align 8, !tbaa !41
  %4676 = tail call noundef double @llvm.fmuladd.f64(double %4675, double %4631, double %4618)
  %4677 = getelementptr <8 x double>, ptr %4632, i64 %4668
  %4678 = load double, ptr %4677, align 8, !tbaa !41
  %4679 = tail call noundef double @llvm.fmuladd.f64(double %4678, double %4631, double %4618)
  %4680 = tail call noundef double @llvm.fmuladd.f64(double %4675, double %4633, double %4618)
  %4681 = fcmp ult double %4680, %4676
  br i1 %4681, label %4682, label %4684

4682:                                             ; preds = %4673
  %4683 = add nsw i64 %4668, 1
  br label %4684

4684:                                             ; preds = %4682, %4673, %4670
  %4685 = phi double [ %4679, %4682 ], [ %4679, %4673 ], [ %4672, %4670 ]
  %4686 = phi double [ %4676, %4682 ], [ %4676, %4673 ], [ %4620, %4670 ]
  %4687 = phi i64 [ %4683, %4682 ], [ %4668, %4673 ], [ %4621, %4670 ]
  %4688 = icmp sgt i64 %4687, %4616
  br i1 %4688, label %4689, label %4712

4689:                                             ; preds = %4684
  %4690 = load ptr, ptr %4534, align 8
  %4691 = getelementptr double, ptr %4690, i64 %4610
  br label %4692

4692:                                             ; preds = %4707, %4689
  %4693 = phi i64 [ %4687, %4689 ], [ %4710, %4707 ]
  %4694 = phi double [ 0.000000e+00, %4689 ], [ %4709, %4707 ]
  %4695 = phi double [ %4686, %4689 ], [ %4708, %4707 ]
  %4696 = getelementptr <8 x double>, ptr %4632, i64 %4693
  %4697 = load double, ptr %4696, align 8, !tbaa !41
  %4698 = tail call noundef double @llvm.fmuladd.f64(double %4697, double %4633, double %4618)
  %4699 = fcmp ogt double %4698, %4685
  br i1 %4699, label %4700, label %4712

4700:                                             ; preds = %4692
  %4701 = fcmp ogt double %4695, %4698
  br i1 %4701, label %4702, label %4707

4702:                                             ; preds = %4700
  %4703 = getelementptr <8 x double>, ptr %4691, i64 %4693
  %4704 = load double, ptr %4703, align 8, !tbaa !41
  %4705 = fsub double %4695, %4698
  %4706 = tail call double @llvm.fmuladd.f64(double %4704, double %4705, double %4694)
  br label %4707

4707:                                             ; preds = %4702, %4700
  %4708 = phi double [ %4698, %4702 ], [ %4695, %4700 ]
  %4709 = phi double [ %4706, %4702 ], [ %4694, %4700 ]
  %4710 = add nsw i64 %4693, -1
  %4711 = icmp sgt i64 %4710, %4616
  br i1 %4711, label %4692, label %4712, !llvm.loop !141

4712:                                             ; preds = %4707, %4692, %4684
  %4713 = phi double [ %4686, %4684 ], [ %4695, %4692 ], [ %4708, %4707 ]
  %4714 = phi double [ 0.000000e+00, %4684 ], [ %4694, %4692 ], [ %4709, %4707 ]
  %4715 = phi i64 [ %4687, %4684 ], [ %4693, %4692 ], [ %4616, %4707 ]
  %4716 = getelementptr <8 x double>, ptr %4635, i64 %4715
  %4717 = load double, ptr %4716, align 8, !tbaa !41
  %4718 = fsub double %4713, %4685
  %4719 = tail call double @llvm.fmuladd.f64(double %4717, double %4718, double %4714)
  %4720 = fsub double %4686, %4685
  %4721 = fdiv double %4719, %4720
  %4722 = getelementptr <8 x double>, ptr %4637, i64 %4668
  store double %4721, ptr %4722, align 8, !tbaa !41
  %4723 = fadd double %4667, %4719
  %4724 = add nsw i64 %4668, -1
  %4725 = icmp sgt i64 %4668, %4616
  br i1 %4725, label %4666, label %4639, !llvm.loop !142

4726:                                             ; preds = %4726, %4664
  %4727 = phi i64 [ %4662, %4664 ], [ %4742, %4726 ]
  %4728 = load double, ptr %4646, align 8, !tbaa !41
  %4729 = load double, ptr %4647, align 8, !tbaa !41
  %4730 = fmul double %4723, %4729
  %4731 = fdiv double %4728, %4730
  %4732 = getelementptr <8 x double>, ptr %4637, i64 %4727
  %4733 = load double, ptr %4732, align 8, !tbaa !41
  %4734 = fmul double %4733, %4731
  store double %4734, ptr %4732, align 8, !tbaa !41
  %4735 = load double, ptr %4646, align 8, !tbaa !41
  %4736 = load double, ptr %4647, align 8, !tbaa !41
  %4737 = fmul double %4723, %4736
  %4738 = fdiv double %4735, %4737
  %4739 = getelementptr <8 x double>, ptr %4665, i64 %4727
  %4740 = load double, ptr %4739, align 8, !tbaa !41
  %4741 = fmul double %4740, %4738
  store double %4741, ptr %4739, align 8, !tbaa !41
  %4742 = add nsw i64 %4727, 2
  %4743 = icmp eq i64 %4742, %4615
  br i1 %4743, label %4744, label %4726, !llvm.loop !143

4744:                                             ; preds = %4661, %4726, %4639, %4614, %4609
  %4745 = add nuw nsw i64 %4610, 1
  %4746 = icmp eq i64 %4745, 8
  br i1 %4746, label %4747, label %4609, !llvm.loop !144

4747:                                             ; preds = %4744, %4570
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  br label %4748

4748:                                             ; preds = %4482, %4747
  %4749 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %4750 = and <8 x i64> %4749, %4481
  %4751 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4750)
  %4752 = icmp eq i64 %4751, 0
  %4753 = getelementptr inbounds nuw i8, ptr %4485, i64 8520
  br i1 %4752, label %4754, label %4772

4754:                                             ; preds = %4748
  %4755 = getelementptr inbounds nuw i8, ptr %4485, i64 8528
  %4756 = getelementptr inbounds nuw i8, ptr %4485, i64 8536
  %4757 = load ptr, ptr %4756, align 8, !tbaa !35
  %4758 = load ptr, ptr %4755, align 8, !tbaa !35
  store ptr %4758, ptr %4756, align 8, !tbaa !35
  %4759 = load ptr, ptr %4753, align 8, !tbaa !35
  store ptr %4759, ptr %4755, align 8, !tbaa !35
  store ptr %4757, ptr %4753, align 8, !tbaa !35
  %4760 = getelementptr inbounds nuw i8, ptr %4485, i64 8640
  %4761 = getelementptr inbounds nuw i8, ptr %4485, i64 8648
  %4762 = getelementptr inbounds nuw i8, ptr %4485, i64 8656
  %4763 = load ptr, ptr %4762, align 8, !tbaa !35
  %4764 = load ptr, ptr %4761, align 8, !tbaa !35
  store ptr %4764, ptr %4762, align 8, !tbaa !35
  %4765 = load ptr, ptr %4760, align 8, !tbaa !35
  store ptr %4765, ptr %4761, align 8, !tbaa !35
  store ptr %4763, ptr %4760, align 8, !tbaa !35
  %4766 = getelementptr inbounds nuw i8, ptr %4485, i64 8688
  %4767 = getelementptr inbounds nuw i8, ptr %4485, i64 8696
  %4768 = getelementptr inbounds nuw i8, ptr %4485, i64 8704
  %4769 = load ptr, ptr %4768, align 8, !tbaa !35
  %4770 = load ptr, ptr %4767, align 8, !tbaa !35
  store ptr %4770, ptr %4768, align 8, !tbaa !35
  %4771 = load ptr, ptr %4766, align 8, !tbaa !35
  store ptr %4771, ptr %4767, align 8, !tbaa !35
  store ptr %4769, ptr %4766, align 8, !tbaa !35
  br label %4837

4772:                                             ; preds = %4748
  %4773 = load ptr, ptr %4753, align 8, !tbaa !57
  %4774 = getelementptr inbounds nuw i8, ptr %4485, i64 8528
  %4775 = load ptr, ptr %4774, align 16, !tbaa !45
  %4776 = getelementptr inbounds nuw i8, ptr %4485, i64 8536
  %4777 = load ptr, ptr %4776, align 8, !tbaa !56
  %4778 = load i64, ptr %119, align 16, !tbaa !21
  %4779 = icmp sgt i64 %4778, 0
  br i1 %4779, label %4780, label %4793

4780:                                             ; preds = %4772, %4780
  %4781 = phi i64 [ %4791, %4780 ], [ 0, %4772 ]
  %4782 = getelementptr inbounds nuw <8 x double>, ptr %4777, i64 %4781
  %4783 = getelementptr inbounds nuw <8 x double>, ptr %4775, i64 %4781
  %4784 = load <8 x double>, ptr %4783, align 64, !tbaa !26
  %4785 = load <8 x double>, ptr %4782, align 64, !tbaa !26
  %4786 = select <8 x i1> %4453, <8 x double> %4785, <8 x double> %4784
  store <8 x double> %4786, ptr %4782, align 64, !tbaa !26
  %4787 = getelementptr inbounds nuw <8 x double>, ptr %4773, i64 %4781
  %4788 = load <8 x double>, ptr %4787, align 64, !tbaa !26
  %4789 = load <8 x double>, ptr %4783, align 64, !tbaa !26
  %4790 = select <8 x i1> %4453, <8 x double> %4789, <8 x double> %4788
  store <8 x double> %4790, ptr %4783, align 64, !tbaa !26
  %4791 = add nuw nsw i64 %4781, 1
  %4792 = icmp eq i64 %4791, %4778
  br i1 %4792, label %4793, label %4780, !llvm.loop !145

4793:                                             ; preds = %4780, %4772
  %4794 = getelementptr inbounds nuw i8, ptr %4485, i64 8640
  %4795 = load ptr, ptr %4794, align 64, !tbaa !127
  %4796 = getelementptr inbounds nuw i8, ptr %4485, i64 8648
  %4797 = load ptr, ptr %4796, align 8, !tbaa !49
  %4798 = getelementptr inbounds nuw i8, ptr %4485, i64 8656
  %4799 = load ptr, ptr %4798, align 16, !tbaa !61
  %4800 = load i64, ptr %120, align 8, !tbaa !22
  %4801 = icmp sgt i64 %4800, 0
  br i1 %4801, label %4802, label %4837

4802:                                             ; preds = %4793, %4802
  %4803 = phi i64 [ %4813, %4802 ], [ 0, %4793 ]
  %4804 = getelementptr inbounds nuw <8 x double>, ptr %4799, i64 %4803
  %4805 = getelementptr inbounds nuw <8 x double>, ptr %4797, i64 %4803
  %4806 = load <8 x double>, ptr %4805, align 64, !tbaa !26
  %4807 = load <8 x double>, ptr %4804, align 64, !tbaa !26
  %4808 = select <8 x i1> %4453, <8 x double> %4807, <8 x double> %4806
  store <8 x double> %4808, ptr %4804, align 64, !tbaa !26
  %4809 = getelementptr inbounds nuw <8 x double>, ptr %4795, i64 %4803
  %4810 = load <8 x double>, ptr %4809, align 64, !tbaa !26
  %4811 = load <8 x double>, ptr %4805, align 64, !tbaa !26
  %4812 = select <8 x i1> %4453, <8 x double> %4811, <8 x double> %4810
  store <8 x double> %4812, ptr %4805, align 64, !tbaa !26
  %4813 = add nuw nsw i64 %4803, 1
  %4814 = icmp eq i64 %4813, %4800
  br i1 %4814, label %4815, label %4802, !llvm.loop !145

4815:                                             ; preds = %4802
  %4816 = load i64, ptr %120, align 8, !tbaa !22
  %4817 = getelementptr inbounds nuw i8, ptr %4485, i64 8688
  %4818 = load ptr, ptr %4817, align 16, !tbaa !90
  %4819 = getelementptr inbounds nuw i8, ptr %4485, i64 8696
  %4820 = load ptr, ptr %4819, align 8, !tbaa !48
  %4821 = getelementptr inbounds nuw i8, ptr %4485, i64 8704
  %4822 = load ptr, ptr %4821, align 64, !tbaa !59
  %4823 = icmp sgt i64 %4816, 0
  br i1 %4823, label %4824, label %4837

4824:                                             ; preds = %4815, %4824
  %4825 = phi i64 [ %4835, %4824 ], [ 0, %4815 ]
  %4826 = getelementptr inbounds nuw <8 x double>, ptr %4822, i64 %4825
  %4827 = getelementptr inbounds nuw <8 x double>, ptr %4820, i64 %4825
  %4828 = load <8 x double>, ptr %4827, align 64, !tbaa !26
  %4829 = load <8 x double>, ptr %4826, align 64, !tbaa !26
  %4830 = select <8 x i1> %4453, <8 x double> %4829, <8 x double> %4828
  store <8 x double> %4830, ptr %4826, align 64, !tbaa !26
  %4831 = getelementptr inbounds nuw <8 x double>, ptr %4818, i64 %4825
  %4832 = load <8 x double>, ptr %4831, align 64, !tbaa !26
  %4833 = load <8 x double>, ptr %4827, align 64, !tbaa !26
  %4834 = select <8 x i1> %4453, <8 x double> %4833, <8 x double> %4832
  store <8 x double> %4834, ptr %4827, align 64, !tbaa !26
  %4835 = add nuw nsw i64 %4825, 1
  %4836 = icmp eq i64 %4835, %4816
  br i1 %4836, label %4837, label %4824, !llvm.loop !145

4837:                                             ; preds = %4824, %4793, %4815, %4754
  %4838 = getelementptr inbounds nuw i8, ptr %4485, i64 4736
  %4839 = getelementptr inbounds nuw i8, ptr %4485, i64 3840
  %4840 = getelementptr inbounds nuw i8, ptr %4485, i64 2944
  br label %4856

4841:                                             ; preds = %4856
  %4842 = getelementptr inbounds nuw i8, ptr %4485, i64 8384
  %4843 = getelementptr inbounds nuw i8, ptr %4485, i64 6080
  %4844 = load <8 x double>, ptr %4843, align 64, !tbaa !26
  %4845 = fcmp ogt <8 x double> %4844, zeroinitializer
  %4846 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %4847 = fcmp une <8 x double> %4846, splat (double 2.000000e+00)
  %4848 = and <8 x i1> %4845, %4847
  %4849 = select <8 x i1> %4848, <8 x i64> %4393, <8 x i64> zeroinitializer
  %4850 = load <8 x i64>, ptr %4842, align 64, !tbaa !26
  %4851 = and <8 x i64> %4850, %4481
  %4852 = or <8 x i64> %4849, %4851
  store <8 x i64> %4852, ptr %4842, align 64, !tbaa !26
  %4853 = add nuw nsw i64 %4483, 1
  %4854 = load i64, ptr %156, align 8, !tbaa !20
  %4855 = icmp slt i64 %4853, %4854
  br i1 %4855, label %4482, label %4868, !llvm.loop !146

4856:                                             ; preds = %4837, %4856
  %4857 = phi i64 [ 0, %4837 ], [ %4866, %4856 ]
  %4858 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4838, i64 0, i64 %4857
  %4859 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4839, i64 0, i64 %4857
  %4860 = load <8 x double>, ptr %4859, align 64, !tbaa !26
  %4861 = load <8 x double>, ptr %4858, align 64, !tbaa !26
  %4862 = select <8 x i1> %4453, <8 x double> %4861, <8 x double> %4860
  store <8 x double> %4862, ptr %4858, align 64, !tbaa !26
  %4863 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4840, i64 0, i64 %4857
  %4864 = load <8 x double>, ptr %4863, align 64, !tbaa !26
  %4865 = select <8 x i1> %4453, <8 x double> %4860, <8 x double> %4864
  store <8 x double> %4865, ptr %4859, align 64, !tbaa !26
  %4866 = add nuw nsw i64 %4857, 1
  %4867 = icmp eq i64 %4866, 14
  br i1 %4867, label %4841, label %4856, !llvm.loop !147

4868:                                             ; preds = %4841
  %4869 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4870 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %4871 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %4872 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4873 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4874 = fdiv <8 x double> %4871, %4097
  %4875 = icmp sgt i64 %4854, 0
  br label %4876

4876:                                             ; preds = %4452, %4868
  %4877 = phi <8 x double> [ %4874, %4868 ], [ %4107, %4452 ]
  %4878 = phi i1 [ %4875, %4868 ], [ false, %4452 ]
  %4879 = phi <8 x double> [ %4873, %4868 ], [ %4086, %4452 ]
  %4880 = phi <8 x double> [ %4872, %4868 ], [ %4381, %4452 ]
  %4881 = phi <8 x double> [ %4870, %4868 ], [ %4103, %4452 ]
  %4882 = phi <8 x double> [ %4869, %4868 ], [ %4101, %4452 ]
  %4883 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4884 = fadd <8 x double> %4883, %4882
  %4885 = select <8 x i1> %4453, <8 x double> %4883, <8 x double> %4884
  store <8 x double> %4885, ptr %136, align 64, !tbaa !26
  %4886 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %4887 = select <8 x i1> %4453, <8 x double> %4886, <8 x double> %4882
  store <8 x double> %4887, ptr %151, align 64, !tbaa !26
  %4888 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %4889 = fadd <8 x double> %4888, splat (double 1.000000e+00)
  %4890 = select <8 x i1> %4453, <8 x double> %4888, <8 x double> %4889
  store <8 x double> %4890, ptr %123, align 64, !tbaa !26
  %4891 = load <8 x double>, ptr %125, align 64, !tbaa !26
  %4892 = fcmp olt <8 x double> %4891, %4882
  %4893 = select <8 x i1> %4453, <8 x i1> splat (i1 true), <8 x i1> %4892
  %4894 = select <8 x i1> %4893, <8 x double> %4891, <8 x double> %4882
  store <8 x double> %4894, ptr %125, align 64, !tbaa !26
  %4895 = fcmp une <8 x double> %4881, zeroinitializer
  %4896 = fcmp ueq <8 x double> %4096, zeroinitializer
  %4897 = or <8 x i1> %4896, %4895
  %4898 = fcmp olt <8 x double> %4877, splat (double 1.800000e+00)
  %4899 = select <8 x i1> %4898, <8 x double> %4877, <8 x double> splat (double 1.800000e+00)
  %4900 = select <8 x i1> %4897, <8 x double> splat (double 1.800000e+00), <8 x double> %4899
  %4901 = fcmp ogt <8 x double> %4900, splat (double 2.000000e-01)
  %4902 = select <8 x i1> %4901, <8 x double> %4900, <8 x double> splat (double 2.000000e-01)
  %4903 = fmul <8 x double> %4882, %4902
  %4904 = fmul <8 x double> %4882, splat (double 4.000000e+00)
  %4905 = fcmp olt <8 x double> %4880, %4904
  %4906 = select <8 x i1> %4905, <8 x double> %4880, <8 x double> %4904
  %4907 = fcmp ogt <8 x double> %4903, %4906
  %4908 = select <8 x i1> %4907, <8 x double> %4903, <8 x double> %4906
  %4909 = select <8 x i1> %4453, <8 x double> %4880, <8 x double> zeroinitializer
  store <8 x double> %4909, ptr %159, align 64, !tbaa !26
  %4910 = select <8 x i1> %4453, <8 x double> %4879, <8 x double> zeroinitializer
  store <8 x double> %4910, ptr %161, align 64, !tbaa !26
  %4911 = load <8 x i64>, ptr %152, align 64, !tbaa !26
  %4912 = and <8 x i64> %4911, %4481
  store <8 x i64> %4912, ptr %152, align 64, !tbaa !26
  %4913 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %4914 = and <8 x i64> %4913, %4481
  store <8 x i64> %4914, ptr %153, align 64, !tbaa !26
  %4915 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %4916 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %4917 = select <8 x i1> %4453, <8 x double> %4916, <8 x double> %4915
  store <8 x double> %4917, ptr %146, align 64, !tbaa !26
  br i1 %4878, label %4918, label %5383

4918:                                             ; preds = %4876, %5376
  %4919 = phi i64 [ %5378, %5376 ], [ 0, %4876 ]
  %4920 = phi <8 x double> [ %5377, %5376 ], [ %4908, %4876 ]
  %4921 = load ptr, ptr %129, align 8, !tbaa !28
  %4922 = getelementptr inbounds nuw %struct.Piece, ptr %4921, i64 %4919
  %4923 = getelementptr inbounds nuw i8, ptr %4922, i64 3904
  %4924 = load <8 x double>, ptr %4923, align 64, !tbaa !26
  %4925 = getelementptr inbounds nuw i8, ptr %4922, i64 1472
  %4926 = load <8 x double>, ptr %4925, align 64, !tbaa !26
  %4927 = fmul <8 x double> %4926, splat (double 1.001000e+00)
  %4928 = fcmp ole <8 x double> %4924, %4927
  %4929 = getelementptr inbounds nuw i8, ptr %4922, i64 1600
  %4930 = load <8 x double>, ptr %4929, align 64, !tbaa !26
  %4931 = getelementptr inbounds nuw i8, ptr %4922, i64 4160
  %4932 = load <8 x double>, ptr %4931, align 64, !tbaa !26
  %4933 = fsub <8 x double> %4930, %4932
  %4934 = fmul <8 x double> %4930, splat (double 1.000000e-04)
  %4935 = fcmp ole <8 x double> %4933, %4934
  %4936 = getelementptr inbounds nuw i8, ptr %4922, i64 8320
  %4937 = load <8 x i64>, ptr %4936, align 64, !tbaa !26
  %4938 = and <8 x i64> %4937, %4393
  %4939 = getelementptr inbounds nuw i8, ptr %4922, i64 7680
  %4940 = load <8 x double>, ptr %4939, align 64, !tbaa !26
  %4941 = fcmp oeq <8 x double> %4940, zeroinitializer
  %4942 = and <8 x i1> %4928, %4941
  %4943 = fcmp oeq <8 x double> %4940, splat (double 1.000000e+00)
  %4944 = and <8 x i1> %4935, %4943
  %4945 = or <8 x i1> %4942, %4944
  %4946 = select <8 x i1> %4945, <8 x i64> %4938, <8 x i64> zeroinitializer
  %4947 = fadd <8 x double> %4940, splat (double 1.000000e+00)
  %4948 = icmp eq <8 x i64> %4946, zeroinitializer
  %4949 = select <8 x i1> %4948, <8 x double> %4940, <8 x double> %4947
  store <8 x double> %4949, ptr %4939, align 64, !tbaa !26
  %4950 = getelementptr inbounds nuw i8, ptr %4922, i64 8384
  %4951 = load <8 x i64>, ptr %4950, align 64, !tbaa !26
  %4952 = or <8 x i64> %4946, %4951
  store <8 x i64> %4952, ptr %4950, align 64, !tbaa !26
  %4953 = getelementptr inbounds nuw i8, ptr %4922, i64 896
  %4954 = load <8 x double>, ptr %4953, align 64, !tbaa !26
  %4955 = getelementptr inbounds nuw i8, ptr %4922, i64 6016
  %4956 = load <8 x double>, ptr %4955, align 64, !tbaa !26
  %4957 = getelementptr inbounds nuw i8, ptr %4922, i64 6080
  %4958 = load <8 x double>, ptr %4957, align 64, !tbaa !26
  %4959 = fadd <8 x double> %4956, %4958
  %4960 = fcmp ogt <8 x double> %4959, zeroinitializer
  %4961 = xor <8 x i64> %4937, splat (i64 -1)
  %4962 = and <8 x i64> %4393, %4961
  %4963 = fcmp une <8 x double> %4954, zeroinitializer
  %4964 = or <8 x i1> %4963, %4960
  %4965 = getelementptr inbounds nuw i8, ptr %4922, i64 3968
  %4966 = load <8 x double>, ptr %4965, align 64, !tbaa !26
  %4967 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %4968 = fmul <8 x double> %4954, %4967
  %4969 = fcmp ogt <8 x double> %4968, splat (double 0x3E7AD7F29ABCAF48)
  %4970 = select <8 x i1> %4969, <8 x double> %4968, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4971 = fcmp ole <8 x double> %4966, %4970
  %4972 = select <8 x i1> %4971, <8 x i1> %4964, <8 x i1> zeroinitializer
  %4973 = select <8 x i1> %4972, <8 x i64> %4962, <8 x i64> zeroinitializer
  %4974 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4973)
  %4975 = icmp eq i64 %4974, 0
  br i1 %4975, label %5376, label %4976

4976:                                             ; preds = %4918
  %4977 = load i64, ptr %119, align 16, !tbaa !21
  %4978 = load i64, ptr %120, align 8, !tbaa !22
  %4979 = getelementptr inbounds nuw i8, ptr %4922, i64 3840
  %4980 = getelementptr inbounds nuw i8, ptr %4922, i64 4672
  %4981 = load <8 x double>, ptr %4980, align 64, !tbaa !26
  %4982 = getelementptr inbounds nuw i8, ptr %4922, i64 5952
  %4983 = load <8 x double>, ptr %4982, align 64, !tbaa !26
  %4984 = getelementptr inbounds nuw i8, ptr %4922, i64 832
  %4985 = load <8 x double>, ptr %4984, align 64, !tbaa !26
  %4986 = getelementptr inbounds nuw i8, ptr %4922, i64 8560
  %4987 = load ptr, ptr %4986, align 16, !tbaa !46
  %4988 = add nsw i64 %4977, -1
  %4989 = getelementptr inbounds <8 x double>, ptr %4987, i64 %4988
  %4990 = load <8 x double>, ptr %4989, align 64, !tbaa !26
  %4991 = fmul <8 x double> %4985, %4990
  %4992 = fneg <8 x double> %4966
  %4993 = fdiv <8 x double> %4992, %4991
  %4994 = fcmp ogt <8 x double> %4993, splat (double 0x3E7AD7F29ABCAF48)
  %4995 = select <8 x i1> %4994, <8 x double> %4993, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4996 = load <8 x double>, ptr %4922, align 64, !tbaa !26
  %4997 = fsub <8 x double> %4996, %4995
  %4998 = getelementptr inbounds nuw i8, ptr %4922, i64 2560
  %4999 = load <8 x double>, ptr %4998, align 64, !tbaa !26
  %5000 = getelementptr inbounds nuw i8, ptr %4922, i64 2624
  %5001 = load <8 x double>, ptr %5000, align 64, !tbaa !26
  %5002 = getelementptr inbounds nuw i8, ptr %4922, i64 2688
  %5003 = load <8 x double>, ptr %5002, align 64, !tbaa !26
  %5004 = getelementptr inbounds nuw i8, ptr %4922, i64 2752
  %5005 = load <8 x double>, ptr %5004, align 64, !tbaa !26
  %5006 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4997, <8 x double> %5005, <8 x double> %5003)
  %5007 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4997, <8 x double> %5006, <8 x double> %5001)
  %5008 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4997, <8 x double> %5007, <8 x double> %4999)
  %5009 = fsub <8 x double> %4981, %5008
  %5010 = getelementptr inbounds nuw i8, ptr %4922, i64 8528
  %5011 = load ptr, ptr %5010, align 16, !tbaa !45
  %5012 = getelementptr inbounds <8 x double>, ptr %5011, i64 %4988
  %5013 = load <8 x double>, ptr %5012, align 64, !tbaa !26
  %5014 = getelementptr inbounds nuw i8, ptr %4922, i64 8512
  %5015 = load i64, ptr %5014, align 64, !tbaa !31
  %5016 = icmp sgt i64 %4977, %5015
  br i1 %5016, label %5025, label %5017

5017:                                             ; preds = %4976
  %5018 = getelementptr inbounds nuw i8, ptr %4922, i64 640
  %5019 = load <8 x double>, ptr %5018, align 64, !tbaa !26
  %5020 = getelementptr inbounds nuw i8, ptr %4922, i64 8536
  %5021 = load ptr, ptr %5020, align 8, !tbaa !56
  %5022 = getelementptr inbounds <8 x double>, ptr %5021, i64 %4988
  %5023 = load <8 x double>, ptr %5022, align 64, !tbaa !26
  %5024 = fmul <8 x double> %5023, %5019
  br label %5045

5025:                                             ; preds = %4976
  %5026 = getelementptr inbounds nuw i8, ptr %4922, i64 384
  %5027 = load <8 x double>, ptr %5026, align 64, !tbaa !26
  %5028 = getelementptr inbounds nuw i8, ptr %4922, i64 448
  %5029 = load <8 x double>, ptr %5028, align 64, !tbaa !26
  %5030 = getelementptr inbounds nuw i8, ptr %4922, i64 512
  %5031 = load <8 x double>, ptr %5030, align 64, !tbaa !26
  %5032 = fmul <8 x double> %5013, %5031
  %5033 = fmul <8 x double> %5032, splat (double 0x3FD5555555555555)
  %5034 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5029, <8 x double> splat (double 5.000000e-01), <8 x double> %5033)
  %5035 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5013, <8 x double> %5034, <8 x double> %5027)
  %5036 = getelementptr inbounds nuw i8, ptr %4922, i64 8536
  %5037 = load ptr, ptr %5036, align 8, !tbaa !56
  %5038 = getelementptr inbounds <8 x double>, ptr %5037, i64 %4988
  %5039 = load <8 x double>, ptr %5038, align 64, !tbaa !26
  %5040 = fmul <8 x double> %5039, %5031
  %5041 = fmul <8 x double> %5040, splat (double 0x3FD5555555555555)
  %5042 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5029, <8 x double> splat (double 5.000000e-01), <8 x double> %5041)
  %5043 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5039, <8 x double> %5042, <8 x double> %5027)
  %5044 = fmul <8 x double> %5039, %5043
  br label %5045

5045:                                             ; preds = %5025, %5017
  %5046 = phi ptr [ %5037, %5025 ], [ %5021, %5017 ]
  %5047 = phi <8 x double> [ %5035, %5025 ], [ %5019, %5017 ]
  %5048 = phi <8 x double> [ %5044, %5025 ], [ %5024, %5017 ]
  %5049 = phi ptr [ %5036, %5025 ], [ %5020, %5017 ]
  %5050 = sitofp i64 %4978 to double
  %5051 = insertelement <8 x double> poison, double %5050, i64 0
  %5052 = shufflevector <8 x double> %5051, <8 x double> poison, <8 x i32> zeroinitializer
  %5053 = fmul <8 x double> %5013, %5047
  %5054 = fdiv <8 x double> %4995, %5052
  %5055 = getelementptr i8, ptr %5011, i64 -64
  %5056 = getelementptr i8, ptr %4987, i64 -64
  %5057 = icmp sgt i64 %4977, 0
  br i1 %5057, label %5058, label %5159

5058:                                             ; preds = %5045
  %5059 = fmul <8 x double> %5013, %5047
  %5060 = getelementptr inbounds nuw i8, ptr %4922, i64 640
  %5061 = getelementptr inbounds nuw i8, ptr %4922, i64 384
  %5062 = getelementptr inbounds nuw i8, ptr %4922, i64 448
  %5063 = getelementptr inbounds nuw i8, ptr %4922, i64 512
  %5064 = getelementptr inbounds nuw i8, ptr %4922, i64 1536
  %5065 = getelementptr inbounds nuw i8, ptr %4922, i64 8608
  %5066 = icmp eq <8 x i64> %4973, zeroinitializer
  br label %5067

5067:                                             ; preds = %5058, %5146
  %5068 = phi <8 x double> [ %5013, %5058 ], [ %5127, %5146 ]
  %5069 = phi <8 x double> [ %5059, %5058 ], [ %5126, %5146 ]
  %5070 = phi <8 x double> [ %5008, %5058 ], [ %5128, %5146 ]
  %5071 = phi <8 x double> [ %4990, %5058 ], [ %5129, %5146 ]
  %5072 = phi i64 [ %4988, %5058 ], [ %5152, %5146 ]
  %5073 = icmp eq i64 %5072, 0
  br i1 %5073, label %5074, label %5078

5074:                                             ; preds = %5067
  %5075 = fdiv <8 x double> zeroinitializer, %5070
  %5076 = fsub <8 x double> %5069, %5069
  %5077 = fmul <8 x double> %5075, %5076
  br label %5123

5078:                                             ; preds = %5067
  %5079 = getelementptr <8 x double>, ptr %5055, i64 %5072
  %5080 = load <8 x double>, ptr %5079, align 64, !tbaa !26
  %5081 = load i64, ptr %5014, align 64, !tbaa !31
  %5082 = icmp sgt i64 %5072, %5081
  br i1 %5082, label %5085, label %5083

5083:                                             ; preds = %5078
  %5084 = load <8 x double>, ptr %5060, align 64, !tbaa !26
  br label %5093

5085:                                             ; preds = %5078
  %5086 = load <8 x double>, ptr %5061, align 64, !tbaa !26
  %5087 = load <8 x double>, ptr %5062, align 64, !tbaa !26
  %5088 = load <8 x double>, ptr %5063, align 64, !tbaa !26
  %5089 = fmul <8 x double> %5080, %5088
  %5090 = fmul <8 x double> %5089, splat (double 0x3FD5555555555555)
  %5091 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5087, <8 x double> splat (double 5.000000e-01), <8 x double> %5090)
  %5092 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5080, <8 x double> %5091, <8 x double> %5086)
  br label %5093

5093:                                             ; preds = %5083, %5085
  %5094 = phi <8 x double> [ %5092, %5085 ], [ %5084, %5083 ]
  %5095 = fmul <8 x double> %5080, %5094
  %5096 = icmp slt i64 %5072, %5081
  br i1 %5096, label %5097, label %5104

5097:                                             ; preds = %5093
  %5098 = load ptr, ptr %5065, align 32, !tbaa !72
  %5099 = getelementptr inbounds nuw <8 x double>, ptr %5098, i64 %5072
  %5100 = load <8 x double>, ptr %5099, align 64, !tbaa !26
  %5101 = load <8 x double>, ptr %5064, align 64, !tbaa !26
  %5102 = fmul <8 x double> %5100, %5101
  %5103 = fmul <8 x double> %5100, %5101
  br label %5113

5104:                                             ; preds = %5093
  %5105 = load <8 x double>, ptr %5064, align 64, !tbaa !26
  %5106 = load ptr, ptr %5065, align 32, !tbaa !72
  %5107 = getelementptr inbounds nuw <8 x double>, ptr %5106, i64 %5072
  %5108 = load <8 x double>, ptr %5107, align 64, !tbaa !26
  %5109 = fsub <8 x double> %5008, %5105
  %5110 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5108, <8 x double> %5109, <8 x double> %5105)
  %5111 = fsub <8 x double> %4981, %5105
  %5112 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5108, <8 x double> %5111, <8 x double> %5105)
  br label %5113

5113:                                             ; preds = %5104, %5097
  %5114 = phi <8 x double> [ %5102, %5097 ], [ %5110, %5104 ]
  %5115 = phi <8 x double> [ %5103, %5097 ], [ %5112, %5104 ]
  %5116 = fsub <8 x double> %5115, %5114
  %5117 = fsub <8 x double> %5070, %5114
  %5118 = fdiv <8 x double> %5116, %5117
  %5119 = fsub <8 x double> %5095, %5069
  %5120 = fmul <8 x double> %5119, %5118
  %5121 = getelementptr <8 x double>, ptr %5056, i64 %5072
  %5122 = load <8 x double>, ptr %5121, align 64, !tbaa !26
  br label %5123

5123:                                             ; preds = %5113, %5074
  %5124 = phi <8 x double> [ %5120, %5113 ], [ %5077, %5074 ]
  %5125 = phi <8 x double> [ %5118, %5113 ], [ %5075, %5074 ]
  %5126 = phi <8 x double> [ %5095, %5113 ], [ %5069, %5074 ]
  %5127 = phi <8 x double> [ %5080, %5113 ], [ %5068, %5074 ]
  %5128 = phi <8 x double> [ %5114, %5113 ], [ zeroinitializer, %5074 ]
  %5129 = phi <8 x double> [ %5122, %5113 ], [ %5071, %5074 ]
  %5130 = getelementptr inbounds nuw <8 x double>, ptr %4987, i64 %5072
  %5131 = fsub <8 x double> %5129, %5071
  %5132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5131, <8 x double> %5125, <8 x double> %5071)
  %5133 = load <8 x double>, ptr %5130, align 64, !tbaa !26
  %5134 = select <8 x i1> %5066, <8 x double> %5133, <8 x double> %5132
  store <8 x double> %5134, ptr %5130, align 64, !tbaa !26
  %5135 = getelementptr inbounds nuw <8 x double>, ptr %5011, i64 %5072
  %5136 = load i64, ptr %5014, align 64, !tbaa !31
  %5137 = icmp slt i64 %5072, %5136
  br i1 %5137, label %5138, label %5140

5138:                                             ; preds = %5123
  %5139 = load <8 x double>, ptr %5060, align 64, !tbaa !26
  br label %5146

5140:                                             ; preds = %5123
  %5141 = load <8 x double>, ptr %5061, align 64, !tbaa !26
  %5142 = load <8 x double>, ptr %5062, align 64, !tbaa !26
  %5143 = load <8 x double>, ptr %5063, align 64, !tbaa !26
  %5144 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5068, <8 x double> %5143, <8 x double> %5142)
  %5145 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5068, <8 x double> %5144, <8 x double> %5141)
  br label %5146

5146:                                             ; preds = %5140, %5138
  %5147 = phi <8 x double> [ %5139, %5138 ], [ %5145, %5140 ]
  %5148 = fdiv <8 x double> %5124, %5147
  %5149 = fadd <8 x double> %5068, %5148
  %5150 = load <8 x double>, ptr %5135, align 64, !tbaa !26
  %5151 = select <8 x i1> %5066, <8 x double> %5150, <8 x double> %5149
  store <8 x double> %5151, ptr %5135, align 64, !tbaa !26
  %5152 = add nsw i64 %5072, -1
  %5153 = icmp sgt i64 %5072, 0
  br i1 %5153, label %5067, label %5154, !llvm.loop !148

5154:                                             ; preds = %5146
  %5155 = load ptr, ptr %5049, align 8, !tbaa !56
  %5156 = load i64, ptr %119, align 16, !tbaa !21
  %5157 = load i64, ptr %5014, align 64, !tbaa !31
  %5158 = add nsw i64 %5156, -1
  br label %5159

5159:                                             ; preds = %5154, %5045
  %5160 = phi i64 [ %5158, %5154 ], [ %4988, %5045 ]
  %5161 = phi i64 [ %5157, %5154 ], [ %5015, %5045 ]
  %5162 = phi i64 [ %5156, %5154 ], [ %4977, %5045 ]
  %5163 = phi ptr [ %5155, %5154 ], [ %5046, %5045 ]
  %5164 = getelementptr inbounds <8 x double>, ptr %5163, i64 %5160
  %5165 = load <8 x double>, ptr %5164, align 64, !tbaa !26
  %5166 = icmp sgt i64 %5162, %5161
  br i1 %5166, label %5170, label %5167

5167:                                             ; preds = %5159
  %5168 = getelementptr inbounds nuw i8, ptr %4922, i64 640
  %5169 = load <8 x double>, ptr %5168, align 64, !tbaa !26
  br label %5181

5170:                                             ; preds = %5159
  %5171 = getelementptr inbounds nuw i8, ptr %4922, i64 384
  %5172 = load <8 x double>, ptr %5171, align 64, !tbaa !26
  %5173 = getelementptr inbounds nuw i8, ptr %4922, i64 448
  %5174 = load <8 x double>, ptr %5173, align 64, !tbaa !26
  %5175 = getelementptr inbounds nuw i8, ptr %4922, i64 512
  %5176 = load <8 x double>, ptr %5175, align 64, !tbaa !26
  %5177 = fmul <8 x double> %5165, %5176
  %5178 = fmul <8 x double> %5177, splat (double 0x3FD5555555555555)
  %5179 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5174, <8 x double> splat (double 5.000000e-01), <8 x double> %5178)
  %5180 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5165, <8 x double> %5179, <8 x double> %5172)
  br label %5181

5181:                                             ; preds = %5170, %5167
  %5182 = phi <8 x double> [ %5169, %5167 ], [ %5180, %5170 ]
  %5183 = getelementptr i8, ptr %5163, i64 -64
  %5184 = icmp sgt i64 %5162, 0
  br i1 %5184, label %5185, label %5194

5185:                                             ; preds = %5181
  %5186 = fmul <8 x double> %5165, %5182
  %5187 = getelementptr inbounds nuw i8, ptr %4922, i64 640
  %5188 = getelementptr inbounds nuw i8, ptr %4922, i64 384
  %5189 = getelementptr inbounds nuw i8, ptr %4922, i64 448
  %5190 = getelementptr inbounds nuw i8, ptr %4922, i64 512
  %5191 = getelementptr inbounds nuw i8, ptr %4922, i64 1536
  %5192 = getelementptr inbounds nuw i8, ptr %4922, i64 8608
  %5193 = icmp eq <8 x i64> %4973, zeroinitializer
  br label %5202

5194:                                             ; preds = %5266, %5181
  %5195 = icmp sgt i64 %4978, 0
  br i1 %5195, label %5196, label %5274

5196:                                             ; preds = %5194
  %5197 = getelementptr inbounds nuw i8, ptr %4922, i64 8696
  %5198 = icmp eq <8 x i64> %4973, zeroinitializer
  %5199 = getelementptr inbounds nuw i8, ptr %4922, i64 8704
  %5200 = getelementptr inbounds nuw i8, ptr %4922, i64 8648
  %5201 = getelementptr inbounds nuw i8, ptr %4922, i64 8656
  br label %5345

5202:                                             ; preds = %5185, %5266
  %5203 = phi <8 x double> [ %5165, %5185 ], [ %5249, %5266 ]
  %5204 = phi <8 x double> [ %5186, %5185 ], [ %5250, %5266 ]
  %5205 = phi <8 x double> [ %5008, %5185 ], [ %5248, %5266 ]
  %5206 = phi i64 [ %5160, %5185 ], [ %5272, %5266 ]
  %5207 = icmp eq i64 %5206, 0
  %5208 = load i64, ptr %5014, align 64, !tbaa !31
  br i1 %5207, label %5247, label %5209

5209:                                             ; preds = %5202
  %5210 = getelementptr <8 x double>, ptr %5183, i64 %5206
  %5211 = load <8 x double>, ptr %5210, align 64, !tbaa !26
  %5212 = icmp sgt i64 %5206, %5208
  br i1 %5212, label %5215, label %5213

5213:                                             ; preds = %5209
  %5214 = load <8 x double>, ptr %5187, align 64, !tbaa !26
  br label %5223

5215:                                             ; preds = %5209
  %5216 = load <8 x double>, ptr %5188, align 64, !tbaa !26
  %5217 = load <8 x double>, ptr %5189, align 64, !tbaa !26
  %5218 = load <8 x double>, ptr %5190, align 64, !tbaa !26
  %5219 = fmul <8 x double> %5211, %5218
  %5220 = fmul <8 x double> %5219, splat (double 0x3FD5555555555555)
  %5221 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5217, <8 x double> splat (double 5.000000e-01), <8 x double> %5220)
  %5222 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5211, <8 x double> %5221, <8 x double> %5216)
  br label %5223

5223:                                             ; preds = %5213, %5215
  %5224 = phi <8 x double> [ %5222, %5215 ], [ %5214, %5213 ]
  %5225 = fmul <8 x double> %5211, %5224
  %5226 = icmp slt i64 %5206, %5208
  br i1 %5226, label %5227, label %5234

5227:                                             ; preds = %5223
  %5228 = load ptr, ptr %5192, align 32, !tbaa !72
  %5229 = getelementptr inbounds nuw <8 x double>, ptr %5228, i64 %5206
  %5230 = load <8 x double>, ptr %5229, align 64, !tbaa !26
  %5231 = load <8 x double>, ptr %5191, align 64, !tbaa !26
  %5232 = fmul <8 x double> %5230, %5231
  %5233 = fmul <8 x double> %5230, %5231
  br label %5243

5234:                                             ; preds = %5223
  %5235 = load <8 x double>, ptr %5191, align 64, !tbaa !26
  %5236 = load ptr, ptr %5192, align 32, !tbaa !72
  %5237 = getelementptr inbounds nuw <8 x double>, ptr %5236, i64 %5206
  %5238 = load <8 x double>, ptr %5237, align 64, !tbaa !26
  %5239 = fsub <8 x double> %5008, %5235
  %5240 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5238, <8 x double> %5239, <8 x double> %5235)
  %5241 = fsub <8 x double> %4981, %5235
  %5242 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5238, <8 x double> %5241, <8 x double> %5235)
  br label %5243

5243:                                             ; preds = %5234, %5227
  %5244 = phi <8 x double> [ %5232, %5227 ], [ %5240, %5234 ]
  %5245 = phi <8 x double> [ %5233, %5227 ], [ %5242, %5234 ]
  %5246 = fsub <8 x double> %5245, %5244
  br label %5247

5247:                                             ; preds = %5202, %5243
  %5248 = phi <8 x double> [ %5244, %5243 ], [ zeroinitializer, %5202 ]
  %5249 = phi <8 x double> [ %5211, %5243 ], [ %5203, %5202 ]
  %5250 = phi <8 x double> [ %5225, %5243 ], [ %5204, %5202 ]
  %5251 = phi <8 x double> [ %5246, %5243 ], [ zeroinitializer, %5202 ]
  %5252 = fsub <8 x double> %5205, %5248
  %5253 = fdiv <8 x double> %5251, %5252
  %5254 = fsub <8 x double> %5250, %5204
  %5255 = fmul <8 x double> %5254, %5253
  %5256 = getelementptr inbounds nuw <8 x double>, ptr %5163, i64 %5206
  %5257 = icmp slt i64 %5206, %5208
  br i1 %5257, label %5258, label %5260

5258:                                             ; preds = %5247
  %5259 = load <8 x double>, ptr %5187, align 64, !tbaa !26
  br label %5266

5260:                                             ; preds = %5247
  %5261 = load <8 x double>, ptr %5188, align 64, !tbaa !26
  %5262 = load <8 x double>, ptr %5189, align 64, !tbaa !26
  %5263 = load <8 x double>, ptr %5190, align 64, !tbaa !26
  %5264 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5203, <8 x double> %5263, <8 x double> %5262)
  %5265 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5203, <8 x double> %5264, <8 x double> %5261)
  br label %5266

5266:                                             ; preds = %5260, %5258
  %5267 = phi <8 x double> [ %5259, %5258 ], [ %5265, %5260 ]
  %5268 = fdiv <8 x double> %5255, %5267
  %5269 = fadd <8 x double> %5203, %5268
  %5270 = load <8 x double>, ptr %5256, align 64, !tbaa !26
  %5271 = select <8 x i1> %5193, <8 x double> %5270, <8 x double> %5269
  store <8 x double> %5271, ptr %5256, align 64, !tbaa !26
  %5272 = add nsw i64 %5206, -1
  %5273 = icmp sgt i64 %5206, 0
  br i1 %5273, label %5202, label %5194, !llvm.loop !148

5274:                                             ; preds = %5345, %5194
  %5275 = getelementptr inbounds nuw i8, ptr %4922, i64 8696
  %5276 = load ptr, ptr %5275, align 8, !tbaa !48
  %5277 = getelementptr inbounds <8 x double>, ptr %5276, i64 %4978
  %5278 = getelementptr inbounds nuw i8, ptr %4922, i64 1408
  %5279 = load <8 x double>, ptr %5278, align 64, !tbaa !26
  %5280 = load <8 x double>, ptr %5277, align 64, !tbaa !26
  %5281 = icmp eq <8 x i64> %4973, zeroinitializer
  %5282 = select <8 x i1> %5281, <8 x double> %5280, <8 x double> %5279
  store <8 x double> %5282, ptr %5277, align 64, !tbaa !26
  %5283 = getelementptr inbounds nuw i8, ptr %4922, i64 8704
  %5284 = load ptr, ptr %5283, align 64, !tbaa !59
  %5285 = getelementptr inbounds <8 x double>, ptr %5284, i64 %4978
  %5286 = load <8 x double>, ptr %5278, align 64, !tbaa !26
  %5287 = load <8 x double>, ptr %5285, align 64, !tbaa !26
  %5288 = select <8 x i1> %5281, <8 x double> %5287, <8 x double> %5286
  store <8 x double> %5288, ptr %5285, align 64, !tbaa !26
  %5289 = getelementptr inbounds nuw i8, ptr %4922, i64 4736
  %5290 = fneg <8 x double> %5009
  %5291 = getelementptr inbounds nuw i8, ptr %4922, i64 768
  %5292 = load <8 x double>, ptr %4979, align 64, !tbaa !26
  %5293 = select <8 x i1> %5281, <8 x double> %5292, <8 x double> %4997
  store <8 x double> %5293, ptr %4979, align 64, !tbaa !26
  %5294 = getelementptr inbounds nuw i8, ptr %4922, i64 3904
  %5295 = load <8 x double>, ptr %5294, align 64, !tbaa !26
  %5296 = select <8 x i1> %5281, <8 x double> %5295, <8 x double> %5008
  store <8 x double> %5296, ptr %5294, align 64, !tbaa !26
  %5297 = getelementptr inbounds nuw i8, ptr %4922, i64 4672
  %5298 = load <8 x double>, ptr %5297, align 64, !tbaa !26
  %5299 = select <8 x i1> %5281, <8 x double> %5298, <8 x double> %5008
  store <8 x double> %5299, ptr %5297, align 64, !tbaa !26
  %5300 = getelementptr inbounds nuw i8, ptr %4922, i64 4032
  %5301 = load <8 x double>, ptr %5300, align 64, !tbaa !26
  %5302 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5290, <8 x double> %4991, <8 x double> %5301)
  %5303 = select <8 x i1> %5281, <8 x double> %5301, <8 x double> %5302
  store <8 x double> %5303, ptr %5300, align 64, !tbaa !26
  %5304 = getelementptr inbounds nuw i8, ptr %4922, i64 3968
  %5305 = load <8 x double>, ptr %5304, align 64, !tbaa !26
  %5306 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5009, <8 x double> %4991, <8 x double> %5305)
  %5307 = select <8 x i1> %5281, <8 x double> %5305, <8 x double> %5306
  store <8 x double> %5307, ptr %5304, align 64, !tbaa !26
  %5308 = getelementptr inbounds nuw i8, ptr %4922, i64 4288
  %5309 = load <8 x double>, ptr %5308, align 64, !tbaa !26
  %5310 = load <8 x double>, ptr %5291, align 64, !tbaa !26
  %5311 = fneg <8 x double> %5310
  %5312 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5311, <8 x double> %4983, <8 x double> %5053)
  %5313 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5009, <8 x double> %5312, <8 x double> %5309)
  %5314 = select <8 x i1> %5281, <8 x double> %5309, <8 x double> %5313
  store <8 x double> %5314, ptr %5308, align 64, !tbaa !26
  %5315 = load <8 x double>, ptr %5289, align 64, !tbaa !26
  %5316 = select <8 x i1> %5281, <8 x double> %5315, <8 x double> %4997
  store <8 x double> %5316, ptr %5289, align 64, !tbaa !26
  %5317 = getelementptr inbounds nuw i8, ptr %4922, i64 4800
  %5318 = load <8 x double>, ptr %5317, align 64, !tbaa !26
  %5319 = select <8 x i1> %5281, <8 x double> %5318, <8 x double> %5008
  store <8 x double> %5319, ptr %5317, align 64, !tbaa !26
  %5320 = getelementptr inbounds nuw i8, ptr %4922, i64 5568
  %5321 = load <8 x double>, ptr %5320, align 64, !tbaa !26
  %5322 = select <8 x i1> %5281, <8 x double> %5321, <8 x double> %5008
  store <8 x double> %5322, ptr %5320, align 64, !tbaa !26
  %5323 = getelementptr inbounds nuw i8, ptr %4922, i64 4928
  %5324 = load <8 x double>, ptr %5323, align 64, !tbaa !26
  %5325 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5290, <8 x double> %4991, <8 x double> %5324)
  %5326 = select <8 x i1> %5281, <8 x double> %5324, <8 x double> %5325
  store <8 x double> %5326, ptr %5323, align 64, !tbaa !26
  %5327 = getelementptr inbounds nuw i8, ptr %4922, i64 4864
  %5328 = load <8 x double>, ptr %5327, align 64, !tbaa !26
  %5329 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5009, <8 x double> %4991, <8 x double> %5328)
  %5330 = select <8 x i1> %5281, <8 x double> %5328, <8 x double> %5329
  store <8 x double> %5330, ptr %5327, align 64, !tbaa !26
  %5331 = getelementptr inbounds nuw i8, ptr %4922, i64 5184
  %5332 = load <8 x double>, ptr %5331, align 64, !tbaa !26
  %5333 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5311, <8 x double> %4983, <8 x double> %5048)
  %5334 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5009, <8 x double> %5333, <8 x double> %5332)
  %5335 = select <8 x i1> %5281, <8 x double> %5332, <8 x double> %5334
  store <8 x double> %5335, ptr %5331, align 64, !tbaa !26
  %5336 = load <8 x i64>, ptr %4936, align 64, !tbaa !26
  %5337 = or <8 x i64> %5336, %4973
  store <8 x i64> %5337, ptr %4936, align 64, !tbaa !26
  %5338 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %5339 = fmul <8 x double> %5338, splat (double 4.000000e+01)
  %5340 = fcmp olt <8 x double> %4920, %5339
  %5341 = select <8 x i1> %5340, <8 x double> %4920, <8 x double> %5339
  %5342 = icmp ne <8 x i64> %4973, zeroinitializer
  %5343 = select <8 x i1> %4963, <8 x i1> %5342, <8 x i1> zeroinitializer
  %5344 = select <8 x i1> %5343, <8 x double> %5341, <8 x double> %4920
  br label %5376

5345:                                             ; preds = %5196, %5345
  %5346 = phi i64 [ 0, %5196 ], [ %5374, %5345 ]
  %5347 = uitofp nneg i64 %5346 to double
  %5348 = insertelement <8 x double> poison, double %5347, i64 0
  %5349 = shufflevector <8 x double> %5348, <8 x double> poison, <8 x i32> zeroinitializer
  %5350 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5349, <8 x double> %5054, <8 x double> %4997)
  %5351 = load <8 x double>, ptr %4998, align 64, !tbaa !26
  %5352 = load <8 x double>, ptr %5000, align 64, !tbaa !26
  %5353 = load <8 x double>, ptr %5002, align 64, !tbaa !26
  %5354 = load <8 x double>, ptr %5004, align 64, !tbaa !26
  %5355 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5350, <8 x double> %5354, <8 x double> %5353)
  %5356 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5350, <8 x double> %5355, <8 x double> %5352)
  %5357 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5350, <8 x double> %5356, <8 x double> %5351)
  %5358 = load ptr, ptr %5197, align 8, !tbaa !48
  %5359 = getelementptr inbounds nuw <8 x double>, ptr %5358, i64 %5346
  %5360 = load <8 x double>, ptr %5359, align 64, !tbaa !26
  %5361 = select <8 x i1> %5198, <8 x double> %5360, <8 x double> %5357
  store <8 x double> %5361, ptr %5359, align 64, !tbaa !26
  %5362 = load ptr, ptr %5199, align 64, !tbaa !59
  %5363 = getelementptr inbounds nuw <8 x double>, ptr %5362, i64 %5346
  %5364 = load <8 x double>, ptr %5363, align 64, !tbaa !26
  %5365 = select <8 x i1> %5198, <8 x double> %5364, <8 x double> %5357
  store <8 x double> %5365, ptr %5363, align 64, !tbaa !26
  %5366 = load ptr, ptr %5200, align 8, !tbaa !49
  %5367 = getelementptr inbounds nuw <8 x double>, ptr %5366, i64 %5346
  %5368 = load <8 x double>, ptr %5367, align 64, !tbaa !26
  %5369 = select <8 x i1> %5198, <8 x double> %5368, <8 x double> %4983
  store <8 x double> %5369, ptr %5367, align 64, !tbaa !26
  %5370 = load ptr, ptr %5201, align 16, !tbaa !61
  %5371 = getelementptr inbounds nuw <8 x double>, ptr %5370, i64 %5346
  %5372 = load <8 x double>, ptr %5371, align 64, !tbaa !26
  %5373 = select <8 x i1> %5198, <8 x double> %5372, <8 x double> %4983
  store <8 x double> %5373, ptr %5371, align 64, !tbaa !26
  %5374 = add nuw nsw i64 %5346, 1
  %5375 = icmp eq i64 %5374, %4978
  br i1 %5375, label %5274, label %5345, !llvm.loop !149

5376:                                             ; preds = %5274, %4918
  %5377 = phi <8 x double> [ %5344, %5274 ], [ %4920, %4918 ]
  %5378 = add nuw nsw i64 %4919, 1
  %5379 = load i64, ptr %156, align 8, !tbaa !20
  %5380 = icmp slt i64 %5378, %5379
  br i1 %5380, label %4918, label %5381, !llvm.loop !150

5381:                                             ; preds = %5376
  %5382 = load <8 x double>, ptr %136, align 64, !tbaa !26
  br label %5383

5383:                                             ; preds = %5381, %4876
  %5384 = phi <8 x double> [ %4885, %4876 ], [ %5382, %5381 ]
  %5385 = phi <8 x double> [ %4908, %4876 ], [ %5377, %5381 ]
  %5386 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %5385)
  %5387 = insertelement <8 x double> poison, double %5386, i64 0
  %5388 = shufflevector <8 x double> %5387, <8 x double> poison, <8 x i32> zeroinitializer
  %5389 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %5390 = select <8 x i1> %4453, <8 x double> %5389, <8 x double> %5388
  store <8 x double> %5390, ptr %139, align 64, !tbaa !26
  %5391 = load ptr, ptr %217, align 64, !tbaa !37
  %5392 = getelementptr inbounds nuw i8, ptr %5391, i64 64
  store <8 x double> %5384, ptr %5391, align 64, !tbaa !26
  %5393 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %5394 = getelementptr inbounds nuw i8, ptr %5391, i64 128
  store <8 x double> %5393, ptr %5392, align 64, !tbaa !26
  %5395 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %5396 = getelementptr inbounds nuw i8, ptr %5391, i64 192
  store <8 x double> %5395, ptr %5394, align 64, !tbaa !26
  %5397 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %5398 = getelementptr inbounds nuw i8, ptr %5391, i64 256
  store <8 x double> %5397, ptr %5396, align 64, !tbaa !26
  %5399 = load i64, ptr %156, align 8, !tbaa !20
  %5400 = icmp sgt i64 %5399, 0
  br i1 %5400, label %5405, label %5401

5401:                                             ; preds = %5405, %5383
  %5402 = phi ptr [ %5398, %5383 ], [ %5411, %5405 ]
  %5403 = load i64, ptr %219, align 8, !tbaa !151
  %5404 = icmp eq i64 %5403, 0
  br i1 %5404, label %5540, label %5415

5405:                                             ; preds = %5383, %5405
  %5406 = phi ptr [ %5411, %5405 ], [ %5398, %5383 ]
  %5407 = phi i64 [ %5412, %5405 ], [ 0, %5383 ]
  %5408 = load ptr, ptr %129, align 8, !tbaa !28
  %5409 = getelementptr inbounds nuw %struct.Piece, ptr %5408, i64 %5407, i32 35
  %5410 = load <8 x double>, ptr %5409, align 64, !tbaa !26
  %5411 = getelementptr inbounds nuw i8, ptr %5406, i64 64
  store <8 x double> %5410, ptr %5406, align 64, !tbaa !26
  %5412 = add nuw nsw i64 %5407, 1
  %5413 = load i64, ptr %156, align 8, !tbaa !20
  %5414 = icmp slt i64 %5412, %5413
  br i1 %5414, label %5405, label %5401, !llvm.loop !152

5415:                                             ; preds = %5401
  %5416 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %5417 = getelementptr inbounds nuw i8, ptr %5402, i64 64
  store <8 x double> %5416, ptr %5402, align 64, !tbaa !26
  %5418 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %5419 = getelementptr inbounds nuw i8, ptr %5402, i64 128
  store <8 x double> %5418, ptr %5417, align 64, !tbaa !26
  %5420 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %5421 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %5422 = fsub <8 x double> %5420, %5421
  %5423 = fcmp ogt <8 x double> %5422, zeroinitializer
  %5424 = select <8 x i1> %5423, <8 x double> %5422, <8 x double> zeroinitializer
  store <8 x double> %5424, ptr %5419, align 64, !tbaa !26
  %5425 = load i64, ptr %156, align 8, !tbaa !20
  %5426 = icmp sgt i64 %5425, 0
  br i1 %5426, label %5427, label %5540

5427:                                             ; preds = %5415
  %5428 = getelementptr inbounds nuw i8, ptr %5402, i64 192
  br label %5429

5429:                                             ; preds = %5427, %5429
  %5430 = phi ptr [ %5536, %5429 ], [ %5428, %5427 ]
  %5431 = phi i64 [ %5537, %5429 ], [ 0, %5427 ]
  %5432 = load ptr, ptr %129, align 8, !tbaa !28
  %5433 = getelementptr inbounds nuw %struct.Piece, ptr %5432, i64 %5431
  %5434 = getelementptr inbounds nuw i8, ptr %5433, i64 8528
  %5435 = load ptr, ptr %5434, align 16, !tbaa !45
  %5436 = load i64, ptr %119, align 16, !tbaa !21
  %5437 = getelementptr <8 x double>, ptr %5435, i64 %5436
  %5438 = getelementptr i8, ptr %5437, i64 -64
  %5439 = load <8 x double>, ptr %5438, align 64, !tbaa !26
  %5440 = getelementptr inbounds nuw i8, ptr %5433, i64 7232
  %5441 = load <8 x double>, ptr %5440, align 64, !tbaa !26
  %5442 = getelementptr inbounds nuw i8, ptr %5433, i64 5952
  %5443 = load <8 x double>, ptr %5442, align 64, !tbaa !26
  %5444 = fsub <8 x double> %5443, %5439
  %5445 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5441, <8 x double> %5444, <8 x double> %5439)
  %5446 = getelementptr inbounds nuw i8, ptr %5430, i64 64
  store <8 x double> %5445, ptr %5430, align 64, !tbaa !26
  %5447 = getelementptr inbounds nuw i8, ptr %5433, i64 6784
  %5448 = load <8 x double>, ptr %5447, align 64, !tbaa !26
  %5449 = getelementptr inbounds nuw i8, ptr %5430, i64 128
  store <8 x double> %5448, ptr %5446, align 64, !tbaa !26
  %5450 = load <8 x double>, ptr %5433, align 64, !tbaa !26
  %5451 = getelementptr inbounds nuw i8, ptr %5433, i64 3840
  %5452 = load <8 x double>, ptr %5451, align 64, !tbaa !26
  %5453 = fsub <8 x double> %5450, %5452
  %5454 = getelementptr inbounds nuw i8, ptr %5430, i64 192
  store <8 x double> %5453, ptr %5449, align 64, !tbaa !26
  %5455 = getelementptr inbounds nuw i8, ptr %5433, i64 4160
  %5456 = load <8 x double>, ptr %5455, align 64, !tbaa !26
  %5457 = getelementptr inbounds nuw i8, ptr %5430, i64 256
  store <8 x double> %5456, ptr %5454, align 64, !tbaa !26
  %5458 = getelementptr inbounds nuw i8, ptr %5433, i64 4096
  %5459 = load <8 x double>, ptr %5458, align 64, !tbaa !26
  %5460 = getelementptr inbounds nuw i8, ptr %5430, i64 320
  store <8 x double> %5459, ptr %5457, align 64, !tbaa !26
  %5461 = getelementptr inbounds nuw i8, ptr %5433, i64 3968
  %5462 = load <8 x double>, ptr %5461, align 64, !tbaa !26
  %5463 = getelementptr inbounds nuw i8, ptr %5430, i64 384
  store <8 x double> %5462, ptr %5460, align 64, !tbaa !26
  %5464 = getelementptr inbounds nuw i8, ptr %5433, i64 4224
  %5465 = load <8 x double>, ptr %5464, align 64, !tbaa !26
  %5466 = getelementptr inbounds nuw i8, ptr %5430, i64 448
  store <8 x double> %5465, ptr %5463, align 64, !tbaa !26
  %5467 = getelementptr inbounds nuw i8, ptr %5433, i64 8648
  %5468 = load i64, ptr %120, align 8, !tbaa !22
  %5469 = sitofp i64 %5468 to double
  %5470 = tail call double @llvm.fmuladd.f64(double %5469, double 7.500000e-01, double -5.000000e-01)
  %5471 = fcmp ogt double %5470, 0.000000e+00
  %5472 = select i1 %5471, double %5470, double 0.000000e+00
  %5473 = fptosi double %5472 to i64
  %5474 = add nsw i64 %5468, -2
  %5475 = tail call i64 @llvm.smin.i64(i64 %5474, i64 %5473)
  %5476 = sitofp i64 %5475 to double
  %5477 = fsub double %5470, %5476
  %5478 = fsub double 1.000000e+00, %5477
  %5479 = insertelement <8 x double> poison, double %5478, i64 0
  %5480 = shufflevector <8 x double> %5479, <8 x double> poison, <8 x i32> zeroinitializer
  %5481 = load ptr, ptr %5467, align 8, !tbaa !49
  %5482 = getelementptr inbounds <8 x double>, ptr %5481, i64 %5475
  %5483 = load <8 x double>, ptr %5482, align 64, !tbaa !26
  %5484 = insertelement <8 x double> poison, double %5477, i64 0
  %5485 = shufflevector <8 x double> %5484, <8 x double> poison, <8 x i32> zeroinitializer
  %5486 = getelementptr i8, ptr %5482, i64 64
  %5487 = load <8 x double>, ptr %5486, align 64, !tbaa !26
  %5488 = fmul <8 x double> %5487, %5485
  %5489 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5480, <8 x double> %5483, <8 x double> %5488)
  store <8 x double> %5489, ptr %5466, align 64, !tbaa !26
  %5490 = load i64, ptr %120, align 8, !tbaa !22
  %5491 = sitofp i64 %5490 to double
  %5492 = tail call double @llvm.fmuladd.f64(double %5491, double 5.000000e-01, double -5.000000e-01)
  %5493 = fcmp ogt double %5492, 0.000000e+00
  %5494 = select i1 %5493, double %5492, double 0.000000e+00
  %5495 = fptosi double %5494 to i64
  %5496 = add nsw i64 %5490, -2
  %5497 = tail call i64 @llvm.smin.i64(i64 %5496, i64 %5495)
  %5498 = sitofp i64 %5497 to double
  %5499 = fsub double %5492, %5498
  %5500 = fsub double 1.000000e+00, %5499
  %5501 = insertelement <8 x double> poison, double %5500, i64 0
  %5502 = shufflevector <8 x double> %5501, <8 x double> poison, <8 x i32> zeroinitializer
  %5503 = load ptr, ptr %5467, align 8, !tbaa !49
  %5504 = getelementptr inbounds <8 x double>, ptr %5503, i64 %5497
  %5505 = load <8 x double>, ptr %5504, align 64, !tbaa !26
  %5506 = insertelement <8 x double> poison, double %5499, i64 0
  %5507 = shufflevector <8 x double> %5506, <8 x double> poison, <8 x i32> zeroinitializer
  %5508 = getelementptr i8, ptr %5504, i64 64
  %5509 = load <8 x double>, ptr %5508, align 64, !tbaa !26
  %5510 = fmul <8 x double> %5509, %5507
  %5511 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5502, <8 x double> %5505, <8 x double> %5510)
  %5512 = getelementptr inbounds nuw i8, ptr %5430, i64 512
  store <8 x double> %5511, ptr %5512, align 64, !tbaa !26
  %5513 = load i64, ptr %120, align 8, !tbaa !22
  %5514 = sitofp i64 %5513 to double
  %5515 = tail call double @llvm.fmuladd.f64(double %5514, double 2.500000e-01, double -5.000000e-01)
  %5516 = fcmp ogt double %5515, 0.000000e+00
  %5517 = select i1 %5516, double %5515, double 0.000000e+00
  %5518 = fptosi double %5517 to i64
  %5519 = add nsw i64 %5513, -2
  %5520 = tail call i64 @llvm.smin.i64(i64 %5519, i64 %5518)
  %5521 = sitofp i64 %5520 to double
  %5522 = fsub double %5515, %5521
  %5523 = fsub double 1.000000e+00, %5522
  %5524 = insertelement <8 x double> poison, double %5523, i64 0
  %5525 = shufflevector <8 x double> %5524, <8 x double> poison, <8 x i32> zeroinitializer
  %5526 = load ptr, ptr %5467, align 8, !tbaa !49
  %5527 = getelementptr inbounds <8 x double>, ptr %5526, i64 %5520
  %5528 = load <8 x double>, ptr %5527, align 64, !tbaa !26
  %5529 = insertelement <8 x double> poison, double %5522, i64 0
  %5530 = shufflevector <8 x double> %5529, <8 x double> poison, <8 x i32> zeroinitializer
  %5531 = getelementptr i8, ptr %5527, i64 64
  %5532 = load <8 x double>, ptr %5531, align 64, !tbaa !26
  %5533 = fmul <8 x double> %5532, %5530
  %5534 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5525, <8 x double> %5528, <8 x double> %5533)
  %5535 = getelementptr inbounds nuw i8, ptr %5430, i64 576
  store <8 x double> %5534, ptr %5535, align 64, !tbaa !26
  %5536 = getelementptr inbounds nuw i8, ptr %5430, i64 640
  %5537 = add nuw nsw i64 %5431, 1
  %5538 = load i64, ptr %156, align 8, !tbaa !20
  %5539 = icmp slt i64 %5537, %5538
  br i1 %5539, label %5429, label %5540, !llvm.loop !153

5540:                                             ; preds = %5429, %5415, %5401
  %5541 = getelementptr inbounds nuw i8, ptr %5402, i64 192
  %5542 = extractelement <8 x i64> %4393, i64 0
  %5543 = icmp eq i64 %5542, 0
  br i1 %5543, label %5683, label %5544

5544:                                             ; preds = %5540
  %5545 = load i64, ptr %220, align 8, !tbaa !30
  %5546 = load i64, ptr %221, align 8, !tbaa !154
  %5547 = icmp eq i64 %5545, %5546
  br i1 %5547, label %5550, label %5548

5548:                                             ; preds = %5544
  %5549 = load ptr, ptr %225, align 8, !tbaa !155
  br label %5563

5550:                                             ; preds = %5544
  %5551 = load i64, ptr %121, align 8, !tbaa !30
  %5552 = load ptr, ptr %222, align 8, !tbaa !156
  %5553 = load i64, ptr %112, align 8, !tbaa !40
  %5554 = getelementptr inbounds i64, ptr %5552, i64 %5553
  store i64 %5551, ptr %5554, align 8, !tbaa !30
  %5555 = load ptr, ptr %223, align 8, !tbaa !157
  %5556 = load i64, ptr %112, align 8, !tbaa !40
  %5557 = add nsw i64 %5556, 1
  store i64 %5557, ptr %112, align 8, !tbaa !40
  %5558 = load i64, ptr %221, align 8, !tbaa !154
  %5559 = mul nsw i64 %5558, %5556
  %5560 = load i64, ptr %224, align 8, !tbaa !14
  %5561 = mul nsw i64 %5559, %5560
  %5562 = getelementptr inbounds double, ptr %5555, i64 %5561
  store ptr %5562, ptr %225, align 8, !tbaa !155
  br label %5563

5563:                                             ; preds = %5548, %5550
  %5564 = phi i64 [ %5545, %5548 ], [ 0, %5550 ]
  %5565 = phi ptr [ %5549, %5548 ], [ %5562, %5550 ]
  %5566 = add nsw i64 %5564, 1
  store i64 %5566, ptr %220, align 8, !tbaa !30
  %5567 = load i64, ptr %224, align 8, !tbaa !14
  %5568 = mul nsw i64 %5567, %5564
  %5569 = getelementptr inbounds double, ptr %5565, i64 %5568
  %5570 = load ptr, ptr %217, align 64, !tbaa !37
  %5571 = icmp ult ptr %5570, %5398
  br i1 %5571, label %5630, label %5572

5572:                                             ; preds = %5630, %5563
  %5573 = phi ptr [ %5569, %5563 ], [ %5634, %5630 ]
  %5574 = load i64, ptr %128, align 64, !tbaa !16
  %5575 = icmp sgt i64 %5574, 0
  br i1 %5575, label %5576, label %5618

5576:                                             ; preds = %5572
  %5577 = and i64 %5574, 3
  %5578 = icmp ult i64 %5574, 4
  br i1 %5578, label %5603, label %5579

5579:                                             ; preds = %5576
  %5580 = and i64 %5574, 9223372036854775804
  br label %5581

5581:                                             ; preds = %5581, %5579
  %5582 = phi i64 [ 0, %5579 ], [ %5600, %5581 ]
  %5583 = phi ptr [ %5573, %5579 ], [ %5597, %5581 ]
  %5584 = phi i64 [ 0, %5579 ], [ %5601, %5581 ]
  %5585 = getelementptr i8, ptr %5583, i64 8
  %5586 = load <8 x double>, ptr %5398, align 64, !tbaa !26
  %5587 = extractelement <8 x double> %5586, i64 %5582
  store double %5587, ptr %5583, align 8, !tbaa !41
  %5588 = or disjoint i64 %5582, 1
  %5589 = getelementptr i8, ptr %5583, i64 16
  %5590 = load <8 x double>, ptr %5398, align 64, !tbaa !26
  %5591 = extractelement <8 x double> %5590, i64 %5588
  store double %5591, ptr %5585, align 8, !tbaa !41
  %5592 = or disjoint i64 %5582, 2
  %5593 = getelementptr i8, ptr %5583, i64 24
  %5594 = load <8 x double>, ptr %5398, align 64, !tbaa !26
  %5595 = extractelement <8 x double> %5594, i64 %5592
  store double %5595, ptr %5589, align 8, !tbaa !41
  %5596 = or disjoint i64 %5582, 3
  %5597 = getelementptr i8, ptr %5583, i64 32
  %5598 = load <8 x double>, ptr %5398, align 64, !tbaa !26
  %5599 = extractelement <8 x double> %5598, i64 %5596
  store double %5599, ptr %5593, align 8, !tbaa !41
  %5600 = add nuw nsw i64 %5582, 4
  %5601 = add i64 %5584, 4
  %5602 = icmp eq i64 %5601, %5580
  br i1 %5602, label %5603, label %5581, !llvm.loop !158

5603:                                             ; preds = %5581, %5576
  %5604 = phi ptr [ poison, %5576 ], [ %5597, %5581 ]
  %5605 = phi i64 [ 0, %5576 ], [ %5600, %5581 ]
  %5606 = phi ptr [ %5573, %5576 ], [ %5597, %5581 ]
  %5607 = icmp eq i64 %5577, 0
  br i1 %5607, label %5618, label %5608

5608:                                             ; preds = %5603, %5608
  %5609 = phi i64 [ %5615, %5608 ], [ %5605, %5603 ]
  %5610 = phi ptr [ %5612, %5608 ], [ %5606, %5603 ]
  %5611 = phi i64 [ %5616, %5608 ], [ 0, %5603 ]
  %5612 = getelementptr i8, ptr %5610, i64 8
  %5613 = load <8 x double>, ptr %5398, align 64, !tbaa !26
  %5614 = extractelement <8 x double> %5613, i64 %5609
  store double %5614, ptr %5610, align 8, !tbaa !41
  %5615 = add nuw nsw i64 %5609, 1
  %5616 = add i64 %5611, 1
  %5617 = icmp eq i64 %5616, %5577
  br i1 %5617, label %5618, label %5608, !llvm.loop !159

5618:                                             ; preds = %5603, %5608, %5572
  %5619 = phi ptr [ %5573, %5572 ], [ %5604, %5603 ], [ %5612, %5608 ]
  %5620 = load i64, ptr %219, align 8, !tbaa !151
  %5621 = icmp eq i64 %5620, 0
  br i1 %5621, label %5683, label %5622

5622:                                             ; preds = %5618
  %5623 = load double, ptr %5402, align 8, !tbaa !41
  %5624 = getelementptr inbounds nuw i8, ptr %5619, i64 8
  store double %5623, ptr %5619, align 8, !tbaa !41
  %5625 = getelementptr inbounds nuw i8, ptr %5402, i64 64
  %5626 = load double, ptr %5625, align 8, !tbaa !41
  %5627 = getelementptr inbounds nuw i8, ptr %5619, i64 16
  store double %5626, ptr %5624, align 8, !tbaa !41
  %5628 = getelementptr inbounds nuw i8, ptr %5402, i64 128
  %5629 = load double, ptr %5628, align 8, !tbaa !41
  store double %5629, ptr %5627, align 8, !tbaa !41
  br i1 %5575, label %5637, label %5683

5630:                                             ; preds = %5563, %5630
  %5631 = phi ptr [ %5635, %5630 ], [ %5570, %5563 ]
  %5632 = phi ptr [ %5634, %5630 ], [ %5569, %5563 ]
  %5633 = load double, ptr %5631, align 8, !tbaa !41
  %5634 = getelementptr inbounds nuw i8, ptr %5632, i64 8
  store double %5633, ptr %5632, align 8, !tbaa !41
  %5635 = getelementptr inbounds nuw i8, ptr %5631, i64 64
  %5636 = icmp ult ptr %5635, %5398
  br i1 %5636, label %5630, label %5572, !llvm.loop !161

5637:                                             ; preds = %5622
  %5638 = getelementptr inbounds nuw i8, ptr %5619, i64 24
  %5639 = getelementptr inbounds nuw i8, ptr %5402, i64 256
  %5640 = getelementptr inbounds nuw i8, ptr %5402, i64 320
  %5641 = getelementptr inbounds nuw i8, ptr %5402, i64 384
  %5642 = getelementptr inbounds nuw i8, ptr %5402, i64 448
  %5643 = getelementptr inbounds nuw i8, ptr %5402, i64 512
  %5644 = getelementptr inbounds nuw i8, ptr %5402, i64 576
  %5645 = getelementptr inbounds nuw i8, ptr %5402, i64 640
  %5646 = getelementptr inbounds nuw i8, ptr %5402, i64 704
  %5647 = getelementptr inbounds nuw i8, ptr %5402, i64 768
  br label %5648

5648:                                             ; preds = %5637, %5648
  %5649 = phi i64 [ %5681, %5648 ], [ 0, %5637 ]
  %5650 = phi ptr [ %5680, %5648 ], [ %5638, %5637 ]
  %5651 = load <8 x double>, ptr %5541, align 64, !tbaa !26
  %5652 = extractelement <8 x double> %5651, i64 %5649
  %5653 = getelementptr inbounds nuw i8, ptr %5650, i64 8
  store double %5652, ptr %5650, align 8, !tbaa !41
  %5654 = load <8 x double>, ptr %5639, align 64, !tbaa !26
  %5655 = extractelement <8 x double> %5654, i64 %5649
  %5656 = getelementptr inbounds nuw i8, ptr %5650, i64 16
  store double %5655, ptr %5653, align 8, !tbaa !41
  %5657 = load <8 x double>, ptr %5640, align 64, !tbaa !26
  %5658 = extractelement <8 x double> %5657, i64 %5649
  %5659 = getelementptr inbounds nuw i8, ptr %5650, i64 24
  store double %5658, ptr %5656, align 8, !tbaa !41
  %5660 = load <8 x double>, ptr %5641, align 64, !tbaa !26
  %5661 = extractelement <8 x double> %5660, i64 %5649
  %5662 = getelementptr inbounds nuw i8, ptr %5650, i64 32
  store double %5661, ptr %5659, align 8, !tbaa !41
  %5663 = load <8 x double>, ptr %5642, align 64, !tbaa !26
  %5664 = extractelement <8 x double> %5663, i64 %5649
  %5665 = getelementptr inbounds nuw i8, ptr %5650, i64 40
  store double %5664, ptr %5662, align 8, !tbaa !41
  %5666 = load <8 x double>, ptr %5643, align 64, !tbaa !26
  %5667 = extractelement <8 x double> %5666, i64 %5649
  %5668 = getelementptr inbounds nuw i8, ptr %5650, i64 48
  store double %5667, ptr %5665, align 8, !tbaa !41
  %5669 = load <8 x double>, ptr %5644, align 64, !tbaa !26
  %5670 = extractelement <8 x double> %5669, i64 %5649
  %5671 = getelementptr inbounds nuw i8, ptr %5650, i64 56
  store double %5670, ptr %5668, align 8, !tbaa !41
  %5672 = load <8 x double>, ptr %5645, align 64, !tbaa !26
  %5673 = extractelement <8 x double> %5672, i64 %5649
  %5674 = getelementptr inbounds nuw i8, ptr %5650, i64 64
  store double %5673, ptr %5671, align 8, !tbaa !41
  %5675 = load <8 x double>, ptr %5646, align 64, !tbaa !26
  %5676 = extractelement <8 x double> %5675, i64 %5649
  %5677 = getelementptr inbounds nuw i8, ptr %5650, i64 72
  store double %5676, ptr %5674, align 8, !tbaa !41
  %5678 = load <8 x double>, ptr %5647, align 64, !tbaa !26
  %5679 = extractelement <8 x double> %5678, i64 %5649
  %5680 = getelementptr inbounds nuw i8, ptr %5650, i64 80
  store double %5679, ptr %5677, align 8, !tbaa !41
  %5681 = add nuw nsw i64 %5649, 1
  %5682 = icmp eq i64 %5681, %5574
  br i1 %5682, label %5683, label %5648, !llvm.loop !158

5683:                                             ; preds = %5648, %5622, %5618, %5540
  %5684 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %5685 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %5686 = fsub <8 x double> %5684, %5685
  %5687 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %5688 = fadd <8 x double> %5687, splat (double -1.000000e-09)
  %5689 = fcmp oge <8 x double> %5686, %5688
  %5690 = select <8 x i1> %5689, <8 x i64> %4393, <8 x i64> zeroinitializer
  %5691 = load i64, ptr %156, align 8, !tbaa !20
  %5692 = icmp sgt i64 %5691, 0
  br i1 %5692, label %5693, label %5725

5693:                                             ; preds = %5683
  %5694 = load ptr, ptr %129, align 8, !tbaa !28
  %5695 = and i64 %5691, 1
  %5696 = icmp eq i64 %5691, 1
  br i1 %5696, label %5715, label %5697

5697:                                             ; preds = %5693
  %5698 = and i64 %5691, 9223372036854775806
  br label %5699

5699:                                             ; preds = %5699, %5697
  %5700 = phi i64 [ 0, %5697 ], [ %5712, %5699 ]
  %5701 = phi <8 x double> [ splat (double 1.000000e+09), %5697 ], [ %5711, %5699 ]
  %5702 = phi i64 [ 0, %5697 ], [ %5713, %5699 ]
  %5703 = getelementptr inbounds nuw %struct.Piece, ptr %5694, i64 %5700, i32 35
  %5704 = load <8 x double>, ptr %5703, align 64, !tbaa !26
  %5705 = fcmp olt <8 x double> %5701, %5704
  %5706 = select <8 x i1> %5705, <8 x double> %5701, <8 x double> %5704
  %5707 = or disjoint i64 %5700, 1
  %5708 = getelementptr inbounds nuw %struct.Piece, ptr %5694, i64 %5707, i32 35
  %5709 = load <8 x double>, ptr %5708, align 64, !tbaa !26
  %5710 = fcmp olt <8 x double> %5706, %5709
  %5711 = select <8 x i1> %5710, <8 x double> %5706, <8 x double> %5709
  %5712 = add nuw nsw i64 %5700, 2
  %5713 = add i64 %5702, 2
  %5714 = icmp eq i64 %5713, %5698
  br i1 %5714, label %5715, label %5699, !llvm.loop !137

5715:                                             ; preds = %5699, %5693
  %5716 = phi <8 x double> [ poison, %5693 ], [ %5711, %5699 ]
  %5717 = phi i64 [ 0, %5693 ], [ %5712, %5699 ]
  %5718 = phi <8 x double> [ splat (double 1.000000e+09), %5693 ], [ %5711, %5699 ]
  %5719 = icmp eq i64 %5695, 0
  br i1 %5719, label %5725, label %5720

5720:                                             ; preds = %5715
  %5721 = getelementptr inbounds nuw %struct.Piece, ptr %5694, i64 %5717, i32 35
  %5722 = load <8 x double>, ptr %5721, align 64, !tbaa !26
  %5723 = fcmp olt <8 x double> %5718, %5722
  %5724 = select <8 x i1> %5723, <8 x double> %5718, <8 x double> %5722
  br label %5725

5725:                                             ; preds = %5720, %5715, %5683
  %5726 = phi <8 x double> [ splat (double 1.000000e+09), %5683 ], [ %5716, %5715 ], [ %5724, %5720 ]
  %5727 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %5726)
  %5728 = insertelement <8 x double> poison, double %5727, i64 0
  %5729 = shufflevector <8 x double> %5728, <8 x double> poison, <8 x i32> zeroinitializer
  %5730 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %5731 = select <8 x i1> %4453, <8 x double> %5730, <8 x double> %5729
  store <8 x double> %5731, ptr %213, align 64, !tbaa !26
  %5732 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %5733 = fcmp une <8 x double> %5732, zeroinitializer
  %5734 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %5735 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %5736 = fsub <8 x double> %5734, %5735
  %5737 = fcmp une <8 x double> %5732, splat (double 1.000000e+00)
  %5738 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %5739 = load <8 x double>, ptr %215, align 64, !tbaa !26
  %5740 = fsub <8 x double> %5738, %5739
  %5741 = select <8 x i1> %5737, <8 x double> splat (double -1.000000e+00), <8 x double> %5740
  %5742 = fcmp une <8 x double> %5732, splat (double 2.000000e+00)
  %5743 = fsub <8 x double> %5731, %5739
  %5744 = select <8 x i1> %5742, <8 x double> %5741, <8 x double> %5743
  %5745 = fcmp une <8 x double> %5732, splat (double 3.000000e+00)
  %5746 = fsub <8 x double> %5736, %5739
  %5747 = select <8 x i1> %5745, <8 x double> %5744, <8 x double> %5746
  %5748 = fcmp une <8 x double> %5732, splat (double 4.000000e+00)
  %5749 = fsub <8 x double> %5739, %5736
  %5750 = select <8 x i1> %5748, <8 x double> %5747, <8 x double> %5749
  %5751 = fcmp oge <8 x double> %5750, splat (double 0xBEB0C6F7A0B5ED8D)
  %5752 = select <8 x i1> %5751, <8 x i1> %5733, <8 x i1> zeroinitializer
  %5753 = select <8 x i1> %5752, <8 x i64> %4393, <8 x i64> zeroinitializer
  %5754 = xor <8 x i64> %5753, splat (i64 -1)
  %5755 = and <8 x i64> %5690, %5754
  %5756 = load <8 x double>, ptr %126, align 64, !tbaa !26
  %5757 = icmp ne <8 x i64> %5755, zeroinitializer
  %5758 = select <8 x i1> %5733, <8 x i1> %5757, <8 x i1> zeroinitializer
  %5759 = select <8 x i1> %5758, <8 x double> splat (double 2.000000e+00), <8 x double> %5756
  store <8 x double> %5759, ptr %126, align 64, !tbaa !26
  %5760 = or <8 x i64> %5753, %5690
  %5761 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %5762 = fadd <8 x double> %5761, splat (double 1.000000e+00)
  %5763 = icmp eq <8 x i64> %5760, zeroinitializer
  %5764 = select <8 x i1> %5763, <8 x double> %5761, <8 x double> %5762
  store <8 x double> %5764, ptr %218, align 64, !tbaa !26
  %5765 = xor <8 x i64> %5760, %4393
  %5766 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %5767 = fcmp oeq <8 x double> %5766, zeroinitializer
  %5768 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %5769 = fcmp oeq <8 x double> %5768, zeroinitializer
  %5770 = select <8 x i1> %5769, <8 x i1> %5767, <8 x i1> zeroinitializer
  %5771 = select <8 x i1> %5770, <8 x i64> %5765, <8 x i64> zeroinitializer
  %5772 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %5773 = fmul <8 x double> %5772, splat (double 5.000000e-01)
  %5774 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %5775 = fadd <8 x double> %5774, %5773
  %5776 = fadd <8 x double> %5775, splat (double -4.000000e-03)
  %5777 = fcmp ult <8 x double> %5738, %5776
  %5778 = fsub <8 x double> %5774, %5773
  %5779 = fadd <8 x double> %5778, splat (double 4.000000e-03)
  %5780 = fcmp ole <8 x double> %5738, %5779
  %5781 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %5782 = select <8 x i1> %5780, <8 x i64> splat (i64 -1), <8 x i64> %5781
  %5783 = select <8 x i1> %5777, <8 x i64> %5782, <8 x i64> zeroinitializer
  %5784 = xor <8 x i64> %5783, %5781
  %5785 = and <8 x i64> %5784, %5771
  %5786 = and <8 x i64> %5783, %5771
  %5787 = xor <8 x i64> %5771, splat (i64 -1)
  %5788 = and <8 x i64> %5781, %5787
  %5789 = or <8 x i64> %5786, %5788
  store <8 x i64> %5789, ptr %143, align 64, !tbaa !26
  %5790 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %5791 = or <8 x i64> %5785, %5790
  store <8 x i64> %5791, ptr %153, align 64, !tbaa !26
  %5792 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5760)
  %5793 = icmp eq i64 %5792, 0
  br i1 %5793, label %5828, label %5794

5794:                                             ; preds = %5725
  %5795 = extractelement <8 x i64> %5760, i64 0
  %5796 = icmp eq i64 %5795, 0
  br i1 %5796, label %5798, label %5797

5797:                                             ; preds = %5794
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %5798

5798:                                             ; preds = %5797, %5794
  %5799 = extractelement <8 x i64> %5760, i64 1
  %5800 = icmp eq i64 %5799, 0
  br i1 %5800, label %5802, label %5801

5801:                                             ; preds = %5798
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %5802

5802:                                             ; preds = %5801, %5798
  %5803 = extractelement <8 x i64> %5760, i64 2
  %5804 = icmp eq i64 %5803, 0
  br i1 %5804, label %5806, label %5805

5805:                                             ; preds = %5802
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %5806

5806:                                             ; preds = %5805, %5802
  %5807 = extractelement <8 x i64> %5760, i64 3
  %5808 = icmp eq i64 %5807, 0
  br i1 %5808, label %5810, label %5809

5809:                                             ; preds = %5806
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %5810

5810:                                             ; preds = %5809, %5806
  %5811 = extractelement <8 x i64> %5760, i64 4
  %5812 = icmp eq i64 %5811, 0
  br i1 %5812, label %5814, label %5813

5813:                                             ; preds = %5810
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %5814

5814:                                             ; preds = %5813, %5810
  %5815 = extractelement <8 x i64> %5760, i64 5
  %5816 = icmp eq i64 %5815, 0
  br i1 %5816, label %5818, label %5817

5817:                                             ; preds = %5814
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %5818

5818:                                             ; preds = %5817, %5814
  %5819 = extractelement <8 x i64> %5760, i64 6
  %5820 = icmp eq i64 %5819, 0
  br i1 %5820, label %5822, label %5821

5821:                                             ; preds = %5818
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %5822

5822:                                             ; preds = %5821, %5818
  %5823 = extractelement <8 x i64> %5760, i64 7
  %5824 = icmp eq i64 %5823, 0
  br i1 %5824, label %5826, label %5825

5825:                                             ; preds = %5822
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %5826

5826:                                             ; preds = %5825, %5822
  %5827 = load <8 x double>, ptr %126, align 64, !tbaa !26
  br label %5828

5828:                                             ; preds = %5826, %5725
  %5829 = phi <8 x double> [ %5827, %5826 ], [ %5759, %5725 ]
  %5830 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %5831 = load <8 x double>, ptr %226, align 64, !tbaa !26
  %5832 = fadd <8 x double> %5831, splat (double -1.000000e+00)
  %5833 = fcmp oge <8 x double> %5830, %5832
  %5834 = select <8 x i1> %5833, <8 x i64> %4393, <8 x i64> zeroinitializer
  %5835 = icmp eq <8 x i64> %5834, zeroinitializer
  %5836 = select <8 x i1> %5835, <8 x double> %5829, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %5836, ptr %126, align 64, !tbaa !26
  %5837 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5834)
  %5838 = icmp eq i64 %5837, 0
  br i1 %5838, label %516, label %5839

5839:                                             ; preds = %5828
  %5840 = extractelement <8 x i64> %5834, i64 0
  %5841 = icmp eq i64 %5840, 0
  br i1 %5841, label %5843, label %5842

5842:                                             ; preds = %5839
  store double 1.000000e+00, ptr %118, align 8, !tbaa !41
  br label %5843

5843:                                             ; preds = %5842, %5839
  %5844 = extractelement <8 x i64> %5834, i64 1
  %5845 = icmp eq i64 %5844, 0
  br i1 %5845, label %5847, label %5846

5846:                                             ; preds = %5843
  store double 1.000000e+00, ptr %270, align 8, !tbaa !41
  br label %5847

5847:                                             ; preds = %5846, %5843
  %5848 = extractelement <8 x i64> %5834, i64 2
  %5849 = icmp eq i64 %5848, 0
  br i1 %5849, label %5851, label %5850

5850:                                             ; preds = %5847
  store double 1.000000e+00, ptr %271, align 8, !tbaa !41
  br label %5851

5851:                                             ; preds = %5850, %5847
  %5852 = extractelement <8 x i64> %5834, i64 3
  %5853 = icmp eq i64 %5852, 0
  br i1 %5853, label %5855, label %5854

5854:                                             ; preds = %5851
  store double 1.000000e+00, ptr %272, align 8, !tbaa !41
  br label %5855

5855:                                             ; preds = %5854, %5851
  %5856 = extractelement <8 x i64> %5834, i64 4
  %5857 = icmp eq i64 %5856, 0
  br i1 %5857, label %5859, label %5858

5858:                                             ; preds = %5855
  store double 1.000000e+00, ptr %273, align 8, !tbaa !41
  br label %5859

5859:                                             ; preds = %5858, %5855
  %5860 = extractelement <8 x i64> %5834, i64 5
  %5861 = icmp eq i64 %5860, 0
  br i1 %5861, label %5863, label %5862

5862:                                             ; preds = %5859
  store double 1.000000e+00, ptr %274, align 8, !tbaa !41
  br label %5863

5863:                                             ; preds = %5862, %5859
  %5864 = extractelement <8 x i64> %5834, i64 6
  %5865 = icmp eq i64 %5864, 0
  br i1 %5865, label %5867, label %5866

5866:                                             ; preds = %5863
  store double 1.000000e+00, ptr %275, align 8, !tbaa !41
  br label %5867

5867:                                             ; preds = %5866, %5863
  %5868 = extractelement <8 x i64> %5834, i64 7
  %5869 = icmp eq i64 %5868, 0
  br i1 %5869, label %516, label %5870

5870:                                             ; preds = %5867
  store double 1.000000e+00, ptr %276, align 8, !tbaa !41
  br label %516

5871:                                             ; preds = %516, %521, %109
  %5872 = phi i64 [ 0, %109 ], [ 1, %521 ], [ 0, %516 ]
  ret i64 %5872
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2408
  %6 = zext nneg i32 %2 to i64
  %7 = load i64, ptr %5, align 8, !tbaa !27
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %7) #6
  %8 = getelementptr inbounds nuw i64, ptr %4, i64 %6
  store i64 -1, ptr %8, align 8, !tbaa !30
  %9 = add nuw nsw i64 %6, 1
  %10 = load i64, ptr %5, align 8, !tbaa !27
  %11 = trunc nuw nsw i64 %9 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %11, i64 noundef %10) #6
  %12 = getelementptr inbounds nuw i64, ptr %4, i64 %9
  store i64 -1, ptr %12, align 8, !tbaa !30
  %13 = add nuw nsw i64 %6, 2
  %14 = load i64, ptr %5, align 8, !tbaa !27
  %15 = trunc nuw nsw i64 %13 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %15, i64 noundef %14) #6
  %16 = getelementptr inbounds nuw i64, ptr %4, i64 %13
  store i64 -1, ptr %16, align 8, !tbaa !30
  %17 = add nuw nsw i64 %6, 3
  %18 = load i64, ptr %5, align 8, !tbaa !27
  %19 = trunc nuw nsw i64 %17 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %19, i64 noundef %18) #6
  %20 = getelementptr inbounds nuw i64, ptr %4, i64 %17
  store i64 -1, ptr %20, align 8, !tbaa !30
  %21 = add nuw nsw i64 %6, 4
  %22 = load i64, ptr %5, align 8, !tbaa !27
  %23 = trunc nuw nsw i64 %21 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %23, i64 noundef %22) #6
  %24 = getelementptr inbounds nuw i64, ptr %4, i64 %21
  store i64 -1, ptr %24, align 8, !tbaa !30
  %25 = add nuw nsw i64 %6, 5
  %26 = load i64, ptr %5, align 8, !tbaa !27
  %27 = trunc nuw nsw i64 %25 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %27, i64 noundef %26) #6
  %28 = getelementptr inbounds nuw i64, ptr %4, i64 %25
  store i64 -1, ptr %28, align 8, !tbaa !30
  %29 = add nuw nsw i64 %6, 6
  %30 = load i64, ptr %5, align 8, !tbaa !27
  %31 = trunc nuw nsw i64 %29 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %31, i64 noundef %30) #6
  %32 = getelementptr inbounds nuw i64, ptr %4, i64 %29
  store i64 -1, ptr %32, align 8, !tbaa !30
  %33 = add nuw nsw i64 %6, 7
  %34 = load i64, ptr %5, align 8, !tbaa !27
  %35 = trunc nuw nsw i64 %33 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %35, i64 noundef %34) #6
  %36 = getelementptr inbounds nuw i64, ptr %4, i64 %33
  store i64 -1, ptr %36, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #6
  %37 = add nuw nsw i32 %2, 1
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %37) #6
  %38 = add nuw nsw i32 %2, 2
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %38) #6
  %39 = add nuw nsw i32 %2, 3
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %39) #6
  %40 = add nuw nsw i32 %2, 4
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %40) #6
  %41 = add nuw nsw i32 %2, 5
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %41) #6
  %42 = add nuw nsw i32 %2, 6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %42) #6
  %43 = add nuw nsw i32 %2, 7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %43) #6
  %44 = getelementptr inbounds nuw i8, ptr %0, i64 2408
  %45 = load i64, ptr %44, align 8, !tbaa !27
  %46 = add nsw i64 %45, 1
  store i64 %46, ptr %44, align 8, !tbaa !27
  %47 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %48 = getelementptr inbounds nuw i8, ptr %0, i64 6208
  %49 = load ptr, ptr %48, align 64, !tbaa !37
  %50 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %51 = load <8 x double>, ptr %50, align 64, !tbaa !26
  %52 = getelementptr inbounds nuw i8, ptr %49, i64 64
  store <8 x double> %51, ptr %49, align 64, !tbaa !26
  %53 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %54 = load <8 x double>, ptr %53, align 64, !tbaa !26
  %55 = getelementptr inbounds nuw i8, ptr %49, i64 128
  store <8 x double> %54, ptr %52, align 64, !tbaa !26
  %56 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %57 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %58 = load <8 x double>, ptr %57, align 64, !tbaa !26
  %59 = getelementptr inbounds nuw i8, ptr %49, i64 192
  store <8 x double> %58, ptr %55, align 64, !tbaa !26
  %60 = load <8 x double>, ptr %56, align 64, !tbaa !26
  %61 = getelementptr inbounds nuw i8, ptr %49, i64 256
  store <8 x double> %60, ptr %59, align 64, !tbaa !26
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %63 = load i64, ptr %62, align 8, !tbaa !20
  %64 = icmp sgt i64 %63, 0
  br i1 %64, label %65, label %67

65:                                               ; preds = %3
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  br label %72

67:                                               ; preds = %72, %3
  %68 = phi ptr [ %61, %3 ], [ %78, %72 ]
  %69 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %70 = load i64, ptr %69, align 8, !tbaa !151
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
  br i1 %81, label %72, label %67, !llvm.loop !152

82:                                               ; preds = %67
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 3136
  %84 = load <8 x double>, ptr %83, align 64, !tbaa !26
  %85 = getelementptr inbounds nuw i8, ptr %68, i64 64
  store <8 x double> %84, ptr %68, align 64, !tbaa !26
  %86 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %87 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %88 = getelementptr inbounds nuw i8, ptr %68, i64 128
  store <8 x double> %87, ptr %85, align 64, !tbaa !26
  %89 = load <8 x double>, ptr %57, align 64, !tbaa !26
  %90 = getelementptr inbounds nuw i8, ptr %0, i64 3008
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
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  br label %102

102:                                              ; preds = %97, %102
  %103 = phi ptr [ %98, %97 ], [ %209, %102 ]
  %104 = phi i64 [ 0, %97 ], [ %210, %102 ]
  %105 = load ptr, ptr %99, align 8, !tbaa !28
  %106 = getelementptr inbounds nuw %struct.Piece, ptr %105, i64 %104
  %107 = getelementptr inbounds nuw i8, ptr %106, i64 8528
  %108 = load ptr, ptr %107, align 16, !tbaa !45
  %109 = load i64, ptr %100, align 16, !tbaa !21
  %110 = getelementptr <8 x double>, ptr %108, i64 %109
  %111 = getelementptr i8, ptr %110, i64 -64
  %112 = load <8 x double>, ptr %111, align 64, !tbaa !26
  %113 = getelementptr inbounds nuw i8, ptr %106, i64 7232
  %114 = load <8 x double>, ptr %113, align 64, !tbaa !26
  %115 = getelementptr inbounds nuw i8, ptr %106, i64 5952
  %116 = load <8 x double>, ptr %115, align 64, !tbaa !26
  %117 = fsub <8 x double> %116, %112
  %118 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %114, <8 x double> %117, <8 x double> %112)
  %119 = getelementptr inbounds nuw i8, ptr %103, i64 64
  store <8 x double> %118, ptr %103, align 64, !tbaa !26
  %120 = getelementptr inbounds nuw i8, ptr %106, i64 6784
  %121 = load <8 x double>, ptr %120, align 64, !tbaa !26
  %122 = getelementptr inbounds nuw i8, ptr %103, i64 128
  store <8 x double> %121, ptr %119, align 64, !tbaa !26
  %123 = load <8 x double>, ptr %106, align 64, !tbaa !26
  %124 = getelementptr inbounds nuw i8, ptr %106, i64 3840
  %125 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %126 = fsub <8 x double> %123, %125
  %127 = getelementptr inbounds nuw i8, ptr %103, i64 192
  store <8 x double> %126, ptr %122, align 64, !tbaa !26
  %128 = getelementptr inbounds nuw i8, ptr %106, i64 4160
  %129 = load <8 x double>, ptr %128, align 64, !tbaa !26
  %130 = getelementptr inbounds nuw i8, ptr %103, i64 256
  store <8 x double> %129, ptr %127, align 64, !tbaa !26
  %131 = getelementptr inbounds nuw i8, ptr %106, i64 4096
  %132 = load <8 x double>, ptr %131, align 64, !tbaa !26
  %133 = getelementptr inbounds nuw i8, ptr %103, i64 320
  store <8 x double> %132, ptr %130, align 64, !tbaa !26
  %134 = getelementptr inbounds nuw i8, ptr %106, i64 3968
  %135 = load <8 x double>, ptr %134, align 64, !tbaa !26
  %136 = getelementptr inbounds nuw i8, ptr %103, i64 384
  store <8 x double> %135, ptr %133, align 64, !tbaa !26
  %137 = getelementptr inbounds nuw i8, ptr %106, i64 4224
  %138 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %139 = getelementptr inbounds nuw i8, ptr %103, i64 448
  store <8 x double> %138, ptr %136, align 64, !tbaa !26
  %140 = getelementptr inbounds nuw i8, ptr %106, i64 8648
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
  %154 = load ptr, ptr %140, align 8, !tbaa !49
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
  %176 = load ptr, ptr %140, align 8, !tbaa !49
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
  %199 = load ptr, ptr %140, align 8, !tbaa !49
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
  br i1 %212, label %102, label %213, !llvm.loop !153

213:                                              ; preds = %102, %82, %67
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %215 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %217 = load ptr, ptr %216, align 8
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 6080
  %222 = load ptr, ptr %48, align 64
  %223 = icmp ult ptr %222, %61
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %225 = getelementptr inbounds nuw i8, ptr %68, i64 192
  %226 = extractelement <8 x i64> %47, i64 0
  %227 = icmp eq i64 %226, 0
  br i1 %227, label %365, label %228

228:                                              ; preds = %213
  %229 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %230 = load i64, ptr %229, align 64, !tbaa !30
  %231 = load i64, ptr %214, align 8, !tbaa !154
  %232 = icmp eq i64 %230, %231
  br i1 %232, label %235, label %233

233:                                              ; preds = %228
  %234 = load ptr, ptr %221, align 64, !tbaa !155
  br label %247

235:                                              ; preds = %228
  %236 = load i64, ptr %215, align 64, !tbaa !30
  %237 = load i64, ptr %218, align 8, !tbaa !40
  %238 = getelementptr inbounds i64, ptr %217, i64 %237
  store i64 %236, ptr %238, align 8, !tbaa !30
  %239 = load ptr, ptr %219, align 8, !tbaa !157
  %240 = load i64, ptr %218, align 8, !tbaa !40
  %241 = add nsw i64 %240, 1
  store i64 %241, ptr %218, align 8, !tbaa !40
  %242 = load i64, ptr %214, align 8, !tbaa !154
  %243 = mul nsw i64 %242, %240
  %244 = load i64, ptr %220, align 8, !tbaa !14
  %245 = mul nsw i64 %243, %244
  %246 = getelementptr inbounds double, ptr %239, i64 %245
  store ptr %246, ptr %221, align 64, !tbaa !155
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
  store double %269, ptr %265, align 8, !tbaa !41
  %270 = or disjoint i64 %264, 1
  %271 = getelementptr i8, ptr %265, i64 16
  %272 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %273 = extractelement <8 x double> %272, i64 %270
  store double %273, ptr %267, align 8, !tbaa !41
  %274 = or disjoint i64 %264, 2
  %275 = getelementptr i8, ptr %265, i64 24
  %276 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %277 = extractelement <8 x double> %276, i64 %274
  store double %277, ptr %271, align 8, !tbaa !41
  %278 = or disjoint i64 %264, 3
  %279 = getelementptr i8, ptr %265, i64 32
  %280 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %281 = extractelement <8 x double> %280, i64 %278
  store double %281, ptr %275, align 8, !tbaa !41
  %282 = add nuw nsw i64 %264, 4
  %283 = add i64 %266, 4
  %284 = icmp eq i64 %283, %262
  br i1 %284, label %285, label %263, !llvm.loop !158

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
  store double %296, ptr %292, align 8, !tbaa !41
  %297 = add nuw nsw i64 %291, 1
  %298 = add i64 %293, 1
  %299 = icmp eq i64 %298, %259
  br i1 %299, label %300, label %290, !llvm.loop !162

300:                                              ; preds = %285, %290, %254
  %301 = phi ptr [ %255, %254 ], [ %286, %285 ], [ %294, %290 ]
  %302 = load i64, ptr %69, align 8, !tbaa !151
  %303 = icmp eq i64 %302, 0
  br i1 %303, label %365, label %304

304:                                              ; preds = %300
  %305 = load double, ptr %68, align 8, !tbaa !41
  %306 = getelementptr inbounds nuw i8, ptr %301, i64 8
  store double %305, ptr %301, align 8, !tbaa !41
  %307 = getelementptr inbounds nuw i8, ptr %68, i64 64
  %308 = load double, ptr %307, align 8, !tbaa !41
  %309 = getelementptr inbounds nuw i8, ptr %301, i64 16
  store double %308, ptr %306, align 8, !tbaa !41
  %310 = getelementptr inbounds nuw i8, ptr %68, i64 128
  %311 = load double, ptr %310, align 8, !tbaa !41
  store double %311, ptr %309, align 8, !tbaa !41
  br i1 %257, label %319, label %365

312:                                              ; preds = %247, %312
  %313 = phi ptr [ %317, %312 ], [ %222, %247 ]
  %314 = phi ptr [ %316, %312 ], [ %253, %247 ]
  %315 = load double, ptr %313, align 8, !tbaa !41
  %316 = getelementptr inbounds nuw i8, ptr %314, i64 8
  store double %315, ptr %314, align 8, !tbaa !41
  %317 = getelementptr inbounds nuw i8, ptr %313, i64 64
  %318 = icmp ult ptr %317, %61
  br i1 %318, label %312, label %254, !llvm.loop !161

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
  store double %334, ptr %332, align 8, !tbaa !41
  %336 = load <8 x double>, ptr %321, align 64, !tbaa !26
  %337 = extractelement <8 x double> %336, i64 %331
  %338 = getelementptr inbounds nuw i8, ptr %332, i64 16
  store double %337, ptr %335, align 8, !tbaa !41
  %339 = load <8 x double>, ptr %322, align 64, !tbaa !26
  %340 = extractelement <8 x double> %339, i64 %331
  %341 = getelementptr inbounds nuw i8, ptr %332, i64 24
  store double %340, ptr %338, align 8, !tbaa !41
  %342 = load <8 x double>, ptr %323, align 64, !tbaa !26
  %343 = extractelement <8 x double> %342, i64 %331
  %344 = getelementptr inbounds nuw i8, ptr %332, i64 32
  store double %343, ptr %341, align 8, !tbaa !41
  %345 = load <8 x double>, ptr %324, align 64, !tbaa !26
  %346 = extractelement <8 x double> %345, i64 %331
  %347 = getelementptr inbounds nuw i8, ptr %332, i64 40
  store double %346, ptr %344, align 8, !tbaa !41
  %348 = load <8 x double>, ptr %325, align 64, !tbaa !26
  %349 = extractelement <8 x double> %348, i64 %331
  %350 = getelementptr inbounds nuw i8, ptr %332, i64 48
  store double %349, ptr %347, align 8, !tbaa !41
  %351 = load <8 x double>, ptr %326, align 64, !tbaa !26
  %352 = extractelement <8 x double> %351, i64 %331
  %353 = getelementptr inbounds nuw i8, ptr %332, i64 56
  store double %352, ptr %350, align 8, !tbaa !41
  %354 = load <8 x double>, ptr %327, align 64, !tbaa !26
  %355 = extractelement <8 x double> %354, i64 %331
  %356 = getelementptr inbounds nuw i8, ptr %332, i64 64
  store double %355, ptr %353, align 8, !tbaa !41
  %357 = load <8 x double>, ptr %328, align 64, !tbaa !26
  %358 = extractelement <8 x double> %357, i64 %331
  %359 = getelementptr inbounds nuw i8, ptr %332, i64 72
  store double %358, ptr %356, align 8, !tbaa !41
  %360 = load <8 x double>, ptr %329, align 64, !tbaa !26
  %361 = extractelement <8 x double> %360, i64 %331
  %362 = getelementptr inbounds nuw i8, ptr %332, i64 80
  store double %361, ptr %359, align 8, !tbaa !41
  %363 = add nuw nsw i64 %331, 1
  %364 = icmp eq i64 %363, %256
  br i1 %364, label %365, label %330, !llvm.loop !158

365:                                              ; preds = %330, %304, %300, %213
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #7
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 15) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !154
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %11 = getelementptr inbounds [8 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !30
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 5952
  %13 = shl nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = sext i32 %14 to i64
  %16 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !30
  %17 = sext i32 %13 to i64
  %18 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !30
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 6144
  %20 = getelementptr inbounds [8 x double], ptr %19, i64 0, i64 %6
  store double 0.000000e+00, ptr %20, align 8, !tbaa !41
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !163
  %23 = mul i64 %3, 296
  %24 = getelementptr i8, ptr %22, i64 %23
  %25 = getelementptr double, ptr %0, i64 %6
  br label %42

26:                                               ; preds = %42
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %28 = load i64, ptr %27, align 8, !tbaa !20
  %29 = icmp sgt i64 %28, 0
  br i1 %29, label %30, label %62

30:                                               ; preds = %26
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  %32 = load ptr, ptr %31, align 8, !tbaa !28
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = load ptr, ptr %36, align 8, !tbaa !164
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = load ptr, ptr %38, align 8, !tbaa !165
  %40 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %41 = load ptr, ptr %40, align 8, !tbaa !166
  br label %161

42:                                               ; preds = %48, %4
  %43 = phi i64 [ 0, %4 ], [ %61, %48 ]
  %44 = getelementptr double, ptr %24, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !41
  %46 = getelementptr <8 x double>, ptr %25, i64 %43
  store double %45, ptr %46, align 8, !tbaa !41
  %47 = icmp eq i64 %43, 36
  br i1 %47, label %26, label %48, !llvm.loop !167

48:                                               ; preds = %42
  %49 = or disjoint i64 %43, 1
  %50 = getelementptr double, ptr %24, i64 %49
  %51 = load double, ptr %50, align 8, !tbaa !41
  %52 = getelementptr <8 x double>, ptr %25, i64 %49
  store double %51, ptr %52, align 8, !tbaa !41
  %53 = or disjoint i64 %43, 2
  %54 = getelementptr double, ptr %24, i64 %53
  %55 = load double, ptr %54, align 8, !tbaa !41
  %56 = getelementptr <8 x double>, ptr %25, i64 %53
  store double %55, ptr %56, align 8, !tbaa !41
  %57 = or disjoint i64 %43, 3
  %58 = getelementptr double, ptr %24, i64 %57
  %59 = load double, ptr %58, align 8, !tbaa !41
  %60 = getelementptr <8 x double>, ptr %25, i64 %57
  store double %59, ptr %60, align 8, !tbaa !41
  %61 = add nuw nsw i64 %43, 4
  br label %42

62:                                               ; preds = %563, %26
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %67 = getelementptr inbounds double, ptr %66, i64 %6
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %69 = getelementptr inbounds double, ptr %68, i64 %6
  %70 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %71 = getelementptr inbounds double, ptr %70, i64 %6
  %72 = getelementptr double, ptr %63, i64 %6
  %73 = getelementptr i8, ptr %72, i64 256
  store double 0.000000e+00, ptr %73, align 8, !tbaa !41
  %74 = getelementptr i8, ptr %72, i64 320
  store double 0.000000e+00, ptr %74, align 8, !tbaa !41
  %75 = load double, ptr %67, align 8, !tbaa !41
  store double %75, ptr %72, align 8, !tbaa !41
  %76 = load double, ptr %69, align 8, !tbaa !41
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 2688
  %78 = getelementptr inbounds double, ptr %77, i64 %6
  store double %76, ptr %78, align 8, !tbaa !41
  %79 = load double, ptr %71, align 8, !tbaa !41
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %81 = getelementptr inbounds double, ptr %80, i64 %6
  store double %79, ptr %81, align 8, !tbaa !41
  %82 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %83 = getelementptr inbounds double, ptr %82, i64 %6
  store double %79, ptr %83, align 8, !tbaa !41
  %84 = getelementptr double, ptr %64, i64 %6
  %85 = getelementptr i8, ptr %84, i64 256
  store double 0.000000e+00, ptr %85, align 8, !tbaa !41
  %86 = getelementptr i8, ptr %84, i64 320
  store double 0.000000e+00, ptr %86, align 8, !tbaa !41
  store double %75, ptr %84, align 8, !tbaa !41
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %88 = getelementptr inbounds double, ptr %87, i64 %6
  store double %76, ptr %88, align 8, !tbaa !41
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %90 = getelementptr inbounds double, ptr %89, i64 %6
  store double %79, ptr %90, align 8, !tbaa !41
  %91 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %92 = getelementptr inbounds double, ptr %91, i64 %6
  store double %79, ptr %92, align 8, !tbaa !41
  %93 = getelementptr double, ptr %65, i64 %6
  %94 = getelementptr i8, ptr %93, i64 256
  store double 0.000000e+00, ptr %94, align 8, !tbaa !41
  %95 = getelementptr i8, ptr %93, i64 320
  store double 0.000000e+00, ptr %95, align 8, !tbaa !41
  store double %75, ptr %93, align 8, !tbaa !41
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 3456
  %97 = getelementptr inbounds double, ptr %96, i64 %6
  store double %76, ptr %97, align 8, !tbaa !41
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %99 = getelementptr inbounds double, ptr %98, i64 %6
  store double %79, ptr %99, align 8, !tbaa !41
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %101 = getelementptr inbounds double, ptr %100, i64 %6
  store double %79, ptr %101, align 8, !tbaa !41
  %102 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %103 = getelementptr inbounds double, ptr %102, i64 %6
  %104 = load double, ptr %103, align 8, !tbaa !41
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %106 = getelementptr inbounds double, ptr %105, i64 %6
  store double %104, ptr %106, align 8, !tbaa !41
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %108 = getelementptr inbounds double, ptr %107, i64 %6
  store double %104, ptr %108, align 8, !tbaa !41
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %110 = getelementptr inbounds double, ptr %109, i64 %6
  store double 1.000000e+09, ptr %110, align 8, !tbaa !41
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %112 = getelementptr inbounds double, ptr %111, i64 %6
  store double 0.000000e+00, ptr %112, align 8, !tbaa !41
  %113 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %114 = getelementptr inbounds double, ptr %113, i64 %6
  %115 = load double, ptr %114, align 8, !tbaa !41
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %117 = getelementptr inbounds double, ptr %116, i64 %6
  store double %115, ptr %117, align 8, !tbaa !41
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %119 = getelementptr inbounds double, ptr %118, i64 %6
  store double %115, ptr %119, align 8, !tbaa !41
  %120 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %121 = getelementptr inbounds double, ptr %120, i64 %6
  %122 = load double, ptr %121, align 8, !tbaa !41
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 5120
  %124 = getelementptr inbounds double, ptr %123, i64 %6
  store double %122, ptr %124, align 8, !tbaa !41
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
  %138 = getelementptr inbounds double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !41
  %139 = getelementptr inbounds double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !41
  %140 = getelementptr inbounds double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !41
  %141 = getelementptr inbounds double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !41
  %142 = getelementptr inbounds double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !41
  %143 = getelementptr inbounds double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !41
  %144 = getelementptr inbounds double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !41
  %145 = getelementptr inbounds double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !41
  %146 = getelementptr inbounds double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %146, align 8, !tbaa !41
  %147 = getelementptr inbounds double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %147, align 8, !tbaa !41
  %148 = getelementptr inbounds double, ptr %135, i64 %6
  store double 0.000000e+00, ptr %148, align 8, !tbaa !41
  %149 = getelementptr inbounds double, ptr %136, i64 %6
  store double 0.000000e+00, ptr %149, align 8, !tbaa !41
  %150 = getelementptr inbounds double, ptr %137, i64 %6
  store double 0.000000e+00, ptr %150, align 8, !tbaa !41
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %152 = getelementptr inbounds i64, ptr %151, i64 %6
  store i64 0, ptr %152, align 8, !tbaa !30
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %154 = getelementptr inbounds i64, ptr %153, i64 %6
  store i64 0, ptr %154, align 8, !tbaa !30
  %155 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %156 = getelementptr inbounds i64, ptr %155, i64 %6
  store i64 -1, ptr %156, align 8, !tbaa !30
  %157 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %158 = getelementptr inbounds i64, ptr %157, i64 %6
  store i64 -1, ptr %158, align 8, !tbaa !30
  %159 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %160 = getelementptr inbounds i64, ptr %159, i64 %6
  store i64 -1, ptr %160, align 8, !tbaa !30
  ret void

161:                                              ; preds = %30, %563
  %162 = phi i64 [ 0, %30 ], [ %564, %563 ]
  %163 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %162
  %164 = load i64, ptr %33, align 64, !tbaa !16
  %165 = icmp sgt i64 %164, %6
  %166 = load i64, ptr %34, align 16, !tbaa !21
  %167 = load i64, ptr %35, align 8, !tbaa !22
  %168 = mul nsw i64 %164, %3
  %169 = select i1 %165, i64 %6, i64 0
  %170 = add nsw i64 %169, %168
  %171 = getelementptr inbounds nuw i8, ptr %163, i64 8512
  %172 = load i64, ptr %171, align 64, !tbaa !31
  %173 = mul i64 %170, 368
  %174 = getelementptr i8, ptr %37, i64 %173
  %175 = getelementptr double, ptr %163, i64 %6
  br label %178

176:                                              ; preds = %178
  %177 = icmp eq i64 %172, 0
  br i1 %165, label %192, label %189

178:                                              ; preds = %178, %161
  %179 = phi i64 [ 0, %161 ], [ %187, %178 ]
  %180 = getelementptr double, ptr %174, i64 %179
  %181 = load double, ptr %180, align 8, !tbaa !41
  %182 = getelementptr <8 x double>, ptr %175, i64 %179
  store double %181, ptr %182, align 8, !tbaa !41
  %183 = or disjoint i64 %179, 1
  %184 = getelementptr double, ptr %174, i64 %183
  %185 = load double, ptr %184, align 8, !tbaa !41
  %186 = getelementptr <8 x double>, ptr %175, i64 %183
  store double %185, ptr %186, align 8, !tbaa !41
  %187 = add nuw nsw i64 %179, 2
  %188 = icmp eq i64 %187, 46
  br i1 %188, label %176, label %178, !llvm.loop !168

189:                                              ; preds = %176
  %190 = getelementptr inbounds nuw i8, ptr %163, i64 128
  %191 = getelementptr inbounds double, ptr %190, i64 %6
  store double 0.000000e+00, ptr %191, align 8, !tbaa !41
  br label %192

192:                                              ; preds = %189, %176
  %193 = getelementptr inbounds i64, ptr %41, i64 %170
  %194 = load i64, ptr %193, align 8, !tbaa !30
  %195 = mul nsw i64 %166, 3
  %196 = add nsw i64 %166, 1
  %197 = select i1 %177, i64 0, i64 2
  %198 = shl i64 %196, %197
  %199 = add nsw i64 %198, %195
  %200 = mul nsw i64 %194, %199
  %201 = getelementptr inbounds double, ptr %39, i64 %200
  %202 = icmp sgt i64 %166, 0
  br i1 %202, label %203, label %233

203:                                              ; preds = %192
  %204 = getelementptr inbounds nuw i8, ptr %163, i64 8608
  %205 = load ptr, ptr %204, align 32, !tbaa !72
  %206 = getelementptr double, ptr %205, i64 %6
  %207 = getelementptr double, ptr %201, i64 %166
  %208 = getelementptr inbounds nuw i8, ptr %163, i64 8616
  %209 = load ptr, ptr %208, align 8, !tbaa !47
  %210 = getelementptr double, ptr %209, i64 %6
  %211 = shl i64 %166, 4
  %212 = getelementptr i8, ptr %201, i64 %211
  %213 = getelementptr inbounds nuw i8, ptr %163, i64 8624
  %214 = load ptr, ptr %213, align 16, !tbaa !139
  %215 = getelementptr double, ptr %214, i64 %6
  %216 = and i64 %166, 1
  %217 = icmp eq i64 %166, 1
  br i1 %217, label %220, label %218

218:                                              ; preds = %203
  %219 = and i64 %166, 9223372036854775806
  br label %248

220:                                              ; preds = %248, %203
  %221 = phi i64 [ 0, %203 ], [ %270, %248 ]
  %222 = icmp eq i64 %216, 0
  br i1 %222, label %233, label %223

223:                                              ; preds = %220
  %224 = getelementptr inbounds nuw double, ptr %201, i64 %221
  %225 = load double, ptr %224, align 8, !tbaa !41
  %226 = getelementptr <8 x double>, ptr %206, i64 %221
  store double %225, ptr %226, align 8, !tbaa !41
  %227 = getelementptr double, ptr %207, i64 %221
  %228 = load double, ptr %227, align 8, !tbaa !41
  %229 = getelementptr <8 x double>, ptr %210, i64 %221
  store double %228, ptr %229, align 8, !tbaa !41
  %230 = getelementptr double, ptr %212, i64 %221
  %231 = load double, ptr %230, align 8, !tbaa !41
  %232 = getelementptr <8 x double>, ptr %215, i64 %221
  store double %231, ptr %232, align 8, !tbaa !41
  br label %233

233:                                              ; preds = %223, %220, %192
  %234 = getelementptr inbounds nuw i8, ptr %163, i64 960
  %235 = getelementptr inbounds double, ptr %234, i64 %6
  %236 = load double, ptr %235, align 8, !tbaa !41
  %237 = load double, ptr %175, align 8, !tbaa !41
  %238 = icmp sgt i64 %198, 0
  br i1 %238, label %239, label %285

239:                                              ; preds = %233
  %240 = getelementptr double, ptr %201, i64 %195
  %241 = getelementptr inbounds nuw i8, ptr %163, i64 8632
  %242 = load ptr, ptr %241, align 8, !tbaa !36
  %243 = getelementptr double, ptr %242, i64 %6
  %244 = and i64 %198, 3
  %245 = icmp ult i64 %198, 4
  br i1 %245, label %273, label %246

246:                                              ; preds = %239
  %247 = and i64 %198, 9223372036854775804
  br label %294

248:                                              ; preds = %248, %218
  %249 = phi i64 [ 0, %218 ], [ %270, %248 ]
  %250 = phi i64 [ 0, %218 ], [ %271, %248 ]
  %251 = getelementptr inbounds nuw double, ptr %201, i64 %249
  %252 = load double, ptr %251, align 8, !tbaa !41
  %253 = getelementptr <8 x double>, ptr %206, i64 %249
  store double %252, ptr %253, align 8, !tbaa !41
  %254 = getelementptr double, ptr %207, i64 %249
  %255 = load double, ptr %254, align 8, !tbaa !41
  %256 = getelementptr <8 x double>, ptr %210, i64 %249
  store double %255, ptr %256, align 8, !tbaa !41
  %257 = getelementptr double, ptr %212, i64 %249
  %258 = load double, ptr %257, align 8, !tbaa !41
  %259 = getelementptr <8 x double>, ptr %215, i64 %249
  store double %258, ptr %259, align 8, !tbaa !41
  %260 = or disjoint i64 %249, 1
  %261 = getelementptr inbounds nuw double, ptr %201, i64 %260
  %262 = load double, ptr %261, align 8, !tbaa !41
  %263 = getelementptr <8 x double>, ptr %206, i64 %260
  store double %262, ptr %263, align 8, !tbaa !41
  %264 = getelementptr double, ptr %207, i64 %260
  %265 = load double, ptr %264, align 8, !tbaa !41
  %266 = getelementptr <8 x double>, ptr %210, i64 %260
  store double %265, ptr %266, align 8, !tbaa !41
  %267 = getelementptr double, ptr %212, i64 %260
  %268 = load double, ptr %267, align 8, !tbaa !41
  %269 = getelementptr <8 x double>, ptr %215, i64 %260
  store double %268, ptr %269, align 8, !tbaa !41
  %270 = add nuw nsw i64 %249, 2
  %271 = add i64 %250, 2
  %272 = icmp eq i64 %271, %219
  br i1 %272, label %220, label %248, !llvm.loop !169

273:                                              ; preds = %294, %239
  %274 = phi i64 [ 0, %239 ], [ %312, %294 ]
  %275 = icmp eq i64 %244, 0
  br i1 %275, label %285, label %276

276:                                              ; preds = %273, %276
  %277 = phi i64 [ %282, %276 ], [ %274, %273 ]
  %278 = phi i64 [ %283, %276 ], [ 0, %273 ]
  %279 = getelementptr double, ptr %240, i64 %277
  %280 = load double, ptr %279, align 8, !tbaa !41
  %281 = getelementptr <8 x double>, ptr %243, i64 %277
  store double %280, ptr %281, align 8, !tbaa !41
  %282 = add nuw nsw i64 %277, 1
  %283 = add i64 %278, 1
  %284 = icmp eq i64 %283, %244
  br i1 %284, label %285, label %276, !llvm.loop !170

285:                                              ; preds = %273, %276, %233
  %286 = icmp ne i64 %172, 0
  %287 = icmp sgt i64 %166, -1
  %288 = select i1 %286, i1 %287, i1 false
  br i1 %288, label %289, label %315

289:                                              ; preds = %285
  %290 = fdiv double 1.000000e+00, %237
  %291 = getelementptr inbounds nuw i8, ptr %163, i64 8632
  %292 = load ptr, ptr %291, align 8, !tbaa !36
  %293 = getelementptr double, ptr %292, i64 %6
  br label %451

294:                                              ; preds = %294, %246
  %295 = phi i64 [ 0, %246 ], [ %312, %294 ]
  %296 = phi i64 [ 0, %246 ], [ %313, %294 ]
  %297 = getelementptr double, ptr %240, i64 %295
  %298 = load double, ptr %297, align 8, !tbaa !41
  %299 = getelementptr <8 x double>, ptr %243, i64 %295
  store double %298, ptr %299, align 8, !tbaa !41
  %300 = or disjoint i64 %295, 1
  %301 = getelementptr double, ptr %240, i64 %300
  %302 = load double, ptr %301, align 8, !tbaa !41
  %303 = getelementptr <8 x double>, ptr %243, i64 %300
  store double %302, ptr %303, align 8, !tbaa !41
  %304 = or disjoint i64 %295, 2
  %305 = getelementptr double, ptr %240, i64 %304
  %306 = load double, ptr %305, align 8, !tbaa !41
  %307 = getelementptr <8 x double>, ptr %243, i64 %304
  store double %306, ptr %307, align 8, !tbaa !41
  %308 = or disjoint i64 %295, 3
  %309 = getelementptr double, ptr %240, i64 %308
  %310 = load double, ptr %309, align 8, !tbaa !41
  %311 = getelementptr <8 x double>, ptr %243, i64 %308
  store double %310, ptr %311, align 8, !tbaa !41
  %312 = add nuw nsw i64 %295, 4
  %313 = add i64 %296, 4
  %314 = icmp eq i64 %313, %247
  br i1 %314, label %273, label %294, !llvm.loop !171

315:                                              ; preds = %451, %285
  %316 = getelementptr inbounds nuw i8, ptr %163, i64 2560
  %317 = getelementptr inbounds double, ptr %316, i64 %6
  %318 = load double, ptr %317, align 8, !tbaa !41
  %319 = getelementptr inbounds nuw i8, ptr %163, i64 2624
  %320 = getelementptr inbounds double, ptr %319, i64 %6
  %321 = load double, ptr %320, align 8, !tbaa !41
  %322 = getelementptr inbounds nuw i8, ptr %163, i64 2688
  %323 = getelementptr inbounds double, ptr %322, i64 %6
  %324 = load double, ptr %323, align 8, !tbaa !41
  %325 = getelementptr inbounds nuw i8, ptr %163, i64 2752
  %326 = getelementptr inbounds double, ptr %325, i64 %6
  %327 = load double, ptr %326, align 8, !tbaa !41
  %328 = tail call double @llvm.fmuladd.f64(double %237, double %327, double %324)
  %329 = tail call double @llvm.fmuladd.f64(double %237, double %328, double %321)
  %330 = tail call double @llvm.fmuladd.f64(double %237, double %329, double %318)
  %331 = getelementptr inbounds nuw i8, ptr %163, i64 832
  %332 = getelementptr inbounds double, ptr %331, i64 %6
  %333 = load double, ptr %332, align 8, !tbaa !41
  %334 = getelementptr inbounds nuw i8, ptr %163, i64 1408
  %335 = getelementptr inbounds double, ptr %334, i64 %6
  %336 = load double, ptr %335, align 8, !tbaa !41
  %337 = getelementptr inbounds nuw i8, ptr %163, i64 1536
  %338 = getelementptr inbounds double, ptr %337, i64 %6
  %339 = load double, ptr %338, align 8, !tbaa !41
  %340 = fsub double %336, %339
  %341 = fmul double %333, %340
  %342 = getelementptr inbounds nuw i8, ptr %163, i64 2944
  %343 = getelementptr inbounds nuw i8, ptr %163, i64 3840
  %344 = getelementptr inbounds nuw i8, ptr %163, i64 4736
  %345 = getelementptr inbounds nuw i8, ptr %163, i64 896
  %346 = getelementptr inbounds double, ptr %345, i64 %6
  %347 = getelementptr inbounds nuw i8, ptr %163, i64 1024
  %348 = getelementptr inbounds double, ptr %347, i64 %6
  %349 = getelementptr double, ptr %342, i64 %6
  %350 = getelementptr i8, ptr %349, i64 320
  store double 0.000000e+00, ptr %350, align 8, !tbaa !41
  %351 = getelementptr i8, ptr %349, i64 384
  store double 0.000000e+00, ptr %351, align 8, !tbaa !41
  %352 = getelementptr i8, ptr %349, i64 448
  store double 0.000000e+00, ptr %352, align 8, !tbaa !41
  %353 = getelementptr i8, ptr %349, i64 512
  store double 0.000000e+00, ptr %353, align 8, !tbaa !41
  %354 = getelementptr i8, ptr %349, i64 576
  store double 0.000000e+00, ptr %354, align 8, !tbaa !41
  %355 = getelementptr i8, ptr %349, i64 704
  store double 0.000000e+00, ptr %355, align 8, !tbaa !41
  %356 = getelementptr i8, ptr %349, i64 768
  store double 0.000000e+00, ptr %356, align 8, !tbaa !41
  store double %237, ptr %349, align 8, !tbaa !41
  %357 = getelementptr inbounds nuw i8, ptr %163, i64 3008
  %358 = getelementptr inbounds double, ptr %357, i64 %6
  store double %336, ptr %358, align 8, !tbaa !41
  %359 = load double, ptr %346, align 8, !tbaa !41
  %360 = getelementptr inbounds nuw i8, ptr %163, i64 3072
  %361 = getelementptr inbounds double, ptr %360, i64 %6
  store double %359, ptr %361, align 8, !tbaa !41
  %362 = getelementptr inbounds nuw i8, ptr %163, i64 3136
  %363 = getelementptr inbounds double, ptr %362, i64 %6
  store double %341, ptr %363, align 8, !tbaa !41
  %364 = getelementptr inbounds nuw i8, ptr %163, i64 3584
  %365 = getelementptr inbounds double, ptr %364, i64 %6
  store double %236, ptr %365, align 8, !tbaa !41
  %366 = load double, ptr %348, align 8, !tbaa !41
  %367 = getelementptr inbounds nuw i8, ptr %163, i64 3200
  %368 = getelementptr inbounds double, ptr %367, i64 %6
  store double %366, ptr %368, align 8, !tbaa !41
  %369 = getelementptr inbounds nuw i8, ptr %163, i64 3776
  %370 = getelementptr inbounds double, ptr %369, i64 %6
  store double %330, ptr %370, align 8, !tbaa !41
  %371 = getelementptr double, ptr %343, i64 %6
  %372 = getelementptr i8, ptr %371, i64 320
  store double 0.000000e+00, ptr %372, align 8, !tbaa !41
  %373 = getelementptr i8, ptr %371, i64 384
  store double 0.000000e+00, ptr %373, align 8, !tbaa !41
  %374 = getelementptr i8, ptr %371, i64 448
  store double 0.000000e+00, ptr %374, align 8, !tbaa !41
  %375 = getelementptr i8, ptr %371, i64 512
  store double 0.000000e+00, ptr %375, align 8, !tbaa !41
  %376 = getelementptr i8, ptr %371, i64 576
  store double 0.000000e+00, ptr %376, align 8, !tbaa !41
  %377 = getelementptr i8, ptr %371, i64 704
  store double 0.000000e+00, ptr %377, align 8, !tbaa !41
  %378 = getelementptr i8, ptr %371, i64 768
  store double 0.000000e+00, ptr %378, align 8, !tbaa !41
  store double %237, ptr %371, align 8, !tbaa !41
  %379 = getelementptr inbounds nuw i8, ptr %163, i64 3904
  %380 = getelementptr inbounds double, ptr %379, i64 %6
  store double %336, ptr %380, align 8, !tbaa !41
  %381 = getelementptr inbounds nuw i8, ptr %163, i64 3968
  %382 = getelementptr inbounds double, ptr %381, i64 %6
  store double %359, ptr %382, align 8, !tbaa !41
  %383 = getelementptr inbounds nuw i8, ptr %163, i64 4032
  %384 = getelementptr inbounds double, ptr %383, i64 %6
  store double %341, ptr %384, align 8, !tbaa !41
  %385 = getelementptr inbounds nuw i8, ptr %163, i64 4480
  %386 = getelementptr inbounds double, ptr %385, i64 %6
  store double %236, ptr %386, align 8, !tbaa !41
  %387 = getelementptr inbounds nuw i8, ptr %163, i64 4096
  %388 = getelementptr inbounds double, ptr %387, i64 %6
  store double %366, ptr %388, align 8, !tbaa !41
  %389 = getelementptr inbounds nuw i8, ptr %163, i64 4672
  %390 = getelementptr inbounds double, ptr %389, i64 %6
  store double %330, ptr %390, align 8, !tbaa !41
  %391 = getelementptr double, ptr %344, i64 %6
  %392 = getelementptr i8, ptr %391, i64 320
  store double 0.000000e+00, ptr %392, align 8, !tbaa !41
  %393 = getelementptr i8, ptr %391, i64 384
  store double 0.000000e+00, ptr %393, align 8, !tbaa !41
  %394 = getelementptr i8, ptr %391, i64 448
  store double 0.000000e+00, ptr %394, align 8, !tbaa !41
  %395 = getelementptr i8, ptr %391, i64 512
  store double 0.000000e+00, ptr %395, align 8, !tbaa !41
  %396 = getelementptr i8, ptr %391, i64 576
  store double 0.000000e+00, ptr %396, align 8, !tbaa !41
  %397 = getelementptr i8, ptr %391, i64 704
  store double 0.000000e+00, ptr %397, align 8, !tbaa !41
  %398 = getelementptr i8, ptr %391, i64 768
  store double 0.000000e+00, ptr %398, align 8, !tbaa !41
  store double %237, ptr %391, align 8, !tbaa !41
  %399 = load double, ptr %335, align 8, !tbaa !41
  %400 = getelementptr inbounds nuw i8, ptr %163, i64 4800
  %401 = getelementptr inbounds double, ptr %400, i64 %6
  store double %399, ptr %401, align 8, !tbaa !41
  %402 = getelementptr inbounds nuw i8, ptr %163, i64 4864
  %403 = getelementptr inbounds double, ptr %402, i64 %6
  store double %359, ptr %403, align 8, !tbaa !41
  %404 = getelementptr inbounds nuw i8, ptr %163, i64 4928
  %405 = getelementptr inbounds double, ptr %404, i64 %6
  store double %341, ptr %405, align 8, !tbaa !41
  %406 = getelementptr inbounds nuw i8, ptr %163, i64 5376
  %407 = getelementptr inbounds double, ptr %406, i64 %6
  store double %236, ptr %407, align 8, !tbaa !41
  %408 = getelementptr inbounds nuw i8, ptr %163, i64 4992
  %409 = getelementptr inbounds double, ptr %408, i64 %6
  store double %366, ptr %409, align 8, !tbaa !41
  %410 = getelementptr inbounds nuw i8, ptr %163, i64 5568
  %411 = getelementptr inbounds double, ptr %410, i64 %6
  store double %330, ptr %411, align 8, !tbaa !41
  %412 = load double, ptr %346, align 8, !tbaa !41
  %413 = fadd double %341, %412
  %414 = getelementptr inbounds nuw i8, ptr %163, i64 1600
  %415 = getelementptr inbounds double, ptr %414, i64 %6
  store double %413, ptr %415, align 8, !tbaa !41
  %416 = fcmp ogt double %412, 0.000000e+00
  %417 = fdiv double 1.000000e+00, %412
  %418 = select i1 %416, double %417, double 0.000000e+00
  %419 = getelementptr inbounds nuw i8, ptr %163, i64 7744
  %420 = getelementptr inbounds double, ptr %419, i64 %6
  store double %418, ptr %420, align 8, !tbaa !41
  %421 = getelementptr inbounds nuw i8, ptr %163, i64 704
  %422 = getelementptr inbounds double, ptr %421, i64 %6
  %423 = load double, ptr %422, align 8, !tbaa !41
  %424 = fdiv double 1.000000e+00, %423
  %425 = getelementptr inbounds nuw i8, ptr %163, i64 7808
  %426 = getelementptr inbounds double, ptr %425, i64 %6
  store double %424, ptr %426, align 8, !tbaa !41
  %427 = getelementptr inbounds nuw i8, ptr %163, i64 5952
  %428 = getelementptr inbounds nuw i8, ptr %163, i64 6784
  %429 = getelementptr inbounds nuw i8, ptr %163, i64 6848
  %430 = getelementptr inbounds nuw i8, ptr %163, i64 7616
  %431 = getelementptr inbounds double, ptr %427, i64 %6
  store double %236, ptr %431, align 8, !tbaa !41
  %432 = getelementptr inbounds double, ptr %428, i64 %6
  store double %236, ptr %432, align 8, !tbaa !41
  %433 = getelementptr inbounds double, ptr %429, i64 %6
  store double %236, ptr %433, align 8, !tbaa !41
  %434 = getelementptr inbounds double, ptr %430, i64 %6
  store double %236, ptr %434, align 8, !tbaa !41
  %435 = getelementptr inbounds nuw i8, ptr %163, i64 6016
  %436 = getelementptr inbounds nuw i8, ptr %163, i64 6080
  %437 = getelementptr inbounds nuw i8, ptr %163, i64 7680
  %438 = getelementptr inbounds nuw i8, ptr %163, i64 7552
  %439 = getelementptr inbounds nuw i8, ptr %163, i64 7232
  %440 = getelementptr inbounds double, ptr %435, i64 %6
  store double 0.000000e+00, ptr %440, align 8, !tbaa !41
  %441 = getelementptr inbounds double, ptr %436, i64 %6
  store double 0.000000e+00, ptr %441, align 8, !tbaa !41
  %442 = getelementptr inbounds double, ptr %437, i64 %6
  store double 0.000000e+00, ptr %442, align 8, !tbaa !41
  %443 = getelementptr inbounds double, ptr %438, i64 %6
  store double 0.000000e+00, ptr %443, align 8, !tbaa !41
  %444 = getelementptr inbounds double, ptr %439, i64 %6
  store double 0.000000e+00, ptr %444, align 8, !tbaa !41
  %445 = getelementptr inbounds nuw i8, ptr %163, i64 8320
  %446 = getelementptr inbounds i64, ptr %445, i64 %6
  store i64 0, ptr %446, align 8, !tbaa !30
  %447 = getelementptr inbounds nuw i8, ptr %163, i64 8384
  %448 = getelementptr inbounds i64, ptr %447, i64 %6
  store i64 -1, ptr %448, align 8, !tbaa !30
  %449 = getelementptr inbounds nuw i8, ptr %163, i64 8448
  %450 = getelementptr inbounds i64, ptr %449, i64 %6
  store i64 0, ptr %450, align 8, !tbaa !30
  br i1 %202, label %473, label %489

451:                                              ; preds = %289, %451
  %452 = phi i64 [ 0, %289 ], [ %471, %451 ]
  %453 = icmp slt i64 %452, %172
  %454 = select i1 %453, double %290, double 1.000000e+00
  %455 = shl i64 %452, 8
  %456 = getelementptr i8, ptr %293, i64 %455
  %457 = load double, ptr %456, align 8, !tbaa !41
  %458 = fmul double %454, %457
  store double %458, ptr %456, align 8, !tbaa !41
  %459 = fdiv double %454, %237
  %460 = getelementptr i8, ptr %456, i64 64
  %461 = load double, ptr %460, align 8, !tbaa !41
  %462 = fmul double %459, %461
  store double %462, ptr %460, align 8, !tbaa !41
  %463 = fdiv double %459, %237
  %464 = getelementptr i8, ptr %456, i64 128
  %465 = load double, ptr %464, align 8, !tbaa !41
  %466 = fmul double %463, %465
  store double %466, ptr %464, align 8, !tbaa !41
  %467 = fdiv double %463, %237
  %468 = getelementptr i8, ptr %456, i64 192
  %469 = load double, ptr %468, align 8, !tbaa !41
  %470 = fmul double %467, %469
  store double %470, ptr %468, align 8, !tbaa !41
  %471 = add nuw nsw i64 %452, 1
  %472 = icmp slt i64 %452, %166
  br i1 %472, label %451, label %315, !llvm.loop !172

473:                                              ; preds = %315
  %474 = getelementptr inbounds nuw i8, ptr %163, i64 8536
  %475 = load ptr, ptr %474, align 8, !tbaa !56
  %476 = getelementptr double, ptr %475, i64 %6
  %477 = getelementptr inbounds nuw i8, ptr %163, i64 8528
  %478 = load ptr, ptr %477, align 16, !tbaa !45
  %479 = getelementptr double, ptr %478, i64 %6
  %480 = getelementptr inbounds nuw i8, ptr %163, i64 8520
  %481 = load ptr, ptr %480, align 8, !tbaa !57
  %482 = getelementptr double, ptr %481, i64 %6
  %483 = getelementptr inbounds nuw i8, ptr %163, i64 8560
  %484 = load ptr, ptr %483, align 16, !tbaa !46
  %485 = getelementptr double, ptr %484, i64 %6
  %486 = getelementptr inbounds nuw i8, ptr %163, i64 8552
  %487 = load ptr, ptr %486, align 8, !tbaa !67
  %488 = getelementptr double, ptr %487, i64 %6
  br label %502

489:                                              ; preds = %502, %315
  %490 = icmp slt i64 %167, 0
  br i1 %490, label %563, label %491

491:                                              ; preds = %489
  %492 = getelementptr inbounds nuw i8, ptr %163, i64 8704
  %493 = load ptr, ptr %492, align 64, !tbaa !59
  %494 = getelementptr double, ptr %493, i64 %6
  %495 = getelementptr inbounds nuw i8, ptr %163, i64 8696
  %496 = load ptr, ptr %495, align 8, !tbaa !48
  %497 = getelementptr double, ptr %496, i64 %6
  %498 = icmp eq i64 %167, 0
  br i1 %498, label %511, label %499

499:                                              ; preds = %491
  %500 = add nuw i64 %167, 1
  %501 = and i64 %500, -2
  br label %536

502:                                              ; preds = %473, %502
  %503 = phi i64 [ 0, %473 ], [ %509, %502 ]
  %504 = getelementptr <8 x double>, ptr %476, i64 %503
  store double %236, ptr %504, align 8, !tbaa !41
  %505 = getelementptr <8 x double>, ptr %479, i64 %503
  store double %236, ptr %505, align 8, !tbaa !41
  %506 = getelementptr <8 x double>, ptr %482, i64 %503
  store double %236, ptr %506, align 8, !tbaa !41
  %507 = getelementptr <8 x double>, ptr %485, i64 %503
  store double 1.000000e+00, ptr %507, align 8, !tbaa !41
  %508 = getelementptr <8 x double>, ptr %488, i64 %503
  store double 1.000000e+00, ptr %508, align 8, !tbaa !41
  %509 = add nuw nsw i64 %503, 1
  %510 = icmp eq i64 %509, %166
  br i1 %510, label %489, label %502, !llvm.loop !173

511:                                              ; preds = %550, %491
  %512 = phi i64 [ 0, %491 ], [ %554, %550 ]
  %513 = and i64 %167, 1
  %514 = icmp eq i64 %513, 0
  br i1 %514, label %515, label %523

515:                                              ; preds = %511
  %516 = icmp slt i64 %512, %167
  br i1 %516, label %519, label %517

517:                                              ; preds = %515
  %518 = load double, ptr %335, align 8, !tbaa !41
  br label %519

519:                                              ; preds = %517, %515
  %520 = phi double [ %518, %517 ], [ %330, %515 ]
  %521 = getelementptr <8 x double>, ptr %494, i64 %512
  store double %520, ptr %521, align 8, !tbaa !41
  %522 = getelementptr <8 x double>, ptr %497, i64 %512
  store double %520, ptr %522, align 8, !tbaa !41
  br label %523

523:                                              ; preds = %511, %519
  %524 = icmp eq i64 %167, 0
  br i1 %524, label %563, label %525

525:                                              ; preds = %523
  %526 = getelementptr inbounds nuw i8, ptr %163, i64 8656
  %527 = load ptr, ptr %526, align 16, !tbaa !61
  %528 = getelementptr double, ptr %527, i64 %6
  %529 = getelementptr inbounds nuw i8, ptr %163, i64 8648
  %530 = load ptr, ptr %529, align 8, !tbaa !49
  %531 = getelementptr double, ptr %530, i64 %6
  %532 = and i64 %167, 1
  %533 = icmp eq i64 %167, 1
  br i1 %533, label %557, label %534

534:                                              ; preds = %525
  %535 = and i64 %167, 9223372036854775806
  br label %567

536:                                              ; preds = %550, %499
  %537 = phi i64 [ 0, %499 ], [ %554, %550 ]
  %538 = phi i64 [ 0, %499 ], [ %555, %550 ]
  %539 = icmp slt i64 %537, %167
  br i1 %539, label %542, label %540

540:                                              ; preds = %536
  %541 = load double, ptr %335, align 8, !tbaa !41
  br label %542

542:                                              ; preds = %536, %540
  %543 = phi double [ %541, %540 ], [ %330, %536 ]
  %544 = getelementptr <8 x double>, ptr %494, i64 %537
  store double %543, ptr %544, align 8, !tbaa !41
  %545 = getelementptr <8 x double>, ptr %497, i64 %537
  store double %543, ptr %545, align 8, !tbaa !41
  %546 = or disjoint i64 %537, 1
  %547 = icmp slt i64 %546, %167
  br i1 %547, label %550, label %548

548:                                              ; preds = %542
  %549 = load double, ptr %335, align 8, !tbaa !41
  br label %550

550:                                              ; preds = %548, %542
  %551 = phi double [ %549, %548 ], [ %330, %542 ]
  %552 = getelementptr <8 x double>, ptr %494, i64 %546
  store double %551, ptr %552, align 8, !tbaa !41
  %553 = getelementptr <8 x double>, ptr %497, i64 %546
  store double %551, ptr %553, align 8, !tbaa !41
  %554 = add nuw i64 %537, 2
  %555 = add i64 %538, 2
  %556 = icmp eq i64 %555, %501
  br i1 %556, label %511, label %536, !llvm.loop !174

557:                                              ; preds = %567, %525
  %558 = phi i64 [ 0, %525 ], [ %575, %567 ]
  %559 = icmp eq i64 %532, 0
  br i1 %559, label %563, label %560

560:                                              ; preds = %557
  %561 = getelementptr <8 x double>, ptr %528, i64 %558
  store double %236, ptr %561, align 8, !tbaa !41
  %562 = getelementptr <8 x double>, ptr %531, i64 %558
  store double %236, ptr %562, align 8, !tbaa !41
  br label %563

563:                                              ; preds = %560, %557, %489, %523
  %564 = add nuw nsw i64 %162, 1
  %565 = load i64, ptr %27, align 8, !tbaa !20
  %566 = icmp slt i64 %564, %565
  br i1 %566, label %161, label %62, !llvm.loop !175

567:                                              ; preds = %567, %534
  %568 = phi i64 [ 0, %534 ], [ %575, %567 ]
  %569 = phi i64 [ 0, %534 ], [ %576, %567 ]
  %570 = getelementptr <8 x double>, ptr %528, i64 %568
  store double %236, ptr %570, align 8, !tbaa !41
  %571 = getelementptr <8 x double>, ptr %531, i64 %568
  store double %236, ptr %571, align 8, !tbaa !41
  %572 = or disjoint i64 %568, 1
  %573 = getelementptr <8 x double>, ptr %528, i64 %572
  store double %236, ptr %573, align 8, !tbaa !41
  %574 = getelementptr <8 x double>, ptr %531, i64 %572
  store double %236, ptr %574, align 8, !tbaa !41
  %575 = add nuw nsw i64 %568, 2
  %576 = add i64 %569, 2
  %577 = icmp eq i64 %576, %535
  br i1 %577, label %557, label %567, !llvm.loop !176
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 15) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !177
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !178
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %10 = sext i32 %2 to i64
  %11 = getelementptr inbounds [8 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %18 = getelementptr inbounds double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !41
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !179
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !41
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !41
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
  br i1 %68, label %69, label %36, !llvm.loop !180

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !41
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !41
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !41
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 6144
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !41
  br label %284

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !41
  %82 = load double, ptr %35, align 8, !tbaa !41
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !41
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4416
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !41
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !41
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !41
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !41
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !41
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !41
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !41
  %99 = load double, ptr %80, align 8, !tbaa !41
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !41
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %215

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %152

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 6216
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
  %124 = getelementptr inbounds nuw i8, ptr %121, i64 4160
  %125 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %126 = fmul <8 x double> %123, %125
  %127 = fadd <8 x double> %118, %126
  %128 = or disjoint i64 %119, 1
  %129 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %128
  %130 = getelementptr inbounds nuw i8, ptr %129, i64 128
  %131 = load <8 x double>, ptr %130, align 64, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %129, i64 4160
  %133 = load <8 x double>, ptr %132, align 64, !tbaa !26
  %134 = fmul <8 x double> %131, %133
  %135 = fadd <8 x double> %127, %134
  %136 = add nuw nsw i64 %119, 2
  %137 = add i64 %120, 2
  %138 = icmp eq i64 %137, %116
  br i1 %138, label %139, label %117, !llvm.loop !181

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
  %148 = getelementptr inbounds nuw i8, ptr %145, i64 4160
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
  %172 = load double, ptr %171, align 8, !tbaa !41
  %173 = fmul double %172, %169
  %174 = fdiv double %173, %30
  %175 = fcmp ogt double %174, 0.000000e+00
  %176 = fneg double %174
  %177 = select i1 %175, double %176, double -0.000000e+00
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 640
  %179 = getelementptr inbounds double, ptr %178, i64 %10
  %180 = load double, ptr %179, align 8, !tbaa !41
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
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %214 = getelementptr inbounds double, ptr %213, i64 %10
  store double %212, ptr %214, align 8, !tbaa !41
  br label %215

215:                                              ; preds = %79, %152
  %216 = fcmp une double %99, %103
  br i1 %216, label %217, label %256

217:                                              ; preds = %215
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %219 = getelementptr inbounds double, ptr %218, i64 %10
  store double %99, ptr %219, align 8, !tbaa !41
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %221 = getelementptr inbounds double, ptr %220, i64 %10
  store double %82, ptr %221, align 8, !tbaa !41
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %223 = getelementptr inbounds double, ptr %222, i64 %10
  %224 = load double, ptr %223, align 8, !tbaa !41
  %225 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %226 = getelementptr inbounds double, ptr %225, i64 %10
  store double %224, ptr %226, align 8, !tbaa !41
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %228 = getelementptr inbounds i64, ptr %227, i64 %10
  store i64 -1, ptr %228, align 8, !tbaa !30
  %229 = fcmp oeq double %99, 0.000000e+00
  %230 = fcmp oeq double %99, 3.000000e+00
  %231 = or i1 %229, %230
  br i1 %231, label %232, label %240

232:                                              ; preds = %217
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %234 = getelementptr inbounds double, ptr %233, i64 %10
  store double %30, ptr %234, align 8, !tbaa !41
  store double %30, ptr %26, align 8, !tbaa !41
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %236 = getelementptr inbounds double, ptr %235, i64 %10
  %237 = load double, ptr %236, align 8, !tbaa !41
  %238 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %239 = getelementptr inbounds double, ptr %238, i64 %10
  store double %237, ptr %239, align 8, !tbaa !41
  br label %240

240:                                              ; preds = %217, %232
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %242 = load i64, ptr %241, align 8, !tbaa !20
  %243 = icmp sgt i64 %242, 0
  br i1 %243, label %244, label %256

244:                                              ; preds = %240
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  %246 = load ptr, ptr %245, align 8, !tbaa !28
  %247 = getelementptr i64, ptr %246, i64 %10
  %248 = sext i1 %230 to i64
  br label %249

249:                                              ; preds = %244, %249
  %250 = phi i64 [ 0, %244 ], [ %253, %249 ]
  %251 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 42
  store i64 -1, ptr %251, align 8, !tbaa !30
  %252 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 43
  store i64 %248, ptr %252, align 8, !tbaa !30
  %253 = add nuw nsw i64 %250, 1
  %254 = load i64, ptr %241, align 8, !tbaa !20
  %255 = icmp slt i64 %253, %254
  br i1 %255, label %249, label %256, !llvm.loop !182

256:                                              ; preds = %249, %240, %215
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %257 = getelementptr inbounds i64, ptr %4, i64 %10
  store i64 -1, ptr %257, align 8, !tbaa !30
  %258 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %259 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %260 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %261 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %262 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %263 = fmul <8 x double> %262, splat (double 5.000000e-01)
  %264 = load <8 x double>, ptr %89, align 64, !tbaa !26
  %265 = fadd <8 x double> %264, %263
  %266 = fadd <8 x double> %265, splat (double -4.000000e-03)
  %267 = fcmp ult <8 x double> %260, %266
  %268 = fsub <8 x double> %264, %263
  %269 = fadd <8 x double> %268, splat (double 4.000000e-03)
  %270 = fcmp ole <8 x double> %260, %269
  %271 = getelementptr inbounds nuw i8, ptr %0, i64 5632
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
  %281 = getelementptr inbounds nuw i8, ptr %0, i64 5760
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
!16 = !{!17, !6, i64 2368}
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 2368, !6, i64 2376, !6, i64 2384, !6, i64 2392, !6, i64 2400, !6, i64 2408, !7, i64 2432, !7, i64 2496, !7, i64 2880, !7, i64 3264, !7, i64 3648, !7, i64 3712, !7, i64 3776, !7, i64 3840, !7, i64 3904, !7, i64 3968, !7, i64 4032, !7, i64 4096, !7, i64 4160, !7, i64 4224, !7, i64 4288, !7, i64 4352, !7, i64 4416, !7, i64 4480, !7, i64 4544, !7, i64 4608, !7, i64 4672, !7, i64 4736, !7, i64 4800, !7, i64 4864, !7, i64 4928, !7, i64 4992, !7, i64 5056, !7, i64 5120, !7, i64 5184, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6080, !7, i64 6144, !11, i64 6208, !19, i64 6216}
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
!28 = !{!17, !19, i64 6216}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 8512}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 2944, !7, i64 3840, !7, i64 4736, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !7, i64 7552, !7, i64 7616, !7, i64 7680, !7, i64 7744, !7, i64 7808, !34, i64 7872, !7, i64 8256, !7, i64 8320, !7, i64 8384, !7, i64 8448, !6, i64 8512, !11, i64 8520, !11, i64 8528, !11, i64 8536, !11, i64 8544, !11, i64 8552, !11, i64 8560, !11, i64 8568, !11, i64 8576, !11, i64 8584, !11, i64 8592, !11, i64 8600, !11, i64 8608, !11, i64 8616, !11, i64 8624, !11, i64 8632, !11, i64 8640, !11, i64 8648, !11, i64 8656, !11, i64 8664, !11, i64 8672, !11, i64 8680, !11, i64 8688, !11, i64 8696, !11, i64 8704}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!34 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320}
!35 = !{!11, !11, i64 0}
!36 = !{!32, !11, i64 8632}
!37 = !{!17, !11, i64 6208}
!38 = !{!5, !6, i64 0}
!39 = !{!5, !6, i64 176}
!40 = !{!5, !6, i64 184}
!41 = !{!9, !9, i64 0}
!42 = !{!5, !10, i64 208}
!43 = !{!5, !10, i64 192}
!44 = !{!5, !10, i64 200}
!45 = !{!32, !11, i64 8528}
!46 = !{!32, !11, i64 8560}
!47 = !{!32, !11, i64 8616}
!48 = !{!32, !11, i64 8696}
!49 = !{!32, !11, i64 8648}
!50 = distinct !{!50, !51}
!51 = !{!"llvm.loop.mustprogress"}
!52 = distinct !{!52, !51}
!53 = distinct !{!53, !51}
!54 = distinct !{!54, !51}
!55 = distinct !{!55, !51}
!56 = !{!32, !11, i64 8536}
!57 = !{!32, !11, i64 8520}
!58 = !{!32, !11, i64 8544}
!59 = !{!32, !11, i64 8704}
!60 = distinct !{!60, !51}
!61 = !{!32, !11, i64 8656}
!62 = !{!32, !11, i64 8664}
!63 = distinct !{!63, !51}
!64 = !{!65}
!65 = distinct !{!65, !66, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!66 = distinct !{!66, !"_ZL4stirRK5GroupRK5Piece"}
!67 = !{!32, !11, i64 8552}
!68 = distinct !{!68, !51}
!69 = !{!70}
!70 = distinct !{!70, !71, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!71 = distinct !{!71, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!72 = !{!32, !11, i64 8608}
!73 = distinct !{!73, !51}
!74 = distinct !{!74, !51}
!75 = distinct !{!75, !51}
!76 = distinct !{!76, !51}
!77 = distinct !{!77, !51}
!78 = distinct !{!78, !51}
!79 = distinct !{!79, !51}
!80 = !{!81}
!81 = distinct !{!81, !82, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!82 = distinct !{!82, !"_ZL4stirRK5GroupRK5Piece"}
!83 = !{!32, !11, i64 8584}
!84 = !{!32, !11, i64 8592}
!85 = !{!32, !11, i64 8600}
!86 = !{!32, !11, i64 8568}
!87 = !{!32, !11, i64 8576}
!88 = distinct !{!88, !51}
!89 = distinct !{!89, !51}
!90 = !{!32, !11, i64 8688}
!91 = distinct !{!91, !51}
!92 = !{!32, !11, i64 8672}
!93 = !{!32, !11, i64 8680}
!94 = distinct !{!94, !51}
!95 = distinct !{!95, !51}
!96 = distinct !{!96, !51}
!97 = distinct !{!97, !51}
!98 = !{!99}
!99 = distinct !{!99, !100, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!100 = distinct !{!100, !"_ZL9evaporateR5GroupDv8_d"}
!101 = !{!102}
!102 = distinct !{!102, !103, !"_ZL7outflowRK5GroupDv8_dS2_: argument 0"}
!103 = distinct !{!103, !"_ZL7outflowRK5GroupDv8_dS2_"}
!104 = !{!105}
!105 = distinct !{!105, !106, !"_ZL8condenseR5GroupDv8_d: argument 0"}
!106 = distinct !{!106, !"_ZL8condenseR5GroupDv8_d"}
!107 = distinct !{!107, !51}
!108 = !{!109, !99}
!109 = distinct !{!109, !110, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!110 = distinct !{!110, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!111 = !{!112, !109, !99}
!112 = distinct !{!112, !113, !"_ZL11look_insideRK5GroupRK5PieceDv8_d: argument 0"}
!113 = distinct !{!113, !"_ZL11look_insideRK5GroupRK5PieceDv8_d"}
!114 = distinct !{!114, !51}
!115 = distinct !{!115, !51}
!116 = !{!117}
!117 = distinct !{!117, !118, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!118 = distinct !{!118, !"_ZL9evaporateR5GroupDv8_d"}
!119 = !{!120, !117}
!120 = distinct !{!120, !121, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!121 = distinct !{!121, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!122 = !{!123, !120, !117}
!123 = distinct !{!123, !124, !"_ZL11look_insideRK5GroupRK5PieceDv8_d: argument 0"}
!124 = distinct !{!124, !"_ZL11look_insideRK5GroupRK5PieceDv8_d"}
!125 = distinct !{!125, !51}
!126 = distinct !{!126, !51}
!127 = !{!32, !11, i64 8640}
!128 = distinct !{!128, !51}
!129 = distinct !{!129, !51}
!130 = distinct !{!130, !51}
!131 = !{!132}
!132 = distinct !{!132, !133, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!133 = distinct !{!133, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!134 = distinct !{!134, !51}
!135 = distinct !{!135, !51}
!136 = distinct !{!136, !51}
!137 = distinct !{!137, !51}
!138 = distinct !{!138, !51}
!139 = !{!32, !11, i64 8624}
!140 = distinct !{!140, !51}
!141 = distinct !{!141, !51}
!142 = distinct !{!142, !51}
!143 = distinct !{!143, !51}
!144 = distinct !{!144, !51}
!145 = distinct !{!145, !51}
!146 = distinct !{!146, !51}
!147 = distinct !{!147, !51}
!148 = distinct !{!148, !51}
!149 = distinct !{!149, !51}
!150 = distinct !{!150, !51}
!151 = !{!5, !6, i64 40}
!152 = distinct !{!152, !51}
!153 = distinct !{!153, !51}
!154 = !{!5, !6, i64 56}
!155 = !{!10, !10, i64 0}
!156 = !{!5, !12, i64 168}
!157 = !{!5, !10, i64 160}
!158 = distinct !{!158, !51}
!159 = distinct !{!159, !160}
!160 = !{!"llvm.loop.unroll.disable"}
!161 = distinct !{!161, !51}
!162 = distinct !{!162, !160}
!163 = !{!5, !10, i64 80}
!164 = !{!5, !10, i64 72}
!165 = !{!5, !10, i64 96}
!166 = !{!5, !12, i64 104}
!167 = distinct !{!167, !51}
!168 = distinct !{!168, !51}
!169 = distinct !{!169, !51}
!170 = distinct !{!170, !160}
!171 = distinct !{!171, !51}
!172 = distinct !{!172, !51}
!173 = distinct !{!173, !51}
!174 = distinct !{!174, !51}
!175 = distinct !{!175, !51}
!176 = distinct !{!176, !51}
!177 = !{!5, !10, i64 88}
!178 = !{!5, !12, i64 112}
!179 = !{!5, !12, i64 120}
!180 = distinct !{!180, !51}
!181 = distinct !{!181, !51}
!182 = distinct !{!182, !51}
