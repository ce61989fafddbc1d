package org.battenbook.plan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;
import org.junit.jupiter.api.Test;

/** Small random jobs, compared with all the ways in which they can be cut. */
class SmallSheetsTest {
  private static final long SEED = 20261126;
  private static final int JOBS = 200;
  private static final long STEPS = 2_000_000;

  private final Random random = new Random(SEED);

  @Test
  void no_way_of_cutting_takes_fewer_sheets_than_the_plan_or_the_bound() {
    for (int i = 0; i < JOBS; i++) {
      SheetJob job = anyJob();
      SheetPlan plan = SheetCheck.checked(job, SheetPlanner.plan(job, STEPS, PlanWatch.NONE));
      Rational fewest = Rational.of(EveryCut.fewest(job));
      String told = "seed " + SEED + ", job " + i + ": " + job;
      assertThat(plan.used()).as(told).isEqualTo(fewest);
      assertThat(plan.bound()).as(told).isLessThanOrEqualTo(fewest);
    }
  }

  private SheetJob anyJob() {
    List<SheetPart> parts = new ArrayList<>();
    for (int kind = 0; kind < 3 + random.nextInt(4); kind++) {
      parts.add(new SheetPart("part " + kind, side(), side(), 1, random.nextBoolean()));
    }
    return new SheetJob(
        parts,
        List.of(SheetStock.bought("board", Rational.of(12), Rational.of(10), Rational.ONE)),
        Rational.of(random.nextInt(2)),
        OptionalInt.empty());
  }

  private Rational side() {
    return Rational.of(2 + random.nextInt(7));
  }
}
