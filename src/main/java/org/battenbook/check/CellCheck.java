package org.battenbook.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.bind.RowKeys;
import org.battenbook.bind.Scope;
import org.battenbook.book.Column;
import org.battenbook.book.RowOpening;
import org.battenbook.book.RowSegment;
import org.battenbook.book.Table;
import org.battenbook.bound.Bound;
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

/** Reads and type-checks the cells of a column. */
final class CellCheck {
  private final TypingContext typing;
  private final Diagnostics diagnostics;

  /** The number of operations in formulas of cells so far, with functions expanded inline. */
  private long operations;

  CellCheck(TypingContext typing, Diagnostics diagnostics) {
    this.typing = typing;
    this.diagnostics = diagnostics;
  }

  /**
   * The names of a table's written rows, from its key column.
   *
   * @param diagnostics receives rows without a name and names used twice
   */
  static RowKeys keys(Table table, Diagnostics diagnostics) {
    RowKeys.Builder keys = new RowKeys.Builder(table.name().text(), diagnostics);
    for (RowSegment segment : table.rows()) {
      int at = segment.columns().indexOf(table.keyColumn());
      for (int row = 0; row < segment.cells().rowCount(); row++) {
        keys.add(key(segment.cells(), row, at, table, diagnostics), segment.nameSpan(row));
      }
    }
    return keys.build();
  }

  private static String key(RowCells cells, int row, int at, Table table, Diagnostics diagnostics) {
    if (at < 0) {
      return unnamed(cells.span(row, 0));
    }
    boolean isEmpty = cells.isEmpty(row, at);
    Formula cell = isEmpty ? null : CellReader.read(cells, row, at, diagnostics);
    if (cell == null && !isEmpty) {
      return unnamed(cells.span(row, at));
    }
    String text = cell == null ? "" : plainText(cell.expression());
    if (text.isBlank()) {
      Span span = cells.span(row, at);
      diagnostics.fault(
          "row-without-name",
          span,
          "this row of '%s' has no '%s', which names it".formatted(table, table.keyName()),
          "write a text in quotes there");
      return unnamed(span);
    }
    return text.strip();
  }

  /** The name of a row without a name. That is reported already. */
  private static String unnamed(Span row) {
    return "row at " + row.place();
  }

  private static String plainText(Expression expression) {
    return expression instanceof TextLiteral text ? text.plainWords().orElse("") : "";
  }

  /** All entries of a column, including those of changes. */
  Entries entries(Column column, Kind kind) {
    Table table = column.table();
    Cells written = table.isWritten() ? new Cells(table.writtenRows()) : Cells.NONE;
    Entries entries = new Entries(written);
    if (!table.isWritten()) {
      table.openings().forEach(opening -> addShared(opening, column, kind, entries));
    }
    for (RowSegment segment : table.segments()) {
      boolean hasColumn = segment.columns().contains(column) && !column.comesWithRow();
      if (hasColumn && !diagnostics.isRefused()) {
        Cells into = table.isWritten() ? written : new Cells(segment.cells().rowCount());
        read(segment, column, kind, into);
        if (!table.isWritten()) {
          entries.add(segment, into);
        }
      }
    }
    column.cellChanges().stream()
        .takeWhile(change -> !diagnostics.isRefused())
        .forEach(change -> change(change, column, kind, entries));
    return entries.isEmpty() && entries.lateNames().isEmpty() ? Entries.NONE : entries;
  }

  /** Adds the cell that an opening has for all its rows, if any. */
  private void addShared(RowOpening opening, Column column, Kind kind, Entries entries) {
    Formula shared = opening.cells().get(column);
    if (shared != null) {
      Cells one = new Cells(1);
      enter(shared, 0, column, kind, one);
      entries.add(opening, one);
    }
  }

