package org.battenbook.plan.sheet;

import java.util.OptionalInt;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Sheets of one size to cut from: bought ones, or an offcut that was kept, which costs nothing.
 *
 * @param label what the sheets are called
 * @param across how wide as it lies there, its edges included, greater than zero
 * @param down how high, greater than zero
 * @param cost of one sheet, not negative; sheets that cost nothing are limited
 * @param onHand how many there are at most; empty where any number can be had
 * @param trims what is cut off first
 * @param leastOffcut an offcut is kept where neither side is shorter than this
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
        "a side of stock '" + label + "' is not above zero: correct it, or leave that stock out");
    Refusal.unless(
        cost.signum() >= 0,
        "the cost of stock '" + label + "' is below zero: correct it, or say 0");
    Refusal.unless(
        onHand.orElse(0) >= 0,
        "of stock '" + label + "' there are fewer than none: say how many, or 0");
    Refusal.unless(
        cost.signum() > 0 || onHand.isPresent(),
        "stock '" + label + "' costs nothing: say how many are on hand");
    Refusal.unless(
        leastOffcut.signum() >= 0,
        "the least offcut of stock '" + label + "' is below zero: correct it, or say 0");
  }

  /** Any number of sheets, each at a cost, with no trims; every offcut is kept. */
  public static SheetStock bought(String label, Rational across, Rational down, Rational cost) {
    return new SheetStock(
        label, across, down, cost, OptionalInt.empty(), SheetTrims.NONE, Rational.ZERO);
  }

  /** Offcuts that lie there already. */
  public static SheetStock kept(String label, Rational across, Rational down, int onHand) {
    return new SheetStock(
        label, across, down, Rational.ZERO, OptionalInt.of(onHand), SheetTrims.NONE, Rational.ZERO);
  }

  /** Whether a part lies within it, turned if it may be. */
  public boolean holds(SheetPart part) {
    return holds(part.across(), part.down())
        || (part.mayTurn() && holds(part.down(), part.across()));
  }

  private boolean holds(Rational partAcross, Rational partDown) {
    return partAcross.compareTo(usableAcross()) <= 0 && partDown.compareTo(usableDown()) <= 0;
  }

  /** What the trims leave of it across. */
  Rational usableAcross() {
    return across.minus(trims.left()).minus(trims.right());
  }

  /** What the trims leave of it down. */
  Rational usableDown() {
    return down.minus(trims.top()).minus(trims.bottom());
  }
}
