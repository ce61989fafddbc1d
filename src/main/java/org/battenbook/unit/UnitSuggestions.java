package org.battenbook.unit;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What may have been meant by a unit that there is not. */
final class UnitSuggestions {
  private static final Map<String, List<String>> WORDS =
      Map.ofEntries(
          Map.entry("in", List.of("inch", "inches", "ins", "\"")),
          Map.entry("ft", List.of("foot", "feet", "fts", "'", "lf", "lin ft")),
          Map.entry("yd", List.of("yard", "yards", "yds")),
          Map.entry("mil", List.of("mils", "thou", "point", "points")),
          Map.entry("mm", List.of("millimetre", "millimetres", "millimeter", "millimeters", "mms")),
          Map.entry("cm", List.of("centimetre", "centimetres", "centimeter", "centimeters", "cms")),
          Map.entry("m", List.of("metre", "metres", "meter", "meters")),
          Map.entry("bd ft", List.of("board foot", "board feet", "bf", "fbm", "bdft")),
          Map.entry("lb", List.of("pound", "pounds", "lbs", "lbm")),
          Map.entry("oz", List.of("ounce", "ounces", "ozs")),
          Map.entry("g", List.of("gram", "grams", "gramme", "grammes", "gm")),
          Map.entry("kg", List.of("kilo", "kilos", "kilogram", "kilograms", "kgs")),
          Map.entry("deg", List.of("degree", "degrees", "degs", "°")),
          Map.entry("s", List.of("sec", "secs", "second", "seconds")),
          Map.entry("min", List.of("minute", "minutes", "mins")),
          Map.entry("h", List.of("hr", "hrs", "hour", "hours")),
          Map.entry("day", List.of("days", "d")),
          Map.entry("K", List.of("kelvin", "degc", "c", "°c", "celsius")),
          Map.entry("degF", List.of("f", "°f", "fahrenheit")),
          Map.entry("%", List.of("percent", "per cent", "pct")),
          Map.entry("USD", List.of("$", "dollar", "dollars")),
          Map.entry("EUR", List.of("€", "euro", "euros")),
          Map.entry("GBP", List.of("£", "quid")),
          Map.entry("in^2", List.of("sq in", "square inch", "square inches", "in2", "in²")),
          Map.entry("ft^2", List.of("sq ft", "square foot", "square feet", "sf", "ft2", "ft²")),
          Map.entry("m^2", List.of("sq m", "sqm", "square metre", "square metres", "m2", "m²")),
          Map.entry("lb/in^2", List.of("psi")));

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
        WORDS.entrySet().stream()
            .filter(entry -> entry.getValue().contains(lower))
            .map(Map.Entry::getKey);
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
