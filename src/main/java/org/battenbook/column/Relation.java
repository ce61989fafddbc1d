package org.battenbook.column;

/** How two numbers may compare. */
public enum Relation {
  LESS,
  AT_MOST,
  EQUAL,
  UNEQUAL,
  AT_LEAST,
  GREATER
}
