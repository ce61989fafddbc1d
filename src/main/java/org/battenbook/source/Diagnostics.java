package org.battenbook.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The messages of one run, gathered as they are found and given back in reading order. Only the
 * first message at a place is kept: one fault, one message.
 */
public final class Diagnostics {
  private final List<Diagnostic> found = new ArrayList<>();
  private final Set<Span> places = new HashSet<>();
  private boolean refused;

  public void report(Diagnostic diagnostic) {
    if (places.add(diagnostic.span())) {
      found.add(diagnostic);
    }
  }

  /** The same messages, to be gone on with by itself. */
  public Diagnostics copy() {
    Diagnostics copy = new Diagnostics();
    copy.addAll(this);
    return copy;
  }

  /** Takes what others gathered. */
  public void addAll(Diagnostics others) {
    others.found.forEach(this::report);
    refused |= others.refused;
  }

  public void fault(String code, Span span, String message, String repair) {
    report(Diagnostic.fault(code, span, message, repair));
  }

  /** A fault whose repair takes a search: it is made only if someone reads the message. */
  public void fault(String code, Span span, String message, Supplier<String> repair) {
    report(new Diagnostic(Diagnostic.Severity.FAULT, code, span, List.of(), message, repair));
  }

  /** A fault that leaves nothing to work out: what was read is larger than it may be. */
  public void refuse(String code, Span span, String message, String repair) {
    fault(code, span, message, repair);
    stop();
  }

  /** Ends the work after a fault that was reported: what is missing would be told of again. */
  public void stop() {
    refused = true;
  }

  public void caution(String code, Span span, String message, String repair) {
    report(Diagnostic.caution(code, span, message, repair));
  }

  /** Takes back what was said of a text, where another message says why already. */
  public void retract(SourceText text) {
    found.removeIf(diagnostic -> diagnostic.span().source() == text);
  }

  public boolean hasFaults() {
    return found.stream().anyMatch(Diagnostic::isFault);
  }

  /** Whether the work is to stop: something is larger than it may be, or is missing. */
  public boolean isRefused() {
    return refused;
  }

  /** Every message; those of one file in the order of its text, files in the order of discovery. */
  public List<Diagnostic> inOrder() {
    List<SourceText> files = found.stream().map(d -> d.span().source()).distinct().toList();
    List<Diagnostic> sorted = new ArrayList<>(found);
    sorted.sort(
        Comparator.comparingInt((Diagnostic d) -> files.indexOf(d.span().source()))
            .thenComparingInt(d -> d.span().start()));
    return List.copyOf(sorted);
  }
}
