package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.check.Need;
import org.battenbook.check.Need.Reach;
import org.battenbook.evaluate.ColumnValues.Chunk;
import org.jspecify.annotations.Nullable;

/**
 * Works out again only what an edit feeds. What is dirty is told by place and chunk; a chunk that
 * comes out as it was ends the wave there (salsa calls this backdating). Untouched chunks are
 * shared with the results before.
 */
public final class Refill {
  private final Program program;
  private final Results before;
  private final Evaluator evaluator;
  private final Changes edited;
  private final Changes changed;
  private final List<Place> ran = new ArrayList<>();

  private Refill(Program program, Results before, Changes edited) {
    this.program = program;
    this.before = before;
    this.edited = edited;
    this.changed = new Changes(program.slots().count());
    this.evaluator = new Evaluator(program, before.meter().goOn());
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
   */
  public static Refilled after(
      Program program, Results before, Set<Place> changed, ToIntFunction<Place> row) {
    Changes edited = new Changes(program.slots().count());
    for (Place place : changed) {
      int only = row.applyAsInt(place);
      for (int chunk = 0; chunk < before.chunkCount(place); chunk++) {
        if (only < 0 || chunk == only >> ColumnValues.SHIFT) {
          edited.add(program.slots().of(place), chunk);
        }
      }
    }
    Refill refill = new Refill(program, before, edited);
    program.stages().forEach(refill::run);
    refill.evaluator.results().meter().end();
    return new Refilled(refill.evaluator.results(), refill.ran);
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
    evaluator.results().share(slot, before);
    if (program.plan(slot) == before.program().plan(slot)) {
      evaluator.results().shareWritten(slot, before);
    }
    if (dirty.isEmpty()) {
      return;
    }
    ran.add(slot.place());
    shareTotals(program.plan(slot).formula());
    if (slot.place() instanceof Column) {
      column(slot, dirty);
    } else {
      evaluator.run(slot);
      if (!evaluator.results().line(slot.number()).equals(before.line(slot.number()))) {
        changed.add(slot, 0);
      }
    }
  }

  private void column(Slot slot, BitSet dirty) {
    PlacePlan plan = program.plan(slot);
    ColumnValues old = before.column(slot.number());
    Chunk[] chunks = old.copyOfChunks();
    for (int c = dirty.nextSetBit(0); c >= 0; c = dirty.nextSetBit(c + 1)) {
      Chunk fresh = plan.chunk(evaluator.results(), c);
      if (!fresh.equals(chunks[c])) {
        chunks[c] = fresh;
        changed.add(slot, c);
      }
    }
    if (!changed.of(slot).isEmpty()) {
      evaluator.results().set(slot, new ColumnValues(chunks));
    }
  }

  /** The totals in a formula keep what the chunks came to that nothing moved. */
  private void shareTotals(@Nullable Plan plan) {
    if (plan == null) {
      return;
    }
    if (plan instanceof AggregatePlan total && !total.dependsOnRow) {
      moved(total).ifPresent(chunks -> evaluator.results().shareTotal(total, before, chunks));
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

  /** Goes on from a chunk into the next for as long as the last row of it came out otherwise. */
  private void rowByRow(Stage stage) {
    BitSet dirty = new BitSet();
    stage.slots().forEach(slot -> dirty.or(dirty(slot)));
    if (dirty.isEmpty()) {
      stage.slots().forEach(slot -> evaluator.results().share(slot, before));
      return;
    }
    stage.slots().forEach(slot -> ran.add(slot.place()));
    RowByRow rows = RowByRow.over(program, evaluator.results(), stage, before);
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
