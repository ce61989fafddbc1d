package org.battenbook.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.source.Span;
import org.battenbook.syntax.Change;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * The cells of one column, by row. A cell has a value or a formula of its own, or is empty. Cells
 * of the same text share one value object.
 */
public final class Cells {
  /** The cells of a column in which nothing is written. */
  public static final Cells NONE = new Cells(0);

  private @Nullable Value[] values;
  private final Map<Integer, CheckedFormula> formulas = new HashMap<>();
  private final Map<Integer, Change> changes = new HashMap<>();
  private final Map<Integer, CheckedFormula> tolerances = new HashMap<>();

  /** The text that an edit wrote into each cell since the file was read, by row. */
  private final Map<Integer, Span> typed = new HashMap<>();

  /** The names of rows in all cells that are still to be checked. */
  private final List<LateName> lateNames = new ArrayList<>();

  Cells(int rowCount) {
    values = new @Nullable Value[rowCount];
  }

  /** The value written in a row's cell; null if the cell is empty or has a formula only. */
  public @Nullable Value value(int row) {
    return row < values.length ? values[row] : null;
  }

  /** The formulas written in cells, by row. */
  public Map<Integer, CheckedFormula> formulas() {
    return formulas;
  }

  /** The changes that set single cells, by row; their formulas are among {@link #formulas}. */
  public Map<Integer, Change> changes() {
    return changes;
  }

  /** The tolerances written after {@code ±} in cells, by row. */
  public Map<Integer, CheckedFormula> tolerances() {
    return tolerances;
  }

  /** Whether a row's cell has a value or a formula. */
  public boolean isFilled(int row) {
    return value(row) != null || formulas.containsKey(row);
  }

  /** The number of rows that have a cell. */
  int size() {
    return values.length;
  }

  /** Whether all cells are empty. */
  public boolean isEmpty() {
    if (!formulas.isEmpty()) {
      return false;
    }
    for (Value value : values) {
      if (value != null) {
        return false;
      }
    }
    return true;
  }

  /** A copy for an edit, with cells for at least {@code rowCount} rows. */
  Cells copy(int rowCount) {
    Cells copy = new Cells(0);
    copy.values = Arrays.copyOf(values, Math.max(values.length, rowCount));
    copy.formulas.putAll(formulas);
    copy.changes.putAll(changes);
    copy.tolerances.putAll(tolerances);
    copy.typed.putAll(typed);
    copy.lateNames.addAll(lateNames);
    return copy;
  }

  List<LateName> lateNames() {
    return lateNames;
  }

  void addLateNames(List<LateName> names) {
    lateNames.addAll(names);
  }

  /**
   * A copy in which the names of rows are replaced by rows. A name that no row has becomes a fault.
   *
   * @param late the names to replace
   * @param others the rows of all tables, which are known now
   */
  Cells resolved(List<LateName> late, BookRows others) {
    if (late.isEmpty()) {
      return this;
    }
    Map<String, Table> tables = new HashMap<>();
    late.forEach(one -> tables.put(one.table().key(), one.table()));
    Cells copy = copy(values.length);
    for (int row = 0; row < values.length; row++) {
      if (values[row] instanceof Value.Row named && tables.containsKey(named.table())) {
        copy.values[row] = others.rows(tables.get(named.table())).called(named.name());
      }
    }
    return copy;
  }

  /** Empties a cell. */
  void clear(int row) {
    values[row] = null;
    formulas.remove(row);
    changes.remove(row);
    tolerances.remove(row);
    typed.remove(row);
  }

  /** The text that an edit wrote into a row's cell since the file was read; null if none did. */
  @Nullable Span typed(int row) {
    return typed.get(row);
  }

  void setTyped(int row, @Nullable Span entry) {
    if (entry == null) {
      typed.remove(row);
    } else {
      typed.put(row, entry);
    }
  }

  void set(int row, Value value) {
    values[row] = value;
  }

  void set(int row, CheckedFormula formula) {
    formulas.put(row, formula);
  }

  /** Sets the cell of {@code row} to cell {@code at} of another column's cells. */
  void copy(Cells from, int at, int row) {
    clear(row);
    values[row] = from.value(at);
    CheckedFormula formula = from.formulas.get(at);
    if (formula != null) {
      formulas.put(row, formula);
    }
    setTolerance(row, from.tolerances.get(at));
    setTyped(row, from.typed.get(at));
  }

  /**
   * Applies a change to a row. The value written there stays, since the change can read it. A
   * formula does not: a change that reads one becomes the fault {@code change-reads-formula}.
   *
   * @param one the cell of the change, at index 0
   */
  void change(Cells one, int row, Place place) {
    CheckedFormula formula = one.formulas.get(0);
    CheckedFormula replaced = formulas.get(row);
    if (formula == null) {
      values[row] = one.values[0];
      formulas.remove(row);
    } else if (replaced != null && formula.readsInherited()) {
      String message = unreadable(replaced) + "; " + writtenOut(replaced, place);
      values[row] = new Value.Fault("change-reads-formula", message);
      formulas.remove(row);
    } else {
      formulas.put(row, formula);
    }
    setTolerance(row, one.tolerances.get(0));
    one.changes.values().forEach(change -> changes.put(row, change));
  }

  /** The message for a change that reads the formula of the cell that it changes. */
  static String unreadable(CheckedFormula replaced) {
    Span formula = replaced.expression().span();
    return "a change cannot read the formula of its cell, '%s' in %s"
        .formatted(formula.text(), formula.place());
  }

  /** What to write instead. A formula that reads on below it cannot be written out in its place. */
  static String writtenOut(CheckedFormula replaced, Place place) {
    if (replaced.readsInherited()) {
      return "write the new value of the cell, without '%s'".formatted(place.label());
    }
    return "write (%s) in the change instead of '%s'"
        .formatted(replaced.expression().span().text(), place.label());
  }

  /** Sets the tolerance of a row's value; null for no tolerance. */
  void setTolerance(int row, @Nullable CheckedFormula tolerance) {
    if (tolerance == null) {
      tolerances.remove(row);
    } else {
      tolerances.put(row, tolerance);
    }
  }

  void change(int row, Change change) {
    changes.put(row, change);
  }
}
