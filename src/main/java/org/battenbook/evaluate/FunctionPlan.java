package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** A call of a workbook's own function; an argument that is not known is the result. */
final class FunctionPlan extends Plan {
  final List<Plan> arguments;
  final Plan body;

  FunctionPlan(Expression node, List<Plan> arguments, Plan body) {
    super(node);
    this.arguments = arguments;
    this.body = body;
  }

  @Override
  List<Plan> parts() {
    return Stream.concat(arguments.stream(), Stream.of(body)).toList();
  }

  @Override
  Value evaluate(Frame frame) {
    List<Value> values = new ArrayList<>(arguments.size());
    for (Plan argument : arguments) {
      Value value = argument.run(frame);
      if (!value.isKnown()) {
        return value;
      }
      values.add(value);
    }
    return body.run(frame.calling(values));
  }
}
