package org.battenbook.plan.sheet;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * Which part comes out of which sheet.
 *
 * <p>Proven is the cost alone: no plan of all that is planned costs less. Among the plans of that
 * cost that were met, the one with the fewer and larger offcuts was taken, then the one with fewer
 * different cuts; nothing is claimed about those.
 *
 * @param sheets those of one stock beside each other
 * @param tooLarge parts that no stock can hold; they are not planned
 * @param missing parts for which the stock on hand does not suffice, or for which no room was found
 *     in it; they are not planned, and where there are any, nothing is proven
 * @param used what the sheets cost together
 * @param bound a cost below which no plan of all parts but those too large can come, checked in
 *     whole numbers
 * @param proven whether no plan costs less
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
