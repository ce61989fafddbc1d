package org.battenbook.export.layout;

import java.util.List;
import org.battenbook.book.Line;

/**
 * Lines that stand below one another under headings.
 *
 * @param headingRow the row of the headings
 */
public record LineBlock(int headingRow, List<Line> lines) {

  /** The row of a line, counted from 0 in the block. */
  public int row(int index) {
    return headingRow + 1 + index;
  }

  /** The first row below. */
  int end() {
    return row(lines.size());
  }
}
