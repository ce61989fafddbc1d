package org.battenbook.keep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.battenbook.source.SourceText;

/** Changes to one text; all of it that they do not name stays as it is, to the byte. */
final class TextEdits {
  private final SourceText source;
  private final List<Edit> edits = new ArrayList<>();

  private record Edit(int start, int end, String text) {}

  TextEdits(SourceText source) {
    this.source = source;
  }

  void replace(int start, int end, String text) {
    edits.add(new Edit(start, end, text));
  }

  /** What is inserted at one place stands there in turn. */
  void insert(int at, String text) {
    replace(at, at, text);
  }

  /** A line of its own behind the line of an offset. */
  void insertLine(int offset, String line) {
    insert(source.lineEnd(source.line(offset)), lineBreak() + line);
  }

  /** A line of its own at the end. */
  void append(String line) {
    int end = source.text().length();
    boolean isOpen =
        end > 0 && source.lineEnd(source.lineCount()) > source.lineStart(source.lineCount());
    boolean isFirst = edits.stream().noneMatch(edit -> edit.start == end);
    insert(end, (isOpen && isFirst ? lineBreak() : "") + line + lineBreak());
  }

  /** As the text itself breaks its lines. */
  private String lineBreak() {
    return source.text().contains("\r\n") ? "\r\n" : "\n";
  }

  String text() {
    StringBuilder text = new StringBuilder();
    int at = 0;
    for (Edit edit : edits.stream().sorted(Comparator.comparingInt(Edit::start)).toList()) {
      text.append(source.text(), at, edit.start).append(edit.text);
      at = edit.end;
    }
    return text.append(source.text(), at, source.text().length()).toString();
  }
}
