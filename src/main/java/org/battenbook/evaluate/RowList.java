package org.battenbook.evaluate;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Numbers of rows, in order. */
final class RowList {
  static final RowList NONE = new RowList();

  /** Absent where the list is all rows from the first on. */
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

  /** The first rows, so many of them. */
  static RowList first(int count) {
    return new RowList(null, count);
  }

  /** Adds a row. Not to be called on a list made by {@link #first}. */
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
