package org.battenbook.plan.stick;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.plan.Supply;
import org.battenbook.plan.stick.StickDrawing.Copy;

/**
 * Converts a packing to a plan with exact lengths. Pieces and sticks get their labels in the order
 * of the job.
 */
final class StickCuts {
  private final StickScale scale;

  /** The pieces and sets of each kind that are not placed yet. */
  private final List<Deque<Copy>> copies = new ArrayList<>();

  StickCuts(StickScale scale) {
    this.scale = scale;
    for (List<Demand> demands : scale.demands()) {
      Deque<Copy> queue = new ArrayDeque<>();
      for (Demand demand : demands) {
        for (int number = 1; number <= demand.count(); number++) {
          queue.add(new Copy(demand, number));
        }
      }
      copies.add(queue);
    }
  }

  StickPlan plan(StickPacking packing, long bound) {
    Supply<Stock> supply =
        scale.stocks().supply(packing.sticks().stream().mapToInt(pattern -> pattern.stock));
    StickDrawing drawing = new StickDrawing(scale.rules());
    packing.sticks().stream()
        .sorted()
        .forEach(pattern -> drawing.add(supply.next(pattern.stock), copies(pattern)));
    List<Demand> missing = missing();
    return new StickPlan(
        drawing.sticks(),
        scale.tooLong(),
        missing,
        scale.units().times(packing.cost()),
        scale.units().times(bound),
        packing.isBest(bound));
  }

  private List<Copy> copies(Pattern pattern) {
    List<Copy> taken = new ArrayList<>();
    for (int i = 0; i < pattern.kinds.length; i++) {
      for (int count = 0; count < pattern.counts[i]; count++) {
        taken.add(copies.get(pattern.kinds[i]).removeFirst());
      }
    }
    return taken;
  }

  private List<Demand> missing() {
    List<Demand> missing = new ArrayList<>();
    for (Deque<Copy> rest : copies) {
      Map<Demand, Integer> counts = new LinkedHashMap<>();
      rest.forEach(copy -> counts.merge(copy.demand(), 1, Integer::sum));
      counts.forEach((demand, count) -> missing.add(demand.times(count)));
    }
    return missing;
  }
}
