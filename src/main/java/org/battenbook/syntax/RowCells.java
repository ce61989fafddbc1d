package org.battenbook.syntax;

import java.util.Arrays;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;

/** Where each cell of some rows stands in the text: two offsets a cell, spaces trimmed. */
public final class RowCells {
  private final SourceText source;
  private final int width;
  private final int[] bounds;
  private final int rowCount;

  private RowCells(SourceText source, int width, int[] bounds, int rowCount) {
    this.source = source;
    this.width = width;
    this.bounds = bounds;
    this.rowCount = rowCount;
  }

  public int rowCount() {
    return rowCount;
  }

  /** The number of cells in each row: as many as there are headings. */
  public int width() {
    return width;
  }

  /** Whether a cell is left empty. */
  public boolean isEmpty(int row, int column) {
    int at = 2 * (row * width + column);
    return bounds[at] == bounds[at + 1];
  }

  public int start(int row, int column) {
    return bounds[2 * (row * width + column)];
  }

  public int end(int row, int column) {
    return bounds[2 * (row * width + column) + 1];
  }

  public SourceText source() {
    return source;
  }

  public Span span(int row, int column) {
    return source.span(start(row, column), end(row, column));
  }

  /** The words after {@code --} at the end of a row, or empty. */
  public String note(int row) {
    int last = end(row, width - 1);
    String rest = source.text().substring(last, source.lineEnd(source.line(last))).strip();
    return rest.startsWith("--") ? rest.substring(2).strip() : "";
  }

  /** Gathers rows one after another. */
  public static final class Builder {
    private final SourceText source;
    private final int width;
    private int[] bounds = new int[64];
    private int used;

    public Builder(SourceText source, int width) {
      this.source = source;
      this.width = width;
    }

    /** Adds the next cell of the current row; a row is full after {@code width} cells. */
    public Builder cell(int start, int end) {
      if (used == bounds.length) {
        bounds = Arrays.copyOf(bounds, used * 2);
      }
      bounds[used++] = start;
      bounds[used++] = end;
      return this;
    }

    public RowCells build() {
      if (used % (2 * width) != 0) {
        throw new IllegalStateException("the last row has fewer than %d cells".formatted(width));
      }
      return new RowCells(source, width, Arrays.copyOf(bounds, used), used / (2 * width));
    }
  }
}
