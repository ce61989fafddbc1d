package org.battenbook.evaluate;

import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** {@code first row}. */
final class FirstRowPlan extends Plan {
  FirstRowPlan(Expression node) {
    super(node);
  }

  @Override
  Value evaluate(Frame frame) {
    return new Value.YesNo(frame.row == 0);
  }
}
