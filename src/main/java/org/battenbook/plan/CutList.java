package org.battenbook.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import org.battenbook.number.Rational;

/** Makes a plan of a packing: pieces and sticks get their labels in the order of the job. */
final class CutList {
  private final Scale scale;

  /** The pieces of each kind that are still to be placed. */
  private final List<Deque<Part>> pieces = new ArrayList<>();

  /** The sticks of each stock that can still be taken. */
  private final List<Deque<Stock>> onHand = new ArrayList<>();

  CutList(Scale scale) {
    this.scale = scale;
    for (List<Part> parts : scale.parts()) {
      Deque<Part> queue = new ArrayDeque<>();
      parts.forEach(part -> queue.addAll(Collections.nCopies(part.count(), part)));
      pieces.add(queue);
    }
    for (int stock = 0; stock < scale.stocks().size(); stock++) {
      onHand.add(new ArrayDeque<>());
    }
  }

  StickPlan plan(Packing packing, long bound) {
    supply(packing);
    List<Stick> sticks = packing.sticks().stream().sorted().map(this::stick).toList();
    List<Part> missing = missing();
    return new StickPlan(
        sticks,
        scale.tooLong(),
        missing,
        scale.cost(packing.cost()),
        scale.cost(bound),
        missing.isEmpty() && packing.cost() <= bound);
  }

  /** As many sticks of each stock as the packing takes; those of a limited number first. */
  private void supply(Packing packing) {
    int[] wanted = new int[onHand.size()];
    packing.sticks().forEach(pattern -> wanted[pattern.stock]++);
    for (int number = 0; number < wanted.length; number++) {
      List<Stock> stocks = new ArrayList<>(scale.stocks().get(number));
      stocks.sort((a, b) -> Boolean.compare(a.onHand().isEmpty(), b.onHand().isEmpty()));
      for (Stock stock : stocks) {
        int taken = Math.min(wanted[number], stock.onHand().orElse(wanted[number]));
        onHand.get(number).addAll(Collections.nCopies(taken, stock));
        wanted[number] -= taken;
      }
    }
  }

  private Stick stick(Pattern pattern) {
    Stock stock = onHand.get(pattern.stock).removeFirst();
    StickRules rules = scale.rules();
    List<Stick.Placed> placed = new ArrayList<>();
    Rational at = rules.firstTrim();
    for (int i = 0; i < pattern.kinds.length; i++) {
      for (int count = 0; count < pattern.counts[i]; count++) {
        Part part = pieces.get(pattern.kinds[i]).removeFirst();
        Rational end = at.plus(part.length());
        placed.add(new Stick.Placed(part.label(), at, end));
        at = end.plus(rules.kerf());
      }
    }
    Rational rest = stock.length().minus(rules.lastTrim()).minus(at);
    Rational offcut = rest.signum() < 0 ? Rational.ZERO : rest;
    boolean kept = offcut.signum() > 0 && offcut.compareTo(rules.leastOffcut()) >= 0;
    return new Stick(stock, placed, offcut, kept);
  }

  private List<Part> missing() {
    List<Part> missing = new ArrayList<>();
    for (Deque<Part> rest : pieces) {
      rest.stream()
          .distinct()
          .map(part -> new Part(part.label(), part.length(), times(part, rest)))
          .forEach(missing::add);
    }
    return missing;
  }

  private static int times(Part part, Deque<Part> pieces) {
    return (int) pieces.stream().filter(part::equals).count();
  }
}
