package org.battenbook.plan.stick;

import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * How sticks are cut.
 *
 * <p>Where both edges of a stick are alike, each second piece may lie turned end for end: its ends
 * then lean the way of its neighbours' ends, and it reaches under their longer edges by {@code
 * nest}. So N pieces take the sum of (length - nest), N - 1 kerfs and one nest.
 *
 * @param kerf what a cut takes between two neighbouring parts, as it lies along the stick
 * @param nest the width of the stick times the tangent of the cut's angle from square; 0 where
 *     pieces are not turned
 */
public record StickRules(Rational kerf, Rational nest) {
  public StickRules {
    Refusal.unless(kerf.signum() >= 0, "the kerf is below zero: correct it, or say 0");
    Refusal.unless(nest.signum() >= 0, "the nest is below zero: correct it, or say 0");
  }

  /** Nothing is lost between parts. */
  public static StickRules bare() {
    return ofKerf(Rational.ZERO);
  }

  /** All pieces lie the same way. */
  public static StickRules ofKerf(Rational kerf) {
    return new StickRules(kerf, Rational.ZERO);
  }

  /** From where a piece begins to where the next begins. */
  Rational pace(Rational length) {
    return length.minus(nest).plus(kerf);
  }

  /**
   * The same for all that one piece, or one set, is cut into.
   *
   * @throws Refusal if the lengths of a set add up to more digits than a number may have
   */
  public Rational pace(Demand demand) {
    try {
      return demand.inOrder().stream()
          .map(part -> pace(part.length()))
          .reduce(Rational.ZERO, Rational::plus);
    } catch (ArithmeticException pastAllDigits) {
      throw new Refusal(
          "the lengths of '%s' have no common step: round them to one, such as 1/1000"
              .formatted(demand.label()));
    }
  }

  /** The paces that a stick holds: after the last piece no kerf is needed, and nothing nests. */
  public Rational room(Stock stock) {
    return pace(stock.stretch().usable());
  }

  /** A piece must outlast its own cut, and have a shorter edge that is not less than nothing. */
  void check(Part part) {
    String name = "part '" + part.label() + "'";
    Refusal.unless(
        part.length().compareTo(kerf) >= 0,
        name + " is shorter than the kerf: correct its length or the kerf");
    Refusal.unless(
        part.length().compareTo(nest.plus(nest)) >= 0,
        name
            + " is shorter than twice the nest, so that its ends would cross:"
            + " correct its length, or say that the stock is not turned");
  }
}
