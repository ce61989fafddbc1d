package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.column.Lane;

/**
 * What a kernel reads while it runs.
 *
 * @param chunk the chunk at hand, counted from 0
 * @param rows how many rows it has
 * @param arguments those of the function whose formula runs
 */
record ChunkFrame(Reading reading, int chunk, int rows, List<Lane> arguments) {

  static ChunkFrame of(Reading reading, int chunk, int rowCount) {
    return new ChunkFrame(reading, chunk, ColumnValues.rowsIn(chunk, rowCount), List.of());
  }

  /** The row of the whole table with which the chunk begins. */
  int firstRow() {
    return chunk << ColumnValues.SHIFT;
  }

  ChunkFrame calling(List<Lane> values) {
    return new ChunkFrame(reading, chunk, rows, values);
  }
}
