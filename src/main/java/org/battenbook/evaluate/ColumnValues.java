package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.battenbook.column.Column;
import org.battenbook.column.Lookup;
import org.battenbook.column.NumberLane;
import org.battenbook.value.Value;

/** The values of one column, in chunks of {@value #CHUNK} rows; a chunk never changes. */
final class ColumnValues {
  static final int SHIFT = 10;
  static final int CHUNK = 1 << SHIFT;

  private final Chunk[] chunks;

  ColumnValues(Chunk[] chunks) {
    this.chunks = chunks;
  }

  /** Some rows of a column. Rows are counted from 0 within the chunk. */
  interface Chunk {
    Value value(int row);
  }

  static int chunkCount(int rowCount) {
    return (rowCount + CHUNK - 1) >> SHIFT;
  }

  static int rowsIn(int chunk, int rowCount) {
    return Math.min(CHUNK, rowCount - (chunk << SHIFT));
  }

  Chunk chunk(int index) {
    return chunks[index];
  }

  /** A copy of its first chunks; those past its end are absent. */
  Chunk[] firstChunks(int count) {
    return Arrays.copyOf(chunks, count);
  }

  Value value(int row) {
    return chunks[row >> SHIFT].value(row & (CHUNK - 1));
  }

  /** The column, ready to be read through rows; empty where a chunk is no lane of numbers. */
  Optional<Lookup> lookup() {
    List<NumberLane> lanes = new ArrayList<>();
    for (Chunk chunk : chunks) {
      if (!(chunk instanceof LaneChunk held && held.lane() instanceof NumberLane numbers)) {
        return Optional.empty();
      }
      lanes.add(numbers);
    }
    return Optional.of(new Lookup(new Column<>(lanes)));
  }
}
