package org.battenbook.plan;

import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.number.Rounding;

/**
 * How sticks are cut.
 *
 * @param kerf what a cut takes between two neighbouring parts, as it lies along the stick
 * @param firstTrim what is cut off the left end of every stick before the first part, its cut
 *     included
 * @param lastTrim what cannot be used at the right end
 * @param leastOffcut the shortest offcut worth keeping
 */
public record StickRules(
    Rational kerf, Rational firstTrim, Rational lastTrim, Rational leastOffcut) {
  public StickRules {
    Refusal.unless(kerf.signum() >= 0, "the kerf is below zero");
    Refusal.unless(firstTrim.signum() >= 0, "the trim at the first end is below zero");
    Refusal.unless(lastTrim.signum() >= 0, "the trim at the last end is below zero");
    Refusal.unless(leastOffcut.signum() >= 0, "the least offcut is below zero");
  }

  /** Neither kerf nor trim; every offcut is kept. */
  public static StickRules bare() {
    return new StickRules(Rational.ZERO, Rational.ZERO, Rational.ZERO, Rational.ZERO);
  }

  /**
   * A kerf along the stick that no fraction holds, such as that of a cut at 45 degrees: up to a
   * fine step, so that what is planned always fits.
   *
   * @throws IllegalArgumentException if it is not known well enough to tell the step
   */
  public static Rational kerfUpTo(Rational step, Real kerf) {
    if (Rounding.UP.toStep(kerf, step) instanceof Rational exact) {
      return exact;
    }
    throw new IllegalArgumentException("the kerf is not known to a step of " + step);
  }

  /** What can be used of a stick. */
  Rational usable(Stock stock) {
    return stock.length().minus(firstTrim).minus(lastTrim);
  }
}
