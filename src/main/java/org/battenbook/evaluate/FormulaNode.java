package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.bind.BookRows;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * One node of a formula that runs for one row at a time. This evaluation is the reference: kernels
 * must give the same values, and derivations run it again.
 */
abstract class FormulaNode {
  private final int id;

  FormulaNode(Expression node) {
    this.id = node.id();
  }

  /** Runs the node, and keeps its value where the frame asks for it. */
  final Value run(Frame frame) {
    Value value = evaluate(frame);
    @Nullable Value[] slots = frame.slots;
    if (slots != null) {
      slots[id] = value;
    }
    return value;
  }

  abstract Value evaluate(Frame frame);

  /** Whether it reads outside of the row that a total or a selection goes through. */
  boolean isAround() {
    return false;
  }

  /**
   * The steps of a fill, with those of the nodes it runs.
   *
   * @param rows the rows of every table that it goes over
   */
  Steps steps(BookRows rows) {
    return stepsOfParts(rows);
  }

  final Steps stepsOfParts(BookRows rows) {
    Steps steps = Steps.ONE;
    for (FormulaNode part : parts()) {
      steps = steps.plus(part.steps(rows));
    }
    return steps;
  }

  /** How many operations it has, those of the nodes it runs included. */
  final int operations() {
    return 1 + parts().stream().mapToInt(FormulaNode::operations).sum();
  }

  /** The nodes it runs. */
  abstract List<FormulaNode> parts();
}
