package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.choice;
import static org.battenbook.operation.SpreadsheetText.truth;

import java.util.List;
import org.battenbook.column.BitLane;
import org.battenbook.value.Value;

/** {@code a and b}: stops at the first no. */
final class And extends Connective {
  And() {
    super("and");
  }

  @Override
  public boolean isDecidedBy(Value operand) {
    return !Values.isYes(operand);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.yesNo(!anyIs(operands, false));
  }

  /** Nested choices: a spreadsheet's own {@code AND} works out all its operands. */
  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    SpreadsheetText left = operands.get(0);
    if (operands.size() == 1) {
      return left;
    }
    SpreadsheetText right = spreadsheet(operands.subList(1, operands.size()));
    return choice(left, right, truth(false));
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofBits(BitLane::and);
  }

  @Override
  public boolean isConjunction() {
    return true;
  }
}
