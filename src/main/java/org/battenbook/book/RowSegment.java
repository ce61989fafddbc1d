package org.battenbook.book;

import java.util.List;
import org.battenbook.syntax.RowCells;

/**
 * Rows written together under one line of headings.
 *
 * @param columns the column of each heading
 * @param firstRow the place of its first row in the whole table, counted from 0
 */
public record RowSegment(RowCells cells, List<Column> columns, int firstRow) {
  public RowSegment {
    columns = List.copyOf(columns);
  }
}
