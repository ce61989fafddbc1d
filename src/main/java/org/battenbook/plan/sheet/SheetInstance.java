package org.battenbook.plan.sheet;

import java.math.BigInteger;
import java.util.stream.IntStream;
import org.battenbook.plan.Offers;

/**
 * The bare numbers of a job of sheets: sides in whole ticks with their kerf, and stocks as what
 * they hold, with one kerf more, since the last part needs none.
 */
final class SheetInstance {
  final long[] across;
  final long[] down;
  final boolean[] turns;
  final int[] demand;
  final long[] widths;
  final long[] heights;
  final long[] costs;
  final int[] limits;
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

  /** The same with other numbers of pieces. */
  SheetInstance with(int[] otherDemand) {
    return new SheetInstance(
        across, down, turns, otherDemand, widths, heights, costs, limits, stages);
  }

  /** What all pieces together cover. */
  long demandArea() {
    return IntStream.range(0, kinds()).mapToLong(kind -> demand[kind] * area(kind)).sum();
  }

  /** Whether a sheet holds a block, and no more stages are cut than there may be. */
  boolean isHeld(int stock, Block block) {
    return block.across <= widths[stock]
        && block.down <= heights[stock]
        && (stages == Integer.MAX_VALUE
            || Layout.of(this, stock, block).panel().deepest() <= stages);
  }

  /** Whether one stock costs less than another for each tick of area. */
  boolean isCheaperByArea(int stock, int other) {
    BigInteger one =
        BigInteger.valueOf(costs[stock]).multiply(BigInteger.valueOf(sheetArea(other)));
    return one.compareTo(
            BigInteger.valueOf(costs[other]).multiply(BigInteger.valueOf(sheetArea(stock))))
        < 0;
  }

  /** The stocks, where a sheet of each holds no more than some worth of pieces. */
  Offers offers(long[] most) {
    return new Offers(most, costs, limits);
  }
}
