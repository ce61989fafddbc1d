package org.battenbook.source;

/** A stretch of a source text: half-open offsets, {@code start} included and {@code end} not. */
public record Span(SourceText source, int start, int end) {

  public Span {
    if (start < 0 || end < start || end > source.text().length()) {
      throw new IllegalArgumentException(
          "no span %d..%d in a text of %d".formatted(start, end, source.text().length()));
    }
  }

  public String text() {
    return source.text().substring(start, end);
  }

  /** How many characters it has. */
  public int length() {
    return end - start;
  }

  /** The line it starts on, counted from 1. */
  public int line() {
    return source.line(start);
  }

  /** The column it starts at, counted from 1. */
  public int column() {
    return source.column(start);
  }

  /** The smallest span that holds this one and another of the same text. */
  public Span to(Span other) {
    return new Span(source, Math.min(start, other.start), Math.max(end, other.end));
  }

  /** The place as derivations print it, {@code frame-shop.batten:31}. */
  public String place() {
    Span statement = source.statement();
    return statement == null ? source.shortName() + ":" + line() : statement.place();
  }

  @Override
  public String toString() {
    return source.name() + ":" + line() + ":" + column();
  }
}
