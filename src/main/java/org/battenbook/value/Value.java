package org.battenbook.value;

import java.time.LocalDate;
import org.battenbook.unit.Quantity;

/** What a formula gives. Values are compared by {@code equals}: the same value stops a wave. */
public sealed interface Value {

  /** A number of some dimension. */
  record Amount(Quantity quantity) implements Value {}

  record Text(String text) implements Value {}

  record YesNo(boolean yes) implements Value {}

  record Day(LocalDate date) implements Value {}

  /**
   * A row of a table.
   *
   * @param table the table's key
   * @param row counted from 0
   * @param name what the row is called, the value of its key column as written
   */
  record Row(String table, int row, String name) implements Value {}

  /**
   * A value that cannot be: a division by zero, the root of a negative number, the largest of
   * nothing.
   *
   * @param code a stable name, {@code division-by-zero}
   * @param message what is wrong and what to do, one sentence
   */
  record Fault(String code, String message) implements Value {}

  /**
   * A value that cannot be worked out yet.
   *
   * @param on what it waits on: the place, in words, that is not filled in or is at fault
   * @param atFault whether that place is at fault, rather than still to be filled in
   */
  record Waiting(String on, boolean atFault) implements Value {}

  /** Whether it is a value that others can be worked out from. */
  default boolean isKnown() {
    return !(this instanceof Fault) && !(this instanceof Waiting);
  }
}
