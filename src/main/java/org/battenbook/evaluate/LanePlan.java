package org.battenbook.evaluate;

import org.battenbook.column.Lane;
import org.jspecify.annotations.Nullable;

/**
 * One node of a formula, ready to be worked out for a whole chunk of rows at once: the second back
 * end of a checked formula. Where it cannot answer for every row, it does not answer at all, and
 * the {@link Plan} of the same node goes row by row.
 */
interface LanePlan {

  /**
   * The node's values in a chunk.
   *
   * @return absent where a row has no value that a lane can hold: it waits, or is at fault
   * @throws ArithmeticException likewise
   */
  @Nullable Lane run(ChunkFrame frame);
}
