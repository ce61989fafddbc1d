package org.battenbook.evaluate;

import org.battenbook.check.Cells;
import org.battenbook.column.BitLane;
import org.battenbook.column.Lane;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** The cells of a column in lanes. Each chunk is made when it is first asked for. */
final class Written {
  private final Cells cells;
  private final int rowCount;
  private final LaneChunk.Reader reader;
  private final @Nullable Part[] parts;

  /**
   * The cells of one chunk.
   *
   * @param rows the rows that have a cell
   * @param values the values of these cells, and any value in other rows; absent where no lane fits
   * @param whole the chunk itself, where every row has a cell; else absent
   * @param hasFormulas whether a cell holds a formula of its own
   */
  record Part(
      BitLane rows,
      @Nullable Lane values,
      ColumnValues.@Nullable Chunk whole,
      boolean hasFormulas) {}

  Written(Cells cells, int rowCount, LaneChunk.Reader reader) {
    this.cells = cells;
    this.rowCount = rowCount;
    this.reader = reader;
    this.parts = new @Nullable Part[ColumnValues.chunkCount(rowCount)];
  }

  Part part(int chunk) {
    Part part = parts[chunk];
    if (part == null) {
      part = make(chunk << ColumnValues.SHIFT, ColumnValues.rowsIn(chunk, rowCount));
      parts[chunk] = part;
    }
    return part;
  }

  private Part make(int first, int rows) {
    boolean hasFormulas =
        cells.formulas().keySet().stream().anyMatch(r -> r >= first && r < first + rows);
    @Nullable Value[] values = new @Nullable Value[rows];
    Value some = null;
    for (int i = 0; i < rows; i++) {
      values[i] = cells.value(first + i);
      some = values[i] == null ? some : values[i];
    }
    BitLane written = BitLane.of(rows, row -> values[row] != null);
    if (some == null || hasFormulas) {
      return new Part(written, null, null, hasFormulas);
    }
    Value[] filled = new Value[rows];
    for (int i = 0; i < rows; i++) {
      Value value = values[i];
      filled[i] = value == null ? some : value;
    }
    return new Part(
        written,
        LaneChunk.lane(filled),
        written.isAll() ? LaneChunk.pack(filled, reader) : null,
        false);
  }
}
