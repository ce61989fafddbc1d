package org.battenbook.parse;

import static org.battenbook.parse.generated.WorkbookParser.*;

import java.util.Set;

/** The kinds of tokens that messages tell apart. */
final class TokenKinds {
  private static final Set<Integer> NUMBERS =
      Set.of(WHOLE, DECIMAL, FRACTION, MIXED, INCHES, FEET, DATE);

  private static final Set<Integer> OPENS_OPERAND =
      Set.of(WORD, TEXT, TRUE, FALSE, OPEN, IF, NOT, AGGREGATE, COUNT_OF, ROW_OF);

  private static final Set<Integer> CLOSES_OPERAND = Set.of(WORD, TEXT, TRUE, FALSE, CLOSE, UNIT);

  private static final Set<Integer> OPERATORS =
      Set.of(
          PLUS_MINUS,
          PLUS,
          MINUS,
          TIMES,
          SLASH,
          POWER,
          EQUALS,
          UNEQUAL,
          LESS,
          AT_MOST,
          GREATER,
          AT_LEAST,
          AND,
          OR,
          NOT,
          ROUND);

  private static final Set<Integer> WANTS_MORE =
      Set.of(
          IF, THEN, ELSE, OVER, WHERE, WITH, COMMA, DOT, COLON, SAY, BECAUSE, AGGREGATE, COUNT_OF,
          ROW_OF, SHOWN_AS);

  private static final Set<Integer> RESERVED =
      Set.of(IF, THEN, ELSE, AND, OR, NOT, OVER, WHERE, ROUNDED, SHOWN, SAY, BECAUSE, TRUE, FALSE);

  private TokenKinds() {}

  static boolean isNumber(int type) {
    return NUMBERS.contains(type);
  }

  static boolean opensOperand(int type) {
    return isNumber(type) || OPENS_OPERAND.contains(type);
  }

  static boolean closesOperand(int type) {
    return isNumber(type) || CLOSES_OPERAND.contains(type);
  }

  static boolean isOperator(int type) {
    return OPERATORS.contains(type);
  }

  /** Whether something must follow. */
  static boolean wantsMore(int type) {
    return isOperator(type) || WANTS_MORE.contains(type);
  }

  /** Whether it is a word that no name may hold. */
  static boolean isReserved(int type) {
    return RESERVED.contains(type);
  }
}
