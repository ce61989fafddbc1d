package org.battenbook.plan.sheet;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.battenbook.plan.sheet.PanelFilling.Split;

/**
 * The largest pieces of a job, as if no others were asked for: few enough that every way to pack
 * them can be looked at. Where even they do not go within a cost, no packing of all pieces does.
 */
final class LargePieces {
  private static final long MOST_CHOICES = 20_000;
  private static final double LEAST_SHARE = 0.8;

  private final SheetInstance instance;
  private final int[] byArea;

  LargePieces(SheetInstance instance) {
    this.instance = instance;
    this.byArea =
        IntStream.range(0, instance.kinds())
            .boxed()
            .sorted(Comparator.comparingLong(kind -> -instance.area(kind)))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  /** Whether they are most of the job; else what they need tells nothing. */
  boolean areMost() {
    return alone().demandArea() >= LEAST_SHARE * instance.demandArea();
  }

  /** A job of as many of them as have no more choices than can all be looked at. */
  SheetInstance alone() {
    int[] demand = new int[instance.kinds()];
    long choices = 1;
    for (int kind : byArea) {
      choices *= instance.demand[kind] + 1L;
      if (choices > MOST_CHOICES) {
        break;
      }
      demand[kind] = instance.demand[kind];
    }
    return instance.with(demand);
  }

  /** Fills the other pieces in beside them, the largest first. */
  SheetPacking withOthers(List<Layout> layouts, Split split, Effort effort) {
    int[] rest = instance.demand.clone();
    layouts.forEach(layout -> layout.takeFrom(rest));
    List<Layout> filled =
        layouts.stream().map(layout -> fill(layout, rest, split, effort)).toList();
    return SheetPacking.of(instance, filled, rest);
  }

  private Layout fill(Layout layout, int[] rest, Split split, Effort effort) {
    int[] before = layout.counts();
    Arrays.setAll(rest, kind -> rest[kind] + before[kind]);
    Layout filled = PanelFilling.fill(instance, layout, rest, byArea, split, effort);
    filled.takeFrom(rest);
    return filled;
  }
}
