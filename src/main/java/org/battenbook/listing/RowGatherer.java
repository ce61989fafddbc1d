package org.battenbook.listing;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.bound.Bound;

/** Gathers the rows of a list, and stops at one that is larger than any list needs to be. */
final class RowGatherer {
  private final String name;
  private final List<List<String>> rows = new ArrayList<>();
  private List<String> row = new ArrayList<>();
  private int cells;

  RowGatherer(String name) {
    this.name = name;
  }

  /** The number of the row that is being gathered, counted from 1. */
  int rowNumber() {
    return rows.size() + 1;
  }

  /** Puts a text into a column of the current row, counted from 0. */
  void cell(int column, String text) throws BadList {
    if (text.isEmpty()) {
      return;
    }
    if (column >= Bound.LIST_COLUMNS.most()) {
      throw tooLarge(
          "row %s has more than %s columns".formatted(rowNumber(), Bound.LIST_COLUMNS.shown()));
    }
    if (Bound.LIST_CELL.isPassedBy(text.length())) {
      throw tooLarge(
          "a cell of row %s has more than %s".formatted(rowNumber(), Bound.LIST_CELL.shown()));
    }
    if (Bound.LIST_CELLS.isPassedBy(++cells)) {
      throw tooLarge("it has more than %s filled cells".formatted(Bound.LIST_CELLS.shown()));
    }
    while (row.size() < column) {
      row.add("");
    }
    if (row.size() == column) {
      row.add(text);
    } else {
      row.set(column, text);
    }
  }

  /** Ends the current row. */
  void endRow() throws BadList {
    if (rows.size() == Bound.LIST_ROWS.most()) {
      throw tooLarge("it has more than %s rows".formatted(Bound.LIST_ROWS.shown()));
    }
    rows.add(List.copyOf(row));
    row = new ArrayList<>();
  }

  /** Ends rows until the one of this number is the current one. */
  void goTo(int number) throws BadList {
    while (rowNumber() < number) {
      endRow();
    }
  }

  List<List<String>> rows() {
    return rows;
  }

  private BadList tooLarge(String what) {
    return new BadList(
        "list-too-large",
        "the list '%s' is too large: %s".formatted(name, what),
        "keep only the rows and columns that the table needs");
  }
}
