package org.battenbook.parse;

import java.math.BigDecimal;
import java.util.Map;
import java.util.regex.Pattern;
import org.battenbook.bound.Bound;
import org.battenbook.parse.generated.WorkbookLexer;
import org.battenbook.source.Span;

/** Refuses words and signs that look like the language and are not. Each has its own message. */
final class MalformedTokens {
  /** Signs that people bring along from elsewhere, and what to write instead. */
  private static final Map<String, String> INSTEAD =
      Map.ofEntries(
          Map.entry("'", "remove it: frame top, not frame's top"),
          Map.entry("’", "remove it: frame top, not frame's top"),
          Map.entry("_", "put a space between the words of a name"),
          Map.entry(";", "put a comma between arguments, and each statement on its own line"),
          Map.entry("!", "write <> for 'is not equal' and not for 'the opposite'"),
          Map.entry("$", "write money with its currency code: 12 USD"),
          Map.entry("€", "write money with its currency code: 12 EUR"),
          Map.entry("£", "write money with its currency code: 12 GBP"),
          Map.entry("&", "write 'and', or put values into a text with braces: \"{width} wide\""),
          Map.entry("#", "begin a note with ' -- '"),
          Map.entry("[", "use round brackets"),
          Map.entry("]", "use round brackets"),
          Map.entry("{", "use round brackets; braces show a value inside a text"),
          Map.entry("}", "use round brackets; braces show a value inside a text"),
          Map.entry("–", "write - for minus, or ' -- ' before a note"),
          Map.entry("—", "write - for minus, or ' -- ' before a note"),
          Map.entry("”", "write the inch mark right after its number: 3/8\""),
          Map.entry("″", "write the inch mark right after its number: 3/8\""),
          Map.entry("′", "write the foot mark right after its number: 2'"));

  private static final Pattern ZERO_UNDER_FRACTION = Pattern.compile(".*[/⁄]0+\\D*");

  private final LineTokens line;
  private final LineFaults faults;

  private MalformedTokens(LineTokens line, LineFaults faults) {
    this.line = line;
    this.faults = faults;
  }

  static void check(LineTokens line, LineFaults faults) {
    MalformedTokens malformed = new MalformedTokens(line, faults);
    for (int i = 0; i < line.count(); i++) {
      malformed.check(i);
    }
  }

  private void check(int index) {
    switch (line.type(index)) {
      case WorkbookLexer.NEAR_NUMBER -> nearNumber(index);
      case WorkbookLexer.NEAR_DATE -> nearDate(index);
      case WorkbookLexer.OPEN_TEXT -> openText(index);
      case WorkbookLexer.STRAY -> stray(index);
      case WorkbookLexer.MIXED,
          WorkbookLexer.FRACTION,
          WorkbookLexer.DECIMAL,
          WorkbookLexer.WHOLE,
          WorkbookLexer.INCHES,
          WorkbookLexer.FEET ->
          number(index);
      default -> {}
    }
  }

  private void nearNumber(int index) {
    String text = text(index);
    if (text.startsWith(".")) {
      fault("no-zero-before-point", index, "has no digit before its point", "write 0" + text);
    } else if (text.endsWith(".")) {
      String whole = text.substring(0, text.length() - 1);
      fault("nothing-after-point", index, "has no digit after its point", "write " + whole);
    } else if (text.matches("\\d{1,3}(,\\d{3})+(\\.\\d+)?")) {
      comma("comma-in-number", index, text.replace(",", ""));
    } else {
      comma("decimal-comma", index, text.replaceFirst(",", "."));
    }
  }

  private void comma(String code, int index, String number) {
    String apart = text(index).replace(",", ", ");
    fault(
        code,
        index,
        "has a comma in it",
        "write %s; between the arguments of a function, put a space: %s".formatted(number, apart));
  }

