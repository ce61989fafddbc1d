package org.battenbook.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Table;
import org.battenbook.source.Span;
import org.battenbook.syntax.Change;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * What the rows of a table say of one column: a value, a formula of the cell's own, or nothing.
 * Cells of one column are few kinds of values, so equal ones are kept once.
 */
public final class Cells {
  /** A column that no row speaks of. */
  public static final Cells NONE = new Cells(0);

  private @Nullable Value[] values;
  private final Map<Integer, CheckedFormula> formulas = new HashMap<>();
  private final Map<Integer, Change> changes = new HashMap<>();
  private final Map<Integer, CheckedFormula> tolerances = new HashMap<>();

  /** What edits wrote into cells since the text was read, by row. */
  private final Map<Integer, Span> typed = new HashMap<>();

  /** The names of rows that are not known yet, in whatever cells. */
  private final List<LateName> lateNames = new ArrayList<>();

  Cells(int rowCount) {
    values = new @Nullable Value[rowCount];
  }

  /** The value written in a row's cell; absent where the cell is empty or holds a formula. */
  public @Nullable Value value(int row) {
    return row < values.length ? values[row] : null;
  }

  /** The formulas that stand in cells, by row. */
  public Map<Integer, CheckedFormula> formulas() {
    return formulas;
  }

  /** The changes that set single cells, by row; their formulas are among {@link #formulas}. */
  public Map<Integer, Change> changes() {
    return changes;
  }

  /** What stands behind {@code ±} in cells, by row. */
  public Map<Integer, CheckedFormula> tolerances() {
    return tolerances;
  }

  /** Whether a row says what it is, be it by a value or by a formula. */
  public boolean isFilled(int row) {
    return value(row) != null || formulas.containsKey(row);
  }

  /** How many rows there is a cell for. */
  int size() {
    return values.length;
  }

  /** Whether any row says anything. */
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

  /** A copy to be edited, with a cell for each row. */
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

  /** These with the rows that cells name known; where there is none, that is a fault. */
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

  /** What an edit wrote into a row's cell since the text was read; absent where none did. */
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

  /** Sets a row's cell to one of others. */
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

  /** Lets a change, the only cell of others, decide a row; what it read before stays. */
  void change(Cells one, int row) {
    CheckedFormula formula = one.formulas.get(0);
    if (formula == null) {
      values[row] = one.values[0];
      formulas.remove(row);
    } else {
      formulas.put(row, formula);
    }
    setTolerance(row, one.tolerances.get(0));
    one.changes.values().forEach(change -> changes.put(row, change));
  }

  /** Sets by how much a row's value may be off; nothing is said of it without one. */
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
