package org.battenbook.plan.stick;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A cutting pattern: how many pieces of each kind of length are cut from one stick of a stock.
 * Kinds and stocks are indices of a {@link StickInstance}.
 */
final class Pattern implements Comparable<Pattern> {
  final int stock;

  /** The kinds that it has, ascending. */
  final int[] kinds;

  /** The number of pieces of each of {@code kinds}, more than 0. */
  final int[] counts;

  Pattern(int stock, int[] kinds, int[] counts) {
    this.stock = stock;
    this.kinds = kinds;
    this.counts = counts;
  }

  /** A pattern with a count for every kind of the instance. */
  static Pattern of(int stock, int[] countOfKind) {
    int[] kinds = new int[countOfKind.length];
    int[] counts = new int[countOfKind.length];
    int size = 0;
    for (int kind = 0; kind < countOfKind.length; kind++) {
      if (countOfKind[kind] > 0) {
        kinds[size] = kind;
        counts[size++] = countOfKind[kind];
      }
    }
    return new Pattern(stock, Arrays.copyOf(kinds, size), Arrays.copyOf(counts, size));
  }

  /** The same pieces cut from another stock. */
  Pattern from(int otherStock) {
    return new Pattern(otherStock, kinds, counts);
  }

  int count(int kind) {
    int at = Arrays.binarySearch(kinds, kind);
    return at < 0 ? 0 : counts[at];
  }

  boolean isEmpty() {
    return kinds.length == 0;
  }

  /**
   * Its total value.
   *
   * @param prices the price of each kind
   * @throws ArithmeticException if the value does not fit a {@code long}
   */
  long value(long[] prices) {
    long value = 0;
    for (int i = 0; i < kinds.length; i++) {
      value = Math.addExact(value, Math.multiplyExact(counts[i], prices[kinds[i]]));
    }
    return value;
  }

  /** How many times it can be cut without a piece too many. */
  int mostTimes(int[] demand) {
    int times = Integer.MAX_VALUE;
    for (int i = 0; i < kinds.length; i++) {
      times = Math.min(times, demand[kinds[i]] / counts[i]);
    }
    return times;
  }

  /** The same pattern without the pieces that are no longer needed. */
  Pattern within(int[] demand) {
    int[] cut = new int[demand.length];
    for (int i = 0; i < kinds.length; i++) {
      cut[kinds[i]] = Math.min(counts[i], demand[kinds[i]]);
    }
    return of(stock, cut);
  }

  /** Subtracts its pieces from a demand. */
  void takeFrom(int[] demand) {
    for (int i = 0; i < kinds.length; i++) {
      demand[kinds[i]] -= counts[i];
    }
  }

  @Override
  public int compareTo(Pattern that) {
    int byStock = Integer.compare(stock, that.stock);
    int byKinds = byStock != 0 ? byStock : Arrays.compare(kinds, that.kinds);
    return byKinds != 0 ? byKinds : Arrays.compare(that.counts, counts);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Pattern that && compareTo(that) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Arrays.hashCode(kinds) + Arrays.hashCode(counts)) + stock;
  }
}
