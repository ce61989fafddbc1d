package org.battenbook.cutting;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.number.Rational;
import org.battenbook.plan.stick.SawStop;
import org.battenbook.planstore.Request;

/**
 * What a plan asks for of one material: everything that was read from the workbook, before
 * planning. Equal orders give equal rows, unless a plan is stopped.
 *
 * @param material what it is called
 * @param firstPart the first part that is cut from it
 * @param asked the total size of its parts in the base unit, without those of unknown size
 * @param refused what cannot be planned with, and why
 * @param request the request to the planner; absent if there is nothing to plan
 * @param stops those of the saw, the longest first; none for sheets
 * @param called what people call the parts, by their labels
 */
record MaterialOrder<J, P>(
    String material,
    String firstPart,
    Rational asked,
    List<String> refused,
    Optional<Request<J, P>> request,
    List<SawStop> stops,
    Map<String, String> called) {
  MaterialOrder {
    refused = List.copyOf(refused);
    stops = List.copyOf(stops);
    called = Map.copyOf(called);
  }

  /** Whether the material needs a row in the totals. */
  boolean hasRow() {
    return request.isPresent() || !refused.isEmpty();
  }

  String called(String label) {
    return called.getOrDefault(label, label);
  }
}
