package org.battenbook.syntax;

import org.battenbook.source.Span;

/** {@code caution when condition say "message"}: a warning worth reading. */
public record Caution(Formula condition, Formula message, String note, Span span)
    implements PageItem {}
