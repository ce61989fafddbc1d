package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.bound.Bound;
import org.battenbook.plan.Refusal;

/**
 * A job for the stick planner: what to cut, from what, and by which rules. All lengths are in one
 * unit, all costs in one currency. The constructor throws a {@link Refusal} if there are too many
 * pieces, parts or kinds of stock, or if a part breaks the rules.
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

  /** A job without matched sets. */
  public StickJob(List<Part> parts, List<Stock> stocks, StickRules rules) {
    this(parts, List.of(), stocks, rules);
  }

  /** The parts in order, then the matched sets in order. */
  public List<Demand> demands() {
    return together(parts, matchedSets);
  }

  /** All parts with the total count of each: those of the job, then those of matched sets. */
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
