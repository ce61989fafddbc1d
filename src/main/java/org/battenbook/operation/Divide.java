package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.NumberLane;
import org.battenbook.number.Real;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Value;

/** {@code a / b}; by zero it is the fault {@code division-by-zero}. */
final class Divide extends Product {
  Divide() {
    super("/", "only numbers can be divided");
  }

  @Override
  Dimension dimension(Dimension left, Dimension right) {
    return left.dividedBy(right);
  }

  @Override
  public Value apply(List<Value> operands) {
    Real divisor = Values.number(operands, 1);
    if (divisor.signum() == 0) {
      return byZero();
    }
    return Values.of(dimensionOf(operands), () -> Values.number(operands, 0).dividedBy(divisor));
  }

  /** The fault of every operation that divides. */
  static Value byZero() {
    return Values.fault(
        "division-by-zero", "this divides by zero; use 'if' to choose a value for that case");
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return operands.get(0).dividedBy(operands.get(1));
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofNumbers(NumberLane::dividedBy);
  }

  @Override
  public Slope slope(int operand) {
    return operand == 0 ? Slope.ONE_OVER_OTHER : Slope.CURVED;
  }

  @Override
  public String obstacle() {
    return "a divisor with a tolerance";
  }
}
