package org.battenbook.plan.sheet;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;
import org.junit.jupiter.api.Test;

/** What no plan of sheets is made for is said plainly. */
class SheetRefusalTest {
  private static final Rational LESS = Rational.of(-1);
  private static final Rational ONE = Rational.ONE;

  private static void refused(String message, ThrowingCallable job) {
    assertThatThrownBy(job).isInstanceOf(Refusal.class).hasMessage(message);
  }

  private static SheetJob job(Rational side, int count, Rational kerf, OptionalInt stages) {
    return new SheetJob(
        List.of(new SheetPart("lid", side, ONE, count, true)),
        List.of(SheetStock.bought("board", Rational.of(9), Rational.of(9), ONE)),
        kerf,
        stages);
  }

  @Test
  void sides_are_above_zero() {
    refused(
        "a side of part 'lid' is not above zero: correct it, or ask for none",
        () -> new SheetPart("lid", ONE, Rational.ZERO, 1, true));
    refused(
        "a side of stock 'board' is not above zero: correct it, or leave that stock out",
        () -> SheetStock.bought("board", LESS, ONE, ONE));
  }

  @Test
  void counts_costs_kerf_and_trims_are_not_below_zero() {
    refused(
        "part 'lid' is asked for -1 times: say how many, or 0 for none",
        () -> new SheetPart("lid", ONE, ONE, -1, true));
    refused(
        "the cost of stock 'board' is below zero: correct it, or say 0",
        () -> SheetStock.bought("board", ONE, ONE, LESS));
    refused(
        "of stock 'board' there are fewer than none: say how many, or 0",
        () -> SheetStock.kept("board", ONE, ONE, -2));
    refused(
        "the kerf is below zero: correct it, or say 0",
        () -> job(ONE, 1, LESS, OptionalInt.empty()));
    refused(
        "a trim of a sheet is below zero: correct it, or say 0",
        () -> new SheetTrims(Rational.ZERO, LESS, Rational.ZERO, Rational.ZERO));
  }

  @Test
  void what_costs_nothing_is_limited() {
    refused(
        "stock 'board' costs nothing: say how many are on hand",
        () -> SheetStock.bought("board", ONE, ONE, Rational.ZERO));
  }

  @Test
  void there_is_a_stage_at_least() {
    refused(
        "sheets are cut in one stage at least",
        () -> job(ONE, 1, Rational.ZERO, OptionalInt.of(0)));
  }

  @Test
  void a_million_pieces_are_too_many() {
    refused(
        "1,000,000 pieces are more than the 10,000 of one plan: plan them in turn",
        () -> job(ONE, 1_000_000, Rational.ZERO, OptionalInt.empty()));
  }

  @Test
  void sides_without_a_common_step_that_can_be_counted_are_refused() {
    Rational odd = ONE.plus(ONE.dividedBy(Rational.of(1_000_000_007L)));
    refused(
        "the sides have no common step that is not too fine: round them to one, such as 1/1000",
        () -> SheetPlanner.plan(job(odd, 2, Rational.ZERO, OptionalInt.empty())));
  }
}
