package org.battenbook.edit;

import org.battenbook.bind.BookRows;
import org.battenbook.book.Table;
import org.battenbook.source.Span;

/**
 * A row moved to stand before another, or behind all others.
 *
 * @param row counted from 0
 * @param before the row that it is to stand before, counted as the rows stand today; the count of
 *     rows to stand behind all
 */
public record RowMove(Table table, int row, int before) implements WorkbookEdit {
  @Override
  public String words(BookRows rows) {
    return "moving a row of '%s'".formatted(table);
  }

  @Override
  public Span at(BookRows rows) {
    return rows.rows(table).nameSpan(row);
  }

  @Override
  public void writeInto(BookRevision revision) throws EditRefused {
    if (before == row || before == row + 1) {
      return;
    }
    RowRevision.WrittenRow from = revision.rows().written(table, row);
    boolean isLast = before == revision.rowsOf(table).count();
    RowRevision.WrittenRow to = revision.rows().written(table, isLast ? before - 1 : before);
    int at = isLast ? to.at() + 1 : to.at();
    if (from.block() == to.block()) {
      from.block().move(from.at(), at);
    } else {
      to.block().insert(at, from.cells());
      from.block().remove(from.at());
    }
  }
}
