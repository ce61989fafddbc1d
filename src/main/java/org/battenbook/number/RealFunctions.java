package org.battenbook.number;

import java.math.BigInteger;

/**
 * Roots and angles. Exact wherever the result of an exact number is rational: the root of a square;
 * the sine of 30 degrees, the tangent of 45 and their fellows, of which there are no more for
 * rational degrees (Niven, <i>Irrational Numbers</i>, 1956, corollary 3.12). All else is worked out
 * by {@link StrictMath}, the same on every machine, with a bound.
 */
public final class RealFunctions {
  private static final Rational HALF = Rational.of(1, 2);
  private static final Rational RIGHT = Rational.of(90);
  private static final Rational STRAIGHT = Rational.of(180);
  private static final Rational TURN = Rational.of(360);
  private static final Rational HALF_RIGHT = Rational.of(45);

  /** Of an angle in radians or degrees: conversion, constant and function, each within 2^-52. */
  private static final double RELATIVE_ERROR = 0x1p-50;

  private RealFunctions() {}

  /**
   * The square root.
   *
   * @throws ArithmeticException if the number is negative
   */
  public static Real squareRoot(Real number) {
    if (number.signum() < 0) {
      throw new ArithmeticException("the square root of a negative number");
    }
    if (number instanceof Rational rational) {
      Rational root = Rational.of(rational.numerator().sqrt(), rational.denominator().sqrt());
      return root.times(root).equals(rational) ? root : rootOf(Approximate.of(number));
    }
    return rootOf((Approximate) number);
  }

  /** The root moves by at most error/root, and where the number is close to zero by root(error). */
  private static Approximate rootOf(Approximate number) {
    double root = StrictMath.sqrt(Math.max(number.value(), 0));
    double moved = Math.min(number.bound() / root, StrictMath.sqrt(number.bound()));
    return Approximate.rounded(root, Double.isNaN(moved) ? 0 : moved);
  }

  /** The greater of both, as {@link #least}. */
  public static Real greatest(Real a, Real b) {
    return least(a.negate(), b.negate()).negate();
  }

  /**
   * The lesser of both; of two that are equal, the first. Of two whose bounds overlap it cannot be
   * told: the lesser value with the wider bound, which holds whichever it is.
   */
  public static Real least(Real a, Real b) {
    int order = a.compareTo(b);
    if (order != 0 || (a.isExact() && b.isExact())) {
      return order <= 0 ? a : b;
    }
    Approximate left = Approximate.of(a);
    Approximate right = Approximate.of(b);
    return new Approximate(
        Math.min(left.value(), right.value()), Math.max(left.bound(), right.bound()));
  }

  /** The sine of an angle in degrees. */
  public static Real sine(Real degrees) {
    if (degrees instanceof Rational exact) {
      Rational within = withinTurn(exact);
      return within.compareTo(STRAIGHT) < 0
          ? upperSine(within)
          : upperSine(within.minus(STRAIGHT)).negate();
    }
    Approximate angle = (Approximate) degrees;
    double radians = StrictMath.toRadians(Math.IEEEremainder(angle.value(), 360));
    return ofAngle(StrictMath.sin(radians), radians, angle.bound());
  }

  /** The sine of 0 to 180 degrees, from the smaller of the two angles that have it. */
  private static Real upperSine(Rational degrees) {
    Rational smaller = degrees.compareTo(RIGHT) > 0 ? STRAIGHT.minus(degrees) : degrees;
    Rational thirds = smaller.dividedBy(Rational.of(30));
    if (thirds.isWhole() && thirds.longNumerator() != 2) {
      return thirds.longNumerator() == 1 ? HALF : thirds.dividedBy(Rational.of(3));
    }
    Rational rest = RIGHT.minus(smaller);
    double radians = StrictMath.toRadians(min(smaller, rest).toDouble());
    double sine = smaller.compareTo(rest) < 0 ? StrictMath.sin(radians) : StrictMath.cos(radians);
    return ofAngle(sine, radians, 0);
  }

  /** The cosine of an angle in degrees. */
  public static Real cosine(Real degrees) {
    if (degrees instanceof Rational exact) {
      return sine(RIGHT.minus(exact));
    }
    Approximate angle = (Approximate) degrees;
    double radians = StrictMath.toRadians(Math.IEEEremainder(angle.value(), 360));
    return ofAngle(StrictMath.cos(radians), radians, angle.bound());
  }

  /**
   * The tangent of an angle in degrees.
   *
   * @throws ArithmeticException at a right angle, where it has no value
   */
  public static Real tangent(Real degrees) {
    if (degrees instanceof Rational exact) {
      Rational halfRights = exact.dividedBy(HALF_RIGHT);
      if (halfRights.isWhole()) {
        return exactTangent(halfRights.numerator().mod(BigInteger.valueOf(4)).intValue());
      }
    }
    return sine(degrees).dividedBy(cosine(degrees));
  }

  private static Rational exactTangent(int halfRights) {
    return switch (halfRights) {
      case 0 -> Rational.ZERO;
      case 1 -> Rational.ONE;
      case 3 -> Rational.ONE.negate();
      default -> throw new ArithmeticException("the tangent of a right angle");
    };
  }

  /**
   * The angle in degrees, between -90 and 90, that has this tangent. It moves by the tangent's
   * error over {@code 1 + tangent^2}.
   */
  public static Real arctangent(Real tangent) {
    if (tangent instanceof Rational exact
        && exact.isWhole()
        && exact.abs().compareTo(Rational.ONE) <= 0) {
      return exact.times(HALF_RIGHT);
    }
    Approximate slope = Approximate.of(tangent);
    double degrees = StrictMath.toDegrees(StrictMath.atan(slope.value()));
    double least = Math.max(Math.abs(slope.value()) - slope.bound(), 0);
    double moved = StrictMath.toDegrees(slope.bound()) / (1 + least * least);
    return Approximate.rounded(degrees, moved + Math.abs(degrees) * RELATIVE_ERROR);
  }

  /** A sine or cosine moves by no more than its angle does. */
  private static Approximate ofAngle(double value, double radians, double degreesBound) {
    double moved = StrictMath.toRadians(degreesBound) + Math.abs(radians) * RELATIVE_ERROR;
    return Approximate.rounded(value, moved);
  }

  private static Rational withinTurn(Rational degrees) {
    return degrees.minus(degrees.dividedBy(TURN).wholeBelow().times(TURN));
  }

  private static Rational min(Rational a, Rational b) {
    return a.compareTo(b) <= 0 ? a : b;
  }
}
