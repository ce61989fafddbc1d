package org.battenbook.book;

import java.util.function.Supplier;
import org.battenbook.bound.Bound;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;

/** Adds up the sizes of tables, and refuses a workbook if one or all of them are too large. */
public final class BookSize {
  private static final String FEWER = "split the job in two";

  private final Diagnostics diagnostics;
  private long rows;
  private long cells;

  /**
   * Begins with no tables.
   *
   * @param diagnostics receives the refusal
   */
  public BookSize(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /** Adds every table with the rows that people write. */
  public void addWritten(Book book) {
    book.tables().forEach(table -> add(table, table.writtenRows(), () -> last(table)));
  }

  /**
   * Adds the rows of a table.
   *
   * @param count the number of rows
   * @param last where the last row comes from, for the message
   */
  public void add(Table table, int count, Supplier<Span> last) {
    int columns = table.columns().size();
    rows += count;
    cells += (long) count * (columns + table.rules().size());
    if (Bound.TABLE_COLUMNS.isPassedBy(columns)) {
      Span first = table.columns().get(Bound.TABLE_COLUMNS.most()).name().span();
      refuse(Bound.TABLE_COLUMNS, "columns", table, first, "split the table in two");
    } else if (Bound.TABLE_ROWS.isPassedBy(count)) {
      refuse(Bound.TABLE_ROWS, "rows", table, last.get(), FEWER);
    } else if (Bound.ALL_ROWS.isPassedBy(rows)) {
      refuse(Bound.ALL_ROWS, "rows with those of the tables before it", table, last.get(), FEWER);
    } else if (Bound.CELLS.isPassedBy(cells)) {
      refuse(Bound.CELLS, "cells with those of the tables before it", table, last.get(), FEWER);
    }
  }

  /** The number of rows added so far. */
  public long rows() {
    return rows;
  }

  /** Where the last written row of a table is named; for a table without rows, the table's name. */
  private static Span last(Table table) {
    Span last = table.origin();
    for (RowSegment segment : table.rows()) {
      int count = segment.cells().rowCount();
      last = count == 0 ? last : segment.nameSpan(count - 1);
    }
    return last;
  }

  private void refuse(Bound bound, String what, Table table, Span where, String repair) {
    String message = "table '%s' has more than %s %s".formatted(table, bound.shown(), what);
    diagnostics.refuse("table-too-large", where, message, repair);
  }
}
