package org.battenbook.export.formula;

import java.util.function.IntFunction;
import org.battenbook.export.file.Address;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.operation.SpreadsheetText;

/**
 * A hidden column beside a table that serves formulas.
 *
 * @param table the table that it is beside
 * @param heading what it holds, for readers who unhide it
 * @param column its column in the sheet, counted from 0
 * @param array whether its formulas are array formulas
 * @param formula gives its formula in a row of the table, counted from 0
 * @param value gives the value of that formula
 */
public record HelperColumn(
    TableLayout table,
    String heading,
    int column,
    boolean array,
    IntFunction<SpreadsheetText> formula,
    IntFunction<CellContent> value) {

  /** The cell beside a row of the table. */
  public Address cell(int row) {
    return table.cell(column, row);
  }

  /** All its cells, as a formula on a sheet names them. */
  public String range(String from) {
    return table.range(column, from);
  }

  /**
   * What its cell beside a row holds: the formula, or only its value where the formula is more than
   * programs accept.
   */
  public CellContent content(int row) {
    CellContent cached = value.apply(row);
    try {
      String text = FormulaLimits.checked(formula.apply(row)).toString();
      return new CellContent.Formula(text, array, cached);
    } catch (Inexpressible tooLong) {
      return cached;
    }
  }
}
