; Kernels of source sha256 77a7842f943a6903dfc62ed7e4c14783e13247d6f10b28d838d9f812f0907562
; Signatures {"bent": [["d", "d", "d"], "d"], "run": [[{"of": [["<f8", 2], ["<f8", 2], ["<f8", 2], ["|b1", 2], ["<f8", 2], ["<f8", 2], ["|b1", 2]]}, ["<f8", 3], ["<f8", 1], {"of": [["<f8", 2], ["<f8", 2], "d"]}, {"of": [["<f8", 1], ["<f8", 1], ["<f8", 1], ["<f8", 1], ["<f8", 1]]}, {"of": [["<f8", 1], {"of": ["d", "d"]}, "d", "d", "d"]}, {"of": [["<f8", 3], ["<f8", 4], ["<f8", 2], ["<f8", 2]]}], "0"], "futures": [[["<f8", 2], ["<f8", 1], ["<f8", 1], ["<f8", 1], {"of": ["d", "d", "d", "d", "d", "d", "d"]}, "q", ["<f8", 1]], "0"]}
@n0 = internal unnamed_addr global ptr null, align 8
@n1 = internal constant [1 x i8] zeroinitializer
@n2 = internal constant [1 x i8] zeroinitializer
@n3 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n1, i32 1, ptr @n2, ptr null, i32 0 }
@n4 = internal constant [1 x i8] zeroinitializer
@n5 = internal constant [1 x i8] zeroinitializer
@n6 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n4, i32 1, ptr @n5, ptr null, i32 0 }
@n7 = internal constant [1 x i8] zeroinitializer
@n8 = internal constant [1 x i8] zeroinitializer
@n9 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n7, i32 1, ptr @n8, ptr null, i32 0 }
@n10 = internal constant [1 x i8] zeroinitializer
@n11 = internal constant [1 x i8] zeroinitializer
@n12 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n10, i32 1, ptr @n11, ptr null, i32 0 }
@n13 = internal constant [1 x i8] zeroinitializer
@n14 = internal constant [1 x i8] zeroinitializer
@n15 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n13, i32 1, ptr @n14, ptr null, i32 0 }

declare ptr @malloc(i64 noundef) local_unnamed_addr #0

declare void @free(ptr noundef) local_unnamed_addr #0

define internal noundef ptr @NRT_MemInfo_alloc_aligned(i64 noundef %0, i32 noundef %1) local_unnamed_addr #0 {
  %3 = add i64 %0, 48
  %4 = shl i32 %1, 1
  %5 = zext i32 %4 to i64
  %6 = add i64 %3, %5
  %7 = tail call ptr @malloc(i64 noundef %6) #0
  %8 = freeze ptr %7
  %9 = icmp eq ptr %8, null
  br i1 %9, label %24, label %10

10:
  %11 = getelementptr i8, ptr %8, i64 48
  %12 = ptrtoint ptr %11 to i64
  %13 = zext i32 %1 to i64
  %14 = add nsw i64 %13, -1
  %15 = add i64 %14, %12
  %16 = urem i64 %15, %13
  %17 = sub nuw i64 %15, %16
  %18 = inttoptr i64 %17 to ptr
  store i64 1, ptr %8, align 8
  %19 = getelementptr inbounds nuw i8, ptr %8, i64 8
  store ptr null, ptr %19, align 8
  %20 = getelementptr inbounds nuw i8, ptr %8, i64 16
  store ptr null, ptr %20, align 8
  %21 = getelementptr inbounds nuw i8, ptr %8, i64 24
  store ptr %18, ptr %21, align 8
  %22 = getelementptr inbounds nuw i8, ptr %8, i64 32
  store i64 %0, ptr %22, align 8
  %23 = getelementptr inbounds nuw i8, ptr %8, i64 40
  store ptr null, ptr %23, align 8
  br label %24

24:
  ret ptr %8
}

define internal void @NRT_incref(ptr noundef %0) local_unnamed_addr #0 {
  %2 = icmp eq ptr %0, null
  br i1 %2, label %6, label %3

3:
  %4 = load i64, ptr %0, align 8
  %5 = add i64 %4, 1
  store i64 %5, ptr %0, align 8
  br label %6

6:
  ret void
}

define void @NRT_decref(ptr noundef %0) local_unnamed_addr #0 {
  %2 = icmp eq ptr %0, null
  br i1 %2, label %19, label %3

3:
  %4 = load i64, ptr %0, align 8
  %5 = add i64 %4, -1
  store i64 %5, ptr %0, align 8
  %6 = icmp eq i64 %5, 0
  br i1 %6, label %7, label %19

7:
  %8 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %9 = load ptr, ptr %8, align 8
  %10 = icmp eq ptr %9, null
  br i1 %10, label %18, label %11

11:
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %13 = load ptr, ptr %12, align 8
  %14 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %15 = load i64, ptr %14, align 8
  %16 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %17 = load ptr, ptr %16, align 8
  tail call void %9(ptr noundef %13, i64 noundef %15, ptr noundef %17) #0
  br label %18

18:
  tail call void @free(ptr noundef nonnull %0) #0
  br label %19

19:
  ret void
}

define internal range(i32 0, 2) i32 @numba_attempt_nocopy_reshape(i64 noundef %0, ptr noundef readonly captures(none) %1, ptr noundef readonly captures(none) %2, i64 noundef %3, ptr noundef readonly captures(none) %4, ptr noundef writeonly captures(none) %5, i64 noundef %6, i32 noundef %7) local_unnamed_addr #0 {
  %9 = icmp slt i64 %0, 1
  br i1 %9, label %10, label %30

10:
  %11 = icmp sgt i64 %3, 0
  br i1 %11, label %12, label %68

12:
  %13 = and i64 %3, 3
  %14 = icmp eq i64 %13, 0
  br i1 %14, label %26, label %15

15:
  %16 = phi i64 [ %19, %15 ], [ %3, %12 ]
  %17 = phi i64 [ %23, %15 ], [ %6, %12 ]
  %18 = phi i64 [ %24, %15 ], [ 0, %12 ]
  %19 = add nsw i64 %16, -1
  %20 = getelementptr inbounds nuw i64, ptr %5, i64 %19
  store i64 %17, ptr %20, align 8
  %21 = getelementptr inbounds nuw i64, ptr %4, i64 %19
  %22 = load i64, ptr %21, align 8
  %23 = mul nsw i64 %22, %17
  %24 = add i64 %18, 1
  %25 = icmp eq i64 %24, %13
  br i1 %25, label %26, label %15

26:
  %27 = phi i64 [ %3, %12 ], [ %19, %15 ]
  %28 = phi i64 [ %6, %12 ], [ %23, %15 ]
  %29 = icmp ult i64 %3, 4
  br i1 %29, label %68, label %44

30:
  %31 = phi i64 [ %33, %41 ], [ %0, %8 ]
  %32 = phi i64 [ %42, %41 ], [ %6, %8 ]
  %33 = add nsw i64 %31, -1
  %34 = getelementptr inbounds nuw i64, ptr %1, i64 %33
  %35 = load i64, ptr %34, align 8
  %36 = icmp eq i64 %35, 1
  br i1 %36, label %41, label %37

37:
  %38 = getelementptr inbounds nuw i64, ptr %2, i64 %33
  %39 = load i64, ptr %38, align 8
  %40 = icmp eq i64 %39, %32
  br i1 %40, label %41, label %68

41:
  %42 = mul nsw i64 %35, %32
  %43 = icmp samesign ult i64 %31, 2
  br i1 %43, label %10, label %30

44:
  %45 = phi i64 [ %62, %44 ], [ %27, %26 ]
  %46 = phi i64 [ %66, %44 ], [ %28, %26 ]
  %47 = add nsw i64 %45, -1
  %48 = getelementptr inbounds nuw i64, ptr %5, i64 %47
  store i64 %46, ptr %48, align 8
  %49 = getelementptr inbounds nuw i64, ptr %4, i64 %47
  %50 = load i64, ptr %49, align 8
  %51 = mul nsw i64 %50, %46
  %52 = add nsw i64 %45, -2
  %53 = getelementptr inbounds nuw i64, ptr %5, i64 %52
  store i64 %51, ptr %53, align 8
  %54 = getelementptr inbounds nuw i64, ptr %4, i64 %52
  %55 = load i64, ptr %54, align 8
  %56 = mul nsw i64 %55, %51
  %57 = add nsw i64 %45, -3
  %58 = getelementptr inbounds nuw i64, ptr %5, i64 %57
  store i64 %56, ptr %58, align 8
  %59 = getelementptr inbounds nuw i64, ptr %4, i64 %57
  %60 = load i64, ptr %59, align 8
  %61 = mul nsw i64 %60, %56
  %62 = add nsw i64 %45, -4
  %63 = getelementptr inbounds nuw i64, ptr %5, i64 %62
  store i64 %61, ptr %63, align 8
  %64 = getelementptr inbounds nuw i64, ptr %4, i64 %62
  %65 = load i64, ptr %64, align 8
  %66 = mul nsw i64 %65, %61
  %67 = icmp samesign ugt i64 %57, 1
  br i1 %67, label %44, label %68

68:
  %69 = phi i32 [ 1, %10 ], [ 1, %44 ], [ 1, %26 ], [ 0, %37 ]
  ret i32 %69
}

define void @chance_of_threads(ptr noundef %0) local_unnamed_addr #0 {
  store ptr %0, ptr @n0, align 8
  ret void
}

define noundef i64 @chance_bytes() local_unnamed_addr #0 {
  ret i64 2520
}

define internal ptr @numba_get_np_random_state() local_unnamed_addr #0 {
  %1 = load ptr, ptr @n0, align 8
  %2 = tail call ptr @PyThread_tss_get(ptr noundef %1) #0
  ret ptr %2
}

declare ptr @PyThread_tss_get(ptr noundef) local_unnamed_addr #0

define internal void @numba_rnd_init(ptr noundef writeonly captures(none) %0, i32 noundef %1) local_unnamed_addr #0 {
  %3 = getelementptr inbounds nuw i8, ptr %0, i64 4
  br label %8

4:
  store i32 624, ptr %0, align 8
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2500
  store i32 0, ptr %5, align 4
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 2504
  store double 0.000000e+00, ptr %6, align 8
  %7 = getelementptr inbounds nuw i8, ptr %0, i64 2512
  store i32 1, ptr %7, align 8
  ret void

8:
  %9 = phi i64 [ 0, %2 ], [ %29, %8 ]
  %10 = phi i32 [ %1, %2 ], [ %31, %8 ]
  %11 = getelementptr inbounds nuw [624 x i32], ptr %3, i64 0, i64 %9
  store i32 %10, ptr %11, align 4
  %12 = lshr i32 %10, 30
  %13 = xor i32 %12, %10
  %14 = mul i32 %13, 1812433253
  %15 = add nuw nsw i64 %9, 1
  %16 = trunc nuw nsw i64 %15 to i32
  %17 = add i32 %14, %16
  %18 = getelementptr inbounds nuw [624 x i32], ptr %3, i64 0, i64 %15
  store i32 %17, ptr %18, align 4
  %19 = lshr i32 %17, 30
  %20 = xor i32 %19, %17
  %21 = mul i32 %20, 1812433253
  %22 = add nuw nsw i64 %9, 2
  %23 = trunc nuw nsw i64 %22 to i32
  %24 = add i32 %21, %23
  %25 = getelementptr inbounds nuw [624 x i32], ptr %3, i64 0, i64 %22
  store i32 %24, ptr %25, align 4
  %26 = lshr i32 %24, 30
  %27 = xor i32 %26, %24
  %28 = mul i32 %27, 1812433253
  %29 = add nuw nsw i64 %9, 3
  %30 = trunc nuw nsw i64 %29 to i32
  %31 = add i32 %28, %30
  %32 = icmp eq i64 %29, 624
  br i1 %32, label %4, label %8
}

define internal void @numba_rnd_shuffle(ptr noundef captures(none) %0) local_unnamed_addr #0 {
  %2 = getelementptr inbounds nuw i8, ptr %0, i64 4
  br label %4

3:
  ret void

4:
  %5 = phi i64 [ 0, %1 ], [ %14, %4 ]
  %6 = icmp samesign ult i64 %5, 227
  %7 = select i1 %6, i64 397, i64 4294967069
  %8 = add nuw i64 %7, %5
  %9 = and i64 %8, 4294967295
  %10 = getelementptr inbounds nuw i32, ptr %2, i64 %9
  %11 = load i32, ptr %10, align 4
  %12 = getelementptr inbounds nuw i32, ptr %2, i64 %5
  %13 = load i32, ptr %12, align 4
  %14 = add nuw nsw i64 %5, 1
  %15 = icmp eq i64 %14, 624
  %16 = and i64 %14, 4294967295
  %17 = select i1 %15, i64 0, i64 %16
  %18 = getelementptr inbounds nuw i32, ptr %2, i64 %17
  %19 = load i32, ptr %18, align 4
  %20 = and i32 %13, -2147483648
  %21 = and i32 %19, 2147483646
  %22 = or disjoint i32 %21, %20
  %23 = lshr exact i32 %22, 1
  %24 = and i32 %19, 1
  %25 = icmp eq i32 %24, 0
  %26 = select i1 %25, i32 0, i32 -1727483681
  %27 = xor i32 %26, %11
  %28 = xor i32 %27, %23
  store i32 %28, ptr %12, align 4
  %29 = icmp eq i64 %14, 624
  br i1 %29, label %3, label %4
}

declare double @sqrt(double noundef) local_unnamed_addr #0

define internal noundef range(i32 -1, -2) i32 @n16(ptr noalias writeonly captures(none) initializes((0, 8)) %retptr, ptr noalias readnone captures(none) %excinfo, double %arg.level, double %arg.fresh, double %arg.bend) #1 {
common.ret:
  %.7 = fsub double %arg.level, %arg.fresh
  %.8 = fmul double %arg.bend, %.7
  %.12 = fdiv double %.8, 2.000000e+01
  %.13 = fadd double %.12, 1.000000e+00
  %.12.i = fcmp olt double %.13, 5.000000e-02
  %.13.i = select i1 %.12.i, double 5.000000e-02, double %.13
  store double %.13.i, ptr %retptr, align 8
  ret i32 0
}

define i32 @call_bent(ptr %given, ptr %answer) {
  %failed = alloca ptr, align 8
  %at0 = getelementptr i64, ptr %given, i64 0
  %in0 = load double, ptr %at0, align 8
  %at1 = getelementptr i64, ptr %given, i64 1
  %in1 = load double, ptr %at1, align 8
  %at2 = getelementptr i64, ptr %given, i64 2
  %in2 = load double, ptr %at2, align 8
  %status = call i32 @n16(ptr %answer, ptr %failed, double %in0, double %in1, double %in2)
  ret i32 %status
}

define internal range(i32 -1, -2) i32 @n17(ptr noalias writeonly captures(none) %retptr, ptr noalias writeonly captures(none) %excinfo, ptr %arg.days.0.0, ptr readnone captures(none) %arg.days.0.1, i64 %arg.days.0.2, i64 %arg.days.0.3, ptr readonly captures(none) %arg.days.0.4, i64 %arg.days.0.5.0, i64 %arg.days.0.5.1, i64 %arg.days.0.6.0, i64 %arg.days.0.6.1, ptr %arg.days.1.0, ptr readnone captures(none) %arg.days.1.1, i64 %arg.days.1.2, i64 %arg.days.1.3, ptr readonly captures(none) %arg.days.1.4, i64 %arg.days.1.5.0, i64 %arg.days.1.5.1, i64 %arg.days.1.6.0, i64 %arg.days.1.6.1, ptr %arg.days.2.0, ptr readnone captures(none) %arg.days.2.1, i64 %arg.days.2.2, i64 %arg.days.2.3, ptr readonly captures(none) %arg.days.2.4, i64 %arg.days.2.5.0, i64 %arg.days.2.5.1, i64 %arg.days.2.6.0, i64 %arg.days.2.6.1, ptr %arg.days.3.0, ptr readnone captures(none) %arg.days.3.1, i64 %arg.days.3.2, i64 %arg.days.3.3, ptr readonly captures(none) %arg.days.3.4, i64 %arg.days.3.5.0, i64 %arg.days.3.5.1, i64 %arg.days.3.6.0, i64 %arg.days.3.6.1, ptr %arg.days.4.0, ptr readnone captures(none) %arg.days.4.1, i64 %arg.days.4.2, i64 %arg.days.4.3, ptr readonly captures(none) %arg.days.4.4, i64 %arg.days.4.5.0, i64 %arg.days.4.5.1, i64 %arg.days.4.6.0, i64 %arg.days.4.6.1, ptr %arg.days.5.0, ptr readnone captures(none) %arg.days.5.1, i64 %arg.days.5.2, i64 %arg.days.5.3, ptr readonly captures(none) %arg.days.5.4, i64 %arg.days.5.5.0, i64 %arg.days.5.5.1, i64 %arg.days.5.6.0, i64 %arg.days.5.6.1, ptr %arg.days.6.0, ptr readnone captures(none) %arg.days.6.1, i64 %arg.days.6.2, i64 %arg.days.6.3, ptr readonly captures(none) %arg.days.6.4, i64 %arg.days.6.5.0, i64 %arg.days.6.5.1, i64 %arg.days.6.6.0, i64 %arg.days.6.6.1, ptr %arg.checks.0, ptr readnone captures(none) %arg.checks.1, i64 %arg.checks.2, i64 %arg.checks.3, ptr readonly captures(none) %arg.checks.4, i64 %arg.checks.5.0, i64 %arg.checks.5.1, i64 %arg.checks.5.2, i64 %arg.checks.6.0, i64 %arg.checks.6.1, i64 %arg.checks.6.2, ptr %arg.fresh.0, ptr readnone captures(none) %arg.fresh.1, i64 %arg.fresh.2, i64 %arg.fresh.3, ptr readonly captures(none) %arg.fresh.4, i64 %arg.fresh.5.0, i64 %arg.fresh.6.0, ptr %arg.start.0.0, ptr readnone captures(none) %arg.start.0.1, i64 %arg.start.0.2, i64 %arg.start.0.3, ptr readonly captures(none) %arg.start.0.4, i64 %arg.start.0.5.0, i64 %arg.start.0.5.1, i64 %arg.start.0.6.0, i64 %arg.start.0.6.1, ptr %arg.start.1.0, ptr readnone captures(none) %arg.start.1.1, i64 %arg.start.1.2, i64 %arg.start.1.3, ptr readonly captures(none) %arg.start.1.4, i64 %arg.start.1.5.0, i64 %arg.start.1.5.1, i64 %arg.start.1.6.0, i64 %arg.start.1.6.1, double %arg.start.2, ptr %arg.bank.0.0, ptr readnone captures(none) %arg.bank.0.1, i64 %arg.bank.0.2, i64 %arg.bank.0.3, ptr readonly captures(none) %arg.bank.0.4, i64 %arg.bank.0.5.0, i64 %arg.bank.0.6.0, ptr %arg.bank.1.0, ptr readnone captures(none) %arg.bank.1.1, i64 %arg.bank.1.2, i64 %arg.bank.1.3, ptr readonly captures(none) %arg.bank.1.4, i64 %arg.bank.1.5.0, i64 %arg.bank.1.6.0, ptr %arg.bank.2.0, ptr readnone captures(none) %arg.bank.2.1, i64 %arg.bank.2.2, i64 %arg.bank.2.3, ptr readonly captures(none) %arg.bank.2.4, i64 %arg.bank.2.5.0, i64 %arg.bank.2.6.0, ptr %arg.bank.3.0, ptr readnone captures(none) %arg.bank.3.1, i64 %arg.bank.3.2, i64 %arg.bank.3.3, ptr readonly captures(none) %arg.bank.3.4, i64 %arg.bank.3.5.0, i64 %arg.bank.3.6.0, ptr %arg.bank.4.0, ptr readnone captures(none) %arg.bank.4.1, i64 %arg.bank.4.2, i64 %arg.bank.4.3, ptr readonly captures(none) %arg.bank.4.4, i64 %arg.bank.4.5.0, i64 %arg.bank.4.6.0, ptr %arg.laws.0.0, ptr readnone captures(none) %arg.laws.0.1, i64 %arg.laws.0.2, i64 %arg.laws.0.3, ptr readonly captures(none) %arg.laws.0.4, i64 %arg.laws.0.5.0, i64 %arg.laws.0.6.0, double %arg.laws.1.0, double %arg.laws.1.1, double %arg.laws.2, double %arg.laws.3, double %arg.laws.4, ptr %arg.out.0.0, ptr readnone captures(none) %arg.out.0.1, i64 %arg.out.0.2, i64 %arg.out.0.3, ptr captures(none) %arg.out.0.4, i64 %arg.out.0.5.0, i64 %arg.out.0.5.1, i64 %arg.out.0.5.2, i64 %arg.out.0.6.0, i64 %arg.out.0.6.1, i64 %arg.out.0.6.2, ptr %arg.out.1.0, ptr readnone captures(none) %arg.out.1.1, i64 %arg.out.1.2, i64 %arg.out.1.3, ptr %arg.out.1.4, i64 %arg.out.1.5.0, i64 %arg.out.1.5.1, i64 %arg.out.1.5.2, i64 %arg.out.1.5.3, i64 %arg.out.1.6.0, i64 %arg.out.1.6.1, i64 %arg.out.1.6.2, i64 %arg.out.1.6.3, ptr %arg.out.2.0, ptr readnone captures(none) %arg.out.2.1, i64 %arg.out.2.2, i64 %arg.out.2.3, ptr %arg.out.2.4, i64 %arg.out.2.5.0, i64 %arg.out.2.5.1, i64 %arg.out.2.6.0, i64 %arg.out.2.6.1, ptr %arg.out.3.0, ptr readnone captures(none) %arg.out.3.1, i64 %arg.out.3.2, i64 %arg.out.3.3, ptr writeonly captures(none) %arg.out.3.4, i64 %arg.out.3.5.0, i64 %arg.out.3.5.1, i64 %arg.out.3.6.0, i64 %arg.out.3.6.1) {
B0:
  %arg.start.1.5.1.fr = freeze i64 %arg.start.1.5.1
  %.3154 = alloca ptr, align 8
  store ptr null, ptr %.3154, align 8
  %excinfo.7 = alloca ptr, align 8
  store ptr null, ptr %excinfo.7, align 8
  %.3739 = alloca ptr, align 8
  store ptr null, ptr %.3739, align 8
  %excinfo.11 = alloca ptr, align 8
  store ptr null, ptr %excinfo.11, align 8
  %.4942 = alloca double, align 8
  store double 0.000000e+00, ptr %.4942, align 8
  %excinfo.12 = alloca ptr, align 8
  store ptr null, ptr %excinfo.12, align 8
  %.5219 = alloca ptr, align 8
  store ptr null, ptr %.5219, align 8
  %excinfo.13 = alloca ptr, align 8
  store ptr null, ptr %excinfo.13, align 8
  %.5359 = alloca double, align 8
  store double 0.000000e+00, ptr %.5359, align 8
  %excinfo.14 = alloca ptr, align 8
  store ptr null, ptr %excinfo.14, align 8
  %.5920 = alloca double, align 8
  store double 0.000000e+00, ptr %.5920, align 8
  %excinfo.15 = alloca ptr, align 8
  store ptr null, ptr %excinfo.15, align 8
  tail call void @NRT_incref(ptr %arg.days.0.0)
  tail call void @NRT_incref(ptr %arg.days.1.0)
  tail call void @NRT_incref(ptr %arg.days.2.0)
  tail call void @NRT_incref(ptr %arg.days.3.0)
  tail call void @NRT_incref(ptr %arg.days.4.0)
  tail call void @NRT_incref(ptr %arg.days.5.0)
  tail call void @NRT_incref(ptr %arg.days.6.0)
  tail call void @NRT_incref(ptr %arg.checks.0)
  tail call void @NRT_incref(ptr %arg.fresh.0)
  tail call void @NRT_incref(ptr %arg.start.0.0)
  tail call void @NRT_incref(ptr %arg.start.1.0)
  tail call void @NRT_incref(ptr %arg.bank.0.0)
  tail call void @NRT_incref(ptr %arg.bank.1.0)
  tail call void @NRT_incref(ptr %arg.bank.2.0)
  tail call void @NRT_incref(ptr %arg.bank.3.0)
  tail call void @NRT_incref(ptr %arg.bank.4.0)
  tail call void @NRT_incref(ptr %arg.laws.0.0)
  tail call void @NRT_incref(ptr %arg.out.0.0)
  tail call void @NRT_incref(ptr %arg.out.1.0)
  tail call void @NRT_incref(ptr %arg.out.2.0)
  tail call void @NRT_incref(ptr %arg.out.3.0)
  %.7.i.i.i.i = tail call ptr @NRT_MemInfo_alloc_aligned(i64 56, i32 32)
  %.8.i.i.i.i = icmp eq ptr %.7.i.i.i.i, null
  br i1 %.8.i.i.i.i, label %B0.if.if, label %B0.endif

B276.loopexit:
  %scevgep = getelementptr i8, ptr %lsr.iv, i64 %19
  %scevgep330 = getelementptr i8, ptr %lsr.iv329, i64 %22
  %scevgep340 = getelementptr i8, ptr %lsr.iv339, i64 %24
  %scevgep354 = getelementptr i8, ptr %lsr.iv353, i64 %27
  %scevgep373 = getelementptr i8, ptr %lsr.iv372, i64 %27
  %scevgep379 = getelementptr i8, ptr %lsr.iv378, i64 %22
  %exitcond3104.not = icmp eq i64 %.1301, %arg.days.0.5.0
  br i1 %exitcond3104.not, label %B2180, label %B278.endif

B716.loopexit.loopexit.unr-lcssa:
  %0 = icmp eq i64 %xtraiter311, 0
  br i1 %0, label %B716.loopexit, label %B2100.epil.preheader

B2100.epil.preheader:
  %.613123582360.epil.init = phi i64 [ 0, %B2100.lr.ph ], [ %.6138.3, %B716.loopexit.loopexit.unr-lcssa ]
  %1 = shl i64 %.613123582360.epil.init, 3
  %scevgep391 = getelementptr i8, ptr %lsr.iv339, i64 %1
  br label %B2100.epil

B2100.epil:
  %epil.iter312 = phi i64 [ 0, %B2100.epil.preheader ], [ %epil.iter312.next, %B2100.epil ]
  %2 = shl nuw nsw i64 %epil.iter312, 3
  %scevgep392 = getelementptr i8, ptr %scevgep391, i64 %2
  %.6215.epil = load double, ptr %scevgep392, align 8
  %.6220.epil = fsub double %.6215.epil, %.6219
  store double %.6220.epil, ptr %scevgep392, align 8
  %epil.iter312.next = add i64 %epil.iter312, 1
  %epil.iter312.cmp.not = icmp eq i64 %xtraiter311, %epil.iter312.next
  br i1 %epil.iter312.cmp.not, label %B716.loopexit, label %B2100.epil

B716.loopexit:
  %exitcond3103.not = icmp eq i64 %arg.days.0.5.1, %.2531
  br i1 %exitcond3103.not, label %B276.loopexit, label %B718.endif

B780:
  %.265523282339 = phi i64 [ 0, %B780.lr.ph ], [ %.2662, %B1598.endif.endif ]
  %.2662 = add nuw nsw i64 %.265523282339, 1
  %.2752 = mul i64 %.265523282339, %arg.out.0.5.2
  %.2754 = getelementptr double, ptr %35, i64 %.2752
  tail call void @NRT_incref(ptr %arg.out.0.0)
  %.2863 = mul i64 %.265523282339, %factor.op.mul2492
  %.2865 = getelementptr double, ptr %36, i64 %.2863
  tail call void @NRT_incref(ptr %arg.out.1.0)
  %sunkaddr = mul i64 %.252423782464, 8
  %sunkaddr393 = getelementptr inbounds i8, ptr %invariant.gep2474, i64 %sunkaddr
  %.2978 = load double, ptr %sunkaddr393, align 8
  %sunkaddr394 = mul i64 %.252423782464, 8
  %sunkaddr395 = getelementptr i8, ptr %invariant.gep2476, i64 %sunkaddr394
  %.3034 = load double, ptr %sunkaddr395, align 8
  %sunkaddr396 = mul i64 %.129425082709, 8
  %sunkaddr397 = getelementptr i8, ptr %arg.fresh.4, i64 %sunkaddr396
  %.3072 = load double, ptr %sunkaddr397, align 8
  %3 = getelementptr double, ptr %arg.bank.0.4, i64 %.265523282339
  %.3103 = load double, ptr %3, align 8
  %4 = getelementptr double, ptr %arg.bank.1.4, i64 %.265523282339
  %.3134 = load double, ptr %4, align 8
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i)
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i48)
  store ptr null, ptr %.3154, align 8
  %.3176 = call i32 @n18(ptr nonnull %.3154, ptr nonnull %excinfo.7, ptr %arg.out.0.0, ptr %arg.out.0.1, i64 %arg.out.0.5.2, i64 %arg.out.0.3, ptr %.2754, i64 %arg.out.0.5.2, i64 %arg.out.0.6.2, ptr %arg.out.1.0, ptr %arg.out.1.1, i64 %factor.op.mul2492, i64 %arg.out.1.3, ptr %.2865, i64 %arg.out.1.5.2, i64 %arg.out.1.5.3, i64 %arg.out.1.6.2, i64 %arg.out.1.6.3, double %.2978, double %.3034, double %.3072, double %.3103, double %.3134, ptr %arg.laws.0.0, ptr %arg.laws.0.1, i64 %arg.laws.0.2, i64 %arg.laws.0.3, ptr %arg.laws.0.4, i64 %arg.laws.0.5.0, i64 %arg.laws.0.6.0, ptr nonnull %.7.i.i.i.i, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i, i64 7, i64 8, ptr nonnull %.7.i.i.i.i48, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i52, i64 7, i64 8)
  %cond258 = icmp eq i32 %.3176, 0
  br i1 %cond258, label %B780.endif, label %B780.if.if

B128.i:
  %5 = icmp ult i64 %16, 2305843009213693952
  tail call void @NRT_incref(ptr %arg.checks.0)
  tail call void @NRT_incref(ptr %arg.start.1.0)
  br i1 %5, label %B996.endif.endif.endif, label %B996.endif.endif.if

B1088:
  %6 = getelementptr double, ptr %38, i64 %.265523282339
  %.3854 = load double, ptr %6, align 8
  %.3858 = fmul double %arg.laws.2, %.3854
  %7 = getelementptr double, ptr %arg.bank.4.4, i64 %.265523282339
  %.3891 = load double, ptr %7, align 8
  %.3892 = fmul double %.3860, %.3891
  %.3893 = fadd double %.3858, %.3892
  store double %.3893, ptr %6, align 8
  %sunkaddr398 = mul i64 %.252423782464, 8
  %sunkaddr399 = getelementptr inbounds i8, ptr %invariant.gep2478, i64 %sunkaddr398
  %.4003 = load double, ptr %sunkaddr399, align 8
  %.4062 = fcmp ord double %.4003, 0.000000e+00
  br i1 %.4062, label %.4318, label %B1598

B1302:
  %.4582 = getelementptr i8, ptr %.2754, i64 48
  %.4583 = load double, ptr %.4582, align 8
  %.4584 = fadd double %.4583, 1.000000e+00
  %.4614 = load double, ptr %.2754, align 8
  store double %.4584, ptr %.6.i.i.i, align 8
  %sunkaddr400 = getelementptr i8, ptr %.6.i.i.i, i64 40
  store double 1.000000e+00, ptr %sunkaddr400, align 8
  %sunkaddr401 = getelementptr i8, ptr %.6.i.i.i, i64 48
  store double %.4614, ptr %sunkaddr401, align 8
  %.4733 = getelementptr i8, ptr %.2754, i64 40
  %.4734 = load double, ptr %.4733, align 8
  %.4764 = load double, ptr %.4582, align 8
  %.4794 = load double, ptr %.2754, align 8
  %.4795 = fmul double %.4764, %.4794
  %.4796 = fadd double %.4734, %.4795
  %.4798 = fsub double %.4450, %.4796
  br label %B1502

B1502:
  %gap.2.4 = phi double [ %.4798, %B1302 ], [ %.4450, %.4318 ]
  %sunkaddr402 = mul i64 %.265523282339, 8
  %sunkaddr403 = getelementptr i8, ptr %38, i64 %sunkaddr402
  %.4861 = load double, ptr %sunkaddr403, align 8
  %sunkaddr404 = mul i64 %.252423782464, 8
  %sunkaddr405 = getelementptr inbounds i8, ptr %invariant.gep2482, i64 %sunkaddr404
  %.4916 = load double, ptr %sunkaddr405, align 8
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i62)
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i48)
  store double 0.000000e+00, ptr %.4942, align 8
  %.4964 = call i32 @n19(ptr nonnull %.4942, ptr nonnull %excinfo.12, ptr %arg.out.0.0, ptr %arg.out.0.1, i64 %arg.out.0.5.2, i64 %arg.out.0.3, ptr nonnull %.2754, i64 %arg.out.0.5.2, i64 %arg.out.0.6.2, ptr %arg.out.1.0, ptr %arg.out.1.1, i64 %factor.op.mul2492, i64 %arg.out.1.3, ptr %.2865, i64 %arg.out.1.5.2, i64 %arg.out.1.5.3, i64 %arg.out.1.6.2, i64 %arg.out.1.6.3, double %gap.2.4, double %.4916, ptr nonnull %.7.i.i.i.i, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i, i64 7, i64 8, double %arg.laws.1.0, double %arg.laws.1.1, ptr nonnull %.7.i.i.i.i62, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i66, i64 7, i64 8, ptr nonnull %.7.i.i.i.i48, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i52, i64 7, i64 8)
  %cond31 = icmp eq i32 %.4964, 0
  br i1 %cond31, label %B1502.endif, label %B1502.if.if

