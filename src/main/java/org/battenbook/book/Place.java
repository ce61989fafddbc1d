package org.battenbook.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.battenbook.source.Span;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.ShownAs;
import org.jspecify.annotations.Nullable;

/** Something that has a value: one, or one in each row of a table. */
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

  /** The table that has a value of it in each row; absent where it has one value. */
  public abstract @Nullable Table table();

  /** Whether nobody writes its cells: they come with rows that are opened or planned. */
  public boolean comesWithRow() {
    return false;
  }

  public Page page() {
    return page;
  }

  /** The kind as written after the colon; absent where it is left to the formula. */
  public @Nullable KindExpression declaredKind() {
    return declaredKind;
  }

  /** Whether a person fills it in, rather than a formula. */
  public boolean isGiven() {
    return given;
  }

  /** The note beside its definition, or empty. */
  public String note() {
    return note;
  }

  /** Where it is defined. */
  public Span origin() {
    return layers.get(0).span();
  }

  /** Every formula that was set for it, the inherited ones first; the last one holds. */
  public List<Layer> layers() {
    return Collections.unmodifiableList(layers);
  }

  /** The layer that holds. */
  public Layer layer() {
    return layers.get(layers.size() - 1);
  }

  /** How it is to be shown, as its nearest formula says; absent where none does. */
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

  /** Its own name, or what stands for one: {@code saw kerf}, {@code top rail}. */
  public abstract String label();

  /** As people say it: {@code saw kerf}, {@code top rail of pieces}. */
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
