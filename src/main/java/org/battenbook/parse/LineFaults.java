package org.battenbook.parse;

import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;

/** The faults of one logical line: passed on to the run's messages, and remembered. */
final class LineFaults {
  private final Diagnostics diagnostics;
  private boolean any;

  LineFaults(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  void fault(String code, Span span, String message, String repair) {
    any = true;
    diagnostics.fault(code, span, message, repair);
  }

  /** A fault that leaves nothing to read: the text is larger than it may be. */
  void refuse(String code, Span span, String message, String repair) {
    any = true;
    diagnostics.refuse(code, span, message, repair);
  }

  /** Whether the line is at fault, so that it is not to be read further. */
  boolean any() {
    return any;
  }
}
