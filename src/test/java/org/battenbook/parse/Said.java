package org.battenbook.parse;

import java.util.stream.Collectors;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;

/** Messages as tables of expectations write them: {@code code at the words; code at the words}. */
final class Said {
  private Said() {}

  static String by(Diagnostics diagnostics) {
    return diagnostics.inOrder().stream().map(Said::one).collect(Collectors.joining("; "));
  }

  private static String one(Diagnostic diagnostic) {
    String words = diagnostic.span().text().replace("\n", " ⏎ ");
    return (diagnostic.code() + " at " + words).strip();
  }
}
