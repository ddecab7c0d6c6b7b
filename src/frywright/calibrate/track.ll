; Kernels of source sha256 77111cdf71aad53da64deb78d077fad62fb062b4add5ddcdd331e76f0d4de5e7
; Signatures {"_track": [[["<f8", 1], ["<f8", 1], ["<f8", 1], "q"], {"of": [["<i8", 1], ["<i8", 1], "q"]}]}
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
@n16 = internal constant [1 x i8] zeroinitializer
@n17 = internal constant [1 x i8] zeroinitializer
@n18 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n16, i32 1, ptr @n17, ptr null, i32 0 }
@n19 = internal constant [1 x i8] zeroinitializer
@n20 = internal constant [1 x i8] zeroinitializer
@n21 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n19, i32 1, ptr @n20, ptr null, i32 0 }
@n22 = internal constant [1 x i8] zeroinitializer
@n23 = internal constant [1 x i8] zeroinitializer
@n24 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n22, i32 1, ptr @n23, ptr null, i32 0 }
@n25 = internal constant [1 x i8] zeroinitializer
@n26 = internal constant [1 x i8] zeroinitializer
@n27 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n25, i32 1, ptr @n26, ptr null, i32 0 }
@n28 = internal constant [1 x i8] zeroinitializer
@n29 = internal constant [1 x i8] zeroinitializer
@n30 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n28, i32 1, ptr @n29, ptr null, i32 0 }
@n31 = internal constant [1 x i8] zeroinitializer
@n32 = internal constant [1 x i8] zeroinitializer
@n33 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n31, i32 1, ptr @n32, ptr null, i32 0 }
@n34 = internal constant [1 x i8] zeroinitializer
@n35 = internal constant [1 x i8] zeroinitializer
@n36 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n34, i32 1, ptr @n35, ptr null, i32 0 }
@n37 = internal constant [1 x i8] zeroinitializer
@n38 = internal constant [1 x i8] zeroinitializer
@n39 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n37, i32 1, ptr @n38, ptr null, i32 0 }
@n40 = internal constant [1 x i8] zeroinitializer
@n41 = internal constant [1 x i8] zeroinitializer
@n42 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n40, i32 1, ptr @n41, ptr null, i32 0 }
@n43 = internal constant [1 x i8] zeroinitializer
@n44 = internal constant [1 x i8] zeroinitializer
@n45 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n43, i32 1, ptr @n44, ptr null, i32 0 }
@n46 = internal constant [1 x i8] zeroinitializer
@n47 = internal constant [1 x i8] zeroinitializer
@n48 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n46, i32 1, ptr @n47, ptr null, i32 0 }
@n49 = internal constant [1 x i8] zeroinitializer
@n50 = internal constant [1 x i8] zeroinitializer
@n51 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n49, i32 1, ptr @n50, ptr null, i32 0 }
@n52 = internal constant [1 x i8] zeroinitializer
@n53 = internal constant [1 x i8] zeroinitializer
@n54 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n52, i32 1, ptr @n53, ptr null, i32 0 }
@n55 = internal constant [1 x i8] zeroinitializer
@n56 = internal constant [1 x i8] zeroinitializer
@n57 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n55, i32 1, ptr @n56, ptr null, i32 0 }
@n58 = internal constant [1 x i8] zeroinitializer
@n59 = internal constant [1 x i8] zeroinitializer
@n60 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n58, i32 1, ptr @n59, ptr null, i32 0 }
@n61 = internal constant [1 x i8] zeroinitializer
@n62 = internal constant [1 x i8] zeroinitializer
@n63 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n61, i32 1, ptr @n62, ptr null, i32 0 }
@n64 = internal constant [1 x i8] zeroinitializer
@n65 = internal constant [1 x i8] zeroinitializer
@n66 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n64, i32 1, ptr @n65, ptr null, i32 0 }
@n67 = internal constant [1 x i8] zeroinitializer
@n68 = internal constant [1 x i8] zeroinitializer
@n69 = internal constant { ptr, i32, ptr, ptr, i32 } { ptr @n67, i32 1, ptr @n68, ptr null, i32 0 }

define internal ptr @NRT_Allocate(i64 noundef %0) local_unnamed_addr #0 {
  %2 = tail call ptr @malloc(i64 noundef %0) #0
  ret ptr %2
}

declare ptr @malloc(i64 noundef) local_unnamed_addr #0

define internal void @NRT_Free(ptr noundef %0) local_unnamed_addr #0 {
  tail call void @free(ptr noundef %0) #0
  ret void
}

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

define internal ptr @NRT_MemInfo_new_varsize_dtor(i64 noundef %0, ptr noundef %1) local_unnamed_addr #0 {
  %3 = tail call ptr @malloc(i64 noundef 48) #0
  %4 = tail call ptr @malloc(i64 noundef %0) #0
  %5 = icmp ne ptr %3, null
  %6 = icmp ne ptr %4, null
  %7 = select i1 %5, i1 %6, i1 false
  br i1 %7, label %9, label %8

8:
  tail call void @free(ptr noundef %3) #0
  tail call void @free(ptr noundef %4) #0
  br label %15

9:
  store i64 1, ptr %3, align 8
  %10 = getelementptr inbounds nuw i8, ptr %3, i64 8
  store ptr @n70, ptr %10, align 8
  %11 = getelementptr inbounds nuw i8, ptr %3, i64 16
  store ptr %1, ptr %11, align 8
  %12 = getelementptr inbounds nuw i8, ptr %3, i64 24
  store ptr %4, ptr %12, align 8
  %13 = getelementptr inbounds nuw i8, ptr %3, i64 32
  store i64 %0, ptr %13, align 8
  %14 = getelementptr inbounds nuw i8, ptr %3, i64 40
  store ptr null, ptr %14, align 8
  br label %15

15:
  %16 = phi ptr [ %3, %9 ], [ null, %8 ]
  ret ptr %16
}

define internal void @n70(ptr noundef %0, i64 noundef %1, ptr noundef readonly %2) #0 {
  %4 = icmp eq ptr %2, null
  br i1 %4, label %6, label %5

5:
  tail call void %2(ptr noundef %0, i64 noundef %1, ptr noundef null) #0
  br label %6

6:
  tail call void @free(ptr noundef %0) #0
  ret void
}

define internal ptr @NRT_MemInfo_varsize_realloc(ptr noundef captures(none) %0, i64 noundef %1) local_unnamed_addr #0 {
  %3 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %4 = load ptr, ptr %3, align 8
  %5 = tail call ptr @realloc(ptr noundef %4, i64 noundef %1) #0
  %6 = icmp eq ptr %5, null
  br i1 %6, label %9, label %7

7:
  store ptr %5, ptr %3, align 8
  %8 = getelementptr inbounds nuw i8, ptr %0, i64 32
  store i64 %1, ptr %8, align 8
  br label %9

9:
  ret ptr %5
}

declare ptr @realloc(ptr noundef, i64 noundef) local_unnamed_addr #0

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

