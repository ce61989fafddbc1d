package org.battenbook.plan.stick;

import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * The rules for cutting sticks.
 *
 * <p>If both edges of a stick are the same, every second mitered piece can be flipped end for end.
 * Neighbors then share a slanted cut, and overlap along the stick by {@code nest}. So N pieces take
 * the sum of (length - nest), plus N - 1 kerfs, plus one nest.
 *
 * @param kerf the length a cut takes between two neighbors, measured along the stick, at least 0
 * @param nest the width of the stick times the tangent of the cut's angle from square, at least 0;
 *     0 if pieces are not flipped
 */
public record StickRules(Rational kerf, Rational nest) {
  public StickRules {
    Refusal.unless(kerf.signum() >= 0, "the kerf must be at least 0");
    Refusal.unless(nest.signum() >= 0, "the nest must be at least 0");
  }

  /** Rules without a kerf or nesting. */
  public static StickRules bare() {
    return ofKerf(Rational.ZERO);
  }

  /** Rules with a kerf and no nesting. */
  public static StickRules ofKerf(Rational kerf) {
    return new StickRules(kerf, Rational.ZERO);
  }

  /** The distance from the start of a piece to the start of the next. */
  Rational pace(Rational length) {
    return length.minus(nest).plus(kerf);
  }

  /**
   * The length one piece or set of a demand takes of a stick: the sum of the paces of its parts.
   *
   * @throws Refusal if the sum has more digits than a number may have
   */
  public Rational pace(Demand demand) {
    try {
      return demand.inOrder().stream()
          .map(part -> pace(part.length()))
          .reduce(Rational.ZERO, Rational::plus);
    } catch (ArithmeticException pastAllDigits) {
      throw new Refusal(
          "the lengths of '%s' have no common step; round them to one, such as 1/1000"
              .formatted(demand.label()));
    }
  }

  /**
   * The total of paces that fits a stick: its usable length plus one kerf less one nest, since the
   * last piece needs no kerf and nothing nests with it.
   */
  public Rational room(Stock stock) {
    return pace(stock.stretch().usable());
  }

  /**
   * Checks that a part is at least as long as the kerf, and that its shorter edge is at least 0.
   *
   * @throws Refusal if it is not
   */
  void check(Part part) {
    String name = "part '" + part.label() + "'";
    Refusal.unless(
        part.length().compareTo(kerf) >= 0,
        name + " is shorter than the kerf; correct its length or the kerf");
    Refusal.unless(
        part.length().compareTo(nest.plus(nest)) >= 0,
        name
            + " is shorter than twice the nest, so its ends would cross;"
            + " correct its length, or do not let the stock rotate");
  }
}
