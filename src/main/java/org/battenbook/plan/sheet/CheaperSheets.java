package org.battenbook.plan.sheet;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.battenbook.plan.sheet.PanelFilling.Split;
import org.jspecify.annotations.Nullable;

/** Improves a packing by moving all pieces of a sheet to a cheaper sheet that has room for them. */
final class CheaperSheets {
  private final SheetInstance instance;
  private final Effort effort;
  private final List<int[]> orders;
  private final int[] stocks;

  CheaperSheets(SheetInstance instance, Effort effort) {
    this.instance = instance;
    this.effort = effort;
    this.stocks = ascending(instance.stocks(), stock -> instance.costs[stock]);
    this.orders =
        List.of(
            ascending(instance.kinds(), kind -> -instance.area(kind)),
            ascending(
                instance.kinds(), kind -> -Math.max(instance.across[kind], instance.down[kind])));
  }

  private static int[] ascending(int count, IntToLongFunction key) {
    return IntStream.range(0, count)
        .boxed()
        .sorted(Comparator.comparingLong(key::applyAsLong))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** A packing of the same pieces that costs the same or less. */
  SheetPacking moved(SheetPacking packing) {
    int[] left = instance.limits.clone();
    packing.layouts().forEach(layout -> take(left, layout.stock(), 1));
    return packing.with(
        instance, packing.layouts().stream().map(layout -> moved(layout, left)).toList());
  }

  private Layout moved(Layout layout, int[] left) {
    for (int stock : stocks) {
      if (instance.costs[stock] >= instance.costs[layout.stock()] || effort.isSpent()) {
        break;
      }
      boolean mayFit = left[stock] > 0 && layout.area(instance) <= instance.sheetArea(stock);
      Layout other = mayFit ? filled(stock, layout.counts()) : null;
      if (other != null) {
        take(left, layout.stock(), -1);
        take(left, stock, 1);
        return other;
      }
    }
    return layout;
  }

  private void take(int[] left, int stock, int sheets) {
    left[stock] -= instance.isLimited(stock) ? sheets : 0;
  }

  /** A layout with all of the pieces; null if no order of filling fits them on the sheet. */
  private @Nullable Layout filled(int stock, int[] pieces) {
    for (int[] order : orders) {
      for (Split split : Split.values()) {
        if (effort.isStopped()) {
          return null;
        }
        Layout layout = Layout.empty(instance, stock);
        layout = PanelFilling.fill(instance, layout, pieces, order, split, effort);
        if (Arrays.equals(layout.counts(), pieces)) {
          return layout;
        }
      }
    }
    return null;
  }
}
