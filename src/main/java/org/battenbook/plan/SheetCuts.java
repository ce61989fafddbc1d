package org.battenbook.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.function.Function;

/** Makes a plan of a packing: pieces and sheets get their labels in the order of the job. */
final class SheetCuts {
  private final SheetScale scale;

  /** The pieces of each kind that are still to be placed. */
  private final List<Deque<SheetPart>> pieces = new ArrayList<>();

  /** The sheets of each stock that can still be taken. */
  private final List<Deque<SheetStock>> onHand = new ArrayList<>();

  SheetCuts(SheetScale scale) {
    this.scale = scale;
    for (List<SheetPart> parts : scale.parts()) {
      Deque<SheetPart> queue = new ArrayDeque<>();
      parts.forEach(part -> queue.addAll(Collections.nCopies(part.count(), part)));
      pieces.add(queue);
    }
    scale.stocks().forEach(stocks -> onHand.add(new ArrayDeque<>()));
  }

  SheetPlan plan(SheetPacking packing, long bound) {
    supply(packing);
    List<Sheet> sheets =
        packing.layouts().stream()
            .sorted(Comparator.comparingInt(Layout::stock))
            .map(this::sheet)
            .toList();
    List<SheetPart> missing = missing();
    return new SheetPlan(
        sheets,
        scale.tooLarge(),
        missing,
        scale.cost(packing.cost()),
        scale.cost(bound),
        missing.isEmpty() && packing.cost() <= bound);
  }

  /** As many sheets of each stock as the packing takes; those of a limited number first. */
  private void supply(SheetPacking packing) {
    int[] wanted = new int[onHand.size()];
    packing.layouts().forEach(layout -> wanted[layout.stock()]++);
    for (int number = 0; number < wanted.length; number++) {
      List<SheetStock> stocks = new ArrayList<>(scale.stocks().get(number));
      stocks.sort((a, b) -> Boolean.compare(a.onHand().isEmpty(), b.onHand().isEmpty()));
      for (SheetStock stock : stocks) {
        int taken = Math.min(wanted[number], stock.onHand().orElse(wanted[number]));
        onHand.get(number).addAll(Collections.nCopies(taken, stock));
        wanted[number] -= taken;
      }
    }
  }

  private Sheet sheet(Layout layout) {
    SheetStock stock = onHand.get(layout.stock()).removeFirst();
    Function<Integer, String> labels = kind -> pieces.get(kind).removeFirst().label();
    return new SheetDrawing(scale, stock, labels).draw(layout.panel());
  }

  private List<SheetPart> missing() {
    List<SheetPart> missing = new ArrayList<>();
    for (Deque<SheetPart> rest : pieces) {
      rest.stream()
          .distinct()
          .map(part -> part.times((int) rest.stream().filter(part::equals).count()))
          .forEach(missing::add);
    }
    return missing;
  }
}
