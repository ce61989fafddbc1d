package org.battenbook.book;

import java.util.Map;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.jspecify.annotations.Nullable;

/**
 * How rows of a table are opened from another's: {@code for each piece of pieces, number to
 * quantity}.
 *
 * @param from the other table
 * @param each the column that holds the row of the other table
 * @param count how many rows it opens; absent where each row opens one
 * @param cells what its rows have in given columns
 * @param statement where the workbook says so
 */
public record RowOpening(
    Table from, Column each, @Nullable Count count, Map<Column, Formula> cells, Span statement) {

  /**
   * How many rows each row opens.
   *
   * @param number the column that counts 1, 2, … from there
   * @param upTo the column of the other table that says how many
   */
  public record Count(Column number, Column upTo) {}

  public RowOpening {
    cells = Map.copyOf(cells);
  }

  /** A statement opens rows once, and its formulas are long. */
  @Override
  public int hashCode() {
    return statement.hashCode();
  }

  /** The name of a row that is not alone. */
  public static String numbered(String each, String number) {
    return each + ": " + number;
  }

  /** Whether a column is filled by the opening itself: with its row, or with its number. */
  public boolean fills(Column column) {
    return column == each || (count != null && column == count.number());
  }
}
