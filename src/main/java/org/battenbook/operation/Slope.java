package org.battenbook.operation;

/**
 * By how much the result of an operation changes for a small change of one operand: the partial
 * derivative by that operand, as far as a formula of errors can say it.
 */
public enum Slope {
  /** Not at all: the result is a decision, such as a rounding or a comparison. */
  NONE,
  /** By as much. */
  ONE,
  /** By as much, the other way. */
  MINUS_ONE,
  /** By as much times the other operand, while that one is exact. */
  OTHER,
  /** By as much divided by the other operand, while that one is exact. */
  ONE_OVER_OTHER,
  /** By no factor that a formula of errors can say. */
  CURVED;

  /** Whether it holds only while the other operand is exact. */
  public boolean needsExactOther() {
    return this == OTHER || this == ONE_OVER_OTHER;
  }
}
