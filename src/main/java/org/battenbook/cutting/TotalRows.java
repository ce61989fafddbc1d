package org.battenbook.cutting;

import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlanTable;
import org.battenbook.number.Rational;
import org.battenbook.unit.Dimension;

/**
 * Builds the rows of a plan's {@code totals} table, one for each material: whether the plan is
 * proven optimal, its lower bound, and the parts that could not be planned.
 */
final class TotalRows {
  private final Dimension dimension;
  private final TableRows rows;

  /**
   * Begins without rows.
   *
   * @param dimension the dimension of the total size of the parts: length or area
   */
  TotalRows(PlanStatement plan, Dimension dimension) {
    this.dimension = dimension;
    this.rows = new TableRows(plan.table(PlanTable.TOTALS));
  }

  TableRows rows() {
    return rows;
  }

  /**
   * Adds the row of a material.
   *
   * @param remarks the parts that could not be planned
   * @param used the cost of the sticks or sheets used
   * @param bound the lower bound on the cost of any plan
   */
  void add(
      MaterialOrder<?, ?> order, Remarks remarks, boolean proven, Rational used, Rational bound) {
    boolean hasGap = used.signum() > 0 && bound.compareTo(used) < 0;
    Rational boundShare = hasGap ? bound.dividedBy(used) : Rational.ONE;
    rows.add(
        TableRows.text(order.material()),
        TableRows.text(order.firstPart()),
        TableRows.yes(proven && remarks.isEmpty()),
        TableRows.amount(boundShare, Dimension.NONE),
        TableRows.amount(order.asked(), dimension),
        TableRows.text(remarks.wordsOfTooLarge()),
        TableRows.text(remarks.wordsOfMissing()),
        TableRows.text(remarks.wordsOfRefused()));
  }

  /** Adds the row of a material for which nothing is planned. */
  void addNone(MaterialOrder<?, ?> order, Remarks remarks) {
    add(order, remarks, false, Rational.ZERO, Rational.ZERO);
  }
}
