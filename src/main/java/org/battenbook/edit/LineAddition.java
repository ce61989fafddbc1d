package org.battenbook.edit;

import org.battenbook.bind.BookRows;
import org.battenbook.book.Page;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;

/**
 * A new line on a page, written into the job.
 *
 * @param line as it is written: {@code saw kerf = 1/8 in -- thin blade}
 */
public record LineAddition(Page page, String line) implements WorkbookEdit {
  @Override
  public String words(BookRows rows) {
    return "adding a line to the page '%s'".formatted(page);
  }

  @Override
  public Span at(BookRows rows) {
    return page.origin();
  }

  @Override
  public void checkTyped(Diagnostics diagnostics) {
    TypedText.checkLine(line, diagnostics);
  }

  @Override
  public void writeInto(BookRevision revision) {
    revision.statements().insertOnPage(page, line.strip());
  }
}