define internal range(i32 0, 2) i32 @n71(ptr noalias writeonly captures(none) %retptr, ptr noalias writeonly captures(none) %excinfo, ptr %arg.temp.0, ptr readnone captures(none) %arg.temp.1, i64 %arg.temp.2, i64 %arg.temp.3, ptr readonly captures(none) %arg.temp.4, i64 %arg.temp.5.0, i64 %arg.temp.6.0, ptr %arg.loss.0, ptr readnone captures(none) %arg.loss.1, i64 %arg.loss.2, i64 %arg.loss.3, ptr readonly captures(none) %arg.loss.4, i64 %arg.loss.5.0, i64 %arg.loss.6.0, ptr %arg.given.0, ptr readnone captures(none) %arg.given.1, i64 %arg.given.2, i64 %arg.given.3, ptr readonly captures(none) %arg.given.4, i64 %arg.given.5.0, i64 %arg.given.6.0, i64 %arg.kept) {
B0:
  %.5182 = alloca double, align 8
  store double 0.000000e+00, ptr %.5182, align 8
  %excinfo.21 = alloca ptr, align 8
  store ptr null, ptr %excinfo.21, align 8
  tail call void @NRT_incref(ptr %arg.temp.0)
  tail call void @NRT_incref(ptr %arg.loss.0)
  tail call void @NRT_incref(ptr %arg.given.0)
  %.36.i.i = icmp slt i64 %arg.kept, 0
  br i1 %.36.i.i, label %B0.if.if, label %B0.endif.endif.endif.endif.i.i

B0.endif.endif.endif.endif.i.i:
  %const694 = bitcast i64 -1152921504606846976 to i64
  %const693 = bitcast i64 -2305843009213693952 to i64
  %.51.i.i = shl i64 %arg.kept, 2
  %.52.i.i = icmp samesign ugt i64 %arg.kept, 2305843009213693951
  %0 = add i64 %.51.i.i, %const694
  %.57.i.i = icmp ult i64 %0, %const693
  %.58.i.i = or i1 %.52.i.i, %.57.i.i
  br i1 %.58.i.i, label %B0.if.if, label %B0.endif.endif.endif.endif.endif.i.i

B0.endif.endif.endif.endif.endif.i.i:
  %.56.i.i = shl i64 %arg.kept, 5
  %.7.i.i.i.i = tail call ptr @NRT_MemInfo_alloc_aligned(i64 %.56.i.i, i32 32)
  %.8.i.i.i.i = icmp eq ptr %.7.i.i.i.i, null
  br i1 %.8.i.i.i.i, label %B0.if.if, label %B0.endif.endif.i

B120.i:
  %lsr.iv690 = phi i64 [ %lsr.iv.next691, %B120.i ], [ %unroll_iter, %B120.preheader.new.i.new ]
  %.194176178.i = phi i64 [ 0, %B120.preheader.new.i.new ], [ %.201.7.i.1, %B120.i ]
  %sunkaddr = mul i64 %.194176178.i, 8
  %sunkaddr697 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr
  store double 0x7FF0000000000000, ptr %sunkaddr697, align 8
  %sunkaddr698 = mul i64 %.194176178.i, 8
  %sunkaddr699 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr698
  %sunkaddr700 = getelementptr i8, ptr %sunkaddr699, i64 8
  store double 0x7FF0000000000000, ptr %sunkaddr700, align 8
  %sunkaddr701 = mul i64 %.194176178.i, 8
  %sunkaddr702 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr701
  %sunkaddr703 = getelementptr i8, ptr %sunkaddr702, i64 16
  store double 0x7FF0000000000000, ptr %sunkaddr703, align 8
  %sunkaddr704 = mul i64 %.194176178.i, 8
  %sunkaddr705 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr704
  %sunkaddr706 = getelementptr i8, ptr %sunkaddr705, i64 24
  store double 0x7FF0000000000000, ptr %sunkaddr706, align 8
  %sunkaddr707 = mul i64 %.194176178.i, 8
  %sunkaddr708 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr707
  %sunkaddr709 = getelementptr i8, ptr %sunkaddr708, i64 32
  store double 0x7FF0000000000000, ptr %sunkaddr709, align 8
  %sunkaddr710 = mul i64 %.194176178.i, 8
  %sunkaddr711 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr710
  %sunkaddr712 = getelementptr i8, ptr %sunkaddr711, i64 40
  store double 0x7FF0000000000000, ptr %sunkaddr712, align 8
  %sunkaddr713 = mul i64 %.194176178.i, 8
  %sunkaddr714 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr713
  %sunkaddr715 = getelementptr i8, ptr %sunkaddr714, i64 48
  store double 0x7FF0000000000000, ptr %sunkaddr715, align 8
  %sunkaddr716 = mul i64 %.194176178.i, 8
  %sunkaddr717 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr716
  %sunkaddr718 = getelementptr i8, ptr %sunkaddr717, i64 56
  store double 0x7FF0000000000000, ptr %sunkaddr718, align 8
  %sunkaddr719 = mul i64 %.194176178.i, 8
  %sunkaddr720 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr719
  %sunkaddr721 = getelementptr i8, ptr %sunkaddr720, i64 64
  store double 0x7FF0000000000000, ptr %sunkaddr721, align 8
  %sunkaddr722 = mul i64 %.194176178.i, 8
  %sunkaddr723 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr722
  %sunkaddr724 = getelementptr i8, ptr %sunkaddr723, i64 72
  store double 0x7FF0000000000000, ptr %sunkaddr724, align 8
  %sunkaddr725 = mul i64 %.194176178.i, 8
  %sunkaddr726 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr725
  %sunkaddr727 = getelementptr i8, ptr %sunkaddr726, i64 80
  store double 0x7FF0000000000000, ptr %sunkaddr727, align 8
  %sunkaddr728 = mul i64 %.194176178.i, 8
  %sunkaddr729 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr728
  %sunkaddr730 = getelementptr i8, ptr %sunkaddr729, i64 88
  store double 0x7FF0000000000000, ptr %sunkaddr730, align 8
  %sunkaddr731 = mul i64 %.194176178.i, 8
  %sunkaddr732 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr731
  %sunkaddr733 = getelementptr i8, ptr %sunkaddr732, i64 96
  store double 0x7FF0000000000000, ptr %sunkaddr733, align 8
  %sunkaddr734 = mul i64 %.194176178.i, 8
  %sunkaddr735 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr734
  %sunkaddr736 = getelementptr i8, ptr %sunkaddr735, i64 104
  store double 0x7FF0000000000000, ptr %sunkaddr736, align 8
  %sunkaddr737 = mul i64 %.194176178.i, 8
  %sunkaddr738 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr737
  %sunkaddr739 = getelementptr i8, ptr %sunkaddr738, i64 112
  store double 0x7FF0000000000000, ptr %sunkaddr739, align 8
  %.201.7.i.1 = add i64 %.194176178.i, 16
  %sunkaddr740 = mul i64 %.201.7.i.1, 8
  %sunkaddr741 = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr740
  %sunkaddr742 = getelementptr i8, ptr %sunkaddr741, i64 -8
  store double 0x7FF0000000000000, ptr %sunkaddr742, align 8
  %lsr.iv.next691 = add i64 %lsr.iv690, -2
  %niter.ncmp.1 = icmp eq i64 %lsr.iv.next691, 0
  br i1 %niter.ncmp.1, label %B134.loopexit.unr-lcssa.i.unr-lcssa, label %B120.i

B134.loopexit.unr-lcssa.i.unr-lcssa:
  %1 = and i64 %7, 1
  %lcmp.mod.not = icmp eq i64 %1, 0
  br i1 %lcmp.mod.not, label %B134.loopexit.unr-lcssa.i, label %B120.i.epil.preheader

B120.i.epil.preheader:
  %.194176178.i.epil.init = phi i64 [ 0, %B120.preheader.new.i ], [ %.201.7.i.1, %B134.loopexit.unr-lcssa.i.unr-lcssa ]
  %sunkaddr.i.epil = shl i64 %.194176178.i.epil.init, 3
  %sunkaddr31.i.epil = getelementptr i8, ptr %.6.i.i.i, i64 %sunkaddr.i.epil
  store double 0x7FF0000000000000, ptr %sunkaddr31.i.epil, align 8
  %sunkaddr34.i.epil = getelementptr i8, ptr %sunkaddr31.i.epil, i64 8
  store double 0x7FF0000000000000, ptr %sunkaddr34.i.epil, align 8
  %sunkaddr37.i.epil = getelementptr i8, ptr %sunkaddr31.i.epil, i64 16
  store double 0x7FF0000000000000, ptr %sunkaddr37.i.epil, align 8
  %sunkaddr40.i.epil = getelementptr i8, ptr %sunkaddr31.i.epil, i64 24
  store double 0x7FF0000000000000, ptr %sunkaddr40.i.epil, align 8
  %sunkaddr43.i.epil = getelementptr i8, ptr %sunkaddr31.i.epil, i64 32
  store double 0x7FF0000000000000, ptr %sunkaddr43.i.epil, align 8
  %sunkaddr46.i.epil = getelementptr i8, ptr %sunkaddr31.i.epil, i64 40
  store double 0x7FF0000000000000, ptr %sunkaddr46.i.epil, align 8
  %sunkaddr49.i.epil = getelementptr i8, ptr %sunkaddr31.i.epil, i64 48
  store double 0x7FF0000000000000, ptr %sunkaddr49.i.epil, align 8
  %sunkaddr52.i.epil = getelementptr i8, ptr %sunkaddr31.i.epil, i64 56
  store double 0x7FF0000000000000, ptr %sunkaddr52.i.epil, align 8
  br label %B134.loopexit.unr-lcssa.i

B134.loopexit.unr-lcssa.i:
  %lcmp.mod.not.i = icmp eq i64 %xtraiter.i, 0
  br i1 %lcmp.mod.not.i, label %B0.endif.endif.endif.endif.endif.endif.i.i, label %B120.epil.preheader.i

B120.epil.preheader.i:
  %.194176178.epil.init.i = phi i64 [ 0, %B120.preheader.i ], [ %unroll_iter.i, %B134.loopexit.unr-lcssa.i ]
  %2 = shl nuw nsw i64 %.194176178.epil.init.i, 3
  %scevgep.i = getelementptr i8, ptr %.6.i.i.i, i64 %2
  br label %B120.epil.i

B120.epil.i:
  %epil.iter.i = phi i64 [ %epil.iter.next.i, %B120.epil.i ], [ 0, %B120.epil.preheader.i ]
  %3 = shl i64 %epil.iter.i, 3
  %scevgep657 = getelementptr i8, ptr %scevgep.i, i64 %3
  store double 0x7FF0000000000000, ptr %scevgep657, align 8
  %epil.iter.next.i = add i64 %epil.iter.i, 1
  %epil.iter.cmp.not.i = icmp eq i64 %xtraiter.i, %epil.iter.next.i
  br i1 %epil.iter.cmp.not.i, label %B0.endif.endif.endif.endif.endif.endif.i.i, label %B120.epil.i

B0.endif.endif.i:
  %const = bitcast i64 9223372036854775806 to i64
  %.5.i.i.i = getelementptr i8, ptr %.7.i.i.i.i, i64 24
  %.6.i.i.i = load ptr, ptr %.5.i.i.i, align 8
  %.188177.not.i = icmp slt i64 %.51.i.i, 1
  br i1 %.188177.not.i, label %B0.endif.endif.endif.endif.endif.endif.i.i, label %B120.preheader.i

B120.preheader.i:
  %xtraiter.i = and i64 %.51.i.i, 4
  %4 = icmp samesign ult i64 %.51.i.i, 8
  br i1 %4, label %B120.epil.preheader.i, label %B120.preheader.new.i

B120.preheader.new.i:
  %const_mat = add i64 %const, -6
  %unroll_iter.i = and i64 %.51.i.i, %const_mat
  %5 = add nsw i64 %.51.i.i, -8
  %6 = lshr i64 %5, 3
  %7 = add nuw nsw i64 %6, 1
  %8 = icmp eq i64 %6, 0
  br i1 %8, label %B120.i.epil.preheader, label %B120.preheader.new.i.new

B120.preheader.new.i.new:
  %unroll_iter = and i64 %7, 4611686018427387902
  br label %B120.i

B396:
  %.435 = load double, ptr %arg.temp.4, align 8
  %.445.le = fsub double %.435, %.435
  %.446.le = fcmp ord double %.445.le, 0.000000e+00
  br i1 %.446.le, label %B724, label %B448.preheader

B448.preheader:
  %9 = add i64 %arg.temp.5.0, -1
  br label %B448

B448:
  %first.2.0 = phi i64 [ %.465, %B470 ], [ 0, %B448.preheader ]
  %exitcond.not = icmp eq i64 %9, %first.2.0
  br i1 %exitcond.not, label %B724, label %B470

B470:
  %.465 = add nuw nsw i64 %first.2.0, 1
  %sunkaddr743 = mul i64 %first.2.0, 8
  %sunkaddr744 = getelementptr i8, ptr %arg.temp.4, i64 %sunkaddr743
  %sunkaddr745 = getelementptr i8, ptr %sunkaddr744, i64 8
  %.514 = load double, ptr %sunkaddr745, align 8
  %.524.le = fsub double %.514, %.514
  %.525.le = fcmp ord double %.524.le, 0.000000e+00
  br i1 %.525.le, label %B724, label %B448

B724:
  %first.3.1 = phi i64 [ 0, %B396 ], [ 0, %B0.endif.endif.endif.endif.endif.endif ], [ %arg.temp.5.0, %B448 ], [ %.465, %B470 ]
  %.740 = add nsw i64 %arg.temp.5.0, -1
  %.828 = getelementptr i8, ptr %arg.given.4, i64 8
  %.1017 = getelementptr i8, ptr %arg.given.4, i64 120
  store double 0.000000e+00, ptr %.6.i.i.i, align 8
  %.13.i192 = tail call i64 @llvm.smin.i64(i64 %.740, i64 %first.3.1)
  %10 = getelementptr double, ptr %arg.temp.4, i64 %.13.i192
  %.799 = load double, ptr %10, align 8
  %.829 = load double, ptr %.828, align 8
  store double %.799, ptr %.6.i.i.i99, align 8
  %.980 = getelementptr i8, ptr %.6.i.i.i99, i64 16
  store double %.829, ptr %.980, align 8
  %.1018 = load double, ptr %.1017, align 8
  %.147.i = fmul double %.1018, %.1018
  %.896 = mul nuw i64 %arg.kept, 7
  %.1121 = getelementptr i8, ptr %.6.i.i.i99, i64 32
  store double %.147.i, ptr %.1121, align 8
  %.1199 = getelementptr i8, ptr %.6.i.i.i99, i64 40
  store double 1.000000e+03, ptr %.1199, align 8
  %.1275 = getelementptr i8, ptr %.6.i.i.i99, i64 48
  store double 1.000000e+03, ptr %.1275, align 8
  store i64 -1, ptr %.6.i.i153, align 8
  store i64 0, ptr %.6.i.i168, align 8
  store i64 10, ptr %.6.i.i181, align 8
  store i64 0, ptr %.6.i.i.i118, align 8
  %.735.1 = getelementptr double, ptr %.6.i.i.i, i64 %arg.kept
  store double 0.000000e+00, ptr %.735.1, align 8
  %.799.1 = load double, ptr %10, align 8
  %.829.1 = load double, ptr %.828, align 8
  %.904.1 = getelementptr double, ptr %.6.i.i.i99, i64 %.896
  store double %.799.1, ptr %.904.1, align 8
  %.980.1 = getelementptr i8, ptr %.904.1, i64 16
  store double %.829.1, ptr %.980.1, align 8
  %.1018.1 = load double, ptr %.1017, align 8
  %.147.i46 = fmul double %.1018.1, %.1018.1
  %.1121.1 = getelementptr i8, ptr %.904.1, i64 32
  store double %.147.i46, ptr %.1121.1, align 8
  %.1199.1 = getelementptr i8, ptr %.904.1, i64 40
  store double 1.000000e+03, ptr %.1199.1, align 8
  %.1275.1 = getelementptr i8, ptr %.904.1, i64 48
  store double 1.000000e+03, ptr %.1275.1, align 8
  %11 = getelementptr i8, ptr %.6.i.i153, i64 8
  store i64 -1, ptr %11, align 8
  %12 = getelementptr i8, ptr %.6.i.i168, i64 8
  store i64 0, ptr %12, align 8
  %13 = getelementptr i8, ptr %.6.i.i181, i64 8
  store i64 11, ptr %13, align 8
  %.1436.1 = getelementptr i64, ptr %.6.i.i.i118, i64 %arg.kept
  store i64 1, ptr %.1436.1, align 8
  %.735.2.idx = shl i64 %arg.kept, 4
  %.735.2 = getelementptr i8, ptr %.6.i.i.i, i64 %.735.2.idx
  store double 4.000000e+00, ptr %.735.2, align 8
  %.799.2 = load double, ptr %10, align 8
  %.829.2 = load double, ptr %.828, align 8
  %.904.2.idx = mul i64 %arg.kept, 112
  %.904.2 = getelementptr i8, ptr %.6.i.i.i99, i64 %.904.2.idx
  store double %.799.2, ptr %.904.2, align 8
  %.980.2 = getelementptr i8, ptr %.904.2, i64 16
  store double %.829.2, ptr %.980.2, align 8
  %.1121.2 = getelementptr i8, ptr %.904.2, i64 32
  store double 0x3F647AE147AE147C, ptr %.1121.2, align 8
  %.1199.2 = getelementptr i8, ptr %.904.2, i64 40
  store double 1.000000e+03, ptr %.1199.2, align 8
  %.1275.2 = getelementptr i8, ptr %.904.2, i64 48
  store double 1.000000e+03, ptr %.1275.2, align 8
  %14 = getelementptr i8, ptr %.6.i.i153, i64 16
  store i64 -1, ptr %14, align 8
  %15 = getelementptr i8, ptr %.6.i.i168, i64 16
  store i64 0, ptr %15, align 8
  %16 = getelementptr i8, ptr %.6.i.i181, i64 16
  store i64 12, ptr %16, align 8
  %.1436.2 = getelementptr i8, ptr %.6.i.i.i118, i64 %.735.2.idx
  store i64 2, ptr %.1436.2, align 8
  %.735.3.idx = mul i64 %arg.kept, 24
  %.735.3 = getelementptr i8, ptr %.6.i.i.i, i64 %.735.3.idx
  store double 4.000000e+00, ptr %.735.3, align 8
  %.799.3 = load double, ptr %10, align 8
  %.829.3 = load double, ptr %.828, align 8
  %.904.3.idx = mul i64 %arg.kept, 168
  %.904.3 = getelementptr i8, ptr %.6.i.i.i99, i64 %.904.3.idx
  store double %.799.3, ptr %.904.3, align 8
  %.980.3 = getelementptr i8, ptr %.904.3, i64 16
  store double %.829.3, ptr %.980.3, align 8
  %.1121.3 = getelementptr i8, ptr %.904.3, i64 32
  store double 0x3F647AE147AE147C, ptr %.1121.3, align 8
  %.1199.3 = getelementptr i8, ptr %.904.3, i64 40
  store double 1.000000e+03, ptr %.1199.3, align 8
  %.1275.3 = getelementptr i8, ptr %.904.3, i64 48
  store double 1.000000e+03, ptr %.1275.3, align 8
  %17 = getelementptr i8, ptr %.6.i.i153, i64 24
  store i64 -1, ptr %17, align 8
  %18 = getelementptr i8, ptr %.6.i.i168, i64 24
  store i64 0, ptr %18, align 8
  %19 = getelementptr i8, ptr %.6.i.i181, i64 24
  store i64 13, ptr %19, align 8
  %.1436.3 = getelementptr i8, ptr %.6.i.i.i118, i64 %.735.3.idx
  store i64 3, ptr %.1436.3, align 8
  %.7.i.i.i = tail call ptr @NRT_MemInfo_alloc_aligned(i64 56, i32 32)
  %.8.i.i.i = icmp eq ptr %.7.i.i.i, null
  br i1 %.8.i.i.i, label %B898.if.if, label %B898.endif

B1120.loopexit:
  %.1729 = icmp sgt i64 %.172829193023, 1
  br i1 %.1729, label %B1158.endif.lr.ph, label %B2002.endif.endif.endif

B1192:
  %lsr.iv641 = phi ptr [ %lsr.iv639, %B1192.lr.ph ], [ %scevgep642, %B1376 ]
  %.197628242826 = phi i64 [ 0, %B1192.lr.ph ], [ %.1983, %B1376 ]
  %.1983 = add nuw nsw i64 %.197628242826, 1
  %20 = shl i64 %.197628242826, 3
  %scevgep651 = getelementptr i8, ptr %lsr.iv649, i64 %20
  %.2064 = load double, ptr %scevgep651, align 8
  %.2067 = fcmp ueq double %.2064, 0x7FF0000000000000
  br i1 %.2067, label %B1376, label %B1242.else.if

B1376:
  %scevgep642 = getelementptr i8, ptr %lsr.iv641, i64 56
  %exitcond3205.not = icmp eq i64 %arg.kept, %.1983
  br i1 %exitcond3205.not, label %B1378, label %B1192

B1378:
  %.2463 = getelementptr double, ptr %.6.i.i.i, i64 %.pre
  %.110.i.i = load double, ptr %.2463, align 8
  %.158.le.i.i = fcmp uno double %.110.i.i, 0.000000e+00
  br i1 %.158.le.i.i, label %B1378.endif.endif, label %B148.i.i.preheader

B148.i.i.preheader:
  br label %B148.i.i

B148.i.i:
  %idx.2.0205.i.i = phi i64 [ %.378.i.i, %B198.i.i ], [ 0, %B148.i.i.preheader ]
  %min_idx.3.0204.i.i = phi i64 [ %min_idx.4.1.i.i, %B198.i.i ], [ 0, %B148.i.i.preheader ]
  %min_value.3.0203.i.i = phi double [ %min_value.4.1.i.i, %B198.i.i ], [ %.110.i.i, %B148.i.i.preheader ]
  %21 = shl i64 %idx.2.0205.i.i, 3
  %scevgep652 = getelementptr i8, ptr %lsr.iv649, i64 %21
  %.270.i.i = load double, ptr %scevgep652, align 8
  %.309.le.i.i = fcmp uno double %.270.i.i, 0.000000e+00
  br i1 %.309.le.i.i, label %B1378.endif.endif, label %B198.i.i

B198.i.i:
  %.378.i.i = add nuw i64 %idx.2.0205.i.i, 1
  %.352.i.i = fcmp olt double %.270.i.i, %min_value.3.0203.i.i
  %min_value.4.1.i.i = select i1 %.352.i.i, double %.270.i.i, double %min_value.3.0203.i.i
  %min_idx.4.1.i.i = select i1 %.352.i.i, i64 %idx.2.0205.i.i, i64 %min_idx.3.0204.i.i
  %exitcond.not.i.i = icmp eq i64 %arg.kept, %.378.i.i
  br i1 %exitcond.not.i.i, label %B1378.endif.endif, label %B148.i.i

B1542.loopexit:
  %count.2.2.lcssa = phi i64 [ %count.3.12913, %B1544 ], [ %count.5.3, %B1994 ]
  %exitcond3213.not = icmp eq i64 %.3141, 4
  br i1 %exitcond3213.not, label %B1120.loopexit, label %B1544

B1544:
  %count.3.12913 = phi i64 [ %count.2.2.lcssa, %B1542.loopexit ], [ %count.4.03024, %B1544.preheader ]
  %.313428932911 = phi i64 [ %.3141, %B1542.loopexit ], [ 0, %B1544.preheader ]
  %.3141 = add nuw nsw i64 %.313428932911, 1
  %22 = getelementptr double, ptr %.6.i.i200, i64 %.313428932911
  %.3199 = load double, ptr %22, align 8
  %.3200 = fcmp ueq double %.3199, 0x7FF0000000000000
  br i1 %.3200, label %B1542.loopexit, label %B1626.else.if.lr.ph

B1626.else.if.lr.ph:
  %23 = ptrtoint ptr %.6.i.i to i64
  %.3358.1 = and i64 %.313428932911, 1
  %.3435 = xor i64 %.313428932911, 1
  %.3437 = or disjoint i64 %.3358.1, 2
  %.3511.idx = mul nuw nsw i64 %.313428932911, 56
  %.3511 = getelementptr i8, ptr %.6.i.i216, i64 %.3511.idx
  %.3868 = ptrtoint ptr %.3511 to i64
  %.3870 = add i64 %.3868, 56
  %.3396.1.mask = and i64 %.313428932911, %const
  %.3900 = icmp ugt i64 %.4532, %.3868
  %.3901 = icmp ugt i64 %.3870, %23
  %.3902 = and i1 %.3900, %.3901
  br label %B1626.else.if

B1994:
  %count.5.3 = phi i64 [ %.4797, %.4476.endif ], [ %count.2.22882, %.3797.endif.endif.endif ]
  %exitcond.not598 = icmp eq i64 %.3315, 4
  br i1 %exitcond.not598, label %B1542.loopexit, label %B1626.else.if

B198.i.i67:
  %sunkaddr746 = getelementptr i8, ptr %.6.i262, i64 8
  %.270.i.i65.1 = load double, ptr %sunkaddr746, align 8
  %.309.le.i.i66.1 = fcmp uno double %.270.i.i65.1, 0.000000e+00
  br i1 %.309.le.i.i66.1, label %B2312.endif.loopexit, label %B198.i.i67.1

B198.i.i67.1:
  %sunkaddr747 = getelementptr i8, ptr %.6.i262, i64 16
  %.270.i.i65.2 = load double, ptr %sunkaddr747, align 8
  %.309.le.i.i66.2 = fcmp uno double %.270.i.i65.2, 0.000000e+00
  br i1 %.309.le.i.i66.2, label %B2312.endif.loopexit, label %B198.i.i67.2

B198.i.i67.2:
  %sunkaddr748 = getelementptr i8, ptr %.6.i262, i64 24
  %.270.i.i65.3 = load double, ptr %sunkaddr748, align 8
  %.309.le.i.i66.3 = fcmp uno double %.270.i.i65.3, 0.000000e+00
  br i1 %.309.le.i.i66.3, label %B2312.endif.loopexit, label %B198.i.i67.3

B198.i.i67.3:
  %.352.i.i69.1 = fcmp olt double %.270.i.i65.1, %.110.i.i58
  %min_value.4.1.i.i70.1 = select i1 %.352.i.i69.1, double %.270.i.i65.1, double %.110.i.i58
  %.352.i.i69.2 = fcmp olt double %.270.i.i65.2, %min_value.4.1.i.i70.1
  %min_idx.4.1.i.i71.1 = zext i1 %.352.i.i69.1 to i64
  %min_idx.4.1.i.i71.2 = select i1 %.352.i.i69.2, i64 2, i64 %min_idx.4.1.i.i71.1
  %min_value.4.1.i.i70.2 = select i1 %.352.i.i69.2, double %.270.i.i65.2, double %min_value.4.1.i.i70.1
  %.352.i.i69.3 = fcmp olt double %.270.i.i65.3, %min_value.4.1.i.i70.2
  %min_idx.4.1.i.i71.3 = select i1 %.352.i.i69.3, i64 3, i64 %min_idx.4.1.i.i71.2
  br label %B2312.endif.loopexit

B2394:
  %r.2.0 = phi i64 [ %.5720, %B2394.endif.endif ], [ %.5449, %B2394.preheader ]
  %sunkaddr749 = getelementptr i8, ptr %.5484, i64 24
  %.6.i = load ptr, ptr %sunkaddr749, align 8
  %.5570 = load i64, ptr %.6.i, align 8
  %.5571 = add i64 %.5570, 1
  %.5576 = getelementptr inbounds nuw i8, ptr %.6.i, i64 8
  %.5577 = load i64, ptr %.5576, align 8
  %.5579 = ashr i64 %.5577, 2
  %.5580 = icmp sgt i64 %.5579, %.5571
  br i1 %.5580, label %B2394.if, label %B2394.endif

B2456:
  %r.3.1 = phi i64 [ %.5449, %B2312.endif.endif.endif.endif.endif ], [ %.5720, %B2394.endif.endif ]
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i149)
  %sunkaddr750 = getelementptr i8, ptr %.5484, i64 24
  %.6.i78 = load ptr, ptr %sunkaddr750, align 8
  %.5744 = load i64, ptr %.6.i78, align 8
  %.5745.not = icmp eq i64 %.5744, 0
  br i1 %.5745.not, label %B2469, label %B2467.endif.if.endif.endif

