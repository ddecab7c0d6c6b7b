; Made by scripts/lanes.py from sources of sha256 69d0eea344ce552244d3a86fceef42837f5117ff75f260a4e95f708993d590fe.
@_ZL9state_key = internal unnamed_addr global ptr null, align 8

; Function Attrs: mustprogress nounwind
define ptr @NRT_Allocate(i64 noundef %0) local_unnamed_addr #0 {
  %2 = tail call ptr @malloc(i64 noundef %0) #7
  ret ptr %2
}

declare ptr @malloc(i64 noundef) local_unnamed_addr #1

; Function Attrs: mustprogress nounwind
define void @NRT_Free(ptr noundef %0) local_unnamed_addr #0 {
  tail call void @free(ptr noundef %0) #7
  ret void
}

declare void @free(ptr noundef) local_unnamed_addr #1

; Function Attrs: mustprogress nounwind
define noundef ptr @NRT_MemInfo_alloc_aligned(i64 noundef %0, i32 noundef %1) local_unnamed_addr #0 {
  %3 = add i64 %0, 48
  %4 = shl i32 %1, 1
  %5 = zext i32 %4 to i64
  %6 = add i64 %3, %5
  %7 = tail call ptr @malloc(i64 noundef %6) #7
  %8 = freeze ptr %7
  %9 = icmp eq ptr %8, null
  br i1 %9, label %24, label %10

10:                                               ; preds = %2
  %11 = getelementptr i8, ptr %8, i64 48
  %12 = ptrtoint ptr %11 to i64
  %13 = zext i32 %1 to i64
  %14 = add nsw i64 %13, -1
  %15 = add i64 %14, %12
  %16 = urem i64 %15, %13
  %17 = sub nuw i64 %15, %16
  %18 = inttoptr i64 %17 to ptr
  store i64 1, ptr %8, align 8, !tbaa !4
  %19 = getelementptr inbounds nuw i8, ptr %8, i64 8
  store ptr null, ptr %19, align 8, !tbaa !8
  %20 = getelementptr inbounds nuw i8, ptr %8, i64 16
  store ptr null, ptr %20, align 8, !tbaa !8
  %21 = getelementptr inbounds nuw i8, ptr %8, i64 24
  store ptr %18, ptr %21, align 8, !tbaa !8
  %22 = getelementptr inbounds nuw i8, ptr %8, i64 32
  store i64 %0, ptr %22, align 8, !tbaa !4
  %23 = getelementptr inbounds nuw i8, ptr %8, i64 40
  store ptr null, ptr %23, align 8, !tbaa !8
  br label %24

24:                                               ; preds = %2, %10
  ret ptr %8
}

; Function Attrs: mustprogress nounwind
define noundef ptr @NRT_MemInfo_alloc(i64 noundef %0) local_unnamed_addr #0 {
  %2 = add i64 %0, 80
  %3 = tail call ptr @malloc(i64 noundef %2) #7
  %4 = freeze ptr %3
  %5 = icmp eq ptr %4, null
  br i1 %5, label %17, label %6

6:                                                ; preds = %1
  %7 = getelementptr i8, ptr %4, i64 48
  %8 = ptrtoint ptr %7 to i64
  %9 = add i64 %8, 15
  %10 = and i64 %9, -16
  %11 = inttoptr i64 %10 to ptr
  store i64 1, ptr %4, align 8, !tbaa !4
  %12 = getelementptr inbounds nuw i8, ptr %4, i64 8
  store ptr null, ptr %12, align 8, !tbaa !8
  %13 = getelementptr inbounds nuw i8, ptr %4, i64 16
  store ptr null, ptr %13, align 8, !tbaa !8
  %14 = getelementptr inbounds nuw i8, ptr %4, i64 24
  store ptr %11, ptr %14, align 8, !tbaa !8
  %15 = getelementptr inbounds nuw i8, ptr %4, i64 32
  store i64 %0, ptr %15, align 8, !tbaa !4
  %16 = getelementptr inbounds nuw i8, ptr %4, i64 40
  store ptr null, ptr %16, align 8, !tbaa !8
  br label %17

