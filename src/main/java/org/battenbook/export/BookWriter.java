package org.battenbook.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a file, the same bytes for the same book. */
final class BookWriter {
  private static final String TIME = "2000-01-01T00:00:00Z";
  private static final float LINE_POINTS = 13.5f;
  private static final int CHARACTER = 256;

  /** So many characters across a page can still be read. */
  private static final int LEGIBLE = 200;

  private static final int WIDEST = 255;
  private static final int LONGEST_TEXT = 32_767;
  private static final int COMMENT_CHARACTERS = 36;

  private final XSSFWorkbook workbook;
  private final Styles styles;

  private BookWriter(XSSFWorkbook workbook) {
    this.workbook = workbook;
    this.styles = new Styles(workbook);
  }

  /** Writes a book as an .xlsx file (ISO/IEC 29500); the stream is left open. */
  static void write(Book book, OutputStream out) throws IOException {
    ByteArrayOutputStream zip = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      new BookWriter(workbook).write(book);
      workbook.write(zip);
    }
    StableZip.copy(zip, out);
  }

  private void write(Book book) {
    properties(book.title());
    book.sheets().forEach(sheet -> workbook.createSheet(sheet.name()));
    book.names().forEach(this::name);
    book.sheets().forEach(this::sheet);
  }

  private void properties(String title) {
    POIXMLProperties properties = workbook.getProperties();
    POIXMLProperties.CoreProperties core = properties.getCoreProperties();
    core.setTitle(title);
    core.setCreator("Battenbook");
    time(core);
    properties.getExtendedProperties().setApplication("Battenbook");
  }

  /** One fixed time: the file says nothing of when it was written. */
  private static void time(POIXMLProperties.CoreProperties core) {
    try {
      core.setCreated(TIME);
      core.setModified(TIME);
    } catch (InvalidFormatException e) {
      throw new IllegalStateException(e);
    }
  }

  private void name(String name, String address) {
    XSSFName defined = workbook.createName();
    defined.setNameName(name);
    defined.setRefersToFormula(address);
  }

  private void sheet(Sheet sheet) {
    XSSFSheet target = workbook.getSheet(sheet.name());
    sheet.cells().forEach(cell -> cell(target, cell));
    sheet
        .widths()
        .forEach(
            (column, width) -> target.setColumnWidth(column, Math.min(width, WIDEST) * CHARACTER));
    sheet
        .heights()
        .forEach((row, lines) -> row(target, row).setHeightInPoints(lines * LINE_POINTS + 1));
    sheet.hidden().forEach(column -> target.setColumnHidden(column, true));
    target.createFreezePane(sheet.frozenColumns(), sheet.frozenRows());
    print(target, sheet);
  }

  /** On paper: headings and names on every page, and no wider than a page if it stays legible. */
  private static void print(XSSFSheet target, Sheet sheet) {
    int width = sheet.widths().values().stream().mapToInt(Integer::intValue).sum();
    target.setFitToPage(width <= LEGIBLE);
    target.getPrintSetup().setFitHeight((short) 0);
    target.getPrintSetup().setLandscape(true);
    target.getPrintSetup().setLeftToRight(width > LEGIBLE);
    target.getFooter().setLeft("&A");
    target.getFooter().setRight("&P / &N");
    if (sheet.frozenRows() > 0) {
      int heading = sheet.frozenRows() - 1;
      target.setRepeatingRows(new CellRangeAddress(heading, heading, -1, -1));
    }
    if (width > LEGIBLE) {
      target.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, sheet.frozenColumns() - 1));
    }
  }

  private void cell(XSSFSheet target, SheetCell cell) {
    XSSFCell written = row(target, cell.row()).createCell(cell.column());
    if (cell.content() instanceof CellContent.Formula formula) {
      formula(target, cell, formula);
      value(written, formula.cached());
    } else {
      value(written, cell.content());
    }
    written.setCellStyle(styles.of(cell));
    if (!cell.comment().isEmpty()) {
      comment(target, cell);
    }
  }

  private static void formula(XSSFSheet target, SheetCell cell, CellContent.Formula formula) {
    if (formula.array()) {
      target.setArrayFormula(
          formula.text(),
          new CellRangeAddress(cell.row(), cell.row(), cell.column(), cell.column()));
    } else {
      row(target, cell.row()).getCell(cell.column()).setCellFormula(formula.text());
    }
  }

  /** Sets a cell's value, or that which its formula gave. */
  private static void value(XSSFCell cell, CellContent content) {
    if (content instanceof CellContent.Figure figure) {
      cell.setCellValue(figure.number());
    } else if (content instanceof CellContent.Words words) {
      cell.setCellValue(words.text().substring(0, Math.min(words.text().length(), LONGEST_TEXT)));
    } else if (content instanceof CellContent.Truth truth) {
      cell.setCellValue(truth.yes());
    } else if (content instanceof CellContent.Day day) {
      cell.setCellValue(day.date());
    } else if (content instanceof CellContent.Missing) {
      cell.setCellErrorValue(FormulaError.NA);
    }
  }

  private void comment(XSSFSheet target, SheetCell cell) {
    int lines = 1 + Lines.count(cell.comment(), COMMENT_CHARACTERS);
    ClientAnchor anchor =
        new XSSFClientAnchor(
            0, 0, 0, 0, cell.column() + 1, cell.row(), cell.column() + 4, cell.row() + lines);
    Comment comment = target.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(workbook.getCreationHelper().createRichTextString(cell.comment()));
    comment.setAddress(cell.row(), cell.column());
  }

  private static XSSFRow row(XSSFSheet target, int row) {
    XSSFRow found = target.getRow(row);
    return found != null ? found : target.createRow(row);
  }
}
