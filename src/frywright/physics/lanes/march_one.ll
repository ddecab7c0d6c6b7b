; Made by scripts/lanes.py from sources of sha256 a914d89fe7888f029b37948d37bbbc35dcd42e268cd2200101962708cd0935e2.
%struct.Piece = type <{ %struct.PieceGiven, [14 x <8 x double>], [14 x <8 x double>], [14 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, %struct.Flash, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [56 x i8] }>
%struct.PieceGiven = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }
%struct.Flash = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define range(i64 17088, 17025) i64 @work_space_one(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
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
  %13 = add i64 %12, 17088
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
  %34 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 6152
  store ptr %34, ptr %35, align 8, !tbaa !28
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 14976
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
  %55 = getelementptr inbounds nuw i8, ptr %1, i64 14720
  store i64 %54, ptr %55, align 64, !tbaa !31
  %56 = getelementptr inbounds nuw i8, ptr %1, i64 14728
  %57 = getelementptr inbounds nuw i8, ptr %1, i64 14736
  %58 = getelementptr inbounds nuw i8, ptr %1, i64 14744
  %59 = getelementptr inbounds nuw i8, ptr %1, i64 14752
  %60 = getelementptr inbounds nuw i8, ptr %1, i64 14760
  %61 = getelementptr inbounds nuw i8, ptr %1, i64 14768
  %62 = getelementptr inbounds nuw i8, ptr %1, i64 14776
  %63 = getelementptr inbounds nuw i8, ptr %1, i64 14784
  %64 = getelementptr inbounds nuw i8, ptr %1, i64 14792
  %65 = getelementptr inbounds nuw i8, ptr %1, i64 14800
  %66 = getelementptr inbounds nuw i8, ptr %1, i64 14808
  %67 = getelementptr inbounds nuw i8, ptr %1, i64 14816
  %68 = getelementptr inbounds nuw i8, ptr %1, i64 14824
  %69 = getelementptr inbounds nuw i8, ptr %1, i64 14832
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
  %70 = getelementptr inbounds nuw i8, ptr %1, i64 14840
  store ptr %52, ptr %70, align 8, !tbaa !36
  %71 = icmp eq i64 %54, 0
  %72 = select i1 %71, i64 0, i64 2
  %73 = shl i64 %38, %72
  %74 = getelementptr inbounds <8 x double>, ptr %52, i64 %73
  %75 = getelementptr inbounds nuw i8, ptr %1, i64 14848
  %76 = getelementptr inbounds nuw i8, ptr %1, i64 14856
  %77 = getelementptr inbounds nuw i8, ptr %1, i64 14864
  %78 = getelementptr inbounds nuw i8, ptr %1, i64 14872
  %79 = getelementptr inbounds nuw i8, ptr %1, i64 14880
  %80 = getelementptr inbounds nuw i8, ptr %1, i64 14888
  %81 = getelementptr inbounds nuw i8, ptr %1, i64 14896
  %82 = getelementptr inbounds nuw i8, ptr %1, i64 14904
  %83 = getelementptr inbounds nuw i8, ptr %1, i64 14912
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
  %102 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  store ptr %101, ptr %102, align 64, !tbaa !37
  %103 = load i64, ptr %0, align 8, !tbaa !38
  %104 = icmp sgt i64 %103, 0
  br i1 %104, label %105, label %106

105:                                              ; preds = %14
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %109

106:                                              ; preds = %14
  %107 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %108 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  store i64 0, ptr %108, align 8, !tbaa !30
  store i64 0, ptr %107, align 8, !tbaa !30
  br label %109

109:                                              ; preds = %106, %105, %3
  %110 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %113 = load i64, ptr %111, align 8, !tbaa !39
  %114 = load i64, ptr %112, align 8, !tbaa !40
  %115 = sub nsw i64 %113, %114
  %116 = icmp slt i64 %115, 16
  br i1 %116, label %5868, label %117

117:                                              ; preds = %109
  %118 = getelementptr inbounds nuw i8, ptr %1, i64 6080
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  %120 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  %121 = getelementptr inbounds nuw i8, ptr %1, i64 5760
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %123 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %124 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %125 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %126 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %127 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %128 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %129 = getelementptr inbounds nuw i8, ptr %1, i64 6152
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 2344
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %135 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %169 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %171 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %172 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %223 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 6016
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 5448
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 5512
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 5456
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 5520
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 5464
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 5528
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 5472
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 5536
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 5480
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 5544
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 5488
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 5552
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 5496
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 5560
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 6088
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 6096
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 6104
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 6112
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 6120
  %274 = getelementptr inbounds nuw i8, ptr %1, i64 6128
  %275 = getelementptr inbounds nuw i8, ptr %1, i64 6136
  br label %276

276:                                              ; preds = %117, %515
  %277 = load i64, ptr %110, align 8, !tbaa !30
  %278 = icmp eq i64 %277, 0
  br i1 %278, label %520, label %279

279:                                              ; preds = %276
  %280 = load double, ptr %118, align 8, !tbaa !41
  %281 = fcmp oeq double %280, 0.000000e+00
  br i1 %281, label %520, label %282

282:                                              ; preds = %279
  %283 = load i64, ptr %119, align 16, !tbaa !21
  %284 = load i64, ptr %120, align 8, !tbaa !22
  %285 = load i64, ptr %121, align 8, !tbaa !30
  %286 = load ptr, ptr %122, align 8, !tbaa !42
  %287 = mul nsw i64 %285, 40
  %288 = getelementptr inbounds i8, ptr %286, i64 %287
  %289 = load double, ptr %123, align 8, !tbaa !41
  store double %289, ptr %288, align 8, !tbaa !41
  %290 = load double, ptr %124, align 8, !tbaa !41
  %291 = getelementptr inbounds nuw i8, ptr %288, i64 8
  store double %290, ptr %291, align 8, !tbaa !41
  %292 = load double, ptr %125, align 8, !tbaa !41
  %293 = getelementptr inbounds nuw i8, ptr %288, i64 16
  store double %292, ptr %293, align 8, !tbaa !41
  %294 = load double, ptr %126, align 8, !tbaa !41
  %295 = getelementptr inbounds nuw i8, ptr %288, i64 24
  store double %294, ptr %295, align 8, !tbaa !41
  %296 = load double, ptr %127, align 8, !tbaa !41
  %297 = getelementptr inbounds nuw i8, ptr %288, i64 32
  store double %296, ptr %297, align 8, !tbaa !41
  %298 = load i64, ptr %128, align 64, !tbaa !16
  %299 = icmp sgt i64 %298, 0
  br i1 %299, label %300, label %504

300:                                              ; preds = %282
  %301 = load ptr, ptr %129, align 8, !tbaa !28
  %302 = getelementptr inbounds nuw i8, ptr %301, i64 1536
  %303 = getelementptr inbounds nuw i8, ptr %301, i64 4608
  %304 = load ptr, ptr %130, align 8, !tbaa !43
  %305 = mul nsw i64 %298, %285
  %306 = mul i64 %283, 3
  %307 = load ptr, ptr %131, align 8, !tbaa !44
  %308 = icmp sgt i64 %283, 0
  %309 = getelementptr inbounds nuw i8, ptr %301, i64 8528
  %310 = getelementptr inbounds nuw i8, ptr %301, i64 8560
  %311 = getelementptr inbounds nuw i8, ptr %301, i64 8616
  %312 = getelementptr inbounds nuw i8, ptr %301, i64 8512
  %313 = getelementptr inbounds nuw i8, ptr %301, i64 4672
  %314 = getelementptr inbounds nuw i8, ptr %301, i64 384
  %315 = getelementptr inbounds nuw i8, ptr %301, i64 448
  %316 = getelementptr inbounds nuw i8, ptr %301, i64 512
  %317 = getelementptr inbounds nuw i8, ptr %301, i64 640
  %318 = shl i64 %283, 4
  %319 = icmp sgt i64 %284, 0
  %320 = getelementptr inbounds nuw i8, ptr %301, i64 8696
  %321 = getelementptr inbounds nuw i8, ptr %301, i64 768
  %322 = getelementptr inbounds nuw i8, ptr %301, i64 8648
  %323 = getelementptr inbounds nuw i8, ptr %301, i64 960
  %324 = getelementptr inbounds nuw i8, ptr %301, i64 1408
  %325 = getelementptr inbounds nuw i8, ptr %301, i64 4224
  %326 = getelementptr inbounds nuw i8, ptr %301, i64 4288
  %327 = getelementptr inbounds nuw i8, ptr %301, i64 4160
  %328 = getelementptr inbounds nuw i8, ptr %301, i64 3968
  %329 = getelementptr inbounds nuw i8, ptr %301, i64 4032
  %330 = getelementptr inbounds nuw i8, ptr %301, i64 3904
  %331 = and i64 %284, 1
  %332 = icmp eq i64 %284, 1
  %333 = and i64 %284, 9223372036854775806
  %334 = icmp eq i64 %331, 0
  br label %335

335:                                              ; preds = %424, %300
  %336 = phi i64 [ 0, %300 ], [ %479, %424 ]
  %337 = shl i64 %336, 32
  %338 = ashr exact i64 %337, 32
  %339 = getelementptr inbounds double, ptr %302, i64 %338
  %340 = load double, ptr %339, align 8, !tbaa !41
  %341 = getelementptr inbounds double, ptr %303, i64 %338
  %342 = load double, ptr %341, align 8, !tbaa !41
  %343 = add nsw i64 %336, %305
  %344 = mul i64 %306, %343
  %345 = getelementptr inbounds double, ptr %304, i64 %344
  %346 = mul nsw i64 %343, 40
  %347 = getelementptr inbounds i8, ptr %307, i64 %346
  br i1 %308, label %348, label %358

348:                                              ; preds = %335
  %349 = load ptr, ptr %309, align 16, !tbaa !45
  %350 = load ptr, ptr %310, align 16, !tbaa !46
  %351 = getelementptr double, ptr %350, i64 %338
  %352 = getelementptr double, ptr %345, i64 %283
  %353 = load ptr, ptr %311, align 8, !tbaa !47
  %354 = load i64, ptr %312, align 64, !tbaa !31
  %355 = getelementptr inbounds double, ptr %10, i64 %338
  %356 = getelementptr i8, ptr %345, i64 %318
  %357 = getelementptr inbounds double, ptr %11, i64 %338
  br label %368

358:                                              ; preds = %399, %335
  %359 = phi double [ %342, %335 ], [ %407, %399 ]
  br i1 %319, label %360, label %424

360:                                              ; preds = %358
  %361 = load ptr, ptr %320, align 8, !tbaa !48
  %362 = getelementptr double, ptr %361, i64 %338
  %363 = getelementptr inbounds double, ptr %321, i64 %338
  %364 = load double, ptr %363, align 8, !tbaa !41
  %365 = load ptr, ptr %322, align 8, !tbaa !49
  %366 = getelementptr double, ptr %365, i64 %338
  %367 = load double, ptr %362, align 8, !tbaa !41
  br i1 %332, label %410, label %481

368:                                              ; preds = %399, %348
  %369 = phi double [ %342, %348 ], [ %407, %399 ]
  %370 = phi i64 [ 0, %348 ], [ %408, %399 ]
  %371 = getelementptr inbounds nuw <8 x double>, ptr %349, i64 %370
  %372 = getelementptr inbounds double, ptr %371, i64 %338
  %373 = load double, ptr %372, align 8, !tbaa !41
  %374 = getelementptr inbounds nuw double, ptr %345, i64 %370
  store double %373, ptr %374, align 8, !tbaa !41
  %375 = getelementptr <8 x double>, ptr %351, i64 %370
  %376 = load double, ptr %375, align 8, !tbaa !41
  %377 = getelementptr double, ptr %352, i64 %370
  store double %376, ptr %377, align 8, !tbaa !41
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %378 = getelementptr inbounds nuw <8 x double>, ptr %353, i64 %370
  %379 = load <8 x double>, ptr %378, align 64, !tbaa !26
  %380 = icmp slt i64 %370, %354
  br i1 %380, label %381, label %386

381:                                              ; preds = %368
  %382 = load <8 x double>, ptr %302, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %383 = load <8 x double>, ptr %371, align 64, !tbaa !26
  %384 = load <8 x double>, ptr %317, align 64, !tbaa !26
  %385 = fmul <8 x double> %383, %384
  br label %399

386:                                              ; preds = %368
  %387 = load <8 x double>, ptr %313, align 64, !tbaa !26
  %388 = load <8 x double>, ptr %302, align 64, !tbaa !26
  %389 = fsub <8 x double> %387, %388
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %390 = load <8 x double>, ptr %371, align 64, !tbaa !26
  %391 = load <8 x double>, ptr %314, align 64, !tbaa !26
  %392 = load <8 x double>, ptr %315, align 64, !tbaa !26
  %393 = load <8 x double>, ptr %316, align 64, !tbaa !26
  %394 = fmul <8 x double> %390, %393
  %395 = fmul <8 x double> %394, splat (double 0x3FD5555555555555)
  %396 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %392, <8 x double> splat (double 5.000000e-01), <8 x double> %395)
  %397 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %390, <8 x double> %396, <8 x double> %391)
  %398 = fmul <8 x double> %390, %397
  br label %399

399:                                              ; preds = %386, %381
  %400 = phi <8 x double> [ %382, %381 ], [ %389, %386 ]
  %401 = phi <8 x double> [ %385, %381 ], [ %398, %386 ]
  %402 = fmul <8 x double> %379, %400
  store <8 x double> %402, ptr %10, align 64, !tbaa !26
  %403 = fmul <8 x double> %402, %401
  store <8 x double> %403, ptr %11, align 64, !tbaa !26
  %404 = load double, ptr %355, align 8, !tbaa !41
  %405 = getelementptr double, ptr %356, i64 %370
  store double %404, ptr %405, align 8, !tbaa !41
  %406 = load double, ptr %357, align 8, !tbaa !41
  %407 = fadd double %369, %406
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %408 = add nuw nsw i64 %370, 1
  %409 = icmp eq i64 %408, %283
  br i1 %409, label %358, label %368, !llvm.loop !50

410:                                              ; preds = %481, %360
  %411 = phi double [ poison, %360 ], [ %501, %481 ]
  %412 = phi double [ %367, %360 ], [ %496, %481 ]
  %413 = phi double [ %359, %360 ], [ %501, %481 ]
  %414 = phi i64 [ 0, %360 ], [ %494, %481 ]
  br i1 %334, label %424, label %415

415:                                              ; preds = %410
  %416 = getelementptr <8 x double>, ptr %362, i64 %414
  %417 = getelementptr i8, ptr %416, i64 64
  %418 = load double, ptr %417, align 8, !tbaa !41
  %419 = fsub double %418, %412
  %420 = fmul double %364, %419
  %421 = getelementptr <8 x double>, ptr %366, i64 %414
  %422 = load double, ptr %421, align 8, !tbaa !41
  %423 = tail call double @llvm.fmuladd.f64(double %420, double %422, double %413)
  br label %424

424:                                              ; preds = %415, %410, %358
  %425 = phi double [ %359, %358 ], [ %411, %410 ], [ %423, %415 ]
  %426 = getelementptr inbounds double, ptr %323, i64 %338
  %427 = load double, ptr %426, align 8, !tbaa !41
  %428 = getelementptr inbounds double, ptr %314, i64 %338
  %429 = load double, ptr %428, align 8, !tbaa !41
  %430 = getelementptr inbounds double, ptr %315, i64 %338
  %431 = load double, ptr %430, align 8, !tbaa !41
  %432 = getelementptr inbounds double, ptr %316, i64 %338
  %433 = load double, ptr %432, align 8, !tbaa !41
  %434 = fmul double %427, %433
  %435 = fdiv double %434, 3.000000e+00
  %436 = tail call double @llvm.fmuladd.f64(double %431, double 5.000000e-01, double %435)
  %437 = tail call double @llvm.fmuladd.f64(double %427, double %436, double %429)
  %438 = fmul double %427, %437
  %439 = getelementptr inbounds double, ptr %324, i64 %338
  %440 = load double, ptr %439, align 8, !tbaa !41
  %441 = fsub double %440, %340
  %442 = getelementptr inbounds double, ptr %317, i64 %338
  %443 = load double, ptr %442, align 8, !tbaa !41
  %444 = fmul double %340, %443
  %445 = fmul double %427, %444
  %446 = tail call double @llvm.fmuladd.f64(double %441, double %438, double %445)
  %447 = getelementptr inbounds double, ptr %325, i64 %338
  %448 = load double, ptr %447, align 8, !tbaa !41
  %449 = getelementptr inbounds double, ptr %326, i64 %338
  %450 = load double, ptr %449, align 8, !tbaa !41
  %451 = fsub double %448, %450
  %452 = fsub double %425, %446
  %453 = fsub double %451, %452
  %454 = fcmp ogt double %448, 0.000000e+00
  %455 = fneg double %448
  %456 = select i1 %454, double %448, double %455
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
  store double %466, ptr %347, align 8, !tbaa !41
  %467 = getelementptr inbounds double, ptr %327, i64 %338
  %468 = load double, ptr %467, align 8, !tbaa !41
  %469 = getelementptr inbounds nuw i8, ptr %347, i64 8
  store double %468, ptr %469, align 8, !tbaa !41
  %470 = getelementptr inbounds double, ptr %328, i64 %338
  %471 = load double, ptr %470, align 8, !tbaa !41
  %472 = getelementptr inbounds nuw i8, ptr %347, i64 16
  store double %471, ptr %472, align 8, !tbaa !41
  %473 = getelementptr inbounds double, ptr %329, i64 %338
  %474 = load double, ptr %473, align 8, !tbaa !41
  %475 = getelementptr inbounds nuw i8, ptr %347, i64 24
  store double %474, ptr %475, align 8, !tbaa !41
  %476 = getelementptr inbounds double, ptr %330, i64 %338
  %477 = load double, ptr %476, align 8, !tbaa !41
  %478 = getelementptr inbounds nuw i8, ptr %347, i64 32
  store double %477, ptr %478, align 8, !tbaa !41
  %479 = add nuw nsw i64 %336, 1
  %480 = icmp eq i64 %479, %298
  br i1 %480, label %504, label %335, !llvm.loop !52

481:                                              ; preds = %360, %481
  %482 = phi double [ %496, %481 ], [ %367, %360 ]
  %483 = phi double [ %501, %481 ], [ %359, %360 ]
  %484 = phi i64 [ %494, %481 ], [ 0, %360 ]
  %485 = phi i64 [ %502, %481 ], [ 0, %360 ]
  %486 = or disjoint i64 %484, 1
  %487 = getelementptr <8 x double>, ptr %362, i64 %486
  %488 = load double, ptr %487, align 8, !tbaa !41
  %489 = fsub double %488, %482
  %490 = fmul double %364, %489
  %491 = getelementptr <8 x double>, ptr %366, i64 %484
  %492 = load double, ptr %491, align 8, !tbaa !41
  %493 = tail call double @llvm.fmuladd.f64(double %490, double %492, double %483)
  %494 = add nuw nsw i64 %484, 2
  %495 = getelementptr <8 x double>, ptr %362, i64 %494
  %496 = load double, ptr %495, align 8, !tbaa !41
  %497 = fsub double %496, %488
  %498 = fmul double %364, %497
  %499 = getelementptr <8 x double>, ptr %366, i64 %486
  %500 = load double, ptr %499, align 8, !tbaa !41
  %501 = tail call double @llvm.fmuladd.f64(double %498, double %500, double %493)
  %502 = add i64 %485, 2
  %503 = icmp eq i64 %502, %333
  br i1 %503, label %410, label %481, !llvm.loop !53

504:                                              ; preds = %424, %282
  %505 = load i64, ptr %132, align 8, !tbaa !27
  %506 = load i64, ptr %0, align 8, !tbaa !38
  %507 = icmp slt i64 %505, %506
  br i1 %507, label %509, label %508

508:                                              ; preds = %504
  store i64 0, ptr %110, align 8, !tbaa !30
  store i64 0, ptr %133, align 8, !tbaa !30
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
  store i64 0, ptr %237, align 8, !tbaa !30
  store i64 0, ptr %238, align 8, !tbaa !30
  store i64 0, ptr %239, align 8, !tbaa !30
  br label %520

509:                                              ; preds = %504
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  %510 = load i64, ptr %110, align 8, !tbaa !30
  %511 = icmp eq i64 %510, 0
  br i1 %511, label %520, label %512

512:                                              ; preds = %509
  %513 = load double, ptr %118, align 8, !tbaa !41
  %514 = fcmp oeq double %513, 0.000000e+00
  br i1 %514, label %520, label %515

515:                                              ; preds = %5825, %5867, %5864, %4012, %4347, %512
  %516 = load i64, ptr %111, align 8, !tbaa !39
  %517 = load i64, ptr %112, align 8, !tbaa !40
  %518 = sub nsw i64 %516, %517
  %519 = icmp slt i64 %518, 16
  br i1 %519, label %5868, label %276, !llvm.loop !54

520:                                              ; preds = %508, %509, %279, %276, %512
  %521 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %522 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %521)
  %523 = icmp eq i64 %522, 0
  br i1 %523, label %5868, label %524

524:                                              ; preds = %520
  %525 = load <8 x i64>, ptr %133, align 64, !tbaa !26
  %526 = and <8 x i64> %525, %521
  %527 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %526)
  %528 = icmp eq i64 %527, 0
  %529 = load i64, ptr %156, align 8, !tbaa !20
  br i1 %528, label %1487, label %530

530:                                              ; preds = %524
  %531 = load <8 x double>, ptr %134, align 64, !tbaa !26
  %532 = load <8 x double>, ptr %135, align 64, !tbaa !26
  %533 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %534 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %535 = fsub <8 x double> %533, %534
  %536 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %532, <8 x double> %535, <8 x double> %531)
  %537 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %538 = fcmp une <8 x double> %537, splat (double 2.000000e+00)
  %539 = select <8 x i1> %538, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %540 = fmul <8 x double> %536, %539
  %541 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %542 = load <8 x double>, ptr %140, align 64, !tbaa !26
  %543 = fcmp olt <8 x double> %541, %542
  %544 = select <8 x i1> %543, <8 x double> %541, <8 x double> %542
  %545 = fcmp olt <8 x double> %544, %540
  %546 = select <8 x i1> %545, <8 x double> %544, <8 x double> %540
  %547 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %548 = fmul <8 x double> %547, splat (double 5.000000e-01)
  %549 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %550 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %551 = fneg <8 x double> %548
  %552 = icmp eq <8 x i64> %550, zeroinitializer
  %553 = select <8 x i1> %552, <8 x double> %551, <8 x double> %548
  %554 = fadd <8 x double> %549, %553
  %555 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %556 = fsub <8 x double> %554, %555
  %557 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %558 = select <8 x i1> %552, <8 x double> zeroinitializer, <8 x double> %557
  %559 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %560 = fsub <8 x double> %558, %559
  %561 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %562 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %563 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %564 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %563, <8 x double> %555, <8 x double> %562)
  %565 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %566 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %561, <8 x double> %564, <8 x double> %565)
  %567 = fdiv <8 x double> %560, %566
  %568 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %569 = fsub <8 x double> %555, %568
  %570 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %571 = fdiv <8 x double> %569, %570
  %572 = fsub <8 x double> %567, %571
  %573 = fdiv <8 x double> %572, %570
  %574 = fdiv <8 x double> %556, %567
  %575 = load <8 x i64>, ptr %152, align 64, !tbaa !26
  %576 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %577 = or <8 x i64> %576, %575
  %578 = icmp eq <8 x i64> %577, zeroinitializer
  %579 = select <8 x i1> %578, <8 x double> %573, <8 x double> zeroinitializer
  %580 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %579, <8 x double> %574, <8 x double> %567)
  %581 = fdiv <8 x double> %556, %580
  %582 = fcmp ule <8 x double> %581, zeroinitializer
  %583 = select <8 x i1> %582, <8 x double> %574, <8 x double> %581
  %584 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %585 = fcmp une <8 x double> %584, zeroinitializer
  %586 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %587 = fcmp une <8 x double> %586, zeroinitializer
  %588 = fcmp ule <8 x double> %557, zeroinitializer
  %589 = or <8 x i1> %588, %585
  %590 = fcmp ule <8 x double> %574, zeroinitializer
  %591 = or <8 x i1> %590, %589
  %592 = or <8 x i1> %587, %591
  %593 = select <8 x i1> %592, <8 x double> splat (double 1.000000e+09), <8 x double> %583
  %594 = icmp sgt i64 %529, 0
  br i1 %594, label %595, label %660

595:                                              ; preds = %530
  %596 = load ptr, ptr %129, align 8, !tbaa !28
  %597 = fmul <8 x double> %570, splat (double 3.000000e+00)
  br label %598

598:                                              ; preds = %595, %598
  %599 = phi <8 x double> [ %593, %595 ], [ %657, %598 ]
  %600 = phi i64 [ 0, %595 ], [ %658, %598 ]
  %601 = getelementptr inbounds nuw %struct.Piece, ptr %596, i64 %600
  %602 = getelementptr inbounds nuw i8, ptr %601, i64 3904
  %603 = load <8 x double>, ptr %602, align 64, !tbaa !26
  %604 = getelementptr inbounds nuw i8, ptr %601, i64 1472
  %605 = load <8 x double>, ptr %604, align 64, !tbaa !26
  %606 = fsub <8 x double> %603, %605
  %607 = getelementptr inbounds nuw i8, ptr %601, i64 832
  %608 = load <8 x double>, ptr %607, align 64, !tbaa !26
  %609 = fmul <8 x double> %606, %608
  %610 = getelementptr inbounds nuw i8, ptr %601, i64 1600
  %611 = load <8 x double>, ptr %610, align 64, !tbaa !26
  %612 = getelementptr inbounds nuw i8, ptr %601, i64 4160
  %613 = load <8 x double>, ptr %612, align 64, !tbaa !26
  %614 = fsub <8 x double> %611, %613
  %615 = getelementptr inbounds nuw i8, ptr %601, i64 8320
  %616 = load <8 x i64>, ptr %615, align 64, !tbaa !26
  %617 = getelementptr inbounds nuw i8, ptr %601, i64 7680
  %618 = load <8 x double>, ptr %617, align 64, !tbaa !26
  %619 = fcmp une <8 x double> %618, splat (double 1.000000e+00)
  %620 = select <8 x i1> %619, <8 x double> %609, <8 x double> %614
  %621 = getelementptr inbounds nuw i8, ptr %601, i64 3968
  %622 = load <8 x double>, ptr %621, align 64, !tbaa !26
  %623 = icmp eq <8 x i64> %616, zeroinitializer
  %624 = select <8 x i1> %623, <8 x double> %622, <8 x double> %620
  %625 = getelementptr inbounds nuw i8, ptr %601, i64 6016
  %626 = load <8 x double>, ptr %625, align 64, !tbaa !26
  %627 = getelementptr inbounds nuw i8, ptr %601, i64 7552
  %628 = load <8 x double>, ptr %627, align 64, !tbaa !26
  %629 = fdiv <8 x double> %628, %570
  %630 = select <8 x i1> %623, <8 x double> %629, <8 x double> zeroinitializer
  %631 = fsub <8 x double> %626, %630
  %632 = fdiv <8 x double> %624, %631
  %633 = getelementptr inbounds nuw i8, ptr %601, i64 4864
  %634 = load <8 x double>, ptr %633, align 64, !tbaa !26
  %635 = fsub <8 x double> %634, %622
  %636 = fdiv <8 x double> %635, %570
  %637 = getelementptr inbounds nuw i8, ptr %601, i64 8384
  %638 = load <8 x i64>, ptr %637, align 64, !tbaa !26
  %639 = or <8 x i64> %638, %616
  %640 = fcmp ule <8 x double> %632, %597
  %641 = fsub <8 x double> %631, %636
  %642 = icmp eq <8 x i64> %639, zeroinitializer
  %643 = select <8 x i1> %640, <8 x i1> %642, <8 x i1> zeroinitializer
  %644 = select <8 x i1> %643, <8 x double> %641, <8 x double> zeroinitializer
  %645 = fdiv <8 x double> %632, %570
  %646 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %644, <8 x double> %645, <8 x double> %631)
  %647 = fdiv <8 x double> %624, %646
  %648 = fcmp ule <8 x double> %647, zeroinitializer
  %649 = select <8 x i1> %648, <8 x double> %632, <8 x double> %647
  %650 = fcmp ule <8 x double> %624, zeroinitializer
  %651 = fcmp ule <8 x double> %631, zeroinitializer
  %652 = or <8 x i1> %650, %651
  %653 = fcmp ogt <8 x double> %649, splat (double 1.000000e-03)
  %654 = select <8 x i1> %653, <8 x double> %649, <8 x double> splat (double 1.000000e-03)
  %655 = select <8 x i1> %652, <8 x double> splat (double 1.000000e+09), <8 x double> %654
  %656 = fcmp olt <8 x double> %599, %655
  %657 = select <8 x i1> %656, <8 x double> %599, <8 x double> %655
  %658 = add nuw nsw i64 %600, 1
  %659 = icmp eq i64 %658, %529
  br i1 %659, label %660, label %598, !llvm.loop !55

660:                                              ; preds = %598, %530
  %661 = phi <8 x double> [ %593, %530 ], [ %657, %598 ]
  %662 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %661)
  %663 = insertelement <8 x double> poison, double %662, i64 0
  %664 = shufflevector <8 x double> %663, <8 x double> poison, <8 x i32> zeroinitializer
  %665 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %666 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %667 = fadd <8 x double> %665, %666
  %668 = fsub <8 x double> %667, %533
  %669 = fmul <8 x double> %664, splat (double 1.050000e+00)
  %670 = fcmp ugt <8 x double> %668, %669
  %671 = select <8 x i1> %670, <8 x double> %664, <8 x double> %668
  %672 = fmul <8 x double> %546, splat (double 0x3FF000010C6F7A0B)
  %673 = fcmp ole <8 x double> %671, %672
  %674 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %675 = fcmp ogt <8 x double> %674, %546
  %676 = select <8 x i1> %675, <8 x double> %674, <8 x double> %546
  %677 = icmp ne <8 x i64> %526, zeroinitializer
  %678 = select <8 x i1> %673, <8 x i1> %677, <8 x i1> zeroinitializer
  %679 = select <8 x i1> %678, <8 x double> %676, <8 x double> %674
  store <8 x double> %679, ptr %159, align 64, !tbaa !26
  %680 = fmul <8 x double> %546, splat (double 2.000000e+00)
  %681 = fcmp uge <8 x double> %671, %680
  %682 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %683 = fcmp une <8 x double> %682, zeroinitializer
  %684 = or <8 x i1> %683, %681
  %685 = fmul <8 x double> %671, splat (double 5.000000e-01)
  %686 = select <8 x i1> %684, <8 x double> %546, <8 x double> %685
  %687 = select <8 x i1> %673, <8 x double> %671, <8 x double> %686
  %688 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %689 = icmp eq <8 x i64> %526, zeroinitializer
  %690 = select <8 x i1> %689, <8 x double> %688, <8 x double> %687
  store <8 x double> %690, ptr %160, align 64, !tbaa !26
  %691 = fdiv <8 x double> %690, %570
  %692 = fdiv <8 x double> splat (double 1.000000e+00), %690
  %693 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %691, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %694 = fadd <8 x double> %691, splat (double 1.000000e+00)
  %695 = fdiv <8 x double> %693, %694
  %696 = fmul <8 x double> %692, %695
  %697 = icmp eq <8 x i64> %575, zeroinitializer
  %698 = select <8 x i1> %697, <8 x double> %696, <8 x double> %692
  %699 = fneg <8 x double> %692
  %700 = fneg <8 x double> %694
  %701 = fmul <8 x double> %692, %700
  %702 = select <8 x i1> %697, <8 x double> %701, <8 x double> %699
  %703 = fmul <8 x double> %691, %691
  %704 = fdiv <8 x double> %703, %694
  %705 = fmul <8 x double> %692, %704
  %706 = select <8 x i1> %697, <8 x double> %705, <8 x double> zeroinitializer
  %707 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %708 = select <8 x i1> %689, <8 x double> %707, <8 x double> %698
  store <8 x double> %708, ptr %162, align 64, !tbaa !26
  %709 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %710 = select <8 x i1> %689, <8 x double> %709, <8 x double> %702
  store <8 x double> %710, ptr %163, align 64, !tbaa !26
  %711 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %712 = select <8 x i1> %689, <8 x double> %711, <8 x double> %706
  store <8 x double> %712, ptr %164, align 64, !tbaa !26
  %713 = select <8 x i1> %697, <8 x double> %691, <8 x double> zeroinitializer
  %714 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %713, <8 x double> %569, <8 x double> %555)
  %715 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %716 = select <8 x i1> %689, <8 x double> %715, <8 x double> %714
  %717 = load <8 x double>, ptr %241, align 64, !tbaa !26
  %718 = load <8 x double>, ptr %242, align 64, !tbaa !26
  %719 = fsub <8 x double> %717, %718
  %720 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %713, <8 x double> %719, <8 x double> %717)
  %721 = load <8 x double>, ptr %240, align 64, !tbaa !26
  %722 = select <8 x i1> %689, <8 x double> %721, <8 x double> %720
  store <8 x double> %722, ptr %240, align 64, !tbaa !26
  %723 = load <8 x double>, ptr %244, align 64, !tbaa !26
  %724 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %725 = fsub <8 x double> %723, %724
  %726 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %713, <8 x double> %725, <8 x double> %723)
  %727 = load <8 x double>, ptr %243, align 64, !tbaa !26
  %728 = select <8 x i1> %689, <8 x double> %727, <8 x double> %726
  store <8 x double> %728, ptr %243, align 64, !tbaa !26
  %729 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %730 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %731 = fsub <8 x double> %729, %730
  %732 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %713, <8 x double> %731, <8 x double> %729)
  %733 = load <8 x double>, ptr %246, align 64, !tbaa !26
  %734 = select <8 x i1> %689, <8 x double> %733, <8 x double> %732
  store <8 x double> %734, ptr %246, align 64, !tbaa !26
  %735 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %736 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %737 = fsub <8 x double> %735, %736
  %738 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %713, <8 x double> %737, <8 x double> %735)
  %739 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %740 = select <8 x i1> %689, <8 x double> %739, <8 x double> %738
  store <8 x double> %740, ptr %249, align 64, !tbaa !26
  %741 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %742 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %743 = fsub <8 x double> %741, %742
  %744 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %713, <8 x double> %743, <8 x double> %741)
  %745 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %746 = select <8 x i1> %689, <8 x double> %745, <8 x double> %744
  store <8 x double> %746, ptr %252, align 64, !tbaa !26
  %747 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %748 = icmp eq <8 x i64> %747, zeroinitializer
  %749 = select <8 x i1> %748, <8 x double> zeroinitializer, <8 x double> %557
  %750 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %751 = fsub <8 x double> %749, %750
  %752 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %753 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %563, <8 x double> %752, <8 x double> %562)
  %754 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %561, <8 x double> %753, <8 x double> %565)
  %755 = fdiv <8 x double> %751, %754
  %756 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %757 = load <8 x i64>, ptr %152, align 64, !tbaa !26
  %758 = or <8 x i64> %757, %756
  %759 = and <8 x i64> %758, %526
  %760 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %690, <8 x double> %755, <8 x double> %752)
  %761 = icmp eq <8 x i64> %759, zeroinitializer
  %762 = select <8 x i1> %587, <8 x i1> splat (i1 true), <8 x i1> %761
  %763 = select <8 x i1> %762, <8 x double> %716, <8 x double> %760
  store <8 x double> %763, ptr %165, align 64, !tbaa !26
  %764 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %765 = select <8 x i1> %689, <8 x double> %764, <8 x double> %751
  store <8 x double> %765, ptr %166, align 64, !tbaa !26
  %766 = xor <8 x i64> %757, splat (i64 -1)
  %767 = and <8 x i64> %756, %766
  store <8 x i64> %767, ptr %153, align 64, !tbaa !26
  %768 = load i64, ptr %156, align 8, !tbaa !20
  %769 = icmp sgt i64 %768, 0
  br i1 %769, label %770, label %1397

770:                                              ; preds = %660
  %771 = xor <8 x i64> %526, splat (i64 -1)
  br label %772

772:                                              ; preds = %770, %1365
  %773 = phi i64 [ 0, %770 ], [ %1381, %1365 ]
  %774 = load ptr, ptr %129, align 8, !tbaa !28
  %775 = getelementptr inbounds nuw %struct.Piece, ptr %774, i64 %773
  %776 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %777 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %778 = getelementptr inbounds nuw i8, ptr %775, i64 8384
  %779 = load <8 x i64>, ptr %778, align 64, !tbaa !26
  %780 = fdiv <8 x double> %776, %777
  %781 = fdiv <8 x double> splat (double 1.000000e+00), %776
  %782 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %780, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %783 = fadd <8 x double> %780, splat (double 1.000000e+00)
  %784 = fdiv <8 x double> %782, %783
  %785 = fmul <8 x double> %781, %784
  %786 = icmp eq <8 x i64> %779, zeroinitializer
  %787 = select <8 x i1> %786, <8 x double> %785, <8 x double> %781
  %788 = fneg <8 x double> %781
  %789 = fneg <8 x double> %783
  %790 = fmul <8 x double> %781, %789
  %791 = select <8 x i1> %786, <8 x double> %790, <8 x double> %788
  %792 = fmul <8 x double> %780, %780
  %793 = fdiv <8 x double> %792, %783
  %794 = fmul <8 x double> %781, %793
  %795 = select <8 x i1> %786, <8 x double> %794, <8 x double> zeroinitializer
  %796 = getelementptr inbounds nuw i8, ptr %775, i64 5632
  %797 = load <8 x double>, ptr %796, align 64, !tbaa !26
  %798 = select <8 x i1> %689, <8 x double> %797, <8 x double> %787
  store <8 x double> %798, ptr %796, align 64, !tbaa !26
  %799 = getelementptr inbounds nuw i8, ptr %775, i64 5696
  %800 = load <8 x double>, ptr %799, align 64, !tbaa !26
  %801 = select <8 x i1> %689, <8 x double> %800, <8 x double> %791
  store <8 x double> %801, ptr %799, align 64, !tbaa !26
  %802 = getelementptr inbounds nuw i8, ptr %775, i64 5760
  %803 = load <8 x double>, ptr %802, align 64, !tbaa !26
  %804 = select <8 x i1> %689, <8 x double> %803, <8 x double> %795
  store <8 x double> %804, ptr %802, align 64, !tbaa !26
  %805 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %806 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %807 = fdiv <8 x double> %805, %806
  %808 = select <8 x i1> %786, <8 x double> %807, <8 x double> zeroinitializer
  %809 = getelementptr inbounds nuw i8, ptr %775, i64 2944
  %810 = getelementptr inbounds nuw i8, ptr %775, i64 3840
  %811 = getelementptr inbounds nuw i8, ptr %775, i64 4736
  br label %1384

812:                                              ; preds = %1384
  %813 = getelementptr inbounds nuw i8, ptr %775, i64 6080
  %814 = getelementptr inbounds nuw i8, ptr %775, i64 3520
  %815 = load <8 x double>, ptr %814, align 64, !tbaa !26
  %816 = fcmp ogt <8 x double> %815, zeroinitializer
  %817 = select <8 x i1> %816, <8 x double> %815, <8 x double> zeroinitializer
  %818 = load <8 x double>, ptr %813, align 64, !tbaa !26
  %819 = select <8 x i1> %689, <8 x double> %818, <8 x double> %817
  store <8 x double> %819, ptr %813, align 64, !tbaa !26
  %820 = getelementptr inbounds nuw i8, ptr %775, i64 384
  %821 = load <8 x double>, ptr %820, align 64, !tbaa !26
  %822 = getelementptr inbounds nuw i8, ptr %775, i64 448
  %823 = load <8 x double>, ptr %822, align 64, !tbaa !26
  %824 = getelementptr inbounds nuw i8, ptr %775, i64 512
  %825 = load <8 x double>, ptr %824, align 64, !tbaa !26
  %826 = getelementptr inbounds nuw i8, ptr %775, i64 640
  %827 = load <8 x double>, ptr %826, align 64, !tbaa !26
  %828 = getelementptr inbounds nuw i8, ptr %775, i64 768
  %829 = load <8 x double>, ptr %828, align 64, !tbaa !26
  %830 = getelementptr inbounds nuw i8, ptr %775, i64 832
  %831 = getelementptr inbounds nuw i8, ptr %775, i64 1536
  %832 = load <8 x double>, ptr %831, align 64, !tbaa !26
  %833 = getelementptr inbounds nuw i8, ptr %775, i64 1600
  %834 = getelementptr inbounds nuw i8, ptr %775, i64 4672
  %835 = load <8 x double>, ptr %834, align 64, !tbaa !26
  %836 = fsub <8 x double> %835, %832
  %837 = getelementptr inbounds nuw i8, ptr %775, i64 5568
  %838 = load <8 x double>, ptr %837, align 64, !tbaa !26
  %839 = fsub <8 x double> %838, %832
  %840 = load <8 x double>, ptr %799, align 64, !tbaa !26
  %841 = load <8 x double>, ptr %802, align 64, !tbaa !26
  %842 = fmul <8 x double> %836, %840
  %843 = fmul <8 x double> %839, %841
  %844 = fmul <8 x double> %832, %840
  %845 = fmul <8 x double> %827, %844
  %846 = fmul <8 x double> %832, %841
  %847 = fmul <8 x double> %827, %846
  %848 = getelementptr inbounds nuw i8, ptr %775, i64 8528
  %849 = load ptr, ptr %848, align 16, !tbaa !45
  %850 = getelementptr inbounds nuw i8, ptr %775, i64 8536
  %851 = load ptr, ptr %850, align 8, !tbaa !56
  %852 = getelementptr inbounds nuw i8, ptr %775, i64 8616
  %853 = load ptr, ptr %852, align 8, !tbaa !47
  %854 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %855 = and <8 x i64> %854, %771
  %856 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %855)
  %857 = icmp eq i64 %856, 0
  %858 = getelementptr inbounds nuw i8, ptr %775, i64 8520
  %859 = load ptr, ptr %858, align 8, !tbaa !57
  %860 = getelementptr inbounds nuw i8, ptr %775, i64 8544
  %861 = load ptr, ptr %860, align 32, !tbaa !58
  %862 = load i64, ptr %119, align 16, !tbaa !21
  %863 = icmp sgt i64 %862, 0
  br i1 %863, label %864, label %866

864:                                              ; preds = %812
  %865 = getelementptr inbounds nuw i8, ptr %775, i64 8512
  br label %879

866:                                              ; preds = %914, %812
  %867 = fmul <8 x double> %829, %840
  %868 = fmul <8 x double> %829, %841
  %869 = getelementptr inbounds nuw i8, ptr %775, i64 8696
  %870 = load ptr, ptr %869, align 8, !tbaa !48
  %871 = getelementptr inbounds nuw i8, ptr %775, i64 8704
  %872 = load ptr, ptr %871, align 64, !tbaa !59
  %873 = load i64, ptr %120, align 8, !tbaa !22
  %874 = icmp sgt i64 %873, 0
  br i1 %874, label %875, label %948

875:                                              ; preds = %866
  %876 = getelementptr inbounds nuw i8, ptr %775, i64 8648
  %877 = getelementptr inbounds nuw i8, ptr %775, i64 8656
  %878 = getelementptr inbounds nuw i8, ptr %775, i64 8664
  br label %921

879:                                              ; preds = %864, %914
  %880 = phi i64 [ 0, %864 ], [ %918, %914 ]
  %881 = getelementptr inbounds nuw <8 x double>, ptr %849, i64 %880
  %882 = load <8 x double>, ptr %881, align 64, !tbaa !26
  %883 = getelementptr inbounds nuw <8 x double>, ptr %851, i64 %880
  %884 = load <8 x double>, ptr %883, align 64, !tbaa !26
  %885 = fsub <8 x double> %882, %884
  %886 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %808, <8 x double> %885, <8 x double> %882)
  br i1 %857, label %891, label %887

887:                                              ; preds = %879
  %888 = getelementptr inbounds nuw <8 x double>, ptr %859, i64 %880
  %889 = load <8 x double>, ptr %888, align 64, !tbaa !26
  %890 = select <8 x i1> %689, <8 x double> %889, <8 x double> %886
  br label %891

891:                                              ; preds = %887, %879
  %892 = phi <8 x double> [ %890, %887 ], [ %886, %879 ]
  %893 = getelementptr inbounds nuw <8 x double>, ptr %859, i64 %880
  store <8 x double> %892, ptr %893, align 64, !tbaa !26
  %894 = load i64, ptr %865, align 64, !tbaa !31
  %895 = icmp slt i64 %880, %894
  %896 = getelementptr inbounds nuw <8 x double>, ptr %853, i64 %880
  %897 = load <8 x double>, ptr %896, align 64, !tbaa !26
  br i1 %895, label %898, label %901

898:                                              ; preds = %891
  %899 = fmul <8 x double> %847, %884
  %900 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %845, <8 x double> %882, <8 x double> %899)
  br label %914

901:                                              ; preds = %891
  %902 = fmul <8 x double> %825, %882
  %903 = fmul <8 x double> %902, splat (double 0x3FD5555555555555)
  %904 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %823, <8 x double> splat (double 5.000000e-01), <8 x double> %903)
  %905 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %882, <8 x double> %904, <8 x double> %821)
  %906 = fmul <8 x double> %882, %905
  %907 = fmul <8 x double> %825, %884
  %908 = fmul <8 x double> %907, splat (double 0x3FD5555555555555)
  %909 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %823, <8 x double> splat (double 5.000000e-01), <8 x double> %908)
  %910 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %884, <8 x double> %909, <8 x double> %821)
  %911 = fmul <8 x double> %884, %910
  %912 = fmul <8 x double> %843, %911
  %913 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %842, <8 x double> %906, <8 x double> %912)
  br label %914

914:                                              ; preds = %901, %898
  %915 = phi <8 x double> [ %913, %901 ], [ %900, %898 ]
  %916 = fmul <8 x double> %915, %897
  %917 = getelementptr inbounds nuw <8 x double>, ptr %861, i64 %880
  store <8 x double> %916, ptr %917, align 64, !tbaa !26
  %918 = add nuw nsw i64 %880, 1
  %919 = load i64, ptr %119, align 16, !tbaa !21
  %920 = icmp slt i64 %918, %919
  br i1 %920, label %879, label %866, !llvm.loop !60

921:                                              ; preds = %875, %921
  %922 = phi i64 [ 0, %875 ], [ %923, %921 ]
  %923 = add nuw nsw i64 %922, 1
  %924 = getelementptr inbounds nuw <8 x double>, ptr %870, i64 %923
  %925 = load <8 x double>, ptr %924, align 64, !tbaa !26
  %926 = getelementptr inbounds nuw <8 x double>, ptr %870, i64 %922
  %927 = load <8 x double>, ptr %926, align 64, !tbaa !26
  %928 = fsub <8 x double> %925, %927
  %929 = load ptr, ptr %876, align 8, !tbaa !49
  %930 = getelementptr inbounds nuw <8 x double>, ptr %929, i64 %922
  %931 = load <8 x double>, ptr %930, align 64, !tbaa !26
  %932 = fmul <8 x double> %928, %931
  %933 = getelementptr inbounds nuw <8 x double>, ptr %872, i64 %923
  %934 = load <8 x double>, ptr %933, align 64, !tbaa !26
  %935 = getelementptr inbounds nuw <8 x double>, ptr %872, i64 %922
  %936 = load <8 x double>, ptr %935, align 64, !tbaa !26
  %937 = fsub <8 x double> %934, %936
  %938 = load ptr, ptr %877, align 16, !tbaa !61
  %939 = getelementptr inbounds nuw <8 x double>, ptr %938, i64 %922
  %940 = load <8 x double>, ptr %939, align 64, !tbaa !26
  %941 = fmul <8 x double> %937, %940
  %942 = fmul <8 x double> %868, %941
  %943 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %867, <8 x double> %932, <8 x double> %942)
  %944 = load ptr, ptr %878, align 8, !tbaa !62
  %945 = getelementptr inbounds nuw <8 x double>, ptr %944, i64 %922
  store <8 x double> %943, ptr %945, align 64, !tbaa !26
  %946 = load i64, ptr %120, align 8, !tbaa !22
  %947 = icmp slt i64 %923, %946
  br i1 %947, label %921, label %948, !llvm.loop !63

948:                                              ; preds = %921, %866
  %949 = getelementptr inbounds nuw i8, ptr %775, i64 1664
  %950 = load <8 x double>, ptr %949, align 64, !tbaa !26
  %951 = fcmp ogt <8 x double> %950, zeroinitializer
  %952 = bitcast <8 x i1> %951 to i8
  %953 = icmp eq i8 %952, 0
  br i1 %953, label %954, label %959

954:                                              ; preds = %948
  %955 = getelementptr inbounds nuw i8, ptr %775, i64 7552
  %956 = load <8 x double>, ptr %955, align 64, !tbaa !26
  %957 = select <8 x i1> %689, <8 x double> %956, <8 x double> zeroinitializer
  store <8 x double> %957, ptr %955, align 64, !tbaa !26
  %958 = load <8 x double>, ptr %830, align 64, !tbaa !26, !noalias !64
  br label %1068

959:                                              ; preds = %948
  %960 = load <8 x double>, ptr %831, align 64, !tbaa !26
  %961 = getelementptr inbounds nuw i8, ptr %775, i64 1728
  %962 = load <8 x double>, ptr %961, align 64, !tbaa !26
  %963 = getelementptr inbounds nuw i8, ptr %775, i64 1856
  %964 = load <8 x double>, ptr %963, align 64, !tbaa !26
  %965 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %966 = fneg <8 x double> %965
  %967 = fdiv <8 x double> %966, %962
  %968 = fcmp ogt <8 x double> %967, splat (double -7.000000e+02)
  %969 = select <8 x i1> %968, <8 x double> %967, <8 x double> splat (double -7.000000e+02)
  %970 = fcmp olt <8 x double> %969, splat (double 7.000000e+02)
  %971 = select <8 x i1> %970, <8 x double> %969, <8 x double> splat (double 7.000000e+02)
  %972 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %971, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %973 = fadd <8 x double> %972, splat (double 0xC338000000000000)
  %974 = fneg <8 x double> %973
  %975 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %974, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %971)
  %976 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %974, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %975)
  %977 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %976, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %978 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %977, <8 x double> %976, <8 x double> splat (double 0x3E5AE64567F544E4))
  %979 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %978, <8 x double> %976, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %980 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %979, <8 x double> %976, <8 x double> splat (double 0x3EC71DE3A556C734))
  %981 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %980, <8 x double> %976, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %982 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %981, <8 x double> %976, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %983 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %982, <8 x double> %976, <8 x double> splat (double 0x3F56C16C16C16C17))
  %984 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %983, <8 x double> %976, <8 x double> splat (double 0x3F81111111111111))
  %985 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %984, <8 x double> %976, <8 x double> splat (double 0x3FA5555555555555))
  %986 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %985, <8 x double> %976, <8 x double> splat (double 0x3FC5555555555555))
  %987 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %986, <8 x double> %976, <8 x double> splat (double 5.000000e-01))
  %988 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %987, <8 x double> %976, <8 x double> splat (double 1.000000e+00))
  %989 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %988, <8 x double> %976, <8 x double> splat (double 1.000000e+00))
  %990 = bitcast <8 x double> %972 to <8 x i64>
  %991 = shl <8 x i64> %990, splat (i64 52)
  %992 = bitcast <8 x double> %989 to <8 x i64>
  %993 = add <8 x i64> %991, %992
  %994 = bitcast <8 x i64> %993 to <8 x double>
  %995 = fsub <8 x double> splat (double 1.000000e+00), %994
  %996 = load <8 x double>, ptr %834, align 64, !tbaa !26
  %997 = fsub <8 x double> %996, %960
  %998 = load ptr, ptr %858, align 8, !tbaa !57
  %999 = load ptr, ptr %848, align 16, !tbaa !45
  %1000 = getelementptr inbounds nuw i8, ptr %775, i64 8560
  %1001 = load ptr, ptr %1000, align 16, !tbaa !46
  %1002 = load ptr, ptr %852, align 8, !tbaa !47
  %1003 = getelementptr inbounds nuw i8, ptr %775, i64 8552
  %1004 = load ptr, ptr %1003, align 8, !tbaa !67
  %1005 = getelementptr inbounds nuw i8, ptr %775, i64 8512
  %1006 = load i64, ptr %1005, align 64, !tbaa !31
  %1007 = load i64, ptr %119, align 16, !tbaa !21
  %1008 = icmp slt i64 %1006, %1007
  br i1 %1008, label %1009, label %1013

1009:                                             ; preds = %959
  %1010 = getelementptr inbounds nuw i8, ptr %775, i64 1792
  %1011 = load <8 x double>, ptr %1010, align 64, !tbaa !26
  %1012 = fneg <8 x double> %1011
  br label %1025

1013:                                             ; preds = %1025, %959
  %1014 = phi <8 x double> [ zeroinitializer, %959 ], [ %1056, %1025 ]
  %1015 = phi <8 x double> [ zeroinitializer, %959 ], [ %1064, %1025 ]
  %1016 = getelementptr inbounds nuw i8, ptr %775, i64 3904
  %1017 = load <8 x double>, ptr %1016, align 64, !tbaa !26
  %1018 = fsub <8 x double> %1017, %996
  %1019 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1014, <8 x double> %1018, <8 x double> %1015)
  %1020 = getelementptr inbounds nuw i8, ptr %775, i64 7552
  %1021 = load <8 x double>, ptr %830, align 64, !tbaa !26
  %1022 = fmul <8 x double> %1021, %1019
  %1023 = load <8 x double>, ptr %1020, align 64, !tbaa !26
  %1024 = select <8 x i1> %689, <8 x double> %1023, <8 x double> %1022
  store <8 x double> %1024, ptr %1020, align 64, !tbaa !26
  br label %1068

1025:                                             ; preds = %1009, %1025
  %1026 = phi <8 x double> [ zeroinitializer, %1009 ], [ %1064, %1025 ]
  %1027 = phi i64 [ %1006, %1009 ], [ %1065, %1025 ]
  %1028 = getelementptr inbounds <8 x double>, ptr %999, i64 %1027
  %1029 = load <8 x double>, ptr %1028, align 64, !tbaa !26
  %1030 = getelementptr inbounds <8 x double>, ptr %998, i64 %1027
  %1031 = load <8 x double>, ptr %1030, align 64, !tbaa !26
  %1032 = fadd <8 x double> %1029, %1031
  %1033 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1032, <8 x double> splat (double 5.000000e-01), <8 x double> %1012)
  %1034 = fmul <8 x double> %964, %1033
  %1035 = fcmp ogt <8 x double> %1034, splat (double -5.000000e+00)
  %1036 = select <8 x i1> %1035, <8 x double> %1034, <8 x double> splat (double -5.000000e+00)
  %1037 = fcmp olt <8 x double> %1036, splat (double 5.000000e+00)
  %1038 = select <8 x i1> %1037, <8 x double> %1036, <8 x double> splat (double 5.000000e+00)
  %1039 = fmul <8 x double> %1038, %1038
  %1040 = fadd <8 x double> %1039, splat (double 3.780000e+02)
  %1041 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1039, <8 x double> %1040, <8 x double> splat (double 1.732500e+04))
  %1042 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1039, <8 x double> %1041, <8 x double> splat (double 1.351350e+05))
  %1043 = fmul <8 x double> %1038, %1042
  %1044 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1039, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1045 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1039, <8 x double> %1044, <8 x double> splat (double 6.237000e+04))
  %1046 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1039, <8 x double> %1045, <8 x double> splat (double 1.351350e+05))
  %1047 = fdiv <8 x double> %1043, %1046
  %1048 = fadd <8 x double> %1047, splat (double 1.000000e+00)
  %1049 = fmul <8 x double> %950, %1048
  %1050 = getelementptr inbounds <8 x double>, ptr %1001, i64 %1027
  %1051 = load <8 x double>, ptr %1050, align 64, !tbaa !26
  %1052 = fadd <8 x double> %1051, splat (double -1.000000e+00)
  %1053 = fadd <8 x double> %1052, %1049
  %1054 = fcmp ogt <8 x double> %1053, zeroinitializer
  %1055 = select <8 x i1> %1054, <8 x double> %1053, <8 x double> zeroinitializer
  %1056 = fmul <8 x double> %995, %1055
  %1057 = fsub <8 x double> %1051, %1056
  %1058 = getelementptr inbounds <8 x double>, ptr %1004, i64 %1027
  %1059 = load <8 x double>, ptr %1058, align 64, !tbaa !26
  %1060 = select <8 x i1> %689, <8 x double> %1059, <8 x double> %1057
  store <8 x double> %1060, ptr %1058, align 64, !tbaa !26
  %1061 = getelementptr inbounds <8 x double>, ptr %1002, i64 %1027
  %1062 = load <8 x double>, ptr %1061, align 64, !tbaa !26
  %1063 = fmul <8 x double> %997, %1062
  %1064 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1056, <8 x double> %1063, <8 x double> %1026)
  %1065 = add nsw i64 %1027, 1
  %1066 = load i64, ptr %119, align 16, !tbaa !21
  %1067 = icmp slt i64 %1065, %1066
  br i1 %1067, label %1025, label %1013, !llvm.loop !68

1068:                                             ; preds = %954, %1013
  %1069 = phi <8 x double> [ %957, %954 ], [ %1024, %1013 ]
  %1070 = phi <8 x double> [ %958, %954 ], [ %1021, %1013 ]
  %1071 = load <8 x double>, ptr %809, align 64, !tbaa !26
  %1072 = load <8 x double>, ptr %810, align 64, !tbaa !26
  %1073 = fcmp olt <8 x double> %1071, %1072
  %1074 = select <8 x i1> %1073, <8 x double> %1071, <8 x double> %1072
  %1075 = load <8 x double>, ptr %775, align 64, !tbaa !26
  %1076 = fmul <8 x double> %1075, splat (double 3.000000e-01)
  %1077 = fcmp ogt <8 x double> %1074, %1076
  %1078 = select <8 x i1> %1077, <8 x double> %1074, <8 x double> %1076
  %1079 = select <8 x i1> %689, <8 x double> %1071, <8 x double> %1078
  store <8 x double> %1079, ptr %809, align 64, !tbaa !26
  %1080 = getelementptr inbounds nuw i8, ptr %775, i64 3072
  %1081 = load <8 x double>, ptr %1080, align 64, !tbaa !26, !noalias !64
  %1082 = getelementptr inbounds nuw i8, ptr %775, i64 7744
  %1083 = load <8 x double>, ptr %1082, align 64, !tbaa !26, !noalias !64
  %1084 = fmul <8 x double> %1081, %1083
  %1085 = fcmp ogt <8 x double> %1084, zeroinitializer
  %1086 = select <8 x i1> %1085, <8 x double> %1084, <8 x double> zeroinitializer
  %1087 = fcmp uge <8 x double> %1086, splat (double 1.000000e+00)
  %1088 = select <8 x i1> %1087, <8 x double> splat (double 1.000000e+00), <8 x double> %1086
  %1089 = getelementptr inbounds nuw i8, ptr %775, i64 8448
  %1090 = load <8 x i64>, ptr %1089, align 64, !tbaa !26, !noalias !64
  %1091 = load <8 x double>, ptr %167, align 64, !tbaa !26, !noalias !64
  %1092 = getelementptr inbounds nuw i8, ptr %775, i64 3200
  %1093 = load <8 x double>, ptr %1092, align 64, !tbaa !26, !noalias !64
  %1094 = icmp eq <8 x i64> %1090, zeroinitializer
  %1095 = select <8 x i1> %1094, <8 x double> %1093, <8 x double> %1091
  %1096 = getelementptr inbounds nuw i8, ptr %775, i64 3584
  %1097 = load <8 x double>, ptr %1096, align 64, !tbaa !26, !noalias !64
  %1098 = fsub <8 x double> splat (double 1.000000e+00), %1088
  %1099 = getelementptr inbounds nuw i8, ptr %775, i64 1984
  %1100 = load <8 x double>, ptr %1099, align 64, !tbaa !26, !noalias !64
  %1101 = getelementptr inbounds nuw i8, ptr %775, i64 8320
  %1102 = load <8 x i64>, ptr %1101, align 64, !tbaa !26, !noalias !64
  %1103 = fsub <8 x double> %1075, %1079
  %1104 = getelementptr inbounds nuw i8, ptr %775, i64 7808
  %1105 = load <8 x double>, ptr %1104, align 64, !tbaa !26, !noalias !64
  %1106 = fmul <8 x double> %1103, %1105
  %1107 = icmp eq <8 x i64> %1102, zeroinitializer
  %1108 = select <8 x i1> %1107, <8 x double> zeroinitializer, <8 x double> %1106
  %1109 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1098, <8 x double> %1100, <8 x double> %1108)
  %1110 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1097, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1111 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1097, <8 x double> %1110, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1112 = fdiv <8 x double> splat (double 1.000000e+00), %1111
  %1113 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1095, <8 x double> %1109, <8 x double> splat (double 1.000000e+00))
  %1114 = fdiv <8 x double> splat (double 1.000000e+00), %1113
  %1115 = load <8 x double>, ptr %168, align 64, !tbaa !26, !noalias !64
  %1116 = load <8 x double>, ptr %165, align 64, !tbaa !26, !noalias !64
  %1117 = select <8 x i1> %1094, <8 x double> %1116, <8 x double> %1115
  %1118 = fsub <8 x double> %1117, %1097
  %1119 = fmul <8 x double> %1118, %1114
  %1120 = fmul <8 x double> %1095, %1119
  %1121 = load <8 x double>, ptr %796, align 64, !tbaa !26, !noalias !64
  %1122 = getelementptr inbounds nuw i8, ptr %775, i64 3264
  %1123 = load <8 x double>, ptr %1122, align 64, !tbaa !26, !noalias !64
  %1124 = load <8 x double>, ptr %799, align 64, !tbaa !26, !noalias !64
  %1125 = getelementptr inbounds nuw i8, ptr %775, i64 4160
  %1126 = load <8 x double>, ptr %1125, align 64, !tbaa !26, !noalias !64
  %1127 = fmul <8 x double> %1124, %1126
  %1128 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1121, <8 x double> %1123, <8 x double> %1127)
  %1129 = load <8 x double>, ptr %802, align 64, !tbaa !26, !noalias !64
  %1130 = getelementptr inbounds nuw i8, ptr %775, i64 5056
  %1131 = load <8 x double>, ptr %1130, align 64, !tbaa !26, !noalias !64
  %1132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1129, <8 x double> %1131, <8 x double> %1128)
  %1133 = fdiv <8 x double> %1105, %1070
  %1134 = fcmp ule <8 x double> %1088, zeroinitializer
  %1135 = or <8 x i1> %1087, %1134
  %1136 = fmul <8 x double> %1083, %1100
  %1137 = select <8 x i1> %1135, <8 x double> zeroinitializer, <8 x double> %1136
  %1138 = select <8 x i1> %1107, <8 x double> %1137, <8 x double> %1133
  %1139 = fmul <8 x double> %1095, %1120
  %1140 = fmul <8 x double> %1114, %1139
  %1141 = fmul <8 x double> %1112, %1140
  %1142 = fmul <8 x double> %1141, %1138
  %1143 = fdiv <8 x double> %1142, %1121
  %1144 = fadd <8 x double> %1143, splat (double 1.000000e+00)
  %1145 = fdiv <8 x double> splat (double 1.000000e+00), %1144
  %1146 = getelementptr inbounds nuw i8, ptr %775, i64 3456
  %1147 = load <8 x double>, ptr %1146, align 64, !tbaa !26, !noalias !64
  %1148 = fsub <8 x double> %1120, %1147
  %1149 = load <8 x double>, ptr %813, align 64, !tbaa !26, !noalias !64
  %1150 = fsub <8 x double> %1132, %1149
  %1151 = fmul <8 x double> %1150, %1143
  %1152 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1148, <8 x double> %1112, <8 x double> %1151)
  %1153 = fmul <8 x double> %1152, %1145
  %1154 = getelementptr inbounds nuw i8, ptr %775, i64 6016
  %1155 = load <8 x double>, ptr %1154, align 64, !tbaa !26, !noalias !64
  %1156 = fcmp ule <8 x double> %1155, zeroinitializer
  %1157 = fcmp ule <8 x double> %1153, zeroinitializer
  %1158 = or <8 x i1> %1156, %1157
  %1159 = select <8 x i1> %1158, <8 x double> zeroinitializer, <8 x double> %1153
  %1160 = getelementptr inbounds nuw i8, ptr %775, i64 2176
  %1161 = load <8 x double>, ptr %1160, align 64, !tbaa !26, !noalias !64
  %1162 = fcmp ogt <8 x double> %1161, zeroinitializer
  %1163 = getelementptr inbounds nuw i8, ptr %775, i64 1024
  %1164 = load <8 x double>, ptr %1163, align 64, !tbaa !26, !noalias !64
  %1165 = bitcast <8 x i1> %1162 to i8
  %1166 = icmp eq i8 %1165, 0
  br i1 %1166, label %1179, label %1167

1167:                                             ; preds = %1068
  %1168 = getelementptr inbounds nuw i8, ptr %775, i64 3648
  %1169 = load <8 x double>, ptr %1168, align 64, !tbaa !26, !noalias !64
  %1170 = fadd <8 x double> %1119, %1169
  %1171 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1170)
  %1172 = fcmp ogt <8 x double> %1161, splat (double 1.000000e-09)
  %1173 = select <8 x i1> %1172, <8 x double> %1161, <8 x double> splat (double 1.000000e-09)
  %1174 = fdiv <8 x double> %1171, %1173
  %1175 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1174)
  %1176 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1175)
  %1177 = select <8 x i1> %1162, <8 x double> %1176, <8 x double> splat (double 1.000000e+00)
  %1178 = fmul <8 x double> %1164, %1177
  br label %1179

1179:                                             ; preds = %1068, %1167
  %1180 = phi <8 x double> [ %1178, %1167 ], [ %1164, %1068 ]
  %1181 = getelementptr inbounds nuw i8, ptr %775, i64 4096
  %1182 = load <8 x double>, ptr %1181, align 64, !tbaa !26, !noalias !64
  %1183 = getelementptr inbounds nuw i8, ptr %775, i64 4992
  %1184 = load <8 x double>, ptr %1183, align 64, !tbaa !26, !noalias !64
  %1185 = fmul <8 x double> %1129, %1184
  %1186 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1124, <8 x double> %1182, <8 x double> %1185)
  %1187 = getelementptr inbounds nuw i8, ptr %775, i64 1216
  %1188 = load <8 x double>, ptr %1187, align 64, !tbaa !26, !noalias !64
  %1189 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1188, <8 x double> %1121, <8 x double> splat (double 1.000000e+00))
  %1190 = fdiv <8 x double> splat (double 1.000000e+00), %1189
  %1191 = fmul <8 x double> %1114, %1119
  %1192 = fmul <8 x double> %1112, %1191
  %1193 = fmul <8 x double> %1192, %1145
  %1194 = select <8 x i1> %1158, <8 x double> zeroinitializer, <8 x double> %1193
  %1195 = getelementptr inbounds nuw i8, ptr %775, i64 1088
  %1196 = load <8 x double>, ptr %1195, align 64, !tbaa !26, !noalias !64
  %1197 = fmul <8 x double> %1180, splat (double 2.500000e-01)
  %1198 = fmul <8 x double> %1109, %1197
  %1199 = fneg <8 x double> %1114
  %1200 = fmul <8 x double> %1198, %1199
  %1201 = select <8 x i1> %1162, <8 x double> %1200, <8 x double> splat (double -0.000000e+00)
  %1202 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1196, <8 x double> %1194, <8 x double> %1201)
  %1203 = fadd <8 x double> %1149, %1159
  %1204 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1196, <8 x double> %1203, <8 x double> %1180)
  %1205 = fneg <8 x double> %1188
  %1206 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1205, <8 x double> %1186, <8 x double> %1204)
  %1207 = fneg <8 x double> %1095
  %1208 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1190, <8 x double> %1206, <8 x double> %1207)
  %1209 = fmul <8 x double> %1190, %1202
  %1210 = fcmp olt <8 x double> %1209, splat (double 8.000000e-01)
  %1211 = select <8 x i1> %1210, <8 x double> %1209, <8 x double> splat (double 8.000000e-01)
  %1212 = fsub <8 x double> splat (double 1.000000e+00), %1211
  %1213 = fdiv <8 x double> %1208, %1212
  %1214 = fadd <8 x double> %1095, %1213
  %1215 = getelementptr inbounds nuw i8, ptr %775, i64 1152
  %1216 = load <8 x double>, ptr %1215, align 64, !tbaa !26, !noalias !64
  %1217 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1205, <8 x double> %1186, <8 x double> %1216)
  %1218 = fmul <8 x double> %1190, %1217
  %1219 = fcmp olt <8 x double> %1214, %1218
  %1220 = select <8 x i1> %1219, <8 x double> %1214, <8 x double> %1218
  %1221 = select <8 x i1> %1094, <8 x double> %1220, <8 x double> %1091
  %1222 = fsub <8 x double> %1221, %1095
  %1223 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1194, <8 x double> %1222, <8 x double> %1159)
  %1224 = fcmp ogt <8 x double> %1223, zeroinitializer
  %1225 = select <8 x i1> %1224, <8 x double> %1223, <8 x double> zeroinitializer
  %1226 = select <8 x i1> %689, <8 x double> %1093, <8 x double> %1221
  store <8 x double> %1226, ptr %1092, align 64, !tbaa !26
  %1227 = select <8 x i1> %689, <8 x double> %1155, <8 x double> %1225
  store <8 x double> %1227, ptr %1154, align 64, !tbaa !26
  %1228 = fadd <8 x double> %1149, %1227
  %1229 = fneg <8 x double> %1124
  %1230 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1229, <8 x double> %1126, <8 x double> %1228)
  %1231 = fneg <8 x double> %1129
  %1232 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1231, <8 x double> %1131, <8 x double> %1230)
  %1233 = fdiv <8 x double> %1232, %1121
  %1234 = load <8 x double>, ptr %833, align 64, !tbaa !26, !noalias !69
  %1235 = fsub <8 x double> %1234, %1233
  %1236 = getelementptr inbounds nuw i8, ptr %775, i64 4032
  %1237 = load <8 x double>, ptr %1236, align 64, !tbaa !26, !noalias !69
  %1238 = fsub <8 x double> %1237, %1069
  %1239 = getelementptr inbounds nuw i8, ptr %775, i64 3904
  %1240 = load <8 x double>, ptr %1239, align 64, !tbaa !26, !noalias !69
  %1241 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1102)
  %1242 = icmp eq i64 %1241, 0
  br i1 %1242, label %1365, label %1243

1243:                                             ; preds = %1179
  %1244 = fcmp ogt <8 x double> %1238, %1235
  %1245 = getelementptr inbounds nuw i8, ptr %775, i64 7680
  %1246 = load <8 x double>, ptr %1245, align 64, !tbaa !26, !noalias !69
  %1247 = fcmp oeq <8 x double> %1246, zeroinitializer
  %1248 = select <8 x i1> %1247, <8 x i1> %1244, <8 x i1> zeroinitializer
  %1249 = select <8 x i1> %1248, <8 x i64> %1102, <8 x i64> zeroinitializer
  %1250 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1249)
  %1251 = icmp eq i64 %1250, 0
  br i1 %1251, label %1320, label %1252

1252:                                             ; preds = %1243
  %1253 = fsub <8 x double> %1238, %1235
  %1254 = fdiv <8 x double> %1253, %1070
  %1255 = getelementptr inbounds nuw i8, ptr %775, i64 8552
  %1256 = load ptr, ptr %1255, align 8, !tbaa !67, !noalias !69
  %1257 = load i64, ptr %119, align 16, !tbaa !21, !noalias !69
  %1258 = add nsw i64 %1257, -1
  %1259 = getelementptr inbounds <8 x double>, ptr %1256, i64 %1258
  %1260 = load <8 x double>, ptr %1259, align 64, !tbaa !26, !noalias !69
  %1261 = icmp sgt i64 %1257, 1
  br i1 %1261, label %1262, label %1312

1262:                                             ; preds = %1252
  %1263 = getelementptr inbounds nuw i8, ptr %775, i64 8512
  %1264 = load i64, ptr %1263, align 64, !tbaa !31, !noalias !69
  %1265 = getelementptr inbounds nuw i8, ptr %775, i64 8608
  br label %1266

1266:                                             ; preds = %1262, %1309
  %1267 = phi <8 x double> [ %1240, %1262 ], [ %1304, %1309 ]
  %1268 = phi i64 [ %1258, %1262 ], [ %1310, %1309 ]
  %1269 = phi <8 x double> [ %1260, %1262 ], [ %1292, %1309 ]
  %1270 = phi <8 x i64> [ %1249, %1262 ], [ %1296, %1309 ]
  %1271 = phi <8 x double> [ %1254, %1262 ], [ %1303, %1309 ]
  %1272 = icmp slt i64 %1268, %1264
  br i1 %1272, label %1273, label %1279

1273:                                             ; preds = %1266
  %1274 = load ptr, ptr %1265, align 32, !tbaa !72, !noalias !69
  %1275 = getelementptr inbounds nuw <8 x double>, ptr %1274, i64 %1268
  %1276 = load <8 x double>, ptr %1275, align 64, !tbaa !26, !noalias !69
  %1277 = load <8 x double>, ptr %831, align 64, !tbaa !26, !noalias !69
  %1278 = fmul <8 x double> %1276, %1277
  br label %1287

1279:                                             ; preds = %1266
  %1280 = load <8 x double>, ptr %834, align 64, !tbaa !26, !noalias !69
  %1281 = load <8 x double>, ptr %831, align 64, !tbaa !26, !noalias !69
  %1282 = load ptr, ptr %1265, align 32, !tbaa !72, !noalias !69
  %1283 = getelementptr inbounds nuw <8 x double>, ptr %1282, i64 %1268
  %1284 = load <8 x double>, ptr %1283, align 64, !tbaa !26, !noalias !69
  %1285 = fsub <8 x double> %1280, %1281
  %1286 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1284, <8 x double> %1285, <8 x double> %1281)
  br label %1287

1287:                                             ; preds = %1273, %1279
  %1288 = phi <8 x double> [ %1278, %1273 ], [ %1286, %1279 ]
  %1289 = getelementptr inbounds nuw <8 x double>, ptr %1256, i64 %1268
  %1290 = load <8 x double>, ptr %1289, align 64, !tbaa !26, !noalias !69
  %1291 = icmp eq <8 x i64> %1270, zeroinitializer
  %1292 = select <8 x i1> %1291, <8 x double> %1269, <8 x double> %1290
  %1293 = fsub <8 x double> %1267, %1288
  %1294 = fmul <8 x double> %1293, %1292
  %1295 = fcmp olt <8 x double> %1294, %1271
  %1296 = select <8 x i1> %1295, <8 x i64> %1270, <8 x i64> zeroinitializer
  %1297 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1296)
  %1298 = icmp eq i64 %1297, 0
  br i1 %1298, label %1312, label %1299

1299:                                             ; preds = %1287
  %1300 = fneg <8 x double> %1292
  %1301 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1300, <8 x double> %1293, <8 x double> %1271)
  %1302 = icmp eq <8 x i64> %1296, zeroinitializer
  %1303 = select <8 x i1> %1302, <8 x double> %1271, <8 x double> %1301
  %1304 = select <8 x i1> %1302, <8 x double> %1267, <8 x double> %1288
  %1305 = icmp eq i64 %1268, 1
  br i1 %1305, label %1306, label %1309

1306:                                             ; preds = %1299
  %1307 = load <8 x double>, ptr %1256, align 64, !tbaa !26, !noalias !69
  %1308 = select <8 x i1> %1302, <8 x double> %1292, <8 x double> %1307
  br label %1312

1309:                                             ; preds = %1299
  %1310 = add nsw i64 %1268, -1
  %1311 = icmp sgt i64 %1268, 1
  br i1 %1311, label %1266, label %1312, !llvm.loop !73

1312:                                             ; preds = %1309, %1287, %1306, %1252
  %1313 = phi <8 x double> [ %1254, %1252 ], [ %1303, %1306 ], [ %1271, %1287 ], [ %1303, %1309 ]
  %1314 = phi <8 x double> [ %1240, %1252 ], [ %1304, %1306 ], [ %1267, %1287 ], [ %1304, %1309 ]
  %1315 = phi <8 x double> [ %1260, %1252 ], [ %1308, %1306 ], [ %1292, %1287 ], [ %1292, %1309 ]
  %1316 = fdiv <8 x double> %1313, %1315
  %1317 = fsub <8 x double> %1314, %1316
  %1318 = icmp eq <8 x i64> %1249, zeroinitializer
  %1319 = select <8 x i1> %1318, <8 x double> %1240, <8 x double> %1317
  br label %1320

1320:                                             ; preds = %1312, %1243
  %1321 = phi <8 x double> [ %1319, %1312 ], [ %1240, %1243 ]
  %1322 = getelementptr inbounds nuw i8, ptr %775, i64 2560
  %1323 = load <8 x double>, ptr %1322, align 64, !tbaa !26, !noalias !69
  %1324 = getelementptr inbounds nuw i8, ptr %775, i64 2624
  %1325 = load <8 x double>, ptr %1324, align 64, !tbaa !26, !noalias !69
  %1326 = getelementptr inbounds nuw i8, ptr %775, i64 2688
  %1327 = load <8 x double>, ptr %1326, align 64, !tbaa !26, !noalias !69
  %1328 = getelementptr inbounds nuw i8, ptr %775, i64 2752
  %1329 = load <8 x double>, ptr %1328, align 64, !tbaa !26, !noalias !69
  %1330 = fmul <8 x double> %1075, splat (double 2.000000e-05)
  br label %1331

1331:                                             ; preds = %1320, %1331
  %1332 = phi <8 x i64> [ splat (i64 -1), %1320 ], [ %1349, %1331 ]
  %1333 = phi i32 [ 0, %1320 ], [ %1350, %1331 ]
  %1334 = phi <8 x double> [ %1079, %1320 ], [ %1346, %1331 ]
  %1335 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1334, <8 x double> %1329, <8 x double> %1327)
  %1336 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1334, <8 x double> %1335, <8 x double> %1325)
  %1337 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1334, <8 x double> %1336, <8 x double> %1323)
  %1338 = fsub <8 x double> %1337, %1321
  %1339 = fmul <8 x double> %1334, splat (double 3.000000e+00)
  %1340 = fmul <8 x double> %1339, %1329
  %1341 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1327, <8 x double> splat (double 2.000000e+00), <8 x double> %1340)
  %1342 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1334, <8 x double> %1341, <8 x double> %1325)
  %1343 = fdiv <8 x double> %1338, %1342
  %1344 = fsub <8 x double> %1334, %1343
  %1345 = icmp eq <8 x i64> %1332, zeroinitializer
  %1346 = select <8 x i1> %1345, <8 x double> %1334, <8 x double> %1344
  %1347 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1343)
  %1348 = fcmp oge <8 x double> %1347, %1330
  %1349 = select <8 x i1> %1348, <8 x i64> %1332, <8 x i64> zeroinitializer
  %1350 = add nuw nsw i32 %1333, 1
  %1351 = icmp samesign ult i32 %1333, 3
  %1352 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1349)
  %1353 = icmp ne i64 %1352, 0
  %1354 = select i1 %1351, i1 %1353, i1 false
  br i1 %1354, label %1331, label %1355, !llvm.loop !74

1355:                                             ; preds = %1331
  %1356 = fmul <8 x double> %1075, splat (double 2.800000e-01)
  %1357 = fcmp ogt <8 x double> %1346, %1356
  %1358 = select <8 x i1> %1357, <8 x double> %1346, <8 x double> %1356
  %1359 = fcmp olt <8 x double> %1358, %1075
  %1360 = select <8 x i1> %1359, <8 x double> %1358, <8 x double> %1075
  %1361 = select <8 x i1> %1107, <8 x double> %1079, <8 x double> %1360
  %1362 = fcmp olt <8 x double> %1238, %1235
  %1363 = select <8 x i1> %1107, <8 x i1> splat (i1 true), <8 x i1> %1362
  %1364 = select <8 x i1> %1363, <8 x double> %1238, <8 x double> %1235
  br label %1365

1365:                                             ; preds = %1179, %1355
  %1366 = phi <8 x double> [ %1364, %1355 ], [ %1238, %1179 ]
  %1367 = phi <8 x double> [ %1361, %1355 ], [ %1079, %1179 ]
  %1368 = phi <8 x double> [ %1321, %1355 ], [ %1240, %1179 ]
  %1369 = fsub <8 x double> %1235, %1366
  %1370 = select <8 x i1> %689, <8 x double> %1123, <8 x double> %1233
  store <8 x double> %1370, ptr %1122, align 64, !tbaa !26
  %1371 = select <8 x i1> %689, <8 x double> %1081, <8 x double> %1369
  store <8 x double> %1371, ptr %1080, align 64, !tbaa !26
  %1372 = getelementptr inbounds nuw i8, ptr %775, i64 3136
  %1373 = load <8 x double>, ptr %1372, align 64, !tbaa !26
  %1374 = select <8 x i1> %689, <8 x double> %1373, <8 x double> %1366
  store <8 x double> %1374, ptr %1372, align 64, !tbaa !26
  %1375 = getelementptr inbounds nuw i8, ptr %775, i64 3008
  %1376 = and <8 x i64> %1102, %526
  %1377 = load <8 x double>, ptr %1375, align 64, !tbaa !26
  %1378 = icmp eq <8 x i64> %1376, zeroinitializer
  %1379 = select <8 x i1> %1378, <8 x double> %1377, <8 x double> %1368
  store <8 x double> %1379, ptr %1375, align 64, !tbaa !26
  %1380 = select <8 x i1> %1378, <8 x double> %1079, <8 x double> %1367
  store <8 x double> %1380, ptr %809, align 64, !tbaa !26
  %1381 = add nuw nsw i64 %773, 1
  %1382 = load i64, ptr %156, align 8, !tbaa !20
  %1383 = icmp slt i64 %1381, %1382
  br i1 %1383, label %772, label %1397, !llvm.loop !75

1384:                                             ; preds = %772, %1384
  %1385 = phi i64 [ 0, %772 ], [ %1395, %1384 ]
  %1386 = getelementptr inbounds nuw [14 x <8 x double>], ptr %809, i64 0, i64 %1385
  %1387 = getelementptr inbounds nuw [14 x <8 x double>], ptr %810, i64 0, i64 %1385
  %1388 = load <8 x double>, ptr %1387, align 64, !tbaa !26
  %1389 = getelementptr inbounds nuw [14 x <8 x double>], ptr %811, i64 0, i64 %1385
  %1390 = load <8 x double>, ptr %1389, align 64, !tbaa !26
  %1391 = fsub <8 x double> %1388, %1390
  %1392 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %808, <8 x double> %1391, <8 x double> %1388)
  %1393 = load <8 x double>, ptr %1386, align 64, !tbaa !26
  %1394 = select <8 x i1> %689, <8 x double> %1393, <8 x double> %1392
  store <8 x double> %1394, ptr %1386, align 64, !tbaa !26
  %1395 = add nuw nsw i64 %1385, 1
  %1396 = icmp eq i64 %1395, 13
  br i1 %1396, label %812, label %1384, !llvm.loop !76

1397:                                             ; preds = %1365, %660
  %1398 = phi i64 [ %768, %660 ], [ %1382, %1365 ]
  %1399 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %1400 = fcmp ogt <8 x double> %1399, zeroinitializer
  %1401 = select <8 x i1> %1400, <8 x i64> %526, <8 x i64> zeroinitializer
  %1402 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1401)
  %1403 = icmp eq i64 %1402, 0
  br i1 %1403, label %1487, label %1404

1404:                                             ; preds = %1397
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1401, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1405 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %1406 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %1407 = fadd <8 x double> %1405, %1406
  store <8 x double> %1407, ptr %9, align 64, !tbaa !26
  %1408 = load ptr, ptr %169, align 8
  %1409 = load ptr, ptr %171, align 8
  %1410 = load ptr, ptr %172, align 8
  br label %1411

1411:                                             ; preds = %1479, %1404
  %1412 = phi i64 [ 0, %1404 ], [ %1480, %1479 ]
  %1413 = getelementptr inbounds nuw i64, ptr %7, i64 %1412
  %1414 = load i64, ptr %1413, align 8, !tbaa !30
  %1415 = icmp eq i64 %1414, 0
  br i1 %1415, label %1479, label %1416

1416:                                             ; preds = %1411
  %1417 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %1412
  %1418 = load i64, ptr %1417, align 8, !tbaa !30
  %1419 = shl nsw i64 %1418, 1
  %1420 = getelementptr inbounds i64, ptr %1408, i64 %1419
  %1421 = load i64, ptr %1420, align 8, !tbaa !30
  %1422 = shl nuw nsw i64 %1412, 1
  %1423 = getelementptr inbounds nuw [16 x i64], ptr %170, i64 0, i64 %1422
  %1424 = getelementptr inbounds i64, ptr %1410, i64 %1419
  %1425 = load i64, ptr %1424, align 8, !tbaa !30
  %1426 = shl nsw i64 %1425, 4
  %1427 = getelementptr inbounds i8, ptr %1409, i64 %1426
  %1428 = getelementptr inbounds nuw double, ptr %9, i64 %1412
  %1429 = load double, ptr %1428, align 8, !tbaa !41
  %1430 = load i64, ptr %1423, align 8, !tbaa !30
  %1431 = getelementptr i8, ptr %1427, i64 -16
  %1432 = icmp sgt i64 %1430, 0
  br i1 %1432, label %1433, label %1442

1433:                                             ; preds = %1416, %1439
  %1434 = phi i64 [ %1440, %1439 ], [ %1430, %1416 ]
  %1435 = shl i64 %1434, 4
  %1436 = getelementptr i8, ptr %1431, i64 %1435
  %1437 = load double, ptr %1436, align 8, !tbaa !41
  %1438 = fcmp ugt double %1429, %1437
  br i1 %1438, label %1442, label %1439

1439:                                             ; preds = %1433
  %1440 = add nsw i64 %1434, -1
  store i64 %1440, ptr %1423, align 8, !tbaa !30
  %1441 = icmp sgt i64 %1434, 1
  br i1 %1441, label %1433, label %1442, !llvm.loop !77

1442:                                             ; preds = %1439, %1433, %1416
  %1443 = phi i64 [ %1430, %1416 ], [ 0, %1439 ], [ %1434, %1433 ]
  %1444 = icmp slt i64 %1443, %1421
  br i1 %1444, label %1445, label %1454

1445:                                             ; preds = %1442, %1451
  %1446 = phi i64 [ %1452, %1451 ], [ %1443, %1442 ]
  %1447 = shl nsw i64 %1446, 4
  %1448 = getelementptr inbounds i8, ptr %1427, i64 %1447
  %1449 = load double, ptr %1448, align 8, !tbaa !41
  %1450 = fcmp ule double %1429, %1449
  br i1 %1450, label %1459, label %1451

1451:                                             ; preds = %1445
  %1452 = add i64 %1446, 1
  store i64 %1452, ptr %1423, align 8, !tbaa !30
  %1453 = icmp eq i64 %1452, %1421
  br i1 %1453, label %1454, label %1445, !llvm.loop !78

1454:                                             ; preds = %1451, %1442
  %1455 = shl i64 %1421, 4
  %1456 = getelementptr i8, ptr %1427, i64 %1455
  %1457 = getelementptr i8, ptr %1456, i64 -8
  %1458 = load double, ptr %1457, align 8, !tbaa !41
  br label %1476

1459:                                             ; preds = %1445
  %1460 = shl nsw i64 %1446, 1
  %1461 = or disjoint i64 %1460, 1
  %1462 = getelementptr inbounds double, ptr %1427, i64 %1461
  %1463 = load double, ptr %1462, align 8, !tbaa !41
  %1464 = icmp sgt i64 %1446, 0
  br i1 %1464, label %1465, label %1476

1465:                                             ; preds = %1459
  %1466 = getelementptr inbounds nuw i8, ptr %1427, i64 %1447
  %1467 = getelementptr i8, ptr %1466, i64 -8
  %1468 = load double, ptr %1467, align 8, !tbaa !41
  %1469 = getelementptr i8, ptr %1466, i64 -16
  %1470 = load double, ptr %1469, align 8, !tbaa !41
  %1471 = fsub double %1429, %1470
  %1472 = fsub double %1449, %1470
  %1473 = fdiv double %1471, %1472
  %1474 = fsub double %1463, %1468
  %1475 = tail call double @llvm.fmuladd.f64(double %1473, double %1474, double %1468)
  br label %1476

1476:                                             ; preds = %1465, %1459, %1454
  %1477 = phi double [ %1475, %1465 ], [ %1463, %1459 ], [ %1458, %1454 ]
  %1478 = getelementptr inbounds nuw double, ptr %8, i64 %1412
  store double %1477, ptr %1478, align 8, !tbaa !41
  br label %1479

1479:                                             ; preds = %1476, %1411
  %1480 = add nuw nsw i64 %1412, 1
  %1481 = icmp eq i64 %1480, 8
  br i1 %1481, label %1482, label %1411, !llvm.loop !79

1482:                                             ; preds = %1479
  %1483 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1484 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %1485 = icmp eq <8 x i64> %1401, zeroinitializer
  %1486 = select <8 x i1> %1485, <8 x double> %1484, <8 x double> %1483
  store <8 x double> %1486, ptr %165, align 64, !tbaa !26
  br label %1487

1487:                                             ; preds = %1397, %1482, %524
  %1488 = phi i64 [ %1398, %1397 ], [ %1398, %1482 ], [ %529, %524 ]
  %1489 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %1490 = icmp eq <8 x i64> %526, zeroinitializer
  %1491 = select <8 x i1> %1490, <8 x double> %1489, <8 x double> zeroinitializer
  store <8 x double> %1491, ptr %173, align 64, !tbaa !26
  %1492 = icmp sgt i64 %1488, 0
  br i1 %1492, label %1495, label %1493

1493:                                             ; preds = %1487
  %1494 = load <8 x double>, ptr %175, align 64, !tbaa !26
  br label %2349

1495:                                             ; preds = %1487
  %1496 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %1497 = xor <8 x i64> %526, splat (i64 -1)
  %1498 = and <8 x i64> %1496, %1497
  %1499 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1498)
  %1500 = icmp eq i64 %1499, 0
  %1501 = icmp eq <8 x i64> %1498, zeroinitializer
  br label %1505

1502:                                             ; preds = %2341
  %1503 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %1504 = icmp sgt i64 %2345, 0
  br i1 %1504, label %2355, label %2349

1505:                                             ; preds = %1495, %2341
  %1506 = phi i64 [ 0, %1495 ], [ %2344, %2341 ]
  %1507 = load ptr, ptr %129, align 8, !tbaa !28
  %1508 = getelementptr inbounds nuw %struct.Piece, ptr %1507, i64 %1506
  br i1 %1500, label %1509, label %1536

1509:                                             ; preds = %1505
  %1510 = getelementptr inbounds nuw i8, ptr %1508, i64 8448
  %1511 = load <8 x i64>, ptr %1510, align 64, !tbaa !26
  %1512 = getelementptr inbounds nuw i8, ptr %1508, i64 3072
  %1513 = load <8 x double>, ptr %1512, align 64, !tbaa !26
  %1514 = getelementptr inbounds nuw i8, ptr %1508, i64 7744
  %1515 = load <8 x double>, ptr %1514, align 64, !tbaa !26
  %1516 = getelementptr inbounds nuw i8, ptr %1508, i64 5696
  %1517 = load <8 x double>, ptr %1516, align 64, !tbaa !26
  %1518 = getelementptr inbounds nuw i8, ptr %1508, i64 5760
  %1519 = load <8 x double>, ptr %1518, align 64, !tbaa !26
  %1520 = getelementptr inbounds nuw i8, ptr %1508, i64 8320
  %1521 = load <8 x i64>, ptr %1520, align 64, !tbaa !26
  %1522 = getelementptr inbounds nuw i8, ptr %1508, i64 1984
  %1523 = load <8 x double>, ptr %1522, align 64, !tbaa !26
  %1524 = load <8 x double>, ptr %1508, align 64, !tbaa !26
  %1525 = getelementptr inbounds nuw i8, ptr %1508, i64 2944
  %1526 = load <8 x double>, ptr %1525, align 64, !tbaa !26
  %1527 = getelementptr inbounds nuw i8, ptr %1508, i64 7808
  %1528 = load <8 x double>, ptr %1527, align 64, !tbaa !26
  %1529 = getelementptr inbounds nuw i8, ptr %1508, i64 5632
  %1530 = load <8 x double>, ptr %1529, align 64, !tbaa !26
  %1531 = getelementptr inbounds nuw i8, ptr %1508, i64 6016
  %1532 = load <8 x double>, ptr %1531, align 64, !tbaa !26
  %1533 = fmul <8 x double> %1513, %1515
  %1534 = fsub <8 x double> %1524, %1526
  %1535 = fmul <8 x double> %1534, %1528
  br label %1689

1536:                                             ; preds = %1505
  %1537 = getelementptr inbounds nuw i8, ptr %1508, i64 3200
  %1538 = getelementptr inbounds nuw i8, ptr %1508, i64 3072
  %1539 = load <8 x double>, ptr %1538, align 64, !tbaa !26, !noalias !80
  %1540 = getelementptr inbounds nuw i8, ptr %1508, i64 7744
  %1541 = load <8 x double>, ptr %1540, align 64, !tbaa !26, !noalias !80
  %1542 = fmul <8 x double> %1539, %1541
  %1543 = fcmp ogt <8 x double> %1542, zeroinitializer
  %1544 = select <8 x i1> %1543, <8 x double> %1542, <8 x double> zeroinitializer
  %1545 = fcmp uge <8 x double> %1544, splat (double 1.000000e+00)
  %1546 = select <8 x i1> %1545, <8 x double> splat (double 1.000000e+00), <8 x double> %1544
  %1547 = getelementptr inbounds nuw i8, ptr %1508, i64 8448
  %1548 = load <8 x i64>, ptr %1547, align 64, !tbaa !26, !noalias !80
  %1549 = load <8 x double>, ptr %167, align 64, !tbaa !26, !noalias !80
  %1550 = load <8 x double>, ptr %1537, align 64, !tbaa !26, !noalias !80
  %1551 = icmp eq <8 x i64> %1548, zeroinitializer
  %1552 = select <8 x i1> %1551, <8 x double> %1550, <8 x double> %1549
  %1553 = getelementptr inbounds nuw i8, ptr %1508, i64 3584
  %1554 = load <8 x double>, ptr %1553, align 64, !tbaa !26, !noalias !80
  %1555 = fsub <8 x double> splat (double 1.000000e+00), %1546
  %1556 = getelementptr inbounds nuw i8, ptr %1508, i64 1984
  %1557 = load <8 x double>, ptr %1556, align 64, !tbaa !26, !noalias !80
  %1558 = getelementptr inbounds nuw i8, ptr %1508, i64 8320
  %1559 = load <8 x i64>, ptr %1558, align 64, !tbaa !26, !noalias !80
  %1560 = load <8 x double>, ptr %1508, align 64, !tbaa !26, !noalias !80
  %1561 = getelementptr inbounds nuw i8, ptr %1508, i64 2944
  %1562 = load <8 x double>, ptr %1561, align 64, !tbaa !26, !noalias !80
  %1563 = fsub <8 x double> %1560, %1562
  %1564 = getelementptr inbounds nuw i8, ptr %1508, i64 7808
  %1565 = load <8 x double>, ptr %1564, align 64, !tbaa !26, !noalias !80
  %1566 = fmul <8 x double> %1563, %1565
  %1567 = icmp eq <8 x i64> %1559, zeroinitializer
  %1568 = select <8 x i1> %1567, <8 x double> zeroinitializer, <8 x double> %1566
  %1569 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1555, <8 x double> %1557, <8 x double> %1568)
  %1570 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1554, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1571 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1554, <8 x double> %1570, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1572 = fdiv <8 x double> splat (double 1.000000e+00), %1571
  %1573 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1552, <8 x double> %1569, <8 x double> splat (double 1.000000e+00))
  %1574 = fdiv <8 x double> splat (double 1.000000e+00), %1573
  %1575 = load <8 x double>, ptr %168, align 64, !tbaa !26, !noalias !80
  %1576 = load <8 x double>, ptr %165, align 64, !tbaa !26, !noalias !80
  %1577 = select <8 x i1> %1551, <8 x double> %1576, <8 x double> %1575
  %1578 = fsub <8 x double> %1577, %1554
  %1579 = fmul <8 x double> %1578, %1574
  %1580 = fmul <8 x double> %1552, %1579
  %1581 = getelementptr inbounds nuw i8, ptr %1508, i64 5632
  %1582 = load <8 x double>, ptr %1581, align 64, !tbaa !26, !noalias !80
  %1583 = getelementptr inbounds nuw i8, ptr %1508, i64 3264
  %1584 = load <8 x double>, ptr %1583, align 64, !tbaa !26, !noalias !80
  %1585 = getelementptr inbounds nuw i8, ptr %1508, i64 5696
  %1586 = load <8 x double>, ptr %1585, align 64, !tbaa !26, !noalias !80
  %1587 = getelementptr inbounds nuw i8, ptr %1508, i64 4160
  %1588 = load <8 x double>, ptr %1587, align 64, !tbaa !26, !noalias !80
  %1589 = fmul <8 x double> %1586, %1588
  %1590 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1582, <8 x double> %1584, <8 x double> %1589)
  %1591 = getelementptr inbounds nuw i8, ptr %1508, i64 5760
  %1592 = load <8 x double>, ptr %1591, align 64, !tbaa !26, !noalias !80
  %1593 = getelementptr inbounds nuw i8, ptr %1508, i64 5056
  %1594 = load <8 x double>, ptr %1593, align 64, !tbaa !26, !noalias !80
  %1595 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1592, <8 x double> %1594, <8 x double> %1590)
  %1596 = getelementptr inbounds nuw i8, ptr %1508, i64 832
  %1597 = load <8 x double>, ptr %1596, align 64, !tbaa !26, !noalias !80
  %1598 = fdiv <8 x double> %1565, %1597
  %1599 = fcmp ule <8 x double> %1546, zeroinitializer
  %1600 = or <8 x i1> %1545, %1599
  %1601 = fmul <8 x double> %1541, %1557
  %1602 = select <8 x i1> %1600, <8 x double> zeroinitializer, <8 x double> %1601
  %1603 = select <8 x i1> %1567, <8 x double> %1602, <8 x double> %1598
  %1604 = fmul <8 x double> %1552, %1580
  %1605 = fmul <8 x double> %1574, %1604
  %1606 = fmul <8 x double> %1572, %1605
  %1607 = fmul <8 x double> %1606, %1603
  %1608 = fdiv <8 x double> %1607, %1582
  %1609 = fadd <8 x double> %1608, splat (double 1.000000e+00)
  %1610 = fdiv <8 x double> splat (double 1.000000e+00), %1609
  %1611 = getelementptr inbounds nuw i8, ptr %1508, i64 3456
  %1612 = load <8 x double>, ptr %1611, align 64, !tbaa !26, !noalias !80
  %1613 = fsub <8 x double> %1580, %1612
  %1614 = getelementptr inbounds nuw i8, ptr %1508, i64 6080
  %1615 = load <8 x double>, ptr %1614, align 64, !tbaa !26, !noalias !80
  %1616 = fsub <8 x double> %1595, %1615
  %1617 = fmul <8 x double> %1616, %1608
  %1618 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1613, <8 x double> %1572, <8 x double> %1617)
  %1619 = fmul <8 x double> %1618, %1610
  %1620 = getelementptr inbounds nuw i8, ptr %1508, i64 6016
  %1621 = load <8 x double>, ptr %1620, align 64, !tbaa !26, !noalias !80
  %1622 = fcmp ule <8 x double> %1621, zeroinitializer
  %1623 = fcmp ule <8 x double> %1619, zeroinitializer
  %1624 = or <8 x i1> %1622, %1623
  %1625 = select <8 x i1> %1624, <8 x double> zeroinitializer, <8 x double> %1619
  %1626 = getelementptr inbounds nuw i8, ptr %1508, i64 2176
  %1627 = load <8 x double>, ptr %1626, align 64, !tbaa !26, !noalias !80
  %1628 = fcmp ogt <8 x double> %1627, zeroinitializer
  %1629 = getelementptr inbounds nuw i8, ptr %1508, i64 1024
  %1630 = load <8 x double>, ptr %1629, align 64, !tbaa !26, !noalias !80
  %1631 = bitcast <8 x i1> %1628 to i8
  %1632 = icmp eq i8 %1631, 0
  br i1 %1632, label %1645, label %1633

1633:                                             ; preds = %1536
  %1634 = getelementptr inbounds nuw i8, ptr %1508, i64 3648
  %1635 = load <8 x double>, ptr %1634, align 64, !tbaa !26, !noalias !80
  %1636 = fadd <8 x double> %1579, %1635
  %1637 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1636)
  %1638 = fcmp ogt <8 x double> %1627, splat (double 1.000000e-09)
  %1639 = select <8 x i1> %1638, <8 x double> %1627, <8 x double> splat (double 1.000000e-09)
  %1640 = fdiv <8 x double> %1637, %1639
  %1641 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1640)
  %1642 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1641)
  %1643 = select <8 x i1> %1628, <8 x double> %1642, <8 x double> splat (double 1.000000e+00)
  %1644 = fmul <8 x double> %1630, %1643
  br label %1645

1645:                                             ; preds = %1633, %1536
  %1646 = phi <8 x double> [ %1644, %1633 ], [ %1630, %1536 ]
  %1647 = getelementptr inbounds nuw i8, ptr %1508, i64 4096
  %1648 = load <8 x double>, ptr %1647, align 64, !tbaa !26, !noalias !80
  %1649 = getelementptr inbounds nuw i8, ptr %1508, i64 4992
  %1650 = load <8 x double>, ptr %1649, align 64, !tbaa !26, !noalias !80
  %1651 = fmul <8 x double> %1592, %1650
  %1652 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1586, <8 x double> %1648, <8 x double> %1651)
  %1653 = getelementptr inbounds nuw i8, ptr %1508, i64 1216
  %1654 = load <8 x double>, ptr %1653, align 64, !tbaa !26, !noalias !80
  %1655 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1654, <8 x double> %1582, <8 x double> splat (double 1.000000e+00))
  %1656 = fdiv <8 x double> splat (double 1.000000e+00), %1655
  %1657 = fmul <8 x double> %1574, %1579
  %1658 = fmul <8 x double> %1572, %1657
  %1659 = fmul <8 x double> %1658, %1610
  %1660 = select <8 x i1> %1624, <8 x double> zeroinitializer, <8 x double> %1659
  %1661 = getelementptr inbounds nuw i8, ptr %1508, i64 1088
  %1662 = load <8 x double>, ptr %1661, align 64, !tbaa !26, !noalias !80
  %1663 = fmul <8 x double> %1646, splat (double 2.500000e-01)
  %1664 = fmul <8 x double> %1569, %1663
  %1665 = fneg <8 x double> %1574
  %1666 = fmul <8 x double> %1664, %1665
  %1667 = select <8 x i1> %1628, <8 x double> %1666, <8 x double> splat (double -0.000000e+00)
  %1668 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1662, <8 x double> %1660, <8 x double> %1667)
  %1669 = fadd <8 x double> %1615, %1625
  %1670 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1662, <8 x double> %1669, <8 x double> %1646)
  %1671 = fneg <8 x double> %1654
  %1672 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1671, <8 x double> %1652, <8 x double> %1670)
  %1673 = fneg <8 x double> %1552
  %1674 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1656, <8 x double> %1672, <8 x double> %1673)
  %1675 = fmul <8 x double> %1656, %1668
  %1676 = fcmp olt <8 x double> %1675, splat (double 8.000000e-01)
  %1677 = select <8 x i1> %1676, <8 x double> %1675, <8 x double> splat (double 8.000000e-01)
  %1678 = fsub <8 x double> splat (double 1.000000e+00), %1677
  %1679 = fdiv <8 x double> %1674, %1678
  %1680 = fadd <8 x double> %1552, %1679
  %1681 = getelementptr inbounds nuw i8, ptr %1508, i64 1152
  %1682 = load <8 x double>, ptr %1681, align 64, !tbaa !26, !noalias !80
  %1683 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1671, <8 x double> %1652, <8 x double> %1682)
  %1684 = fmul <8 x double> %1656, %1683
  %1685 = fcmp olt <8 x double> %1680, %1684
  %1686 = select <8 x i1> %1685, <8 x double> %1680, <8 x double> %1684
  %1687 = select <8 x i1> %1551, <8 x double> %1686, <8 x double> %1549
  %1688 = select <8 x i1> %1501, <8 x double> %1550, <8 x double> %1687
  store <8 x double> %1688, ptr %1537, align 64, !tbaa !26
  br label %1689

1689:                                             ; preds = %1509, %1645
  %1690 = phi <8 x double> [ %1535, %1509 ], [ %1566, %1645 ]
  %1691 = phi <8 x double> [ %1534, %1509 ], [ %1563, %1645 ]
  %1692 = phi <8 x double> [ %1533, %1509 ], [ %1542, %1645 ]
  %1693 = phi <8 x double> [ %1532, %1509 ], [ %1621, %1645 ]
  %1694 = phi <8 x double> [ %1530, %1509 ], [ %1582, %1645 ]
  %1695 = phi <8 x double> [ %1526, %1509 ], [ %1562, %1645 ]
  %1696 = phi <8 x double> [ %1523, %1509 ], [ %1557, %1645 ]
  %1697 = phi <8 x i64> [ %1521, %1509 ], [ %1559, %1645 ]
  %1698 = phi <8 x double> [ %1519, %1509 ], [ %1592, %1645 ]
  %1699 = phi <8 x double> [ %1517, %1509 ], [ %1586, %1645 ]
  %1700 = phi <8 x i64> [ %1511, %1509 ], [ %1548, %1645 ]
  %1701 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %1702 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %1703 = icmp eq <8 x i64> %1700, zeroinitializer
  %1704 = select <8 x i1> %1703, <8 x double> %1702, <8 x double> %1701
  %1705 = getelementptr inbounds nuw i8, ptr %1508, i64 5888
  store <8 x double> %1704, ptr %1705, align 64, !tbaa !26
  %1706 = fcmp ogt <8 x double> %1692, zeroinitializer
  %1707 = select <8 x i1> %1706, <8 x double> %1692, <8 x double> zeroinitializer
  %1708 = fcmp olt <8 x double> %1707, splat (double 1.000000e+00)
  %1709 = select <8 x i1> %1708, <8 x double> %1707, <8 x double> splat (double 1.000000e+00)
  %1710 = getelementptr inbounds nuw i8, ptr %1508, i64 2112
  %1711 = load <8 x double>, ptr %1710, align 64, !tbaa !26
  %1712 = fmul <8 x double> %1709, splat (double 4.180000e+03)
  %1713 = getelementptr inbounds nuw i8, ptr %1508, i64 896
  %1714 = load <8 x double>, ptr %1713, align 64, !tbaa !26
  %1715 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1712, <8 x double> %1714, <8 x double> %1711)
  %1716 = getelementptr inbounds nuw i8, ptr %1508, i64 5696
  %1717 = getelementptr inbounds nuw i8, ptr %1508, i64 4480
  %1718 = load <8 x double>, ptr %1717, align 64, !tbaa !26
  %1719 = getelementptr inbounds nuw i8, ptr %1508, i64 5760
  %1720 = getelementptr inbounds nuw i8, ptr %1508, i64 5376
  %1721 = load <8 x double>, ptr %1720, align 64, !tbaa !26
  %1722 = fmul <8 x double> %1698, %1721
  %1723 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1699, <8 x double> %1718, <8 x double> %1722)
  %1724 = getelementptr inbounds nuw i8, ptr %1508, i64 8320
  %1725 = fcmp ule <8 x double> %1711, zeroinitializer
  %1726 = getelementptr inbounds nuw i8, ptr %1508, i64 7296
  store <8 x double> %1709, ptr %1726, align 64, !tbaa !26
  %1727 = fsub <8 x double> splat (double 1.000000e+00), %1709
  %1728 = getelementptr inbounds nuw i8, ptr %1508, i64 2944
  %1729 = icmp eq <8 x i64> %1697, zeroinitializer
  %1730 = select <8 x i1> %1729, <8 x double> zeroinitializer, <8 x double> %1690
  %1731 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1696, <8 x double> %1730)
  %1732 = getelementptr inbounds nuw i8, ptr %1508, i64 8256
  store <8 x double> %1731, ptr %1732, align 64, !tbaa !26
  %1733 = getelementptr inbounds nuw i8, ptr %1508, i64 5632
  %1734 = fmul <8 x double> %1715, %1694
  %1735 = icmp eq <8 x i64> %1697, splat (i64 -1)
  %1736 = select <8 x i1> %1725, <8 x i1> splat (i1 true), <8 x i1> %1735
  %1737 = select <8 x i1> %1736, <8 x double> zeroinitializer, <8 x double> %1734
  %1738 = getelementptr inbounds nuw i8, ptr %1508, i64 7360
  store <8 x double> %1737, ptr %1738, align 64, !tbaa !26
  %1739 = fmul <8 x double> %1715, %1723
  %1740 = select <8 x i1> %1736, <8 x double> zeroinitializer, <8 x double> %1739
  %1741 = getelementptr inbounds nuw i8, ptr %1508, i64 7424
  store <8 x double> %1740, ptr %1741, align 64, !tbaa !26
  %1742 = getelementptr inbounds nuw i8, ptr %1508, i64 1920
  %1743 = load <8 x double>, ptr %1742, align 64, !tbaa !26
  %1744 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1743, <8 x double> %1691)
  %1745 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %1746 = fdiv <8 x double> splat (double 1.000000e+00), %1745
  %1747 = getelementptr inbounds nuw i8, ptr %1508, i64 2240
  %1748 = load <8 x double>, ptr %1747, align 64, !tbaa !26
  %1749 = fcmp ogt <8 x double> %1748, splat (double 1.000000e-30)
  %1750 = select <8 x i1> %1749, <8 x double> %1748, <8 x double> splat (double 1.000000e-30)
  %1751 = fdiv <8 x double> %1744, %1750
  %1752 = fadd <8 x double> %1746, %1751
  %1753 = getelementptr inbounds nuw i8, ptr %1508, i64 7488
  store <8 x double> %1752, ptr %1753, align 64, !tbaa !26
  %1754 = getelementptr inbounds nuw i8, ptr %1508, i64 7168
  store <8 x double> %1693, ptr %1754, align 64, !tbaa !26
  %1755 = getelementptr inbounds nuw i8, ptr %1508, i64 2560
  %1756 = load <8 x double>, ptr %1755, align 64, !tbaa !26
  %1757 = getelementptr inbounds nuw i8, ptr %1508, i64 2624
  %1758 = load <8 x double>, ptr %1757, align 64, !tbaa !26
  %1759 = getelementptr inbounds nuw i8, ptr %1508, i64 2688
  %1760 = load <8 x double>, ptr %1759, align 64, !tbaa !26
  %1761 = getelementptr inbounds nuw i8, ptr %1508, i64 2752
  %1762 = load <8 x double>, ptr %1761, align 64, !tbaa !26
  %1763 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1762, <8 x double> %1760)
  %1764 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1763, <8 x double> %1758)
  %1765 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1764, <8 x double> %1756)
  %1766 = getelementptr inbounds nuw i8, ptr %1508, i64 3776
  store <8 x double> %1765, ptr %1766, align 64, !tbaa !26
  %1767 = getelementptr inbounds nuw i8, ptr %1508, i64 4672
  %1768 = load <8 x double>, ptr %1767, align 64, !tbaa !26
  %1769 = fmul <8 x double> %1699, %1768
  %1770 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1694, <8 x double> %1765, <8 x double> %1769)
  %1771 = getelementptr inbounds nuw i8, ptr %1508, i64 5568
  %1772 = load <8 x double>, ptr %1771, align 64, !tbaa !26
  %1773 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1698, <8 x double> %1772, <8 x double> %1770)
  %1774 = fmul <8 x double> %1773, splat (double 5.000000e-01)
  %1775 = getelementptr inbounds nuw i8, ptr %1508, i64 7104
  store <8 x double> %1774, ptr %1775, align 64, !tbaa !26
  %1776 = getelementptr inbounds nuw i8, ptr %1508, i64 2304
  %1777 = load <8 x double>, ptr %1776, align 64, !tbaa !26
  %1778 = getelementptr inbounds nuw i8, ptr %1508, i64 2368
  %1779 = load <8 x double>, ptr %1778, align 64, !tbaa !26
  %1780 = getelementptr inbounds nuw i8, ptr %1508, i64 2432
  %1781 = load <8 x double>, ptr %1780, align 64, !tbaa !26
  %1782 = getelementptr inbounds nuw i8, ptr %1508, i64 2496
  %1783 = load <8 x double>, ptr %1782, align 64, !tbaa !26
  %1784 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1783, <8 x double> %1781)
  %1785 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1784, <8 x double> %1779)
  %1786 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1785, <8 x double> %1777)
  %1787 = getelementptr inbounds nuw i8, ptr %1508, i64 7040
  store <8 x double> %1786, ptr %1787, align 64, !tbaa !26
  %1788 = getelementptr inbounds nuw i8, ptr %1508, i64 8512
  %1789 = load i64, ptr %1788, align 64, !tbaa !31
  %1790 = icmp eq i64 %1789, 0
  br i1 %1790, label %1791, label %1803

1791:                                             ; preds = %1689
  %1792 = fdiv <8 x double> %1786, %1695
  %1793 = load i64, ptr %119, align 16, !tbaa !21
  %1794 = getelementptr inbounds nuw i8, ptr %1508, i64 8632
  %1795 = load ptr, ptr %1794, align 8, !tbaa !36
  %1796 = getelementptr inbounds <8 x double>, ptr %1795, i64 %1793
  %1797 = load <8 x double>, ptr %1796, align 64, !tbaa !26
  %1798 = fmul <8 x double> %1792, %1797
  %1799 = getelementptr inbounds nuw i8, ptr %1508, i64 64
  %1800 = load <8 x double>, ptr %1799, align 64, !tbaa !26
  %1801 = fsub <8 x double> %1695, %1800
  %1802 = fdiv <8 x double> splat (double 1.000000e+00), %1801
  br label %1826

1803:                                             ; preds = %1689
  %1804 = getelementptr inbounds nuw i8, ptr %1508, i64 64
  %1805 = load <8 x double>, ptr %1804, align 64, !tbaa !26
  %1806 = fsub <8 x double> %1695, %1805
  %1807 = fdiv <8 x double> splat (double 1.000000e+00), %1806
  %1808 = load i64, ptr %119, align 16, !tbaa !21
  %1809 = getelementptr inbounds nuw i8, ptr %1508, i64 8632
  %1810 = load ptr, ptr %1809, align 8, !tbaa !36
  %1811 = shl nsw i64 %1808, 8
  %1812 = getelementptr inbounds i8, ptr %1810, i64 %1811
  %1813 = load <8 x double>, ptr %1812, align 64, !tbaa !26
  %1814 = getelementptr inbounds nuw i8, ptr %1812, i64 64
  %1815 = load <8 x double>, ptr %1814, align 64, !tbaa !26
  %1816 = getelementptr inbounds nuw i8, ptr %1812, i64 128
  %1817 = load <8 x double>, ptr %1816, align 64, !tbaa !26
  %1818 = getelementptr inbounds nuw i8, ptr %1812, i64 192
  %1819 = load <8 x double>, ptr %1818, align 64, !tbaa !26
  %1820 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1819, <8 x double> %1817)
  %1821 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1820, <8 x double> %1815)
  %1822 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1821, <8 x double> %1813)
  %1823 = icmp sgt i64 %1808, %1789
  %1824 = fmul <8 x double> %1807, %1822
  %1825 = select i1 %1823, <8 x double> %1824, <8 x double> %1822
  br label %1826

1826:                                             ; preds = %1791, %1803
  %1827 = phi <8 x double> [ %1802, %1791 ], [ %1807, %1803 ]
  %1828 = phi <8 x double> [ %1801, %1791 ], [ %1806, %1803 ]
  %1829 = phi <8 x double> [ %1798, %1791 ], [ %1825, %1803 ]
  %1830 = getelementptr inbounds nuw i8, ptr %1508, i64 3200
  %1831 = load <8 x double>, ptr %1830, align 64, !tbaa !26
  %1832 = getelementptr inbounds nuw i8, ptr %1508, i64 5952
  %1833 = load <8 x double>, ptr %1832, align 64, !tbaa !26
  %1834 = fcmp ogt <8 x double> %1691, splat (double 0x3D719799812DEA11)
  %1835 = select <8 x i1> %1834, <8 x double> %1691, <8 x double> splat (double 0x3D719799812DEA11)
  %1836 = getelementptr inbounds nuw i8, ptr %1508, i64 6912
  store <8 x double> %1827, ptr %1836, align 64, !tbaa !26
  %1837 = getelementptr inbounds nuw i8, ptr %1508, i64 704
  %1838 = load <8 x double>, ptr %1837, align 64, !tbaa !26
  %1839 = fdiv <8 x double> %1838, %1835
  %1840 = getelementptr inbounds nuw i8, ptr %1508, i64 6976
  store <8 x double> %1839, ptr %1840, align 64, !tbaa !26
  %1841 = getelementptr inbounds nuw i8, ptr %1508, i64 8520
  %1842 = load ptr, ptr %1841, align 8, !tbaa !57
  %1843 = load i64, ptr %119, align 16, !tbaa !21
  %1844 = getelementptr <8 x double>, ptr %1842, i64 %1843
  %1845 = getelementptr i8, ptr %1844, i64 -64
  %1846 = load <8 x double>, ptr %1845, align 64, !tbaa !26
  %1847 = fadd <8 x double> %1833, %1846
  %1848 = fmul <8 x double> %1847, splat (double 5.000000e-01)
  %1849 = getelementptr inbounds nuw i8, ptr %1508, i64 192
  %1850 = load <8 x double>, ptr %1849, align 64, !tbaa !26
  %1851 = getelementptr inbounds nuw i8, ptr %1508, i64 256
  %1852 = load <8 x double>, ptr %1851, align 64, !tbaa !26
  %1853 = getelementptr inbounds nuw i8, ptr %1508, i64 320
  %1854 = load <8 x double>, ptr %1853, align 64, !tbaa !26
  %1855 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1848, <8 x double> %1854, <8 x double> %1852)
  %1856 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1848, <8 x double> %1855, <8 x double> %1850)
  %1857 = fmul <8 x double> %1829, %1856
  %1858 = fmul <8 x double> %1709, %1857
  %1859 = getelementptr inbounds nuw i8, ptr %1508, i64 2048
  %1860 = load <8 x double>, ptr %1859, align 64, !tbaa !26
  %1861 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1858, <8 x double> %1860, <8 x double> splat (double 1.000000e+00))
  %1862 = fdiv <8 x double> splat (double 1.000000e+00), %1861
  %1863 = select <8 x i1> %1729, <8 x double> %1862, <8 x double> splat (double 1.000000e+00)
  %1864 = getelementptr inbounds nuw i8, ptr %1508, i64 7232
  store <8 x double> %1863, ptr %1864, align 64, !tbaa !26
  %1865 = fmul <8 x double> %1857, %1863
  %1866 = getelementptr inbounds nuw i8, ptr %1508, i64 6400
  store <8 x double> %1865, ptr %1866, align 64, !tbaa !26
  %1867 = fmul <8 x double> %1774, splat (double 2.000000e+00)
  %1868 = getelementptr inbounds nuw i8, ptr %1508, i64 384
  %1869 = load <8 x double>, ptr %1868, align 64, !tbaa !26
  %1870 = getelementptr inbounds nuw i8, ptr %1508, i64 448
  %1871 = load <8 x double>, ptr %1870, align 64, !tbaa !26
  %1872 = getelementptr inbounds nuw i8, ptr %1508, i64 512
  %1873 = load <8 x double>, ptr %1872, align 64, !tbaa !26
  %1874 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1833, <8 x double> %1873, <8 x double> %1871)
  %1875 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1833, <8 x double> %1874, <8 x double> %1869)
  %1876 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1867, <8 x double> %1875, <8 x double> %1865)
  %1877 = getelementptr inbounds nuw i8, ptr %1508, i64 6528
  store <8 x double> %1876, ptr %1877, align 64, !tbaa !26
  %1878 = fmul <8 x double> %1727, %1831
  %1879 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1878, <8 x double> %1696, <8 x double> splat (double 1.000000e+00))
  %1880 = fdiv <8 x double> %1831, %1879
  %1881 = load i64, ptr %120, align 8, !tbaa !22
  %1882 = sitofp i64 %1881 to double
  %1883 = fmul double %1882, 2.000000e+00
  %1884 = insertelement <8 x double> poison, double %1883, i64 0
  %1885 = shufflevector <8 x double> %1884, <8 x double> poison, <8 x i32> zeroinitializer
  %1886 = fmul <8 x double> %1839, %1885
  %1887 = fadd <8 x double> %1880, %1886
  %1888 = fdiv <8 x double> %1880, %1887
  %1889 = fmul <8 x double> %1786, %1886
  %1890 = select <8 x i1> %1729, <8 x double> %1880, <8 x double> %1889
  %1891 = getelementptr inbounds nuw i8, ptr %1508, i64 6464
  store <8 x double> %1890, ptr %1891, align 64, !tbaa !26
  %1892 = fmul <8 x double> %1886, %1888
  %1893 = select <8 x i1> %1729, <8 x double> %1880, <8 x double> %1892
  %1894 = getelementptr inbounds nuw i8, ptr %1508, i64 6592
  store <8 x double> %1893, ptr %1894, align 64, !tbaa !26
  %1895 = select <8 x i1> %1729, <8 x double> splat (double 1.000000e+00), <8 x double> %1888
  %1896 = getelementptr inbounds nuw i8, ptr %1508, i64 6656
  store <8 x double> %1895, ptr %1896, align 64, !tbaa !26
  br i1 %1790, label %2058, label %1897

1897:                                             ; preds = %1826
  %1898 = getelementptr inbounds nuw i8, ptr %1508, i64 576
  %1899 = load <8 x double>, ptr %1898, align 64, !tbaa !26
  %1900 = getelementptr inbounds nuw i8, ptr %1508, i64 640
  %1901 = load <8 x double>, ptr %1900, align 64, !tbaa !26
  %1902 = getelementptr inbounds nuw i8, ptr %1508, i64 1536
  %1903 = load <8 x double>, ptr %1902, align 64, !tbaa !26
  %1904 = load i64, ptr %119, align 16, !tbaa !21
  %1905 = fsub <8 x double> %1765, %1903
  %1906 = fmul <8 x double> %1871, splat (double 5.000000e-01)
  %1907 = fmul <8 x double> %1873, splat (double 0x3FE5555555555555)
  %1908 = getelementptr inbounds nuw i8, ptr %1508, i64 8608
  %1909 = load ptr, ptr %1908, align 32, !tbaa !72
  %1910 = getelementptr inbounds nuw i8, ptr %1508, i64 8616
  %1911 = load ptr, ptr %1910, align 8, !tbaa !47
  %1912 = getelementptr inbounds nuw i8, ptr %1508, i64 8544
  %1913 = load ptr, ptr %1912, align 32, !tbaa !58
  %1914 = getelementptr inbounds nuw i8, ptr %1508, i64 8584
  %1915 = load ptr, ptr %1914, align 8, !tbaa !83
  %1916 = getelementptr inbounds nuw i8, ptr %1508, i64 8592
  %1917 = load ptr, ptr %1916, align 16, !tbaa !84
  %1918 = getelementptr inbounds nuw i8, ptr %1508, i64 8600
  %1919 = load ptr, ptr %1918, align 8, !tbaa !85
  %1920 = getelementptr inbounds nuw i8, ptr %1508, i64 8568
  %1921 = load ptr, ptr %1920, align 8, !tbaa !86
  %1922 = getelementptr inbounds nuw i8, ptr %1508, i64 8576
  %1923 = load ptr, ptr %1922, align 64, !tbaa !87
  %1924 = icmp sgt i64 %1904, 0
  br i1 %1924, label %1925, label %2171

1925:                                             ; preds = %1897
  %1926 = load <8 x double>, ptr %1842, align 64, !tbaa !26
  %1927 = getelementptr inbounds nuw i8, ptr %1508, i64 2880
  %1928 = load <8 x double>, ptr %1927, align 64, !tbaa !26
  %1929 = getelementptr inbounds nuw i8, ptr %1508, i64 2816
  %1930 = load <8 x double>, ptr %1929, align 64, !tbaa !26
  %1931 = fmul <8 x double> %1774, splat (double -2.000000e+00)
  %1932 = fmul <8 x double> %1931, %1833
  %1933 = fmul <8 x double> %1833, %1932
  %1934 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1833, <8 x double> %1907, <8 x double> %1906)
  %1935 = fmul <8 x double> %1933, %1934
  %1936 = getelementptr inbounds nuw i8, ptr %1508, i64 8632
  %1937 = fmul <8 x double> %1828, %1928
  %1938 = fdiv <8 x double> %1930, %1899
  br label %1939

1939:                                             ; preds = %1925, %2023
  %1940 = phi <8 x double> [ %1926, %1925 ], [ %2027, %2023 ]
  %1941 = phi <8 x double> [ zeroinitializer, %1925 ], [ %2024, %2023 ]
  %1942 = phi <8 x double> [ zeroinitializer, %1925 ], [ %2025, %2023 ]
  %1943 = phi <8 x double> [ zeroinitializer, %1925 ], [ %2026, %2023 ]
  %1944 = phi <8 x double> [ zeroinitializer, %1925 ], [ %2053, %2023 ]
  %1945 = phi <8 x double> [ zeroinitializer, %1925 ], [ %2055, %2023 ]
  %1946 = phi <8 x double> [ %1901, %1925 ], [ %2028, %2023 ]
  %1947 = phi i64 [ 0, %1925 ], [ %1949, %2023 ]
  %1948 = phi <8 x double> [ zeroinitializer, %1925 ], [ %2029, %2023 ]
  %1949 = add nuw nsw i64 %1947, 1
  %1950 = icmp slt i64 %1949, %1904
  br i1 %1950, label %1951, label %2020

1951:                                             ; preds = %1939
  %1952 = getelementptr inbounds nuw <8 x double>, ptr %1842, i64 %1949
  %1953 = load <8 x double>, ptr %1952, align 64, !tbaa !26
  %1954 = icmp slt i64 %1949, %1789
  br i1 %1954, label %1962, label %1955

1955:                                             ; preds = %1951
  %1956 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1953, <8 x double> %1873, <8 x double> %1871)
  %1957 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1953, <8 x double> %1956, <8 x double> %1869)
  %1958 = fneg <8 x double> %1953
  %1959 = fmul <8 x double> %1953, %1958
  %1960 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1953, <8 x double> %1907, <8 x double> %1906)
  %1961 = fmul <8 x double> %1959, %1960
  br label %1962

1962:                                             ; preds = %1951, %1955
  %1963 = phi <8 x double> [ %1957, %1955 ], [ %1901, %1951 ]
  %1964 = phi <8 x double> [ %1961, %1955 ], [ zeroinitializer, %1951 ]
  %1965 = load i64, ptr %1788, align 64, !tbaa !31
  %1966 = icmp eq i64 %1965, 0
  %1967 = load ptr, ptr %1936, align 8, !tbaa !36
  br i1 %1966, label %1968, label %1972

1968:                                             ; preds = %1962
  %1969 = getelementptr inbounds nuw <8 x double>, ptr %1967, i64 %1949
  %1970 = load <8 x double>, ptr %1969, align 64, !tbaa !26
  %1971 = fmul <8 x double> %1827, %1970
  br label %1988

1972:                                             ; preds = %1962
  %1973 = shl nsw i64 %1949, 8
  %1974 = getelementptr inbounds nuw i8, ptr %1967, i64 %1973
  %1975 = load <8 x double>, ptr %1974, align 64, !tbaa !26
  %1976 = getelementptr inbounds nuw i8, ptr %1974, i64 64
  %1977 = load <8 x double>, ptr %1976, align 64, !tbaa !26
  %1978 = getelementptr inbounds nuw i8, ptr %1974, i64 128
  %1979 = load <8 x double>, ptr %1978, align 64, !tbaa !26
  %1980 = getelementptr inbounds nuw i8, ptr %1974, i64 192
  %1981 = load <8 x double>, ptr %1980, align 64, !tbaa !26
  %1982 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1981, <8 x double> %1979)
  %1983 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1982, <8 x double> %1977)
  %1984 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1983, <8 x double> %1975)
  %1985 = icmp slt i64 %1947, %1965
  %1986 = fmul <8 x double> %1827, %1984
  %1987 = select i1 %1985, <8 x double> %1984, <8 x double> %1986
  br label %1988

1988:                                             ; preds = %1972, %1968
  %1989 = phi <8 x double> [ %1971, %1968 ], [ %1987, %1972 ]
  %1990 = icmp slt i64 %1947, %1965
  br i1 %1990, label %1997, label %1991

1991:                                             ; preds = %1988
  %1992 = fadd <8 x double> %1940, %1953
  %1993 = fmul <8 x double> %1992, splat (double 5.000000e-01)
  %1994 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1993, <8 x double> %1854, <8 x double> %1852)
  %1995 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1993, <8 x double> %1994, <8 x double> %1850)
  %1996 = fmul <8 x double> %1995, %1989
  br label %2007

1997:                                             ; preds = %1988
  %1998 = icmp slt i64 %1949, %1965
  br i1 %1998, label %1999, label %2001

1999:                                             ; preds = %1997
  %2000 = fmul <8 x double> %1899, %1989
  br label %2007

2001:                                             ; preds = %1997
  %2002 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1953, <8 x double> %1854, <8 x double> %1852)
  %2003 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1953, <8 x double> %2002, <8 x double> %1850)
  %2004 = fdiv <8 x double> %1937, %2003
  %2005 = fadd <8 x double> %1938, %2004
  %2006 = fdiv <8 x double> %1989, %2005
  br label %2007

2007:                                             ; preds = %1991, %1999, %2001
  %2008 = phi <8 x double> [ %1996, %1991 ], [ %2000, %1999 ], [ %2006, %2001 ]
  br i1 %1954, label %2013, label %2009

2009:                                             ; preds = %2007
  %2010 = getelementptr inbounds nuw <8 x double>, ptr %1909, i64 %1949
  %2011 = load <8 x double>, ptr %2010, align 64, !tbaa !26
  %2012 = fmul <8 x double> %1774, %2011
  br label %2013

2013:                                             ; preds = %2007, %2009
  %2014 = phi <8 x double> [ %2012, %2009 ], [ zeroinitializer, %2007 ]
  %2015 = fneg <8 x double> %2014
  %2016 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2015, <8 x double> %1946, <8 x double> %2008)
  %2017 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2014, <8 x double> %1963, <8 x double> %2008)
  %2018 = fadd <8 x double> %1948, %1964
  %2019 = fmul <8 x double> %2018, %2014
  br label %2023

2020:                                             ; preds = %1939
  %2021 = load <8 x double>, ptr %1866, align 64, !tbaa !26
  %2022 = load <8 x double>, ptr %1877, align 64, !tbaa !26
  br label %2023

2023:                                             ; preds = %2020, %2013
  %2024 = phi <8 x double> [ %2016, %2013 ], [ %2021, %2020 ]
  %2025 = phi <8 x double> [ %2017, %2013 ], [ %2022, %2020 ]
  %2026 = phi <8 x double> [ %2019, %2013 ], [ %1935, %2020 ]
  %2027 = phi <8 x double> [ %1953, %2013 ], [ %1940, %2020 ]
  %2028 = phi <8 x double> [ %1963, %2013 ], [ %1946, %2020 ]
  %2029 = phi <8 x double> [ %1964, %2013 ], [ %1948, %2020 ]
  %2030 = getelementptr inbounds nuw <8 x double>, ptr %1911, i64 %1947
  %2031 = load <8 x double>, ptr %2030, align 64, !tbaa !26
  %2032 = icmp slt i64 %1947, %1789
  %2033 = select i1 %2032, <8 x double> %1903, <8 x double> %1905
  %2034 = fmul <8 x double> %1694, %2033
  %2035 = fmul <8 x double> %2034, %2031
  %2036 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2035, <8 x double> %1946, <8 x double> %2024)
  %2037 = fadd <8 x double> %1942, %2036
  %2038 = fsub <8 x double> %2026, %1943
  %2039 = fneg <8 x double> %2035
  %2040 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2039, <8 x double> %1948, <8 x double> %2038)
  %2041 = getelementptr inbounds nuw <8 x double>, ptr %1913, i64 %1947
  %2042 = load <8 x double>, ptr %2041, align 64, !tbaa !26
  %2043 = fsub <8 x double> %2040, %2042
  %2044 = fneg <8 x double> %1941
  %2045 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2044, <8 x double> %1945, <8 x double> %2037)
  %2046 = fdiv <8 x double> splat (double 1.000000e+00), %2045
  %2047 = getelementptr inbounds nuw <8 x double>, ptr %1915, i64 %1947
  store <8 x double> %2043, ptr %2047, align 64, !tbaa !26
  %2048 = getelementptr inbounds nuw <8 x double>, ptr %1917, i64 %1947
  store <8 x double> %1941, ptr %2048, align 64, !tbaa !26
  %2049 = fadd <8 x double> %1941, %2025
  %2050 = fsub <8 x double> %2049, %2037
  %2051 = getelementptr inbounds nuw <8 x double>, ptr %1919, i64 %1947
  store <8 x double> %2050, ptr %2051, align 64, !tbaa !26
  %2052 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1941, <8 x double> %1944, <8 x double> %2043)
  %2053 = fmul <8 x double> %2052, %2046
  %2054 = getelementptr inbounds nuw <8 x double>, ptr %1921, i64 %1947
  store <8 x double> %2053, ptr %2054, align 64, !tbaa !26
  %2055 = fmul <8 x double> %2025, %2046
  %2056 = getelementptr inbounds nuw <8 x double>, ptr %1923, i64 %1947
  store <8 x double> %2055, ptr %2056, align 64, !tbaa !26
  %2057 = icmp eq i64 %1949, %1904
  br i1 %2057, label %2171, label %1939, !llvm.loop !88

2058:                                             ; preds = %1826
  %2059 = getelementptr inbounds nuw i8, ptr %1508, i64 1536
  %2060 = load <8 x double>, ptr %2059, align 64, !tbaa !26
  %2061 = load i64, ptr %119, align 16, !tbaa !21
  %2062 = fdiv <8 x double> %1786, %1695
  %2063 = fsub <8 x double> %1765, %2060
  %2064 = fmul <8 x double> %1694, %2063
  %2065 = fmul <8 x double> %1871, splat (double 5.000000e-01)
  %2066 = fmul <8 x double> %1873, splat (double 0x3FE5555555555555)
  %2067 = getelementptr inbounds nuw i8, ptr %1508, i64 8608
  %2068 = load ptr, ptr %2067, align 32, !tbaa !72
  %2069 = getelementptr inbounds nuw i8, ptr %1508, i64 8616
  %2070 = load ptr, ptr %2069, align 8, !tbaa !47
  %2071 = getelementptr inbounds nuw i8, ptr %1508, i64 8544
  %2072 = load ptr, ptr %2071, align 32, !tbaa !58
  %2073 = getelementptr inbounds nuw i8, ptr %1508, i64 8584
  %2074 = load ptr, ptr %2073, align 8, !tbaa !83
  %2075 = getelementptr inbounds nuw i8, ptr %1508, i64 8592
  %2076 = load ptr, ptr %2075, align 16, !tbaa !84
  %2077 = getelementptr inbounds nuw i8, ptr %1508, i64 8600
  %2078 = load ptr, ptr %2077, align 8, !tbaa !85
  %2079 = getelementptr inbounds nuw i8, ptr %1508, i64 8568
  %2080 = load ptr, ptr %2079, align 8, !tbaa !86
  %2081 = getelementptr inbounds nuw i8, ptr %1508, i64 8576
  %2082 = load ptr, ptr %2081, align 64, !tbaa !87
  %2083 = icmp sgt i64 %2061, 0
  br i1 %2083, label %2084, label %2171

2084:                                             ; preds = %2058
  %2085 = load <8 x double>, ptr %1842, align 64, !tbaa !26
  %2086 = fneg <8 x double> %2085
  %2087 = fmul <8 x double> %2085, %2086
  %2088 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2085, <8 x double> %2066, <8 x double> %2065)
  %2089 = fmul <8 x double> %2087, %2088
  %2090 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2085, <8 x double> %1873, <8 x double> %1871)
  %2091 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2085, <8 x double> %2090, <8 x double> %1869)
  %2092 = fmul <8 x double> %1774, splat (double -2.000000e+00)
  %2093 = fmul <8 x double> %2092, %1833
  %2094 = fmul <8 x double> %1833, %2093
  %2095 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1833, <8 x double> %2066, <8 x double> %2065)
  %2096 = fmul <8 x double> %2094, %2095
  %2097 = getelementptr inbounds nuw i8, ptr %1508, i64 8632
  br label %2098

2098:                                             ; preds = %2084, %2139
  %2099 = phi <8 x double> [ %2085, %2084 ], [ %2143, %2139 ]
  %2100 = phi <8 x double> [ zeroinitializer, %2084 ], [ %2140, %2139 ]
  %2101 = phi <8 x double> [ zeroinitializer, %2084 ], [ %2141, %2139 ]
  %2102 = phi <8 x double> [ zeroinitializer, %2084 ], [ %2142, %2139 ]
  %2103 = phi <8 x double> [ zeroinitializer, %2084 ], [ %2166, %2139 ]
  %2104 = phi <8 x double> [ zeroinitializer, %2084 ], [ %2168, %2139 ]
  %2105 = phi <8 x double> [ %2091, %2084 ], [ %2144, %2139 ]
  %2106 = phi i64 [ 0, %2084 ], [ %2108, %2139 ]
  %2107 = phi <8 x double> [ %2089, %2084 ], [ %2145, %2139 ]
  %2108 = add nuw nsw i64 %2106, 1
  %2109 = icmp slt i64 %2108, %2061
  br i1 %2109, label %2110, label %2136

2110:                                             ; preds = %2098
  %2111 = getelementptr inbounds nuw <8 x double>, ptr %1842, i64 %2108
  %2112 = load <8 x double>, ptr %2111, align 64, !tbaa !26
  %2113 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2112, <8 x double> %1873, <8 x double> %1871)
  %2114 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2112, <8 x double> %2113, <8 x double> %1869)
  %2115 = fneg <8 x double> %2112
  %2116 = fmul <8 x double> %2112, %2115
  %2117 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2112, <8 x double> %2066, <8 x double> %2065)
  %2118 = fmul <8 x double> %2116, %2117
  %2119 = fadd <8 x double> %2099, %2112
  %2120 = fmul <8 x double> %2119, splat (double 5.000000e-01)
  %2121 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2120, <8 x double> %1854, <8 x double> %1852)
  %2122 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2120, <8 x double> %2121, <8 x double> %1850)
  %2123 = load ptr, ptr %2097, align 8, !tbaa !36
  %2124 = getelementptr inbounds nuw <8 x double>, ptr %2123, i64 %2108
  %2125 = load <8 x double>, ptr %2124, align 64, !tbaa !26
  %2126 = fmul <8 x double> %2062, %2125
  %2127 = fmul <8 x double> %2126, %2122
  %2128 = getelementptr inbounds nuw <8 x double>, ptr %2068, i64 %2108
  %2129 = load <8 x double>, ptr %2128, align 64, !tbaa !26
  %2130 = fmul <8 x double> %1774, %2129
  %2131 = fneg <8 x double> %2130
  %2132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2131, <8 x double> %2105, <8 x double> %2127)
  %2133 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2130, <8 x double> %2114, <8 x double> %2127)
  %2134 = fadd <8 x double> %2107, %2118
  %2135 = fmul <8 x double> %2134, %2130
  br label %2139

2136:                                             ; preds = %2098
  %2137 = load <8 x double>, ptr %1866, align 64, !tbaa !26
  %2138 = load <8 x double>, ptr %1877, align 64, !tbaa !26
  br label %2139

2139:                                             ; preds = %2136, %2110
  %2140 = phi <8 x double> [ %2132, %2110 ], [ %2137, %2136 ]
  %2141 = phi <8 x double> [ %2133, %2110 ], [ %2138, %2136 ]
  %2142 = phi <8 x double> [ %2135, %2110 ], [ %2096, %2136 ]
  %2143 = phi <8 x double> [ %2112, %2110 ], [ %2099, %2136 ]
  %2144 = phi <8 x double> [ %2114, %2110 ], [ %2105, %2136 ]
  %2145 = phi <8 x double> [ %2118, %2110 ], [ %2107, %2136 ]
  %2146 = getelementptr inbounds nuw <8 x double>, ptr %2070, i64 %2106
  %2147 = load <8 x double>, ptr %2146, align 64, !tbaa !26
  %2148 = fmul <8 x double> %2064, %2147
  %2149 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2148, <8 x double> %2105, <8 x double> %2140)
  %2150 = fadd <8 x double> %2101, %2149
  %2151 = fsub <8 x double> %2142, %2102
  %2152 = fneg <8 x double> %2148
  %2153 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2152, <8 x double> %2107, <8 x double> %2151)
  %2154 = getelementptr inbounds nuw <8 x double>, ptr %2072, i64 %2106
  %2155 = load <8 x double>, ptr %2154, align 64, !tbaa !26
  %2156 = fsub <8 x double> %2153, %2155
  %2157 = fneg <8 x double> %2100
  %2158 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2157, <8 x double> %2104, <8 x double> %2150)
  %2159 = fdiv <8 x double> splat (double 1.000000e+00), %2158
  %2160 = getelementptr inbounds nuw <8 x double>, ptr %2074, i64 %2106
  store <8 x double> %2156, ptr %2160, align 64, !tbaa !26
  %2161 = getelementptr inbounds nuw <8 x double>, ptr %2076, i64 %2106
  store <8 x double> %2100, ptr %2161, align 64, !tbaa !26
  %2162 = fadd <8 x double> %2100, %2141
  %2163 = fsub <8 x double> %2162, %2150
  %2164 = getelementptr inbounds nuw <8 x double>, ptr %2078, i64 %2106
  store <8 x double> %2163, ptr %2164, align 64, !tbaa !26
  %2165 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2100, <8 x double> %2103, <8 x double> %2156)
  %2166 = fmul <8 x double> %2165, %2159
  %2167 = getelementptr inbounds nuw <8 x double>, ptr %2080, i64 %2106
  store <8 x double> %2166, ptr %2167, align 64, !tbaa !26
  %2168 = fmul <8 x double> %2141, %2159
  %2169 = getelementptr inbounds nuw <8 x double>, ptr %2082, i64 %2106
  store <8 x double> %2168, ptr %2169, align 64, !tbaa !26
  %2170 = icmp eq i64 %2108, %2061
  br i1 %2170, label %2171, label %2098, !llvm.loop !89

2171:                                             ; preds = %2023, %2139, %1897, %2058
  %2172 = getelementptr inbounds nuw i8, ptr %1508, i64 8128
  store <8 x double> splat (double 1.000000e+09), ptr %2172, align 64, !tbaa !26
  %2173 = getelementptr inbounds nuw i8, ptr %1508, i64 8568
  %2174 = load ptr, ptr %2173, align 8, !tbaa !86
  %2175 = load i64, ptr %119, align 16, !tbaa !21
  %2176 = add nsw i64 %2175, -1
  %2177 = getelementptr inbounds <8 x double>, ptr %2174, i64 %2176
  %2178 = load <8 x double>, ptr %2177, align 64, !tbaa !26
  %2179 = getelementptr inbounds nuw i8, ptr %1508, i64 8576
  %2180 = load ptr, ptr %2179, align 64, !tbaa !87
  %2181 = getelementptr inbounds <8 x double>, ptr %2180, i64 %2176
  %2182 = load <8 x double>, ptr %2181, align 64, !tbaa !26
  %2183 = load <8 x double>, ptr %1866, align 64, !tbaa !26
  %2184 = fmul <8 x double> %2178, %2183
  %2185 = fsub <8 x double> splat (double 1.000000e+00), %2182
  %2186 = fmul <8 x double> %2183, %2185
  %2187 = load <8 x double>, ptr %1891, align 64, !tbaa !26
  %2188 = load <8 x double>, ptr %1705, align 64, !tbaa !26
  %2189 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2187, <8 x double> %2188, <8 x double> %2184)
  %2190 = load <8 x double>, ptr %1741, align 64, !tbaa !26
  %2191 = fsub <8 x double> %2189, %2190
  %2192 = fadd <8 x double> %2186, %2187
  %2193 = load <8 x double>, ptr %1738, align 64, !tbaa !26
  %2194 = fadd <8 x double> %2192, %2193
  %2195 = load <8 x i64>, ptr %1724, align 64, !tbaa !26
  %2196 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2195)
  %2197 = icmp eq i64 %2196, 0
  %2198 = load i64, ptr %120, align 8, !tbaa !22
  br i1 %2197, label %2199, label %2214

2199:                                             ; preds = %2171
  %2200 = icmp slt i64 %2198, 0
  br i1 %2200, label %2205, label %2201

2201:                                             ; preds = %2199
  %2202 = getelementptr inbounds nuw i8, ptr %1508, i64 1408
  %2203 = getelementptr inbounds nuw i8, ptr %1508, i64 8688
  %2204 = load <8 x double>, ptr %2202, align 64, !tbaa !26
  br label %2207

2205:                                             ; preds = %2207, %2199
  %2206 = getelementptr inbounds nuw i8, ptr %1508, i64 6208
  store <8 x double> %2191, ptr %2206, align 64, !tbaa !26
  br label %2341

2207:                                             ; preds = %2201, %2207
  %2208 = phi i64 [ 0, %2201 ], [ %2211, %2207 ]
  %2209 = load ptr, ptr %2203, align 16, !tbaa !90
  %2210 = getelementptr inbounds nuw <8 x double>, ptr %2209, i64 %2208
  store <8 x double> %2204, ptr %2210, align 64, !tbaa !26
  %2211 = add nuw nsw i64 %2208, 1
  %2212 = load i64, ptr %120, align 8, !tbaa !22
  %2213 = icmp slt i64 %2208, %2212
  br i1 %2213, label %2207, label %2205, !llvm.loop !91

2214:                                             ; preds = %2171
  %2215 = load <8 x double>, ptr %1728, align 64, !tbaa !26
  %2216 = load <8 x double>, ptr %1754, align 64, !tbaa !26
  %2217 = getelementptr inbounds nuw i8, ptr %1508, i64 1280
  %2218 = load <8 x double>, ptr %2217, align 64, !tbaa !26
  %2219 = fmul <8 x double> %2216, %2218
  %2220 = load <8 x double>, ptr %1508, align 64, !tbaa !26
  %2221 = fsub <8 x double> %2220, %2215
  %2222 = sitofp i64 %2198 to double
  %2223 = insertelement <8 x double> poison, double %2222, i64 0
  %2224 = shufflevector <8 x double> %2223, <8 x double> poison, <8 x i32> zeroinitializer
  %2225 = fdiv <8 x double> %2221, %2224
  %2226 = load <8 x double>, ptr %1894, align 64, !tbaa !26
  %2227 = load <8 x double>, ptr %1896, align 64, !tbaa !26
  %2228 = getelementptr inbounds nuw i8, ptr %1508, i64 1408
  %2229 = load <8 x double>, ptr %2228, align 64, !tbaa !26
  %2230 = getelementptr inbounds nuw i8, ptr %1508, i64 8688
  %2231 = load ptr, ptr %2230, align 16, !tbaa !90
  %2232 = getelementptr inbounds <8 x double>, ptr %2231, i64 %2198
  store <8 x double> %2229, ptr %2232, align 64, !tbaa !26
  %2233 = icmp sgt i64 %2198, 0
  br i1 %2233, label %2234, label %2325

2234:                                             ; preds = %2214
  %2235 = fneg <8 x double> %2219
  %2236 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2235, <8 x double> %2227, <8 x double> %2226)
  %2237 = fsub <8 x double> splat (double 1.000000e+00), %2227
  %2238 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2219, <8 x double> %2237, <8 x double> %2226)
  %2239 = getelementptr inbounds nuw i8, ptr %1508, i64 8696
  %2240 = getelementptr inbounds nuw i8, ptr %1508, i64 8704
  %2241 = getelementptr inbounds nuw i8, ptr %1508, i64 768
  %2242 = fmul <8 x double> %2219, splat (double -5.000000e-01)
  %2243 = getelementptr inbounds nuw i8, ptr %1508, i64 8664
  %2244 = getelementptr inbounds nuw i8, ptr %1508, i64 8672
  %2245 = getelementptr inbounds nuw i8, ptr %1508, i64 8680
  br label %2246

2246:                                             ; preds = %2234, %2300
  %2247 = phi <8 x double> [ %2238, %2234 ], [ %2302, %2300 ]
  %2248 = phi <8 x double> [ %2236, %2234 ], [ %2303, %2300 ]
  %2249 = phi <8 x double> [ %2188, %2234 ], [ %2318, %2300 ]
  %2250 = phi <8 x double> [ zeroinitializer, %2234 ], [ %2321, %2300 ]
  %2251 = phi <8 x double> [ %2229, %2234 ], [ %2264, %2300 ]
  %2252 = phi i64 [ %2198, %2234 ], [ %2253, %2300 ]
  %2253 = add nsw i64 %2252, -1
  %2254 = uitofp nneg i64 %2253 to double
  %2255 = insertelement <8 x double> poison, double %2254, i64 0
  %2256 = shufflevector <8 x double> %2255, <8 x double> poison, <8 x i32> zeroinitializer
  %2257 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2256, <8 x double> %2225, <8 x double> %2215)
  %2258 = load <8 x double>, ptr %1755, align 64, !tbaa !26
  %2259 = load <8 x double>, ptr %1757, align 64, !tbaa !26
  %2260 = load <8 x double>, ptr %1759, align 64, !tbaa !26
  %2261 = load <8 x double>, ptr %1761, align 64, !tbaa !26
  %2262 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2257, <8 x double> %2261, <8 x double> %2260)
  %2263 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2257, <8 x double> %2262, <8 x double> %2259)
  %2264 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2257, <8 x double> %2263, <8 x double> %2258)
  %2265 = load <8 x double>, ptr %1733, align 64, !tbaa !26
  %2266 = load <8 x double>, ptr %1716, align 64, !tbaa !26
  %2267 = load ptr, ptr %2239, align 8, !tbaa !48
  %2268 = getelementptr inbounds nuw <8 x double>, ptr %2267, i64 %2253
  %2269 = load <8 x double>, ptr %2268, align 64, !tbaa !26
  %2270 = fmul <8 x double> %2266, %2269
  %2271 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2265, <8 x double> %2264, <8 x double> %2270)
  %2272 = load <8 x double>, ptr %1719, align 64, !tbaa !26
  %2273 = load ptr, ptr %2240, align 64, !tbaa !59
  %2274 = getelementptr inbounds nuw <8 x double>, ptr %2273, i64 %2253
  %2275 = load <8 x double>, ptr %2274, align 64, !tbaa !26
  %2276 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2272, <8 x double> %2275, <8 x double> %2271)
  %2277 = fmul <8 x double> %2276, splat (double 5.000000e-01)
  %2278 = icmp eq i64 %2252, 1
  br i1 %2278, label %2294, label %2279

2279:                                             ; preds = %2246
  %2280 = load <8 x double>, ptr %2241, align 64, !tbaa !26
  %2281 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2277, <8 x double> %2280, <8 x double> %2242)
  %2282 = load <8 x double>, ptr %1840, align 64, !tbaa !26
  %2283 = fmul <8 x double> %2224, %2282
  %2284 = load <8 x double>, ptr %1776, align 64, !tbaa !26
  %2285 = load <8 x double>, ptr %1778, align 64, !tbaa !26
  %2286 = load <8 x double>, ptr %1780, align 64, !tbaa !26
  %2287 = load <8 x double>, ptr %1782, align 64, !tbaa !26
  %2288 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2257, <8 x double> %2287, <8 x double> %2286)
  %2289 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2257, <8 x double> %2288, <8 x double> %2285)
  %2290 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2257, <8 x double> %2289, <8 x double> %2284)
  %2291 = fmul <8 x double> %2283, %2290
  %2292 = fsub <8 x double> %2291, %2281
  %2293 = fadd <8 x double> %2281, %2291
  br label %2300

2294:                                             ; preds = %2246
  %2295 = load <8 x double>, ptr %1891, align 64, !tbaa !26
  %2296 = load <8 x double>, ptr %2241, align 64, !tbaa !26
  %2297 = fmul <8 x double> %2277, splat (double -2.000000e+00)
  %2298 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2297, <8 x double> %2296, <8 x double> %2295)
  %2299 = fadd <8 x double> %2219, %2298
  br label %2300

2300:                                             ; preds = %2294, %2279
  %2301 = phi <8 x double> [ %2280, %2279 ], [ %2296, %2294 ]
  %2302 = phi <8 x double> [ %2292, %2279 ], [ %2299, %2294 ]
  %2303 = phi <8 x double> [ %2293, %2279 ], [ %2295, %2294 ]
  %2304 = fsub <8 x double> %2251, %2264
  %2305 = fmul <8 x double> %2265, %2304
  %2306 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2305, <8 x double> %2301, <8 x double> %2247)
  %2307 = fadd <8 x double> %2303, %2306
  %2308 = fneg <8 x double> %2248
  %2309 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2308, <8 x double> %2250, <8 x double> %2307)
  %2310 = fdiv <8 x double> splat (double 1.000000e+00), %2309
  %2311 = load ptr, ptr %2230, align 16, !tbaa !90
  %2312 = getelementptr inbounds nuw <8 x double>, ptr %2311, i64 %2253
  store <8 x double> %2264, ptr %2312, align 64, !tbaa !26
  %2313 = load ptr, ptr %2243, align 8, !tbaa !62
  %2314 = getelementptr inbounds nuw <8 x double>, ptr %2313, i64 %2253
  %2315 = load <8 x double>, ptr %2314, align 64, !tbaa !26
  %2316 = fneg <8 x double> %2315
  %2317 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2248, <8 x double> %2249, <8 x double> %2316)
  %2318 = fmul <8 x double> %2310, %2317
  %2319 = load ptr, ptr %2244, align 32, !tbaa !92
  %2320 = getelementptr inbounds nuw <8 x double>, ptr %2319, i64 %2253
  store <8 x double> %2318, ptr %2320, align 64, !tbaa !26
  %2321 = fmul <8 x double> %2302, %2310
  %2322 = load ptr, ptr %2245, align 8, !tbaa !93
  %2323 = getelementptr inbounds nuw <8 x double>, ptr %2322, i64 %2253
  store <8 x double> %2321, ptr %2323, align 64, !tbaa !26
  %2324 = icmp samesign ugt i64 %2252, 1
  br i1 %2324, label %2246, label %2325, !llvm.loop !94

2325:                                             ; preds = %2300, %2214
  %2326 = load <8 x i64>, ptr %1724, align 64, !tbaa !26
  %2327 = load <8 x double>, ptr %1891, align 64, !tbaa !26
  %2328 = getelementptr inbounds nuw i8, ptr %1508, i64 8672
  %2329 = load ptr, ptr %2328, align 32, !tbaa !92
  %2330 = load <8 x double>, ptr %2329, align 64, !tbaa !26
  %2331 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2327, <8 x double> %2330, <8 x double> %2184)
  %2332 = icmp eq <8 x i64> %2326, zeroinitializer
  %2333 = select <8 x i1> %2332, <8 x double> %2191, <8 x double> %2331
  %2334 = getelementptr inbounds nuw i8, ptr %1508, i64 6208
  store <8 x double> %2333, ptr %2334, align 64, !tbaa !26
  %2335 = getelementptr inbounds nuw i8, ptr %1508, i64 8680
  %2336 = load ptr, ptr %2335, align 8, !tbaa !93
  %2337 = load <8 x double>, ptr %2336, align 64, !tbaa !26
  %2338 = fsub <8 x double> splat (double 1.000000e+00), %2337
  %2339 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2327, <8 x double> %2338, <8 x double> %2186)
  %2340 = select <8 x i1> %2332, <8 x double> %2194, <8 x double> %2339
  br label %2341

2341:                                             ; preds = %2205, %2325
  %2342 = phi <8 x double> [ %2194, %2205 ], [ %2340, %2325 ]
  %2343 = getelementptr inbounds nuw i8, ptr %1508, i64 6272
  store <8 x double> %2342, ptr %2343, align 64, !tbaa !26
  %2344 = add nuw nsw i64 %1506, 1
  %2345 = load i64, ptr %156, align 8, !tbaa !20
  %2346 = icmp slt i64 %2344, %2345
  br i1 %2346, label %1505, label %1502, !llvm.loop !95

2347:                                             ; preds = %2450
  %2348 = icmp sgt i64 %2451, 0
  br label %2349

2349:                                             ; preds = %2347, %1493, %1502
  %2350 = phi <8 x double> [ %1503, %1502 ], [ %1494, %1493 ], [ %1503, %2347 ]
  %2351 = phi i1 [ false, %1502 ], [ false, %1493 ], [ %2348, %2347 ]
  %2352 = fcmp ogt <8 x double> %2350, zeroinitializer
  %2353 = bitcast <8 x i1> %2352 to i8
  %2354 = icmp eq i8 %2353, 0
  br i1 %2354, label %2537, label %2454

2355:                                             ; preds = %1502, %2450
  %2356 = phi i64 [ %2451, %2450 ], [ %2345, %1502 ]
  %2357 = phi i64 [ %2452, %2450 ], [ 0, %1502 ]
  %2358 = load ptr, ptr %129, align 8, !tbaa !28
  %2359 = getelementptr inbounds nuw %struct.Piece, ptr %2358, i64 %2357
  %2360 = getelementptr inbounds nuw i8, ptr %2359, i64 8448
  %2361 = load <8 x i64>, ptr %2360, align 64, !tbaa !26
  %2362 = getelementptr inbounds nuw i8, ptr %2359, i64 2240
  %2363 = load <8 x double>, ptr %2362, align 64, !tbaa !26
  %2364 = fcmp ogt <8 x double> %2363, zeroinitializer
  %2365 = select <8 x i1> %2364, <8 x i64> %2361, <8 x i64> zeroinitializer
  %2366 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2365)
  %2367 = icmp eq i64 %2366, 0
  br i1 %2367, label %2450, label %2368

2368:                                             ; preds = %2355
  %2369 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %2370 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2369, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2371 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2369, <8 x double> %2370, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2372 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %2373 = getelementptr inbounds nuw i8, ptr %2359, i64 6208
  %2374 = load <8 x double>, ptr %2373, align 64, !tbaa !26
  %2375 = getelementptr inbounds nuw i8, ptr %2359, i64 6272
  %2376 = load <8 x double>, ptr %2375, align 64, !tbaa !26
  %2377 = fdiv <8 x double> %2374, %2376
  %2378 = fcmp olt <8 x double> %2377, %2369
  %2379 = select <8 x i1> %2378, <8 x double> %2377, <8 x double> %2369
  %2380 = getelementptr inbounds nuw i8, ptr %2359, i64 3584
  %2381 = load <8 x double>, ptr %2380, align 64, !tbaa !26
  %2382 = fcmp olt <8 x double> %2381, %2379
  %2383 = select <8 x i1> %2382, <8 x double> %2381, <8 x double> %2379
  %2384 = fneg <8 x double> %2376
  %2385 = getelementptr inbounds nuw i8, ptr %2359, i64 7488
  %2386 = load <8 x double>, ptr %2385, align 64, !tbaa !26
  br label %2390

2387:                                             ; preds = %2390
  %2388 = getelementptr inbounds nuw i8, ptr %2359, i64 6336
  store <8 x double> %2441, ptr %2388, align 64, !tbaa !26
  %2389 = load i64, ptr %156, align 8, !tbaa !20
  br label %2450

2390:                                             ; preds = %2368, %2390
  %2391 = phi <8 x i64> [ %2365, %2368 ], [ %2444, %2390 ]
  %2392 = phi i32 [ 0, %2368 ], [ %2445, %2390 ]
  %2393 = phi <8 x double> [ %2383, %2368 ], [ %2441, %2390 ]
  %2394 = fadd <8 x double> %2393, splat (double 2.731500e+02)
  %2395 = fcmp ogt <8 x double> %2393, zeroinitializer
  %2396 = select <8 x i1> %2395, <8 x double> %2393, <8 x double> zeroinitializer
  %2397 = fadd <8 x double> %2396, splat (double 2.731500e+02)
  %2398 = fadd <8 x double> %2397, splat (double 0xC08451671D164BD4)
  %2399 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %2398
  %2400 = fsub <8 x double> %2397, %2399
  %2401 = fadd <8 x double> %2400, splat (double 0x40923C3565924845)
  %2402 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2400, <8 x double> %2401, <8 x double> splat (double 0xC12619EA558539E6))
  %2403 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2400, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %2404 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2400, <8 x double> %2403, <8 x double> splat (double 0xC148A99584203885))
  %2405 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2400, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %2406 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2400, <8 x double> %2405, <8 x double> splat (double 0x4118B9E59F2691E5))
  %2407 = fmul <8 x double> %2406, splat (double 2.000000e+00)
  %2408 = fmul <8 x double> %2402, splat (double 4.000000e+00)
  %2409 = fneg <8 x double> %2406
  %2410 = fmul <8 x double> %2408, %2409
  %2411 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2404, <8 x double> %2404, <8 x double> %2410)
  %2412 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2411)
  %2413 = fsub <8 x double> %2412, %2404
  %2414 = fdiv <8 x double> %2407, %2413
  %2415 = fmul <8 x double> %2414, %2414
  %2416 = fmul <8 x double> %2415, splat (double 1.000000e+06)
  %2417 = fmul <8 x double> %2415, %2416
  %2418 = fmul <8 x double> %2394, splat (double 4.615260e+02)
  %2419 = fdiv <8 x double> %2417, %2418
  %2420 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2384, <8 x double> %2393, <8 x double> %2374)
  %2421 = fsub <8 x double> %2419, %2372
  %2422 = fcmp ogt <8 x double> %2421, zeroinitializer
  %2423 = select <8 x i1> %2422, <8 x double> %2421, <8 x double> zeroinitializer
  %2424 = fmul <8 x double> %2371, %2423
  %2425 = fdiv <8 x double> %2424, %2386
  %2426 = fsub <8 x double> %2420, %2425
  %2427 = fmul <8 x double> %2371, %2419
  %2428 = fdiv <8 x double> %2371, %2418
  %2429 = fadd <8 x double> %2428, splat (double -1.000000e+00)
  %2430 = fmul <8 x double> %2429, %2427
  %2431 = fdiv <8 x double> %2430, %2394
  %2432 = fdiv <8 x double> %2431, %2386
  %2433 = fcmp ule <8 x double> %2419, %2372
  %2434 = select <8 x i1> %2433, <8 x double> zeroinitializer, <8 x double> %2432
  %2435 = fsub <8 x double> %2384, %2434
  %2436 = fdiv <8 x double> %2426, %2435
  %2437 = fsub <8 x double> %2393, %2436
  %2438 = fcmp olt <8 x double> %2437, %2379
  %2439 = select <8 x i1> %2438, <8 x double> %2437, <8 x double> %2379
  %2440 = icmp eq <8 x i64> %2391, zeroinitializer
  %2441 = select <8 x i1> %2440, <8 x double> %2393, <8 x double> %2439
  %2442 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2436)
  %2443 = fcmp oge <8 x double> %2442, splat (double 1.000000e-05)
  %2444 = select <8 x i1> %2443, <8 x i64> %2391, <8 x i64> zeroinitializer
  %2445 = add nuw nsw i32 %2392, 1
  %2446 = icmp samesign ult i32 %2392, 7
  %2447 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2444)
  %2448 = icmp ne i64 %2447, 0
  %2449 = select i1 %2446, i1 %2448, i1 false
  br i1 %2449, label %2390, label %2387, !llvm.loop !96

2450:                                             ; preds = %2355, %2387
  %2451 = phi i64 [ %2356, %2355 ], [ %2389, %2387 ]
  %2452 = add nuw nsw i64 %2357, 1
  %2453 = icmp slt i64 %2452, %2451
  br i1 %2453, label %2355, label %2347, !llvm.loop !97

2454:                                             ; preds = %2349
  %2455 = sext <8 x i1> %2352 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %2455, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %2456 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %2457 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2458 = fadd <8 x double> %2456, %2457
  store <8 x double> %2458, ptr %6, align 64, !tbaa !26
  %2459 = load ptr, ptr %169, align 8
  %2460 = load ptr, ptr %171, align 8
  %2461 = load ptr, ptr %172, align 8
  br label %2462

2462:                                             ; preds = %2532, %2454
  %2463 = phi i64 [ 0, %2454 ], [ %2533, %2532 ]
  %2464 = getelementptr inbounds nuw i64, ptr %4, i64 %2463
  %2465 = load i64, ptr %2464, align 8, !tbaa !30
  %2466 = icmp eq i64 %2465, 0
  br i1 %2466, label %2532, label %2467

2467:                                             ; preds = %2462
  %2468 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %2463
  %2469 = load i64, ptr %2468, align 8, !tbaa !30
  %2470 = shl nsw i64 %2469, 1
  %2471 = or disjoint i64 %2470, 1
  %2472 = getelementptr inbounds i64, ptr %2459, i64 %2471
  %2473 = load i64, ptr %2472, align 8, !tbaa !30
  %2474 = shl nuw nsw i64 %2463, 1
  %2475 = or disjoint i64 %2474, 1
  %2476 = getelementptr inbounds nuw [16 x i64], ptr %170, i64 0, i64 %2475
  %2477 = getelementptr inbounds i64, ptr %2461, i64 %2471
  %2478 = load i64, ptr %2477, align 8, !tbaa !30
  %2479 = shl nsw i64 %2478, 4
  %2480 = getelementptr inbounds i8, ptr %2460, i64 %2479
  %2481 = getelementptr inbounds nuw double, ptr %6, i64 %2463
  %2482 = load double, ptr %2481, align 8, !tbaa !41
  %2483 = load i64, ptr %2476, align 8, !tbaa !30
  %2484 = getelementptr i8, ptr %2480, i64 -16
  %2485 = icmp sgt i64 %2483, 0
  br i1 %2485, label %2486, label %2495

2486:                                             ; preds = %2467, %2492
  %2487 = phi i64 [ %2493, %2492 ], [ %2483, %2467 ]
  %2488 = shl i64 %2487, 4
  %2489 = getelementptr i8, ptr %2484, i64 %2488
  %2490 = load double, ptr %2489, align 8, !tbaa !41
  %2491 = fcmp ugt double %2482, %2490
  br i1 %2491, label %2495, label %2492

2492:                                             ; preds = %2486
  %2493 = add nsw i64 %2487, -1
  store i64 %2493, ptr %2476, align 8, !tbaa !30
  %2494 = icmp sgt i64 %2487, 1
  br i1 %2494, label %2486, label %2495, !llvm.loop !77

2495:                                             ; preds = %2492, %2486, %2467
  %2496 = phi i64 [ %2483, %2467 ], [ 0, %2492 ], [ %2487, %2486 ]
  %2497 = icmp slt i64 %2496, %2473
  br i1 %2497, label %2498, label %2507

2498:                                             ; preds = %2495, %2504
  %2499 = phi i64 [ %2505, %2504 ], [ %2496, %2495 ]
  %2500 = shl nsw i64 %2499, 4
  %2501 = getelementptr inbounds i8, ptr %2480, i64 %2500
  %2502 = load double, ptr %2501, align 8, !tbaa !41
  %2503 = fcmp ule double %2482, %2502
  br i1 %2503, label %2512, label %2504

2504:                                             ; preds = %2498
  %2505 = add i64 %2499, 1
  store i64 %2505, ptr %2476, align 8, !tbaa !30
  %2506 = icmp eq i64 %2505, %2473
  br i1 %2506, label %2507, label %2498, !llvm.loop !78

2507:                                             ; preds = %2504, %2495
  %2508 = shl i64 %2473, 4
  %2509 = getelementptr i8, ptr %2480, i64 %2508
  %2510 = getelementptr i8, ptr %2509, i64 -8
  %2511 = load double, ptr %2510, align 8, !tbaa !41
  br label %2529

2512:                                             ; preds = %2498
  %2513 = shl nsw i64 %2499, 1
  %2514 = or disjoint i64 %2513, 1
  %2515 = getelementptr inbounds double, ptr %2480, i64 %2514
  %2516 = load double, ptr %2515, align 8, !tbaa !41
  %2517 = icmp sgt i64 %2499, 0
  br i1 %2517, label %2518, label %2529

2518:                                             ; preds = %2512
  %2519 = getelementptr inbounds nuw i8, ptr %2480, i64 %2500
  %2520 = getelementptr i8, ptr %2519, i64 -8
  %2521 = load double, ptr %2520, align 8, !tbaa !41
  %2522 = getelementptr i8, ptr %2519, i64 -16
  %2523 = load double, ptr %2522, align 8, !tbaa !41
  %2524 = fsub double %2482, %2523
  %2525 = fsub double %2502, %2523
  %2526 = fdiv double %2524, %2525
  %2527 = fsub double %2516, %2521
  %2528 = tail call double @llvm.fmuladd.f64(double %2526, double %2527, double %2521)
  br label %2529

2529:                                             ; preds = %2518, %2512, %2507
  %2530 = phi double [ %2528, %2518 ], [ %2516, %2512 ], [ %2511, %2507 ]
  %2531 = getelementptr inbounds nuw double, ptr %5, i64 %2463
  store double %2530, ptr %2531, align 8, !tbaa !41
  br label %2532

2532:                                             ; preds = %2529, %2462
  %2533 = add nuw nsw i64 %2463, 1
  %2534 = icmp eq i64 %2533, 8
  br i1 %2534, label %2535, label %2462, !llvm.loop !79

2535:                                             ; preds = %2532
  %2536 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2537

2537:                                             ; preds = %2349, %2535
  %2538 = phi <8 x double> [ %2536, %2535 ], [ zeroinitializer, %2349 ]
  %2539 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %2540 = fcmp ogt <8 x double> %2539, zeroinitializer
  %2541 = sext <8 x i1> %2540 to <8 x i64>
  %2542 = xor <8 x i64> %2541, splat (i64 -1)
  %2543 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %2544 = fcmp oeq <8 x double> %2543, splat (double 1.000000e+00)
  %2545 = fcmp oeq <8 x double> %2543, splat (double 2.000000e+00)
  %2546 = or <8 x i1> %2544, %2545
  %2547 = select <8 x i1> %2546, <8 x i64> %2542, <8 x i64> zeroinitializer
  %2548 = xor <8 x i64> %2547, %2541
  %2549 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %2550 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %2551 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %2552 = icmp eq <8 x i64> %2548, splat (i64 -1)
  %2553 = select <8 x i1> %2552, <8 x double> %2551, <8 x double> %2550
  %2554 = bitcast <8 x i1> %2540 to i8
  %2555 = icmp eq i8 %2554, 0
  br i1 %2555, label %2587, label %2556

2556:                                             ; preds = %2537
  %2557 = select <8 x i1> %2540, <8 x double> %2538, <8 x double> %2553
  %2558 = fmul <8 x double> %2557, splat (double 0x3EB0C6F7A0B5ED8D)
  %2559 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2558)
  %2560 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2559)
  %2561 = fmul <8 x double> %2560, %2560
  %2562 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2560, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2561)
  %2563 = fadd <8 x double> %2562, splat (double 0x402DD4891DBECC6B)
  %2564 = fmul <8 x double> %2560, splat (double 0x40C77A698FD9BCCA)
  %2565 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2561, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2564)
  %2566 = fadd <8 x double> %2565, splat (double 0xC0B2D7440748F0B3)
  %2567 = fmul <8 x double> %2560, splat (double 0xC148A99584203885)
  %2568 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2561, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2567)
  %2569 = fadd <8 x double> %2568, splat (double 0x4118B9E59F2691E5)
  %2570 = fmul <8 x double> %2569, splat (double 2.000000e+00)
  %2571 = fneg <8 x double> %2566
  %2572 = fmul <8 x double> %2563, splat (double 4.000000e+00)
  %2573 = fneg <8 x double> %2569
  %2574 = fmul <8 x double> %2572, %2573
  %2575 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2566, <8 x double> %2566, <8 x double> %2574)
  %2576 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2575)
  %2577 = fsub <8 x double> %2571, %2576
  %2578 = fdiv <8 x double> %2570, %2577
  %2579 = fadd <8 x double> %2578, splat (double 0x408451671D164BD4)
  %2580 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2578, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2581 = fmul <8 x double> %2580, splat (double -4.000000e+00)
  %2582 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2579, <8 x double> %2579, <8 x double> %2581)
  %2583 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2582)
  %2584 = fsub <8 x double> %2579, %2583
  %2585 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2584, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2586 = select <8 x i1> %2540, <8 x double> %2585, <8 x double> %2549
  br label %2587

2587:                                             ; preds = %2556, %2537
  %2588 = phi <8 x double> [ %2557, %2556 ], [ %2553, %2537 ]
  %2589 = phi <8 x double> [ %2586, %2556 ], [ %2549, %2537 ]
  %2590 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %2591 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %2592 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %2593 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %2594 = fmul <8 x double> %2592, %2593
  %2595 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2590, <8 x double> %2591, <8 x double> %2594)
  %2596 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2597 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %2598 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2599 = fneg <8 x double> %2595
  %2600 = fmul <8 x double> %2598, %2599
  %2601 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2596, <8 x double> %2597, <8 x double> %2600)
  %2602 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %2603 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2598, <8 x double> %2602, <8 x double> %2596)
  %2604 = fdiv <8 x double> %2601, %2603
  %2605 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2606 = select <8 x i1> %2552, <8 x double> %2605, <8 x double> %2550
  store <8 x double> %2606, ptr %185, align 64, !tbaa !26
  %2607 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2608 = select <8 x i1> %2552, <8 x double> %2607, <8 x double> %2604
  store <8 x double> %2608, ptr %186, align 64, !tbaa !26
  store <8 x double> %2588, ptr %179, align 64, !tbaa !26
  %2609 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %2610 = and <8 x i64> %2609, %2547
  %2611 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2610)
  %2612 = icmp eq i64 %2611, 0
  br i1 %2612, label %3194, label %2613

2613:                                             ; preds = %2587
  %2614 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %2615 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %2616 = fmul <8 x double> %2592, %2615
  %2617 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2590, <8 x double> %2614, <8 x double> %2616)
  %2618 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %2619 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2620 = fdiv <8 x double> %2618, %2619
  %2621 = fmul <8 x double> %2550, splat (double 3.000000e-01)
  %2622 = load <8 x double>, ptr %191, align 64, !tbaa !26
  %2623 = fadd <8 x double> %2550, %2622
  %2624 = fadd <8 x double> %2623, splat (double 2.000000e+05)
  %2625 = fmul <8 x double> %2619, splat (double 2.870530e+02)
  %2626 = fdiv <8 x double> %2550, %2625
  %2627 = fcmp ogt <8 x double> %2588, %2621
  %2628 = select <8 x i1> %2627, <8 x double> %2588, <8 x double> %2621
  %2629 = fcmp olt <8 x double> %2628, %2624
  %2630 = select <8 x i1> %2629, <8 x double> %2628, <8 x double> %2624
  %2631 = icmp eq <8 x i64> %2547, zeroinitializer
  %2632 = select <8 x i1> %2631, <8 x double> %2588, <8 x double> %2630
  %2633 = fdiv <8 x double> %2606, splat (double 2.870530e+02)
  %2634 = fmul <8 x double> %2626, splat (double 2.000000e+00)
  %2635 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2634)
  br label %2636

2636:                                             ; preds = %2678, %2613
  %2637 = phi <8 x double> [ %2589, %2613 ], [ %2671, %2678 ]
  %2638 = phi <8 x double> [ %2621, %2613 ], [ %2869, %2678 ]
  %2639 = phi <8 x double> [ %2624, %2613 ], [ %2866, %2678 ]
  %2640 = phi <8 x i64> [ %2610, %2613 ], [ %2885, %2678 ]
  %2641 = phi i32 [ 0, %2613 ], [ %2890, %2678 ]
  %2642 = phi <8 x double> [ %2632, %2613 ], [ %2887, %2678 ]
  %2643 = fmul <8 x double> %2642, splat (double 0x3EB0C6F7A0B5ED8D)
  %2644 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2643)
  %2645 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2644)
  %2646 = fmul <8 x double> %2645, %2645
  %2647 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2645, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2646)
  %2648 = fadd <8 x double> %2647, splat (double 0x402DD4891DBECC6B)
  %2649 = fmul <8 x double> %2645, splat (double 0x40C77A698FD9BCCA)
  %2650 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2646, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2649)
  %2651 = fadd <8 x double> %2650, splat (double 0xC0B2D7440748F0B3)
  %2652 = fmul <8 x double> %2645, splat (double 0xC148A99584203885)
  %2653 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2646, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2652)
  %2654 = fadd <8 x double> %2653, splat (double 0x4118B9E59F2691E5)
  %2655 = fmul <8 x double> %2654, splat (double 2.000000e+00)
  %2656 = fneg <8 x double> %2651
  %2657 = fmul <8 x double> %2648, splat (double 4.000000e+00)
  %2658 = fneg <8 x double> %2654
  %2659 = fmul <8 x double> %2657, %2658
  %2660 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2651, <8 x double> %2651, <8 x double> %2659)
  %2661 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2660)
  %2662 = fsub <8 x double> %2656, %2661
  %2663 = fdiv <8 x double> %2655, %2662
  %2664 = fadd <8 x double> %2663, splat (double 0x408451671D164BD4)
  %2665 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2663, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2666 = fmul <8 x double> %2665, splat (double -4.000000e+00)
  %2667 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2664, <8 x double> %2664, <8 x double> %2666)
  %2668 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2667)
  %2669 = fsub <8 x double> %2664, %2668
  %2670 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2669, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2671 = select <8 x i1> %2631, <8 x double> %2637, <8 x double> %2670
  %2672 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2671, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2673 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2671, <8 x double> %2672, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2674 = load i64, ptr %156, align 8, !tbaa !20, !noalias !98
  %2675 = icmp sgt i64 %2674, 0
  br i1 %2675, label %2676, label %2678

2676:                                             ; preds = %2636
  %2677 = fdiv <8 x double> splat (double 1.000000e+00), %2673
  br label %2893

2678:                                             ; preds = %3074, %2636
  %2679 = phi <8 x double> [ zeroinitializer, %2636 ], [ %3152, %3074 ]
  %2680 = phi <8 x double> [ zeroinitializer, %2636 ], [ %3153, %3074 ]
  %2681 = extractelement <8 x double> %2679, i64 0
  %2682 = extractelement <8 x double> %2679, i64 1
  %2683 = fadd double %2681, %2682
  %2684 = extractelement <8 x double> %2679, i64 2
  %2685 = fadd double %2683, %2684
  %2686 = extractelement <8 x double> %2679, i64 3
  %2687 = fadd double %2685, %2686
  %2688 = extractelement <8 x double> %2679, i64 4
  %2689 = fadd double %2687, %2688
  %2690 = extractelement <8 x double> %2679, i64 5
  %2691 = fadd double %2689, %2690
  %2692 = extractelement <8 x double> %2679, i64 6
  %2693 = fadd double %2691, %2692
  %2694 = extractelement <8 x double> %2679, i64 7
  %2695 = fadd double %2693, %2694
  %2696 = insertelement <8 x double> poison, double %2695, i64 0
  %2697 = extractelement <8 x double> %2680, i64 0
  %2698 = extractelement <8 x double> %2680, i64 1
  %2699 = fadd double %2697, %2698
  %2700 = extractelement <8 x double> %2680, i64 2
  %2701 = fadd double %2699, %2700
  %2702 = extractelement <8 x double> %2680, i64 3
  %2703 = fadd double %2701, %2702
  %2704 = extractelement <8 x double> %2680, i64 4
  %2705 = fadd double %2703, %2704
  %2706 = extractelement <8 x double> %2680, i64 5
  %2707 = fadd double %2705, %2706
  %2708 = extractelement <8 x double> %2680, i64 6
  %2709 = fadd double %2707, %2708
  %2710 = extractelement <8 x double> %2680, i64 7
  %2711 = fadd double %2709, %2710
  %2712 = shufflevector <8 x double> %2696, <8 x double> poison, <8 x i32> zeroinitializer
  %2713 = insertelement <8 x double> poison, double %2711, i64 0
  %2714 = shufflevector <8 x double> %2713, <8 x double> poison, <8 x i32> zeroinitializer
  %2715 = fsub <8 x double> %2642, %2606
  %2716 = fcmp ogt <8 x double> %2715, zeroinitializer
  %2717 = select <8 x i1> %2716, <8 x double> %2715, <8 x double> zeroinitializer
  %2718 = fadd <8 x double> %2671, splat (double 2.731500e+02)
  %2719 = fdiv <8 x double> %2717, splat (double 4.615260e+02)
  %2720 = fadd <8 x double> %2633, %2719
  %2721 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2722 = fdiv <8 x double> %2720, %2721
  %2723 = fmul <8 x double> %2721, %2722
  %2724 = fdiv <8 x double> %2642, %2723
  %2725 = load <8 x double>, ptr %178, align 64, !tbaa !26, !noalias !101
  %2726 = fsub <8 x double> %2642, %2725
  %2727 = load <8 x double>, ptr %191, align 64, !tbaa !26, !noalias !101
  %2728 = fsub <8 x double> %2726, %2727
  %2729 = load <8 x double>, ptr %192, align 64, !tbaa !26, !noalias !101
  %2730 = load <8 x double>, ptr %138, align 64, !tbaa !26, !noalias !101
  %2731 = fcmp une <8 x double> %2730, splat (double 2.000000e+00)
  %2732 = load <8 x double>, ptr %193, align 64, !tbaa !26, !noalias !101
  %2733 = select <8 x i1> %2731, <8 x double> zeroinitializer, <8 x double> %2732
  %2734 = fadd <8 x double> %2729, %2733
  %2735 = fcmp ule <8 x double> %2726, zeroinitializer
  %2736 = fcmp ule <8 x double> %2734, zeroinitializer
  %2737 = or <8 x i1> %2735, %2736
  %2738 = fmul <8 x double> %2722, splat (double 2.000000e+00)
  %2739 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2738)
  %2740 = fmul <8 x double> %2739, %2734
  %2741 = fadd <8 x double> %2726, splat (double 2.000000e+02)
  %2742 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2741)
  %2743 = select <8 x i1> %2735, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2742
  %2744 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2726, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2745 = fmul <8 x double> %2744, %2740
  %2746 = fmul <8 x double> %2743, %2743
  %2747 = fmul <8 x double> %2743, %2746
  %2748 = fdiv <8 x double> %2745, %2747
  %2749 = fmul <8 x double> %2726, %2740
  %2750 = fdiv <8 x double> %2749, %2743
  %2751 = select <8 x i1> %2737, <8 x double> zeroinitializer, <8 x double> %2750
  %2752 = select <8 x i1> %2737, <8 x double> zeroinitializer, <8 x double> %2748
  %2753 = fcmp ule <8 x double> %2728, zeroinitializer
  %2754 = load <8 x double>, ptr %194, align 64, !tbaa !26, !noalias !101
  %2755 = fmul <8 x double> %2728, %2754
  %2756 = select <8 x i1> %2753, <8 x double> zeroinitializer, <8 x double> %2755
  %2757 = fadd <8 x double> %2756, %2751
  %2758 = select <8 x i1> %2753, <8 x double> zeroinitializer, <8 x double> %2754
  %2759 = fadd <8 x double> %2758, %2752
  %2760 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2761 = fsub <8 x double> %2725, %2642
  %2762 = fcmp ule <8 x double> %2761, zeroinitializer
  %2763 = fcmp ule <8 x double> %2760, zeroinitializer
  %2764 = or <8 x i1> %2762, %2763
  %2765 = fmul <8 x double> %2635, %2760
  %2766 = fadd <8 x double> %2761, splat (double 2.000000e+02)
  %2767 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2766)
  %2768 = select <8 x i1> %2762, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2767
  %2769 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2761, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2770 = fmul <8 x double> %2769, %2765
  %2771 = fmul <8 x double> %2768, %2768
  %2772 = fmul <8 x double> %2768, %2771
  %2773 = fdiv <8 x double> %2770, %2772
  %2774 = fmul <8 x double> %2761, %2765
  %2775 = fdiv <8 x double> %2774, %2768
  %2776 = load <8 x double>, ptr %163, align 64, !tbaa !26, !noalias !104
  %2777 = load <8 x double>, ptr %180, align 64, !tbaa !26, !noalias !104
  %2778 = load <8 x double>, ptr %164, align 64, !tbaa !26, !noalias !104
  %2779 = load <8 x double>, ptr %181, align 64, !tbaa !26, !noalias !104
  %2780 = fmul <8 x double> %2778, %2779
  %2781 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2776, <8 x double> %2777, <8 x double> %2780)
  %2782 = load <8 x double>, ptr %184, align 64, !tbaa !26, !noalias !104
  %2783 = load <8 x double>, ptr %162, align 64, !tbaa !26, !noalias !104
  %2784 = load <8 x double>, ptr %182, align 64, !tbaa !26, !noalias !104
  %2785 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2782, <8 x double> %2783, <8 x double> %2784)
  %2786 = load <8 x double>, ptr %183, align 64, !tbaa !26, !noalias !104
  %2787 = fneg <8 x double> %2781
  %2788 = fmul <8 x double> %2782, %2787
  %2789 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2784, <8 x double> %2786, <8 x double> %2788)
  %2790 = fdiv <8 x double> %2789, %2785
  %2791 = fcmp ogt <8 x double> %2717, splat (double 2.000000e+03)
  %2792 = select <8 x i1> %2791, <8 x double> %2717, <8 x double> splat (double 2.000000e+03)
  %2793 = fmul <8 x double> %2792, splat (double 0x3EB0C6F7A0B5ED8D)
  %2794 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2793)
  %2795 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2794)
  %2796 = fmul <8 x double> %2795, %2795
  %2797 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2795, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2796)
  %2798 = fadd <8 x double> %2797, splat (double 0x402DD4891DBECC6B)
  %2799 = fmul <8 x double> %2795, splat (double 0x40C77A698FD9BCCA)
  %2800 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2796, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2799)
  %2801 = fadd <8 x double> %2800, splat (double 0xC0B2D7440748F0B3)
  %2802 = fmul <8 x double> %2795, splat (double 0xC148A99584203885)
  %2803 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2796, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2802)
  %2804 = fadd <8 x double> %2803, splat (double 0x4118B9E59F2691E5)
  %2805 = fmul <8 x double> %2804, splat (double 2.000000e+00)
  %2806 = fneg <8 x double> %2801
  %2807 = fmul <8 x double> %2798, splat (double 4.000000e+00)
  %2808 = fneg <8 x double> %2804
  %2809 = fmul <8 x double> %2807, %2808
  %2810 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2801, <8 x double> %2801, <8 x double> %2809)
  %2811 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2810)
  %2812 = fsub <8 x double> %2806, %2811
  %2813 = fdiv <8 x double> %2805, %2812
  %2814 = fadd <8 x double> %2813, splat (double 0x408451671D164BD4)
  %2815 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2813, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2816 = fmul <8 x double> %2815, splat (double -4.000000e+00)
  %2817 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2814, <8 x double> %2814, <8 x double> %2816)
  %2818 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2817)
  %2819 = fsub <8 x double> %2814, %2818
  %2820 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2819, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2821 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2820, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2822 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2820, <8 x double> %2821, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2823 = fadd <8 x double> %2820, splat (double 2.731500e+02)
  %2824 = fcmp ule <8 x double> %2820, %2790
  %2825 = load <8 x double>, ptr %196, align 64, !tbaa !26, !noalias !104
  %2826 = fmul <8 x double> %2785, %2825
  %2827 = fadd <8 x double> %2785, %2825
  %2828 = fdiv <8 x double> %2826, %2827
  %2829 = fdiv <8 x double> %2828, %2822
  %2830 = fmul <8 x double> %2823, splat (double 4.615260e+02)
  %2831 = fmul <8 x double> %2792, %2822
  %2832 = fmul <8 x double> %2820, %2825
  %2833 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2790, <8 x double> %2785, <8 x double> %2832)
  %2834 = fdiv <8 x double> %2833, %2827
  %2835 = select <8 x i1> %2824, <8 x double> %2790, <8 x double> %2834
  store <8 x double> %2835, ptr %186, align 64, !tbaa !26, !noalias !104
  %2836 = fsub <8 x double> %2820, %2790
  %2837 = fmul <8 x double> %2836, %2829
  %2838 = select <8 x i1> %2824, <8 x double> zeroinitializer, <8 x double> %2837
  %2839 = fmul <8 x double> %2718, splat (double 4.615260e+02)
  %2840 = fmul <8 x double> %2718, %2839
  %2841 = fmul <8 x double> %2642, %2673
  %2842 = fdiv <8 x double> %2840, %2841
  %2843 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2783, <8 x double> %2642, <8 x double> %2617)
  %2844 = fsub <8 x double> %2712, %2838
  %2845 = fmul <8 x double> %2844, splat (double -4.615260e+02)
  %2846 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2620, <8 x double> %2843, <8 x double> %2845)
  %2847 = fmul <8 x double> %2775, splat (double -2.870530e+02)
  %2848 = select <8 x i1> %2764, <8 x double> splat (double -0.000000e+00), <8 x double> %2847
  %2849 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2724, <8 x double> %2757, <8 x double> %2848)
  %2850 = fadd <8 x double> %2849, %2846
  %2851 = fneg <8 x double> %2823
  %2852 = fmul <8 x double> %2830, %2851
  %2853 = fdiv <8 x double> %2852, %2831
  %2854 = fmul <8 x double> %2853, %2829
  %2855 = select <8 x i1> %2824, <8 x double> splat (double -0.000000e+00), <8 x double> %2854
  %2856 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2714, <8 x double> %2842, <8 x double> %2855)
  %2857 = fmul <8 x double> %2856, splat (double -4.615260e+02)
  %2858 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2620, <8 x double> %2783, <8 x double> %2857)
  %2859 = fmul <8 x double> %2773, splat (double 2.870530e+02)
  %2860 = select <8 x i1> %2764, <8 x double> zeroinitializer, <8 x double> %2859
  %2861 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2724, <8 x double> %2759, <8 x double> %2860)
  %2862 = fadd <8 x double> %2861, %2858
  %2863 = fcmp ule <8 x double> %2850, zeroinitializer
  %2864 = fcmp olt <8 x double> %2639, %2642
  %2865 = select <8 x i1> %2863, <8 x i1> splat (i1 true), <8 x i1> %2864
  %2866 = select <8 x i1> %2865, <8 x double> %2639, <8 x double> %2642
  %2867 = fcmp ogt <8 x double> %2638, %2642
  %2868 = select <8 x i1> %2867, <8 x double> %2638, <8 x double> %2642
  %2869 = select <8 x i1> %2863, <8 x double> %2868, <8 x double> %2638
  %2870 = fdiv <8 x double> %2850, %2862
  %2871 = fsub <8 x double> %2642, %2870
  %2872 = fsub <8 x double> %2871, %2642
  %2873 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2872)
  %2874 = fcmp uge <8 x double> %2873, splat (double 2.000000e-01)
  %2875 = fcmp uge <8 x double> %2869, %2871
  %2876 = fcmp uge <8 x double> %2871, %2866
  %2877 = or <8 x i1> %2875, %2876
  %2878 = and <8 x i1> %2874, %2877
  %2879 = fadd <8 x double> %2869, %2866
  %2880 = fmul <8 x double> %2879, splat (double 5.000000e-01)
  %2881 = select <8 x i1> %2878, <8 x double> %2880, <8 x double> %2871
  %2882 = fsub <8 x double> %2881, %2642
  %2883 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2882)
  %2884 = fcmp oge <8 x double> %2883, splat (double 2.000000e-01)
  %2885 = select <8 x i1> %2884, <8 x i64> %2640, <8 x i64> zeroinitializer
  %2886 = icmp eq <8 x i64> %2885, zeroinitializer
  %2887 = select <8 x i1> %2886, <8 x double> %2642, <8 x double> %2881
  %2888 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2885)
  %2889 = icmp ne i64 %2888, 0
  %2890 = add nuw nsw i32 %2641, 1
  %2891 = icmp samesign ult i32 %2641, 59
  %2892 = select i1 %2889, i1 %2891, i1 false
  br i1 %2892, label %2636, label %3157, !llvm.loop !107

2893:                                             ; preds = %2676, %3074
  %2894 = phi <8 x double> [ zeroinitializer, %2676 ], [ %3153, %3074 ]
  %2895 = phi <8 x double> [ zeroinitializer, %2676 ], [ %3152, %3074 ]
  %2896 = phi i64 [ 0, %2676 ], [ %3154, %3074 ]
  %2897 = load ptr, ptr %129, align 8, !tbaa !28, !noalias !98
  %2898 = getelementptr inbounds nuw %struct.Piece, ptr %2897, i64 %2896
  %2899 = getelementptr inbounds nuw i8, ptr %2898, i64 6208
  %2900 = load <8 x double>, ptr %2899, align 64, !tbaa !26, !noalias !98
  %2901 = getelementptr inbounds nuw i8, ptr %2898, i64 6272
  %2902 = load <8 x double>, ptr %2901, align 64, !tbaa !26, !noalias !98
  %2903 = getelementptr inbounds nuw i8, ptr %2898, i64 7680
  %2904 = load <8 x double>, ptr %2903, align 64, !tbaa !26, !noalias !98
  %2905 = fcmp ule <8 x double> %2904, splat (double 1.000000e+00)
  %2906 = fmul <8 x double> %2671, %2902
  %2907 = fcmp ogt <8 x double> %2900, %2906
  %2908 = and <8 x i1> %2905, %2907
  %2909 = fneg <8 x double> %2902
  %2910 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2909, <8 x double> %2671, <8 x double> %2900)
  %2911 = fmul <8 x double> %2677, %2910
  %2912 = select <8 x i1> %2908, <8 x double> %2911, <8 x double> zeroinitializer
  %2913 = fmul <8 x double> %2677, %2909
  %2914 = fdiv <8 x double> %2900, %2902
  %2915 = select <8 x i1> %2908, <8 x double> %2671, <8 x double> %2914
  %2916 = getelementptr inbounds nuw i8, ptr %2898, i64 8448
  %2917 = load <8 x i64>, ptr %2916, align 64, !tbaa !26, !noalias !98
  %2918 = getelementptr inbounds nuw i8, ptr %2898, i64 2240
  %2919 = load <8 x double>, ptr %2918, align 64, !tbaa !26, !noalias !98
  %2920 = fcmp ule <8 x double> %2919, zeroinitializer
  %2921 = xor <8 x i1> %2905, splat (i1 true)
  %2922 = select <8 x i1> %2921, <8 x i1> splat (i1 true), <8 x i1> %2920
  %2923 = getelementptr inbounds nuw i8, ptr %2898, i64 6336
  %2924 = load <8 x double>, ptr %2923, align 64, !tbaa !26, !noalias !98
  %2925 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2909, <8 x double> %2924, <8 x double> %2900)
  %2926 = fcmp ogt <8 x double> %2925, zeroinitializer
  %2927 = select <8 x i1> %2926, <8 x double> %2925, <8 x double> zeroinitializer
  %2928 = fmul <8 x double> %2677, %2927
  %2929 = icmp eq <8 x i64> %2917, zeroinitializer
  %2930 = select <8 x i1> %2922, <8 x i1> splat (i1 true), <8 x i1> %2929
  %2931 = select <8 x i1> %2930, <8 x double> %2912, <8 x double> %2928
  %2932 = select <8 x i1> %2930, <8 x double> %2915, <8 x double> %2924
  %2933 = select <8 x i1> %2930, <8 x i1> %2908, <8 x i1> zeroinitializer
  %2934 = select <8 x i1> %2933, <8 x double> %2913, <8 x double> zeroinitializer
  %2935 = getelementptr inbounds nuw i8, ptr %2898, i64 7872
  %2936 = getelementptr inbounds nuw i8, ptr %2898, i64 8128
  %2937 = load <8 x double>, ptr %2936, align 64, !tbaa !26, !noalias !108
  %2938 = fcmp ole <8 x double> %2671, %2937
  %2939 = getelementptr inbounds nuw i8, ptr %2898, i64 8192
  %2940 = load <8 x double>, ptr %2939, align 64, !tbaa !26, !noalias !108
  %2941 = fcmp oge <8 x double> %2671, %2940
  %2942 = or <8 x i1> %2938, %2941
  %2943 = bitcast <8 x i1> %2942 to i8
  %2944 = icmp eq i8 %2943, 0
  br i1 %2944, label %2945, label %2953

2945:                                             ; preds = %2893
  %2946 = load <8 x double>, ptr %2935, align 64, !tbaa !26, !noalias !108
  %2947 = getelementptr inbounds nuw i8, ptr %2898, i64 7936
  %2948 = load <8 x double>, ptr %2947, align 64, !tbaa !26, !noalias !108
  %2949 = getelementptr inbounds nuw i8, ptr %2898, i64 8064
  %2950 = load <8 x double>, ptr %2949, align 64, !tbaa !26, !noalias !108
  %2951 = getelementptr inbounds nuw i8, ptr %2898, i64 8000
  %2952 = load <8 x double>, ptr %2951, align 64, !tbaa !26, !noalias !108
  br label %3074

2953:                                             ; preds = %2893
  %2954 = load i64, ptr %119, align 16, !tbaa !21, !noalias !111
  %2955 = sitofp i64 %2954 to double
  %2956 = insertelement <8 x double> poison, double %2955, i64 0
  %2957 = shufflevector <8 x double> %2956, <8 x double> poison, <8 x i32> zeroinitializer
  %2958 = icmp sgt i64 %2954, 0
  br i1 %2958, label %2959, label %3049

2959:                                             ; preds = %2953
  %2960 = getelementptr inbounds nuw i8, ptr %2898, i64 8568
  %2961 = load ptr, ptr %2960, align 8, !tbaa !86, !noalias !111
  %2962 = getelementptr inbounds nuw i8, ptr %2898, i64 8576
  %2963 = load ptr, ptr %2962, align 64, !tbaa !87, !noalias !111
  %2964 = getelementptr inbounds nuw i8, ptr %2898, i64 8512
  %2965 = load i64, ptr %2964, align 64, !tbaa !31, !noalias !111
  %2966 = getelementptr inbounds nuw i8, ptr %2898, i64 8592
  %2967 = getelementptr inbounds nuw i8, ptr %2898, i64 8584
  %2968 = getelementptr inbounds nuw i8, ptr %2898, i64 8600
  br label %2969

2969:                                             ; preds = %2959, %3017
  %2970 = phi <8 x i64> [ splat (i64 -1), %2959 ], [ %2989, %3017 ]
  %2971 = phi i64 [ %2954, %2959 ], [ %2979, %3017 ]
  %2972 = phi <8 x double> [ splat (double 1.000000e+09), %2959 ], [ %3032, %3017 ]
  %2973 = phi <8 x double> [ zeroinitializer, %2959 ], [ %3036, %3017 ]
  %2974 = phi <8 x double> [ splat (double 1.000000e+09), %2959 ], [ %3014, %3017 ]
  %2975 = phi <8 x double> [ splat (double 1.000000e+00), %2959 ], [ %3013, %3017 ]
  %2976 = phi <8 x double> [ %2957, %2959 ], [ %3040, %3017 ]
  %2977 = phi <8 x double> [ zeroinitializer, %2959 ], [ %3029, %3017 ]
  %2978 = phi <8 x double> [ zeroinitializer, %2959 ], [ %3027, %3017 ]
  %2979 = add nsw i64 %2971, -1
  %2980 = getelementptr inbounds nuw <8 x double>, ptr %2961, i64 %2979
  %2981 = load <8 x double>, ptr %2980, align 64, !tbaa !26, !noalias !111
  %2982 = getelementptr inbounds nuw <8 x double>, ptr %2963, i64 %2979
  %2983 = load <8 x double>, ptr %2982, align 64, !tbaa !26, !noalias !111
  %2984 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2983, <8 x double> %2671, <8 x double> %2981)
  %2985 = fsub <8 x double> %2984, %2671
  %2986 = fcmp ogt <8 x double> %2985, splat (double 1.000000e-09)
  %2987 = select <8 x i1> %2986, <8 x i64> %2970, <8 x i64> zeroinitializer
  %2988 = icmp sgt i64 %2971, %2965
  %2989 = select i1 %2988, <8 x i64> %2987, <8 x i64> zeroinitializer
  %2990 = icmp slt i64 %2971, %2954
  br i1 %2990, label %2991, label %3003

2991:                                             ; preds = %2969
  %2992 = load ptr, ptr %2966, align 16, !tbaa !84, !noalias !111
  %2993 = getelementptr inbounds nuw <8 x double>, ptr %2992, i64 %2971
  %2994 = load <8 x double>, ptr %2993, align 64, !tbaa !26, !noalias !111
  %2995 = fmul <8 x double> %2985, %2994
  %2996 = icmp eq <8 x i64> %2989, %2970
  %2997 = select <8 x i1> %2996, <8 x double> zeroinitializer, <8 x double> %2995
  %2998 = fadd <8 x double> %2978, %2997
  %2999 = fadd <8 x double> %2983, splat (double -1.000000e+00)
  %3000 = fmul <8 x double> %2999, %2994
  %3001 = select <8 x i1> %2996, <8 x double> zeroinitializer, <8 x double> %3000
  %3002 = fadd <8 x double> %2977, %3001
  br label %3003

3003:                                             ; preds = %2991, %2969
  %3004 = phi <8 x double> [ %2998, %2991 ], [ %2978, %2969 ]
  %3005 = phi <8 x double> [ %3002, %2991 ], [ %2977, %2969 ]
  br i1 %2988, label %3006, label %3012

3006:                                             ; preds = %3003
  %3007 = fneg <8 x double> %2985
  %3008 = icmp eq <8 x i64> %2989, %2970
  %3009 = select <8 x i1> %3008, <8 x double> %2974, <8 x double> %3007
  %3010 = fsub <8 x double> splat (double 1.000000e+00), %2983
  %3011 = select <8 x i1> %3008, <8 x double> %2975, <8 x double> %3010
  br label %3012

3012:                                             ; preds = %3006, %3003
  %3013 = phi <8 x double> [ %3011, %3006 ], [ %2975, %3003 ]
  %3014 = phi <8 x double> [ %3009, %3006 ], [ %2974, %3003 ]
  %3015 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2989)
  %3016 = icmp eq i64 %3015, 0
  br i1 %3016, label %3042, label %3017

3017:                                             ; preds = %3012
  %3018 = load ptr, ptr %2967, align 8, !tbaa !83, !noalias !111
  %3019 = getelementptr inbounds nuw <8 x double>, ptr %3018, i64 %2979
  %3020 = load <8 x double>, ptr %3019, align 64, !tbaa !26, !noalias !111
  %3021 = load ptr, ptr %2968, align 8, !tbaa !85, !noalias !111
  %3022 = getelementptr inbounds nuw <8 x double>, ptr %3021, i64 %2979
  %3023 = load <8 x double>, ptr %3022, align 64, !tbaa !26, !noalias !111
  %3024 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3023, <8 x double> %2671, <8 x double> %3020)
  %3025 = icmp eq <8 x i64> %2989, zeroinitializer
  %3026 = select <8 x i1> %3025, <8 x double> zeroinitializer, <8 x double> %3024
  %3027 = fadd <8 x double> %3004, %3026
  %3028 = select <8 x i1> %3025, <8 x double> zeroinitializer, <8 x double> %3023
  %3029 = fadd <8 x double> %3005, %3028
  %3030 = fcmp olt <8 x double> %2972, %2985
  %3031 = select <8 x i1> %3025, <8 x i1> splat (i1 true), <8 x i1> %3030
  %3032 = select <8 x i1> %3031, <8 x double> %2972, <8 x double> %2985
  %3033 = fsub <8 x double> splat (double 1.000000e+00), %2983
  %3034 = fcmp ogt <8 x double> %2973, %3033
  %3035 = select <8 x i1> %3025, <8 x i1> splat (i1 true), <8 x i1> %3034
  %3036 = select <8 x i1> %3035, <8 x double> %2973, <8 x double> %3033
  %3037 = uitofp nneg i64 %2979 to double
  %3038 = insertelement <8 x double> poison, double %3037, i64 0
  %3039 = shufflevector <8 x double> %3038, <8 x double> poison, <8 x i32> zeroinitializer
  %3040 = select <8 x i1> %3025, <8 x double> %2976, <8 x double> %3039
  %3041 = icmp samesign ugt i64 %2971, 1
  br i1 %3041, label %2969, label %3042, !llvm.loop !114

3042:                                             ; preds = %3012, %3017
  %3043 = phi <8 x double> [ %3040, %3017 ], [ %2976, %3012 ]
  %3044 = phi <8 x double> [ %3036, %3017 ], [ %2973, %3012 ]
  %3045 = phi <8 x double> [ %3032, %3017 ], [ %2972, %3012 ]
  %3046 = phi <8 x double> [ %3027, %3017 ], [ %3004, %3012 ]
  %3047 = phi <8 x double> [ %3029, %3017 ], [ %3005, %3012 ]
  %3048 = fdiv <8 x double> %3014, %3013
  br label %3049

3049:                                             ; preds = %3042, %2953
  %3050 = phi <8 x double> [ %2957, %2953 ], [ %3043, %3042 ]
  %3051 = phi <8 x double> [ zeroinitializer, %2953 ], [ %3044, %3042 ]
  %3052 = phi <8 x double> [ splat (double 1.000000e+09), %2953 ], [ %3045, %3042 ]
  %3053 = phi <8 x double> [ zeroinitializer, %2953 ], [ %3046, %3042 ]
  %3054 = phi <8 x double> [ zeroinitializer, %2953 ], [ %3047, %3042 ]
  %3055 = phi <8 x double> [ splat (double 1.000000e+09), %2953 ], [ %3048, %3042 ]
  %3056 = fsub <8 x double> %2671, %3055
  %3057 = fcmp ogt <8 x double> %3051, splat (double 1.000000e-09)
  %3058 = select <8 x i1> %3057, <8 x double> %3051, <8 x double> splat (double 1.000000e-09)
  %3059 = fdiv <8 x double> %3052, %3058
  %3060 = fadd <8 x double> %2671, %3059
  %3061 = load <8 x double>, ptr %2935, align 64, !tbaa !26, !noalias !108
  %3062 = select <8 x i1> %2942, <8 x double> %3053, <8 x double> %3061
  store <8 x double> %3062, ptr %2935, align 64, !tbaa !26, !noalias !108
  %3063 = getelementptr inbounds nuw i8, ptr %2898, i64 7936
  %3064 = load <8 x double>, ptr %3063, align 64, !tbaa !26, !noalias !108
  %3065 = select <8 x i1> %2942, <8 x double> %3054, <8 x double> %3064
  store <8 x double> %3065, ptr %3063, align 64, !tbaa !26, !noalias !108
  %3066 = getelementptr inbounds nuw i8, ptr %2898, i64 8000
  %3067 = load <8 x double>, ptr %3066, align 64, !tbaa !26, !noalias !108
  %3068 = select <8 x i1> %2942, <8 x double> %3050, <8 x double> %3067
  store <8 x double> %3068, ptr %3066, align 64, !tbaa !26, !noalias !108
  %3069 = getelementptr inbounds nuw i8, ptr %2898, i64 8064
  %3070 = load <8 x double>, ptr %3069, align 64, !tbaa !26, !noalias !108
  %3071 = select <8 x i1> %2942, <8 x double> %2671, <8 x double> %3070
  store <8 x double> %3071, ptr %3069, align 64, !tbaa !26, !noalias !108
  %3072 = select <8 x i1> %2942, <8 x double> %3056, <8 x double> %2937
  store <8 x double> %3072, ptr %2936, align 64, !tbaa !26, !noalias !108
  %3073 = select <8 x i1> %2942, <8 x double> %3060, <8 x double> %2940
  store <8 x double> %3073, ptr %2939, align 64, !tbaa !26, !noalias !108
  br label %3074

3074:                                             ; preds = %2945, %3049
  %3075 = phi <8 x double> [ %2952, %2945 ], [ %3068, %3049 ]
  %3076 = phi <8 x double> [ %2950, %2945 ], [ %3071, %3049 ]
  %3077 = phi <8 x double> [ %2948, %2945 ], [ %3065, %3049 ]
  %3078 = phi <8 x double> [ %2946, %2945 ], [ %3062, %3049 ]
  %3079 = fsub <8 x double> %2671, %3076
  %3080 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3077, <8 x double> %3079, <8 x double> %3078)
  %3081 = getelementptr inbounds nuw i8, ptr %2898, i64 6464
  %3082 = load <8 x double>, ptr %3081, align 64, !tbaa !26, !noalias !98
  %3083 = getelementptr inbounds nuw i8, ptr %2898, i64 5888
  %3084 = load <8 x double>, ptr %3083, align 64, !tbaa !26, !noalias !98
  %3085 = getelementptr inbounds nuw i8, ptr %2898, i64 7424
  %3086 = load <8 x double>, ptr %3085, align 64, !tbaa !26, !noalias !98
  %3087 = fneg <8 x double> %3086
  %3088 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3082, <8 x double> %3084, <8 x double> %3087)
  %3089 = getelementptr inbounds nuw i8, ptr %2898, i64 7360
  %3090 = load <8 x double>, ptr %3089, align 64, !tbaa !26, !noalias !98
  %3091 = fadd <8 x double> %3082, %3090
  %3092 = getelementptr inbounds nuw i8, ptr %2898, i64 8320
  %3093 = load <8 x i64>, ptr %3092, align 64, !tbaa !26, !noalias !98
  %3094 = getelementptr inbounds nuw i8, ptr %2898, i64 8672
  %3095 = load ptr, ptr %3094, align 32, !tbaa !92, !noalias !98
  %3096 = load <8 x double>, ptr %3095, align 64, !tbaa !26, !noalias !98
  %3097 = fmul <8 x double> %3082, %3096
  %3098 = icmp eq <8 x i64> %3093, zeroinitializer
  %3099 = select <8 x i1> %3098, <8 x double> %3088, <8 x double> %3097
  %3100 = getelementptr inbounds nuw i8, ptr %2898, i64 8680
  %3101 = load ptr, ptr %3100, align 8, !tbaa !93, !noalias !98
  %3102 = load <8 x double>, ptr %3101, align 64, !tbaa !26, !noalias !98
  %3103 = fsub <8 x double> splat (double 1.000000e+00), %3102
  %3104 = fmul <8 x double> %3082, %3103
  %3105 = select <8 x i1> %3098, <8 x double> %3091, <8 x double> %3104
  %3106 = fneg <8 x double> %3105
  %3107 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3106, <8 x double> %2671, <8 x double> %3099)
  %3108 = load i64, ptr %119, align 16, !tbaa !21, !noalias !98
  %3109 = sitofp i64 %3108 to double
  %3110 = insertelement <8 x double> poison, double %3109, i64 0
  %3111 = shufflevector <8 x double> %3110, <8 x double> poison, <8 x i32> zeroinitializer
  %3112 = fcmp olt <8 x double> %3075, %3111
  %3113 = and <8 x i1> %2905, %3112
  %3114 = fcmp ogt <8 x double> %3080, zeroinitializer
  %3115 = fcmp oge <8 x double> %3107, zeroinitializer
  %3116 = and <8 x i1> %3114, %3115
  %3117 = and <8 x i1> %3116, %3113
  %3118 = sext <8 x i1> %3117 to <8 x i64>
  %3119 = xor <8 x i64> %3118, splat (i64 -1)
  %3120 = fadd <8 x double> %3080, %3107
  %3121 = fcmp ogt <8 x double> %3120, zeroinitializer
  %3122 = select <8 x i1> %3121, <8 x i1> %3113, <8 x i1> zeroinitializer
  %3123 = select <8 x i1> %3122, <8 x i64> %3119, <8 x i64> zeroinitializer
  %3124 = or <8 x i64> %3123, %3118
  %3125 = fmul <8 x double> %2677, %3107
  %3126 = select <8 x i1> %3117, <8 x double> %3125, <8 x double> zeroinitializer
  %3127 = icmp eq <8 x i64> %3124, zeroinitializer
  %3128 = select <8 x i1> %3127, <8 x double> %2931, <8 x double> %3126
  %3129 = select <8 x i1> %3127, <8 x double> %2932, <8 x double> %2671
  %3130 = fsub <8 x double> %3077, %3105
  %3131 = fmul <8 x double> %2677, %3130
  %3132 = select <8 x i1> %3127, <8 x double> %2934, <8 x double> %3131
  %3133 = getelementptr inbounds nuw i8, ptr %2898, i64 6016
  store <8 x double> %3128, ptr %3133, align 64, !tbaa !26, !noalias !98
  %3134 = getelementptr inbounds nuw i8, ptr %2898, i64 5952
  store <8 x double> %3129, ptr %3134, align 64, !tbaa !26, !noalias !98
  %3135 = fmul <8 x double> %2677, %3080
  %3136 = fmul <8 x double> %2677, %3120
  %3137 = icmp eq <8 x i64> %3123, zeroinitializer
  %3138 = select <8 x i1> %3137, <8 x double> zeroinitializer, <8 x double> %3136
  %3139 = select <8 x i1> %3117, <8 x double> %3135, <8 x double> %3138
  %3140 = getelementptr inbounds nuw i8, ptr %2898, i64 6080
  store <8 x double> %3139, ptr %3140, align 64, !tbaa !26, !noalias !98
  %3141 = load i64, ptr %119, align 16, !tbaa !21, !noalias !98
  %3142 = sitofp i64 %3141 to double
  %3143 = insertelement <8 x double> poison, double %3142, i64 0
  %3144 = shufflevector <8 x double> %3143, <8 x double> poison, <8 x i32> zeroinitializer
  %3145 = select <8 x i1> %3127, <8 x double> %3144, <8 x double> %3075
  %3146 = getelementptr inbounds nuw i8, ptr %2898, i64 6144
  store <8 x double> %3145, ptr %3146, align 64, !tbaa !26, !noalias !98
  %3147 = getelementptr inbounds nuw i8, ptr %2898, i64 128
  %3148 = load <8 x double>, ptr %3147, align 64, !tbaa !26, !noalias !98
  %3149 = fadd <8 x double> %3128, %3139
  %3150 = fmul <8 x double> %3148, %3149
  %3151 = fmul <8 x double> %3148, %3132
  %3152 = fadd <8 x double> %2895, %3150
  %3153 = fadd <8 x double> %2894, %3151
  %3154 = add nuw nsw i64 %2896, 1
  %3155 = load i64, ptr %156, align 8, !tbaa !20, !noalias !98
  %3156 = icmp slt i64 %3154, %3155
  br i1 %3156, label %2893, label %2678, !llvm.loop !115

3157:                                             ; preds = %2678
  %3158 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %3159 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %3160 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %3161 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %3162 = fmul <8 x double> %3160, %3161
  %3163 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3158, <8 x double> %3159, <8 x double> %3162)
  %3164 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %3165 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %3166 = fsub <8 x double> %3165, %2887
  %3167 = fcmp ule <8 x double> %3166, zeroinitializer
  %3168 = fcmp ule <8 x double> %3164, zeroinitializer
  %3169 = or <8 x i1> %3168, %3167
  %3170 = fmul <8 x double> %2635, %3164
  %3171 = fadd <8 x double> %3166, splat (double 2.000000e+02)
  %3172 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3171)
  %3173 = select <8 x i1> %3167, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3172
  %3174 = fmul <8 x double> %3170, %3166
  %3175 = fdiv <8 x double> %3174, %3173
  %3176 = fmul <8 x double> %3175, splat (double 2.870530e+02)
  %3177 = select <8 x i1> %3169, <8 x double> zeroinitializer, <8 x double> %3176
  %3178 = fdiv <8 x double> %3177, %2620
  %3179 = fsub <8 x double> %3178, %3163
  %3180 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %3181 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %3182 = fmul <8 x double> %2722, %3181
  %3183 = fdiv <8 x double> %2757, %3182
  %3184 = fadd <8 x double> %3180, %3183
  %3185 = fdiv <8 x double> %3179, %3184
  %3186 = fcmp ogt <8 x double> %3185, zeroinitializer
  %3187 = select <8 x i1> %3186, <8 x double> %3185, <8 x double> zeroinitializer
  %3188 = fcmp olt <8 x double> %3187, %2887
  %3189 = select <8 x i1> %3188, <8 x double> %3187, <8 x double> %2887
  %3190 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3191 = select <8 x i1> %2631, <8 x double> %3190, <8 x double> %3189
  store <8 x double> %3191, ptr %185, align 64, !tbaa !26
  %3192 = select <8 x i1> %2631, <8 x double> %2608, <8 x double> %2835
  store <8 x double> %3192, ptr %186, align 64, !tbaa !26
  store <8 x double> %2887, ptr %179, align 64, !tbaa !26
  store <8 x double> %2671, ptr %199, align 64, !tbaa !26
  %3193 = load i64, ptr %156, align 8, !tbaa !20
  br label %3448

3194:                                             ; preds = %2587
  store <8 x double> %2589, ptr %199, align 64, !tbaa !26
  br i1 %2351, label %3195, label %3451

3195:                                             ; preds = %3194
  %3196 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2589, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3197 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2589, <8 x double> %3196, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3198 = fdiv <8 x double> splat (double 1.000000e+00), %3197
  br label %3199

3199:                                             ; preds = %3195, %3375
  %3200 = phi i64 [ 0, %3195 ], [ %3445, %3375 ]
  %3201 = load ptr, ptr %129, align 8, !tbaa !28, !noalias !116
  %3202 = getelementptr inbounds nuw %struct.Piece, ptr %3201, i64 %3200
  %3203 = getelementptr inbounds nuw i8, ptr %3202, i64 6208
  %3204 = load <8 x double>, ptr %3203, align 64, !tbaa !26, !noalias !116
  %3205 = getelementptr inbounds nuw i8, ptr %3202, i64 6272
  %3206 = load <8 x double>, ptr %3205, align 64, !tbaa !26, !noalias !116
  %3207 = getelementptr inbounds nuw i8, ptr %3202, i64 7680
  %3208 = load <8 x double>, ptr %3207, align 64, !tbaa !26, !noalias !116
  %3209 = fcmp ule <8 x double> %3208, splat (double 1.000000e+00)
  %3210 = fmul <8 x double> %2589, %3206
  %3211 = fcmp ogt <8 x double> %3204, %3210
  %3212 = and <8 x i1> %3209, %3211
  %3213 = fneg <8 x double> %3206
  %3214 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3213, <8 x double> %2589, <8 x double> %3204)
  %3215 = fmul <8 x double> %3198, %3214
  %3216 = select <8 x i1> %3212, <8 x double> %3215, <8 x double> zeroinitializer
  %3217 = fdiv <8 x double> %3204, %3206
  %3218 = select <8 x i1> %3212, <8 x double> %2589, <8 x double> %3217
  %3219 = getelementptr inbounds nuw i8, ptr %3202, i64 8448
  %3220 = load <8 x i64>, ptr %3219, align 64, !tbaa !26, !noalias !116
  %3221 = getelementptr inbounds nuw i8, ptr %3202, i64 2240
  %3222 = load <8 x double>, ptr %3221, align 64, !tbaa !26, !noalias !116
  %3223 = fcmp ule <8 x double> %3222, zeroinitializer
  %3224 = xor <8 x i1> %3209, splat (i1 true)
  %3225 = select <8 x i1> %3224, <8 x i1> splat (i1 true), <8 x i1> %3223
  %3226 = getelementptr inbounds nuw i8, ptr %3202, i64 6336
  %3227 = load <8 x double>, ptr %3226, align 64, !tbaa !26, !noalias !116
  %3228 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3213, <8 x double> %3227, <8 x double> %3204)
  %3229 = fcmp ogt <8 x double> %3228, zeroinitializer
  %3230 = select <8 x i1> %3229, <8 x double> %3228, <8 x double> zeroinitializer
  %3231 = fmul <8 x double> %3198, %3230
  %3232 = icmp eq <8 x i64> %3220, zeroinitializer
  %3233 = select <8 x i1> %3225, <8 x i1> splat (i1 true), <8 x i1> %3232
  %3234 = select <8 x i1> %3233, <8 x double> %3216, <8 x double> %3231
  %3235 = select <8 x i1> %3233, <8 x double> %3218, <8 x double> %3227
  %3236 = getelementptr inbounds nuw i8, ptr %3202, i64 7872
  %3237 = getelementptr inbounds nuw i8, ptr %3202, i64 8128
  %3238 = load <8 x double>, ptr %3237, align 64, !tbaa !26, !noalias !119
  %3239 = fcmp ole <8 x double> %2589, %3238
  %3240 = getelementptr inbounds nuw i8, ptr %3202, i64 8192
  %3241 = load <8 x double>, ptr %3240, align 64, !tbaa !26, !noalias !119
  %3242 = fcmp oge <8 x double> %2589, %3241
  %3243 = or <8 x i1> %3239, %3242
  %3244 = bitcast <8 x i1> %3243 to i8
  %3245 = icmp eq i8 %3244, 0
  br i1 %3245, label %3246, label %3254

3246:                                             ; preds = %3199
  %3247 = load <8 x double>, ptr %3236, align 64, !tbaa !26, !noalias !119
  %3248 = getelementptr inbounds nuw i8, ptr %3202, i64 7936
  %3249 = load <8 x double>, ptr %3248, align 64, !tbaa !26, !noalias !119
  %3250 = getelementptr inbounds nuw i8, ptr %3202, i64 8064
  %3251 = load <8 x double>, ptr %3250, align 64, !tbaa !26, !noalias !119
  %3252 = getelementptr inbounds nuw i8, ptr %3202, i64 8000
  %3253 = load <8 x double>, ptr %3252, align 64, !tbaa !26, !noalias !119
  br label %3375

3254:                                             ; preds = %3199
  %3255 = load i64, ptr %119, align 16, !tbaa !21, !noalias !122
  %3256 = sitofp i64 %3255 to double
  %3257 = insertelement <8 x double> poison, double %3256, i64 0
  %3258 = shufflevector <8 x double> %3257, <8 x double> poison, <8 x i32> zeroinitializer
  %3259 = icmp sgt i64 %3255, 0
  br i1 %3259, label %3260, label %3350

3260:                                             ; preds = %3254
  %3261 = getelementptr inbounds nuw i8, ptr %3202, i64 8568
  %3262 = load ptr, ptr %3261, align 8, !tbaa !86, !noalias !122
  %3263 = getelementptr inbounds nuw i8, ptr %3202, i64 8576
  %3264 = load ptr, ptr %3263, align 64, !tbaa !87, !noalias !122
  %3265 = getelementptr inbounds nuw i8, ptr %3202, i64 8512
  %3266 = load i64, ptr %3265, align 64, !tbaa !31, !noalias !122
  %3267 = getelementptr inbounds nuw i8, ptr %3202, i64 8592
  %3268 = getelementptr inbounds nuw i8, ptr %3202, i64 8584
  %3269 = getelementptr inbounds nuw i8, ptr %3202, i64 8600
  br label %3270

3270:                                             ; preds = %3260, %3318
  %3271 = phi <8 x i64> [ splat (i64 -1), %3260 ], [ %3290, %3318 ]
  %3272 = phi i64 [ %3255, %3260 ], [ %3280, %3318 ]
  %3273 = phi <8 x double> [ splat (double 1.000000e+09), %3260 ], [ %3333, %3318 ]
  %3274 = phi <8 x double> [ zeroinitializer, %3260 ], [ %3337, %3318 ]
  %3275 = phi <8 x double> [ splat (double 1.000000e+09), %3260 ], [ %3315, %3318 ]
  %3276 = phi <8 x double> [ splat (double 1.000000e+00), %3260 ], [ %3314, %3318 ]
  %3277 = phi <8 x double> [ %3258, %3260 ], [ %3341, %3318 ]
  %3278 = phi <8 x double> [ zeroinitializer, %3260 ], [ %3330, %3318 ]
  %3279 = phi <8 x double> [ zeroinitializer, %3260 ], [ %3328, %3318 ]
  %3280 = add nsw i64 %3272, -1
  %3281 = getelementptr inbounds nuw <8 x double>, ptr %3262, i64 %3280
  %3282 = load <8 x double>, ptr %3281, align 64, !tbaa !26, !noalias !122
  %3283 = getelementptr inbounds nuw <8 x double>, ptr %3264, i64 %3280
  %3284 = load <8 x double>, ptr %3283, align 64, !tbaa !26, !noalias !122
  %3285 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3284, <8 x double> %2589, <8 x double> %3282)
  %3286 = fsub <8 x double> %3285, %2589
  %3287 = fcmp ogt <8 x double> %3286, splat (double 1.000000e-09)
  %3288 = select <8 x i1> %3287, <8 x i64> %3271, <8 x i64> zeroinitializer
  %3289 = icmp sgt i64 %3272, %3266
  %3290 = select i1 %3289, <8 x i64> %3288, <8 x i64> zeroinitializer
  %3291 = icmp slt i64 %3272, %3255
  br i1 %3291, label %3292, label %3304

3292:                                             ; preds = %3270
  %3293 = load ptr, ptr %3267, align 16, !tbaa !84, !noalias !122
  %3294 = getelementptr inbounds nuw <8 x double>, ptr %3293, i64 %3272
  %3295 = load <8 x double>, ptr %3294, align 64, !tbaa !26, !noalias !122
  %3296 = fmul <8 x double> %3286, %3295
  %3297 = icmp eq <8 x i64> %3290, %3271
  %3298 = select <8 x i1> %3297, <8 x double> zeroinitializer, <8 x double> %3296
  %3299 = fadd <8 x double> %3279, %3298
  %3300 = fadd <8 x double> %3284, splat (double -1.000000e+00)
  %3301 = fmul <8 x double> %3300, %3295
  %3302 = select <8 x i1> %3297, <8 x double> zeroinitializer, <8 x double> %3301
  %3303 = fadd <8 x double> %3278, %3302
  br label %3304

3304:                                             ; preds = %3292, %3270
  %3305 = phi <8 x double> [ %3299, %3292 ], [ %3279, %3270 ]
  %3306 = phi <8 x double> [ %3303, %3292 ], [ %3278, %3270 ]
  br i1 %3289, label %3307, label %3313

3307:                                             ; preds = %3304
  %3308 = fneg <8 x double> %3286
  %3309 = icmp eq <8 x i64> %3290, %3271
  %3310 = select <8 x i1> %3309, <8 x double> %3275, <8 x double> %3308
  %3311 = fsub <8 x double> splat (double 1.000000e+00), %3284
  %3312 = select <8 x i1> %3309, <8 x double> %3276, <8 x double> %3311
  br label %3313

3313:                                             ; preds = %3307, %3304
  %3314 = phi <8 x double> [ %3312, %3307 ], [ %3276, %3304 ]
  %3315 = phi <8 x double> [ %3310, %3307 ], [ %3275, %3304 ]
  %3316 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3290)
  %3317 = icmp eq i64 %3316, 0
  br i1 %3317, label %3343, label %3318

3318:                                             ; preds = %3313
  %3319 = load ptr, ptr %3268, align 8, !tbaa !83, !noalias !122
  %3320 = getelementptr inbounds nuw <8 x double>, ptr %3319, i64 %3280
  %3321 = load <8 x double>, ptr %3320, align 64, !tbaa !26, !noalias !122
  %3322 = load ptr, ptr %3269, align 8, !tbaa !85, !noalias !122
  %3323 = getelementptr inbounds nuw <8 x double>, ptr %3322, i64 %3280
  %3324 = load <8 x double>, ptr %3323, align 64, !tbaa !26, !noalias !122
  %3325 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3324, <8 x double> %2589, <8 x double> %3321)
  %3326 = icmp eq <8 x i64> %3290, zeroinitializer
  %3327 = select <8 x i1> %3326, <8 x double> zeroinitializer, <8 x double> %3325
  %3328 = fadd <8 x double> %3305, %3327
  %3329 = select <8 x i1> %3326, <8 x double> zeroinitializer, <8 x double> %3324
  %3330 = fadd <8 x double> %3306, %3329
  %3331 = fcmp olt <8 x double> %3273, %3286
  %3332 = select <8 x i1> %3326, <8 x i1> splat (i1 true), <8 x i1> %3331
  %3333 = select <8 x i1> %3332, <8 x double> %3273, <8 x double> %3286
  %3334 = fsub <8 x double> splat (double 1.000000e+00), %3284
  %3335 = fcmp ogt <8 x double> %3274, %3334
  %3336 = select <8 x i1> %3326, <8 x i1> splat (i1 true), <8 x i1> %3335
  %3337 = select <8 x i1> %3336, <8 x double> %3274, <8 x double> %3334
  %3338 = uitofp nneg i64 %3280 to double
  %3339 = insertelement <8 x double> poison, double %3338, i64 0
  %3340 = shufflevector <8 x double> %3339, <8 x double> poison, <8 x i32> zeroinitializer
  %3341 = select <8 x i1> %3326, <8 x double> %3277, <8 x double> %3340
  %3342 = icmp samesign ugt i64 %3272, 1
  br i1 %3342, label %3270, label %3343, !llvm.loop !114

3343:                                             ; preds = %3313, %3318
  %3344 = phi <8 x double> [ %3341, %3318 ], [ %3277, %3313 ]
  %3345 = phi <8 x double> [ %3337, %3318 ], [ %3274, %3313 ]
  %3346 = phi <8 x double> [ %3333, %3318 ], [ %3273, %3313 ]
  %3347 = phi <8 x double> [ %3328, %3318 ], [ %3305, %3313 ]
  %3348 = phi <8 x double> [ %3330, %3318 ], [ %3306, %3313 ]
  %3349 = fdiv <8 x double> %3315, %3314
  br label %3350

3350:                                             ; preds = %3343, %3254
  %3351 = phi <8 x double> [ %3258, %3254 ], [ %3344, %3343 ]
  %3352 = phi <8 x double> [ zeroinitializer, %3254 ], [ %3345, %3343 ]
  %3353 = phi <8 x double> [ splat (double 1.000000e+09), %3254 ], [ %3346, %3343 ]
  %3354 = phi <8 x double> [ zeroinitializer, %3254 ], [ %3347, %3343 ]
  %3355 = phi <8 x double> [ zeroinitializer, %3254 ], [ %3348, %3343 ]
  %3356 = phi <8 x double> [ splat (double 1.000000e+09), %3254 ], [ %3349, %3343 ]
  %3357 = fsub <8 x double> %2589, %3356
  %3358 = fcmp ogt <8 x double> %3352, splat (double 1.000000e-09)
  %3359 = select <8 x i1> %3358, <8 x double> %3352, <8 x double> splat (double 1.000000e-09)
  %3360 = fdiv <8 x double> %3353, %3359
  %3361 = fadd <8 x double> %2589, %3360
  %3362 = load <8 x double>, ptr %3236, align 64, !tbaa !26, !noalias !119
  %3363 = select <8 x i1> %3243, <8 x double> %3354, <8 x double> %3362
  store <8 x double> %3363, ptr %3236, align 64, !tbaa !26, !noalias !119
  %3364 = getelementptr inbounds nuw i8, ptr %3202, i64 7936
  %3365 = load <8 x double>, ptr %3364, align 64, !tbaa !26, !noalias !119
  %3366 = select <8 x i1> %3243, <8 x double> %3355, <8 x double> %3365
  store <8 x double> %3366, ptr %3364, align 64, !tbaa !26, !noalias !119
  %3367 = getelementptr inbounds nuw i8, ptr %3202, i64 8000
  %3368 = load <8 x double>, ptr %3367, align 64, !tbaa !26, !noalias !119
  %3369 = select <8 x i1> %3243, <8 x double> %3351, <8 x double> %3368
  store <8 x double> %3369, ptr %3367, align 64, !tbaa !26, !noalias !119
  %3370 = getelementptr inbounds nuw i8, ptr %3202, i64 8064
  %3371 = load <8 x double>, ptr %3370, align 64, !tbaa !26, !noalias !119
  %3372 = select <8 x i1> %3243, <8 x double> %2589, <8 x double> %3371
  store <8 x double> %3372, ptr %3370, align 64, !tbaa !26, !noalias !119
  %3373 = select <8 x i1> %3243, <8 x double> %3357, <8 x double> %3238
  store <8 x double> %3373, ptr %3237, align 64, !tbaa !26, !noalias !119
  %3374 = select <8 x i1> %3243, <8 x double> %3361, <8 x double> %3241
  store <8 x double> %3374, ptr %3240, align 64, !tbaa !26, !noalias !119
  br label %3375

3375:                                             ; preds = %3246, %3350
  %3376 = phi <8 x double> [ %3253, %3246 ], [ %3369, %3350 ]
  %3377 = phi <8 x double> [ %3251, %3246 ], [ %3372, %3350 ]
  %3378 = phi <8 x double> [ %3249, %3246 ], [ %3366, %3350 ]
  %3379 = phi <8 x double> [ %3247, %3246 ], [ %3363, %3350 ]
  %3380 = fsub <8 x double> %2589, %3377
  %3381 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3378, <8 x double> %3380, <8 x double> %3379)
  %3382 = getelementptr inbounds nuw i8, ptr %3202, i64 6464
  %3383 = load <8 x double>, ptr %3382, align 64, !tbaa !26, !noalias !116
  %3384 = getelementptr inbounds nuw i8, ptr %3202, i64 5888
  %3385 = load <8 x double>, ptr %3384, align 64, !tbaa !26, !noalias !116
  %3386 = getelementptr inbounds nuw i8, ptr %3202, i64 7424
  %3387 = load <8 x double>, ptr %3386, align 64, !tbaa !26, !noalias !116
  %3388 = fneg <8 x double> %3387
  %3389 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3383, <8 x double> %3385, <8 x double> %3388)
  %3390 = getelementptr inbounds nuw i8, ptr %3202, i64 7360
  %3391 = load <8 x double>, ptr %3390, align 64, !tbaa !26, !noalias !116
  %3392 = fadd <8 x double> %3383, %3391
  %3393 = getelementptr inbounds nuw i8, ptr %3202, i64 8320
  %3394 = load <8 x i64>, ptr %3393, align 64, !tbaa !26, !noalias !116
  %3395 = getelementptr inbounds nuw i8, ptr %3202, i64 8672
  %3396 = load ptr, ptr %3395, align 32, !tbaa !92, !noalias !116
  %3397 = load <8 x double>, ptr %3396, align 64, !tbaa !26, !noalias !116
  %3398 = fmul <8 x double> %3383, %3397
  %3399 = icmp eq <8 x i64> %3394, zeroinitializer
  %3400 = select <8 x i1> %3399, <8 x double> %3389, <8 x double> %3398
  %3401 = getelementptr inbounds nuw i8, ptr %3202, i64 8680
  %3402 = load ptr, ptr %3401, align 8, !tbaa !93, !noalias !116
  %3403 = load <8 x double>, ptr %3402, align 64, !tbaa !26, !noalias !116
  %3404 = fsub <8 x double> splat (double 1.000000e+00), %3403
  %3405 = fmul <8 x double> %3383, %3404
  %3406 = select <8 x i1> %3399, <8 x double> %3392, <8 x double> %3405
  %3407 = fneg <8 x double> %3406
  %3408 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3407, <8 x double> %2589, <8 x double> %3400)
  %3409 = load i64, ptr %119, align 16, !tbaa !21, !noalias !116
  %3410 = sitofp i64 %3409 to double
  %3411 = insertelement <8 x double> poison, double %3410, i64 0
  %3412 = shufflevector <8 x double> %3411, <8 x double> poison, <8 x i32> zeroinitializer
  %3413 = fcmp olt <8 x double> %3376, %3412
  %3414 = and <8 x i1> %3209, %3413
  %3415 = fcmp ogt <8 x double> %3381, zeroinitializer
  %3416 = fcmp oge <8 x double> %3408, zeroinitializer
  %3417 = and <8 x i1> %3415, %3416
  %3418 = and <8 x i1> %3417, %3414
  %3419 = sext <8 x i1> %3418 to <8 x i64>
  %3420 = xor <8 x i64> %3419, splat (i64 -1)
  %3421 = fadd <8 x double> %3381, %3408
  %3422 = fcmp ogt <8 x double> %3421, zeroinitializer
  %3423 = select <8 x i1> %3422, <8 x i1> %3414, <8 x i1> zeroinitializer
  %3424 = select <8 x i1> %3423, <8 x i64> %3420, <8 x i64> zeroinitializer
  %3425 = or <8 x i64> %3424, %3419
  %3426 = fmul <8 x double> %3198, %3408
  %3427 = select <8 x i1> %3418, <8 x double> %3426, <8 x double> zeroinitializer
  %3428 = icmp eq <8 x i64> %3425, zeroinitializer
  %3429 = select <8 x i1> %3428, <8 x double> %3234, <8 x double> %3427
  %3430 = select <8 x i1> %3428, <8 x double> %3235, <8 x double> %2589
  %3431 = getelementptr inbounds nuw i8, ptr %3202, i64 6016
  store <8 x double> %3429, ptr %3431, align 64, !tbaa !26, !noalias !116
  %3432 = getelementptr inbounds nuw i8, ptr %3202, i64 5952
  store <8 x double> %3430, ptr %3432, align 64, !tbaa !26, !noalias !116
  %3433 = fmul <8 x double> %3198, %3381
  %3434 = fmul <8 x double> %3198, %3421
  %3435 = icmp eq <8 x i64> %3424, zeroinitializer
  %3436 = select <8 x i1> %3435, <8 x double> zeroinitializer, <8 x double> %3434
  %3437 = select <8 x i1> %3418, <8 x double> %3433, <8 x double> %3436
  %3438 = getelementptr inbounds nuw i8, ptr %3202, i64 6080
  store <8 x double> %3437, ptr %3438, align 64, !tbaa !26, !noalias !116
  %3439 = load i64, ptr %119, align 16, !tbaa !21, !noalias !116
  %3440 = sitofp i64 %3439 to double
  %3441 = insertelement <8 x double> poison, double %3440, i64 0
  %3442 = shufflevector <8 x double> %3441, <8 x double> poison, <8 x i32> zeroinitializer
  %3443 = select <8 x i1> %3428, <8 x double> %3442, <8 x double> %3376
  %3444 = getelementptr inbounds nuw i8, ptr %3202, i64 6144
  store <8 x double> %3443, ptr %3444, align 64, !tbaa !26, !noalias !116
  %3445 = add nuw nsw i64 %3200, 1
  %3446 = load i64, ptr %156, align 8, !tbaa !20, !noalias !116
  %3447 = icmp slt i64 %3445, %3446
  br i1 %3447, label %3199, label %3448, !llvm.loop !115

3448:                                             ; preds = %3375, %3157
  %3449 = phi i64 [ %3193, %3157 ], [ %3446, %3375 ]
  %3450 = icmp sgt i64 %3449, 0
  br i1 %3450, label %3613, label %3451

3451:                                             ; preds = %3448, %3194
  %3452 = load <8 x double>, ptr %165, align 64, !tbaa !26
  br label %3458

3453:                                             ; preds = %3685
  %3454 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %3455 = icmp sgt i64 %3709, 0
  br i1 %3455, label %3456, label %3458

3456:                                             ; preds = %3453
  %3457 = load ptr, ptr %129, align 8, !tbaa !28
  br label %3591

3458:                                             ; preds = %3591, %3451, %3453
  %3459 = phi <8 x double> [ %3454, %3453 ], [ %3452, %3451 ], [ %3454, %3591 ]
  %3460 = phi <8 x double> [ zeroinitializer, %3453 ], [ zeroinitializer, %3451 ], [ %3610, %3591 ]
  %3461 = phi <8 x double> [ zeroinitializer, %3453 ], [ zeroinitializer, %3451 ], [ %3605, %3591 ]
  %3462 = extractelement <8 x double> %3461, i64 0
  %3463 = extractelement <8 x double> %3461, i64 1
  %3464 = fadd double %3462, %3463
  %3465 = extractelement <8 x double> %3461, i64 2
  %3466 = fadd double %3464, %3465
  %3467 = extractelement <8 x double> %3461, i64 3
  %3468 = fadd double %3466, %3467
  %3469 = extractelement <8 x double> %3461, i64 4
  %3470 = fadd double %3468, %3469
  %3471 = extractelement <8 x double> %3461, i64 5
  %3472 = fadd double %3470, %3471
  %3473 = extractelement <8 x double> %3461, i64 6
  %3474 = fadd double %3472, %3473
  %3475 = extractelement <8 x double> %3461, i64 7
  %3476 = fadd double %3474, %3475
  %3477 = insertelement <8 x double> poison, double %3476, i64 0
  %3478 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %3479 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3480 = fsub <8 x double> %3459, %3479
  %3481 = extractelement <8 x double> %3460, i64 0
  %3482 = extractelement <8 x double> %3460, i64 1
  %3483 = fadd double %3481, %3482
  %3484 = extractelement <8 x double> %3460, i64 2
  %3485 = fadd double %3483, %3484
  %3486 = extractelement <8 x double> %3460, i64 3
  %3487 = fadd double %3485, %3486
  %3488 = extractelement <8 x double> %3460, i64 4
  %3489 = fadd double %3487, %3488
  %3490 = extractelement <8 x double> %3460, i64 5
  %3491 = fadd double %3489, %3490
  %3492 = extractelement <8 x double> %3460, i64 6
  %3493 = fadd double %3491, %3492
  %3494 = extractelement <8 x double> %3460, i64 7
  %3495 = fadd double %3493, %3494
  %3496 = shufflevector <8 x double> %3477, <8 x double> poison, <8 x i32> zeroinitializer
  %3497 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3478, <8 x double> %3480, <8 x double> %3496)
  %3498 = insertelement <8 x double> poison, double %3495, i64 0
  %3499 = shufflevector <8 x double> %3498, <8 x double> poison, <8 x i32> zeroinitializer
  %3500 = fadd <8 x double> %3478, %3499
  store <8 x double> %3497, ptr %201, align 64, !tbaa !26
  %3501 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %3502 = fcmp ule <8 x double> %3501, zeroinitializer
  %3503 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %3504 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3501, <8 x double> splat (double 5.000000e-01), <8 x double> %3503)
  %3505 = fsub <8 x double> %3504, %3459
  %3506 = fcmp ogt <8 x double> %3501, splat (double 1.000000e-30)
  %3507 = select <8 x i1> %3506, <8 x double> %3501, <8 x double> splat (double 1.000000e-30)
  %3508 = fdiv <8 x double> %3505, %3507
  %3509 = fcmp ogt <8 x double> %3508, zeroinitializer
  %3510 = select <8 x i1> %3509, <8 x double> %3508, <8 x double> zeroinitializer
  %3511 = fcmp olt <8 x double> %3510, splat (double 1.000000e+00)
  %3512 = select <8 x i1> %3511, <8 x double> %3510, <8 x double> splat (double 1.000000e+00)
  %3513 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %3514 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %3515 = icmp eq <8 x i64> %3514, zeroinitializer
  %3516 = select <8 x i1> %3515, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %3517 = select <8 x i1> %3502, <8 x double> %3516, <8 x double> %3512
  %3518 = fmul <8 x double> %3513, %3517
  %3519 = fcmp ule <8 x double> %3518, zeroinitializer
  %3520 = fcmp uge <8 x double> %3518, %3513
  %3521 = or <8 x i1> %3519, %3520
  %3522 = or <8 x i1> %3502, %3521
  %3523 = fdiv <8 x double> %3513, %3507
  %3524 = select <8 x i1> %3522, <8 x double> zeroinitializer, <8 x double> %3523
  %3525 = fadd <8 x double> %3500, %3524
  %3526 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %3527 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %3528 = fdiv <8 x double> splat (double 2.000000e+00), %3527
  %3529 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %3530 = icmp eq <8 x i64> %3526, zeroinitializer
  %3531 = select <8 x i1> %3530, <8 x double> %3529, <8 x double> %3528
  %3532 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %3533 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %3534 = fmul <8 x double> %3532, %3533
  %3535 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %3536 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %3537 = fmul <8 x double> %3536, splat (double 5.000000e-01)
  %3538 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3537, <8 x double> %3532, <8 x double> %3535)
  %3539 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %3540 = fmul <8 x double> %3532, %3539
  %3541 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3534, <8 x double> %3538, <8 x double> %3540)
  %3542 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %3543 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %3544 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %3545 = fmul <8 x double> %3533, %3544
  %3546 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3537, <8 x double> %3544, <8 x double> %3535)
  %3547 = fmul <8 x double> %3539, %3544
  %3548 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3545, <8 x double> %3546, <8 x double> %3547)
  %3549 = fmul <8 x double> %3543, %3548
  %3550 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3542, <8 x double> %3541, <8 x double> %3549)
  %3551 = fmul <8 x double> %3459, %3533
  %3552 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3537, <8 x double> %3459, <8 x double> %3535)
  %3553 = fmul <8 x double> %3459, %3539
  %3554 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3551, <8 x double> %3552, <8 x double> %3553)
  %3555 = fneg <8 x double> %3531
  %3556 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %3557 = fneg <8 x double> %3556
  %3558 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3555, <8 x double> %3541, <8 x double> %3557)
  %3559 = select <8 x i1> %3530, <8 x double> %3550, <8 x double> %3558
  %3560 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3531, <8 x double> %3554, <8 x double> %3559)
  %3561 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3536, <8 x double> %3459, <8 x double> %3535)
  %3562 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3533, <8 x double> %3561, <8 x double> %3539)
  %3563 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %3564 = fcmp une <8 x double> %3563, zeroinitializer
  %3565 = fadd <8 x double> %3497, %3560
  %3566 = fsub <8 x double> %3565, %3518
  %3567 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3531, <8 x double> %3562, <8 x double> %3525)
  %3568 = fdiv <8 x double> %3566, %3567
  %3569 = fsub <8 x double> %3459, %3568
  %3570 = select <8 x i1> %3564, <8 x double> %3459, <8 x double> %3569
  store <8 x double> %3570, ptr %165, align 64, !tbaa !26
  %3571 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %3572 = fneg <8 x double> %3542
  %3573 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3572, <8 x double> %3571, <8 x double> %3518)
  %3574 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %3575 = fneg <8 x double> %3543
  %3576 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3575, <8 x double> %3574, <8 x double> %3573)
  %3577 = fdiv <8 x double> %3576, %3529
  %3578 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %3579 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3572, <8 x double> %3578, <8 x double> %3497)
  %3580 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %3581 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3575, <8 x double> %3580, <8 x double> %3579)
  %3582 = fdiv <8 x double> %3581, %3529
  %3583 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3518, <8 x double> %3527, <8 x double> %3571)
  %3584 = select <8 x i1> %3530, <8 x double> %3577, <8 x double> %3583
  %3585 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %3586 = select <8 x i1> %3564, <8 x double> %3585, <8 x double> %3584
  store <8 x double> %3586, ptr %206, align 64, !tbaa !26
  %3587 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %3588 = select <8 x i1> %3564, <8 x double> %3587, <8 x double> %3582
  store <8 x double> %3588, ptr %207, align 64, !tbaa !26
  %3589 = load i64, ptr %156, align 8, !tbaa !20
  %3590 = icmp sgt i64 %3589, 0
  br i1 %3590, label %3711, label %3999

3591:                                             ; preds = %3456, %3591
  %3592 = phi <8 x double> [ zeroinitializer, %3456 ], [ %3605, %3591 ]
  %3593 = phi <8 x double> [ zeroinitializer, %3456 ], [ %3610, %3591 ]
  %3594 = phi i64 [ 0, %3456 ], [ %3611, %3591 ]
  %3595 = getelementptr inbounds nuw %struct.Piece, ptr %3457, i64 %3594
  %3596 = getelementptr inbounds nuw i8, ptr %3595, i64 8448
  %3597 = load <8 x i64>, ptr %3596, align 64, !tbaa !26
  %3598 = getelementptr inbounds nuw i8, ptr %3595, i64 128
  %3599 = load <8 x double>, ptr %3598, align 64, !tbaa !26
  %3600 = getelementptr inbounds nuw i8, ptr %3595, i64 6720
  %3601 = load <8 x double>, ptr %3600, align 64, !tbaa !26
  %3602 = fmul <8 x double> %3599, %3601
  %3603 = icmp eq <8 x i64> %3597, zeroinitializer
  %3604 = select <8 x i1> %3603, <8 x double> %3602, <8 x double> zeroinitializer
  %3605 = fadd <8 x double> %3592, %3604
  %3606 = getelementptr inbounds nuw i8, ptr %3595, i64 6592
  %3607 = load <8 x double>, ptr %3606, align 64, !tbaa !26
  %3608 = fmul <8 x double> %3599, %3607
  %3609 = select <8 x i1> %3603, <8 x double> %3608, <8 x double> zeroinitializer
  %3610 = fadd <8 x double> %3593, %3609
  %3611 = add nuw nsw i64 %3594, 1
  %3612 = icmp eq i64 %3611, %3709
  br i1 %3612, label %3458, label %3591, !llvm.loop !125

3613:                                             ; preds = %3448, %3685
  %3614 = phi i64 [ %3708, %3685 ], [ 0, %3448 ]
  %3615 = load ptr, ptr %129, align 8, !tbaa !28
  %3616 = getelementptr inbounds nuw %struct.Piece, ptr %3615, i64 %3614
  %3617 = getelementptr inbounds nuw i8, ptr %3616, i64 5952
  %3618 = load <8 x double>, ptr %3617, align 64, !tbaa !26
  %3619 = getelementptr inbounds nuw i8, ptr %3616, i64 6144
  %3620 = load <8 x double>, ptr %3619, align 64, !tbaa !26
  %3621 = getelementptr inbounds nuw i8, ptr %3616, i64 8568
  %3622 = load ptr, ptr %3621, align 8, !tbaa !86
  %3623 = getelementptr inbounds nuw i8, ptr %3616, i64 8576
  %3624 = load ptr, ptr %3623, align 64, !tbaa !87
  %3625 = getelementptr inbounds nuw i8, ptr %3616, i64 8520
  %3626 = load ptr, ptr %3625, align 8, !tbaa !57
  %3627 = load i64, ptr %119, align 16, !tbaa !21
  %3628 = icmp sgt i64 %3627, 0
  br i1 %3628, label %3644, label %3629

3629:                                             ; preds = %3644, %3613
  %3630 = getelementptr inbounds nuw i8, ptr %3616, i64 8320
  %3631 = load <8 x i64>, ptr %3630, align 64, !tbaa !26
  %3632 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3631)
  %3633 = icmp eq i64 %3632, 0
  %3634 = load i64, ptr %120, align 8, !tbaa !22
  %3635 = icmp sgt i64 %3634, 0
  br i1 %3633, label %3641, label %3636

3636:                                             ; preds = %3629
  br i1 %3635, label %3637, label %3685

3637:                                             ; preds = %3636
  %3638 = getelementptr inbounds nuw i8, ptr %3616, i64 8672
  %3639 = getelementptr inbounds nuw i8, ptr %3616, i64 8680
  %3640 = getelementptr inbounds nuw i8, ptr %3616, i64 8640
  br label %3660

3641:                                             ; preds = %3629
  br i1 %3635, label %3642, label %3685

3642:                                             ; preds = %3641
  %3643 = getelementptr inbounds nuw i8, ptr %3616, i64 8640
  br label %3678

3644:                                             ; preds = %3613, %3644
  %3645 = phi <8 x double> [ %3657, %3644 ], [ %3618, %3613 ]
  %3646 = phi i64 [ %3647, %3644 ], [ %3627, %3613 ]
  %3647 = add nsw i64 %3646, -1
  %3648 = uitofp nneg i64 %3647 to double
  %3649 = insertelement <8 x double> poison, double %3648, i64 0
  %3650 = shufflevector <8 x double> %3649, <8 x double> poison, <8 x i32> zeroinitializer
  %3651 = fcmp ugt <8 x double> %3620, %3650
  %3652 = getelementptr inbounds nuw <8 x double>, ptr %3622, i64 %3647
  %3653 = load <8 x double>, ptr %3652, align 64, !tbaa !26
  %3654 = getelementptr inbounds nuw <8 x double>, ptr %3624, i64 %3647
  %3655 = load <8 x double>, ptr %3654, align 64, !tbaa !26
  %3656 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3655, <8 x double> %3645, <8 x double> %3653)
  %3657 = select <8 x i1> %3651, <8 x double> %3656, <8 x double> %3618
  %3658 = getelementptr inbounds nuw <8 x double>, ptr %3626, i64 %3647
  store <8 x double> %3657, ptr %3658, align 64, !tbaa !26
  %3659 = icmp samesign ugt i64 %3646, 1
  br i1 %3659, label %3644, label %3629, !llvm.loop !126

3660:                                             ; preds = %3637, %3660
  %3661 = phi i64 [ 0, %3637 ], [ %3675, %3660 ]
  %3662 = phi <8 x double> [ %3618, %3637 ], [ %3672, %3660 ]
  %3663 = load <8 x i64>, ptr %3630, align 64, !tbaa !26
  %3664 = load ptr, ptr %3638, align 32, !tbaa !92
  %3665 = getelementptr inbounds nuw <8 x double>, ptr %3664, i64 %3661
  %3666 = load <8 x double>, ptr %3665, align 64, !tbaa !26
  %3667 = load ptr, ptr %3639, align 8, !tbaa !93
  %3668 = getelementptr inbounds nuw <8 x double>, ptr %3667, i64 %3661
  %3669 = load <8 x double>, ptr %3668, align 64, !tbaa !26
  %3670 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3669, <8 x double> %3662, <8 x double> %3666)
  %3671 = icmp eq <8 x i64> %3663, zeroinitializer
  %3672 = select <8 x i1> %3671, <8 x double> %3618, <8 x double> %3670
  %3673 = load ptr, ptr %3640, align 64, !tbaa !127
  %3674 = getelementptr inbounds nuw <8 x double>, ptr %3673, i64 %3661
  store <8 x double> %3672, ptr %3674, align 64, !tbaa !26
  %3675 = add nuw nsw i64 %3661, 1
  %3676 = load i64, ptr %120, align 8, !tbaa !22
  %3677 = icmp slt i64 %3675, %3676
  br i1 %3677, label %3660, label %3685, !llvm.loop !128

3678:                                             ; preds = %3642, %3678
  %3679 = phi i64 [ 0, %3642 ], [ %3682, %3678 ]
  %3680 = load ptr, ptr %3643, align 64, !tbaa !127
  %3681 = getelementptr inbounds nuw <8 x double>, ptr %3680, i64 %3679
  store <8 x double> %3618, ptr %3681, align 64, !tbaa !26
  %3682 = add nuw nsw i64 %3679, 1
  %3683 = load i64, ptr %120, align 8, !tbaa !22
  %3684 = icmp slt i64 %3682, %3683
  br i1 %3684, label %3678, label %3685, !llvm.loop !129

3685:                                             ; preds = %3660, %3678, %3636, %3641
  %3686 = phi <8 x double> [ %3618, %3641 ], [ %3618, %3636 ], [ %3618, %3678 ], [ %3672, %3660 ]
  %3687 = load <8 x i64>, ptr %3630, align 64, !tbaa !26
  %3688 = getelementptr inbounds nuw i8, ptr %3616, i64 6656
  %3689 = load <8 x double>, ptr %3688, align 64, !tbaa !26
  %3690 = icmp eq <8 x i64> %3687, zeroinitializer
  %3691 = select <8 x i1> %3690, <8 x double> zeroinitializer, <8 x double> %3689
  %3692 = fsub <8 x double> splat (double 1.000000e+00), %3691
  %3693 = getelementptr inbounds nuw i8, ptr %3616, i64 5888
  %3694 = load <8 x double>, ptr %3693, align 64, !tbaa !26
  %3695 = fmul <8 x double> %3691, %3694
  %3696 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3692, <8 x double> %3686, <8 x double> %3695)
  %3697 = getelementptr inbounds nuw i8, ptr %3616, i64 6848
  store <8 x double> %3696, ptr %3697, align 64, !tbaa !26
  %3698 = getelementptr inbounds nuw i8, ptr %3616, i64 6592
  %3699 = load <8 x double>, ptr %3698, align 64, !tbaa !26
  %3700 = fsub <8 x double> %3694, %3686
  %3701 = fmul <8 x double> %3700, %3699
  %3702 = getelementptr inbounds nuw i8, ptr %3616, i64 6720
  store <8 x double> %3701, ptr %3702, align 64, !tbaa !26
  %3703 = getelementptr inbounds nuw i8, ptr %3616, i64 3200
  %3704 = load <8 x double>, ptr %3703, align 64, !tbaa !26
  %3705 = fdiv <8 x double> %3701, %3704
  %3706 = fsub <8 x double> %3694, %3705
  %3707 = getelementptr inbounds nuw i8, ptr %3616, i64 6784
  store <8 x double> %3706, ptr %3707, align 64, !tbaa !26
  %3708 = add nuw nsw i64 %3614, 1
  %3709 = load i64, ptr %156, align 8, !tbaa !20
  %3710 = icmp slt i64 %3708, %3709
  br i1 %3710, label %3613, label %3453, !llvm.loop !130

3711:                                             ; preds = %3458, %3933
  %3712 = phi i64 [ %3996, %3933 ], [ 0, %3458 ]
  %3713 = phi <8 x double> [ %3995, %3933 ], [ zeroinitializer, %3458 ]
  %3714 = load ptr, ptr %129, align 8, !tbaa !28
  %3715 = getelementptr inbounds nuw %struct.Piece, ptr %3714, i64 %3712
  %3716 = getelementptr inbounds nuw i8, ptr %3715, i64 6016
  %3717 = load <8 x double>, ptr %3716, align 64, !tbaa !26
  %3718 = getelementptr inbounds nuw i8, ptr %3715, i64 6080
  %3719 = load <8 x double>, ptr %3718, align 64, !tbaa !26
  %3720 = fadd <8 x double> %3717, %3719
  %3721 = getelementptr inbounds nuw i8, ptr %3715, i64 5952
  %3722 = load <8 x double>, ptr %3721, align 64, !tbaa !26
  %3723 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %3724 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3723, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3725 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3723, <8 x double> %3724, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3726 = getelementptr inbounds nuw i8, ptr %3715, i64 7168
  %3727 = load <8 x double>, ptr %3726, align 64, !tbaa !26
  %3728 = getelementptr inbounds nuw i8, ptr %3715, i64 1280
  %3729 = load <8 x double>, ptr %3728, align 64, !tbaa !26
  %3730 = fmul <8 x double> %3727, %3729
  %3731 = getelementptr inbounds nuw i8, ptr %3715, i64 6848
  %3732 = load <8 x double>, ptr %3731, align 64, !tbaa !26
  %3733 = fsub <8 x double> %3732, %3722
  %3734 = fmul <8 x double> %3730, %3733
  %3735 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3725, <8 x double> %3720, <8 x double> %3734)
  %3736 = getelementptr inbounds nuw i8, ptr %3715, i64 5696
  %3737 = load <8 x double>, ptr %3736, align 64, !tbaa !26, !noalias !131
  %3738 = getelementptr inbounds nuw i8, ptr %3715, i64 4160
  %3739 = load <8 x double>, ptr %3738, align 64, !tbaa !26, !noalias !131
  %3740 = fneg <8 x double> %3737
  %3741 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3740, <8 x double> %3739, <8 x double> %3720)
  %3742 = getelementptr inbounds nuw i8, ptr %3715, i64 5760
  %3743 = load <8 x double>, ptr %3742, align 64, !tbaa !26, !noalias !131
  %3744 = getelementptr inbounds nuw i8, ptr %3715, i64 5056
  %3745 = load <8 x double>, ptr %3744, align 64, !tbaa !26, !noalias !131
  %3746 = fneg <8 x double> %3743
  %3747 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3746, <8 x double> %3745, <8 x double> %3741)
  %3748 = getelementptr inbounds nuw i8, ptr %3715, i64 5632
  %3749 = load <8 x double>, ptr %3748, align 64, !tbaa !26, !noalias !131
  %3750 = fdiv <8 x double> %3747, %3749
  %3751 = getelementptr inbounds nuw i8, ptr %3715, i64 1600
  %3752 = load <8 x double>, ptr %3751, align 64, !tbaa !26, !noalias !131
  %3753 = fsub <8 x double> %3752, %3750
  %3754 = getelementptr inbounds nuw i8, ptr %3715, i64 4032
  %3755 = load <8 x double>, ptr %3754, align 64, !tbaa !26, !noalias !131
  %3756 = getelementptr inbounds nuw i8, ptr %3715, i64 7552
  %3757 = load <8 x double>, ptr %3756, align 64, !tbaa !26, !noalias !131
  %3758 = fsub <8 x double> %3755, %3757
  %3759 = getelementptr inbounds nuw i8, ptr %3715, i64 3904
  %3760 = load <8 x double>, ptr %3759, align 64, !tbaa !26, !noalias !131
  %3761 = getelementptr inbounds nuw i8, ptr %3715, i64 2944
  %3762 = load <8 x double>, ptr %3761, align 64, !tbaa !26, !noalias !131
  %3763 = getelementptr inbounds nuw i8, ptr %3715, i64 8320
  %3764 = load <8 x i64>, ptr %3763, align 64, !tbaa !26, !noalias !131
  %3765 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3764)
  %3766 = icmp eq i64 %3765, 0
  br i1 %3766, label %3895, label %3767

3767:                                             ; preds = %3711
  %3768 = fcmp ogt <8 x double> %3758, %3753
  %3769 = getelementptr inbounds nuw i8, ptr %3715, i64 7680
  %3770 = load <8 x double>, ptr %3769, align 64, !tbaa !26, !noalias !131
  %3771 = fcmp oeq <8 x double> %3770, zeroinitializer
  %3772 = select <8 x i1> %3771, <8 x i1> %3768, <8 x i1> zeroinitializer
  %3773 = select <8 x i1> %3772, <8 x i64> %3764, <8 x i64> zeroinitializer
  %3774 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3773)
  %3775 = icmp eq i64 %3774, 0
  br i1 %3775, label %3848, label %3776

3776:                                             ; preds = %3767
  %3777 = fsub <8 x double> %3758, %3753
  %3778 = getelementptr inbounds nuw i8, ptr %3715, i64 832
  %3779 = load <8 x double>, ptr %3778, align 64, !tbaa !26, !noalias !131
  %3780 = fdiv <8 x double> %3777, %3779
  %3781 = getelementptr inbounds nuw i8, ptr %3715, i64 8552
  %3782 = load ptr, ptr %3781, align 8, !tbaa !67, !noalias !131
  %3783 = load i64, ptr %119, align 16, !tbaa !21, !noalias !131
  %3784 = add nsw i64 %3783, -1
  %3785 = getelementptr inbounds <8 x double>, ptr %3782, i64 %3784
  %3786 = load <8 x double>, ptr %3785, align 64, !tbaa !26, !noalias !131
  %3787 = icmp sgt i64 %3783, 1
  br i1 %3787, label %3788, label %3840

3788:                                             ; preds = %3776
  %3789 = getelementptr inbounds nuw i8, ptr %3715, i64 8512
  %3790 = load i64, ptr %3789, align 64, !tbaa !31, !noalias !131
  %3791 = getelementptr inbounds nuw i8, ptr %3715, i64 4672
  %3792 = getelementptr inbounds nuw i8, ptr %3715, i64 1536
  %3793 = getelementptr inbounds nuw i8, ptr %3715, i64 8608
  br label %3794

3794:                                             ; preds = %3788, %3837
  %3795 = phi <8 x double> [ %3760, %3788 ], [ %3832, %3837 ]
  %3796 = phi i64 [ %3784, %3788 ], [ %3838, %3837 ]
  %3797 = phi <8 x double> [ %3786, %3788 ], [ %3820, %3837 ]
  %3798 = phi <8 x i64> [ %3773, %3788 ], [ %3824, %3837 ]
  %3799 = phi <8 x double> [ %3780, %3788 ], [ %3831, %3837 ]
  %3800 = icmp slt i64 %3796, %3790
  br i1 %3800, label %3801, label %3807

3801:                                             ; preds = %3794
  %3802 = load ptr, ptr %3793, align 32, !tbaa !72, !noalias !131
  %3803 = getelementptr inbounds nuw <8 x double>, ptr %3802, i64 %3796
  %3804 = load <8 x double>, ptr %3803, align 64, !tbaa !26, !noalias !131
  %3805 = load <8 x double>, ptr %3792, align 64, !tbaa !26, !noalias !131
  %3806 = fmul <8 x double> %3804, %3805
  br label %3815

3807:                                             ; preds = %3794
  %3808 = load <8 x double>, ptr %3791, align 64, !tbaa !26, !noalias !131
  %3809 = load <8 x double>, ptr %3792, align 64, !tbaa !26, !noalias !131
  %3810 = load ptr, ptr %3793, align 32, !tbaa !72, !noalias !131
  %3811 = getelementptr inbounds nuw <8 x double>, ptr %3810, i64 %3796
  %3812 = load <8 x double>, ptr %3811, align 64, !tbaa !26, !noalias !131
  %3813 = fsub <8 x double> %3808, %3809
  %3814 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3812, <8 x double> %3813, <8 x double> %3809)
  br label %3815

3815:                                             ; preds = %3807, %3801
  %3816 = phi <8 x double> [ %3806, %3801 ], [ %3814, %3807 ]
  %3817 = getelementptr inbounds nuw <8 x double>, ptr %3782, i64 %3796
  %3818 = load <8 x double>, ptr %3817, align 64, !tbaa !26, !noalias !131
  %3819 = icmp eq <8 x i64> %3798, zeroinitializer
  %3820 = select <8 x i1> %3819, <8 x double> %3797, <8 x double> %3818
  %3821 = fsub <8 x double> %3795, %3816
  %3822 = fmul <8 x double> %3821, %3820
  %3823 = fcmp olt <8 x double> %3822, %3799
  %3824 = select <8 x i1> %3823, <8 x i64> %3798, <8 x i64> zeroinitializer
  %3825 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3824)
  %3826 = icmp eq i64 %3825, 0
  br i1 %3826, label %3840, label %3827

3827:                                             ; preds = %3815
  %3828 = fneg <8 x double> %3820
  %3829 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3828, <8 x double> %3821, <8 x double> %3799)
  %3830 = icmp eq <8 x i64> %3824, zeroinitializer
  %3831 = select <8 x i1> %3830, <8 x double> %3799, <8 x double> %3829
  %3832 = select <8 x i1> %3830, <8 x double> %3795, <8 x double> %3816
  %3833 = icmp eq i64 %3796, 1
  br i1 %3833, label %3834, label %3837

3834:                                             ; preds = %3827
  %3835 = load <8 x double>, ptr %3782, align 64, !tbaa !26, !noalias !131
  %3836 = select <8 x i1> %3830, <8 x double> %3820, <8 x double> %3835
  br label %3840

3837:                                             ; preds = %3827
  %3838 = add nsw i64 %3796, -1
  %3839 = icmp sgt i64 %3796, 1
  br i1 %3839, label %3794, label %3840, !llvm.loop !73

3840:                                             ; preds = %3837, %3815, %3834, %3776
  %3841 = phi <8 x double> [ %3780, %3776 ], [ %3831, %3834 ], [ %3799, %3815 ], [ %3831, %3837 ]
  %3842 = phi <8 x double> [ %3760, %3776 ], [ %3832, %3834 ], [ %3795, %3815 ], [ %3832, %3837 ]
  %3843 = phi <8 x double> [ %3786, %3776 ], [ %3836, %3834 ], [ %3820, %3815 ], [ %3820, %3837 ]
  %3844 = fdiv <8 x double> %3841, %3843
  %3845 = fsub <8 x double> %3842, %3844
  %3846 = icmp eq <8 x i64> %3773, zeroinitializer
  %3847 = select <8 x i1> %3846, <8 x double> %3760, <8 x double> %3845
  br label %3848

3848:                                             ; preds = %3840, %3767
  %3849 = phi <8 x double> [ %3847, %3840 ], [ %3760, %3767 ]
  %3850 = getelementptr inbounds nuw i8, ptr %3715, i64 2560
  %3851 = load <8 x double>, ptr %3850, align 64, !tbaa !26, !noalias !131
  %3852 = getelementptr inbounds nuw i8, ptr %3715, i64 2624
  %3853 = load <8 x double>, ptr %3852, align 64, !tbaa !26, !noalias !131
  %3854 = getelementptr inbounds nuw i8, ptr %3715, i64 2688
  %3855 = load <8 x double>, ptr %3854, align 64, !tbaa !26, !noalias !131
  %3856 = getelementptr inbounds nuw i8, ptr %3715, i64 2752
  %3857 = load <8 x double>, ptr %3856, align 64, !tbaa !26, !noalias !131
  %3858 = load <8 x double>, ptr %3715, align 64, !tbaa !26, !noalias !131
  %3859 = fmul <8 x double> %3858, splat (double 2.000000e-05)
  br label %3860

3860:                                             ; preds = %3848, %3860
  %3861 = phi <8 x i64> [ splat (i64 -1), %3848 ], [ %3878, %3860 ]
  %3862 = phi i32 [ 0, %3848 ], [ %3879, %3860 ]
  %3863 = phi <8 x double> [ %3762, %3848 ], [ %3875, %3860 ]
  %3864 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3863, <8 x double> %3857, <8 x double> %3855)
  %3865 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3863, <8 x double> %3864, <8 x double> %3853)
  %3866 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3863, <8 x double> %3865, <8 x double> %3851)
  %3867 = fsub <8 x double> %3866, %3849
  %3868 = fmul <8 x double> %3863, splat (double 3.000000e+00)
  %3869 = fmul <8 x double> %3868, %3857
  %3870 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3855, <8 x double> splat (double 2.000000e+00), <8 x double> %3869)
  %3871 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3863, <8 x double> %3870, <8 x double> %3853)
  %3872 = fdiv <8 x double> %3867, %3871
  %3873 = fsub <8 x double> %3863, %3872
  %3874 = icmp eq <8 x i64> %3861, zeroinitializer
  %3875 = select <8 x i1> %3874, <8 x double> %3863, <8 x double> %3873
  %3876 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3872)
  %3877 = fcmp oge <8 x double> %3876, %3859
  %3878 = select <8 x i1> %3877, <8 x i64> %3861, <8 x i64> zeroinitializer
  %3879 = add nuw nsw i32 %3862, 1
  %3880 = icmp samesign ult i32 %3862, 3
  %3881 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3878)
  %3882 = icmp ne i64 %3881, 0
  %3883 = select i1 %3880, i1 %3882, i1 false
  br i1 %3883, label %3860, label %3884, !llvm.loop !74

3884:                                             ; preds = %3860
  %3885 = fmul <8 x double> %3858, splat (double 2.800000e-01)
  %3886 = fcmp ogt <8 x double> %3875, %3885
  %3887 = select <8 x i1> %3886, <8 x double> %3875, <8 x double> %3885
  %3888 = fcmp olt <8 x double> %3887, %3858
  %3889 = select <8 x i1> %3888, <8 x double> %3887, <8 x double> %3858
  %3890 = icmp eq <8 x i64> %3764, zeroinitializer
  %3891 = select <8 x i1> %3890, <8 x double> %3762, <8 x double> %3889
  %3892 = fcmp olt <8 x double> %3758, %3753
  %3893 = select <8 x i1> %3890, <8 x i1> splat (i1 true), <8 x i1> %3892
  %3894 = select <8 x i1> %3893, <8 x double> %3758, <8 x double> %3753
  br label %3895

3895:                                             ; preds = %3884, %3711
  %3896 = phi <8 x double> [ %3894, %3884 ], [ %3758, %3711 ]
  %3897 = phi <8 x double> [ %3891, %3884 ], [ %3762, %3711 ]
  %3898 = phi <8 x double> [ %3849, %3884 ], [ %3760, %3711 ]
  %3899 = fsub <8 x double> %3753, %3896
  %3900 = fsub <8 x double> %3897, %3762
  %3901 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3900)
  %3902 = getelementptr inbounds nuw i8, ptr %3715, i64 3072
  %3903 = load <8 x double>, ptr %3902, align 64, !tbaa !26
  %3904 = fsub <8 x double> %3899, %3903
  %3905 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3904)
  %3906 = getelementptr inbounds nuw i8, ptr %3715, i64 832
  %3907 = load <8 x double>, ptr %3906, align 64, !tbaa !26
  %3908 = fdiv <8 x double> %3905, %3907
  %3909 = icmp eq <8 x i64> %3764, zeroinitializer
  %3910 = select <8 x i1> %3909, <8 x double> %3908, <8 x double> %3901
  br i1 %3766, label %3933, label %3911

3911:                                             ; preds = %3895
  %3912 = getelementptr inbounds nuw i8, ptr %3715, i64 7104
  %3913 = load <8 x double>, ptr %3912, align 64, !tbaa !26
  %3914 = fmul <8 x double> %3913, splat (double 2.000000e+00)
  %3915 = getelementptr inbounds nuw i8, ptr %3715, i64 384
  %3916 = load <8 x double>, ptr %3915, align 64, !tbaa !26
  %3917 = getelementptr inbounds nuw i8, ptr %3715, i64 448
  %3918 = load <8 x double>, ptr %3917, align 64, !tbaa !26
  %3919 = getelementptr inbounds nuw i8, ptr %3715, i64 512
  %3920 = load <8 x double>, ptr %3919, align 64, !tbaa !26
  %3921 = fmul <8 x double> %3722, %3920
  %3922 = fmul <8 x double> %3921, splat (double 0x3FD5555555555555)
  %3923 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3918, <8 x double> splat (double 5.000000e-01), <8 x double> %3922)
  %3924 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3722, <8 x double> %3923, <8 x double> %3916)
  %3925 = fmul <8 x double> %3722, %3924
  %3926 = getelementptr inbounds nuw i8, ptr %3715, i64 768
  %3927 = load <8 x double>, ptr %3926, align 64, !tbaa !26
  %3928 = fneg <8 x double> %3927
  %3929 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3928, <8 x double> %3722, <8 x double> %3925)
  %3930 = fmul <8 x double> %3914, %3929
  %3931 = fsub <8 x double> %3735, %3930
  %3932 = select <8 x i1> %3909, <8 x double> %3735, <8 x double> %3931
  br label %3933

3933:                                             ; preds = %3895, %3911
  %3934 = phi <8 x double> [ %3932, %3911 ], [ %3735, %3895 ]
  %3935 = getelementptr inbounds nuw i8, ptr %3715, i64 3264
  store <8 x double> %3750, ptr %3935, align 64, !tbaa !26
  store <8 x double> %3899, ptr %3902, align 64, !tbaa !26
  %3936 = getelementptr inbounds nuw i8, ptr %3715, i64 3136
  store <8 x double> %3896, ptr %3936, align 64, !tbaa !26
  %3937 = getelementptr inbounds nuw i8, ptr %3715, i64 3008
  %3938 = load <8 x double>, ptr %3937, align 64, !tbaa !26
  %3939 = select <8 x i1> %3909, <8 x double> %3938, <8 x double> %3898
  store <8 x double> %3939, ptr %3937, align 64, !tbaa !26
  %3940 = select <8 x i1> %3909, <8 x double> %3762, <8 x double> %3897
  store <8 x double> %3940, ptr %3761, align 64, !tbaa !26
  %3941 = getelementptr inbounds nuw i8, ptr %3715, i64 3520
  store <8 x double> %3719, ptr %3941, align 64, !tbaa !26
  %3942 = getelementptr inbounds nuw i8, ptr %3715, i64 3584
  store <8 x double> %3722, ptr %3942, align 64, !tbaa !26
  %3943 = getelementptr inbounds nuw i8, ptr %3715, i64 3200
  %3944 = load <8 x double>, ptr %3943, align 64, !tbaa !26
  %3945 = getelementptr inbounds nuw i8, ptr %3715, i64 5888
  %3946 = load <8 x double>, ptr %3945, align 64, !tbaa !26
  %3947 = fsub <8 x double> %3946, %3722
  %3948 = getelementptr inbounds nuw i8, ptr %3715, i64 8256
  %3949 = load <8 x double>, ptr %3948, align 64, !tbaa !26
  %3950 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3944, <8 x double> %3949, <8 x double> splat (double 1.000000e+00))
  %3951 = fdiv <8 x double> %3947, %3950
  %3952 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3722, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3953 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3722, <8 x double> %3952, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3954 = fneg <8 x double> %3717
  %3955 = fmul <8 x double> %3953, %3954
  %3956 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3944, <8 x double> %3951, <8 x double> %3955)
  %3957 = getelementptr inbounds nuw i8, ptr %3715, i64 3456
  store <8 x double> %3956, ptr %3957, align 64, !tbaa !26
  %3958 = getelementptr inbounds nuw i8, ptr %3715, i64 6784
  %3959 = load <8 x double>, ptr %3958, align 64, !tbaa !26
  %3960 = fsub <8 x double> %3946, %3959
  %3961 = fsub <8 x double> %3960, %3951
  %3962 = getelementptr inbounds nuw i8, ptr %3715, i64 3648
  store <8 x double> %3961, ptr %3962, align 64, !tbaa !26
  %3963 = getelementptr inbounds nuw i8, ptr %3715, i64 7360
  %3964 = load <8 x double>, ptr %3963, align 64, !tbaa !26
  %3965 = getelementptr inbounds nuw i8, ptr %3715, i64 7424
  %3966 = load <8 x double>, ptr %3965, align 64, !tbaa !26
  %3967 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3964, <8 x double> %3722, <8 x double> %3966)
  %3968 = getelementptr inbounds nuw i8, ptr %3715, i64 6720
  %3969 = load <8 x double>, ptr %3968, align 64, !tbaa !26
  %3970 = getelementptr inbounds nuw i8, ptr %3715, i64 4224
  %3971 = load <8 x double>, ptr %3970, align 64, !tbaa !26
  %3972 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3740, <8 x double> %3971, <8 x double> %3969)
  %3973 = getelementptr inbounds nuw i8, ptr %3715, i64 5120
  %3974 = load <8 x double>, ptr %3973, align 64, !tbaa !26
  %3975 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3746, <8 x double> %3974, <8 x double> %3972)
  %3976 = fdiv <8 x double> %3975, %3749
  %3977 = getelementptr inbounds nuw i8, ptr %3715, i64 3328
  store <8 x double> %3976, ptr %3977, align 64, !tbaa !26
  %3978 = getelementptr inbounds nuw i8, ptr %3715, i64 4288
  %3979 = load <8 x double>, ptr %3978, align 64, !tbaa !26
  %3980 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3740, <8 x double> %3979, <8 x double> %3934)
  %3981 = getelementptr inbounds nuw i8, ptr %3715, i64 5184
  %3982 = load <8 x double>, ptr %3981, align 64, !tbaa !26
  %3983 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3746, <8 x double> %3982, <8 x double> %3980)
  %3984 = fdiv <8 x double> %3983, %3749
  %3985 = getelementptr inbounds nuw i8, ptr %3715, i64 3392
  store <8 x double> %3984, ptr %3985, align 64, !tbaa !26
  %3986 = getelementptr inbounds nuw i8, ptr %3715, i64 4608
  %3987 = load <8 x double>, ptr %3986, align 64, !tbaa !26
  %3988 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3740, <8 x double> %3987, <8 x double> %3967)
  %3989 = getelementptr inbounds nuw i8, ptr %3715, i64 5504
  %3990 = load <8 x double>, ptr %3989, align 64, !tbaa !26
  %3991 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3746, <8 x double> %3990, <8 x double> %3988)
  %3992 = fdiv <8 x double> %3991, %3749
  %3993 = getelementptr inbounds nuw i8, ptr %3715, i64 3712
  store <8 x double> %3992, ptr %3993, align 64, !tbaa !26
  %3994 = fcmp ogt <8 x double> %3713, %3910
  %3995 = select <8 x i1> %3994, <8 x double> %3713, <8 x double> %3910
  %3996 = add nuw nsw i64 %3712, 1
  %3997 = load i64, ptr %156, align 8, !tbaa !20
  %3998 = icmp slt i64 %3996, %3997
  br i1 %3998, label %3711, label %3999, !llvm.loop !134

3999:                                             ; preds = %3933, %3458
  %4000 = phi <8 x double> [ zeroinitializer, %3458 ], [ %3995, %3933 ]
  %4001 = phi i64 [ %3589, %3458 ], [ %3997, %3933 ]
  %4002 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %4000)
  %4003 = insertelement <8 x double> poison, double %4002, i64 0
  %4004 = shufflevector <8 x double> %4003, <8 x double> poison, <8 x i32> zeroinitializer
  %4005 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4006 = fadd <8 x double> %4005, splat (double 1.000000e+00)
  store <8 x double> %4006, ptr %173, align 64, !tbaa !26
  %4007 = icmp sgt i64 %4001, 0
  br i1 %4007, label %4008, label %4012

4008:                                             ; preds = %3999
  %4009 = load ptr, ptr %129, align 8, !tbaa !28
  %4010 = load i64, ptr %119, align 16, !tbaa !21
  %4011 = add nsw i64 %4010, -1
  br label %4036

4012:                                             ; preds = %4062, %3999
  %4013 = phi <8 x double> [ zeroinitializer, %3999 ], [ %4077, %4062 ]
  %4014 = load i64, ptr %208, align 32, !tbaa !24
  %4015 = sitofp i64 %4014 to double
  %4016 = insertelement <8 x double> poison, double %4015, i64 0
  %4017 = shufflevector <8 x double> %4016, <8 x double> poison, <8 x i32> zeroinitializer
  %4018 = fcmp oge <8 x double> %4006, %4017
  %4019 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %4013)
  %4020 = fcmp oeq double %4019, 0.000000e+00
  %4021 = insertelement <8 x i1> poison, i1 %4020, i64 0
  %4022 = shufflevector <8 x i1> %4021, <8 x i1> poison, <8 x i32> zeroinitializer
  %4023 = and <8 x i1> %4022, %4018
  %4024 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %4025 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4026 = fcmp olt <8 x double> %4004, %4025
  %4027 = or <8 x i1> %4026, %4023
  %4028 = fcmp oge <8 x double> %4006, splat (double 2.000000e+01)
  %4029 = or <8 x i1> %4028, %4027
  %4030 = select <8 x i1> %4029, <8 x i64> %4024, <8 x i64> zeroinitializer
  store <8 x i64> %4030, ptr %133, align 64, !tbaa !26
  %4031 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4030)
  %4032 = icmp eq i64 %4031, 0
  br i1 %4032, label %515, label %4033, !llvm.loop !54

4033:                                             ; preds = %4012
  br i1 %4007, label %4034, label %4080

4034:                                             ; preds = %4033
  %4035 = icmp eq <8 x i64> %4030, zeroinitializer
  br label %4394

4036:                                             ; preds = %4008, %4062
  %4037 = phi i64 [ 0, %4008 ], [ %4078, %4062 ]
  %4038 = phi <8 x double> [ zeroinitializer, %4008 ], [ %4077, %4062 ]
  %4039 = getelementptr inbounds nuw %struct.Piece, ptr %4009, i64 %4037
  %4040 = getelementptr inbounds nuw i8, ptr %4039, i64 8512
  %4041 = load i64, ptr %4040, align 64, !tbaa !31
  %4042 = icmp sgt i64 %4010, %4041
  br i1 %4042, label %4051, label %4043

4043:                                             ; preds = %4036
  %4044 = getelementptr inbounds nuw i8, ptr %4039, i64 8608
  %4045 = load ptr, ptr %4044, align 32, !tbaa !72
  %4046 = getelementptr inbounds <8 x double>, ptr %4045, i64 %4011
  %4047 = load <8 x double>, ptr %4046, align 64, !tbaa !26
  %4048 = getelementptr inbounds nuw i8, ptr %4039, i64 1536
  %4049 = load <8 x double>, ptr %4048, align 64, !tbaa !26
  %4050 = fmul <8 x double> %4047, %4049
  br label %4062

4051:                                             ; preds = %4036
  %4052 = getelementptr inbounds nuw i8, ptr %4039, i64 3776
  %4053 = load <8 x double>, ptr %4052, align 64, !tbaa !26
  %4054 = getelementptr inbounds nuw i8, ptr %4039, i64 1536
  %4055 = load <8 x double>, ptr %4054, align 64, !tbaa !26
  %4056 = getelementptr inbounds nuw i8, ptr %4039, i64 8608
  %4057 = load ptr, ptr %4056, align 32, !tbaa !72
  %4058 = getelementptr inbounds <8 x double>, ptr %4057, i64 %4011
  %4059 = load <8 x double>, ptr %4058, align 64, !tbaa !26
  %4060 = fsub <8 x double> %4053, %4055
  %4061 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4059, <8 x double> %4060, <8 x double> %4055)
  br label %4062

4062:                                             ; preds = %4043, %4051
  %4063 = phi <8 x double> [ %4050, %4043 ], [ %4061, %4051 ]
  %4064 = getelementptr inbounds nuw i8, ptr %4039, i64 8320
  %4065 = load <8 x i64>, ptr %4064, align 64, !tbaa !26
  %4066 = getelementptr inbounds nuw i8, ptr %4039, i64 7680
  %4067 = load <8 x double>, ptr %4066, align 64, !tbaa !26
  %4068 = fcmp une <8 x double> %4067, zeroinitializer
  %4069 = getelementptr inbounds nuw i8, ptr %4039, i64 3008
  %4070 = load <8 x double>, ptr %4069, align 64, !tbaa !26
  %4071 = fcmp uge <8 x double> %4070, %4063
  %4072 = select <8 x i1> %4071, <8 x i1> splat (i1 true), <8 x i1> %4068
  %4073 = icmp eq <8 x i64> %4065, zeroinitializer
  %4074 = select <8 x i1> %4072, <8 x i1> splat (i1 true), <8 x i1> %4073
  %4075 = select <8 x i1> %4074, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %4076 = fcmp ogt <8 x double> %4038, %4075
  %4077 = select <8 x i1> %4076, <8 x double> %4038, <8 x double> %4075
  %4078 = add nuw nsw i64 %4037, 1
  %4079 = icmp eq i64 %4078, %4001
  br i1 %4079, label %4012, label %4036, !llvm.loop !135

4080:                                             ; preds = %4442, %4033
  %4081 = phi i64 [ %4001, %4033 ], [ %4448, %4442 ]
  %4082 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4083 = fadd <8 x double> %4082, splat (double 1.000000e+00)
  %4084 = icmp eq <8 x i64> %4030, zeroinitializer
  %4085 = select <8 x i1> %4084, <8 x double> %4082, <8 x double> %4083
  store <8 x double> %4085, ptr %161, align 64, !tbaa !26
  %4086 = fcmp ogt <8 x double> %4085, splat (double 4.000000e+01)
  %4087 = select <8 x i1> %4086, <8 x i64> %4030, <8 x i64> zeroinitializer
  %4088 = xor <8 x i64> %4087, %4030
  %4089 = load <8 x double>, ptr %127, align 64, !tbaa !26
  %4090 = fadd <8 x double> %4089, splat (double 1.000000e+00)
  %4091 = icmp eq <8 x i64> %4087, zeroinitializer
  %4092 = select <8 x i1> %4091, <8 x double> %4089, <8 x double> %4090
  store <8 x double> %4092, ptr %127, align 64, !tbaa !26
  %4093 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %4094 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %4095 = fsub <8 x double> %4093, %4094
  %4096 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4095)
  %4097 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %4098 = fmul <8 x double> %4097, splat (double 1.500000e+00)
  %4099 = fcmp ogt <8 x double> %4096, %4098
  %4100 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4101 = fcmp ogt <8 x double> %4100, splat (double 2.000000e-03)
  %4102 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %4103 = fcmp oeq <8 x double> %4102, zeroinitializer
  %4104 = and <8 x i1> %4099, %4103
  %4105 = and <8 x i1> %4101, %4104
  %4106 = fdiv <8 x double> %4097, %4096
  %4107 = select <8 x i1> %4105, <8 x i64> %4088, <8 x i64> zeroinitializer
  %4108 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4109 = fcmp ogt <8 x double> %4108, %4100
  %4110 = select <8 x i1> %4109, <8 x double> %4108, <8 x double> %4100
  %4111 = select <8 x i1> %4105, <8 x double> zeroinitializer, <8 x double> %4110
  %4112 = icmp eq <8 x i64> %4107, zeroinitializer
  %4113 = select <8 x i1> %4112, <8 x double> %4108, <8 x double> %4111
  store <8 x double> %4113, ptr %159, align 64, !tbaa !26
  %4114 = fcmp ogt <8 x double> %4106, splat (double 5.000000e-02)
  %4115 = select <8 x i1> %4114, <8 x double> %4106, <8 x double> splat (double 5.000000e-02)
  %4116 = fcmp olt <8 x double> %4115, splat (double 0x3FEE666666666666)
  %4117 = select <8 x i1> %4116, <8 x double> %4115, <8 x double> splat (double 0x3FEE666666666666)
  %4118 = fmul <8 x double> %4100, %4117
  %4119 = fcmp ogt <8 x double> %4118, splat (double 0x3EB0C6F7A0B5ED8D)
  %4120 = select <8 x i1> %4119, <8 x double> %4118, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4121 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %4122 = select <8 x i1> %4112, <8 x double> %4121, <8 x double> %4120
  store <8 x double> %4122, ptr %139, align 64, !tbaa !26
  %4123 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %4124 = fadd <8 x double> %4123, splat (double 1.000000e+00)
  %4125 = select <8 x i1> %4112, <8 x double> %4123, <8 x double> %4124
  store <8 x double> %4125, ptr %124, align 64, !tbaa !26
  %4126 = xor <8 x i64> %4107, %4088
  %4127 = icmp sgt i64 %4081, 0
  br i1 %4127, label %4128, label %4224

4128:                                             ; preds = %4080
  %4129 = load ptr, ptr %129, align 8, !tbaa !28
  %4130 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4131 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %4132 = fcmp une <8 x double> %4130, %4131
  %4133 = fcmp ule <8 x double> %4130, zeroinitializer
  %4134 = or <8 x i1> %4133, %4132
  %4135 = fcmp ogt <8 x double> %4100, splat (double 0x3E7AD7F29ABCAF48)
  %4136 = fcmp ogt <8 x double> %4100, splat (double 1.000000e-05)
  %4137 = fcmp ogt <8 x double> %4100, splat (double 1.000000e-04)
  br label %4138

4138:                                             ; preds = %4128, %4138
  %4139 = phi i64 [ 0, %4128 ], [ %4222, %4138 ]
  %4140 = phi <8 x double> [ splat (double 1.000000e+00), %4128 ], [ %4221, %4138 ]
  %4141 = phi <8 x i64> [ zeroinitializer, %4128 ], [ %4169, %4138 ]
  %4142 = phi <8 x i64> [ zeroinitializer, %4128 ], [ %4218, %4138 ]
  %4143 = getelementptr inbounds nuw %struct.Piece, ptr %4129, i64 %4139
  %4144 = getelementptr inbounds nuw i8, ptr %4143, i64 3072
  %4145 = load <8 x double>, ptr %4144, align 64, !tbaa !26
  %4146 = getelementptr inbounds nuw i8, ptr %4143, i64 3968
  %4147 = load <8 x double>, ptr %4146, align 64, !tbaa !26
  %4148 = getelementptr inbounds nuw i8, ptr %4143, i64 8320
  %4149 = load <8 x i64>, ptr %4148, align 64, !tbaa !26
  %4150 = xor <8 x i64> %4149, splat (i64 -1)
  %4151 = getelementptr inbounds nuw i8, ptr %4143, i64 896
  %4152 = load <8 x double>, ptr %4151, align 64, !tbaa !26
  %4153 = fmul <8 x double> %4152, splat (double 3.000000e-03)
  %4154 = fcmp ogt <8 x double> %4153, splat (double 0x3E7AD7F29ABCAF48)
  %4155 = fneg <8 x double> %4153
  %4156 = select <8 x i1> %4154, <8 x double> %4155, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4157 = fcmp olt <8 x double> %4145, %4156
  %4158 = select <8 x i1> %4157, <8 x i1> %4134, <8 x i1> zeroinitializer
  %4159 = select <8 x i1> %4158, <8 x i64> %4150, <8 x i64> zeroinitializer
  %4160 = fcmp ole <8 x double> %4147, zeroinitializer
  %4161 = select <8 x i1> %4160, <8 x i64> %4159, <8 x i64> zeroinitializer
  %4162 = getelementptr inbounds nuw i8, ptr %4143, i64 832
  %4163 = load <8 x double>, ptr %4162, align 64, !tbaa !26
  %4164 = fmul <8 x double> %4163, splat (double -3.000000e-07)
  %4165 = fcmp olt <8 x double> %4145, %4164
  %4166 = select <8 x i1> %4135, <8 x i1> %4165, <8 x i1> zeroinitializer
  %4167 = select <8 x i1> %4166, <8 x i64> %4161, <8 x i64> zeroinitializer
  %4168 = or <8 x i64> %4167, %4142
  %4169 = or <8 x i64> %4167, %4141
  %4170 = fcmp olt <8 x double> %4140, splat (double 3.000000e-01)
  %4171 = icmp eq <8 x i64> %4167, zeroinitializer
  %4172 = select <8 x i1> %4171, <8 x i1> splat (i1 true), <8 x i1> %4170
  %4173 = select <8 x i1> %4172, <8 x double> %4140, <8 x double> splat (double 3.000000e-01)
  %4174 = xor <8 x i64> %4161, splat (i64 -1)
  %4175 = and <8 x i64> %4159, %4174
  %4176 = select <8 x i1> %4136, <8 x i64> %4175, <8 x i64> zeroinitializer
  %4177 = fsub <8 x double> %4147, %4145
  %4178 = fdiv <8 x double> %4147, %4177
  %4179 = or <8 x i64> %4168, %4176
  %4180 = fcmp olt <8 x double> %4173, %4178
  %4181 = icmp eq <8 x i64> %4176, zeroinitializer
  %4182 = select <8 x i1> %4181, <8 x i1> splat (i1 true), <8 x i1> %4180
  %4183 = select <8 x i1> %4182, <8 x double> %4173, <8 x double> %4178
  %4184 = getelementptr inbounds nuw i8, ptr %4143, i64 3904
  %4185 = load <8 x double>, ptr %4184, align 64, !tbaa !26
  %4186 = getelementptr inbounds nuw i8, ptr %4143, i64 3008
  %4187 = load <8 x double>, ptr %4186, align 64, !tbaa !26
  %4188 = getelementptr inbounds nuw i8, ptr %4143, i64 7680
  %4189 = load <8 x double>, ptr %4188, align 64, !tbaa !26
  %4190 = fcmp oeq <8 x double> %4189, zeroinitializer
  %4191 = getelementptr inbounds nuw i8, ptr %4143, i64 1472
  %4192 = load <8 x double>, ptr %4191, align 64, !tbaa !26
  %4193 = fmul <8 x double> %4192, splat (double 0x3FEFF7CED916872B)
  %4194 = fcmp olt <8 x double> %4187, %4193
  %4195 = and <8 x i1> %4190, %4194
  %4196 = and <8 x i1> %4137, %4195
  %4197 = fsub <8 x double> %4185, %4192
  %4198 = fsub <8 x double> %4185, %4187
  %4199 = fdiv <8 x double> %4197, %4198
  %4200 = fcmp uge <8 x double> %4183, %4199
  %4201 = select <8 x i1> %4196, <8 x i1> %4200, <8 x i1> zeroinitializer
  %4202 = select <8 x i1> %4201, <8 x double> %4199, <8 x double> %4183
  %4203 = fcmp oeq <8 x double> %4189, splat (double 1.000000e+00)
  %4204 = getelementptr inbounds nuw i8, ptr %4143, i64 3264
  %4205 = load <8 x double>, ptr %4204, align 64, !tbaa !26
  %4206 = getelementptr inbounds nuw i8, ptr %4143, i64 1600
  %4207 = load <8 x double>, ptr %4206, align 64, !tbaa !26
  %4208 = fmul <8 x double> %4207, splat (double 1.000100e+00)
  %4209 = fcmp ogt <8 x double> %4205, %4208
  %4210 = and <8 x i1> %4203, %4209
  %4211 = and <8 x i1> %4137, %4210
  %4212 = getelementptr inbounds nuw i8, ptr %4143, i64 4160
  %4213 = load <8 x double>, ptr %4212, align 64, !tbaa !26
  %4214 = fsub <8 x double> %4207, %4213
  %4215 = fsub <8 x double> %4205, %4213
  %4216 = fdiv <8 x double> %4214, %4215
  %4217 = select <8 x i1> %4210, <8 x i1> %4137, <8 x i1> %4196
  %4218 = select <8 x i1> %4217, <8 x i64> splat (i64 -1), <8 x i64> %4179
  %4219 = fcmp uge <8 x double> %4202, %4216
  %4220 = select <8 x i1> %4211, <8 x i1> %4219, <8 x i1> zeroinitializer
  %4221 = select <8 x i1> %4220, <8 x double> %4216, <8 x double> %4202
  %4222 = add nuw nsw i64 %4139, 1
  %4223 = icmp eq i64 %4222, %4081
  br i1 %4223, label %4224, label %4138, !llvm.loop !136

4224:                                             ; preds = %4138, %4080
  %4225 = phi <8 x i64> [ zeroinitializer, %4080 ], [ %4218, %4138 ]
  %4226 = phi <8 x i64> [ zeroinitializer, %4080 ], [ %4169, %4138 ]
  %4227 = phi <8 x double> [ splat (double 1.000000e+00), %4080 ], [ %4221, %4138 ]
  %4228 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4225)
  %4229 = icmp eq i64 %4228, 0
  %4230 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4226)
  %4231 = icmp eq i64 %4230, 0
  %4232 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4227)
  %4233 = insertelement <8 x double> poison, double %4232, i64 0
  %4234 = shufflevector <8 x double> %4233, <8 x double> poison, <8 x i32> zeroinitializer
  %4235 = select i1 %4229, <8 x i64> zeroinitializer, <8 x i64> %4126
  %4236 = fcmp ogt <8 x double> %4113, %4100
  %4237 = select <8 x i1> %4236, <8 x double> %4113, <8 x double> %4100
  %4238 = select i1 %4231, <8 x i1> splat (i1 true), <8 x i1> zeroinitializer
  %4239 = select <8 x i1> %4238, <8 x double> %4237, <8 x double> zeroinitializer
  %4240 = icmp eq <8 x i64> %4235, zeroinitializer
  %4241 = select <8 x i1> %4240, <8 x double> %4113, <8 x double> %4239
  %4242 = fcmp ogt <8 x double> %4234, splat (double 5.000000e-02)
  %4243 = select <8 x i1> %4242, <8 x double> %4234, <8 x double> splat (double 5.000000e-02)
  %4244 = fcmp olt <8 x double> %4243, splat (double 0x3FEE666666666666)
  %4245 = select <8 x i1> %4244, <8 x double> %4243, <8 x double> splat (double 0x3FEE666666666666)
  %4246 = fmul <8 x double> %4100, %4245
  %4247 = fcmp ogt <8 x double> %4246, splat (double 0x3EB0C6F7A0B5ED8D)
  %4248 = select <8 x i1> %4247, <8 x double> %4246, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4249 = select <8 x i1> %4240, <8 x double> %4122, <8 x double> %4248
  %4250 = fadd <8 x double> %4125, splat (double 1.000000e+00)
  %4251 = select <8 x i1> %4240, <8 x double> %4125, <8 x double> %4250
  %4252 = xor <8 x i64> %4235, %4126
  %4253 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %4254 = fmul <8 x double> %4253, splat (double 5.000000e-01)
  %4255 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %4256 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %4257 = fneg <8 x double> %4254
  %4258 = icmp eq <8 x i64> %4256, zeroinitializer
  %4259 = select <8 x i1> %4258, <8 x double> %4257, <8 x double> %4254
  %4260 = fadd <8 x double> %4255, %4259
  %4261 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %4262 = fsub <8 x double> %4261, %4260
  %4263 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %4264 = fsub <8 x double> %4263, %4260
  %4265 = fneg <8 x double> %4262
  %4266 = select <8 x i1> %4258, <8 x double> %4265, <8 x double> %4262
  %4267 = fneg <8 x double> %4264
  %4268 = select <8 x i1> %4258, <8 x double> %4267, <8 x double> %4264
  %4269 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %4270 = fcmp oeq <8 x double> %4269, zeroinitializer
  %4271 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %4272 = fcmp oeq <8 x double> %4271, zeroinitializer
  %4273 = and <8 x i1> %4270, %4272
  %4274 = fcmp olt <8 x double> %4266, splat (double -4.000000e-03)
  %4275 = and <8 x i1> %4273, %4274
  %4276 = fcmp ogt <8 x double> %4268, splat (double 4.000000e-03)
  %4277 = and <8 x i1> %4276, %4275
  %4278 = and <8 x i1> %4101, %4277
  %4279 = fsub <8 x double> %4266, %4268
  %4280 = fdiv <8 x double> %4266, %4279
  %4281 = select <8 x i1> %4278, <8 x i64> %4252, <8 x i64> zeroinitializer
  %4282 = fcmp ogt <8 x double> %4241, %4100
  %4283 = icmp eq <8 x i64> %4281, zeroinitializer
  %4284 = select <8 x i1> %4283, <8 x i1> splat (i1 true), <8 x i1> %4282
  %4285 = select <8 x i1> %4284, <8 x double> %4241, <8 x double> %4100
  store <8 x double> %4285, ptr %159, align 64, !tbaa !26
  %4286 = fcmp ogt <8 x double> %4280, splat (double 5.000000e-02)
  %4287 = select <8 x i1> %4286, <8 x double> %4280, <8 x double> splat (double 5.000000e-02)
  %4288 = fcmp olt <8 x double> %4287, splat (double 0x3FEE666666666666)
  %4289 = select <8 x i1> %4288, <8 x double> %4287, <8 x double> splat (double 0x3FEE666666666666)
  %4290 = fmul <8 x double> %4100, %4289
  %4291 = fcmp ogt <8 x double> %4290, splat (double 0x3EB0C6F7A0B5ED8D)
  %4292 = select <8 x i1> %4291, <8 x double> %4290, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4293 = select <8 x i1> %4283, <8 x double> %4249, <8 x double> %4292
  store <8 x double> %4293, ptr %139, align 64, !tbaa !26
  %4294 = fadd <8 x double> %4251, splat (double 1.000000e+00)
  %4295 = select <8 x i1> %4283, <8 x double> %4251, <8 x double> %4294
  store <8 x double> %4295, ptr %124, align 64, !tbaa !26
  %4296 = xor <8 x i64> %4281, %4252
  %4297 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %4298 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %4299 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %4300 = fsub <8 x double> %4298, %4299
  %4301 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %4302 = fcmp une <8 x double> %4301, splat (double 1.000000e+00)
  %4303 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %4304 = fsub <8 x double> %4261, %4303
  %4305 = select <8 x i1> %4302, <8 x double> splat (double -1.000000e+00), <8 x double> %4304
  %4306 = fcmp une <8 x double> %4301, splat (double 2.000000e+00)
  %4307 = fsub <8 x double> %4297, %4303
  %4308 = select <8 x i1> %4306, <8 x double> %4305, <8 x double> %4307
  %4309 = fcmp une <8 x double> %4301, splat (double 3.000000e+00)
  %4310 = fsub <8 x double> %4300, %4303
  %4311 = select <8 x i1> %4309, <8 x double> %4308, <8 x double> %4310
  %4312 = fcmp une <8 x double> %4301, splat (double 4.000000e+00)
  %4313 = fsub <8 x double> %4303, %4300
  %4314 = select <8 x i1> %4312, <8 x double> %4311, <8 x double> %4313
  br i1 %4127, label %4315, label %4347

4315:                                             ; preds = %4224
  %4316 = load ptr, ptr %129, align 8, !tbaa !28
  %4317 = and i64 %4081, 1
  %4318 = icmp eq i64 %4081, 1
  br i1 %4318, label %4337, label %4319

4319:                                             ; preds = %4315
  %4320 = and i64 %4081, 9223372036854775806
  br label %4321

4321:                                             ; preds = %4321, %4319
  %4322 = phi i64 [ 0, %4319 ], [ %4334, %4321 ]
  %4323 = phi <8 x double> [ splat (double 1.000000e+09), %4319 ], [ %4333, %4321 ]
  %4324 = phi i64 [ 0, %4319 ], [ %4335, %4321 ]
  %4325 = getelementptr inbounds nuw %struct.Piece, ptr %4316, i64 %4322, i32 35
  %4326 = load <8 x double>, ptr %4325, align 64, !tbaa !26
  %4327 = fcmp olt <8 x double> %4323, %4326
  %4328 = select <8 x i1> %4327, <8 x double> %4323, <8 x double> %4326
  %4329 = or disjoint i64 %4322, 1
  %4330 = getelementptr inbounds nuw %struct.Piece, ptr %4316, i64 %4329, i32 35
  %4331 = load <8 x double>, ptr %4330, align 64, !tbaa !26
  %4332 = fcmp olt <8 x double> %4328, %4331
  %4333 = select <8 x i1> %4332, <8 x double> %4328, <8 x double> %4331
  %4334 = add nuw nsw i64 %4322, 2
  %4335 = add i64 %4324, 2
  %4336 = icmp eq i64 %4335, %4320
  br i1 %4336, label %4337, label %4321, !llvm.loop !137

4337:                                             ; preds = %4321, %4315
  %4338 = phi <8 x double> [ poison, %4315 ], [ %4333, %4321 ]
  %4339 = phi i64 [ 0, %4315 ], [ %4334, %4321 ]
  %4340 = phi <8 x double> [ splat (double 1.000000e+09), %4315 ], [ %4333, %4321 ]
  %4341 = icmp eq i64 %4317, 0
  br i1 %4341, label %4347, label %4342

4342:                                             ; preds = %4337
  %4343 = getelementptr inbounds nuw %struct.Piece, ptr %4316, i64 %4339, i32 35
  %4344 = load <8 x double>, ptr %4343, align 64, !tbaa !26
  %4345 = fcmp olt <8 x double> %4340, %4344
  %4346 = select <8 x i1> %4345, <8 x double> %4340, <8 x double> %4344
  br label %4347

4347:                                             ; preds = %4342, %4337, %4224
  %4348 = phi <8 x double> [ splat (double 1.000000e+09), %4224 ], [ %4338, %4337 ], [ %4346, %4342 ]
  %4349 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4348)
  %4350 = insertelement <8 x double> poison, double %4349, i64 0
  %4351 = shufflevector <8 x double> %4350, <8 x double> poison, <8 x i32> zeroinitializer
  %4352 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %4353 = fsub <8 x double> %4352, %4299
  %4354 = fsub <8 x double> %4263, %4303
  %4355 = select <8 x i1> %4302, <8 x double> splat (double -1.000000e+00), <8 x double> %4354
  %4356 = fsub <8 x double> %4351, %4303
  %4357 = select <8 x i1> %4306, <8 x double> %4355, <8 x double> %4356
  %4358 = fsub <8 x double> %4353, %4303
  %4359 = select <8 x i1> %4309, <8 x double> %4357, <8 x double> %4358
  %4360 = fsub <8 x double> %4303, %4353
  %4361 = select <8 x i1> %4312, <8 x double> %4359, <8 x double> %4360
  %4362 = fcmp une <8 x double> %4301, zeroinitializer
  %4363 = fcmp oge <8 x double> %4100, splat (double 5.000000e-02)
  %4364 = and <8 x i1> %4363, %4362
  %4365 = fcmp olt <8 x double> %4314, zeroinitializer
  %4366 = and <8 x i1> %4364, %4365
  %4367 = fsub <8 x double> %4361, %4314
  %4368 = fmul <8 x double> %4367, splat (double 2.000000e-02)
  %4369 = fcmp ogt <8 x double> %4361, %4368
  %4370 = and <8 x i1> %4366, %4369
  %4371 = fsub <8 x double> %4314, %4361
  %4372 = fdiv <8 x double> %4314, %4371
  %4373 = fcmp olt <8 x double> %4372, splat (double 0x3FEE666666666666)
  %4374 = and <8 x i1> %4373, %4370
  %4375 = select <8 x i1> %4374, <8 x i64> %4296, <8 x i64> zeroinitializer
  %4376 = fcmp ogt <8 x double> %4285, %4100
  %4377 = icmp eq <8 x i64> %4375, zeroinitializer
  %4378 = select <8 x i1> %4377, <8 x i1> splat (i1 true), <8 x i1> %4376
  %4379 = select <8 x i1> %4378, <8 x double> %4285, <8 x double> %4100
  store <8 x double> %4379, ptr %159, align 64, !tbaa !26
  %4380 = fcmp ogt <8 x double> %4372, splat (double 5.000000e-02)
  %4381 = select <8 x i1> %4380, <8 x double> %4372, <8 x double> splat (double 5.000000e-02)
  %4382 = fcmp olt <8 x double> %4381, splat (double 0x3FEE666666666666)
  %4383 = select <8 x i1> %4382, <8 x double> %4381, <8 x double> splat (double 0x3FEE666666666666)
  %4384 = fmul <8 x double> %4100, %4383
  %4385 = fcmp ogt <8 x double> %4384, splat (double 0x3EB0C6F7A0B5ED8D)
  %4386 = select <8 x i1> %4385, <8 x double> %4384, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4387 = select <8 x i1> %4377, <8 x double> %4293, <8 x double> %4386
  store <8 x double> %4387, ptr %139, align 64, !tbaa !26
  %4388 = fadd <8 x double> %4295, splat (double 1.000000e+00)
  %4389 = select <8 x i1> %4377, <8 x double> %4295, <8 x double> %4388
  store <8 x double> %4389, ptr %124, align 64, !tbaa !26
  %4390 = xor <8 x i64> %4375, %4296
  %4391 = or <8 x i64> %4390, %4087
  %4392 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4391)
  %4393 = icmp eq i64 %4392, 0
  br i1 %4393, label %515, label %4450

4394:                                             ; preds = %4034, %4442
  %4395 = phi i64 [ 0, %4034 ], [ %4447, %4442 ]
  %4396 = load ptr, ptr %129, align 8, !tbaa !28
  %4397 = getelementptr inbounds nuw %struct.Piece, ptr %4396, i64 %4395
  %4398 = getelementptr inbounds nuw i8, ptr %4397, i64 8520
  %4399 = load ptr, ptr %4398, align 8, !tbaa !57
  %4400 = load <8 x double>, ptr %4399, align 64, !tbaa !26
  %4401 = getelementptr inbounds nuw i8, ptr %4397, i64 1344
  %4402 = load <8 x double>, ptr %4401, align 64, !tbaa !26
  %4403 = getelementptr inbounds nuw i8, ptr %4399, i64 64
  %4404 = load <8 x double>, ptr %4403, align 64, !tbaa !26
  %4405 = fsub <8 x double> %4404, %4400
  %4406 = fneg <8 x double> %4402
  %4407 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4406, <8 x double> %4405, <8 x double> %4400)
  %4408 = getelementptr inbounds nuw i8, ptr %4397, i64 8512
  %4409 = load i64, ptr %4408, align 64, !tbaa !31
  %4410 = icmp eq i64 %4409, 0
  br i1 %4410, label %4442, label %4411

4411:                                             ; preds = %4394
  %4412 = getelementptr <8 x double>, ptr %4399, i64 %4409
  %4413 = getelementptr i8, ptr %4412, i64 -64
  %4414 = load <8 x double>, ptr %4413, align 64, !tbaa !26
  %4415 = load <8 x double>, ptr %4412, align 64, !tbaa !26
  %4416 = getelementptr inbounds nuw i8, ptr %4397, i64 2880
  %4417 = load <8 x double>, ptr %4416, align 64, !tbaa !26
  %4418 = getelementptr inbounds nuw i8, ptr %4397, i64 2944
  %4419 = load <8 x double>, ptr %4418, align 64, !tbaa !26
  %4420 = getelementptr inbounds nuw i8, ptr %4397, i64 64
  %4421 = load <8 x double>, ptr %4420, align 64, !tbaa !26
  %4422 = fsub <8 x double> %4419, %4421
  %4423 = fmul <8 x double> %4417, %4422
  %4424 = getelementptr inbounds nuw i8, ptr %4397, i64 576
  %4425 = load <8 x double>, ptr %4424, align 64, !tbaa !26
  %4426 = getelementptr inbounds nuw i8, ptr %4397, i64 2816
  %4427 = load <8 x double>, ptr %4426, align 64, !tbaa !26
  %4428 = fdiv <8 x double> %4425, %4427
  %4429 = getelementptr inbounds nuw i8, ptr %4397, i64 192
  %4430 = load <8 x double>, ptr %4429, align 64, !tbaa !26
  %4431 = getelementptr inbounds nuw i8, ptr %4397, i64 256
  %4432 = load <8 x double>, ptr %4431, align 64, !tbaa !26
  %4433 = getelementptr inbounds nuw i8, ptr %4397, i64 320
  %4434 = load <8 x double>, ptr %4433, align 64, !tbaa !26
  %4435 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4415, <8 x double> %4434, <8 x double> %4432)
  %4436 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4415, <8 x double> %4435, <8 x double> %4430)
  %4437 = fdiv <8 x double> %4436, %4423
  %4438 = fmul <8 x double> %4415, %4437
  %4439 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4428, <8 x double> %4414, <8 x double> %4438)
  %4440 = fadd <8 x double> %4428, %4437
  %4441 = fdiv <8 x double> %4439, %4440
  br label %4442

4442:                                             ; preds = %4394, %4411
  %4443 = phi <8 x double> [ %4441, %4411 ], [ %4407, %4394 ]
  %4444 = getelementptr inbounds nuw i8, ptr %4397, i64 7616
  %4445 = load <8 x double>, ptr %4444, align 64, !tbaa !26
  %4446 = select <8 x i1> %4035, <8 x double> %4445, <8 x double> %4443
  store <8 x double> %4446, ptr %4444, align 64, !tbaa !26
  %4447 = add nuw nsw i64 %4395, 1
  %4448 = load i64, ptr %156, align 8, !tbaa !20
  %4449 = icmp slt i64 %4447, %4448
  br i1 %4449, label %4394, label %4080, !llvm.loop !138

4450:                                             ; preds = %4347
  %4451 = icmp eq <8 x i64> %4391, zeroinitializer
  %4452 = select <8 x i1> %4451, <8 x double> %4094, <8 x double> %4093
  store <8 x double> %4452, ptr %210, align 64, !tbaa !26
  %4453 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %4454 = select <8 x i1> %4451, <8 x double> %4453, <8 x double> %4261
  store <8 x double> %4454, ptr %150, align 64, !tbaa !26
  %4455 = select <8 x i1> %4451, <8 x double> %4261, <8 x double> %4263
  store <8 x double> %4455, ptr %144, align 64, !tbaa !26
  %4456 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %4457 = select <8 x i1> %4451, <8 x double> %4456, <8 x double> %4298
  store <8 x double> %4457, ptr %255, align 64, !tbaa !26
  %4458 = select <8 x i1> %4451, <8 x double> %4298, <8 x double> %4352
  store <8 x double> %4458, ptr %256, align 64, !tbaa !26
  %4459 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %4460 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %4461 = select <8 x i1> %4451, <8 x double> %4460, <8 x double> %4459
  store <8 x double> %4461, ptr %257, align 64, !tbaa !26
  %4462 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %4463 = select <8 x i1> %4451, <8 x double> %4459, <8 x double> %4462
  store <8 x double> %4463, ptr %258, align 64, !tbaa !26
  %4464 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %4465 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %4466 = select <8 x i1> %4451, <8 x double> %4465, <8 x double> %4464
  store <8 x double> %4466, ptr %260, align 64, !tbaa !26
  %4467 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %4468 = select <8 x i1> %4451, <8 x double> %4464, <8 x double> %4467
  store <8 x double> %4468, ptr %261, align 64, !tbaa !26
  %4469 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %4470 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %4471 = select <8 x i1> %4451, <8 x double> %4470, <8 x double> %4469
  store <8 x double> %4471, ptr %263, align 64, !tbaa !26
  %4472 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %4473 = select <8 x i1> %4451, <8 x double> %4469, <8 x double> %4472
  store <8 x double> %4473, ptr %264, align 64, !tbaa !26
  %4474 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %4475 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %4476 = select <8 x i1> %4451, <8 x double> %4475, <8 x double> %4474
  store <8 x double> %4476, ptr %266, align 64, !tbaa !26
  %4477 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %4478 = select <8 x i1> %4451, <8 x double> %4474, <8 x double> %4477
  store <8 x double> %4478, ptr %267, align 64, !tbaa !26
  %4479 = xor <8 x i64> %4391, splat (i64 -1)
  br i1 %4127, label %4480, label %4874

4480:                                             ; preds = %4450, %4839
  %4481 = phi i64 [ %4851, %4839 ], [ 0, %4450 ]
  %4482 = load ptr, ptr %129, align 8, !tbaa !28
  %4483 = getelementptr inbounds nuw %struct.Piece, ptr %4482, i64 %4481
  %4484 = getelementptr inbounds nuw i8, ptr %4483, i64 1664
  %4485 = load <8 x double>, ptr %4484, align 64, !tbaa !26
  %4486 = fcmp ogt <8 x double> %4485, zeroinitializer
  %4487 = bitcast <8 x i1> %4486 to i8
  %4488 = icmp eq i8 %4487, 0
  br i1 %4488, label %4746, label %4489

4489:                                             ; preds = %4480
  %4490 = load i64, ptr %119, align 16, !tbaa !21
  %4491 = add i64 %4490, -1
  %4492 = getelementptr inbounds nuw i8, ptr %4483, i64 4672
  %4493 = load <8 x double>, ptr %4492, align 64, !tbaa !26
  %4494 = getelementptr inbounds nuw i8, ptr %4483, i64 3776
  %4495 = load <8 x double>, ptr %4494, align 64, !tbaa !26
  %4496 = getelementptr inbounds nuw i8, ptr %4483, i64 8512
  %4497 = load i64, ptr %4496, align 64, !tbaa !31
  %4498 = icmp sgt i64 %4490, %4497
  br i1 %4498, label %4507, label %4499

4499:                                             ; preds = %4489
  %4500 = getelementptr inbounds nuw i8, ptr %4483, i64 8608
  %4501 = load ptr, ptr %4500, align 32, !tbaa !72
  %4502 = getelementptr inbounds <8 x double>, ptr %4501, i64 %4491
  %4503 = load <8 x double>, ptr %4502, align 64, !tbaa !26
  %4504 = getelementptr inbounds nuw i8, ptr %4483, i64 1536
  %4505 = load <8 x double>, ptr %4504, align 64, !tbaa !26
  %4506 = fmul <8 x double> %4503, %4505
  br label %4516

4507:                                             ; preds = %4489
  %4508 = getelementptr inbounds nuw i8, ptr %4483, i64 1536
  %4509 = load <8 x double>, ptr %4508, align 64, !tbaa !26
  %4510 = getelementptr inbounds nuw i8, ptr %4483, i64 8608
  %4511 = load ptr, ptr %4510, align 32, !tbaa !72
  %4512 = getelementptr inbounds <8 x double>, ptr %4511, i64 %4491
  %4513 = load <8 x double>, ptr %4512, align 64, !tbaa !26
  %4514 = fsub <8 x double> %4493, %4509
  %4515 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4513, <8 x double> %4514, <8 x double> %4509)
  br label %4516

4516:                                             ; preds = %4507, %4499
  %4517 = phi <8 x double> [ %4505, %4499 ], [ %4509, %4507 ]
  %4518 = phi <8 x double> [ %4506, %4499 ], [ %4515, %4507 ]
  %4519 = getelementptr inbounds nuw i8, ptr %4483, i64 3008
  %4520 = load <8 x double>, ptr %4519, align 64, !tbaa !26
  %4521 = fcmp ole <8 x double> %4518, %4520
  %4522 = getelementptr inbounds nuw i8, ptr %4483, i64 7680
  %4523 = load <8 x double>, ptr %4522, align 64, !tbaa !26
  %4524 = fcmp oeq <8 x double> %4523, zeroinitializer
  %4525 = select <8 x i1> %4524, <8 x i1> %4521, <8 x i1> zeroinitializer
  %4526 = select <8 x i1> %4525, <8 x i64> %4391, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %4527 = xor <8 x i64> %4526, %4391
  store <8 x i64> %4527, ptr %12, align 64, !tbaa !26
  %4528 = fsub <8 x double> %4493, %4495
  %4529 = getelementptr inbounds nuw i8, ptr %4483, i64 1536
  %4530 = fsub <8 x double> %4495, %4517
  %4531 = fdiv <8 x double> %4528, %4530
  %4532 = getelementptr inbounds nuw i8, ptr %4483, i64 8552
  %4533 = load ptr, ptr %4532, align 8, !tbaa !67
  %4534 = getelementptr inbounds <8 x double>, ptr %4533, i64 %4497
  %4535 = load <8 x double>, ptr %4534, align 64, !tbaa !26
  %4536 = getelementptr inbounds nuw i8, ptr %4483, i64 8560
  %4537 = load ptr, ptr %4536, align 16, !tbaa !46
  %4538 = getelementptr inbounds <8 x double>, ptr %4537, i64 %4497
  %4539 = load <8 x double>, ptr %4538, align 64, !tbaa !26
  %4540 = icmp eq <8 x i64> %4526, zeroinitializer
  %4541 = select <8 x i1> %4540, <8 x double> %4539, <8 x double> %4535
  store <8 x double> %4541, ptr %4538, align 64, !tbaa !26
  %4542 = load i64, ptr %4496, align 64, !tbaa !31
  %4543 = add nsw i64 %4542, 1
  %4544 = icmp slt i64 %4543, %4491
  br i1 %4544, label %4545, label %4549

4545:                                             ; preds = %4516
  %4546 = getelementptr inbounds nuw i8, ptr %4483, i64 8624
  br label %4589

4547:                                             ; preds = %4589
  %4548 = load i64, ptr %4496, align 64, !tbaa !31
  br label %4549

4549:                                             ; preds = %4547, %4516
  %4550 = phi i64 [ %4542, %4516 ], [ %4548, %4547 ]
  %4551 = phi <8 x double> [ %4535, %4516 ], [ %4594, %4547 ]
  %4552 = icmp sgt i64 %4490, %4550
  br i1 %4552, label %4560, label %4553

4553:                                             ; preds = %4549
  %4554 = getelementptr inbounds nuw i8, ptr %4483, i64 8608
  %4555 = load ptr, ptr %4554, align 32, !tbaa !72
  %4556 = getelementptr inbounds <8 x double>, ptr %4555, i64 %4491
  %4557 = load <8 x double>, ptr %4556, align 64, !tbaa !26
  %4558 = load <8 x double>, ptr %4529, align 64, !tbaa !26
  %4559 = fmul <8 x double> %4557, %4558
  br label %4568

4560:                                             ; preds = %4549
  %4561 = load <8 x double>, ptr %4529, align 64, !tbaa !26
  %4562 = getelementptr inbounds nuw i8, ptr %4483, i64 8608
  %4563 = load ptr, ptr %4562, align 32, !tbaa !72
  %4564 = getelementptr inbounds <8 x double>, ptr %4563, i64 %4491
  %4565 = load <8 x double>, ptr %4564, align 64, !tbaa !26
  %4566 = fsub <8 x double> %4495, %4561
  %4567 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4565, <8 x double> %4566, <8 x double> %4561)
  br label %4568

4568:                                             ; preds = %4560, %4553
  %4569 = phi <8 x double> [ %4559, %4553 ], [ %4567, %4560 ]
  %4570 = load ptr, ptr %4532, align 8, !tbaa !67
  %4571 = getelementptr inbounds <8 x double>, ptr %4570, i64 %4491
  %4572 = load <8 x double>, ptr %4571, align 64, !tbaa !26
  %4573 = load ptr, ptr %4536, align 16, !tbaa !46
  %4574 = getelementptr inbounds <8 x double>, ptr %4573, i64 %4491
  %4575 = fsub <8 x double> %4551, %4572
  %4576 = fsub <8 x double> %4518, %4569
  %4577 = load <8 x double>, ptr %4519, align 64, !tbaa !26
  %4578 = fsub <8 x double> %4577, %4569
  %4579 = fdiv <8 x double> %4576, %4578
  %4580 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4575, <8 x double> %4579, <8 x double> %4572)
  %4581 = load <8 x double>, ptr %4574, align 64, !tbaa !26
  %4582 = select <8 x i1> %4540, <8 x double> %4581, <8 x double> %4580
  store <8 x double> %4582, ptr %4574, align 64, !tbaa !26
  %4583 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4527)
  %4584 = icmp eq i64 %4583, 0
  br i1 %4584, label %4745, label %4585

4585:                                             ; preds = %4568
  %4586 = getelementptr inbounds nuw i8, ptr %4483, i64 8608
  %4587 = getelementptr inbounds nuw i8, ptr %4483, i64 3136
  %4588 = getelementptr inbounds nuw i8, ptr %4483, i64 832
  br label %4607

4589:                                             ; preds = %4545, %4589
  %4590 = phi i64 [ %4543, %4545 ], [ %4605, %4589 ]
  %4591 = phi <8 x double> [ %4535, %4545 ], [ %4594, %4589 ]
  %4592 = load ptr, ptr %4532, align 8, !tbaa !67
  %4593 = getelementptr inbounds <8 x double>, ptr %4592, i64 %4590
  %4594 = load <8 x double>, ptr %4593, align 64, !tbaa !26
  %4595 = load ptr, ptr %4536, align 16, !tbaa !46
  %4596 = getelementptr inbounds <8 x double>, ptr %4595, i64 %4590
  %4597 = fsub <8 x double> %4591, %4594
  %4598 = load ptr, ptr %4546, align 16, !tbaa !139
  %4599 = getelementptr inbounds <8 x double>, ptr %4598, i64 %4590
  %4600 = load <8 x double>, ptr %4599, align 64, !tbaa !26
  %4601 = fmul <8 x double> %4531, %4600
  %4602 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4597, <8 x double> %4601, <8 x double> %4594)
  %4603 = load <8 x double>, ptr %4596, align 64, !tbaa !26
  %4604 = select <8 x i1> %4540, <8 x double> %4603, <8 x double> %4602
  store <8 x double> %4604, ptr %4596, align 64, !tbaa !26
  %4605 = add nsw i64 %4590, 1
  %4606 = icmp eq i64 %4605, %4491
  br i1 %4606, label %4547, label %4589, !llvm.loop !140

4607:                                             ; preds = %4585, %4742
  %4608 = phi i64 [ 0, %4585 ], [ %4743, %4742 ]
  %4609 = getelementptr inbounds nuw i64, ptr %12, i64 %4608
  %4610 = load i64, ptr %4609, align 8, !tbaa !30
  %4611 = icmp eq i64 %4610, 0
  br i1 %4611, label %4742, label %4612

4612:                                             ; preds = %4607
  %4613 = load i64, ptr %119, align 16, !tbaa !21
  %4614 = load i64, ptr %4496, align 64, !tbaa !31
  %4615 = getelementptr inbounds nuw double, ptr %4529, i64 %4608
  %4616 = load double, ptr %4615, align 8, !tbaa !41
  %4617 = getelementptr inbounds nuw double, ptr %4519, i64 %4608
  %4618 = load double, ptr %4617, align 8, !tbaa !41
  %4619 = add nsw i64 %4613, -1
  %4620 = icmp sgt i64 %4613, %4614
  br i1 %4620, label %4621, label %4742

4621:                                             ; preds = %4612
  %4622 = getelementptr inbounds nuw double, ptr %4494, i64 %4608
  %4623 = load double, ptr %4622, align 8, !tbaa !41
  %4624 = getelementptr inbounds nuw double, ptr %4492, i64 %4608
  %4625 = load double, ptr %4624, align 8, !tbaa !41
  %4626 = load ptr, ptr %4586, align 32
  %4627 = getelementptr i8, ptr %4626, i64 64
  %4628 = getelementptr double, ptr %4627, i64 %4608
  %4629 = fsub double %4623, %4616
  %4630 = getelementptr double, ptr %4626, i64 %4608
  %4631 = fsub double %4625, %4616
  %4632 = load ptr, ptr %4532, align 8, !tbaa !67
  %4633 = getelementptr double, ptr %4632, i64 %4608
  %4634 = load ptr, ptr %4536, align 16, !tbaa !46
  %4635 = getelementptr double, ptr %4634, i64 %4608
  %4636 = getelementptr <8 x double>, ptr %4630, i64 %4619
  br label %4664

4637:                                             ; preds = %4710
  %4638 = getelementptr inbounds nuw double, ptr %4522, i64 %4608
  %4639 = load double, ptr %4638, align 8, !tbaa !41
  %4640 = fcmp ogt double %4639, 0.000000e+00
  %4641 = fcmp ogt double %4721, 0.000000e+00
  %4642 = select i1 %4640, i1 %4641, i1 false
  br i1 %4642, label %4643, label %4742

4643:                                             ; preds = %4637
  %4644 = getelementptr inbounds nuw double, ptr %4587, i64 %4608
  %4645 = getelementptr inbounds nuw double, ptr %4588, i64 %4608
  %4646 = sub i64 %4613, %4614
  %4647 = add i64 %4614, 1
  %4648 = and i64 %4646, 1
  %4649 = icmp eq i64 %4648, 0
  br i1 %4649, label %4659, label %4650

4650:                                             ; preds = %4643
  %4651 = load double, ptr %4644, align 8, !tbaa !41
  %4652 = load double, ptr %4645, align 8, !tbaa !41
  %4653 = fmul double %4721, %4652
  %4654 = fdiv double %4651, %4653
  %4655 = getelementptr <8 x double>, ptr %4635, i64 %4614
  %4656 = load double, ptr %4655, align 8, !tbaa !41
  %4657 = fmul double %4656, %4654
  store double %4657, ptr %4655, align 8, !tbaa !41
  %4658 = add nsw i64 %4614, 1
  br label %4659

4659:                                             ; preds = %4650, %4643
  %4660 = phi i64 [ %4614, %4643 ], [ %4658, %4650 ]
  %4661 = icmp eq i64 %4613, %4647
  br i1 %4661, label %4742, label %4662

4662:                                             ; preds = %4659
  %4663 = getelementptr i8, ptr %4635, i64 64
  br label %4724

4664:                                             ; preds = %4710, %4621
  %4665 = phi double [ 0.000000e+00, %4621 ], [ %4721, %4710 ]
  %4666 = phi i64 [ %4619, %4621 ], [ %4722, %4710 ]
  %4667 = icmp eq i64 %4666, %4619
  br i1 %4667, label %4668, label %4671

4668:                                             ; preds = %4664
  %4669 = load double, ptr %4636, align 8, !tbaa !41
  %4670 = tail call noundef double @llvm.fmuladd.f64(double %4669, double %4629, double %4616)
  br label %4682

4671:                                             ; preds = %4664
  %4672 = getelementptr <8 x double>, ptr %4628, i64 %4666
  %4673 = load double, ptr %4672, align 8, !tbaa !41
  %4674 = tail call noundef double @llvm.fmuladd.f64(double %4673, double %4629, double %4616)
  %4675 = getelementptr <8 x double>, ptr %4630, i64 %4666
  %4676 = load double, ptr %4675, align 8, !tbaa !41
  %4677 = tail call noundef double @llvm.fmuladd.f64(double %4676, double %4629, double %4616)
  %4678 = tail call noundef double @llvm.fmuladd.f64(double %4673, double %4631, double %4616)
  %4679 = fcmp ult double %4678, %4674
  br i1 %4679, label %4680, label %4682

4680:                                             ; preds = %4671
  %4681 = add nsw i64 %4666, 1
  br label %4682

4682:                                             ; preds = %4680, %4671, %4668
  %4683 = phi double [ %4677, %4680 ], [ %4677, %4671 ], [ %4670, %4668 ]
  %4684 = phi double [ %4674, %4680 ], [ %4674, %4671 ], [ %4618, %4668 ]
  %4685 = phi i64 [ %4681, %4680 ], [ %4666, %4671 ], [ %4619, %4668 ]
  %4686 = icmp sgt i64 %4685, %4614
  br i1 %4686, label %4687, label %4710

4687:                                             ; preds = %4682
  %4688 = load ptr, ptr %4532, align 8
  %4689 = getelementptr double, ptr %4688, i64 %4608
  br label %4690

4690:                                             ; preds = %4705, %4687
  %4691 = phi i64 [ %4685, %4687 ], [ %4708, %4705 ]
  %4692 = phi double [ 0.000000e+00, %4687 ], [ %4707, %4705 ]
  %4693 = phi double [ %4684, %4687 ], [ %4706, %4705 ]
  %4694 = getelementptr <8 x double>, ptr %4630, i64 %4691
  %4695 = load double, ptr %4694, align 8, !tbaa !41
  %4696 = tail call noundef double @llvm.fmuladd.f64(double %4695, double %4631, double %4616)
  %4697 = fcmp ogt double %4696, %4683
  br i1 %4697, label %4698, label %4710

4698:                                             ; preds = %4690
  %4699 = fcmp ogt double %4693, %4696
  br i1 %4699, label %4700, label %4705

4700:                                             ; preds = %4698
  %4701 = getelementptr <8 x double>, ptr %4689, i64 %4691
  %4702 = load double, ptr %4701, align 8, !tbaa !41
  %4703 = fsub double %4693, %4696
  %4704 = tail call double @llvm.fmuladd.f64(double %4702, double %4703, double %4692)
  br label %4705

4705:                                             ; preds = %4700, %4698
  %4706 = phi double [ %4696, %4700 ], [ %4693, %4698 ]
  %4707 = phi double [ %4704, %4700 ], [ %4692, %4698 ]
  %4708 = add nsw i64 %4691, -1
  %4709 = icmp sgt i64 %4708, %4614
  br i1 %4709, label %4690, label %4710, !llvm.loop !141

4710:                                             ; preds = %4705, %4690, %4682
  %4711 = phi double [ %4684, %4682 ], [ %4693, %4690 ], [ %4706, %4705 ]
  %4712 = phi double [ 0.000000e+00, %4682 ], [ %4692, %4690 ], [ %4707, %4705 ]
  %4713 = phi i64 [ %4685, %4682 ], [ %4691, %4690 ], [ %4614, %4705 ]
  %4714 = getelementptr <8 x double>, ptr %4633, i64 %4713
  %4715 = load double, ptr %4714, align 8, !tbaa !41
  %4716 = fsub double %4711, %4683
  %4717 = tail call double @llvm.fmuladd.f64(double %4715, double %4716, double %4712)
  %4718 = fsub double %4684, %4683
  %4719 = fdiv double %4717, %4718
  %4720 = getelementptr <8 x double>, ptr %4635, i64 %4666
  store double %4719, ptr %4720, align 8, !tbaa !41
  %4721 = fadd double %4665, %4717
  %4722 = add nsw i64 %4666, -1
  %4723 = icmp sgt i64 %4666, %4614
  br i1 %4723, label %4664, label %4637, !llvm.loop !142

4724:                                             ; preds = %4724, %4662
  %4725 = phi i64 [ %4660, %4662 ], [ %4740, %4724 ]
  %4726 = load double, ptr %4644, align 8, !tbaa !41
  %4727 = load double, ptr %4645, align 8, !tbaa !41
  %4728 = fmul double %4721, %4727
  %4729 = fdiv double %4726, %4728
  %4730 = getelementptr <8 x double>, ptr %4635, i64 %4725
  %4731 = load double, ptr %4730, align 8, !tbaa !41
  %4732 = fmul double %4731, %4729
  store double %4732, ptr %4730, align 8, !tbaa !41
  %4733 = load double, ptr %4644, align 8, !tbaa !41
  %4734 = load double, ptr %4645, align 8, !tbaa !41
  %4735 = fmul double %4721, %4734
  %4736 = fdiv double %4733, %4735
  %4737 = getelementptr <8 x double>, ptr %4663, i64 %4725
  %4738 = load double, ptr %4737, align 8, !tbaa !41
  %4739 = fmul double %4738, %4736
  store double %4739, ptr %4737, align 8, !tbaa !41
  %4740 = add nsw i64 %4725, 2
  %4741 = icmp eq i64 %4740, %4613
  br i1 %4741, label %4742, label %4724, !llvm.loop !143

4742:                                             ; preds = %4659, %4724, %4637, %4612, %4607
  %4743 = add nuw nsw i64 %4608, 1
  %4744 = icmp eq i64 %4743, 8
  br i1 %4744, label %4745, label %4607, !llvm.loop !144

4745:                                             ; preds = %4742, %4568
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  br label %4746

4746:                                             ; preds = %4480, %4745
  %4747 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %4748 = and <8 x i64> %4747, %4479
  %4749 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4748)
  %4750 = icmp eq i64 %4749, 0
  %4751 = getelementptr inbounds nuw i8, ptr %4483, i64 8520
  br i1 %4750, label %4752, label %4770

4752:                                             ; preds = %4746
  %4753 = getelementptr inbounds nuw i8, ptr %4483, i64 8528
  %4754 = getelementptr inbounds nuw i8, ptr %4483, i64 8536
  %4755 = load ptr, ptr %4754, align 8, !tbaa !35
  %4756 = load ptr, ptr %4753, align 8, !tbaa !35
  store ptr %4756, ptr %4754, align 8, !tbaa !35
  %4757 = load ptr, ptr %4751, align 8, !tbaa !35
  store ptr %4757, ptr %4753, align 8, !tbaa !35
  store ptr %4755, ptr %4751, align 8, !tbaa !35
  %4758 = getelementptr inbounds nuw i8, ptr %4483, i64 8640
  %4759 = getelementptr inbounds nuw i8, ptr %4483, i64 8648
  %4760 = getelementptr inbounds nuw i8, ptr %4483, i64 8656
  %4761 = load ptr, ptr %4760, align 8, !tbaa !35
  %4762 = load ptr, ptr %4759, align 8, !tbaa !35
  store ptr %4762, ptr %4760, align 8, !tbaa !35
  %4763 = load ptr, ptr %4758, align 8, !tbaa !35
  store ptr %4763, ptr %4759, align 8, !tbaa !35
  store ptr %4761, ptr %4758, align 8, !tbaa !35
  %4764 = getelementptr inbounds nuw i8, ptr %4483, i64 8688
  %4765 = getelementptr inbounds nuw i8, ptr %4483, i64 8696
  %4766 = getelementptr inbounds nuw i8, ptr %4483, i64 8704
  %4767 = load ptr, ptr %4766, align 8, !tbaa !35
  %4768 = load ptr, ptr %4765, align 8, !tbaa !35
  store ptr %4768, ptr %4766, align 8, !tbaa !35
  %4769 = load ptr, ptr %4764, align 8, !tbaa !35
  store ptr %4769, ptr %4765, align 8, !tbaa !35
  store ptr %4767, ptr %4764, align 8, !tbaa !35
  br label %4835

4770:                                             ; preds = %4746
  %4771 = load ptr, ptr %4751, align 8, !tbaa !57
  %4772 = getelementptr inbounds nuw i8, ptr %4483, i64 8528
  %4773 = load ptr, ptr %4772, align 16, !tbaa !45
  %4774 = getelementptr inbounds nuw i8, ptr %4483, i64 8536
  %4775 = load ptr, ptr %4774, align 8, !tbaa !56
  %4776 = load i64, ptr %119, align 16, !tbaa !21
  %4777 = icmp sgt i64 %4776, 0
  br i1 %4777, label %4778, label %4791

4778:                                             ; preds = %4770, %4778
  %4779 = phi i64 [ %4789, %4778 ], [ 0, %4770 ]
  %4780 = getelementptr inbounds nuw <8 x double>, ptr %4775, i64 %4779
  %4781 = getelementptr inbounds nuw <8 x double>, ptr %4773, i64 %4779
  %4782 = load <8 x double>, ptr %4781, align 64, !tbaa !26
  %4783 = load <8 x double>, ptr %4780, align 64, !tbaa !26
  %4784 = select <8 x i1> %4451, <8 x double> %4783, <8 x double> %4782
  store <8 x double> %4784, ptr %4780, align 64, !tbaa !26
  %4785 = getelementptr inbounds nuw <8 x double>, ptr %4771, i64 %4779
  %4786 = load <8 x double>, ptr %4785, align 64, !tbaa !26
  %4787 = load <8 x double>, ptr %4781, align 64, !tbaa !26
  %4788 = select <8 x i1> %4451, <8 x double> %4787, <8 x double> %4786
  store <8 x double> %4788, ptr %4781, align 64, !tbaa !26
  %4789 = add nuw nsw i64 %4779, 1
  %4790 = icmp eq i64 %4789, %4776
  br i1 %4790, label %4791, label %4778, !llvm.loop !145

4791:                                             ; preds = %4778, %4770
  %4792 = getelementptr inbounds nuw i8, ptr %4483, i64 8640
  %4793 = load ptr, ptr %4792, align 64, !tbaa !127
  %4794 = getelementptr inbounds nuw i8, ptr %4483, i64 8648
  %4795 = load ptr, ptr %4794, align 8, !tbaa !49
  %4796 = getelementptr inbounds nuw i8, ptr %4483, i64 8656
  %4797 = load ptr, ptr %4796, align 16, !tbaa !61
  %4798 = load i64, ptr %120, align 8, !tbaa !22
  %4799 = icmp sgt i64 %4798, 0
  br i1 %4799, label %4800, label %4835

4800:                                             ; preds = %4791, %4800
  %4801 = phi i64 [ %4811, %4800 ], [ 0, %4791 ]
  %4802 = getelementptr inbounds nuw <8 x double>, ptr %4797, i64 %4801
  %4803 = getelementptr inbounds nuw <8 x double>, ptr %4795, i64 %4801
  %4804 = load <8 x double>, ptr %4803, align 64, !tbaa !26
  %4805 = load <8 x double>, ptr %4802, align 64, !tbaa !26
  %4806 = select <8 x i1> %4451, <8 x double> %4805, <8 x double> %4804
  store <8 x double> %4806, ptr %4802, align 64, !tbaa !26
  %4807 = getelementptr inbounds nuw <8 x double>, ptr %4793, i64 %4801
  %4808 = load <8 x double>, ptr %4807, align 64, !tbaa !26
  %4809 = load <8 x double>, ptr %4803, align 64, !tbaa !26
  %4810 = select <8 x i1> %4451, <8 x double> %4809, <8 x double> %4808
  store <8 x double> %4810, ptr %4803, align 64, !tbaa !26
  %4811 = add nuw nsw i64 %4801, 1
  %4812 = icmp eq i64 %4811, %4798
  br i1 %4812, label %4813, label %4800, !llvm.loop !145

4813:                                             ; preds = %4800
  %4814 = load i64, ptr %120, align 8, !tbaa !22
  %4815 = getelementptr inbounds nuw i8, ptr %4483, i64 8688
  %4816 = load ptr, ptr %4815, align 16, !tbaa !90
  %4817 = getelementptr inbounds nuw i8, ptr %4483, i64 8696
  %4818 = load ptr, ptr %4817, align 8, !tbaa !48
  %4819 = getelementptr inbounds nuw i8, ptr %4483, i64 8704
  %4820 = load ptr, ptr %4819, align 64, !tbaa !59
  %4821 = icmp sgt i64 %4814, 0
  br i1 %4821, label %4822, label %4835

4822:                                             ; preds = %4813, %4822
  %4823 = phi i64 [ %4833, %4822 ], [ 0, %4813 ]
  %4824 = getelementptr inbounds nuw <8 x double>, ptr %4820, i64 %4823
  %4825 = getelementptr inbounds nuw <8 x double>, ptr %4818, i64 %4823
  %4826 = load <8 x double>, ptr %4825, align 64, !tbaa !26
  %4827 = load <8 x double>, ptr %4824, align 64, !tbaa !26
  %4828 = select <8 x i1> %4451, <8 x double> %4827, <8 x double> %4826
  store <8 x double> %4828, ptr %4824, align 64, !tbaa !26
  %4829 = getelementptr inbounds nuw <8 x double>, ptr %4816, i64 %4823
  %4830 = load <8 x double>, ptr %4829, align 64, !tbaa !26
  %4831 = load <8 x double>, ptr %4825, align 64, !tbaa !26
  %4832 = select <8 x i1> %4451, <8 x double> %4831, <8 x double> %4830
  store <8 x double> %4832, ptr %4825, align 64, !tbaa !26
  %4833 = add nuw nsw i64 %4823, 1
  %4834 = icmp eq i64 %4833, %4814
  br i1 %4834, label %4835, label %4822, !llvm.loop !145

4835:                                             ; preds = %4822, %4791, %4813, %4752
  %4836 = getelementptr inbounds nuw i8, ptr %4483, i64 4736
  %4837 = getelementptr inbounds nuw i8, ptr %4483, i64 3840
  %4838 = getelementptr inbounds nuw i8, ptr %4483, i64 2944
  br label %4854

4839:                                             ; preds = %4854
  %4840 = getelementptr inbounds nuw i8, ptr %4483, i64 8384
  %4841 = getelementptr inbounds nuw i8, ptr %4483, i64 6080
  %4842 = load <8 x double>, ptr %4841, align 64, !tbaa !26
  %4843 = fcmp ogt <8 x double> %4842, zeroinitializer
  %4844 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %4845 = fcmp une <8 x double> %4844, splat (double 2.000000e+00)
  %4846 = and <8 x i1> %4843, %4845
  %4847 = select <8 x i1> %4846, <8 x i64> %4391, <8 x i64> zeroinitializer
  %4848 = load <8 x i64>, ptr %4840, align 64, !tbaa !26
  %4849 = and <8 x i64> %4848, %4479
  %4850 = or <8 x i64> %4847, %4849
  store <8 x i64> %4850, ptr %4840, align 64, !tbaa !26
  %4851 = add nuw nsw i64 %4481, 1
  %4852 = load i64, ptr %156, align 8, !tbaa !20
  %4853 = icmp slt i64 %4851, %4852
  br i1 %4853, label %4480, label %4866, !llvm.loop !146

4854:                                             ; preds = %4835, %4854
  %4855 = phi i64 [ 0, %4835 ], [ %4864, %4854 ]
  %4856 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4836, i64 0, i64 %4855
  %4857 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4837, i64 0, i64 %4855
  %4858 = load <8 x double>, ptr %4857, align 64, !tbaa !26
  %4859 = load <8 x double>, ptr %4856, align 64, !tbaa !26
  %4860 = select <8 x i1> %4451, <8 x double> %4859, <8 x double> %4858
  store <8 x double> %4860, ptr %4856, align 64, !tbaa !26
  %4861 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4838, i64 0, i64 %4855
  %4862 = load <8 x double>, ptr %4861, align 64, !tbaa !26
  %4863 = select <8 x i1> %4451, <8 x double> %4858, <8 x double> %4862
  store <8 x double> %4863, ptr %4857, align 64, !tbaa !26
  %4864 = add nuw nsw i64 %4855, 1
  %4865 = icmp eq i64 %4864, 14
  br i1 %4865, label %4839, label %4854, !llvm.loop !147

4866:                                             ; preds = %4839
  %4867 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4868 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %4869 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %4870 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4871 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4872 = fdiv <8 x double> %4869, %4096
  %4873 = icmp sgt i64 %4852, 0
  br label %4874

4874:                                             ; preds = %4450, %4866
  %4875 = phi <8 x double> [ %4872, %4866 ], [ %4106, %4450 ]
  %4876 = phi i1 [ %4873, %4866 ], [ false, %4450 ]
  %4877 = phi <8 x double> [ %4871, %4866 ], [ %4085, %4450 ]
  %4878 = phi <8 x double> [ %4870, %4866 ], [ %4379, %4450 ]
  %4879 = phi <8 x double> [ %4868, %4866 ], [ %4102, %4450 ]
  %4880 = phi <8 x double> [ %4867, %4866 ], [ %4100, %4450 ]
  %4881 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4882 = fadd <8 x double> %4881, %4880
  %4883 = select <8 x i1> %4451, <8 x double> %4881, <8 x double> %4882
  store <8 x double> %4883, ptr %136, align 64, !tbaa !26
  %4884 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %4885 = select <8 x i1> %4451, <8 x double> %4884, <8 x double> %4880
  store <8 x double> %4885, ptr %151, align 64, !tbaa !26
  %4886 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %4887 = fadd <8 x double> %4886, splat (double 1.000000e+00)
  %4888 = select <8 x i1> %4451, <8 x double> %4886, <8 x double> %4887
  store <8 x double> %4888, ptr %123, align 64, !tbaa !26
  %4889 = load <8 x double>, ptr %125, align 64, !tbaa !26
  %4890 = fcmp olt <8 x double> %4889, %4880
  %4891 = select <8 x i1> %4451, <8 x i1> splat (i1 true), <8 x i1> %4890
  %4892 = select <8 x i1> %4891, <8 x double> %4889, <8 x double> %4880
  store <8 x double> %4892, ptr %125, align 64, !tbaa !26
  %4893 = fcmp une <8 x double> %4879, zeroinitializer
  %4894 = fcmp ueq <8 x double> %4095, zeroinitializer
  %4895 = or <8 x i1> %4894, %4893
  %4896 = fcmp olt <8 x double> %4875, splat (double 1.800000e+00)
  %4897 = select <8 x i1> %4896, <8 x double> %4875, <8 x double> splat (double 1.800000e+00)
  %4898 = select <8 x i1> %4895, <8 x double> splat (double 1.800000e+00), <8 x double> %4897
  %4899 = fcmp ogt <8 x double> %4898, splat (double 2.000000e-01)
  %4900 = select <8 x i1> %4899, <8 x double> %4898, <8 x double> splat (double 2.000000e-01)
  %4901 = fmul <8 x double> %4880, %4900
  %4902 = fmul <8 x double> %4880, splat (double 4.000000e+00)
  %4903 = fcmp olt <8 x double> %4878, %4902
  %4904 = select <8 x i1> %4903, <8 x double> %4878, <8 x double> %4902
  %4905 = fcmp ogt <8 x double> %4901, %4904
  %4906 = select <8 x i1> %4905, <8 x double> %4901, <8 x double> %4904
  %4907 = select <8 x i1> %4451, <8 x double> %4878, <8 x double> zeroinitializer
  store <8 x double> %4907, ptr %159, align 64, !tbaa !26
  %4908 = select <8 x i1> %4451, <8 x double> %4877, <8 x double> zeroinitializer
  store <8 x double> %4908, ptr %161, align 64, !tbaa !26
  %4909 = load <8 x i64>, ptr %152, align 64, !tbaa !26
  %4910 = and <8 x i64> %4909, %4479
  store <8 x i64> %4910, ptr %152, align 64, !tbaa !26
  %4911 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %4912 = and <8 x i64> %4911, %4479
  store <8 x i64> %4912, ptr %153, align 64, !tbaa !26
  %4913 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %4914 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %4915 = select <8 x i1> %4451, <8 x double> %4914, <8 x double> %4913
  store <8 x double> %4915, ptr %146, align 64, !tbaa !26
  br i1 %4876, label %4916, label %5380

4916:                                             ; preds = %4874, %5373
  %4917 = phi i64 [ %5375, %5373 ], [ 0, %4874 ]
  %4918 = phi <8 x double> [ %5374, %5373 ], [ %4906, %4874 ]
  %4919 = load ptr, ptr %129, align 8, !tbaa !28
  %4920 = getelementptr inbounds nuw %struct.Piece, ptr %4919, i64 %4917
  %4921 = getelementptr inbounds nuw i8, ptr %4920, i64 3904
  %4922 = load <8 x double>, ptr %4921, align 64, !tbaa !26
  %4923 = getelementptr inbounds nuw i8, ptr %4920, i64 1472
  %4924 = load <8 x double>, ptr %4923, align 64, !tbaa !26
  %4925 = fmul <8 x double> %4924, splat (double 1.001000e+00)
  %4926 = fcmp ole <8 x double> %4922, %4925
  %4927 = getelementptr inbounds nuw i8, ptr %4920, i64 1600
  %4928 = load <8 x double>, ptr %4927, align 64, !tbaa !26
  %4929 = getelementptr inbounds nuw i8, ptr %4920, i64 4160
  %4930 = load <8 x double>, ptr %4929, align 64, !tbaa !26
  %4931 = fsub <8 x double> %4928, %4930
  %4932 = fmul <8 x double> %4928, splat (double 1.000000e-04)
  %4933 = fcmp ole <8 x double> %4931, %4932
  %4934 = getelementptr inbounds nuw i8, ptr %4920, i64 8320
  %4935 = load <8 x i64>, ptr %4934, align 64, !tbaa !26
  %4936 = and <8 x i64> %4935, %4391
  %4937 = getelementptr inbounds nuw i8, ptr %4920, i64 7680
  %4938 = load <8 x double>, ptr %4937, align 64, !tbaa !26
  %4939 = fcmp oeq <8 x double> %4938, zeroinitializer
  %4940 = and <8 x i1> %4926, %4939
  %4941 = fcmp oeq <8 x double> %4938, splat (double 1.000000e+00)
  %4942 = and <8 x i1> %4933, %4941
  %4943 = or <8 x i1> %4940, %4942
  %4944 = select <8 x i1> %4943, <8 x i64> %4936, <8 x i64> zeroinitializer
  %4945 = fadd <8 x double> %4938, splat (double 1.000000e+00)
  %4946 = icmp eq <8 x i64> %4944, zeroinitializer
  %4947 = select <8 x i1> %4946, <8 x double> %4938, <8 x double> %4945
  store <8 x double> %4947, ptr %4937, align 64, !tbaa !26
  %4948 = getelementptr inbounds nuw i8, ptr %4920, i64 8384
  %4949 = load <8 x i64>, ptr %4948, align 64, !tbaa !26
  %4950 = or <8 x i64> %4944, %4949
  store <8 x i64> %4950, ptr %4948, align 64, !tbaa !26
  %4951 = getelementptr inbounds nuw i8, ptr %4920, i64 896
  %4952 = load <8 x double>, ptr %4951, align 64, !tbaa !26
  %4953 = getelementptr inbounds nuw i8, ptr %4920, i64 6016
  %4954 = load <8 x double>, ptr %4953, align 64, !tbaa !26
  %4955 = getelementptr inbounds nuw i8, ptr %4920, i64 6080
  %4956 = load <8 x double>, ptr %4955, align 64, !tbaa !26
  %4957 = fadd <8 x double> %4954, %4956
  %4958 = fcmp ogt <8 x double> %4957, zeroinitializer
  %4959 = xor <8 x i64> %4935, splat (i64 -1)
  %4960 = and <8 x i64> %4391, %4959
  %4961 = fcmp une <8 x double> %4952, zeroinitializer
  %4962 = or <8 x i1> %4961, %4958
  %4963 = getelementptr inbounds nuw i8, ptr %4920, i64 3968
  %4964 = load <8 x double>, ptr %4963, align 64, !tbaa !26
  %4965 = fmul <8 x double> %4952, splat (double 3.000000e-03)
  %4966 = fcmp ogt <8 x double> %4965, splat (double 0x3E7AD7F29ABCAF48)
  %4967 = select <8 x i1> %4966, <8 x double> %4965, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4968 = fcmp ole <8 x double> %4964, %4967
  %4969 = select <8 x i1> %4968, <8 x i1> %4962, <8 x i1> zeroinitializer
  %4970 = select <8 x i1> %4969, <8 x i64> %4960, <8 x i64> zeroinitializer
  %4971 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4970)
  %4972 = icmp eq i64 %4971, 0
  br i1 %4972, label %5373, label %4973

4973:                                             ; preds = %4916
  %4974 = load i64, ptr %119, align 16, !tbaa !21
  %4975 = load i64, ptr %120, align 8, !tbaa !22
  %4976 = getelementptr inbounds nuw i8, ptr %4920, i64 3840
  %4977 = getelementptr inbounds nuw i8, ptr %4920, i64 4672
  %4978 = load <8 x double>, ptr %4977, align 64, !tbaa !26
  %4979 = getelementptr inbounds nuw i8, ptr %4920, i64 5952
  %4980 = load <8 x double>, ptr %4979, align 64, !tbaa !26
  %4981 = getelementptr inbounds nuw i8, ptr %4920, i64 832
  %4982 = load <8 x double>, ptr %4981, align 64, !tbaa !26
  %4983 = getelementptr inbounds nuw i8, ptr %4920, i64 8560
  %4984 = load ptr, ptr %4983, align 16, !tbaa !46
  %4985 = add nsw i64 %4974, -1
  %4986 = getelementptr inbounds <8 x double>, ptr %4984, i64 %4985
  %4987 = load <8 x double>, ptr %4986, align 64, !tbaa !26
  %4988 = fmul <8 x double> %4982, %4987
  %4989 = fneg <8 x double> %4964
  %4990 = fdiv <8 x double> %4989, %4988
  %4991 = fcmp ogt <8 x double> %4990, splat (double 0x3E7AD7F29ABCAF48)
  %4992 = select <8 x i1> %4991, <8 x double> %4990, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4993 = load <8 x double>, ptr %4920, align 64, !tbaa !26
  %4994 = fsub <8 x double> %4993, %4992
  %4995 = getelementptr inbounds nuw i8, ptr %4920, i64 2560
  %4996 = load <8 x double>, ptr %4995, align 64, !tbaa !26
  %4997 = getelementptr inbounds nuw i8, ptr %4920, i64 2624
  %4998 = load <8 x double>, ptr %4997, align 64, !tbaa !26
  %4999 = getelementptr inbounds nuw i8, ptr %4920, i64 2688
  %5000 = load <8 x double>, ptr %4999, align 64, !tbaa !26
  %5001 = getelementptr inbounds nuw i8, ptr %4920, i64 2752
  %5002 = load <8 x double>, ptr %5001, align 64, !tbaa !26
  %5003 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4994, <8 x double> %5002, <8 x double> %5000)
  %5004 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4994, <8 x double> %5003, <8 x double> %4998)
  %5005 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4994, <8 x double> %5004, <8 x double> %4996)
  %5006 = fsub <8 x double> %4978, %5005
  %5007 = getelementptr inbounds nuw i8, ptr %4920, i64 8528
  %5008 = load ptr, ptr %5007, align 16, !tbaa !45
  %5009 = getelementptr inbounds <8 x double>, ptr %5008, i64 %4985
  %5010 = load <8 x double>, ptr %5009, align 64, !tbaa !26
  %5011 = getelementptr inbounds nuw i8, ptr %4920, i64 8512
  %5012 = load i64, ptr %5011, align 64, !tbaa !31
  %5013 = icmp sgt i64 %4974, %5012
  br i1 %5013, label %5022, label %5014

5014:                                             ; preds = %4973
  %5015 = getelementptr inbounds nuw i8, ptr %4920, i64 640
  %5016 = load <8 x double>, ptr %5015, align 64, !tbaa !26
  %5017 = getelementptr inbounds nuw i8, ptr %4920, i64 8536
  %5018 = load ptr, ptr %5017, align 8, !tbaa !56
  %5019 = getelementptr inbounds <8 x double>, ptr %5018, i64 %4985
  %5020 = load <8 x double>, ptr %5019, align 64, !tbaa !26
  %5021 = fmul <8 x double> %5020, %5016
  br label %5042

5022:                                             ; preds = %4973
  %5023 = getelementptr inbounds nuw i8, ptr %4920, i64 384
  %5024 = load <8 x double>, ptr %5023, align 64, !tbaa !26
  %5025 = getelementptr inbounds nuw i8, ptr %4920, i64 448
  %5026 = load <8 x double>, ptr %5025, align 64, !tbaa !26
  %5027 = getelementptr inbounds nuw i8, ptr %4920, i64 512
  %5028 = load <8 x double>, ptr %5027, align 64, !tbaa !26
  %5029 = fmul <8 x double> %5010, %5028
  %5030 = fmul <8 x double> %5029, splat (double 0x3FD5555555555555)
  %5031 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5026, <8 x double> splat (double 5.000000e-01), <8 x double> %5030)
  %5032 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5010, <8 x double> %5031, <8 x double> %5024)
  %5033 = getelementptr inbounds nuw i8, ptr %4920, i64 8536
  %5034 = load ptr, ptr %5033, align 8, !tbaa !56
  %5035 = getelementptr inbounds <8 x double>, ptr %5034, i64 %4985
  %5036 = load <8 x double>, ptr %5035, align 64, !tbaa !26
  %5037 = fmul <8 x double> %5036, %5028
  %5038 = fmul <8 x double> %5037, splat (double 0x3FD5555555555555)
  %5039 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5026, <8 x double> splat (double 5.000000e-01), <8 x double> %5038)
  %5040 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5036, <8 x double> %5039, <8 x double> %5024)
  %5041 = fmul <8 x double> %5036, %5040
  br label %5042

5042:                                             ; preds = %5022, %5014
  %5043 = phi ptr [ %5034, %5022 ], [ %5018, %5014 ]
  %5044 = phi <8 x double> [ %5032, %5022 ], [ %5016, %5014 ]
  %5045 = phi <8 x double> [ %5041, %5022 ], [ %5021, %5014 ]
  %5046 = phi ptr [ %5033, %5022 ], [ %5017, %5014 ]
  %5047 = sitofp i64 %4975 to double
  %5048 = insertelement <8 x double> poison, double %5047, i64 0
  %5049 = shufflevector <8 x double> %5048, <8 x double> poison, <8 x i32> zeroinitializer
  %5050 = fmul <8 x double> %5010, %5044
  %5051 = fdiv <8 x double> %4992, %5049
  %5052 = getelementptr i8, ptr %5008, i64 -64
  %5053 = getelementptr i8, ptr %4984, i64 -64
  %5054 = icmp sgt i64 %4974, 0
  br i1 %5054, label %5055, label %5156

5055:                                             ; preds = %5042
  %5056 = fmul <8 x double> %5010, %5044
  %5057 = getelementptr inbounds nuw i8, ptr %4920, i64 640
  %5058 = getelementptr inbounds nuw i8, ptr %4920, i64 384
  %5059 = getelementptr inbounds nuw i8, ptr %4920, i64 448
  %5060 = getelementptr inbounds nuw i8, ptr %4920, i64 512
  %5061 = getelementptr inbounds nuw i8, ptr %4920, i64 1536
  %5062 = getelementptr inbounds nuw i8, ptr %4920, i64 8608
  %5063 = icmp eq <8 x i64> %4970, zeroinitializer
  br label %5064

5064:                                             ; preds = %5055, %5143
  %5065 = phi <8 x double> [ %5010, %5055 ], [ %5124, %5143 ]
  %5066 = phi <8 x double> [ %5056, %5055 ], [ %5123, %5143 ]
  %5067 = phi <8 x double> [ %5005, %5055 ], [ %5125, %5143 ]
  %5068 = phi <8 x double> [ %4987, %5055 ], [ %5126, %5143 ]
  %5069 = phi i64 [ %4985, %5055 ], [ %5149, %5143 ]
  %5070 = icmp eq i64 %5069, 0
  br i1 %5070, label %5071, label %5075

5071:                                             ; preds = %5064
  %5072 = fdiv <8 x double> zeroinitializer, %5067
  %5073 = fsub <8 x double> %5066, %5066
  %5074 = fmul <8 x double> %5072, %5073
  br label %5120

5075:                                             ; preds = %5064
  %5076 = getelementptr <8 x double>, ptr %5052, i64 %5069
  %5077 = load <8 x double>, ptr %5076, align 64, !tbaa !26
  %5078 = load i64, ptr %5011, align 64, !tbaa !31
  %5079 = icmp sgt i64 %5069, %5078
  br i1 %5079, label %5082, label %5080

5080:                                             ; preds = %5075
  %5081 = load <8 x double>, ptr %5057, align 64, !tbaa !26
  br label %5090

5082:                                             ; preds = %5075
  %5083 = load <8 x double>, ptr %5058, align 64, !tbaa !26
  %5084 = load <8 x double>, ptr %5059, align 64, !tbaa !26
  %5085 = load <8 x double>, ptr %5060, align 64, !tbaa !26
  %5086 = fmul <8 x double> %5077, %5085
  %5087 = fmul <8 x double> %5086, splat (double 0x3FD5555555555555)
  %5088 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5084, <8 x double> splat (double 5.000000e-01), <8 x double> %5087)
  %5089 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5077, <8 x double> %5088, <8 x double> %5083)
  br label %5090

5090:                                             ; preds = %5080, %5082
  %5091 = phi <8 x double> [ %5089, %5082 ], [ %5081, %5080 ]
  %5092 = fmul <8 x double> %5077, %5091
  %5093 = icmp slt i64 %5069, %5078
  br i1 %5093, label %5094, label %5101

5094:                                             ; preds = %5090
  %5095 = load ptr, ptr %5062, align 32, !tbaa !72
  %5096 = getelementptr inbounds nuw <8 x double>, ptr %5095, i64 %5069
  %5097 = load <8 x double>, ptr %5096, align 64, !tbaa !26
  %5098 = load <8 x double>, ptr %5061, align 64, !tbaa !26
  %5099 = fmul <8 x double> %5097, %5098
  %5100 = fmul <8 x double> %5097, %5098
  br label %5110

5101:                                             ; preds = %5090
  %5102 = load <8 x double>, ptr %5061, align 64, !tbaa !26
  %5103 = load ptr, ptr %5062, align 32, !tbaa !72
  %5104 = getelementptr inbounds nuw <8 x double>, ptr %5103, i64 %5069
  %5105 = load <8 x double>, ptr %5104, align 64, !tbaa !26
  %5106 = fsub <8 x double> %5005, %5102
  %5107 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5105, <8 x double> %5106, <8 x double> %5102)
  %5108 = fsub <8 x double> %4978, %5102
  %5109 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5105, <8 x double> %5108, <8 x double> %5102)
  br label %5110

5110:                                             ; preds = %5101, %5094
  %5111 = phi <8 x double> [ %5099, %5094 ], [ %5107, %5101 ]
  %5112 = phi <8 x double> [ %5100, %5094 ], [ %5109, %5101 ]
  %5113 = fsub <8 x double> %5112, %5111
  %5114 = fsub <8 x double> %5067, %5111
  %5115 = fdiv <8 x double> %5113, %5114
  %5116 = fsub <8 x double> %5092, %5066
  %5117 = fmul <8 x double> %5116, %5115
  %5118 = getelementptr <8 x double>, ptr %5053, i64 %5069
  %5119 = load <8 x double>, ptr %5118, align 64, !tbaa !26
  br label %5120

5120:                                             ; preds = %5110, %5071
  %5121 = phi <8 x double> [ %5117, %5110 ], [ %5074, %5071 ]
  %5122 = phi <8 x double> [ %5115, %5110 ], [ %5072, %5071 ]
  %5123 = phi <8 x double> [ %5092, %5110 ], [ %5066, %5071 ]
  %5124 = phi <8 x double> [ %5077, %5110 ], [ %5065, %5071 ]
  %5125 = phi <8 x double> [ %5111, %5110 ], [ zeroinitializer, %5071 ]
  %5126 = phi <8 x double> [ %5119, %5110 ], [ %5068, %5071 ]
  %5127 = getelementptr inbounds nuw <8 x double>, ptr %4984, i64 %5069
  %5128 = fsub <8 x double> %5126, %5068
  %5129 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5128, <8 x double> %5122, <8 x double> %5068)
  %5130 = load <8 x double>, ptr %5127, align 64, !tbaa !26
  %5131 = select <8 x i1> %5063, <8 x double> %5130, <8 x double> %5129
  store <8 x double> %5131, ptr %5127, align 64, !tbaa !26
  %5132 = getelementptr inbounds nuw <8 x double>, ptr %5008, i64 %5069
  %5133 = load i64, ptr %5011, align 64, !tbaa !31
  %5134 = icmp slt i64 %5069, %5133
  br i1 %5134, label %5135, label %5137

5135:                                             ; preds = %5120
  %5136 = load <8 x double>, ptr %5057, align 64, !tbaa !26
  br label %5143

5137:                                             ; preds = %5120
  %5138 = load <8 x double>, ptr %5058, align 64, !tbaa !26
  %5139 = load <8 x double>, ptr %5059, align 64, !tbaa !26
  %5140 = load <8 x double>, ptr %5060, align 64, !tbaa !26
  %5141 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5065, <8 x double> %5140, <8 x double> %5139)
  %5142 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5065, <8 x double> %5141, <8 x double> %5138)
  br label %5143

5143:                                             ; preds = %5137, %5135
  %5144 = phi <8 x double> [ %5136, %5135 ], [ %5142, %5137 ]
  %5145 = fdiv <8 x double> %5121, %5144
  %5146 = fadd <8 x double> %5065, %5145
  %5147 = load <8 x double>, ptr %5132, align 64, !tbaa !26
  %5148 = select <8 x i1> %5063, <8 x double> %5147, <8 x double> %5146
  store <8 x double> %5148, ptr %5132, align 64, !tbaa !26
  %5149 = add nsw i64 %5069, -1
  %5150 = icmp sgt i64 %5069, 0
  br i1 %5150, label %5064, label %5151, !llvm.loop !148

5151:                                             ; preds = %5143
  %5152 = load ptr, ptr %5046, align 8, !tbaa !56
  %5153 = load i64, ptr %119, align 16, !tbaa !21
  %5154 = load i64, ptr %5011, align 64, !tbaa !31
  %5155 = add nsw i64 %5153, -1
  br label %5156

5156:                                             ; preds = %5151, %5042
  %5157 = phi i64 [ %5155, %5151 ], [ %4985, %5042 ]
  %5158 = phi i64 [ %5154, %5151 ], [ %5012, %5042 ]
  %5159 = phi i64 [ %5153, %5151 ], [ %4974, %5042 ]
  %5160 = phi ptr [ %5152, %5151 ], [ %5043, %5042 ]
  %5161 = getelementptr inbounds <8 x double>, ptr %5160, i64 %5157
  %5162 = load <8 x double>, ptr %5161, align 64, !tbaa !26
  %5163 = icmp sgt i64 %5159, %5158
  br i1 %5163, label %5167, label %5164

5164:                                             ; preds = %5156
  %5165 = getelementptr inbounds nuw i8, ptr %4920, i64 640
  %5166 = load <8 x double>, ptr %5165, align 64, !tbaa !26
  br label %5178

5167:                                             ; preds = %5156
  %5168 = getelementptr inbounds nuw i8, ptr %4920, i64 384
  %5169 = load <8 x double>, ptr %5168, align 64, !tbaa !26
  %5170 = getelementptr inbounds nuw i8, ptr %4920, i64 448
  %5171 = load <8 x double>, ptr %5170, align 64, !tbaa !26
  %5172 = getelementptr inbounds nuw i8, ptr %4920, i64 512
  %5173 = load <8 x double>, ptr %5172, align 64, !tbaa !26
  %5174 = fmul <8 x double> %5162, %5173
  %5175 = fmul <8 x double> %5174, splat (double 0x3FD5555555555555)
  %5176 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5171, <8 x double> splat (double 5.000000e-01), <8 x double> %5175)
  %5177 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5162, <8 x double> %5176, <8 x double> %5169)
  br label %5178

5178:                                             ; preds = %5167, %5164
  %5179 = phi <8 x double> [ %5166, %5164 ], [ %5177, %5167 ]
  %5180 = getelementptr i8, ptr %5160, i64 -64
  %5181 = icmp sgt i64 %5159, 0
  br i1 %5181, label %5182, label %5191

5182:                                             ; preds = %5178
  %5183 = fmul <8 x double> %5162, %5179
  %5184 = getelementptr inbounds nuw i8, ptr %4920, i64 640
  %5185 = getelementptr inbounds nuw i8, ptr %4920, i64 384
  %5186 = getelementptr inbounds nuw i8, ptr %4920, i64 448
  %5187 = getelementptr inbounds nuw i8, ptr %4920, i64 512
  %5188 = getelementptr inbounds nuw i8, ptr %4920, i64 1536
  %5189 = getelementptr inbounds nuw i8, ptr %4920, i64 8608
  %5190 = icmp eq <8 x i64> %4970, zeroinitializer
  br label %5199

5191:                                             ; preds = %5263, %5178
  %5192 = icmp sgt i64 %4975, 0
  br i1 %5192, label %5193, label %5271

5193:                                             ; preds = %5191
  %5194 = getelementptr inbounds nuw i8, ptr %4920, i64 8696
  %5195 = icmp eq <8 x i64> %4970, zeroinitializer
  %5196 = getelementptr inbounds nuw i8, ptr %4920, i64 8704
  %5197 = getelementptr inbounds nuw i8, ptr %4920, i64 8648
  %5198 = getelementptr inbounds nuw i8, ptr %4920, i64 8656
  br label %5342

5199:                                             ; preds = %5182, %5263
  %5200 = phi <8 x double> [ %5162, %5182 ], [ %5246, %5263 ]
  %5201 = phi <8 x double> [ %5183, %5182 ], [ %5247, %5263 ]
  %5202 = phi <8 x double> [ %5005, %5182 ], [ %5245, %5263 ]
  %5203 = phi i64 [ %5157, %5182 ], [ %5269, %5263 ]
  %5204 = icmp eq i64 %5203, 0
  %5205 = load i64, ptr %5011, align 64, !tbaa !31
  br i1 %5204, label %5244, label %5206

5206:                                             ; preds = %5199
  %5207 = getelementptr <8 x double>, ptr %5180, i64 %5203
  %5208 = load <8 x double>, ptr %5207, align 64, !tbaa !26
  %5209 = icmp sgt i64 %5203, %5205
  br i1 %5209, label %5212, label %5210

5210:                                             ; preds = %5206
  %5211 = load <8 x double>, ptr %5184, align 64, !tbaa !26
  br label %5220

5212:                                             ; preds = %5206
  %5213 = load <8 x double>, ptr %5185, align 64, !tbaa !26
  %5214 = load <8 x double>, ptr %5186, align 64, !tbaa !26
  %5215 = load <8 x double>, ptr %5187, align 64, !tbaa !26
  %5216 = fmul <8 x double> %5208, %5215
  %5217 = fmul <8 x double> %5216, splat (double 0x3FD5555555555555)
  %5218 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5214, <8 x double> splat (double 5.000000e-01), <8 x double> %5217)
  %5219 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5208, <8 x double> %5218, <8 x double> %5213)
  br label %5220

5220:                                             ; preds = %5210, %5212
  %5221 = phi <8 x double> [ %5219, %5212 ], [ %5211, %5210 ]
  %5222 = fmul <8 x double> %5208, %5221
  %5223 = icmp slt i64 %5203, %5205
  br i1 %5223, label %5224, label %5231

5224:                                             ; preds = %5220
  %5225 = load ptr, ptr %5189, align 32, !tbaa !72
  %5226 = getelementptr inbounds nuw <8 x double>, ptr %5225, i64 %5203
  %5227 = load <8 x double>, ptr %5226, align 64, !tbaa !26
  %5228 = load <8 x double>, ptr %5188, align 64, !tbaa !26
  %5229 = fmul <8 x double> %5227, %5228
  %5230 = fmul <8 x double> %5227, %5228
  br label %5240

5231:                                             ; preds = %5220
  %5232 = load <8 x double>, ptr %5188, align 64, !tbaa !26
  %5233 = load ptr, ptr %5189, align 32, !tbaa !72
  %5234 = getelementptr inbounds nuw <8 x double>, ptr %5233, i64 %5203
  %5235 = load <8 x double>, ptr %5234, align 64, !tbaa !26
  %5236 = fsub <8 x double> %5005, %5232
  %5237 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5235, <8 x double> %5236, <8 x double> %5232)
  %5238 = fsub <8 x double> %4978, %5232
  %5239 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5235, <8 x double> %5238, <8 x double> %5232)
  br label %5240

5240:                                             ; preds = %5231, %5224
  %5241 = phi <8 x double> [ %5229, %5224 ], [ %5237, %5231 ]
  %5242 = phi <8 x double> [ %5230, %5224 ], [ %5239, %5231 ]
  %5243 = fsub <8 x double> %5242, %5241
  br label %5244

5244:                                             ; preds = %5199, %5240
  %5245 = phi <8 x double> [ %5241, %5240 ], [ zeroinitializer, %5199 ]
  %5246 = phi <8 x double> [ %5208, %5240 ], [ %5200, %5199 ]
  %5247 = phi <8 x double> [ %5222, %5240 ], [ %5201, %5199 ]
  %5248 = phi <8 x double> [ %5243, %5240 ], [ zeroinitializer, %5199 ]
  %5249 = fsub <8 x double> %5202, %5245
  %5250 = fdiv <8 x double> %5248, %5249
  %5251 = fsub <8 x double> %5247, %5201
  %5252 = fmul <8 x double> %5251, %5250
  %5253 = getelementptr inbounds nuw <8 x double>, ptr %5160, i64 %5203
  %5254 = icmp slt i64 %5203, %5205
  br i1 %5254, label %5255, label %5257

5255:                                             ; preds = %5244
  %5256 = load <8 x double>, ptr %5184, align 64, !tbaa !26
  br label %5263

5257:                                             ; preds = %5244
  %5258 = load <8 x double>, ptr %5185, align 64, !tbaa !26
  %5259 = load <8 x double>, ptr %5186, align 64, !tbaa !26
  %5260 = load <8 x double>, ptr %5187, align 64, !tbaa !26
  %5261 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5200, <8 x double> %5260, <8 x double> %5259)
  %5262 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5200, <8 x double> %5261, <8 x double> %5258)
  br label %5263

5263:                                             ; preds = %5257, %5255
  %5264 = phi <8 x double> [ %5256, %5255 ], [ %5262, %5257 ]
  %5265 = fdiv <8 x double> %5252, %5264
  %5266 = fadd <8 x double> %5200, %5265
  %5267 = load <8 x double>, ptr %5253, align 64, !tbaa !26
  %5268 = select <8 x i1> %5190, <8 x double> %5267, <8 x double> %5266
  store <8 x double> %5268, ptr %5253, align 64, !tbaa !26
  %5269 = add nsw i64 %5203, -1
  %5270 = icmp sgt i64 %5203, 0
  br i1 %5270, label %5199, label %5191, !llvm.loop !148

5271:                                             ; preds = %5342, %5191
  %5272 = getelementptr inbounds nuw i8, ptr %4920, i64 8696
  %5273 = load ptr, ptr %5272, align 8, !tbaa !48
  %5274 = getelementptr inbounds <8 x double>, ptr %5273, i64 %4975
  %5275 = getelementptr inbounds nuw i8, ptr %4920, i64 1408
  %5276 = load <8 x double>, ptr %5275, align 64, !tbaa !26
  %5277 = load <8 x double>, ptr %5274, align 64, !tbaa !26
  %5278 = icmp eq <8 x i64> %4970, zeroinitializer
  %5279 = select <8 x i1> %5278, <8 x double> %5277, <8 x double> %5276
  store <8 x double> %5279, ptr %5274, align 64, !tbaa !26
  %5280 = getelementptr inbounds nuw i8, ptr %4920, i64 8704
  %5281 = load ptr, ptr %5280, align 64, !tbaa !59
  %5282 = getelementptr inbounds <8 x double>, ptr %5281, i64 %4975
  %5283 = load <8 x double>, ptr %5275, align 64, !tbaa !26
  %5284 = load <8 x double>, ptr %5282, align 64, !tbaa !26
  %5285 = select <8 x i1> %5278, <8 x double> %5284, <8 x double> %5283
  store <8 x double> %5285, ptr %5282, align 64, !tbaa !26
  %5286 = getelementptr inbounds nuw i8, ptr %4920, i64 4736
  %5287 = fneg <8 x double> %5006
  %5288 = getelementptr inbounds nuw i8, ptr %4920, i64 768
  %5289 = load <8 x double>, ptr %4976, align 64, !tbaa !26
  %5290 = select <8 x i1> %5278, <8 x double> %5289, <8 x double> %4994
  store <8 x double> %5290, ptr %4976, align 64, !tbaa !26
  %5291 = getelementptr inbounds nuw i8, ptr %4920, i64 3904
  %5292 = load <8 x double>, ptr %5291, align 64, !tbaa !26
  %5293 = select <8 x i1> %5278, <8 x double> %5292, <8 x double> %5005
  store <8 x double> %5293, ptr %5291, align 64, !tbaa !26
  %5294 = getelementptr inbounds nuw i8, ptr %4920, i64 4672
  %5295 = load <8 x double>, ptr %5294, align 64, !tbaa !26
  %5296 = select <8 x i1> %5278, <8 x double> %5295, <8 x double> %5005
  store <8 x double> %5296, ptr %5294, align 64, !tbaa !26
  %5297 = getelementptr inbounds nuw i8, ptr %4920, i64 4032
  %5298 = load <8 x double>, ptr %5297, align 64, !tbaa !26
  %5299 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5287, <8 x double> %4988, <8 x double> %5298)
  %5300 = select <8 x i1> %5278, <8 x double> %5298, <8 x double> %5299
  store <8 x double> %5300, ptr %5297, align 64, !tbaa !26
  %5301 = getelementptr inbounds nuw i8, ptr %4920, i64 3968
  %5302 = load <8 x double>, ptr %5301, align 64, !tbaa !26
  %5303 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5006, <8 x double> %4988, <8 x double> %5302)
  %5304 = select <8 x i1> %5278, <8 x double> %5302, <8 x double> %5303
  store <8 x double> %5304, ptr %5301, align 64, !tbaa !26
  %5305 = getelementptr inbounds nuw i8, ptr %4920, i64 4288
  %5306 = load <8 x double>, ptr %5305, align 64, !tbaa !26
  %5307 = load <8 x double>, ptr %5288, align 64, !tbaa !26
  %5308 = fneg <8 x double> %5307
  %5309 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5308, <8 x double> %4980, <8 x double> %5050)
  %5310 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5006, <8 x double> %5309, <8 x double> %5306)
  %5311 = select <8 x i1> %5278, <8 x double> %5306, <8 x double> %5310
  store <8 x double> %5311, ptr %5305, align 64, !tbaa !26
  %5312 = load <8 x double>, ptr %5286, align 64, !tbaa !26
  %5313 = select <8 x i1> %5278, <8 x double> %5312, <8 x double> %4994
  store <8 x double> %5313, ptr %5286, align 64, !tbaa !26
  %5314 = getelementptr inbounds nuw i8, ptr %4920, i64 4800
  %5315 = load <8 x double>, ptr %5314, align 64, !tbaa !26
  %5316 = select <8 x i1> %5278, <8 x double> %5315, <8 x double> %5005
  store <8 x double> %5316, ptr %5314, align 64, !tbaa !26
  %5317 = getelementptr inbounds nuw i8, ptr %4920, i64 5568
  %5318 = load <8 x double>, ptr %5317, align 64, !tbaa !26
  %5319 = select <8 x i1> %5278, <8 x double> %5318, <8 x double> %5005
  store <8 x double> %5319, ptr %5317, align 64, !tbaa !26
  %5320 = getelementptr inbounds nuw i8, ptr %4920, i64 4928
  %5321 = load <8 x double>, ptr %5320, align 64, !tbaa !26
  %5322 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5287, <8 x double> %4988, <8 x double> %5321)
  %5323 = select <8 x i1> %5278, <8 x double> %5321, <8 x double> %5322
  store <8 x double> %5323, ptr %5320, align 64, !tbaa !26
  %5324 = getelementptr inbounds nuw i8, ptr %4920, i64 4864
  %5325 = load <8 x double>, ptr %5324, align 64, !tbaa !26
  %5326 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5006, <8 x double> %4988, <8 x double> %5325)
  %5327 = select <8 x i1> %5278, <8 x double> %5325, <8 x double> %5326
  store <8 x double> %5327, ptr %5324, align 64, !tbaa !26
  %5328 = getelementptr inbounds nuw i8, ptr %4920, i64 5184
  %5329 = load <8 x double>, ptr %5328, align 64, !tbaa !26
  %5330 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5308, <8 x double> %4980, <8 x double> %5045)
  %5331 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5006, <8 x double> %5330, <8 x double> %5329)
  %5332 = select <8 x i1> %5278, <8 x double> %5329, <8 x double> %5331
  store <8 x double> %5332, ptr %5328, align 64, !tbaa !26
  %5333 = load <8 x i64>, ptr %4934, align 64, !tbaa !26
  %5334 = or <8 x i64> %5333, %4970
  store <8 x i64> %5334, ptr %4934, align 64, !tbaa !26
  %5335 = load <8 x double>, ptr %215, align 64, !tbaa !26
  %5336 = fmul <8 x double> %5335, splat (double 4.000000e+01)
  %5337 = fcmp olt <8 x double> %4918, %5336
  %5338 = select <8 x i1> %5337, <8 x double> %4918, <8 x double> %5336
  %5339 = icmp ne <8 x i64> %4970, zeroinitializer
  %5340 = select <8 x i1> %4961, <8 x i1> %5339, <8 x i1> zeroinitializer
  %5341 = select <8 x i1> %5340, <8 x double> %5338, <8 x double> %4918
  br label %5373

5342:                                             ; preds = %5193, %5342
  %5343 = phi i64 [ 0, %5193 ], [ %5371, %5342 ]
  %5344 = uitofp nneg i64 %5343 to double
  %5345 = insertelement <8 x double> poison, double %5344, i64 0
  %5346 = shufflevector <8 x double> %5345, <8 x double> poison, <8 x i32> zeroinitializer
  %5347 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5346, <8 x double> %5051, <8 x double> %4994)
  %5348 = load <8 x double>, ptr %4995, align 64, !tbaa !26
  %5349 = load <8 x double>, ptr %4997, align 64, !tbaa !26
  %5350 = load <8 x double>, ptr %4999, align 64, !tbaa !26
  %5351 = load <8 x double>, ptr %5001, align 64, !tbaa !26
  %5352 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5347, <8 x double> %5351, <8 x double> %5350)
  %5353 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5347, <8 x double> %5352, <8 x double> %5349)
  %5354 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5347, <8 x double> %5353, <8 x double> %5348)
  %5355 = load ptr, ptr %5194, align 8, !tbaa !48
  %5356 = getelementptr inbounds nuw <8 x double>, ptr %5355, i64 %5343
  %5357 = load <8 x double>, ptr %5356, align 64, !tbaa !26
  %5358 = select <8 x i1> %5195, <8 x double> %5357, <8 x double> %5354
  store <8 x double> %5358, ptr %5356, align 64, !tbaa !26
  %5359 = load ptr, ptr %5196, align 64, !tbaa !59
  %5360 = getelementptr inbounds nuw <8 x double>, ptr %5359, i64 %5343
  %5361 = load <8 x double>, ptr %5360, align 64, !tbaa !26
  %5362 = select <8 x i1> %5195, <8 x double> %5361, <8 x double> %5354
  store <8 x double> %5362, ptr %5360, align 64, !tbaa !26
  %5363 = load ptr, ptr %5197, align 8, !tbaa !49
  %5364 = getelementptr inbounds nuw <8 x double>, ptr %5363, i64 %5343
  %5365 = load <8 x double>, ptr %5364, align 64, !tbaa !26
  %5366 = select <8 x i1> %5195, <8 x double> %5365, <8 x double> %4980
  store <8 x double> %5366, ptr %5364, align 64, !tbaa !26
  %5367 = load ptr, ptr %5198, align 16, !tbaa !61
  %5368 = getelementptr inbounds nuw <8 x double>, ptr %5367, i64 %5343
  %5369 = load <8 x double>, ptr %5368, align 64, !tbaa !26
  %5370 = select <8 x i1> %5195, <8 x double> %5369, <8 x double> %4980
  store <8 x double> %5370, ptr %5368, align 64, !tbaa !26
  %5371 = add nuw nsw i64 %5343, 1
  %5372 = icmp eq i64 %5371, %4975
  br i1 %5372, label %5271, label %5342, !llvm.loop !149

5373:                                             ; preds = %5271, %4916
  %5374 = phi <8 x double> [ %5341, %5271 ], [ %4918, %4916 ]
  %5375 = add nuw nsw i64 %4917, 1
  %5376 = load i64, ptr %156, align 8, !tbaa !20
  %5377 = icmp slt i64 %5375, %5376
  br i1 %5377, label %4916, label %5378, !llvm.loop !150

5378:                                             ; preds = %5373
  %5379 = load <8 x double>, ptr %136, align 64, !tbaa !26
  br label %5380

5380:                                             ; preds = %5378, %4874
  %5381 = phi <8 x double> [ %4883, %4874 ], [ %5379, %5378 ]
  %5382 = phi <8 x double> [ %4906, %4874 ], [ %5374, %5378 ]
  %5383 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %5382)
  %5384 = insertelement <8 x double> poison, double %5383, i64 0
  %5385 = shufflevector <8 x double> %5384, <8 x double> poison, <8 x i32> zeroinitializer
  %5386 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %5387 = select <8 x i1> %4451, <8 x double> %5386, <8 x double> %5385
  store <8 x double> %5387, ptr %139, align 64, !tbaa !26
  %5388 = load ptr, ptr %216, align 64, !tbaa !37
  %5389 = getelementptr inbounds nuw i8, ptr %5388, i64 64
  store <8 x double> %5381, ptr %5388, align 64, !tbaa !26
  %5390 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %5391 = getelementptr inbounds nuw i8, ptr %5388, i64 128
  store <8 x double> %5390, ptr %5389, align 64, !tbaa !26
  %5392 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %5393 = getelementptr inbounds nuw i8, ptr %5388, i64 192
  store <8 x double> %5392, ptr %5391, align 64, !tbaa !26
  %5394 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %5395 = getelementptr inbounds nuw i8, ptr %5388, i64 256
  store <8 x double> %5394, ptr %5393, align 64, !tbaa !26
  %5396 = load i64, ptr %156, align 8, !tbaa !20
  %5397 = icmp sgt i64 %5396, 0
  br i1 %5397, label %5402, label %5398

5398:                                             ; preds = %5402, %5380
  %5399 = phi ptr [ %5395, %5380 ], [ %5408, %5402 ]
  %5400 = load i64, ptr %218, align 8, !tbaa !151
  %5401 = icmp eq i64 %5400, 0
  br i1 %5401, label %5537, label %5412

5402:                                             ; preds = %5380, %5402
  %5403 = phi ptr [ %5408, %5402 ], [ %5395, %5380 ]
  %5404 = phi i64 [ %5409, %5402 ], [ 0, %5380 ]
  %5405 = load ptr, ptr %129, align 8, !tbaa !28
  %5406 = getelementptr inbounds nuw %struct.Piece, ptr %5405, i64 %5404, i32 35
  %5407 = load <8 x double>, ptr %5406, align 64, !tbaa !26
  %5408 = getelementptr inbounds nuw i8, ptr %5403, i64 64
  store <8 x double> %5407, ptr %5403, align 64, !tbaa !26
  %5409 = add nuw nsw i64 %5404, 1
  %5410 = load i64, ptr %156, align 8, !tbaa !20
  %5411 = icmp slt i64 %5409, %5410
  br i1 %5411, label %5402, label %5398, !llvm.loop !152

5412:                                             ; preds = %5398
  %5413 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %5414 = getelementptr inbounds nuw i8, ptr %5399, i64 64
  store <8 x double> %5413, ptr %5399, align 64, !tbaa !26
  %5415 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %5416 = getelementptr inbounds nuw i8, ptr %5399, i64 128
  store <8 x double> %5415, ptr %5414, align 64, !tbaa !26
  %5417 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %5418 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %5419 = fsub <8 x double> %5417, %5418
  %5420 = fcmp ogt <8 x double> %5419, zeroinitializer
  %5421 = select <8 x i1> %5420, <8 x double> %5419, <8 x double> zeroinitializer
  store <8 x double> %5421, ptr %5416, align 64, !tbaa !26
  %5422 = load i64, ptr %156, align 8, !tbaa !20
  %5423 = icmp sgt i64 %5422, 0
  br i1 %5423, label %5424, label %5537

5424:                                             ; preds = %5412
  %5425 = getelementptr inbounds nuw i8, ptr %5399, i64 192
  br label %5426

5426:                                             ; preds = %5424, %5426
  %5427 = phi ptr [ %5533, %5426 ], [ %5425, %5424 ]
  %5428 = phi i64 [ %5534, %5426 ], [ 0, %5424 ]
  %5429 = load ptr, ptr %129, align 8, !tbaa !28
  %5430 = getelementptr inbounds nuw %struct.Piece, ptr %5429, i64 %5428
  %5431 = getelementptr inbounds nuw i8, ptr %5430, i64 8528
  %5432 = load ptr, ptr %5431, align 16, !tbaa !45
  %5433 = load i64, ptr %119, align 16, !tbaa !21
  %5434 = getelementptr <8 x double>, ptr %5432, i64 %5433
  %5435 = getelementptr i8, ptr %5434, i64 -64
  %5436 = load <8 x double>, ptr %5435, align 64, !tbaa !26
  %5437 = getelementptr inbounds nuw i8, ptr %5430, i64 7232
  %5438 = load <8 x double>, ptr %5437, align 64, !tbaa !26
  %5439 = getelementptr inbounds nuw i8, ptr %5430, i64 5952
  %5440 = load <8 x double>, ptr %5439, align 64, !tbaa !26
  %5441 = fsub <8 x double> %5440, %5436
  %5442 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5438, <8 x double> %5441, <8 x double> %5436)
  %5443 = getelementptr inbounds nuw i8, ptr %5427, i64 64
  store <8 x double> %5442, ptr %5427, align 64, !tbaa !26
  %5444 = getelementptr inbounds nuw i8, ptr %5430, i64 6784
  %5445 = load <8 x double>, ptr %5444, align 64, !tbaa !26
  %5446 = getelementptr inbounds nuw i8, ptr %5427, i64 128
  store <8 x double> %5445, ptr %5443, align 64, !tbaa !26
  %5447 = load <8 x double>, ptr %5430, align 64, !tbaa !26
  %5448 = getelementptr inbounds nuw i8, ptr %5430, i64 3840
  %5449 = load <8 x double>, ptr %5448, align 64, !tbaa !26
  %5450 = fsub <8 x double> %5447, %5449
  %5451 = getelementptr inbounds nuw i8, ptr %5427, i64 192
  store <8 x double> %5450, ptr %5446, align 64, !tbaa !26
  %5452 = getelementptr inbounds nuw i8, ptr %5430, i64 4160
  %5453 = load <8 x double>, ptr %5452, align 64, !tbaa !26
  %5454 = getelementptr inbounds nuw i8, ptr %5427, i64 256
  store <8 x double> %5453, ptr %5451, align 64, !tbaa !26
  %5455 = getelementptr inbounds nuw i8, ptr %5430, i64 4096
  %5456 = load <8 x double>, ptr %5455, align 64, !tbaa !26
  %5457 = getelementptr inbounds nuw i8, ptr %5427, i64 320
  store <8 x double> %5456, ptr %5454, align 64, !tbaa !26
  %5458 = getelementptr inbounds nuw i8, ptr %5430, i64 3968
  %5459 = load <8 x double>, ptr %5458, align 64, !tbaa !26
  %5460 = getelementptr inbounds nuw i8, ptr %5427, i64 384
  store <8 x double> %5459, ptr %5457, align 64, !tbaa !26
  %5461 = getelementptr inbounds nuw i8, ptr %5430, i64 4224
  %5462 = load <8 x double>, ptr %5461, align 64, !tbaa !26
  %5463 = getelementptr inbounds nuw i8, ptr %5427, i64 448
  store <8 x double> %5462, ptr %5460, align 64, !tbaa !26
  %5464 = getelementptr inbounds nuw i8, ptr %5430, i64 8648
  %5465 = load i64, ptr %120, align 8, !tbaa !22
  %5466 = sitofp i64 %5465 to double
  %5467 = tail call double @llvm.fmuladd.f64(double %5466, double 7.500000e-01, double -5.000000e-01)
  %5468 = fcmp ogt double %5467, 0.000000e+00
  %5469 = select i1 %5468, double %5467, double 0.000000e+00
  %5470 = fptosi double %5469 to i64
  %5471 = add nsw i64 %5465, -2
  %5472 = tail call i64 @llvm.smin.i64(i64 %5471, i64 %5470)
  %5473 = sitofp i64 %5472 to double
  %5474 = fsub double %5467, %5473
  %5475 = fsub double 1.000000e+00, %5474
  %5476 = insertelement <8 x double> poison, double %5475, i64 0
  %5477 = shufflevector <8 x double> %5476, <8 x double> poison, <8 x i32> zeroinitializer
  %5478 = load ptr, ptr %5464, align 8, !tbaa !49
  %5479 = getelementptr inbounds <8 x double>, ptr %5478, i64 %5472
  %5480 = load <8 x double>, ptr %5479, align 64, !tbaa !26
  %5481 = insertelement <8 x double> poison, double %5474, i64 0
  %5482 = shufflevector <8 x double> %5481, <8 x double> poison, <8 x i32> zeroinitializer
  %5483 = getelementptr i8, ptr %5479, i64 64
  %5484 = load <8 x double>, ptr %5483, align 64, !tbaa !26
  %5485 = fmul <8 x double> %5484, %5482
  %5486 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5477, <8 x double> %5480, <8 x double> %5485)
  store <8 x double> %5486, ptr %5463, align 64, !tbaa !26
  %5487 = load i64, ptr %120, align 8, !tbaa !22
  %5488 = sitofp i64 %5487 to double
  %5489 = tail call double @llvm.fmuladd.f64(double %5488, double 5.000000e-01, double -5.000000e-01)
  %5490 = fcmp ogt double %5489, 0.000000e+00
  %5491 = select i1 %5490, double %5489, double 0.000000e+00
  %5492 = fptosi double %5491 to i64
  %5493 = add nsw i64 %5487, -2
  %5494 = tail call i64 @llvm.smin.i64(i64 %5493, i64 %5492)
  %5495 = sitofp i64 %5494 to double
  %5496 = fsub double %5489, %5495
  %5497 = fsub double 1.000000e+00, %5496
  %5498 = insertelement <8 x double> poison, double %5497, i64 0
  %5499 = shufflevector <8 x double> %5498, <8 x double> poison, <8 x i32> zeroinitializer
  %5500 = load ptr, ptr %5464, align 8, !tbaa !49
  %5501 = getelementptr inbounds <8 x double>, ptr %5500, i64 %5494
  %5502 = load <8 x double>, ptr %5501, align 64, !tbaa !26
  %5503 = insertelement <8 x double> poison, double %5496, i64 0
  %5504 = shufflevector <8 x double> %5503, <8 x double> poison, <8 x i32> zeroinitializer
  %5505 = getelementptr i8, ptr %5501, i64 64
  %5506 = load <8 x double>, ptr %5505, align 64, !tbaa !26
  %5507 = fmul <8 x double> %5506, %5504
  %5508 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5499, <8 x double> %5502, <8 x double> %5507)
  %5509 = getelementptr inbounds nuw i8, ptr %5427, i64 512
  store <8 x double> %5508, ptr %5509, align 64, !tbaa !26
  %5510 = load i64, ptr %120, align 8, !tbaa !22
  %5511 = sitofp i64 %5510 to double
  %5512 = tail call double @llvm.fmuladd.f64(double %5511, double 2.500000e-01, double -5.000000e-01)
  %5513 = fcmp ogt double %5512, 0.000000e+00
  %5514 = select i1 %5513, double %5512, double 0.000000e+00
  %5515 = fptosi double %5514 to i64
  %5516 = add nsw i64 %5510, -2
  %5517 = tail call i64 @llvm.smin.i64(i64 %5516, i64 %5515)
  %5518 = sitofp i64 %5517 to double
  %5519 = fsub double %5512, %5518
  %5520 = fsub double 1.000000e+00, %5519
  %5521 = insertelement <8 x double> poison, double %5520, i64 0
  %5522 = shufflevector <8 x double> %5521, <8 x double> poison, <8 x i32> zeroinitializer
  %5523 = load ptr, ptr %5464, align 8, !tbaa !49
  %5524 = getelementptr inbounds <8 x double>, ptr %5523, i64 %5517
  %5525 = load <8 x double>, ptr %5524, align 64, !tbaa !26
  %5526 = insertelement <8 x double> poison, double %5519, i64 0
  %5527 = shufflevector <8 x double> %5526, <8 x double> poison, <8 x i32> zeroinitializer
  %5528 = getelementptr i8, ptr %5524, i64 64
  %5529 = load <8 x double>, ptr %5528, align 64, !tbaa !26
  %5530 = fmul <8 x double> %5529, %5527
  %5531 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5522, <8 x double> %5525, <8 x double> %5530)
  %5532 = getelementptr inbounds nuw i8, ptr %5427, i64 576
  store <8 x double> %5531, ptr %5532, align 64, !tbaa !26
  %5533 = getelementptr inbounds nuw i8, ptr %5427, i64 640
  %5534 = add nuw nsw i64 %5428, 1
  %5535 = load i64, ptr %156, align 8, !tbaa !20
  %5536 = icmp slt i64 %5534, %5535
  br i1 %5536, label %5426, label %5537, !llvm.loop !153

5537:                                             ; preds = %5426, %5412, %5398
  %5538 = getelementptr inbounds nuw i8, ptr %5399, i64 192
  %5539 = extractelement <8 x i64> %4391, i64 0
  %5540 = icmp eq i64 %5539, 0
  br i1 %5540, label %5680, label %5541

5541:                                             ; preds = %5537
  %5542 = load i64, ptr %219, align 8, !tbaa !30
  %5543 = load i64, ptr %220, align 8, !tbaa !154
  %5544 = icmp eq i64 %5542, %5543
  br i1 %5544, label %5547, label %5545

5545:                                             ; preds = %5541
  %5546 = load ptr, ptr %224, align 8, !tbaa !155
  br label %5560

5547:                                             ; preds = %5541
  %5548 = load i64, ptr %121, align 8, !tbaa !30
  %5549 = load ptr, ptr %221, align 8, !tbaa !156
  %5550 = load i64, ptr %112, align 8, !tbaa !40
  %5551 = getelementptr inbounds i64, ptr %5549, i64 %5550
  store i64 %5548, ptr %5551, align 8, !tbaa !30
  %5552 = load ptr, ptr %222, align 8, !tbaa !157
  %5553 = load i64, ptr %112, align 8, !tbaa !40
  %5554 = add nsw i64 %5553, 1
  store i64 %5554, ptr %112, align 8, !tbaa !40
  %5555 = load i64, ptr %220, align 8, !tbaa !154
  %5556 = mul nsw i64 %5555, %5553
  %5557 = load i64, ptr %223, align 8, !tbaa !14
  %5558 = mul nsw i64 %5556, %5557
  %5559 = getelementptr inbounds double, ptr %5552, i64 %5558
  store ptr %5559, ptr %224, align 8, !tbaa !155
  br label %5560

5560:                                             ; preds = %5545, %5547
  %5561 = phi i64 [ %5542, %5545 ], [ 0, %5547 ]
  %5562 = phi ptr [ %5546, %5545 ], [ %5559, %5547 ]
  %5563 = add nsw i64 %5561, 1
  store i64 %5563, ptr %219, align 8, !tbaa !30
  %5564 = load i64, ptr %223, align 8, !tbaa !14
  %5565 = mul nsw i64 %5564, %5561
  %5566 = getelementptr inbounds double, ptr %5562, i64 %5565
  %5567 = load ptr, ptr %216, align 64, !tbaa !37
  %5568 = icmp ult ptr %5567, %5395
  br i1 %5568, label %5627, label %5569

5569:                                             ; preds = %5627, %5560
  %5570 = phi ptr [ %5566, %5560 ], [ %5631, %5627 ]
  %5571 = load i64, ptr %128, align 64, !tbaa !16
  %5572 = icmp sgt i64 %5571, 0
  br i1 %5572, label %5573, label %5615

5573:                                             ; preds = %5569
  %5574 = and i64 %5571, 3
  %5575 = icmp ult i64 %5571, 4
  br i1 %5575, label %5600, label %5576

5576:                                             ; preds = %5573
  %5577 = and i64 %5571, 9223372036854775804
  br label %5578

5578:                                             ; preds = %5578, %5576
  %5579 = phi i64 [ 0, %5576 ], [ %5597, %5578 ]
  %5580 = phi ptr [ %5570, %5576 ], [ %5594, %5578 ]
  %5581 = phi i64 [ 0, %5576 ], [ %5598, %5578 ]
  %5582 = getelementptr i8, ptr %5580, i64 8
  %5583 = load <8 x double>, ptr %5395, align 64, !tbaa !26
  %5584 = extractelement <8 x double> %5583, i64 %5579
  store double %5584, ptr %5580, align 8, !tbaa !41
  %5585 = or disjoint i64 %5579, 1
  %5586 = getelementptr i8, ptr %5580, i64 16
  %5587 = load <8 x double>, ptr %5395, align 64, !tbaa !26
  %5588 = extractelement <8 x double> %5587, i64 %5585
  store double %5588, ptr %5582, align 8, !tbaa !41
  %5589 = or disjoint i64 %5579, 2
  %5590 = getelementptr i8, ptr %5580, i64 24
  %5591 = load <8 x double>, ptr %5395, align 64, !tbaa !26
  %5592 = extractelement <8 x double> %5591, i64 %5589
  store double %5592, ptr %5586, align 8, !tbaa !41
  %5593 = or disjoint i64 %5579, 3
  %5594 = getelementptr i8, ptr %5580, i64 32
  %5595 = load <8 x double>, ptr %5395, align 64, !tbaa !26
  %5596 = extractelement <8 x double> %5595, i64 %5593
  store double %5596, ptr %5590, align 8, !tbaa !41
  %5597 = add nuw nsw i64 %5579, 4
  %5598 = add i64 %5581, 4
  %5599 = icmp eq i64 %5598, %5577
  br i1 %5599, label %5600, label %5578, !llvm.loop !158

5600:                                             ; preds = %5578, %5573
  %5601 = phi ptr [ poison, %5573 ], [ %5594, %5578 ]
  %5602 = phi i64 [ 0, %5573 ], [ %5597, %5578 ]
  %5603 = phi ptr [ %5570, %5573 ], [ %5594, %5578 ]
  %5604 = icmp eq i64 %5574, 0
  br i1 %5604, label %5615, label %5605

5605:                                             ; preds = %5600, %5605
  %5606 = phi i64 [ %5612, %5605 ], [ %5602, %5600 ]
  %5607 = phi ptr [ %5609, %5605 ], [ %5603, %5600 ]
  %5608 = phi i64 [ %5613, %5605 ], [ 0, %5600 ]
  %5609 = getelementptr i8, ptr %5607, i64 8
  %5610 = load <8 x double>, ptr %5395, align 64, !tbaa !26
  %5611 = extractelement <8 x double> %5610, i64 %5606
  store double %5611, ptr %5607, align 8, !tbaa !41
  %5612 = add nuw nsw i64 %5606, 1
  %5613 = add i64 %5608, 1
  %5614 = icmp eq i64 %5613, %5574
  br i1 %5614, label %5615, label %5605, !llvm.loop !159

5615:                                             ; preds = %5600, %5605, %5569
  %5616 = phi ptr [ %5570, %5569 ], [ %5601, %5600 ], [ %5609, %5605 ]
  %5617 = load i64, ptr %218, align 8, !tbaa !151
  %5618 = icmp eq i64 %5617, 0
  br i1 %5618, label %5680, label %5619

5619:                                             ; preds = %5615
  %5620 = load double, ptr %5399, align 8, !tbaa !41
  %5621 = getelementptr inbounds nuw i8, ptr %5616, i64 8
  store double %5620, ptr %5616, align 8, !tbaa !41
  %5622 = getelementptr inbounds nuw i8, ptr %5399, i64 64
  %5623 = load double, ptr %5622, align 8, !tbaa !41
  %5624 = getelementptr inbounds nuw i8, ptr %5616, i64 16
  store double %5623, ptr %5621, align 8, !tbaa !41
  %5625 = getelementptr inbounds nuw i8, ptr %5399, i64 128
  %5626 = load double, ptr %5625, align 8, !tbaa !41
  store double %5626, ptr %5624, align 8, !tbaa !41
  br i1 %5572, label %5634, label %5680

5627:                                             ; preds = %5560, %5627
  %5628 = phi ptr [ %5632, %5627 ], [ %5567, %5560 ]
  %5629 = phi ptr [ %5631, %5627 ], [ %5566, %5560 ]
  %5630 = load double, ptr %5628, align 8, !tbaa !41
  %5631 = getelementptr inbounds nuw i8, ptr %5629, i64 8
  store double %5630, ptr %5629, align 8, !tbaa !41
  %5632 = getelementptr inbounds nuw i8, ptr %5628, i64 64
  %5633 = icmp ult ptr %5632, %5395
  br i1 %5633, label %5627, label %5569, !llvm.loop !161

5634:                                             ; preds = %5619
  %5635 = getelementptr inbounds nuw i8, ptr %5616, i64 24
  %5636 = getelementptr inbounds nuw i8, ptr %5399, i64 256
  %5637 = getelementptr inbounds nuw i8, ptr %5399, i64 320
  %5638 = getelementptr inbounds nuw i8, ptr %5399, i64 384
  %5639 = getelementptr inbounds nuw i8, ptr %5399, i64 448
  %5640 = getelementptr inbounds nuw i8, ptr %5399, i64 512
  %5641 = getelementptr inbounds nuw i8, ptr %5399, i64 576
  %5642 = getelementptr inbounds nuw i8, ptr %5399, i64 640
  %5643 = getelementptr inbounds nuw i8, ptr %5399, i64 704
  %5644 = getelementptr inbounds nuw i8, ptr %5399, i64 768
  br label %5645

5645:                                             ; preds = %5634, %5645
  %5646 = phi i64 [ %5678, %5645 ], [ 0, %5634 ]
  %5647 = phi ptr [ %5677, %5645 ], [ %5635, %5634 ]
  %5648 = load <8 x double>, ptr %5538, align 64, !tbaa !26
  %5649 = extractelement <8 x double> %5648, i64 %5646
  %5650 = getelementptr inbounds nuw i8, ptr %5647, i64 8
  store double %5649, ptr %5647, align 8, !tbaa !41
  %5651 = load <8 x double>, ptr %5636, align 64, !tbaa !26
  %5652 = extractelement <8 x double> %5651, i64 %5646
  %5653 = getelementptr inbounds nuw i8, ptr %5647, i64 16
  store double %5652, ptr %5650, align 8, !tbaa !41
  %5654 = load <8 x double>, ptr %5637, align 64, !tbaa !26
  %5655 = extractelement <8 x double> %5654, i64 %5646
  %5656 = getelementptr inbounds nuw i8, ptr %5647, i64 24
  store double %5655, ptr %5653, align 8, !tbaa !41
  %5657 = load <8 x double>, ptr %5638, align 64, !tbaa !26
  %5658 = extractelement <8 x double> %5657, i64 %5646
  %5659 = getelementptr inbounds nuw i8, ptr %5647, i64 32
  store double %5658, ptr %5656, align 8, !tbaa !41
  %5660 = load <8 x double>, ptr %5639, align 64, !tbaa !26
  %5661 = extractelement <8 x double> %5660, i64 %5646
  %5662 = getelementptr inbounds nuw i8, ptr %5647, i64 40
  store double %5661, ptr %5659, align 8, !tbaa !41
  %5663 = load <8 x double>, ptr %5640, align 64, !tbaa !26
  %5664 = extractelement <8 x double> %5663, i64 %5646
  %5665 = getelementptr inbounds nuw i8, ptr %5647, i64 48
  store double %5664, ptr %5662, align 8, !tbaa !41
  %5666 = load <8 x double>, ptr %5641, align 64, !tbaa !26
  %5667 = extractelement <8 x double> %5666, i64 %5646
  %5668 = getelementptr inbounds nuw i8, ptr %5647, i64 56
  store double %5667, ptr %5665, align 8, !tbaa !41
  %5669 = load <8 x double>, ptr %5642, align 64, !tbaa !26
  %5670 = extractelement <8 x double> %5669, i64 %5646
  %5671 = getelementptr inbounds nuw i8, ptr %5647, i64 64
  store double %5670, ptr %5668, align 8, !tbaa !41
  %5672 = load <8 x double>, ptr %5643, align 64, !tbaa !26
  %5673 = extractelement <8 x double> %5672, i64 %5646
  %5674 = getelementptr inbounds nuw i8, ptr %5647, i64 72
  store double %5673, ptr %5671, align 8, !tbaa !41
  %5675 = load <8 x double>, ptr %5644, align 64, !tbaa !26
  %5676 = extractelement <8 x double> %5675, i64 %5646
  %5677 = getelementptr inbounds nuw i8, ptr %5647, i64 80
  store double %5676, ptr %5674, align 8, !tbaa !41
  %5678 = add nuw nsw i64 %5646, 1
  %5679 = icmp eq i64 %5678, %5571
  br i1 %5679, label %5680, label %5645, !llvm.loop !158

5680:                                             ; preds = %5645, %5619, %5615, %5537
  %5681 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %5682 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %5683 = fsub <8 x double> %5681, %5682
  %5684 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %5685 = fadd <8 x double> %5684, splat (double -1.000000e-09)
  %5686 = fcmp oge <8 x double> %5683, %5685
  %5687 = select <8 x i1> %5686, <8 x i64> %4391, <8 x i64> zeroinitializer
  %5688 = load i64, ptr %156, align 8, !tbaa !20
  %5689 = icmp sgt i64 %5688, 0
  br i1 %5689, label %5690, label %5722

5690:                                             ; preds = %5680
  %5691 = load ptr, ptr %129, align 8, !tbaa !28
  %5692 = and i64 %5688, 1
  %5693 = icmp eq i64 %5688, 1
  br i1 %5693, label %5712, label %5694

5694:                                             ; preds = %5690
  %5695 = and i64 %5688, 9223372036854775806
  br label %5696

5696:                                             ; preds = %5696, %5694
  %5697 = phi i64 [ 0, %5694 ], [ %5709, %5696 ]
  %5698 = phi <8 x double> [ splat (double 1.000000e+09), %5694 ], [ %5708, %5696 ]
  %5699 = phi i64 [ 0, %5694 ], [ %5710, %5696 ]
  %5700 = getelementptr inbounds nuw %struct.Piece, ptr %5691, i64 %5697, i32 35
  %5701 = load <8 x double>, ptr %5700, align 64, !tbaa !26
  %5702 = fcmp olt <8 x double> %5698, %5701
  %5703 = select <8 x i1> %5702, <8 x double> %5698, <8 x double> %5701
  %5704 = or disjoint i64 %5697, 1
  %5705 = getelementptr inbounds nuw %struct.Piece, ptr %5691, i64 %5704, i32 35
  %5706 = load <8 x double>, ptr %5705, align 64, !tbaa !26
  %5707 = fcmp olt <8 x double> %5703, %5706
  %5708 = select <8 x i1> %5707, <8 x double> %5703, <8 x double> %5706
  %5709 = add nuw nsw i64 %5697, 2
  %5710 = add i64 %5699, 2
  %5711 = icmp eq i64 %5710, %5695
  br i1 %5711, label %5712, label %5696, !llvm.loop !137

5712:                                             ; preds = %5696, %5690
  %5713 = phi <8 x double> [ poison, %5690 ], [ %5708, %5696 ]
  %5714 = phi i64 [ 0, %5690 ], [ %5709, %5696 ]
  %5715 = phi <8 x double> [ splat (double 1.000000e+09), %5690 ], [ %5708, %5696 ]
  %5716 = icmp eq i64 %5692, 0
  br i1 %5716, label %5722, label %5717

5717:                                             ; preds = %5712
  %5718 = getelementptr inbounds nuw %struct.Piece, ptr %5691, i64 %5714, i32 35
  %5719 = load <8 x double>, ptr %5718, align 64, !tbaa !26
  %5720 = fcmp olt <8 x double> %5715, %5719
  %5721 = select <8 x i1> %5720, <8 x double> %5715, <8 x double> %5719
  br label %5722

5722:                                             ; preds = %5717, %5712, %5680
  %5723 = phi <8 x double> [ splat (double 1.000000e+09), %5680 ], [ %5713, %5712 ], [ %5721, %5717 ]
  %5724 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %5723)
  %5725 = insertelement <8 x double> poison, double %5724, i64 0
  %5726 = shufflevector <8 x double> %5725, <8 x double> poison, <8 x i32> zeroinitializer
  %5727 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %5728 = select <8 x i1> %4451, <8 x double> %5727, <8 x double> %5726
  store <8 x double> %5728, ptr %212, align 64, !tbaa !26
  %5729 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %5730 = fcmp une <8 x double> %5729, zeroinitializer
  %5731 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %5732 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %5733 = fsub <8 x double> %5731, %5732
  %5734 = fcmp une <8 x double> %5729, splat (double 1.000000e+00)
  %5735 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %5736 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %5737 = fsub <8 x double> %5735, %5736
  %5738 = select <8 x i1> %5734, <8 x double> splat (double -1.000000e+00), <8 x double> %5737
  %5739 = fcmp une <8 x double> %5729, splat (double 2.000000e+00)
  %5740 = fsub <8 x double> %5728, %5736
  %5741 = select <8 x i1> %5739, <8 x double> %5738, <8 x double> %5740
  %5742 = fcmp une <8 x double> %5729, splat (double 3.000000e+00)
  %5743 = fsub <8 x double> %5733, %5736
  %5744 = select <8 x i1> %5742, <8 x double> %5741, <8 x double> %5743
  %5745 = fcmp une <8 x double> %5729, splat (double 4.000000e+00)
  %5746 = fsub <8 x double> %5736, %5733
  %5747 = select <8 x i1> %5745, <8 x double> %5744, <8 x double> %5746
  %5748 = fcmp oge <8 x double> %5747, splat (double 0xBEB0C6F7A0B5ED8D)
  %5749 = select <8 x i1> %5748, <8 x i1> %5730, <8 x i1> zeroinitializer
  %5750 = select <8 x i1> %5749, <8 x i64> %4391, <8 x i64> zeroinitializer
  %5751 = xor <8 x i64> %5750, splat (i64 -1)
  %5752 = and <8 x i64> %5687, %5751
  %5753 = load <8 x double>, ptr %126, align 64, !tbaa !26
  %5754 = icmp ne <8 x i64> %5752, zeroinitializer
  %5755 = select <8 x i1> %5730, <8 x i1> %5754, <8 x i1> zeroinitializer
  %5756 = select <8 x i1> %5755, <8 x double> splat (double 2.000000e+00), <8 x double> %5753
  store <8 x double> %5756, ptr %126, align 64, !tbaa !26
  %5757 = or <8 x i64> %5750, %5687
  %5758 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %5759 = fadd <8 x double> %5758, splat (double 1.000000e+00)
  %5760 = icmp eq <8 x i64> %5757, zeroinitializer
  %5761 = select <8 x i1> %5760, <8 x double> %5758, <8 x double> %5759
  store <8 x double> %5761, ptr %217, align 64, !tbaa !26
  %5762 = xor <8 x i64> %5757, %4391
  %5763 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %5764 = fcmp oeq <8 x double> %5763, zeroinitializer
  %5765 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %5766 = fcmp oeq <8 x double> %5765, zeroinitializer
  %5767 = select <8 x i1> %5766, <8 x i1> %5764, <8 x i1> zeroinitializer
  %5768 = select <8 x i1> %5767, <8 x i64> %5762, <8 x i64> zeroinitializer
  %5769 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %5770 = fmul <8 x double> %5769, splat (double 5.000000e-01)
  %5771 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %5772 = fadd <8 x double> %5771, %5770
  %5773 = fadd <8 x double> %5772, splat (double -4.000000e-03)
  %5774 = fcmp ult <8 x double> %5735, %5773
  %5775 = fsub <8 x double> %5771, %5770
  %5776 = fadd <8 x double> %5775, splat (double 4.000000e-03)
  %5777 = fcmp ole <8 x double> %5735, %5776
  %5778 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %5779 = select <8 x i1> %5777, <8 x i64> splat (i64 -1), <8 x i64> %5778
  %5780 = select <8 x i1> %5774, <8 x i64> %5779, <8 x i64> zeroinitializer
  %5781 = xor <8 x i64> %5780, %5778
  %5782 = and <8 x i64> %5781, %5768
  %5783 = and <8 x i64> %5780, %5768
  %5784 = xor <8 x i64> %5768, splat (i64 -1)
  %5785 = and <8 x i64> %5778, %5784
  %5786 = or <8 x i64> %5783, %5785
  store <8 x i64> %5786, ptr %143, align 64, !tbaa !26
  %5787 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %5788 = or <8 x i64> %5782, %5787
  store <8 x i64> %5788, ptr %153, align 64, !tbaa !26
  %5789 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5757)
  %5790 = icmp eq i64 %5789, 0
  br i1 %5790, label %5825, label %5791

5791:                                             ; preds = %5722
  %5792 = extractelement <8 x i64> %5757, i64 0
  %5793 = icmp eq i64 %5792, 0
  br i1 %5793, label %5795, label %5794

5794:                                             ; preds = %5791
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %5795

5795:                                             ; preds = %5794, %5791
  %5796 = extractelement <8 x i64> %5757, i64 1
  %5797 = icmp eq i64 %5796, 0
  br i1 %5797, label %5799, label %5798

5798:                                             ; preds = %5795
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %5799

5799:                                             ; preds = %5798, %5795
  %5800 = extractelement <8 x i64> %5757, i64 2
  %5801 = icmp eq i64 %5800, 0
  br i1 %5801, label %5803, label %5802

5802:                                             ; preds = %5799
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %5803

5803:                                             ; preds = %5802, %5799
  %5804 = extractelement <8 x i64> %5757, i64 3
  %5805 = icmp eq i64 %5804, 0
  br i1 %5805, label %5807, label %5806

5806:                                             ; preds = %5803
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %5807

5807:                                             ; preds = %5806, %5803
  %5808 = extractelement <8 x i64> %5757, i64 4
  %5809 = icmp eq i64 %5808, 0
  br i1 %5809, label %5811, label %5810

5810:                                             ; preds = %5807
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %5811

5811:                                             ; preds = %5810, %5807
  %5812 = extractelement <8 x i64> %5757, i64 5
  %5813 = icmp eq i64 %5812, 0
  br i1 %5813, label %5815, label %5814

5814:                                             ; preds = %5811
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %5815

5815:                                             ; preds = %5814, %5811
  %5816 = extractelement <8 x i64> %5757, i64 6
  %5817 = icmp eq i64 %5816, 0
  br i1 %5817, label %5819, label %5818

5818:                                             ; preds = %5815
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %5819

5819:                                             ; preds = %5818, %5815
  %5820 = extractelement <8 x i64> %5757, i64 7
  %5821 = icmp eq i64 %5820, 0
  br i1 %5821, label %5823, label %5822

5822:                                             ; preds = %5819
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %5823

5823:                                             ; preds = %5822, %5819
  %5824 = load <8 x double>, ptr %126, align 64, !tbaa !26
  br label %5825

5825:                                             ; preds = %5823, %5722
  %5826 = phi <8 x double> [ %5824, %5823 ], [ %5756, %5722 ]
  %5827 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %5828 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %5829 = fadd <8 x double> %5828, splat (double -1.000000e+00)
  %5830 = fcmp oge <8 x double> %5827, %5829
  %5831 = select <8 x i1> %5830, <8 x i64> %4391, <8 x i64> zeroinitializer
  %5832 = icmp eq <8 x i64> %5831, zeroinitializer
  %5833 = select <8 x i1> %5832, <8 x double> %5826, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %5833, ptr %126, align 64, !tbaa !26
  %5834 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5831)
  %5835 = icmp eq i64 %5834, 0
  br i1 %5835, label %515, label %5836

5836:                                             ; preds = %5825
  %5837 = extractelement <8 x i64> %5831, i64 0
  %5838 = icmp eq i64 %5837, 0
  br i1 %5838, label %5840, label %5839

5839:                                             ; preds = %5836
  store double 1.000000e+00, ptr %118, align 8, !tbaa !41
  br label %5840

5840:                                             ; preds = %5839, %5836
  %5841 = extractelement <8 x i64> %5831, i64 1
  %5842 = icmp eq i64 %5841, 0
  br i1 %5842, label %5844, label %5843

5843:                                             ; preds = %5840
  store double 1.000000e+00, ptr %269, align 8, !tbaa !41
  br label %5844

5844:                                             ; preds = %5843, %5840
  %5845 = extractelement <8 x i64> %5831, i64 2
  %5846 = icmp eq i64 %5845, 0
  br i1 %5846, label %5848, label %5847

5847:                                             ; preds = %5844
  store double 1.000000e+00, ptr %270, align 8, !tbaa !41
  br label %5848

5848:                                             ; preds = %5847, %5844
  %5849 = extractelement <8 x i64> %5831, i64 3
  %5850 = icmp eq i64 %5849, 0
  br i1 %5850, label %5852, label %5851

5851:                                             ; preds = %5848
  store double 1.000000e+00, ptr %271, align 8, !tbaa !41
  br label %5852

5852:                                             ; preds = %5851, %5848
  %5853 = extractelement <8 x i64> %5831, i64 4
  %5854 = icmp eq i64 %5853, 0
  br i1 %5854, label %5856, label %5855

5855:                                             ; preds = %5852
  store double 1.000000e+00, ptr %272, align 8, !tbaa !41
  br label %5856

5856:                                             ; preds = %5855, %5852
  %5857 = extractelement <8 x i64> %5831, i64 5
  %5858 = icmp eq i64 %5857, 0
  br i1 %5858, label %5860, label %5859

5859:                                             ; preds = %5856
  store double 1.000000e+00, ptr %273, align 8, !tbaa !41
  br label %5860

5860:                                             ; preds = %5859, %5856
  %5861 = extractelement <8 x i64> %5831, i64 6
  %5862 = icmp eq i64 %5861, 0
  br i1 %5862, label %5864, label %5863

5863:                                             ; preds = %5860
  store double 1.000000e+00, ptr %274, align 8, !tbaa !41
  br label %5864

5864:                                             ; preds = %5863, %5860
  %5865 = extractelement <8 x i64> %5831, i64 7
  %5866 = icmp eq i64 %5865, 0
  br i1 %5866, label %515, label %5867

5867:                                             ; preds = %5864
  store double 1.000000e+00, ptr %275, align 8, !tbaa !41
  br label %515

5868:                                             ; preds = %515, %520, %109
  %5869 = phi i64 [ 0, %109 ], [ 1, %520 ], [ 0, %515 ]
  ret i64 %5869
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2344
  %6 = zext nneg i32 %2 to i64
  %7 = load i64, ptr %5, align 8, !tbaa !27
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %7) #6
  %8 = getelementptr inbounds nuw i64, ptr %4, i64 %6
  store i64 -1, ptr %8, align 8, !tbaa !30
  %9 = add nuw nsw i64 %6, 1
  %10 = load i64, ptr %5, align 8, !tbaa !27
  %11 = trunc nuw nsw i64 %9 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %11, i64 noundef %10) #6
  %12 = getelementptr inbounds nuw i64, ptr %4, i64 %9
  store i64 -1, ptr %12, align 8, !tbaa !30
  %13 = add nuw nsw i64 %6, 2
  %14 = load i64, ptr %5, align 8, !tbaa !27
  %15 = trunc nuw nsw i64 %13 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %15, i64 noundef %14) #6
  %16 = getelementptr inbounds nuw i64, ptr %4, i64 %13
  store i64 -1, ptr %16, align 8, !tbaa !30
  %17 = add nuw nsw i64 %6, 3
  %18 = load i64, ptr %5, align 8, !tbaa !27
  %19 = trunc nuw nsw i64 %17 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %19, i64 noundef %18) #6
  %20 = getelementptr inbounds nuw i64, ptr %4, i64 %17
  store i64 -1, ptr %20, align 8, !tbaa !30
  %21 = add nuw nsw i64 %6, 4
  %22 = load i64, ptr %5, align 8, !tbaa !27
  %23 = trunc nuw nsw i64 %21 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %23, i64 noundef %22) #6
  %24 = getelementptr inbounds nuw i64, ptr %4, i64 %21
  store i64 -1, ptr %24, align 8, !tbaa !30
  %25 = add nuw nsw i64 %6, 5
  %26 = load i64, ptr %5, align 8, !tbaa !27
  %27 = trunc nuw nsw i64 %25 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %27, i64 noundef %26) #6
  %28 = getelementptr inbounds nuw i64, ptr %4, i64 %25
  store i64 -1, ptr %28, align 8, !tbaa !30
  %29 = add nuw nsw i64 %6, 6
  %30 = load i64, ptr %5, align 8, !tbaa !27
  %31 = trunc nuw nsw i64 %29 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %31, i64 noundef %30) #6
  %32 = getelementptr inbounds nuw i64, ptr %4, i64 %29
  store i64 -1, ptr %32, align 8, !tbaa !30
  %33 = add nuw nsw i64 %6, 7
  %34 = load i64, ptr %5, align 8, !tbaa !27
  %35 = trunc nuw nsw i64 %33 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %35, i64 noundef %34) #6
  %36 = getelementptr inbounds nuw i64, ptr %4, i64 %33
  store i64 -1, ptr %36, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #6
  %37 = add nuw nsw i32 %2, 1
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %37) #6
  %38 = add nuw nsw i32 %2, 2
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %38) #6
  %39 = add nuw nsw i32 %2, 3
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %39) #6
  %40 = add nuw nsw i32 %2, 4
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %40) #6
  %41 = add nuw nsw i32 %2, 5
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %41) #6
  %42 = add nuw nsw i32 %2, 6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %42) #6
  %43 = add nuw nsw i32 %2, 7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %43) #6
  %44 = getelementptr inbounds nuw i8, ptr %0, i64 2344
  %45 = load i64, ptr %44, align 8, !tbaa !27
  %46 = add nsw i64 %45, 1
  store i64 %46, ptr %44, align 8, !tbaa !27
  %47 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %48 = getelementptr inbounds nuw i8, ptr %0, i64 6144
  %49 = load ptr, ptr %48, align 64, !tbaa !37
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
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 6152
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 2328
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
  %215 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %217 = load ptr, ptr %216, align 8
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 6016
  %222 = load ptr, ptr %48, align 64
  %223 = icmp ult ptr %222, %61
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %225 = getelementptr inbounds nuw i8, ptr %68, i64 192
  %226 = extractelement <8 x i64> %47, i64 0
  %227 = icmp eq i64 %226, 0
  br i1 %227, label %365, label %228

228:                                              ; preds = %213
  %229 = getelementptr inbounds nuw i8, ptr %0, i64 5824
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
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 15) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !154
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %11 = getelementptr inbounds [8 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !30
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %13 = shl nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = sext i32 %14 to i64
  %16 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !30
  %17 = sext i32 %13 to i64
  %18 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !30
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 6080
  %20 = getelementptr inbounds [8 x double], ptr %19, i64 0, i64 %6
  store double 0.000000e+00, ptr %20, align 8, !tbaa !41
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !163
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
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 6152
  %32 = load ptr, ptr %31, align 8, !tbaa !28
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2328
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = load ptr, ptr %36, align 8, !tbaa !164
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = load ptr, ptr %38, align 8, !tbaa !165
  %40 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %41 = load ptr, ptr %40, align 8, !tbaa !166
  br label %160

42:                                               ; preds = %42, %4
  %43 = phi i64 [ 0, %4 ], [ %59, %42 ]
  %44 = getelementptr double, ptr %24, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !41
  %46 = getelementptr <8 x double>, ptr %25, i64 %43
  store double %45, ptr %46, align 8, !tbaa !41
  %47 = or disjoint i64 %43, 1
  %48 = getelementptr double, ptr %24, i64 %47
  %49 = load double, ptr %48, align 8, !tbaa !41
  %50 = getelementptr <8 x double>, ptr %25, i64 %47
  store double %49, ptr %50, align 8, !tbaa !41
  %51 = or disjoint i64 %43, 2
  %52 = getelementptr double, ptr %24, i64 %51
  %53 = load double, ptr %52, align 8, !tbaa !41
  %54 = getelementptr <8 x double>, ptr %25, i64 %51
  store double %53, ptr %54, align 8, !tbaa !41
  %55 = or disjoint i64 %43, 3
  %56 = getelementptr double, ptr %24, i64 %55
  %57 = load double, ptr %56, align 8, !tbaa !41
  %58 = getelementptr <8 x double>, ptr %25, i64 %55
  store double %57, ptr %58, align 8, !tbaa !41
  %59 = add nuw nsw i64 %43, 4
  %60 = icmp eq i64 %59, 36
  br i1 %60, label %26, label %42, !llvm.loop !167

61:                                               ; preds = %562, %26
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
  store double 0.000000e+00, ptr %72, align 8, !tbaa !41
  %73 = getelementptr i8, ptr %71, i64 320
  store double 0.000000e+00, ptr %73, align 8, !tbaa !41
  %74 = load double, ptr %66, align 8, !tbaa !41
  store double %74, ptr %71, align 8, !tbaa !41
  %75 = load double, ptr %68, align 8, !tbaa !41
  %76 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %77 = getelementptr inbounds double, ptr %76, i64 %6
  store double %75, ptr %77, align 8, !tbaa !41
  %78 = load double, ptr %70, align 8, !tbaa !41
  %79 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %80 = getelementptr inbounds double, ptr %79, i64 %6
  store double %78, ptr %80, align 8, !tbaa !41
  %81 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %82 = getelementptr inbounds double, ptr %81, i64 %6
  store double %78, ptr %82, align 8, !tbaa !41
  %83 = getelementptr double, ptr %63, i64 %6
  %84 = getelementptr i8, ptr %83, i64 256
  store double 0.000000e+00, ptr %84, align 8, !tbaa !41
  %85 = getelementptr i8, ptr %83, i64 320
  store double 0.000000e+00, ptr %85, align 8, !tbaa !41
  store double %74, ptr %83, align 8, !tbaa !41
  %86 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %87 = getelementptr inbounds double, ptr %86, i64 %6
  store double %75, ptr %87, align 8, !tbaa !41
  %88 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %89 = getelementptr inbounds double, ptr %88, i64 %6
  store double %78, ptr %89, align 8, !tbaa !41
  %90 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %91 = getelementptr inbounds double, ptr %90, i64 %6
  store double %78, ptr %91, align 8, !tbaa !41
  %92 = getelementptr double, ptr %64, i64 %6
  %93 = getelementptr i8, ptr %92, i64 256
  store double 0.000000e+00, ptr %93, align 8, !tbaa !41
  %94 = getelementptr i8, ptr %92, i64 320
  store double 0.000000e+00, ptr %94, align 8, !tbaa !41
  store double %74, ptr %92, align 8, !tbaa !41
  %95 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %96 = getelementptr inbounds double, ptr %95, i64 %6
  store double %75, ptr %96, align 8, !tbaa !41
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %98 = getelementptr inbounds double, ptr %97, i64 %6
  store double %78, ptr %98, align 8, !tbaa !41
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %100 = getelementptr inbounds double, ptr %99, i64 %6
  store double %78, ptr %100, align 8, !tbaa !41
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %102 = getelementptr inbounds double, ptr %101, i64 %6
  %103 = load double, ptr %102, align 8, !tbaa !41
  %104 = getelementptr inbounds nuw i8, ptr %0, i64 3904
  %105 = getelementptr inbounds double, ptr %104, i64 %6
  store double %103, ptr %105, align 8, !tbaa !41
  %106 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %107 = getelementptr inbounds double, ptr %106, i64 %6
  store double %103, ptr %107, align 8, !tbaa !41
  %108 = getelementptr inbounds nuw i8, ptr %0, i64 4544
  %109 = getelementptr inbounds double, ptr %108, i64 %6
  store double 1.000000e+09, ptr %109, align 8, !tbaa !41
  %110 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %111 = getelementptr inbounds double, ptr %110, i64 %6
  store double 0.000000e+00, ptr %111, align 8, !tbaa !41
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %113 = getelementptr inbounds double, ptr %112, i64 %6
  %114 = load double, ptr %113, align 8, !tbaa !41
  %115 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %116 = getelementptr inbounds double, ptr %115, i64 %6
  store double %114, ptr %116, align 8, !tbaa !41
  %117 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %118 = getelementptr inbounds double, ptr %117, i64 %6
  store double %114, ptr %118, align 8, !tbaa !41
  %119 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %120 = getelementptr inbounds double, ptr %119, i64 %6
  %121 = load double, ptr %120, align 8, !tbaa !41
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %123 = getelementptr inbounds double, ptr %122, i64 %6
  store double %121, ptr %123, align 8, !tbaa !41
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
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %136 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %137 = getelementptr inbounds double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !41
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
  %150 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %151 = getelementptr inbounds i64, ptr %150, i64 %6
  store i64 0, ptr %151, align 8, !tbaa !30
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %153 = getelementptr inbounds i64, ptr %152, i64 %6
  store i64 0, ptr %153, align 8, !tbaa !30
  %154 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %155 = getelementptr inbounds i64, ptr %154, i64 %6
  store i64 -1, ptr %155, align 8, !tbaa !30
  %156 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %157 = getelementptr inbounds i64, ptr %156, i64 %6
  store i64 -1, ptr %157, align 8, !tbaa !30
  %158 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %159 = getelementptr inbounds i64, ptr %158, i64 %6
  store i64 -1, ptr %159, align 8, !tbaa !30
  ret void

160:                                              ; preds = %30, %562
  %161 = phi i64 [ 0, %30 ], [ %563, %562 ]
  %162 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %161
  %163 = load i64, ptr %33, align 64, !tbaa !16
  %164 = icmp sgt i64 %163, %6
  %165 = load i64, ptr %34, align 16, !tbaa !21
  %166 = load i64, ptr %35, align 8, !tbaa !22
  %167 = mul nsw i64 %163, %3
  %168 = select i1 %164, i64 %6, i64 0
  %169 = add nsw i64 %168, %167
  %170 = getelementptr inbounds nuw i8, ptr %162, i64 8512
  %171 = load i64, ptr %170, align 64, !tbaa !31
  %172 = mul i64 %169, 368
  %173 = getelementptr i8, ptr %37, i64 %172
  %174 = getelementptr double, ptr %162, i64 %6
  br label %177

175:                                              ; preds = %177
  %176 = icmp eq i64 %171, 0
  br i1 %164, label %191, label %188

177:                                              ; preds = %177, %160
  %178 = phi i64 [ 0, %160 ], [ %186, %177 ]
  %179 = getelementptr double, ptr %173, i64 %178
  %180 = load double, ptr %179, align 8, !tbaa !41
  %181 = getelementptr <8 x double>, ptr %174, i64 %178
  store double %180, ptr %181, align 8, !tbaa !41
  %182 = or disjoint i64 %178, 1
  %183 = getelementptr double, ptr %173, i64 %182
  %184 = load double, ptr %183, align 8, !tbaa !41
  %185 = getelementptr <8 x double>, ptr %174, i64 %182
  store double %184, ptr %185, align 8, !tbaa !41
  %186 = add nuw nsw i64 %178, 2
  %187 = icmp eq i64 %186, 46
  br i1 %187, label %175, label %177, !llvm.loop !168

188:                                              ; preds = %175
  %189 = getelementptr inbounds nuw i8, ptr %162, i64 128
  %190 = getelementptr inbounds double, ptr %189, i64 %6
  store double 0.000000e+00, ptr %190, align 8, !tbaa !41
  br label %191

191:                                              ; preds = %188, %175
  %192 = getelementptr inbounds i64, ptr %41, i64 %169
  %193 = load i64, ptr %192, align 8, !tbaa !30
  %194 = mul nsw i64 %165, 3
  %195 = add nsw i64 %165, 1
  %196 = select i1 %176, i64 0, i64 2
  %197 = shl i64 %195, %196
  %198 = add nsw i64 %197, %194
  %199 = mul nsw i64 %193, %198
  %200 = getelementptr inbounds double, ptr %39, i64 %199
  %201 = icmp sgt i64 %165, 0
  br i1 %201, label %202, label %232

202:                                              ; preds = %191
  %203 = getelementptr inbounds nuw i8, ptr %162, i64 8608
  %204 = load ptr, ptr %203, align 32, !tbaa !72
  %205 = getelementptr double, ptr %204, i64 %6
  %206 = getelementptr double, ptr %200, i64 %165
  %207 = getelementptr inbounds nuw i8, ptr %162, i64 8616
  %208 = load ptr, ptr %207, align 8, !tbaa !47
  %209 = getelementptr double, ptr %208, i64 %6
  %210 = shl i64 %165, 4
  %211 = getelementptr i8, ptr %200, i64 %210
  %212 = getelementptr inbounds nuw i8, ptr %162, i64 8624
  %213 = load ptr, ptr %212, align 16, !tbaa !139
  %214 = getelementptr double, ptr %213, i64 %6
  %215 = and i64 %165, 1
  %216 = icmp eq i64 %165, 1
  br i1 %216, label %219, label %217

217:                                              ; preds = %202
  %218 = and i64 %165, 9223372036854775806
  br label %247

219:                                              ; preds = %247, %202
  %220 = phi i64 [ 0, %202 ], [ %269, %247 ]
  %221 = icmp eq i64 %215, 0
  br i1 %221, label %232, label %222

222:                                              ; preds = %219
  %223 = getelementptr inbounds nuw double, ptr %200, i64 %220
  %224 = load double, ptr %223, align 8, !tbaa !41
  %225 = getelementptr <8 x double>, ptr %205, i64 %220
  store double %224, ptr %225, align 8, !tbaa !41
  %226 = getelementptr double, ptr %206, i64 %220
  %227 = load double, ptr %226, align 8, !tbaa !41
  %228 = getelementptr <8 x double>, ptr %209, i64 %220
  store double %227, ptr %228, align 8, !tbaa !41
  %229 = getelementptr double, ptr %211, i64 %220
  %230 = load double, ptr %229, align 8, !tbaa !41
  %231 = getelementptr <8 x double>, ptr %214, i64 %220
  store double %230, ptr %231, align 8, !tbaa !41
  br label %232

232:                                              ; preds = %222, %219, %191
  %233 = getelementptr inbounds nuw i8, ptr %162, i64 960
  %234 = getelementptr inbounds double, ptr %233, i64 %6
  %235 = load double, ptr %234, align 8, !tbaa !41
  %236 = load double, ptr %174, align 8, !tbaa !41
  %237 = icmp sgt i64 %197, 0
  br i1 %237, label %238, label %284

238:                                              ; preds = %232
  %239 = getelementptr double, ptr %200, i64 %194
  %240 = getelementptr inbounds nuw i8, ptr %162, i64 8632
  %241 = load ptr, ptr %240, align 8, !tbaa !36
  %242 = getelementptr double, ptr %241, i64 %6
  %243 = and i64 %197, 3
  %244 = icmp ult i64 %197, 4
  br i1 %244, label %272, label %245

245:                                              ; preds = %238
  %246 = and i64 %197, 9223372036854775804
  br label %293

247:                                              ; preds = %247, %217
  %248 = phi i64 [ 0, %217 ], [ %269, %247 ]
  %249 = phi i64 [ 0, %217 ], [ %270, %247 ]
  %250 = getelementptr inbounds nuw double, ptr %200, i64 %248
  %251 = load double, ptr %250, align 8, !tbaa !41
  %252 = getelementptr <8 x double>, ptr %205, i64 %248
  store double %251, ptr %252, align 8, !tbaa !41
  %253 = getelementptr double, ptr %206, i64 %248
  %254 = load double, ptr %253, align 8, !tbaa !41
  %255 = getelementptr <8 x double>, ptr %209, i64 %248
  store double %254, ptr %255, align 8, !tbaa !41
  %256 = getelementptr double, ptr %211, i64 %248
  %257 = load double, ptr %256, align 8, !tbaa !41
  %258 = getelementptr <8 x double>, ptr %214, i64 %248
  store double %257, ptr %258, align 8, !tbaa !41
  %259 = or disjoint i64 %248, 1
  %260 = getelementptr inbounds nuw double, ptr %200, i64 %259
  %261 = load double, ptr %260, align 8, !tbaa !41
  %262 = getelementptr <8 x double>, ptr %205, i64 %259
  store double %261, ptr %262, align 8, !tbaa !41
  %263 = getelementptr double, ptr %206, i64 %259
  %264 = load double, ptr %263, align 8, !tbaa !41
  %265 = getelementptr <8 x double>, ptr %209, i64 %259
  store double %264, ptr %265, align 8, !tbaa !41
  %266 = getelementptr double, ptr %211, i64 %259
  %267 = load double, ptr %266, align 8, !tbaa !41
  %268 = getelementptr <8 x double>, ptr %214, i64 %259
  store double %267, ptr %268, align 8, !tbaa !41
  %269 = add nuw nsw i64 %248, 2
  %270 = add i64 %249, 2
  %271 = icmp eq i64 %270, %218
  br i1 %271, label %219, label %247, !llvm.loop !169

272:                                              ; preds = %293, %238
  %273 = phi i64 [ 0, %238 ], [ %311, %293 ]
  %274 = icmp eq i64 %243, 0
  br i1 %274, label %284, label %275

275:                                              ; preds = %272, %275
  %276 = phi i64 [ %281, %275 ], [ %273, %272 ]
  %277 = phi i64 [ %282, %275 ], [ 0, %272 ]
  %278 = getelementptr double, ptr %239, i64 %276
  %279 = load double, ptr %278, align 8, !tbaa !41
  %280 = getelementptr <8 x double>, ptr %242, i64 %276
  store double %279, ptr %280, align 8, !tbaa !41
  %281 = add nuw nsw i64 %276, 1
  %282 = add i64 %277, 1
  %283 = icmp eq i64 %282, %243
  br i1 %283, label %284, label %275, !llvm.loop !170

284:                                              ; preds = %272, %275, %232
  %285 = icmp ne i64 %171, 0
  %286 = icmp sgt i64 %165, -1
  %287 = select i1 %285, i1 %286, i1 false
  br i1 %287, label %288, label %314

288:                                              ; preds = %284
  %289 = fdiv double 1.000000e+00, %236
  %290 = getelementptr inbounds nuw i8, ptr %162, i64 8632
  %291 = load ptr, ptr %290, align 8, !tbaa !36
  %292 = getelementptr double, ptr %291, i64 %6
  br label %450

293:                                              ; preds = %293, %245
  %294 = phi i64 [ 0, %245 ], [ %311, %293 ]
  %295 = phi i64 [ 0, %245 ], [ %312, %293 ]
  %296 = getelementptr double, ptr %239, i64 %294
  %297 = load double, ptr %296, align 8, !tbaa !41
  %298 = getelementptr <8 x double>, ptr %242, i64 %294
  store double %297, ptr %298, align 8, !tbaa !41
  %299 = or disjoint i64 %294, 1
  %300 = getelementptr double, ptr %239, i64 %299
  %301 = load double, ptr %300, align 8, !tbaa !41
  %302 = getelementptr <8 x double>, ptr %242, i64 %299
  store double %301, ptr %302, align 8, !tbaa !41
  %303 = or disjoint i64 %294, 2
  %304 = getelementptr double, ptr %239, i64 %303
  %305 = load double, ptr %304, align 8, !tbaa !41
  %306 = getelementptr <8 x double>, ptr %242, i64 %303
  store double %305, ptr %306, align 8, !tbaa !41
  %307 = or disjoint i64 %294, 3
  %308 = getelementptr double, ptr %239, i64 %307
  %309 = load double, ptr %308, align 8, !tbaa !41
  %310 = getelementptr <8 x double>, ptr %242, i64 %307
  store double %309, ptr %310, align 8, !tbaa !41
  %311 = add nuw nsw i64 %294, 4
  %312 = add i64 %295, 4
  %313 = icmp eq i64 %312, %246
  br i1 %313, label %272, label %293, !llvm.loop !171

314:                                              ; preds = %450, %284
  %315 = getelementptr inbounds nuw i8, ptr %162, i64 2560
  %316 = getelementptr inbounds double, ptr %315, i64 %6
  %317 = load double, ptr %316, align 8, !tbaa !41
  %318 = getelementptr inbounds nuw i8, ptr %162, i64 2624
  %319 = getelementptr inbounds double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !41
  %321 = getelementptr inbounds nuw i8, ptr %162, i64 2688
  %322 = getelementptr inbounds double, ptr %321, i64 %6
  %323 = load double, ptr %322, align 8, !tbaa !41
  %324 = getelementptr inbounds nuw i8, ptr %162, i64 2752
  %325 = getelementptr inbounds double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !41
  %327 = tail call double @llvm.fmuladd.f64(double %236, double %326, double %323)
  %328 = tail call double @llvm.fmuladd.f64(double %236, double %327, double %320)
  %329 = tail call double @llvm.fmuladd.f64(double %236, double %328, double %317)
  %330 = getelementptr inbounds nuw i8, ptr %162, i64 832
  %331 = getelementptr inbounds double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !41
  %333 = getelementptr inbounds nuw i8, ptr %162, i64 1408
  %334 = getelementptr inbounds double, ptr %333, i64 %6
  %335 = load double, ptr %334, align 8, !tbaa !41
  %336 = getelementptr inbounds nuw i8, ptr %162, i64 1536
  %337 = getelementptr inbounds double, ptr %336, i64 %6
  %338 = load double, ptr %337, align 8, !tbaa !41
  %339 = fsub double %335, %338
  %340 = fmul double %332, %339
  %341 = getelementptr inbounds nuw i8, ptr %162, i64 2944
  %342 = getelementptr inbounds nuw i8, ptr %162, i64 3840
  %343 = getelementptr inbounds nuw i8, ptr %162, i64 4736
  %344 = getelementptr inbounds nuw i8, ptr %162, i64 896
  %345 = getelementptr inbounds double, ptr %344, i64 %6
  %346 = getelementptr inbounds nuw i8, ptr %162, i64 1024
  %347 = getelementptr inbounds double, ptr %346, i64 %6
  %348 = getelementptr double, ptr %341, i64 %6
  %349 = getelementptr i8, ptr %348, i64 320
  store double 0.000000e+00, ptr %349, align 8, !tbaa !41
  %350 = getelementptr i8, ptr %348, i64 384
  store double 0.000000e+00, ptr %350, align 8, !tbaa !41
  %351 = getelementptr i8, ptr %348, i64 448
  store double 0.000000e+00, ptr %351, align 8, !tbaa !41
  %352 = getelementptr i8, ptr %348, i64 512
  store double 0.000000e+00, ptr %352, align 8, !tbaa !41
  %353 = getelementptr i8, ptr %348, i64 576
  store double 0.000000e+00, ptr %353, align 8, !tbaa !41
  %354 = getelementptr i8, ptr %348, i64 704
  store double 0.000000e+00, ptr %354, align 8, !tbaa !41
  %355 = getelementptr i8, ptr %348, i64 768
  store double 0.000000e+00, ptr %355, align 8, !tbaa !41
  store double %236, ptr %348, align 8, !tbaa !41
  %356 = getelementptr inbounds nuw i8, ptr %162, i64 3008
  %357 = getelementptr inbounds double, ptr %356, i64 %6
  store double %335, ptr %357, align 8, !tbaa !41
  %358 = load double, ptr %345, align 8, !tbaa !41
  %359 = getelementptr inbounds nuw i8, ptr %162, i64 3072
  %360 = getelementptr inbounds double, ptr %359, i64 %6
  store double %358, ptr %360, align 8, !tbaa !41
  %361 = getelementptr inbounds nuw i8, ptr %162, i64 3136
  %362 = getelementptr inbounds double, ptr %361, i64 %6
  store double %340, ptr %362, align 8, !tbaa !41
  %363 = getelementptr inbounds nuw i8, ptr %162, i64 3584
  %364 = getelementptr inbounds double, ptr %363, i64 %6
  store double %235, ptr %364, align 8, !tbaa !41
  %365 = load double, ptr %347, align 8, !tbaa !41
  %366 = getelementptr inbounds nuw i8, ptr %162, i64 3200
  %367 = getelementptr inbounds double, ptr %366, i64 %6
  store double %365, ptr %367, align 8, !tbaa !41
  %368 = getelementptr inbounds nuw i8, ptr %162, i64 3776
  %369 = getelementptr inbounds double, ptr %368, i64 %6
  store double %329, ptr %369, align 8, !tbaa !41
  %370 = getelementptr double, ptr %342, i64 %6
  %371 = getelementptr i8, ptr %370, i64 320
  store double 0.000000e+00, ptr %371, align 8, !tbaa !41
  %372 = getelementptr i8, ptr %370, i64 384
  store double 0.000000e+00, ptr %372, align 8, !tbaa !41
  %373 = getelementptr i8, ptr %370, i64 448
  store double 0.000000e+00, ptr %373, align 8, !tbaa !41
  %374 = getelementptr i8, ptr %370, i64 512
  store double 0.000000e+00, ptr %374, align 8, !tbaa !41
  %375 = getelementptr i8, ptr %370, i64 576
  store double 0.000000e+00, ptr %375, align 8, !tbaa !41
  %376 = getelementptr i8, ptr %370, i64 704
  store double 0.000000e+00, ptr %376, align 8, !tbaa !41
  %377 = getelementptr i8, ptr %370, i64 768
  store double 0.000000e+00, ptr %377, align 8, !tbaa !41
  store double %236, ptr %370, align 8, !tbaa !41
  %378 = getelementptr inbounds nuw i8, ptr %162, i64 3904
  %379 = getelementptr inbounds double, ptr %378, i64 %6
  store double %335, ptr %379, align 8, !tbaa !41
  %380 = getelementptr inbounds nuw i8, ptr %162, i64 3968
  %381 = getelementptr inbounds double, ptr %380, i64 %6
  store double %358, ptr %381, align 8, !tbaa !41
  %382 = getelementptr inbounds nuw i8, ptr %162, i64 4032
  %383 = getelementptr inbounds double, ptr %382, i64 %6
  store double %340, ptr %383, align 8, !tbaa !41
  %384 = getelementptr inbounds nuw i8, ptr %162, i64 4480
  %385 = getelementptr inbounds double, ptr %384, i64 %6
  store double %235, ptr %385, align 8, !tbaa !41
  %386 = getelementptr inbounds nuw i8, ptr %162, i64 4096
  %387 = getelementptr inbounds double, ptr %386, i64 %6
  store double %365, ptr %387, align 8, !tbaa !41
  %388 = getelementptr inbounds nuw i8, ptr %162, i64 4672
  %389 = getelementptr inbounds double, ptr %388, i64 %6
  store double %329, ptr %389, align 8, !tbaa !41
  %390 = getelementptr double, ptr %343, i64 %6
  %391 = getelementptr i8, ptr %390, i64 320
  store double 0.000000e+00, ptr %391, align 8, !tbaa !41
  %392 = getelementptr i8, ptr %390, i64 384
  store double 0.000000e+00, ptr %392, align 8, !tbaa !41
  %393 = getelementptr i8, ptr %390, i64 448
  store double 0.000000e+00, ptr %393, align 8, !tbaa !41
  %394 = getelementptr i8, ptr %390, i64 512
  store double 0.000000e+00, ptr %394, align 8, !tbaa !41
  %395 = getelementptr i8, ptr %390, i64 576
  store double 0.000000e+00, ptr %395, align 8, !tbaa !41
  %396 = getelementptr i8, ptr %390, i64 704
  store double 0.000000e+00, ptr %396, align 8, !tbaa !41
  %397 = getelementptr i8, ptr %390, i64 768
  store double 0.000000e+00, ptr %397, align 8, !tbaa !41
  store double %236, ptr %390, align 8, !tbaa !41
  %398 = load double, ptr %334, align 8, !tbaa !41
  %399 = getelementptr inbounds nuw i8, ptr %162, i64 4800
  %400 = getelementptr inbounds double, ptr %399, i64 %6
  store double %398, ptr %400, align 8, !tbaa !41
  %401 = getelementptr inbounds nuw i8, ptr %162, i64 4864
  %402 = getelementptr inbounds double, ptr %401, i64 %6
  store double %358, ptr %402, align 8, !tbaa !41
  %403 = getelementptr inbounds nuw i8, ptr %162, i64 4928
  %404 = getelementptr inbounds double, ptr %403, i64 %6
  store double %340, ptr %404, align 8, !tbaa !41
  %405 = getelementptr inbounds nuw i8, ptr %162, i64 5376
  %406 = getelementptr inbounds double, ptr %405, i64 %6
  store double %235, ptr %406, align 8, !tbaa !41
  %407 = getelementptr inbounds nuw i8, ptr %162, i64 4992
  %408 = getelementptr inbounds double, ptr %407, i64 %6
  store double %365, ptr %408, align 8, !tbaa !41
  %409 = getelementptr inbounds nuw i8, ptr %162, i64 5568
  %410 = getelementptr inbounds double, ptr %409, i64 %6
  store double %329, ptr %410, align 8, !tbaa !41
  %411 = load double, ptr %345, align 8, !tbaa !41
  %412 = fadd double %340, %411
  %413 = getelementptr inbounds nuw i8, ptr %162, i64 1600
  %414 = getelementptr inbounds double, ptr %413, i64 %6
  store double %412, ptr %414, align 8, !tbaa !41
  %415 = fcmp ogt double %411, 0.000000e+00
  %416 = fdiv double 1.000000e+00, %411
  %417 = select i1 %415, double %416, double 0.000000e+00
  %418 = getelementptr inbounds nuw i8, ptr %162, i64 7744
  %419 = getelementptr inbounds double, ptr %418, i64 %6
  store double %417, ptr %419, align 8, !tbaa !41
  %420 = getelementptr inbounds nuw i8, ptr %162, i64 704
  %421 = getelementptr inbounds double, ptr %420, i64 %6
  %422 = load double, ptr %421, align 8, !tbaa !41
  %423 = fdiv double 1.000000e+00, %422
  %424 = getelementptr inbounds nuw i8, ptr %162, i64 7808
  %425 = getelementptr inbounds double, ptr %424, i64 %6
  store double %423, ptr %425, align 8, !tbaa !41
  %426 = getelementptr inbounds nuw i8, ptr %162, i64 5952
  %427 = getelementptr inbounds nuw i8, ptr %162, i64 6784
  %428 = getelementptr inbounds nuw i8, ptr %162, i64 6848
  %429 = getelementptr inbounds nuw i8, ptr %162, i64 7616
  %430 = getelementptr inbounds double, ptr %426, i64 %6
  store double %235, ptr %430, align 8, !tbaa !41
  %431 = getelementptr inbounds double, ptr %427, i64 %6
  store double %235, ptr %431, align 8, !tbaa !41
  %432 = getelementptr inbounds double, ptr %428, i64 %6
  store double %235, ptr %432, align 8, !tbaa !41
  %433 = getelementptr inbounds double, ptr %429, i64 %6
  store double %235, ptr %433, align 8, !tbaa !41
  %434 = getelementptr inbounds nuw i8, ptr %162, i64 6016
  %435 = getelementptr inbounds nuw i8, ptr %162, i64 6080
  %436 = getelementptr inbounds nuw i8, ptr %162, i64 7680
  %437 = getelementptr inbounds nuw i8, ptr %162, i64 7552
  %438 = getelementptr inbounds nuw i8, ptr %162, i64 7232
  %439 = getelementptr inbounds double, ptr %434, i64 %6
  store double 0.000000e+00, ptr %439, align 8, !tbaa !41
  %440 = getelementptr inbounds double, ptr %435, i64 %6
  store double 0.000000e+00, ptr %440, align 8, !tbaa !41
  %441 = getelementptr inbounds double, ptr %436, i64 %6
  store double 0.000000e+00, ptr %441, align 8, !tbaa !41
  %442 = getelementptr inbounds double, ptr %437, i64 %6
  store double 0.000000e+00, ptr %442, align 8, !tbaa !41
  %443 = getelementptr inbounds double, ptr %438, i64 %6
  store double 0.000000e+00, ptr %443, align 8, !tbaa !41
  %444 = getelementptr inbounds nuw i8, ptr %162, i64 8320
  %445 = getelementptr inbounds i64, ptr %444, i64 %6
  store i64 0, ptr %445, align 8, !tbaa !30
  %446 = getelementptr inbounds nuw i8, ptr %162, i64 8384
  %447 = getelementptr inbounds i64, ptr %446, i64 %6
  store i64 -1, ptr %447, align 8, !tbaa !30
  %448 = getelementptr inbounds nuw i8, ptr %162, i64 8448
  %449 = getelementptr inbounds i64, ptr %448, i64 %6
  store i64 0, ptr %449, align 8, !tbaa !30
  br i1 %201, label %472, label %488

450:                                              ; preds = %288, %450
  %451 = phi i64 [ 0, %288 ], [ %470, %450 ]
  %452 = icmp slt i64 %451, %171
  %453 = select i1 %452, double %289, double 1.000000e+00
  %454 = shl i64 %451, 8
  %455 = getelementptr i8, ptr %292, i64 %454
  %456 = load double, ptr %455, align 8, !tbaa !41
  %457 = fmul double %453, %456
  store double %457, ptr %455, align 8, !tbaa !41
  %458 = fdiv double %453, %236
  %459 = getelementptr i8, ptr %455, i64 64
  %460 = load double, ptr %459, align 8, !tbaa !41
  %461 = fmul double %458, %460
  store double %461, ptr %459, align 8, !tbaa !41
  %462 = fdiv double %458, %236
  %463 = getelementptr i8, ptr %455, i64 128
  %464 = load double, ptr %463, align 8, !tbaa !41
  %465 = fmul double %462, %464
  store double %465, ptr %463, align 8, !tbaa !41
  %466 = fdiv double %462, %236
  %467 = getelementptr i8, ptr %455, i64 192
  %468 = load double, ptr %467, align 8, !tbaa !41
  %469 = fmul double %466, %468
  store double %469, ptr %467, align 8, !tbaa !41
  %470 = add nuw nsw i64 %451, 1
  %471 = icmp slt i64 %451, %165
  br i1 %471, label %450, label %314, !llvm.loop !172

472:                                              ; preds = %314
  %473 = getelementptr inbounds nuw i8, ptr %162, i64 8536
  %474 = load ptr, ptr %473, align 8, !tbaa !56
  %475 = getelementptr double, ptr %474, i64 %6
  %476 = getelementptr inbounds nuw i8, ptr %162, i64 8528
  %477 = load ptr, ptr %476, align 16, !tbaa !45
  %478 = getelementptr double, ptr %477, i64 %6
  %479 = getelementptr inbounds nuw i8, ptr %162, i64 8520
  %480 = load ptr, ptr %479, align 8, !tbaa !57
  %481 = getelementptr double, ptr %480, i64 %6
  %482 = getelementptr inbounds nuw i8, ptr %162, i64 8560
  %483 = load ptr, ptr %482, align 16, !tbaa !46
  %484 = getelementptr double, ptr %483, i64 %6
  %485 = getelementptr inbounds nuw i8, ptr %162, i64 8552
  %486 = load ptr, ptr %485, align 8, !tbaa !67
  %487 = getelementptr double, ptr %486, i64 %6
  br label %501

488:                                              ; preds = %501, %314
  %489 = icmp slt i64 %166, 0
  br i1 %489, label %562, label %490

490:                                              ; preds = %488
  %491 = getelementptr inbounds nuw i8, ptr %162, i64 8704
  %492 = load ptr, ptr %491, align 64, !tbaa !59
  %493 = getelementptr double, ptr %492, i64 %6
  %494 = getelementptr inbounds nuw i8, ptr %162, i64 8696
  %495 = load ptr, ptr %494, align 8, !tbaa !48
  %496 = getelementptr double, ptr %495, i64 %6
  %497 = icmp eq i64 %166, 0
  br i1 %497, label %510, label %498

498:                                              ; preds = %490
  %499 = add nuw i64 %166, 1
  %500 = and i64 %499, -2
  br label %535

501:                                              ; preds = %472, %501
  %502 = phi i64 [ 0, %472 ], [ %508, %501 ]
  %503 = getelementptr <8 x double>, ptr %475, i64 %502
  store double %235, ptr %503, align 8, !tbaa !41
  %504 = getelementptr <8 x double>, ptr %478, i64 %502
  store double %235, ptr %504, align 8, !tbaa !41
  %505 = getelementptr <8 x double>, ptr %481, i64 %502
  store double %235, ptr %505, align 8, !tbaa !41
  %506 = getelementptr <8 x double>, ptr %484, i64 %502
  store double 1.000000e+00, ptr %506, align 8, !tbaa !41
  %507 = getelementptr <8 x double>, ptr %487, i64 %502
  store double 1.000000e+00, ptr %507, align 8, !tbaa !41
  %508 = add nuw nsw i64 %502, 1
  %509 = icmp eq i64 %508, %165
  br i1 %509, label %488, label %501, !llvm.loop !173

510:                                              ; preds = %549, %490
  %511 = phi i64 [ 0, %490 ], [ %553, %549 ]
  %512 = and i64 %166, 1
  %513 = icmp eq i64 %512, 0
  br i1 %513, label %514, label %522

514:                                              ; preds = %510
  %515 = icmp slt i64 %511, %166
  br i1 %515, label %518, label %516

516:                                              ; preds = %514
  %517 = load double, ptr %334, align 8, !tbaa !41
  br label %518

518:                                              ; preds = %516, %514
  %519 = phi double [ %517, %516 ], [ %329, %514 ]
  %520 = getelementptr <8 x double>, ptr %493, i64 %511
  store double %519, ptr %520, align 8, !tbaa !41
  %521 = getelementptr <8 x double>, ptr %496, i64 %511
  store double %519, ptr %521, align 8, !tbaa !41
  br label %522

522:                                              ; preds = %510, %518
  %523 = icmp eq i64 %166, 0
  br i1 %523, label %562, label %524

524:                                              ; preds = %522
  %525 = getelementptr inbounds nuw i8, ptr %162, i64 8656
  %526 = load ptr, ptr %525, align 16, !tbaa !61
  %527 = getelementptr double, ptr %526, i64 %6
  %528 = getelementptr inbounds nuw i8, ptr %162, i64 8648
  %529 = load ptr, ptr %528, align 8, !tbaa !49
  %530 = getelementptr double, ptr %529, i64 %6
  %531 = and i64 %166, 1
  %532 = icmp eq i64 %166, 1
  br i1 %532, label %556, label %533

533:                                              ; preds = %524
  %534 = and i64 %166, 9223372036854775806
  br label %566

535:                                              ; preds = %549, %498
  %536 = phi i64 [ 0, %498 ], [ %553, %549 ]
  %537 = phi i64 [ 0, %498 ], [ %554, %549 ]
  %538 = icmp slt i64 %536, %166
  br i1 %538, label %541, label %539

539:                                              ; preds = %535
  %540 = load double, ptr %334, align 8, !tbaa !41
  br label %541

541:                                              ; preds = %535, %539
  %542 = phi double [ %540, %539 ], [ %329, %535 ]
  %543 = getelementptr <8 x double>, ptr %493, i64 %536
  store double %542, ptr %543, align 8, !tbaa !41
  %544 = getelementptr <8 x double>, ptr %496, i64 %536
  store double %542, ptr %544, align 8, !tbaa !41
  %545 = or disjoint i64 %536, 1
  %546 = icmp slt i64 %545, %166
  br i1 %546, label %549, label %547

547:                                              ; preds = %541
  %548 = load double, ptr %334, align 8, !tbaa !41
  br label %549

549:                                              ; preds = %547, %541
  %550 = phi double [ %548, %547 ], [ %329, %541 ]
  %551 = getelementptr <8 x double>, ptr %493, i64 %545
  store double %550, ptr %551, align 8, !tbaa !41
  %552 = getelementptr <8 x double>, ptr %496, i64 %545
  store double %550, ptr %552, align 8, !tbaa !41
  %553 = add nuw i64 %536, 2
  %554 = add i64 %537, 2
  %555 = icmp eq i64 %554, %500
  br i1 %555, label %510, label %535, !llvm.loop !174

556:                                              ; preds = %566, %524
  %557 = phi i64 [ 0, %524 ], [ %574, %566 ]
  %558 = icmp eq i64 %531, 0
  br i1 %558, label %562, label %559

559:                                              ; preds = %556
  %560 = getelementptr <8 x double>, ptr %527, i64 %557
  store double %235, ptr %560, align 8, !tbaa !41
  %561 = getelementptr <8 x double>, ptr %530, i64 %557
  store double %235, ptr %561, align 8, !tbaa !41
  br label %562

562:                                              ; preds = %559, %556, %488, %522
  %563 = add nuw nsw i64 %161, 1
  %564 = load i64, ptr %27, align 8, !tbaa !20
  %565 = icmp slt i64 %563, %564
  br i1 %565, label %160, label %61, !llvm.loop !175

566:                                              ; preds = %566, %533
  %567 = phi i64 [ 0, %533 ], [ %574, %566 ]
  %568 = phi i64 [ 0, %533 ], [ %575, %566 ]
  %569 = getelementptr <8 x double>, ptr %527, i64 %567
  store double %235, ptr %569, align 8, !tbaa !41
  %570 = getelementptr <8 x double>, ptr %530, i64 %567
  store double %235, ptr %570, align 8, !tbaa !41
  %571 = or disjoint i64 %567, 1
  %572 = getelementptr <8 x double>, ptr %527, i64 %571
  store double %235, ptr %572, align 8, !tbaa !41
  %573 = getelementptr <8 x double>, ptr %530, i64 %571
  store double %235, ptr %573, align 8, !tbaa !41
  %574 = add nuw nsw i64 %567, 2
  %575 = add i64 %568, 2
  %576 = icmp eq i64 %575, %534
  br i1 %576, label %556, label %566, !llvm.loop !176
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 15) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !177
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !178
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %10 = sext i32 %2 to i64
  %11 = getelementptr inbounds [8 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %18 = getelementptr inbounds double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !41
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !179
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !41
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !41
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
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !41
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !41
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 6080
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !41
  br label %284

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !41
  %82 = load double, ptr %35, align 8, !tbaa !41
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !41
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !41
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !41
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !41
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !41
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !41
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !41
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !41
  %99 = load double, ptr %80, align 8, !tbaa !41
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !41
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %215

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %152

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %214 = getelementptr inbounds double, ptr %213, i64 %10
  store double %212, ptr %214, align 8, !tbaa !41
  br label %215

215:                                              ; preds = %79, %152
  %216 = fcmp une double %99, %103
  br i1 %216, label %217, label %256

217:                                              ; preds = %215
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %219 = getelementptr inbounds double, ptr %218, i64 %10
  store double %99, ptr %219, align 8, !tbaa !41
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %221 = getelementptr inbounds double, ptr %220, i64 %10
  store double %82, ptr %221, align 8, !tbaa !41
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %223 = getelementptr inbounds double, ptr %222, i64 %10
  %224 = load double, ptr %223, align 8, !tbaa !41
  %225 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %226 = getelementptr inbounds double, ptr %225, i64 %10
  store double %224, ptr %226, align 8, !tbaa !41
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %228 = getelementptr inbounds i64, ptr %227, i64 %10
  store i64 -1, ptr %228, align 8, !tbaa !30
  %229 = fcmp oeq double %99, 0.000000e+00
  %230 = fcmp oeq double %99, 3.000000e+00
  %231 = or i1 %229, %230
  br i1 %231, label %232, label %240

232:                                              ; preds = %217
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %234 = getelementptr inbounds double, ptr %233, i64 %10
  store double %30, ptr %234, align 8, !tbaa !41
  store double %30, ptr %26, align 8, !tbaa !41
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %236 = getelementptr inbounds double, ptr %235, i64 %10
  %237 = load double, ptr %236, align 8, !tbaa !41
  %238 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %239 = getelementptr inbounds double, ptr %238, i64 %10
  store double %237, ptr %239, align 8, !tbaa !41
  br label %240

240:                                              ; preds = %217, %232
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %242 = load i64, ptr %241, align 8, !tbaa !20
  %243 = icmp sgt i64 %242, 0
  br i1 %243, label %244, label %256

244:                                              ; preds = %240
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
  %259 = getelementptr inbounds nuw i8, ptr %0, i64 2816
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
  %271 = getelementptr inbounds nuw i8, ptr %0, i64 5568
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
  %281 = getelementptr inbounds nuw i8, ptr %0, i64 5696
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
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 2304, !6, i64 2312, !6, i64 2320, !6, i64 2328, !6, i64 2336, !6, i64 2344, !7, i64 2368, !7, i64 2432, !7, i64 2816, !7, i64 3200, !7, i64 3584, !7, i64 3648, !7, i64 3712, !7, i64 3776, !7, i64 3840, !7, i64 3904, !7, i64 3968, !7, i64 4032, !7, i64 4096, !7, i64 4160, !7, i64 4224, !7, i64 4288, !7, i64 4352, !7, i64 4416, !7, i64 4480, !7, i64 4544, !7, i64 4608, !7, i64 4672, !7, i64 4736, !7, i64 4800, !7, i64 4864, !7, i64 4928, !7, i64 4992, !7, i64 5056, !7, i64 5120, !7, i64 5184, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 6016, !7, i64 6080, !11, i64 6144, !19, i64 6152}
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
!28 = !{!17, !19, i64 6152}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 8512}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 2944, !7, i64 3840, !7, i64 4736, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !7, i64 7552, !7, i64 7616, !7, i64 7680, !7, i64 7744, !7, i64 7808, !34, i64 7872, !7, i64 8256, !7, i64 8320, !7, i64 8384, !7, i64 8448, !6, i64 8512, !11, i64 8520, !11, i64 8528, !11, i64 8536, !11, i64 8544, !11, i64 8552, !11, i64 8560, !11, i64 8568, !11, i64 8576, !11, i64 8584, !11, i64 8592, !11, i64 8600, !11, i64 8608, !11, i64 8616, !11, i64 8624, !11, i64 8632, !11, i64 8640, !11, i64 8648, !11, i64 8656, !11, i64 8664, !11, i64 8672, !11, i64 8680, !11, i64 8688, !11, i64 8696, !11, i64 8704}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!34 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320}
!35 = !{!11, !11, i64 0}
!36 = !{!32, !11, i64 8632}
!37 = !{!17, !11, i64 6144}
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
