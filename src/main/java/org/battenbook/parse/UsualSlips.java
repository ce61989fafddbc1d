package org.battenbook.parse;

import java.util.Set;
import org.battenbook.parse.generated.WorkbookLexer;

/**
 * Recognizes sizes and dates as people write them elsewhere, and says how to write them here. The
 * first slip of a line is reported.
 */
final class UsualSlips {
  private static final Set<String> SQUARE = Set.of("sq", "square");
  private static final Set<String> CUBIC = Set.of("cu", "cubic");

  private final LineTokens line;
  private final LineFaults faults;

  private UsualSlips(LineTokens line, LineFaults faults) {
    this.line = line;
    this.faults = faults;
  }

  static void check(LineTokens line, LineFaults faults) {
    UsualSlips slips = new UsualSlips(line, faults);
    for (int i = 0; i < line.count() && !faults.any(); i++) {
      if (slips.isNumber(i)) {
        slips.afterNumber(i);
      }
    }
  }

  private void afterNumber(int at) {
    twoSizes(at);
    unitWithPeriod(at);
    spacedFraction(at);
    wordedPower(at);
    slashedDate(at);
  }

  /** {@code 11x14}, {@code 11 x 14 in}, {@code 11" x 14"}. */
  private void twoSizes(int first) {
    int cross = line.isWord(first + 1) && !isCross(first + 1) ? first + 2 : first + 1;
    if (!isCross(cross)) {
      return;
    }
    boolean glued = text(cross).length() > 1;
    int second = glued ? cross : cross + 1;
    boolean isPair = glued ? line.isGlued(cross) : isNumber(second);
    if (!isPair) {
      return;
    }
    int last = line.isWord(second + 1) ? second + 1 : second;
    String height = glued ? text(cross).substring(1) : text(second);
    report(
        "two-sizes",
        first,
        last,
        "'%s' is two sizes in one",
        "put width and height in two cells: %s | %s"
            .formatted(
                size(text(first), cross - first > 1 ? text(first + 1) : unit(second, last)),
                size(height, unit(second, last))));
  }

  private boolean isCross(int index) {
    return line.isWord(index) && text(index).matches("[xX]\\d*");
  }

  private String unit(int number, int last) {
    return last > number ? text(last) : "in";
  }

  private static String size(String number, String unit) {
    boolean marked = !Character.isLetterOrDigit(number.charAt(number.length() - 1));
    return marked ? number : number + " " + unit;
  }

  /** {@code 9 in.} */
  private void unitWithPeriod(int number) {
    int point = number + 2;
    boolean isUnit = line.isWord(number + 1) && line.type(point) == WorkbookLexer.DOT;
    if (isUnit && line.isGlued(point) && !line.isWord(point + 1)) {
      report(
          "unit-with-period",
          number,
          point,
          "'%s' has a period after its unit",
          "write " + line.span(number, number + 1).text());
    }
  }

  /** {@code 9 1/ 2 in}: two whole numbers side by side, the second divided. */
  private void spacedFraction(int whole) {
    boolean divided = isWhole(whole + 1) && line.type(whole + 2) == WorkbookLexer.SLASH;
    if (isWhole(whole) && divided && isWhole(whole + 3)) {
      String written = "%s %s/%s".formatted(text(whole), text(whole + 1), text(whole + 3));
      String unit = line.isWord(whole + 4) ? " " + text(whole + 4) : "";
      report(
          "space-in-fraction",
          whole,
          whole + 3,
          "the fraction in '%s' has a space in it",
          "write " + written + unit);
    }
  }

  /** {@code 9 sq ft}. */
  private void wordedPower(int number) {
    String word = CompoundTokens.word(line, number + 1);
    boolean isPower = SQUARE.contains(word) || CUBIC.contains(word);
    if (isPower && line.isWord(number + 2)) {
      report(
          "power-in-words",
          number,
          number + 2,
          "'%s' has the power of its unit in words",
          "write %s %s^%d"
              .formatted(text(number), text(number + 2), SQUARE.contains(word) ? 2 : 3));
    }
  }

  /** {@code 27/11/2026}: read as day and month where only that can be, else both are offered. */
  private void slashedDate(int fraction) {
    boolean slashed = line.type(fraction + 1) == WorkbookLexer.SLASH && line.isGlued(fraction + 1);
    boolean isDate = slashed && isWhole(fraction + 2) && line.isGlued(fraction + 2);
    if (!isDate || !line.span(fraction, fraction + 2).text().matches("\\d\\d?/\\d\\d?/\\d{4}")) {
      return;
    }
    String[] parts = text(fraction).split("/", -1);
    int first = Integer.parseInt(parts[0]);
    int second = Integer.parseInt(parts[1]);
    String year = text(fraction + 2);
    String monthFirst = date(year, first, second);
    String dayFirst = date(year, second, first);
    report(
        "date-with-slashes",
        fraction,
        fraction + 2,
        "'%s' is not how dates are written here",
        second > 12 || first == second
            ? "write " + monthFirst
            : first > 12 ? "write " + dayFirst : "write %s or %s".formatted(monthFirst, dayFirst));
  }

  private static String date(String year, int month, int day) {
    return "%s-%02d-%02d".formatted(year, month, day);
  }

  private boolean isNumber(int index) {
    return switch (line.type(index)) {
      case WorkbookLexer.MIXED,
          WorkbookLexer.FRACTION,
          WorkbookLexer.DECIMAL,
          WorkbookLexer.WHOLE,
          WorkbookLexer.INCHES,
          WorkbookLexer.FEET ->
          true;
      default -> false;
    };
  }

  private boolean isWhole(int index) {
    return line.type(index) == WorkbookLexer.WHOLE;
  }

  private String text(int index) {
    return line.span(index).text();
  }

  private void report(String code, int first, int last, String message, String repair) {
    var span = line.span(first, last);
    faults.fault(code, span, message.formatted(span.text()), repair);
  }
}