B1598:
  %sunkaddr406 = mul i64 %.252423782464, 8
  %sunkaddr407 = getelementptr inbounds i8, ptr %invariant.gep2484, i64 %sunkaddr406
  %.5102 = load double, ptr %sunkaddr407, align 8
  %sunkaddr408 = getelementptr inbounds i8, ptr %invariant.gep2486, i64 %.252423782464
  %.5158 = load i8, ptr %sunkaddr408, align 1
  %.5161 = icmp ne i8 %.5158, 0
  %sunkaddr409 = mul i64 %.129425082709, 8
  %sunkaddr410 = getelementptr i8, ptr %arg.fresh.4, i64 %sunkaddr409
  %.5202 = load double, ptr %sunkaddr410, align 8
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i)
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i48)
  store ptr null, ptr %.5219, align 8
  %.5229 = zext i1 %.5161 to i8
  %.5236 = call i32 @n20(ptr nonnull %.5219, ptr nonnull %excinfo.13, ptr %arg.out.0.0, ptr %arg.out.0.1, i64 %arg.out.0.5.2, i64 %arg.out.0.3, ptr %.2754, i64 %arg.out.0.5.2, i64 %arg.out.0.6.2, ptr %arg.out.1.0, ptr %arg.out.1.1, i64 %factor.op.mul2492, i64 %arg.out.1.3, ptr %.2865, i64 %arg.out.1.5.2, i64 %arg.out.1.5.3, i64 %arg.out.1.6.2, i64 %arg.out.1.6.3, double %.5102, i8 %.5229, double %.5202, double %arg.start.2, ptr nonnull %.7.i.i.i.i, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i, i64 7, i64 8, ptr nonnull %.7.i.i.i.i48, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i52, i64 7, i64 8)
  %cond259 = icmp eq i32 %.5236, 0
  br i1 %cond259, label %B1598.endif.endif, label %B1598.endif.if.if

B1706:
  tail call void @NRT_incref(ptr %arg.out.2.0)
  store double 0.000000e+00, ptr %.5359, align 8
  %.5365 = call i32 @n21(ptr nonnull %.5359, ptr nonnull %excinfo.14, ptr %arg.out.2.0, ptr %arg.out.2.1, i64 %arg.out.2.5.1, i64 %arg.out.2.3, ptr %38, i64 %arg.out.2.5.1, i64 %arg.out.2.6.1)
  %.5375 = load double, ptr %.5359, align 8
  %cond32 = icmp eq i32 %.5365, 0
  br i1 %cond32, label %B1706.endif.endif, label %B1706.if.if

B1824:
  %lsr.iv380 = phi ptr [ %lsr.iv378, %B1824.lr.ph ], [ %scevgep381, %B1824.endif ]
  %lsr.iv376 = phi ptr [ %lsr.iv, %B1824.lr.ph ], [ %scevgep377, %B1824.endif ]
  %total.2.22352 = phi double [ 0.000000e+00, %B1824.lr.ph ], [ %.5583, %B1824.endif ]
  %chance.2.22351 = phi double [ 0.000000e+00, %B1824.lr.ph ], [ %.5962, %B1824.endif ]
  %.549223472349 = phi i64 [ 0, %B1824.lr.ph ], [ %.5499, %B1824.endif ]
  %8 = shl i64 %.549223472349, 3
  %scevgep383 = getelementptr i8, ptr %lsr.iv339, i64 %8
  %.5576 = load double, ptr %scevgep383, align 8
  tail call void @NRT_incref(ptr %arg.out.0.0)
  tail call void @NRT_incref(ptr %arg.out.1.0)
  %sunkaddr411 = mul i64 %.252423782464, 8
  %sunkaddr412 = getelementptr i8, ptr %invariant.gep2476, i64 %sunkaddr411
  %sunkaddr413 = getelementptr i8, ptr %sunkaddr412, i64 8
  %.5854 = load double, ptr %sunkaddr413, align 8
  %sunkaddr414 = mul i64 %.129425082709, 8
  %sunkaddr415 = getelementptr i8, ptr %arg.fresh.4, i64 %sunkaddr414
  %.5887 = load double, ptr %sunkaddr415, align 8
  %9 = shl i64 %.549223472349, 3
  %scevgep382 = getelementptr i8, ptr %arg.bank.0.4, i64 %9
  %.5917 = load double, ptr %scevgep382, align 8
  %.5932 = call i32 @n22(ptr nonnull %.5920, ptr nonnull %excinfo.15, ptr %arg.out.0.0, ptr %arg.out.0.1, i64 %arg.out.0.5.2, i64 %arg.out.0.3, ptr %lsr.iv380, i64 %arg.out.0.5.2, i64 %arg.out.0.6.2, ptr %arg.out.1.0, ptr %arg.out.1.1, i64 %factor.op.mul2492, i64 %arg.out.1.3, ptr %lsr.iv376, i64 %arg.out.1.5.2, i64 %arg.out.1.5.3, i64 %arg.out.1.6.2, i64 %arg.out.1.6.3, double %.5854, double %.5887, double %.5917, double %arg.laws.4, ptr nonnull %.7.i.i.i.i, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i, i64 7, i64 8)
  %cond = icmp eq i32 %.5932, 0
  br i1 %cond, label %B1824.endif, label %B1824.if.if

B2100.lr.ph:
  %10 = icmp ult i64 %arg.bank.0.5.0, 4
  %.5975 = fdiv double %.5962, %.5583
  %11 = getelementptr double, ptr %39, i64 %.252423782464
  store double %.5975, ptr %11, align 8
  %.6217 = tail call double @llvm.log.f64(double %.5583)
  %.6219 = fadd double %.5375, %.6217
  br i1 %10, label %B2100.epil.preheader, label %B2100.preheader

B2100.preheader:
  br label %B2100

B2100:
  %.613123582360 = phi i64 [ %.6138.3, %B2100 ], [ 0, %B2100.preheader ]
  %12 = shl i64 %.613123582360, 3
  %scevgep390 = getelementptr i8, ptr %lsr.iv339, i64 %12
  %.6215 = load double, ptr %scevgep390, align 8
  %.6220 = fsub double %.6215, %.6219
  store double %.6220, ptr %scevgep390, align 8
  %13 = shl i64 %.613123582360, 3
  %scevgep388 = getelementptr i8, ptr %lsr.iv339, i64 %13
  %scevgep389 = getelementptr i8, ptr %scevgep388, i64 8
  %.6215.1 = load double, ptr %scevgep389, align 8
  %.6220.1 = fsub double %.6215.1, %.6219
  store double %.6220.1, ptr %scevgep389, align 8
  %14 = shl i64 %.613123582360, 3
  %scevgep386 = getelementptr i8, ptr %lsr.iv339, i64 %14
  %scevgep387 = getelementptr i8, ptr %scevgep386, i64 16
  %.6215.2 = load double, ptr %scevgep387, align 8
  %.6220.2 = fsub double %.6215.2, %.6219
  store double %.6220.2, ptr %scevgep387, align 8
  %.6138.3 = add nuw nsw i64 %.613123582360, 4
  %15 = shl i64 %.613123582360, 3
  %scevgep384 = getelementptr i8, ptr %lsr.iv339, i64 %15
  %scevgep385 = getelementptr i8, ptr %scevgep384, i64 24
  %.6215.3 = load double, ptr %scevgep385, align 8
  %.6220.3 = fsub double %.6215.3, %.6219
  store double %.6220.3, ptr %scevgep385, align 8
  %niter316.ncmp.3 = icmp eq i64 %unroll_iter315, %.6138.3
  br i1 %niter316.ncmp.3, label %B716.loopexit.loopexit.unr-lcssa, label %B2100

common.ret:
  %common.ret.op = phi i32 [ 0, %B2180 ], [ 1, %B0.if.if ], [ 1, %B0.endif.if.if ], [ 1, %B0.endif.endif.if.if ], [ %.5932, %B1824.if.if ], [ 1, %B1706.if.if ], [ %.5236, %B1598.endif.if.if ], [ %.3176, %B780.if.if ], [ 1, %B1502.if.if ], [ 1, %for.end.if.if ], [ 1, %B996.endif.endif.if ], [ 1, %B996.endif.endif.endif.if.if ]
  ret i32 %common.ret.op

B2180:
  tail call void @NRT_decref(ptr %arg.out.2.0)
  tail call void @NRT_decref(ptr %arg.days.1.0)
  tail call void @NRT_decref(ptr %arg.laws.0.0)
  tail call void @NRT_decref(ptr %arg.out.3.0)
  tail call void @NRT_decref(ptr %arg.start.0.0)
  tail call void @NRT_decref(ptr %arg.start.1.0)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i)
  tail call void @NRT_decref(ptr %arg.days.2.0)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i48)
  tail call void @NRT_decref(ptr %arg.bank.1.0)
  tail call void @NRT_decref(ptr %arg.days.4.0)
  tail call void @NRT_decref(ptr %arg.days.5.0)
  tail call void @NRT_decref(ptr %arg.out.0.0)
  tail call void @NRT_decref(ptr %arg.bank.4.0)
  tail call void @NRT_decref(ptr %arg.days.0.0)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i62)
  tail call void @NRT_decref(ptr %arg.fresh.0)
  tail call void @NRT_decref(ptr %arg.bank.2.0)
  tail call void @NRT_decref(ptr %arg.bank.3.0)
  tail call void @NRT_decref(ptr %arg.days.3.0)
  tail call void @NRT_decref(ptr %arg.out.1.0)
  tail call void @NRT_decref(ptr %arg.checks.0)
  tail call void @NRT_decref(ptr %arg.days.6.0)
  tail call void @NRT_decref(ptr %arg.bank.0.0)
  store ptr null, ptr %retptr, align 8
  br label %common.ret

B0.endif:
  %.5.i.i.i = getelementptr i8, ptr %.7.i.i.i.i, i64 24
  %.6.i.i.i = load ptr, ptr %.5.i.i.i, align 8
  tail call void @llvm.memset.p0.i64(ptr noundef nonnull align 1 dereferenceable(56) %.6.i.i.i, i8 0, i64 56, i1 false)
  %.7.i.i.i.i48 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 56, i32 32)
  %.8.i.i.i.i49 = icmp eq ptr %.7.i.i.i.i48, null
  br i1 %.8.i.i.i.i49, label %B0.endif.if.if, label %B0.endif.endif

B0.if.if:
  store ptr @n6, ptr %excinfo, align 8
  br label %common.ret

B0.endif.endif:
  %.5.i.i.i51 = getelementptr i8, ptr %.7.i.i.i.i48, i64 24
  %.6.i.i.i52 = load ptr, ptr %.5.i.i.i51, align 8
  tail call void @llvm.memset.p0.i64(ptr noundef nonnull align 1 dereferenceable(56) %.6.i.i.i52, i8 0, i64 56, i1 false)
  %.7.i.i.i.i62 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 56, i32 32)
  %.8.i.i.i.i63 = icmp eq ptr %.7.i.i.i.i62, null
  br i1 %.8.i.i.i.i63, label %B0.endif.endif.if.if, label %B0.endif.endif.endif.endif

B0.endif.if.if:
  store ptr @n6, ptr %excinfo, align 8
  br label %common.ret

B0.endif.endif.if.if:
  store ptr @n6, ptr %excinfo, align 8
  br label %common.ret

B0.endif.endif.endif.endif:
  %.5.i.i.i65 = getelementptr i8, ptr %.7.i.i.i.i62, i64 24
  %.6.i.i.i66 = load ptr, ptr %.5.i.i.i65, align 8
  tail call void @llvm.memset.p0.i64(ptr noundef nonnull align 1 dereferenceable(56) %.6.i.i.i66, i8 0, i64 56, i1 false)
  %.12882698.not = icmp slt i64 %arg.days.0.5.0, 1
  br i1 %.12882698.not, label %B2180, label %B278.endif.lr.ph

B278.endif.lr.ph:
  %const = bitcast i64 9223372036854775804 to i64
  %factor.op.mul2492 = mul i64 %arg.out.1.5.3, %arg.out.1.5.2
  %factor.op.mul2277.reass = mul i64 %factor.op.mul2492, %arg.out.1.5.1
  %.1706 = mul i64 %arg.out.0.5.2, %arg.out.0.5.1
  %.3275 = mul i64 %arg.checks.5.2, %arg.checks.5.1
  %.3860 = fsub double 1.000000e+00, %arg.laws.2
  %16 = add i64 %arg.start.1.5.1.fr, 1152921504606846976
  %.3606 = shl nsw i64 %arg.start.1.5.1.fr, 3
  %xtraiter = and i64 %arg.start.1.5.1.fr, 3
  %unroll_iter = and i64 %arg.start.1.5.1.fr, %const
  %xtraiter311 = and i64 %arg.bank.0.5.0, 3
  %unroll_iter315 = and i64 %arg.bank.0.5.0, %const
  %17 = mul i64 %arg.out.1.5.3, %arg.out.1.5.2
  %18 = mul i64 %17, %arg.out.1.5.1
  %19 = shl i64 %18, 3
  %20 = shl i64 %17, 3
  %scevgep328 = getelementptr i8, ptr %arg.out.0.4, i64 48
  %21 = mul i64 %arg.out.0.5.2, %arg.out.0.5.1
  %22 = shl i64 %21, 3
  %23 = shl i64 %arg.out.0.5.2, 3
  %24 = shl i64 %arg.out.2.5.1, 3
  %25 = shl i64 %arg.out.1.5.3, 3
  %26 = add i64 %25, 8
  %scevgep352 = getelementptr i8, ptr %arg.start.1.4, i64 24
  %27 = shl i64 %arg.start.1.5.1.fr, 3
  br label %B278.endif

B278.endif:
  %lsr.iv378 = phi ptr [ %arg.out.0.4, %B278.endif.lr.ph ], [ %scevgep379, %B276.loopexit ]
  %lsr.iv372 = phi ptr [ %arg.start.1.4, %B278.endif.lr.ph ], [ %scevgep373, %B276.loopexit ]
  %lsr.iv353 = phi ptr [ %scevgep352, %B278.endif.lr.ph ], [ %scevgep354, %B276.loopexit ]
  %lsr.iv339 = phi ptr [ %arg.out.2.4, %B278.endif.lr.ph ], [ %scevgep340, %B276.loopexit ]
  %lsr.iv329 = phi ptr [ %scevgep328, %B278.endif.lr.ph ], [ %scevgep330, %B276.loopexit ]
  %lsr.iv = phi ptr [ %arg.out.1.4, %B278.endif.lr.ph ], [ %scevgep, %B276.loopexit ]
  %.129425082709 = phi i64 [ 0, %B278.endif.lr.ph ], [ %.1301, %B276.loopexit ]
  %28 = icmp sgt i64 %arg.bank.0.5.0, 0
  %.1301 = add nuw nsw i64 %.129425082709, 1
  br i1 %28, label %B338.endif.endif.lr.ph, label %B662.endif

B338.endif.endif.lr.ph:
  %.1629 = mul i64 %.129425082709, %arg.start.0.5.1
  %.1772 = mul i64 %.129425082709, %arg.start.1.5.1.fr
  br label %B338.endif.endif

B338.endif.endif:
  %lsr.iv331 = phi ptr [ %lsr.iv329, %B338.endif.endif.lr.ph ], [ %scevgep332, %B338.endif.endif ]
  %lsr.iv326 = phi ptr [ %lsr.iv, %B338.endif.endif.lr.ph ], [ %scevgep327, %B338.endif.endif ]
  %.142422812291 = phi i64 [ 0, %B338.endif.endif.lr.ph ], [ %.1431, %B338.endif.endif ]
  %scevgep338 = getelementptr i8, ptr %lsr.iv331, i64 -48
  %sunkaddr416 = mul i64 %.1629, 8
  %sunkaddr417 = getelementptr i8, ptr %arg.start.0.4, i64 %sunkaddr416
  %.1634 = load double, ptr %sunkaddr417, align 8
  store double %.1634, ptr %scevgep338, align 8
  %sunkaddr418 = mul i64 %.1772, 8
  %sunkaddr419 = getelementptr i8, ptr %arg.start.1.4, i64 %sunkaddr418
  %.1777 = load double, ptr %sunkaddr419, align 8
  %.147.i = fmul double %.1777, %.1777
  store double %.147.i, ptr %lsr.iv326, align 8
  %sunkaddr420 = mul i64 %.1629, 8
  %sunkaddr421 = getelementptr i8, ptr %arg.start.0.4, i64 %sunkaddr420
  %sunkaddr422 = getelementptr i8, ptr %sunkaddr421, i64 8
  %.1634.1 = load double, ptr %sunkaddr422, align 8
  %scevgep337 = getelementptr i8, ptr %lsr.iv331, i64 -40
  store double %.1634.1, ptr %scevgep337, align 8
  %sunkaddr423 = mul i64 %.1772, 8
  %sunkaddr424 = getelementptr i8, ptr %arg.start.1.4, i64 %sunkaddr423
  %sunkaddr425 = getelementptr i8, ptr %sunkaddr424, i64 8
  %.1777.1 = load double, ptr %sunkaddr425, align 8
  %.147.i86 = fmul double %.1777.1, %.1777.1
  %scevgep346 = getelementptr i8, ptr %lsr.iv326, i64 %26
  %sunkaddr483 = mul i64 %arg.out.1.5.3, 8
  %sunkaddr484 = getelementptr i8, ptr %lsr.iv326, i64 %sunkaddr483
  %sunkaddr485 = getelementptr i8, ptr %sunkaddr484, i64 8
  store double %.147.i86, ptr %sunkaddr485, align 8
  %sunkaddr426 = mul i64 %.1629, 8
  %sunkaddr427 = getelementptr i8, ptr %arg.start.0.4, i64 %sunkaddr426
  %sunkaddr428 = getelementptr i8, ptr %sunkaddr427, i64 16
  %.1634.2 = load double, ptr %sunkaddr428, align 8
  %scevgep336 = getelementptr i8, ptr %lsr.iv331, i64 -32
  store double %.1634.2, ptr %scevgep336, align 8
  %sunkaddr429 = mul i64 %.1772, 8
  %sunkaddr430 = getelementptr i8, ptr %arg.start.1.4, i64 %sunkaddr429
  %sunkaddr431 = getelementptr i8, ptr %sunkaddr430, i64 16
  %.1777.2 = load double, ptr %sunkaddr431, align 8
  %.147.i99 = fmul double %.1777.2, %.1777.2
  %scevgep347 = getelementptr i8, ptr %scevgep346, i64 %26
  %sunkaddr459 = mul i64 %arg.out.1.5.3, 8
  %sunkaddr460 = getelementptr i8, ptr %scevgep346, i64 %sunkaddr459
  %sunkaddr461 = getelementptr i8, ptr %sunkaddr460, i64 8
  %sunkaddr486 = mul i64 %arg.out.1.5.3, 8
  %sunkaddr487 = getelementptr i8, ptr %scevgep346, i64 %sunkaddr486
  %sunkaddr488 = getelementptr i8, ptr %sunkaddr487, i64 8
  store double %.147.i99, ptr %sunkaddr488, align 8
  %sunkaddr432 = mul i64 %.1629, 8
  %sunkaddr433 = getelementptr i8, ptr %arg.start.0.4, i64 %sunkaddr432
  %sunkaddr434 = getelementptr i8, ptr %sunkaddr433, i64 24
  %.1634.3 = load double, ptr %sunkaddr434, align 8
  %scevgep335 = getelementptr i8, ptr %lsr.iv331, i64 -24
  store double %.1634.3, ptr %scevgep335, align 8
  %sunkaddr435 = mul i64 %.1772, 8
  %sunkaddr436 = getelementptr i8, ptr %arg.start.1.4, i64 %sunkaddr435
  %sunkaddr437 = getelementptr i8, ptr %sunkaddr436, i64 24
  %.1777.3 = load double, ptr %sunkaddr437, align 8
  %.147.i112 = fmul double %.1777.3, %.1777.3
  %scevgep348 = getelementptr i8, ptr %scevgep347, i64 %26
  %sunkaddr462 = mul i64 %arg.out.1.5.3, 8
  %sunkaddr463 = getelementptr i8, ptr %scevgep347, i64 %sunkaddr462
  %sunkaddr464 = getelementptr i8, ptr %sunkaddr463, i64 8
  %sunkaddr489 = mul i64 %arg.out.1.5.3, 8
  %sunkaddr490 = getelementptr i8, ptr %scevgep347, i64 %sunkaddr489
  %sunkaddr491 = getelementptr i8, ptr %sunkaddr490, i64 8
  store double %.147.i112, ptr %sunkaddr491, align 8
  %sunkaddr438 = mul i64 %.1629, 8
  %sunkaddr439 = getelementptr i8, ptr %arg.start.0.4, i64 %sunkaddr438
  %sunkaddr440 = getelementptr i8, ptr %sunkaddr439, i64 32
  %.1634.4 = load double, ptr %sunkaddr440, align 8
  %scevgep334 = getelementptr i8, ptr %lsr.iv331, i64 -16
  store double %.1634.4, ptr %scevgep334, align 8
  %sunkaddr441 = mul i64 %.1772, 8
  %sunkaddr442 = getelementptr i8, ptr %arg.start.1.4, i64 %sunkaddr441
  %sunkaddr443 = getelementptr i8, ptr %sunkaddr442, i64 32
  %.1777.4 = load double, ptr %sunkaddr443, align 8
  %.147.i125 = fmul double %.1777.4, %.1777.4
  %scevgep349 = getelementptr i8, ptr %scevgep348, i64 %26
  %sunkaddr492 = mul i64 %arg.out.1.5.3, 8
  %sunkaddr493 = getelementptr i8, ptr %scevgep348, i64 %sunkaddr492
  %sunkaddr494 = getelementptr i8, ptr %sunkaddr493, i64 8
  store double %.147.i125, ptr %sunkaddr494, align 8
  %sunkaddr444 = mul i64 %.1629, 8
  %sunkaddr445 = getelementptr i8, ptr %arg.start.0.4, i64 %sunkaddr444
  %sunkaddr446 = getelementptr i8, ptr %sunkaddr445, i64 40
  %.1634.5 = load double, ptr %sunkaddr446, align 8
  %scevgep333 = getelementptr i8, ptr %lsr.iv331, i64 -8
  store double %.1634.5, ptr %scevgep333, align 8
  %sunkaddr447 = mul i64 %.1772, 8
  %sunkaddr448 = getelementptr i8, ptr %arg.start.1.4, i64 %sunkaddr447
  %sunkaddr449 = getelementptr i8, ptr %sunkaddr448, i64 40
  %.1777.5 = load double, ptr %sunkaddr449, align 8
  %.147.i138 = fmul double %.1777.5, %.1777.5
  %scevgep350 = getelementptr i8, ptr %scevgep349, i64 %26
  %sunkaddr495 = mul i64 %arg.out.1.5.3, 8
  %sunkaddr496 = getelementptr i8, ptr %scevgep349, i64 %sunkaddr495
  %sunkaddr497 = getelementptr i8, ptr %sunkaddr496, i64 8
  store double %.147.i138, ptr %sunkaddr497, align 8
  %sunkaddr450 = mul i64 %.1629, 8
  %sunkaddr451 = getelementptr i8, ptr %arg.start.0.4, i64 %sunkaddr450
  %sunkaddr452 = getelementptr i8, ptr %sunkaddr451, i64 48
  %.1634.6 = load double, ptr %sunkaddr452, align 8
  store double %.1634.6, ptr %lsr.iv331, align 8
  %sunkaddr453 = mul i64 %.1772, 8
  %sunkaddr454 = getelementptr i8, ptr %arg.start.1.4, i64 %sunkaddr453
  %sunkaddr455 = getelementptr i8, ptr %sunkaddr454, i64 48
  %.1777.6 = load double, ptr %sunkaddr455, align 8
  %.147.i151 = fmul double %.1777.6, %.1777.6
  %sunkaddr456 = mul i64 %arg.out.1.5.3, 8
  %sunkaddr457 = getelementptr i8, ptr %scevgep350, i64 %sunkaddr456
  %sunkaddr458 = getelementptr i8, ptr %sunkaddr457, i64 8
  store double %.147.i151, ptr %sunkaddr458, align 8
  %29 = shl i64 %.142422812291, 3
  %scevgep345 = getelementptr i8, ptr %arg.bank.1.4, i64 %29
  %.1943 = load double, ptr %scevgep345, align 8
  %30 = shl i64 %.142422812291, 3
  %scevgep344 = getelementptr i8, ptr %arg.bank.3.4, i64 %30
  %.1998 = load double, ptr %scevgep344, align 8
  %.147.i177 = fmul double %.1998, %.1998
  %.147.i164 = fmul double %.1943, %.1943
  %.1431 = add nuw nsw i64 %.142422812291, 1
  store double %.147.i164, ptr %sunkaddr461, align 8
  store double %.147.i177, ptr %sunkaddr464, align 8
  %31 = shl i64 %.142422812291, 3
  %scevgep343 = getelementptr i8, ptr %arg.bank.2.4, i64 %31
  %.2251 = load double, ptr %scevgep343, align 8
  store double %.2251, ptr %scevgep335, align 8
  %32 = shl i64 %.142422812291, 3
  %scevgep342 = getelementptr i8, ptr %arg.bank.4.4, i64 %32
  %.2359 = load double, ptr %scevgep342, align 8
  %33 = shl i64 %.142422812291, 3
  %scevgep341 = getelementptr i8, ptr %lsr.iv339, i64 %33
  store double %.2359, ptr %scevgep341, align 8
  %scevgep327 = getelementptr i8, ptr %lsr.iv326, i64 %20
  %scevgep332 = getelementptr i8, ptr %lsr.iv331, i64 %23
  %exitcond.not = icmp eq i64 %arg.bank.0.5.0, %.1431
  br i1 %exitcond.not, label %B662.endif, label %B338.endif.endif

B662.endif:
  %34 = icmp slt i64 %arg.days.0.5.1, 1
  br i1 %34, label %B276.loopexit, label %B718.endif.lr.ph

B718.endif.lr.ph:
  %.2750 = mul i64 %.129425082709, %.1706
  %35 = getelementptr double, ptr %arg.out.0.4, i64 %.2750
  %.2861 = mul i64 %.129425082709, %factor.op.mul2277.reass
  %36 = getelementptr double, ptr %arg.out.1.4, i64 %.2861
  %.2973 = mul i64 %.129425082709, %arg.days.0.5.1
  %invariant.gep2474 = getelementptr double, ptr %arg.days.0.4, i64 %.2973
  %.3029 = mul i64 %.129425082709, %arg.days.1.5.1
  %invariant.gep2476 = getelementptr double, ptr %arg.days.1.4, i64 %.3029
  %.3277 = mul i64 %.3275, %.129425082709
  %37 = getelementptr double, ptr %arg.checks.4, i64 %.3277
  %.3507 = mul i64 %.129425082709, %arg.start.1.5.1.fr
  %.3849 = mul i64 %.129425082709, %arg.out.2.5.1
  %38 = getelementptr double, ptr %arg.out.2.4, i64 %.3849
  %.3998 = mul i64 %.129425082709, %arg.days.4.5.1
  %invariant.gep2478 = getelementptr double, ptr %arg.days.4.4, i64 %.3998
  %.4536 = mul i64 %.129425082709, %arg.days.6.5.1
  %invariant.gep2480 = getelementptr i8, ptr %arg.days.6.4, i64 %.4536
  %.4911 = mul i64 %.129425082709, %arg.days.5.5.1
  %invariant.gep2482 = getelementptr double, ptr %arg.days.5.4, i64 %.4911
  %.5097 = mul i64 %.129425082709, %arg.days.2.5.1
  %invariant.gep2484 = getelementptr double, ptr %arg.days.2.4, i64 %.5097
  %.5153 = mul i64 %.129425082709, %arg.days.3.5.1
  %invariant.gep2486 = getelementptr i8, ptr %arg.days.3.4, i64 %.5153
  %.6028 = mul i64 %.129425082709, %arg.out.3.5.1
  %39 = getelementptr double, ptr %arg.out.3.4, i64 %.6028
  br label %B718.endif

B718.endif:
  %.252423782464 = phi i64 [ 0, %B718.endif.lr.ph ], [ %.2531, %B716.loopexit ]
  %40 = icmp slt i64 %arg.bank.0.5.0, 1
  %.2531 = add nuw nsw i64 %.252423782464, 1
  br i1 %40, label %B1706, label %B780.lr.ph

B780.lr.ph:
  %.3279 = mul i64 %.252423782464, %arg.checks.5.2
  %.3283 = getelementptr double, ptr %37, i64 %.3279
  br label %B780

B780.endif:
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i48)
  %.3284 = load double, ptr %.3283, align 8
  %.3362 = fcmp ord double %.3284, 0.000000e+00
  br i1 %.3362, label %B128.i, label %B1088

B780.if.if:
  %.3184 = icmp sgt i32 %.3176, 0
  %.3177 = load ptr, ptr %excinfo.7, align 8
  %.3185 = select i1 %.3184, ptr %.3177, ptr undef
  store ptr %.3185, ptr %excinfo, align 8
  br label %common.ret

B996.endif.endif.if:
  store ptr @n3, ptr %excinfo, align 8
  br label %common.ret

B996.endif.endif.endif:
  %.7.i.i = tail call ptr @NRT_MemInfo_alloc_aligned(i64 %.3606, i32 32)
  %.8.i.i = icmp eq ptr %.7.i.i, null
  br i1 %.8.i.i, label %B996.endif.endif.endif.if.if, label %B996.endif.endif.endif.endif

B996.endif.endif.endif.endif:
  %41 = icmp sgt i64 %arg.start.1.5.1.fr, 0
  %.5.i = getelementptr i8, ptr %.7.i.i, i64 24
  %.6.i = load ptr, ptr %.5.i, align 8
  br i1 %41, label %for.body.lr.ph, label %for.end

for.body.lr.ph:
  %42 = icmp ugt i64 %arg.start.1.5.1.fr, 1
  br i1 %42, label %for.body.endif.endif.us.preheader, label %for.body.endif.endif

for.body.endif.endif.us.preheader:
  %43 = icmp ult i64 %arg.start.1.5.1.fr, 4
  br i1 %43, label %for.body.endif.endif.us.epil.preheader, label %for.body.endif.endif.us.preheader325

for.body.endif.endif.us.preheader325:
  br label %for.body.endif.endif.us

for.body.endif.endif.us:
  %loop.index2301.us = phi i64 [ %.3713.us.3, %for.body.endif.endif.us ], [ 0, %for.body.endif.endif.us.preheader325 ]
  %44 = shl i64 %loop.index2301.us, 3
  %scevgep360 = getelementptr i8, ptr %lsr.iv353, i64 %44
  %scevgep361 = getelementptr i8, ptr %scevgep360, i64 -24
  %.3684.us = load double, ptr %scevgep361, align 8
  %.147.i.i = fmul double %.3684.us, %.3684.us
  %sunkaddr465 = mul i64 %loop.index2301.us, 8
  %sunkaddr466 = getelementptr i8, ptr %.6.i, i64 %sunkaddr465
  store double %.147.i.i, ptr %sunkaddr466, align 8
  %45 = shl i64 %loop.index2301.us, 3
  %scevgep358 = getelementptr i8, ptr %lsr.iv353, i64 %45
  %scevgep359 = getelementptr i8, ptr %scevgep358, i64 -16
  %.3684.us.1 = load double, ptr %scevgep359, align 8
  %.147.i.i.1 = fmul double %.3684.us.1, %.3684.us.1
  %sunkaddr467 = mul i64 %loop.index2301.us, 8
  %sunkaddr468 = getelementptr i8, ptr %.6.i, i64 %sunkaddr467
  %sunkaddr469 = getelementptr i8, ptr %sunkaddr468, i64 8
  store double %.147.i.i.1, ptr %sunkaddr469, align 8
  %46 = shl i64 %loop.index2301.us, 3
  %scevgep356 = getelementptr i8, ptr %lsr.iv353, i64 %46
  %scevgep357 = getelementptr i8, ptr %scevgep356, i64 -8
  %.3684.us.2 = load double, ptr %scevgep357, align 8
  %.147.i.i.2 = fmul double %.3684.us.2, %.3684.us.2
  %sunkaddr470 = mul i64 %loop.index2301.us, 8
  %sunkaddr471 = getelementptr i8, ptr %.6.i, i64 %sunkaddr470
  %sunkaddr472 = getelementptr i8, ptr %sunkaddr471, i64 16
  store double %.147.i.i.2, ptr %sunkaddr472, align 8
  %47 = shl i64 %loop.index2301.us, 3
  %scevgep355 = getelementptr i8, ptr %lsr.iv353, i64 %47
  %.3684.us.3 = load double, ptr %scevgep355, align 8
  %.147.i.i.3 = fmul double %.3684.us.3, %.3684.us.3
  %sunkaddr473 = mul i64 %loop.index2301.us, 8
  %sunkaddr474 = getelementptr i8, ptr %.6.i, i64 %sunkaddr473
  %sunkaddr475 = getelementptr i8, ptr %sunkaddr474, i64 24
  store double %.147.i.i.3, ptr %sunkaddr475, align 8
  %.3713.us.3 = add nuw nsw i64 %loop.index2301.us, 4
  %niter.ncmp.3 = icmp eq i64 %unroll_iter, %.3713.us.3
  br i1 %niter.ncmp.3, label %for.end.loopexit.unr-lcssa, label %for.body.endif.endif.us

