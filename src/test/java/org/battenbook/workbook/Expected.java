package org.battenbook.workbook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Unit;
import org.battenbook.unit.Units;
import org.battenbook.value.Value;

/**
 * What a value should come to, as people write it: {@code 19 3/8 in} exactly, {@code ≈ 10.072169
 * in} to the last place that is written, {@code 3/8 in ± 1/32 in} within bounds, {@code yes},
 * {@code "one small hanger"} for a row.
 */
record Expected(String written) {
  private static final Pattern AMOUNT = Pattern.compile("(?<number>[0-9][0-9 ./]*)(?<unit>.*)");
  private static final Pattern LAST_PLACE = Pattern.compile("[0-9]+\\.(?<places>[0-9]+)");

  /** Whether a value is this one, and exact unless it may be near. */
  boolean agrees(Value value) {
    if (value instanceof Value.YesNo yesNo) {
      return written.equals(yesNo.yes() ? "yes" : "no");
    }
    if (value instanceof Value.Row row) {
      return written.equals('"' + row.name() + '"');
    }
    if (!(value instanceof Value.Amount amount)) {
      return false;
    }
    String[] centerAndBound = written.replaceFirst("^≈ ", "").split(" ± ", 2);
    Real number = amount.quantity().number();
    return unit(centerAndBound[0]).dimension().equals(amount.quantity().dimension())
        && (isExact() ? number.equals(number(centerAndBound[0])) : isNear(number, centerAndBound));
  }

  private boolean isExact() {
    return !written.startsWith("≈") && !written.contains("±");
  }

  private static boolean isNear(Real number, String[] centerAndBound) {
    String center = centerAndBound[0];
    Rational bound = centerAndBound.length == 2 ? number(centerAndBound[1]) : lastPlace(center);
    return number.minus(number(center)).abs().compareTo(bound) <= 0;
  }

  /** One of the last place that is written: {@code 10.072169 in} is good to 0.000001 in. */
  private static Rational lastPlace(String center) {
    Matcher matcher = LAST_PLACE.matcher(amount(center).group("number").strip());
    if (!matcher.matches()) {
      throw new IllegalArgumentException("no decimals in " + center);
    }
    return Rational.of(1, 10).pow(matcher.group("places").length()).times(unit(center).factor());
  }

  private static Rational number(String written) {
    return Rational.parse(amount(written).group("number").strip()).times(unit(written).factor());
  }

  private static Unit unit(String written) {
    String symbol = amount(written).group("unit").strip();
    return symbol.isEmpty()
        ? new Unit("", Dimension.NONE, Rational.ONE)
        : Units.find(symbol).orElseThrow();
  }

  private static Matcher amount(String written) {
    Matcher matcher = AMOUNT.matcher(written);
    if (!matcher.matches()) {
      throw new IllegalArgumentException("no amount: " + written);
    }
    return matcher;
  }
}
