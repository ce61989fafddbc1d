package org.battenbook.check;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.battenbook.bind.BookRows;
import org.battenbook.bind.Rows;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.source.Span;
import org.battenbook.syntax.Change;
import org.battenbook.unit.Shown;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * What decides each value of a book: a written value, a formula of its own, or its place's formula.
 */
public final class Decisions {
  private final CheckedBook book;
  private final BookRows rows;
  private final Map<Place, Cells> cells = new ConcurrentHashMap<>();

  /**
   * Creates the decisions of a book.
   *
   * @param rows the rows of its tables
   */
  public Decisions(CheckedBook book, BookRows rows) {
    this.book = book;
    this.rows = rows;
  }

  public CheckedBook book() {
    return book;
  }

  public Rows rows(Table table) {
    return rows.rows(table);
  }

  /** The cells of a place; none for a line. */
  public Cells cells(Place place) {
    Table table = place.table();
    if (table == null) {
      return Cells.NONE;
    }
    Entries entries = book.place(place).entries();
    boolean hasCells = entries != Entries.NONE || place.comesWithRow();
    return hasCells
        ? cells.computeIfAbsent(place, p -> entries.in(p, rows(table), rows))
        : Cells.NONE;
  }

  /** Reuses the cells of a place from before an edit, which changed neither them nor the rows. */
  public void share(Place place, Decisions before) {
    Cells known = before.cells.get(place);
    if (known != null) {
      cells.put(place, known);
    }
  }

  /** The value written in a spot's cell; null if there is none. */
  public @Nullable Value written(Spot spot) {
    return cells(spot.place()).value(spot.row());
  }

  /** The formula written in a spot's cell; null if there is none. */
  public @Nullable CheckedFormula ownFormula(Spot spot) {
    return cells(spot.place()).formulas().get(spot.row());
  }

  /** The formula that decides a spot; null if a written value does, or nothing. */
  public @Nullable CheckedFormula formula(Spot spot) {
    CheckedFormula own = ownFormula(spot);
    if (own != null || written(spot) != null) {
      return own;
    }
    return book.place(spot.place()).formula();
  }

  /** The change that set a spot's cell; null if there is none. */
  public @Nullable Change change(Spot spot) {
    return cells(spot.place()).changes().get(spot.row());
  }

  /**
   * Whether a spot stays empty, since its row is opened from another table than its column names.
   */
  public boolean staysEmpty(Spot spot) {
    return spot.place().comesWithRow() && written(spot) == null;
  }

  /** The name of a spot for people, as {@link Spot#words} has it. */
  public String words(Spot spot) {
    Table table = spot.place().table();
    return table == null ? spot.place().label() : spot.words(rows(table).keys());
  }

  /** A value of a spot for people: as it was written, or in the form of its place. */
  public Shown show(Spot spot, Value value) {
    return AsWritten.show(this, spot, value);
  }

  /**
   * Where what decides a spot is written: its change, its row or cell, else its place's formula.
   */
  public Span origin(Spot spot) {
    Change change = change(spot);
    if (change != null) {
      return change.span();
    }
    Table table = spot.place().table();
    if (table != null && spot.place().comesWithRow()) {
      return rows(table).origin(spot.row());
    }
    Span ofPlace = spot.place().layer().span();
    return cells(spot.place()).isFilled(spot.row())
        ? AsWritten.cell(this, spot).orElse(ofPlace)
        : ofPlace;
  }

  /**
   * Where the value of a spot before a change is written: in its cell, or in a layer of its place.
   */
  public Span replaced(Spot spot, int layer) {
    Span ofPlace = spot.place().layers().get(layer).span();
    return written(spot) == null ? ofPlace : AsWritten.cell(this, spot).orElse(ofPlace);
  }
}
