package org.battenbook.export.formula;

import java.util.List;
import org.battenbook.export.layout.TableLayout;
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
public record FormulaContext(
    String sheet,
    @Nullable TableLayout table,
    int row,
    boolean array,
    @Nullable FormulaContext outer,
    List<SpreadsheetText> arguments) {

  public static FormulaContext ofLine(String sheet) {
    return new FormulaContext(sheet, null, 0, false, null, List.of());
  }

  public static FormulaContext inRow(TableLayout table, int row) {
    return new FormulaContext(table.sheet(), table, row, false, null, List.of());
  }

  /** Inside of a function that is called here. */
  FormulaContext calling(List<SpreadsheetText> values) {
    return new FormulaContext(sheet, table, row, array, outer, values);
  }

  /** Inside of an aggregate here that goes through a table at once. */
  FormulaContext through(TableLayout inner) {
    return new FormulaContext(sheet, inner, 0, true, this, arguments);
  }
}
