package org.battenbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.number.Rational;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Boards put together again from the pieces they were split into; floors as measured. */
class SplitBoardsTest {
  private static final int JOBS = 50;
  private static final long STEPS = 40_000_000;

  @ParameterizedTest
  @CsvSource({
    "1, 8, 0, false, 0",
    "1, 8, 3, true, 0",
    "1, 15, 3, true, 0",
    "2, 10, 3, false, 0",
    "3, 10, 3, true, 42"
  })
  void most_are_found_and_proven(int boards, int pieces, long kerf, boolean turns, int floor) {
    int proven = 0;
    for (int seed = 0; seed < JOBS; seed++) {
      SheetJob job = SplitBoards.job(seed, boards, pieces, kerf, turns);
      SheetPlan plan = SheetCheck.checked(job, SheetPlanner.plan(job, STEPS, PlanWatch.NONE));
      assertThat(plan.bound()).isLessThanOrEqualTo(Rational.of(boards));
      assertThat(plan.used()).isGreaterThanOrEqualTo(Rational.of(boards));
      proven += plan.proven() ? 1 : 0;
    }
    assertThat(proven).isGreaterThanOrEqualTo(floor);
  }
}
