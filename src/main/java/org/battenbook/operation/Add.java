package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.number;

import java.util.List;
import org.battenbook.column.NumberLane;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** {@code a + b}: of one dimension; a date and a time of whole days give a date. */
final class Add extends Sum {
  Add() {
    super("+", "they cannot be added");
  }

  @Override
  Kind ofDates(Kind left, Kind right) {
    boolean moves =
        (left.equals(Kind.DATE) && isTime(right)) || (isTime(left) && right.equals(Kind.DATE));
    return moves ? Kind.DATE : Kind.UNKNOWN;
  }

  @Override
  public Value apply(List<Value> operands) {
    Value left = operands.get(0);
    Value right = operands.get(1);
    if (left instanceof Value.Day day) {
      return Days.later(day, Values.number(operands, 1));
    }
    if (right instanceof Value.Day day) {
      return Days.later(day, Values.number(operands, 0));
    }
    return Values.of(
        Values.quantity(operands, 0).dimension(),
        () -> Values.number(operands, 0).plus(Values.number(operands, 1)));
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    SpreadsheetText left = operands.get(0);
    SpreadsheetText right = operands.get(1);
    if (left.content() == SpreadsheetText.Content.DATE) {
      return left.plus(right.dividedBy(number(Days.HOURS))).asDate();
    }
    if (right.content() == SpreadsheetText.Content.DATE) {
      return right.plus(left.dividedBy(number(Days.HOURS))).asDate();
    }
    return left.plus(right);
  }

  @Override
  public boolean keepsCounts() {
    return true;
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofNumbers(NumberLane::plus);
  }

  @Override
  public Slope slope(int operand) {
    return Slope.ONE;
  }
}
