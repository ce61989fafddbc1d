package org.battenbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.battenbook.bind.Meaning;
import org.battenbook.bind.Scope;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.Need.Reach;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.Span;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.Reference;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** Resolves the references of one formula: finds the path and the kind of each. */
final class ReferenceCheck {
  private final TypingContext typing;
  private final CheckEnvironment environment;
  private final Diagnostics diagnostics;
  private final CheckedFormula checked;
  private final List<Kind> argumentKinds;

  ReferenceCheck(
      TypingContext typing,
      Diagnostics diagnostics,
      CheckedFormula checked,
      List<Kind> argumentKinds) {
    this.typing = typing;
    this.environment = typing.environment();
    this.diagnostics = diagnostics;
    this.checked = checked;
    this.argumentKinds = argumentKinds;
  }

  /** Finds the kind of a reference, and stores its path. */
  Kind check(Reference reference, Scope scope) {
    return switch (reference.root()) {
      case THIS -> outerRow(reference, scope);
      case ABOVE -> rowAbove(reference, scope);
      case HERE -> here(reference, scope);
    };
  }

  private Kind here(Reference reference, Scope scope) {
    Name first = reference.names().get(0);
    Meaning meaning = environment.binder().resolve(first, scope);
    List<Name> rest = tail(reference, 1);
    if (meaning instanceof Meaning.Parameter parameter) {
      Target target = new Target.Parameter(parameter.index());
      return through(reference, target, argumentKinds.get(parameter.index()), rest);
    }
    if (meaning instanceof Meaning.Inherited inherited) {
      Target target = new Target.Inherited(inherited.place(), inherited.layer());
      checked.readInherited();
      return through(reference, target, typing.kind(inherited.place()), rest);
    }
    if (meaning instanceof Meaning.Found found && !isPage(found.place(), first, rest, scope)) {
      return through(reference, here(found.place(), scope), typing.kind(found.place()), rest);
    }
    return pageOrUnclear(reference, meaning, rest, scope);
  }

  /**
   * Whether the first name means a page although a place has the same name: in {@code
   * mats.overlap}, a place {@code mats} without rows is passed over for the page's line {@code
   * overlap}.
   */
  private boolean isPage(Place place, Name first, List<Name> rest, Scope scope) {
    return !rest.isEmpty()
        && !(typing.kind(place) instanceof Kind.RowOf)
        && environment.binder().onPage(first, rest.get(0), scope).isPresent();
  }

  private Kind pageOrUnclear(Reference reference, Meaning meaning, List<Name> rest, Scope scope) {
    Name first = reference.names().get(0);
    if (!rest.isEmpty()) {
      Optional<Line> line = environment.binder().onPage(first, rest.get(0), scope);
      if (line.isPresent()) {
        Kind kind = typing.kind(line.get());
        return through(reference, here(line.get(), scope), kind, tail(reference, 2));
      }
    }
    Optional<Value> setting = environment.setting(first.key());
    if (setting.isPresent()) {
      Kind kind =
          setting.get() instanceof Value.Amount amount
              ? new Kind.Measured(amount.quantity().dimension())
              : Kind.UNKNOWN;
      return through(reference, new Target.Setting(setting.get()), kind, rest);
    }
    if (meaning instanceof Meaning.Unclear unclear) {
      environment.binder().unclear(first, scope, unclear, diagnostics);
    }
    return Kind.UNKNOWN;
  }

  private Target here(Place place, Scope scope) {
    boolean inner = scope.outer() != null;
    boolean sameRow = place.table() != null && !inner;
    checked.need(new Need(place, sameRow ? Reach.SAME_ROW : Reach.WHOLE));
    return new Target.Here(place);
  }

  private Kind rowAbove(Reference reference, Scope scope) {
    Table table = scope.table();
    if (table == null || scope.outer() != null) {
      fault(
          "no-row-here",
          reference.span(),
          "'above' reads the row before, but there is no row here",
          "use it in a formula under 'worked out'");
      return Kind.UNKNOWN;
    }
    Name name = reference.names().get(0);
    Column column = table.column(name.key());
    if (column == null) {
      noSuchColumn(table, name);
      return Kind.UNKNOWN;
    }
    checked.need(new Need(column, Reach.ROW_ABOVE));
    return through(reference, new Target.Above(column), typing.kind(column), tail(reference, 1));
  }

  private Kind outerRow(Reference reference, Scope scope) {
    Scope outer = scope.outer();
    Table table = outer == null ? null : outer.table();
    if (outer == null || table == null) {
      fault(
          "no-outer-row",
          reference.span(),
          "'this' reads the row around a total or count, but there is none here",
          outer == null
              ? "to read this row itself, remove 'this.'"
              : "a line of a page has no row; compare with a value instead");
      return Kind.UNKNOWN;
    }
    if (reference.names().isEmpty()) {
      checked.setFact(reference, new Path(new Target.OuterRow(table), List.of()));
      return new Kind.RowOf(table.key());
    }
    Name name = reference.names().get(0);
    Column column = table.column(name.key());
    if (column == null) {
      noSuchColumn(table, name);
      return Kind.UNKNOWN;
    }
    boolean nested = outer.outer() != null;
    checked.need(new Need(column, nested ? Reach.WHOLE : Reach.SAME_ROW));
    return through(reference, new Target.Outer(column), typing.kind(column), tail(reference, 1));
  }

  private static List<Name> tail(Reference reference, int from) {
    return reference.names().subList(from, reference.names().size());
  }

  /** Follows the names after the dots of a path, each of which is a column of the row before it. */
  private Kind through(Reference reference, Target target, Kind kind, List<Name> rest) {
    List<Place> columns = new ArrayList<>();
    Kind reached = kind;
    for (Name name : rest) {
      if (!(reached instanceof Kind.RowOf rowOf)) {
        if (reached != Kind.UNKNOWN) {
          fault(
              "no-row-to-open",
              name.span(),
              "a dot reads a column of a row, but what is before '.%s' is %s"
                  .formatted(name, reached.words()),
              "");
        }
        return Kind.UNKNOWN;
      }
      Table table = environment.table(rowOf.table());
      Column column = table.column(name.key());
      if (column == null) {
        noSuchColumn(table, name);
        return Kind.UNKNOWN;
      }
      checked.need(new Need(column, Reach.WHOLE));
      columns.add(column);
      reached = typing.kind(column);
    }
    checked.setFact(reference, new Path(target, columns));
    return reached;
  }

  private void noSuchColumn(Table table, Name name) {
    diagnostics.fault(
        "no-such-column",
        name.span(),
        "table '%s' has no column '%s'".formatted(table, name),
        () ->
            NearNames.questionOrList(
                name.text(), table.columns().stream().map(c -> c.name().text()).toList()));
  }

  private void fault(String code, Span span, String message, String repair) {
    diagnostics.fault(code, span, message, repair);
  }
}
