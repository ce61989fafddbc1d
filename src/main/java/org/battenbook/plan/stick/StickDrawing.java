package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.number.Rational;

/**
 * Draws the layouts of sticks in exact lengths: pieces from left to right, with a kerf between
 * neighbors. Sticks of one stock that are cut into the same lengths in the same order share a
 * pattern, and are grouped together.
 */
public final class StickDrawing {
  private final StickRules rules;
  private final Map<Cuts, List<Stick>> byPattern = new LinkedHashMap<>();

  public StickDrawing(StickRules rules) {
    this.rules = rules;
  }

  /** One piece or set of a demand, numbered from 1. */
  public record Copy(Demand demand, int number) {
    Optional<Stick.SetCopy> set() {
      return demand instanceof MatchedSet set
          ? Optional.of(new Stick.SetCopy(set, number))
          : Optional.empty();
    }
  }

  /** The key of a pattern. */
  private record Cuts(Stock stock, List<Rational> lengths) {}

  /**
   * Adds a stick.
   *
   * @param copies its pieces and sets from left to right, at least one
   */
  public void add(Stock stock, List<Copy> copies) {
    List<Stick.Placed> placed = placed(copies, stock.stretch().from());
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

  /** All sticks, grouped by pattern. */
  public List<Stick> sticks() {
    return byPattern.values().stream().flatMap(List::stream).toList();
  }

  private List<Stick.Placed> placed(List<Copy> copies, Rational from) {
    List<Stick.Placed> placed = new ArrayList<>();
    Rational at = from;
    for (Copy copy : copies) {
      for (Part part : copy.demand().inOrder()) {
        boolean turned = rules.nest().signum() > 0 && placed.size() % 2 == 1;
        Rational end = at.plus(part.length());
        placed.add(new Stick.Placed(part, copy.set(), at, end, turned));
        at = at.plus(rules.pace(part.length()));
      }
    }
    return placed;
  }

  private Stick.Offcut offcut(Stock stock, Rational lastEnd) {
    Rational to = stock.stretch().to();
    Rational from = lastEnd.plus(rules.kerf());
    Rational length = to.minus(from);
    return length.signum() <= 0
        ? new Stick.Offcut(to, to, false)
        : new Stick.Offcut(from, to, length.compareTo(stock.leastOffcut()) >= 0);
  }
}
