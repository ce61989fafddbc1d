package org.battenbook.export;

import java.util.List;
import java.util.function.Consumer;

/** The rows of a page: its title, its tables, then its lines. */
final class PageRows implements SheetRows {
  private final SheetPlan plan;
  private final PlaceCells places;

  PageRows(SheetPlan plan, PlaceCells places) {
    this.plan = plan;
    this.places = places;
  }

  @Override
  public void each(Consumer<List<SheetCell>> row) {
    row.accept(List.of(SheetCell.words(0, 0, Look.TITLE, plan.page().title())));
    if (!plan.page().note().isEmpty()) {
      row.accept(List.of(SheetCell.words(1, 0, Look.NOTE, plan.page().note())));
    }
    List<LineBlock> above = plan.lines().stream().filter(this::isAbove).toList();
    List<LineBlock> below = plan.lines().stream().filter(b -> !isAbove(b)).toList();
    above.forEach(block -> new LineRows(plan, block, places).each(row));
    plan.tables()
        .values()
        .forEach(table -> new TableRows(table, plan.hasSubtitles(), places).each(row));
    below.forEach(block -> new LineRows(plan, block, places).each(row));
  }

  private boolean isAbove(LineBlock block) {
    return plan.tables().values().stream().allMatch(t -> block.headingRow() < t.headingRow());
  }
}
