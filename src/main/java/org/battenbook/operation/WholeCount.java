package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.number;

import java.util.List;
import org.battenbook.column.NumberLane;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.number.Rounding;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/**
 * The value of a place that is declared as a count. A number that is not whole, that is negative or
 * that is only approximate is the fault {@code not-a-count}. Nobody writes this operation: the
 * declared kind asks for it.
 *
 * <p>A spreadsheet gives {@code NA()} for such a number, after the noise of doubles is rounded away
 * at six digits.
 */
final class WholeCount implements Operation {
  private static final int DIGITS = 6;

  /** Half of the last digit, with room for the noise of the operands. */
  private static final Rational GUARD = Rational.of(6, 10_000_000);

  @Override
  public String name() {
    return "count";
  }

  @Override
  public Arity arity() {
    return new Arity(1, 1);
  }

  @Override
  public Kind check(List<Operand> operands, Complaints complaints) {
    return Kind.NUMBER;
  }

  @Override
  public Value apply(List<Value> operands) {
    Real number = Values.number(operands, 0);
    return isCount(number) ? operands.get(0) : Values.fault("not-a-count", message(number));
  }

  private static boolean isCount(Real number) {
    return number instanceof Rational exact && exact.isWhole() && exact.signum() >= 0;
  }

  private static String message(Real number) {
    return "a count must be a whole number, 0 or more; it is %s%s: %s"
        .formatted(
            number.isExact() ? "" : "about ",
            number,
            number.signum() < 0
                ? "write 'max(0, …)' around its formula"
                : "round it in its formula");
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofNumber(lane -> areCounts(lane) ? lane : null);
  }

  private static boolean areCounts(NumberLane lane) {
    NumberLane ones = NumberLane.constant(Rational.ONE, lane.rows());
    return !lane.negativeRows().isAny()
        && !lane.differing(lane.rounded(Rounding.DOWN, ones)).isAny();
  }

  @Override
  public boolean agreesInSpreadsheet(List<Value> operands) {
    if (!(Values.number(operands, 0) instanceof Rational exact)) {
      return false;
    }
    Rational off = exact.minus(Rounding.NEAREST.toWhole(exact)).abs();
    return off.signum() == 0 || off.compareTo(GUARD) > 0;
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    SpreadsheetText near = call("ROUND", operands.get(0), number(DIGITS));
    SpreadsheetText isOther = near.compared("<>", call("ABS", call("INT", near)));
    return SpreadsheetText.choice(isOther, call("NA"), near);
  }
}
