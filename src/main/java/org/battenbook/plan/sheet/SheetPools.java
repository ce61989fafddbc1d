package org.battenbook.plan.sheet;

import java.util.Arrays;
import org.battenbook.plan.Effort;
import org.battenbook.plan.sheet.PanelFilling.Split;

/**
 * Improves a packing by searching pools of blocks for sheets that have all pieces at a lower cost.
 * It tries blocks without waste first, then all blocks of the large pieces alone, then blocks with
 * more and more waste. If a pool has every block that a cheaper packing can use, and none is found,
 * the packing is proven best.
 */
final class SheetPools {
  /** As parts of the largest sheet. */
  private static final double[] WASTE = {0.01, 0.03, 0.1};

  private static final long STEPS = 30_000_000;

  /** The search goes as deep. */
  private static final int MOST_SHEETS = 500;

  private final SheetInstance instance;
  private final LargePieces large;
  private final Effort effort;
  private SheetPacking best;
  private boolean isProven;

  SheetPools(SheetInstance instance, SheetPacking first, Effort effort) {
    this.instance = instance;
    this.large = new LargePieces(instance);
    this.best = first;
    this.effort = effort;
  }

  SheetPacking best() {
    return best;
  }

  /** Whether no packing of all pieces costs less than the best. */
  boolean isProven() {
    return isProven;
  }

  /** Improves until the cost is down to {@code bound}. */
  void run(long bound) {
    if (best.isWhole() && best.layouts().size() <= MOST_SHEETS) {
      boolean goesOn = tryWaste(0, bound);
      if (isOpen(bound) && large.areMost()) {
        tryLarge(bound);
      }
      for (int i = 0; goesOn && i < WASTE.length && isOpen(bound); i++) {
        goesOn = tryWaste(WASTE[i], bound);
      }
    }
  }

  private boolean isOpen(long bound) {
    return !isProven && best.cost() > bound && !effort.isSpent();
  }

  /** Whether more waste is worth trying. */
  private boolean tryWaste(double share, long bound) {
    long largest = Arrays.stream(instance.widths).max().orElse(0);
    largest *= Arrays.stream(instance.heights).max().orElse(0);
    PoolCover cover = PoolCover.of(instance, best.cost(), (long) (share * largest), part());
    while (cover != null && isOpen(bound) && cover.isWithin(best.cost() - 1)) {
      best = SheetPacking.of(instance, cover.layouts(), new int[instance.kinds()]);
    }
    isProven |= cover != null && cover.provesMoreThan(best.cost() - 1);
    return cover != null;
  }

  private void tryLarge(long bound) {
    PoolCover cover = PoolCover.of(large.alone(), best.cost(), Long.MAX_VALUE, part());
    if (cover != null) {
      boolean better = true;
      while (better && isOpen(bound) && cover.isWithin(best.cost() - 1)) {
        better = fillOthers(cover);
      }
      isProven |= cover.provesMoreThan(best.cost() - 1);
    }
  }

  private boolean fillOthers(PoolCover cover) {
    for (Split split : Split.values()) {
      SheetPacking packing = large.withOthers(cover.layouts(), split, effort);
      if (packing.isWhole() && packing.cost() < best.cost()) {
        best = packing;
        return true;
      }
    }
    return false;
  }

  private Effort part() {
    return effort.part(STEPS);
  }
}
