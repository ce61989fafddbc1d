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
 * Searches a pool, depth first, for sheets that together have all pieces within a cost. At each
 * step the largest remaining piece is placed, with every choice that has it, the lowest loss first.
 *
 * <p>A choice is skipped if a remaining piece can be added to it: moving that piece there from its
 * own sheet never costs more (dominance). States that failed are stored, so that none is searched
 * twice.
 */
final class PoolCover {
  private static final int MOST_STATES = 1_000_000;

  /** A choice of pieces on a sheet. The loss is as in {@link SheetLosses}. */
  private record Choice(int stock, PackedCounts pieces, Block block, long loss) {}

  /** The pieces still to be cut, and the sheets left of each limited stock. */
  private record State(PackedCounts pieces, PackedCounts sheets) {}

  private final SheetInstance instance;
  private final SheetLosses losses;

  /** Whether the pool has every choice that a cheaper plan can use. */
  private final boolean hasAll;

  private final Effort effort;
  private final PackedCounts.Fields sheetFields;

  /** For each stock, the choices of pieces that fit one sheet. */
  private final List<Map<PackedCounts, Block>> blocks = new ArrayList<>();

  /** For each kind, the choices that have it, the lowest loss first. */
  private final List<List<Choice>> byKind = new ArrayList<>();

  /** The kinds, the largest area first. */
  private final int[] kinds;

  /** The highest cost for which each state failed. */
  private final Map<State, Long> failed = new HashMap<>();

  private final List<Choice> taken = new ArrayList<>();
  private long failedCost = -1;
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
      blocks.add(new HashMap<>());
      for (BlockFront front : pool.fronts()) {
        if (!effort.isStopped()) {
          offer(stock, front);
        }
      }
    }
    byKind.forEach(choices -> choices.sort(Comparator.comparingLong(Choice::loss)));
  }

  /**
   * Prepares a search.
   *
   * @param known the cost of the best packing so far; the search looks for a cheaper one
   * @param waste the largest waste inside a block, in square ticks
   * @return null if there are too many blocks, numbers would be too large, or the effort is spent
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

  /** Searches for sheets that have all pieces and cost at most {@code cost}. */
  boolean isWithin(long cost) {
    taken.clear();
    long loss = losses.allowed(cost);
    PackedCounts all = new PackedCounts.Fields(instance.demand).of(instance.demand);
    isComplete &= !effort.isStopped();
    boolean found =
        isComplete && loss >= 0 && cover(new State(all, sheetFields.of(limits())), cost, loss);
    if (!found) {
      failedCost = cost;
    }
    return found;
  }

  /** The sheets found by the last successful search. */
  List<Layout> layouts() {
    return taken.stream().map(c -> Layout.of(instance, c.stock(), c.block())).toList();
  }

  /** Whether a complete search has shown that every plan costs more than {@code cost}. */
  boolean provesMoreThan(long cost) {
    return hasAll && isComplete && failedCost >= cost;
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
      if (instance.fits(stock, block)) {
        blocks.get(stock).put(front.pieces, block);
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
    Long tried = failed.get(left);
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
    isComplete &= !effort.isSpent() && failed.size() < MOST_STATES;
    if (isComplete) {
      failed.put(left, cost);
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
    boolean isAvailable = !instance.isLimited(stock) || left.sheets().of(stock) > 0;
    return isAvailable
        && instance.costs[stock] <= cost
        && choice.pieces().isWithin(left.pieces())
        && !isDominated(choice, left.pieces());
  }

  /** Whether a remaining piece can be added to a choice. */
  private boolean isDominated(Choice choice, PackedCounts left) {
    effort.spend(instance.kinds());
    effort.pass(4L * instance.kinds());
    for (int kind = 0; kind < instance.kinds(); kind++) {
      boolean isLeft = choice.pieces().of(kind) < left.of(kind);
      if (isLeft && blocks.get(choice.stock()).containsKey(choice.pieces().plusOne(kind))) {
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
