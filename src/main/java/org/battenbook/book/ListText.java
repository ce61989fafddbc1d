package org.battenbook.book;

import java.util.Arrays;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.RowCells;

/** The text of a list as it would be written in a workbook, a line for each row, being laid out. */
final class ListText {
  private static final String BAR = " | ";

  private final StringBuilder text = new StringBuilder();
  private int[] bounds = new int[64];
  private int used;
  private boolean opensLine = true;

  /** Puts a cell behind those of its line. */
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

  /** Where a cell stands, counted from 0 over all of them. */
  Span span(SourceText source, int cell) {
    return source.span(bounds[2 * cell], bounds[2 * cell + 1]);
  }

  /** The cells from this one on, as rows. */
  RowCells rows(SourceText source, int firstCell, int width) {
    RowCells.Builder rows = new RowCells.Builder(source, width);
    for (int at = 2 * firstCell; at < used; at += 2) {
      rows.cell(bounds[at], bounds[at + 1]);
    }
    return rows.build();
  }
}
