package org.battenbook.column;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;

/**
 * The rows of a table's column, in chunks of {@link Lane#CHUNK}; the last may be shorter.
 * Immutable: an edit shares all chunks but its own.
 *
 * @param chunks from the first rows to the last; empty for a table without rows
 * @param <L> what the rows hold
 */
public record Column<L extends Lane>(List<L> chunks) {
  public Column {
    chunks = List.copyOf(chunks);
  }

  /** Numbers in one tick throughout, as far as they fit it. */
  public static Column<NumberLane> of(List<? extends Real> numbers) {
    Real[] all = numbers.toArray(Real[]::new);
    Rational tick = LongLane.tickOf(all);
    List<NumberLane> chunks = new ArrayList<>();
    for (int from = 0; from < all.length; from += Lane.CHUNK) {
      Real[] rows = Arrays.copyOfRange(all, from, Math.min(all.length, from + Lane.CHUNK));
      LongLane longs = tick == null ? null : LongLane.inTicks(rows, tick);
      chunks.add(longs == null ? NumberLane.of(rows) : longs);
    }
    return new Column<>(chunks);
  }

  /** How many chunks so many rows take. */
  public static int chunksFor(int rows) {
    return (rows + Lane.CHUNK - 1) / Lane.CHUNK;
  }

  public int rows() {
    return chunks.isEmpty()
        ? 0
        : (chunks.size() - 1) * Lane.CHUNK + chunks.get(chunks.size() - 1).rows();
  }

  /** The chunk that holds a row, counted from 0; the row is {@code row % CHUNK} in it. */
  public L chunkOf(int row) {
    return chunks.get(row / Lane.CHUNK);
  }

  /** With another chunk in the place of one. */
  public Column<L> with(int chunk, L other) {
    List<L> changed = new ArrayList<>(chunks);
    changed.set(chunk, other);
    return new Column<>(changed);
  }
}
