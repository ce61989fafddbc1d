package org.battenbook.export.file;

import java.time.LocalDate;

/** The content of a cell. */
public sealed interface CellContent {

  /** An empty cell that has a look. */
  record Blank() implements CellContent {}

  /** A text. It stays a text even if it begins like a formula. */
  record Words(String text) implements CellContent {}

  /** A number, in the unit that its line or column is shown in. */
  record Figure(double number) implements CellContent {}

  record Truth(boolean yes) implements CellContent {}

  record Day(LocalDate date) implements CellContent {}

  /** A missing value. Spreadsheets show an error. */
  record Missing() implements CellContent {}

  /**
   * A live formula.
   *
   * @param text without a leading equals sign
   * @param array whether it is an array formula, which reads whole columns
   * @param cached its value, for programs that do not recalculate
   */
  record Formula(String text, boolean array, CellContent cached) implements CellContent {}
}
