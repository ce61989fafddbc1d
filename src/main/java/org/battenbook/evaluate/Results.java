package org.battenbook.evaluate;

import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.Stream;
import org.battenbook.bind.BookRows;
import org.battenbook.bind.MissingRows;
import org.battenbook.bind.Rows;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.Rule;
import org.battenbook.book.Table;
import org.battenbook.check.Decisions;
import org.battenbook.column.Lookup;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Every value of a filled book. It never changes once it is given out. */
public final class Results implements Reading, BookRows {
  private final Program program;
  private final @Nullable Object[] values;
  private final AtomicReferenceArray<@Nullable Written> written;
  private final Map<Table, Rows> rows = new ConcurrentHashMap<>();
  private final Map<PlanStatement, RowPlanner.Planned> planned = new ConcurrentHashMap<>();
  private final Set<PlanStatement> pending = new LinkedHashSet<>();
  private final Decisions decisions;
  private long steps;
  private final Meter meter;
  private final Map<OverRowsNode, Groups> groups = new ConcurrentHashMap<>();

  private final Map<Integer, Optional<Lookup>> lookups = new ConcurrentHashMap<>();

  /** The result of each chunk of a total. After an edit, those of unchanged chunks still hold. */
  private final Map<AggregateNode, AtomicReferenceArray<@Nullable Aggregation>> totals =
      new ConcurrentHashMap<>();

  /** The results of totals, kept since every row of a column may read the same one. */
  private final Map<AggregateNode, Value> totalled = new ConcurrentHashMap<>();

  Results(Program program, Meter meter) {
    this.program = program;
    this.decisions = new Decisions(program.book(), this);
    program.book().book().tables().stream()
        .filter(Table::isWritten)
        .forEach(table -> rows.put(table, program.book().writtenRows(table)));
    this.meter = meter;
    this.values = new @Nullable Object[program.slots().count()];
    this.written = new AtomicReferenceArray<>(program.slots().count());
  }

  public Program program() {
    return program;
  }

  @Override
  public Rows rows(Table table) {
    Rows made = rows.get(table);
    if (made == null) {
      throw new IllegalStateException(
          "the rows of %s are read before they are made".formatted(table));
    }
    return made;
  }

  void set(Rows made) {
    rows.put(made.table(), made);
  }

  /** Its plans that are made. */
  Map<PlanStatement, RowPlanner.Planned> planned() {
    return planned;
  }

  /** Its plans that are still to be made, in the order of the fill. */
  public Set<PlanStatement> pending() {
    return Collections.unmodifiableSet(pending);
  }

  boolean isPending(PlanStatement plan) {
    return pending.contains(plan);
  }

  void addPending(PlanStatement plan) {
    pending.add(plan);
  }

  /** The steps of the whole fill. */
  long steps() {
    return steps;
  }

  void setSteps(long counted) {
    steps = counted;
  }

  /** All spots of a place. */
  public Stream<Spot> spots(Place place) {
    Table table = place.table();
    return table == null ? Stream.of(new Spot(place, 0)) : rows(table).spots(place);
  }

  int chunkCount(Place place) {
    return ColumnValues.chunkCount(valueCount(place));
  }

  /** How many values a place has: one for a line, as many as rows for a column. */
  int valueCount(Place place) {
    Table table = place.table();
    return table == null ? 1 : rows(table).count();
  }

  /** What decides each of its values. */
  @Override
  public Decisions decisions() {
    return decisions;
  }

  /** The value at a spot: known, at fault or waiting. */
  public Value value(Spot spot) {
    Slot slot = program.slots().of(spot.place());
    return slot.isColumn() ? cell(slot.number(), spot.row()) : line(slot.number());
  }

  /** What a rule says in a row (0 for a page's rule). */
  public Value message(Rule rule, int row) {
    return program.message(rule).run(Frame.atRow(this, row));
  }

  /** Whether a bound was passed, so that values depend on the order of the fill. */
  public boolean areCutShort() {
    return meter.isPassed();
  }

  @Override
  public Meter meter() {
    return meter;
  }

  void set(Slot slot, Value value) {
    values[slot.number()] = value;
  }

  void set(Slot slot, ColumnValues column) {
    values[slot.number()] = column;
  }

  /** Takes a place's values over from results before an edit. */
  void share(Slot slot, Results before) {
    values[slot.number()] = before.values[slot.number()];
  }

  /** Takes the cells of a place over from results before an edit that left them. */
  void shareWritten(Slot slot, Results before) {
    written.set(slot.number(), before.written.get(slot.number()));
    decisions.share(slot.place(), before.decisions);
  }

  @Override
  public Written written(CompiledPlace column) {
    int number = column.slot().number();
    Written known = written.get(number);
    if (known == null) {
      known = column.written(this);
      written.set(number, known);
    }
    return known;
  }

  @Override
  public Value line(int place) {
    return (Value) known(place);
  }

  @Override
  public Value cell(int place, int row) {
    return column(place).value(row);
  }

  ColumnValues column(int place) {
    return (ColumnValues) known(place);
  }

  @Override
  public Groups groups(OverRowsNode node) {
    Groups known = groups.get(node);
    if (known == null) {
      known = node.grouped(this);
      groups.put(node, known);
    }
    return known;
  }

  @Override
  public ColumnValues.Chunk chunk(int place, int chunk) {
    return column(place).chunk(chunk);
  }

  @Override
  public @Nullable Lookup lookup(int place) {
    return lookups.computeIfAbsent(place, p -> column(p).lookup()).orElse(null);
  }

  @Override
  public @Nullable Value missingRows(Table table) {
    MissingRows missing = rows(table).missing();
    return missing == null ? null : missing.waitsFor();
  }

  @Override
  public Value total(AggregateNode aggregate) {
    Value known = totalled.get(aggregate);
    if (known == null) {
      Value missing = missingRows(aggregate.table);
      known = missing == null ? addedUp(aggregate) : missing;
      totalled.put(aggregate, known);
    }
    return known;
  }

  private Value addedUp(AggregateNode aggregate) {
    AtomicReferenceArray<@Nullable Aggregation> parts =
        totals.computeIfAbsent(
            aggregate, a -> new AtomicReferenceArray<>(chunkCount(a.table.keyColumn())));
    Aggregation total = aggregate.fresh(this);
    for (int chunk = 0; chunk < parts.length(); chunk++) {
      Aggregation part = parts.get(chunk);
      if (part == null) {
        part = aggregate.chunk(this, chunk);
        parts.set(chunk, part);
      }
      total.addAll(part);
    }
    return total.result();
  }

  /**
   * Takes over the results of the chunks of a total before an edit.
   *
   * @param moved the chunks that must be added up again, among them all new ones
   */
  void shareTotal(AggregateNode aggregate, Results before, BitSet moved) {
    AtomicReferenceArray<@Nullable Aggregation> parts = before.totals.get(aggregate);
    if (parts != null) {
      AtomicReferenceArray<@Nullable Aggregation> kept =
          new AtomicReferenceArray<>(chunkCount(aggregate.table.keyColumn()));
      for (int chunk = moved.nextClearBit(0);
          chunk < kept.length();
          chunk = moved.nextClearBit(chunk + 1)) {
        kept.set(chunk, parts.get(chunk));
      }
      totals.put(aggregate, kept);
    }
  }

  private Object known(int place) {
    Object value = values[place];
    if (value == null) {
      throw new IllegalStateException("place %d is read before it is worked out".formatted(place));
    }
    return value;
  }
}
