package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.bind.Spot;
import org.battenbook.book.Table;
import org.battenbook.operation.Operation;
import org.battenbook.value.Value;

/** Looks on while a formula runs, in its functions, totals and inherited formulas too. */
interface Watch {
  /** An operation is done. */
  default void applied(Operation operation, List<Value> operands) {}

  /**
   * A value is read.
   *
   * @param isAround whether it is none of the row that a total or a selection goes through
   */
  default void read(Spot spot, boolean isAround) {}

  /** A total or a selection begins to go over the rows of a table. */
  default void overRows(Table table) {}

  /** It comes to its next row. */
  default void rowBegins() {}

  /** That row counts; what is read from here on is taken of it. */
  default void rowCounts() {}

  /** It is done with that row. */
  default void rowEnds() {}

  /** The formula that a change replaced begins to run. */
  default void inheritedBegins() {}

  /** It is done. */
  default void inheritedEnds() {}
}
