package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** Reads a column of the row that another plan gives: {@code moulding.face}. */
final class ThroughPlan extends Plan {
  final Plan row;
  final Slot column;

  ThroughPlan(Expression node, Plan row, Slot column) {
    super(node);
    this.row = row;
    this.column = column;
  }

  @Override
  List<Plan> parts() {
    return List.of(row);
  }

  @Override
  boolean isAround() {
    return row.isAround();
  }

  @Override
  Value evaluate(Frame frame) {
    Value at = row.run(frame);
    return at instanceof Value.Row found ? read(frame, found.row()) : at;
  }

  private Value read(Frame frame, int led) {
    frame.tellRead(column, led, isAround());
    return column.read(frame.reading.cell(column.number(), led), led, frame.reading);
  }
}
