package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.evaluate.ColumnValues.Chunk;
import org.battenbook.value.Value;

/**
 * Columns of one table that read each other's row above: all of them in one row, then in the next.
 * A chunk can be read while its rows are being written, as the later ones look at the earlier.
 */
final class RowByRow {
  private final Results results;
  private final List<PlacePlan> plans = new ArrayList<>();
  private final List<Chunk[]> columns = new ArrayList<>();
  private final int rowCount;

  /** Begins with columns of which nothing is known. */
  static RowByRow empty(Program program, Results results, Stage stage) {
    RowByRow rows = new RowByRow(program, results, stage);
    stage.slots().forEach(slot -> rows.open(slot, new Chunk[rows.chunkCount()]));
    return rows;
  }

  /** Begins with the columns as they came out before an edit. */
  static RowByRow over(Program program, Results results, Stage stage, Results before) {
    RowByRow rows = new RowByRow(program, results, stage);
    stage
        .slots()
        .forEach(s -> rows.open(s, before.column(s.number()).firstChunks(rows.chunkCount())));
    return rows;
  }

  private RowByRow(Program program, Results results, Stage stage) {
    this.results = results;
    this.rowCount = results.valueCount(stage.slots().get(0).place());
    stage.slots().forEach(slot -> plans.add(program.plan(slot)));
  }

  private void open(Slot slot, Chunk[] chunks) {
    columns.add(chunks);
    results.set(slot, new ColumnValues(chunks));
  }

  int chunkCount() {
    return ColumnValues.chunkCount(rowCount);
  }

  /** A chunk of the stage's column at an index, as it stands. */
  Chunk chunk(int column, int chunk) {
    return columns.get(column)[chunk];
  }

  /** Works out a chunk of rows in every column. */
  void run(int chunk) {
    int first = chunk << ColumnValues.SHIFT;
    int rows = ColumnValues.rowsIn(chunk, rowCount);
    List<Value[]> open = new ArrayList<>();
    for (Chunk[] column : columns) {
      Value[] values = new Value[rows];
      column[chunk] = new ValueChunk(values);
      open.add(values);
    }
    Frame frame = Frame.atRow(results, first);
    for (int row = 0; row < rows; row++) {
      frame.row = first + row;
      for (int c = 0; c < plans.size(); c++) {
        open.get(c)[row] = plans.get(c).value(frame);
      }
    }
    for (int c = 0; c < plans.size(); c++) {
      columns.get(c)[chunk] = plans.get(c).pack(open.get(c), results);
    }
  }
}
