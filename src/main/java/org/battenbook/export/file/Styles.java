package org.battenbook.export.file;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FontUnderline;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of one file. Each style is made when a cell first needs it. */
final class Styles {
  private static final String FONT = "Arial";
  private static final short POINTS = 10;
  private static final short TITLE_POINTS = 14;
  private static final short SUBTITLE_POINTS = 11;
  private static final String INK = "2B2B2B";
  private static final String PENCIL = "6E6A62";

  /** What a style depends on. */
  private record Key(
      Look look, String format, Alignment alignment, boolean wraps, boolean quoted) {}

  /** How the content of a cell is aligned. */
  private enum Alignment {
    /** As programs do it: numbers to the right, texts to the left. */
    USUAL,
    /** A text with some space between it and the number to its left. */
    INDENTED,
    CENTERED
  }

  private final XSSFWorkbook workbook;
  private final Map<Key, XSSFCellStyle> styles = new HashMap<>();
  private final Map<Look, XSSFFont> fonts = new HashMap<>();

  Styles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    XSSFFont usual = workbook.getFontAt(0);
    usual.setFontName(FONT);
    usual.setFontHeightInPoints(POINTS);
  }

  /** The style of a cell. */
  XSSFCellStyle of(SheetCell cell) {
    Key key =
        new Key(cell.look(), cell.format(), alignment(cell), cell.wraps(), looksLikeFormula(cell));
    return styles.computeIfAbsent(key, this::make);
  }

  private static Alignment alignment(SheetCell cell) {
    if (cell.seen() instanceof CellContent.Truth) {
      return Alignment.CENTERED;
    }
    boolean words = cell.seen() instanceof CellContent.Words && cell.look() != Look.NUMBER_HEADING;
    return words && cell.column() > 0 ? Alignment.INDENTED : Alignment.USUAL;
  }

  /** Whether a program could take a text for a formula when someone edits it. */
  private static boolean looksLikeFormula(SheetCell cell) {
    return cell.content() instanceof CellContent.Words words
        && !words.text().isEmpty()
        && "=+-@\t\r\n".indexOf(words.text().charAt(0)) >= 0;
  }

  private XSSFCellStyle make(Key key) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(fonts.computeIfAbsent(key.look, this::font));
    style.setDataFormat(workbook.createDataFormat().getFormat(key.format));
    style.setQuotePrefixed(key.quoted);
    style.setWrapText(key.wraps);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    align(style, key.alignment);
    switch (key.look) {
      case HEADING -> heading(style);
      case NUMBER_HEADING -> {
        heading(style);
        style.setAlignment(HorizontalAlignment.RIGHT);
      }
      case GIVEN -> box(style, BorderStyle.THIN);
      case OVERRIDDEN -> box(style, BorderStyle.DASHED);
      case TITLE, SUBTITLE, NOTE, NAME, WORKED_OUT, FIXED, UNIT, LINK -> {}
    }
    return style;
  }

  private static void align(XSSFCellStyle style, Alignment alignment) {
    switch (alignment) {
      case USUAL -> {}
      case CENTERED -> style.setAlignment(HorizontalAlignment.CENTER);
      case INDENTED -> {
        style.setAlignment(HorizontalAlignment.LEFT);
        style.setIndention((short) 1);
      }
    }
  }

  private static void heading(XSSFCellStyle style) {
    style.setVerticalAlignment(VerticalAlignment.BOTTOM);
    style.setBorderBottom(BorderStyle.MEDIUM);
    style.setBottomBorderColor(color(INK));
  }

  /** A box around a value that people may change. */
  private static void box(XSSFCellStyle style, BorderStyle line) {
    style.setBorderTop(line);
    style.setBorderBottom(line);
    style.setBorderLeft(line);
    style.setBorderRight(line);
    style.setTopBorderColor(color(PENCIL));
    style.setBottomBorderColor(color(PENCIL));
    style.setLeftBorderColor(color(PENCIL));
    style.setRightBorderColor(color(PENCIL));
  }

  private XSSFFont font(Look look) {
    XSSFFont font = workbook.createFont();
    font.setFontName(FONT);
    font.setFontHeightInPoints(POINTS);
    font.setColor(color(INK));
    switch (look) {
      case TITLE -> bold(font, TITLE_POINTS);
      case SUBTITLE -> bold(font, SUBTITLE_POINTS);
      case HEADING, NUMBER_HEADING -> bold(font, POINTS);
      case FIXED -> font.setItalic(true);
      case NOTE, UNIT -> font.setColor(color(PENCIL));
      case LINK -> font.setUnderline(FontUnderline.SINGLE);
      case NAME, GIVEN, WORKED_OUT, OVERRIDDEN -> {}
    }
    return font;
  }

  private static void bold(XSSFFont font, short points) {
    font.setBold(true);
    font.setFontHeightInPoints(points);
  }

  private static XSSFColor color(String rgb) {
    int value = Integer.parseInt(rgb, 16);
    byte[] parts = {(byte) (value >> 16), (byte) (value >> 8), (byte) value};
    return new XSSFColor(parts, null);
  }
}
