package org.battenbook.plan;

import java.util.OptionalInt;
import org.battenbook.number.Rational;

/**
 * Sticks of one length to cut from: bought ones, or an offcut that was kept, which costs nothing.
 *
 * @param label what the sticks are called
 * @param length of a stick as it lies there, its ends included, greater than zero
 * @param cost of one stick, not negative; sticks that cost nothing are limited
 * @param onHand how many there are at most; empty where any number can be had
 */
public record Stock(String label, Rational length, Rational cost, OptionalInt onHand) {
  public Stock {
    Refusal.unless(length.signum() > 0, "the length of stock '" + label + "' is not above zero");
    Refusal.unless(cost.signum() >= 0, "the cost of stock '" + label + "' is below zero");
    Refusal.unless(onHand.orElse(0) >= 0, "of stock '" + label + "' there are fewer than none");
    Refusal.unless(
        cost.signum() > 0 || onHand.isPresent(),
        "stock '" + label + "' costs nothing: say how many are on hand");
  }

  /** Any number of sticks, each at a cost. */
  public static Stock bought(String label, Rational length, Rational cost) {
    return new Stock(label, length, cost, OptionalInt.empty());
  }

  /** Offcuts that lie there already. */
  public static Stock kept(String label, Rational length, int onHand) {
    return new Stock(label, length, Rational.ZERO, OptionalInt.of(onHand));
  }
}
