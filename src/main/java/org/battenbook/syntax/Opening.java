package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * {@code for each piece of pieces, number to quantity}: rows of this table are opened from those of
 * another, as many of each as one of its columns says; without a number, one of each. Lines under
 * it say what stands in the cells of these rows, {@code across = piece.top rail}.
 *
 * @param each the column that holds the row of the other table
 * @param of the other table
 * @param count how many rows it opens; absent where each row opens one
 * @param cells what the opened rows have in given columns
 */
public record Opening(
    Name each, Name of, @Nullable Count count, List<LineDefinition> cells, Span span) {

  /**
   * How many rows each row opens.
   *
   * @param number the column that counts 1, 2, … from there
   * @param upTo the column of the other table that says how many
   */
  public record Count(Name number, Name upTo) {}

  public Opening {
    cells = List.copyOf(cells);
  }

  /** Whether it fills a column with its row, or with its number. */
  public boolean fills(Name column) {
    boolean isNumber = count != null && count.number().key().equals(column.key());
    return isNumber || each.key().equals(column.key());
  }
}
