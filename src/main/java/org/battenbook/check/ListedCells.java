package org.battenbook.check;

import org.battenbook.book.Column;
import org.battenbook.book.RowSegment;
import org.battenbook.parse.CellReader;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.DateLiteral;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.QuantityLiteral;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.syntax.TruthLiteral;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Reads the cells of one column of a list, which may be values but not formulas. Messages name the
 * column of the list. After {@link #MOST_REPORTED} faults the rest of the column is not read, since
 * all can have the same cause.
 */
final class ListedCells {
  /** How many faults of one column are reported. */
  static final int MOST_REPORTED = 20;

  private final TypingContext typing;
  private final Column column;
  private final Kind kind;
  private final RowSegment.Heading heading;
  private final Diagnostics diagnostics;
  private int reported;

  ListedCells(
      TypingContext typing,
      Column column,
      Kind kind,
      RowSegment.Heading heading,
      Diagnostics diagnostics) {
    this.typing = typing;
    this.column = column;
    this.kind = kind;
    this.heading = heading;
    this.diagnostics = diagnostics;
  }

  /** Whether there were too many faults to continue. */
  boolean isGivenUp() {
    return reported > MOST_REPORTED;
  }

  /**
   * Puts the value of a cell of the list into a row's cell, or reports the first fault.
   *
   * @param listRow the row in the list
   * @param at the column in the list
   * @param row the row in the table
   */
  void enter(RowCells list, int listRow, int at, int row, Cells cells) {
    Diagnostics found = new Diagnostics();
    Formula value = value(list, listRow, at, found);
    new CellCheck(typing, found).enter(value, row, column, kind, cells);
    found.inOrder().stream().limit(1).forEach(this::report);
  }

  private void report(Diagnostic found) {
    reported++;
    diagnostics.report(
        isGivenUp()
            ? Diagnostic.fault(
                "list-column-given-up",
                found.span(),
                "column '%s' has errors in more than %d cells; those below were not read"
                    .formatted(heading.written(), MOST_REPORTED),
                "correct these first")
            : inColumn(found));
  }

  private @Nullable Formula value(RowCells list, int row, int at, Diagnostics found) {
    Formula formula = CellReader.read(list, row, at, new Diagnostics());
    if (formula != null && isValue(formula.expression()) && isValue(formula.tolerance())) {
      return formula;
    }
    found.report(refusal(list.span(row, at)));
    return null;
  }

  private static boolean isValue(@Nullable Formula tolerance) {
    return tolerance == null || isValue(tolerance.expression().children().get(0));
  }

  private static boolean isValue(Expression expression) {
    boolean negative =
        expression instanceof Apply apply
            && FormulaCheck.operationOf(apply).isSign()
            && apply.children().get(0) instanceof QuantityLiteral;
    return negative
        || expression instanceof QuantityLiteral
        || expression instanceof TextLiteral
        || expression instanceof DateLiteral
        || expression instanceof TruthLiteral;
  }

  private Diagnostic refusal(Span cell) {
    String text = cell.text();
    if (text.matches("[-−]?\\d{1,3}(,\\d{3})+(\\.\\d+)?\\b.*")) {
      return Diagnostic.fault(
          "comma-in-number",
          cell,
          "'%s' has a comma".formatted(text),
          "write numbers without commas between thousands and with a decimal point");
    }
    if (text.matches("[-−]?\\d+,\\d+\\b.*")) {
      return Diagnostic.fault(
          "decimal-comma",
          cell,
          "'%s' has a decimal comma".formatted(text),
          "write %s; set a decimal point in the program that saves the list"
              .formatted(text.replaceFirst(",", ".")));
    }
    return Diagnostic.fault(
        "no-value-in-list",
        cell,
        "'%s' cannot be read as %s".formatted(text, kind.words()),
        text.matches(".*\\p{Sc}.*")
            ? "remove the currency sign; its code is in the unit"
            : "write %s, or leave the cell empty".formatted(form()));
  }

  private String form() {
    if (kind == Kind.DATE) {
      return "a date such as 2026-03-14";
    }
    if (kind == Kind.YES_NO) {
      return "yes or no";
    }
    return unit().isEmpty() || !heading.unit().isEmpty()
        ? "a number such as 4.25"
        : "a number with its unit, such as 4.25 " + unit();
  }

  /** A unit for the column's numbers; empty if they have none. */
  private String unit() {
    return kind instanceof Kind.Measured measured ? measured.dimension().baseSymbol() : "";
  }

  /** A message with the name of the column before it. */
  private Diagnostic inColumn(Diagnostic fault) {
    boolean wantsUnit = fault.code().equals("kind-mismatch") && !unit().isEmpty();
    return new Diagnostic(
        fault.severity(),
        fault.code(),
        fault.span(),
        fault.also(),
        "column '%s': %s".formatted(heading.written(), fault.message()),
        wantsUnit
            ? () ->
                "write a unit after the number, such as 4.25 %s, or in the heading: %s (%s)"
                    .formatted(unit(), column.name(), unit())
            : fault.advice());
  }
}
