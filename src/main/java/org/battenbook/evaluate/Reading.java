package org.battenbook.evaluate;

import org.battenbook.bind.Rows;
import org.battenbook.book.Table;
import org.battenbook.check.Decisions;
import org.battenbook.column.Lookup;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** The values worked out so far, by the number of their place in the program. */
interface Reading {
  Rows rows(Table table);

  Value line(int place);

  Value cell(int place, int row);

  /** The rows that a plan groups, made once a fill. */
  Groups groups(OverRowsPlan plan);

  /** What counts the work, and the long numbers and texts that are made. */
  Meter meter();

  /** What decides each value. */
  Decisions decisions();

  /** What rows say of a column, made once a fill. */
  Written written(PlacePlan column);

  /** Some rows of a column. */
  ColumnValues.Chunk chunk(int place, int chunk);

  /** A column of numbers, ready to be read through rows of its table; absent where it is not. */
  @Nullable Lookup lookup(int place);

  /** The value of an aggregate that no row's own values enter, made once a fill. */
  Value total(AggregatePlan aggregate);

  /**
   * What it hangs on that not all rows of a table are known yet: a count that is at fault or waits.
   * Absent where all are known. What goes over the rows waits for it.
   */
  @Nullable Value missingRows(Table table);
}
