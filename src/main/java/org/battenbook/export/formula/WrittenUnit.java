package org.battenbook.export.formula;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.battenbook.number.Rational;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.unit.Form;
import org.battenbook.unit.Unit;
import org.battenbook.unit.Units;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Converts a number that a person entered in a unit other than that of its cell: {@code 297/25.4}.
 */
public final class WrittenUnit {
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("(-?[0-9][0-9./ -]*) *([^0-9 ].*)");

  private WrittenUnit() {}

  /** The entered number with its conversion. Empty if it is in the unit of the cell. */
  public static Optional<SpreadsheetText> of(String written, Value value, @Nullable Form form) {
    Matcher matcher = NUMBER_AND_UNIT.matcher(written.strip());
    boolean quantity = value instanceof Value.Amount amount && amount.quantity().number().isExact();
    if (!quantity || form == null || !matcher.matches()) {
      return Optional.empty();
    }
    return Units.find(matcher.group(2))
        .filter(unit -> !unit.factor().equals(form.unit().factor()))
        .filter(unit -> !unit.dimension().isNone())
        .flatMap(unit -> converted(matcher.group(1).strip(), unit, (Value.Amount) value, form));
  }

  private static Optional<SpreadsheetText> converted(
      String digits, Unit unit, Value.Amount value, Form form) {
    try {
      Rational number = Rational.parse(digits);
      boolean same = number.times(unit.factor()).equals(value.quantity().number());
      SpreadsheetText written =
          SpreadsheetText.reference(SpreadsheetText.number(number).toString(), Content.NUMBER);
      return same
          ? Optional.of(written.scaled(unit.factor().dividedBy(form.unit().factor())))
          : Optional.empty();
    } catch (IllegalArgumentException noNumber) {
      return Optional.empty();
    }
  }
}
