package org.battenbook.export;

import java.util.List;
import java.util.SortedSet;
import java.util.function.Consumer;

/**
 * A sheet, ready to be written.
 *
 * @param name legal and unique
 * @param widths how wide its columns and how high its rows are
 * @param hidden columns that serve formulas only
 * @param frozenRows how many rows stay in sight when the rest is scrolled
 * @param columns how many columns, from the first, there are to be seen
 * @param end the first row below everything
 */
record Sheet(
    String name,
    Rows rows,
    Widths widths,
    SortedSet<Integer> hidden,
    int frozenRows,
    int columns,
    int end) {

  /** The cells of a sheet; made anew each time they are asked for, since there may be millions. */
  interface Rows {
    /** Gives the rows from the top down, each with its cells from left to right. */
    void each(Consumer<List<SheetCell>> row);
  }
}
