package org.battenbook.export;

import java.util.List;
import org.battenbook.operation.SpreadsheetText;
import org.jspecify.annotations.Nullable;

/**
 * Where a formula stands, and so which cells its names read.
 *
 * @param sheet the name of the sheet that its cell is on
 * @param table the table whose row it reads; absent for a line
 * @param row that row, counted from 0; without meaning in an array
 * @param array whether it goes through all rows of the table at once
 * @param outer where the formula around an aggregate stands; absent outside of arrays
 * @param arguments of the function whose formula it is
 */
record Standing(
    String sheet,
    @Nullable TablePlan table,
    int row,
    boolean array,
    @Nullable Standing outer,
    List<SpreadsheetText> arguments) {

  static Standing ofLine(String sheet) {
    return new Standing(sheet, null, 0, false, null, List.of());
  }

  static Standing inRow(TablePlan table, int row) {
    return new Standing(table.sheet(), table, row, false, null, List.of());
  }

  /** Inside of a function that is called here. */
  Standing calling(List<SpreadsheetText> values) {
    return new Standing(sheet, table, row, array, outer, values);
  }

  /** Inside of an aggregate here that goes through a table at once. */
  Standing through(TablePlan inner) {
    return new Standing(sheet, inner, 0, true, this, arguments);
  }
}
