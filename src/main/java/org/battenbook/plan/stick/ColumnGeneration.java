package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * Finds patterns as they are needed. A linear program over some patterns gives prices; at those
 * prices a knapsack finds patterns that are worth more than they cost, until there are none.
 *
 * <p>After P. C. Gilmore and R. E. Gomory, "A linear programming approach to the cutting-stock
 * problem" (1961, 1963). The bound on the way is that of A. A. Farley (1990), in whole numbers.
 */
final class ColumnGeneration {
  private static final int MOST_ROUNDS = 400;

  private final StickInstance instance;
  private final Effort effort;
  private final Set<Pattern> patterns = new LinkedHashSet<>();
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
   * Runs until no pattern is worth more than it costs, or until a relaxed plan costs no more than
   * {@code enough} rounded up, or a bound is above {@code tooMuch}.
   */
  void run(long enough, long tooMuch) {
    boolean found = true;
    for (int round = 0; found && round < MOST_ROUNDS && !effort.isSpent(); round++) {
      inProgram = List.copyOf(patterns);
      solution = MasterProgram.solve(instance, inProgram, List.of(), effort);
      found = solution != null && cost() > enough && price(solution) && bound() <= tooMuch;
    }
  }

  /** The cost of the relaxed plan in units of cost. */
  double cost() {
    return solution == null ? Double.MAX_VALUE : solution.cost * instance.dearest();
  }

  private boolean price(LpSolution solution) {
    DualPrices guessed = DualPrices.guessed(instance, solution.kinds, solution.stocks);
    try {
      Knapsack knapsack = Knapsack.forBest(instance, guessed, effort);
      DualPrices holding = guessed.holding(knapsack);
      if (prices == null || holding.total() > prices.total()) {
        prices = holding;
      }
      return addBest(knapsack, guessed) && addBeside(guessed);
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

  /** Patterns of the lengths that those before left out: so that they make a plan together. */
  private boolean addBeside(DualPrices guessed) throws Knapsack.TooLarge {
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

  /** The best bound so far in units of cost, 0 at first. */
  long bound() {
    return prices == null ? 0 : prices.bound();
  }

  /** The prices that prove {@link #bound}, null at first. */
  @Nullable DualPrices prices() {
    return prices;
  }

  /** The patterns that the last linear program knew. */
  List<Pattern> patterns() {
    return inProgram;
  }

  /** All patterns found. */
  List<Pattern> allPatterns() {
    return new ArrayList<>(patterns);
  }

  /** How often the last linear program cuts {@link #patterns}, null where it failed. */
  double @Nullable [] times() {
    return solution == null ? null : solution.times;
  }
}
