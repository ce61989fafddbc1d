package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.NumberLane;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** {@code abs(a)}: without its sign. */
final class Absolute extends Function {
  Absolute() {
    super("abs", new Arity(1, 1));
  }

  @Override
  Kind checkNumbers(List<Operand> operands, Complaints complaints) {
    return OperandKinds.kind(operands, 0);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.of(
        Values.quantity(operands, 0).dimension(), () -> Values.number(operands, 0).abs());
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return SpreadsheetText.call("ABS", operands.get(0));
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofNumber(NumberLane::abs);
  }
}
