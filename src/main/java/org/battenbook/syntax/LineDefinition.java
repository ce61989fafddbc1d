package org.battenbook.syntax;

import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * A line of a page or a column of a table: {@code name = formula}, {@code name : kind}, or {@code
 * name : kind = formula}. At least one of kind and formula is there, unless the line is at fault.
 *
 * <p>A line whose formula cannot be read is kept with its name, so that the formulas that use the
 * name are not at fault as well: it has neither kind nor formula, and its fault is reported.
 *
 * @param note the words after {@code --}, or empty
 * @param span the whole line without its note
 */
public record LineDefinition(
    Name name, @Nullable KindExpression kind, @Nullable Formula formula, String note, Span span)
    implements PageItem {

  /** Whether its formula could not be read; what uses it is of unknown kind, without complaint. */
  public boolean isAtFault() {
    return kind == null && formula == null;
  }
}
