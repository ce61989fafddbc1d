package org.battenbook.cutting;

import java.math.BigInteger;
import org.battenbook.number.Rational;
import org.battenbook.unit.Dimension;

/** Writes an exact size as it would stand in a workbook. */
final class Size {
  private static final String LENGTH_UNIT = Dimension.LENGTH.baseSymbol();

  private Size() {}

  /** A length in the base unit, as {@link #text} writes it; plans have thousands of them. */
  static String length(Rational number) {
    return text(number, LENGTH_UNIT);
  }

  /**
   * Whole units, and a fraction: {@code 15 3/8 in}.
   *
   * @param number in the base unit
   */
  static String text(Rational number, Dimension dimension) {
    return text(number, dimension.baseSymbol());
  }

  private static String text(Rational number, String unit) {
    if (number.signum() < 0) {
      return "-" + text(number.negate(), unit);
    }
    BigInteger whole = number.floor();
    Rational fraction = number.minus(Rational.of(whole, BigInteger.ONE));
    if (fraction.signum() == 0) {
      return whole + " " + unit;
    }
    return (whole.signum() == 0 ? "" : whole + " ") + fraction + " " + unit;
  }
}
