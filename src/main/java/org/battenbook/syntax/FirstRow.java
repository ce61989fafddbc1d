package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/** {@code first row}: yes in the first row of a table, where {@code above} has nothing to read. */
public record FirstRow(int id, Span span) implements Expression {

  @Override
  public List<Expression> children() {
    return List.of();
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.firstRow(this);
  }
}
