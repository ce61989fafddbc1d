package org.battenbook.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.battenbook.source.Span;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.ShownAs;
import org.jspecify.annotations.Nullable;

/** Something with a name that has a value: a line of a page, or a column of a table. */
public abstract sealed class Place permits Line, Column {
  private final Name name;
  private final Page page;
  private final @Nullable KindExpression declaredKind;
  private final boolean given;
  private final String note;
  private final List<Layer> layers = new ArrayList<>();

  Place(Name name, Page page, @Nullable KindExpression declaredKind, boolean given, Layer first) {
    this.name = name;
    this.page = page;
    this.declaredKind = declaredKind;
    this.given = given;
    this.note = first.note();
    layers.add(first);
  }

  public Name name() {
    return name;
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

  /** A place beside this one that no page and no table knows: it has a value where this one has. */
  public abstract Place beside(Name name, Layer layer);

  void set(Layer layer) {
    layers.add(layer);
  }

  /** As people say it: {@code saw kerf}, {@code top rail of pieces}. */
  public abstract String words();

  @Override
  public String toString() {
    return words();
  }
}
