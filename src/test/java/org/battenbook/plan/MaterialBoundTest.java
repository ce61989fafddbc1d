package org.battenbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The least cost of a total size, at the edges of what numbers can hold. */
class MaterialBoundTest {
  private static final long LARGE = 1L << 30;

  @Test
  void it_is_not_too_high_where_costs_per_size_are_equal_as_doubles() {
    // (LARGE - 1) / LARGE is less than LARGE / (LARGE + 1), by one part in 2^60.
    Offers offers =
        new Offers(
            new long[] {LARGE + 1, LARGE},
            new long[] {LARGE, LARGE - 1},
            new int[] {1, Offers.UNLIMITED});
    assertThat(MaterialBound.of(2 * LARGE, offers)).isEqualTo(2 * (LARGE - 1));
  }

  @Test
  void it_stops_below_the_highest_long() {
    Offers tiny = new Offers(new long[] {1}, new long[] {1L << 40}, new int[] {Offers.UNLIMITED});
    assertThat(MaterialBound.of(LARGE, tiny)).isEqualTo(1L << 62);
  }
}
