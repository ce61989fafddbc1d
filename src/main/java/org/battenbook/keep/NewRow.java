package org.battenbook.keep;

import java.util.LinkedHashMap;
import java.util.Map;
import org.battenbook.book.Column;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement.Source;
import org.jspecify.annotations.Nullable;

/** A row to be written: the text of each cell that it fills in, its name first. */
final class NewRow {
  private final Source source;
  private final String name;
  private final Map<Column, String> cells = new LinkedHashMap<>();

  NewRow(Source source, String name) {
    this.source = source;
    this.name = name;
    put(source.table().keyColumn(), CellText.quoted(name));
  }

  /** Fills in the column that says something, if the plan names one. */
  NewRow with(PlanRole role, String cell) {
    put(source.column(role), cell);
    return this;
  }

  private void put(@Nullable Column column, String cell) {
    if (column != null) {
      cells.put(column, cell);
    }
  }

  String name() {
    return name;
  }

  Map<Column, String> cells() {
    return cells;
  }
}
