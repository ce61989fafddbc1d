package org.battenbook.unit;

import org.battenbook.number.Rational;

/**
 * A unit of measure.
 *
 * @param symbol as it is printed: {@code in}, {@code lb/in^2}, {@code bd ft}; empty for plain
 *     numbers
 * @param factor how many base units of the dimension one of it is, exactly: 5/127 for a millimeter,
 *     whose base unit is the inch
 */
public record Unit(String symbol, Dimension dimension, Rational factor) {
  /** The unit of plain numbers, printed as nothing. */
  public static final Unit NONE = new Unit("", Dimension.NONE, Rational.ONE);
}
