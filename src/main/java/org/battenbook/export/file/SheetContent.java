package org.battenbook.export.file;

import java.util.SortedSet;

/**
 * The content of a sheet.
 *
 * @param name a legal name that no other sheet of the file has
 * @param widths the widths of its columns and the heights of its rows
 * @param hidden the columns that are hidden, because only formulas use them
 * @param frozenRows how many rows at the top do not scroll
 * @param columns how many columns, from the first, are printed
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
