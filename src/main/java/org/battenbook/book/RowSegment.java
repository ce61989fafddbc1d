package org.battenbook.book;

import java.util.List;
import java.util.Optional;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.RowsSection;
import org.jspecify.annotations.Nullable;

/**
 * Rows under one line of headings: new rows of a table, or cells for rows that the table opens.
 *
 * @param cells the cells of the rows
 * @param columns the column of each heading
 * @param firstRow the index of its first row in the table, counted from 0
 * @param filled the opened row that each row enters cells of; empty for new rows
 * @param written the section of a workbook with the rows; null if they come from a list
 * @param list the list with the rows; null if a workbook has them
 */
public record RowSegment(
    RowCells cells,
    List<Column> columns,
    int firstRow,
    List<Filled> filled,
    @Nullable RowsSection written,
    @Nullable FromList list) {

  /**
   * An opened row whose cells are entered.
   *
   * @param name its name, as messages say it
   * @param key tells which row it is
   * @param at where the name is written
   */
  public record Filled(String name, OpenedKey key, Span at) {}

  /**
   * The source of rows from a list.
   *
   * @param statement the statement in the workbook that names the list
   * @param headings the headings of the list, one for each column
   */
  public record FromList(Span statement, List<Heading> headings) {
    public FromList {
      headings = List.copyOf(headings);
    }
  }

  /**
   * A heading of a list.
   *
   * @param written the heading as written
   * @param unit the unit for numbers that have none of their own; can be empty
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

  /** Cells that people write for opened rows. */
  static RowSegment filling(RowsSection section, List<Column> columns, List<Filled> filled) {
    return new RowSegment(section.rows(), columns, 0, filled, section, null);
  }

  /** Whether its rows are new rows; if not, they enter cells of opened rows. */
  public boolean bringsRows() {
    return filled.isEmpty();
  }

  /** Whether it has a row of the table as a new row. */
  public boolean brings(int row) {
    return bringsRows() && row >= firstRow && row < firstRow + cells.rowCount();
  }

  /** Where the name of one of its rows is written. */
  public Span nameSpan(int at) {
    int key = columns.indexOf(columns.get(0).table().keyColumn());
    return cells.span(at, Math.max(key, 0));
  }

  /** Where a cell of one of its rows is written; empty if it is not. */
  public Optional<Span> cell(Column column, int at) {
    int place = columns.indexOf(column);
    return place >= 0 && !cells.isEmpty(at, place)
        ? Optional.of(cells.span(at, place))
        : Optional.empty();
  }

  /** The workbook that has these rows, or names the list with them. */
  public SourceText statedIn() {
    return list == null ? cells.source() : list.statement().source();
  }
}
