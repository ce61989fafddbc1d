package org.battenbook.syntax;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * {@code change place = formula because "reason"}: one inherited formula replaced, and why. Inside
 * the formula the place's own name means the inherited value.
 *
 * <p>A place is a line, {@code change fitting allowance = …} or {@code change page.line = …}; a
 * column, {@code change border of pieces = …}; or a cell, {@code change face of mouldings "ash cap"
 * = …}. Names may hold an {@code of} themselves ({@code cost of glass}), so which reading is meant
 * is known only beside the inherited names: {@link #place} as a line first, then {@link
 * #columnReadings}.
 *
 * @param page the page where the line is written {@code page.line}, else absent
 * @param place all the words of the place, after the dot if there is one
 * @param row for a cell, the key of its row
 */
public record Change(
    @Nullable Name page,
    Name place,
    @Nullable Quoted row,
    Formula formula,
    Quoted because,
    String note,
    Span span) {

  /** A place read as a column of a table. */
  public record ColumnOfTable(Name column, Name table) {}

  /**
   * The ways to read the place as {@code column of table}, split at the last {@code of} first;
   * empty where it has none.
   */
  public List<ColumnOfTable> columnReadings() {
    String words = place.text();
    List<ColumnOfTable> readings = new ArrayList<>();
    int of = lastOf(words, words.length());
    while (of > 0) {
      Name column = new Name(words.substring(0, of), place.span());
      Name table = new Name(words.substring(of + " of ".length()), place.span());
      readings.add(new ColumnOfTable(column, table));
      of = lastOf(words, of - 1);
    }
    return readings;
  }

  private static int lastOf(String words, int from) {
    for (int at = from; at > 0; at--) {
      if (words.regionMatches(true, at, " of ", 0, " of ".length())) {
        return at;
      }
    }
    return -1;
  }
}
