package org.battenbook.bind;

import org.battenbook.book.Table;

/** Looks up the rows of a table. */
@FunctionalInterface
public interface BookRows {
  Rows rows(Table table);
}
