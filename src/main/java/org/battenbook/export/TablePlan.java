package org.battenbook.export;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.battenbook.bind.Rows;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.operation.SpreadsheetText;

/** Where a table stands in its sheet: the key's column first, then the ticket's. */
final class TablePlan {
  private final Table table;
  private final int rowCount;
  private final String sheet;
  private final int headingRow;
  private final int firstHelper;
  private final Map<Column, Integer> columns = new LinkedHashMap<>();
  private final Map<Object, HelperColumn> helpersByUse = new HashMap<>();
  private final List<HelperColumn> helpers = new ArrayList<>();

  /**
   * Places a table.
   *
   * @param firstHelper the first of the sheet's columns that no table shows
   */
  TablePlan(Rows rows, String sheet, int headingRow, int firstHelper) {
    this.table = rows.table();
    this.rowCount = rows.count();
    this.sheet = sheet;
    this.headingRow = headingRow;
    this.firstHelper = firstHelper;
    columns.put(table.keyColumn(), 0);
    table.ticket().forEach(column -> columns.putIfAbsent(column, columns.size()));
    table.columns().forEach(column -> columns.putIfAbsent(column, columns.size()));
  }

  Table table() {
    return table;
  }

  int rowCount() {
    return rowCount;
  }

  String sheet() {
    return sheet;
  }

  int headingRow() {
    return headingRow;
  }

  /** The row of the sheet that a row of the table stands in. */
  int sheetRow(int row) {
    return headingRow + 1 + row;
  }

  /** The columns in their order, each with its place in the sheet. */
  Map<Column, Integer> columns() {
    return columns;
  }

  /** The first row below the table; an empty table keeps one row free. */
  int end() {
    return sheetRow(Math.max(1, rowCount));
  }

  List<HelperColumn> helpers() {
    return helpers;
  }

  Address cell(Column column, int row) {
    return new Address(sheet, sheetRow(row), place(column));
  }

  Address cell(HelperColumn helper, int row) {
    return new Address(sheet, sheetRow(row), helper.column());
  }

  /** All cells of a column, as a formula on a sheet names them. */
  String range(Column column, String from) {
    return cell(column, 0).rangeFrom(from, end() - 1);
  }

  String range(HelperColumn helper, String from) {
    return cell(helper, 0).rangeFrom(from, end() - 1);
  }

  /** The heading of the key's column: rows are counted from it. */
  Address corner() {
    return new Address(sheet, headingRow, 0);
  }

  /**
   * The helper column for a use, made when it is first asked for.
   *
   * @param use what tells it from others
   */
  HelperColumn helper(
      Object use,
      String heading,
      boolean array,
      IntFunction<SpreadsheetText> formula,
      IntFunction<CellContent> value) {
    HelperColumn known = helpersByUse.get(use);
    if (known != null) {
      return known;
    }
    int column = firstHelper + helpers.size();
    HelperColumn made = new HelperColumn(heading, column, array, formula, value);
    helpersByUse.put(use, made);
    helpers.add(made);
    return made;
  }

  private int place(Column column) {
    Integer place = columns.get(column);
    if (place == null) {
      throw new IllegalArgumentException(column + " is not a column of " + table);
    }
    return place;
  }
}
