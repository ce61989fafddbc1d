package org.battenbook.check;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.battenbook.bind.NameBinder;
import org.battenbook.bind.RowKeys;
import org.battenbook.bind.Scope;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;
import org.battenbook.syntax.FunctionDefinition;
import org.battenbook.syntax.ShownAs;
import org.battenbook.unit.Form;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** What the check of one formula asks of the rest of the book. */
interface Knowledge {
  CheckEnvironment environment();

  /** The kind of a place; {@link Kind#UNKNOWN} where it is at fault or reads itself. */
  Kind kind(Place place);

  /** A function checked for a call's kinds; absent, and a message given, where they do not fit. */
  @Nullable CheckedFunction checkCall(
      FunctionDefinition definition, List<Kind> kinds, Span call, Diagnostics diagnostics);

  default NameBinder binder() {
    return environment().binder();
  }

  default Table table(String key) {
    return environment().table(key);
  }

  /** A table by name, if the formula's text sees it. */
  default @Nullable Table tableSeen(String key, Scope scope) {
    return environment().tableSeen(key, scope);
  }

  default Collection<String> tableNames() {
    return environment().tableNames();
  }

  default RowKeys keys(Table table) {
    return environment().rows(table).keys();
  }

  default @Nullable FunctionDefinition function(String key, Scope scope) {
    return environment().function(key, scope);
  }

  default Collection<String> functionNames() {
    return environment().functionNames();
  }

  /** The declared kind of a parameter, or {@link Kind#UNKNOWN}. */
  default Kind parameterKind(FunctionDefinition.Parameter parameter) {
    return environment().parameterKind(parameter);
  }

  /** A value that the job's settings give: {@code minor unit}; a fault where they are at fault. */
  default Optional<Value> setting(String key) {
    return environment().setting(key);
  }

  /** The form that a text asks for, if it fits the kind; else a message and none. */
  default Optional<Form> form(ShownAs shownAs, Kind kind, Diagnostics diagnostics) {
    return environment().shownForms().form(shownAs, kind, diagnostics);
  }
}
