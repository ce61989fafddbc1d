package org.battenbook.unit;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What may have been meant by a unit that there is not. */
final class UnitSuggestions {
  /** A symbol, and words that people write for it. */
  private record Words(String symbol, List<String> words) {
    static Words of(String symbol, String... words) {
      return new Words(symbol, List.of(words));
    }
  }

  private static final List<Words> WORDS =
      List.of(
          Words.of("in", "inch", "inches", "ins", "\""),
          Words.of("ft", "foot", "feet", "fts", "'", "lf", "lin ft"),
          Words.of("yd", "yard", "yards", "yds"),
          Words.of("mil", "mils", "thou", "point", "points"),
          Words.of("mm", "millimetre", "millimetres", "millimeter", "millimeters", "mms"),
          Words.of("cm", "centimetre", "centimetres", "centimeter", "centimeters", "cms"),
          Words.of("m", "metre", "metres", "meter", "meters"),
          Words.of("bd ft", "board foot", "board feet", "bf", "fbm", "bdft"),
          Words.of("lb", "pound", "pounds", "lbs", "lbm"),
          Words.of("oz", "ounce", "ounces", "ozs"),
          Words.of("g", "gram", "grams", "gramme", "grammes", "gm"),
          Words.of("kg", "kilo", "kilos", "kilogram", "kilograms", "kgs"),
          Words.of("deg", "degree", "degrees", "degs", "°"),
          Words.of("s", "sec", "secs", "second", "seconds"),
          Words.of("min", "minute", "minutes", "mins"),
          Words.of("h", "hr", "hrs", "hour", "hours"),
          Words.of("day", "days", "d"),
          Words.of("K", "kelvin", "degc", "c", "°c", "celsius"),
          Words.of("degF", "f", "°f", "fahrenheit"),
          Words.of("%", "percent", "per cent", "pct"),
          Words.of("USD", "$", "dollar", "dollars"),
          Words.of("EUR", "€", "euro", "euros"),
          Words.of("GBP", "£", "quid"),
          Words.of("in^2", "sq in", "sqin", "square inch", "square inches", "in2", "in²", "si"),
          Words.of("ft^2", "sq ft", "sqft", "square foot", "square feet", "sf", "ft2", "ft²"),
          Words.of("cm^2", "sq cm", "sqcm", "cm2", "cm²"),
          Words.of("mm^2", "sq mm", "sqmm", "mm2", "mm²"),
          Words.of("m^2", "sq m", "sqm", "square metre", "square metres", "m2", "m²"),
          Words.of("in^3", "cu in", "cuin", "cubic inches", "in3", "in³"),
          Words.of("ft^3", "cu ft", "cuft", "cf", "cubic feet", "ft3", "ft³"),
          Words.of("m^3", "cubic metres", "cubic meters", "m3", "m³"),
          Words.of("lb/in^2", "psi"));

  private UnitSuggestions() {}

  static List<String> of(String written) {
    String[] parts = written.strip().split("(?=[*/^])|(?<=[*/])", 10);
    return parts.length == 1 ? ofAtom(parts[0]) : ofCompound(parts);
  }

  /** Every part that is no unit replaced by what it may mean; nothing if one means nothing. */
  private static List<String> ofCompound(String[] parts) {
    String repaired = Stream.of(parts).map(UnitSuggestions::repaired).collect(Collectors.joining());
    return Units.find(repaired).isPresent() ? List.of(repaired) : List.of();
  }

  private static String repaired(String part) {
    boolean kept = part.matches("[*/]|\\^.*") || Units.find(part).isPresent();
    return kept ? part : ofAtom(part).stream().findFirst().orElse(part);
  }

  private static List<String> ofAtom(String written) {
    String lower = written.strip().toLowerCase(Locale.ROOT);
    String upper = lower.toUpperCase(Locale.ROOT);
    Stream<String> byWord =
        WORDS.stream().filter(each -> each.words.contains(lower)).map(Words::symbol);
    Stream<String> byCase =
        Stream.of(lower, upper).filter(symbol -> Units.find(symbol).isPresent());
    Stream<String> byLetter = Units.symbols().filter(symbol -> isOneLetterOff(lower, symbol));
    return Stream.of(byWord, byCase, byLetter).flatMap(near -> near).distinct().toList();
  }

  /** One letter more, less or other, of symbols long enough for that to mean something. */
  private static boolean isOneLetterOff(String written, String symbol) {
    int longer = Math.max(written.length(), symbol.length());
    int shorter = Math.min(written.length(), symbol.length());
    if (shorter < 2 || longer - shorter > 1) {
      return false;
    }
    int front = 0;
    while (front < shorter && written.charAt(front) == symbol.charAt(front)) {
      front++;
    }
    int from = front + 1;
    return longer == shorter
        ? written.endsWith(symbol.substring(Math.min(from, shorter)))
        : written.length() > symbol.length()
            ? written.substring(from).equals(symbol.substring(front))
            : symbol.substring(from).equals(written.substring(front));
  }
}
