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

  String reason() {
    return String.valueOf(getMessage());
  }
}
