package org.battenbook.export;

/**
 * A cell of a sheet.
 *
 * @param row counted from 0
 * @param column counted from 0
 * @param format a number format's code
 * @param comment shown beside the cell when it is pointed at; empty for none
 */
record SheetCell(
    int row, int column, CellContent content, Look look, String format, String comment) {

  static SheetCell words(int row, int column, Look look, String text) {
    return new SheetCell(row, column, new CellContent.Words(text), look, NumberFormats.GENERAL, "");
  }
}
