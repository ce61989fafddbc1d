package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/**
 * A text in quotes. Its parts are words and, where the text is a message or a line's formula, holes
 * that show a value.
 */
public record TextLiteral(int id, Span span, List<TextPart> parts) implements Expression {

  @Override
  public List<Expression> children() {
    return List.of();
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.text(this);
  }
}
