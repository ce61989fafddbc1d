package org.battenbook.export.file;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.io.output.CloseShieldOutputStream;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.TempFile;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;

/** Writes a spreadsheet file. The same content gives the same bytes. */
public final class SpreadsheetWriter {
  private static final String TIME = "2000-01-01T00:00:00Z";
  private static final float LINE_POINTS = 13.5f;
  private static final int CHARACTER = 256;

  /** The most characters across a page that can still be read. */
  private static final int LEGIBLE = 200;

  private static final int WIDEST = 255;
  private static final int LONGEST_TEXT = 32_767;
  private static final int COMMENT_CHARACTERS = 36;

  private final StreamedWorkbook workbook;
  private final Styles styles;
  private final WritingProgress progress;
  private int written;

  private SpreadsheetWriter(StreamedWorkbook workbook, WritingProgress progress) {
    this.workbook = workbook;
    this.progress = progress;
    this.styles = new Styles(workbook.getXSSFWorkbook());
  }

  /** Writes an .xlsx file (ISO/IEC 29500). The stream stays open. */
  public static void write(FileContent book, OutputStream out, WritingProgress progress)
      throws IOException {
    try (TemporaryFolder folder = TemporaryFolder.open()) {
      TempFile.withStrategy(folder, () -> streamed(book, out, progress));
    } catch (UncheckedIOException failure) {
      throw failure.getCause();
    }
  }

  private static int streamed(FileContent book, OutputStream out, WritingProgress progress) {
    try (StreamedWorkbook workbook = new StreamedWorkbook()) {
      SpreadsheetWriter writer = new SpreadsheetWriter(workbook, progress);
      writer.write(book);
      workbook.write(CloseShieldOutputStream.wrap(out));
      return writer.written;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private void write(FileContent book) {
    properties(book.title());
    book.sheets().forEach(sheet -> workbook.createSheet(sheet.name()));
    book.names().forEach(this::name);
    int all = book.sheets().stream().mapToInt(SheetContent::end).sum();
    book.sheets().forEach(sheet -> sheet(sheet, all));
  }

  private void properties(String title) {
    POIXMLProperties properties = workbook.getXSSFWorkbook().getProperties();
    POIXMLProperties.CoreProperties core = properties.getCoreProperties();
    core.setTitle(title);
    core.setCreator("Battenbook");
    time(core);
    properties.getExtendedProperties().setApplication("Battenbook");
  }

  /** The time is fixed, so that the bytes do not depend on when the file is written. */
  private static void time(POIXMLProperties.CoreProperties core) {
    try {
      core.setCreated(TIME);
      core.setModified(TIME);
    } catch (InvalidFormatException e) {
      throw new IllegalStateException(e);
    }
  }

  private void name(String name, String address) {
    Name defined = workbook.createName();
    defined.setNameName(name);
    defined.setRefersToFormula(address);
  }

  private void sheet(SheetContent sheet, int all) {
    SXSSFSheet target = workbook.getSheet(sheet.name());
    sheet
        .widths()
        .columns()
        .forEach(
            (column, width) -> target.setColumnWidth(column, Math.min(width, WIDEST) * CHARACTER));
    sheet.hidden().forEach(column -> target.setColumnHidden(column, true));
    target.createFreezePane(1, sheet.frozenRows());
    workbook.setPrintArea(
        workbook.getSheetIndex(target), 0, sheet.columns() - 1, 0, Math.max(0, sheet.end() - 1));
    print(target, sheet);
    sheet
        .rows()
        .each(
            cells -> {
              row(target, cells, sheet.widths().lines(cells));
              progress.rows(++written, all);
            });
  }

  /**
   * On paper, each page repeats the headings. A sheet is fitted to the width of a page if it stays
   * legible; if not, each page also repeats the first column.
   */
  private static void print(SXSSFSheet target, SheetContent sheet) {
    boolean legible = sheet.widths().total() <= LEGIBLE;
    target.setFitToPage(legible);
    target.getPrintSetup().setFitHeight((short) 0);
    target.getPrintSetup().setLandscape(true);
    target.getPrintSetup().setLeftToRight(!legible);
    target.getFooter().setLeft("&A");
    target.getFooter().setRight("&P / &N");
    if (sheet.frozenRows() > 0) {
      int heading = sheet.frozenRows() - 1;
      target.setRepeatingRows(new CellRangeAddress(heading, heading, -1, -1));
    }
    if (!legible) {
      target.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
    }
  }

  private void row(SXSSFSheet target, List<SheetCell> cells, int lines) {
    Row row = target.createRow(cells.get(0).row());
    if (lines > 1) {
      row.setHeightInPoints(lines * LINE_POINTS + 1);
    }
    cells.forEach(cell -> cell(target, row, cell));
  }

  private void cell(SXSSFSheet target, Row row, SheetCell cell) {
    Cell written = row.createCell(cell.column());
    if (cell.content() instanceof CellContent.Formula formula) {
      written.setCellFormula(formula.array() ? ArrayFormulas.mark(formula.text()) : formula.text());
    }
    value(written, cell.seen());
    written.setCellStyle(styles.of(cell));
    if (!cell.comment().isEmpty()) {
      comment(target, cell);
    }
    if (!cell.link().isEmpty()) {
      Hyperlink link = workbook.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
      link.setAddress(cell.link());
      written.setHyperlink(link);
    }
  }

  /** Sets the value of a cell, or the cached value of its formula. */
  private static void value(Cell cell, CellContent content) {
    if (content instanceof CellContent.Figure figure) {
      cell.setCellValue(figure.number());
    } else if (content instanceof CellContent.Words words) {
      cell.setCellValue(words.text().substring(0, Math.min(words.text().length(), LONGEST_TEXT)));
    } else if (content instanceof CellContent.Truth truth) {
      cell.setCellValue(truth.yes());
    } else if (content instanceof CellContent.Day day) {
      cell.setCellValue(day.date());
    } else if (content instanceof CellContent.Missing) {
      cell.setCellErrorValue(FormulaError.NA.getCode());
    }
  }

  private void comment(SXSSFSheet target, SheetCell cell) {
    int lines = 1 + Lines.count(cell.comment(), COMMENT_CHARACTERS);
    ClientAnchor anchor =
        new XSSFClientAnchor(
            0, 0, 0, 0, cell.column() + 1, cell.row(), cell.column() + 4, cell.row() + lines);
    Comment comment = target.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(workbook.getCreationHelper().createRichTextString(cell.comment()));
    comment.setAddress(cell.row(), cell.column());
  }
}
