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
    List<MatchedSet> sets = new ArrayList<>();
    for (int kind = 0; kind < random.nextInt(3); kind++) {
      sets.add(anySet(kind));
    }
    List<Stock> stocks = new ArrayList<>();
    for (int kind = 0; kind < 1 + random.nextInt(3); kind++) {
      Rational cost = Rational.of(100 + random.nextInt(900), 100);
      Stretch stretch =
          new Stretch(sixteenths(0, 99), sixteenths(220, 500), sixteenths(0, 8), sixteenths(0, 8));
      stocks.add(new Stock("stock " + kind, stretch, sixteenths(0, 40), cost, anyOnHand()));
    }
    if (random.nextBoolean()) {
      stocks.add(Stock.kept("offcut", sixteenths(100, 300), 1));
    }
    Rational nest = random.nextInt(3) == 0 ? sixteenths(1, 20) : Rational.ZERO;
    return new StickJob(parts, sets, stocks, new StickRules(sixteenths(0, 4), nest));
  }

  private MatchedSet anySet(int kind) {
    List<Part> inOrder = new ArrayList<>();
    for (int cut = 0; cut < 1 + random.nextInt(3); cut++) {
      inOrder.add(new Part("side " + cut, sixteenths(40, 150), 1));
    }
    return new MatchedSet("set " + kind, inOrder, 1);
  }

  private OptionalInt anyOnHand() {
    return random.nextInt(3) == 0 ? OptionalInt.of(random.nextInt(3)) : OptionalInt.empty();
  }

  private Rational sixteenths(int least, int most) {
    return Rational.of(least + random.nextInt(most - least + 1), 16);
  }
}
