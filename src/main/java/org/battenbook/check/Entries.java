package org.battenbook.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.battenbook.bind.BookRows;
import org.battenbook.bind.Rows;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.RowOpening;
import org.battenbook.book.RowSegment;
import org.battenbook.syntax.Name;
import org.battenbook.value.Value;

/**
 * What is written of the cells of a column, before it is known which rows there are. Of rows that
 * people write there is a cell for each; of those that are opened or planned, a cell stands where
 * an opening, a row that fills in, or a change says it.
 */
public final class Entries {
  /** A place of which no row speaks. */
  public static final Entries NONE = new Entries(Cells.NONE);

  /** The cells of the rows that people write. */
  private final Cells written;

  /** What each opening says of all its rows: one cell. */
  private final Map<RowOpening, Cells> byOpening = new LinkedHashMap<>();

  /** A cell for each row of a segment that fills in. */
  private final Map<RowSegment, Cells> byFillIn = new LinkedHashMap<>();

  /** What changes say of rows by their names: one cell each. */
  private final Map<LateName, Cells> byName = new LinkedHashMap<>();

  Entries(Cells written) {
    this.written = written;
  }

  /** The cells of rows that people write, known as they are. */
  Cells written() {
    return written;
  }

  void add(RowOpening opening, Cells one) {
    byOpening.put(opening, one);
  }

  void add(RowSegment fillIn, Cells cells) {
    byFillIn.put(fillIn, cells);
  }

  void add(LateName row, Cells one) {
    byName.put(row, one);
  }

  /** A copy, each of its groups of cells copied or made into another. */
  Entries map(UnaryOperator<Cells> made) {
    Entries copy = new Entries(made.apply(written));
    byOpening.forEach((key, cells) -> copy.byOpening.put(key, made.apply(cells)));
    byFillIn.forEach((key, cells) -> copy.byFillIn.put(key, made.apply(cells)));
    byName.forEach((key, cells) -> copy.byName.put(key, made.apply(cells)));
    return copy;
  }

  /** A cell that people write. */
  record Cell(Cells cells, int at) {}

  /** The cell of a row in which people write, or would write; empty where no segment has it. */
  Optional<Cell> cell(Column column, Rows rows, int row) {
    if (column.table().isWritten()) {
      return Optional.of(new Cell(written, row));
    }
    Optional<Cell> found = Optional.empty();
    for (Map.Entry<RowSegment, Cells> one : byFillIn.entrySet()) {
      int at = rows.at(one.getKey(), row);
      found = at == Rows.NO_ROW ? found : Optional.of(new Cell(one.getValue(), at));
    }
    return found;
  }

  private List<Cells> all() {
    List<Cells> all = new ArrayList<>();
    all.add(written);
    all.addAll(byOpening.values());
    all.addAll(byFillIn.values());
    all.addAll(byName.values());
    return all;
  }

  /** Whether nothing is written. */
  public boolean isEmpty() {
    return this == NONE || all().stream().allMatch(Cells::isEmpty);
  }

  /** Whether any row says a {@code ±}. */
  public boolean hasTolerances() {
    return this != NONE && all().stream().anyMatch(cells -> !cells.tolerances().isEmpty());
  }

  /** The formulas that stand in cells and decide a row, each once: rows may share one. */
  public Set<CheckedFormula> formulas() {
    Set<CheckedFormula> formulas = new LinkedHashSet<>(written.formulas().values());
    byOpening.values().forEach(cells -> formulas.addAll(cells.formulas().values()));
    Set<String> changed = new HashSet<>();
    byName.forEach((row, cells) -> changed.add(Name.key(row.name())));
    fillIns((name, formula) -> formulas.add(formula), name -> !changed.contains(name));
    byName.values().forEach(cells -> formulas.addAll(cells.formulas().values()));
    return formulas;
  }

  /**
   * The formulas of single rows by the names of these: those that people write, and those that
   * changes set. Of two for one row the last holds.
   *
   * @param keys the entries of the key column
   */
  public Map<String, CheckedFormula> namedFormulas(Entries keys) {
    Map<String, CheckedFormula> named = new LinkedHashMap<>();
    new TreeMap<>(written.formulas())
        .forEach((row, formula) -> named.put(keys.writtenText(row), formula));
    fillIns(named::put, name -> true);
    byName.forEach((row, cells) -> change(named, Name.key(row.name()), cells));
    return named;
  }

  private static void change(Map<String, CheckedFormula> named, String row, Cells one) {
    named.remove(row);
    one.formulas().values().forEach(formula -> named.put(row, formula));
  }

  /** The text that people wrote into a row; empty where there is none. */
  private String writtenText(int row) {
    return written.value(row) instanceof Value.Text text ? text.text() : "";
  }

  @FunctionalInterface
  private interface Named {
    void take(String name, CheckedFormula formula);
  }

