package org.battenbook.parse;

import static org.battenbook.parse.generated.WorkbookParser.*;

import java.util.Locale;
import java.util.Map;
import org.antlr.v4.runtime.CommonToken;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * Splits a stretch of text into tokens, at each place the longest that there is. By hand: a command
 * reads thousands of lines before it answers, and a lexer driven by tables takes longer to get
 * ready than this takes for all of them.
 */
final class TokenScanner {
  /** The words that no name may hold. */
  private static final Map<String, Integer> KEYWORDS =
      Map.ofEntries(
          Map.entry("if", IF),
          Map.entry("then", THEN),
          Map.entry("else", ELSE),
          Map.entry("and", AND),
          Map.entry("or", OR),
          Map.entry("not", NOT),
          Map.entry("over", OVER),
          Map.entry("where", WHERE),
          Map.entry("rounded", ROUNDED),
          Map.entry("shown", SHOWN),
          Map.entry("say", SAY),
          Map.entry("because", BECAUSE),
          Map.entry("true", TRUE),
          Map.entry("false", FALSE));

  private static final int LETTERS =
      (1 << Character.UPPERCASE_LETTER)
          | (1 << Character.LOWERCASE_LETTER)
          | (1 << Character.TITLECASE_LETTER)
          | (1 << Character.MODIFIER_LETTER)
          | (1 << Character.OTHER_LETTER);

  private static final int WITHIN_WORDS =
      LETTERS
          | (1 << Character.NON_SPACING_MARK)
          | (1 << Character.COMBINING_SPACING_MARK)
          | (1 << Character.ENCLOSING_MARK)
          | (1 << Character.DECIMAL_DIGIT_NUMBER);

  private final String text;
  private final int end;
  private int at;

  TokenScanner(Span where) {
    this.text = where.source().text();
    this.at = where.start();
    this.end = where.end();
  }

  /** The next token; absent at the end. */
  @Nullable CommonToken next() {
    while (at < end && isSpace(text.charAt(at))) {
      at++;
    }
    if (at >= end) {
      return null;
    }
    char first = text.charAt(at);
    if (NumberScanner.begins(text, at, end)) {
      NumberScanner number = new NumberScanner(text, at, end);
      return token(number.type(), number.end());
    }
    int wordEnd = wordEnd();
    if (wordEnd > at) {
      String word = text.substring(at, wordEnd).toLowerCase(Locale.ROOT);
      return token(KEYWORDS.getOrDefault(word, WORD), wordEnd);
    }
    return switch (first) {
      case '"' -> quoted();
      case '“' -> quotedByPair();
      case '-' -> text.startsWith("--", at) && at + 1 < end ? note() : token(MINUS, at + 1);
      default -> sign(first);
    };
  }

  private CommonToken token(int type, int tokenEnd) {
    CommonToken token = new CommonToken(type, text.substring(at, tokenEnd));
    token.setStartIndex(at);
    token.setStopIndex(tokenEnd - 1);
    at = tokenEnd;
    return token;
  }

  private int wordEnd() {
    int wordEnd = at;
    int wanted = LETTERS;
    while (wordEnd < end) {
      int character = text.codePointAt(wordEnd);
      if ((wanted & (1 << Character.getType(character))) == 0) {
        break;
      }
      wordEnd += Character.charCount(character);
      wanted = WITHIN_WORDS;
    }
    return wordEnd;
  }

  /** A text in straight quotes, each within it written twice; closed or not. */
  private CommonToken quoted() {
    int close = at + 1;
    while (close < end && !isBreak(text.charAt(close))) {
      if (text.charAt(close) == '"') {
        if (!is('"', close + 1)) {
          return token(TEXT, close + 1);
        }
        close++;
      }
      close++;
    }
    return token(OPEN_TEXT, close);
  }

  /** A text between two quotes that differ; closed or not. */
  private CommonToken quotedByPair() {
    int close = at + 1;
    while (close < end && text.charAt(close) != '”' && !isBreak(text.charAt(close))) {
      close++;
    }
    return is('”', close) ? token(TEXT, close + 1) : token(OPEN_TEXT, close);
  }

  /** All that follows on its line, where a space follows. */
  private CommonToken note() {
    int noteEnd = at + 2;
    if (is(' ', noteEnd) || is('\t', noteEnd)) {
      while (noteEnd < end && !isBreak(text.charAt(noteEnd))) {
        noteEnd++;
      }
    }
    return token(NOTE, noteEnd);
  }

  private CommonToken sign(char sign) {
    return switch (sign) {
      case '+' -> {
        boolean orMinus = is('/', at + 1) && (is('-', at + 2) || is('−', at + 2));
        yield orMinus ? token(PLUS_MINUS, at + 3) : token(PLUS, at + 1);
      }
      case '<' -> {
        if (is('>', at + 1)) {
          yield token(UNEQUAL, at + 2);
        }
        yield is('=', at + 1) ? token(AT_MOST, at + 2) : token(LESS, at + 1);
      }
      case '>' -> is('=', at + 1) ? token(AT_LEAST, at + 2) : token(GREATER, at + 1);
      case '(' -> token(OPEN, at + 1);
      case ')' -> token(CLOSE, at + 1);
      case ',' -> token(COMMA, at + 1);
      case '.' -> token(DOT, at + 1);
      case ':' -> token(COLON, at + 1);
      case '|' -> token(BAR, at + 1);
      case '±' -> token(PLUS_MINUS, at + 1);
      case '−' -> token(MINUS, at + 1);
      case '*', '×' -> token(TIMES, at + 1);
      case '/', '÷' -> token(SLASH, at + 1);
      case '^' -> token(POWER, at + 1);
      case '%' -> token(PERCENT, at + 1);
      case '°' -> token(DEGREE, at + 1);
      case '=' -> token(EQUALS, at + 1);
      case '≠' -> token(UNEQUAL, at + 1);
      case '≤' -> token(AT_MOST, at + 1);
      case '≥' -> token(AT_LEAST, at + 1);
      default -> token(STRAY, at + Character.charCount(text.codePointAt(at)));
    };
  }

  private boolean is(char wanted, int index) {
    return index < end && text.charAt(index) == wanted;
  }

  private static boolean isSpace(char c) {
    return isBreak(c) || NumberScanner.isBlank(c);
  }

  private static boolean isBreak(char c) {
    return c == '\n' || c == '\r';
  }
}
