package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.BitLane;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.value.Value;

/** {@code not a}. */
final class Not extends Connective {
  Not() {
    super("not");
  }

  @Override
  public Arity arity() {
    return new Arity(1, 1);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.yesNo(!Values.isYes(operands.get(0)));
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return SpreadsheetText.call("NOT", Content.YES_NO, operands);
  }

  @Override
  public LaneKernel lanes() {
    return operands -> operands.get(0) instanceof BitLane bits ? bits.not() : null;
  }
}
