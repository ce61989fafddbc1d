package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/**
 * An operator on its operands, by its name in the catalogue of operations: {@code + - * / ^ negate
 * = <> < <= > >= and or not}, {@code rounded up}, {@code rounded down}, {@code rounded}, {@code
 * rounded evenly}, {@code ±} on what a tolerance is worked out from.
 */
public record Apply(int id, Span span, String operation, List<Expression> children)
    implements Expression {

  public Apply {
    children = List.copyOf(children);
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.apply(this);
  }
}