B2469:
  tail call void @NRT_decref(ptr nonnull %.5484)
  %.7.i.i.i81 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 0, i32 32)
  %.8.i.i.i82 = icmp eq ptr %.7.i.i.i81, null
  br i1 %.8.i.i.i82, label %B2469.if.if, label %B2525.thread

B2525:
  tail call void @NRT_decref(ptr nonnull %.5895)
  tail call void @NRT_decref(ptr nonnull %.5895)
  br label %B2525.endif

B0.endif.endif.endif.endif.endif.endif.i.i:
  %.72.i.i599 = mul i64 %arg.kept, 28
  %.77.i.i = mul i64 %arg.kept, 56
  %24 = add nsw i64 %.72.i.i599, %const694
  %.80.i.i = icmp ult i64 %24, %const693
  br i1 %.80.i.i, label %B0.endif.if.if, label %B0.endif.endif.endif.endif.endif.endif.endif.i.i

B0.endif.endif.endif.endif.endif.endif.endif.i.i:
  %.79.i.i = mul i64 %arg.kept, 224
  %.7.i.i.i.i95 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 %.79.i.i, i32 32)
  %.8.i.i.i.i96 = icmp eq ptr %.7.i.i.i.i95, null
  br i1 %.8.i.i.i.i96, label %B0.endif.if.if, label %B0.endif.endif.endif.endif.endif.i.i112

common.ret:
  %common.ret.op = phi i32 [ 1, %B0.if.if ], [ 1, %B0.endif.if.if ], [ 1, %B0.endif.endif.if.if ], [ 1, %B0.endif.endif.endif.if.if ], [ 1, %B0.endif.endif.endif.endif.if.if ], [ 1, %B0.endif.endif.endif.endif.endif.if.if ], [ 1, %B2525.endif.if.if ], [ 1, %B2394.if.endif.if ], [ 1, %B898.if.if ], [ 1, %B898.endif.if.if ], [ 1, %B898.endif.endif.if.if ], [ 1, %B898.endif.endif.endif.if.if ], [ 1, %.6182.endif.if.if ], [ 1, %B1378.if.if.critedge ], [ 1, %B2469.if.if ], [ 1, %B1378.endif.endif.if.if ], [ 1, %switch.else ], [ 1, %B2394.endif.if.endif.if ], [ 1, %switch.end.endif.endif.endif.if.if ], [ 0, %.6356 ], [ 1, %B2394.endif.if.if ], [ 1, %B2467.endif.endif.endif.endif.if ], [ 1, %B1874.endif.if.if ], [ 1, %B2002.endif.endif.endif.if.if ], [ 1, %B2282.if.if ], [ 1, %B2467.endif.endif.endif.endif.endif.endif.if.if ], [ 1, %B2312.endif.if.if ], [ 1, %B2312.endif.endif.endif.endif.if ], [ 1, %B2394.if.if ]
  ret i32 %common.ret.op

B0.if.if:
  %excinfo.1.0 = phi ptr [ @n21, %B0.endif.endif.endif.endif.endif.i.i ], [ @n18, %B0.endif.endif.endif.endif.i.i ], [ @n15, %B0 ]
  store ptr %excinfo.1.0, ptr %excinfo, align 8
  br label %common.ret

B0.endif.endif.endif.endif.endif.i.i112:
  %.5.i.i.i98 = getelementptr i8, ptr %.7.i.i.i.i95, i64 24
  %.6.i.i.i99 = load ptr, ptr %.5.i.i.i98, align 8
  %.38.i.i = mul i64 %arg.kept, 224
  tail call void @llvm.memset.p0.i64(ptr align 1 %.6.i.i.i99, i8 0, i64 %.38.i.i, i1 false)
  %.7.i.i.i.i114 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 %.56.i.i, i32 32)
  %.8.i.i.i.i115 = icmp eq ptr %.7.i.i.i.i114, null
  br i1 %.8.i.i.i.i115, label %B0.endif.endif.if.if, label %B0.endif.endif.i116

B120.epil.preheader.i136:
  %.195177179.epil.init.i = phi i64 [ 0, %B120.preheader.i119 ], [ %unroll_iter.i122, %B120.preheader.new.i121 ]
  %25 = shl nuw nsw i64 %.195177179.epil.init.i, 3
  %scevgep.i137 = getelementptr i8, ptr %.6.i.i.i118, i64 %25
  %26 = shl i64 %arg.kept, 5
  %27 = and i64 %26, 32
  tail call void @llvm.memset.p0.i64(ptr align 8 %scevgep.i137, i8 -1, i64 %27, i1 false)
  br label %B0.endif.endif.endif

B0.endif.endif.i116:
  %.5.i.i.i117 = getelementptr i8, ptr %.7.i.i.i.i114, i64 24
  %.6.i.i.i118 = load ptr, ptr %.5.i.i.i117, align 8
  %.189178.not.i = icmp eq i64 %arg.kept, 0
  br i1 %.189178.not.i, label %B0.endif.endif.endif, label %B120.preheader.i119

B120.preheader.i119:
  %28 = icmp eq i64 %arg.kept, 1
  br i1 %28, label %B120.epil.preheader.i136, label %B120.preheader.new.i121

B120.preheader.new.i121:
  %const_mat692 = add i64 %const, -6
  %unroll_iter.i122 = and i64 %.51.i.i, %const_mat692
  %29 = shl i64 %arg.kept, 5
  %30 = and i64 %29, -64
  tail call void @llvm.memset.p0.i64(ptr align 8 %.6.i.i.i118, i8 -1, i64 %30, i1 false)
  %31 = and i64 %arg.kept, 1
  %lcmp.mod.not.i135 = icmp eq i64 %31, 0
  br i1 %lcmp.mod.not.i135, label %B0.endif.endif.endif, label %B120.epil.preheader.i136

B0.endif.if.if:
  %excinfo.2.0.ph = phi ptr [ @n24, %B0.endif.endif.endif.endif.endif.endif.i.i ], [ @n27, %B0.endif.endif.endif.endif.endif.endif.endif.i.i ]
  store ptr %excinfo.2.0.ph, ptr %excinfo, align 8
  br label %common.ret

B0.endif.endif.endif:
  %.243 = shl nsw i64 %arg.temp.5.0, 4
  %.244 = or disjoint i64 %.243, 4
  %.15.i = icmp slt i64 %arg.temp.5.0, 0
  br i1 %.15.i, label %B0.endif.endif.endif.if.if, label %B0.endif.endif.i148

B0.endif.endif.i148:
  %.31.i = icmp samesign ugt i64 %.243, 1152921504606846975
  br i1 %.31.i, label %B0.endif.endif.endif.if.if, label %B0.endif.endif.endif.i

B0.endif.endif.endif.i:
  %.30.i = shl nuw nsw i64 %.244, 3
  %.7.i.i.i149 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 %.30.i, i32 32)
  %.8.i.i.i150 = icmp eq ptr %.7.i.i.i149, null
  br i1 %.8.i.i.i150, label %B0.endif.endif.endif.if.if, label %B0.endif.i163

B0.endif.endif.if.if:
  store ptr @n30, ptr %excinfo, align 8
  br label %common.ret

B0.endif.i163:
  %.5.i.i152 = getelementptr i8, ptr %.7.i.i.i149, i64 24
  %.6.i.i153 = load ptr, ptr %.5.i.i152, align 8
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i149)
  %.7.i.i.i164 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 %.30.i, i32 32)
  %.8.i.i.i165 = icmp eq ptr %.7.i.i.i164, null
  br i1 %.8.i.i.i165, label %B0.endif.endif.endif.endif.if.if, label %B0.endif.i175

B0.endif.endif.endif.if.if:
  %excinfo.4.0.ph = phi ptr [ @n39, %B0.endif.endif.endif.i ], [ @n36, %B0.endif.endif.i148 ], [ @n33, %B0.endif.endif.endif ]
  store ptr %excinfo.4.0.ph, ptr %excinfo, align 8
  br label %common.ret

B0.endif.i175:
  %.5.i.i167 = getelementptr i8, ptr %.7.i.i.i164, i64 24
  %.6.i.i168 = load ptr, ptr %.5.i.i167, align 8
  %.7.i.i.i177 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 %.30.i, i32 32)
  %.8.i.i.i178 = icmp eq ptr %.7.i.i.i177, null
  br i1 %.8.i.i.i178, label %B0.endif.endif.endif.endif.endif.if.if, label %B0.endif.endif.endif.endif.endif.endif

B0.endif.endif.endif.endif.if.if:
  store ptr @n42, ptr %excinfo, align 8
  br label %common.ret

B0.endif.endif.endif.endif.endif.endif:
  %.5.i.i180 = getelementptr i8, ptr %.7.i.i.i177, i64 24
  %.6.i.i181 = load ptr, ptr %.5.i.i180, align 8
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i149)
  %.396.not = icmp eq i64 %arg.temp.5.0, 0
  br i1 %.396.not, label %B724, label %B396

B0.endif.endif.endif.endif.endif.if.if:
  store ptr @n42, ptr %excinfo, align 8
  br label %common.ret

B898.endif:
  %.5.i.i = getelementptr i8, ptr %.7.i.i.i, i64 24
  %.6.i.i = load ptr, ptr %.5.i.i, align 8
  %.7.i.i.i196 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 32, i32 32)
  %.8.i.i.i197 = icmp eq ptr %.7.i.i.i196, null
  br i1 %.8.i.i.i197, label %B898.endif.if.if, label %B898.endif.endif

B898.if.if:
  store ptr @n45, ptr %excinfo, align 8
  br label %common.ret

B898.endif.endif:
  %.5.i.i199 = getelementptr i8, ptr %.7.i.i.i196, i64 24
  %.6.i.i200 = load ptr, ptr %.5.i.i199, align 8
  %.7.i.i.i213 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 224, i32 32)
  %.8.i.i.i214 = icmp eq ptr %.7.i.i.i213, null
  br i1 %.8.i.i.i214, label %B898.endif.endif.if.if, label %B898.endif.endif.endif

B898.endif.if.if:
  store ptr @n45, ptr %excinfo, align 8
  br label %common.ret

B898.endif.endif.endif:
  %.5.i.i215 = getelementptr i8, ptr %.7.i.i.i213, i64 24
  %.6.i.i216 = load ptr, ptr %.5.i.i215, align 8
  %.7.i.i.i225 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 32, i32 32)
  %.8.i.i.i226 = icmp eq ptr %.7.i.i.i225, null
  br i1 %.8.i.i.i226, label %B898.endif.endif.endif.if.if, label %B898.endif.endif.endif.endif.endif

B898.endif.endif.if.if:
  store ptr @n48, ptr %excinfo, align 8
  br label %common.ret

B898.endif.endif.endif.if.if:
  store ptr @n39, ptr %excinfo, align 8
  br label %common.ret

B898.endif.endif.endif.endif.endif:
  %.5.i.i228 = getelementptr i8, ptr %.7.i.i.i225, i64 24
  %.6.i.i229 = load ptr, ptr %.5.i.i228, align 8
  %.1644 = add nsw i64 %first.3.1, 1
  %.1686 = sub i64 %arg.temp.5.0, %.1644
  %.17293015.not = icmp slt i64 %.1686, 1
  br i1 %.17293015.not, label %B2002.endif.endif.endif, label %B1124.endif.endif.lr.ph

B1124.endif.endif.lr.ph:
  %.2953 = ptrtoint ptr %.6.i.i216 to i64
  %.3897 = ptrtoint ptr %.6.i.i to i64
  %.4532 = add i64 %.3897, 56
  %.4549 = ptrtoint ptr %.6.i.i.i99 to i64
  %.2950 = add i64 %.2953, 8
  %.4546 = add i64 %.4549, 8
  %scevgep638 = getelementptr i8, ptr %.6.i.i.i99, i64 48
  %32 = mul i64 %arg.kept, 56
  %33 = shl i64 %arg.kept, 3
  br label %B1158.endif.lr.ph

B1158.endif.lr.ph:
  %count.4.03024 = phi i64 [ 4, %B1124.endif.endif.lr.ph ], [ %count.2.2.lcssa, %B1120.loopexit ]
  %.172829193023 = phi i64 [ %.1686, %B1124.endif.endif.lr.ph ], [ %.1738, %B1120.loopexit ]
  %.173529303022 = phi i64 [ %.1644, %B1124.endif.endif.lr.ph ], [ %.1742, %B1120.loopexit ]
  %.1738 = add nsw i64 %.172829193023, -1
  %.1742 = add i64 %.173529303022, 1
  %.2282 = icmp slt i64 %.173529303022, 0
  %.2283 = select i1 %.2282, i64 %arg.temp.5.0, i64 0
  %34 = getelementptr double, ptr %arg.temp.4, i64 %.173529303022
  %.2314 = select i1 %.2282, i64 %arg.loss.5.0, i64 0
  %35 = getelementptr double, ptr %arg.loss.4, i64 %.173529303022
  br label %B1158.endif

B1158.endif:
  %lsr.iv649 = phi ptr [ %.6.i.i.i, %B1158.endif.lr.ph ], [ %scevgep650, %.2880.endif ]
  %lsr.iv639 = phi ptr [ %scevgep638, %B1158.endif.lr.ph ], [ %scevgep640, %.2880.endif ]
  %.185528372850 = phi i64 [ 0, %B1158.endif.lr.ph ], [ %.1862, %.2880.endif ]
  %36 = icmp eq i64 %arg.kept, 0
  %.1862 = add nuw nsw i64 %.185528372850, 1
  %.pre = mul i64 %.185528372850, %arg.kept
  br i1 %36, label %B1378.if.if.critedge, label %B1192.lr.ph

B1192.lr.ph:
  br label %B1192

