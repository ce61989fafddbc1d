package org.battenbook.evaluate;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToLongFunction;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.bound.Bound;
import org.battenbook.check.CheckedPlace;
import org.battenbook.source.Diagnostics;

/** Refuses a book whose formulas are more work than they may be, before they are worked out. */
final class ProgramSize {
  private final Diagnostics diagnostics;

  /**
   * The size of a program.
   *
   * @param diagnostics takes what is too large
   */
  ProgramSize(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /** Looks at formulas that are not compiled yet. */
  void checkFormulas(Collection<CheckedPlace> places) {
    if (Bound.ALL_OPERATIONS.isPassedBy(sum(places, CheckedPlace::operations))) {
      CheckedPlace largest = largest(places, CheckedPlace::operations);
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
          "work out what is used more than once on a line of its own");
    }
  }

  /** Looks at what a fill takes. */
  void checkWork(List<PlacePlan> plans) {
    if (Bound.STEPS.isPassedBy(sum(plans, PlacePlan::steps))) {
      PlacePlan largest = largest(plans, PlacePlan::steps);
      Place place = largest.place();
      String rows =
          place instanceof Column column
              ? String.format(Locale.ROOT, " in its %,d rows", column.table().rowCount())
              : "";
      diagnostics.refuse(
          "too-much-work",
          place.layer().span(),
          "this job takes more than %s steps to work out, most of them for '%s'%s"
              .formatted(Bound.STEPS.shown(), place.words(), rows),
          "begin what stands after 'where' with '… = this', so that rows are grouped once; or part"
              + " the job in two");
    }
  }

  private static <T> long sum(Collection<T> all, ToLongFunction<T> size) {
    return all.stream().mapToLong(size).sum();
  }

  private static <T> T largest(Collection<T> all, ToLongFunction<T> size) {
    return all.stream().max(Comparator.comparingLong(size)).orElseThrow();
  }
}
