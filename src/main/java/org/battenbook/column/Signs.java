package org.battenbook.column;

/** Bits told from the signs of longs, without a branch. */
final class Signs {
  private Signs() {}

  static BitLane negative(long[] numbers) {
    long[] words = new long[BitLane.wordsFor(numbers.length)];
    for (int word = 0; word < words.length; word++) {
      long bits = 0;
      int end = Math.min(numbers.length, (word + 1) << 6);
      for (int row = word << 6; row < end; row++) {
        bits |= (numbers[row] >>> 63) << row;
      }
      words[word] = bits;
    }
    return new BitLane(numbers.length, words);
  }

  /** Of a number and its negative one has the sign bit, unless it is zero. */
  static BitLane zero(long[] numbers) {
    long[] words = new long[BitLane.wordsFor(numbers.length)];
    for (int word = 0; word < words.length; word++) {
      long bits = 0;
      int end = Math.min(numbers.length, (word + 1) << 6);
      for (int row = word << 6; row < end; row++) {
        long number = numbers[row];
        bits |= (((number | -number) >>> 63) ^ 1) << row;
      }
      words[word] = bits;
    }
    return new BitLane(numbers.length, words);
  }
}
