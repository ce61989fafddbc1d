package org.battenbook.export.file;

/**
 * A cell of a sheet.
 *
 * @param row counted from 0
 * @param column counted from 0
 * @param format a number format's code
 * @param comment shown beside the cell when it is pointed at; empty for none
 * @param link the cell of the file that it leads to when it is clicked; empty for none
 */
public record SheetCell(
    int row,
    int column,
    CellContent content,
    Look look,
    String format,
    String comment,
    String link) {

  /** A cell that leads nowhere. */
  public SheetCell(
      int row, int column, CellContent content, Look look, String format, String comment) {
    this(row, column, content, look, format, comment, "");
  }

  /** The same cell, leading to another one. */
  public SheetCell linkedTo(String address) {
    return new SheetCell(row, column, content, look, format, comment, address);
  }

  /** What is seen in it: its value, or that of its formula. */
  CellContent seen() {
    return content instanceof CellContent.Formula formula ? formula.cached() : content;
  }

  boolean isHeading() {
    return look == Look.HEADING || look == Look.NUMBER_HEADING;
  }

  /** Whether it is broken into lines where it is too long for its column. */
  boolean wraps() {
    return isHeading() || format.equals(NumberFormats.TEXT);
  }

  public static SheetCell words(int row, int column, Look look, String text) {
    return new SheetCell(row, column, new CellContent.Words(text), look, NumberFormats.GENERAL, "");
  }
}
