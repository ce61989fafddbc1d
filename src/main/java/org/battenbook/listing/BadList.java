package org.battenbook.listing;

/** Why a list cannot be read, for people. */
public final class BadList extends Exception {
  private static final long serialVersionUID = 1;

  private final String code;
  private final String repair;

  BadList(String code, String message, String repair) {
    super(message);
    this.code = code;
    this.repair = repair;
  }

  /** A stable name, {@code list-too-long}. */
  public String code() {
    return code;
  }

  /** What is wrong, with the file's name and the row. */
  public String message() {
    return String.valueOf(getMessage());
  }

  /** What to do, or empty. */
  public String repair() {
    return repair;
  }
}