B996.endif.endif.endif.if.if:
  store ptr @n9, ptr %excinfo, align 8
  br label %common.ret

for.end.loopexit.unr-lcssa:
  %48 = icmp eq i64 %xtraiter, 0
  br i1 %48, label %for.end, label %for.body.endif.endif.us.epil.preheader

for.body.endif.endif.us.epil.preheader:
  %loop.index2301.us.epil.init = phi i64 [ 0, %for.body.endif.endif.us.preheader ], [ %.3713.us.3, %for.end.loopexit.unr-lcssa ]
  %49 = shl i64 %loop.index2301.us.epil.init, 3
  %scevgep370 = getelementptr i8, ptr %.6.i, i64 %49
  %scevgep374 = getelementptr i8, ptr %lsr.iv372, i64 %49
  br label %for.body.endif.endif.us.epil

for.body.endif.endif.us.epil:
  %epil.iter = phi i64 [ %epil.iter.next, %for.body.endif.endif.us.epil ], [ 0, %for.body.endif.endif.us.epil.preheader ]
  %50 = shl nuw nsw i64 %epil.iter, 3
  %scevgep375 = getelementptr i8, ptr %scevgep374, i64 %50
  %.3684.us.epil = load double, ptr %scevgep375, align 8
  %.147.i.i.epil = fmul double %.3684.us.epil, %.3684.us.epil
  %51 = shl nuw nsw i64 %epil.iter, 3
  %scevgep371 = getelementptr i8, ptr %scevgep370, i64 %51
  store double %.147.i.i.epil, ptr %scevgep371, align 8
  %epil.iter.next = add i64 %epil.iter, 1
  %epil.iter.cmp.not = icmp eq i64 %xtraiter, %epil.iter.next
  br i1 %epil.iter.cmp.not, label %for.end, label %for.body.endif.endif.us.epil

for.end:
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i)
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i62)
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i48)
  store ptr null, ptr %.3739, align 8
  %.3762 = call i32 @n23(ptr nonnull %.3739, ptr nonnull %excinfo.11, ptr %arg.out.0.0, ptr %arg.out.0.1, i64 %arg.out.0.5.2, i64 %arg.out.0.3, ptr %.2754, i64 %arg.out.0.5.2, i64 %arg.out.0.6.2, ptr %arg.out.1.0, ptr %arg.out.1.1, i64 %factor.op.mul2492, i64 %arg.out.1.3, ptr %.2865, i64 %arg.out.1.5.2, i64 %arg.out.1.5.3, i64 %arg.out.1.6.2, i64 %arg.out.1.6.3, ptr %arg.checks.0, ptr %arg.checks.1, i64 %arg.checks.5.2, i64 %arg.checks.3, ptr nonnull %.3283, i64 %arg.checks.5.2, i64 %arg.checks.6.2, double %arg.laws.3, ptr nonnull %.7.i.i, ptr null, i64 %arg.start.1.5.1.fr, i64 8, ptr %.6.i, i64 %arg.start.1.5.1.fr, i64 8, ptr nonnull %.7.i.i.i.i, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i, i64 7, i64 8, ptr nonnull %.7.i.i.i.i62, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i66, i64 7, i64 8, ptr nonnull %.7.i.i.i.i48, ptr null, i64 7, i64 8, ptr nonnull %.6.i.i.i52, i64 7, i64 8)
  %cond47 = icmp eq i32 %.3762, 0
  tail call void @NRT_decref(ptr %arg.start.1.0)
  br i1 %cond47, label %for.end.endif, label %for.end.if.if

for.body.endif.endif:
  %sunkaddr476 = mul i64 %.3507, 8
  %sunkaddr477 = getelementptr i8, ptr %arg.start.1.4, i64 %sunkaddr476
  %.3684 = load double, ptr %sunkaddr477, align 8
  %.147.i.i183 = fmul double %.3684, %.3684
  store double %.147.i.i183, ptr %.6.i, align 8
  br label %for.end

for.end.endif:
  tail call void @NRT_decref(ptr nonnull %.7.i.i)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i62)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i48)
  tail call void @NRT_decref(ptr %arg.checks.0)
  br label %B1088

for.end.if.if:
  %.3763 = load ptr, ptr %excinfo.11, align 8
  store ptr %.3763, ptr %excinfo, align 8
  br label %common.ret

.4318:
  tail call void @llvm.memset.p0.i64(ptr noundef nonnull align 8 dereferenceable(56) %.6.i.i.i, i8 0, i64 56, i1 false)
  %sunkaddr478 = mul i64 %.252423782464, 8
  %sunkaddr479 = getelementptr i8, ptr %invariant.gep2478, i64 %sunkaddr478
  %.4417.pre = load double, ptr %sunkaddr479, align 8
  %.4449 = load double, ptr %.2754, align 8
  %.4450 = fsub double %.4417.pre, %.4449
  store double 1.000000e+00, ptr %.6.i.i.i, align 8
  %sunkaddr480 = getelementptr inbounds i8, ptr %invariant.gep2480, i64 %.252423782464
  %.4541 = load i8, ptr %sunkaddr480, align 1
  %.4544 = icmp eq i8 %.4541, 0
  br i1 %.4544, label %B1502, label %B1302

B1502.endif:
  %.4974 = load double, ptr %.4942, align 8
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i62)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i48)
  %.4994 = fadd double %.4861, %.4974
  %sunkaddr481 = mul i64 %.265523282339, 8
  %sunkaddr482 = getelementptr i8, ptr %38, i64 %sunkaddr481
  store double %.4994, ptr %sunkaddr482, align 8
  br label %B1598

B1502.if.if:
  store ptr null, ptr %excinfo, align 8
  br label %common.ret

B1598.endif.endif:
  tail call void @NRT_decref(ptr %arg.out.0.0)
  tail call void @NRT_decref(ptr %arg.out.1.0)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i48)
  %exitcond3100.not = icmp eq i64 %arg.bank.0.5.0, %.2662
  br i1 %exitcond3100.not, label %B1706, label %B780

B1598.endif.if.if:
  %.5244 = icmp sgt i32 %.5236, 0
  %.5237 = load ptr, ptr %excinfo.13, align 8
  %.5245 = select i1 %.5244, ptr %.5237, ptr undef
  store ptr %.5245, ptr %excinfo, align 8
  br label %common.ret

B1706.if.if:
  %.5366 = load ptr, ptr %excinfo.14, align 8
  store ptr %.5366, ptr %excinfo, align 8
  br label %common.ret

B1706.endif.endif:
  %52 = icmp slt i64 %arg.bank.0.5.0, 1
  tail call void @NRT_decref(ptr %arg.out.2.0)
  br i1 %52, label %B2022.thread, label %B1824.lr.ph

B2022.thread:
  %53 = getelementptr double, ptr %39, i64 %.252423782464
  store double 0x7FF8000000000000, ptr %53, align 8
  br label %B716.loopexit

B1824.lr.ph:
  br label %B1824

B1824.endif:
  %.5499 = add nuw nsw i64 %.549223472349, 1
  %.5942 = load double, ptr %.5920, align 8
  %.5580 = fsub double %.5576, %.5375
  %.5581 = tail call double @llvm.exp.f64(double %.5580)
  %.5583 = fadd double %total.2.22352, %.5581
  tail call void @NRT_decref(ptr %arg.out.1.0)
  tail call void @NRT_decref(ptr %arg.out.0.0)
  %.5960 = fmul double %.5581, %.5942
  %.5962 = fadd double %chance.2.22351, %.5960
  %scevgep377 = getelementptr i8, ptr %lsr.iv376, i64 %20
  %scevgep381 = getelementptr i8, ptr %lsr.iv380, i64 %23
  %exitcond3101.not = icmp eq i64 %arg.bank.0.5.0, %.5499
  br i1 %exitcond3101.not, label %B2100.lr.ph, label %B1824

B1824.if.if:
  store ptr null, ptr %excinfo, align 8
  br label %common.ret
}

define internal noundef range(i32 -1, -2) i32 @n18(ptr noalias writeonly captures(none) %retptr, ptr noalias writeonly captures(none) %excinfo, ptr %arg.x.0, ptr readnone captures(none) %arg.x.1, i64 %arg.x.2, i64 %arg.x.3, ptr captures(none) %arg.x.4, i64 %arg.x.5.0, i64 %arg.x.6.0, ptr %arg.cover.0, ptr readnone captures(none) %arg.cover.1, i64 %arg.cover.2, i64 %arg.cover.3, ptr %arg.cover.4, i64 %arg.cover.5.0, i64 %arg.cover.5.1, i64 %arg.cover.6.0, i64 %arg.cover.6.1, double %arg.day.0, double %arg.day.1, double %arg.fresh, double %arg.member.0, double %arg.member.1, ptr %arg.walk.0, ptr readnone captures(none) %arg.walk.1, i64 %arg.walk.2, i64 %arg.walk.3, ptr readonly captures(none) %arg.walk.4, i64 %arg.walk.5.0, i64 %arg.walk.6.0, ptr %arg.part.0.0, ptr readnone captures(none) %arg.part.0.1, i64 %arg.part.0.2, i64 %arg.part.0.3, ptr captures(none) initializes((0, 32)) %arg.part.0.4, i64 %arg.part.0.5.0, i64 %arg.part.0.6.0, ptr %arg.part.1.0, ptr readnone captures(none) %arg.part.1.1, i64 %arg.part.1.2, i64 %arg.part.1.3, ptr captures(none) initializes((0, 56)) %arg.part.1.4, i64 %arg.part.1.5.0, i64 %arg.part.1.6.0) local_unnamed_addr {
B0.endif.endif.else.endif:
  %.943 = alloca ptr, align 8
  %excinfo.3 = alloca ptr, align 8
  tail call void @NRT_incref(ptr %arg.x.0)
  tail call void @NRT_incref(ptr %arg.cover.0)
  tail call void @NRT_incref(ptr %arg.walk.0)
  tail call void @NRT_incref(ptr %arg.part.0.0)
  tail call void @NRT_incref(ptr %arg.part.1.0)
  %.207 = load double, ptr %arg.x.4, align 8
  %.7.i = fsub double %.207, %arg.fresh
  %.8.i = fmul double %arg.member.0, %.7.i
  %.12.i = fdiv double %.8.i, 2.000000e+01
  %.13.i = fadd double %.12.i, 1.000000e+00
  %.12.i.i = fcmp olt double %.13.i, 5.000000e-02
  %.13.i.i = select i1 %.12.i.i, double 5.000000e-02, double %.13.i
  %.263 = getelementptr i8, ptr %arg.x.4, i64 24
  %.264 = load double, ptr %.263, align 8
  %.266 = fmul double %arg.day.1, %.264
  %.267 = fadd double %.266, 1.000000e+00
  %.302 = getelementptr i8, ptr %arg.x.4, i64 8
  %.303 = load double, ptr %.302, align 8
  %.305 = fmul double %.303, %.267
  %.334 = getelementptr i8, ptr %arg.x.4, i64 16
  %.335 = load double, ptr %.334, align 8
  %.336 = fadd double %.335, %.305
  %.12.i9 = fcmp olt double %.336, 0.000000e+00
  %.13.i10 = select i1 %.12.i9, double 0.000000e+00, double %.336
  %.555 = icmp slt i64 %arg.part.0.5.0, 1
  br i1 %.555, label %.622, label %.621.endif.preheader

common.ret:
  %excinfo.sink = phi ptr [ %retptr, %B290.endif.endif.endif ], [ %excinfo, %.622 ]
  store ptr null, ptr %excinfo.sink, align 8
  ret i32 %.955

.621.endif.preheader:
  %0 = shl i64 %arg.part.0.5.0, 3
  tail call void @llvm.memset.p0.i64(ptr align 8 %arg.part.0.4, i8 0, i64 %0, i1 false)
  br label %.622

.622:
  %.669 = fcmp ogt double %.13.i.i, 5.000000e-02
  %.676 = fmul double %arg.day.0, %.13.i10
  %.678 = fmul double %arg.member.0, %.676
  %.684 = fdiv double %.678, 2.000000e+01
  %1 = fadd double %.684, 1.000000e+00
  %.696 = select i1 %.669, double %1, double 1.000000e+00
  store double %.696, ptr %arg.part.0.4, align 8
  %.733 = fmul double %arg.day.0, %.13.i.i
  %.735 = fmul double %.267, %.733
  %sunkaddr = getelementptr i8, ptr %arg.x.4, i64 8
  %.773 = load double, ptr %sunkaddr, align 8
  %.774 = fmul double %.733, %.773
  %.776 = fmul double %arg.day.1, %.774
  %.807 = getelementptr i8, ptr %arg.part.0.4, i64 8
  store double %.735, ptr %.807, align 8
  %.837 = getelementptr i8, ptr %arg.part.0.4, i64 16
  store double %.733, ptr %.837, align 8
  %.867 = getelementptr i8, ptr %arg.part.0.4, i64 24
  store double %.776, ptr %.867, align 8
  %.898 = load double, ptr %arg.x.4, align 8
  %.905 = fmul double %.13.i.i, %.676
  %.908 = fadd double %.905, %.898
  store double %.908, ptr %arg.x.4, align 8
  %.955 = call i32 @n24(ptr nonnull %.943, ptr nonnull %excinfo.3, ptr %arg.cover.0, ptr %arg.cover.1, i64 %arg.cover.2, i64 %arg.cover.3, ptr %arg.cover.4, i64 %arg.cover.5.0, i64 %arg.cover.5.1, i64 %arg.cover.6.0, i64 %arg.cover.6.1, ptr %arg.part.0.0, ptr %arg.part.0.1, i64 %arg.part.0.2, i64 %arg.part.0.3, ptr nonnull %arg.part.0.4, i64 %arg.part.0.5.0, i64 %arg.part.0.6.0, ptr %arg.part.1.0, ptr %arg.part.1.1, i64 %arg.part.1.2, i64 %arg.part.1.3, ptr %arg.part.1.4, i64 %arg.part.1.5.0, i64 %arg.part.1.6.0)
  %cond = icmp eq i32 %.955, 0
  br i1 %cond, label %B290.endif.endif.endif, label %common.ret

B290.endif.endif.endif:
  tail call void @NRT_decref(ptr %arg.part.0.0)
  tail call void @NRT_decref(ptr %arg.part.1.0)
  %.1013 = getelementptr i8, ptr %arg.walk.4, i64 56
  %.1014 = load double, ptr %.1013, align 8
  %sunkaddr1 = getelementptr i8, ptr %arg.x.4, i64 16
  %.1047 = load double, ptr %sunkaddr1, align 8
  %.1049 = fmul double %.1014, %.1047
  store double %.1049, ptr %sunkaddr1, align 8
  tail call void @NRT_decref(ptr %arg.x.0)
  %.idx600 = shl i64 %arg.cover.5.1, 4
  %2 = getelementptr i8, ptr %arg.cover.4, i64 %.idx600
  %.1255 = load double, ptr %2, align 8
  %.1257 = fmul double %.1014, %.1255
  store double %.1257, ptr %2, align 8
  %.1362 = getelementptr i8, ptr %arg.cover.4, i64 16
  %.1363 = load double, ptr %.1362, align 8
  %.1365 = fmul double %.1014, %.1363
  store double %.1365, ptr %.1362, align 8
  %3 = getelementptr i8, ptr %2, i64 8
  %.1255.1 = load double, ptr %3, align 8
  %.1257.1 = fmul double %.1014, %.1255.1
  store double %.1257.1, ptr %3, align 8
  %4 = getelementptr double, ptr %arg.cover.4, i64 %arg.cover.5.1
  %.1362.1 = getelementptr i8, ptr %4, i64 16
  %.1363.1 = load double, ptr %.1362.1, align 8
  %.1365.1 = fmul double %.1014, %.1363.1
  store double %.1365.1, ptr %.1362.1, align 8
  %5 = getelementptr i8, ptr %2, i64 16
  %.1255.2 = load double, ptr %5, align 8
  %.1257.2 = fmul double %.1014, %.1255.2
  %.1365.2 = fmul double %.1014, %.1257.2
  store double %.1365.2, ptr %5, align 8
  %6 = getelementptr i8, ptr %2, i64 24
  %.1255.3 = load double, ptr %6, align 8
  %.1257.3 = fmul double %.1014, %.1255.3
  store double %.1257.3, ptr %6, align 8
  %.idx612 = mul i64 %arg.cover.5.1, 24
  %7 = getelementptr i8, ptr %arg.cover.4, i64 %.idx612
  %.1362.3 = getelementptr i8, ptr %7, i64 16
  %.1363.3 = load double, ptr %.1362.3, align 8
  %.1365.3 = fmul double %.1014, %.1363.3
  store double %.1365.3, ptr %.1362.3, align 8
  %8 = getelementptr i8, ptr %2, i64 32
  %.1255.4 = load double, ptr %8, align 8
  %.1257.4 = fmul double %.1014, %.1255.4
  store double %.1257.4, ptr %8, align 8
  %.idx613 = shl i64 %arg.cover.5.1, 5
  %9 = getelementptr i8, ptr %arg.cover.4, i64 %.idx613
  %.1362.4 = getelementptr i8, ptr %9, i64 16
  %.1363.4 = load double, ptr %.1362.4, align 8
  %.1365.4 = fmul double %.1014, %.1363.4
  store double %.1365.4, ptr %.1362.4, align 8
  %10 = getelementptr i8, ptr %2, i64 40
  %.1255.5 = load double, ptr %10, align 8
  %.1257.5 = fmul double %.1014, %.1255.5
  store double %.1257.5, ptr %10, align 8
  %.idx614 = mul i64 %arg.cover.5.1, 40
  %11 = getelementptr i8, ptr %arg.cover.4, i64 %.idx614
  %.1362.5 = getelementptr i8, ptr %11, i64 16
  %.1363.5 = load double, ptr %.1362.5, align 8
  %.1365.5 = fmul double %.1014, %.1363.5
  store double %.1365.5, ptr %.1362.5, align 8
  %12 = getelementptr i8, ptr %2, i64 48
  %.1255.6 = load double, ptr %12, align 8
  %.1257.6 = fmul double %.1014, %.1255.6
  store double %.1257.6, ptr %12, align 8
  %.idx615 = mul i64 %arg.cover.5.1, 48
  %13 = getelementptr i8, ptr %arg.cover.4, i64 %.idx615
  %.1362.6 = getelementptr i8, ptr %13, i64 16
  %.1363.6 = load double, ptr %.1362.6, align 8
  %.1365.6 = fmul double %.1014, %.1363.6
  store double %.1365.6, ptr %.1362.6, align 8
  %.1478 = load double, ptr %5, align 8
  %.147.i20 = fmul double %.1014, %.1014
  %.147.i = fmul double %arg.member.1, %arg.member.1
  %.1533 = fsub double 1.000000e+00, %.147.i20
  %.1534 = fmul double %.147.i, %.1533
  %.1535 = fadd double %.1534, %.1478
  store double %.1535, ptr %5, align 8
  %.1645 = load double, ptr %arg.cover.4, align 8
  %.1675 = load double, ptr %arg.walk.4, align 8
  %.147.i32 = fmul double %.1675, %.1675
  %.1701 = fmul double %arg.day.0, %.147.i32
  %.1704 = fadd double %.1645, %.1701
  store double %.1704, ptr %arg.cover.4, align 8
  %14 = getelementptr i8, ptr %4, i64 8
  %.1927 = load double, ptr %14, align 8
  %15 = getelementptr i8, ptr %arg.walk.4, i64 8
  %.1957 = load double, ptr %15, align 8
  %.147.i44 = fmul double %.1957, %.1957
  %.1982 = fadd double %.1927, %.147.i44
  store double %.1982, ptr %14, align 8
  %.1927.1 = load double, ptr %5, align 8
  %16 = getelementptr i8, ptr %arg.walk.4, i64 16
  %.1957.1 = load double, ptr %16, align 8
  %.147.i56 = fmul double %.1957.1, %.1957.1
  %.1982.1 = fadd double %.1927.1, %.147.i56
  store double %.1982.1, ptr %5, align 8
  %17 = getelementptr i8, ptr %7, i64 24
  %.1927.2 = load double, ptr %17, align 8
  %18 = getelementptr i8, ptr %arg.walk.4, i64 24
  %.1957.2 = load double, ptr %18, align 8
  %.147.i68 = fmul double %.1957.2, %.1957.2
  %.1982.2 = fadd double %.1927.2, %.147.i68
  store double %.1982.2, ptr %17, align 8
  %19 = getelementptr i8, ptr %9, i64 32
  %.1927.3 = load double, ptr %19, align 8
  %20 = getelementptr i8, ptr %arg.walk.4, i64 32
  %.1957.3 = load double, ptr %20, align 8
  %.147.i80 = fmul double %.1957.3, %.1957.3
  %.1982.3 = fadd double %.1927.3, %.147.i80
  store double %.1982.3, ptr %19, align 8
  %21 = getelementptr i8, ptr %11, i64 40
  %.1927.4 = load double, ptr %21, align 8
  %22 = getelementptr i8, ptr %arg.walk.4, i64 40
  %.1957.4 = load double, ptr %22, align 8
  %.147.i92 = fmul double %.1957.4, %.1957.4
  %.1982.4 = fadd double %.1927.4, %.147.i92
  store double %.1982.4, ptr %21, align 8
  %23 = getelementptr i8, ptr %13, i64 48
  %.1927.5 = load double, ptr %23, align 8
  %24 = getelementptr i8, ptr %arg.walk.4, i64 48
  %.1957.5 = load double, ptr %24, align 8
  %.147.i104 = fmul double %.1957.5, %.1957.5
  %.1982.5 = fadd double %.1927.5, %.147.i104
  store double %.1982.5, ptr %23, align 8
  tail call void @NRT_decref(ptr %arg.walk.0)
  tail call void @NRT_decref(ptr %arg.cover.0)
  br label %common.ret
}

