package org.battenbook.check;

import org.battenbook.book.Place;

/** What a formula reads to be worked out. */
public record Need(Place place, Reach reach) {

  /** The same place, read in any row. */
  public Need whole() {
    return new Need(place, Reach.WHOLE);
  }

  /** How much of a place is read. */
  public enum Reach {
    /** A line, or any row of a column. */
    WHOLE,
    /** The same row of a column. */
    SAME_ROW,
    /** The row before. */
    ROW_ABOVE,
    /** Which rows there are in the table of a key column, and none of their values. */
    ROWS
  }
}
