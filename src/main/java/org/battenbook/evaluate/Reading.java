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

  /** The rows that a node groups, grouped once in a fill. */
  Groups groups(OverRowsNode node);

  /** Counts steps, long numbers and texts. */
  Meter meter();

  /** What decides each value. */
  Decisions decisions();

  /** The cells of a column, made once in a fill. */
  Written written(CompiledPlace column);

  /** Some rows of a column. */
  ColumnValues.Chunk chunk(int place, int chunk);

  /** A column of numbers, ready to be read through rows of its table; absent where it is not. */
  @Nullable Lookup lookup(int place);

  /** The value of an aggregate that does not depend on the row around it, made once in a fill. */
  Value total(AggregateNode aggregate);

  /**
   * Why not all rows of a table are known yet: a count that waits or is at fault, or a plan that is
   * still to be made. Absent where all are known. Whatever goes over the rows waits for it.
   */
  @Nullable Value missingRows(Table table);
}
