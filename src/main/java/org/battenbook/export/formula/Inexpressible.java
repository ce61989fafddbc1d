package org.battenbook.export.formula;

/** Why a formula cannot be said in a spreadsheet; its value is written instead, with the reason. */
public final class Inexpressible extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Gives the reason.
   *
   * @param reason goes on after "a value, not a formula:"
   */
  public Inexpressible(String reason) {
    super(reason, null, false, false);
  }

  /** A value so near to a limit that doubles could come out on the other side of it. */
  public static Inexpressible tooNear() {
    return new Inexpressible("it lies too near to a limit for a spreadsheet's numbers to tell");
  }

  public String reason() {
    return String.valueOf(getMessage());
  }

  /** What is said beside the value. */
  public String words() {
    return "a value, not a formula: " + reason();
  }
}
