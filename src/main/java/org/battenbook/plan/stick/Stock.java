package org.battenbook.plan.stick;

import java.util.OptionalInt;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Sticks of one length to cut from: bought sticks, or offcuts from stock, which cost nothing.
 *
 * @param label the name of the stock
 * @param stretch the part of each stick to cut from
 * @param leastOffcut the minimum offcut: the shortest one to keep, at least 0
 * @param cost the cost of one stick, at least 0; a stick that costs 0 needs {@code onHand}
 * @param onHand the number available; empty if any number can be bought
 */
public record Stock(
    String label, Stretch stretch, Rational leastOffcut, Rational cost, OptionalInt onHand) {
  public Stock {
    String stock = "stock '" + label + "'";
    Refusal.unless(
        stretch.length().signum() > 0, "the length of " + stock + " must be more than 0");
    refuseNegative("the start of " + stock, stretch.startsAt());
    refuseNegative("the left trim of " + stock, stretch.firstTrim());
    refuseNegative("the right trim of " + stock, stretch.lastTrim());
    refuseNegative("the minimum offcut of " + stock, leastOffcut);
    refuseNegative("the cost of " + stock, cost);
    Refusal.unless(onHand.orElse(0) >= 0, "the count of " + stock + " must be at least 0");
    Refusal.unless(
        cost.signum() > 0 || onHand.isPresent(),
        stock + " costs nothing; enter how many are on hand");
  }

  private static void refuseNegative(String what, Rational number) {
    Refusal.unless(number.signum() >= 0, what + " must be at least 0");
  }

  /** Sticks that can be bought in any number, without trims; every offcut is kept. */
  public static Stock bought(String label, Rational length, Rational cost) {
    return new Stock(label, Stretch.whole(length), Rational.ZERO, cost, OptionalInt.empty());
  }

  /** Offcuts from stock, at no cost, without trims; every offcut of them is kept. */
  public static Stock kept(String label, Rational length, int onHand) {
    return new Stock(
        label, Stretch.whole(length), Rational.ZERO, Rational.ZERO, OptionalInt.of(onHand));
  }

  /** The same stock with trims at its ends. */
  public Stock trimmed(Rational firstTrim, Rational lastTrim) {
    Stretch trimmed = new Stretch(stretch.startsAt(), stretch.length(), firstTrim, lastTrim);
    return new Stock(label, trimmed, leastOffcut, cost, onHand);
  }

  /** The same stock with another minimum offcut. */
  public Stock keeping(Rational least) {
    return new Stock(label, stretch, least, cost, onHand);
  }
}
