package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** {@code if … then … else …}: only the branch that is taken is run. */
final class ChoicePlan extends Plan {
  final Plan condition;
  final Plan then;
  final Plan otherwise;

  ChoicePlan(Expression node, Plan condition, Plan then, Plan otherwise) {
    super(node);
    this.condition = condition;
    this.then = then;
    this.otherwise = otherwise;
  }

  @Override
  List<Plan> parts() {
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
