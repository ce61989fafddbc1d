package org.battenbook.plan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Boards put together again from the pieces they were split into; floors as measured. */
class SplitBoardsTest {
  private static final long STEPS = 40_000_000;

  @ParameterizedTest
  @CsvSource({
    "1, 8, 0, false, 50, 50",
    "1, 8, 3, true, 50, 50",
    "1, 15, 3, true, 50, 50",
    "2, 10, 3, false, 50, 50",
    "3, 10, 3, true, 50, 50",
    "5, 12, 3, true, 20, 19"
  })
  void most_are_found_and_proven(
      int boards, int pieces, long kerf, boolean turns, int jobs, int floor) {
    int proven = 0;
    for (int seed = 0; seed < jobs; seed++) {
      SheetJob job = SplitBoards.job(seed, boards, pieces, kerf, turns);
      SheetPlan plan = SheetCheck.checked(job, SheetPlanner.plan(job, STEPS, PlanWatch.NONE));
      assertThat(plan.bound()).isLessThanOrEqualTo(Rational.of(boards));
      assertThat(plan.used()).isGreaterThanOrEqualTo(Rational.of(boards));
      proven += plan.proven() ? 1 : 0;
    }
    assertThat(proven).isGreaterThanOrEqualTo(floor);
  }
}
