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
  Value evaluate(Frame frame) {
    Value at = row.run(frame);
    return at instanceof Value.Row found
        ? column.read(frame.reading.cell(column.number(), found.row()), found.row())
        : at;
  }
}
