package org.battenbook.export.file;

import java.time.LocalDate;

/** What stands in a cell. */
public sealed interface CellContent {

  /** Nothing but its look. */
  record Blank() implements CellContent {}

  /** A text; one that begins like a formula stays a text. */
  record Words(String text) implements CellContent {}

  /** A number in the unit that its column or line is shown in. */
  record Figure(double number) implements CellContent {}

  record Truth(boolean yes) implements CellContent {}

  record Day(LocalDate date) implements CellContent {}

  /** What spreadsheets show for a value that there is none of. */
  record Missing() implements CellContent {}

  /**
   * A live formula.
   *
   * @param text without a leading equals sign
   * @param array whether it is worked out over whole columns at once
   * @param cached what it gives, for programs that do not work it out
   */
  record Formula(String text, boolean array, CellContent cached) implements CellContent {}
}
