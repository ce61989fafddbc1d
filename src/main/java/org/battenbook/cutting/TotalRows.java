package org.battenbook.cutting;

import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlanTable;
import org.battenbook.number.Rational;
import org.battenbook.unit.Dimension;

/** A row for each material: what was proven, and what could not be planned. */
final class TotalRows {
  private final Dimension dimension;
  private final TableRows rows;

  /**
   * Begins the rows of a plan.
   *
   * @param dimension that of what its parts come to
   */
  TotalRows(PlanStatement plan, Dimension dimension) {
    this.dimension = dimension;
    this.rows = new TableRows(plan.table(PlanTable.TOTALS));
  }

  TableRows rows() {
    return rows;
  }

  /**
   * A material's row.
   *
   * @param used the cost of all that is taken
   * @param bound what no plan costs less than
   */
  void add(
      MaterialOrder<?, ?> order, Remarks remarks, boolean proven, Rational used, Rational bound) {
    boolean isPart = used.signum() > 0 && bound.compareTo(used) < 0;
    Rational share = isPart ? bound.dividedBy(used) : Rational.ONE;
    rows.add(
        TableRows.text(order.material()),
        TableRows.text(order.firstPart()),
        TableRows.yes(proven && remarks.isEmpty()),
        TableRows.amount(share, Dimension.NONE),
        TableRows.amount(order.asked(), dimension),
        TableRows.text(remarks.wordsOfTooLarge()),
        TableRows.text(remarks.wordsOfMissing()),
        TableRows.text(remarks.wordsOfRefused()));
  }

  /** The row of a material of which nothing is planned. */
  void addNone(MaterialOrder<?, ?> order, Remarks remarks) {
    add(order, remarks, false, Rational.ZERO, Rational.ZERO);
  }
}
