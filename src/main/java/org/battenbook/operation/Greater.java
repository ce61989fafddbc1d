package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.Relation;
import org.battenbook.value.Value;

/** {@code a > b}: more than. */
final class Greater extends Order {
  Greater() {
    super(">", Relation.GREATER);
  }

  @Override
  boolean holdsBelow() {
    return false;
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.yesNo(compare(operands) > 0);
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return exceeds(operands.get(0), operands.get(1));
  }
}
