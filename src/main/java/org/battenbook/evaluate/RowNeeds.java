package org.battenbook.evaluate;

import java.util.LinkedHashSet;
import java.util.Set;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.RowOpening;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Need;
import org.battenbook.check.Need.Reach;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/** Adds to the needs of a place which rows have to be known, and what the rows come from. */
final class RowNeeds {
  private final CheckedBook book;

  RowNeeds(CheckedBook book) {
    this.book = book;
  }

  /** Everything a place needs, rows included. The key column of a table stands for its rows. */
  Set<Need> of(CheckedPlace checked) {
    Set<Need> needs = new LinkedHashSet<>(checked.needs());
    Table table = checked.place().table();
    if (table != null && checked.place() == table.keyColumn()) {
      addSources(table, needs);
    } else {
      addRows(table, needs);
    }
    addNamed(checked.place(), needs);
    return needs;
  }

  /** Adds the rows of a table. */
  private static void addRows(@Nullable Table table, Set<Need> needs) {
    if (table != null && !table.isWritten()) {
      needs.add(new Need(table.keyColumn(), Reach.ROWS));
    }
  }

  /** Adds what the rows of a table come from. */
  private void addSources(Table table, Set<Need> needs) {
    for (RowOpening opening : table.openings()) {
      addRows(opening.from(), needs);
      if (opening.count() != null) {
        needs.add(new Need(opening.count().upTo(), Reach.WHOLE));
      }
    }
    PlanStatement plan = table.plan();
    if (plan != null) {
      addRows(plan.parts().table(), needs);
      addRows(plan.stock().table(), needs);
      plan.reads().forEach(place -> needs.add(new Need(place, Reach.WHOLE)));
      table.columns().stream().filter(Column::isPlanned).forEach(c -> addNamed(c, needs));
    }
  }

  /** Adds the rows of the table that the values of a place are rows of. */
  private void addNamed(Place place, Set<Need> needs) {
    if (book.place(place).kind() instanceof Kind.RowOf rowOf) {
      addRows(book.book().table(rowOf.table()), needs);
    }
  }
}
