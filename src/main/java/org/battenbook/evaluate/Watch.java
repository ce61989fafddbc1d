package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.bind.Spot;
import org.battenbook.book.Table;
import org.battenbook.operation.Operation;
import org.battenbook.value.Value;

/** Watches a formula run, its functions, totals and inherited formulas included. */
interface Watch {
  /** An operation is done. */
  default void applied(Operation operation, List<Value> operands) {}

  /**
   * A value is read.
   *
   * @param isAround whether it lies outside of the row that a total or a selection goes through
   */
  default void read(Spot spot, boolean isAround) {}

  /** A total or a selection begins to go over the rows of a table. */
  default void overRows(Table table) {}

  /** The next row begins. */
  default void rowBegins() {}

  /** That row counts. What is read from here on belongs to it. */
  default void rowCounts() {}

  /** That row is done. */
  default void rowEnds() {}

  /** The formula that a change replaced begins to run. */
  default void inheritedBegins() {}

  /** That formula is done. */
  default void inheritedEnds() {}
}
