package org.battenbook.number;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * Numbers as the decimal digits that other programs read: {@code 15.375}, {@code -0.25}; never with
 * a power of ten.
 */
public final class PlainDecimal {
  /** A double holds so many digits of any decimal, and programs show no more. */
  private static final MathContext FIFTEEN_DIGITS = new MathContext(15);

  private static final BigInteger FIVE = BigInteger.valueOf(5);

  private PlainDecimal() {}

  /** A number in full where it ends as a decimal; else to fifteen digits. */
  public static String of(Real number) {
    return number instanceof Rational exact ? exactly(exact) : of(number.toDouble());
  }

  /** A double to fifteen digits: the sum of 0.1 and 0.2 is 0.3. */
  public static String of(double number) {
    return plain(BigDecimal.valueOf(number).round(FIFTEEN_DIGITS));
  }

  private static String exactly(Rational number) {
    BigDecimal numerator = new BigDecimal(number.numerator());
    BigDecimal denominator = new BigDecimal(number.denominator());
    return plain(
        endsAsDecimal(number.denominator())
            ? numerator.divide(denominator)
            : numerator.divide(denominator, FIFTEEN_DIGITS));
  }

  /** Whether a number ends as a decimal. */
  public static boolean holds(Rational number) {
    return endsAsDecimal(number.denominator());
  }

  /** Whether a denominator has no prime factors but those of ten. */
  private static boolean endsAsDecimal(BigInteger denominator) {
    BigInteger odd = denominator.shiftRight(denominator.getLowestSetBit());
    return FIVE.pow(odd.bitLength()).mod(odd).signum() == 0;
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
