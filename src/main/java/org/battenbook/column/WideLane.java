package org.battenbook.column;

import java.math.BigInteger;
import org.battenbook.number.Rational;
import org.jspecify.annotations.Nullable;

/**
 * Whole ticks of 128 bits in two longs, for sums of masses and money in mixed units, whose common
 * tick is small.
 */
final class WideLane extends NumberLane implements Ticked {
  /** The longest tick: sums and differences of two, and their sign, fit 128 bits. */
  private static final int MOST_BITS = 125;

  final long[] high;
  final long[] low;
  private final Rational tick;

  /** No tick is greater, nor is its negative. */
  final BigInteger most;

  WideLane(long[] high, long[] low, Rational tick, BigInteger most) {
    this.high = high;
    this.low = low;
    this.tick = tick;
    this.most = most;
  }

  static boolean fits(BigInteger most) {
    return most.bitLength() <= MOST_BITS;
  }

  /**
   * The counts times a factor, of a smaller tick; null if they might not fit.
   *
   * @param factor negative for the negative numbers
   */
  @Nullable WideLane inTick(Rational smaller, long factor) {
    BigInteger product = most.multiply(BigInteger.valueOf(Math.abs(factor)));
    if (factor == 1 || !fits(product)) {
      return factor == 1 ? withTick(smaller) : null;
    }
    long[] productHigh = new long[high.length];
    long[] productLow = new long[high.length];
    for (int row = 0; row < productHigh.length; row++) {
      productHigh[row] = Wide.productHigh(high[row], low[row], factor);
      productLow[row] = low[row] * factor;
    }
    return new WideLane(productHigh, productLow, smaller, product);
  }

  WideLane withTick(Rational other) {
    return new WideLane(high, low, other, most);
  }

  @Override
  public Rational tick() {
    return tick;
  }

  @Override
  public boolean isZero() {
    return most.signum() == 0;
  }

  @Override
  public int rows() {
    return high.length;
  }

  @Override
  public Rational at(int row) {
    return Rational.of(whole(high[row], low[row]), BigInteger.ONE).times(tick);
  }

  private static BigInteger whole(long high, long low) {
    BigInteger upper = BigInteger.valueOf(high).shiftLeft(32).add(BigInteger.valueOf(low >>> 32));
    return upper.shiftLeft(32).add(BigInteger.valueOf(low & 0xffff_ffffL));
  }

  @Override
  @Nullable LongLane asLongs() {
    return null;
  }

  @Override
  WideLane asWide() {
    return this;
  }

  @Override
  boolean isExact() {
    return true;
  }

  @Override
  public WideLane negate() {
    long[] negatedHigh = new long[high.length];
    long[] negatedLow = new long[high.length];
    for (int row = 0; row < negatedHigh.length; row++) {
      negatedHigh[row] = Wide.negateHigh(high[row], low[row]);
      negatedLow[row] = -low[row];
    }
    return new WideLane(negatedHigh, negatedLow, tick, most);
  }

  @Override
  public NumberLane abs() {
    return negate().orElse(negativeRows(), this);
  }

  @Override
  public BitLane negativeRows() {
    return Signs.negative(high);
  }

  @Override
  public BitLane zeroRows() {
    return Signs.zero(high).and(Signs.zero(low));
  }

  /** The four parts of 32 bits are added apart, so that no chunk can overflow. */
  @Override
  Rational sum() {
    long[] parts = new long[4];
    for (int row = 0; row < high.length; row++) {
      parts[0] += low[row] & 0xffff_ffffL;
      parts[1] += low[row] >>> 32;
      parts[2] += high[row] & 0xffff_ffffL;
      parts[3] += high[row] >> 32;
    }
    BigInteger count = BigInteger.ZERO;
    for (int part = 3; part >= 0; part--) {
      count = count.shiftLeft(32).add(BigInteger.valueOf(parts[part]));
    }
    return Rational.of(count, BigInteger.ONE).times(tick);
  }
}
