package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.battenbook.book.Table;
import org.battenbook.column.BitLane;
import org.battenbook.column.Lane;
import org.battenbook.column.NumberLane;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.AggregateFunction;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * One value out of the rows of a table. {@code where} is decided first; what is taken of a row that
 * does not count is not worked out.
 */
final class AggregatePlan extends Plan {
  final AggregateFunction function;
  final Table table;
  final Kind kind;
  final int rowCount;
  final @Nullable Plan of;
  final @Nullable Plan where;

  /** What the {@code where} compares, if it compares the rows' own value with one of the outer. */
  final @Nullable Matching matching;

  /** Whether the row around it enters, through {@code this} or an argument. */
  final boolean dependsOnRow;

  private final Effort effort;
  private final @Nullable LanePlan ofLanes;
  private final @Nullable LanePlan whereLanes;
  private final List<Read> reads;

  /**
   * {@code where inner = outer}, or that and more: rows are grouped by the inner side once, not all
   * gone through anew.
   *
   * @param decides whether nothing else reads the row around, so that each group has one result
   */
  record Matching(Plan inner, Plan outer, boolean decides) {}

  AggregatePlan(
      Aggregate node,
      Table table,
      Kind kind,
      Effort effort,
      @Nullable Plan of,
      @Nullable Plan where,
      @Nullable Matching matching,
      boolean dependsOnRow) {
    super(node);
    this.function = node.function();
    this.table = table;
    this.kind = kind;
    this.effort = effort;
    this.rowCount = Math.toIntExact(effort.each());
    this.of = of;
    this.where = where;
    this.matching = matching;
    this.dependsOnRow = dependsOnRow;
    this.ofLanes = of == null ? null : LaneCompiler.compile(of);
    this.whereLanes = where == null ? null : LaneCompiler.compile(where);
    this.reads = collectReads();
  }

  @Override
  List<Plan> parts() {
    return Stream.of(of, where).filter(Objects::nonNull).toList();
  }

  @Override
  Value evaluate(Frame frame) {
    if (!dependsOnRow && frame.watch == null) {
      return frame.reading.total(this);
    }
    if (frame.watch != null) {
      frame.watch.overRows(table);
    }
    Value missing = frame.reading.missingRows(table);
    if (missing != null) {
      return missing;
    }
    if (matching != null) {
      boolean watched = frame.watch != null;
      Groups groups = watched ? frame.reading.watchedGroups(this) : frame.reading.groups(this);
      if (watched ? groups.areOfWords() && !groups.isBroken() : groups.areExact()) {
        Value key = matching.outer().run(frame.inner());
        return key.isKnown() ? groups.result(key, frame) : key;
      }
    }
    if (effort.isTooMuch()) {
      return effort.fault();
    }
    Aggregation aggregation = fresh(frame.reading);
    goThrough(frame, 0, rowCount, aggregation);
    return aggregation.result();
  }

  Aggregation fresh(Reading reading) {
    return new Aggregation(function, kind, reading.meter());
  }

  /** What the rows of one chunk come to, where no row around enters. */
  Aggregation chunk(Reading reading, int chunk) {
    Aggregation byLanes = byLanes(fresh(reading), ChunkFrame.of(reading, chunk, rowCount));
    if (byLanes != null) {
      return byLanes;
    }
    Aggregation aggregation = fresh(reading);
    int first = chunk << ColumnValues.SHIFT;
    int rows = ColumnValues.rowsIn(chunk, rowCount);
    goThrough(Frame.atRow(reading, 0), first, first + rows, aggregation);
    return aggregation;
  }

  private @Nullable Aggregation byLanes(Aggregation into, ChunkFrame frame) {
    if ((of != null && ofLanes == null) || (where != null && whereLanes == null)) {
      return null;
    }
    try {
      Lane chosen = whereLanes == null ? null : whereLanes.run(frame);
      Lane taken = ofLanes == null ? null : ofLanes.run(frame);
      boolean whole =
          (where == null || chosen instanceof BitLane)
              && (of == null || taken instanceof NumberLane);
      return whole ? into.addAll((BitLane) chosen, (NumberLane) taken, frame.rows()) : null;
    } catch (ArithmeticException aRowHasNone) {
      return null;
    }
  }

  /** A place that the rows of a total read: each its own row of it, or all of them more. */
  record Read(Slot slot, boolean sameRow) {}

  /** Everything that is read to work it out. */
  List<Read> reads() {
    return reads;
  }

  private List<Read> collectReads() {
    List<Read> found = new ArrayList<>();
    parts().forEach(part -> collect(part, true, found));
    return List.copyOf(found);
  }

  private static void collect(Plan plan, boolean inRow, List<Read> reads) {
    if (plan instanceof ReadPlan read) {
      reads.add(new Read(read.slot, inRow && read.from == ReadPlan.From.SAME_ROW));
    } else if (plan instanceof ThroughPlan through) {
      reads.add(new Read(through.column, false));
    }
    boolean sameRows = inRow && !(plan instanceof AggregatePlan || plan instanceof SelectionPlan);
    plan.parts().forEach(part -> collect(part, sameRows, reads));
  }

  private void goThrough(Frame frame, int from, int to, Aggregation aggregation) {
    Frame inner = frame.inner();
    for (int row = from; row < to && !aggregation.isBroken(); row++) {
      inner.row = row;
      add(inner, aggregation);
    }
  }

  /** Takes a row if it counts. */
  private void add(Frame inner, Aggregation aggregation) {
    Watch watch = inner.watch;
    if (watch == null) {
      addIfCounts(inner, aggregation);
    } else {
      watch.rowBegins();
      addIfCounts(inner, aggregation);
      watch.rowEnds();
    }
  }

  private void addIfCounts(Frame inner, Aggregation aggregation) {
    Value counts = where == null ? new Value.YesNo(true) : where.run(inner);
    boolean isLeftOut = counts instanceof Value.YesNo yesNo && !yesNo.yes();
    if (isLeftOut) {
      return;
    }
    if (inner.watch != null) {
      inner.watch.rowCounts();
    }
    aggregation.add(counts.isKnown() ? taken(inner) : counts);
  }

  /** What some rows come to, seen from a row around them. */
  Value over(List<Integer> rows, Frame frame) {
    Effort ofRows = effort.over(rows.size());
    if (ofRows.isTooMuch()) {
      return ofRows.fault();
    }
    Aggregation aggregation = fresh(frame.reading);
    Frame inner = frame.inner();
    for (int i = 0; i < rows.size() && !aggregation.isBroken(); i++) {
      inner.row = rows.get(i);
      add(inner, aggregation);
    }
    return aggregation.result();
  }

  /** What is taken of a row; of a row that is only counted, something known. */
  Value taken(Frame inner) {
    return of == null ? new Value.YesNo(true) : of.run(inner);
  }
}
