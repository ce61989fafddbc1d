package org.battenbook.plan.stick;

/**
 * A primal and dual solution of the master program. Costs and prices are in sticks of the most
 * expensive stock.
 */
final class LpSolution {
  /** The minimum total cost if fractions of sticks were allowed. */
  final double cost;

  /** The dual price of each length. */
  final double[] kinds;

  /** The dual price of each stock's limit: what one more stick of it would save. */
  final double[] stocks;

  /** The dual price of each branch, at least 0. */
  final double[] branches;

  /** How often each pattern is cut. */
  final double[] times;

  LpSolution(double cost, double[] kinds, double[] stocks, double[] branches, double[] times) {
    this.cost = cost;
    this.kinds = kinds;
    this.stocks = stocks;
    this.branches = branches;
    this.times = times;
  }
}
