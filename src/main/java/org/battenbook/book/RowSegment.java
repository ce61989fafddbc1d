package org.battenbook.book;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.RowsSection;
import org.jspecify.annotations.Nullable;

/**
 * Rows that stand together under one line of headings: new rows of the table, or cells for rows
 * that it has opened.
 *
 * @param columns the column of each heading
 * @param firstRow the place of its first row in the whole table, counted from 0
 * @param filled the rows of the table that these fill in, one for each; empty for new rows
 * @param written the block in which people write them; absent where nobody does
 * @param list the list they come from; absent where they are written in the workbook itself
 * @param opened what they are opened from; absent where people write them
 */
public record RowSegment(
    RowCells cells,
    List<Column> columns,
    int firstRow,
    List<Integer> filled,
    @Nullable RowsSection written,
    @Nullable FromList list,
    @Nullable FromRows opened) {

  /** For cells of a row that is not there, or not yet. */
  public static final int NO_ROW = -1;

  /**
   * Where a workbook says that rows come from a list.
   *
   * @param statement in the workbook
   * @param headings one for each column
   */
  public record FromList(Span statement, List<Heading> headings) {
    public FromList {
      headings = List.copyOf(headings);
    }
  }

  /**
   * A heading of a list.
   *
   * @param written as it stands there
   * @param unit that it gives to numbers without one of their own, or empty
   */
  public record Heading(String written, String unit) {}

  /**
   * What rows are opened from.
   *
   * @param from the other table
   * @param rows its row for each of these
   * @param cells what all of them have in a column
   */
  public record FromRows(Table from, List<Integer> rows, Map<Column, Formula> cells) {
    public FromRows {
      rows = List.copyOf(rows);
      cells = Map.copyOf(cells);
    }
  }

  public RowSegment {
    columns = List.copyOf(columns);
    filled = List.copyOf(filled);
  }

  /** New rows of a table. */
  static RowSegment of(
      RowCells cells, List<Column> columns, int firstRow, @Nullable FromList list) {
    return new RowSegment(cells, columns, firstRow, List.of(), null, list, null);
  }

  /** New rows of a table that people write in a workbook. */
  static RowSegment written(RowsSection section, List<Column> columns, int firstRow) {
    return new RowSegment(section.rows(), columns, firstRow, List.of(), section, null, null);
  }

  /** New rows of a table that are opened from another's. */
  static RowSegment opened(
      RowCells cells, List<Column> columns, int firstRow, FromRows openedFrom) {
    return new RowSegment(cells, columns, firstRow, List.of(), null, null, openedFrom);
  }

  /** Cells that people write for rows that are there. */
  static RowSegment filling(RowsSection section, List<Column> columns, List<Integer> filled) {
    return new RowSegment(section.rows(), columns, 0, filled, section, null, null);
  }

  boolean bringsRows() {
    return filled.isEmpty();
  }

  /** The row of the whole table that one of these is, or fills in; or {@link #NO_ROW}. */
  public int row(int at) {
    return filled.isEmpty() ? firstRow + at : filled.get(at);
  }

  /** Whether it brings a row of the whole table. */
  public boolean brings(int row) {
    return bringsRows() && has(row);
  }

  /** Whether it brings a row of the whole table, or fills it in. */
  public boolean has(int row) {
    int at = at(row);
    return at >= 0 && at < cells.rowCount();
  }

  /** The place that a row of the whole table has here, if it {@link #has} it. */
  public int at(int row) {
    return bringsRows() ? row - firstRow : filled.lastIndexOf(row);
  }

  /** What all of its rows have in a column, where they are opened so. */
  public @Nullable Formula sharedCell(Column column) {
    return opened == null ? null : opened.cells().get(column);
  }

  /** Whether it says anything of a column. */
  public boolean speaksOf(Column column) {
    return columns.contains(column) || sharedCell(column) != null;
  }

  /** Where the name of one of its rows stands, or of what that is opened from. */
  public Span nameSpan(int at, int keyColumn) {
    return opened == null
        ? cells.span(at, Math.max(keyColumn, 0))
        : opened.from().nameSpan(opened.rows().get(at));
  }

  /** Where a cell of the whole table stands here, if it is written here. */
  public Optional<Span> cell(Column column, int row) {
    int at = columns.indexOf(column);
    int here = at(row);
    Formula shared = sharedCell(column);
    if (shared != null && here >= 0 && here < cells.rowCount()) {
      return Optional.of(shared.span());
    }
    return at >= 0 && here >= 0 && here < cells.rowCount() && !cells.isEmpty(here, at)
        ? Optional.of(cells.span(here, at))
        : Optional.empty();
  }

  /** The workbook that says these rows, or names the list of them. */
  public SourceText statedIn() {
    return list == null ? cells.source() : list.statement().source();
  }
}
