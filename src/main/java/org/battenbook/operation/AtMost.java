package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.Relation;
import org.battenbook.value.Value;

/** {@code a <= b}: at most. */
final class AtMost extends Order {
  AtMost() {
    super("<=", Relation.AT_MOST);
  }

  @Override
  boolean holdsBelow() {
    return true;
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.yesNo(compare(operands) <= 0);
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return reaches(operands.get(0), operands.get(1));
  }
}
