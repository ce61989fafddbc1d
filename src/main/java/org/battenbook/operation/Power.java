package org.battenbook.operation;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.battenbook.column.NumberLane;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** {@code a ^ n}: n is written as a whole number, 9 at most and -9 at least. */
final class Power implements Operation {
  private static final Rational LARGEST = Rational.of(9);

  @Override
  public String name() {
    return "^";
  }

  @Override
  public Arity arity() {
    return new Arity(2, 2);
  }

  @Override
  public Kind check(List<Operand> operands, Complaints complaints) {
    if (OperandKinds.anyUnknown(operands)) {
      return Kind.UNKNOWN;
    }
    if (!OperandKinds.allMeasured(operands)) {
      return Mismatch.ofNoNumber(operands, "only numbers have powers", complaints);
    }
    Operand exponent = operands.get(1);
    if (!isAllowed(exponent)) {
      return complainOfExponent(exponent, complaints);
    }
    int power = (int) requireNonNull(exponent.literal()).toDouble();
    return OperandKinds.derived(
        operands, complaints, () -> OperandKinds.dimension(operands, 0).pow(power));
  }

  private static boolean isAllowed(Operand exponent) {
    Rational power = exponent.literal();
    return power != null
        && exponent.kind().equals(Kind.NUMBER)
        && power.isWhole()
        && power.abs().compareTo(LARGEST) <= 0;
  }

  private static Kind complainOfExponent(Operand exponent, Complaints complaints) {
    complaints.complain(
        "power-not-whole",
        List.of(1),
        "%s cannot be a power: write a whole number, at most 9".formatted(Mismatch.quote(exponent)),
        exponent.literal() == null ? "write the power as a number: ^2" : "multiply instead");
    return Kind.UNKNOWN;
  }

  @Override
  public Value apply(List<Value> operands) {
    Real base = Values.number(operands, 0);
    int power = (int) Values.number(operands, 1).toDouble();
    if (power < 0 && base.signum() == 0) {
      return Divide.byZero();
    }
    return Values.of(Values.quantity(operands, 0).dimension().pow(power), () -> base.pow(power));
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    Rational power = requireNonNull(operands.get(1).literal());
    return operands.get(0).power((int) power.toDouble());
  }

  @Override
  public Slope slope(int operand) {
    return Slope.CURVED;
  }

  @Override
  public String obstacle() {
    return "a power";
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofNumbers(Power::raised);
  }

  /** A power is a literal, so that it is the same in every row. */
  private static NumberLane raised(NumberLane base, NumberLane power) {
    return base.pow((int) power.at(0).toDouble());
  }
}
