package org.battenbook.operation;

import java.util.List;
import java.util.function.Supplier;
import org.battenbook.number.Real;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;

/** Takes the values of operands apart, and makes values of results. */
final class Values {
  private Values() {}

  /** A number of a dimension, or the fault {@code too-many-digits}. */
  static Value of(Dimension dimension, Supplier<Real> number) {
    try {
      return new Value.Amount(new Quantity(number.get(), dimension));
    } catch (ArithmeticException tooLong) {
      return new Value.Fault("too-many-digits", String.valueOf(tooLong.getMessage()));
    }
  }

  static Value yesNo(boolean yes) {
    return new Value.YesNo(yes);
  }

  static Value fault(String code, String message) {
    return new Value.Fault(code, message);
  }

  static Quantity quantity(List<Value> operands, int index) {
    return ((Value.Amount) operands.get(index)).quantity();
  }

  static Real number(List<Value> operands, int index) {
    return quantity(operands, index).number();
  }

  static boolean isYes(Value value) {
    return ((Value.YesNo) value).yes();
  }
}
