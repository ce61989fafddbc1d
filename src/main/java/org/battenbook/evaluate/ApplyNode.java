package org.battenbook.evaluate;

import java.util.Arrays;
import java.util.List;
import org.battenbook.operation.Operation;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/**
 * An operation on its operands. The first operand that is not known, or that decides, is the
 * result.
 */
final class ApplyNode extends FormulaNode {
  final Operation operation;
  final List<FormulaNode> operands;

  ApplyNode(Expression node, Operation operation, List<FormulaNode> operands) {
    super(node);
    this.operation = operation;
    this.operands = operands;
  }

  @Override
  List<FormulaNode> parts() {
    return operands;
  }

  @Override
  Value evaluate(Frame frame) {
    Value[] values = new Value[operands.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = operands.get(i).run(frame);
      if (!values[i].isKnown() || operation.isDecidedBy(values[i])) {
        return values[i];
      }
    }
    if (frame.watch != null) {
      frame.watch.applied(operation, Arrays.asList(values));
    }
    return frame.reading.meter().take(operation.apply(Arrays.asList(values)));
  }
}
