package org.battenbook.number;

/** The ways to round a number to a step. */
public enum Rounding {
  /** Towards plus infinity. */
  UP {
    @Override
    public Rational toWhole(Rational value) {
      return value.wholeAbove();
    }
  },
  /** Towards minus infinity. */
  DOWN {
    @Override
    public Rational toWhole(Rational value) {
      return value.wholeBelow();
    }
  },
  /** To the nearest step; a tie goes away from zero. */
  NEAREST {
    @Override
    public Rational toWhole(Rational value) {
      Rational magnitude = value.abs().plus(HALF).wholeBelow();
      return value.signum() < 0 ? magnitude.negate() : magnitude;
    }
  },
  /** To the nearest step; a tie goes to the even one. */
  EVENLY {
    @Override
    public Rational toWhole(Rational value) {
      Rational whole = value.plus(HALF).wholeBelow();
      boolean tie = whole.minus(value).equals(HALF);
      return tie && whole.numerator().testBit(0) ? whole.minus(Rational.ONE) : whole;
    }
  };

  private static final Rational HALF = Rational.of(1, 2);

  /** To which part of a step an approximate number is read, as an exported formula reads it. */
  private static final Rational MILLIONTH = Rational.of(1, 1_000_000);

  /** Rounds to a whole number. */
  public abstract Rational toWhole(Rational value);

  /**
   * Rounds to a multiple of the step.
   *
   * <p>An exact value is rounded exactly. Of an approximate one the steps are counted to six
   * decimals first, so that what lies within half a millionth of a step is on it; the result is
   * exact again, unless its bound straddles two results.
   *
   * @param step greater than zero
   * @throws ArithmeticException if the step is not greater than zero
   */
  public Real toStep(Real value, Real step) {
    if (step.signum() <= 0) {
      throw new ArithmeticException("a rounding step is greater than zero");
    }
    Real steps = value.dividedBy(step);
    return steps instanceof Rational exact
        ? toWhole(exact).times(step)
        : toWhole((Approximate) steps).times(step);
  }

  /**
   * Rounds exactly to a multiple of the step.
   *
   * @throws ArithmeticException if the step is not greater than zero
   */
  public Rational toStep(Rational value, Rational step) {
    return (Rational) toStep((Real) value, (Real) step);
  }

  private Real toWhole(Approximate steps) {
    Rational middle = Rational.exactly(steps.value());
    Rational bound = Rational.exactly(steps.bound());
    Rational least = toWhole(NEAREST.toStep(middle.minus(bound), MILLIONTH));
    Rational most = toWhole(NEAREST.toStep(middle.plus(bound), MILLIONTH));
    return least.equals(most)
        ? least
        : Approximate.rounded(
            toWhole(middle).toNearestDouble(), most.minus(least).toNearestDouble());
  }
}
