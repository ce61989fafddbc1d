package org.battenbook.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.battenbook.number.Approximate;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.number.RealFunctions;
import org.battenbook.number.Rounding;
import org.junit.jupiter.api.Test;

/** Which lane a result is held in: what is common stays in the narrow ones. */
class LaneFormsTest {
  private static final Rational MILLIMETRE = Rational.of(5, 127);

  private static NumberLane of(Object... numbers) {
    Real[] reals = new Real[numbers.length];
    for (int row = 0; row < reals.length; row++) {
      reals[row] = numbers[row] instanceof Real real ? real : Rational.parse("" + numbers[row]);
    }
    return NumberLane.of(reals);
  }

  @Test
  void mixed_inches_and_millimetres_share_one_tick() {
    NumberLane lane = of("11", "12 1/16", MILLIMETRE.times(Rational.of(297)), "0");
    assertThat(lane).isInstanceOf(LongLane.class);
    assertThat(((LongLane) lane).tick()).isEqualTo(Rational.of(1, 2032));
  }

  @Test
  void a_constant_factor_changes_the_tick_alone() {
    LongLane lane = (LongLane) of("1/16", "3/16");
    LongLane scaled = (LongLane) lane.times(NumberLane.constant(Rational.of(2, 3), 2));
    assertThat(scaled.ticks).isSameAs(lane.ticks);
    assertThat(lane.dividedBy(NumberLane.constant(Rational.of(25), 2)))
        .isInstanceOf(LongLane.class);
  }

  @Test
  void a_rail_stays_in_longs_and_ends_in_the_ticks_of_its_step() {
    NumberLane art = of("11", MILLIMETRE.times(Rational.of(297)));
    NumberLane rail =
        art.plus(NumberLane.constant(Rational.parse("5 1/8"), 2))
            .plus(of("2.5", "2.5").times(NumberLane.constant(Rational.of(2), 2)))
            .rounded(Rounding.UP, NumberLane.constant(Rational.of(1, 16), 2));
    assertThat(rail).isInstanceOf(LongLane.class);
    assertThat(((LongLane) rail).tick()).isEqualTo(Rational.of(1, 16));
  }

  @Test
  void a_division_waits_as_a_ratio_for_the_rounding_after_it() {
    NumberLane ratio = of("10", "7", "-7").dividedBy(of("3", "-2", "2"));
    assertThat(ratio).isInstanceOf(RatioLane.class);
    assertThat(ratio.plus(of("1", "1", "1"))).isInstanceOf(RatioLane.class);
    assertThat(ratio.rounded(Rounding.UP, NumberLane.constant(Rational.ONE, 3)))
        .isInstanceOf(LongLane.class)
        .isEqualTo(of("4", "-3", "-3"));
  }

  @Test
  void what_overflows_a_long_goes_to_128_bits_and_comes_back_by_rounding() {
    LongLane large = new LongLane(new long[] {Long.MAX_VALUE, 5}, Rational.ONE, Long.MAX_VALUE);
    assertThat(large.plus(large)).isInstanceOf(WideLane.class);
    assertThat(large.times(of("1/3", "7"))).isInstanceOf(WideLane.class);
    NumberLane thousands = NumberLane.constant(Rational.of(1_000), 2);
    assertThat(large.plus(large).rounded(Rounding.DOWN, thousands)).isInstanceOf(LongLane.class);
    assertThat(large.minus(large.plus(large)).abs()).isEqualTo(large);
  }

  @Test
  void a_bound_that_grew_too_careful_is_looked_up_again() {
    NumberLane small = new LongLane(new long[] {3, -4}, Rational.ONE, Long.MAX_VALUE - 1);
    assertThat(small.plus(small)).isInstanceOf(LongLane.class).isEqualTo(of("6", "-8"));
    assertThat(small.times(small)).isInstanceOf(LongLane.class).isEqualTo(of("9", "16"));
  }

  @Test
  void approximate_numbers_come_back_to_longs_by_rounding() {
    NumberLane roots = of("2", "3").map(RealFunctions::squareRoot);
    assertThat(roots).isInstanceOf(RealLane.class);
    NumberLane sixteenth = NumberLane.constant(Rational.of(1, 16), 2);
    assertThat(roots.rounded(Rounding.UP, sixteenth))
        .isInstanceOf(LongLane.class)
        .isEqualTo(of("1 7/16", "1 3/4"));
    assertThat(of("4", "9").map(RealFunctions::squareRoot)).isInstanceOf(LongLane.class);
  }

  @Test
  void a_number_past_all_lanes_is_held_as_an_object() {
    NumberLane lane = of("1/3", Rational.of(2).pow(200));
    assertThat(lane).isInstanceOf(RealLane.class);
    assertThat(of(new Approximate(1, 1e-9), "2").isExact()).isFalse();
  }

  @Test
  void nothing_is_divided_by_zero() {
    assertThatThrownBy(() -> of("1", "1").dividedBy(of("2", "0")))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("division by zero");
    assertThatThrownBy(() -> of("1").dividedBy(NumberLane.constant(Rational.ZERO, 1)))
        .isInstanceOf(ArithmeticException.class);
  }

  @Test
  void lanes_of_different_lengths_do_not_go_together() {
    assertThatThrownBy(() -> of("1").plus(of("1", "2")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("1 rows and 2");
  }
}
