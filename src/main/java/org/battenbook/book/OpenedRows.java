package org.battenbook.book;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The rows that tables open from others. How many there are is worked out by formulas, so a book is
 * put together without them first.
 *
 * @param areSettled whether no more will come: then it is a fault to speak of others
 * @param byTable by the key of the table that has them, in its order
 */
public record OpenedRows(boolean areSettled, Map<String, List<Opened>> byTable) {
  /** Before anything was worked out. */
  public static final OpenedRows NONE_YET = new OpenedRows(false, Map.of());

  /**
   * The rows that one row opens.
   *
   * @param each what it is called
   * @param count how many, at least 1
   */
  public record Opened(String each, int count) {

    /** What the row of a number is called: as the one that opens it, if it is alone. */
    public String name(int number) {
      return count == 1 ? each : numbered(each, Integer.toString(number));
    }
  }

  public OpenedRows {
    byTable = Map.copyOf(byTable);
  }

  /** The same rows, and no more to come. */
  public OpenedRows settled() {
    return new OpenedRows(true, byTable);
  }

  List<Opened> of(Table table) {
    return Objects.requireNonNullElse(byTable.get(table.key()), List.of());
  }

  /** The name of a row that is not alone. */
  static String numbered(String each, String number) {
    return each + ": " + number;
  }
}
