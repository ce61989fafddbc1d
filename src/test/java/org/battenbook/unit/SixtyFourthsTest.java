package org.battenbook.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.number.Rational;
import org.battenbook.number.Rounding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The table of sixty-fourths, as public charts print it: utilitiesbunker.com/kb, "fraction to
 * decimal chart", and machinecalcs.com, "decimal to fraction chart". They differ in the fourth
 * decimal of odd thirty-seconds, so the exact values are compared.
 */
class SixtyFourthsTest {
  private static final Rational FOUR_PLACES = Rational.parse("0.0001");

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sixty-fourths.csv", useHeadersInDisplayName = true)
  void a_sixty_fourth_is_its_fraction_its_decimal_and_its_millimetres(
      long n64, String reduced, String decimalInch, String mm, String mmToFourPlaces) {
    Quantity length = Quantity.of(Rational.of(n64, 64), Units.INCH);
    Rational millimeters = (Rational) length.in(Units.MILLIMETRE);

    assertThat(show("1/64", false, Units.INCH, length)).isEqualTo(reduced + " in");
    assertThat(length.number()).isEqualTo(Rational.parse(decimalInch));
    assertThat(millimeters).isEqualTo(Rational.parse(mm));
    assertThat(show("0.000001", true, Units.MILLIMETRE, length)).startsWith(mm);
    assertThat(Rounding.NEAREST.toStep(millimeters, FOUR_PLACES))
        .isEqualTo(Rational.parse(mmToFourPlaces));
  }

  private static String show(String step, boolean decimal, Unit unit, Quantity length) {
    return Form.of(Rational.parse(step), decimal, unit).show(length).text();
  }
}
