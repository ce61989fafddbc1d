package org.battenbook.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;

/** Assigns stocks of the job, with their labels, to the sticks or sheets that a packing uses. */
public final class Supply<S> {
  private final List<Deque<S>> byNumber = new ArrayList<>();

  /**
   * Prepares as many sticks or sheets of each group as are used. In a group, limited stocks come
   * first.
   *
   * @param stocks the stocks of each group
   * @param taken the number used of each group
   * @param onHand the number available of a stock; empty for any number
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

  /** The stock of the next stick or sheet of a group. */
  public S next(int number) {
    return byNumber.get(number).removeFirst();
  }
}
