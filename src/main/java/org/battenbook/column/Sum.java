package org.battenbook.column;

import static org.battenbook.number.Longs.cappedProduct;
import static org.battenbook.number.Longs.cappedSum;

import org.battenbook.number.Real;
import org.jspecify.annotations.Nullable;

/** Sums and differences: both sides counted in their common tick, one multiplication each. */
final class Sum {
  private static final KernelDispatch SUM =
      new KernelDispatch(
          (a, b) -> longs(a, b, 1),
          (a, b) -> wides(a, b, 1),
          (a, b) -> ratios(a, b, 1),
          (a, b) -> RealLane.zip(a, b, Real::plus));

  private static final KernelDispatch DIFFERENCE =
      new KernelDispatch(
          (a, b) -> longs(a, b, -1),
          (a, b) -> wides(a, b, -1),
          (a, b) -> ratios(a, b, -1),
          (a, b) -> RealLane.zip(a, b, Real::minus));

  private Sum() {}

  static NumberLane of(NumberLane a, NumberLane b) {
    Constant both = Constant.both(a, b, Real::plus);
    return both != null ? both : SUM.run(a, b);
  }

  static NumberLane difference(NumberLane a, NumberLane b) {
    Constant both = Constant.both(a, b, Real::minus);
    return both != null ? both : DIFFERENCE.run(a, b);
  }

  private static @Nullable LongLane longs(LongLane a, LongLane b, long sign) {
    CommonTick common = CommonTick.of(a, b);
    if (common == null) {
      return null;
    }
    long most =
        cappedSum(cappedProduct(a.most, common.left()), cappedProduct(b.most, common.right()));
    return most == Long.MAX_VALUE
        ? null
        : new LongLane(
            sum(a.ticks, common.left(), b.ticks, sign * common.right()), common.tick(), most);
  }

  private static long[] sum(long[] a, long byA, long[] b, long byB) {
    long[] sum = new long[a.length];
    if (byA == 1 && byB == 1) {
      for (int row = 0; row < sum.length; row++) {
        sum[row] = a[row] + b[row];
      }
    } else {
      for (int row = 0; row < sum.length; row++) {
        sum[row] = a[row] * byA + b[row] * byB;
      }
    }
    return sum;
  }

  private static @Nullable WideLane wides(WideLane a, WideLane b, long sign) {
    CommonTick common = CommonTick.of(a, b);
    if (common == null) {
      return null;
    }
    WideLane left = a.inTick(common.tick(), common.left());
    WideLane right = b.inTick(common.tick(), sign * common.right());
    return left == null || right == null || !WideLane.fits(left.most.add(right.most))
        ? null
        : wideSum(left, right);
  }

  private static WideLane wideSum(WideLane a, WideLane b) {
    long[] high = new long[a.rows()];
    long[] low = new long[a.rows()];
    for (int row = 0; row < high.length; row++) {
      high[row] = Wide.sumHigh(a.high[row], a.low[row], b.high[row], b.low[row]);
      low[row] = a.low[row] + b.low[row];
    }
    return new WideLane(high, low, a.tick(), a.most.add(b.most));
  }

  /** a/b + c/d as (ad + cb)/bd, and as (a + c)/b where both are divided by the same. */
  private static @Nullable RatioLane ratios(RatioLane a, RatioLane b, long sign) {
    if (a.isOver(b.below)) {
      return RatioLane.of(longs(a.undivided(), b.undivided(), sign), a.divisors());
    }
    LongLane left = Product.byDivisors(a.undivided(), b);
    LongLane right = Product.byDivisors(b.undivided(), a);
    return left == null || right == null
        ? null
        : RatioLane.of(longs(left, right, sign), Product.byDivisors(a.divisors(), b));
  }
}
