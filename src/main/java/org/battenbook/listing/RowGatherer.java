package org.battenbook.listing;

import java.util.ArrayList;
import java.util.List;

/** Gathers the rows of a list, and stops at one that is larger than any list needs to be. */
final class RowGatherer {
  static final int MOST_ROWS = 200_000;
  static final int MOST_COLUMNS = 1_000;

  /** What a cell of an .xlsx file may hold. */
  static final int MOST_CHARACTERS = 32_767;

  /** Cells with something in them. */
  static final int MOST_CELLS = 4_000_000;

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
    if (column >= MOST_COLUMNS) {
      throw tooLarge("row %s has more than %s columns".formatted(rowNumber(), MOST_COLUMNS));
    }
    if (text.length() > MOST_CHARACTERS) {
      throw tooLarge(
          "a cell of row %s has more than %s characters".formatted(rowNumber(), MOST_CHARACTERS));
    }
    if (++cells > MOST_CELLS) {
      throw tooLarge("it has more than %s cells".formatted(MOST_CELLS));
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
    if (rows.size() == MOST_ROWS) {
      throw tooLarge("it has more than %s rows".formatted(MOST_ROWS));
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
        "'%s' is too large a list: %s".formatted(name, what),
        "keep only the rows and columns that the table needs");
  }
}
