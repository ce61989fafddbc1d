package org.battenbook.evaluate;

import java.util.Map;
import org.battenbook.check.CheckedPlace;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * How the values of one place are worked out.
 *
 * @param formula the plan of the formula that holds; absent for a given place without one
 * @param cellFormulas the plans of formulas that stand in single cells, by row
 */
record PlacePlan(
    Slot slot, CheckedPlace checked, @Nullable Plan formula, Map<Integer, Plan> cellFormulas) {

  /** The value in one row (0 for a line): the row's own, or the formula's. */
  Value value(Frame frame) {
    Plan own = cellFormulas.get(frame.row);
    if (own != null) {
      return own.run(frame);
    }
    Value written = checked.cells().value(frame.row);
    return written == null ? byFormula(frame) : written;
  }

  private Value byFormula(Frame frame) {
    return formula == null ? new Value.Waiting(slot.words(frame.row), false) : formula.run(frame);
  }
}
