package org.battenbook.export.file;

/** The look of a cell, named after what the cell is for. */
public enum Look {
  TITLE,
  SUBTITLE,
  /** The heading of a column of texts, or of lines. */
  HEADING,
  /** The heading of a column of numbers, which are aligned to the right. */
  NUMBER_HEADING,
  /** The name of a line, or of a row. */
  NAME,
  /** A value that a person entered. */
  GIVEN,
  /** A value that a formula calculates. */
  WORKED_OUT,
  /** A value that a person entered in place of a formula. */
  OVERRIDDEN,
  /** A calculated value without a formula. A comment says why. */
  FIXED,
  UNIT,
  /** A text that links to another cell. */
  LINK,
  NOTE
}
