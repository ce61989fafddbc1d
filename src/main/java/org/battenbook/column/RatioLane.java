package org.battenbook.column;

import java.util.Arrays;
import org.battenbook.number.Rational;
import org.jspecify.annotations.Nullable;

/**
 * Divisions that are not carried out: a whole number of ticks over a whole number, in any terms.
 * What comes after, a rounding or a comparison, is done on the parts, so that no row needs a common
 * divisor.
 */
final class RatioLane extends NumberLane implements Ticked {
  final long[] above;

  /** All greater than zero. */
  final long[] below;

  private final Rational tick;

  /** No part above is greater, nor is its negative. */
  final long mostAbove;

  final long mostBelow;

  RatioLane(long[] above, long[] below, Rational tick, long mostAbove, long mostBelow) {
    this.above = above;
    this.below = below;
    this.tick = tick;
    this.mostAbove = mostAbove;
    this.mostBelow = mostBelow;
  }

  /**
   * One lane over another.
   *
   * @param below counts of 1, all greater than zero
   * @return null if one of them is
   */
  static @Nullable RatioLane of(@Nullable LongLane above, @Nullable LongLane below) {
    return above == null || below == null
        ? null
        : new RatioLane(above.ticks, below.ticks, above.tick(), above.most, below.most);
  }

  /** The same ratios over other parts above. */
  RatioLane withAbove(long[] other) {
    return new RatioLane(other, below, tick, mostAbove, mostBelow);
  }

  /** The same ratios of another tick. */
  RatioLane withTick(Rational other) {
    return new RatioLane(above, below, other, mostAbove, mostBelow);
  }

  /** The parts above alone, as if nothing were divided. */
  LongLane undivided() {
    return new LongLane(above, tick, mostAbove);
  }

  /** The parts below, as counts of 1. */
  LongLane divisors() {
    return new LongLane(below, Rational.ONE, mostBelow);
  }

  @Override
  public Rational tick() {
    return tick;
  }

  @Override
  public boolean isZero() {
    return mostAbove == 0;
  }

  @Override
  public int rows() {
    return above.length;
  }

  @Override
  public Rational at(int row) {
    return Rational.of(above[row], below[row]).times(tick);
  }

  @Override
  RatioLane asRatios() {
    return this;
  }

  @Override
  boolean isExact() {
    return true;
  }

  @Override
  public RatioLane negate() {
    return withAbove(undivided().negate().ticks);
  }

  @Override
  public RatioLane abs() {
    return withAbove(undivided().abs().ticks);
  }

  @Override
  public BitLane negativeRows() {
    return Signs.negative(above);
  }

  @Override
  public BitLane zeroRows() {
    return Signs.zero(above);
  }

  /** Whether both are divided by the same numbers, at a glance or by looking. */
  boolean isOver(long[] others) {
    return below == others || Arrays.equals(below, others);
  }
}
