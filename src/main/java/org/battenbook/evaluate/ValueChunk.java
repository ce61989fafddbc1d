package org.battenbook.evaluate;

import java.util.Arrays;
import org.battenbook.value.Value;

/** A chunk of objects: for texts, for faults, and for whatever fits no lane. */
final class ValueChunk implements ColumnValues.Chunk {
  private final Value[] values;

  ValueChunk(Value[] values) {
    this.values = values;
  }

  @Override
  public Value value(int row) {
    return values[row];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ValueChunk chunk && Arrays.equals(values, chunk.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }
}
