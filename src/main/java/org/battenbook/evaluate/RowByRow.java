package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.evaluate.ColumnValues.Chunk;
import org.battenbook.value.Value;

/**
 * Columns of one table that read each other's row above. They run together: all of them in one row,
 * then in the next. A chunk can be read while it is being written, since later rows read earlier
 * ones.
 */
final class RowByRow {
  private final Results results;
  private final List<CompiledPlace> places = new ArrayList<>();
  private final List<Chunk[]> columns = new ArrayList<>();
  private final int rowCount;

  /** Starts with empty columns. */
  static RowByRow empty(Program program, Results results, Stage stage) {
    RowByRow rows = new RowByRow(program, results, stage);
    stage.slots().forEach(slot -> rows.open(slot, new Chunk[rows.chunkCount()]));
    return rows;
  }

  /** Starts with the columns as they were before an edit. */
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
    stage.slots().forEach(slot -> places.add(program.compiled(slot)));
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
      for (int c = 0; c < places.size(); c++) {
        open.get(c)[row] = places.get(c).value(frame);
      }
    }
    for (int c = 0; c < places.size(); c++) {
      columns.get(c)[chunk] = places.get(c).pack(open.get(c), results);
    }
  }
}
