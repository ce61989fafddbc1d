package org.battenbook.column;

import static org.battenbook.number.Longs.cappedProduct;
import static org.battenbook.number.Longs.cappedSum;

import org.battenbook.number.Rational;
import org.battenbook.number.Rounding;
import org.jspecify.annotations.Nullable;

/**
 * Rounding to a step: the steps are counted by a whole division of the ticks, and the result is
 * counted in steps. A division before it is part of that one division.
 */
final class Steps {
  private Steps() {}

  static NumberLane rounded(Rounding rounding, NumberLane lane, NumberLane step) {
    Constant both = Constant.both(lane, step, rounding::toStep);
    if (both != null) {
      return both;
    }
    NumberLane rounded =
        step instanceof Constant constant && constant.number instanceof Rational exact
            ? toConstant(rounding, lane, exact)
            : toLane(rounding, lane, step);
    return rounded != null ? rounded : rows(rounding, lane, step);
  }

  private static NumberLane rows(Rounding rounding, NumberLane lane, NumberLane step) {
    return NumberLane.of(RealLane.zip(lane, step, rounding::toStep).reals());
  }

  /** To a step of its own for every row: whole counts of it, times it. */
  private static @Nullable NumberLane toLane(Rounding rounding, NumberLane lane, NumberLane step) {
    if (!lane.isExact() || !step.isExact()) {
      return null;
    }
    if (step.is(Relation.AT_MOST, new Constant(Rational.ZERO, step.rows())).isAny()) {
      throw new ArithmeticException("a rounding step is greater than zero");
    }
    NumberLane one = new Constant(Rational.ONE, step.rows());
    return rounded(rounding, lane.dividedBy(step), one).times(step);
  }

  private static @Nullable NumberLane toConstant(
      Rounding rounding, NumberLane lane, Rational step) {
    if (step.signum() <= 0) {
      throw new ArithmeticException("a rounding step is greater than zero");
    }
    if (lane instanceof LongLane longs) {
      NumberLane narrow = ofLongs(rounding, longs, step);
      return narrow != null ? narrow : WideSteps.rounded(rounding, longs.asWide(), step);
    }
    if (lane instanceof WideLane wides) {
      return WideSteps.rounded(rounding, wides, step);
    }
    return lane instanceof RatioLane ratios ? ofRatios(rounding, ratios, step) : null;
  }

  private static @Nullable NumberLane ofLongs(Rounding rounding, LongLane lane, Rational step) {
    Rational steps = lane.tick().dividedBy(step);
    if (steps.isWhole()) {
      return lane;
    }
    if (!steps.isSmall() || steps.longDenominator() > Division.ByConstant.MOST) {
      return null;
    }
    Division by = new Division.ByConstant(steps.longDenominator());
    return counted(rounding, lane, steps.longNumerator(), by, step);
  }

  private static @Nullable NumberLane ofRatios(Rounding rounding, RatioLane lane, Rational step) {
    Rational steps = lane.tick().dividedBy(step);
    LongLane divisors =
        steps.isSmall() ? lane.divisors().inTick(Rational.ONE, steps.longDenominator()) : null;
    return divisors == null
        ? null
        : counted(
            rounding, lane.undivided(), steps.longNumerator(), new Division.ByLane(divisors), step);
  }

  /** Rounds each number times a factor over its divisor; null if what it takes might not fit. */
  private static @Nullable LongLane counted(
      Rounding rounding, LongLane lane, long times, Division by, Rational step) {
    LongLane tight = needed(lane, times, by) == Long.MAX_VALUE ? lane.tight() : lane;
    return needed(tight, times, by) == Long.MAX_VALUE
        ? null
        : new LongLane(
            wholes(rounding, tight.ticks, times, by),
            step,
            by.mostQuotient(cappedProduct(tight.most, times)));
  }

  /** The largest number on the way, {@code 2 * number + divisor}, with room for a remainder. */
  private static long needed(LongLane lane, long times, Division by) {
    return cappedSum(
        cappedProduct(2, cappedProduct(lane.most, times)), cappedProduct(4, by.most()));
  }

  private static long[] wholes(Rounding rounding, long[] numbers, long times, Division by) {
    return switch (rounding) {
      case UP -> up(numbers, times, by);
      case DOWN -> down(numbers, times, by);
      case NEAREST -> nearest(numbers, times, by, 0);
      case EVENLY -> nearest(numbers, times, by, 1);
    };
  }

  private static long[] up(long[] numbers, long times, Division by) {
    long[] wholes = new long[numbers.length];
    for (int row = 0; row < wholes.length; row++) {
      wholes[row] = -by.floor(-numbers[row] * times, row);
    }
    return wholes;
  }

  private static long[] down(long[] numbers, long times, Division by) {
    long[] wholes = new long[numbers.length];
    for (int row = 0; row < wholes.length; row++) {
      wholes[row] = by.floor(numbers[row] * times, row);
    }
    return wholes;
  }

  /**
   * The size n/d rounded is (2n + d)/2d rounded down; a tie leaves nothing over, and an odd whole
   * is then one too many if ties are to be even.
   */
  private static long[] nearest(long[] numbers, long times, Division by, long evenly) {
    Division twice = by.doubled();
    long[] wholes = new long[numbers.length];
    for (int row = 0; row < wholes.length; row++) {
      long number = numbers[row] * times;
      long doubled = 2 * Math.abs(number) + by.at(row);
      long whole = twice.floor(doubled, row);
      long tie = whole * twice.at(row) == doubled ? evenly : 0;
      long rounded = whole - (whole & tie);
      wholes[row] = number < 0 ? -rounded : rounded;
    }
    return wholes;
  }
}
