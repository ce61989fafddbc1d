package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * Looks among the choices of a pool for sheets that have all pieces within a cost: the largest
 * piece that is left goes first, in every way, the sheets that lose least before others.
 *
 * <p>A choice to which a piece that is left can be added is passed over, since that piece can as
 * well be taken from its sheet. What was tried in vain is kept.
 */
final class PoolCover {
  private static final int MOST_STATES = 1_000_000;

  /** A sheet with a choice of pieces on it. */
  private record Choice(int stock, PackedCounts pieces, Block block, long loss) {}

  /** What is left to cut, and of which limited sheets so many. */
  private record State(PackedCounts pieces, PackedCounts sheets) {}

  private final SheetInstance instance;
  private final SheetLosses losses;

  /** Whether the pool has every choice that a plan of less cost can use. */
  private final boolean hasAll;

  private final Effort effort;
  private final PackedCounts.Fields sheetFields;
  private final List<Map<PackedCounts, Block>> held = new ArrayList<>();
  private final List<List<Choice>> byKind = new ArrayList<>();
  private final int[] kinds;
  private final Map<State, Long> vain = new HashMap<>();
  private final List<Choice> taken = new ArrayList<>();
  private long vainCost = -1;
  private boolean isComplete = true;

  private PoolCover(
      SheetInstance instance, BlockPool pool, SheetLosses losses, boolean hasAll, Effort effort) {
    this.instance = instance;
    this.losses = losses;
    this.hasAll = hasAll;
    this.effort = effort;
    this.sheetFields = new PackedCounts.Fields(limits());
    this.kinds =
        IntStream.range(0, instance.kinds())
            .boxed()
            .sorted(Comparator.comparingLong(kind -> -instance.area(kind)))
            .mapToInt(Integer::intValue)
            .toArray();
    for (int kind = 0; kind < instance.kinds(); kind++) {
      byKind.add(new ArrayList<>());
    }
    for (int stock = 0; stock < instance.stocks(); stock++) {
      held.add(new HashMap<>());
      for (BlockFront front : pool.fronts()) {
        if (!effort.isStopped()) {
          offer(stock, front);
        }
      }
    }
    byKind.forEach(choices -> choices.sort(Comparator.comparingLong(Choice::loss)));
  }

  /**
   * Prepares a search among the blocks of no more than some waste; null where they are too many.
   *
   * @param known the cost of a packing that is there: less is looked for
   */
  static @Nullable PoolCover of(SheetInstance instance, long known, long waste, Effort effort) {
    SheetLosses losses = SheetLosses.of(instance, known);
    if (losses == null) {
      return null;
    }
    long most = losses.mostWaste(known - 1);
    BlockPool pool = BlockPool.of(instance, Math.min(most, waste), effort);
    boolean hasAll = waste >= most && instance.stages == Integer.MAX_VALUE;
    return pool == null ? null : new PoolCover(instance, pool, losses, hasAll, effort);
  }

  /** Looks for sheets that come to no more than a cost. */
  boolean isWithin(long cost) {
    taken.clear();
    long loss = losses.allowed(cost);
    PackedCounts all = new PackedCounts.Fields(instance.demand).of(instance.demand);
    isComplete &= !effort.isStopped();
    boolean found =
        isComplete && loss >= 0 && cover(new State(all, sheetFields.of(limits())), cost, loss);
    if (!found) {
      vainCost = cost;
    }
    return found;
  }

  /** The sheets that were found last. */
  List<Layout> layouts() {
    return taken.stream().map(c -> Layout.of(instance, c.stock(), c.block())).toList();
  }

  /** Whether every way to come within a cost was looked at, in vain. */
  boolean provesMoreThan(long cost) {
    return hasAll && isComplete && vainCost >= cost;
  }

  private int[] limits() {
    return IntStream.range(0, instance.stocks())
        .map(stock -> instance.isLimited(stock) ? instance.limits[stock] : 0)
        .toArray();
  }

  private void offer(int stock, BlockFront front) {
    effort.pass(instance.kinds());
    for (Block block : front.blocks) {
      effort.pass(instance.stages == Integer.MAX_VALUE ? 1 : 50);
      if (instance.isHeld(stock, block)) {
        held.get(stock).put(front.pieces, block);
        long loss = losses.of(stock, front.area());
        Choice choice = new Choice(stock, front.pieces, block, loss);
        for (int kind = 0; kind < instance.kinds(); kind++) {
          if (block.counts[kind] > 0) {
            byKind.get(kind).add(choice);
          }
        }
        return;
      }
    }
  }

  private boolean cover(State left, long cost, long loss) {
    if (left.pieces().isNothing()) {
      return true;
    }
    Long tried = vain.get(left);
    if (tried != null && tried >= cost) {
      return false;
    }
    for (Choice choice : byKind.get(first(left.pieces()))) {
      effort.spend(1);
      isComplete &= !effort.isStopped();
      if (choice.loss() > loss || !isComplete) {
        break;
      }
      if (isWorthTrying(choice, left, cost)) {
        taken.add(choice);
        long costLeft = cost - instance.costs[choice.stock()];
        if (cover(without(left, choice), costLeft, loss - choice.loss())) {
          return true;
        }
        taken.remove(taken.size() - 1);
      }
    }
    isComplete &= !effort.isSpent() && vain.size() < MOST_STATES;
    if (isComplete) {
      vain.put(left, cost);
    }
    return false;
  }

  private int first(PackedCounts pieces) {
    int at = 0;
    while (pieces.of(kinds[at]) == 0) {
      at++;
    }
    return kinds[at];
  }

  private boolean isWorthTrying(Choice choice, State left, long cost) {
    int stock = choice.stock();
    boolean isThere = !instance.isLimited(stock) || left.sheets().of(stock) > 0;
    return isThere
        && instance.costs[stock] <= cost
        && choice.pieces().isWithin(left.pieces())
        && !takesMore(choice, left.pieces());
  }

  /** Whether a piece that is left can be added. */
  private boolean takesMore(Choice choice, PackedCounts left) {
    effort.spend(instance.kinds());
    effort.pass(4L * instance.kinds());
    for (int kind = 0; kind < instance.kinds(); kind++) {
      boolean isLeft = choice.pieces().of(kind) < left.of(kind);
      if (isLeft && held.get(choice.stock()).containsKey(choice.pieces().plusOne(kind))) {
        return true;
      }
    }
    return false;
  }

  private State without(State left, Choice choice) {
    return new State(
        left.pieces().minus(choice.pieces()),
        instance.isLimited(choice.stock())
            ? left.sheets().minus(sheetFields.one(choice.stock()))
            : left.sheets());
  }
}
