package org.battenbook.bind;

import org.battenbook.book.Table;

/** The rows of every table of a book. */
@FunctionalInterface
public interface BookRows {
  Rows rows(Table table);
}
