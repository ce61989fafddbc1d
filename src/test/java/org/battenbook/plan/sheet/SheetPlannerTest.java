package org.battenbook.plan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;
import org.junit.jupiter.api.Test;

class SheetPlannerTest {
  private static Rational n(String text) {
    return Rational.parse(text);
  }

  private static SheetPart part(String across, String down, int count, boolean turns) {
    return new SheetPart(across + " by " + down, n(across), n(down), count, turns);
  }

  private static SheetStock board(String across, String down) {
    return SheetStock.bought("board", n(across), n(down), Rational.ONE);
  }

  private static SheetJob bare(List<SheetPart> parts, SheetStock... stocks) {
    return new SheetJob(parts, List.of(stocks), Rational.ZERO, OptionalInt.empty());
  }

  private static SheetPlan plan(SheetJob job) {
    return SheetCheck.checked(job, SheetPlanner.plan(job));
  }

  /** Two of 4 by 3 stand beside each other on 6 by 4 only when turned. */
  @Test
  void a_part_is_turned_only_where_it_may_be() {
    SheetPlan turned = plan(bare(List.of(part("4", "3", 2, true)), board("6", "4")));
    assertThat(turned.sheets()).hasSize(1);
    assertThat(turned.proven()).isTrue();
    SheetPlan grained = plan(bare(List.of(part("4", "3", 2, false)), board("6", "4")));
    assertThat(grained.sheets()).hasSize(2);
    assertThat(grained.proven()).isTrue();
  }

  @Test
  void parts_fit_to_the_last_tick_and_not_one_tick_more() {
    List<SheetPart> four = List.of(part("10", "5", 4, false));
    SheetTrims trims = new SheetTrims(n("1/4"), n("1/2"), n("3/8"), n("1/16"));
    for (String less : List.of("0", "1/1000")) {
      SheetStock stock =
          new SheetStock(
              "board",
              n("20.125").plus(n("3/4")).minus(n(less)),
              n("10.125").plus(n("7/16")),
              Rational.ONE,
              OptionalInt.empty(),
              trims,
              Rational.ONE);
      SheetPlan plan = plan(new SheetJob(four, List.of(stock), n("1/8"), OptionalInt.empty()));
      assertThat(plan.sheets()).hasSize(less.equals("0") ? 1 : 2);
      assertThat(plan.proven()).isTrue();
    }
  }

  /**
   * Five rectangles around a pinwheel fill a square of 3, but no cut goes through it: four of 1 by
   * 2 and one of 1 by 1 need a second sheet where none may be turned otherwise.
   */
  @Test
  void a_pinwheel_cannot_be_cut_through() {
    SheetPlan plan =
        plan(
            bare(
                List.of(
                    part("2", "1", 2, false), part("1", "2", 2, false), part("1", "1", 1, false)),
                board("3", "3")));
    assertThat(plan.sheets()).hasSize(2);
    assertThat(plan.proven()).isTrue();
  }

  /** One above two beside each other: cut across, then down; across alone frees only the first. */
  @Test
  void no_more_stages_are_cut_than_there_may_be() {
    List<SheetPart> parts = List.of(part("6", "2", 1, false), part("3", "4", 2, false));
    SheetStock board = board("6", "6");
    SheetPlan two = plan(new SheetJob(parts, List.of(board), Rational.ZERO, OptionalInt.of(2)));
    assertThat(two.sheets()).hasSize(1);
    assertThat(two.proven()).isTrue();
    SheetPlan one = plan(new SheetJob(parts, List.of(board), Rational.ZERO, OptionalInt.of(1)));
    assertThat(one.missing()).containsExactly(part("3", "4", 2, false));
  }

  @Test
  void the_cheaper_of_two_sizes_is_taken_and_kept_offcuts_first() {
    SheetStock large = SheetStock.bought("large", n("96"), n("48"), n("40"));
    SheetStock small = SheetStock.bought("small", n("48"), n("48"), n("21"));
    SheetStock offcut = SheetStock.kept("offcut", n("30"), n("21"), 1);
    SheetPlan plan = plan(bare(List.of(part("20", "30", 3, true)), large, small, offcut));
    assertThat(plan.used()).isEqualTo(n("21"));
    assertThat(plan.sheets()).extracting(s -> s.stock().label()).contains("offcut");
  }

  @Test
  void parts_that_fit_no_stock_are_named_and_the_rest_is_planned() {
    SheetPlan plan =
        plan(bare(List.of(part("7", "7", 2, true), part("6", "3", 2, true)), board("6", "6")));
    assertThat(plan.tooLarge()).containsExactly(part("7", "7", 2, true));
    assertThat(plan.sheets()).hasSize(1);
    assertThat(plan.proven()).isTrue();
  }

  @Test
  void what_the_stock_on_hand_cannot_give_is_missing() {
    SheetStock one = SheetStock.kept("offcut", n("6"), n("6"), 1);
    SheetPlan plan = plan(bare(List.of(part("6", "2", 4, false)), one));
    assertThat(plan.missing()).containsExactly(part("6", "2", 1, false));
    assertThat(plan.proven()).isFalse();
  }

  @Test
  void nothing_to_cut_takes_nothing_and_without_stock_nothing_can_be_cut() {
    SheetPlan none = plan(bare(List.of(), board("6", "6")));
    assertThat(none.sheets()).isEmpty();
    assertThat(none.proven()).isTrue();
    assertThat(plan(bare(List.of(part("1", "1", 1, true)))).tooLarge()).hasSize(1);
  }

  @Test
  void the_same_job_gives_the_same_plan() {
    SheetJob job = SplitBoards.job(7, 2, 12, 3, true);
    assertThat(SheetPlanner.plan(job)).isEqualTo(SheetPlanner.plan(job));
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
    SheetJob job = SplitBoards.job(3, 3, 15, 3, true);
    SheetPlan plan =
        SheetCheck.checked(job, SheetPlanner.plan(job, SheetPlanner.USUAL_STEPS, impatient));
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.sheets().size()).isBetween(3, 6);
  }

  @Test
  void who_waits_is_told_of_the_plan_that_he_gets() {
    List<Rational> told = new ArrayList<>();
    PlanWatch watch =
        new PlanWatch() {
          @Override
          public void found(Rational used, Rational bound) {
            told.add(used);
          }
        };
    SheetPlan plan = SheetPlanner.plan(SplitBoards.job(5, 2, 10, 3, true), 10_000_000, watch);
    assertThat(told).last().isEqualTo(plan.used());
  }
}
