package org.battenbook.export.file;

import java.math.BigInteger;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.unit.Form;
import org.jspecify.annotations.Nullable;

/**
 * The codes of number formats, in the syntax of ISO/IEC 29500-1, section 18.8.31. No format hides
 * that a value is off the step of its form: such a value is shown in decimals.
 */
public final class NumberFormats {
  /** The program chooses the digits. For counts and short decimals. */
  public static final String GENERAL = "General";

  public static final String TEXT = "@";
  public static final String DATE = "yyyy-mm-dd";

  /** For programs that store yes as 1 and no as 0. */
  public static final String YES_NO = "\"yes\";\"yes\";\"no\"";

  private static final String FEET = "0.00##";
  private static final String WHOLE = "0";
  private static final int MOST_PLACES = 6;
  private static final int ROUNDED_PLACES = 4;
  private static final BigInteger TWO_DIGITS = BigInteger.valueOf(99);
  private static final BigInteger THREE_DIGITS = BigInteger.valueOf(999);

  private NumberFormats() {}

  /**
   * The format of a number in its form.
   *
   * @param number the number, in the unit of the form
   */
  public static String of(Form form, Real number) {
    if (!(number instanceof Rational exact)) {
      return decimals(ROUNDED_PLACES);
    }
    Rational step = step(form);
    if (form.isFeetAndInches()) {
      return FEET;
    }
    if (step == null) {
      return free(exact);
    }
    return exact.dividedBy(step).isWhole() ? onStep(form, step) : offStep(exact);
  }

  /** The step of the form. For a currency without a minor unit it is 1. */
  private static @Nullable Rational step(Form form) {
    boolean wholeMoney = form.step() == null && form.unit().dimension().isMoney();
    return wholeMoney ? Rational.ONE : form.step();
  }

  /** The format of a form for a value that is not known. */
  public static String of(Form form) {
    Rational step = step(form);
    if (form.isFeetAndInches()) {
      return FEET;
    }
    return step == null ? GENERAL : onStep(form, step);
  }

  private static String onStep(Form form, Rational step) {
    if (form.unit().dimension().isMoney()) {
      return "#,##" + decimals(places(step));
    }
    return form.isDecimal() ? decimals(places(step)) : fractions(step.denominator());
  }

  /**
   * Fractions in lowest terms. The format has room for the denominator of the step, so every number
   * on the step is shown exactly.
   */
  private static String fractions(BigInteger denominator) {
    if (denominator.equals(BigInteger.ONE)) {
      return WHOLE;
    }
    if (denominator.compareTo(TWO_DIGITS) <= 0) {
      return "# ??/??";
    }
    return denominator.compareTo(THREE_DIGITS) <= 0 ? "# ???/???" : decimals(MOST_PLACES);
  }

  private static String offStep(Rational exact) {
    return decimals(Math.max(2, Math.min(places(exact), ROUNDED_PLACES)));
  }

  private static String free(Rational exact) {
    int places = places(exact);
    boolean small = exact.abs().compareTo(Rational.of(1, 100)) < 0;
    return places <= ROUNDED_PLACES || small ? GENERAL : decimals(ROUNDED_PLACES);
  }

  /** How many decimal places a number takes. One more than the most if the decimal does not end. */
  private static int places(Rational number) {
    int places = 0;
    Rational left = number;
    while (!left.isWhole() && places <= MOST_PLACES) {
      left = left.times(Rational.of(10));
      places++;
    }
    return places;
  }

  private static String decimals(int places) {
    return places == 0 ? WHOLE : WHOLE + "." + WHOLE.repeat(places);
  }
}
