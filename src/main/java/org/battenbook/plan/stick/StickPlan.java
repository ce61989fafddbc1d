package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * Which part comes out of which stick.
 *
 * <p>Proven is the cost alone: no plan of all that is planned costs less. Among the plans of that
 * cost the offcuts that are kept are made longer, the longest before the next, and then the
 * patterns fewer, as far as repacking finds a way; nothing is claimed about those.
 *
 * <p>Sticks come longest first, those of one pattern beside each other. On a stick the longest
 * parts come first, a matched set counting as one. Equal lengths are handed out in the order of the
 * job, parts before sets, so that pieces of one part stay together.
 *
 * @param sticks in the order in which to cut them
 * @param tooLong parts, and whole sets, that no stock can hold; they are not planned
 * @param missing parts and sets for which the stock on hand does not suffice; they are not planned,
 *     and where there are any, nothing is proven
 * @param used what the sticks cost together
 * @param bound a cost below which no plan of all but what is too long can come, checked in whole
 *     numbers
 * @param proven whether no plan costs less
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
