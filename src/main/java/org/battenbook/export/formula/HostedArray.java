package org.battenbook.export.formula;

import java.util.List;
import java.util.function.Function;
import org.battenbook.check.CheckedFormula;
import org.battenbook.evaluate.Trace;
import org.battenbook.export.file.CellContents;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Kind;

/** Puts a part of a formula that must be an array formula into a helper column. */
final class HostedArray {
  private HostedArray() {}

  /**
   * A reference to the cell with the value of a part, in the row of the context.
   *
   * @param array gives the array formula of the part in the context of a translation
   */
  static SpreadsheetText of(
      Translation around, Expression part, Function<Translation, SpreadsheetText> array) {
    FormulaContext context = around.context();
    if (context.array() || context.table() == null || !context.arguments().isEmpty()) {
      throw new Inexpressible("it goes through the rows of a table in a way that no cell can");
    }
    if (!array.apply(around).isFit()) {
      throw new Inexpressible("spreadsheet programs do not agree on such an array");
    }
    CheckedFormula formula = around.formula();
    TableLayout host = context.table();
    HelperColumn helper =
        around
            .reads()
            .helpers(host)
            .column(
                List.of(formula, part, "array"),
                part.span().text(),
                true,
                row -> array.apply(around.at(FormulaContext.inRow(host, row))),
                row ->
                    CellContents.ofHelper(
                        Trace.innerValue(around.reads().results(), formula, part, row, row)));
    String cell = helper.cell(context.row()).seenFrom(context.sheet());
    Kind kind = formula.kind(part);
    Content content = kind instanceof Kind.RowOf ? Content.NUMBER : PlaceReads.content(kind);
    return SpreadsheetText.reference(cell, content);
  }
}
