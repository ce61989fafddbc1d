package org.battenbook.evaluate;

import org.battenbook.value.Value;

/** The values worked out so far, by the number of their place in the program. */
interface Reading {
  Value line(int place);

  Value cell(int place, int row);

  /** The values of an aggregate grouped by what its {@code where} compares, made once a fill. */
  Groups groups(AggregatePlan aggregate);
}
