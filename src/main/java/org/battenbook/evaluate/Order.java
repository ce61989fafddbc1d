package org.battenbook.evaluate;

import org.battenbook.value.Value;

/** Which of two values of one kind is larger. */
final class Order {
  private Order() {}

  static int compare(Value a, Value b) {
    if (a instanceof Value.Amount x && b instanceof Value.Amount y) {
      return x.quantity().number().compareTo(y.quantity().number());
    }
    if (a instanceof Value.Day x && b instanceof Value.Day y) {
      return x.date().compareTo(y.date());
    }
    throw new IllegalStateException("no order of " + a + " and " + b);
  }
}
