package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/**
 * A number with or without a unit: {@code 3/8}, {@code 15 3/8 in}, {@code 5 ft 2 in}, {@code 2
 * lb/in^2}. Its parts are added.
 */
public record QuantityLiteral(int id, Span span, List<QuantityPart> parts) implements Expression {

  @Override
  public List<Expression> children() {
    return List.of();
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.quantity(this);
  }
}
