package org.battenbook.book;

import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/** A setting of a plan, such as its planning time. */
public final class Setting extends Place {
  private final Name plan;
  private final Name name;

  Setting(Name plan, Name name, Page page, KindExpression kind, Layer layer) {
    super(page, kind, false, layer);
    this.plan = plan;
    this.name = name;
  }

  @Override
  public @Nullable Table table() {
    return null;
  }

  @Override
  public String label() {
    return plan.text() + " " + name.text();
  }

  @Override
  public <R> R accept(PlaceVisitor<R> visitor) {
    return visitor.setting(this);
  }
}
