package org.battenbook.evaluate;

import java.util.HashSet;
import java.util.Set;
import org.battenbook.bind.MissingRows;
import org.battenbook.bind.Rows;
import org.battenbook.book.Column;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.RowOpening;
import org.battenbook.book.Table;
import org.battenbook.syntax.Name;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Finds why not all rows of an opened or planned table are known. */
final class RowsMissing {
  private final Results results;

  RowsMissing(Results results) {
    this.results = results;
  }

  /** The first reason that is found; absent where all rows are known. */
  @Nullable MissingRows of(Table table) {
    PlanStatement plan = table.plan();
    return plan == null ? opened(table) : planned(plan);
  }

  private @Nullable MissingRows opened(Table table) {
    Value waitsFor = null;
    boolean isAnyMissing = false;
    Set<String> each = new HashSet<>();
    for (RowOpening opening : table.openings()) {
      Value count = opening.count() == null ? null : unknown(opening.count().upTo(), each);
      MissingRows from = results.rows(opening.from()).missing();
      isAnyMissing |= from != null;
      if (waitsFor == null) {
        waitsFor = count == null && from != null ? from.waitsFor() : count;
      }
    }
    return waitsFor == null ? null : new MissingRows(waitsFor, isAnyMissing ? Set.of() : each);
  }

  /**
   * The first count that is not known, as a formula would read it. Adds the rows with such counts.
   */
  private @Nullable Value unknown(Column count, Set<String> each) {
    Slot slot = results.program().slots().of(count);
    Rows rows = results.rows(count.table());
    Value first = null;
    for (int row = 0; row < rows.count(); row++) {
      Value value = results.cell(slot.number(), row);
      if (!value.isKnown()) {
        each.add(Name.key(rows.name(row)));
        first = first == null ? slot.read(value, row, results) : first;
      }
    }
    return first;
  }

  private @Nullable MissingRows planned(PlanStatement plan) {
    MissingRows parts = results.rows(plan.parts().table()).missing();
    MissingRows first = parts == null ? results.rows(plan.stock().table()).missing() : parts;
    if (first != null) {
      return MissingRows.any(first.waitsFor());
    }
    return results.isPending(plan)
        ? MissingRows.any(new Value.Waiting("the plan '%s'".formatted(plan.name()), false))
        : null;
  }
}
