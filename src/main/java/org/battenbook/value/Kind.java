package org.battenbook.value;

import org.battenbook.unit.Dimension;

/**
 * What kind of value a formula gives, known before anything is worked out. No default methods: then
 * the kinds' classes are initialized without this one, which names them.
 */
@SuppressWarnings("ClassInitializationDeadlock")
public sealed interface Kind {

  /** A number of a dimension; counts and ratios have none. */
  record Measured(Dimension dimension) implements Kind {
    @Override
    public String words() {
      return dimension.words();
    }
  }

  /** A row of the table with this key. */
  record RowOf(String table) implements Kind {
    @Override
    public String words() {
      return "a row of " + table;
    }
  }

  /** The kinds without parts. */
  enum Plain implements Kind {
    TEXT("a text"),
    YES_NO("yes or no"),
    DATE("a date"),
    /** At fault elsewhere: agrees with every kind, so that one fault gives one message. */
    UNKNOWN("unknown");

    private final String words;

    Plain(String words) {
      this.words = words;
    }

    @Override
    public String words() {
      return words;
    }
  }

  Kind TEXT = Plain.TEXT;
  Kind YES_NO = Plain.YES_NO;
  Kind DATE = Plain.DATE;
  Kind UNKNOWN = Plain.UNKNOWN;
  Kind NUMBER = new Measured(Dimension.NONE);

  /**
   * In words: {@code a length}, {@code a plain number}, {@code a text}, {@code a row of mouldings}.
   */
  String words();
}
