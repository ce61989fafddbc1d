package org.battenbook.bench;

import java.util.Locale;
import org.battenbook.plan.sheet.SheetJob;
import org.battenbook.plan.sheet.SheetPlan;
import org.battenbook.plan.sheet.SheetPlanner;
import org.battenbook.plan.sheet.SplitBoards;

/**
 * How many boards that were split at random by through-cuts are put together again, and how long
 * that takes. The argument says how many of each family, 20 where there is none.
 */
public final class SheetBenchmark {
  private static final int[][] BOARDS_AND_PIECES = {
    {1, 8}, {1, 15}, {2, 10}, {3, 10}, {5, 12}, {10, 10}, {20, 10}
  };
  private static final long KERF = 3;

  private SheetBenchmark() {}

  public static void main(String[] arguments) {
    int jobs = arguments.length == 0 ? 20 : Integer.parseInt(arguments[0]);
    for (int[] family : BOARDS_AND_PIECES) {
      measure(family[0], family[1], jobs);
    }
  }

  private static void measure(int boards, int pieces, int jobs) {
    int proven = 0;
    int more = 0;
    double slowest = 0;
    long start = System.nanoTime();
    for (int seed = 0; seed < jobs; seed++) {
      SheetJob job = SplitBoards.job(seed, boards, pieces, KERF, true);
      long before = System.nanoTime();
      SheetPlan plan = SheetPlanner.plan(job);
      slowest = Math.max(slowest, secondsSince(before));
      proven += plan.proven() ? 1 : 0;
      more += plan.sheets().size() - boards;
    }
    System.out.printf(
        Locale.ROOT,
        "%d boards of about %d pieces: %d of %d proven, %d boards too many in all,"
            + " %.2f s each, slowest %.2f s%n",
        boards,
        pieces,
        proven,
        jobs,
        more,
        secondsSince(start) / jobs,
        slowest);
  }

  private static double secondsSince(long start) {
    return (System.nanoTime() - start) / 1e9;
  }
}
