package org.battenbook.parse;

import org.battenbook.parse.generated.WorkbookParser;

/**
 * The longest number or date that begins at a place of a text: {@code 15}, {@code 2.5}, {@code
 * 3/8}, {@code 15 3/8}, {@code 15½}, each with a mark for feet or inches right behind it; and what
 * looks like one and is none.
 */
final class NumberScanner {
  private final String text;
  private final int limit;
  private int at;
  private int type;

  /** Reads what {@link #begins} there. */
  NumberScanner(String text, int start, int limit) {
    this.text = text;
    this.limit = limit;
    this.at = start;
    read();
  }

  /** Whether a number, or what looks like one, begins there. */
  static boolean begins(String text, int start, int limit) {
    char first = text.charAt(start);
    return isDigit(first)
        || NumberText.isVulgar(first)
        || (first == '.' && start + 1 < limit && isDigit(text.charAt(start + 1)));
  }

  int type() {
    return type;
  }

  /** The offset behind it. */
  int end() {
    return at;
  }

  private void read() {
    int start = at;
    if (text.charAt(at) == '.') {
      takeAll(at + 1, WorkbookParser.NEAR_NUMBER);
    } else if (NumberText.isVulgar(text.charAt(at))) {
      take(at + 1, WorkbookParser.FRACTION);
      mark();
    } else {
      takeAll(at, WorkbookParser.WHOLE);
      if (!(at - start == 4 && date()) && !nearNumber()) {
        fraction();
        mark();
      }
    }
  }

  /** Up to a place, as a type. */
  private void take(int end, int asType) {
    at = end;
    type = asType;
  }

  /** All digits from a place on, as a type. */
  private void takeAll(int from, int asType) {
    take(digitsEnd(from), asType);
  }

  /** Whether the four digits before are the year of a date, or of what looks like one. */
  private boolean date() {
    int month = digitsEnd(at + 1) - at - 1;
    int dash = at + 1 + month;
    if (!is('-', at) || month < 1 || month > 2 || !is('-', dash) || !isDigitAt(dash + 1)) {
      return false;
    }
    int day = Math.min(2, digitsEnd(dash + 1) - dash - 1);
    boolean isWhole = month == 2 && day == 2;
    take(dash + 1 + day, isWhole ? WorkbookParser.DATE : WorkbookParser.NEAR_DATE);
    return true;
  }

  /** Whether the digits before end in a point, or are parted by commas. */
  private boolean nearNumber() {
    if (is('.', at) && !isDigitAt(at + 1)) {
      take(at + 1, WorkbookParser.NEAR_NUMBER);
      return true;
    }
    boolean parted = false;
    while (is(',', at) && isDigitAt(at + 1)) {
      takeAll(at + 1, WorkbookParser.NEAR_NUMBER);
      parted = true;
    }
    if (parted && is('.', at) && isDigitAt(at + 1)) {
      takeAll(at + 1, WorkbookParser.NEAR_NUMBER);
    }
    return parted;
  }

  /**
   * Decimals behind the digits before, or a fraction that they are of, or that stands with them.
   */
  private void fraction() {
    int blanks = at;
    while (blanks < limit && isBlank(text.charAt(blanks))) {
      blanks++;
    }
    int vulgar = blanks - at <= 1 ? blanks : at;
    int over = is('-', at) ? at + 1 : blanks;
    int bar = over > at ? digitsEnd(over) : at;
    if (is('.', at) && isDigitAt(at + 1)) {
      takeAll(at + 1, WorkbookParser.DECIMAL);
    } else if (isBar(at) && isDigitAt(at + 1)) {
      takeAll(at + 1, WorkbookParser.FRACTION);
    } else if (vulgar < limit && NumberText.isVulgar(text.charAt(vulgar))) {
      take(vulgar + 1, WorkbookParser.MIXED);
    } else if (bar > over && isBar(bar) && isDigitAt(bar + 1)) {
      takeAll(bar + 1, WorkbookParser.MIXED);
    }
  }

  private void mark() {
    boolean mayBeFeet = type == WorkbookParser.WHOLE || type == WorkbookParser.DECIMAL;
    if (mayBeFeet && (is('\'', at) || is('′', at) || is('’', at))) {
      take(at + 1, WorkbookParser.FEET);
    } else if (is('"', at) || is('″', at) || is('”', at)) {
      take(at + 1, WorkbookParser.INCHES);
    }
  }

  private int digitsEnd(int from) {
    int digits = from;
    while (isDigitAt(digits)) {
      digits++;
    }
    return digits;
  }

  private boolean isDigitAt(int index) {
    return index < limit && isDigit(text.charAt(index));
  }

  private boolean isBar(int index) {
    return is('/', index) || is('⁄', index);
  }

  private boolean is(char wanted, int index) {
    return index < limit && text.charAt(index) == wanted;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** A space within a number. */
  static boolean isBlank(char c) {
    return switch (c) {
      case ' ', '\t', '\u00A0', '\u2007', '\u2009', '\u202F', '\uFEFF' -> true;
      default -> false;
    };
  }
}
