package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/** {@code true} or {@code false}. */
public record TruthLiteral(int id, Span span, boolean truth) implements Expression {

  @Override
  public List<Expression> children() {
    return List.of();
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.truth(this);
  }
}