define internal noundef range(i32 0, 2) i32 @n19(ptr noalias writeonly captures(none) %retptr, ptr noalias readnone captures(none) %excinfo, ptr %arg.x.0, ptr readnone captures(none) %arg.x.1, i64 %arg.x.2, i64 %arg.x.3, ptr captures(none) %arg.x.4, i64 %arg.x.5.0, i64 %arg.x.6.0, ptr %arg.cover.0, ptr readnone captures(none) %arg.cover.1, i64 %arg.cover.2, i64 %arg.cover.3, ptr %arg.cover.4, i64 %arg.cover.5.0, i64 %arg.cover.5.1, i64 %arg.cover.6.0, i64 %arg.cover.6.1, double %arg.seen.0, double %arg.seen.1, ptr readnone captures(none) %arg.slope.0, ptr readnone captures(none) %arg.slope.1, i64 %arg.slope.2, i64 %arg.slope.3, ptr readonly captures(none) %arg.slope.4, i64 %arg.slope.5.0, i64 %arg.slope.6.0, double %arg.robust.0, double %arg.robust.1, ptr %arg.part.0.0, ptr readnone captures(none) %arg.part.0.1, i64 %arg.part.0.2, i64 %arg.part.0.3, ptr captures(none) %arg.part.0.4, i64 %arg.part.0.5.0, i64 %arg.part.0.6.0, ptr %arg.part.1.0, ptr readnone captures(none) %arg.part.1.1, i64 %arg.part.1.2, i64 %arg.part.1.3, ptr captures(none) initializes((0, 56)) %arg.part.1.4, i64 %arg.part.1.5.0, i64 %arg.part.1.6.0) local_unnamed_addr {
B0.endif.endif:
  tail call void @NRT_incref(ptr %arg.cover.0)
  tail call void @NRT_incref(ptr %arg.part.0.0)
  tail call void @NRT_incref(ptr %arg.part.1.0)
  %.461 = load double, ptr %arg.cover.4, align 8
  %.493 = load double, ptr %arg.slope.4, align 8
  %.494 = fmul double %.461, %.493
  %.496 = fadd double %.494, 0.000000e+00
  %0 = getelementptr i8, ptr %arg.cover.4, i64 8
  %.461.1 = load double, ptr %0, align 8
  %1 = getelementptr i8, ptr %arg.slope.4, i64 8
  %.493.1 = load double, ptr %1, align 8
  %.494.1 = fmul double %.461.1, %.493.1
  %.496.1 = fadd double %.496, %.494.1
  %2 = getelementptr i8, ptr %arg.cover.4, i64 16
  %.461.2 = load double, ptr %2, align 8
  %3 = getelementptr i8, ptr %arg.slope.4, i64 16
  %.493.2 = load double, ptr %3, align 8
  %.494.2 = fmul double %.461.2, %.493.2
  %.496.2 = fadd double %.496.1, %.494.2
  %4 = getelementptr i8, ptr %arg.cover.4, i64 24
  %.461.3 = load double, ptr %4, align 8
  %5 = getelementptr i8, ptr %arg.slope.4, i64 24
  %.493.3 = load double, ptr %5, align 8
  %.494.3 = fmul double %.461.3, %.493.3
  %.496.3 = fadd double %.496.2, %.494.3
  %6 = getelementptr i8, ptr %arg.cover.4, i64 32
  %.461.4 = load double, ptr %6, align 8
  %7 = getelementptr i8, ptr %arg.slope.4, i64 32
  %.493.4 = load double, ptr %7, align 8
  %.494.4 = fmul double %.461.4, %.493.4
  %.496.4 = fadd double %.496.3, %.494.4
  %8 = getelementptr i8, ptr %arg.cover.4, i64 40
  %.461.5 = load double, ptr %8, align 8
  %9 = getelementptr i8, ptr %arg.slope.4, i64 40
  %.493.5 = load double, ptr %9, align 8
  %.494.5 = fmul double %.461.5, %.493.5
  %.496.5 = fadd double %.496.4, %.494.5
  %10 = getelementptr i8, ptr %arg.cover.4, i64 48
  %.461.6 = load double, ptr %10, align 8
  %11 = getelementptr i8, ptr %arg.slope.4, i64 48
  %.493.6 = load double, ptr %11, align 8
  %.494.6 = fmul double %.461.6, %.493.6
  %.496.6 = fadd double %.496.5, %.494.6
  store double %.496.6, ptr %arg.part.1.4, align 8
  %12 = getelementptr double, ptr %arg.cover.4, i64 %arg.cover.5.1
  %.461.1567 = load double, ptr %12, align 8
  %.493.1568 = load double, ptr %arg.slope.4, align 8
  %.494.1569 = fmul double %.461.1567, %.493.1568
  %.496.1570 = fadd double %.494.1569, 0.000000e+00
  %13 = getelementptr i8, ptr %12, i64 8
  %.461.1.1 = load double, ptr %13, align 8
  %.493.1.1 = load double, ptr %1, align 8
  %.494.1.1 = fmul double %.461.1.1, %.493.1.1
  %.496.1.1 = fadd double %.496.1570, %.494.1.1
  %14 = getelementptr i8, ptr %12, i64 16
  %.461.2.1 = load double, ptr %14, align 8
  %.493.2.1 = load double, ptr %3, align 8
  %.494.2.1 = fmul double %.461.2.1, %.493.2.1
  %.496.2.1 = fadd double %.496.1.1, %.494.2.1
  %15 = getelementptr i8, ptr %12, i64 24
  %.461.3.1 = load double, ptr %15, align 8
  %.493.3.1 = load double, ptr %5, align 8
  %.494.3.1 = fmul double %.461.3.1, %.493.3.1
  %.496.3.1 = fadd double %.496.2.1, %.494.3.1
  %16 = getelementptr i8, ptr %12, i64 32
  %.461.4.1 = load double, ptr %16, align 8
  %.493.4.1 = load double, ptr %7, align 8
  %.494.4.1 = fmul double %.461.4.1, %.493.4.1
  %.496.4.1 = fadd double %.496.3.1, %.494.4.1
  %17 = getelementptr i8, ptr %12, i64 40
  %.461.5.1 = load double, ptr %17, align 8
  %.493.5.1 = load double, ptr %9, align 8
  %.494.5.1 = fmul double %.461.5.1, %.493.5.1
  %.496.5.1 = fadd double %.496.4.1, %.494.5.1
  %18 = getelementptr i8, ptr %12, i64 48
  %.461.6.1 = load double, ptr %18, align 8
  %.493.6.1 = load double, ptr %11, align 8
  %.494.6.1 = fmul double %.461.6.1, %.493.6.1
  %.496.6.1 = fadd double %.496.5.1, %.494.6.1
  %19 = getelementptr i8, ptr %arg.part.1.4, i64 8
  store double %.496.6.1, ptr %19, align 8
  %.idx = shl i64 %arg.cover.5.1, 4
  %20 = getelementptr i8, ptr %arg.cover.4, i64 %.idx
  %.461.2571 = load double, ptr %20, align 8
  %.493.2572 = load double, ptr %arg.slope.4, align 8
  %.494.2573 = fmul double %.461.2571, %.493.2572
  %.496.2574 = fadd double %.494.2573, 0.000000e+00
  %21 = getelementptr i8, ptr %20, i64 8
  %.461.1.2 = load double, ptr %21, align 8
  %.493.1.2 = load double, ptr %1, align 8
  %.494.1.2 = fmul double %.461.1.2, %.493.1.2
  %.496.1.2 = fadd double %.496.2574, %.494.1.2
  %22 = getelementptr i8, ptr %20, i64 16
  %.461.2.2 = load double, ptr %22, align 8
  %.493.2.2 = load double, ptr %3, align 8
  %.494.2.2 = fmul double %.461.2.2, %.493.2.2
  %.496.2.2 = fadd double %.496.1.2, %.494.2.2
  %23 = getelementptr i8, ptr %20, i64 24
  %.461.3.2 = load double, ptr %23, align 8
  %.493.3.2 = load double, ptr %5, align 8
  %.494.3.2 = fmul double %.461.3.2, %.493.3.2
  %.496.3.2 = fadd double %.496.2.2, %.494.3.2
  %24 = getelementptr i8, ptr %20, i64 32
  %.461.4.2 = load double, ptr %24, align 8
  %.493.4.2 = load double, ptr %7, align 8
  %.494.4.2 = fmul double %.461.4.2, %.493.4.2
  %.496.4.2 = fadd double %.496.3.2, %.494.4.2
  %25 = getelementptr i8, ptr %20, i64 40
  %.461.5.2 = load double, ptr %25, align 8
  %.493.5.2 = load double, ptr %9, align 8
  %.494.5.2 = fmul double %.461.5.2, %.493.5.2
  %.496.5.2 = fadd double %.496.4.2, %.494.5.2
  %26 = getelementptr i8, ptr %20, i64 48
  %.461.6.2 = load double, ptr %26, align 8
  %.493.6.2 = load double, ptr %11, align 8
  %.494.6.2 = fmul double %.461.6.2, %.493.6.2
  %.496.6.2 = fadd double %.496.5.2, %.494.6.2
  %27 = getelementptr i8, ptr %arg.part.1.4, i64 16
  store double %.496.6.2, ptr %27, align 8
  %.idx591 = mul i64 %arg.cover.5.1, 24
  %28 = getelementptr i8, ptr %arg.cover.4, i64 %.idx591
  %.461.3575 = load double, ptr %28, align 8
  %.493.3576 = load double, ptr %arg.slope.4, align 8
  %.494.3577 = fmul double %.461.3575, %.493.3576
  %.496.3578 = fadd double %.494.3577, 0.000000e+00
  %29 = getelementptr i8, ptr %28, i64 8
  %.461.1.3 = load double, ptr %29, align 8
  %.493.1.3 = load double, ptr %1, align 8
  %.494.1.3 = fmul double %.461.1.3, %.493.1.3
  %.496.1.3 = fadd double %.496.3578, %.494.1.3
  %30 = getelementptr i8, ptr %28, i64 16
  %.461.2.3 = load double, ptr %30, align 8
  %.493.2.3 = load double, ptr %3, align 8
  %.494.2.3 = fmul double %.461.2.3, %.493.2.3
  %.496.2.3 = fadd double %.496.1.3, %.494.2.3
  %31 = getelementptr i8, ptr %28, i64 24
  %.461.3.3 = load double, ptr %31, align 8
  %.493.3.3 = load double, ptr %5, align 8
  %.494.3.3 = fmul double %.461.3.3, %.493.3.3
  %.496.3.3 = fadd double %.496.2.3, %.494.3.3
  %32 = getelementptr i8, ptr %28, i64 32
  %.461.4.3 = load double, ptr %32, align 8
  %.493.4.3 = load double, ptr %7, align 8
  %.494.4.3 = fmul double %.461.4.3, %.493.4.3
  %.496.4.3 = fadd double %.496.3.3, %.494.4.3
  %33 = getelementptr i8, ptr %28, i64 40
  %.461.5.3 = load double, ptr %33, align 8
  %.493.5.3 = load double, ptr %9, align 8
  %.494.5.3 = fmul double %.461.5.3, %.493.5.3
  %.496.5.3 = fadd double %.496.4.3, %.494.5.3
  %34 = getelementptr i8, ptr %28, i64 48
  %.461.6.3 = load double, ptr %34, align 8
  %.493.6.3 = load double, ptr %11, align 8
  %.494.6.3 = fmul double %.461.6.3, %.493.6.3
  %.496.6.3 = fadd double %.496.5.3, %.494.6.3
  %35 = getelementptr i8, ptr %arg.part.1.4, i64 24
  store double %.496.6.3, ptr %35, align 8
  %.idx592 = shl i64 %arg.cover.5.1, 5
  %36 = getelementptr i8, ptr %arg.cover.4, i64 %.idx592
  %.461.4579 = load double, ptr %36, align 8
  %.493.4580 = load double, ptr %arg.slope.4, align 8
  %.494.4581 = fmul double %.461.4579, %.493.4580
  %.496.4582 = fadd double %.494.4581, 0.000000e+00
  %37 = getelementptr i8, ptr %36, i64 8
  %.461.1.4 = load double, ptr %37, align 8
  %.493.1.4 = load double, ptr %1, align 8
  %.494.1.4 = fmul double %.461.1.4, %.493.1.4
  %.496.1.4 = fadd double %.496.4582, %.494.1.4
  %38 = getelementptr i8, ptr %36, i64 16
  %.461.2.4 = load double, ptr %38, align 8
  %.493.2.4 = load double, ptr %3, align 8
  %.494.2.4 = fmul double %.461.2.4, %.493.2.4
  %.496.2.4 = fadd double %.496.1.4, %.494.2.4
  %39 = getelementptr i8, ptr %36, i64 24
  %.461.3.4 = load double, ptr %39, align 8
  %.493.3.4 = load double, ptr %5, align 8
  %.494.3.4 = fmul double %.461.3.4, %.493.3.4
  %.496.3.4 = fadd double %.496.2.4, %.494.3.4
  %40 = getelementptr i8, ptr %36, i64 32
  %.461.4.4 = load double, ptr %40, align 8
  %.493.4.4 = load double, ptr %7, align 8
  %.494.4.4 = fmul double %.461.4.4, %.493.4.4
  %.496.4.4 = fadd double %.496.3.4, %.494.4.4
  %41 = getelementptr i8, ptr %36, i64 40
  %.461.5.4 = load double, ptr %41, align 8
  %.493.5.4 = load double, ptr %9, align 8
  %.494.5.4 = fmul double %.461.5.4, %.493.5.4
  %.496.5.4 = fadd double %.496.4.4, %.494.5.4
  %42 = getelementptr i8, ptr %36, i64 48
  %.461.6.4 = load double, ptr %42, align 8
  %.493.6.4 = load double, ptr %11, align 8
  %.494.6.4 = fmul double %.461.6.4, %.493.6.4
  %.496.6.4 = fadd double %.496.5.4, %.494.6.4
  %43 = getelementptr i8, ptr %arg.part.1.4, i64 32
  store double %.496.6.4, ptr %43, align 8
  %.idx593 = mul i64 %arg.cover.5.1, 40
  %44 = getelementptr i8, ptr %arg.cover.4, i64 %.idx593
  %.461.5583 = load double, ptr %44, align 8
  %.493.5584 = load double, ptr %arg.slope.4, align 8
  %.494.5585 = fmul double %.461.5583, %.493.5584
  %.496.5586 = fadd double %.494.5585, 0.000000e+00
  %45 = getelementptr i8, ptr %44, i64 8
  %.461.1.5 = load double, ptr %45, align 8
  %.493.1.5 = load double, ptr %1, align 8
  %.494.1.5 = fmul double %.461.1.5, %.493.1.5
  %.496.1.5 = fadd double %.496.5586, %.494.1.5
  %46 = getelementptr i8, ptr %44, i64 16
  %.461.2.5 = load double, ptr %46, align 8
  %.493.2.5 = load double, ptr %3, align 8
  %.494.2.5 = fmul double %.461.2.5, %.493.2.5
  %.496.2.5 = fadd double %.496.1.5, %.494.2.5
  %47 = getelementptr i8, ptr %44, i64 24
  %.461.3.5 = load double, ptr %47, align 8
  %.493.3.5 = load double, ptr %5, align 8
  %.494.3.5 = fmul double %.461.3.5, %.493.3.5
  %.496.3.5 = fadd double %.496.2.5, %.494.3.5
  %48 = getelementptr i8, ptr %44, i64 32
  %.461.4.5 = load double, ptr %48, align 8
  %.493.4.5 = load double, ptr %7, align 8
  %.494.4.5 = fmul double %.461.4.5, %.493.4.5
  %.496.4.5 = fadd double %.496.3.5, %.494.4.5
  %49 = getelementptr i8, ptr %44, i64 40
  %.461.5.5 = load double, ptr %49, align 8
  %.493.5.5 = load double, ptr %9, align 8
  %.494.5.5 = fmul double %.461.5.5, %.493.5.5
  %.496.5.5 = fadd double %.496.4.5, %.494.5.5
  %50 = getelementptr i8, ptr %44, i64 48
  %.461.6.5 = load double, ptr %50, align 8
  %.493.6.5 = load double, ptr %11, align 8
  %.494.6.5 = fmul double %.461.6.5, %.493.6.5
  %.496.6.5 = fadd double %.496.5.5, %.494.6.5
  %51 = getelementptr i8, ptr %arg.part.1.4, i64 40
  store double %.496.6.5, ptr %51, align 8
  %.idx594 = mul i64 %arg.cover.5.1, 48
  %52 = getelementptr i8, ptr %arg.cover.4, i64 %.idx594
  %.461.6587 = load double, ptr %52, align 8
  %.493.6588 = load double, ptr %arg.slope.4, align 8
  %.494.6589 = fmul double %.461.6587, %.493.6588
  %.496.6590 = fadd double %.494.6589, 0.000000e+00
  %53 = getelementptr i8, ptr %52, i64 8
  %.461.1.6 = load double, ptr %53, align 8
  %.493.1.6 = load double, ptr %1, align 8
  %.494.1.6 = fmul double %.461.1.6, %.493.1.6
  %.496.1.6 = fadd double %.496.6590, %.494.1.6
  %54 = getelementptr i8, ptr %52, i64 16
  %.461.2.6 = load double, ptr %54, align 8
  %.493.2.6 = load double, ptr %3, align 8
  %.494.2.6 = fmul double %.461.2.6, %.493.2.6
  %.496.2.6 = fadd double %.496.1.6, %.494.2.6
  %55 = getelementptr i8, ptr %52, i64 24
  %.461.3.6 = load double, ptr %55, align 8
  %.493.3.6 = load double, ptr %5, align 8
  %.494.3.6 = fmul double %.461.3.6, %.493.3.6
  %.496.3.6 = fadd double %.496.2.6, %.494.3.6
  %56 = getelementptr i8, ptr %52, i64 32
  %.461.4.6 = load double, ptr %56, align 8
  %.493.4.6 = load double, ptr %7, align 8
  %.494.4.6 = fmul double %.461.4.6, %.493.4.6
  %.496.4.6 = fadd double %.496.3.6, %.494.4.6
  %57 = getelementptr i8, ptr %52, i64 40
  %.461.5.6 = load double, ptr %57, align 8
  %.493.5.6 = load double, ptr %9, align 8
  %.494.5.6 = fmul double %.461.5.6, %.493.5.6
  %.496.5.6 = fadd double %.496.4.6, %.494.5.6
  %58 = getelementptr i8, ptr %52, i64 48
  %.461.6.6 = load double, ptr %58, align 8
  %.493.6.6 = load double, ptr %11, align 8
  %.494.6.6 = fmul double %.461.6.6, %.493.6.6
  %.496.6.6 = fadd double %.496.5.6, %.494.6.6
  %59 = getelementptr i8, ptr %arg.part.1.4, i64 48
  store double %.496.6.6, ptr %59, align 8
  %.697 = load double, ptr %arg.slope.4, align 8
  %.697.1 = load double, ptr %1, align 8
  %.697.2 = load double, ptr %3, align 8
  %.697.3 = load double, ptr %5, align 8
  %.697.4 = load double, ptr %7, align 8
  %.697.5 = load double, ptr %9, align 8
  %.697.6 = load double, ptr %11, align 8
  %.147.i51 = fmul double %arg.seen.0, %arg.seen.0
  %.147.i27 = fmul double %arg.robust.1, %arg.robust.1
  %.147.i15 = fmul double %arg.seen.1, %arg.seen.1
  %.728 = fmul double %.496.6, %.697
  %.730 = fadd double %.728, 0.000000e+00
  %.728.1 = fmul double %.496.6.1, %.697.1
  %.730.1 = fadd double %.730, %.728.1
  %.728.2 = fmul double %.496.6.2, %.697.2
  %.730.2 = fadd double %.730.1, %.728.2
  %.728.3 = fmul double %.496.6.3, %.697.3
  %.730.3 = fadd double %.730.2, %.728.3
  %.728.4 = fmul double %.496.6.4, %.697.4
  %.730.4 = fadd double %.730.3, %.728.4
  %.728.5 = fmul double %.496.6.5, %.697.5
  %.730.5 = fadd double %.730.4, %.728.5
  %.728.6 = fmul double %.496.6.6, %.697.6
  %.730.6 = fadd double %.730.5, %.728.6
  %.769 = fadd double %.147.i15, %.730.6
  %.827 = fadd double %.147.i27, %.769
  %.836 = fsub double 1.000000e+00, %arg.robust.0
  %.862 = fmul double %.147.i51, -5.000000e-01
  %.867 = fdiv double %.862, %.769
  %.868 = tail call double @llvm.exp.f64(double %.867)
  %.869 = fmul double %.836, %.868
  %.871 = tail call double @sqrt(double %.769)
  %.875 = fdiv double %.869, %.871
  %.915 = fdiv double %.862, %.827
  %.916 = tail call double @llvm.exp.f64(double %.915)
  %.917 = fmul double %arg.robust.0, %.916
  %.919 = tail call double @sqrt(double %.827)
  %.923 = fdiv double %.917, %.919
  %.929 = fadd double %.875, %.923
  %.930 = fcmp ugt double %.929, 0.000000e+00
  br i1 %.930, label %B808.endif.endif.lver.check, label %B542

common.ret:
  %storemerge = phi double [ -7.000000e+02, %B542 ], [ %.1773, %B936.endif ]
  store double %storemerge, ptr %retptr, align 8
  ret i32 0

B542:
  tail call void @NRT_decref(ptr %arg.part.1.0)
  tail call void @NRT_decref(ptr %arg.part.0.0)
  tail call void @NRT_decref(ptr %arg.cover.0)
  br label %common.ret

B808.endif.endif.lver.check:
  %.995 = fdiv double 1.000000e+00, %.769
  %.1002 = fdiv double 1.000000e+00, %.827
  %.1005 = fsub double %.995, %.1002
  %.1007 = fmul double %arg.seen.0, %.1005
  %.147.i63 = fmul double %.1007, %.1007
  %.973 = fdiv double %.875, %.929
  %.978 = fdiv double %.973, %.769
  %.979 = fsub double 1.000000e+00, %.973
  %.984 = fdiv double %.979, %.827
  %.985 = fadd double %.978, %.984
  %.1245 = fmul double %arg.seen.0, %.985
  store double %.496.6, ptr %arg.part.0.4, align 8
  %.1242 = load double, ptr %arg.x.4, align 8
  %.1276 = fmul double %.496.6, %.1245
  %.1277 = fadd double %.1276, %.1242
  store double %.1277, ptr %arg.x.4, align 8
  %sunkaddr = getelementptr i8, ptr %arg.part.1.4, i64 8
  %.1182.1 = load double, ptr %sunkaddr, align 8
  %60 = getelementptr i8, ptr %arg.part.0.4, i64 8
  store double %.1182.1, ptr %60, align 8
  %61 = getelementptr i8, ptr %arg.x.4, i64 8
  %.1242.1 = load double, ptr %61, align 8
  %.1276.1 = fmul double %.1245, %.1182.1
  %.1277.1 = fadd double %.1276.1, %.1242.1
  store double %.1277.1, ptr %61, align 8
  %sunkaddr30 = getelementptr i8, ptr %arg.part.1.4, i64 16
  %.1182.2 = load double, ptr %sunkaddr30, align 8
  %62 = getelementptr i8, ptr %arg.part.0.4, i64 16
  store double %.1182.2, ptr %62, align 8
  %63 = getelementptr i8, ptr %arg.x.4, i64 16
  %.1242.2 = load double, ptr %63, align 8
  %.1276.2 = fmul double %.1245, %.1182.2
  %.1277.2 = fadd double %.1276.2, %.1242.2
  store double %.1277.2, ptr %63, align 8
  %sunkaddr31 = getelementptr i8, ptr %arg.part.1.4, i64 24
  %.1182.3 = load double, ptr %sunkaddr31, align 8
  %64 = getelementptr i8, ptr %arg.part.0.4, i64 24
  store double %.1182.3, ptr %64, align 8
  %65 = getelementptr i8, ptr %arg.x.4, i64 24
  %.1242.3 = load double, ptr %65, align 8
  %.1276.3 = fmul double %.1245, %.1182.3
  %.1277.3 = fadd double %.1276.3, %.1242.3
  store double %.1277.3, ptr %65, align 8
  %sunkaddr32 = getelementptr i8, ptr %arg.part.1.4, i64 32
  %.1182.4 = load double, ptr %sunkaddr32, align 8
  %66 = getelementptr i8, ptr %arg.part.0.4, i64 32
  store double %.1182.4, ptr %66, align 8
  %67 = getelementptr i8, ptr %arg.x.4, i64 32
  %.1242.4 = load double, ptr %67, align 8
  %.1276.4 = fmul double %.1245, %.1182.4
  %.1277.4 = fadd double %.1276.4, %.1242.4
  store double %.1277.4, ptr %67, align 8
  %sunkaddr33 = getelementptr i8, ptr %arg.part.1.4, i64 40
  %.1182.5 = load double, ptr %sunkaddr33, align 8
  %68 = getelementptr i8, ptr %arg.part.0.4, i64 40
  store double %.1182.5, ptr %68, align 8
  %69 = getelementptr i8, ptr %arg.x.4, i64 40
  %.1242.5 = load double, ptr %69, align 8
  %.1276.5 = fmul double %.1245, %.1182.5
  %.1277.5 = fadd double %.1276.5, %.1242.5
  store double %.1277.5, ptr %69, align 8
  %sunkaddr34 = getelementptr i8, ptr %arg.part.1.4, i64 48
  %.1182.6 = load double, ptr %sunkaddr34, align 8
  %70 = getelementptr i8, ptr %arg.part.0.4, i64 48
  store double %.1182.6, ptr %70, align 8
  %71 = getelementptr i8, ptr %arg.x.4, i64 48
  %.1242.6 = load double, ptr %71, align 8
  %.1276.6 = fmul double %.1245, %.1182.6
  %.1277.6 = fadd double %.1276.6, %.1242.6
  store double %.1277.6, ptr %71, align 8
  %.990 = fmul double %.973, %.979
  %.1032 = fmul double %.147.i63, %.990
  tail call void @NRT_decref(ptr %arg.part.1.0)
  %.1617 = fsub double %.985, %.1032
  %ident.check.not = icmp eq i64 %arg.cover.5.1, 1
  br i1 %ident.check.not, label %B808.endif.endif.ph, label %B808.endif.endif.lver.orig.preheader

B808.endif.endif.lver.orig.preheader:
  %72 = shl i64 %arg.cover.5.1, 3
  br label %B808.endif.endif.lver.orig

B808.endif.endif.lver.orig:
  %lsr.iv80 = phi ptr [ %10, %B808.endif.endif.lver.orig.preheader ], [ %scevgep81, %B808.endif.endif.lver.orig ]
  %.1410560565.lver.orig = phi i64 [ 0, %B808.endif.endif.lver.orig.preheader ], [ %.1417.lver.orig, %B808.endif.endif.lver.orig ]
  %scevgep87 = getelementptr i8, ptr %lsr.iv80, i64 -48
  %73 = shl nuw nsw i64 %.1410560565.lver.orig, 3
  %scevgep = getelementptr i8, ptr %arg.part.0.4, i64 %73
  %.1614.lver.orig = load double, ptr %scevgep87, align 8
  %.1648.lver.orig = load double, ptr %scevgep, align 8
  %.1649.lver.orig = fmul double %.1617, %.1648.lver.orig
  %.1679.lver.orig = load double, ptr %arg.part.0.4, align 8
  %.1680.lver.orig = fmul double %.1649.lver.orig, %.1679.lver.orig
  %.1681.lver.orig = fsub double %.1614.lver.orig, %.1680.lver.orig
  store double %.1681.lver.orig, ptr %scevgep87, align 8
  %scevgep86 = getelementptr i8, ptr %lsr.iv80, i64 -40
  %.1614.1.lver.orig = load double, ptr %scevgep86, align 8
  %.1648.1.lver.orig = load double, ptr %scevgep, align 8
  %.1649.1.lver.orig = fmul double %.1617, %.1648.1.lver.orig
  %sunkaddr35 = getelementptr i8, ptr %arg.part.0.4, i64 8
  %.1679.1.lver.orig = load double, ptr %sunkaddr35, align 8
  %.1680.1.lver.orig = fmul double %.1649.1.lver.orig, %.1679.1.lver.orig
  %.1681.1.lver.orig = fsub double %.1614.1.lver.orig, %.1680.1.lver.orig
  store double %.1681.1.lver.orig, ptr %scevgep86, align 8
  %scevgep85 = getelementptr i8, ptr %lsr.iv80, i64 -32
  %.1614.2.lver.orig = load double, ptr %scevgep85, align 8
  %.1648.2.lver.orig = load double, ptr %scevgep, align 8
  %.1649.2.lver.orig = fmul double %.1617, %.1648.2.lver.orig
  %sunkaddr36 = getelementptr i8, ptr %arg.part.0.4, i64 16
  %.1679.2.lver.orig = load double, ptr %sunkaddr36, align 8
  %.1680.2.lver.orig = fmul double %.1649.2.lver.orig, %.1679.2.lver.orig
  %.1681.2.lver.orig = fsub double %.1614.2.lver.orig, %.1680.2.lver.orig
  store double %.1681.2.lver.orig, ptr %scevgep85, align 8
  %scevgep84 = getelementptr i8, ptr %lsr.iv80, i64 -24
  %.1614.3.lver.orig = load double, ptr %scevgep84, align 8
  %.1648.3.lver.orig = load double, ptr %scevgep, align 8
  %.1649.3.lver.orig = fmul double %.1617, %.1648.3.lver.orig
  %sunkaddr37 = getelementptr i8, ptr %arg.part.0.4, i64 24
  %.1679.3.lver.orig = load double, ptr %sunkaddr37, align 8
  %.1680.3.lver.orig = fmul double %.1649.3.lver.orig, %.1679.3.lver.orig
  %.1681.3.lver.orig = fsub double %.1614.3.lver.orig, %.1680.3.lver.orig
  store double %.1681.3.lver.orig, ptr %scevgep84, align 8
  %scevgep83 = getelementptr i8, ptr %lsr.iv80, i64 -16
  %.1614.4.lver.orig = load double, ptr %scevgep83, align 8
  %.1648.4.lver.orig = load double, ptr %scevgep, align 8
  %.1649.4.lver.orig = fmul double %.1617, %.1648.4.lver.orig
  %sunkaddr38 = getelementptr i8, ptr %arg.part.0.4, i64 32
  %.1679.4.lver.orig = load double, ptr %sunkaddr38, align 8
  %.1680.4.lver.orig = fmul double %.1649.4.lver.orig, %.1679.4.lver.orig
  %.1681.4.lver.orig = fsub double %.1614.4.lver.orig, %.1680.4.lver.orig
  store double %.1681.4.lver.orig, ptr %scevgep83, align 8
  %scevgep82 = getelementptr i8, ptr %lsr.iv80, i64 -8
  %.1614.5.lver.orig = load double, ptr %scevgep82, align 8
  %.1648.5.lver.orig = load double, ptr %scevgep, align 8
  %.1649.5.lver.orig = fmul double %.1617, %.1648.5.lver.orig
  %sunkaddr39 = getelementptr i8, ptr %arg.part.0.4, i64 40
  %.1679.5.lver.orig = load double, ptr %sunkaddr39, align 8
  %.1680.5.lver.orig = fmul double %.1649.5.lver.orig, %.1679.5.lver.orig
  %.1681.5.lver.orig = fsub double %.1614.5.lver.orig, %.1680.5.lver.orig
  store double %.1681.5.lver.orig, ptr %scevgep82, align 8
  %.1614.6.lver.orig = load double, ptr %lsr.iv80, align 8
  %.1648.6.lver.orig = load double, ptr %scevgep, align 8
  %.1649.6.lver.orig = fmul double %.1617, %.1648.6.lver.orig
  %sunkaddr40 = getelementptr i8, ptr %arg.part.0.4, i64 48
  %.1679.6.lver.orig = load double, ptr %sunkaddr40, align 8
  %.1680.6.lver.orig = fmul double %.1649.6.lver.orig, %.1679.6.lver.orig
  %.1681.6.lver.orig = fsub double %.1614.6.lver.orig, %.1680.6.lver.orig
  store double %.1681.6.lver.orig, ptr %lsr.iv80, align 8
  %.1417.lver.orig = add nuw nsw i64 %.1410560565.lver.orig, 1
  %scevgep81 = getelementptr i8, ptr %lsr.iv80, i64 %72
  %exitcond.not.lver.orig = icmp eq i64 %.1417.lver.orig, 7
  br i1 %exitcond.not.lver.orig, label %B936.endif, label %B808.endif.endif.lver.orig

B808.endif.endif.ph:
  %sunkaddr41 = getelementptr i8, ptr %arg.cover.4, i64 40
  %load_initial = load double, ptr %sunkaddr41, align 8
  br label %B808.endif.endif

B808.endif.endif:
  %store_forwarded = phi double [ %load_initial, %B808.endif.endif.ph ], [ %.1681.6, %B808.endif.endif ]
  %.1410560565 = phi i64 [ 0, %B808.endif.endif.ph ], [ %.1417, %B808.endif.endif ]
  %74 = shl nuw nsw i64 %.1410560565, 3
  %scevgep29 = getelementptr i8, ptr %10, i64 %74
  %75 = shl nuw nsw i64 %.1410560565, 3
  %scevgep27 = getelementptr i8, ptr %10, i64 %75
  %scevgep28 = getelementptr i8, ptr %scevgep27, i64 -48
  %76 = shl nuw nsw i64 %.1410560565, 3
  %scevgep8 = getelementptr i8, ptr %arg.part.0.4, i64 %76
  %.1614 = load double, ptr %scevgep28, align 8
  %.1648 = load double, ptr %scevgep8, align 8
  %.1649 = fmul double %.1617, %.1648
  %.1679 = load double, ptr %arg.part.0.4, align 8
  %.1680 = fmul double %.1649, %.1679
  %.1681 = fsub double %.1614, %.1680
  store double %.1681, ptr %scevgep28, align 8
  %77 = shl nuw nsw i64 %.1410560565, 3
  %scevgep25 = getelementptr i8, ptr %10, i64 %77
  %scevgep26 = getelementptr i8, ptr %scevgep25, i64 -40
  %.1614.1 = load double, ptr %scevgep26, align 8
  %.1648.1 = load double, ptr %scevgep8, align 8
  %.1649.1 = fmul double %.1617, %.1648.1
  %sunkaddr42 = getelementptr i8, ptr %arg.part.0.4, i64 8
  %.1679.1 = load double, ptr %sunkaddr42, align 8
  %.1680.1 = fmul double %.1649.1, %.1679.1
  %.1681.1 = fsub double %.1614.1, %.1680.1
  store double %.1681.1, ptr %scevgep26, align 8
  %78 = shl nuw nsw i64 %.1410560565, 3
  %scevgep23 = getelementptr i8, ptr %10, i64 %78
  %scevgep24 = getelementptr i8, ptr %scevgep23, i64 -32
  %.1614.2 = load double, ptr %scevgep24, align 8
  %.1648.2 = load double, ptr %scevgep8, align 8
  %.1649.2 = fmul double %.1617, %.1648.2
  %sunkaddr43 = getelementptr i8, ptr %arg.part.0.4, i64 16
  %.1679.2 = load double, ptr %sunkaddr43, align 8
  %.1680.2 = fmul double %.1649.2, %.1679.2
  %.1681.2 = fsub double %.1614.2, %.1680.2
  store double %.1681.2, ptr %scevgep24, align 8
  %79 = shl nuw nsw i64 %.1410560565, 3
  %scevgep18 = getelementptr i8, ptr %10, i64 %79
  %scevgep22 = getelementptr i8, ptr %scevgep18, i64 -24
  %.1614.3 = load double, ptr %scevgep22, align 8
  %.1648.3 = load double, ptr %scevgep8, align 8
  %.1649.3 = fmul double %.1617, %.1648.3
  %sunkaddr44 = getelementptr i8, ptr %arg.part.0.4, i64 24
  %.1679.3 = load double, ptr %sunkaddr44, align 8
  %.1680.3 = fmul double %.1649.3, %.1679.3
  %.1681.3 = fsub double %.1614.3, %.1680.3
  store double %.1681.3, ptr %scevgep22, align 8
  %80 = shl nuw nsw i64 %.1410560565, 3
  %scevgep14 = getelementptr i8, ptr %10, i64 %80
  %scevgep16 = getelementptr i8, ptr %scevgep14, i64 -16
  %.1614.4 = load double, ptr %scevgep16, align 8
  %.1648.4 = load double, ptr %scevgep8, align 8
  %.1649.4 = fmul double %.1617, %.1648.4
  %sunkaddr45 = getelementptr i8, ptr %arg.part.0.4, i64 32
  %.1679.4 = load double, ptr %sunkaddr45, align 8
  %.1680.4 = fmul double %.1649.4, %.1679.4
  %.1681.4 = fsub double %.1614.4, %.1680.4
  store double %.1681.4, ptr %scevgep16, align 8
  %81 = shl nuw nsw i64 %.1410560565, 3
  %scevgep10 = getelementptr i8, ptr %10, i64 %81
  %scevgep12 = getelementptr i8, ptr %scevgep10, i64 -8
  %.1648.5 = load double, ptr %scevgep8, align 8
  %.1649.5 = fmul double %.1617, %.1648.5
  %sunkaddr46 = getelementptr i8, ptr %arg.part.0.4, i64 40
  %.1679.5 = load double, ptr %sunkaddr46, align 8
  %.1680.5 = fmul double %.1649.5, %.1679.5
  %.1681.5 = fsub double %store_forwarded, %.1680.5
  store double %.1681.5, ptr %scevgep12, align 8
  %.1614.6 = load double, ptr %scevgep29, align 8
  %.1648.6 = load double, ptr %scevgep8, align 8
  %.1649.6 = fmul double %.1617, %.1648.6
  %sunkaddr47 = getelementptr i8, ptr %arg.part.0.4, i64 48
  %.1679.6 = load double, ptr %sunkaddr47, align 8
  %.1680.6 = fmul double %.1649.6, %.1679.6
  %.1681.6 = fsub double %.1614.6, %.1680.6
  store double %.1681.6, ptr %scevgep29, align 8
  %.1417 = add nuw nsw i64 %.1410560565, 1
  %exitcond.not = icmp eq i64 %.1417, 7
  br i1 %exitcond.not, label %B936.endif, label %B808.endif.endif

B936.endif:
  tail call void @NRT_decref(ptr %arg.part.0.0)
  tail call void @NRT_decref(ptr %arg.cover.0)
  %.1772 = fdiv double %.929, 0x40040D931FF62705
  %.1773 = tail call double @llvm.log.f64(double %.1772)
  br label %common.ret
}

