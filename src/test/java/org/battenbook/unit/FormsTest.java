package org.battenbook.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.battenbook.number.Rational;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormsTest {
  private final Forms ofInches = Forms.of(Form.of(Rational.of(1, 32), false, Units.INCH));
  private final Forms ofMetric = Forms.of(Form.of(null, false, Units.MILLIMETRE));

  @ParameterizedTest
  @CsvSource({
    "10, in, 10 in, 254 mm",
    "1, in^2, 1 in^2, ≈ 0.0006452 m^2",
    "1000, in^3, 1000 in^3, ≈ 0.01639 m^3",
    "1, lb, 1 lb, ≈ 0.4536 kg",
    "2500, kg/m^3, ≈ 156.07 lb/ft^3, 2500 kg/m^3",
    "1.5, USD/ft, 1.50 USD/ft, ≈ 4.921 USD/m",
    "12, USD/ft^2, 12.00 USD/ft^2, ≈ 129.167 USD/m^2",
    "25, USD/h, 25.00 USD/h, 25.00 USD/h",
    "45, deg, 45 deg, 45 deg",
    "18, degF, 18 degF, 10 K",
    "90, min, 1.5 h, 1.5 h",
    "12, USD, 12.00 USD, 12.00 USD"
  })
  void inch_lengths_bring_pounds_and_metric_ones_kilograms(
      String number, String unit, String inches, String metric) {
    Quantity quantity = Quantity.of(Rational.parse(number), Units.find(unit).orElseThrow());
    assertThat(ofInches.show(quantity).text()).isEqualTo(inches);
    assertThat(ofMetric.show(quantity).text()).isEqualTo(metric);
  }

  @Test
  void counts_have_no_unit() {
    assertThat(ofInches.show(Quantity.of(Rational.of(7))).text()).isEqualTo("7");
  }

  @Test
  void feet_and_inches_take_the_step_of_the_workbook() {
    Quantity length = Quantity.of(Rational.parse("27 17/32"), Units.INCH);
    Form feet = ofInches.shownAs(null, false, Units.FOOT);
    assertThat(feet.show(length).text()).isEqualTo("2 ft 3 17/32 in");
    assertThat(feet.step()).isEqualTo(Rational.of(1, 384));
    assertThat(ofMetric.shownAs(null, false, Units.FOOT).show(length).text())
        .isEqualTo("≈ 2 ft 3 9/16 in");
    assertThat(ofInches.shownAs(null, false, Units.INCH).show(length).text())
        .isEqualTo("27 17/32 in");
  }

  @Test
  void a_line_asks_for_a_form_of_its_own() {
    Quantity length = Quantity.of(Rational.parse("1 1/2"), Units.INCH);
    assertThat(ofInches.shownAs(null, false, Units.MILLIMETRE).show(length).text())
        .isEqualTo("38.1 mm");
    assertThat(ofMetric.shownAs(Rational.parse("0.01"), true, Units.INCH).show(length).text())
        .isEqualTo("1.50 in");
  }

  @Test
  void lengths_are_not_shown_in_pounds() {
    assertThatThrownBy(() -> Forms.of(Form.of(null, false, Units.POUND)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("lb does not measure lengths");
  }
}
