package org.battenbook.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.battenbook.evaluate.Results;
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

  /** Writes an .xlsx file (ISO/IEC 29500), the same bytes for the same workbook. */
  public static void write(Filled filled, OutputStream out) throws IOException {
    BookWriter.write(book(filled), out);
  }

  private static Book book(Filled filled) {
    Results results = filled.results();
    BookPlan plan = new BookPlan(filled.checked());
    PlaceCells places = new PlaceCells(new PlaceReads(plan, results));
    List<SheetBuilder> sheets =
        plan.sheets().stream()
            .map(sheet -> new SheetBuilder(sheet, filled.checked(), places))
            .toList();
    sheets.forEach(SheetBuilder::addVisible);
    sheets.forEach(SheetBuilder::addHelpers);
    return new Book(
        filled.title(), sheets.stream().map(SheetBuilder::build).toList(), plan.addresses());
  }
}
