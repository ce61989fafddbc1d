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
 * Fills one sheet bottom-up: it joins blocks in pairs while little is wasted inside them. After P.
 * Y. Wang, "Two algorithms for constrained two-dimensional cutting stock problems" (1983). The
 * block with the least waste for its area is extended first, a best-first search after K. V.
 * Viswanathan and A. Bagchi (1993). The search is limited, so it is a heuristic.
 */
final class BlockSearch {
  private static final int MOST_BLOCKS = 1_500;
  private static final int MOST_OPEN = 60_000;

  private final SheetInstance instance;
  private final int stock;
  private final int[] demand;
  private final double mostWaste;
  private final double[] values;
  private final Effort effort;
  private final List<Block> closed = new ArrayList<>();
  private final Set<Block.Signature> seen = new HashSet<>();
  private final PriorityQueue<Block> open =
      new PriorityQueue<>(
          Comparator.comparingDouble((Block b) -> (double) b.waste() / b.area)
              .thenComparing(b -> -b.area)
              .thenComparing(b -> b.across));
  private @Nullable Block best;

  /**
   * Prepares a search.
   *
   * @param demand the number of pieces of each kind still to be cut
   * @param wasted the share of the sheet that may be wasted inside a block, from 0 to 1
   * @param values the value of each kind per square tick; higher values are preferred
   */
  BlockSearch(
      SheetInstance instance,
      int stock,
      int[] demand,
      double wasted,
      double[] values,
      Effort effort) {
    this.instance = instance;
    this.stock = stock;
    this.demand = demand;
    this.mostWaste = wasted * instance.sheetArea(stock);
    this.values = values;
    this.effort = effort;
  }

  /** The layout of the most valuable block found; empty if no piece fits. */
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
    if (fits && seen.add(block.signature())) {
      open.add(block);
      if ((best == null || value(block) > value(best)) && instance.fits(stock, block)) {
        best = block;
      }
    }
  }

  private double value(Block block) {
    double value = 0;
    for (int kind = 0; kind < values.length; kind++) {
      if (block.counts[kind] > 0) {
        value += values[kind] * block.counts[kind] * instance.area(kind);
      }
    }
    return value;
  }

  private Layout layout(@Nullable Block block) {
    return block == null ? Layout.empty(instance, stock) : Layout.of(instance, stock, block);
  }
}