17:                                               ; preds = %1, %6
  ret ptr %4
}

; Function Attrs: mustprogress nounwind
define ptr @NRT_MemInfo_new_varsize_dtor(i64 noundef %0, ptr noundef %1) local_unnamed_addr #0 {
  %3 = tail call ptr @malloc(i64 noundef 48) #7
  %4 = tail call ptr @malloc(i64 noundef %0) #7
  %5 = icmp ne ptr %3, null
  %6 = icmp ne ptr %4, null
  %7 = select i1 %5, i1 %6, i1 false
  br i1 %7, label %9, label %8

8:                                                ; preds = %2
  tail call void @free(ptr noundef %3) #7
  tail call void @free(ptr noundef %4) #7
  br label %15

9:                                                ; preds = %2
  store i64 1, ptr %3, align 8, !tbaa !4
  %10 = getelementptr inbounds nuw i8, ptr %3, i64 8
  store ptr @_ZL15give_back_apartPvmS_, ptr %10, align 8, !tbaa !8
  %11 = getelementptr inbounds nuw i8, ptr %3, i64 16
  store ptr %1, ptr %11, align 8, !tbaa !8
  %12 = getelementptr inbounds nuw i8, ptr %3, i64 24
  store ptr %4, ptr %12, align 8, !tbaa !8
  %13 = getelementptr inbounds nuw i8, ptr %3, i64 32
  store i64 %0, ptr %13, align 8, !tbaa !4
  %14 = getelementptr inbounds nuw i8, ptr %3, i64 40
  store ptr null, ptr %14, align 8, !tbaa !8
  br label %15

15:                                               ; preds = %9, %8
  %16 = phi ptr [ %3, %9 ], [ null, %8 ]
  ret ptr %16
}

; Function Attrs: mustprogress nounwind
define internal void @_ZL15give_back_apartPvmS_(ptr noundef %0, i64 noundef %1, ptr noundef readonly %2) #0 {
  %4 = icmp eq ptr %2, null
  br i1 %4, label %6, label %5

5:                                                ; preds = %3
  tail call void %2(ptr noundef %0, i64 noundef %1, ptr noundef null) #7
  br label %6

6:                                                ; preds = %5, %3
  tail call void @free(ptr noundef %0) #7
  ret void
}

; Function Attrs: mustprogress nounwind
define ptr @NRT_MemInfo_varsize_realloc(ptr nocapture noundef %0, i64 noundef %1) local_unnamed_addr #0 {
  %3 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %4 = load ptr, ptr %3, align 8, !tbaa !10
  %5 = tail call ptr @realloc(ptr noundef %4, i64 noundef %1) #7
  %6 = icmp eq ptr %5, null
  br i1 %6, label %9, label %7

7:                                                ; preds = %2
  store ptr %5, ptr %3, align 8, !tbaa !10
  %8 = getelementptr inbounds nuw i8, ptr %0, i64 32
  store i64 %1, ptr %8, align 8, !tbaa !12
  br label %9

9:                                                ; preds = %7, %2
  ret ptr %5
}

declare ptr @realloc(ptr noundef, i64 noundef) local_unnamed_addr #1

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: readwrite)
define void @NRT_incref(ptr noundef %0) local_unnamed_addr #2 {
  %2 = icmp eq ptr %0, null
  br i1 %2, label %6, label %3

3:                                                ; preds = %1
  %4 = load i64, ptr %0, align 8, !tbaa !13
  %5 = add i64 %4, 1
  store i64 %5, ptr %0, align 8, !tbaa !13
  br label %6

6:                                                ; preds = %3, %1
  ret void
}

; Function Attrs: mustprogress nounwind
define void @NRT_decref(ptr noundef %0) local_unnamed_addr #0 {
  %2 = icmp eq ptr %0, null
  br i1 %2, label %19, label %3

3:                                                ; preds = %1
  %4 = load i64, ptr %0, align 8, !tbaa !13
  %5 = add i64 %4, -1
  store i64 %5, ptr %0, align 8, !tbaa !13
  %6 = icmp eq i64 %5, 0
  br i1 %6, label %7, label %19

