package org.battenbook.export.formula;

import org.battenbook.check.CheckedFormula;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.Trace;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.file.CellContents;
import org.battenbook.number.Rational;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.AggregateFunction;
import org.battenbook.syntax.Expression;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;

/** The value that an aggregate uses from each row that counts, for its helper column. */
record TakenValues(Results results, CheckedFormula formula, Aggregate aggregate) {
  private static final Value ONE = new Value.Amount(Quantity.of(Rational.ONE));

  CellContent of(int row) {
    for (Expression condition : Conditions.of(aggregate.where(), formula).ofInner()) {
      Value holds = value(condition, row);
      if (!(holds instanceof Value.YesNo yesNo)) {
        return new CellContent.Missing();
      }
      if (!yesNo.yes()) {
        return new CellContent.Words("");
      }
    }
    Expression of = aggregate.of();
    boolean counts = of == null || aggregate.function() == AggregateFunction.COUNT;
    return CellContents.ofHelper(counts || of == null ? ONE : value(of, row));
  }

  private Value value(Expression node, int row) {
    return Trace.innerValue(results, formula, node, row, row);
  }
}
