package org.battenbook.parse;

import java.util.Arrays;

/**
 * Splits a line into cells at its bars, spaces trimmed; bars inside texts and notes do not count. A
 * quote right after a digit is an inch mark. One splitter serves all the rows of a table, and makes
 * no object for a row: a hundred thousand rows take some twenty milliseconds.
 */
final class RowSplitter {
  private final String text;
  private final char separator;
  private int[] bounds = new int[32];
  private int count;
  private int end;
  private int openText;

  RowSplitter(String text) {
    this(text, '|');
  }

  /** A splitter at another sign, for rows that are not written with bars. */
  RowSplitter(String text, char separator) {
    this.text = text;
    this.separator = separator;
  }

  /** Splits the line between two offsets, its break left out. */
  void split(int start, int lineEnd) {
    count = 0;
    openText = -1;
    end = lineEnd;
    int cell = start;
    int at = start;
    while (at < end) {
      char c = text.charAt(at);
      if (c == separator) {
        add(cell, at);
        cell = at + 1;
        at++;
      } else if (c == '"' || c == '“') {
        at = opensText(at, start) ? pastText(at, c == '"' ? '"' : '”') : at + 1;
      } else if (c == '-' && beginsNote(at, start)) {
        end = at;
      } else {
        at++;
      }
    }
    add(cell, end);
    end = trimmedEnd(start, end);
  }

  private boolean opensText(int at, int start) {
    if (at == start || text.charAt(at) == '“') {
      return true;
    }
    char before = text.charAt(at - 1);
    return !(before >= '0' && before <= '9') && !NumberText.isVulgar(before);
  }

  private int pastText(int open, char closing) {
    int at = open + 1;
    while (at < end) {
      if (text.charAt(at) == closing) {
        boolean doubled = closing == '"' && at + 1 < end && text.charAt(at + 1) == '"';
        if (!doubled) {
          return at + 1;
        }
        at++;
      }
      at++;
    }
    openText = open;
    return end;
  }

  private boolean beginsNote(int at, int start) {
    return LogicalLines.isNote(text, at, end)
        && (at == start || LogicalLines.isBlank(text.charAt(at - 1)));
  }

  private void add(int from, int to) {
    if (2 * count == bounds.length) {
      bounds = Arrays.copyOf(bounds, bounds.length * 2);
    }
    int last = trimmedEnd(from, to);
    int first = from;
    while (first < last && LogicalLines.isBlank(text.charAt(first))) {
      first++;
    }
    bounds[2 * count] = first;
    bounds[2 * count + 1] = last;
    count++;
  }

  private int trimmedEnd(int from, int to) {
    int last = to;
    while (last > from && LogicalLines.isBlank(text.charAt(last - 1))) {
      last--;
    }
    return last;
  }

  int count() {
    return count;
  }

  boolean hasBar() {
    return count > 1;
  }

  int start(int cell) {
    return bounds[2 * cell];
  }

  int end(int cell) {
    return bounds[2 * cell + 1];
  }

  /** Where the last cell ends, a note left out. */
  int end() {
    return end;
  }

  /** Where a text begins that is not closed; -1 where all are. */
  int openText() {
    return openText;
  }
}