7:                                                ; preds = %3
  %8 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %9 = load ptr, ptr %8, align 8, !tbaa !14
  %10 = icmp eq ptr %9, null
  br i1 %10, label %18, label %11

11:                                               ; preds = %7
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %13 = load ptr, ptr %12, align 8, !tbaa !10
  %14 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %15 = load i64, ptr %14, align 8, !tbaa !12
  %16 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %17 = load ptr, ptr %16, align 8, !tbaa !15
  tail call void %9(ptr noundef %13, i64 noundef %15, ptr noundef %17) #7
  br label %18

18:                                               ; preds = %11, %7
  tail call void @free(ptr noundef nonnull %0) #7
  br label %19

19:                                               ; preds = %1, %3, %18
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(argmem: readwrite)
define range(i32 0, 2) i32 @numba_attempt_nocopy_reshape(i64 noundef %0, ptr nocapture noundef readonly %1, ptr nocapture noundef readonly %2, i64 noundef %3, ptr nocapture noundef readonly %4, ptr nocapture noundef writeonly %5, i64 noundef %6, i32 noundef %7) local_unnamed_addr #3 {
  %9 = icmp slt i64 %0, 1
  br i1 %9, label %10, label %30

10:                                               ; preds = %41, %8
  %11 = icmp sgt i64 %3, 0
  br i1 %11, label %12, label %68

12:                                               ; preds = %10
  %13 = and i64 %3, 3
  %14 = icmp eq i64 %13, 0
  br i1 %14, label %26, label %15

15:                                               ; preds = %12, %15
  %16 = phi i64 [ %19, %15 ], [ %3, %12 ]
  %17 = phi i64 [ %23, %15 ], [ %6, %12 ]
  %18 = phi i64 [ %24, %15 ], [ 0, %12 ]
  %19 = add nsw i64 %16, -1
  %20 = getelementptr inbounds nuw i64, ptr %5, i64 %19
  store i64 %17, ptr %20, align 8, !tbaa !4
  %21 = getelementptr inbounds nuw i64, ptr %4, i64 %19
  %22 = load i64, ptr %21, align 8, !tbaa !4
  %23 = mul nsw i64 %22, %17
  %24 = add i64 %18, 1
  %25 = icmp eq i64 %24, %13
  br i1 %25, label %26, label %15, !llvm.loop !16

26:                                               ; preds = %15, %12
  %27 = phi i64 [ %3, %12 ], [ %19, %15 ]
  %28 = phi i64 [ %6, %12 ], [ %23, %15 ]
  %29 = icmp ult i64 %3, 4
  br i1 %29, label %68, label %44

30:                                               ; preds = %8, %41
  %31 = phi i64 [ %33, %41 ], [ %0, %8 ]
  %32 = phi i64 [ %42, %41 ], [ %6, %8 ]
  %33 = add nsw i64 %31, -1
  %34 = getelementptr inbounds nuw i64, ptr %1, i64 %33
  %35 = load i64, ptr %34, align 8, !tbaa !4
  %36 = icmp eq i64 %35, 1
  br i1 %36, label %41, label %37

37:                                               ; preds = %30
  %38 = getelementptr inbounds nuw i64, ptr %2, i64 %33
  %39 = load i64, ptr %38, align 8, !tbaa !4
  %40 = icmp eq i64 %39, %32
  br i1 %40, label %41, label %68

41:                                               ; preds = %37, %30
  %42 = mul nsw i64 %35, %32
  %43 = icmp samesign ult i64 %31, 2
  br i1 %43, label %10, label %30, !llvm.loop !18

