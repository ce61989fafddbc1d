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
import org.battenbook.book.OpenedKey;
import org.battenbook.book.Place;
import org.battenbook.book.RowOpening;
import org.battenbook.book.RowSegment;
import org.battenbook.syntax.Name;
import org.battenbook.value.Value;

/**
 * The cells written for a column, before all rows are known. A table whose rows people write has
 * one cell for each row. The cells of opened and planned rows come from three sources: an opening's
 * cell for all its rows, rows that people write to enter cells, and changes of single rows.
 */
public final class Entries {
  /** The entries of a place without written cells. */
  public static final Entries NONE = new Entries(Cells.NONE);

  /** The cells of the rows that people write. */
  private final Cells written;

  /** The one cell that each opening has for all its rows. */
  private final Map<RowOpening, Cells> byOpening = new LinkedHashMap<>();

  /** The cells that people enter for opened rows, by segment. */
  private final Map<RowSegment, Cells> byFillIn = new LinkedHashMap<>();

  /** The one cell of each change of an opened or planned row. */
  private final Map<LateName, Cells> byName = new LinkedHashMap<>();

  Entries(Cells written) {
    this.written = written;
  }

  /** The cells of the rows that people write. */
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

  /** A copy with a function applied to each group of cells. */
  Entries map(UnaryOperator<Cells> function) {
    Entries copy = new Entries(function.apply(written));
    byOpening.forEach((key, cells) -> copy.byOpening.put(key, function.apply(cells)));
    byFillIn.forEach((key, cells) -> copy.byFillIn.put(key, function.apply(cells)));
    byName.forEach((key, cells) -> copy.byName.put(key, function.apply(cells)));
    return copy;
  }

  /** A cell: the group that has it, and its index there. */
  record Cell(Cells cells, int at) {}

  /**
   * The cell in which people write, or could write, an entry of a row.
   *
   * @return empty if the rows are not written by people, and no segment names the row
   */
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

  /** Whether all cells are empty. */
  public boolean isEmpty() {
    return this == NONE || all().stream().allMatch(Cells::isEmpty);
  }

  /** Whether any cell has a tolerance. */
  public boolean hasTolerances() {
    return this != NONE && all().stream().anyMatch(cells -> !cells.tolerances().isEmpty());
  }

  /**
   * The formulas of cells, each once, since rows can share one. It leaves out formulas that a later
   * entry or a change replaces.
   */
  public Set<CheckedFormula> formulas() {
    if (this == NONE) {
      return Set.of();
    }
    Set<CheckedFormula> formulas = new LinkedHashSet<>(written.formulas().values());
    byOpening.values().forEach(cells -> formulas.addAll(cells.formulas().values()));
    Set<String> changed = new HashSet<>();
    byName.forEach((row, cells) -> changed.add(Name.key(row.name())));
    fillIns(
        (name, formula) -> formulas.add(formula),
        row -> !row.key().hasCertainName() || !changed.contains(Name.key(row.name())));
    byName.values().forEach(cells -> formulas.addAll(cells.formulas().values()));
    return formulas;
  }

  /**
   * The formulas of single rows, by row name: those that people write and those of changes. If a
   * row has several, the last one counts. A formula for the first of the rows that a source row
   * opens also counts for the row that it opens alone.
   *
   * @param keys the entries of the key column
   */
  public Map<String, CheckedFormula> namedFormulas(Entries keys) {
    Map<String, CheckedFormula> named = new LinkedHashMap<>();
    new TreeMap<>(written.formulas())
        .forEach((row, formula) -> named.put(keys.writtenText(row), formula));
    fillIns(
        (name, formula) -> {
          RowOpening.unnumbered(name).ifPresent(alone -> named.put(alone, formula));
          named.put(name, formula);
        },
        row -> true);
    byName.forEach((row, cells) -> change(named, Name.key(row.name()), cells));
    return named;
  }

  /** Lets a change replace the formula of a row, by one of its own or by a value. */
  private static void change(Map<String, CheckedFormula> named, String row, Cells one) {
    RowOpening.unnumbered(row).ifPresent(alone -> replace(named, alone, one));
    replace(named, row, one);
  }

  private static void replace(Map<String, CheckedFormula> named, String row, Cells one) {
    named.remove(row);
    one.formulas().values().forEach(formula -> named.put(row, formula));
  }

