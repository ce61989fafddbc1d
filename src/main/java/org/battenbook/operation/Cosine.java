package org.battenbook.operation;

import java.util.List;
import org.battenbook.number.RealFunctions;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Value;

/** {@code cos(a)}: exact for multiples of 60° and 90°. */
final class Cosine extends TrigonometricFunction {
  Cosine() {
    super("cos");
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.of(Dimension.NONE, () -> RealFunctions.cosine(Values.number(operands, 0)));
  }
}
