; Kernels of source sha256 b912fb3f3775c003077d5c451b0d52c43bc11c5d49e2caad148c9e0e4fdf7eef
; Signatures {"_serve": [[["<i8", 2], ["<i8", 2], "q", ["<i8", 2], ["<i8", 2], ["<i8", 2]], "0"]}
@n0 = internal unnamed_addr global ptr null, align 8

declare void @free(ptr noundef) local_unnamed_addr #0

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

define void @chance_of_threads(ptr noundef %0) local_unnamed_addr #0 {
  store ptr %0, ptr @n0, align 8
  ret void
}

define noundef i64 @chance_bytes() local_unnamed_addr #0 {
  ret i64 2520
}

define internal noundef range(i32 -1, -2) i32 @n1(ptr noalias writeonly captures(none) %retptr, ptr noalias readnone captures(none) %excinfo, ptr %arg.made.0, ptr readnone captures(none) %arg.made.1, i64 %arg.made.2, i64 %arg.made.3, ptr readonly captures(none) %arg.made.4, i64 %arg.made.5.0, i64 %arg.made.5.1, i64 %arg.made.6.0, i64 %arg.made.6.1, ptr %arg.asked.0, ptr readnone captures(none) %arg.asked.1, i64 %arg.asked.2, i64 %arg.asked.3, ptr readonly captures(none) %arg.asked.4, i64 %arg.asked.5.0, i64 %arg.asked.5.1, i64 %arg.asked.6.0, i64 %arg.asked.6.1, i64 %arg.hold, ptr %arg.sold.0, ptr readnone captures(none) %arg.sold.1, i64 %arg.sold.2, i64 %arg.sold.3, ptr writeonly captures(none) %arg.sold.4, i64 %arg.sold.5.0, i64 %arg.sold.5.1, i64 %arg.sold.6.0, i64 %arg.sold.6.1, ptr %arg.wasted.0, ptr readnone captures(none) %arg.wasted.1, i64 %arg.wasted.2, i64 %arg.wasted.3, ptr captures(none) %arg.wasted.4, i64 %arg.wasted.5.0, i64 %arg.wasted.5.1, i64 %arg.wasted.6.0, i64 %arg.wasted.6.1, ptr %arg.left.0, ptr readnone captures(none) %arg.left.1, i64 %arg.left.2, i64 %arg.left.3, ptr writeonly captures(none) %arg.left.4, i64 %arg.left.5.0, i64 %arg.left.5.1, i64 %arg.left.6.0, i64 %arg.left.6.1) {
B0.endif:
  %invariant.gep = getelementptr i64, ptr %arg.wasted.4, i64 %arg.wasted.5.1
  %.203374.not = icmp slt i64 %arg.asked.5.0, 1
  %.347359.not = icmp slt i64 %arg.asked.5.1, 1
  %or.cond = select i1 %.203374.not, i1 true, i1 %.347359.not
  br i1 %or.cond, label %common.ret, label %B58.endif.us.preheader

B58.endif.us.preheader:
  %0 = mul i64 %arg.hold, -8
  %scevgep = getelementptr i8, ptr %arg.made.4, i64 %0
  %1 = shl i64 %arg.made.5.1, 3
  %2 = shl i64 %arg.left.5.1, 3
  %3 = shl i64 %arg.sold.5.1, 3
  %4 = shl i64 %arg.asked.5.1, 3
  %5 = shl i64 %arg.wasted.5.1, 3
  br label %B58.endif.us

B58.endif.us:
  %lsr.iv16 = phi ptr [ %arg.made.4, %B58.endif.us.preheader ], [ %scevgep17, %B124.B334_crit_edge.us ]
  %lsr.iv13 = phi ptr [ %arg.wasted.4, %B58.endif.us.preheader ], [ %scevgep14, %B124.B334_crit_edge.us ]
  %lsr.iv10 = phi ptr [ %arg.asked.4, %B58.endif.us.preheader ], [ %scevgep11, %B124.B334_crit_edge.us ]
  %lsr.iv7 = phi ptr [ %arg.sold.4, %B58.endif.us.preheader ], [ %scevgep8, %B124.B334_crit_edge.us ]
  %lsr.iv4 = phi ptr [ %arg.left.4, %B58.endif.us.preheader ], [ %scevgep5, %B124.B334_crit_edge.us ]
  %lsr.iv = phi ptr [ %scevgep, %B58.endif.us.preheader ], [ %scevgep2, %B124.B334_crit_edge.us ]
  %.209369375.us = phi i64 [ %.216.us, %B124.B334_crit_edge.us ], [ 0, %B58.endif.us.preheader ]
  %.587.us = mul i64 %.209369375.us, %arg.wasted.5.1
  br label %B126.us

B126.us:
  %expired.2.1364.us = phi i64 [ 0, %B58.endif.us ], [ %expired.3.2.us, %B234.endif.us ]
  %gone.3.1363.us = phi i64 [ 0, %B58.endif.us ], [ %.751.us, %B234.endif.us ]
  %available.2.1362.us = phi i64 [ 0, %B58.endif.us ], [ %.449.us, %B234.endif.us ]
  %.353358360.us = phi i64 [ 0, %B58.endif.us ], [ %.360.us, %B234.endif.us ]
  %.360.us = add nuw nsw i64 %.353358360.us, 1
  %6 = shl i64 %.353358360.us, 3
  %scevgep18 = getelementptr i8, ptr %lsr.iv16, i64 %6
  %.445.us = load i64, ptr %scevgep18, align 8
  %.449.us = add nsw i64 %.445.us, %available.2.1362.us
  %.457.not.us = icmp slt i64 %.353358360.us, %arg.hold
  br i1 %.457.not.us, label %B198.us, label %B166.us

B166.us:
  %7 = shl i64 %.353358360.us, 3
  %scevgep3 = getelementptr i8, ptr %lsr.iv, i64 %7
  %.514.us = load i64, ptr %scevgep3, align 8
  %.518.us = add nsw i64 %.514.us, %expired.2.1364.us
  br label %B198.us

B198.us:
  %expired.3.2.us = phi i64 [ %.518.us, %B166.us ], [ %expired.2.1364.us, %B126.us ]
  %.532.us = icmp sgt i64 %expired.3.2.us, %gone.3.1363.us
  br i1 %.532.us, label %B210.us, label %B234.endif.us

B210.us:
  %.536.us = sub nsw i64 %expired.3.2.us, %gone.3.1363.us
  %8 = shl i64 %.353358360.us, 3
  %scevgep15 = getelementptr i8, ptr %lsr.iv13, i64 %8
  store i64 %.536.us, ptr %scevgep15, align 8
  br label %B234.endif.us

B234.endif.us:
  %gone.4.2.us = phi i64 [ %expired.3.2.us, %B210.us ], [ %gone.3.1363.us, %B198.us ]
  %9 = shl i64 %.353358360.us, 3
  %scevgep12 = getelementptr i8, ptr %lsr.iv10, i64 %9
  %.660.us = load i64, ptr %scevgep12, align 8
  %.665.us = sub nsw i64 %.449.us, %gone.4.2.us
  %.13.i = tail call i64 @llvm.smin.i64(i64 %.665.us, i64 %.660.us)
  %10 = shl i64 %.353358360.us, 3
  %scevgep9 = getelementptr i8, ptr %lsr.iv7, i64 %10
  store i64 %.13.i, ptr %scevgep9, align 8
  %.751.us = add nsw i64 %.13.i, %gone.4.2.us
  %.757.us = sub i64 %.449.us, %.751.us
  %11 = shl i64 %.353358360.us, 3
  %scevgep6 = getelementptr i8, ptr %lsr.iv4, i64 %11
  store i64 %.757.us, ptr %scevgep6, align 8
  %exitcond.not = icmp eq i64 %arg.asked.5.1, %.360.us
  br i1 %exitcond.not, label %B124.B334_crit_edge.us, label %B126.us

B124.B334_crit_edge.us:
  %.216.us = add nuw nsw i64 %.209369375.us, 1
  %gep.us = getelementptr i64, ptr %invariant.gep, i64 %.587.us
  %.880.us = getelementptr i8, ptr %gep.us, i64 -8
  %.881.us = load i64, ptr %.880.us, align 8
  %.889.us = add nsw i64 %.881.us, %.757.us
  store i64 %.889.us, ptr %.880.us, align 8
  %scevgep2 = getelementptr i8, ptr %lsr.iv, i64 %1
  %scevgep5 = getelementptr i8, ptr %lsr.iv4, i64 %2
  %scevgep8 = getelementptr i8, ptr %lsr.iv7, i64 %3
  %scevgep11 = getelementptr i8, ptr %lsr.iv10, i64 %4
  %scevgep14 = getelementptr i8, ptr %lsr.iv13, i64 %5
  %scevgep17 = getelementptr i8, ptr %lsr.iv16, i64 %1
  %exitcond395.not = icmp eq i64 %.216.us, %arg.asked.5.0
  br i1 %exitcond395.not, label %common.ret, label %B58.endif.us

common.ret:
  store ptr null, ptr %retptr, align 8
  ret i32 0
}

