package org.battenbook.plan.sheet;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.plan.sheet.Sheet.Direction;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of a panel. The steps of a sheet come in order: after a cut, those of the panel
 * before it, at its left or above, then those of the panel behind it. So they say all that a sheet
 * is cut into, and a sheet that is drawn from them has only through-cuts, and no two pieces
 * overlap.
 */
public sealed interface CutStep {
  /**
   * The panel is cut right across.
   *
   * @param direction how the cut runs
   * @param side how much of the panel lies before the cut
   */
  record Cut(Direction direction, Rational side) implements CutStep {}

  /** The panel is a piece. */
  record Piece(SheetPart part, boolean turned) implements CutStep {}

  /** The panel is left. */
  record Rest() implements CutStep {}

  /**
   * How many rounds of parallel cuts the steps of a sheet take, each turned from the one before.
   *
   * @param steps as many as the panels ask for
   */
  static int stages(List<CutStep> steps) {
    record Open(int stages, @Nullable Direction last) {}

    Deque<Open> open = new ArrayDeque<>(List.of(new Open(0, null)));
    int deepest = 0;
    for (CutStep step : steps) {
      Open panel = open.pop();
      if (step instanceof Cut cut) {
        int stages = panel.stages() + (cut.direction() == panel.last() ? 0 : 1);
        deepest = Math.max(deepest, stages);
        open.push(new Open(stages, cut.direction()));
        open.push(new Open(stages, cut.direction()));
      }
    }
    return deepest;
  }
}
