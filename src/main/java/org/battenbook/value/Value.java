package org.battenbook.value;

import java.time.LocalDate;
import org.battenbook.unit.Quantity;

/**
 * The result of a formula. Values are compared by {@code equals}: an edit stops where a value comes
 * out the same.
 */
public sealed interface Value {
  <R> R accept(ValueVisitor<R> visitor);

  /** A number of some dimension. */
  record Amount(Quantity quantity) implements Value {
    @Override
    public <R> R accept(ValueVisitor<R> visitor) {
      return visitor.amount(this);
    }
  }

  record Text(String text) implements Value {
    @Override
    public <R> R accept(ValueVisitor<R> visitor) {
      return visitor.text(this);
    }
  }

  record YesNo(boolean yes) implements Value {
    @Override
    public <R> R accept(ValueVisitor<R> visitor) {
      return visitor.yesNo(this);
    }
  }

  record Day(LocalDate date) implements Value {
    @Override
    public <R> R accept(ValueVisitor<R> visitor) {
      return visitor.day(this);
    }
  }

  /**
   * A row of a table.
   *
   * @param table the table's key
   * @param row counted from 0
   * @param name the name of the row: the value of its key column, as written
   */
  record Row(String table, int row, String name) implements Value {
    @Override
    public <R> R accept(ValueVisitor<R> visitor) {
      return visitor.row(this);
    }
  }

  /**
   * A value that does not exist: a division by zero, the root of a negative number, the largest of
   * nothing.
   *
   * @param code a stable name, {@code division-by-zero}
   * @param message what is wrong and what to do, one sentence
   */
  record Fault(String code, String message) implements Value {
    @Override
    public <R> R accept(ValueVisitor<R> visitor) {
      return visitor.fault(this);
    }
  }

  /**
   * A value that cannot be calculated yet.
   *
   * @param on the place, in words, that is not filled in or is at fault
   * @param atFault whether that place is at fault, rather than not filled in
   */
  record Waiting(String on, boolean atFault) implements Value {
    @Override
    public <R> R accept(ValueVisitor<R> visitor) {
      return visitor.waiting(this);
    }
  }

  /** Whether other values can be calculated from it. */
  default boolean isKnown() {
    return !(this instanceof Fault) && !(this instanceof Waiting);
  }

  /** Whether it is an error, or cannot be calculated because of one. */
  default boolean isError() {
    return this instanceof Fault || (this instanceof Waiting waiting && waiting.atFault());
  }
}
