package org.battenbook.evaluate;

import java.util.List;
import java.util.Objects;
import org.battenbook.syntax.Expression;
import org.battenbook.unit.Form;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** A text with holes that show values. */
final class TextNode extends FormulaNode {
  private final List<Part> parts;

  /** Words, or a value to show in a form. */
  record Part(String words, @Nullable FormulaNode hole, @Nullable Form form) {}

  TextNode(Expression node, List<Part> parts) {
    super(node);
    this.parts = parts;
  }

  @Override
  List<FormulaNode> parts() {
    return parts.stream().map(Part::hole).filter(Objects::nonNull).toList();
  }

  @Override
  Value evaluate(Frame frame) {
    StringBuilder text = new StringBuilder();
    for (Part part : parts) {
      text.append(part.words());
      if (part.hole() != null) {
        Value value = part.hole().run(frame);
        if (!value.isKnown()) {
          return value;
        }
        text.append(ShownValue.of(value, part.form()).text());
      }
    }
    return frame.reading.meter().text(text);
  }
}
