package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import org.battenbook.plan.Effort;
import org.battenbook.plan.sheet.Sheet.Direction;
import org.jspecify.annotations.Nullable;

/**
 * Fills one sheet from the pieces up: blocks are joined two by two, as long as little is wasted
 * inside them. After P. Y. Wang, "Two algorithms for constrained two-dimensional cutting stock
 * problems" (1983); the fullest block first, after K. V. Viswanathan and A. Bagchi (1993).
 */
final class BlockSearch {
  private static final int MOST_BLOCKS = 1_500;
  private static final int MOST_OPEN = 60_000;

  private final SheetInstance instance;
  private final int stock;
  private final int[] demand;
  private final double mostWaste;
  private final double[] worths;
  private final Effort effort;
  private final List<Block> closed = new ArrayList<>();
  private final Set<Block.Likeness> met = new HashSet<>();
  private final PriorityQueue<Block> open =
      new PriorityQueue<>(
          Comparator.comparingDouble((Block b) -> (double) b.waste() / b.area)
              .thenComparing(b -> -b.area)
              .thenComparing(b -> b.across));
  private @Nullable Block best;

  /**
   * Prepares a search.
   *
   * @param wasted the part of the sheet that may be wasted inside blocks
   * @param worths by which each kind is preferred, for each tick of area
   */
  BlockSearch(
      SheetInstance instance,
      int stock,
      int[] demand,
      double wasted,
      double[] worths,
      Effort effort) {
    this.instance = instance;
    this.stock = stock;
    this.demand = demand;
    this.mostWaste = wasted * instance.sheetArea(stock);
    this.worths = worths;
    this.effort = effort;
  }

  /** The sheet of most worth that was met; empty where nothing fits. */
  Layout run() {
    for (int kind = 0; kind < instance.kinds(); kind++) {
      if (demand[kind] > 0) {
        add(Block.of(instance, kind, false));
        if (instance.turns[kind]) {
          add(Block.of(instance, kind, true));
        }
      }
    }
    while (!open.isEmpty() && closed.size() < MOST_BLOCKS && !isFull() && !effort.isSpent()) {
      Block block = open.remove();
      closed.add(block);
      joinWithAll(block);
    }
    return layout(best);
  }

  private boolean isFull() {
    return best != null && best.area == instance.sheetArea(stock);
  }

  private void joinWithAll(Block block) {
    effort.spend((long) closed.size() * (2 + instance.kinds() / 4));
    for (int i = 0; i < closed.size() && open.size() < MOST_OPEN; i++) {
      Block other = closed.get(i);
      for (Direction cut : Direction.values()) {
        if (mayJoin(cut, block, other)) {
          add(Block.joined(cut, block, other));
        }
      }
    }
  }

  private boolean mayJoin(Direction cut, Block a, Block b) {
    boolean beside = cut == Direction.DOWN;
    long across = beside ? a.across + b.across : Math.max(a.across, b.across);
    long down = beside ? Math.max(a.down, b.down) : a.down + b.down;
    return across <= instance.widths[stock]
        && down <= instance.heights[stock]
        && across * down - a.area - b.area <= mostWaste
        && a.isWithin(demand, b);
  }

  private void add(Block block) {
    boolean fits = block.across <= instance.widths[stock] && block.down <= instance.heights[stock];
    if (fits && met.add(block.likeness())) {
      open.add(block);
      if ((best == null || worth(block) > worth(best)) && instance.isHeld(stock, block)) {
        best = block;
      }
    }
  }

  private double worth(Block block) {
    double worth = 0;
    for (int kind = 0; kind < worths.length; kind++) {
      if (block.counts[kind] > 0) {
        worth += worths[kind] * block.counts[kind] * instance.area(kind);
      }
    }
    return worth;
  }

  private Layout layout(@Nullable Block block) {
    return block == null ? Layout.empty(instance, stock) : Layout.of(instance, stock, block);
  }
}
