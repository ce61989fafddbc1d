package org.battenbook.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.battenbook.source.Span;

/**
 * A text in quotes. Its parts are words and, where the text is a message or what a line's formula
 * gives, holes that show a value. The paths in its holes are its children.
 */
public record TextLiteral(int id, Span span, List<TextPart> parts) implements Expression {

  public TextLiteral {
    parts = List.copyOf(parts);
  }

  /** The words of a text that has no holes. */
  public Optional<String> plainWords() {
    return parts.size() == 1 && parts.get(0) instanceof TextPart.Words only
        ? Optional.of(only.words())
        : Optional.empty();
  }

  @Override
  public List<Expression> children() {
    List<Expression> children = new ArrayList<>();
    for (TextPart part : parts) {
      if (part instanceof TextPart.Hole hole) {
        children.add(hole.reference());
      }
    }
    return children;
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.text(this);
  }
}