B1242.else.if:
  %37 = and i64 %.185528372850, 1
  %38 = icmp eq i64 %37, 0
  %39 = icmp ugt i64 %.185528372850, 1
  %scevgep643 = getelementptr i8, ptr %lsr.iv641, i64 -48
  %sunkaddr751 = mul i64 %.2283, 8
  %sunkaddr752 = getelementptr inbounds i8, ptr %34, i64 %sunkaddr751
  %.2298 = load double, ptr %sunkaddr752, align 8
  %sunkaddr753 = mul i64 %.2314, 8
  %sunkaddr754 = getelementptr inbounds i8, ptr %35, i64 %sunkaddr753
  %.2329 = load double, ptr %sunkaddr754, align 8
  %.85.i = load double, ptr %arg.given.4, align 8
  %sunkaddr755 = getelementptr i8, ptr %arg.given.4, i64 8
  %.115.i = load double, ptr %sunkaddr755, align 8
  %sunkaddr756 = getelementptr i8, ptr %arg.given.4, i64 16
  %.145.i = load double, ptr %sunkaddr756, align 8
  %.184.i = load double, ptr %scevgep643, align 8
  %"$phi122.4.2.0.i" = select i1 %38, double 0.000000e+00, double %.145.i
  %.211.i = fsub double %"$phi122.4.2.0.i", %.2329
  %scevgep644 = getelementptr i8, ptr %lsr.iv641, i64 -40
  %.245.i = load double, ptr %scevgep644, align 8
  %.246.i = fsub double %.211.i, %.245.i
  %.248.i = fmul double %.85.i, %.246.i
  %.252.i = fadd double %.184.i, %.248.i
  store double %.252.i, ptr %scevgep643, align 8
  %scevgep645 = getelementptr i8, ptr %lsr.iv641, i64 -8
  %.319.i = load double, ptr %scevgep645, align 8
  %.321.i = fadd double %.85.i, %.319.i
  store double %.321.i, ptr %scevgep645, align 8
  %.381.i = load double, ptr %lsr.iv641, align 8
  %.383.i = fadd double %.85.i, %.381.i
  store double %.383.i, ptr %lsr.iv641, align 8
  br i1 %39, label %B264.i, label %B424.i

B264.i:
  %sunkaddr757 = getelementptr i8, ptr %arg.given.4, i64 56
  %.448.i = load double, ptr %sunkaddr757, align 8
  %.479.i = fneg double %.321.i
  %sunkaddr758 = getelementptr i8, ptr %arg.given.4, i64 64
  %.510.i = load double, ptr %sunkaddr758, align 8
  %.514.i = fdiv double %.479.i, %.510.i
  %.522.le.i = tail call double @llvm.exp.f64(double %.514.i)
  %.527.i = fmul double %.448.i, %.522.le.i
  %sunkaddr759 = getelementptr i8, ptr %arg.given.4, i64 72
  %.558.i = load double, ptr %sunkaddr759, align 8
  %.559.i = fadd double %.558.i, %.527.i
  %40 = fmul double %.559.i, %.559.i
  br label %B424.i

B424.i:
  %wander.2.0.i = phi double [ %40, %B264.i ], [ 0x3DDB7CDFD9D7BDBC, %B1242.else.if ]
  %41 = and i64 %.185528372850, 1
  %42 = icmp eq i64 %41, 0
  %scevgep646 = getelementptr i8, ptr %lsr.iv641, i64 -32
  %.592.i = load double, ptr %scevgep646, align 8
  %scevgep647 = getelementptr i8, ptr %lsr.iv641, i64 -16
  %.622.i = load double, ptr %scevgep647, align 8
  %.624.i = fmul double %.85.i, %.622.i
  %scevgep648 = getelementptr i8, ptr %lsr.iv641, i64 -24
  %.654.i = load double, ptr %scevgep648, align 8
  %.655.i = fmul double %.654.i, 2.000000e+00
  %.656.i = fsub double %.624.i, %.655.i
  %.658.i = fmul double %.85.i, %.656.i
  %.659.i = fadd double %.592.i, %.658.i
  store double %.659.i, ptr %scevgep646, align 8
  %.752.i = fsub double %.654.i, %.624.i
  store double %.752.i, ptr %scevgep648, align 8
  %.819.i = fmul double %.85.i, %wander.2.0.i
  %.820.i = fadd double %.819.i, %.622.i
  store double %.820.i, ptr %scevgep647, align 8
  %sunkaddr760 = getelementptr i8, ptr %arg.given.4, i64 80
  %.911.i = load double, ptr %sunkaddr760, align 8
  %.147.i.i = fmul double %.911.i, %.911.i
  br i1 %42, label %B774.i, label %B728.i

B728.i:
  %sunkaddr761 = getelementptr i8, ptr %arg.given.4, i64 88
  %.989.i = load double, ptr %sunkaddr761, align 8
  %.991.i = fmul double %.145.i, %.989.i
  %.147.i13.i = fmul double %.991.i, %.991.i
  br label %B774.i

B774.i:
  %"$phi774.5.2.0.i" = phi double [ 0.000000e+00, %B424.i ], [ %.147.i13.i, %B728.i ]
  %.1029.i = fadd double %.147.i.i, %"$phi774.5.2.0.i"
  %.1035.i = fmul double %.85.i, %.1029.i
  %.1039.i = fadd double %.659.i, %.1035.i
  %sunkaddr762 = getelementptr i8, ptr %lsr.iv641, i64 -32
  store double %.1039.i, ptr %sunkaddr762, align 8
  %.1088.le.i = fsub double %.2298, %.2298
  %.1089.le.i = fcmp ord double %.1088.le.i, 0.000000e+00
  br i1 %.1089.le.i, label %B840.endif.endif.endif.i, label %B1356.i

B1356.i:
  %.1745.i = phi double [ %.1418.i, %B840.endif.endif.endif.i ], [ %.245.i, %B774.i ]
  %price.3.0.i = phi double [ %.1254.i, %B840.endif.endif.endif.i ], [ 0.000000e+00, %B774.i ]
  %43 = icmp ugt i64 %.185528372850, 1
  %.1711.i = fcmp ogt double %.321.i, 2.000000e+01
  %or.cond.i = select i1 %43, i1 %.1711.i, i1 false
  br i1 %or.cond.i, label %B1394.i, label %B1242.endif.endif

B1394.i:
  %sunkaddr763 = getelementptr i8, ptr %arg.given.4, i64 104
  %.1775.i = load double, ptr %sunkaddr763, align 8
  %.1778.i = fcmp olt double %.1745.i, %.1775.i
  br i1 %.1778.i, label %B1450.endif.i, label %B1242.endif.endif

B840.endif.endif.endif.i:
  %.1135.i = fadd double %.115.i, %.1039.i
  %.1167.i = fsub double %.2298, %.252.i
  %.1170.i = fmul double %.1167.i, 5.000000e-01
  %.1171.i = fmul double %.1167.i, %.1170.i
  %.1175.i = fdiv double %.1171.i, %.1135.i
  %sunkaddr764 = getelementptr i8, ptr %arg.given.4, i64 112
  %.1205.i = load double, ptr %sunkaddr764, align 8
  %.10.i.i = fcmp olt double %.1205.i, %.1175.i
  %.11.i.i = select i1 %.10.i.i, double %.1205.i, double %.1175.i
  %.1238.i = fdiv double %.1135.i, %.115.i
  %.1248.le.i = tail call double @llvm.log.f64(double %.1238.i)
  %.1253.i = fmul double %.1248.le.i, 5.000000e-01
  %.1254.i = fadd double %.1253.i, %.11.i.i
  %.1290.i = fdiv double %.1039.i, %.1135.i
  %.1324.i = fdiv double %.752.i, %.1135.i
  %.1355.i = fmul double %.1167.i, %.1290.i
  %.1356.i = fadd double %.252.i, %.1355.i
  %sunkaddr765 = getelementptr i8, ptr %lsr.iv641, i64 -48
  store double %.1356.i, ptr %sunkaddr765, align 8
  %.1417.i = fmul double %.1167.i, %.1324.i
  %.1418.i = fadd double %.245.i, %.1417.i
  %sunkaddr766 = getelementptr i8, ptr %lsr.iv641, i64 -40
  store double %.1418.i, ptr %sunkaddr766, align 8
  %.1509.i = fmul double %.752.i, %.1324.i
  %.1510.i = fsub double %.820.i, %.1509.i
  %sunkaddr767 = getelementptr i8, ptr %lsr.iv641, i64 -16
  store double %.1510.i, ptr %sunkaddr767, align 8
  %.1571.i = fsub double 1.000000e+00, %.1290.i
  %.1572.i = fmul double %.752.i, %.1571.i
  %sunkaddr768 = getelementptr i8, ptr %lsr.iv641, i64 -24
  store double %.1572.i, ptr %sunkaddr768, align 8
  %.1634.i = fmul double %.1039.i, %.1571.i
  %sunkaddr769 = getelementptr i8, ptr %lsr.iv641, i64 -32
  store double %.1634.i, ptr %sunkaddr769, align 8
  br label %B1356.i

B1450.endif.i:
  %.1812.i = fneg double %.1745.i
  %.10.i1.i = fcmp ogt double %.1812.i, 0.000000e+00
  %.11.i2.i = select i1 %.10.i1.i, double %.1812.i, double 0.000000e+00
  %.1841.i = fmul double %.11.i2.i, 2.000000e+01
  %.1842.i = fadd double %.1841.i, 6.000000e-02
  %.1844.i = fmul double %.85.i, %.1842.i
  %.1848.i = fadd double %price.3.0.i, %.1844.i
  br label %B1242.endif.endif

B1242.endif.endif:
  %price.4.0.i = phi double [ %.1848.i, %B1450.endif.i ], [ %price.3.0.i, %B1394.i ], [ %price.3.0.i, %B1356.i ]
  %.2364 = fadd double %.2064, %price.4.0.i
  %sunkaddr770 = mul i64 %.197628242826, 8
  %sunkaddr771 = getelementptr i8, ptr %lsr.iv649, i64 %sunkaddr770
  store double %.2364, ptr %sunkaddr771, align 8
  br label %B1376

B1378.if.if.critedge:
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i)
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i)
  store ptr @n51, ptr %excinfo, align 8
  br label %common.ret

B1378.endif.endif:
  %.16.0.ph.i = phi i64 [ 0, %B1378 ], [ %min_idx.4.1.i.i, %B198.i.i ], [ %idx.2.0205.i.i, %B148.i.i ]
  %44 = ptrtoint ptr %.6.i.i216 to i64
  %45 = getelementptr double, ptr %.2463, i64 %.16.0.ph.i
  %.2576 = load double, ptr %45, align 8
  %46 = getelementptr i64, ptr %.6.i.i.i118, i64 %.pre
  %47 = getelementptr i64, ptr %46, i64 %.16.0.ph.i
  %.2631 = load i64, ptr %47, align 8
  %48 = getelementptr double, ptr %.6.i.i200, i64 %.185528372850
  store double %.2576, ptr %48, align 8
  %49 = getelementptr i64, ptr %.6.i.i229, i64 %.185528372850
  store i64 %.2631, ptr %49, align 8
  %.2755 = mul i64 %.185528372850, %.896
  %50 = getelementptr double, ptr %.6.i.i.i99, i64 %.2755
  %.2759.idx = mul i64 %.16.0.ph.i, 56
  %.2759 = getelementptr i8, ptr %50, i64 %.2759.idx
  %.2934 = ptrtoint ptr %.2759 to i64
  %.2936 = add i64 %.2934, 56
  %.2942 = mul nuw nsw i64 %.185528372850, 56
  %.2954 = add i64 %.2942, %44
  %.2955 = add i64 %.2950, %.2942
  %.2956 = icmp ugt i64 %.2955, %.2934
  %.2957 = icmp ult i64 %.2954, %.2936
  %.2958 = and i1 %.2956, %.2957
  br i1 %.2958, label %B1378.endif.endif.if, label %B1378.endif.endif..2879.endif.lr.ph_crit_edge

B1378.endif.endif..2879.endif.lr.ph_crit_edge:
  %.3022.pre = load double, ptr %.2759, align 8
  br label %.2879.endif.lr.ph

B1378.endif.endif.if:
  %.2968 = tail call ptr @NRT_Allocate(i64 56)
  %.2969 = icmp eq ptr %.2968, null
  br i1 %.2969, label %B1378.endif.endif.if.if, label %for.body.2.preheader

for.body.2.preheader:
  %.2987 = load double, ptr %.2759, align 8
  store double %.2987, ptr %.2968, align 8
  %.2983.1 = getelementptr i8, ptr %.2759, i64 8
  %.2986.1 = getelementptr i8, ptr %.2968, i64 8
  %.2987.1 = load double, ptr %.2983.1, align 8
  store double %.2987.1, ptr %.2986.1, align 8
  %.2983.2 = getelementptr i8, ptr %.2759, i64 16
  %.2986.2 = getelementptr i8, ptr %.2968, i64 16
  %.2987.2 = load double, ptr %.2983.2, align 8
  store double %.2987.2, ptr %.2986.2, align 8
  %.2983.3 = getelementptr i8, ptr %.2759, i64 24
  %.2986.3 = getelementptr i8, ptr %.2968, i64 24
  %.2987.3 = load double, ptr %.2983.3, align 8
  store double %.2987.3, ptr %.2986.3, align 8
  %.2983.4 = getelementptr i8, ptr %.2759, i64 32
  %.2986.4 = getelementptr i8, ptr %.2968, i64 32
  %.2987.4 = load double, ptr %.2983.4, align 8
  store double %.2987.4, ptr %.2986.4, align 8
  %.2983.5 = getelementptr i8, ptr %.2759, i64 40
  %.2986.5 = getelementptr i8, ptr %.2968, i64 40
  %.2987.5 = load double, ptr %.2983.5, align 8
  store double %.2987.5, ptr %.2986.5, align 8
  %.2983.6 = getelementptr i8, ptr %.2759, i64 48
  %.2986.6 = getelementptr i8, ptr %.2968, i64 48
  %.2987.6 = load double, ptr %.2983.6, align 8
  store double %.2987.6, ptr %.2986.6, align 8
  br label %.2879.endif.lr.ph

.2879.endif.lr.ph:
  %.3022 = phi double [ %.3022.pre, %B1378.endif.endif..2879.endif.lr.ph_crit_edge ], [ %.2987, %for.body.2.preheader ]
  %.2959.0 = phi ptr [ %.2759, %B1378.endif.endif..2879.endif.lr.ph_crit_edge ], [ %.2968, %for.body.2.preheader ]
  %51 = getelementptr i8, ptr %.6.i.i216, i64 %.2942
  store double %.3022, ptr %51, align 8
  %.3003.1 = getelementptr i8, ptr %51, i64 8
  %.3004.0.1 = getelementptr i8, ptr %.2959.0, i64 8
  %.3022.1 = load double, ptr %.3004.0.1, align 8
  store double %.3022.1, ptr %.3003.1, align 8
  %.3003.2 = getelementptr i8, ptr %51, i64 16
  %.3004.0.2 = getelementptr i8, ptr %.2959.0, i64 16
  %.3022.2 = load double, ptr %.3004.0.2, align 8
  store double %.3022.2, ptr %.3003.2, align 8
  %.3003.3 = getelementptr i8, ptr %51, i64 24
  %.3004.0.3 = getelementptr i8, ptr %.2959.0, i64 24
  %.3022.3 = load double, ptr %.3004.0.3, align 8
  store double %.3022.3, ptr %.3003.3, align 8
  %.3003.4 = getelementptr i8, ptr %51, i64 32
  %.3004.0.4 = getelementptr i8, ptr %.2959.0, i64 32
  %.3022.4 = load double, ptr %.3004.0.4, align 8
  store double %.3022.4, ptr %.3003.4, align 8
  %.3003.5 = getelementptr i8, ptr %51, i64 40
  %.3004.0.5 = getelementptr i8, ptr %.2959.0, i64 40
  %.3022.5 = load double, ptr %.3004.0.5, align 8
  store double %.3022.5, ptr %.3003.5, align 8
  %.3003.6 = getelementptr i8, ptr %51, i64 48
  %.3004.0.6 = getelementptr i8, ptr %.2959.0, i64 48
  %.3022.6 = load double, ptr %.3004.0.6, align 8
  store double %.3022.6, ptr %.3003.6, align 8
  br i1 %.2958, label %.2880.if, label %.2880.endif

B1378.endif.endif.if.if:
  store ptr @n3, ptr %excinfo, align 8
  br label %common.ret

.2880.if:
  tail call void @NRT_Free(ptr nonnull %.2959.0)
  br label %.2880.endif

.2880.endif:
  %scevgep640 = getelementptr i8, ptr %lsr.iv639, i64 %32
  %scevgep650 = getelementptr i8, ptr %lsr.iv649, i64 %33
  %exitcond3208.not = icmp eq i64 %.1862, 4
  br i1 %exitcond3208.not, label %B1544.preheader, label %B1158.endif

