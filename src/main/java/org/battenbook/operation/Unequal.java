package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.Relation;
import org.battenbook.value.Value;

/** {@code a <> b}: not the same. */
final class Unequal extends EqualityOperator {
  Unequal() {
    super("<>", Relation.UNEQUAL);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.yesNo(!isSame(operands));
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return sameness(operands.get(0), operands.get(1), "<>", ">");
  }
}
