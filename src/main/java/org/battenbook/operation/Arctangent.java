package org.battenbook.operation;

import java.util.List;
import org.battenbook.number.RealFunctions;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** {@code atan(a)}: the angle in degrees, from -90 to 90, whose tangent is a plain number. */
final class Arctangent extends Function {
  Arctangent() {
    super("atan", new Arity(1, 1));
  }

  @Override
  Kind checkNumbers(List<Operand> operands, Complaints complaints) {
    return OperandKinds.dimension(operands, 0).isNone()
        ? new Kind.Measured(Dimension.ANGLE)
        : complainOfDimension(operands.get(0), Dimension.NONE, complaints);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.of(Dimension.ANGLE, () -> RealFunctions.arctangent(Values.number(operands, 0)));
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return SpreadsheetText.call("DEGREES", SpreadsheetText.call("ATAN", operands.get(0)));
  }
}
