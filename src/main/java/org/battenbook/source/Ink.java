package org.battenbook.source;

/** What a part of a printed line is for. A terminal may show each in a color of its own. */
public enum Ink {
  PLAIN,
  HEADING,
  FAULT,
  CAUTION,
  ASIDE
}
