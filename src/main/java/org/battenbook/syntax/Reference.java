package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/**
 * A name, or names joined with dots: {@code mat overlap}, {@code moulding.face}, {@code
 * this.width}, {@code above.left}. Only a bare {@code this} has no names.
 */
public record Reference(int id, Span span, Root root, List<Name> names) implements Expression {

  @Override
  public List<Expression> children() {
    return List.of();
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.reference(this);
  }
}
