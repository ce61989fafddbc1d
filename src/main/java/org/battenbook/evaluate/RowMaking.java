package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.battenbook.bind.FillIns;
import org.battenbook.bind.RowKeys;
import org.battenbook.bind.Rows;
import org.battenbook.bind.Spot;
import org.battenbook.book.BookSize;
import org.battenbook.book.Column;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.RowOpening;
import org.battenbook.book.Table;
import org.battenbook.bound.Bound;
import org.battenbook.check.CheckedBook;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.source.Diagnostics;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Makes the rows of opened and planned tables. Whatever they need is worked out already. */
final class RowMaking {
  private final Results results;
  private final RowPlanner planner;
  private final Diagnostics diagnostics;
  private final BookSize size;
  private final RowsMissing missing;

  /**
   * Makes no rows yet.
   *
   * @param diagnostics takes counts that are no counts, filled-in rows that do not exist, and
   *     bounds that are passed
   */
  RowMaking(Results results, RowPlanner planner, Diagnostics diagnostics) {
    this.results = results;
    this.planner = planner;
    this.diagnostics = diagnostics;
    this.size = new BookSize(diagnostics);
    this.missing = new RowsMissing(results);
    size.addWritten(results.program().book().book());
  }

  /** The rows of a table. Not all of them are there if the diagnostics take a fault. */
  Rows of(Table table) {
    Rows rows = table.plan() == null ? opened(table) : planned(table, table.plan());
    size.add(table, rows.count(), () -> rows.origin(Math.max(0, rows.count() - 1)));
    return rows;
  }

  /** Takes over the rows that a table had before an edit. */
  void keep(Table table, Results before) {
    Rows rows = before.rows(table);
    results.set(rows);
    size.add(table, rows.count(), table::origin);
    PlanStatement plan = table.plan();
    RowPlanner.Planned known = plan == null ? null : before.planned().get(plan);
    if (known != null) {
      results.planned().put(plan, known);
    }
  }

  private Rows opened(Table table) {
    RowKeys.Builder keys = new RowKeys.Builder(table.name().text(), diagnostics);
    List<Rows.Opened> opened = new ArrayList<>();
    for (RowOpening opening : table.openings()) {
      open(opening, keys, opened);
    }
    Map<Table, Rows> sources = new HashMap<>();
    table.openings().forEach(o -> sources.put(o.from(), results.rows(o.from())));
    Rows rows = Rows.opened(table, keys.build(), opened, sources, missing.of(table));
    if (!diagnostics.hasFaults()) {
      FillIns.check(rows, diagnostics);
    }
    return rows;
  }

  private void open(RowOpening opening, RowKeys.Builder keys, List<Rows.Opened> opened) {
    Rows from = results.rows(opening.from());
    for (int row = 0; row < from.count() && !diagnostics.isRefused(); row++) {
      String each = from.name(row);
      int count = count(opening, row, each, opened.size());
      for (int number = 1; number <= count; number++) {
        String name = count == 1 ? each : RowOpening.numbered(each, Integer.toString(number));
        keys.add(name, from.nameSpan(row));
        opened.add(new Rows.Opened(opening, row, number));
      }
    }
  }

  /** The rows to open. A count that waits or is at fault opens none, and is reported by itself. */
  private int count(RowOpening opening, int row, String each, int before) {
    if (opening.count() == null) {
      return bounded(opening, Rational.ONE, "a row is created", each, before);
    }
    Column upTo = opening.count().upTo();
    Value value = results.value(new Spot(upTo, row));
    if (!(value instanceof Value.Amount amount)) {
      return 0;
    }
    Real number = amount.quantity().number();
    String said =
        (number.isExact() ? "'%s' is %s" : "'%s' is about %s, not exactly,")
            .formatted(upTo.words(), number);
    if (!(number instanceof Rational whole) || !whole.isWhole() || whole.signum() < 0) {
      diagnostics.fault(
          "rows-not-a-count",
          opening.statement(),
          "%s for \"%s\", but the number of rows must be a whole number, 0 or more"
              .formatted(said, each),
          "round it in its formula");
      return 0;
    }
    return bounded(opening, whole, said, each, before);
  }

  private int bounded(RowOpening opening, Rational whole, String said, String each, int before) {
    long more = whole.isSmall() ? whole.longNumerator() : Bound.ALL_ROWS.most();
    if (Bound.TABLE_ROWS.isPassedBy(before + more)) {
      tooMany(opening, said, each, Bound.TABLE_ROWS, "the table");
      return 0;
    }
    if (Bound.ALL_ROWS.isPassedBy(size.rows() + before + more)) {
      tooMany(opening, said, each, Bound.ALL_ROWS, "all tables together");
      return 0;
    }
    return (int) more;
  }

  private void tooMany(RowOpening opening, String said, String each, Bound most, String where) {
    diagnostics.refuse(
        "too-many-opened-rows",
        opening.statement(),
        "%s for \"%s\": with these, %s would have more than %s rows"
            .formatted(said, each, where, most.shown()),
        "check the count; if it is right, split the job in two");
  }

  private Rows planned(Table table, PlanStatement plan) {
    List<List<@Nullable Value>> cells =
        plan(plan).map(all -> all.tables().getOrDefault(table.key(), List.of())).orElse(List.of());
    return rows(table, plan, cells);
  }

  /** The result of a plan; empty where it is left to be made later. */
  private Optional<RowPlanner.Planned> plan(PlanStatement plan) {
    RowPlanner.Planned known = results.planned().get(plan);
    if (known != null || results.isPending(plan)) {
      return Optional.ofNullable(known);
    }
    Optional<RowPlanner.Planned> made = planner.plan(plan, results, hours());
    made.ifPresentOrElse(all -> results.planned().put(plan, all), () -> results.addPending(plan));
    return made;
  }

  /** The hours that the plans so far were allowed. */
  private Rational hours() {
    return results.planned().values().stream()
        .map(RowPlanner.Planned::hours)
        .reduce(Rational.ZERO, Rational::plus);
  }

  private Rows rows(Table table, PlanStatement plan, List<List<@Nullable Value>> cells) {
    List<Column> columns = table.columns().stream().filter(Column::isPlanned).toList();
    RowKeys.Builder keys = new RowKeys.Builder(table.name().text(), diagnostics);
    int key = columns.indexOf(table.keyColumn());
    for (List<@Nullable Value> row : cells) {
      keys.add(((Value.Text) Objects.requireNonNull(row.get(key))).text(), plan.statement());
    }
    RowKeys names = keys.build();
    Map<Column, List<@Nullable Value>> byColumn = new HashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      int at = i;
      byColumn.put(
          columns.get(i),
          Arrays.asList(
              cells.stream().map(row -> cell(columns.get(at), row.get(at))).toArray(Value[]::new)));
    }
    return Rows.planned(table, names, byColumn, missing.of(table));
  }

  /** A cell that a plan fills. A row of another table is given as its name. */
  private @Nullable Value cell(Column column, @Nullable Value told) {
    CheckedBook book = results.program().book();
    return book.place(column).kind() instanceof Kind.RowOf rowOf && told instanceof Value.Text name
        ? results.rows(Objects.requireNonNull(book.book().table(rowOf.table()))).called(name.text())
        : told;
  }
}
