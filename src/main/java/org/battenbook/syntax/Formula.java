package org.battenbook.syntax;

import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * The right side of a line: an expression, by how much its value may be off, and how it is shown.
 *
 * @param nodeCount how many nodes it has; their ids are 0 to {@code nodeCount - 1}
 * @param tolerance what stands behind {@code ±}, with node ids of its own; absent where nothing
 *     does
 * @param shownAs absent where the form is left to the workbook
 * @param span from the first word of the expression to the last of the form
 */
public record Formula(
    Expression expression,
    int nodeCount,
    @Nullable Formula tolerance,
    @Nullable ShownAs shownAs,
    Span span) {

  /** A formula that says nothing of tolerance and form. */
  public static Formula plain(Expression expression, int nodeCount) {
    return new Formula(expression, nodeCount, null, null, expression.span());
  }

  /** The expression as written with its tolerance, without its {@code shown as}. */
  public String text() {
    return oneLine(valueSpan().text());
  }

  /** Where the expression stands with its tolerance, without its {@code shown as}. */
  public Span valueSpan() {
    return tolerance == null
        ? expression.span()
        : span.source().span(span.start(), tolerance.span().end());
  }

  /** A formula may go on over several lines of its file, and is told in one. */
  public static String oneLine(String formula) {
    return String.join(" ", formula.lines().map(String::strip).toList());
  }
}
