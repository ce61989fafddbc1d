package org.battenbook.book;

/** A visitor of {@link Place}, without defaults, so that no case is forgotten. */
public interface PlaceVisitor<R> {
  R line(Line line);

  R column(Column column);

  R condition(Condition condition);

  R setting(Setting setting);

  R errorBound(ErrorBound bound);
}
