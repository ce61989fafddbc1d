package org.battenbook.cli;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.source.DisplayText;

/** A text broken into lines between words. */
final class WrappedText {
  private WrappedText() {}

  /** The lines of a text; only a word that is longer than a line by itself is longer than that. */
  static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    int start = 0;
    while (DisplayText.isWider(text, start, width)) {
      int blank = lastBlank(text, start, width);
      if (blank < 0) {
        break;
      }
      lines.add(text.substring(start, blank).stripTrailing());
      start = blank + 1;
    }
    lines.add(text.substring(start));
    return lines;
  }

  /** The last blank after a line's worth of words, else the first that there is. */
  private static int lastBlank(String text, int start, int width) {
    int found = text.indexOf(' ', start);
    int next = found;
    while (next >= 0 && DisplayText.width(text.substring(start, next)) <= width) {
      found = next;
      next = text.indexOf(' ', next + 1);
    }
    return found;
  }
}
