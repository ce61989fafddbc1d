package org.battenbook.number;

import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads numbers as they are written at the bench. */
final class RationalReader {
  private static final Pattern FORM =
      Pattern.compile(
          "(?<minus>-)?(?:(?<whole>[0-9]+)(?:\\.(?<places>[0-9]+))?"
              + "|(?:(?<wholes>[0-9]+) +)?(?<top>[0-9]+)/(?<bottom>[0-9]+))");

  /** More digits than this are past {@link Rational#MOST_BITS} unless they begin with zeros. */
  private static final int MOST_DIGITS = Rational.MOST_BITS / 3;

  private RationalReader() {}

  static Rational read(String text) {
    if (text.length() > MOST_DIGITS) {
      Rational.refusePast(Long.MAX_VALUE);
    }
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      throw new NumberFormatException(
          "'" + text + "' is not a number; write 15, 3/8, 15 3/8 or 15.5");
    }
    Rational magnitude = form.group("whole") != null ? decimal(form) : fraction(form);
    return form.group("minus") == null ? magnitude : magnitude.negate();
  }

  private static Rational decimal(Matcher form) {
    String places = orEmpty(form, "places");
    BigInteger digits = new BigInteger(orEmpty(form, "whole") + places);
    return Rational.of(digits, BigInteger.TEN.pow(places.length()));
  }

  private static Rational fraction(Matcher form) {
    BigInteger wholes = new BigInteger("0" + orEmpty(form, "wholes"));
    BigInteger top = new BigInteger(orEmpty(form, "top"));
    BigInteger bottom = new BigInteger(orEmpty(form, "bottom"));
    return Rational.of(wholes.multiply(bottom).add(top), bottom);
  }

  private static String orEmpty(Matcher form, String group) {
    String found = form.group(group);
    return found == null ? "" : found;
  }
}
