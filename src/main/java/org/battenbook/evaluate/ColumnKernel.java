package org.battenbook.evaluate;

import org.battenbook.column.Lane;
import org.jspecify.annotations.Nullable;

/**
 * One node of a formula that runs on a whole chunk of rows at once: the second back end of a
 * checked formula. Where it has no answer for some row, it gives none at all, and the {@link
 * FormulaNode} runs row by row.
 */
interface ColumnKernel {

  /**
   * The values of the node in a chunk.
   *
   * @return absent where the value of a row waits or is at fault, since no lane holds that
   * @throws ArithmeticException likewise
   */
  @Nullable Lane run(ChunkFrame frame);
}
