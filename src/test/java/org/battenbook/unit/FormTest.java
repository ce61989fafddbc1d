package org.battenbook.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.battenbook.number.Approximate;
import org.battenbook.number.Rational;
import org.battenbook.number.RealFunctions;
import org.battenbook.number.Rounding;
import org.battenbook.number.Samples;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormTest {
  private static Form form(@Nullable String step, boolean decimal, String unit) {
    return Form.of(
        step == null ? null : Rational.parse(step), decimal, Units.find(unit).orElseThrow());
  }

  private static Quantity quantity(String number, String unit) {
    return Quantity.of(Rational.parse(number), Units.find(unit).orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "19.375, in, 19 3/8 in",
    "-0.1875, in, -3/16 in",
    "5/8, in, 5/8 in",
    "6, in, 6 in",
    "0, in, 0 in",
    "-6 1/2, in, -6 1/2 in",
    "132, mm, ≈ 5 3/16 in",
    "1/32, in, ≈ 1/16 in",
    "1/100, in, ≈ 0 in",
    "-1/100, in, ≈ 0 in",
    "2, ft, 24 in"
  })
  void fractions_are_printed_in_lowest_terms(String number, String unit, String text) {
    assertThat(form("1/16", false, "in").show(quantity(number, unit)).text()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "27.5, in, 2 ft 3 1/2 in",
    "24, in, 2 ft",
    "3.5, in, 3 1/2 in",
    "0, in, 0 ft",
    "-27.5, in, -2 ft 3 1/2 in",
    "-1/16, in, -1/16 in",
    "1, m, ≈ 3 ft 3 3/8 in",
    "11 127/128, in, ≈ 1 ft"
  })
  void feet_come_with_inches(String number, String unit, String text) {
    Form feet = form(null, false, "ft");
    assertThat(feet.show(quantity(number, unit)).text()).isEqualTo(text);
    assertThat(feet.isFeetAndInches()).isTrue();
    assertThat(feet.isDecimal()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "0.01, in, 15.5, in, 15.50 in",
    "0.01, in, 3/8, in, ≈ 0.38 in",
    "0.1, mm, 1/64, in, ≈ 0.4 mm",
    "0.5, mm, 131.5, mm, 131.5 mm",
    "0.5, mm, 131.7, mm, ≈ 131.5 mm",
    "0.05, CHF, 2.55, CHF, 2.55 CHF",
    "0.01, in, -0.001, in, ≈ 0.00 in"
  })
  void decimals_keep_the_places_of_their_step(
      String step, String shownUnit, String number, String unit, String text) {
    Form form = form(step, true, shownUnit);
    assertThat(form.show(quantity(number, unit)).text()).isEqualTo(text);
    assertThat(form.isDecimal()).isTrue();
    assertThat(form.step()).isEqualTo(Rational.parse(step));
  }

  @ParameterizedTest
  @CsvSource({
    "mm, 17087/1016, in, 427.175 mm",
    "mm, 1/64, in, 0.396875 mm",
    "mm, 297, mm, 297 mm",
    "m, 1, ft, 0.3048 m",
    "kg, 1, lb, ≈ 0.4536 kg",
    "m, 1, mm, 0.001 m",
    "yd, 1, in, ≈ 0.02778 yd",
    "%, 15, %, 15 %",
    "h, 1, s, ≈ 0.0002778 h",
    "lb, 20, oz, 1.25 lb"
  })
  void a_unit_alone_takes_the_decimals_it_needs(
      String shownUnit, String number, String unit, String text) {
    Form form = form(null, false, shownUnit);
    assertThat(form.show(quantity(number, unit)).text()).isEqualTo(text);
    assertThat(form.step()).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "1/3, ≈ 0.3333",
    "1/3000000000000000, ≈ 0",
    "0.00004, 0.00004",
    "1000000, 1000000",
    "-2/3, ≈ -0.6667",
    "12345.6789, 12345.6789",
    "37037/3, ≈ 12345.667",
    "0.00099999999, ≈ 0.001"
  })
  void plain_numbers_take_the_decimals_they_need(String number, String text) {
    Form form = Form.of(null, false, Unit.NONE);
    assertThat(form.show(Quantity.of(Rational.parse(number))).text()).isEqualTo(text);
  }

  /** Minor digits: ISO 4217, list one of 2024-06-25. XAU has none, so it takes what it needs. */
  @ParameterizedTest
  @CsvSource({
    "USD, 1/2, 0.50 USD",
    "EUR, 1234.5, 1234.50 EUR",
    "GBP, 7, 7.00 GBP",
    "CAD, 7, 7.00 CAD",
    "CHF, 7, 7.00 CHF",
    "MRU, 7, 7.00 MRU",
    "JPY, 7, 7 JPY",
    "KRW, 7, 7 KRW",
    "ISK, 7, 7 ISK",
    "BHD, 7, 7.000 BHD",
    "KWD, 7, 7.000 KWD",
    "TND, 7, 7.000 TND",
    "CLF, 7, 7.0000 CLF",
    "XAU, 1/8, 0.125 XAU",
    "USD, 1/3, ≈ 0.33 USD",
    "JPY, 1/2, ≈ 1 JPY",
    "USD, -0.005, ≈ -0.01 USD"
  })
  void money_has_the_minor_digits_of_its_currency(String currency, String number, String text) {
    assertThat(form(null, false, currency).show(quantity(number, currency)).text()).isEqualTo(text);
  }

  @Test
  void a_rate_of_money_has_them_at_least() {
    assertThat(form(null, false, "USD/ft").show(quantity("2.5", "USD/ft")).text())
        .isEqualTo("2.50 USD/ft");
    assertThat(form(null, false, "USD/ft").show(quantity("1.875", "USD/ft")).text())
        .isEqualTo("1.875 USD/ft");
  }

  @Test
  void an_approximate_number_is_marked_even_where_it_looks_exact() {
    Quantity quarter = new Quantity(new Approximate(0.25, 1e-15), Dimension.LENGTH);
    Shown shown = form("1/16", false, "in").show(quarter);
    assertThat(shown).isEqualTo(new Shown("≈ 1/4 in", true));
    Quantity diagonal = new Quantity(RealFunctions.squareRoot(Rational.of(2)), Dimension.LENGTH);
    assertThat(form(null, false, "mm").show(diagonal).text()).isEqualTo("≈ 35.921 mm");
  }

  @Test
  void a_text_without_mark_reads_back_as_the_very_value() {
    Samples samples = new Samples();
    Form form = form("1/64", false, "in");
    for (int i = 0; i < 2_000; i++) {
      Rational length = samples.anyLength();
      Shown shown = form.show(new Quantity(length, Dimension.LENGTH));
      Rational read = Rational.parse(shown.text().replace("≈ ", "").replace(" in", ""));
      assertThat(read)
          .as("%s, seed %s", length, samples.seed)
          .isEqualTo(Rounding.NEAREST.toStep(length, Rational.of(1, 64)));
      assertThat(shown.approximate())
          .as("%s, seed %s", length, samples.seed)
          .isEqualTo(!read.equals(length))
          .isEqualTo(shown.text().startsWith("≈ "));
    }
  }

  @Test
  void a_step_is_greater_than_zero_and_a_decimal_ends() {
    assertThatThrownBy(() -> form("0", false, "in")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> form("-1", true, "in")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> form("1/3", true, "in")).isInstanceOf(IllegalArgumentException.class);
  }
}
