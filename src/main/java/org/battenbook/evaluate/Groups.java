package org.battenbook.evaluate;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import org.battenbook.syntax.Name;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** The rows of a table grouped by what a {@code where} compares. */
final class Groups {
  private final Matching matching;
  private final Map<Object, Group> byKey = new HashMap<>();
  private @Nullable Value broken;
  private boolean exact = true;
  private boolean ofWords = true;

  /** Groups the rows in one pass. */
  Groups(Matching matching, int rowCount, Reading reading) {
    this.matching = matching;
    Frame inner = Frame.atRow(reading, 0).inner();
    for (int row = 0; row < rowCount && broken == null && exact; row++) {
      inner.row = row;
      Value key = matching.inner().run(inner);
      if (!key.isKnown()) {
        broken = key;
      } else {
        exact = isExact(key);
        ofWords &= !(key instanceof Value.Amount);
        byKey.computeIfAbsent(key(key), k -> new Group()).rows.add(row);
      }
    }
  }

  /** The rows of one key, and their total once it is worked out. */
  static final class Group {
    final RowList rows = new RowList();
    private @Nullable Value total;

    /** The total, worked out when it is first asked for. */
    Value total(Function<RowList, Value> workedOut) {
      Value known = total == null ? workedOut.apply(rows) : total;
      total = known;
      return known;
    }
  }

  /** Whether equal keys are equal objects. Approximate numbers are not. */
  boolean areExact() {
    return exact;
  }

  /** Whether all keys are words, so that no comparison can be too near to tell. */
  boolean areOfWords() {
    return exact && ofWords && broken == null;
  }

  /** The result of the group of the row around. A key that is not known is the result. */
  Value result(Frame around, Function<Group, Value> result) {
    Value key = matching.outer().run(around.inner());
    if (!key.isKnown()) {
      return key;
    }
    return broken == null ? result.apply(byKey.getOrDefault(key(key), new Group())) : broken;
  }

  private static boolean isExact(Value key) {
    return !(key instanceof Value.Amount amount) || amount.quantity().number().isExact();
  }

  /** Texts are equal when their keys are. */
  private static Object key(Value value) {
    return value instanceof Value.Text text ? Name.key(text.text()) : value;
  }
}
