package org.battenbook.cli;

/** What the command tells the shell when it ends. */
enum ExitStatus {
  /** Done. */
  DONE(0),
  /** Done, and a requirement of the workbook does not hold. */
  REQUIREMENT_FAILS(1),
  /** The command line is wrong, a file it names cannot be used, or an answer not be written. */
  COMMAND_LINE_WRONG(2),
  /** The workbook has faults. */
  WORKBOOK_AT_FAULT(3),
  /** The reader of the answer closed it early, as shells report a program that SIGPIPE ended. */
  READER_GONE(141);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  int code() {
    return code;
  }
}
