package org.battenbook.syntax;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * One row of a table: {@code row of screws where length >= reach with smallest length}.
 *
 * @param where which rows may be chosen; absent for all
 * @param preference which of them is chosen; absent where only one may fit
 */
public record Selection(
    int id, Span span, Name table, @Nullable Expression where, @Nullable Preference preference)
    implements Expression {

  /** Which row wins: the one with the largest or smallest value, the first of equals. */
  public record Preference(boolean largest, Expression by) {}

  @Override
  public List<Expression> children() {
    List<Expression> children = new ArrayList<>(2);
    if (where != null) {
      children.add(where);
    }
    if (preference != null) {
      children.add(preference.by());
    }
    return children;
  }

  @Override
  public <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.selection(this);
  }
}
