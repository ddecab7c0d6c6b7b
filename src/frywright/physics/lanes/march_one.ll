; Made by scripts/lanes.py from sources of sha256 69ce26ae16fd7a35379d8efc9e6fb515de9795eacdbd9ef44af629a8ad650b5d.
%struct.Piece = type <{ %struct.PieceGiven, [12 x <8 x double>], [12 x <8 x double>], [12 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [56 x i8] }>
%struct.PieceGiven = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define range(i64 16128, 16065) i64 @work_space_one(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
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
  %13 = add i64 %12, 16128
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
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 14016
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
  %55 = getelementptr inbounds nuw i8, ptr %1, i64 13760
  store i64 %54, ptr %55, align 64, !tbaa !31
  %56 = getelementptr inbounds nuw i8, ptr %1, i64 13768
  %57 = getelementptr inbounds nuw i8, ptr %1, i64 13776
  %58 = getelementptr inbounds nuw i8, ptr %1, i64 13784
  %59 = getelementptr inbounds nuw i8, ptr %1, i64 13792
  %60 = getelementptr inbounds nuw i8, ptr %1, i64 13800
  %61 = getelementptr inbounds nuw i8, ptr %1, i64 13808
  %62 = getelementptr inbounds nuw i8, ptr %1, i64 13816
  %63 = getelementptr inbounds nuw i8, ptr %1, i64 13824
  %64 = getelementptr inbounds nuw i8, ptr %1, i64 13832
  %65 = getelementptr inbounds nuw i8, ptr %1, i64 13840
  %66 = getelementptr inbounds nuw i8, ptr %1, i64 13848
  %67 = getelementptr inbounds nuw i8, ptr %1, i64 13856
  %68 = getelementptr inbounds nuw i8, ptr %1, i64 13864
  %69 = getelementptr inbounds nuw i8, ptr %1, i64 13872
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
  %70 = getelementptr inbounds nuw i8, ptr %1, i64 13880
  store ptr %52, ptr %70, align 8, !tbaa !35
  %71 = icmp eq i64 %54, 0
  %72 = select i1 %71, i64 0, i64 2
  %73 = shl i64 %38, %72
  %74 = getelementptr inbounds <8 x double>, ptr %52, i64 %73
  %75 = getelementptr inbounds nuw i8, ptr %1, i64 13888
  %76 = getelementptr inbounds nuw i8, ptr %1, i64 13896
  %77 = getelementptr inbounds nuw i8, ptr %1, i64 13904
  %78 = getelementptr inbounds nuw i8, ptr %1, i64 13912
  %79 = getelementptr inbounds nuw i8, ptr %1, i64 13920
  %80 = getelementptr inbounds nuw i8, ptr %1, i64 13928
  %81 = getelementptr inbounds nuw i8, ptr %1, i64 13936
  %82 = getelementptr inbounds nuw i8, ptr %1, i64 13944
  %83 = getelementptr inbounds nuw i8, ptr %1, i64 13952
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
  %102 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  store ptr %101, ptr %102, align 64, !tbaa !36
  %103 = load i64, ptr %0, align 8, !tbaa !37
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
  %113 = load i64, ptr %111, align 8, !tbaa !38
  %114 = load i64, ptr %112, align 8, !tbaa !39
  %115 = sub nsw i64 %113, %114
  %116 = icmp slt i64 %115, 16
  br i1 %116, label %5119, label %117

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
  %167 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %169 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %170 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 1408
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
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 2336
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
  %280 = load double, ptr %118, align 8, !tbaa !40
  %281 = fcmp oeq double %280, 0.000000e+00
  br i1 %281, label %520, label %282

282:                                              ; preds = %279
  %283 = load i64, ptr %119, align 16, !tbaa !21
  %284 = load i64, ptr %120, align 8, !tbaa !22
  %285 = load i64, ptr %121, align 8, !tbaa !30
  %286 = load ptr, ptr %122, align 8, !tbaa !41
  %287 = mul nsw i64 %285, 40
  %288 = getelementptr inbounds i8, ptr %286, i64 %287
  %289 = load double, ptr %123, align 8, !tbaa !40
  store double %289, ptr %288, align 8, !tbaa !40
  %290 = load double, ptr %124, align 8, !tbaa !40
  %291 = getelementptr inbounds nuw i8, ptr %288, i64 8
  store double %290, ptr %291, align 8, !tbaa !40
  %292 = load double, ptr %125, align 8, !tbaa !40
  %293 = getelementptr inbounds nuw i8, ptr %288, i64 16
  store double %292, ptr %293, align 8, !tbaa !40
  %294 = load double, ptr %126, align 8, !tbaa !40
  %295 = getelementptr inbounds nuw i8, ptr %288, i64 24
  store double %294, ptr %295, align 8, !tbaa !40
  %296 = load double, ptr %127, align 8, !tbaa !40
  %297 = getelementptr inbounds nuw i8, ptr %288, i64 32
  store double %296, ptr %297, align 8, !tbaa !40
  %298 = load i64, ptr %128, align 64, !tbaa !16
  %299 = icmp sgt i64 %298, 0
  br i1 %299, label %300, label %504

300:                                              ; preds = %282
  %301 = load ptr, ptr %129, align 8, !tbaa !28
  %302 = getelementptr inbounds nuw i8, ptr %301, i64 1536
  %303 = getelementptr inbounds nuw i8, ptr %301, i64 4352
  %304 = load ptr, ptr %130, align 8, !tbaa !42
  %305 = mul nsw i64 %298, %285
  %306 = mul i64 %283, 3
  %307 = load ptr, ptr %131, align 8, !tbaa !43
  %308 = icmp sgt i64 %283, 0
  %309 = getelementptr inbounds nuw i8, ptr %301, i64 7568
  %310 = getelementptr inbounds nuw i8, ptr %301, i64 7600
  %311 = getelementptr inbounds nuw i8, ptr %301, i64 7656
  %312 = getelementptr inbounds nuw i8, ptr %301, i64 7552
  %313 = getelementptr inbounds nuw i8, ptr %301, i64 4416
  %314 = getelementptr inbounds nuw i8, ptr %301, i64 384
  %315 = getelementptr inbounds nuw i8, ptr %301, i64 448
  %316 = getelementptr inbounds nuw i8, ptr %301, i64 512
  %317 = getelementptr inbounds nuw i8, ptr %301, i64 640
  %318 = shl i64 %283, 4
  %319 = icmp sgt i64 %284, 0
  %320 = getelementptr inbounds nuw i8, ptr %301, i64 7736
  %321 = getelementptr inbounds nuw i8, ptr %301, i64 768
  %322 = getelementptr inbounds nuw i8, ptr %301, i64 7688
  %323 = getelementptr inbounds nuw i8, ptr %301, i64 960
  %324 = getelementptr inbounds nuw i8, ptr %301, i64 1408
  %325 = getelementptr inbounds nuw i8, ptr %301, i64 4096
  %326 = getelementptr inbounds nuw i8, ptr %301, i64 4160
  %327 = getelementptr inbounds nuw i8, ptr %301, i64 4032
  %328 = getelementptr inbounds nuw i8, ptr %301, i64 3840
  %329 = getelementptr inbounds nuw i8, ptr %301, i64 3904
  %330 = getelementptr inbounds nuw i8, ptr %301, i64 3776
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
  %340 = load double, ptr %339, align 8, !tbaa !40
  %341 = getelementptr inbounds double, ptr %303, i64 %338
  %342 = load double, ptr %341, align 8, !tbaa !40
  %343 = add nsw i64 %336, %305
  %344 = mul i64 %306, %343
  %345 = getelementptr inbounds double, ptr %304, i64 %344
  %346 = mul nsw i64 %343, 40
  %347 = getelementptr inbounds i8, ptr %307, i64 %346
  br i1 %308, label %348, label %358

348:                                              ; preds = %335
  %349 = load ptr, ptr %309, align 16, !tbaa !44
  %350 = load ptr, ptr %310, align 16, !tbaa !45
  %351 = getelementptr double, ptr %350, i64 %338
  %352 = getelementptr double, ptr %345, i64 %283
  %353 = load ptr, ptr %311, align 8, !tbaa !46
  %354 = load i64, ptr %312, align 64, !tbaa !31
  %355 = getelementptr inbounds double, ptr %10, i64 %338
  %356 = getelementptr i8, ptr %345, i64 %318
  %357 = getelementptr inbounds double, ptr %11, i64 %338
  br label %368

358:                                              ; preds = %399, %335
  %359 = phi double [ %342, %335 ], [ %407, %399 ]
  br i1 %319, label %360, label %424

360:                                              ; preds = %358
  %361 = load ptr, ptr %320, align 8, !tbaa !47
  %362 = getelementptr double, ptr %361, i64 %338
  %363 = getelementptr inbounds double, ptr %321, i64 %338
  %364 = load double, ptr %363, align 8, !tbaa !40
  %365 = load ptr, ptr %322, align 8, !tbaa !48
  %366 = getelementptr double, ptr %365, i64 %338
  %367 = load double, ptr %362, align 8, !tbaa !40
  br i1 %332, label %410, label %481

368:                                              ; preds = %399, %348
  %369 = phi double [ %342, %348 ], [ %407, %399 ]
  %370 = phi i64 [ 0, %348 ], [ %408, %399 ]
  %371 = getelementptr inbounds nuw <8 x double>, ptr %349, i64 %370
  %372 = getelementptr inbounds double, ptr %371, i64 %338
  %373 = load double, ptr %372, align 8, !tbaa !40
  %374 = getelementptr inbounds nuw double, ptr %345, i64 %370
  store double %373, ptr %374, align 8, !tbaa !40
  %375 = getelementptr <8 x double>, ptr %351, i64 %370
  %376 = load double, ptr %375, align 8, !tbaa !40
  %377 = getelementptr double, ptr %352, i64 %370
  store double %376, ptr %377, align 8, !tbaa !40
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
  %404 = load double, ptr %355, align 8, !tbaa !40
  %405 = getelementptr double, ptr %356, i64 %370
  store double %404, ptr %405, align 8, !tbaa !40
  %406 = load double, ptr %357, align 8, !tbaa !40
  %407 = fadd double %369, %406
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %408 = add nuw nsw i64 %370, 1
  %409 = icmp eq i64 %408, %283
  br i1 %409, label %358, label %368, !llvm.loop !49

410:                                              ; preds = %481, %360
  %411 = phi double [ poison, %360 ], [ %501, %481 ]
  %412 = phi double [ %367, %360 ], [ %496, %481 ]
  %413 = phi double [ %359, %360 ], [ %501, %481 ]
  %414 = phi i64 [ 0, %360 ], [ %494, %481 ]
  br i1 %334, label %424, label %415

415:                                              ; preds = %410
  %416 = getelementptr <8 x double>, ptr %362, i64 %414
  %417 = getelementptr i8, ptr %416, i64 64
  %418 = load double, ptr %417, align 8, !tbaa !40
  %419 = fsub double %418, %412
  %420 = fmul double %364, %419
  %421 = getelementptr <8 x double>, ptr %366, i64 %414
  %422 = load double, ptr %421, align 8, !tbaa !40
  %423 = tail call double @llvm.fmuladd.f64(double %420, double %422, double %413)
  br label %424

424:                                              ; preds = %415, %410, %358
  %425 = phi double [ %359, %358 ], [ %411, %410 ], [ %423, %415 ]
  %426 = getelementptr inbounds double, ptr %323, i64 %338
  %427 = load double, ptr %426, align 8, !tbaa !40
  %428 = getelementptr inbounds double, ptr %314, i64 %338
  %429 = load double, ptr %428, align 8, !tbaa !40
  %430 = getelementptr inbounds double, ptr %315, i64 %338
  %431 = load double, ptr %430, align 8, !tbaa !40
  %432 = getelementptr inbounds double, ptr %316, i64 %338
  %433 = load double, ptr %432, align 8, !tbaa !40
  %434 = fmul double %427, %433
  %435 = fdiv double %434, 3.000000e+00
  %436 = tail call double @llvm.fmuladd.f64(double %431, double 5.000000e-01, double %435)
  %437 = tail call double @llvm.fmuladd.f64(double %427, double %436, double %429)
  %438 = fmul double %427, %437
  %439 = getelementptr inbounds double, ptr %324, i64 %338
  %440 = load double, ptr %439, align 8, !tbaa !40
  %441 = fsub double %440, %340
  %442 = getelementptr inbounds double, ptr %317, i64 %338
  %443 = load double, ptr %442, align 8, !tbaa !40
  %444 = fmul double %340, %443
  %445 = fmul double %427, %444
  %446 = tail call double @llvm.fmuladd.f64(double %441, double %438, double %445)
  %447 = getelementptr inbounds double, ptr %325, i64 %338
  %448 = load double, ptr %447, align 8, !tbaa !40
  %449 = getelementptr inbounds double, ptr %326, i64 %338
  %450 = load double, ptr %449, align 8, !tbaa !40
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
  store double %466, ptr %347, align 8, !tbaa !40
  %467 = getelementptr inbounds double, ptr %327, i64 %338
  %468 = load double, ptr %467, align 8, !tbaa !40
  %469 = getelementptr inbounds nuw i8, ptr %347, i64 8
  store double %468, ptr %469, align 8, !tbaa !40
  %470 = getelementptr inbounds double, ptr %328, i64 %338
  %471 = load double, ptr %470, align 8, !tbaa !40
  %472 = getelementptr inbounds nuw i8, ptr %347, i64 16
  store double %471, ptr %472, align 8, !tbaa !40
  %473 = getelementptr inbounds double, ptr %329, i64 %338
  %474 = load double, ptr %473, align 8, !tbaa !40
  %475 = getelementptr inbounds nuw i8, ptr %347, i64 24
  store double %474, ptr %475, align 8, !tbaa !40
  %476 = getelementptr inbounds double, ptr %330, i64 %338
  %477 = load double, ptr %476, align 8, !tbaa !40
  %478 = getelementptr inbounds nuw i8, ptr %347, i64 32
  store double %477, ptr %478, align 8, !tbaa !40
  %479 = add nuw nsw i64 %336, 1
  %480 = icmp eq i64 %479, %298
  br i1 %480, label %504, label %335, !llvm.loop !51

481:                                              ; preds = %360, %481
  %482 = phi double [ %496, %481 ], [ %367, %360 ]
  %483 = phi double [ %501, %481 ], [ %359, %360 ]
  %484 = phi i64 [ %494, %481 ], [ 0, %360 ]
  %485 = phi i64 [ %502, %481 ], [ 0, %360 ]
  %486 = or disjoint i64 %484, 1
  %487 = getelementptr <8 x double>, ptr %362, i64 %486
  %488 = load double, ptr %487, align 8, !tbaa !40
  %489 = fsub double %488, %482
  %490 = fmul double %364, %489
  %491 = getelementptr <8 x double>, ptr %366, i64 %484
  %492 = load double, ptr %491, align 8, !tbaa !40
  %493 = tail call double @llvm.fmuladd.f64(double %490, double %492, double %483)
  %494 = add nuw nsw i64 %484, 2
  %495 = getelementptr <8 x double>, ptr %362, i64 %494
  %496 = load double, ptr %495, align 8, !tbaa !40
  %497 = fsub double %496, %488
  %498 = fmul double %364, %497
  %499 = getelementptr <8 x double>, ptr %366, i64 %486
  %500 = load double, ptr %499, align 8, !tbaa !40
  %501 = tail call double @llvm.fmuladd.f64(double %498, double %500, double %493)
  %502 = add i64 %485, 2
  %503 = icmp eq i64 %502, %333
  br i1 %503, label %410, label %481, !llvm.loop !52

504:                                              ; preds = %424, %282
  %505 = load i64, ptr %132, align 8, !tbaa !27
  %506 = load i64, ptr %0, align 8, !tbaa !37
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
  %513 = load double, ptr %118, align 8, !tbaa !40
  %514 = fcmp oeq double %513, 0.000000e+00
  br i1 %514, label %520, label %515

515:                                              ; preds = %5076, %5118, %5115, %3330, %3621, %512
  %516 = load i64, ptr %111, align 8, !tbaa !38
  %517 = load i64, ptr %112, align 8, !tbaa !39
  %518 = sub nsw i64 %516, %517
  %519 = icmp slt i64 %518, 16
  br i1 %519, label %5119, label %276, !llvm.loop !53

520:                                              ; preds = %508, %509, %279, %276, %512
  %521 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %522 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %521)
  %523 = icmp eq i64 %522, 0
  br i1 %523, label %5119, label %524

524:                                              ; preds = %520
  %525 = load <8 x i64>, ptr %133, align 64, !tbaa !26
  %526 = and <8 x i64> %525, %521
  %527 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %526)
  %528 = icmp eq i64 %527, 0
  %529 = load i64, ptr %156, align 8, !tbaa !20
  br i1 %528, label %1154, label %530

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
  br i1 %594, label %595, label %642

595:                                              ; preds = %530
  %596 = load ptr, ptr %129, align 8, !tbaa !28
  br label %597

597:                                              ; preds = %595, %597
  %598 = phi <8 x double> [ %593, %595 ], [ %639, %597 ]
  %599 = phi i64 [ 0, %595 ], [ %640, %597 ]
  %600 = getelementptr inbounds nuw %struct.Piece, ptr %596, i64 %599
  %601 = getelementptr inbounds nuw i8, ptr %600, i64 3776
  %602 = load <8 x double>, ptr %601, align 64, !tbaa !26
  %603 = getelementptr inbounds nuw i8, ptr %600, i64 1472
  %604 = load <8 x double>, ptr %603, align 64, !tbaa !26
  %605 = fsub <8 x double> %602, %604
  %606 = getelementptr inbounds nuw i8, ptr %600, i64 832
  %607 = load <8 x double>, ptr %606, align 64, !tbaa !26
  %608 = fmul <8 x double> %605, %607
  %609 = getelementptr inbounds nuw i8, ptr %600, i64 1600
  %610 = load <8 x double>, ptr %609, align 64, !tbaa !26
  %611 = getelementptr inbounds nuw i8, ptr %600, i64 4032
  %612 = load <8 x double>, ptr %611, align 64, !tbaa !26
  %613 = fsub <8 x double> %610, %612
  %614 = getelementptr inbounds nuw i8, ptr %600, i64 7360
  %615 = load <8 x i64>, ptr %614, align 64, !tbaa !26
  %616 = getelementptr inbounds nuw i8, ptr %600, i64 7296
  %617 = load <8 x double>, ptr %616, align 64, !tbaa !26
  %618 = fcmp une <8 x double> %617, splat (double 1.000000e+00)
  %619 = select <8 x i1> %618, <8 x double> %608, <8 x double> %613
  %620 = getelementptr inbounds nuw i8, ptr %600, i64 3840
  %621 = load <8 x double>, ptr %620, align 64, !tbaa !26
  %622 = icmp eq <8 x i64> %615, zeroinitializer
  %623 = select <8 x i1> %622, <8 x double> %621, <8 x double> %619
  %624 = getelementptr inbounds nuw i8, ptr %600, i64 5632
  %625 = load <8 x double>, ptr %624, align 64, !tbaa !26
  %626 = getelementptr inbounds nuw i8, ptr %600, i64 7168
  %627 = load <8 x double>, ptr %626, align 64, !tbaa !26
  %628 = fdiv <8 x double> %627, %570
  %629 = select <8 x i1> %622, <8 x double> %628, <8 x double> zeroinitializer
  %630 = fsub <8 x double> %625, %629
  %631 = fcmp ule <8 x double> %623, zeroinitializer
  %632 = fcmp ule <8 x double> %630, zeroinitializer
  %633 = or <8 x i1> %631, %632
  %634 = fdiv <8 x double> %623, %630
  %635 = fcmp ogt <8 x double> %634, splat (double 1.000000e-03)
  %636 = select <8 x i1> %635, <8 x double> %634, <8 x double> splat (double 1.000000e-03)
  %637 = select <8 x i1> %633, <8 x double> splat (double 1.000000e+09), <8 x double> %636
  %638 = fcmp olt <8 x double> %598, %637
  %639 = select <8 x i1> %638, <8 x double> %598, <8 x double> %637
  %640 = add nuw nsw i64 %599, 1
  %641 = icmp eq i64 %640, %529
  br i1 %641, label %642, label %597, !llvm.loop !54

642:                                              ; preds = %597, %530
  %643 = phi <8 x double> [ %593, %530 ], [ %639, %597 ]
  %644 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %643)
  %645 = insertelement <8 x double> poison, double %644, i64 0
  %646 = shufflevector <8 x double> %645, <8 x double> poison, <8 x i32> zeroinitializer
  %647 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %648 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %649 = fadd <8 x double> %647, %648
  %650 = fsub <8 x double> %649, %533
  %651 = fmul <8 x double> %646, splat (double 1.050000e+00)
  %652 = fcmp ugt <8 x double> %650, %651
  %653 = select <8 x i1> %652, <8 x double> %646, <8 x double> %650
  %654 = fmul <8 x double> %546, splat (double 0x3FF000010C6F7A0B)
  %655 = fcmp ole <8 x double> %653, %654
  %656 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %657 = fcmp ogt <8 x double> %656, %546
  %658 = select <8 x i1> %657, <8 x double> %656, <8 x double> %546
  %659 = icmp ne <8 x i64> %526, zeroinitializer
  %660 = select <8 x i1> %655, <8 x i1> %659, <8 x i1> zeroinitializer
  %661 = select <8 x i1> %660, <8 x double> %658, <8 x double> %656
  store <8 x double> %661, ptr %159, align 64, !tbaa !26
  %662 = fmul <8 x double> %546, splat (double 2.000000e+00)
  %663 = fcmp uge <8 x double> %653, %662
  %664 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %665 = fcmp une <8 x double> %664, zeroinitializer
  %666 = or <8 x i1> %665, %663
  %667 = fmul <8 x double> %653, splat (double 5.000000e-01)
  %668 = select <8 x i1> %666, <8 x double> %546, <8 x double> %667
  %669 = select <8 x i1> %655, <8 x double> %653, <8 x double> %668
  %670 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %671 = icmp eq <8 x i64> %526, zeroinitializer
  %672 = select <8 x i1> %671, <8 x double> %670, <8 x double> %669
  store <8 x double> %672, ptr %160, align 64, !tbaa !26
  %673 = fdiv <8 x double> %672, %570
  %674 = fdiv <8 x double> splat (double 1.000000e+00), %672
  %675 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %673, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %676 = fadd <8 x double> %673, splat (double 1.000000e+00)
  %677 = fdiv <8 x double> %675, %676
  %678 = fmul <8 x double> %674, %677
  %679 = icmp eq <8 x i64> %575, zeroinitializer
  %680 = select <8 x i1> %679, <8 x double> %678, <8 x double> %674
  %681 = fneg <8 x double> %674
  %682 = fneg <8 x double> %676
  %683 = fmul <8 x double> %674, %682
  %684 = select <8 x i1> %679, <8 x double> %683, <8 x double> %681
  %685 = fmul <8 x double> %673, %673
  %686 = fdiv <8 x double> %685, %676
  %687 = fmul <8 x double> %674, %686
  %688 = select <8 x i1> %679, <8 x double> %687, <8 x double> zeroinitializer
  %689 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %690 = select <8 x i1> %671, <8 x double> %689, <8 x double> %680
  store <8 x double> %690, ptr %162, align 64, !tbaa !26
  %691 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %692 = select <8 x i1> %671, <8 x double> %691, <8 x double> %684
  store <8 x double> %692, ptr %163, align 64, !tbaa !26
  %693 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %694 = select <8 x i1> %671, <8 x double> %693, <8 x double> %688
  store <8 x double> %694, ptr %164, align 64, !tbaa !26
  %695 = select <8 x i1> %679, <8 x double> %673, <8 x double> zeroinitializer
  %696 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %695, <8 x double> %569, <8 x double> %555)
  %697 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %698 = select <8 x i1> %671, <8 x double> %697, <8 x double> %696
  %699 = load <8 x double>, ptr %241, align 64, !tbaa !26
  %700 = load <8 x double>, ptr %242, align 64, !tbaa !26
  %701 = fsub <8 x double> %699, %700
  %702 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %695, <8 x double> %701, <8 x double> %699)
  %703 = load <8 x double>, ptr %240, align 64, !tbaa !26
  %704 = select <8 x i1> %671, <8 x double> %703, <8 x double> %702
  store <8 x double> %704, ptr %240, align 64, !tbaa !26
  %705 = load <8 x double>, ptr %244, align 64, !tbaa !26
  %706 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %707 = fsub <8 x double> %705, %706
  %708 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %695, <8 x double> %707, <8 x double> %705)
  %709 = load <8 x double>, ptr %243, align 64, !tbaa !26
  %710 = select <8 x i1> %671, <8 x double> %709, <8 x double> %708
  store <8 x double> %710, ptr %243, align 64, !tbaa !26
  %711 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %712 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %713 = fsub <8 x double> %711, %712
  %714 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %695, <8 x double> %713, <8 x double> %711)
  %715 = load <8 x double>, ptr %246, align 64, !tbaa !26
  %716 = select <8 x i1> %671, <8 x double> %715, <8 x double> %714
  store <8 x double> %716, ptr %246, align 64, !tbaa !26
  %717 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %718 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %719 = fsub <8 x double> %717, %718
  %720 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %695, <8 x double> %719, <8 x double> %717)
  %721 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %722 = select <8 x i1> %671, <8 x double> %721, <8 x double> %720
  store <8 x double> %722, ptr %249, align 64, !tbaa !26
  %723 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %724 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %725 = fsub <8 x double> %723, %724
  %726 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %695, <8 x double> %725, <8 x double> %723)
  %727 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %728 = select <8 x i1> %671, <8 x double> %727, <8 x double> %726
  store <8 x double> %728, ptr %252, align 64, !tbaa !26
  %729 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %730 = icmp eq <8 x i64> %729, zeroinitializer
  %731 = select <8 x i1> %730, <8 x double> zeroinitializer, <8 x double> %557
  %732 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %733 = fsub <8 x double> %731, %732
  %734 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %735 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %563, <8 x double> %734, <8 x double> %562)
  %736 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %561, <8 x double> %735, <8 x double> %565)
  %737 = fdiv <8 x double> %733, %736
  %738 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %739 = load <8 x i64>, ptr %152, align 64, !tbaa !26
  %740 = or <8 x i64> %739, %738
  %741 = and <8 x i64> %740, %526
  %742 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %672, <8 x double> %737, <8 x double> %734)
  %743 = icmp eq <8 x i64> %741, zeroinitializer
  %744 = select <8 x i1> %587, <8 x i1> splat (i1 true), <8 x i1> %743
  %745 = select <8 x i1> %744, <8 x double> %698, <8 x double> %742
  store <8 x double> %745, ptr %165, align 64, !tbaa !26
  %746 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %747 = select <8 x i1> %671, <8 x double> %746, <8 x double> %733
  store <8 x double> %747, ptr %166, align 64, !tbaa !26
  %748 = xor <8 x i64> %739, splat (i64 -1)
  %749 = and <8 x i64> %738, %748
  store <8 x i64> %749, ptr %153, align 64, !tbaa !26
  %750 = load i64, ptr %156, align 8, !tbaa !20
  %751 = icmp sgt i64 %750, 0
  br i1 %751, label %752, label %1064

752:                                              ; preds = %642, %1047
  %753 = phi i64 [ %1048, %1047 ], [ 0, %642 ]
  %754 = load ptr, ptr %129, align 8, !tbaa !28
  %755 = getelementptr inbounds nuw %struct.Piece, ptr %754, i64 %753
  %756 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %757 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %758 = getelementptr inbounds nuw i8, ptr %755, i64 7424
  %759 = load <8 x i64>, ptr %758, align 64, !tbaa !26
  %760 = fdiv <8 x double> %756, %757
  %761 = fdiv <8 x double> splat (double 1.000000e+00), %756
  %762 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %760, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %763 = fadd <8 x double> %760, splat (double 1.000000e+00)
  %764 = fdiv <8 x double> %762, %763
  %765 = fmul <8 x double> %761, %764
  %766 = icmp eq <8 x i64> %759, zeroinitializer
  %767 = select <8 x i1> %766, <8 x double> %765, <8 x double> %761
  %768 = fneg <8 x double> %761
  %769 = fneg <8 x double> %763
  %770 = fmul <8 x double> %761, %769
  %771 = select <8 x i1> %766, <8 x double> %770, <8 x double> %768
  %772 = fmul <8 x double> %760, %760
  %773 = fdiv <8 x double> %772, %763
  %774 = fmul <8 x double> %761, %773
  %775 = select <8 x i1> %766, <8 x double> %774, <8 x double> zeroinitializer
  %776 = getelementptr inbounds nuw i8, ptr %755, i64 5248
  %777 = load <8 x double>, ptr %776, align 64, !tbaa !26
  %778 = select <8 x i1> %671, <8 x double> %777, <8 x double> %767
  store <8 x double> %778, ptr %776, align 64, !tbaa !26
  %779 = getelementptr inbounds nuw i8, ptr %755, i64 5312
  %780 = load <8 x double>, ptr %779, align 64, !tbaa !26
  %781 = select <8 x i1> %671, <8 x double> %780, <8 x double> %771
  store <8 x double> %781, ptr %779, align 64, !tbaa !26
  %782 = getelementptr inbounds nuw i8, ptr %755, i64 5376
  %783 = load <8 x double>, ptr %782, align 64, !tbaa !26
  %784 = select <8 x i1> %671, <8 x double> %783, <8 x double> %775
  store <8 x double> %784, ptr %782, align 64, !tbaa !26
  %785 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %786 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %787 = fdiv <8 x double> %785, %786
  %788 = select <8 x i1> %766, <8 x double> %787, <8 x double> zeroinitializer
  %789 = getelementptr inbounds nuw i8, ptr %755, i64 2944
  %790 = getelementptr inbounds nuw i8, ptr %755, i64 3712
  %791 = getelementptr inbounds nuw i8, ptr %755, i64 4480
  br label %1051

792:                                              ; preds = %1051
  %793 = load <8 x double>, ptr %789, align 64, !tbaa !26
  %794 = load <8 x double>, ptr %790, align 64, !tbaa !26
  %795 = fcmp olt <8 x double> %793, %794
  %796 = select <8 x i1> %795, <8 x double> %793, <8 x double> %794
  %797 = load <8 x double>, ptr %755, align 64, !tbaa !26
  %798 = fmul <8 x double> %797, splat (double 3.000000e-01)
  %799 = fcmp ogt <8 x double> %796, %798
  %800 = select <8 x i1> %799, <8 x double> %796, <8 x double> %798
  %801 = select <8 x i1> %671, <8 x double> %793, <8 x double> %800
  store <8 x double> %801, ptr %789, align 64, !tbaa !26
  %802 = getelementptr inbounds nuw i8, ptr %755, i64 5632
  %803 = getelementptr inbounds nuw i8, ptr %755, i64 3456
  %804 = load <8 x double>, ptr %803, align 64, !tbaa !26
  %805 = fcmp ogt <8 x double> %804, zeroinitializer
  %806 = select <8 x i1> %805, <8 x double> %804, <8 x double> zeroinitializer
  %807 = load <8 x double>, ptr %802, align 64, !tbaa !26
  %808 = select <8 x i1> %671, <8 x double> %807, <8 x double> %806
  store <8 x double> %808, ptr %802, align 64, !tbaa !26
  %809 = getelementptr inbounds nuw i8, ptr %755, i64 384
  %810 = load <8 x double>, ptr %809, align 64, !tbaa !26
  %811 = getelementptr inbounds nuw i8, ptr %755, i64 448
  %812 = load <8 x double>, ptr %811, align 64, !tbaa !26
  %813 = getelementptr inbounds nuw i8, ptr %755, i64 512
  %814 = load <8 x double>, ptr %813, align 64, !tbaa !26
  %815 = getelementptr inbounds nuw i8, ptr %755, i64 640
  %816 = load <8 x double>, ptr %815, align 64, !tbaa !26
  %817 = getelementptr inbounds nuw i8, ptr %755, i64 768
  %818 = load <8 x double>, ptr %817, align 64, !tbaa !26
  %819 = getelementptr inbounds nuw i8, ptr %755, i64 832
  %820 = getelementptr inbounds nuw i8, ptr %755, i64 1536
  %821 = load <8 x double>, ptr %820, align 64, !tbaa !26
  %822 = getelementptr inbounds nuw i8, ptr %755, i64 4416
  %823 = load <8 x double>, ptr %822, align 64, !tbaa !26
  %824 = fsub <8 x double> %823, %821
  %825 = getelementptr inbounds nuw i8, ptr %755, i64 5184
  %826 = load <8 x double>, ptr %825, align 64, !tbaa !26
  %827 = fsub <8 x double> %826, %821
  %828 = load <8 x double>, ptr %779, align 64, !tbaa !26
  %829 = load <8 x double>, ptr %782, align 64, !tbaa !26
  %830 = fmul <8 x double> %824, %828
  %831 = fmul <8 x double> %827, %829
  %832 = fmul <8 x double> %821, %828
  %833 = fmul <8 x double> %816, %832
  %834 = fmul <8 x double> %821, %829
  %835 = fmul <8 x double> %816, %834
  %836 = getelementptr inbounds nuw i8, ptr %755, i64 7568
  %837 = load ptr, ptr %836, align 16, !tbaa !44
  %838 = getelementptr inbounds nuw i8, ptr %755, i64 7576
  %839 = load ptr, ptr %838, align 8, !tbaa !55
  %840 = getelementptr inbounds nuw i8, ptr %755, i64 7656
  %841 = load ptr, ptr %840, align 8, !tbaa !46
  %842 = getelementptr inbounds nuw i8, ptr %755, i64 7560
  %843 = load ptr, ptr %842, align 8, !tbaa !56
  %844 = getelementptr inbounds nuw i8, ptr %755, i64 7584
  %845 = load ptr, ptr %844, align 32, !tbaa !57
  %846 = load i64, ptr %119, align 16, !tbaa !21
  %847 = icmp sgt i64 %846, 0
  br i1 %847, label %848, label %850

848:                                              ; preds = %792
  %849 = getelementptr inbounds nuw i8, ptr %755, i64 7552
  br label %863

850:                                              ; preds = %894, %792
  %851 = fmul <8 x double> %818, %828
  %852 = fmul <8 x double> %818, %829
  %853 = getelementptr inbounds nuw i8, ptr %755, i64 7736
  %854 = load ptr, ptr %853, align 8, !tbaa !47
  %855 = getelementptr inbounds nuw i8, ptr %755, i64 7744
  %856 = load ptr, ptr %855, align 64, !tbaa !58
  %857 = load i64, ptr %120, align 8, !tbaa !22
  %858 = icmp sgt i64 %857, 0
  br i1 %858, label %859, label %928

859:                                              ; preds = %850
  %860 = getelementptr inbounds nuw i8, ptr %755, i64 7688
  %861 = getelementptr inbounds nuw i8, ptr %755, i64 7696
  %862 = getelementptr inbounds nuw i8, ptr %755, i64 7704
  br label %901

863:                                              ; preds = %848, %894
  %864 = phi i64 [ 0, %848 ], [ %898, %894 ]
  %865 = getelementptr inbounds nuw <8 x double>, ptr %837, i64 %864
  %866 = load <8 x double>, ptr %865, align 64, !tbaa !26
  %867 = getelementptr inbounds nuw <8 x double>, ptr %839, i64 %864
  %868 = load <8 x double>, ptr %867, align 64, !tbaa !26
  %869 = fsub <8 x double> %866, %868
  %870 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %788, <8 x double> %869, <8 x double> %866)
  %871 = getelementptr inbounds nuw <8 x double>, ptr %843, i64 %864
  %872 = load <8 x double>, ptr %871, align 64, !tbaa !26
  %873 = select <8 x i1> %671, <8 x double> %872, <8 x double> %870
  store <8 x double> %873, ptr %871, align 64, !tbaa !26
  %874 = load i64, ptr %849, align 64, !tbaa !31
  %875 = icmp slt i64 %864, %874
  %876 = getelementptr inbounds nuw <8 x double>, ptr %841, i64 %864
  %877 = load <8 x double>, ptr %876, align 64, !tbaa !26
  br i1 %875, label %878, label %881

878:                                              ; preds = %863
  %879 = fmul <8 x double> %835, %868
  %880 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %833, <8 x double> %866, <8 x double> %879)
  br label %894

881:                                              ; preds = %863
  %882 = fmul <8 x double> %814, %866
  %883 = fmul <8 x double> %882, splat (double 0x3FD5555555555555)
  %884 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %812, <8 x double> splat (double 5.000000e-01), <8 x double> %883)
  %885 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %866, <8 x double> %884, <8 x double> %810)
  %886 = fmul <8 x double> %866, %885
  %887 = fmul <8 x double> %814, %868
  %888 = fmul <8 x double> %887, splat (double 0x3FD5555555555555)
  %889 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %812, <8 x double> splat (double 5.000000e-01), <8 x double> %888)
  %890 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %868, <8 x double> %889, <8 x double> %810)
  %891 = fmul <8 x double> %868, %890
  %892 = fmul <8 x double> %831, %891
  %893 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %830, <8 x double> %886, <8 x double> %892)
  br label %894

894:                                              ; preds = %881, %878
  %895 = phi <8 x double> [ %893, %881 ], [ %880, %878 ]
  %896 = fmul <8 x double> %895, %877
  %897 = getelementptr inbounds nuw <8 x double>, ptr %845, i64 %864
  store <8 x double> %896, ptr %897, align 64, !tbaa !26
  %898 = add nuw nsw i64 %864, 1
  %899 = load i64, ptr %119, align 16, !tbaa !21
  %900 = icmp slt i64 %898, %899
  br i1 %900, label %863, label %850, !llvm.loop !59

901:                                              ; preds = %859, %901
  %902 = phi i64 [ 0, %859 ], [ %903, %901 ]
  %903 = add nuw nsw i64 %902, 1
  %904 = getelementptr inbounds nuw <8 x double>, ptr %854, i64 %903
  %905 = load <8 x double>, ptr %904, align 64, !tbaa !26
  %906 = getelementptr inbounds nuw <8 x double>, ptr %854, i64 %902
  %907 = load <8 x double>, ptr %906, align 64, !tbaa !26
  %908 = fsub <8 x double> %905, %907
  %909 = load ptr, ptr %860, align 8, !tbaa !48
  %910 = getelementptr inbounds nuw <8 x double>, ptr %909, i64 %902
  %911 = load <8 x double>, ptr %910, align 64, !tbaa !26
  %912 = fmul <8 x double> %908, %911
  %913 = getelementptr inbounds nuw <8 x double>, ptr %856, i64 %903
  %914 = load <8 x double>, ptr %913, align 64, !tbaa !26
  %915 = getelementptr inbounds nuw <8 x double>, ptr %856, i64 %902
  %916 = load <8 x double>, ptr %915, align 64, !tbaa !26
  %917 = fsub <8 x double> %914, %916
  %918 = load ptr, ptr %861, align 16, !tbaa !60
  %919 = getelementptr inbounds nuw <8 x double>, ptr %918, i64 %902
  %920 = load <8 x double>, ptr %919, align 64, !tbaa !26
  %921 = fmul <8 x double> %917, %920
  %922 = fmul <8 x double> %852, %921
  %923 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %851, <8 x double> %912, <8 x double> %922)
  %924 = load ptr, ptr %862, align 8, !tbaa !61
  %925 = getelementptr inbounds nuw <8 x double>, ptr %924, i64 %902
  store <8 x double> %923, ptr %925, align 64, !tbaa !26
  %926 = load i64, ptr %120, align 8, !tbaa !22
  %927 = icmp slt i64 %903, %926
  br i1 %927, label %901, label %928, !llvm.loop !62

928:                                              ; preds = %901, %850
  %929 = getelementptr inbounds nuw i8, ptr %755, i64 1664
  %930 = load <8 x double>, ptr %929, align 64, !tbaa !26
  %931 = fcmp ogt <8 x double> %930, zeroinitializer
  %932 = bitcast <8 x i1> %931 to i8
  %933 = icmp eq i8 %932, 0
  br i1 %933, label %934, label %938

934:                                              ; preds = %928
  %935 = getelementptr inbounds nuw i8, ptr %755, i64 7168
  %936 = load <8 x double>, ptr %935, align 64, !tbaa !26
  %937 = select <8 x i1> %671, <8 x double> %936, <8 x double> zeroinitializer
  store <8 x double> %937, ptr %935, align 64, !tbaa !26
  br label %1047

938:                                              ; preds = %928
  %939 = load <8 x double>, ptr %820, align 64, !tbaa !26
  %940 = getelementptr inbounds nuw i8, ptr %755, i64 1728
  %941 = load <8 x double>, ptr %940, align 64, !tbaa !26
  %942 = getelementptr inbounds nuw i8, ptr %755, i64 1856
  %943 = load <8 x double>, ptr %942, align 64, !tbaa !26
  %944 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %945 = fneg <8 x double> %944
  %946 = fdiv <8 x double> %945, %941
  %947 = fcmp ogt <8 x double> %946, splat (double -7.000000e+02)
  %948 = select <8 x i1> %947, <8 x double> %946, <8 x double> splat (double -7.000000e+02)
  %949 = fcmp olt <8 x double> %948, splat (double 7.000000e+02)
  %950 = select <8 x i1> %949, <8 x double> %948, <8 x double> splat (double 7.000000e+02)
  %951 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %950, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %952 = fadd <8 x double> %951, splat (double 0xC338000000000000)
  %953 = fneg <8 x double> %952
  %954 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %953, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %950)
  %955 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %953, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %954)
  %956 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %955, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %957 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %956, <8 x double> %955, <8 x double> splat (double 0x3E5AE64567F544E4))
  %958 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %957, <8 x double> %955, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %959 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %958, <8 x double> %955, <8 x double> splat (double 0x3EC71DE3A556C734))
  %960 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %959, <8 x double> %955, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %961 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %960, <8 x double> %955, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %962 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %961, <8 x double> %955, <8 x double> splat (double 0x3F56C16C16C16C17))
  %963 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %962, <8 x double> %955, <8 x double> splat (double 0x3F81111111111111))
  %964 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %963, <8 x double> %955, <8 x double> splat (double 0x3FA5555555555555))
  %965 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %964, <8 x double> %955, <8 x double> splat (double 0x3FC5555555555555))
  %966 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %965, <8 x double> %955, <8 x double> splat (double 5.000000e-01))
  %967 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %966, <8 x double> %955, <8 x double> splat (double 1.000000e+00))
  %968 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> %955, <8 x double> splat (double 1.000000e+00))
  %969 = bitcast <8 x double> %951 to <8 x i64>
  %970 = shl <8 x i64> %969, splat (i64 52)
  %971 = bitcast <8 x double> %968 to <8 x i64>
  %972 = add <8 x i64> %970, %971
  %973 = bitcast <8 x i64> %972 to <8 x double>
  %974 = fsub <8 x double> splat (double 1.000000e+00), %973
  %975 = load <8 x double>, ptr %822, align 64, !tbaa !26
  %976 = fsub <8 x double> %975, %939
  %977 = load ptr, ptr %842, align 8, !tbaa !56
  %978 = load ptr, ptr %836, align 16, !tbaa !44
  %979 = getelementptr inbounds nuw i8, ptr %755, i64 7600
  %980 = load ptr, ptr %979, align 16, !tbaa !45
  %981 = load ptr, ptr %840, align 8, !tbaa !46
  %982 = getelementptr inbounds nuw i8, ptr %755, i64 7592
  %983 = load ptr, ptr %982, align 8, !tbaa !63
  %984 = getelementptr inbounds nuw i8, ptr %755, i64 7552
  %985 = load i64, ptr %984, align 64, !tbaa !31
  %986 = load i64, ptr %119, align 16, !tbaa !21
  %987 = icmp slt i64 %985, %986
  br i1 %987, label %988, label %992

988:                                              ; preds = %938
  %989 = getelementptr inbounds nuw i8, ptr %755, i64 1792
  %990 = load <8 x double>, ptr %989, align 64, !tbaa !26
  %991 = fneg <8 x double> %990
  br label %1004

992:                                              ; preds = %1004, %938
  %993 = phi <8 x double> [ zeroinitializer, %938 ], [ %1035, %1004 ]
  %994 = phi <8 x double> [ zeroinitializer, %938 ], [ %1043, %1004 ]
  %995 = getelementptr inbounds nuw i8, ptr %755, i64 3776
  %996 = load <8 x double>, ptr %995, align 64, !tbaa !26
  %997 = fsub <8 x double> %996, %975
  %998 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %993, <8 x double> %997, <8 x double> %994)
  %999 = getelementptr inbounds nuw i8, ptr %755, i64 7168
  %1000 = load <8 x double>, ptr %819, align 64, !tbaa !26
  %1001 = fmul <8 x double> %1000, %998
  %1002 = load <8 x double>, ptr %999, align 64, !tbaa !26
  %1003 = select <8 x i1> %671, <8 x double> %1002, <8 x double> %1001
  store <8 x double> %1003, ptr %999, align 64, !tbaa !26
  br label %1047

1004:                                             ; preds = %988, %1004
  %1005 = phi <8 x double> [ zeroinitializer, %988 ], [ %1043, %1004 ]
  %1006 = phi i64 [ %985, %988 ], [ %1044, %1004 ]
  %1007 = getelementptr inbounds <8 x double>, ptr %978, i64 %1006
  %1008 = load <8 x double>, ptr %1007, align 64, !tbaa !26
  %1009 = getelementptr inbounds <8 x double>, ptr %977, i64 %1006
  %1010 = load <8 x double>, ptr %1009, align 64, !tbaa !26
  %1011 = fadd <8 x double> %1008, %1010
  %1012 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1011, <8 x double> splat (double 5.000000e-01), <8 x double> %991)
  %1013 = fmul <8 x double> %943, %1012
  %1014 = fcmp ogt <8 x double> %1013, splat (double -5.000000e+00)
  %1015 = select <8 x i1> %1014, <8 x double> %1013, <8 x double> splat (double -5.000000e+00)
  %1016 = fcmp olt <8 x double> %1015, splat (double 5.000000e+00)
  %1017 = select <8 x i1> %1016, <8 x double> %1015, <8 x double> splat (double 5.000000e+00)
  %1018 = fmul <8 x double> %1017, %1017
  %1019 = fadd <8 x double> %1018, splat (double 3.780000e+02)
  %1020 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1018, <8 x double> %1019, <8 x double> splat (double 1.732500e+04))
  %1021 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1018, <8 x double> %1020, <8 x double> splat (double 1.351350e+05))
  %1022 = fmul <8 x double> %1017, %1021
  %1023 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1018, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1024 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1018, <8 x double> %1023, <8 x double> splat (double 6.237000e+04))
  %1025 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1018, <8 x double> %1024, <8 x double> splat (double 1.351350e+05))
  %1026 = fdiv <8 x double> %1022, %1025
  %1027 = fadd <8 x double> %1026, splat (double 1.000000e+00)
  %1028 = fmul <8 x double> %930, %1027
  %1029 = getelementptr inbounds <8 x double>, ptr %980, i64 %1006
  %1030 = load <8 x double>, ptr %1029, align 64, !tbaa !26
  %1031 = fadd <8 x double> %1030, splat (double -1.000000e+00)
  %1032 = fadd <8 x double> %1031, %1028
  %1033 = fcmp ogt <8 x double> %1032, zeroinitializer
  %1034 = select <8 x i1> %1033, <8 x double> %1032, <8 x double> zeroinitializer
  %1035 = fmul <8 x double> %974, %1034
  %1036 = fsub <8 x double> %1030, %1035
  %1037 = getelementptr inbounds <8 x double>, ptr %983, i64 %1006
  %1038 = load <8 x double>, ptr %1037, align 64, !tbaa !26
  %1039 = select <8 x i1> %671, <8 x double> %1038, <8 x double> %1036
  store <8 x double> %1039, ptr %1037, align 64, !tbaa !26
  %1040 = getelementptr inbounds <8 x double>, ptr %981, i64 %1006
  %1041 = load <8 x double>, ptr %1040, align 64, !tbaa !26
  %1042 = fmul <8 x double> %976, %1041
  %1043 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1035, <8 x double> %1042, <8 x double> %1005)
  %1044 = add nsw i64 %1006, 1
  %1045 = load i64, ptr %119, align 16, !tbaa !21
  %1046 = icmp slt i64 %1044, %1045
  br i1 %1046, label %1004, label %992, !llvm.loop !64

1047:                                             ; preds = %934, %992
  %1048 = add nuw nsw i64 %753, 1
  %1049 = load i64, ptr %156, align 8, !tbaa !20
  %1050 = icmp slt i64 %1048, %1049
  br i1 %1050, label %752, label %1064, !llvm.loop !65

1051:                                             ; preds = %752, %1051
  %1052 = phi i64 [ 0, %752 ], [ %1062, %1051 ]
  %1053 = getelementptr inbounds nuw [12 x <8 x double>], ptr %789, i64 0, i64 %1052
  %1054 = getelementptr inbounds nuw [12 x <8 x double>], ptr %790, i64 0, i64 %1052
  %1055 = load <8 x double>, ptr %1054, align 64, !tbaa !26
  %1056 = getelementptr inbounds nuw [12 x <8 x double>], ptr %791, i64 0, i64 %1052
  %1057 = load <8 x double>, ptr %1056, align 64, !tbaa !26
  %1058 = fsub <8 x double> %1055, %1057
  %1059 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %788, <8 x double> %1058, <8 x double> %1055)
  %1060 = load <8 x double>, ptr %1053, align 64, !tbaa !26
  %1061 = select <8 x i1> %671, <8 x double> %1060, <8 x double> %1059
  store <8 x double> %1061, ptr %1053, align 64, !tbaa !26
  %1062 = add nuw nsw i64 %1052, 1
  %1063 = icmp eq i64 %1062, 11
  br i1 %1063, label %792, label %1051, !llvm.loop !66

1064:                                             ; preds = %1047, %642
  %1065 = phi i64 [ %750, %642 ], [ %1049, %1047 ]
  %1066 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %1067 = fcmp ogt <8 x double> %1066, zeroinitializer
  %1068 = select <8 x i1> %1067, <8 x i64> %526, <8 x i64> zeroinitializer
  %1069 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1068)
  %1070 = icmp eq i64 %1069, 0
  br i1 %1070, label %1154, label %1071

1071:                                             ; preds = %1064
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1068, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1072 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %1073 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %1074 = fadd <8 x double> %1072, %1073
  store <8 x double> %1074, ptr %9, align 64, !tbaa !26
  %1075 = load ptr, ptr %167, align 8
  %1076 = load ptr, ptr %169, align 8
  %1077 = load ptr, ptr %170, align 8
  br label %1078

1078:                                             ; preds = %1146, %1071
  %1079 = phi i64 [ 0, %1071 ], [ %1147, %1146 ]
  %1080 = getelementptr inbounds nuw i64, ptr %7, i64 %1079
  %1081 = load i64, ptr %1080, align 8, !tbaa !30
  %1082 = icmp eq i64 %1081, 0
  br i1 %1082, label %1146, label %1083

1083:                                             ; preds = %1078
  %1084 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %1079
  %1085 = load i64, ptr %1084, align 8, !tbaa !30
  %1086 = shl nsw i64 %1085, 1
  %1087 = getelementptr inbounds i64, ptr %1075, i64 %1086
  %1088 = load i64, ptr %1087, align 8, !tbaa !30
  %1089 = shl nuw nsw i64 %1079, 1
  %1090 = getelementptr inbounds nuw [16 x i64], ptr %168, i64 0, i64 %1089
  %1091 = getelementptr inbounds i64, ptr %1077, i64 %1086
  %1092 = load i64, ptr %1091, align 8, !tbaa !30
  %1093 = shl nsw i64 %1092, 4
  %1094 = getelementptr inbounds i8, ptr %1076, i64 %1093
  %1095 = getelementptr inbounds nuw double, ptr %9, i64 %1079
  %1096 = load double, ptr %1095, align 8, !tbaa !40
  %1097 = load i64, ptr %1090, align 8, !tbaa !30
  %1098 = getelementptr i8, ptr %1094, i64 -16
  %1099 = icmp sgt i64 %1097, 0
  br i1 %1099, label %1100, label %1109

1100:                                             ; preds = %1083, %1106
  %1101 = phi i64 [ %1107, %1106 ], [ %1097, %1083 ]
  %1102 = shl i64 %1101, 4
  %1103 = getelementptr i8, ptr %1098, i64 %1102
  %1104 = load double, ptr %1103, align 8, !tbaa !40
  %1105 = fcmp ugt double %1096, %1104
  br i1 %1105, label %1109, label %1106

1106:                                             ; preds = %1100
  %1107 = add nsw i64 %1101, -1
  store i64 %1107, ptr %1090, align 8, !tbaa !30
  %1108 = icmp sgt i64 %1101, 1
  br i1 %1108, label %1100, label %1109, !llvm.loop !67

1109:                                             ; preds = %1106, %1100, %1083
  %1110 = phi i64 [ %1097, %1083 ], [ 0, %1106 ], [ %1101, %1100 ]
  %1111 = icmp slt i64 %1110, %1088
  br i1 %1111, label %1112, label %1121

1112:                                             ; preds = %1109, %1118
  %1113 = phi i64 [ %1119, %1118 ], [ %1110, %1109 ]
  %1114 = shl nsw i64 %1113, 4
  %1115 = getelementptr inbounds i8, ptr %1094, i64 %1114
  %1116 = load double, ptr %1115, align 8, !tbaa !40
  %1117 = fcmp ule double %1096, %1116
  br i1 %1117, label %1126, label %1118

1118:                                             ; preds = %1112
  %1119 = add i64 %1113, 1
  store i64 %1119, ptr %1090, align 8, !tbaa !30
  %1120 = icmp eq i64 %1119, %1088
  br i1 %1120, label %1121, label %1112, !llvm.loop !68

1121:                                             ; preds = %1118, %1109
  %1122 = shl i64 %1088, 4
  %1123 = getelementptr i8, ptr %1094, i64 %1122
  %1124 = getelementptr i8, ptr %1123, i64 -8
  %1125 = load double, ptr %1124, align 8, !tbaa !40
  br label %1143

1126:                                             ; preds = %1112
  %1127 = shl nsw i64 %1113, 1
  %1128 = or disjoint i64 %1127, 1
  %1129 = getelementptr inbounds double, ptr %1094, i64 %1128
  %1130 = load double, ptr %1129, align 8, !tbaa !40
  %1131 = icmp sgt i64 %1113, 0
  br i1 %1131, label %1132, label %1143

1132:                                             ; preds = %1126
  %1133 = getelementptr inbounds nuw i8, ptr %1094, i64 %1114
  %1134 = getelementptr i8, ptr %1133, i64 -8
  %1135 = load double, ptr %1134, align 8, !tbaa !40
  %1136 = getelementptr i8, ptr %1133, i64 -16
  %1137 = load double, ptr %1136, align 8, !tbaa !40
  %1138 = fsub double %1096, %1137
  %1139 = fsub double %1116, %1137
  %1140 = fdiv double %1138, %1139
  %1141 = fsub double %1130, %1135
  %1142 = tail call double @llvm.fmuladd.f64(double %1140, double %1141, double %1135)
  br label %1143

1143:                                             ; preds = %1132, %1126, %1121
  %1144 = phi double [ %1142, %1132 ], [ %1130, %1126 ], [ %1125, %1121 ]
  %1145 = getelementptr inbounds nuw double, ptr %8, i64 %1079
  store double %1144, ptr %1145, align 8, !tbaa !40
  br label %1146

1146:                                             ; preds = %1143, %1078
  %1147 = add nuw nsw i64 %1079, 1
  %1148 = icmp eq i64 %1147, 8
  br i1 %1148, label %1149, label %1078, !llvm.loop !69

1149:                                             ; preds = %1146
  %1150 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1151 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %1152 = icmp eq <8 x i64> %1068, zeroinitializer
  %1153 = select <8 x i1> %1152, <8 x double> %1151, <8 x double> %1150
  store <8 x double> %1153, ptr %165, align 64, !tbaa !26
  br label %1154

1154:                                             ; preds = %1064, %1149, %524
  %1155 = phi i64 [ %1065, %1064 ], [ %1065, %1149 ], [ %529, %524 ]
  %1156 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %1157 = icmp eq <8 x i64> %526, zeroinitializer
  %1158 = select <8 x i1> %1157, <8 x double> %1156, <8 x double> zeroinitializer
  store <8 x double> %1158, ptr %171, align 64, !tbaa !26
  %1159 = icmp sgt i64 %1155, 0
  br i1 %1159, label %1165, label %1160

1160:                                             ; preds = %1154
  %1161 = load <8 x double>, ptr %175, align 64, !tbaa !26
  br label %1872

1162:                                             ; preds = %1864
  %1163 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %1164 = icmp sgt i64 %1868, 0
  br i1 %1164, label %1878, label %1872

1165:                                             ; preds = %1154, %1864
  %1166 = phi i64 [ %1867, %1864 ], [ 0, %1154 ]
  %1167 = load ptr, ptr %129, align 8, !tbaa !28
  %1168 = getelementptr inbounds nuw %struct.Piece, ptr %1167, i64 %1166
  %1169 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %1170 = getelementptr inbounds nuw i8, ptr %1168, i64 6400
  %1171 = load <8 x double>, ptr %1170, align 64, !tbaa !26
  %1172 = fsub <8 x double> %1169, %1171
  %1173 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1172)
  %1174 = getelementptr inbounds nuw i8, ptr %1168, i64 2176
  %1175 = load <8 x double>, ptr %1174, align 64, !tbaa !26
  %1176 = fcmp ogt <8 x double> %1175, splat (double 1.000000e-09)
  %1177 = select <8 x i1> %1176, <8 x double> %1175, <8 x double> splat (double 1.000000e-09)
  %1178 = fdiv <8 x double> %1173, %1177
  %1179 = getelementptr inbounds nuw i8, ptr %1168, i64 1024
  %1180 = load <8 x double>, ptr %1179, align 64, !tbaa !26
  %1181 = fcmp ule <8 x double> %1175, zeroinitializer
  %1182 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1178)
  %1183 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1182)
  %1184 = select <8 x i1> %1181, <8 x double> splat (double 1.000000e+00), <8 x double> %1183
  %1185 = fmul <8 x double> %1180, %1184
  %1186 = getelementptr inbounds nuw i8, ptr %1168, i64 1088
  %1187 = load <8 x double>, ptr %1186, align 64, !tbaa !26
  %1188 = getelementptr inbounds nuw i8, ptr %1168, i64 5632
  %1189 = load <8 x double>, ptr %1188, align 64, !tbaa !26
  %1190 = getelementptr inbounds nuw i8, ptr %1168, i64 5696
  %1191 = load <8 x double>, ptr %1190, align 64, !tbaa !26
  %1192 = fadd <8 x double> %1189, %1191
  %1193 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1187, <8 x double> %1192, <8 x double> %1185)
  %1194 = getelementptr inbounds nuw i8, ptr %1168, i64 1152
  %1195 = load <8 x double>, ptr %1194, align 64, !tbaa !26
  %1196 = fcmp olt <8 x double> %1193, %1195
  %1197 = select <8 x i1> %1196, <8 x double> %1193, <8 x double> %1195
  %1198 = getelementptr inbounds nuw i8, ptr %1168, i64 5312
  %1199 = load <8 x double>, ptr %1198, align 64, !tbaa !26
  %1200 = getelementptr inbounds nuw i8, ptr %1168, i64 3968
  %1201 = load <8 x double>, ptr %1200, align 64, !tbaa !26
  %1202 = getelementptr inbounds nuw i8, ptr %1168, i64 5376
  %1203 = load <8 x double>, ptr %1202, align 64, !tbaa !26
  %1204 = getelementptr inbounds nuw i8, ptr %1168, i64 4736
  %1205 = load <8 x double>, ptr %1204, align 64, !tbaa !26
  %1206 = fmul <8 x double> %1203, %1205
  %1207 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1199, <8 x double> %1201, <8 x double> %1206)
  %1208 = getelementptr inbounds nuw i8, ptr %1168, i64 1216
  %1209 = load <8 x double>, ptr %1208, align 64, !tbaa !26
  %1210 = fneg <8 x double> %1209
  %1211 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1210, <8 x double> %1207, <8 x double> %1197)
  %1212 = getelementptr inbounds nuw i8, ptr %1168, i64 5248
  %1213 = load <8 x double>, ptr %1212, align 64, !tbaa !26
  %1214 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1209, <8 x double> %1213, <8 x double> splat (double 1.000000e+00))
  %1215 = fdiv <8 x double> %1211, %1214
  %1216 = getelementptr inbounds nuw i8, ptr %1168, i64 7488
  %1217 = load <8 x i64>, ptr %1216, align 64, !tbaa !26
  %1218 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %1219 = icmp eq <8 x i64> %1217, zeroinitializer
  %1220 = select <8 x i1> %1219, <8 x double> %1169, <8 x double> %1218
  %1221 = getelementptr inbounds nuw i8, ptr %1168, i64 5504
  store <8 x double> %1220, ptr %1221, align 64, !tbaa !26
  %1222 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %1223 = select <8 x i1> %1219, <8 x double> %1215, <8 x double> %1222
  %1224 = getelementptr inbounds nuw i8, ptr %1168, i64 3200
  store <8 x double> %1223, ptr %1224, align 64, !tbaa !26
  %1225 = getelementptr inbounds nuw i8, ptr %1168, i64 896
  %1226 = load <8 x double>, ptr %1225, align 64, !tbaa !26
  %1227 = fcmp ule <8 x double> %1226, zeroinitializer
  %1228 = getelementptr inbounds nuw i8, ptr %1168, i64 2944
  %1229 = getelementptr inbounds nuw i8, ptr %1168, i64 3072
  %1230 = load <8 x double>, ptr %1229, align 64, !tbaa !26
  %1231 = fcmp ogt <8 x double> %1226, splat (double 1.000000e-30)
  %1232 = select <8 x i1> %1231, <8 x double> %1226, <8 x double> splat (double 1.000000e-30)
  %1233 = fdiv <8 x double> %1230, %1232
  %1234 = fcmp ogt <8 x double> %1233, zeroinitializer
  %1235 = select <8 x i1> %1234, <8 x double> %1233, <8 x double> zeroinitializer
  %1236 = fcmp olt <8 x double> %1235, splat (double 1.000000e+00)
  %1237 = select <8 x i1> %1236, <8 x double> %1235, <8 x double> splat (double 1.000000e+00)
  %1238 = select <8 x i1> %1227, <8 x double> zeroinitializer, <8 x double> %1237
  %1239 = getelementptr inbounds nuw i8, ptr %1168, i64 2112
  %1240 = load <8 x double>, ptr %1239, align 64, !tbaa !26
  %1241 = fmul <8 x double> %1238, splat (double 4.180000e+03)
  %1242 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1241, <8 x double> %1226, <8 x double> %1240)
  %1243 = getelementptr inbounds nuw i8, ptr %1168, i64 4288
  %1244 = load <8 x double>, ptr %1243, align 64, !tbaa !26
  %1245 = getelementptr inbounds nuw i8, ptr %1168, i64 5056
  %1246 = load <8 x double>, ptr %1245, align 64, !tbaa !26
  %1247 = fmul <8 x double> %1203, %1246
  %1248 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1199, <8 x double> %1244, <8 x double> %1247)
  %1249 = getelementptr inbounds nuw i8, ptr %1168, i64 7360
  %1250 = load <8 x i64>, ptr %1249, align 64, !tbaa !26
  %1251 = fcmp ule <8 x double> %1240, zeroinitializer
  %1252 = getelementptr inbounds nuw i8, ptr %1168, i64 6912
  store <8 x double> %1238, ptr %1252, align 64, !tbaa !26
  %1253 = fmul <8 x double> %1213, %1242
  %1254 = icmp eq <8 x i64> %1250, splat (i64 -1)
  %1255 = select <8 x i1> %1251, <8 x i1> splat (i1 true), <8 x i1> %1254
  %1256 = select <8 x i1> %1255, <8 x double> zeroinitializer, <8 x double> %1253
  %1257 = getelementptr inbounds nuw i8, ptr %1168, i64 6976
  store <8 x double> %1256, ptr %1257, align 64, !tbaa !26
  %1258 = fmul <8 x double> %1248, %1242
  %1259 = select <8 x i1> %1255, <8 x double> zeroinitializer, <8 x double> %1258
  %1260 = getelementptr inbounds nuw i8, ptr %1168, i64 7040
  store <8 x double> %1259, ptr %1260, align 64, !tbaa !26
  %1261 = load <8 x double>, ptr %1168, align 64, !tbaa !26
  %1262 = load <8 x double>, ptr %1228, align 64, !tbaa !26
  %1263 = fsub <8 x double> %1261, %1262
  %1264 = fsub <8 x double> splat (double 1.000000e+00), %1238
  %1265 = getelementptr inbounds nuw i8, ptr %1168, i64 1920
  %1266 = load <8 x double>, ptr %1265, align 64, !tbaa !26
  %1267 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1264, <8 x double> %1266, <8 x double> %1263)
  %1268 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %1269 = fdiv <8 x double> splat (double 1.000000e+00), %1268
  %1270 = getelementptr inbounds nuw i8, ptr %1168, i64 2240
  %1271 = load <8 x double>, ptr %1270, align 64, !tbaa !26
  %1272 = fcmp ogt <8 x double> %1271, splat (double 1.000000e-30)
  %1273 = select <8 x i1> %1272, <8 x double> %1271, <8 x double> splat (double 1.000000e-30)
  %1274 = fdiv <8 x double> %1267, %1273
  %1275 = fadd <8 x double> %1269, %1274
  %1276 = getelementptr inbounds nuw i8, ptr %1168, i64 7104
  store <8 x double> %1275, ptr %1276, align 64, !tbaa !26
  %1277 = getelementptr inbounds nuw i8, ptr %1168, i64 6784
  store <8 x double> %1189, ptr %1277, align 64, !tbaa !26
  %1278 = getelementptr inbounds nuw i8, ptr %1168, i64 2560
  %1279 = load <8 x double>, ptr %1278, align 64, !tbaa !26
  %1280 = getelementptr inbounds nuw i8, ptr %1168, i64 2624
  %1281 = load <8 x double>, ptr %1280, align 64, !tbaa !26
  %1282 = getelementptr inbounds nuw i8, ptr %1168, i64 2688
  %1283 = load <8 x double>, ptr %1282, align 64, !tbaa !26
  %1284 = getelementptr inbounds nuw i8, ptr %1168, i64 2752
  %1285 = load <8 x double>, ptr %1284, align 64, !tbaa !26
  %1286 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1285, <8 x double> %1283)
  %1287 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1286, <8 x double> %1281)
  %1288 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1287, <8 x double> %1279)
  %1289 = getelementptr inbounds nuw i8, ptr %1168, i64 3648
  store <8 x double> %1288, ptr %1289, align 64, !tbaa !26
  %1290 = getelementptr inbounds nuw i8, ptr %1168, i64 4416
  %1291 = load <8 x double>, ptr %1290, align 64, !tbaa !26
  %1292 = fmul <8 x double> %1199, %1291
  %1293 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1213, <8 x double> %1288, <8 x double> %1292)
  %1294 = getelementptr inbounds nuw i8, ptr %1168, i64 5184
  %1295 = load <8 x double>, ptr %1294, align 64, !tbaa !26
  %1296 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1203, <8 x double> %1295, <8 x double> %1293)
  %1297 = fmul <8 x double> %1296, splat (double 5.000000e-01)
  %1298 = getelementptr inbounds nuw i8, ptr %1168, i64 6720
  store <8 x double> %1297, ptr %1298, align 64, !tbaa !26
  %1299 = getelementptr inbounds nuw i8, ptr %1168, i64 2304
  %1300 = load <8 x double>, ptr %1299, align 64, !tbaa !26
  %1301 = getelementptr inbounds nuw i8, ptr %1168, i64 2368
  %1302 = load <8 x double>, ptr %1301, align 64, !tbaa !26
  %1303 = getelementptr inbounds nuw i8, ptr %1168, i64 2432
  %1304 = load <8 x double>, ptr %1303, align 64, !tbaa !26
  %1305 = getelementptr inbounds nuw i8, ptr %1168, i64 2496
  %1306 = load <8 x double>, ptr %1305, align 64, !tbaa !26
  %1307 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1306, <8 x double> %1304)
  %1308 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1307, <8 x double> %1302)
  %1309 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1308, <8 x double> %1300)
  %1310 = getelementptr inbounds nuw i8, ptr %1168, i64 6656
  store <8 x double> %1309, ptr %1310, align 64, !tbaa !26
  %1311 = getelementptr inbounds nuw i8, ptr %1168, i64 7552
  %1312 = load i64, ptr %1311, align 64, !tbaa !31
  %1313 = icmp eq i64 %1312, 0
  br i1 %1313, label %1314, label %1326

1314:                                             ; preds = %1165
  %1315 = fdiv <8 x double> %1309, %1262
  %1316 = load i64, ptr %119, align 16, !tbaa !21
  %1317 = getelementptr inbounds nuw i8, ptr %1168, i64 7672
  %1318 = load ptr, ptr %1317, align 8, !tbaa !35
  %1319 = getelementptr inbounds <8 x double>, ptr %1318, i64 %1316
  %1320 = load <8 x double>, ptr %1319, align 64, !tbaa !26
  %1321 = fmul <8 x double> %1315, %1320
  %1322 = getelementptr inbounds nuw i8, ptr %1168, i64 64
  %1323 = load <8 x double>, ptr %1322, align 64, !tbaa !26
  %1324 = fsub <8 x double> %1262, %1323
  %1325 = fdiv <8 x double> splat (double 1.000000e+00), %1324
  br label %1349

1326:                                             ; preds = %1165
  %1327 = getelementptr inbounds nuw i8, ptr %1168, i64 64
  %1328 = load <8 x double>, ptr %1327, align 64, !tbaa !26
  %1329 = fsub <8 x double> %1262, %1328
  %1330 = fdiv <8 x double> splat (double 1.000000e+00), %1329
  %1331 = load i64, ptr %119, align 16, !tbaa !21
  %1332 = getelementptr inbounds nuw i8, ptr %1168, i64 7672
  %1333 = load ptr, ptr %1332, align 8, !tbaa !35
  %1334 = shl nsw i64 %1331, 8
  %1335 = getelementptr inbounds i8, ptr %1333, i64 %1334
  %1336 = load <8 x double>, ptr %1335, align 64, !tbaa !26
  %1337 = getelementptr inbounds nuw i8, ptr %1335, i64 64
  %1338 = load <8 x double>, ptr %1337, align 64, !tbaa !26
  %1339 = getelementptr inbounds nuw i8, ptr %1335, i64 128
  %1340 = load <8 x double>, ptr %1339, align 64, !tbaa !26
  %1341 = getelementptr inbounds nuw i8, ptr %1335, i64 192
  %1342 = load <8 x double>, ptr %1341, align 64, !tbaa !26
  %1343 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1342, <8 x double> %1340)
  %1344 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1343, <8 x double> %1338)
  %1345 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1344, <8 x double> %1336)
  %1346 = icmp sgt i64 %1331, %1312
  %1347 = fmul <8 x double> %1330, %1345
  %1348 = select i1 %1346, <8 x double> %1347, <8 x double> %1345
  br label %1349

1349:                                             ; preds = %1314, %1326
  %1350 = phi <8 x double> [ %1325, %1314 ], [ %1330, %1326 ]
  %1351 = phi <8 x double> [ %1324, %1314 ], [ %1329, %1326 ]
  %1352 = phi <8 x double> [ %1321, %1314 ], [ %1348, %1326 ]
  %1353 = getelementptr inbounds nuw i8, ptr %1168, i64 5568
  %1354 = load <8 x double>, ptr %1353, align 64, !tbaa !26
  %1355 = fcmp ogt <8 x double> %1263, splat (double 0x3D719799812DEA11)
  %1356 = select <8 x i1> %1355, <8 x double> %1263, <8 x double> splat (double 0x3D719799812DEA11)
  %1357 = getelementptr inbounds nuw i8, ptr %1168, i64 6528
  store <8 x double> %1350, ptr %1357, align 64, !tbaa !26
  %1358 = getelementptr inbounds nuw i8, ptr %1168, i64 704
  %1359 = load <8 x double>, ptr %1358, align 64, !tbaa !26
  %1360 = fdiv <8 x double> %1359, %1356
  %1361 = getelementptr inbounds nuw i8, ptr %1168, i64 6592
  store <8 x double> %1360, ptr %1361, align 64, !tbaa !26
  %1362 = getelementptr inbounds nuw i8, ptr %1168, i64 7560
  %1363 = load ptr, ptr %1362, align 8, !tbaa !56
  %1364 = load i64, ptr %119, align 16, !tbaa !21
  %1365 = getelementptr <8 x double>, ptr %1363, i64 %1364
  %1366 = getelementptr i8, ptr %1365, i64 -64
  %1367 = load <8 x double>, ptr %1366, align 64, !tbaa !26
  %1368 = fadd <8 x double> %1354, %1367
  %1369 = fmul <8 x double> %1368, splat (double 5.000000e-01)
  %1370 = getelementptr inbounds nuw i8, ptr %1168, i64 192
  %1371 = load <8 x double>, ptr %1370, align 64, !tbaa !26
  %1372 = getelementptr inbounds nuw i8, ptr %1168, i64 256
  %1373 = load <8 x double>, ptr %1372, align 64, !tbaa !26
  %1374 = getelementptr inbounds nuw i8, ptr %1168, i64 320
  %1375 = load <8 x double>, ptr %1374, align 64, !tbaa !26
  %1376 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1369, <8 x double> %1375, <8 x double> %1373)
  %1377 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1369, <8 x double> %1376, <8 x double> %1371)
  %1378 = fmul <8 x double> %1352, %1377
  %1379 = fmul <8 x double> %1238, %1378
  %1380 = getelementptr inbounds nuw i8, ptr %1168, i64 2048
  %1381 = load <8 x double>, ptr %1380, align 64, !tbaa !26
  %1382 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1379, <8 x double> %1381, <8 x double> splat (double 1.000000e+00))
  %1383 = fdiv <8 x double> splat (double 1.000000e+00), %1382
  %1384 = icmp eq <8 x i64> %1250, zeroinitializer
  %1385 = select <8 x i1> %1384, <8 x double> %1383, <8 x double> splat (double 1.000000e+00)
  %1386 = getelementptr inbounds nuw i8, ptr %1168, i64 6848
  store <8 x double> %1385, ptr %1386, align 64, !tbaa !26
  %1387 = fmul <8 x double> %1378, %1385
  %1388 = getelementptr inbounds nuw i8, ptr %1168, i64 6016
  store <8 x double> %1387, ptr %1388, align 64, !tbaa !26
  %1389 = fmul <8 x double> %1297, splat (double 2.000000e+00)
  %1390 = getelementptr inbounds nuw i8, ptr %1168, i64 384
  %1391 = load <8 x double>, ptr %1390, align 64, !tbaa !26
  %1392 = getelementptr inbounds nuw i8, ptr %1168, i64 448
  %1393 = load <8 x double>, ptr %1392, align 64, !tbaa !26
  %1394 = getelementptr inbounds nuw i8, ptr %1168, i64 512
  %1395 = load <8 x double>, ptr %1394, align 64, !tbaa !26
  %1396 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1354, <8 x double> %1395, <8 x double> %1393)
  %1397 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1354, <8 x double> %1396, <8 x double> %1391)
  %1398 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1389, <8 x double> %1397, <8 x double> %1387)
  %1399 = getelementptr inbounds nuw i8, ptr %1168, i64 6144
  store <8 x double> %1398, ptr %1399, align 64, !tbaa !26
  %1400 = fmul <8 x double> %1223, %1264
  %1401 = getelementptr inbounds nuw i8, ptr %1168, i64 1984
  %1402 = load <8 x double>, ptr %1401, align 64, !tbaa !26
  %1403 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1400, <8 x double> %1402, <8 x double> splat (double 1.000000e+00))
  %1404 = fdiv <8 x double> %1223, %1403
  %1405 = load i64, ptr %120, align 8, !tbaa !22
  %1406 = sitofp i64 %1405 to double
  %1407 = fmul double %1406, 2.000000e+00
  %1408 = insertelement <8 x double> poison, double %1407, i64 0
  %1409 = shufflevector <8 x double> %1408, <8 x double> poison, <8 x i32> zeroinitializer
  %1410 = fmul <8 x double> %1360, %1409
  %1411 = fadd <8 x double> %1404, %1410
  %1412 = fdiv <8 x double> %1404, %1411
  %1413 = fmul <8 x double> %1309, %1410
  %1414 = select <8 x i1> %1384, <8 x double> %1404, <8 x double> %1413
  %1415 = getelementptr inbounds nuw i8, ptr %1168, i64 6080
  store <8 x double> %1414, ptr %1415, align 64, !tbaa !26
  %1416 = fmul <8 x double> %1410, %1412
  %1417 = select <8 x i1> %1384, <8 x double> %1404, <8 x double> %1416
  %1418 = getelementptr inbounds nuw i8, ptr %1168, i64 6208
  store <8 x double> %1417, ptr %1418, align 64, !tbaa !26
  %1419 = select <8 x i1> %1384, <8 x double> splat (double 1.000000e+00), <8 x double> %1412
  %1420 = getelementptr inbounds nuw i8, ptr %1168, i64 6272
  store <8 x double> %1419, ptr %1420, align 64, !tbaa !26
  br i1 %1313, label %1582, label %1421

1421:                                             ; preds = %1349
  %1422 = getelementptr inbounds nuw i8, ptr %1168, i64 576
  %1423 = load <8 x double>, ptr %1422, align 64, !tbaa !26
  %1424 = getelementptr inbounds nuw i8, ptr %1168, i64 640
  %1425 = load <8 x double>, ptr %1424, align 64, !tbaa !26
  %1426 = getelementptr inbounds nuw i8, ptr %1168, i64 1536
  %1427 = load <8 x double>, ptr %1426, align 64, !tbaa !26
  %1428 = load i64, ptr %119, align 16, !tbaa !21
  %1429 = fsub <8 x double> %1288, %1427
  %1430 = fmul <8 x double> %1393, splat (double 5.000000e-01)
  %1431 = fmul <8 x double> %1395, splat (double 0x3FE5555555555555)
  %1432 = getelementptr inbounds nuw i8, ptr %1168, i64 7648
  %1433 = load ptr, ptr %1432, align 32, !tbaa !70
  %1434 = getelementptr inbounds nuw i8, ptr %1168, i64 7656
  %1435 = load ptr, ptr %1434, align 8, !tbaa !46
  %1436 = getelementptr inbounds nuw i8, ptr %1168, i64 7584
  %1437 = load ptr, ptr %1436, align 32, !tbaa !57
  %1438 = getelementptr inbounds nuw i8, ptr %1168, i64 7624
  %1439 = load ptr, ptr %1438, align 8, !tbaa !71
  %1440 = getelementptr inbounds nuw i8, ptr %1168, i64 7632
  %1441 = load ptr, ptr %1440, align 16, !tbaa !72
  %1442 = getelementptr inbounds nuw i8, ptr %1168, i64 7640
  %1443 = load ptr, ptr %1442, align 8, !tbaa !73
  %1444 = getelementptr inbounds nuw i8, ptr %1168, i64 7608
  %1445 = load ptr, ptr %1444, align 8, !tbaa !74
  %1446 = getelementptr inbounds nuw i8, ptr %1168, i64 7616
  %1447 = load ptr, ptr %1446, align 64, !tbaa !75
  %1448 = icmp sgt i64 %1428, 0
  br i1 %1448, label %1449, label %1695

1449:                                             ; preds = %1421
  %1450 = load <8 x double>, ptr %1363, align 64, !tbaa !26
  %1451 = getelementptr inbounds nuw i8, ptr %1168, i64 2880
  %1452 = load <8 x double>, ptr %1451, align 64, !tbaa !26
  %1453 = getelementptr inbounds nuw i8, ptr %1168, i64 2816
  %1454 = load <8 x double>, ptr %1453, align 64, !tbaa !26
  %1455 = fmul <8 x double> %1297, splat (double -2.000000e+00)
  %1456 = fmul <8 x double> %1455, %1354
  %1457 = fmul <8 x double> %1354, %1456
  %1458 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1354, <8 x double> %1431, <8 x double> %1430)
  %1459 = fmul <8 x double> %1457, %1458
  %1460 = getelementptr inbounds nuw i8, ptr %1168, i64 7672
  %1461 = fmul <8 x double> %1351, %1452
  %1462 = fdiv <8 x double> %1454, %1423
  br label %1463

1463:                                             ; preds = %1449, %1547
  %1464 = phi <8 x double> [ %1450, %1449 ], [ %1551, %1547 ]
  %1465 = phi <8 x double> [ zeroinitializer, %1449 ], [ %1548, %1547 ]
  %1466 = phi <8 x double> [ zeroinitializer, %1449 ], [ %1549, %1547 ]
  %1467 = phi <8 x double> [ zeroinitializer, %1449 ], [ %1550, %1547 ]
  %1468 = phi <8 x double> [ zeroinitializer, %1449 ], [ %1577, %1547 ]
  %1469 = phi <8 x double> [ zeroinitializer, %1449 ], [ %1579, %1547 ]
  %1470 = phi <8 x double> [ %1425, %1449 ], [ %1552, %1547 ]
  %1471 = phi i64 [ 0, %1449 ], [ %1473, %1547 ]
  %1472 = phi <8 x double> [ zeroinitializer, %1449 ], [ %1553, %1547 ]
  %1473 = add nuw nsw i64 %1471, 1
  %1474 = icmp slt i64 %1473, %1428
  br i1 %1474, label %1475, label %1544

1475:                                             ; preds = %1463
  %1476 = getelementptr inbounds nuw <8 x double>, ptr %1363, i64 %1473
  %1477 = load <8 x double>, ptr %1476, align 64, !tbaa !26
  %1478 = icmp slt i64 %1473, %1312
  br i1 %1478, label %1486, label %1479

1479:                                             ; preds = %1475
  %1480 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1477, <8 x double> %1395, <8 x double> %1393)
  %1481 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1477, <8 x double> %1480, <8 x double> %1391)
  %1482 = fneg <8 x double> %1477
  %1483 = fmul <8 x double> %1477, %1482
  %1484 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1477, <8 x double> %1431, <8 x double> %1430)
  %1485 = fmul <8 x double> %1483, %1484
  br label %1486

1486:                                             ; preds = %1475, %1479
  %1487 = phi <8 x double> [ %1481, %1479 ], [ %1425, %1475 ]
  %1488 = phi <8 x double> [ %1485, %1479 ], [ zeroinitializer, %1475 ]
  %1489 = load i64, ptr %1311, align 64, !tbaa !31
  %1490 = icmp eq i64 %1489, 0
  %1491 = load ptr, ptr %1460, align 8, !tbaa !35
  br i1 %1490, label %1492, label %1496

1492:                                             ; preds = %1486
  %1493 = getelementptr inbounds nuw <8 x double>, ptr %1491, i64 %1473
  %1494 = load <8 x double>, ptr %1493, align 64, !tbaa !26
  %1495 = fmul <8 x double> %1350, %1494
  br label %1512

1496:                                             ; preds = %1486
  %1497 = shl nsw i64 %1473, 8
  %1498 = getelementptr inbounds nuw i8, ptr %1491, i64 %1497
  %1499 = load <8 x double>, ptr %1498, align 64, !tbaa !26
  %1500 = getelementptr inbounds nuw i8, ptr %1498, i64 64
  %1501 = load <8 x double>, ptr %1500, align 64, !tbaa !26
  %1502 = getelementptr inbounds nuw i8, ptr %1498, i64 128
  %1503 = load <8 x double>, ptr %1502, align 64, !tbaa !26
  %1504 = getelementptr inbounds nuw i8, ptr %1498, i64 192
  %1505 = load <8 x double>, ptr %1504, align 64, !tbaa !26
  %1506 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1505, <8 x double> %1503)
  %1507 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1506, <8 x double> %1501)
  %1508 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1507, <8 x double> %1499)
  %1509 = icmp slt i64 %1471, %1489
  %1510 = fmul <8 x double> %1350, %1508
  %1511 = select i1 %1509, <8 x double> %1508, <8 x double> %1510
  br label %1512

1512:                                             ; preds = %1496, %1492
  %1513 = phi <8 x double> [ %1495, %1492 ], [ %1511, %1496 ]
  %1514 = icmp slt i64 %1471, %1489
  br i1 %1514, label %1521, label %1515

1515:                                             ; preds = %1512
  %1516 = fadd <8 x double> %1464, %1477
  %1517 = fmul <8 x double> %1516, splat (double 5.000000e-01)
  %1518 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1517, <8 x double> %1375, <8 x double> %1373)
  %1519 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1517, <8 x double> %1518, <8 x double> %1371)
  %1520 = fmul <8 x double> %1519, %1513
  br label %1531

1521:                                             ; preds = %1512
  %1522 = icmp slt i64 %1473, %1489
  br i1 %1522, label %1523, label %1525

1523:                                             ; preds = %1521
  %1524 = fmul <8 x double> %1423, %1513
  br label %1531

1525:                                             ; preds = %1521
  %1526 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1477, <8 x double> %1375, <8 x double> %1373)
  %1527 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1477, <8 x double> %1526, <8 x double> %1371)
  %1528 = fdiv <8 x double> %1461, %1527
  %1529 = fadd <8 x double> %1462, %1528
  %1530 = fdiv <8 x double> %1513, %1529
  br label %1531

1531:                                             ; preds = %1515, %1523, %1525
  %1532 = phi <8 x double> [ %1520, %1515 ], [ %1524, %1523 ], [ %1530, %1525 ]
  br i1 %1478, label %1537, label %1533

1533:                                             ; preds = %1531
  %1534 = getelementptr inbounds nuw <8 x double>, ptr %1433, i64 %1473
  %1535 = load <8 x double>, ptr %1534, align 64, !tbaa !26
  %1536 = fmul <8 x double> %1297, %1535
  br label %1537

1537:                                             ; preds = %1531, %1533
  %1538 = phi <8 x double> [ %1536, %1533 ], [ zeroinitializer, %1531 ]
  %1539 = fneg <8 x double> %1538
  %1540 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1539, <8 x double> %1470, <8 x double> %1532)
  %1541 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1538, <8 x double> %1487, <8 x double> %1532)
  %1542 = fadd <8 x double> %1472, %1488
  %1543 = fmul <8 x double> %1542, %1538
  br label %1547

1544:                                             ; preds = %1463
  %1545 = load <8 x double>, ptr %1388, align 64, !tbaa !26
  %1546 = load <8 x double>, ptr %1399, align 64, !tbaa !26
  br label %1547

1547:                                             ; preds = %1544, %1537
  %1548 = phi <8 x double> [ %1540, %1537 ], [ %1545, %1544 ]
  %1549 = phi <8 x double> [ %1541, %1537 ], [ %1546, %1544 ]
  %1550 = phi <8 x double> [ %1543, %1537 ], [ %1459, %1544 ]
  %1551 = phi <8 x double> [ %1477, %1537 ], [ %1464, %1544 ]
  %1552 = phi <8 x double> [ %1487, %1537 ], [ %1470, %1544 ]
  %1553 = phi <8 x double> [ %1488, %1537 ], [ %1472, %1544 ]
  %1554 = getelementptr inbounds nuw <8 x double>, ptr %1435, i64 %1471
  %1555 = load <8 x double>, ptr %1554, align 64, !tbaa !26
  %1556 = icmp slt i64 %1471, %1312
  %1557 = select i1 %1556, <8 x double> %1427, <8 x double> %1429
  %1558 = fmul <8 x double> %1213, %1557
  %1559 = fmul <8 x double> %1558, %1555
  %1560 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1559, <8 x double> %1470, <8 x double> %1548)
  %1561 = fadd <8 x double> %1466, %1560
  %1562 = fsub <8 x double> %1550, %1467
  %1563 = fneg <8 x double> %1559
  %1564 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1563, <8 x double> %1472, <8 x double> %1562)
  %1565 = getelementptr inbounds nuw <8 x double>, ptr %1437, i64 %1471
  %1566 = load <8 x double>, ptr %1565, align 64, !tbaa !26
  %1567 = fsub <8 x double> %1564, %1566
  %1568 = fneg <8 x double> %1465
  %1569 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1568, <8 x double> %1469, <8 x double> %1561)
  %1570 = fdiv <8 x double> splat (double 1.000000e+00), %1569
  %1571 = getelementptr inbounds nuw <8 x double>, ptr %1439, i64 %1471
  store <8 x double> %1567, ptr %1571, align 64, !tbaa !26
  %1572 = getelementptr inbounds nuw <8 x double>, ptr %1441, i64 %1471
  store <8 x double> %1465, ptr %1572, align 64, !tbaa !26
  %1573 = fadd <8 x double> %1465, %1549
  %1574 = fsub <8 x double> %1573, %1561
  %1575 = getelementptr inbounds nuw <8 x double>, ptr %1443, i64 %1471
  store <8 x double> %1574, ptr %1575, align 64, !tbaa !26
  %1576 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1465, <8 x double> %1468, <8 x double> %1567)
  %1577 = fmul <8 x double> %1576, %1570
  %1578 = getelementptr inbounds nuw <8 x double>, ptr %1445, i64 %1471
  store <8 x double> %1577, ptr %1578, align 64, !tbaa !26
  %1579 = fmul <8 x double> %1549, %1570
  %1580 = getelementptr inbounds nuw <8 x double>, ptr %1447, i64 %1471
  store <8 x double> %1579, ptr %1580, align 64, !tbaa !26
  %1581 = icmp eq i64 %1473, %1428
  br i1 %1581, label %1695, label %1463, !llvm.loop !76

1582:                                             ; preds = %1349
  %1583 = getelementptr inbounds nuw i8, ptr %1168, i64 1536
  %1584 = load <8 x double>, ptr %1583, align 64, !tbaa !26
  %1585 = load i64, ptr %119, align 16, !tbaa !21
  %1586 = fdiv <8 x double> %1309, %1262
  %1587 = fsub <8 x double> %1288, %1584
  %1588 = fmul <8 x double> %1213, %1587
  %1589 = fmul <8 x double> %1393, splat (double 5.000000e-01)
  %1590 = fmul <8 x double> %1395, splat (double 0x3FE5555555555555)
  %1591 = getelementptr inbounds nuw i8, ptr %1168, i64 7648
  %1592 = load ptr, ptr %1591, align 32, !tbaa !70
  %1593 = getelementptr inbounds nuw i8, ptr %1168, i64 7656
  %1594 = load ptr, ptr %1593, align 8, !tbaa !46
  %1595 = getelementptr inbounds nuw i8, ptr %1168, i64 7584
  %1596 = load ptr, ptr %1595, align 32, !tbaa !57
  %1597 = getelementptr inbounds nuw i8, ptr %1168, i64 7624
  %1598 = load ptr, ptr %1597, align 8, !tbaa !71
  %1599 = getelementptr inbounds nuw i8, ptr %1168, i64 7632
  %1600 = load ptr, ptr %1599, align 16, !tbaa !72
  %1601 = getelementptr inbounds nuw i8, ptr %1168, i64 7640
  %1602 = load ptr, ptr %1601, align 8, !tbaa !73
  %1603 = getelementptr inbounds nuw i8, ptr %1168, i64 7608
  %1604 = load ptr, ptr %1603, align 8, !tbaa !74
  %1605 = getelementptr inbounds nuw i8, ptr %1168, i64 7616
  %1606 = load ptr, ptr %1605, align 64, !tbaa !75
  %1607 = icmp sgt i64 %1585, 0
  br i1 %1607, label %1608, label %1695

1608:                                             ; preds = %1582
  %1609 = load <8 x double>, ptr %1363, align 64, !tbaa !26
  %1610 = fneg <8 x double> %1609
  %1611 = fmul <8 x double> %1609, %1610
  %1612 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1609, <8 x double> %1590, <8 x double> %1589)
  %1613 = fmul <8 x double> %1611, %1612
  %1614 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1609, <8 x double> %1395, <8 x double> %1393)
  %1615 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1609, <8 x double> %1614, <8 x double> %1391)
  %1616 = fmul <8 x double> %1297, splat (double -2.000000e+00)
  %1617 = fmul <8 x double> %1616, %1354
  %1618 = fmul <8 x double> %1354, %1617
  %1619 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1354, <8 x double> %1590, <8 x double> %1589)
  %1620 = fmul <8 x double> %1618, %1619
  %1621 = getelementptr inbounds nuw i8, ptr %1168, i64 7672
  br label %1622

1622:                                             ; preds = %1608, %1663
  %1623 = phi <8 x double> [ %1609, %1608 ], [ %1667, %1663 ]
  %1624 = phi <8 x double> [ zeroinitializer, %1608 ], [ %1664, %1663 ]
  %1625 = phi <8 x double> [ zeroinitializer, %1608 ], [ %1665, %1663 ]
  %1626 = phi <8 x double> [ zeroinitializer, %1608 ], [ %1666, %1663 ]
  %1627 = phi <8 x double> [ zeroinitializer, %1608 ], [ %1690, %1663 ]
  %1628 = phi <8 x double> [ zeroinitializer, %1608 ], [ %1692, %1663 ]
  %1629 = phi <8 x double> [ %1615, %1608 ], [ %1668, %1663 ]
  %1630 = phi i64 [ 0, %1608 ], [ %1632, %1663 ]
  %1631 = phi <8 x double> [ %1613, %1608 ], [ %1669, %1663 ]
  %1632 = add nuw nsw i64 %1630, 1
  %1633 = icmp slt i64 %1632, %1585
  br i1 %1633, label %1634, label %1660

1634:                                             ; preds = %1622
  %1635 = getelementptr inbounds nuw <8 x double>, ptr %1363, i64 %1632
  %1636 = load <8 x double>, ptr %1635, align 64, !tbaa !26
  %1637 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1636, <8 x double> %1395, <8 x double> %1393)
  %1638 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1636, <8 x double> %1637, <8 x double> %1391)
  %1639 = fneg <8 x double> %1636
  %1640 = fmul <8 x double> %1636, %1639
  %1641 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1636, <8 x double> %1590, <8 x double> %1589)
  %1642 = fmul <8 x double> %1640, %1641
  %1643 = fadd <8 x double> %1623, %1636
  %1644 = fmul <8 x double> %1643, splat (double 5.000000e-01)
  %1645 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1644, <8 x double> %1375, <8 x double> %1373)
  %1646 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1644, <8 x double> %1645, <8 x double> %1371)
  %1647 = load ptr, ptr %1621, align 8, !tbaa !35
  %1648 = getelementptr inbounds nuw <8 x double>, ptr %1647, i64 %1632
  %1649 = load <8 x double>, ptr %1648, align 64, !tbaa !26
  %1650 = fmul <8 x double> %1586, %1649
  %1651 = fmul <8 x double> %1650, %1646
  %1652 = getelementptr inbounds nuw <8 x double>, ptr %1592, i64 %1632
  %1653 = load <8 x double>, ptr %1652, align 64, !tbaa !26
  %1654 = fmul <8 x double> %1297, %1653
  %1655 = fneg <8 x double> %1654
  %1656 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1655, <8 x double> %1629, <8 x double> %1651)
  %1657 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1654, <8 x double> %1638, <8 x double> %1651)
  %1658 = fadd <8 x double> %1631, %1642
  %1659 = fmul <8 x double> %1658, %1654
  br label %1663

1660:                                             ; preds = %1622
  %1661 = load <8 x double>, ptr %1388, align 64, !tbaa !26
  %1662 = load <8 x double>, ptr %1399, align 64, !tbaa !26
  br label %1663

1663:                                             ; preds = %1660, %1634
  %1664 = phi <8 x double> [ %1656, %1634 ], [ %1661, %1660 ]
  %1665 = phi <8 x double> [ %1657, %1634 ], [ %1662, %1660 ]
  %1666 = phi <8 x double> [ %1659, %1634 ], [ %1620, %1660 ]
  %1667 = phi <8 x double> [ %1636, %1634 ], [ %1623, %1660 ]
  %1668 = phi <8 x double> [ %1638, %1634 ], [ %1629, %1660 ]
  %1669 = phi <8 x double> [ %1642, %1634 ], [ %1631, %1660 ]
  %1670 = getelementptr inbounds nuw <8 x double>, ptr %1594, i64 %1630
  %1671 = load <8 x double>, ptr %1670, align 64, !tbaa !26
  %1672 = fmul <8 x double> %1588, %1671
  %1673 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1672, <8 x double> %1629, <8 x double> %1664)
  %1674 = fadd <8 x double> %1625, %1673
  %1675 = fsub <8 x double> %1666, %1626
  %1676 = fneg <8 x double> %1672
  %1677 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1676, <8 x double> %1631, <8 x double> %1675)
  %1678 = getelementptr inbounds nuw <8 x double>, ptr %1596, i64 %1630
  %1679 = load <8 x double>, ptr %1678, align 64, !tbaa !26
  %1680 = fsub <8 x double> %1677, %1679
  %1681 = fneg <8 x double> %1624
  %1682 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1681, <8 x double> %1628, <8 x double> %1674)
  %1683 = fdiv <8 x double> splat (double 1.000000e+00), %1682
  %1684 = getelementptr inbounds nuw <8 x double>, ptr %1598, i64 %1630
  store <8 x double> %1680, ptr %1684, align 64, !tbaa !26
  %1685 = getelementptr inbounds nuw <8 x double>, ptr %1600, i64 %1630
  store <8 x double> %1624, ptr %1685, align 64, !tbaa !26
  %1686 = fadd <8 x double> %1624, %1665
  %1687 = fsub <8 x double> %1686, %1674
  %1688 = getelementptr inbounds nuw <8 x double>, ptr %1602, i64 %1630
  store <8 x double> %1687, ptr %1688, align 64, !tbaa !26
  %1689 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1624, <8 x double> %1627, <8 x double> %1680)
  %1690 = fmul <8 x double> %1689, %1683
  %1691 = getelementptr inbounds nuw <8 x double>, ptr %1604, i64 %1630
  store <8 x double> %1690, ptr %1691, align 64, !tbaa !26
  %1692 = fmul <8 x double> %1665, %1683
  %1693 = getelementptr inbounds nuw <8 x double>, ptr %1606, i64 %1630
  store <8 x double> %1692, ptr %1693, align 64, !tbaa !26
  %1694 = icmp eq i64 %1632, %1585
  br i1 %1694, label %1695, label %1622, !llvm.loop !77

1695:                                             ; preds = %1547, %1663, %1421, %1582
  %1696 = getelementptr inbounds nuw i8, ptr %1168, i64 7608
  %1697 = load ptr, ptr %1696, align 8, !tbaa !74
  %1698 = load i64, ptr %119, align 16, !tbaa !21
  %1699 = add nsw i64 %1698, -1
  %1700 = getelementptr inbounds <8 x double>, ptr %1697, i64 %1699
  %1701 = load <8 x double>, ptr %1700, align 64, !tbaa !26
  %1702 = getelementptr inbounds nuw i8, ptr %1168, i64 7616
  %1703 = load ptr, ptr %1702, align 64, !tbaa !75
  %1704 = getelementptr inbounds <8 x double>, ptr %1703, i64 %1699
  %1705 = load <8 x double>, ptr %1704, align 64, !tbaa !26
  %1706 = load <8 x double>, ptr %1388, align 64, !tbaa !26
  %1707 = fmul <8 x double> %1701, %1706
  %1708 = fsub <8 x double> splat (double 1.000000e+00), %1705
  %1709 = fmul <8 x double> %1706, %1708
  %1710 = load <8 x double>, ptr %1415, align 64, !tbaa !26
  %1711 = load <8 x double>, ptr %1221, align 64, !tbaa !26
  %1712 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1710, <8 x double> %1711, <8 x double> %1707)
  %1713 = load <8 x double>, ptr %1260, align 64, !tbaa !26
  %1714 = fsub <8 x double> %1712, %1713
  %1715 = fadd <8 x double> %1709, %1710
  %1716 = load <8 x double>, ptr %1257, align 64, !tbaa !26
  %1717 = fadd <8 x double> %1715, %1716
  %1718 = load <8 x i64>, ptr %1249, align 64, !tbaa !26
  %1719 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1718)
  %1720 = icmp eq i64 %1719, 0
  %1721 = load i64, ptr %120, align 8, !tbaa !22
  br i1 %1720, label %1722, label %1737

1722:                                             ; preds = %1695
  %1723 = icmp slt i64 %1721, 0
  br i1 %1723, label %1728, label %1724

1724:                                             ; preds = %1722
  %1725 = getelementptr inbounds nuw i8, ptr %1168, i64 1408
  %1726 = getelementptr inbounds nuw i8, ptr %1168, i64 7728
  %1727 = load <8 x double>, ptr %1725, align 64, !tbaa !26
  br label %1730

1728:                                             ; preds = %1730, %1722
  %1729 = getelementptr inbounds nuw i8, ptr %1168, i64 5824
  store <8 x double> %1714, ptr %1729, align 64, !tbaa !26
  br label %1864

1730:                                             ; preds = %1724, %1730
  %1731 = phi i64 [ 0, %1724 ], [ %1734, %1730 ]
  %1732 = load ptr, ptr %1726, align 16, !tbaa !78
  %1733 = getelementptr inbounds nuw <8 x double>, ptr %1732, i64 %1731
  store <8 x double> %1727, ptr %1733, align 64, !tbaa !26
  %1734 = add nuw nsw i64 %1731, 1
  %1735 = load i64, ptr %120, align 8, !tbaa !22
  %1736 = icmp slt i64 %1731, %1735
  br i1 %1736, label %1730, label %1728, !llvm.loop !79

1737:                                             ; preds = %1695
  %1738 = load <8 x double>, ptr %1228, align 64, !tbaa !26
  %1739 = load <8 x double>, ptr %1277, align 64, !tbaa !26
  %1740 = getelementptr inbounds nuw i8, ptr %1168, i64 1280
  %1741 = load <8 x double>, ptr %1740, align 64, !tbaa !26
  %1742 = fmul <8 x double> %1739, %1741
  %1743 = load <8 x double>, ptr %1168, align 64, !tbaa !26
  %1744 = fsub <8 x double> %1743, %1738
  %1745 = sitofp i64 %1721 to double
  %1746 = insertelement <8 x double> poison, double %1745, i64 0
  %1747 = shufflevector <8 x double> %1746, <8 x double> poison, <8 x i32> zeroinitializer
  %1748 = fdiv <8 x double> %1744, %1747
  %1749 = load <8 x double>, ptr %1418, align 64, !tbaa !26
  %1750 = load <8 x double>, ptr %1420, align 64, !tbaa !26
  %1751 = getelementptr inbounds nuw i8, ptr %1168, i64 1408
  %1752 = load <8 x double>, ptr %1751, align 64, !tbaa !26
  %1753 = getelementptr inbounds nuw i8, ptr %1168, i64 7728
  %1754 = load ptr, ptr %1753, align 16, !tbaa !78
  %1755 = getelementptr inbounds <8 x double>, ptr %1754, i64 %1721
  store <8 x double> %1752, ptr %1755, align 64, !tbaa !26
  %1756 = icmp sgt i64 %1721, 0
  br i1 %1756, label %1757, label %1848

1757:                                             ; preds = %1737
  %1758 = fneg <8 x double> %1742
  %1759 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1758, <8 x double> %1750, <8 x double> %1749)
  %1760 = fsub <8 x double> splat (double 1.000000e+00), %1750
  %1761 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1742, <8 x double> %1760, <8 x double> %1749)
  %1762 = getelementptr inbounds nuw i8, ptr %1168, i64 7736
  %1763 = getelementptr inbounds nuw i8, ptr %1168, i64 7744
  %1764 = getelementptr inbounds nuw i8, ptr %1168, i64 768
  %1765 = fmul <8 x double> %1742, splat (double -5.000000e-01)
  %1766 = getelementptr inbounds nuw i8, ptr %1168, i64 7704
  %1767 = getelementptr inbounds nuw i8, ptr %1168, i64 7712
  %1768 = getelementptr inbounds nuw i8, ptr %1168, i64 7720
  br label %1769

1769:                                             ; preds = %1757, %1823
  %1770 = phi <8 x double> [ %1761, %1757 ], [ %1825, %1823 ]
  %1771 = phi <8 x double> [ %1759, %1757 ], [ %1826, %1823 ]
  %1772 = phi <8 x double> [ %1711, %1757 ], [ %1841, %1823 ]
  %1773 = phi <8 x double> [ zeroinitializer, %1757 ], [ %1844, %1823 ]
  %1774 = phi <8 x double> [ %1752, %1757 ], [ %1787, %1823 ]
  %1775 = phi i64 [ %1721, %1757 ], [ %1776, %1823 ]
  %1776 = add nsw i64 %1775, -1
  %1777 = uitofp nneg i64 %1776 to double
  %1778 = insertelement <8 x double> poison, double %1777, i64 0
  %1779 = shufflevector <8 x double> %1778, <8 x double> poison, <8 x i32> zeroinitializer
  %1780 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1779, <8 x double> %1748, <8 x double> %1738)
  %1781 = load <8 x double>, ptr %1278, align 64, !tbaa !26
  %1782 = load <8 x double>, ptr %1280, align 64, !tbaa !26
  %1783 = load <8 x double>, ptr %1282, align 64, !tbaa !26
  %1784 = load <8 x double>, ptr %1284, align 64, !tbaa !26
  %1785 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1780, <8 x double> %1784, <8 x double> %1783)
  %1786 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1780, <8 x double> %1785, <8 x double> %1782)
  %1787 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1780, <8 x double> %1786, <8 x double> %1781)
  %1788 = load <8 x double>, ptr %1212, align 64, !tbaa !26
  %1789 = load <8 x double>, ptr %1198, align 64, !tbaa !26
  %1790 = load ptr, ptr %1762, align 8, !tbaa !47
  %1791 = getelementptr inbounds nuw <8 x double>, ptr %1790, i64 %1776
  %1792 = load <8 x double>, ptr %1791, align 64, !tbaa !26
  %1793 = fmul <8 x double> %1789, %1792
  %1794 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1788, <8 x double> %1787, <8 x double> %1793)
  %1795 = load <8 x double>, ptr %1202, align 64, !tbaa !26
  %1796 = load ptr, ptr %1763, align 64, !tbaa !58
  %1797 = getelementptr inbounds nuw <8 x double>, ptr %1796, i64 %1776
  %1798 = load <8 x double>, ptr %1797, align 64, !tbaa !26
  %1799 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1795, <8 x double> %1798, <8 x double> %1794)
  %1800 = fmul <8 x double> %1799, splat (double 5.000000e-01)
  %1801 = icmp eq i64 %1775, 1
  br i1 %1801, label %1817, label %1802

1802:                                             ; preds = %1769
  %1803 = load <8 x double>, ptr %1764, align 64, !tbaa !26
  %1804 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1800, <8 x double> %1803, <8 x double> %1765)
  %1805 = load <8 x double>, ptr %1361, align 64, !tbaa !26
  %1806 = fmul <8 x double> %1747, %1805
  %1807 = load <8 x double>, ptr %1299, align 64, !tbaa !26
  %1808 = load <8 x double>, ptr %1301, align 64, !tbaa !26
  %1809 = load <8 x double>, ptr %1303, align 64, !tbaa !26
  %1810 = load <8 x double>, ptr %1305, align 64, !tbaa !26
  %1811 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1780, <8 x double> %1810, <8 x double> %1809)
  %1812 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1780, <8 x double> %1811, <8 x double> %1808)
  %1813 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1780, <8 x double> %1812, <8 x double> %1807)
  %1814 = fmul <8 x double> %1806, %1813
  %1815 = fsub <8 x double> %1814, %1804
  %1816 = fadd <8 x double> %1804, %1814
  br label %1823

1817:                                             ; preds = %1769
  %1818 = load <8 x double>, ptr %1415, align 64, !tbaa !26
  %1819 = load <8 x double>, ptr %1764, align 64, !tbaa !26
  %1820 = fmul <8 x double> %1800, splat (double -2.000000e+00)
  %1821 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1820, <8 x double> %1819, <8 x double> %1818)
  %1822 = fadd <8 x double> %1742, %1821
  br label %1823

1823:                                             ; preds = %1817, %1802
  %1824 = phi <8 x double> [ %1803, %1802 ], [ %1819, %1817 ]
  %1825 = phi <8 x double> [ %1815, %1802 ], [ %1822, %1817 ]
  %1826 = phi <8 x double> [ %1816, %1802 ], [ %1818, %1817 ]
  %1827 = fsub <8 x double> %1774, %1787
  %1828 = fmul <8 x double> %1788, %1827
  %1829 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1828, <8 x double> %1824, <8 x double> %1770)
  %1830 = fadd <8 x double> %1826, %1829
  %1831 = fneg <8 x double> %1771
  %1832 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1831, <8 x double> %1773, <8 x double> %1830)
  %1833 = fdiv <8 x double> splat (double 1.000000e+00), %1832
  %1834 = load ptr, ptr %1753, align 16, !tbaa !78
  %1835 = getelementptr inbounds nuw <8 x double>, ptr %1834, i64 %1776
  store <8 x double> %1787, ptr %1835, align 64, !tbaa !26
  %1836 = load ptr, ptr %1766, align 8, !tbaa !61
  %1837 = getelementptr inbounds nuw <8 x double>, ptr %1836, i64 %1776
  %1838 = load <8 x double>, ptr %1837, align 64, !tbaa !26
  %1839 = fneg <8 x double> %1838
  %1840 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1771, <8 x double> %1772, <8 x double> %1839)
  %1841 = fmul <8 x double> %1833, %1840
  %1842 = load ptr, ptr %1767, align 32, !tbaa !80
  %1843 = getelementptr inbounds nuw <8 x double>, ptr %1842, i64 %1776
  store <8 x double> %1841, ptr %1843, align 64, !tbaa !26
  %1844 = fmul <8 x double> %1825, %1833
  %1845 = load ptr, ptr %1768, align 8, !tbaa !81
  %1846 = getelementptr inbounds nuw <8 x double>, ptr %1845, i64 %1776
  store <8 x double> %1844, ptr %1846, align 64, !tbaa !26
  %1847 = icmp samesign ugt i64 %1775, 1
  br i1 %1847, label %1769, label %1848, !llvm.loop !82

1848:                                             ; preds = %1823, %1737
  %1849 = load <8 x i64>, ptr %1249, align 64, !tbaa !26
  %1850 = load <8 x double>, ptr %1415, align 64, !tbaa !26
  %1851 = getelementptr inbounds nuw i8, ptr %1168, i64 7712
  %1852 = load ptr, ptr %1851, align 32, !tbaa !80
  %1853 = load <8 x double>, ptr %1852, align 64, !tbaa !26
  %1854 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1850, <8 x double> %1853, <8 x double> %1707)
  %1855 = icmp eq <8 x i64> %1849, zeroinitializer
  %1856 = select <8 x i1> %1855, <8 x double> %1714, <8 x double> %1854
  %1857 = getelementptr inbounds nuw i8, ptr %1168, i64 5824
  store <8 x double> %1856, ptr %1857, align 64, !tbaa !26
  %1858 = getelementptr inbounds nuw i8, ptr %1168, i64 7720
  %1859 = load ptr, ptr %1858, align 8, !tbaa !81
  %1860 = load <8 x double>, ptr %1859, align 64, !tbaa !26
  %1861 = fsub <8 x double> splat (double 1.000000e+00), %1860
  %1862 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1850, <8 x double> %1861, <8 x double> %1709)
  %1863 = select <8 x i1> %1855, <8 x double> %1717, <8 x double> %1862
  br label %1864

1864:                                             ; preds = %1728, %1848
  %1865 = phi <8 x double> [ %1717, %1728 ], [ %1863, %1848 ]
  %1866 = getelementptr inbounds nuw i8, ptr %1168, i64 5888
  store <8 x double> %1865, ptr %1866, align 64, !tbaa !26
  %1867 = add nuw nsw i64 %1166, 1
  %1868 = load i64, ptr %156, align 8, !tbaa !20
  %1869 = icmp slt i64 %1867, %1868
  br i1 %1869, label %1165, label %1162, !llvm.loop !83

1870:                                             ; preds = %1973
  %1871 = icmp sgt i64 %1974, 0
  br label %1872

1872:                                             ; preds = %1870, %1160, %1162
  %1873 = phi <8 x double> [ %1163, %1162 ], [ %1161, %1160 ], [ %1163, %1870 ]
  %1874 = phi i1 [ false, %1162 ], [ false, %1160 ], [ %1871, %1870 ]
  %1875 = fcmp ogt <8 x double> %1873, zeroinitializer
  %1876 = bitcast <8 x i1> %1875 to i8
  %1877 = icmp eq i8 %1876, 0
  br i1 %1877, label %2060, label %1977

1878:                                             ; preds = %1162, %1973
  %1879 = phi i64 [ %1974, %1973 ], [ %1868, %1162 ]
  %1880 = phi i64 [ %1975, %1973 ], [ 0, %1162 ]
  %1881 = load ptr, ptr %129, align 8, !tbaa !28
  %1882 = getelementptr inbounds nuw %struct.Piece, ptr %1881, i64 %1880
  %1883 = getelementptr inbounds nuw i8, ptr %1882, i64 7488
  %1884 = load <8 x i64>, ptr %1883, align 64, !tbaa !26
  %1885 = getelementptr inbounds nuw i8, ptr %1882, i64 2240
  %1886 = load <8 x double>, ptr %1885, align 64, !tbaa !26
  %1887 = fcmp ogt <8 x double> %1886, zeroinitializer
  %1888 = select <8 x i1> %1887, <8 x i64> %1884, <8 x i64> zeroinitializer
  %1889 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1888)
  %1890 = icmp eq i64 %1889, 0
  br i1 %1890, label %1973, label %1891

1891:                                             ; preds = %1878
  %1892 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %1893 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1892, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1894 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1892, <8 x double> %1893, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1895 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %1896 = getelementptr inbounds nuw i8, ptr %1882, i64 5824
  %1897 = load <8 x double>, ptr %1896, align 64, !tbaa !26
  %1898 = getelementptr inbounds nuw i8, ptr %1882, i64 5888
  %1899 = load <8 x double>, ptr %1898, align 64, !tbaa !26
  %1900 = fdiv <8 x double> %1897, %1899
  %1901 = fcmp olt <8 x double> %1900, %1892
  %1902 = select <8 x i1> %1901, <8 x double> %1900, <8 x double> %1892
  %1903 = getelementptr inbounds nuw i8, ptr %1882, i64 3520
  %1904 = load <8 x double>, ptr %1903, align 64, !tbaa !26
  %1905 = fcmp olt <8 x double> %1904, %1902
  %1906 = select <8 x i1> %1905, <8 x double> %1904, <8 x double> %1902
  %1907 = fneg <8 x double> %1899
  %1908 = getelementptr inbounds nuw i8, ptr %1882, i64 7104
  %1909 = load <8 x double>, ptr %1908, align 64, !tbaa !26
  br label %1913

1910:                                             ; preds = %1913
  %1911 = getelementptr inbounds nuw i8, ptr %1882, i64 5952
  store <8 x double> %1964, ptr %1911, align 64, !tbaa !26
  %1912 = load i64, ptr %156, align 8, !tbaa !20
  br label %1973

1913:                                             ; preds = %1891, %1913
  %1914 = phi <8 x i64> [ %1888, %1891 ], [ %1967, %1913 ]
  %1915 = phi i32 [ 0, %1891 ], [ %1968, %1913 ]
  %1916 = phi <8 x double> [ %1906, %1891 ], [ %1964, %1913 ]
  %1917 = fadd <8 x double> %1916, splat (double 2.731500e+02)
  %1918 = fcmp ogt <8 x double> %1916, zeroinitializer
  %1919 = select <8 x i1> %1918, <8 x double> %1916, <8 x double> zeroinitializer
  %1920 = fadd <8 x double> %1919, splat (double 2.731500e+02)
  %1921 = fadd <8 x double> %1920, splat (double 0xC08451671D164BD4)
  %1922 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %1921
  %1923 = fsub <8 x double> %1920, %1922
  %1924 = fadd <8 x double> %1923, splat (double 0x40923C3565924845)
  %1925 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1923, <8 x double> %1924, <8 x double> splat (double 0xC12619EA558539E6))
  %1926 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1923, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %1927 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1923, <8 x double> %1926, <8 x double> splat (double 0xC148A99584203885))
  %1928 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1923, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %1929 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1923, <8 x double> %1928, <8 x double> splat (double 0x4118B9E59F2691E5))
  %1930 = fmul <8 x double> %1929, splat (double 2.000000e+00)
  %1931 = fmul <8 x double> %1925, splat (double 4.000000e+00)
  %1932 = fneg <8 x double> %1929
  %1933 = fmul <8 x double> %1931, %1932
  %1934 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1927, <8 x double> %1927, <8 x double> %1933)
  %1935 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1934)
  %1936 = fsub <8 x double> %1935, %1927
  %1937 = fdiv <8 x double> %1930, %1936
  %1938 = fmul <8 x double> %1937, %1937
  %1939 = fmul <8 x double> %1938, splat (double 1.000000e+06)
  %1940 = fmul <8 x double> %1938, %1939
  %1941 = fmul <8 x double> %1917, splat (double 4.615260e+02)
  %1942 = fdiv <8 x double> %1940, %1941
  %1943 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1907, <8 x double> %1916, <8 x double> %1897)
  %1944 = fsub <8 x double> %1942, %1895
  %1945 = fcmp ogt <8 x double> %1944, zeroinitializer
  %1946 = select <8 x i1> %1945, <8 x double> %1944, <8 x double> zeroinitializer
  %1947 = fmul <8 x double> %1894, %1946
  %1948 = fdiv <8 x double> %1947, %1909
  %1949 = fsub <8 x double> %1943, %1948
  %1950 = fmul <8 x double> %1894, %1942
  %1951 = fdiv <8 x double> %1894, %1941
  %1952 = fadd <8 x double> %1951, splat (double -1.000000e+00)
  %1953 = fmul <8 x double> %1952, %1950
  %1954 = fdiv <8 x double> %1953, %1917
  %1955 = fdiv <8 x double> %1954, %1909
  %1956 = fcmp ule <8 x double> %1942, %1895
  %1957 = select <8 x i1> %1956, <8 x double> zeroinitializer, <8 x double> %1955
  %1958 = fsub <8 x double> %1907, %1957
  %1959 = fdiv <8 x double> %1949, %1958
  %1960 = fsub <8 x double> %1916, %1959
  %1961 = fcmp olt <8 x double> %1960, %1902
  %1962 = select <8 x i1> %1961, <8 x double> %1960, <8 x double> %1902
  %1963 = icmp eq <8 x i64> %1914, zeroinitializer
  %1964 = select <8 x i1> %1963, <8 x double> %1916, <8 x double> %1962
  %1965 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1959)
  %1966 = fcmp oge <8 x double> %1965, splat (double 1.000000e-05)
  %1967 = select <8 x i1> %1966, <8 x i64> %1914, <8 x i64> zeroinitializer
  %1968 = add nuw nsw i32 %1915, 1
  %1969 = icmp samesign ult i32 %1915, 7
  %1970 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1967)
  %1971 = icmp ne i64 %1970, 0
  %1972 = select i1 %1969, i1 %1971, i1 false
  br i1 %1972, label %1913, label %1910, !llvm.loop !84

1973:                                             ; preds = %1878, %1910
  %1974 = phi i64 [ %1879, %1878 ], [ %1912, %1910 ]
  %1975 = add nuw nsw i64 %1880, 1
  %1976 = icmp slt i64 %1975, %1974
  br i1 %1976, label %1878, label %1870, !llvm.loop !85

1977:                                             ; preds = %1872
  %1978 = sext <8 x i1> %1875 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %1978, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %1979 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %1980 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %1981 = fadd <8 x double> %1979, %1980
  store <8 x double> %1981, ptr %6, align 64, !tbaa !26
  %1982 = load ptr, ptr %167, align 8
  %1983 = load ptr, ptr %169, align 8
  %1984 = load ptr, ptr %170, align 8
  br label %1985

1985:                                             ; preds = %2055, %1977
  %1986 = phi i64 [ 0, %1977 ], [ %2056, %2055 ]
  %1987 = getelementptr inbounds nuw i64, ptr %4, i64 %1986
  %1988 = load i64, ptr %1987, align 8, !tbaa !30
  %1989 = icmp eq i64 %1988, 0
  br i1 %1989, label %2055, label %1990

1990:                                             ; preds = %1985
  %1991 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %1986
  %1992 = load i64, ptr %1991, align 8, !tbaa !30
  %1993 = shl nsw i64 %1992, 1
  %1994 = or disjoint i64 %1993, 1
  %1995 = getelementptr inbounds i64, ptr %1982, i64 %1994
  %1996 = load i64, ptr %1995, align 8, !tbaa !30
  %1997 = shl nuw nsw i64 %1986, 1
  %1998 = or disjoint i64 %1997, 1
  %1999 = getelementptr inbounds nuw [16 x i64], ptr %168, i64 0, i64 %1998
  %2000 = getelementptr inbounds i64, ptr %1984, i64 %1994
  %2001 = load i64, ptr %2000, align 8, !tbaa !30
  %2002 = shl nsw i64 %2001, 4
  %2003 = getelementptr inbounds i8, ptr %1983, i64 %2002
  %2004 = getelementptr inbounds nuw double, ptr %6, i64 %1986
  %2005 = load double, ptr %2004, align 8, !tbaa !40
  %2006 = load i64, ptr %1999, align 8, !tbaa !30
  %2007 = getelementptr i8, ptr %2003, i64 -16
  %2008 = icmp sgt i64 %2006, 0
  br i1 %2008, label %2009, label %2018

2009:                                             ; preds = %1990, %2015
  %2010 = phi i64 [ %2016, %2015 ], [ %2006, %1990 ]
  %2011 = shl i64 %2010, 4
  %2012 = getelementptr i8, ptr %2007, i64 %2011
  %2013 = load double, ptr %2012, align 8, !tbaa !40
  %2014 = fcmp ugt double %2005, %2013
  br i1 %2014, label %2018, label %2015

2015:                                             ; preds = %2009
  %2016 = add nsw i64 %2010, -1
  store i64 %2016, ptr %1999, align 8, !tbaa !30
  %2017 = icmp sgt i64 %2010, 1
  br i1 %2017, label %2009, label %2018, !llvm.loop !67

2018:                                             ; preds = %2015, %2009, %1990
  %2019 = phi i64 [ %2006, %1990 ], [ 0, %2015 ], [ %2010, %2009 ]
  %2020 = icmp slt i64 %2019, %1996
  br i1 %2020, label %2021, label %2030

2021:                                             ; preds = %2018, %2027
  %2022 = phi i64 [ %2028, %2027 ], [ %2019, %2018 ]
  %2023 = shl nsw i64 %2022, 4
  %2024 = getelementptr inbounds i8, ptr %2003, i64 %2023
  %2025 = load double, ptr %2024, align 8, !tbaa !40
  %2026 = fcmp ule double %2005, %2025
  br i1 %2026, label %2035, label %2027

2027:                                             ; preds = %2021
  %2028 = add i64 %2022, 1
  store i64 %2028, ptr %1999, align 8, !tbaa !30
  %2029 = icmp eq i64 %2028, %1996
  br i1 %2029, label %2030, label %2021, !llvm.loop !68

2030:                                             ; preds = %2027, %2018
  %2031 = shl i64 %1996, 4
  %2032 = getelementptr i8, ptr %2003, i64 %2031
  %2033 = getelementptr i8, ptr %2032, i64 -8
  %2034 = load double, ptr %2033, align 8, !tbaa !40
  br label %2052

2035:                                             ; preds = %2021
  %2036 = shl nsw i64 %2022, 1
  %2037 = or disjoint i64 %2036, 1
  %2038 = getelementptr inbounds double, ptr %2003, i64 %2037
  %2039 = load double, ptr %2038, align 8, !tbaa !40
  %2040 = icmp sgt i64 %2022, 0
  br i1 %2040, label %2041, label %2052

2041:                                             ; preds = %2035
  %2042 = getelementptr inbounds nuw i8, ptr %2003, i64 %2023
  %2043 = getelementptr i8, ptr %2042, i64 -8
  %2044 = load double, ptr %2043, align 8, !tbaa !40
  %2045 = getelementptr i8, ptr %2042, i64 -16
  %2046 = load double, ptr %2045, align 8, !tbaa !40
  %2047 = fsub double %2005, %2046
  %2048 = fsub double %2025, %2046
  %2049 = fdiv double %2047, %2048
  %2050 = fsub double %2039, %2044
  %2051 = tail call double @llvm.fmuladd.f64(double %2049, double %2050, double %2044)
  br label %2052

2052:                                             ; preds = %2041, %2035, %2030
  %2053 = phi double [ %2051, %2041 ], [ %2039, %2035 ], [ %2034, %2030 ]
  %2054 = getelementptr inbounds nuw double, ptr %5, i64 %1986
  store double %2053, ptr %2054, align 8, !tbaa !40
  br label %2055

2055:                                             ; preds = %2052, %1985
  %2056 = add nuw nsw i64 %1986, 1
  %2057 = icmp eq i64 %2056, 8
  br i1 %2057, label %2058, label %1985, !llvm.loop !69

2058:                                             ; preds = %2055
  %2059 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2060

2060:                                             ; preds = %1872, %2058
  %2061 = phi <8 x double> [ %2059, %2058 ], [ zeroinitializer, %1872 ]
  %2062 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %2063 = fcmp ogt <8 x double> %2062, zeroinitializer
  %2064 = sext <8 x i1> %2063 to <8 x i64>
  %2065 = xor <8 x i64> %2064, splat (i64 -1)
  %2066 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %2067 = fcmp oeq <8 x double> %2066, splat (double 1.000000e+00)
  %2068 = fcmp oeq <8 x double> %2066, splat (double 2.000000e+00)
  %2069 = or <8 x i1> %2067, %2068
  %2070 = select <8 x i1> %2069, <8 x i64> %2065, <8 x i64> zeroinitializer
  %2071 = xor <8 x i64> %2070, %2064
  %2072 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %2073 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %2074 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %2075 = icmp eq <8 x i64> %2071, splat (i64 -1)
  %2076 = select <8 x i1> %2075, <8 x double> %2074, <8 x double> %2073
  %2077 = bitcast <8 x i1> %2063 to i8
  %2078 = icmp eq i8 %2077, 0
  br i1 %2078, label %2110, label %2079

2079:                                             ; preds = %2060
  %2080 = select <8 x i1> %2063, <8 x double> %2061, <8 x double> %2076
  %2081 = fmul <8 x double> %2080, splat (double 0x3EB0C6F7A0B5ED8D)
  %2082 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2081)
  %2083 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2082)
  %2084 = fmul <8 x double> %2083, %2083
  %2085 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2083, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2084)
  %2086 = fadd <8 x double> %2085, splat (double 0x402DD4891DBECC6B)
  %2087 = fmul <8 x double> %2083, splat (double 0x40C77A698FD9BCCA)
  %2088 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2084, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2087)
  %2089 = fadd <8 x double> %2088, splat (double 0xC0B2D7440748F0B3)
  %2090 = fmul <8 x double> %2083, splat (double 0xC148A99584203885)
  %2091 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2084, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2090)
  %2092 = fadd <8 x double> %2091, splat (double 0x4118B9E59F2691E5)
  %2093 = fmul <8 x double> %2092, splat (double 2.000000e+00)
  %2094 = fneg <8 x double> %2089
  %2095 = fmul <8 x double> %2086, splat (double 4.000000e+00)
  %2096 = fneg <8 x double> %2092
  %2097 = fmul <8 x double> %2095, %2096
  %2098 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2089, <8 x double> %2089, <8 x double> %2097)
  %2099 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2098)
  %2100 = fsub <8 x double> %2094, %2099
  %2101 = fdiv <8 x double> %2093, %2100
  %2102 = fadd <8 x double> %2101, splat (double 0x408451671D164BD4)
  %2103 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2101, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2104 = fmul <8 x double> %2103, splat (double -4.000000e+00)
  %2105 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2102, <8 x double> %2102, <8 x double> %2104)
  %2106 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2105)
  %2107 = fsub <8 x double> %2102, %2106
  %2108 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2107, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2109 = select <8 x i1> %2063, <8 x double> %2108, <8 x double> %2072
  br label %2110

2110:                                             ; preds = %2079, %2060
  %2111 = phi <8 x double> [ %2080, %2079 ], [ %2076, %2060 ]
  %2112 = phi <8 x double> [ %2109, %2079 ], [ %2072, %2060 ]
  %2113 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %2114 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %2115 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %2116 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %2117 = fmul <8 x double> %2115, %2116
  %2118 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2113, <8 x double> %2114, <8 x double> %2117)
  %2119 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2120 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %2121 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2122 = fneg <8 x double> %2118
  %2123 = fmul <8 x double> %2121, %2122
  %2124 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2119, <8 x double> %2120, <8 x double> %2123)
  %2125 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %2126 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2121, <8 x double> %2125, <8 x double> %2119)
  %2127 = fdiv <8 x double> %2124, %2126
  %2128 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2129 = select <8 x i1> %2075, <8 x double> %2128, <8 x double> %2073
  store <8 x double> %2129, ptr %185, align 64, !tbaa !26
  %2130 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2131 = select <8 x i1> %2075, <8 x double> %2130, <8 x double> %2127
  store <8 x double> %2131, ptr %186, align 64, !tbaa !26
  store <8 x double> %2111, ptr %179, align 64, !tbaa !26
  %2132 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %2133 = and <8 x i64> %2132, %2070
  %2134 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2133)
  %2135 = icmp eq i64 %2134, 0
  br i1 %2135, label %2636, label %2136

2136:                                             ; preds = %2110
  %2137 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %2138 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %2139 = fmul <8 x double> %2115, %2138
  %2140 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2113, <8 x double> %2137, <8 x double> %2139)
  %2141 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %2142 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2143 = fdiv <8 x double> %2141, %2142
  %2144 = fmul <8 x double> %2073, splat (double 3.000000e-01)
  %2145 = load <8 x double>, ptr %191, align 64, !tbaa !26
  %2146 = fadd <8 x double> %2073, %2145
  %2147 = fadd <8 x double> %2146, splat (double 2.000000e+05)
  %2148 = fmul <8 x double> %2142, splat (double 2.870530e+02)
  %2149 = fdiv <8 x double> %2073, %2148
  %2150 = fcmp ogt <8 x double> %2111, %2144
  %2151 = select <8 x i1> %2150, <8 x double> %2111, <8 x double> %2144
  %2152 = fcmp olt <8 x double> %2151, %2147
  %2153 = select <8 x i1> %2152, <8 x double> %2151, <8 x double> %2147
  %2154 = icmp eq <8 x i64> %2070, zeroinitializer
  %2155 = select <8 x i1> %2154, <8 x double> %2111, <8 x double> %2153
  %2156 = fdiv <8 x double> %2129, splat (double 2.870530e+02)
  %2157 = fmul <8 x double> %2149, splat (double 2.000000e+00)
  %2158 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2157)
  br label %2159

2159:                                             ; preds = %2202, %2136
  %2160 = phi <8 x double> [ %2112, %2136 ], [ %2194, %2202 ]
  %2161 = phi <8 x double> [ %2144, %2136 ], [ %2393, %2202 ]
  %2162 = phi <8 x double> [ %2147, %2136 ], [ %2390, %2202 ]
  %2163 = phi <8 x i64> [ %2133, %2136 ], [ %2405, %2202 ]
  %2164 = phi i32 [ 0, %2136 ], [ %2410, %2202 ]
  %2165 = phi <8 x double> [ %2155, %2136 ], [ %2407, %2202 ]
  %2166 = fmul <8 x double> %2165, splat (double 0x3EB0C6F7A0B5ED8D)
  %2167 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2166)
  %2168 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2167)
  %2169 = fmul <8 x double> %2168, %2168
  %2170 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2168, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2169)
  %2171 = fadd <8 x double> %2170, splat (double 0x402DD4891DBECC6B)
  %2172 = fmul <8 x double> %2168, splat (double 0x40C77A698FD9BCCA)
  %2173 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2169, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2172)
  %2174 = fadd <8 x double> %2173, splat (double 0xC0B2D7440748F0B3)
  %2175 = fmul <8 x double> %2168, splat (double 0xC148A99584203885)
  %2176 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2169, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2175)
  %2177 = fadd <8 x double> %2176, splat (double 0x4118B9E59F2691E5)
  %2178 = fmul <8 x double> %2177, splat (double 2.000000e+00)
  %2179 = fneg <8 x double> %2174
  %2180 = fmul <8 x double> %2171, splat (double 4.000000e+00)
  %2181 = fneg <8 x double> %2177
  %2182 = fmul <8 x double> %2180, %2181
  %2183 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2174, <8 x double> %2174, <8 x double> %2182)
  %2184 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2183)
  %2185 = fsub <8 x double> %2179, %2184
  %2186 = fdiv <8 x double> %2178, %2185
  %2187 = fadd <8 x double> %2186, splat (double 0x408451671D164BD4)
  %2188 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2186, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2189 = fmul <8 x double> %2188, splat (double -4.000000e+00)
  %2190 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2187, <8 x double> %2187, <8 x double> %2189)
  %2191 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2190)
  %2192 = fsub <8 x double> %2187, %2191
  %2193 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2192, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2194 = select <8 x i1> %2154, <8 x double> %2160, <8 x double> %2193
  %2195 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2194, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2196 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2194, <8 x double> %2195, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2197 = load i64, ptr %156, align 8, !tbaa !20, !noalias !86
  %2198 = icmp sgt i64 %2197, 0
  br i1 %2198, label %2199, label %2202

2199:                                             ; preds = %2159
  %2200 = fdiv <8 x double> splat (double 1.000000e+00), %2196
  %2201 = fadd <8 x double> %2194, splat (double 1.000000e-09)
  br label %2413

2202:                                             ; preds = %2523, %2159
  %2203 = phi <8 x double> [ zeroinitializer, %2159 ], [ %2594, %2523 ]
  %2204 = phi <8 x double> [ zeroinitializer, %2159 ], [ %2595, %2523 ]
  %2205 = extractelement <8 x double> %2203, i64 0
  %2206 = extractelement <8 x double> %2203, i64 1
  %2207 = fadd double %2205, %2206
  %2208 = extractelement <8 x double> %2203, i64 2
  %2209 = fadd double %2207, %2208
  %2210 = extractelement <8 x double> %2203, i64 3
  %2211 = fadd double %2209, %2210
  %2212 = extractelement <8 x double> %2203, i64 4
  %2213 = fadd double %2211, %2212
  %2214 = extractelement <8 x double> %2203, i64 5
  %2215 = fadd double %2213, %2214
  %2216 = extractelement <8 x double> %2203, i64 6
  %2217 = fadd double %2215, %2216
  %2218 = extractelement <8 x double> %2203, i64 7
  %2219 = fadd double %2217, %2218
  %2220 = insertelement <8 x double> poison, double %2219, i64 0
  %2221 = extractelement <8 x double> %2204, i64 0
  %2222 = extractelement <8 x double> %2204, i64 1
  %2223 = fadd double %2221, %2222
  %2224 = extractelement <8 x double> %2204, i64 2
  %2225 = fadd double %2223, %2224
  %2226 = extractelement <8 x double> %2204, i64 3
  %2227 = fadd double %2225, %2226
  %2228 = extractelement <8 x double> %2204, i64 4
  %2229 = fadd double %2227, %2228
  %2230 = extractelement <8 x double> %2204, i64 5
  %2231 = fadd double %2229, %2230
  %2232 = extractelement <8 x double> %2204, i64 6
  %2233 = fadd double %2231, %2232
  %2234 = extractelement <8 x double> %2204, i64 7
  %2235 = fadd double %2233, %2234
  %2236 = shufflevector <8 x double> %2220, <8 x double> poison, <8 x i32> zeroinitializer
  %2237 = insertelement <8 x double> poison, double %2235, i64 0
  %2238 = shufflevector <8 x double> %2237, <8 x double> poison, <8 x i32> zeroinitializer
  %2239 = fsub <8 x double> %2165, %2129
  %2240 = fcmp ogt <8 x double> %2239, zeroinitializer
  %2241 = select <8 x i1> %2240, <8 x double> %2239, <8 x double> zeroinitializer
  %2242 = fadd <8 x double> %2194, splat (double 2.731500e+02)
  %2243 = fdiv <8 x double> %2241, splat (double 4.615260e+02)
  %2244 = fadd <8 x double> %2156, %2243
  %2245 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2246 = fdiv <8 x double> %2244, %2245
  %2247 = fmul <8 x double> %2245, %2246
  %2248 = fdiv <8 x double> %2165, %2247
  %2249 = load <8 x double>, ptr %178, align 64, !tbaa !26, !noalias !89
  %2250 = fsub <8 x double> %2165, %2249
  %2251 = load <8 x double>, ptr %191, align 64, !tbaa !26, !noalias !89
  %2252 = fsub <8 x double> %2250, %2251
  %2253 = load <8 x double>, ptr %192, align 64, !tbaa !26, !noalias !89
  %2254 = load <8 x double>, ptr %138, align 64, !tbaa !26, !noalias !89
  %2255 = fcmp une <8 x double> %2254, splat (double 2.000000e+00)
  %2256 = load <8 x double>, ptr %193, align 64, !tbaa !26, !noalias !89
  %2257 = select <8 x i1> %2255, <8 x double> zeroinitializer, <8 x double> %2256
  %2258 = fadd <8 x double> %2253, %2257
  %2259 = fcmp ule <8 x double> %2250, zeroinitializer
  %2260 = fcmp ule <8 x double> %2258, zeroinitializer
  %2261 = or <8 x i1> %2259, %2260
  %2262 = fmul <8 x double> %2246, splat (double 2.000000e+00)
  %2263 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2262)
  %2264 = fmul <8 x double> %2263, %2258
  %2265 = fadd <8 x double> %2250, splat (double 2.000000e+02)
  %2266 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2265)
  %2267 = select <8 x i1> %2259, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2266
  %2268 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2250, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2269 = fmul <8 x double> %2268, %2264
  %2270 = fmul <8 x double> %2267, %2267
  %2271 = fmul <8 x double> %2267, %2270
  %2272 = fdiv <8 x double> %2269, %2271
  %2273 = fmul <8 x double> %2250, %2264
  %2274 = fdiv <8 x double> %2273, %2267
  %2275 = select <8 x i1> %2261, <8 x double> zeroinitializer, <8 x double> %2274
  %2276 = select <8 x i1> %2261, <8 x double> zeroinitializer, <8 x double> %2272
  %2277 = fcmp ule <8 x double> %2252, zeroinitializer
  %2278 = load <8 x double>, ptr %194, align 64, !tbaa !26, !noalias !89
  %2279 = fmul <8 x double> %2252, %2278
  %2280 = select <8 x i1> %2277, <8 x double> zeroinitializer, <8 x double> %2279
  %2281 = fadd <8 x double> %2280, %2275
  %2282 = select <8 x i1> %2277, <8 x double> zeroinitializer, <8 x double> %2278
  %2283 = fadd <8 x double> %2282, %2276
  %2284 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2285 = fsub <8 x double> %2249, %2165
  %2286 = fcmp ule <8 x double> %2285, zeroinitializer
  %2287 = fcmp ule <8 x double> %2284, zeroinitializer
  %2288 = or <8 x i1> %2286, %2287
  %2289 = fmul <8 x double> %2158, %2284
  %2290 = fadd <8 x double> %2285, splat (double 2.000000e+02)
  %2291 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2290)
  %2292 = select <8 x i1> %2286, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2291
  %2293 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2285, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2294 = fmul <8 x double> %2293, %2289
  %2295 = fmul <8 x double> %2292, %2292
  %2296 = fmul <8 x double> %2292, %2295
  %2297 = fdiv <8 x double> %2294, %2296
  %2298 = fmul <8 x double> %2285, %2289
  %2299 = fdiv <8 x double> %2298, %2292
  %2300 = load <8 x double>, ptr %163, align 64, !tbaa !26, !noalias !92
  %2301 = load <8 x double>, ptr %180, align 64, !tbaa !26, !noalias !92
  %2302 = load <8 x double>, ptr %164, align 64, !tbaa !26, !noalias !92
  %2303 = load <8 x double>, ptr %181, align 64, !tbaa !26, !noalias !92
  %2304 = fmul <8 x double> %2302, %2303
  %2305 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2300, <8 x double> %2301, <8 x double> %2304)
  %2306 = load <8 x double>, ptr %184, align 64, !tbaa !26, !noalias !92
  %2307 = load <8 x double>, ptr %162, align 64, !tbaa !26, !noalias !92
  %2308 = load <8 x double>, ptr %182, align 64, !tbaa !26, !noalias !92
  %2309 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2306, <8 x double> %2307, <8 x double> %2308)
  %2310 = load <8 x double>, ptr %183, align 64, !tbaa !26, !noalias !92
  %2311 = fneg <8 x double> %2305
  %2312 = fmul <8 x double> %2306, %2311
  %2313 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2308, <8 x double> %2310, <8 x double> %2312)
  %2314 = fdiv <8 x double> %2313, %2309
  %2315 = fcmp ogt <8 x double> %2241, splat (double 2.000000e+03)
  %2316 = select <8 x i1> %2315, <8 x double> %2241, <8 x double> splat (double 2.000000e+03)
  %2317 = fmul <8 x double> %2316, splat (double 0x3EB0C6F7A0B5ED8D)
  %2318 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2317)
  %2319 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2318)
  %2320 = fmul <8 x double> %2319, %2319
  %2321 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2319, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2320)
  %2322 = fadd <8 x double> %2321, splat (double 0x402DD4891DBECC6B)
  %2323 = fmul <8 x double> %2319, splat (double 0x40C77A698FD9BCCA)
  %2324 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2320, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2323)
  %2325 = fadd <8 x double> %2324, splat (double 0xC0B2D7440748F0B3)
  %2326 = fmul <8 x double> %2319, splat (double 0xC148A99584203885)
  %2327 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2320, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2326)
  %2328 = fadd <8 x double> %2327, splat (double 0x4118B9E59F2691E5)
  %2329 = fmul <8 x double> %2328, splat (double 2.000000e+00)
  %2330 = fneg <8 x double> %2325
  %2331 = fmul <8 x double> %2322, splat (double 4.000000e+00)
  %2332 = fneg <8 x double> %2328
  %2333 = fmul <8 x double> %2331, %2332
  %2334 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2325, <8 x double> %2325, <8 x double> %2333)
  %2335 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2334)
  %2336 = fsub <8 x double> %2330, %2335
  %2337 = fdiv <8 x double> %2329, %2336
  %2338 = fadd <8 x double> %2337, splat (double 0x408451671D164BD4)
  %2339 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2337, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2340 = fmul <8 x double> %2339, splat (double -4.000000e+00)
  %2341 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2338, <8 x double> %2338, <8 x double> %2340)
  %2342 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2341)
  %2343 = fsub <8 x double> %2338, %2342
  %2344 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2343, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2345 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2344, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2346 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2344, <8 x double> %2345, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2347 = fadd <8 x double> %2344, splat (double 2.731500e+02)
  %2348 = fcmp ule <8 x double> %2344, %2314
  %2349 = load <8 x double>, ptr %196, align 64, !tbaa !26, !noalias !92
  %2350 = fmul <8 x double> %2309, %2349
  %2351 = fadd <8 x double> %2309, %2349
  %2352 = fdiv <8 x double> %2350, %2351
  %2353 = fdiv <8 x double> %2352, %2346
  %2354 = fmul <8 x double> %2347, splat (double 4.615260e+02)
  %2355 = fmul <8 x double> %2316, %2346
  %2356 = fmul <8 x double> %2344, %2349
  %2357 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2314, <8 x double> %2309, <8 x double> %2356)
  %2358 = fdiv <8 x double> %2357, %2351
  %2359 = select <8 x i1> %2348, <8 x double> %2314, <8 x double> %2358
  store <8 x double> %2359, ptr %186, align 64, !tbaa !26, !noalias !92
  %2360 = fsub <8 x double> %2344, %2314
  %2361 = fmul <8 x double> %2360, %2353
  %2362 = select <8 x i1> %2348, <8 x double> zeroinitializer, <8 x double> %2361
  %2363 = fmul <8 x double> %2242, splat (double 4.615260e+02)
  %2364 = fmul <8 x double> %2242, %2363
  %2365 = fmul <8 x double> %2165, %2196
  %2366 = fdiv <8 x double> %2364, %2365
  %2367 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2307, <8 x double> %2165, <8 x double> %2140)
  %2368 = fsub <8 x double> %2236, %2362
  %2369 = fmul <8 x double> %2368, splat (double -4.615260e+02)
  %2370 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2143, <8 x double> %2367, <8 x double> %2369)
  %2371 = fmul <8 x double> %2299, splat (double -2.870530e+02)
  %2372 = select <8 x i1> %2288, <8 x double> splat (double -0.000000e+00), <8 x double> %2371
  %2373 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2248, <8 x double> %2281, <8 x double> %2372)
  %2374 = fadd <8 x double> %2373, %2370
  %2375 = fneg <8 x double> %2347
  %2376 = fmul <8 x double> %2354, %2375
  %2377 = fdiv <8 x double> %2376, %2355
  %2378 = fmul <8 x double> %2377, %2353
  %2379 = select <8 x i1> %2348, <8 x double> splat (double -0.000000e+00), <8 x double> %2378
  %2380 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2238, <8 x double> %2366, <8 x double> %2379)
  %2381 = fmul <8 x double> %2380, splat (double -4.615260e+02)
  %2382 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2143, <8 x double> %2307, <8 x double> %2381)
  %2383 = fmul <8 x double> %2297, splat (double 2.870530e+02)
  %2384 = select <8 x i1> %2288, <8 x double> zeroinitializer, <8 x double> %2383
  %2385 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2248, <8 x double> %2283, <8 x double> %2384)
  %2386 = fadd <8 x double> %2385, %2382
  %2387 = fcmp ule <8 x double> %2374, zeroinitializer
  %2388 = fcmp olt <8 x double> %2162, %2165
  %2389 = select <8 x i1> %2387, <8 x i1> splat (i1 true), <8 x i1> %2388
  %2390 = select <8 x i1> %2389, <8 x double> %2162, <8 x double> %2165
  %2391 = fcmp ogt <8 x double> %2161, %2165
  %2392 = select <8 x i1> %2391, <8 x double> %2161, <8 x double> %2165
  %2393 = select <8 x i1> %2387, <8 x double> %2392, <8 x double> %2161
  %2394 = fdiv <8 x double> %2374, %2386
  %2395 = fsub <8 x double> %2165, %2394
  %2396 = fcmp uge <8 x double> %2393, %2395
  %2397 = fcmp uge <8 x double> %2395, %2390
  %2398 = or <8 x i1> %2396, %2397
  %2399 = fadd <8 x double> %2393, %2390
  %2400 = fmul <8 x double> %2399, splat (double 5.000000e-01)
  %2401 = select <8 x i1> %2398, <8 x double> %2400, <8 x double> %2395
  %2402 = fsub <8 x double> %2401, %2165
  %2403 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2402)
  %2404 = fcmp oge <8 x double> %2403, splat (double 2.000000e-01)
  %2405 = select <8 x i1> %2404, <8 x i64> %2163, <8 x i64> zeroinitializer
  %2406 = icmp eq <8 x i64> %2405, zeroinitializer
  %2407 = select <8 x i1> %2406, <8 x double> %2165, <8 x double> %2401
  %2408 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2405)
  %2409 = icmp ne i64 %2408, 0
  %2410 = add nuw nsw i32 %2164, 1
  %2411 = icmp samesign ult i32 %2164, 59
  %2412 = select i1 %2409, i1 %2411, i1 false
  br i1 %2412, label %2159, label %2599, !llvm.loop !95

2413:                                             ; preds = %2199, %2523
  %2414 = phi <8 x double> [ zeroinitializer, %2199 ], [ %2595, %2523 ]
  %2415 = phi <8 x double> [ zeroinitializer, %2199 ], [ %2594, %2523 ]
  %2416 = phi i64 [ 0, %2199 ], [ %2596, %2523 ]
  %2417 = load ptr, ptr %129, align 8, !tbaa !28, !noalias !86
  %2418 = getelementptr inbounds nuw %struct.Piece, ptr %2417, i64 %2416
  %2419 = getelementptr inbounds nuw i8, ptr %2418, i64 5824
  %2420 = load <8 x double>, ptr %2419, align 64, !tbaa !26, !noalias !86
  %2421 = getelementptr inbounds nuw i8, ptr %2418, i64 5888
  %2422 = load <8 x double>, ptr %2421, align 64, !tbaa !26, !noalias !86
  %2423 = getelementptr inbounds nuw i8, ptr %2418, i64 7296
  %2424 = load <8 x double>, ptr %2423, align 64, !tbaa !26, !noalias !86
  %2425 = fcmp ule <8 x double> %2424, splat (double 1.000000e+00)
  %2426 = fmul <8 x double> %2194, %2422
  %2427 = fcmp ogt <8 x double> %2420, %2426
  %2428 = and <8 x i1> %2425, %2427
  %2429 = fneg <8 x double> %2422
  %2430 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2429, <8 x double> %2194, <8 x double> %2420)
  %2431 = fmul <8 x double> %2200, %2430
  %2432 = select <8 x i1> %2428, <8 x double> %2431, <8 x double> zeroinitializer
  %2433 = fmul <8 x double> %2200, %2429
  %2434 = fdiv <8 x double> %2420, %2422
  %2435 = select <8 x i1> %2428, <8 x double> %2194, <8 x double> %2434
  %2436 = getelementptr inbounds nuw i8, ptr %2418, i64 7488
  %2437 = load <8 x i64>, ptr %2436, align 64, !tbaa !26, !noalias !86
  %2438 = getelementptr inbounds nuw i8, ptr %2418, i64 2240
  %2439 = load <8 x double>, ptr %2438, align 64, !tbaa !26, !noalias !86
  %2440 = fcmp ule <8 x double> %2439, zeroinitializer
  %2441 = xor <8 x i1> %2425, splat (i1 true)
  %2442 = select <8 x i1> %2441, <8 x i1> splat (i1 true), <8 x i1> %2440
  %2443 = getelementptr inbounds nuw i8, ptr %2418, i64 5952
  %2444 = load <8 x double>, ptr %2443, align 64, !tbaa !26, !noalias !86
  %2445 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2429, <8 x double> %2444, <8 x double> %2420)
  %2446 = fcmp ogt <8 x double> %2445, zeroinitializer
  %2447 = select <8 x i1> %2446, <8 x double> %2445, <8 x double> zeroinitializer
  %2448 = fmul <8 x double> %2200, %2447
  %2449 = icmp eq <8 x i64> %2437, zeroinitializer
  %2450 = select <8 x i1> %2442, <8 x i1> splat (i1 true), <8 x i1> %2449
  %2451 = select <8 x i1> %2450, <8 x double> %2432, <8 x double> %2448
  %2452 = select <8 x i1> %2450, <8 x double> %2435, <8 x double> %2444
  %2453 = select <8 x i1> %2450, <8 x i1> %2428, <8 x i1> zeroinitializer
  %2454 = select <8 x i1> %2453, <8 x double> %2433, <8 x double> zeroinitializer
  %2455 = load i64, ptr %119, align 16, !tbaa !21, !noalias !96
  %2456 = sitofp i64 %2455 to double
  %2457 = insertelement <8 x double> poison, double %2456, i64 0
  %2458 = shufflevector <8 x double> %2457, <8 x double> poison, <8 x i32> zeroinitializer
  %2459 = icmp sgt i64 %2455, 0
  br i1 %2459, label %2460, label %2523

2460:                                             ; preds = %2413
  %2461 = getelementptr inbounds nuw i8, ptr %2418, i64 7608
  %2462 = load ptr, ptr %2461, align 8, !tbaa !74, !noalias !96
  %2463 = getelementptr inbounds nuw i8, ptr %2418, i64 7616
  %2464 = load ptr, ptr %2463, align 64, !tbaa !75, !noalias !96
  %2465 = getelementptr inbounds nuw i8, ptr %2418, i64 7552
  %2466 = load i64, ptr %2465, align 64, !tbaa !31, !noalias !96
  %2467 = getelementptr inbounds nuw i8, ptr %2418, i64 7632
  %2468 = getelementptr inbounds nuw i8, ptr %2418, i64 7624
  %2469 = getelementptr inbounds nuw i8, ptr %2418, i64 7640
  br label %2470

2470:                                             ; preds = %2460, %2505
  %2471 = phi <8 x i64> [ splat (i64 -1), %2460 ], [ %2485, %2505 ]
  %2472 = phi i64 [ %2455, %2460 ], [ %2476, %2505 ]
  %2473 = phi <8 x double> [ %2458, %2460 ], [ %2521, %2505 ]
  %2474 = phi <8 x double> [ zeroinitializer, %2460 ], [ %2517, %2505 ]
  %2475 = phi <8 x double> [ zeroinitializer, %2460 ], [ %2515, %2505 ]
  %2476 = add nsw i64 %2472, -1
  %2477 = getelementptr inbounds nuw <8 x double>, ptr %2462, i64 %2476
  %2478 = load <8 x double>, ptr %2477, align 64, !tbaa !26, !noalias !96
  %2479 = getelementptr inbounds nuw <8 x double>, ptr %2464, i64 %2476
  %2480 = load <8 x double>, ptr %2479, align 64, !tbaa !26, !noalias !96
  %2481 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2480, <8 x double> %2194, <8 x double> %2478)
  %2482 = fcmp ogt <8 x double> %2481, %2201
  %2483 = select <8 x i1> %2482, <8 x i64> %2471, <8 x i64> zeroinitializer
  %2484 = icmp sgt i64 %2472, %2466
  %2485 = select i1 %2484, <8 x i64> %2483, <8 x i64> zeroinitializer
  %2486 = icmp slt i64 %2472, %2455
  br i1 %2486, label %2487, label %2500

2487:                                             ; preds = %2470
  %2488 = load ptr, ptr %2467, align 16, !tbaa !72, !noalias !96
  %2489 = getelementptr inbounds nuw <8 x double>, ptr %2488, i64 %2472
  %2490 = load <8 x double>, ptr %2489, align 64, !tbaa !26, !noalias !96
  %2491 = fsub <8 x double> %2481, %2194
  %2492 = fmul <8 x double> %2491, %2490
  %2493 = icmp eq <8 x i64> %2485, %2471
  %2494 = select <8 x i1> %2493, <8 x double> zeroinitializer, <8 x double> %2492
  %2495 = fadd <8 x double> %2475, %2494
  %2496 = fadd <8 x double> %2480, splat (double -1.000000e+00)
  %2497 = fmul <8 x double> %2496, %2490
  %2498 = select <8 x i1> %2493, <8 x double> zeroinitializer, <8 x double> %2497
  %2499 = fadd <8 x double> %2474, %2498
  br label %2500

2500:                                             ; preds = %2487, %2470
  %2501 = phi <8 x double> [ %2495, %2487 ], [ %2475, %2470 ]
  %2502 = phi <8 x double> [ %2499, %2487 ], [ %2474, %2470 ]
  %2503 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2485)
  %2504 = icmp eq i64 %2503, 0
  br i1 %2504, label %2523, label %2505

2505:                                             ; preds = %2500
  %2506 = load ptr, ptr %2468, align 8, !tbaa !71, !noalias !96
  %2507 = getelementptr inbounds nuw <8 x double>, ptr %2506, i64 %2476
  %2508 = load <8 x double>, ptr %2507, align 64, !tbaa !26, !noalias !96
  %2509 = load ptr, ptr %2469, align 8, !tbaa !73, !noalias !96
  %2510 = getelementptr inbounds nuw <8 x double>, ptr %2509, i64 %2476
  %2511 = load <8 x double>, ptr %2510, align 64, !tbaa !26, !noalias !96
  %2512 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2511, <8 x double> %2194, <8 x double> %2508)
  %2513 = icmp eq <8 x i64> %2485, zeroinitializer
  %2514 = select <8 x i1> %2513, <8 x double> zeroinitializer, <8 x double> %2512
  %2515 = fadd <8 x double> %2501, %2514
  %2516 = select <8 x i1> %2513, <8 x double> zeroinitializer, <8 x double> %2511
  %2517 = fadd <8 x double> %2502, %2516
  %2518 = uitofp nneg i64 %2476 to double
  %2519 = insertelement <8 x double> poison, double %2518, i64 0
  %2520 = shufflevector <8 x double> %2519, <8 x double> poison, <8 x i32> zeroinitializer
  %2521 = select <8 x i1> %2513, <8 x double> %2473, <8 x double> %2520
  %2522 = icmp samesign ugt i64 %2472, 1
  br i1 %2522, label %2470, label %2523, !llvm.loop !99

2523:                                             ; preds = %2505, %2500, %2413
  %2524 = phi <8 x double> [ %2458, %2413 ], [ %2473, %2500 ], [ %2521, %2505 ]
  %2525 = phi <8 x double> [ zeroinitializer, %2413 ], [ %2501, %2500 ], [ %2515, %2505 ]
  %2526 = phi <8 x double> [ zeroinitializer, %2413 ], [ %2502, %2500 ], [ %2517, %2505 ]
  %2527 = getelementptr inbounds nuw i8, ptr %2418, i64 6080
  %2528 = load <8 x double>, ptr %2527, align 64, !tbaa !26, !noalias !86
  %2529 = getelementptr inbounds nuw i8, ptr %2418, i64 5504
  %2530 = load <8 x double>, ptr %2529, align 64, !tbaa !26, !noalias !86
  %2531 = getelementptr inbounds nuw i8, ptr %2418, i64 7040
  %2532 = load <8 x double>, ptr %2531, align 64, !tbaa !26, !noalias !86
  %2533 = fneg <8 x double> %2532
  %2534 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2528, <8 x double> %2530, <8 x double> %2533)
  %2535 = getelementptr inbounds nuw i8, ptr %2418, i64 6976
  %2536 = load <8 x double>, ptr %2535, align 64, !tbaa !26, !noalias !86
  %2537 = fadd <8 x double> %2528, %2536
  %2538 = getelementptr inbounds nuw i8, ptr %2418, i64 7360
  %2539 = load <8 x i64>, ptr %2538, align 64, !tbaa !26, !noalias !86
  %2540 = getelementptr inbounds nuw i8, ptr %2418, i64 7712
  %2541 = load ptr, ptr %2540, align 32, !tbaa !80, !noalias !86
  %2542 = load <8 x double>, ptr %2541, align 64, !tbaa !26, !noalias !86
  %2543 = fmul <8 x double> %2528, %2542
  %2544 = icmp eq <8 x i64> %2539, zeroinitializer
  %2545 = select <8 x i1> %2544, <8 x double> %2534, <8 x double> %2543
  %2546 = getelementptr inbounds nuw i8, ptr %2418, i64 7720
  %2547 = load ptr, ptr %2546, align 8, !tbaa !81, !noalias !86
  %2548 = load <8 x double>, ptr %2547, align 64, !tbaa !26, !noalias !86
  %2549 = fsub <8 x double> splat (double 1.000000e+00), %2548
  %2550 = fmul <8 x double> %2528, %2549
  %2551 = select <8 x i1> %2544, <8 x double> %2537, <8 x double> %2550
  %2552 = fneg <8 x double> %2551
  %2553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2552, <8 x double> %2194, <8 x double> %2545)
  %2554 = fcmp olt <8 x double> %2524, %2458
  %2555 = and <8 x i1> %2425, %2554
  %2556 = fcmp ogt <8 x double> %2525, zeroinitializer
  %2557 = fcmp oge <8 x double> %2553, zeroinitializer
  %2558 = and <8 x i1> %2556, %2557
  %2559 = and <8 x i1> %2555, %2558
  %2560 = sext <8 x i1> %2559 to <8 x i64>
  %2561 = xor <8 x i64> %2560, splat (i64 -1)
  %2562 = fadd <8 x double> %2525, %2553
  %2563 = fcmp ogt <8 x double> %2562, zeroinitializer
  %2564 = select <8 x i1> %2563, <8 x i1> %2555, <8 x i1> zeroinitializer
  %2565 = select <8 x i1> %2564, <8 x i64> %2561, <8 x i64> zeroinitializer
  %2566 = or <8 x i64> %2565, %2560
  %2567 = fmul <8 x double> %2200, %2553
  %2568 = select <8 x i1> %2559, <8 x double> %2567, <8 x double> zeroinitializer
  %2569 = icmp eq <8 x i64> %2566, zeroinitializer
  %2570 = select <8 x i1> %2569, <8 x double> %2451, <8 x double> %2568
  %2571 = select <8 x i1> %2569, <8 x double> %2452, <8 x double> %2194
  %2572 = fsub <8 x double> %2526, %2551
  %2573 = fmul <8 x double> %2200, %2572
  %2574 = select <8 x i1> %2569, <8 x double> %2454, <8 x double> %2573
  %2575 = getelementptr inbounds nuw i8, ptr %2418, i64 5632
  store <8 x double> %2570, ptr %2575, align 64, !tbaa !26, !noalias !86
  %2576 = getelementptr inbounds nuw i8, ptr %2418, i64 5568
  store <8 x double> %2571, ptr %2576, align 64, !tbaa !26, !noalias !86
  %2577 = fmul <8 x double> %2200, %2525
  %2578 = fmul <8 x double> %2200, %2562
  %2579 = icmp eq <8 x i64> %2565, zeroinitializer
  %2580 = select <8 x i1> %2579, <8 x double> zeroinitializer, <8 x double> %2578
  %2581 = select <8 x i1> %2559, <8 x double> %2577, <8 x double> %2580
  %2582 = getelementptr inbounds nuw i8, ptr %2418, i64 5696
  store <8 x double> %2581, ptr %2582, align 64, !tbaa !26, !noalias !86
  %2583 = load i64, ptr %119, align 16, !tbaa !21, !noalias !86
  %2584 = sitofp i64 %2583 to double
  %2585 = insertelement <8 x double> poison, double %2584, i64 0
  %2586 = shufflevector <8 x double> %2585, <8 x double> poison, <8 x i32> zeroinitializer
  %2587 = select <8 x i1> %2569, <8 x double> %2586, <8 x double> %2524
  %2588 = getelementptr inbounds nuw i8, ptr %2418, i64 5760
  store <8 x double> %2587, ptr %2588, align 64, !tbaa !26, !noalias !86
  %2589 = getelementptr inbounds nuw i8, ptr %2418, i64 128
  %2590 = load <8 x double>, ptr %2589, align 64, !tbaa !26, !noalias !86
  %2591 = fadd <8 x double> %2570, %2581
  %2592 = fmul <8 x double> %2590, %2591
  %2593 = fmul <8 x double> %2590, %2574
  %2594 = fadd <8 x double> %2415, %2592
  %2595 = fadd <8 x double> %2414, %2593
  %2596 = add nuw nsw i64 %2416, 1
  %2597 = load i64, ptr %156, align 8, !tbaa !20, !noalias !86
  %2598 = icmp slt i64 %2596, %2597
  br i1 %2598, label %2413, label %2202, !llvm.loop !100

2599:                                             ; preds = %2202
  %2600 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %2601 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2602 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %2603 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2604 = fmul <8 x double> %2602, %2603
  %2605 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2600, <8 x double> %2601, <8 x double> %2604)
  %2606 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2607 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %2608 = fsub <8 x double> %2607, %2407
  %2609 = fcmp ule <8 x double> %2608, zeroinitializer
  %2610 = fcmp ule <8 x double> %2606, zeroinitializer
  %2611 = or <8 x i1> %2610, %2609
  %2612 = fmul <8 x double> %2158, %2606
  %2613 = fadd <8 x double> %2608, splat (double 2.000000e+02)
  %2614 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2613)
  %2615 = select <8 x i1> %2609, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2614
  %2616 = fmul <8 x double> %2612, %2608
  %2617 = fdiv <8 x double> %2616, %2615
  %2618 = fmul <8 x double> %2617, splat (double 2.870530e+02)
  %2619 = select <8 x i1> %2611, <8 x double> zeroinitializer, <8 x double> %2618
  %2620 = fdiv <8 x double> %2619, %2143
  %2621 = fsub <8 x double> %2620, %2605
  %2622 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %2623 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %2624 = fmul <8 x double> %2246, %2623
  %2625 = fdiv <8 x double> %2281, %2624
  %2626 = fadd <8 x double> %2622, %2625
  %2627 = fdiv <8 x double> %2621, %2626
  %2628 = fcmp ogt <8 x double> %2627, zeroinitializer
  %2629 = select <8 x i1> %2628, <8 x double> %2627, <8 x double> zeroinitializer
  %2630 = fcmp olt <8 x double> %2629, %2407
  %2631 = select <8 x i1> %2630, <8 x double> %2629, <8 x double> %2407
  %2632 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2633 = select <8 x i1> %2154, <8 x double> %2632, <8 x double> %2631
  store <8 x double> %2633, ptr %185, align 64, !tbaa !26
  %2634 = select <8 x i1> %2154, <8 x double> %2131, <8 x double> %2359
  store <8 x double> %2634, ptr %186, align 64, !tbaa !26
  store <8 x double> %2407, ptr %179, align 64, !tbaa !26
  store <8 x double> %2194, ptr %199, align 64, !tbaa !26
  %2635 = load i64, ptr %156, align 8, !tbaa !20
  br label %2804

2636:                                             ; preds = %2110
  store <8 x double> %2112, ptr %199, align 64, !tbaa !26
  br i1 %1874, label %2637, label %2807

2637:                                             ; preds = %2636
  %2638 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2112, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2639 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2112, <8 x double> %2638, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2640 = fdiv <8 x double> splat (double 1.000000e+00), %2639
  %2641 = fadd <8 x double> %2112, splat (double 1.000000e-09)
  br label %2642

2642:                                             ; preds = %2637, %2739
  %2643 = phi i64 [ 0, %2637 ], [ %2801, %2739 ]
  %2644 = load ptr, ptr %129, align 8, !tbaa !28, !noalias !101
  %2645 = getelementptr inbounds nuw %struct.Piece, ptr %2644, i64 %2643
  %2646 = getelementptr inbounds nuw i8, ptr %2645, i64 5824
  %2647 = load <8 x double>, ptr %2646, align 64, !tbaa !26, !noalias !101
  %2648 = getelementptr inbounds nuw i8, ptr %2645, i64 5888
  %2649 = load <8 x double>, ptr %2648, align 64, !tbaa !26, !noalias !101
  %2650 = getelementptr inbounds nuw i8, ptr %2645, i64 7296
  %2651 = load <8 x double>, ptr %2650, align 64, !tbaa !26, !noalias !101
  %2652 = fcmp ule <8 x double> %2651, splat (double 1.000000e+00)
  %2653 = fmul <8 x double> %2112, %2649
  %2654 = fcmp ogt <8 x double> %2647, %2653
  %2655 = and <8 x i1> %2652, %2654
  %2656 = fneg <8 x double> %2649
  %2657 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2656, <8 x double> %2112, <8 x double> %2647)
  %2658 = fmul <8 x double> %2640, %2657
  %2659 = select <8 x i1> %2655, <8 x double> %2658, <8 x double> zeroinitializer
  %2660 = fdiv <8 x double> %2647, %2649
  %2661 = select <8 x i1> %2655, <8 x double> %2112, <8 x double> %2660
  %2662 = getelementptr inbounds nuw i8, ptr %2645, i64 7488
  %2663 = load <8 x i64>, ptr %2662, align 64, !tbaa !26, !noalias !101
  %2664 = getelementptr inbounds nuw i8, ptr %2645, i64 2240
  %2665 = load <8 x double>, ptr %2664, align 64, !tbaa !26, !noalias !101
  %2666 = fcmp ule <8 x double> %2665, zeroinitializer
  %2667 = xor <8 x i1> %2652, splat (i1 true)
  %2668 = select <8 x i1> %2667, <8 x i1> splat (i1 true), <8 x i1> %2666
  %2669 = getelementptr inbounds nuw i8, ptr %2645, i64 5952
  %2670 = load <8 x double>, ptr %2669, align 64, !tbaa !26, !noalias !101
  %2671 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2656, <8 x double> %2670, <8 x double> %2647)
  %2672 = fcmp ogt <8 x double> %2671, zeroinitializer
  %2673 = select <8 x i1> %2672, <8 x double> %2671, <8 x double> zeroinitializer
  %2674 = fmul <8 x double> %2640, %2673
  %2675 = icmp eq <8 x i64> %2663, zeroinitializer
  %2676 = select <8 x i1> %2668, <8 x i1> splat (i1 true), <8 x i1> %2675
  %2677 = select <8 x i1> %2676, <8 x double> %2659, <8 x double> %2674
  %2678 = select <8 x i1> %2676, <8 x double> %2661, <8 x double> %2670
  %2679 = load i64, ptr %119, align 16, !tbaa !21, !noalias !104
  %2680 = sitofp i64 %2679 to double
  %2681 = insertelement <8 x double> poison, double %2680, i64 0
  %2682 = shufflevector <8 x double> %2681, <8 x double> poison, <8 x i32> zeroinitializer
  %2683 = icmp sgt i64 %2679, 0
  br i1 %2683, label %2684, label %2739

2684:                                             ; preds = %2642
  %2685 = getelementptr inbounds nuw i8, ptr %2645, i64 7608
  %2686 = load ptr, ptr %2685, align 8, !tbaa !74, !noalias !104
  %2687 = getelementptr inbounds nuw i8, ptr %2645, i64 7616
  %2688 = load ptr, ptr %2687, align 64, !tbaa !75, !noalias !104
  %2689 = getelementptr inbounds nuw i8, ptr %2645, i64 7552
  %2690 = load i64, ptr %2689, align 64, !tbaa !31, !noalias !104
  %2691 = getelementptr inbounds nuw i8, ptr %2645, i64 7632
  %2692 = getelementptr inbounds nuw i8, ptr %2645, i64 7624
  %2693 = getelementptr inbounds nuw i8, ptr %2645, i64 7640
  br label %2694

2694:                                             ; preds = %2684, %2723
  %2695 = phi <8 x i64> [ splat (i64 -1), %2684 ], [ %2708, %2723 ]
  %2696 = phi i64 [ %2679, %2684 ], [ %2699, %2723 ]
  %2697 = phi <8 x double> [ %2682, %2684 ], [ %2737, %2723 ]
  %2698 = phi <8 x double> [ zeroinitializer, %2684 ], [ %2733, %2723 ]
  %2699 = add nsw i64 %2696, -1
  %2700 = getelementptr inbounds nuw <8 x double>, ptr %2686, i64 %2699
  %2701 = load <8 x double>, ptr %2700, align 64, !tbaa !26, !noalias !104
  %2702 = getelementptr inbounds nuw <8 x double>, ptr %2688, i64 %2699
  %2703 = load <8 x double>, ptr %2702, align 64, !tbaa !26, !noalias !104
  %2704 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2703, <8 x double> %2112, <8 x double> %2701)
  %2705 = fcmp ogt <8 x double> %2704, %2641
  %2706 = select <8 x i1> %2705, <8 x i64> %2695, <8 x i64> zeroinitializer
  %2707 = icmp sgt i64 %2696, %2690
  %2708 = select i1 %2707, <8 x i64> %2706, <8 x i64> zeroinitializer
  %2709 = icmp slt i64 %2696, %2679
  br i1 %2709, label %2710, label %2719

2710:                                             ; preds = %2694
  %2711 = load ptr, ptr %2691, align 16, !tbaa !72, !noalias !104
  %2712 = getelementptr inbounds nuw <8 x double>, ptr %2711, i64 %2696
  %2713 = load <8 x double>, ptr %2712, align 64, !tbaa !26, !noalias !104
  %2714 = fsub <8 x double> %2704, %2112
  %2715 = fmul <8 x double> %2714, %2713
  %2716 = icmp eq <8 x i64> %2708, %2695
  %2717 = select <8 x i1> %2716, <8 x double> zeroinitializer, <8 x double> %2715
  %2718 = fadd <8 x double> %2698, %2717
  br label %2719

2719:                                             ; preds = %2710, %2694
  %2720 = phi <8 x double> [ %2718, %2710 ], [ %2698, %2694 ]
  %2721 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2708)
  %2722 = icmp eq i64 %2721, 0
  br i1 %2722, label %2739, label %2723

2723:                                             ; preds = %2719
  %2724 = load ptr, ptr %2692, align 8, !tbaa !71, !noalias !104
  %2725 = getelementptr inbounds nuw <8 x double>, ptr %2724, i64 %2699
  %2726 = load <8 x double>, ptr %2725, align 64, !tbaa !26, !noalias !104
  %2727 = load ptr, ptr %2693, align 8, !tbaa !73, !noalias !104
  %2728 = getelementptr inbounds nuw <8 x double>, ptr %2727, i64 %2699
  %2729 = load <8 x double>, ptr %2728, align 64, !tbaa !26, !noalias !104
  %2730 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2729, <8 x double> %2112, <8 x double> %2726)
  %2731 = icmp eq <8 x i64> %2708, zeroinitializer
  %2732 = select <8 x i1> %2731, <8 x double> zeroinitializer, <8 x double> %2730
  %2733 = fadd <8 x double> %2720, %2732
  %2734 = uitofp nneg i64 %2699 to double
  %2735 = insertelement <8 x double> poison, double %2734, i64 0
  %2736 = shufflevector <8 x double> %2735, <8 x double> poison, <8 x i32> zeroinitializer
  %2737 = select <8 x i1> %2731, <8 x double> %2697, <8 x double> %2736
  %2738 = icmp samesign ugt i64 %2696, 1
  br i1 %2738, label %2694, label %2739, !llvm.loop !99

2739:                                             ; preds = %2723, %2719, %2642
  %2740 = phi <8 x double> [ %2682, %2642 ], [ %2697, %2719 ], [ %2737, %2723 ]
  %2741 = phi <8 x double> [ zeroinitializer, %2642 ], [ %2720, %2719 ], [ %2733, %2723 ]
  %2742 = getelementptr inbounds nuw i8, ptr %2645, i64 6080
  %2743 = load <8 x double>, ptr %2742, align 64, !tbaa !26, !noalias !101
  %2744 = getelementptr inbounds nuw i8, ptr %2645, i64 5504
  %2745 = load <8 x double>, ptr %2744, align 64, !tbaa !26, !noalias !101
  %2746 = getelementptr inbounds nuw i8, ptr %2645, i64 7040
  %2747 = load <8 x double>, ptr %2746, align 64, !tbaa !26, !noalias !101
  %2748 = fneg <8 x double> %2747
  %2749 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2743, <8 x double> %2745, <8 x double> %2748)
  %2750 = getelementptr inbounds nuw i8, ptr %2645, i64 6976
  %2751 = load <8 x double>, ptr %2750, align 64, !tbaa !26, !noalias !101
  %2752 = fadd <8 x double> %2743, %2751
  %2753 = getelementptr inbounds nuw i8, ptr %2645, i64 7360
  %2754 = load <8 x i64>, ptr %2753, align 64, !tbaa !26, !noalias !101
  %2755 = getelementptr inbounds nuw i8, ptr %2645, i64 7712
  %2756 = load ptr, ptr %2755, align 32, !tbaa !80, !noalias !101
  %2757 = load <8 x double>, ptr %2756, align 64, !tbaa !26, !noalias !101
  %2758 = fmul <8 x double> %2743, %2757
  %2759 = icmp eq <8 x i64> %2754, zeroinitializer
  %2760 = select <8 x i1> %2759, <8 x double> %2749, <8 x double> %2758
  %2761 = getelementptr inbounds nuw i8, ptr %2645, i64 7720
  %2762 = load ptr, ptr %2761, align 8, !tbaa !81, !noalias !101
  %2763 = load <8 x double>, ptr %2762, align 64, !tbaa !26, !noalias !101
  %2764 = fsub <8 x double> splat (double 1.000000e+00), %2763
  %2765 = fmul <8 x double> %2743, %2764
  %2766 = select <8 x i1> %2759, <8 x double> %2752, <8 x double> %2765
  %2767 = fneg <8 x double> %2766
  %2768 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2767, <8 x double> %2112, <8 x double> %2760)
  %2769 = fcmp olt <8 x double> %2740, %2682
  %2770 = and <8 x i1> %2652, %2769
  %2771 = fcmp ogt <8 x double> %2741, zeroinitializer
  %2772 = fcmp oge <8 x double> %2768, zeroinitializer
  %2773 = and <8 x i1> %2771, %2772
  %2774 = and <8 x i1> %2770, %2773
  %2775 = sext <8 x i1> %2774 to <8 x i64>
  %2776 = xor <8 x i64> %2775, splat (i64 -1)
  %2777 = fadd <8 x double> %2741, %2768
  %2778 = fcmp ogt <8 x double> %2777, zeroinitializer
  %2779 = select <8 x i1> %2778, <8 x i1> %2770, <8 x i1> zeroinitializer
  %2780 = select <8 x i1> %2779, <8 x i64> %2776, <8 x i64> zeroinitializer
  %2781 = or <8 x i64> %2780, %2775
  %2782 = fmul <8 x double> %2640, %2768
  %2783 = select <8 x i1> %2774, <8 x double> %2782, <8 x double> zeroinitializer
  %2784 = icmp eq <8 x i64> %2781, zeroinitializer
  %2785 = select <8 x i1> %2784, <8 x double> %2677, <8 x double> %2783
  %2786 = select <8 x i1> %2784, <8 x double> %2678, <8 x double> %2112
  %2787 = getelementptr inbounds nuw i8, ptr %2645, i64 5632
  store <8 x double> %2785, ptr %2787, align 64, !tbaa !26, !noalias !101
  %2788 = getelementptr inbounds nuw i8, ptr %2645, i64 5568
  store <8 x double> %2786, ptr %2788, align 64, !tbaa !26, !noalias !101
  %2789 = fmul <8 x double> %2640, %2741
  %2790 = fmul <8 x double> %2640, %2777
  %2791 = icmp eq <8 x i64> %2780, zeroinitializer
  %2792 = select <8 x i1> %2791, <8 x double> zeroinitializer, <8 x double> %2790
  %2793 = select <8 x i1> %2774, <8 x double> %2789, <8 x double> %2792
  %2794 = getelementptr inbounds nuw i8, ptr %2645, i64 5696
  store <8 x double> %2793, ptr %2794, align 64, !tbaa !26, !noalias !101
  %2795 = load i64, ptr %119, align 16, !tbaa !21, !noalias !101
  %2796 = sitofp i64 %2795 to double
  %2797 = insertelement <8 x double> poison, double %2796, i64 0
  %2798 = shufflevector <8 x double> %2797, <8 x double> poison, <8 x i32> zeroinitializer
  %2799 = select <8 x i1> %2784, <8 x double> %2798, <8 x double> %2740
  %2800 = getelementptr inbounds nuw i8, ptr %2645, i64 5760
  store <8 x double> %2799, ptr %2800, align 64, !tbaa !26, !noalias !101
  %2801 = add nuw nsw i64 %2643, 1
  %2802 = load i64, ptr %156, align 8, !tbaa !20, !noalias !101
  %2803 = icmp slt i64 %2801, %2802
  br i1 %2803, label %2642, label %2804, !llvm.loop !100

2804:                                             ; preds = %2739, %2599
  %2805 = phi i64 [ %2635, %2599 ], [ %2802, %2739 ]
  %2806 = icmp sgt i64 %2805, 0
  br i1 %2806, label %2969, label %2807

2807:                                             ; preds = %2804, %2636
  %2808 = load <8 x double>, ptr %165, align 64, !tbaa !26
  br label %2814

2809:                                             ; preds = %3041
  %2810 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %2811 = icmp sgt i64 %3065, 0
  br i1 %2811, label %2812, label %2814

2812:                                             ; preds = %2809
  %2813 = load ptr, ptr %129, align 8, !tbaa !28
  br label %2947

2814:                                             ; preds = %2947, %2807, %2809
  %2815 = phi <8 x double> [ %2810, %2809 ], [ %2808, %2807 ], [ %2810, %2947 ]
  %2816 = phi <8 x double> [ zeroinitializer, %2809 ], [ zeroinitializer, %2807 ], [ %2966, %2947 ]
  %2817 = phi <8 x double> [ zeroinitializer, %2809 ], [ zeroinitializer, %2807 ], [ %2961, %2947 ]
  %2818 = extractelement <8 x double> %2817, i64 0
  %2819 = extractelement <8 x double> %2817, i64 1
  %2820 = fadd double %2818, %2819
  %2821 = extractelement <8 x double> %2817, i64 2
  %2822 = fadd double %2820, %2821
  %2823 = extractelement <8 x double> %2817, i64 3
  %2824 = fadd double %2822, %2823
  %2825 = extractelement <8 x double> %2817, i64 4
  %2826 = fadd double %2824, %2825
  %2827 = extractelement <8 x double> %2817, i64 5
  %2828 = fadd double %2826, %2827
  %2829 = extractelement <8 x double> %2817, i64 6
  %2830 = fadd double %2828, %2829
  %2831 = extractelement <8 x double> %2817, i64 7
  %2832 = fadd double %2830, %2831
  %2833 = insertelement <8 x double> poison, double %2832, i64 0
  %2834 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2835 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %2836 = fsub <8 x double> %2815, %2835
  %2837 = extractelement <8 x double> %2816, i64 0
  %2838 = extractelement <8 x double> %2816, i64 1
  %2839 = fadd double %2837, %2838
  %2840 = extractelement <8 x double> %2816, i64 2
  %2841 = fadd double %2839, %2840
  %2842 = extractelement <8 x double> %2816, i64 3
  %2843 = fadd double %2841, %2842
  %2844 = extractelement <8 x double> %2816, i64 4
  %2845 = fadd double %2843, %2844
  %2846 = extractelement <8 x double> %2816, i64 5
  %2847 = fadd double %2845, %2846
  %2848 = extractelement <8 x double> %2816, i64 6
  %2849 = fadd double %2847, %2848
  %2850 = extractelement <8 x double> %2816, i64 7
  %2851 = fadd double %2849, %2850
  %2852 = shufflevector <8 x double> %2833, <8 x double> poison, <8 x i32> zeroinitializer
  %2853 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2834, <8 x double> %2836, <8 x double> %2852)
  %2854 = insertelement <8 x double> poison, double %2851, i64 0
  %2855 = shufflevector <8 x double> %2854, <8 x double> poison, <8 x i32> zeroinitializer
  %2856 = fadd <8 x double> %2834, %2855
  store <8 x double> %2853, ptr %201, align 64, !tbaa !26
  %2857 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %2858 = fcmp ule <8 x double> %2857, zeroinitializer
  %2859 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %2860 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2857, <8 x double> splat (double 5.000000e-01), <8 x double> %2859)
  %2861 = fsub <8 x double> %2860, %2815
  %2862 = fcmp ogt <8 x double> %2857, splat (double 1.000000e-30)
  %2863 = select <8 x i1> %2862, <8 x double> %2857, <8 x double> splat (double 1.000000e-30)
  %2864 = fdiv <8 x double> %2861, %2863
  %2865 = fcmp ogt <8 x double> %2864, zeroinitializer
  %2866 = select <8 x i1> %2865, <8 x double> %2864, <8 x double> zeroinitializer
  %2867 = fcmp olt <8 x double> %2866, splat (double 1.000000e+00)
  %2868 = select <8 x i1> %2867, <8 x double> %2866, <8 x double> splat (double 1.000000e+00)
  %2869 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %2870 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %2871 = icmp eq <8 x i64> %2870, zeroinitializer
  %2872 = select <8 x i1> %2871, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %2873 = select <8 x i1> %2858, <8 x double> %2872, <8 x double> %2868
  %2874 = fmul <8 x double> %2869, %2873
  %2875 = fcmp ule <8 x double> %2874, zeroinitializer
  %2876 = fcmp uge <8 x double> %2874, %2869
  %2877 = or <8 x i1> %2875, %2876
  %2878 = or <8 x i1> %2858, %2877
  %2879 = fdiv <8 x double> %2869, %2863
  %2880 = select <8 x i1> %2878, <8 x double> zeroinitializer, <8 x double> %2879
  %2881 = fadd <8 x double> %2856, %2880
  %2882 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %2883 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2884 = fdiv <8 x double> splat (double 2.000000e+00), %2883
  %2885 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %2886 = icmp eq <8 x i64> %2882, zeroinitializer
  %2887 = select <8 x i1> %2886, <8 x double> %2885, <8 x double> %2884
  %2888 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %2889 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %2890 = fmul <8 x double> %2888, %2889
  %2891 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %2892 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %2893 = fmul <8 x double> %2892, splat (double 5.000000e-01)
  %2894 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2893, <8 x double> %2888, <8 x double> %2891)
  %2895 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %2896 = fmul <8 x double> %2888, %2895
  %2897 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2890, <8 x double> %2894, <8 x double> %2896)
  %2898 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %2899 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %2900 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %2901 = fmul <8 x double> %2889, %2900
  %2902 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2893, <8 x double> %2900, <8 x double> %2891)
  %2903 = fmul <8 x double> %2895, %2900
  %2904 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2901, <8 x double> %2902, <8 x double> %2903)
  %2905 = fmul <8 x double> %2899, %2904
  %2906 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2898, <8 x double> %2897, <8 x double> %2905)
  %2907 = fmul <8 x double> %2815, %2889
  %2908 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2893, <8 x double> %2815, <8 x double> %2891)
  %2909 = fmul <8 x double> %2815, %2895
  %2910 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2907, <8 x double> %2908, <8 x double> %2909)
  %2911 = fneg <8 x double> %2887
  %2912 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %2913 = fneg <8 x double> %2912
  %2914 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2911, <8 x double> %2897, <8 x double> %2913)
  %2915 = select <8 x i1> %2886, <8 x double> %2906, <8 x double> %2914
  %2916 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2887, <8 x double> %2910, <8 x double> %2915)
  %2917 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2892, <8 x double> %2815, <8 x double> %2891)
  %2918 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2889, <8 x double> %2917, <8 x double> %2895)
  %2919 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %2920 = fcmp une <8 x double> %2919, zeroinitializer
  %2921 = fadd <8 x double> %2853, %2916
  %2922 = fsub <8 x double> %2921, %2874
  %2923 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2887, <8 x double> %2918, <8 x double> %2881)
  %2924 = fdiv <8 x double> %2922, %2923
  %2925 = fsub <8 x double> %2815, %2924
  %2926 = select <8 x i1> %2920, <8 x double> %2815, <8 x double> %2925
  store <8 x double> %2926, ptr %165, align 64, !tbaa !26
  %2927 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2928 = fneg <8 x double> %2898
  %2929 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2928, <8 x double> %2927, <8 x double> %2874)
  %2930 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %2931 = fneg <8 x double> %2899
  %2932 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2931, <8 x double> %2930, <8 x double> %2929)
  %2933 = fdiv <8 x double> %2932, %2885
  %2934 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %2935 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2928, <8 x double> %2934, <8 x double> %2853)
  %2936 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %2937 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2931, <8 x double> %2936, <8 x double> %2935)
  %2938 = fdiv <8 x double> %2937, %2885
  %2939 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2874, <8 x double> %2883, <8 x double> %2927)
  %2940 = select <8 x i1> %2886, <8 x double> %2933, <8 x double> %2939
  %2941 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %2942 = select <8 x i1> %2920, <8 x double> %2941, <8 x double> %2940
  store <8 x double> %2942, ptr %206, align 64, !tbaa !26
  %2943 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2944 = select <8 x i1> %2920, <8 x double> %2943, <8 x double> %2938
  store <8 x double> %2944, ptr %207, align 64, !tbaa !26
  %2945 = load i64, ptr %156, align 8, !tbaa !20
  %2946 = icmp sgt i64 %2945, 0
  br i1 %2946, label %3067, label %3330

2947:                                             ; preds = %2812, %2947
  %2948 = phi <8 x double> [ zeroinitializer, %2812 ], [ %2961, %2947 ]
  %2949 = phi <8 x double> [ zeroinitializer, %2812 ], [ %2966, %2947 ]
  %2950 = phi i64 [ 0, %2812 ], [ %2967, %2947 ]
  %2951 = getelementptr inbounds nuw %struct.Piece, ptr %2813, i64 %2950
  %2952 = getelementptr inbounds nuw i8, ptr %2951, i64 7488
  %2953 = load <8 x i64>, ptr %2952, align 64, !tbaa !26
  %2954 = getelementptr inbounds nuw i8, ptr %2951, i64 128
  %2955 = load <8 x double>, ptr %2954, align 64, !tbaa !26
  %2956 = getelementptr inbounds nuw i8, ptr %2951, i64 6336
  %2957 = load <8 x double>, ptr %2956, align 64, !tbaa !26
  %2958 = fmul <8 x double> %2955, %2957
  %2959 = icmp eq <8 x i64> %2953, zeroinitializer
  %2960 = select <8 x i1> %2959, <8 x double> %2958, <8 x double> zeroinitializer
  %2961 = fadd <8 x double> %2948, %2960
  %2962 = getelementptr inbounds nuw i8, ptr %2951, i64 6208
  %2963 = load <8 x double>, ptr %2962, align 64, !tbaa !26
  %2964 = fmul <8 x double> %2955, %2963
  %2965 = select <8 x i1> %2959, <8 x double> %2964, <8 x double> zeroinitializer
  %2966 = fadd <8 x double> %2949, %2965
  %2967 = add nuw nsw i64 %2950, 1
  %2968 = icmp eq i64 %2967, %3065
  br i1 %2968, label %2814, label %2947, !llvm.loop !107

2969:                                             ; preds = %2804, %3041
  %2970 = phi i64 [ %3064, %3041 ], [ 0, %2804 ]
  %2971 = load ptr, ptr %129, align 8, !tbaa !28
  %2972 = getelementptr inbounds nuw %struct.Piece, ptr %2971, i64 %2970
  %2973 = getelementptr inbounds nuw i8, ptr %2972, i64 5568
  %2974 = load <8 x double>, ptr %2973, align 64, !tbaa !26
  %2975 = getelementptr inbounds nuw i8, ptr %2972, i64 5760
  %2976 = load <8 x double>, ptr %2975, align 64, !tbaa !26
  %2977 = getelementptr inbounds nuw i8, ptr %2972, i64 7608
  %2978 = load ptr, ptr %2977, align 8, !tbaa !74
  %2979 = getelementptr inbounds nuw i8, ptr %2972, i64 7616
  %2980 = load ptr, ptr %2979, align 64, !tbaa !75
  %2981 = getelementptr inbounds nuw i8, ptr %2972, i64 7560
  %2982 = load ptr, ptr %2981, align 8, !tbaa !56
  %2983 = load i64, ptr %119, align 16, !tbaa !21
  %2984 = icmp sgt i64 %2983, 0
  br i1 %2984, label %3000, label %2985

2985:                                             ; preds = %3000, %2969
  %2986 = getelementptr inbounds nuw i8, ptr %2972, i64 7360
  %2987 = load <8 x i64>, ptr %2986, align 64, !tbaa !26
  %2988 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2987)
  %2989 = icmp eq i64 %2988, 0
  %2990 = load i64, ptr %120, align 8, !tbaa !22
  %2991 = icmp sgt i64 %2990, 0
  br i1 %2989, label %2997, label %2992

2992:                                             ; preds = %2985
  br i1 %2991, label %2993, label %3041

2993:                                             ; preds = %2992
  %2994 = getelementptr inbounds nuw i8, ptr %2972, i64 7712
  %2995 = getelementptr inbounds nuw i8, ptr %2972, i64 7720
  %2996 = getelementptr inbounds nuw i8, ptr %2972, i64 7680
  br label %3016

2997:                                             ; preds = %2985
  br i1 %2991, label %2998, label %3041

2998:                                             ; preds = %2997
  %2999 = getelementptr inbounds nuw i8, ptr %2972, i64 7680
  br label %3034

3000:                                             ; preds = %2969, %3000
  %3001 = phi <8 x double> [ %3013, %3000 ], [ %2974, %2969 ]
  %3002 = phi i64 [ %3003, %3000 ], [ %2983, %2969 ]
  %3003 = add nsw i64 %3002, -1
  %3004 = uitofp nneg i64 %3003 to double
  %3005 = insertelement <8 x double> poison, double %3004, i64 0
  %3006 = shufflevector <8 x double> %3005, <8 x double> poison, <8 x i32> zeroinitializer
  %3007 = fcmp ugt <8 x double> %2976, %3006
  %3008 = getelementptr inbounds nuw <8 x double>, ptr %2978, i64 %3003
  %3009 = load <8 x double>, ptr %3008, align 64, !tbaa !26
  %3010 = getelementptr inbounds nuw <8 x double>, ptr %2980, i64 %3003
  %3011 = load <8 x double>, ptr %3010, align 64, !tbaa !26
  %3012 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3011, <8 x double> %3001, <8 x double> %3009)
  %3013 = select <8 x i1> %3007, <8 x double> %3012, <8 x double> %2974
  %3014 = getelementptr inbounds nuw <8 x double>, ptr %2982, i64 %3003
  store <8 x double> %3013, ptr %3014, align 64, !tbaa !26
  %3015 = icmp samesign ugt i64 %3002, 1
  br i1 %3015, label %3000, label %2985, !llvm.loop !108

3016:                                             ; preds = %2993, %3016
  %3017 = phi i64 [ 0, %2993 ], [ %3031, %3016 ]
  %3018 = phi <8 x double> [ %2974, %2993 ], [ %3028, %3016 ]
  %3019 = load <8 x i64>, ptr %2986, align 64, !tbaa !26
  %3020 = load ptr, ptr %2994, align 32, !tbaa !80
  %3021 = getelementptr inbounds nuw <8 x double>, ptr %3020, i64 %3017
  %3022 = load <8 x double>, ptr %3021, align 64, !tbaa !26
  %3023 = load ptr, ptr %2995, align 8, !tbaa !81
  %3024 = getelementptr inbounds nuw <8 x double>, ptr %3023, i64 %3017
  %3025 = load <8 x double>, ptr %3024, align 64, !tbaa !26
  %3026 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3025, <8 x double> %3018, <8 x double> %3022)
  %3027 = icmp eq <8 x i64> %3019, zeroinitializer
  %3028 = select <8 x i1> %3027, <8 x double> %2974, <8 x double> %3026
  %3029 = load ptr, ptr %2996, align 64, !tbaa !109
  %3030 = getelementptr inbounds nuw <8 x double>, ptr %3029, i64 %3017
  store <8 x double> %3028, ptr %3030, align 64, !tbaa !26
  %3031 = add nuw nsw i64 %3017, 1
  %3032 = load i64, ptr %120, align 8, !tbaa !22
  %3033 = icmp slt i64 %3031, %3032
  br i1 %3033, label %3016, label %3041, !llvm.loop !110

3034:                                             ; preds = %2998, %3034
  %3035 = phi i64 [ 0, %2998 ], [ %3038, %3034 ]
  %3036 = load ptr, ptr %2999, align 64, !tbaa !109
  %3037 = getelementptr inbounds nuw <8 x double>, ptr %3036, i64 %3035
  store <8 x double> %2974, ptr %3037, align 64, !tbaa !26
  %3038 = add nuw nsw i64 %3035, 1
  %3039 = load i64, ptr %120, align 8, !tbaa !22
  %3040 = icmp slt i64 %3038, %3039
  br i1 %3040, label %3034, label %3041, !llvm.loop !111

3041:                                             ; preds = %3016, %3034, %2992, %2997
  %3042 = phi <8 x double> [ %2974, %2997 ], [ %2974, %2992 ], [ %2974, %3034 ], [ %3028, %3016 ]
  %3043 = load <8 x i64>, ptr %2986, align 64, !tbaa !26
  %3044 = getelementptr inbounds nuw i8, ptr %2972, i64 6272
  %3045 = load <8 x double>, ptr %3044, align 64, !tbaa !26
  %3046 = icmp eq <8 x i64> %3043, zeroinitializer
  %3047 = select <8 x i1> %3046, <8 x double> zeroinitializer, <8 x double> %3045
  %3048 = fsub <8 x double> splat (double 1.000000e+00), %3047
  %3049 = getelementptr inbounds nuw i8, ptr %2972, i64 5504
  %3050 = load <8 x double>, ptr %3049, align 64, !tbaa !26
  %3051 = fmul <8 x double> %3047, %3050
  %3052 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3048, <8 x double> %3042, <8 x double> %3051)
  %3053 = getelementptr inbounds nuw i8, ptr %2972, i64 6464
  store <8 x double> %3052, ptr %3053, align 64, !tbaa !26
  %3054 = getelementptr inbounds nuw i8, ptr %2972, i64 6208
  %3055 = load <8 x double>, ptr %3054, align 64, !tbaa !26
  %3056 = fsub <8 x double> %3050, %3042
  %3057 = fmul <8 x double> %3056, %3055
  %3058 = getelementptr inbounds nuw i8, ptr %2972, i64 6336
  store <8 x double> %3057, ptr %3058, align 64, !tbaa !26
  %3059 = getelementptr inbounds nuw i8, ptr %2972, i64 3200
  %3060 = load <8 x double>, ptr %3059, align 64, !tbaa !26
  %3061 = fdiv <8 x double> %3057, %3060
  %3062 = fsub <8 x double> %3050, %3061
  %3063 = getelementptr inbounds nuw i8, ptr %2972, i64 6400
  store <8 x double> %3062, ptr %3063, align 64, !tbaa !26
  %3064 = add nuw nsw i64 %2970, 1
  %3065 = load i64, ptr %156, align 8, !tbaa !20
  %3066 = icmp slt i64 %3064, %3065
  br i1 %3066, label %2969, label %2809, !llvm.loop !112

3067:                                             ; preds = %2814, %3285
  %3068 = phi i64 [ %3327, %3285 ], [ 0, %2814 ]
  %3069 = phi <8 x double> [ %3326, %3285 ], [ zeroinitializer, %2814 ]
  %3070 = load ptr, ptr %129, align 8, !tbaa !28
  %3071 = getelementptr inbounds nuw %struct.Piece, ptr %3070, i64 %3068
  %3072 = getelementptr inbounds nuw i8, ptr %3071, i64 5632
  %3073 = load <8 x double>, ptr %3072, align 64, !tbaa !26
  %3074 = getelementptr inbounds nuw i8, ptr %3071, i64 5696
  %3075 = load <8 x double>, ptr %3074, align 64, !tbaa !26
  %3076 = fadd <8 x double> %3073, %3075
  %3077 = getelementptr inbounds nuw i8, ptr %3071, i64 5568
  %3078 = load <8 x double>, ptr %3077, align 64, !tbaa !26
  %3079 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %3080 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3079, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3081 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3079, <8 x double> %3080, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3082 = getelementptr inbounds nuw i8, ptr %3071, i64 5312
  %3083 = load <8 x double>, ptr %3082, align 64, !tbaa !26
  %3084 = getelementptr inbounds nuw i8, ptr %3071, i64 4032
  %3085 = load <8 x double>, ptr %3084, align 64, !tbaa !26
  %3086 = fneg <8 x double> %3083
  %3087 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3086, <8 x double> %3085, <8 x double> %3076)
  %3088 = getelementptr inbounds nuw i8, ptr %3071, i64 5376
  %3089 = load <8 x double>, ptr %3088, align 64, !tbaa !26
  %3090 = getelementptr inbounds nuw i8, ptr %3071, i64 4800
  %3091 = load <8 x double>, ptr %3090, align 64, !tbaa !26
  %3092 = fneg <8 x double> %3089
  %3093 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3092, <8 x double> %3091, <8 x double> %3087)
  %3094 = getelementptr inbounds nuw i8, ptr %3071, i64 5248
  %3095 = load <8 x double>, ptr %3094, align 64, !tbaa !26
  %3096 = fdiv <8 x double> %3093, %3095
  %3097 = getelementptr inbounds nuw i8, ptr %3071, i64 1600
  %3098 = load <8 x double>, ptr %3097, align 64, !tbaa !26
  %3099 = fsub <8 x double> %3098, %3096
  %3100 = getelementptr inbounds nuw i8, ptr %3071, i64 3904
  %3101 = load <8 x double>, ptr %3100, align 64, !tbaa !26
  %3102 = getelementptr inbounds nuw i8, ptr %3071, i64 7168
  %3103 = load <8 x double>, ptr %3102, align 64, !tbaa !26
  %3104 = fsub <8 x double> %3101, %3103
  %3105 = getelementptr inbounds nuw i8, ptr %3071, i64 6784
  %3106 = load <8 x double>, ptr %3105, align 64, !tbaa !26
  %3107 = getelementptr inbounds nuw i8, ptr %3071, i64 1280
  %3108 = load <8 x double>, ptr %3107, align 64, !tbaa !26
  %3109 = fmul <8 x double> %3106, %3108
  %3110 = getelementptr inbounds nuw i8, ptr %3071, i64 6464
  %3111 = load <8 x double>, ptr %3110, align 64, !tbaa !26
  %3112 = fsub <8 x double> %3111, %3078
  %3113 = fmul <8 x double> %3109, %3112
  %3114 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3081, <8 x double> %3076, <8 x double> %3113)
  %3115 = fsub <8 x double> %3099, %3104
  %3116 = getelementptr inbounds nuw i8, ptr %3071, i64 2944
  %3117 = getelementptr inbounds nuw i8, ptr %3071, i64 3072
  %3118 = load <8 x double>, ptr %3117, align 64, !tbaa !26
  %3119 = fsub <8 x double> %3115, %3118
  %3120 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3119)
  %3121 = getelementptr inbounds nuw i8, ptr %3071, i64 832
  %3122 = load <8 x double>, ptr %3121, align 64, !tbaa !26
  %3123 = fdiv <8 x double> %3120, %3122
  %3124 = getelementptr inbounds nuw i8, ptr %3071, i64 7360
  %3125 = load <8 x i64>, ptr %3124, align 64, !tbaa !26
  %3126 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3125)
  %3127 = icmp eq i64 %3126, 0
  br i1 %3127, label %3285, label %3128

3128:                                             ; preds = %3067
  %3129 = getelementptr inbounds nuw i8, ptr %3071, i64 3776
  %3130 = load <8 x double>, ptr %3129, align 64, !tbaa !26
  %3131 = fcmp ogt <8 x double> %3104, %3099
  %3132 = getelementptr inbounds nuw i8, ptr %3071, i64 7296
  %3133 = load <8 x double>, ptr %3132, align 64, !tbaa !26
  %3134 = fcmp oeq <8 x double> %3133, zeroinitializer
  %3135 = select <8 x i1> %3134, <8 x i1> %3131, <8 x i1> zeroinitializer
  %3136 = select <8 x i1> %3135, <8 x i64> %3125, <8 x i64> zeroinitializer
  %3137 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3136)
  %3138 = icmp eq i64 %3137, 0
  br i1 %3138, label %3209, label %3139

3139:                                             ; preds = %3128
  %3140 = fsub <8 x double> %3104, %3099
  %3141 = fdiv <8 x double> %3140, %3122
  %3142 = getelementptr inbounds nuw i8, ptr %3071, i64 7592
  %3143 = load ptr, ptr %3142, align 8, !tbaa !63
  %3144 = load i64, ptr %119, align 16, !tbaa !21
  %3145 = add nsw i64 %3144, -1
  %3146 = getelementptr inbounds <8 x double>, ptr %3143, i64 %3145
  %3147 = load <8 x double>, ptr %3146, align 64, !tbaa !26
  %3148 = icmp sgt i64 %3144, 1
  br i1 %3148, label %3149, label %3201

3149:                                             ; preds = %3139
  %3150 = getelementptr inbounds nuw i8, ptr %3071, i64 7552
  %3151 = load i64, ptr %3150, align 64, !tbaa !31
  %3152 = getelementptr inbounds nuw i8, ptr %3071, i64 4416
  %3153 = getelementptr inbounds nuw i8, ptr %3071, i64 1536
  %3154 = getelementptr inbounds nuw i8, ptr %3071, i64 7648
  br label %3155

3155:                                             ; preds = %3149, %3198
  %3156 = phi <8 x double> [ %3130, %3149 ], [ %3193, %3198 ]
  %3157 = phi i64 [ %3145, %3149 ], [ %3199, %3198 ]
  %3158 = phi <8 x double> [ %3147, %3149 ], [ %3181, %3198 ]
  %3159 = phi <8 x i64> [ %3136, %3149 ], [ %3185, %3198 ]
  %3160 = phi <8 x double> [ %3141, %3149 ], [ %3192, %3198 ]
  %3161 = icmp slt i64 %3157, %3151
  br i1 %3161, label %3162, label %3168

3162:                                             ; preds = %3155
  %3163 = load ptr, ptr %3154, align 32, !tbaa !70
  %3164 = getelementptr inbounds nuw <8 x double>, ptr %3163, i64 %3157
  %3165 = load <8 x double>, ptr %3164, align 64, !tbaa !26
  %3166 = load <8 x double>, ptr %3153, align 64, !tbaa !26
  %3167 = fmul <8 x double> %3165, %3166
  br label %3176

3168:                                             ; preds = %3155
  %3169 = load <8 x double>, ptr %3152, align 64, !tbaa !26
  %3170 = load <8 x double>, ptr %3153, align 64, !tbaa !26
  %3171 = load ptr, ptr %3154, align 32, !tbaa !70
  %3172 = getelementptr inbounds nuw <8 x double>, ptr %3171, i64 %3157
  %3173 = load <8 x double>, ptr %3172, align 64, !tbaa !26
  %3174 = fsub <8 x double> %3169, %3170
  %3175 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3173, <8 x double> %3174, <8 x double> %3170)
  br label %3176

3176:                                             ; preds = %3162, %3168
  %3177 = phi <8 x double> [ %3167, %3162 ], [ %3175, %3168 ]
  %3178 = getelementptr inbounds nuw <8 x double>, ptr %3143, i64 %3157
  %3179 = load <8 x double>, ptr %3178, align 64, !tbaa !26
  %3180 = icmp eq <8 x i64> %3159, zeroinitializer
  %3181 = select <8 x i1> %3180, <8 x double> %3158, <8 x double> %3179
  %3182 = fsub <8 x double> %3156, %3177
  %3183 = fmul <8 x double> %3182, %3181
  %3184 = fcmp olt <8 x double> %3183, %3160
  %3185 = select <8 x i1> %3184, <8 x i64> %3159, <8 x i64> zeroinitializer
  %3186 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3185)
  %3187 = icmp eq i64 %3186, 0
  br i1 %3187, label %3201, label %3188

3188:                                             ; preds = %3176
  %3189 = fneg <8 x double> %3181
  %3190 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3189, <8 x double> %3182, <8 x double> %3160)
  %3191 = icmp eq <8 x i64> %3185, zeroinitializer
  %3192 = select <8 x i1> %3191, <8 x double> %3160, <8 x double> %3190
  %3193 = select <8 x i1> %3191, <8 x double> %3156, <8 x double> %3177
  %3194 = icmp eq i64 %3157, 1
  br i1 %3194, label %3195, label %3198

3195:                                             ; preds = %3188
  %3196 = load <8 x double>, ptr %3143, align 64, !tbaa !26
  %3197 = select <8 x i1> %3191, <8 x double> %3181, <8 x double> %3196
  br label %3201

3198:                                             ; preds = %3188
  %3199 = add nsw i64 %3157, -1
  %3200 = icmp sgt i64 %3157, 1
  br i1 %3200, label %3155, label %3201, !llvm.loop !113

3201:                                             ; preds = %3198, %3176, %3195, %3139
  %3202 = phi <8 x double> [ %3141, %3139 ], [ %3192, %3195 ], [ %3160, %3176 ], [ %3192, %3198 ]
  %3203 = phi <8 x double> [ %3130, %3139 ], [ %3193, %3195 ], [ %3156, %3176 ], [ %3193, %3198 ]
  %3204 = phi <8 x double> [ %3147, %3139 ], [ %3197, %3195 ], [ %3181, %3176 ], [ %3181, %3198 ]
  %3205 = fdiv <8 x double> %3202, %3204
  %3206 = fsub <8 x double> %3203, %3205
  %3207 = icmp eq <8 x i64> %3136, zeroinitializer
  %3208 = select <8 x i1> %3207, <8 x double> %3130, <8 x double> %3206
  br label %3209

3209:                                             ; preds = %3201, %3128
  %3210 = phi <8 x double> [ %3208, %3201 ], [ %3130, %3128 ]
  %3211 = load <8 x double>, ptr %3116, align 64, !tbaa !26
  %3212 = getelementptr inbounds nuw i8, ptr %3071, i64 2560
  %3213 = load <8 x double>, ptr %3212, align 64, !tbaa !26
  %3214 = getelementptr inbounds nuw i8, ptr %3071, i64 2624
  %3215 = load <8 x double>, ptr %3214, align 64, !tbaa !26
  %3216 = getelementptr inbounds nuw i8, ptr %3071, i64 2688
  %3217 = load <8 x double>, ptr %3216, align 64, !tbaa !26
  %3218 = getelementptr inbounds nuw i8, ptr %3071, i64 2752
  %3219 = load <8 x double>, ptr %3218, align 64, !tbaa !26
  %3220 = load <8 x double>, ptr %3071, align 64, !tbaa !26
  %3221 = fmul <8 x double> %3220, splat (double 1.000000e-09)
  br label %3222

3222:                                             ; preds = %3209, %3222
  %3223 = phi <8 x i64> [ splat (i64 -1), %3209 ], [ %3240, %3222 ]
  %3224 = phi i32 [ 0, %3209 ], [ %3241, %3222 ]
  %3225 = phi <8 x double> [ %3211, %3209 ], [ %3237, %3222 ]
  %3226 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3225, <8 x double> %3219, <8 x double> %3217)
  %3227 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3225, <8 x double> %3226, <8 x double> %3215)
  %3228 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3225, <8 x double> %3227, <8 x double> %3213)
  %3229 = fsub <8 x double> %3228, %3210
  %3230 = fmul <8 x double> %3225, splat (double 3.000000e+00)
  %3231 = fmul <8 x double> %3230, %3219
  %3232 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3217, <8 x double> splat (double 2.000000e+00), <8 x double> %3231)
  %3233 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3225, <8 x double> %3232, <8 x double> %3215)
  %3234 = fdiv <8 x double> %3229, %3233
  %3235 = fsub <8 x double> %3225, %3234
  %3236 = icmp eq <8 x i64> %3223, zeroinitializer
  %3237 = select <8 x i1> %3236, <8 x double> %3225, <8 x double> %3235
  %3238 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3234)
  %3239 = fcmp oge <8 x double> %3238, %3221
  %3240 = select <8 x i1> %3239, <8 x i64> %3223, <8 x i64> zeroinitializer
  %3241 = add nuw nsw i32 %3224, 1
  %3242 = icmp samesign ult i32 %3224, 3
  %3243 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3240)
  %3244 = icmp ne i64 %3243, 0
  %3245 = select i1 %3242, i1 %3244, i1 false
  br i1 %3245, label %3222, label %3246, !llvm.loop !114

3246:                                             ; preds = %3222
  %3247 = fmul <8 x double> %3220, splat (double 2.800000e-01)
  %3248 = fcmp ogt <8 x double> %3237, %3247
  %3249 = select <8 x i1> %3248, <8 x double> %3237, <8 x double> %3247
  %3250 = fcmp olt <8 x double> %3249, %3220
  %3251 = select <8 x i1> %3250, <8 x double> %3249, <8 x double> %3220
  %3252 = fcmp olt <8 x double> %3104, %3099
  %3253 = icmp eq <8 x i64> %3125, zeroinitializer
  %3254 = select <8 x i1> %3253, <8 x i1> splat (i1 true), <8 x i1> %3252
  %3255 = select <8 x i1> %3254, <8 x double> %3104, <8 x double> %3099
  %3256 = fsub <8 x double> %3251, %3211
  %3257 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3256)
  %3258 = select <8 x i1> %3253, <8 x double> %3123, <8 x double> %3257
  %3259 = select <8 x i1> %3253, <8 x double> %3211, <8 x double> %3251
  store <8 x double> %3259, ptr %3116, align 64, !tbaa !26
  %3260 = getelementptr inbounds nuw i8, ptr %3071, i64 3008
  %3261 = load <8 x double>, ptr %3260, align 64, !tbaa !26
  %3262 = select <8 x i1> %3253, <8 x double> %3261, <8 x double> %3210
  store <8 x double> %3262, ptr %3260, align 64, !tbaa !26
  %3263 = getelementptr inbounds nuw i8, ptr %3071, i64 6720
  %3264 = load <8 x double>, ptr %3263, align 64, !tbaa !26
  %3265 = fmul <8 x double> %3264, splat (double 2.000000e+00)
  %3266 = getelementptr inbounds nuw i8, ptr %3071, i64 384
  %3267 = load <8 x double>, ptr %3266, align 64, !tbaa !26
  %3268 = getelementptr inbounds nuw i8, ptr %3071, i64 448
  %3269 = load <8 x double>, ptr %3268, align 64, !tbaa !26
  %3270 = getelementptr inbounds nuw i8, ptr %3071, i64 512
  %3271 = load <8 x double>, ptr %3270, align 64, !tbaa !26
  %3272 = fmul <8 x double> %3078, %3271
  %3273 = fmul <8 x double> %3272, splat (double 0x3FD5555555555555)
  %3274 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3269, <8 x double> splat (double 5.000000e-01), <8 x double> %3273)
  %3275 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3078, <8 x double> %3274, <8 x double> %3267)
  %3276 = fmul <8 x double> %3078, %3275
  %3277 = getelementptr inbounds nuw i8, ptr %3071, i64 768
  %3278 = load <8 x double>, ptr %3277, align 64, !tbaa !26
  %3279 = fneg <8 x double> %3278
  %3280 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3279, <8 x double> %3078, <8 x double> %3276)
  %3281 = fmul <8 x double> %3265, %3280
  %3282 = fsub <8 x double> %3114, %3281
  %3283 = select <8 x i1> %3253, <8 x double> %3114, <8 x double> %3282
  %3284 = fsub <8 x double> %3099, %3255
  br label %3285

3285:                                             ; preds = %3067, %3246
  %3286 = phi <8 x double> [ %3115, %3067 ], [ %3284, %3246 ]
  %3287 = phi <8 x double> [ %3123, %3067 ], [ %3258, %3246 ]
  %3288 = phi <8 x double> [ %3104, %3067 ], [ %3255, %3246 ]
  %3289 = phi <8 x double> [ %3114, %3067 ], [ %3283, %3246 ]
  store <8 x double> %3286, ptr %3117, align 64, !tbaa !26
  %3290 = getelementptr inbounds nuw i8, ptr %3071, i64 3136
  store <8 x double> %3288, ptr %3290, align 64, !tbaa !26
  %3291 = getelementptr inbounds nuw i8, ptr %3071, i64 3264
  store <8 x double> %3096, ptr %3291, align 64, !tbaa !26
  %3292 = getelementptr inbounds nuw i8, ptr %3071, i64 3456
  store <8 x double> %3073, ptr %3292, align 64, !tbaa !26
  %3293 = getelementptr inbounds nuw i8, ptr %3071, i64 3520
  store <8 x double> %3078, ptr %3293, align 64, !tbaa !26
  %3294 = getelementptr inbounds nuw i8, ptr %3071, i64 6976
  %3295 = load <8 x double>, ptr %3294, align 64, !tbaa !26
  %3296 = getelementptr inbounds nuw i8, ptr %3071, i64 7040
  %3297 = load <8 x double>, ptr %3296, align 64, !tbaa !26
  %3298 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3295, <8 x double> %3078, <8 x double> %3297)
  %3299 = getelementptr inbounds nuw i8, ptr %3071, i64 6336
  %3300 = load <8 x double>, ptr %3299, align 64, !tbaa !26
  %3301 = getelementptr inbounds nuw i8, ptr %3071, i64 4096
  %3302 = load <8 x double>, ptr %3301, align 64, !tbaa !26
  %3303 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3086, <8 x double> %3302, <8 x double> %3300)
  %3304 = getelementptr inbounds nuw i8, ptr %3071, i64 4864
  %3305 = load <8 x double>, ptr %3304, align 64, !tbaa !26
  %3306 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3092, <8 x double> %3305, <8 x double> %3303)
  %3307 = fdiv <8 x double> %3306, %3095
  %3308 = getelementptr inbounds nuw i8, ptr %3071, i64 3328
  store <8 x double> %3307, ptr %3308, align 64, !tbaa !26
  %3309 = getelementptr inbounds nuw i8, ptr %3071, i64 4160
  %3310 = load <8 x double>, ptr %3309, align 64, !tbaa !26
  %3311 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3086, <8 x double> %3310, <8 x double> %3289)
  %3312 = getelementptr inbounds nuw i8, ptr %3071, i64 4928
  %3313 = load <8 x double>, ptr %3312, align 64, !tbaa !26
  %3314 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3092, <8 x double> %3313, <8 x double> %3311)
  %3315 = fdiv <8 x double> %3314, %3095
  %3316 = getelementptr inbounds nuw i8, ptr %3071, i64 3392
  store <8 x double> %3315, ptr %3316, align 64, !tbaa !26
  %3317 = getelementptr inbounds nuw i8, ptr %3071, i64 4352
  %3318 = load <8 x double>, ptr %3317, align 64, !tbaa !26
  %3319 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3086, <8 x double> %3318, <8 x double> %3298)
  %3320 = getelementptr inbounds nuw i8, ptr %3071, i64 5120
  %3321 = load <8 x double>, ptr %3320, align 64, !tbaa !26
  %3322 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3092, <8 x double> %3321, <8 x double> %3319)
  %3323 = fdiv <8 x double> %3322, %3095
  %3324 = getelementptr inbounds nuw i8, ptr %3071, i64 3584
  store <8 x double> %3323, ptr %3324, align 64, !tbaa !26
  %3325 = fcmp ogt <8 x double> %3069, %3287
  %3326 = select <8 x i1> %3325, <8 x double> %3069, <8 x double> %3287
  %3327 = add nuw nsw i64 %3068, 1
  %3328 = load i64, ptr %156, align 8, !tbaa !20
  %3329 = icmp slt i64 %3327, %3328
  br i1 %3329, label %3067, label %3330, !llvm.loop !115

3330:                                             ; preds = %3285, %2814
  %3331 = phi i64 [ %2945, %2814 ], [ %3328, %3285 ]
  %3332 = phi <8 x double> [ zeroinitializer, %2814 ], [ %3326, %3285 ]
  %3333 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %3332)
  %3334 = insertelement <8 x double> poison, double %3333, i64 0
  %3335 = shufflevector <8 x double> %3334, <8 x double> poison, <8 x i32> zeroinitializer
  %3336 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %3337 = fadd <8 x double> %3336, splat (double 1.000000e+00)
  store <8 x double> %3337, ptr %171, align 64, !tbaa !26
  %3338 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %3339 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %3340 = fcmp olt <8 x double> %3335, %3339
  %3341 = load i64, ptr %209, align 32, !tbaa !24
  %3342 = sitofp i64 %3341 to double
  %3343 = insertelement <8 x double> poison, double %3342, i64 0
  %3344 = shufflevector <8 x double> %3343, <8 x double> poison, <8 x i32> zeroinitializer
  %3345 = fcmp oge <8 x double> %3337, %3344
  %3346 = or <8 x i1> %3340, %3345
  %3347 = select <8 x i1> %3346, <8 x i64> %3338, <8 x i64> zeroinitializer
  store <8 x i64> %3347, ptr %133, align 64, !tbaa !26
  %3348 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3347)
  %3349 = icmp eq i64 %3348, 0
  br i1 %3349, label %515, label %3350, !llvm.loop !53

3350:                                             ; preds = %3330
  %3351 = icmp sgt i64 %3331, 0
  br i1 %3351, label %3352, label %3354

3352:                                             ; preds = %3350
  %3353 = icmp eq <8 x i64> %3347, zeroinitializer
  br label %3668

3354:                                             ; preds = %3716, %3350
  %3355 = phi i64 [ %3331, %3350 ], [ %3722, %3716 ]
  %3356 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %3357 = fadd <8 x double> %3356, splat (double 1.000000e+00)
  %3358 = icmp eq <8 x i64> %3347, zeroinitializer
  %3359 = select <8 x i1> %3358, <8 x double> %3356, <8 x double> %3357
  store <8 x double> %3359, ptr %161, align 64, !tbaa !26
  %3360 = fcmp ogt <8 x double> %3359, splat (double 4.000000e+01)
  %3361 = select <8 x i1> %3360, <8 x i64> %3347, <8 x i64> zeroinitializer
  %3362 = xor <8 x i64> %3361, %3347
  %3363 = load <8 x double>, ptr %127, align 64, !tbaa !26
  %3364 = fadd <8 x double> %3363, splat (double 1.000000e+00)
  %3365 = icmp eq <8 x i64> %3361, zeroinitializer
  %3366 = select <8 x i1> %3365, <8 x double> %3363, <8 x double> %3364
  store <8 x double> %3366, ptr %127, align 64, !tbaa !26
  %3367 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %3368 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %3369 = fsub <8 x double> %3367, %3368
  %3370 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3369)
  %3371 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %3372 = fmul <8 x double> %3371, splat (double 1.500000e+00)
  %3373 = fcmp ogt <8 x double> %3370, %3372
  %3374 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %3375 = fcmp ogt <8 x double> %3374, splat (double 2.000000e-03)
  %3376 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %3377 = fcmp oeq <8 x double> %3376, zeroinitializer
  %3378 = and <8 x i1> %3373, %3377
  %3379 = and <8 x i1> %3375, %3378
  %3380 = fdiv <8 x double> %3371, %3370
  %3381 = select <8 x i1> %3379, <8 x i64> %3362, <8 x i64> zeroinitializer
  %3382 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %3383 = fcmp ogt <8 x double> %3382, %3374
  %3384 = select <8 x i1> %3383, <8 x double> %3382, <8 x double> %3374
  %3385 = select <8 x i1> %3379, <8 x double> zeroinitializer, <8 x double> %3384
  %3386 = icmp eq <8 x i64> %3381, zeroinitializer
  %3387 = select <8 x i1> %3386, <8 x double> %3382, <8 x double> %3385
  store <8 x double> %3387, ptr %159, align 64, !tbaa !26
  %3388 = fcmp ogt <8 x double> %3380, splat (double 5.000000e-02)
  %3389 = select <8 x i1> %3388, <8 x double> %3380, <8 x double> splat (double 5.000000e-02)
  %3390 = fcmp olt <8 x double> %3389, splat (double 0x3FEE666666666666)
  %3391 = select <8 x i1> %3390, <8 x double> %3389, <8 x double> splat (double 0x3FEE666666666666)
  %3392 = fmul <8 x double> %3374, %3391
  %3393 = fcmp ogt <8 x double> %3392, splat (double 0x3EB0C6F7A0B5ED8D)
  %3394 = select <8 x i1> %3393, <8 x double> %3392, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3395 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %3396 = select <8 x i1> %3386, <8 x double> %3395, <8 x double> %3394
  store <8 x double> %3396, ptr %139, align 64, !tbaa !26
  %3397 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %3398 = fadd <8 x double> %3397, splat (double 1.000000e+00)
  %3399 = select <8 x i1> %3386, <8 x double> %3397, <8 x double> %3398
  store <8 x double> %3399, ptr %124, align 64, !tbaa !26
  %3400 = xor <8 x i64> %3381, %3362
  %3401 = icmp sgt i64 %3355, 0
  br i1 %3401, label %3402, label %3498

3402:                                             ; preds = %3354
  %3403 = load ptr, ptr %129, align 8, !tbaa !28
  %3404 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %3405 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %3406 = fcmp une <8 x double> %3404, %3405
  %3407 = fcmp ule <8 x double> %3404, zeroinitializer
  %3408 = or <8 x i1> %3407, %3406
  %3409 = fcmp ogt <8 x double> %3374, splat (double 0x3E7AD7F29ABCAF48)
  %3410 = fcmp ogt <8 x double> %3374, splat (double 1.000000e-05)
  %3411 = fcmp ogt <8 x double> %3374, splat (double 1.000000e-04)
  br label %3412

3412:                                             ; preds = %3402, %3412
  %3413 = phi i64 [ 0, %3402 ], [ %3496, %3412 ]
  %3414 = phi <8 x double> [ splat (double 1.000000e+00), %3402 ], [ %3495, %3412 ]
  %3415 = phi <8 x i64> [ zeroinitializer, %3402 ], [ %3443, %3412 ]
  %3416 = phi <8 x i64> [ zeroinitializer, %3402 ], [ %3492, %3412 ]
  %3417 = getelementptr inbounds nuw %struct.Piece, ptr %3403, i64 %3413
  %3418 = getelementptr inbounds nuw i8, ptr %3417, i64 3072
  %3419 = load <8 x double>, ptr %3418, align 64, !tbaa !26
  %3420 = getelementptr inbounds nuw i8, ptr %3417, i64 3840
  %3421 = load <8 x double>, ptr %3420, align 64, !tbaa !26
  %3422 = getelementptr inbounds nuw i8, ptr %3417, i64 7360
  %3423 = load <8 x i64>, ptr %3422, align 64, !tbaa !26
  %3424 = xor <8 x i64> %3423, splat (i64 -1)
  %3425 = getelementptr inbounds nuw i8, ptr %3417, i64 896
  %3426 = load <8 x double>, ptr %3425, align 64, !tbaa !26
  %3427 = fmul <8 x double> %3426, splat (double 1.000000e-03)
  %3428 = fcmp ogt <8 x double> %3427, splat (double 0x3E7AD7F29ABCAF48)
  %3429 = fneg <8 x double> %3427
  %3430 = select <8 x i1> %3428, <8 x double> %3429, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3431 = fcmp olt <8 x double> %3419, %3430
  %3432 = select <8 x i1> %3431, <8 x i1> %3408, <8 x i1> zeroinitializer
  %3433 = select <8 x i1> %3432, <8 x i64> %3424, <8 x i64> zeroinitializer
  %3434 = fcmp ole <8 x double> %3421, zeroinitializer
  %3435 = select <8 x i1> %3434, <8 x i64> %3433, <8 x i64> zeroinitializer
  %3436 = getelementptr inbounds nuw i8, ptr %3417, i64 832
  %3437 = load <8 x double>, ptr %3436, align 64, !tbaa !26
  %3438 = fmul <8 x double> %3437, splat (double -3.000000e-07)
  %3439 = fcmp olt <8 x double> %3419, %3438
  %3440 = select <8 x i1> %3409, <8 x i1> %3439, <8 x i1> zeroinitializer
  %3441 = select <8 x i1> %3440, <8 x i64> %3435, <8 x i64> zeroinitializer
  %3442 = or <8 x i64> %3441, %3416
  %3443 = or <8 x i64> %3441, %3415
  %3444 = fcmp olt <8 x double> %3414, splat (double 3.000000e-01)
  %3445 = icmp eq <8 x i64> %3441, zeroinitializer
  %3446 = select <8 x i1> %3445, <8 x i1> splat (i1 true), <8 x i1> %3444
  %3447 = select <8 x i1> %3446, <8 x double> %3414, <8 x double> splat (double 3.000000e-01)
  %3448 = xor <8 x i64> %3435, splat (i64 -1)
  %3449 = and <8 x i64> %3433, %3448
  %3450 = select <8 x i1> %3410, <8 x i64> %3449, <8 x i64> zeroinitializer
  %3451 = fsub <8 x double> %3421, %3419
  %3452 = fdiv <8 x double> %3421, %3451
  %3453 = or <8 x i64> %3442, %3450
  %3454 = fcmp olt <8 x double> %3447, %3452
  %3455 = icmp eq <8 x i64> %3450, zeroinitializer
  %3456 = select <8 x i1> %3455, <8 x i1> splat (i1 true), <8 x i1> %3454
  %3457 = select <8 x i1> %3456, <8 x double> %3447, <8 x double> %3452
  %3458 = getelementptr inbounds nuw i8, ptr %3417, i64 3776
  %3459 = load <8 x double>, ptr %3458, align 64, !tbaa !26
  %3460 = getelementptr inbounds nuw i8, ptr %3417, i64 3008
  %3461 = load <8 x double>, ptr %3460, align 64, !tbaa !26
  %3462 = getelementptr inbounds nuw i8, ptr %3417, i64 7296
  %3463 = load <8 x double>, ptr %3462, align 64, !tbaa !26
  %3464 = fcmp oeq <8 x double> %3463, zeroinitializer
  %3465 = getelementptr inbounds nuw i8, ptr %3417, i64 1472
  %3466 = load <8 x double>, ptr %3465, align 64, !tbaa !26
  %3467 = fmul <8 x double> %3466, splat (double 0x3FEFF7CED916872B)
  %3468 = fcmp olt <8 x double> %3461, %3467
  %3469 = and <8 x i1> %3464, %3468
  %3470 = and <8 x i1> %3411, %3469
  %3471 = fsub <8 x double> %3459, %3466
  %3472 = fsub <8 x double> %3459, %3461
  %3473 = fdiv <8 x double> %3471, %3472
  %3474 = fcmp uge <8 x double> %3457, %3473
  %3475 = select <8 x i1> %3470, <8 x i1> %3474, <8 x i1> zeroinitializer
  %3476 = select <8 x i1> %3475, <8 x double> %3473, <8 x double> %3457
  %3477 = fcmp oeq <8 x double> %3463, splat (double 1.000000e+00)
  %3478 = getelementptr inbounds nuw i8, ptr %3417, i64 3264
  %3479 = load <8 x double>, ptr %3478, align 64, !tbaa !26
  %3480 = getelementptr inbounds nuw i8, ptr %3417, i64 1600
  %3481 = load <8 x double>, ptr %3480, align 64, !tbaa !26
  %3482 = fmul <8 x double> %3481, splat (double 1.000100e+00)
  %3483 = fcmp ogt <8 x double> %3479, %3482
  %3484 = and <8 x i1> %3477, %3483
  %3485 = and <8 x i1> %3411, %3484
  %3486 = getelementptr inbounds nuw i8, ptr %3417, i64 4032
  %3487 = load <8 x double>, ptr %3486, align 64, !tbaa !26
  %3488 = fsub <8 x double> %3481, %3487
  %3489 = fsub <8 x double> %3479, %3487
  %3490 = fdiv <8 x double> %3488, %3489
  %3491 = select <8 x i1> %3484, <8 x i1> %3411, <8 x i1> %3470
  %3492 = select <8 x i1> %3491, <8 x i64> splat (i64 -1), <8 x i64> %3453
  %3493 = fcmp uge <8 x double> %3476, %3490
  %3494 = select <8 x i1> %3485, <8 x i1> %3493, <8 x i1> zeroinitializer
  %3495 = select <8 x i1> %3494, <8 x double> %3490, <8 x double> %3476
  %3496 = add nuw nsw i64 %3413, 1
  %3497 = icmp eq i64 %3496, %3355
  br i1 %3497, label %3498, label %3412, !llvm.loop !116

3498:                                             ; preds = %3412, %3354
  %3499 = phi <8 x i64> [ zeroinitializer, %3354 ], [ %3492, %3412 ]
  %3500 = phi <8 x i64> [ zeroinitializer, %3354 ], [ %3443, %3412 ]
  %3501 = phi <8 x double> [ splat (double 1.000000e+00), %3354 ], [ %3495, %3412 ]
  %3502 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3499)
  %3503 = icmp eq i64 %3502, 0
  %3504 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3500)
  %3505 = icmp eq i64 %3504, 0
  %3506 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %3501)
  %3507 = insertelement <8 x double> poison, double %3506, i64 0
  %3508 = shufflevector <8 x double> %3507, <8 x double> poison, <8 x i32> zeroinitializer
  %3509 = select i1 %3503, <8 x i64> zeroinitializer, <8 x i64> %3400
  %3510 = fcmp ogt <8 x double> %3387, %3374
  %3511 = select <8 x i1> %3510, <8 x double> %3387, <8 x double> %3374
  %3512 = select i1 %3505, <8 x i1> splat (i1 true), <8 x i1> zeroinitializer
  %3513 = select <8 x i1> %3512, <8 x double> %3511, <8 x double> zeroinitializer
  %3514 = icmp eq <8 x i64> %3509, zeroinitializer
  %3515 = select <8 x i1> %3514, <8 x double> %3387, <8 x double> %3513
  %3516 = fcmp ogt <8 x double> %3508, splat (double 5.000000e-02)
  %3517 = select <8 x i1> %3516, <8 x double> %3508, <8 x double> splat (double 5.000000e-02)
  %3518 = fcmp olt <8 x double> %3517, splat (double 0x3FEE666666666666)
  %3519 = select <8 x i1> %3518, <8 x double> %3517, <8 x double> splat (double 0x3FEE666666666666)
  %3520 = fmul <8 x double> %3374, %3519
  %3521 = fcmp ogt <8 x double> %3520, splat (double 0x3EB0C6F7A0B5ED8D)
  %3522 = select <8 x i1> %3521, <8 x double> %3520, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3523 = select <8 x i1> %3514, <8 x double> %3396, <8 x double> %3522
  %3524 = fadd <8 x double> %3399, splat (double 1.000000e+00)
  %3525 = select <8 x i1> %3514, <8 x double> %3399, <8 x double> %3524
  %3526 = xor <8 x i64> %3509, %3400
  %3527 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %3528 = fmul <8 x double> %3527, splat (double 5.000000e-01)
  %3529 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %3530 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %3531 = fneg <8 x double> %3528
  %3532 = icmp eq <8 x i64> %3530, zeroinitializer
  %3533 = select <8 x i1> %3532, <8 x double> %3531, <8 x double> %3528
  %3534 = fadd <8 x double> %3529, %3533
  %3535 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %3536 = fsub <8 x double> %3535, %3534
  %3537 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %3538 = fsub <8 x double> %3537, %3534
  %3539 = fneg <8 x double> %3536
  %3540 = select <8 x i1> %3532, <8 x double> %3539, <8 x double> %3536
  %3541 = fneg <8 x double> %3538
  %3542 = select <8 x i1> %3532, <8 x double> %3541, <8 x double> %3538
  %3543 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %3544 = fcmp oeq <8 x double> %3543, zeroinitializer
  %3545 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %3546 = fcmp oeq <8 x double> %3545, zeroinitializer
  %3547 = and <8 x i1> %3544, %3546
  %3548 = fcmp olt <8 x double> %3540, splat (double -4.000000e-03)
  %3549 = and <8 x i1> %3547, %3548
  %3550 = fcmp ogt <8 x double> %3542, splat (double 4.000000e-03)
  %3551 = and <8 x i1> %3550, %3549
  %3552 = and <8 x i1> %3375, %3551
  %3553 = fsub <8 x double> %3540, %3542
  %3554 = fdiv <8 x double> %3540, %3553
  %3555 = select <8 x i1> %3552, <8 x i64> %3526, <8 x i64> zeroinitializer
  %3556 = fcmp ogt <8 x double> %3515, %3374
  %3557 = icmp eq <8 x i64> %3555, zeroinitializer
  %3558 = select <8 x i1> %3557, <8 x i1> splat (i1 true), <8 x i1> %3556
  %3559 = select <8 x i1> %3558, <8 x double> %3515, <8 x double> %3374
  store <8 x double> %3559, ptr %159, align 64, !tbaa !26
  %3560 = fcmp ogt <8 x double> %3554, splat (double 5.000000e-02)
  %3561 = select <8 x i1> %3560, <8 x double> %3554, <8 x double> splat (double 5.000000e-02)
  %3562 = fcmp olt <8 x double> %3561, splat (double 0x3FEE666666666666)
  %3563 = select <8 x i1> %3562, <8 x double> %3561, <8 x double> splat (double 0x3FEE666666666666)
  %3564 = fmul <8 x double> %3374, %3563
  %3565 = fcmp ogt <8 x double> %3564, splat (double 0x3EB0C6F7A0B5ED8D)
  %3566 = select <8 x i1> %3565, <8 x double> %3564, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3567 = select <8 x i1> %3557, <8 x double> %3523, <8 x double> %3566
  store <8 x double> %3567, ptr %139, align 64, !tbaa !26
  %3568 = fadd <8 x double> %3525, splat (double 1.000000e+00)
  %3569 = select <8 x i1> %3557, <8 x double> %3525, <8 x double> %3568
  store <8 x double> %3569, ptr %124, align 64, !tbaa !26
  %3570 = xor <8 x i64> %3555, %3526
  %3571 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %3572 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %3573 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %3574 = fsub <8 x double> %3572, %3573
  %3575 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %3576 = fcmp une <8 x double> %3575, splat (double 1.000000e+00)
  %3577 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %3578 = fsub <8 x double> %3535, %3577
  %3579 = select <8 x i1> %3576, <8 x double> splat (double -1.000000e+00), <8 x double> %3578
  %3580 = fcmp une <8 x double> %3575, splat (double 2.000000e+00)
  %3581 = fsub <8 x double> %3571, %3577
  %3582 = select <8 x i1> %3580, <8 x double> %3579, <8 x double> %3581
  %3583 = fcmp une <8 x double> %3575, splat (double 3.000000e+00)
  %3584 = fsub <8 x double> %3574, %3577
  %3585 = select <8 x i1> %3583, <8 x double> %3582, <8 x double> %3584
  %3586 = fcmp une <8 x double> %3575, splat (double 4.000000e+00)
  %3587 = fsub <8 x double> %3577, %3574
  %3588 = select <8 x i1> %3586, <8 x double> %3585, <8 x double> %3587
  br i1 %3401, label %3589, label %3621

3589:                                             ; preds = %3498
  %3590 = load ptr, ptr %129, align 8, !tbaa !28
  %3591 = and i64 %3355, 1
  %3592 = icmp eq i64 %3355, 1
  br i1 %3592, label %3611, label %3593

3593:                                             ; preds = %3589
  %3594 = and i64 %3355, 9223372036854775806
  br label %3595

3595:                                             ; preds = %3595, %3593
  %3596 = phi i64 [ 0, %3593 ], [ %3608, %3595 ]
  %3597 = phi <8 x double> [ splat (double 1.000000e+09), %3593 ], [ %3607, %3595 ]
  %3598 = phi i64 [ 0, %3593 ], [ %3609, %3595 ]
  %3599 = getelementptr inbounds nuw %struct.Piece, ptr %3590, i64 %3596, i32 35
  %3600 = load <8 x double>, ptr %3599, align 64, !tbaa !26
  %3601 = fcmp olt <8 x double> %3597, %3600
  %3602 = select <8 x i1> %3601, <8 x double> %3597, <8 x double> %3600
  %3603 = or disjoint i64 %3596, 1
  %3604 = getelementptr inbounds nuw %struct.Piece, ptr %3590, i64 %3603, i32 35
  %3605 = load <8 x double>, ptr %3604, align 64, !tbaa !26
  %3606 = fcmp olt <8 x double> %3602, %3605
  %3607 = select <8 x i1> %3606, <8 x double> %3602, <8 x double> %3605
  %3608 = add nuw nsw i64 %3596, 2
  %3609 = add i64 %3598, 2
  %3610 = icmp eq i64 %3609, %3594
  br i1 %3610, label %3611, label %3595, !llvm.loop !117

3611:                                             ; preds = %3595, %3589
  %3612 = phi <8 x double> [ poison, %3589 ], [ %3607, %3595 ]
  %3613 = phi i64 [ 0, %3589 ], [ %3608, %3595 ]
  %3614 = phi <8 x double> [ splat (double 1.000000e+09), %3589 ], [ %3607, %3595 ]
  %3615 = icmp eq i64 %3591, 0
  br i1 %3615, label %3621, label %3616

3616:                                             ; preds = %3611
  %3617 = getelementptr inbounds nuw %struct.Piece, ptr %3590, i64 %3613, i32 35
  %3618 = load <8 x double>, ptr %3617, align 64, !tbaa !26
  %3619 = fcmp olt <8 x double> %3614, %3618
  %3620 = select <8 x i1> %3619, <8 x double> %3614, <8 x double> %3618
  br label %3621

3621:                                             ; preds = %3616, %3611, %3498
  %3622 = phi <8 x double> [ splat (double 1.000000e+09), %3498 ], [ %3612, %3611 ], [ %3620, %3616 ]
  %3623 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %3622)
  %3624 = insertelement <8 x double> poison, double %3623, i64 0
  %3625 = shufflevector <8 x double> %3624, <8 x double> poison, <8 x i32> zeroinitializer
  %3626 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %3627 = fsub <8 x double> %3626, %3573
  %3628 = fsub <8 x double> %3537, %3577
  %3629 = select <8 x i1> %3576, <8 x double> splat (double -1.000000e+00), <8 x double> %3628
  %3630 = fsub <8 x double> %3625, %3577
  %3631 = select <8 x i1> %3580, <8 x double> %3629, <8 x double> %3630
  %3632 = fsub <8 x double> %3627, %3577
  %3633 = select <8 x i1> %3583, <8 x double> %3631, <8 x double> %3632
  %3634 = fsub <8 x double> %3577, %3627
  %3635 = select <8 x i1> %3586, <8 x double> %3633, <8 x double> %3634
  %3636 = fcmp une <8 x double> %3575, zeroinitializer
  %3637 = fcmp oge <8 x double> %3374, splat (double 5.000000e-02)
  %3638 = and <8 x i1> %3637, %3636
  %3639 = fcmp olt <8 x double> %3588, zeroinitializer
  %3640 = and <8 x i1> %3638, %3639
  %3641 = fsub <8 x double> %3635, %3588
  %3642 = fmul <8 x double> %3641, splat (double 2.000000e-02)
  %3643 = fcmp ogt <8 x double> %3635, %3642
  %3644 = and <8 x i1> %3640, %3643
  %3645 = fsub <8 x double> %3588, %3635
  %3646 = fdiv <8 x double> %3588, %3645
  %3647 = fcmp olt <8 x double> %3646, splat (double 0x3FEE666666666666)
  %3648 = and <8 x i1> %3647, %3644
  %3649 = select <8 x i1> %3648, <8 x i64> %3570, <8 x i64> zeroinitializer
  %3650 = fcmp ogt <8 x double> %3559, %3374
  %3651 = icmp eq <8 x i64> %3649, zeroinitializer
  %3652 = select <8 x i1> %3651, <8 x i1> splat (i1 true), <8 x i1> %3650
  %3653 = select <8 x i1> %3652, <8 x double> %3559, <8 x double> %3374
  store <8 x double> %3653, ptr %159, align 64, !tbaa !26
  %3654 = fcmp ogt <8 x double> %3646, splat (double 5.000000e-02)
  %3655 = select <8 x i1> %3654, <8 x double> %3646, <8 x double> splat (double 5.000000e-02)
  %3656 = fcmp olt <8 x double> %3655, splat (double 0x3FEE666666666666)
  %3657 = select <8 x i1> %3656, <8 x double> %3655, <8 x double> splat (double 0x3FEE666666666666)
  %3658 = fmul <8 x double> %3374, %3657
  %3659 = fcmp ogt <8 x double> %3658, splat (double 0x3EB0C6F7A0B5ED8D)
  %3660 = select <8 x i1> %3659, <8 x double> %3658, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3661 = select <8 x i1> %3651, <8 x double> %3567, <8 x double> %3660
  store <8 x double> %3661, ptr %139, align 64, !tbaa !26
  %3662 = fadd <8 x double> %3569, splat (double 1.000000e+00)
  %3663 = select <8 x i1> %3651, <8 x double> %3569, <8 x double> %3662
  store <8 x double> %3663, ptr %124, align 64, !tbaa !26
  %3664 = xor <8 x i64> %3649, %3570
  %3665 = or <8 x i64> %3664, %3361
  %3666 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3665)
  %3667 = icmp eq i64 %3666, 0
  br i1 %3667, label %515, label %3724

3668:                                             ; preds = %3352, %3716
  %3669 = phi i64 [ 0, %3352 ], [ %3721, %3716 ]
  %3670 = load ptr, ptr %129, align 8, !tbaa !28
  %3671 = getelementptr inbounds nuw %struct.Piece, ptr %3670, i64 %3669
  %3672 = getelementptr inbounds nuw i8, ptr %3671, i64 7560
  %3673 = load ptr, ptr %3672, align 8, !tbaa !56
  %3674 = load <8 x double>, ptr %3673, align 64, !tbaa !26
  %3675 = getelementptr inbounds nuw i8, ptr %3671, i64 1344
  %3676 = load <8 x double>, ptr %3675, align 64, !tbaa !26
  %3677 = getelementptr inbounds nuw i8, ptr %3673, i64 64
  %3678 = load <8 x double>, ptr %3677, align 64, !tbaa !26
  %3679 = fsub <8 x double> %3678, %3674
  %3680 = fneg <8 x double> %3676
  %3681 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3680, <8 x double> %3679, <8 x double> %3674)
  %3682 = getelementptr inbounds nuw i8, ptr %3671, i64 7552
  %3683 = load i64, ptr %3682, align 64, !tbaa !31
  %3684 = icmp eq i64 %3683, 0
  br i1 %3684, label %3716, label %3685

3685:                                             ; preds = %3668
  %3686 = getelementptr <8 x double>, ptr %3673, i64 %3683
  %3687 = getelementptr i8, ptr %3686, i64 -64
  %3688 = load <8 x double>, ptr %3687, align 64, !tbaa !26
  %3689 = load <8 x double>, ptr %3686, align 64, !tbaa !26
  %3690 = getelementptr inbounds nuw i8, ptr %3671, i64 2880
  %3691 = load <8 x double>, ptr %3690, align 64, !tbaa !26
  %3692 = getelementptr inbounds nuw i8, ptr %3671, i64 2944
  %3693 = load <8 x double>, ptr %3692, align 64, !tbaa !26
  %3694 = getelementptr inbounds nuw i8, ptr %3671, i64 64
  %3695 = load <8 x double>, ptr %3694, align 64, !tbaa !26
  %3696 = fsub <8 x double> %3693, %3695
  %3697 = fmul <8 x double> %3691, %3696
  %3698 = getelementptr inbounds nuw i8, ptr %3671, i64 576
  %3699 = load <8 x double>, ptr %3698, align 64, !tbaa !26
  %3700 = getelementptr inbounds nuw i8, ptr %3671, i64 2816
  %3701 = load <8 x double>, ptr %3700, align 64, !tbaa !26
  %3702 = fdiv <8 x double> %3699, %3701
  %3703 = getelementptr inbounds nuw i8, ptr %3671, i64 192
  %3704 = load <8 x double>, ptr %3703, align 64, !tbaa !26
  %3705 = getelementptr inbounds nuw i8, ptr %3671, i64 256
  %3706 = load <8 x double>, ptr %3705, align 64, !tbaa !26
  %3707 = getelementptr inbounds nuw i8, ptr %3671, i64 320
  %3708 = load <8 x double>, ptr %3707, align 64, !tbaa !26
  %3709 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3689, <8 x double> %3708, <8 x double> %3706)
  %3710 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3689, <8 x double> %3709, <8 x double> %3704)
  %3711 = fdiv <8 x double> %3710, %3697
  %3712 = fmul <8 x double> %3689, %3711
  %3713 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3702, <8 x double> %3688, <8 x double> %3712)
  %3714 = fadd <8 x double> %3702, %3711
  %3715 = fdiv <8 x double> %3713, %3714
  br label %3716

3716:                                             ; preds = %3668, %3685
  %3717 = phi <8 x double> [ %3715, %3685 ], [ %3681, %3668 ]
  %3718 = getelementptr inbounds nuw i8, ptr %3671, i64 7232
  %3719 = load <8 x double>, ptr %3718, align 64, !tbaa !26
  %3720 = select <8 x i1> %3353, <8 x double> %3719, <8 x double> %3717
  store <8 x double> %3720, ptr %3718, align 64, !tbaa !26
  %3721 = add nuw nsw i64 %3669, 1
  %3722 = load i64, ptr %156, align 8, !tbaa !20
  %3723 = icmp slt i64 %3721, %3722
  br i1 %3723, label %3668, label %3354, !llvm.loop !118

3724:                                             ; preds = %3621
  %3725 = icmp eq <8 x i64> %3665, zeroinitializer
  %3726 = select <8 x i1> %3725, <8 x double> %3368, <8 x double> %3367
  store <8 x double> %3726, ptr %210, align 64, !tbaa !26
  %3727 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %3728 = select <8 x i1> %3725, <8 x double> %3727, <8 x double> %3535
  store <8 x double> %3728, ptr %150, align 64, !tbaa !26
  %3729 = select <8 x i1> %3725, <8 x double> %3535, <8 x double> %3537
  store <8 x double> %3729, ptr %144, align 64, !tbaa !26
  %3730 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %3731 = select <8 x i1> %3725, <8 x double> %3730, <8 x double> %3572
  store <8 x double> %3731, ptr %255, align 64, !tbaa !26
  %3732 = select <8 x i1> %3725, <8 x double> %3572, <8 x double> %3626
  store <8 x double> %3732, ptr %256, align 64, !tbaa !26
  %3733 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %3734 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %3735 = select <8 x i1> %3725, <8 x double> %3734, <8 x double> %3733
  store <8 x double> %3735, ptr %257, align 64, !tbaa !26
  %3736 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %3737 = select <8 x i1> %3725, <8 x double> %3733, <8 x double> %3736
  store <8 x double> %3737, ptr %258, align 64, !tbaa !26
  %3738 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %3739 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %3740 = select <8 x i1> %3725, <8 x double> %3739, <8 x double> %3738
  store <8 x double> %3740, ptr %260, align 64, !tbaa !26
  %3741 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %3742 = select <8 x i1> %3725, <8 x double> %3738, <8 x double> %3741
  store <8 x double> %3742, ptr %261, align 64, !tbaa !26
  %3743 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %3744 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %3745 = select <8 x i1> %3725, <8 x double> %3744, <8 x double> %3743
  store <8 x double> %3745, ptr %263, align 64, !tbaa !26
  %3746 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %3747 = select <8 x i1> %3725, <8 x double> %3743, <8 x double> %3746
  store <8 x double> %3747, ptr %264, align 64, !tbaa !26
  %3748 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %3749 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %3750 = select <8 x i1> %3725, <8 x double> %3749, <8 x double> %3748
  store <8 x double> %3750, ptr %266, align 64, !tbaa !26
  %3751 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %3752 = select <8 x i1> %3725, <8 x double> %3748, <8 x double> %3751
  store <8 x double> %3752, ptr %267, align 64, !tbaa !26
  %3753 = xor <8 x i64> %3665, splat (i64 -1)
  br i1 %3401, label %3754, label %4125

3754:                                             ; preds = %3724, %4090
  %3755 = phi i64 [ %4102, %4090 ], [ 0, %3724 ]
  %3756 = load ptr, ptr %129, align 8, !tbaa !28
  %3757 = getelementptr inbounds nuw %struct.Piece, ptr %3756, i64 %3755
  %3758 = getelementptr inbounds nuw i8, ptr %3757, i64 1664
  %3759 = load <8 x double>, ptr %3758, align 64, !tbaa !26
  %3760 = fcmp ogt <8 x double> %3759, zeroinitializer
  %3761 = bitcast <8 x i1> %3760 to i8
  %3762 = icmp eq i8 %3761, 0
  %3763 = load i64, ptr %119, align 16, !tbaa !21
  br i1 %3762, label %4021, label %3764

3764:                                             ; preds = %3754
  %3765 = add i64 %3763, -1
  %3766 = getelementptr inbounds nuw i8, ptr %3757, i64 4416
  %3767 = load <8 x double>, ptr %3766, align 64, !tbaa !26
  %3768 = getelementptr inbounds nuw i8, ptr %3757, i64 3648
  %3769 = load <8 x double>, ptr %3768, align 64, !tbaa !26
  %3770 = getelementptr inbounds nuw i8, ptr %3757, i64 7552
  %3771 = load i64, ptr %3770, align 64, !tbaa !31
  %3772 = icmp sgt i64 %3763, %3771
  br i1 %3772, label %3781, label %3773

3773:                                             ; preds = %3764
  %3774 = getelementptr inbounds nuw i8, ptr %3757, i64 7648
  %3775 = load ptr, ptr %3774, align 32, !tbaa !70
  %3776 = getelementptr inbounds <8 x double>, ptr %3775, i64 %3765
  %3777 = load <8 x double>, ptr %3776, align 64, !tbaa !26
  %3778 = getelementptr inbounds nuw i8, ptr %3757, i64 1536
  %3779 = load <8 x double>, ptr %3778, align 64, !tbaa !26
  %3780 = fmul <8 x double> %3777, %3779
  br label %3790

3781:                                             ; preds = %3764
  %3782 = getelementptr inbounds nuw i8, ptr %3757, i64 1536
  %3783 = load <8 x double>, ptr %3782, align 64, !tbaa !26
  %3784 = getelementptr inbounds nuw i8, ptr %3757, i64 7648
  %3785 = load ptr, ptr %3784, align 32, !tbaa !70
  %3786 = getelementptr inbounds <8 x double>, ptr %3785, i64 %3765
  %3787 = load <8 x double>, ptr %3786, align 64, !tbaa !26
  %3788 = fsub <8 x double> %3767, %3783
  %3789 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3787, <8 x double> %3788, <8 x double> %3783)
  br label %3790

3790:                                             ; preds = %3781, %3773
  %3791 = phi <8 x double> [ %3779, %3773 ], [ %3783, %3781 ]
  %3792 = phi <8 x double> [ %3780, %3773 ], [ %3789, %3781 ]
  %3793 = getelementptr inbounds nuw i8, ptr %3757, i64 3008
  %3794 = load <8 x double>, ptr %3793, align 64, !tbaa !26
  %3795 = fcmp ole <8 x double> %3792, %3794
  %3796 = getelementptr inbounds nuw i8, ptr %3757, i64 7296
  %3797 = load <8 x double>, ptr %3796, align 64, !tbaa !26
  %3798 = fcmp oeq <8 x double> %3797, zeroinitializer
  %3799 = select <8 x i1> %3798, <8 x i1> %3795, <8 x i1> zeroinitializer
  %3800 = select <8 x i1> %3799, <8 x i64> %3665, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %3801 = xor <8 x i64> %3800, %3665
  store <8 x i64> %3801, ptr %12, align 64, !tbaa !26
  %3802 = fsub <8 x double> %3767, %3769
  %3803 = getelementptr inbounds nuw i8, ptr %3757, i64 1536
  %3804 = fsub <8 x double> %3769, %3791
  %3805 = fdiv <8 x double> %3802, %3804
  %3806 = getelementptr inbounds nuw i8, ptr %3757, i64 7592
  %3807 = load ptr, ptr %3806, align 8, !tbaa !63
  %3808 = getelementptr inbounds <8 x double>, ptr %3807, i64 %3771
  %3809 = load <8 x double>, ptr %3808, align 64, !tbaa !26
  %3810 = getelementptr inbounds nuw i8, ptr %3757, i64 7600
  %3811 = load ptr, ptr %3810, align 16, !tbaa !45
  %3812 = getelementptr inbounds <8 x double>, ptr %3811, i64 %3771
  %3813 = load <8 x double>, ptr %3812, align 64, !tbaa !26
  %3814 = icmp eq <8 x i64> %3800, zeroinitializer
  %3815 = select <8 x i1> %3814, <8 x double> %3813, <8 x double> %3809
  store <8 x double> %3815, ptr %3812, align 64, !tbaa !26
  %3816 = load i64, ptr %3770, align 64, !tbaa !31
  %3817 = add nsw i64 %3816, 1
  %3818 = icmp slt i64 %3817, %3765
  br i1 %3818, label %3819, label %3823

3819:                                             ; preds = %3790
  %3820 = getelementptr inbounds nuw i8, ptr %3757, i64 7664
  br label %3863

3821:                                             ; preds = %3863
  %3822 = load i64, ptr %3770, align 64, !tbaa !31
  br label %3823

3823:                                             ; preds = %3821, %3790
  %3824 = phi i64 [ %3816, %3790 ], [ %3822, %3821 ]
  %3825 = phi <8 x double> [ %3809, %3790 ], [ %3868, %3821 ]
  %3826 = icmp sgt i64 %3763, %3824
  br i1 %3826, label %3834, label %3827

3827:                                             ; preds = %3823
  %3828 = getelementptr inbounds nuw i8, ptr %3757, i64 7648
  %3829 = load ptr, ptr %3828, align 32, !tbaa !70
  %3830 = getelementptr inbounds <8 x double>, ptr %3829, i64 %3765
  %3831 = load <8 x double>, ptr %3830, align 64, !tbaa !26
  %3832 = load <8 x double>, ptr %3803, align 64, !tbaa !26
  %3833 = fmul <8 x double> %3831, %3832
  br label %3842

3834:                                             ; preds = %3823
  %3835 = load <8 x double>, ptr %3803, align 64, !tbaa !26
  %3836 = getelementptr inbounds nuw i8, ptr %3757, i64 7648
  %3837 = load ptr, ptr %3836, align 32, !tbaa !70
  %3838 = getelementptr inbounds <8 x double>, ptr %3837, i64 %3765
  %3839 = load <8 x double>, ptr %3838, align 64, !tbaa !26
  %3840 = fsub <8 x double> %3769, %3835
  %3841 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3839, <8 x double> %3840, <8 x double> %3835)
  br label %3842

3842:                                             ; preds = %3834, %3827
  %3843 = phi <8 x double> [ %3833, %3827 ], [ %3841, %3834 ]
  %3844 = load ptr, ptr %3806, align 8, !tbaa !63
  %3845 = getelementptr inbounds <8 x double>, ptr %3844, i64 %3765
  %3846 = load <8 x double>, ptr %3845, align 64, !tbaa !26
  %3847 = load ptr, ptr %3810, align 16, !tbaa !45
  %3848 = getelementptr inbounds <8 x double>, ptr %3847, i64 %3765
  %3849 = fsub <8 x double> %3825, %3846
  %3850 = fsub <8 x double> %3792, %3843
  %3851 = load <8 x double>, ptr %3793, align 64, !tbaa !26
  %3852 = fsub <8 x double> %3851, %3843
  %3853 = fdiv <8 x double> %3850, %3852
  %3854 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3849, <8 x double> %3853, <8 x double> %3846)
  %3855 = load <8 x double>, ptr %3848, align 64, !tbaa !26
  %3856 = select <8 x i1> %3814, <8 x double> %3855, <8 x double> %3854
  store <8 x double> %3856, ptr %3848, align 64, !tbaa !26
  %3857 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3801)
  %3858 = icmp eq i64 %3857, 0
  br i1 %3858, label %4019, label %3859

3859:                                             ; preds = %3842
  %3860 = getelementptr inbounds nuw i8, ptr %3757, i64 7648
  %3861 = getelementptr inbounds nuw i8, ptr %3757, i64 3136
  %3862 = getelementptr inbounds nuw i8, ptr %3757, i64 832
  br label %3881

3863:                                             ; preds = %3819, %3863
  %3864 = phi i64 [ %3817, %3819 ], [ %3879, %3863 ]
  %3865 = phi <8 x double> [ %3809, %3819 ], [ %3868, %3863 ]
  %3866 = load ptr, ptr %3806, align 8, !tbaa !63
  %3867 = getelementptr inbounds <8 x double>, ptr %3866, i64 %3864
  %3868 = load <8 x double>, ptr %3867, align 64, !tbaa !26
  %3869 = load ptr, ptr %3810, align 16, !tbaa !45
  %3870 = getelementptr inbounds <8 x double>, ptr %3869, i64 %3864
  %3871 = fsub <8 x double> %3865, %3868
  %3872 = load ptr, ptr %3820, align 16, !tbaa !119
  %3873 = getelementptr inbounds <8 x double>, ptr %3872, i64 %3864
  %3874 = load <8 x double>, ptr %3873, align 64, !tbaa !26
  %3875 = fmul <8 x double> %3805, %3874
  %3876 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3871, <8 x double> %3875, <8 x double> %3868)
  %3877 = load <8 x double>, ptr %3870, align 64, !tbaa !26
  %3878 = select <8 x i1> %3814, <8 x double> %3877, <8 x double> %3876
  store <8 x double> %3878, ptr %3870, align 64, !tbaa !26
  %3879 = add nsw i64 %3864, 1
  %3880 = icmp eq i64 %3879, %3765
  br i1 %3880, label %3821, label %3863, !llvm.loop !120

3881:                                             ; preds = %3859, %4016
  %3882 = phi i64 [ 0, %3859 ], [ %4017, %4016 ]
  %3883 = getelementptr inbounds nuw i64, ptr %12, i64 %3882
  %3884 = load i64, ptr %3883, align 8, !tbaa !30
  %3885 = icmp eq i64 %3884, 0
  br i1 %3885, label %4016, label %3886

3886:                                             ; preds = %3881
  %3887 = load i64, ptr %119, align 16, !tbaa !21
  %3888 = load i64, ptr %3770, align 64, !tbaa !31
  %3889 = getelementptr inbounds nuw double, ptr %3803, i64 %3882
  %3890 = load double, ptr %3889, align 8, !tbaa !40
  %3891 = getelementptr inbounds nuw double, ptr %3793, i64 %3882
  %3892 = load double, ptr %3891, align 8, !tbaa !40
  %3893 = add nsw i64 %3887, -1
  %3894 = icmp sgt i64 %3887, %3888
  br i1 %3894, label %3895, label %4016

3895:                                             ; preds = %3886
  %3896 = getelementptr inbounds nuw double, ptr %3768, i64 %3882
  %3897 = load double, ptr %3896, align 8, !tbaa !40
  %3898 = getelementptr inbounds nuw double, ptr %3766, i64 %3882
  %3899 = load double, ptr %3898, align 8, !tbaa !40
  %3900 = load ptr, ptr %3860, align 32
  %3901 = getelementptr i8, ptr %3900, i64 64
  %3902 = getelementptr double, ptr %3901, i64 %3882
  %3903 = fsub double %3897, %3890
  %3904 = getelementptr double, ptr %3900, i64 %3882
  %3905 = fsub double %3899, %3890
  %3906 = load ptr, ptr %3806, align 8, !tbaa !63
  %3907 = getelementptr double, ptr %3906, i64 %3882
  %3908 = load ptr, ptr %3810, align 16, !tbaa !45
  %3909 = getelementptr double, ptr %3908, i64 %3882
  %3910 = getelementptr <8 x double>, ptr %3904, i64 %3893
  br label %3938

3911:                                             ; preds = %3984
  %3912 = getelementptr inbounds nuw double, ptr %3796, i64 %3882
  %3913 = load double, ptr %3912, align 8, !tbaa !40
  %3914 = fcmp ogt double %3913, 0.000000e+00
  %3915 = fcmp ogt double %3995, 0.000000e+00
  %3916 = select i1 %3914, i1 %3915, i1 false
  br i1 %3916, label %3917, label %4016

3917:                                             ; preds = %3911
  %3918 = getelementptr inbounds nuw double, ptr %3861, i64 %3882
  %3919 = getelementptr inbounds nuw double, ptr %3862, i64 %3882
  %3920 = sub i64 %3887, %3888
  %3921 = add i64 %3888, 1
  %3922 = and i64 %3920, 1
  %3923 = icmp eq i64 %3922, 0
  br i1 %3923, label %3933, label %3924

3924:                                             ; preds = %3917
  %3925 = load double, ptr %3918, align 8, !tbaa !40
  %3926 = load double, ptr %3919, align 8, !tbaa !40
  %3927 = fmul double %3995, %3926
  %3928 = fdiv double %3925, %3927
  %3929 = getelementptr <8 x double>, ptr %3909, i64 %3888
  %3930 = load double, ptr %3929, align 8, !tbaa !40
  %3931 = fmul double %3930, %3928
  store double %3931, ptr %3929, align 8, !tbaa !40
  %3932 = add nsw i64 %3888, 1
  br label %3933

3933:                                             ; preds = %3924, %3917
  %3934 = phi i64 [ %3888, %3917 ], [ %3932, %3924 ]
  %3935 = icmp eq i64 %3887, %3921
  br i1 %3935, label %4016, label %3936

3936:                                             ; preds = %3933
  %3937 = getelementptr i8, ptr %3909, i64 64
  br label %3998

3938:                                             ; preds = %3984, %3895
  %3939 = phi double [ 0.000000e+00, %3895 ], [ %3995, %3984 ]
  %3940 = phi i64 [ %3893, %3895 ], [ %3996, %3984 ]
  %3941 = icmp eq i64 %3940, %3893
  br i1 %3941, label %3942, label %3945

3942:                                             ; preds = %3938
  %3943 = load double, ptr %3910, align 8, !tbaa !40
  %3944 = tail call noundef double @llvm.fmuladd.f64(double %3943, double %3903, double %3890)
  br label %3956

3945:                                             ; preds = %3938
  %3946 = getelementptr <8 x double>, ptr %3902, i64 %3940
  %3947 = load double, ptr %3946, align 8, !tbaa !40
  %3948 = tail call noundef double @llvm.fmuladd.f64(double %3947, double %3903, double %3890)
  %3949 = getelementptr <8 x double>, ptr %3904, i64 %3940
  %3950 = load double, ptr %3949, align 8, !tbaa !40
  %3951 = tail call noundef double @llvm.fmuladd.f64(double %3950, double %3903, double %3890)
  %3952 = tail call noundef double @llvm.fmuladd.f64(double %3947, double %3905, double %3890)
  %3953 = fcmp ult double %3952, %3948
  br i1 %3953, label %3954, label %3956

3954:                                             ; preds = %3945
  %3955 = add nsw i64 %3940, 1
  br label %3956

3956:                                             ; preds = %3954, %3945, %3942
  %3957 = phi double [ %3951, %3954 ], [ %3951, %3945 ], [ %3944, %3942 ]
  %3958 = phi double [ %3948, %3954 ], [ %3948, %3945 ], [ %3892, %3942 ]
  %3959 = phi i64 [ %3955, %3954 ], [ %3940, %3945 ], [ %3893, %3942 ]
  %3960 = icmp sgt i64 %3959, %3888
  br i1 %3960, label %3961, label %3984

3961:                                             ; preds = %3956
  %3962 = load ptr, ptr %3806, align 8
  %3963 = getelementptr double, ptr %3962, i64 %3882
  br label %3964

3964:                                             ; preds = %3979, %3961
  %3965 = phi i64 [ %3959, %3961 ], [ %3982, %3979 ]
  %3966 = phi double [ 0.000000e+00, %3961 ], [ %3981, %3979 ]
  %3967 = phi double [ %3958, %3961 ], [ %3980, %3979 ]
  %3968 = getelementptr <8 x double>, ptr %3904, i64 %3965
  %3969 = load double, ptr %3968, align 8, !tbaa !40
  %3970 = tail call noundef double @llvm.fmuladd.f64(double %3969, double %3905, double %3890)
  %3971 = fcmp ogt double %3970, %3957
  br i1 %3971, label %3972, label %3984

3972:                                             ; preds = %3964
  %3973 = fcmp ogt double %3967, %3970
  br i1 %3973, label %3974, label %3979

3974:                                             ; preds = %3972
  %3975 = getelementptr <8 x double>, ptr %3963, i64 %3965
  %3976 = load double, ptr %3975, align 8, !tbaa !40
  %3977 = fsub double %3967, %3970
  %3978 = tail call double @llvm.fmuladd.f64(double %3976, double %3977, double %3966)
  br label %3979

3979:                                             ; preds = %3974, %3972
  %3980 = phi double [ %3970, %3974 ], [ %3967, %3972 ]
  %3981 = phi double [ %3978, %3974 ], [ %3966, %3972 ]
  %3982 = add nsw i64 %3965, -1
  %3983 = icmp sgt i64 %3982, %3888
  br i1 %3983, label %3964, label %3984, !llvm.loop !121

3984:                                             ; preds = %3979, %3964, %3956
  %3985 = phi double [ %3958, %3956 ], [ %3967, %3964 ], [ %3980, %3979 ]
  %3986 = phi double [ 0.000000e+00, %3956 ], [ %3966, %3964 ], [ %3981, %3979 ]
  %3987 = phi i64 [ %3959, %3956 ], [ %3965, %3964 ], [ %3888, %3979 ]
  %3988 = getelementptr <8 x double>, ptr %3907, i64 %3987
  %3989 = load double, ptr %3988, align 8, !tbaa !40
  %3990 = fsub double %3985, %3957
  %3991 = tail call double @llvm.fmuladd.f64(double %3989, double %3990, double %3986)
  %3992 = fsub double %3958, %3957
  %3993 = fdiv double %3991, %3992
  %3994 = getelementptr <8 x double>, ptr %3909, i64 %3940
  store double %3993, ptr %3994, align 8, !tbaa !40
  %3995 = fadd double %3939, %3991
  %3996 = add nsw i64 %3940, -1
  %3997 = icmp sgt i64 %3940, %3888
  br i1 %3997, label %3938, label %3911, !llvm.loop !122

3998:                                             ; preds = %3998, %3936
  %3999 = phi i64 [ %3934, %3936 ], [ %4014, %3998 ]
  %4000 = load double, ptr %3918, align 8, !tbaa !40
  %4001 = load double, ptr %3919, align 8, !tbaa !40
  %4002 = fmul double %3995, %4001
  %4003 = fdiv double %4000, %4002
  %4004 = getelementptr <8 x double>, ptr %3909, i64 %3999
  %4005 = load double, ptr %4004, align 8, !tbaa !40
  %4006 = fmul double %4005, %4003
  store double %4006, ptr %4004, align 8, !tbaa !40
  %4007 = load double, ptr %3918, align 8, !tbaa !40
  %4008 = load double, ptr %3919, align 8, !tbaa !40
  %4009 = fmul double %3995, %4008
  %4010 = fdiv double %4007, %4009
  %4011 = getelementptr <8 x double>, ptr %3937, i64 %3999
  %4012 = load double, ptr %4011, align 8, !tbaa !40
  %4013 = fmul double %4012, %4010
  store double %4013, ptr %4011, align 8, !tbaa !40
  %4014 = add nsw i64 %3999, 2
  %4015 = icmp eq i64 %4014, %3887
  br i1 %4015, label %4016, label %3998, !llvm.loop !123

4016:                                             ; preds = %3933, %3998, %3911, %3886, %3881
  %4017 = add nuw nsw i64 %3882, 1
  %4018 = icmp eq i64 %4017, 8
  br i1 %4018, label %4019, label %3881, !llvm.loop !124

4019:                                             ; preds = %4016, %3842
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  %4020 = load i64, ptr %119, align 16, !tbaa !21
  br label %4021

4021:                                             ; preds = %3754, %4019
  %4022 = phi i64 [ %3763, %3754 ], [ %4020, %4019 ]
  %4023 = getelementptr inbounds nuw i8, ptr %3757, i64 7560
  %4024 = load ptr, ptr %4023, align 8, !tbaa !56
  %4025 = getelementptr inbounds nuw i8, ptr %3757, i64 7568
  %4026 = load ptr, ptr %4025, align 16, !tbaa !44
  %4027 = getelementptr inbounds nuw i8, ptr %3757, i64 7576
  %4028 = load ptr, ptr %4027, align 8, !tbaa !55
  %4029 = icmp sgt i64 %4022, 0
  br i1 %4029, label %4040, label %4030

4030:                                             ; preds = %4040, %4021
  %4031 = load i64, ptr %120, align 8, !tbaa !22
  %4032 = icmp sgt i64 %4031, 0
  br i1 %4032, label %4033, label %4053

4033:                                             ; preds = %4030
  %4034 = getelementptr inbounds nuw i8, ptr %3757, i64 7744
  %4035 = getelementptr inbounds nuw i8, ptr %3757, i64 7736
  %4036 = getelementptr inbounds nuw i8, ptr %3757, i64 7728
  %4037 = getelementptr inbounds nuw i8, ptr %3757, i64 7696
  %4038 = getelementptr inbounds nuw i8, ptr %3757, i64 7688
  %4039 = getelementptr inbounds nuw i8, ptr %3757, i64 7680
  br label %4057

4040:                                             ; preds = %4021, %4040
  %4041 = phi i64 [ %4050, %4040 ], [ 0, %4021 ]
  %4042 = getelementptr inbounds nuw <8 x double>, ptr %4026, i64 %4041
  %4043 = load <8 x double>, ptr %4042, align 64, !tbaa !26
  %4044 = getelementptr inbounds nuw <8 x double>, ptr %4028, i64 %4041
  %4045 = load <8 x double>, ptr %4044, align 64, !tbaa !26
  %4046 = select <8 x i1> %3725, <8 x double> %4045, <8 x double> %4043
  store <8 x double> %4046, ptr %4044, align 64, !tbaa !26
  %4047 = getelementptr inbounds nuw <8 x double>, ptr %4024, i64 %4041
  %4048 = load <8 x double>, ptr %4047, align 64, !tbaa !26
  %4049 = select <8 x i1> %3725, <8 x double> %4043, <8 x double> %4048
  store <8 x double> %4049, ptr %4042, align 64, !tbaa !26
  %4050 = add nuw nsw i64 %4041, 1
  %4051 = load i64, ptr %119, align 16, !tbaa !21
  %4052 = icmp slt i64 %4050, %4051
  br i1 %4052, label %4040, label %4030, !llvm.loop !125

4053:                                             ; preds = %4057, %4030
  %4054 = getelementptr inbounds nuw i8, ptr %3757, i64 4480
  %4055 = getelementptr inbounds nuw i8, ptr %3757, i64 3712
  %4056 = getelementptr inbounds nuw i8, ptr %3757, i64 2944
  br label %4105

4057:                                             ; preds = %4033, %4057
  %4058 = phi i64 [ 0, %4033 ], [ %4087, %4057 ]
  %4059 = load ptr, ptr %4034, align 64, !tbaa !58
  %4060 = getelementptr inbounds nuw <8 x double>, ptr %4059, i64 %4058
  %4061 = load ptr, ptr %4035, align 8, !tbaa !47
  %4062 = getelementptr inbounds nuw <8 x double>, ptr %4061, i64 %4058
  %4063 = load <8 x double>, ptr %4062, align 64, !tbaa !26
  %4064 = load <8 x double>, ptr %4060, align 64, !tbaa !26
  %4065 = select <8 x i1> %3725, <8 x double> %4064, <8 x double> %4063
  store <8 x double> %4065, ptr %4060, align 64, !tbaa !26
  %4066 = load ptr, ptr %4035, align 8, !tbaa !47
  %4067 = getelementptr inbounds nuw <8 x double>, ptr %4066, i64 %4058
  %4068 = load ptr, ptr %4036, align 16, !tbaa !78
  %4069 = getelementptr inbounds nuw <8 x double>, ptr %4068, i64 %4058
  %4070 = load <8 x double>, ptr %4069, align 64, !tbaa !26
  %4071 = load <8 x double>, ptr %4067, align 64, !tbaa !26
  %4072 = select <8 x i1> %3725, <8 x double> %4071, <8 x double> %4070
  store <8 x double> %4072, ptr %4067, align 64, !tbaa !26
  %4073 = load ptr, ptr %4037, align 16, !tbaa !60
  %4074 = getelementptr inbounds nuw <8 x double>, ptr %4073, i64 %4058
  %4075 = load ptr, ptr %4038, align 8, !tbaa !48
  %4076 = getelementptr inbounds nuw <8 x double>, ptr %4075, i64 %4058
  %4077 = load <8 x double>, ptr %4076, align 64, !tbaa !26
  %4078 = load <8 x double>, ptr %4074, align 64, !tbaa !26
  %4079 = select <8 x i1> %3725, <8 x double> %4078, <8 x double> %4077
  store <8 x double> %4079, ptr %4074, align 64, !tbaa !26
  %4080 = load ptr, ptr %4038, align 8, !tbaa !48
  %4081 = getelementptr inbounds nuw <8 x double>, ptr %4080, i64 %4058
  %4082 = load ptr, ptr %4039, align 64, !tbaa !109
  %4083 = getelementptr inbounds nuw <8 x double>, ptr %4082, i64 %4058
  %4084 = load <8 x double>, ptr %4083, align 64, !tbaa !26
  %4085 = load <8 x double>, ptr %4081, align 64, !tbaa !26
  %4086 = select <8 x i1> %3725, <8 x double> %4085, <8 x double> %4084
  store <8 x double> %4086, ptr %4081, align 64, !tbaa !26
  %4087 = add nuw nsw i64 %4058, 1
  %4088 = load i64, ptr %120, align 8, !tbaa !22
  %4089 = icmp slt i64 %4087, %4088
  br i1 %4089, label %4057, label %4053, !llvm.loop !126

4090:                                             ; preds = %4105
  %4091 = getelementptr inbounds nuw i8, ptr %3757, i64 7424
  %4092 = getelementptr inbounds nuw i8, ptr %3757, i64 5696
  %4093 = load <8 x double>, ptr %4092, align 64, !tbaa !26
  %4094 = fcmp ogt <8 x double> %4093, zeroinitializer
  %4095 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %4096 = fcmp une <8 x double> %4095, splat (double 2.000000e+00)
  %4097 = and <8 x i1> %4094, %4096
  %4098 = select <8 x i1> %4097, <8 x i64> %3665, <8 x i64> zeroinitializer
  %4099 = load <8 x i64>, ptr %4091, align 64, !tbaa !26
  %4100 = and <8 x i64> %4099, %3753
  %4101 = or <8 x i64> %4098, %4100
  store <8 x i64> %4101, ptr %4091, align 64, !tbaa !26
  %4102 = add nuw nsw i64 %3755, 1
  %4103 = load i64, ptr %156, align 8, !tbaa !20
  %4104 = icmp slt i64 %4102, %4103
  br i1 %4104, label %3754, label %4117, !llvm.loop !127

4105:                                             ; preds = %4053, %4105
  %4106 = phi i64 [ 0, %4053 ], [ %4115, %4105 ]
  %4107 = getelementptr inbounds nuw [12 x <8 x double>], ptr %4054, i64 0, i64 %4106
  %4108 = getelementptr inbounds nuw [12 x <8 x double>], ptr %4055, i64 0, i64 %4106
  %4109 = load <8 x double>, ptr %4108, align 64, !tbaa !26
  %4110 = load <8 x double>, ptr %4107, align 64, !tbaa !26
  %4111 = select <8 x i1> %3725, <8 x double> %4110, <8 x double> %4109
  store <8 x double> %4111, ptr %4107, align 64, !tbaa !26
  %4112 = getelementptr inbounds nuw [12 x <8 x double>], ptr %4056, i64 0, i64 %4106
  %4113 = load <8 x double>, ptr %4112, align 64, !tbaa !26
  %4114 = select <8 x i1> %3725, <8 x double> %4109, <8 x double> %4113
  store <8 x double> %4114, ptr %4108, align 64, !tbaa !26
  %4115 = add nuw nsw i64 %4106, 1
  %4116 = icmp eq i64 %4115, 12
  br i1 %4116, label %4090, label %4105, !llvm.loop !128

4117:                                             ; preds = %4090
  %4118 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4119 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %4120 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %4121 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4122 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4123 = fdiv <8 x double> %4120, %3370
  %4124 = icmp sgt i64 %4103, 0
  br label %4125

4125:                                             ; preds = %3724, %4117
  %4126 = phi <8 x double> [ %4123, %4117 ], [ %3380, %3724 ]
  %4127 = phi i1 [ %4124, %4117 ], [ false, %3724 ]
  %4128 = phi <8 x double> [ %4122, %4117 ], [ %3359, %3724 ]
  %4129 = phi <8 x double> [ %4121, %4117 ], [ %3653, %3724 ]
  %4130 = phi <8 x double> [ %4119, %4117 ], [ %3376, %3724 ]
  %4131 = phi <8 x double> [ %4118, %4117 ], [ %3374, %3724 ]
  %4132 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4133 = fadd <8 x double> %4132, %4131
  %4134 = select <8 x i1> %3725, <8 x double> %4132, <8 x double> %4133
  store <8 x double> %4134, ptr %136, align 64, !tbaa !26
  %4135 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %4136 = select <8 x i1> %3725, <8 x double> %4135, <8 x double> %4131
  store <8 x double> %4136, ptr %151, align 64, !tbaa !26
  %4137 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %4138 = fadd <8 x double> %4137, splat (double 1.000000e+00)
  %4139 = select <8 x i1> %3725, <8 x double> %4137, <8 x double> %4138
  store <8 x double> %4139, ptr %123, align 64, !tbaa !26
  %4140 = load <8 x double>, ptr %125, align 64, !tbaa !26
  %4141 = fcmp olt <8 x double> %4140, %4131
  %4142 = select <8 x i1> %3725, <8 x i1> splat (i1 true), <8 x i1> %4141
  %4143 = select <8 x i1> %4142, <8 x double> %4140, <8 x double> %4131
  store <8 x double> %4143, ptr %125, align 64, !tbaa !26
  %4144 = fcmp une <8 x double> %4130, zeroinitializer
  %4145 = fcmp ueq <8 x double> %3369, zeroinitializer
  %4146 = or <8 x i1> %4145, %4144
  %4147 = fcmp olt <8 x double> %4126, splat (double 1.800000e+00)
  %4148 = select <8 x i1> %4147, <8 x double> %4126, <8 x double> splat (double 1.800000e+00)
  %4149 = select <8 x i1> %4146, <8 x double> splat (double 1.800000e+00), <8 x double> %4148
  %4150 = fcmp ogt <8 x double> %4149, splat (double 2.000000e-01)
  %4151 = select <8 x i1> %4150, <8 x double> %4149, <8 x double> splat (double 2.000000e-01)
  %4152 = fmul <8 x double> %4131, %4151
  %4153 = fmul <8 x double> %4131, splat (double 4.000000e+00)
  %4154 = fcmp olt <8 x double> %4129, %4153
  %4155 = select <8 x i1> %4154, <8 x double> %4129, <8 x double> %4153
  %4156 = fcmp ogt <8 x double> %4152, %4155
  %4157 = select <8 x i1> %4156, <8 x double> %4152, <8 x double> %4155
  %4158 = select <8 x i1> %3725, <8 x double> %4129, <8 x double> zeroinitializer
  store <8 x double> %4158, ptr %159, align 64, !tbaa !26
  %4159 = select <8 x i1> %3725, <8 x double> %4128, <8 x double> zeroinitializer
  store <8 x double> %4159, ptr %161, align 64, !tbaa !26
  %4160 = load <8 x i64>, ptr %152, align 64, !tbaa !26
  %4161 = and <8 x i64> %4160, %3753
  store <8 x i64> %4161, ptr %152, align 64, !tbaa !26
  %4162 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %4163 = and <8 x i64> %4162, %3753
  store <8 x i64> %4163, ptr %153, align 64, !tbaa !26
  %4164 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %4165 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %4166 = select <8 x i1> %3725, <8 x double> %4165, <8 x double> %4164
  store <8 x double> %4166, ptr %146, align 64, !tbaa !26
  br i1 %4127, label %4167, label %4631

4167:                                             ; preds = %4125, %4624
  %4168 = phi i64 [ %4626, %4624 ], [ 0, %4125 ]
  %4169 = phi <8 x double> [ %4625, %4624 ], [ %4157, %4125 ]
  %4170 = load ptr, ptr %129, align 8, !tbaa !28
  %4171 = getelementptr inbounds nuw %struct.Piece, ptr %4170, i64 %4168
  %4172 = getelementptr inbounds nuw i8, ptr %4171, i64 3776
  %4173 = load <8 x double>, ptr %4172, align 64, !tbaa !26
  %4174 = getelementptr inbounds nuw i8, ptr %4171, i64 1472
  %4175 = load <8 x double>, ptr %4174, align 64, !tbaa !26
  %4176 = fmul <8 x double> %4175, splat (double 1.001000e+00)
  %4177 = fcmp ole <8 x double> %4173, %4176
  %4178 = getelementptr inbounds nuw i8, ptr %4171, i64 1600
  %4179 = load <8 x double>, ptr %4178, align 64, !tbaa !26
  %4180 = getelementptr inbounds nuw i8, ptr %4171, i64 4032
  %4181 = load <8 x double>, ptr %4180, align 64, !tbaa !26
  %4182 = fsub <8 x double> %4179, %4181
  %4183 = fmul <8 x double> %4179, splat (double 1.000000e-04)
  %4184 = fcmp ole <8 x double> %4182, %4183
  %4185 = getelementptr inbounds nuw i8, ptr %4171, i64 7360
  %4186 = load <8 x i64>, ptr %4185, align 64, !tbaa !26
  %4187 = and <8 x i64> %4186, %3665
  %4188 = getelementptr inbounds nuw i8, ptr %4171, i64 7296
  %4189 = load <8 x double>, ptr %4188, align 64, !tbaa !26
  %4190 = fcmp oeq <8 x double> %4189, zeroinitializer
  %4191 = and <8 x i1> %4177, %4190
  %4192 = fcmp oeq <8 x double> %4189, splat (double 1.000000e+00)
  %4193 = and <8 x i1> %4184, %4192
  %4194 = or <8 x i1> %4191, %4193
  %4195 = select <8 x i1> %4194, <8 x i64> %4187, <8 x i64> zeroinitializer
  %4196 = fadd <8 x double> %4189, splat (double 1.000000e+00)
  %4197 = icmp eq <8 x i64> %4195, zeroinitializer
  %4198 = select <8 x i1> %4197, <8 x double> %4189, <8 x double> %4196
  store <8 x double> %4198, ptr %4188, align 64, !tbaa !26
  %4199 = getelementptr inbounds nuw i8, ptr %4171, i64 7424
  %4200 = load <8 x i64>, ptr %4199, align 64, !tbaa !26
  %4201 = or <8 x i64> %4195, %4200
  store <8 x i64> %4201, ptr %4199, align 64, !tbaa !26
  %4202 = getelementptr inbounds nuw i8, ptr %4171, i64 896
  %4203 = load <8 x double>, ptr %4202, align 64, !tbaa !26
  %4204 = getelementptr inbounds nuw i8, ptr %4171, i64 5632
  %4205 = load <8 x double>, ptr %4204, align 64, !tbaa !26
  %4206 = getelementptr inbounds nuw i8, ptr %4171, i64 5696
  %4207 = load <8 x double>, ptr %4206, align 64, !tbaa !26
  %4208 = fadd <8 x double> %4205, %4207
  %4209 = fcmp ogt <8 x double> %4208, zeroinitializer
  %4210 = xor <8 x i64> %4186, splat (i64 -1)
  %4211 = and <8 x i64> %3665, %4210
  %4212 = fcmp une <8 x double> %4203, zeroinitializer
  %4213 = or <8 x i1> %4212, %4209
  %4214 = getelementptr inbounds nuw i8, ptr %4171, i64 3840
  %4215 = load <8 x double>, ptr %4214, align 64, !tbaa !26
  %4216 = fmul <8 x double> %4203, splat (double 1.000000e-03)
  %4217 = fcmp ogt <8 x double> %4216, splat (double 0x3E7AD7F29ABCAF48)
  %4218 = select <8 x i1> %4217, <8 x double> %4216, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4219 = fcmp ole <8 x double> %4215, %4218
  %4220 = select <8 x i1> %4219, <8 x i1> %4213, <8 x i1> zeroinitializer
  %4221 = select <8 x i1> %4220, <8 x i64> %4211, <8 x i64> zeroinitializer
  %4222 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4221)
  %4223 = icmp eq i64 %4222, 0
  br i1 %4223, label %4624, label %4224

4224:                                             ; preds = %4167
  %4225 = load i64, ptr %119, align 16, !tbaa !21
  %4226 = load i64, ptr %120, align 8, !tbaa !22
  %4227 = getelementptr inbounds nuw i8, ptr %4171, i64 3712
  %4228 = getelementptr inbounds nuw i8, ptr %4171, i64 4416
  %4229 = load <8 x double>, ptr %4228, align 64, !tbaa !26
  %4230 = getelementptr inbounds nuw i8, ptr %4171, i64 5568
  %4231 = load <8 x double>, ptr %4230, align 64, !tbaa !26
  %4232 = getelementptr inbounds nuw i8, ptr %4171, i64 832
  %4233 = load <8 x double>, ptr %4232, align 64, !tbaa !26
  %4234 = getelementptr inbounds nuw i8, ptr %4171, i64 7600
  %4235 = load ptr, ptr %4234, align 16, !tbaa !45
  %4236 = add nsw i64 %4225, -1
  %4237 = getelementptr inbounds <8 x double>, ptr %4235, i64 %4236
  %4238 = load <8 x double>, ptr %4237, align 64, !tbaa !26
  %4239 = fmul <8 x double> %4233, %4238
  %4240 = fneg <8 x double> %4215
  %4241 = fdiv <8 x double> %4240, %4239
  %4242 = fcmp ogt <8 x double> %4241, splat (double 0x3E7AD7F29ABCAF48)
  %4243 = select <8 x i1> %4242, <8 x double> %4241, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4244 = load <8 x double>, ptr %4171, align 64, !tbaa !26
  %4245 = fsub <8 x double> %4244, %4243
  %4246 = getelementptr inbounds nuw i8, ptr %4171, i64 2560
  %4247 = load <8 x double>, ptr %4246, align 64, !tbaa !26
  %4248 = getelementptr inbounds nuw i8, ptr %4171, i64 2624
  %4249 = load <8 x double>, ptr %4248, align 64, !tbaa !26
  %4250 = getelementptr inbounds nuw i8, ptr %4171, i64 2688
  %4251 = load <8 x double>, ptr %4250, align 64, !tbaa !26
  %4252 = getelementptr inbounds nuw i8, ptr %4171, i64 2752
  %4253 = load <8 x double>, ptr %4252, align 64, !tbaa !26
  %4254 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4245, <8 x double> %4253, <8 x double> %4251)
  %4255 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4245, <8 x double> %4254, <8 x double> %4249)
  %4256 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4245, <8 x double> %4255, <8 x double> %4247)
  %4257 = fsub <8 x double> %4229, %4256
  %4258 = getelementptr inbounds nuw i8, ptr %4171, i64 7568
  %4259 = load ptr, ptr %4258, align 16, !tbaa !44
  %4260 = getelementptr inbounds <8 x double>, ptr %4259, i64 %4236
  %4261 = load <8 x double>, ptr %4260, align 64, !tbaa !26
  %4262 = getelementptr inbounds nuw i8, ptr %4171, i64 7552
  %4263 = load i64, ptr %4262, align 64, !tbaa !31
  %4264 = icmp sgt i64 %4225, %4263
  br i1 %4264, label %4273, label %4265

4265:                                             ; preds = %4224
  %4266 = getelementptr inbounds nuw i8, ptr %4171, i64 640
  %4267 = load <8 x double>, ptr %4266, align 64, !tbaa !26
  %4268 = getelementptr inbounds nuw i8, ptr %4171, i64 7576
  %4269 = load ptr, ptr %4268, align 8, !tbaa !55
  %4270 = getelementptr inbounds <8 x double>, ptr %4269, i64 %4236
  %4271 = load <8 x double>, ptr %4270, align 64, !tbaa !26
  %4272 = fmul <8 x double> %4271, %4267
  br label %4293

4273:                                             ; preds = %4224
  %4274 = getelementptr inbounds nuw i8, ptr %4171, i64 384
  %4275 = load <8 x double>, ptr %4274, align 64, !tbaa !26
  %4276 = getelementptr inbounds nuw i8, ptr %4171, i64 448
  %4277 = load <8 x double>, ptr %4276, align 64, !tbaa !26
  %4278 = getelementptr inbounds nuw i8, ptr %4171, i64 512
  %4279 = load <8 x double>, ptr %4278, align 64, !tbaa !26
  %4280 = fmul <8 x double> %4261, %4279
  %4281 = fmul <8 x double> %4280, splat (double 0x3FD5555555555555)
  %4282 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4277, <8 x double> splat (double 5.000000e-01), <8 x double> %4281)
  %4283 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4261, <8 x double> %4282, <8 x double> %4275)
  %4284 = getelementptr inbounds nuw i8, ptr %4171, i64 7576
  %4285 = load ptr, ptr %4284, align 8, !tbaa !55
  %4286 = getelementptr inbounds <8 x double>, ptr %4285, i64 %4236
  %4287 = load <8 x double>, ptr %4286, align 64, !tbaa !26
  %4288 = fmul <8 x double> %4287, %4279
  %4289 = fmul <8 x double> %4288, splat (double 0x3FD5555555555555)
  %4290 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4277, <8 x double> splat (double 5.000000e-01), <8 x double> %4289)
  %4291 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4287, <8 x double> %4290, <8 x double> %4275)
  %4292 = fmul <8 x double> %4287, %4291
  br label %4293

4293:                                             ; preds = %4273, %4265
  %4294 = phi ptr [ %4285, %4273 ], [ %4269, %4265 ]
  %4295 = phi <8 x double> [ %4283, %4273 ], [ %4267, %4265 ]
  %4296 = phi <8 x double> [ %4292, %4273 ], [ %4272, %4265 ]
  %4297 = phi ptr [ %4284, %4273 ], [ %4268, %4265 ]
  %4298 = sitofp i64 %4226 to double
  %4299 = insertelement <8 x double> poison, double %4298, i64 0
  %4300 = shufflevector <8 x double> %4299, <8 x double> poison, <8 x i32> zeroinitializer
  %4301 = fmul <8 x double> %4261, %4295
  %4302 = fdiv <8 x double> %4243, %4300
  %4303 = getelementptr i8, ptr %4259, i64 -64
  %4304 = getelementptr i8, ptr %4235, i64 -64
  %4305 = icmp sgt i64 %4225, 0
  br i1 %4305, label %4306, label %4407

4306:                                             ; preds = %4293
  %4307 = fmul <8 x double> %4261, %4295
  %4308 = getelementptr inbounds nuw i8, ptr %4171, i64 640
  %4309 = getelementptr inbounds nuw i8, ptr %4171, i64 384
  %4310 = getelementptr inbounds nuw i8, ptr %4171, i64 448
  %4311 = getelementptr inbounds nuw i8, ptr %4171, i64 512
  %4312 = getelementptr inbounds nuw i8, ptr %4171, i64 1536
  %4313 = getelementptr inbounds nuw i8, ptr %4171, i64 7648
  %4314 = icmp eq <8 x i64> %4221, zeroinitializer
  br label %4315

4315:                                             ; preds = %4306, %4394
  %4316 = phi <8 x double> [ %4261, %4306 ], [ %4375, %4394 ]
  %4317 = phi <8 x double> [ %4307, %4306 ], [ %4374, %4394 ]
  %4318 = phi <8 x double> [ %4256, %4306 ], [ %4376, %4394 ]
  %4319 = phi <8 x double> [ %4238, %4306 ], [ %4377, %4394 ]
  %4320 = phi i64 [ %4236, %4306 ], [ %4400, %4394 ]
  %4321 = icmp eq i64 %4320, 0
  br i1 %4321, label %4322, label %4326

4322:                                             ; preds = %4315
  %4323 = fdiv <8 x double> zeroinitializer, %4318
  %4324 = fsub <8 x double> %4317, %4317
  %4325 = fmul <8 x double> %4323, %4324
  br label %4371

4326:                                             ; preds = %4315
  %4327 = getelementptr <8 x double>, ptr %4303, i64 %4320
  %4328 = load <8 x double>, ptr %4327, align 64, !tbaa !26
  %4329 = load i64, ptr %4262, align 64, !tbaa !31
  %4330 = icmp sgt i64 %4320, %4329
  br i1 %4330, label %4333, label %4331

4331:                                             ; preds = %4326
  %4332 = load <8 x double>, ptr %4308, align 64, !tbaa !26
  br label %4341

4333:                                             ; preds = %4326
  %4334 = load <8 x double>, ptr %4309, align 64, !tbaa !26
  %4335 = load <8 x double>, ptr %4310, align 64, !tbaa !26
  %4336 = load <8 x double>, ptr %4311, align 64, !tbaa !26
  %4337 = fmul <8 x double> %4328, %4336
  %4338 = fmul <8 x double> %4337, splat (double 0x3FD5555555555555)
  %4339 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4335, <8 x double> splat (double 5.000000e-01), <8 x double> %4338)
  %4340 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4328, <8 x double> %4339, <8 x double> %4334)
  br label %4341

4341:                                             ; preds = %4331, %4333
  %4342 = phi <8 x double> [ %4340, %4333 ], [ %4332, %4331 ]
  %4343 = fmul <8 x double> %4328, %4342
  %4344 = icmp slt i64 %4320, %4329
  br i1 %4344, label %4345, label %4352

4345:                                             ; preds = %4341
  %4346 = load ptr, ptr %4313, align 32, !tbaa !70
  %4347 = getelementptr inbounds nuw <8 x double>, ptr %4346, i64 %4320
  %4348 = load <8 x double>, ptr %4347, align 64, !tbaa !26
  %4349 = load <8 x double>, ptr %4312, align 64, !tbaa !26
  %4350 = fmul <8 x double> %4348, %4349
  %4351 = fmul <8 x double> %4348, %4349
  br label %4361

4352:                                             ; preds = %4341
  %4353 = load <8 x double>, ptr %4312, align 64, !tbaa !26
  %4354 = load ptr, ptr %4313, align 32, !tbaa !70
  %4355 = getelementptr inbounds nuw <8 x double>, ptr %4354, i64 %4320
  %4356 = load <8 x double>, ptr %4355, align 64, !tbaa !26
  %4357 = fsub <8 x double> %4256, %4353
  %4358 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4356, <8 x double> %4357, <8 x double> %4353)
  %4359 = fsub <8 x double> %4229, %4353
  %4360 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4356, <8 x double> %4359, <8 x double> %4353)
  br label %4361

4361:                                             ; preds = %4352, %4345
  %4362 = phi <8 x double> [ %4350, %4345 ], [ %4358, %4352 ]
  %4363 = phi <8 x double> [ %4351, %4345 ], [ %4360, %4352 ]
  %4364 = fsub <8 x double> %4363, %4362
  %4365 = fsub <8 x double> %4318, %4362
  %4366 = fdiv <8 x double> %4364, %4365
  %4367 = fsub <8 x double> %4343, %4317
  %4368 = fmul <8 x double> %4367, %4366
  %4369 = getelementptr <8 x double>, ptr %4304, i64 %4320
  %4370 = load <8 x double>, ptr %4369, align 64, !tbaa !26
  br label %4371

4371:                                             ; preds = %4361, %4322
  %4372 = phi <8 x double> [ %4368, %4361 ], [ %4325, %4322 ]
  %4373 = phi <8 x double> [ %4366, %4361 ], [ %4323, %4322 ]
  %4374 = phi <8 x double> [ %4343, %4361 ], [ %4317, %4322 ]
  %4375 = phi <8 x double> [ %4328, %4361 ], [ %4316, %4322 ]
  %4376 = phi <8 x double> [ %4362, %4361 ], [ zeroinitializer, %4322 ]
  %4377 = phi <8 x double> [ %4370, %4361 ], [ %4319, %4322 ]
  %4378 = getelementptr inbounds nuw <8 x double>, ptr %4235, i64 %4320
  %4379 = fsub <8 x double> %4377, %4319
  %4380 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4379, <8 x double> %4373, <8 x double> %4319)
  %4381 = load <8 x double>, ptr %4378, align 64, !tbaa !26
  %4382 = select <8 x i1> %4314, <8 x double> %4381, <8 x double> %4380
  store <8 x double> %4382, ptr %4378, align 64, !tbaa !26
  %4383 = getelementptr inbounds nuw <8 x double>, ptr %4259, i64 %4320
  %4384 = load i64, ptr %4262, align 64, !tbaa !31
  %4385 = icmp slt i64 %4320, %4384
  br i1 %4385, label %4386, label %4388

4386:                                             ; preds = %4371
  %4387 = load <8 x double>, ptr %4308, align 64, !tbaa !26
  br label %4394

4388:                                             ; preds = %4371
  %4389 = load <8 x double>, ptr %4309, align 64, !tbaa !26
  %4390 = load <8 x double>, ptr %4310, align 64, !tbaa !26
  %4391 = load <8 x double>, ptr %4311, align 64, !tbaa !26
  %4392 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4316, <8 x double> %4391, <8 x double> %4390)
  %4393 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4316, <8 x double> %4392, <8 x double> %4389)
  br label %4394

4394:                                             ; preds = %4388, %4386
  %4395 = phi <8 x double> [ %4387, %4386 ], [ %4393, %4388 ]
  %4396 = fdiv <8 x double> %4372, %4395
  %4397 = fadd <8 x double> %4316, %4396
  %4398 = load <8 x double>, ptr %4383, align 64, !tbaa !26
  %4399 = select <8 x i1> %4314, <8 x double> %4398, <8 x double> %4397
  store <8 x double> %4399, ptr %4383, align 64, !tbaa !26
  %4400 = add nsw i64 %4320, -1
  %4401 = icmp sgt i64 %4320, 0
  br i1 %4401, label %4315, label %4402, !llvm.loop !129

4402:                                             ; preds = %4394
  %4403 = load ptr, ptr %4297, align 8, !tbaa !55
  %4404 = load i64, ptr %119, align 16, !tbaa !21
  %4405 = load i64, ptr %4262, align 64, !tbaa !31
  %4406 = add nsw i64 %4404, -1
  br label %4407

4407:                                             ; preds = %4402, %4293
  %4408 = phi i64 [ %4406, %4402 ], [ %4236, %4293 ]
  %4409 = phi i64 [ %4405, %4402 ], [ %4263, %4293 ]
  %4410 = phi i64 [ %4404, %4402 ], [ %4225, %4293 ]
  %4411 = phi ptr [ %4403, %4402 ], [ %4294, %4293 ]
  %4412 = getelementptr inbounds <8 x double>, ptr %4411, i64 %4408
  %4413 = load <8 x double>, ptr %4412, align 64, !tbaa !26
  %4414 = icmp sgt i64 %4410, %4409
  br i1 %4414, label %4418, label %4415

4415:                                             ; preds = %4407
  %4416 = getelementptr inbounds nuw i8, ptr %4171, i64 640
  %4417 = load <8 x double>, ptr %4416, align 64, !tbaa !26
  br label %4429

4418:                                             ; preds = %4407
  %4419 = getelementptr inbounds nuw i8, ptr %4171, i64 384
  %4420 = load <8 x double>, ptr %4419, align 64, !tbaa !26
  %4421 = getelementptr inbounds nuw i8, ptr %4171, i64 448
  %4422 = load <8 x double>, ptr %4421, align 64, !tbaa !26
  %4423 = getelementptr inbounds nuw i8, ptr %4171, i64 512
  %4424 = load <8 x double>, ptr %4423, align 64, !tbaa !26
  %4425 = fmul <8 x double> %4413, %4424
  %4426 = fmul <8 x double> %4425, splat (double 0x3FD5555555555555)
  %4427 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4422, <8 x double> splat (double 5.000000e-01), <8 x double> %4426)
  %4428 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4413, <8 x double> %4427, <8 x double> %4420)
  br label %4429

4429:                                             ; preds = %4418, %4415
  %4430 = phi <8 x double> [ %4417, %4415 ], [ %4428, %4418 ]
  %4431 = getelementptr i8, ptr %4411, i64 -64
  %4432 = icmp sgt i64 %4410, 0
  br i1 %4432, label %4433, label %4442

4433:                                             ; preds = %4429
  %4434 = fmul <8 x double> %4413, %4430
  %4435 = getelementptr inbounds nuw i8, ptr %4171, i64 640
  %4436 = getelementptr inbounds nuw i8, ptr %4171, i64 384
  %4437 = getelementptr inbounds nuw i8, ptr %4171, i64 448
  %4438 = getelementptr inbounds nuw i8, ptr %4171, i64 512
  %4439 = getelementptr inbounds nuw i8, ptr %4171, i64 1536
  %4440 = getelementptr inbounds nuw i8, ptr %4171, i64 7648
  %4441 = icmp eq <8 x i64> %4221, zeroinitializer
  br label %4450

4442:                                             ; preds = %4514, %4429
  %4443 = icmp sgt i64 %4226, 0
  br i1 %4443, label %4444, label %4522

4444:                                             ; preds = %4442
  %4445 = getelementptr inbounds nuw i8, ptr %4171, i64 7736
  %4446 = icmp eq <8 x i64> %4221, zeroinitializer
  %4447 = getelementptr inbounds nuw i8, ptr %4171, i64 7744
  %4448 = getelementptr inbounds nuw i8, ptr %4171, i64 7688
  %4449 = getelementptr inbounds nuw i8, ptr %4171, i64 7696
  br label %4593

4450:                                             ; preds = %4433, %4514
  %4451 = phi <8 x double> [ %4413, %4433 ], [ %4497, %4514 ]
  %4452 = phi <8 x double> [ %4434, %4433 ], [ %4498, %4514 ]
  %4453 = phi <8 x double> [ %4256, %4433 ], [ %4496, %4514 ]
  %4454 = phi i64 [ %4408, %4433 ], [ %4520, %4514 ]
  %4455 = icmp eq i64 %4454, 0
  %4456 = load i64, ptr %4262, align 64, !tbaa !31
  br i1 %4455, label %4495, label %4457

4457:                                             ; preds = %4450
  %4458 = getelementptr <8 x double>, ptr %4431, i64 %4454
  %4459 = load <8 x double>, ptr %4458, align 64, !tbaa !26
  %4460 = icmp sgt i64 %4454, %4456
  br i1 %4460, label %4463, label %4461

4461:                                             ; preds = %4457
  %4462 = load <8 x double>, ptr %4435, align 64, !tbaa !26
  br label %4471

4463:                                             ; preds = %4457
  %4464 = load <8 x double>, ptr %4436, align 64, !tbaa !26
  %4465 = load <8 x double>, ptr %4437, align 64, !tbaa !26
  %4466 = load <8 x double>, ptr %4438, align 64, !tbaa !26
  %4467 = fmul <8 x double> %4459, %4466
  %4468 = fmul <8 x double> %4467, splat (double 0x3FD5555555555555)
  %4469 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4465, <8 x double> splat (double 5.000000e-01), <8 x double> %4468)
  %4470 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4459, <8 x double> %4469, <8 x double> %4464)
  br label %4471

4471:                                             ; preds = %4461, %4463
  %4472 = phi <8 x double> [ %4470, %4463 ], [ %4462, %4461 ]
  %4473 = fmul <8 x double> %4459, %4472
  %4474 = icmp slt i64 %4454, %4456
  br i1 %4474, label %4475, label %4482

4475:                                             ; preds = %4471
  %4476 = load ptr, ptr %4440, align 32, !tbaa !70
  %4477 = getelementptr inbounds nuw <8 x double>, ptr %4476, i64 %4454
  %4478 = load <8 x double>, ptr %4477, align 64, !tbaa !26
  %4479 = load <8 x double>, ptr %4439, align 64, !tbaa !26
  %4480 = fmul <8 x double> %4478, %4479
  %4481 = fmul <8 x double> %4478, %4479
  br label %4491

4482:                                             ; preds = %4471
  %4483 = load <8 x double>, ptr %4439, align 64, !tbaa !26
  %4484 = load ptr, ptr %4440, align 32, !tbaa !70
  %4485 = getelementptr inbounds nuw <8 x double>, ptr %4484, i64 %4454
  %4486 = load <8 x double>, ptr %4485, align 64, !tbaa !26
  %4487 = fsub <8 x double> %4256, %4483
  %4488 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4486, <8 x double> %4487, <8 x double> %4483)
  %4489 = fsub <8 x double> %4229, %4483
  %4490 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4486, <8 x double> %4489, <8 x double> %4483)
  br label %4491

4491:                                             ; preds = %4482, %4475
  %4492 = phi <8 x double> [ %4480, %4475 ], [ %4488, %4482 ]
  %4493 = phi <8 x double> [ %4481, %4475 ], [ %4490, %4482 ]
  %4494 = fsub <8 x double> %4493, %4492
  br label %4495

4495:                                             ; preds = %4450, %4491
  %4496 = phi <8 x double> [ %4492, %4491 ], [ zeroinitializer, %4450 ]
  %4497 = phi <8 x double> [ %4459, %4491 ], [ %4451, %4450 ]
  %4498 = phi <8 x double> [ %4473, %4491 ], [ %4452, %4450 ]
  %4499 = phi <8 x double> [ %4494, %4491 ], [ zeroinitializer, %4450 ]
  %4500 = fsub <8 x double> %4453, %4496
  %4501 = fdiv <8 x double> %4499, %4500
  %4502 = fsub <8 x double> %4498, %4452
  %4503 = fmul <8 x double> %4502, %4501
  %4504 = getelementptr inbounds nuw <8 x double>, ptr %4411, i64 %4454
  %4505 = icmp slt i64 %4454, %4456
  br i1 %4505, label %4506, label %4508

4506:                                             ; preds = %4495
  %4507 = load <8 x double>, ptr %4435, align 64, !tbaa !26
  br label %4514

4508:                                             ; preds = %4495
  %4509 = load <8 x double>, ptr %4436, align 64, !tbaa !26
  %4510 = load <8 x double>, ptr %4437, align 64, !tbaa !26
  %4511 = load <8 x double>, ptr %4438, align 64, !tbaa !26
  %4512 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4451, <8 x double> %4511, <8 x double> %4510)
  %4513 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4451, <8 x double> %4512, <8 x double> %4509)
  br label %4514

4514:                                             ; preds = %4508, %4506
  %4515 = phi <8 x double> [ %4507, %4506 ], [ %4513, %4508 ]
  %4516 = fdiv <8 x double> %4503, %4515
  %4517 = fadd <8 x double> %4451, %4516
  %4518 = load <8 x double>, ptr %4504, align 64, !tbaa !26
  %4519 = select <8 x i1> %4441, <8 x double> %4518, <8 x double> %4517
  store <8 x double> %4519, ptr %4504, align 64, !tbaa !26
  %4520 = add nsw i64 %4454, -1
  %4521 = icmp sgt i64 %4454, 0
  br i1 %4521, label %4450, label %4442, !llvm.loop !129

4522:                                             ; preds = %4593, %4442
  %4523 = getelementptr inbounds nuw i8, ptr %4171, i64 7736
  %4524 = load ptr, ptr %4523, align 8, !tbaa !47
  %4525 = getelementptr inbounds <8 x double>, ptr %4524, i64 %4226
  %4526 = getelementptr inbounds nuw i8, ptr %4171, i64 1408
  %4527 = load <8 x double>, ptr %4526, align 64, !tbaa !26
  %4528 = load <8 x double>, ptr %4525, align 64, !tbaa !26
  %4529 = icmp eq <8 x i64> %4221, zeroinitializer
  %4530 = select <8 x i1> %4529, <8 x double> %4528, <8 x double> %4527
  store <8 x double> %4530, ptr %4525, align 64, !tbaa !26
  %4531 = getelementptr inbounds nuw i8, ptr %4171, i64 7744
  %4532 = load ptr, ptr %4531, align 64, !tbaa !58
  %4533 = getelementptr inbounds <8 x double>, ptr %4532, i64 %4226
  %4534 = load <8 x double>, ptr %4526, align 64, !tbaa !26
  %4535 = load <8 x double>, ptr %4533, align 64, !tbaa !26
  %4536 = select <8 x i1> %4529, <8 x double> %4535, <8 x double> %4534
  store <8 x double> %4536, ptr %4533, align 64, !tbaa !26
  %4537 = getelementptr inbounds nuw i8, ptr %4171, i64 4480
  %4538 = fneg <8 x double> %4257
  %4539 = getelementptr inbounds nuw i8, ptr %4171, i64 768
  %4540 = load <8 x double>, ptr %4227, align 64, !tbaa !26
  %4541 = select <8 x i1> %4529, <8 x double> %4540, <8 x double> %4245
  store <8 x double> %4541, ptr %4227, align 64, !tbaa !26
  %4542 = getelementptr inbounds nuw i8, ptr %4171, i64 3776
  %4543 = load <8 x double>, ptr %4542, align 64, !tbaa !26
  %4544 = select <8 x i1> %4529, <8 x double> %4543, <8 x double> %4256
  store <8 x double> %4544, ptr %4542, align 64, !tbaa !26
  %4545 = getelementptr inbounds nuw i8, ptr %4171, i64 4416
  %4546 = load <8 x double>, ptr %4545, align 64, !tbaa !26
  %4547 = select <8 x i1> %4529, <8 x double> %4546, <8 x double> %4256
  store <8 x double> %4547, ptr %4545, align 64, !tbaa !26
  %4548 = getelementptr inbounds nuw i8, ptr %4171, i64 3904
  %4549 = load <8 x double>, ptr %4548, align 64, !tbaa !26
  %4550 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4538, <8 x double> %4239, <8 x double> %4549)
  %4551 = select <8 x i1> %4529, <8 x double> %4549, <8 x double> %4550
  store <8 x double> %4551, ptr %4548, align 64, !tbaa !26
  %4552 = getelementptr inbounds nuw i8, ptr %4171, i64 3840
  %4553 = load <8 x double>, ptr %4552, align 64, !tbaa !26
  %4554 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4257, <8 x double> %4239, <8 x double> %4553)
  %4555 = select <8 x i1> %4529, <8 x double> %4553, <8 x double> %4554
  store <8 x double> %4555, ptr %4552, align 64, !tbaa !26
  %4556 = getelementptr inbounds nuw i8, ptr %4171, i64 4160
  %4557 = load <8 x double>, ptr %4556, align 64, !tbaa !26
  %4558 = load <8 x double>, ptr %4539, align 64, !tbaa !26
  %4559 = fneg <8 x double> %4558
  %4560 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4559, <8 x double> %4231, <8 x double> %4301)
  %4561 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4257, <8 x double> %4560, <8 x double> %4557)
  %4562 = select <8 x i1> %4529, <8 x double> %4557, <8 x double> %4561
  store <8 x double> %4562, ptr %4556, align 64, !tbaa !26
  %4563 = load <8 x double>, ptr %4537, align 64, !tbaa !26
  %4564 = select <8 x i1> %4529, <8 x double> %4563, <8 x double> %4245
  store <8 x double> %4564, ptr %4537, align 64, !tbaa !26
  %4565 = getelementptr inbounds nuw i8, ptr %4171, i64 4544
  %4566 = load <8 x double>, ptr %4565, align 64, !tbaa !26
  %4567 = select <8 x i1> %4529, <8 x double> %4566, <8 x double> %4256
  store <8 x double> %4567, ptr %4565, align 64, !tbaa !26
  %4568 = getelementptr inbounds nuw i8, ptr %4171, i64 5184
  %4569 = load <8 x double>, ptr %4568, align 64, !tbaa !26
  %4570 = select <8 x i1> %4529, <8 x double> %4569, <8 x double> %4256
  store <8 x double> %4570, ptr %4568, align 64, !tbaa !26
  %4571 = getelementptr inbounds nuw i8, ptr %4171, i64 4672
  %4572 = load <8 x double>, ptr %4571, align 64, !tbaa !26
  %4573 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4538, <8 x double> %4239, <8 x double> %4572)
  %4574 = select <8 x i1> %4529, <8 x double> %4572, <8 x double> %4573
  store <8 x double> %4574, ptr %4571, align 64, !tbaa !26
  %4575 = getelementptr inbounds nuw i8, ptr %4171, i64 4608
  %4576 = load <8 x double>, ptr %4575, align 64, !tbaa !26
  %4577 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4257, <8 x double> %4239, <8 x double> %4576)
  %4578 = select <8 x i1> %4529, <8 x double> %4576, <8 x double> %4577
  store <8 x double> %4578, ptr %4575, align 64, !tbaa !26
  %4579 = getelementptr inbounds nuw i8, ptr %4171, i64 4928
  %4580 = load <8 x double>, ptr %4579, align 64, !tbaa !26
  %4581 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4559, <8 x double> %4231, <8 x double> %4296)
  %4582 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4257, <8 x double> %4581, <8 x double> %4580)
  %4583 = select <8 x i1> %4529, <8 x double> %4580, <8 x double> %4582
  store <8 x double> %4583, ptr %4579, align 64, !tbaa !26
  %4584 = load <8 x i64>, ptr %4185, align 64, !tbaa !26
  %4585 = or <8 x i64> %4584, %4221
  store <8 x i64> %4585, ptr %4185, align 64, !tbaa !26
  %4586 = load <8 x double>, ptr %215, align 64, !tbaa !26
  %4587 = fmul <8 x double> %4586, splat (double 4.000000e+01)
  %4588 = fcmp olt <8 x double> %4169, %4587
  %4589 = select <8 x i1> %4588, <8 x double> %4169, <8 x double> %4587
  %4590 = icmp ne <8 x i64> %4221, zeroinitializer
  %4591 = select <8 x i1> %4212, <8 x i1> %4590, <8 x i1> zeroinitializer
  %4592 = select <8 x i1> %4591, <8 x double> %4589, <8 x double> %4169
  br label %4624

4593:                                             ; preds = %4444, %4593
  %4594 = phi i64 [ 0, %4444 ], [ %4622, %4593 ]
  %4595 = uitofp nneg i64 %4594 to double
  %4596 = insertelement <8 x double> poison, double %4595, i64 0
  %4597 = shufflevector <8 x double> %4596, <8 x double> poison, <8 x i32> zeroinitializer
  %4598 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4597, <8 x double> %4302, <8 x double> %4245)
  %4599 = load <8 x double>, ptr %4246, align 64, !tbaa !26
  %4600 = load <8 x double>, ptr %4248, align 64, !tbaa !26
  %4601 = load <8 x double>, ptr %4250, align 64, !tbaa !26
  %4602 = load <8 x double>, ptr %4252, align 64, !tbaa !26
  %4603 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4598, <8 x double> %4602, <8 x double> %4601)
  %4604 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4598, <8 x double> %4603, <8 x double> %4600)
  %4605 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4598, <8 x double> %4604, <8 x double> %4599)
  %4606 = load ptr, ptr %4445, align 8, !tbaa !47
  %4607 = getelementptr inbounds nuw <8 x double>, ptr %4606, i64 %4594
  %4608 = load <8 x double>, ptr %4607, align 64, !tbaa !26
  %4609 = select <8 x i1> %4446, <8 x double> %4608, <8 x double> %4605
  store <8 x double> %4609, ptr %4607, align 64, !tbaa !26
  %4610 = load ptr, ptr %4447, align 64, !tbaa !58
  %4611 = getelementptr inbounds nuw <8 x double>, ptr %4610, i64 %4594
  %4612 = load <8 x double>, ptr %4611, align 64, !tbaa !26
  %4613 = select <8 x i1> %4446, <8 x double> %4612, <8 x double> %4605
  store <8 x double> %4613, ptr %4611, align 64, !tbaa !26
  %4614 = load ptr, ptr %4448, align 8, !tbaa !48
  %4615 = getelementptr inbounds nuw <8 x double>, ptr %4614, i64 %4594
  %4616 = load <8 x double>, ptr %4615, align 64, !tbaa !26
  %4617 = select <8 x i1> %4446, <8 x double> %4616, <8 x double> %4231
  store <8 x double> %4617, ptr %4615, align 64, !tbaa !26
  %4618 = load ptr, ptr %4449, align 16, !tbaa !60
  %4619 = getelementptr inbounds nuw <8 x double>, ptr %4618, i64 %4594
  %4620 = load <8 x double>, ptr %4619, align 64, !tbaa !26
  %4621 = select <8 x i1> %4446, <8 x double> %4620, <8 x double> %4231
  store <8 x double> %4621, ptr %4619, align 64, !tbaa !26
  %4622 = add nuw nsw i64 %4594, 1
  %4623 = icmp eq i64 %4622, %4226
  br i1 %4623, label %4522, label %4593, !llvm.loop !130

4624:                                             ; preds = %4522, %4167
  %4625 = phi <8 x double> [ %4592, %4522 ], [ %4169, %4167 ]
  %4626 = add nuw nsw i64 %4168, 1
  %4627 = load i64, ptr %156, align 8, !tbaa !20
  %4628 = icmp slt i64 %4626, %4627
  br i1 %4628, label %4167, label %4629, !llvm.loop !131

4629:                                             ; preds = %4624
  %4630 = load <8 x double>, ptr %136, align 64, !tbaa !26
  br label %4631

4631:                                             ; preds = %4629, %4125
  %4632 = phi <8 x double> [ %4134, %4125 ], [ %4630, %4629 ]
  %4633 = phi <8 x double> [ %4157, %4125 ], [ %4625, %4629 ]
  %4634 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4633)
  %4635 = insertelement <8 x double> poison, double %4634, i64 0
  %4636 = shufflevector <8 x double> %4635, <8 x double> poison, <8 x i32> zeroinitializer
  %4637 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %4638 = select <8 x i1> %3725, <8 x double> %4637, <8 x double> %4636
  store <8 x double> %4638, ptr %139, align 64, !tbaa !26
  %4639 = load ptr, ptr %216, align 64, !tbaa !36
  %4640 = getelementptr inbounds nuw i8, ptr %4639, i64 64
  store <8 x double> %4632, ptr %4639, align 64, !tbaa !26
  %4641 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %4642 = getelementptr inbounds nuw i8, ptr %4639, i64 128
  store <8 x double> %4641, ptr %4640, align 64, !tbaa !26
  %4643 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %4644 = getelementptr inbounds nuw i8, ptr %4639, i64 192
  store <8 x double> %4643, ptr %4642, align 64, !tbaa !26
  %4645 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %4646 = getelementptr inbounds nuw i8, ptr %4639, i64 256
  store <8 x double> %4645, ptr %4644, align 64, !tbaa !26
  %4647 = load i64, ptr %156, align 8, !tbaa !20
  %4648 = icmp sgt i64 %4647, 0
  br i1 %4648, label %4653, label %4649

4649:                                             ; preds = %4653, %4631
  %4650 = phi ptr [ %4646, %4631 ], [ %4659, %4653 ]
  %4651 = load i64, ptr %218, align 8, !tbaa !132
  %4652 = icmp eq i64 %4651, 0
  br i1 %4652, label %4788, label %4663

4653:                                             ; preds = %4631, %4653
  %4654 = phi ptr [ %4659, %4653 ], [ %4646, %4631 ]
  %4655 = phi i64 [ %4660, %4653 ], [ 0, %4631 ]
  %4656 = load ptr, ptr %129, align 8, !tbaa !28
  %4657 = getelementptr inbounds nuw %struct.Piece, ptr %4656, i64 %4655, i32 35
  %4658 = load <8 x double>, ptr %4657, align 64, !tbaa !26
  %4659 = getelementptr inbounds nuw i8, ptr %4654, i64 64
  store <8 x double> %4658, ptr %4654, align 64, !tbaa !26
  %4660 = add nuw nsw i64 %4655, 1
  %4661 = load i64, ptr %156, align 8, !tbaa !20
  %4662 = icmp slt i64 %4660, %4661
  br i1 %4662, label %4653, label %4649, !llvm.loop !133

4663:                                             ; preds = %4649
  %4664 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %4665 = getelementptr inbounds nuw i8, ptr %4650, i64 64
  store <8 x double> %4664, ptr %4650, align 64, !tbaa !26
  %4666 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %4667 = getelementptr inbounds nuw i8, ptr %4650, i64 128
  store <8 x double> %4666, ptr %4665, align 64, !tbaa !26
  %4668 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %4669 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4670 = fsub <8 x double> %4668, %4669
  %4671 = fcmp ogt <8 x double> %4670, zeroinitializer
  %4672 = select <8 x i1> %4671, <8 x double> %4670, <8 x double> zeroinitializer
  store <8 x double> %4672, ptr %4667, align 64, !tbaa !26
  %4673 = load i64, ptr %156, align 8, !tbaa !20
  %4674 = icmp sgt i64 %4673, 0
  br i1 %4674, label %4675, label %4788

4675:                                             ; preds = %4663
  %4676 = getelementptr inbounds nuw i8, ptr %4650, i64 192
  br label %4677

4677:                                             ; preds = %4675, %4677
  %4678 = phi ptr [ %4784, %4677 ], [ %4676, %4675 ]
  %4679 = phi i64 [ %4785, %4677 ], [ 0, %4675 ]
  %4680 = load ptr, ptr %129, align 8, !tbaa !28
  %4681 = getelementptr inbounds nuw %struct.Piece, ptr %4680, i64 %4679
  %4682 = getelementptr inbounds nuw i8, ptr %4681, i64 7568
  %4683 = load ptr, ptr %4682, align 16, !tbaa !44
  %4684 = load i64, ptr %119, align 16, !tbaa !21
  %4685 = getelementptr <8 x double>, ptr %4683, i64 %4684
  %4686 = getelementptr i8, ptr %4685, i64 -64
  %4687 = load <8 x double>, ptr %4686, align 64, !tbaa !26
  %4688 = getelementptr inbounds nuw i8, ptr %4681, i64 6848
  %4689 = load <8 x double>, ptr %4688, align 64, !tbaa !26
  %4690 = getelementptr inbounds nuw i8, ptr %4681, i64 5568
  %4691 = load <8 x double>, ptr %4690, align 64, !tbaa !26
  %4692 = fsub <8 x double> %4691, %4687
  %4693 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4689, <8 x double> %4692, <8 x double> %4687)
  %4694 = getelementptr inbounds nuw i8, ptr %4678, i64 64
  store <8 x double> %4693, ptr %4678, align 64, !tbaa !26
  %4695 = getelementptr inbounds nuw i8, ptr %4681, i64 6400
  %4696 = load <8 x double>, ptr %4695, align 64, !tbaa !26
  %4697 = getelementptr inbounds nuw i8, ptr %4678, i64 128
  store <8 x double> %4696, ptr %4694, align 64, !tbaa !26
  %4698 = load <8 x double>, ptr %4681, align 64, !tbaa !26
  %4699 = getelementptr inbounds nuw i8, ptr %4681, i64 3712
  %4700 = load <8 x double>, ptr %4699, align 64, !tbaa !26
  %4701 = fsub <8 x double> %4698, %4700
  %4702 = getelementptr inbounds nuw i8, ptr %4678, i64 192
  store <8 x double> %4701, ptr %4697, align 64, !tbaa !26
  %4703 = getelementptr inbounds nuw i8, ptr %4681, i64 4032
  %4704 = load <8 x double>, ptr %4703, align 64, !tbaa !26
  %4705 = getelementptr inbounds nuw i8, ptr %4678, i64 256
  store <8 x double> %4704, ptr %4702, align 64, !tbaa !26
  %4706 = getelementptr inbounds nuw i8, ptr %4681, i64 3968
  %4707 = load <8 x double>, ptr %4706, align 64, !tbaa !26
  %4708 = getelementptr inbounds nuw i8, ptr %4678, i64 320
  store <8 x double> %4707, ptr %4705, align 64, !tbaa !26
  %4709 = getelementptr inbounds nuw i8, ptr %4681, i64 3840
  %4710 = load <8 x double>, ptr %4709, align 64, !tbaa !26
  %4711 = getelementptr inbounds nuw i8, ptr %4678, i64 384
  store <8 x double> %4710, ptr %4708, align 64, !tbaa !26
  %4712 = getelementptr inbounds nuw i8, ptr %4681, i64 4096
  %4713 = load <8 x double>, ptr %4712, align 64, !tbaa !26
  %4714 = getelementptr inbounds nuw i8, ptr %4678, i64 448
  store <8 x double> %4713, ptr %4711, align 64, !tbaa !26
  %4715 = getelementptr inbounds nuw i8, ptr %4681, i64 7688
  %4716 = load i64, ptr %120, align 8, !tbaa !22
  %4717 = sitofp i64 %4716 to double
  %4718 = tail call double @llvm.fmuladd.f64(double %4717, double 7.500000e-01, double -5.000000e-01)
  %4719 = fcmp ogt double %4718, 0.000000e+00
  %4720 = select i1 %4719, double %4718, double 0.000000e+00
  %4721 = fptosi double %4720 to i64
  %4722 = add nsw i64 %4716, -2
  %4723 = tail call i64 @llvm.smin.i64(i64 %4722, i64 %4721)
  %4724 = sitofp i64 %4723 to double
  %4725 = fsub double %4718, %4724
  %4726 = fsub double 1.000000e+00, %4725
  %4727 = insertelement <8 x double> poison, double %4726, i64 0
  %4728 = shufflevector <8 x double> %4727, <8 x double> poison, <8 x i32> zeroinitializer
  %4729 = load ptr, ptr %4715, align 8, !tbaa !48
  %4730 = getelementptr inbounds <8 x double>, ptr %4729, i64 %4723
  %4731 = load <8 x double>, ptr %4730, align 64, !tbaa !26
  %4732 = insertelement <8 x double> poison, double %4725, i64 0
  %4733 = shufflevector <8 x double> %4732, <8 x double> poison, <8 x i32> zeroinitializer
  %4734 = getelementptr i8, ptr %4730, i64 64
  %4735 = load <8 x double>, ptr %4734, align 64, !tbaa !26
  %4736 = fmul <8 x double> %4735, %4733
  %4737 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4728, <8 x double> %4731, <8 x double> %4736)
  store <8 x double> %4737, ptr %4714, align 64, !tbaa !26
  %4738 = load i64, ptr %120, align 8, !tbaa !22
  %4739 = sitofp i64 %4738 to double
  %4740 = tail call double @llvm.fmuladd.f64(double %4739, double 5.000000e-01, double -5.000000e-01)
  %4741 = fcmp ogt double %4740, 0.000000e+00
  %4742 = select i1 %4741, double %4740, double 0.000000e+00
  %4743 = fptosi double %4742 to i64
  %4744 = add nsw i64 %4738, -2
  %4745 = tail call i64 @llvm.smin.i64(i64 %4744, i64 %4743)
  %4746 = sitofp i64 %4745 to double
  %4747 = fsub double %4740, %4746
  %4748 = fsub double 1.000000e+00, %4747
  %4749 = insertelement <8 x double> poison, double %4748, i64 0
  %4750 = shufflevector <8 x double> %4749, <8 x double> poison, <8 x i32> zeroinitializer
  %4751 = load ptr, ptr %4715, align 8, !tbaa !48
  %4752 = getelementptr inbounds <8 x double>, ptr %4751, i64 %4745
  %4753 = load <8 x double>, ptr %4752, align 64, !tbaa !26
  %4754 = insertelement <8 x double> poison, double %4747, i64 0
  %4755 = shufflevector <8 x double> %4754, <8 x double> poison, <8 x i32> zeroinitializer
  %4756 = getelementptr i8, ptr %4752, i64 64
  %4757 = load <8 x double>, ptr %4756, align 64, !tbaa !26
  %4758 = fmul <8 x double> %4757, %4755
  %4759 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4750, <8 x double> %4753, <8 x double> %4758)
  %4760 = getelementptr inbounds nuw i8, ptr %4678, i64 512
  store <8 x double> %4759, ptr %4760, align 64, !tbaa !26
  %4761 = load i64, ptr %120, align 8, !tbaa !22
  %4762 = sitofp i64 %4761 to double
  %4763 = tail call double @llvm.fmuladd.f64(double %4762, double 2.500000e-01, double -5.000000e-01)
  %4764 = fcmp ogt double %4763, 0.000000e+00
  %4765 = select i1 %4764, double %4763, double 0.000000e+00
  %4766 = fptosi double %4765 to i64
  %4767 = add nsw i64 %4761, -2
  %4768 = tail call i64 @llvm.smin.i64(i64 %4767, i64 %4766)
  %4769 = sitofp i64 %4768 to double
  %4770 = fsub double %4763, %4769
  %4771 = fsub double 1.000000e+00, %4770
  %4772 = insertelement <8 x double> poison, double %4771, i64 0
  %4773 = shufflevector <8 x double> %4772, <8 x double> poison, <8 x i32> zeroinitializer
  %4774 = load ptr, ptr %4715, align 8, !tbaa !48
  %4775 = getelementptr inbounds <8 x double>, ptr %4774, i64 %4768
  %4776 = load <8 x double>, ptr %4775, align 64, !tbaa !26
  %4777 = insertelement <8 x double> poison, double %4770, i64 0
  %4778 = shufflevector <8 x double> %4777, <8 x double> poison, <8 x i32> zeroinitializer
  %4779 = getelementptr i8, ptr %4775, i64 64
  %4780 = load <8 x double>, ptr %4779, align 64, !tbaa !26
  %4781 = fmul <8 x double> %4780, %4778
  %4782 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4773, <8 x double> %4776, <8 x double> %4781)
  %4783 = getelementptr inbounds nuw i8, ptr %4678, i64 576
  store <8 x double> %4782, ptr %4783, align 64, !tbaa !26
  %4784 = getelementptr inbounds nuw i8, ptr %4678, i64 640
  %4785 = add nuw nsw i64 %4679, 1
  %4786 = load i64, ptr %156, align 8, !tbaa !20
  %4787 = icmp slt i64 %4785, %4786
  br i1 %4787, label %4677, label %4788, !llvm.loop !134

4788:                                             ; preds = %4677, %4663, %4649
  %4789 = getelementptr inbounds nuw i8, ptr %4650, i64 192
  %4790 = extractelement <8 x i64> %3665, i64 0
  %4791 = icmp eq i64 %4790, 0
  br i1 %4791, label %4931, label %4792

4792:                                             ; preds = %4788
  %4793 = load i64, ptr %219, align 8, !tbaa !30
  %4794 = load i64, ptr %220, align 8, !tbaa !135
  %4795 = icmp eq i64 %4793, %4794
  br i1 %4795, label %4798, label %4796

4796:                                             ; preds = %4792
  %4797 = load ptr, ptr %224, align 8, !tbaa !136
  br label %4811

4798:                                             ; preds = %4792
  %4799 = load i64, ptr %121, align 8, !tbaa !30
  %4800 = load ptr, ptr %221, align 8, !tbaa !137
  %4801 = load i64, ptr %112, align 8, !tbaa !39
  %4802 = getelementptr inbounds i64, ptr %4800, i64 %4801
  store i64 %4799, ptr %4802, align 8, !tbaa !30
  %4803 = load ptr, ptr %222, align 8, !tbaa !138
  %4804 = load i64, ptr %112, align 8, !tbaa !39
  %4805 = add nsw i64 %4804, 1
  store i64 %4805, ptr %112, align 8, !tbaa !39
  %4806 = load i64, ptr %220, align 8, !tbaa !135
  %4807 = mul nsw i64 %4806, %4804
  %4808 = load i64, ptr %223, align 8, !tbaa !14
  %4809 = mul nsw i64 %4807, %4808
  %4810 = getelementptr inbounds double, ptr %4803, i64 %4809
  store ptr %4810, ptr %224, align 8, !tbaa !136
  br label %4811

4811:                                             ; preds = %4796, %4798
  %4812 = phi i64 [ %4793, %4796 ], [ 0, %4798 ]
  %4813 = phi ptr [ %4797, %4796 ], [ %4810, %4798 ]
  %4814 = add nsw i64 %4812, 1
  store i64 %4814, ptr %219, align 8, !tbaa !30
  %4815 = load i64, ptr %223, align 8, !tbaa !14
  %4816 = mul nsw i64 %4815, %4812
  %4817 = getelementptr inbounds double, ptr %4813, i64 %4816
  %4818 = load ptr, ptr %216, align 64, !tbaa !36
  %4819 = icmp ult ptr %4818, %4646
  br i1 %4819, label %4878, label %4820

4820:                                             ; preds = %4878, %4811
  %4821 = phi ptr [ %4817, %4811 ], [ %4882, %4878 ]
  %4822 = load i64, ptr %128, align 64, !tbaa !16
  %4823 = icmp sgt i64 %4822, 0
  br i1 %4823, label %4824, label %4866

4824:                                             ; preds = %4820
  %4825 = and i64 %4822, 3
  %4826 = icmp ult i64 %4822, 4
  br i1 %4826, label %4851, label %4827

4827:                                             ; preds = %4824
  %4828 = and i64 %4822, 9223372036854775804
  br label %4829

4829:                                             ; preds = %4829, %4827
  %4830 = phi i64 [ 0, %4827 ], [ %4848, %4829 ]
  %4831 = phi ptr [ %4821, %4827 ], [ %4845, %4829 ]
  %4832 = phi i64 [ 0, %4827 ], [ %4849, %4829 ]
  %4833 = getelementptr i8, ptr %4831, i64 8
  %4834 = load <8 x double>, ptr %4646, align 64, !tbaa !26
  %4835 = extractelement <8 x double> %4834, i64 %4830
  store double %4835, ptr %4831, align 8, !tbaa !40
  %4836 = or disjoint i64 %4830, 1
  %4837 = getelementptr i8, ptr %4831, i64 16
  %4838 = load <8 x double>, ptr %4646, align 64, !tbaa !26
  %4839 = extractelement <8 x double> %4838, i64 %4836
  store double %4839, ptr %4833, align 8, !tbaa !40
  %4840 = or disjoint i64 %4830, 2
  %4841 = getelementptr i8, ptr %4831, i64 24
  %4842 = load <8 x double>, ptr %4646, align 64, !tbaa !26
  %4843 = extractelement <8 x double> %4842, i64 %4840
  store double %4843, ptr %4837, align 8, !tbaa !40
  %4844 = or disjoint i64 %4830, 3
  %4845 = getelementptr i8, ptr %4831, i64 32
  %4846 = load <8 x double>, ptr %4646, align 64, !tbaa !26
  %4847 = extractelement <8 x double> %4846, i64 %4844
  store double %4847, ptr %4841, align 8, !tbaa !40
  %4848 = add nuw nsw i64 %4830, 4
  %4849 = add i64 %4832, 4
  %4850 = icmp eq i64 %4849, %4828
  br i1 %4850, label %4851, label %4829, !llvm.loop !139

4851:                                             ; preds = %4829, %4824
  %4852 = phi ptr [ poison, %4824 ], [ %4845, %4829 ]
  %4853 = phi i64 [ 0, %4824 ], [ %4848, %4829 ]
  %4854 = phi ptr [ %4821, %4824 ], [ %4845, %4829 ]
  %4855 = icmp eq i64 %4825, 0
  br i1 %4855, label %4866, label %4856

4856:                                             ; preds = %4851, %4856
  %4857 = phi i64 [ %4863, %4856 ], [ %4853, %4851 ]
  %4858 = phi ptr [ %4860, %4856 ], [ %4854, %4851 ]
  %4859 = phi i64 [ %4864, %4856 ], [ 0, %4851 ]
  %4860 = getelementptr i8, ptr %4858, i64 8
  %4861 = load <8 x double>, ptr %4646, align 64, !tbaa !26
  %4862 = extractelement <8 x double> %4861, i64 %4857
  store double %4862, ptr %4858, align 8, !tbaa !40
  %4863 = add nuw nsw i64 %4857, 1
  %4864 = add i64 %4859, 1
  %4865 = icmp eq i64 %4864, %4825
  br i1 %4865, label %4866, label %4856, !llvm.loop !140

4866:                                             ; preds = %4851, %4856, %4820
  %4867 = phi ptr [ %4821, %4820 ], [ %4852, %4851 ], [ %4860, %4856 ]
  %4868 = load i64, ptr %218, align 8, !tbaa !132
  %4869 = icmp eq i64 %4868, 0
  br i1 %4869, label %4931, label %4870

4870:                                             ; preds = %4866
  %4871 = load double, ptr %4650, align 8, !tbaa !40
  %4872 = getelementptr inbounds nuw i8, ptr %4867, i64 8
  store double %4871, ptr %4867, align 8, !tbaa !40
  %4873 = getelementptr inbounds nuw i8, ptr %4650, i64 64
  %4874 = load double, ptr %4873, align 8, !tbaa !40
  %4875 = getelementptr inbounds nuw i8, ptr %4867, i64 16
  store double %4874, ptr %4872, align 8, !tbaa !40
  %4876 = getelementptr inbounds nuw i8, ptr %4650, i64 128
  %4877 = load double, ptr %4876, align 8, !tbaa !40
  store double %4877, ptr %4875, align 8, !tbaa !40
  br i1 %4823, label %4885, label %4931

4878:                                             ; preds = %4811, %4878
  %4879 = phi ptr [ %4883, %4878 ], [ %4818, %4811 ]
  %4880 = phi ptr [ %4882, %4878 ], [ %4817, %4811 ]
  %4881 = load double, ptr %4879, align 8, !tbaa !40
  %4882 = getelementptr inbounds nuw i8, ptr %4880, i64 8
  store double %4881, ptr %4880, align 8, !tbaa !40
  %4883 = getelementptr inbounds nuw i8, ptr %4879, i64 64
  %4884 = icmp ult ptr %4883, %4646
  br i1 %4884, label %4878, label %4820, !llvm.loop !142

4885:                                             ; preds = %4870
  %4886 = getelementptr inbounds nuw i8, ptr %4867, i64 24
  %4887 = getelementptr inbounds nuw i8, ptr %4650, i64 256
  %4888 = getelementptr inbounds nuw i8, ptr %4650, i64 320
  %4889 = getelementptr inbounds nuw i8, ptr %4650, i64 384
  %4890 = getelementptr inbounds nuw i8, ptr %4650, i64 448
  %4891 = getelementptr inbounds nuw i8, ptr %4650, i64 512
  %4892 = getelementptr inbounds nuw i8, ptr %4650, i64 576
  %4893 = getelementptr inbounds nuw i8, ptr %4650, i64 640
  %4894 = getelementptr inbounds nuw i8, ptr %4650, i64 704
  %4895 = getelementptr inbounds nuw i8, ptr %4650, i64 768
  br label %4896

4896:                                             ; preds = %4885, %4896
  %4897 = phi i64 [ %4929, %4896 ], [ 0, %4885 ]
  %4898 = phi ptr [ %4928, %4896 ], [ %4886, %4885 ]
  %4899 = load <8 x double>, ptr %4789, align 64, !tbaa !26
  %4900 = extractelement <8 x double> %4899, i64 %4897
  %4901 = getelementptr inbounds nuw i8, ptr %4898, i64 8
  store double %4900, ptr %4898, align 8, !tbaa !40
  %4902 = load <8 x double>, ptr %4887, align 64, !tbaa !26
  %4903 = extractelement <8 x double> %4902, i64 %4897
  %4904 = getelementptr inbounds nuw i8, ptr %4898, i64 16
  store double %4903, ptr %4901, align 8, !tbaa !40
  %4905 = load <8 x double>, ptr %4888, align 64, !tbaa !26
  %4906 = extractelement <8 x double> %4905, i64 %4897
  %4907 = getelementptr inbounds nuw i8, ptr %4898, i64 24
  store double %4906, ptr %4904, align 8, !tbaa !40
  %4908 = load <8 x double>, ptr %4889, align 64, !tbaa !26
  %4909 = extractelement <8 x double> %4908, i64 %4897
  %4910 = getelementptr inbounds nuw i8, ptr %4898, i64 32
  store double %4909, ptr %4907, align 8, !tbaa !40
  %4911 = load <8 x double>, ptr %4890, align 64, !tbaa !26
  %4912 = extractelement <8 x double> %4911, i64 %4897
  %4913 = getelementptr inbounds nuw i8, ptr %4898, i64 40
  store double %4912, ptr %4910, align 8, !tbaa !40
  %4914 = load <8 x double>, ptr %4891, align 64, !tbaa !26
  %4915 = extractelement <8 x double> %4914, i64 %4897
  %4916 = getelementptr inbounds nuw i8, ptr %4898, i64 48
  store double %4915, ptr %4913, align 8, !tbaa !40
  %4917 = load <8 x double>, ptr %4892, align 64, !tbaa !26
  %4918 = extractelement <8 x double> %4917, i64 %4897
  %4919 = getelementptr inbounds nuw i8, ptr %4898, i64 56
  store double %4918, ptr %4916, align 8, !tbaa !40
  %4920 = load <8 x double>, ptr %4893, align 64, !tbaa !26
  %4921 = extractelement <8 x double> %4920, i64 %4897
  %4922 = getelementptr inbounds nuw i8, ptr %4898, i64 64
  store double %4921, ptr %4919, align 8, !tbaa !40
  %4923 = load <8 x double>, ptr %4894, align 64, !tbaa !26
  %4924 = extractelement <8 x double> %4923, i64 %4897
  %4925 = getelementptr inbounds nuw i8, ptr %4898, i64 72
  store double %4924, ptr %4922, align 8, !tbaa !40
  %4926 = load <8 x double>, ptr %4895, align 64, !tbaa !26
  %4927 = extractelement <8 x double> %4926, i64 %4897
  %4928 = getelementptr inbounds nuw i8, ptr %4898, i64 80
  store double %4927, ptr %4925, align 8, !tbaa !40
  %4929 = add nuw nsw i64 %4897, 1
  %4930 = icmp eq i64 %4929, %4822
  br i1 %4930, label %4931, label %4896, !llvm.loop !139

4931:                                             ; preds = %4896, %4870, %4866, %4788
  %4932 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4933 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %4934 = fsub <8 x double> %4932, %4933
  %4935 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4936 = fadd <8 x double> %4935, splat (double -1.000000e-09)
  %4937 = fcmp oge <8 x double> %4934, %4936
  %4938 = select <8 x i1> %4937, <8 x i64> %3665, <8 x i64> zeroinitializer
  %4939 = load i64, ptr %156, align 8, !tbaa !20
  %4940 = icmp sgt i64 %4939, 0
  br i1 %4940, label %4941, label %4973

4941:                                             ; preds = %4931
  %4942 = load ptr, ptr %129, align 8, !tbaa !28
  %4943 = and i64 %4939, 1
  %4944 = icmp eq i64 %4939, 1
  br i1 %4944, label %4963, label %4945

4945:                                             ; preds = %4941
  %4946 = and i64 %4939, 9223372036854775806
  br label %4947

4947:                                             ; preds = %4947, %4945
  %4948 = phi i64 [ 0, %4945 ], [ %4960, %4947 ]
  %4949 = phi <8 x double> [ splat (double 1.000000e+09), %4945 ], [ %4959, %4947 ]
  %4950 = phi i64 [ 0, %4945 ], [ %4961, %4947 ]
  %4951 = getelementptr inbounds nuw %struct.Piece, ptr %4942, i64 %4948, i32 35
  %4952 = load <8 x double>, ptr %4951, align 64, !tbaa !26
  %4953 = fcmp olt <8 x double> %4949, %4952
  %4954 = select <8 x i1> %4953, <8 x double> %4949, <8 x double> %4952
  %4955 = or disjoint i64 %4948, 1
  %4956 = getelementptr inbounds nuw %struct.Piece, ptr %4942, i64 %4955, i32 35
  %4957 = load <8 x double>, ptr %4956, align 64, !tbaa !26
  %4958 = fcmp olt <8 x double> %4954, %4957
  %4959 = select <8 x i1> %4958, <8 x double> %4954, <8 x double> %4957
  %4960 = add nuw nsw i64 %4948, 2
  %4961 = add i64 %4950, 2
  %4962 = icmp eq i64 %4961, %4946
  br i1 %4962, label %4963, label %4947, !llvm.loop !117

4963:                                             ; preds = %4947, %4941
  %4964 = phi <8 x double> [ poison, %4941 ], [ %4959, %4947 ]
  %4965 = phi i64 [ 0, %4941 ], [ %4960, %4947 ]
  %4966 = phi <8 x double> [ splat (double 1.000000e+09), %4941 ], [ %4959, %4947 ]
  %4967 = icmp eq i64 %4943, 0
  br i1 %4967, label %4973, label %4968

4968:                                             ; preds = %4963
  %4969 = getelementptr inbounds nuw %struct.Piece, ptr %4942, i64 %4965, i32 35
  %4970 = load <8 x double>, ptr %4969, align 64, !tbaa !26
  %4971 = fcmp olt <8 x double> %4966, %4970
  %4972 = select <8 x i1> %4971, <8 x double> %4966, <8 x double> %4970
  br label %4973

4973:                                             ; preds = %4968, %4963, %4931
  %4974 = phi <8 x double> [ splat (double 1.000000e+09), %4931 ], [ %4964, %4963 ], [ %4972, %4968 ]
  %4975 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4974)
  %4976 = insertelement <8 x double> poison, double %4975, i64 0
  %4977 = shufflevector <8 x double> %4976, <8 x double> poison, <8 x i32> zeroinitializer
  %4978 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %4979 = select <8 x i1> %3725, <8 x double> %4978, <8 x double> %4977
  store <8 x double> %4979, ptr %212, align 64, !tbaa !26
  %4980 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %4981 = fcmp une <8 x double> %4980, zeroinitializer
  %4982 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %4983 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %4984 = fsub <8 x double> %4982, %4983
  %4985 = fcmp une <8 x double> %4980, splat (double 1.000000e+00)
  %4986 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %4987 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %4988 = fsub <8 x double> %4986, %4987
  %4989 = select <8 x i1> %4985, <8 x double> splat (double -1.000000e+00), <8 x double> %4988
  %4990 = fcmp une <8 x double> %4980, splat (double 2.000000e+00)
  %4991 = fsub <8 x double> %4979, %4987
  %4992 = select <8 x i1> %4990, <8 x double> %4989, <8 x double> %4991
  %4993 = fcmp une <8 x double> %4980, splat (double 3.000000e+00)
  %4994 = fsub <8 x double> %4984, %4987
  %4995 = select <8 x i1> %4993, <8 x double> %4992, <8 x double> %4994
  %4996 = fcmp une <8 x double> %4980, splat (double 4.000000e+00)
  %4997 = fsub <8 x double> %4987, %4984
  %4998 = select <8 x i1> %4996, <8 x double> %4995, <8 x double> %4997
  %4999 = fcmp oge <8 x double> %4998, splat (double 0xBEB0C6F7A0B5ED8D)
  %5000 = select <8 x i1> %4999, <8 x i1> %4981, <8 x i1> zeroinitializer
  %5001 = select <8 x i1> %5000, <8 x i64> %3665, <8 x i64> zeroinitializer
  %5002 = xor <8 x i64> %5001, splat (i64 -1)
  %5003 = and <8 x i64> %4938, %5002
  %5004 = load <8 x double>, ptr %126, align 64, !tbaa !26
  %5005 = icmp ne <8 x i64> %5003, zeroinitializer
  %5006 = select <8 x i1> %4981, <8 x i1> %5005, <8 x i1> zeroinitializer
  %5007 = select <8 x i1> %5006, <8 x double> splat (double 2.000000e+00), <8 x double> %5004
  store <8 x double> %5007, ptr %126, align 64, !tbaa !26
  %5008 = or <8 x i64> %5001, %4938
  %5009 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %5010 = fadd <8 x double> %5009, splat (double 1.000000e+00)
  %5011 = icmp eq <8 x i64> %5008, zeroinitializer
  %5012 = select <8 x i1> %5011, <8 x double> %5009, <8 x double> %5010
  store <8 x double> %5012, ptr %217, align 64, !tbaa !26
  %5013 = xor <8 x i64> %5008, %3665
  %5014 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %5015 = fcmp oeq <8 x double> %5014, zeroinitializer
  %5016 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %5017 = fcmp oeq <8 x double> %5016, zeroinitializer
  %5018 = select <8 x i1> %5017, <8 x i1> %5015, <8 x i1> zeroinitializer
  %5019 = select <8 x i1> %5018, <8 x i64> %5013, <8 x i64> zeroinitializer
  %5020 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %5021 = fmul <8 x double> %5020, splat (double 5.000000e-01)
  %5022 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %5023 = fadd <8 x double> %5022, %5021
  %5024 = fadd <8 x double> %5023, splat (double -4.000000e-03)
  %5025 = fcmp ult <8 x double> %4986, %5024
  %5026 = fsub <8 x double> %5022, %5021
  %5027 = fadd <8 x double> %5026, splat (double 4.000000e-03)
  %5028 = fcmp ole <8 x double> %4986, %5027
  %5029 = load <8 x i64>, ptr %143, align 64, !tbaa !26
  %5030 = select <8 x i1> %5028, <8 x i64> splat (i64 -1), <8 x i64> %5029
  %5031 = select <8 x i1> %5025, <8 x i64> %5030, <8 x i64> zeroinitializer
  %5032 = xor <8 x i64> %5031, %5029
  %5033 = and <8 x i64> %5032, %5019
  %5034 = and <8 x i64> %5031, %5019
  %5035 = xor <8 x i64> %5019, splat (i64 -1)
  %5036 = and <8 x i64> %5029, %5035
  %5037 = or <8 x i64> %5034, %5036
  store <8 x i64> %5037, ptr %143, align 64, !tbaa !26
  %5038 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %5039 = or <8 x i64> %5033, %5038
  store <8 x i64> %5039, ptr %153, align 64, !tbaa !26
  %5040 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5008)
  %5041 = icmp eq i64 %5040, 0
  br i1 %5041, label %5076, label %5042

5042:                                             ; preds = %4973
  %5043 = extractelement <8 x i64> %5008, i64 0
  %5044 = icmp eq i64 %5043, 0
  br i1 %5044, label %5046, label %5045

5045:                                             ; preds = %5042
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %5046

5046:                                             ; preds = %5045, %5042
  %5047 = extractelement <8 x i64> %5008, i64 1
  %5048 = icmp eq i64 %5047, 0
  br i1 %5048, label %5050, label %5049

5049:                                             ; preds = %5046
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %5050

5050:                                             ; preds = %5049, %5046
  %5051 = extractelement <8 x i64> %5008, i64 2
  %5052 = icmp eq i64 %5051, 0
  br i1 %5052, label %5054, label %5053

5053:                                             ; preds = %5050
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %5054

5054:                                             ; preds = %5053, %5050
  %5055 = extractelement <8 x i64> %5008, i64 3
  %5056 = icmp eq i64 %5055, 0
  br i1 %5056, label %5058, label %5057

5057:                                             ; preds = %5054
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %5058

5058:                                             ; preds = %5057, %5054
  %5059 = extractelement <8 x i64> %5008, i64 4
  %5060 = icmp eq i64 %5059, 0
  br i1 %5060, label %5062, label %5061

5061:                                             ; preds = %5058
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %5062

5062:                                             ; preds = %5061, %5058
  %5063 = extractelement <8 x i64> %5008, i64 5
  %5064 = icmp eq i64 %5063, 0
  br i1 %5064, label %5066, label %5065

5065:                                             ; preds = %5062
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %5066

5066:                                             ; preds = %5065, %5062
  %5067 = extractelement <8 x i64> %5008, i64 6
  %5068 = icmp eq i64 %5067, 0
  br i1 %5068, label %5070, label %5069

5069:                                             ; preds = %5066
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %5070

5070:                                             ; preds = %5069, %5066
  %5071 = extractelement <8 x i64> %5008, i64 7
  %5072 = icmp eq i64 %5071, 0
  br i1 %5072, label %5074, label %5073

5073:                                             ; preds = %5070
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %5074

5074:                                             ; preds = %5073, %5070
  %5075 = load <8 x double>, ptr %126, align 64, !tbaa !26
  br label %5076

5076:                                             ; preds = %5074, %4973
  %5077 = phi <8 x double> [ %5075, %5074 ], [ %5007, %4973 ]
  %5078 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %5079 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %5080 = fadd <8 x double> %5079, splat (double -1.000000e+00)
  %5081 = fcmp oge <8 x double> %5078, %5080
  %5082 = select <8 x i1> %5081, <8 x i64> %3665, <8 x i64> zeroinitializer
  %5083 = icmp eq <8 x i64> %5082, zeroinitializer
  %5084 = select <8 x i1> %5083, <8 x double> %5077, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %5084, ptr %126, align 64, !tbaa !26
  %5085 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5082)
  %5086 = icmp eq i64 %5085, 0
  br i1 %5086, label %515, label %5087

5087:                                             ; preds = %5076
  %5088 = extractelement <8 x i64> %5082, i64 0
  %5089 = icmp eq i64 %5088, 0
  br i1 %5089, label %5091, label %5090

5090:                                             ; preds = %5087
  store double 1.000000e+00, ptr %118, align 8, !tbaa !40
  br label %5091

5091:                                             ; preds = %5090, %5087
  %5092 = extractelement <8 x i64> %5082, i64 1
  %5093 = icmp eq i64 %5092, 0
  br i1 %5093, label %5095, label %5094

5094:                                             ; preds = %5091
  store double 1.000000e+00, ptr %269, align 8, !tbaa !40
  br label %5095

5095:                                             ; preds = %5094, %5091
  %5096 = extractelement <8 x i64> %5082, i64 2
  %5097 = icmp eq i64 %5096, 0
  br i1 %5097, label %5099, label %5098

5098:                                             ; preds = %5095
  store double 1.000000e+00, ptr %270, align 8, !tbaa !40
  br label %5099

5099:                                             ; preds = %5098, %5095
  %5100 = extractelement <8 x i64> %5082, i64 3
  %5101 = icmp eq i64 %5100, 0
  br i1 %5101, label %5103, label %5102

5102:                                             ; preds = %5099
  store double 1.000000e+00, ptr %271, align 8, !tbaa !40
  br label %5103

5103:                                             ; preds = %5102, %5099
  %5104 = extractelement <8 x i64> %5082, i64 4
  %5105 = icmp eq i64 %5104, 0
  br i1 %5105, label %5107, label %5106

5106:                                             ; preds = %5103
  store double 1.000000e+00, ptr %272, align 8, !tbaa !40
  br label %5107

5107:                                             ; preds = %5106, %5103
  %5108 = extractelement <8 x i64> %5082, i64 5
  %5109 = icmp eq i64 %5108, 0
  br i1 %5109, label %5111, label %5110

5110:                                             ; preds = %5107
  store double 1.000000e+00, ptr %273, align 8, !tbaa !40
  br label %5111

5111:                                             ; preds = %5110, %5107
  %5112 = extractelement <8 x i64> %5082, i64 6
  %5113 = icmp eq i64 %5112, 0
  br i1 %5113, label %5115, label %5114

5114:                                             ; preds = %5111
  store double 1.000000e+00, ptr %274, align 8, !tbaa !40
  br label %5115

5115:                                             ; preds = %5114, %5111
  %5116 = extractelement <8 x i64> %5082, i64 7
  %5117 = icmp eq i64 %5116, 0
  br i1 %5117, label %515, label %5118

5118:                                             ; preds = %5115
  store double 1.000000e+00, ptr %275, align 8, !tbaa !40
  br label %515

5119:                                             ; preds = %515, %520, %109
  %5120 = phi i64 [ 0, %109 ], [ 1, %520 ], [ 0, %515 ]
  ret i64 %5120
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
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 15) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !135
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
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
  br label %160

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

61:                                               ; preds = %545, %26
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
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %136 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %137 = getelementptr inbounds double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !40
  %138 = getelementptr inbounds double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !40
  %139 = getelementptr inbounds double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !40
  %140 = getelementptr inbounds double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !40
  %141 = getelementptr inbounds double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !40
  %142 = getelementptr inbounds double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !40
  %143 = getelementptr inbounds double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !40
  %144 = getelementptr inbounds double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !40
  %145 = getelementptr inbounds double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !40
  %146 = getelementptr inbounds double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %146, align 8, !tbaa !40
  %147 = getelementptr inbounds double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %147, align 8, !tbaa !40
  %148 = getelementptr inbounds double, ptr %135, i64 %6
  store double 0.000000e+00, ptr %148, align 8, !tbaa !40
  %149 = getelementptr inbounds double, ptr %136, i64 %6
  store double 0.000000e+00, ptr %149, align 8, !tbaa !40
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

160:                                              ; preds = %30, %545
  %161 = phi i64 [ 0, %30 ], [ %546, %545 ]
  %162 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %161
  %163 = load i64, ptr %33, align 64, !tbaa !16
  %164 = icmp sgt i64 %163, %6
  %165 = load i64, ptr %34, align 16, !tbaa !21
  %166 = load i64, ptr %35, align 8, !tbaa !22
  %167 = mul nsw i64 %163, %3
  %168 = select i1 %164, i64 %6, i64 0
  %169 = add nsw i64 %168, %167
  %170 = getelementptr inbounds nuw i8, ptr %162, i64 7552
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
  %180 = load double, ptr %179, align 8, !tbaa !40
  %181 = getelementptr <8 x double>, ptr %174, i64 %178
  store double %180, ptr %181, align 8, !tbaa !40
  %182 = or disjoint i64 %178, 1
  %183 = getelementptr double, ptr %173, i64 %182
  %184 = load double, ptr %183, align 8, !tbaa !40
  %185 = getelementptr <8 x double>, ptr %174, i64 %182
  store double %184, ptr %185, align 8, !tbaa !40
  %186 = add nuw nsw i64 %178, 2
  %187 = icmp eq i64 %186, 46
  br i1 %187, label %175, label %177, !llvm.loop !149

188:                                              ; preds = %175
  %189 = getelementptr inbounds nuw i8, ptr %162, i64 128
  %190 = getelementptr inbounds double, ptr %189, i64 %6
  store double 0.000000e+00, ptr %190, align 8, !tbaa !40
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
  %203 = getelementptr inbounds nuw i8, ptr %162, i64 7648
  %204 = load ptr, ptr %203, align 32, !tbaa !70
  %205 = getelementptr double, ptr %204, i64 %6
  %206 = getelementptr double, ptr %200, i64 %165
  %207 = getelementptr inbounds nuw i8, ptr %162, i64 7656
  %208 = load ptr, ptr %207, align 8, !tbaa !46
  %209 = getelementptr double, ptr %208, i64 %6
  %210 = shl i64 %165, 4
  %211 = getelementptr i8, ptr %200, i64 %210
  %212 = getelementptr inbounds nuw i8, ptr %162, i64 7664
  %213 = load ptr, ptr %212, align 16, !tbaa !119
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
  %224 = load double, ptr %223, align 8, !tbaa !40
  %225 = getelementptr <8 x double>, ptr %205, i64 %220
  store double %224, ptr %225, align 8, !tbaa !40
  %226 = getelementptr double, ptr %206, i64 %220
  %227 = load double, ptr %226, align 8, !tbaa !40
  %228 = getelementptr <8 x double>, ptr %209, i64 %220
  store double %227, ptr %228, align 8, !tbaa !40
  %229 = getelementptr double, ptr %211, i64 %220
  %230 = load double, ptr %229, align 8, !tbaa !40
  %231 = getelementptr <8 x double>, ptr %214, i64 %220
  store double %230, ptr %231, align 8, !tbaa !40
  br label %232

232:                                              ; preds = %222, %219, %191
  %233 = getelementptr inbounds nuw i8, ptr %162, i64 960
  %234 = getelementptr inbounds double, ptr %233, i64 %6
  %235 = load double, ptr %234, align 8, !tbaa !40
  %236 = load double, ptr %174, align 8, !tbaa !40
  %237 = icmp sgt i64 %197, 0
  br i1 %237, label %238, label %284

238:                                              ; preds = %232
  %239 = getelementptr double, ptr %200, i64 %194
  %240 = getelementptr inbounds nuw i8, ptr %162, i64 7672
  %241 = load ptr, ptr %240, align 8, !tbaa !35
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
  %251 = load double, ptr %250, align 8, !tbaa !40
  %252 = getelementptr <8 x double>, ptr %205, i64 %248
  store double %251, ptr %252, align 8, !tbaa !40
  %253 = getelementptr double, ptr %206, i64 %248
  %254 = load double, ptr %253, align 8, !tbaa !40
  %255 = getelementptr <8 x double>, ptr %209, i64 %248
  store double %254, ptr %255, align 8, !tbaa !40
  %256 = getelementptr double, ptr %211, i64 %248
  %257 = load double, ptr %256, align 8, !tbaa !40
  %258 = getelementptr <8 x double>, ptr %214, i64 %248
  store double %257, ptr %258, align 8, !tbaa !40
  %259 = or disjoint i64 %248, 1
  %260 = getelementptr inbounds nuw double, ptr %200, i64 %259
  %261 = load double, ptr %260, align 8, !tbaa !40
  %262 = getelementptr <8 x double>, ptr %205, i64 %259
  store double %261, ptr %262, align 8, !tbaa !40
  %263 = getelementptr double, ptr %206, i64 %259
  %264 = load double, ptr %263, align 8, !tbaa !40
  %265 = getelementptr <8 x double>, ptr %209, i64 %259
  store double %264, ptr %265, align 8, !tbaa !40
  %266 = getelementptr double, ptr %211, i64 %259
  %267 = load double, ptr %266, align 8, !tbaa !40
  %268 = getelementptr <8 x double>, ptr %214, i64 %259
  store double %267, ptr %268, align 8, !tbaa !40
  %269 = add nuw nsw i64 %248, 2
  %270 = add i64 %249, 2
  %271 = icmp eq i64 %270, %218
  br i1 %271, label %219, label %247, !llvm.loop !150

272:                                              ; preds = %293, %238
  %273 = phi i64 [ 0, %238 ], [ %311, %293 ]
  %274 = icmp eq i64 %243, 0
  br i1 %274, label %284, label %275

275:                                              ; preds = %272, %275
  %276 = phi i64 [ %281, %275 ], [ %273, %272 ]
  %277 = phi i64 [ %282, %275 ], [ 0, %272 ]
  %278 = getelementptr double, ptr %239, i64 %276
  %279 = load double, ptr %278, align 8, !tbaa !40
  %280 = getelementptr <8 x double>, ptr %242, i64 %276
  store double %279, ptr %280, align 8, !tbaa !40
  %281 = add nuw nsw i64 %276, 1
  %282 = add i64 %277, 1
  %283 = icmp eq i64 %282, %243
  br i1 %283, label %284, label %275, !llvm.loop !151

284:                                              ; preds = %272, %275, %232
  %285 = icmp ne i64 %171, 0
  %286 = icmp sgt i64 %165, -1
  %287 = select i1 %285, i1 %286, i1 false
  br i1 %287, label %288, label %314

288:                                              ; preds = %284
  %289 = fdiv double 1.000000e+00, %236
  %290 = getelementptr inbounds nuw i8, ptr %162, i64 7672
  %291 = load ptr, ptr %290, align 8, !tbaa !35
  %292 = getelementptr double, ptr %291, i64 %6
  br label %433

293:                                              ; preds = %293, %245
  %294 = phi i64 [ 0, %245 ], [ %311, %293 ]
  %295 = phi i64 [ 0, %245 ], [ %312, %293 ]
  %296 = getelementptr double, ptr %239, i64 %294
  %297 = load double, ptr %296, align 8, !tbaa !40
  %298 = getelementptr <8 x double>, ptr %242, i64 %294
  store double %297, ptr %298, align 8, !tbaa !40
  %299 = or disjoint i64 %294, 1
  %300 = getelementptr double, ptr %239, i64 %299
  %301 = load double, ptr %300, align 8, !tbaa !40
  %302 = getelementptr <8 x double>, ptr %242, i64 %299
  store double %301, ptr %302, align 8, !tbaa !40
  %303 = or disjoint i64 %294, 2
  %304 = getelementptr double, ptr %239, i64 %303
  %305 = load double, ptr %304, align 8, !tbaa !40
  %306 = getelementptr <8 x double>, ptr %242, i64 %303
  store double %305, ptr %306, align 8, !tbaa !40
  %307 = or disjoint i64 %294, 3
  %308 = getelementptr double, ptr %239, i64 %307
  %309 = load double, ptr %308, align 8, !tbaa !40
  %310 = getelementptr <8 x double>, ptr %242, i64 %307
  store double %309, ptr %310, align 8, !tbaa !40
  %311 = add nuw nsw i64 %294, 4
  %312 = add i64 %295, 4
  %313 = icmp eq i64 %312, %246
  br i1 %313, label %272, label %293, !llvm.loop !152

314:                                              ; preds = %433, %284
  %315 = getelementptr inbounds nuw i8, ptr %162, i64 2560
  %316 = getelementptr inbounds double, ptr %315, i64 %6
  %317 = load double, ptr %316, align 8, !tbaa !40
  %318 = getelementptr inbounds nuw i8, ptr %162, i64 2624
  %319 = getelementptr inbounds double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !40
  %321 = getelementptr inbounds nuw i8, ptr %162, i64 2688
  %322 = getelementptr inbounds double, ptr %321, i64 %6
  %323 = load double, ptr %322, align 8, !tbaa !40
  %324 = getelementptr inbounds nuw i8, ptr %162, i64 2752
  %325 = getelementptr inbounds double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !40
  %327 = tail call double @llvm.fmuladd.f64(double %236, double %326, double %323)
  %328 = tail call double @llvm.fmuladd.f64(double %236, double %327, double %320)
  %329 = tail call double @llvm.fmuladd.f64(double %236, double %328, double %317)
  %330 = getelementptr inbounds nuw i8, ptr %162, i64 832
  %331 = getelementptr inbounds double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !40
  %333 = getelementptr inbounds nuw i8, ptr %162, i64 1408
  %334 = getelementptr inbounds double, ptr %333, i64 %6
  %335 = load double, ptr %334, align 8, !tbaa !40
  %336 = getelementptr inbounds nuw i8, ptr %162, i64 1536
  %337 = getelementptr inbounds double, ptr %336, i64 %6
  %338 = load double, ptr %337, align 8, !tbaa !40
  %339 = fsub double %335, %338
  %340 = fmul double %332, %339
  %341 = getelementptr inbounds nuw i8, ptr %162, i64 2944
  %342 = getelementptr inbounds nuw i8, ptr %162, i64 3712
  %343 = getelementptr inbounds nuw i8, ptr %162, i64 4480
  %344 = getelementptr inbounds nuw i8, ptr %162, i64 896
  %345 = getelementptr inbounds double, ptr %344, i64 %6
  %346 = getelementptr inbounds nuw i8, ptr %162, i64 1024
  %347 = getelementptr inbounds double, ptr %346, i64 %6
  %348 = getelementptr double, ptr %341, i64 %6
  %349 = getelementptr i8, ptr %348, i64 320
  store double 0.000000e+00, ptr %349, align 8, !tbaa !40
  %350 = getelementptr i8, ptr %348, i64 384
  store double 0.000000e+00, ptr %350, align 8, !tbaa !40
  %351 = getelementptr i8, ptr %348, i64 448
  store double 0.000000e+00, ptr %351, align 8, !tbaa !40
  %352 = getelementptr i8, ptr %348, i64 512
  store double 0.000000e+00, ptr %352, align 8, !tbaa !40
  %353 = getelementptr i8, ptr %348, i64 640
  store double 0.000000e+00, ptr %353, align 8, !tbaa !40
  store double %236, ptr %348, align 8, !tbaa !40
  %354 = getelementptr inbounds nuw i8, ptr %162, i64 3008
  %355 = getelementptr inbounds double, ptr %354, i64 %6
  store double %335, ptr %355, align 8, !tbaa !40
  %356 = load double, ptr %345, align 8, !tbaa !40
  %357 = getelementptr inbounds nuw i8, ptr %162, i64 3072
  %358 = getelementptr inbounds double, ptr %357, i64 %6
  store double %356, ptr %358, align 8, !tbaa !40
  %359 = getelementptr inbounds nuw i8, ptr %162, i64 3136
  %360 = getelementptr inbounds double, ptr %359, i64 %6
  store double %340, ptr %360, align 8, !tbaa !40
  %361 = getelementptr inbounds nuw i8, ptr %162, i64 3520
  %362 = getelementptr inbounds double, ptr %361, i64 %6
  store double %235, ptr %362, align 8, !tbaa !40
  %363 = load double, ptr %347, align 8, !tbaa !40
  %364 = getelementptr inbounds nuw i8, ptr %162, i64 3200
  %365 = getelementptr inbounds double, ptr %364, i64 %6
  store double %363, ptr %365, align 8, !tbaa !40
  %366 = getelementptr inbounds nuw i8, ptr %162, i64 3648
  %367 = getelementptr inbounds double, ptr %366, i64 %6
  store double %329, ptr %367, align 8, !tbaa !40
  %368 = getelementptr double, ptr %342, i64 %6
  %369 = getelementptr i8, ptr %368, i64 320
  store double 0.000000e+00, ptr %369, align 8, !tbaa !40
  %370 = getelementptr i8, ptr %368, i64 384
  store double 0.000000e+00, ptr %370, align 8, !tbaa !40
  %371 = getelementptr i8, ptr %368, i64 448
  store double 0.000000e+00, ptr %371, align 8, !tbaa !40
  %372 = getelementptr i8, ptr %368, i64 512
  store double 0.000000e+00, ptr %372, align 8, !tbaa !40
  %373 = getelementptr i8, ptr %368, i64 640
  store double 0.000000e+00, ptr %373, align 8, !tbaa !40
  store double %236, ptr %368, align 8, !tbaa !40
  %374 = getelementptr inbounds nuw i8, ptr %162, i64 3776
  %375 = getelementptr inbounds double, ptr %374, i64 %6
  store double %335, ptr %375, align 8, !tbaa !40
  %376 = getelementptr inbounds nuw i8, ptr %162, i64 3840
  %377 = getelementptr inbounds double, ptr %376, i64 %6
  store double %356, ptr %377, align 8, !tbaa !40
  %378 = getelementptr inbounds nuw i8, ptr %162, i64 3904
  %379 = getelementptr inbounds double, ptr %378, i64 %6
  store double %340, ptr %379, align 8, !tbaa !40
  %380 = getelementptr inbounds nuw i8, ptr %162, i64 4288
  %381 = getelementptr inbounds double, ptr %380, i64 %6
  store double %235, ptr %381, align 8, !tbaa !40
  %382 = getelementptr inbounds nuw i8, ptr %162, i64 3968
  %383 = getelementptr inbounds double, ptr %382, i64 %6
  store double %363, ptr %383, align 8, !tbaa !40
  %384 = getelementptr inbounds nuw i8, ptr %162, i64 4416
  %385 = getelementptr inbounds double, ptr %384, i64 %6
  store double %329, ptr %385, align 8, !tbaa !40
  %386 = getelementptr double, ptr %343, i64 %6
  %387 = getelementptr i8, ptr %386, i64 320
  store double 0.000000e+00, ptr %387, align 8, !tbaa !40
  %388 = getelementptr i8, ptr %386, i64 384
  store double 0.000000e+00, ptr %388, align 8, !tbaa !40
  %389 = getelementptr i8, ptr %386, i64 448
  store double 0.000000e+00, ptr %389, align 8, !tbaa !40
  %390 = getelementptr i8, ptr %386, i64 512
  store double 0.000000e+00, ptr %390, align 8, !tbaa !40
  %391 = getelementptr i8, ptr %386, i64 640
  store double 0.000000e+00, ptr %391, align 8, !tbaa !40
  store double %236, ptr %386, align 8, !tbaa !40
  %392 = load double, ptr %334, align 8, !tbaa !40
  %393 = getelementptr inbounds nuw i8, ptr %162, i64 4544
  %394 = getelementptr inbounds double, ptr %393, i64 %6
  store double %392, ptr %394, align 8, !tbaa !40
  %395 = getelementptr inbounds nuw i8, ptr %162, i64 4608
  %396 = getelementptr inbounds double, ptr %395, i64 %6
  store double %356, ptr %396, align 8, !tbaa !40
  %397 = getelementptr inbounds nuw i8, ptr %162, i64 4672
  %398 = getelementptr inbounds double, ptr %397, i64 %6
  store double %340, ptr %398, align 8, !tbaa !40
  %399 = getelementptr inbounds nuw i8, ptr %162, i64 5056
  %400 = getelementptr inbounds double, ptr %399, i64 %6
  store double %235, ptr %400, align 8, !tbaa !40
  %401 = getelementptr inbounds nuw i8, ptr %162, i64 4736
  %402 = getelementptr inbounds double, ptr %401, i64 %6
  store double %363, ptr %402, align 8, !tbaa !40
  %403 = getelementptr inbounds nuw i8, ptr %162, i64 5184
  %404 = getelementptr inbounds double, ptr %403, i64 %6
  store double %329, ptr %404, align 8, !tbaa !40
  %405 = load double, ptr %345, align 8, !tbaa !40
  %406 = fadd double %340, %405
  %407 = getelementptr inbounds nuw i8, ptr %162, i64 1600
  %408 = getelementptr inbounds double, ptr %407, i64 %6
  store double %406, ptr %408, align 8, !tbaa !40
  %409 = getelementptr inbounds nuw i8, ptr %162, i64 5568
  %410 = getelementptr inbounds nuw i8, ptr %162, i64 6400
  %411 = getelementptr inbounds nuw i8, ptr %162, i64 6464
  %412 = getelementptr inbounds nuw i8, ptr %162, i64 7232
  %413 = getelementptr inbounds double, ptr %409, i64 %6
  store double %235, ptr %413, align 8, !tbaa !40
  %414 = getelementptr inbounds double, ptr %410, i64 %6
  store double %235, ptr %414, align 8, !tbaa !40
  %415 = getelementptr inbounds double, ptr %411, i64 %6
  store double %235, ptr %415, align 8, !tbaa !40
  %416 = getelementptr inbounds double, ptr %412, i64 %6
  store double %235, ptr %416, align 8, !tbaa !40
  %417 = getelementptr inbounds nuw i8, ptr %162, i64 5632
  %418 = getelementptr inbounds nuw i8, ptr %162, i64 5696
  %419 = getelementptr inbounds nuw i8, ptr %162, i64 7296
  %420 = getelementptr inbounds nuw i8, ptr %162, i64 7168
  %421 = getelementptr inbounds nuw i8, ptr %162, i64 6848
  %422 = getelementptr inbounds double, ptr %417, i64 %6
  store double 0.000000e+00, ptr %422, align 8, !tbaa !40
  %423 = getelementptr inbounds double, ptr %418, i64 %6
  store double 0.000000e+00, ptr %423, align 8, !tbaa !40
  %424 = getelementptr inbounds double, ptr %419, i64 %6
  store double 0.000000e+00, ptr %424, align 8, !tbaa !40
  %425 = getelementptr inbounds double, ptr %420, i64 %6
  store double 0.000000e+00, ptr %425, align 8, !tbaa !40
  %426 = getelementptr inbounds double, ptr %421, i64 %6
  store double 0.000000e+00, ptr %426, align 8, !tbaa !40
  %427 = getelementptr inbounds nuw i8, ptr %162, i64 7360
  %428 = getelementptr inbounds i64, ptr %427, i64 %6
  store i64 0, ptr %428, align 8, !tbaa !30
  %429 = getelementptr inbounds nuw i8, ptr %162, i64 7424
  %430 = getelementptr inbounds i64, ptr %429, i64 %6
  store i64 -1, ptr %430, align 8, !tbaa !30
  %431 = getelementptr inbounds nuw i8, ptr %162, i64 7488
  %432 = getelementptr inbounds i64, ptr %431, i64 %6
  store i64 0, ptr %432, align 8, !tbaa !30
  br i1 %201, label %455, label %471

433:                                              ; preds = %288, %433
  %434 = phi i64 [ 0, %288 ], [ %453, %433 ]
  %435 = icmp slt i64 %434, %171
  %436 = select i1 %435, double %289, double 1.000000e+00
  %437 = shl i64 %434, 8
  %438 = getelementptr i8, ptr %292, i64 %437
  %439 = load double, ptr %438, align 8, !tbaa !40
  %440 = fmul double %436, %439
  store double %440, ptr %438, align 8, !tbaa !40
  %441 = fdiv double %436, %236
  %442 = getelementptr i8, ptr %438, i64 64
  %443 = load double, ptr %442, align 8, !tbaa !40
  %444 = fmul double %441, %443
  store double %444, ptr %442, align 8, !tbaa !40
  %445 = fdiv double %441, %236
  %446 = getelementptr i8, ptr %438, i64 128
  %447 = load double, ptr %446, align 8, !tbaa !40
  %448 = fmul double %445, %447
  store double %448, ptr %446, align 8, !tbaa !40
  %449 = fdiv double %445, %236
  %450 = getelementptr i8, ptr %438, i64 192
  %451 = load double, ptr %450, align 8, !tbaa !40
  %452 = fmul double %449, %451
  store double %452, ptr %450, align 8, !tbaa !40
  %453 = add nuw nsw i64 %434, 1
  %454 = icmp slt i64 %434, %165
  br i1 %454, label %433, label %314, !llvm.loop !153

455:                                              ; preds = %314
  %456 = getelementptr inbounds nuw i8, ptr %162, i64 7576
  %457 = load ptr, ptr %456, align 8, !tbaa !55
  %458 = getelementptr double, ptr %457, i64 %6
  %459 = getelementptr inbounds nuw i8, ptr %162, i64 7568
  %460 = load ptr, ptr %459, align 16, !tbaa !44
  %461 = getelementptr double, ptr %460, i64 %6
  %462 = getelementptr inbounds nuw i8, ptr %162, i64 7560
  %463 = load ptr, ptr %462, align 8, !tbaa !56
  %464 = getelementptr double, ptr %463, i64 %6
  %465 = getelementptr inbounds nuw i8, ptr %162, i64 7600
  %466 = load ptr, ptr %465, align 16, !tbaa !45
  %467 = getelementptr double, ptr %466, i64 %6
  %468 = getelementptr inbounds nuw i8, ptr %162, i64 7592
  %469 = load ptr, ptr %468, align 8, !tbaa !63
  %470 = getelementptr double, ptr %469, i64 %6
  br label %484

471:                                              ; preds = %484, %314
  %472 = icmp slt i64 %166, 0
  br i1 %472, label %545, label %473

473:                                              ; preds = %471
  %474 = getelementptr inbounds nuw i8, ptr %162, i64 7744
  %475 = load ptr, ptr %474, align 64, !tbaa !58
  %476 = getelementptr double, ptr %475, i64 %6
  %477 = getelementptr inbounds nuw i8, ptr %162, i64 7736
  %478 = load ptr, ptr %477, align 8, !tbaa !47
  %479 = getelementptr double, ptr %478, i64 %6
  %480 = icmp eq i64 %166, 0
  br i1 %480, label %493, label %481

481:                                              ; preds = %473
  %482 = add nuw i64 %166, 1
  %483 = and i64 %482, -2
  br label %518

484:                                              ; preds = %455, %484
  %485 = phi i64 [ 0, %455 ], [ %491, %484 ]
  %486 = getelementptr <8 x double>, ptr %458, i64 %485
  store double %235, ptr %486, align 8, !tbaa !40
  %487 = getelementptr <8 x double>, ptr %461, i64 %485
  store double %235, ptr %487, align 8, !tbaa !40
  %488 = getelementptr <8 x double>, ptr %464, i64 %485
  store double %235, ptr %488, align 8, !tbaa !40
  %489 = getelementptr <8 x double>, ptr %467, i64 %485
  store double 1.000000e+00, ptr %489, align 8, !tbaa !40
  %490 = getelementptr <8 x double>, ptr %470, i64 %485
  store double 1.000000e+00, ptr %490, align 8, !tbaa !40
  %491 = add nuw nsw i64 %485, 1
  %492 = icmp eq i64 %491, %165
  br i1 %492, label %471, label %484, !llvm.loop !154

493:                                              ; preds = %532, %473
  %494 = phi i64 [ 0, %473 ], [ %536, %532 ]
  %495 = and i64 %166, 1
  %496 = icmp eq i64 %495, 0
  br i1 %496, label %497, label %505

497:                                              ; preds = %493
  %498 = icmp slt i64 %494, %166
  br i1 %498, label %501, label %499

499:                                              ; preds = %497
  %500 = load double, ptr %334, align 8, !tbaa !40
  br label %501

501:                                              ; preds = %499, %497
  %502 = phi double [ %500, %499 ], [ %329, %497 ]
  %503 = getelementptr <8 x double>, ptr %476, i64 %494
  store double %502, ptr %503, align 8, !tbaa !40
  %504 = getelementptr <8 x double>, ptr %479, i64 %494
  store double %502, ptr %504, align 8, !tbaa !40
  br label %505

505:                                              ; preds = %493, %501
  %506 = icmp eq i64 %166, 0
  br i1 %506, label %545, label %507

507:                                              ; preds = %505
  %508 = getelementptr inbounds nuw i8, ptr %162, i64 7696
  %509 = load ptr, ptr %508, align 16, !tbaa !60
  %510 = getelementptr double, ptr %509, i64 %6
  %511 = getelementptr inbounds nuw i8, ptr %162, i64 7688
  %512 = load ptr, ptr %511, align 8, !tbaa !48
  %513 = getelementptr double, ptr %512, i64 %6
  %514 = and i64 %166, 1
  %515 = icmp eq i64 %166, 1
  br i1 %515, label %539, label %516

516:                                              ; preds = %507
  %517 = and i64 %166, 9223372036854775806
  br label %549

518:                                              ; preds = %532, %481
  %519 = phi i64 [ 0, %481 ], [ %536, %532 ]
  %520 = phi i64 [ 0, %481 ], [ %537, %532 ]
  %521 = icmp slt i64 %519, %166
  br i1 %521, label %524, label %522

522:                                              ; preds = %518
  %523 = load double, ptr %334, align 8, !tbaa !40
  br label %524

524:                                              ; preds = %518, %522
  %525 = phi double [ %523, %522 ], [ %329, %518 ]
  %526 = getelementptr <8 x double>, ptr %476, i64 %519
  store double %525, ptr %526, align 8, !tbaa !40
  %527 = getelementptr <8 x double>, ptr %479, i64 %519
  store double %525, ptr %527, align 8, !tbaa !40
  %528 = or disjoint i64 %519, 1
  %529 = icmp slt i64 %528, %166
  br i1 %529, label %532, label %530

530:                                              ; preds = %524
  %531 = load double, ptr %334, align 8, !tbaa !40
  br label %532

532:                                              ; preds = %530, %524
  %533 = phi double [ %531, %530 ], [ %329, %524 ]
  %534 = getelementptr <8 x double>, ptr %476, i64 %528
  store double %533, ptr %534, align 8, !tbaa !40
  %535 = getelementptr <8 x double>, ptr %479, i64 %528
  store double %533, ptr %535, align 8, !tbaa !40
  %536 = add nuw i64 %519, 2
  %537 = add i64 %520, 2
  %538 = icmp eq i64 %537, %483
  br i1 %538, label %493, label %518, !llvm.loop !155

539:                                              ; preds = %549, %507
  %540 = phi i64 [ 0, %507 ], [ %557, %549 ]
  %541 = icmp eq i64 %514, 0
  br i1 %541, label %545, label %542

542:                                              ; preds = %539
  %543 = getelementptr <8 x double>, ptr %510, i64 %540
  store double %235, ptr %543, align 8, !tbaa !40
  %544 = getelementptr <8 x double>, ptr %513, i64 %540
  store double %235, ptr %544, align 8, !tbaa !40
  br label %545

545:                                              ; preds = %542, %539, %471, %505
  %546 = add nuw nsw i64 %161, 1
  %547 = load i64, ptr %27, align 8, !tbaa !20
  %548 = icmp slt i64 %546, %547
  br i1 %548, label %160, label %61, !llvm.loop !156

549:                                              ; preds = %549, %516
  %550 = phi i64 [ 0, %516 ], [ %557, %549 ]
  %551 = phi i64 [ 0, %516 ], [ %558, %549 ]
  %552 = getelementptr <8 x double>, ptr %510, i64 %550
  store double %235, ptr %552, align 8, !tbaa !40
  %553 = getelementptr <8 x double>, ptr %513, i64 %550
  store double %235, ptr %553, align 8, !tbaa !40
  %554 = or disjoint i64 %550, 1
  %555 = getelementptr <8 x double>, ptr %510, i64 %554
  store double %235, ptr %555, align 8, !tbaa !40
  %556 = getelementptr <8 x double>, ptr %513, i64 %554
  store double %235, ptr %556, align 8, !tbaa !40
  %557 = add nuw nsw i64 %550, 2
  %558 = add i64 %551, 2
  %559 = icmp eq i64 %558, %517
  br i1 %559, label %539, label %549, !llvm.loop !157
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 15) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !158
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !159
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
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 6080
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
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
!31 = !{!32, !6, i64 7552}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 2944, !7, i64 3712, !7, i64 4480, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !6, i64 7552, !11, i64 7560, !11, i64 7568, !11, i64 7576, !11, i64 7584, !11, i64 7592, !11, i64 7600, !11, i64 7608, !11, i64 7616, !11, i64 7624, !11, i64 7632, !11, i64 7640, !11, i64 7648, !11, i64 7656, !11, i64 7664, !11, i64 7672, !11, i64 7680, !11, i64 7688, !11, i64 7696, !11, i64 7704, !11, i64 7712, !11, i64 7720, !11, i64 7728, !11, i64 7736, !11, i64 7744}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!34 = !{!11, !11, i64 0}
!35 = !{!32, !11, i64 7672}
!36 = !{!17, !11, i64 6144}
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