44:                                               ; preds = %26, %44
  %45 = phi i64 [ %62, %44 ], [ %27, %26 ]
  %46 = phi i64 [ %66, %44 ], [ %28, %26 ]
  %47 = add nsw i64 %45, -1
  %48 = getelementptr inbounds nuw i64, ptr %5, i64 %47
  store i64 %46, ptr %48, align 8, !tbaa !4
  %49 = getelementptr inbounds nuw i64, ptr %4, i64 %47
  %50 = load i64, ptr %49, align 8, !tbaa !4
  %51 = mul nsw i64 %50, %46
  %52 = add nsw i64 %45, -2
  %53 = getelementptr inbounds nuw i64, ptr %5, i64 %52
  store i64 %51, ptr %53, align 8, !tbaa !4
  %54 = getelementptr inbounds nuw i64, ptr %4, i64 %52
  %55 = load i64, ptr %54, align 8, !tbaa !4
  %56 = mul nsw i64 %55, %51
  %57 = add nsw i64 %45, -3
  %58 = getelementptr inbounds nuw i64, ptr %5, i64 %57
  store i64 %56, ptr %58, align 8, !tbaa !4
  %59 = getelementptr inbounds nuw i64, ptr %4, i64 %57
  %60 = load i64, ptr %59, align 8, !tbaa !4
  %61 = mul nsw i64 %60, %56
  %62 = add nsw i64 %45, -4
  %63 = getelementptr inbounds nuw i64, ptr %5, i64 %62
  store i64 %61, ptr %63, align 8, !tbaa !4
  %64 = getelementptr inbounds nuw i64, ptr %4, i64 %62
  %65 = load i64, ptr %64, align 8, !tbaa !4
  %66 = mul nsw i64 %65, %61
  %67 = icmp samesign ugt i64 %57, 1
  br i1 %67, label %44, label %68, !llvm.loop !20

68:                                               ; preds = %37, %26, %44, %10
  %69 = phi i32 [ 1, %10 ], [ 1, %44 ], [ 1, %26 ], [ 0, %37 ]
  ret i32 %69
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(none)
define void @PyErr_SetString(ptr nocapture noundef readnone %0, ptr nocapture noundef readnone %1) local_unnamed_addr #4 {
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(write, argmem: none, inaccessiblemem: none)
define void @chance_of_threads(ptr noundef %0) local_unnamed_addr #5 {
  store ptr %0, ptr @_ZL9state_key, align 8, !tbaa !8
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(none)
define noundef i64 @chance_bytes() local_unnamed_addr #4 {
  ret i64 2520
}

; Function Attrs: mustprogress nounwind
define ptr @numba_get_np_random_state() local_unnamed_addr #0 {
  %1 = load ptr, ptr @_ZL9state_key, align 8, !tbaa !8
  %2 = tail call ptr @PyThread_tss_get(ptr noundef %1) #7
  ret ptr %2
}

declare ptr @PyThread_tss_get(ptr noundef) local_unnamed_addr #1

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(argmem: write)
define void @numba_rnd_init(ptr nocapture noundef writeonly %0, i32 noundef %1) local_unnamed_addr #6 {
  %3 = getelementptr inbounds nuw i8, ptr %0, i64 4
  br label %8

4:                                                ; preds = %8
  store i32 624, ptr %0, align 8, !tbaa !21
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2500
  store i32 0, ptr %5, align 4, !tbaa !25
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 2504
  store double 0.000000e+00, ptr %6, align 8, !tbaa !26
  %7 = getelementptr inbounds nuw i8, ptr %0, i64 2512
  store i32 1, ptr %7, align 8, !tbaa !27
  ret void

8:                                                ; preds = %8, %2
  %9 = phi i64 [ 0, %2 ], [ %29, %8 ]
  %10 = phi i32 [ %1, %2 ], [ %31, %8 ]
  %11 = getelementptr inbounds nuw [624 x i32], ptr %3, i64 0, i64 %9
  store i32 %10, ptr %11, align 4, !tbaa !28
  %12 = lshr i32 %10, 30
  %13 = xor i32 %12, %10
  %14 = mul i32 %13, 1812433253
  %15 = add nuw nsw i64 %9, 1
  %16 = trunc nuw nsw i64 %15 to i32
  %17 = add i32 %14, %16
  %18 = getelementptr inbounds nuw [624 x i32], ptr %3, i64 0, i64 %15
  store i32 %17, ptr %18, align 4, !tbaa !28
  %19 = lshr i32 %17, 30
  %20 = xor i32 %19, %17
  %21 = mul i32 %20, 1812433253
  %22 = add nuw nsw i64 %9, 2
  %23 = trunc nuw nsw i64 %22 to i32
  %24 = add i32 %21, %23
  %25 = getelementptr inbounds nuw [624 x i32], ptr %3, i64 0, i64 %22
  store i32 %24, ptr %25, align 4, !tbaa !28
  %26 = lshr i32 %24, 30
  %27 = xor i32 %26, %24
  %28 = mul i32 %27, 1812433253
  %29 = add nuw nsw i64 %9, 3
  %30 = trunc nuw nsw i64 %29 to i32
  %31 = add i32 %28, %30
  %32 = icmp eq i64 %29, 624
  br i1 %32, label %4, label %8, !llvm.loop !29
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(argmem: readwrite)
define void @numba_rnd_shuffle(ptr nocapture noundef %0) local_unnamed_addr #3 {
  %2 = getelementptr inbounds nuw i8, ptr %0, i64 4
  br label %4

