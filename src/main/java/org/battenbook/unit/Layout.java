package org.battenbook.unit;

import java.math.BigDecimal;
import java.util.stream.IntStream;
import org.battenbook.number.Rational;
import org.battenbook.number.Rounding;
import org.jspecify.annotations.Nullable;

/** How the figures of a shown quantity are set. All of them print a number of the form's unit. */
sealed interface Layout {

  /** The step of the last place; null where as many places as needed are printed. */
  @Nullable Rational step();

  /** The number, rounded to one that the layout can hold. */
  Rational held(Rational number, Rounding rounding);

  /** The number in figures, with the unit; only for numbers that it can hold. */
  String print(Rational number, String unit);

  /** Mixed fractions in lowest terms: {@code 19 3/8 in}, {@code -3/16 in}. */
  record Fractions(Rational step) implements Layout {
    @Override
    public Rational held(Rational number, Rounding rounding) {
      return rounding.toStep(number, step);
    }

    @Override
    public String print(Rational number, String unit) {
      return (number.signum() < 0 ? "-" : "") + mixed(number.abs()) + spaced(unit);
    }

    static String mixed(Rational magnitude) {
      Rational whole = magnitude.wholeBelow();
      Rational rest = magnitude.minus(whole);
      return rest.signum() == 0
          ? whole.toString()
          : whole.signum() == 0 ? rest.toString() : whole + " " + rest;
    }
  }

  /** Feet, and inches in mixed fractions: {@code 2 ft 3 1/2 in}. The step is in feet. */
  record FeetAndInches(Rational step) implements Layout {
    private static final Rational INCHES = Rational.of(12);

    @Override
    public Rational held(Rational number, Rounding rounding) {
      return rounding.toStep(number, step);
    }

    @Override
    public String print(Rational number, String unit) {
      Rational feet = number.abs().wholeBelow();
      Rational inches = number.abs().minus(feet).times(INCHES);
      String inchesText = Fractions.mixed(inches) + " in";
      String text =
          inches.signum() == 0
              ? feet + " ft"
              : feet.signum() == 0 ? inchesText : feet + " ft " + inchesText;
      return number.signum() < 0 ? "-" + text : text;
    }
  }

  /** Decimals to a step, all its places printed: {@code 12.50 USD}, {@code 0.30 in}. */
  record DecimalSteps(Rational step, int places) implements Layout {
    static DecimalSteps of(Rational step) {
      return new DecimalSteps(step, placesOf(step, 0));
    }

    @Override
    public Rational held(Rational number, Rounding rounding) {
      return rounding.toStep(number, step);
    }

    @Override
    public String print(Rational number, String unit) {
      return decimal(number, places) + spaced(unit);
    }
  }

  /**
   * Decimals as many as it takes up to six; what takes more is rounded to three, or to four figures
   * where it is small: {@code 427.175 mm}, {@code 2.50 USD/ft}, {@code 0.00004}.
   *
   * @param fewest how many places are printed at least
   */
  record FreeDecimals(int fewest) implements Layout {
    private static final int MOST = 6;
    private static final int ROUNDED = 3;
    private static final int FIGURES = 4;

    /** Smaller numbers are shown as 0. */
    private static final int SMALLEST = 12;

    @Override
    public @Nullable Rational step() {
      return null;
    }

    @Override
    public Rational held(Rational number, Rounding rounding) {
      return isDecimal(number, MOST)
          ? number
          : rounding.toStep(number, tenTo(-roundedPlaces(number)));
    }

    @Override
    public String print(Rational number, String unit) {
      return decimal(number, placesOf(number, fewest)) + spaced(unit);
    }

    private int roundedPlaces(Rational number) {
      int places = Math.max(ROUNDED, fewest);
      while (places < SMALLEST && number.abs().compareTo(tenTo(FIGURES - 1 - places)) < 0) {
        places++;
      }
      return places;
    }
  }

  /** More decimal places than anyone can want. */
  int MOST_PLACES = 30;

  static boolean isDecimal(Rational number, int places) {
    return number.times(tenTo(places)).isWhole();
  }

  /**
   * How many places, but at least so many, a decimal takes.
   *
   * @throws IllegalArgumentException if it takes too many, or is no decimal
   */
  static int placesOf(Rational decimal, int fewest) {
    return IntStream.rangeClosed(fewest, MOST_PLACES)
        .filter(places -> isDecimal(decimal, places))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no decimal to show: " + decimal));
  }

  static String decimal(Rational number, int places) {
    return new BigDecimal(number.times(tenTo(places)).floor(), places).toPlainString();
  }

  static Rational tenTo(int power) {
    return Rational.of(10).pow(power);
  }

  static String spaced(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }
}
