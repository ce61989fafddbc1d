package org.battenbook.parse;

import java.util.ArrayDeque;
import java.util.Deque;
import org.battenbook.bound.Bound;
import org.battenbook.parse.generated.WorkbookParser;

/**
 * Counts how deep a line nests before it is parsed: the parser descends as deep as the brackets,
 * and a workbook may come from anyone.
 */
final class Nesting {
  private final Deque<Integer> openAt = new ArrayDeque<>();

  /** What is open within the innermost bracket: an {@code if}, a {@code sum of}. */
  private int openWords;

  private int signs;

  private Nesting() {}

  /** The same line; a fault if it nests too deep. */
  static LineTokens check(LineTokens line, LineFaults faults) {
    Nesting nesting = new Nesting();
    for (int i = 0; i < line.count(); i++) {
      if (Bound.NESTING.isPassedBy(nesting.depthAfter(line.type(i)))) {
        faults.fault(
            "nested-too-deep",
            line.span(i),
            "this formula nests more than %s deep".formatted(Bound.NESTING.shown()),
            "write an inner part on its own line, and use its name here");
        break;
      }
    }
    return line;
  }

  private int depthAfter(int type) {
    boolean isSign = type == WorkbookParser.MINUS || type == WorkbookParser.NOT;
    signs = isSign ? signs + 1 : 0;
    switch (type) {
      case WorkbookParser.OPEN -> {
        openAt.push(openWords);
        openWords++;
      }
      case WorkbookParser.CLOSE -> openWords = openAt.isEmpty() ? 0 : openAt.pop();
      case WorkbookParser.COMMA -> openWords = openAt.isEmpty() ? 0 : openAt.peek() + 1;
      case WorkbookParser.IF,
          WorkbookParser.AGGREGATE,
          WorkbookParser.ROW_OF,
          WorkbookParser.WHERE,
          WorkbookParser.WITH ->
          openWords++;
      case WorkbookParser.OVER -> openWords = Math.max(0, openWords - 1);
      default -> {}
    }
    return openWords + signs;
  }
}
