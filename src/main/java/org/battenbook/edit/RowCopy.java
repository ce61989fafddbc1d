package org.battenbook.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;

/**
 * A row like another, right below it.
 *
 * @param row counted from 0
 * @param cells the entries that differ in the copy, at least its name
 */
public record RowCopy(Table table, int row, Map<Column, String> cells) implements WorkbookEdit {
  public RowCopy {
    cells = Map.copyOf(cells);
  }

  @Override
  public String words(BookRows rows) {
    return "copying a row of '%s'".formatted(table);
  }

  @Override
  public Span at(BookRows rows) {
    return rows.rows(table).nameSpan(row);
  }

  @Override
  public void checkTyped(Diagnostics diagnostics) {
    cells.values().forEach(cell -> TypedText.checkCell(cell, diagnostics));
  }

  @Override
  public void writeInto(BookRevision revision) throws EditRefused {
    RowRevision.WrittenRow written = revision.rows().written(table, row);
    Map<Column, String> copy = new LinkedHashMap<>(written.cells());
    copy.putAll(TypedText.inOrder(table, cells));
    written.block().insert(written.at() + 1, copy);
  }
}
