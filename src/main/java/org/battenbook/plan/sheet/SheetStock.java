package org.battenbook.plan.sheet;

import java.util.OptionalInt;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Sheets of one size to cut from: bought sheets, or offcuts from stock, which cost nothing.
 *
 * @param label the name of the stock
 * @param across the width including trims, more than 0, in the job's unit of length
 * @param down the height including trims, more than 0
 * @param cost the cost of one sheet, at least 0; a sheet that costs 0 needs {@code onHand}
 * @param onHand the number available; empty if any number can be bought
 * @param trims what to cut off the edges first
 * @param leastOffcut the minimum offcut: offcuts are kept if both sides are at least this long
 */
public record SheetStock(
    String label,
    Rational across,
    Rational down,
    Rational cost,
    OptionalInt onHand,
    SheetTrims trims,
    Rational leastOffcut) {
  public SheetStock {
    Refusal.unless(
        across.signum() > 0 && down.signum() > 0,
        "width and height of stock '" + label + "' must be more than 0");
    Refusal.unless(cost.signum() >= 0, "the cost of stock '" + label + "' must be at least 0");
    Refusal.unless(onHand.orElse(0) >= 0, "the count of stock '" + label + "' must be at least 0");
    Refusal.unless(
        cost.signum() > 0 || onHand.isPresent(),
        "stock '" + label + "' costs nothing; enter how many are on hand");
    Refusal.unless(
        leastOffcut.signum() >= 0,
        "the minimum offcut of stock '" + label + "' must be at least 0");
  }

  /** Sheets that can be bought in any number, without trims; every offcut is kept. */
  public static SheetStock bought(String label, Rational across, Rational down, Rational cost) {
    return new SheetStock(
        label, across, down, cost, OptionalInt.empty(), SheetTrims.NONE, Rational.ZERO);
  }

  /** Offcuts from stock, at no cost, without trims; every offcut of them is kept. */
  public static SheetStock kept(String label, Rational across, Rational down, int onHand) {
    return new SheetStock(
        label, across, down, Rational.ZERO, OptionalInt.of(onHand), SheetTrims.NONE, Rational.ZERO);
  }

  /** Whether a part fits the usable area, rotated if that is allowed. */
  public boolean holds(SheetPart part) {
    return holds(part.across(), part.down())
        || (part.mayTurn() && holds(part.down(), part.across()));
  }

  private boolean holds(Rational partAcross, Rational partDown) {
    return partAcross.compareTo(usableAcross()) <= 0 && partDown.compareTo(usableDown()) <= 0;
  }

  /** The width between the trims. */
  Rational usableAcross() {
    return across.minus(trims.left()).minus(trims.right());
  }

  /** The height between the trims. */
  Rational usableDown() {
    return down.minus(trims.top()).minus(trims.bottom());
  }
}
