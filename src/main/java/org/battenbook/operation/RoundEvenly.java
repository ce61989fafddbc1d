package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.choice;
import static org.battenbook.operation.SpreadsheetText.number;

import org.battenbook.number.Rational;
import org.battenbook.number.Rounding;

/** {@code a rounded evenly to b}: to the nearest step, a tie to the even one. */
final class RoundEvenly extends RoundToStep {
  RoundEvenly() {
    super("rounded evenly", Rounding.EVENLY);
  }

  @Override
  SpreadsheetText whole(SpreadsheetText value, SpreadsheetText steps) {
    SpreadsheetText isTie =
        steps.minus(call("INT", steps)).compared("=", number(Rational.of(1, 2)));
    SpreadsheetText even = number(2).times(call("ROUND", steps.dividedBy(number(2)), number(0)));
    return choice(isTie, even, call("ROUND", steps, number(0)));
  }
}
