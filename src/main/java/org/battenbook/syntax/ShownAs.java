package org.battenbook.syntax;

import org.battenbook.number.Rational;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * How a value is to be shown: {@code 1/16 in}, {@code 0.01 in}, {@code ft}, {@code mm}, {@code ft
 * or m}.
 *
 * @param step the step of the last place; absent where only a unit is named
 * @param decimal whether the step was written as a decimal, so that decimals are wanted
 * @param unit the unit as written
 * @param metric the form in a workbook whose lengths are metric; absent where it is the same
 */
public record ShownAs(
    @Nullable Rational step, boolean decimal, String unit, @Nullable ShownAs metric, Span span) {}
