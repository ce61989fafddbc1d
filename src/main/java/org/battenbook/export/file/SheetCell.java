package org.battenbook.export.file;

/**
 * A cell of a sheet.
 *
 * @param row counted from 0
 * @param column counted from 0
 * @param format the code of a number format
 * @param comment shown when someone points at the cell; may be empty
 * @param link the address of the cell that a click leads to; may be empty
 */
public record SheetCell(
    int row,
    int column,
    CellContent content,
    Look look,
    String format,
    String comment,
    String link) {

  /** A cell without a link. */
  public SheetCell(
      int row, int column, CellContent content, Look look, String format, String comment) {
    this(row, column, content, look, format, comment, "");
  }

  /** The same cell with a link to another one. */
  public SheetCell linkedTo(String address) {
    return new SheetCell(row, column, content, look, format, comment, address);
  }

  /** What people see in it: its content, or the value of its formula. */
  CellContent seen() {
    return content instanceof CellContent.Formula formula ? formula.cached() : content;
  }

  boolean isHeading() {
    return look == Look.HEADING || look == Look.NUMBER_HEADING;
  }

  /** Whether a text that is too long for the column is broken into lines. */
  boolean wraps() {
    return isHeading() || format.equals(NumberFormats.TEXT);
  }

  /** A text in the general format. */
  public static SheetCell words(int row, int column, Look look, String text) {
    return new SheetCell(row, column, new CellContent.Words(text), look, NumberFormats.GENERAL, "");
  }
}
