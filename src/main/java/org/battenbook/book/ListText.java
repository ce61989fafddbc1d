package org.battenbook.book;

import java.util.Arrays;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.RowCells;

/** Builds the text that a workbook would have for a list, with a line for each row. */
final class ListText {
  private static final String BAR = " | ";

  private final StringBuilder text = new StringBuilder();

  /** The start and end of each cell in the text. */
  private int[] bounds = new int[64];

  private int used;
  private boolean opensLine = true;

  /** Adds a cell to the current line. */
  void cell(String content) {
    text.append(opensLine ? "" : BAR);
    opensLine = false;
    if (used + 2 > bounds.length) {
      bounds = Arrays.copyOf(bounds, bounds.length * 2);
    }
    bounds[used++] = text.length();
    text.append(content);
    bounds[used++] = text.length();
  }

  void endLine() {
    text.append('\n');
    opensLine = true;
  }

  SourceText source(String name) {
    return SourceText.of(name, text.toString());
  }

  /** Where a cell is; cells are counted from 0 over all lines. */
  Span span(SourceText source, int cell) {
    return source.span(bounds[2 * cell], bounds[2 * cell + 1]);
  }

  /** The cells from {@code firstCell} on, as rows of {@code width} cells. */
  RowCells rows(SourceText source, int firstCell, int width) {
    RowCells.Builder rows = new RowCells.Builder(source, width);
    for (int at = 2 * firstCell; at < used; at += 2) {
      rows.cell(bounds[at], bounds[at + 1]);
    }
    return rows.build();
  }
}