B1544.preheader:
  br label %B1544

B1626.else.if:
  %count.2.22882 = phi i64 [ %count.3.12913, %B1626.else.if.lr.ph ], [ %count.5.3, %B1994 ]
  %.330828722880 = phi i64 [ 0, %B1626.else.if.lr.ph ], [ %.3315, %B1994 ]
  %.3315 = add nuw nsw i64 %.330828722880, 1
  switch i64 %.330828722880, label %switch.else [
    i64 0, label %switch.end.endif.endif
    i64 3, label %switch.3
    i64 1, label %switch.1
    i64 2, label %switch.2
  ]

switch.else:
  store ptr @n6, ptr %excinfo, align 8
  br label %common.ret

switch.1:
  br label %switch.end.endif.endif

switch.2:
  br label %switch.end.endif.endif

switch.3:
  br label %switch.end.endif.endif

switch.end.endif.endif:
  %.3455 = phi i64 [ %.313428932911, %switch.3 ], [ %.3437, %switch.1 ], [ %.3358.1, %switch.2 ], [ %.3435, %B1626.else.if ]
  br i1 %.3902, label %switch.end.endif.endif.endif.if, label %switch.end.endif.endif.switch.end.endif.endif.endif.endif_crit_edge

switch.end.endif.endif.switch.end.endif.endif.endif.endif_crit_edge:
  %.3972.pre = load double, ptr %.3511, align 8
  br label %switch.end.endif.endif.endif.endif

switch.end.endif.endif.endif.if:
  %.3912 = tail call ptr @NRT_Allocate(i64 56)
  %.3913 = icmp eq ptr %.3912, null
  br i1 %.3913, label %switch.end.endif.endif.endif.if.if, label %for.body.3.preheader

for.body.3.preheader:
  %.3931 = load double, ptr %.3511, align 8
  store double %.3931, ptr %.3912, align 8
  %.3930.1 = getelementptr i8, ptr %.3912, i64 8
  %sunkaddr772 = getelementptr i8, ptr %.3511, i64 8
  %.3931.1 = load double, ptr %sunkaddr772, align 8
  store double %.3931.1, ptr %.3930.1, align 8
  %.3930.2 = getelementptr i8, ptr %.3912, i64 16
  %sunkaddr773 = getelementptr i8, ptr %.3511, i64 16
  %.3931.2 = load double, ptr %sunkaddr773, align 8
  store double %.3931.2, ptr %.3930.2, align 8
  %.3930.3 = getelementptr i8, ptr %.3912, i64 24
  %sunkaddr774 = getelementptr i8, ptr %.3511, i64 24
  %.3931.3 = load double, ptr %sunkaddr774, align 8
  store double %.3931.3, ptr %.3930.3, align 8
  %.3930.4 = getelementptr i8, ptr %.3912, i64 32
  %sunkaddr775 = getelementptr i8, ptr %.3511, i64 32
  %.3931.4 = load double, ptr %sunkaddr775, align 8
  store double %.3931.4, ptr %.3930.4, align 8
  %.3930.5 = getelementptr i8, ptr %.3912, i64 40
  %sunkaddr776 = getelementptr i8, ptr %.3511, i64 40
  %.3931.5 = load double, ptr %sunkaddr776, align 8
  store double %.3931.5, ptr %.3930.5, align 8
  %.3930.6 = getelementptr i8, ptr %.3912, i64 48
  %sunkaddr777 = getelementptr i8, ptr %.3511, i64 48
  %.3931.6 = load double, ptr %sunkaddr777, align 8
  store double %.3931.6, ptr %.3930.6, align 8
  br label %switch.end.endif.endif.endif.endif

switch.end.endif.endif.endif.endif:
  %.3972 = phi double [ %.3972.pre, %switch.end.endif.endif.switch.end.endif.endif.endif.endif_crit_edge ], [ %.3931, %for.body.3.preheader ]
  %.3903.0 = phi ptr [ %.3511, %switch.end.endif.endif.switch.end.endif.endif.endif.endif_crit_edge ], [ %.3912, %for.body.3.preheader ]
  store double %.3972, ptr %.6.i.i, align 8
  %.3954.0.1 = getelementptr i8, ptr %.3903.0, i64 8
  %.3972.1 = load double, ptr %.3954.0.1, align 8
  %sunkaddr778 = getelementptr i8, ptr %.6.i.i, i64 8
  store double %.3972.1, ptr %sunkaddr778, align 8
  %.3954.0.2 = getelementptr i8, ptr %.3903.0, i64 16
  %.3972.2 = load double, ptr %.3954.0.2, align 8
  %sunkaddr779 = getelementptr i8, ptr %.6.i.i, i64 16
  store double %.3972.2, ptr %sunkaddr779, align 8
  %.3954.0.3 = getelementptr i8, ptr %.3903.0, i64 24
  %.3972.3 = load double, ptr %.3954.0.3, align 8
  %sunkaddr780 = getelementptr i8, ptr %.6.i.i, i64 24
  store double %.3972.3, ptr %sunkaddr780, align 8
  %.3954.0.4 = getelementptr i8, ptr %.3903.0, i64 32
  %.3972.4 = load double, ptr %.3954.0.4, align 8
  %sunkaddr781 = getelementptr i8, ptr %.6.i.i, i64 32
  store double %.3972.4, ptr %sunkaddr781, align 8
  %.3954.0.5 = getelementptr i8, ptr %.3903.0, i64 40
  %.3972.5 = load double, ptr %.3954.0.5, align 8
  %sunkaddr782 = getelementptr i8, ptr %.6.i.i, i64 40
  store double %.3972.5, ptr %sunkaddr782, align 8
  %.3954.0.6 = getelementptr i8, ptr %.3903.0, i64 48
  %.3972.6 = load double, ptr %.3954.0.6, align 8
  %sunkaddr783 = getelementptr i8, ptr %.6.i.i, i64 48
  store double %.3972.6, ptr %sunkaddr783, align 8
  br i1 %.3902, label %.3797.if, label %.3797.endif

switch.end.endif.endif.endif.if.if:
  store ptr @n3, ptr %excinfo, align 8
  br label %common.ret

.3797.if:
  tail call void @NRT_Free(ptr nonnull %.3903.0)
  br label %.3797.endif

.3797.endif:
  %sunkaddr784 = mul i64 %.313428932911, 8
  %sunkaddr785 = getelementptr i8, ptr %.6.i.i200, i64 %sunkaddr784
  %.4021 = load double, ptr %sunkaddr785, align 8
  %52 = getelementptr double, ptr %arg.given.4, i64 %.330828722880
  %53 = getelementptr i8, ptr %52, i64 24
  %.84.i = load double, ptr %53, align 8
  switch i64 %.330828722880, label %B744.i [
    i64 0, label %B48.i
    i64 1, label %B232.i
    i64 2, label %B566.i
  ]

B48.i:
  %sunkaddr786 = getelementptr i8, ptr %.6.i.i, i64 48
  %.130.i = load double, ptr %sunkaddr786, align 8
  store double 0.000000e+00, ptr %sunkaddr786, align 8
  %sunkaddr787 = getelementptr i8, ptr %.6.i.i, i64 16
  %.207.i = load double, ptr %sunkaddr787, align 8
  %sunkaddr788 = getelementptr i8, ptr %arg.given.4, i64 16
  %.237.i = load double, ptr %sunkaddr788, align 8
  %.267.i = load double, ptr %arg.given.4, align 8
  %.270.i = fmul double %.237.i, %.267.i
  %.147.i.i5 = fmul double %.270.i, %.270.i
  %.131.i = fcmp olt double %.130.i, 8.000000e+00
  %.134.i = fadd double %.84.i, 8.000000e+00
  %price.8.0.i = select i1 %.131.i, double %.134.i, double %.84.i
  %.300.i = fdiv double %.147.i.i5, 1.200000e+01
  %.301.i = fadd double %.207.i, %.300.i
  store double %.301.i, ptr %sunkaddr787, align 8
  br label %.3797.endif.endif

B232.i:
  %54 = icmp eq i64 %.3396.1.mask, 2
  %sunkaddr789 = getelementptr i8, ptr %.6.i.i, i64 40
  %.430.i = load double, ptr %sunkaddr789, align 8
  br i1 %54, label %B236.i, label %B310.i

B236.i:
  %.372.i = fcmp olt double %.430.i, 6.000000e+01
  br i1 %.372.i, label %.3797.endif.endif, label %B298.i

B298.i:
  %.391.i = fadd double %.84.i, 2.500000e+01
  br label %B354.i

B310.i:
  %.431.i = fcmp olt double %.430.i, 4.500000e+01
  br i1 %.431.i, label %B344.i, label %B354.i

B344.i:
  %.434.i = fadd double %.84.i, 1.500000e+01
  br label %B354.i

B354.i:
  %price.5.0.i = phi double [ %.391.i, %B298.i ], [ %.434.i, %B344.i ], [ %.84.i, %B310.i ]
  %55 = icmp eq i64 %.3358.1, 0
  br i1 %55, label %B456.i, label %B358.i

B358.i:
  %.482.i = load double, ptr %.6.i.i, align 8
  %sunkaddr790 = getelementptr i8, ptr %arg.given.4, i64 128
  %.512.i = load double, ptr %sunkaddr790, align 8
  %.513.i = fsub double %.482.i, %.512.i
  %.514.i1 = tail call double @llvm.fabs.f64(double %.513.i)
  %.515.i = fcmp olt double %.514.i1, 4.000000e-01
  br i1 %.515.i, label %B446.i, label %B456.i

B446.i:
  %.518.i = fadd double %price.5.0.i, 1.500000e+01
  br label %B456.i

B456.i:
  %price.7.0.i = phi double [ %.518.i, %B446.i ], [ %price.5.0.i, %B358.i ], [ %price.5.0.i, %B354.i ]
  %sunkaddr791 = getelementptr i8, ptr %.6.i.i, i64 32
  %.560.i = load double, ptr %sunkaddr791, align 8
  %sunkaddr792 = getelementptr i8, ptr %arg.given.4, i64 56
  %.590.i = load double, ptr %sunkaddr792, align 8
  %.593.i = fmul double %.590.i, 3.000000e+00
  %.147.i13.i3 = fmul double %.593.i, %.593.i
  %.618.i = fadd double %.560.i, %.147.i13.i3
  store double %.618.i, ptr %sunkaddr791, align 8
  %sunkaddr793 = getelementptr i8, ptr %.6.i.i, i64 40
  store double 0.000000e+00, ptr %sunkaddr793, align 8
  br label %.3797.endif.endif

B566.i:
  %56 = icmp eq i64 %.3396.1.mask, 2
  br i1 %56, label %B570.i, label %.3797.endif.endif

B570.i:
  %sunkaddr794 = getelementptr i8, ptr %.6.i.i, i64 40
  %.722.i = load double, ptr %sunkaddr794, align 8
  %.723.i = fcmp olt double %.722.i, 4.500000e+01
  br i1 %.723.i, label %.3797.endif.endif, label %B628.i

B628.i:
  %sunkaddr795 = getelementptr i8, ptr %arg.given.4, i64 120
  %.767.i = load double, ptr %sunkaddr795, align 8
  %.147.i25.i = fmul double %.767.i, %.767.i
  %sunkaddr796 = getelementptr i8, ptr %.6.i.i, i64 8
  store double 0.000000e+00, ptr %sunkaddr796, align 8
  %sunkaddr797 = getelementptr i8, ptr %.6.i.i, i64 24
  store double 0.000000e+00, ptr %sunkaddr797, align 8
  %sunkaddr798 = getelementptr i8, ptr %.6.i.i, i64 32
  store double %.147.i25.i, ptr %sunkaddr798, align 8
  %sunkaddr799 = getelementptr i8, ptr %.6.i.i, i64 40
  store double 0.000000e+00, ptr %sunkaddr799, align 8
  br label %.3797.endif.endif

B744.i:
  %57 = icmp eq i64 %.3396.1.mask, 2
  br i1 %57, label %B748.i, label %.3797.endif.endif

B748.i:
  %sunkaddr800 = getelementptr i8, ptr %.6.i.i, i64 40
  %.958.i = load double, ptr %sunkaddr800, align 8
  %.959.i = fcmp olt double %.958.i, 3.000000e+01
  br i1 %.959.i, label %.3797.endif.endif, label %B806.i

B806.i:
  %sunkaddr801 = getelementptr i8, ptr %.6.i.i, i64 32
  %.1003.i = load double, ptr %sunkaddr801, align 8
  %sunkaddr802 = getelementptr i8, ptr %arg.given.4, i64 96
  %.1033.i = load double, ptr %sunkaddr802, align 8
  %.147.i37.i = fmul double %.1033.i, %.1033.i
  %.1060.i = fadd double %.1003.i, %.147.i37.i
  store double %.1060.i, ptr %sunkaddr801, align 8
  br label %.3797.endif.endif

.3797.endif.endif:
  %price.6.0.sink.i = phi double [ 0x7FF0000000000000, %B744.i ], [ 0x7FF0000000000000, %B566.i ], [ 0x7FF0000000000000, %B236.i ], [ 0x7FF0000000000000, %B570.i ], [ 0x7FF0000000000000, %B748.i ], [ %price.8.0.i, %B48.i ], [ %price.7.0.i, %B456.i ], [ %.84.i, %B628.i ], [ %.84.i, %B806.i ]
  %.4059 = fadd double %.4021, %price.6.0.sink.i
  %.4101 = mul i64 %.3455, %arg.kept
  %.4103 = getelementptr double, ptr %.6.i.i.i, i64 %.4101
  %.110.i.i246 = load double, ptr %.4103, align 8
  %.158.le.i.i247 = fcmp uno double %.110.i.i246, 0.000000e+00
  br i1 %.158.le.i.i247, label %.3797.endif.endif.endif, label %B148.i.i248.preheader

B148.i.i248.preheader:
  br label %B148.i.i248

B148.i.i248:
  %idx.2.0205.i.i249 = phi i64 [ %.378.i.i254, %B198.i.i253 ], [ 0, %B148.i.i248.preheader ]
  %max_idx.3.0204.i.i = phi i64 [ %max_idx.4.1.i.i, %B198.i.i253 ], [ 0, %B148.i.i248.preheader ]
  %max_value.3.0203.i.i = phi double [ %max_value.4.1.i.i, %B198.i.i253 ], [ %.110.i.i246, %B148.i.i248.preheader ]
  %58 = shl i64 %idx.2.0205.i.i249, 3
  %scevgep.i.i250 = getelementptr i8, ptr %.4103, i64 %58
  %.270.i.i251 = load double, ptr %scevgep.i.i250, align 8
  %.309.le.i.i252 = fcmp uno double %.270.i.i251, 0.000000e+00
  br i1 %.309.le.i.i252, label %.3797.endif.endif.endif, label %B198.i.i253

B198.i.i253:
  %.378.i.i254 = add nuw i64 %idx.2.0205.i.i249, 1
  %.352.i.i255 = fcmp ogt double %.270.i.i251, %max_value.3.0203.i.i
  %max_value.4.1.i.i = select i1 %.352.i.i255, double %.270.i.i251, double %max_value.3.0203.i.i
  %max_idx.4.1.i.i = select i1 %.352.i.i255, i64 %idx.2.0205.i.i249, i64 %max_idx.3.0204.i.i
  %exitcond.not.i.i256 = icmp eq i64 %arg.kept, %.378.i.i254
  br i1 %exitcond.not.i.i256, label %.3797.endif.endif.endif, label %B148.i.i248

.3797.endif.endif.endif:
  %.16.0.ph.i243 = phi i64 [ 0, %.3797.endif.endif ], [ %max_idx.4.1.i.i, %B198.i.i253 ], [ %idx.2.0205.i.i249, %B148.i.i248 ]
  %59 = getelementptr double, ptr %.4103, i64 %.16.0.ph.i243
  %.4220 = load double, ptr %59, align 8
  %.4224 = fcmp olt double %.4059, %.4220
  br i1 %.4224, label %B1874.endif, label %B1994

