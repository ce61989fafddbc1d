package org.battenbook.plan.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;
import org.junit.jupiter.api.Test;

/** What no plan is made for is said plainly. */
class StickRefusalTest {
  private static final Rational LESS = Rational.of(-1);

  private static void refused(String message, ThrowingCallable job) {
    assertThatThrownBy(job).isInstanceOf(Refusal.class).hasMessage(message);
  }

  @Test
  void lengths_are_above_zero() {
    String part = "the length of part 'rail' must be more than 0";
    refused(part, () -> new Part("rail", Rational.ZERO, 1));
    refused(part, () -> new Part("rail", LESS, 1));
    refused(
        "the length of stock 'ash' must be more than 0",
        () -> Stock.bought("ash", LESS, Rational.ONE));
  }

  @Test
  void counts_and_costs_are_not_below_zero() {
    refused(
        "the quantity of part 'rail' must be at least 0; it is -1",
        () -> new Part("rail", Rational.ONE, -1));
    refused(
        "the cost of stock 'ash' must be at least 0",
        () -> Stock.bought("ash", Rational.ONE, LESS));
    refused(
        "the count of stock \'ash\' must be at least 0", () -> Stock.kept("ash", Rational.ONE, -2));
  }

  @Test
  void what_costs_nothing_is_limited() {
    refused(
        "stock 'ash' costs nothing; enter how many are on hand",
        () ->
            new Stock(
                "ash",
                Stretch.whole(Rational.ONE),
                Rational.ZERO,
                Rational.ZERO,
                OptionalInt.empty()));
  }

  @Test
  void kerf_nest_and_trims_are_not_below_zero() {
    Rational zero = Rational.ZERO;
    Stock ash = Stock.bought("ash", Rational.ONE, Rational.ONE);
    refused("the kerf must be at least 0", () -> new StickRules(LESS, zero));
    refused("the nest must be at least 0", () -> new StickRules(zero, LESS));
    refused("the left trim of stock 'ash' must be at least 0", () -> ash.trimmed(LESS, zero));
    refused("the right trim of stock 'ash' must be at least 0", () -> ash.trimmed(zero, LESS));
    refused("the minimum offcut of stock 'ash' must be at least 0", () -> ash.keeping(LESS));
    refused(
        "the start of stock 'ash' must be at least 0",
        () -> stock(new Stretch(LESS, Rational.ONE, zero, zero)));
  }

  @Test
  void parts_are_longer_than_their_cuts() {
    refused(
        "part 'rail' is shorter than the kerf; correct its length or the kerf",
        () -> job(Rational.ONE, StickRules.ofKerf(Rational.of(2))));
    refused(
        "part 'rail' is shorter than twice the nest, so its ends would cross; correct its"
            + " length, or do not let the stock rotate",
        () -> job(Rational.ONE, new StickRules(Rational.ZERO, Rational.of(51, 100))));
  }

  @Test
  void sets_name_each_cut_once() {
    refused(
        "set 'chart' has no parts; name its parts", () -> new MatchedSet("chart", List.of(), 1));
    refused(
        "part 'rail' of set 'chart' must be named once for each cut",
        () -> new MatchedSet("chart", List.of(new Part("rail", Rational.ONE, 2)), 1));
    refused(
        "the quantity of set 'chart' must be at least 0; it is -1",
        () -> new MatchedSet("chart", List.of(new Part("rail", Rational.ONE, 1)), -1));
  }

  @Test
  void a_million_pieces_are_too_many() {
    refused(
        "one plan can have at most 100,000 pieces; there are 1,000,000. Split the job",
        () -> job(Rational.ONE, 1_000_000));
  }

  @Test
  void sticks_that_their_trims_leave_nothing_of_hold_nothing() {
    Part rail = new Part("rail", Rational.ONE, 1);
    Stock stub = Stock.bought("stub", Rational.of(3), Rational.ONE);
    Rational two = Rational.of(2);
    StickJob job = new StickJob(List.of(rail), List.of(stub.trimmed(two, two)), StickRules.bare());
    StickPlan plan = PlanCheck.checked(job, StickPlanner.plan(job));
    assertThat(plan.tooLong()).containsExactly(rail);
  }

  @Test
  void lengths_without_a_common_step_that_can_be_counted_are_refused() {
    Rational odd = Rational.ONE.dividedBy(Rational.of(1_000_000_007L).pow(2));
    refused(
        "the lengths have no common step; round them to one, such as 1/1000",
        () -> StickPlanner.plan(job(Rational.ONE.plus(odd), 2)));
  }

  private static Stock stock(Stretch stretch) {
    return new Stock("ash", stretch, Rational.ZERO, Rational.ONE, OptionalInt.empty());
  }

  private static StickJob job(Rational length, StickRules rules) {
    return new StickJob(
        List.of(new Part("rail", length, 1)),
        List.of(Stock.bought("ash", Rational.of(96), Rational.ONE)),
        rules);
  }

  private static StickJob job(Rational length, int count) {
    return new StickJob(
        List.of(new Part("rail", length, count)),
        List.of(Stock.bought("ash", Rational.of(96), Rational.ONE)),
        StickRules.bare());
  }
}