define internal range(i32 -1, -2) i32 @n20(ptr noalias writeonly captures(none) %retptr, ptr noalias writeonly captures(none) %excinfo, ptr %arg.x.0, ptr readnone captures(none) %arg.x.1, i64 %arg.x.2, i64 %arg.x.3, ptr captures(none) %arg.x.4, i64 %arg.x.5.0, i64 %arg.x.6.0, ptr %arg.cover.0, ptr readnone captures(none) %arg.cover.1, i64 %arg.cover.2, i64 %arg.cover.3, ptr %arg.cover.4, i64 %arg.cover.5.0, i64 %arg.cover.5.1, i64 %arg.cover.6.0, i64 %arg.cover.6.1, double %arg.told.0, i8 %arg.told.1, double %arg.fresh, double %arg.fresh_sd, ptr %arg.part.0.0, ptr readnone captures(none) %arg.part.0.1, i64 %arg.part.0.2, i64 %arg.part.0.3, ptr captures(none) %arg.part.0.4, i64 %arg.part.0.5.0, i64 %arg.part.0.6.0, ptr %arg.part.1.0, ptr readnone captures(none) %arg.part.1.1, i64 %arg.part.1.2, i64 %arg.part.1.3, ptr captures(none) %arg.part.1.4, i64 %arg.part.1.5.0, i64 %arg.part.1.6.0) local_unnamed_addr {
entry:
  %.46.not = icmp eq i8 %arg.told.1, 0
  %.1192 = alloca ptr, align 8
  %excinfo.5 = alloca ptr, align 8
  tail call void @NRT_incref(ptr %arg.cover.0)
  tail call void @NRT_incref(ptr %arg.part.0.0)
  tail call void @NRT_incref(ptr %arg.part.1.0)
  br i1 %.46.not, label %B138, label %B30.else.endif

B138:
  %.599 = fcmp ogt double %arg.told.0, 0.000000e+00
  br i1 %.599, label %B150.endif.endif.else.endif, label %B450

common.ret.sink.split:
  tail call void @NRT_decref(ptr %arg.part.1.0)
  tail call void @NRT_decref(ptr %arg.cover.0)
  br label %common.ret

common.ret:
  %excinfo.sink = phi ptr [ %excinfo, %.943 ], [ %retptr, %common.ret.sink.split ]
  %common.ret.op = phi i32 [ %.1204, %.943 ], [ 0, %common.ret.sink.split ]
  store ptr null, ptr %excinfo.sink, align 8
  ret i32 %common.ret.op

B450:
  tail call void @NRT_decref(ptr %arg.part.0.0)
  br label %common.ret.sink.split

B30.else.endif:
  tail call void @NRT_decref(ptr %arg.part.0.0)
  store double %arg.fresh, ptr %arg.x.4, align 8
  %.377 = icmp slt i64 %arg.part.1.5.0, 1
  br i1 %.377, label %.444, label %.443.endif.preheader

.443.endif.preheader:
  %0 = shl i64 %arg.part.1.5.0, 3
  tail call void @llvm.memset.p0.i64(ptr align 8 %arg.part.1.4, i8 0, i64 %0, i1 false)
  br label %.444

.444:
  %.147.i = fmul double %arg.fresh_sd, %arg.fresh_sd
  store double %.147.i, ptr %arg.part.1.4, align 8
  store double %.147.i, ptr %arg.cover.4, align 8
  %1 = getelementptr i8, ptr %arg.part.1.4, i64 8
  %.189.1.i = load double, ptr %1, align 8
  %2 = getelementptr i8, ptr %arg.cover.4, i64 8
  store double %.189.1.i, ptr %2, align 8
  %.328.1.i = getelementptr double, ptr %arg.cover.4, i64 %arg.cover.5.1
  store double %.189.1.i, ptr %.328.1.i, align 8
  %3 = getelementptr i8, ptr %arg.part.1.4, i64 16
  %.189.2.i = load double, ptr %3, align 8
  %4 = getelementptr i8, ptr %arg.cover.4, i64 16
  store double %.189.2.i, ptr %4, align 8
  %.328.2.idx.i = shl i64 %arg.cover.5.1, 4
  %.328.2.i = getelementptr i8, ptr %arg.cover.4, i64 %.328.2.idx.i
  store double %.189.2.i, ptr %.328.2.i, align 8
  %5 = getelementptr i8, ptr %arg.part.1.4, i64 24
  %.189.3.i = load double, ptr %5, align 8
  %6 = getelementptr i8, ptr %arg.cover.4, i64 24
  store double %.189.3.i, ptr %6, align 8
  %.328.3.idx.i = mul i64 %arg.cover.5.1, 24
  %.328.3.i = getelementptr i8, ptr %arg.cover.4, i64 %.328.3.idx.i
  store double %.189.3.i, ptr %.328.3.i, align 8
  %7 = getelementptr i8, ptr %arg.part.1.4, i64 32
  %.189.4.i = load double, ptr %7, align 8
  %8 = getelementptr i8, ptr %arg.cover.4, i64 32
  store double %.189.4.i, ptr %8, align 8
  %.328.4.idx.i = shl i64 %arg.cover.5.1, 5
  %.328.4.i = getelementptr i8, ptr %arg.cover.4, i64 %.328.4.idx.i
  store double %.189.4.i, ptr %.328.4.i, align 8
  %9 = getelementptr i8, ptr %arg.part.1.4, i64 40
  %.189.5.i = load double, ptr %9, align 8
  %10 = getelementptr i8, ptr %arg.cover.4, i64 40
  store double %.189.5.i, ptr %10, align 8
  %.328.5.idx.i = mul i64 %arg.cover.5.1, 40
  %.328.5.i = getelementptr i8, ptr %arg.cover.4, i64 %.328.5.idx.i
  store double %.189.5.i, ptr %.328.5.i, align 8
  %11 = getelementptr i8, ptr %arg.part.1.4, i64 48
  %.189.6.i = load double, ptr %11, align 8
  %12 = getelementptr i8, ptr %arg.cover.4, i64 48
  store double %.189.6.i, ptr %12, align 8
  %.328.6.idx.i = mul i64 %arg.cover.5.1, 48
  %.328.6.i = getelementptr i8, ptr %arg.cover.4, i64 %.328.6.idx.i
  store double %.189.6.i, ptr %.328.6.i, align 8
  br label %common.ret.sink.split

B150.endif.endif.else.endif:
  %.629 = getelementptr i8, ptr %arg.x.4, i64 32
  %.630 = load double, ptr %.629, align 8
  %.632 = fmul double %arg.told.0, %.630
  %.12.i = fcmp olt double %.632, 0.000000e+00
  %.13.i = select i1 %.12.i, double 0.000000e+00, double %.632
  %.12.i1 = fcmp ogt double %.13.i, 1.000000e+00
  %.13.i2 = select i1 %.12.i1, double 1.000000e+00, double %.13.i
  %.876 = icmp slt i64 %arg.part.0.5.0, 1
  br i1 %.876, label %.943, label %.942.endif.preheader

.942.endif.preheader:
  %13 = shl i64 %arg.part.0.5.0, 3
  tail call void @llvm.memset.p0.i64(ptr align 8 %arg.part.0.4, i8 0, i64 %13, i1 false)
  br label %.943

.943:
  %.989 = fsub double 1.000000e+00, %.13.i2
  %.991 = fneg double %arg.told.0
  %.1023 = load double, ptr %arg.x.4, align 8
  %.1025 = fsub double %.1023, %arg.fresh
  %.1026 = fmul double %.1025, %.991
  store double %.989, ptr %arg.part.0.4, align 8
  %.1085 = getelementptr i8, ptr %arg.part.0.4, i64 32
  store double %.1026, ptr %.1085, align 8
  %.1116 = load double, ptr %arg.x.4, align 8
  %.1148 = fsub double %arg.fresh, %.1116
  %.1151 = fmul double %.13.i2, %.1148
  %.1152 = fadd double %.1116, %.1151
  store double %.1152, ptr %arg.x.4, align 8
  %.1204 = call i32 @n24(ptr nonnull %.1192, ptr nonnull %excinfo.5, ptr %arg.cover.0, ptr %arg.cover.1, i64 %arg.cover.2, i64 %arg.cover.3, ptr %arg.cover.4, i64 %arg.cover.5.0, i64 %arg.cover.5.1, i64 %arg.cover.6.0, i64 %arg.cover.6.1, ptr %arg.part.0.0, ptr %arg.part.0.1, i64 %arg.part.0.2, i64 %arg.part.0.3, ptr nonnull %arg.part.0.4, i64 %arg.part.0.5.0, i64 %arg.part.0.6.0, ptr %arg.part.1.0, ptr %arg.part.1.1, i64 %arg.part.1.2, i64 %arg.part.1.3, ptr %arg.part.1.4, i64 %arg.part.1.5.0, i64 %arg.part.1.6.0)
  %cond = icmp eq i32 %.1204, 0
  br i1 %cond, label %.943.endif, label %common.ret

.943.endif:
  tail call void @NRT_decref(ptr %arg.part.0.0)
  br label %common.ret.sink.split
}

define internal range(i32 0, 2) i32 @n21(ptr noalias writeonly captures(none) %retptr, ptr noalias writeonly captures(none) %excinfo, ptr %arg.a.0, ptr readnone captures(none) %arg.a.1, i64 %arg.a.2, i64 %arg.a.3, ptr %arg.a.4, i64 %arg.a.5.0, i64 %arg.a.6.0) local_unnamed_addr {
B0:
  %.19.i.i = alloca { ptr, ptr, i64, i64, ptr, [0 x i64], [0 x i64] }, align 8
  %.23.i.i = alloca [1 x i64], align 8
  %.79.i.i = alloca [1 x i64], align 8
  tail call void @NRT_incref(ptr %arg.a.0)
  %.25 = icmp eq i64 %arg.a.2, 0
  br i1 %.25, label %B28, label %B58.endif

common.ret:
  %common.ret.op = phi i32 [ 1, %B28 ], [ 0, %B188 ], [ 0, %B262 ], [ 0, %B300.critedge ], [ 1, %end.endif.endif.if.if ]
  ret i32 %common.ret.op

B28:
  tail call void @NRT_decref(ptr %arg.a.0)
  store ptr @n12, ptr %excinfo, align 8
  br label %common.ret

B188:
  tail call void @NRT_decref(ptr %arg.a.0)
  store double %.119.i, ptr %retptr, align 8
  br label %common.ret

B192:
  %0 = icmp sgt i64 %arg.a.2, 1
  br i1 %0, label %B196.endif.preheader, label %B300.critedge

B196.endif.preheader:
  br label %B196.endif

B262:
  tail call void @NRT_decref(ptr %arg.a.0)
  store double %.434, ptr %retptr, align 8
  br label %common.ret

B196.backedge:
  %.380 = add nuw i64 %.380254258, 1
  %.6.i.inv = fcmp ogt double %.434, %max_value.2.0259
  %max_value.2.0..434 = select i1 %.6.i.inv, double %.434, double %max_value.2.0259
  %exitcond.not = icmp eq i64 %arg.a.2, %.380
  br i1 %exitcond.not, label %B300.critedge, label %B196.endif

B300.critedge:
  %max_value.2.0.lcssa = phi double [ %.119.i, %B192 ], [ %max_value.2.0..434, %B196.backedge ]
  store double %max_value.2.0.lcssa, ptr %retptr, align 8
  tail call void @NRT_decref(ptr %arg.a.0)
  br label %common.ret

B58.endif:
  %.183 = icmp sgt i64 %arg.a.2, 1
  br i1 %.183, label %end, label %B58.endif.endif.endif

end:
  %.89.0 = phi i64 [ 0, %B58.endif.endif.endif ], [ 1, %B58.endif ]
  call void @llvm.lifetime.start.p0(ptr nonnull %.19.i.i)
  call void @llvm.lifetime.start.p0(ptr nonnull %.23.i.i)
  call void @llvm.lifetime.start.p0(ptr nonnull %.79.i.i)
  %.fca.2.gep.i.i = getelementptr inbounds nuw i8, ptr %.19.i.i, i64 16
  %.fca.3.gep.i.i = getelementptr inbounds nuw i8, ptr %.19.i.i, i64 24
  %.fca.4.gep.i.i = getelementptr inbounds nuw i8, ptr %.19.i.i, i64 32
  store i64 0, ptr %.79.i.i, align 8
  call void @llvm.memset.p0.i64(ptr noundef nonnull align 8 dereferenceable(16) %.19.i.i, i8 0, i64 16, i1 false)
  store i64 1, ptr %.fca.2.gep.i.i, align 8
  store i64 8, ptr %.fca.3.gep.i.i, align 8
  store ptr %arg.a.4, ptr %.fca.4.gep.i.i, align 8
  store i64 1, ptr %.23.i.i, align 8
  %.81.i.i = getelementptr inbounds nuw i8, ptr %.19.i.i, i64 40
  %.89.i.i = call i32 @numba_attempt_nocopy_reshape(i64 0, ptr nonnull %.81.i.i, ptr nonnull %.81.i.i, i64 1, ptr nonnull %.23.i.i, ptr nonnull %.79.i.i, i64 8, i32 0)
  %.90.i.i = icmp eq i32 %.89.i.i, 0
  br i1 %.90.i.i, label %end.endif.endif.if.if, label %end.endif.endif.endif

B58.endif.endif.endif:
  br label %end

end.endif.endif.endif:
  %sunkaddr = getelementptr inbounds i8, ptr %.19.i.i, i64 32
  %.101.i.i = load ptr, ptr %sunkaddr, align 8
  call void @llvm.lifetime.end.p0(ptr nonnull %.19.i.i)
  call void @llvm.lifetime.end.p0(ptr nonnull %.23.i.i)
  call void @llvm.lifetime.end.p0(ptr nonnull %.79.i.i)
  %.119.i = load double, ptr %.101.i.i, align 8
  %.255.le = fcmp uno double %.119.i, 0.000000e+00
  br i1 %.255.le, label %B188, label %B192

end.endif.endif.if.if:
  call void @llvm.lifetime.end.p0(ptr nonnull %.19.i.i)
  call void @llvm.lifetime.end.p0(ptr nonnull %.23.i.i)
  call void @llvm.lifetime.end.p0(ptr nonnull %.79.i.i)
  store ptr @n15, ptr %excinfo, align 8
  br label %common.ret

B196.endif:
  %max_value.2.0259 = phi double [ %max_value.2.0..434, %B196.backedge ], [ %.119.i, %B196.endif.preheader ]
  %.380254258 = phi i64 [ %.380, %B196.backedge ], [ %.89.0, %B196.endif.preheader ]
  %1 = shl i64 %.380254258, 3
  %scevgep = getelementptr i8, ptr %arg.a.4, i64 %1
  %.434 = load double, ptr %scevgep, align 8
  %.447.le = fcmp uno double %.434, 0.000000e+00
  br i1 %.447.le, label %B262, label %B196.backedge
}

define internal noundef range(i32 -1, -2) i32 @n22(ptr noalias writeonly captures(none) initializes((0, 8)) %retptr, ptr noalias readnone captures(none) %excinfo, ptr %arg.x.0, ptr readnone captures(none) %arg.x.1, i64 %arg.x.2, i64 %arg.x.3, ptr readonly captures(none) %arg.x.4, i64 %arg.x.5.0, i64 %arg.x.6.0, ptr %arg.cover.0, ptr readnone captures(none) %arg.cover.1, i64 %arg.cover.2, i64 %arg.cover.3, ptr readonly captures(none) %arg.cover.4, i64 %arg.cover.5.0, i64 %arg.cover.5.1, i64 %arg.cover.6.0, i64 %arg.cover.6.1, double %arg.weekend, double %arg.fresh, double %arg.bend, double %arg.limit, ptr %arg.slope.0, ptr readnone captures(none) %arg.slope.1, i64 %arg.slope.2, i64 %arg.slope.3, ptr captures(none) initializes((0, 32)) %arg.slope.4, i64 %arg.slope.5.0, i64 %arg.slope.6.0) local_unnamed_addr {
B0.endif.endif.else.endif:
  %.92 = load double, ptr %arg.x.4, align 8
  %.148 = getelementptr i8, ptr %arg.x.4, i64 24
  %.149 = load double, ptr %.148, align 8
  %.187 = getelementptr i8, ptr %arg.x.4, i64 8
  %.188 = load double, ptr %.187, align 8
  %.219 = getelementptr i8, ptr %arg.x.4, i64 16
  %.220 = load double, ptr %.219, align 8
  %.440 = icmp slt i64 %arg.slope.5.0, 1
  br i1 %.440, label %common.ret, label %.506.endif.preheader

common.ret:
  %.151 = fmul double %arg.weekend, %.149
  %.152 = fadd double %.151, 1.000000e+00
  %.190 = fmul double %.188, %.152
  %.221 = fadd double %.220, %.190
  %.12.i1 = fcmp olt double %.221, 0.000000e+00
  %.13.i2 = select i1 %.12.i1, double 0.000000e+00, double %.221
  %.7.i = fsub double %.92, %arg.fresh
  %.8.i = fmul double %arg.bend, %.7.i
  %.12.i = fdiv double %.8.i, 2.000000e+01
  %.13.i = fadd double %.12.i, 1.000000e+00
  %.12.i.i = fcmp olt double %.13.i, 5.000000e-02
  %.13.i.i = select i1 %.12.i.i, double 5.000000e-02, double %.13.i
  %.554 = fcmp ogt double %.13.i.i, 5.000000e-02
  %.561 = fmul double %arg.bend, %.13.i2
  %.567 = fdiv double %.561, 2.000000e+01
  %0 = fadd double %.567, 1.000000e+00
  %.579 = select i1 %.554, double %0, double 1.000000e+00
  store double %.579, ptr %arg.slope.4, align 8
  %.616 = fmul double %.152, %.13.i.i
  %sunkaddr = getelementptr i8, ptr %arg.x.4, i64 8
  %.648 = load double, ptr %sunkaddr, align 8
  %.650 = fmul double %.13.i.i, %.648
  %.652 = fmul double %arg.weekend, %.650
  %.683 = getelementptr i8, ptr %arg.slope.4, i64 8
  store double %.616, ptr %.683, align 8
  %.714 = getelementptr i8, ptr %arg.slope.4, i64 16
  store double %.13.i.i, ptr %.714, align 8
  %.744 = getelementptr i8, ptr %arg.slope.4, i64 24
  store double %.652, ptr %.744, align 8
  %.1041 = load double, ptr %arg.cover.4, align 8
  %.1074 = fmul double %.579, %.1041
  %.1076 = fadd double %.1074, 0.000000e+00
  %1 = getelementptr i8, ptr %arg.cover.4, i64 8
  %.1041.1 = load double, ptr %1, align 8
  %.1074.1 = fmul double %.616, %.1041.1
  %.1076.1 = fadd double %.1076, %.1074.1
  %2 = getelementptr i8, ptr %arg.cover.4, i64 16
  %.1041.2 = load double, ptr %2, align 8
  %.1074.2 = fmul double %.13.i.i, %.1041.2
  %.1076.2 = fadd double %.1076.1, %.1074.2
  %3 = getelementptr i8, ptr %arg.cover.4, i64 24
  %.1041.3 = load double, ptr %3, align 8
  %.1074.3 = fmul double %.652, %.1041.3
  %.1076.3 = fadd double %.1076.2, %.1074.3
  %4 = getelementptr i8, ptr %arg.cover.4, i64 32
  %.1041.4 = load double, ptr %4, align 8
  %5 = getelementptr i8, ptr %arg.slope.4, i64 32
  %.1073.4 = load double, ptr %5, align 8
  %.1074.4 = fmul double %.1041.4, %.1073.4
  %.1076.4 = fadd double %.1076.3, %.1074.4
  %6 = getelementptr i8, ptr %arg.cover.4, i64 40
  %.1041.5 = load double, ptr %6, align 8
  %7 = getelementptr i8, ptr %arg.slope.4, i64 40
  %.1073.5 = load double, ptr %7, align 8
  %.1074.5 = fmul double %.1041.5, %.1073.5
  %.1076.5 = fadd double %.1076.4, %.1074.5
  %8 = getelementptr i8, ptr %arg.cover.4, i64 48
  %.1041.6 = load double, ptr %8, align 8
  %9 = getelementptr i8, ptr %arg.slope.4, i64 48
  %.1073.6 = load double, ptr %9, align 8
  %.1074.6 = fmul double %.1041.6, %.1073.6
  %.1076.6 = fadd double %.1076.5, %.1074.6
  %.1118 = fmul double %.579, %.1076.6
  %.1122 = fadd double %.1118, 0.000000e+00
  %10 = getelementptr double, ptr %arg.cover.4, i64 %arg.cover.5.1
  %.1041.1355 = load double, ptr %10, align 8
  %.1074.1357 = fmul double %.579, %.1041.1355
  %.1076.1358 = fadd double %.1074.1357, 0.000000e+00
  %11 = getelementptr i8, ptr %10, i64 8
  %.1041.1.1 = load double, ptr %11, align 8
  %.1074.1.1 = fmul double %.616, %.1041.1.1
  %.1076.1.1 = fadd double %.1076.1358, %.1074.1.1
  %12 = getelementptr i8, ptr %10, i64 16
  %.1041.2.1 = load double, ptr %12, align 8
  %.1074.2.1 = fmul double %.13.i.i, %.1041.2.1
  %.1076.2.1 = fadd double %.1076.1.1, %.1074.2.1
  %13 = getelementptr i8, ptr %10, i64 24
  %.1041.3.1 = load double, ptr %13, align 8
  %.1074.3.1 = fmul double %.652, %.1041.3.1
  %.1076.3.1 = fadd double %.1076.2.1, %.1074.3.1
  %14 = getelementptr i8, ptr %10, i64 32
  %.1041.4.1 = load double, ptr %14, align 8
  %.1074.4.1 = fmul double %.1073.4, %.1041.4.1
  %.1076.4.1 = fadd double %.1076.3.1, %.1074.4.1
  %15 = getelementptr i8, ptr %10, i64 40
  %.1041.5.1 = load double, ptr %15, align 8
  %.1074.5.1 = fmul double %.1073.5, %.1041.5.1
  %.1076.5.1 = fadd double %.1076.4.1, %.1074.5.1
  %16 = getelementptr i8, ptr %10, i64 48
  %.1041.6.1 = load double, ptr %16, align 8
  %.1074.6.1 = fmul double %.1073.6, %.1041.6.1
  %.1076.6.1 = fadd double %.1076.5.1, %.1074.6.1
  %.1118.1 = fmul double %.616, %.1076.6.1
  %.1122.1 = fadd double %.1122, %.1118.1
  %.idx = shl i64 %arg.cover.5.1, 4
  %17 = getelementptr i8, ptr %arg.cover.4, i64 %.idx
  %.1041.2359 = load double, ptr %17, align 8
  %.1074.2361 = fmul double %.579, %.1041.2359
  %.1076.2362 = fadd double %.1074.2361, 0.000000e+00
  %18 = getelementptr i8, ptr %17, i64 8
  %.1041.1.2 = load double, ptr %18, align 8
  %.1074.1.2 = fmul double %.616, %.1041.1.2
  %.1076.1.2 = fadd double %.1076.2362, %.1074.1.2
  %19 = getelementptr i8, ptr %17, i64 16
  %.1041.2.2 = load double, ptr %19, align 8
  %.1074.2.2 = fmul double %.13.i.i, %.1041.2.2
  %.1076.2.2 = fadd double %.1076.1.2, %.1074.2.2
  %20 = getelementptr i8, ptr %17, i64 24
  %.1041.3.2 = load double, ptr %20, align 8
  %.1074.3.2 = fmul double %.652, %.1041.3.2
  %.1076.3.2 = fadd double %.1076.2.2, %.1074.3.2
  %21 = getelementptr i8, ptr %17, i64 32
  %.1041.4.2 = load double, ptr %21, align 8
  %.1074.4.2 = fmul double %.1073.4, %.1041.4.2
  %.1076.4.2 = fadd double %.1076.3.2, %.1074.4.2
  %22 = getelementptr i8, ptr %17, i64 40
  %.1041.5.2 = load double, ptr %22, align 8
  %.1074.5.2 = fmul double %.1073.5, %.1041.5.2
  %.1076.5.2 = fadd double %.1076.4.2, %.1074.5.2
  %23 = getelementptr i8, ptr %17, i64 48
  %.1041.6.2 = load double, ptr %23, align 8
  %.1074.6.2 = fmul double %.1073.6, %.1041.6.2
  %.1076.6.2 = fadd double %.1076.5.2, %.1074.6.2
  %.1118.2 = fmul double %.13.i.i, %.1076.6.2
  %.1122.2 = fadd double %.1122.1, %.1118.2
  %.idx379 = mul i64 %arg.cover.5.1, 24
  %24 = getelementptr i8, ptr %arg.cover.4, i64 %.idx379
  %.1041.3363 = load double, ptr %24, align 8
  %.1074.3365 = fmul double %.579, %.1041.3363
  %.1076.3366 = fadd double %.1074.3365, 0.000000e+00
  %25 = getelementptr i8, ptr %24, i64 8
  %.1041.1.3 = load double, ptr %25, align 8
  %.1074.1.3 = fmul double %.616, %.1041.1.3
  %.1076.1.3 = fadd double %.1076.3366, %.1074.1.3
  %26 = getelementptr i8, ptr %24, i64 16
  %.1041.2.3 = load double, ptr %26, align 8
  %.1074.2.3 = fmul double %.13.i.i, %.1041.2.3
  %.1076.2.3 = fadd double %.1076.1.3, %.1074.2.3
  %27 = getelementptr i8, ptr %24, i64 24
  %.1041.3.3 = load double, ptr %27, align 8
  %.1074.3.3 = fmul double %.652, %.1041.3.3
  %.1076.3.3 = fadd double %.1076.2.3, %.1074.3.3
  %28 = getelementptr i8, ptr %24, i64 32
  %.1041.4.3 = load double, ptr %28, align 8
  %.1074.4.3 = fmul double %.1073.4, %.1041.4.3
  %.1076.4.3 = fadd double %.1076.3.3, %.1074.4.3
  %29 = getelementptr i8, ptr %24, i64 40
  %.1041.5.3 = load double, ptr %29, align 8
  %.1074.5.3 = fmul double %.1073.5, %.1041.5.3
  %.1076.5.3 = fadd double %.1076.4.3, %.1074.5.3
  %30 = getelementptr i8, ptr %24, i64 48
  %.1041.6.3 = load double, ptr %30, align 8
  %.1074.6.3 = fmul double %.1073.6, %.1041.6.3
  %.1076.6.3 = fadd double %.1076.5.3, %.1074.6.3
  %.1118.3 = fmul double %.652, %.1076.6.3
  %.1122.3 = fadd double %.1122.2, %.1118.3
  %.idx380 = shl i64 %arg.cover.5.1, 5
  %31 = getelementptr i8, ptr %arg.cover.4, i64 %.idx380
  %.1041.4367 = load double, ptr %31, align 8
  %.1074.4369 = fmul double %.579, %.1041.4367
  %.1076.4370 = fadd double %.1074.4369, 0.000000e+00
  %32 = getelementptr i8, ptr %31, i64 8
  %.1041.1.4 = load double, ptr %32, align 8
  %.1074.1.4 = fmul double %.616, %.1041.1.4
  %.1076.1.4 = fadd double %.1076.4370, %.1074.1.4
  %33 = getelementptr i8, ptr %31, i64 16
  %.1041.2.4 = load double, ptr %33, align 8
  %.1074.2.4 = fmul double %.13.i.i, %.1041.2.4
  %.1076.2.4 = fadd double %.1076.1.4, %.1074.2.4
  %34 = getelementptr i8, ptr %31, i64 24
  %.1041.3.4 = load double, ptr %34, align 8
  %.1074.3.4 = fmul double %.652, %.1041.3.4
  %.1076.3.4 = fadd double %.1076.2.4, %.1074.3.4
  %35 = getelementptr i8, ptr %31, i64 32
  %.1041.4.4 = load double, ptr %35, align 8
  %.1074.4.4 = fmul double %.1073.4, %.1041.4.4
  %.1076.4.4 = fadd double %.1076.3.4, %.1074.4.4
  %36 = getelementptr i8, ptr %31, i64 40
  %.1041.5.4 = load double, ptr %36, align 8
  %.1074.5.4 = fmul double %.1073.5, %.1041.5.4
  %.1076.5.4 = fadd double %.1076.4.4, %.1074.5.4
  %37 = getelementptr i8, ptr %31, i64 48
  %.1041.6.4 = load double, ptr %37, align 8
  %.1074.6.4 = fmul double %.1073.6, %.1041.6.4
  %.1076.6.4 = fadd double %.1076.5.4, %.1074.6.4
  %.1118.4 = fmul double %.1073.4, %.1076.6.4
  %.1122.4 = fadd double %.1122.3, %.1118.4
  %.idx381 = mul i64 %arg.cover.5.1, 40
  %38 = getelementptr i8, ptr %arg.cover.4, i64 %.idx381
  %.1041.5371 = load double, ptr %38, align 8
  %.1074.5373 = fmul double %.579, %.1041.5371
  %.1076.5374 = fadd double %.1074.5373, 0.000000e+00
  %39 = getelementptr i8, ptr %38, i64 8
  %.1041.1.5 = load double, ptr %39, align 8
  %.1074.1.5 = fmul double %.616, %.1041.1.5
  %.1076.1.5 = fadd double %.1076.5374, %.1074.1.5
  %40 = getelementptr i8, ptr %38, i64 16
  %.1041.2.5 = load double, ptr %40, align 8
  %.1074.2.5 = fmul double %.13.i.i, %.1041.2.5
  %.1076.2.5 = fadd double %.1076.1.5, %.1074.2.5
  %41 = getelementptr i8, ptr %38, i64 24
  %.1041.3.5 = load double, ptr %41, align 8
  %.1074.3.5 = fmul double %.652, %.1041.3.5
  %.1076.3.5 = fadd double %.1076.2.5, %.1074.3.5
  %42 = getelementptr i8, ptr %38, i64 32
  %.1041.4.5 = load double, ptr %42, align 8
  %.1074.4.5 = fmul double %.1073.4, %.1041.4.5
  %.1076.4.5 = fadd double %.1076.3.5, %.1074.4.5
  %43 = getelementptr i8, ptr %38, i64 40
  %.1041.5.5 = load double, ptr %43, align 8
  %.1074.5.5 = fmul double %.1073.5, %.1041.5.5
  %.1076.5.5 = fadd double %.1076.4.5, %.1074.5.5
  %44 = getelementptr i8, ptr %38, i64 48
  %.1041.6.5 = load double, ptr %44, align 8
  %.1074.6.5 = fmul double %.1073.6, %.1041.6.5
  %.1076.6.5 = fadd double %.1076.5.5, %.1074.6.5
  %.1118.5 = fmul double %.1073.5, %.1076.6.5
  %.1122.5 = fadd double %.1122.4, %.1118.5
  %.idx382 = mul i64 %arg.cover.5.1, 48
  %45 = getelementptr i8, ptr %arg.cover.4, i64 %.idx382
  %.1041.6375 = load double, ptr %45, align 8
  %.1074.6377 = fmul double %.579, %.1041.6375
  %.1076.6378 = fadd double %.1074.6377, 0.000000e+00
  %46 = getelementptr i8, ptr %45, i64 8
  %.1041.1.6 = load double, ptr %46, align 8
  %.1074.1.6 = fmul double %.616, %.1041.1.6
  %.1076.1.6 = fadd double %.1076.6378, %.1074.1.6
  %47 = getelementptr i8, ptr %45, i64 16
  %.1041.2.6 = load double, ptr %47, align 8
  %.1074.2.6 = fmul double %.13.i.i, %.1041.2.6
  %.1076.2.6 = fadd double %.1076.1.6, %.1074.2.6
  %48 = getelementptr i8, ptr %45, i64 24
  %.1041.3.6 = load double, ptr %48, align 8
  %.1074.3.6 = fmul double %.652, %.1041.3.6
  %.1076.3.6 = fadd double %.1076.2.6, %.1074.3.6
  %49 = getelementptr i8, ptr %45, i64 32
  %.1041.4.6 = load double, ptr %49, align 8
  %.1074.4.6 = fmul double %.1073.4, %.1041.4.6
  %.1076.4.6 = fadd double %.1076.3.6, %.1074.4.6
  %50 = getelementptr i8, ptr %45, i64 40
  %.1041.5.6 = load double, ptr %50, align 8
  %.1074.5.6 = fmul double %.1073.5, %.1041.5.6
  %.1076.5.6 = fadd double %.1076.4.6, %.1074.5.6
  %51 = getelementptr i8, ptr %45, i64 48
  %.1041.6.6 = load double, ptr %51, align 8
  %.1074.6.6 = fmul double %.1073.6, %.1041.6.6
  %.1076.6.6 = fadd double %.1076.5.6, %.1074.6.6
  %.1118.6 = fmul double %.1073.6, %.1076.6.6
  %.1122.6 = fadd double %.1122.5, %.1118.6
  %.1171 = load double, ptr %arg.x.4, align 8
  %.12.i3 = fcmp olt double %.1122.6, 1.000000e-09
  %.13.i4 = select i1 %.12.i3, double 1.000000e-09, double %.1122.6
  %.1178 = fsub double %arg.limit, %.1171
  %.1183 = fmul double %.13.i.i, %.13.i2
  %.1188 = fsub double %.1178, %.1183
  %.1220 = fmul double %.13.i4, 2.000000e+00
  %sqrt = tail call double @llvm.sqrt.f64(double %.1220)
  %.1225 = fdiv double %.1188, %sqrt
  %.1226 = tail call double @erfc(double %.1225)
  %.1227 = fmul double %.1226, 5.000000e-01
  store double %.1227, ptr %retptr, align 8
  ret i32 0

.506.endif.preheader:
  %52 = shl i64 %arg.slope.5.0, 3
  tail call void @llvm.memset.p0.i64(ptr align 8 %arg.slope.4, i8 0, i64 %52, i1 false)
  br label %common.ret
}

declare double @llvm.log.f64(double) #2

declare void @llvm.memset.p0.i64(ptr writeonly captures(none), i8, i64, i1 immarg) #3

