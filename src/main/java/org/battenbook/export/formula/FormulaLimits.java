package org.battenbook.export.formula;

import org.battenbook.operation.SpreadsheetText;

/** What programs accept of a formula: 8192 characters, functions nested 64 deep. */
public final class FormulaLimits {
  private static final int LONGEST = 8192;
  private static final int DEEPEST = 60;

  private FormulaLimits() {}

  /**
   * Returns the formula if programs accept it.
   *
   * @throws Inexpressible if it is too long or nested too deep
   */
  public static SpreadsheetText checked(SpreadsheetText formula) {
    if (formula.length() > LONGEST) {
      throw new Inexpressible("it would be too long for a spreadsheet");
    }
    if (depth(formula.toString()) > DEEPEST) {
      throw new Inexpressible("it would be too deep for a spreadsheet");
    }
    return formula;
  }

  private static int depth(String formula) {
    int depth = 0;
    int deepest = 0;
    boolean quoted = false;
    for (int i = 0; i < formula.length(); i++) {
      char c = formula.charAt(i);
      quoted ^= c == '"';
      depth += quoted ? 0 : c == '(' ? 1 : c == ')' ? -1 : 0;
      deepest = Math.max(deepest, depth);
    }
    return deepest;
  }
}
