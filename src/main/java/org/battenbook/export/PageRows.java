package org.battenbook.export;

import java.util.List;
import java.util.function.Consumer;
import org.battenbook.export.file.Look;
import org.battenbook.export.file.SheetCell;
import org.battenbook.export.file.SheetRows;
import org.battenbook.export.layout.LineBlock;
import org.battenbook.export.layout.SheetLayout;

/** The rows of a page: its title, the lines above its tables, the tables, and the other lines. */
final class PageRows implements SheetRows {
  private final SheetLayout layout;
  private final PlaceCells places;

  PageRows(SheetLayout layout, PlaceCells places) {
    this.layout = layout;
    this.places = places;
  }

  @Override
  public void each(Consumer<List<SheetCell>> row) {
    row.accept(List.of(SheetCell.words(0, 0, Look.TITLE, layout.page().title())));
    if (!layout.page().note().isEmpty()) {
      row.accept(List.of(SheetCell.words(1, 0, Look.NOTE, layout.page().note())));
    }
    List<LineBlock> above = layout.lines().stream().filter(this::isAbove).toList();
    List<LineBlock> below = layout.lines().stream().filter(b -> !isAbove(b)).toList();
    above.forEach(block -> new LineRows(layout, block, places).each(row));
    layout
        .tables()
        .values()
        .forEach(table -> new TableBlockRows(table, layout.hasSubtitles(), places).each(row));
    below.forEach(block -> new LineRows(layout, block, places).each(row));
  }

  private boolean isAbove(LineBlock block) {
    return layout.tables().values().stream().allMatch(t -> block.headingRow() < t.headingRow());
  }
}
