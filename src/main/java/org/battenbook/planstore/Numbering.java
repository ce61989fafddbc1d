package org.battenbook.planstore;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The numbers of the things of a job, from 0 on; equal things have the number of the first. */
final class Numbering<T> {
  private final Map<T, Integer> numbers = new HashMap<>();

  Numbering(List<? extends T> things) {
    for (int number = 0; number < things.size(); number++) {
      numbers.putIfAbsent(things.get(number), number);
    }
  }

  int of(T thing) {
    Integer number = numbers.get(thing);
    if (number == null) {
      throw new IllegalStateException("a plan holds what its job does not: " + thing);
    }
    return number;
  }
}
