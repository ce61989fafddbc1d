package org.battenbook.book;

import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;

/**
 * A requirement or a caution.
 *
 * @param condition a nameless place whose value, yes or no, decides
 * @param required whether it must hold (a requirement), rather than warn when it fires (a caution)
 * @param message what to say: a text with holes
 */
public record Rule(Place condition, boolean required, Formula message, String note, Span span) {}
