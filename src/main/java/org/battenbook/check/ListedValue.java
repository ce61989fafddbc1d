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

/** A cell of a list: a value and no formula. What is wrong with it is said in the list's words. */
final class ListedValue {
  private final Column column;
  private final Kind kind;
  private final RowSegment.Heading heading;

  /** What cells under a heading are to be. */
  ListedValue(Column column, Kind kind, RowSegment.Heading heading) {
    this.column = column;
    this.kind = kind;
    this.heading = heading;
  }

  /** The value in a cell that is not empty; absent, with a fault, where there is none. */
  @Nullable Formula read(RowCells rows, int row, int at, Diagnostics diagnostics) {
    Formula formula = CellReader.read(rows, row, at, new Diagnostics());
    if (formula != null && isValue(formula.expression())) {
      return formula;
    }
    Span cell = rows.span(row, at);
    diagnostics.report(inColumn(refusal(cell)));
    return null;
  }

  private static boolean isValue(Expression expression) {
    boolean negative =
        expression instanceof Apply apply
            && apply.operation().equals("negate")
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
          "'%s' has a comma in it".formatted(text),
          "write numbers without commas between thousands, and with a point before decimals");
    }
    if (text.matches("[-−]?\\d+,\\d+\\b.*")) {
      return Diagnostic.fault(
          "decimal-comma",
          cell,
          "'%s' has a decimal comma".formatted(text),
          "write %s: have the program that saves the list use a decimal point"
              .formatted(text.replaceFirst(",", ".")));
    }
    return Diagnostic.fault(
        "no-value-in-list",
        cell,
        "'%s' is not read as %s".formatted(text, kind.words()),
        text.matches(".*\\p{Sc}.*")
            ? "leave the currency's sign out: its code stands in the unit"
            : "write %s, or leave the cell empty".formatted(form()));
  }

  private String form() {
    if (kind == Kind.DATE) {
      return "a date as in 2026-03-14";
    }
    if (kind == Kind.YES_NO) {
      return "yes or no";
    }
    return unit().isEmpty() || !heading.unit().isEmpty()
        ? "a number as in 4.25"
        : "a number with its unit, as in 4.25 " + unit();
  }

  /** A unit that the column's numbers may have, or empty. */
  private String unit() {
    return kind instanceof Kind.Measured measured ? measured.dimension().baseSymbol() : "";
  }

  /** The same message, the column it speaks of before it. */
  Diagnostic inColumn(Diagnostic told) {
    boolean wantsUnit = told.code().equals("kind-mismatch") && !unit().isEmpty();
    return new Diagnostic(
        told.severity(),
        told.code(),
        told.span(),
        told.also(),
        "column '%s': %s".formatted(heading.written(), told.message()),
        wantsUnit
            ? "write a unit behind the number, as in 4.25 %s, or into the heading: %s (%s)"
                .formatted(unit(), column.name(), unit())
            : told.repair());
  }
}
