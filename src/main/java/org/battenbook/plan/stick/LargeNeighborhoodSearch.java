package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.plan.Effort;

/**
 * Large neighborhood search: improves a packing by packing some of its sticks again. It chooses the
 * sticks with the greatest loss at the prices of the bound, and others that change from round to
 * round.
 *
 * <p>After P. Shaw, "Using constraint programming and local search methods to solve vehicle routing
 * problems" (1998).
 */
final class LargeNeighborhoodSearch {
  private static final int ROUNDS = 60;
  private static final int LEAST_STICKS = 6;
  private static final int SIZES = 10;

  private final StickInstance instance;
  private final DualPrices prices;
  private final Collection<Pattern> known;
  private final Effort effort;
  private StickPacking best;

  LargeNeighborhoodSearch(
      StickInstance instance,
      DualPrices prices,
      Collection<Pattern> known,
      StickPacking first,
      Effort effort) {
    this.instance = instance;
    this.prices = prices;
    this.known = known;
    this.best = first;
    this.effort = effort;
  }

  /** Improves the packing until its cost is at most {@code bound}, or the rounds or effort end. */
  StickPacking run(long bound) {
    for (int round = 0; round < ROUNDS && best.cost() > bound && !effort.isSpent(); round++) {
      improve(round);
    }
    return best;
  }

  private void improve(int round) {
    List<Pattern> kept = new ArrayList<>(best.sticks());
    Map<Pattern, Long> losses = new HashMap<>();
    kept.forEach(stick -> losses.computeIfAbsent(stick, this::loss));
    kept.sort(
        Comparator.comparingLong((Pattern stick) -> losses.getOrDefault(stick, 0L))
            .reversed()
            .thenComparing(stick -> stick));
    List<Pattern> reopened = chosen(kept, round);
    StickInstance part = part(reopened, kept);
    long cost = reopened.stream().mapToLong(stick -> instance.costs[stick.stock]).sum();
    StickPacking packing = new DivingHeuristic(part, known, round % 3, effort).run(cost - 1);
    if (packing != null && packing.isWhole() && packing.cost() < cost) {
      kept.addAll(packing.sticks());
      best = best.with(kept, instance);
    }
  }

  /** The loss of a stick: the highest value allowed less its own value (its reduced cost). */
  private long loss(Pattern stick) {
    return prices.allowed(stick.stock) - stick.value(prices.kinds);
  }

  /** Removes and returns some sticks: half with the greatest losses, the others spread evenly. */
  private static List<Pattern> chosen(List<Pattern> sticks, int round) {
    int size = Math.min(sticks.size(), LEAST_STICKS + round % SIZES);
    List<Pattern> chosen = new ArrayList<>();
    while (chosen.size() < size) {
      boolean fromWorst = chosen.size() < size / 2;
      int at = fromWorst ? chosen.size() % 2 : (7 * round + 3 * chosen.size()) % sticks.size();
      chosen.add(sticks.remove(Math.min(at, sticks.size() - 1)));
    }
    return chosen;
  }

  /** The job of cutting the pieces of the chosen sticks from the stock that the others leave. */
  private StickInstance part(List<Pattern> chosen, List<Pattern> others) {
    int[] demand = new int[instance.kinds()];
    for (Pattern stick : chosen) {
      for (int i = 0; i < stick.kinds.length; i++) {
        demand[stick.kinds[i]] += stick.counts[i];
      }
    }
    int[] limits = instance.limits.clone();
    for (Pattern stick : others) {
      limits[stick.stock] -= instance.isLimited(stick.stock) ? 1 : 0;
    }
    return instance.with(demand, limits);
  }
}
