package org.battenbook.plan.sheet;

import java.util.Arrays;
import org.battenbook.plan.sheet.Sheet.Direction;
import org.jspecify.annotations.Nullable;

/**
 * A guillotine block: pieces arranged in a rectangle that guillotine cuts can separate again. It is
 * one piece, or two blocks joined side by side or one above the other. Sides and areas are in
 * ticks.
 */
final class Block {
  final long across;
  final long down;

  /** The total area of its pieces. */
  final long area;

  /** The number of pieces of each kind. */
  final int[] counts;

  private final int kind;
  private final boolean turned;
  private final @Nullable Join join;

  /** The cut that separates two joined blocks. */
  private record Join(Direction cut, Block first, Block second) {}

  /**
   * A key for finding blocks that are interchangeable: those of the same sides and pieces.
   *
   * @param countsHash a hash of the counts, to save memory; two different choices of pieces can
   *     share it
   */
  record Signature(long across, long down, int countsHash) {}

  private Block(
      long across,
      long down,
      long area,
      int[] counts,
      int kind,
      boolean turned,
      @Nullable Join join) {
    this.across = across;
    this.down = down;
    this.area = area;
    this.counts = counts;
    this.kind = kind;
    this.turned = turned;
    this.join = join;
  }

  static Block of(SheetInstance instance, int kind, boolean turned) {
    int[] counts = new int[instance.kinds()];
    counts[kind] = 1;
    long across = turned ? instance.down[kind] : instance.across[kind];
    long down = turned ? instance.across[kind] : instance.down[kind];
    return new Block(across, down, across * down, counts, kind, turned, null);
  }

  /**
   * Joins two blocks: side by side for a {@code DOWN} cut, one above the other for an {@code
   * ACROSS} cut.
   */
  static Block joined(Direction cut, Block first, Block second) {
    boolean beside = cut == Direction.DOWN;
    int[] counts = first.counts.clone();
    for (int i = 0; i < counts.length; i++) {
      counts[i] += second.counts[i];
    }
    return new Block(
        beside ? first.across + second.across : Math.max(first.across, second.across),
        beside ? Math.max(first.down, second.down) : first.down + second.down,
        first.area + second.area,
        counts,
        -1,
        false,
        new Join(cut, first, second));
  }

  /** The number of pieces. */
  int pieces() {
    int pieces = 0;
    for (int count : counts) {
      pieces += count;
    }
    return pieces;
  }

  /** The area that no piece covers. */
  long waste() {
    return across * down - area;
  }

  /** Whether this block and another together have no more pieces than {@code demand}. */
  boolean isWithin(int[] demand, Block other) {
    for (int i = 0; i < demand.length; i++) {
      if (counts[i] + other.counts[i] > demand[i]) {
        return false;
      }
    }
    return true;
  }

  Signature signature() {
    return new Signature(across, down, Arrays.hashCode(counts));
  }

  /** Cuts this block from the top left corner of a panel that is large enough. */
  void cutFrom(Panel panel) {
    if (join == null) {
      panel.reduce(across, down, Direction.DOWN).fill(kind, turned);
      return;
    }
    Panel own = panel.reduce(across, down, join.cut().other());
    Block first = join.first();
    Panel firstPanel =
        own.divide(join.cut(), join.cut() == Direction.DOWN ? first.across : first.down);
    Panel.Division division = own.division();
    first.cutFrom(firstPanel);
    if (division != null) {
      join.second().cutFrom(division.second());
    }
  }
}
