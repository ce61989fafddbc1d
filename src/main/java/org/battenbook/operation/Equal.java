package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.Relation;
import org.battenbook.value.Value;

/** {@code a = b}: the same; of approximate numbers, when their bounds overlap. */
final class Equal extends EqualityOperator {
  Equal() {
    super("=", Relation.EQUAL);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.yesNo(isSame(operands));
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return sameness(operands.get(0), operands.get(1), "=", "<=");
  }

  @Override
  public boolean isEquality() {
    return true;
  }
}
