package org.battenbook.syntax;

import org.battenbook.source.Span;

/** A plain text in quotes: a title, a path, a reason. The span includes the quotes. */
public record Quoted(String text, Span span) {}
