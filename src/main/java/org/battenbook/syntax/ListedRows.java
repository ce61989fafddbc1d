package org.battenbook.syntax;

import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * {@code rows of prices from "supplier.csv"}: rows that stand in a list beside the workbook.
 *
 * @param page the page of a spreadsheet file; absent where its first is meant
 */
public record ListedRows(Name table, Quoted file, @Nullable Quoted page, Span span)
    implements PageItem {}
