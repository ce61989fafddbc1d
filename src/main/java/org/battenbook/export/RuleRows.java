package org.battenbook.export;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.choice;
import static org.battenbook.operation.SpreadsheetText.number;

import java.util.List;
import java.util.function.Consumer;
import org.battenbook.bind.Spot;
import org.battenbook.book.Rule;
import org.battenbook.check.CheckedFormula;
import org.battenbook.evaluate.Trace;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.file.Look;
import org.battenbook.export.file.NumberFormats;
import org.battenbook.export.file.SheetCell;
import org.battenbook.export.file.SheetRows;
import org.battenbook.export.formula.FormulaContext;
import org.battenbook.export.formula.FormulaLimits;
import org.battenbook.export.formula.FormulaTranslator;
import org.battenbook.export.formula.HelperColumn;
import org.battenbook.export.formula.Inexpressible;
import org.battenbook.export.layout.RuleLayout;
import org.battenbook.export.layout.RuleLayout.Ruled;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.operation.Operation;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;

/**
 * The rows of requirements or of cautions. A live formula counts in how many rows each one fails or
 * applies. The messages are those of the job when it was exported.
 */
final class RuleRows implements SheetRows {
  /** How many messages of one rule are shown. */
  private static final int TOLD = 3;

  private static final SpreadsheetText NONE = number(0);
  private static final SpreadsheetText ONE = number(1);

  private final RuleLayout layout;
  private final String sheet;
  private final FormulaTranslator translator;
  private final RuleCounts counts;

  RuleRows(RuleLayout layout, String sheet, FormulaTranslator translator) {
    this.layout = layout;
    this.sheet = sheet;
    this.translator = translator;
    this.counts = new RuleCounts(translator.results());
  }

  @Override
  public void each(Consumer<List<SheetCell>> row) {
    int top = layout.headingRow() - 1;
    String title = layout.isRequired() ? "Checks" : "Cautions";
    row.accept(List.of(SheetCell.words(top, 0, Look.SUBTITLE, title)));
    row.accept(headings());
    for (int i = 0; i < layout.rules().size(); i++) {
      row.accept(rule(layout.rules().get(i), layout.row(i)));
    }
  }

  private List<SheetCell> headings() {
    int row = layout.headingRow();
    String count = layout.isRequired() ? "fails in" : "applies to";
    return List.of(
        SheetCell.words(row, RuleLayout.OF, Look.HEADING, "table"),
        SheetCell.words(row, RuleLayout.COUNT, Look.NUMBER_HEADING, count),
        SheetCell.words(row, RuleLayout.ROWS, Look.HEADING, "of rows"),
        SheetCell.words(row, RuleLayout.SET_IN, Look.HEADING, "file and line"),
        SheetCell.words(row, RuleLayout.SAYS, Look.HEADING, "message"));
  }

  private List<SheetCell> rule(Ruled ruled, int row) {
    String of = ruled.table() == null ? ruled.page().title() : ruled.table().name().text();
    return List.of(
        SheetCell.words(row, RuleLayout.OF, Look.NAME, of),
        count(ruled, row),
        new SheetCell(
            row,
            RuleLayout.ROWS,
            new CellContent.Figure(ruled.rowCount()),
            Look.UNIT,
            NumberFormats.GENERAL,
            ""),
        remark(row, RuleLayout.SET_IN, ruled.rule().span().place()),
        remark(row, RuleLayout.SAYS, says(ruled)));
  }

  private static SheetCell remark(int row, int column, String words) {
    return new SheetCell(
        row, column, new CellContent.Words(words), Look.NOTE, NumberFormats.TEXT, "");
  }

  private SheetCell count(Ruled ruled, int row) {
    CellContent counted = counts.of(ruled);
    try {
      String formula = FormulaLimits.checked(countFormula(ruled)).toString();
      CellContent live = new CellContent.Formula(formula, false, counted);
      return new SheetCell(row, RuleLayout.COUNT, live, Look.WORKED_OUT, NumberFormats.GENERAL, "");
    } catch (Inexpressible reason) {
      return new SheetCell(
          row, RuleLayout.COUNT, counted, Look.FIXED, NumberFormats.GENERAL, reason.words());
    }
  }

  private SpreadsheetText countFormula(Ruled ruled) {
    if (ruled.table() == null) {
      return counts(ruled.rule(), 0, FormulaContext.ofLine(sheet));
    }
    TableLayout table = translator.layout().table(ruled.table());
    HelperColumn helper =
        translator
            .helpers(table)
            .column(
                List.of("rule", ruled.rule()),
                ruled.rule().condition().label(),
                false,
                row -> counts(ruled.rule(), row, FormulaContext.inRow(table, row)),
                row -> counts.of(ruled.rule(), row));
    counts(ruled.rule(), 0, FormulaContext.inRow(table, 0));
    String range = helper.range(sheet);
    return call("SUM", SpreadsheetText.reference(range, Content.NUMBER));
  }

  /** 1 for a row in which the rule fails or applies, else 0. */
  private SpreadsheetText counts(Rule rule, int row, FormulaContext context) {
    Spot spot = new Spot(rule.condition(), row);
    if (!Trace.every(translator.results(), spot, Operation::agreesInSpreadsheet)) {
      throw Inexpressible.tooNear();
    }
    CheckedFormula formula =
        translator.results().program().book().place(rule.condition()).formula();
    if (formula == null) {
      throw new IllegalStateException("a rule without a condition at " + rule.span());
    }
    SpreadsheetText holds = translator.translate(formula, context);
    return rule.required() ? choice(holds, NONE, ONE) : choice(holds, ONE, NONE);
  }

  /** The first messages of a rule. If it has none, its text as written. */
  private String says(Ruled ruled) {
    List<String> told = counts.messages(ruled, TOLD + 1);
    if (told.isEmpty()) {
      return ruled.rule().message().text().replaceAll("^\"|\"$", "").replace("\"\"", "\"");
    }
    String first = String.join(" ", told.subList(0, Math.min(TOLD, told.size())));
    return told.size() > TOLD ? first + " And more." : first;
  }
}
