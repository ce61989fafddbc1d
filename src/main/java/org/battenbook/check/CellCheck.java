package org.battenbook.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.bind.RowKeys;
import org.battenbook.bind.Scope;
import org.battenbook.book.Column;
import org.battenbook.book.RowSegment;
import org.battenbook.book.Table;
import org.battenbook.bound.Bound;
import org.battenbook.number.Rational;
import org.battenbook.parse.CellReader;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Reads and checks what rows say of a column. */
final class CellCheck {
  private final Knowledge knowledge;
  private final Diagnostics diagnostics;

  /** How many operations the formulas in cells have so far, functions written out. */
  private long operations;

  CellCheck(Knowledge knowledge, Diagnostics diagnostics) {
    this.knowledge = knowledge;
    this.diagnostics = diagnostics;
  }

  /** The names of a table's rows, out of its key column. */
  static RowKeys keys(Table table, Diagnostics diagnostics) {
    RowKeys.Builder keys = new RowKeys.Builder(table.name().text(), diagnostics);
    for (RowSegment segment : table.rows()) {
      int at = segment.columns().indexOf(table.keyColumn());
      for (int row = 0; row < segment.cells().rowCount(); row++) {
        keys.add(key(segment.cells(), row, at, table, diagnostics), segment.nameSpan(row, at));
      }
    }
    return keys.build();
  }

  private static String key(RowCells cells, int row, int at, Table table, Diagnostics diagnostics) {
    if (at < 0) {
      return unnamed(cells.span(row, 0));
    }
    Formula cell = cells.isEmpty(row, at) ? null : CellReader.read(cells, row, at, diagnostics);
    String text = cell == null ? "" : plainText(cell.expression());
    if (text.isBlank()) {
      Span span = cells.span(row, at);
      diagnostics.fault(
          "row-without-name",
          span,
          "a row of '%s' goes by its '%s', and this one has none".formatted(table, table.keyName()),
          "write a text in quotes there");
      return unnamed(span);
    }
    return text.strip();
  }

  /** What a row is called that has no name; a fault says so already. */
  private static String unnamed(Span row) {
    return "row at " + row.place();
  }

  private static String plainText(Expression expression) {
    return expression instanceof TextLiteral text ? text.plainWords().orElse("") : "";
  }

  /** All cells of a column, those that changes set included. */
  Cells cells(Column column, Kind kind) {
    boolean spoken = column.table().segments().stream().anyMatch(s -> s.speaksOf(column));
    if (diagnostics.isRefused()) {
      return Cells.NONE;
    }
    if (!spoken && column.cellChanges().isEmpty()) {
      return Cells.NONE;
    }
    Cells cells = new Cells(column.table().rowCount());
    for (RowSegment segment : column.table().segments()) {
      read(segment, column, kind, cells);
    }
    column.cellChanges().forEach(change -> change(change, column, kind, cells));
    return cells;
  }

  /** Reads a stretch of rows; cells of one text are read once, there are few different ones. */
  private void read(RowSegment segment, Column column, Kind kind, Cells cells) {
    Formula shared = segment.sharedCell(column);
    if (shared != null) {
      share(shared, segment, column, kind, cells);
      return;
    }
    int at = segment.columns().indexOf(column);
    RowCells written = segment.cells();
    Map<String, Value> same = new HashMap<>();
    Map<String, @Nullable CheckedFormula> sameTolerances = new HashMap<>();
    ListedCells listed = at < 0 ? null : listed(segment, at, column, kind);
    for (int i = 0; at >= 0 && i < written.rowCount() && !diagnostics.isRefused(); i++) {
      if (segment.row(i) == RowSegment.NO_ROW
          || written.isEmpty(i, at)
          || (listed != null && listed.isGivenUp())) {
        continue;
      }
      int row = segment.row(i);
      String text = written.source().text().substring(written.start(i, at), written.end(i, at));
      Value known = same.get(text);
      if (known != null) {
        cells.set(row, known);
        cells.setTolerance(row, sameTolerances.get(text));
        continue;
      }
      if (listed == null) {
        enter(CellReader.read(written, i, at, diagnostics), row, column, kind, cells);
      } else {
        listed.enter(written, i, at, row, cells);
      }
      Value entered = cells.value(row);
      if (entered != null) {
        same.put(text, entered);
        sameTolerances.put(text, cells.tolerances().get(row));
      }
    }
  }

