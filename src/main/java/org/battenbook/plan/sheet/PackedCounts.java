package org.battenbook.plan.sheet;

import java.util.Arrays;

/**
 * A vector of counts packed into a few words of 64 bits, so that vectors are added and compared a
 * word at a time (SIMD within a register). After L. Lamport, "Multiple byte processing with
 * full-word instructions" (1975).
 */
final class PackedCounts {
  private final Fields fields;
  private final long[] words;

  private PackedCounts(Fields fields, long[] words) {
    this.fields = fields;
    this.words = words;
  }

  /**
   * Where each count is stored: as many bits as its maximum needs, and one spare bit above them.
   * The spare bits show in which fields a subtraction borrows.
   */
  static final class Fields {
    private final int[] word;
    private final int[] shift;
    private final long[] masks;
    private final long[] spares;

    /** The maximum counts, packed. */
    private final long[] most;

    Fields(int[] mostOfEach) {
      word = new int[mostOfEach.length];
      shift = new int[mostOfEach.length];
      masks = new long[mostOfEach.length];
      int at = 0;
      for (int i = 0; i < mostOfEach.length; i++) {
        int bits = Integer.SIZE - Integer.numberOfLeadingZeros(mostOfEach[i]);
        at = at % Long.SIZE + bits + 1 > Long.SIZE ? (at / Long.SIZE + 1) * Long.SIZE : at;
        word[i] = at / Long.SIZE;
        shift[i] = at % Long.SIZE;
        masks[i] = (1L << bits) - 1;
        at += bits + 1;
      }
      spares = new long[at / Long.SIZE + 1];
      for (int i = 0; i < mostOfEach.length; i++) {
        spares[word[i]] |= (masks[i] + 1) << shift[i];
      }
      most = packed(mostOfEach);
    }

    private long[] packed(int[] counts) {
      long[] words = new long[spares.length];
      for (int i = 0; i < counts.length; i++) {
        words[word[i]] |= (long) counts[i] << shift[i];
      }
      return words;
    }

    PackedCounts of(int[] counts) {
      return new PackedCounts(this, packed(counts));
    }

    /** A count of 1 for one thing, and 0 for all others. */
    PackedCounts one(int thing) {
      long[] words = new long[spares.length];
      words[word[thing]] = 1L << shift[thing];
      return new PackedCounts(this, words);
    }
  }

  int of(int thing) {
    return (int) ((words[fields.word[thing]] >>> fields.shift[thing]) & fields.masks[thing]);
  }

  boolean isNothing() {
    for (long word : words) {
      if (word != 0) {
        return false;
      }
    }
    return true;
  }

  /** Whether the sum of both is within the maximum counts. */
  boolean mayJoin(PackedCounts that) {
    for (int i = 0; i < words.length; i++) {
      long left = (fields.most[i] | fields.spares[i]) - words[i] - that.words[i];
      if ((left & fields.spares[i]) != fields.spares[i]) {
        return false;
      }
    }
    return true;
  }

  /** Whether no count is greater than that of another vector. */
  boolean isWithin(PackedCounts that) {
    for (int i = 0; i < words.length; i++) {
      long left = (that.words[i] | fields.spares[i]) - words[i];
      if ((left & fields.spares[i]) != fields.spares[i]) {
        return false;
      }
    }
    return true;
  }

  /** The sum of both, which must be within the maximum counts. */
  PackedCounts plus(PackedCounts that) {
    long[] both = words.clone();
    for (int i = 0; i < both.length; i++) {
      both[i] += that.words[i];
    }
    return new PackedCounts(fields, both);
  }

  /** One more of one thing, which must be below its maximum count. */
  PackedCounts plusOne(int thing) {
    long[] more = words.clone();
    more[fields.word[thing]] += 1L << fields.shift[thing];
    return new PackedCounts(fields, more);
  }

  /** The difference of both. That vector must be within this one. */
  PackedCounts minus(PackedCounts that) {
    long[] left = words.clone();
    for (int i = 0; i < left.length; i++) {
      left[i] -= that.words[i];
    }
    return new PackedCounts(fields, left);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PackedCounts that && Arrays.equals(words, that.words);
  }

  @Override
  public int hashCode() {
    int hash = Arrays.hashCode(words) * 0x9e3779b1;
    return hash ^ (hash >>> 15);
  }
}
