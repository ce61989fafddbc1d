package org.battenbook.parse;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.misc.Interval;
import org.battenbook.source.Span;

/**
 * A stretch of a source text as ANTLR reads it. Its indexes are the offsets of the whole text, so
 * that tokens know their own place.
 */
final class SourceCharStream implements CharStream {
  private final String text;
  private final String sourceName;
  private final int end;
  private int at;

  SourceCharStream(Span where) {
    this.text = where.source().text();
    this.sourceName = where.source().name();
    this.at = where.start();
    this.end = where.end();
  }

  @Override
  public void consume() {
    if (at >= end) {
      throw new IllegalStateException("cannot consume past the end");
    }
    at += Character.charCount(text.codePointAt(at));
  }

  @Override
  public int LA(int ahead) {
    int index = at;
    for (int step = 1; step < ahead && index < end; step++) {
      index += Character.charCount(text.codePointAt(index));
    }
    if (ahead < 0) {
      index = at + ahead;
    }
    return index < 0 || index >= end ? EOF : text.codePointAt(index);
  }

  @Override
  public int mark() {
    return 0;
  }

  @Override
  public void release(int marker) {}

  @Override
  public int index() {
    return at;
  }

  @Override
  public void seek(int index) {
    at = Math.min(index, end);
  }

  @Override
  public int size() {
    return end;
  }

  @Override
  public String getText(Interval interval) {
    int stop = Math.min(interval.b + 1, end);
    return interval.a >= stop ? "" : text.substring(interval.a, stop);
  }

  @Override
  public String getSourceName() {
    return sourceName;
  }
}
