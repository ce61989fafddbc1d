package org.battenbook.cutting;

import java.math.BigInteger;
import org.battenbook.bound.Bound;
import org.battenbook.number.Rational;

/** Refuses numbers with more digits than a workbook can hold. */
final class DigitLimit {
  private DigitLimit() {}

  private static String digits(Rational number) {
    BigInteger whole = number.floor();
    Rational fraction = number.minus(Rational.of(whole, BigInteger.ONE));
    if (fraction.signum() == 0) {
      return whole.toString();
    }
    return (whole.signum() == 0 ? "" : whole + " ") + fraction;
  }

  /**
   * A number that a person wrote, or that comes of what they wrote; planners add many of them up.
   *
   * @throws NotPlannable if a workbook could not hold it
   */
  static Rational writable(Rational number, String what) throws NotPlannable {
    if (!isWritable(number)) {
      throw tooManyDigits(what, "it");
    }
    return number;
  }

  /** Whether a workbook can hold a number. */
  static boolean isWritable(Rational number) {
    return number.isSmall() || !Bound.WRITTEN_DIGITS.isPassedBy(digits(number.abs()).length());
  }

  /**
   * Why a number that comes of sizes cannot be written.
   *
   * @param what the number is, in words that begin a sentence
   * @param sizes what is to be rounded
   */
  static NotPlannable tooManyDigits(String what, String sizes) {
    return new NotPlannable(
        "%s has more than %s; round %s up to a step, such as 1/64 in"
            .formatted(what, Bound.WRITTEN_DIGITS.shown(), sizes));
  }
}
