package org.battenbook.book;

import java.util.List;
import java.util.Map;

/**
 * The rows that tables open from others, and those that come of plans. They are worked out by
 * formulas, so a book is put together without them first.
 *
 * @param areSettled whether no more will come: then it is a fault to speak of others
 * @param byOpening by {@link #of its opening}, in the order of the other table
 * @param planned by the key of the plan, table by table
 */
public record OpenedRows(
    boolean areSettled,
    Map<String, List<Opened>> byOpening,
    Map<String, List<PlannedRows>> planned) {
  /** Before anything was worked out. */
  public static final OpenedRows NONE_YET = new OpenedRows(false, Map.of(), Map.of());

  /**
   * The rows that one row opens.
   *
   * @param row its place in its table, counted from 0
   * @param each what it is called
   * @param count how many, at least 1
   */
  public record Opened(int row, String each, int count) {

    /** What the row of a number is called: as the one that opens it, if it is alone. */
    public String name(int number) {
      return count == 1 ? each : numbered(each, Integer.toString(number));
    }
  }

  public OpenedRows {
    byOpening = Map.copyOf(byOpening);
    planned = Map.copyOf(planned);
  }

  /** The same opened rows, with others that come of plans. */
  public OpenedRows with(Map<String, List<PlannedRows>> otherPlanned) {
    return new OpenedRows(areSettled, byOpening, otherPlanned);
  }

  /** The same rows, and no more to come. */
  public OpenedRows settled() {
    return new OpenedRows(true, byOpening, planned);
  }

  /** The same rows, and more may come. */
  public OpenedRows unsettled() {
    return new OpenedRows(false, byOpening, planned);
  }

  /** What an opening goes by, in every book that is put together from the same files. */
  public static String key(RowOpening opening) {
    return opening.each().words();
  }

  List<Opened> of(RowOpening opening) {
    return byOpening.getOrDefault(key(opening), List.of());
  }

  /** The name of a row that is not alone. */
  static String numbered(String each, String number) {
    return each + ": " + number;
  }
}
