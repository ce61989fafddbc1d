package org.battenbook.plan.sheet;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * A cutting plan for sheets.
 *
 * <p>The proof covers the cost only. Among the plans found at that cost, the planner prefers fewer
 * and larger offcuts, then fewer different settings for cuts. It does not prove that these are
 * best.
 *
 * @param sheets the sheets used, grouped by stock
 * @param tooLarge parts that fit no stock; they are not planned
 * @param missing parts for which there is not enough stock, or for which no room was found in it;
 *     they are not planned, and nothing is proven if there are any
 * @param used the total cost of the sheets
 * @param bound a lower bound on the cost of any plan for all parts except those too large,
 *     calculated in whole numbers
 * @param proven whether every plan for these parts costs at least as much
 */
public record SheetPlan(
    List<Sheet> sheets,
    List<SheetPart> tooLarge,
    List<SheetPart> missing,
    Rational used,
    Rational bound,
    boolean proven) {
  public SheetPlan {
    sheets = List.copyOf(sheets);
    tooLarge = List.copyOf(tooLarge);
    missing = List.copyOf(missing);
  }
}
