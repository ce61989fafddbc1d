package org.battenbook.parse;

import static org.battenbook.parse.LineTokens.END;
import static org.battenbook.parse.TokenKinds.closesOperand;
import static org.battenbook.parse.TokenKinds.isNumber;
import static org.battenbook.parse.TokenKinds.isOperator;
import static org.battenbook.parse.TokenKinds.isReserved;
import static org.battenbook.parse.TokenKinds.opensOperand;
import static org.battenbook.parse.TokenKinds.wantsMore;
import static org.battenbook.parse.generated.WorkbookParser.*;

import java.util.ArrayDeque;
import java.util.Deque;
import org.battenbook.source.Span;

/**
 * Says in plain words why a line does not parse. It looks at the tokens around the first one that
 * does not fit, and at what is open before it; the first case that applies speaks.
 */
final class SyntaxExplanation {
  private static final String RESERVED_WORDS =
      "these words cannot be part of a name: if then else and or not over where rounded shown say because true"
          + " false";

  private final LineTokens line;
  private final LineFaults faults;
  private final int at;
  private final int type;
  private final int before;

  /** Where each bracket, {@code if} and {@code sum of} that is still open stands. */
  private final Deque<Integer> open = new ArrayDeque<>();

  private SyntaxExplanation(LineTokens line, int at, LineFaults faults) {
    this.line = line;
    this.faults = faults;
    this.at = at;
    this.type = line.type(at);
    this.before = line.type(at - 1);
  }

  /** Reports why the token at this index does not fit. */
  static void explain(LineTokens line, int at, LineFaults faults) {
    SyntaxExplanation explanation = new SyntaxExplanation(line, at, faults);
    explanation.findOpen();
    boolean said =
        StatementExplanation.explain(line, at, explanation.open.isEmpty(), faults)
            || explanation.nameless()
            || explanation.side()
            || explanation.end()
            || explanation.reservedStart()
            || explanation.missingOperator()
            || explanation.wordInName()
            || explanation.bracket()
            || explanation.nothingBetween()
            || explanation.sign();
    if (!said) {
      explanation.fault("out-of-place", line.span(at), "'%s' does not fit here", "remove it");
    }
  }

  private void findOpen() {
    for (int i = 0; i < at; i++) {
      switch (line.type(i)) {
        case OPEN, IF, AGGREGATE -> open.push(i);
        case CLOSE -> closeBracket();
        case OVER -> close(AGGREGATE);
        case ELSE -> close(IF);
        default -> {}
      }
    }
  }

  /** Closes the innermost bracket, and what was left open inside it. */
  private void closeBracket() {
    boolean closed = false;
    while (!open.isEmpty() && !closed) {
      closed = line.type(open.pop()) == OPEN;
    }
  }

  private void close(int opener) {
    if (!open.isEmpty() && line.type(open.peek()) == opener) {
      open.pop();
    }
  }

  /** A statement that begins with what begins no name. */
  private boolean nameless() {
    if (at > 0 || isOperator(type) || isReserved(type) || line.find(EQUALS) < 0) {
      return false;
    }
    boolean isPair = type == AGGREGATE || type == COUNT_OF || type == ROW_OF;
    fault(
        "line-without-name",
        line.span(at),
        isPair ? "'%s' cannot begin a name" : "a line begins with its name, and '%s' is not a name",
        isPair ? "begin the name with another word" : "write the name, then = and the formula");
    return true;
  }

  /** Whether a second form was to follow: {@code shown as ft or}. */
  private boolean isSecondForm(int or) {
    return line.type(or) == OR
        && line.type(or - 1) == UNIT
        && line.find(SHOWN_AS) >= 0
        && line.find(SHOWN_AS) < or;
  }

