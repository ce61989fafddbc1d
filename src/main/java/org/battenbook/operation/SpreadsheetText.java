package org.battenbook.operation;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.battenbook.number.Rational;
import org.jspecify.annotations.Nullable;

/**
 * A piece of a spreadsheet formula that knows how tightly it binds, so that a bracket stands
 * wherever one is needed and nowhere else. Terms of powers and of unary minus are always bracketed,
 * since programs disagree on {@code -a^2} and {@code 2^3^2}.
 *
 * <p>Numbers are in base units. {@link #toString} gives the formula without a leading equals sign.
 */
public final class SpreadsheetText {
  private static final int LONGEST_LITERAL = 255;
  private static final int EXACT_DIGITS = 15;

  /** No decimal of fifteen digits that a person would write has a longer one, in bits. */
  private static final int LONGEST_DENOMINATOR = 100;

  /** What a piece stands for; a comparison is written differently for each. */
  public enum Content {
    NUMBER,
    TEXT,
    YES_NO,
    /** A day, counted as spreadsheets count days. */
    DATE,
    /** A row of a table, by its number in the table. */
    ROW
  }

  /** How tightly a piece binds, loosest first. */
  private enum Binding {
    COMPARISON,
    JOINED,
    SUM,
    PRODUCT,
    POWER,
    WHOLE
  }

  /** How many values a piece has. */
  private enum Extent {
    ONE,
    /** One for each row of a column, gone through as an array. */
    COLUMN,
    /** A column put through a function, of which some programs take the first value only. */
    UNFIT
  }

  private final String text;
  private final Binding binding;
  private final Content content;
  private final Extent extent;
  private final @Nullable Rational literal;
  private final @Nullable SpreadsheetText rowName;

  private SpreadsheetText(
      String text,
      Binding binding,
      Content content,
      Extent extent,
      @Nullable Rational literal,
      @Nullable SpreadsheetText rowName) {
    this.text = text;
    this.binding = binding;
    this.content = content;
    this.extent = extent;
    this.literal = literal;
    this.rowName = rowName;
  }

  private SpreadsheetText(String text, Binding binding, Content content, Extent extent) {
    this(text, binding, content, extent, null, null);
  }

  /** A number as it stands: a decimal where that is exact, else a fraction. */
  public static SpreadsheetText number(Rational number) {
    String decimal = decimal(number);
    return decimal != null
        ? new SpreadsheetText(decimal, Binding.WHOLE, Content.NUMBER, Extent.ONE, number, null)
        : new SpreadsheetText(
            fraction(number), Binding.PRODUCT, Content.NUMBER, Extent.ONE, number, null);
  }

  /** A whole number. */
  public static SpreadsheetText number(long number) {
    return number(Rational.of(number));
  }

  /** A text in quotes; a long one in pieces that are joined. */
  public static SpreadsheetText text(String words) {
    if (words.length() <= LONGEST_LITERAL) {
      return new SpreadsheetText(quoted(words), Binding.WHOLE, Content.TEXT, Extent.ONE);
    }
    List<String> pieces = new ArrayList<>();
    for (int at = 0; at < words.length(); ) {
      int end = Math.min(at + LONGEST_LITERAL, words.length());
      boolean splitsPair = end < words.length() && Character.isLowSurrogate(words.charAt(end));
      end -= splitsPair ? 1 : 0;
      pieces.add(quoted(words.substring(at, end)));
      at = end;
    }
    return new SpreadsheetText(String.join("&", pieces), Binding.JOINED, Content.TEXT, Extent.ONE);
  }

  public static SpreadsheetText truth(boolean yes) {
    return new SpreadsheetText(yes ? "TRUE" : "FALSE", Binding.WHOLE, Content.YES_NO, Extent.ONE);
  }

  /** A cell or a defined name, or a range that a function takes as it is. */
  public static SpreadsheetText reference(String reference, Content content) {
    return new SpreadsheetText(reference, Binding.WHOLE, content, Extent.ONE);
  }

  /** A range whose values an array formula goes through one by one. */
  public static SpreadsheetText column(String range, Content content) {
    return new SpreadsheetText(range, Binding.WHOLE, content, Extent.COLUMN);
  }

