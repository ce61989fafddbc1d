package org.battenbook.book;

import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/** A line of a page: a name and one value. */
public final class Line extends Place {
  private final Name name;

  Line(Name name, Page page, @Nullable KindExpression kind, boolean given, Layer first) {
    super(page, kind, given, first);
    this.name = name;
  }

  public Name name() {
    return name;
  }

  @Override
  public @Nullable Table table() {
    return null;
  }

  @Override
  public String label() {
    return name.text();
  }

  @Override
  public <R> R accept(PlaceVisitor<R> visitor) {
    return visitor.line(this);
  }
}
