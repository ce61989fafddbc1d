package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.battenbook.bind.RowKeys;
import org.battenbook.book.Table;
import org.battenbook.syntax.Selection;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** One row of a table: the one that fits, or the best of those that do. */
final class SelectionPlan extends Plan {
  private final Table table;
  private final RowKeys keys;
  private final Effort effort;
  final @Nullable Plan where;
  final @Nullable Plan by;
  private final boolean largest;

  SelectionPlan(
      Selection node,
      Table table,
      RowKeys keys,
      Effort effort,
      @Nullable Plan where,
      @Nullable Plan by) {
    super(node);
    this.table = table;
    this.keys = keys;
    this.effort = effort;
    this.where = where;
    this.by = by;
    this.largest = node.preference() != null && node.preference().largest();
  }

  @Override
  List<Plan> parts() {
    return Stream.of(where, by).filter(Objects::nonNull).toList();
  }

  @Override
  Value evaluate(Frame frame) {
    if (effort.isTooMuch()) {
      return effort.fault();
    }
    if (frame.watch != null) {
      frame.watch.overRows(table);
    }
    Value missing = frame.reading.missingRows(table);
    if (missing != null) {
      return missing;
    }
    Frame inner = frame.inner();
    Value chosen = choose(inner);
    if (chosen instanceof Value.Row row) {
      tellChosen(inner, row.row());
    }
    return chosen;
  }

  private Value choose(Frame inner) {
    List<Integer> fitting = new ArrayList<>();
    for (int row = 0; row < table.rowCount(); row++) {
      inner.row = row;
      Value fits = where == null ? new Value.YesNo(true) : passing(where, inner);
      if (!fits.isKnown()) {
        return fits;
      }
      if (((Value.YesNo) fits).yes()) {
        fitting.add(row);
      }
    }
    if (fitting.isEmpty()) {
      return new Value.Fault(
          "no-row-fits", "no row of '%s' fits: add one, or ask for less".formatted(table));
    }
    return by == null ? only(fitting) : best(fitting, by, inner);
  }

  /** Works out what a row compares; unless that is not known, the row is only passed. */
  private static Value passing(Plan compared, Frame inner) {
    Watch watch = inner.watch;
    if (watch == null) {
      return compared.run(inner);
    }
    watch.rowBegins();
    Value value = compared.run(inner);
    if (!value.isKnown()) {
      watch.rowCounts();
    }
    watch.rowEnds();
    return value;
  }

  /** Lets who watches see what the chosen row compares. */
  private void tellChosen(Frame inner, int row) {
    if (inner.watch != null) {
      inner.row = row;
      inner.watch.rowBegins();
      inner.watch.rowCounts();
      parts().forEach(part -> part.run(inner));
      inner.watch.rowEnds();
    }
  }

  private Value only(List<Integer> fitting) {
    if (fitting.size() == 1) {
      return row(fitting.get(0));
    }
    return new Value.Fault(
        "many-rows-fit",
        "%d rows of '%s' fit, \"%s\" and \"%s\" among them: add 'with smallest …' to say which"
            .formatted(
                fitting.size(), table, keys.name(fitting.get(0)), keys.name(fitting.get(1))));
  }

  private Value best(List<Integer> fitting, Plan by, Frame inner) {
    int bestRow = -1;
    Value best = null;
    for (int row : fitting) {
      inner.row = row;
      Value value = passing(by, inner);
      if (!value.isKnown()) {
        return value;
      }
      int order = best == null ? 1 : Order.compare(value, best);
      if (best == null || (largest ? order > 0 : order < 0)) {
        best = value;
        bestRow = row;
      }
    }
    return row(bestRow);
  }

  private Value row(int row) {
    return new Value.Row(table.key(), row, keys.name(row));
  }
}
