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
      Offers offers = anyOffers();
      long all = (10L + random.nextInt(30)) * (1 + random.nextInt(12));
      long bound = StockBound.of(all, offers, KNOWN, new Effort(1_000_000, PlanWatch.NONE));
      assertThat(bound)
          .as("seed %d, job %d", SEED, i)
          .isEqualTo(Math.min(KNOWN, least(offers, 0, all)));
    }
  }

  @Test
  void it_gives_up_where_sizes_pass_longs() {
    Offers huge = new Offers(new long[] {1L << 44}, new long[] {1}, new int[] {Offers.UNLIMITED});
    assertThat(bound(huge, 1_048_581)).isZero();
    assertThat(bound(huge, 1 << 17)).isEqualTo(1 << 14);
  }

  @Test
  void it_gives_up_where_free_stock_passes_longs() {
    Offers free =
        new Offers(new long[] {1L << 61, 1L << 61, 1}, new long[] {0, 0, 1}, new int[] {2, 3, 100});
    assertThat(bound(free, 10)).isZero();
  }

  /** The bound for a total size of 2^58. */
  private static long bound(Offers offers, long known) {
    return StockBound.of(1L << 58, offers, known, new Effort(Long.MAX_VALUE, PlanWatch.NONE));
  }

  private Offers anyOffers() {
    return new Offers(
        new long[] {40 + random.nextInt(20), 60 + random.nextInt(20), 50},
        new long[] {20 + random.nextInt(9), 27 + random.nextInt(9), 0},
        new int[] {Offers.UNLIMITED, 1 + random.nextInt(3), random.nextInt(2)});
  }

  private static long least(Offers offers, int stock, long left) {
    if (left <= 0) {
      return 0;
    }
    if (stock == offers.count()) {
      return KNOWN;
    }
    long least = KNOWN;
    for (int sticks = 0; sticks <= Math.min(20, offers.limits[stock]); sticks++) {
      long rest = left - sticks * offers.sizes[stock];
      least = Math.min(least, sticks * offers.costs[stock] + least(offers, stock + 1, rest));
    }
    return least;
  }
}
