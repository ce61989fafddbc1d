package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/** {@code if condition then … else …}; the branch that is not taken is not worked out. */
public record Choice(int id, Span span, Expression condition, Expression then, Expression otherwise)
    implements Expression {

  @Override
  public List<Expression> children() {
    return List.of(condition, then, otherwise);
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.choice(this);
  }
}
