package org.battenbook.derive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.RowOpening;
import org.battenbook.book.Table;
import org.battenbook.evaluate.Results;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/** What says which rows a table has: the tables that open them, their counts, or a plan. */
final class RowSources {
  private final Table table;

  private RowSources(Table table) {
    this.table = table;
  }

  static RowSources of(Table table) {
    return new RowSources(table);
  }

  /** Whether its rows come of others; else people wrote them. */
  boolean areAny() {
    return table.plan() != null || !table.openings().isEmpty();
  }

  /** The tables whose rows decide. */
  Set<Table> tables() {
    Set<Table> tables = new LinkedHashSet<>();
    table.openings().forEach(opening -> tables.add(opening.from()));
    sources().forEach(source -> tables.add(source.table()));
    return tables;
  }

  /** The lines and columns whose values decide. */
  Set<Place> places() {
    Set<Place> places = new LinkedHashSet<>();
    table.openings().stream().map(RowOpening::count).forEach(count -> addCount(count, places));
    sources().forEach(source -> places.addAll(source.columns().values()));
    PlanStatement plan = table.plan();
    if (plan != null) {
      places.addAll(plan.settings().values());
    }
    return places;
  }

  private static void addCount(RowOpening.@Nullable Count count, Set<Place> places) {
    if (count != null) {
      places.add(count.upTo());
    }
  }

  private List<PlanStatement.Source> sources() {
    PlanStatement plan = table.plan();
    return plan == null ? List.of() : List.of(plan.parts(), plan.stock());
  }

  /** The values that decide, place by place. */
  List<Spot> spots(Results results) {
    return places().stream().flatMap(results::spots).toList();
  }

  /** The statement that brings the rows, or else the table. */
  Span at() {
    PlanStatement plan = table.plan();
    if (plan != null) {
      return plan.statement();
    }
    return table.openings().isEmpty() ? table.origin() : table.openings().get(0).statement();
  }

  /** How the rows come about, in words; empty where people wrote them. */
  String words() {
    PlanStatement plan = table.plan();
    if (plan != null) {
      return "planned by '%s'".formatted(plan.name());
    }
    List<String> ways = new ArrayList<>();
    table.openings().forEach(opening -> ways.add(words(opening)));
    return ways.isEmpty() ? "" : "opened from " + String.join(" and from ", ways);
  }

  private static String words(RowOpening opening) {
    RowOpening.Count count = opening.count();
    return count == null
        ? opening.from().toString()
        : "%s by %s".formatted(opening.from(), count.upTo().name());
  }
}
