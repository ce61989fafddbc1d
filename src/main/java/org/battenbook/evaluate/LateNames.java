package org.battenbook.evaluate;

import org.battenbook.bind.RowKeys;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.LateName;
import org.battenbook.source.Diagnostics;

/** Looks whether there are the rows that formulas and cells name of opened and planned tables. */
final class LateNames {
  private LateNames() {}

  static void check(Results results, Diagnostics diagnostics) {
    for (CheckedPlace checked : results.program().book().places()) {
      checked.lateNames().forEach(late -> check(late, results, diagnostics));
    }
  }

  /** Whether a place names rows that are not there. */
  static boolean areMissing(Place place, Results results) {
    return results.program().book().place(place).lateNames().stream()
        .anyMatch(late -> results.rows(late.table()).keys().row(late.name()).isEmpty());
  }

  private static void check(LateName late, Results results, Diagnostics diagnostics) {
    RowKeys keys = results.rows(late.table()).keys();
    if (keys.row(late.name()).isEmpty()) {
      diagnostics.fault(
          "no-such-row", late.at(), keys.missing(late.name()), () -> keys.repair(late.name()));
    }
  }
}
