package org.battenbook.plan.stick;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * Branch and bound over a pool of patterns: finds a packing within some cost, or proves that the
 * pool has none. Each node solves a linear program with the patterns of the pool that it needs so
 * far (branch and price). A node is cut off only by a proof in whole numbers ({@link NodePrices}).
 */
final class PoolSearch {
  private static final int MOST_NODES = 3_000;

  /** How many patterns to add to the linear program at once. */
  private static final int MOST_NEW = 60;

  private static final double NEARLY = 1e-6;

  /** The least gain of a pattern that is worth adding, in sticks of the most expensive stock. */
  private static final double LEAST_GAIN = 1e-9;

  private final StickInstance instance;
  private final List<Pattern> pool;

  /** The patterns of the pool that are in the linear program. */
  private final Set<Pattern> active;

  private final long target;
  private final Effort effort;

  /** A stack of the nodes still to visit, each given by its branches. */
  private final Deque<List<Branch>> open = new ArrayDeque<>();

  private @Nullable StickPacking found;
  private boolean complete = true;
  private int nodes;

  PoolSearch(
      StickInstance instance, List<Pattern> pool, List<Pattern> known, long target, Effort effort) {
    this.instance = instance;
    this.pool = pool;
    this.active = new LinkedHashSet<>(known);
    active.retainAll(new LinkedHashSet<>(pool));
    this.target = target;
    this.effort = effort;
  }

  /** The packing found; null if there is none, or the search was not complete. */
  @Nullable StickPacking found() {
    return found;
  }

  /** Whether all nodes were searched. */
  boolean isComplete() {
    return complete && open.isEmpty();
  }

  void run() {
    open.push(List.of());
    while (!open.isEmpty() && found == null && complete) {
      if (++nodes > MOST_NODES || effort.isSpent()) {
        complete = false;
      } else {
        visit(open.pop());
      }
    }
  }

  private void visit(List<Branch> branches) {
    List<Pattern> patterns = List.copyOf(active);
    LpSolution solution = MasterProgram.solve(instance, patterns, branches, effort);
    while (solution != null && activate(solution, branches)) {
      patterns = List.copyOf(active);
      solution = MasterProgram.solve(instance, patterns, branches, effort);
    }
    effort.spend(poolSteps(branches));
    if (solution == null || effort.isStopped()) {
      complete = false;
    } else if (!NodePrices.prove(instance, pool, branches, solution, target, effort)) {
      round(patterns, solution.times);
      if (found == null) {
        split(branches, patterns, solution.times);
      }
    }
  }

  /** The effort to check all patterns of the pool, from measurements. */
  private long poolSteps(List<Branch> branches) {
    return pool.size() * (8L + 2L * branches.size());
  }

  /** Adds the patterns with the highest gain to the linear program; false if none has a gain. */
  private boolean activate(LpSolution solution, List<Branch> branches) {
    effort.spend(poolSteps(branches));
    record Gain(Pattern pattern, double gain) {}
    List<Gain> gains = new ArrayList<>();
    for (Pattern pattern : pool) {
      effort.pass(8L + 2L * branches.size());
      if (effort.isStopped()) {
        return false;
      }
      double gain = gain(pattern, solution, branches);
      if (gain > LEAST_GAIN && !active.contains(pattern)) {
        gains.add(new Gain(pattern, gain));
      }
    }
    gains.sort(Comparator.comparingDouble(g -> -g.gain()));
    gains.stream().limit(MOST_NEW).forEach(g -> active.add(g.pattern()));
    return !gains.isEmpty();
  }

  /** The value of a pattern less its cost: its reduced cost with the sign changed. */
  private double gain(Pattern pattern, LpSolution solution, List<Branch> branches) {
    double gain = -solution.stocks[pattern.stock];
    gain -= (double) instance.costs[pattern.stock] / instance.highestCost();
    for (int i = 0; i < pattern.kinds.length; i++) {
      gain += pattern.counts[i] * solution.kinds[pattern.kinds[i]];
    }
    for (int b = 0; b < branches.size(); b++) {
      if (solution.branches[b] != 0 && branches.get(b).concerns(pattern)) {
        gain += branches.get(b).sign() * solution.branches[b];
      }
    }
    return gain;
  }

  /**
   * Rounds a solution to a packing: takes each pattern rounded down, then once more by the largest
   * fraction while pieces are left, then fills the rest by first fit.
   */
  private void round(List<Pattern> patterns, double[] times) {
    StickPacking.Draft draft = new StickPacking.Draft(instance);
    for (int p = 0; p < times.length; p++) {
      take(draft, patterns.get(p), (int) Math.floor(times[p] + NEARLY));
    }
    IntStream.range(0, times.length)
        .filter(p -> times[p] - Math.floor(times[p] + NEARLY) > NEARLY)
        .boxed()
        .sorted(Comparator.comparingDouble(p -> Math.floor(times[p]) - times[p]))
        .forEach(p -> take(draft, patterns.get(p), draft.mostTimes(patterns.get(p)) > 0 ? 1 : 0));
    StickPacking packing = draft.finished(effort);
    if (packing.isWhole() && packing.cost() <= target) {
      found = packing;
    }
  }

  private void take(StickPacking.Draft draft, Pattern pattern, int times) {
    for (int i = 0; i < times && !effort.isStopped(); i++) {
      effort.pass(4L * (instance.kinds() + instance.stocks()));
      Pattern wanted = pattern.within(draft.rest().demand);
      if (!wanted.isEmpty() && draft.rest().limits[pattern.stock] > 0) {
        draft.take(wanted, 1);
      }
    }
  }

  /** Creates two nodes; the one that cuts the patterns more often is searched first. */
  private void split(List<Branch> branches, List<Pattern> patterns, double[] times) {
    BranchChoice.Choice choice = BranchChoice.of(patterns, times, effort);
    if (choice == null) {
      complete = false;
      return;
    }
    int below = (int) Math.floor(choice.times());
    open.push(with(branches, choice.branch().as(false, below)));
    open.push(with(branches, choice.branch().as(true, below + 1)));
  }

  private static List<Branch> with(List<Branch> branches, Branch branch) {
    List<Branch> more = new ArrayList<>(branches);
    more.add(branch);
    return more;
  }
}
