package org.battenbook.export;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of one file: one for each look and format, made when first asked for. */
final class Styles {
  private static final String FONT = "Arial";
  private static final short POINTS = 10;
  private static final short TITLE_POINTS = 14;
  private static final String PAPER = "FAF5E6";
  private static final String SAWDUST = "EADFC4";
  private static final String INK = "2B2B2B";
  private static final String PENCIL = "6E6A62";

  private record Key(Look look, String format, boolean quoted) {}

  private final XSSFWorkbook workbook;
  private final Map<Key, XSSFCellStyle> styles = new HashMap<>();
  private final Map<Look, XSSFFont> fonts = new HashMap<>();

  Styles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    XSSFFont usual = workbook.getFontAt(0);
    usual.setFontName(FONT);
    usual.setFontHeightInPoints(POINTS);
  }

  /**
   * A style.
   *
   * @param quoted whether a text must not be taken for a formula when it is edited
   */
  XSSFCellStyle style(Look look, String format, boolean quoted) {
    return styles.computeIfAbsent(new Key(look, format, quoted), this::make);
  }

  private XSSFCellStyle make(Key key) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(fonts.computeIfAbsent(key.look, this::font));
    style.setDataFormat(workbook.createDataFormat().getFormat(key.format));
    style.setQuotePrefixed(key.quoted);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setWrapText(key.format.equals(NumberFormats.TEXT));
    switch (key.look) {
      case HEADING -> heading(style);
      case GIVEN -> fill(style, PAPER);
      case OVERRIDDEN -> fill(style, SAWDUST);
      case TITLE, NOTE, NAME, WORKED_OUT, FIXED, UNIT -> {}
    }
    return style;
  }

  private static void heading(XSSFCellStyle style) {
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.BOTTOM);
    style.setAlignment(HorizontalAlignment.LEFT);
    style.setBorderBottom(BorderStyle.MEDIUM);
    style.setBottomBorderColor(color(INK));
  }

  private static void fill(XSSFCellStyle style, String rgb) {
    style.setFillForegroundColor(color(rgb));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
  }

  private XSSFFont font(Look look) {
    XSSFFont font = workbook.createFont();
    font.setFontName(FONT);
    font.setFontHeightInPoints(look == Look.TITLE ? TITLE_POINTS : POINTS);
    font.setBold(look == Look.TITLE || look == Look.HEADING);
    font.setItalic(look == Look.FIXED);
    font.setColor(color(look == Look.NOTE || look == Look.UNIT ? PENCIL : INK));
    return font;
  }

  private static XSSFColor color(String rgb) {
    int value = Integer.parseInt(rgb, 16);
    byte[] parts = {(byte) (value >> 16), (byte) (value >> 8), (byte) value};
    return new XSSFColor(parts, null);
  }
}
