package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * One node of a formula, ready to be worked out for one row at a time. This evaluation is the
 * reference: columns worked out in lanes must give the same, and derivations run it again.
 */
abstract class Plan {
  private final int id;

  Plan(Expression node) {
    this.id = node.id();
  }

  /** Works the node out, and keeps its value where the frame has slots for it. */
  final Value run(Frame frame) {
    Value value = evaluate(frame);
    @Nullable Value[] slots = frame.slots;
    if (slots != null) {
      slots[id] = value;
    }
    return value;
  }

  abstract Value evaluate(Frame frame);

  /** Whether what it reads is none of the row that a total or a selection goes through. */
  boolean isAround() {
    return false;
  }

  /** What it takes in a fill, together with the plans it runs. */
  Steps steps() {
    return parts().stream().map(Plan::steps).reduce(Steps.ONE, Steps::plus);
  }

  /** The plans it runs. */
  abstract List<Plan> parts();
}
