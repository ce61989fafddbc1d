package org.battenbook.cli;

import java.util.List;
import java.util.function.Function;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.DiagnosticPrinter;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;

/** Tells what is wrong with a workbook, each message with its place. */
final class Messages {
  /** A person repairs these first; the rest is counted. */
  private static final int MOST_TOLD = 50;

  private final Output out;
  private final DiagnosticPrinter printer = new DiagnosticPrinter();

  Messages(Output out) {
    this.out = out;
  }

  void tell(List<Diagnostic> diagnostics) {
    tell(diagnostics, diagnostic -> diagnostic);
  }

  /** Tells the first ones; only those are put into words. */
  private <T> void tell(List<T> all, Function<T, Diagnostic> words) {
    all.stream().limit(MOST_TOLD).map(one -> printer.lines(words.apply(one))).forEach(out::lines);
    int left = all.size() - MOST_TOLD;
    if (left > 0) {
      out.line("and " + left + " more");
    }
  }

  /** The values that cannot be, such as a division by zero. */
  void tellFaults(Filled filled) {
    tell(filled.faults(), value -> diagnostic(filled, value));
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
