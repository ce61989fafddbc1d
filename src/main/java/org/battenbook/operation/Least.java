package org.battenbook.operation;

/** {@code min(a, b, …)}: the smallest. */
final class Least extends Extreme {
  Least() {
    super("min", -1);
  }
}
