package org.battenbook.plan.stick;

import java.util.Arrays;

/**
 * The sums of lengths that can be reached and are not dominated, in ascending order. Each has a
 * higher value than all shorter ones.
 */
final class ParetoFront {
  private long[] lengths;
  private long[] values;
  private int size;

  ParetoFront(int room) {
    this.lengths = new long[Math.max(room, 4)];
    this.values = new long[Math.max(room, 4)];
  }

  /** The front of no pieces: length 0 with value 0. */
  static ParetoFront ofNothing() {
    ParetoFront front = new ParetoFront(1);
    front.add(0, 0);
    return front;
  }

  /** Adds a sum that is longer and has a higher value than the last one. */
  void add(long length, long value) {
    if (size == lengths.length) {
      lengths = Arrays.copyOf(lengths, 2 * size);
      values = Arrays.copyOf(values, 2 * size);
    }
    lengths[size] = length;
    values[size++] = value;
  }

  int size() {
    return size;
  }

  long length(int index) {
    return lengths[index];
  }

  long value(int index) {
    return values[index];
  }

  /** The highest value within a length; -1 if there is none. */
  long valueWithin(long length) {
    int at = Arrays.binarySearch(lengths, 0, size, length);
    int index = at >= 0 ? at : -at - 2;
    return index < 0 ? -1 : values[index];
  }

  /**
   * Merges this front with another to whose entries one piece is added.
   *
   * @param shifted the other front, without that piece
   * @param length the length of the piece
   * @param price the value of the piece
   * @param longest the highest sum to include
   */
  ParetoFront mergedWith(ParetoFront shifted, long length, long price, long longest) {
    ParetoFront result = new ParetoFront(size + shifted.size);
    long best = -1;
    int i = 0;
    int j = 0;
    while (i < size || j < shifted.size) {
      long left = i < size ? lengths[i] : Long.MAX_VALUE;
      long right = j < shifted.size ? shifted.lengths[j] + length : Long.MAX_VALUE;
      long sum = Math.min(left, right);
      if (sum > longest) {
        break;
      }
      long value = left == sum ? values[i++] : -1;
      if (right == sum) {
        value = Math.max(value, shifted.values[j++] + price);
      }
      if (value > best) {
        best = value;
        result.add(sum, value);
      }
    }
    return result;
  }
}
