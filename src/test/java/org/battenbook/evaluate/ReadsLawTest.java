package org.battenbook.evaluate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.battenbook.bind.Rows;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedPlace;
import org.battenbook.column.Lookup;
import org.battenbook.derive.Feeds;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Selection;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.RandomWorkbook;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * What a derivation reads is what evaluation read, and what a value feeds is what needs it, on
 * random jobs.
 */
class ReadsLawTest {
  private static final int JOBS = 60;

  /** Results that note every value that is read out of them. */
  private static final class Counting extends PassedReading {
    final Set<Spot> read = new HashSet<>();
    final Set<Table> rows = new HashSet<>();
    private final Map<Integer, Place> places = new HashMap<>();

    Counting(Results results) {
      super(results);
      for (CheckedPlace checked : results.program().book().places()) {
        places.put(results.program().slots().of(checked.place()).number(), checked.place());
      }
    }

    private void note(int place, int row) {
      read.add(new Spot(Objects.requireNonNull(places.get(place)), row));
    }

    @Override
    public Rows rows(Table table) {
      rows.add(table);
      return super.rows(table);
    }

    @Override
    public Value line(int place) {
      note(place, 0);
      return results.line(place);
    }

    @Override
    public Value cell(int place, int row) {
      note(place, row);
      return results.cell(place, row);
    }

    @Override
    public Meter meter() {
      return results.meter();
    }

    @Override
    public Groups groups(OverRowsNode plan) {
      return plan.grouped(this);
    }

    @Override
    public ColumnValues.Chunk chunk(int place, int chunk) {
      int rows = results.valueCount(Objects.requireNonNull(places.get(place)));
      IntStream.range(0, rows).forEach(row -> note(place, row));
      return results.chunk(place, chunk);
    }

    /** Row by row: lanes work out what rows hold that do not count. */
    @Override
    public @Nullable Lookup lookup(int place) {
      return null;
    }

    @Override
    public Value total(AggregateNode aggregate) {
      Value missing = missingRows(aggregate.table);
      if (missing != null) {
        return missing;
      }
      return aggregate.among(Frame.atRow(this, 0), RowList.first(rows(aggregate.table).count()));
    }
  }

  @Test
  void what_why_reads_is_what_evaluation_read() {
    for (long seed = 1; seed <= JOBS; seed++) {
      Filled filled = RandomWorkbook.of(seed).open().fill();
      long of = seed;
      spots(filled).forEach(spot -> checkReads(filled.results(), spot, of));
    }
  }

  /** An edit follows edges; what is read without one would stay as it was. */
  @Test
  void nothing_is_read_without_an_edge() {
    for (long seed = 1; seed <= JOBS; seed++) {
      RandomWorkbook job = seed % 3 == 0 ? RandomWorkbook.withPlan(seed) : RandomWorkbook.of(seed);
      Filled filled = job.open().fill();
      long of = seed;
      spots(filled).forEach(spot -> checkEdges(filled.results(), spot, of));
    }
  }

  private static void checkEdges(Results results, Spot spot, long seed) {
    Program program = results.program();
    Counting counting = new Counting(results);
    Value value = program.compiled(spot.place()).value(Frame.atRow(counting, spot.row()));
    String as = "seed %d, %s row %d".formatted(seed, spot.place(), spot.row());
    assertThat(value).as(as).isEqualTo(results.value(spot));
    Set<Place> needs = new HashSet<>();
    Set<Table> tables = new HashSet<>();
    needs.add(spot.place());
    program.needs(program.slots().of(spot.place())).forEach(need -> needs.add(need.place()));
    needs.stream().map(Place::table).filter(Objects::nonNull).forEach(tables::add);
    assertThat(needs).as(as).containsAll(counting.read.stream().map(Spot::place).toList());
    counting.rows.removeIf(Table::isWritten);
    assertThat(tables).as(as).containsAll(counting.rows);
  }

  private static void checkReads(Results results, Spot spot, long seed) {
    Trace trace = Trace.reading(results, spot);
    if (trace == null) {
      return;
    }
    Counting counting = new Counting(results);
    Value value = results.program().compiled(spot.place()).value(Frame.atRow(counting, spot.row()));
    String as =
        "seed %d, %s row %d: %s"
            .formatted(seed, spot.place(), spot.row(), trace.formula().formula().text());
    assertThat(value).as(as).isEqualTo(results.value(spot));
    assertThat(trace.value()).as(as).isEqualTo(value);
    Set<Spot> reads = trace.reads().all();
    assertThat(counting.read).as(as).containsAll(reads);
    if (!passesRows(trace.formula())) {
      assertThat(reads).as(as).isEqualTo(counting.read);
    }
    assertPassed(counting.read, trace, as);
  }

