package org.battenbook.check;

import java.util.List;
import org.battenbook.book.Column;

/**
 * What a reference reads: a target, then columns of the rows that it leads to.
 *
 * @param through the column behind each dot, {@code moulding.face}
 */
public record Path(Target target, List<Column> through) {
  public Path {
    through = List.copyOf(through);
  }
}
