package org.battenbook.cutting;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.number.Rational;
import org.battenbook.plan.stick.SawStop;
import org.battenbook.planstore.Request;

/**
 * What a plan is to make of one material: all that was read of the workbook, before anything is
 * planned. Equal orders come to equal rows, unless a plan is stopped.
 *
 * @param material what it is called
 * @param firstPart the first part that is cut from it
 * @param asked what all its parts come to, in the base unit; those of no known size count nothing
 * @param refused what cannot be planned with, and why
 * @param request what is asked of the planner; absent where there is nothing to plan
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

  /** Whether there is anything to tell of the material. */
  boolean hasRow() {
    return request.isPresent() || !refused.isEmpty();
  }

  String called(String label) {
    return called.getOrDefault(label, label);
  }
}
