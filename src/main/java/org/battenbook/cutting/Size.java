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
   * @param number not negative, in the base unit
   */
  static String text(Rational number, Dimension dimension) {
    BigInteger whole = number.floor();
    Rational fraction = number.minus(Rational.of(whole, BigInteger.ONE));
    String unit = dimension.baseSymbol();
    if (fraction.signum() == 0) {
      return whole + " " + unit;
    }
    return (whole.signum() == 0 ? "" : whole + " ") + fraction + " " + unit;
  }
}
