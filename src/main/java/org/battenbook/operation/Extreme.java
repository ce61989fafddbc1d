package org.battenbook.operation;

import java.util.List;
import java.util.function.BinaryOperator;
import org.battenbook.column.NumberLane;
import org.battenbook.number.Real;
import org.battenbook.number.RealFunctions;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** What {@code min} and {@code max} share: two or more numbers of one dimension. */
abstract class Extreme extends Function {
  private final int sign;

  /**
   * @param sign 1 for the largest, -1 for the smallest
   */
  Extreme(String name, int sign) {
    super(name, new Arity(2, Integer.MAX_VALUE));
    this.sign = sign;
  }

  @Override
  final Kind checkNumbers(List<Operand> operands, Complaints complaints) {
    Kind first = OperandKinds.kind(operands, 0);
    for (int i = 1; i < operands.size(); i++) {
      if (!OperandKinds.kind(operands, i).equals(first)) {
        return Mismatch.ofKinds(operands, 0, i, "they cannot be compared", complaints);
      }
    }
    return first;
  }

  @Override
  public final boolean keepsCounts() {
    return true;
  }

  @Override
  public final Value apply(List<Value> operands) {
    BinaryOperator<Real> further = this::further;
    return Values.of(
        Values.quantity(operands, 0).dimension(),
        () ->
            operands.stream()
                .map(o -> ((Value.Amount) o).quantity().number())
                .reduce(further)
                .orElseThrow());
  }

  private Real further(Real a, Real b) {
    return sign > 0 ? RealFunctions.greatest(a, b) : RealFunctions.least(a, b);
  }

  @Override
  public final SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return SpreadsheetText.call(sign > 0 ? "MAX" : "MIN", Content.NUMBER, operands);
  }

  @Override
  public final LaneKernel lanes() {
    return LaneKernel.ofNumbers(sign > 0 ? NumberLane::greatest : NumberLane::least);
  }
}
