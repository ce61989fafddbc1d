package org.battenbook.export.file;

import java.util.List;
import java.util.SortedMap;

/**
 * A spreadsheet file, ready to be written.
 *
 * @param names of cells, each with the cell's address and its sheet
 */
public record FileContent(
    String title, List<SheetContent> sheets, SortedMap<String, String> names) {}
