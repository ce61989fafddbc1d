package org.battenbook.parse;

import org.battenbook.source.SourceText;
import org.battenbook.source.Span;

/** Finds notes, {@code -- words} behind the text of a line. */
public final class Notes {
  private Notes() {}

  /** Whether a note stands in a text, on any of its lines. */
  public static boolean isIn(SourceText text) {
    return isIn(text.span(0, text.text().length()));
  }

  /** Whether a note stands in a stretch of a text, on any of its lines. */
  public static boolean isIn(Span span) {
    SourceText source = span.source();
    RowSplitter splitter = new RowSplitter(source.text());
    for (int line = span.line(); line <= source.line(span.end()); line++) {
      int start = Math.max(span.start(), source.lineStart(line));
      int end = Math.max(start, Math.min(span.end(), source.lineEnd(line)));
      splitter.split(start, end);
      if (!source.text().substring(splitter.end(), end).isBlank()) {
        return true;
      }
    }
    return false;
  }
}
