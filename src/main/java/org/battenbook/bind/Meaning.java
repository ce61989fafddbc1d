package org.battenbook.bind;

import org.battenbook.book.Place;

/** What a name means where it stands. */
public sealed interface Meaning {

  /** A line, or a column read in the row at hand. */
  record Found(Place place) implements Meaning {}

  /** The value that a place had before the change in which its own name stands. */
  record Inherited(Place place, int layer) implements Meaning {}

  /** An argument of the function, counted from 0. */
  record Parameter(int index) implements Meaning {}

  /** Nothing, or more than one thing. */
  record Unclear(String code, String message, String repair) implements Meaning {}
}
