package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.battenbook.bind.Rows;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.Table;
import org.battenbook.bound.Bound;
import org.battenbook.check.Need;
import org.battenbook.check.Need.Reach;
import org.battenbook.evaluate.ColumnValues.Chunk;
import org.battenbook.source.Diagnostics;
import org.jspecify.annotations.Nullable;

/**
 * Works out again only what an edit feeds. What is dirty is told by place and chunk; a chunk that
 * comes out as it was ends the wave there (salsa calls this backdating). Untouched chunks are
 * shared with the results before.
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
    this.rows = new RowMaking(results, planner, diagnostics);
  }

  /**
   * What came of an edit.
   *
   * @param results every value after it
   * @param ran the places that were worked out again, in order
   */
  public record Refilled(Results results, List<Place> ran) {
    public Refilled {
      ran = List.copyOf(ran);
    }
  }

  /**
   * Fills again after the formula of a place, or its cell in one row, was edited.
   *
   * @param program the program after the edit
   * @param before the results of the program before it
   * @param changed the places that it changed
   * @param row tells of each the row alone that it changed; negative for all rows
   * @param planner works out the rows that plans bring
   * @return absent where the edit moves rows, or is refused: then the whole book has to be filled
   *     again
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

  private Optional<Refilled> filled(Set<Place> places) {
    for (Stage stage : program.stages()) {
      if (!stage.slots().stream().allMatch(this::hasSameRows)) {
        return Optional.empty();
      }
      run(stage);
    }
    countSteps(places);
    boolean isRefused =
        Bound.STEPS.isPassedBy(results.steps())
            || places.stream().anyMatch(place -> LateNames.areMissing(place, results));
    results.meter().end();
    return isRefused ? Optional.empty() : Optional.of(new Refilled(results, ran));
  }

  private void countSteps(Set<Place> places) {
    long steps = before.steps();
    for (Place place : places) {
      Slot slot = program.slots().of(place);
      steps += program.steps(slot, results) - before.program().steps(slot, before);
    }
    results.setSteps(steps);
  }

  /** Whether a place that stands for the rows of a table stands for the same as before. */
  private boolean hasSameRows(Slot slot) {
    if (!(slot.place() instanceof Column column)
        || column.table().isWritten()
        || column != column.table().keyColumn()) {
      return true;
    }
    Table table = column.table();
    if (dirtyRows(slot)) {
      Rows made = rows.of(table);
      if (diagnostics.hasFaults() || !made.areSame(before.rows(table))) {
        return false;
      }
    } else {
      before.planned().forEach((plan, known) -> share(table, plan, known));
    }
    results.set(before.rows(table));
    return true;
  }

  private void share(Table table, PlanStatement plan, RowPlanner.Planned known) {
    if (plan.equals(table.plan())) {
      results.planned().put(plan, known);
    }
  }

  /** Whether anything that says which rows there are came out otherwise. */
  private boolean dirtyRows(Slot slot) {
    return program.needs(slot).stream()
        .anyMatch(need -> !changed.of(program.slots().of(need.place())).isEmpty());
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
    results.share(slot, before);
    if (isAsBefore(slot)) {
      results.shareWritten(slot, before);
    }
    if (dirty.isEmpty()) {
      return;
    }
    ran.add(slot.place());
    shareTotals(program.plan(slot).formula());
    if (slot.isColumn()) {
      column(slot, dirty);
    } else {
      Evaluator.run(slot, results);
      if (!results.line(slot.number()).equals(before.line(slot.number()))) {
        changed.add(slot, 0);
      }
    }
  }

  /** Whether an edit left what rows say of a place. */
  @SuppressWarnings("ReferenceEquality")
  private boolean isAsBefore(Slot slot) {
    return program.book().place(slot.place()) == before.program().book().place(slot.place());
  }

  private void column(Slot slot, BitSet dirty) {
    PlacePlan plan = program.plan(slot);
    ColumnValues old = before.column(slot.number());
    Chunk[] chunks = old.copyOfChunks();
    for (int c = dirty.nextSetBit(0); c >= 0; c = dirty.nextSetBit(c + 1)) {
      Chunk fresh = plan.chunk(results, c);
      if (!fresh.equals(chunks[c])) {
        chunks[c] = fresh;
        changed.add(slot, c);
      }
    }
    if (!changed.of(slot).isEmpty()) {
      results.set(slot, new ColumnValues(chunks));
    }
  }

  /** The totals in a formula keep what the chunks came to that nothing moved. */
  private void shareTotals(@Nullable Plan plan) {
    if (plan == null) {
      return;
    }
    if (plan instanceof AggregatePlan total && !total.dependsOnRow) {
      moved(total).ifPresent(chunks -> results.shareTotal(total, before, chunks));
    }
    plan.parts().forEach(this::shareTotals);
  }

  /** The chunks of a total's rows that moved; absent where something moved that all rows read. */
  private Optional<BitSet> moved(AggregatePlan total) {
    BitSet chunks = new BitSet();
    for (AggregatePlan.Read read : total.reads()) {
      BitSet movedThere = changed.of(read.slot());
      if (read.sameRow()) {
        chunks.or(movedThere);
      } else if (!movedThere.isEmpty()) {
        return Optional.empty();
      }
    }
    return Optional.of(chunks);
  }

  private void shareAll(Slot slot) {
    results.share(slot, before);
    if (isAsBefore(slot)) {
      results.shareWritten(slot, before);
    }
  }

  /** Goes on from a chunk into the next for as long as the last row of it came out otherwise. */
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

  /** Notes the columns in which a chunk changed; says whether its last row is among it. */
  private boolean reportChanges(Stage stage, RowByRow rows, int chunk) {
    boolean lastRow = false;
    for (int c = 0; c < stage.slots().size(); c++) {
      Slot slot = stage.slots().get(c);
      Chunk old = before.column(slot.number()).chunk(chunk);
      Chunk fresh = rows.chunk(c, chunk);
      if (!fresh.equals(old)) {
        changed.add(slot, chunk);
        int last = ColumnValues.rowsIn(chunk, before.valueCount(slot.place())) - 1;
        lastRow |= !fresh.value(last).equals(old.value(last));
      }
    }
    return lastRow;
  }

  /** The chunks of a place that an edit or a change of what it reads may have moved. */
  private BitSet dirty(Slot slot) {
    BitSet dirty = new BitSet();
    dirty.or(edited.of(slot));
    for (Need need : program.needs(slot)) {
      BitSet read = changed.of(program.slots().of(need.place()));
      if (!read.isEmpty()) {
        addReaders(need.reach(), read, before.chunkCount(slot.place()), dirty);
      }
    }
    return dirty;
  }

  /** The chunks that read changed chunks; a row above may stand in the chunk before. */
  private static void addReaders(Reach reach, BitSet read, int chunkCount, BitSet dirty) {
    switch (reach) {
      case WHOLE, ROWS -> dirty.set(0, chunkCount);
      case SAME_ROW -> dirty.or(read);
      case ROW_ABOVE -> {
        dirty.or(read);
        read.stream().map(chunk -> chunk + 1).filter(c -> c < chunkCount).forEach(dirty::set);
      }
    }
  }
}
