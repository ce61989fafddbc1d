package org.battenbook.export.file;

import java.util.SortedSet;

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
public record SheetContent(
    String name,
    SheetRows rows,
    Widths widths,
    SortedSet<Integer> hidden,
    int frozenRows,
    int columns,
    int end) {}
