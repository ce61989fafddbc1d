package org.battenbook.export;

import org.battenbook.book.Place;
import org.battenbook.check.CheckedFormula;
import org.battenbook.evaluate.Results;
import org.battenbook.number.Rational;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.unit.Form;

/**
 * Translates the formulas of a filled workbook to formulas of a spreadsheet that give the same
 * values.
 */
final class FormulaTranslator {
  private final PlaceReads reads;

  /**
   * A translator for one file.
   *
   * @param layout tells which cells the names in formulas read
   */
  FormulaTranslator(BookPlan layout, Results results) {
    this.reads = new PlaceReads(layout, results);
  }

  BookPlan layout() {
    return reads.plan();
  }

  Results results() {
    return reads.results();
  }

  /**
   * A formula as a spreadsheet's. Its numbers are in base units.
   *
   * @throws Inexpressible if no formula of a spreadsheet gives its value
   */
  SpreadsheetText translate(CheckedFormula formula, Standing standing) {
    return new Translation(reads, formula, standing).translate(formula.expression());
  }

  /**
   * A formula for the cell of its place: a number in the unit that the workbook shows it in, a row
   * by its name.
   *
   * @throws Inexpressible if no formula of a spreadsheet gives its value
   */
  SpreadsheetText inCell(Place place, CheckedFormula formula, Standing standing) {
    SpreadsheetText text = translate(formula, standing);
    SpreadsheetText name = text.rowName();
    return FormulaLimits.checked(name == null ? inShownUnit(place, text) : name);
  }

  private SpreadsheetText inShownUnit(Place place, SpreadsheetText number) {
    Form form = reads.book().place(place).form();
    return form == null ? number : number.scaled(Rational.ONE.dividedBy(form.unit().factor()));
  }

  /** The helper columns beside a table. */
  HelperColumns helpers(TablePlan table) {
    return reads.helpers(table);
  }
}
