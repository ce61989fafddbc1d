package org.battenbook.plan.sheet;

import java.util.List;
import java.util.function.Consumer;
import org.battenbook.plan.sheet.Sheet.Direction;
import org.jspecify.annotations.Nullable;

/**
 * A rectangle of a sheet, in ticks: cut into two panels, or a piece, or free. Panels are the nodes
 * of the tree of guillotine cuts of a sheet.
 */
final class Panel {
  private static final int NONE = -1;

  final long across;
  final long down;

  /** The number of stages that lead to this panel. */
  private final int depth;

  /** The direction of the cut that made this panel; null for a whole sheet. */
  private final @Nullable Direction last;

  private int kind = NONE;
  private boolean turned;
  private @Nullable Division division;

  /** A cut, and the panels on both sides of it. */
  record Division(Direction direction, long at, Panel first, Panel second) {}

  private Panel(long across, long down, int depth, @Nullable Direction last) {
    this.across = across;
    this.down = down;
    this.depth = depth;
    this.last = last;
  }

  static Panel whole(long across, long down) {
    return new Panel(across, down, 0, null);
  }

  /** The length of the side that a cut in this direction divides. */
  long side(Direction direction) {
    return direction == Direction.DOWN ? across : down;
  }

  /** The number of stages that lead to a panel cut from this one. */
  int depth(Direction next) {
    return next == last ? depth : depth + 1;
  }

  /**
   * Cuts this panel into two.
   *
   * @param at how far the cut is from the panel's left or top side
   * @return the panel to the left of the cut, or above it
   */
  Panel divide(Direction direction, long at) {
    int below = depth(direction);
    boolean isDown = direction == Direction.DOWN;
    Panel first = new Panel(isDown ? at : across, isDown ? down : at, below, direction);
    Panel second =
        new Panel(isDown ? across - at : across, isDown ? down : down - at, below, direction);
    division = new Division(direction, at, first, second);
    return first;
  }

  /**
   * Cuts a panel of the new size from the top left corner.
   *
   * @param first the direction of the first cut
   * @return the new panel, or this panel if it has that size already
   */
  Panel reduce(long newAcross, long newDown, Direction first) {
    Panel panel = this;
    for (Direction direction : List.of(first, first.other())) {
      long size = direction == Direction.DOWN ? newAcross : newDown;
      panel = size < panel.side(direction) ? panel.divide(direction, size) : panel;
    }
    return panel;
  }

  /** The number of stages after {@link #reduce}. */
  int stages(long newAcross, long newDown, Direction first) {
    long one = first == Direction.DOWN ? newAcross : newDown;
    long two = first == Direction.DOWN ? newDown : newAcross;
    boolean cutsFirst = one < side(first);
    if (two == side(first.other())) {
      return cutsFirst ? depth(first) : depth;
    }
    return cutsFirst ? depth(first) + 1 : depth(first.other());
  }

  void fill(int newKind, boolean isTurned) {
    kind = newKind;
    turned = isTurned;
  }

  /** The highest number of stages among this panel and those cut from it. */
  int deepest() {
    return division == null ? depth : Math.max(division.first.deepest(), division.second.deepest());
  }

  /** Visits the free panels: those that are neither cut nor a piece. */
  void eachFree(Consumer<Panel> action) {
    if (division != null) {
      division.first.eachFree(action);
      division.second.eachFree(action);
    } else if (isFree()) {
      action.accept(this);
    }
  }

  boolean isFree() {
    return division == null && kind == NONE;
  }

  @Nullable Division division() {
    return division;
  }

  int kind() {
    return kind;
  }

  boolean isTurned() {
    return turned;
  }
}
