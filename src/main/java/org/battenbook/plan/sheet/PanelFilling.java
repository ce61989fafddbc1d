package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.plan.Effort;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.sheet.Sheet.Direction;
import org.jspecify.annotations.Nullable;

/**
 * Fills the free panels of one sheet: the guillotine algorithm with the rule "best short side fit"
 * from J. Jylänki, "A thousand ways to pack the bin" (2010). It places the kinds in a given order,
 * each as often as needed and possible. A piece goes into the panel with the smallest margin along
 * its tighter side.
 */
final class PanelFilling {
  /** The split rule: which of the two cuts around a piece is made first. */
  enum Split {
    /** Cuts off the wider margin first, so that it becomes one large free panel. */
    WIDER_REST,
    /** Cuts off the narrower margin first. */
    NARROWER_REST,
    ACROSS,
    DOWN;

    /**
     * The direction of the first cut.
     *
     * @param restAcross the margin to the right of the piece
     * @param restDown the margin below the piece
     */
    Direction first(long restAcross, long restDown) {
      return switch (this) {
        case ACROSS -> Direction.ACROSS;
        case DOWN -> Direction.DOWN;
        case WIDER_REST -> restAcross < restDown ? Direction.ACROSS : Direction.DOWN;
        case NARROWER_REST -> restAcross < restDown ? Direction.DOWN : Direction.ACROSS;
      };
    }
  }

  /** A piece in a panel, and the direction of its first cut. */
  private record Spot(Panel panel, long across, long down, boolean turned, Direction first) {
    long shortRest() {
      return Math.min(panel.across - across, panel.down - down);
    }

    long longRest() {
      return Math.max(panel.across - across, panel.down - down);
    }

    boolean isBetterThan(@Nullable Spot that) {
      if (that == null || shortRest() != that.shortRest()) {
        return that == null || shortRest() < that.shortRest();
      }
      return longRest() < that.longRest();
    }
  }

  private static final int FEW_PANELS = 8;

  private final SheetInstance instance;
  private final Split split;
  private final Effort effort;
  private final List<Panel> free = new ArrayList<>();

  private PanelFilling(SheetInstance instance, Split split, Effort effort) {
    this.instance = instance;
    this.split = split;
    this.effort = effort;
  }

  /**
   * Adds pieces to a layout. The panels of the layout given are cut too, so only the result may be
   * used afterward.
   *
   * @param demand the number of pieces of each kind, including those already in the layout
   * @param order the kinds in the order in which to place them
   */
  static Layout fill(
      SheetInstance instance,
      Layout layout,
      int[] demand,
      int[] order,
      Split split,
      Effort effort) {
    PanelFilling filling = new PanelFilling(instance, split, effort);
    layout.panel().eachFree(filling.free::add);
    int[] counts = layout.counts();
    for (int kind : order) {
      while (counts[kind] < demand[kind] && !effort.isStopped() && filling.place(kind)) {
        counts[kind]++;
      }
    }
    return new Layout(layout.stock(), layout.panel(), counts);
  }

  /**
   * Fills an empty sheet quickly. It looks only at the panels that were cut last, and stops at the
   * first piece that fits none of them.
   *
   * @param first the index in {@code order} of the first kind to place
   */
  static Layout quickly(SheetInstance instance, int stock, int[] demand, int[] order, int first) {
    Layout empty = Layout.empty(instance, stock);
    PanelFilling filling =
        new PanelFilling(instance, Split.WIDER_REST, new Effort(Long.MAX_VALUE, PlanWatch.NONE));
    filling.free.add(empty.panel());
    int[] counts = empty.counts();
    boolean fits = true;
    for (int i = first; fits && i < order.length; i++) {
      int kind = order[i];
      while (fits && counts[kind] < demand[kind]) {
        fits = filling.place(kind);
        counts[kind] += fits ? 1 : 0;
        filling.dropOldPanels();
      }
    }
    return new Layout(stock, empty.panel(), counts);
  }

  private void dropOldPanels() {
    if (free.size() > FEW_PANELS) {
      free.subList(0, free.size() - FEW_PANELS).clear();
    }
  }

  private boolean place(int kind) {
    effort.spend(free.size() + 1L);
    Spot best = null;
    for (Panel panel : free) {
      best = better(best, spot(panel, instance.across[kind], instance.down[kind], false));
      if (instance.turns[kind]) {
        best = better(best, spot(panel, instance.down[kind], instance.across[kind], true));
      }
    }
    if (best == null) {
      return false;
    }
    Panel piece = best.panel().reduce(best.across(), best.down(), best.first());
    piece.fill(kind, best.turned());
    free.remove(best.panel());
    best.panel().eachFree(free::add);
    return true;
  }

  private static @Nullable Spot better(@Nullable Spot best, @Nullable Spot other) {
    return other != null && other.isBetterThan(best) ? other : best;
  }

  private @Nullable Spot spot(Panel panel, long across, long down, boolean turned) {
    if (across > panel.across || down > panel.down) {
      return null;
    }
    Direction first = split.first(panel.across - across, panel.down - down);
    for (Direction direction : List.of(first, first.other())) {
      if (panel.stages(across, down, direction) <= instance.stages) {
        return new Spot(panel, across, down, turned, direction);
      }
    }
    return null;
  }
}