3:                                                ; preds = %4
  ret void

4:                                                ; preds = %1, %4
  %5 = phi i64 [ 0, %1 ], [ %14, %4 ]
  %6 = icmp samesign ult i64 %5, 227
  %7 = select i1 %6, i64 397, i64 4294967069
  %8 = add nuw i64 %7, %5
  %9 = and i64 %8, 4294967295
  %10 = getelementptr inbounds nuw i32, ptr %2, i64 %9
  %11 = load i32, ptr %10, align 4, !tbaa !28
  %12 = getelementptr inbounds nuw i32, ptr %2, i64 %5
  %13 = load i32, ptr %12, align 4, !tbaa !28
  %14 = add nuw nsw i64 %5, 1
  %15 = icmp eq i64 %14, 624
  %16 = and i64 %14, 4294967295
  %17 = select i1 %15, i64 0, i64 %16
  %18 = getelementptr inbounds nuw i32, ptr %2, i64 %17
  %19 = load i32, ptr %18, align 4, !tbaa !28
  %20 = and i32 %13, -2147483648
  %21 = and i32 %19, 2147483646
  %22 = or disjoint i32 %21, %20
  %23 = lshr exact i32 %22, 1
  %24 = and i32 %19, 1
  %25 = icmp eq i32 %24, 0
  %26 = select i1 %25, i32 0, i32 -1727483681
  %27 = xor i32 %26, %11
  %28 = xor i32 %27, %23
  store i32 %28, ptr %12, align 4, !tbaa !28
  %29 = icmp eq i64 %14, 624
  br i1 %29, label %3, label %4, !llvm.loop !30
}

; Function Attrs: mustprogress nounwind
define i64 @numba_poisson_ptrs(ptr nocapture noundef %0, double noundef %1) local_unnamed_addr #0 {
  %3 = tail call double @log(double noundef %1) #7
  %4 = tail call double @sqrt(double noundef %1) #7
  %5 = fmul double %4, 2.530000e+00
  %6 = fadd double %5, 9.310000e-01
  %7 = fmul double %6, 2.483000e-02
  %8 = fadd double %7, -5.900000e-02
  %9 = fadd double %6, -3.400000e+00
  %10 = fdiv double 1.132800e+00, %9
  %11 = fadd double %10, 1.123900e+00
  %12 = fadd double %6, -2.000000e+00
  %13 = fdiv double 3.622400e+00, %12
  %14 = fsub double 0x3FEDAFB7E90FF972, %13
  %15 = fmul double %8, 2.000000e+00
  br label %16

16:                                               ; preds = %104, %2
  %17 = tail call fastcc noundef double @_ZL11next_doubleP6Chance(ptr noundef %0) #8
  %18 = fadd double %17, -5.000000e-01
  %19 = tail call fastcc noundef double @_ZL11next_doubleP6Chance(ptr noundef %0) #8
  %20 = tail call double @fabs(double noundef %18) #7
  %21 = fsub double 5.000000e-01, %20
  %22 = fdiv double %15, %21
  %23 = fadd double %6, %22
  %24 = fmul double %18, %23
  %25 = fadd double %1, %24
  %26 = fadd double %25, 4.300000e-01
  %27 = tail call double @floor(double noundef %26) #7
  %28 = fptosi double %27 to i64
  %29 = fcmp ult double %21, 7.000000e-02
  %30 = fcmp ugt double %19, %14
  %31 = select i1 %29, i1 true, i1 %30
  br i1 %31, label %32, label %105

