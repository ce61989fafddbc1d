package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * A cutting plan for sticks.
 *
 * <p>The proof covers the cost only. At that cost, the planner prefers longer offcuts to keep, the
 * longest before the next, then fewer patterns. It does not prove that these are best.
 *
 * <p>Sticks are sorted by length, the longest first, and grouped by pattern. On a stick the longest
 * parts come first; a matched set counts as one part. Parts of equal length are placed in the order
 * of the job, parts before sets, so that pieces of one part stay together.
 *
 * @param sticks in the order in which to cut them
 * @param tooLong parts and whole sets that fit no stock; they are not planned
 * @param missing parts and sets for which there is not enough stock; they are not planned, and
 *     nothing is proven if there are any
 * @param used the total cost of the sticks
 * @param bound a lower bound on the cost of any plan for all parts and sets except those too long,
 *     calculated in whole numbers
 * @param proven whether every plan for these parts and sets costs at least as much
 */
public record StickPlan(
    List<Stick> sticks,
    List<Demand> tooLong,
    List<Demand> missing,
    Rational used,
    Rational bound,
    boolean proven) {
  public StickPlan {
    sticks = List.copyOf(sticks);
    tooLong = List.copyOf(tooLong);
    missing = List.copyOf(missing);
  }
}
