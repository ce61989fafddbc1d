package org.battenbook.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {
  private static final Rational SIXTEENTH = Rational.of(1, 16);

  private static void rounds(Rounding rounding, String value, String step, String rounded) {
    assertThat(rounding.toStep(Rational.parse(value), Rational.parse(step)))
        .isEqualTo(Rational.parse(rounded));
  }

  /**
   * Ties to even. 45.x: ASTM E29's rule as quoted in a public field sampling and testing manual.
   * 1.6x: ASME A112.18.1-2018/CSA B125.1-18, annex A.2. 12.x and 12xx: rule A of ISO 80000-1, annex
   * B, from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "45.71, 0.1, 45.7",
    "45.74, 0.1, 45.7",
    "45.76, 0.1, 45.8",
    "45.7500, 0.1, 45.8",
    "45.4500, 0.1, 45.4",
    "45.45001, 0.1, 45.5",
    "1.655000, 0.01, 1.66",
    "1.625000, 0.01, 1.62",
    "12.25, 0.1, 12.2",
    "12.35, 0.1, 12.4",
    "1225.0, 10, 1220",
    "1235.0, 10, 1240",
    "-12.25, 0.1, -12.2",
    "-12.35, 0.1, -12.4"
  })
  void evenly_sends_ties_to_the_even_step(String value, String step, String rounded) {
    rounds(Rounding.EVENLY, value, step, rounded);
  }

  /**
   * Ties away from zero. 132.48, 12.23, 0.145: ST SEV 543-77. 1.861: Iowa DOT IM 202. 12.25: rule B
   * of ISO 80000-1, annex B, from memory. 2.5: ODF 1.3 part 4, ROUND. Sixty-fourths: worked
   * examples of public decimal-to-fraction charts.
   */
  @ParameterizedTest
  @CsvSource({
    "132.48, 0.1, 132.5",
    "12.23, 0.1, 12.2",
    "0.145, 0.01, 0.15",
    "1.861, 0.01, 1.86",
    "12.25, 0.1, 12.3",
    "12.35, 0.1, 12.4",
    "2.5, 1, 3",
    "-2.5, 1, -3",
    "0.123, 1/64, 1/8",
    "0.400, 1/64, 13/32"
  })
  void nearest_sends_ties_away_from_zero(String value, String step, String rounded) {
    rounds(Rounding.NEAREST, value, step, rounded);
  }

  /** Ontario MTO LS-100, section 3.3, and NIST GLP 9: never by way of 1.35. */
  @Test
  void a_number_is_rounded_in_one_step() {
    rounds(Rounding.NEAREST, "1.347", "0.1", "1.3");
  }

  /** The last row is what doubles get wrong: 0.1 + 0.2 is 3 steps of a tenth, not 4. */
  @ParameterizedTest
  @CsvSource({
    "660/127, 1/16, 5 1/4",
    "5 3/16, 1/16, 5 3/16",
    "-5.2, 1/16, -5 3/16",
    "0, 1/16, 0",
    "3/10, 1/10, 3/10"
  })
  void up_goes_to_the_next_step_unless_on_one(String value, String step, String rounded) {
    rounds(Rounding.UP, value, step, rounded);
  }

  /** 2.0398 to whole pence: HMRC, VAT Notice 700, section 17.5, lets invoice totals go down. */
  @ParameterizedTest
  @CsvSource({"2.0398, 0.01, 2.03", "660/127, 1/16, 5 3/16", "-5.2, 1/16, -5 1/4", "-8.9, 1, -9"})
  void down_goes_to_the_step_below(String value, String step, String rounded) {
    rounds(Rounding.DOWN, value, step, rounded);
  }

  @Test
  void every_way_is_the_decimal_one_of_the_JDK() {
    Map<Rounding, RoundingMode> modes =
        Map.of(
            Rounding.UP, RoundingMode.CEILING,
            Rounding.DOWN, RoundingMode.FLOOR,
            Rounding.NEAREST, RoundingMode.HALF_UP,
            Rounding.EVENLY, RoundingMode.HALF_EVEN);
    Samples samples = new Samples();
    for (int i = 0; i < 5_000; i++) {
      BigDecimal value = new BigDecimal(samples.anyWhole(), samples.random().nextInt(6));
      Rational exact = Rational.parse(value.toPlainString());
      modes.forEach(
          (rounding, mode) ->
              assertThat(rounding.toStep(exact, Rational.of(1, 100)))
                  .as("%s %s, seed %s", rounding, value, samples.seed)
                  .isEqualTo(Rational.parse(value.setScale(2, mode).toPlainString())));
    }
  }

  @Test
  void a_rounded_value_is_whole_steps_away_by_less_than_one_and_stays_where_it_is() {
    Samples samples = new Samples();
    for (int i = 0; i < 5_000; i++) {
      Rational value = samples.anyRational();
      Rational step = samples.anyRationalButZero().abs();
      for (Rounding rounding : Rounding.values()) {
        Rational rounded = rounding.toStep(value, step);
        String what = rounding + " " + value + " to " + step + ", seed " + samples.seed;
        assertThat(rounded.dividedBy(step).isWhole()).as(what).isTrue();
        assertThat(rounded.minus(value).abs()).as(what).isLessThan(step);
        assertThat(rounding.toStep(rounded, step)).as(what).isEqualTo(rounded);
      }
    }
  }

  @Test
  void an_approximate_value_within_half_a_millionth_of_a_step_is_on_it() {
    Real justAbove = new Approximate(5.25 + 0.02e-6, 1e-12);
    Real clearlyAbove = new Approximate(5.25 + 0.2e-6, 1e-12);
    assertThat(Rounding.UP.toStep(justAbove, SIXTEENTH)).isEqualTo(Rational.parse("5 1/4"));
    assertThat(Rounding.UP.toStep(clearlyAbove, SIXTEENTH)).isEqualTo(Rational.parse("5 5/16"));
    assertThat(Rounding.DOWN.toStep(justAbove.negate(), SIXTEENTH))
        .isEqualTo(Rational.parse("-5 1/4"));
  }

  @Test
  void a_rounded_approximate_value_is_exact_again_unless_its_bound_straddles() {
    assertThat(Rounding.NEAREST.toStep(new Approximate(1.3, 0.01), SIXTEENTH))
        .isEqualTo(Rational.parse("1 5/16"));
    Real straddling = Rounding.NEAREST.toStep(new Approximate(1.3, 0.05), SIXTEENTH);
    assertThat(straddling.isExact()).isFalse();
    assertThat(straddling.toDouble()).isEqualTo(1.3125);
    assertThat(straddling.bound()).isBetween(0.0625, 0.13);
  }

  @Test
  void an_approximate_step_gives_an_approximate_multiple() {
    Real step = RealFunctions.squareRoot(Rational.of(2));
    Real rounded = Rounding.UP.toStep(Rational.of(4), step);
    assertThat(rounded.isExact()).isFalse();
    assertThat(rounded.compareTo(step.times(Rational.of(3)))).isZero();
  }

  @Test
  void a_step_is_greater_than_zero() {
    for (Rational step : new Rational[] {Rational.ZERO, SIXTEENTH.negate()}) {
      assertThatThrownBy(() -> Rounding.UP.toStep(Rational.ONE, step))
          .isInstanceOf(ArithmeticException.class)
          .hasMessage("a rounding step is greater than zero");
    }
  }
}
