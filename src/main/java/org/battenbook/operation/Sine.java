package org.battenbook.operation;

import java.util.List;
import org.battenbook.number.RealFunctions;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Value;

/** {@code sin(a)}: exact for multiples of 30° where it is rational. */
final class Sine extends TrigonometricFunction {
  Sine() {
    super("sin");
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.of(Dimension.NONE, () -> RealFunctions.sine(Values.number(operands, 0)));
  }
}
