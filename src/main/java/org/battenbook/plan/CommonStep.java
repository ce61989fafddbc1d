package org.battenbook.plan;

import java.util.Collection;
import org.battenbook.number.Rational;

/** The greatest common divisor of some exact numbers: all of them are whole multiples of it. */
public final class CommonStep {
  private final String what;
  private final long most;
  private Rational step = Rational.ZERO;
  private Rational largest = Rational.ZERO;

  private CommonStep(String what, long most) {
    this.what = what;
    this.most = most;
  }

  /**
   * The common step of some numbers; 1 if all are 0.
   *
   * @param what the name of the numbers, for the refusal
   * @param most the highest number of steps in one number
   * @param numbers each at least 0
   * @throws Refusal if a number has more steps than that
   */
  public static CommonStep of(String what, long most, Collection<Rational> numbers) {
    CommonStep common = new CommonStep(what, most);
    numbers.forEach(common::add);
    common.step = common.step.signum() == 0 ? Rational.ONE : common.step;
    return common;
  }

  /** Adds a number. It fails as soon as the step is too fine, since the step only becomes finer. */
  private void add(Rational number) {
    step = gcd(number);
    largest = number.compareTo(largest) > 0 ? number : largest;
    if (step.signum() != 0) {
      count(largest);
    }
  }

  private Rational gcd(Rational number) {
    try {
      return Rational.gcd(step, number);
    } catch (ArithmeticException pastAllDigits) {
      throw tooFine();
    }
  }

  /**
   * The number of steps in a number, which must be one of those added.
   *
   * @throws Refusal if there are more steps than allowed
   */
  public long count(Rational number) {
    Rational steps = number.dividedBy(step);
    if (!steps.isSmall() || steps.longNumerator() > most) {
      throw tooFine();
    }
    return steps.longNumerator();
  }

  private Refusal tooFine() {
    return new Refusal(
        "the %s have no common step; round them to one, such as 1/1000".formatted(what));
  }

  /** The number with this many steps. */
  public Rational times(long count) {
    return step.times(Rational.of(count));
  }

  public Rational step() {
    return step;
  }
}
