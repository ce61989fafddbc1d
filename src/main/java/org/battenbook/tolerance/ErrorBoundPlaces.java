package org.battenbook.tolerance;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.battenbook.bind.Scope;
import org.battenbook.book.Column;
import org.battenbook.book.ErrorBound;
import org.battenbook.book.Layer;
import org.battenbook.book.Place;
import org.battenbook.book.RowOpening;
import org.battenbook.check.CheckedFormula;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * The error bounds of a book. They hold how large the {@code ±} of a layer is; in which rows a
 * column is filled in by hand, so that its formula does not decide; and in which rows the cell of
 * an opening decides.
 */
final class ErrorBoundPlaces {
  private final Map<Source, ErrorBound> tolerances = new LinkedHashMap<>();
  private final Map<Column, ErrorBound> filled = new LinkedHashMap<>();
  private final Map<Column, CheckedFormula> filledConditions = new HashMap<>();
  private final Map<OpenedCell, ErrorBound> opened = new LinkedHashMap<>();
  private final Map<OpenedCell, CheckedFormula> openedConditions = new HashMap<>();

  /** The cell that an opening has in a column. */
  private record OpenedCell(Column column, RowOpening opening) {}

  /** Where a {@code ±} is written: in one layer of a place. */
  record Source(Place place, int layer) {
    /** The layer that decides, together with the cells of its rows. */
    static Source of(Place place) {
      return new Source(place, place.layers().size() - 1);
    }
  }

  /** The place that holds how large the {@code ±} of a layer is; absent where it has none. */
  @Nullable ErrorBound tolerance(Source source) {
    return tolerances.get(source);
  }

  boolean isEmpty() {
    return tolerances.isEmpty();
  }

  ErrorBound addTolerance(Source source, Layer layer, @Nullable ErrorBoundPlaces before) {
    ErrorBound known = before == null ? null : before.tolerance(source);
    String label = "tolerance of " + source.place().label();
    ErrorBound place = known == null ? new ErrorBound(source.place(), label, layer) : known;
    tolerances.put(source, place);
    return place;
  }

  /** The condition that a row of a column is filled in; absent where that does not matter. */
  @Nullable CheckedFormula filled(Column column) {
    return filledConditions.get(column);
  }

  ErrorBound addFilled(Column column, @Nullable ErrorBoundPlaces before) {
    ErrorBound known = before == null ? null : before.filled.get(column);
    String label = column.label() + " as entered";
    ErrorBound place = known == null ? new ErrorBound(column, label, column.layer()) : known;
    filled.put(column, place);
    filledConditions.put(column, condition(column, place));
    return place;
  }

  /** The condition that an opening's own cell decides a row; absent where that does not matter. */
  @Nullable CheckedFormula opened(Column column, RowOpening opening) {
    return openedConditions.get(new OpenedCell(column, opening));
  }

  ErrorBound addOpened(Column column, RowOpening opening, @Nullable ErrorBoundPlaces before) {
    OpenedCell cell = new OpenedCell(column, opening);
    ErrorBound known = before == null ? null : before.opened.get(cell);
    String label = column.label() + " from the 'for each'";
    ErrorBound place = known == null ? new ErrorBound(column, label, column.layer()) : known;
    opened.put(cell, place);
    openedConditions.put(cell, condition(column, place));
    return place;
  }

  private static CheckedFormula condition(Column column, ErrorBound place) {
    SyntheticFormula condition = new SyntheticFormula(column.name().span());
    Expression read = condition.read(place, Optional.empty(), Kind.YES_NO);
    return condition.formula(read, Scope.of(column, 0));
  }
}
