package org.battenbook.evaluate;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.book.PlanStatement;
import org.battenbook.number.Rational;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Makes the plans of a workbook. Many threads may call it. */
@FunctionalInterface
public interface RowPlanner {
  /**
   * The result of a plan.
   *
   * @param tables the rows of each table, by the key of the table. A row has a cell for each column
   *     that the plan fills, absent where it is left empty. A row of another table is given as its
   *     name
   * @param hours the most time that the plan was allowed
   */
  record Planned(Map<String, List<List<@Nullable Value>>> tables, Rational hours) {}

  /**
   * Makes a plan from what is known of its parts and stock. Equal jobs give equal rows.
   *
   * @param hours the time that the plans before it were allowed together, at most
   * @return empty where it is left to be made later
   */
  Optional<Planned> plan(PlanStatement plan, Results results, Rational hours);

  /** The same planner, which leaves every plan that it does not know yet to be made later. */
  default RowPlanner leavingUnknown() {
    return (plan, results, hours) -> Optional.empty();
  }

  /** A planner for one reading of a workbook. It knows all plans that this one knows. */
  default RowPlanner ofOneReading() {
    return this;
  }
}