define internal range(i32 0, 2) i32 @n23(ptr noalias writeonly captures(none) %retptr, ptr noalias writeonly captures(none) %excinfo, ptr %arg.x.0, ptr readnone captures(none) %arg.x.1, i64 %arg.x.2, i64 %arg.x.3, ptr captures(none) initializes((40, 56)) %arg.x.4, i64 %arg.x.5.0, i64 %arg.x.6.0, ptr %arg.cover.0, ptr readnone captures(none) %arg.cover.1, i64 %arg.cover.2, i64 %arg.cover.3, ptr initializes((40, 56)) %arg.cover.4, i64 %arg.cover.5.0, i64 %arg.cover.5.1, i64 %arg.cover.6.0, i64 %arg.cover.6.1, ptr %arg.check.0, ptr readnone captures(none) %arg.check.1, i64 %arg.check.2, i64 %arg.check.3, ptr readonly captures(none) %arg.check.4, i64 %arg.check.5.0, i64 %arg.check.6.0, double %arg.error, ptr %arg.start.0, ptr readnone captures(none) %arg.start.1, i64 %arg.start.2, i64 %arg.start.3, ptr readonly captures(none) %arg.start.4, i64 %arg.start.5.0, i64 %arg.start.6.0, ptr %arg.part.0.0, ptr readnone captures(none) %arg.part.0.1, i64 %arg.part.0.2, i64 %arg.part.0.3, ptr captures(none) %arg.part.0.4, i64 %arg.part.0.5.0, i64 %arg.part.0.6.0, ptr %arg.part.1.0, ptr readnone captures(none) %arg.part.1.1, i64 %arg.part.1.2, i64 %arg.part.1.3, ptr captures(none) %arg.part.1.4, i64 %arg.part.1.5.0, i64 %arg.part.1.6.0, ptr %arg.part.2.0, ptr readnone captures(none) %arg.part.2.1, i64 %arg.part.2.2, i64 %arg.part.2.3, ptr captures(none) initializes((40, 48)) %arg.part.2.4, i64 %arg.part.2.5.0, i64 %arg.part.2.6.0) local_unnamed_addr {
B0:
  %arg.part.2.5.0.fr = freeze i64 %arg.part.2.5.0
  %.1376 = alloca double, align 8
  %excinfo.2 = alloca ptr, align 8
  tail call void @NRT_incref(ptr %arg.x.0)
  tail call void @NRT_incref(ptr %arg.cover.0)
  tail call void @NRT_incref(ptr %arg.check.0)
  tail call void @NRT_incref(ptr %arg.part.0.0)
  tail call void @NRT_incref(ptr %arg.part.1.0)
  tail call void @NRT_incref(ptr %arg.part.2.0)
  %.468 = icmp slt i64 %arg.part.2.5.0.fr, 1
  br i1 %.468, label %B46.else.endif.us.1, label %B46.else.endif.us429.1

B46.else.endif.us.1:
  %.609.us = getelementptr i8, ptr %arg.start.4, i64 40
  %.610.us = load double, ptr %.609.us, align 8
  %.639.us = getelementptr i8, ptr %arg.part.2.4, i64 40
  store double %.610.us, ptr %.639.us, align 8
  %.idx62 = mul i64 %arg.cover.5.1, 40
  %0 = getelementptr i8, ptr %arg.cover.4, i64 %.idx62
  %invariant.gep.i = getelementptr i8, ptr %arg.cover.4, i64 40
  %.189.i = load double, ptr %arg.part.2.4, align 8
  store double %.189.i, ptr %0, align 8
  store double %.189.i, ptr %invariant.gep.i, align 8
  %1 = getelementptr i8, ptr %arg.part.2.4, i64 8
  %.189.1.i = load double, ptr %1, align 8
  %2 = getelementptr i8, ptr %0, i64 8
  store double %.189.1.i, ptr %2, align 8
  %gep121.1.i = getelementptr double, ptr %invariant.gep.i, i64 %arg.cover.5.1
  store double %.189.1.i, ptr %gep121.1.i, align 8
  %3 = getelementptr i8, ptr %arg.part.2.4, i64 16
  %.189.2.i = load double, ptr %3, align 8
  %4 = getelementptr i8, ptr %0, i64 16
  store double %.189.2.i, ptr %4, align 8
  %gep121.2.idx.i = shl i64 %arg.cover.5.1, 4
  %gep121.2.i = getelementptr i8, ptr %invariant.gep.i, i64 %gep121.2.idx.i
  store double %.189.2.i, ptr %gep121.2.i, align 8
  %5 = getelementptr i8, ptr %arg.part.2.4, i64 24
  %.189.3.i = load double, ptr %5, align 8
  %6 = getelementptr i8, ptr %0, i64 24
  store double %.189.3.i, ptr %6, align 8
  %gep121.3.idx.i = mul i64 %arg.cover.5.1, 24
  %gep121.3.i = getelementptr i8, ptr %invariant.gep.i, i64 %gep121.3.idx.i
  store double %.189.3.i, ptr %gep121.3.i, align 8
  %7 = getelementptr i8, ptr %arg.part.2.4, i64 32
  %.189.4.i = load double, ptr %7, align 8
  %8 = getelementptr i8, ptr %0, i64 32
  store double %.189.4.i, ptr %8, align 8
  %gep121.4.idx.i = shl i64 %arg.cover.5.1, 5
  %gep121.4.i = getelementptr i8, ptr %invariant.gep.i, i64 %gep121.4.idx.i
  store double %.189.4.i, ptr %gep121.4.i, align 8
  %.189.5.i = load double, ptr %.639.us, align 8
  %gep121.5.i = getelementptr i8, ptr %invariant.gep.i, i64 %.idx62
  store double %.189.5.i, ptr %gep121.5.i, align 8
  %9 = getelementptr i8, ptr %arg.part.2.4, i64 48
  %.189.6.i = load double, ptr %9, align 8
  %10 = getelementptr i8, ptr %0, i64 48
  store double %.189.6.i, ptr %10, align 8
  %gep121.6.idx.i = mul i64 %arg.cover.5.1, 48
  %gep121.6.i = getelementptr i8, ptr %invariant.gep.i, i64 %gep121.6.idx.i
  store double %.189.6.i, ptr %gep121.6.i, align 8
  %.702.us = getelementptr i8, ptr %arg.x.4, i64 40
  store double 0.000000e+00, ptr %.702.us, align 8
  %.609.us.1 = getelementptr i8, ptr %arg.start.4, i64 48
  %.610.us.1 = load double, ptr %.609.us.1, align 8
  store double %.610.us.1, ptr %9, align 8
  %11 = getelementptr i8, ptr %arg.cover.4, i64 %gep121.6.idx.i
  %invariant.gep.i2 = getelementptr i8, ptr %arg.cover.4, i64 48
  %.189.i3 = load double, ptr %arg.part.2.4, align 8
  store double %.189.i3, ptr %11, align 8
  store double %.189.i3, ptr %invariant.gep.i2, align 8
  %.189.1.i4 = load double, ptr %1, align 8
  %12 = getelementptr i8, ptr %11, i64 8
  store double %.189.1.i4, ptr %12, align 8
  %gep121.1.i5 = getelementptr double, ptr %invariant.gep.i2, i64 %arg.cover.5.1
  store double %.189.1.i4, ptr %gep121.1.i5, align 8
  %.189.2.i6 = load double, ptr %3, align 8
  %13 = getelementptr i8, ptr %11, i64 16
  store double %.189.2.i6, ptr %13, align 8
  %gep121.2.i8 = getelementptr i8, ptr %invariant.gep.i2, i64 %gep121.2.idx.i
  store double %.189.2.i6, ptr %gep121.2.i8, align 8
  %.189.3.i9 = load double, ptr %5, align 8
  %14 = getelementptr i8, ptr %11, i64 24
  store double %.189.3.i9, ptr %14, align 8
  %gep121.3.i11 = getelementptr i8, ptr %invariant.gep.i2, i64 %gep121.3.idx.i
  store double %.189.3.i9, ptr %gep121.3.i11, align 8
  %.189.4.i12 = load double, ptr %7, align 8
  %15 = getelementptr i8, ptr %11, i64 32
  store double %.189.4.i12, ptr %15, align 8
  %gep121.4.i14 = getelementptr i8, ptr %invariant.gep.i2, i64 %gep121.4.idx.i
  store double %.189.4.i12, ptr %gep121.4.i14, align 8
  %.189.5.i15 = load double, ptr %.639.us, align 8
  %16 = getelementptr i8, ptr %11, i64 40
  store double %.189.5.i15, ptr %16, align 8
  %gep121.5.i17 = getelementptr i8, ptr %invariant.gep.i2, i64 %.idx62
  store double %.189.5.i15, ptr %gep121.5.i17, align 8
  %.189.6.i18 = load double, ptr %9, align 8
  %gep121.6.i20 = getelementptr i8, ptr %invariant.gep.i2, i64 %gep121.6.idx.i
  store double %.189.6.i18, ptr %gep121.6.i20, align 8
  br label %B130.endif

B46.else.endif.us429.1:
  %17 = shl nuw i64 %arg.part.2.5.0.fr, 3
  tail call void @llvm.memset.p0.i64(ptr align 8 %arg.part.2.4, i8 0, i64 %17, i1 false)
  %.609.us433 = getelementptr i8, ptr %arg.start.4, i64 40
  %.610.us434 = load double, ptr %.609.us433, align 8
  %.639.us435 = getelementptr i8, ptr %arg.part.2.4, i64 40
  store double %.610.us434, ptr %.639.us435, align 8
  %.idx = mul i64 %arg.cover.5.1, 40
  %18 = getelementptr i8, ptr %arg.cover.4, i64 %.idx
  %invariant.gep.i22 = getelementptr i8, ptr %arg.cover.4, i64 40
  %.189.i23 = load double, ptr %arg.part.2.4, align 8
  store double %.189.i23, ptr %18, align 8
  store double %.189.i23, ptr %invariant.gep.i22, align 8
  %19 = getelementptr i8, ptr %arg.part.2.4, i64 8
  %.189.1.i24 = load double, ptr %19, align 8
  %20 = getelementptr i8, ptr %18, i64 8
  store double %.189.1.i24, ptr %20, align 8
  %gep121.1.i25 = getelementptr double, ptr %invariant.gep.i22, i64 %arg.cover.5.1
  store double %.189.1.i24, ptr %gep121.1.i25, align 8
  %21 = getelementptr i8, ptr %arg.part.2.4, i64 16
  %.189.2.i26 = load double, ptr %21, align 8
  %22 = getelementptr i8, ptr %18, i64 16
  store double %.189.2.i26, ptr %22, align 8
  %gep121.2.idx.i27 = shl i64 %arg.cover.5.1, 4
  %gep121.2.i28 = getelementptr i8, ptr %invariant.gep.i22, i64 %gep121.2.idx.i27
  store double %.189.2.i26, ptr %gep121.2.i28, align 8
  %23 = getelementptr i8, ptr %arg.part.2.4, i64 24
  %.189.3.i29 = load double, ptr %23, align 8
  %24 = getelementptr i8, ptr %18, i64 24
  store double %.189.3.i29, ptr %24, align 8
  %gep121.3.idx.i30 = mul i64 %arg.cover.5.1, 24
  %gep121.3.i31 = getelementptr i8, ptr %invariant.gep.i22, i64 %gep121.3.idx.i30
  store double %.189.3.i29, ptr %gep121.3.i31, align 8
  %25 = getelementptr i8, ptr %arg.part.2.4, i64 32
  %.189.4.i32 = load double, ptr %25, align 8
  %26 = getelementptr i8, ptr %18, i64 32
  store double %.189.4.i32, ptr %26, align 8
  %gep121.4.idx.i33 = shl i64 %arg.cover.5.1, 5
  %gep121.4.i34 = getelementptr i8, ptr %invariant.gep.i22, i64 %gep121.4.idx.i33
  store double %.189.4.i32, ptr %gep121.4.i34, align 8
  %.189.5.i35 = load double, ptr %.639.us435, align 8
  %gep121.5.i37 = getelementptr i8, ptr %invariant.gep.i22, i64 %.idx
  store double %.189.5.i35, ptr %gep121.5.i37, align 8
  %27 = getelementptr i8, ptr %arg.part.2.4, i64 48
  %.189.6.i38 = load double, ptr %27, align 8
  %28 = getelementptr i8, ptr %18, i64 48
  store double %.189.6.i38, ptr %28, align 8
  %gep121.6.idx.i39 = mul i64 %arg.cover.5.1, 48
  %gep121.6.i40 = getelementptr i8, ptr %invariant.gep.i22, i64 %gep121.6.idx.i39
  store double %.189.6.i38, ptr %gep121.6.i40, align 8
  %.702.us438 = getelementptr i8, ptr %arg.x.4, i64 40
  store double 0.000000e+00, ptr %.702.us438, align 8
  tail call void @llvm.memset.p0.i64(ptr nonnull align 8 %arg.part.2.4, i8 0, i64 %17, i1 false)
  %.609.us433.1 = getelementptr i8, ptr %arg.start.4, i64 48
  %.610.us434.1 = load double, ptr %.609.us433.1, align 8
  store double %.610.us434.1, ptr %27, align 8
  %29 = getelementptr i8, ptr %arg.cover.4, i64 %gep121.6.idx.i39
  %invariant.gep.i42 = getelementptr i8, ptr %arg.cover.4, i64 48
  %.189.i43 = load double, ptr %arg.part.2.4, align 8
  store double %.189.i43, ptr %29, align 8
  store double %.189.i43, ptr %invariant.gep.i42, align 8
  %.189.1.i44 = load double, ptr %19, align 8
  %30 = getelementptr i8, ptr %29, i64 8
  store double %.189.1.i44, ptr %30, align 8
  %gep121.1.i45 = getelementptr double, ptr %invariant.gep.i42, i64 %arg.cover.5.1
  store double %.189.1.i44, ptr %gep121.1.i45, align 8
  %.189.2.i46 = load double, ptr %21, align 8
  %31 = getelementptr i8, ptr %29, i64 16
  store double %.189.2.i46, ptr %31, align 8
  %gep121.2.i48 = getelementptr i8, ptr %invariant.gep.i42, i64 %gep121.2.idx.i27
  store double %.189.2.i46, ptr %gep121.2.i48, align 8
  %.189.3.i49 = load double, ptr %23, align 8
  %32 = getelementptr i8, ptr %29, i64 24
  store double %.189.3.i49, ptr %32, align 8
  %gep121.3.i51 = getelementptr i8, ptr %invariant.gep.i42, i64 %gep121.3.idx.i30
  store double %.189.3.i49, ptr %gep121.3.i51, align 8
  %.189.4.i52 = load double, ptr %25, align 8
  %33 = getelementptr i8, ptr %29, i64 32
  store double %.189.4.i52, ptr %33, align 8
  %gep121.4.i54 = getelementptr i8, ptr %invariant.gep.i42, i64 %gep121.4.idx.i33
  store double %.189.4.i52, ptr %gep121.4.i54, align 8
  %.189.5.i55 = load double, ptr %.639.us435, align 8
  %34 = getelementptr i8, ptr %29, i64 40
  store double %.189.5.i55, ptr %34, align 8
  %gep121.5.i57 = getelementptr i8, ptr %invariant.gep.i42, i64 %.idx
  store double %.189.5.i55, ptr %gep121.5.i57, align 8
  %.189.6.i58 = load double, ptr %27, align 8
  %gep121.6.i60 = getelementptr i8, ptr %invariant.gep.i42, i64 %gep121.6.idx.i39
  store double %.189.6.i58, ptr %gep121.6.i60, align 8
  br label %B130.endif

B188:
  %lsr.iv1 = phi i64 [ %44, %B188.lr.ph ], [ %lsr.iv.next2, %B428 ]
  %.812458460 = phi i64 [ 0, %B188.lr.ph ], [ %.819, %B428 ]
  %.857 = icmp slt i64 %.812458460, 0
  %35 = select i1 %.857, i64 %42, i64 0
  %scevgep66 = getelementptr i8, ptr %arg.check.4, i64 %35
  %36 = shl i64 %.812458460, 3
  %scevgep67 = getelementptr i8, ptr %scevgep66, i64 %36
  %.873 = load double, ptr %scevgep67, align 8
  %.888 = icmp slt i64 %.812458460, -1
  %37 = select i1 %.888, i64 %42, i64 0
  %38 = add i64 %37, 8
  %scevgep3 = getelementptr i8, ptr %arg.check.4, i64 %38
  %39 = shl i64 %.812458460, 3
  %scevgep4 = getelementptr i8, ptr %scevgep3, i64 %39
  %.904 = load double, ptr %scevgep4, align 8
  %.913 = fcmp ord double %.873, 0.000000e+00
  %.917 = fcmp ord double %.904, 0.000000e+00
  %or.cond = select i1 %.913, i1 %.917, i1 false
  br i1 %or.cond, label %B252.else.endif, label %B428

B428:
  %.819 = add nuw i64 %.812458460, 2
  %lsr.iv.next2 = add i64 %lsr.iv1, -1
  %.806 = icmp sgt i64 %lsr.iv.next2, 2
  br i1 %.806, label %B188, label %B430

common.ret:
  %excinfo.sink = phi ptr [ %retptr, %B430 ], [ %excinfo, %.1173 ]
  %common.ret.op = phi i32 [ 0, %B430 ], [ 1, %.1173 ]
  store ptr null, ptr %excinfo.sink, align 8
  ret i32 %common.ret.op

B430:
  tail call void @NRT_decref(ptr %arg.x.0)
  tail call void @NRT_decref(ptr %arg.part.0.0)
  tail call void @NRT_decref(ptr %arg.part.2.0)
  tail call void @NRT_decref(ptr %arg.part.1.0)
  tail call void @NRT_decref(ptr %arg.cover.0)
  tail call void @NRT_decref(ptr %arg.check.0)
  br label %common.ret

B130.endif:
  %.702.us438.1 = getelementptr i8, ptr %arg.x.4, i64 48
  store double 0.000000e+00, ptr %.702.us438.1, align 8
  %.779413 = and i64 %arg.check.5.0, 1
  %.783414415 = lshr i64 %arg.check.5.0, 1
  %.764.inv = icmp slt i64 %arg.check.5.0, 1
  %40 = or i64 %.783414415, %.779413
  %.806459.not463 = icmp eq i64 %40, 0
  %.806459.not = select i1 %.764.inv, i1 true, i1 %.806459.not463
  br i1 %.806459.not, label %B430, label %B188.lr.ph

B188.lr.ph:
  %41 = shl i64 %arg.part.0.5.0, 3
  %42 = shl i64 %arg.check.5.0, 3
  %43 = add i64 %.783414415, %.779413
  %44 = add i64 %43, 2
  br label %B188

B252.else.endif:
  %45 = icmp slt i64 %arg.part.0.5.0, 1
  br i1 %45, label %.1173, label %.1172.endif.preheader

.1172.endif.preheader:
  tail call void @llvm.memset.p0.i64(ptr align 8 %arg.part.0.4, i8 0, i64 %41, i1 false)
  br label %.1173

.1173:
  %sunkaddr5 = getelementptr i8, ptr %arg.part.0.4, i64 40
  store double 1.000000e+00, ptr %sunkaddr5, align 8
  %sunkaddr = getelementptr i8, ptr %arg.part.0.4, i64 48
  store double %.873, ptr %sunkaddr, align 8
  %.1282 = fsub double %.904, %.873
  %sunkaddr6 = getelementptr i8, ptr %arg.x.4, i64 40
  %.1314 = load double, ptr %sunkaddr6, align 8
  %.1315 = fsub double %.1282, %.1314
  %sunkaddr7 = getelementptr i8, ptr %arg.x.4, i64 48
  %.1345 = load double, ptr %sunkaddr7, align 8
  %.1347 = fmul double %.873, %.1345
  %.1350 = fsub double %.1315, %.1347
  tail call void @NRT_incref(ptr %arg.part.1.0)
  tail call void @NRT_incref(ptr %arg.part.2.0)
  %.1398 = call i32 @n19(ptr nonnull %.1376, ptr nonnull %excinfo.2, ptr %arg.x.0, ptr %arg.x.1, i64 %arg.x.2, i64 %arg.x.3, ptr %arg.x.4, i64 %arg.x.5.0, i64 %arg.x.6.0, ptr %arg.cover.0, ptr %arg.cover.1, i64 %arg.cover.2, i64 %arg.cover.3, ptr %arg.cover.4, i64 %arg.cover.5.0, i64 %arg.cover.5.1, i64 %arg.cover.6.0, i64 %arg.cover.6.1, double %.1350, double %arg.error, ptr %arg.part.0.0, ptr %arg.part.0.1, i64 %arg.part.0.2, i64 %arg.part.0.3, ptr %arg.part.0.4, i64 %arg.part.0.5.0, i64 %arg.part.0.6.0, double 0.000000e+00, double 1.000000e+00, ptr %arg.part.1.0, ptr %arg.part.1.1, i64 %arg.part.1.2, i64 %arg.part.1.3, ptr %arg.part.1.4, i64 %arg.part.1.5.0, i64 %arg.part.1.6.0, ptr %arg.part.2.0, ptr %arg.part.2.1, i64 %arg.part.2.2, i64 %arg.part.2.3, ptr %arg.part.2.4, i64 %arg.part.2.5.0.fr, i64 %arg.part.2.6.0)
  %cond = icmp eq i32 %.1398, 0
  br i1 %cond, label %.1173.endif, label %common.ret

.1173.endif:
  tail call void @NRT_decref(ptr %arg.part.1.0)
  tail call void @NRT_decref(ptr %arg.part.2.0)
  br label %B428
}

declare double @llvm.exp.f64(double) #2

declare double @llvm.sqrt.f64(double) #2

declare double @erfc(double) local_unnamed_addr #4

declare void @llvm.lifetime.start.p0(ptr captures(none)) #5

declare void @llvm.lifetime.end.p0(ptr captures(none)) #5

define internal noundef range(i32 -1, -2) i32 @n24(ptr noalias writeonly captures(none) initializes((0, 8)) %retptr, ptr noalias readnone captures(none) %excinfo, ptr %arg.cover.0, ptr readnone captures(none) %arg.cover.1, i64 %arg.cover.2, i64 %arg.cover.3, ptr %arg.cover.4, i64 %arg.cover.5.0, i64 %arg.cover.5.1, i64 %arg.cover.6.0, i64 %arg.cover.6.1, ptr readnone captures(none) %arg.slope.0, ptr readnone captures(none) %arg.slope.1, i64 %arg.slope.2, i64 %arg.slope.3, ptr readonly captures(none) %arg.slope.4, i64 %arg.slope.5.0, i64 %arg.slope.6.0, ptr %arg.row.0, ptr readnone captures(none) %arg.row.1, i64 %arg.row.2, i64 %arg.row.3, ptr captures(none) initializes((0, 56)) %arg.row.4, i64 %arg.row.5.0, i64 %arg.row.6.0) local_unnamed_addr {
common.ret:
  %.323 = load double, ptr %arg.slope.4, align 8
  %.376 = load double, ptr %arg.cover.4, align 8
  %.379 = fmul double %.323, %.376
  %.381 = fadd double %.379, 0.000000e+00
  %0 = getelementptr i8, ptr %arg.slope.4, i64 8
  %.323.1 = load double, ptr %0, align 8
  %gep236.1 = getelementptr double, ptr %arg.cover.4, i64 %arg.cover.5.1
  %.376.1 = load double, ptr %gep236.1, align 8
  %.379.1 = fmul double %.323.1, %.376.1
  %.381.1 = fadd double %.381, %.379.1
  %1 = getelementptr i8, ptr %arg.slope.4, i64 16
  %.323.2 = load double, ptr %1, align 8
  %.371.2 = shl i64 %arg.cover.5.1, 1
  %gep236.2 = getelementptr double, ptr %arg.cover.4, i64 %.371.2
  %.376.2 = load double, ptr %gep236.2, align 8
  %.379.2 = fmul double %.323.2, %.376.2
  %.381.2 = fadd double %.381.1, %.379.2
  %2 = getelementptr i8, ptr %arg.slope.4, i64 24
  %.323.3 = load double, ptr %2, align 8
  %.371.3 = mul i64 %arg.cover.5.1, 3
  %gep236.3 = getelementptr double, ptr %arg.cover.4, i64 %.371.3
  %.376.3 = load double, ptr %gep236.3, align 8
  %.379.3 = fmul double %.323.3, %.376.3
  %.381.3 = fadd double %.381.2, %.379.3
  %3 = getelementptr i8, ptr %arg.slope.4, i64 32
  %.323.4 = load double, ptr %3, align 8
  %.371.4 = shl i64 %arg.cover.5.1, 2
  %gep236.4 = getelementptr double, ptr %arg.cover.4, i64 %.371.4
  %.376.4 = load double, ptr %gep236.4, align 8
  %.379.4 = fmul double %.323.4, %.376.4
  %.381.4 = fadd double %.381.3, %.379.4
  %4 = getelementptr i8, ptr %arg.slope.4, i64 40
  %.323.5 = load double, ptr %4, align 8
  %.371.5 = mul i64 %arg.cover.5.1, 5
  %gep236.5 = getelementptr double, ptr %arg.cover.4, i64 %.371.5
  %.376.5 = load double, ptr %gep236.5, align 8
  %.379.5 = fmul double %.323.5, %.376.5
  %.381.5 = fadd double %.381.4, %.379.5
  %5 = getelementptr i8, ptr %arg.slope.4, i64 48
  %.323.6 = load double, ptr %5, align 8
  %.371.6 = mul i64 %arg.cover.5.1, 6
  %gep236.6 = getelementptr double, ptr %arg.cover.4, i64 %.371.6
  %.376.6 = load double, ptr %gep236.6, align 8
  %.379.6 = fmul double %.323.6, %.376.6
  %.381.6 = fadd double %.381.5, %.379.6
  store double %.381.6, ptr %arg.row.4, align 8
  %invariant.gep.1 = getelementptr i8, ptr %arg.cover.4, i64 8
  %.323.1254 = load double, ptr %arg.slope.4, align 8
  %.376.1255 = load double, ptr %invariant.gep.1, align 8
  %.379.1256 = fmul double %.323.1254, %.376.1255
  %.381.1257 = fadd double %.379.1256, 0.000000e+00
  %.323.1.1 = load double, ptr %0, align 8
  %gep236.1.1 = getelementptr double, ptr %invariant.gep.1, i64 %arg.cover.5.1
  %.376.1.1 = load double, ptr %gep236.1.1, align 8
  %.379.1.1 = fmul double %.323.1.1, %.376.1.1
  %.381.1.1 = fadd double %.381.1257, %.379.1.1
  %.323.2.1 = load double, ptr %1, align 8
  %gep236.2.1 = getelementptr double, ptr %invariant.gep.1, i64 %.371.2
  %.376.2.1 = load double, ptr %gep236.2.1, align 8
  %.379.2.1 = fmul double %.323.2.1, %.376.2.1
  %.381.2.1 = fadd double %.381.1.1, %.379.2.1
  %.323.3.1 = load double, ptr %2, align 8
  %gep236.3.1 = getelementptr double, ptr %invariant.gep.1, i64 %.371.3
  %.376.3.1 = load double, ptr %gep236.3.1, align 8
  %.379.3.1 = fmul double %.323.3.1, %.376.3.1
  %.381.3.1 = fadd double %.381.2.1, %.379.3.1
  %.323.4.1 = load double, ptr %3, align 8
  %gep236.4.1 = getelementptr double, ptr %invariant.gep.1, i64 %.371.4
  %.376.4.1 = load double, ptr %gep236.4.1, align 8
  %.379.4.1 = fmul double %.323.4.1, %.376.4.1
  %.381.4.1 = fadd double %.381.3.1, %.379.4.1
  %.323.5.1 = load double, ptr %4, align 8
  %gep236.5.1 = getelementptr double, ptr %invariant.gep.1, i64 %.371.5
  %.376.5.1 = load double, ptr %gep236.5.1, align 8
  %.379.5.1 = fmul double %.323.5.1, %.376.5.1
  %.381.5.1 = fadd double %.381.4.1, %.379.5.1
  %.323.6.1 = load double, ptr %5, align 8
  %gep236.6.1 = getelementptr double, ptr %invariant.gep.1, i64 %.371.6
  %.376.6.1 = load double, ptr %gep236.6.1, align 8
  %.379.6.1 = fmul double %.323.6.1, %.376.6.1
  %.381.6.1 = fadd double %.381.5.1, %.379.6.1
  %6 = getelementptr i8, ptr %arg.row.4, i64 8
  store double %.381.6.1, ptr %6, align 8
  %invariant.gep.2 = getelementptr i8, ptr %arg.cover.4, i64 16
  %.323.2258 = load double, ptr %arg.slope.4, align 8
  %.376.2259 = load double, ptr %invariant.gep.2, align 8
  %.379.2260 = fmul double %.323.2258, %.376.2259
  %.381.2261 = fadd double %.379.2260, 0.000000e+00
  %.323.1.2 = load double, ptr %0, align 8
  %gep236.1.2 = getelementptr double, ptr %invariant.gep.2, i64 %arg.cover.5.1
  %.376.1.2 = load double, ptr %gep236.1.2, align 8
  %.379.1.2 = fmul double %.323.1.2, %.376.1.2
  %.381.1.2 = fadd double %.381.2261, %.379.1.2
  %.323.2.2 = load double, ptr %1, align 8
  %gep236.2.2 = getelementptr double, ptr %invariant.gep.2, i64 %.371.2
  %.376.2.2 = load double, ptr %gep236.2.2, align 8
  %.379.2.2 = fmul double %.323.2.2, %.376.2.2
  %.381.2.2 = fadd double %.381.1.2, %.379.2.2
  %.323.3.2 = load double, ptr %2, align 8
  %gep236.3.2 = getelementptr double, ptr %invariant.gep.2, i64 %.371.3
  %.376.3.2 = load double, ptr %gep236.3.2, align 8
  %.379.3.2 = fmul double %.323.3.2, %.376.3.2
  %.381.3.2 = fadd double %.381.2.2, %.379.3.2
  %.323.4.2 = load double, ptr %3, align 8
  %gep236.4.2 = getelementptr double, ptr %invariant.gep.2, i64 %.371.4
  %.376.4.2 = load double, ptr %gep236.4.2, align 8
  %.379.4.2 = fmul double %.323.4.2, %.376.4.2
  %.381.4.2 = fadd double %.381.3.2, %.379.4.2
  %.323.5.2 = load double, ptr %4, align 8
  %gep236.5.2 = getelementptr double, ptr %invariant.gep.2, i64 %.371.5
  %.376.5.2 = load double, ptr %gep236.5.2, align 8
  %.379.5.2 = fmul double %.323.5.2, %.376.5.2
  %.381.5.2 = fadd double %.381.4.2, %.379.5.2
  %.323.6.2 = load double, ptr %5, align 8
  %gep236.6.2 = getelementptr double, ptr %invariant.gep.2, i64 %.371.6
  %.376.6.2 = load double, ptr %gep236.6.2, align 8
  %.379.6.2 = fmul double %.323.6.2, %.376.6.2
  %.381.6.2 = fadd double %.381.5.2, %.379.6.2
  %7 = getelementptr i8, ptr %arg.row.4, i64 16
  store double %.381.6.2, ptr %7, align 8
  %invariant.gep.3 = getelementptr i8, ptr %arg.cover.4, i64 24
  %.323.3262 = load double, ptr %arg.slope.4, align 8
  %.376.3263 = load double, ptr %invariant.gep.3, align 8
  %.379.3264 = fmul double %.323.3262, %.376.3263
  %.381.3265 = fadd double %.379.3264, 0.000000e+00
  %.323.1.3 = load double, ptr %0, align 8
  %gep236.1.3 = getelementptr double, ptr %invariant.gep.3, i64 %arg.cover.5.1
  %.376.1.3 = load double, ptr %gep236.1.3, align 8
  %.379.1.3 = fmul double %.323.1.3, %.376.1.3
  %.381.1.3 = fadd double %.381.3265, %.379.1.3
  %.323.2.3 = load double, ptr %1, align 8
  %gep236.2.3 = getelementptr double, ptr %invariant.gep.3, i64 %.371.2
  %.376.2.3 = load double, ptr %gep236.2.3, align 8
  %.379.2.3 = fmul double %.323.2.3, %.376.2.3
  %.381.2.3 = fadd double %.381.1.3, %.379.2.3
  %.323.3.3 = load double, ptr %2, align 8
  %gep236.3.3 = getelementptr double, ptr %invariant.gep.3, i64 %.371.3
  %.376.3.3 = load double, ptr %gep236.3.3, align 8
  %.379.3.3 = fmul double %.323.3.3, %.376.3.3
  %.381.3.3 = fadd double %.381.2.3, %.379.3.3
  %.323.4.3 = load double, ptr %3, align 8
  %gep236.4.3 = getelementptr double, ptr %invariant.gep.3, i64 %.371.4
  %.376.4.3 = load double, ptr %gep236.4.3, align 8
  %.379.4.3 = fmul double %.323.4.3, %.376.4.3
  %.381.4.3 = fadd double %.381.3.3, %.379.4.3
  %.323.5.3 = load double, ptr %4, align 8
  %gep236.5.3 = getelementptr double, ptr %invariant.gep.3, i64 %.371.5
  %.376.5.3 = load double, ptr %gep236.5.3, align 8
  %.379.5.3 = fmul double %.323.5.3, %.376.5.3
  %.381.5.3 = fadd double %.381.4.3, %.379.5.3
  %.323.6.3 = load double, ptr %5, align 8
  %gep236.6.3 = getelementptr double, ptr %invariant.gep.3, i64 %.371.6
  %.376.6.3 = load double, ptr %gep236.6.3, align 8
  %.379.6.3 = fmul double %.323.6.3, %.376.6.3
  %.381.6.3 = fadd double %.381.5.3, %.379.6.3
  %8 = getelementptr i8, ptr %arg.row.4, i64 24
  store double %.381.6.3, ptr %8, align 8
  %invariant.gep.4 = getelementptr i8, ptr %arg.cover.4, i64 32
  %.323.4266 = load double, ptr %arg.slope.4, align 8
  %.376.4267 = load double, ptr %invariant.gep.4, align 8
  %.379.4268 = fmul double %.323.4266, %.376.4267
  %.381.4269 = fadd double %.379.4268, 0.000000e+00
  %.323.1.4 = load double, ptr %0, align 8
  %gep236.1.4 = getelementptr double, ptr %invariant.gep.4, i64 %arg.cover.5.1
  %.376.1.4 = load double, ptr %gep236.1.4, align 8
  %.379.1.4 = fmul double %.323.1.4, %.376.1.4
  %.381.1.4 = fadd double %.381.4269, %.379.1.4
  %.323.2.4 = load double, ptr %1, align 8
  %gep236.2.4 = getelementptr double, ptr %invariant.gep.4, i64 %.371.2
  %.376.2.4 = load double, ptr %gep236.2.4, align 8
  %.379.2.4 = fmul double %.323.2.4, %.376.2.4
  %.381.2.4 = fadd double %.381.1.4, %.379.2.4
  %.323.3.4 = load double, ptr %2, align 8
  %gep236.3.4 = getelementptr double, ptr %invariant.gep.4, i64 %.371.3
  %.376.3.4 = load double, ptr %gep236.3.4, align 8
  %.379.3.4 = fmul double %.323.3.4, %.376.3.4
  %.381.3.4 = fadd double %.381.2.4, %.379.3.4
  %.323.4.4 = load double, ptr %3, align 8
  %gep236.4.4 = getelementptr double, ptr %invariant.gep.4, i64 %.371.4
  %.376.4.4 = load double, ptr %gep236.4.4, align 8
  %.379.4.4 = fmul double %.323.4.4, %.376.4.4
  %.381.4.4 = fadd double %.381.3.4, %.379.4.4
  %.323.5.4 = load double, ptr %4, align 8
  %gep236.5.4 = getelementptr double, ptr %invariant.gep.4, i64 %.371.5
  %.376.5.4 = load double, ptr %gep236.5.4, align 8
  %.379.5.4 = fmul double %.323.5.4, %.376.5.4
  %.381.5.4 = fadd double %.381.4.4, %.379.5.4
  %.323.6.4 = load double, ptr %5, align 8
  %gep236.6.4 = getelementptr double, ptr %invariant.gep.4, i64 %.371.6
  %.376.6.4 = load double, ptr %gep236.6.4, align 8
  %.379.6.4 = fmul double %.323.6.4, %.376.6.4
  %.381.6.4 = fadd double %.381.5.4, %.379.6.4
  %9 = getelementptr i8, ptr %arg.row.4, i64 32
  store double %.381.6.4, ptr %9, align 8
  %invariant.gep.5 = getelementptr i8, ptr %arg.cover.4, i64 40
  %.323.5270 = load double, ptr %arg.slope.4, align 8
  %.376.5271 = load double, ptr %invariant.gep.5, align 8
  %.379.5272 = fmul double %.323.5270, %.376.5271
  %.381.5273 = fadd double %.379.5272, 0.000000e+00
  %.323.1.5 = load double, ptr %0, align 8
  %gep236.1.5 = getelementptr double, ptr %invariant.gep.5, i64 %arg.cover.5.1
  %.376.1.5 = load double, ptr %gep236.1.5, align 8
  %.379.1.5 = fmul double %.323.1.5, %.376.1.5
  %.381.1.5 = fadd double %.381.5273, %.379.1.5
  %.323.2.5 = load double, ptr %1, align 8
  %gep236.2.5 = getelementptr double, ptr %invariant.gep.5, i64 %.371.2
  %.376.2.5 = load double, ptr %gep236.2.5, align 8
  %.379.2.5 = fmul double %.323.2.5, %.376.2.5
  %.381.2.5 = fadd double %.381.1.5, %.379.2.5
  %.323.3.5 = load double, ptr %2, align 8
  %gep236.3.5 = getelementptr double, ptr %invariant.gep.5, i64 %.371.3
  %.376.3.5 = load double, ptr %gep236.3.5, align 8
  %.379.3.5 = fmul double %.323.3.5, %.376.3.5
  %.381.3.5 = fadd double %.381.2.5, %.379.3.5
  %.323.4.5 = load double, ptr %3, align 8
  %gep236.4.5 = getelementptr double, ptr %invariant.gep.5, i64 %.371.4
  %.376.4.5 = load double, ptr %gep236.4.5, align 8
  %.379.4.5 = fmul double %.323.4.5, %.376.4.5
  %.381.4.5 = fadd double %.381.3.5, %.379.4.5
  %.323.5.5 = load double, ptr %4, align 8
  %gep236.5.5 = getelementptr double, ptr %invariant.gep.5, i64 %.371.5
  %.376.5.5 = load double, ptr %gep236.5.5, align 8
  %.379.5.5 = fmul double %.323.5.5, %.376.5.5
  %.381.5.5 = fadd double %.381.4.5, %.379.5.5
  %.323.6.5 = load double, ptr %5, align 8
  %gep236.6.5 = getelementptr double, ptr %invariant.gep.5, i64 %.371.6
  %.376.6.5 = load double, ptr %gep236.6.5, align 8
  %.379.6.5 = fmul double %.323.6.5, %.376.6.5
  %.381.6.5 = fadd double %.381.5.5, %.379.6.5
  %10 = getelementptr i8, ptr %arg.row.4, i64 40
  store double %.381.6.5, ptr %10, align 8
  %invariant.gep.6 = getelementptr i8, ptr %arg.cover.4, i64 48
  %.323.6274 = load double, ptr %arg.slope.4, align 8
  %.376.6275 = load double, ptr %invariant.gep.6, align 8
  %.379.6276 = fmul double %.323.6274, %.376.6275
  %.381.6277 = fadd double %.379.6276, 0.000000e+00
  %.323.1.6 = load double, ptr %0, align 8
  %gep236.1.6 = getelementptr double, ptr %invariant.gep.6, i64 %arg.cover.5.1
  %.376.1.6 = load double, ptr %gep236.1.6, align 8
  %.379.1.6 = fmul double %.323.1.6, %.376.1.6
  %.381.1.6 = fadd double %.381.6277, %.379.1.6
  %.323.2.6 = load double, ptr %1, align 8
  %gep236.2.6 = getelementptr double, ptr %invariant.gep.6, i64 %.371.2
  %.376.2.6 = load double, ptr %gep236.2.6, align 8
  %.379.2.6 = fmul double %.323.2.6, %.376.2.6
  %.381.2.6 = fadd double %.381.1.6, %.379.2.6
  %.323.3.6 = load double, ptr %2, align 8
  %gep236.3.6 = getelementptr double, ptr %invariant.gep.6, i64 %.371.3
  %.376.3.6 = load double, ptr %gep236.3.6, align 8
  %.379.3.6 = fmul double %.323.3.6, %.376.3.6
  %.381.3.6 = fadd double %.381.2.6, %.379.3.6
  %.323.4.6 = load double, ptr %3, align 8
  %gep236.4.6 = getelementptr double, ptr %invariant.gep.6, i64 %.371.4
  %.376.4.6 = load double, ptr %gep236.4.6, align 8
  %.379.4.6 = fmul double %.323.4.6, %.376.4.6
  %.381.4.6 = fadd double %.381.3.6, %.379.4.6
  %.323.5.6 = load double, ptr %4, align 8
  %gep236.5.6 = getelementptr double, ptr %invariant.gep.6, i64 %.371.5
  %.376.5.6 = load double, ptr %gep236.5.6, align 8
  %.379.5.6 = fmul double %.323.5.6, %.376.5.6
  %.381.5.6 = fadd double %.381.4.6, %.379.5.6
  %.323.6.6 = load double, ptr %5, align 8
  %gep236.6.6 = getelementptr double, ptr %invariant.gep.6, i64 %.371.6
  %.376.6.6 = load double, ptr %gep236.6.6, align 8
  %.379.6.6 = fmul double %.323.6.6, %.376.6.6
  %.381.6.6 = fadd double %.381.5.6, %.379.6.6
  %11 = getelementptr i8, ptr %arg.row.4, i64 48
  store double %.381.6.6, ptr %11, align 8
  %.579 = load double, ptr %arg.slope.4, align 8
  %.610 = fmul double %.381.6, %.579
  %.612 = fadd double %.610, 0.000000e+00
  %.579.1 = load double, ptr %0, align 8
  %.610.1 = fmul double %.381.6.1, %.579.1
  %.612.1 = fadd double %.612, %.610.1
  %.579.2 = load double, ptr %1, align 8
  %.610.2 = fmul double %.381.6.2, %.579.2
  %.612.2 = fadd double %.612.1, %.610.2
  %.579.3 = load double, ptr %2, align 8
  %.610.3 = fmul double %.381.6.3, %.579.3
  %.612.3 = fadd double %.612.2, %.610.3
  %.579.4 = load double, ptr %3, align 8
  %.610.4 = fmul double %.381.6.4, %.579.4
  %.612.4 = fadd double %.612.3, %.610.4
  %.579.5 = load double, ptr %4, align 8
  %.610.5 = fmul double %.381.6.5, %.579.5
  %.612.5 = fadd double %.612.4, %.610.5
  %.579.6 = load double, ptr %5, align 8
  %.610.6 = fmul double %.381.6.6, %.579.6
  %.612.6 = fadd double %.612.5, %.610.6
  store double %.612.6, ptr %arg.row.4, align 8
  store double %.612.6, ptr %arg.cover.4, align 8
  %.189.1.i = load double, ptr %6, align 8
  store double %.189.1.i, ptr %invariant.gep.1, align 8
  store double %.189.1.i, ptr %gep236.1, align 8
  %.189.2.i = load double, ptr %7, align 8
  store double %.189.2.i, ptr %invariant.gep.2, align 8
  %.328.2.idx.i = shl i64 %arg.cover.5.1, 4
  %.328.2.i = getelementptr i8, ptr %arg.cover.4, i64 %.328.2.idx.i
  store double %.189.2.i, ptr %.328.2.i, align 8
  %.189.3.i = load double, ptr %8, align 8
  store double %.189.3.i, ptr %invariant.gep.3, align 8
  %.328.3.idx.i = mul i64 %arg.cover.5.1, 24
  %.328.3.i = getelementptr i8, ptr %arg.cover.4, i64 %.328.3.idx.i
  store double %.189.3.i, ptr %.328.3.i, align 8
  %.189.4.i = load double, ptr %9, align 8
  store double %.189.4.i, ptr %invariant.gep.4, align 8
  %.328.4.idx.i = shl i64 %arg.cover.5.1, 5
  %.328.4.i = getelementptr i8, ptr %arg.cover.4, i64 %.328.4.idx.i
  store double %.189.4.i, ptr %.328.4.i, align 8
  %.189.5.i = load double, ptr %10, align 8
  store double %.189.5.i, ptr %invariant.gep.5, align 8
  %.328.5.idx.i = mul i64 %arg.cover.5.1, 40
  %.328.5.i = getelementptr i8, ptr %arg.cover.4, i64 %.328.5.idx.i
  store double %.189.5.i, ptr %.328.5.i, align 8
  %.189.6.i = load double, ptr %11, align 8
  store double %.189.6.i, ptr %invariant.gep.6, align 8
  %.328.6.idx.i = mul i64 %arg.cover.5.1, 48
  %.328.6.i = getelementptr i8, ptr %arg.cover.4, i64 %.328.6.idx.i
  store double %.189.6.i, ptr %.328.6.i, align 8
  store ptr null, ptr %retptr, align 8
  ret i32 0
}

