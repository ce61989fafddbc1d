package org.battenbook.bound;

import java.util.Locale;

/**
 * How large a workbook and what it names may be. A workbook may come from anyone: one that is
 * larger is refused before the work is done. No shop needs as much, and whatever is within all
 * bounds fits into 512 MB. The section <em>Bounds</em> of LANGUAGE.md says the same.
 */
public enum Bound {
  WORKBOOK_FILE("a workbook file", 16, "MB"),
  WORKBOOK_FILES("workbooks of a job", 200, ""),
  WORKBOOK_TEXT("all workbooks of a job together", 32_000_000, "characters"),
  FOLLOWS_CHAIN("workbooks that follow each other in a chain", 32, ""),
  STATEMENTS("statements of a job, such as lines and columns; rows do not count", 20_000, ""),
  STATEMENT_TEXT("text of the statements of a job, without its rows", 2_000_000, "characters"),
  LINE("a line, with the lines that continue it", 100_000, "characters"),
  NAME("a name", 200, "characters"),
  NESTING("brackets, choices and functions inside one another", 200, ""),
  TERMS("operators in a row, and dots", 1_000, ""),
  OPERATIONS("operations of a formula, with functions written out", 10_000, ""),
  ALL_OPERATIONS("operations of all formulas of a job, with functions written out", 500_000, ""),
  WRITTEN_DIGITS("a number that is written", 100, "digits"),
  BINARY_DIGITS("a number that is calculated", 20_000, "binary digits"),
  ALL_BINARY_DIGITS(
      "numbers of more than 1 000 binary digits, together", 20_000_000, "binary digits"),
  TEXT("a text that is calculated", 32_767, "characters"),
  ALL_TEXTS(
      "texts that are calculated, together; each counts as at least 50", 20_000_000, "characters"),
  TABLE_ROWS("rows of a table", 200_000, ""),
  ALL_ROWS("rows of all tables together", 500_000, ""),
  TABLE_COLUMNS("columns of a table", 1_000, ""),
  CELLS("cells of all tables together; each rule counts as a column", 4_000_000, ""),
  STEPS("operations calculated in a fill, for all rows together", 500_000_000, ""),
  LIST_FILE("a list: a .csv or .xlsx file", 16, "MB"),
  LIST_UNPACKED("what an .xlsx list unpacks to", 128, "MB"),
  LIST_PARTS("parts of an .xlsx list", 1_000, ""),
  LIST_ROWS("rows of a list", 200_000, ""),
  LIST_COLUMNS("columns of a list", 1_000, ""),
  LIST_CELL("a cell of a list", 32_767, "characters"),
  LIST_LINE("a line of a .csv list", 1_000_000, "characters"),
  LIST_CELLS("filled cells of all lists of a job together", 2_000_000, ""),
  IMAGE_HEAD("the start of an image file, which has its size", 4, "MB"),
  IMAGES("image files of a job", 20_000, ""),
  STICK_PIECES("parts of one material in a stick plan", 100_000, ""),
  SHEET_PIECES("parts of one material in a sheet plan", 10_000, ""),
  PLAN_KINDS("different parts, and different stock, of one material", 2_000, ""),
  PLANNING_TIME("planning time of a job, shared by its materials", 5, "min");

  private final String what;
  private final int most;
  private final String unit;

  Bound(String what, int most, String unit) {
    this.what = what;
    this.most = most;
    this.unit = unit;
  }

  /** What is bounded, in the words of LANGUAGE.md. */
  public String what() {
    return what;
  }

  /** The most there may be, in the unit of {@link #shown}. */
  public int most() {
    return most;
  }

  /** The most there may be in bytes, of a bound in megabytes. */
  public int mostBytes() {
    return most << 20;
  }

  /** Whether so many are more than there may be. */
  public boolean isPassedBy(long many) {
    return many > most;
  }

  /** The most there may be as people read it: {@code 200,000}, {@code 16 MB}. */
  public String shown() {
    String number = String.format(Locale.ROOT, "%,d", most);
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
