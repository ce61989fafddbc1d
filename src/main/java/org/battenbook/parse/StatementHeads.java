package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.battenbook.parse.generated.WorkbookParser;

/**
 * Decides by a line's first words which statement it is, before it is parsed. {@code change},
 * {@code require} and {@code caution when} always are what they say, so that a forgotten {@code
 * because} is not a new line of that name; the others only where no {@code =} or kind follows, so
 * that {@code table saw kerf = 1/8 in} is a line.
 */
final class StatementHeads {
  private static final Map<String, Integer> BEFORE_MORE =
      Map.of(
          "workbook", WorkbookParser.WORKBOOK,
          "follows", WorkbookParser.FOLLOWS,
          "currency", WorkbookParser.CURRENCY,
          "page", WorkbookParser.PAGE,
          "table", WorkbookParser.TABLE);

  private static final Map<String, Integer> OF_PLANS =
      Map.of(
          "stick plan", WorkbookParser.STICK_PLAN,
          "sheet plan", WorkbookParser.SHEET_PLAN,
          "parts of", WorkbookParser.PARTS_OF,
          "stock of", WorkbookParser.STOCK_OF,
          "keep in", WorkbookParser.KEEP_IN,
          "record in", WorkbookParser.RECORD_IN);

  private final LineTokens line;

  private StatementHeads(LineTokens line) {
    this.line = line;
  }

  /** The same line, its first words one token of a statement's type where they are its head. */
  static LineTokens mark(LineTokens line) {
    return new StatementHeads(line).mark();
  }

  private LineTokens mark() {
    if (!line.isWord(0)) {
      return line;
    }
    if (is(0, "change") && hasMore(1)) {
      return head(1, WorkbookParser.CHANGE);
    }
    if (is(0, "require") && hasMore(1)) {
      return head(1, WorkbookParser.REQUIRE);
    }
    if (is(0, "caution") && is(1, "when") && hasMore(2)) {
      return head(2, WorkbookParser.CAUTION);
    }
    if (isFunction()) {
      return head(2, WorkbookParser.TO_FIND);
    }
    return isDefinition() ? definition() : plainHead();
  }

  /** {@code to find} counts only with the bracket of its parameters. */
  private boolean isFunction() {
    int equals = line.find(WorkbookParser.EQUALS);
    int bracket = line.find(WorkbookParser.OPEN);
    return is(0, "to") && is(1, "find") && bracket > 0 && (equals < 0 || bracket < equals);
  }

  /** Heads of lines that hold a {@code =} or a colon themselves. */
  private LineTokens definition() {
    boolean isList = line.type(1) == WorkbookParser.COLON && line.find(WorkbookParser.EQUALS) < 0;
    if (isList && is(0, "shows")) {
      return head(1, WorkbookParser.SHOWS);
    }
    return isList && is(0, "pages") ? head(1, WorkbookParser.PAGES) : line;
  }

  private LineTokens plainHead() {
    Integer beforeMore = BEFORE_MORE.get(word(0));
    if (beforeMore != null) {
      LineTokens marked = head(1, beforeMore);
      return switch (beforeMore) {
        case WorkbookParser.TABLE -> withKey(marked);
        case WorkbookParser.WORKBOOK, WorkbookParser.FOLLOWS -> withEdition(marked);
        default -> marked;
      };
    }
    if (is(0, "lengths") && is(1, "in")) {
      return head(2, WorkbookParser.LENGTHS);
    }
    if (is(0, "rows") && is(1, "of")) {
      return withList(head(2, WorkbookParser.ROWS_OF));
    }
    if (is(0, "for") && is(1, "each")) {
      return withParts(head(2, WorkbookParser.FOR_EACH));
    }
    if (is(0, "worked") && is(1, "out") && line.count() == 2) {
      return head(2, WorkbookParser.WORKED_OUT);
    }
    Integer ofPlan = OF_PLANS.get(word(0) + " " + word(1));
    if (ofPlan != null) {
      return head(2, ofPlan);
    }
    return line.count() == 1 ? alone() : line;
  }