  /** What must stand beside {@code shown as}, {@code over}, {@code count of}. */
  private boolean side() {
    int form = isNumber(before) ? at - 2 : at - 1;
    if (line.type(form) == SHOWN_AS || isSecondForm(form)) {
      fault(
          "shown-as-what",
          line.span(form, Math.min(at, line.count() - 1)),
          "'%s' needs a unit or a step after it",
          "write a unit, such as mm or ft, or a step, such as 1/16 in");
    } else if (type == SHOWN_AS) {
      fault(
          "shown-as-not-last",
          line.span(at),
          "'%s' must be last in its line",
          "move it to the end of the line");
    } else if (line.find(SHOWN_AS) >= 0 && line.find(SHOWN_AS) < at && before == UNIT) {
      fault(
          "shown-as-not-last",
          line.span(at, line.count() - 1),
          "'%s' comes after 'shown as'",
          "move 'shown as' to the end of the line");
    } else if (type == PLUS_MINUS && closesOperand(before)) {
      fault(
          "tolerance-not-last",
          line.span(at),
          "'%s' can be used once, at the end of a formula",
          "write the value with this tolerance on its own line, and use its name here");
    } else if (before == AT_WORST && isOperator(type)) {
      fault(
          "at-worst-not-last",
          line.span(at - 1),
          "'%s' must come after both sides of a comparison",
          "write for example width <= room even at worst");
    } else if (type == OVER && line.type(operandStart(at - 1) - 1) == COUNT_OF) {
      fault(
          "count-with-over",
          line.span(operandStart(at - 1) - 1, Math.min(at + 1, line.count() - 1)),
          "'count of' does not take 'over'",
          "write 'count of' and the table's name");
    } else if (before == OVER || before == COUNT_OF || before == ROW_OF) {
      fault(
          "table-missing",
          line.span(at - 1),
          "'%s' needs the name of a table after it",
          "write the table's name after it");
    } else if (type == DOT && before == CLOSE) {
      fault(
          "dot-after-bracket",
          line.span(at),
          "a dot cannot follow a bracket",
          "write what is in the brackets on its own line, and put the dot after its name");
    } else {
      return false;
    }
    return true;
  }

  private boolean end() {
    if (type != END) {
      return false;
    }
    if (wantsMore(before)) {
      nothingAfter();
    } else if (!open.isEmpty()) {
      notClosed(open.peek());
    } else {
      return false;
    }
    return true;
  }

  private void nothingAfter() {
    fault(
        "nothing-follows",
        line.span(at - 1),
        "nothing comes after '%s'",
        isOperator(before) ? "write what it applies to, or remove it" : "write what follows it");
  }

  private void notClosed(int opener) {
    Span span = line.span(opener);
    switch (line.type(opener)) {
      case OPEN ->
          fault("bracket-not-closed", span, "this bracket is not closed", "write ) where it ends");
      case IF ->
          fault(
              "if-not-whole",
              span,
              has(THEN, opener) ? "this 'if' has no 'else'" : "this 'if' has no 'then'",
              "write if … then … else …");
      default ->
          fault(
              "over-missing",
              span,
              "this '%s' does not name its table",
              "write " + span.text() + " … over and the table's name");
    }
  }

  private boolean has(int wanted, int from) {
    for (int i = from; i < at; i++) {
      if (line.type(i) == wanted) {
        return true;
      }
    }
    return false;
  }

  /** {@code true width}: a reserved word before the other words of a name. */
  private boolean reservedStart() {
    boolean starts = (before == TRUE || before == FALSE) && type == WORD;
    if (starts) {
      reserved(at - 1);
    }
    return starts;
  }

  private void reserved(int index) {
    fault("reserved-word", line.span(index), "'%s' cannot be a word of a name", RESERVED_WORDS);
  }

  private boolean missingOperator() {
    boolean sideBySide = closesOperand(before) && opensOperand(type);
    if (!sideBySide || (before == WORD && isReserved(type))) {
      return false;
    }
    Span left = line.span(operandStart(at - 1), at - 1);
    Span right = line.span(at, operandEnd(at));
    if (before == TEXT) {
      faults.fault(
          "text-goes-on",
          left.to(right),
          "'%s' follows the closing quote of %s".formatted(right.text(), left.text()),
          "put the whole text in one pair of quotes; write a quote inside a text twice");
    } else if (before == WORD && isNumber(type)) {
      faults.fault(
          "number-in-name",
          left.to(right),
          "there is a number next to the name '%s'".formatted(left.text()),
          "write an operator between them; in a name, join digits to a word: mat2");
    } else {
      faults.fault(
          "operator-missing",
          left.to(right),
          "an operator is missing between '%s' and '%s'".formatted(left.text(), right.text()),
          "write + - * or / between them");
    }
    return true;
  }

