package org.battenbook.check;

import org.battenbook.book.Place;

/** A dependency of a formula: a place that it reads. */
public record Need(Place place, Reach reach) {

  /** The same place, read in any row. */
  public Need whole() {
    return new Need(place, Reach.WHOLE);
  }

  /** Which rows of a place are read. */
  public enum Reach {
    /** A line, or any row of a column. */
    WHOLE,
    /** The same row of a column. */
    SAME_ROW,
    /** The row before, in the same column. */
    ROW_ABOVE,
    /** Which rows the table of a key column has, but none of their values. */
    ROWS
  }
}
