package org.battenbook.column;

import java.math.BigInteger;
import java.util.Arrays;
import org.battenbook.number.Longs;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.jspecify.annotations.Nullable;

/** Whole ticks as longs: the lane that nearly all exact columns are held in. */
final class LongLane extends NumberLane implements Ticked {
  /** Longer numerators and denominators are left to the rows, whose own bound they may be near. */
  private static final int MOST_BITS = 1024;

  final long[] ticks;
  private final Rational tick;

  /** No tick is greater, nor is its negative. */
  final long most;

  LongLane(long[] ticks, Rational tick, long most) {
    this.ticks = ticks;
    this.tick = tick;
    this.most = most;
  }

  /**
   * The largest tick that all numbers are whole multiples of; null if one is not exact, or if it is
   * clear that ticks would not fit a long. The search ends as soon as that is clear: numbers of
   * unlike denominators would else need ever finer ticks.
   */
  static @Nullable Rational tickOf(Real[] numbers) {
    Rational tick = Rational.ZERO;
    Rational largest = Rational.ZERO;
    for (Real number : numbers) {
      if (!(number instanceof Rational exact) || isLong(exact)) {
        return null;
      }
      largest = exact.abs().compareTo(largest) > 0 ? exact.abs() : largest;
      if (exact.signum() != 0 && (tick.signum() == 0 || !exact.dividedBy(tick).isWhole())) {
        tick = Rational.gcd(tick, exact);
        if (!largest.dividedBy(tick).isSmall()) {
          return null;
        }
      }
    }
    return tick.signum() == 0 ? Rational.ONE : tick;
  }

  private static boolean isLong(Rational number) {
    return !number.isSmall()
        && Math.max(number.numerator().bitLength(), number.denominator().bitLength()) > MOST_BITS;
  }

  /** The numbers in this tick; null if one is not exact, no whole multiple, or too large. */
  static @Nullable LongLane inTicks(Real[] numbers, Rational tick) {
    long[] ticks = new long[numbers.length];
    for (int row = 0; row < ticks.length; row++) {
      if (!(numbers[row] instanceof Rational exact)) {
        return null;
      }
      Rational count = exact.dividedBy(tick);
      if (!count.isSmall() || !count.isWhole()) {
        return null;
      }
      ticks[row] = count.longNumerator();
    }
    return new LongLane(ticks, tick, mostOf(ticks));
  }

  private static long mostOf(long[] ticks) {
    long most = 0;
    for (long each : ticks) {
      most = Math.max(most, Math.abs(each));
    }
    return most;
  }

  /** The same ticks with the least bound. */
  LongLane tight() {
    return new LongLane(ticks, tick, mostOf(ticks));
  }

  /** The same counts of another tick. */
  LongLane withTick(Rational other) {
    return new LongLane(ticks, other, most);
  }

  /**
   * The counts times a factor, greater than zero, of a smaller tick; null if they might not fit.
   */
  @Nullable LongLane inTick(Rational smaller, long factor) {
    long product = Longs.cappedProduct(most, factor);
    if (factor == 1 || product == Long.MAX_VALUE) {
      return factor == 1 ? withTick(smaller) : null;
    }
    long[] counts = new long[ticks.length];
    for (int row = 0; row < counts.length; row++) {
      counts[row] = ticks[row] * factor;
    }
    return new LongLane(counts, smaller, product);
  }

  @Override
  public Rational tick() {
    return tick;
  }

  @Override
  public boolean isZero() {
    return most == 0;
  }

  @Override
  public int rows() {
    return ticks.length;
  }

  @Override
  public Rational at(int row) {
    return Rational.of(ticks[row]).times(tick);
  }

  @Override
  LongLane asLongs() {
    return this;
  }

  @Override
  WideLane asWide() {
    long[] high = new long[ticks.length];
    for (int row = 0; row < high.length; row++) {
      high[row] = ticks[row] >> 63;
    }
    return new WideLane(high, ticks, tick, BigInteger.valueOf(most));
  }

  @Override
  RatioLane asRatios() {
    long[] ones = new long[ticks.length];
    Arrays.fill(ones, 1);
    return new RatioLane(ticks, ones, tick, most, 1);
  }

  @Override
  boolean isExact() {
    return true;
  }

  @Override
  public LongLane negate() {
    long[] negated = new long[ticks.length];
    for (int row = 0; row < negated.length; row++) {
      negated[row] = -ticks[row];
    }
    return new LongLane(negated, tick, most);
  }

  @Override
  public LongLane abs() {
    long[] sizes = new long[ticks.length];
    for (int row = 0; row < sizes.length; row++) {
      sizes[row] = Math.abs(ticks[row]);
    }
    return new LongLane(sizes, tick, most);
  }

  @Override
  public BitLane negativeRows() {
    return Signs.negative(ticks);
  }

  @Override
  public BitLane zeroRows() {
    return Signs.zero(ticks);
  }

  /** Halves of 32 bits are added apart, so that no chunk can overflow. */
  @Override
  Rational sum() {
    long low = 0;
    long high = 0;
    for (long each : ticks) {
      low += each & 0xffff_ffffL;
      high += each >> 32;
    }
    BigInteger count = BigInteger.valueOf(high).shiftLeft(32).add(BigInteger.valueOf(low));
    return Rational.of(count, BigInteger.ONE).times(tick);
  }
}