  /** The text written in a row's cell; empty if there is none. */
  private String writtenText(int row) {
    return written.value(row) instanceof Value.Text text ? text.text() : "";
  }

  /** Receives the name of a row and a formula of its cell. */
  @FunctionalInterface
  private interface Named {
    void take(String name, CheckedFormula formula);
  }

  /**
   * Visits the formulas that people enter for opened rows. It leaves out those that a later entry
   * for the same row replaces.
   *
   * @param counts whether to visit the formulas of a row
   */
  private void fillIns(Named to, Predicate<RowSegment.Filled> counts) {
    Map<OpenedKey, Runnable> last = new LinkedHashMap<>();
    byFillIn.forEach(
        (segment, cells) -> {
          for (int at = 0; at < segment.filled().size(); at++) {
            RowSegment.Filled row = segment.filled().get(at);
            String name = Name.key(row.name());
            CheckedFormula formula = cells.formulas().get(at);
            if (formula != null && counts.test(row)) {
              last.put(row.key(), () -> to.take(name, formula));
            } else if (cells.isFilled(at)) {
              last.remove(row.key());
            }
          }
        });
    last.values().forEach(Runnable::run);
  }

  /** The formulas that openings have for all their rows. */
  public Map<RowOpening, CheckedFormula> openingFormulas() {
    if (byOpening.isEmpty()) {
      return Map.of();
    }
    Map<RowOpening, CheckedFormula> formulas = new LinkedHashMap<>();
    byOpening.forEach(
        (opening, one) -> one.formulas().values().forEach(f -> formulas.put(opening, f)));
    return formulas;
  }

  /**
   * Cells of yes or no that tell in which rows the cell of an opening decides: yes in its rows, no
   * in rows with an entry of their own, and empty elsewhere.
   */
  public Entries decidedBy(RowOpening opening) {
    Entries decided = map(cells -> filled(cells, false));
    Cells one = byOpening.get(opening);
    if (one != null) {
      decided.byOpening.put(opening, filled(one, true));
    }
    return decided;
  }

  /** Cells of yes for each cell that is filled; the others are empty. */
  public Entries filled() {
    return map(cells -> filled(cells, true));
  }

  /**
   * The tolerance of each filled cell, as a cell of its own.
   *
   * @param none the value for a filled cell without a tolerance
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

  /** A tolerance that is a number of at least 0; for any other, evaluation reports the fault. */
  private static Optional<Value> notNegative(CheckedFormula tolerance) {
    return tolerance
        .literal()
        .filter(v -> v instanceof Value.Amount a && a.quantity().number().signum() >= 0);
  }

  private static Cells filled(Cells of, boolean answer) {
    Cells cells = new Cells(of.size());
    for (int row = 0; row < of.size(); row++) {
      if (of.isFilled(row)) {
        cells.set(row, new Value.YesNo(answer));
      }
    }
    return cells;
  }

  /** The names of rows in all cells and changes that are still to be checked. */
  List<LateName> lateNames() {
    if (this == NONE) {
      return List.of();
    }
    List<LateName> names = new ArrayList<>(byName.keySet());
    all().forEach(cells -> names.addAll(cells.lateNames()));
    return names;
  }

  /** The number of operations in all formulas, with functions expanded inline. */
  long operations() {
    if (this == NONE) {
      return 0;
    }
    Set<CheckedFormula> formulas = new LinkedHashSet<>();
    all().forEach(cells -> formulas.addAll(cells.formulas().values()));
    return formulas.stream().mapToLong(CheckedFormula::expandedSize).sum();
  }

  /**
   * The cells of a place, now that its rows are known.
   *
   * @param place the place of these entries
   * @param rows the rows of its table
   * @param others the rows of all tables, to find those that cells name
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
        (name, one) ->
            rows.keys().row(name.name()).ifPresent(row -> cells.change(one, row, place)));
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

  /** A copy for an edit, with cells for at least {@code writtenRows} rows that people write. */
  Entries copy(int writtenRows) {
    Map<Cells, Integer> sizes = new HashMap<>();
    sizes.put(written, writtenRows);
    return map(cells -> cells.copy(sizes.getOrDefault(cells, 0)));
  }
}
