package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * Column generation: solves the linear relaxation of a job and creates patterns as needed. The
 * master program over the patterns so far gives dual prices of lengths. At those prices a knapsack
 * (the pricing problem) finds patterns whose value exceeds their cost, until there are none.
 *
 * <p>After P. C. Gilmore and R. E. Gomory, "A linear programming approach to the cutting-stock
 * problem" (1961, 1963). Each round also gives the lower bound of A. A. Farley (1990), in whole
 * numbers.
 */
final class ColumnGeneration {
  private static final int MOST_ROUNDS = 400;

  private final StickInstance instance;
  private final Effort effort;
  private final Set<Pattern> patterns = new LinkedHashSet<>();

  /** The valid prices with the highest bound so far. */
  private @Nullable DualPrices prices;

  private @Nullable LpSolution solution;
  private List<Pattern> inProgram = List.of();

  ColumnGeneration(StickInstance instance, Collection<Pattern> known, Effort effort) {
    this.instance = instance;
    this.effort = effort;
    for (int kind = 0; kind < instance.kinds() && !effort.isStopped(); kind++) {
      effort.pass(10L * instance.stocks());
      if (instance.demand[kind] > 0) {
        addAlone(kind);
      }
    }
    patterns.addAll(known);
  }

  private void addAlone(int kind) {
    for (int stock = 0; stock < instance.stocks(); stock++) {
      long room = instance.capacities[stock] / instance.lengths[kind];
      if (room > 0 && instance.limits[stock] > 0) {
        int count = (int) Math.min(instance.demand[kind], room);
        patterns.add(new Pattern(stock, new int[] {kind}, new int[] {count}));
      }
    }
  }

  /**
   * Runs until no pattern improves the master program. It also ends when the relaxed cost is at
   * most {@code enough}, or when the bound is above {@code tooMuch}.
   *
   * @param enough a relaxed cost at which to end, in units of cost
   * @param tooMuch the highest bound of interest, in units of cost
   */
  void run(long enough, long tooMuch) {
    boolean found = true;
    for (int round = 0; found && round < MOST_ROUNDS && !effort.isSpent(); round++) {
      inProgram = List.copyOf(patterns);
      solution = MasterProgram.solve(instance, inProgram, List.of(), effort);
      found = solution != null && cost() > enough && price(solution) && bound() <= tooMuch;
    }
  }

  /** The cost of the last master program's solution, in units of cost. */
  double cost() {
    return solution == null ? Double.MAX_VALUE : solution.cost * instance.highestCost();
  }

  /** Solves the pricing problem; false if it found no pattern, or no answer. */
  private boolean price(LpSolution solution) {
    DualPrices guessed = DualPrices.guessed(instance, solution.kinds, solution.stocks);
    try {
      Knapsack knapsack = Knapsack.forBest(instance, guessed, effort);
      DualPrices valid = guessed.madeValid(knapsack);
      if (prices == null || valid.total() > prices.total()) {
        prices = valid;
      }
      return addBest(knapsack, guessed) && addForOtherLengths(guessed);
    } catch (Knapsack.TooLarge | ArithmeticException noAnswer) {
      return false;
    }
  }

  private boolean addBest(Knapsack knapsack, DualPrices guessed) {
    boolean added = false;
    for (int stock = 0; stock < instance.stocks() && !effort.isStopped(); stock++) {
      if (knapsack.best(stock) > guessed.allowed(stock) + guessed.gain()) {
        Pattern pattern = knapsack.bestPattern(stock);
        added |= pattern != null && patterns.add(pattern);
      }
    }
    return added;
  }

  /**
   * Adds patterns with no length in common, the highest gain first, so that they can be part of one
   * plan.
   */
  private boolean addForOtherLengths(DualPrices guessed) throws Knapsack.TooLarge {
    int[] demand = instance.demand.clone();
    StickInstance rest = instance.with(demand, instance.limits);
    for (Pattern next = null; ; next = null) {
      Knapsack knapsack = Knapsack.forBest(rest, guessed, effort);
      next = mostGain(knapsack, guessed);
      if (next == null) {
        return true;
      }
      patterns.add(next);
      for (int i = 0; i < next.kinds.length; i++) {
        demand[next.kinds[i]] = 0;
      }
    }
  }

  private @Nullable Pattern mostGain(Knapsack knapsack, DualPrices guessed) {
    int best = -1;
    long most = guessed.gain();
    for (int stock = 0; stock < instance.stocks(); stock++) {
      long gain = knapsack.best(stock) - guessed.allowed(stock);
      if (gain > most) {
        most = gain;
        best = stock;
      }
    }
    return best < 0 ? null : knapsack.bestPattern(best);
  }

  /** The best lower bound so far, in units of cost; 0 at first. */
  long bound() {
    return prices == null ? 0 : prices.bound();
  }

  /** The prices that prove {@link #bound}; null at first. */
  @Nullable DualPrices prices() {
    return prices;
  }

  /** The patterns of the last master program. */
  List<Pattern> patterns() {
    return inProgram;
  }

  /** All patterns found. */
  List<Pattern> allPatterns() {
    return new ArrayList<>(patterns);
  }

  /** How often the last master program cuts each of {@link #patterns}; null if it failed. */
  double @Nullable [] times() {
    return solution == null ? null : solution.times;
  }
}