  /**
   * A row of a table.
   *
   * @param number its number in the table
   * @param name what it is called: the text that it is compared with texts by
   */
  public static SpreadsheetText row(SpreadsheetText number, SpreadsheetText name) {
    return new SpreadsheetText(number.text, number.binding, Content.ROW, number.extent, null, name);
  }

  /** A function's call. */
  public static SpreadsheetText call(
      String function, Content content, List<SpreadsheetText> arguments) {
    Extent extent = extent(arguments) == Extent.ONE ? Extent.ONE : Extent.UNFIT;
    return new SpreadsheetText(written(function, arguments), Binding.WHOLE, content, extent);
  }

  /** A function's call that gives a number. */
  public static SpreadsheetText call(String function, SpreadsheetText... arguments) {
    return call(function, Content.NUMBER, List.of(arguments));
  }

  /**
   * A function that takes whole columns, as {@code SUM} and {@code MATCH} do, and gives one number.
   */
  public static SpreadsheetText total(String function, SpreadsheetText... arguments) {
    List<SpreadsheetText> all = List.of(arguments);
    Extent extent = extent(all) == Extent.UNFIT ? Extent.UNFIT : Extent.ONE;
    return new SpreadsheetText(written(function, all), Binding.WHOLE, Content.NUMBER, extent);
  }

  /** {@code IF(condition,then,otherwise)}; works out the branch that it takes and no other. */
  public static SpreadsheetText choice(
      SpreadsheetText condition, SpreadsheetText then, SpreadsheetText otherwise) {
    List<SpreadsheetText> all = List.of(condition, then, otherwise);
    SpreadsheetText chosen =
        new SpreadsheetText(written("IF", all), Binding.WHOLE, then.content, extent(all));
    if (then.rowName == null || otherwise.rowName == null) {
      return chosen;
    }
    return row(chosen, choice(condition, then.rowName, otherwise.rowName));
  }

  private static String written(String function, List<SpreadsheetText> arguments) {
    return arguments.stream()
        .map(a -> a.text)
        .collect(Collectors.joining(",", function + "(", ")"));
  }

  /** That of several pieces together. */
  private static Extent extent(List<SpreadsheetText> pieces) {
    return pieces.stream().map(p -> p.extent).max(Comparator.naturalOrder()).orElse(Extent.ONE);
  }

  public SpreadsheetText plus(SpreadsheetText other) {
    return with(other, left(Binding.SUM) + "+" + other.right(Binding.SUM), Binding.SUM);
  }

  public SpreadsheetText minus(SpreadsheetText other) {
    return with(other, left(Binding.SUM) + "-" + other.right(Binding.PRODUCT), Binding.SUM);
  }

  public SpreadsheetText times(SpreadsheetText other) {
    String product = left(Binding.PRODUCT) + "*" + other.right(Binding.PRODUCT);
    return with(other, product, Binding.PRODUCT);
  }

  public SpreadsheetText dividedBy(SpreadsheetText other) {
    String quotient = left(Binding.PRODUCT) + "/" + other.right(Binding.POWER);
    return with(other, quotient, Binding.PRODUCT);
  }

  /**
   * Times a constant: units are converted so, {@code a*25.4}, {@code a/25.4}.
   *
   * @param factor not zero
   */
  public SpreadsheetText scaled(Rational factor) {
    Rational divisor = Rational.ONE.dividedBy(factor);
    boolean divides = divisor.isWhole() || decimal(factor) == null;
    if (factor.equals(Rational.ONE)) {
      return this;
    }
    if (literal != null) {
      return number(literal.times(factor));
    }
    return divides && decimal(divisor) != null ? dividedBy(number(divisor)) : times(number(factor));
  }

  /**
   * A whole number of steps as a size, written so that it is the nearest double: three tenths are
   * {@code 3/10}, not {@code 3*0.1}.
   */
  SpreadsheetText steps(Rational step) {
    SpreadsheetText above = scaled(Rational.of(step.numerator(), BigInteger.ONE));
    return above.scaled(Rational.of(BigInteger.ONE, step.denominator()));
  }

  public SpreadsheetText negate() {
    if (literal != null) {
      return number(literal.negate());
    }
    String negated = "-" + (binding == Binding.WHOLE && !isSigned() ? text : bracketed());
    return new SpreadsheetText(negated, Binding.PRODUCT, Content.NUMBER, extent);
  }

