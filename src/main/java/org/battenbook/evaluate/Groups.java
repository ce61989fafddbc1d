package org.battenbook.evaluate;

import java.util.HashMap;
import java.util.Map;
import org.battenbook.syntax.Name;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** The results of an aggregate for every value that its rows are grouped by. */
final class Groups {
  private final AggregatePlan aggregate;
  private final Map<Object, Aggregation> byKey = new HashMap<>();
  private @Nullable Value broken;
  private boolean exact = true;

  /** Goes through the rows once. */
  Groups(AggregatePlan aggregate, AggregatePlan.Matching matching, Reading reading) {
    this.aggregate = aggregate;
    Frame inner = Frame.atRow(reading, 0).inner();
    for (int row = 0; row < aggregate.rowCount && broken == null && exact; row++) {
      inner.row = row;
      Value key = matching.inner().run(inner);
      if (!key.isKnown()) {
        broken = key;
      } else {
        exact = isExact(key);
        byKey.computeIfAbsent(key(key), k -> fresh()).add(aggregate.taken(inner));
      }
    }
  }

  /** Whether equal keys are equal objects; of approximate numbers they are not. */
  boolean areExact() {
    return exact;
  }

  Value result(Value key) {
    if (broken != null) {
      return broken;
    }
    Aggregation found = byKey.get(key(key));
    return found == null ? fresh().result() : found.result();
  }

  private Aggregation fresh() {
    return aggregate.fresh();
  }

  private static boolean isExact(Value key) {
    return !(key instanceof Value.Amount amount) || amount.quantity().number().isExact();
  }

  /** Texts are equal when their keys are. */
  private static Object key(Value value) {
    return value instanceof Value.Text text ? Name.key(text.text()) : value;
  }
}
