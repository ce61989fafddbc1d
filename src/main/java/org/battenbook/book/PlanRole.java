package org.battenbook.book;

import org.battenbook.source.Span;
import org.battenbook.syntax.KindExpression;

/**
 * The role of a column in a plan, such as the length of its parts, or of a setting of the plan. In
 * {@code length = long point}, {@code length} is a role.
 */
public enum PlanRole {
  LENGTH("length", ValueKind.LENGTH),
  WIDTH("width", ValueKind.LENGTH),
  HEIGHT("height", ValueKind.LENGTH),
  QUANTITY("quantity", ValueKind.COUNT),
  MATERIAL("material", ValueKind.NAME),
  LABEL("label", ValueKind.TEXT),
  KERF("kerf", ValueKind.LENGTH),
  NESTS_BY("nests by", ValueKind.LENGTH),
  MATCHED_SET("matched set", ValueKind.NAME),
  SETS("sets", ValueKind.COUNT),
  CAN_ROTATE("can rotate", ValueKind.YES_NO),
  PRICE("price", ValueKind.PRICE),
  ON_HAND("on hand", ValueKind.COUNT),
  CAN_BUY_MORE("can buy more", ValueKind.YES_NO),
  OFFCUT("offcut", ValueKind.YES_NO),
  MINIMUM_OFFCUT("minimum offcut", ValueKind.LENGTH),
  STARTS_AT("starts at", ValueKind.LENGTH),
  LEFT_TRIM("left trim", ValueKind.LENGTH),
  RIGHT_TRIM("right trim", ValueKind.LENGTH),
  TRIM("trim", ValueKind.LENGTH),
  BOUGHT("bought", ValueKind.COUNT),
  FROM_STOCK("from stock", ValueKind.COUNT),
  PLANNING_TIME("planning time", ValueKind.TIME),
  STOP_TOLERANCE("stop tolerance", ValueKind.LENGTH),
  STAGES("stages", ValueKind.COUNT);

  private final String words;
  private final ValueKind valueKind;

  PlanRole(String words, ValueKind valueKind) {
    this.words = words;
    this.valueKind = valueKind;
  }

  /** The kind of value that a role needs. */
  public enum ValueKind {
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

    ValueKind(String words) {
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

  public ValueKind valueKind() {
    return valueKind;
  }

  /** The declared kind of a setting with this role. */
  KindExpression kind(Span span) {
    String word =
        switch (valueKind) {
          case TIME -> "time";
          case COUNT -> "count";
          default -> "length";
        };
    return KindExpression.named(word, span);
  }
}
