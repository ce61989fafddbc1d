package org.battenbook.plan.stick;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.battenbook.plan.Effort;
import org.battenbook.plan.Offers;
import org.battenbook.plan.PlanWatch;
import org.junit.jupiter.api.Test;

/** The pool has every pattern that loses no more than the slack: what it lacks proves something. */
class PatternPoolTest {
  private static final long SEED = 1128;
  private static final int JOBS = 400;

  /**
   * DualPrices are whole numbers of these parts of a stick, so that losses meet the slack exactly.
   */
  private static final int PARTS = 8;

  @Test
  void the_pool_is_every_full_pattern_that_the_slack_allows() {
    Random random = new Random(SEED);
    int justAllowed = 0;
    for (int i = 0; i < JOBS; i++) {
      StickInstance instance = instance(random);
      DualPrices prices = prices(instance, random);
      long cost = prices.bound() + random.nextInt(2);
      List<Pattern> expected = allowed(instance, prices, cost);
      PatternPool pool = PatternPool.of(instance, prices, cost, Effort.forTidying(PlanWatch.NONE));
      assertThat(requireNonNull(pool).patterns())
          .as("seed %d, job %d", SEED, i)
          .containsExactlyInAnyOrderElementsOf(expected);
      justAllowed +=
          (int) expected.stream().filter(p -> loss(p, prices) == prices.slack(cost)).count();
    }
    assertThat(justAllowed).as("patterns that lose the slack to the last").isGreaterThan(20);
  }

  private static StickInstance instance(Random random) {
    long[] lengths = random.longs(4, 2, 12).distinct().map(l -> -l).sorted().map(l -> -l).toArray();
    int[] demand = random.ints(lengths.length, 1, 4).toArray();
    return new StickInstance(
        lengths,
        demand,
        new long[] {14, 19},
        new long[] {1, 1},
        new int[] {Offers.UNLIMITED, Offers.UNLIMITED},
        new long[] {1, 1});
  }

  private static DualPrices prices(StickInstance instance, Random random) {
    double[] kinds =
        Arrays.stream(instance.lengths)
            .mapToDouble(l -> (double) random.nextInt(PARTS) / PARTS)
            .toArray();
    return DualPrices.guessed(instance, kinds, new double[instance.stocks()]);
  }

  private static List<Pattern> allowed(StickInstance instance, DualPrices prices, long cost) {
    List<Pattern> allowed = new ArrayList<>();
    for (int stock = 0; stock < instance.stocks(); stock++) {
      addAll(instance, stock, new int[instance.kinds()], 0, allowed);
    }
    allowed.removeIf(pattern -> loss(pattern, prices) > prices.slack(cost));
    return allowed;
  }

  /** All ways to fill a stick, kind by kind, of which those are kept that take no piece more. */
  private static void addAll(
      StickInstance instance, int stock, int[] counts, int kind, List<Pattern> to) {
    Pattern pattern = Pattern.of(stock, counts);
    if (instance.spare(pattern) < 0) {
      return;
    }
    if (kind == counts.length) {
      if (!pattern.isEmpty() && instance.isFull(pattern)) {
        to.add(pattern);
      }
      return;
    }
    for (int count = 0; count <= instance.demand[kind]; count++) {
      int[] more = counts.clone();
      more[kind] = count;
      addAll(instance, stock, more, kind + 1, to);
    }
  }

  private static long loss(Pattern pattern, DualPrices prices) {
    return prices.allowed(pattern.stock) - pattern.value(prices.kinds);
  }
}
