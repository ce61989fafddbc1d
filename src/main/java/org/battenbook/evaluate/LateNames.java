package org.battenbook.evaluate;

import java.util.Collection;
import org.battenbook.bind.RowKeys;
import org.battenbook.bind.Rows;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.LateName;
import org.battenbook.source.Diagnostics;

/**
 * Checks the names of rows of opened and planned tables in formulas and cells, once the rows are
 * known.
 */
final class LateNames {
  private LateNames() {}

  /** Checks what some places name. */
  static void check(Collection<Place> places, Results results, Diagnostics diagnostics) {
    for (Place place : places) {
      CheckedPlace checked = results.program().book().place(place);
      checked.lateNames().forEach(late -> check(late, results, diagnostics));
    }
  }

  private static void check(LateName late, Results results, Diagnostics diagnostics) {
    Rows rows = results.rows(late.table());
    if (rows.lack(late.name())) {
      RowKeys keys = rows.keys();
      diagnostics.fault(
          "no-such-row", late.at(), keys.missing(late.name()), () -> keys.repair(late.name()));
    }
  }
}
