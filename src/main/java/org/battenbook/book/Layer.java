package org.battenbook.book;

import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Quoted;
import org.jspecify.annotations.Nullable;

/**
 * One formula that was set for a place; a later layer replaces the earlier, and all stay.
 *
 * @param formula the formula; absent only in the first layer of a place that is given without one
 * @param because the reason of a change; absent where the place was defined or filled
 * @param span the statement that set it
 */
public record Layer(@Nullable Formula formula, @Nullable Quoted because, String note, Span span) {}
