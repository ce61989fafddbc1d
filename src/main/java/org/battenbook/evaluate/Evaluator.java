package org.battenbook.evaluate;

import java.util.stream.IntStream;
import org.battenbook.book.Column;
import org.battenbook.evaluate.ColumnValues.Chunk;

/** Works out every place of a program, stage by stage. */
public final class Evaluator {
  private final Program program;
  private final Results results;

  Evaluator(Program program, Meter meter) {
    this.program = program;
    this.results = new Results(program, meter);
  }

  /** Works everything out anew. */
  public static Results fill(Program program) {
    Evaluator evaluator = new Evaluator(program, new Meter());
    program.stages().forEach(evaluator::run);
    evaluator.results.meter().end();
    return evaluator.results;
  }

  private void run(Stage stage) {
    if (stage.rowByRow()) {
      RowByRow rows = RowByRow.anew(program, results, stage);
      IntStream.range(0, rows.chunkCount()).forEach(rows::run);
    } else {
      stage.slots().forEach(this::run);
    }
  }

  Results results() {
    return results;
  }

  void run(Slot slot) {
    PlacePlan plan = program.plan(slot);
    if (slot.place() instanceof Column column) {
      results.set(slot, column(plan, results.valueCount(column)));
    } else {
      results.set(slot, plan.value(Frame.atRow(results, 0)));
    }
  }

  private ColumnValues column(PlacePlan plan, int rowCount) {
    Chunk[] chunks = new Chunk[ColumnValues.chunkCount(rowCount)];
    for (int chunk = 0; chunk < chunks.length; chunk++) {
      chunks[chunk] = plan.chunk(results, chunk);
    }
    return new ColumnValues(chunks);
  }
}
