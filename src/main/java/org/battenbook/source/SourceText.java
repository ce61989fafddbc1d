package org.battenbook.source;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The text of one workbook file with its name, and the place of every line in it. */
public final class SourceText {
  private final String name;
  private final String text;
  private final @Nullable Span statement;
  private final int[] lineStarts;

  private SourceText(String name, String text, @Nullable Span statement) {
    this.name = name;
    this.text = text;
    this.statement = statement;
    this.lineStarts = lineStarts(text);
  }

  /** A text under the name that messages call it by: a path as the user wrote it. */
  public static SourceText of(String name, String text) {
    return new SourceText(name, text, null);
  }

  /** A text that a statement of another stands for: what is in it is where that is. */
  public static SourceText of(String name, String text, Span statement) {
    return new SourceText(name, text, statement);
  }

  /** The statement that stands for the text; absent where people write the text itself. */
  public @Nullable Span statement() {
    return statement;
  }

  /** The path as messages print it. */
  public String name() {
    return name;
  }

  /** The last part of the path, as derivations print it. */
  public String shortName() {
    return name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
  }

  public String text() {
    return text;
  }

  public int lineCount() {
    return lineStarts.length;
  }

  /** The line of an offset, counted from 1. */
  public int line(int offset) {
    int found = Arrays.binarySearch(lineStarts, offset);
    return found >= 0 ? found + 1 : -found - 1;
  }

  /** The column of an offset in its line, counted from 1 in characters as a person sees them. */
  public int column(int offset) {
    int start = lineStarts[line(offset) - 1];
    return text.codePointCount(start, Math.min(offset, text.length())) + 1;
  }

  /** The offset at which a line (counted from 1) begins. */
  public int lineStart(int line) {
    return lineStarts[line - 1];
  }

  /** The offset just past the last character of a line, its line break left out. */
  public int lineEnd(int line) {
    int end = line < lineStarts.length ? lineStarts[line] : text.length();
    while (end > lineStarts[line - 1] && isBreak(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  /** A line of the text, counted from 1, without its line break. */
  public String lineText(int line) {
    return text.substring(lineStart(line), lineEnd(line));
  }

  public Span span(int start, int end) {
    return new Span(this, start, end);
  }

  @Override
  public String toString() {
    return name;
  }

  private static boolean isBreak(char c) {
    return c == '\n' || c == '\r';
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[16];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean ends = c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1));
      if (ends) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, count * 2);
        }
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }
}
