package org.battenbook.plan.sheet;

import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Rectangles of one size to be cut.
 *
 * @param label what the pieces are called; the plan gives it back with each of them
 * @param across how wide as it lies on the sheet, greater than zero, in the unit of all lengths of
 *     a job
 * @param down how high, greater than zero
 * @param count how many, not negative
 * @param mayTurn whether a quarter turn is allowed, as it is not where the sheet has a grain
 */
public record SheetPart(String label, Rational across, Rational down, int count, boolean mayTurn) {
  public SheetPart {
    Refusal.unless(
        across.signum() > 0 && down.signum() > 0,
        "a side of part '" + label + "' is not above zero: correct it, or ask for none");
    Refusal.unless(
        count >= 0,
        "part '" + label + "' is asked for " + count + " times: say how many, or 0 for none");
  }

  /** The same, so many times. */
  public SheetPart times(int otherCount) {
    return new SheetPart(label, across, down, otherCount, mayTurn);
  }
}
