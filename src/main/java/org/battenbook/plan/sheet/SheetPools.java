package org.battenbook.plan.sheet;

import java.util.Arrays;
import org.battenbook.plan.Effort;
import org.battenbook.plan.sheet.PanelFilling.Split;

/**
 * Improves a packing by searching pools of blocks for a cheaper set of sheets that has all pieces.
 * It tries blocks without waste first, then all blocks of the large pieces alone, then blocks with
 * more and more waste. If a pool has every block that a cheaper packing can use, and a complete
 * search finds none, the packing is proven optimal.
 */
final class SheetPools {
  /** The limits of waste in a block, as shares of the largest sheet. */
  private static final double[] WASTE = {0.01, 0.03, 0.1};

  /** The steps of effort for one pool. */
  private static final long STEPS = 30_000_000;

  /** Limits the depth of the recursion in {@link PoolCover}: one call for each sheet. */
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

  /** Improves the packing until its cost is at most {@code bound} or nothing helps. */
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

  /**
   * Searches the blocks of limited waste.
   *
   * @return false if the pool could not be built; then one with more waste cannot be built either
   */
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
