package org.battenbook.export;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.export.file.Address;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.file.Look;
import org.battenbook.export.file.NumberFormats;
import org.battenbook.export.file.SheetCell;
import org.battenbook.export.file.SheetRows;
import org.battenbook.export.formula.FormulaContext;
import org.battenbook.export.formula.HelperColumn;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.value.Kind;

/** The rows of a table in its sheet: the headings, then one row for each row of the table. */
final class TableBlockRows implements SheetRows {
  private final TableLayout table;
  private final boolean subtitled;
  private final PlaceCells places;

  TableBlockRows(TableLayout table, boolean subtitled, PlaceCells places) {
    this.table = table;
    this.subtitled = subtitled;
    this.places = places;
  }

  @Override
  public void each(Consumer<List<SheetCell>> row) {
    if (subtitled) {
      row.accept(subtitle());
    }
    row.accept(headings());
    for (int i = 0; i < table.rowCount(); i++) {
      row.accept(values(i));
    }
  }

  private List<SheetCell> subtitle() {
    int row = table.headingRow() - 1;
    SheetCell name = SheetCell.words(row, 0, Look.SUBTITLE, table.table().name().text());
    String note = table.table().note();
    return note.isEmpty() ? List.of(name) : List.of(name, SheetCell.words(row, 1, Look.NOTE, note));
  }

  private List<SheetCell> headings() {
    List<SheetCell> cells = new ArrayList<>();
    table.columns().forEach((column, at) -> cells.add(heading(column, at)));
    for (HelperColumn helper : places.helpers(table)) {
      cells.add(SheetCell.words(table.headingRow(), helper.column(), Look.NOTE, helper.heading()));
    }
    return cells;
  }

  /** The name and unit of a column. A comment holds all remarks on it. */
  private SheetCell heading(Column column, int at) {
    String unit = places.unit(column);
    String words = column.name().text() + below(isBoxed(column) ? "input" : "") + below(unit);
    return new SheetCell(
        table.headingRow(),
        at,
        new CellContent.Words(words),
        places.kind(column) instanceof Kind.Measured ? Look.NUMBER_HEADING : Look.HEADING,
        NumberFormats.GENERAL,
        PlaceRemarks.all(column));
  }

  /** Whether people enter its values, row by row. */
  private static boolean isBoxed(Column column) {
    return column.isGiven() && !column.comesWithRow();
  }

  private static String below(String words) {
    return words.isEmpty() ? "" : "\n" + words;
  }

  private List<SheetCell> values(int row) {
    List<SheetCell> cells = new ArrayList<>();
    FormulaContext context = FormulaContext.inRow(table, row);
    for (Column column : table.columns().keySet()) {
      cells.add(places.cell(new Spot(column, row), table.cell(column, row), context));
    }
    // The formula of one helper column may add the next one to the list.
    List<HelperColumn> helpers = places.helpers(table);
    for (int h = 0; h < helpers.size(); h++) {
      cells.add(helper(helpers.get(h), row));
    }
    return cells;
  }

  private static SheetCell helper(HelperColumn helper, int row) {
    Address at = helper.cell(row);
    return new SheetCell(
        at.row(), at.column(), helper.content(row), Look.NOTE, NumberFormats.GENERAL, "");
  }
}