declare i64 @llvm.smin.i64(i64, i64) #1

define i32 @call__serve(ptr %given, ptr %answer) {
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
  %in18 = load i64, ptr %at18, align 8
  %at19 = getelementptr i64, ptr %given, i64 19
  %in19 = load ptr, ptr %at19, align 8
  %at20 = getelementptr i64, ptr %given, i64 20
  %in20 = load ptr, ptr %at20, align 8
  %at21 = getelementptr i64, ptr %given, i64 21
  %in21 = load i64, ptr %at21, align 8
  %at22 = getelementptr i64, ptr %given, i64 22
  %in22 = load i64, ptr %at22, align 8
  %at23 = getelementptr i64, ptr %given, i64 23
  %in23 = load ptr, ptr %at23, align 8
  %at24 = getelementptr i64, ptr %given, i64 24
  %in24 = load i64, ptr %at24, align 8
  %at25 = getelementptr i64, ptr %given, i64 25
  %in25 = load i64, ptr %at25, align 8
  %at26 = getelementptr i64, ptr %given, i64 26
  %in26 = load i64, ptr %at26, align 8
  %at27 = getelementptr i64, ptr %given, i64 27
  %in27 = load i64, ptr %at27, align 8
  %at28 = getelementptr i64, ptr %given, i64 28
  %in28 = load ptr, ptr %at28, align 8
  %at29 = getelementptr i64, ptr %given, i64 29
  %in29 = load ptr, ptr %at29, align 8
  %at30 = getelementptr i64, ptr %given, i64 30
  %in30 = load i64, ptr %at30, align 8
  %at31 = getelementptr i64, ptr %given, i64 31
  %in31 = load i64, ptr %at31, align 8
  %at32 = getelementptr i64, ptr %given, i64 32
  %in32 = load ptr, ptr %at32, align 8
  %at33 = getelementptr i64, ptr %given, i64 33
  %in33 = load i64, ptr %at33, align 8
  %at34 = getelementptr i64, ptr %given, i64 34
  %in34 = load i64, ptr %at34, align 8
  %at35 = getelementptr i64, ptr %given, i64 35
  %in35 = load i64, ptr %at35, align 8
  %at36 = getelementptr i64, ptr %given, i64 36
  %in36 = load i64, ptr %at36, align 8
  %at37 = getelementptr i64, ptr %given, i64 37
  %in37 = load ptr, ptr %at37, align 8
  %at38 = getelementptr i64, ptr %given, i64 38
  %in38 = load ptr, ptr %at38, align 8
  %at39 = getelementptr i64, ptr %given, i64 39
  %in39 = load i64, ptr %at39, align 8
  %at40 = getelementptr i64, ptr %given, i64 40
  %in40 = load i64, ptr %at40, align 8
  %at41 = getelementptr i64, ptr %given, i64 41
  %in41 = load ptr, ptr %at41, align 8
  %at42 = getelementptr i64, ptr %given, i64 42
  %in42 = load i64, ptr %at42, align 8
  %at43 = getelementptr i64, ptr %given, i64 43
  %in43 = load i64, ptr %at43, align 8
  %at44 = getelementptr i64, ptr %given, i64 44
  %in44 = load i64, ptr %at44, align 8
  %at45 = getelementptr i64, ptr %given, i64 45
  %in45 = load i64, ptr %at45, align 8
  %status = call i32 @n1(ptr %answer, ptr %failed, ptr %in0, ptr %in1, i64 %in2, i64 %in3, ptr %in4, i64 %in5, i64 %in6, i64 %in7, i64 %in8, ptr %in9, ptr %in10, i64 %in11, i64 %in12, ptr %in13, i64 %in14, i64 %in15, i64 %in16, i64 %in17, i64 %in18, ptr %in19, ptr %in20, i64 %in21, i64 %in22, ptr %in23, i64 %in24, i64 %in25, i64 %in26, i64 %in27, ptr %in28, ptr %in29, i64 %in30, i64 %in31, ptr %in32, i64 %in33, i64 %in34, i64 %in35, i64 %in36, ptr %in37, ptr %in38, i64 %in39, i64 %in40, ptr %in41, i64 %in42, i64 %in43, i64 %in44, i64 %in45)
  ret i32 %status
}

attributes #0 = { nounwind }
attributes #1 = { nounwind }
