package org.battenbook.plan;

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

  long area(int kind) {
    return across[kind] * down[kind];
  }

  long sheetArea(int stock) {
    return widths[stock] * heights[stock];
  }

  /**
   * Sheets as if they were sticks that areas fill, or any other worth of parts: for bounds alone.
   */
  Instance asLengths(long[] worths, long[] most) {
    return new Instance(worths, demand, most, costs, limits, new long[stocks()]);
  }
}
