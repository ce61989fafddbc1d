package org.battenbook.keep;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.RowsSection;

/** The lines of new rows, their bars one below the other. */
final class NewRows {
  private static final String BAR = " | ";

  private NewRows() {}

  /** Lines to stand under headings that are there. */
  static List<String> under(RowsSection section, List<Column> columns, List<NewRow> rows) {
    SourceText source = section.span().source();
    List<Integer> starts =
        section.headings().stream().map(Name::span).map(span -> span.start()).toList();
    List<Integer> widths =
        IntStream.range(0, starts.size() - 1)
            .mapToObj(i -> starts.get(i + 1) - starts.get(i) - BAR.length())
            .toList();
    String indentation = indentation(starts.get(0), source);
    return rows.stream().map(row -> line(indentation, cells(row, columns), widths)).toList();
  }

  /** Lines with headings of their own: {@code rows of}, headings, rows. */
  static List<String> block(String indentation, Table table, List<NewRow> rows) {
    List<Column> columns = columns(table, rows);
    List<List<String>> lines = new ArrayList<>();
    lines.add(columns.stream().map(column -> column.name().text()).toList());
    rows.forEach(row -> lines.add(cells(row, columns)));
    List<Integer> widths =
        IntStream.range(0, columns.size() - 1)
            .mapToObj(i -> lines.stream().mapToInt(line -> line.get(i).length()).max().orElse(0))
            .toList();
    List<String> block = new ArrayList<>();
    block.add(indentation + "rows of " + table);
    lines.forEach(line -> block.add(line(indentation + "  ", line, widths)));
    return block;
  }

  /** Those that rows fill in, in the order of their table. */
  static List<Column> columns(Table table, List<NewRow> rows) {
    return table.columns().stream()
        .filter(column -> rows.stream().anyMatch(row -> row.cells().containsKey(column)))
        .toList();
  }

  private static List<String> cells(NewRow row, List<Column> columns) {
    return columns.stream().map(column -> row.cells().getOrDefault(column, "")).toList();
  }

  /** Every cell but the last as wide as its column, where it is not wider. */
  private static String line(String indentation, List<String> cells, List<Integer> widths) {
    StringBuilder line = new StringBuilder(indentation);
    for (int i = 0; i < cells.size(); i++) {
      line.append(i == 0 ? "" : BAR).append(cells.get(i));
      int width = i < widths.size() ? widths.get(i) : 0;
      line.append(" ".repeat(Math.max(0, width - cells.get(i).length())));
    }
    return line.toString().stripTrailing();
  }

  /** What stands before an offset in its line, where that is blank. */
  static String indentation(int offset, SourceText source) {
    String before = source.text().substring(source.lineStart(source.line(offset)), offset);
    return before.isBlank() ? before : "";
  }
}