32:                                               ; preds = %16
  %33 = icmp slt i64 %28, 0
  br i1 %33, label %104, label %34

34:                                               ; preds = %32
  %35 = fcmp olt double %21, 1.300000e-02
  %36 = fcmp ogt double %19, %21
  %37 = and i1 %35, %36
  br i1 %37, label %104, label %38

38:                                               ; preds = %34
  %39 = tail call double @log(double noundef %19) #7
  %40 = tail call double @log(double noundef %11) #7
  %41 = fadd double %39, %40
  %42 = fmul double %21, %21
  %43 = fdiv double %8, %42
  %44 = fadd double %6, %43
  %45 = tail call double @log(double noundef %44) #7
  %46 = fsub double %41, %45
  %47 = uitofp nneg i64 %28 to double
  %48 = fmul double %3, %47
  %49 = fsub double %48, %1
  %50 = fadd double %47, 1.000000e+00
  %51 = fcmp oeq double %50, 1.000000e+00
  %52 = fcmp oeq double %50, 2.000000e+00
  %53 = or i1 %51, %52
  br i1 %53, label %100, label %54

54:                                               ; preds = %38
  %55 = fcmp ole double %50, 7.000000e+00
  %56 = fsub double 7.000000e+00, %50
  %57 = fptosi double %56 to i64
  %58 = select i1 %55, i64 %57, i64 0
  %59 = sitofp i64 %58 to double
  %60 = fadd double %50, %59
  %61 = fmul double %60, %60
  %62 = fdiv double 1.000000e+00, %61
  %63 = fmul double %62, 0x3FF6476701181F35
  %64 = fsub double 0x3FC6FE96381E0685, %63
  %65 = fmul double %62, %64
  %66 = fadd double %65, 0xBF9E4286CB0F5397
  %67 = fmul double %62, %66
  %68 = fadd double %67, 0x3F7A41A41A41A41A
  %69 = fmul double %62, %68
  %70 = fadd double %69, 0xBF5F6AB0D9993C7F
  %71 = fmul double %62, %70
  %72 = fadd double %71, 0x3F4B951E2B18FF24
  %73 = fmul double %62, %72
  %74 = fadd double %73, 0xBF43813813813813
  %75 = fmul double %62, %74
  %76 = fadd double %75, 0x3F4A01A01A01A01A
  %77 = fmul double %62, %76
  %78 = fadd double %77, 0xBF66C16C16C16C17
  %79 = fmul double %62, %78
  %80 = fadd double %79, 0x3FB5555555555555
  %81 = fdiv double %80, %60
  %82 = tail call double @log(double noundef 0x401921FB54442D18) #7
  %83 = fmul double %82, 5.000000e-01
  %84 = fadd double %81, %83
  %85 = fadd double %60, -5.000000e-01
  %86 = tail call double @log(double noundef %60) #7
  %87 = fmul double %85, %86
  %88 = fadd double %84, %87
  %89 = fsub double %88, %60
  %90 = icmp slt i64 %58, 1
  br i1 %90, label %100, label %91

91:                                               ; preds = %54, %91
  %92 = phi i64 [ %98, %91 ], [ 1, %54 ]
  %93 = phi double [ %97, %91 ], [ %89, %54 ]
  %94 = phi double [ %95, %91 ], [ %60, %54 ]
  %95 = fadd double %94, -1.000000e+00
  %96 = tail call double @log(double noundef %95) #7
  %97 = fsub double %93, %96
  %98 = add nuw i64 %92, 1
  %99 = icmp eq i64 %92, %58
  br i1 %99, label %100, label %91, !llvm.loop !31

100:                                              ; preds = %91, %38, %54
  %101 = phi double [ 0.000000e+00, %38 ], [ %89, %54 ], [ %97, %91 ]
  %102 = fsub double %49, %101
  %103 = fcmp ugt double %46, %102
  br i1 %103, label %104, label %105

