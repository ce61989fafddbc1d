package org.battenbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The least cost of whole sticks, compared with all numbers of sticks one by one. */
class StockBoundTest {
  private static final long SEED = 31;
  private static final int KNOWN = 400;

  private final Random random = new Random(SEED);

  @Test
  void no_numbers_of_sticks_are_long_enough_for_less() {
    for (int i = 0; i < 200; i++) {
      Instance instance = anyInstance();
      long all = instance.lengths[0] * instance.demand[0];
      long bound = StockBound.ofLengths(instance, KNOWN, new Effort(1_000_000, PlanWatch.NONE));
      assertThat(bound)
          .as("seed %d, instance %d", SEED, i)
          .isEqualTo(Math.min(KNOWN, least(instance, 0, all)));
    }
  }

  private Instance anyInstance() {
    int[] limits = {Instance.UNLIMITED, 1 + random.nextInt(3), random.nextInt(2)};
    return new Instance(
        new long[] {10 + random.nextInt(30)},
        new int[] {1 + random.nextInt(12)},
        new long[] {40 + random.nextInt(20), 60 + random.nextInt(20), 50},
        new long[] {20 + random.nextInt(9), 27 + random.nextInt(9), 0},
        limits,
        new long[] {1, 1, 1});
  }

  private static long least(Instance instance, int stock, long left) {
    if (left <= 0) {
      return 0;
    }
    if (stock == instance.stocks()) {
      return KNOWN;
    }
    long least = KNOWN;
    for (int sticks = 0; sticks <= Math.min(20, instance.limits[stock]); sticks++) {
      long rest = left - sticks * instance.capacities[stock];
      least = Math.min(least, sticks * instance.costs[stock] + least(instance, stock + 1, rest));
    }
    return least;
  }
}
