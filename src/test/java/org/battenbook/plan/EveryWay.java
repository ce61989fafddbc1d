package org.battenbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.battenbook.number.Rational;
import org.jspecify.annotations.Nullable;

/** Tries every way of cutting a small job: each piece onto each open stick, or onto a new one. */
final class EveryWay {
  private final StickJob job;
  private final List<Rational> pieces = new ArrayList<>();
  private final int[] taken;
  private final List<Rational> rooms = new ArrayList<>();
  private @Nullable Rational least;

  private EveryWay(StickJob job) {
    this.job = job;
    this.taken = new int[job.stocks().size()];
    for (Part part : job.parts()) {
      for (int i = 0; i < part.count() && fitsSomething(part); i++) {
        pieces.add(part.length());
      }
    }
    pieces.sort(Comparator.reverseOrder());
  }

  /** Null where the stock does not suffice. Parts too long for all stock are left out. */
  static @Nullable Rational leastCost(StickJob job) {
    EveryWay ways = new EveryWay(job);
    ways.place(0, Rational.ZERO);
    return ways.least;
  }

  private boolean fitsSomething(Part part) {
    return job.stocks().stream()
        .anyMatch(stock -> part.length().compareTo(job.rules().usable(stock)) <= 0);
  }

  private void place(int piece, Rational cost) {
    if (least != null && cost.compareTo(least) >= 0) {
      return;
    }
    if (piece == pieces.size()) {
      least = cost;
      return;
    }
    for (int stick = 0; stick < rooms.size(); stick++) {
      onto(stick, piece, cost);
    }
    for (int stock = 0; stock < taken.length; stock++) {
      ontoNew(stock, piece, cost);
    }
  }

  /** A room is what is left before the kerf of the next cut: the first piece needs none. */
  private void onto(int stick, int piece, Rational cost) {
    Rational room = rooms.get(stick);
    Rational rest = room.minus(pieces.get(piece));
    if (rest.signum() >= 0) {
      rooms.set(stick, rest.minus(job.rules().kerf()));
      place(piece + 1, cost);
      rooms.set(stick, room);
    }
  }

  private void ontoNew(int number, int piece, Rational cost) {
    Stock stock = job.stocks().get(number);
    if (taken[number] < stock.onHand().orElse(Integer.MAX_VALUE)) {
      taken[number]++;
      rooms.add(job.rules().usable(stock));
      onto(rooms.size() - 1, piece, cost.plus(stock.cost()));
      rooms.remove(rooms.size() - 1);
      taken[number]--;
    }
  }
}
