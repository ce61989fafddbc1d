package org.battenbook.evaluate;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Numbers of rows, in order. */
final class RowList {
  static final RowList NONE = new RowList();

  /** Absent where they are all rows from the first on. */
  private int @Nullable [] rows;

  private int size;

  private RowList(int @Nullable [] rows, int size) {
    this.rows = rows;
    this.size = size;
  }

  /** No rows yet. */
  RowList() {
    this(new int[0], 0);
  }

  /** So many rows from the first on. */
  static RowList first(int count) {
    return new RowList(null, count);
  }

  /** Adds one; not to be asked of {@link #first}. */
  void add(int row) {
    int[] held = Objects.requireNonNull(rows);
    if (size == held.length) {
      held = Arrays.copyOf(held, Math.max(4, 2 * size));
      rows = held;
    }
    held[size++] = row;
  }

  int size() {
    return size;
  }

  int row(int index) {
    return rows == null ? index : rows[index];
  }
}
