package org.battenbook.column;

import java.util.Objects;
import java.util.function.UnaryOperator;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.number.RealFunctions;
import org.battenbook.number.Rounding;
import org.jspecify.annotations.Nullable;

/**
 * A number for every row. What {@link Real} is to one number this is to a chunk: the same
 * operations, the same results row by row, and an {@link ArithmeticException} where a row has none.
 * The caller then goes row by row, or puts another number into the rows at fault beforehand.
 *
 * <p>Every kernel takes the narrowest lane that holds its result, told beforehand from the bounds
 * of its operands: nothing wraps.
 */
public abstract sealed class NumberLane implements Lane
    permits Constant, LongLane, WideLane, RatioLane, RealLane {

  /**
   * The narrowest lane for these numbers.
   *
   * @param numbers taken over: the array must not be changed afterwards
   */
  public static NumberLane of(Real[] numbers) {
    Rational tick = LongLane.tickOf(numbers);
    LongLane longs = tick == null ? null : LongLane.inTicks(numbers, tick);
    return longs == null ? new RealLane(numbers) : longs;
  }

  /** The same number in every row. */
  public static NumberLane constant(Real number, int rows) {
    return new Constant(number, rows);
  }

  /** The number of a row. */
  public abstract Real at(int row);

  /** In longs if it can be, else null. */
  @Nullable LongLane asLongs() {
    return null;
  }

  /** In 128 bits if it can be, else null. */
  @Nullable WideLane asWide() {
    return null;
  }

  /** In ratios of longs if it can be, else null. */
  @Nullable RatioLane asRatios() {
    return null;
  }

  /** Whether all its numbers are exact because of how they are held. */
  abstract boolean isExact();

  public abstract NumberLane negate();

  public abstract NumberLane abs();

  public final NumberLane plus(NumberLane that) {
    return Sum.of(this, that);
  }

  public final NumberLane minus(NumberLane that) {
    return Sum.difference(this, that);
  }

  public final NumberLane times(NumberLane that) {
    return Product.of(this, that);
  }

  /**
   * The quotients.
   *
   * @throws ArithmeticException if a divisor is zero
   */
  public final NumberLane dividedBy(NumberLane that) {
    return Quotient.of(this, that);
  }

  /**
   * The numbers to a power, squared and multiplied in the order of {@link Real#pow}, so that bounds
   * of approximate numbers are the same too.
   *
   * @throws ArithmeticException if the power is negative and a number is zero
   */
  public final NumberLane pow(int power) {
    NumberLane one = constant(Rational.ONE, rows());
    if (power < 0) {
      return one.dividedBy(this).pow(Math.negateExact(power));
    }
    if (power == 0) {
      return one;
    }
    NumberLane half = pow(power / 2);
    NumberLane even = half.times(half);
    return power % 2 == 0 ? even : even.times(this);
  }

  /**
   * Rounded to multiples of a step.
   *
   * @throws ArithmeticException if a step is not greater than zero
   */
  public final NumberLane rounded(Rounding rounding, NumberLane step) {
    return Steps.rounded(rounding, this, step);
  }

  /** The rows where the relation holds; numbers that cannot be told apart are equal. */
  public final BitLane is(Relation relation, NumberLane that) {
    return switch (relation) {
      case LESS -> minus(that).negativeRows();
      case AT_LEAST -> minus(that).negativeRows().not();
      case GREATER -> that.minus(this).negativeRows();
      case AT_MOST -> that.minus(this).negativeRows().not();
      case EQUAL -> minus(that).zeroRows();
      case UNEQUAL -> minus(that).zeroRows().not();
    };
  }

  /** The rows whose number is less than zero. */
  public abstract BitLane negativeRows();

  /** The rows whose number is zero, or cannot be told from it. */
  public abstract BitLane zeroRows();

  /** The lesser of both, as {@link RealFunctions#least}. */
  public final NumberLane least(NumberLane that) {
    return isExact() && that.isExact()
        ? that.orElse(that.is(Relation.LESS, this), this)
        : RealLane.zip(this, that, RealFunctions::least);
  }

  /** The greater of both, as {@link RealFunctions#greatest}. */
  public final NumberLane greatest(NumberLane that) {
    return isExact() && that.isExact()
        ? that.orElse(that.is(Relation.GREATER, this), this)
        : RealLane.zip(this, that, RealFunctions::greatest);
  }

  /** From this lane where the choice says yes, from the other where it says no. */
  public final NumberLane orElse(BitLane choice, NumberLane other) {
    return Choose.of(choice, this, other);
  }

  /** Each number made into another, one at a time: for what has no kernel, roots and angles. */
  public final NumberLane map(UnaryOperator<Real> function) {
    Real[] results = new Real[rows()];
    for (int row = 0; row < results.length; row++) {
      results[row] = function.apply(at(row));
    }
    return of(results);
  }

  /** With another number in one row. */
  public final NumberLane with(int row, Real number) {
    Real[] numbers = reals();
    numbers[row] = number;
    return of(numbers);
  }

  /** The sum of all rows, or of those chosen; zero of none. */
  public final Real sum(@Nullable BitLane chosen) {
    Constant zero = new Constant(Rational.ZERO, rows());
    return chosen == null ? sum() : orElse(chosen, zero).sum();
  }

  /** The sum of all rows, from the first to the last. */
  Real sum() {
    Real sum = Rational.ZERO;
    for (int row = 0; row < rows(); row++) {
      sum = sum.plus(at(row));
    }
    return sum;
  }

  /** The first row with the least number, among those chosen or all; -1 if there is none. */
  public final int rowOfLeast(@Nullable BitLane chosen) {
    return Extreme.rowOfLeast(this, chosen);
  }

  /** The first row with the greatest number, among those chosen or all; -1 if there is none. */
  public final int rowOfGreatest(@Nullable BitLane chosen) {
    return Extreme.rowOfLeast(negate(), chosen);
  }

  /**
   * The rows whose number is another one in the other lane. Exact numbers are compared by value
   * however they are held; approximate ones by value and bound.
   */
  public final BitLane differing(NumberLane that) {
    if (isExact() && that.isExact()) {
      return is(Relation.UNEQUAL, that);
    }
    return BitLane.of(rows(), row -> !at(row).equals(that.at(row)));
  }

  /**
   * Whether the numbers of all rows are the same, as {@link #differing} compares them. What an edit
   * moved mostly differs in its first row already.
   */
  @Override
  public final boolean equals(@Nullable Object other) {
    return other instanceof NumberLane that
        && (this == that
            || (rows() == that.rows()
                && (rows() == 0 || at(0).equals(that.at(0)))
                && !differing(that).isAny()));
  }

  @Override
  public final int hashCode() {
    return rows() == 0 ? 0 : Objects.hash(rows(), at(0), at(rows() - 1));
  }

  /** One object for each row, in a new array. */
  final Real[] reals() {
    Real[] reals = new Real[rows()];
    for (int row = 0; row < reals.length; row++) {
      reals[row] = at(row);
    }
    return reals;
  }
}
