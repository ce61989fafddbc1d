package org.battenbook.export.formula;

import java.util.List;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.Counts;
import org.battenbook.evaluate.Results;
import org.battenbook.export.layout.FileLayout;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.number.Rational;
import org.battenbook.operation.Operations;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.unit.Form;

/**
 * Translates the formulas of a filled workbook to formulas of a spreadsheet that give the same
 * values.
 */
public final class FormulaTranslator {
  private final PlaceReads reads;

  /**
   * A translator for one file.
   *
   * @param layout tells which cells the names in formulas read
   */
  public FormulaTranslator(FileLayout layout, Results results) {
    this.reads = new PlaceReads(layout, results);
  }

  public FileLayout layout() {
    return reads.layout();
  }

  public Results results() {
    return reads.results();
  }

  /**
   * A formula as a spreadsheet's. Its numbers are in base units.
   *
   * @throws Inexpressible if no formula of a spreadsheet gives its value
   */
  public SpreadsheetText translate(CheckedFormula formula, FormulaContext context) {
    return new Translation(reads, formula, context).translate(formula.expression());
  }

  /**
   * A formula for the cell of its place: a number in the unit that the workbook shows it in, a row
   * by its name.
   *
   * @throws Inexpressible if no formula of a spreadsheet gives its value
   */
  public SpreadsheetText inCell(Place place, CheckedFormula formula, FormulaContext context) {
    SpreadsheetText text = counted(place, formula, translate(formula, context));
    SpreadsheetText name = text.rowName();
    return FormulaLimits.checked(name == null ? inShownUnit(place, text) : name);
  }

  /** With the check that the value is a count, where it must be one. */
  private static SpreadsheetText counted(
      Place place, CheckedFormula formula, SpreadsheetText text) {
    return Counts.mustBeChecked(place, formula)
        ? Operations.COUNT.spreadsheet(List.of(text))
        : text;
  }

  private SpreadsheetText inShownUnit(Place place, SpreadsheetText number) {
    Form form = reads.book().place(place).form();
    return form == null ? number : number.scaled(Rational.ONE.dividedBy(form.unit().factor()));
  }

  /** The helper columns beside a table. */
  public HelperColumns helpers(TableLayout table) {
    return reads.helpers(table);
  }
}
