package org.battenbook.export;

import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;

/**
 * A sheet, ready to be written.
 *
 * @param name legal and unique
 * @param cells by rows, in each from left to right
 * @param widths of columns, in characters
 * @param heights of rows that are higher than one line, in lines
 * @param hidden columns that serve formulas only
 * @param frozenRows how many rows stay in sight when the rest is scrolled
 * @param frozenColumns how many columns stay in sight
 */
record Sheet(
    String name,
    List<SheetCell> cells,
    SortedMap<Integer, Integer> widths,
    SortedMap<Integer, Integer> heights,
    SortedSet<Integer> hidden,
    int frozenRows,
    int frozenColumns) {}
