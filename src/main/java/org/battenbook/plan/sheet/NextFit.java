package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Next fit decreasing: places the remaining pieces without a search, the largest first. A piece
 * goes on the current sheet, or on a new one if the current sheet has no room. This is quick for
 * any job, so a plan that is stopped before its first packing still has all pieces.
 */
final class NextFit {
  private final SheetInstance instance;
  private final int[] demand;
  private final int[] limits;
  private final int[] kinds;
  private final int[] stocks;

  /**
   * Begins with some remaining pieces and sheets. Both arrays are reduced as pieces are placed.
   *
   * @param demand the number of pieces of each kind still to be placed
   * @param limits the number of sheets of each stock still available
   */
  NextFit(SheetInstance instance, int[] demand, int[] limits) {
    this.instance = instance;
    this.demand = demand;
    this.limits = limits;
    this.kinds = sorted(instance.kinds(), Comparator.comparingLong(kind -> -instance.area(kind)));
    this.stocks = sorted(instance.stocks(), Comparator.comparingDouble(this::costOfArea));
  }

  private double costOfArea(int stock) {
    return (double) instance.costs[stock] / instance.sheetArea(stock);
  }

  private static int[] sorted(int count, Comparator<Integer> order) {
    return IntStream.range(0, count).boxed().sorted(order).mapToInt(Integer::intValue).toArray();
  }

  /** The sheets filled, until no sheet is left that any remaining piece fits. */
  List<Layout> layouts() {
    List<Layout> layouts = new ArrayList<>();
    for (int first = 0; first < kinds.length; first++) {
      Layout layout = demand[kinds[first]] > 0 ? layout(first) : null;
      while (layout != null) {
        layout.takeFrom(demand);
        limits[layout.stock()] -= instance.isLimited(layout.stock()) ? 1 : 0;
        layouts.add(layout);
        layout = demand[kinds[first]] > 0 ? layout(first) : null;
      }
    }
    return layouts;
  }

  /**
   * The next sheet; null if no piece of its first kind fits any sheet.
   *
   * @param first the index in {@code kinds} of the first kind to place
   */
  private @Nullable Layout layout(int first) {
    for (int stock : stocks) {
      if (limits[stock] > 0) {
        Layout layout = PanelFilling.quickly(instance, stock, demand, kinds, first);
        if (!layout.isEmpty()) {
          return layout;
        }
      }
    }
    return null;
  }
}
