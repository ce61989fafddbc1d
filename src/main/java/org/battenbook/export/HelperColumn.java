package org.battenbook.export;

import java.util.function.IntFunction;
import org.battenbook.operation.SpreadsheetText;

/**
 * A hidden column beside a table that serves formulas.
 *
 * @param heading what it holds, for those who look behind the curtain
 * @param column where it stands in its sheet, counted from 0
 * @param array whether its formulas go through columns
 * @param formula its formula in each row of the table, counted from 0
 * @param value what the formula gives there
 */
record HelperColumn(
    String heading,
    int column,
    boolean array,
    IntFunction<SpreadsheetText> formula,
    IntFunction<CellContent> value) {}
