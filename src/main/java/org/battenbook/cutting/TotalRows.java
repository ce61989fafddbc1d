package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlannedRows;
import org.battenbook.number.Rational;
import org.battenbook.unit.Dimension;

/** A row for each material: what was proven, and what could not be planned. */
final class TotalRows {
  private final Dimension dimension;
  private final RowTexts texts;

  /**
   * Begins the rows of a plan.
   *
   * @param dimension that of what its parts come to
   */
  TotalRows(PlanStatement plan, Dimension dimension) {
    this.dimension = dimension;
    this.texts = new RowTexts(plan.table("totals"));
  }

  PlannedRows rows() {
    return texts.rows();
  }

  /**
   * A material's row.
   *
   * @param used the cost of all that is taken
   * @param bound what no plan costs less than
   */
  void add(Order<?, ?> order, Remarks remarks, boolean proven, Rational used, Rational bound) {
    boolean isPart = used.signum() > 0 && bound.compareTo(used) < 0;
    Rational share = isPart ? bound.dividedBy(used) : Rational.ONE;
    List<String> cells = new ArrayList<>();
    cells.add(RowTexts.text(order.material()));
    cells.add(RowTexts.text(order.firstPart()));
    cells.add(RowTexts.yes(proven && remarks.isEmpty()));
    cells.add(share.toString());
    cells.add(Size.text(order.asked(), dimension));
    cells.addAll(remarks.cells());
    texts.add(cells);
  }

  /** The row of a material of which nothing is planned. */
  void addNone(Order<?, ?> order, Remarks remarks) {
    add(order, remarks, false, Rational.ZERO, Rational.ZERO);
  }
}
