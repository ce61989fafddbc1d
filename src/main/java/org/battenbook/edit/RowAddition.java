package org.battenbook.edit;

import java.util.Map;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;

/**
 * A new row, behind the last row of its table that people write.
 *
 * @param cells the entry of each column that is filled in, as it is written in the row
 */
public record RowAddition(Table table, Map<Column, String> cells) implements WorkbookEdit {
  public RowAddition {
    cells = Map.copyOf(cells);
  }

  @Override
  public String words(BookRows rows) {
    return "adding a row to '%s'".formatted(table);
  }

  @Override
  public Span at(BookRows rows) {
    return table.origin();
  }

  @Override
  public void checkTyped(Diagnostics diagnostics) {
    cells.values().forEach(cell -> TypedText.checkCell(cell, diagnostics));
  }

  @Override
  public void writeInto(BookRevision revision) throws EditRefused {
    if (table.plan() != null || !table.openings().isEmpty()) {
      throw new EditRefused(
          "edit-of-opened-row",
          "rows of '%s' cannot be added: %s"
              .formatted(
                  table,
                  table.plan() != null
                      ? "they come from the plan '%s'".formatted(table.plan().name())
                      : "they come from '%s'".formatted(table.openings().get(0).from())),
          "add a row there");
    }
    revision.addRow(table, TypedText.inOrder(table, cells));
  }
}
