package org.battenbook.unit;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * One base dimension with the unit that all its numbers are kept in. A currency is its own.
 *
 * @param symbol the base unit: {@code in}, {@code lb}, {@code USD}
 * @param noun what it is in words: {@code length}, {@code money in USD}
 * @param rank its place within a product
 */
record Base(String symbol, String noun, int rank) implements Comparable<Base> {
  static final Base MASS = new Base("lb", "mass", 1);
  static final Base LENGTH = new Base("in", "length", 2);
  static final Base TIME = new Base("h", "time", 3);
  static final Base ANGLE = new Base("deg", "angle", 4);
  static final Base TEMPERATURE_DIFFERENCE = new Base("K", "temperature difference", 5);

  /** Money stands before all others, one currency after the other by its code. */
  private static final int MONEY = 0;

  /** Money of a currency, or of none. */
  static Base money(String currency) {
    String noun =
        currency.equals(Dimension.NO_CURRENCY) ? "money of no currency" : "money in " + currency;
    return new Base(currency, noun, MONEY);
  }

  /** The unit that its numbers are kept in. */
  Unit unit() {
    return new Unit(symbol, Dimension.of(this), Rational.ONE);
  }

  boolean isMoney() {
    return rank == MONEY;
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
    return rank != that.rank ? Integer.compare(rank, that.rank) : symbol.compareTo(that.symbol);
  }
}
