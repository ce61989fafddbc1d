package org.battenbook.evaluate;

import org.battenbook.bind.Rows;
import org.battenbook.book.Table;
import org.battenbook.syntax.Selection;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Selects one row of a table: the only row that fits, or the best of those that fit. */
final class SelectionNode extends OverRowsNode {
  private final boolean largest;

  SelectionNode(
      Selection node,
      Table table,
      @Nullable FormulaNode where,
      @Nullable FormulaNode by,
      @Nullable Matching matching) {
    super(node, table, by, where, matching);
    this.largest = node.preference() != null && node.preference().largest();
  }

  @Override
  Value evaluate(Frame frame) {
    return goThrough(frame);
  }

  @Override
  Value among(Frame frame, RowList rows) {
    Frame inner = frame.inner();
    Value chosen = choose(inner, rows, frame.reading.rows(table));
    if (chosen instanceof Value.Row row) {
      tellChosen(inner, row.row());
    }
    return chosen;
  }

  private Value choose(Frame inner, RowList rows, Rows named) {
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
          "no-row-fits",
          "no row of '%s' matches; add a row, or change the condition".formatted(table));
    }
    return of == null ? only(fitting, named) : best(fitting, of, inner, named);
  }

  /** Works out what a row is compared by. Unless that is not known, the row is only passed over. */
  private static Value passing(FormulaNode compared, Frame inner) {
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

  /** Shows the watch what the chosen row is compared by. */
  private void tellChosen(Frame inner, int row) {
    if (inner.watch != null) {
      inner.row = row;
      inner.watch.rowBegins();
      inner.watch.rowCounts();
      parts().forEach(part -> part.run(inner));
      inner.watch.rowEnds();
    }
  }

  private Value only(RowList fitting, Rows named) {
    if (fitting.size() == 1) {
      return row(fitting.row(0), named);
    }
    return new Value.Fault(
        "many-rows-fit",
        "%d rows of '%s' match, such as \"%s\" and \"%s\"; add 'with smallest …' to choose one"
            .formatted(
                fitting.size(), table, named.name(fitting.row(0)), named.name(fitting.row(1))));
  }

  private Value best(RowList fitting, FormulaNode by, Frame inner, Rows named) {
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
    return row(bestRow, named);
  }

  private Value row(int row, Rows named) {
    return new Value.Row(table.key(), row, named.name(row));
  }
}