  /** Goes through what fills in, but for what a later row of the same name fills in. */
  private void fillIns(Named to, Predicate<String> counts) {
    Map<String, CheckedFormula> last = new LinkedHashMap<>();
    byFillIn.forEach(
        (segment, cells) -> {
          for (int at = 0; at < segment.filled().size(); at++) {
            String name = Name.key(segment.filled().get(at).name());
            CheckedFormula formula = cells.formulas().get(at);
            if (formula != null && counts.test(name)) {
              last.put(name, formula);
            } else if (cells.isFilled(at)) {
              last.remove(name);
            }
          }
        });
    last.forEach(to::take);
  }

  /** The formulas that openings say of all their rows. */
  public Map<RowOpening, CheckedFormula> openingFormulas() {
    if (byOpening.isEmpty()) {
      return Map.of();
    }
    Map<RowOpening, CheckedFormula> formulas = new LinkedHashMap<>();
    byOpening.forEach(
        (opening, one) -> one.formulas().values().forEach(f -> formulas.put(opening, f)));
    return formulas;
  }

  /** In which rows the cell of an opening decides: yes there, no where others are filled in. */
  public Entries decidedBy(RowOpening opening) {
    Entries decided = map(cells -> filled(cells, false));
    Cells one = byOpening.get(opening);
    if (one != null) {
      decided.byOpening.put(opening, filled(one, true));
    }
    return decided;
  }

  /** In which rows anything is filled in. */
  public Entries filled() {
    return map(cells -> filled(cells, true));
  }

  /**
   * The {@code ±} of each filled cell, as a cell of its own.
   *
   * @param none stands where a filled cell has no {@code ±}
   */
  public Entries tolerances(Value none) {
    return map(cells -> tolerances(cells, none));
  }

  private static Cells tolerances(Cells written, Value none) {
    Cells cells = new Cells(written.size());
    for (int row = 0; row < written.size(); row++) {
      if (written.isFilled(row)) {
        CheckedFormula tolerance = written.tolerances().get(row);
        Optional<Value> literal = tolerance == null ? Optional.of(none) : notNegative(tolerance);
        if (tolerance != null && literal.isEmpty()) {
          cells.set(row, tolerance);
        } else {
          cells.set(row, literal.orElse(none));
        }
      }
    }
    return cells;
  }

  /** A number that is 0 or more; the calculation finds any other at fault. */
  private static Optional<Value> notNegative(CheckedFormula tolerance) {
    return tolerance
        .literal()
        .filter(v -> v instanceof Value.Amount a && a.quantity().number().signum() >= 0);
  }

  private static Cells filled(Cells of, boolean told) {
    Cells cells = new Cells(of.size());
    for (int row = 0; row < of.size(); row++) {
      if (of.isFilled(row)) {
        cells.set(row, new Value.YesNo(told));
      }
    }
    return cells;
  }

  /** The names of rows that are not known yet, wherever cells name them. */
  List<LateName> lateNames() {
    List<LateName> names = new ArrayList<>(byName.keySet());
    all().forEach(cells -> names.addAll(cells.lateNames()));
    return names;
  }

  /** The operations of all formulas, functions written out. */
  long operations() {
    Set<CheckedFormula> formulas = new LinkedHashSet<>();
    all().forEach(cells -> formulas.addAll(cells.formulas().values()));
    return formulas.stream().mapToLong(CheckedFormula::writtenOut).sum();
  }

  /**
   * The cells of the rows that there are.
   *
   * @param place whose entries these are
   * @param rows those of its table
   * @param others the rows of tables that cells name
   */
  public Cells in(Place place, Rows rows, BookRows others) {
    if (rows.table().isWritten()) {
      return written.resolved(written.lateNames(), others);
    }
    Cells cells = new Cells(rows.count());
    for (int row = 0; row < rows.count(); row++) {
      int at = row;
      Value brought = place instanceof Column column ? rows.brought(column, row) : null;
      if (brought != null) {
        cells.set(row, brought);
      } else {
        rows.opening(row).map(byOpening::get).ifPresent(one -> cells.copy(one, 0, at));
      }
    }
    byFillIn.forEach((segment, from) -> fillIn(segment, from, rows, cells));
    byName.forEach(
        (name, one) -> rows.keys().row(name.name()).ifPresent(row -> cells.change(one, row)));
    return cells.resolved(lateNames(), others);
  }

  private static void fillIn(RowSegment segment, Cells from, Rows rows, Cells into) {
    for (int at = 0; at < segment.filled().size(); at++) {
      int row = rows.row(segment, at);
      if (row != Rows.NO_ROW && from.isFilled(at)) {
        into.copy(from, at, row);
      }
    }
  }

  /** A copy to be edited, with the cells of rows that people write for so many rows. */
  Entries copy(int writtenRows) {
    Map<Cells, Integer> sizes = new HashMap<>();
    sizes.put(written, writtenRows);
    return map(cells -> cells.copy(sizes.getOrDefault(cells, 0)));
  }
}
