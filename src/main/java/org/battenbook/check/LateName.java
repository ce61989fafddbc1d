package org.battenbook.check;

import org.battenbook.book.Table;
import org.battenbook.source.Span;

/**
 * The name of a row in a table whose rows are opened or planned. It can be checked only after
 * evaluation has made those rows.
 *
 * @param at where the name is written
 */
public record LateName(Table table, String name, Span at) {}