  public SpreadsheetText power(int exponent) {
    String base = binding == Binding.WHOLE && !isSigned() ? text : bracketed();
    String power = exponent < 0 ? "(" + exponent + ")" : Integer.toString(exponent);
    return new SpreadsheetText(base + "^" + power, Binding.POWER, Content.NUMBER, extent);
  }

  /** Two texts as one. */
  public SpreadsheetText joined(SpreadsheetText other) {
    String both = left(Binding.JOINED) + "&" + other.right(Binding.JOINED);
    return new SpreadsheetText(both, Binding.JOINED, Content.TEXT, extent(List.of(this, other)));
  }

  /**
   * A comparison by the program's own operator, which is exact only for whole numbers and for what
   * is no number.
   *
   * @param relation one of {@code = <> < <= > >=}
   */
  public SpreadsheetText compared(String relation, SpreadsheetText other) {
    String both = left(Binding.JOINED) + relation + other.right(Binding.JOINED);
    return new SpreadsheetText(
        both, Binding.COMPARISON, Content.YES_NO, extent(List.of(this, other)));
  }

  /** The same piece, standing for a day: a date moved by days is one. */
  public SpreadsheetText asDate() {
    return new SpreadsheetText(text, binding, Content.DATE, extent);
  }

  public Content content() {
    return content;
  }

  /** The number, where it is one as it stands. */
  public @Nullable Rational literal() {
    return literal;
  }

  /** What a row is called; null for what is no row. */
  public @Nullable SpreadsheetText rowName() {
    return rowName;
  }

  /** Whether it has a value for each row of a column. */
  public boolean isColumn() {
    return extent != Extent.ONE;
  }

  /** Whether programs agree on it: no column is put through a function that may not take one. */
  public boolean isFit() {
    return extent != Extent.UNFIT;
  }

  /** The characters of the formula: programs take 8192 at most. */
  public int length() {
    return text.length();
  }

  @Override
  public String toString() {
    return text;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SpreadsheetText that
        && text.equals(that.text)
        && content == that.content;
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  /** A number made of this piece and another. */
  private SpreadsheetText with(SpreadsheetText other, String both, Binding loosest) {
    return new SpreadsheetText(both, loosest, Content.NUMBER, extent(List.of(this, other)));
  }

  private String left(Binding loosest) {
    return binding.compareTo(loosest) < 0 ? bracketed() : text;
  }

  /** On the right of an operator a sign is bracketed, too: {@code a-(-b)}. */
  private String right(Binding loosest) {
    return isSigned() ? bracketed() : left(loosest);
  }

  private boolean isSigned() {
    return text.startsWith("-");
  }

  private String bracketed() {
    return "(" + text + ")";
  }

  private static String quoted(String words) {
    return '"' + words.replace("\"", "\"\"") + '"';
  }

  /** The number as a decimal of at most fifteen digits, or null where it is none. */
  private static @Nullable String decimal(Rational number) {
    BigInteger denominator = number.denominator();
    if (denominator.bitLength() > LONGEST_DENOMINATOR) {
      return null;
    }
    BigInteger odd = denominator.shiftRight(denominator.getLowestSetBit());
    while (odd.mod(BigInteger.valueOf(5)).signum() == 0) {
      odd = odd.divide(BigInteger.valueOf(5));
    }
    if (!odd.equals(BigInteger.ONE)) {
      return null;
    }
    BigDecimal exact = new BigDecimal(number.numerator()).divide(new BigDecimal(denominator));
    BigDecimal shortest = exact.stripTrailingZeros();
    return shortest.precision() <= EXACT_DIGITS ? shortest.toPlainString() : null;
  }

  /** Numerator over denominator; the nearest double where these have too many digits. */
  private static String fraction(Rational number) {
    String numerator = number.numerator().toString();
    String denominator = number.denominator().toString();
    boolean exact = numerator.length() <= EXACT_DIGITS && denominator.length() <= EXACT_DIGITS;
    if (!exact) {
      return Double.toString(number.toNearestDouble());
    }
    return number.isWhole() ? numerator : numerator + "/" + denominator;
  }
}
