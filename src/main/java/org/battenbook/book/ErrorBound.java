package org.battenbook.book;

import org.jspecify.annotations.Nullable;

/**
 * A place that the program adds to bound the error of another place: the size of its {@code ±}, or
 * in which rows a formula decides. No workbook can name it. It has a value wherever the other place
 * has one.
 */
public final class ErrorBound extends Place {
  private final Place of;
  private final String label;

  /**
   * Creates an error bound.
   *
   * @param of the place whose error it bounds
   * @param label its name for people, {@code tolerance of rail}
   * @param layer the layer of that place that it belongs to
   */
  public ErrorBound(Place of, String label, Layer layer) {
    super(of.page(), null, false, layer);
    this.of = of;
    this.label = label;
  }

  /** The place whose error it bounds. */
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