B1874.endif:
  %60 = ptrtoint ptr %.6.i.i.i99 to i64
  %61 = ptrtoint ptr %.6.i.i to i64
  %sunkaddr803 = mul i64 %.16.0.ph.i243, 8
  %sunkaddr804 = getelementptr i8, ptr %.4103, i64 %sunkaddr803
  store double %.4059, ptr %sunkaddr804, align 8
  %62 = getelementptr i64, ptr %.6.i.i.i118, i64 %.4101
  %63 = getelementptr i64, ptr %62, i64 %.16.0.ph.i243
  store i64 %count.2.22882, ptr %63, align 8
  %.4409 = mul i64 %.3455, %.896
  %.4538 = mul i64 %.77.i.i, %.3455
  %.4550 = add i64 %.4538, %60
  %.4551 = add i64 %.4546, %.4538
  %.4552 = icmp ugt i64 %.4551, %61
  %.4553 = icmp ult i64 %.4550, %.4532
  %.4554 = and i1 %.4553, %.4552
  br i1 %.4554, label %B1874.endif.if, label %B1874.endif..4475.endif.lr.ph_crit_edge

B1874.endif..4475.endif.lr.ph_crit_edge:
  %.4622.pre = load double, ptr %.6.i.i, align 8
  br label %.4475.endif.lr.ph

B1874.endif.if:
  %.4564 = tail call ptr @NRT_Allocate(i64 56)
  %.4565 = icmp eq ptr %.4564, null
  br i1 %.4565, label %B1874.endif.if.if, label %for.body.4.preheader

for.body.4.preheader:
  %.4583 = load double, ptr %.6.i.i, align 8
  store double %.4583, ptr %.4564, align 8
  %.4582.1 = getelementptr i8, ptr %.4564, i64 8
  %sunkaddr805 = getelementptr i8, ptr %.6.i.i, i64 8
  %.4583.1 = load double, ptr %sunkaddr805, align 8
  store double %.4583.1, ptr %.4582.1, align 8
  %.4582.2 = getelementptr i8, ptr %.4564, i64 16
  %sunkaddr806 = getelementptr i8, ptr %.6.i.i, i64 16
  %.4583.2 = load double, ptr %sunkaddr806, align 8
  store double %.4583.2, ptr %.4582.2, align 8
  %.4582.3 = getelementptr i8, ptr %.4564, i64 24
  %sunkaddr807 = getelementptr i8, ptr %.6.i.i, i64 24
  %.4583.3 = load double, ptr %sunkaddr807, align 8
  store double %.4583.3, ptr %.4582.3, align 8
  %.4582.4 = getelementptr i8, ptr %.4564, i64 32
  %sunkaddr808 = getelementptr i8, ptr %.6.i.i, i64 32
  %.4583.4 = load double, ptr %sunkaddr808, align 8
  store double %.4583.4, ptr %.4582.4, align 8
  %.4582.5 = getelementptr i8, ptr %.4564, i64 40
  %sunkaddr809 = getelementptr i8, ptr %.6.i.i, i64 40
  %.4583.5 = load double, ptr %sunkaddr809, align 8
  store double %.4583.5, ptr %.4582.5, align 8
  %.4582.6 = getelementptr i8, ptr %.4564, i64 48
  %sunkaddr810 = getelementptr i8, ptr %.6.i.i, i64 48
  %.4583.6 = load double, ptr %sunkaddr810, align 8
  store double %.4583.6, ptr %.4582.6, align 8
  br label %.4475.endif.lr.ph

.4475.endif.lr.ph:
  %.4622 = phi double [ %.4622.pre, %B1874.endif..4475.endif.lr.ph_crit_edge ], [ %.4583, %for.body.4.preheader ]
  %.4555.0 = phi ptr [ %.6.i.i, %B1874.endif..4475.endif.lr.ph_crit_edge ], [ %.4564, %for.body.4.preheader ]
  %64 = getelementptr double, ptr %.6.i.i.i99, i64 %.4409
  %.idx593 = mul i64 %.16.0.ph.i243, 56
  %65 = getelementptr i8, ptr %64, i64 %.idx593
  store double %.4622, ptr %65, align 8
  %.4603.1 = getelementptr i8, ptr %65, i64 8
  %.4604.0.1 = getelementptr i8, ptr %.4555.0, i64 8
  %.4622.1 = load double, ptr %.4604.0.1, align 8
  store double %.4622.1, ptr %.4603.1, align 8
  %.4603.2 = getelementptr i8, ptr %65, i64 16
  %.4604.0.2 = getelementptr i8, ptr %.4555.0, i64 16
  %.4622.2 = load double, ptr %.4604.0.2, align 8
  store double %.4622.2, ptr %.4603.2, align 8
  %.4603.3 = getelementptr i8, ptr %65, i64 24
  %.4604.0.3 = getelementptr i8, ptr %.4555.0, i64 24
  %.4622.3 = load double, ptr %.4604.0.3, align 8
  store double %.4622.3, ptr %.4603.3, align 8
  %.4603.4 = getelementptr i8, ptr %65, i64 32
  %.4604.0.4 = getelementptr i8, ptr %.4555.0, i64 32
  %.4622.4 = load double, ptr %.4604.0.4, align 8
  store double %.4622.4, ptr %.4603.4, align 8
  %.4603.5 = getelementptr i8, ptr %65, i64 40
  %.4604.0.5 = getelementptr i8, ptr %.4555.0, i64 40
  %.4622.5 = load double, ptr %.4604.0.5, align 8
  store double %.4622.5, ptr %.4603.5, align 8
  %.4603.6 = getelementptr i8, ptr %65, i64 48
  %.4604.0.6 = getelementptr i8, ptr %.4555.0, i64 48
  %.4622.6 = load double, ptr %.4604.0.6, align 8
  store double %.4622.6, ptr %.4603.6, align 8
  br i1 %.4554, label %.4476.if, label %.4476.endif

B1874.endif.if.if:
  store ptr @n3, ptr %excinfo, align 8
  br label %common.ret

.4476.if:
  tail call void @NRT_Free(ptr nonnull %.4555.0)
  br label %.4476.endif

.4476.endif:
  %sunkaddr811 = mul i64 %.313428932911, 8
  %sunkaddr812 = getelementptr i8, ptr %.6.i.i229, i64 %sunkaddr811
  %.4665 = load i64, ptr %sunkaddr812, align 8
  %.4667 = icmp eq i64 %.330828722880, 0
  %"$phi1958.5.2.3" = select i1 %.4667, i64 %.3358.1, i64 %.3315
  %.4709 = icmp slt i64 %count.2.22882, 0
  %.4710 = select i1 %.4709, i64 %.244, i64 0
  %66 = getelementptr i64, ptr %.6.i.i153, i64 %count.2.22882
  %.4724 = getelementptr i64, ptr %66, i64 %.4710
  store i64 %.4665, ptr %.4724, align 8
  %67 = getelementptr i64, ptr %.6.i.i168, i64 %count.2.22882
  %.4758 = getelementptr i64, ptr %67, i64 %.4710
  store i64 %.173529303022, ptr %.4758, align 8
  %68 = getelementptr i64, ptr %.6.i.i181, i64 %count.2.22882
  %.4792 = getelementptr i64, ptr %68, i64 %.4710
  store i64 %"$phi1958.5.2.3", ptr %.4792, align 8
  %.4797 = add nsw i64 %count.2.22882, 1
  br label %B1994

B2002.endif.endif.endif:
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i95)
  tail call void @NRT_decref(ptr %arg.temp.0)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i213)
  tail call void @NRT_decref(ptr %arg.loss.0)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i)
  tail call void @NRT_decref(ptr %arg.given.0)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i225)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i196)
  %.7.i.i = tail call ptr @NRT_MemInfo_alloc_aligned(i64 32, i32 32)
  %.8.i.i = icmp eq ptr %.7.i.i, null
  br i1 %.8.i.i, label %B2002.endif.endif.endif.if.if, label %B2282.preheader

B2282.preheader:
  %.5.i261 = getelementptr i8, ptr %.7.i.i, i64 24
  %.6.i262 = load ptr, ptr %.5.i261, align 8
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i)
  store double 0.000000e+00, ptr %.5182, align 8
  %.5188 = call i32 @n72(ptr nonnull %.5182, ptr nonnull %excinfo.21, ptr nonnull %.7.i.i.i.i, ptr null, i64 %arg.kept, i64 8, ptr nonnull %.6.i.i.i, i64 %arg.kept, i64 8)
  %cond17 = icmp eq i32 %.5188, 0
  br i1 %cond17, label %B2282.endif, label %B2282.if.if

B2002.endif.endif.endif.if.if:
  store ptr @n54, ptr %excinfo, align 8
  br label %common.ret

B2282.endif:
  %.5198 = load double, ptr %.5182, align 8
  store double %.5198, ptr %.6.i262, align 8
  store double 0.000000e+00, ptr %.5182, align 8
  %.5188.1 = call i32 @n72(ptr nonnull %.5182, ptr nonnull %excinfo.21, ptr nonnull %.7.i.i.i.i, ptr null, i64 %arg.kept, i64 8, ptr nonnull %.735.1, i64 %arg.kept, i64 8)
  %cond17.1 = icmp eq i32 %.5188.1, 0
  br i1 %cond17.1, label %B2282.endif.1, label %B2282.if.if

B2282.endif.1:
  %.5198.1 = load double, ptr %.5182, align 8
  %.5240.1 = getelementptr i8, ptr %.6.i262, i64 8
  store double %.5198.1, ptr %.5240.1, align 8
  %.5139.2.idx = shl i64 %arg.kept, 4
  %.5139.2 = getelementptr i8, ptr %.6.i.i.i, i64 %.5139.2.idx
  store double 0.000000e+00, ptr %.5182, align 8
  %.5188.2 = call i32 @n72(ptr nonnull %.5182, ptr nonnull %excinfo.21, ptr nonnull %.7.i.i.i.i, ptr null, i64 %arg.kept, i64 8, ptr %.5139.2, i64 %arg.kept, i64 8)
  %cond17.2 = icmp eq i32 %.5188.2, 0
  br i1 %cond17.2, label %B2282.endif.2, label %B2282.if.if

B2282.endif.2:
  %.5198.2 = load double, ptr %.5182, align 8
  %.5240.2 = getelementptr i8, ptr %.6.i262, i64 16
  store double %.5198.2, ptr %.5240.2, align 8
  %.5139.3.idx = mul i64 %arg.kept, 24
  %.5139.3 = getelementptr i8, ptr %.6.i.i.i, i64 %.5139.3.idx
  store double 0.000000e+00, ptr %.5182, align 8
  %.5188.3 = call i32 @n72(ptr nonnull %.5182, ptr nonnull %excinfo.21, ptr nonnull %.7.i.i.i.i, ptr null, i64 %arg.kept, i64 8, ptr %.5139.3, i64 %arg.kept, i64 8)
  %cond17.3 = icmp eq i32 %.5188.3, 0
  br i1 %cond17.3, label %B2282.endif.3, label %B2282.if.if

B2282.endif.3:
  %.5198.3 = load double, ptr %.5182, align 8
  %.5240.3 = getelementptr i8, ptr %.6.i262, i64 24
  store double %.5198.3, ptr %.5240.3, align 8
  tail call void @NRT_incref(ptr nonnull %.7.i.i)
  %.110.i.i58 = load double, ptr %.6.i262, align 8
  %.158.le.i.i59 = fcmp uno double %.110.i.i58, 0.000000e+00
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i)
  br i1 %.158.le.i.i59, label %B2312.endif, label %B198.i.i67

B2282.if.if:
  %.5189 = load ptr, ptr %excinfo.21, align 8
  store ptr %.5189, ptr %excinfo, align 8
  br label %common.ret

B2312.endif.loopexit:
  %.16.0.ph.i74.ph = phi i64 [ 2, %B198.i.i67.1 ], [ %min_idx.4.1.i.i71.3, %B198.i.i67.3 ], [ 1, %B198.i.i67 ], [ 3, %B198.i.i67.2 ]
  %69 = mul nuw nsw i64 %.16.0.ph.i74.ph, %arg.kept
  br label %B2312.endif

B2312.endif:
  %.16.0.ph.i74 = phi i64 [ 0, %B2282.endif.3 ], [ %69, %B2312.endif.loopexit ]
  %70 = icmp eq i64 %arg.kept, 0
  %.5330 = getelementptr double, ptr %.6.i.i.i, i64 %.16.0.ph.i74
  tail call void @NRT_incref(ptr nonnull %.7.i.i.i.i)
  tail call void @NRT_decref(ptr nonnull %.7.i.i)
  br i1 %70, label %B2312.endif.if.if, label %for.end.i.i269

B148.i.i272:
  %idx.2.0205.i.i273 = phi i64 [ %.378.i.i280, %B198.i.i279 ], [ 0, %B148.i.i272.preheader ]
  %min_idx.3.0204.i.i274 = phi i64 [ %min_idx.4.1.i.i283, %B198.i.i279 ], [ 0, %B148.i.i272.preheader ]
  %min_value.3.0203.i.i275 = phi double [ %min_value.4.1.i.i282, %B198.i.i279 ], [ %.110.i.i270, %B148.i.i272.preheader ]
  %71 = shl i64 %idx.2.0205.i.i273, 3
  %scevgep.i.i276 = getelementptr i8, ptr %.5330, i64 %71
  %.270.i.i277 = load double, ptr %scevgep.i.i276, align 8
  %.309.le.i.i278 = fcmp uno double %.270.i.i277, 0.000000e+00
  br i1 %.309.le.i.i278, label %B2312.endif.endif.endif.if, label %B198.i.i279

B198.i.i279:
  %.378.i.i280 = add nuw i64 %idx.2.0205.i.i273, 1
  %.352.i.i281 = fcmp olt double %.270.i.i277, %min_value.3.0203.i.i275
  %min_value.4.1.i.i282 = select i1 %.352.i.i281, double %.270.i.i277, double %min_value.3.0203.i.i275
  %min_idx.4.1.i.i283 = select i1 %.352.i.i281, i64 %idx.2.0205.i.i273, i64 %min_idx.3.0204.i.i274
  %exitcond.not.i.i284 = icmp eq i64 %arg.kept, %.378.i.i280
  br i1 %exitcond.not.i.i284, label %B2312.endif.endif.endif.if, label %B148.i.i272

for.end.i.i269:
  %.110.i.i270 = load double, ptr %.5330, align 8
  %.158.le.i.i271 = fcmp uno double %.110.i.i270, 0.000000e+00
  br i1 %.158.le.i.i271, label %B2312.endif.endif.endif.if, label %B148.i.i272.preheader

B148.i.i272.preheader:
  br label %B148.i.i272

B2312.endif.if.if:
  tail call void @NRT_decref(ptr nonnull %.7.i.i)
  store ptr @n51, ptr %excinfo, align 8
  br label %common.ret

B2312.endif.endif.endif.if:
  %.16.0.ph.i267 = phi i64 [ 0, %for.end.i.i269 ], [ %min_idx.4.1.i.i283, %B198.i.i279 ], [ %idx.2.0205.i.i273, %B148.i.i272 ]
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i)
  tail call void @NRT_decref(ptr nonnull %.7.i.i)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i)
  %72 = getelementptr i64, ptr %.6.i.i.i118, i64 %.16.0.ph.i74
  %73 = getelementptr i64, ptr %72, i64 %.16.0.ph.i267
  %.5449 = load i64, ptr %73, align 8
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i.i114)
  %.5484 = tail call ptr @NRT_MemInfo_new_varsize_dtor(i64 24, ptr nonnull @n73)
  %.5485 = icmp eq ptr %.5484, null
  br i1 %.5485, label %B2312.endif.endif.endif.endif.if, label %B2312.endif.endif.endif.endif.endif

B2312.endif.endif.endif.endif.if:
  store ptr @n9, ptr %excinfo, align 8
  br label %common.ret

B2312.endif.endif.endif.endif.endif:
  %.5.i287 = getelementptr i8, ptr %.5484, i64 24
  %.6.i288 = load ptr, ptr %.5.i287, align 8
  %.5497 = getelementptr inbounds nuw i8, ptr %.6.i288, i64 8
  store i64 0, ptr %.5497, align 8
  %.6.i290 = load ptr, ptr %.5.i287, align 8
  store i64 0, ptr %.6.i290, align 8
  %.6.i292 = load ptr, ptr %.5.i287, align 8
  %.5509 = getelementptr inbounds nuw i8, ptr %.6.i292, i64 16
  store i8 0, ptr %.5509, align 1
  %.6.i294 = load ptr, ptr %.5.i287, align 8
  store i64 0, ptr %.6.i294, align 8
  %.5556 = icmp sgt i64 %.5449, 3
  br i1 %.5556, label %B2394.preheader, label %B2456

B2394.preheader:
  br label %B2394

