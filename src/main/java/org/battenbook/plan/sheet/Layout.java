package org.battenbook.plan.sheet;

/** The cuts of one sheet of a stock. */
final class Layout {
  private final int stock;
  private final Panel panel;

  /** The number of pieces of each kind. */
  private final int[] counts;

  Layout(int stock, Panel panel, int[] counts) {
    this.stock = stock;
    this.panel = panel;
    this.counts = counts;
  }

  static Layout empty(SheetInstance instance, int stock) {
    Panel panel = Panel.whole(instance.widths[stock], instance.heights[stock]);
    return new Layout(stock, panel, new int[instance.kinds()]);
  }

  /** A sheet with one block in its top left corner. */
  static Layout of(SheetInstance instance, int stock, Block block) {
    Panel panel = Panel.whole(instance.widths[stock], instance.heights[stock]);
    block.cutFrom(panel);
    return new Layout(stock, panel, block.counts.clone());
  }

  int stock() {
    return stock;
  }

  Panel panel() {
    return panel;
  }

  int count(int kind) {
    return counts[kind];
  }

  int[] counts() {
    return counts.clone();
  }

  boolean isEmpty() {
    for (int count : counts) {
      if (count > 0) {
        return false;
      }
    }
    return true;
  }

  /** The total area of its pieces. */
  long area(SheetInstance instance) {
    long area = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      area += counts[kind] * instance.area(kind);
    }
    return area;
  }

  /** Subtracts its pieces from a demand. */
  void takeFrom(int[] demand) {
    for (int kind = 0; kind < counts.length; kind++) {
      demand[kind] -= counts[kind];
    }
  }
}
