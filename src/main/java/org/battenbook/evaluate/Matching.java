package org.battenbook.evaluate;

/**
 * {@code where inner = outer}, or that and more: rows are grouped by the inner side once, not all
 * gone through for each row around.
 *
 * @param inner reads the row that is gone through
 * @param outer reads the row around alone
 * @param decides whether nothing else reads the row around, so that each group has one result
 */
record Matching(Plan inner, Plan outer, boolean decides) {
  /** What it takes to group so many rows, once, and to find a group each time. */
  Steps steps(int rows) {
    return inner.steps().times(rows).allOnce().plus(outer.steps());
  }
}
