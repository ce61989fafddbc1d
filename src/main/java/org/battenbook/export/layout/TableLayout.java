package org.battenbook.export.layout;

import java.util.LinkedHashMap;
import java.util.Map;
import org.battenbook.bind.Rows;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.export.file.Address;

/** Where a table stands in its sheet: the key's column first, then the ticket's. */
public final class TableLayout {
  private final Table table;
  private final int rowCount;
  private final String sheet;
  private final int headingRow;
  private final int firstFreeColumn;
  private final Map<Column, Integer> columns = new LinkedHashMap<>();

  /**
   * Places a table.
   *
   * @param firstFreeColumn the first of the sheet's columns that no table shows
   */
  TableLayout(Rows rows, String sheet, int headingRow, int firstFreeColumn) {
    this.table = rows.table();
    this.rowCount = rows.count();
    this.sheet = sheet;
    this.headingRow = headingRow;
    this.firstFreeColumn = firstFreeColumn;
    columns.put(table.keyColumn(), 0);
    table.ticket().forEach(column -> columns.putIfAbsent(column, columns.size()));
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

  /** The row of the sheet that a row of the table stands in. */
  int sheetRow(int row) {
    return headingRow + 1 + row;
  }

  /** The columns in their order, each with its place in the sheet. */
  public Map<Column, Integer> columns() {
    return columns;
  }

  /** The first row below the table; an empty table keeps one row free. */
  int end() {
    return sheetRow(Math.max(1, rowCount));
  }

  public Address cell(Column column, int row) {
    return cell(place(column), row);
  }

  /** The cell of one of the sheet's columns, counted from 0, beside a row. */
  public Address cell(int column, int row) {
    return new Address(sheet, sheetRow(row), column);
  }

  /** All cells of a column, as a formula on a sheet names them. */
  public String range(Column column, String from) {
    return range(place(column), from);
  }

  /**
   * The cells of one of the sheet's columns beside all rows, as a formula on a sheet names them.
   */
  public String range(int column, String from) {
    return cell(column, 0).rangeFrom(from, end() - 1);
  }

  /** The first of the sheet's columns that no table shows. */
  public int firstFreeColumn() {
    return firstFreeColumn;
  }

  /** The heading of the key's column: rows are counted from it. */
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
