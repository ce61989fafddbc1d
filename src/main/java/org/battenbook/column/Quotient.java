package org.battenbook.column;

import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.jspecify.annotations.Nullable;

/** Quotients. By a constant only the tick changes; by a lane they are kept as ratios. */
final class Quotient {
  private static final KernelDispatch QUOTIENT =
      new KernelDispatch(
          Quotient::longs,
          (a, b) -> null,
          Quotient::ratios,
          (a, b) -> RealLane.zip(a, b, Real::dividedBy));

  private Quotient() {}

  static NumberLane of(NumberLane a, NumberLane b) {
    Constant both = Constant.both(a, b, Real::dividedBy);
    if (both != null) {
      return both;
    }
    NumberLane scaled = b instanceof Constant constant ? scaled(a, constant) : null;
    return scaled != null ? scaled : QUOTIENT.run(a, b);
  }

  private static @Nullable NumberLane scaled(NumberLane lane, Constant divisor) {
    return divisor.number instanceof Rational exact
        ? Product.scaled(lane, new Constant(Rational.ONE.dividedBy(exact), divisor.rows()))
        : null;
  }

  /** Nothing is divided: the one lane stands over the other, its signs brought above. */
  private static RatioLane longs(LongLane a, LongLane b) {
    if (b.zeroRows().isAny()) {
      throw new ArithmeticException("division by zero");
    }
    Rational tick = a.tick().dividedBy(b.tick());
    return b.negativeRows().isAny()
        ? new RatioLane(withSigns(a.ticks, b.ticks), b.abs().ticks, tick, a.most, b.most)
        : new RatioLane(a.ticks, b.ticks, tick, a.most, b.most);
  }

  private static long[] withSigns(long[] numbers, long[] signs) {
    long[] signed = new long[numbers.length];
    for (int row = 0; row < signed.length; row++) {
      signed[row] = signs[row] < 0 ? -numbers[row] : numbers[row];
    }
    return signed;
  }

  /** a/b over c/d is ad/bc. */
  private static @Nullable RatioLane ratios(RatioLane a, RatioLane b) {
    LongLane above = Product.byDivisors(a.undivided(), b);
    LongLane below = Product.byDivisors(b.undivided(), a);
    return above == null || below == null ? null : longs(above, below);
  }
}
