package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** An argument of a function, in the function's own formula. */
final class ArgumentPlan extends Plan {
  final int index;

  ArgumentPlan(Expression node, int index) {
    super(node);
    this.index = index;
  }

  @Override
  List<Plan> parts() {
    return List.of();
  }

  @Override
  Value evaluate(Frame frame) {
    return frame.arguments.get(index);
  }
}
