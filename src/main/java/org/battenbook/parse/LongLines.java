package org.battenbook.parse;

import org.battenbook.bound.Bound;
import org.battenbook.source.SourceText;

/** Refuses a line that no person wrote, before anything reads it through. */
final class LongLines {
  private static final int SHOWN = 20;

  private LongLines() {}

  /** Whether a line was too long, with a fault. */
  static boolean refuse(SourceText source, int start, int end, LineFaults faults) {
    if (!Bound.LINE.isPassedBy(end - start)) {
      return false;
    }
    faults.fault(
        "line-too-long",
        source.span(start, start + SHOWN),
        "this line has more than %s".formatted(Bound.LINE.shown()),
        "write parts of it on their own lines");
    return true;
  }
}
