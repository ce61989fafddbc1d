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
 * Where a formula stands, and so what its names mean.
 *
 * @param file the text it is written in: it sees what that text and those it follows define
 * @param page the page whose lines come before those of others; absent in functions
 * @param table the table whose row it reads; absent outside of tables
 * @param outer the scope around an aggregate, which {@code this} reads
 * @param parameters the names that a function gives its arguments
 * @param own the place whose formula it is, and the layer: in a change, the place's own name means
 *     the inherited value
 */
public record Scope(
    SourceText file,
    @Nullable Page page,
    @Nullable Table table,
    @Nullable Scope outer,
    List<Name> parameters,
    @Nullable Own own) {

  /** A place and which of its layers a formula is. */
  public record Own(Place place, int layer) {}

  /** The scope of a layer of a place. */
  public static Scope of(Place place, int layer) {
    Layer written = place.layers().get(layer);
    Table table = place.table();
    return new Scope(
        written.span().source(), place.page(), table, null, List.of(), new Own(place, layer));
  }

  /** The scope of a formula that stands in one cell of a column. */
  public static Scope ofCell(Column column, SourceText file) {
    Own own = new Own(column, column.layers().size());
    return new Scope(file, column.page(), column.table(), null, List.of(), own);
  }

  /** The scope of a function's formula. */
  public static Scope ofFunction(SourceText file, List<Name> parameters) {
    return new Scope(file, null, null, null, parameters, null);
  }

  /** The scope inside of an aggregate over a table. */
  public Scope inside(Table inner) {
    return new Scope(file, page, inner, this, parameters, own);
  }
}
