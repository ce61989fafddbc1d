package org.battenbook.evaluate;

import org.battenbook.book.Column;
import org.battenbook.evaluate.ColumnValues.Chunk;
import org.battenbook.value.Value;

/** Works out every place of a program, stage by stage. */
public final class Evaluator {
  private final Program program;
  private final Results results;

  Evaluator(Program program) {
    this.program = program;
    this.results = new Results(program);
  }

  /** Works everything out anew. */
  public static Results fill(Program program) {
    Evaluator evaluator = new Evaluator(program);
    program.stages().forEach(evaluator::run);
    return evaluator.results;
  }

  private void run(Stage stage) {
    if (stage.rowByRow()) {
      rowByRow(stage);
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
      results.set(slot, column(plan, column.table().rowCount()));
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

  /** Columns that read each other's row above: all of them in one row, then in the next. */
  void rowByRow(Stage stage) {
    int rowCount = Program.rowCount(stage.slots().get(0).place());
    Value[][][] values = new Value[stage.slots().size()][][];
    for (int s = 0; s < values.length; s++) {
      values[s] = openColumn(stage.slots().get(s), rowCount);
    }
    Frame frame = Frame.atRow(results, 0);
    for (int row = 0; row < rowCount; row++) {
      frame.row = row;
      for (int s = 0; s < values.length; s++) {
        values[s][row >> ColumnValues.SHIFT][row & (ColumnValues.CHUNK - 1)] =
            program.plan(stage.slots().get(s)).value(frame);
      }
    }
  }

  /** Sets a column whose rows are still to be written, so that later rows read the earlier. */
  private Value[][] openColumn(Slot slot, int rowCount) {
    Value[][] rows = new Value[ColumnValues.chunkCount(rowCount)][];
    Chunk[] chunks = new Chunk[rows.length];
    for (int chunk = 0; chunk < rows.length; chunk++) {
      rows[chunk] = new Value[ColumnValues.rowsIn(chunk, rowCount)];
      chunks[chunk] = new ValueChunk(rows[chunk]);
    }
    results.set(slot, new ColumnValues(chunks));
    return rows;
  }
}
