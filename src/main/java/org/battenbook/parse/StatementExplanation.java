package org.battenbook.parse;

import static org.battenbook.parse.LineTokens.END;
import static org.battenbook.parse.generated.WorkbookParser.*;

import org.battenbook.source.Span;

/** Says what a statement lacks, by its head: a name, a text in quotes, a reason. */
final class StatementExplanation {
  private static final String NO_NAME =
      "if no change is meant: the name of a line or a column does not begin with the word 'change'";

  private final LineTokens line;
  private final LineFaults faults;
  private final int at;
  private final boolean nothingOpen;

  private StatementExplanation(LineTokens line, int at, boolean nothingOpen, LineFaults faults) {
    this.line = line;
    this.at = at;
    this.nothingOpen = nothingOpen;
    this.faults = faults;
  }

  /**
   * Reports what the statement lacks at this token.
   *
   * @param nothingOpen whether no bracket, {@code if} or {@code sum of} is open there
   * @return whether it was for the statement to say
   */
  static boolean explain(LineTokens line, int at, boolean nothingOpen, LineFaults faults) {
    return new StatementExplanation(line, at, nothingOpen, faults).explain();
  }

  private boolean explain() {
    if (line.find(BAR) >= 0) {
      return say(
          "row-out-of-place",
          line.whole(),
          "this row stands under no 'rows of'",
          "write rows of and the table's name, then the headings, above the first row");
    }
    return switch (line.type(0)) {
      case WORKBOOK -> wantsText("workbook-title", "a workbook's title stands in quotes");
      case FOLLOWS -> wantsText("follows-path", "the file that is followed stands in quotes");
      case CURRENCY ->
          atFirst("currency-code", "a currency is one code of three letters", "currency USD");
      case LENGTHS ->
          atFirst(
              "lengths-form", "'lengths in' is followed by a unit or a step", "lengths in 1/16 in");
      case PAGES ->
          list(
              "page-names", "the order of pages is a list of their names", "pages: pieces, totals");
      case PAGE -> page();
      case TABLE -> table();
      case ROWS_OF -> rows();
      case SHOWS ->
          list("shows-names", "'shows' takes a list of columns", "shows: title, width, height");
      case FOR_EACH ->
          atFirst(
              "for-each-form",
              "'for each' names a row and its table, and where it opens several rows, a number and how many",
              "for each piece of pieces, number to quantity");
      case STICK_PLAN, SHEET_PLAN ->
          atFirst("plan-name", "a plan has a name without quotes", "stick plan rail");
      case PARTS_OF, STOCK_OF, KEEP_IN, RECORD_IN ->
          atFirst(
              "table-missing",
              "'%s' is followed by the name of a table".formatted(line.get(0).getText()),
              line.get(0).getText() + " rails");
      case CHANGE -> change();
      case REQUIRE ->
          message(
              ELSE,
              "require-without-else",
              "a requirement says what to tell when it does not hold",
              "else \"…\"");
      case CAUTION ->
          message(SAY, "caution-without-say", "a caution says what to tell", "say \"…\"");
      case TO_FIND -> function();
      case WORD -> line();
      default -> false;
    };
  }

  private boolean wantsText(String code, String message) {
    Span rest = line.span(Math.min(at, line.count() - 1), line.count() - 1);
    if (line.type(at - 1) == EDITION) {
      return say(
          "edition-in-quotes", rest, "an edition stands in quotes", "write edition \"2026\"");
    }
    if (at > 1) {
      return say(code, rest, "nothing follows the closing quote", "leave it out");
    }
    String words = line.count() == 1 ? "…" : rest.text().replace("\"", "");
    String head = line.span(0).text();
    return say(code, rest, message, "write %s \"%s\"".formatted(head, words));
  }

  /** What one word or form is all there is after the head. */
  private boolean atFirst(String code, String message, String example) {
    Span rest = line.count() > 1 ? line.span(1, line.count() - 1) : line.span(0);
    return say(code, rest, message, "write it as in " + example);
  }

  private boolean page() {
    if (at == 1) {
      return say(
          "page-name",
          line.whole(),
          "a page has a name without quotes",
          "write page allowances \"Allowances\"");
    }
    return line.type(at - 1) == TEXT
        && say(
            "page-name",
            line.span(at, line.count() - 1),
            "nothing follows a page's title",
            "leave it out");
  }

