package org.battenbook.export.formula;

/**
 * Thrown if no spreadsheet formula gives the value of a formula. The value is written in its place,
 * with the reason.
 */
public final class Inexpressible extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * An exception with its reason.
   *
   * @param reason continues the text "a value, not a formula:"
   */
  public Inexpressible(String reason) {
    super(reason, null, false, false);
  }

  /** The value is so near to a limit that doubles could fall on the other side of it. */
  public static Inexpressible tooNear() {
    return new Inexpressible("it lies too near to a limit for a spreadsheet's numbers to tell");
  }

  public String reason() {
    return String.valueOf(getMessage());
  }

  /** The comment on the cell of the value. */
  public String words() {
    return "a value, not a formula: " + reason();
  }
}
