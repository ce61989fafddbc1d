package org.battenbook.bind;

import java.util.List;
import org.battenbook.book.Line;
import org.battenbook.book.Place;

/** The meaning of a name where it is used: the result of name resolution. */
public sealed interface Meaning {

  /** A line, or a column of the current row. */
  record Found(Place place) implements Meaning {}

  /**
   * The value that a place had before the change whose formula uses its name.
   *
   * @param layer the index of the layer that gave that value
   */
  record Inherited(Place place, int layer) implements Meaning {}

  /**
   * An argument of the function.
   *
   * @param index counted from 0
   */
  record Parameter(int index) implements Meaning {}

  /**
   * No line or column, or several lines. This is not reported at once: callers often look for a
   * table or a setting of that name next. {@link NameBinder#unclear} reports it.
   *
   * @param candidates the lines that it can mean; empty if there is none
   */
  record Unclear(List<Line> candidates) implements Meaning {}
}
