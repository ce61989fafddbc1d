package org.battenbook.edit;

/** Why an edit cannot be made in the text of a workbook, and what to do instead. */
public final class EditRefused extends Exception {
  private static final long serialVersionUID = 1;

  private final String code;
  private final String repair;

  /**
   * A refusal.
   *
   * @param code a stable name, {@code edit-of-planned-row}
   * @param message what is wrong
   * @param repair what to do, or empty
   */
  EditRefused(String code, String message, String repair) {
    super(message);
    this.code = code;
    this.repair = repair;
  }

  public String code() {
    return code;
  }

  public String message() {
    return String.valueOf(getMessage());
  }

  public String repair() {
    return repair;
  }
}
