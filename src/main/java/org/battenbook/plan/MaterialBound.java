package org.battenbook.plan;

import java.math.BigInteger;
import java.util.stream.IntStream;

/**
 * The simplest lower bound on cost, a fractional relaxation: it uses the cheapest stock per size
 * first, as if pieces could be cut anywhere and parts of sticks or sheets could be bought.
 */
public final class MaterialBound {
  /** Far above the cost of any plan. */
  private static final BigInteger HIGHEST = BigInteger.ONE.shiftLeft(62);

  private MaterialBound() {}

  /**
   * The bound in units of cost, rounded up. It is exact: a bound one unit too high would prove a
   * plan that is not optimal.
   *
   * @param all the total size of all pieces
   * @return 2^62 if the bound is higher
   */
  public static long of(long all, Offers offers) {
    long left = all;
    BigInteger cost = BigInteger.ZERO;
    for (int stock : cheapestFirst(offers)) {
      long size = offers.sizes[stock];
      long whole = Math.min(left / size, offers.limits[stock]);
      cost = cost.add(product(whole, offers.costs[stock]));
      left -= whole * size;
      if (whole < offers.limits[stock] && left > 0) {
        cost = cost.add(ceiling(product(left, offers.costs[stock]), size));
        break;
      }
    }
    return cost.min(HIGHEST).longValueExact();
  }

  private static int[] cheapestFirst(Offers offers) {
    return IntStream.range(0, offers.count())
        .filter(stock -> offers.limits[stock] > 0)
        .boxed()
        .sorted((stock, other) -> compareCostPerSize(offers, stock, other))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** Compares exactly: ratios that differ can be equal as doubles. */
  private static int compareCostPerSize(Offers offers, int stock, int other) {
    return product(offers.costs[stock], offers.sizes[other])
        .compareTo(product(offers.costs[other], offers.sizes[stock]));
  }

  private static BigInteger product(long a, long b) {
    return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
  }

  private static BigInteger ceiling(BigInteger part, long whole) {
    BigInteger[] parts = part.divideAndRemainder(BigInteger.valueOf(whole));
    return parts[0].add(BigInteger.valueOf(parts[1].signum()));
  }
}
