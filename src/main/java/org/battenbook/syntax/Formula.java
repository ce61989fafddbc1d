package org.battenbook.syntax;

import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * The right side of a line: an expression, and how its value is to be shown.
 *
 * @param nodeCount how many nodes it has; their ids are 0 to {@code nodeCount - 1}
 * @param shownAs absent where the form is left to the workbook
 * @param span from the first word of the expression to the last of the form
 */
public record Formula(Expression expression, int nodeCount, @Nullable ShownAs shownAs, Span span) {

  /** The expression as written, without its {@code shown as}. */
  public String text() {
    return expression.span().text();
  }
}
