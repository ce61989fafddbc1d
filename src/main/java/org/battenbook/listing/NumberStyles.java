package org.battenbook.listing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.battenbook.number.PlainDecimal;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** What numbers of an .xlsx file stand for: a date is a number with a date's format. */
final class NumberStyles {
  private final Map<Integer, String> formats = new HashMap<>();
  private final List<Integer> formatOfStyle = new ArrayList<>();
  private boolean from1904;

  /** A cell's number as it would be typed: a decimal, or a date {@code 2026-03-14}. */
  String text(double number, int style) {
    int format = style < formatOfStyle.size() ? formatOfStyle.get(style) : 0;
    String code = formats.getOrDefault(format, BuiltinFormats.getBuiltinFormat(format));
    boolean isDate = DateUtil.isADateFormat(format, code) && DateUtil.isValidExcelDate(number);
    return isDate ? date(number) : PlainDecimal.of(number);
  }

  private String date(double number) {
    String time = DateUtil.getLocalDateTime(number, from1904).toString();
    return time.endsWith("T00:00") ? time.substring(0, time.indexOf('T')) : time;
  }

  /** Takes the formats, and the format of each style, out of the file's styles. */
  DefaultHandler partsOfStyles() {
    return new DefaultHandler() {
      private boolean inCellStyles;
      private boolean inFormats;

      @Override
      public void startElement(String space, String element, String name, Attributes of) {
        switch (element) {
          case "numFmts" -> inFormats = true;
          case "cellXfs" -> inCellStyles = true;
          case "numFmt" -> {
            if (inFormats) {
              formats.put(number(of, "numFmtId"), String.valueOf(of.getValue("formatCode")));
            }
          }
          case "xf" -> {
            if (inCellStyles) {
              formatOfStyle.add(number(of, "numFmtId"));
            }
          }
          default -> {}
        }
      }

      @Override
      public void endElement(String space, String element, String name) {
        inFormats &= !element.equals("numFmts");
        inCellStyles &= !element.equals("cellXfs");
      }
    };
  }

  /** Takes the year from which days are counted out of the file's settings. */
  DefaultHandler partsOfWorkbook() {
    return new DefaultHandler() {
      @Override
      public void startElement(String space, String element, String name, Attributes of) {
        if (element.equals("workbookPr")) {
          String setting = String.valueOf(of.getValue("date1904"));
          from1904 = setting.equals("1") || setting.equals("true");
        }
      }
    };
  }

  private static int number(Attributes of, String name) {
    String value = of.getValue(name);
    return value == null ? 0 : Integer.parseInt(value);
  }
}