define i32 @call_run(ptr %given, ptr %answer) {
  %failed = alloca ptr, align 8
  %at0 = getelementptr i64, ptr %given, i64 0
  %in0 = load ptr, ptr %at0, align 8
  %at1 = getelementptr i64, ptr %given, i64 1
  %in1 = load ptr, ptr %at1, align 8
  %at2 = getelementptr i64, ptr %given, i64 2
  %in2 = load i64, ptr %at2, align 8
  %at3 = getelementptr i64, ptr %given, i64 3
  %in3 = load i64, ptr %at3, align 8
  %at4 = getelementptr i64, ptr %given, i64 4
  %in4 = load ptr, ptr %at4, align 8
  %at5 = getelementptr i64, ptr %given, i64 5
  %in5 = load i64, ptr %at5, align 8
  %at6 = getelementptr i64, ptr %given, i64 6
  %in6 = load i64, ptr %at6, align 8
  %at7 = getelementptr i64, ptr %given, i64 7
  %in7 = load i64, ptr %at7, align 8
  %at8 = getelementptr i64, ptr %given, i64 8
  %in8 = load i64, ptr %at8, align 8
  %at9 = getelementptr i64, ptr %given, i64 9
  %in9 = load ptr, ptr %at9, align 8
  %at10 = getelementptr i64, ptr %given, i64 10
  %in10 = load ptr, ptr %at10, align 8
  %at11 = getelementptr i64, ptr %given, i64 11
  %in11 = load i64, ptr %at11, align 8
  %at12 = getelementptr i64, ptr %given, i64 12
  %in12 = load i64, ptr %at12, align 8
  %at13 = getelementptr i64, ptr %given, i64 13
  %in13 = load ptr, ptr %at13, align 8
  %at14 = getelementptr i64, ptr %given, i64 14
  %in14 = load i64, ptr %at14, align 8
  %at15 = getelementptr i64, ptr %given, i64 15
  %in15 = load i64, ptr %at15, align 8
  %at16 = getelementptr i64, ptr %given, i64 16
  %in16 = load i64, ptr %at16, align 8
  %at17 = getelementptr i64, ptr %given, i64 17
  %in17 = load i64, ptr %at17, align 8
  %at18 = getelementptr i64, ptr %given, i64 18
  %in18 = load ptr, ptr %at18, align 8
  %at19 = getelementptr i64, ptr %given, i64 19
  %in19 = load ptr, ptr %at19, align 8
  %at20 = getelementptr i64, ptr %given, i64 20
  %in20 = load i64, ptr %at20, align 8
  %at21 = getelementptr i64, ptr %given, i64 21
  %in21 = load i64, ptr %at21, align 8
  %at22 = getelementptr i64, ptr %given, i64 22
  %in22 = load ptr, ptr %at22, align 8
  %at23 = getelementptr i64, ptr %given, i64 23
  %in23 = load i64, ptr %at23, align 8
  %at24 = getelementptr i64, ptr %given, i64 24
  %in24 = load i64, ptr %at24, align 8
  %at25 = getelementptr i64, ptr %given, i64 25
  %in25 = load i64, ptr %at25, align 8
  %at26 = getelementptr i64, ptr %given, i64 26
  %in26 = load i64, ptr %at26, align 8
  %at27 = getelementptr i64, ptr %given, i64 27
  %in27 = load ptr, ptr %at27, align 8
  %at28 = getelementptr i64, ptr %given, i64 28
  %in28 = load ptr, ptr %at28, align 8
  %at29 = getelementptr i64, ptr %given, i64 29
  %in29 = load i64, ptr %at29, align 8
  %at30 = getelementptr i64, ptr %given, i64 30
  %in30 = load i64, ptr %at30, align 8
  %at31 = getelementptr i64, ptr %given, i64 31
  %in31 = load ptr, ptr %at31, align 8
  %at32 = getelementptr i64, ptr %given, i64 32
  %in32 = load i64, ptr %at32, align 8
  %at33 = getelementptr i64, ptr %given, i64 33
  %in33 = load i64, ptr %at33, align 8
  %at34 = getelementptr i64, ptr %given, i64 34
  %in34 = load i64, ptr %at34, align 8
  %at35 = getelementptr i64, ptr %given, i64 35
  %in35 = load i64, ptr %at35, align 8
  %at36 = getelementptr i64, ptr %given, i64 36
  %in36 = load ptr, ptr %at36, align 8
  %at37 = getelementptr i64, ptr %given, i64 37
  %in37 = load ptr, ptr %at37, align 8
  %at38 = getelementptr i64, ptr %given, i64 38
  %in38 = load i64, ptr %at38, align 8
  %at39 = getelementptr i64, ptr %given, i64 39
  %in39 = load i64, ptr %at39, align 8
  %at40 = getelementptr i64, ptr %given, i64 40
  %in40 = load ptr, ptr %at40, align 8
  %at41 = getelementptr i64, ptr %given, i64 41
  %in41 = load i64, ptr %at41, align 8
  %at42 = getelementptr i64, ptr %given, i64 42
  %in42 = load i64, ptr %at42, align 8
  %at43 = getelementptr i64, ptr %given, i64 43
  %in43 = load i64, ptr %at43, align 8
  %at44 = getelementptr i64, ptr %given, i64 44
  %in44 = load i64, ptr %at44, align 8
  %at45 = getelementptr i64, ptr %given, i64 45
  %in45 = load ptr, ptr %at45, align 8
  %at46 = getelementptr i64, ptr %given, i64 46
  %in46 = load ptr, ptr %at46, align 8
  %at47 = getelementptr i64, ptr %given, i64 47
  %in47 = load i64, ptr %at47, align 8
  %at48 = getelementptr i64, ptr %given, i64 48
  %in48 = load i64, ptr %at48, align 8
  %at49 = getelementptr i64, ptr %given, i64 49
  %in49 = load ptr, ptr %at49, align 8
  %at50 = getelementptr i64, ptr %given, i64 50
  %in50 = load i64, ptr %at50, align 8
  %at51 = getelementptr i64, ptr %given, i64 51
  %in51 = load i64, ptr %at51, align 8
  %at52 = getelementptr i64, ptr %given, i64 52
  %in52 = load i64, ptr %at52, align 8
  %at53 = getelementptr i64, ptr %given, i64 53
  %in53 = load i64, ptr %at53, align 8
  %at54 = getelementptr i64, ptr %given, i64 54
  %in54 = load ptr, ptr %at54, align 8
  %at55 = getelementptr i64, ptr %given, i64 55
  %in55 = load ptr, ptr %at55, align 8
  %at56 = getelementptr i64, ptr %given, i64 56
  %in56 = load i64, ptr %at56, align 8
  %at57 = getelementptr i64, ptr %given, i64 57
  %in57 = load i64, ptr %at57, align 8
  %at58 = getelementptr i64, ptr %given, i64 58
  %in58 = load ptr, ptr %at58, align 8
  %at59 = getelementptr i64, ptr %given, i64 59
  %in59 = load i64, ptr %at59, align 8
  %at60 = getelementptr i64, ptr %given, i64 60
  %in60 = load i64, ptr %at60, align 8
  %at61 = getelementptr i64, ptr %given, i64 61
  %in61 = load i64, ptr %at61, align 8
  %at62 = getelementptr i64, ptr %given, i64 62
  %in62 = load i64, ptr %at62, align 8
  %at63 = getelementptr i64, ptr %given, i64 63
  %in63 = load ptr, ptr %at63, align 8
  %at64 = getelementptr i64, ptr %given, i64 64
  %in64 = load ptr, ptr %at64, align 8
  %at65 = getelementptr i64, ptr %given, i64 65
  %in65 = load i64, ptr %at65, align 8
  %at66 = getelementptr i64, ptr %given, i64 66
  %in66 = load i64, ptr %at66, align 8
  %at67 = getelementptr i64, ptr %given, i64 67
  %in67 = load ptr, ptr %at67, align 8
  %at68 = getelementptr i64, ptr %given, i64 68
  %in68 = load i64, ptr %at68, align 8
  %at69 = getelementptr i64, ptr %given, i64 69
  %in69 = load i64, ptr %at69, align 8
  %at70 = getelementptr i64, ptr %given, i64 70
  %in70 = load i64, ptr %at70, align 8
  %at71 = getelementptr i64, ptr %given, i64 71
  %in71 = load i64, ptr %at71, align 8
  %at72 = getelementptr i64, ptr %given, i64 72
  %in72 = load i64, ptr %at72, align 8
  %at73 = getelementptr i64, ptr %given, i64 73
  %in73 = load i64, ptr %at73, align 8
  %at74 = getelementptr i64, ptr %given, i64 74
  %in74 = load ptr, ptr %at74, align 8
  %at75 = getelementptr i64, ptr %given, i64 75
  %in75 = load ptr, ptr %at75, align 8
  %at76 = getelementptr i64, ptr %given, i64 76
  %in76 = load i64, ptr %at76, align 8
  %at77 = getelementptr i64, ptr %given, i64 77
  %in77 = load i64, ptr %at77, align 8
  %at78 = getelementptr i64, ptr %given, i64 78
  %in78 = load ptr, ptr %at78, align 8
  %at79 = getelementptr i64, ptr %given, i64 79
  %in79 = load i64, ptr %at79, align 8
  %at80 = getelementptr i64, ptr %given, i64 80
  %in80 = load i64, ptr %at80, align 8
  %at81 = getelementptr i64, ptr %given, i64 81
  %in81 = load ptr, ptr %at81, align 8
  %at82 = getelementptr i64, ptr %given, i64 82
  %in82 = load ptr, ptr %at82, align 8
  %at83 = getelementptr i64, ptr %given, i64 83
  %in83 = load i64, ptr %at83, align 8
  %at84 = getelementptr i64, ptr %given, i64 84
  %in84 = load i64, ptr %at84, align 8
  %at85 = getelementptr i64, ptr %given, i64 85
  %in85 = load ptr, ptr %at85, align 8
  %at86 = getelementptr i64, ptr %given, i64 86
  %in86 = load i64, ptr %at86, align 8
  %at87 = getelementptr i64, ptr %given, i64 87
  %in87 = load i64, ptr %at87, align 8
  %at88 = getelementptr i64, ptr %given, i64 88
  %in88 = load i64, ptr %at88, align 8
  %at89 = getelementptr i64, ptr %given, i64 89
  %in89 = load i64, ptr %at89, align 8
  %at90 = getelementptr i64, ptr %given, i64 90
  %in90 = load ptr, ptr %at90, align 8
  %at91 = getelementptr i64, ptr %given, i64 91
  %in91 = load ptr, ptr %at91, align 8
  %at92 = getelementptr i64, ptr %given, i64 92
  %in92 = load i64, ptr %at92, align 8
  %at93 = getelementptr i64, ptr %given, i64 93
  %in93 = load i64, ptr %at93, align 8
  %at94 = getelementptr i64, ptr %given, i64 94
  %in94 = load ptr, ptr %at94, align 8
  %at95 = getelementptr i64, ptr %given, i64 95
  %in95 = load i64, ptr %at95, align 8
  %at96 = getelementptr i64, ptr %given, i64 96
  %in96 = load i64, ptr %at96, align 8
  %at97 = getelementptr i64, ptr %given, i64 97
  %in97 = load i64, ptr %at97, align 8
  %at98 = getelementptr i64, ptr %given, i64 98
  %in98 = load i64, ptr %at98, align 8
  %at99 = getelementptr i64, ptr %given, i64 99
  %in99 = load double, ptr %at99, align 8
  %at100 = getelementptr i64, ptr %given, i64 100
  %in100 = load ptr, ptr %at100, align 8
  %at101 = getelementptr i64, ptr %given, i64 101
  %in101 = load ptr, ptr %at101, align 8
  %at102 = getelementptr i64, ptr %given, i64 102
  %in102 = load i64, ptr %at102, align 8
  %at103 = getelementptr i64, ptr %given, i64 103
  %in103 = load i64, ptr %at103, align 8
  %at104 = getelementptr i64, ptr %given, i64 104
  %in104 = load ptr, ptr %at104, align 8
  %at105 = getelementptr i64, ptr %given, i64 105
  %in105 = load i64, ptr %at105, align 8
  %at106 = getelementptr i64, ptr %given, i64 106
  %in106 = load i64, ptr %at106, align 8
  %at107 = getelementptr i64, ptr %given, i64 107
  %in107 = load ptr, ptr %at107, align 8
  %at108 = getelementptr i64, ptr %given, i64 108
  %in108 = load ptr, ptr %at108, align 8
  %at109 = getelementptr i64, ptr %given, i64 109
  %in109 = load i64, ptr %at109, align 8
  %at110 = getelementptr i64, ptr %given, i64 110
  %in110 = load i64, ptr %at110, align 8
  %at111 = getelementptr i64, ptr %given, i64 111
  %in111 = load ptr, ptr %at111, align 8
  %at112 = getelementptr i64, ptr %given, i64 112
  %in112 = load i64, ptr %at112, align 8
  %at113 = getelementptr i64, ptr %given, i64 113
  %in113 = load i64, ptr %at113, align 8
  %at114 = getelementptr i64, ptr %given, i64 114
  %in114 = load ptr, ptr %at114, align 8
  %at115 = getelementptr i64, ptr %given, i64 115
  %in115 = load ptr, ptr %at115, align 8
  %at116 = getelementptr i64, ptr %given, i64 116
  %in116 = load i64, ptr %at116, align 8
  %at117 = getelementptr i64, ptr %given, i64 117
  %in117 = load i64, ptr %at117, align 8
  %at118 = getelementptr i64, ptr %given, i64 118
  %in118 = load ptr, ptr %at118, align 8
  %at119 = getelementptr i64, ptr %given, i64 119
  %in119 = load i64, ptr %at119, align 8
  %at120 = getelementptr i64, ptr %given, i64 120
  %in120 = load i64, ptr %at120, align 8
  %at121 = getelementptr i64, ptr %given, i64 121
  %in121 = load ptr, ptr %at121, align 8
  %at122 = getelementptr i64, ptr %given, i64 122
  %in122 = load ptr, ptr %at122, align 8
  %at123 = getelementptr i64, ptr %given, i64 123
  %in123 = load i64, ptr %at123, align 8
  %at124 = getelementptr i64, ptr %given, i64 124
  %in124 = load i64, ptr %at124, align 8
  %at125 = getelementptr i64, ptr %given, i64 125
  %in125 = load ptr, ptr %at125, align 8
  %at126 = getelementptr i64, ptr %given, i64 126
  %in126 = load i64, ptr %at126, align 8
  %at127 = getelementptr i64, ptr %given, i64 127
  %in127 = load i64, ptr %at127, align 8
  %at128 = getelementptr i64, ptr %given, i64 128
  %in128 = load ptr, ptr %at128, align 8
  %at129 = getelementptr i64, ptr %given, i64 129
  %in129 = load ptr, ptr %at129, align 8
  %at130 = getelementptr i64, ptr %given, i64 130
  %in130 = load i64, ptr %at130, align 8
  %at131 = getelementptr i64, ptr %given, i64 131
  %in131 = load i64, ptr %at131, align 8
  %at132 = getelementptr i64, ptr %given, i64 132
  %in132 = load ptr, ptr %at132, align 8
  %at133 = getelementptr i64, ptr %given, i64 133
  %in133 = load i64, ptr %at133, align 8
  %at134 = getelementptr i64, ptr %given, i64 134
  %in134 = load i64, ptr %at134, align 8
  %at135 = getelementptr i64, ptr %given, i64 135
  %in135 = load ptr, ptr %at135, align 8
  %at136 = getelementptr i64, ptr %given, i64 136
  %in136 = load ptr, ptr %at136, align 8
  %at137 = getelementptr i64, ptr %given, i64 137
  %in137 = load i64, ptr %at137, align 8
  %at138 = getelementptr i64, ptr %given, i64 138
  %in138 = load i64, ptr %at138, align 8
  %at139 = getelementptr i64, ptr %given, i64 139
  %in139 = load ptr, ptr %at139, align 8
  %at140 = getelementptr i64, ptr %given, i64 140
  %in140 = load i64, ptr %at140, align 8
  %at141 = getelementptr i64, ptr %given, i64 141
  %in141 = load i64, ptr %at141, align 8
  %at142 = getelementptr i64, ptr %given, i64 142
  %in142 = load double, ptr %at142, align 8
  %at143 = getelementptr i64, ptr %given, i64 143
  %in143 = load double, ptr %at143, align 8
  %at144 = getelementptr i64, ptr %given, i64 144
  %in144 = load double, ptr %at144, align 8
  %at145 = getelementptr i64, ptr %given, i64 145
  %in145 = load double, ptr %at145, align 8
  %at146 = getelementptr i64, ptr %given, i64 146
  %in146 = load double, ptr %at146, align 8
  %at147 = getelementptr i64, ptr %given, i64 147
  %in147 = load ptr, ptr %at147, align 8
  %at148 = getelementptr i64, ptr %given, i64 148
  %in148 = load ptr, ptr %at148, align 8
  %at149 = getelementptr i64, ptr %given, i64 149
  %in149 = load i64, ptr %at149, align 8
  %at150 = getelementptr i64, ptr %given, i64 150
  %in150 = load i64, ptr %at150, align 8
  %at151 = getelementptr i64, ptr %given, i64 151
  %in151 = load ptr, ptr %at151, align 8
  %at152 = getelementptr i64, ptr %given, i64 152
  %in152 = load i64, ptr %at152, align 8
  %at153 = getelementptr i64, ptr %given, i64 153
  %in153 = load i64, ptr %at153, align 8
  %at154 = getelementptr i64, ptr %given, i64 154
  %in154 = load i64, ptr %at154, align 8
  %at155 = getelementptr i64, ptr %given, i64 155
  %in155 = load i64, ptr %at155, align 8
  %at156 = getelementptr i64, ptr %given, i64 156
  %in156 = load i64, ptr %at156, align 8
  %at157 = getelementptr i64, ptr %given, i64 157
  %in157 = load i64, ptr %at157, align 8
  %at158 = getelementptr i64, ptr %given, i64 158
  %in158 = load ptr, ptr %at158, align 8
  %at159 = getelementptr i64, ptr %given, i64 159
  %in159 = load ptr, ptr %at159, align 8
  %at160 = getelementptr i64, ptr %given, i64 160
  %in160 = load i64, ptr %at160, align 8
  %at161 = getelementptr i64, ptr %given, i64 161
  %in161 = load i64, ptr %at161, align 8
  %at162 = getelementptr i64, ptr %given, i64 162
  %in162 = load ptr, ptr %at162, align 8
  %at163 = getelementptr i64, ptr %given, i64 163
  %in163 = load i64, ptr %at163, align 8
  %at164 = getelementptr i64, ptr %given, i64 164
  %in164 = load i64, ptr %at164, align 8
  %at165 = getelementptr i64, ptr %given, i64 165
  %in165 = load i64, ptr %at165, align 8
  %at166 = getelementptr i64, ptr %given, i64 166
  %in166 = load i64, ptr %at166, align 8
  %at167 = getelementptr i64, ptr %given, i64 167
  %in167 = load i64, ptr %at167, align 8
  %at168 = getelementptr i64, ptr %given, i64 168
  %in168 = load i64, ptr %at168, align 8
  %at169 = getelementptr i64, ptr %given, i64 169
  %in169 = load i64, ptr %at169, align 8
  %at170 = getelementptr i64, ptr %given, i64 170
  %in170 = load i64, ptr %at170, align 8
  %at171 = getelementptr i64, ptr %given, i64 171
  %in171 = load ptr, ptr %at171, align 8
  %at172 = getelementptr i64, ptr %given, i64 172
  %in172 = load ptr, ptr %at172, align 8
  %at173 = getelementptr i64, ptr %given, i64 173
  %in173 = load i64, ptr %at173, align 8
  %at174 = getelementptr i64, ptr %given, i64 174
  %in174 = load i64, ptr %at174, align 8
  %at175 = getelementptr i64, ptr %given, i64 175
  %in175 = load ptr, ptr %at175, align 8
  %at176 = getelementptr i64, ptr %given, i64 176
  %in176 = load i64, ptr %at176, align 8
  %at177 = getelementptr i64, ptr %given, i64 177
  %in177 = load i64, ptr %at177, align 8
  %at178 = getelementptr i64, ptr %given, i64 178
  %in178 = load i64, ptr %at178, align 8
  %at179 = getelementptr i64, ptr %given, i64 179
  %in179 = load i64, ptr %at179, align 8
  %at180 = getelementptr i64, ptr %given, i64 180
  %in180 = load ptr, ptr %at180, align 8
  %at181 = getelementptr i64, ptr %given, i64 181
  %in181 = load ptr, ptr %at181, align 8
  %at182 = getelementptr i64, ptr %given, i64 182
  %in182 = load i64, ptr %at182, align 8
  %at183 = getelementptr i64, ptr %given, i64 183
  %in183 = load i64, ptr %at183, align 8
  %at184 = getelementptr i64, ptr %given, i64 184
  %in184 = load ptr, ptr %at184, align 8
  %at185 = getelementptr i64, ptr %given, i64 185
  %in185 = load i64, ptr %at185, align 8
  %at186 = getelementptr i64, ptr %given, i64 186
  %in186 = load i64, ptr %at186, align 8
  %at187 = getelementptr i64, ptr %given, i64 187
  %in187 = load i64, ptr %at187, align 8
  %at188 = getelementptr i64, ptr %given, i64 188
  %in188 = load i64, ptr %at188, align 8
  %status = call i32 @n17(ptr %answer, ptr %failed, ptr %in0, ptr %in1, i64 %in2, i64 %in3, ptr %in4, i64 %in5, i64 %in6, i64 %in7, i64 %in8, ptr %in9, ptr %in10, i64 %in11, i64 %in12, ptr %in13, i64 %in14, i64 %in15, i64 %in16, i64 %in17, ptr %in18, ptr %in19, i64 %in20, i64 %in21, ptr %in22, i64 %in23, i64 %in24, i64 %in25, i64 %in26, ptr %in27, ptr %in28, i64 %in29, i64 %in30, ptr %in31, i64 %in32, i64 %in33, i64 %in34, i64 %in35, ptr %in36, ptr %in37, i64 %in38, i64 %in39, ptr %in40, i64 %in41, i64 %in42, i64 %in43, i64 %in44, ptr %in45, ptr %in46, i64 %in47, i64 %in48, ptr %in49, i64 %in50, i64 %in51, i64 %in52, i64 %in53, ptr %in54, ptr %in55, i64 %in56, i64 %in57, ptr %in58, i64 %in59, i64 %in60, i64 %in61, i64 %in62, ptr %in63, ptr %in64, i64 %in65, i64 %in66, ptr %in67, i64 %in68, i64 %in69, i64 %in70, i64 %in71, i64 %in72, i64 %in73, ptr %in74, ptr %in75, i64 %in76, i64 %in77, ptr %in78, i64 %in79, i64 %in80, ptr %in81, ptr %in82, i64 %in83, i64 %in84, ptr %in85, i64 %in86, i64 %in87, i64 %in88, i64 %in89, ptr %in90, ptr %in91, i64 %in92, i64 %in93, ptr %in94, i64 %in95, i64 %in96, i64 %in97, i64 %in98, double %in99, ptr %in100, ptr %in101, i64 %in102, i64 %in103, ptr %in104, i64 %in105, i64 %in106, ptr %in107, ptr %in108, i64 %in109, i64 %in110, ptr %in111, i64 %in112, i64 %in113, ptr %in114, ptr %in115, i64 %in116, i64 %in117, ptr %in118, i64 %in119, i64 %in120, ptr %in121, ptr %in122, i64 %in123, i64 %in124, ptr %in125, i64 %in126, i64 %in127, ptr %in128, ptr %in129, i64 %in130, i64 %in131, ptr %in132, i64 %in133, i64 %in134, ptr %in135, ptr %in136, i64 %in137, i64 %in138, ptr %in139, i64 %in140, i64 %in141, double %in142, double %in143, double %in144, double %in145, double %in146, ptr %in147, ptr %in148, i64 %in149, i64 %in150, ptr %in151, i64 %in152, i64 %in153, i64 %in154, i64 %in155, i64 %in156, i64 %in157, ptr %in158, ptr %in159, i64 %in160, i64 %in161, ptr %in162, i64 %in163, i64 %in164, i64 %in165, i64 %in166, i64 %in167, i64 %in168, i64 %in169, i64 %in170, ptr %in171, ptr %in172, i64 %in173, i64 %in174, ptr %in175, i64 %in176, i64 %in177, i64 %in178, i64 %in179, ptr %in180, ptr %in181, i64 %in182, i64 %in183, ptr %in184, i64 %in185, i64 %in186, i64 %in187, i64 %in188)
  ret i32 %status
}

