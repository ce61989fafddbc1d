package org.battenbook.cutting;

import java.math.BigInteger;
import org.battenbook.number.Rational;
import org.battenbook.unit.Dimension;

/** Writes an exact size as it would stand in a workbook. */
final class Size {
  private Size() {}

  /**
   * Whole units, and a fraction: {@code 15 3/8 in}.
   *
   * @param number in the base unit
   */
  static String text(Rational number, Dimension dimension) {
    if (number.signum() < 0) {
      return "-" + text(number.negate(), dimension);
    }
    String unit = dimension.baseSymbol();
    BigInteger whole = number.floor();
    Rational fraction = number.minus(Rational.of(whole, BigInteger.ONE));
    if (fraction.signum() == 0) {
      return whole + " " + unit;
    }
    return (whole.signum() == 0 ? "" : whole + " ") + fraction + " " + unit;
  }
}
