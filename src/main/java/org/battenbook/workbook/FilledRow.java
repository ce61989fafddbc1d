package org.battenbook.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.number.Rational;
import org.battenbook.value.Value;

/** One row of a table of a filled workbook. */
public final class FilledRow {
  private final Filled filled;
  private final Table table;
  private final int row;

  private FilledRow(Filled filled, Table table, int row) {
    this.filled = filled;
    this.table = table;
    this.row = row;
  }

  /** The rows of a table in their order; none where the workbook has no such table. */
  public static List<FilledRow> of(Filled filled, String table) {
    Table found = filled.book().table(table);
    return found == null
        ? List.of()
        : IntStream.range(0, filled.rows(found).count())
            .mapToObj(row -> new FilledRow(filled, found, row))
            .toList();
  }

  /** What the row is called. */
  public String name() {
    return filled.rows(table).name(row);
  }

  /** The table it stands in. */
  public Table table() {
    return table;
  }

  /** Its index in its table, counted from 0. */
  public int index() {
    return row;
  }

  /** The row of a table that this one is or was opened from; empty where there is none. */
  public Optional<FilledRow> in(Table wanted) {
    return table == wanted
        ? Optional.of(this)
        : filled
            .rows(table)
            .openedFrom(row)
            .flatMap(from -> new FilledRow(filled, from.table(), from.row()).in(wanted));
  }

  /** The row that a column holds; empty where it is not known. */
  public Optional<FilledRow> held(String column) {
    return value(column).value() instanceof Value.Row other
        ? Optional.ofNullable(filled.book().table(other.table()))
            .map(found -> new FilledRow(filled, found, other.row()))
        : Optional.empty();
  }

  /** The columns of its table. */
  public List<Column> columns() {
    return table.columns();
  }

  /**
   * Its value in a column.
   *
   * @throws IllegalArgumentException when its table has no such column
   */
  public FilledValue value(String column) {
    Column found = table.column(column);
    if (found == null) {
      throw new IllegalArgumentException("'%s' has no column '%s'".formatted(table, column));
    }
    return value(found);
  }

  public FilledValue value(Column column) {
    return filled.value(column, row);
  }

  /** Its value in a column, as people read it. */
  public String shown(String column) {
    return value(column).shown().text();
  }

  /** Whether a column is known to say yes. */
  public boolean isYes(String column) {
    return value(column).value() instanceof Value.YesNo yesNo && yesNo.yes();
  }

  /** Its exact number in a column, in the base unit; empty where it is not known exactly. */
  public Optional<Rational> number(String column) {
    return value(column).exactNumber();
  }

  /** Rows by the index of the row that each holds in a column, without rows that hold none. */
  static Map<Integer, List<FilledRow>> byHeld(List<FilledRow> rows, String column) {
    Map<Integer, List<FilledRow>> byHeld = new HashMap<>();
    for (FilledRow row : rows) {
      if (row.value(column).value() instanceof Value.Row held) {
        byHeld.computeIfAbsent(held.row(), place -> new ArrayList<>()).add(row);
      }
    }
    return byHeld;
  }
}
