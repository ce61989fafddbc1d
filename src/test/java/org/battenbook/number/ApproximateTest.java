package org.battenbook.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.BinaryOperator;
import org.junit.jupiter.api.Test;

class ApproximateTest {
  private final Samples samples = new Samples();

  /** The true operands lie anywhere within the bounds; so must the true result. */
  @Test
  void a_bound_encloses_the_exact_result() {
    for (int i = 0; i < 20_000; i++) {
      Rational x = samples.anyLength();
      Rational y = samples.anyLength();
      for (BinaryOperator<Real> operation : operations(y)) {
        Rational exact = (Rational) operation.apply(x, y);
        encloses(operation.apply(blurred(x), blurred(y)), exact);
        encloses(operation.apply(blurred(x), y), exact);
        encloses(operation.apply(x, blurred(y)), exact);
      }
      encloses(blurred(x).pow(5), x.pow(5));
    }
  }

  private static List<BinaryOperator<Real>> operations(Rational divisor) {
    List<BinaryOperator<Real>> always = List.of(Real::plus, Real::minus, Real::times);
    return divisor.signum() == 0
        ? always
        : List.of(Real::plus, Real::minus, Real::times, Real::dividedBy);
  }

  /** An approximate number that is off by nearly its bound. */
  private Approximate blurred(Rational number) {
    double bound = 1e-9 * samples.random().nextDouble();
    double off = bound * (samples.random().nextDouble() * 2 - 1) * 0.99;
    double nearest = number.toNearestDouble();
    return new Approximate(nearest + off, bound + 2 * Math.ulp(nearest));
  }

  private void encloses(Real result, Rational exact) {
    Rational off = Rational.exactly(result.toDouble()).minus(exact).abs();
    assertThat(off)
        .as("%s for %s, seed %s", result, exact, samples.seed)
        .isLessThanOrEqualTo(Rational.exactly(result.bound()));
  }

  @Test
  void numbers_that_cannot_be_told_apart_count_as_equal() {
    Real third = new Approximate(1 / 3.0, 1e-15);
    assertThat(third.compareTo(Rational.of(1, 3))).isZero();
    assertThat(Rational.of(1, 3).compareTo(third)).isZero();
    assertThat(third.compareTo(Rational.parse("0.3333"))).isPositive();
    assertThat(Rational.parse("0.3333").compareTo(third)).isNegative();
    assertThat(third.minus(third).signum()).isZero();
  }

  @Test
  void exact_zero_stays_exact() {
    Real root = RealFunctions.squareRoot(Rational.of(2));
    assertThat(root.times(Rational.ZERO)).isEqualTo(Rational.ZERO);
    assertThat(Rational.ZERO.times(root)).isEqualTo(Rational.ZERO);
    assertThat(Rational.ZERO.dividedBy(root)).isEqualTo(Rational.ZERO);
    assertThat(Rational.ZERO.plus(root)).isEqualTo(root);
    assertThat(root.pow(0)).isEqualTo(Rational.ONE);
  }

  @Test
  void a_negative_power_is_the_reciprocal() {
    assertThat(new Approximate(2, 0).pow(-3).toDouble()).isEqualTo(0.125);
  }

  @Test
  void nothing_is_divided_by_what_may_be_zero() {
    Real maybeZero = new Approximate(1e-16, 1e-15);
    assertThatThrownBy(() -> Rational.ONE.dividedBy(maybeZero))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("division by a number that may be zero");
    assertThatThrownBy(() -> maybeZero.dividedBy(Rational.ZERO))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("division by zero");
  }

  @Test
  void a_number_too_large_is_refused() {
    Real large = new Approximate(1e200, 0);
    assertThatThrownBy(() -> large.times(large))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("the number grew past what an approximate number can hold");
  }
}
