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
 * Searches for a packing of sheets at the minimum cost, in three phases:
 *
 * <ol>
 *   <li>It fills panels in many orders.
 *   <li>It searches pools of blocks ({@link SheetPools}).
 *   <li>It builds sheet after sheet from blocks, many times, by sequential value correction: kinds
 *       that ended on poorly filled sheets get a higher value in the next round. After G. Belov and
 *       G. Scheithauer, "Setup and open-stacks minimization in one-dimensional stock cutting"
 *       (2007). Each round also fills panels in a random order.
 * </ol>
 */
final class SheetSearch {
  private static final int MOST_ROUNDS = 300;

  /** Rounds without a cheaper packing after which another round seldom finds one. */
  private static final int MOST_IDLE_ROUNDS = 40;

  /** The shares of a sheet that blocks may waste, one for each round in turn. */
  private static final double[] WASTE = {0, 0.01, 0.03, 0.1, 0.3};

  private static final List<Split> SPLITS = List.of(Split.values());

  private final SheetInstance instance;
  private final Effort effort;

  /** The value of each kind per square tick. */
  private final double[] values;

  private final CheaperSheets cheaper;
  private final SplitMix random = new SplitMix(1);
  private final Incumbent<SheetPacking> incumbent;

  SheetSearch(SheetScale scale, Effort effort, PlanWatch watch) {
    this.instance = scale.instance();
    this.effort = effort;
    this.cheaper = new CheaperSheets(instance, effort);
    this.values = new double[instance.kinds()];
    Arrays.fill(values, 1);
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

  /** Searches until the best packing is proven, the effort is spent, or nothing improves it. */
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
      offer(packing(filling(byKey(kind -> instance.area(kind) * random.factor()), split)));
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

  /** A sort key of kinds; the highest is placed first. */
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

  /** A layout of the best block, with pieces that still fit beside it. */
  private Layout blocks(int stock, int[] demand, double wasted, Split split) {
    Layout layout = new BlockSearch(instance, stock, demand, wasted, values, effort).run();
    int[] order = Arrays.stream(byKey(instance::area)).mapToInt(Integer::intValue).toArray();
    return PanelFilling.fill(instance, layout, demand, order, split, effort);
  }

  /**
   * Fills sheet after sheet, each from the stock with the lowest cost for the area cut from it. If
   * the plan is stopped, {@link NextFit} places the remaining pieces.
   *
   * @param filler makes a layout from a stock and the remaining demand
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

  /** Compares the cost per area cut; at the same cost, the fuller sheet is better. */
  private boolean isCheaper(Layout a, Layout b) {
    double left = (double) instance.costs[a.stock()] * b.area(instance);
    double right = (double) instance.costs[b.stock()] * a.area(instance);
    return left < right || (left == right && used(a) > used(b));
  }

  /** The share of the sheet that its pieces cover. */
  private double used(Layout layout) {
    return (double) layout.area(instance) / instance.sheetArea(layout.stock());
  }

  /** Corrects the values of the kinds on a sheet: the less of it is used, the higher. */
  private void correct(Layout layout) {
    double poor = 1 / Math.max(0.1, used(layout));
    for (int kind = 0; kind < values.length; kind++) {
      if (layout.count(kind) > 0) {
        double factor = 0.7 + 0.6 * random.factor();
        values[kind] = (values[kind] + Math.min(3, poor * factor)) / 2;
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
