package org.battenbook.plan.sheet;

import java.math.BigInteger;
import java.util.stream.IntStream;
import org.battenbook.plan.Offers;

/**
 * A job for sheets as plain numbers, indexed by kind of piece and by stock. Sides are whole ticks.
 * One kerf is added to each side of a piece and of a sheet, since the last piece of a row needs no
 * kerf. So pieces can be packed side by side as if cuts had no width.
 */
final class SheetInstance {
  /** The width of each kind, with one kerf. */
  final long[] across;

  /** The height of each kind, with one kerf. */
  final long[] down;

  /** Whether pieces of each kind may be rotated by 90 degrees. */
  final boolean[] turns;

  /** The number of pieces of each kind. */
  final int[] demand;

  /** The usable width of each stock, with one kerf. */
  final long[] widths;

  /** The usable height of each stock, with one kerf. */
  final long[] heights;

  /** The cost of one sheet of each stock, in units of cost. */
  final long[] costs;

  /** The number of sheets of each stock, or {@link Offers#UNLIMITED}. */
  final int[] limits;

  /** The highest number of stages; {@code Integer.MAX_VALUE} for no limit. */
  final int stages;

  SheetInstance(
      long[] across,
      long[] down,
      boolean[] turns,
      int[] demand,
      long[] widths,
      long[] heights,
      long[] costs,
      int[] limits,
      int stages) {
    this.across = across;
    this.down = down;
    this.turns = turns;
    this.demand = demand;
    this.widths = widths;
    this.heights = heights;
    this.costs = costs;
    this.limits = limits;
    this.stages = stages;
  }

  int kinds() {
    return demand.length;
  }

  int stocks() {
    return costs.length;
  }

  boolean isLimited(int stock) {
    return limits[stock] != Offers.UNLIMITED;
  }

  long area(int kind) {
    return across[kind] * down[kind];
  }

  long sheetArea(int stock) {
    return widths[stock] * heights[stock];
  }

  /** The same job with another demand. */
  SheetInstance with(int[] otherDemand) {
    return new SheetInstance(
        across, down, turns, otherDemand, widths, heights, costs, limits, stages);
  }

  /** The total area of all pieces. */
  long demandArea() {
    return IntStream.range(0, kinds()).mapToLong(kind -> demand[kind] * area(kind)).sum();
  }

  /** Whether a block fits a sheet and can be cut within the stages allowed. */
  boolean fits(int stock, Block block) {
    return block.across <= widths[stock]
        && block.down <= heights[stock]
        && (stages == Integer.MAX_VALUE
            || Layout.of(this, stock, block).panel().deepest() <= stages);
  }

  /** Whether one stock costs less per area than another. */
  boolean isCheaperByArea(int stock, int other) {
    BigInteger one =
        BigInteger.valueOf(costs[stock]).multiply(BigInteger.valueOf(sheetArea(other)));
    return one.compareTo(
            BigInteger.valueOf(costs[other]).multiply(BigInteger.valueOf(sheetArea(stock))))
        < 0;
  }

  /**
   * The stocks as lower bounds need them.
   *
   * @param capacities the highest total value of the pieces on one sheet of each stock
   */
  Offers offers(long[] capacities) {
    return new Offers(capacities, costs, limits);
  }
}
