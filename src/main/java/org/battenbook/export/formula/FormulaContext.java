package org.battenbook.export.formula;

import java.util.List;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.operation.SpreadsheetText;
import org.jspecify.annotations.Nullable;

/**
 * The context of a formula, which decides what cells its names read.
 *
 * @param sheet the name of the sheet of its cell
 * @param table the table whose row it reads; null for a line
 * @param row that row, counted from 0; an array formula ignores it
 * @param array whether it reads all rows of the table at once
 * @param outer the context around an aggregate; null unless in an array
 * @param arguments the arguments, if it is the formula of a function
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

  /** The context inside a function that is called here. */
  FormulaContext calling(List<SpreadsheetText> values) {
    return new FormulaContext(sheet, table, row, array, outer, values);
  }

  /** The context inside an aggregate here that reads all rows of a table at once. */
  FormulaContext through(TableLayout inner) {
    return new FormulaContext(sheet, inner, 0, true, this, arguments);
  }
}
