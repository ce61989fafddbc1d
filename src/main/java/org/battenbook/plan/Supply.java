package org.battenbook.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;

/** Hands out the sticks or sheets that a plan takes, each with the label that the job gave it. */
public final class Supply<S> {
  private final List<Deque<S>> byNumber = new ArrayList<>();

  /**
   * As many of each stock as are taken; of stocks that share a number, those of a limited count
   * first.
   *
   * @param stocks of each number
   * @param taken how many of each number
   * @param onHand how many there are of a stock at most
   */
  public Supply(List<List<S>> stocks, int[] taken, Function<S, OptionalInt> onHand) {
    for (int number = 0; number < taken.length; number++) {
      List<S> limitedFirst = new ArrayList<>(stocks.get(number));
      limitedFirst.sort(Comparator.comparing(stock -> onHand.apply(stock).isEmpty()));
      Deque<S> queue = new ArrayDeque<>();
      for (S stock : limitedFirst) {
        int wanted = taken[number] - queue.size();
        int count = Math.min(wanted, onHand.apply(stock).orElse(wanted));
        queue.addAll(Collections.nCopies(count, stock));
      }
      byNumber.add(queue);
    }
  }

  public S next(int number) {
    return byNumber.get(number).removeFirst();
  }
}
