package org.battenbook.check;

import org.battenbook.book.Table;
import org.battenbook.source.Span;

/**
 * The name of a row that is opened or planned: whether there is one is known once the rows are.
 *
 * @param at where it is written
 */
public record LateName(Table table, String name, Span at) {}
