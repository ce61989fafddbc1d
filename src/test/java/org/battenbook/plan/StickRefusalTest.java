package org.battenbook.plan;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.battenbook.number.Rational;
import org.junit.jupiter.api.Test;

/** What no plan is made for is said plainly. */
class StickRefusalTest {
  private static final Rational LESS = Rational.of(-1);

  private static void refused(String message, ThrowingCallable job) {
    assertThatThrownBy(job).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
  }

  @Test
  void lengths_are_above_zero() {
    String part = "the length of part 'rail' is not above zero";
    refused(part, () -> new Part("rail", Rational.ZERO, 1));
    refused(part, () -> new Part("rail", LESS, 1));
    refused(
        "the length of stock 'ash' is not above zero",
        () -> Stock.bought("ash", LESS, Rational.ONE));
  }

  @Test
  void counts_and_costs_are_not_below_zero() {
    refused("part 'rail' is asked for -1 times", () -> new Part("rail", Rational.ONE, -1));
    refused("the cost of stock 'ash' is below zero", () -> Stock.bought("ash", Rational.ONE, LESS));
    refused("of stock 'ash' there are fewer than none", () -> Stock.kept("ash", Rational.ONE, -2));
  }

  @Test
  void what_costs_nothing_is_limited() {
    refused(
        "stock 'ash' costs nothing: say how many are on hand",
        () -> new Stock("ash", Rational.ONE, Rational.ZERO, OptionalInt.empty()));
  }

  @Test
  void kerf_and_trims_are_not_below_zero() {
    Rational zero = Rational.ZERO;
    refused("the kerf is below zero", () -> new StickRules(LESS, zero, zero, zero));
    refused(
        "the trim at the first end is below zero", () -> new StickRules(zero, LESS, zero, zero));
    refused("the trim at the last end is below zero", () -> new StickRules(zero, zero, LESS, zero));
    refused("the least offcut is below zero", () -> new StickRules(zero, zero, zero, LESS));
  }

  @Test
  void a_million_pieces_are_too_many() {
    refused(
        "1000000 pieces are more than the 100000 of one plan", () -> job(Rational.ONE, 1_000_000));
  }

  @Test
  void lengths_without_a_common_step_that_can_be_counted_are_refused() {
    Rational odd = Rational.ONE.dividedBy(Rational.of(1_000_000_007L).pow(2));
    refused(
        "the lengths have no common step that is not too fine: round them to one, such as 1/1000",
        () -> StickPlanner.plan(job(Rational.ONE.plus(odd), 2)));
  }

  private static StickJob job(Rational length, int count) {
    return new StickJob(
        List.of(new Part("rail", length, count)),
        List.of(Stock.bought("ash", Rational.of(96), Rational.ONE)),
        StickRules.bare());
  }
}
