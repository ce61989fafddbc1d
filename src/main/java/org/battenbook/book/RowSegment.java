package org.battenbook.book;

import java.util.List;
import java.util.Optional;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.RowsSection;
import org.jspecify.annotations.Nullable;

/**
 * Rows that stand together under one line of headings: new rows of a table, or cells for rows that
 * it opens.
 *
 * @param columns the column of each heading
 * @param firstRow the place of its first row in the whole table, counted from 0
 * @param filled what the row of the table is called that each of these fills in; empty for new rows
 * @param written the block in which people write them; absent where nobody does
 * @param list the list they come from; absent where they are written in the workbook itself
 */
public record RowSegment(
    RowCells cells,
    List<Column> columns,
    int firstRow,
    List<Filled> filled,
    @Nullable RowsSection written,
    @Nullable FromList list) {

  /**
   * What the row is called that is filled in.
   *
   * @param at where that is said
   */
  public record Filled(String name, Span at) {}

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
    return new RowSegment(cells, columns, firstRow, List.of(), null, list);
  }

  /** New rows of a table that people write in a workbook. */
  static RowSegment written(RowsSection section, List<Column> columns, int firstRow) {
    return new RowSegment(section.rows(), columns, firstRow, List.of(), section, null);
  }

  /** Cells that people write for rows that are there. */
  static RowSegment filling(RowsSection section, List<Column> columns, List<Filled> filled) {
    return new RowSegment(section.rows(), columns, 0, filled, section, null);
  }

  /** Whether its rows are new ones; else they fill in rows that are opened. */
  public boolean bringsRows() {
    return filled.isEmpty();
  }

  /** Whether it brings a row of the whole table. */
  public boolean brings(int row) {
    return bringsRows() && row >= firstRow && row < firstRow + cells.rowCount();
  }

  /** Where the name of one of its rows stands. */
  public Span nameSpan(int at) {
    int key = columns.indexOf(columns.get(0).table().keyColumn());
    return cells.span(at, Math.max(key, 0));
  }

  /** Where a cell of one of its rows stands, if it is written. */
  public Optional<Span> cell(Column column, int at) {
    int place = columns.indexOf(column);
    return place >= 0 && !cells.isEmpty(at, place)
        ? Optional.of(cells.span(at, place))
        : Optional.empty();
  }

  /** The workbook that says these rows, or names the list of them. */
  public SourceText statedIn() {
    return list == null ? cells.source() : list.statement().source();
  }
}
