package org.battenbook.edit;

import org.battenbook.bind.BookRows;
import org.battenbook.book.Place;
import org.battenbook.source.Span;

/**
 * A {@code change … because …} of the job taken out: what is inherited holds again.
 *
 * @param row the row of a cell, counted from 0; negative for a whole column, and for a line
 */
public record ChangeRemoval(Place place, int row) implements WorkbookEdit {
  @Override
  public String words(BookRows rows) {
    return "taking back the change of '%s'".formatted(place.words());
  }

  @Override
  public Span at(BookRows rows) {
    return place.layer().span();
  }

  @Override
  public void writeInto(BookRevision revision) throws EditRefused {
    revision.statements().removeChange(place, row);
  }
}
