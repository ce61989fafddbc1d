package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlannedRows;
import org.battenbook.number.Rational;
import org.battenbook.unit.Dimension;

/** A row for each material: what was proven, and what could not be planned. */
final class TotalRows {
  private final SourceRows parts;
  private final Measure measure;
  private final Dimension dimension;
  private final RowTexts texts;

  /** How large a part is. */
  interface Measure {
    Rational of(int row) throws NotPlannable;
  }

  TotalRows(PlanStatement plan, SourceRows parts, Measure measure, Dimension dimension) {
    this.parts = parts;
    this.measure = measure;
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
  void add(Material material, Remarks remarks, boolean proven, Rational used, Rational bound) {
    boolean isPart = used.signum() > 0 && bound.compareTo(used) < 0;
    Rational share = isPart ? bound.dividedBy(used) : Rational.ONE;
    List<String> cells = new ArrayList<>();
    cells.add(RowTexts.text(material.name()));
    cells.add(RowTexts.text(parts.name(material.parts().get(0))));
    cells.add(RowTexts.yes(proven && remarks.isEmpty()));
    cells.add(share.toString());
    cells.add(Size.text(asked(material), dimension));
    cells.addAll(remarks.cells());
    texts.add(cells);
  }

  /** The row of a material of which nothing is planned. */
  void addNone(Material material, Remarks remarks) {
    add(material, remarks, false, Rational.ZERO, Rational.ZERO);
  }

  /** What all parts of a material come to; those of no known size count nothing. */
  private Rational asked(Material material) {
    Rational all = Rational.ZERO;
    for (int row : material.parts()) {
      try {
        all = all.plus(measure.of(row).times(Rational.of(parts.count(row, "quantity"))));
      } catch (NotPlannable unknown) {
        // The workbook's own total waits for it, too.
      }
    }
    return all;
  }
}
