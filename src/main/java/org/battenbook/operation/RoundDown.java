package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.call;

import org.battenbook.number.Rounding;

/** {@code a rounded down to b}: toward minus infinity. */
final class RoundDown extends RoundToStep {
  RoundDown() {
    super("rounded down", Rounding.DOWN);
  }

  @Override
  SpreadsheetText whole(SpreadsheetText value, SpreadsheetText steps) {
    return call("INT", steps);
  }
}
