package org.battenbook.plan.stick;

import java.util.OptionalInt;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Sticks of one length to cut from: bought ones, or an offcut that was kept, which costs nothing.
 *
 * @param label what the sticks are called
 * @param stretch what of each stick is there to cut from
 * @param leastOffcut the shortest offcut of it worth keeping, not negative
 * @param cost of one stick, not negative; sticks that cost nothing are limited
 * @param onHand how many there are at most; empty where any number can be had
 */
public record Stock(
    String label, Stretch stretch, Rational leastOffcut, Rational cost, OptionalInt onHand) {
  public Stock {
    String stock = "stock '" + label + "'";
    Refusal.unless(
        stretch.length().signum() > 0,
        "the length of " + stock + " is not above zero: correct it, or leave that stock out");
    refuseNegative("the start of " + stock, stretch.startsAt());
    refuseNegative("the trim at the first end of " + stock, stretch.firstTrim());
    refuseNegative("the trim at the last end of " + stock, stretch.lastTrim());
    refuseNegative("the least offcut of " + stock, leastOffcut);
    refuseNegative("the cost of " + stock, cost);
    Refusal.unless(
        onHand.orElse(0) >= 0, "of " + stock + " there are fewer than none: say how many, or 0");
    Refusal.unless(
        cost.signum() > 0 || onHand.isPresent(),
        stock + " costs nothing: say how many are on hand");
  }

  private static void refuseNegative(String what, Rational number) {
    Refusal.unless(number.signum() >= 0, what + " is below zero: correct it, or say 0");
  }

  /** Any number of sticks, each at a cost; all of their length can be used. */
  public static Stock bought(String label, Rational length, Rational cost) {
    return new Stock(label, Stretch.whole(length), Rational.ZERO, cost, OptionalInt.empty());
  }

  /** Offcuts that lie there already; all of their length can be used. */
  public static Stock kept(String label, Rational length, int onHand) {
    return new Stock(
        label, Stretch.whole(length), Rational.ZERO, Rational.ZERO, OptionalInt.of(onHand));
  }

  /** Trimmed at its ends. */
  public Stock trimmed(Rational firstTrim, Rational lastTrim) {
    Stretch trimmed = new Stretch(stretch.startsAt(), stretch.length(), firstTrim, lastTrim);
    return new Stock(label, trimmed, leastOffcut, cost, onHand);
  }

  /** With offcuts kept from that length on. */
  public Stock keeping(Rational least) {
    return new Stock(label, stretch, least, cost, onHand);
  }
}
