package org.battenbook.plan.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.plan.Supply;

/**
 * Converts a packing to a plan with exact lengths. Pieces and sheets get their labels in the order
 * of the job.
 */
final class SheetCuts {
  private final SheetScale scale;

  /** The pieces of each kind that are not placed yet. */
  private final List<Deque<SheetPart>> pieces = new ArrayList<>();

  SheetCuts(SheetScale scale) {
    this.scale = scale;
    for (List<SheetPart> parts : scale.parts()) {
      Deque<SheetPart> queue = new ArrayDeque<>();
      parts.forEach(part -> queue.addAll(Collections.nCopies(part.count(), part)));
      pieces.add(queue);
    }
  }

  SheetPlan plan(SheetPacking packing, long bound) {
    Supply<SheetStock> supply =
        scale.stocks().supply(packing.layouts().stream().mapToInt(Layout::stock));
    List<Sheet> sheets =
        packing.layouts().stream()
            .sorted(Comparator.comparingInt(Layout::stock))
            .map(layout -> sheet(supply.next(layout.stock()), layout.panel()))
            .toList();
    List<SheetPart> missing = missing();
    return new SheetPlan(
        sheets,
        scale.tooLarge(),
        missing,
        scale.units().times(packing.cost()),
        scale.units().times(bound),
        packing.isBest(bound));
  }

  private Sheet sheet(SheetStock stock, Panel panel) {
    List<CutStep> steps = new ArrayList<>();
    addSteps(panel, steps);
    return SheetDrawing.draw(stock, scale.kerf(), steps);
  }

  private void addSteps(Panel panel, List<CutStep> steps) {
    Panel.Division division = panel.division();
    if (division != null) {
      steps.add(
          new CutStep.Cut(division.direction(), scale.length(division.at()).minus(scale.kerf())));
      addSteps(division.first(), steps);
      addSteps(division.second(), steps);
    } else if (panel.isFree()) {
      steps.add(new CutStep.Rest());
    } else {
      steps.add(new CutStep.Piece(pieces.get(panel.kind()).removeFirst(), panel.isTurned()));
    }
  }

  private List<SheetPart> missing() {
    List<SheetPart> missing = new ArrayList<>();
    for (Deque<SheetPart> rest : pieces) {
      Map<SheetPart, Integer> counts = new LinkedHashMap<>();
      rest.forEach(part -> counts.merge(part, 1, Integer::sum));
      counts.forEach((part, count) -> missing.add(part.times(count)));
    }
    return missing;
  }
}
