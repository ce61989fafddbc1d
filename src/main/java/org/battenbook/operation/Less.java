package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.Relation;
import org.battenbook.value.Value;

/** {@code a < b}: less than. */
final class Less extends Order {
  Less() {
    super("<", Relation.LESS);
  }

  @Override
  boolean holdsBelow() {
    return true;
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.yesNo(compare(operands) < 0);
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return exceeds(operands.get(1), operands.get(0));
  }
}
