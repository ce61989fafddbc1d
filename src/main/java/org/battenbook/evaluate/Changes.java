package org.battenbook.evaluate;

import java.util.BitSet;
import org.jspecify.annotations.Nullable;

/** Which chunks of each place came out otherwise than before; a line has one. */
final class Changes {
  private final @Nullable BitSet[] bySlot;

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

  /** The changed chunks of a place; empty where it came out as before. */
  BitSet of(Slot slot) {
    BitSet chunks = bySlot[slot.number()];
    return chunks == null ? new BitSet() : chunks;
  }
}
