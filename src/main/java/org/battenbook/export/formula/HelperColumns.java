package org.battenbook.export.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.operation.SpreadsheetText;

/** The helper columns beside one table. Each is made when a formula first asks for it. */
public final class HelperColumns {
  private final TableLayout table;
  private final Map<Object, HelperColumn> byUse = new HashMap<>();
  private final List<HelperColumn> all = new ArrayList<>();

  HelperColumns(TableLayout table) {
    this.table = table;
  }

  /**
   * The helper column for a use.
   *
   * @param use tells it from the others, by {@code equals}
   * @param heading what it holds
   * @param array whether its formulas are array formulas
   * @param formula gives its formula in a row of the table, counted from 0
   * @param value gives the value of that formula
   */
  public HelperColumn column(
      Object use,
      String heading,
      boolean array,
      IntFunction<SpreadsheetText> formula,
      IntFunction<CellContent> value) {
    HelperColumn known = byUse.get(use);
    if (known != null) {
      return known;
    }
    int column = table.firstFreeColumn() + all.size();
    HelperColumn made = new HelperColumn(table, heading, column, array, formula, value);
    byUse.put(use, made);
    all.add(made);
    return made;
  }

  /** The columns so far, from left to right. The list grows while formulas ask for more. */
  public List<HelperColumn> all() {
    return Collections.unmodifiableList(all);
  }
}
