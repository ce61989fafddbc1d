package org.battenbook.syntax;

/** Where a path of names begins. */
public enum Root {
  /** At the names in scope. */
  HERE,
  /** {@code this}: at the outer row, from inside an aggregate. */
  THIS,
  /** {@code above}: at the row before, in the same table. */
  ABOVE
}
