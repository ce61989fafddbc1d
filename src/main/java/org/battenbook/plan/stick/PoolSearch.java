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
 * Looks for a packing of at most some cost among all patterns that such a packing can use, or
 * proves that there is none: branch and bound, each branch given up only on whole numbers.
 */
final class PoolSearch {
  private static final int MOST_NODES = 3_000;
  private static final int MOST_NEW = 60;
  private static final double NEARLY = 1e-6;
  private static final double GAIN = 1e-9;

  private final StickInstance instance;
  private final List<Pattern> pool;
  private final Set<Pattern> active;
  private final long target;
  private final Effort effort;
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

  /** The packing, null where there is none or the search was given up. */
  @Nullable StickPacking found() {
    return found;
  }

  /** Whether nothing was left out. */
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
    effort.spend(lookingThroughPool(branches));
    if (solution == null || effort.isStopped()) {
      complete = false;
    } else if (!NodePrices.prove(instance, pool, branches, solution, target, effort)) {
      round(patterns, solution.times);
      if (found == null) {
        split(branches, patterns, solution.times);
      }
    }
  }

  /** As measured: each branch takes a search in each pattern. */
  private long lookingThroughPool(List<Branch> branches) {
    return pool.size() * (8L + 2L * branches.size());
  }

  /** Adds the patterns that gain most at the prices; whether there were any. */
  private boolean activate(LpSolution solution, List<Branch> branches) {
    effort.spend(lookingThroughPool(branches));
    record Gain(Pattern pattern, double gain) {}
    List<Gain> gains = new ArrayList<>();
    for (Pattern pattern : pool) {
      effort.pass(8L + 2L * branches.size());
      if (effort.isStopped()) {
        return false;
      }
      double gain = gain(pattern, solution, branches);
      if (gain > GAIN && !active.contains(pattern)) {
        gains.add(new Gain(pattern, gain));
      }
    }
    gains.sort(Comparator.comparingDouble(g -> -g.gain()));
    gains.stream().limit(MOST_NEW).forEach(g -> active.add(g.pattern()));
    return !gains.isEmpty();
  }

  private double gain(Pattern pattern, LpSolution solution, List<Branch> branches) {
    double gain = -solution.stocks[pattern.stock];
    gain -= (double) instance.costs[pattern.stock] / instance.dearest();
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

  /** What is cut whole times, then the likeliest of the others, then what fits. */
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
