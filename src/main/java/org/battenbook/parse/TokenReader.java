package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.battenbook.parse.generated.WorkbookLexer;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;

/**
 * The way from the text of one logical line to the tokens that the parser takes: lexer, notes set
 * aside, statement heads, words that belong together, units.
 */
final class TokenReader {
  private final SourceText source;
  private final LineFaults faults;

  private TokenReader(SourceText source, LineFaults faults) {
    this.source = source;
    this.faults = faults;
  }

  /** The tokens of a statement, its head marked as such. */
  static LineTokens statement(Span where, LineFaults faults) {
    return new TokenReader(where.source(), faults).read(where, true);
  }

  /** The tokens of a formula, or of headings. */
  static LineTokens formula(Span where, LineFaults faults) {
    return new TokenReader(where.source(), faults).read(where, false);
  }

  private LineTokens read(Span where, boolean isStatement) {
    List<Token> tokens = new ArrayList<>();
    StringJoiner note = new StringJoiner(" ");
    WorkbookLexer lexer = new WorkbookLexer(new SourceCharStream(where));
    lexer.removeErrorListeners();
    for (Token token = lexer.nextToken(); token.getType() != Token.EOF; token = lexer.nextToken()) {
      if (token.getType() == WorkbookLexer.NOTE) {
        note.add(note(token));
      } else {
        tokens.add(token);
      }
    }
    tokens.add(end(tokens, where));
    LineTokens plain = new LineTokens(source, tokens, note.toString().strip());
    LineTokens line = isStatement ? StatementHeads.mark(plain) : plain;
    MalformedTokens.check(line, faults);
    UsualSlips.check(line, faults);
    return faults.any() ? line : Nesting.check(CompoundTokens.join(line, faults), faults);
  }

  private String note(Token token) {
    String text = token.getText();
    int start = token.getStartIndex();
    String all = source.text();
    boolean openBefore = start == 0 || isSpace(all.charAt(start - 1));
    boolean openAfter =
        text.length() > 2
            || LineTokens.end(token) == all.length()
            || isSpace(all.charAt(LineTokens.end(token)));
    if (!openBefore || !openAfter) {
      faults.fault(
          "glued-note",
          source.span(start, start + 2),
          "a note needs a space before and after its '--'",
          "write ' -- ' before a note, or '- -' to take away a negative number");
    }
    return text.substring(2).strip();
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\uFEFF';
  }

  private static Token end(List<Token> tokens, Span where) {
    int at = tokens.isEmpty() ? where.start() : LineTokens.end(tokens.get(tokens.size() - 1));
    CommonToken end = new CommonToken(Token.EOF, "");
    end.setStartIndex(at);
    end.setStopIndex(at - 1);
    return end;
  }
}
