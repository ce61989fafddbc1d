package org.battenbook.plan.sheet;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.battenbook.plan.Packing;

/** A packing of sheets: a layout for each sheet, and the pieces that are missing. */
final class SheetPacking implements Packing {
  private final List<Layout> layouts;
  private final long cost;

  /** The number of pieces of each kind that are on no sheet. */
  private final int[] missing;

  private SheetPacking(List<Layout> layouts, long cost, int[] missing) {
    this.layouts = layouts;
    this.cost = cost;
    this.missing = missing;
  }

  static SheetPacking of(SheetInstance instance, List<Layout> layouts, int[] missing) {
    long cost = layouts.stream().mapToLong(layout -> instance.costs[layout.stock()]).sum();
    return new SheetPacking(List.copyOf(layouts), cost, missing.clone());
  }

  /** The same pieces on other sheets. */
  SheetPacking with(SheetInstance instance, List<Layout> others) {
    return of(instance, others, missing);
  }

  List<Layout> layouts() {
    return layouts;
  }

  @Override
  public long cost() {
    return cost;
  }

  @Override
  public boolean isWhole() {
    return Arrays.stream(missing).allMatch(count -> count == 0);
  }

  /**
   * Compares by these criteria, one after the other: the area of missing pieces, the cost, few
   * large offcuts, and the number of different fence settings.
   */
  boolean isBetterThan(SheetPacking that, SheetInstance instance) {
    int order = Long.compare(missingArea(instance), that.missingArea(instance));
    order = order != 0 ? order : Long.compare(cost, that.cost);
    order = order != 0 ? order : Double.compare(that.offcutQuality(), offcutQuality());
    order = order != 0 ? order : Integer.compare(settings(), that.settings());
    return order < 0;
  }

  private long missingArea(SheetInstance instance) {
    long area = 0;
    for (int kind = 0; kind < missing.length; kind++) {
      area += missing[kind] * instance.area(kind);
    }
    return area;
  }

  /**
   * The sum of the squared areas of offcuts. It is higher for few large ones than many small ones.
   */
  private double offcutQuality() {
    double[] sum = new double[1];
    for (Layout layout : layouts) {
      layout
          .panel()
          .eachFree(
              free ->
                  sum[0] += (double) free.across * free.down * ((double) free.across * free.down));
    }
    return sum[0];
  }

  /** The number of different distances of a cut from the edge of its panel. */
  private int settings() {
    Set<Long> distances = new HashSet<>();
    layouts.forEach(layout -> collect(layout.panel(), distances));
    return distances.size();
  }

  private static void collect(Panel panel, Set<Long> distances) {
    Panel.Division division = panel.division();
    if (division != null) {
      distances.add(division.at());
      collect(division.first(), distances);
      collect(division.second(), distances);
    }
  }
}
