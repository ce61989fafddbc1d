package org.battenbook.bind;

import org.battenbook.book.Place;

/**
 * One value of a book: a line, or a column in one row.
 *
 * @param row counted from 0; 0 for a line
 */
public record Spot(Place place, int row) {

  /**
   * The name of this value for people: {@code saw kerf}, {@code top rail of "Tide chart, north"}.
   *
   * @param keys the row names of the place's table
   */
  public String words(RowKeys keys) {
    return place.table() == null
        ? place.label()
        : "%s of \"%s\"".formatted(place.label(), keys.name(row));
  }
}
