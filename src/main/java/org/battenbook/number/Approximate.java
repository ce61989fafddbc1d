package org.battenbook.number;

/**
 * A number known to within a bound: the true number lies in {@code value - bound .. value + bound}.
 * Every operation widens the bound by its own rounding error, so that the statement stays true.
 *
 * @param value finite
 * @param bound finite, not negative
 */
public record Approximate(double value, double bound) implements Real {

  /**
   * Makes up for the rounding of the bound itself, a few operations each within 2^-53 of its size.
   */
  private static final double OUTWARD = 1 + 0x1p-48;

  /**
   * Checks that the number can be held.
   *
   * @throws ArithmeticException if it is too large for a double, or no number
   */
  public Approximate {
    if (!Double.isFinite(value) || !Double.isFinite(bound)) {
      throw new ArithmeticException("the number grew past what an approximate number can hold");
    }
    if (bound < 0) {
      throw new IllegalArgumentException("a bound is not negative: " + bound);
    }
  }

  /** This number as approximate, exact ones rounded to the nearest double. */
  public static Approximate of(Real number) {
    if (number instanceof Approximate approximate) {
      return approximate;
    }
    double nearest = number.toDouble();
    return new Approximate(nearest, Math.ulp(nearest));
  }

  /**
   * A result of floating-point arithmetic.
   *
   * @param value the result, itself within one unit of its last place
   * @param error by how much the operands' own errors can have moved it
   */
  static Approximate rounded(double value, double error) {
    return new Approximate(value, (error + Math.ulp(value)) * OUTWARD);
  }

  @Override
  public Real plus(Real that) {
    if (isExactZero(that)) {
      return this;
    }
    Approximate other = of(that);
    return rounded(value + other.value, bound + other.bound);
  }

  @Override
  public Real minus(Real that) {
    return plus(that.negate());
  }

  @Override
  public Real times(Real that) {
    if (isExactZero(that)) {
      return Rational.ZERO;
    }
    Approximate other = of(that);
    double error =
        Math.abs(value) * other.bound + Math.abs(other.value) * bound + bound * other.bound;
    return rounded(value * other.value, error);
  }

  /** {@code |a/b - A/B| <= (|b - B| |a/b| + |a - A|) / |B|}, and {@code |B| >= |b| - bound}. */
  @Override
  public Real dividedBy(Real that) {
    Approximate other = of(that);
    if (that.signum() == 0) {
      throw new ArithmeticException(
          that.isExact() ? "division by zero" : "division by a number that may be zero");
    }
    double quotient = value / other.value;
    double least = Math.abs(other.value) - other.bound;
    return rounded(quotient, (other.bound * Math.abs(quotient) + bound) / least);
  }

  @Override
  public Approximate negate() {
    return new Approximate(-value, bound);
  }

  @Override
  public Approximate abs() {
    return new Approximate(Math.abs(value), bound);
  }

  /** By repeated squaring; the bound follows each multiplication. */
  @Override
  public Real pow(int power) {
    if (power < 0) {
      return Rational.ONE.dividedBy(this).pow(-power);
    }
    Real half = power == 0 ? Rational.ONE : pow(power / 2);
    Real whole = power == 0 ? Rational.ONE : half.times(half);
    return power % 2 == 0 ? whole : whole.times(this);
  }

  @Override
  public int signum() {
    return Math.abs(value) > bound ? (int) Math.signum(value) : 0;
  }

  @Override
  public int compareTo(Real that) {
    return minus(that).signum();
  }

  @Override
  public boolean isExact() {
    return false;
  }

  @Override
  public double toDouble() {
    return value;
  }

  /** As a decimal, to the fifteen digits that a double has. */
  @Override
  public String toString() {
    return PlainDecimal.of(value);
  }

  private static boolean isExactZero(Real number) {
    return number.isExact() && number.signum() == 0;
  }
}
