package org.battenbook.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RealFunctionsTest {
  private static final MathContext DIGITS = new MathContext(40);

  /** Known to 50 digits, for instance ISO 80000-2 item 2-15.1 and any table of constants. */
  private static final BigDecimal PI =
      new BigDecimal("3.14159265358979323846264338327950288419716939937511");

  private final Samples samples = new Samples();

  @ParameterizedTest
  @CsvSource({
    "4, 2",
    "9/16, 3/4",
    "0, 0",
    "1, 1",
    "0.01, 0.1",
    "340282366920938463463374607431768211456, 18446744073709551616"
  })
  void the_root_of_a_square_is_exact(String square, String root) {
    assertThat(RealFunctions.squareRoot(Rational.parse(square))).isEqualTo(Rational.parse(root));
  }

  /** Plane geometry; the only rational ones for rational angles by Niven's theorem. */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 1",
    "60, , 1/2",
    "30, 1/2, ",
    "90, 1, 0",
    "120, , -1/2",
    "150, 1/2, ",
    "180, 0, -1",
    "210, -1/2, ",
    "240, , -1/2",
    "270, -1, 0",
    "300, , 1/2",
    "330, -1/2, ",
    "360, 0, 1",
    "-30, -1/2, ",
    "-60, , 1/2",
    "-90, -1, 0",
    "3600000000000000000030, 1/2, "
  })
  void rational_sines_and_cosines_are_exact(String degrees, String sine, String cosine) {
    exactlyOrNot(RealFunctions.sine(Rational.parse(degrees)), sine);
    exactlyOrNot(RealFunctions.cosine(Rational.parse(degrees)), cosine);
  }

  private static void exactlyOrNot(Real result, String exact) {
    if (exact == null) {
      assertThat(result.isExact()).isFalse();
    } else {
      assertThat(result).isEqualTo(Rational.parse(exact));
    }
  }

  /** A square frame and a 45 degree cleat stay exact. */
  @ParameterizedTest
  @CsvSource({"45, 1", "0, 0", "135, -1", "-45, -1", "180, 0", "225, 1", "405, 1"})
  void the_tangent_of_half_a_right_angle_is_exactly_one(String degrees, String tangent) {
    assertThat(RealFunctions.tangent(Rational.parse(degrees))).isEqualTo(Rational.parse(tangent));
  }

  @Test
  void a_right_angle_has_no_tangent() {
    for (long degrees : new long[] {90, -90, 270, 450}) {
      assertThatThrownBy(() -> RealFunctions.tangent(Rational.of(degrees)))
          .isInstanceOf(ArithmeticException.class)
          .hasMessage("the tangent of a right angle");
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 45", "-1, -45", "0, 0"})
  void the_angle_of_a_rational_tangent_is_exact(String tangent, String degrees) {
    assertThat(RealFunctions.arctangent(Rational.parse(tangent)))
        .isEqualTo(Rational.parse(degrees));
  }

  @Test
  void a_negative_number_has_no_root() {
    assertThatThrownBy(() -> RealFunctions.squareRoot(Rational.of(-1)))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("the square root of a negative number");
  }

  @Test
  void a_number_that_may_be_zero_has_a_root_that_may_be_zero() {
    assertThat(RealFunctions.squareRoot(new Approximate(-1e-20, 1e-18)).signum()).isZero();
    assertThat(RealFunctions.squareRoot(new Approximate(0, 0)).toDouble()).isZero();
  }

  @Test
  void of_two_that_cannot_be_told_apart_least_and_greatest_hold_both() {
    Rational third = Rational.of(1, 3);
    Real blurred = new Approximate(0.3333, 1e-3);
    assertThat(RealFunctions.least(third, Rational.ONE)).isEqualTo(third);
    assertThat(RealFunctions.greatest(blurred, Rational.ONE)).isEqualTo(Rational.ONE);
    for (Real either :
        List.of(RealFunctions.least(third, blurred), RealFunctions.greatest(blurred, third))) {
      assertThat(either.isExact()).isFalse();
      assertThat(either.bound()).isEqualTo(1e-3);
      assertThat(either.compareTo(third)).isZero();
    }
    assertThat(RealFunctions.least(third, blurred).toDouble()).isEqualTo(0.3333);
    assertThat(RealFunctions.greatest(third, blurred).toDouble()).isEqualTo(1 / 3.0);
  }

  /** Polygon outer edges by plane geometry, as printed in trade tables to six places. */
  @ParameterizedTest
  @CsvSource({"6, 1.154701", "8, 0.828427", "4, 2"})
  void a_polygons_outer_side_is_longer_by_twice_its_tangent(long sides, double perWidth) {
    Real tangent = RealFunctions.tangent(Rational.of(180, sides));
    assertThat(tangent.toDouble() * 2).isCloseTo(perWidth, within(5e-7));
  }

  @Test
  void roots_lie_within_their_bound_of_those_of_big_decimals() {
    for (int i = 0; i < 5_000; i++) {
      Rational number = samples.anyRational().abs();
      Real root = RealFunctions.squareRoot(number);
      BigDecimal exact =
          new BigDecimal(number.numerator())
              .divide(new BigDecimal(number.denominator()), new MathContext(60))
              .sqrt(DIGITS);
      if (!root.isExact()) {
        liesWithin(root, exact, number);
      }
    }
  }

  @Test
  void sines_cosines_and_tangents_lie_within_their_bound_of_the_series() {
    for (int i = 0; i < 3_000; i++) {
      Rational degrees = samples.anyLength();
      BigDecimal sine = sineSeries(degrees);
      BigDecimal cosine = sineSeries(Rational.of(90).minus(degrees));
      liesWithin(RealFunctions.sine(degrees), sine, degrees);
      liesWithin(RealFunctions.cosine(degrees), cosine, degrees);
      Real blurred = new Approximate(degrees.toNearestDouble(), 1e-12);
      liesWithin(RealFunctions.sine(blurred), sine, degrees);
      liesWithin(RealFunctions.cosine(blurred), cosine, degrees);
      if (!degrees.dividedBy(Rational.of(90)).isWhole()) {
        Real tangent = RealFunctions.tangent(degrees);
        liesWithin(tangent, sine.divide(cosine, DIGITS), degrees);
        Rational turns = degrees.dividedBy(Rational.of(180));
        Rational straight = Rational.of(180).times(Rounding.NEAREST.toWhole(turns));
        Real angle = RealFunctions.arctangent(tangent);
        assertThat(angle.compareTo(degrees.minus(straight))).as("%s", degrees).isZero();
      }
    }
  }

  @Test
  void bounds_are_tight() {
    for (long degrees = 1; degrees < 90; degrees++) {
      Rational angle = Rational.of(degrees);
      assertThat(RealFunctions.sine(angle).bound()).isLessThan(2e-15);
      assertThat(RealFunctions.cosine(angle).bound()).isLessThan(2e-15);
      assertThat(RealFunctions.arctangent(angle).bound()).isLessThan(3e-13);
      assertThat(RealFunctions.squareRoot(angle).bound()).isLessThan(1e-14);
    }
  }

  private void liesWithin(Real result, BigDecimal exact, Rational of) {
    BigDecimal off = new BigDecimal(result.toDouble()).subtract(exact).abs();
    BigDecimal bound = new BigDecimal(result.bound()).add(exact.abs().movePointLeft(35));
    assertThat(off)
        .as("%s of %s, exactly %s, seed %s", result, of, exact, samples.seed)
        .isLessThanOrEqualTo(bound.max(new BigDecimal("1e-35")));
  }

  /** The sine by its power series at 0, after taking whole turns off. */
  private static BigDecimal sineSeries(Rational degrees) {
    Rational turn = Rational.of(360);
    Rational within = degrees.minus(Rounding.NEAREST.toWhole(degrees.dividedBy(turn)).times(turn));
    BigDecimal x =
        new BigDecimal(within.numerator())
            .multiply(PI)
            .divide(new BigDecimal(within.denominator()), new MathContext(60))
            .divide(BigDecimal.valueOf(180), new MathContext(60));
    BigDecimal term = x;
    BigDecimal sum = x;
    for (int n = 2; n < 60; n += 2) {
      term =
          term.multiply(x)
              .multiply(x)
              .divide(BigDecimal.valueOf(-n * (n + 1L)), new MathContext(60));
      sum = sum.add(term);
    }
    return sum;
  }
}