B2394.if:
  %.5583 = shl i64 %.5571, 3
  %const_mat695 = add i64 %const694, 1
  %74 = add i64 %.5570, %const_mat695
  %.5584 = icmp ult i64 %74, %const693
  %.5585 = tail call { i64, i1 } @llvm.sadd.with.overflow.i64(i64 %.5583, i64 24)
  %.5587 = extractvalue { i64, i1 } %.5585, 1
  %.5588 = or i1 %.5584, %.5587
  br i1 %.5588, label %B2394.if.if, label %B2394.if.endif

B2394.endif:
  %75 = icmp slt i64 %.5577, %.5571
  br i1 %75, label %B2394.endif.if, label %B2394.endif.endif

B2394.if.if:
  store ptr @n12, ptr %excinfo, align 8
  br label %common.ret

B2394.if.endif:
  %.5586 = extractvalue { i64, i1 } %.5585, 0
  %.5597 = tail call ptr @NRT_MemInfo_varsize_realloc(ptr nonnull %.5484, i64 %.5586)
  %.5598 = icmp eq ptr %.5597, null
  br i1 %.5598, label %B2394.if.endif.if, label %B2394.if.endif.endif

B2394.if.endif.if:
  store ptr @n12, ptr %excinfo, align 8
  br label %common.ret

B2394.if.endif.endif:
  %sunkaddr813 = getelementptr i8, ptr %.5484, i64 24
  %.6.i296 = load ptr, ptr %sunkaddr813, align 8
  %.5609 = getelementptr inbounds nuw i8, ptr %.6.i296, i64 8
  store i64 %.5571, ptr %.5609, align 8
  br label %B2394.endif

B2394.endif.if:
  %.5613 = ashr i64 %.5571, 2
  %.5614 = add i64 %.5613, %.5571
  %.5615 = add i64 %.5614, 8
  %.5617 = shl i64 %.5615, 3
  %const_mat696 = add i64 %const694, 8
  %76 = add i64 %.5614, %const_mat696
  %.5618 = icmp ult i64 %76, %const693
  %.5619 = tail call { i64, i1 } @llvm.sadd.with.overflow.i64(i64 %.5617, i64 24)
  %.5621 = extractvalue { i64, i1 } %.5619, 1
  %.5622 = or i1 %.5618, %.5621
  br i1 %.5622, label %B2394.endif.if.if, label %B2394.endif.if.endif

B2394.endif.endif:
  %sunkaddr814 = getelementptr i8, ptr %.5484, i64 24
  %.6.i298 = load ptr, ptr %sunkaddr814, align 8
  store i64 %.5571, ptr %.6.i298, align 8
  %.6.i300 = load ptr, ptr %sunkaddr814, align 8
  %.5686 = getelementptr inbounds nuw i8, ptr %.6.i300, i64 24
  %.5687 = getelementptr i64, ptr %.5686, i64 %.5570
  store i64 %r.2.0, ptr %.5687, align 8
  %.5719 = getelementptr i64, ptr %.6.i.i153, i64 %r.2.0
  %.5720 = load i64, ptr %.5719, align 8
  %.5725 = icmp sgt i64 %.5720, 3
  br i1 %.5725, label %B2394, label %B2456

B2394.endif.if.if:
  store ptr @n12, ptr %excinfo, align 8
  br label %common.ret

B2394.endif.if.endif:
  %.5620 = extractvalue { i64, i1 } %.5619, 0
  %.5631 = tail call ptr @NRT_MemInfo_varsize_realloc(ptr nonnull %.5484, i64 %.5620)
  %.5632 = icmp eq ptr %.5631, null
  br i1 %.5632, label %B2394.endif.if.endif.if, label %B2394.endif.if.endif.endif

B2394.endif.if.endif.if:
  store ptr @n12, ptr %excinfo, align 8
  br label %common.ret

B2394.endif.if.endif.endif:
  %sunkaddr815 = getelementptr i8, ptr %.5484, i64 24
  %.6.i302 = load ptr, ptr %sunkaddr815, align 8
  %.5643 = getelementptr inbounds nuw i8, ptr %.6.i302, i64 8
  store i64 %.5615, ptr %.5643, align 8
  %.6.i304 = load ptr, ptr %sunkaddr815, align 8
  %.5650 = load i64, ptr %.6.i304, align 8
  %.5655 = getelementptr inbounds nuw i8, ptr %.6.i304, i64 24
  %.5656.idx = shl i64 %.5650, 3
  %.5656 = getelementptr i8, ptr %.5655, i64 %.5656.idx
  %77 = sub i64 %.5615, %.5650
  %gepdiff = shl i64 %77, 3
  tail call void @llvm.memset.p0.i64(ptr align 1 %.5656, i8 0, i64 %gepdiff, i1 false)
  br label %B2394.endif.endif

B2467.endif.endif:
  %.5765.sroa.13.4 = phi i64 [ -1, %B2467.endif.if.endif.endif.endif.thread ], [ %.5823, %B2467.endif.if.endif.endif ]
  %.5866 = sub i64 %.5765.sroa.13.4, %.5823
  %.5871 = sub i64 0, %.5866
  %.5872.inv = icmp slt i64 %.5866, 0
  %.5875 = select i1 %.5872.inv, i64 %.5871, i64 0
  %.5883 = shl i64 %.5875, 3
  %78 = add i64 %.5875, %const694
  %.5884 = icmp ult i64 %78, %const693
  %.5885 = tail call { i64, i1 } @llvm.sadd.with.overflow.i64(i64 %.5883, i64 24)
  %.5887 = extractvalue { i64, i1 } %.5885, 1
  %.5888 = or i1 %.5884, %.5887
  br i1 %.5888, label %B2467.endif.endif.endif.endif.if, label %B2467.endif.endif.endif.if

B2467.endif.if.endif.endif:
  %.5823 = add i64 %.5744, -1
  %.5848 = icmp sgt i64 %.5744, -1
  br i1 %.5848, label %B2467.endif.if.endif.endif.endif.thread, label %B2467.endif.endif

B2467.endif.if.endif.endif.endif.thread:
  br label %B2467.endif.endif

B2467.endif.endif.endif.if:
  %.5886 = extractvalue { i64, i1 } %.5885, 0
  %.5895 = tail call ptr @NRT_MemInfo_new_varsize_dtor(i64 %.5886, ptr nonnull @n73)
  %.5896 = icmp eq ptr %.5895, null
  br i1 %.5896, label %B2467.endif.endif.endif.endif.if, label %B2467.endif.endif.endif.endif.endif.else

B2467.endif.endif.endif.endif.if:
  store ptr @n9, ptr %excinfo, align 8
  br label %common.ret

B2467.endif.endif.endif.endif.endif.else:
  %.5.i305 = getelementptr i8, ptr %.5895, i64 24
  %.6.i306 = load ptr, ptr %.5.i305, align 8
  %.5908 = getelementptr inbounds nuw i8, ptr %.6.i306, i64 8
  store i64 %.5875, ptr %.5908, align 8
  %.6.i308 = load ptr, ptr %.5.i305, align 8
  store i64 0, ptr %.6.i308, align 8
  %.6.i310 = load ptr, ptr %.5.i305, align 8
  %.5920 = getelementptr inbounds nuw i8, ptr %.6.i310, i64 16
  store i8 0, ptr %.5920, align 1
  %.6.i312 = load ptr, ptr %.5.i305, align 8
  %.5933 = getelementptr inbounds nuw i8, ptr %.6.i312, i64 24
  tail call void @llvm.memset.p0.i64(ptr nonnull align 1 %.5933, i8 0, i64 %.5883, i1 false)
  %.6.i314 = load ptr, ptr %.5.i305, align 8
  store i64 %.5875, ptr %.6.i314, align 8
  %.59923042 = icmp slt i64 %.5765.sroa.13.4, %.5823
  br i1 %.59923042, label %for.body.6.preheader, label %B2467.endif.endif.endif.endif.endif.endif

for.body.6.preheader:
  %79 = add i64 %.5744, -2
  %80 = icmp eq i64 %79, %.5765.sroa.13.4
  br i1 %80, label %for.body.6.epil.preheader, label %for.body.6.preheader.new

for.body.6.preheader.new:
  %unroll_iter604 = and i64 %.5871, -2
  br label %for.body.6

B2467.endif.endif.endif.endif.endif.endif.loopexit.unr-lcssa:
  %81 = and i64 %.5871, 1
  %lcmp.mod602.not = icmp eq i64 %81, 0
  %82 = sub i64 %.5823, %.6009.1
  br i1 %lcmp.mod602.not, label %B2467.endif.endif.endif.endif.endif.endif, label %for.body.6.epil.preheader

for.body.6.epil.preheader:
  %loop.count.13044.epil.init = phi i64 [ 0, %for.body.6.preheader ], [ %.6009.1, %B2467.endif.endif.endif.endif.endif.endif.loopexit.unr-lcssa ]
  %loop.index.63043.epil.init = phi i64 [ %.5823, %for.body.6.preheader ], [ %82, %B2467.endif.endif.endif.endif.endif.endif.loopexit.unr-lcssa ]
  %sunkaddr816 = getelementptr i8, ptr %.5484, i64 24
  %.6.i329.epil = load ptr, ptr %sunkaddr816, align 8
  %.5998.epil = getelementptr inbounds nuw i8, ptr %.6.i329.epil, i64 24
  %.5999.epil = getelementptr i64, ptr %.5998.epil, i64 %loop.index.63043.epil.init
  %.6000.epil = load i64, ptr %.5999.epil, align 8
  %sunkaddr817 = getelementptr i8, ptr %.5895, i64 24
  %.6.i331.epil = load ptr, ptr %sunkaddr817, align 8
  %.6005.epil = getelementptr inbounds nuw i8, ptr %.6.i331.epil, i64 24
  %.6006.epil = getelementptr i64, ptr %.6005.epil, i64 %loop.count.13044.epil.init
  store i64 %.6000.epil, ptr %.6006.epil, align 8
  br label %B2467.endif.endif.endif.endif.endif.endif

B2467.endif.endif.endif.endif.endif.endif:
  tail call void @NRT_incref(ptr nonnull %.5895)
  %sunkaddr818 = getelementptr i8, ptr %.5895, i64 24
  %.6.i.i316 = load ptr, ptr %sunkaddr818, align 8
  %.17.i = load i64, ptr %.6.i.i316, align 8
  %83 = add i64 %.17.i, %const694
  %.46.i = icmp ult i64 %83, %const693
  tail call void @NRT_decref(ptr nonnull %.5484)
  br i1 %.46.i, label %B2467.endif.endif.endif.endif.endif.endif.if.if, label %B0.endif.endif.i317

B0.endif.endif.i317:
  %.45.i = shl nsw i64 %.17.i, 3
  %.7.i.i.i318 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 %.45.i, i32 32)
  %.8.i.i.i319 = icmp eq ptr %.7.i.i.i318, null
  br i1 %.8.i.i.i319, label %B2467.endif.endif.endif.endif.endif.endif.if.if, label %B0.endif.endif.endif.i320

B0.endif.endif.endif.i320:
  %.5.i1.i = getelementptr i8, ptr %.7.i.i.i318, i64 24
  %.6.i2.i = load ptr, ptr %.5.i1.i, align 8
  %.10335.i = icmp sgt i64 %.17.i, 0
  br i1 %.10335.i, label %for.body.i.preheader, label %B2525

for.body.i.preheader:
  br label %for.body.i

for.body.i:
  %loop.index36.i = phi i64 [ %.144.i326, %for.body.endif.i ], [ 0, %for.body.i.preheader ]
  %sunkaddr819 = getelementptr i8, ptr %.5895, i64 24
  %.6.i4.i = load ptr, ptr %sunkaddr819, align 8
  %.124.i = load i64, ptr %.6.i4.i, align 8
  %.125.not.i = icmp slt i64 %loop.index36.i, %.124.i
  br i1 %.125.not.i, label %for.body.endif.i, label %B2467.endif.endif.endif.endif.endif.endif.if.if

for.body.endif.i:
  %.137.i = getelementptr inbounds nuw i8, ptr %.6.i4.i, i64 24
  %84 = shl i64 %loop.index36.i, 3
  %scevgep.i325 = getelementptr i8, ptr %.137.i, i64 %84
  %.139.i = load i64, ptr %scevgep.i325, align 8
  %scevgep10.i = getelementptr i8, ptr %.6.i2.i, i64 %84
  store i64 %.139.i, ptr %scevgep10.i, align 8
  %.144.i326 = add nuw nsw i64 %loop.index36.i, 1
  %exitcond.not.i = icmp eq i64 %.17.i, %.144.i326
  br i1 %exitcond.not.i, label %B2525, label %for.body.i

for.body.6:
  %lsr.iv = phi i64 [ %lsr.iv.next, %for.body.6 ], [ %.5744, %for.body.6.preheader.new ]
  %loop.count.13044 = phi i64 [ 0, %for.body.6.preheader.new ], [ %.6009.1, %for.body.6 ]
  %sunkaddr820 = getelementptr i8, ptr %.5484, i64 24
  %.6.i329 = load ptr, ptr %sunkaddr820, align 8
  %scevgep635 = getelementptr i8, ptr %.6.i329, i64 16
  %85 = shl i64 %lsr.iv, 3
  %scevgep636 = getelementptr i8, ptr %scevgep635, i64 %85
  %.6000 = load i64, ptr %scevgep636, align 8
  %sunkaddr821 = getelementptr i8, ptr %.5895, i64 24
  %.6.i331 = load ptr, ptr %sunkaddr821, align 8
  %.6005 = getelementptr inbounds nuw i8, ptr %.6.i331, i64 24
  %86 = shl i64 %loop.count.13044, 3
  %scevgep632 = getelementptr i8, ptr %.6005, i64 %86
  store i64 %.6000, ptr %scevgep632, align 8
  %.6.i329.1 = load ptr, ptr %sunkaddr820, align 8
  %scevgep633 = getelementptr i8, ptr %.6.i329.1, i64 8
  %87 = shl i64 %lsr.iv, 3
  %scevgep634 = getelementptr i8, ptr %scevgep633, i64 %87
  %.6000.1 = load i64, ptr %scevgep634, align 8
  %.6.i331.1 = load ptr, ptr %sunkaddr821, align 8
  %88 = getelementptr i8, ptr %.6.i331.1, i64 32
  %89 = shl i64 %loop.count.13044, 3
  %scevgep631 = getelementptr i8, ptr %88, i64 %89
  store i64 %.6000.1, ptr %scevgep631, align 8
  %.6009.1 = add i64 %loop.count.13044, 2
  %lsr.iv.next = add i64 %lsr.iv, -2
  %niter605.ncmp.1 = icmp eq i64 %unroll_iter604, %.6009.1
  br i1 %niter605.ncmp.1, label %B2467.endif.endif.endif.endif.endif.endif.loopexit.unr-lcssa, label %for.body.6

B2467.endif.endif.endif.endif.endif.endif.if.if:
  %excinfo.24.0.ph = phi ptr [ @n69, %B0.endif.endif.i317 ], [ @n63, %B2467.endif.endif.endif.endif.endif.endif ], [ @n66, %for.body.i ]
  store ptr %excinfo.24.0.ph, ptr %excinfo, align 8
  br label %common.ret

B2525.thread:
  %.5.i.i84 = getelementptr i8, ptr %.7.i.i.i81, i64 24
  %.6.i.i85 = load ptr, ptr %.5.i.i84, align 8
  br label %B2525.endif

B2469.if.if:
  store ptr @n39, ptr %excinfo, align 8
  br label %common.ret

.6185:
  %.6249.03047 = phi i64 [ 0, %.6185.preheader.new ], [ %.6297.1, %.6185 ]
  %sunkaddr822 = mul i64 %.6249.03047, 8
  %sunkaddr823 = getelementptr i8, ptr %"$phi2456.0.2.sroa.32.0486", i64 %sunkaddr822
  %.6286 = load i64, ptr %sunkaddr823, align 8
  %.6287 = icmp slt i64 %.6286, 0
  %.6288 = select i1 %.6287, i64 %.244, i64 0
  %90 = getelementptr i64, ptr %.6.i.i168, i64 %.6286
  %.6292 = getelementptr i64, ptr %90, i64 %.6288
  %.6293 = load i64, ptr %.6292, align 8
  %sunkaddr824 = mul i64 %.6249.03047, 8
  %sunkaddr825 = getelementptr i8, ptr %.6.i339, i64 %sunkaddr824
  store i64 %.6293, ptr %sunkaddr825, align 8
  %sunkaddr826 = mul i64 %.6249.03047, 8
  %sunkaddr827 = getelementptr i8, ptr %"$phi2456.0.2.sroa.32.0486", i64 %sunkaddr826
  %sunkaddr828 = getelementptr i8, ptr %sunkaddr827, i64 8
  %.6286.1 = load i64, ptr %sunkaddr828, align 8
  %.6287.1 = icmp slt i64 %.6286.1, 0
  %.6288.1 = select i1 %.6287.1, i64 %.244, i64 0
  %91 = getelementptr i64, ptr %.6.i.i168, i64 %.6286.1
  %.6292.1 = getelementptr i64, ptr %91, i64 %.6288.1
  %.6293.1 = load i64, ptr %.6292.1, align 8
  %sunkaddr829 = mul i64 %.6249.03047, 8
  %sunkaddr830 = getelementptr i8, ptr %.6.i339, i64 %sunkaddr829
  %sunkaddr831 = getelementptr i8, ptr %sunkaddr830, i64 8
  store i64 %.6293.1, ptr %sunkaddr831, align 8
  %.6297.1 = add nuw i64 %.6249.03047, 2
  %niter610.ncmp.1 = icmp eq i64 %unroll_iter609, %.6297.1
  br i1 %niter610.ncmp.1, label %.6182.endif.loopexit.unr-lcssa, label %.6185

