package org.battenbook.parse;

import java.util.Locale;
import java.util.Set;
import org.battenbook.source.SourceText;

/**
 * Where statements begin and end among the lines of a file. A statement goes on only if the next
 * line begins with a sign or a word that cannot begin a statement: an operator, {@code then}.
 */
final class LogicalLines {
  private static final String OPERATORS = "+-−±*×/÷^=<>≤≥≠,)";

  private static final Set<String> GOES_ON =
      Set.of("then", "else", "and", "or", "over", "where", "rounded", "shown", "say", "because");

  private final SourceText source;
  private final String text;

  LogicalLines(SourceText source) {
    this.source = source;
    this.text = source.text();
  }

  /**
   * The first line from this one on that is more than blank or a note; past the last if none is.
   */
  int nextFrom(int line) {
    int next = line;
    while (next <= source.lineCount() && isEmpty(next)) {
      next++;
    }
    return next;
  }

  /** The last line of the statement that begins on this one. */
  int lastFrom(int line) {
    int last = line;
    int next = nextFrom(line + 1);
    while (next <= source.lineCount() && goesOn(next)) {
      last = next;
      next = nextFrom(next + 1);
    }
    return last;
  }

  private boolean isEmpty(int line) {
    int start = firstOf(line);
    int end = source.lineEnd(line);
    return start == end || isNote(text, start, end);
  }

  private boolean goesOn(int line) {
    int start = firstOf(line);
    if (OPERATORS.indexOf(text.charAt(start)) >= 0) {
      return true;
    }
    String word = wordAt(start, source.lineEnd(line));
    return GOES_ON.contains(word)
        || (word.equals("with") && isPreference(start, line))
        || (word.equals("even") && isAtWorst(start, line));
  }

  /** {@code even at worst}, behind a comparison. */
  private boolean isAtWorst(int start, int line) {
    return text.substring(start, source.lineEnd(line))
        .toLowerCase(Locale.ROOT)
        .matches("even\\s+at\\s+worst\\b.*");
  }

  /** {@code with smallest length}, where a row is chosen. */
  private boolean isPreference(int start, int line) {
    int end = source.lineEnd(line);
    int next = firstFrom(start + "with".length(), end);
    String word = wordAt(next, end);
    return word.equals("smallest") || word.equals("largest");
  }

  private String wordAt(int start, int lineEnd) {
    int end = start;
    while (end < lineEnd && Character.isLetterOrDigit(text.charAt(end))) {
      end++;
    }
    return text.substring(start, end).toLowerCase(Locale.ROOT);
  }

  private int firstOf(int line) {
    return firstFrom(source.lineStart(line), source.lineEnd(line));
  }

  private int firstFrom(int start, int end) {
    int at = start;
    while (at < end && isBlank(text.charAt(at))) {
      at++;
    }
    return at;
  }

  /** Whether {@code --} and a space, or nothing more, stand there. */
  static boolean isNote(String text, int at, int end) {
    return at + 1 < end
        && text.charAt(at) == '-'
        && text.charAt(at + 1) == '-'
        && (at + 2 == end || isBlank(text.charAt(at + 2)));
  }

  /** Every sort of space that texts bring along, a byte order mark too. */
  static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || (c > '~' && (Character.isSpaceChar(c) || c == '\uFEFF'));
  }
}
