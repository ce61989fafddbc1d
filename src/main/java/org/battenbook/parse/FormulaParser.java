package org.battenbook.parse;

import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.jspecify.annotations.Nullable;

public final class FormulaParser {
  public static @Nullable Formula parse(SourceText t, Span s, Diagnostics d) {
    return null;
  }
}
