package org.battenbook.bench;

import java.util.Locale;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.StickPlan;
import org.battenbook.plan.stick.StickPlanner;

/** How long the first plans take in a fresh JVM. Arguments: seeds of small jobs. */
public final class StickColdStart {
  private StickColdStart() {}

  public static void main(String[] seeds) {
    for (String seed : seeds) {
      long start = System.nanoTime();
      StickJob job = SmallShopJobs.of(Long.parseLong(seed));
      StickPlan plan = StickPlanner.plan(job);
      double seconds = (System.nanoTime() - start) / 1e9;
      System.out.printf(
          Locale.ROOT,
          "seed %s: %.3f s, %d pieces, %d sticks, used %s, %s%n",
          seed,
          seconds,
          job.cuts().stream().mapToInt(part -> part.count()).sum(),
          plan.sticks().size(),
          plan.used().toDouble(),
          plan.proven() ? "proven" : "not proven, bound " + plan.bound().toDouble());
    }
  }
}
