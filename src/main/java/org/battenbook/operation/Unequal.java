package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.Relation;
import org.battenbook.value.Value;

/** {@code a <> b}: not the same. */
final class Unequal extends Sameness {
  Unequal() {
    super("<>", Relation.UNEQUAL);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Result.yesNo(!isSame(operands));
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return sameness(operands.get(0), operands.get(1), "<>", ">");
  }
}
