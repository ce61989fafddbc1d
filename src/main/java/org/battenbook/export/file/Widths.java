package org.battenbook.export.file;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The widths of columns and heights of rows that a sheet needs to show everything. */
public final class Widths {
  private static final int WIDEST_TEXT = 60;
  private static final int NARROWEST = 7;
  private static final int HEADING_LINES = 4;
  private static final int ROOM = 2;
  private static final int FRACTION = 6;
  private static final int GENERAL_DIGITS = 11;
  private static final int DATE = 10;

  private final SortedMap<Integer, Integer> columns = new TreeMap<>();
  private final int widestText;

  private Widths(int widestText) {
    this.widestText = widestText;
  }

  /** Measures all cells of a sheet. */
  public static Widths of(SheetRows rows) {
    return of(rows, WIDEST_TEXT);
  }

  /**
   * Measures all cells of a sheet.
   *
   * @param widestText the widest that texts make a column, in characters
   */
  public static Widths of(SheetRows rows, int widestText) {
    Widths widths = new Widths(widestText);
    rows.each(row -> row.forEach(widths::widen));
    return widths;
  }

  /** The width of each column, in characters. */
  SortedMap<Integer, Integer> columns() {
    return columns;
  }

  /** The width of all columns together, in characters. */
  int total() {
    return columns.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** The height that a row needs, in lines of text. */
  int lines(List<SheetCell> row) {
    return row.stream().mapToInt(this::lines).reduce(1, Math::max);
  }

  private void widen(SheetCell cell) {
    if (spreads(cell)) {
      return;
    }
    int needed = (cell.isHeading() ? heading(text(cell.content())) : needed(cell)) + ROOM;
    columns.merge(cell.column(), Math.max(NARROWEST, needed), Math::max);
  }

  /** Whether a text runs on over the empty cells beside it: a title or a remark. */
  private static boolean spreads(SheetCell cell) {
    return cell.look() == Look.TITLE
        || cell.look() == Look.SUBTITLE
        || (cell.look() == Look.NOTE && !cell.format().equals(NumberFormats.TEXT));
  }

  /** The width of a heading. Bold letters are wider. */
  private static int heading(String text) {
    int longest = Lines.longestWord(text) * 6 / 5 + 2;
    return Math.max(longest, text.length() / HEADING_LINES + 1);
  }

  private int needed(SheetCell cell) {
    CellContent content = cell.seen();
    if (content instanceof CellContent.Figure figure) {
      return figure(figure.number(), cell.format());
    }
    return content instanceof CellContent.Day ? DATE : Math.min(text(content).length(), widestText);
  }

  private static int figure(double number, String format) {
    int whole = Long.toString((long) number).length() + (number < 0 ? 1 : 0);
    if (format.equals(NumberFormats.GENERAL)) {
      boolean isWhole = number == Math.rint(number);
      return isWhole ? whole : Math.min(Double.toString(number).length(), GENERAL_DIGITS);
    }
    int places = format.length() - 1 - format.indexOf('.');
    int grouping = format.startsWith("#,") ? whole / 3 : 0;
    return format.contains("?") ? whole + FRACTION : whole + places + 1 + grouping;
  }

  private static String text(CellContent content) {
    if (content instanceof CellContent.Words words) {
      return words.text();
    }
    return content instanceof CellContent.Blank ? "" : "FALSE";
  }

  /**
   * The lines of a cell. Letters are narrower than the digits that widths count; bold ones are not.
   */
  private int lines(SheetCell cell) {
    if (cell.wraps() && cell.content() instanceof CellContent.Words words) {
      int width = columns.getOrDefault(cell.column(), NARROWEST) - ROOM;
      int letters = cell.isHeading() ? width : width * 9 / 8;
      return Lines.count(words.text(), Math.max(1, letters));
    }
    return 1;
  }
}
