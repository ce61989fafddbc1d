package org.battenbook.fuzz;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.battenbook.book.Loader;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.DiagnosticPrinter;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;

/** What every fuzz target judges by, beside exceptions and memory, which end it by themselves. */
final class Bounds {
  /** Of the whole process, so that a busy machine does not count. */
  private static final long MOST_CPU_NANOS = 5_000_000_000L;

  private static final OperatingSystemMXBean SYSTEM =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private static final DiagnosticPrinter PRINTER = new DiagnosticPrinter();

  /** The first run of a target loads classes, which takes longer than any input. */
  private static boolean isWarm;

  private Bounds() {}

  /** What is done with one input. */
  @FunctionalInterface
  interface Work {
    void run() throws IOException, Loader.Unreadable;
  }

  /**
   * Does the work.
   *
   * @throws AssertionError when it took more processor time than any small file may take
   */
  static void check(Work work) {
    long start = SYSTEM.getProcessCpuTime();
    try {
      work.run();
    } catch (IOException | Loader.Unreadable impossible) {
      throw new AssertionError("nothing is read or written here", impossible);
    }
    long taken = SYSTEM.getProcessCpuTime() - start;
    if (isWarm && taken > MOST_CPU_NANOS) {
      throw new AssertionError("took %d ms of processor time".formatted(taken / 1_000_000));
    }
    isWarm = true;
  }

  /** Prints messages as people read them; each says something at a place that a person wrote. */
  static void checkTold(List<Diagnostic> diagnostics, FilesInOneText files) {
    for (Diagnostic one : diagnostics) {
      if (one.message().isBlank()) {
        throw new AssertionError("says nothing: " + one.code());
      }
      checkPlace(one.span(), files);
      PRINTER.print(one);
    }
  }

  /** Sees to it that words stand in a file that a person wrote, or for a statement in one. */
  static void checkPlace(Span span, FilesInOneText files) {
    Span statement = span.source().statement();
    SourceText written = statement == null ? span.source() : statement.source();
    if (!files.has(written.name())) {
      throw new AssertionError("told of '%s', which nobody wrote".formatted(written));
    }
  }
}
