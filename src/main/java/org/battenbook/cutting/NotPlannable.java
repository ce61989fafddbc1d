package org.battenbook.cutting;

/** Why a row cannot be planned, in words that complete a sentence about it. */
final class NotPlannable extends Exception {
  private static final long serialVersionUID = 1;

  NotPlannable(String reason) {
    super(reason);
  }

  String reason() {
    return String.valueOf(getMessage());
  }
}
