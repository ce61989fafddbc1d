package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** An argument, read in the formula of its function. */
final class ArgumentNode extends FormulaNode {
  final int index;

  ArgumentNode(Expression node, int index) {
    super(node);
    this.index = index;
  }

  @Override
  List<FormulaNode> parts() {
    return List.of();
  }

  @Override
  Value evaluate(Frame frame) {
    return frame.arguments.get(index);
  }
}
