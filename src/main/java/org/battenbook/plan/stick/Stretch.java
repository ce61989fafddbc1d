package org.battenbook.plan.stick;

import org.battenbook.number.Rational;

/**
 * The part of a stick to cut from: all of it, or a clear length between two defects.
 *
 * @param startsAt where it starts, measured from the left end of the whole stick, at least 0
 * @param length its length including trims, more than 0
 * @param firstTrim the length to cut off its left end first, kerf included, at least 0
 * @param lastTrim the length that cannot be used at its right end, at least 0
 */
public record Stretch(Rational startsAt, Rational length, Rational firstTrim, Rational lastTrim) {
  /** All of a stick, without trims. */
  public static Stretch whole(Rational length) {
    return new Stretch(Rational.ZERO, length, Rational.ZERO, Rational.ZERO);
  }

  /** Where the first piece starts. */
  Rational from() {
    return startsAt.plus(firstTrim);
  }

  /** Where the last piece ends at the latest. */
  public Rational to() {
    return startsAt.plus(length).minus(lastTrim);
  }

  /** The length between the trims; 0 or less if they leave nothing. */
  public Rational usable() {
    return to().minus(from());
  }
}
