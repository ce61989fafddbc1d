package org.battenbook.parse;

import org.battenbook.source.SourceText;

/** Refuses a line that no person wrote, before anything reads it through. */
final class LongLines {
  /** Sums of 4 000 terms fit; a line without end does not. */
  static final int LONGEST = 100_000;

  private static final int SHOWN = 20;

  private LongLines() {}

  /** Whether a line was too long, with a fault. */
  static boolean refuse(SourceText source, int start, int end, LineFaults faults) {
    if (end - start <= LONGEST) {
      return false;
    }
    faults.fault(
        "line-too-long",
        source.span(start, start + SHOWN),
        "this line has %s characters, and %s are the most".formatted(end - start, LONGEST),
        "give parts of it lines of their own");
    return true;
  }
}
