package org.battenbook.column;

/** The values of one chunk of a column, one for each of its rows. Immutable. */
public sealed interface Lane permits NumberLane, IndexLane, BitLane {

  /** The rows of a full chunk: temporaries of a formula stay in the cache. */
  int CHUNK = 1024;

  /** How many rows it has; all lanes of a kernel have as many. */
  int rows();
}
