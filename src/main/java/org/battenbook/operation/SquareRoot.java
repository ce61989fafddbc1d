package org.battenbook.operation;

import java.util.List;
import org.battenbook.number.Real;
import org.battenbook.number.RealFunctions;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** {@code sqrt(a)}: exact for squares; the root of an area is a length. */
final class SquareRoot extends Function {
  SquareRoot() {
    super("sqrt", new Arity(1, 1));
  }

  @Override
  Kind checkNumbers(List<Operand> operands, Complaints complaints) {
    Dimension root = OperandKinds.dimension(operands, 0).root(2).orElse(null);
    if (root != null) {
      return new Kind.Measured(root);
    }
    Operand operand = operands.get(0);
    complaints.complain(
        "no-such-root",
        List.of(0),
        "%s is %s, which has no square root"
            .formatted(Mismatch.quote(operand), Mismatch.words(operand)),
        "take the square root of an area or a plain number");
    return Kind.UNKNOWN;
  }

  @Override
  public Value apply(List<Value> operands) {
    Real square = Values.number(operands, 0);
    if (square.signum() < 0) {
      return Values.fault("negative-root", "a negative number has no square root");
    }
    Dimension dimension = Values.quantity(operands, 0).dimension();
    return Values.of(dimension.root(2).orElseThrow(), () -> RealFunctions.squareRoot(square));
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return SpreadsheetText.call("SQRT", operands.get(0));
  }
}
