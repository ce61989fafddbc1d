package org.battenbook.evaluate;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.book.PlanStatement;
import org.battenbook.number.Rational;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Works out the rows that come from the plans of a workbook. It may be asked by many threads. */
@FunctionalInterface
public interface RowPlanner {
  /**
   * What comes of a plan.
   *
   * @param tables by the key of each table its rows, for each a cell for each column that the plan
   *     fills, absent where it fills none; a row of another table is given as its name, a text
   * @param hours the most time that planning it was allowed
   */
  record Planned(Map<String, List<List<@Nullable Value>>> tables, Rational hours) {}

  /**
   * Plans as far as what the plan needs is known. Equal jobs give equal rows.
   *
   * @param hours the most time that the plans before it were allowed together
   * @return empty where it is left to be planned later
   */
  Optional<Planned> plan(PlanStatement plan, Results results, Rational hours);

  /** The same planner, which leaves each plan to be planned later that it does not know yet. */
  default RowPlanner leavingUnknown() {
    return (plan, results, hours) -> Optional.empty();
  }

  /** A planner for reading one workbook, with all the plans that this one knows. */
  default RowPlanner ofOneReading() {
    return this;
  }
}
