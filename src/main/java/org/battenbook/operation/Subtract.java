package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.number;

import java.util.List;
import org.battenbook.column.NumberLane;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** {@code a - b}: of one dimension; two dates give a time, a date less whole days a date. */
final class Subtract extends Sum {
  Subtract() {
    super("-", "they cannot be subtracted");
  }

  @Override
  Kind ofDates(Kind left, Kind right) {
    if (!left.equals(Kind.DATE)) {
      return Kind.UNKNOWN;
    }
    if (right.equals(Kind.DATE)) {
      return new Kind.Measured(Dimension.TIME);
    }
    return isTime(right) ? Kind.DATE : Kind.UNKNOWN;
  }

  @Override
  public Value apply(List<Value> operands) {
    if (operands.get(0) instanceof Value.Day day) {
      return operands.get(1) instanceof Value.Day other
          ? Days.between(other, day)
          : Days.later(day, Values.number(operands, 1).negate());
    }
    return Values.of(
        Values.quantity(operands, 0).dimension(),
        () -> Values.number(operands, 0).minus(Values.number(operands, 1)));
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    SpreadsheetText left = operands.get(0);
    SpreadsheetText right = operands.get(1);
    if (left.content() != Content.DATE) {
      return left.minus(right);
    }
    return right.content() == Content.DATE
        ? left.minus(right).times(number(Days.HOURS))
        : left.minus(right.dividedBy(number(Days.HOURS))).asDate();
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofNumbers(NumberLane::minus);
  }

  @Override
  public Slope slope(int operand) {
    return operand == 0 ? Slope.ONE : Slope.MINUS_ONE;
  }
}
