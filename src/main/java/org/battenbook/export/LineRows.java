package org.battenbook.export;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import org.battenbook.bind.Spot;
import org.battenbook.book.Line;
import org.battenbook.export.file.Address;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.file.Look;
import org.battenbook.export.file.NumberFormats;
import org.battenbook.export.file.SheetCell;
import org.battenbook.export.file.SheetRows;
import org.battenbook.export.formula.FormulaContext;
import org.battenbook.export.layout.LineBlock;
import org.battenbook.export.layout.SheetLayout;

/**
 * The rows of a page's lines: name, value, unit, formula, and note. If the page has tables, the
 * note shares the column of the formula, because the next column is as wide as the tables need it.
 */
final class LineRows implements SheetRows {
  private final SheetLayout layout;
  private final LineBlock block;
  private final PlaceCells places;

  LineRows(SheetLayout layout, LineBlock block, PlaceCells places) {
    this.layout = layout;
    this.block = block;
    this.places = places;
  }

  @Override
  public void each(Consumer<List<SheetCell>> row) {
    row.accept(headings());
    for (int i = 0; i < block.lines().size(); i++) {
      row.accept(line(block.lines().get(i), block.row(i)));
    }
  }

  private List<SheetCell> headings() {
    int row = block.headingRow();
    List<SheetCell> cells = new ArrayList<>();
    Collections.addAll(
        cells,
        SheetCell.words(row, SheetLayout.NAME, Look.HEADING, "line"),
        SheetCell.words(row, SheetLayout.VALUE, Look.NUMBER_HEADING, "value\n(box = input)"),
        SheetCell.words(row, SheetLayout.UNIT, Look.HEADING, "unit"),
        SheetCell.words(row, SheetLayout.WRITTEN, Look.HEADING, "formula"));
    if (layout.isOfLines()) {
      cells.add(SheetCell.words(row, SheetLayout.NOTE, Look.HEADING, "note"));
    }
    return cells;
  }

  private List<SheetCell> line(Line line, int row) {
    Address at = new Address(layout.name(), row, SheetLayout.VALUE);
    List<SheetCell> cells = new ArrayList<>();
    cells.add(SheetCell.words(row, SheetLayout.NAME, Look.NAME, line.name().text()));
    cells.add(places.cell(new Spot(line, 0), at, FormulaContext.ofLine(layout.name())));
    cells.add(SheetCell.words(row, SheetLayout.UNIT, Look.UNIT, places.unit(line)));
    String note = PlaceRemarks.note(line);
    if (layout.isOfLines()) {
      remark(row, SheetLayout.WRITTEN, PlaceRemarks.written(line), NumberFormats.TEXT, cells);
      remark(row, SheetLayout.NOTE, note, NumberFormats.TEXT, cells);
    } else {
      String words = PlaceRemarks.written(line) + (note.isEmpty() ? "" : "  -- " + note);
      remark(row, SheetLayout.WRITTEN, words, NumberFormats.GENERAL, cells);
    }
    return cells;
  }

  private static void remark(
      int row, int column, String words, String format, List<SheetCell> cells) {
    if (!words.isEmpty()) {
      cells.add(new SheetCell(row, column, new CellContent.Words(words), Look.NOTE, format, ""));
    }
  }
}
