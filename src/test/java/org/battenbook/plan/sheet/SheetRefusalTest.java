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
        "width and height of part 'lid' must be more than 0",
        () -> new SheetPart("lid", ONE, Rational.ZERO, 1, true));
    refused(
        "width and height of stock 'board' must be more than 0",
        () -> SheetStock.bought("board", LESS, ONE, ONE));
  }

  @Test
  void counts_costs_kerf_and_trims_are_not_below_zero() {
    refused(
        "the quantity of part 'lid' must be at least 0; it is -1",
        () -> new SheetPart("lid", ONE, ONE, -1, true));
    refused(
        "the cost of stock 'board' must be at least 0",
        () -> SheetStock.bought("board", ONE, ONE, LESS));
    refused(
        "the count of stock \'board\' must be at least 0",
        () -> SheetStock.kept("board", ONE, ONE, -2));
    refused("the kerf must be at least 0", () -> job(ONE, 1, LESS, OptionalInt.empty()));
    refused(
        "the trims of a sheet must be at least 0",
        () -> new SheetTrims(Rational.ZERO, LESS, Rational.ZERO, Rational.ZERO));
  }

  @Test
  void what_costs_nothing_is_limited() {
    refused(
        "stock 'board' costs nothing; enter how many are on hand",
        () -> SheetStock.bought("board", ONE, ONE, Rational.ZERO));
  }

  @Test
  void there_is_a_stage_at_least() {
    refused(
        "the number of cutting stages must be at least 1",
        () -> job(ONE, 1, Rational.ZERO, OptionalInt.of(0)));
  }

  @Test
  void a_million_pieces_are_too_many() {
    refused(
        "one plan can have at most 10,000 pieces; there are 1,000,000. Split the job",
        () -> job(ONE, 1_000_000, Rational.ZERO, OptionalInt.empty()));
  }

  @Test
  void sides_without_a_common_step_that_can_be_counted_are_refused() {
    Rational odd = ONE.plus(ONE.dividedBy(Rational.of(1_000_000_007L)));
    refused(
        "the sides have no common step; round them to one, such as 1/1000",
        () -> SheetPlanner.plan(job(odd, 2, Rational.ZERO, OptionalInt.empty())));
  }
}
