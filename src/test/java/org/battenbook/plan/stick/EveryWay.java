package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.battenbook.number.Rational;
import org.jspecify.annotations.Nullable;

/** Tries every way of cutting a small job: each piece onto each open stick, or onto a new one. */
final class EveryWay {
  private final StickJob job;

  /** What lies side by side: one piece, or those of a set. */
  private final List<List<Rational>> pieces = new ArrayList<>();

  private final int[] taken;
  private final List<Open> sticks = new ArrayList<>();
  private @Nullable Rational least;

  /** A stick in the making: where the next piece begins, and where the last may end. */
  private record Open(Rational next, Rational end) {
    static Open of(Stock stock) {
      Stretch stretch = stock.stretch();
      Rational usable = stretch.length().minus(stretch.firstTrim()).minus(stretch.lastTrim());
      return new Open(Rational.ZERO, usable);
    }

    /** Null where there is no room. */
    @Nullable Open with(List<Rational> lengths, StickRules rules) {
      Rational at = next;
      for (Rational length : lengths) {
        if (at.plus(length).compareTo(end) > 0) {
          return null;
        }
        at = at.plus(length).plus(rules.kerf()).minus(rules.nest());
      }
      return new Open(at, end);
    }
  }

  private EveryWay(StickJob job) {
    this.job = job;
    this.taken = new int[job.stocks().size()];
    for (Demand demand : job.demands()) {
      boolean fits = job.stocks().stream().anyMatch(stock -> holds(job.rules(), stock, demand));
      for (int i = 0; i < demand.count() && fits; i++) {
        pieces.add(lengths(demand));
      }
    }
    pieces.sort(Comparator.comparing((List<Rational> piece) -> piece.get(0)).reversed());
  }

  /** Null where the stock does not suffice. What is too long for all stock is left out. */
  static @Nullable Rational leastCost(StickJob job) {
    EveryWay ways = new EveryWay(job);
    ways.place(0, Rational.ZERO);
    return ways.least;
  }

  /** Whether there is room on a new stick. */
  static boolean holds(StickRules rules, Stock stock, Demand demand) {
    return Open.of(stock).with(lengths(demand), rules) != null;
  }

  private static List<Rational> lengths(Demand demand) {
    return demand.inOrder().stream().map(Part::length).toList();
  }

  private void place(int piece, Rational cost) {
    if (least != null && cost.compareTo(least) >= 0) {
      return;
    }
    if (piece == pieces.size()) {
      least = cost;
      return;
    }
    for (int stick = 0; stick < sticks.size(); stick++) {
      onto(stick, piece, cost);
    }
    for (int stock = 0; stock < taken.length; stock++) {
      ontoNew(stock, piece, cost);
    }
  }

  private void onto(int stick, int piece, Rational cost) {
    Open before = sticks.get(stick);
    Open after = before.with(pieces.get(piece), job.rules());
    if (after != null) {
      sticks.set(stick, after);
      place(piece + 1, cost);
      sticks.set(stick, before);
    }
  }

  private void ontoNew(int number, int piece, Rational cost) {
    Stock stock = job.stocks().get(number);
    if (taken[number] < stock.onHand().orElse(Integer.MAX_VALUE)) {
      taken[number]++;
      sticks.add(Open.of(stock));
      onto(sticks.size() - 1, piece, cost.plus(stock.cost()));
      sticks.remove(sticks.size() - 1);
      taken[number]--;
    }
  }
}
