package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.Relation;
import org.battenbook.value.Value;

/** {@code a >= b}: at least. */
final class AtLeast extends Order {
  AtLeast() {
    super(">=", Relation.AT_LEAST);
  }

  @Override
  boolean holdsBelow() {
    return false;
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.yesNo(compare(operands) >= 0);
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return reaches(operands.get(1), operands.get(0));
  }
}
