package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** The value that a place had before a change: the formula that the change replaced. */
final class InheritedNode extends FormulaNode {
  private final Slot slot;
  final @Nullable FormulaNode replaced;

  InheritedNode(Expression node, Slot slot, @Nullable FormulaNode replaced) {
    super(node);
    this.slot = slot;
    this.replaced = replaced;
  }

  @Override
  List<FormulaNode> parts() {
    return replaced == null ? List.of() : List.of(replaced);
  }

  @Override
  Value evaluate(Frame frame) {
    if (replaced == null) {
      return new Value.Waiting(slot.words(frame.row, frame.reading), false);
    }
    Watch watch = frame.watch;
    if (watch == null) {
      return replaced.run(frame.replaced());
    }
    watch.inheritedBegins();
    Value value = replaced.run(frame.replaced());
    watch.inheritedEnds();
    return value;
  }
}
