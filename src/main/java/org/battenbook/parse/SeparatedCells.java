package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A row whose cells tabs, commas or semicolons separate.
 *
 * @param sign the word for what separates them
 * @param withBars the row as it should be written
 */
record SeparatedCells(String sign, String withBars) {

  /** Between two offsets of a text without bars; empty where none of the signs separates. */
  static Optional<SeparatedCells> in(String text, int start, int end) {
    return at('\t', "tabs", text, start, end)
        .or(() -> at(';', "semicolons", text, start, end))
        .or(() -> at(',', "commas", text, start, end));
  }

  private static Optional<SeparatedCells> at(
      char separator, String sign, String text, int start, int end) {
    RowSplitter splitter = new RowSplitter(text, separator);
    splitter.split(start, end);
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < splitter.count(); i++) {
      cells.add(text.substring(splitter.start(i), splitter.end(i)));
    }
    if (separator == '\t') {
      cells.removeIf(String::isEmpty);
    }
    return cells.size() > 1
        ? Optional.of(new SeparatedCells(sign, String.join(" | ", cells)))
        : Optional.empty();
  }
}
