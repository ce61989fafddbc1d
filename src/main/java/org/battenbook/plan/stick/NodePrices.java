package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.plan.Effort;

/**
 * Dual prices of lengths and branches in whole numbers, for one node of branch and bound. If no
 * pattern of the pool has a higher value than its stick costs, any plan that satisfies the branches
 * costs at least the total value of all pieces and branches.
 *
 * <p>It works like {@link DualPrices}, but it checks every pattern of a pool instead of solving a
 * knapsack.
 */
final class NodePrices {
  private static final int TRIES = 6;

  private final StickInstance instance;
  private final List<Branch> branches;
  private final long scale;
  private final long[] kinds;
  private final long[] premiums;
  private final long[] ofBranches;
  private final Effort effort;

  private NodePrices(
      StickInstance instance, List<Branch> branches, LpSolution solution, Effort effort) {
    this.effort = effort;
    DualPrices guessed = DualPrices.guessed(instance, solution.kinds, solution.stocks);
    this.instance = instance;
    this.branches = branches;
    this.scale = DualPrices.scale(instance);
    this.kinds = guessed.kinds;
    this.premiums = guessed.premiums;
    this.ofBranches = new long[branches.size()];
    double unit = (double) instance.highestCost() * scale;
    for (int b = 0; b < ofBranches.length; b++) {
      ofBranches[b] = (long) Math.ceil(solution.branches[b] * unit);
    }
  }

  /** Whether it proves that every plan of the pool that satisfies the branches costs more. */
  static boolean prove(
      StickInstance instance,
      List<Pattern> pool,
      List<Branch> branches,
      LpSolution solution,
      long cost,
      Effort effort) {
    NodePrices prices = new NodePrices(instance, branches, solution, effort);
    try {
      return prices.makeValid(pool) && prices.total() > Math.multiplyExact(cost, prices.scale);
    } catch (ArithmeticException pastLongs) {
      return false;
    }
  }

  /** Lowers the prices until they are valid; false if that fails, or the plan is stopped. */
  private boolean makeValid(List<Pattern> pool) {
    double margin = 1e-13;
    for (int tries = 0; tries < TRIES; tries++, margin *= 10) {
      double ratio = ratio(pool);
      if (effort.isStopped()) {
        return false;
      }
      if (ratio >= 1) {
        return true;
      }
      lower(ratio * (1 - margin));
    }
    return false;
  }

  /**
   * The ratio that makes the most excessive pattern of unlimited stock valid; 1 if all are valid.
   * For limited stock it raises the premium instead.
   */
  private double ratio(List<Pattern> pool) {
    double ratio = 1;
    for (Pattern pattern : pool) {
      effort.pass(8L + 2L * branches.size());
      if (effort.isStopped()) {
        return 0;
      }
      long allowed = instance.costs[pattern.stock] * scale + premiums[pattern.stock];
      long value = value(pattern);
      if (value > allowed && instance.isLimited(pattern.stock)) {
        premiums[pattern.stock] += value - allowed;
      } else if (value > allowed) {
        ratio = Math.min(ratio, (double) allowed / value);
      }
    }
    return ratio;
  }

  private long value(Pattern pattern) {
    long value = pattern.value(kinds);
    for (int b = 0; b < ofBranches.length; b++) {
      if (ofBranches[b] != 0 && branches.get(b).concerns(pattern)) {
        value = Math.addExact(value, branches.get(b).sign() * ofBranches[b]);
      }
    }
    return value;
  }

  private void lower(double ratio) {
    for (int kind = 0; kind < kinds.length; kind++) {
      kinds[kind] = (long) (kinds[kind] * ratio);
    }
    for (int b = 0; b < ofBranches.length; b++) {
      double lower = ofBranches[b] * ratio;
      ofBranches[b] = (long) (branches.get(b).atLeast() ? Math.floor(lower) : Math.ceil(lower));
    }
  }

  private long total() {
    long total = 0;
    for (int kind = 0; kind < kinds.length; kind++) {
      total = plus(total, kinds[kind], instance.demand[kind]);
    }
    for (int stock = 0; stock < premiums.length; stock++) {
      total = premiums[stock] == 0 ? total : plus(total, premiums[stock], -instance.limits[stock]);
    }
    for (int b = 0; b < ofBranches.length; b++) {
      total = plus(total, ofBranches[b], (long) branches.get(b).sign() * branches.get(b).times());
    }
    return total;
  }

  private static long plus(long total, long price, long times) {
    return Math.addExact(total, Math.multiplyExact(price, times));
  }
}
