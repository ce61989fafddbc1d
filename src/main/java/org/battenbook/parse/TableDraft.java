package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.source.Span;
import org.battenbook.syntax.Caution;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.LineDefinition;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.Opening;
import org.battenbook.syntax.Requirement;
import org.battenbook.syntax.TableSection;
import org.jspecify.annotations.Nullable;

/** A table while its lines are read. */
final class TableDraft {
  private final Name name;
  private final @Nullable Name key;
  private final String note;
  private final List<LineDefinition> given = new ArrayList<>();
  private final List<LineDefinition> workedOut = new ArrayList<>();
  private final List<Requirement> requirements = new ArrayList<>();
  private final List<Caution> cautions = new ArrayList<>();
  private final List<Name> shownFirst = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private Span span;
  private @Nullable Boolean isGiven;
  private boolean isOpening;

  TableDraft(Name name, @Nullable Name key, String note, Span span) {
    this.name = name;
    this.key = key;
    this.note = note;
    this.span = span;
  }

  void openGiven(Span head) {
    isGiven = true;
    isOpening = false;
    span = span.to(head);
  }

  void openWorkedOut(Span head) {
    isGiven = false;
    isOpening = false;
    span = span.to(head);
  }

  /** Rows are opened from another table's: the columns that are filled so are given. */
  void add(Opening opens, LineFaults faults) {
    span = span.to(opens.span());
    if (key == null || isGiven != null) {
      faults.fault(
          "for-each-out-of-place",
          opens.span(),
          key == null
              ? "'for each' must be where the table is defined"
              : "'for each' must be above 'given' and 'worked out'",
          key == null
              ? "write it under 'table %s by …' with the column that names its rows".formatted(name)
              : "move it up, right under 'table %s by %s'".formatted(name, key));
      return;
    }
    if (openings.isEmpty()) {
      given.add(filled(key, product("text", key.span())));
    }
    openings.add(opens);
    isOpening = true;
    given.add(filled(opens.each(), new KindExpression.RowOf(opens.of(), opens.of().span())));
    if (opens.count() != null) {
      Name number = opens.count().number();
      given.add(filled(number, product("count", number.span())));
    }
  }

  private static KindExpression product(String kind, Span span) {
    Name name = new Name(kind, span);
    return new KindExpression.Product(List.of(new KindExpression.Factor(name, false, 1)), span);
  }

  private static LineDefinition filled(Name column, KindExpression kind) {
    return new LineDefinition(column, kind, null, "", column.span());
  }

  /** Adds a column to the part that is open. */
  void add(LineDefinition column, LineFaults faults) {
    span = span.to(column.span());
    if (isOpening) {
      addCell(column, faults);
      return;
    }
    if (isGiven == null) {
      isGiven = column.formula() == null;
      faults.fault(
          "column-in-no-part",
          column.name().span(),
          "'%s' is not under 'given' or 'worked out'".formatted(column.name()),
          "write a line 'given' or 'worked out' above it; put a line of the page above the table"
              + " or below a line 'lines'");
    }
    if (isGiven) {
      given.add(column);
    } else {
      refuseEmpty(column, faults);
      workedOut.add(column);
    }
  }

  /** A line under {@code for each} says what its rows have in a column that is given. */
  private void addCell(LineDefinition cell, LineFaults faults) {
    if ((cell.formula() == null || cell.kind() != null) && !cell.isAtFault()) {
      faults.fault(
          "cell-of-opening-without-formula",
          cell.span(),
          "'%s' is under 'for each', which fills cells of the rows it creates"
              .formatted(cell.name()),
          "write '%s = ' and a formula, and its kind under 'given'".formatted(cell.name()));
      return;
    }
    Opening last = openings.remove(openings.size() - 1);
    List<LineDefinition> cells = new ArrayList<>(last.cells());
    cells.add(cell);
    openings.add(new Opening(last.each(), last.of(), last.count(), cells, last.span()));
  }

  private static void refuseEmpty(LineDefinition column, LineFaults faults) {
    if (column.formula() == null && !column.isAtFault()) {
      faults.fault(
          "worked-out-without-formula",
          column.span(),
          "'%s' is under 'worked out', but has no formula".formatted(column.name()),
          "write '%s = ' and a formula, or move it under 'given'".formatted(column.name()));
    }
  }

  void add(Requirement requirement) {
    span = span.to(requirement.span());
    requirements.add(requirement);
  }

  void add(Caution caution) {
    span = span.to(caution.span());
    cautions.add(caution);
  }

  void addShownFirst(List<Name> names, Span line) {
    span = span.to(line);
    shownFirst.addAll(names);
  }

  TableSection section() {
    return new TableSection(
        name, key, note, openings, given, workedOut, requirements, cautions, shownFirst, span);
  }
}
