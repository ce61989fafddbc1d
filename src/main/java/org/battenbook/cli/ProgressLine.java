package org.battenbook.cli;

import org.battenbook.source.DisplayText;

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
      terminal.err().overLine("");
    }
  }

  private void show(String words) {
    int now = DisplayText.width(words);
    terminal.err().overLine(words + " ".repeat(Math.max(0, width - now)));
    width = now;
  }
}
