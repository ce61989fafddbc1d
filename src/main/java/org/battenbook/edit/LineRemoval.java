package org.battenbook.edit;

import org.battenbook.bind.BookRows;
import org.battenbook.book.Line;
import org.battenbook.source.Span;

/** A line taken out of the file that decides it; what it replaced holds again. */
public record LineRemoval(Line line) implements WorkbookEdit {
  @Override
  public String words(BookRows rows) {
    return "removing '%s'".formatted(line.words());
  }

  @Override
  public Span at(BookRows rows) {
    return line.layer().span();
  }

  @Override
  public void writeInto(BookRevision revision) {
    revision.statements().removeStatement(line.layer().span());
  }
}
