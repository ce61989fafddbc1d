package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/**
 * {@code a <= b even at worst}: a comparison that holds even if all that its sides are worked out
 * from is off by its whole tolerance, each in the direction that does most harm.
 */
public record AtWorst(int id, Span span, Apply comparison) implements Expression {

  @Override
  public List<Expression> children() {
    return List.of(comparison);
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.atWorst(this);
  }
}
