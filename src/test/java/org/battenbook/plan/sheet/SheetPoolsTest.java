package org.battenbook.plan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;
import org.junit.jupiter.api.Test;

/** Jobs that orders of filling alone leave a sheet too dear, or unproven. */
class SheetPoolsTest {
  private static final long STEPS = 100_000_000;

  private static Rational n(String text) {
    return Rational.parse(text);
  }

  private static SheetPart part(String across, String down, int count) {
    return new SheetPart(across + " by " + down, n(across), n(down), count, true);
  }

  /** The lites of the Saltmarsh Ferry Museum, a job of our invention. */
  private static final List<SheetPart> LITES =
      List.of(
          part("16 11/16", "21 1/2", 2),
          part("16 1/2", "23", 1),
          part("16", "22 1/2", 1),
          part("8 3/4", "7 3/4", 4),
          part("3", "4 1/2", 1),
          part("21 1/2", "28 3/8", 1),
          part("19 11/16", "27 7/8", 1),
          part("14 11/16", "19 1/2", 1),
          part("12 1/2", "14 3/4", 1),
          part("11", "14", 6),
          part("16", "20", 1),
          part("21 7/16", "16 5/8", 1),
          part("39", "27", 1));

  private static SheetPlan lites(String across, String down) {
    SheetStock sheet = SheetStock.bought("sheet", n(across), n(down), Rational.ONE);
    SheetJob job = new SheetJob(LITES, List.of(sheet), Rational.ZERO, OptionalInt.empty());
    return SheetCheck.checked(job, SheetPlanner.plan(job, STEPS, PlanWatch.NONE));
  }

  /** Their area is 3.49 sheets; nothing but the four smallest and one more goes beside 39 by 27. */
  @Test
  void the_large_pieces_go_first_and_the_small_ones_beside_them() {
    SheetPlan plan = lites("36", "48");
    assertThat(plan.sheets()).hasSize(4);
    assertThat(plan.proven()).isTrue();
  }

  /** Their area is 4.71 sheets of this size. */
  @Test
  void a_packing_is_proven_by_looking_at_every_way_for_the_large_pieces() {
    SheetPlan plan = lites("32", "40");
    assertThat(plan.sheets()).hasSize(6);
    assertThat(plan.proven()).isTrue();
  }

  /**
   * Three squares of 4 and three of 3: a board of 10 by 7 holds two of 4 and those of 3 below them,
   * one of 7 by 7 the last. A square of 7 holds but one of 4, a board of 10 by 7 but two.
   */
  @Test
  void of_two_sizes_the_cheaper_set_is_found_and_proven() {
    SheetStock small = SheetStock.bought("small", n("7"), n("7"), n("5"));
    SheetStock large = SheetStock.bought("large", n("10"), n("7"), n("8"));
    List<SheetPart> parts = List.of(part("4", "4", 3), part("3", "3", 3));
    SheetJob job = new SheetJob(parts, List.of(small, large), Rational.ZERO, OptionalInt.empty());
    SheetPlan plan = SheetCheck.checked(job, SheetPlanner.plan(job, STEPS, PlanWatch.NONE));
    assertThat(plan.used()).isEqualTo(n("13"));
    assertThat(plan.proven()).isTrue();
  }
}
