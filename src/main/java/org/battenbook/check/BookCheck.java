package org.battenbook.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.battenbook.bind.Scope;
import org.battenbook.book.Book;
import org.battenbook.book.Column;
import org.battenbook.book.Condition;
import org.battenbook.book.Page;
import org.battenbook.book.Place;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.RowOpening;
import org.battenbook.book.Rule;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.FunctionDefinition;
import org.battenbook.unit.Form;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Type-checks every formula of a book. Kinds are inferred on demand: a place that another one reads
 * is checked first. A place that reads itself, as one with {@code above} can, is checked twice. The
 * first check infers its kind from a branch that does not read it; the second check uses that kind.
 */
public final class BookCheck implements TypingContext {
  private final Book book;
  private final Diagnostics diagnostics;
  private final CheckEnvironment environment;
  private final DeclaredKinds declaredKinds;

  /** The kinds that the workbook declares. */
  private final Map<Place, Kind> declared = new HashMap<>();

  private final Map<Place, CheckedPlace> done = new LinkedHashMap<>();

  /** The places being checked now, with the kind of each as far as it is known. */
  private final Map<Place, Kind> inProgress = new HashMap<>();

  /**
   * Places that read a place still in progress. Their results are valid only until that place's
   * kind is known.
   */
  private final Map<Place, CheckedPlace> provisional = new HashMap<>();

  /** The places in progress that the current place has read. */
  private Set<Place> readInProgress = new HashSet<>();

  private final FunctionChecks functions;

  private BookCheck(Book book, Diagnostics diagnostics) {
    this.book = book;
    this.diagnostics = diagnostics;
    this.environment = new CheckEnvironment(book, diagnostics);
    this.declaredKinds = environment.declaredKinds(diagnostics);
    this.functions = new FunctionChecks(this, diagnostics);
  }

  /**
   * Checks a whole book.
   *
   * @param diagnostics receives every fault of names, kinds and dimensions
   */
  public static CheckedBook check(Book book, Diagnostics diagnostics) {
    return new BookCheck(book, diagnostics).check();
  }

  /** Reads the declared kinds of all places, and returns the places. */
  private List<Place> declared() {
    List<Place> places = places();
    places.forEach(this::declare);
    return places;
  }

  private CheckedBook check() {
    List<Place> places = declared();
    functions.check(book.functions());
    places.forEach(this::checked);
    Map<Place, CheckedPlace> inOrder = new LinkedHashMap<>();
    places.forEach(place -> inOrder.put(place, checked(place)));
    Map<Rule, CheckedFormula> messages = checkRules();
    book.tables().forEach(this::checkOpening);
    book.plans().forEach(this::checkPlan);
    return new CheckedBook(environment, inOrder, messages);
  }

  /**
   * Checks a plan. After a fault, the faults of the tables it makes are dropped: they follow from
   * it.
   */
  private void checkPlan(PlanStatement plan) {
    if (!new PlanKinds(column -> checked(column).kind(), diagnostics).allow(plan)) {
      book.tables().stream()
          .filter(table -> plan.equals(table.plan()))
          .forEach(table -> diagnostics.retract(table.origin().source()));
    }
  }

  /** All lines and columns, the conditions of rules, and the settings of plans. */
  private List<Place> places() {
    List<Place> places = new ArrayList<>();
    for (Page page : book.pages()) {
      places.addAll(page.lines());
      page.rules().forEach(rule -> places.add(rule.condition()));
    }
    for (Table table : book.tables()) {
      places.addAll(table.columns());
      table.rules().forEach(rule -> places.add(rule.condition()));
    }
    book.plans().forEach(plan -> places.addAll(plan.settings().values()));
    return places;
  }

  private void declare(Place place) {
    if (place.declaredKind() != null) {
      declared.put(place, declaredKinds.kind(place.declaredKind()));
    }
    if (place instanceof Condition) {
      declared.put(place, Kind.YES_NO);
    }
    boolean key = place instanceof Column column && column.table().keyColumn() == column;
    if (key && kindOrUnknown(place) != Kind.TEXT) {
      diagnostics.fault(
          "key-not-text",
          place.origin(),
          "'%s' names the rows, so it must be a text".formatted(place.label()),
          "write '%s : text' under 'given'".formatted(place.label()));
      declared.put(place, Kind.TEXT);
    }
  }

  private Kind kindOrUnknown(Place place) {
    return declared.getOrDefault(place, Kind.UNKNOWN);
  }

