package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.plan.Refusal;

/**
 * Pieces that are cut from one stick next to each other and in order, so that grain and color
 * continue from one to the next.
 *
 * @param label the name of the set
 * @param inOrder the pieces from left to right, at least one; each has a count of 1
 * @param count the number of sets, at least 0
 */
public record MatchedSet(String label, List<Part> inOrder, int count) implements Demand {
  public MatchedSet {
    inOrder = List.copyOf(inOrder);
    Refusal.unless(!inOrder.isEmpty(), "set '" + label + "' has no parts; name its parts");
    for (Part part : inOrder) {
      Refusal.unless(
          part.count() == 1,
          "part '" + part.label() + "' of set '" + label + "' must be named once for each cut");
    }
    Refusal.unless(
        count >= 0, "the quantity of set '" + label + "' must be at least 0; it is " + count);
  }

  @Override
  public MatchedSet times(int otherCount) {
    return new MatchedSet(label, inOrder, otherCount);
  }
}
