package org.battenbook.column;

import java.util.Arrays;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/** Yes or no for every row, 64 rows to a word. */
public final class BitLane implements Lane {
  private final int rows;

  /** Bits past the last row are 0. */
  final long[] words;

  BitLane(int rows, long[] words) {
    this.rows = rows;
    this.words = words;
  }

  /** Asks row by row. */
  public static BitLane of(int rows, IntPredicate isYes) {
    long[] words = new long[wordsFor(rows)];
    for (int row = 0; row < rows; row++) {
      if (isYes.test(row)) {
        words[row >> 6] |= 1L << row;
      }
    }
    return new BitLane(rows, words);
  }

  /** The same for every row. */
  public static BitLane constant(int rows, boolean yes) {
    BitLane none = new BitLane(rows, new long[wordsFor(rows)]);
    return yes ? none.not() : none;
  }

  static int wordsFor(int rows) {
    return (rows + 63) >> 6;
  }

  @Override
  public int rows() {
    return rows;
  }

  public boolean at(int row) {
    return ((words[row >> 6] >>> row) & 1) != 0;
  }

  public BitLane and(BitLane that) {
    long[] both = new long[words.length];
    for (int i = 0; i < both.length; i++) {
      both[i] = words[i] & that.words[i];
    }
    return new BitLane(rows, both);
  }

  public BitLane or(BitLane that) {
    long[] either = new long[words.length];
    for (int i = 0; i < either.length; i++) {
      either[i] = words[i] | that.words[i];
    }
    return new BitLane(rows, either);
  }

  public BitLane not() {
    long[] other = new long[words.length];
    for (int i = 0; i < other.length; i++) {
      other[i] = ~words[i];
    }
    if ((rows & 63) != 0) {
      other[other.length - 1] &= (1L << rows) - 1;
    }
    return new BitLane(rows, other);
  }

  /** How many rows say yes. */
  public int count() {
    int count = 0;
    for (long word : words) {
      count += Long.bitCount(word);
    }
    return count;
  }

  public boolean isAny() {
    for (long word : words) {
      if (word != 0) {
        return true;
      }
    }
    return false;
  }

  public boolean isAll() {
    return count() == rows;
  }

  /** The first row from this one on that says yes; -1 if none does. */
  public int next(int from) {
    int word = from >> 6;
    if (word >= words.length) {
      return -1;
    }
    long rest = words[word] & -1L << from;
    while (rest == 0 && ++word < words.length) {
      rest = words[word];
    }
    return rest == 0 ? -1 : (word << 6) + Long.numberOfTrailingZeros(rest);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BitLane that && rows == that.rows && Arrays.equals(words, that.words);
  }

  @Override
  public int hashCode() {
    return 31 * rows + Arrays.hashCode(words);
  }
}
