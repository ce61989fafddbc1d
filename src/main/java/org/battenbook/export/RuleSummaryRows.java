package org.battenbook.export;

import java.util.List;
import java.util.function.Consumer;
import org.battenbook.export.file.Address;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.file.Look;
import org.battenbook.export.file.NumberFormats;
import org.battenbook.export.file.SheetCell;
import org.battenbook.export.file.SheetRows;
import org.battenbook.export.layout.RuleLayout;
import org.battenbook.export.layout.RuleSheetLayout;
import org.battenbook.export.layout.SheetLayout;

/**
 * The summary of rules on the first sheet: how many requirements fail, how many cautions apply, and
 * the messages of the requirements that failed when the job was exported.
 */
final class RuleSummaryRows implements SheetRows {
  /** How many messages are shown here. The sheet of rules shows the others. */
  private static final int TOLD = 12;

  private final RuleSheetLayout layout;
  private final int free;
  private final RuleCounts counts;

  /**
   * The rows of a summary.
   *
   * @param free the first free row of its sheet
   */
  RuleSummaryRows(RuleSheetLayout layout, int free, RuleCounts counts) {
    this.layout = layout;
    this.free = free;
    this.counts = counts;
  }

  @Override
  public void each(Consumer<List<SheetCell>> row) {
    int at = free + 1;
    for (RuleLayout block : layout.blocks()) {
      row.accept(total(block, at++));
    }
    for (String message : broken()) {
      row.accept(List.of(SheetCell.words(at++, SheetLayout.NAME, Look.NOTE, message)));
    }
  }

  /** How many rows the summary takes, with the empty row above it. */
  int count() {
    return layout.blocks().isEmpty() ? 0 : 1 + layout.blocks().size() + broken().size();
  }

  private List<String> broken() {
    return layout.blocks().stream()
        .filter(RuleLayout::isRequired)
        .flatMap(block -> block.rules().stream())
        .flatMap(ruled -> counts.messages(ruled, TOLD).stream())
        .limit(TOLD)
        .toList();
  }

  private List<SheetCell> total(RuleLayout block, int row) {
    String words = block.isRequired() ? "checks that fail" : "cautions that apply";
    String there = new Address(layout.sheet(), block.headingRow(), RuleLayout.OF).seenFrom("");
    CellContent sum =
        new CellContent.Formula("SUM(" + layout.counts(block) + ")", false, counts.all(block));
    return List.of(
        SheetCell.words(row, SheetLayout.NAME, Look.LINK, words).linkedTo(there),
        new SheetCell(row, SheetLayout.VALUE, sum, Look.WORKED_OUT, NumberFormats.GENERAL, ""));
  }
}
