package org.battenbook.export.file;

import java.util.List;
import java.util.SortedMap;

/**
 * The content of a spreadsheet file.
 *
 * @param names the defined names, each with the absolute address of its cell
 */
public record FileContent(
    String title, List<SheetContent> sheets, SortedMap<String, String> names) {}
