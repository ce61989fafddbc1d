package org.battenbook.parse;

import static org.battenbook.parse.LineTokens.END;
import static org.battenbook.parse.generated.WorkbookParser.*;

import org.battenbook.source.Span;

/** Says what a statement lacks, by its head: a name, a text in quotes, a reason. */
final class StatementExplanation {
  private static final String NO_NAME =
      "the name of a line or a column cannot begin with the word 'change'";

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
          "there is no 'rows of' above this row",
          "write 'rows of' with the table's name above the first row, and the headings below it");
    }
    return switch (line.type(0)) {
      case WORKBOOK -> wantsText("workbook-title", "the title of a workbook needs quotes");
      case FOLLOWS -> wantsText("follows-path", "the name of the followed file needs quotes");
      case CURRENCY ->
          atFirst(
              "currency-code", "a currency is one code of three capital letters", "currency USD");
      case LENGTHS ->
          atFirst(
              "lengths-form", "'lengths in' needs a unit or a step after it", "lengths in 1/16 in");
      case PAGES ->
          list("page-names", "'pages' needs a list of page names", "pages: pieces, totals");
      case PAGE -> page();
      case TABLE -> table();
      case ROWS_OF -> rows();
      case SHOWS ->
          list("shows-names", "'shows' needs a list of columns", "shows: title, width, height");
      case FOR_EACH ->
          atFirst(
              "for-each-form",
              "'for each' needs a name for a row and its table; to create several rows, also a number and how many",
              "for each piece of pieces, number to quantity");
      case STICK_PLAN, SHEET_PLAN ->
          atFirst("plan-name", "a plan needs a name without quotes", "stick plan rail");
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
              "a check needs a message for when it fails",
              "else \"…\"");
      case CAUTION -> message(SAY, "caution-without-say", "a caution needs a message", "say \"…\"");
      case TO_FIND -> function();
      case WORD -> line();
      default -> false;
    };
  }

  private boolean wantsText(String code, String message) {
    Span rest = line.span(Math.min(at, line.count() - 1), line.count() - 1);
    if (line.type(at - 1) == EDITION) {
      return say("edition-in-quotes", rest, "an edition needs quotes", "write edition \"2026\"");
    }
    if (at > 1) {
      return say(code, rest, "nothing can come after the closing quote", "remove it");
    }
    String words = line.count() == 1 ? "…" : rest.text().replace("\"", "");
    String head = line.span(0).text();
    return say(code, rest, message, "write %s \"%s\"".formatted(head, words));
  }

  /** What one word or form is all there is after the head. */
  private boolean atFirst(String code, String message, String example) {
    Span rest = line.count() > 1 ? line.span(1, line.count() - 1) : line.span(0);
    return say(code, rest, message, "write for example " + example);
  }

  private boolean page() {
    if (at == 1) {
      return say(
          "page-name",
          line.whole(),
          "a page needs a name without quotes",
          "write page allowances \"Allowances\"");
    }
    return line.type(at - 1) == TEXT
        && say(
            "page-name",
            line.span(at, line.count() - 1),
            "nothing can come after a page's title",
            "remove it");
  }

  private boolean table() {
    if (line.type(at - 1) == BY) {
      return say(
          "table-key",
          line.span(at - 1),
          "'by' needs the name of a column after it",
          "write for example table pieces by title");
    }
    return at == 1
        && say(
            "table-missing",
            line.whole(),
            "a table needs a name without quotes",
            "write for example table pieces by title");
  }

  private boolean rows() {
    int from = line.find(FROM);
    if (from < 0 || at <= from) {
      return atFirst(
          "table-missing", "'rows of' needs the name of a table after it", "rows of pieces");
    }
    Span rest = line.span(Math.min(at, line.count() - 1), line.count() - 1);
    if (line.type(at - 1) == FROM) {
      return say(
          "list-in-quotes",
          rest,
          "the name of the list's file needs quotes",
          "write for example rows of prices from \"supplier.csv\"");
    }
    if (line.type(at - 1) == PAGE) {
      return say(
          "list-in-quotes",
          rest,
          "the page of a list needs quotes",
          "write for example rows of prices from \"supplier.xlsx\" page \"Prices\"");
    }
    return say(
        "list-in-quotes", rest, "only the page of the list can come after its file", "remove it");
  }

  private boolean list(String code, String what, String example) {
    return say(
        code,
        line.span(Math.min(at, line.count() - 1)),
        what + ", with commas between them",
        "write for example " + example);
  }

  private boolean change() {
    int equals = line.find(EQUALS);
    if (equals < 0 || equals > at) {
      return say(
          "change-without-formula",
          line.whole(),
          "a change needs what it changes, '=' and a formula",
          "write 'change NAME = FORMULA because \"REASON\"'; " + NO_NAME);
    }
    if (line.type(at - 1) == BECAUSE) {
      return say(
          "reason-in-quotes",
          line.span(Math.min(at, line.count() - 1), line.count() - 1),
          "a reason needs quotes",
          "write because \"…\"");
    }
    return endsWell()
        && say(
            "change-without-because",
            line.whole(),
            "a change needs a reason",
            "end the line with because \"…\"; " + NO_NAME);
  }

  private boolean message(int word, String code, String message, String example) {
    if (line.type(at - 1) == word && nothingOpen) {
      return say(
          "message-in-quotes",
          line.span(Math.min(at, line.count() - 1), line.count() - 1),
          "a message needs quotes",
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
            "a function needs a name, parameters in brackets, '=' and a formula",
            "write for example to find twice(size) = 2 * size");
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
          "there is no kind after the colon",
          "write for example width : length");
    }
    return inKind
        && !TokenKinds.isOperator(line.type(at - 1))
        && say(
            "kind-out-of-form",
            line.span(at),
            "'%s' cannot be part of a kind".formatted(line.span(at).text()),
            "write for example cost : money / length");
  }

  private boolean nearHead() {
    if (CompoundTokens.is(line, 0, "caution")) {
      return say(
          "caution-without-when",
          line.span(0),
          "a caution needs a condition",
          "write caution when … say \"…\"");
    }
    return CompoundTokens.is(line, 0, "shows")
        && type() == COMMA
        && say(
            "shows-without-colon",
            line.span(0),
            "'shows' needs a colon after it",
            "write for example shows: title, width, height");
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
