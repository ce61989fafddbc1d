package org.battenbook.parse;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.DateLiteral;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.QuantityLiteral;
import org.battenbook.syntax.QuantityPart;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.syntax.TruthLiteral;
import org.jspecify.annotations.Nullable;

/**
 * Reads a cell that is a literal, without tokens or trees: a table may have a hundred thousand
 * rows. Whatever it is not sure of it leaves to the formula's way, which has the messages; what it
 * does read, that way would read the same.
 */
final class LiteralCell {
  private static final int MOST_DIGITS = 9;

  private final SourceText source;
  private final String text;
  private int at;
  private int end;

  LiteralCell(SourceText source) {
    this.source = source;
    this.text = source.text();
  }

  /** The literal between two offsets; absent if it is none, or not surely one. */
  @Nullable Expression read(int start, int cellEnd) {
    at = start;
    end = cellEnd;
    char first = text.charAt(start);
    if (first == '"') {
      return quoted();
    }
    if (isDigit(first) || NumberText.isVulgar(first)) {
      return isDate() ? date() : quantity();
    }
    return truth();
  }

  private Span span(int start) {
    return source.span(start, end);
  }

  private @Nullable Expression quoted() {
    Span span = span(at);
    int close = text.indexOf('"', at + 1);
    while (close >= 0 && close + 1 < end && text.charAt(close + 1) == '"') {
      close = text.indexOf('"', close + 2);
    }
    return close == end - 1 && close > at
        ? new TextLiteral(0, span, TextBuilder.inCell(span))
        : null;
  }

  private @Nullable Expression truth() {
    int length = end - at;
    boolean yes = is("yes", length) || is("true", length);
    boolean no = is("no", length) || is("false", length);
    return yes || no ? new TruthLiteral(0, span(at), yes) : null;
  }

  private boolean is(String word, int length) {
    return word.length() == length && text.regionMatches(true, at, word, 0, length);
  }

  private boolean isDate() {
    if (end - at != 10 || text.charAt(at + 4) != '-' || text.charAt(at + 7) != '-') {
      return false;
    }
    for (int i = at; i < end; i++) {
      if (!isDigit(text.charAt(i)) && i != at + 4 && i != at + 7) {
        return false;
      }
    }
    return true;
  }

  private @Nullable Expression date() {
    try {
      return new DateLiteral(0, span(at), LocalDate.parse(text.substring(at, end)));
    } catch (DateTimeException none) {
      return null;
    }
  }

  private @Nullable Expression quantity() {
    int start = at;
    QuantityPart first = part();
    if (first == null) {
      return null;
    }
    List<QuantityPart> parts = List.of(first);
    if (at < end && first.unit().equals("ft")) {
      QuantityPart inches = part();
      if (inches == null || !inches.unit().equals("in") || isAFoot(inches)) {
        return null;
      }
      parts = List.of(first, inches);
    }
    return at == end ? new QuantityLiteral(0, span(start), parts) : null;
  }

  private static boolean isAFoot(QuantityPart inches) {
    return inches.number().compareTo(Rational.of(12)) >= 0;
  }

  /** A number with its unit, and the spaces behind it. */
  private @Nullable QuantityPart part() {
    int start = at;
    Rational number = number();
    if (number == null) {
      return null;
    }
    Span written = source.span(start, at);
    skipSpaces();
    if (at == end) {
      return written.text().indexOf('-') < 0 ? new QuantityPart(number, "", written) : null;
    }
    int unitStart = at;
    String unit = at == written.end() ? markOrUnit() : unit();
    Span unitSpan = source.span(unitStart, at);
    skipSpaces();
    return unit == null ? null : new QuantityPart(number, unit, unitSpan);
  }

  private void skipSpaces() {
    while (at < end && text.charAt(at) == ' ') {
      at++;
    }
  }

  /** What is glued to a number: a mark for feet or inches, or a unit. */
  private @Nullable String markOrUnit() {
    char mark = text.charAt(at);
    boolean inches = mark == '"' || mark == '″' || mark == '”';
    boolean feet = mark == '\'' || mark == '′' || mark == '’';
    if (inches || feet) {
      at++;
      return inches ? "in" : "ft";
    }
    return isPowerOfTen() ? null : unit();
  }

  private boolean isPowerOfTen() {
    return text.charAt(at) == 'e' || text.charAt(at) == 'E';
  }

  /** A word, or words with signs of division and powers glued to them. */
  private @Nullable String unit() {
    int start = at;
    if (text.charAt(at) == '%') {
      at++;
    }
    while (at < end && isOfUnit(text.charAt(at))) {
      at++;
    }
    String unit = text.substring(start, at);
    return isPlainUnit(unit) ? unit : null;
  }

  private static boolean isOfUnit(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '/' || c == '^' || isDigit(c);
  }

  /** One symbol, perhaps over another: what else there may be is for the longer way. */
  private static boolean isPlainUnit(String unit) {
    boolean lettersOnly = unit.chars().allMatch(Character::isLetter) && !unit.isEmpty();
    return unit.equals("%")
        || lettersOnly
        || unit.matches("[A-Za-z]+(\\^\\d)?(/[A-Za-z]+(\\^\\d)?)?");
  }

  private @Nullable Rational number() {
    int start = at;
    long whole = digits();
    if (at - start > MOST_DIGITS) {
      return null;
    }
    if (at == start) {
      return at < end && NumberText.isVulgar(text.charAt(at)) ? vulgar(0) : null;
    }
    if (at == end) {
      return Rational.of(whole);
    }
    return switch (text.charAt(at)) {
      case '.' -> decimal(whole);
      case '/' -> fraction(0, whole);
      case ' ', '-' -> mixed(whole);
      default -> NumberText.isVulgar(text.charAt(at)) ? vulgar(whole) : Rational.of(whole);
    };
  }

  private @Nullable Rational decimal(long whole) {
    int point = at++;
    long places = digits();
    int count = at - point - 1;
    if (count == 0 || count > MOST_DIGITS) {
      return null;
    }
    long scale = 1;
    for (int i = 0; i < count; i++) {
      scale *= 10;
    }
    return Rational.of(whole * scale + places, scale);
  }

  /** {@code 15 3/8} or {@code 15-3/8}; or the whole alone, with its unit behind a space. */
  private @Nullable Rational mixed(long whole) {
    int behindWhole = at;
    boolean hyphen = text.charAt(at) == '-';
    at++;
    if (at < end && !hyphen && NumberText.isVulgar(text.charAt(at))) {
      return vulgar(whole);
    }
    int start = at;
    long top = digits();
    boolean isFraction =
        at > start && at - start <= MOST_DIGITS && at < end && text.charAt(at) == '/';
    if (isFraction) {
      return fraction(whole, top);
    }
    at = behindWhole;
    return hyphen ? null : Rational.of(whole);
  }

  private @Nullable Rational fraction(long whole, long top) {
    int bar = at++;
    long bottom = digits();
    int count = at - bar - 1;
    boolean goesOn = at < end && text.charAt(at) == '/';
    return bottom == 0 || count > MOST_DIGITS || goesOn
        ? null
        : Rational.of(whole).plus(Rational.of(top, bottom));
  }

  private Rational vulgar(long whole) {
    Rational part = NumberText.read(text.substring(at, at + 1));
    at++;
    return Rational.of(whole).plus(part);
  }

  /** The number that the next digits spell, and moves past them. */
  private long digits() {
    long number = 0;
    while (at < end && isDigit(text.charAt(at))) {
      number = number * 10 + (text.charAt(at) - '0');
      at++;
    }
    return number;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
