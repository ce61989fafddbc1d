package org.battenbook.edit;

import org.battenbook.bind.BookRows;
import org.battenbook.book.Place;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;

/**
 * Another formula for a line or a column, in place of the one that decides it.
 *
 * @param formula as it is written behind the {@code =}; a {@code shown as} stays unless the formula
 *     brings its own
 */
public record FormulaEdit(Place place, String formula) implements WorkbookEdit {
  @Override
  public String words(BookRows rows) {
    return "setting '%s' to '%s'".formatted(place.words(), formula.strip());
  }

  @Override
  public Span at(BookRows rows) {
    return place.layer().span();
  }

  @Override
  public void checkTyped(Diagnostics diagnostics) {
    TypedText.checkFormula(formula, diagnostics);
  }

  @Override
  public void writeInto(BookRevision revision) throws EditRefused {
    revision.statements().setFormula(place, formula.strip());
  }
}
