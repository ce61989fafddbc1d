package org.battenbook.plan.stick;

import org.battenbook.number.Rational;

/**
 * What of a stick is there to cut from: all of it, or what lies between two flaws.
 *
 * @param startsAt where it begins, measured from the left end of the whole stick, not negative
 * @param length from there, its trims included, greater than zero
 * @param firstTrim what is cut off its left end before the first part, that cut included
 * @param lastTrim what cannot be used at its right end
 */
public record Stretch(Rational startsAt, Rational length, Rational firstTrim, Rational lastTrim) {
  /** All of a stick, its ends too. */
  public static Stretch whole(Rational length) {
    return new Stretch(Rational.ZERO, length, Rational.ZERO, Rational.ZERO);
  }

  /** Where the first part begins. */
  Rational from() {
    return startsAt.plus(firstTrim);
  }

  /** Where the last part ends at the latest. */
  public Rational to() {
    return startsAt.plus(length).minus(lastTrim);
  }

  /** The length that parts and kerfs can take; not above zero where the trims leave nothing. */
  public Rational usable() {
    return to().minus(from());
  }
}
