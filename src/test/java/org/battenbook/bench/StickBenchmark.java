package org.battenbook.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.StickPlan;
import org.battenbook.plan.stick.StickPlanner;

/**
 * How long stick plans take, beside the plain model of the same solver library, in the same run.
 *
 * <p>Arguments: seeds, 1 to 3 where there are none.
 */
public final class StickBenchmark {
  private static final int WARM = 3;

  private StickBenchmark() {}

  public static void main(String[] seeds) {
    List<String> chosen = seeds.length == 0 ? List.of("1", "2", "3") : Arrays.asList(seeds);
    for (String seed : chosen) {
      for (Map.Entry<String, StickJob> family : StickFamilies.of(Long.parseLong(seed)).entrySet()) {
        measure(seed, family.getKey(), family.getValue());
      }
    }
  }

  private static void measure(String seed, String name, StickJob job) {
    double[] seconds = new double[WARM];
    StickPlan plan = StickPlanner.plan(job);
    for (int run = 0; run < WARM; run++) {
      long start = System.nanoTime();
      plan = StickPlanner.plan(job);
      seconds[run] = secondsSince(start);
    }
    Arrays.sort(seconds);
    long start = System.nanoTime();
    String plain = PlainStickModel.solve(job);
    System.out.printf(
        Locale.ROOT,
        "seed %s, %s: %.2f s, used %s, bound %s, %s; plain model %.1f s, %s%n",
        seed,
        name,
        seconds[WARM / 2],
        plan.used().toDouble(),
        plan.bound().toDouble(),
        plan.proven() ? "proven" : "not proven",
        secondsSince(start),
        plain);
  }

  private static double secondsSince(long start) {
    return (System.nanoTime() - start) / 1e9;
  }
}
