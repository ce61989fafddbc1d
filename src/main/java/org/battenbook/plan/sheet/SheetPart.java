package org.battenbook.plan.sheet;

import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Rectangles of one size to cut.
 *
 * @param label the name of the part; each placed piece has it
 * @param across the width on the sheet, more than 0, in the job's unit of length
 * @param down the height on the sheet, more than 0
 * @param count the number of pieces, at least 0
 * @param mayTurn whether pieces may be rotated by 90 degrees; false if the sheet has a grain
 */
public record SheetPart(String label, Rational across, Rational down, int count, boolean mayTurn) {
  public SheetPart {
    Refusal.unless(
        across.signum() > 0 && down.signum() > 0,
        "width and height of part '" + label + "' must be more than 0");
    Refusal.unless(
        count >= 0, "the quantity of part '" + label + "' must be at least 0; it is " + count);
  }

  /** The same part with another count. */
  public SheetPart times(int otherCount) {
    return new SheetPart(label, across, down, otherCount, mayTurn);
  }
}
