// Vectors of LANES numbers: one lane is one cook. Operators work lane by lane, so that formulas read as for one cook.
// With ONE_COOK a lane is a piece class of the only cook instead: for a question that cannot wait for others.
//
// No intrinsics and no library: the compiler of any processor splits these vectors as its registers need.
#pragma once

#ifndef LANES
#define LANES 8
#endif
#ifndef ONE_COOK
#define ONE_COOK 0
#endif

typedef double V __attribute__((vector_size(8 * LANES)));     // a number in every lane
typedef long long M __attribute__((vector_size(8 * LANES)));  // yes (all bits) or no (0) in every lane
typedef long long Count;
constexpr int COOK_LANES = ONE_COOK ? LANES : 1;

#define INLINE static inline __attribute__((always_inline))
#define INLINE_MEMBER __attribute__((always_inline))

INLINE V all(double x) { return x - V{}; }
INLINE M yes() { return V{} == V{}; }
INLINE V pick(M where, V a, V b) { return where ? a : b; }
INLINE V pick(M where, double a, V b) { return where ? all(a) : b; }
INLINE V pick(M where, V a, double b) { return where ? a : all(b); }
INLINE V pick(M where, double a, double b) { return where ? all(a) : all(b); }
INLINE V least(V a, V b) { return a < b ? a : b; }
INLINE V most(V a, V b) { return a > b ? a : b; }
INLINE V least(V a, double b) { return least(a, all(b)); }
INLINE V most(V a, double b) { return most(a, all(b)); }
INLINE V between(V x, V low, V high) { return least(most(x, low), high); }
INLINE V size_of(V x) { return __builtin_elementwise_abs(x); }
INLINE V root(V x) { return __builtin_elementwise_sqrt(x); }
INLINE bool any(M m) { return __builtin_reduce_or(m) != 0; }
INLINE void put(V &target, M where, V value) { target = where ? value : target; }
INLINE void put(V &target, M where, double value) { target = where ? all(value) : target; }
INLINE void put(M &target, M where, M value) { target = (value & where) | (target & ~where); }

// What concerns all piece classes of a cook: over the classes in their order, whether they are rows or lanes, so that the
// answer is the same to the bit. `x` is what the rows have come to; where lanes are classes, each gets what they come to.
INLINE V sum_of_classes(V x) {
  if (!ONE_COOK) return x;
  double sum = x[0];
  for (int l = 1; l < LANES; ++l) sum += x[l];
  return all(sum);
}
INLINE V least_of_classes(V x) { return ONE_COOK ? all(__builtin_reduce_min(x)) : x; }
INLINE V most_of_classes(V x) { return ONE_COOK ? all(__builtin_reduce_max(x)) : x; }
INLINE M any_of_classes(M m) { return ONE_COOK ? (any(m) ? yes() : M{}) : m; }

// exp(x) for -700 < x < 700: 2^k exp(r) with |r| <= ln2/2, series to r^13 / 13! (below one unit in the last place).
INLINE V exponential(V x) {
  x = between(x, all(-700.0), all(700.0));
  V shifted = x * 1.4426950408889634 + 6755399441055744.0;
  V k = shifted - 6755399441055744.0;
  V r = x - k * 0.6931471805599453 - k * 2.3190468138462996e-17;
  V sum = all(1.0 / 6227020800.0);
  const double terms[] = {1.0 / 479001600.0, 1.0 / 39916800.0, 1.0 / 3628800.0, 1.0 / 362880.0, 1.0 / 40320.0,
                          1.0 / 5040.0,      1.0 / 720.0,      1.0 / 120.0,     1.0 / 24.0,     1.0 / 6.0,
                          0.5,               1.0,              1.0};
#pragma clang loop unroll(full)
  for (int i = 0; i < 13; ++i) sum = sum * r + terms[i];
  M power = (M)shifted << 52;  // the low bits of the shifted number are k
  return (V)((M)sum + power);
}
