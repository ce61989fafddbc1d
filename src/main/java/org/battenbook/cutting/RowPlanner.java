package org.battenbook.cutting;

import java.util.List;
import java.util.Map;
import org.battenbook.book.PlannedRows;
import org.battenbook.evaluate.Results;

/** Works out the rows that come from the plans of a workbook. It may be asked by many threads. */
@FunctionalInterface
public interface RowPlanner {
  /**
   * The rows that come from each plan, by the plan's key, as far as what the plan needs is known.
   * Equal jobs give equal rows.
   */
  Map<String, List<PlannedRows>> plan(Results results);

  /** A planner for reading one workbook, with all the plans that this one knows. */
  default RowPlanner ofOneReading() {
    return this;
  }
}
