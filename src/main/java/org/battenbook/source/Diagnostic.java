package org.battenbook.source;

import java.util.List;
import java.util.function.Supplier;

/**
 * One message about a place in a workbook: what is wrong, and what to write instead.
 *
 * @param severity whether it stops the work
 * @param code a stable name in lower case with hyphens, by which tests call it
 * @param span the very words at fault
 * @param also further words that the message speaks of, underlined too
 * @param message what is wrong, one plain English sentence without its full stop
 * @param advice gives what to write instead, or nothing where the message says it already
 */
public record Diagnostic(
    Severity severity,
    String code,
    Span span,
    List<Span> also,
    String message,
    Supplier<String> advice) {

  public Diagnostic {
    also = List.copyOf(also);
    if (code.indexOf('-') < 0) {
      throw new IllegalArgumentException("a code needs a hyphen:  " + code);
    }
  }

  /** A message whose repair is known. */
  public Diagnostic(
      Severity severity, String code, Span span, List<Span> also, String message, String repair) {
    this(severity, code, span, also, message, () -> repair);
  }

  /** Whether a message stops the work or is only worth reading. */
  public enum Severity {
    FAULT,
    CAUTION
  }

  public static Diagnostic fault(String code, Span span, String message, String repair) {
    return new Diagnostic(Severity.FAULT, code, span, List.of(), message, repair);
  }

  public static Diagnostic caution(String code, Span span, String message, String repair) {
    return new Diagnostic(Severity.CAUTION, code, span, List.of(), message, repair);
  }

  /**
   * What to write instead; empty where the message says it already. Worked out anew each time, so
   * that messages that nobody is told cost no search for near names.
   */
  public String repair() {
    return advice.get();
  }

  public boolean isFault() {
    return severity == Severity.FAULT;
  }
}
