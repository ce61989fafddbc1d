package org.battenbook.export;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.battenbook.bind.Spot;
import org.battenbook.book.Line;

/** The rows of a page's lines: name, value, unit, the formula as written, and the note. */
final class LineRows implements Sheet.Rows {
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
    row.accept(headings(block.headingRow()));
    for (int i = 0; i < block.lines().size(); i++) {
      row.accept(line(block.lines().get(i), block.row(i)));
    }
  }

  private static List<SheetCell> headings(int row) {
    return List.of(
        SheetCell.words(row, SheetPlan.NAME, Look.HEADING, "line"),
        SheetCell.words(row, SheetPlan.VALUE, Look.NUMBER_HEADING, "value\n(boxed: given)"),
        SheetCell.words(row, SheetPlan.UNIT, Look.HEADING, "unit"),
        SheetCell.words(row, SheetPlan.WRITTEN, Look.HEADING, "as written"),
        SheetCell.words(row, SheetPlan.NOTE, Look.HEADING, "note"));
  }

  private List<SheetCell> line(Line line, int row) {
    Address at = new Address(plan.name(), row, SheetPlan.VALUE);
    List<SheetCell> cells = new ArrayList<>();
    cells.add(SheetCell.words(row, SheetPlan.NAME, Look.NAME, line.name().text()));
    cells.add(places.cell(new Spot(line, 0), at, Standing.ofLine(plan.name())));
    cells.add(SheetCell.words(row, SheetPlan.UNIT, Look.UNIT, places.unit(line)));
    remark(row, SheetPlan.WRITTEN, Remarks.written(line), cells);
    remark(row, SheetPlan.NOTE, Remarks.note(line), cells);
    return cells;
  }

  private void remark(int row, int column, String words, List<SheetCell> cells) {
    if (!words.isEmpty()) {
      cells.add(
          new SheetCell(
              row, column, new CellContent.Words(words), Look.NOTE, plan.remarkFormat(), ""));
    }
  }
}
