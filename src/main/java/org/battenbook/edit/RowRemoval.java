package org.battenbook.edit;

import org.battenbook.bind.BookRows;
import org.battenbook.book.Table;
import org.battenbook.source.Span;

/**
 * A row taken out.
 *
 * @param row counted from 0
 */
public record RowRemoval(Table table, int row) implements WorkbookEdit {
  @Override
  public String words(BookRows rows) {
    return "removing the row %s of '%s'".formatted(at(rows).text(), table);
  }

  @Override
  public Span at(BookRows rows) {
    return rows.rows(table).nameSpan(row);
  }

  @Override
  public void writeInto(BookRevision revision) throws EditRefused {
    RowRevision.WrittenRow written = revision.rows().written(table, row);
    written.block().remove(written.at());
  }
}
