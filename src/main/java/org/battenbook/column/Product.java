package org.battenbook.column;

import static org.battenbook.number.Longs.cappedProduct;

import java.math.BigInteger;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.jspecify.annotations.Nullable;

/** Products. By a constant only the tick changes. */
final class Product {
  private static final KernelDispatch PRODUCT =
      new KernelDispatch(
          Product::longs,
          Product::wides,
          Product::ratios,
          (a, b) -> RealLane.zip(a, b, Real::times));

  private Product() {}

  static NumberLane of(NumberLane a, NumberLane b) {
    Constant both = Constant.both(a, b, Real::times);
    if (both != null) {
      return both;
    }
    NumberLane scaled = a instanceof Constant constant ? scaled(b, constant) : null;
    if (scaled == null && b instanceof Constant constant) {
      scaled = scaled(a, constant);
    }
    return scaled != null ? scaled : PRODUCT.run(a, b);
  }

  /** The lane with its tick made larger or smaller; null where it has none. */
  static @Nullable NumberLane scaled(NumberLane lane, Constant constant) {
    if (!(constant.number instanceof Rational factor)) {
      return null;
    }
    if (factor.signum() == 0) {
      return constant;
    }
    NumberLane scaled = withTickTimes(lane, factor.abs());
    return scaled == null || factor.signum() > 0 ? scaled : scaled.negate();
  }

  private static @Nullable NumberLane withTickTimes(NumberLane lane, Rational factor) {
    if (lane instanceof LongLane longs) {
      return longs.withTick(longs.tick().times(factor));
    }
    if (lane instanceof WideLane wides) {
      return wides.withTick(wides.tick().times(factor));
    }
    if (lane instanceof RatioLane ratios) {
      return ratios.withTick(ratios.tick().times(factor));
    }
    return null;
  }

  static @Nullable LongLane longs(LongLane a, LongLane b) {
    long most = cappedProduct(a.most, b.most);
    if (most == Long.MAX_VALUE) {
      return null;
    }
    long[] product = new long[a.ticks.length];
    for (int row = 0; row < product.length; row++) {
      product[row] = a.ticks[row] * b.ticks[row];
    }
    return new LongLane(product, a.tick().times(b.tick()), most);
  }

  /** One of both must fit longs. */
  private static @Nullable WideLane wides(WideLane a, WideLane b) {
    BigInteger most = a.most.multiply(b.most);
    if (!WideLane.fits(most)) {
      return null;
    }
    boolean isNarrow = b.most.bitLength() < Long.SIZE;
    return isNarrow
        ? wideByLong(a, b, most)
        : a.most.bitLength() < Long.SIZE ? wideByLong(b, a, most) : null;
  }

  private static WideLane wideByLong(WideLane a, WideLane narrow, BigInteger most) {
    long[] high = new long[a.rows()];
    long[] low = new long[a.rows()];
    for (int row = 0; row < high.length; row++) {
      long factor = narrow.low[row];
      high[row] = Wide.productHigh(a.high[row], a.low[row], factor);
      low[row] = a.low[row] * factor;
    }
    return new WideLane(high, low, a.tick().times(narrow.tick()), most);
  }

  private static @Nullable RatioLane ratios(RatioLane a, RatioLane b) {
    return RatioLane.of(longs(a.undivided(), b.undivided()), byDivisors(a.divisors(), b));
  }

  /** The lane times what the ratios are divided by, null if that might not fit. */
  static @Nullable LongLane byDivisors(LongLane lane, RatioLane ratios) {
    return ratios.mostBelow == 1 ? lane : longs(lane, ratios.divisors());
  }
}
