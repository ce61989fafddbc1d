package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.parse.generated.WorkbookParser.FormulaContext;
import org.battenbook.parse.generated.WorkbookParser.SoleFormulaContext;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.TextPart;
import org.jspecify.annotations.Nullable;

/**
 * Reads a text in quotes. A quote inside is doubled; where a text may have holes, so is a brace
 * that is only a brace.
 */
final class TextBuilder {
  private final FormulaBuilder formula;
  private final SourceText source;
  private final LineFaults faults;
  private final List<TextPart> parts = new ArrayList<>();
  private final StringBuilder words = new StringBuilder();

  TextBuilder(FormulaBuilder formula, SourceText source, LineFaults faults) {
    this.formula = formula;
    this.source = source;
    this.faults = faults;
  }

  /** The words of a text without holes, its quotes taken off. */
  static String words(Span quoted) {
    String text = quoted.text();
    String inside = text.substring(1, text.length() - 1);
    return text.charAt(0) == '"' ? inside.replace("\"\"", "\"") : inside;
  }

  /** The parts of a text of a row's cell, in which a brace is only a brace. */
  static List<TextPart> inCell(Span quoted) {
    String words = words(quoted);
    return words.isEmpty() ? List.of() : List.of(new TextPart.Words(words));
  }

  /**
   * The parts of a text of a formula.
   *
   * @param mayShowValues whether the text is a message, or what a line gives
   */
  List<TextPart> read(Span quoted, boolean mayShowValues) {
    String text = source.text();
    boolean doubling = text.charAt(quoted.start()) == '"';
    int end = quoted.end() - 1;
    int at = quoted.start() + 1;
    while (at < end) {
      char c = text.charAt(at);
      boolean doubled = at + 1 < end && text.charAt(at + 1) == c;
      if (c == '{' && !doubled) {
        at = mayShowValues ? hole(at, end) : refuseHole(at, end);
        continue;
      }
      refuseLooseBrace(at, c, doubled);
      words.append(c);
      boolean isPair = doubled && (c == '{' || c == '}' || (c == '"' && doubling));
      at += isPair ? 2 : 1;
    }
    endWords();
    return parts;
  }

  private void refuseLooseBrace(int at, char c, boolean doubled) {
    if (c == '}' && !doubled) {
      faults.fault(
          "brace-not-opened",
          source.span(at, at + 1),
          "this brace was not opened",
          "write {name} to show a value, or }} for a brace");
    }
  }

  private int refuseHole(int open, int end) {
    faults.fault(
        "hole-out-of-place",
        source.span(open, open + 1),
        "a value cannot be shown inside this text",
        "braces show a value in messages and in the texts of lines only; write {{ for a brace");
    return end;
  }

  /** Reads a hole from its brace on, and gives where the text goes on behind it. */
  private int hole(int open, int end) {
    int close = source.text().indexOf('}', open);
    if (close < 0 || close >= end) {
      faults.fault(
          "brace-not-closed",
          source.span(open, open + 1),
          "this brace is not closed",
          "write {name} to show a value, or {{ for a brace");
      return end;
    }
    endWords();
    TextPart hole = read(source.span(open + 1, close), source.span(open, close + 1));
    if (hole != null) {
      parts.add(hole);
    }
    return close + 1;
  }

  private void endWords() {
    if (!words.isEmpty()) {
      parts.add(new TextPart.Words(words.toString()));
      words.setLength(0);
    }
  }

  private @Nullable TextPart read(Span inside, Span braces) {
    LineTokens tokens = TokenReader.formula(inside, faults);
    if (tokens.count() == 0) {
      faults.fault("hole-empty", braces, "these braces are empty", "write {name} to show a value");
    }
    if (faults.any()) {
      return null;
    }
    SoleFormulaContext tree = GrammarRun.soleFormula(tokens, faults);
    return tree == null ? null : hole(tree.formula(), inside);
  }

  private @Nullable TextPart hole(FormulaContext tree, Span inside) {
    Expression shown = formula.hole(tree.expression(0));
    if (shown instanceof Reference reference && tree.PLUS_MINUS() == null) {
      return new TextPart.Hole(reference, formula.shownAs(tree));
    }
    faults.fault(
        "hole-not-a-name",
        inside,
        "braces can hold a name and 'shown as' only",
        "write this formula on its own line, and use that line's name in the braces");
    return null;
  }
}
