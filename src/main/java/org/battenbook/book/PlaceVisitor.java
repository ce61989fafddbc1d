package org.battenbook.book;

/** One case for each kind of {@link Place}; no defaults, so that none is forgotten. */
public interface PlaceVisitor<R> {
  R line(Line line);

  R column(Column column);

  R condition(Condition condition);

  R setting(Setting setting);

  R errorBound(ErrorBound bound);
}
