package org.battenbook.evaluate;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.battenbook.book.Table;
import org.jspecify.annotations.Nullable;

/** What an edit changed: chunks of places (a line has one chunk) and rows of tables. */
final class Changes {
  private final @Nullable BitSet[] bySlot;

  /** The first row that is another, by table. */
  private final Map<Table, Integer> moved = new HashMap<>();

  Changes(int slotCount) {
    bySlot = new @Nullable BitSet[slotCount];
  }

  void add(Slot slot, int chunk) {
    BitSet chunks = bySlot[slot.number()];
    if (chunks == null) {
      chunks = new BitSet();
      bySlot[slot.number()] = chunks;
    }
    chunks.set(chunk);
  }

  /** The changed chunks of a place; empty where all its values are as before. */
  BitSet of(Slot slot) {
    BitSet chunks = bySlot[slot.number()];
    return chunks == null ? new BitSet() : chunks;
  }

  /**
   * Notes that a table has other rows.
   *
   * @param firstRow the first row that differs. The count of rows, where they are the same and only
   *     whether they are all known has changed
   */
  void move(Table table, int firstRow) {
    moved.put(table, firstRow);
  }

  /** Whether a place has a value for each row of a table with other rows. */
  boolean areMoved(Slot slot) {
    return !moved.isEmpty() && moved.containsKey(slot.place().table());
  }

  Set<Table> movedTables() {
    return moved.keySet();
  }

  /** The first chunk of a table with a row that is another; past all chunks where none is. */
  int firstMovedChunk(@Nullable Table table) {
    Integer row = moved.get(table);
    return row == null ? Integer.MAX_VALUE : row >> ColumnValues.SHIFT;
  }

  /**
   * Whether a place has other values, or values in other rows. A table that shrinks may leave no
   * chunk that changed.
   */
  boolean isChanged(Slot slot) {
    return bySlot[slot.number()] != null || areMoved(slot);
  }
}
