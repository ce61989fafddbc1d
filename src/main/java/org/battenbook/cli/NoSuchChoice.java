package org.battenbook.cli;

/** Words on the command line that name nothing in the workbook; the message says what is near. */
final class NoSuchChoice extends RuntimeException {
  private static final long serialVersionUID = 1;

  NoSuchChoice(String message) {
    super(message);
  }
}
