package org.battenbook.export;

/** Why a formula cannot be said in a spreadsheet; its value is written instead, with the reason. */
final class Inexpressible extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Gives the reason.
   *
   * @param reason goes on after "a value, not a formula:"
   */
  Inexpressible(String reason) {
    super(reason, null, false, false);
  }

  /** A value so near to a limit that doubles could come out on the other side of it. */
  static Inexpressible tooNear() {
    return new Inexpressible("it lies too near to a limit for a spreadsheet's numbers to tell");
  }

  String reason() {
    return String.valueOf(getMessage());
  }

  /** What is said beside the value. */
  String words() {
    return "a value, not a formula: " + reason();
  }
}
