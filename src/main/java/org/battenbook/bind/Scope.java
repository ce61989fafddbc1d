package org.battenbook.bind;

import java.util.List;
import org.battenbook.book.Column;
import org.battenbook.book.Layer;
import org.battenbook.book.Page;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/**
 * The scope of a formula, in which its names are resolved.
 *
 * @param file the file it is written in; it sees what that file and the files it follows define
 * @param page the page whose lines come before those of other pages; null in functions
 * @param table the table whose row it reads; null outside of tables
 * @param outer inside an aggregate or a selection, the scope around it, which {@code this} reads;
 *     else null
 * @param parameters the parameter names of the function; empty outside of functions
 * @param own the place and layer that the formula belongs to; null in functions. In a change, the
 *     place's own name means the inherited value.
 */
public record Scope(
    SourceText file,
    @Nullable Page page,
    @Nullable Table table,
    @Nullable Scope outer,
    List<Name> parameters,
    @Nullable Own own) {

  /** The place that a formula belongs to, and the index of its layer. */
  public record Own(Place place, int layer) {}

  /** The scope of a layer of a place. */
  public static Scope of(Place place, int layer) {
    Layer written = place.layers().get(layer);
    Table table = place.table();
    return new Scope(
        written.span().source(), place.page(), table, null, List.of(), new Own(place, layer));
  }

  /** The scope of a formula in a cell of a column. It counts as the layer after the last. */
  public static Scope ofCell(Column column, SourceText file) {
    Own own = new Own(column, column.layers().size());
    return new Scope(file, column.page(), column.table(), null, List.of(), own);
  }

  /** The scope of a function's formula. */
  public static Scope ofFunction(SourceText file, List<Name> parameters) {
    return new Scope(file, null, null, null, parameters, null);
  }

  /** The scope inside an aggregate or a selection over a table. */
  public Scope inside(Table inner) {
    return new Scope(file, page, inner, this, parameters, own);
  }
}
