package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.choice;
import static org.battenbook.operation.SpreadsheetText.truth;

import java.util.List;
import org.battenbook.column.BitLane;
import org.battenbook.value.Value;

/** {@code a or b}: stops at the first yes. */
final class Or extends Connective {
  Or() {
    super("or");
  }

  @Override
  public boolean isDecidedBy(Value operand) {
    return Values.isYes(operand);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.yesNo(anyIs(operands, true));
  }

  /** Nested choices: a spreadsheet's own {@code OR} works out all its operands. */
  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    SpreadsheetText left = operands.get(0);
    if (operands.size() == 1) {
      return left;
    }
    SpreadsheetText right = spreadsheet(operands.subList(1, operands.size()));
    return choice(left, truth(true), right);
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofBits(BitLane::or);
  }
}
