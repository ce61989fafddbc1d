package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.number;

import org.battenbook.number.Rational;
import org.battenbook.number.Rounding;

/** {@code a rounded to b}: to the nearest step, a tie away from zero. */
final class RoundNearest extends RoundToStep {
  RoundNearest() {
    super("rounded", Rounding.NEAREST);
  }

  @Override
  SpreadsheetText whole(SpreadsheetText value, SpreadsheetText steps) {
    return call("SIGN", value)
        .times(call("INT", call("ABS", steps).plus(number(Rational.of(1, 2)))));
  }
}