  private CheckedPlace checked(Place place) {
    CheckedPlace known = done.get(place);
    known = known == null ? provisional.get(place) : known;
    if (known != null) {
      return known;
    }
    boolean root = inProgress.isEmpty();
    Set<Place> readAround = readInProgress;
    readInProgress = new HashSet<>();
    inProgress.put(place, kindOrUnknown(place));
    CheckedPlace result = checkPlace(place);
    if (readInProgress.contains(place)) {
      provisional.clear();
      inProgress.put(place, result.kind());
      result = checkPlace(place);
    }
    inProgress.remove(place);
    readInProgress.remove(place);
    (readInProgress.isEmpty() ? done : provisional).put(place, result);
    if (root) {
      provisional.clear();
    }
    readAround.addAll(readInProgress);
    readInProgress = readAround;
    return result;
  }

  private CheckedPlace checkPlace(Place place) {
    Kind wanted = kindOrUnknown(place);
    Kind kind = wanted;
    List<CheckedPlace.Layered> layers = new ArrayList<>();
    for (int i = 0; i < place.layers().size(); i++) {
      Formula formula = place.layers().get(i).formula();
      CheckedFormula checked = null;
      if (formula != null) {
        checked = new CheckedFormula(formula, Scope.of(place, i));
        Kind found =
            new FormulaCheck(this, diagnostics, checked, List.of())
                .check(kind == Kind.UNKNOWN ? null : kind);
        kind = kind == Kind.UNKNOWN ? found : kind;
        if (wanted == Kind.UNKNOWN && inProgress.get(place) == Kind.UNKNOWN && i == 0) {
          inProgress.put(place, kind);
        }
      }
      layers.add(new CheckedPlace.Layered(checked));
    }
    Entries entries =
        place instanceof Column column && kind != Kind.UNKNOWN
            ? new CellCheck(this, diagnostics).entries(column, kind)
            : Entries.NONE;
    return new CheckedPlace(place, kind, form(place, kind), layers, entries, Set.of());
  }

  private @Nullable Form form(Place place, Kind kind) {
    if (place.shownAs() != null) {
      Optional<Form> own = environment.shownForms().form(place.shownAs(), kind, diagnostics);
      if (own.isPresent()) {
        return own.get();
      }
    }
    return kind instanceof Kind.Measured measured
        ? environment.shownForms().defaults().form(measured.dimension())
        : null;
  }

  private void checkOpening(Table table) {
    for (RowOpening opening : table.openings()) {
      RowOpening.Count count = opening.count();
      if (count != null) {
        checkCount(opening, count.upTo());
      }
    }
  }

  /** Checks that the number of rows to open is a plain number. */
  private void checkCount(RowOpening opening, Column upTo) {
    Kind kind = checked(upTo).kind();
    if (kind != Kind.UNKNOWN && !kind.equals(Kind.NUMBER)) {
      diagnostics.fault(
          "rows-not-by-count",
          opening.statement(),
          "'%s' is %s, but the number of rows must be a count"
              .formatted(upTo.words(), kind.words()),
          "end it with a column of '%s' that is a count".formatted(opening.from()));
    }
  }

  private Map<Rule, CheckedFormula> checkRules() {
    Map<Rule, CheckedFormula> messages = new HashMap<>();
    book.pages().forEach(page -> page.rules().forEach(rule -> checkMessage(rule, messages)));
    book.tables().forEach(table -> table.rules().forEach(rule -> checkMessage(rule, messages)));
    return messages;
  }

  private void checkMessage(Rule rule, Map<Rule, CheckedFormula> messages) {
    CheckedFormula message = new CheckedFormula(rule.message(), Scope.of(rule.condition(), 0));
    new FormulaCheck(this, diagnostics, message, List.of()).check(Kind.TEXT);
    messages.put(rule, message);
  }

  @Override
  public CheckEnvironment environment() {
    return environment;
  }

  @Override
  public @Nullable CheckedFunction checkCall(
      FunctionDefinition definition, List<Kind> kinds, Span call, Diagnostics to) {
    return functions.call(definition, kinds, call, to);
  }

  @Override
  public Kind kind(Place place) {
    Kind known = declared.get(place);
    if (known != null) {
      return known;
    }
    Kind soFar = inProgress.get(place);
    if (soFar != null) {
      readInProgress.add(place);
      return soFar;
    }
    return checked(place).kind();
  }
}
