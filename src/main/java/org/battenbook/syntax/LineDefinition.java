package org.battenbook.syntax;

import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * A line of a page or a column of a table: {@code name = formula}, {@code name : kind}, or {@code
 * name : kind = formula}. At least one of kind and formula is there.
 *
 * @param note the words after {@code --}, or empty
 * @param span the whole line without its note
 */
public record LineDefinition(
    Name name, @Nullable KindExpression kind, @Nullable Formula formula, String note, Span span)
    implements PageItem {}
