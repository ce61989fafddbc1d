package org.battenbook.plan;

import java.util.List;

/**
 * What is to be cut, from what, and how. All lengths are in one unit, all costs in one currency. A
 * job of more pieces, parts or kinds of stock than a plan is made for is refused with an {@link
 * IllegalArgumentException}.
 */
public record StickJob(List<Part> parts, List<Stock> stocks, StickRules rules) {
  /** The most pieces in all. */
  public static final int MOST_PIECES = 100_000;

  /** The most parts, and the most kinds of stock. */
  public static final int MOST_KINDS = 2_000;

  public StickJob {
    parts = List.copyOf(parts);
    stocks = List.copyOf(stocks);
    refuseMore("parts", parts.size(), MOST_KINDS);
    refuseMore("kinds of stock", stocks.size(), MOST_KINDS);
    refuseMore("pieces", parts.stream().mapToLong(Part::count).sum(), MOST_PIECES);
  }

  private static void refuseMore(String what, long count, int most) {
    Refusal.unless(
        count <= most, count + " " + what + " are more than the " + most + " of one plan");
  }
}
