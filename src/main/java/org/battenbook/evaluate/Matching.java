package org.battenbook.evaluate;

import org.battenbook.bind.BookRows;

/**
 * {@code where inner = outer}, alone or with more conditions. Rows are grouped by the inner side
 * once, instead of going through all of them for each row around.
 *
 * @param inner the side that reads the row gone through
 * @param outer the side that reads only the row around
 * @param decides whether nothing else reads the row around, so that each group has one result
 */
record Matching(FormulaNode inner, FormulaNode outer, boolean decides) {
  /** The steps of grouping the rows once, and of finding a group each time. */
  Steps steps(int count, BookRows rows) {
    return inner.steps(rows).times(count).allOnce().plus(outer.steps(rows));
  }
}
