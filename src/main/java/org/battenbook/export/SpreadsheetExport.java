package org.battenbook.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.battenbook.workbook.Filled;
import org.jspecify.annotations.Nullable;

/**
 * A filled workbook as a spreadsheet file.
 *
 * <p>Each page is a sheet; each line and each column that is worked out is a live formula beside
 * the value that it gives, so that the file recalculates to the workbook's values. Numbers are in
 * the units that the workbook shows. What a spreadsheet cannot work out to the very value is
 * written as a value, with a comment that says why.
 */
public final class SpreadsheetExport {
  private SpreadsheetExport() {}

  /**
   * Writes an .xlsx file (ISO/IEC 29500), the same bytes for the same workbook; the stream is left
   * open.
   *
   * @return the values that are written as values, without a formula
   * @throws IOException when the stream cannot be written, or a page has more rows or columns than
   *     a sheet may have
   * @throws org.battenbook.workbook.PlansPending when plans are still to be made
   */
  public static List<Fixed> write(Filled filled, OutputStream out) throws IOException {
    return write(filled, out, (written, all) -> {});
  }

  /**
   * A value that is written as a value though a formula works it out.
   *
   * @param place as people say it
   * @param reason why no formula of a spreadsheet says it
   */
  public record Fixed(String place, String reason) {}

  /** Is told how far the writing is. */
  public interface Progress {
    /**
     * So many rows are written.
     *
     * @param all how many there will be
     */
    void rows(int written, int all);
  }

  /** Writes a file as above, and tells how far it is with each row. */
  public static List<Fixed> write(Filled filled, OutputStream out, Progress progress)
      throws IOException {
    filled.requirePlans();
    BookPlan plan = new BookPlan(filled.checked(), filled.results());
    for (SheetPlan sheet : plan.sheets()) {
      SheetLimits.check(sheet);
    }
    PlaceReads reads = new PlaceReads(plan, filled.results());
    PlaceCells places = new PlaceCells(reads);
    BookWriter.write(book(filled.title(), plan, reads, places), out, progress);
    List<Fixed> fixed = new ArrayList<>();
    places
        .fixed()
        .forEach(
            (spot, reason) ->
                fixed.add(new Fixed(filled.results().decisions().words(spot), reason)));
    return fixed;
  }

  private static Book book(String title, BookPlan plan, PlaceReads reads, PlaceCells places) {
    List<Pending> pending = new ArrayList<>();
    for (SheetPlan sheet : plan.sheets()) {
      pending.add(page(sheet, pending.isEmpty() ? plan.rules() : null, reads, places));
    }
    List<Sheet> sheets = new ArrayList<>(pending.stream().map(Pending::sheet).toList());
    if (!plan.rules().blocks().isEmpty()) {
      sheets.add(rules(plan.rules(), reads));
    }
    sheets.add(derivations(plan.derivations(), places));
    return new Book(title, sheets, plan.addresses());
  }

  /** A page that was gone through once: only when all were are all helper columns known. */
  private record Pending(SheetPlan plan, Sheet.Rows rows, Widths widths, int end) {
    Sheet sheet() {
      TreeSet<Integer> hidden = new TreeSet<>();
      plan.tables()
          .values()
          .forEach(table -> table.helpers().forEach(helper -> hidden.add(helper.column())));
      return new Sheet(
          plan.name(), rows, widths, hidden, plan.frozenRows(), plan.visibleColumns(), end);
    }
  }

  /** A page's sheet; on the first one stands what is to be known of the rules. */
  private static Pending page(
      SheetPlan plan, @Nullable RuleSheetPlan rules, PlaceReads reads, PlaceCells places) {
    Sheet.Rows page = new PageRows(plan, places);
    if (rules == null) {
      return new Pending(plan, page, Widths.of(page), plan.end());
    }
    RuleSummaryRows summary =
        new RuleSummaryRows(rules, plan.end(), new RuleCounts(reads.results()));
    Sheet.Rows both =
        row -> {
          page.each(row);
          summary.each(row);
        };
    return new Pending(plan, both, Widths.of(both), plan.end() + summary.count());
  }

  private static Sheet rules(RuleSheetPlan plan, PlaceReads reads) {
    Sheet.Rows rows =
        row -> {
          row.accept(List.of(SheetCell.words(0, 0, Look.TITLE, plan.sheet())));
          plan.blocks().forEach(block -> new RuleRows(block, plan.sheet(), reads).each(row));
        };
    return new Sheet(
        plan.sheet(), rows, Widths.of(rows), new TreeSet<>(), 1, RulePlan.SAYS + 1, plan.end());
  }

  private static Sheet derivations(DerivationPlan plan, PlaceCells places) {
    Sheet.Rows rows = new DerivationRows(plan, places);
    int headings = DerivationPlan.HEADING_ROW + 1;
    int columns = DerivationPlan.CHANGED + 1;
    return new Sheet(
        plan.sheet(),
        rows,
        Widths.of(rows, DerivationPlan.WIDEST_TEXT),
        new TreeSet<>(),
        headings,
        columns,
        plan.end());
  }
}
