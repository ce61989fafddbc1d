package org.battenbook.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.number.Rational;

/** Makes a plan of a packing: pieces and sticks get their labels in the order of the job. */
final class CutList {
  private final Scale scale;

  /** The pieces and sets of each kind that are still to be placed. */
  private final List<Deque<Copy>> copies = new ArrayList<>();

  /** The sticks of each stock that can still be taken. */
  private final List<Deque<Stock>> onHand = new ArrayList<>();

  CutList(Scale scale) {
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
    for (int stock = 0; stock < scale.stocks().size(); stock++) {
      onHand.add(new ArrayDeque<>());
    }
  }

  /** One of the pieces or sets that are asked for, numbered from 1. */
  private record Copy(Demand demand, int number) {
    Optional<Stick.SetCopy> set() {
      return demand instanceof MatchedSet set
          ? Optional.of(new Stick.SetCopy(set, number))
          : Optional.empty();
    }
  }

  /** What sticks of one pattern have in common. */
  private record Cuts(Stock stock, List<Rational> lengths) {}

  StickPlan plan(Packing packing, long bound) {
    supply(packing);
    Map<Cuts, List<Stick>> byPattern = new LinkedHashMap<>();
    packing.sticks().stream().sorted().forEach(pattern -> cut(pattern, byPattern));
    List<Demand> missing = missing();
    return new StickPlan(
        byPattern.values().stream().flatMap(List::stream).toList(),
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
        for (int stick = 0; stick < taken; stick++) {
          onHand.get(number).add(stock);
        }
        wanted[number] -= taken;
      }
    }
  }

  private void cut(Pattern pattern, Map<Cuts, List<Stick>> byPattern) {
    Stock stock = onHand.get(pattern.stock).removeFirst();
    List<Stick.Placed> placed = placed(pattern, stock.stretch().from());
    Cuts cuts = new Cuts(stock, placed.stream().map(Stick.Placed::length).toList());
    int number = byPattern.size() + 1;
    List<Stick> alike = byPattern.computeIfAbsent(cuts, first -> new ArrayList<>());
    alike.add(
        new Stick(
            stock,
            alike.isEmpty() ? number : alike.get(0).pattern(),
            placed,
            offcut(stock, placed.get(placed.size() - 1).to())));
  }

  private List<Stick.Placed> placed(Pattern pattern, Rational from) {
    StickRules rules = scale.rules();
    List<Stick.Placed> placed = new ArrayList<>();
    Rational at = from;
    for (Copy copy : copies(pattern)) {
      for (Part part : copy.demand().inOrder()) {
        boolean turned = rules.nest().signum() > 0 && placed.size() % 2 == 1;
        Rational end = at.plus(part.length());
        placed.add(new Stick.Placed(part, copy.set(), at, end, turned));
        at = at.plus(rules.pace(part.length()));
      }
    }
    return placed;
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

  private Stick.Offcut offcut(Stock stock, Rational lastEnd) {
    Rational to = stock.stretch().to();
    Rational from = lastEnd.plus(scale.rules().kerf());
    Rational length = to.minus(from);
    return length.signum() <= 0
        ? new Stick.Offcut(to, to, false)
        : new Stick.Offcut(from, to, length.compareTo(stock.leastOffcut()) >= 0);
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