  private int operandStart(int index) {
    int start = line.type(index) == UNIT ? index - 1 : index;
    while (line.type(start) == WORD && line.type(start - 1) == WORD) {
      start--;
    }
    return Math.max(0, start);
  }

  private int operandEnd(int index) {
    int end = line.type(index + 1) == UNIT ? index + 1 : index;
    while (line.type(end) == WORD && line.type(end + 1) == WORD) {
      end++;
    }
    return end;
  }

  /** A reserved word beside the words of a name. */
  private boolean wordInName() {
    boolean followsOpener = at > 0 && (wantsMore(before) || before == OPEN);
    if (!isReserved(type) || followsOpener) {
      return false;
    }
    if (type == OVER && aggregateInName() > 0) {
      int start = aggregateInName();
      Span name = line.span(operandStart(at - 1), start - 1);
      fault(
          "operator-missing",
          name.to(line.span(start + 1)),
          "an operator is missing between '%s' and '%s'"
              .formatted(name.text(), line.span(start, start + 1).text()),
          "write + - * or / between them");
    } else if (!(type == OVER && has(AGGREGATE, 0)) && (before == WORD || line.isWord(at + 1))) {
      reserved(at);
    } else {
      fault("word-out-of-place", line.span(at), "'%s' does not belong here", belongsTo());
    }
    return true;
  }

  /** Where {@code sum of} or its like stands amid the words of the name before; 0 if nowhere. */
  private int aggregateInName() {
    for (int i = operandStart(at - 1) + 1; i < at - 1; i++) {
      if (CompoundTokens.isAggregate(line, i)) {
        return i;
      }
    }
    return 0;
  }

  private String belongsTo() {
    return switch (type) {
      case THEN, ELSE -> "write if … then … else …";
      case OVER, WHERE -> "write sum of … over … where …";
      case SAY -> "write caution when … say \"…\"";
      case BECAUSE -> "use 'because' only in a line that begins with 'change'";
      default -> "remove it, or write what is missing";
    };
  }

  private boolean bracket() {
    if (type != CLOSE) {
      return false;
    }
    boolean opened = open.stream().anyMatch(i -> line.type(i) == OPEN);
    if (!opened) {
      fault(
          "bracket-not-opened",
          line.span(at),
          "this bracket was not opened",
          "remove it, or write ( where it opens");
    } else if (wantsMore(before)) {
      nothingAfter();
    } else if (line.type(open.peek()) != OPEN) {
      notClosed(open.peek());
    } else {
      fault(
          "empty-brackets",
          line.span(at - 1, at),
          "these brackets are empty",
          "write what is missing");
    }
    return true;
  }

  private boolean nothingBetween() {
    boolean opens = before == OPEN || wantsMore(before) || at == 0;
    if (!opens || !(isOperator(type) || wantsMore(type))) {
      return false;
    }
    if (at == 0) {
      fault(
          "nothing-before",
          line.span(at),
          "nothing comes before '%s'",
          "write what it applies to, or remove it");
    } else {
      Span both = line.span(at - 1, at);
      faults.fault(
          "nothing-between",
          both,
          "there is nothing between '%s' and '%s'"
              .formatted(line.span(at - 1).text(), line.span(at).text()),
          both.text().equals("==") ? "write one =" : "write what is missing, or remove one");
    }
    return true;
  }

  private boolean sign() {
    switch (type) {
      case COMMA ->
          fault(
              "stray-comma",
              line.span(at),
              "a comma can be used between the arguments of a function only",
              "remove it");
      case DOT ->
          fault(
              "stray-dot",
              line.span(at),
              "a dot can be used between two names only",
              "write for example moulding.face");
      case COLON ->
          fault(
              "stray-colon",
              line.span(at),
              "a colon can be used between a name and its kind only",
              "write for example width : length");
      default -> {
        return false;
      }
    }
    return true;
  }

  private void fault(String code, Span span, String message, String repair) {
    faults.fault(
        code, span, message.contains("%s") ? message.formatted(span.text()) : message, repair);
  }
}
