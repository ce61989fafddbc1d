package org.battenbook.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.battenbook.workbook.Filled;

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
   * @throws IOException when the stream cannot be written, or a page has more rows or columns than
   *     a sheet may have
   */
  public static void write(Filled filled, OutputStream out) throws IOException {
    write(filled, out, (written, all) -> {});
  }

  /** Is told how far the writing is. */
  public interface Progress {
    /**
     * So many rows are written.
     *
     * @param all how many there will be
     */
    void rows(int written, int all);
  }

  /** Writes a file, and tells how far it is with each row. */
  public static void write(Filled filled, OutputStream out, Progress progress) throws IOException {
    BookPlan plan = new BookPlan(filled.checked());
    for (SheetPlan sheet : plan.sheets()) {
      SheetLimits.check(sheet);
    }
    BookWriter.write(book(filled, plan), out, progress);
  }

  private static Book book(Filled filled, BookPlan plan) {
    PlaceReads reads = new PlaceReads(plan, filled.results());
    PlaceCells places = new PlaceCells(reads);
    List<Sheet.Rows> rows = new ArrayList<>();
    plan.sheets().forEach(sheet -> rows.add(rows(sheet, reads, places)));
    List<Widths> widths = rows.stream().map(Widths::of).toList();
    List<Sheet> sheets = new ArrayList<>();
    for (SheetPlan sheet : plan.sheets()) {
      int index = sheets.size();
      sheets.add(sheet(sheet, rows.get(index), widths.get(index)));
    }
    sheets.add(derivations(plan.derivations(), places));
    return new Book(filled.title(), sheets, plan.addresses());
  }

  private static Sheet.Rows rows(SheetPlan sheet, PlaceReads reads, PlaceCells places) {
    return row -> {
      new PageRows(sheet, places).each(row);
      sheet.rules().forEach(rules -> new RuleRows(rules, sheet, reads).each(row));
    };
  }

  /** To be asked for when all sheets have been gone through: then all helper columns are known. */
  private static Sheet sheet(SheetPlan plan, Sheet.Rows rows, Widths widths) {
    TreeSet<Integer> hidden = new TreeSet<>();
    plan.tables()
        .values()
        .forEach(table -> table.helpers().forEach(helper -> hidden.add(helper.column())));
    return new Sheet(
        plan.name(), rows, widths, hidden, plan.frozenRows(), plan.visibleColumns(), plan.end());
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
