package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** A call of a function of the workbook. The first argument that is not known is the result. */
final class CallNode extends FormulaNode {
  final List<FormulaNode> arguments;
  final FormulaNode body;

  CallNode(Expression node, List<FormulaNode> arguments, FormulaNode body) {
    super(node);
    this.arguments = arguments;
    this.body = body;
  }

  @Override
  List<FormulaNode> parts() {
    return Stream.concat(arguments.stream(), Stream.of(body)).toList();
  }

  @Override
  Value evaluate(Frame frame) {
    List<Value> values = new ArrayList<>(arguments.size());
    for (FormulaNode argument : arguments) {
      Value value = argument.run(frame);
      if (!value.isKnown()) {
        return value;
      }
      values.add(value);
    }
    return body.run(frame.calling(values));
  }
}
