package org.battenbook.book;

import org.battenbook.source.Span;
import org.battenbook.syntax.KindExpression;

/**
 * Something that a plan is told by a column, or by a line of its own.
 *
 * @param says of what kind it is
 * @param needed whether nothing can be planned without it
 */
public record PlanRole(String name, Says says, boolean needed) {

  /** Of what kind it is. */
  public enum Says {
    LENGTH("a length"),
    COUNT("a count"),
    YES_NO("yes or no"),
    TEXT("a text"),
    /** A text or a row that tells alike from other. */
    NAME("a text or a row of a table"),
    /** Any quantity that is to be kept small. */
    PRICE("a quantity"),
    TIME("a time");

    private final String words;

    Says(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  static PlanRole needed(String name, Says says) {
    return new PlanRole(name, says, true);
  }

  static PlanRole optional(String name, Says says) {
    return new PlanRole(name, says, false);
  }

  PlanRole asOptional() {
    return optional(name, says);
  }

  /** The kind of a line that says it. */
  KindExpression kind(Span span) {
    String word =
        switch (says) {
          case TIME -> "time";
          case COUNT -> "count";
          default -> "length";
        };
    return KindExpression.named(word, span);
  }
}
