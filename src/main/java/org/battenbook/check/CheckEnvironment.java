package org.battenbook.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.battenbook.bind.NameBinder;
import org.battenbook.bind.Rows;
import org.battenbook.bind.Scope;
import org.battenbook.book.Book;
import org.battenbook.book.Table;
import org.battenbook.number.Rational;
import org.battenbook.operation.Operation;
import org.battenbook.operation.Operations;
import org.battenbook.source.Diagnostics;
import org.battenbook.syntax.FunctionDefinition;
import org.battenbook.syntax.Name;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * The static environment of a book: what its names, tables, functions and settings mean, apart from
 * the kinds of formulas. It never changes, so edits of one book can be checked in several threads.
 */
final class CheckEnvironment {
  private final Book book;
  private final NameBinder binder;
  private final @Nullable String currency;
  private final ShownForms shownForms;
  private final Map<Table, Rows> rows;
  private final Map<FunctionDefinition.Parameter, Kind> parameters = new HashMap<>();

  /**
   * Creates the environment of a book.
   *
   * @param diagnostics receives faults of its settings, of the names of its rows, and of the kinds
   *     of its functions' parameters
   */
  CheckEnvironment(Book book, Diagnostics diagnostics) {
    this.book = book;
    this.binder = new NameBinder(book);
    this.currency = currency(book.currency(), diagnostics);
    this.shownForms = new ShownForms(book.lengths(), diagnostics);
    Map<Table, Rows> found = new LinkedHashMap<>();
    book.tables().stream()
        .filter(Table::isWritten)
        .forEach(t -> found.put(t, Rows.written(t, CellCheck.keys(t, diagnostics))));
    this.rows = found;
    DeclaredKinds declared = declaredKinds(diagnostics);
    book.functions().stream()
        .flatMap(function -> function.parameters().stream())
        .forEach(one -> parameters.put(one, parameterKind(one, declared)));
  }

  private static Kind parameterKind(FunctionDefinition.Parameter one, DeclaredKinds declared) {
    return one.kind() == null ? Kind.UNKNOWN : declared.kind(one.kind());
  }

  /** The job's currency; null after a fault. */
  private static @Nullable String currency(@Nullable Name written, Diagnostics diagnostics) {
    if (written == null) {
      return Dimension.NO_CURRENCY;
    }
    String code = written.text().toUpperCase(Locale.ROOT);
    boolean known =
        Currency.getAvailableCurrencies().stream().anyMatch(c -> c.getCurrencyCode().equals(code));
    if (!known) {
      diagnostics.fault(
          "unknown-currency",
          written.span(),
          "'%s' is not a currency".formatted(written),
          "write the three letters of ISO 4217, such as USD, EUR or GBP");
      return null;
    }
    return code;
  }

  /** A reader of the kinds written after a colon. */
  DeclaredKinds declaredKinds(Diagnostics diagnostics) {
    return new DeclaredKinds(book, currency, diagnostics);
  }

  Book book() {
    return book;
  }

  NameBinder binder() {
    return binder;
  }

  ShownForms shownForms() {
    return shownForms;
  }

  /**
   * The rows of a table that people write.
   *
   * @throws IllegalArgumentException if people do not write the rows of that table
   */
  Rows rows(Table table) {
    Rows found = rows.get(table);
    if (found == null) {
      throw new IllegalArgumentException("no table " + table);
    }
    return found;
  }

  /**
   * A table by the key of its name.
   *
   * @throws IllegalArgumentException if there is none
   */
  Table table(String key) {
    Table table = book.table(key);
    if (table == null) {
      throw new IllegalArgumentException("no table " + key);
    }
    return table;
  }

  /** A table by the key of its name; null if there is none that the scope sees. */
  @Nullable Table visibleTable(String key, Scope scope) {
    Table table = book.table(key);
    return table != null && book.sees(scope.file(), table.origin().source()) ? table : null;
  }

  Collection<String> tableNames() {
    return book.tables().stream().map(Table::toString).toList();
  }

  /** A workbook function by the key of its name; null if there is none that the scope sees. */
  @Nullable FunctionDefinition function(String key, Scope scope) {
    FunctionDefinition function = book.function(key);
    return function != null && book.sees(scope.file(), function.span().source()) ? function : null;
  }

  /** The names of all functions, built-in or of the workbook. */
  Collection<String> functionNames() {
    List<String> names = new ArrayList<>();
    Operations.functions().stream().map(Operation::name).forEach(names::add);
    book.functions().forEach(function -> names.add(function.name().text()));
    return names;
  }

  /**
   * The declared kind of a parameter; {@link Kind#UNKNOWN} if none is declared, or after a fault.
   */
  Kind parameterKind(FunctionDefinition.Parameter parameter) {
    return parameters.getOrDefault(parameter, Kind.UNKNOWN);
  }

  /**
   * A value that the job's settings define: {@code minor unit}, the smallest amount of its
   * currency.
   *
   * @return a fault if the setting has one; empty for any other key
   */
  Optional<Value> setting(String key) {
    if (!key.equals("minor unit")) {
      return Optional.empty();
    }
    if (currency == null) {
      return Optional.of(new Value.Fault("unknown-currency", "there is no currency"));
    }
    int digits = Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits());
    Rational step = Rational.of(10).pow(-digits);
    return Optional.of(new Value.Amount(new Quantity(step, Dimension.money(currency))));
  }
}
