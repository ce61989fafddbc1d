package org.battenbook.cli;

/** One line that says how far a long job is, where a person looks on. */
final class ProgressLine {
  /** How many rows are written in about a second; fewer are not worth a line. */
  private static final int ROWS = 2_000;

  private final Terminal terminal;
  private int width;

  ProgressLine(Terminal terminal) {
    this.terminal = terminal;
  }

  /** So many rows are written, of all. */
  void rows(int written, int all) {
    if (terminal.interactive() && written % ROWS == 0) {
      show("%d of %d rows written".formatted(written, all));
    }
  }

  /** What is going on now. */
  void words(String words) {
    show(words);
  }

  /** Leaves the line empty. */
  void clear() {
    if (width > 0) {
      show("");
      terminal.err().print("\r");
    }
  }

  private void show(String words) {
    terminal.err().print("\r" + words + " ".repeat(Math.max(0, width - words.length())));
    terminal.err().flush();
    width = words.length();
  }
}
