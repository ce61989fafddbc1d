package org.battenbook.book;

import java.util.List;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.RowCells;
import org.jspecify.annotations.Nullable;

/**
 * Rows that stand together under one line of headings.
 *
 * @param columns the column of each heading
 * @param firstRow the place of its first row in the whole table, counted from 0
 * @param list the list they come from; absent where they are written in the workbook itself
 */
public record RowSegment(
    RowCells cells, List<Column> columns, int firstRow, @Nullable FromList list) {

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
  }

  /** The workbook that says these rows, or names the list of them. */
  public SourceText statedIn() {
    return list == null ? cells.source() : list.statement().source();
  }
}
