package org.battenbook.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.battenbook.source.DisplayText;
import org.battenbook.source.Ink;
import org.battenbook.source.InkedText;

/**
 * Rows in aligned columns. A table wider than the page goes on below in a further block, which
 * begins with the first column again, as that one says whose values they are.
 */
final class TextTable {
  private static final String GAP = "  ";
  private static final int WIDEST_CELL = 60;

  private final List<Column> columns;
  private final List<List<List<String>>> rows = new ArrayList<>();
  private final int[] widths;

  TextTable(List<Column> columns) {
    this.columns = List.copyOf(columns);
    this.widths = columns.stream().mapToInt(c -> DisplayText.width(c.heading())).toArray();
  }

  /**
   * A column.
   *
   * @param toTheRight whether its cells end at the right, as numbers do
   */
  record Column(String heading, boolean toTheRight) {}

  /** Adds a row: one cell for each column; a long text goes on below itself. */
  void add(List<String> cells) {
    List<List<String>> row = cells.stream().map(c -> WrappedText.lines(c, WIDEST_CELL)).toList();
    for (int i = 0; i < widths.length; i++) {
      for (String line : row.get(i)) {
        widths[i] = Math.max(widths[i], DisplayText.width(line));
      }
    }
    rows.add(row);
  }

  /**
   * The table in lines, headings first.
   *
   * @param pageWidth how many characters a line may take, if it can
   * @param headings the ink of the headings
   */
  List<InkedText> lines(int pageWidth, Ink headings) {
    List<InkedText> lines = new ArrayList<>();
    int from = 1;
    do {
      int[] block = block(from, pageWidth);
      if (!lines.isEmpty()) {
        lines.add(InkedText.of(""));
      }
      lines.add(
          InkedText.of(headings, line(block, columns.stream().map(Column::heading).toList())));
      rows.forEach(row -> addRow(block, row, lines));
      from = block[block.length - 1] + 1;
    } while (from < columns.size());
    return lines;
  }

  /** The first column and as many as fit from another on, at least that one. */
  private int[] block(int from, int pageWidth) {
    int width = widths[0];
    int to = from;
    while (to < columns.size() && (to == from || width + GAP.length() + widths[to] <= pageWidth)) {
      width += GAP.length() + widths[to];
      to++;
    }
    int[] block = new int[1 + to - from];
    Arrays.setAll(block, i -> i == 0 ? 0 : from + i - 1);
    return block;
  }

  private void addRow(int[] block, List<List<String>> row, List<InkedText> lines) {
    int height = Arrays.stream(block).map(i -> row.get(i).size()).max().orElse(1);
    for (int i = 0; i < height; i++) {
      int at = i;
      List<String> cells = row.stream().map(cell -> at < cell.size() ? cell.get(at) : "").toList();
      lines.add(InkedText.of(line(block, cells)));
    }
  }

  private String line(int[] block, List<String> cells) {
    StringBuilder line = new StringBuilder();
    for (int i : block) {
      String blanks = " ".repeat(widths[i] - DisplayText.width(cells.get(i)));
      boolean right = columns.get(i).toTheRight();
      line.append(line.isEmpty() ? "" : GAP);
      line.append(right ? blanks : "").append(cells.get(i)).append(right ? "" : blanks);
    }
    return line.toString().stripTrailing();
  }
}
