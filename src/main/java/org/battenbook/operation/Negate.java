package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.NumberLane;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** {@code -a}. */
final class Negate implements Operation {
  @Override
  public String name() {
    return "negate";
  }

  @Override
  public Arity arity() {
    return new Arity(1, 1);
  }

  @Override
  public Kind check(List<Operand> operands, Complaints complaints) {
    if (OperandKinds.anyUnknown(operands) || OperandKinds.allMeasured(operands)) {
      return OperandKinds.kind(operands, 0);
    }
    return Mismatch.ofNoNumber(
        operands, "only a number can be negative", "remove the minus", complaints);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.of(
        Values.quantity(operands, 0).dimension(), () -> Values.number(operands, 0).negate());
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return operands.get(0).negate();
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofNumber(NumberLane::negate);
  }

  @Override
  public boolean isSign() {
    return true;
  }

  @Override
  public Slope slope(int operand) {
    return Slope.MINUS_ONE;
  }
}
