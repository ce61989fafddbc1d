package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** A literal, or a setting of the job. */
final class ConstantNode extends FormulaNode {
  final Value value;

  ConstantNode(Expression node, Value value) {
    super(node);
    this.value = value;
  }

  @Override
  List<FormulaNode> parts() {
    return List.of();
  }

  @Override
  Value evaluate(Frame frame) {
    return value;
  }
}
