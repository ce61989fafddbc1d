package org.battenbook.cli;

import java.util.List;
import org.battenbook.export.SpreadsheetExport.Fixed;
import org.battenbook.source.DisplayText;

/** Lists the values that a spreadsheet holds without a formula: it does not recalculate them. */
final class FixedReport {
  private static final int MOST = 12;

  private FixedReport() {}

  static void print(List<Fixed> fixed, Terminal terminal) {
    if (fixed.isEmpty()) {
      return;
    }
    terminal
        .err()
        .println("written as values, which the spreadsheet does not recalculate, are these:");
    fixed.stream()
        .limit(MOST)
        .map(value -> "  " + DisplayText.safe(value.place()) + ": " + value.reason())
        .forEach(terminal.err()::println);
    if (fixed.size() > MOST) {
      terminal.err().println("  and %d more".formatted(fixed.size() - MOST));
    }
  }
}
