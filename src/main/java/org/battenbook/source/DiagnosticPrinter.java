package org.battenbook.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Prints a message for people: its place, what is wrong, the line with carets under the very words,
 * and what to write instead.
 *
 * <pre>
 * ferry.batten:31:17: no line is called 'top rail lip'
 *   31 |   short point = top rail lip
 *      |                 ^^^^^^^^^^^^
 *   is an operator missing between 'top rail' and 'lip'?
 * </pre>
 */
public final class DiagnosticPrinter {
  /** How much of a line is shown before the words at fault, and how much in all. */
  private static final int MOST_BEFORE = 60;

  private static final int MOST_SHOWN = 110;
  private static final String CUT = "…";

  /** The message as a text without inks, safe to show; each line ends. */
  public String print(Diagnostic diagnostic) {
    StringBuilder out = new StringBuilder();
    lines(diagnostic).forEach(line -> out.append(DisplayText.safe(line.text())).append('\n'));
    return out.toString();
  }

  /** The message in lines. */
  public List<InkedText> lines(Diagnostic diagnostic) {
    List<InkedText> lines = new ArrayList<>();
    String severity = diagnostic.isFault() ? "" : "caution: ";
    String head = diagnostic.span() + ": " + severity + diagnostic.message();
    lines.add(InkedText.of(Ink.HEADING, head));
    byLine(diagnostic).forEach((line, spans) -> excerpt(line, spans, lines));
    if (!diagnostic.repair().isEmpty()) {
      lines.add(InkedText.of("  " + diagnostic.repair()));
    }
    return lines;
  }

  /** The spans of one text by their line: other texts are named in the message itself. */
  private static Map<Integer, List<Span>> byLine(Diagnostic diagnostic) {
    Map<Integer, List<Span>> lines = new TreeMap<>();
    List<Span> spans = new ArrayList<>(diagnostic.also());
    spans.add(diagnostic.span());
    spans.removeIf(span -> span.source() != diagnostic.span().source());
    spans.sort(Comparator.comparingInt(Span::start));
    for (Span span : spans) {
      lines.computeIfAbsent(span.line(), line -> new ArrayList<>()).add(span);
    }
    return lines;
  }

  private static void excerpt(int line, List<Span> spans, List<InkedText> lines) {
    SourceText source = spans.get(0).source();
    Window window = Window.around(source, line, spans.get(0));
    String number = String.valueOf(line);
    lines.add(InkedText.of("  " + number + " | " + window.shown()));
    String blanks = " ".repeat(number.length() + 2);
    lines.add(carets(InkedText.of(blanks + " | "), window, spans));
  }

  private static InkedText carets(InkedText lead, Window window, List<Span> spans) {
    int at = window.start();
    InkedText line = lead.and(" ".repeat(DisplayText.width(window.lead())));
    for (Span span : spans) {
      int from = window.within(Math.max(at, span.start()));
      int to = Math.max(from, window.within(span.end()));
      int underlined = Math.max(span.start() >= at ? 1 : 0, window.width(from, to));
      line = line.and(" ".repeat(window.width(at, from))).and(Ink.FAULT, "^".repeat(underlined));
      at = Math.max(at, to);
    }
    return line;
  }

  /** The part of a line that is shown: half-open offsets. */
  private record Window(SourceText source, int start, int end, String lead, String trail) {

    static Window around(SourceText source, int line, Span span) {
      int lineStart = source.lineStart(line);
      int lineEnd = source.lineEnd(line);
      int start = lineStart;
      if (span.start() - lineStart > MOST_BEFORE && lineEnd - lineStart > MOST_SHOWN) {
        start = whole(source, Math.min(span.start(), lineEnd) - MOST_BEFORE);
      }
      int end = whole(source, Math.min(lineEnd, start + MOST_SHOWN));
      String lead = start > lineStart ? CUT : "";
      return new Window(source, start, end, lead, end < lineEnd ? CUT : "");
    }

    /** An offset that does not part a surrogate pair. */
    private static int whole(SourceText source, int offset) {
      String text = source.text();
      boolean parts =
          offset > 0
              && offset < text.length()
              && Character.isLowSurrogate(text.charAt(offset))
              && Character.isHighSurrogate(text.charAt(offset - 1));
      return parts ? offset - 1 : offset;
    }

    String shown() {
      return lead + source.text().substring(start, end) + trail;
    }

    int within(int offset) {
      return Math.min(Math.max(offset, start), end);
    }

    int width(int from, int to) {
      return DisplayText.width(source.text().substring(from, to));
    }
  }
}