  private boolean table() {
    if (line.type(at - 1) == BY) {
      return say(
          "table-key",
          line.span(at - 1),
          "'by' is not followed by the name of a column",
          "write it as in table pieces by title");
    }
    return at == 1
        && say(
            "table-missing",
            line.whole(),
            "a table has a name without quotes",
            "write it as in table pieces by title");
  }

  private boolean rows() {
    int from = line.find(FROM);
    if (from < 0 || at <= from) {
      return atFirst(
          "table-missing", "'rows of' is followed by the name of a table", "rows of pieces");
    }
    Span rest = line.span(Math.min(at, line.count() - 1), line.count() - 1);
    if (line.type(at - 1) == FROM) {
      return say(
          "list-in-quotes",
          rest,
          "the file that rows come from stands in quotes",
          "write it as in rows of prices from \"supplier.csv\"");
    }
    if (line.type(at - 1) == PAGE) {
      return say(
          "list-in-quotes",
          rest,
          "the page of a list stands in quotes",
          "write it as in rows of prices from \"supplier.xlsx\" page \"Prices\"");
    }
    return say(
        "list-in-quotes", rest, "only the page of the list may follow its file", "leave it out");
  }

  private boolean list(String code, String what, String example) {
    return say(
        code,
        line.span(Math.min(at, line.count() - 1)),
        what + ", with commas between them",
        "write it as in " + example);
  }

  private boolean change() {
    int equals = line.find(EQUALS);
    if (equals < 0 || equals > at) {
      return say(
          "change-without-formula",
          line.whole(),
          "a change has a place, '=' and a formula",
          "write change place = formula because \"why\"; " + NO_NAME);
    }
    if (line.type(at - 1) == BECAUSE) {
      return say(
          "reason-in-quotes",
          line.span(Math.min(at, line.count() - 1), line.count() - 1),
          "a reason stands in quotes",
          "write because \"…\"");
    }
    return endsWell()
        && say(
            "change-without-because",
            line.whole(),
            "a change says why",
            "end it with because \"…\"; " + NO_NAME);
  }

  private boolean message(int word, String code, String message, String example) {
    if (line.type(at - 1) == word && nothingOpen) {
      return say(
          "message-in-quotes",
          line.span(Math.min(at, line.count() - 1), line.count() - 1),
          "a message stands in quotes",
          "write " + example);
    }
    return endsWell() && say(code, line.whole(), message, "end it with " + example);
  }

  private boolean function() {
    int equals = line.find(EQUALS);
    return (equals < 0 || at <= equals)
        && say(
            "function-head",
            line.span(at),
            "a function has a name, its parameters in brackets, '=' and a formula",
            "write it as in to find twice(size) = 2 * size");
  }

  /** A line that looks like another statement without one of its words. */
  private boolean line() {
    int equals = line.find(EQUALS);
    int colon = line.find(COLON);
    if (equals < 0 && colon < 0) {
      return nearHead();
    }
    boolean inKind = colon >= 0 && colon < at && (equals < 0 || at <= equals);
    if (inKind && line.type(at - 1) == COLON) {
      return say(
          "kind-missing",
          line.span(colon),
          "no kind follows the colon",
          "write it as in width : length");
    }
    return inKind
        && !TokenKinds.isOperator(line.type(at - 1))
        && say(
            "kind-out-of-form",
            line.span(at),
            "'%s' is no part of a kind".formatted(line.span(at).text()),
            "write it as in cost : money / length");
  }

  private boolean nearHead() {
    if (CompoundTokens.is(line, 0, "caution")) {
      return say(
          "caution-without-when",
          line.span(0),
          "a caution says when",
          "write caution when … say \"…\"");
    }
    return CompoundTokens.is(line, 0, "shows")
        && type() == COMMA
        && say(
            "shows-without-colon",
            line.span(0),
            "a colon follows 'shows'",
            "write it as in shows: title, width, height");
  }

  /** Whether the line ends where its reason or message should begin. */
  private boolean endsWell() {
    return type() == END && nothingOpen && TokenKinds.closesOperand(line.type(at - 1));
  }

  private int type() {
    return line.type(at);
  }

  private boolean say(String code, Span span, String message, String repair) {
    faults.fault(code, span, message, repair);
    return true;
  }
}