define internal range(i32 -1, -2) i32 @n25(ptr noalias writeonly captures(none) %retptr, ptr noalias writeonly captures(none) %excinfo, ptr %arg.drawn.0, ptr readnone captures(none) %arg.drawn.1, i64 %arg.drawn.2, i64 %arg.drawn.3, ptr captures(none) %arg.drawn.4, i64 %arg.drawn.5.0, i64 %arg.drawn.5.1, i64 %arg.drawn.6.0, i64 %arg.drawn.6.1, ptr %arg.bends.0, ptr readnone captures(none) %arg.bends.1, i64 %arg.bends.2, i64 %arg.bends.3, ptr readonly captures(none) %arg.bends.4, i64 %arg.bends.5.0, i64 %arg.bends.6.0, ptr %arg.rests.0, ptr readnone captures(none) %arg.rests.1, i64 %arg.rests.2, i64 %arg.rests.3, ptr readonly captures(none) %arg.rests.4, i64 %arg.rests.5.0, i64 %arg.rests.6.0, ptr %arg.ahead.0, ptr readnone captures(none) %arg.ahead.1, i64 %arg.ahead.2, i64 %arg.ahead.3, ptr readonly captures(none) %arg.ahead.4, i64 %arg.ahead.5.0, i64 %arg.ahead.6.0, double %arg.laws.0, double %arg.laws.1, double %arg.laws.2, double %arg.laws.3, double %arg.laws.4, double %arg.laws.5, double %arg.laws.6, i64 %arg.seed, ptr %arg.when.0, ptr readnone captures(none) %arg.when.1, i64 %arg.when.2, i64 %arg.when.3, ptr writeonly captures(none) %arg.when.4, i64 %arg.when.5.0, i64 %arg.when.6.0) {
B0.endif.endif:
  %.4.i118 = alloca double, align 8
  %excinfo.1.i119 = alloca ptr, align 8
  %.4.i103 = alloca double, align 8
  %excinfo.1.i104 = alloca ptr, align 8
  %.4.i = alloca double, align 8
  %excinfo.1.i = alloca ptr, align 8
  tail call void @NRT_incref(ptr %arg.drawn.0)
  tail call void @NRT_incref(ptr %arg.bends.0)
  tail call void @NRT_incref(ptr %arg.rests.0)
  tail call void @NRT_incref(ptr %arg.ahead.0)
  tail call void @NRT_incref(ptr %arg.when.0)
  %.5.i = trunc i64 %arg.seed to i32
  %.6.i = tail call ptr @numba_get_np_random_state()
  tail call void @numba_rnd_init(ptr %.6.i, i32 %.5.i)
  %.270563.not = icmp slt i64 %arg.drawn.5.0, 1
  br i1 %.270563.not, label %B1220, label %B146.lr.ph

B932:
  %.1211 = fsub double %arg.laws.2, %.1051
  %.1213 = fmul double %.13.i97, %.1211
  %.1215 = fadd double %.1051, %.1213
  %sunkaddr = mul i64 %.349, 8
  %sunkaddr259 = getelementptr i8, ptr %arg.drawn.4, i64 %sunkaddr
  %sunkaddr260 = getelementptr i8, ptr %sunkaddr259, i64 16
  %.1252 = load double, ptr %sunkaddr260, align 8
  call void @llvm.lifetime.start.p0(ptr nonnull %.4.i118)
  call void @llvm.lifetime.start.p0(ptr nonnull %excinfo.1.i119)
  store ptr null, ptr %excinfo.1.i119, align 8
  store double 0.000000e+00, ptr %.4.i118, align 8
  %.8.i = call i32 @n26(ptr nonnull %.4.i118, ptr nonnull %excinfo.1.i119, double 0.000000e+00, double 1.000000e+00)
  %cond.i = icmp eq i32 %.8.i, 0
  br i1 %cond.i, label %in0..exit.thread, label %in0..exit

in0..exit.thread:
  %.18.i = load double, ptr %.4.i118, align 8
  call void @llvm.lifetime.end.p0(ptr nonnull %.4.i118)
  call void @llvm.lifetime.end.p0(ptr nonnull %excinfo.1.i119)
  %.1254 = fmul double %arg.laws.6, %.1252
  %.1280 = fmul double %.641, %.18.i
  %.1281 = fadd double %.1254, %.1280
  %sunkaddr261 = mul i64 %.349, 8
  %sunkaddr262 = getelementptr i8, ptr %arg.drawn.4, i64 %sunkaddr261
  %sunkaddr263 = getelementptr i8, ptr %sunkaddr262, i64 16
  store double %.1281, ptr %sunkaddr263, align 8
  %sunkaddr264 = mul i64 %.349, 8
  %sunkaddr265 = getelementptr i8, ptr %arg.drawn.4, i64 %sunkaddr264
  %sunkaddr266 = getelementptr i8, ptr %sunkaddr265, i64 8
  %.1341 = load double, ptr %sunkaddr266, align 8
  call void @llvm.lifetime.start.p0(ptr nonnull %.4.i118)
  call void @llvm.lifetime.start.p0(ptr nonnull %excinfo.1.i119)
  store ptr null, ptr %excinfo.1.i119, align 8
  store double 0.000000e+00, ptr %.4.i118, align 8
  %.8.i120 = call i32 @n26(ptr nonnull %.4.i118, ptr nonnull %excinfo.1.i119, double 0.000000e+00, double 1.000000e+00)
  %cond.i121 = icmp eq i32 %.8.i120, 0
  br i1 %cond.i121, label %in0..exit128.thread, label %in0..exit128

in0..exit:
  %.9.i = load ptr, ptr %excinfo.1.i119, align 8
  call void @llvm.lifetime.end.p0(ptr nonnull %.4.i118)
  call void @llvm.lifetime.end.p0(ptr nonnull %excinfo.1.i119)
  %.1267 = icmp sgt i32 %.8.i, 0
  %.1268 = select i1 %.1267, ptr %.9.i, ptr undef
  store ptr %.1268, ptr %excinfo, align 8
  br label %common.ret

B1216:
  %x.sroa.0.1 = phi ptr [ null, %B806.endif.endif.endif.endif ], [ %arg.drawn.0, %in0..exit128.thread ]
  tail call void @NRT_decref(ptr %x.sroa.0.1)
  %exitcond709.not = icmp eq i64 %.283, %arg.drawn.5.0
  br i1 %exitcond709.not, label %B1220, label %B146.endif.endif

common.ret:
  %common.ret.op = phi i32 [ 0, %B1220 ], [ %.8.i105, %in0..exit113 ], [ %.8.i120, %in0..exit128 ], [ %.8.i, %in0..exit ]
  ret i32 %common.ret.op

B1220:
  tail call void @NRT_decref(ptr %arg.when.0)
  tail call void @NRT_decref(ptr %arg.rests.0)
  tail call void @NRT_decref(ptr %arg.drawn.0)
  tail call void @NRT_decref(ptr %arg.bends.0)
  tail call void @NRT_decref(ptr %arg.ahead.0)
  store ptr null, ptr %retptr, align 8
  br label %common.ret

B146.lr.ph:
  %.735509.not = icmp slt i64 %arg.ahead.5.0, 1
  br i1 %.735509.not, label %B146.endif.endif.us.preheader, label %B146.endif.endif.preheader

B146.endif.endif.us.preheader:
  br label %B146.endif.endif.us

B146.endif.endif.preheader:
  %.147.i = fmul double %arg.laws.6, %arg.laws.6
  %.639 = fsub double 1.000000e+00, %.147.i
  %.640 = tail call double @sqrt(double %.639)
  br label %B146.endif.endif

B146.endif.endif.us:
  %.276528566.us = phi i64 [ %.283.us, %B146.endif.endif.us ], [ 0, %B146.endif.endif.us.preheader ]
  %0 = shl i64 %.276528566.us, 3
  %scevgep = getelementptr i8, ptr %arg.when.4, i64 %0
  store double 0x7FF0000000000000, ptr %scevgep, align 8
  %.283.us = add nuw nsw i64 %.276528566.us, 1
  %exitcond709.not.us = icmp eq i64 %arg.drawn.5.0, %.283.us
  br i1 %exitcond709.not.us, label %B1220, label %B146.endif.endif.us

B146.endif.endif:
  %.276528566 = phi i64 [ %.283, %B1216 ], [ 0, %B146.endif.endif.preheader ]
  %.349 = mul i64 %.276528566, %arg.drawn.5.1
  %.351 = getelementptr double, ptr %arg.drawn.4, i64 %.349
  tail call void @NRT_incref(ptr %arg.drawn.0)
  %1 = getelementptr double, ptr %arg.when.4, i64 %.276528566
  store double 0x7FF0000000000000, ptr %1, align 8
  %.455 = load double, ptr %.351, align 8
  %.520 = getelementptr i8, ptr %.351, i64 32
  %.521 = load double, ptr %.520, align 8
  %2 = getelementptr double, ptr %arg.rests.4, i64 %.276528566
  %.613 = load double, ptr %2, align 8
  %.283 = add nuw nsw i64 %.276528566, 1
  %.523 = fmul double %arg.laws.1, %.521
  %.12.i = fcmp olt double %.523, 0.000000e+00
  %.13.i = select i1 %.12.i, double 0.000000e+00, double %.523
  %.12.i96 = fcmp ogt double %.13.i, 1.000000e+00
  %.13.i97 = select i1 %.12.i96, double 1.000000e+00, double %.13.i
  %.641 = fmul double %.613, %.640
  %.804 = getelementptr i8, ptr %.351, i64 8
  %.805.pre = load double, ptr %.804, align 8
  br label %B456.endif.endif.endif

B456.endif.endif.endif:
  %.805 = phi double [ %.805.pre, %B146.endif.endif ], [ %.13.i130, %in0..exit128.thread ]
  %level.2.1513 = phi double [ %.455, %B146.endif.endif ], [ %.1215, %in0..exit128.thread ]
  %last.2.1512 = phi double [ %.455, %B146.endif.endif ], [ %.1051, %in0..exit128.thread ]
  %.741501510 = phi i64 [ 0, %B146.endif.endif ], [ %.748, %in0..exit128.thread ]
  %.748 = add nuw nsw i64 %.741501510, 1
  %3 = shl i64 %.741501510, 3
  %scevgep258 = getelementptr i8, ptr %arg.ahead.4, i64 %3
  %.836 = load double, ptr %scevgep258, align 8
  %sunkaddr267 = mul i64 %.349, 8
  %sunkaddr268 = getelementptr i8, ptr %arg.drawn.4, i64 %sunkaddr267
  %sunkaddr269 = getelementptr i8, ptr %sunkaddr268, i64 24
  %.866 = load double, ptr %sunkaddr269, align 8
  %sunkaddr270 = mul i64 %.349, 8
  %sunkaddr271 = getelementptr i8, ptr %arg.drawn.4, i64 %sunkaddr270
  %sunkaddr272 = getelementptr i8, ptr %sunkaddr271, i64 16
  %.927 = load double, ptr %sunkaddr272, align 8
  %sunkaddr273 = mul i64 %.276528566, 8
  %sunkaddr274 = getelementptr i8, ptr %arg.bends.4, i64 %sunkaddr273
  %.990 = load double, ptr %sunkaddr274, align 8
  call void @llvm.lifetime.start.p0(ptr nonnull %.4.i118)
  call void @llvm.lifetime.start.p0(ptr nonnull %excinfo.1.i119)
  store ptr null, ptr %excinfo.1.i119, align 8
  store double 0.000000e+00, ptr %.4.i118, align 8
  %.8.i105 = call i32 @n26(ptr nonnull %.4.i118, ptr nonnull %excinfo.1.i119, double 0.000000e+00, double 1.000000e+00)
  %cond.i106 = icmp eq i32 %.8.i105, 0
  br i1 %cond.i106, label %in0..exit113.thread, label %in0..exit113

in0..exit113.thread:
  %.7.i = fsub double %level.2.1513, %arg.laws.2
  %.8.i100 = fmul double %.7.i, %.990
  %.12.i101 = fdiv double %.8.i100, 2.000000e+01
  %.13.i102 = fadd double %.12.i101, 1.000000e+00
  %.12.i.i = fcmp olt double %.13.i102, 5.000000e-02
  %.13.i.i = select i1 %.12.i.i, double 5.000000e-02, double %.13.i102
  %.12.i92 = fcmp olt double %.866, -8.000000e-01
  %.13.i93 = select i1 %.12.i92, double -8.000000e-01, double %.866
  %.895 = fmul double %.836, %.13.i93
  %.896 = fadd double %.895, 1.000000e+00
  %.897 = fmul double %.805, %.896
  %.928 = fadd double %.927, %.897
  %.12.i98 = fcmp olt double %.928, 0.000000e+00
  %.13.i99 = select i1 %.12.i98, double 0.000000e+00, double %.928
  %.18.i112 = load double, ptr %.4.i118, align 8
  call void @llvm.lifetime.end.p0(ptr nonnull %.4.i118)
  call void @llvm.lifetime.end.p0(ptr nonnull %excinfo.1.i119)
  %.1023 = tail call double @sqrt(double %arg.laws.3)
  %.1025 = fmul double %arg.laws.4, %.1023
  %.958 = fmul double %arg.laws.3, %.13.i99
  %.1017 = fmul double %.13.i.i, %.958
  %.1019 = fadd double %level.2.1513, %.1017
  %.1050 = fmul double %.18.i112, %.1025
  %.1051 = fadd double %.1019, %.1050
  %.1057 = fcmp ogt double %.1051, %arg.laws.0
  br i1 %.1057, label %B806.endif.endif.endif.endif, label %B932

in0..exit113:
  %.9.i109 = load ptr, ptr %excinfo.1.i119, align 8
  call void @llvm.lifetime.end.p0(ptr nonnull %.4.i118)
  call void @llvm.lifetime.end.p0(ptr nonnull %excinfo.1.i119)
  %.1038 = icmp sgt i32 %.8.i105, 0
  %.1039 = select i1 %.1038, ptr %.9.i109, ptr undef
  store ptr %.1039, ptr %excinfo, align 8
  br label %common.ret

B806.endif.endif.endif.endif:
  tail call void @NRT_decref(ptr %arg.drawn.0)
  %.1075 = fsub double %.1051, %last.2.1512
  %.12.i94 = fcmp olt double %.1075, 1.000000e-09
  %.13.i95 = select i1 %.12.i94, double 1.000000e-09, double %.1075
  %.1072 = fsub double %arg.laws.0, %last.2.1512
  %.1111 = fdiv double %.1072, %.13.i95
  %.12.i114 = fcmp olt double %.1111, 0.000000e+00
  %.13.i115 = select i1 %.12.i114, double 0.000000e+00, double %.1111
  %.12.i116 = fcmp ogt double %.13.i115, 1.000000e+00
  %.13.i117 = select i1 %.12.i116, double 1.000000e+00, double %.13.i115
  %.1169 = uitofp nneg i64 %.741501510 to double
  %.1170 = fadd double %.13.i117, %.1169
  %sunkaddr275 = mul i64 %.276528566, 8
  %sunkaddr276 = getelementptr i8, ptr %arg.when.4, i64 %sunkaddr275
  store double %.1170, ptr %sunkaddr276, align 8
  br label %B1216

in0..exit128.thread:
  %.18.i127 = load double, ptr %.4.i118, align 8
  call void @llvm.lifetime.end.p0(ptr nonnull %.4.i118)
  call void @llvm.lifetime.end.p0(ptr nonnull %excinfo.1.i119)
  %.1367 = fmul double %arg.laws.5, %.18.i127
  %.1368 = fadd double %.1341, %.1367
  %.12.i129 = fcmp olt double %.1368, 0.000000e+00
  %.13.i130 = select i1 %.12.i129, double 0.000000e+00, double %.1368
  %sunkaddr277 = mul i64 %.349, 8
  %sunkaddr278 = getelementptr i8, ptr %arg.drawn.4, i64 %sunkaddr277
  %sunkaddr279 = getelementptr i8, ptr %sunkaddr278, i64 8
  store double %.13.i130, ptr %sunkaddr279, align 8
  %exitcond.not = icmp eq i64 %arg.ahead.5.0, %.748
  br i1 %exitcond.not, label %B1216, label %B456.endif.endif.endif

in0..exit128:
  %.9.i124 = load ptr, ptr %excinfo.1.i119, align 8
  call void @llvm.lifetime.end.p0(ptr nonnull %.4.i118)
  call void @llvm.lifetime.end.p0(ptr nonnull %excinfo.1.i119)
  %.1354 = icmp sgt i32 %.8.i120, 0
  %.1355 = select i1 %.1354, ptr %.9.i124, ptr undef
  store ptr %.1355, ptr %excinfo, align 8
  br label %common.ret
}

define internal range(i32 -1, -2) i32 @n26(ptr noalias writeonly captures(none) %retptr, ptr noalias writeonly captures(none) %excinfo, double %arg.loc, double %arg.scale) local_unnamed_addr {
B0:
  %.5.i = alloca double, align 8
  %excinfo.1.i = alloca ptr, align 8
  %.36.i = alloca double, align 8
  %excinfo.2.i = alloca ptr, align 8
  %.6 = tail call ptr @numba_get_np_random_state()
  %.9 = getelementptr inbounds nuw i8, ptr %.6, i64 2500
  %.10 = load i32, ptr %.9, align 4
  %.11.not = icmp eq i32 %.10, 0
  br i1 %.11.not, label %B0.else, label %B0.if

B0.if:
  %sunkaddr = getelementptr inbounds nuw i8, ptr %.6, i64 2504
  %.13 = load double, ptr %sunkaddr, align 8
  br label %B0.endif

B0.else:
  call void @llvm.lifetime.start.p0(ptr nonnull %.5.i)
  call void @llvm.lifetime.start.p0(ptr nonnull %excinfo.1.i)
  call void @llvm.lifetime.start.p0(ptr nonnull %.36.i)
  call void @llvm.lifetime.start.p0(ptr nonnull %excinfo.2.i)
  br label %B8.i

B8.i:
  %.9.i = call i32 @n27(ptr nonnull %.5.i, ptr nonnull %excinfo.1.i)
  switch i32 %.9.i, label %in1..exit [
    i32 -2, label %B8.endif.i
    i32 0, label %B8.endif.i
  ]

B8.endif.i:
  %.19.i = load double, ptr %.5.i, align 8
  %.40.i = call i32 @n27(ptr nonnull %.36.i, ptr nonnull %excinfo.2.i)
  switch i32 %.40.i, label %in1..exit [
    i32 -2, label %B8.endif.endif.i
    i32 0, label %B8.endif.endif.i
  ]

B8.endif.endif.i:
  %.50.i = load double, ptr %.36.i, align 8
  %.31.i = fmul double %.19.i, 2.000000e+00
  %.32.i = fadd double %.31.i, -1.000000e+00
  %.60.i = fmul double %.50.i, 2.000000e+00
  %.61.i = fadd double %.60.i, -1.000000e+00
  %.67.i = fmul double %.32.i, %.32.i
  %.70.i = fmul double %.61.i, %.61.i
  %.71.i = fadd double %.67.i, %.70.i
  %.76.i = fcmp olt double %.71.i, 1.000000e+00
  %.79.i = fcmp une double %.71.i, 0.000000e+00
  %or.cond.i = and i1 %.76.i, %.79.i
  br i1 %or.cond.i, label %in1..exit.thread, label %B8.i

in1..exit.thread:
  %.90.i = tail call double @llvm.log.f64(double %.71.i)
  %.91.i = fmul double %.90.i, -2.000000e+00
  %.100.i = fdiv double %.91.i, %.71.i
  %.103.i = tail call double @sqrt(double %.100.i)
  %.105.i = fmul double %.32.i, %.103.i
  %.109.i = fmul double %.61.i, %.103.i
  call void @llvm.lifetime.end.p0(ptr nonnull %.5.i)
  call void @llvm.lifetime.end.p0(ptr nonnull %excinfo.1.i)
  call void @llvm.lifetime.end.p0(ptr nonnull %.36.i)
  call void @llvm.lifetime.end.p0(ptr nonnull %excinfo.2.i)
  br label %B0.else.endif

in1..exit:
  %common.ret.op.i = phi i32 [ %.9.i, %B8.i ], [ %.40.i, %B8.endif.i ]
  call void @llvm.lifetime.end.p0(ptr nonnull %.5.i)
  call void @llvm.lifetime.end.p0(ptr nonnull %excinfo.1.i)
  call void @llvm.lifetime.end.p0(ptr nonnull %.36.i)
  call void @llvm.lifetime.end.p0(ptr nonnull %excinfo.2.i)
  %cond = icmp eq i32 %common.ret.op.i, -2
  br i1 %cond, label %B0.else.endif, label %B0.else.if.if

common.ret:
  %common.ret.op = phi i32 [ 0, %B0.endif ], [ %common.ret.op.i, %B0.else.if.if ]
  ret i32 %common.ret.op

B0.endif:
  %storemerge = phi i32 [ 1, %B0.else.endif ], [ 0, %B0.if ]
  %result.0 = phi double [ %.17.sroa.3.05, %B0.else.endif ], [ %.13, %B0.if ]
  %sunkaddr1 = getelementptr inbounds i8, ptr %.6, i64 2500
  store i32 %storemerge, ptr %sunkaddr1, align 4
  %.50 = fmul double %arg.scale, %result.0
  %.51 = fadd double %arg.loc, %.50
  store double %.51, ptr %retptr, align 8
  br label %common.ret

B0.else.endif:
  %.17.sroa.3.05 = phi double [ %.109.i, %in1..exit.thread ], [ 0.000000e+00, %in1..exit ]
  %.17.sroa.0.04 = phi double [ %.105.i, %in1..exit.thread ], [ 0.000000e+00, %in1..exit ]
  %sunkaddr7 = getelementptr inbounds nuw i8, ptr %.6, i64 2504
  store double %.17.sroa.0.04, ptr %sunkaddr7, align 8
  br label %B0.endif

B0.else.if.if:
  store ptr null, ptr %excinfo, align 8
  br label %common.ret
}

define internal noundef i32 @n27(ptr noalias writeonly captures(none) initializes((0, 8)) %retptr, ptr noalias readnone captures(none) %excinfo) local_unnamed_addr {
B0:
  %.4 = tail call ptr @numba_get_np_random_state()
  %.6 = load i32, ptr %.4, align 4
  %promoted = zext i32 %.6 to i64
  %.7 = icmp ugt i32 %.6, 623
  br i1 %.7, label %B0.endif.thread, label %B0.endif

B0.endif.thread:
  tail call void @numba_rnd_shuffle(ptr nonnull %.4)
  %sunkaddr = getelementptr inbounds nuw i8, ptr %.4, i64 4
  %.156 = load i32, ptr %sunkaddr, align 4
  br label %B0.endif.endif

B0.endif:
  %0 = trunc i64 %promoted to i32
  %1 = trunc i64 %promoted to i32
  %2 = shl nuw nsw i64 %promoted, 2
  %sunkaddr2 = getelementptr inbounds nuw i8, ptr %.4, i64 %2
  %sunkaddr3 = getelementptr inbounds nuw i8, ptr %sunkaddr2, i64 4
  %.15 = load i32, ptr %sunkaddr3, align 4
  %.16 = add nuw nsw i32 %1, 1
  store i32 %.16, ptr %.4, align 4
  %.31 = icmp eq i32 %0, 623
  br i1 %.31, label %B0.endif.if, label %B0.endif.endif

B0.endif.if:
  tail call void @numba_rnd_shuffle(ptr nonnull %.4)
  br label %B0.endif.endif

B0.endif.endif:
  %.1510 = phi i32 [ %.15, %B0.endif ], [ %.156, %B0.endif.thread ], [ %.15, %B0.endif.if ]
  %.36 = phi i32 [ %.16, %B0.endif ], [ 1, %B0.endif.thread ], [ 0, %B0.endif.if ]
  %.18 = lshr i32 %.1510, 11
  %.19 = xor i32 %.18, %.1510
  %.20 = shl i32 %.19, 7
  %.21 = and i32 %.20, -1658038656
  %.22 = xor i32 %.21, %.19
  %.23 = shl i32 %.22, 15
  %.24 = and i32 %.23, -272236544
  %.25 = xor i32 %.24, %.22
  %3 = lshr i32 %.25, 23
  %4 = lshr i32 %.25, 5
  %.28 = xor i32 %3, %4
  %5 = zext nneg i32 %.36 to i64
  %sunkaddr4 = shl nuw nsw i64 %5, 2
  %sunkaddr5 = getelementptr inbounds nuw i8, ptr %.4, i64 %sunkaddr4
  %sunkaddr6 = getelementptr inbounds nuw i8, ptr %sunkaddr5, i64 4
  %.39 = load i32, ptr %sunkaddr6, align 4
  %.40 = add nuw nsw i32 %.36, 1
  store i32 %.40, ptr %.4, align 4
  %.42 = lshr i32 %.39, 11
  %.43 = xor i32 %.42, %.39
  %.44 = shl i32 %.43, 7
  %.45 = and i32 %.44, -1658038656
  %.46 = xor i32 %.45, %.43
  %.47 = shl i32 %.46, 15
  %.48 = and i32 %.47, -272236544
  %.49 = xor i32 %.48, %.46
  %6 = lshr i32 %.49, 24
  %7 = lshr i32 %.49, 6
  %.52 = xor i32 %6, %7
  %.53 = uitofp nneg i32 %.28 to double
  %.54 = uitofp nneg i32 %.52 to double
  %.55 = fmul double %.53, 0x4190000000000000
  %.56 = fadd double %.55, %.54
  %.57 = fmul double %.56, 0x3CA0000000000000
  store double %.57, ptr %retptr, align 8
  ret i32 0
}

define i32 @call_futures(ptr %given, ptr %answer) {
  %failed = alloca ptr, align 8
  %at0 = getelementptr i64, ptr %given, i64 0
  %in0 = load ptr, ptr %at0, align 8
  %at1 = getelementptr i64, ptr %given, i64 1
  %in1 = load ptr, ptr %at1, align 8
  %at2 = getelementptr i64, ptr %given, i64 2
  %in2 = load i64, ptr %at2, align 8
  %at3 = getelementptr i64, ptr %given, i64 3
  %in3 = load i64, ptr %at3, align 8
  %at4 = getelementptr i64, ptr %given, i64 4
  %in4 = load ptr, ptr %at4, align 8
  %at5 = getelementptr i64, ptr %given, i64 5
  %in5 = load i64, ptr %at5, align 8
  %at6 = getelementptr i64, ptr %given, i64 6
  %in6 = load i64, ptr %at6, align 8
  %at7 = getelementptr i64, ptr %given, i64 7
  %in7 = load i64, ptr %at7, align 8
  %at8 = getelementptr i64, ptr %given, i64 8
  %in8 = load i64, ptr %at8, align 8
  %at9 = getelementptr i64, ptr %given, i64 9
  %in9 = load ptr, ptr %at9, align 8
  %at10 = getelementptr i64, ptr %given, i64 10
  %in10 = load ptr, ptr %at10, align 8
  %at11 = getelementptr i64, ptr %given, i64 11
  %in11 = load i64, ptr %at11, align 8
  %at12 = getelementptr i64, ptr %given, i64 12
  %in12 = load i64, ptr %at12, align 8
  %at13 = getelementptr i64, ptr %given, i64 13
  %in13 = load ptr, ptr %at13, align 8
  %at14 = getelementptr i64, ptr %given, i64 14
  %in14 = load i64, ptr %at14, align 8
  %at15 = getelementptr i64, ptr %given, i64 15
  %in15 = load i64, ptr %at15, align 8
  %at16 = getelementptr i64, ptr %given, i64 16
  %in16 = load ptr, ptr %at16, align 8
  %at17 = getelementptr i64, ptr %given, i64 17
  %in17 = load ptr, ptr %at17, align 8
  %at18 = getelementptr i64, ptr %given, i64 18
  %in18 = load i64, ptr %at18, align 8
  %at19 = getelementptr i64, ptr %given, i64 19
  %in19 = load i64, ptr %at19, align 8
  %at20 = getelementptr i64, ptr %given, i64 20
  %in20 = load ptr, ptr %at20, align 8
  %at21 = getelementptr i64, ptr %given, i64 21
  %in21 = load i64, ptr %at21, align 8
  %at22 = getelementptr i64, ptr %given, i64 22
  %in22 = load i64, ptr %at22, align 8
  %at23 = getelementptr i64, ptr %given, i64 23
  %in23 = load ptr, ptr %at23, align 8
  %at24 = getelementptr i64, ptr %given, i64 24
  %in24 = load ptr, ptr %at24, align 8
  %at25 = getelementptr i64, ptr %given, i64 25
  %in25 = load i64, ptr %at25, align 8
  %at26 = getelementptr i64, ptr %given, i64 26
  %in26 = load i64, ptr %at26, align 8
  %at27 = getelementptr i64, ptr %given, i64 27
  %in27 = load ptr, ptr %at27, align 8
  %at28 = getelementptr i64, ptr %given, i64 28
  %in28 = load i64, ptr %at28, align 8
  %at29 = getelementptr i64, ptr %given, i64 29
  %in29 = load i64, ptr %at29, align 8
  %at30 = getelementptr i64, ptr %given, i64 30
  %in30 = load double, ptr %at30, align 8
  %at31 = getelementptr i64, ptr %given, i64 31
  %in31 = load double, ptr %at31, align 8
  %at32 = getelementptr i64, ptr %given, i64 32
  %in32 = load double, ptr %at32, align 8
  %at33 = getelementptr i64, ptr %given, i64 33
  %in33 = load double, ptr %at33, align 8
  %at34 = getelementptr i64, ptr %given, i64 34
  %in34 = load double, ptr %at34, align 8
  %at35 = getelementptr i64, ptr %given, i64 35
  %in35 = load double, ptr %at35, align 8
  %at36 = getelementptr i64, ptr %given, i64 36
  %in36 = load double, ptr %at36, align 8
  %at37 = getelementptr i64, ptr %given, i64 37
  %in37 = load i64, ptr %at37, align 8
  %at38 = getelementptr i64, ptr %given, i64 38
  %in38 = load ptr, ptr %at38, align 8
  %at39 = getelementptr i64, ptr %given, i64 39
  %in39 = load ptr, ptr %at39, align 8
  %at40 = getelementptr i64, ptr %given, i64 40
  %in40 = load i64, ptr %at40, align 8
  %at41 = getelementptr i64, ptr %given, i64 41
  %in41 = load i64, ptr %at41, align 8
  %at42 = getelementptr i64, ptr %given, i64 42
  %in42 = load ptr, ptr %at42, align 8
  %at43 = getelementptr i64, ptr %given, i64 43
  %in43 = load i64, ptr %at43, align 8
  %at44 = getelementptr i64, ptr %given, i64 44
  %in44 = load i64, ptr %at44, align 8
  %status = call i32 @n25(ptr %answer, ptr %failed, ptr %in0, ptr %in1, i64 %in2, i64 %in3, ptr %in4, i64 %in5, i64 %in6, i64 %in7, i64 %in8, ptr %in9, ptr %in10, i64 %in11, i64 %in12, ptr %in13, i64 %in14, i64 %in15, ptr %in16, ptr %in17, i64 %in18, i64 %in19, ptr %in20, i64 %in21, i64 %in22, ptr %in23, ptr %in24, i64 %in25, i64 %in26, ptr %in27, i64 %in28, i64 %in29, double %in30, double %in31, double %in32, double %in33, double %in34, double %in35, double %in36, i64 %in37, ptr %in38, ptr %in39, i64 %in40, i64 %in41, ptr %in42, i64 %in43, i64 %in44)
  ret i32 %status
}

attributes #0 = { nounwind }
attributes #1 = { nounwind }
attributes #2 = { nounwind }
attributes #3 = { nounwind }
attributes #4 = { nounwind }
attributes #5 = { nounwind }
