package org.battenbook.evaluate;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import org.battenbook.bound.Bound;
import org.battenbook.check.CheckedPlace;
import org.battenbook.source.Diagnostics;

/** Refuses a book whose formulas pass a bound, before they are compiled. */
final class ProgramSize {
  private ProgramSize() {}

  /**
   * Checks the formulas of all places.
   *
   * @param diagnostics takes what is too large
   */
  static void check(Collection<CheckedPlace> places, Diagnostics diagnostics) {
    long operations = places.stream().mapToLong(CheckedPlace::operations).sum();
    if (Bound.ALL_OPERATIONS.isPassedBy(operations)) {
      CheckedPlace largest =
          places.stream().max(Comparator.comparingLong(CheckedPlace::operations)).orElseThrow();
      diagnostics.refuse(
          "formulas-too-large",
          largest.place().layer().span(),
          String.format(
              Locale.ROOT,
              "with functions written out, the formulas of this job have more than %s operations,"
                  + " %,d of them for '%s'",
              Bound.ALL_OPERATIONS.shown(),
              largest.operations(),
              largest.place().words()),
          "calculate what is used more than once on its own line");
    }
  }
}
