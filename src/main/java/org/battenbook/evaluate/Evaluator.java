package org.battenbook.evaluate;

import java.util.stream.IntStream;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.evaluate.ColumnValues.Chunk;
import org.battenbook.source.Diagnostics;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Fills a book: works out every place, stage by stage, and makes the rows of tables. */
public final class Evaluator {
  private final Program program;
  private final Results results;
  private final RowMaking rows;
  private final WorkBound work;
  private final Diagnostics diagnostics;

  private Evaluator(Program program, Results results, RowPlanner planner, Diagnostics diagnostics) {
    this.program = program;
    this.results = results;
    this.rows = new RowMaking(results, planner, diagnostics);
    this.work = new WorkBound(results, diagnostics);
    this.diagnostics = diagnostics;
  }

  /**
   * Works out every value.
   *
   * @param planner makes the plans
   * @param diagnostics takes what is wrong with the rows of tables, and what is too much work
   * @return absent where there was a fault
   */
  public static @Nullable Results fill(
      Program program, RowPlanner planner, Diagnostics diagnostics) {
    Results results = new Results(program, new Meter());
    Evaluator evaluator = new Evaluator(program, results, planner, diagnostics);
    for (Stage stage : program.stages()) {
      if (!evaluator.fits(stage)) {
        return null;
      }
      evaluator.run(stage);
      evaluator.refuseTooMuch(stage);
    }
    LateNames.check(program.naming(), results, diagnostics);
    results.meter().end();
    return diagnostics.hasFaults() ? null : results;
  }

  /** Refuses the job where its long numbers, its texts, or the rows of one group are too many. */
  private void refuseTooMuch(Stage stage) {
    Value.Fault tooMuch = results.meter().passed();
    if (tooMuch != null) {
      Place place = stage.slots().get(0).place();
      diagnostics.refuse(
          tooMuch.code(), place.layer().span(), tooMuch.message(), "or split the job in two");
    }
  }

  /** Makes the rows that a stage stands for, and tells whether the stage may be worked out. */
  private boolean fits(Stage stage) {
    stage.slots().forEach(this::makeRows);
    return !diagnostics.hasFaults() && work.allows(stage);
  }

  /** The key column of a table stands for its rows. */
  private void makeRows(Slot slot) {
    Table table = slot.rowsOf();
    if (table != null) {
      results.set(rows.of(table));
    }
  }

  private void run(Stage stage) {
    if (stage.rowByRow()) {
      RowByRow byRow = RowByRow.empty(program, results, stage);
      IntStream.range(0, byRow.chunkCount()).forEach(byRow::run);
    } else {
      stage.slots().forEach(slot -> run(slot, results));
    }
  }

  /** Works out a place. All that it needs is worked out already. */
  static void run(Slot slot, Results results) {
    CompiledPlace place = results.program().compiled(slot);
    if (slot.isColumn()) {
      results.set(slot, column(place, results, results.valueCount(slot.place())));
    } else {
      results.set(slot, place.value(Frame.atRow(results, 0)));
    }
  }

  private static ColumnValues column(CompiledPlace place, Results results, int rowCount) {
    Chunk[] chunks = new Chunk[ColumnValues.chunkCount(rowCount)];
    for (int chunk = 0; chunk < chunks.length; chunk++) {
      chunks[chunk] = place.chunk(results, chunk);
    }
    return new ColumnValues(chunks);
  }
}
