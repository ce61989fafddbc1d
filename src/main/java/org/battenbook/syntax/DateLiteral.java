package org.battenbook.syntax;

import java.time.LocalDate;
import java.util.List;
import org.battenbook.source.Span;

/** A date, {@code 2026-03-14}. */
public record DateLiteral(int id, Span span, LocalDate date) implements Expression {

  @Override
  public List<Expression> children() {
    return List.of();
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.date(this);
  }
}
