package org.battenbook.unit;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * One base dimension with the unit that all its numbers are kept in. A currency is its own.
 *
 * @param symbol the base unit: {@code in}, {@code lb}, {@code USD}
 * @param noun what it is in words: {@code length}, {@code money in USD}
 */
record Base(String symbol, String noun) implements Comparable<Base> {
  static final Base MASS = new Base("lb", "mass");
  static final Base LENGTH = new Base("in", "length");
  static final Base TIME = new Base("h", "time");
  static final Base ANGLE = new Base("deg", "angle");
  static final Base TEMPERATURE_DIFFERENCE = new Base("K", "temperature difference");

  /** The order within a product; money stands before all of them. */
  private static final List<Base> ORDER =
      List.of(MASS, LENGTH, TIME, ANGLE, TEMPERATURE_DIFFERENCE);

  /** Money of a currency, or of none. */
  static Base money(String currency) {
    String noun =
        currency.equals(Dimension.NO_CURRENCY) ? "money of no currency" : "money in " + currency;
    return new Base(currency, noun);
  }

  /** The unit that its numbers are kept in. */
  Unit unit() {
    return new Unit(symbol, Dimension.of(this), Rational.ONE);
  }

  boolean isMoney() {
    return !ORDER.contains(this);
  }

  /** In words with a power from 1 up: {@code length}, {@code area}, {@code length^4}. */
  String words(int power) {
    if (equals(LENGTH) && power <= 3) {
      return List.of("length", "area", "volume").get(power - 1);
    }
    return power == 1 ? noun : noun + "^" + power;
  }

  @Override
  public int compareTo(Base that) {
    int place = Integer.compare(ORDER.indexOf(this), ORDER.indexOf(that));
    return place != 0 ? place : symbol.compareTo(that.symbol);
  }
}
