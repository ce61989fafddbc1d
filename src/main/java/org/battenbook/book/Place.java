package org.battenbook.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.battenbook.source.Span;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.ShownAs;
import org.jspecify.annotations.Nullable;

/** Something that has one value, or one value in each row of a table. */
public abstract sealed class Place permits Line, Column, Condition, Setting, ErrorBound {
  private final Page page;
  private final @Nullable KindExpression declaredKind;
  private final boolean given;
  private final String note;
  private final List<Layer> layers = new ArrayList<>();

  Place(Page page, @Nullable KindExpression declaredKind, boolean given, Layer first) {
    this.page = page;
    this.declaredKind = declaredKind;
    this.given = given;
    this.note = first.note();
    layers.add(first);
  }

  /** The table in whose rows it has values; null if it has one value. */
  public abstract @Nullable Table table();

  /** Whether its cells come with opened or planned rows, so that people cannot write them. */
  public boolean comesWithRow() {
    return false;
  }

  public Page page() {
    return page;
  }

  /** The kind as written after the colon; null if it is inferred from the formula. */
  public @Nullable KindExpression declaredKind() {
    return declaredKind;
  }

  /** Whether it is an input, which a person enters, rather than calculated. */
  public boolean isGiven() {
    return given;
  }

  /** The note of its definition; empty if it has none. */
  public String note() {
    return note;
  }

  /** Where it is defined. */
  public Span origin() {
    return layers.get(0).span();
  }

  /** All its layers, inherited ones first. The last one is in effect. */
  public List<Layer> layers() {
    return Collections.unmodifiableList(layers);
  }

  /** The layer in effect: the last one. */
  public Layer layer() {
    return layers.get(layers.size() - 1);
  }

  /** The form of the last layer that has {@code shown as}; null if none has. */
  public @Nullable ShownAs shownAs() {
    for (int i = layers.size() - 1; i >= 0; i--) {
      var formula = layers.get(i).formula();
      if (formula != null && formula.shownAs() != null) {
        return formula.shownAs();
      }
    }
    return null;
  }

  void set(Layer layer) {
    layers.add(layer);
  }

  /** Its name without that of its table: {@code saw kerf}, {@code top rail}. */
  public abstract String label();

  /** Its name for people: {@code saw kerf}, {@code top rail of pieces}. */
  public String words() {
    Table table = table();
    return table == null ? label() : label() + " of " + table.name().text();
  }

  public abstract <R> R accept(PlaceVisitor<R> visitor);

  @Override
  public String toString() {
    return words();
  }
}
