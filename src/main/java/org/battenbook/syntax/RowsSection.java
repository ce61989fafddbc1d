package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/**
 * {@code rows of pieces}: headings and rows. The cells are kept as places in the text, since a
 * table may have a hundred thousand rows.
 */
public record RowsSection(Name table, List<Name> headings, RowCells rows, Span span)
    implements PageItem {

  public RowsSection {
    headings = List.copyOf(headings);
  }
}
