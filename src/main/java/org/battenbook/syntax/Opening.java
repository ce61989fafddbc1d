package org.battenbook.syntax;

import org.battenbook.source.Span;

/**
 * {@code for each piece of pieces, number to quantity}: the rows of this table are opened from
 * those of another, as many of each as one of its columns says.
 *
 * @param each the column that holds the row of the other table
 * @param of the other table
 * @param number the column that counts 1, 2, … from there
 * @param upTo the column of the other table that says how many
 */
public record Opening(Name each, Name of, Name number, Name upTo, Span span) {}
