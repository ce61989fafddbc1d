package org.battenbook.unit;

import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.battenbook.number.Rational;

/**
 * The units that can be written: those of the table below, the currencies of ISO 4217, and
 * compounds of them as {@code USD/ft} and {@code lb/in^2}.
 *
 * <p>Symbols after SI and, for inch-pound units, NIST Handbook 44, appendix C; factors after UCUM
 * 2.2, where the inch is 25.4 mm and the pound 453.59237 g, both exactly.
 */
public final class Units {
  private static final Map<String, Unit> ATOMS = new LinkedHashMap<>();

  public static final Unit INCH = atom("in", Dimension.LENGTH, "1");
  public static final Unit FOOT = atom("ft", Dimension.LENGTH, "12");
  public static final Unit YARD = atom("yd", Dimension.LENGTH, "36");
  public static final Unit MIL = atom("mil", Dimension.LENGTH, "1/1000");
  public static final Unit MILLIMETRE = atom("mm", Dimension.LENGTH, "5/127");
  public static final Unit CENTIMETRE = atom("cm", Dimension.LENGTH, "50/127");
  public static final Unit METRE = atom("m", Dimension.LENGTH, "5000/127");
  public static final Unit BOARD_FOOT = atom("bd ft", Dimension.VOLUME, "144");
  public static final Unit POUND = atom("lb", Dimension.MASS, "1");
  public static final Unit OUNCE = atom("oz", Dimension.MASS, "1/16");
  public static final Unit GRAM = atom("g", Dimension.MASS, "100000/45359237");
  public static final Unit KILOGRAM = atom("kg", Dimension.MASS, "100000000/45359237");
  public static final Unit DEGREE = atom("deg", Dimension.ANGLE, "1");
  public static final Unit SECOND = atom("s", Dimension.TIME, "1/3600");
  public static final Unit MINUTE = atom("min", Dimension.TIME, "1/60");
  public static final Unit HOUR = atom("h", Dimension.TIME, "1");
  public static final Unit DAY = atom("day", Dimension.TIME, "24");
  public static final Unit KELVIN = atom("K", Dimension.TEMPERATURE_DIFFERENCE, "1");
  public static final Unit FAHRENHEIT = atom("degF", Dimension.TEMPERATURE_DIFFERENCE, "5/9");
  public static final Unit PERCENT = atom("%", Dimension.NONE, "1/100");

  /** One factor of a compound unit, with the sign before it. */
  private static final Pattern FACTOR =
      Pattern.compile("(?<sign>[*/])(?<atom>[^*/^]+)(?:\\^(?<power>[1-9]))?");

  private static final int LONGEST = 100;

  private Units() {}

  private static Unit atom(String symbol, Dimension dimension, String factor) {
    Unit unit = new Unit(symbol, dimension, Rational.parse(factor));
    ATOMS.put(symbol, unit);
    return unit;
  }

  /**
   * The unit of a currency, which is its own base unit.
   *
   * @param code an ISO 4217 code
   */
  public static Unit currency(String code) {
    return new Unit(code, Dimension.money(code), Rational.ONE);
  }

  /**
   * The unit that is written so. Symbols of one letter and currencies are told by their case, the
   * others are not; a compound is read from left to right, {@code USD/ft/h} as per foot and hour.
   */
  public static Optional<Unit> find(String written) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    List<UnitPower> factors = new ArrayList<>();
    Matcher matcher = FACTOR.matcher("*" + written);
    int read = 0;
    while (matcher.find() && matcher.start() == read) {
      Optional<Unit> atom = findAtom(matcher.group("atom"));
      if (atom.isEmpty()) {
        return Optional.empty();
      }
      factors.add(new UnitPower(atom.get(), power(matcher)));
      read = matcher.end();
    }
    return read == written.length() + 1
        ? Optional.of(UnitPower.product(factors))
        : Optional.empty();
  }

  private static int power(Matcher factor) {
    String power = factor.group("power");
    int size = power == null ? 1 : Integer.parseInt(power);
    return factor.group("sign").equals("*") ? size : -size;
  }

  private static Optional<Unit> findAtom(String written) {
    String symbol = written.strip();
    Optional<Unit> exact = Optional.ofNullable(ATOMS.get(symbol));
    return exact
        .or(() -> currencyWritten(symbol))
        .or(() -> symbol.length() == 1 ? Optional.empty() : inAnyCase(symbol));
  }

  private static Optional<Unit> inAnyCase(String symbol) {
    return ATOMS.values().stream()
        .filter(unit -> unit.symbol().equalsIgnoreCase(symbol))
        .findFirst();
  }

  private static Optional<Unit> currencyWritten(String code) {
    return isCurrency(code) ? Optional.of(currency(code)) : Optional.empty();
  }

  /** Whether it is a code of ISO 4217, in capitals. */
  public static boolean isCurrency(String code) {
    return code.length() == 3 && Currencies.CODES.contains(code);
  }

  /**
   * The minor digits of the currency that takes part in a dimension, after ISO 4217; empty without
   * a currency, and for one without minor digits, as gold.
   */
  public static OptionalInt minorDigits(Dimension dimension) {
    int digits =
        dimension
            .currency()
            .map(code -> Currency.getInstance(code).getDefaultFractionDigits())
            .orElse(-1);
    return digits < 0 ? OptionalInt.empty() : OptionalInt.of(digits);
  }

  /** Loaded only when a unit is no measure. */
  private static final class Currencies {
    static final Set<String> CODES =
        Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * Symbols that may have been meant, best first: by the word for the unit ({@code inches}, {@code
   * lbs}), by case ({@code usd}), by one letter more, less or other. May be empty.
   */
  public static List<String> suggestions(String written) {
    return UnitSuggestions.of(written);
  }

  static Stream<String> symbols() {
    return ATOMS.keySet().stream();
  }
}