  /**
   * Reads the cells of a segment. Cells of the same text are read once, since most texts repeat.
   */
  private void read(RowSegment segment, Column column, Kind kind, Cells cells) {
    int at = segment.columns().indexOf(column);
    RowCells written = segment.cells();
    Map<String, Value> same = new HashMap<>();
    Map<String, @Nullable CheckedFormula> sameTolerances = new HashMap<>();
    ListedCells listed = listed(segment, at, column, kind);
    for (int i = 0; i < written.rowCount() && !diagnostics.isRefused(); i++) {
      if (written.isEmpty(i, at) || (listed != null && listed.isGivenUp())) {
        continue;
      }
      int row = segment.firstRow() + i;
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

  private @Nullable ListedCells listed(RowSegment segment, int at, Column column, Kind kind) {
    RowSegment.FromList list = segment.list();
    return list == null
        ? null
        : new ListedCells(typing, column, kind, list.headings().get(at), diagnostics);
  }

  /**
   * Puts an entry into a cell, as a value if it is a literal, else as a formula. After a fault the
   * cell stays empty.
   *
   * @param entry null to empty the cell
   */
  void enter(@Nullable Formula entry, int row, Column column, Kind kind, Cells cells) {
    cells.clear(row);
    if (entry == null) {
      return;
    }
    CheckedFormula checked = new CheckedFormula(entry, Scope.ofCell(column, entry.span().source()));
    Kind found = new FormulaCheck(typing, diagnostics, checked, List.of()).check(kind);
    Optional<Value> literal = checked.literal();
    if (found == Kind.UNKNOWN) {
      return;
    }
    setTolerance(checked, row, cells);
    cells.addLateNames(literal.isEmpty() ? List.of() : checked.lateNames());
    if (literal.isEmpty()) {
      cells.set(row, checked);
      count(checked, column);
      return;
    }
    cells.set(row, literal.get());
  }

  /** Counts the operations of a cell's formula, and refuses the workbook if there are too many. */
  private void count(CheckedFormula formula, Column column) {
    operations += formula.expandedSize();
    if (Bound.ALL_OPERATIONS.isPassedBy(operations)) {
      diagnostics.refuse(
          "formulas-too-large",
          formula.formula().span(),
          "with functions written out, the formulas in the cells of '%s' have more than %s"
                  .formatted(column.name(), Bound.ALL_OPERATIONS.shown())
              + " operations",
          "write one formula for the column, and numbers in its cells");
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

  private void change(Change change, Column column, Kind kind, Entries entries) {
    if (change.row() == null) {
      return;
    }
    if (column.comesWithRow()) {
      diagnostics.fault(
          "opened-cell-changed",
          change.place().span(),
          "'%s' is set by the rows' source and cannot be changed".formatted(column.name()),
          "change another column of '%s'".formatted(column.table()));
      return;
    }
    String name = change.row().text();
    if (!column.table().isWritten()) {
      Cells one = new Cells(1);
      enter(change, 0, column, kind, one);
      entries.add(new LateName(column.table(), name, change.row().span()), one);
      return;
    }
    RowKeys keys = typing.environment().rows(column.table()).keys();
    Optional<Integer> row = keys.row(name);
    if (row.isEmpty()) {
      diagnostics.fault(
          "no-such-row", change.row().span(), keys.missing(name), () -> keys.repair(name));
      return;
    }
    enter(change, row.get(), column, kind, entries.written());
  }

  private void enter(Change change, int row, Column column, Kind kind, Cells cells) {
    CheckedFormula checked =
        new CheckedFormula(change.formula(), Scope.ofCell(column, change.span().source()));
    new FormulaCheck(typing, diagnostics, checked, List.of()).check(kind);
    CheckedFormula replaced = cells.formulas().get(row);
    if (replaced != null && checked.readsInherited()) {
      diagnostics.fault(
          "change-reads-formula",
          change.formula().span(),
          Cells.unreadable(replaced),
          Cells.writtenOut(replaced, column));
    }
    cells.set(row, checked);
    count(checked, column);
    setTolerance(checked, row, cells);
    cells.change(row, change);
  }
}
