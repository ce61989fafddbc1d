package org.battenbook.tolerance;

import org.battenbook.book.Place;
import org.battenbook.check.CheckedFormula;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * By what one {@code ±} comes into a value.
 *
 * @param tolerance the place of what the {@code ±} comes to
 * @param place whose {@code ±} it is
 * @param key names the row of that place; absent for a line, and where it is the own row
 * @param coefficient by what its error is multiplied
 */
public record ErrorTerm(
    Place tolerance, Place place, @Nullable CheckedFormula key, CheckedFormula coefficient) {

  /**
   * What no error goes through.
   *
   * @param when whether one comes there in a row; absent where it always does
   * @param what in words, with where it stands
   */
  public record Barrier(@Nullable CheckedFormula when, String what, Span at) {}
}
