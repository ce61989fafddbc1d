package org.battenbook.plan.stick;

/** The solution of a linear program over patterns. Costs are in sticks of the dearest stock. */
final class LpSolution {
  /** The least total cost if fractions of sticks were allowed. */
  final double cost;

  /** The price of each length. */
  final double[] kinds;

  /** What one stick more of each stock would save. */
  final double[] stocks;

  /** The price of each branch. */
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
