package org.battenbook.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;

/** Replacements in one text. Everything else stays as it is, to the byte. */
final class TextEdits {
  private final SourceText source;
  private final List<Replacement> replacements = new ArrayList<>();

  /**
   * A replacement of a stretch of the source.
   *
   * @param end past its last character; the same as {@code start} to insert
   */
  record Replacement(int start, int end, String text) {}

  TextEdits(SourceText source) {
    this.source = source;
  }

  void replace(Span span, String text) {
    replace(span.start(), span.end(), text);
  }

  /** Replaces a stretch; what replaced a part of it before is dropped. */
  void replace(int start, int end, String text) {
    replacements.removeIf(one -> one.start < end && start < one.end);
    replacements.add(new Replacement(start, end, text));
  }

  void replaceAll(List<Replacement> more) {
    replacements.addAll(more);
  }

  /** Texts inserted at one place stand there in the order of the calls. */
  void insert(int at, String text) {
    replacements.add(new Replacement(at, at, text));
  }

  /** Inserts a line below the line of an offset. */
  void insertLineBelow(int offset, String line) {
    int number = source.line(offset);
    insert(source.lineEnd(number), lineBreak(number) + line);
  }

  /** Inserts a line above the line of an offset. */
  void insertLineAbove(int offset, String line) {
    int number = source.line(offset);
    insert(source.lineStart(number), line + lineBreak(number));
  }

  /** Adds a line at the end of the text. */
  void append(String line) {
    int end = source.text().length();
    boolean isOpen =
        end > 0 && source.lineEnd(source.lineCount()) > source.lineStart(source.lineCount());
    boolean isFirst = replacements.stream().noneMatch(one -> one.start == end);
    String lineBreak = lineBreak(source.lineCount());
    insert(end, (isOpen && isFirst ? lineBreak : "") + line + lineBreak);
  }

  /** Removes whole lines with their breaks; a last line that has none takes the one before it. */
  void removeLines(int first, int last) {
    boolean reachesEnd = last == source.lineCount();
    int end = reachesEnd ? source.text().length() : source.lineStart(last + 1);
    boolean hasBreak = source.lineEnd(last) < end;
    int start = !hasBreak && first > 1 ? source.lineEnd(first - 1) : source.lineStart(first);
    replace(start, end, "");
  }

  /** The break of a line as it stands there, or else of the line before it. */
  private String lineBreak(int line) {
    for (int at = line; at >= 1; at--) {
      int next = at < source.lineCount() ? source.lineStart(at + 1) : source.text().length();
      String lineBreak = source.text().substring(source.lineEnd(at), next);
      if (!lineBreak.isEmpty()) {
        return lineBreak;
      }
    }
    return source.text().contains("\r\n") ? "\r\n" : "\n";
  }

  /** The whole text with its replacements. */
  String text() {
    return text(source.text(), 0, replacements);
  }

  /**
   * A stretch of a text with its replacements.
   *
   * @param offset where the stretch begins in the text that the replacements count in
   */
  static String text(String stretch, int offset, List<Replacement> replacements) {
    StringBuilder text = new StringBuilder();
    int at = 0;
    List<Replacement> inOrder =
        replacements.stream().sorted(Comparator.comparingInt(Replacement::start)).toList();
    for (Replacement one : inOrder) {
      text.append(stretch, at, one.start - offset).append(one.text);
      at = one.end - offset;
    }
    return text.append(stretch, at, stretch.length()).toString();
  }
}
