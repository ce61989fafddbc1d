package org.battenbook.syntax;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * One value out of the rows of a table: {@code sum of glass over pieces where moulding = this}.
 *
 * @param function which value
 * @param of what is taken of each row; absent for {@code count of}
 * @param table the table whose rows are gone through
 * @param where which rows count; absent for all
 */
public record Aggregate(
    int id,
    Span span,
    AggregateFunction function,
    @Nullable Expression of,
    Name table,
    @Nullable Expression where)
    implements Expression {

  @Override
  public List<Expression> children() {
    List<Expression> children = new ArrayList<>(2);
    if (of != null) {
      children.add(of);
    }
    if (where != null) {
      children.add(where);
    }
    return children;
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.aggregate(this);
  }
}