B2525.endif:
  %.6194487 = phi i64 [ 0, %B2525.thread ], [ %.45.i, %B2525 ]
  %"$phi2456.0.2.sroa.32.0486" = phi ptr [ %.6.i.i85, %B2525.thread ], [ %.6.i2.i, %B2525 ]
  %"$phi2456.0.2.sroa.40.0485" = phi i64 [ 0, %B2525.thread ], [ %.17.i, %B2525 ]
  %.6088.fca.0.load.sink3233484 = phi ptr [ %.7.i.i.i81, %B2525.thread ], [ %.7.i.i.i318, %B2525 ]
  %.7.i.i332 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 %.6194487, i32 32)
  %.8.i.i333 = icmp eq ptr %.7.i.i332, null
  br i1 %.8.i.i333, label %B2525.endif.if.if, label %B2525.endif.endif

B2525.endif.endif:
  %.5.i338 = getelementptr i8, ptr %.7.i.i332, i64 24
  %.6.i339 = load ptr, ptr %.5.i338, align 8
  %.6254.not3045 = icmp sgt i64 %"$phi2456.0.2.sroa.40.0485", 0
  br i1 %.6254.not3045, label %.6185.preheader, label %.6182.endif

.6185.preheader:
  %92 = icmp eq i64 %"$phi2456.0.2.sroa.40.0485", 1
  br i1 %92, label %.6185.epil.preheader, label %.6185.preheader.new

.6185.preheader.new:
  %unroll_iter609 = and i64 %"$phi2456.0.2.sroa.40.0485", %const
  br label %.6185

B2525.endif.if.if:
  store ptr @n54, ptr %excinfo, align 8
  br label %common.ret

.6356.loopexit.unr-lcssa:
  %93 = and i64 %"$phi2456.0.2.sroa.40.0485", 1
  %lcmp.mod612.not = icmp eq i64 %93, 0
  br i1 %lcmp.mod612.not, label %.6356, label %.6359.epil.preheader

.6359.epil.preheader:
  %.6423.03050.epil.init = phi i64 [ 0, %.6359.preheader ], [ %.6471.1, %.6356.loopexit.unr-lcssa ]
  %.6459.epil = getelementptr i64, ptr %"$phi2456.0.2.sroa.32.0486", i64 %.6423.03050.epil.init
  %.6460.epil = load i64, ptr %.6459.epil, align 8
  %.6461.epil = icmp slt i64 %.6460.epil, 0
  %.6462.epil = select i1 %.6461.epil, i64 %.244, i64 0
  %94 = getelementptr i64, ptr %.6.i.i181, i64 %.6460.epil
  %.6466.epil = getelementptr i64, ptr %94, i64 %.6462.epil
  %.6467.epil = load i64, ptr %.6466.epil, align 8
  %.6469.epil = getelementptr i64, ptr %.6.i347, i64 %.6423.03050.epil.init
  store i64 %.6467.epil, ptr %.6469.epil, align 8
  br label %.6356

.6356:
  %.6496 = icmp slt i64 %r.3.1, 0
  %.6497 = select i1 %.6496, i64 %.244, i64 0
  %95 = getelementptr i64, ptr %.6.i.i181, i64 %r.3.1
  %.6511 = getelementptr i64, ptr %95, i64 %.6497
  %.6512 = load i64, ptr %.6511, align 8
  %.6520 = add nsw i64 %.6512, -10
  store ptr %.7.i.i332, ptr %retptr, align 8
  %retptr.repack2769 = getelementptr inbounds nuw i8, ptr %retptr, i64 8
  store ptr null, ptr %retptr.repack2769, align 8
  %retptr.repack2771 = getelementptr inbounds nuw i8, ptr %retptr, i64 16
  store i64 %"$phi2456.0.2.sroa.40.0485", ptr %retptr.repack2771, align 8
  %retptr.repack2773 = getelementptr inbounds nuw i8, ptr %retptr, i64 24
  store i64 8, ptr %retptr.repack2773, align 8
  %retptr.repack2775 = getelementptr inbounds nuw i8, ptr %retptr, i64 32
  store ptr %.6.i339, ptr %retptr.repack2775, align 8
  %retptr.repack2777 = getelementptr inbounds nuw i8, ptr %retptr, i64 40
  store i64 %"$phi2456.0.2.sroa.40.0485", ptr %retptr.repack2777, align 8
  %retptr.repack2779 = getelementptr inbounds nuw i8, ptr %retptr, i64 48
  store i64 8, ptr %retptr.repack2779, align 8
  %retptr.repack2765 = getelementptr inbounds nuw i8, ptr %retptr, i64 56
  store ptr %.7.i.i340, ptr %retptr.repack2765, align 8
  %retptr.repack2765.repack2781 = getelementptr inbounds nuw i8, ptr %retptr, i64 64
  store ptr null, ptr %retptr.repack2765.repack2781, align 8
  %retptr.repack2765.repack2783 = getelementptr inbounds nuw i8, ptr %retptr, i64 72
  store i64 %"$phi2456.0.2.sroa.40.0485", ptr %retptr.repack2765.repack2783, align 8
  %retptr.repack2765.repack2785 = getelementptr inbounds nuw i8, ptr %retptr, i64 80
  store i64 8, ptr %retptr.repack2765.repack2785, align 8
  %retptr.repack2765.repack2787 = getelementptr inbounds nuw i8, ptr %retptr, i64 88
  store ptr %.6.i347, ptr %retptr.repack2765.repack2787, align 8
  %retptr.repack2765.repack2789 = getelementptr inbounds nuw i8, ptr %retptr, i64 96
  store i64 %"$phi2456.0.2.sroa.40.0485", ptr %retptr.repack2765.repack2789, align 8
  %retptr.repack2765.repack2791 = getelementptr inbounds nuw i8, ptr %retptr, i64 104
  store i64 8, ptr %retptr.repack2765.repack2791, align 8
  %retptr.repack2767 = getelementptr inbounds nuw i8, ptr %retptr, i64 112
  store i64 %.6520, ptr %retptr.repack2767, align 8
  tail call void @NRT_decref(ptr nonnull %.6088.fca.0.load.sink3233484)
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i177)
  br label %common.ret

.6359:
  %.6423.03050 = phi i64 [ 0, %.6359.preheader.new ], [ %.6471.1, %.6359 ]
  %sunkaddr832 = mul i64 %.6423.03050, 8
  %sunkaddr833 = getelementptr i8, ptr %"$phi2456.0.2.sroa.32.0486", i64 %sunkaddr832
  %.6460 = load i64, ptr %sunkaddr833, align 8
  %.6461 = icmp slt i64 %.6460, 0
  %.6462 = select i1 %.6461, i64 %.244, i64 0
  %96 = getelementptr i64, ptr %.6.i.i181, i64 %.6460
  %.6466 = getelementptr i64, ptr %96, i64 %.6462
  %.6467 = load i64, ptr %.6466, align 8
  %sunkaddr834 = mul i64 %.6423.03050, 8
  %sunkaddr835 = getelementptr i8, ptr %.6.i347, i64 %sunkaddr834
  store i64 %.6467, ptr %sunkaddr835, align 8
  %sunkaddr836 = mul i64 %.6423.03050, 8
  %sunkaddr837 = getelementptr i8, ptr %"$phi2456.0.2.sroa.32.0486", i64 %sunkaddr836
  %sunkaddr838 = getelementptr i8, ptr %sunkaddr837, i64 8
  %.6460.1 = load i64, ptr %sunkaddr838, align 8
  %.6461.1 = icmp slt i64 %.6460.1, 0
  %.6462.1 = select i1 %.6461.1, i64 %.244, i64 0
  %97 = getelementptr i64, ptr %.6.i.i181, i64 %.6460.1
  %.6466.1 = getelementptr i64, ptr %97, i64 %.6462.1
  %.6467.1 = load i64, ptr %.6466.1, align 8
  %sunkaddr839 = mul i64 %.6423.03050, 8
  %sunkaddr840 = getelementptr i8, ptr %.6.i347, i64 %sunkaddr839
  %sunkaddr841 = getelementptr i8, ptr %sunkaddr840, i64 8
  store i64 %.6467.1, ptr %sunkaddr841, align 8
  %.6471.1 = add nuw i64 %.6423.03050, 2
  %niter615.ncmp.1 = icmp eq i64 %unroll_iter614, %.6471.1
  br i1 %niter615.ncmp.1, label %.6356.loopexit.unr-lcssa, label %.6359

.6182.endif.loopexit.unr-lcssa:
  %98 = and i64 %"$phi2456.0.2.sroa.40.0485", 1
  %lcmp.mod607.not = icmp eq i64 %98, 0
  br i1 %lcmp.mod607.not, label %.6182.endif, label %.6185.epil.preheader

.6185.epil.preheader:
  %.6249.03047.epil.init = phi i64 [ 0, %.6185.preheader ], [ %.6297.1, %.6182.endif.loopexit.unr-lcssa ]
  %.6285.epil = getelementptr i64, ptr %"$phi2456.0.2.sroa.32.0486", i64 %.6249.03047.epil.init
  %.6286.epil = load i64, ptr %.6285.epil, align 8
  %.6287.epil = icmp slt i64 %.6286.epil, 0
  %.6288.epil = select i1 %.6287.epil, i64 %.244, i64 0
  %99 = getelementptr i64, ptr %.6.i.i168, i64 %.6286.epil
  %.6292.epil = getelementptr i64, ptr %99, i64 %.6288.epil
  %.6293.epil = load i64, ptr %.6292.epil, align 8
  %.6295.epil = getelementptr i64, ptr %.6.i339, i64 %.6249.03047.epil.init
  store i64 %.6293.epil, ptr %.6295.epil, align 8
  br label %.6182.endif

.6182.endif:
  tail call void @NRT_decref(ptr nonnull %.7.i.i.i164)
  %.7.i.i340 = tail call ptr @NRT_MemInfo_alloc_aligned(i64 %.6194487, i32 32)
  %.8.i.i341 = icmp eq ptr %.7.i.i340, null
  br i1 %.8.i.i341, label %.6182.endif.if.if, label %.6182.endif.endif

.6182.endif.endif:
  %100 = icmp sgt i64 %"$phi2456.0.2.sroa.40.0485", 0
  %.5.i346 = getelementptr i8, ptr %.7.i.i340, i64 24
  %.6.i347 = load ptr, ptr %.5.i346, align 8
  br i1 %100, label %.6359.preheader, label %.6356

.6359.preheader:
  %101 = icmp eq i64 %"$phi2456.0.2.sroa.40.0485", 1
  br i1 %101, label %.6359.epil.preheader, label %.6359.preheader.new

.6359.preheader.new:
  %unroll_iter614 = and i64 %"$phi2456.0.2.sroa.40.0485", %const
  br label %.6359

.6182.endif.if.if:
  store ptr @n54, ptr %excinfo, align 8
  br label %common.ret
}

declare i64 @llvm.smin.i64(i64, i64) #1

declare void @llvm.memset.p0.i64(ptr writeonly captures(none), i8, i64, i1 immarg) #2

declare double @llvm.exp.f64(double) #1

declare double @llvm.log.f64(double) #1

declare double @llvm.fabs.f64(double) #1

define internal range(i32 0, 2) i32 @n72(ptr noalias writeonly captures(none) %retptr, ptr noalias writeonly captures(none) %excinfo, ptr %arg.a.0, ptr readnone captures(none) %arg.a.1, i64 %arg.a.2, i64 %arg.a.3, ptr %arg.a.4, i64 %arg.a.5.0, i64 %arg.a.6.0) local_unnamed_addr {
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
  store ptr @n57, ptr %excinfo, align 8
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
  %.6.i.inv = fcmp olt double %.434, %min_value.2.0259
  %min_value.2.0..434 = select i1 %.6.i.inv, double %.434, double %min_value.2.0259
  %exitcond.not = icmp eq i64 %arg.a.2, %.380
  br i1 %exitcond.not, label %B300.critedge, label %B196.endif

B300.critedge:
  %min_value.2.0.lcssa = phi double [ %.119.i, %B192 ], [ %min_value.2.0..434, %B196.backedge ]
  store double %min_value.2.0.lcssa, ptr %retptr, align 8
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
  store ptr @n60, ptr %excinfo, align 8
  br label %common.ret

B196.endif:
  %min_value.2.0259 = phi double [ %min_value.2.0..434, %B196.backedge ], [ %.119.i, %B196.endif.preheader ]
  %.380254258 = phi i64 [ %.380, %B196.backedge ], [ %.89.0, %B196.endif.preheader ]
  %1 = shl i64 %.380254258, 3
  %scevgep = getelementptr i8, ptr %arg.a.4, i64 %1
  %.434 = load double, ptr %scevgep, align 8
  %.447.le = fcmp uno double %.434, 0.000000e+00
  br i1 %.447.le, label %B262, label %B196.backedge
}

define internal void @n73(ptr %.1) {
.3:
  ret void
}

declare { i64, i1 } @llvm.sadd.with.overflow.i64(i64, i64) #1

declare void @llvm.lifetime.start.p0(ptr captures(none)) #3

declare void @llvm.lifetime.end.p0(ptr captures(none)) #3

define i32 @call__track(ptr %given, ptr %answer) {
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
  %in7 = load ptr, ptr %at7, align 8
  %at8 = getelementptr i64, ptr %given, i64 8
  %in8 = load ptr, ptr %at8, align 8
  %at9 = getelementptr i64, ptr %given, i64 9
  %in9 = load i64, ptr %at9, align 8
  %at10 = getelementptr i64, ptr %given, i64 10
  %in10 = load i64, ptr %at10, align 8
  %at11 = getelementptr i64, ptr %given, i64 11
  %in11 = load ptr, ptr %at11, align 8
  %at12 = getelementptr i64, ptr %given, i64 12
  %in12 = load i64, ptr %at12, align 8
  %at13 = getelementptr i64, ptr %given, i64 13
  %in13 = load i64, ptr %at13, align 8
  %at14 = getelementptr i64, ptr %given, i64 14
  %in14 = load ptr, ptr %at14, align 8
  %at15 = getelementptr i64, ptr %given, i64 15
  %in15 = load ptr, ptr %at15, align 8
  %at16 = getelementptr i64, ptr %given, i64 16
  %in16 = load i64, ptr %at16, align 8
  %at17 = getelementptr i64, ptr %given, i64 17
  %in17 = load i64, ptr %at17, align 8
  %at18 = getelementptr i64, ptr %given, i64 18
  %in18 = load ptr, ptr %at18, align 8
  %at19 = getelementptr i64, ptr %given, i64 19
  %in19 = load i64, ptr %at19, align 8
  %at20 = getelementptr i64, ptr %given, i64 20
  %in20 = load i64, ptr %at20, align 8
  %at21 = getelementptr i64, ptr %given, i64 21
  %in21 = load i64, ptr %at21, align 8
  %status = call i32 @n71(ptr %answer, ptr %failed, ptr %in0, ptr %in1, i64 %in2, i64 %in3, ptr %in4, i64 %in5, i64 %in6, ptr %in7, ptr %in8, i64 %in9, i64 %in10, ptr %in11, i64 %in12, i64 %in13, ptr %in14, ptr %in15, i64 %in16, i64 %in17, ptr %in18, i64 %in19, i64 %in20, i64 %in21)
  ret i32 %status
}

attributes #0 = { nounwind }
attributes #1 = { nounwind }
attributes #2 = { nounwind }
attributes #3 = { nounwind }
