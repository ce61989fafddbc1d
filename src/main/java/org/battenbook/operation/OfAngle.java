package org.battenbook.operation;

import java.util.List;
import java.util.Locale;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;

/** What sine, cosine and tangent share: a plain number of an angle in degrees. */
abstract class OfAngle extends Function {
  OfAngle(String name) {
    super(name, new Arity(1, 1));
  }

  @Override
  final Kind checkNumbers(List<Operand> operands, Complaints complaints) {
    return Check.dimension(operands, 0).equals(Dimension.ANGLE)
        ? Kind.NUMBER
        : complainOfDimension(operands.get(0), Dimension.ANGLE, complaints);
  }

  @Override
  public final SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    SpreadsheetText radians = SpreadsheetText.call("RADIANS", operands.get(0));
    return SpreadsheetText.call(name().toUpperCase(Locale.ROOT), radians);
  }
}