104:                                              ; preds = %100, %32, %34
  br label %16, !llvm.loop !32

105:                                              ; preds = %16, %100
  ret i64 %28
}

declare double @log(double noundef) local_unnamed_addr #1

declare double @sqrt(double noundef) local_unnamed_addr #1

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(argmem: readwrite)
define internal fastcc noundef double @_ZL11next_doubleP6Chance(ptr nocapture noundef %0) unnamed_addr #3 {
  %2 = load i32, ptr %0, align 8, !tbaa !21
  %3 = icmp eq i32 %2, 624
  %4 = getelementptr inbounds nuw i8, ptr %0, i64 4
  br i1 %3, label %5, label %32

5:                                                ; preds = %1, %5
  %6 = phi i64 [ %15, %5 ], [ 0, %1 ]
  %7 = icmp samesign ult i64 %6, 227
  %8 = select i1 %7, i64 397, i64 4294967069
  %9 = add nuw nsw i64 %8, %6
  %10 = and i64 %9, 4294967295
  %11 = getelementptr inbounds nuw i32, ptr %4, i64 %10
  %12 = load i32, ptr %11, align 4, !tbaa !28
  %13 = getelementptr inbounds nuw i32, ptr %4, i64 %6
  %14 = load i32, ptr %13, align 4, !tbaa !28
  %15 = add nuw nsw i64 %6, 1
  %16 = icmp eq i64 %15, 624
  %17 = select i1 %16, i64 0, i64 %15
  %18 = getelementptr inbounds nuw i32, ptr %4, i64 %17
  %19 = load i32, ptr %18, align 4, !tbaa !28
  %20 = and i32 %14, -2147483648
  %21 = and i32 %19, 2147483646
  %22 = or disjoint i32 %21, %20
  %23 = lshr exact i32 %22, 1
  %24 = and i32 %19, 1
  %25 = icmp eq i32 %24, 0
  %26 = select i1 %25, i32 0, i32 -1727483681
  %27 = xor i32 %26, %12
  %28 = xor i32 %27, %23
  store i32 %28, ptr %13, align 4, !tbaa !28
  br i1 %16, label %29, label %5, !llvm.loop !30

29:                                               ; preds = %5
  %30 = getelementptr inbounds nuw i8, ptr %0, i64 4
  %31 = load i32, ptr %30, align 4, !tbaa !28
  br label %62

32:                                               ; preds = %1
  %33 = add nsw i32 %2, 1
  store i32 %33, ptr %0, align 8, !tbaa !21
  %34 = sext i32 %2 to i64
  %35 = getelementptr inbounds [624 x i32], ptr %4, i64 0, i64 %34
  %36 = load i32, ptr %35, align 4, !tbaa !28
  %37 = icmp eq i32 %33, 624
  br i1 %37, label %38, label %62

38:                                               ; preds = %32, %38
  %39 = phi i64 [ %48, %38 ], [ 0, %32 ]
  %40 = icmp samesign ult i64 %39, 227
  %41 = select i1 %40, i64 397, i64 4294967069
  %42 = add nuw nsw i64 %41, %39
  %43 = and i64 %42, 4294967295
  %44 = getelementptr inbounds nuw i32, ptr %4, i64 %43
  %45 = load i32, ptr %44, align 4, !tbaa !28
  %46 = getelementptr inbounds nuw i32, ptr %4, i64 %39
  %47 = load i32, ptr %46, align 4, !tbaa !28
  %48 = add nuw nsw i64 %39, 1
  %49 = icmp eq i64 %48, 624
  %50 = select i1 %49, i64 0, i64 %48
  %51 = getelementptr inbounds nuw i32, ptr %4, i64 %50
  %52 = load i32, ptr %51, align 4, !tbaa !28
  %53 = and i32 %47, -2147483648
  %54 = and i32 %52, 2147483646
  %55 = or disjoint i32 %54, %53
  %56 = lshr exact i32 %55, 1
  %57 = and i32 %52, 1
  %58 = icmp eq i32 %57, 0
  %59 = select i1 %58, i32 0, i32 -1727483681
  %60 = xor i32 %59, %45
  %61 = xor i32 %60, %56
  store i32 %61, ptr %46, align 4, !tbaa !28
  br i1 %49, label %62, label %38, !llvm.loop !30

