package org.battenbook.export.file;

import org.apache.poi.ss.formula.SheetNameFormatter;
import org.apache.poi.ss.util.CellReference;

/**
 * The address of a cell.
 *
 * @param sheet the sheet's name
 * @param row counted from 0
 * @param column counted from 0
 */
public record Address(String sheet, int row, int column) {

  /** A relative reference from a sheet: it moves along when its formula is copied. */
  public String seenFrom(String otherSheet) {
    return prefix(otherSheet) + letters() + (row + 1);
  }

  /** An absolute reference from a sheet: it stays the same wherever its formula is copied. */
  public String fixedFrom(String otherSheet) {
    return prefix(otherSheet) + fixed();
  }

  /** An absolute reference from a sheet to the cells from here down to a row. */
  public String rangeFrom(String otherSheet, int lastRow) {
    return fixedFrom(otherSheet) + ":" + new Address(sheet, lastRow, column).fixed();
  }

  private String fixed() {
    return "$" + letters() + "$" + (row + 1);
  }

  private String letters() {
    return CellReference.convertNumToColString(column);
  }

  private String prefix(String otherSheet) {
    return sheet.equals(otherSheet) ? "" : SheetNameFormatter.format(sheet) + "!";
  }
}