  private void nearDate(int index) {
    String[] parts = text(index).split("-", -1);
    String date = "%s-%2s-%2s".formatted((Object[]) parts).replace(' ', '0');
    fault(
        "two-readings",
        index,
        "can be a date or a subtraction",
        "write %s, or %s".formatted(date, String.join(" - ", parts)));
  }

  private void openText(int index) {
    if (index > 0 && isNumber(line.type(index - 1))) {
      String number = line.span(index - 1).text();
      faults.fault(
          "loose-inch-mark",
          line.span(index - 1).to(line.source().span(start(index), start(index) + 1)),
          "the inch mark is not right after its number",
          "write " + number + "\"");
    } else if (line.find(WorkbookLexer.TEXT) >= 0) {
      quoteInText(line.find(WorkbookLexer.TEXT));
    } else {
      faults.fault(
          "text-not-closed",
          line.span(index),
          "this text has no closing quote",
          "close it on the same line; write a quote inside a text twice");
    }
  }

  private void quoteInText(int first) {
    Span span = line.span(first, line.count() - 1);
    String inside = span.text().substring(1);
    String body = inside.endsWith("\"") ? inside.substring(0, inside.length() - 1) : inside;
    faults.fault(
        "quote-in-text",
        span,
        "a quote inside this text ends it",
        "write a quote inside a text twice: \"" + body.replace("\"", "\"\"") + "\"");
  }

  /** The first such sign of a line speaks for the others. */
  private void stray(int index) {
    if (line.find(WorkbookLexer.STRAY) < index) {
      return;
    }
    String sign = text(index);
    faults.fault(
        "stray-sign",
        line.span(index),
        "the sign %s has no meaning here".formatted(sign),
        INSTEAD.getOrDefault(sign, "remove it"));
  }

  private void number(int index) {
    String text = text(index);
    if (Bound.WRITTEN_DIGITS.isPassedBy(text.length())) {
      faults.fault(
          "number-too-long",
          line.span(index),
          "this number has more than %s".formatted(Bound.WRITTEN_DIGITS.shown()),
          "write a shorter one");
    } else if (ZERO_UNDER_FRACTION.matcher(text).matches()) {
      fault(
          "zero-under-fraction",
          index,
          "divides by zero",
          "write another number below the fraction bar");
    } else if (isNumber(line.type(index)) && isPowerOfTen(index)) {
      powerOfTen(index);
    }
  }

  private static boolean isNumber(int type) {
    return type == WorkbookLexer.MIXED
        || type == WorkbookLexer.FRACTION
        || type == WorkbookLexer.DECIMAL
        || type == WorkbookLexer.WHOLE;
  }

  /** Whether {@code e3}, {@code e+3} or {@code e-3} is glued to the number. */
  private boolean isPowerOfTen(int index) {
    return line.isWord(index + 1)
        && line.isGlued(index + 1)
        && written(index).matches("[^eE]+[eE][-+]?\\d+");
  }

  private String written(int index) {
    boolean signed = line.span(index + 1).text().length() == 1;
    int last = signed && line.isGlued(index + 2) && line.isGlued(index + 3) ? index + 3 : index + 1;
    return line.span(index, Math.min(last, line.count() - 1)).text();
  }

  private void powerOfTen(int index) {
    String written = written(index);
    faults.fault(
        "power-of-ten",
        line.source().span(start(index), start(index) + written.length()),
        "'%s' is not how numbers are written".formatted(written),
        isShortDecimal(written)
            ? "write " + new BigDecimal(written).toPlainString()
            : "write all its digits");
  }

  /** Whether a power of ten is of a decimal, and short enough to be spelled out. */
  private static boolean isShortDecimal(String written) {
    return written.matches("\\d{1,9}(\\.\\d{1,9})?[eE][-+]?\\d");
  }

  private void fault(String code, int index, String message, String repair) {
    faults.fault(code, line.span(index), "'%s' %s".formatted(text(index), message), repair);
  }

  private int start(int index) {
    return line.get(index).getStartIndex();
  }

  private String text(int index) {
    return line.span(index).text();
  }
}
