package org.battenbook.export;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import org.battenbook.bind.Spot;
import org.battenbook.book.Line;

/**
 * The rows of a page's lines: name, value, unit, the formula as written, and the note. Beside
 * tables, whose columns are not made for it, the note goes on behind the formula.
 */
final class LineRows implements SheetRows {
  private final SheetPlan plan;
  private final LineBlock block;
  private final PlaceCells places;

  LineRows(SheetPlan plan, LineBlock block, PlaceCells places) {
    this.plan = plan;
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
        SheetCell.words(row, SheetPlan.NAME, Look.HEADING, "line"),
        SheetCell.words(row, SheetPlan.VALUE, Look.NUMBER_HEADING, "value\n(boxed: given)"),
        SheetCell.words(row, SheetPlan.UNIT, Look.HEADING, "unit"),
        SheetCell.words(row, SheetPlan.WRITTEN, Look.HEADING, "as written"));
    if (plan.isOfLines()) {
      cells.add(SheetCell.words(row, SheetPlan.NOTE, Look.HEADING, "note"));
    }
    return cells;
  }

  private List<SheetCell> line(Line line, int row) {
    Address at = new Address(plan.name(), row, SheetPlan.VALUE);
    List<SheetCell> cells = new ArrayList<>();
    cells.add(SheetCell.words(row, SheetPlan.NAME, Look.NAME, line.name().text()));
    cells.add(places.cell(new Spot(line, 0), at, Standing.ofLine(plan.name())));
    cells.add(SheetCell.words(row, SheetPlan.UNIT, Look.UNIT, places.unit(line)));
    String note = Remarks.note(line);
    if (plan.isOfLines()) {
      remark(row, SheetPlan.WRITTEN, Remarks.written(line), NumberFormats.TEXT, cells);
      remark(row, SheetPlan.NOTE, note, NumberFormats.TEXT, cells);
    } else {
      String words = Remarks.written(line) + (note.isEmpty() ? "" : "  -- " + note);
      remark(row, SheetPlan.WRITTEN, words, NumberFormats.GENERAL, cells);
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
