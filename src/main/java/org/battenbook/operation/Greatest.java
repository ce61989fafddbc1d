package org.battenbook.operation;

/** {@code max(a, b, …)}: the largest. */
final class Greatest extends Extreme {
  Greatest() {
    super("max", 1);
  }
}
