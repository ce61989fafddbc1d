package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** {@code if … then … else …}: only one branch is run. */
final class ChoiceNode extends FormulaNode {
  final FormulaNode condition;
  final FormulaNode then;
  final FormulaNode otherwise;

  ChoiceNode(Expression node, FormulaNode condition, FormulaNode then, FormulaNode otherwise) {
    super(node);
    this.condition = condition;
    this.then = then;
    this.otherwise = otherwise;
  }

  @Override
  List<FormulaNode> parts() {
    return List.of(condition, then, otherwise);
  }

  @Override
  Value evaluate(Frame frame) {
    Value decided = condition.run(frame);
    if (decided instanceof Value.YesNo yesNo) {
      return yesNo.yes() ? then.run(frame) : otherwise.run(frame);
    }
    return decided;
  }
}
