package org.battenbook.syntax;

import org.battenbook.number.Rational;
import org.battenbook.source.Span;

/**
 * One number of a quantity, with its unit as written.
 *
 * @param number never negative, since a sign is an operator; but a power's own number has its sign
 * @param unit the unit's words, {@code in}, {@code USD/ft}, {@code bd ft}; empty for a plain
 *     number. An inch mark reads {@code in}, a foot mark {@code ft}. Whether there is such a unit
 *     is not known here: of {@code 12 in/lip} the unit is {@code in/lip}.
 * @param unitSpan where the unit stands; the number's own span for a plain number
 */
public record QuantityPart(Rational number, String unit, Span unitSpan) {}
