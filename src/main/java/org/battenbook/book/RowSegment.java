package org.battenbook.book;

import java.util.List;
import java.util.Optional;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.RowCells;
import org.jspecify.annotations.Nullable;

/**
 * Rows that stand together under one line of headings: new rows of the table, or cells for rows
 * that it has opened.
 *
 * @param columns the column of each heading
 * @param firstRow the place of its first row in the whole table, counted from 0
 * @param filled the rows of the table that these fill in, one for each; empty for new rows
 * @param list the list they come from; absent where they are written in the workbook itself
 */
public record RowSegment(
    RowCells cells,
    List<Column> columns,
    int firstRow,
    List<Integer> filled,
    @Nullable FromList list) {

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

  public RowSegment {
    columns = List.copyOf(columns);
    filled = List.copyOf(filled);
  }

  /** New rows of a table. */
  static RowSegment of(
      RowCells cells, List<Column> columns, int firstRow, @Nullable FromList list) {
    return new RowSegment(cells, columns, firstRow, List.of(), list);
  }

  /** Cells for rows that are there. */
  static RowSegment filling(RowCells cells, List<Column> columns, List<Integer> filled) {
    return new RowSegment(cells, columns, 0, filled, null);
  }

  boolean bringsRows() {
    return filled.isEmpty();
  }

  /** The row of the whole table that one of these is, or fills in; or {@link #NO_ROW}. */
  public int row(int at) {
    return filled.isEmpty() ? firstRow + at : filled.get(at);
  }

  /** Where a cell of the whole table stands here, if it is written here. */
  public Optional<Span> cell(Column column, int row) {
    int at = columns.indexOf(column);
    int here = filled.isEmpty() ? row - firstRow : filled.lastIndexOf(row);
    return at >= 0 && here >= 0 && here < cells.rowCount() && !cells.isEmpty(here, at)
        ? Optional.of(cells.span(here, at))
        : Optional.empty();
  }

  /** The workbook that says these rows, or names the list of them. */
  public SourceText statedIn() {
    return list == null ? cells.source() : list.statement().source();
  }
}
