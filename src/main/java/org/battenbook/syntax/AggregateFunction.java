package org.battenbook.syntax;

/** The ways to take one value out of many rows. */
public enum AggregateFunction {
  SUM("sum of"),
  LARGEST("largest of"),
  SMALLEST("smallest of"),
  AVERAGE("average of"),
  COUNT("count of");

  private final String words;

  AggregateFunction(String words) {
    this.words = words;
  }

  /** As it is written. */
  public String words() {
    return words;
  }
}
