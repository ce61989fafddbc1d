package org.battenbook.syntax;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.battenbook.number.Rational;

/** Prints numbers as formulas write them: exactly, and as they are written at the bench. */
public final class NumberPrinter {
  /** The finest fraction that a rule has; below it, decimals read better where they are exact. */
  private static final BigInteger FINEST_FRACTION = BigInteger.valueOf(64);

  private NumberPrinter() {}

  /** A number that is not negative: {@code 15}, {@code 15 3/8}, {@code 0.01}, {@code 1/3}. */
  public static String print(Rational number) {
    if (number.isWhole()) {
      return number.numerator().toString();
    }
    boolean fine = number.denominator().compareTo(FINEST_FRACTION) > 0;
    return isDecimal(number) && (fine || !isBinary(number)) ? decimal(number) : mixed(number);
  }

  /** The same as a decimal, {@code 1.0} for a whole; for numbers that have one. */
  static String decimal(Rational number) {
    String digits =
        new BigDecimal(number.numerator())
            .divide(new BigDecimal(number.denominator()))
            .toPlainString();
    return digits.indexOf('.') < 0 ? digits + ".0" : digits;
  }

  /** Whether the number has a decimal without end or remainder: no prime but 2 and 5 below. */
  private static boolean isDecimal(Rational number) {
    BigInteger rest = number.denominator();
    rest = rest.shiftRight(rest.getLowestSetBit());
    BigInteger five = BigInteger.valueOf(5);
    while (rest.mod(five).signum() == 0) {
      rest = rest.divide(five);
    }
    return rest.equals(BigInteger.ONE);
  }

  private static boolean isBinary(Rational number) {
    return number.denominator().bitCount() == 1;
  }

  /** The same as a fraction or a mixed number, {@code 1/16}; a whole as it is. */
  static String fraction(Rational number) {
    return number.isWhole() ? number.numerator().toString() : mixed(number);
  }

  private static String mixed(Rational number) {
    BigInteger[] parts = number.numerator().divideAndRemainder(number.denominator());
    String fraction = parts[1] + "/" + number.denominator();
    return parts[0].signum() == 0 ? fraction : parts[0] + " " + fraction;
  }
}
