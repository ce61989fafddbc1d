package org.battenbook.export.formula;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.choice;
import static org.battenbook.operation.SpreadsheetText.number;
import static org.battenbook.operation.SpreadsheetText.text;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.unit.Form;
import org.jspecify.annotations.Nullable;

/**
 * Turns a number into a text, as the workbook shows it: a fraction, a decimal or a whole number. An
 * {@code ≈} marks a number that the form cannot show exactly.
 */
final class ShownNumber {
  private static final BigInteger MOST_FRACTIONS = BigInteger.valueOf(64);
  private static final SpreadsheetText ZERO = number(0);
  private static final SpreadsheetText NOTHING = text("");
  private static final int DIGITS = 6;
  private static final SpreadsheetText NOISE = number(Rational.of(1, 1_000_000_000));

  private final SpreadsheetText steps;
  private final Rational step;
  private final String unit;

  private ShownNumber(SpreadsheetText steps, Rational step, String unit) {
    this.steps = steps;
    this.step = step;
    this.unit = spaced(unit);
  }

  private static String spaced(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }

  /**
   * The text of a number.
   *
   * @param number in base units
   * @param form null if the workbook shows a plain fraction
   */
  static SpreadsheetText of(SpreadsheetText number, @Nullable Form form) {
    if (form == null || form.isFeetAndInches()) {
      throw new Inexpressible("it shows a number in a form that spreadsheets have none for");
    }
    Rational step = form.step();
    if (step == null) {
      return free(number.scaled(Rational.ONE.dividedBy(form.unit().factor())), form);
    }
    SpreadsheetText steps = number.scaled(Rational.ONE.dividedBy(step.times(form.unit().factor())));
    ShownNumber shown =
        new ShownNumber(call("ROUND", steps, number(DIGITS)), step, form.unit().symbol());
    return form.isDecimal() ? shown.decimals() : shown.fractions();
  }

  /** As many decimal places as it needs, up to six; if it needs more, three, or four figures. */
  private static SpreadsheetText free(SpreadsheetText number, Form form) {
    if (form.unit().dimension().currency().isPresent()) {
      throw new Inexpressible("it shows a price in a form that spreadsheets have none for");
    }
    SpreadsheetText places = number(DIGITS);
    for (int i = DIGITS - 1; i >= 0; i--) {
      SpreadsheetText enough = rounded(number, DIGITS).compared("=", rounded(number, i));
      places = choice(enough, number(i), places);
    }
    SpreadsheetText figures = number(3).minus(call("INT", call("LOG10", call("ABS", number))));
    SpreadsheetText near = text("≈ ").joined(fixed(number, call("MAX", number(3), figures)));
    SpreadsheetText off = call("ABS", number.minus(rounded(number, DIGITS)));
    SpreadsheetText digits = choice(off.compared("<=", NOISE), fixed(number, places), near);
    return digits.joined(text(spaced(form.unit().symbol())));
  }

  private static SpreadsheetText rounded(SpreadsheetText number, int places) {
    return call("ROUND", number, number(places));
  }

  private static SpreadsheetText fixed(SpreadsheetText number, SpreadsheetText places) {
    return call("FIXED", Content.TEXT, List.of(number, places, SpreadsheetText.truth(true)));
  }

  private SpreadsheetText decimals() {
    SpreadsheetText rounded = call("SIGN", steps).times(nearest()).scaled(step);
    return mark().joined(fixed(rounded, number(places()))).joined(text(unit));
  }

  private int places() {
    int places = 0;
    for (Rational left = step; !left.isWhole(); left = left.times(Rational.of(10))) {
      places++;
    }
    return places;
  }

  private SpreadsheetText fractions() {
    BigInteger denominator = step.denominator();
    if (!step.numerator().equals(BigInteger.ONE) || denominator.compareTo(MOST_FRACTIONS) > 0) {
      throw new Inexpressible("it shows finer fractions than a formula can list");
    }
    SpreadsheetText parts = number(Rational.of(denominator, BigInteger.ONE));
    SpreadsheetText whole = call("INT", nearest().dividedBy(parts));
    SpreadsheetText rest = nearest().minus(parts.times(whole));
    SpreadsheetText before = choice(whole.compared("=", ZERO), NOTHING, whole.joined(text(" ")));
    SpreadsheetText mixed = before.joined(fraction(rest, denominator.intValueExact()));
    SpreadsheetText digits = choice(rest.compared("=", ZERO), whole.joined(NOTHING), mixed);
    SpreadsheetText minus =
        choice(steps.compared("<=", number(Rational.of(-1, 2))), text("-"), NOTHING);
    return mark().joined(minus).joined(digits).joined(text(unit));
  }

  private static SpreadsheetText fraction(SpreadsheetText rest, int denominator) {
    List<SpreadsheetText> choose = new ArrayList<>(List.of(rest));
    for (int i = 1; i < denominator; i++) {
      choose.add(text(Rational.of(i, denominator).toString()));
    }
    return call("CHOOSE", Content.TEXT, choose);
  }

  /** The number of steps without its sign. A tie rounds away from zero. */
  private SpreadsheetText nearest() {
    return call("INT", call("ABS", steps).plus(number(Rational.of(1, 2))));
  }

  private SpreadsheetText isOffStep() {
    return steps.compared("<>", call("ROUND", steps, ZERO));
  }

  private SpreadsheetText mark() {
    return choice(isOffStep(), text("≈ "), NOTHING);
  }
}
