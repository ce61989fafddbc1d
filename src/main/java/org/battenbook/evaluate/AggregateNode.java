package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.battenbook.bind.BookRows;
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
 * A total over the rows of a table. {@code where} is decided first; a row that does not count is
 * worked out no further.
 */
final class AggregateNode extends OverRowsNode {
  private final AggregateFunction function;
  private final Kind kind;

  /** Whether it reads the row around it, through {@code this} or an argument. */
  final boolean dependsOnRow;

  private final @Nullable ColumnKernel ofLanes;
  private final @Nullable ColumnKernel whereLanes;
  private final List<Read> reads = new ArrayList<>();
  private final Set<Table> others = new HashSet<>();

  AggregateNode(
      Aggregate node,
      Table table,
      Kind kind,
      @Nullable FormulaNode of,
      @Nullable FormulaNode where,
      @Nullable Matching matching,
      boolean dependsOnRow) {
    super(node, table, of, where, matching);
    this.function = node.function();
    this.kind = kind;
    this.dependsOnRow = dependsOnRow;
    this.ofLanes = of == null ? null : KernelCompiler.compile(of);
    this.whereLanes = where == null ? null : KernelCompiler.compile(where);
    parts().forEach(part -> collect(part, true));
  }

  @Override
  Steps steps(BookRows rows) {
    if (!dependsOnRow) {
      return allRows(rows).allOnce().plus(Steps.ONE);
    }
    return isGroupedWhole() ? allRows(rows).allOnce().plus(super.steps(rows)) : super.steps(rows);
  }

  @Override
  Value evaluate(Frame frame) {
    boolean isTotal = !dependsOnRow && frame.watch == null;
    return isTotal ? frame.reading.total(this) : goThrough(frame);
  }

  @Override
  Value ofGroup(Frame frame, Groups.Group group) {
    return isGroupedWhole() && frame.watch == null
        ? group.total(rows -> among(frame, rows))
        : super.ofGroup(frame, group);
  }

  /** Whether each group has one result, whatever the row around. */
  private boolean isGroupedWhole() {
    return matching != null && matching.decides();
  }

  Aggregation fresh(Reading reading) {
    return new Aggregation(function, kind, reading.meter());
  }

  /** The total of the rows of one chunk, where the row around is not read. */
  Aggregation chunk(Reading reading, int chunk) {
    int count = reading.rows(table).count();
    Aggregation byLanes = byLanes(fresh(reading), ChunkFrame.of(reading, chunk, count));
    if (byLanes != null) {
      return byLanes;
    }
    Aggregation aggregation = fresh(reading);
    int first = chunk << ColumnValues.SHIFT;
    int rows = ColumnValues.rowsIn(chunk, count);
    Frame inner = Frame.atRow(reading, 0).inner();
    for (int row = first; row < first + rows && !aggregation.isBroken(); row++) {
      inner.row = row;
      add(inner, aggregation);
    }
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

  /**
   * A place that a total reads.
   *
   * @param sameRow whether each row reads its own row of it alone
   */
  record Read(Slot slot, boolean sameRow) {}

  /** Every place that is read to work it out. */
  List<Read> reads() {
    return Collections.unmodifiableList(reads);
  }

  /** The tables whose rows are gone over or named for each row of its own. */
  Set<Table> others() {
    return Collections.unmodifiableSet(others);
  }

  private void collect(FormulaNode node, boolean inRow) {
    boolean sameRows = inRow;
    if (node instanceof ReadNode read) {
      reads.add(new Read(read.slot, inRow && read.from == ReadNode.From.SAME_ROW));
    } else if (node instanceof ThroughNode through) {
      reads.add(new Read(through.column, false));
    } else if (node instanceof NamedRowNode named) {
      others.add(named.table);
    } else if (node instanceof OverRowsNode over) {
      others.add(over.table);
      sameRows = false;
    }
    for (FormulaNode part : node.parts()) {
      collect(part, sameRows);
    }
  }

  /** Adds a row if it counts. */
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

  @Override
  Value among(Frame frame, RowList rows) {
    Aggregation aggregation = fresh(frame.reading);
    Frame inner = frame.inner();
    for (int i = 0; i < rows.size() && !aggregation.isBroken(); i++) {
      inner.row = rows.row(i);
      add(inner, aggregation);
    }
    return aggregation.result();
  }

  /** What a row adds to the total. A row that is only counted adds any known value. */
  Value taken(Frame inner) {
    return of == null ? new Value.YesNo(true) : of.run(inner);
  }
}
