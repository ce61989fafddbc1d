package org.battenbook.export.file;

import org.apache.poi.ss.formula.SheetNameFormatter;
import org.apache.poi.ss.util.CellReference;

/**
 * Where a cell stands.
 *
 * @param sheet the sheet's name
 * @param row counted from 0
 * @param column counted from 0
 */
public record Address(String sheet, int row, int column) {

  /** As a formula on a sheet names it, to be read along when the formula is copied downward. */
  public String seenFrom(String otherSheet) {
    return prefix(otherSheet) + letters() + (row + 1);
  }

  /** As a formula on a sheet names it, wherever it is copied. */
  public String fixedFrom(String otherSheet) {
    return prefix(otherSheet) + fixed();
  }

  /** The cells from here down to a row, as a formula on a sheet names them. */
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
