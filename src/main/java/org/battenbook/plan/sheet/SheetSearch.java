package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.battenbook.plan.Incumbent;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.sheet.PanelFilling.Split;
import org.jspecify.annotations.Nullable;

/**
 * Looks for a packing of sheets of least cost: panels filled in many orders, then pools of blocks
 * searched for a set of sheets, then sheet after sheet of blocks put together, kinds that were left
 * to poor sheets preferred the next time. After G. Belov and G. Scheithauer, "Setup and open-stacks
 * minimization in one-dimensional stock cutting" (2007), who correct the worths of parts in this
 * way.
 */
final class SheetSearch {
  private static final int MOST_ROUNDS = 300;

  /** After so many rounds that found nothing cheaper, more of them seldom do. */
  private static final int MOST_IDLE_ROUNDS = 40;

  private static final double[] WASTE = {0, 0.01, 0.03, 0.1, 0.3};
  private static final List<Split> SPLITS = List.of(Split.values());

  private final SheetInstance instance;
  private final Effort effort;
  private final double[] worths;
  private final CheaperSheets cheaper;
  private final SplitMix lots = new SplitMix(1);
  private final Incumbent<SheetPacking> incumbent;

  SheetSearch(SheetScale scale, Effort effort, PlanWatch watch) {
    this.instance = scale.instance();
    this.effort = effort;
    this.cheaper = new CheaperSheets(instance, effort);
    this.worths = new double[instance.kinds()];
    Arrays.fill(worths, 1);
    SheetPacking first = packing(filling(byKey(instance::area), Split.WIDER_REST));
    this.incumbent = new Incumbent<>(first, scale.units(), watch);
  }

  SheetPacking best() {
    return incumbent.best();
  }

  long bound() {
    return incumbent.bound();
  }

  private boolean isDone() {
    return effort.isSpent() || incumbent.isProven();
  }

  void run() {
    incumbent.raise(SheetBound.of(instance, best().cost(), effort));
    fillInEveryOrder();
    coverFromPools();
    int idle = 0;
    for (int round = 0; round < MOST_ROUNDS && idle < MOST_IDLE_ROUNDS && !isDone(); round++) {
      long before = best().cost();
      double wasted = WASTE[round % WASTE.length];
      Split split = SPLITS.get(round / WASTE.length % SPLITS.size());
      offer(packing((stock, demand) -> blocks(stock, demand, wasted, split)));
      offer(packing(filling(byKey(kind -> instance.area(kind) * lots.factor()), split)));
      idle = best().cost() < before ? 0 : idle + 1;
    }
  }

  private void coverFromPools() {
    if (!isDone()) {
      SheetPools pools = new SheetPools(instance, best(), effort);
      pools.run(bound());
      offer(pools.best());
      if (pools.isProven()) {
        incumbent.raise(best().cost());
      }
    }
  }

  private void fillInEveryOrder() {
    List<Integer[]> orders =
        List.of(
            byKey(instance::area),
            byKey(kind -> Math.max(instance.across[kind], instance.down[kind])),
            byKey(kind -> instance.across[kind]),
            byKey(kind -> instance.down[kind]),
            byKey(kind -> instance.across[kind] + instance.down[kind]));
    for (Integer[] order : orders) {
      for (Split split : SPLITS) {
        if (!effort.isSpent()) {
          offer(packing(filling(order, split)));
        }
      }
    }
  }

  /** How much a kind is put first. */
  private interface Key {
    double of(int kind);
  }

  private Integer[] byKey(Key key) {
    double[] keys = IntStream.range(0, instance.kinds()).mapToDouble(key::of).toArray();
    Integer[] order = IntStream.range(0, keys.length).boxed().toArray(Integer[]::new);
    Arrays.sort(order, Comparator.comparingDouble(kind -> -keys[kind]));
    return order;
  }

  private BiFunction<Integer, int[], Layout> filling(Integer[] order, Split split) {
    int[] kinds = Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    return (stock, demand) ->
        PanelFilling.fill(instance, Layout.empty(instance, stock), demand, kinds, split, effort);
  }

  /** Blocks first, and what still fits beside them. */
  private Layout blocks(int stock, int[] demand, double wasted, Split split) {
    Layout layout = new BlockSearch(instance, stock, demand, wasted, worths, effort).run();
    int[] order = Arrays.stream(byKey(instance::area)).mapToInt(Integer::intValue).toArray();
    return PanelFilling.fill(instance, layout, demand, order, split, effort);
  }

  /**
   * Sheet after sheet, of the stock that comes out cheapest for what is cut from it; what is left
   * where it is stopped goes where it fits.
   */
  private SheetPacking packing(BiFunction<Integer, int[], Layout> filler) {
    int[] demand = instance.demand.clone();
    int[] limits = instance.limits.clone();
    List<Layout> layouts = new ArrayList<>();
    for (Layout next = cheapest(filler, demand, limits);
        next != null;
        next = cheapest(filler, demand, limits)) {
      next.takeFrom(demand);
      limits[next.stock()] -= instance.isLimited(next.stock()) ? 1 : 0;
      layouts.add(next);
      correct(next);
    }
    if (effort.isStopped()) {
      layouts.addAll(new NextFit(instance, demand, limits).layouts());
    }
    return SheetPacking.of(instance, layouts, demand);
  }

  private @Nullable Layout cheapest(
      BiFunction<Integer, int[], Layout> filler, int[] demand, int[] limits) {
    Layout best = null;
    boolean left = Arrays.stream(demand).anyMatch(count -> count > 0);
    for (int stock = 0; left && stock < limits.length && !effort.isStopped(); stock++) {
      effort.pass(instance.kinds());
      if (limits[stock] > 0) {
        Layout layout = filler.apply(stock, demand);
        if (!layout.isEmpty() && (best == null || isCheaper(layout, best))) {
          best = layout;
        }
      }
    }
    return best;
  }

  /** For each tick of area that is cut; of equal ones the fuller. */
  private boolean isCheaper(Layout a, Layout b) {
    double left = (double) instance.costs[a.stock()] * b.area(instance);
    double right = (double) instance.costs[b.stock()] * a.area(instance);
    return left < right || (left == right && used(a) > used(b));
  }

  private double used(Layout layout) {
    return (double) layout.area(instance) / instance.sheetArea(layout.stock());
  }

  /** What ended on a poor sheet is worth more from now on. */
  private void correct(Layout layout) {
    double poor = 1 / Math.max(0.1, used(layout));
    for (int kind = 0; kind < worths.length; kind++) {
      if (layout.count(kind) > 0) {
        double factor = 0.7 + 0.6 * lots.factor();
        worths[kind] = (worths[kind] + Math.min(3, poor * factor)) / 2;
      }
    }
  }

  private void offer(SheetPacking found) {
    boolean hasOthers = instance.stocks() > 1 && !effort.isSpent();
    SheetPacking packing = hasOthers ? cheaper.moved(found) : found;
    if (packing.isBetterThan(best(), instance)) {
      incumbent.improve(packing);
    }
  }
}
