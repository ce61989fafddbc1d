package org.battenbook.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.battenbook.book.Book;
import org.battenbook.book.Edition;
import org.battenbook.export.file.FileContent;
import org.battenbook.export.file.Look;
import org.battenbook.export.file.SheetCell;
import org.battenbook.export.file.SheetContent;
import org.battenbook.export.file.SheetRows;
import org.battenbook.export.file.SpreadsheetWriter;
import org.battenbook.export.file.Widths;
import org.battenbook.export.file.WritingProgress;
import org.battenbook.export.formula.FormulaTranslator;
import org.battenbook.export.layout.DerivationLayout;
import org.battenbook.export.layout.FileLayout;
import org.battenbook.export.layout.RuleLayout;
import org.battenbook.export.layout.RuleSheetLayout;
import org.battenbook.export.layout.SheetLayout;
import org.battenbook.export.layout.SheetLimits;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.workbook.Filled;

/**
 * A filled workbook as a spreadsheet file.
 *
 * <p>Each page is a sheet. Each calculated line and column is a live formula with its value stored
 * beside it, so the file recalculates to the workbook's values. Numbers are in the units that the
 * workbook shows. If a spreadsheet cannot calculate exactly the same value, the cell holds the
 * value and a comment that says why.
 */
public final class SpreadsheetExport {
  private final FormulaTranslator translator;
  private final PlaceCells places;

  private SpreadsheetExport(FormulaTranslator translator) {
    this.translator = translator;
    this.places = new PlaceCells(translator);
  }

  /**
   * Writes an .xlsx file (ISO/IEC 29500). The stream stays open.
   *
   * @return the calculated values that have no formula in the file
   * @throws IOException if the stream cannot be written, or a page has more rows or columns than a
   *     sheet may have
   * @throws org.battenbook.workbook.PlansPending if plans are still to be made
   */
  public static List<Fixed> write(Filled filled, OutputStream out) throws IOException {
    return write(filled, out, (written, all) -> {});
  }

  /**
   * A calculated value that has no formula in the file.
   *
   * @param place its place, as people write it
   * @param reason why no spreadsheet formula gives it
   */
  public record Fixed(String place, String reason) {}

  /** Writes the same file and reports each row. */
  public static List<Fixed> write(Filled filled, OutputStream out, WritingProgress progress)
      throws IOException {
    filled.requirePlans();
    FileLayout layout = new FileLayout(filled.checked().book(), filled.results());
    for (SheetLayout sheet : layout.sheets()) {
      SheetLimits.check(sheet);
    }
    SpreadsheetExport export =
        new SpreadsheetExport(new FormulaTranslator(layout, filled.results()));
    SpreadsheetWriter.write(export.content(filled.book()), out, progress);
    return export.fixed();
  }

  private List<Fixed> fixed() {
    List<Fixed> fixed = new ArrayList<>();
    places
        .fixed()
        .forEach(
            (spot, reason) ->
                fixed.add(new Fixed(translator.results().decisions().words(spot), reason)));
    return fixed;
  }

  private FileContent content(Book book) {
    FileLayout layout = translator.layout();
    List<MeasuredPage> pages = layout.sheets().stream().map(this::page).toList();
    List<SheetContent> sheets = new ArrayList<>(pages.stream().map(this::sheet).toList());
    if (!layout.rules().blocks().isEmpty()) {
      sheets.add(rules(layout.rules()));
    }
    sheets.add(derivations(layout.derivations(), book.editions()));
    return new FileContent(book.title(), sheets, layout.addresses());
  }

  /**
   * The rows of a page, with the widths that they need. To measure them, every formula is
   * translated once. Which helper columns there are is known only when this is done for all pages.
   *
   * @param end the first row below everything
   */
  private record MeasuredPage(SheetLayout layout, SheetRows rows, Widths widths, int end) {}

  private MeasuredPage page(SheetLayout sheet) {
    SheetRows rows = new PageRows(sheet, places);
    return isFirst(sheet)
        ? first(sheet, rows)
        : new MeasuredPage(sheet, rows, Widths.of(rows), sheet.end());
  }

  private boolean isFirst(SheetLayout sheet) {
    return sheet == translator.layout().sheets().get(0);
  }

  /** The first sheet also tells which checks fail and which cautions apply. */
  private MeasuredPage first(SheetLayout sheet, SheetRows page) {
    RuleCounts counts = new RuleCounts(translator.results());
    RuleSummaryRows summary = new RuleSummaryRows(translator.layout().rules(), sheet.end(), counts);
    SheetRows both =
        row -> {
          page.each(row);
          summary.each(row);
        };
    return new MeasuredPage(sheet, both, Widths.of(both), sheet.end() + summary.count());
  }

  private SheetContent sheet(MeasuredPage page) {
    SheetLayout layout = page.layout();
    TreeSet<Integer> hidden = new TreeSet<>();
    for (TableLayout table : layout.tables().values()) {
      translator.helpers(table).all().forEach(helper -> hidden.add(helper.column()));
    }
    return new SheetContent(
        layout.name(),
        page.rows(),
        page.widths(),
        hidden,
        layout.frozenRows(),
        layout.visibleColumns(),
        page.end());
  }

  private SheetContent rules(RuleSheetLayout layout) {
    SheetRows rows =
        row -> {
          row.accept(List.of(SheetCell.words(0, 0, Look.TITLE, layout.sheet())));
          layout.blocks().forEach(b -> new RuleRows(b, layout.sheet(), translator).each(row));
        };
    return new SheetContent(
        layout.sheet(),
        rows,
        Widths.of(rows),
        new TreeSet<>(),
        1,
        RuleLayout.SAYS + 1,
        layout.end());
  }

  private SheetContent derivations(DerivationLayout layout, List<Edition> editions) {
    SheetRows rows = new DerivationRows(layout, places, editions);
    return new SheetContent(
        layout.sheet(),
        rows,
        Widths.of(rows, DerivationLayout.WIDEST_TEXT),
        new TreeSet<>(),
        DerivationLayout.HEADING_ROW + 1,
        DerivationLayout.CHANGED + 1,
        layout.end());
  }
}
