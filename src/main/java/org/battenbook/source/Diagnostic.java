package org.battenbook.source;

import java.util.List;

/**
 * One message about a place in a workbook: what is wrong, and what to write instead.
 *
 * @param severity whether it stops the work
 * @param code a stable name in lower case with hyphens, by which tests call it
 * @param span the very words at fault
 * @param also further words that the message speaks of, underlined too
 * @param message what is wrong, one plain English sentence without its full stop
 * @param repair what to write instead, or empty where the message says it already
 */
public record Diagnostic(
    Severity severity, String code, Span span, List<Span> also, String message, String repair) {

  public Diagnostic {
    also = List.copyOf(also);
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

  public boolean isFault() {
    return severity == Severity.FAULT;
  }
}
