package org.battenbook.evaluate;

import java.util.Locale;
import org.battenbook.book.Place;
import org.battenbook.bound.Bound;
import org.battenbook.source.Diagnostics;
import org.jspecify.annotations.Nullable;

/** Refuses a job that would take too many steps, before they are taken. */
final class WorkBound {
  private final Results results;
  private final Diagnostics diagnostics;
  private long steps;
  private long mostOfOne;
  private @Nullable Place largest;

  /**
   * No work yet.
   *
   * @param diagnostics takes what is too much
   */
  WorkBound(Results results, Diagnostics diagnostics) {
    this.results = results;
    this.diagnostics = diagnostics;
  }

  /** Whether a stage may be worked out. The rows that it reads are known. */
  boolean allows(Stage stage) {
    stage.slots().forEach(this::add);
    results.setSteps(steps);
    boolean isTooMuch = Bound.STEPS.isPassedBy(steps);
    if (isTooMuch && largest != null) {
      refuse(largest);
    }
    return !isTooMuch;
  }

  private void add(Slot slot) {
    long more = results.program().steps(slot, results);
    steps += more;
    if (more > mostOfOne) {
      mostOfOne = more;
      largest = slot.place();
    }
  }

  private void refuse(Place place) {
    String inRows =
        place.table() == null
            ? ""
            : String.format(Locale.ROOT, " in its %,d rows", results.valueCount(place));
    diagnostics.refuse(
        "too-much-work",
        place.layer().span(),
        "this job takes more than %s steps to calculate, most of them for '%s'%s"
            .formatted(Bound.STEPS.shown(), place.words(), inRows),
        "begin the condition after 'where' with '… = this', so that rows are grouped once; or split"
            + " the job in two");
  }
}
