package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/**
 * A function, built in or of the workbook's own, on its arguments: {@code sqrt(a)}, {@code
 * rail(opening, face, lip)}.
 */
public record Call(int id, Span span, Name function, List<Expression> arguments)
    implements Expression {

  @Override
  public List<Expression> children() {
    return arguments;
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.call(this);
  }
}
