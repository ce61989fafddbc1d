package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** Reads another place, in the row that {@link From} says. */
final class ReadNode extends FormulaNode {
  final Slot slot;
  final From from;

  /** Which row is read. */
  enum From {
    /** None: the place is a line. */
    LINE,
    SAME_ROW,
    ROW_ABOVE,
    OUTER_ROW
  }

  ReadNode(Expression node, Slot slot, From from) {
    super(node);
    this.slot = slot;
    this.from = from;
  }

  @Override
  List<FormulaNode> parts() {
    return List.of();
  }

  @Override
  boolean isAround() {
    return from == From.LINE || from == From.OUTER_ROW;
  }

  @Override
  Value evaluate(Frame frame) {
    return switch (from) {
      case LINE -> line(frame);
      case SAME_ROW -> cell(frame, frame.row);
      case ROW_ABOVE ->
          frame.row == 0
              ? new Value.Fault(
                  "nothing-above",
                  "the first row has no row above it; write 'if first row then … else …'")
              : cell(frame, frame.row - 1);
      case OUTER_ROW -> cell(Frames.outer(frame), Frames.outer(frame).row);
    };
  }

  private Value line(Frame frame) {
    frame.tellRead(slot, 0, true);
    return slot.read(frame.reading.line(slot.number()), 0, frame.reading);
  }

  private Value cell(Frame frame, int row) {
    frame.tellRead(slot, row, isAround());
    return slot.read(frame.reading.cell(slot.number(), row), row, frame.reading);
  }
}
