package org.battenbook.value;

import org.battenbook.unit.Dimension;

/** What kind of value a formula gives, known before anything is worked out. */
public sealed interface Kind {

  /** A number of a dimension; counts and ratios have none. */
  record Measured(Dimension dimension) implements Kind {}

  /** A row of the table with this key. */
  record RowOf(String table) implements Kind {}

  /** The kinds without parts. */
  enum Plain implements Kind {
    TEXT,
    YES_NO,
    DATE,
    /** At fault elsewhere: agrees with every kind, so that one fault gives one message. */
    UNKNOWN
  }

  Kind TEXT = Plain.TEXT;
  Kind YES_NO = Plain.YES_NO;
  Kind DATE = Plain.DATE;
  Kind UNKNOWN = Plain.UNKNOWN;
  Kind NUMBER = new Measured(Dimension.NONE);

  /**
   * In words: {@code a length}, {@code a plain number}, {@code a text}, {@code a row of mouldings}.
   */
  default String words() {
    if (this instanceof Measured measured) {
      return measured.dimension().words();
    }
    if (this instanceof RowOf rowOf) {
      return "a row of " + rowOf.table();
    }
    return switch ((Plain) this) {
      case TEXT -> "a text";
      case YES_NO -> "yes or no";
      case DATE -> "a date";
      case UNKNOWN -> "unknown";
    };
  }
}
