package org.battenbook.book;

import java.util.Map;
import java.util.Optional;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.jspecify.annotations.Nullable;

/**
 * A statement that opens rows of a table from the rows of a source table: {@code for each piece of
 * pieces, number to quantity}.
 *
 * @param from the source table
 * @param each the column for the source row
 * @param count how many rows each source row opens; null for one
 * @param cells the formulas that all its rows have in input columns
 * @param statement where it is written
 */
public record RowOpening(
    Table from, Column each, @Nullable Count count, Map<Column, Formula> cells, Span statement) {

  /**
   * How many rows each source row opens.
   *
   * @param number the column that numbers these rows 1, 2, …
   * @param upTo the column of the source table with the number of rows
   */
  public record Count(Column number, Column upTo) {}

  public RowOpening {
    cells = Map.copyOf(cells);
  }

  /** Hashes the statement only: it opens rows once, and the formulas of its cells are long. */
  @Override
  public int hashCode() {
    return statement.hashCode();
  }

  /** The name of one of several rows that a source row opens: {@code Tide chart: 2}. */
  public static String numbered(String each, String number) {
    return each + ": " + number;
  }

  /**
   * The name of the only row that a source row opens, if {@code numbered} is the name with number
   * 1: that row is found by both names.
   */
  public static Optional<String> unnumbered(String numbered) {
    String first = numbered("", "1");
    return numbered.endsWith(first)
        ? Optional.of(numbered.substring(0, numbered.length() - first.length()))
        : Optional.empty();
  }

  /** Whether the opening fills a column, with the source row or the number. */
  public boolean fills(Column column) {
    return column == each || (count != null && column == count.number());
  }
}
