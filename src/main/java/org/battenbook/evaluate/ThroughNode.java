package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** Reads a column of the row that another node gives: {@code moulding.face}. */
final class ThroughNode extends FormulaNode {
  final FormulaNode row;
  final Slot column;

  ThroughNode(Expression node, FormulaNode row, Slot column) {
    super(node);
    this.row = row;
    this.column = column;
  }

  @Override
  List<FormulaNode> parts() {
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
