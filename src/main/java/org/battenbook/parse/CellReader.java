package org.battenbook.parse;

import org.battenbook.source.Diagnostics;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.RowCells;
import org.jspecify.annotations.Nullable;

public final class CellReader {
  public static @Nullable Formula read(RowCells c, int r, int k, Diagnostics d) {
    return null;
  }
}
