package org.battenbook.syntax;

import org.battenbook.number.Rational;
import org.battenbook.source.Span;

/**
 * One number of a quantity, with its unit as written.
 *
 * @param number never negative; the sign is an operator
 * @param unit the unit's words, {@code in}, {@code USD/ft}, {@code bd ft}; empty for a plain
 *     number. An inch mark reads {@code in}, a foot mark {@code ft}.
 * @param unitSpan where the unit stands; the number's own span for a plain number
 */
public record QuantityPart(Rational number, String unit, Span unitSpan) {}
