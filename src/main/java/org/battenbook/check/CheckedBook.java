package org.battenbook.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.battenbook.bind.Rows;
import org.battenbook.bind.Scope;
import org.battenbook.book.Book;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.Rule;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostics;
import org.battenbook.syntax.Formula;
import org.battenbook.unit.Forms;
import org.battenbook.unit.Shown;
import org.battenbook.value.Kind;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * A book with the results of type checking. It is immutable: an edit gives a new one, which shares
 * all places that the edit did not change.
 */
public final class CheckedBook {
  private final CheckEnvironment environment;
  private final Map<Place, CheckedPlace> places;
  private final Map<Rule, CheckedFormula> messages;

  CheckedBook(
      CheckEnvironment environment,
      Map<Place, CheckedPlace> places,
      Map<Rule, CheckedFormula> messages) {
    this.environment = environment;
    this.places = Collections.unmodifiableMap(places);
    this.messages = messages;
  }

  public Book book() {
    return environment.book();
  }

  /** The default forms in which quantities are shown. */
  public Forms forms() {
    return environment.shownForms().defaults();
  }

  /**
   * The rows of a table that people write.
   *
   * @throws IllegalArgumentException if people do not write the rows of that table
   */
  public Rows writtenRows(Table table) {
    return environment.rows(table);
  }

  /** Every place, in the order of the book; error bounds come last. */
  public Collection<CheckedPlace> places() {
    return places.values();
  }

  /** What the check found, by place, in the same order. */
  public Map<Place, CheckedPlace> byPlace() {
    return places;
  }

  /** This book with other places, such as those with error bounds. */
  public CheckedBook withPlaces(Map<Place, CheckedPlace> others) {
    return new CheckedBook(environment, others, messages);
  }

  /**
   * The places that edits have changed since an earlier state of this book. Places are compared by
   * identity, since an edit keeps the objects of places that it does not change.
   *
   * @return empty if the two books do not have the same places
   */
  @SuppressWarnings("ReferenceEquality")
  public Optional<Set<Place>> changesFrom(CheckedBook before) {
    Map<Place, CheckedPlace> then = before.places;
    if (!places.keySet().equals(then.keySet())) {
      return Optional.empty();
    }
    Set<Place> changed = new LinkedHashSet<>(places.keySet());
    changed.removeIf(place -> place(place) == then.get(place));
    return Optional.of(changed);
  }

  /**
   * A place and what the check found.
   *
   * @throws IllegalArgumentException if the book has no such place
   */
  public CheckedPlace place(Place place) {
    CheckedPlace found = places.get(place);
    if (found == null) {
      throw new IllegalArgumentException("no place " + place);
    }
    return found;
  }

  /** A value shown in the form of a place, even if a literal is written there. */
  public Shown showCalculated(Place place, Value value) {
    return ShownValue.of(value, place(place).form());
  }

  /**
   * The message of a rule, a text with holes.
   *
   * @throws IllegalArgumentException if the book has no such rule
   */
  public CheckedFormula message(Rule rule) {
    CheckedFormula found = messages.get(rule);
    if (found == null) {
      throw new IllegalArgumentException("no message at " + rule.span());
    }
    return found;
  }

  /**
   * This book with another formula in the last layer of a place. Error bounds stay as they were.
   *
   * @param formula the new formula; its source text is the edited statement
   * @return empty if the formula has a fault or another kind. The caller must then read the whole
   *     workbook again, which reports what is wrong.
   */
  public Optional<CheckedBook> withFormula(Place place, Formula formula) {
    CheckedPlace old = place(place);
    int last = old.layers().size() - 1;
    boolean infersKind = last == 0 && place.declaredKind() == null;
    Scope scope = Scope.of(place, last);
    CheckedFormula checked = new CheckedFormula(formula, scope);
    Diagnostics found = new Diagnostics();
    Kind kind =
        new FormulaCheck(new CheckedKinds(environment, places), found, checked, List.of())
            .check(infersKind ? null : old.kind());
    boolean readsItself = checked.needs().stream().anyMatch(need -> need.place() == place);
    if (!kind.equals(old.kind()) || (infersKind && readsItself)) {
      return Optional.empty();
    }
    List<CheckedPlace.Layered> layers = new ArrayList<>(old.layers());
    layers.set(last, new CheckedPlace.Layered(checked));
    return with(
        new CheckedPlace(place, old.kind(), old.form(), layers, old.entries(), old.furtherNeeds()),
        found);
  }

  /**
   * This book with another entry in one cell. Error bounds stay as they were.
   *
   * @param rows the rows of the column's table
   * @param row the index of the row
   * @param entry the new entry; its source text is the edited row. Null to empty the cell.
   * @return empty if the entry has a fault, or no written row has the cell. The caller must then
   *     read the whole workbook again, which reports what is wrong.
   */
  public Optional<CheckedBook> withCell(
      Column column, Rows rows, int row, @Nullable Formula entry) {
    CheckedPlace old = place(column);
    Diagnostics found = new Diagnostics();
    Entries entries = old.entries().copy(rows.table().writtenRows());
    Optional<Entries.Cell> cell = entries.cell(column, rows, row);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    Cells cells = cell.get().cells();
    int at = cell.get().at();
    boolean isOfChange = cells.changes().containsKey(at);
    new CellCheck(new CheckedKinds(environment, places), found)
        .enter(entry, at, column, old.kind(), cells);
    CheckedFormula formula = cells.formulas().get(at);
    boolean mayReadFormula = isOfChange && formula != null && formula.readsInherited();
    if (mayReadFormula || (entry != null && !cells.isFilled(at))) {
      return Optional.empty();
    }
    cells.setTyped(at, entry == null ? null : entry.span());
    return with(
        new CheckedPlace(column, old.kind(), old.form(), old.layers(), entries, old.furtherNeeds()),
        found);
  }

  private Optional<CheckedBook> with(CheckedPlace changed, Diagnostics found) {
    if (!found.inOrder().isEmpty()) {
      return Optional.empty();
    }
    Map<Place, CheckedPlace> copy = new LinkedHashMap<>(places);
    copy.put(changed.place(), changed);
    return Optional.of(withPlaces(copy));
  }
}
