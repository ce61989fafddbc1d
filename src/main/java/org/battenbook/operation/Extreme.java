package org.battenbook.operation;

import java.util.List;
import java.util.function.BinaryOperator;
import org.battenbook.number.Approximate;
import org.battenbook.number.Real;
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
    Kind first = Check.kind(operands, 0);
    for (int i = 1; i < operands.size(); i++) {
      if (!Check.kind(operands, i).equals(first)) {
        return Mismatch.ofKinds(operands, 0, i, "neither is the larger of the two", complaints);
      }
    }
    return first;
  }

  @Override
  public final Value apply(List<Value> operands) {
    BinaryOperator<Real> further = this::further;
    return Result.of(
        Result.quantity(operands, 0).dimension(),
        () ->
            operands.stream()
                .map(o -> ((Value.Amount) o).quantity().number())
                .reduce(further)
                .orElseThrow());
  }

  /** Of two whose bounds overlap it cannot be told: the further one with the wider bound. */
  private Real further(Real a, Real b) {
    int order = sign * a.compareTo(b);
    if (order != 0) {
      return order > 0 ? a : b;
    }
    if (a.isExact() && b.isExact()) {
      return a;
    }
    double value = sign * Math.max(sign * a.toDouble(), sign * b.toDouble());
    return new Approximate(value, widest(a, b));
  }

  /** An exact number that had to become a double is off by half a place of that double. */
  private static double widest(Real a, Real b) {
    double place = Math.max(Math.ulp(a.toDouble()), Math.ulp(b.toDouble()));
    return Math.max(a.bound(), b.bound()) + place;
  }

  @Override
  public final SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return SpreadsheetText.call(sign > 0 ? "MAX" : "MIN", Content.NUMBER, operands);
  }
}
