package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.book.PlannedRows;

/** Rows of one table being written, each cell as it would stand in a workbook. */
final class RowTexts {
  private final String table;
  private final List<List<String>> rows = new ArrayList<>();

  RowTexts(String table) {
    this.table = table;
  }

  void add(String... cells) {
    rows.add(List.of(cells));
  }

  void add(List<String> cells) {
    rows.add(List.copyOf(cells));
  }

  /** Adds the rows of another text of the same table. */
  void addAll(RowTexts more) {
    rows.addAll(more.rows);
  }

  PlannedRows rows() {
    return new PlannedRows(table, rows);
  }

  static String text(String words) {
    return '"' + words.replace("\"", "\"\"") + '"';
  }

  static String numbered(String name, int number) {
    return text(name + ": " + number);
  }

  static String yes(boolean yes) {
    return Boolean.toString(yes);
  }
}
