package org.battenbook.book;

import java.util.List;

/**
 * The rows of one of the tables that hold what comes of a plan.
 *
 * @param table its key
 * @param rows for each a cell for each given column, as it would be written
 */
public record PlannedRows(String table, List<List<String>> rows) {
  public PlannedRows {
    rows = List.copyOf(rows);
  }
}
