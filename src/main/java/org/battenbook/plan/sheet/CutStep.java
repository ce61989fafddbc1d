package org.battenbook.plan.sheet;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.plan.sheet.Sheet.Direction;
import org.jspecify.annotations.Nullable;

/**
 * One step of cutting a sheet: what happens to one panel. A cut is followed by the steps of the
 * panel to its left or above it, then by those of the other panel (preorder). A list of steps
 * describes a whole sheet. Any such list gives guillotine cuts only, and no two pieces overlap.
 */
public sealed interface CutStep {
  /**
   * The panel is cut into two, from edge to edge.
   *
   * @param direction the direction of the cut
   * @param side the width or height of the panel to the left of the cut or above it
   */
  record Cut(Direction direction, Rational side) implements CutStep {}

  /** The panel is a piece. */
  record Piece(SheetPart part, boolean turned) implements CutStep {}

  /** The panel is an offcut. */
  record Rest() implements CutStep {}

  /**
   * The number of stages: rounds of parallel cuts, each at a right angle to the round before.
   *
   * @param steps all steps of one sheet
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
