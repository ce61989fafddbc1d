package org.battenbook.book;

import org.jspecify.annotations.Nullable;

/**
 * What is calculated beside another place to bound its error: how large its {@code ±} is, or which
 * of its rows a formula decides. No workbook names it. It has a value wherever that place has one.
 */
public final class ErrorBound extends Place {
  private final Place of;
  private final String label;

  /**
   * A bound beside a place.
   *
   * @param label in words, {@code tolerance of rail}
   * @param layer the layer of that place which it belongs to
   */
  public ErrorBound(Place of, String label, Layer layer) {
    super(of.page(), null, false, layer);
    this.of = of;
    this.label = label;
  }

  /** The place beside which it is. */
  public Place of() {
    return of;
  }

  @Override
  public @Nullable Table table() {
    return of.table();
  }

  @Override
  public String label() {
    return label;
  }

  @Override
  public <R> R accept(PlaceVisitor<R> visitor) {
    return visitor.errorBound(this);
  }
}
