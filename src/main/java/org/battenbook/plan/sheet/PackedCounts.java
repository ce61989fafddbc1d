package org.battenbook.plan.sheet;

import java.util.Arrays;

/**
 * How many of each of some things, in a few words of 64 bits, so that two are added, and compared
 * with what there is at most, at one go. After L. Lamport, "Multiple byte processing with full-word
 * instructions" (1975).
 */
final class PackedCounts {
  private final Fields fields;
  private final long[] words;

  private PackedCounts(Fields fields, long[] words) {
    this.fields = fields;
    this.words = words;
  }

  /** Where the count of each thing lies: as many bits as its most takes, and one above to spare. */
  static final class Fields {
    private final int[] word;
    private final int[] shift;
    private final long[] masks;
    private final long[] spares;
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

  /** Whether both together are no more than there is at most. */
  boolean mayJoin(PackedCounts that) {
    for (int i = 0; i < words.length; i++) {
      long left = (fields.most[i] | fields.spares[i]) - words[i] - that.words[i];
      if ((left & fields.spares[i]) != fields.spares[i]) {
        return false;
      }
    }
    return true;
  }

  boolean isWithin(PackedCounts that) {
    for (int i = 0; i < words.length; i++) {
      long left = (that.words[i] | fields.spares[i]) - words[i];
      if ((left & fields.spares[i]) != fields.spares[i]) {
        return false;
      }
    }
    return true;
  }

  /** Both together, where they may join. */
  PackedCounts plus(PackedCounts that) {
    long[] both = words.clone();
    for (int i = 0; i < both.length; i++) {
      both[i] += that.words[i];
    }
    return new PackedCounts(fields, both);
  }

  /** One more of a thing of which there can be one more. */
  PackedCounts plusOne(int thing) {
    long[] more = words.clone();
    more[fields.word[thing]] += 1L << fields.shift[thing];
    return new PackedCounts(fields, more);
  }

  /** Without some that are within it. */
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
