package org.battenbook.plan;

import java.util.Collection;
import org.battenbook.number.Rational;

/** The largest step of which some exact numbers are whole multiples. */
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
   * The common step of some numbers, none of them negative; 1 where all are zero.
   *
   * @param what they are, for the refusal
   * @param most how many steps a number may be
   * @throws Refusal if a number is more steps than that
   */
  public static CommonStep of(String what, long most, Collection<Rational> numbers) {
    CommonStep common = new CommonStep(what, most);
    numbers.forEach(common::add);
    common.step = common.step.signum() == 0 ? Rational.ONE : common.step;
    return common;
  }

  /** The step only gets finer, so a step that is already too fine ends the work. */
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

  /** How many steps a number is. */
  public long count(Rational number) {
    Rational steps = number.dividedBy(step);
    if (!steps.isSmall() || steps.longNumerator() > most) {
      throw tooFine();
    }
    return steps.longNumerator();
  }

  private Refusal tooFine() {
    return new Refusal(
        "the %s have no common step that is not too fine: round them to one, such as 1/1000"
            .formatted(what));
  }

  /** So many steps. */
  public Rational times(long count) {
    return step.times(Rational.of(count));
  }

  public Rational step() {
    return step;
  }
}
