package org.battenbook.tolerance;

import org.battenbook.book.Place;
import org.battenbook.check.CheckedFormula;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * One way of a {@code ±} into a value.
 *
 * @param tolerance the place that holds how large the {@code ±} is
 * @param place the place with the {@code ±}
 * @param key names the row of that place; absent for a line, and where it is the own row
 * @param coefficient the factor of its error
 */
public record ErrorTerm(
    Place tolerance, Place place, @Nullable CheckedFormula key, CheckedFormula coefficient) {

  /**
   * Something that no error can be followed through.
   *
   * @param when whether an error reaches it in a row; absent where one always does, and where no
   *     formula can tell
   * @param what in words, with where it stands
   */
  public record Barrier(@Nullable CheckedFormula when, String what, Span at) {}
}
