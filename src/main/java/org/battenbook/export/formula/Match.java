package org.battenbook.export.formula;

import java.util.List;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * {@code where moulding = this}: rows of a table that are matched with a row of another table by
 * number.
 *
 * @param numbers the range with the number to compare in each row
 * @param wanted the number to look for
 * @param mayFail whether formulas give the numbers, so that one may be missing
 */
record Match(String numbers, SpreadsheetText wanted, boolean mayFail) {

  /** The match, if the only condition that reads the outer row is one; else null. */
  static @Nullable Match of(List<Expression> ofOuter, Translation around, TableLayout table) {
    boolean single = ofOuter.size() == 1 && around.context().table() != null;
    if (!single
        || !(ofOuter.get(0) instanceof Apply apply)
        || !around.formula().operation(apply).isEquality()) {
      return null;
    }
    Expression left = apply.children().get(0);
    Expression right = apply.children().get(1);
    CheckedFormula formula = around.formula();
    if (!(formula.kind(left) instanceof Kind.RowOf) || around.context().array()) {
      return null;
    }
    if (!OuterReads.in(left, formula) && readsNoRow(right, formula)) {
      return of(left, right, around, table);
    }
    return !OuterReads.in(right, formula) && readsNoRow(left, formula)
        ? of(right, left, around, table)
        : null;
  }

  private static Match of(
      Expression inner, Expression outer, Translation around, TableLayout table) {
    String sheet = around.context().sheet();
    SpreadsheetText wanted = around.at(around.context().through(table)).translate(outer);
    if (inner instanceof Reference reference
        && around.formula().path(reference).through().isEmpty()
        && around.formula().path(reference).target() instanceof Target.Here here) {
      SpreadsheetText column = around.reads().column(here.place(), sheet);
      return new Match(column.toString(), wanted, !here.place().isGiven());
    }
    return new Match(around.helperColumn(inner, table).range(sheet), wanted, true);
  }

  /** Whether a part reads nothing from the rows of the aggregate. */
  private static boolean readsNoRow(Expression node, CheckedFormula formula) {
    if (node instanceof Reference reference) {
      Path path = formula.path(reference);
      return !(path.target() instanceof Target.Here here) || here.place().table() == null;
    }
    return node.children().stream().allMatch(child -> readsNoRow(child, formula));
  }
}
