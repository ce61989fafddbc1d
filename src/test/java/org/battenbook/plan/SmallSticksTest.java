package org.battenbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.battenbook.number.Rational;
import org.junit.jupiter.api.Test;

/** Small random jobs, compared with all the ways in which they can be cut. */
class SmallSticksTest {
  private static final long SEED = 20261125;
  private static final int JOBS = 300;

  private final Random random = new Random(SEED);

  @Test
  void no_way_of_cutting_costs_less_than_the_proven_plan() {
    for (int i = 0; i < JOBS; i++) {
      StickJob job = anyJob();
      StickPlan plan = PlanCheck.checked(job, StickPlanner.plan(job));
      Rational least = EveryWay.leastCost(job);
      String told = "seed " + SEED + ", job " + i + ": " + job;
      if (least == null) {
        assertThat(plan.missing()).as(told).isNotEmpty();
      } else {
        assertThat(plan.used()).as(told).isEqualTo(least);
        assertThat(plan.proven()).as(told).isTrue();
      }
    }
  }

  private StickJob anyJob() {
    List<Part> parts = new ArrayList<>();
    for (int kind = 0; kind < 1 + random.nextInt(4); kind++) {
      parts.add(new Part("part " + kind, sixteenths(40, 200), 1 + random.nextInt(2)));
    }
    List<Stock> stocks = new ArrayList<>();
    for (int kind = 0; kind < 1 + random.nextInt(3); kind++) {
      Rational cost = Rational.of(100 + random.nextInt(900), 100);
      OptionalInt onHand =
          random.nextInt(3) == 0 ? OptionalInt.of(random.nextInt(3)) : OptionalInt.empty();
      stocks.add(new Stock("stock " + kind, sixteenths(220, 500), cost, onHand));
    }
    if (random.nextBoolean()) {
      stocks.add(Stock.kept("offcut", sixteenths(100, 300), 1));
    }
    return new StickJob(parts, stocks, anyRules());
  }

  private StickRules anyRules() {
    return new StickRules(sixteenths(0, 4), sixteenths(0, 8), sixteenths(0, 8), sixteenths(0, 40));
  }

  private Rational sixteenths(int least, int most) {
    return Rational.of(least + random.nextInt(most - least + 1), 16);
  }
}
