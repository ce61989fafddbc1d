package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.plan.Refusal;

/**
 * Pieces that come out of one stick side by side and in their order, so that grain and colour run
 * on from one to the next.
 *
 * @param label what a set is called
 * @param inOrder from left to right, each named once for each cut, at least one
 * @param count how many sets, not negative
 */
public record MatchedSet(String label, List<Part> inOrder, int count) implements Demand {
  public MatchedSet {
    inOrder = List.copyOf(inOrder);
    Refusal.unless(
        !inOrder.isEmpty(), "set '" + label + "' has no parts: name those that belong together");
    for (Part part : inOrder) {
      Refusal.unless(
          part.count() == 1,
          "part '" + part.label() + "' of set '" + label + "' must be named once for each cut");
    }
    Refusal.unless(
        count >= 0,
        "set '" + label + "' is asked for " + count + " times: say how many, or 0 for none");
  }

  @Override
  public MatchedSet times(int otherCount) {
    return new MatchedSet(label, inOrder, otherCount);
  }
}
