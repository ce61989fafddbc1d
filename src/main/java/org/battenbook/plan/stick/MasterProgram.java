package org.battenbook.plan.stick;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;

/**
 * The linear master program of column generation: how often to cut each pattern, fractions allowed,
 * so that all pieces are cut at the minimum cost. Its dual prices are the prices of lengths. It
 * works in doubles, so it guides a search and proves nothing.
 *
 * <p>The solver gets the dual program, since that has an obvious feasible start: all prices 0.
 * Prices are at most {@link #MOST_PRICE}. That keeps the program bounded, as if any piece could be
 * bought ready-made for that price.
 */
final class MasterProgram {
  /** The highest price of a length, in sticks of the most expensive stock. */
  private static final double MOST_PRICE = 100;

  /** The largest matrix; a larger program takes longer than its answer is worth. */
  private static final int MOST_NUMBERS = 600_000;

  private MasterProgram() {}

  /**
   * Solves the program.
   *
   * @return null if the solver finds no optimum, the program is too large, or the plan is stopped
   */
  static @Nullable LpSolution solve(
      StickInstance instance, List<Pattern> patterns, List<Branch> branches, Effort effort) {
    int rows = instance.kinds() + instance.stocks() + branches.size();
    long numbers = (long) rows * patterns.size();
    if (numbers > MOST_NUMBERS) {
      return null;
    }
    long steps = steps(numbers, rows);
    effort.spend(steps);
    Optimisation.Result result =
        LpSolver.solve(() -> program(instance, patterns, branches), steps, effort);
    return result != null && result.getState().isOptimal()
        ? solution(result, instance, patterns, branches)
        : null;
  }

  private static LinearSolver.Builder program(
      StickInstance instance, List<Pattern> patterns, List<Branch> branches) {
    int rows = instance.kinds() + instance.stocks() + branches.size();
    R064Store body = R064Store.FACTORY.make(patterns.size(), rows);
    R064Store costs = R064Store.FACTORY.make(patterns.size(), 1);
    for (int p = 0; p < patterns.size(); p++) {
      Pattern pattern = patterns.get(p);
      costs.set(p, 0, (double) instance.costs[pattern.stock] / instance.highestCost());
      fill(body, p, pattern, instance, branches);
    }
    LinearSolver.Builder program = LinearSolver.newBuilder(goal(instance, branches));
    program.lower(0.0).upper(MOST_PRICE).inequalities(body, costs);
    return program;
  }

  /** The effort of a program, from measurements: larger programs take longer for each number. */
  private static long steps(long numbers, int rows) {
    return numbers * (20 + rows / 2);
  }

  private static void fill(
      R064Store body, int row, Pattern pattern, StickInstance instance, List<Branch> branches) {
    for (int i = 0; i < pattern.kinds.length; i++) {
      body.set(row, pattern.kinds[i], pattern.counts[i]);
    }
    if (instance.isLimited(pattern.stock)) {
      body.set(row, instance.kinds() + pattern.stock, -1);
    }
    int first = instance.kinds() + instance.stocks();
    for (int b = 0; b < branches.size(); b++) {
      if (branches.get(b).concerns(pattern)) {
        body.set(row, first + b, branches.get(b).sign());
      }
    }
  }

  /** The objective. Its sign is changed, since the solver minimizes. */
  private static double[] goal(StickInstance instance, List<Branch> branches) {
    int kinds = instance.kinds();
    double[] goal = new double[kinds + instance.stocks() + branches.size()];
    for (int kind = 0; kind < kinds; kind++) {
      goal[kind] = -instance.demand[kind];
    }
    for (int stock = 0; stock < instance.stocks(); stock++) {
      goal[kinds + stock] = instance.isLimited(stock) ? instance.limits[stock] : 0;
    }
    for (int b = 0; b < branches.size(); b++) {
      goal[kinds + instance.stocks() + b] = -branches.get(b).sign() * branches.get(b).times();
    }
    return goal;
  }

  private static LpSolution solution(
      Optimisation.Result result,
      StickInstance instance,
      List<Pattern> patterns,
      List<Branch> branches) {
    int kinds = instance.kinds();
    double[] times = new double[patterns.size()];
    result
        .getDualSolution()
        .map(Supplier::get)
        .ifPresent(all -> Arrays.setAll(times, p -> Math.abs(all.doubleValue(p))));
    return new LpSolution(
        -result.getValue(),
        part(result, 0, kinds),
        part(result, kinds, instance.stocks()),
        part(result, kinds + instance.stocks(), branches.size()),
        times);
  }

  private static double[] part(Optimisation.Result result, int from, int count) {
    double[] part = new double[count];
    for (int i = 0; i < count; i++) {
      part[i] = Math.max(0, result.doubleValue(from + i));
    }
    return part;
  }
}
