package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.battenbook.bind.Rows;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.bound.Bound;
import org.battenbook.check.CheckedPlace;
import org.battenbook.evaluate.ColumnValues.Chunk;
import org.battenbook.source.Diagnostics;
import org.jspecify.annotations.Nullable;

/**
 * Works out again only what an edit feeds: values, rows and plans. It tracks changes by place and
 * chunk. Where a chunk comes out as before, the change goes no further (salsa calls this
 * backdating). Unchanged chunks are shared with the results before. From the first row that is
 * another on, every chunk counts as changed, whatever it holds: its rows are others.
 */
public final class Refill {
  private final Program program;
  private final Results before;
  private final Results results;
  private final RowMaking rows;
  private final Diagnostics diagnostics = new Diagnostics();
  private final Changes edited;
  private final Changes changed;
  private final List<Place> ran = new ArrayList<>();

  private Refill(Program program, Results before, Changes edited, RowPlanner planner) {
    this.program = program;
    this.before = before;
    this.edited = edited;
    this.changed = new Changes(program.slots().count());
    this.results = new Results(program, before.meter().goOn());
    results.setSteps(before.steps());
    this.rows = new RowMaking(results, planner, diagnostics);
  }

  /**
   * The outcome of an edit.
   *
   * @param results every value after it
   * @param ran the places that were worked out again, in order
   * @param moved the tables that have other rows, or whose rows are all known only before or after
   */
  public record Refilled(Results results, List<Place> ran, Set<Table> moved) {
    public Refilled {
      ran = List.copyOf(ran);
      moved = Set.copyOf(moved);
    }
  }

  /**
   * Fills again after an edit of a formula or of one cell.
   *
   * @param program the program after the edit
   * @param before the results of the program before it
   * @param changed the places that it changed
   * @param row for each of these places the one row that changed; negative for all rows
   * @param planner makes the plans whose jobs changed
   * @return absent where the edit is refused: then reading the edited text says why
   */
  public static Optional<Refilled> after(
      Program program,
      Results before,
      Set<Place> changed,
      ToIntFunction<Place> row,
      RowPlanner planner) {
    Changes edited = new Changes(program.slots().count());
    for (Place place : changed) {
      int only = row.applyAsInt(place);
      for (int chunk = 0; chunk < before.chunkCount(place); chunk++) {
        if (only < 0 || chunk == only >> ColumnValues.SHIFT) {
          edited.add(program.slots().of(place), chunk);
        }
      }
    }
    return new Refill(program, before, edited, planner).filled(changed);
  }

  /**
   * Makes the plans that are pending.
   *
   * @return absent where the job is refused with them: then reading its text says why
   */
  public static Optional<Refilled> planned(Results before, RowPlanner planner) {
    Program program = before.program();
    Changes none = new Changes(program.slots().count());
    return new Refill(program, before, none, planner).filled(Set.of());
  }

  private Optional<Refilled> filled(Set<Place> places) {
    for (Stage stage : program.stages()) {
      stage.slots().forEach(this::makeRows);
      stage.slots().forEach(slot -> countSteps(slot, places));
      if (diagnostics.hasFaults() || Bound.STEPS.isPassedBy(results.steps())) {
        return Optional.empty();
      }
      run(stage);
    }
    checkNames(places);
    results.meter().end();
    return diagnostics.hasFaults()
        ? Optional.empty()
        : Optional.of(new Refilled(results, ran, changed.movedTables()));
  }

  private void countSteps(Slot slot, Set<Place> places) {
    if (readsMovedRows(slot) || places.contains(slot.place())) {
      results.setSteps(
          results.steps() + program.steps(slot, results) - before.program().steps(slot, before));
    }
  }

  /** Where rows moved, any place may name one that is gone. */
  private void checkNames(Set<Place> places) {
    boolean haveMoved = !changed.movedTables().isEmpty();
    LateNames.check(haveMoved ? program.naming() : places, results, diagnostics);
  }

  /** The key column of a table stands for its rows. */
  private void makeRows(Slot slot) {
    Table table = slot.rowsOf();
    if (table != null && !diagnostics.hasFaults()) {
      makeRows(table, slot);
    }
  }

  private void makeRows(Table table, Slot slot) {
    if (!isPending(table) && !needsChanged(slot)) {
      rows.keep(table, before);
      return;
    }
    Rows made = rows.of(table);
    Rows old = before.rows(table);
    results.set(made);
    int first = made.firstOther(old);
    if (first != Rows.NO_ROW) {
      changed.move(table, first);
    } else if (!Objects.equals(made.missing(), old.missing())) {
      changed.move(table, made.count());
    }
  }

  private boolean isPending(Table table) {
    return table.plan() != null && before.isPending(table.plan());
  }

  private boolean needsChanged(Slot slot) {
    for (Edge edge : program.edges(slot)) {
      if (changed.isChanged(edge.from())) {
        return true;
      }
    }
    return false;
  }

  /** Whether a place has a value for each row of a table that moved, or goes over its rows. */
  private boolean readsMovedRows(Slot slot) {
    if (changed.movedTables().isEmpty()) {
      return false;
    }
    for (Edge edge : program.edges(slot)) {
      if (changed.areMoved(edge.from())) {
        return true;
      }
    }
    return changed.areMoved(slot);
  }

  private void run(Stage stage) {
    if (stage.rowByRow()) {
      rowByRow(stage);
    } else {
      stage.slots().forEach(this::run);
    }
  }

  private void run(Slot slot) {
    BitSet dirty = dirty(slot);
    shareAll(slot);
    if (dirty.isEmpty()) {
      return;
    }
    ran.add(slot.place());
    shareTotals(program.compiled(slot).formula());
    Table table = slot.place().table();
    if (table != null) {
      column(slot, table, dirty);
    } else {
      Evaluator.run(slot, results);
      if (!results.line(slot.number()).equals(before.line(slot.number()))) {
        changed.add(slot, 0);
      }
    }
  }

