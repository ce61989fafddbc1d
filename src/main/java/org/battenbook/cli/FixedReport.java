package org.battenbook.cli;

import java.util.List;
import org.battenbook.export.SpreadsheetExport.Fixed;

/** Lists the values that a spreadsheet holds without a formula: it does not recalculate them. */
final class FixedReport {
  private static final int MOST = 12;

  private FixedReport() {}

  static void print(List<Fixed> fixed, Output out) {
    if (fixed.isEmpty()) {
      return;
    }
    out.line("These were written as fixed values; the spreadsheet will not recalculate them:");
    fixed.stream()
        .limit(MOST)
        .forEach(value -> out.line("  " + value.place() + ": " + value.reason()));
    if (fixed.size() > MOST) {
      out.line("  and %d more".formatted(fixed.size() - MOST));
    }
  }
}
