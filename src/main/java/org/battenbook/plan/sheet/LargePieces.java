package org.battenbook.plan.sheet;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.battenbook.plan.sheet.PanelFilling.Split;

/**
 * A relaxation of a job to its largest pieces, few enough to search all packings of them. If they
 * alone cannot be cut within a cost, no packing of all pieces can.
 */
final class LargePieces {
  private static final long MOST_CHOICES = 20_000;

  /** The share of the area of all pieces that the large ones need, for the search to be useful. */
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

  /** Whether they are most of the job's area. If not, their cost says little about the job's. */
  boolean areMost() {
    return alone().demandArea() >= LEAST_SHARE * instance.demandArea();
  }

  /** The relaxed job: the largest kinds, as long as the number of choices of pieces is limited. */
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

  /** Adds the other pieces to sheets that have the large ones, the largest first. */
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
