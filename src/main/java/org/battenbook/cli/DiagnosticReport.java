package org.battenbook.cli;

import java.util.List;
import java.util.function.Function;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.DiagnosticPrinter;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;

/** Prints what is wrong with a workbook, each message with its place. */
final class DiagnosticReport {
  /** The most messages printed. A person repairs these first; the rest is counted. */
  private static final int MOST_PRINTED = 50;

  private final Output out;
  private final DiagnosticPrinter printer = new DiagnosticPrinter();

  DiagnosticReport(Output out) {
    this.out = out;
  }

  void print(List<Diagnostic> diagnostics) {
    print(diagnostics, diagnostic -> diagnostic);
  }

  /** Prints the first ones. Only those are put into words, since that takes time. */
  private <T> void print(List<T> all, Function<T, Diagnostic> words) {
    all.stream()
        .limit(MOST_PRINTED)
        .map(one -> printer.lines(words.apply(one)))
        .forEach(out::lines);
    int left = all.size() - MOST_PRINTED;
    if (left > 0) {
      out.line("and " + left + " more");
    }
  }

  /** Prints the values at fault, such as a division by zero. */
  void printFaults(Filled filled) {
    print(filled.faults(), value -> diagnostic(filled, value));
  }

  static Diagnostic diagnostic(Filled filled, FilledValue value) {
    Value.Fault fault = (Value.Fault) value.value();
    return Diagnostic.fault(
        fault.code(),
        filled.results().decisions().origin(value.spot()),
        value.words() + ": " + fault.message(),
        "");
  }
}
