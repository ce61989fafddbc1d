package org.battenbook.evaluate;

import org.battenbook.value.Value;

/** The values of one column, in chunks of {@value #CHUNK} rows; chunks are never written again. */
final class ColumnValues {
  static final int SHIFT = 10;
  static final int CHUNK = 1 << SHIFT;

  private final Chunk[] chunks;

  ColumnValues(Chunk[] chunks) {
    this.chunks = chunks;
  }

  /** Some rows of a column, counted from 0 within the chunk. */
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

  Chunk[] copyOfChunks() {
    return chunks.clone();
  }

  Value value(int row) {
    return chunks[row >> SHIFT].value(row & (CHUNK - 1));
  }
}
