package org.battenbook.evaluate;

import org.battenbook.bind.RowKeys;
import org.battenbook.book.Table;
import org.battenbook.syntax.Selection;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** One row of a table: the one that fits, or the best of those that do. */
final class SelectionPlan extends OverRowsPlan {
  private final RowKeys keys;
  private final boolean largest;

  SelectionPlan(
      Selection node,
      Table table,
      RowKeys keys,
      @Nullable Plan where,
      @Nullable Plan by,
      @Nullable Matching matching) {
    super(node, table, by, where, matching);
    this.keys = keys;
    this.largest = node.preference() != null && node.preference().largest();
  }

  @Override
  Value evaluate(Frame frame) {
    return goThrough(frame);
  }

  @Override
  Value among(Frame frame, RowList rows) {
    Frame inner = frame.inner();
    Value chosen = choose(inner, rows);
    if (chosen instanceof Value.Row row) {
      tellChosen(inner, row.row());
    }
    return chosen;
  }

  private Value choose(Frame inner, RowList rows) {
    RowList fitting = new RowList();
    for (int i = 0; i < rows.size(); i++) {
      inner.row = rows.row(i);
      Value fits = where == null ? new Value.YesNo(true) : passing(where, inner);
      if (!fits.isKnown()) {
        return fits;
      }
      if (((Value.YesNo) fits).yes()) {
        fitting.add(rows.row(i));
      }
    }
    if (fitting.size() == 0) {
      return new Value.Fault(
          "no-row-fits", "no row of '%s' fits: add one, or ask for less".formatted(table));
    }
    return of == null ? only(fitting) : best(fitting, of, inner);
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

  private Value only(RowList fitting) {
    if (fitting.size() == 1) {
      return row(fitting.row(0));
    }
    return new Value.Fault(
        "many-rows-fit",
        "%d rows of '%s' fit, \"%s\" and \"%s\" among them: add 'with smallest …' to say which"
            .formatted(
                fitting.size(), table, keys.name(fitting.row(0)), keys.name(fitting.row(1))));
  }

  private Value best(RowList fitting, Plan by, Frame inner) {
    int bestRow = -1;
    Value best = null;
    for (int i = 0; i < fitting.size(); i++) {
      int row = fitting.row(i);
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
