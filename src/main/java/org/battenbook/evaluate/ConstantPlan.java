package org.battenbook.evaluate;

import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** A literal, or a setting of the job. */
final class ConstantPlan extends Plan {
  final Value value;

  ConstantPlan(Expression node, Value value) {
    super(node);
    this.value = value;
  }

  @Override
  Value evaluate(Frame frame) {
    return value;
  }
}
