package org.battenbook.planstore;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** How many of each thing are left to be accounted for. Equal things are one thing. */
final class Counts<T> {
  private static final int UNLIMITED = Integer.MAX_VALUE;

  private final Map<T, Integer> left = new HashMap<>();

  /** Adds some of a thing; where it is absent, any number. */
  void add(T thing, OptionalInt count) {
    int more = count.orElse(UNLIMITED);
    left.merge(thing, more, (a, b) -> (int) Math.min((long) a + b, UNLIMITED));
  }

  /**
   * Takes some of a thing.
   *
   * @throws Damaged if there are fewer left
   */
  void take(T thing, int count) throws Damaged {
    int before = Optional.ofNullable(left.get(thing)).orElse(0);
    Damaged.unless(count <= before, "more is taken than there is");
    if (before != UNLIMITED) {
      left.put(thing, before - count);
    }
  }

  boolean areAllTaken() {
    return left.values().stream().allMatch(count -> count == 0);
  }

  static <S> Counts<S> of(List<S> things, Function<S, OptionalInt> count) {
    Counts<S> counts = new Counts<>();
    things.forEach(thing -> counts.add(thing, count.apply(thing)));
    return counts;
  }
}
