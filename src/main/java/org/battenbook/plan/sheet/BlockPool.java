package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.battenbook.plan.sheet.Sheet.Direction;
import org.jspecify.annotations.Nullable;

/**
 * All choices of pieces that fit one sheet as a block with limited waste inside. Each choice has
 * its smallest blocks. After P. Y. Wang, "Two algorithms for constrained two-dimensional cutting
 * stock problems" (1983). Wang keeps the best choice only; this pool keeps every choice.
 *
 * <p>A block wastes at least as much as the two blocks it is joined from. So blocks above the limit
 * can be dropped at once, and no block within it is missed.
 */
final class BlockPool {
  private static final int MOST_FRONTS = 25_000;

  /** Limits memory: each block has a count for each kind. */
  private static final int MOST_COUNTS = 5_000_000;

  /** How many pairs of fronts can be rejected in one step of effort. */
  private static final int PAIRS_PER_STEP = 4;

  /** The steps of effort that joining two fronts takes. */
  private static final int STEPS_PER_JOIN = 20;

  private final SheetInstance instance;
  private final long mostWaste;
  private final long largestSheet;
  private final Effort effort;
  private final Map<PackedCounts, BlockFront> fronts = new LinkedHashMap<>();

  /** The fronts of each number of pieces. */
  private final List<List<BlockFront>> levels = new ArrayList<>();

  private BlockPool(SheetInstance instance, long mostWaste, Effort effort) {
    this.instance = instance;
    this.mostWaste = mostWaste;
    this.largestSheet =
        IntStream.range(0, instance.stocks()).mapToLong(instance::sheetArea).max().orElse(0);
    this.effort = effort;
  }

  /**
   * Builds the pool, choices of few pieces first.
   *
   * @param mostWaste the largest area inside a block that no piece may cover, in square ticks
   * @return null if there are too many choices, or the effort is spent
   */
  static @Nullable BlockPool of(SheetInstance instance, long mostWaste, Effort effort) {
    BlockPool pool = new BlockPool(instance, mostWaste, effort);
    pool.addPieces();
    int highest = 1;
    for (int pieces = 2; pieces <= 2 * highest; pieces++) {
      pool.levels.add(new ArrayList<>());
      for (int fewer = 1; 2 * fewer <= pieces; fewer++) {
        if (!pool.join(pool.levels.get(fewer), pool.levels.get(pieces - fewer))) {
          return null;
        }
      }
      highest = pool.levels.get(pieces).isEmpty() ? highest : pieces;
    }
    return pool;
  }

  Collection<BlockFront> fronts() {
    return fronts.values();
  }

  private void addPieces() {
    levels.add(List.of());
    levels.add(new ArrayList<>());
    PackedCounts.Fields fields = new PackedCounts.Fields(instance.demand);
    for (int kind = 0; kind < instance.kinds(); kind++) {
      if (instance.demand[kind] > 0) {
        PackedCounts piece = fields.one(kind);
        add(piece, Block.of(instance, kind, false));
        if (instance.turns[kind]) {
          add(piece, Block.of(instance, kind, true));
        }
      }
    }
  }

  private void add(PackedCounts piece, Block block) {
    if (fits(block.across, block.down)) {
      front(piece, 1).add(block);
    }
  }

  private BlockFront front(PackedCounts pieces, int count) {
    return fronts.computeIfAbsent(
        pieces,
        key -> {
          BlockFront front = new BlockFront(key);
          levels.get(count).add(front);
          return front;
        });
  }

  /** Joins each front of one list with each of another; false if the pool must be given up. */
  private boolean join(List<BlockFront> some, List<BlockFront> others) {
    for (int i = 0; i < some.size(); i++) {
      effort.spend(1 + others.size() / PAIRS_PER_STEP);
      BlockFront front = some.get(i);
      for (int j = some == others ? i : 0; j < others.size(); j++) {
        BlockFront other = others.get(j);
        if (front.area() + other.area() <= largestSheet && front.pieces.mayJoin(other.pieces)) {
          join(front, other);
        }
      }
      if (effort.isSpent() || fronts.size() > mostFronts()) {
        return false;
      }
    }
    return true;
  }

  private int mostFronts() {
    return Math.min(MOST_FRONTS, MOST_COUNTS / instance.kinds());
  }

  private void join(BlockFront some, BlockFront others) {
    effort.spend(STEPS_PER_JOIN);
    Joined joined = new Joined(some, others);
    some.eachPair(others, joined);
  }

  /**
   * Joins pairs of blocks from two fronts if the result fits a sheet. The joint front is created
   * with its first block.
   */
  private final class Joined implements BlockFront.Pairs {
    private final BlockFront some;
    private final BlockFront others;
    private final long area;

    /** Calculated late: most pairs fit no sheet and do not need it. */
    private @Nullable PackedCounts pieces;

    private @Nullable BlockFront front;

    Joined(BlockFront some, BlockFront others) {
      this.some = some;
      this.others = others;
      this.area = some.area() + others.area();
    }

    @Override
    public void join(Direction cut, Block first, Block second) {
      boolean beside = cut == Direction.DOWN;
      long across = beside ? first.across + second.across : Math.max(first.across, second.across);
      long down = beside ? Math.max(first.down, second.down) : first.down + second.down;
      boolean isTight = across * down - area <= mostWaste;
      if (isTight && fits(across, down)) {
        offer(across, down, cut, first, second);
      }
    }

    private void offer(long across, long down, Direction cut, Block first, Block second) {
      if (pieces == null) {
        pieces = some.pieces.plus(others.pieces);
        front = fronts.get(pieces);
      }
      if (front == null || front.lacks(across, down)) {
        Block block = Block.joined(cut, first, second);
        front = front(pieces, block.pieces());
        front.add(block);
      }
    }
  }

  private boolean fits(long across, long down) {
    for (int stock = 0; stock < instance.stocks(); stock++) {
      if (across <= instance.widths[stock] && down <= instance.heights[stock]) {
        return true;
      }
    }
    return false;
  }
}
