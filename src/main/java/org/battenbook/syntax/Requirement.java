package org.battenbook.syntax;

import org.battenbook.source.Span;

/** {@code require condition else "message"}: a rule that must hold. */
public record Requirement(Formula condition, Formula message, String note, Span span)
    implements PageItem {}
