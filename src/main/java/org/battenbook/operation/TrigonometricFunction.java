package org.battenbook.operation;

import java.util.List;
import java.util.Locale;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;

/** Base of sine, cosine and tangent: they take an angle and give a plain number. */
abstract class TrigonometricFunction extends Function {
  TrigonometricFunction(String name) {
    super(name, new Arity(1, 1));
  }

  @Override
  final Kind checkNumbers(List<Operand> operands, Complaints complaints) {
    return OperandKinds.dimension(operands, 0).equals(Dimension.ANGLE)
        ? Kind.NUMBER
        : complainOfDimension(operands.get(0), Dimension.ANGLE, complaints);
  }

  @Override
  public final SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    SpreadsheetText radians = SpreadsheetText.call("RADIANS", operands.get(0));
    return SpreadsheetText.call(name().toUpperCase(Locale.ROOT), radians);
  }
}
