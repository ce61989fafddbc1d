package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** {@code first row}. */
final class FirstRowNode extends FormulaNode {
  FirstRowNode(Expression node) {
    super(node);
  }

  @Override
  List<FormulaNode> parts() {
    return List.of();
  }

  @Override
  Value evaluate(Frame frame) {
    return new Value.YesNo(frame.row == 0);
  }
}
