package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.NumberLane;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Value;

/** {@code a * b}. */
final class Multiply extends Product {
  Multiply() {
    super("*", "only numbers can be multiplied");
  }

  @Override
  Dimension dimension(Dimension left, Dimension right) {
    return left.times(right);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.of(
        dimensionOf(operands), () -> Values.number(operands, 0).times(Values.number(operands, 1)));
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return operands.get(0).times(operands.get(1));
  }

  @Override
  public boolean keepsCounts() {
    return true;
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofNumbers(NumberLane::times);
  }

  @Override
  public Slope slope(int operand) {
    return Slope.OTHER;
  }

  @Override
  public String obstacle() {
    return "a product of two values with tolerances";
  }
}
