package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.call;

import org.battenbook.number.Rounding;

/** {@code a rounded up to b}: toward plus infinity. */
final class RoundUp extends RoundToStep {
  RoundUp() {
    super("rounded up", Rounding.UP);
  }

  @Override
  SpreadsheetText whole(SpreadsheetText value, SpreadsheetText steps) {
    return call("INT", steps.negate()).negate();
  }
}
