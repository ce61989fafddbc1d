package org.battenbook.operation;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.battenbook.number.Rational;
import org.battenbook.operation.Operation.Operand;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.unit.Quantity;
import org.battenbook.unit.Unit;
import org.battenbook.unit.Units;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/**
 * Operands as the spec tables write them: {@code 132 mm}, {@code -3/16 in}, {@code "ash cap"},
 * {@code 2026-03-14}, {@code yes}, {@code row "ash cap"}, {@code unknown}; with a name before a
 * colon, {@code width: 3 in}, no literal.
 */
record Written(String text, Kind kind, Value value, boolean isLiteral) {
  private static final Pattern NUMBER = Pattern.compile("(-?[0-9][0-9 /.]*?)(?: ([^0-9 ].*))?");

  static List<Written> all(String operands) {
    return Arrays.stream(operands.split(" ; ")).map(Written::one).toList();
  }

  static Written one(String written) {
    String[] named = written.split(": ", 2);
    return named.length == 2
        ? new Written(named[0], kind(value(named[1])), value(named[1]), false)
        : new Written(written, kind(value(written)), value(written), true);
  }

  Operand operand() {
    return new Operand(
        kind,
        text,
        isLiteral && value instanceof Value.Amount amount
            ? (Rational) amount.quantity().number()
            : null);
  }

  /** As a literal, or as the cell of its name. */
  SpreadsheetText spreadsheet() {
    if (value instanceof Value.Row) {
      return SpreadsheetText.row(
          SpreadsheetText.reference(text + "_number", Content.NUMBER),
          SpreadsheetText.reference(text + "_name", Content.TEXT));
    }
    if (!isLiteral) {
      return SpreadsheetText.reference(text, content());
    }
    if (value instanceof Value.Amount amount) {
      return SpreadsheetText.number((Rational) amount.quantity().number());
    }
    return value instanceof Value.Text words
        ? SpreadsheetText.text(words.text())
        : SpreadsheetText.truth(((Value.YesNo) value).yes());
  }

  private Content content() {
    if (value instanceof Value.Amount) {
      return Content.NUMBER;
    }
    if (value instanceof Value.Day) {
      return Content.DATE;
    }
    return value instanceof Value.Text ? Content.TEXT : Content.YES_NO;
  }

  private static Value value(String written) {
    if (written.startsWith("row ")) {
      return new Value.Row("mouldings", 0, unquoted(written.substring(4)));
    }
    if (written.startsWith("\"")) {
      return new Value.Text(unquoted(written));
    }
    if (written.matches("\\d{4}-\\d\\d-\\d\\d")) {
      return new Value.Day(LocalDate.parse(written));
    }
    return switch (written) {
      case "yes" -> new Value.YesNo(true);
      case "no" -> new Value.YesNo(false);
      case "unknown" -> new Value.Waiting("elsewhere", true);
      default -> amount(written);
    };
  }

  private static Value amount(String written) {
    Matcher matcher = NUMBER.matcher(written);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(written);
    }
    Rational number = Rational.parse(matcher.group(1));
    Unit unit = matcher.group(2) == null ? Unit.NONE : Units.find(matcher.group(2)).orElseThrow();
    return new Value.Amount(new Quantity(number.times(unit.factor()), unit.dimension()));
  }

  private static Kind kind(Value value) {
    if (value instanceof Value.Amount amount) {
      return new Kind.Measured(amount.quantity().dimension());
    }
    if (value instanceof Value.Row row) {
      return new Kind.RowOf(row.table());
    }
    if (value instanceof Value.Text) {
      return Kind.TEXT;
    }
    if (value instanceof Value.Day) {
      return Kind.DATE;
    }
    return value instanceof Value.YesNo ? Kind.YES_NO : Kind.UNKNOWN;
  }

  private static String unquoted(String quoted) {
    return quoted.substring(1, quoted.length() - 1);
  }
}
