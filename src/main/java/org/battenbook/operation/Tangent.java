package org.battenbook.operation;

import java.util.List;
import org.battenbook.number.Real;
import org.battenbook.number.RealFunctions;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Value;

/**
 * {@code tan(a)}: exact for multiples of 45°. At a right angle it is the fault {@code
 * tangent-of-right-angle}.
 */
final class Tangent extends TrigonometricFunction {
  Tangent() {
    super("tan");
  }

  @Override
  public Value apply(List<Value> operands) {
    Real angle = Values.number(operands, 0);
    if (RealFunctions.cosine(angle).signum() == 0) {
      return Values.fault(
          "tangent-of-right-angle", "a right angle has no tangent; use an angle less than 90 deg");
    }
    return Values.of(Dimension.NONE, () -> RealFunctions.tangent(angle));
  }
}
