package org.battenbook.workbook;

/** Words that name no value of a workbook, or more than one; the message says which were near. */
public final class UnknownPlace extends IllegalArgumentException {
  UnknownPlace(String message) {
    super(message);
  }

  /** The message for the person who wrote the words. */
  public String message() {
    return String.valueOf(getMessage());
  }
}
