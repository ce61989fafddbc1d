package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.bound.Bound;
import org.battenbook.plan.Refusal;

/**
 * What is to be cut, from what, and how. All lengths are in one unit, all costs in one currency. A
 * job of more pieces, parts or kinds of stock than a plan is made for is refused with an {@link
 * Refusal}.
 */
public record StickJob(
    List<Part> parts, List<MatchedSet> matchedSets, List<Stock> stocks, StickRules rules) {
  public StickJob {
    parts = List.copyOf(parts);
    matchedSets = List.copyOf(matchedSets);
    stocks = List.copyOf(stocks);
    List<Part> cuts = cuts(together(parts, matchedSets));
    Refusal.unlessAtMost(Bound.PLAN_KINDS, cuts.size(), "parts");
    Refusal.unlessAtMost(Bound.PLAN_KINDS, stocks.size(), "kinds of stock");
    Refusal.unlessAtMost(Bound.STICK_PIECES, cuts.stream().mapToLong(Part::count).sum(), "pieces");
    cuts.forEach(rules::check);
  }

  /** Without matched sets. */
  public StickJob(List<Part> parts, List<Stock> stocks, StickRules rules) {
    this(parts, List.of(), stocks, rules);
  }

  /** The parts, then the sets, in their order. */
  public List<Demand> demands() {
    return together(parts, matchedSets);
  }

  /** All that is cut: parts as they are asked for, then those of sets as often as the sets. */
  public List<Part> cuts() {
    return cuts(demands());
  }

  private static List<Demand> together(List<Part> parts, List<MatchedSet> sets) {
    List<Demand> demands = new ArrayList<>(parts);
    demands.addAll(sets);
    return demands;
  }

  private static List<Part> cuts(List<Demand> demands) {
    return demands.stream().flatMap(demand -> demand.cuts().stream()).toList();
  }
}
