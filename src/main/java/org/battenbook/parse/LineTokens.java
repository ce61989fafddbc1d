package org.battenbook.parse;

import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.battenbook.parse.generated.WorkbookParser;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;

/**
 * One logical line as the parser takes it.
 *
 * @param tokens without notes and spaces, closed by an end-of-file token
 * @param note the words after {@code --}, or empty
 */
record LineTokens(SourceText source, List<Token> tokens, String note) {

  static final int END = Token.EOF;

  int type(int index) {
    return index < 0 || index >= tokens.size() ? END : tokens.get(index).getType();
  }

  Token get(int index) {
    return tokens.get(index);
  }

  /** How many tokens it has, its end not counted. */
  int count() {
    return tokens.size() - 1;
  }

  /** The span of a token; that of the end is empty, just behind the last word. */
  Span span(int index) {
    return index >= count() && count() > 0
        ? source.span(end(tokens.get(count() - 1)), end(tokens.get(count() - 1)))
        : span(source, tokens.get(index));
  }

  /** From one token to another, both included. */
  Span span(int first, int last) {
    return span(first).to(span(last));
  }

  /** All of it, without its notes. */
  Span whole() {
    return count() == 0 ? span(0) : span(0, count() - 1);
  }

  /** The first token of a type, or -1. */
  int find(int type) {
    for (int i = 0; i < count(); i++) {
      if (type(i) == type) {
        return i;
      }
    }
    return -1;
  }

  /** Whether no space stands between a token and the one before. */
  boolean isGlued(int index) {
    return index > 0
        && index < count()
        && end(tokens.get(index - 1)) == tokens.get(index).getStartIndex();
  }

  boolean isWord(int index) {
    return type(index) == WorkbookParser.WORD;
  }

  static int end(Token token) {
    return token.getStopIndex() + 1;
  }

  static Span span(SourceText source, Token token) {
    return source.span(token.getStartIndex(), Math.max(end(token), token.getStartIndex()));
  }

  static Span span(SourceText source, ParserRuleContext context) {
    return source.span(context.getStart().getStartIndex(), end(context.getStop()));
  }
}
