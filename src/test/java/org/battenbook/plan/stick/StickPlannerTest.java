package org.battenbook.plan.stick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.battenbook.number.Rational;
import org.battenbook.number.RealFunctions;
import org.battenbook.number.Rounding;
import org.battenbook.plan.PlanWatch;
import org.junit.jupiter.api.Test;

class StickPlannerTest {
  private static final Rational STEP = Rational.of(1, 1_000_000);

  /** A saw of 1/8 in at 45 degrees, up to a millionth of an inch. */
  private static final Rational MITER_KERF =
      (Rational) Rounding.UP.toStep(RealFunctions.squareRoot(Rational.of(1, 32)), STEP);

  private static final Stock NINETY_SIX =
      bought("96", "1").trimmed(inches("1/4"), inches("1/4")).keeping(inches("12"));

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
    StickJob job =
        new StickJob(
            List.of(
                new Part("top rail", inches("18 5/8"), 10),
                new Part("side rail", inches("22 5/8"), 10)),
            List.of(NINETY_SIX),
            StickRules.ofKerf(MITER_KERF));
    StickPlan plan = plan(job);
    assertThat(plan.sticks()).hasSize(5);
    assertThat(plan.proven()).isTrue();
    Stick best = Collections.max(plan.sticks(), (a, b) -> offcut(a).compareTo(offcut(b)));
    assertThat(offcut(best).toDouble()).isBetween(49.8964, 49.8965);
    assertThat(best.offcut().kept()).isTrue();
    assertThat(best.placed()).extracting(piece -> piece.part().label()).containsOnly("side rail");
  }

  private static Rational offcut(Stick stick) {
    return stick.offcut().length();
  }

  /** Worked by hand: 82.5 in and three kerfs are 83.0303 in of 95.5 in. */
  @Test
  void five_matched_sets_of_four_come_out_of_five_sticks() {
    Part top = new Part("top rail", inches("18 5/8"), 1);
    Part side = new Part("side rail", inches("22 5/8"), 1);
    MatchedSet frame = new MatchedSet("chart", List.of(top, side, top, side), 5);
    StickPlan plan =
        plan(
            new StickJob(
                List.of(), List.of(frame), List.of(NINETY_SIX), StickRules.ofKerf(MITER_KERF)));
    assertThat(plan.sticks()).hasSize(5);
    assertThat(plan.proven()).isTrue();
    for (Stick stick : plan.sticks()) {
      assertThat(stick.pattern()).isEqualTo(1);
      assertThat(stick.placed().get(3).to()).isEqualTo(inches("83.280331"));
      assertThat(offcut(stick)).isEqualTo(inches("12.292892"));
      assertThat(stick.offcut().kept()).isTrue();
    }
  }

  @Test
  void a_set_that_fits_no_stick_is_told_whole() {
    Part half = new Part("half", inches("48"), 1);
    MatchedSet pair = new MatchedSet("pair", List.of(half, half), 3);
    StickJob job =
        new StickJob(
            List.of(half), List.of(pair), List.of(bought("96", "1")), StickRules.ofKerf(STEP));
    StickPlan plan = plan(job);
    assertThat(plan.tooLong()).containsExactly(pair);
    assertThat(plan.sticks()).hasSize(1);
  }

  @Test
  void marks_are_measured_from_the_left_end_of_the_whole_stick() {
    Stretch afterFlaw = new Stretch(inches("30"), inches("40"), inches("1/2"), inches("1"));
    Stock behindFlaw = new Stock("40", afterFlaw, Rational.ZERO, Rational.ONE, OptionalInt.empty());
    StickPlan plan =
        plan(
            new StickJob(
                List.of(new Part("rail", inches("12"), 3)),
                List.of(behindFlaw),
                StickRules.ofKerf(inches("1/8"))));
    Stick stick = plan.sticks().get(0);
    assertThat(stick.placed())
        .extracting(Stick.Placed::from)
        .containsExactly(inches("30.5"), inches("42.625"), inches("54.75"));
    assertThat(stick.offcut()).isEqualTo(new Stick.Offcut(inches("66.875"), inches("69"), true));
  }

  /** Worked by hand: four of 20 in take 80 in and three kerfs; nesting by 3 in saves 9 in. */
  @Test
  void stock_with_both_edges_alike_nests() {
    List<Part> four = List.of(new Part("rail", inches("20"), 4));
    Rational kerf = inches("1/8");
    Stock exact = bought("71 3/8", "1");
    StickPlan plan = plan(new StickJob(four, List.of(exact), new StickRules(kerf, inches("3"))));
    assertThat(plan.sticks()).hasSize(1);
    assertThat(plan.sticks().get(0).placed())
        .extracting(Stick.Placed::turned)
        .containsExactly(false, true, false, true);
    Stock short_ = Stock.bought("short", inches("71 3/8").minus(STEP), Rational.ONE);
    assertThat(
            plan(new StickJob(four, List.of(short_), new StickRules(kerf, inches("3")))).sticks())
        .hasSize(2);
  }

  @Test
  void pieces_of_one_part_stay_together() {
    StickPlan plan =
        plan(
            bare(
                List.of(new Part("north", inches("30"), 3), new Part("south", inches("30"), 3)),
                bought("96", "1")));
    assertThat(plan.sticks())
        .extracting(stick -> stick.placed().stream().map(p -> p.part().label()).toList())
        .containsExactly(List.of("north", "north", "north"), List.of("south", "south", "south"));
  }

  /** Both sticks of 60 in are needed; 50 in is kept where the free offcut takes the 20 in. */
  @Test
  void free_stock_is_used_up_where_a_longer_offcut_is_kept_for_it() {
    StickPlan plan =
        plan(
            bare(
                List.of(new Part("long", inches("40"), 1), new Part("short", inches("20"), 1)),
                bought("96", "9"),
                Stock.kept("offcut", inches("22"), 1)));
    assertThat(plan.sticks()).hasSize(2);
    assertThat(plan.sticks().get(0).offcut().length()).isEqualTo(inches("56"));
  }

  /** Kept from 30 in on: of 60 in that are left of two sticks one keeps all, or both keep half. */
  @Test
  void one_long_offcut_is_kept_rather_than_two_short_ones() {
    StickPlan plan =
        plan(
            bare(
                List.of(new Part("long", inches("40"), 1), new Part("rail", inches("20"), 4)),
                bought("90", "9").keeping(inches("25"))));
    assertThat(plan.sticks())
        .extracting(stick -> stick.offcut().length())
        .containsExactlyInAnyOrder(inches("10"), inches("50"));
  }

  @Test
  void a_kerf_at_45_degrees_is_never_shorter_than_it_is() {
    assertThat(MITER_KERF).isEqualTo(inches("0.176777"));
    assertThat(MITER_KERF.times(MITER_KERF)).isGreaterThan(Rational.of(1, 32));
  }

  @Test
  void parts_fit_to_the_last_tick_and_not_one_tick_more() {
    StickRules rules = StickRules.ofKerf(inches("1/8"));
    List<Part> four = List.of(new Part("rail", inches("10"), 4));
    Rational needed = inches("40").plus(inches("3/8")).plus(inches("3/4"));
    Stock exact = trimmed(Stock.bought("exact", needed, Rational.ONE));
    Stock short_ = trimmed(Stock.bought("short", needed.minus(STEP), Rational.ONE));
    assertThat(plan(new StickJob(four, List.of(exact), rules)).sticks()).hasSize(1);
    assertThat(plan(new StickJob(four, List.of(short_), rules)).sticks()).hasSize(2);
  }

  private static Stock trimmed(Stock stock) {
    return stock.trimmed(inches("1/4"), inches("1/2"));
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
    Stock two =
        new Stock(
            "96", Stretch.whole(inches("96")), Rational.ZERO, Rational.of(14), OptionalInt.of(2));
    StickPlan plan = plan(bare(List.of(new Part("rail", inches("30"), 8)), two));
    assertThat(plan.missing()).containsExactly(new Part("rail", inches("30"), 2));
    assertThat(plan.sticks()).hasSize(2);
    assertThat(plan.proven()).isFalse();
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
