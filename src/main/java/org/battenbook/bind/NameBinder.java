package org.battenbook.bind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.book.Book;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Page;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Name;
import org.battenbook.unit.Units;
import org.jspecify.annotations.Nullable;

/**
 * Resolves names. A name means the first of these that exists:
 *
 * <ol>
 *   <li>an argument of the function;
 *   <li>a column of the formula's own table;
 *   <li>a line of the same page;
 *   <li>a line of another page, if it is the only one of that name.
 * </ol>
 *
 * <p>A formula sees only what its own file and the files that it follows define. So a new line of a
 * job never captures a name in an inherited formula.
 */
public final class NameBinder {
  /** The longest name, in words, that is searched for two names side by side. */
  private static final int MOST_WORDS = 20;

  private final Book book;
  private final Map<String, List<Line>> linesByName = new HashMap<>();

  public NameBinder(Book book) {
    this.book = book;
    for (Page page : book.pages()) {
      for (Line line : page.lines()) {
        linesByName.computeIfAbsent(line.name().key(), k -> new ArrayList<>()).add(line);
      }
    }
  }

  /** The meaning of a name in a scope. */
  public Meaning resolve(Name name, Scope scope) {
    for (int i = 0; i < scope.parameters().size(); i++) {
      if (scope.parameters().get(i).key().equals(name.key())) {
        return new Meaning.Parameter(i);
      }
    }
    Column column = scope.table() == null ? null : scope.table().column(name.key());
    if (column != null && sees(scope, column)) {
      return meaning(column, scope);
    }
    Line here = scope.page() == null ? null : scope.page().line(name.key());
    if (here != null && sees(scope, here)) {
      return meaning(here, scope);
    }
    return elsewhere(name, scope);
  }

  /** The line that {@code page.line} names; empty if there is none that the scope sees. */
  public Optional<Line> onPage(Name page, Name line, Scope scope) {
    return Optional.ofNullable(book.page(page.key()))
        .map(p -> p.line(line.key()))
        .filter(found -> sees(scope, found));
  }

  private Meaning meaning(Place place, Scope scope) {
    Scope.Own own = scope.own();
    if (own == null || own.place() != place || own.layer() == 0 || scope.outer() != null) {
      return new Meaning.Found(place);
    }
    return new Meaning.Inherited(place, own.layer() - 1);
  }

  private Meaning elsewhere(Name name, Scope scope) {
    List<Line> found =
        linesByName.getOrDefault(name.key(), List.of()).stream()
            .filter(line -> sees(scope, line))
            .toList();
    return found.size() == 1 ? meaning(found.get(0), scope) : new Meaning.Unclear(found);
  }

  /** Reports a name whose meaning is unclear. */
  public void unclear(Name name, Scope scope, Meaning.Unclear meaning, Diagnostics diagnostics) {
    if (meaning.candidates().isEmpty()) {
      String what = scope.table() == null ? "line" : "column or line";
      diagnostics.fault(
          "unknown-name",
          name.span(),
          "there is no %s '%s'".formatted(what, name),
          () -> repair(name, scope));
      return;
    }
    List<String> full =
        meaning.candidates().stream().map(line -> "'%s.%s'".formatted(line.page(), name)).toList();
    diagnostics.fault(
        "ambiguous-name",
        name.span(),
        "'%s' is on more than one page".formatted(name),
        "write " + String.join(" or ", full));
  }

  private String repair(Name name, Scope scope) {
    Scope outer = scope.outer();
    if (outer != null && outer.table() != null && outer.table().column(name.key()) != null) {
      return "to read the outer row inside 'over %s', write 'this.%s'"
          .formatted(scope.table(), name);
    }
    Optional<String> joined = missingOperator(name, scope);
    if (joined.isPresent()) {
      return joined.get();
    }
    if (name.key().equals("yes") || name.key().equals("no")) {
      return "write 'true' or 'false' in a formula";
    }
    if (Units.find(name.text()).isPresent()) {
      return "if you mean the unit, write it after a number: 1 %s".formatted(name);
    }
    List<String> tables = tablesWith(name);
    if (!tables.isEmpty()) {
      return "it is a column of "
          + String.join(" and ", tables)
          + ": use it in that table's rows, after a row and a dot, or with 'over'";
    }
    return NearNames.question(name.text(), visibleNames(scope));
  }

  /** A question about two names side by side, as in {@code top rail lip}; empty for other names. */
  private Optional<String> missingOperator(Name name, Scope scope) {
    String[] words = name.text().split(" ", MOST_WORDS + 1);
    if (words.length > MOST_WORDS) {
      return Optional.empty();
    }
    for (int split = words.length - 1; split > 0; split--) {
      String left = String.join(" ", List.of(words).subList(0, split));
      String right = String.join(" ", List.of(words).subList(split, words.length));
      if (isKnown(left, scope) && isKnown(right, scope)) {
        return Optional.of("is an operator missing between '%s' and '%s'?".formatted(left, right));
      }
    }
    return Optional.empty();
  }

  private boolean isKnown(String name, Scope scope) {
    String key = Name.key(name);
    boolean column = Optional.ofNullable(scope.table()).map(table -> table.column(key)).isPresent();
    boolean parameter = scope.parameters().stream().anyMatch(p -> p.key().equals(key));
    return column
        || parameter
        || linesByName.getOrDefault(key, List.of()).stream().anyMatch(line -> sees(scope, line));
  }

  private List<String> tablesWith(Name name) {
    return book.tables().stream()
        .filter(table -> table.column(name.key()) != null)
        .map(table -> "'" + table + "'")
        .toList();
  }

  private List<String> visibleNames(Scope scope) {
    List<String> names = new ArrayList<>();
    scope.parameters().forEach(p -> names.add(p.text()));
    Table table = scope.table();
    if (table != null) {
      table.columns().forEach(column -> names.add(column.name().text()));
    }
    linesByName.values().stream()
        .flatMap(List::stream)
        .filter(line -> sees(scope, line))
        .forEach(line -> names.add(line.name().text()));
    return names;
  }

  private boolean sees(Scope scope, @Nullable Place place) {
    if (place == null) {
      return false;
    }
    SourceText definedIn = place.origin().source();
    return book.sees(scope.file(), definedIn);
  }
}
