package org.battenbook.bind;

import java.util.List;
import org.battenbook.book.Line;
import org.battenbook.book.Place;

/** What a name means where it stands. */
public sealed interface Meaning {

  /** A line, or a column read in the row at hand. */
  record Found(Place place) implements Meaning {}

  /** The value that a place had before the change in which its own name stands. */
  record Inherited(Place place, int layer) implements Meaning {}

  /** An argument of the function, counted from 0. */
  record Parameter(int index) implements Meaning {}

  /**
   * Nothing, or more than one thing. Often a table or a setting of that name is asked for next, so
   * {@link NameBinder#unclear} says what is wrong only where that is to be told.
   *
   * @param candidates the lines that it might mean
   */
  record Unclear(List<Line> candidates) implements Meaning {}
}
