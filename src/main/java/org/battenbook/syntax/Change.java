package org.battenbook.syntax;

import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * {@code change place = formula because "reason"}: one inherited formula replaced, and why. Inside
 * the formula the place's own name means the inherited value.
 *
 * @param page the page where the line is written {@code page.line}, else absent
 * @param name the line or the column
 * @param table for {@code change border of pieces = …} and for a cell
 * @param row for a cell, {@code change face of mouldings "ash cap" = …}
 */
public record Change(
    @Nullable Name page,
    Name name,
    @Nullable Name table,
    @Nullable Quoted row,
    Formula formula,
    Quoted because,
    String note,
    Span span) {}
