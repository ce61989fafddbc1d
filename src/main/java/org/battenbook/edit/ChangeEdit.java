package org.battenbook.edit;

import org.battenbook.bind.BookRows;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/**
 * A {@code change … because …} in the job: a new one, or another formula and reason in the one that
 * is there.
 *
 * @param row the row of a cell, counted from 0; negative for a whole column, and for a line
 * @param because the reason; absent to keep the one that is there
 */
public record ChangeEdit(Place place, int row, String formula, @Nullable String because)
    implements WorkbookEdit {
  @Override
  public String words(BookRows rows) {
    return "changing '%s' to '%s'".formatted(place.words(), formula.strip());
  }

  @Override
  public Span at(BookRows rows) {
    return place.layer().span();
  }

  @Override
  public void checkTyped(Diagnostics diagnostics) {
    TypedText.checkFormula(formula, diagnostics);
    if (because != null) {
      TypedText.checkReason(because, diagnostics);
    }
  }

  @Override
  public void writeInto(BookRevision revision) throws EditRefused {
    revision.statements().change(this);
  }

  /** Whether it is of one cell. */
  boolean isOfCell() {
    return row >= 0 && place.table() != null;
  }

  /** The place as a change names it. */
  String target(BookRevision revision) {
    Table table = place.table();
    if (table == null) {
      return isAlone(revision) ? place.label() : place.page() + "." + place.label();
    }
    return isOfCell()
        ? place.words() + " " + TypedText.quoted(revision.rowsOf(table).name(row))
        : place.words();
  }

  private boolean isAlone(BookRevision revision) {
    return revision.book().pages().stream()
            .filter(page -> page.line(Name.key(place.label())) != null)
            .count()
        == 1;
  }
}