  private LineTokens alone() {
    return switch (word(0)) {
      case "given" -> head(1, WorkbookParser.GIVEN);
      case "lines" -> head(1, WorkbookParser.LINES);
      default -> line;
    };
  }

  /** Marks {@code edition} of {@code follows "shop.batten" edition "2026"}. */
  private static LineTokens withEdition(LineTokens file) {
    return CompoundTokens.is(file, 2, "edition") ? mark(file, 2, WorkbookParser.EDITION) : file;
  }

  /** Marks the last {@code by} of {@code table pieces by title}; a name may hold one, too. */
  private static LineTokens withKey(LineTokens table) {
    for (int i = table.count() - 1; i > 1; i--) {
      if (table.isWord(i) && CompoundTokens.is(table, i, "by")) {
        return mark(table, i, WorkbookParser.BY);
      }
    }
    return table;
  }

  /** Marks {@code of} and {@code to} of {@code for each piece of pieces, number to quantity}. */
  private static LineTokens withParts(LineTokens opening) {
    int comma = opening.find(WorkbookParser.COMMA);
    int end = comma < 0 ? opening.count() : comma;
    LineTokens marked = markFirst(opening, "of", WorkbookParser.OF, 2, end);
    return comma < 0
        ? marked
        : markFirst(marked, "to", WorkbookParser.TO, comma + 2, opening.count());
  }

  /** Marks a word where it is met first between two places. */
  private static LineTokens markFirst(LineTokens line, String word, int type, int from, int end) {
    for (int i = from; i < end; i++) {
      if (CompoundTokens.is(line, i, word)) {
        return mark(line, i, type);
      }
    }
    return line;
  }

  /**
   * Marks the last {@code from} of {@code rows of prices from "supplier.csv"}, and {@code page}
   * behind the file; a name may hold both, and ends no statement.
   */
  private static LineTokens withList(LineTokens rows) {
    int from = rows.count() - 1;
    while (from > 1 && !CompoundTokens.is(rows, from, "from")) {
      from--;
    }
    if (from <= 1 || isName(rows, from + 1)) {
      return rows;
    }
    LineTokens marked = mark(rows, from, WorkbookParser.FROM);
    return CompoundTokens.is(rows, from + 2, "page")
        ? mark(marked, from + 2, WorkbookParser.PAGE)
        : marked;
  }

  /** Whether nothing but words stands there up to the end, and at least one. */
  private static boolean isName(LineTokens line, int start) {
    int at = start;
    while (line.isWord(at)) {
      at++;
    }
    return at == line.count() && at > start;
  }

  private static LineTokens mark(LineTokens line, int index, int type) {
    List<Token> tokens = new ArrayList<>(line.tokens());
    tokens.set(index, CompoundTokens.merge(line, index, index, type));
    return new LineTokens(line.source(), tokens, line.note());
  }

  private boolean isDefinition() {
    return line.find(WorkbookParser.EQUALS) >= 0 || line.find(WorkbookParser.COLON) >= 0;
  }

  /** Whether what follows the head is not that of a line called by the same word. */
  private boolean hasMore(int index) {
    int type = line.type(index);
    return type != WorkbookParser.EQUALS && type != WorkbookParser.COLON;
  }

  private LineTokens head(int words, int type) {
    List<Token> tokens = new ArrayList<>(line.tokens().subList(words, line.tokens().size()));
    CommonToken head = CompoundTokens.merge(line, 0, words - 1, type);
    tokens.add(0, head);
    return new LineTokens(line.source(), tokens, line.note());
  }

  private boolean is(int index, String word) {
    return CompoundTokens.is(line, index, word);
  }

  private String word(int index) {
    return CompoundTokens.word(line, index);
  }
}
