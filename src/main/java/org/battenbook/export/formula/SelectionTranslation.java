package org.battenbook.export.formula;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.choice;
import static org.battenbook.operation.SpreadsheetText.number;
import static org.battenbook.operation.SpreadsheetText.total;

import java.util.List;
import org.battenbook.check.CheckedFormula;
import org.battenbook.evaluate.Trace;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.file.CellContents;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Selection;
import org.battenbook.value.Value;

/**
 * Translates a selection: the number of the first row that fits. A preference takes the row with
 * the largest or smallest value.
 */
final class SelectionTranslation {
  private static final SpreadsheetText NOTHING = SpreadsheetText.text("");
  private static final SpreadsheetText ONE = number(1);

  private final Translation around;
  private final CheckedFormula formula;
  private final Selection selection;
  private final TableLayout table;
  private final Conditions conditions;

  SelectionTranslation(Translation around, Selection selection) {
    this.around = around;
    this.formula = around.formula();
    this.selection = selection;
    this.table = around.reads().layout().table(formula.table(selection));
    this.conditions = Conditions.of(selection.where(), formula);
  }

  SpreadsheetText translate() {
    boolean readsOuter = selection.children().stream().anyMatch(c -> OuterReads.in(c, formula));
    SpreadsheetText number =
        readsOuter
            ? HostedArray.of(around, selection, t -> new SelectionTranslation(t, selection).array())
            : overColumn();
    return around.reads().row(table, number, around.context().sheet());
  }

  private SpreadsheetText array() {
    Translation inner = around.at(around.context().through(table));
    return best(ranked(inner, conditions.all()));
  }

  private SpreadsheetText overColumn() {
    ranked(around.at(FormulaContext.inRow(table, 0)), conditions.ofInner());
    HelperColumn helper =
        around
            .reads()
            .helpers(table)
            .column(
                List.of(formula, selection, "ranked"),
                selection.span().text(),
                false,
                row -> ranked(around.at(FormulaContext.inRow(table, row)), conditions.ofInner()),
                this::rankedValue);
    String range = helper.range(around.context().sheet());
    return best(SpreadsheetText.reference(range, Content.NUMBER));
  }

  /** The value that a row is ranked by, if the row fits. */
  private SpreadsheetText ranked(Translation inRow, List<Expression> conditions) {
    Selection.Preference preference = selection.preference();
    SpreadsheetText by = preference == null ? ONE : inRow.translate(preference.by());
    return Conditions.where(conditions, inRow::translate, by, NOTHING);
  }

  private CellContent rankedValue(int row) {
    for (Expression condition : conditions.ofInner()) {
      if (!(value(condition, row) instanceof Value.YesNo holds)) {
        return new CellContent.Missing();
      }
      if (!holds.yes()) {
        return new CellContent.Words("");
      }
    }
    Selection.Preference preference = selection.preference();
    return preference == null
        ? new CellContent.Figure(1)
        : CellContents.ofHelper(value(preference.by(), row));
  }

  private Value value(Expression node, int row) {
    return Trace.innerValue(around.reads().results(), formula, node, row, row);
  }

  /**
   * The number of the best row. Programs make no array of a single row, so that is handled apart.
   */
  private SpreadsheetText best(SpreadsheetText ranks) {
    if (table.rowCount() == 1) {
      return choice(total("COUNT", ranks).compared("=", number(0)), call("NA"), ONE);
    }
    Selection.Preference preference = selection.preference();
    SpreadsheetText wanted =
        preference == null ? ONE : total(preference.largest() ? "MAX" : "MIN", ranks);
    return total("MATCH", wanted, ranks, number(0));
  }
}
