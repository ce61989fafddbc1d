package org.battenbook.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

  /** One text for each cell: a table may have millions. */
  private final List<String[]> rows = new ArrayList<>();

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
    String[] row = cells.toArray(String[]::new);
    for (int i = 0; i < widths.length; i++) {
      for (String line : wrapped(row[i])) {
        widths[i] = Math.max(widths[i], DisplayText.width(line));
      }
    }
    rows.add(row);
  }

  private static List<String> wrapped(String cell) {
    return WrappedText.lines(cell, WIDEST_CELL);
  }

  /**
   * The table in lines, headings first; each line is made as it is taken.
   *
   * @param pageWidth how many characters a line may take, if it can
   * @param headings the ink of the headings
   */
  Stream<InkedText> lines(int pageWidth, Ink headings) {
    List<int[]> blocks = new ArrayList<>();
    int from = 1;
    do {
      int[] block = block(from, pageWidth);
      blocks.add(block);
      from = block[block.length - 1] + 1;
    } while (from < columns.size());
    return blocks.stream()
        .flatMap(
            block -> Stream.concat(head(block, block != blocks.get(0), headings), rows(block)));
  }

  private Stream<InkedText> head(int[] block, boolean below, Ink ink) {
    InkedText headings = InkedText.of(ink, line(block, headings(block)));
    return below ? Stream.of(InkedText.of(""), headings) : Stream.of(headings);
  }

  private List<String> headings(int[] block) {
    return Arrays.stream(block).mapToObj(i -> columns.get(i).heading()).toList();
  }

  private Stream<InkedText> rows(int[] block) {
    return rows.stream().flatMap(row -> row(block, row)).map(InkedText::of);
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

  private Stream<String> row(int[] block, String[] row) {
    List<List<String>> cells = Arrays.stream(block).mapToObj(i -> wrapped(row[i])).toList();
    int height = cells.stream().mapToInt(List::size).max().orElse(1);
    return IntStream.range(0, height)
        .mapToObj(at -> line(block, cells.stream().map(cell -> at(cell, at)).toList()));
  }

  private static String at(List<String> cell, int line) {
    return line < cell.size() ? cell.get(line) : "";
  }

  /** One line of the cells of a block. */
  private String line(int[] block, List<String> cells) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < block.length; i++) {
      String blanks = " ".repeat(widths[block[i]] - DisplayText.width(cells.get(i)));
      boolean right = columns.get(block[i]).toTheRight();
      line.append(line.isEmpty() ? "" : GAP);
      line.append(right ? blanks : "").append(cells.get(i)).append(right ? "" : blanks);
    }
    return line.toString().stripTrailing();
  }
}
