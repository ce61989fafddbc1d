package org.battenbook.book;

import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/** A line of a page: one name, one value. */
public final class Line extends Place {
  Line(Name name, Page page, @Nullable KindExpression kind, boolean given, Layer first) {
    super(name, page, kind, given, first);
  }

  @Override
  public Line beside(Name name, Layer layer) {
    return new Line(name, page(), null, false, layer);
  }

  @Override
  public String words() {
    return name().text();
  }
}