  /** Takes over the values before; those of a table that shrank only for the rows it has left. */
  private void shareAll(Slot slot) {
    results.share(slot, before);
    if (changed.areMoved(slot)) {
      int count = results.chunkCount(slot.place());
      results.set(slot, new ColumnValues(before.column(slot.number()).firstChunks(count)));
    }
    if (isAsBefore(slot)) {
      results.shareWritten(slot, before);
    }
  }

  /**
   * Whether an edit left the cells of a place as they were, their rows, and the rows that they
   * name.
   */
  @SuppressWarnings("ReferenceEquality")
  private boolean isAsBefore(Slot slot) {
    CheckedPlace now = program.book().place(slot.place());
    return now == before.program().book().place(slot.place()) && !readsMovedRows(slot);
  }

  private void column(Slot slot, Table table, BitSet dirty) {
    CompiledPlace place = program.compiled(slot);
    Chunk[] chunks = before.column(slot.number()).firstChunks(results.chunkCount(slot.place()));
    int moved = changed.firstMovedChunk(table);
    for (int c = dirty.nextSetBit(0); c >= 0; c = dirty.nextSetBit(c + 1)) {
      Chunk fresh = place.chunk(results, c);
      if (c >= moved || !fresh.equals(chunks[c])) {
        chunks[c] = fresh;
        changed.add(slot, c);
      }
    }
    if (!changed.of(slot).isEmpty()) {
      results.set(slot, new ColumnValues(chunks));
    }
  }

  /** Lets the totals in a formula keep the results of chunks that nothing changed. */
  private void shareTotals(@Nullable FormulaNode node) {
    if (node == null) {
      return;
    }
    if (node instanceof AggregateNode total && !total.dependsOnRow) {
      moved(total).ifPresent(chunks -> results.shareTotal(total, before, chunks));
    }
    node.parts().forEach(this::shareTotals);
  }

  /**
   * The chunks that a total has to add up again; empty where something changed that all rows read.
   */
  private Optional<BitSet> moved(AggregateNode total) {
    if (total.others().stream().anyMatch(changed.movedTables()::contains)) {
      return Optional.empty();
    }
    BitSet chunks = new BitSet();
    int count = results.chunkCount(total.table.keyColumn());
    chunks.set(Math.min(changed.firstMovedChunk(total.table), count), count);
    for (AggregateNode.Read read : total.reads()) {
      if (read.sameRow()) {
        chunks.or(changed.of(read.slot()));
      } else if (changed.isChanged(read.slot())) {
        return Optional.empty();
      }
    }
    return Optional.of(chunks);
  }

  /** Continues from a chunk into the next as long as the last row of the chunk changes. */
  private void rowByRow(Stage stage) {
    BitSet dirty = new BitSet();
    stage.slots().forEach(slot -> dirty.or(dirty(slot)));
    if (dirty.isEmpty()) {
      stage.slots().forEach(this::shareAll);
      return;
    }
    stage.slots().stream().filter(this::isAsBefore).forEach(s -> results.shareWritten(s, before));
    stage.slots().forEach(slot -> ran.add(slot.place()));
    RowByRow rows = RowByRow.over(program, results, stage, before);
    for (int chunk = dirty.nextSetBit(0); chunk >= 0; chunk = dirty.nextSetBit(chunk + 1)) {
      rows.run(chunk);
      if (reportChanges(stage, rows, chunk) && chunk + 1 < rows.chunkCount()) {
        dirty.set(chunk + 1);
      }
    }
  }

  /**
   * Notes the columns in which a chunk changed, and tells whether its last row did. Where rows
   * moved, all later chunks run anyway.
   */
  private boolean reportChanges(Stage stage, RowByRow rows, int chunk) {
    boolean lastRow = false;
    for (int c = 0; c < stage.slots().size(); c++) {
      Slot slot = stage.slots().get(c);
      Chunk fresh = rows.chunk(c, chunk);
      if (chunk >= changed.firstMovedChunk(slot.place().table())) {
        changed.add(slot, chunk);
        continue;
      }
      Chunk old = before.column(slot.number()).chunk(chunk);
      if (!fresh.equals(old)) {
        changed.add(slot, chunk);
        int last = ColumnValues.rowsIn(chunk, before.valueCount(slot.place())) - 1;
        lastRow |= !fresh.value(last).equals(old.value(last));
      }
    }
    return lastRow;
  }

  /**
   * The chunks of a place that have to run again, since the edit or a change of their needs may
   * change them.
   */
  private BitSet dirty(Slot slot) {
    int chunkCount = results.chunkCount(slot.place());
    BitSet dirty = new BitSet();
    dirty.or(edited.of(slot));
    dirty.set(Math.min(changed.firstMovedChunk(slot.place().table()), chunkCount), chunkCount);
    for (Edge edge : program.edges(slot)) {
      if (changed.isChanged(edge.from())) {
        addReaders(edge, chunkCount, dirty);
      }
    }
    dirty.clear(chunkCount, Math.max(chunkCount, dirty.length()));
    return dirty;
  }

  /** Adds the chunks that read changed chunks. A row above may stand in the chunk before. */
  private void addReaders(Edge edge, int chunkCount, BitSet dirty) {
    BitSet read = changed.of(edge.from());
    switch (edge.reach()) {
      case WHOLE, ROWS -> dirty.set(0, chunkCount);
      case SAME_ROW -> dirty.or(read);
      case ROW_ABOVE -> {
        dirty.or(read);
        read.stream().map(chunk -> chunk + 1).filter(c -> c < chunkCount).forEach(dirty::set);
      }
    }
  }
}
