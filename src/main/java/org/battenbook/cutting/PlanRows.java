package org.battenbook.cutting;

import java.util.List;

/** The rows that a plan makes. */
interface PlanRows<J, P> {
  TotalRows totals();

  /** Those of all its tables, in their order. */
  List<TableRows> tables();

  /**
   * Adds the rows of one material.
   *
   * @param remarks those made before, and from now on those on its plan
   * @throws NotPlannable if they cannot be written; then none are added
   */
  void add(MaterialOrder<J, P> order, P planned, Remarks remarks) throws NotPlannable;
}
