package org.battenbook.export.layout;

import java.util.List;
import org.battenbook.book.Line;

/**
 * Lines below one another, under headings.
 *
 * @param headingRow the row of the headings
 */
public record LineBlock(int headingRow, List<Line> lines) {

  /**
   * The row of a line.
   *
   * @param index counted from 0 in the block
   */
  public int row(int index) {
    return headingRow + 1 + index;
  }

  /** The first row below the block. */
  int end() {
    return row(lines.size());
  }
}
