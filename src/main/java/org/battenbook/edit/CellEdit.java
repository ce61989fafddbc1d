package org.battenbook.edit;

import org.battenbook.bind.BookRows;
import org.battenbook.book.Column;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;

/**
 * Another entry in one cell. A quantity may open or close rows by it.
 *
 * @param row counted from 0
 * @param entry as it is written in the row; blank to leave the cell to its column
 */
public record CellEdit(Column column, int row, String entry) implements WorkbookEdit {
  @Override
  public String words(BookRows rows) {
    return entry.isBlank()
        ? "emptying '%s'".formatted(column.words())
        : "setting '%s' to '%s'".formatted(column.words(), entry.strip());
  }

  @Override
  public Span at(BookRows rows) {
    return column.comesWithRow()
        ? rows.rows(column.table()).origin(row)
        : rows.rows(column.table())
            .cell(column, row)
            .orElseGet(() -> rows.rows(column.table()).nameSpan(row));
  }

  @Override
  public void checkTyped(Diagnostics diagnostics) {
    TypedText.checkCell(entry, diagnostics);
  }

  @Override
  public void writeInto(BookRevision revision) throws EditRefused {
    revision.rows().setCell(column, row, entry.strip());
  }
}
