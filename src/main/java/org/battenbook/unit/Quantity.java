package org.battenbook.unit;

import org.battenbook.number.Rational;
import org.battenbook.number.Real;

/**
 * A number of some dimension.
 *
 * @param number in base units of the dimension
 */
public record Quantity(Real number, Dimension dimension) {

  /** So many of a unit: 25.4 mm is the quantity of 1 in. */
  public static Quantity of(Rational number, Unit unit) {
    return new Quantity(number.times(unit.factor()), unit.dimension());
  }

  /** A count or a ratio. */
  public static Quantity of(Rational number) {
    return new Quantity(number, Dimension.NONE);
  }

  /**
   * How many of a unit it is.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public Real in(Unit unit) {
    if (!unit.dimension().equals(dimension)) {
      throw new IllegalArgumentException(
          dimension.words() + " is not measured in " + unit.symbol());
    }
    return number.dividedBy(unit.factor());
  }
}