  /** Enters one formula, checked once, into all rows of a stretch. */
  private void share(Formula shared, RowSegment segment, Column column, Kind kind, Cells cells) {
    Cells one = new Cells(1);
    enter(shared, 0, column, kind, one);
    for (int row = 0; row < segment.cells().rowCount(); row++) {
      cells.copyOnly(one, segment.row(row));
    }
  }

  private @Nullable ListedCells listed(RowSegment segment, int at, Column column, Kind kind) {
    RowSegment.FromList list = segment.list();
    return list == null
        ? null
        : new ListedCells(knowledge, column, kind, list.headings().get(at), diagnostics);
  }

  /** Puts an entry into a cell: its value, or its formula, or a message of what is wrong. */
  void enter(@Nullable Formula entry, int row, Column column, Kind kind, Cells cells) {
    cells.clear(row);
    if (entry == null) {
      return;
    }
    CheckedFormula checked = new CheckedFormula(entry, Scope.ofCell(column, entry.span().source()));
    Kind found = new FormulaCheck(knowledge, diagnostics, checked, List.of()).check(kind);
    Optional<Value> literal = checked.literal();
    if (found == Kind.UNKNOWN) {
      return;
    }
    setTolerance(checked, row, cells);
    if (literal.isEmpty()) {
      cells.set(row, checked);
      count(checked, column);
      return;
    }
    cells.set(row, literal.get());
    if (DeclaredKinds.isCount(column.declaredKind())) {
      checkCount(literal.get(), entry.span());
    }
  }

  /** Memory may not hold all of them, so that they are counted one by one. */
  private void count(CheckedFormula formula, Column column) {
    operations += formula.writtenOut();
    if (Bound.ALL_OPERATIONS.isPassedBy(operations)) {
      diagnostics.refuse(
          "formulas-too-large",
          formula.formula().span(),
          "with functions written out, the formulas in the cells of '%s' have more than %s"
                  .formatted(column.name(), Bound.ALL_OPERATIONS.shown())
              + " operations",
          "write one formula for the column, and only numbers into its cells");
    }
  }

  private void setTolerance(CheckedFormula cell, int row, Cells cells) {
    CheckedFormula tolerance = cell.tolerance();
    if (tolerance != null && tolerance.readsInherited()) {
      diagnostics.fault(
          "tolerance-reads-itself",
          tolerance.formula().span(),
          "the ± of a cell cannot read what the cell replaces",
          "write its number");
    }
    cells.setTolerance(row, tolerance);
  }

  private void checkCount(Value value, Span span) {
    boolean counts =
        value instanceof Value.Amount amount
            && amount.quantity().number() instanceof Rational number
            && number.isWhole()
            && number.signum() >= 0;
    if (!counts) {
      diagnostics.fault(
          "not-a-count",
          span,
          "'%s' is not a count".formatted(span.text()),
          "write a whole number, 0 or more");
    }
  }

  private void change(Change change, Column column, Kind kind, Cells cells) {
    if (change.row() == null) {
      return;
    }
    RowKeys keys = knowledge.keys(column.table());
    Optional<Integer> row = keys.row(change.row().text());
    if (row.isEmpty() && !column.table().isSettled()) {
      return;
    }
    if (row.isEmpty()) {
      String name = change.row().text();
      diagnostics.fault(
          "no-such-row", change.row().span(), keys.missing(name), () -> keys.repair(name));
      return;
    }
    if (column.comesWithRow()) {
      diagnostics.fault(
          "opened-cell-changed",
          change.place().span(),
          "'%s' comes with its rows, and is not changed".formatted(column.name()),
          "change another column of '%s'".formatted(column.table()));
      return;
    }
    CheckedFormula checked =
        new CheckedFormula(change.formula(), Scope.ofCell(column, change.span().source()));
    new FormulaCheck(knowledge, diagnostics, checked, List.of()).check(kind);
    cells.set(row.get(), checked);
    setTolerance(checked, row.get(), cells);
    cells.change(row.get(), change);
  }
}
