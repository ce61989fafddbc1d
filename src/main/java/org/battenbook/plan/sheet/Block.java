package org.battenbook.plan.sheet;

import java.util.Arrays;
import org.battenbook.plan.sheet.Sheet.Direction;
import org.jspecify.annotations.Nullable;

/** Pieces joined to a rectangle that through-cuts take apart again. */
final class Block {
  final long across;
  final long down;

  /** What its pieces cover. */
  final long area;

  /** How many of each kind. */
  final int[] counts;

  private final int kind;
  private final boolean turned;
  private final @Nullable Join join;

  /** The cut that parts two blocks again. */
  private record Join(Direction cut, Block first, Block second) {}

  /** What tells blocks apart: two that are alike serve the same. */
  record Likeness(long across, long down, int counts) {}

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

  /** Side by side, with a cut down between them, or one above the other. */
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

  /** How many pieces it has. */
  int pieces() {
    int pieces = 0;
    for (int count : counts) {
      pieces += count;
    }
    return pieces;
  }

  /** What of it no piece covers. */
  long waste() {
    return across * down - area;
  }

  boolean isWithin(int[] demand, Block other) {
    for (int i = 0; i < demand.length; i++) {
      if (counts[i] + other.counts[i] > demand[i]) {
        return false;
      }
    }
    return true;
  }

  Likeness likeness() {
    return new Likeness(across, down, Arrays.hashCode(counts));
  }

  /** Cuts it out of a panel that holds it. */
  void cutFrom(Panel panel) {
    if (join == null) {
      panel.reduce(across, down, Direction.DOWN).fill(kind, turned);
      return;
    }
    Panel mine = panel.reduce(across, down, join.cut().other());
    Block first = join.first();
    Panel firstPanel =
        mine.divide(join.cut(), join.cut() == Direction.DOWN ? first.across : first.down);
    Panel.Division division = mine.division();
    first.cutFrom(firstPanel);
    if (division != null) {
      join.second().cutFrom(division.second());
    }
  }
}
