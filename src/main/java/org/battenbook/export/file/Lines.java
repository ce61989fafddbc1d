package org.battenbook.export.file;

import java.util.List;

/** Breaks texts into lines of a given width. */
public final class Lines {
  private Lines() {}

  /** How many lines a text takes. Lines break at spaces, and inside a word that is too long. */
  static int count(String text, int width) {
    return text.lines().mapToInt(line -> wrapped(line, width)).sum();
  }

  private static int wrapped(String line, int width) {
    int lines = 1;
    int used = 0;
    for (String word : line.split(" ", -1)) {
      int needed = used == 0 ? word.length() : used + 1 + word.length();
      if (needed > width && used > 0) {
        lines++;
        needed = word.length();
      }
      lines += Math.max(0, needed - 1) / width;
      used = needed == 0 ? 0 : (needed - 1) % width + 1;
    }
    return lines;
  }

  /** The length of the longest word of a text. A column is at least that wide for its heading. */
  static int longestWord(String text) {
    return List.of(text.split("\\s+", -1)).stream().mapToInt(String::length).max().orElse(0);
  }
}
