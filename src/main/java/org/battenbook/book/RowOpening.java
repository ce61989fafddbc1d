package org.battenbook.book;

import org.battenbook.source.Span;

/**
 * How the rows of a table are opened from another's: {@code for each piece of pieces, number to
 * quantity}.
 *
 * @param from the other table
 * @param upTo its column that says how many rows each of its rows opens
 * @param each the column that holds the row of the other table
 * @param number the column that counts 1, 2, … from there
 * @param statement where the workbook says so
 */
public record RowOpening(Table from, Column upTo, Column each, Column number, Span statement) {}
