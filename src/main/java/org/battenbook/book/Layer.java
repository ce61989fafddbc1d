package org.battenbook.book;

import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Quoted;
import org.jspecify.annotations.Nullable;

/**
 * One formula of a place. A later layer overrides the earlier ones, which are kept.
 *
 * @param formula the formula; null only in the first layer of an input without a default
 * @param because the reason of a change; null if the layer is not a change
 * @param note the note of the statement; empty if it has none
 * @param span the statement that set it
 */
public record Layer(@Nullable Formula formula, @Nullable Quoted because, String note, Span span) {}
