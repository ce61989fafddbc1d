package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.number;

import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.number.Rounding;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/**
 * What the four roundings share. The step has the dimension of what is rounded and is above zero,
 * else it is the fault {@code step-not-positive}.
 *
 * <p>In a spreadsheet the steps are counted, the noise of doubles is rounded away at six digits,
 * and the whole number is taken with {@code INT}: the rounding functions of spreadsheets differ
 * between programs.
 */
abstract class RoundToStep extends Binary {
  private static final int DIGITS = 6;
  private static final Rational HALF = Rational.of(1, 2);

  /** Half of the last digit, with room for the noise of the operands. */
  private static final Rational GUARD = Rational.of(6, 10_000_000);

  /** From here up a double has no six digits left behind its point. */
  private static final double MOST_STEPS = 1e9;

  private final Rounding rounding;

  RoundToStep(String name, Rounding rounding) {
    super(name);
    this.rounding = rounding;
  }

  /**
   * The whole number of steps in a spreadsheet.
   *
   * @param value what is rounded
   * @param steps how many steps it is, to six digits
   */
  abstract SpreadsheetText whole(SpreadsheetText value, SpreadsheetText steps);

  @Override
  final Kind checkKnown(List<Operand> operands, Complaints complaints) {
    if (!OperandKinds.allMeasured(operands)) {
      return Mismatch.ofNoNumber(operands, "only numbers can be rounded", complaints);
    }
    return OperandKinds.sameKind(operands)
        ? OperandKinds.kind(operands, 0)
        : Mismatch.ofKinds(operands, "a step must be of the kind that it rounds", complaints);
  }

  @Override
  public final Value apply(List<Value> operands) {
    Real step = Values.number(operands, 1);
    if (step.signum() <= 0) {
      return Values.fault("step-not-positive", "the step of a rounding must be more than 0");
    }
    return Values.of(
        Values.quantity(operands, 0).dimension(),
        () -> rounding.toStep(Values.number(operands, 0), step));
  }

  @Override
  public final SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    SpreadsheetText value = operands.get(0);
    SpreadsheetText step = operands.get(1);
    Rational literal = step.literal();
    if (literal == null || literal.signum() <= 0) {
      return whole(value, counted(value.dividedBy(step))).times(step);
    }
    return whole(value, counted(value.scaled(Rational.ONE.dividedBy(literal)))).steps(literal);
  }

  @Override
  public final boolean agreesInSpreadsheet(List<Value> operands) {
    Real steps = Values.number(operands, 0).dividedBy(Values.number(operands, 1));
    if (!(steps instanceof Rational exact)) {
      return Math.abs(steps.toDouble()) < MOST_STEPS;
    }
    Rational off = exact.minus(limitNear(exact)).abs();
    boolean onLimit = off.signum() == 0;
    return exact.abs().toDouble() < MOST_STEPS && (onLimit || off.compareTo(GUARD) > 0);
  }

  /** The nearest number of steps at which the result changes: whole ones, or ties. */
  private Rational limitNear(Rational steps) {
    Rational tie = hasTies() ? HALF : Rational.ZERO;
    return Rounding.NEAREST.toWhole(steps.minus(tie)).plus(tie);
  }

  private boolean hasTies() {
    return rounding == Rounding.NEAREST || rounding == Rounding.EVENLY;
  }

  private static SpreadsheetText counted(SpreadsheetText steps) {
    return call("ROUND", steps, number(DIGITS));
  }

  @Override
  public final LaneKernel lanes() {
    return LaneKernel.ofNumbers((value, step) -> value.rounded(rounding, step));
  }

  @Override
  public final boolean isRounding() {
    return true;
  }
}
