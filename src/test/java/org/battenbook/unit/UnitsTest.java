package org.battenbook.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.number.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {
  private static Unit unit(String written) {
    return Units.find(written).orElseThrow();
  }

  /**
   * Exact constants. Inch, foot, yard, mil, pound, ounce, board foot: UCUM essence 2.2, [in_i],
   * [ft_i], [yd_i], [mil_i], [lb_av], [oz_av], [bf_i]; inch, foot and pound also ODF 1.3 part 4,
   * section 6.16.18, table 24.
   */
  @ParameterizedTest
  @CsvSource({
    "1, in, 25.4, mm",
    "1, in, 2.54, cm",
    "1, ft, 12, in",
    "1, ft, 304.8, mm",
    "1, ft, 0.3048, m",
    "1, yd, 3, ft",
    "1, yd, 914.4, mm",
    "1, mil, 0.0254, mm",
    "1, lb, 453.59237, g",
    "1, lb, 0.45359237, kg",
    "1, oz, 28.349523125, g",
    "16, oz, 1, lb",
    "1, bd ft, 144, in^3",
    "1, bd ft, 1/12, ft^3",
    "1, bd ft, 2359.737216, cm^3",
    "1, bd ft, 18435447/7812500000, m^3",
    "1, day, 24, h",
    "90, min, 1.5, h",
    "3600, s, 1, h",
    "9, degF, 5, K",
    "15, %, 0.15, ''"
  })
  void a_unit_is_so_many_of_another_exactly(
      String number, String unit, String otherNumber, String otherUnit) {
    Quantity quantity = Quantity.of(Rational.parse(number), unit(unit));
    Unit other = otherUnit.isEmpty() ? Unit.NONE : unit(otherUnit);
    assertThat(quantity.in(other)).isEqualTo(Rational.parse(otherNumber));
  }

  /** From the exact constants; kg/m^3 in a lb/ft^3 as in any handbook's table of densities. */
  @ParameterizedTest
  @CsvSource({"lb/ft^3, kg/m^3, 16.018463373960", "lb/in^2, kg/m^2, 703.0695796391"})
  void a_compound_unit_converts_as_its_parts_do(String unit, String other, double published) {
    double number = Quantity.of(Rational.ONE, unit(unit)).in(unit(other)).toDouble();
    assertThat(number).isCloseTo(published, within(1e-10));
  }

  /** The survey foot, 1200/3937 m (UCUM [ft_us]), is two parts in a million longer. */
  @Test
  void the_foot_is_not_the_survey_foot() {
    assertThat(unit("ft").factor()).isNotEqualTo(unit("m").factor().times(Rational.of(1200, 3937)));
  }

  @Test
  void there_and_back_is_the_same_quantity() {
    Samples samples = new Samples();
    List<String> lengths = List.of("in", "ft", "yd", "mil", "mm", "cm", "m");
    for (int i = 0; i < 2_000; i++) {
      Unit unit = unit(lengths.get(samples.random().nextInt(lengths.size())));
      Rational number = samples.anyRational();
      assertThat(Quantity.of(number, unit).in(unit))
          .as("%s %s, seed %s", number, unit.symbol(), samples.seed)
          .isEqualTo(number);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "USD/ft, USD/ft, USD/in",
    "lb/in^2, lb/in^2, lb/in^2",
    "kg/m^3, kg/m^3, lb/in^3",
    "USD/bd ft, USD/bd ft, USD/in^3",
    "lb*in, lb*in, lb*in",
    "USD/ft/h, USD/ft/h, USD/in/h",
    "IN, in, in",
    "Kg, kg, lb",
    "BD FT, bd ft, in^3",
    "DEGF, degF, K",
    "in/in, in/in, ''",
    "JPY, JPY, JPY"
  })
  void symbols_are_found_and_put_together(String written, String symbol, String baseSymbol) {
    assertThat(unit(written).symbol()).isEqualTo(symbol);
    assertThat(unit(written).dimension().baseSymbol()).isEqualTo(baseSymbol);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "inch", "usd", "M", "H", "k", "/ft", "USD/", "in^", "in^0", "in^10", "in^^2", "2in",
        "in ft", "1/in", "USD//ft", "*", "XYZ", "in^2^2"
      })
  void what_is_no_unit_is_not_found(String written) {
    assertThat(Units.find(written)).isEmpty();
    assertThat(Units.find("in" + "*in".repeat(10_000))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "inches, in",
    "Foot, ft",
    "lbs, lb",
    "usd, USD",
    "$, USD",
    "hrs, h",
    "degrees, deg",
    "sq ft, ft^2",
    "USD/foot, USD/ft",
    "pounds/inch^2, lb/in^2",
    "mmm, mm",
    "M, m",
    "psi, lb/in^2"
  })
  void a_unit_meant_is_suggested(String written, String meant) {
    assertThat(Units.suggestions(written)).startsWith(meant);
  }

  @Test
  void every_suggestion_is_a_unit_and_nonsense_has_none() {
    for (String written : List.of("km", "tonnes", "inch", "c", "kgm", "mi", "board feet", "€")) {
      assertThat(Units.suggestions(written))
          .allSatisfy(symbol -> assertThat(Units.find(symbol)).isPresent());
    }
    assertThat(Units.suggestions("fathoms")).isEmpty();
    assertThat(Units.suggestions("USD/fathom")).isEmpty();
    assertThat(Units.suggestions("")).isEmpty();
  }

  @Test
  void no_currency_is_taken_for_a_measure() {
    assertThat(
            Units.symbols()
                .filter(symbol -> Units.isCurrency(symbol.toUpperCase(java.util.Locale.ROOT))))
        .isEmpty();
  }

  @Test
  void a_quantity_is_not_measured_in_a_unit_of_something_else() {
    Quantity length = Quantity.of(Rational.ONE, Units.INCH);
    assertThatThrownBy(() -> length.in(Units.POUND))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a length is not measured in lb");
  }
}
