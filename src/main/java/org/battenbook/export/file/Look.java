package org.battenbook.export.file;

/** How a cell looks, by the part that it plays. */
public enum Look {
  TITLE,
  SUBTITLE,
  /** Of a column of texts, or of lines. */
  HEADING,
  /** Of a column of numbers, which stand to the right. */
  NUMBER_HEADING,
  /** The name of a line, or of a row. */
  NAME,
  /** A value that a person filled in. */
  GIVEN,
  /** A value that a formula gives. */
  WORKED_OUT,
  /** A value that a person filled in where a formula would give one. */
  OVERRIDDEN,
  /** A value that stands instead of a formula, with a note that says why. */
  FIXED,
  UNIT,
  /** The name of a value that stands elsewhere. */
  LINK,
  NOTE
}
