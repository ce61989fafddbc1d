package org.battenbook.plan.stick;

import java.util.List;

/** One line of what to cut: pieces of one length, or matched sets of pieces. */
public sealed interface Demand permits Part, MatchedSet {
  String label();

  /** The number of pieces or sets. */
  int count();

  /** The parts of one piece or set, from left to right; each stands for one piece. */
  List<Part> inOrder();

  /** The same demand with another count. */
  Demand times(int otherCount);

  /** The parts of all pieces or sets, each with its total count. */
  default List<Part> cuts() {
    return inOrder().stream().map(part -> part.times(count())).toList();
  }
}
