package org.battenbook.parse;

import org.battenbook.parse.generated.WorkbookParser.SoleFormulaContext;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.jspecify.annotations.Nullable;

/** Reads a sole formula: what a person types to change a line, or a cell that is no literal. */
public final class FormulaParser {
  private FormulaParser() {}

  /**
   * The formula that stands in a part of a text.
   *
   * @param where the part, all of which is to be the formula
   * @return absent where it cannot be read, with at least one fault reported
   */
  public static @Nullable Formula parse(SourceText whole, Span where, Diagnostics diagnostics) {
    LineFaults faults = new LineFaults(diagnostics);
    if (LongLines.refuse(whole, where.start(), where.end(), faults)) {
      return null;
    }
    LineTokens line = TokenReader.formula(where, faults);
    if (!faults.any() && line.count() == 0) {
      faults.fault(
          "formula-missing", where, "there is no formula here", "write one, such as 3/16 in");
    }
    if (faults.any()) {
      return null;
    }
    SoleFormulaContext tree = GrammarRun.soleFormula(line, faults);
    return tree == null ? null : new FormulaBuilder(whole, faults).formula(tree.formula());
  }

  /** The formula that is all of a text. */
  public static @Nullable Formula parse(SourceText whole, Diagnostics diagnostics) {
    return parse(whole, whole.span(0, whole.text().length()), diagnostics);
  }
}
