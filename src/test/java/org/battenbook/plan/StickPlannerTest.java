package org.battenbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.battenbook.number.Rational;
import org.battenbook.number.RealFunctions;
import org.junit.jupiter.api.Test;

class StickPlannerTest {
  private static final Rational STEP = Rational.of(1, 1_000_000);

  /** A saw of 1/8 in at 45 degrees, up to a millionth of an inch. */
  private static final Rational MITER_KERF =
      StickRules.kerfUpTo(STEP, RealFunctions.squareRoot(Rational.of(1, 32)));

  private static Rational inches(String text) {
    return Rational.parse(text);
  }

  private static Stock bought(String length, String cost) {
    return Stock.bought(length, inches(length), inches(cost));
  }

  private static StickPlan plan(StickJob job) {
    return PlanCheck.checked(job, StickPlanner.plan(job));
  }

  private static StickJob bare(List<Part> parts, Stock... stocks) {
    return new StickJob(parts, List.of(stocks), StickRules.bare());
  }

  /** Worked by hand: 4 long parts take 91.0303 in with their kerfs, 5 short ones 93.8321 in. */
  @Test
  void ten_rails_of_each_length_come_out_of_five_sticks() {
    StickRules rules = new StickRules(MITER_KERF, inches("1/4"), inches("1/4"), inches("12"));
    StickJob job =
        new StickJob(
            List.of(
                new Part("top rail", inches("18 5/8"), 10),
                new Part("side rail", inches("22 5/8"), 10)),
            List.of(bought("96", "1")),
            rules);
    StickPlan plan = plan(job);
    assertThat(plan.sticks()).hasSize(5);
    assertThat(plan.proven()).isTrue();
    Stick best = Collections.max(plan.sticks(), (a, b) -> a.offcut().compareTo(b.offcut()));
    assertThat(best.offcut().toDouble()).isBetween(49.8964, 49.8965);
    assertThat(best.kept()).isTrue();
    assertThat(best.parts()).extracting(Stick.Placed::label).containsOnly("side rail");
  }

  @Test
  void a_kerf_at_45_degrees_is_never_shorter_than_it_is() {
    assertThat(MITER_KERF).isEqualTo(inches("0.176777"));
    assertThat(MITER_KERF.times(MITER_KERF)).isGreaterThan(Rational.of(1, 32));
  }

  @Test
  void parts_fit_to_the_last_tick_and_not_one_tick_more() {
    StickRules rules = new StickRules(inches("1/8"), inches("1/4"), inches("1/2"), Rational.ZERO);
    List<Part> four = List.of(new Part("rail", inches("10"), 4));
    Rational needed = inches("40").plus(inches("3/8")).plus(inches("3/4"));
    Stock exact = Stock.bought("exact", needed, Rational.ONE);
    Stock short_ = Stock.bought("short", needed.minus(STEP), Rational.ONE);
    assertThat(plan(new StickJob(four, List.of(exact), rules)).sticks()).hasSize(1);
    assertThat(plan(new StickJob(four, List.of(short_), rules)).sticks()).hasSize(2);
  }

  @Test
  void kept_offcuts_are_cut_first() {
    StickJob job =
        new StickJob(
            List.of(new Part("rail", inches("20"), 5)),
            List.of(bought("96", "14"), Stock.kept("offcut", inches("41"), 1)),
            StickRules.bare());
    StickPlan plan = plan(job);
    assertThat(plan.used()).isEqualTo(Rational.of(14));
    assertThat(plan.sticks()).extracting(s -> s.stock().label()).contains("offcut");
    assertThat(plan.proven()).isTrue();
  }

  @Test
  void parts_longer_than_all_stock_are_named_and_the_rest_is_planned() {
    StickPlan plan =
        plan(
            bare(
                List.of(new Part("giant", inches("97"), 2), new Part("rail", inches("48"), 2)),
                bought("96", "1")));
    assertThat(plan.tooLong()).containsExactly(new Part("giant", inches("97"), 2));
    assertThat(plan.sticks()).hasSize(1);
    assertThat(plan.proven()).isTrue();
  }

  @Test
  void without_stock_nothing_can_be_cut() {
    Part rail = new Part("rail", inches("48"), 2);
    StickPlan plan = plan(bare(List.of(rail)));
    assertThat(plan.tooLong()).containsExactly(rail);
    assertThat(plan.sticks()).isEmpty();
  }

  @Test
  void nothing_to_cut_takes_nothing() {
    StickPlan plan = plan(bare(List.of(), bought("96", "1")));
    assertThat(plan.sticks()).isEmpty();
    assertThat(plan.used()).isEqualTo(Rational.ZERO);
    assertThat(plan.proven()).isTrue();
  }

  @Test
  void what_the_stock_on_hand_cannot_give_is_missing() {
    Stock two = new Stock("ash", inches("96"), inches("14"), OptionalInt.of(2));
    StickPlan plan = plan(bare(List.of(new Part("rail", inches("30"), 8)), two));
    assertThat(plan.missing()).containsExactly(new Part("rail", inches("30"), 2));
    assertThat(plan.sticks()).hasSize(2);
    assertThat(plan.proven()).isFalse();
  }

  @Test
  void a_kerf_wider_than_the_parts_is_a_kerf_like_any_other() {
    StickRules rules = new StickRules(inches("3"), Rational.ZERO, Rational.ZERO, Rational.ZERO);
    StickJob job =
        new StickJob(List.of(new Part("plug", inches("1"), 6)), List.of(bought("9", "1")), rules);
    assertThat(plan(job).sticks()).hasSize(2);
  }

  @Test
  void the_same_job_gives_the_same_plan() {
    StickJob job = PublishedSticks.job("Falkenauer_u120_00");
    assertThat(StickPlanner.plan(job)).isEqualTo(StickPlanner.plan(job));
  }

  @Test
  void the_order_of_parts_does_not_change_the_cost() {
    StickJob job = PublishedSticks.job("Falkenauer_t60_00");
    List<Part> shuffled = new ArrayList<>(job.parts());
    Collections.shuffle(shuffled, new Random(5));
    StickJob other = new StickJob(shuffled, job.stocks(), job.rules());
    assertThat(plan(other).used()).isEqualTo(plan(job).used());
  }

  @Test
  void who_cancels_gets_the_best_so_far() {
    PlanWatch impatient =
        new PlanWatch() {
          @Override
          public boolean isCancelled() {
            return true;
          }
        };
    StickJob job = PublishedSticks.job("Hard28_BPP14");
    StickPlan plan =
        PlanCheck.checked(job, StickPlanner.plan(job, StickPlanner.USUAL_STEPS, impatient));
    assertThat(plan.sticks().size()).isBetween(62, 70);
  }

  @Test
  void who_waits_is_told_of_plans_that_get_better_and_bounds_that_rise() {
    List<Rational> gaps = new ArrayList<>();
    PlanWatch watch =
        new PlanWatch() {
          @Override
          public void found(Rational used, Rational bound) {
            gaps.add(used.minus(bound));
          }
        };
    StickJob job = PublishedSticks.job("TEXT_paper5600");
    StickPlanner.plan(job, StickPlanner.USUAL_STEPS, watch);
    assertThat(gaps).isSortedAccordingTo(Collections.reverseOrder());
    assertThat(gaps).last().isEqualTo(Rational.ZERO);
  }
}