62:                                               ; preds = %38, %29, %32
  %63 = phi i32 [ %36, %32 ], [ %31, %29 ], [ %36, %38 ]
  %64 = phi i32 [ %33, %32 ], [ 1, %29 ], [ 0, %38 ]
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 4
  %66 = lshr i32 %63, 11
  %67 = xor i32 %66, %63
  %68 = shl i32 %67, 7
  %69 = and i32 %68, -1658038656
  %70 = xor i32 %69, %67
  %71 = shl i32 %70, 15
  %72 = and i32 %71, -272236544
  %73 = xor i32 %72, %70
  %74 = lshr i32 %73, 23
  %75 = lshr i32 %73, 5
  %76 = xor i32 %74, %75
  %77 = uitofp nneg i32 %76 to double
  %78 = add nsw i32 %64, 1
  store i32 %78, ptr %0, align 8, !tbaa !21
  %79 = sext i32 %64 to i64
  %80 = getelementptr inbounds [624 x i32], ptr %65, i64 0, i64 %79
  %81 = load i32, ptr %80, align 4, !tbaa !28
  %82 = lshr i32 %81, 11
  %83 = xor i32 %82, %81
  %84 = shl i32 %83, 7
  %85 = and i32 %84, -1658038656
  %86 = xor i32 %85, %83
  %87 = shl i32 %86, 15
  %88 = and i32 %87, -272236544
  %89 = xor i32 %88, %86
  %90 = lshr i32 %89, 24
  %91 = lshr i32 %89, 6
  %92 = xor i32 %90, %91
  %93 = uitofp nneg i32 %92 to double
  %94 = fmul double %77, 0x4190000000000000
  %95 = fadd double %94, %93
  %96 = fmul double %95, 0x3CA0000000000000
  ret double %96
}

declare double @fabs(double noundef) local_unnamed_addr #1

declare double @floor(double noundef) local_unnamed_addr #1

attributes #0 = { nounwind }
attributes #1 = { nounwind }
attributes #2 = { nounwind }
attributes #3 = { nounwind }
attributes #4 = { nounwind }
attributes #5 = { nounwind }
attributes #6 = { nounwind }
attributes #7 = { nounwind }
attributes #8 = { nounwind }

!4 = !{!5, !5, i64 0}
!5 = !{!"long", !6, i64 0}
!6 = !{!"omnipotent char", !7, i64 0}
!7 = !{!"Simple C++ TBAA"}
!8 = !{!9, !9, i64 0}
!9 = !{!"any pointer", !6, i64 0}
!10 = !{!11, !9, i64 24}
!11 = !{!"_ZTS4Held", !5, i64 0, !9, i64 8, !9, i64 16, !9, i64 24, !5, i64 32, !9, i64 40}
!12 = !{!11, !5, i64 32}
!13 = !{!11, !5, i64 0}
!14 = !{!11, !9, i64 8}
!15 = !{!11, !9, i64 16}
!16 = distinct !{!16, !17}
!17 = !{!"llvm.loop.unroll.disable"}
!18 = distinct !{!18, !19}
!19 = !{!"llvm.loop.mustprogress"}
!20 = distinct !{!20, !19}
!21 = !{!22, !23, i64 0}
!22 = !{!"_ZTS6Chance", !23, i64 0, !6, i64 4, !23, i64 2500, !24, i64 2504, !23, i64 2512}
!23 = !{!"int", !6, i64 0}
!24 = !{!"double", !6, i64 0}
!25 = !{!22, !23, i64 2500}
!26 = !{!22, !24, i64 2504}
!27 = !{!22, !23, i64 2512}
!28 = !{!23, !23, i64 0}
!29 = distinct !{!29, !19}
!30 = distinct !{!30, !19}
!31 = distinct !{!31, !19}
!32 = distinct !{!32, !19}
