package org.battenbook.number;

/**
 * A number as formulas use it: exact, a {@link Rational}, for as long as only the four operations
 * and whole powers touch it, and {@link Approximate}, with a bound on its error, after a root or an
 * angle.
 *
 * <p>Exact numbers give exact results. A result never wraps: one that grows past {@link
 * Rational#MOST_BITS} binary digits is an {@link ArithmeticException}.
 */
public sealed interface Real permits Rational, Approximate {

  Real plus(Real that);

  Real minus(Real that);

  Real times(Real that);

  /**
   * The quotient.
   *
   * @throws ArithmeticException if {@code that} is zero, or cannot be told from zero
   */
  Real dividedBy(Real that);

  Real negate();

  Real abs();

  /**
   * This number to a whole power; anything to the power 0 is 1.
   *
   * @throws ArithmeticException for a negative power of zero
   */
  Real pow(int power);

  /** -1, 0 or 1; 0 also for an approximate number whose bound straddles zero. */
  int signum();

  /**
   * Negative, 0 or positive, as this number is less than, equal to or greater than the other; 0
   * also where their bounds overlap, so that two numbers that cannot be told apart count as equal.
   * No {@link Comparable}, since that is not transitive.
   */
  @SuppressWarnings("MissingImplementsComparable")
  int compareTo(Real that);

  boolean isExact();

  /** The nearest double. */
  double toDouble();

  /** By how much the true number may differ from this one at most; 0 when it is exact. */
  double bound();
}
