package org.battenbook.book;

import org.battenbook.source.Span;
import org.battenbook.syntax.KindExpression;

/**
 * The role of a column in a plan, such as the length of its parts, or of a setting of the plan. In
 * {@code length = long point}, {@code length} is a role.
 */
public enum PlanRole {
  LENGTH("length", Says.LENGTH),
  ACROSS("across", Says.LENGTH),
  DOWN("down", Says.LENGTH),
  QUANTITY("quantity", Says.COUNT),
  MATERIAL("material", Says.NAME),
  LABEL("label", Says.TEXT),
  KERF("kerf", Says.LENGTH),
  NESTS_BY("nests by", Says.LENGTH),
  MATCHED_SET("matched set", Says.NAME),
  SETS("sets", Says.COUNT),
  MAY_TURN("may turn", Says.YES_NO),
  PRICE("price", Says.PRICE),
  ON_HAND("on hand", Says.COUNT),
  ANY_NUMBER("any number", Says.YES_NO),
  OFFCUT("offcut", Says.YES_NO),
  LEAST_OFFCUT("least offcut", Says.LENGTH),
  STARTS_AT("starts at", Says.LENGTH),
  FIRST_TRIM("first trim", Says.LENGTH),
  LAST_TRIM("last trim", Says.LENGTH),
  TRIM("trim", Says.LENGTH),
  BOUGHT("bought", Says.COUNT),
  FROM_RACK("from rack", Says.COUNT),
  PLANNING_TIME("planning time", Says.TIME),
  STOPS_WITHIN("stops within", Says.LENGTH),
  STAGES("stages", Says.COUNT);

  private final String words;
  private final Says says;

  PlanRole(String words, Says says) {
    this.words = words;
    this.says = says;
  }

  /** The kind of value that a role needs. */
  public enum Says {
    LENGTH("a length"),
    COUNT("a count"),
    YES_NO("yes or no"),
    TEXT("a text"),
    /** A text or a row of a table that identifies something, such as a material. */
    NAME("a text or a row of a table"),
    /** Any quantity for the plan to minimize. */
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

  /** Its name in a workbook, which is also its key. */
  public String words() {
    return words;
  }

  public Says says() {
    return says;
  }

  /** The declared kind of a setting with this role. */
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
