package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.plan.Effort;

/**
 * The maximal patterns of one stick that has the longest remaining piece: no remaining piece can be
 * added to them. Patterns that use too little of the stick are left out.
 */
final class Completions {
  private final StickInstance rest;
  private final int stock;
  private final long least;
  private final Effort effort;
  private final int longest;
  private final int[] counts;

  /** For each kind, the total length of all its pieces and of those of later kinds. */
  private final long[] allFrom;

  private final List<Pattern> found = new ArrayList<>();

  private Completions(StickInstance rest, int stock, long least, Effort effort) {
    this.rest = rest;
    this.stock = stock;
    this.least = least;
    this.effort = effort;
    this.counts = new int[rest.kinds()];
    this.allFrom = new long[rest.kinds() + 1];
    for (int kind = rest.kinds() - 1; kind >= 0; kind--) {
      allFrom[kind] = allFrom[kind + 1] + rest.demand[kind] * rest.lengths[kind];
    }
    int first = 0;
    while (rest.demand[first] == 0) {
      first++;
    }
    this.longest = first;
  }

  /**
   * Finds the patterns; only some of them if the effort is spent first.
   *
   * @param rest the remaining job, with at least one piece
   * @param least the minimum length used, in ticks with kerfs
   */
  static List<Pattern> of(StickInstance rest, int stock, long least, Effort effort) {
    Completions completions = new Completions(rest, stock, least, effort);
    completions.add(completions.longest, rest.capacities[stock]);
    return completions.found;
  }

  private void add(int kind, long room) {
    effort.spend(1);
    if (effort.isSpent() || rest.capacities[stock] - room + allFrom[kind] < least) {
      return;
    }
    if (allFrom[kind] == 0) {
      addFull();
      return;
    }
    int most = (int) Math.min(rest.demand[kind], room / rest.lengths[kind]);
    for (int copies = most; copies >= (kind == longest ? 1 : 0); copies--) {
      counts[kind] = copies;
      add(kind + 1, room - copies * rest.lengths[kind]);
    }
    counts[kind] = 0;
  }

  private void addFull() {
    Pattern pattern = Pattern.of(stock, counts);
    if (rest.isFull(pattern)) {
      found.add(pattern);
    }
  }
}
