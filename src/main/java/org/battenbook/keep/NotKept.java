package org.battenbook.keep;

/** Why nothing of a job can be written into the stock, and what to do; no file has changed. */
public final class NotKept extends Exception {
  private static final long serialVersionUID = 1;

  NotKept(String message) {
    super(message);
  }

  public String message() {
    return String.valueOf(getMessage());
  }
}
