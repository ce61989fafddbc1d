package org.battenbook.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.RowsSection;

/** Rows as lines of a workbook, with their bars one below the other. */
final class RowLines {
  static final String BAR = " | ";

  private RowLines() {}

  /**
   * A line to stand under headings that are there.
   *
   * @param columns those of the headings, and those that are added behind them
   * @param row the text of each cell that is filled in
   */
  static String under(RowsSection section, List<Column> columns, Map<Column, String> row) {
    SourceText source = section.span().source();
    List<Integer> starts = section.headings().stream().map(h -> h.span().start()).toList();
    List<Integer> widths =
        IntStream.range(0, starts.size() - 1)
            .mapToObj(i -> starts.get(i + 1) - starts.get(i) - BAR.length())
            .toList();
    return line(indentation(starts.get(0), source), cells(row, columns), widths);
  }

  /** Lines with headings of their own: {@code rows of}, headings, rows. */
  static List<String> block(String indentation, Table table, List<Map<Column, String>> rows) {
    List<Column> columns = columns(table, rows);
    List<List<String>> lines = new ArrayList<>();
    lines.add(columns.stream().map(Column::name).map(Name::text).toList());
    rows.forEach(row -> lines.add(cells(row, columns)));
    List<Integer> widths =
        IntStream.range(0, columns.size() - 1)
            .mapToObj(i -> lines.stream().mapToInt(line -> length(line.get(i))).max().orElse(0))
            .toList();
    List<String> block = new ArrayList<>();
    block.add(indentation + "rows of " + table);
    lines.forEach(line -> block.add(line(indentation + "  ", line, widths)));
    return block;
  }

  /** The columns that some rows fill in, in the order of their table. */
  static List<Column> columns(Table table, List<Map<Column, String>> rows) {
    return table.columns().stream()
        .filter(column -> rows.stream().anyMatch(row -> row.containsKey(column)))
        .toList();
  }

  private static List<String> cells(Map<Column, String> row, List<Column> columns) {
    return columns.stream().map(column -> row.getOrDefault(column, "")).toList();
  }

  /** Every cell but the last is as wide as its column, unless it is wider. */
  private static String line(String indentation, List<String> cells, List<Integer> widths) {
    StringBuilder line = new StringBuilder(indentation);
    for (int i = 0; i < cells.size(); i++) {
      line.append(i == 0 ? "" : BAR).append(cells.get(i));
      int width = i < widths.size() ? widths.get(i) : 0;
      line.append(" ".repeat(Math.max(0, width - length(cells.get(i)))));
    }
    return line.toString().stripTrailing();
  }

  /** The characters of a text as a person counts them. */
  static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  /** What stands before an offset in its line, if that is blank. */
  static String indentation(int offset, SourceText source) {
    String before = source.text().substring(source.lineStart(source.line(offset)), offset);
    return before.isBlank() ? before : "";
  }
}
