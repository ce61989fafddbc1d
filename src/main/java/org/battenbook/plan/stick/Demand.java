package org.battenbook.plan.stick;

import java.util.List;

/** What is asked for: pieces of one length, or sets of pieces that belong together. */
public sealed interface Demand permits Part, MatchedSet {
  String label();

  /** How many pieces, or how many sets. */
  int count();

  /** What one of them is cut into, from left to right. */
  List<Part> inOrder();

  /** The same, so many times. */
  Demand times(int otherCount);

  /** All that is cut, each part as often as it is in all of them. */
  default List<Part> cuts() {
    return inOrder().stream().map(part -> part.times(count())).toList();
  }
}