  /** What was read and is not told stands in rows that a total or a selection passed over. */
  private static void assertPassed(Set<Spot> read, Trace trace, String as) {
    Set<Spot> passed = new LinkedHashSet<>(read);
    passed.removeAll(trace.reads().all());
    if (!passed.isEmpty()) {
      assertThat(trace.reads().allTables()).as(as).isNotEmpty();
      assertThat(passed).as(as).allMatch(spot -> spot.place().table() != null);
    }
  }

  /** Whether a total or a selection chooses among rows, in what it calls or inherits too. */
  private static boolean passesRows(CheckedFormula formula) {
    return formula.readsInherited()
        || passesRows(formula.expression())
        || formula.formula().text().contains("fn")
        || formula.formula().text().contains("even at worst");
  }

  private static boolean passesRows(Expression node) {
    return node instanceof Selection
        || (node instanceof Aggregate aggregate && aggregate.where() != null)
        || node.children().stream().anyMatch(ReadsLawTest::passesRows);
  }

  @Test
  void a_value_feeds_exactly_what_needs_it() {
    for (long seed = 1; seed <= JOBS; seed++) {
      boolean isPlanned = seed % 10 == 0;
      RandomWorkbook job = isPlanned ? RandomWorkbook.withPlan(seed) : RandomWorkbook.of(seed);
      Filled filled = job.open().fill();
      Map<Spot, ReadLog> reads = new HashMap<>();
      spots(filled).forEach(spot -> addReads(filled.results(), spot, reads));
      Random random = new Random(seed);
      List<Spot> all = spots(filled).toList();
      for (int i = 0; i < 25; i++) {
        Spot asked = all.get(random.nextInt(all.size()));
        assertThat(fed(Feeds.of(filled.results(), asked)))
            .as("seed %d, %s row %d", seed, asked.place(), asked.row())
            .isEqualTo(needing(filled, asked, reads));
      }
    }
  }

  private static void addReads(Results results, Spot spot, Map<Spot, ReadLog> reads) {
    Trace trace = Trace.reading(results, spot);
    if (trace != null) {
      reads.put(spot, trace.reads());
    }
  }

  /** Spots, and tables by their rows. */
  private static Set<Object> fed(Iterable<Feeds.Fed> fed) {
    Set<Object> all = new HashSet<>();
    for (Feeds.Fed one : fed) {
      if (one instanceof Feeds.Fed.Values values) {
        values.rows().forEach(row -> all.add(new Spot(values.place(), row)));
      } else {
        all.add(((Feeds.Fed.Rows) one).table());
      }
    }
    return all;
  }

  /** All that needs a spot, found by going through everything again and again. */
  private static Set<Object> needing(Filled filled, Spot asked, Map<Spot, ReadLog> reads) {
    Set<Object> found = new HashSet<>();
    Deque<Object> open = new ArrayDeque<>();
    open.add(asked);
    while (!open.isEmpty()) {
      Object needed = open.removeFirst();
      reads.forEach(
          (user, log) -> {
            boolean does = log.all().contains(needed) || log.allTables().contains(needed);
            if (does && found.add(user)) {
              open.add(user);
            }
          });
      for (Table table : filled.book().tables()) {
        if (decides(needed, table) && found.add(table)) {
          open.add(table);
        }
        if (table == needed && table.plan() != null) {
          planned(filled, table).filter(found::add).forEach(open::add);
        }
      }
    }
    found.removeIf(one -> one instanceof Spot spot && isPlanned(filled, spot));
    return found;
  }

  private static Stream<Spot> planned(Filled filled, Table table) {
    return spots(filled)
        .filter(s -> s.place().table() == table)
        .filter(spot -> isPlanned(filled, spot));
  }

  private static boolean isPlanned(Filled filled, Spot spot) {
    return spot.place().table() != null
        && spot.place().table().plan() != null
        && filled.results().decisions().written(spot) != null;
  }

  private static boolean decides(Object needed, Table table) {
    PlanStatement plan = table.plan();
    if (needed instanceof Spot spot) {
      boolean opens =
          table.openings().stream()
              .anyMatch(o -> o.count() != null && o.count().upTo() == spot.place());
      return opens || (plan != null && isRole(plan, spot.place()));
    }
    return table.openings().stream().anyMatch(opening -> opening.from() == needed)
        || (plan != null && (plan.parts().table() == needed || plan.stock().table() == needed));
  }

  private static boolean isRole(PlanStatement plan, Place place) {
    return plan.settings().containsValue(place)
        || plan.parts().columns().containsValue(place)
        || plan.stock().columns().containsValue(place);
  }

  private static Stream<Spot> spots(Filled filled) {
    return filled.checked().places().stream()
        .map(CheckedPlace::place)
        .flatMap(filled.results()::spots);
  }
}
