package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.syntax.Name;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** What an aggregate comes to for every value that its rows are grouped by. */
final class Groups {
  private final AggregatePlan aggregate;
  private final boolean decides;
  private final Map<Object, Aggregation> byKey = new HashMap<>();

  /** The rows of each group, where more than its key decides. */
  private final Map<Object, List<Integer>> rowsByKey = new HashMap<>();

  private @Nullable Value broken;
  private boolean exact = true;
  private boolean ofWords = true;

  /** Goes through the rows once. */
  Groups(AggregatePlan aggregate, AggregatePlan.Matching matching, Reading reading) {
    this(aggregate, matching, reading, matching.decides());
  }

  private Groups(
      AggregatePlan aggregate, AggregatePlan.Matching matching, Reading reading, boolean decides) {
    this.aggregate = aggregate;
    this.decides = decides;
    Frame inner = Frame.atRow(reading, 0).inner();
    for (int row = 0; row < aggregate.rowCount && broken == null && exact; row++) {
      inner.row = row;
      Value key = matching.inner().run(inner);
      if (!key.isKnown()) {
        broken = key;
      } else {
        exact = isExact(key);
        ofWords &= !(key instanceof Value.Amount);
        add(key(key), inner);
      }
    }
  }

  /** The rows of each group, to be gone through one by one for whoever watches. */
  static Groups ofRows(AggregatePlan aggregate, AggregatePlan.Matching matching, Reading reading) {
    return new Groups(aggregate, matching, reading, false);
  }

  private void add(Object key, Frame inner) {
    if (decides) {
      byKey.computeIfAbsent(key, k -> aggregate.fresh(inner.reading)).add(aggregate.taken(inner));
    } else {
      rowsByKey.computeIfAbsent(key, k -> new ArrayList<>()).add(inner.row);
    }
  }

  /** Whether equal keys are equal objects; of approximate numbers they are not. */
  boolean areExact() {
    return exact;
  }

  /** Whether the key of a row is not known. */
  boolean isBroken() {
    return broken != null;
  }

  /** What the rows of a key come to, seen from a row around them. */
  Value result(Value key, Frame frame) {
    if (broken != null) {
      return broken;
    }
    if (!decides) {
      return aggregate.over(rowsByKey.getOrDefault(key(key), List.of()), frame);
    }
    Aggregation found = byKey.get(key(key));
    return found == null ? aggregate.fresh(frame.reading).result() : found.result();
  }

  /** Whether comparing two keys is comparing words: nothing about it can be near. */
  boolean areOfWords() {
    return exact && ofWords;
  }

  private static boolean isExact(Value key) {
    return !(key instanceof Value.Amount amount) || amount.quantity().number().isExact();
  }

  /** Texts are equal when their keys are. */
  private static Object key(Value value) {
    return value instanceof Value.Text text ? Name.key(text.text()) : value;
  }
}
