package org.battenbook.source;

/** Why something cannot be done, and what to do instead, for people. */
public abstract class Explained extends Exception {
  private static final long serialVersionUID = 1;

  private final String code;
  private final String repair;

  /**
   * Says why.
   *
   * @param code a stable name, {@code no-such-file}
   * @param message what is wrong
   * @param repair what to do, or empty
   */
  protected Explained(String code, String message, String repair) {
    super(message);
    this.code = code;
    this.repair = repair;
  }

  public final String code() {
    return code;
  }

  public final String message() {
    return String.valueOf(getMessage());
  }

  public final String repair() {
    return repair;
  }
}
