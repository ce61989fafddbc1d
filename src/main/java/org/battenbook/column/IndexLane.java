package org.battenbook.column;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A whole number for every row: the row of a table it names, or the code of a text. */
public final class IndexLane implements Lane {
  /** Names no row. */
  public static final int NONE = -1;

  private final int[] indices;

  /** Takes the array over: it must not be changed afterwards. */
  public IndexLane(int[] indices) {
    this.indices = indices;
  }

  @Override
  public int rows() {
    return indices.length;
  }

  public int at(int row) {
    return indices[row];
  }

  /** The rows whose index is the same in both. */
  public BitLane equalTo(IndexLane that) {
    return BitLane.of(indices.length, row -> indices[row] == that.indices[row]);
  }

  /** The rows that have this index. */
  public BitLane equalTo(int index) {
    return BitLane.of(indices.length, row -> indices[row] == index);
  }

  /** From this lane where the choice says yes, from the other where it says no. */
  public IndexLane orElse(BitLane choice, IndexLane other) {
    int[] chosen = new int[indices.length];
    for (int row = 0; row < chosen.length; row++) {
      chosen[row] = choice.at(row) ? indices[row] : other.indices[row];
    }
    return new IndexLane(chosen);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof IndexLane that && Arrays.equals(indices, that.indices);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(indices);
  }
}
