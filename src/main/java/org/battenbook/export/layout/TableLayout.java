package org.battenbook.export.layout;

import java.util.LinkedHashMap;
import java.util.Map;
import org.battenbook.bind.Rows;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.export.file.Address;

/**
 * The layout of a table in its sheet: the key column first, then the columns that it shows first.
 */
public final class TableLayout {
  private final Table table;
  private final int rowCount;
  private final String sheet;
  private final int headingRow;
  private final int firstFreeColumn;
  private final Map<Column, Integer> columns = new LinkedHashMap<>();

  /**
   * Lays out a table.
   *
   * @param firstFreeColumn the first column of the sheet that no table uses
   */
  TableLayout(Rows rows, String sheet, int headingRow, int firstFreeColumn) {
    this.table = rows.table();
    this.rowCount = rows.count();
    this.sheet = sheet;
    this.headingRow = headingRow;
    this.firstFreeColumn = firstFreeColumn;
    columns.put(table.keyColumn(), 0);
    table.shownFirst().forEach(column -> columns.putIfAbsent(column, columns.size()));
    table.columns().forEach(column -> columns.putIfAbsent(column, columns.size()));
  }

  public Table table() {
    return table;
  }

  public int rowCount() {
    return rowCount;
  }

  public String sheet() {
    return sheet;
  }

  public int headingRow() {
    return headingRow;
  }

  /** The row of the sheet that holds a row of the table. */
  int sheetRow(int row) {
    return headingRow + 1 + row;
  }

  /** The columns in order, each with its column in the sheet. */
  public Map<Column, Integer> columns() {
    return columns;
  }

  /** The first row below the table. A table without rows takes one row. */
  int end() {
    return sheetRow(Math.max(1, rowCount));
  }

  public Address cell(Column column, int row) {
    return cell(place(column), row);
  }

  /** The cell in a column of the sheet, counted from 0, beside a row of the table. */
  public Address cell(int column, int row) {
    return new Address(sheet, sheetRow(row), column);
  }

  /** An absolute reference from a sheet to all cells of a column. */
  public String range(Column column, String from) {
    return range(place(column), from);
  }

  /** An absolute reference from a sheet to the cells in one of its columns beside all rows. */
  public String range(int column, String from) {
    return cell(column, 0).rangeFrom(from, end() - 1);
  }

  /** The first column of the sheet that no table uses. */
  public int firstFreeColumn() {
    return firstFreeColumn;
  }

  /** The heading of the key column. Formulas count rows from it. */
  public Address corner() {
    return new Address(sheet, headingRow, 0);
  }

  private int place(Column column) {
    Integer place = columns.get(column);
    if (place == null) {
      throw new IllegalArgumentException(column + " is not a column of " + table);
    }
    return place;
  }
}
